import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { typicalLoads } from '../tables/loads.js';
import { averageBankW, dailyBudget, peakBankW } from './budget.js';
import { inverterSizesW, smallestInverter, steadyLoadShare, surgeW } from './inverter.js';
import { type Load, type LoadItem, partLoads, resolveLoads } from './loads.js';

const options = { bankV: 12, mainsV: 120, region: 'us', over: 'day' } as const;

function one(item: LoadItem, changed: Partial<Parameters<typeof resolveLoads>[1]> = {}): Load {
	const { loads, problem } = resolveLoads([item], { ...options, ...changed });
	if (problem !== null || loads[0] === undefined) throw new Error(JSON.stringify(problem));
	return loads[0];
}

const problemOf = (item: LoadItem, changed: Partial<Parameters<typeof resolveLoads>[1]> = {}) =>
	resolveLoads([item], { ...options, ...changed }).problem;

describe('one load of a day', () => {
	test('power and hours as given, count multiplied', () => {
		expect(one({ name: 'laptop', powerW: 60, durationH: 4, count: 2 })).toMatchObject({
			shown: '2 × laptop',
			runningW: 120,
			dailyWh: 480,
			mains: false,
			assumed: [],
		});
	});

	test('amps are at the bank voltage, or at the mains where it is a mains load', () => {
		expect(one({ name: 'fan', currentA: 3, durationH: 10 }, { bankV: 24 }).dailyWh).toBe(720);
		expect(one({ name: 'kettle', currentA: 12.5, durationH: 0.2 }).runningW).toBe(1500);
		expect(one({ name: 'fan', currentA: 1, durationH: 1, supply: 'mains' }).runningW).toBe(120);
	});

	test('a share without hours is of the whole day; hours without a share are at full power', () => {
		expect(one({ name: 'fridge', powerW: 60, duty: 0.4 }).dailyWh).toBeCloseTo(576, 9);
		const whole = one({ name: 'fridge', powerW: 60, durationH: 24 });
		expect(whole.dailyWh).toBe(1440);
		expect(whole.cyclesUnsaid).toBe(true);
	});

	test('what is missing comes from the table and is said', () => {
		const fridge = one({ name: 'fridge', powerW: 50 });
		expect(fridge.dailyWh).toBeCloseTo(50 * 24 * 0.4, 9);
		expect(fridge.assumed.map(({ field }) => field)).toEqual(['durationH', 'duty']);
		const microwave = one({ name: 'microwave' });
		expect(microwave.assumed.map(({ field }) => field)).toEqual(['supply', 'powerW', 'durationH']);
		expect(microwave.mains).toBe(true);
	});

	test('energy or charge of the day as given', () => {
		expect(one({ name: 'fridge', energyWh: 500 }).dailyWh).toBe(500);
		expect(one({ name: 'stereo box', chargeAh: 10 }, { bankV: 24 }).dailyWh).toBe(240);
		expect(one({ name: 'gadget', energyWh: 48 }).runningW).toBe(2);
	});

	test('what nobody knows is asked for', () => {
		expect(problemOf({ name: 'zorgblat', durationH: 3 })).toMatchObject({
			kind: 'ask',
			question: 'How much does the zorgblat draw (watts or amps)?',
		});
		expect(problemOf({ name: 'zorgblat', powerW: 30 })).toMatchObject({
			kind: 'ask',
			question: 'How many hours a day is the zorgblat on?',
		});
		expect(problemOf({ name: 'zorgblat', powerW: 30 }, { over: 'while-on' })).toBeNull();
	});

	test('contradictions are named', () => {
		expect(problemOf({ name: 'fan', powerW: 30, durationH: 30 })).toMatchObject({
			kind: 'contradiction',
			text: 'I read 30 h a day for the fan; a day has 24.',
		});
		expect(problemOf({ name: 'fan', powerW: 100, currentA: 40, durationH: 1 })).toMatchObject({
			kind: 'contradiction',
		});
		// 60 W and 4.7 A on a bank of 12.8 V agree.
		expect(problemOf({ name: 'fridge', powerW: 60, currentA: 4.7, durationH: 10 })).toBeNull();
	});

	test('"AC" is named in full and "x" is no part of a name', () => {
		expect(one({ name: 'AC' }).name).toBe('air conditioner');
		expect(one({ name: 'x fan', powerW: 20, count: 2, durationH: 1 }).shown).toBe('2 × fan');
		expect(one({ powerW: 20, durationH: 1 }).name).toBe('load 1');
	});
});

describe('a load while it is on', () => {
	const on = { over: 'while-on' } as const;
	test('a power that was given counts in full, a typical one with its usual share', () => {
		expect(one({ name: 'fridge', powerW: 60 }, on)).toMatchObject({
			duty: 1,
			hoursPerDay: null,
			assumed: [],
		});
		expect(one({ name: 'fridge' }, on)).toMatchObject({ duty: 0.4, hoursPerDay: null });
	});

	test('3 h or more is continuous, and so is what nobody knows', () => {
		expect(one({ name: 'gadget', powerW: 100 }, on).continuous).toBe(true);
		expect(one({ name: 'gadget', powerW: 100, durationH: 2.9 }, on).continuous).toBe(false);
		expect(one({ name: 'gadget', powerW: 100, durationH: 3 }, on).continuous).toBe(true);
		expect(one({ name: 'cooktop', powerW: 1800 }, on).continuous).toBe(false);
		expect(one({ name: 'water heater', powerW: 1440, durationH: 0.5 }, on).continuous).toBe(true);
	});
});

test('a bare current or time in a list is parted from the loads', () => {
	const items: LoadItem[] = [
		{ currentA: 30 },
		{ durationH: 72 },
		{ name: 'fan', currentA: 3 },
		{ currentA: 2, durationH: 1 },
	];
	const both = partLoads(items, { current: true, duration: true });
	expect(both.stray).toEqual({ currentsA: [30], durationsH: [72] });
	expect(both.items).toEqual(items.slice(2));
	expect(partLoads(items, { current: false, duration: false }).items).toEqual(items);
	const longer: LoadItem[] = [{ name: 'fridge', powerW: 45, durationH: 72 }];
	expect(partLoads(longer, { current: false, duration: true })).toEqual({
		items: [{ name: 'fridge', powerW: 45 }],
		stray: { currentsA: [], durationsH: [72] },
	});
});

const item = fc.record(
	{
		name: fc.constantFrom('thing', ...typicalLoads.map((load) => load.name)),
		powerW: fc.double({ min: 0.1, max: 5000, noNaN: true }),
		durationH: fc.double({ min: 0.01, max: 24, noNaN: true }),
		duty: fc.double({ min: 0.01, max: 1, noNaN: true }),
		count: fc.integer({ min: 1, max: 20 }),
		supply: fc.constantFrom('mains' as const, 'dc' as const),
	},
	{ requiredKeys: ['name', 'powerW', 'durationH'] },
);
const inverter = fc.record({
	efficiency: fc.double({ min: 0.3, max: 1, noNaN: true }),
	idleW: fc.double({ min: 0, max: 100, noNaN: true }),
	onH: fc.double({ min: 0, max: 24, noNaN: true }),
});

describe('the day as a whole', () => {
	test('its parts make the whole, and nothing comes from nothing', () => {
		fc.assert(
			fc.property(fc.array(item, { minLength: 1, maxLength: 12 }), inverter, (items, use) => {
				const { loads } = resolveLoads(items, options);
				const day = dailyBudget(loads, use);
				const atTheLoads = loads.reduce((sum, load) => sum + (load.dailyWh as number), 0);
				expect(day.dcWh + day.mainsWh).toBeCloseTo(atTheLoads, 4);
				expect(day.totalWh).toBeCloseTo(day.dcWh + day.mainsWh + day.conversionWh + day.idleWh, 6);
				expect(day.totalWh).toBeGreaterThanOrEqual(atTheLoads * (1 - 1e-12));
				expect(day.conversionWh).toBeGreaterThanOrEqual(-1e-9);
				// No day takes more than everything on for 24 h, with the inverter's idle draw.
				expect(day.totalWh).toBeLessThanOrEqual(peakBankW(loads, use) * 24 + use.idleW * 24 + 1e-6);
				expect(averageBankW(loads, { ...use, idleW: 0 }) * 24).toBeCloseTo(day.totalWh - day.idleWh, 3);
			}),
			{ numRuns: 2000 },
		);
	});

	test('one load more never makes it less', () => {
		fc.assert(
			fc.property(fc.array(item, { minLength: 1, maxLength: 10 }), item, inverter, (items, more, use) => {
				const sum = (list: readonly LoadItem[]) => dailyBudget(resolveLoads(list, options).loads, use);
				const before = sum(items);
				const after = sum([...items, more]);
				expect(after.totalWh).toBeGreaterThanOrEqual(before.totalWh);
				expect(after.peakBankW).toBeGreaterThanOrEqual(before.peakBankW);
			}),
		);
	});
});

describe('the inverter for a set of loads', () => {
	test('the worst starter starts while the rest runs', () => {
		const loads = resolveLoads([{ name: 'mains fridge' }, { name: 'kettle' }], {
			...options,
			over: 'while-on',
		}).loads;
		expect(surgeW(loads)).toBe(120 * 5 + 1500);
	});

	test('of several of a kind one starts at a time', () => {
		const { loads } = resolveLoads([{ name: 'mains fridge', count: 2 }], { ...options, over: 'while-on' });
		expect(surgeW(loads)).toBe(120 * 5 + 120);
	});

	test('the size chosen carries the load with a fifth to spare, and the next smaller one does not', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 9000, noNaN: true }),
				fc.double({ min: 1, max: 4, noNaN: true }),
				(continuousW, surge) => {
					const peakW = continuousW * surge;
					const carries = (sizeW: number) => sizeW * steadyLoadShare >= continuousW && sizeW * 2 >= peakW;
					const chosen = smallestInverter(continuousW, peakW, 2);
					if (chosen === null) {
						expect(inverterSizesW.some(carries)).toBe(false);
						return;
					}
					expect(carries(chosen)).toBe(true);
					expect(inverterSizesW.filter((sizeW) => sizeW < chosen).some(carries)).toBe(false);
				},
			),
		);
	});
});
