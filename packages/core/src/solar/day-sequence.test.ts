import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dailyFactors, dayOrder } from './day-sequence.js';

test('the order holds each day of a month once', () => {
	expect(dayOrder.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 31 }, (_, index) => index + 1));
});

test('the mean is 1 to the last digit, dull days stay above nothing, and the sequence is always the same', () => {
	fc.assert(
		fc.property(
			fc.double({ min: 0, max: 0.9, noNaN: true }),
			fc.integer({ min: 28, max: 31 }),
			(clearness, days) => {
				const factors = dailyFactors(clearness, days);
				expect(factors.length).toBe(days);
				expect(factors.reduce((sum, value) => sum + value, 0) / days).toBeCloseTo(1, 12);
				for (const factor of factors) expect(factor).toBeGreaterThan(0);
				expect(dailyFactors(clearness, days)).toEqual(factors);
			},
		),
	);
});

test('a dull month has worse dull days than a clear one, measured against its own mean', () => {
	expect(Math.min(...dailyFactors(0.35, 31))).toBeLessThan(Math.min(...dailyFactors(0.7, 31)));
	expect(Math.max(...dailyFactors(0.35, 31))).toBeGreaterThan(Math.max(...dailyFactors(0.7, 31)));
});

test('the share of days under a clearness follows the distribution it is drawn from', () => {
	// Half the days of a month lie under the median: with 31 days the 16th in rank.
	const factors = dailyFactors(0.5, 31).toSorted((a, b) => a - b);
	expect(factors.filter((factor) => factor < (factors[15] as number)).length).toBe(15);
	expect(factors[0] as number).toBeLessThan(0.25);
	expect(factors[30] as number).toBeLessThan(1.6);
});
