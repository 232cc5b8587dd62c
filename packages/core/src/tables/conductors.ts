import { published } from '../topic/source.js';

/**
 * Copper conductor sizes with their resistance.
 * American sizes: area and DC resistance at 75 °C of stranded copper, ohm per 1000 ft, bare and tinned.
 * Metric sizes: the largest resistance a class 5 (flexible) conductor may have at 20 °C, ohm per km, plain and
 * tinned. A square-millimetre label is a resistance class, not a measured area.
 */
export const awgSource = published('NFPA 70 (NEC), Chapter 9', 'Table 8, stranded copper');
export const metricSource = published('IEC 60228', 'class 5, greatest resistance at 20 °C');

// name, area [mm²], bare [ohm/kft at 75 °C], tinned [ohm/kft at 75 °C]
const awg: readonly (readonly [string, number, number, number])[] = [
	['18 AWG', 0.823, 7.95, 8.45],
	['16 AWG', 1.31, 4.99, 5.29],
	['14 AWG', 2.08, 3.14, 3.26],
	['12 AWG', 3.31, 1.98, 2.05],
	['10 AWG', 5.261, 1.24, 1.29],
	['8 AWG', 8.367, 0.778, 0.809],
	['6 AWG', 13.3, 0.491, 0.51],
	['4 AWG', 21.15, 0.308, 0.321],
	['3 AWG', 26.67, 0.245, 0.254],
	['2 AWG', 33.62, 0.194, 0.201],
	['1 AWG', 42.41, 0.154, 0.16],
	['1/0 AWG', 53.49, 0.122, 0.127],
	['2/0 AWG', 67.43, 0.0967, 0.101],
	['3/0 AWG', 85.01, 0.0766, 0.0797],
	['4/0 AWG', 107.2, 0.0608, 0.0626],
];

// area [mm²], plain [ohm/km at 20 °C], tinned [ohm/km at 20 °C]
const metric: readonly (readonly [number, number, number])[] = [
	[0.75, 26.0, 26.7],
	[1, 19.5, 20.0],
	[1.5, 13.3, 13.7],
	[2.5, 7.98, 8.21],
	[4, 4.95, 5.09],
	[6, 3.3, 3.39],
	[10, 1.91, 1.95],
	[16, 1.21, 1.24],
	[25, 0.78, 0.795],
	[35, 0.554, 0.565],
	[50, 0.386, 0.393],
	[70, 0.272, 0.277],
	[95, 0.206, 0.21],
	[120, 0.161, 0.164],
];

export interface ConductorSize {
	/** "4 AWG", "35 mm²" */
	readonly name: string;
	readonly system: 'awg' | 'metric';
	readonly areaMm2: number;
	/** one conductor, at 20 °C [ohm/m] */
	readonly bareOhmPerM20C: number;
	readonly tinnedOhmPerM20C: number;
	/** false for sizes in the tables that shops seldom stock: taken when named, not proposed (practice) */
	readonly proposed: boolean;
}

/**
 * Copper area of a solid wire of the American gauge [mm²]: d = 0.005 in · 92^((36 − n) / 39) (ASTM B258).
 * @param gauge n; 0 for 1/0, −1 for 2/0, −2 for 3/0, −3 for 4/0
 */
export function awgAreaMm2(gauge: number): number {
	return (Math.PI / 4) * awgDiameterMm(gauge) ** 2;
}

/** Diameter of a solid wire of the American gauge [mm]: ASTM B258. */
export function awgDiameterMm(gauge: number): number {
	return 0.127 * 92 ** ((36 - gauge) / 39);
}

const metresPerKft = 304.8;
/** Temperature coefficient of resistance of annealed copper at 20 °C [1/K]: IEC 60028. */
const copperAlpha20PerK = 0.00393;
export const copperAlphaSource = published(
	'IEC 60028',
	'temperature coefficient of annealed copper, 0.00393 per K at 20 °C',
);

/** Turns a resistance at one conductor temperature into that at another, by the coefficient at 20 °C. */
export function copperResistanceAt(ohmAt20C: number, temperatureC: number): number {
	return ohmAt20C * (1 + copperAlpha20PerK * (temperatureC - 20));
}

/**
 * Resistance of a solid conductor of pure annealed copper [ohm/m].
 * Resistivity 1/58 ohm mm²/m at 20 °C, the definition of 100 % IACS (IEC 60028).
 */
export function solidCopperOhmPerM(areaMm2: number, temperatureC: number): number {
	return copperResistanceAt(1 / 58 / areaMm2, temperatureC);
}

const from75To20 = 1 / (1 + copperAlpha20PerK * (75 - 20));

/** American sizes, thinnest first. */
export const awgSizes: readonly ConductorSize[] = awg.map(([name, areaMm2, bare, tinned]) => ({
	name,
	system: 'awg',
	areaMm2,
	bareOhmPerM20C: (bare / metresPerKft) * from75To20,
	tinnedOhmPerM20C: (tinned / metresPerKft) * from75To20,
	proposed: name !== '3 AWG',
}));

/** Metric sizes, thinnest first. */
export const metricSizes: readonly ConductorSize[] = metric.map(([areaMm2, plain, tinned]) => ({
	name: `${areaMm2} mm²`,
	system: 'metric',
	areaMm2,
	bareOhmPerM20C: plain / 1000,
	tinnedOhmPerM20C: tinned / 1000,
	proposed: true,
}));

/** The size of this name, or null: "4 AWG", "2/0 AWG", "35 mm²". */
export function conductorSize(name: string): ConductorSize | null {
	return [...awgSizes, ...metricSizes].find((size) => size.name === name) ?? null;
}
