import { waterRows } from '../tables/water.js';

/** Liquid water at one temperature. */
export interface Water {
	readonly densityKgM3: number;
	readonly specificHeatJKgK: number;
	/** kinematic viscosity [m²/s] */
	readonly viscosityM2S: number;
	/** heat taken up by evaporation [J/kg] */
	readonly vaporizationJKg: number;
}

/**
 * Properties of liquid water near atmospheric pressure, read between the rows of the IAPWS table (viscosity on a
 * logarithmic scale). Outside 0 to 99 °C the nearest row counts.
 */
export function waterAt(temperatureC: number): Water {
	const above = waterRows.findIndex((row) => row.temperatureC >= temperatureC);
	const high = waterRows.at(above) ?? waterRows[0];
	const low = above > 0 ? waterRows[above - 1] : high;
	if (low === undefined || high === undefined) throw new Error('the water table is empty');
	const span = high.temperatureC - low.temperatureC;
	const share = span === 0 ? 0 : (temperatureC - low.temperatureC) / span;
	const between = (a: number, b: number) => a + share * (b - a);
	const densityKgM3 = between(low.densityKgM3, high.densityKgM3);
	const viscosityPaS =
		Math.exp(between(Math.log(low.dynamicViscosityMPaS), Math.log(high.dynamicViscosityMPaS))) / 1000;
	return {
		densityKgM3,
		specificHeatJKgK: between(low.specificHeatKjKgK, high.specificHeatKjKgK) * 1000,
		viscosityM2S: viscosityPaS / densityKgM3,
		vaporizationJKg: between(low.vaporizationKjKg, high.vaporizationKjKg) * 1000,
	};
}

/** Mass of water a tank holds when full [kg]: cold water, which is heaviest, rounded up to 1 kg a litre. */
export function fullMassKg(volumeL: number): number {
	return volumeL;
}

/**
 * Heat that brings water from one temperature to another [J].
 *
 * The density is that of the cold water let in, the specific heat that of the mean temperature.
 */
export function heatingEnergyJ(volumeL: number, fromC: number, toC: number): number {
	const massKg = (volumeL / 1000) * waterAt(fromC).densityKgM3;
	return massKg * waterAt((fromC + toC) / 2).specificHeatJKgK * (toC - fromC);
}
