import {
	latitudeTerms,
	longitudeTerms,
	nutationTerms,
	radiusTerms,
	type Term,
} from '../tables/sun-series.js';
import { fromMemory } from '../topic/source.js';
import type { Position } from './distance.js';

export const sunPositionSource = fromMemory(
	'NREL/TP-560-34302 (Reda and Andreas), solar position algorithm',
	'series cut off at 0.1 arc second; checked against the full algorithm',
);

const degree = Math.PI / 180;

/** Difference between earth's rotation and uniform time: 67 s, as the report's example takes it [s]. */
const usualDeltaTS = 67;

/** Days since noon of 1 January 4713 BC, for milliseconds since 1970. */
function julianDay(timeMs: number): number {
	return timeMs / 86_400_000 + 2_440_587.5;
}

/** Milliseconds since 1970 of a moment of universal time, without asking any clock. */
export function momentMs(year: number, month: number, day: number, hours = 0): number {
	return Date.UTC(year, month - 1, day) + hours * 3_600_000;
}

function series(powers: readonly (readonly Term[])[], millennia: number): number {
	let sum = 0;
	let power = 1;
	for (const terms of powers) {
		let part = 0;
		for (const [amplitude, phase, speed] of terms) part += amplitude * Math.cos(phase + speed * millennia);
		sum += part * power;
		power *= millennia;
	}
	return sum / 1e8;
}

function polynomial(x: number, ...coefficients: readonly number[]): number {
	return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

/** An angle brought into 0 to 360 degrees. */
function turned(deg: number): number {
	return ((deg % 360) + 360) % 360;
}

/** The sun as seen from the middle of the earth. */
export interface SunGeocentric {
	/** apparent longitude: with nutation and aberration [deg] */
	readonly longitudeDeg: number;
	readonly rightAscensionDeg: number;
	readonly declinationDeg: number;
	/** distance [au] */
	readonly radiusAu: number;
	readonly nutationDeg: number;
	readonly obliquityDeg: number;
	/** apparent sidereal time at Greenwich [deg] */
	readonly siderealDeg: number;
	/** sundial time minus clock time [min] */
	readonly equationOfTimeMin: number;
}

/** NREL/TP-560-34302, steps 3.2 to 3.10 and the equation of time (A.1), with the shortened series. */
export function sunGeocentric(timeMs: number, deltaTS = usualDeltaTS): SunGeocentric {
	const day = julianDay(timeMs);
	const centuryUt = (day - 2_451_545) / 36_525;
	const century = (day + deltaTS / 86_400 - 2_451_545) / 36_525;
	const millennia = century / 10;

	const earthLongitudeDeg = series(longitudeTerms, millennia) / degree;
	const earthLatitudeDeg = series(latitudeTerms, millennia) / degree;
	const radiusAu = series(radiusTerms, millennia);
	const { nutationDeg, obliquityNutationDeg } = nutation(century);
	const meanObliquityDeg =
		polynomial(
			millennia / 10,
			84_381.448,
			-4680.93,
			-1.55,
			1999.25,
			-51.38,
			-249.67,
			-39.05,
			7.12,
			27.87,
			5.79,
			2.45,
		) / 3600;
	const obliquityDeg = meanObliquityDeg + obliquityNutationDeg;
	const aberrationDeg = -20.4898 / (3600 * radiusAu);
	const longitudeDeg = turned(earthLongitudeDeg + 180 + nutationDeg + aberrationDeg);
	const beta = -earthLatitudeDeg * degree;
	const lambda = longitudeDeg * degree;
	const epsilon = obliquityDeg * degree;
	const rightAscensionDeg = turned(
		Math.atan2(Math.sin(lambda) * Math.cos(epsilon) - Math.tan(beta) * Math.sin(epsilon), Math.cos(lambda)) /
			degree,
	);
	const declinationDeg =
		Math.asin(Math.sin(beta) * Math.cos(epsilon) + Math.cos(beta) * Math.sin(epsilon) * Math.sin(lambda)) /
		degree;

	const meanSiderealDeg =
		280.46061837 +
		360.98564736629 * (day - 2_451_545) +
		polynomial(centuryUt, 0, 0, 0.000387933, -1 / 38_710_000);
	const siderealDeg = turned(meanSiderealDeg + nutationDeg * Math.cos(epsilon));

	const meanLongitudeDeg = polynomial(
		millennia,
		280.4664567,
		360_007.6982779,
		0.03032028,
		1 / 49_931,
		-1 / 15_300,
		-1 / 2_000_000,
	);
	const equationDeg = meanLongitudeDeg - 0.0057183 - rightAscensionDeg + nutationDeg * Math.cos(epsilon);
	// The sundial is never more than 17 minutes off: the rest is whole turns.
	const equationOfTimeMin = 4 * (turned(equationDeg + 180) - 180);
	return {
		longitudeDeg,
		rightAscensionDeg,
		declinationDeg,
		radiusAu,
		nutationDeg,
		obliquityDeg,
		siderealDeg,
		equationOfTimeMin,
	};
}

/** Nutation in longitude and obliquity (step 3.4), `century` in Julian centuries since 2000. */
function nutation(century: number): { nutationDeg: number; obliquityNutationDeg: number } {
	const arguments_ = [
		polynomial(century, 297.85036, 445_267.11148, -0.0019142, 1 / 189_474),
		polynomial(century, 357.52772, 35_999.05034, -0.0001603, -1 / 300_000),
		polynomial(century, 134.96298, 477_198.867398, 0.0086972, 1 / 56_250),
		polynomial(century, 93.27191, 483_202.017538, -0.0036825, 1 / 327_270),
		polynomial(century, 125.04452, -1934.136261, 0.0020708, 1 / 450_000),
	];
	let longitude = 0;
	let obliquity = 0;
	for (const term of nutationTerms) {
		const angle = term.multiples.reduce(
			(sum, multiple, index) => sum + multiple * (arguments_[index] as number) * degree,
			0,
		);
		longitude += (term.longitude[0] + term.longitude[1] * century) * Math.sin(angle);
		obliquity += (term.obliquity[0] + term.obliquity[1] * century) * Math.cos(angle);
	}
	return { nutationDeg: longitude / 36_000_000, obliquityNutationDeg: obliquity / 36_000_000 };
}

/** The air an observer looks through. */
export interface Air {
	readonly pressurePa: number;
	readonly temperatureC: number;
}

/** Where the sun stands for an observer. */
export interface SunPosition {
	/** from straight up, without refraction [deg] */
	readonly zenithDeg: number;
	/** as seen, with refraction [deg] */
	readonly apparentZenithDeg: number;
	/** clockwise from north [deg] */
	readonly azimuthDeg: number;
}

/** Air pressure at an altitude: the standard atmosphere [Pa]. */
export function pressureAt(altitudeM: number): number {
	return 100 * ((44_331.514 - altitudeM) / 11_880.516) ** (1 / 0.190_263_2);
}

/** Lift of the sun by refraction at the horizon, the usual 0.5667°, and half its disc [deg]. */
const horizonRefractionDeg = 0.5667;
const sunRadiusDeg = 0.26667;

/**
 * Sun position for an observer: NREL/TP-560-34302, steps 3.11 to 3.14, with the shortened series.
 *
 * @param altitudeM height above sea level [m]
 * @returns angles within 0.001° of the full algorithm between 1950 and 2050
 */
export function sunPosition(timeMs: number, observer: Position, altitudeM: number, air?: Air): SunPosition {
	const sun = sunGeocentric(timeMs);
	return sunFor(sun, observer, altitudeM, air ?? { pressurePa: pressureAt(altitudeM), temperatureC: 12 });
}

function sunFor(sun: SunGeocentric, observer: Position, altitudeM: number, air: Air): SunPosition {
	const latitude = observer.latitudeDeg * degree;
	const hourAngle = turned(sun.siderealDeg + observer.longitudeDeg - sun.rightAscensionDeg) * degree;
	const declination = sun.declinationDeg * degree;
	// Parallax: the observer stands on the earth's surface, not in its middle.
	const parallax = (8.794 / (3600 * sun.radiusAu)) * degree;
	const u = Math.atan(0.99664719 * Math.tan(latitude));
	const x = Math.cos(u) + (altitudeM * Math.cos(latitude)) / 6_378_140;
	const y = 0.99664719 * Math.sin(u) + (altitudeM * Math.sin(latitude)) / 6_378_140;
	const shift = Math.atan2(
		-x * Math.sin(parallax) * Math.sin(hourAngle),
		Math.cos(declination) - x * Math.sin(parallax) * Math.cos(hourAngle),
	);
	const seenDeclination = Math.atan2(
		(Math.sin(declination) - y * Math.sin(parallax)) * Math.cos(shift),
		Math.cos(declination) - x * Math.sin(parallax) * Math.cos(hourAngle),
	);
	const seenHourAngle = hourAngle - shift;
	const elevationDeg =
		Math.asin(
			Math.sin(latitude) * Math.sin(seenDeclination) +
				Math.cos(latitude) * Math.cos(seenDeclination) * Math.cos(seenHourAngle),
		) / degree;
	const refractionDeg = refraction(elevationDeg, air);
	const azimuthDeg = turned(
		Math.atan2(
			Math.sin(seenHourAngle),
			Math.cos(seenHourAngle) * Math.sin(latitude) - Math.tan(seenDeclination) * Math.cos(latitude),
		) /
			degree +
			180,
	);
	return {
		zenithDeg: 90 - elevationDeg,
		apparentZenithDeg: 90 - elevationDeg - refractionDeg,
		azimuthDeg,
	};
}

/** Lift of the sun by refraction (step 3.14.2); none once it has set [deg]. */
function refraction(elevationDeg: number, air: Air): number {
	if (elevationDeg < -(sunRadiusDeg + horizonRefractionDeg)) return 0;
	return (
		((air.pressurePa / 101_000) * (283 / (273 + air.temperatureC)) * 1.02) /
		(60 * Math.tan((elevationDeg + 10.3 / (elevationDeg + 5.11)) * degree))
	);
}

/** Sunrise, noon and sunset of a day [ms since 1970]; sunrise and sunset are null where the sun stays up or down. */
export interface SunDay {
	readonly sunriseMs: number | null;
	readonly transitMs: number;
	readonly sunsetMs: number | null;
}

/**
 * Sunrise and sunset: the upper edge of the sun at a flat horizon, with 0.5667° of refraction. Found by iteration on
 * the hour angle, each time with the sun of that very moment.
 *
 * @param middayMs any moment near the local noon of the day
 */
export function sunDay(middayMs: number, observer: Position): SunDay {
	let transitMs = middayMs;
	for (let round = 0; round < 4; round += 1) {
		const sun = sunGeocentric(transitMs);
		const hourAngleDeg = turned(sun.siderealDeg + observer.longitudeDeg - sun.rightAscensionDeg + 180) - 180;
		transitMs -= (hourAngleDeg / 360.9856) * 86_400_000;
	}
	return {
		sunriseMs: crossing(transitMs, observer, -1),
		transitMs,
		sunsetMs: crossing(transitMs, observer, 1),
	};
}

function crossing(transitMs: number, observer: Position, side: -1 | 1): number | null {
	const latitude = observer.latitudeDeg * degree;
	const horizon = Math.sin(-(sunRadiusDeg + horizonRefractionDeg) * degree);
	let timeMs = transitMs;
	for (let round = 0; round < 6; round += 1) {
		const sun = sunGeocentric(timeMs);
		const declination = sun.declinationDeg * degree;
		const cosine =
			(horizon - Math.sin(latitude) * Math.sin(declination)) / (Math.cos(latitude) * Math.cos(declination));
		if (Math.abs(cosine) > 1) return null;
		const wantedDeg = (side * Math.acos(cosine)) / degree;
		const hourAngleDeg =
			turned(sun.siderealDeg + observer.longitudeDeg - sun.rightAscensionDeg - wantedDeg + 180) - 180;
		const step = (hourAngleDeg / 360.9856) * 86_400_000;
		timeMs -= step;
		if (Math.abs(step) < 100) break;
	}
	return timeMs;
}
