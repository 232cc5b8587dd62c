import type { ELK, ElkExtendedEdge, ElkNode } from 'elkjs/lib/elk-api.js';
import { type Figure, type FigureLayout, figure, heading, margin, phoneWidth } from '../figure.js';
import { textWidth } from '../font.js';
import { ink, label, line, moved, polyline, type Shape, smallText } from '../shape.js';
import { type CoreRun, type Folded, fold } from './fold.js';
import { drawGlyph, type Glyph } from './glyph.js';
import { type OneLinePart, type OneLinePicture, type OneLineRun, oneLineProblems } from './input.js';
import { deviceSymbol, type PartSymbol, partSymbol, symbolName } from './symbols.js';
import { conductorText, isBare, lengthText, partText, ratingText } from './words.js';

/**
 * The one-line diagram of a direct-current wiring: every run with its conductor, its length and its protection, the
 * device at the end where it stands.
 * @throws RangeError naming what can't be drawn
 */
export async function drawOneLine(picture: OneLinePicture, layout: FigureLayout): Promise<Figure> {
	const problems = oneLineProblems(picture);
	if (problems.length > 0) throw new RangeError(`the wiring can't be drawn: ${problems.join('; ')}`);
	const folded = fold(picture);
	const glyphs = folded.parts.map((part) =>
		drawGlyph({
			part,
			runs: folded.runs,
			rows: folded.rows.get(part.id) ?? [],
			units: picture.units,
			width: phoneWidth - 2 * margin,
		}),
	);
	const laid = await arrange(glyphs, folded);
	const beside = layout === 'page';
	const diagramWidth = Math.max(phoneWidth, laid.width + 2 * margin);
	const width = diagramWidth + (beside ? keyWidth : 0);
	const head = heading(picture.title, [], width);
	const bottom = head.bottom + laid.height;
	// On a page the key stands beside the diagram: the height is what is scarce there.
	const key = beside
		? drawKey(picture, { left: diagramWidth, top: head.bottom, width: keyWidth })
		: drawKey(picture, { left: 0, top: bottom + 14, width });
	return figure({
		title: picture.title,
		alt: altOf(picture, picture.runs.filter(isBare)),
		width,
		height: Math.max(bottom + margin, key.bottom + 10),
		shapes: [...head.shapes, moved(margin, head.bottom, laid.shapes), ...key.shapes],
		breaks: gaps([
			[0, head.bottom],
			...laid.solid.map(([from, to]): [number, number] => [from + head.bottom, to + head.bottom]),
			...(beside ? key.solid : []),
		]),
	});
}

/** Room for the key beside the diagram [CSS px]. */
const keyWidth = 190;

/** Where no piece is cut: the places where one ends and no other goes on. */
function gaps(solid: readonly (readonly [number, number])[]): number[] {
	return solid
		.map(([, to]) => to)
		.filter((at) => !solid.some(([from, to]) => from < at - 0.01 && at + 0.01 < to))
		.toSorted((a, b) => a - b);
}

interface Laid {
	readonly width: number;
	readonly height: number;
	readonly shapes: readonly Shape[];
	readonly solid: readonly (readonly [number, number])[];
}

async function arrange(glyphs: readonly Glyph[], { runs }: Folded): Promise<Laid> {
	// Ids by place, not by the shop's own words: the layout must not depend on how things are called.
	const portId = (run: OneLineRun, side: 'top' | 'bottom') => `${runIndex(run)} ${side}`;
	const graph: ElkNode = {
		id: 'root',
		layoutOptions: {
			'elk.algorithm': 'layered',
			'elk.direction': 'DOWN',
			'elk.edgeRouting': 'ORTHOGONAL',
			'elk.padding': '[top=0,left=0,bottom=0,right=0]',
			'elk.spacing.nodeNode': '18',
			'elk.spacing.edgeNode': '14',
			'elk.spacing.edgeEdge': '12',
			'elk.spacing.componentComponent': '24',
			'elk.layered.spacing.nodeNodeBetweenLayers': '14',
			'elk.layered.spacing.edgeNodeBetweenLayers': '10',
			'elk.layered.nodePlacement.strategy': 'NETWORK_SIMPLEX',
			'elk.layered.considerModelOrder.strategy': 'NODES_AND_EDGES',
			'elk.randomSeed': '1',
		},
		children: glyphs.map(({ width, height, ports }, index) => ({
			id: `part ${index}`,
			width,
			height,
			layoutOptions: { 'elk.portConstraints': 'FIXED_POS' },
			ports: ports.map(({ run, side, x }) => ({
				id: portId(run, side),
				x,
				y: side === 'top' ? 0 : height,
				width: 0,
				height: 0,
				layoutOptions: { 'elk.port.side': side === 'top' ? 'NORTH' : 'SOUTH' },
			})),
		})),
		edges: runs.map(({ run }, index) => ({
			id: `run ${index}`,
			sources: [portId(run, 'bottom')],
			targets: [portId(run, 'top')],
		})),
	};
	const laid = await (await layouter()).layout(graph);
	const places = glyphs.map((_, index) => {
		const { x = 0, y = 0 } = laid.children?.[index] ?? {};
		return { x, y };
	});
	return {
		width: laid.width ?? 0,
		height: laid.height ?? 0,
		shapes: [
			...(laid.edges ?? []).flatMap(edgeShapes),
			...glyphs.map(({ shapes }, index) => moved(places[index]?.x ?? 0, places[index]?.y ?? 0, shapes)),
		],
		solid: glyphs.flatMap(({ solid }, index) =>
			solid.map(([from, to]): [number, number] => [
				from + (places[index]?.y ?? 0),
				to + (places[index]?.y ?? 0),
			]),
		),
	};

	function runIndex(run: OneLineRun): number {
		return runs.findIndex((one: CoreRun) => one.run === run);
	}
}

function edgeShapes({ sections }: ElkExtendedEdge): Shape[] {
	return (sections ?? []).map(({ startPoint, bendPoints, endPoint }) =>
		polyline(
			[startPoint, ...(bendPoints ?? []), endPoint].map(({ x, y }): [number, number] => [x, y]),
			{ stroke: ink.text, strokeWidth: 1.5 },
		),
	);
}

/** What each symbol means, in as many columns as fit. */
function drawKey(
	{ parts, runs }: OneLinePicture,
	{ left, top, width }: { readonly left: number; readonly top: number; readonly width: number },
): {
	readonly shapes: readonly Shape[];
	readonly bottom: number;
	readonly solid: readonly (readonly [number, number])[];
} {
	const entries = new Map<string, PartSymbol>();
	for (const part of parts) if (part.kind !== 'load') entries.set(symbolName(part), partSymbol(part));
	for (const { devices } of runs) for (const { kind } of devices) entries.set(kind, deviceSymbol(kind));
	const columns = Math.max(1, Math.floor((width - 2 * margin) / 160));
	const column = (width - 2 * margin) / columns;
	const rowHeight = 42;
	const rows = Math.ceil(entries.size / columns);
	const shapes: Shape[] = [];
	if (left === 0) {
		shapes.push(line([margin, top], [width - margin, top], { stroke: ink.grid, strokeWidth: 1 }));
	}
	[...entries].forEach(([name, symbol], index) => {
		const x = left + margin + (index % columns) * column;
		const middle = top + 26 + Math.floor(index / columns) * rowHeight;
		shapes.push(
			moved(x + 18, middle - symbol.length / 2, symbol.shapes),
			label(name, x + 44, middle + 4.3, {
				size: textWidth(name, smallText) > column - 46 ? 11 : smallText,
			}),
		);
	});
	return {
		shapes,
		bottom: top + 8 + rows * rowHeight,
		solid: Array.from({ length: rows }, (_, row) => [
			top + 4 + row * rowHeight,
			top + 4 + (row + 1) * rowHeight,
		]),
	};
}

function altOf({ title, parts, runs, units }: OneLinePicture, bare: readonly OneLineRun[]): string {
	const nameOf = (id: string) => parts.find((part: OneLinePart) => part.id === id)?.name ?? id;
	const each = runs.map((run) => {
		const devices = run.devices.map((device) => {
			const rating = ratingText(device);
			return `${device.kind}${rating === '' ? '' : ` ${rating}`} at the ${nameOf(device.at === 'from' ? run.from : run.to)} end`;
		});
		const protection = isBare(run) ? ['no fuse or breaker named'] : [];
		return `${nameOf(run.from)} to ${nameOf(run.to)}: ${[conductorText(run), lengthText(run, units), ...devices, ...protection].join(', ')}`;
	});
	const names = parts.map(partText);
	const lacking =
		bare.length === 0 ? '' : ` ${bare.length} of ${runs.length} runs have no fuse or breaker named.`;
	return `${title}. Parts: ${names.join('; ')}. Runs: ${each.join('; ')}.${lacking}`;
}

let loaded: Promise<ELK> | null = null;

/** The layout engine, loaded with the first diagram. */
function layouter(): Promise<ELK> {
	loaded ??= import('elkjs/lib/elk.bundled.js').then((module) => {
		// The library is CommonJS: its constructor is the default of the default.
		const { default: Layouter } = module as unknown as { default: new () => ELK };
		return new Layouter();
	});
	return loaded;
}
