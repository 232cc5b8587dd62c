import { clearSkyIneichen, extraterrestrial, onPlane, relativeAirMass } from '../solar/irradiance.js';
import { momentMs, pressureAt, sunPosition } from '../solar/sun-position.js';

/** Sun on the van's surfaces in one hour [W/m²]. */
export interface SunHour {
	readonly roofWm2: number;
	readonly windscreenWm2: number;
	/** front, right, rear, left */
	readonly sidesWm2: readonly [number, number, number, number];
}

/** Where and when the van stands. */
export interface Stand {
	readonly latitudeDeg: number;
	readonly longitudeDeg: number;
	/** local standard time ahead of UTC [h] */
	readonly utcOffsetH: number;
	readonly altitudeM: number;
	readonly month: number;
}

/** Rake of a windscreen from the horizontal [deg] (common practice). */
const windscreenTiltDeg = 45;
/** The ground throws back a fifth of the light (common practice). */
const albedo = 0.2;
/** A clear summer sky. */
const linkeTurbidity = 3;

/**
 * Sun on a van through a clear day, hour by hour, midnight to 1 o'clock first (local standard time, 21st of the month).
 *
 * @param headingDeg where the front points, clockwise from north
 */
export function clearDay(stand: Stand, headingDeg: number): SunHour[] {
	return Array.from({ length: 24 }, (_, hour) => {
		const timeMs = momentMs(2026, stand.month, 21, hour + 0.5 - stand.utcOffsetH);
		const sun = sunPosition(timeMs, stand, stand.altitudeM);
		const mass = relativeAirMass(sun.apparentZenithDeg);
		const extraterrestrialWM2 = extraterrestrial(Math.round((stand.month - 0.5) * 30.4));
		const sky = clearSkyIneichen(sun.apparentZenithDeg, {
			absoluteAirMass: mass === null ? null : (mass * pressureAt(stand.altitudeM)) / 101_325,
			linkeTurbidity,
			altitudeM: stand.altitudeM,
			extraterrestrialWM2,
		});
		const on = (tiltDeg: number, azimuthDeg: number) =>
			onPlane(sky, sun, { tiltDeg, azimuthDeg }, { albedo, extraterrestrialWM2, sky: 'isotropic' }).totalWM2;
		return {
			roofWm2: on(0, headingDeg),
			windscreenWm2: on(windscreenTiltDeg, headingDeg),
			sidesWm2: [
				on(90, headingDeg),
				on(90, headingDeg + 90),
				on(90, headingDeg + 180),
				on(90, headingDeg + 270),
			],
		};
	});
}

/** Radiation of a horizontal surface to the clear sky, as kelvin of sol-air temperature (ASHRAE). */
const skyLossK = 3.9;

/**
 * Sol-air temperature of a surface [°C]: the outside temperature that would drive the same heat through it,
 * to + a I / ho - e dR / ho. The last term, 3.9 K, is the roof's radiation to the clear sky.
 *
 * @param filmM2KW resistance of the outside air film, 1/ho
 */
export function solAirC(
	outsideC: number,
	irradianceWm2: number,
	absorptance: number,
	filmM2KW: number,
	facing: 'sky' | 'horizon',
): number {
	return outsideC + absorptance * irradianceWm2 * filmM2KW - (facing === 'sky' ? skyLossK : 0);
}

/** Share of the day's temperature range by which each hour lies below the day's highest, midnight to 1 o'clock first. */
const belowHighest: readonly number[] = [
	0.88, 0.92, 0.95, 0.98, 1, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0, 0, 0.06, 0.14, 0.24, 0.39,
	0.5, 0.59, 0.68, 0.75, 0.82,
];

/** Outside temperature over a clear design day [°C], hour by hour: the usual shape (ASHRAE, from memory). */
export function dayTemperaturesC(highestC: number, lowestC: number): number[] {
	return belowHighest.map((share) => highestC - share * (highestC - lowestC));
}
