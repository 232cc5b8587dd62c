import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	chargerInputA,
	chargerLimitA,
	type Draw,
	demandA,
	mayRunTogether,
	mostDraws,
	type Supply,
	setsOf,
} from './together.js';

const draw = (name: string, currentA: number, continuous = true): Draw => ({ name, currentA, continuous });
const house: Supply = { limitA: 15, household: true };
const pedestal: Supply = { limitA: 30, household: false };

describe('what a supply bears', () => {
	test('125 % of what runs for hours, 100 % of the rest; at a house outlet 125 % of all', () => {
		const draws = [draw('water heater', 12), draw('cooktop', 15, false)];
		expect(demandA(draws, pedestal)).toBeCloseTo(30, 12);
		expect(mayRunTogether(draws, pedestal)).toBe(true);
		expect(demandA(draws, house)).toBeCloseTo(33.75, 12);
		expect(mayRunTogether([draw('water heater', 12)], house)).toBe(true);
		expect(mayRunTogether([draw('water heater', 12.001)], house)).toBe(false);
		expect(mayRunTogether([draw('cooktop', 15, false)], house)).toBe(false);
	});

	test('the sets of a small list, by hand', () => {
		const draws = [draw('a', 10), draw('b', 10), draw('c', 14, false)];
		// 12.5, 12.5 and 14 on 30: any two, never all three.
		expect(setsOf(draws, pedestal)).toEqual({
			maximal: [
				[0, 1],
				[0, 2],
				[1, 2],
			],
			minimalOver: [[0, 1, 2]],
		});
		expect(setsOf([draw('too much', 40)], pedestal)).toEqual({ maximal: [], minimalOver: [[0]] });
		expect(setsOf([], pedestal)).toEqual({ maximal: [], minimalOver: [] });
	});

	test('more draws than are worked through is an error of the program', () => {
		const many = Array.from({ length: mostDraws + 1 }, (_, index) => draw(`${index}`, 1));
		expect(() => setsOf(many, pedestal)).toThrow('too many sets');
	});
});

const anyDraw = fc.record({
	name: fc.string({ minLength: 1, maxLength: 5 }),
	currentA: fc.double({ min: 0.05, max: 40, noNaN: true }),
	continuous: fc.boolean(),
});
const anySupply = fc.record({
	limitA: fc.constantFrom(6, 10, 13, 15, 16, 20, 30, 32, 50),
	household: fc.boolean(),
});

/** The rule put together anew: every continuous amp takes a quarter more room, at a house every amp does. */
function over(draws: readonly Draw[], supply: Supply): boolean {
	let room = supply.limitA;
	for (const one of draws) room -= one.continuous || supply.household ? one.currentA / 0.8 : one.currentA;
	return room < -1e-9;
}

describe('never over the limit', () => {
	test('every set that is called fine is within it, and every set that is called too much is not', () => {
		fc.assert(
			fc.property(fc.array(anyDraw, { minLength: 1, maxLength: 9 }), anySupply, (draws, supply) => {
				const { maximal, minimalOver } = setsOf(draws, supply);
				const pick = (set: readonly number[]) => set.map((index) => draws[index] as Draw);
				for (const set of maximal) expect(over(pick(set), supply)).toBe(false);
				for (const set of minimalOver) {
					expect(mayRunTogether(pick(set), supply)).toBe(false);
					for (const index of set) {
						expect(over(pick(set.filter((other) => other !== index)), supply)).toBe(false);
					}
				}
			}),
			{ numRuns: 3000 },
		);
	});

	test('every subset is within one that is fine, or holds one that is too much, never both', () => {
		fc.assert(
			fc.property(fc.array(anyDraw, { minLength: 1, maxLength: 7 }), anySupply, (draws, supply) => {
				const { maximal, minimalOver } = setsOf(draws, supply);
				for (let mask = 1; mask < 1 << draws.length; mask += 1) {
					const set = draws.map((_, index) => index).filter((index) => (mask & (1 << index)) !== 0);
					const fine = maximal.some((one) => set.every((index) => one.includes(index)));
					const tooMuch = minimalOver.some((one) => one.every((index) => set.includes(index)));
					expect(fine).not.toBe(tooMuch);
				}
			}),
			{ numRuns: 500 },
		);
	});

	test('a list as long as is taken is a blink', () => {
		const many = Array.from({ length: mostDraws }, (_, index) => draw(`${index}`, 1 + index / 10));
		const started = performance.now();
		expect(setsOf(many, { limitA: 20, household: true }).maximal.length).toBeGreaterThan(100);
		expect(performance.now() - started).toBeLessThan(3000);
	});
});

describe('the charger', () => {
	const charger = { chargingV: 14.4, mainsV: 120, efficiency: 0.85, powerFactor: 0.9 };

	test('70 A at 14.4 V draws 11 A at 120 V', () => {
		expect(chargerInputA(70, charger)).toBeCloseTo((70 * 14.4) / (120 * 0.85 * 0.9), 12);
	});

	test('set to the limit it stays within the supply; one amp more does not', () => {
		fc.assert(
			fc.property(
				fc.array(anyDraw, { maxLength: 5 }),
				anySupply,
				fc.record({
					chargingV: fc.constantFrom(14.4, 14.6, 28.8, 29.2, 58.4),
					mainsV: fc.constantFrom(100, 120, 230),
					efficiency: fc.double({ min: 0.5, max: 1, noNaN: true }),
					powerFactor: fc.double({ min: 0.5, max: 1, noNaN: true }),
				}),
				(others, supply, one) => {
					const limitA = chargerLimitA(others, supply, one);
					expect(Number.isInteger(limitA)).toBe(true);
					const set = (chargingA: number) => [...others, draw('charger', chargerInputA(chargingA, one))];
					if (limitA > 0) expect(over(set(limitA), supply)).toBe(false);
					if (mayRunTogether(others, supply)) expect(mayRunTogether(set(limitA + 1), supply)).toBe(false);
					else expect(limitA).toBe(0);
				},
			),
			{ numRuns: 2000 },
		);
	});
});
