/**
 * Gauge pressure of the same air at another temperature and air pressure: the absolute pressure goes with the absolute
 * temperature, the volume is taken as fixed.
 * @source Gay-Lussac's law
 */
export function pressureAfterKpa(
	before: { readonly gaugeKpa: number; readonly temperatureC: number; readonly ambientKpa: number },
	after: { readonly temperatureC: number; readonly ambientKpa: number },
): number {
	const absoluteKpa =
		((before.gaugeKpa + before.ambientKpa) * (after.temperatureC + 273.15)) / (before.temperatureC + 273.15);
	return absoluteKpa - after.ambientKpa;
}

/**
 * Pressure that carries a share of what the tire may carry at its reference pressure: share = (p / pref)^n.
 * An exponent of 1 is on the safe side of the published ones, 0.5 to 0.8.
 */
export function pressureForLoadKpa(loadShare: number, referenceKpa: number, exponent = 1): number {
	return referenceKpa * loadShare ** (1 / exponent);
}

/** Passenger-car tires on a van count for less: 49 CFR 571.120 S5.1.2 divides their rating by 1.10. */
export const passengerTireDivisor = 1.1;
