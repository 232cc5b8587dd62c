import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	coldestWithin,
	coldFactor,
	conductorA,
	designShortA,
	fewestInSeries,
	layouts,
	mostInSeries,
	stringVocV,
} from './strings.js';

const lowC = fc.double({ min: -60, max: 40, noNaN: true });
const vocPerK = fc.option(fc.double({ min: -0.006, max: -0.0005, noNaN: true }), { nil: null });
const vocV = fc.double({ min: 5, max: 60, noNaN: true });

test('colder is never lower, and never below the label unless a coefficient says so above 25 °C', () => {
	fc.assert(
		fc.property(lowC, lowC, vocPerK, (a, b, coefficient) => {
			const [colder, warmer] = a < b ? [a, b] : [b, a];
			const cold = coldFactor(colder, coefficient).factor;
			expect(cold).toBeGreaterThanOrEqual(coldFactor(warmer, coefficient).factor - 1e-12);
			if (colder <= 25) expect(cold).toBeGreaterThanOrEqual(1);
		}),
	);
});

test('at the end of the table the coefficient goes on from it, not below it', () => {
	expect(coldFactor(-40, null)).toMatchObject({ factor: 1.25, method: 'table' });
	expect(coldFactor(-41, null).factor).toBeCloseTo(1 + 0.0036 * 66, 9);
	expect(coldFactor(-50, null).factor).toBeGreaterThan(1.25);
});

test('the most in series keep the limit and one more breaks it', () => {
	fc.assert(
		fc.property(
			vocV,
			fc.double({ min: 20, max: 500, noNaN: true }),
			lowC,
			vocPerK,
			(voc, limitV, low, coefficient) => {
				const { factor } = coldFactor(low, coefficient);
				const most = mostInSeries(limitV, voc, factor);
				expect(stringVocV(voc, most, factor)).toBeLessThanOrEqual(limitV * (1 + 1e-8));
				expect(stringVocV(voc, most + 1, factor)).toBeGreaterThan(limitV * (1 - 1e-8));
			},
		),
	);
});

test('the coldest temperature within a limit keeps it, and a degree less does not', () => {
	fc.assert(
		fc.property(
			vocV,
			fc.integer({ min: 1, max: 8 }),
			fc.double({ min: 1.02, max: 1.3, noNaN: true }),
			vocPerK,
			(voc, series, room, coefficient) => {
				const limitV = voc * series * room;
				const coldest = coldestWithin(limitV, { vocV: voc, series, vocPerK: coefficient });
				if (coldest === null) throw new Error('it keeps it at 25 °C');
				const at = (low: number) => stringVocV(voc, series, coldFactor(low, coefficient).factor);
				expect(at(coldest)).toBeLessThanOrEqual(limitV);
				if (coldest > -90) expect(at(coldest - 1)).toBeGreaterThan(limitV);
			},
		),
	);
	expect(coldestWithin(40, { vocV: 21, series: 2, vocPerK: null })).toBeNull();
});

test('the fewest in series reach the voltage and one fewer does not', () => {
	expect(fewestInSeries(15.6, 13.3)).toBe(2);
	expect(fewestInSeries(15.6, 15.6)).toBe(1);
	expect(fewestInSeries(30.2, 13.3)).toBe(3);
});

test('currents are 125 % and 156.25 % of the short-circuit current', () => {
	expect(designShortA(10, 2)).toBe(25);
	expect(conductorA(10, 2)).toBe(31.25);
});

test('layouts use every panel', () => {
	expect(layouts(6)).toEqual([
		{ series: 1, parallel: 6 },
		{ series: 2, parallel: 3 },
		{ series: 3, parallel: 2 },
		{ series: 6, parallel: 1 },
	]);
});
