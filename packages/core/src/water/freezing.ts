import { fusionKjKg } from '../tables/water.js';
import { waterAt } from './properties.js';

/** How long still water takes to freeze with nothing heating it. Infinite where it is not colder than 0 °C around. */
export interface FreezeTimes {
	/** until it is at 0 °C and ice begins [h] */
	readonly toFreezingH: number;
	/** until all of it is ice [h] */
	readonly toSolidH: number;
}

/**
 * Lumped cooling of a body of water, then the loss of its latent heat.
 *
 * t1 = (m c / UA) ln((T0 - Ta)/(0 - Ta)); t2 = m L / (UA (0 - Ta)). The growing ice insulates, so the second time is
 * a lower bound; supercooling is not counted.
 *
 * @param lossWK heat lost per kelvin [W/K]
 */
export function freezeTimes(massKg: number, lossWK: number, startC: number, aroundC: number): FreezeTimes {
	if (aroundC >= 0) return { toFreezingH: Number.POSITIVE_INFINITY, toSolidH: Number.POSITIVE_INFINITY };
	const specificHeat = waterAt(Math.max(0, startC) / 2).specificHeatJKgK;
	const cooling =
		startC <= 0 ? 0 : ((massKg * specificHeat) / lossWK) * Math.log((startC - aroundC) / (0 - aroundC));
	const freezing = (massKg * fusionKjKg * 1000) / (lossWK * (0 - aroundC));
	return { toFreezingH: cooling / 3600, toSolidH: (cooling + freezing) / 3600 };
}

/** Temperature of water left to cool [°C] after some hours, until it reaches 0 °C. */
export function cooledC(
	massKg: number,
	lossWK: number,
	startC: number,
	aroundC: number,
	hours: number,
): number {
	const specificHeat = waterAt(Math.max(0, startC) / 2).specificHeatJKgK;
	return aroundC + (startC - aroundC) * Math.exp((-hours * 3600 * lossWK) / (massKg * specificHeat));
}

/** A wall as seen from the water: insulation over it and the air around. */
export interface Cover {
	readonly insulationMm: number;
	readonly conductivityWmK: number;
	/** air film outside [m²K/W] */
	readonly filmM2KW: number;
}

/** Heat lost through flat walls [W/K]: A / (d/lambda + Rs). The wall of the tank and the water's own film are left out. */
export function flatLossWK(areaM2: number, cover: Cover): number {
	return areaM2 / (cover.insulationMm / 1000 / cover.conductivityWmK + cover.filmM2KW);
}

/** Heat lost by a pipe [W/K]: L / (ln(r2/r1)/(2 pi lambda) + Rs/(2 pi r2)). */
export function pipeLossWK(outsideMm: number, lengthM: number, cover: Cover): number {
	const innerM = outsideMm / 2000;
	const outerM = innerM + cover.insulationMm / 1000;
	const perMetre =
		Math.log(outerM / innerM) / (2 * Math.PI * cover.conductivityWmK) +
		cover.filmM2KW / (2 * Math.PI * outerM);
	return lengthM / perMetre;
}

/**
 * Outside area of a flat rectangular tank of this content [m²]: sides 4 : 2 : 1, as under a floor or along a wheel
 * arch. A cube would have less (common practice).
 */
export function tankAreaM2(volumeL: number): number {
	const unitM = (volumeL / 1000 / 8) ** (1 / 3);
	return 28 * unitM ** 2;
}
