import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Context, defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { sizingSchema } from '../topic/sizing.js';
import { solar } from './solar.js';

type Given = Readonly<Record<string, unknown>>;
const us = defaultContext;
const eu: Context = { region: 'eu', units: 'metric', language: 'en' };

function answered(given: Given, context = us) {
	const outcome = runTopic(solar, given, context);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

function refused(given: Given) {
	const outcome = runTopic(solar, given, us);
	if (outcome.status !== 'refused') throw new Error(JSON.stringify(outcome));
	return outcome.refusals;
}

function asked(given: Given) {
	const outcome = runTopic(solar, given, us);
	if (outcome.status !== 'needs-input') throw new Error(JSON.stringify(outcome));
	return outcome.missing;
}

const resultsOf = (given: Given) =>
	Object.fromEntries(answered(given).results.map((result) => [result.name, result.value]));
const codesOf = (given: Given) => answered(given).findings.map((one) => one.code);

const tucson = { place: 'Tucson', month: 12, panelW: 400 };

describe('what an array gives', () => {
	test('400 W flat in Tucson in December', () => {
		const sizing = answered(tucson);
		expect(sizing.headline).toBe('957 Wh a day = 79 Ah at 12 V in December');
		const results = resultsOf(tucson);
		// The flat panel's sun hours are the published mean daily global irradiation of the station.
		expect(results.sunHours).toBeCloseTo(3.202, 3);
		expect(results.worstMonth).toBe('December');
		// Direct current after heat and glass, times 0.9132 losses, 0.97 shade, 0.95 controller.
		const dc = sizing.working.find((step) => step.label === 'energy from the panels')?.value as number;
		expect(results.energyPerDay).toBeCloseTo(dc * (1 - 0.0867856) * 0.97 * 0.95, 1);
		expect(results.chargePerDay).toBeCloseTo((results.energyPerDay as number) / 12, 9);
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('no array: the sun and what each 100 W gives', () => {
		const sizing = answered({ place: 'Flagstaff', month: 3 });
		expect(sizing.headline).toBe('March: 4.67 kWh/m² of sun a day, 367 Wh from each 100 W');
		expect(sizing.assumed.find((one) => one.name === 'arrayW')).toMatchObject({ value: 100, confirm: true });
		expect(answered({ place: 'Flagstaff' }).headline).toMatch(/^Worst month December: /);
	});

	test('no month: the worst one counts, the year stands beside it', () => {
		const sizing = answered({ place: 'Tucson', panelW: 400 });
		expect(sizing.headline).toBe('Worst month December: 957 Wh a day = 79 Ah at 12 V');
		expect(sizing.results.filter((result) => /^energyPerDay[A-Z]/.test(result.name)).length).toBe(12);
		expect(sizing.assumed.find((one) => one.name === 'month')?.value).toBe('December');
	});

	test('panels times their number is the array; 24 V halves the charge', () => {
		const two = resultsOf({ place: 'Tucson', month: 12, panelW: 200, panels: 2 });
		expect(two.arrayPower).toBe(400);
		expect(two.energyPerDay).toBeCloseTo(resultsOf(tucson).energyPerDay as number, 9);
		const half = resultsOf({ ...tucson, bankV: 24 });
		expect(half.chargePerDay).toBeCloseTo((two.chargePerDay as number) / 2, 9);
	});

	test('the worst month and the other tilt stand beside it', () => {
		const { neighbours } = answered({ place: 'Flagstaff', month: 3, panelW: 400 });
		expect(neighbours.map((one) => one.choice)).toEqual(['December', 'tilted 30° to the noon sun']);
	});

	test('metric habit shows kilometres, American habit miles', () => {
		const station = (context: Context) =>
			answered(tucson, context).assumed.find((one) => one.name === 'placeStation')?.why;
		expect(station(us)).toMatch(/ mi from Tucson, AZ$/);
		expect(station(eu)).toMatch(/ km from Tucson, AZ$/);
	});

	test('a tilted array is taken to face the noon sun, and says so', () => {
		const south = answered({ ...tucson, tiltDeg: 30 });
		expect(south.assumed.find((one) => one.name === 'facing')).toMatchObject({
			value: 'south',
			confirm: true,
		});
		const north = resultsOf({ ...tucson, tiltDeg: 30, facing: 'north' });
		expect(north.energyPerDay as number).toBeLessThan(
			0.6 * (resultsOf({ ...tucson, tiltDeg: 30 }).energyPerDay as number),
		);
		expect(
			answered({ place: 'Auckland New Zealand', month: 6, panelW: 100, tiltDeg: 30 }).assumed.find(
				(one) => one.name === 'facing',
			)?.value,
		).toBe('north');
	});
});

describe('what a need takes', () => {
	test('an array in whole steps of 10 W that covers it, and 10 W less does not', () => {
		const need = { place: 'Denver', month: 1, needWh: 1500 };
		const results = resultsOf(need);
		const neededW = results.arrayNeeded as number;
		expect(neededW % 10).toBe(0);
		const yieldOf = (panelW: number) =>
			resultsOf({ place: 'Denver', month: 1, panelW }).energyPerDay as number;
		expect(yieldOf(neededW)).toBeGreaterThanOrEqual(1500);
		expect(yieldOf(neededW - 10)).toBeLessThan(1500);
		expect(answered(need).headline).toBe(`${neededW} W of panels for 1.5 kWh a day in January`);
	});

	test('a need in amp-hours is taken at the bank voltage', () => {
		expect(resultsOf({ place: 'Denver', month: 1, needAh: 125 }).arrayNeeded).toBe(
			resultsOf({ place: 'Denver', month: 1, needWh: 1500 }).arrayNeeded,
		);
	});

	test('array and need: enough or short, with the share covered', () => {
		expect(answered({ ...tucson, needWh: 900 }).headline).toMatch(/^Enough in December/);
		expect(codesOf({ ...tucson, needWh: 900 })).not.toContain('need-not-covered');
		const short = { ...tucson, needWh: 1200 };
		expect(answered(short).headline).toMatch(/^Short in December/);
		expect(codesOf(short)).toContain('need-not-covered');
		expect(resultsOf(short).needCovered).toBeCloseTo((resultsOf(tucson).energyPerDay as number) / 1200, 9);
	});
});

describe('findings', () => {
	const cases: readonly (readonly [string, Given, Given])[] = [
		['next-to-no-sun', { place: 'Fairbanks', month: 12, panelW: 400 }, tucson],
		['days-vary', tucson, { place: 'Fairbanks', month: 12, panelW: 400 }],
		['shade-takes-strings', { ...tucson, shading: 0.2 }, tucson],
		['snow-not-counted', { place: 'Minneapolis', month: 1, panelW: 400 }, tucson],
		['glued-runs-hot', { ...tucson, glued: true }, tucson],
		[
			'array-larger-than-roof',
			{ place: 'Seattle', month: 12, needWh: 2000 },
			{ place: 'Tucson', month: 6, needWh: 1000 },
		],
		['need-not-covered', { ...tucson, needWh: 5000 }, { ...tucson, needWh: 100 }],
		['station-far', { place: 'Yellowstone', month: 7, panelW: 100 }, tucson],
	];
	test.each(cases)('%s', (code, triggering, other) => {
		expect(codesOf(triggering)).toContain(code);
		expect(codesOf(other)).not.toContain(code);
	});

	test('no finding of snow on steep panels', () => {
		expect(codesOf({ place: 'Minneapolis', month: 1, panelW: 400, tiltDeg: 45 })).not.toContain(
			'snow-not-counted',
		);
	});

	test('panels are live in daylight: always said', () => {
		expect(answered(tucson).cautions.join(' ')).toContain('live whenever light falls');
	});

	test('an answer for a Canadian station says that its swing is assumed and its diffuse part reckoned', () => {
		const sizing = answered({ place: 'Calgary', month: 6, panelW: 100 });
		expect(sizing.assumed.some((one) => one.name === 'dailySwing')).toBe(true);
		expect(sizing.working.some((step) => step.source.includes('Erbs'))).toBe(true);
	});
});

describe('what is asked or refused', () => {
	test('no place, no array', () => {
		expect(asked({ panelW: 400 }).map((one) => one.name)).toEqual(['place']);
	});

	test('a place of many, an unknown one, a state: which is meant, with three names', () => {
		expect(asked({ place: 'Springfield', panelW: 100 })[0]?.question).toBe(
			'Which "Springfield" is meant: "Springfield, MO", "Springfield, MA", "Springfield, IL"?',
		);
		expect(asked({ place: 'Zorgville', panelW: 100 })[0]?.question).toContain(
			'I have no climate for "Zorgville"',
		);
		expect(asked({ place: 'Utah', panelW: 100 })[0]?.question).toContain('Which town in "Utah"');
		expect(asked({ place: '0,-30', panelW: 100 })[0]?.question).toContain('within 300 km');
	});

	test('contradictions and impossible inputs name the field', () => {
		expect(refused({ place: 'Tucson', panelW: 200, panels: 3, arrayW: 400 })[0]).toMatchObject({
			code: 'contradiction',
			field: 'arrayW',
		});
		expect(refused({ ...tucson, needWh: 1000, needAh: 10 })[0]).toMatchObject({
			code: 'contradiction',
			field: 'needAh',
		});
		expect(refused({ ...tucson, shading: 1 })[0]).toMatchObject({ code: 'impossible', field: 'shading' });
		expect(refused({ ...tucson, bankV: 18 })[0]).toMatchObject({ code: 'out-of-range', field: 'bankV' });
		expect(refused({ ...tucson, month: 13 })[0]).toMatchObject({ field: 'month' });
		expect(refused({ place: 'Barrow AK', month: 12, needWh: 500 })[0]).toMatchObject({
			code: 'impossible',
			field: 'month',
		});
	});
});

test('more need never takes a smaller array, in any month', () => {
	fc.assert(
		fc.property(
			fc.constantFrom('Tucson', 'Seattle', 'Munich', 'Denver'),
			fc.integer({ min: 1, max: 12 }),
			fc.double({ min: 50, max: 3000, noNaN: true }),
			fc.double({ min: 1, max: 3, noNaN: true }),
			(place, month, needWh, factor) => {
				const small = resultsOf({ place, month, needWh }).arrayNeeded as number;
				const large = resultsOf({ place, month, needWh: needWh * factor }).arrayNeeded as number;
				expect(large).toBeGreaterThanOrEqual(small);
			},
		),
		{ numRuns: 40 },
	);
});
