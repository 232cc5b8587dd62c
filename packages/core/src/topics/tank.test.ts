import { describe, expect, test } from 'vitest';
import { answered, codesOf, numberOf, numbersOf, refusal } from '../../../../tests/reference/outcome.js';
import { tank } from './tank.js';

const gallon = 3.785411784;
/** Two people, one shower a day of 3 min at 8 L/min, 6 L of dishes, 2 L of washing and 3 L to drink each. */
const crew = {
	freshL: 120,
	grayL: 120,
	people: 2,
	showersPerDay: 1,
	showerH: 3 / 60,
	showerLMin: 8,
	dishesL: 6,
	washingL: 2,
	drinkingL: 3,
	usable: 1,
};

describe('days of water', () => {
	test('worked by hand: 2 × 24 + 6 + 4 = 58 L to gray, + 6 L to drink = 64 L a day', () => {
		expect(numbersOf(tank, crew)).toMatchObject({
			grayPerDay: 58,
			freshPerDay: 64,
			freshDays: 120 / 64,
			grayDays: 120 / 58,
			days: 120 / 64,
			freshMass: 120,
		});
		expect(answered(tank, crew).governedBy).toBe('fresh tank');
	});

	test('one day is one day', () => {
		const headline = (freshL: number) => answered(tank, { ...crew, freshL, grayL: 200 }).headline;
		expect(headline(64)).toBe('1 day: the fresh tank is empty first; gray lasts 3.4 days');
		expect(headline(128)).toBe('2 days: the fresh tank is empty first; gray lasts 3.4 days');
	});

	test('children count as people', () => {
		const family = { freshL: 120, people: 2, kids: 2 };
		expect(numbersOf(tank, family)).toEqual(numbersOf(tank, { freshL: 120, people: 4 }));
	});

	test('days are rounded down and weights up', () => {
		const sizing = answered(tank, { ...crew, freshL: 30 * gallon });
		const text = (name: string) => sizing.results.find((one) => one.name === name)?.text;
		// 113.56 L / 64 L a day is 1.774 days.
		expect(text('days')).toBe('1.7 days');
		// 113.56 kg is 250.36 lb.
		expect(text('freshMass')).toBe('250.4 lb');
	});

	test('bottled drinking water stays out of the tank, a flushing toilet comes out of it', () => {
		expect(numberOf(tank, { ...crew, bottled: true }, 'freshPerDay')).toBe(58);
		expect(numberOf(tank, { ...crew, flushL: 5 }, 'freshPerDay')).toBe(74);
		expect(numberOf(tank, { ...crew, flushL: 5 }, 'grayPerDay')).toBe(58);
	});

	test('without showers their length does not matter', () => {
		const none = { ...crew, showers: false };
		expect(numberOf(tank, none, 'freshPerDay')).toBe(16);
		expect(numberOf(tank, { ...none, showerH: 0.5 }, 'freshPerDay')).toBe(16);
	});

	test('the pick-up leaves its share in the tank', () => {
		expect(numberOf(tank, { ...crew, usable: 0.9 }, 'freshDays')).toBeCloseTo((0.9 * 120) / 64, 12);
	});
});

describe('findings', () => {
	test('a gray tank that is full first, with the size that clears it', () => {
		const small = { ...crew, grayL: 60 };
		const sizing = answered(tank, small);
		expect(sizing.governedBy).toBe('gray tank');
		expect(sizing.headline).toMatch(/gray tank is full first/);
		expect(codesOf(tank, small)).toContain('gray-too-small');
		const needed = numberOf(tank, small, 'matchingGray');
		expect(needed).toBeCloseTo((120 * 58) / 64, 9);
		expect(codesOf(tank, { ...small, grayL: needed })).not.toContain('gray-too-small');
		expect(codesOf(tank, { ...small, grayL: needed * 0.999 })).toContain('gray-too-small');
	});

	test('days that are not met, with the tanks that would meet them', () => {
		const wanted = { ...crew, wantedH: 5 * 24 };
		expect(codesOf(tank, wanted)).toContain('days-not-met');
		const numbers = numbersOf(tank, wanted);
		const cured = { ...wanted, freshL: numbers.freshNeeded, grayL: numbers.grayNeeded };
		expect(codesOf(tank, cured)).not.toContain('days-not-met');
	});

	test('a gray tank nobody named is noted, a named one is not', () => {
		expect(codesOf(tank, { ...crew, grayL: undefined })).toEqual(['gray-tank-not-named']);
		expect(codesOf(tank, crew)).toEqual([]);
	});
});

test('one person more or less, and how long a shower may be', () => {
	const sizing = answered(tank, { ...crew, wantedH: 36 });
	expect(sizing.neighbours.map((one) => [one.choice, one.passes])).toEqual([
		['1 person', true],
		['3 people', false],
	]);
	const [tip] = sizing.tipping;
	const at = (showerH: number) => numberOf(tank, { ...crew, showerH }, 'days');
	expect(at(tip?.value ?? 0)).toBeGreaterThanOrEqual(1.5);
	expect(at((tip?.value ?? 0) * 1.001)).toBeLessThan(1.5);
});

test('no use at all is refused', () => {
	const nothing = { ...crew, showers: false, dishesL: 0, washingL: 0, drinkingL: 0 };
	expect(refusal(tank, nothing)).toMatchObject({ code: 'impossible', field: 'drinkingL' });
});

test('every answer carries the cautions of drinking water and of weight', () => {
	const { cautions } = answered(tank, crew);
	expect(cautions.join(' ')).toMatch(/disinfect/);
	expect(cautions.join(' ')).toMatch(/backflow/);
	expect(cautions.join(' ')).toMatch(/axle/);
});

describe('the tanks that so many days take', () => {
	const crew = { people: 2, wantedH: 96 };

	test('hold what is used in that time, and last that long', () => {
		const sizing = answered(tank, crew);
		expect(sizing.headline).toMatch(/ fresh and .+ gray for 4 days$/);
		const { freshNeeded, grayNeeded } = numbersOf(tank, crew);
		const days = numbersOf(tank, { ...crew, freshL: freshNeeded, grayL: grayNeeded });
		expect(days.freshDays).toBeCloseTo(4, 9);
		expect(days.grayDays).toBeCloseTo(4, 9);
	});

	test('a gray tank that is too small for them is found', () => {
		const { grayNeeded = 0 } = numbersOf(tank, crew);
		expect(codesOf(tank, { ...crew, grayL: grayNeeded * 0.99 })).toEqual(['days-not-met']);
		expect(codesOf(tank, { ...crew, grayL: grayNeeded * 1.01 })).toEqual([]);
	});
});
