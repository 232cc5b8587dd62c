/**
 * What pictures are made of. The same shapes become SVG, a raster and the lines of a PDF page, so that the three can't
 * differ. Lengths are in CSS pixels of the figure.
 */
export type Shape = PathShape | TextShape | GroupShape;

export interface PathShape {
	readonly kind: 'path';
	/** path data as SVG writes it */
	readonly d: string;
	readonly fill: string | null;
	readonly stroke: string | null;
	readonly strokeWidth: number;
	/** lengths of dashes and gaps; empty for a whole line */
	readonly dash: readonly number[];
}

export interface TextShape {
	readonly kind: 'text';
	readonly text: string;
	readonly x: number;
	/** of the base line */
	readonly y: number;
	readonly anchor: 'start' | 'middle' | 'end';
	readonly size: number;
	readonly bold: boolean;
	readonly fill: string;
}

export interface GroupShape {
	readonly kind: 'group';
	/** the six numbers of an affine transform, as SVG's matrix() takes them */
	readonly transform: readonly [number, number, number, number, number, number];
	readonly shapes: readonly Shape[];
}

/** Ink of all figures: dark on white. Nothing is told apart by colour alone. */
export const ink = {
	text: '#1a1a1a',
	quiet: '#555555',
	line: '#333333',
	grid: '#d8d8d8',
	accent: '#124e8a',
	fill: '#dfe7ef',
	paper: '#ffffff',
} as const;

/** Smallest size of text: 12 CSS pixels stay readable where the picture is as wide as a phone. */
export const smallText = 12;
/** Distance from the middle of a capital letter down to the base line, as a share of the font size. */
export const middleToBase = 0.357;

export function path(d: string, options: Partial<Omit<PathShape, 'kind' | 'd'>> = {}): PathShape {
	return { kind: 'path', d, fill: null, stroke: null, strokeWidth: 1, dash: [], ...options };
}

export function line(
	from: readonly [number, number],
	to: readonly [number, number],
	options: Partial<Omit<PathShape, 'kind' | 'd' | 'fill'>> = {},
): PathShape {
	return path(`M${n(from[0])} ${n(from[1])}L${n(to[0])} ${n(to[1])}`, {
		stroke: ink.line,
		strokeWidth: 1.5,
		...options,
	});
}

export function polyline(
	points: readonly (readonly [number, number])[],
	options: Partial<Omit<PathShape, 'kind' | 'd'>> = {},
): PathShape {
	const d = points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('');
	return path(d, { stroke: ink.line, strokeWidth: 1.5, ...options });
}

export function rectangle(
	box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
	options: Partial<Omit<PathShape, 'kind' | 'd'>> = {},
): PathShape {
	const { x, y, width, height } = box;
	return path(`M${n(x)} ${n(y)}h${n(width)}v${n(height)}h${n(-width)}Z`, options);
}

export function circle(
	x: number,
	y: number,
	radius: number,
	options: Partial<Omit<PathShape, 'kind' | 'd'>> = {},
): PathShape {
	const r = n(radius);
	return path(
		`M${n(x - radius)} ${n(y)}a${r} ${r} 0 1 1 ${n(2 * radius)} 0a${r} ${r} 0 1 1 ${n(-2 * radius)} 0Z`,
		{
			...options,
		},
	);
}

export function label(
	text: string,
	x: number,
	y: number,
	options: Partial<Omit<TextShape, 'kind' | 'text' | 'x' | 'y'>> = {},
): TextShape {
	return {
		kind: 'text',
		text,
		x,
		y,
		anchor: 'start',
		size: smallText,
		bold: false,
		fill: ink.text,
		...options,
	};
}

export function moved(x: number, y: number, shapes: readonly Shape[]): GroupShape {
	return { kind: 'group', transform: [1, 0, 0, 1, x, y], shapes };
}

/** A coordinate with at most two decimals: finer is not seen, and the bytes stay the same on every machine. */
export function n(value: number): string {
	const rounded = Math.round(value * 100) / 100;
	return rounded === 0 ? '0' : String(rounded);
}
