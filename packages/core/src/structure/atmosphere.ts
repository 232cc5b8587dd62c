import { published } from '../topic/source.js';

/** Troposphere of the standard atmosphere; the sea-level values are exact by definition. */
const seaLevelKpa = 101.325;
const seaLevelK = 288.15;
const lapseKPerM = 0.0065;
const exponent = 5.25588;
const gasConstant = 287.05287;

/** Altitudes for which the formula holds [m]. */
export const lowestAltitudeM = -500;
export const highestAltitudeM = 11_000;

export const atmosphereSource = published('ISO 2533 (standard atmosphere)', 'troposphere, T0 − 6.5 K/km');

/**
 * Air pressure of the standard atmosphere: p = p0 (T / T0)^5.25588.
 * @param altitudeM geopotential altitude, -500 to 11,000 [m]; within 0.1 % of the height on a map up to 6 km
 * @returns absolute pressure [kPa]
 */
export function standardPressureKpa(altitudeM: number): number {
	return seaLevelKpa * (standardTemperatureK(altitudeM) / seaLevelK) ** exponent;
}

/** Air temperature of the standard atmosphere, T = T0 - 6.5 K/km [°C]. */
export function standardTemperatureC(altitudeM: number): number {
	return standardTemperatureK(altitudeM) - 273.15;
}

/** Air density of the standard atmosphere, p / (R T) [kg/m³]. */
export function standardDensityKgM3(altitudeM: number): number {
	return (standardPressureKpa(altitudeM) * 1000) / (gasConstant * standardTemperatureK(altitudeM));
}

function standardTemperatureK(altitudeM: number): number {
	return seaLevelK - lapseKPerM * altitudeM;
}
