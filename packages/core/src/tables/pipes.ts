import { fromMemory, published, type Source } from '../topic/source.js';

/** A pipe size as it is sold. The smaller bore is the one a run is judged by. */
export interface PipeSize {
	/** "1/2 in PEX", "16 mm PEX" */
	readonly name: string;
	readonly system: 'us' | 'metric';
	readonly outsideMm: number;
	readonly averageBoreMm: number;
	readonly smallestBoreMm: number;
	readonly source: Source;
}

const pexSource = published('ASTM F876/F877', 'SDR 9 tubing, smallest bore (greatest wall)');
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

/** Cross-linked polyethylene tubing, thinnest first. */
export const pexSizes: readonly PipeSize[] = [
	...inch.map(
		([nominal, outside, average, smallest]): PipeSize => ({
			name: `${nominal} in PEX`,
			system: 'us',
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
			outsideMm,
			averageBoreMm: outsideMm - 2 * wallMm,
			// The wall may be up to 0.3 mm thicker than nominal.
			smallestBoreMm: outsideMm - 2 * (wallMm + 0.3),
			source: metricPexSource,
		}),
	),
];

const fraction = `(?:3/8|1/2|5/8|3/4|[½¾⅜⅝]|half|three[ -]quarters?)`;
const tubing = `(?:pex|pipe|tubing|tube|line|rohr|leitung|schlauch|tuber[íi]a|tubo)`;

/** How a size of tubing is written: "1/2 pex", "3/4 in", "half inch pex", "pex 16 mm", "20mm pipe". */
export const pipeSizePattern = [
	String.raw`(?<![\d/.,])${fraction}[ -]*(?:in(?:ch)?\b|")?[ -]*(?:of )?${tubing}\b`,
	String.raw`(?<![\d/.,])${fraction}[ -]*(?:in(?:ch)?\b|")`,
	String.raw`(?<![\d/.,])1[ -]*(?:in(?:ch)?|")?[ -]*pex\b`,
	String.raw`(?<![\d/.,])(?:8|10|12|14|15|16|18|20|22|25|28|32)[ -]*mm[ -]*${tubing}\b`,
	String.raw`\b${tubing}[ :]*(?:(?:de|of) )?(?:${fraction}|(?:8|10|12|14|15|16|18|20|22|25|28|32) *mm\b)`,
].join('|');

const writtenOut: readonly (readonly [RegExp, string])[] = [
	[/half|½/i, '1/2'],
	[/three[ -]quarters?|¾/i, '3/4'],
	[/⅜/, '3/8'],
	[/⅝/, '5/8'],
];

/** The tubing meant by a written size, or null where no such size is in the table. */
export function pexSizeWritten(text: string): PipeSize | null {
	const plain = writtenOut.reduce((written, [from, to]) => written.replace(from, to), text);
	const number = /\d+(?:\/\d+)?/.exec(plain)?.[0];
	if (number === undefined) return null;
	const name = number.includes('/') || Number(number) < 3 ? `${number} in PEX` : `${number} mm PEX`;
	return pexSizes.find((size) => size.name === name) ?? null;
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
