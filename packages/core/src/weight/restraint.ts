import type { Bolt } from '../tables/bolts.js';
import { fromMemory, published, type Source } from '../topic/source.js';
import { gravityMS2 } from './gravity.js';

/** Accelerations an item is held against, in g, each by itself. */
export interface LoadCase {
	readonly forward: number;
	readonly rearward: number;
	readonly sideways: number;
	readonly upward: number;
	readonly sources: readonly Source[];
}

/**
 * The published load cases. Driving cases keep an item in its place under braking and in bends; they say nothing of a
 * crash. No rule sets a figure for fitted equipment: the crash case takes what seats and ambulance fittings are held to.
 */
export const loadCases = {
	driving: {
		forward: 0.8,
		rearward: 0.5,
		sideways: 0.5,
		upward: 0.2,
		sources: [published('49 CFR 393.102', '(a)(1) 0.8, 0.5 and 0.5 g; (b) 20 % of the weight downward')],
	},
	van: {
		forward: 0.9,
		rearward: 0.5,
		sideways: 0.7,
		upward: 0.2,
		sources: [
			fromMemory('ISO 27956 with VDI 2700-16', 'delivery vans up to 2 t: 0.9, 0.5 and 0.7 g'),
			published('49 CFR 393.102', '(b) 20 % of the weight downward'),
		],
	},
	crash: {
		forward: 20,
		rearward: 20,
		sideways: 10,
		upward: 10,
		sources: [
			fromMemory('49 CFR 571.207', 'S4.2: 20 times the seat’s weight, forward and rearward'),
			fromMemory('EN 1789', 'ambulance fittings: 10 g in every direction'),
		],
	},
} as const satisfies Record<string, LoadCase>;

export type LoadCaseName = keyof typeof loadCases;
const directions = ['forward', 'rearward', 'sideways', 'upward'] as const;
type Direction = (typeof directions)[number];

/** An item standing on its base, bolted down in two lines along the direction of travel. */
export interface Fixing {
	readonly massKg: number;
	/** centre of mass over the plane of the bolts [m] */
	readonly centreHeightM: number;
	/** first to last bolt of a line, along the direction of travel [m] */
	readonly alongM: number;
	/** between the two lines [m] */
	readonly acrossM: number;
	/** bolts in all; an odd one is not counted */
	readonly count: number;
	/** tension in a bolt over the pull of its bracket; 1 for a stiff foot */
	readonly prying: number;
	/** the sheet under the bolts, or null where it is not checked */
	readonly sheet: Sheet | null;
	/** pull-out load of an insert from its maker, or null for a through-bolt [N] */
	readonly insertN: number | null;
	readonly safetyFactor: number;
}

interface Sheet {
	readonly thicknessMm: number;
	/** breaking stress [MPa] */
	readonly ultimateMpa: number;
	/** washer or backing plate under each nut [mm] */
	readonly washerMm: number;
}

/** What the most loaded bolt sees in one direction. */
export interface BoltCheck {
	readonly direction: Direction;
	/** force on the item's centre of mass [N] */
	readonly forceN: number;
	readonly shearN: number;
	readonly tensionN: number;
	/** share of what is allowed; held where not above 1 */
	readonly utilisation: number;
}

/** Shear over tension that a bolt in shear through its thread may take. */
const shearShare = 0.6;
export const shearSource = fromMemory(
	'EN 1993-1-8',
	'Table 3.4: 0.6 of the tensile figure in shear, class 8.8',
);
/** Class 10.9 threads are held to less in shear: αv = 0.5. */
const hardShearShare = 0.5;
export const bearingSource = fromMemory(
	'EN 1993-1-8',
	'Table 3.4: bearing (1.5 fu d t, edges near) and punching 0.6 π d t fu',
);

/** What a bolt may be loaded with [N]: the lowest of bolt, insert and sheet over the safety factor. */
export function allowedOf(
	fixing: Fixing,
	bolt: Bolt,
): { readonly shearN: number; readonly tensionN: number } {
	const inShear = bolt.proofN * (bolt.propertyClass === '10.9' ? hardShearShare : shearShare);
	const { sheet, insertN } = fixing;
	const bearing =
		sheet === null ? Number.POSITIVE_INFINITY : 1.5 * sheet.ultimateMpa * bolt.diameterMm * sheet.thicknessMm;
	const punching =
		sheet === null
			? Number.POSITIVE_INFINITY
			: 0.6 * Math.PI * Math.max(sheet.washerMm, bolt.diameterMm) * sheet.thicknessMm * sheet.ultimateMpa;
	return {
		shearN: Math.min(inShear, bearing) / fixing.safetyFactor,
		tensionN: Math.min(bolt.proofN, insertN ?? Number.POSITIVE_INFINITY, punching) / fixing.safetyFactor,
	};
}

/**
 * Pull of the most loaded bolt when the item tips about its lee bolts: a stiff base, pull in proportion to the distance
 * from there, T = M d / Σ d².
 *
 * @param arms distance of every bolt from the lee bolts [m]
 * @returns [N], or infinite where no bolt stands away from them
 */
export function tippingPullN(momentNm: number, arms: readonly number[]): number {
	const squares = arms.reduce((sum, arm) => sum + arm ** 2, 0);
	if (momentNm === 0) return 0;
	return squares === 0 ? Number.POSITIVE_INFINITY : (momentNm * Math.max(...arms)) / squares;
}

/** The bolts' distances from the lee bolts, along the travel and across it [m]. */
export function boltArms(fixing: Fixing): {
	readonly along: readonly number[];
	readonly across: readonly number[];
} {
	const perLine = Math.floor(fixing.count / 2);
	const line = Array.from({ length: perLine }, (_, index) =>
		perLine === 1 ? 0 : (fixing.alongM * index) / (perLine - 1),
	);
	return {
		along: [...line, ...line],
		across: [...line.map(() => 0), ...line.map(() => fixing.acrossM)],
	};
}

/**
 * Judges one bolt size against one load case, every direction by itself.
 *
 * Neither the item's weight nor friction is counted as help: the safe side. Shear and pull add in proportion,
 * V / Va + T / Ta, which is on the safe side of the curves that design codes draw.
 */
export function checkBolt(fixing: Fixing, bolt: Bolt, loadCase: Omit<LoadCase, 'sources'>): BoltCheck[] {
	const counted = 2 * Math.floor(fixing.count / 2);
	const allowed = allowedOf(fixing, bolt);
	const arms = boltArms(fixing);
	return directions.map((direction) => {
		const forceN = loadCase[direction] * fixing.massKg * gravityMS2;
		const isUpward = direction === 'upward';
		const shearN = isUpward ? 0 : forceN / counted;
		const pullN = isUpward
			? forceN / counted
			: tippingPullN(forceN * fixing.centreHeightM, direction === 'sideways' ? arms.across : arms.along);
		const tensionN = pullN * fixing.prying;
		return {
			direction,
			forceN,
			shearN,
			tensionN,
			utilisation: shearN / allowed.shearN + tensionN / allowed.tensionN,
		};
	});
}

/** The direction that loads the bolts most. */
export function worstOf(checks: readonly BoltCheck[]): BoltCheck {
	const [first, ...rest] = checks;
	if (first === undefined) throw new Error('no direction was checked');
	return rest.reduce((worst, one) => (one.utilisation > worst.utilisation ? one : worst), first);
}
