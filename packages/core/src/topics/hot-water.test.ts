import { describe, expect, test } from 'vitest';
import {
	answered,
	codesOf,
	metric,
	numberOf,
	numbersOf,
	refusal,
} from '../../../../tests/reference/outcome.js';
import { hotWater } from './hot-water.js';

const heater = { volumeL: 23, coldC: 12, hotC: 60, powerW: 1440 };
const onBank = { ...heater, supply: 'inverter', bankAh: 300, bankV: 12 };

describe('energy and time', () => {
	test('23 L from 12 to 60 °C: 1.284 kWh', () => {
		expect(numberOf(hotWater, heater, 'energy') / 1000).toBeCloseTo(1.2843, 2);
	});

	test('time is energy over power with the loss taken off', () => {
		const hours = numberOf(hotWater, heater, 'time');
		expect(hours).toBeGreaterThan(1284 / 1440);
		expect(hours).toBeLessThan((1284 / 1440) * 1.05);
	});

	test('amps at the element and at the bank, with the inverter', () => {
		expect(numberOf(hotWater, onBank, 'elementCurrent')).toBeCloseTo(12, 9);
		expect(numberOf(hotWater, { ...onBank, efficiency: 0.9 }, 'bankCurrent')).toBeCloseTo(1440 / 0.9 / 12, 9);
	});

	test('a low voltage named beside an inverter is the voltage of the bank', () => {
		const numbers = numbersOf(hotWater, { ...heater, supply: 'inverter', bankAh: 300, voltageV: 24 });
		expect(numbers.elementCurrent).toBeCloseTo(12, 9);
		expect(numbers.bankCurrent).toBeCloseTo(1440 / 0.85 / 24, 9);
	});

	test('an element on the bank itself loses nothing in an inverter', () => {
		const dc = { volumeL: 10, powerW: 300, voltageV: 12, bankAh: 200 };
		expect(numberOf(hotWater, dc, 'bankCurrent')).toBeCloseTo(25, 9);
		expect(answered(hotWater, dc).findings.map((one) => one.code)).not.toContain('inverter-load');
	});

	test('on mains no share of a bank is reckoned', () => {
		expect(numbersOf(hotWater, { ...heater, supply: 'mains', bankAh: 100 })).not.toHaveProperty('dayShare');
		expect(numberOf(hotWater, { ...heater, supply: 'mains' }, 'elementCurrent', metric)).toBeCloseTo(
			1440 / 230,
			9,
		);
	});
});

describe('shower', () => {
	test('60 and 12 °C to 40 °C takes 58.33 % hot; seven tenths of the tank come out hot', () => {
		const numbers = numbersOf(hotWater, { ...heater, showerC: 40, showerLMin: 7.57 });
		expect(numbers.hotShare).toBeCloseTo(0.5833, 4);
		expect(numbers.showerTime).toBeCloseTo((0.7 * 23) / (0.58333 * 7.57), 3);
	});

	test('water cooler than the shower gives none', () => {
		const cool = { ...heater, hotC: 38, showerC: 40 };
		expect(numberOf(hotWater, cool, 'showerTime')).toBe(0);
		expect(codesOf(hotWater, cool)).toContain('too-cool-for-shower');
		expect(codesOf(hotWater, heater)).not.toContain('too-cool-for-shower');
	});
});

describe('left on or on a timer', () => {
	test('a timer saves, and never more than the standing loss', () => {
		const numbers = numbersOf(hotWater, onBank);
		expect(numbers.timerSaves).toBeGreaterThan(0);
		expect(numbers.timerSaves).toBeLessThan((numbers.standbyPerDay ?? 0) / 0.85 + 22 * 20);
		expect((numbers.dayLeftOn ?? 0) - (numbers.dayOnTimer ?? 0)).toBeCloseTo(numbers.timerSaves ?? 0, 9);
	});

	test('a timer that is always on saves nothing', () => {
		expect(numberOf(hotWater, { ...onBank, timerH: 24 }, 'timerSaves')).toBeCloseTo(0, 9);
	});

	test('a named standing loss is taken as it is', () => {
		expect(numberOf(hotWater, { ...onBank, standbyW: 40 }, 'standby')).toBeCloseTo(40, 9);
	});

	test('asked what leaving it on does, that is the answer', () => {
		expect(answered(hotWater, { ...onBank, bankAh: 100, leftOn: true }).headline).toMatch(/empties the bank/);
		expect(answered(hotWater, { ...onBank, bankAh: 1000, leftOn: true }).headline).toMatch(/the bank gives/);
	});
});

describe('findings', () => {
	test('a forgotten heater that empties the bank, and the bank that bears it', () => {
		const sizing = answered(hotWater, { ...onBank, bankAh: 100 });
		const finding = sizing.findings.find((one) => one.code === 'forgotten-heater-empties-bank');
		const kWh = Number(/a bank of ([\d.]+) kWh/.exec(finding?.text ?? '')?.[1]);
		expect(kWh).toBeGreaterThan(2);
		expect(codesOf(hotWater, { ...onBank, bankAh: undefined, bankWh: kWh * 1000 })).not.toContain(
			'forgotten-heater-empties-bank',
		);
		expect(codesOf(hotWater, { ...onBank, bankAh: undefined, bankWh: kWh * 990 })).toContain(
			'forgotten-heater-empties-bank',
		);
	});

	test('more tanks a day than the bank bears', () => {
		expect(codesOf(hotWater, { ...onBank, bankAh: 400, heatUps: 4 })).toContain('use-empties-bank');
		expect(codesOf(hotWater, { ...onBank, bankAh: 400, heatUps: 1 })).not.toContain('use-empties-bank');
	});

	test('scalding water without a mixing valve is a danger', () => {
		const finding = answered(hotWater, heater).findings.find((one) => one.code === 'scald');
		expect(finding?.severity).toBe('danger');
		expect(finding?.text).toMatch(/within 6 s/);
		expect(codesOf(hotWater, { ...heater, mixer: true })).not.toContain('scald');
		expect(codesOf(hotWater, { ...heater, hotC: 49 })).not.toContain('scald');
	});

	test('lukewarm storage is noted', () => {
		expect(codesOf(hotWater, { ...heater, hotC: 50 })).toContain('germs');
		expect(codesOf(hotWater, heater)).not.toContain('germs');
	});

	test('the load on the inverter is noted', () => {
		expect(codesOf(hotWater, onBank)).toContain('inverter-load');
	});
});

test('tanks a day by tipping: a hair more empties the bank', () => {
	const [tip] = answered(hotWater, onBank).tipping;
	const share = (heatUps: number) => numberOf(hotWater, { ...onBank, heatUps }, 'timerShare');
	expect(share(tip?.value ?? 0)).toBeCloseTo(1, 9);
	expect(share((tip?.value ?? 0) * 1.01)).toBeGreaterThan(1);
});

describe('refusals', () => {
	test('hot that is not hotter than cold', () => {
		expect(refusal(hotWater, { ...heater, hotC: 20, coldC: 30 })).toMatchObject({
			code: 'contradiction',
			field: 'hotC',
		});
	});
	test('a shower colder than the cold water', () => {
		expect(refusal(hotWater, { ...heater, coldC: 45, showerC: 40 })).toMatchObject({ field: 'showerC' });
	});
	test('a power that never gets there', () => {
		expect(refusal(hotWater, { ...heater, volumeL: 300, insulationMm: 0, powerW: 100 })).toMatchObject({
			code: 'impossible',
			field: 'powerW',
		});
	});
	test('a voltage that is neither', () => {
		expect(refusal(hotWater, { ...heater, voltageV: 80 })).toMatchObject({ field: 'voltageV' });
	});
});
