/** Gas constant of dry air [J/kgK]: ISO 2533. */
const gasConstantJKgK = 287.05287;
/** Specific heat of air at constant pressure [J/kgK]. */
const airHeatJKgK = 1005;

/** Density of dry air by the ideal gas law [kg/m³]. */
export function airDensityKgM3(temperatureC: number, pressureKPa: number): number {
	return (pressureKPa * 1000) / (gasConstantJKgK * (temperatureC + 273.15));
}

/** Heat carried per kelvin by an air flow [W/K]: rho c V / 3600. */
export function airHeatWK(flowM3H: number, densityKgM3: number): number {
	return (densityKgM3 * airHeatJKgK * flowM3H) / 3600;
}

/** Pressure that drives an air flow through an opening [Pa]: rho/2 (Q / (Cd A))². */
export function openingLossPa(
	flowM3H: number,
	areaM2: number,
	dischargeCoefficient: number,
	densityKgM3: number,
): number {
	return (densityKgM3 / 2) * (flowM3H / 3600 / (dischargeCoefficient * areaM2)) ** 2;
}
