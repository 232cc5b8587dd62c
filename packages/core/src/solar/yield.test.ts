import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ClimateRow, climateRow, stationNames } from '../tables/climate.js';
import { mountings } from './photovoltaic.js';
import {
	daysInMonth,
	diffuseHourShare,
	erbsDiffuseShare,
	extraterrestrialDay,
	globalHourShare,
	meanDayOfYear,
	sunsetHourAngleDeg,
	typicalDay,
} from './typical-day.js';
import { dayYield, type PvArray } from './yield.js';

const array: PvArray = {
	ratedW: 400,
	surface: { tiltDeg: 0, azimuthDeg: 180 },
	powerPerK: -0.004,
	mounting: mountings.close_mount_glass_glass,
	windMS: 1,
	albedo: 0.2,
	reflection: true,
	losses: 0.09,
	shading: 0.03,
	controllerEfficiency: 0.95,
};

const station = fc.integer({ min: 0, max: stationNames().length - 1 }).map((index) => climateRow(index));
const month = fc.integer({ min: 1, max: 12 });

describe('the average day', () => {
	test('adds up to the published irradiation wherever the sun rises, beam and sky make the global', () => {
		fc.assert(
			fc.property(station, month, (row, which) => {
				const day = typicalDay(row, which);
				if (day.steps.length === 0) return;
				const sums = day.steps.reduce((sum, { irradiance, apparentZenithDeg }) => {
					const cosine = Math.cos((apparentZenithDeg * Math.PI) / 180);
					const direct = irradiance.beamWM2 * cosine;
					expect(direct + irradiance.diffuseWM2).toBeCloseTo(irradiance.globalWM2, 6);
					expect(irradiance.beamWM2).toBeGreaterThanOrEqual(0);
					expect(irradiance.diffuseWM2).toBeGreaterThanOrEqual(-1e-9);
					return sum + (irradiance.globalWM2 * day.stepH) / 1000;
				}, 0);
				expect(sums).toBeCloseTo(row.ghiKWhM2[which - 1] as number, 9);
			}),
			{ numRuns: 300 },
		);
	});

	test('no beam is stronger than the sun, save where the sun only grazes the horizon', () => {
		fc.assert(
			fc.property(station, month, (row, which) => {
				for (const { irradiance, apparentZenithDeg } of typicalDay(row, which).steps) {
					if (apparentZenithDeg < 85) expect(irradiance.beamWM2).toBeLessThan(1200);
				}
			}),
			{ numRuns: 200 },
		);
	});

	test('in polar night nothing is made up', () => {
		const barrow = stationNames().find((one) => one.station.startsWith('Barrow'));
		if (barrow === undefined) throw new Error('no Barrow');
		const day = dayYield(climateRow(barrow.index), 12, array);
		expect(day.typical.steps).toEqual([]);
		expect(day.batteryWh).toBe(0);
		expect(day.hottestCellC).toBeNull();
	});

	test('where no diffuse part is published it is reckoned from the clearness', () => {
		const calgary = stationNames().find((one) => one.station.startsWith('Calgary'));
		if (calgary === undefined) throw new Error('no Calgary');
		const day = typicalDay(climateRow(calgary.index), 6);
		expect(day.isDiffuseReckoned).toBe(true);
		expect(day.dhiKWhM2 / day.ghiKWhM2).toBeGreaterThan(0.25);
		expect(day.dhiKWhM2 / day.ghiKWhM2).toBeLessThan(0.6);
		expect(day.isSwingUsual).toBe(true);
	});

	test('Erbs and colleagues against the published diffuse of every station: close on the whole', () => {
		// An independent check of the correlation: monthly diffuse shares of the hourly years.
		const errors: number[] = [];
		for (const index of stationNames().keys()) {
			const row = climateRow(index);
			if (row.dataset !== 'TMY3' || row.dhiKWhM2 === null || Math.abs(row.latitudeDeg) > 50) continue;
			for (const which of [1, 4, 7, 10]) {
				const { clearness } = typicalDay(row, which);
				const ghi = row.ghiKWhM2[which - 1] as number;
				const share = erbsDiffuseShare(clearness, which === 1 ? 75 : 95);
				errors.push(share - (row.dhiKWhM2[which - 1] as number) / ghi);
			}
		}
		const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
		const spread = Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);
		expect(Math.abs(mean)).toBeLessThan(0.04);
		expect(spread).toBeLessThan(0.06);
	});
});

describe('yield', () => {
	test('is in proportion to the rated power, and the hours make the day', () => {
		fc.assert(
			fc.property(station, month, fc.double({ min: 10, max: 5000, noNaN: true }), (row, which, ratedW) => {
				const one = dayYield(row, which, { ...array, ratedW: 1 });
				const many = dayYield(row, which, { ...array, ratedW });
				expect(many.batteryWh).toBeCloseTo(one.batteryWh * ratedW, 6);
				expect(many.hourlyW.reduce((sum, value) => sum + value, 0)).toBeCloseTo(many.batteryWh, 6);
			}),
			{ numRuns: 100 },
		);
	});

	test('shade, losses, heat and a poor controller never add', () => {
		fc.assert(
			fc.property(station, month, fc.double({ min: 0, max: 0.9, noNaN: true }), (row, which, share) => {
				const base = dayYield(row, which, array).batteryWh;
				for (const worse of [
					{ ...array, shading: Math.max(array.shading, share) },
					{ ...array, losses: Math.max(array.losses, share) },
					{ ...array, controllerEfficiency: array.controllerEfficiency * (1 - share) },
				]) {
					expect(dayYield(row, which, worse).batteryWh).toBeLessThanOrEqual(base + 1e-9);
				}
			}),
			{ numRuns: 100 },
		);
	});

	test('it peaks about noon by the sun: between 10 and 14 h in standard time where clock and sun agree', () => {
		const denver = stationNames().find((one) => one.station === 'Denver Intl AP') as { index: number };
		const { hourlyW } = dayYield(climateRow(denver.index), 6, array);
		const best = hourlyW.indexOf(Math.max(...hourlyW));
		expect(best).toBeGreaterThanOrEqual(11);
		expect(best).toBeLessThanOrEqual(12);
		expect(hourlyW[0]).toBe(0);
	});

	test('a tilt to the noon sun helps in winter and hurts in summer', () => {
		const row = climateRow(
			(stationNames().find((one) => one.station === 'Denver Intl AP') as { index: number }).index,
		);
		const tilted = { ...array, surface: { tiltDeg: 40, azimuthDeg: 180 } };
		expect(dayYield(row, 12, tilted).batteryWh).toBeGreaterThan(1.3 * dayYield(row, 12, array).batteryWh);
		expect(dayYield(row, 6, tilted).batteryWh).toBeLessThan(dayYield(row, 6, array).batteryWh);
	});

	test('south of the equator the year is turned round', () => {
		const row = climateRow(
			(stationNames().find((one) => one.station === 'Melbourne') as { index: number }).index,
		);
		const north = { ...array, surface: { tiltDeg: 30, azimuthDeg: 0 } };
		const south = { ...array, surface: { tiltDeg: 30, azimuthDeg: 180 } };
		expect(dayYield(row, 12, array).batteryWh).toBeGreaterThan(2 * dayYield(row, 6, array).batteryWh);
		expect(dayYield(row, 6, north).batteryWh).toBeGreaterThan(1.5 * dayYield(row, 6, south).batteryWh);
	});
});

describe('shares of the day', () => {
	test('a whole day of hours makes the day', () => {
		for (const sunsetDeg of [60, 75, 90, 105, 120]) {
			let diffuse = 0;
			let global = 0;
			for (let hourAngle = -179.5; hourAngle < 180; hourAngle += 1) {
				if (Math.abs(hourAngle) > sunsetDeg) continue;
				diffuse += diffuseHourShare(hourAngle, sunsetDeg) / 15;
				global += globalHourShare(hourAngle, sunsetDeg) / 15;
			}
			expect(diffuse).toBeCloseTo(1, 2);
			// The correlation itself adds up to 1 within a few per cent; the average day is scaled to it.
			expect(Math.abs(global - 1)).toBeLessThan(0.03);
		}
	});

	test('polar day and night', () => {
		expect(sunsetHourAngleDeg(70, 23)).toBe(180);
		expect(sunsetHourAngleDeg(70, -23)).toBe(0);
		expect(extraterrestrialDay(70, -23, 1400)).toBeCloseTo(0, 12);
		expect(extraterrestrialDay(70, 23, 1330)).toBeGreaterThan(11);
	});

	test('the mean days are those days of the year', () => {
		expect([1, 2, 3, 6, 12].map(meanDayOfYear)).toEqual([17, 47, 75, 162, 344]);
		expect(daysInMonth.reduce((sum: number, days) => sum + days, 0)).toBe(365);
	});
});

test('a station row stays as published', () => {
	const row: ClimateRow = climateRow(10);
	dayYield(row, 6, array);
	expect(climateRow(10)).toEqual(row);
});
