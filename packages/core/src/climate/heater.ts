import { standardDensityKgM3 } from '../structure/atmosphere.js';
import { type FuelName, lowerHeatingValueWhPerL } from '../tables/fuels.js';

/**
 * Share of its rated output a fuel-burning heater keeps at an altitude.
 *
 * It burns what the thin air allows, so at most the density ratio of the standard atmosphere. The fuel-gas codes ask
 * for 4 % less per 1000 ft from 2000 ft up (from memory); the lower of the two counts.
 */
export function altitudeShare(altitudeM: number): number {
	const byDensity = standardDensityKgM3(altitudeM) / standardDensityKgM3(0);
	const thousandFt = altitudeM / 304.8;
	const byCode = thousandFt > 2 ? 1 - 0.04 * thousandFt : 1;
	return Math.max(0, Math.min(1, byDensity, byCode));
}

/** Fuel burned for an amount of heat delivered [L]: heat / (efficiency × lower heating value). */
export function fuelL(heatWh: number, efficiency: number, fuel: FuelName): number {
	return heatWh / (efficiency * lowerHeatingValueWhPerL(fuel));
}

/** Share of the lower heating value that a heater with a burner gives as heat (common practice). */
export const burnerEfficiency = 0.8;

/** Rated outputs in which heaters for vans are sold [W] (common practice). */
export const heaterSizesW: readonly number[] = [2000, 4000, 5000, 8000];
/** Output below which such a heater can't be turned down, as a share of its rating (common practice). */
export const heaterTurndown = 0.35;
