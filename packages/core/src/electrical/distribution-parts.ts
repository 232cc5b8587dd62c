import { type ConductorSize, conductorSize } from '../tables/conductors.js';
import type { Missing, Refusal } from '../topic/sizing.js';
import type { Say } from '../topic/translate.js';
import type { DistributionLoad, Leg, Segment } from './distribution.js';

/** One entry of the list: a segment between two nodes, a load at a node, or a segment with a load at its end. */
export interface Part {
	readonly from: string;
	readonly to?: string | undefined;
	readonly size?: string | undefined;
	readonly lengthM?: number | undefined;
	readonly ohm?: number | undefined;
	readonly currentA?: number | undefined;
	readonly powerW?: number | undefined;
	readonly count?: number | undefined;
	readonly leg?: Leg | undefined;
}

export interface ReadParts {
	readonly segments: readonly Segment[];
	readonly loads: readonly DistributionLoad[];
	/** true where unmarked segments were taken for the positive leg alone, since return segments are named too */
	readonly positiveTaken: boolean;
}

export type PartsProblem = { readonly refusal: Refusal } | { readonly missing: Missing };

interface Stretch extends Part {
	readonly to: string;
}

const clean = (name: string) => name.trim().replace(/\s+/g, ' ').toLowerCase();

/** Sorts the list into segments and loads, and finds the node of each load. */
export function readParts(parts: readonly Part[], say: Say): ReadParts | PartsProblem {
	const split = parts.map(splitNames);
	const stretches = split.filter((part): part is Stretch => part.to !== undefined);
	if (stretches.length === 0) {
		return {
			missing: {
				name: 'parts',
				label: 'segments and loads',
				question: 'Which conductors are there? For each: from - to, size, one-way length.',
			},
		};
	}
	const hasReturn = stretches.some((part) => part.leg === 'return');
	const segments: Segment[] = [];
	for (const part of stretches) {
		const segment = toSegment(part, part.leg ?? (hasReturn ? 'positive' : 'both'), say);
		if (!('way' in segment)) return segment;
		segments.push(segment);
	}
	const nodes = new Set(segments.flatMap(({ from, to }) => [from, to]));
	const loads: DistributionLoad[] = [];
	for (const part of split) {
		if (part.currentA === undefined && part.powerW === undefined) continue;
		const node = nodeOf(part, nodes);
		if (node === null) return { refusal: unknownNode(part, nodes, say) };
		const count = part.to === undefined ? (part.count ?? 1) : 1;
		loads.push({
			node,
			...(part.currentA === undefined ? {} : { currentA: part.currentA * count }),
			...(part.powerW === undefined ? {} : { powerW: part.powerW * count }),
		});
	}
	if (loads.length === 0) {
		return {
			missing: {
				name: 'parts',
				label: 'segments and loads',
				question: 'Which loads are on, and at which node? For each: node and amperes or watts.',
			},
		};
	}
	return {
		segments,
		loads,
		positiveTaken: hasReturn && stretches.some((part) => part.leg === undefined),
	};
}

/** "battery-bus" written as one name is two nodes where a conductor stands with it. */
function splitNames(part: Part): Part {
	const from = clean(part.from);
	if (part.to !== undefined) return { ...part, from, to: clean(part.to) };
	if (part.size === undefined && part.lengthM === undefined && part.ohm === undefined)
		return { ...part, from };
	const pair = /^(.+?)\s*(?:->|→|>|\bto\b)\s*(.+)$/.exec(from) ?? /^([^-]+?)\s*-\s*([^-]+)$/.exec(from);
	return pair === null
		? { ...part, from }
		: { ...part, from: clean(pair[1] as string), to: clean(pair[2] as string) };
}

export function segmentName(segment: { readonly from: string; readonly to: string }): string {
	return `${segment.from}-${segment.to}`;
}

function toSegment(part: Stretch, leg: Leg, say: Say): Segment | PartsProblem {
	const { from, to } = part;
	const name = segmentName(part);
	if (from === to) {
		return refuse(
			'contradiction',
			say`I read a segment from ${from} to itself.`,
			'Name two different nodes.',
		);
	}
	if (part.ohm !== undefined) {
		if (part.size !== undefined || part.lengthM !== undefined) {
			return refuse(
				'contradiction',
				say`${name} has a resistance as well as a size or length.`,
				'Give the resistance, or the size and the length.',
			);
		}
		return { from, to, leg, way: { ohm: part.ohm } };
	}
	if (part.size === undefined) return ask(say`What size is the conductor of ${name}?`);
	const size: ConductorSize | null = conductorSize(part.size);
	if (size === null) {
		return refuse(
			'out-of-range',
			say`I read "${part.size}" as the size of ${name}; no such size is in my tables.`,
			'Name a size such as 10 AWG, 2/0 AWG or 16 mm².',
		);
	}
	if (part.lengthM === undefined) return ask(say`How long is ${name}, one way?`);
	const loaded = part.currentA !== undefined || part.powerW !== undefined;
	return { from, to, leg, way: { size, lengthM: part.lengthM, parallel: loaded ? 1 : (part.count ?? 1) } };
}

function refuse(code: Refusal['code'], text: string, instead: string): PartsProblem {
	return { refusal: { code, text, instead, field: 'parts' } };
}

function ask(question: string): PartsProblem {
	return { missing: { name: 'parts', label: 'segments and loads', question } };
}

/** The node a load hangs at: named outright, the end of its own segment, or the one node that its name contains. */
function nodeOf(part: Part, nodes: ReadonlySet<string>): string | null {
	if (part.to !== undefined) return part.to;
	if (nodes.has(part.from)) return part.from;
	const inside = [...nodes].filter((node) => ` ${part.from} `.includes(` ${node} `));
	const [only] = inside;
	return inside.length === 1 && only !== undefined ? only : null;
}

function unknownNode(part: Part, nodes: ReadonlySet<string>, say: Say): Refusal {
	return {
		code: 'contradiction',
		text: say`I read a load at "${part.from}", but no segment leads there.`,
		instead: say`Name a segment that ends there, or put the load at one of: ${[...nodes].join(', ')}.`,
		field: 'parts',
	};
}

/** The node that the source feeds: one that is named for it, else where the first segment begins. */
export function sourceNodeOf(segments: readonly { readonly from: string; readonly to: string }[]): string {
	const nodes = segments.flatMap(({ from, to }) => [from, to]);
	return (
		nodes.find((node) =>
			/^(?:(?:the |house )?(?:battery|batteries|batt|batts|bat|bank|source|supply|batterie|batterien|akku|batería|baterías|banco))(?: bank)?$/.test(
				node,
			),
		) ?? (nodes[0] as string)
	);
}
