import type { ClimateRow } from '../tables/climate.js';
import { fromMemory } from '../topic/source.js';
import { dailySwing } from './climate.js';
import { extraterrestrial, type Irradiance } from './irradiance.js';
import { momentMs, sunGeocentric } from './sun-position.js';

export const hourlyShapeSource = fromMemory(
	'Collares-Pereira and Rabl 1979; Liu and Jordan 1960',
	'hourly from daily irradiation, global and diffuse',
);
export const diffuseSource = fromMemory('Erbs, Klein and Duffie 1982', 'monthly diffuse from clearness');

const degree = Math.PI / 180;

/** The day of each month whose irradiation outside the air is nearest to the month's mean: Klein 1977. */
export const meanDayOfMonth = [17, 16, 16, 15, 15, 11, 17, 16, 15, 15, 14, 10] as const;

export const daysInMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** The year that stands for all: midway between two leap years, so that the sun's place is the average one. */
const meanYear = 2026;

/** Day of the year of a month's mean day; 1 is January 1. */
export function meanDayOfYear(month: number): number {
	const before = daysInMonth.slice(0, month - 1).reduce((sum: number, days: number) => sum + days, 0);
	return before + (meanDayOfMonth[month - 1] as number);
}

/** Half the day from noon to sunset as an angle, without refraction; 0 in polar night, 180 in polar day [deg]. */
export function sunsetHourAngleDeg(latitudeDeg: number, declinationDeg: number): number {
	const cosine = -Math.tan(latitudeDeg * degree) * Math.tan(declinationDeg * degree);
	return Math.acos(Math.max(-1, Math.min(1, cosine))) / degree;
}

/** Irradiation of a day on the horizontal outside the air [kWh/m²]. */
export function extraterrestrialDay(latitudeDeg: number, declinationDeg: number, normalWM2: number): number {
	const sunset = sunsetHourAngleDeg(latitudeDeg, declinationDeg) * degree;
	const latitude = latitudeDeg * degree;
	const declination = declinationDeg * degree;
	return (
		(0.024 / Math.PI) *
		normalWM2 *
		(Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset) +
			sunset * Math.sin(latitude) * Math.sin(declination))
	);
}

/**
 * Share of a month's irradiation that comes from the sky, by its clearness (irradiation over that outside the air):
 * Erbs, Klein and Duffie 1982.
 */
export function erbsDiffuseShare(clearness: number, sunsetDeg: number): number {
	const k = Math.max(0.3, Math.min(0.8, clearness));
	return sunsetDeg <= 81.4
		? 1.391 - 3.56 * k + 4.189 * k ** 2 - 2.137 * k ** 3
		: 1.311 - 3.022 * k + 3.427 * k ** 2 - 1.821 * k ** 3;
}

/** Share of a day's diffuse irradiation that falls in an hour around this hour angle: Liu and Jordan 1960. */
export function diffuseHourShare(hourAngleDeg: number, sunsetDeg: number): number {
	const sunset = sunsetDeg * degree;
	const above = Math.cos(hourAngleDeg * degree) - Math.cos(sunset);
	const whole = Math.sin(sunset) - sunset * Math.cos(sunset);
	return Math.max(0, ((Math.PI / 24) * above) / whole);
}

/** Share of a day's global irradiation that falls in an hour: Collares-Pereira and Rabl 1979. */
export function globalHourShare(hourAngleDeg: number, sunsetDeg: number): number {
	const a = 0.409 + 0.5016 * Math.sin((sunsetDeg - 60) * degree);
	const b = 0.6609 - 0.4767 * Math.sin((sunsetDeg - 60) * degree);
	return (a + b * Math.cos(hourAngleDeg * degree)) * diffuseHourShare(hourAngleDeg, sunsetDeg);
}

/** A short step of the typical day. */
interface DayStep {
	/** clock hour, local standard time, of its middle */
	readonly hour: number;
	/** height and direction of the sun */
	readonly apparentZenithDeg: number;
	readonly azimuthDeg: number;
	readonly irradiance: Irradiance;
	readonly airC: number;
}

/** The average day of a month at a place. */
export interface TypicalDay {
	readonly month: number;
	/** steps with the sun up */
	readonly steps: readonly DayStep[];
	readonly stepH: number;
	/** outside the air, on a plane facing the sun [W/m²] */
	readonly extraterrestrialWM2: number;
	/** global irradiation over that outside the air; 0 where the sun does not rise */
	readonly clearness: number;
	readonly ghiKWhM2: number;
	readonly dhiKWhM2: number;
	/** true where the diffuse part is not published for the place but reckoned */
	readonly isDiffuseReckoned: boolean;
	/** true where the daily swing of the temperature is the usual one */
	readonly isSwingUsual: boolean;
}

const stepsPerHour = 6;

/**
 * The average day of a month, hour by hour, from the monthly means of the climate table: global and diffuse
 * irradiation spread over the day by hour angle, the beam as what remains of it, the temperature as a cosine between
 * the mean daily minimum and its maximum at 15 h. Where the sun does not rise there are no steps.
 */
export function typicalDay(place: ClimateRow, month: number): TypicalDay {
	const day = meanDayOfMonth[month - 1];
	if (day === undefined) throw new Error(`month ${month} is not 1 to 12`);
	const sun = sunGeocentric(momentMs(meanYear, month, day, 12 - place.utcOffsetH));
	const sunsetDeg = sunsetHourAngleDeg(place.latitudeDeg, sun.declinationDeg);
	const extraterrestrialWM2 = extraterrestrial(meanDayOfYear(month));
	const outside = extraterrestrialDay(place.latitudeDeg, sun.declinationDeg, extraterrestrialWM2);
	const ghiKWhM2 = place.ghiKWhM2[month - 1] as number;
	const clearness = outside > 0 ? ghiKWhM2 / outside : 0;
	const published = place.dhiKWhM2?.[month - 1];
	const dhiKWhM2 = Math.min(ghiKWhM2, published ?? ghiKWhM2 * erbsDiffuseShare(clearness, sunsetDeg));
	const { minC, maxC, isUsual } = dailySwing(place, month);

	const latitude = place.latitudeDeg * degree;
	const declination = sun.declinationDeg * degree;
	const shares: { hour: number; hourAngleDeg: number; cosine: number; global: number; diffuse: number }[] =
		[];
	for (let step = 0; step < 24 * stepsPerHour; step += 1) {
		const hour = (step + 0.5) / stepsPerHour;
		const solarHour = hour + sun.equationOfTimeMin / 60 + (place.longitudeDeg - 15 * place.utcOffsetH) / 15;
		const hourAngleDeg = ((15 * (solarHour - 12) + 540) % 360) - 180;
		const cosine =
			Math.sin(latitude) * Math.sin(declination) +
			Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngleDeg * degree);
		if (cosine <= 0 || sunsetDeg === 0) continue;
		shares.push({
			hour,
			hourAngleDeg,
			cosine,
			global: globalHourShare(hourAngleDeg, sunsetDeg),
			diffuse: diffuseHourShare(hourAngleDeg, sunsetDeg),
		});
	}
	const whole = shares.reduce(
		(sum, share) => ({ global: sum.global + share.global, diffuse: sum.diffuse + share.diffuse }),
		{ global: 0, diffuse: 0 },
	);
	const spread = shares.map(({ hour, hourAngleDeg, cosine, global, diffuse }): DayStep => {
		const globalWM2 = (1000 * ghiKWhM2 * global * stepsPerHour) / whole.global;
		const diffuseWM2 = Math.min(globalWM2, (1000 * dhiKWhM2 * diffuse * stepsPerHour) / whole.diffuse);
		return {
			hour,
			apparentZenithDeg: Math.acos(Math.min(1, cosine)) / degree,
			azimuthDeg: azimuth(latitude, declination, hourAngleDeg * degree),
			irradiance: { globalWM2, diffuseWM2, beamWM2: (globalWM2 - diffuseWM2) / cosine },
			airC: airAt(hour, minC, maxC),
		};
	});
	const steps = withinBeam(spread, place.dniKWhM2?.[month - 1] ?? null);
	return {
		month,
		steps,
		stepH: 1 / stepsPerHour,
		extraterrestrialWM2,
		clearness,
		ghiKWhM2,
		dhiKWhM2,
		isDiffuseReckoned: published === undefined,
		isSwingUsual: isUsual,
	};
}

/**
 * Spreading by hour angle gives a low sun too much beam. Where the month's beam irradiation is published the beam is
 * scaled down to it and the rest counted as diffuse: the irradiation on the horizontal stays what it is.
 */
function withinBeam(steps: readonly DayStep[], dniKWhM2: number | null): readonly DayStep[] {
	if (dniKWhM2 === null) return steps;
	const reckoned = steps.reduce((sum, step) => sum + step.irradiance.beamWM2 / stepsPerHour / 1000, 0);
	if (reckoned <= dniKWhM2) return steps;
	const factor = dniKWhM2 / reckoned;
	return steps.map((step) => {
		const { globalWM2, beamWM2, diffuseWM2 } = step.irradiance;
		const direct = globalWM2 - diffuseWM2;
		return {
			...step,
			irradiance: {
				globalWM2,
				beamWM2: beamWM2 * factor,
				diffuseWM2: globalWM2 - direct * factor,
			},
		};
	});
}

/** Air temperature at a clock hour: warmest at 15 h (practice). */
function airAt(hour: number, minC: number, maxC: number): number {
	return (minC + maxC) / 2 + ((maxC - minC) / 2) * Math.cos((2 * Math.PI * (hour - 15)) / 24);
}

/** Direction of the sun, clockwise from north [deg]. */
function azimuth(latitude: number, declination: number, hourAngle: number): number {
	const east = -Math.cos(declination) * Math.sin(hourAngle);
	const north =
		Math.sin(declination) * Math.cos(latitude) -
		Math.cos(declination) * Math.sin(latitude) * Math.cos(hourAngle);
	return (Math.atan2(east, north) / degree + 360) % 360;
}
