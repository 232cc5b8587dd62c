import { fromMemory, practice, published, type Source } from '../topic/source.js';

/** A construction of fuse with what its standard lets it do. */
export interface FuseClass {
	readonly name: FuseClassName;
	readonly label: string;
	/** document and edition */
	readonly standard: string;
	/** highest rated voltage of the class [V] */
	readonly ratedVoltageV: number;
	/** highest rated current of the class [A] */
	readonly largestRatingA: number;
	/** largest current it breaks, or usually breaks where the marking decides [A] */
	readonly breaksA: number;
	/**
	 * Where the direct-current rating is optional and the marking on the fuse decides: the highest interrupting rating
	 * in which it is marked [A]. Null where the standard itself fixes what it breaks.
	 */
	readonly markedUpToA: number | null;
	readonly source: Source;
}

export type FuseClassName =
	| 'blade'
	| 'subMiniature'
	| 'femaleContact'
	| 'strip'
	| 'singleBolt'
	| 'classT'
	| 'classJ';

/**
 * Fuses for direct current, from the smallest construction to the largest. The ISO classes are road-vehicle fuses
 * and break 1 or 2 kA; the direct-current figures of the last two are from memory and count only when read on the
 * fuse.
 */
export const fuseClasses: readonly FuseClass[] = [
	{
		name: 'blade',
		label: 'blade fuse',
		standard: 'ISO 8820-3:2015',
		ratedVoltageV: 58,
		largestRatingA: 100,
		breaksA: 1000,
		markedUpToA: null,
		source: published('ISO 8820-3:2015', 'scope: blade types C, E and F, 32 or 58 V, 1000 A'),
	},
	{
		name: 'subMiniature',
		label: 'sub-miniature blade fuse',
		standard: 'ISO 8820-12:2020',
		ratedVoltageV: 32,
		largestRatingA: 30,
		breaksA: 1000,
		markedUpToA: null,
		source: published('ISO 8820-12:2020', 'scope: blade type N, 32 V, 1000 A'),
	},
	{
		name: 'femaleContact',
		label: 'cartridge fuse with female contacts',
		standard: 'ISO 8820-4:2016',
		ratedVoltageV: 58,
		largestRatingA: 140,
		breaksA: 1000,
		markedUpToA: null,
		source: published('ISO 8820-4:2016', 'scope: female contact and bolt-in types, 32 or 58 V, 1000 A'),
	},
	{
		name: 'strip',
		label: 'strip fuse',
		standard: 'ISO 8820-5:2015',
		ratedVoltageV: 32,
		largestRatingA: 500,
		breaksA: 2000,
		markedUpToA: null,
		source: published('ISO 8820-5:2015', 'scope: strip fuse-links SF 30 and SF 51, 32 V, 2000 A'),
	},
	{
		name: 'singleBolt',
		label: 'single-bolt fuse',
		standard: 'ISO 8820-6:2019',
		ratedVoltageV: 58,
		largestRatingA: 300,
		breaksA: 2000,
		markedUpToA: null,
		source: published('ISO 8820-6:2019', 'scope: single-bolt fuse-links, 58 V, 2000 A'),
	},
	{
		name: 'classT',
		label: 'class T fuse',
		standard: 'UL 248-15',
		ratedVoltageV: 125,
		largestRatingA: 400,
		breaksA: 20_000,
		markedUpToA: 20_000,
		source: fromMemory('UL 248-15', 'class T, usual direct-current marking 125 V and 20 kA'),
	},
	{
		name: 'classJ',
		label: 'class J fuse',
		standard: 'UL 248-8',
		ratedVoltageV: 500,
		largestRatingA: 600,
		breaksA: 20_000,
		markedUpToA: 100_000,
		source: fromMemory('UL 248-8', 'class J, direct-current marking up to 500 V and 20 to 100 kA by maker'),
	},
];

export function fuseClassNamed(name: FuseClassName): FuseClass {
	const found = fuseClasses.find((one) => one.name === name);
	if (found === undefined) throw new Error(`no fuse class "${name}"`);
	return found;
}

/** When a fuse opens at a multiple of its rating. */
export interface OpeningTime {
	/** current over rating, as a share */
	readonly share: number;
	/** it holds at least so long [s], or null where nothing is said */
	readonly leastS: number | null;
	/** it has opened by then [s], or null where nothing is said */
	readonly mostS: number | null;
	readonly source: Source;
}

const dataSheet = published('data sheet of 35 and 40 A blade fuses', 'time-current points');
const typeC = fromMemory('ISO 8820-3', 'operating times of type C');
const typeE = fromMemory('ISO 8820-3', 'operating times of type E');

/** The 35 and 40 A blade fuses as read in a data sheet. */
export const bladeOpening: readonly OpeningTime[] = [
	{ share: 1, leastS: 360_000, mostS: null, source: dataSheet },
	{ share: 1.35, leastS: 0.75, mostS: 600, source: dataSheet },
	{ share: 2, leastS: 0.15, mostS: 5, source: dataSheet },
	{ share: 3.5, leastS: 0.08, mostS: 0.5, source: dataSheet },
	{ share: 6, leastS: null, mostS: 0.15, source: dataSheet },
];

/** Blade type C, 1 to 40 A. */
export const typeCOpening: readonly OpeningTime[] = [
	{ share: 1.1, leastS: 360_000, mostS: null, source: typeC },
	{ share: 1.35, leastS: 0.75, mostS: 600, source: typeC },
	{ share: 1.6, leastS: 0.25, mostS: 50, source: typeC },
	{ share: 2, leastS: 0.15, mostS: 5, source: typeC },
	{ share: 3.5, leastS: 0.04, mostS: 0.5, source: typeC },
	{ share: 6, leastS: 0.02, mostS: 0.1, source: typeC },
];

/** Blade type E, 20 to 80 A. */
export const typeEOpening: readonly OpeningTime[] = [
	{ share: 1.35, leastS: 60, mostS: 1800, source: typeE },
	{ share: 2, leastS: 2, mostS: 60, source: typeE },
	{ share: 3.5, leastS: 0.2, mostS: 7, source: typeE },
	{ share: 6, leastS: 0.04, mostS: 1, source: typeE },
];

/**
 * Opening times of a blade fuse of this rating.
 * @returns none where no table was found for the class or the rating
 */
export function openingTimes(name: FuseClassName, ratingA: number): readonly OpeningTime[] {
	if (name !== 'blade') return [];
	if (ratingA === 35 || ratingA === 40) return bladeOpening;
	if (ratingA <= 40) return typeCOpening;
	return ratingA <= 80 ? typeEOpening : [];
}

/** Least interrupting capacity of breakers on a battery by its cold-cranking amperes: ABYC E-11, Table V-A. */
export interface InterruptingRow {
	/** highest nominal voltage of the row [V] */
	readonly toV: number;
	/** cold-cranking amperes of the bank up to which the row counts [A] */
	readonly toCrankingA: number;
	readonly mainA: number;
	readonly branchA: number;
	readonly source: Source;
}

const marineRead = published('ABYC E-11', 'Table V-A, 12 V and 24 V');
const marineMemory = fromMemory('ABYC E-11', 'Table V-A, 32 V');

export const interruptingRows: readonly InterruptingRow[] = [
	{ toV: 24, toCrankingA: 650, mainA: 1500, branchA: 750, source: marineRead },
	{ toV: 24, toCrankingA: 1100, mainA: 3000, branchA: 1500, source: marineRead },
	{ toV: 24, toCrankingA: Number.POSITIVE_INFINITY, mainA: 5000, branchA: 2500, source: marineRead },
	{ toV: 32, toCrankingA: 1250, mainA: 3000, branchA: 1500, source: marineMemory },
	{ toV: 32, toCrankingA: Number.POSITIVE_INFINITY, mainA: 5000, branchA: 2500, source: marineMemory },
];

/** Banks above these need the battery maker's short-circuit current, or 20 kA where that exceeds 10 kA. */
export const largeBankCrankingA = 2200;
export const largeBankAh = 500;
export const largeBankInterruptingA = 20_000;
export const largeBankSource = published(
	'ABYC E-11',
	"banks over 2200 CCA or 500 Ah: the battery maker's short-circuit current, or 20 kA where that exceeds 10 kA",
);

/** Upstream over downstream rating from which fuses of one kind mostly open in the right order. */
export const selectivityRatio = 1.6;
export const selectivitySource = practice('1.6 : 1 between fuses of one kind in series');
