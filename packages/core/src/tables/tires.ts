import { published } from '../topic/source.js';

export const smallestLoadIndex = 70;

/** What one tire may carry [kg], from load index 70 to 130. */
const loadsKg: readonly number[] = [
	335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450, 462, 475, 487, 500, 515, 530, 545, 560, 580, 600,
	615, 630, 650, 670, 690, 710, 730, 750, 775, 800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, 1060, 1090,
	1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, 1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850,
	1900,
];

export const largestLoadIndex = smallestLoadIndex + loadsKg.length - 1;
export const loadIndexSource = published('ISO 4000-1', 'load index table');

/**
 * The load a tire of this index may carry at its reference pressure and its symbol's speed.
 * @returns [kg], or null outside the table
 */
export function loadOfIndexKg(loadIndex: number): number | null {
	return loadsKg[loadIndex - smallestLoadIndex] ?? null;
}

/** The smallest load index that carries so much [kg], or null where the table ends below it. */
export function indexForLoad(loadKg: number): number | null {
	const place = loadsKg.findIndex((one) => one >= loadKg);
	return place < 0 ? null : smallestLoadIndex + place;
}

/** The highest speed of each speed symbol [km/h]. H stands out of alphabetical order. */
export const speedSymbolsKmh = {
	J: 100,
	K: 110,
	L: 120,
	M: 130,
	N: 140,
	P: 150,
	Q: 160,
	R: 170,
	S: 180,
	T: 190,
	U: 200,
	H: 210,
	V: 240,
	W: 270,
	Y: 300,
} as const;

export type SpeedSymbol = keyof typeof speedSymbolsKmh;
export const speedSymbolSource = published('ISO 4000-1', 'speed symbols');
