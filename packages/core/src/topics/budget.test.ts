import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answered, asked, codesOf, eu, refused, resultsOf } from '../../../../tests/reference/answers.js';
import { typicalLoads } from '../tables/loads.js';
import { sizingSchema } from '../topic/sizing.js';
import { budget } from './budget.js';

const fridge = { name: 'fridge', powerW: 60, durationH: 24, duty: 0.4 };
const lights = { name: 'lights', powerW: 20, durationH: 5 };
const kettle = { name: 'kettle', powerW: 1500, durationH: 0.2 };

describe('the answer', () => {
	test('a short list at 12 V', () => {
		const sizing = answered(budget, { loads: [fridge, lights] });
		expect(sizing.headline).toBe('676 Wh a day = 57 Ah at 12 V');
		expect(sizing.because).toBe('Direct-current loads 676 Wh. Most of it: fridge, 576 Wh.');
		expect(sizing.working.map((step) => step.label)).toEqual([
			'fridge',
			'lights',
			'energy a day',
			'charge a day',
		]);
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('mains loads through the inverter, which idles all day', () => {
		const results = resultsOf(budget, { loads: [fridge, kettle], bankV: 24 });
		expect(results.mainsEnergyPerDay).toBeCloseTo(300, 9);
		expect(results.inverterLossPerDay).toBeCloseTo(300 / 0.85 - 300 + 20 * 24, 9);
		expect(results.energyPerDay).toBeCloseTo(576 + 300 / 0.85 + 480, 9);
		expect(results.chargePerDay).toBeCloseTo((576 + 300 / 0.85 + 480) / 24, 9);
		expect(results.peakCurrent).toBeCloseTo((60 + 1500 / 0.85 + 20) / 24, 9);
		expect(results.largestMainsLoad).toBe(1500);
		expect(results.mainsTogether).toBe(1500);
	});

	test('no mains load, no inverter', () => {
		const sizing = answered(budget, { loads: [fridge] });
		expect(sizing.results.map((result) => result.name)).not.toContain('mainsTogether');
		expect(sizing.assumed.map((one) => one.name)).toEqual(['bankV']);
	});

	test('what was taken from the table of typical loads is listed for confirmation', () => {
		const { assumed } = answered(budget, { loads: [{ name: 'fridge' }, { name: 'microwave' }], bankV: 12 });
		expect(assumed.map((one) => one.name)).toEqual([
			'loads.fridge.powerW',
			'loads.fridge.durationH',
			'loads.fridge.duty',
			'loads.microwave.supply',
			'loads.microwave.powerW',
			'loads.microwave.durationH',
			'inverterEfficiency',
			'inverterIdleW',
			'inverterOnH',
		]);
		expect(assumed.every((one) => one.confirm)).toBe(true);
	});

	test('a mains voltage beside the bank voltage is the mains', () => {
		const amps = { loads: [{ name: 'kettle', currentA: 10, durationH: 1 }], inverterIdleW: 0 };
		expect(resultsOf(budget, { ...amps, bankV: 120 }).mainsEnergyPerDay).toBe(1200);
		expect(resultsOf(budget, { ...amps, bankV: 24, mainsV: 100 }).mainsEnergyPerDay).toBe(1000);
		expect(resultsOf(budget, amps, eu).mainsEnergyPerDay).toBe(2300);
	});
});

describe('findings', () => {
	test('a compressor counted at full power all day', () => {
		expect(codesOf(budget, { loads: [{ ...fridge, duty: undefined }] })).toContain('cycling-load');
		expect(codesOf(budget, { loads: [fridge] })).not.toContain('cycling-load');
	});

	test('an inverter that mostly idles', () => {
		const phone = { name: 'tool charger', powerW: 50, durationH: 1 };
		expect(codesOf(budget, { loads: [phone] })).toContain('inverter-idle-large');
		expect(codesOf(budget, { loads: [phone], inverterOnH: 0.5 })).not.toContain('inverter-idle-large');
	});

	test('a peak that 12 V should not carry', () => {
		const loads = [kettle, { name: 'cooktop', powerW: 1800, durationH: 0.5 }];
		expect(codesOf(budget, { loads })).toContain('peak-current-high');
		expect(codesOf(budget, { loads, bankV: 24 })).not.toContain('peak-current-high');
	});
});

describe('no answer', () => {
	test('what nobody knows is asked for', () => {
		expect(asked(budget, {})[0]?.question).toContain('Which loads');
		expect(asked(budget, { loads: [{ name: 'zorgblat', durationH: 2 }] })[0]?.question).toContain('zorgblat');
	});

	test.each([
		['more hours than a day has', { loads: [{ ...lights, durationH: 25 }] }, 'loads', 'contradiction'],
		['power against current', { loads: [{ ...lights, currentA: 40 }] }, 'loads', 'contradiction'],
		['a bank of 18 V', { loads: [lights], bankV: 18 }, 'bankV', 'out-of-range'],
		['80 V', { loads: [lights], bankV: 80 }, 'bankV', 'out-of-range'],
		['900 V', { loads: [lights], bankV: 900 }, 'bankV', 'out-of-range'],
		['no power', { loads: [{ ...lights, powerW: 0 }] }, 'loads', 'out-of-range'],
		[
			'an efficiency of 120 %',
			{ loads: [lights], inverterEfficiency: 1.2 },
			'inverterEfficiency',
			'out-of-range',
		],
	])('%s is refused', (_, given, field, code) => {
		const [refusal] = refused(budget, given);
		expect(refusal).toMatchObject({ field, code });
		expect(refusal?.text).not.toBe('');
		expect(refusal?.instead).not.toBe('');
	});
});

test('whatever the list, the answer is whole and its parts add up', () => {
	const item = fc.record(
		{
			name: fc.constantFrom(...typicalLoads.map((load) => load.name)),
			powerW: fc.double({ min: 1, max: 3000, noNaN: true }),
			durationH: fc.double({ min: 0.1, max: 24, noNaN: true }),
			count: fc.integer({ min: 1, max: 5 }),
		},
		{ requiredKeys: ['name'] },
	);
	fc.assert(
		fc.property(
			fc.array(item, { minLength: 1, maxLength: 10 }),
			fc.constantFrom(12, 24, 48),
			(loads, bankV) => {
				const results = resultsOf(budget, { loads, bankV });
				const parts =
					Number(results.dcEnergyPerDay) +
					Number(results.mainsEnergyPerDay ?? 0) +
					Number(results.inverterLossPerDay ?? 0);
				expect(Number(results.energyPerDay)).toBeCloseTo(parts, 4);
				expect(Number(results.chargePerDay) * bankV).toBeCloseTo(parts, 4);
				expect(Number(results.energyPerDay)).toBeGreaterThan(0);
			},
		),
		{ numRuns: 300 },
	);
});
