import { published } from '../topic/source.js';

/** A metric coarse thread of one property class. */
export interface Bolt {
	readonly thread: string;
	readonly propertyClass: string;
	readonly diameterMm: number;
	/** nominal stress area [mm²] */
	readonly stressAreaMm2: number;
	/** load it takes without lasting stretch [N] */
	readonly proofN: number;
	/** least breaking load [N] */
	readonly ultimateN: number;
}

export const boltSource = published(
	'ISO 898-1',
	'proof loads and minimum ultimate tensile loads, coarse thread',
);

export const propertyClasses = ['8.8', '10.9'] as const;
export type PropertyClass = (typeof propertyClasses)[number];

function bolt(
	diameterMm: number,
	propertyClass: PropertyClass,
	stressAreaMm2: number,
	proofN: number,
	ultimateN: number,
): Bolt {
	return { thread: `M${diameterMm}`, propertyClass, diameterMm, stressAreaMm2, proofN, ultimateN };
}

/** Thinnest first within a class. */
export const bolts: readonly Bolt[] = [
	bolt(6, '8.8', 20.1, 11_600, 16_100),
	bolt(8, '8.8', 36.6, 21_200, 29_200),
	bolt(10, '8.8', 58.0, 33_700, 46_400),
	bolt(12, '8.8', 84.3, 48_900, 67_400),
	bolt(6, '10.9', 20.1, 16_700, 20_900),
	bolt(8, '10.9', 36.6, 30_400, 38_100),
	bolt(10, '10.9', 58.0, 48_100, 60_300),
	bolt(12, '10.9', 84.3, 70_000, 87_700),
];
