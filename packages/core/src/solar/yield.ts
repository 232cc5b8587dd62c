import type { ClimateRow } from '../tables/climate.js';
import { glassTransmission, incidenceCosine, onPlane, type Surface } from './irradiance.js';
import { dcPower, type Mounting, sapmTemperatures } from './photovoltaic.js';
import { daysInMonth, type TypicalDay, typicalDay } from './typical-day.js';

/** An array and what its power has to pass before it reaches the battery. */
export interface PvArray {
	readonly ratedW: number;
	readonly surface: Surface;
	/** share of the power by which a degree changes it, negative [1/K] */
	readonly powerPerK: number;
	readonly mounting: Mounting;
	readonly windMS: number;
	/** share of the ground's light thrown back */
	readonly albedo: number;
	/** true where reflection from the glass is reckoned */
	readonly reflection: boolean;
	/** soiling, mismatch, wiring and the like, as a share */
	readonly losses: number;
	/** share kept off by shade */
	readonly shading: number;
	/** of the charge controller */
	readonly controllerEfficiency: number;
}

/** What an array gives on the average day of a month. */
export interface DayYield {
	readonly month: number;
	readonly typical: TypicalDay;
	/** on the plane of the panels: the "sun hours" [kWh/m²] */
	readonly planeKWhM2: number;
	/** from the panels, before losses, shade and controller [Wh] */
	readonly dcWh: number;
	/** into the battery [Wh] */
	readonly batteryWh: number;
	/** into the battery, mean of each clock hour (local standard time) [W] */
	readonly hourlyW: readonly number[];
	/** hottest cell of the day [°C], or null where the sun does not rise */
	readonly hottestCellC: number | null;
}

/** Diffuse light comes from all sides: its reflection is that of a beam at 60° (Brandemuehl and Beckman 1980). */
const diffuseTransmission = glassTransmission(0.5);

/** The yield of the average day of a month, summed over short steps. */
export function dayYield(place: ClimateRow, month: number, array: PvArray): DayYield {
	const typical = typicalDay(place, month);
	const hourlyW = new Array<number>(24).fill(0);
	const kept = (1 - array.losses) * (1 - array.shading) * array.controllerEfficiency;
	let planeKWhM2 = 0;
	let dcWh = 0;
	let hottestCellC: number | null = null;
	for (const step of typical.steps) {
		const plane = onPlane(step.irradiance, step, array.surface, {
			albedo: array.albedo,
			extraterrestrialWM2: typical.extraterrestrialWM2,
			sky: 'hay-davies',
		});
		const beamThrough = array.reflection ? glassTransmission(incidenceCosine(array.surface, step)) : 1;
		const restThrough = array.reflection ? diffuseTransmission : 1;
		const throughWM2 = plane.beamWM2 * beamThrough + (plane.skyWM2 + plane.groundWM2) * restThrough;
		const { cellC } = sapmTemperatures(
			{ planeWM2: plane.totalWM2, airC: step.airC, windMS: array.windMS },
			array.mounting,
		);
		const powerW = Math.max(0, dcPower(array.ratedW, throughWM2, cellC, array.powerPerK));
		const hour = Math.floor(step.hour);
		planeKWhM2 += (plane.totalWM2 * typical.stepH) / 1000;
		dcWh += powerW * typical.stepH;
		hourlyW[hour] = (hourlyW[hour] as number) + powerW * kept * typical.stepH;
		hottestCellC = Math.max(hottestCellC ?? cellC, cellC);
	}
	return { month, typical, planeKWhM2, dcWh, batteryWh: dcWh * kept, hourlyW, hottestCellC };
}

/** The twelve months' yields. */
export function yearYield(place: ClimateRow, array: PvArray): DayYield[] {
	return daysInMonth.map((_, index) => dayYield(place, index + 1, array));
}
