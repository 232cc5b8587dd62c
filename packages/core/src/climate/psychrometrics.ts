/** Moist air as in the ASHRAE Handbook of Fundamentals, psychrometrics, SI equations (ideal gas, no enhancement). */

/** Water freezes and melts here under its own vapour [°C]. */
const triplePointC = 0.01;
/** Mass of a mole of water over that of dry air. */
const massRatio = 0.621945;

/**
 * Pressure of saturated water vapour [Pa] after Hyland and Wexler: over ice up to 0.01 °C, over water above.
 *
 * @param temperatureC -100 to 200
 */
export function saturationPressurePa(temperatureC: number): number {
	const t = temperatureC + 273.15;
	if (temperatureC <= triplePointC) {
		return Math.exp(
			-5.6745359e3 / t +
				6.3925247 -
				9.677843e-3 * t +
				6.2215701e-7 * t ** 2 +
				2.0747825e-9 * t ** 3 -
				9.484024e-13 * t ** 4 +
				4.1635019 * Math.log(t),
		);
	}
	return Math.exp(
		-5.8002206e3 / t +
			1.3914993 -
			4.8640239e-2 * t +
			4.1764768e-5 * t ** 2 -
			1.4452093e-8 * t ** 3 +
			6.5459673 * Math.log(t),
	);
}

/** Temperature at which water vapour of this pressure is saturated [°C]: its dew (or frost) point. */
export function saturationTemperatureC(vapourPressurePa: number): number {
	let low = -100;
	let high = 200;
	for (let step = 0; step < 60; step += 1) {
		const middle = (low + high) / 2;
		if (saturationPressurePa(middle) < vapourPressurePa) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

/** Dew point of air [°C]; below 0 °C it is the frost point. */
export function dewPointC(temperatureC: number, relativeHumidity: number): number {
	return saturationTemperatureC(relativeHumidity * saturationPressurePa(temperatureC));
}

/** Water carried by air [kg a kg of dry air]: W = 0.621945 pv / (p - pv). */
export function humidityRatio(temperatureC: number, relativeHumidity: number, pressurePa: number): number {
	const vapourPa = relativeHumidity * saturationPressurePa(temperatureC);
	return (massRatio * vapourPa) / (pressurePa - vapourPa);
}

/** Relative humidity of air that carries so much water, 1 at saturation; above 1 where it can't carry it. */
export function relativeHumidityOf(temperatureC: number, ratio: number, pressurePa: number): number {
	return (pressurePa * ratio) / (massRatio + ratio) / saturationPressurePa(temperatureC);
}

/** Heat content of moist air [J a kg of dry air], zero for dry air at 0 °C. */
export function moistEnthalpyJKg(temperatureC: number, ratio: number): number {
	return 1006 * temperatureC + ratio * (2_501_000 + 1860 * temperatureC);
}

/** Volume of moist air [m³ a kg of dry air]. */
export function moistVolumeM3Kg(temperatureC: number, ratio: number, pressurePa: number): number {
	return (287.042 * (temperatureC + 273.15) * (1 + 1.607858 * ratio)) / pressurePa;
}
