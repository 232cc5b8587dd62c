import { fromMemory, published, type Source } from '../topic/source.js';

/** A pipe size as it is sold. The smaller bore is the one a run is judged by. */
export interface PipeSize {
	/** "1/2 in PEX", "16 mm PEX" */
	readonly name: string;
	readonly system: 'us' | 'metric';
	/** the size it is named by [mm]: about the bore of inch tubing, the outside of metric tubing */
	readonly nominalMm: number;
	readonly outsideMm: number;
	readonly averageBoreMm: number;
	readonly smallestBoreMm: number;
	readonly source: Source;
}

export const pexSource = published('ASTM F876/F877', 'SDR 9 tubing, smallest bore (greatest wall)');
const metricPexSource = fromMemory('ISO 15875-2', 'pipe series S 3.2');

// nominal size, outside diameter [in], average bore [in], smallest bore [in]
const inch: readonly (readonly [string, number, number, number])[] = [
	['3/8', 0.5, 0.36, 0.35],
	['1/2', 0.625, 0.485, 0.475],
	['5/8', 0.75, 0.584, 0.574],
	['3/4', 0.875, 0.681, 0.671],
	['1', 1.125, 0.875, 0.863],
];

// outside diameter [mm], wall [mm]
const metric: readonly (readonly [number, number])[] = [
	[12, 1.7],
	[16, 2.2],
	[20, 2.8],
	[25, 3.5],
];

const mmPerInch = 25.4;

/** "3/8" is 0.375. */
function inches(nominal: string): number {
	const [over = Number.NaN, under = 1] = nominal.split('/').map(Number);
	return over / under;
}

/** Cross-linked polyethylene tubing, thinnest first. */
export const pexSizes: readonly PipeSize[] = [
	...inch.map(
		([nominal, outside, average, smallest]): PipeSize => ({
			name: `${nominal} in PEX`,
			system: 'us',
			nominalMm: inches(nominal) * mmPerInch,
			outsideMm: outside * mmPerInch,
			averageBoreMm: average * mmPerInch,
			smallestBoreMm: smallest * mmPerInch,
			source: pexSource,
		}),
	),
	...metric.map(
		([outsideMm, wallMm]): PipeSize => ({
			name: `${outsideMm} mm PEX`,
			system: 'metric',
			nominalMm: outsideMm,
			outsideMm,
			averageBoreMm: outsideMm - 2 * wallMm,
			// The wall may be up to 0.3 mm thicker than nominal.
			smallestBoreMm: outsideMm - 2 * (wallMm + 0.3),
			source: metricPexSource,
		}),
	),
];

/** The tubing sold by a nominal size, to a tenth of a millimetre; null where there is none. */
export function pexSizeNamed(nominalMm: number): PipeSize | null {
	return pexSizes.find((size) => Math.abs(size.nominalMm - nominalMm) < 0.1) ?? null;
}

/** Roughness of drawn plastic tubing [mm]. */
export const plasticRoughnessMm = 0.0015;
export const plasticRoughnessSource = fromMemory('Moody, Trans. ASME 1944', 'drawn tubing, 0.0015 mm');
/** Hazen-Williams coefficient of plastic tubing. */
export const plasticHazenWilliamsC = 150;

export type Fitting = 'elbow' | 'tee' | 'valve';

export const fittingLossSource = fromMemory(
	'ASHRAE Handbook of Fundamentals, pipe sizing',
	'K factors of threaded fittings',
);

// nominal bore up to which the row counts [mm], elbow 90°, tee through the branch, gate or ball valve
const fittingRows: readonly (readonly [number, number, number, number])[] = [
	[10, 2.5, 2.7, 0.4],
	[15, 2.1, 2.4, 0.33],
	[20, 1.7, 2.1, 0.28],
	[Number.POSITIVE_INFINITY, 1.5, 1.8, 0.24],
];

/** Loss coefficient of a fitting of this bore, referred to the velocity in the fitting. */
export function fittingK(fitting: Fitting, boreMm: number): number {
	const row = fittingRows.find(([toMm]) => boreMm <= toMm) as (typeof fittingRows)[number];
	return row[{ elbow: 1, tee: 2, valve: 3 }[fitting] as 1 | 2 | 3];
}
