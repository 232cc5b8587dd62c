import { cab } from '../tables/interiors.js';
import { bodyHeat } from '../tables/people.js';
import { solarHeatGain, surfaceResistances } from '../tables/surfaces.js';
import { airDensityKgM3, airHeatWK } from './air.js';
import { humidityRatio } from './psychrometrics.js';
import type { Part } from './shell.js';
import { type SunHour, solAirC } from './sun.js';

/** What warms the van besides its surroundings, and how it is kept. */
export interface Room {
	readonly insideC: number;
	/** air renewed [m³/h] */
	readonly airM3H: number;
	readonly people: number;
	readonly appliancesW: number;
	readonly absorptance: number;
	/** solar heat gain of the living space's windows */
	readonly windowGain: number;
	/** reflective covers hang on all glass */
	readonly covers: boolean;
	readonly pressureKPa: number;
	/** water in the air outside and, at the humidity wanted, inside [kg/kg] */
	readonly outsideRatio: number;
	readonly insideRatio: number;
}

/** Heat that comes in during one hour [W]; negative where the van loses heat. */
export interface HourGain {
	readonly roofW: number;
	readonly wallsW: number;
	readonly floorW: number;
	readonly glassW: number;
	readonly airW: number;
	readonly peopleW: number;
	readonly appliancesW: number;
	readonly totalW: number;
}

/** Hours in which people sleep. */
function asleep(hour: number): boolean {
	return hour >= 23 || hour < 7;
}

/** Share of the windscreen in the cab's glass: 1.4 of 2.6 m² (common practice); the rest are door windows. */
const windscreenShare = 1.4 / cab.glassM2;

const filmM2KW = surfaceResistances.outsideSummer.resistanceM2KW;
/** Heat of evaporation of the water in the air [J/kg]. */
const vaporizationJKg = 2_501_000;

/**
 * Heat gain of the van in one hour, taken as steady: panels and foam store little.
 *
 * Roof and walls by sol-air temperature, glass by conduction and solar heat gain, air and people with their moisture.
 */
export function hourGain(
	parts: readonly Part[],
	room: Room,
	sun: SunHour,
	outsideC: number,
	hour: number,
): HourGain {
	const loss = (name: Part['name']) => parts.find((part) => part.name === name)?.lossWK ?? 0;
	const area = (name: Part['name']) => parts.find((part) => part.name === name)?.areaM2 ?? 0;
	const { insideC, absorptance } = room;
	const [front, right, rear, left] = sun.sidesWm2;
	// Two long sides and the rear share the walls as they do in a van about twice as long as wide.
	const wallSun = 0.4 * right + 0.4 * left + 0.2 * rear;
	const meanSides = (front + right + rear + left) / 4;
	const solAir = (irradiance: number, facing: 'sky' | 'horizon' = 'horizon') =>
		solAirC(outsideC, irradiance, absorptance, filmM2KW, facing);

	const roofW = loss('roof') * (solAir(sun.roofWm2, 'sky') - insideC);
	const wallsW =
		loss('walls') * (solAir(wallSun) - insideC) +
		loss('cab metal') * (solAir((sun.roofWm2 + meanSides) / 2) - insideC) +
		loss('cab curtain') * (solAir(front) - insideC);
	const floorW = loss('floor') * (outsideC - insideC);
	const cover = room.covers ? solarHeatGain.reflectiveCover : 1;
	const cabSun = windscreenShare * sun.windscreenWm2 + (1 - windscreenShare) * ((right + left) / 2);
	const glassW =
		(loss('windows') + loss('cab glass')) * (outsideC - insideC) +
		cover *
			(area('windows') * room.windowGain * ((right + left) / 2) +
				area('cab glass') * solarHeatGain.clearSingle * cabSun);
	const density = airDensityKgM3(outsideC, room.pressureKPa);
	const drawnKgS = (density * room.airM3H) / 3600;
	const airW =
		airHeatWK(room.airM3H, density) * (outsideC - insideC) +
		drawnKgS * vaporizationJKg * Math.max(0, room.outsideRatio - room.insideRatio);
	const body = asleep(hour) ? bodyHeat.asleep : bodyHeat.lightWork;
	const peopleW = room.people * (body.sensibleW + body.latentW);
	const appliancesW = room.appliancesW;
	return {
		roofW,
		wallsW,
		floorW,
		glassW,
		airW,
		peopleW,
		appliancesW,
		totalW: roofW + wallsW + floorW + glassW + airW + peopleW + appliancesW,
	};
}

/** Water in air at a temperature and relative humidity [kg/kg]. */
export function moistureOf(temperatureC: number, relativeHumidity: number, pressureKPa: number): number {
	return humidityRatio(temperatureC, relativeHumidity, pressureKPa * 1000);
}

/**
 * Hours until the bank is at its floor, from a full bank at 10 o'clock, hour by hour; null where it lasts for
 * three days.
 *
 * @param drawW electric power drawn in each clock hour
 * @param yieldW power from the sun in each clock hour
 */
export function hoursOnBank(
	usableWh: number,
	drawW: readonly number[],
	yieldW: readonly number[],
): number | null {
	let storedWh = usableWh;
	for (let passed = 0; passed < 72; passed += 1) {
		const hour = (10 + passed) % 24;
		const net = (drawW[hour] ?? 0) - (yieldW[hour] ?? 0);
		if (net > storedWh) return passed + storedWh / net;
		storedWh = Math.min(usableWh, storedWh - net);
	}
	return null;
}
