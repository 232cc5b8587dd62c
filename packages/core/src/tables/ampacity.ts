import { fromMemory, published, type Source } from '../topic/source.js';
import type { ConductorSize } from './conductors.js';

/** Allowable current of a copper conductor by insulation temperature class. */
export interface AmpacityTable {
	readonly source: Source;
	/** insulation classes of the columns [°C], rising */
	readonly classesC: readonly number[];
	/** size name or area, then one value a column [A]; null where the table has none */
	readonly rows: Readonly<Record<string, readonly (number | null)[]>>;
}

/** Free-air style table of the federal boat rule, 30 °C ambient. A reference for a van, not law for one. */
export const boatAmpacity: AmpacityTable = {
	source: published('33 CFR 183.425', 'Table 5'),
	classesC: [60, 75, 80, 90, 105, 125, 200],
	rows: {
		'18 AWG': [10, 10, 15, 20, 20, 25, 25],
		'16 AWG': [15, 15, 20, 25, 25, 30, 35],
		'14 AWG': [20, 20, 25, 30, 35, 40, 45],
		'12 AWG': [25, 25, 35, 40, 45, 50, 55],
		'10 AWG': [40, 40, 50, 55, 60, 70, 70],
		'8 AWG': [55, 65, 70, 70, 80, 90, 100],
		'6 AWG': [80, 95, 100, 100, 120, 125, 135],
		'4 AWG': [105, 125, 130, 135, 160, 170, 180],
		'3 AWG': [120, 145, 150, 155, 180, 195, 210],
		'2 AWG': [140, 170, 175, 180, 210, 225, 240],
		'1 AWG': [165, 195, 210, 210, 245, 265, 280],
		'1/0 AWG': [195, 230, 245, 245, 285, 305, 325],
		'2/0 AWG': [225, 265, 285, 285, 330, 355, 370],
		'3/0 AWG': [260, 310, 330, 330, 385, 410, 430],
		'4/0 AWG': [300, 360, 385, 385, 445, 475, 510],
	},
};

/** At most three current-carrying conductors in cable or raceway, 30 °C ambient. */
export const necAmpacity: AmpacityTable = {
	source: published('NFPA 70 (NEC)', 'Table 310.16'),
	classesC: [60, 75, 90],
	rows: {
		'18 AWG': [null, null, 14],
		'16 AWG': [null, null, 18],
		'14 AWG': [15, 20, 25],
		'12 AWG': [20, 25, 30],
		'10 AWG': [30, 35, 40],
		'8 AWG': [40, 50, 55],
		'6 AWG': [55, 65, 75],
		'4 AWG': [70, 85, 95],
		'3 AWG': [85, 100, 115],
		'2 AWG': [95, 115, 130],
		'1 AWG': [110, 130, 145],
		'1/0 AWG': [125, 150, 170],
		'2/0 AWG': [145, 175, 195],
		'3/0 AWG': [165, 200, 225],
		'4/0 AWG': [195, 230, 260],
	},
};

/** Metric direct-current table; from memory, so it is capped by the boat table before use. */
export const isoAmpacity: AmpacityTable = {
	source: fromMemory('ISO 10133', 'Annex A, Table A.1'),
	classesC: [60, 70, 90, 105, 125, 200],
	rows: {
		'0.75 mm²': [6, 10, 12, 16, 20, 25],
		'1 mm²': [8, 14, 18, 20, 25, 35],
		'1.5 mm²': [12, 18, 21, 25, 30, 40],
		'2.5 mm²': [17, 25, 30, 35, 40, 45],
		'4 mm²': [22, 35, 40, 45, 50, 55],
		'6 mm²': [29, 45, 50, 60, 70, 75],
		'10 mm²': [40, 65, 70, 90, 100, 120],
		'16 mm²': [54, 90, 100, 130, 150, 170],
		'25 mm²': [71, 120, 140, 170, 185, 200],
		'35 mm²': [87, 160, 185, 210, 225, 240],
		'50 mm²': [105, 210, 230, 270, 300, 325],
		'70 mm²': [135, 265, 285, 330, 360, 375],
		'95 mm²': [165, 310, 330, 390, 410, 430],
		'120 mm²': [190, 360, 400, 450, 480, 520],
	},
};

/** Two loaded conductors of a multi-core cable in conduit (method B2), 30 °C; from memory, capped before use. */
export const iecAmpacity: AmpacityTable = {
	source: fromMemory('IEC 60364-5-52', 'method B2, two loaded conductors, 70 °C'),
	classesC: [70],
	rows: {
		'1 mm²': [13],
		'1.5 mm²': [16.5],
		'2.5 mm²': [23],
		'4 mm²': [30],
		'6 mm²': [38],
		'10 mm²': [52],
		'16 mm²': [69],
		'25 mm²': [90],
		'35 mm²': [111],
		'50 mm²': [133],
	},
};

/**
 * The table's value in the hottest column that the insulation reaches.
 * @returns [A], or null where the insulation is below the first column or the table lacks the size
 */
export function tabulatedA(table: AmpacityTable, sizeName: string, insulationC: number): number | null {
	const column = table.classesC.findLastIndex((classC) => classC <= insulationC);
	return table.rows[sizeName]?.[column] ?? null;
}

/**
 * The boat rule's factor for wires in an engine space, 50 °C: 183.425 Note 1. Only the 105 °C value was read; the
 * others are from memory and each equals the physics value, except the 200 °C one, which is looser and not used.
 */
export const engineSpaceFactors: Readonly<Record<number, number>> = {
	60: 0.58,
	75: 0.75,
	80: 0.78,
	90: 0.82,
	105: 0.85,
	125: 0.89,
};

/**
 * The table's value for any size: as printed where the table has the size, else read at its copper area between the
 * sizes that the table does have.
 * @param tableSizes the sizes of the table's own series
 * @returns [A], or null where the table has no value
 */
export function ampacityOf(
	table: AmpacityTable,
	tableSizes: readonly ConductorSize[],
	size: ConductorSize,
	insulationC: number,
): number | null {
	return tableSizes[0]?.system === size.system
		? tabulatedA(table, size.name, insulationC)
		: interpolatedA(table, tableSizes, size.areaMm2, insulationC);
}

interface Band {
	readonly to: number;
	readonly factor: number;
}

/** Bundles in a duct, bundle or cable: 33 CFR 183.425 Note 2. */
export const boatBundleBands: readonly Band[] = [
	{ to: 2, factor: 1 },
	{ to: 3, factor: 0.7 },
	{ to: 6, factor: 0.6 },
	{ to: 24, factor: 0.5 },
	{ to: Number.POSITIVE_INFINITY, factor: 0.4 },
];
export const boatBundleSource = published('33 CFR 183.425', 'Table 5, Note 2');

/** More than three current-carrying conductors: NEC 310.15(C)(1). */
export const necBundleBands: readonly Band[] = [
	{ to: 3, factor: 1 },
	{ to: 6, factor: 0.8 },
	{ to: 9, factor: 0.7 },
	{ to: 20, factor: 0.5 },
	{ to: 30, factor: 0.45 },
	{ to: 40, factor: 0.4 },
	{ to: Number.POSITIVE_INFINITY, factor: 0.35 },
];
export const necBundleSource = published('NFPA 70 (NEC)', '310.15(C)(1)');

export function bandFactor(bands: readonly Band[], conductors: number): number {
	const band = bands.find((one) => conductors <= one.to);
	if (band === undefined) throw new Error(`no band for ${conductors} conductors`);
	return band.factor;
}

/** Ambient correction of NEC 310.15(B)(1): upper end of the band [°C], factor at 60, 75, 90 °C insulation. */
export const necAmbientBands: readonly {
	readonly toC: number;
	readonly factors: readonly (number | null)[];
}[] = [
	{ toC: 30, factors: [1, 1, 1] },
	{ toC: 35, factors: [0.91, 0.94, 0.96] },
	{ toC: 40, factors: [0.82, 0.88, 0.91] },
	{ toC: 45, factors: [0.71, 0.82, 0.87] },
	{ toC: 50, factors: [0.58, 0.75, 0.82] },
	{ toC: 55, factors: [0.41, 0.67, 0.76] },
	{ toC: 60, factors: [null, 0.58, 0.71] },
	{ toC: 65, factors: [null, 0.47, 0.65] },
	{ toC: 70, factors: [null, 0.33, 0.58] },
	{ toC: 75, factors: [null, null, 0.5] },
	{ toC: 80, factors: [null, null, 0.41] },
	{ toC: 85, factors: [null, null, 0.29] },
];
export const necAmbientSource = published('NFPA 70 (NEC)', 'Table 310.15(B)(1)');

/**
 * Ambient correction from the heat balance of a conductor: sqrt((Tc - Ta) / (Tc - 30)). No credit is given for a
 * cool place.
 */
export function ambientFactor(insulationC: number, ambientC: number): number {
	if (ambientC <= 30) return 1;
	return ambientC >= insulationC ? 0 : Math.sqrt((insulationC - ambientC) / (insulationC - 30));
}
export const ambientFormulaSource = published('NFPA 70 (NEC)', '310.15(B), ambient correction equation');

/** A value between tabulated sizes, on a straight line of log(ampacity) over log(area). */
export function interpolatedA(
	table: AmpacityTable,
	sizes: readonly { readonly name: string; readonly areaMm2: number }[],
	areaMm2: number,
	insulationC: number,
): number | null {
	const points = sizes
		.map((size) => ({ areaMm2: size.areaMm2, ampacityA: tabulatedA(table, size.name, insulationC) }))
		.filter((point): point is { areaMm2: number; ampacityA: number } => point.ampacityA !== null);
	const above = points.findIndex((point) => point.areaMm2 >= areaMm2);
	const upper = points[above];
	if (upper === undefined) return points.at(-1)?.ampacityA ?? null;
	if (upper.areaMm2 === areaMm2) return upper.ampacityA;
	const lower = points[above - 1];
	// Below the thinnest tabulated size: in proportion to the area, which lies below the true curve.
	if (lower === undefined) return (upper.ampacityA * areaMm2) / upper.areaMm2;
	const share = Math.log(areaMm2 / lower.areaMm2) / Math.log(upper.areaMm2 / lower.areaMm2);
	return lower.ampacityA * (upper.ampacityA / lower.ampacityA) ** share;
}
