import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answered, asked, codesOf, eu, refused, resultsOf, us } from '../../../../tests/reference/answers.js';
import { chargerSizesA } from '../energy/alternator.js';
import { runTopic } from '../topic/run.js';
import { sizingSchema } from '../topic/sizing.js';
import { alternator } from './alternator.js';

const drive = { chargerA: 50, unitAh: 200, fromSoc: 0.4, toSoc: 0.9, chemistry: 'lifepo4' };

describe('hours of driving', () => {
	test('50 A into 200 Ah from 40 % to 90 %', () => {
		const sizing = answered(alternator, drive);
		expect(sizing.headline).toBe('2.1 h of driving: 40 % to 90 % of 200 Ah at 50 A');
		expect(sizing.because).toBe('At 50 A all the way; the current begins to fall only at 96 %.');
		expect(sizing.tipping[0]).toMatchObject({ name: 'toSoc' });
		expect(sizing.chain).toEqual([]);
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
		expect(resultsOf(alternator, drive).drivingTime).toBeCloseTo((0.5 * 200) / (50 * 0.99), 9);
	});

	test('to full it tapers', () => {
		const sizing = answered(alternator, { ...drive, toSoc: 1 });
		expect(sizing.because).toMatch(/^2\.3 h at 50 A up to 96 %, then \d+ min with a falling current\.$/);
		const results = resultsOf(alternator, { ...drive, toSoc: 1 });
		expect(results.taperTime).toBeCloseTo((0.2 / 0.99) * Math.log(0.25 / 0.05), 9);
	});

	test('two states of charge in either order', () => {
		expect(resultsOf(alternator, { ...drive, fromSoc: 0.9, toSoc: 0.4 })).toEqual(
			resultsOf(alternator, drive),
		);
	});

	test('what the house takes meanwhile is not charged', () => {
		expect(resultsOf(alternator, { ...drive, houseLoadA: 10 }).chargeCurrent).toBe(40);
	});

	test('an alternator with little to spare charges slower', () => {
		const results = resultsOf(alternator, { ...drive, alternatorA: 90, vehicleLoadA: 40 });
		// 32 A at 12.5 V and 90 % are 24.7 A at 14.6 V.
		expect(results.chargeCurrent).toBeCloseTo((32 * 12.5 * 0.9) / 14.6, 9);
	});

	test('a driving time named is enough, or not', () => {
		expect(answered(alternator, { ...drive, driveH: 3 }).headline).toMatch(
			/^3 h is enough; 2\.1 h of driving/,
		);
		expect(answered(alternator, { ...drive, driveH: 2 }).headline).toMatch(/^2 h is not enough; 2\.1 h of/);
		expect(asked(alternator, { chargerA: 50, driveH: 2 })).toMatchObject([{ name: 'unitAh' }]);
	});

	test('states of charge that were not named are assumed and said', () => {
		const { assumed } = answered(alternator, { chargerA: 50, unitAh: 200, chemistry: 'agm' });
		expect(assumed.find((one) => one.name === 'fromSoc')).toMatchObject({ value: 0.5, confirm: true });
		expect(assumed.find((one) => one.name === 'toSoc')).toMatchObject({ value: 1 });
	});
});

describe('the charger for an alternator', () => {
	test('the largest that alternator and bank bear, with its cable in the chain', () => {
		const sizing = answered(alternator, { alternatorA: 180, unitAh: 200, chemistry: 'lifepo4', lengthM: 6 });
		expect(sizing.headline).toMatch(/^60 A DC-DC charger at most on 180 A, .+, 100 A fuse$/);
		expect(sizing.chain.map((one) => one.topic)).toEqual(['wire']);
		const results = Object.fromEntries(sizing.results.map((result) => [result.name, result.value]));
		expect(results).toMatchObject({ recommendedCharger: 60, spareIdling: 40, device: 100 });
		expect(results.spareDriving).toBeCloseTo(94, 9);
		expect(results.chargerInput).toBeCloseTo((60 * 14.6) / (12.5 * 0.9), 9);
	});

	test('the bank may be the limit', () => {
		expect(
			resultsOf(alternator, { alternatorA: 250, unitAh: 100, chemistry: 'lifepo4' }).recommendedCharger,
		).toBe(50);
		expect(
			resultsOf(alternator, { alternatorA: 250, unitAh: 100, chemistry: 'agm' }).recommendedCharger,
		).toBe(20);
	});

	test('a charger named is judged', () => {
		expect(answered(alternator, { chargerA: 30, alternatorA: 180 }).headline).toMatch(/^30 A suits a 180 A/);
		expect(answered(alternator, { chargerA: 60, alternatorA: 90 }).headline).toBe(
			'60 A is too much for a 90 A alternator',
		);
		expect(answered(alternator, { chargerA: 50, lengthM: 5 }, eu).headline).toMatch(
			/^50 A DC-DC charger takes 64\.9 A, .+ mm², 100 A fuse$/,
		);
	});

	test('a 24 V bank from a 12 V vehicle takes twice the current', () => {
		const at = (bankV: number) => Number(resultsOf(alternator, { chargerA: 20, bankV }).chargerInput);
		expect(at(24) / at(12)).toBeCloseTo(2, 9);
	});
});

describe('findings', () => {
	test.each([
		['too much while driving', { chargerA: 60, alternatorA: 120 }, 'alternator-overloaded', 'warning'],
		['more than its rating', { chargerA: 100, alternatorA: 90 }, 'alternator-overloaded', 'danger'],
		['too much at idle', { chargerA: 40, alternatorA: 150 }, 'over-hot-idle', 'warning'],
		['too much for the bank', { chargerA: 60, unitAh: 100 }, 'charge-over-limit', 'warning'],
		[
			"over the maker's limit",
			{ chargerA: 40, unitAh: 100, chargeLimitA: 20 },
			'charge-over-limit',
			'danger',
		],
		['a relay to lithium', { alternatorA: 180, link: 'direct' }, 'lithium-without-converter', 'danger'],
		['freezing lithium', { chargerA: 20, temperatureC: -3 }, 'lithium-charge-below-freezing', 'danger'],
	])('%s', (_, given, code, severity) => {
		const sizing = answered(alternator, { chemistry: 'lifepo4', ...given });
		expect(sizing.findings.find((one) => one.code === code)?.severity).toBe(severity);
	});

	test('none of them where all is well', () => {
		const codes = codesOf(alternator, { chargerA: 20, alternatorA: 220, unitAh: 200, chemistry: 'lifepo4' });
		for (const code of [
			'alternator-overloaded',
			'over-hot-idle',
			'charge-over-limit',
			'lithium-without-converter',
		])
			expect(codes).not.toContain(code);
		expect(codesOf(alternator, { chargerA: 20, link: 'direct', chemistry: 'agm' })).not.toContain(
			'lithium-without-converter',
		);
	});

	test('at freezing the decision is not to charge', () => {
		expect(answered(alternator, { ...drive, temperatureC: -7 }).headline).toBe(
			'Do not charge it at 19 °F; warm, it takes 2.1 h of driving',
		);
		expect(answered(alternator, { ...drive, temperatureC: -7, heated: true }).headline).toMatch(/^2\.1 h/);
	});
});

describe('no answer', () => {
	test('what is missing is asked for', () => {
		expect(asked(alternator, { unitAh: 200 })[0]?.question).toContain('Which DC-DC charger');
	});

	test.each([
		[
			'an alternator with nothing to spare',
			{ alternatorA: 60, vehicleLoadA: 50 },
			'alternatorA',
			'impossible',
		],
		[
			'a bank too small for any charger',
			{ alternatorA: 180, unitAh: 20, chemistry: 'agm' },
			'unitAh',
			'impossible',
		],
		['nothing to charge', { ...drive, fromSoc: 0.9 }, 'toSoc', 'impossible'],
		['loads that take it all', { ...drive, houseLoadA: 50 }, 'houseLoadA', 'impossible'],
		['a bank of 18 V', { ...drive, bankV: 18 }, 'bankV', 'out-of-range'],
		['no cable does it', { chargerA: 400, lengthM: 30 }, 'lengthM', 'impossible'],
		['a negative charger', { chargerA: -5 }, 'chargerA', 'out-of-range'],
	])('%s', (_, given, field, code) => {
		expect(refused(alternator, given)[0]).toMatchObject({ field, code });
	});
});

test('what is recommended is within every limit, whatever is asked', () => {
	fc.assert(
		fc.property(
			fc.record({
				alternatorA: fc.integer({ min: 80, max: 400 }),
				vehicleLoadA: fc.integer({ min: 0, max: 60 }),
				unitAh: fc.integer({ min: 20, max: 800 }),
				chemistry: fc.constantFrom('lifepo4', 'agm', 'gel', 'flooded'),
				bankV: fc.constantFrom(12, 24),
			}),
			(given) => {
				const question = { ...given, unitV: given.bankV };
				const outcome = runTopic(alternator, question, us);
				if (outcome.status === 'refused') {
					// Nothing sold is small enough for the alternator or for the bank.
					const spareW = (0.8 * given.alternatorA - given.vehicleLoadA) * 12.5 * 0.9;
					const rate = given.chemistry === 'lifepo4' ? 0.5 : 0.2;
					expect(spareW < 10 * 15.1 * (given.bankV / 12) || rate * given.unitAh < 10).toBe(true);
					return;
				}
				const results = resultsOf(alternator, question);
				const recommended = Number(results.recommendedCharger);
				expect(chargerSizesA).toContain(recommended);
				expect(recommended).toBeLessThanOrEqual(Number(results.chargeLimit));
				expect(Number(results.chargerInput) + given.vehicleLoadA).toBeLessThanOrEqual(
					0.8 * given.alternatorA + 1e-9,
				);
				expect(Number(results.device)).toBeGreaterThanOrEqual(1.25 * Number(results.chargerInput) - 1e-9);
			},
		),
		{ numRuns: 300 },
	);
});
