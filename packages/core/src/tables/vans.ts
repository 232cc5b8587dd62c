import { practice } from '../topic/source.js';

/** Masses and axles of a bare panel van by its wheelbase class: typical figures, no van in particular. */
export interface VanClass {
	readonly wheelbaseM: number;
	/** bare van with fuel, no driver, medium roof [kg] */
	readonly emptyKg: number;
	/** share of it on the front axle */
	readonly frontShare: number;
	/** from the rear axle to the rear doors [m] */
	readonly rearOverhangM: number;
}

export const vanClasses = {
	short: { wheelbaseM: 3.0, emptyKg: 1850, frontShare: 0.58, rearOverhangM: 0.9 },
	medium: { wheelbaseM: 3.4, emptyKg: 1950, frontShare: 0.57, rearOverhangM: 0.95 },
	long: { wheelbaseM: 3.7, emptyKg: 2100, frontShare: 0.56, rearOverhangM: 1.0 },
	'extra-long': { wheelbaseM: 4.0, emptyKg: 2250, frontShare: 0.54, rearOverhangM: 1.4 },
} as const satisfies Record<string, VanClass>;

export type VanClassName = keyof typeof vanClasses;

export interface RoofClass {
	/** what it weighs more than a medium roof [kg] */
	readonly moreKg: number;
	/** centre of gravity of the bare van over the ground [m] */
	readonly centreHeightM: number;
	/** roof skin over the ground [m] */
	readonly heightM: number;
}

export const roofClasses = {
	low: { moreKg: -60, centreHeightM: 0.75, heightM: 2.0 },
	medium: { moreKg: 0, centreHeightM: 0.79, heightM: 2.5 },
	high: { moreKg: 60, centreHeightM: 0.83, heightM: 2.8 },
} as const satisfies Record<string, RoofClass>;

export type RoofClassName = keyof typeof roofClasses;

/** Middle to middle of the tires [m]. */
export const usualTrackM = 1.7;
/** Hip point of the cab seats behind the front axle [m]. */
export const usualSeatM = 1.0;
/** Where the living space begins behind the front axle [m]. */
export const bulkheadM = 1.6;

export const vanSource = practice('typical figures by size class; weigh the van and read its label');
