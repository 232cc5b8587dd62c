import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answered, asked, codesOf, refused, resultsOf } from '../../../../tests/reference/answers.js';
import { chemistryNames } from '../tables/batteries.js';
import { sizingSchema } from '../topic/sizing.js';
import { runtime } from './runtime.js';

const fridge = { name: 'fridge', powerW: 60 };
const fan = { name: 'fan', powerW: 20 };
const bank = { unitAh: 100, unitCount: 4, chemistry: 'lifepo4' };

describe('how long it lasts', () => {
	test('4 x 100 Ah with a fridge and a fan', () => {
		const sizing = answered(runtime, { ...bank, loads: [fridge, fan] });
		expect(sizing.headline).toBe('51 h (2.1 days): 80 W from 100 % down to 20 %');
		expect(sizing.neighbours[0]).toMatchObject({ choice: 'fridge running its usual share of the time' });
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
		const results = resultsOf(runtime, { ...bank, loads: [fridge, fan] });
		expect(results.runtime).toBeCloseTo((400 * 12.8 * 0.8) / 80, 9);
		expect(results.usableCharge).toBeCloseTo(320, 9);
	});

	test('between two states of charge, in either order', () => {
		const given = { ...bank, loads: [fan], toSoc: 0.3 };
		expect(resultsOf(runtime, { ...given, fromSoc: 0.8 }).runtime).toBeCloseTo((400 * 12.8 * 0.5) / 20, 9);
		expect(resultsOf(runtime, { ...given, fromSoc: 0.3, toSoc: 0.8 }).runtime).toBeCloseTo(
			(400 * 12.8 * 0.5) / 20,
			9,
		);
	});

	test('mains loads through the inverter and its idle draw', () => {
		const results = resultsOf(runtime, { ...bank, loads: [{ name: 'tv', powerW: 85, supply: 'mains' }] });
		expect(results.averagePower).toBeCloseTo(85 / 0.85 + 20, 9);
	});

	test('hours a day and a share of the time count', () => {
		const results = resultsOf(runtime, {
			...bank,
			loads: [
				{ ...fridge, duty: 0.5 },
				{ ...fan, durationH: 6 },
			],
		});
		expect(results.averagePower).toBeCloseTo(30 + 5, 9);
	});

	test('hours of each load: the energy of that time, not of a day, against what the bank gives', () => {
		const ac = { name: 'air conditioner', powerW: 500, durationH: 8 };
		const given = { unitAh: 100, unitCount: 2, chemistry: 'lifepo4', loads: [ac] };
		const short = answered(runtime, given);
		expect(short.headline).toMatch(/^Too small for 8 h: 4.87 kWh needed, 2.0\d kWh usable$/);
		expect(short.because).toMatch(/^It lasts 3.3 h at 609 W on average/);
		expect(codesOf(runtime, given)).toContain('bank-too-small');
		const results = resultsOf(runtime, given);
		// 500 W behind an inverter of 85 % that draws 20 W by itself, for eight hours.
		expect(results.neededEnergy).toBeCloseTo((500 / 0.85 + 20) * 8, 9);
		// The least number of batteries that carries it is among the neighbours, and it does.
		const least = short.neighbours.find(({ passes }) => passes);
		expect(least?.choice).toBe('5 of these batteries');
		const enough = answered(runtime, { ...given, unitCount: 5 });
		expect(enough.headline).toMatch(/^Enough for 8 h: 4.87 kWh of 5.\d+ kWh usable$/);
		expect(resultsOf(runtime, { ...given, unitCount: 5 }).leftSoc).toBeGreaterThan(0.2);
		expect(answered(runtime, { ...given, unitCount: 4 }).headline).toMatch(/^Too small/);
	});

	test('what charges the bank is no load of it', () => {
		const given = (name: string) => ({ unitAh: 200, loads: [{ name, currentA: 60 }] });
		for (const name of ['charger', 'DC-DC charger', 'alternator', 'Ladegerät', 'cargador']) {
			expect(refused(runtime, given(name))[0]?.text).toBe(
				`I read "${name}" as a load, but it gives current.`,
			);
		}
		expect(answered(runtime, given('laptop charger')).headline).toMatch(/ h: /);
		expect(answered(runtime, given('winch')).headline).toMatch(/ h: /);
	});

	test('a night: what is on for minutes counts once, the rest all night', () => {
		const results = resultsOf(runtime, {
			...bank,
			loads: [{ name: 'pump', powerW: 60, durationH: 0.5 }, fan],
			overnight: true,
		});
		expect(results.neededEnergy).toBeCloseTo(60 * 0.5 + 20 * 12, 9);
		expect(results.leftSoc).toBeCloseTo(1 - (60 * 0.5 + 20 * 12) / (400 * 12.8), 9);
		const night = { ...bank, loads: [{ name: 'fan', powerW: 100 }], overnight: true };
		// 76.5625 % are left: shown rounded down.
		expect(answered(runtime, night).because).toContain('76.5 % is left after 12 h.');
	});

	test('some days: hours of a load count on each of them', () => {
		const given = { ...bank, loads: [{ ...fan, durationH: 6 }, fridge], wantedH: 72 };
		expect(resultsOf(runtime, given).neededEnergy).toBeCloseTo(3 * (20 * 6 + 60 * 24), 9);
		const behind = { ...bank, loads: [{ ...fridge, durationH: 72 }] };
		expect(resultsOf(runtime, behind).neededEnergy).toBeCloseTo(60 * 72, 9);
		expect(answered(runtime, behind).headline).toMatch(/^Too small for 3 days: /);
	});

	test('the verdict is the hours against the time asked for, whatever is asked', () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...chemistryNames),
				fc.integer({ min: 20, max: 600 }),
				fc.integer({ min: 5, max: 3000 }),
				fc.integer({ min: 1, max: 200 }),
				(chemistry, unitAh, powerW, wantedH) => {
					const given = { unitAh, chemistry, loads: [{ powerW, supply: 'dc' as const }], wantedH };
					const results = resultsOf(runtime, given);
					expect(results.verdict).toBe(
						Number(results.runtime) >= wantedH * (1 - 1e-9) ? 'enough' : 'too small',
					);
					expect(results.neededEnergy).toBeCloseTo(powerW * wantedH, 6);
					expect(codesOf(runtime, given).includes('bank-too-small')).toBe(results.verdict === 'too small');
				},
			),
		);
	});

	test('lead-acid gives less at a large current', () => {
		const sizing = answered(runtime, { unitAh: 100, chemistry: 'agm', loads: [{ currentA: 20 }], toSoc: 0 });
		const hours = sizing.results.find((result) => result.name === 'runtime')?.value;
		expect(hours).toBeCloseTo(20 * (100 / (20 * 20)) ** 1.15, 9);
		expect(sizing.because).toContain('Peukert');
		expect(
			answered(runtime, { unitAh: 100, chemistry: 'agm', loads: [{ currentA: 4 }] }).because,
		).not.toContain('Peukert');
	});

	test('age and cold', () => {
		const given = {
			unitAh: 100,
			chemistry: 'flooded',
			loads: [{ currentA: 1 }],
			toSoc: 0.5,
			temperatureC: 10,
		};
		expect(resultsOf(runtime, { ...given, health: 0.8 }).usableCharge).toBeCloseTo((80 * 0.5) / 1.19, 9);
	});

	test('a bank named by its energy', () => {
		const results = resultsOf(runtime, { unitWh: 1280, chemistry: 'lifepo4', loads: [fan], toSoc: 0 });
		expect(results.runtime).toBeCloseTo(64, 9);
	});

	test('minutes where it is short', () => {
		const sizing = answered(runtime, { unitAh: 100, chemistry: 'agm', loads: [{ name: 'microwave' }] });
		expect(sizing.headline).toMatch(/^\d+ min: /);
		expect(sizing.tipping[0]?.name).toBe('averagePowerW');
	});

	test('the load for a full day is just that', () => {
		const { tipping } = answered(runtime, { ...bank, loads: [fridge] });
		const dayW = tipping[0]?.value as number;
		expect(resultsOf(runtime, { ...bank, loads: [{ powerW: dayW }] }).runtime).toBeCloseTo(24, 6);
	});

	test('the idle draw of an inverter alone', () => {
		expect(resultsOf(runtime, { ...bank, inverterIdleW: 20 }).averagePower).toBe(20);
	});
});

describe('findings', () => {
	test('more than the bank bears at once', () => {
		const heavy = { ...bank, unitCount: 1, loads: [{ name: 'kettle', powerW: 2000 }] };
		expect(codesOf(runtime, heavy)).toContain('draw-over-protection');
		expect(codesOf(runtime, { ...bank, loads: [fan] })).toEqual([]);
	});

	test('too cold to charge again', () => {
		expect(codesOf(runtime, { ...bank, loads: [fan], temperatureC: -5 })).toContain(
			'lithium-charge-below-freezing',
		);
	});
});

describe('no answer', () => {
	test('what is missing is asked for', () => {
		expect(asked(runtime, { loads: [fan] })[0]?.name).toBe('unitAh');
		expect(asked(runtime, { unitAh: 100 })[0]?.name).toBe('loads');
		expect(asked(runtime, { unitAh: 100, inverterIdleW: 0 })[0]?.name).toBe('loads');
		expect(asked(runtime, { unitAh: 100, loads: [{ name: 'zorgblat' }] })[0]?.question).toContain('zorgblat');
	});

	test.each([
		['nothing between', { fromSoc: 0.5, toSoc: 0.5 }, 'fromSoc', 'impossible'],
		['a bank of 18 V', { bankV: 18 }, 'bankV', 'out-of-range'],
		['70 V', { bankV: 70 }, 'bankV', 'out-of-range'],
		['lithium at -30 °C', { temperatureC: -30 }, 'temperatureC', 'not-covered'],
		['negative watts', { loads: [{ powerW: -5 }] }, 'loads', 'out-of-range'],
		['watts against amps', { loads: [{ powerW: 500, currentA: 1 }] }, 'loads', 'contradiction'],
		['5 units of 12 V in 24 V', { unitCount: 5, bankV: 24, unitV: 12 }, 'unitCount', 'impossible'],
	])('%s is refused', (_, given, field, code) => {
		expect(refused(runtime, { ...bank, loads: [fan], ...given })[0]).toMatchObject({ field, code });
	});
});

describe('laws', () => {
	const question = fc.record({
		unitAh: fc.double({ min: 10, max: 1000, noNaN: true }),
		chemistry: fc.constantFrom(...chemistryNames),
		temperatureC: fc.double({ min: -17, max: 40, noNaN: true }),
		powerW: fc.double({ min: 1, max: 3000, noNaN: true }),
	});
	const hours = ({ powerW, ...given }: { powerW: number }) =>
		Number(resultsOf(runtime, { ...given, loads: [{ powerW }] }).runtime);

	test('what is drawn is never more than what is stored', () => {
		fc.assert(
			fc.property(question, (given) => {
				const results = resultsOf(runtime, {
					...given,
					loads: [{ powerW: given.powerW }],
					powerW: undefined,
				});
				expect(Number(results.usableCharge)).toBeLessThanOrEqual(given.unitAh * (1 + 1e-12));
				expect(Number(results.runtime) * Number(results.averagePower)).toBeCloseTo(
					Number(results.usableEnergy),
					4,
				);
			}),
			{ numRuns: 500 },
		);
	});

	test('more load never lasts longer, more bank never shorter', () => {
		fc.assert(
			fc.property(question, fc.double({ min: 1, max: 5, noNaN: true }), (given, more) => {
				expect(hours({ ...given, powerW: given.powerW * more })).toBeLessThanOrEqual(
					(hours(given) / more) * (1 + 1e-9),
				);
				expect(hours({ ...given, unitAh: given.unitAh * more } as typeof given)).toBeGreaterThanOrEqual(
					hours(given) * more * (1 - 1e-9),
				);
			}),
			{ numRuns: 500 },
		);
	});
});
