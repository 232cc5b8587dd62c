/** Sun on the van's surfaces in one hour [W/m²]. */
export interface SunHour {
	readonly roofWm2: number;
	/** the four upright sides */
	readonly sidesWm2: readonly [number, number, number, number];
}

/**
 * Sol-air temperature of a surface [°C]: the outside temperature that would drive the same heat through it,
 * to + a I / ho - e dR / ho. The last term, 3.9 K, is the roof's radiation to the clear sky.
 *
 * @param filmM2KW resistance of the outside air film, 1/ho
 */
export function solAirC(
	outsideC: number,
	irradianceWm2: number,
	absorptance: number,
	filmM2KW: number,
	facing: 'sky' | 'horizon',
): number {
	return outsideC + absorptance * irradianceWm2 * filmM2KW - (facing === 'sky' ? skyLossK : 0);
}

/** Radiation of a horizontal surface to the clear sky, as kelvin of sol-air temperature (ASHRAE). */
const skyLossK = 3.9;

/** Share of the day's temperature range by which each hour lies below the day's highest, midnight to 1 o'clock first. */
const belowHighest: readonly number[] = [
	0.88, 0.92, 0.95, 0.98, 1, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0, 0, 0.06, 0.14, 0.24, 0.39,
	0.5, 0.59, 0.68, 0.75, 0.82,
];

/** Outside temperature over a clear design day [°C], hour by hour, between its highest and lowest. */
export function dayTemperaturesC(highestC: number, lowestC: number): number[] {
	return belowHighest.map((share) => highestC - share * (highestC - lowestC));
}
