import type { OneLinePart, OneLinePicture, OneLineRun } from './input.js';

/** A run seen from the part it is drawn at. */
export interface Branch {
	readonly run: OneLineRun;
	/** true where the energy comes in through it */
	readonly feeds: boolean;
	/** the part at the far end */
	readonly part: OneLinePart;
}

/** A run between two parts of the core, drawn from the upper one down to the lower one. */
export interface CoreRun {
	readonly run: OneLineRun;
	readonly upper: string;
	readonly lower: string;
}

export interface Folded {
	readonly parts: readonly OneLinePart[];
	readonly runs: readonly CoreRun[];
	/**
	 * by the id of a busbar, the chains that hang from it: one or two parts each, from the busbar outwards; by the id of
	 * a battery, its bonds to the chassis, which leave from its negative pole
	 */
	readonly rows: ReadonlyMap<string, readonly (readonly Branch[])[]>;
}

/** More parts than this in a chain would not fit a phone's width. */
const longestChain = 2;

/**
 * Parts the wiring in two: what hangs from a busbar as a plain chain becomes a row beside it, as in a switchboard
 * drawing; the rest (batteries, busbars, whatever is meshed) is the core, which is laid out as a graph.
 */
export function fold({ parts, runs }: OneLinePicture): Folded {
	const byId = new Map(parts.map((part) => [part.id, part]));
	const runsOf = new Map<string, OneLineRun[]>(parts.map(({ id }) => [id, []]));
	for (const run of runs) {
		runsOf.get(run.from)?.push(run);
		runsOf.get(run.to)?.push(run);
	}
	const folded = new Set<string>();
	const rows = new Map<string, (readonly Branch[])[]>();
	for (const bus of parts.filter(({ kind }) => kind === 'busbar')) {
		const own: (readonly Branch[])[] = [];
		for (const run of runsOf.get(bus.id) ?? []) {
			const chain = chainFrom(bus.id, run);
			if (chain === null) continue;
			own.push(chain);
			for (const { part } of chain) folded.add(part.id);
		}
		// What charges the bank stands above what draws from it.
		rows.set(bus.id, [...own.filter(([first]) => first?.feeds), ...own.filter(([first]) => !first?.feeds)]);
	}
	for (const battery of parts.filter(({ kind }) => kind === 'battery')) {
		const bonds = (runsOf.get(battery.id) ?? []).flatMap((run) => {
			const chain = chainFrom(battery.id, run);
			return chain?.length === 1 && chain[0]?.part.kind === 'chassis' ? [chain] : [];
		});
		rows.set(battery.id, bonds);
		for (const [bond] of bonds) folded.add((bond as Branch).part.id);
	}
	const core = parts.filter(({ id }) => !folded.has(id));
	return {
		parts: core,
		runs: orient(
			core,
			runs.filter((run) => !folded.has(run.from) && !folded.has(run.to)),
		),
		rows,
	};

	function chainFrom(busId: string, first: OneLineRun): Branch[] | null {
		const chain: Branch[] = [];
		let at = busId;
		let run = first;
		for (;;) {
			const next = run.from === at ? run.to : run.from;
			const part = byId.get(next) as OneLinePart;
			const around = runsOf.get(next) as OneLineRun[];
			if (part.kind === 'battery' || part.kind === 'busbar' || around.length > 2) return null;
			chain.push({ run, feeds: run.to === at, part });
			const onward = around.find((other) => other !== run);
			if (onward === undefined) return chain;
			if (chain.length === longestChain) return null;
			at = next;
			run = onward;
		}
	}
}

/** Batteries at the top, and everything else by its distance from them; a run goes down. */
function orient(parts: readonly OneLinePart[], runs: readonly OneLineRun[]): CoreRun[] {
	const depth = new Map<string, number>();
	const roots = parts.filter(({ kind }) => kind === 'battery');
	let frontier = (roots.length > 0 ? roots : parts.slice(0, 1)).map(({ id }) => id);
	while (frontier.length > 0) {
		const level = depth.size === 0 ? 0 : Math.max(...depth.values()) + 1;
		for (const id of frontier) depth.set(id, level);
		frontier = [
			...new Set(
				frontier.flatMap((id) =>
					runs.flatMap(({ from, to }) => (from === id ? [to] : to === id ? [from] : [])),
				),
			),
		].filter((id) => !depth.has(id));
	}
	const depthOf = (id: string) => depth.get(id) ?? Number.POSITIVE_INFINITY;
	return runs.map((run) =>
		depthOf(run.to) < depthOf(run.from)
			? { run, upper: run.to, lower: run.from }
			: { run, upper: run.from, lower: run.to },
	);
}
