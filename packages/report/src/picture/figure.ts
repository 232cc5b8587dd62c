import { escapeMarkup, plainLine } from '../plain.js';
import { fontFamily, textWidth, wrap } from './font.js';
import { ink, label, line, moved, n, rectangle, type Shape, smallText } from './shape.js';

/** A drawn figure: what it shows, the same in words, and its shapes. */
export interface Figure {
	readonly title: string;
	/** says in words what the picture shows, for people who can't see it; made from the same record */
	readonly alt: string;
	/** [CSS px] */
	readonly width: number;
	/** [CSS px] */
	readonly height: number;
	readonly shapes: readonly Shape[];
	/** heights at which a tall figure may be cut between two pages [CSS px]; empty where it must stay whole */
	readonly breaks: readonly number[];
}

/** A phone's message, 360 pixels wide, or a page, which is wider but not endlessly tall. */
export type FigureLayout = 'phone' | 'page';

/** Width of a phone's message; figures are drawn for it. [CSS px] */
export const phoneWidth = 360;
export const margin = 14;
const titleSize = 16;
const lineHeight = 1.25;
/** A browser without the figure's own font may take one that is so much wider. */
const widerFont = 1.15;

/**
 * The title block of a figure, wrapped to its width.
 * @param lines quiet lines under the title
 * @returns the shapes and where the drawing may begin [CSS px]
 */
export function heading(
	title: string,
	lines: readonly string[],
	width: number,
): { readonly shapes: readonly Shape[]; readonly bottom: number } {
	const shapes: Shape[] = [];
	let y = margin;
	const write = (text: string, size: number, bold: boolean, fill: string) => {
		for (const row of wrap(plainLine(text), (width - 2 * margin) / widerFont, size, bold)) {
			shapes.push(label(row, margin, y + size * 0.85, { size, bold, fill }));
			y += size * lineHeight;
		}
	};
	write(title, titleSize, true, ink.text);
	y += 2;
	for (const one of lines) write(one, 13, false, ink.quiet);
	return { shapes, bottom: y + 4 };
}

/** How a line of a chart is drawn. */
export interface Stroke {
	readonly width: number;
	readonly dash: readonly number[];
	readonly colour: string;
}

/** Lines told apart by their dashes first; the first one is the one that matters. */
export const strokes: readonly [Stroke, Stroke, Stroke] = [
	{ width: 3, dash: [], colour: ink.accent },
	{ width: 2, dash: [7, 4], colour: ink.line },
	{ width: 2, dash: [2, 3], colour: ink.line },
];

/** What each line or bar stands for: a piece of it with its name, as many in a row as fit. */
export function key(
	entries: readonly { readonly sample: (x: number, middleY: number) => Shape; readonly name: string }[],
	top: number,
	width: number,
): { readonly shapes: readonly Shape[]; readonly bottom: number } {
	const shapes: Shape[] = [];
	const sampleWidth = 30;
	let x = margin;
	let y = top + 9;
	for (const { sample, name } of entries) {
		const text = fitted(plainLine(name), width - 2 * margin - sampleWidth, smallText);
		const entryWidth = sampleWidth + textWidth(text, smallText) + 16;
		if (x > margin && x + entryWidth - 16 > width - margin) {
			x = margin;
			y += 18;
		}
		shapes.push(sample(x, y), label(text, x + sampleWidth, y + 4.3));
		x += entryWidth;
	}
	return { shapes, bottom: y + 12 };
}

/** A piece of a line for the key. */
export function strokeSample({ width, dash, colour }: Stroke) {
	return (x: number, y: number): Shape =>
		line([x, y], [x + 24, y], { strokeWidth: width, dash, stroke: colour });
}

/**
 * Puts a figure together on white paper with a thin edge, so that it stands out on a dark page and on a white one.
 */
export function figure(parts: Omit<Figure, 'breaks'> & { readonly breaks?: readonly number[] }): Figure {
	const { width, height, breaks = [] } = parts;
	const paper = rectangle(
		{ x: 0.5, y: 0.5, width: width - 1, height: height - 1 },
		{ fill: ink.paper, stroke: '#c4c4c4', strokeWidth: 1 },
	);
	return {
		title: plainLine(parts.title),
		alt: plainLine(parts.alt),
		width,
		height,
		shapes: [paper, ...parts.shapes],
		breaks,
	};
}

/**
 * A tall figure in pieces for a page, cut only where nothing is cut through. The first piece carries the description
 * of the whole.
 * @param tallest height of a piece [CSS px]; a piece is taller only where the figure can't be cut
 */
export function slices(whole: Figure, tallest: number): Figure[] {
	if (whole.height <= tallest) return [whole];
	const count = Math.ceil(whole.height / tallest);
	const cuts = [0];
	for (let piece = 1; piece < count; piece += 1) {
		const from = cuts.at(-1) as number;
		// Pieces of like height look better than a full one and a rest.
		const wanted = from + (whole.height - from) / (count - piece + 1);
		const usable = whole.breaks.filter((at) => at > from && at - from <= tallest);
		const cut = usable.toSorted((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))[0];
		if (cut !== undefined) cuts.push(cut);
	}
	const ends = [...cuts.slice(1), whole.height];
	return cuts.map((from, index) => ({
		title: ends.length === 1 ? whole.title : `${whole.title}, part ${index + 1} of ${ends.length}`,
		alt: index === 0 ? whole.alt : `${whole.title}, continued: described with part 1.`,
		width: whole.width,
		height: (ends[index] as number) - from,
		shapes: [moved(0, -from, whole.shapes)],
		breaks: [],
	}));
}

/** A line cut to a width, with an ellipsis where it was cut. The whole of it belongs in the alternative text. */
function fitted(text: string, width: number, size: number, bold = false): string {
	if (textWidth(text, size, bold) <= width) return text;
	let kept = '';
	for (const character of text) {
		if (textWidth(`${kept}${character}…`, size, bold) > width) break;
		kept += character;
	}
	return `${kept.trimEnd()}…`;
}

/** At most so many lines; what does not fit ends in an ellipsis. */
export function fittedLines(
	text: string,
	width: number,
	lines: number,
	size: number,
	bold = false,
): string[] {
	const rows = wrap(text, width, size, bold);
	if (rows.length <= lines) return rows;
	return [...rows.slice(0, lines - 1), fitted(rows.slice(lines - 1).join(' '), width, size, bold)];
}

/** The figure as SVG: no script, no style sheet, no outside reference; title and description for screen readers. */
export function figureSvg({ title, alt, width, height, shapes }: Figure): string {
	const size = `width="${n(width)}" height="${n(height)}" viewBox="0 0 ${n(width)} ${n(height)}"`;
	const head = `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-label="${escapeMarkup(alt)}" font-family="'${fontFamily}', sans-serif">`;
	return `${head}\n<title>${escapeMarkup(title)}</title>\n<desc>${escapeMarkup(alt)}</desc>\n${shapes.map(shapeSvg).join('\n')}\n</svg>\n`;
}

function shapeSvg(shape: Shape): string {
	switch (shape.kind) {
		case 'path': {
			const stroke =
				shape.stroke === null ? '' : ` stroke="${shape.stroke}" stroke-width="${n(shape.strokeWidth)}"`;
			const dash = shape.dash.length === 0 ? '' : ` stroke-dasharray="${shape.dash.map(n).join(' ')}"`;
			return `<path d="${shape.d}" fill="${shape.fill ?? 'none'}"${stroke}${dash}/>`;
		}
		case 'text': {
			const anchor = shape.anchor === 'start' ? '' : ` text-anchor="${shape.anchor}"`;
			const weight = shape.bold ? ' font-weight="700"' : '';
			return `<text x="${n(shape.x)}" y="${n(shape.y)}" font-size="${n(shape.size)}"${weight}${anchor} fill="${shape.fill}">${escapeMarkup(shape.text)}</text>`;
		}
		case 'group':
			return `<g transform="matrix(${shape.transform.map(fine).join(' ')})">\n${shape.shapes.map(shapeSvg).join('\n')}\n</g>`;
	}
}

/** A number of a transform: a scale needs more digits than a place. */
function fine(value: number): string {
	return String(Math.round(value * 1e5) / 1e5 || 0);
}
