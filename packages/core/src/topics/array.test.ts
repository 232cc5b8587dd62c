import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coldFactor } from '../solar/strings.js';
import { type Context, defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { sizingSchema } from '../topic/sizing.js';
import { array } from './array.js';

type Given = Readonly<Record<string, unknown>>;
const us = defaultContext;
const eu: Context = { region: 'eu', units: 'metric', language: 'en' };

function answered(given: Given, context = us) {
	const outcome = runTopic(array, given, context);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

function refused(given: Given) {
	const outcome = runTopic(array, given, us);
	if (outcome.status !== 'refused') throw new Error(JSON.stringify(outcome));
	return outcome.refusals;
}

function asked(given: Given) {
	const outcome = runTopic(array, given, us);
	if (outcome.status !== 'needs-input') throw new Error(JSON.stringify(outcome));
	return outcome.missing;
}

const resultsOf = (given: Given) =>
	Object.fromEntries(answered(given).results.map((result) => [result.name, result.value]));
const codesOf = (given: Given) => answered(given).findings.map((one) => one.code);
const severityOf = (given: Given, code: string) =>
	answered(given).findings.find((one) => one.code === code)?.severity;

const four = {
	panels: 4,
	panelW: 200,
	vocV: 22.5,
	vmpV: 18.9,
	iscA: 11.4,
	lowC: -20,
	controllerV: 100,
	controllerA: 60,
};

describe('strings', () => {
	test('the worked example of the coefficient method: 14 in series of 49.5 V at −10 °C', () => {
		const given = {
			series: 14,
			panelW: 400,
			vocV: 49.5,
			vocPerK: -0.0027,
			lowC: -10,
			bankV: 48,
			controllerV: 1000,
		};
		expect(resultsOf(given).coldVoltage).toBeCloseTo(758.5, 1);
		// The sign of a coefficient typed without its minus is the same.
		expect(resultsOf({ ...given, vocPerK: 0.0027 }).coldVoltage).toBeCloseTo(758.5, 1);
	});

	test('the table method where no coefficient is named', () => {
		const results = resultsOf(four);
		// NEC Table 690.7(A): −16 to −20 °C, 1.18.
		expect(results.coldVoltage).toBeCloseTo((results.series as number) * 22.5 * 1.18, 9);
		expect(results.mostInSeries).toBe(3);
		expect(answered(four).because).toContain('NEC Table 690.7(A)');
	});

	test('the layout: fewest in series that charge in the heat, at most two strings', () => {
		expect(answered(four).headline).toBe(
			"2 in series, 2 in parallel: 53.1 V cold, within the controller's 100 V",
		);
		expect(resultsOf({ ...four, panels: 1 })).toMatchObject({ series: 1, parallel: 1 });
		expect(resultsOf({ ...four, panels: 6, controllerV: 150 })).toMatchObject({ series: 3, parallel: 2 });
		// Six in series would be too high: three strings it is.
		expect(resultsOf({ ...four, panels: 6, controllerV: 60 })).toMatchObject({ series: 2, parallel: 3 });
	});

	test('a named layout is judged as it is', () => {
		expect(resultsOf({ ...four, series: 4 })).toMatchObject({ series: 4, parallel: 1 });
		expect(resultsOf({ ...four, parallel: 4 })).toMatchObject({ series: 1, parallel: 4 });
		expect(resultsOf({ ...four, joined: 'series' })).toMatchObject({ series: 4, parallel: 1 });
		expect(resultsOf({ ...four, joined: 'parallel' })).toMatchObject({ series: 1, parallel: 4 });
		// Numbers count more than the words beside them.
		expect(resultsOf({ ...four, series: 2, joined: 'series' })).toMatchObject({ series: 2, parallel: 2 });
		expect(resultsOf({ series: 2, parallel: 3, panelW: 200, vocV: 22.5, lowC: 0 })).toMatchObject({
			series: 2,
			parallel: 3,
		});
	});

	test('currents: 125 %, 156.25 %, and the fuses', () => {
		const results = resultsOf(four);
		expect(results.shortCircuitCurrent).toBeCloseTo(1.25 * 2 * 11.4, 9);
		expect(results.conductorCurrent).toBeCloseTo(1.5625 * 2 * 11.4, 9);
		expect(results.controllerCurrent).toBeCloseTo(800 / 12, 9);
		expect(results.outputFuse).toBe(80);
	});

	test('voltages alone are enough for the cold', () => {
		const sizing = answered({ series: 3, vocV: 24, controllerV: 75, place: 'Flagstaff' });
		expect(sizing.headline).toMatch(/^Too high: 8\d\.\d V cold on a 75 V controller; 2 in series at most$/);
		expect(sizing.results.some((result) => result.name === 'shortCircuitCurrent')).toBe(false);
	});

	test('the record low of the place counts, and is named with its station', () => {
		const sizing = answered({ panels: 2, panelW: 200, vocV: 22.5, iscA: 11, place: 'Denver' });
		const low = sizing.assumed.find((one) => one.name === 'lowC');
		expect(low).toMatchObject({ confirm: true });
		expect(low?.why).toContain("mean of each year's lowest hour at");
		expect(low?.value as number).toBeLessThan(-20);
		expect(sizing.sources.join(' ')).toContain('ASHRAE Handbook of Fundamentals');
	});

	test('only watts known: the usual voltages, all marked to be confirmed', () => {
		const sizing = answered({ panels: 2, panelW: 200, lowC: -10 });
		for (const name of ['cells', 'vocV', 'vmpV', 'iscA', 'series']) {
			expect(
				sizing.assumed.find((one) => one.name === name),
				name,
			).toMatchObject({ confirm: true });
		}
		expect(resultsOf({ panels: 2, panelW: 200, lowC: -10, cells: 'cells72' }).coldVoltage).toBeGreaterThan(
			50,
		);
	});

	test('the roof run is sized by the wire topic for the current of the strings', () => {
		const sizing = answered({ ...four, lengthM: 5 });
		expect(sizing.chain.map((one) => one.topic)).toEqual(['wire']);
		const current = sizing.chain[0]?.results.find((one) => one.name === 'current')?.value;
		expect(current).toBeCloseTo(1.25 * 2 * 11.4, 9);
		expect(sizing.results.find((one) => one.name === 'roofConductor')?.value).toMatch(/AWG$/);
		expect(
			answered({ ...four, lengthM: 5 }, eu).results.find((one) => one.name === 'roofConductor')?.value,
		).toMatch(/mm²$/);
	});

	test('above 60 V the run keeps its drop in volts', () => {
		const long = { series: 4, panelW: 200, vocV: 40, vmpV: 33, iscA: 6.5, lowC: 0, lengthM: 8 };
		const results = resultsOf(long);
		expect(results.hotVoltage as number).toBeGreaterThan(60);
		expect(results.roofDrop as number).toBeLessThanOrEqual(0.03 * (results.hotVoltage as number) + 1e-9);
	});

	test('the record is whole', () => {
		const sizing = answered({ ...four, lengthM: 5 });
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
		expect(sizing.cautions.join(' ')).toContain('live whenever light falls');
	});
});

describe('findings', () => {
	const base = { ...four };
	const cases: readonly (readonly [string, Given, Given])[] = [
		['string-over-controller', { ...base, series: 4, controllerV: 100 }, base],
		['string-near-limit', { ...base, controllerV: 54 }, base],
		['too-low-in-heat', { ...base, series: 1, parallel: 4 }, base],
		['touch-voltage', { ...base, series: 4, controllerV: 150 }, base],
		['pwm-wastes', { ...base, controller: 'pwm', series: 2, controllerA: 100 }, base],
		[
			'controller-overloaded',
			{ ...base, controller: 'pwm', series: 1, parallel: 4, controllerA: 30 },
			{ ...base, controllerA: 30 },
		],
		['controller-limits', { ...base, controllerA: 30 }, { ...base, controllerA: 70 }],
		['string-fuses-needed', { ...base, series: 1, parallel: 4 }, base],
		[
			'roof-run-not-sized',
			{ ...base, series: 1, parallel: 4, iscA: 14, panels: 4, lengthM: 50, dropLimit: 0.001 },
			{ ...base, lengthM: 5 },
		],
	];
	test.each(cases)('%s', (code, triggering, other) => {
		expect(codesOf(triggering)).toContain(code);
		expect(codesOf(other)).not.toContain(code);
	});

	test('a string over the controller is a danger, with the temperature at which it passes', () => {
		const given = { ...base, series: 4, controllerV: 100 };
		const finding = answered(given).findings.find((one) => one.code === 'string-over-controller');
		expect(finding?.severity).toBe('danger');
		// 100 / (4 · 22.5) = 1.111: the table gives 1.10 down to 0 °C.
		expect(finding?.text).toContain('It would pass only above 32 °F');
		expect(finding?.text).toContain('At most 3 in series');
		expect(answered(given).headline).toBe(
			'Too high: 106.2 V cold on a 100 V controller; 3 in series at most',
		);
		const metric = answered(given, eu).findings.find((one) => one.code === 'string-over-controller');
		expect(metric?.text).toContain('only above 0 °C');
	});

	test('over 120 V the shock is a danger, between 60 and 120 V a warning', () => {
		expect(severityOf({ ...base, series: 4, controllerV: 150 }, 'touch-voltage')).toBe('warning');
		expect(
			severityOf(
				{ panels: 6, series: 6, panelW: 200, vocV: 22.5, lowC: -20, controllerV: 250 },
				'touch-voltage',
			),
		).toBe('danger');
	});
});

describe('what is asked or refused', () => {
	test('place or low, panel', () => {
		expect(asked({ panelW: 200 })[0]?.question).toContain('coldest place');
		expect(asked({ place: 'Denver' })[0]?.question).toContain('What panels');
		expect(asked({ vocV: 22.5, lowC: 0, lengthM: 5 })[0]?.name).toBe('panelW');
		expect(asked({ panelW: 200, place: 'Springfield' })[0]?.name).toBe('place');
	});

	test('figures that no panel has', () => {
		expect(refused({ ...four, vmpV: 23 })[0]).toMatchObject({ code: 'contradiction', field: 'vmpV' });
		expect(refused({ ...four, impA: 12 })[0]).toMatchObject({ code: 'contradiction', field: 'impA' });
		expect(refused({ ...four, iscA: 30 })[0]).toMatchObject({ code: 'contradiction', field: 'panelW' });
		expect(refused({ ...four, series: 3 })[0]).toMatchObject({ code: 'contradiction', field: 'series' });
		expect(refused({ ...four, bankV: 18 })[0]).toMatchObject({ code: 'out-of-range', field: 'bankV' });
		expect(refused({ ...four, vocV: 0 })[0]).toMatchObject({ code: 'out-of-range', field: 'vocV' });
	});
});

test('an answer that calls a string fit never breaks the limit at the record low, and says danger where it does', () => {
	fc.assert(
		fc.property(
			fc.integer({ min: 1, max: 8 }),
			fc.double({ min: 18, max: 50, noNaN: true }),
			fc.double({ min: -45, max: 10, noNaN: true }),
			fc.double({ min: 40, max: 250, noNaN: true }),
			fc.option(fc.double({ min: -0.004, max: -0.002, noNaN: true }), { nil: undefined }),
			(panels, vocV, lowC, controllerV, vocPerK) => {
				const given = {
					panels,
					panelW: vocV * 8,
					vocV,
					iscA: 10,
					lowC,
					controllerV,
					bankV: 12,
					...(vocPerK === undefined ? {} : { vocPerK }),
				};
				const sizing = answered(given);
				const series = sizing.results.find((one) => one.name === 'series')?.value as number;
				const coldV = vocV * series * coldFactor(lowC, vocPerK ?? null).factor;
				const over = coldV > controllerV;
				expect(sizing.findings.some((one) => one.code === 'string-over-controller')).toBe(over);
				expect(sizing.headline.startsWith('Too high')).toBe(over);
				// A layout of our own choosing is only over where not even one panel fits.
				if (over) expect(series).toBe(1);
			},
		),
		{ numRuns: 200 },
	);
});
