import { describe, expect, test } from 'vitest';
import { answered, codesOf, numberOf, numbersOf } from '../../../../tests/reference/outcome.js';
import { freeze } from './freeze.js';

/** 75 kg of water losing 2 W/K from 10 °C in -10 °C: 30.2 h to ice, 347 h more to solid. */
const example = { volumeL: 75, startC: 10, outsideC: -10, areaM2: 2 * (0.036 + 0.04), insulationMm: 36 };

describe('how long it takes', () => {
	test('the worked example, with an area that makes 2 W/K', () => {
		const given = { ...example, areaM2: 2 * (36 / 1000 / 0.036 + 0.04) };
		const numbers = numbersOf(freeze, given);
		expect(numbers.lossPerKelvin).toBeCloseTo(2, 9);
		expect(numbers.hoursToFreezing).toBeCloseTo(30.22, 0);
		expect((numbers.hoursToSolid ?? 0) - (numbers.hoursToFreezing ?? 0)).toBeCloseTo(347.4, 0);
		expect(numbers.holdPower).toBeCloseTo(2 * 15, 9);
		expect(numbers.energyPerNight).toBeCloseTo(2 * 15 * 14, 9);
	});

	test('a pipe freezes long before a tank', () => {
		const pipe = numberOf(freeze, { lengthM: 3, outsideC: -5 }, 'hoursToFreezing');
		const tank = numberOf(freeze, { volumeL: 100, outsideC: -5 }, 'hoursToFreezing');
		expect(pipe).toBeLessThan(1);
		expect(tank).toBeGreaterThan(pipe * 10);
	});

	test('wind and bare walls are the safe side; a locker and foam help', () => {
		const hours = (more: object) =>
			numberOf(freeze, { volumeL: 80, outsideC: -8, ...more }, 'hoursToFreezing');
		expect(hours({ sheltered: true })).toBeGreaterThan(hours({}));
		expect(hours({ insulationMm: 20 })).toBeGreaterThan(hours({ sheltered: true }));
	});

	test('above freezing there is no ice, and no finding', () => {
		const sizing = answered(freeze, { volumeL: 80, outsideC: 1 });
		expect(sizing.headline).toMatch(/^No freezing/);
		expect(sizing.findings).toEqual([]);
	});

	test('the design low of a place is taken where no temperature is named', () => {
		const sizing = answered(freeze, { volumeL: 80, place: 'Fairbanks' });
		const around = sizing.results.find((one) => one.name === 'around')?.value;
		expect(around).toBeLessThan(-30);
		expect(sizing.assumed.map((one) => one.name)).toContain('outsideC');
	});
});

describe('the pad', () => {
	const cold = { volumeL: 80, outsideC: -15, insulationMm: 25 };

	test('duty is the loss over its power, and the energy the loss over the night', () => {
		const numbers = numbersOf(freeze, { ...cold, padW: 100, nightH: 12 });
		expect(numbers.padDuty).toBeCloseTo((numbers.holdPower ?? 0) / 100, 9);
		expect(numbers.energyPerNight).toBeCloseTo((numbers.holdPower ?? 0) * 12, 9);
		expect(numbers.padCurrent).toBeCloseTo(100 / 12, 9);
	});

	test('the pad to fit is a quarter stronger than the loss', () => {
		const { pad = 0, holdPower = 0 } = numbersOf(freeze, cold);
		expect(pad).toBeGreaterThanOrEqual(holdPower * 1.25);
	});

	test('the share of the bank', () => {
		const numbers = numbersOf(freeze, { ...cold, bankAh: 100, bankV: 12, depth: 0.8 });
		expect(numbers.bankShare).toBeCloseTo((numbers.energyPerNight ?? 0) / (1200 * 0.8), 9);
	});
});

describe('findings', () => {
	const cold = { volumeL: 20, outsideC: -15 };

	test('it freezes tonight, and the pad that clears it', () => {
		expect(codesOf(freeze, cold)).toContain('freezes-tonight');
		const { padPower } = numbersOf(freeze, cold);
		const cured = codesOf(freeze, { ...cold, padW: padPower });
		expect(cured).not.toContain('freezes-tonight');
		expect(cured).not.toContain('pad-too-small');
		expect(cured).not.toContain('pad-short');
	});

	test('a pipe that freezes solid splits', () => {
		const finding = answered(freeze, { lengthM: 3, outsideC: -15 }).findings.find(
			(one) => one.code === 'freezes-solid',
		);
		expect(finding?.text).toMatch(/9 % more room/);
		expect(codesOf(freeze, { ...cold, insulationMm: 20 })).not.toContain('freezes-solid');
		expect(codesOf(freeze, { lengthM: 3, outsideC: -15, padW: 200 })).not.toContain('freezes-solid');
	});

	test('a pad that can not keep it from freezing, and one that only misses its thermostat', () => {
		const { lossPerKelvin = 0 } = numbersOf(freeze, cold);
		expect(codesOf(freeze, { ...cold, padW: lossPerKelvin * 14 })).toContain('pad-too-small');
		expect(codesOf(freeze, { ...cold, padW: lossPerKelvin * 17 })).toContain('pad-short');
		expect(codesOf(freeze, { ...cold, padW: lossPerKelvin * 21 })).not.toContain('pad-short');
	});

	test('a pad that empties the bank, and the bank that bears it', () => {
		const small = { ...cold, padW: 400, bankWh: 600, depth: 0.8 };
		const finding = answered(freeze, small).findings.find((one) => one.code === 'pad-empties-bank');
		const kWh = Number(/a bank of ([\d.]+) kWh/.exec(finding?.text ?? '')?.[1]);
		expect(codesOf(freeze, { ...small, bankWh: kWh * 1000 })).not.toContain('pad-empties-bank');
	});

	test('a large tank stands the night, its pipes do not', () => {
		expect(codesOf(freeze, { volumeL: 150, outsideC: -6, insulationMm: 25 })).toContain('pipes-first');
		expect(codesOf(freeze, cold)).not.toContain('pipes-first');
	});
});

test('the tipping cold is just borne', () => {
	const given = { volumeL: 60, outsideC: -15, insulationMm: 10 };
	const [tip] = answered(freeze, given).tipping;
	expect(numberOf(freeze, { ...given, outsideC: tip?.value }, 'hoursToFreezing')).toBeCloseTo(14, 3);
});

test('what is missing is asked for', () => {
	expect(() => answered(freeze, { volumeL: 50 })).toThrow(/How cold does it get/);
	expect(() => answered(freeze, { outsideC: -5 })).toThrow(/How much water/);
	expect(() => answered(freeze, { what: 'pipe', volumeL: 5, outsideC: -5 })).toThrow(/How long is the pipe/);
	expect(() => answered(freeze, { what: 'tank', lengthM: 5, outsideC: -5 })).toThrow(/How much water/);
});
