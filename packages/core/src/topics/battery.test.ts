import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answered, asked, codesOf, eu, refused, resultsOf } from '../../../../tests/reference/answers.js';
import { chemistryNames } from '../tables/batteries.js';
import { sizingSchema } from '../topic/sizing.js';
import { battery } from './battery.js';

const daily = { chargePerDayAh: 120, autonomyH: 72 };
const bank = { unitAh: 100, unitCount: 4, chemistry: 'lifepo4' };

describe('a bank for a daily use', () => {
	test('120 Ah a day for 3 days', () => {
		const sizing = answered(battery, daily);
		expect(sizing.headline).toBe('563 Ah of LiFePO4 at 12 V for 3 days of 120 Ah');
		expect(sizing.neighbours).toMatchObject([
			{ choice: '2 × 200 Ah', passes: false },
			{ choice: '3 × 200 Ah', passes: true },
			{ choice: '4 × 200 Ah', passes: true },
		]);
		expect(sizing.assumed.filter((one) => one.confirm).map((one) => one.name)).toEqual([
			'chemistry',
			'bankV',
			'temperatureC',
		]);
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
		const results = resultsOf(battery, daily);
		expect(results.requiredCapacity).toBeCloseTo((360 * 1.25) / 0.8, 9);
		expect(results).toMatchObject({ bankCapacity: 600, units: 3, series: 1, parallel: 3 });
		expect(results.daysCarried).toBeCloseTo((600 * 0.8) / 1.25 / 120, 9);
	});

	test('units named are counted up', () => {
		const sizing = answered(battery, { ...daily, unitAh: 100, unitV: 12, bankV: 24 });
		expect(sizing.headline).toBe('12 × 100 Ah at 24 V for 3 days of 120 Ah (563 Ah needed)');
		expect(resultsOf(battery, { ...daily, unitAh: 100, unitV: 12, bankV: 24 })).toMatchObject({
			units: 12,
			series: 2,
			parallel: 6,
			bankCapacity: 600,
		});
	});

	test('energy a day at the class voltage', () => {
		const given = { energyPerDayWh: 1440, autonomyH: 24, chemistry: 'agm', temperatureC: 25 };
		expect(resultsOf(battery, given).requiredCapacity).toBeCloseTo((120 * 1.25) / 0.5, 9);
	});

	test('a list of loads is budgeted first and joins the chain', () => {
		const loads = [{ name: 'fridge', powerW: 60, durationH: 24, duty: 0.4 }];
		const sizing = answered(battery, { loads, autonomyH: 48 });
		expect(sizing.chain.map((one) => one.topic)).toEqual(['budget']);
		const required = sizing.results.find((result) => result.name === 'requiredCapacity')?.value;
		expect(required).toBeCloseTo(((576 / 12) * 2 * 1.25) / 0.8, 9);
		// A bare time in the list is how long it must last.
		const stray = answered(battery, { loads: [...loads, { durationH: 48 }] });
		expect(stray.results).toEqual(sizing.results);
	});

	test('cold, age and Peukert make it larger', () => {
		const lead = { chargePerDayAh: 100, autonomyH: 24, chemistry: 'agm' };
		expect(resultsOf(battery, { ...lead, temperatureC: 10, ageing: 1 }).requiredCapacity).toBeCloseTo(238, 9);
		const fast = resultsOf(battery, { ...lead, dischargeA: 50 });
		expect(Number(fast.requiredCapacity)).toBeGreaterThan(250);
		expect(answered(battery, { ...lead, dischargeA: 50 }).working.map((step) => step.label)).toContain(
			'capacity at the current drawn',
		);
		expect(answered(battery, lead).working.map((step) => step.label)).not.toContain(
			'capacity at the current drawn',
		);
	});

	test('a bank named is judged', () => {
		const enough = answered(battery, { ...bank, chargePerDayAh: 100, autonomyH: 48, temperatureC: 25 });
		expect(enough.headline).toBe('4 × 100 Ah is enough: 2.5 days of 100 Ah');
		const small = answered(battery, { ...bank, chargePerDayAh: 100, autonomyH: 72 });
		expect(small.headline).toBe('4 × 100 Ah is too small: 2.5 days of 100 Ah');
		expect(small.findings.map((one) => one.code)).toContain('bank-too-small');
		expect(enough.findings.map((one) => one.code)).not.toContain('bank-too-small');
	});

	test('Ah with a count in front are batteries, not a daily use', () => {
		const sizing = answered(battery, { chargePerDayAh: 100, unitCount: 4, bankV: 12, unitV: 24 });
		expect(sizing.headline).toBe('4 × 100 Ah: 200 Ah at 24 V, 5.12 kWh');
		expect(sizing.because).toContain('2 strings in parallel, each of 2 in series');
	});
});

describe('how they are joined', () => {
	const made = (given: Readonly<Record<string, unknown>>) => {
		const results = resultsOf(battery, given);
		const classV = Number(/at (\d+) V/.exec(answered(battery, given).headline)?.[1]);
		return [classV, results.series, results.parallel, results.bankCapacity];
	};

	test.each([
		['2 x 12 V in series', { unitAh: 100, unitCount: 2, bankV: 12, layout: 'series' }, [24, 2, 1, 100]],
		['2 in series, no voltage named', { unitAh: 100, unitCount: 2, layout: 'series' }, [24, 2, 1, 100]],
		['2 in series for 24 V', { unitAh: 100, unitCount: 2, bankV: 24, layout: 'series' }, [24, 2, 1, 100]],
		['2 x 6 V in series', { unitAh: 225, unitCount: 2, bankV: 6, layout: 'series' }, [12, 2, 1, 225]],
		['2 x 12 V in parallel', { unitAh: 100, unitCount: 2, bankV: 12, layout: 'parallel' }, [12, 1, 2, 200]],
		['2 x 24 V in parallel', { unitAh: 100, unitCount: 2, bankV: 24, layout: 'parallel' }, [24, 1, 2, 200]],
		['2 in series, 2 strings', { unitAh: 100, bankV: 12, seriesCount: 2, parallelCount: 2 }, [24, 2, 2, 200]],
		['3 strings', { unitAh: 100, bankV: 12, parallelCount: 3 }, [12, 1, 3, 300]],
		['units of 6 V, unsaid how', { unitAh: 225, unitCount: 4, unitV: 6 }, [12, 2, 2, 450]],
	])('%s', (_, given, expected) => {
		expect(made(given)).toEqual(expected);
	});

	test('6 V batteries are taken as lead-acid, and that is said', () => {
		const { assumed } = answered(battery, { unitAh: 225, unitCount: 2, unitV: 6 });
		expect(assumed.find((one) => one.name === 'chemistry')).toMatchObject({
			value: 'flooded lead-acid',
			confirm: true,
		});
	});

	test.each([
		['3 in series of 4', { unitCount: 4, seriesCount: 3, bankV: 24, unitV: 12 }],
		['2 by 2 of 6', { unitCount: 6, seriesCount: 2, parallelCount: 2, bankV: 12 }],
	])('%s contradicts itself', (_, given) => {
		expect(refused(battery, { unitAh: 100, ...given })[0]).toMatchObject({
			code: 'contradiction',
			field: 'seriesCount',
		});
	});
});

describe('currents and temperatures', () => {
	test.each([
		['a charger over the usual rate', { chargeA: 250 }, 'charge-over-limit', 'warning'],
		['a charger over twice the usual rate', { chargeA: 401 }, 'charge-over-limit', 'danger'],
		["a charger over the maker's limit", { chargeA: 90, chargeLimitA: 20 }, 'charge-over-limit', 'danger'],
		['a draw over the usual rate', { dischargeA: 401 }, 'draw-over-protection', 'warning'],
		['a draw over the protection', { dischargeA: 201, protectionA: 50 }, 'draw-over-protection', 'danger'],
		[
			'an inverter over the protection',
			{ inverterW: 3000, protectionA: 80 },
			'draw-over-protection',
			'danger',
		],
		['lithium below freezing', { temperatureC: -1 }, 'lithium-charge-below-freezing', 'danger'],
		['heated lithium below freezing', { temperatureC: -1, heated: true }, 'lithium-heater-first', 'warning'],
		['a hot bank', { temperatureC: 50 }, 'bank-hot', 'warning'],
		['a bank too hot to charge', { temperatureC: 61 }, 'charge-too-hot', 'danger'],
		['cold lead-acid', { temperatureC: -8, chemistry: 'agm' }, 'lead-acid-may-freeze', 'warning'],
		['many strings', { unitCount: 5 }, 'many-parallel-strings', 'note'],
		['lithium in series', { bankV: 24, unitV: 12 }, 'lithium-series', 'note'],
		['lead-acid', { chemistry: 'flooded' }, 'lead-acid-vent', 'note'],
	])('%s', (_, given, code, severity) => {
		const found = answered(battery, { ...bank, ...given }).findings.find((one) => one.code === code);
		expect(found?.severity).toBe(severity);
		expect(codesOf(battery, { ...bank, bankV: 12 })).not.toContain(code);
	});

	test('within the limits there is no finding', () => {
		const given = { ...bank, chargeA: 200, dischargeA: 400, inverterW: 3000, temperatureC: 20, bankV: 12 };
		expect(codesOf(battery, given)).toEqual([]);
		expect(resultsOf(battery, given).inverterCurrent).toBeCloseTo(3000 / (10 * 0.85), 9);
	});

	test('what is over a limit, or too cold to charge, is the decision', () => {
		expect(answered(battery, { ...bank, chargeA: 250 }).headline).toBe(
			'Charge it with 200 A at most; 250 A is too much',
		);
		expect(answered(battery, { ...bank, dischargeA: 500 }).headline).toBe(
			'It gives 400 A at most; 500 A is too much',
		);
		expect(answered(battery, { ...bank, temperatureC: -5 }).headline).toBe('Do not charge it at 23 °F');
	});

	test('standing cautions', () => {
		expect(answered(battery, bank).cautions.join(' ')).toContain('Never charge lithium cells below 0 °C');
		expect(answered(battery, { ...bank, chemistry: 'agm' }).cautions.join(' ')).toContain('hydrogen');
	});

	test('a small bank in Europe is remarked on', () => {
		expect(codesOf(battery, { unitAh: 50, chemistry: 'agm' }, eu)).toContain('below-auxiliary-minimum');
		expect(codesOf(battery, { unitAh: 60, chemistry: 'agm' }, eu)).not.toContain('below-auxiliary-minimum');
		expect(codesOf(battery, { unitAh: 50, chemistry: 'agm' })).not.toContain('below-auxiliary-minimum');
	});
});

describe('no answer', () => {
	test('nothing to go by', () => {
		expect(asked(battery, {})[0]?.question).toContain('How much is used a day');
		expect(asked(battery, { loads: [{ durationH: 48 }] })[0]?.name).toBe('unitAh');
	});

	test.each([
		['3 x 12 V in 24 V', { unitAh: 100, unitCount: 3, unitV: 12, bankV: 24 }, 'unitCount', 'impossible'],
		['8 V units in 12 V', { unitAh: 170, unitV: 8, bankV: 12, chemistry: 'flooded' }, 'unitV', 'impossible'],
		['a bank of 18 V', { ...daily, bankV: 18 }, 'bankV', 'out-of-range'],
		['a bank of 900 V', { ...daily, bankV: 900 }, 'bankV', 'out-of-range'],
		['nothing a day', { chargePerDayAh: 0 }, 'chargePerDayAh', 'out-of-range'],
		['Ah against kWh', { chargePerDayAh: 100, energyPerDayWh: 3000 }, 'chargePerDayAh', 'contradiction'],
		[
			'a daily figure beside loads',
			{ chargePerDayAh: 100, loads: [{ name: 'fan', powerW: 20, durationH: 5 }] },
			'loads',
			'contradiction',
		],
		[
			'colder than the tables',
			{ ...daily, chemistry: 'agm', temperatureC: -30 },
			'temperatureC',
			'not-covered',
		],
	])('%s is refused', (_, given, field, code) => {
		expect(refused(battery, given)[0]).toMatchObject({ field, code });
	});

	test('Ah and Wh that agree at the rated or the class voltage are taken', () => {
		expect(resultsOf(battery, { chargePerDayAh: 100, energyPerDayWh: 1280 }).requiredCapacity).toBeCloseTo(
			((1280 / 12) * 1.25) / 0.8,
			6,
		);
	});
});

describe('never too small', () => {
	const use = fc.record({
		chargePerDayAh: fc.double({ min: 1, max: 600, noNaN: true }),
		autonomyH: fc.double({ min: 6, max: 240, noNaN: true }),
		chemistry: fc.constantFrom(...chemistryNames),
		temperatureC: fc.double({ min: -17, max: 40, noNaN: true }),
		bankV: fc.constantFrom(12, 24, 48),
		unitAh: fc.constantFrom(50, 100, 105, 225, 300),
	});

	test('the batteries proposed carry the days asked for, and one string less does not', () => {
		fc.assert(
			fc.property(use, (given) => {
				const results = resultsOf(battery, { ...given, unitV: 12 });
				expect(Number(results.bankCapacity)).toBeGreaterThanOrEqual(
					Number(results.requiredCapacity) * (1 - 1e-9),
				);
				expect(Number(results.daysCarried) * 24).toBeGreaterThanOrEqual(given.autonomyH * (1 - 1e-6));
				expect(Number(results.bankCapacity) - given.unitAh).toBeLessThan(Number(results.requiredCapacity));
				expect(results.units).toBe(Number(results.series) * Number(results.parallel));
			}),
			{ numRuns: 500 },
		);
	});

	test('more use, more days, more cold never make it smaller', () => {
		fc.assert(
			fc.property(use, fc.double({ min: 1, max: 3, noNaN: true }), (given, more) => {
				const of = (changed: object) =>
					Number(resultsOf(battery, { ...given, ...changed }).requiredCapacity) * (1 + 1e-9);
				const plain = of({}) / (1 + 1e-9);
				expect(of({ chargePerDayAh: given.chargePerDayAh * more })).toBeGreaterThanOrEqual(plain);
				expect(of({ autonomyH: given.autonomyH * more })).toBeGreaterThanOrEqual(plain);
				expect(of({ temperatureC: Math.max(-17, given.temperatureC - more) })).toBeGreaterThanOrEqual(plain);
				expect(of({ dischargeA: 5 * more })).toBeGreaterThanOrEqual(of({ dischargeA: 5 }) / (1 + 1e-9));
			}),
			{ numRuns: 500 },
		);
	});

	test('lithium below freezing is always a danger', () => {
		fc.assert(
			fc.property(
				fc.double({ min: -20, max: -0.001, noNaN: true }),
				fc.constantFrom('lifepo4', 'nmc'),
				(temperatureC, chemistry) => {
					const { findings } = answered(battery, { unitAh: 100, chemistry, temperatureC });
					expect(findings[0]).toMatchObject({ severity: 'danger', code: 'lithium-charge-below-freezing' });
				},
			),
		);
	});
});
