import { describe, expect, test } from 'vitest';
import { dayShape, spread } from '../energy/day-shape.js';
import { simulatedHours } from '../energy/simulated-hours.js';
import { typicalLoads } from '../tables/loads.js';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { sizingSchema } from '../topic/sizing.js';
import { simulate } from './simulate.js';
import { solar } from './solar.js';

type Given = Readonly<Record<string, unknown>>;

function answered(given: Given) {
	const outcome = runTopic(simulate, given, defaultContext);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

function refused(given: Given) {
	const outcome = runTopic(simulate, given, defaultContext);
	if (outcome.status !== 'refused') throw new Error(JSON.stringify(outcome));
	return outcome.refusals;
}

function asked(given: Given) {
	const outcome = runTopic(simulate, given, defaultContext);
	if (outcome.status !== 'needs-input') throw new Error(JSON.stringify(outcome));
	return outcome.missing;
}

const resultsOf = (given: Given) =>
	Object.fromEntries(answered(given).results.map((result) => [result.name, result.value]));
const codesOf = (given: Given) => answered(given).findings.map((one) => one.code);

const loads = [
	{ name: 'fridge', powerW: 60, durationH: 24, duty: 0.4 },
	{ name: 'lights', powerW: 20, durationH: 5 },
];
const december = { unitAh: 200, chemistry: 'lifepo4', panelW: 400, place: 'Flagstaff', month: 12, loads };

describe('a month with sun', () => {
	test('200 Ah and 400 W carry 676 Wh a day through December in Flagstaff', () => {
		const sizing = answered(december);
		expect(sizing.headline).toMatch(/^It holds: never below \d+ % through 31 days from December 1$/);
		const results = resultsOf(december);
		// 60 W · 24 h · 0.4 + 20 W · 5 h, for 31 days.
		expect(results.demand).toBeCloseTo(31 * (60 * 24 * 0.4 + 100), 6);
		expect(results.unservedEnergy).toBe(0);
		expect(results.days).toBe(31);
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('the sun of the run is that of the topic solar, day for day in the mean', () => {
		const outcome = runTopic(solar, { place: 'Flagstaff', month: 12, panelW: 400 }, defaultContext);
		if (outcome.status !== 'answered') throw new Error('solar');
		const daily = outcome.sizing.results.find((one) => one.name === 'energyPerDay')?.value as number;
		expect((resultsOf(december).solar as number) / 31).toBeCloseTo(daily, 6);
	});

	test('the energy balance of the answer closes', () => {
		const check = answered(december).working.find((step) => step.label.startsWith('check'));
		expect(check?.value).toBe(0);
		const r = resultsOf(december) as Record<string, number>;
		const stored = ((r.endCharge as number) - 1) * 200 * 12.8 * 0.98;
		const inWh = (r.solar as number) + (r.engine as number) + (r.shore as number);
		const outWh =
			(r.demand as number) -
			(r.unservedEnergy as number) +
			stored +
			(r.lost as number) +
			(r.spilled as number);
		expect(inWh).toBeCloseTo(outWh, 4);
	});

	test('the smallest bank and array it names do keep the reserve, and a step less does not', () => {
		const r = resultsOf(december);
		const bankAh = r.smallestBank as number;
		const arrayW = r.smallestArray as number;
		const lowest = (given: Given) => resultsOf({ ...december, ...given }).lowestCharge as number;
		expect(lowest({ unitAh: bankAh })).toBeGreaterThanOrEqual(0.2);
		expect(lowest({ unitAh: bankAh - 10 })).toBeLessThan(0.2);
		expect(lowest({ panelW: arrayW })).toBeGreaterThanOrEqual(0.2);
		expect(lowest({ panelW: arrayW - 10 })).toBeLessThan(0.2);
	});

	test('the hours for drawing are those of the answer', () => {
		const hours = simulatedHours(december, defaultContext);
		if (hours === null) throw new Error('no hours');
		expect(hours.run.soc.length).toBe(31 * 24);
		expect(Math.min(...hours.run.soc)).toBe(resultsOf(december).lowestCharge);
		expect(hours).toMatchObject({ firstMonth: 12, days: 31, capacityAh: 200, arrayW: 400, reserve: 0.2 });
		expect(hours.powers.loadW.length).toBe(31 * 24);
		expect(simulatedHours({ panelW: 400 }, defaultContext)).toBeNull();
		// The same question gives the same hours.
		expect(simulatedHours(december, defaultContext)).toEqual(hours);
	});
});

describe('what is not named is found', () => {
	test('no bank: the smallest that keeps the reserve', () => {
		const given = { panelW: 600, place: 'Moab', month: 6, needWh: 1500 };
		expect(answered(given).headline).toMatch(/^\d+ Ah at 12 V keep 20 % through 30 days from June 1$/);
		expect(resultsOf(given).lowestCharge as number).toBeGreaterThanOrEqual(0.2);
	});

	test('a place but no array: the smallest array', () => {
		const given = { unitAh: 200, place: 'Denver', month: 1, needWh: 900 };
		expect(answered(given).headline).toMatch(/^\d+ W of panels keep 20 % in the bank/);
		expect(resultsOf(given).lowestCharge as number).toBeGreaterThanOrEqual(0.2);
	});

	test('driving alone carries it: no array is called for', () => {
		const given = { unitAh: 200, place: 'Denver', month: 1, needWh: 400, driveH: 3, alternatorA: 40 };
		expect(answered(given).headline).toMatch(/^It holds without solar/);
	});

	test('neither month nor period: a whole year', () => {
		const r = resultsOf({ unitAh: 200, panelW: 400, place: 'Denver', needWh: 700 });
		expect(r.days).toBe(365);
		expect(r.demand).toBeCloseTo(365 * 700, 4);
	});

	test('a period without a month begins in the one with the least sun', () => {
		const sizing = answered({ unitAh: 200, panelW: 400, place: 'Denver', needWh: 700, periodH: 240 });
		expect(sizing.assumed.find((one) => one.name === 'month')).toMatchObject({
			value: 'December',
			confirm: true,
		});
		expect(sizing.results.find((one) => one.name === 'days')?.value).toBe(10);
	});

	test('a lone power at a place is the array', () => {
		const sizing = answered({ unitAh: 300, place: 'Moab', month: 6, needWh: 1500, loads: [{ powerW: 600 }] });
		expect(sizing.assumed.find((one) => one.name === 'arrayW')).toMatchObject({ value: 600, confirm: true });
	});

	test('a stray number of days in the list is the period', () => {
		expect(resultsOf({ unitAh: 100, loads: [...loads, { durationH: 72 }] }).days).toBe(3);
		const mixed = {
			unitAh: 100,
			loads: [{ name: 'fridge', powerW: 45, durationH: 168, startH: 24, duty: 0.4 }],
		};
		expect(resultsOf(mixed)).toMatchObject({ days: 7 });
		expect(resultsOf(mixed).demand).toBeCloseTo(7 * 24 * 45 * 0.4, 6);
	});
});

describe('clock', () => {
	test('hours named are kept, round midnight too', () => {
		const shape = new Array<number>(24).fill(0);
		spread(shape, 100, 22.5, 4);
		expect(shape[22]).toBeCloseTo(12.5, 12);
		expect(shape[23]).toBeCloseTo(25, 12);
		expect(shape[1]).toBeCloseTo(25, 12);
		expect(shape[2]).toBeCloseTo(12.5, 12);
		expect(shape.reduce((sum, value) => sum + value, 0)).toBeCloseTo(100, 12);
	});

	test('a load begins when said', () => {
		const hours = simulatedHours(
			{ unitAh: 100, periodH: 24, loads: [{ name: 'thing', powerW: 48, durationH: 2, startH: 6 }] },
			defaultContext,
		);
		const on = [...(hours?.powers.loadW ?? [])].flatMap((value, hour) => (value > 0 ? [hour] : []));
		expect(on).toEqual([6, 7]);
	});

	test('the usual hours belong to loads of the table of typical loads', async () => {
		const names = typicalLoads.map((one) => one.name);
		const source = await import('../energy/day-shape.js');
		for (const name of Object.keys(source.usualStartH)) expect(names).toContain(name);
	});

	test('mains loads draw through the inverter, which idles all day', () => {
		const given = {
			unitAh: 200,
			periodH: 24,
			loads: [{ name: 'microwave', powerW: 1000, durationH: 0.5 }],
			inverterEfficiency: 0.8,
			inverterIdleW: 10,
		};
		expect(resultsOf(given).demand).toBeCloseTo(500 / 0.8 + 240, 6);
		expect(dayShape([], { efficiency: 1, idleW: 50 }).every((value) => value === 0)).toBe(true);
	});
});

describe('findings', () => {
	const cases: readonly (readonly [string, Given, Given])[] = [
		['loads-not-served', { unitAh: 50, panelW: 100, place: 'Seattle', month: 12, needWh: 800 }, december],
		['below-reserve', { ...december, unitAh: 100 }, december],
		['not-steady', { unitAh: 500, panelW: 100, place: 'Seattle', month: 12, needWh: 200 }, december],
		['sun-left-unused', { unitAh: 300, panelW: 600, place: 'Moab', month: 6, needWh: 500 }, december],
		['lithium-charge-below-freezing', { ...december, temperatureC: -5 }, december],
		['charge-over-limit', { ...december, chargeLimitA: 5 }, december],
		[
			'lead-acid-never-full',
			{ unitAh: 200, chemistry: 'agm', panelW: 100, place: 'Seattle', month: 12, needWh: 100 },
			december,
		],
		['mean-year', december, { unitAh: 100, needWh: 200, periodH: 48 }],
		['bank-very-large', { ...december, unitAh: 1200 }, december],
	];
	test.each(cases)('%s', (code, triggering, other) => {
		expect(codesOf(triggering)).toContain(code);
		expect(codesOf(other)).not.toContain(code);
	});

	test('a frozen lithium bank takes no charge at all', () => {
		const r = resultsOf({ ...december, temperatureC: -5 });
		expect(r.lost).toBe(0);
		expect(r.spilled as number).toBeGreaterThan(0);
		expect(r.endCharge as number).toBeLessThan(0.2);
	});

	test('an AGM bank keeps half, and shore power fills it', () => {
		const sizing = answered({ unitAh: 100, chemistry: 'agm', periodH: 168, loads, shoreH: 8, shoreA: 20 });
		expect(sizing.headline).toMatch(/^It holds/);
		expect(sizing.assumed.find((one) => one.name === 'reserve')?.value).toBe(0.5);
	});
});

describe('what is asked or refused', () => {
	test('loads, bank, place, hours', () => {
		expect(asked({ unitAh: 200, panelW: 400, place: 'Denver' })[0]?.question).toContain('Which loads run');
		expect(asked({ needWh: 500, place: 'Denver' })[0]?.name).toBe('unitAh');
		expect(asked({ unitAh: 200, panelW: 400, needWh: 500 })[0]?.name).toBe('place');
		expect(asked({ unitAh: 200, loads: [{ name: 'thingamajig', powerW: 30 }] })[0]?.question).toContain(
			'How many hours',
		);
		expect(asked({ ...december, place: 'Springfield' })[0]?.name).toBe('place');
	});

	test('contradictions', () => {
		expect(refused({ ...december, needWh: 500 })[0]).toMatchObject({ code: 'contradiction', field: 'loads' });
		expect(refused({ ...december, floor: 0.5 })[0]).toMatchObject({ code: 'contradiction', field: 'floor' });
		expect(refused({ ...december, startSoc: 0.1 })[0]).toMatchObject({
			code: 'contradiction',
			field: 'startSoc',
		});
		expect(refused({ ...december, bankV: 18 })[0]).toMatchObject({ field: 'bankV' });
		expect(refused({ panelW: 100, place: 'Seattle', needWh: 3000 })[0]).toMatchObject({ code: 'impossible' });
		expect(refused({ unitAh: 20, place: 'Barrow AK', month: 12, needWh: 3000 })[0]).toMatchObject({
			code: 'impossible',
			field: 'panelW',
		});
		expect(refused({ ...december, chemistry: 'agm', temperatureC: -35 })[0]).toMatchObject({
			code: 'not-covered',
		});
	});
});

test('a larger bank or array never leaves a lower charge, a larger load never a higher one', () => {
	const lowest = (given: Given) => resultsOf({ ...december, ...given }).lowestCharge as number;
	let last = 0;
	for (const unitAh of [60, 100, 150, 200, 300, 500]) {
		const now = lowest({ unitAh });
		expect(now).toBeGreaterThanOrEqual(last);
		last = now;
	}
	last = 0;
	for (const panelW of [100, 200, 300, 400, 600, 1000]) {
		const now = lowest({ panelW });
		expect(now).toBeGreaterThanOrEqual(last);
		last = now;
	}
	last = 1;
	for (const factor of [0.5, 1, 1.5, 2]) {
		const now = lowest({ loads: loads.map((load) => ({ ...load, powerW: load.powerW * factor })) });
		expect(now).toBeLessThanOrEqual(last);
		last = now;
	}
});
