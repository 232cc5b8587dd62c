import { gravityMS2 } from '../weight/gravity.js';
import { type Beam, type BeamLoad, largest, type SolvedBeam, type Support, solveBeam } from './beam.js';

/** How a rail, crossbeam or shelf is held. */
export type Holding = 'simple' | 'cantilever' | 'fixed' | 'propped';

/** A spread load by what it comes to in all, as a mattress, or by the metre, as a strip of floor [N], [N/m]. */
type Amount = { readonly totalN: number } | { readonly perMetreN: number };

/** Places are measured from the left support (from the wall for a cantilever) [m]; loads act downward [N]. */
export type MemberLoad =
	| { readonly kind: 'point'; readonly atM: number; readonly forceN: number }
	| { readonly kind: 'spread'; readonly fromM: number; readonly toM: number; readonly amount: Amount }
	/** spread over the whole member */
	| { readonly kind: 'even'; readonly amount: Amount }
	/** a force that may stand anywhere: it is put where it bends the member most */
	| { readonly kind: 'anywhere'; readonly forceN: number };

export interface Member {
	readonly holding: Holding;
	readonly spanM: number;
	readonly leftOverhangM: number;
	readonly rightOverhangM: number;
	readonly loads: readonly MemberLoad[];
	/** members that share the loads evenly */
	readonly sharing: number;
	/** second moment that counts for the sag [mm⁴] */
	readonly secondMomentMm4: number;
	/** elastic modulus, or null where the depth is not known [mm³] */
	readonly modulusMm3: number | null;
	readonly modulusGpa: number;
	/** own weight of one member [N/m] */
	readonly ownWeightNPerM: number;
}

export interface MemberCheck {
	readonly solved: SolvedBeam;
	/** largest sag between the supports, or of the cantilever [m] */
	readonly spanSagM: number;
	/** largest sag of an overhang's tip, and the overhang's length, or null for none */
	readonly overhangSag: { readonly sagM: number; readonly overhangM: number } | null;
	/** least of span over sag and overhang over its sag; infinite where nothing sags */
	readonly ratio: number;
	readonly momentNm: number;
	/** largest bending stress, or null where the depth is not known [MPa] */
	readonly stressMpa: number | null;
}

/** Weight of a bar of this area [N/m]. */
export function barWeightNPerM(areaMm2: number, densityKgM3: number): number {
	return areaMm2 * 1e-6 * densityKgM3 * gravityMS2;
}

/** A load whose place is known. */
type PlacedLoad = Exclude<MemberLoad, { kind: 'anywhere' }>;
type PlacedMember = Omit<Member, 'loads'> & { readonly loads: readonly PlacedLoad[] };

/**
 * Solves one member with its share of the loads and its own weight; a force that may stand anywhere is tried where it
 * sags the member most and where it bends it most, and the worse of each counts.
 * @returns null where a load stands off the member
 */
export function checkMember(member: Member): MemberCheck | null {
	const checks = placements(member)?.map(checkPlaced);
	if (checks === undefined) return null;
	const [first, second] = checks;
	if (first === undefined || first === null) return null;
	if (second === undefined || second === null) return first;
	const momentNm = Math.max(first.momentNm, second.momentNm);
	return { ...first, momentNm, stressMpa: stressOf(member, momentNm) };
}

function stressOf(member: Omit<Member, 'loads'>, momentNm: number): number | null {
	return member.modulusMm3 === null ? null : (momentNm * 1000) / member.modulusMm3;
}

function checkPlaced(member: PlacedMember): MemberCheck | null {
	const solved = solveBeam(beamOf(member));
	if (solved === null) return null;
	const { leftOverhangM: left, spanM, rightOverhangM: right } = overhangsOf(member);
	const sagAt = (from: number, to: number) =>
		Math.abs(
			largest(
				solved.deflectionPlaces.filter((x) => x >= from && x <= to),
				solved.deflectionM,
			).value,
		);
	const spanSagM = sagAt(left, left + spanM);
	const tips = [
		{ sagM: sagAt(0, left), overhangM: left },
		{ sagM: sagAt(left + spanM, left + spanM + right), overhangM: right },
	].filter((tip) => tip.overhangM > 0);
	const softest = tips.toSorted((a, b) => b.sagM / b.overhangM - a.sagM / a.overhangM)[0] ?? null;
	const ratios = [{ sagM: spanSagM, overhangM: spanM }, ...tips].map((one) =>
		one.sagM === 0 ? Number.POSITIVE_INFINITY : one.overhangM / one.sagM,
	);
	const momentNm = Math.abs(solved.largestMoment.value);
	return {
		solved,
		spanSagM,
		overhangSag: softest,
		ratio: Math.min(...ratios),
		momentNm,
		stressMpa: stressOf(member, momentNm),
	};
}

type Spans = Pick<Member, 'holding' | 'leftOverhangM' | 'spanM' | 'rightOverhangM'>;

function overhangsOf(member: Spans): Spans {
	return member.holding === 'cantilever' ? { ...member, leftOverhangM: 0, rightOverhangM: 0 } : member;
}

function supportsOf(member: Spans): Support[] {
	const { leftOverhangM: left, spanM } = overhangsOf(member);
	const isFixed =
		member.holding === 'fixed' || member.holding === 'cantilever' || member.holding === 'propped';
	const first: Support = { atM: left, kind: isFixed ? 'fixed' : 'pinned' };
	if (member.holding === 'cantilever') return [first];
	// The same sum as the member's length, so that a support at its end stands on it.
	return [first, { atM: left + spanM, kind: member.holding === 'fixed' ? 'fixed' : 'pinned' }];
}

function beamOf(member: PlacedMember): Beam {
	const { leftOverhangM: left, spanM, rightOverhangM: right } = overhangsOf(member);
	const lengthM = left + spanM + right;
	const share = 1 / member.sharing;
	const mine = member.loads.map((load) => placedLoad(load, left, lengthM, share));
	return {
		lengthM,
		supports: supportsOf(member),
		loads: [...mine, { kind: 'uniform', fromM: 0, toM: lengthM, forceNPerM: member.ownWeightNPerM }],
		// GPa times mm⁴ is 1e-3 N m².
		rigidityNm2: member.modulusGpa * member.secondMomentMm4 * 1e-3,
	};
}

function perMetreN(amount: Amount, lengthM: number): number {
	return 'perMetreN' in amount ? amount.perMetreN : amount.totalN / lengthM;
}

function placedLoad(load: PlacedLoad, left: number, lengthM: number, share: number): BeamLoad {
	// Stretching and adding leave a hair of rounding: a load at the tip must not fall off it.
	const onBeam = (atM: number) => Math.min(Math.max(left + atM, 0), lengthM);
	switch (load.kind) {
		case 'point':
			return { kind: 'point', atM: onBeam(load.atM), forceN: load.forceN * share };
		case 'spread':
			return {
				kind: 'uniform',
				fromM: onBeam(load.fromM),
				toM: onBeam(load.toM),
				forceNPerM: perMetreN(load.amount, load.toM - load.fromM) * share,
			};
		case 'even':
			return {
				kind: 'uniform',
				fromM: 0,
				toM: lengthM,
				forceNPerM: perMetreN(load.amount, lengthM) * share,
			};
	}
}

/** The member with its loads in place: once where nothing is free to move, else worst for sag and worst for bending. */
function placements(member: Member): PlacedMember[] | null {
	const { leftOverhangM: left, spanM, rightOverhangM: right } = overhangsOf(member);
	const slack = 1e-9 * spanM;
	const isOn = (x: number) => x >= -left - slack && x <= spanM + right + slack;
	const isPlaced = (load: MemberLoad) =>
		load.kind === 'point'
			? isOn(load.atM)
			: load.kind !== 'spread' || (isOn(load.fromM) && isOn(load.toM) && load.fromM < load.toM);
	if (!member.loads.every(isPlaced)) return null;
	const at = (atM: number): PlacedMember => ({
		...member,
		loads: member.loads.map((load) =>
			load.kind === 'anywhere' ? { kind: 'point', atM, forceN: load.forceN } : load,
		),
	});
	if (!member.loads.some((load) => load.kind === 'anywhere')) return [at(0)];
	const { sagM, bendingM } = worstPlaces(member);
	return sagM === bendingM ? [at(sagM)] : [at(sagM), at(bendingM)];
}

/** Where a single force sags the member most for its length, and where it bends it most. */
function worstPlaces(member: Member): { readonly sagM: number; readonly bendingM: number } {
	const { leftOverhangM: left, spanM, rightOverhangM: right } = overhangsOf(member);
	if (member.holding === 'cantilever') return { sagM: spanM, bendingM: spanM };
	if (member.holding === 'simple' && left === 0 && right === 0)
		return { sagM: spanM / 2, bendingM: spanM / 2 };
	const steps = 24;
	const tried = [
		...Array.from({ length: steps + 1 }, (_, index) => (spanM * index) / steps),
		...(left > 0 ? [-left] : []),
		...(right > 0 ? [spanM + right] : []),
	].flatMap((atM) => {
		const check = checkPlaced({ ...member, ownWeightNPerM: 0, loads: [{ kind: 'point', atM, forceN: 1 }] });
		return check === null ? [] : [{ atM, check }];
	});
	const worst = (of: (check: MemberCheck) => number) =>
		tried.reduce((most, one) => (of(one.check) > of(most.check) ? one : most)).atM;
	return { sagM: worst((check) => 1 / check.ratio), bendingM: worst((check) => check.momentNm) };
}

/** The same member with its span and the places of its loads stretched alike; what was given in all stays so much. */
function stretched(member: PlacedMember, spanM: number): PlacedMember {
	const by = spanM / member.spanM;
	return {
		...member,
		spanM,
		leftOverhangM: member.leftOverhangM * by,
		rightOverhangM: member.rightOverhangM * by,
		loads: member.loads.map((load) => {
			if (load.kind === 'point') return { ...load, atM: load.atM * by };
			if (load.kind === 'spread') return { ...load, fromM: load.fromM * by, toM: load.toM * by };
			return load;
		}),
	};
}

export interface Limits {
	/** span over sag must be at least this */
	readonly ratio: number;
	/** stress must be at most this, or null where it can't be known [MPa] */
	readonly stressMpa: number | null;
}

/** True where sag and stress keep their limits. */
export function keeps(check: MemberCheck, limits: Limits): boolean {
	const stressHolds =
		check.stressMpa === null || limits.stressMpa === null || check.stressMpa <= limits.stressMpa;
	return check.ratio >= limits.ratio && stressHolds;
}

/** The longest span, loads stretched along, that keeps the limits [m]; 0 where none does. */
export function longestSpanM(member: Member, limits: Limits, mostM = 12): number {
	const cases = placements(member) ?? [];
	const holds = (spanM: number) =>
		cases.every((one) => {
			const check = checkPlaced(stretched(one, spanM));
			return check !== null && keeps(check, limits);
		});
	let low = 0.01;
	let high = mostM;
	if (!holds(low)) return 0;
	if (holds(high)) return high;
	for (let step = 0; step < 40; step += 1) {
		const middle = (low + high) / 2;
		if (holds(middle)) low = middle;
		else high = middle;
	}
	return low;
}
