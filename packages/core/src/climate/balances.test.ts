import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fuels, lowerHeatingValueWhPerL } from '../tables/fuels.js';
import { insulationNames, materials } from '../tables/materials.js';
import { airDensityKgM3 } from './air.js';
import { hoursOnBank } from './gains.js';
import { altitudeShare, fuelL } from './heater.js';
import { dryingAirKgH, wettingRatio } from './moisture.js';
import {
	dewPointC,
	humidityRatio,
	relativeHumidityOf,
	saturationPressurePa,
	saturationTemperatureC,
} from './psychrometrics.js';
import { type Fitout, liningElement, shellParts, windowElement } from './shell.js';
import { clearDay, dayTemperaturesC, solAirC } from './sun.js';
import { deliveredM3H, faceVelocityMS, flowNoiseDb } from './ventilation.js';
import { innerSurfaceC, layer, resistanceOf } from './wall.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pressurePa = 101_325;

describe('moist air', () => {
	test('dew point, saturation and relative humidity undo each other', () => {
		fc.assert(
			fc.property(within(-40, 60), within(0.02, 1), (temperatureC, rh) => {
				expect(saturationTemperatureC(saturationPressurePa(temperatureC))).toBeCloseTo(temperatureC, 6);
				const ratio = humidityRatio(temperatureC, rh, pressurePa);
				expect(relativeHumidityOf(temperatureC, ratio, pressurePa)).toBeCloseTo(rh, 9);
				expect(dewPointC(temperatureC, rh)).toBeLessThanOrEqual(temperatureC + 1e-6);
			}),
		);
	});

	test('water in is water out', () => {
		fc.assert(
			fc.property(within(5, 2000), within(0, 20), within(1, 15), (waterGH, surfaceC, colder) => {
				const inside = wettingRatio(surfaceC, pressurePa);
				const outside = humidityRatio(surfaceC - colder, 0.9, pressurePa);
				const dryKgH = dryingAirKgH(waterGH, inside, outside);
				expect(dryKgH * (inside - outside) * 1000).toBeCloseTo(waterGH, 6);
			}),
		);
		expect(dryingAirKgH(10, 0.004, 0.004)).toBe(Number.POSITIVE_INFINITY);
	});
});

describe('walls', () => {
	const layers = fc.array(
		fc.record({
			thicknessMm: within(0.5, 100),
			conductivityWmK: within(0.02, 2),
			bridgeWmK: fc.option(within(0.05, 50)),
		}),
		{ minLength: 1, maxLength: 6 },
	);

	test('the lower limit is never above the upper one, and the mean lies between', () => {
		fc.assert(
			fc.property(layers, within(0, 0.6), (parts, bridgeShare) => {
				const { lowerM2KW, totalM2KW, upperM2KW } = resistanceOf({
					layers: parts.map((one, index) =>
						layer(`layer ${index}`, one.thicknessMm, one.conductivityWmK, one.bridgeWmK),
					),
					bridgeShare,
					insideM2KW: 0.13,
					outsideM2KW: 0.04,
				});
				expect(lowerM2KW).toBeLessThanOrEqual(upperM2KW * (1 + 1e-12));
				expect(totalM2KW).toBeCloseTo((lowerM2KW + upperM2KW) / 2, 12);
			}),
		);
	});

	test('heat in is heat out: the same flux crosses the inside film and the whole wall', () => {
		fc.assert(
			fc.property(within(10, 30), within(-30, 5), within(0.2, 5), (insideC, outsideC, total) => {
				const surfaceC = innerSurfaceC(insideC, outsideC, 0.13, total);
				expect((insideC - surfaceC) / 0.13).toBeCloseTo((insideC - outsideC) / total, 6);
			}),
		);
	});

	test('ribs never help, a cover over them never harms', () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...insulationNames),
				within(5, 100),
				within(0.01, 0.5),
				(name, mm, ribShare) => {
					const fitout = { insulation: materials[name], ribCoverMm: 0, ribShare };
					const bare = resistanceOf(liningElement(fitout, mm, 0.13));
					expect(bare.totalM2KW).toBeLessThan(bare.clearM2KW);
					const covered = resistanceOf(liningElement({ ...fitout, ribCoverMm: 10 }, mm, 0.13));
					expect(covered.totalM2KW).toBeGreaterThan(bare.totalM2KW);
				},
			),
		);
	});

	test('two panes insulate better than one, a cover better than none', () => {
		const r = (kind: 'single' | 'double', covers: boolean) =>
			resistanceOf(windowElement(kind, covers)).totalM2KW;
		expect(r('double', false)).toBeGreaterThan(r('single', false));
		expect(r('single', true)).toBeGreaterThan(r('single', false));
	});

	test('windows take their area from the walls: the shell keeps its surface', () => {
		const fitout: Fitout = {
			insulation: materials.xps,
			wallMm: 25,
			roofMm: 25,
			floorMm: 15,
			ribCoverMm: 0,
			ribShare: 0.1,
			windowM2: 0,
			window: 'single',
			covers: false,
			cabClosed: false,
		};
		const box = { lengthM: 3.7, widthM: 1.8, heightM: 2 };
		const area = (windowM2: number) =>
			shellParts(box, { ...fitout, windowM2 }).reduce((sum, part) => sum + part.areaM2, 0);
		fc.assert(
			fc.property(within(0, 15), (windowM2) => {
				expect(area(windowM2)).toBeCloseTo(area(0), 9);
			}),
		);
	});
});

describe('heater', () => {
	test('heat out is fuel in times efficiency', () => {
		fc.assert(
			fc.property(
				within(100, 50_000),
				within(0.3, 1),
				fc.constantFrom(...(Object.keys(fuels) as (keyof typeof fuels)[])),
				(heatWh, efficiency, fuel) => {
					const litres = fuelL(heatWh, efficiency, fuel);
					expect(litres * lowerHeatingValueWhPerL(fuel) * efficiency).toBeCloseTo(heatWh, 6);
				},
			),
		);
	});

	test('output never grows with altitude', () => {
		fc.assert(
			fc.property(within(-400, 5500), within(0, 1000), (altitudeM, more) => {
				expect(altitudeShare(altitudeM + more)).toBeLessThanOrEqual(altitudeShare(altitudeM) + 1e-12);
				expect(altitudeShare(altitudeM)).toBeLessThanOrEqual(1);
			}),
		);
	});
});

describe('bank', () => {
	const day = fc.array(within(0, 2000), { minLength: 24, maxLength: 24 });

	test('the energy it gave until empty is what it held', () => {
		fc.assert(
			fc.property(within(100, 20_000), day, (usableWh, drawW) => {
				const none = new Array<number>(24).fill(0);
				const hours = hoursOnBank(usableWh, drawW, none);
				if (hours === null) return;
				let given = 0;
				for (let hour = 0; hour < Math.floor(hours); hour += 1) given += drawW[(10 + hour) % 24] ?? 0;
				given += (hours - Math.floor(hours)) * (drawW[(10 + Math.floor(hours)) % 24] ?? 0);
				expect(given).toBeCloseTo(usableWh, 3);
			}),
		);
	});

	test('sun never shortens it', () => {
		fc.assert(
			fc.property(within(100, 20_000), day, day, (usableWh, drawW, yieldW) => {
				const none = new Array<number>(24).fill(0);
				const without = hoursOnBank(usableWh, drawW, none) ?? 72;
				expect(hoursOnBank(usableWh, drawW, yieldW) ?? 72).toBeGreaterThanOrEqual(without - 1e-9);
			}),
		);
	});
});

describe('sun', () => {
	const stand = { latitudeDeg: 36, longitudeDeg: 0, utcOffsetH: 0, altitudeM: 0, month: 7 };

	test('turning the van by a quarter moves the sun from side to side, not on the roof', () => {
		const north = clearDay(stand, 0);
		const east = clearDay(stand, 90);
		for (let hour = 0; hour < 24; hour += 1) {
			expect(east[hour]?.roofWm2).toBeCloseTo(north[hour]?.roofWm2 ?? 0, 6);
			expect(east[hour]?.sidesWm2[0]).toBeCloseTo(north[hour]?.sidesWm2[1] ?? 0, 6);
			expect(east[hour]?.sidesWm2[3]).toBeCloseTo(north[hour]?.sidesWm2[0] ?? 0, 6);
		}
	});

	test('a clear July noon at 36° brings 900 to 1050 W/m² on the roof, midnight none', () => {
		const day = clearDay(stand, 0);
		expect(day[12]?.roofWm2).toBeGreaterThan(900);
		expect(day[12]?.roofWm2).toBeLessThan(1050);
		expect(day[0]?.roofWm2).toBe(0);
	});

	test('east is lit in the morning, west in the evening', () => {
		const [, right, , left] = clearDay(stand, 0)[7]?.sidesWm2 ?? [0, 0, 0, 0];
		expect(right).toBeGreaterThan(left * 3);
		const [, rightLate, , leftLate] = clearDay(stand, 0)[17]?.sidesWm2 ?? [0, 0, 0, 0];
		expect(leftLate).toBeGreaterThan(rightLate * 3);
	});

	test('dark paint drives more heat; the roof sees the cold sky', () => {
		expect(solAirC(30, 900, 0.95, 0.044, 'horizon')).toBeGreaterThan(
			solAirC(30, 900, 0.25, 0.044, 'horizon'),
		);
		expect(solAirC(30, 0, 0.5, 0.044, 'sky')).toBeCloseTo(26.1, 9);
	});

	test('the day stays between its highest and lowest', () => {
		const day = dayTemperaturesC(38, 25);
		expect(Math.max(...day)).toBe(38);
		expect(Math.min(...day)).toBe(25);
		expect(day).toHaveLength(24);
	});
});

describe('ventilation', () => {
	test('an opening never lets a fan move more than it does freely', () => {
		fc.assert(
			fc.property(within(10, 3000), within(5, 200), within(0.001, 1), (freeM3H, stallPa, areaM2) => {
				const opening = { areaM2, densityKgM3: airDensityKgM3(20, 101.325) };
				const delivered = deliveredM3H(freeM3H, stallPa, opening);
				expect(delivered).toBeLessThan(freeM3H);
				expect(deliveredM3H(freeM3H, stallPa, { ...opening, areaM2: areaM2 * 2 })).toBeGreaterThan(delivered);
				expect(faceVelocityMS(delivered, areaM2) * areaM2 * 3600).toBeCloseTo(delivered, 6);
			}),
		);
	});

	test('twice the speed is 18 dB louder', () => {
		expect(flowNoiseDb(4, 0.05) - flowNoiseDb(2, 0.05)).toBeCloseTo(60 * Math.log10(2), 9);
	});
});
