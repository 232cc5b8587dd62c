import type { RuleSet } from '../rules/rules.js';
import { awgSizes, type ConductorSize, metricSizes } from '../tables/conductors.js';
import { checkSize, type Run, type SizeCheck } from './conductor.js';
import {
	type Branch,
	type Change,
	type Network,
	type NodeLoad,
	risesOf,
	type SolvedNetwork,
	solveNetwork,
	type Unsolvable,
} from './network.js';

/** Which way of the circuit a segment is: out and back side by side, or one of the two. */
export type Leg = 'both' | 'positive' | 'return';

/** A stretch of the distribution between two named nodes. */
export interface Segment {
	readonly from: string;
	readonly to: string;
	readonly leg: Leg;
	/** a conductor of this size and one-way length, or a resistance that was measured or named */
	readonly way:
		| { readonly size: ConductorSize; readonly lengthM: number; readonly parallel: number }
		/** of all its legs together [ohm] */
		| { readonly ohm: number };
}

export interface DistributionLoad {
	readonly node: string;
	readonly currentA?: number;
	readonly powerW?: number;
}

export interface Distribution {
	/** node that the source feeds */
	readonly source: string;
	readonly sourceV: number;
	/** internal resistance of the source, 0 for a stiff one [ohm] */
	readonly sourceOhm: number;
	readonly segments: readonly Segment[];
	readonly loads: readonly DistributionLoad[];
	readonly insulationC: number;
	readonly ambientC: number;
}

export interface SolvedDistribution {
	readonly network: Network;
	readonly solved: SolvedNetwork;
	/** by segment, from `from` to `to`; of a pair, in its positive leg [A] */
	readonly segmentA: readonly number[];
	/** by segment, all legs at operating temperature [ohm] */
	readonly segmentOhm: readonly number[];
	/** by segment; null where a resistance was named */
	readonly checks: readonly (SizeCheck | null)[];
	/** voltage between the poles of the source's node [V] */
	readonly busV: number;
	/** by node with a load: voltage there and what is lost on the way [V] */
	readonly loadNodes: readonly LoadNode[];
}

export interface LoadNode {
	readonly node: string;
	/** a load at the node, by its place in the list */
	readonly load: number;
	readonly voltageV: number;
	readonly dropV: number;
	readonly currentA: number;
}

/** What a segment's conductor would do at a current. @returns null where a resistance was named or no table has it */
function checkOf(
	segment: Segment,
	currentA: number,
	distribution: Distribution,
	rules: RuleSet,
): SizeCheck | null {
	if (!('size' in segment.way)) return null;
	const run: Run = {
		supply: 'dc',
		currentA,
		voltageV: distribution.sourceV,
		lengthM: segment.way.lengthM,
		dropLimit: 1,
		insulationC: distribution.insulationC,
		ambientC: distribution.ambientC,
		bundled: 2,
		routing: 'free',
		continuous: true,
		motor: false,
		isRating: false,
		terminalC: null,
		parallel: segment.way.parallel,
		tinned: false,
	};
	return checkSize(run, segment.way.size, rules);
}

function ohmOf(segment: Segment, check: SizeCheck | null): number {
	if (!('size' in segment.way)) return segment.way.ohm;
	if (check === null) throw new Error(`${segment.from} to ${segment.to} has no check`);
	return segment.leg === 'both' ? check.loopOhm : check.loopOhm / 2;
}

/** A segment whose conductor the tables have no value for. */
export function unknownSegment(distribution: Distribution, rules: RuleSet): Segment | null {
	const { segments } = distribution;
	return segments.find((one) => 'size' in one.way && checkOf(one, 0, distribution, rules) === null) ?? null;
}

const plus = (node: string) => `+ ${node}`;
const minus = (node: string) => `- ${node}`;
const pole = 'source';

/**
 * The network of the distribution. Where every segment is a pair, the two legs mirror each other and one rail with
 * the resistance of both tells all; else both rails are drawn.
 */
function networkOf(
	distribution: Distribution,
	ohms: readonly number[],
): { readonly network: Network; readonly branchesOf: readonly (readonly number[])[] } {
	const { segments, loads, source, sourceV, sourceOhm } = distribution;
	const mirrored = segments.every((segment) => segment.leg === 'both');
	const back = (node: string) => (mirrored ? minus(source) : minus(node));
	const branches: Branch[] = [];
	const branchesOf = segments.map((segment, index) => {
		const ohm = ohms[index] as number;
		const own: number[] = [];
		const add = (from: string, to: string, share: number) => {
			own.push(branches.length);
			branches.push({ from, to, ohm: ohm * share });
		};
		if (mirrored) add(plus(segment.from), plus(segment.to), 1);
		else {
			const share = segment.leg === 'both' ? 0.5 : 1;
			if (segment.leg !== 'return') add(plus(segment.from), plus(segment.to), share);
			if (segment.leg !== 'positive') add(minus(segment.from), minus(segment.to), share);
		}
		return own;
	});
	if (sourceOhm > 0) branches.push({ from: pole, to: plus(source), ohm: sourceOhm });
	return {
		network: {
			fixedV: { [sourceOhm > 0 ? pole : plus(source)]: sourceV, [minus(source)]: 0 },
			branches,
			loads: loads.map(
				({ node, currentA, powerW }): NodeLoad => ({
					from: plus(node),
					to: back(node),
					...(currentA === undefined ? {} : { currentA }),
					...(powerW === undefined ? {} : { powerW }),
				}),
			),
		},
		branchesOf,
	};
}

const mostRounds = 12;
const steady = 1e-7;

/**
 * Solves the distribution with all loads on, every conductor at the temperature its current brings it to:
 * T = Ta + (Tmax − Ta)(I/Iz)², R = R20 (1 + 0.00393 (T − 20)).
 * @throws Error where {@link unknownSegment} finds one
 */
export function solveDistribution(
	distribution: Distribution,
	rules: RuleSet,
): SolvedDistribution | Unsolvable {
	const { segments } = distribution;
	let checks = segments.map((segment) => checkOf(segment, 0, distribution, rules));
	let ohms = segments.map((segment, index) => ohmOf(segment, checks[index] ?? null));
	for (let round = 0; ; round += 1) {
		const { network, branchesOf } = networkOf(distribution, ohms);
		const solved = solveNetwork(network);
		if ('reason' in solved) return solved;
		const segmentA = branchesOf.map(([first]) => solved.branchA[first as number] as number);
		checks = segments.map((segment, index) =>
			checkOf(segment, Math.abs(segmentA[index] as number), distribution, rules),
		);
		const warmer = segments.map((segment, index) => ohmOf(segment, checks[index] ?? null));
		const moved = Math.max(0, ...warmer.map((ohm, index) => Math.abs(ohm / (ohms[index] as number) - 1)));
		if (moved < steady || round >= mostRounds) {
			return { network, solved, segmentA, segmentOhm: ohms, checks, ...readNodes(distribution, solved) };
		}
		ohms = warmer;
	}
}

function readNodes(distribution: Distribution, solved: SolvedNetwork) {
	const { source, loads } = distribution;
	const at = (node: string) => solved.voltageV.get(node) ?? 0;
	const busV = at(plus(source)) - at(minus(source));
	const nodes = new Map<string, LoadNode>();
	for (const [index, { node }] of loads.entries()) {
		const before = nodes.get(node);
		const voltageV = solved.loadV[index] as number;
		const currentA = (solved.loadA[index] as number) + (before?.currentA ?? 0);
		nodes.set(node, { node, load: before?.load ?? index, voltageV, dropV: busV - voltageV, currentA });
	}
	return { busV, loadNodes: [...nodes.values()].sort((a, b) => b.dropV - a.dropV) };
}

/** One segment a size thicker, and what that does for the worst load. */
export interface Thicker {
	readonly segment: number;
	readonly size: ConductorSize;
	/** of the load that was the worst before [V] */
	readonly dropV: number;
}

const triedInFull = 5;

/** The next size that shops stock, in the series of the conductor itself. */
function nextSize(size: ConductorSize): ConductorSize | null {
	const series = size.system === 'awg' ? awgSizes : metricSizes;
	return series.find((one) => one.proposed && one.areaMm2 > size.areaMm2) ?? null;
}

/**
 * Which segment to thicken by one size: the steps that lower the worst load's drop most, best first. All are ranked
 * by their influence on that load; the best few are solved anew.
 */
export function thickenFirst(
	distribution: Distribution,
	before: SolvedDistribution,
	rules: RuleSet,
): readonly Thicker[] {
	const worst = before.loadNodes[0];
	if (worst === undefined) return [];
	const steps = distribution.segments.flatMap((segment, index) => {
		const size = 'size' in segment.way ? nextSize(segment.way.size) : null;
		return size === null ? [] : [{ index, size }];
	});
	const { branchesOf } = networkOf(distribution, before.segmentOhm);
	const changed = (step: { index: number; size: ConductorSize }): Distribution => ({
		...distribution,
		segments: distribution.segments.map((segment, index) =>
			index === step.index && 'size' in segment.way
				? { ...segment, way: { ...segment.way, size: step.size } }
				: segment,
		),
	});
	const usable = steps.filter((step) => unknownSegment(changed(step), rules) === null);
	const sets = usable.map((step): Change[] => {
		const segment = changed(step).segments[step.index] as Segment;
		const currentA = Math.abs(before.segmentA[step.index] as number);
		const ratio =
			ohmOf(segment, checkOf(segment, currentA, distribution, rules)) /
			(before.segmentOhm[step.index] as number);
		return (branchesOf[step.index] ?? []).map((branch) => ({
			branch,
			ohm: (before.network.branches[branch] as Branch).ohm * ratio,
		}));
	});
	const rises = risesOf(before.network, before.solved, worst.load, sets);
	return usable
		.map((step, place) => ({ step, rise: rises[place] as number }))
		.sort((a, b) => b.rise - a.rise)
		.slice(0, triedInFull)
		.flatMap(({ step }): Thicker[] => {
			const after = solveDistribution(changed(step), rules);
			if ('reason' in after) return [];
			const same = after.loadNodes.find((node) => node.node === worst.node);
			return same === undefined ? [] : [{ segment: step.index, size: step.size, dropV: same.dropV }];
		})
		.filter((one) => one.dropV < worst.dropV)
		.sort((a, b) => a.dropV - b.dropV);
}

/** True where the segments close a ring, so that a place is fed from two sides. */
export function hasRing(segments: readonly Segment[]): boolean {
	const parent = new Map<string, string>();
	const root = (node: string): string => {
		const above = parent.get(node);
		return above === undefined || above === node ? node : root(above);
	};
	for (const { from, to, leg } of segments) {
		if (leg === 'return') continue;
		const [a, b] = [root(from), root(to)];
		if (a === b) return true;
		parent.set(a, b);
	}
	return false;
}
