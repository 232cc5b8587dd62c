import { practice } from '../topic/source.js';

/**
 * Typical inside dimensions of panel vans by size class, measured over the living space behind the seats. No van is
 * exactly so: measure yours and name the numbers.
 */
export const interiorSource = practice('typical inside dimensions of panel vans by size class');

export const wheelbases = {
	short: { lengthM: 2.5 },
	medium: { lengthM: 3.1 },
	long: { lengthM: 3.7 },
	'extra-long': { lengthM: 4.3 },
} as const;
export type Wheelbase = keyof typeof wheelbases;

export const roofs = {
	low: { heightM: 1.45 },
	medium: { heightM: 1.75 },
	high: { heightM: 2.0 },
} as const;
export type Roof = keyof typeof roofs;

export const widthM = 1.8;

/** The cab in front of the living space. */
export const cab = {
	lengthM: 1.4,
	/** windscreen and two door windows */
	glassM2: 2.6,
	/** doors, roof and scuttle, lined but not insulated */
	metalM2: 4,
} as const;

const wheelbaseWords: Readonly<Record<Wheelbase, readonly string[]>> = {
	short: ['short', 'short wheelbase', 'swb'],
	medium: ['medium', 'medium wheelbase', 'mwb', 'mid wheelbase'],
	long: ['long', 'long wheelbase', 'lwb'],
	'extra-long': ['extra long', 'extra long wheelbase', 'extended', 'extended wheelbase', 'xlwb'],
};
const roofWords: Readonly<Record<Roof, readonly string[]>> = {
	low: ['low roof', 'low top', 'standard roof'],
	medium: ['medium roof', 'mid roof', 'medium top'],
	high: ['high roof', 'hi roof', 'high top', 'tall roof'],
};

/** "long high roof" names both, though "long" alone is only a word ("how long"). */
function joined(wheelbase: Wheelbase, roof: Roof): string[] {
	return wheelbaseWords[wheelbase].flatMap((first) => roofWords[roof].map((second) => `${first} ${second}`));
}

function withRoofs(wheelbase: Wheelbase, ...words: string[]): readonly string[] {
	return [...words, ...(Object.keys(roofs) as Roof[]).flatMap((roof) => joined(wheelbase, roof))];
}

function withWheelbases(roof: Roof, ...words: string[]): readonly string[] {
	return [...words, ...(Object.keys(wheelbases) as Wheelbase[]).flatMap((one) => joined(one, roof))];
}

/** Words for the size class of a van. */
export const wheelbaseOptions: Readonly<Record<Wheelbase, readonly string[]>> = {
	short: withRoofs(
		'short',
		'short wheelbase',
		'swb',
		'short van',
		'kurzer radstand',
		'kurzen radstand',
		'kurzem radstand',
		'batalla corta',
		'furgoneta corta',
		'furgo corta',
		'furgón corto',
		'furgon corto',
	),
	medium: withRoofs(
		'medium',
		'medium wheelbase',
		'mwb',
		'mid wheelbase',
		'medium van',
		'mittlerer radstand',
		'mittleren radstand',
		'mittlerem radstand',
		'batalla media',
		'furgoneta media',
		'furgoneta mediana',
		'furgo media',
		'furgo mediana',
		'furgón medio',
		'furgon medio',
	),
	long: withRoofs(
		'long',
		'long wheelbase',
		'lwb',
		'long van',
		'langer radstand',
		'langen radstand',
		'langem radstand',
		'batalla larga',
		'furgoneta larga',
		'furgo larga',
		'furgón largo',
		'furgon largo',
	),
	'extra-long': withRoofs(
		'extra-long',
		'extra-long wheelbase',
		'xlwb',
		'extra long',
		'extra long van',
		'extended',
		'extended van',
		'extended wheelbase',
		'überlang',
		'extralanger radstand',
		'extralangen radstand',
		'furgoneta extralarga',
		'furgo extralarga',
		'batalla extralarga',
	),
};

export const roofOptions: Readonly<Record<Roof, readonly string[]>> = {
	low: withWheelbases('low', 'low roof', 'standard roof', 'low top', 'flachdach', 'techo bajo'),
	medium: withWheelbases('medium', 'medium roof', 'mid roof', 'medium top', 'mittelhochdach', 'techo medio'),
	high: withWheelbases('high', 'high roof', 'hi roof', 'high top', 'tall roof', 'hochdach', 'techo alto'),
};

/** The size class of a van by its wheelbase [m], where only that is known (common practice). */
export function wheelbaseClass(wheelbaseM: number): Wheelbase {
	if (wheelbaseM < 3.25) return 'short';
	if (wheelbaseM < 3.75) return 'medium';
	return wheelbaseM < 4.15 ? 'long' : 'extra-long';
}
