import { practice } from '../topic/source.js';
import type { Roof, Wheelbase } from './interiors.js';

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

export const vanClasses: Readonly<Record<Wheelbase, VanClass>> = {
	short: { wheelbaseM: 3.0, emptyKg: 1850, frontShare: 0.58, rearOverhangM: 0.9 },
	medium: { wheelbaseM: 3.5, emptyKg: 1980, frontShare: 0.57, rearOverhangM: 0.95 },
	long: { wheelbaseM: 4.0, emptyKg: 2120, frontShare: 0.56, rearOverhangM: 1.0 },
	'extra-long': { wheelbaseM: 4.3, emptyKg: 2280, frontShare: 0.54, rearOverhangM: 1.4 },
};

export interface RoofClass {
	/** what it weighs more than a medium roof [kg] */
	readonly moreKg: number;
	/** centre of gravity of the bare van over the ground [m] */
	readonly centreHeightM: number;
	/** roof skin over the ground [m] */
	readonly heightM: number;
}

export const roofClasses: Readonly<Record<Roof, RoofClass>> = {
	low: { moreKg: -60, centreHeightM: 0.73, heightM: 2.0 },
	medium: { moreKg: 0, centreHeightM: 0.76, heightM: 2.5 },
	high: { moreKg: 60, centreHeightM: 0.8, heightM: 2.8 },
};

/** Middle to middle of the tires [m]. */
export const usualTrackM = 1.7;
/** Hip point of the cab seats behind the front axle [m]. */
export const usualSeatM = 1.0;
/** Where the living space begins behind the front axle [m]. */
export const bulkheadM = 1.6;
/** Centre of what stands on the floor, over the ground [m]. */
export const usualLoadHeightM = 1.0;
/** What stands on one side, from the middle line [m]. */
export const usualSideM = 0.6;

export const vanSource = practice('typical figures by size class; weigh the van and read its label');
