import { create, lusolveDependencies } from '../mathjs.js';

// Only the linear solver: mathjs whole takes most of a second to load.
const math = create(lusolveDependencies ?? {});

/** Pinned holds the place, fixed the place and the slope. */
export interface Support {
	readonly atM: number;
	readonly kind: 'pinned' | 'fixed';
}

/** Loads act downward when positive. */
export type BeamLoad =
	| { readonly kind: 'point'; readonly atM: number; readonly forceN: number }
	| {
			readonly kind: 'uniform';
			readonly fromM: number;
			readonly toM: number;
			readonly forceNPerM: number;
	  };

export interface Beam {
	readonly lengthM: number;
	readonly supports: readonly Support[];
	readonly loads: readonly BeamLoad[];
	/** E I [N m²] */
	readonly rigidityNm2: number;
}

/** What a support gives: force upward positive, couple positive where it adds sagging moment to its right. */
interface Reaction {
	readonly atM: number;
	readonly forceN: number;
	readonly momentNm: number;
}

export interface Extreme {
	readonly atM: number;
	/** signed: deflection downward, moment sagging positive */
	readonly value: number;
}

/** The solved beam as functions of the place x [m], for figures and tables alike. */
export interface SolvedBeam {
	readonly beam: Beam;
	readonly reactions: readonly Reaction[];
	/** sag, downward positive [m] */
	readonly deflectionM: (x: number) => number;
	readonly slopeRad: (x: number) => number;
	/** bending moment, sagging positive [N m] */
	readonly momentNm: (x: number) => number;
	/** shear force just right of x, upward on the left face positive [N] */
	readonly shearN: (x: number) => number;
	/** ends, supports, ends of loads and all places where the beam is level: the largest sag of any stretch is at one */
	readonly deflectionPlaces: readonly number[];
	/** largest sag or hog by size */
	readonly largestDeflection: Extreme;
	/** largest bending moment by size */
	readonly largestMoment: Extreme;
	readonly largestShearN: number;
}

/** One force or couple on the beam; a uniform load is two ramps. */
interface Term {
	readonly atM: number;
	/** order of the term in the bending moment: 0 couple, 1 force, 2 line load */
	readonly order: 0 | 1 | 2;
	/** positive adds sagging moment */
	readonly size: number;
}

/** A support with less than this share of the length to the next can't be told from it. */
const nearest = 1e-4;

/**
 * Solves a straight prismatic beam by direct integration of E I v'' = -M with step functions (Macaulay brackets).
 * The unknowns are the supports' forces and couples and the two constants of integration; the equations are the
 * supports' conditions and the two of equilibrium. Small deflections, no shear deformation.
 *
 * @returns the solution, or null where the supports don't hold the beam (or stand in the same place), or where a load or
 * a support stands off it
 * @source Roark's Formulas for Stress and Strain, chapter 8; any text on Macaulay's method
 */
export function solveBeam(beam: Beam): SolvedBeam | null {
	if (!isHeld(beam)) return null;
	const known = beam.loads.flatMap(termsOfLoad);
	const unknown = beam.supports.flatMap((support) => [
		{ atM: support.atM, order: 1 as const },
		...(support.kind === 'fixed' ? [{ atM: support.atM, order: 0 as const }] : []),
	]);
	const L = beam.lengthM;
	// Everything is solved with E I = 1 and the length as unit, so that the matrix is well scaled.
	const rows: number[][] = [];
	const right: number[] = [];
	for (const support of beam.supports) {
		const x = support.atM;
		rows.push([...unknown.map((one) => -bracket(x, one, 2) / L ** (one.order + 2)), 1, x / L]);
		right.push(sum(known, (term) => (term.size * bracket(x, term, 2)) / L ** 3));
		if (support.kind === 'fixed') {
			rows.push([...unknown.map((one) => -bracket(x, one, 1) / L ** (one.order + 1)), 0, 1]);
			right.push(sum(known, (term) => (term.size * bracket(x, term, 1)) / L ** 2));
		}
	}
	rows.push([...unknown.map((one) => (one.order === 1 ? 1 : 0)), 0, 0]);
	right.push(-sum(known, (term) => term.size * bracket(L, term, -1)));
	rows.push([...unknown.map((one) => bracket(L, one, 0) / L ** one.order), 0, 0]);
	right.push(-sum(known, (term) => (term.size * bracket(L, term, 0)) / L));
	const solution = math.lusolve(rows, right).map((row) => Number((row as unknown as number[])[0]));

	const terms: Term[] = [...known];
	unknown.forEach((one, index) => {
		const size = (solution[index] as number) * (one.order === 0 ? L : 1);
		terms.push({ ...one, size });
	});
	const constant = (solution.at(-2) as number) * L ** 3;
	const linear = (solution.at(-1) as number) * L ** 2;
	const EI = beam.rigidityNm2;
	const momentNm = (x: number) => sum(terms, (term) => term.size * bracket(x, term, 0));
	const shearN = (x: number) => sum(terms, (term) => term.size * bracket(x, term, -1));
	const slopeRad = (x: number) => (linear - sum(terms, (term) => term.size * bracket(x, term, 1))) / EI;
	const deflectionM = (x: number) =>
		(constant + linear * x - sum(terms, (term) => term.size * bracket(x, term, 2))) / EI;

	const reactions = beam.supports.map((support) => {
		const here = terms.slice(known.length).filter((term) => term.atM === support.atM);
		return {
			atM: support.atM,
			forceN: here.find((term) => term.order === 1)?.size ?? 0,
			momentNm: here.find((term) => term.order === 0)?.size ?? 0,
		};
	});
	const breaks = breakpoints(beam);
	const bends = breaks.flatMap((x, index) => stationaryMoments(x, breaks[index + 1], shearN));
	const moments = [...breaks.flatMap((x) => [x, x - tiny(beam)]), ...bends].filter((x) => x >= 0);
	const deflectionPlaces = levelPlaces([...breaks, ...bends], tiny(beam), momentNm, slopeRad);
	return {
		beam,
		reactions,
		deflectionM,
		slopeRad,
		momentNm,
		shearN,
		deflectionPlaces,
		largestDeflection: largest(deflectionPlaces, deflectionM),
		largestMoment: largest(moments, momentNm),
		largestShearN: Math.abs(
			largest(
				breaks.flatMap((x) => [x, Math.max(0, x - tiny(beam))]),
				shearN,
			).value,
		),
	};
}

function isHeld(beam: Beam): boolean {
	const isOn = (x: number) => x >= 0 && x <= beam.lengthM;
	const loadPlaces = beam.loads.flatMap((load) =>
		load.kind === 'point' ? [load.atM] : [load.fromM, load.toM],
	);
	// A load a hair beyond the end would count for nothing.
	if (![...loadPlaces, ...beam.supports.map((support) => support.atM)].every(isOn)) return false;
	const places = beam.supports.map((support) => support.atM).toSorted((a, b) => a - b);
	if (places.some((x, index) => index > 0 && x - (places[index - 1] as number) < nearest * beam.lengthM))
		return false;
	return places.length >= 2 || beam.supports.some((support) => support.kind === 'fixed');
}

function termsOfLoad(load: BeamLoad): Term[] {
	if (load.kind === 'point') return [{ atM: load.atM, order: 1, size: -load.forceN }];
	return [
		{ atM: load.fromM, order: 2, size: -load.forceNPerM },
		{ atM: load.toM, order: 2, size: load.forceNPerM },
	];
}

/** <x - a>^n / n! with n the term's order plus `more`; 0 left of a, and for a negative n. */
function bracket(x: number, term: Pick<Term, 'atM' | 'order'>, more: number): number {
	const power = term.order + more;
	if (power < 0 || x < term.atM) return 0;
	return (x - term.atM) ** power / (factorials[power] as number);
}

const factorials = [1, 1, 2, 6, 24];

function sum<T>(all: readonly T[], of: (one: T) => number): number {
	return all.reduce((total, one) => total + of(one), 0);
}

/** A step to the left of a place, to see a jump from both sides. */
function tiny(beam: Beam): number {
	return 1e-12 * beam.lengthM;
}

function breakpoints(beam: Beam): number[] {
	const places = [
		0,
		beam.lengthM,
		...beam.supports.map((support) => support.atM),
		...beam.loads.flatMap((load) => (load.kind === 'point' ? [load.atM] : [load.fromM, load.toM])),
	];
	return [...new Set(places)].toSorted((a, b) => a - b);
}

/** Where the moment is level inside an interval: the shear is a straight line there. */
function stationaryMoments(from: number, to: number | undefined, shearN: (x: number) => number): number[] {
	if (to === undefined) return [];
	const middle = (from + to) / 2;
	const atFrom = shearN(from);
	const slope = (shearN(middle) - atFrom) / (middle - from);
	if (slope === 0) return [];
	const place = from - atFrom / slope;
	return place > from && place < to ? [place] : [];
}

/**
 * The places given and those where the beam is level. Between breakpoints, peaks of the moment and points of no moment
 * the slope only rises or only falls, so that each such stretch holds one level place at most.
 */
function levelPlaces(
	places: readonly number[],
	step: number,
	momentNm: (x: number) => number,
	slopeRad: (x: number) => number,
): number[] {
	const stretches = places.toSorted((a, b) => a - b);
	// A fixed support's couple makes the moment jump: a stretch ends just before it.
	const cuts = stretches.flatMap((from, index) => {
		const to = stretches[index + 1];
		return to === undefined ? [] : crossing(from, to - step, momentNm);
	});
	const all = [...stretches, ...cuts].toSorted((a, b) => a - b);
	return [...all, ...all.flatMap((from, index) => crossing(from, all[index + 1], slopeRad))];
}

/** The place where a function that only rises or falls changes its sign, by halving. */
function crossing(from: number, to: number | undefined, of: (x: number) => number): number[] {
	if (to === undefined) return [];
	let low = from;
	let high = to;
	const sign = Math.sign(of(low));
	if (sign === 0 || sign * of(high) >= 0) return [];
	for (let step = 0; step < 60; step += 1) {
		const middle = (low + high) / 2;
		if (sign * of(middle) > 0) low = middle;
		else high = middle;
	}
	return [high];
}

/** The place where a function of the beam is largest by size. */
export function largest(places: readonly number[], of: (x: number) => number): Extreme {
	let best: Extreme = { atM: 0, value: 0 };
	for (const atM of places) {
		const value = of(atM);
		if (Math.abs(value) > Math.abs(best.value)) best = { atM, value };
	}
	return best;
}
