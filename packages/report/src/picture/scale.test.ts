import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundScale, spread } from './scale.js';

describe('scales of axes', () => {
	test.each([
		[0, 21, 5, { min: 0, max: 25, step: 5 }],
		[0, 7.2, 6, { min: 0, max: 8, step: 2 }],
		[-27, 4, 6, { min: -30, max: 10, step: 10 }],
		[0, 0, 5, { min: 0, max: 1, step: 0.2 }],
	])('from %d to %d in at most %d steps', (low, high, most, scale) => {
		const found = roundScale(low, high, most);
		expect(found.min).toBeCloseTo(scale.min, 9);
		expect(found.step).toBeCloseTo(scale.step, 9);
		expect(found.max).toBeGreaterThanOrEqual(high);
		expect(found.max).toBeCloseTo(scale.max, 9);
	});

	test('a scale holds both ends, on round steps, and not too many', () => {
		const value = fc.double({ min: -1e5, max: 1e5, noNaN: true });
		fc.assert(
			fc.property(value, value, fc.integer({ min: 4, max: 9 }), (a, b, most) => {
				fc.pre(Math.abs(a) > 1e-6 || Math.abs(b) > 1e-6);
				const { min, max, step } = roundScale(Math.min(a, b), Math.max(a, b), most);
				expect(min).toBeLessThanOrEqual(Math.min(a, b, 0) + step * 1e-6);
				expect(max).toBeGreaterThanOrEqual(Math.max(a, b, 0) - step * 1e-6);
				expect(Math.round((max - min) / step)).toBeLessThanOrEqual(most);
				const mantissa = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
				expect([1, 2, 2.5, 5].some((round) => Math.abs(mantissa - round) < 1e-6)).toBe(true);
			}),
		);
	});
});

describe('labels beside one another', () => {
	test('keep their gap, their order and the ends', () => {
		fc.assert(
			fc.property(fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 8 }), (wanted) => {
				const placed = spread(wanted, 16, { from: 0, to: 300 });
				const order = wanted
					.map((_, index) => index)
					.sort((a, b) => (placed[a] as number) - (placed[b] as number));
				order.forEach((index, place) => {
					expect(placed[index]).toBeGreaterThanOrEqual(0);
					expect(placed[index]).toBeLessThanOrEqual(300);
					const before = order[place - 1];
					if (before === undefined) return;
					expect((placed[index] as number) - (placed[before] as number)).toBeGreaterThanOrEqual(16 - 1e-9);
					expect(wanted[index]).toBeGreaterThanOrEqual(wanted[before] as number);
				});
			}),
		);
	});

	test('what has room stays where it is', () => {
		expect(spread([50, 10, 100], 16, { from: 0, to: 300 })).toEqual([50, 10, 100]);
	});
});
