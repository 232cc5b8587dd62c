import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answered, asked, codesOf, eu, refused, resultsOf } from '../../../../tests/reference/answers.js';
import { typicalLoads } from '../tables/loads.js';
import { sizingSchema } from '../topic/sizing.js';
import { shore } from './shore.js';

const loads = [{ name: 'water heater', powerW: 1440 }, { name: 'cooktop', powerW: 1800 }, { name: 'AC' }];

describe('a 30 A inlet on a 15 A household outlet', () => {
	const given = { inletA: 30, outletA: 15, chargerA: 70, loads };

	test('one thing at a time, and not all of them', () => {
		const sizing = answered(shore, given);
		expect(sizing.headline).toBe('On 15 A one at a time: water heater, or charger alone at 70 A');
		expect(sizing.because).toBe(
			'15 A leaves 12 A for hours on end. The cooktop (15 A) is too much even alone. The air conditioner (12.5 A) is too much even alone. With water heater on, the charger must be off.',
		);
		expect(sizing.neighbours.map(({ choice, passes }) => [choice, passes])).toEqual([
			['water heater', true],
			['cooktop', false],
			['air conditioner', false],
			['water heater + charger at 70 A', false],
		]);
		expect(sizing.findings.map((one) => one.code)).toEqual([
			'adapter-limits',
			'over-supply',
			'load-too-large',
			'load-too-large',
			'residual-current-protection-unsaid',
		]);
		expect(sizing.assumed.find((one) => one.name === 'loads.air conditioner.powerW')).toMatchObject({
			value: 1500,
			confirm: true,
		});
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('the charger setting with each set, and what to switch off first', () => {
		expect(resultsOf(shore, given)).toMatchObject({
			supplyLimit: 15,
			chargerLimit: 70,
			set1: 'water heater',
			set1ChargerLimit: 0,
			shedFirst: 'charger, water heater, air conditioner, cooktop',
			cordSize: '10 AWG',
		});
		expect(resultsOf(shore, given).usablePower).toBeCloseTo(1440, 9);
	});

	test('a charger without power-factor correction must be set lower', () => {
		const results = resultsOf(shore, { ...given, chargerPowerFactor: 0.7, chargerEfficiency: 0.8 });
		expect(results.chargerLimit).toBe(Math.floor((12 * 120 * 0.7 * 0.8) / 14.6));
	});

	test('the order in which the ratings are read does not matter', () => {
		expect(resultsOf(shore, { ...given, inletA: 15, outletA: 30 }).supplyLimit).toBe(15);
		const stray = { chargerA: 70, outletA: 30, loads: [...loads, { currentA: 15 }] };
		expect(resultsOf(shore, stray).supplyLimit).toBe(15);
	});
});

describe('other supplies', () => {
	test('a 30 A pedestal bears more, and short loads in full', () => {
		const sizing = answered(shore, { outletA: 30, household: false, chargerA: 70, loads });
		// 1.25 · 12 + 15 is exactly 30; 1.25 · 12.5 + 15 is over it.
		expect(sizing.headline).toBe('On 30 A: water heater + cooktop, or air conditioner + charger');
		expect(sizing.neighbours.filter((one) => one.passes)).toEqual([
			{ choice: 'water heater + cooktop', passes: true, text: '27 A; charger off' },
			{ choice: 'air conditioner', passes: true, text: '12.5 A; charger at its full 70 A' },
		]);
		expect(resultsOf(shore, { outletA: 30, household: false, chargerA: 70, loads })).toMatchObject({
			set1ChargerLimit: 0,
			set2ChargerLimit: 70,
		});
	});

	test('two of a name but not of a power are told apart', () => {
		const kettles = [
			{ name: 'kettle', powerW: 600 },
			{ name: 'kettle', powerW: 2200 },
		];
		const sizing = answered(shore, { outletA: 15, loads: kettles });
		expect(sizing.headline).toBe('On 15 A: kettle (600 W)');
		expect(sizing.because).toContain('The kettle (2200 W) (18.4 A) is too much even alone.');
	});

	test('all of it where all of it fits', () => {
		const sizing = answered(shore, {
			inletA: 30,
			chargerA: 40,
			loads: [{ name: 'microwave', powerW: 1200 }],
		});
		expect(sizing.headline).toBe('All of it may run together: 16.4 A on 30 A');
		expect(sizing.findings.map((one) => one.code)).not.toContain('over-supply');
		expect(answered(shore, { inletA: 30, chargerA: 40 }).headline).toBe(
			'The charger at 40 A may run: 6.4 A on 30 A',
		);
	});

	test('Europe: 16 A at the campsite, 10 A at the house', () => {
		const kettle = [{ name: 'kettle', powerW: 2200 }];
		expect(answered(shore, { inletA: 16, loads: kettle }, eu).headline).toBe(
			'The kettle may run: 9.6 A on 16 A',
		);
		const house = answered(shore, { inletA: 16, outletA: 10, loads: kettle }, eu);
		expect(house.headline).toBe('Nothing of it may run on 10 A');
		expect(house.tipping).toContainEqual(
			expect.objectContaining({ name: 'loads', value: expect.closeTo(1840, 6), unit: 'W' }),
		);
		expect(resultsOf(shore, { inletA: 16 }, eu).residualCurrentProtection).toContain('30 mA');
	});

	test('no loads named: what there is to use', () => {
		expect(answered(shore, { inletA: 30 }).headline).toBe('24 A to use on 30 A: 2880 W');
	});

	test('two of a kind are taken apart', () => {
		const two = { inletA: 20, household: false, loads: [{ name: 'AC', powerW: 1500, count: 2 }] };
		const sizing = answered(shore, two);
		expect(sizing.headline).toBe('On 20 A: air conditioner');
		expect(sizing.neighbours).toMatchObject([
			{ choice: 'air conditioner', passes: true },
			{ choice: '2 × air conditioner', passes: false },
		]);
	});

	test('a charger named among the loads, in amps or watts', () => {
		const amps = resultsOf(shore, { inletA: 30, loads: [{ name: 'charger', currentA: 70 }] });
		expect(amps.chargerInput).toBe(resultsOf(shore, { inletA: 30, chargerA: 70 }).chargerInput);
		const watts = resultsOf(shore, { inletA: 30, loads: [{ name: 'battery charger', powerW: 1080 }] });
		expect(watts.chargerInput).toBeCloseTo(1080 / (120 * 0.9), 9);
	});

	test('a 24 V bank takes twice the power at the same current', () => {
		const at = (bankV: number) => Number(resultsOf(shore, { inletA: 30, chargerA: 40, bankV }).chargerInput);
		expect(at(24) / at(12)).toBeCloseTo(2, 9);
		// A low voltage named as the supply's is the bank's.
		expect(resultsOf(shore, { inletA: 30, chargerA: 40, supplyV: 24 }).chargerInput).toBeCloseTo(at(24), 9);
	});

	test('a fridge runs from the bank', () => {
		expect(codesOf(shore, { inletA: 30, loads: [{ name: 'fridge' }] })).toContain('load-on-bank');
		expect(codesOf(shore, { inletA: 30, loads: [{ name: 'fridge', powerW: 120 }] })).not.toContain(
			'load-on-bank',
		);
	});

	test('a long list shows the fullest sets', () => {
		const many = Array.from({ length: 16 }, (_, index) => ({
			name: `tool ${index}`,
			powerW: 500 + 10 * index,
		}));
		const sizing = answered(shore, { inletA: 30, loads: many });
		expect(sizing.findings.map((one) => one.code)).toContain('more-sets');
		expect(sizing.neighbours.length).toBeLessThanOrEqual(24);
	});
});

describe('a supply that is unsafe', () => {
	test.each([
		['a cord smaller than the outlet', { inletA: 30, outletA: 20, cordA: 15 }, 'cord-below-supply'],
		['no protection', { inletA: 30, gfci: false }, 'no-residual-current-protection'],
		['a second bond', { inletA: 30, bondInVan: true }, 'second-neutral-bond'],
	])('%s', (_, given, code) => {
		const sizing = answered(shore, { ...given, chargerA: 20 });
		expect(sizing.findings.find((one) => one.code === code)?.severity).toBe('danger');
		expect(sizing.headline).toMatch(/^Unsafe as it stands: /);
		expect(sizing.because).toMatch(/^Once that is put right: /);
		const fine = { inletA: 30, outletA: 30, cordA: 30, gfci: true, bondInVan: false, chargerA: 20 };
		expect(codesOf(shore, fine)).toEqual([]);
	});

	test('an outlet larger than the inlet wants a breaker in the van', () => {
		expect(codesOf(shore, { inletA: 15, outletA: 30 })).toContain('inlet-below-supply');
	});

	test('50 A has two legs', () => {
		expect(codesOf(shore, { inletA: 50 })).toContain('two-legs');
		expect(codesOf(shore, { inletA: 30 })).not.toContain('two-legs');
	});

	test('standing cautions', () => {
		const cautions = answered(shore, { inletA: 30 }).cautions.join(' ');
		expect(cautions).toContain('licensed electrician');
		expect(cautions).toContain('one place only');
	});
});

describe('no answer', () => {
	test('what is missing is asked for', () => {
		expect(asked(shore, {})[0]?.question).toContain('rated');
		expect(asked(shore, { loads: [{ name: 'kettle' }] })[0]?.name).toBe('inletA');
		expect(asked(shore, { inletA: 30, loads: [{ name: 'zorgblat' }] })[0]?.question).toContain('zorgblat');
	});

	test.each([
		['80 V', { inletA: 30, supplyV: 80 }, 'supplyV', 'out-of-range'],
		['a bank of 18 V', { inletA: 30, bankV: 18 }, 'bankV', 'out-of-range'],
		['a supply of nothing', { inletA: 0 }, 'inletA', 'out-of-range'],
		['watts against amps', { inletA: 30, loads: [{ powerW: 100, currentA: 10 }] }, 'loads', 'contradiction'],
	])('%s', (_, given, field, code) => {
		expect(refused(shore, given)[0]).toMatchObject({ field, code });
	});
});

describe('never over the limit', () => {
	const mains = typicalLoads.filter((load) => load.mains);
	const item = fc.record(
		{
			name: fc.constantFrom(...mains.map((load) => load.name)),
			powerW: fc.integer({ min: 50, max: 3000 }),
			count: fc.integer({ min: 1, max: 2 }),
		},
		{ requiredKeys: ['name'] },
	);
	const question = fc.record(
		{
			inletA: fc.constantFrom(15, 16, 20, 30, 50),
			outletA: fc.constantFrom(10, 15, 16, 20, 30),
			household: fc.boolean(),
			chargerA: fc.integer({ min: 5, max: 150 }),
			bankV: fc.constantFrom(12, 24),
			loads: fc.array(item, { minLength: 1, maxLength: 6 }),
		},
		{ requiredKeys: ['inletA', 'loads'] },
	);

	test('no set that is called fine draws more than the supply, its charger included', () => {
		fc.assert(
			fc.property(question, fc.constantFrom('us' as const, 'eu' as const), (given, region) => {
				const context = { region, units: 'metric', language: 'en' } as const;
				const sizing = answered(shore, given, context);
				const limitA = Math.min(given.inletA, given.outletA ?? Number.POSITIVE_INFINITY);
				const household = sizing.assumed.find((one) => one.name === 'household')?.value ?? given.household;
				const value = (name: string) => sizing.results.find((result) => result.name === name)?.value;
				// Currents as the working has them, by the name a set would use.
				const currentA = new Map(
					sizing.working
						.filter((step) => step.formula === 'I = P / V')
						.map((step) => [step.label, step.value]),
				);
				const perChargerA = given.chargerA === undefined ? 0 : Number(value('chargerInput')) / given.chargerA;
				for (let index = 1; value(`set${index}`) !== undefined; index += 1) {
					let drawA = 0;
					for (const part of String(value(`set${index}`)).split(' + ')) {
						const [, count, name] = /^(?:(\d+) × )?(.+)$/.exec(part) ?? [];
						drawA += Number(count ?? 1) * Number(currentA.get(name as string));
					}
					const charging = Number(value(`set${index}ChargerLimit`) ?? 0);
					const chargerA = charging * perChargerA;
					// Whatever the weights, the sum itself never exceeds the rating, nor 80 % of a household outlet.
					expect(drawA + chargerA).toBeLessThanOrEqual((household === true ? 0.8 : 1) * limitA + 1e-6);
					expect(chargerA).toBeLessThanOrEqual(0.8 * limitA + 1e-6);
				}
				if (sizing.headline.startsWith('All of it')) {
					expect(Number(value('allTogether'))).toBeLessThanOrEqual(limitA + 1e-6);
					expect(sizing.findings.map((one) => one.code)).not.toContain('over-supply');
				} else if (Number(value('allTogether')) > limitA) {
					expect(sizing.findings.map((one) => one.code)).toContain('over-supply');
				}
			}),
			{ numRuns: 400 },
		);
	});

	test('a larger supply never allows less, a further load never makes more room', () => {
		fc.assert(
			fc.property(question, (given) => {
				const plain = { ...given, household: false, chargerA: 100, outletA: undefined };
				const limitOf = (changed: object) => Number(resultsOf(shore, { ...plain, ...changed }).chargerLimit);
				expect(limitOf({ inletA: given.inletA + 10 })).toBeGreaterThanOrEqual(limitOf({}));
			}),
			{ numRuns: 100 },
		);
	});
});
