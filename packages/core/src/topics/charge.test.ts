import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answered, asked, codesOf, refused, resultsOf } from '../../../../tests/reference/answers.js';
import { chargerSizesA } from '../energy/alternator.js';
import { chemistries, chemistryNames } from '../tables/batteries.js';
import { sizingSchema } from '../topic/sizing.js';
import { charge } from './charge.js';

const lithium = { unitAh: 200, chemistry: 'lifepo4', fromSoc: 0.2, chargerA: 40 };
const agm = { unitAh: 200, chemistry: 'agm', fromSoc: 0.5 };

describe('charging time', () => {
	test('40 A into 200 Ah of lithium from 20 %', () => {
		const sizing = answered(charge, lithium);
		expect(sizing.headline).toBe('4.2 h: 20 % to 100 % of 200 Ah at 40 A');
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('below the knee it is charge over current, by the charge efficiency', () => {
		expect(resultsOf(charge, { ...lithium, toSoc: 0.9 }).chargeTime).toBeCloseTo(
			(0.7 * 200) / (40 * 0.99),
			9,
		);
	});

	test('stepped through second by second it takes as long as the closed form says', () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...chemistryNames),
				fc.double({ min: 0.03, max: 1, noNaN: true }),
				fc.double({ min: 0.05, max: 0.85, noNaN: true }),
				(name, rate, fromSoc) => {
					const { taperH, tailRatePerH, chargeEfficiency } = chemistries[name];
					const stepH = 1 / 1800;
					let hours = 0;
					for (let state = fromSoc; state < 0.98; hours += stepH) {
						const current = Math.min(rate, tailRatePerH + (1 - state) / taperH);
						state += current * chargeEfficiency * stepH;
					}
					const given = { unitAh: 100, chemistry: name, fromSoc, toSoc: 0.98, chargerA: 100 * rate };
					expect(Math.abs(Number(resultsOf(charge, given).chargeTime) - hours)).toBeLessThan(0.004);
				},
			),
			{ numRuns: 50 },
		);
	});

	test('what the loads take does not reach the bank', () => {
		expect(resultsOf(charge, { ...lithium, loadA: 10 }).chargeCurrent).toBe(30);
		expect(refused(charge, { ...lithium, loadA: 40 })).toMatchObject([{ field: 'loadA' }]);
	});

	test('a charger named by its power gives that power at the charging voltage', () => {
		expect(resultsOf(charge, { ...lithium, chargerA: undefined, chargerW: 584 }).charger).toBeCloseTo(40, 9);
	});

	test('the time there is is enough, or how far it gets', () => {
		expect(answered(charge, { ...lithium, wantedH: 5 }).headline).toMatch(/^5 h is enough; 4\.2 h: /);
		const short = answered(charge, { ...lithium, wantedH: 2 });
		expect(short.headline).toMatch(/^2 h is not enough; /);
		// 2 h at 40 A are 79.2 Ah of 200 Ah.
		expect(short.because).toMatch(/^In 2 h it gets to 59\.[56] %\./);
	});

	test('only the capacity must be known', () => {
		expect(asked(charge, { chargerA: 40 })).toMatchObject([{ name: 'unitAh' }]);
	});
});

describe('whether the bank bears it', () => {
	test('60 A on 200 Ah of AGM is too much', () => {
		const sizing = answered(charge, { ...agm, chargerA: 60 });
		expect(sizing.headline).toBe('60 A is too much for 200 Ah AGM lead-acid: 40 A at most');
		expect(sizing.findings.map(({ code }) => code)).toContain('charge-over-limit');
	});

	test("the maker's figure comes before the usual rate, and over it is a danger", () => {
		const findings = answered(charge, { ...lithium, chargeLimitA: 30 }).findings;
		expect(findings).toMatchObject([{ code: 'charge-over-limit', severity: 'danger' }]);
		expect(codesOf(charge, { ...agm, chargerA: 60, chargeLimitA: 70 })).toEqual([]);
	});

	test('a lithium bank below freezing is not to be charged', () => {
		const sizing = answered(charge, { ...lithium, temperatureC: -5 });
		expect(sizing.headline).toMatch(/^Do not charge it at /);
		expect(sizing.findings).toMatchObject([{ code: 'lithium-charge-below-freezing', severity: 'danger' }]);
		expect(answered(charge, { ...lithium, temperatureC: 0 }).findings).toEqual([]);
		expect(answered(charge, { ...lithium, temperatureC: -5, heated: true }).headline).toMatch(/^4\.2 h/);
	});

	test('a charger too small for lead-acid is noted', () => {
		expect(codesOf(charge, { ...agm, chargerA: 10 })).toEqual(['charger-small-for-lead-acid']);
		expect(codesOf(charge, { ...agm, chargerA: 20 })).toEqual([]);
	});
});

describe('the charger to take', () => {
	test('the smallest sold that does it in the night', () => {
		const results = resultsOf(charge, { unitAh: 400, chemistry: 'lifepo4', overnight: true });
		expect(results.charger).toBe(30);
		expect(results.chargeTime).toBeLessThanOrEqual(12);
		const smaller = { unitAh: 400, chemistry: 'lifepo4', chargerA: 25 };
		expect(resultsOf(charge, smaller).chargeTime).toBeGreaterThan(12);
	});

	test('where none does it in time, the largest borne, and how far it gets', () => {
		const sizing = answered(charge, { ...agm, wantedH: 2 });
		expect(sizing.headline).toMatch(/^Not in 2 h: 40 A charger at most; /);
		expect(sizing.because).toMatch(/^In 2 h it gets to /);
	});

	test('a bank too small for any charger sold is refused', () => {
		expect(refused(charge, { unitAh: 20, chemistry: 'agm' })).toMatchObject([
			{ code: 'impossible', field: 'unitAh' },
		]);
	});

	test('what is proposed never exceeds what the bank bears', () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...chemistryNames),
				fc.double({ min: 60, max: 3000, noNaN: true }),
				fc.option(fc.double({ min: 0.2, max: 200, noNaN: true }), { nil: undefined }),
				(chemistry, unitAh, wantedH) => {
					const results = resultsOf(charge, { unitAh, chemistry, wantedH });
					expect(results.charger).toBeLessThanOrEqual(results.chargeLimit as number);
					expect(chargerSizesA).toContain(results.charger);
				},
			),
		);
	});
});
