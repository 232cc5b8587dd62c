import { type FuelName, lowerHeatingValueWhPerKg } from '../tables/fuels.js';
import { type Activity, bodyHeat } from '../tables/people.js';
import { waterAt } from '../water/properties.js';
import { humidityRatio } from './psychrometrics.js';

/** Water one person gives to the air [g/h]: latent heat over the heat of evaporation at skin temperature. */
export function breathedGH(activity: Activity): number {
	return (bodyHeat[activity].latentW / waterAt(33).vaporizationJKg) * 1000 * 3600;
}

/**
 * Water made by burning fuel gas [g/h]: C3H8 + 5 O2 -> 3 CO2 + 4 H2O, 72.06 g of water from 44.10 g of propane.
 *
 * @param burnerW heat of the flame by lower heating value
 */
export function burnedGH(burnerW: number): number {
	const fuel: FuelName = 'propane';
	return (burnerW / lowerHeatingValueWhPerKg(fuel)) * waterPerPropane * 1000;
}

/** Mass of water from a mass of propane burned. */
export const waterPerPropane = (4 * 18.015) / 44.096;

/**
 * Air that carries a rate of water away [kg of dry air an hour]; without limit where the air let in is as moist as
 * the air inside may be.
 */
export function dryingAirKgH(waterGH: number, insideRatio: number, outsideRatio: number): number {
	return insideRatio > outsideRatio
		? waterGH / 1000 / (insideRatio - outsideRatio)
		: Number.POSITIVE_INFINITY;
}

/** Humidity ratio of air that is just saturated at a surface [kg/kg]: moister air wets it. */
export function wettingRatio(surfaceC: number, pressurePa: number): number {
	return humidityRatio(surfaceC, 1, pressurePa);
}
