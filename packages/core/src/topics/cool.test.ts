import { describe, expect, test } from 'vitest';
import { answered, codesOf, metric, numberOf, numbersOf } from '../../../../tests/reference/outcome.js';
import { cool } from './cool.js';

const van = { wheelbase: 'long', roof: 'high', outsideC: 38, insideC: 26, paint: 'white', insulationMm: 25 };

describe('heat that comes in', () => {
	test('the parts add up to the whole', () => {
		const numbers = numbersOf(cool, van);
		const parts = ['roof', 'walls', 'glass', 'floor', 'air', 'people', 'appliances'];
		const sum = parts.reduce((total, part) => total + (numbers[`${part}Gain`] ?? 0), 0);
		expect(sum).toBeCloseTo(numbers.heatGain ?? 0, 6);
	});

	test('two people at very light work give 230 W, as ASHRAE prints for one 115 W', () => {
		expect(numberOf(cool, { ...van, people: 2 }, 'peopleGain')).toBe(230);
	});

	test('the worst hour is in the afternoon or at noon', () => {
		const hour = numberOf(cool, van, 'peakHour');
		expect(hour).toBeGreaterThanOrEqual(11);
		expect(hour).toBeLessThanOrEqual(17);
	});

	test('dark paint, bare glass and heat outside each bring more', () => {
		const gain = (more: object) => numberOf(cool, { ...van, ...more }, 'heatGain');
		for (const worse of [
			{ paint: 'black' },
			{ outsideC: 42 },
			{ windowM2: 2 },
			{ outsideRh: 0.7 },
			{ people: 5 },
		]) {
			expect(gain(worse)).toBeGreaterThan(gain({}));
		}
		for (const better of [{ covers: true }, { insulationMm: 60 }, { insideC: 28 }]) {
			expect(gain(better)).toBeLessThan(gain({}));
		}
	});

	test('winter sun in the south of the earth is weaker than summer sun', () => {
		const south = { ...van, latitudeDeg: -34 };
		expect(numberOf(cool, { ...south, month: 1 }, 'heatGain')).toBeGreaterThan(
			numberOf(cool, { ...south, month: 6 }, 'heatGain'),
		);
	});

	test('a place gives its sun and its design high', () => {
		const sizing = answered(cool, { ...van, outsideC: undefined, place: 'Phoenix, AZ' });
		const assumed = Object.fromEntries(sizing.assumed.map((one) => [one.name, one.value]));
		expect(assumed.outsideC).toBeGreaterThan(40);
		expect(assumed.month).toBe('July');
	});

	test('cold enough outside, nothing is needed', () => {
		const mild = { ...van, outsideC: 10, month: 12, latitudeDeg: 60, people: 0, appliancesW: 0 };
		expect(answered(cool, mild).headline).toMatch(/^No cooling needed/);
	});
});

describe('the unit', () => {
	test('the next size above the worst hour, its draw and its amps', () => {
		const numbers = numbersOf(cool, { ...van, coefficient: 2.5, bankV: 24 });
		expect(numbers.unit).toBeGreaterThanOrEqual(numbers.heatGain ?? 0);
		expect(numbers.draw).toBeCloseTo((numbers.unit ?? 0) / 2.5, 6);
		expect(numbers.bankCurrent).toBeCloseTo((numbers.draw ?? 0) / 24, 9);
		expect(numbers.peakDuty).toBeCloseTo((numbers.heatGain ?? 0) / (numbers.unit ?? 1), 9);
	});

	test('a draw that is named counts; an inverter adds its loss', () => {
		expect(numberOf(cool, { ...van, drawW: 900 }, 'bankCurrent')).toBeCloseTo(75, 9);
		expect(numberOf(cool, { ...van, drawW: 900, supply: 'inverter' }, 'bankCurrent')).toBeCloseTo(
			75 / 0.85,
			9,
		);
	});

	test('sizes are spoken of in Btu/h in US units and in watts elsewhere', () => {
		expect(answered(cool, van).headline).toMatch(/Btu\/h/);
		expect(answered(cool, van, metric).headline).toMatch(/^\d+ W/);
	});

	test('more than any unit takes is said', () => {
		const hot = { insideLengthM: 10, insideWidthM: 2.5, insideHeightM: 2.5, outsideC: 50, insulationMm: 0 };
		expect(answered(cool, hot).headline).toMatch(/more than one unit/);
	});
});

describe('the bank', () => {
	const onBank = { ...van, bankAh: 600, bankV: 12 };

	test('panels make it last longer, and never shorter', () => {
		const { hoursOnBank: without = 0 } = numbersOf(cool, onBank);
		const { hoursWithSun = 0 } = numbersOf(cool, { ...onBank, solarW: 600 });
		expect(hoursWithSun).toBeGreaterThan(without);
		expect(numberOf(cool, { ...onBank, solarW: 0 }, 'hoursWithSun')).toBeCloseTo(without, 9);
	});

	test('running without a pause it lasts no longer than with pauses', () => {
		const { hoursOnBank: paused = 0, hoursAtFullPower = 0 } = numbersOf(cool, onBank);
		expect(hoursAtFullPower).toBeLessThanOrEqual(paused);
	});

	test('a bank that does not last, and the one that does', () => {
		const finding = answered(cool, onBank).findings.find((one) => one.code === 'bank-too-small-for-cooling');
		const kWh = Number(/a bank of ([\d.]+) kWh/.exec(finding?.text ?? '')?.[1]);
		const cured = { ...onBank, bankAh: undefined, bankWh: kWh * 1000 };
		expect(codesOf(cool, cured)).not.toContain('bank-too-small-for-cooling');
	});

	test('asked for the night, the night is the answer', () => {
		const { energyPerNight = 0 } = numbersOf(cool, onBank);
		const bank = (bankWh: number) => ({ ...van, overnight: true, bankWh, depth: 0.8 });
		expect(answered(cool, bank((energyPerNight / 0.8) * 1.01)).headline).toMatch(/carries the night/);
		const short = bank((energyPerNight / 0.8) * 0.99);
		expect(answered(cool, short).headline).toMatch(/won't last the night/);
		expect(codesOf(cool, short)).toContain('night-empties-bank');
		expect(codesOf(cool, bank((energyPerNight / 0.8) * 1.01))).not.toContain('night-empties-bank');
	});
});

describe('findings', () => {
	test('a unit that is too small, and the one that is not', () => {
		const small = { ...van, unitW: 1500 };
		expect(answered(cool, small).headline).toMatch(/too small/);
		expect(codesOf(cool, small)).toContain('unit-too-small');
		expect(codesOf(cool, { ...van, unitW: numberOf(cool, van, 'unit') })).not.toContain('unit-too-small');
	});
	test('a unit far too large', () => {
		expect(codesOf(cool, { ...van, unitW: 15_000 })).toContain('unit-oversized');
		expect(codesOf(cool, van)).not.toContain('unit-oversized');
	});
	test('heavy current', () => {
		expect(codesOf(cool, { ...van, bankV: 12 })).toContain('heavy-current');
		expect(codesOf(cool, { ...van, bankV: 48 })).not.toContain('heavy-current');
	});
	test('the start of a compressor on an inverter', () => {
		expect(codesOf(cool, { ...van, supply: 'inverter' })).toContain('start-surge');
		expect(codesOf(cool, van)).not.toContain('start-surge');
	});
});

test('cautions: refrigerant, the roof, heat in a parked van; mains where an inverter feeds it', () => {
	const { cautions } = answered(cool, van);
	expect(cautions.join(' ')).toMatch(/Refrigerant/);
	expect(cautions.join(' ')).toMatch(/pet/);
	expect(answered(cool, { ...van, supply: 'inverter' }).cautions.join(' ')).toMatch(/licensed electrician/);
});

test('the tipping heat is about where the unit just keeps up', () => {
	const [tip] = answered(cool, van).tipping;
	const there = numbersOf(cool, { ...van, unitW: numberOf(cool, van, 'unit'), outsideC: tip?.value });
	expect((there.heatGain ?? 0) / (there.unit ?? 1)).toBeCloseTo(1, 1);
});
