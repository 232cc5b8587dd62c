import { heatingEnergyJ, waterAt } from './properties.js';

/** Share of hot water in a mixture that comes out at a temperature between hot and cold. */
export function hotShare(hotC: number, coldC: number, mixedC: number): number {
	return (mixedC - coldC) / (hotC - coldC);
}

/** Heat loss of a cylindrical tank, 1.5 times as tall as wide, under insulation [W/K]. */
export function cylinderLossWK(
	volumeL: number,
	insulationMm: number,
	conductivityWmK: number,
	filmM2KW: number,
): number {
	const diameterM = ((4 * volumeL) / 1000 / (1.5 * Math.PI)) ** (1 / 3);
	const insulationM = insulationMm / 1000;
	// The middle of the insulation, between the inner and the outer surface.
	const d = diameterM + insulationM;
	const areaM2 = Math.PI * d * (1.5 * diameterM + insulationM) + (Math.PI / 2) * d ** 2;
	return areaM2 / (insulationM / conductivityWmK + filmM2KW);
}

/** Energy a hot tank takes in a day [Wh], left on all day or on a timer, besides the water that is drawn. */
export interface StandingLoss {
	readonly leftOnWh: number;
	readonly onTimerWh: number;
}

/**
 * Standing loss of a hot tank over a day.
 *
 * Left on it loses UA (Th - Ta) all day. On a timer it loses that only while it is on; off, it cools along
 * exp(-t UA/C) and the heat it gave off is put back at the next start.
 */
export function standingLoss(
	tank: {
		readonly volumeL: number;
		readonly lossWK: number;
		readonly hotC: number;
		readonly aroundC: number;
	},
	onH: number,
): StandingLoss {
	const differenceK = Math.max(0, tank.hotC - tank.aroundC);
	const hot = waterAt(tank.hotC);
	const capacityJK = (tank.volumeL / 1000) * hot.densityKgM3 * hot.specificHeatJKgK;
	const offS = (24 - onH) * 3600;
	const cooledJ = capacityJK * differenceK * (1 - Math.exp((-offS * tank.lossWK) / capacityJK));
	return {
		leftOnWh: tank.lossWK * differenceK * 24,
		onTimerWh: tank.lossWK * differenceK * onH + cooledJ / 3600,
	};
}

/** Time a heater needs [h], with the standing loss taken from its power; infinite where it never gets there. */
export function heatingTimeH(
	tank: { readonly volumeL: number; readonly lossWK: number; readonly aroundC: number },
	fromC: number,
	toC: number,
	powerW: number,
): number {
	const energyWh = heatingEnergyJ(tank.volumeL, fromC, toC) / 3600;
	if (toC <= fromC) return 0;
	// Loss over the heating is taken at the mean temperature: exact to a percent for any tank worth insulating.
	const lossAtMeanW = tank.lossWK * Math.max(0, (fromC + toC) / 2 - tank.aroundC);
	const lossAtEndW = tank.lossWK * Math.max(0, toC - tank.aroundC);
	return powerW <= lossAtEndW ? Number.POSITIVE_INFINITY : energyWh / (powerW - lossAtMeanW);
}

/** Contact time of a serious burn [s], by water temperature. */
const scaldRows: readonly (readonly [number, number])[] = [
	[49, 300],
	[54, 30],
	[60, 6],
	[66, 2],
];

/** Hotter than this a tap can scald [°C] (120 °F). */
export const scaldAboveC = 49;

/**
 * How long until water burns an adult's skin badly [s]: the row at or above the temperature, so never too long.
 * Children and old people burn faster. From memory of the US Consumer Product Safety Commission's leaflet.
 */
export function scaldTimeS(temperatureC: number): number {
	const row = scaldRows.find(([rowC]) => temperatureC <= rowC);
	return row === undefined ? 1 : row[1];
}
