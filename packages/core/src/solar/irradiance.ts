import { fromMemory, published } from '../topic/source.js';
import type { SunPosition } from './sun-position.js';

const degree = Math.PI / 180;

/** The sun's mean irradiance outside the air [W/m²]. */
const solarConstantWM2 = 1366.1;

export const extraterrestrialSource = fromMemory('Spencer 1971', 'Fourier series of the position of the sun');
export const transpositionSource = published(
	'Hay and Davies 1980',
	'anisotropic sky diffuse; checked against an open solar library row by row',
);

/** Irradiance outside the air on a plane facing the sun: Spencer 1971 [W/m²]. */
export function extraterrestrial(dayOfYear: number, constantWM2 = solarConstantWM2): number {
	const b = (2 * Math.PI * (dayOfYear - 1)) / 365;
	return (
		constantWM2 *
		(1.00011 +
			0.034221 * Math.cos(b) +
			0.00128 * Math.sin(b) +
			0.000719 * Math.cos(2 * b) +
			0.000077 * Math.sin(2 * b))
	);
}

/**
 * Air mass the sunlight passes, relative to straight up at the same place: Kasten and Young 1989.
 *
 * @returns null where the sun is down
 */
export function relativeAirMass(apparentZenithDeg: number): number | null {
	if (apparentZenithDeg > 90) return null;
	return 1 / (Math.cos(apparentZenithDeg * degree) + 0.50572 * (6.07995 + 90 - apparentZenithDeg) ** -1.6364);
}

/** Global, beam (on a plane facing the sun) and sky-diffuse irradiance [W/m²]. */
export interface Irradiance {
	readonly globalWM2: number;
	readonly beamWM2: number;
	readonly diffuseWM2: number;
}

/** Clear-sky global irradiance on the horizontal from the sun's height alone: Haurwitz 1945 [W/m²]. */
export function clearSkyHaurwitz(apparentZenithDeg: number): number {
	const cosine = Math.cos(apparentZenithDeg * degree);
	return cosine <= 0 ? 0 : 1098 * cosine * Math.exp(-0.059 / cosine);
}

/** What the clear-sky model of Ineichen and Perez needs besides the sun's height. */
export interface ClearAir {
	/** relative air mass times pressure over 101,325 Pa, or null where the sun is down */
	readonly absoluteAirMass: number | null;
	/** 2 very clean and cold to 7 polluted */
	readonly linkeTurbidity: number;
	readonly altitudeM: number;
	readonly extraterrestrialWM2: number;
}

/** Clear-sky irradiance: Ineichen and Perez 2002, without the enhancement for low sun. */
export function clearSkyIneichen(apparentZenithDeg: number, air: ClearAir): Irradiance {
	const { absoluteAirMass: mass, linkeTurbidity: turbidity, altitudeM, extraterrestrialWM2 } = air;
	const cosine = Math.cos(apparentZenithDeg * degree);
	if (mass === null || cosine <= 0) return { globalWM2: 0, beamWM2: 0, diffuseWM2: 0 };
	const fh1 = Math.exp(-altitudeM / 8000);
	const fh2 = Math.exp(-altitudeM / 1250);
	const cg1 = 5.09e-5 * altitudeM + 0.868;
	const cg2 = 3.92e-5 * altitudeM + 0.0387;
	const globalWM2 =
		cg1 * extraterrestrialWM2 * cosine * Math.exp(-cg2 * mass * (fh1 + fh2 * (turbidity - 1)));
	const beamByMass = extraterrestrialWM2 * (0.664 + 0.163 / fh1) * Math.exp(-0.09 * mass * (turbidity - 1));
	const beamByGlobal =
		globalWM2 * Math.max(0, (1 - (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / fh1)) / cosine);
	const beamWM2 = Math.min(beamByMass, beamByGlobal);
	return { globalWM2, beamWM2, diffuseWM2: globalWM2 - beamWM2 * cosine };
}

/** How a panel lies: tilt from the horizontal, and the direction it faces, clockwise from north. */
export interface Surface {
	readonly tiltDeg: number;
	readonly azimuthDeg: number;
}

/** Cosine of the angle between the sun and the panel's face; negative where the sun is behind it. */
export function incidenceCosine(
	surface: Surface,
	sun: Pick<SunPosition, 'apparentZenithDeg' | 'azimuthDeg'>,
): number {
	const tilt = surface.tiltDeg * degree;
	const zenith = sun.apparentZenithDeg * degree;
	const turn = (sun.azimuthDeg - surface.azimuthDeg) * degree;
	return Math.cos(tilt) * Math.cos(zenith) + Math.sin(tilt) * Math.sin(zenith) * Math.cos(turn);
}

/** What falls on a panel, apart by where it comes from [W/m²]. */
export interface PlaneIrradiance {
	readonly totalWM2: number;
	readonly beamWM2: number;
	readonly skyWM2: number;
	readonly groundWM2: number;
}

/** Below this the sun's height would make the beam on the horizontal meaningless: cosine of 89°. */
const lowestCosine = 0.01745;

/**
 * Irradiance on a tilted plane. The sky is either of one brightness (`isotropic`, Liu and Jordan) or brighter around
 * the sun by the share of beam that the air lets through (`hay-davies`).
 *
 * @param albedo share of the global irradiance that the ground throws back
 */
export function onPlane(
	irradiance: Irradiance,
	sun: Pick<SunPosition, 'apparentZenithDeg' | 'azimuthDeg'>,
	surface: Surface,
	options: {
		readonly albedo: number;
		readonly extraterrestrialWM2: number;
		readonly sky: 'isotropic' | 'hay-davies';
	},
): PlaneIrradiance {
	const cosine = incidenceCosine(surface, sun);
	const tiltCosine = Math.cos(surface.tiltDeg * degree);
	const isotropic = (1 + tiltCosine) / 2;
	const beamWM2 = Math.max(0, irradiance.beamWM2 * cosine);
	let skyWM2 = irradiance.diffuseWM2 * isotropic;
	if (options.sky === 'hay-davies') {
		const share = irradiance.beamWM2 / options.extraterrestrialWM2;
		const ratio = Math.max(0, cosine) / Math.max(lowestCosine, Math.cos(sun.apparentZenithDeg * degree));
		skyWM2 = irradiance.diffuseWM2 * Math.max(0, share * ratio + (1 - share) * isotropic);
	}
	const groundWM2 = (irradiance.globalWM2 * options.albedo * (1 - tiltCosine)) / 2;
	return { totalWM2: beamWM2 + skyWM2 + groundWM2, beamWM2, skyWM2, groundWM2 };
}

/**
 * Share of a beam that gets through a panel's glass, relative to straight on: ASHRAE 93, b0 = 0.05.
 *
 * @param cosine of the angle of incidence
 */
export function glassTransmission(cosine: number): number {
	return cosine <= 0 ? 0 : Math.max(0, Math.min(1, 1 - 0.05 * (1 / cosine - 1)));
}
