import { describe, expect, test } from 'vitest';
import { answered, codesOf, numberOf, numbersOf, refusal } from '../../../../tests/reference/outcome.js';
import { heat } from './heat.js';

const van = {
	wheelbase: 'long',
	roof: 'high',
	outsideC: -18,
	insideC: 20,
	insulationMm: 25,
	material: 'xps',
};

describe('heat loss', () => {
	test('the parts and the air add up to the whole', () => {
		const numbers = numbersOf(heat, van);
		const parts = ['walls', 'roof', 'floor', 'windows', 'cabGlass', 'cabMetal', 'air'];
		const sum = parts.reduce((total, part) => total + (numbers[`${part}Loss`] ?? 0), 0);
		expect(sum).toBeCloseTo(numbers.heatLoss ?? 0, 6);
		expect(numbers.heatLoss).toBeCloseTo((numbers.lossPerKelvin ?? 0) * 38, 6);
	});

	test('the truth lies between the two limits', () => {
		const { heatLoss = 0, heatLossMost = 0, heatLossLeast = 0 } = numbersOf(heat, van);
		expect(heatLossLeast).toBeLessThan(heatLoss);
		expect(heatLoss).toBeLessThan(heatLossMost);
	});

	test('without ribs the limits are one, and the wall is the plain layer sum', () => {
		const numbers = numbersOf(heat, { ...van, ribShare: 0 });
		expect(numbers.heatLossMost).toBeCloseTo(numbers.heatLossLeast ?? 0, 9);
		// 0.13 + 5 mm plywood + 25 mm XPS + steel + 0.04
		expect(numbers.wallU).toBeCloseTo(1 / (0.13 + 0.005 / 0.13 + 0.025 / 0.029 + 0.001 / 50 + 0.04), 9);
	});

	test('insulation, covers, a closed cab and covered ribs each help', () => {
		const loss = (more: object) => numberOf(heat, { ...van, ...more }, 'heatLoss');
		for (const better of [
			{ insulationMm: 50 },
			{ covers: true },
			{ cabClosed: true },
			{ ribCoverMm: 10 },
			{ windowKind: 'double' },
		]) {
			expect(loss(better)).toBeLessThan(loss({}));
		}
	});

	test('an uninsulated van loses more than a fitted one', () => {
		const bare = { wheelbase: 'long', outsideC: -5, bare: true };
		expect(numberOf(heat, bare, 'heatLoss')).toBeGreaterThan(
			1.5 * numberOf(heat, { ...bare, bare: undefined }, 'heatLoss'),
		);
		expect(answered(heat, bare).assumed.find((one) => one.name === 'insulationMm')?.value).toBe(0);
	});

	test('a size class stands for typical dimensions, each of which can be named', () => {
		const typical = answered(heat, van);
		expect(typical.assumed.filter((one) => one.name.startsWith('inside')).map((one) => one.name)).toEqual([
			'insideLengthM',
			'insideWidthM',
			'insideHeightM',
		]);
		const measured = { ...van, insideLengthM: 3.7, insideWidthM: 1.8, insideHeightM: 2 };
		expect(numberOf(heat, measured, 'heatLoss')).toBeCloseTo(numberOf(heat, van, 'heatLoss'), 9);
		expect(answered(heat, measured).assumed.some((one) => one.name === 'insideWidthM')).toBe(false);
		expect(numberOf(heat, { ...van, wheelbase: undefined, wheelbaseM: 4.0 }, 'heatLoss')).toBeCloseTo(
			numberOf(heat, van, 'heatLoss'),
			9,
		);
	});
});

describe('the heater', () => {
	test('the next size above loss, reserve and altitude', () => {
		const numbers = numbersOf(heat, { ...van, altitudeM: 2438.4 });
		// 8000 ft: 32 % less by the gas code, more than the density ratio takes.
		expect(numbers.altitudeShare).toBeCloseTo(0.68, 9);
		expect(numbers.heaterNeeded).toBeCloseTo(((numbers.heatLoss ?? 0) * 1.2) / 0.68, 6);
		expect(numbers.heater).toBeGreaterThanOrEqual(numbers.heaterNeeded ?? 0);
		expect(numbers.heaterOutput).toBeCloseTo((numbers.heater ?? 0) * 0.68, 6);
	});

	test('fuel by the lower heating value, fan by its watts', () => {
		const numbers = numbersOf(heat, { ...van, nightH: 10, efficiency: 0.8, fanW: 30 });
		// Diesel: 9.945 kWh/L.
		expect(numbers.fuelPerNight).toBeCloseTo(((numbers.heatLoss ?? 0) * 10) / 0.8 / 9945, 3);
		expect(numbers.batteryPerNight).toBe(300);
		const propane = numberOf(heat, { ...van, nightH: 10, fuel: 'propane' }, 'fuelPerNight');
		expect(propane / (numbers.fuelPerNight ?? 1)).toBeCloseTo(9.945 / 6.523, 2);
	});

	test('several nights take as many times as much', () => {
		const numbers = numbersOf(heat, { ...van, nightH: 10, stayH: 72 });
		expect(numbers.fuelForStay).toBeCloseTo(3 * (numbers.fuelPerNight ?? Number.NaN), 9);
		expect(numbers.batteryForStay).toBeCloseTo(3 * (numbers.batteryPerNight ?? Number.NaN), 9);
		expect(answered(heat, { ...van, stayH: 72 }).headline).toMatch(/ for 3 nights$/);
		expect(answered(heat, { ...van, stayH: 24 }).headline).toMatch(/ a night$/);
	});

	test('an electric heater burns nothing and takes it all from the bank', () => {
		const electric = { ...van, fuel: 'electric', bankAh: 200, bankV: 12, altitudeM: 3000 };
		const numbers = numbersOf(heat, electric);
		expect(numbers).not.toHaveProperty('fuelPerNight');
		expect(numbers.altitudeShare).toBe(1);
		expect(numbers.batteryPerNight).toBeCloseTo(((numbers.heatLoss ?? 0) * 14) / 0.85, 6);
		expect(answered(heat, electric).cautions.join(' ')).not.toMatch(/carbon-monoxide/);
		expect(codesOf(heat, electric)).toContain('heating-empties-bank');
	});

	test('the place gives its design low and its altitude', () => {
		const sizing = answered(heat, { ...van, outsideC: undefined, place: 'Leadville, CO' });
		const assumed = Object.fromEntries(sizing.assumed.map((one) => [one.name, one.value]));
		expect(assumed.outsideC).toBeLessThan(-15);
		expect(assumed.altitudeM).toBeGreaterThan(2500);
	});

	test('the tipping cold is just covered, the tipping altitude too', () => {
		const given = { ...van, outsideC: -10 };
		const { tipping } = answered(heat, given);
		const reserve = (more: object) => {
			const numbers = numbersOf(heat, { ...given, heaterW: numberOf(heat, given, 'heater'), ...more });
			return (numbers.heater ?? 0) - (numbers.heaterNeeded ?? 0);
		};
		for (const tip of tipping) expect(Math.abs(reserve({ [tip.name]: tip.value }))).toBeLessThan(2);
		expect(tipping.map((tip) => tip.name)).toEqual(['outsideC', 'altitudeM']);
	});

	test('more than any heater gives is said', () => {
		const huge = { insideLengthM: 10, insideWidthM: 2.5, insideHeightM: 2.5, outsideC: -50, insulationMm: 0 };
		expect(answered(heat, huge).headline).toMatch(/more than one heater/);
	});
});

describe('findings', () => {
	test('a heater that is too small, and the one that is not', () => {
		const small = { ...van, heaterW: 2000 };
		expect(answered(heat, small).headline).toMatch(/too small/);
		expect(codesOf(heat, small)).toContain('heater-too-small');
		expect(codesOf(heat, { ...van, heaterW: numberOf(heat, van, 'heater') })).not.toContain(
			'heater-too-small',
		);
	});
	test('a heater far too large', () => {
		expect(codesOf(heat, { ...van, outsideC: 10, heaterW: 8000 })).toContain('heater-oversized');
		expect(codesOf(heat, van)).not.toContain('heater-oversized');
	});
	test('thin air', () => {
		expect(codesOf(heat, { ...van, altitudeM: 2500 })).toContain('altitude-derating');
		expect(codesOf(heat, { ...van, altitudeM: 100 })).not.toContain('altitude-derating');
	});
	test('a bank that the fan empties, and the one it does not', () => {
		const small = { ...van, bankWh: 300, depth: 0.8 };
		const finding = answered(heat, small).findings.find((one) => one.code === 'heating-empties-bank');
		const wh = Number(/a bank of (\d+) Wh/.exec(finding?.text ?? '')?.[1]);
		expect(codesOf(heat, { ...small, bankWh: wh })).not.toContain('heating-empties-bank');
		expect(codesOf(heat, { ...small, bankWh: wh - 2 })).toContain('heating-empties-bank');
	});
	test('ribs that bridge the insulation', () => {
		expect(
			codesOf(heat, { ...van, ribShare: 0.2, insulationMm: 75, covers: true, cabClosed: true }),
		).toContain('ribs-bridge-insulation');
		expect(codesOf(heat, { ...van, ribCoverMm: 20 })).not.toContain('ribs-bridge-insulation');
	});
	test('a burner without an alarm is a danger', () => {
		const without = answered(heat, { ...van, alarm: false });
		expect(without.findings[0]).toMatchObject({ code: 'no-carbon-monoxide-alarm', severity: 'danger' });
		expect(codesOf(heat, { ...van, alarm: true })).not.toContain('no-carbon-monoxide-alarm');
		expect(codesOf(heat, { ...van, alarm: false, fuel: 'electric' })).not.toContain(
			'no-carbon-monoxide-alarm',
		);
	});
});

test('a burner carries the cautions of carbon monoxide and combustion air, gas that of the licensed trade', () => {
	const diesel = answered(heat, van).cautions.join(' ');
	expect(diesel).toMatch(/carbon-monoxide alarm/);
	expect(diesel).toMatch(/[Cc]ombustion air/);
	expect(answered(heat, { ...van, fuel: 'propane' }).cautions.join(' ')).toMatch(/licensed trade/);
	expect(diesel).not.toMatch(/licensed trade/);
});

describe('refusals', () => {
	test('a heater without a flue', () => {
		expect(refusal(heat, { ...van, unvented: true })).toMatchObject({ code: 'unsafe', field: 'unvented' });
	});
	test('warmer outside than inside', () => {
		expect(refusal(heat, { ...van, outsideC: 25 })).toMatchObject({ code: 'contradiction' });
	});
	test('neither size nor cold', () => {
		expect(() => answered(heat, { outsideC: -5 })).toThrow(/How big is the van/);
		expect(() => answered(heat, { wheelbase: 'long' })).toThrow(/How cold/);
	});
});
