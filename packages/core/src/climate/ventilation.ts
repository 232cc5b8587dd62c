import { openingLossPa } from './air.js';

/** Discharge coefficient of a plain opening such as a window or grille (textbook). */
export const openingCoefficient = 0.6;

/** Times an hour the air is renewed. */
export function airChangesPerH(flowM3H: number, volumeM3: number): number {
	return flowM3H / volumeM3;
}

/** Mean velocity through a free area [m/s]. */
export function faceVelocityMS(flowM3H: number, areaM2: number): number {
	return flowM3H / 3600 / areaM2;
}

/**
 * Air a fan moves against an opening [m³/h].
 *
 * The fan's pressure falls with the square of its flow, from p0 at no flow to none at free flow; the opening takes
 * rho/2 (Q/(Cd A))². Both meet at Q = Qf sqrt(p0 / (p0 + pf)), pf being the opening's loss at free flow.
 */
export function deliveredM3H(
	freeM3H: number,
	stallPa: number,
	opening: { readonly areaM2: number; readonly densityKgM3: number },
): number {
	const atFreePa = openingLossPa(freeM3H, opening.areaM2, openingCoefficient, opening.densityKgM3);
	return freeM3H * Math.sqrt(stallPa / (stallPa + atFreePa));
}

/**
 * Sound power that air makes by rushing through a grille [dB(A)]: 10 + 60 log10(v) + 30 log10(zeta) + 10 log10(A)
 * (VDI 2081, from memory), zeta = 1/Cd² being its loss coefficient. At 1 m in a small room the ear hears about as much.
 */
export function flowNoiseDb(velocityMS: number, areaM2: number): number {
	const lossCoefficient = 1 / openingCoefficient ** 2;
	return 10 + 60 * Math.log10(velocityMS) + 30 * Math.log10(lossCoefficient) + 10 * Math.log10(areaM2);
}
