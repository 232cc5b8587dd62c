import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { write, writeNumber } from './write.js';

describe('a number', () => {
	test.each([
		[2, 1, 'nearest', '2'],
		[2.04, 1, 'nearest', '2'],
		[2.05, 1, 'up', '2.1'],
		[2.0000000001, 1, 'up', '2'],
		[2.01, 1, 'up', '2.1'],
		[2.99, 1, 'down', '2.9'],
		[2.9999999999, 1, 'down', '3'],
		[-0.001, 1, 'nearest', '0'],
		[-0.001, 1, 'up', '0'],
		[-1.25, 1, 'down', '-1.3'],
		[1200, 0, 'nearest', '1200'],
		[100.1, 0, 'up', '101'],
	] as const)('%d with %d decimals, %s: %s', (value, decimals, round, text) => {
		expect(writeNumber(value, decimals, round)).toBe(text);
	});

	test('rounded up it is never below, rounded down never above, but for floating dust', () => {
		fc.assert(
			fc.property(
				fc.double({ min: -1e5, max: 1e5, noNaN: true }),
				fc.integer({ min: 0, max: 4 }),
				(value, decimals) => {
					const dust = 1e-8 * Math.max(1, Math.abs(value));
					expect(Number(writeNumber(value, decimals, 'up'))).toBeGreaterThanOrEqual(value - dust);
					expect(Number(writeNumber(value, decimals, 'down'))).toBeLessThanOrEqual(value + dust);
				},
			),
		);
	});
});

describe('a quantity in the habit of the asker', () => {
	test.each([
		['length', 3.81, 'us', '12.5 ft'],
		['length', 3.81, 'metric', '3.8 m'],
		['temperature', 30, 'us', '86 °F'],
		['temperature', 30, 'metric', '30 °C'],
		['fraction', 0.027, 'us', '2.7 %'],
		['current', 0.02, 'us', '20 mA'],
		['current', 40, 'us', '40 A'],
		['energy', 800, 'metric', '800 Wh'],
		['energy', 1250, 'metric', '1.25 kWh'],
		['duration', 0.5, 'us', '30 min'],
		['volume', 100, 'us', '26.4 gal'],
		['pressure', 310.264, 'us', '45 psi'],
		['thickness', 25.4, 'us', '1 in'],
		['angle', 12.34, 'us', '12.3°'],
		['power', 0, 'us', '0 W'],
		['resistance', 0.0123, 'us', '12.3 mohm'],
	] as const)('%s %d (%s): %s', (kind, value, habit, text) => {
		expect(write(kind, value, habit)).toBe(text);
	});

	test('a small value keeps two figures', () => {
		expect(write('length', 0.003, 'metric')).toBe('0.003 m');
		expect(write('voltage', 0.00042, 'us')).toBe('0.00042 V');
	});

	test('a wished unit and rounding are kept', () => {
		expect(write('length', 0.18, 'us', { unit: 'in', round: 'up' })).toBe('7.1 in');
		expect(write('current', 59.99, 'us', { round: 'down' })).toBe('59.9 A');
	});

	test('what has no end is said in words', () => {
		expect(write('length', Number.POSITIVE_INFINITY, 'us')).toBe('without limit');
		expect(write('length', Number.NEGATIVE_INFINITY, 'us')).toBe('none');
	});
});
