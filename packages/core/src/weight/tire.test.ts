import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pressureAfterKpa, pressureForLoadKpa } from './tire.js';

describe('pressure after a change of place', () => {
	test('nothing changed, nothing lost', () => {
		expect(
			pressureAfterKpa(
				{ gaugeKpa: 450, temperatureC: 20, ambientKpa: 100 },
				{ temperatureC: 20, ambientKpa: 100 },
			),
		).toBeCloseTo(450, 9);
	});

	test('there and back is where it was', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 100, max: 700, noNaN: true }),
				fc.double({ min: -40, max: 50, noNaN: true }),
				fc.double({ min: 55, max: 105, noNaN: true }),
				(gaugeKpa, temperatureC, ambientKpa) => {
					const start = { temperatureC: 20, ambientKpa: 101.325 };
					const there = pressureAfterKpa({ gaugeKpa, ...start }, { temperatureC, ambientKpa });
					const back = pressureAfterKpa({ gaugeKpa: there, temperatureC, ambientKpa }, start);
					expect(back).toBeCloseTo(gaugeKpa, 8);
				},
			),
		);
	});

	test('colder is less, higher is more', () => {
		const before = { gaugeKpa: 450, temperatureC: 20, ambientKpa: 101 };
		expect(pressureAfterKpa(before, { temperatureC: 0, ambientKpa: 101 })).toBeLessThan(450);
		expect(pressureAfterKpa(before, { temperatureC: 20, ambientKpa: 80 })).toBeCloseTo(471, 9);
	});
});

test('in proportion to the load is above what any published exponent asks', () => {
	fc.assert(
		fc.property(
			fc.double({ min: 0.1, max: 1, noNaN: true }),
			fc.double({ min: 0.5, max: 0.8, noNaN: true }),
			(share, exponent) => {
				expect(pressureForLoadKpa(share, 550)).toBeGreaterThanOrEqual(
					pressureForLoadKpa(share, 550, exponent) - 1e-9,
				);
			},
		),
	);
});
