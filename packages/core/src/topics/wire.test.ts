import { describe, expect, test } from 'vitest';
import { type Context, defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { sizingSchema } from '../topic/sizing.js';
import { wire } from './wire.js';

type Given = Readonly<Record<string, unknown>>;
const us = defaultContext;
const eu: Context = { region: 'eu', units: 'metric', language: 'en' };
const feet = (count: number) => count * 0.3048;

function answered(given: Given, context = us) {
	const outcome = runTopic(wire, given, context);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

function refused(given: Given, context = us) {
	const outcome = runTopic(wire, given, context);
	if (outcome.status !== 'refused') throw new Error(JSON.stringify(outcome));
	return outcome.refusals;
}

const resultsOf = (given: Given, context = us) =>
	Object.fromEntries(answered(given, context).results.map((result) => [result.name, result.value]));

const codesOf = (given: Given, context = us) => answered(given, context).findings.map((one) => one.code);

const typical = { currentA: 40, voltageV: 12, lengthM: feet(15) };

describe('the drop as it is shown', () => {
	const shown = (text: string) => Number(/([\d.]+) %/.exec(text)?.[1]);
	// Lengths a hair apart, on both sides of the length at which a 4 AWG run reaches its limit.
	const lengths = Array.from({ length: 240 }, (_, step) => feet(16 + step * 0.005));

	test('is never smaller than the drop is, and above its limit never shown as at it', () => {
		let [within, beyond] = [0, 0];
		for (const lengthM of lengths) {
			const sizing = answered({ ...typical, lengthM, size: '4 AWG' });
			const result = (name: string) => sizing.results.find((one) => one.name === name);
			const percent = Number(result('dropPercent')?.value);
			const tells = /Drop ([\d.]+) V = ([\d.]+) % \(limit ([\d.]+) %\)/.exec(sizing.because ?? '');
			expect(tells, sizing.because ?? '').not.toBeNull();
			const [volts, share, limit] = (tells ?? []).slice(1).map(Number) as [number, number, number];
			expect(limit).toBe(3);
			expect(share).toBeGreaterThanOrEqual(percent - 1e-9);
			expect(volts).toBeGreaterThanOrEqual(Number(result('drop')?.value) - 1e-9);
			expect(shown(result('dropPercent')?.text ?? '')).toBeGreaterThanOrEqual(percent - 1e-9);
			if (percent > limit + 1e-7) {
				expect(share).toBeGreaterThan(limit);
				expect(shown(result('dropPercent')?.text ?? '')).toBeGreaterThan(limit);
				beyond += 1;
			} else within += 1;
		}
		expect(Math.min(within, beyond)).toBeGreaterThan(10);
	});

	test('a limit is shown as it was asked for, not rounded up', () => {
		expect(answered({ ...typical, dropLimit: 0.0296 }).because).toContain('(limit 2.96 %)');
	});
});

describe('what is chosen', () => {
	test('40 A, 12 V, 15 ft: the drop decides', () => {
		const sizing = answered(typical);
		expect(sizing.headline).toBe('4 AWG copper, 50 A fuse at the source end');
		expect(sizing.governedBy).toBe('voltage drop');
		expect(sizing.because).toMatch(/^Drop 0\.\d+ V = 2\.\d % \(limit 3 %\)/);
		expect(sizing.neighbours[0]).toMatchObject({ choice: '6 AWG', passes: false });
		expect(sizing.neighbours[1]).toMatchObject({ choice: '2 AWG', passes: true });
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('short and heavy: heat decides', () => {
		const sizing = answered({ currentA: 200, voltageV: 24, lengthM: 1 });
		expect(sizing.governedBy).toBe('ampacity');
		expect(sizing.because).toContain('for the drop alone');
	});

	test('short and between two ratings: the device decides', () => {
		// 12 AWG carries 45 A in free air but may have a 20 A device at most.
		const sizing = answered({ currentA: 22, voltageV: 48, lengthM: 1, continuous: false });
		expect(sizing.governedBy).toBe('protection');
		expect(sizing.headline).toBe('10 AWG copper, 25 A fuse at the source end');
	});

	test('hardly any current: the smallest size allowed', () => {
		const sizing = answered({ currentA: 0.5, voltageV: 12, lengthM: 1 });
		expect(sizing.governedBy).toBe('smallest size allowed');
		expect(sizing.headline).toMatch(/^16 AWG/);
		expect(answered({ currentA: 0.5, voltageV: 12, lengthM: 1 }, eu).headline).toMatch(/^1 mm²/);
		expect(answered({ currentA: 0.5, voltageV: 230, lengthM: 1 }, eu).headline).toMatch(
			/^1\.5 mm² copper, 6 A breaker/,
		);
	});

	test('30 A shore inlet: 10 AWG and a breaker of 30 A, no 125 % on a rating', () => {
		const sizing = answered({ currentA: 30, voltageV: 120, lengthM: feet(18), isRating: true });
		expect(sizing.headline).toBe('10 AWG copper, 30 A breaker');
		expect(sizing.findings.map((one) => one.code)).toEqual(['rating-not-load']);
		expect(sizing.findings[0]?.text).toContain('24 A');
	});

	test('power of an inverter counts its loss', () => {
		const sizing = answered({ powerW: 2000, voltageV: 12, lengthM: feet(4), load: 'inverter' });
		const current = sizing.results.find((result) => result.name === 'current')?.value;
		expect(current).toBeCloseTo(2000 / 12 / 0.85, 9);
		expect(sizing.assumed.find((one) => one.name === 'efficiency')).toMatchObject({
			value: 0.85,
			confirm: true,
		});
		expect(sizing.working[0]?.label).toBe('load current');
	});

	test('power and current that agree are both taken', () => {
		expect(resultsOf({ ...typical, powerW: 500 }).current).toBe(40);
	});

	test('parallel conductors share in name, device and warning', () => {
		const sizing = answered({ currentA: 400, voltageV: 24, lengthM: 2, parallel: 2 });
		expect(sizing.headline).toMatch(/^2 x \d\/0 AWG copper, 500 A fuse/);
		expect(sizing.findings.map((one) => one.code)).toContain('parallel-conductors');
		expect(sizing.cautions.some((text) => text.startsWith('Each parallel conductor'))).toBe(true);
	});

	test('on mains no thin conductors in parallel', () => {
		const sizing = answered({ currentA: 16, voltageV: 230, lengthM: 5, parallel: 2 }, eu);
		expect(sizing.headline).toMatch(/^2 x 50 mm²/);
		expect(sizing.because).toContain('thinnest conductor allowed in parallel');
		expect(sizing.findings.map((one) => one.code)).not.toContain('parallel-too-thin');
	});

	test('tinned, hot and bundled each need no less copper', () => {
		const area = (given: Given) => Number(resultsOf({ ...typical, ...given }).conductorAreaMm2);
		expect(area({ engineBay: true })).toBeGreaterThanOrEqual(area({}));
		expect(area({ bundled: 25, dropLimit: 0.1 })).toBeGreaterThan(area({ dropLimit: 0.1 }));
		expect(Number(resultsOf({ ...typical, tinned: true }).drop)).toBeGreaterThan(
			Number(resultsOf(typical).drop),
		);
	});
});

describe('the figures hang together', () => {
	test('drop, share, voltage at the load, loss', () => {
		const results = resultsOf(typical) as Record<string, number>;
		expect(results.dropPercent).toBeCloseTo(((results.drop ?? 0) / 12) * 100, 9);
		expect(results.voltageAtLoad).toBeCloseTo(12 - (results.drop ?? 0), 9);
		expect(results.loss).toBeCloseTo((results.drop ?? 0) * 40, 9);
	});

	test('4 AWG by hand: 0.308 ohm/kft at 75 °C brought to its temperature', () => {
		const results = resultsOf(typical) as Record<string, number>;
		const conductorC = 30 + 75 * (40 / 160) ** 2;
		expect(results.conductorTemperature).toBeCloseTo(conductorC, 9);
		const ohm = (0.308 / 1000) * 30 * ((1 + 0.00393 * (conductorC - 20)) / (1 + 0.00393 * 55));
		expect(results.drop).toBeCloseTo(40 * ohm, 9);
	});

	test('the tipping values hold and are the last that do', () => {
		const { tipping, headline } = answered(typical);
		for (const { name, value } of tipping) {
			expect(resultsOf({ ...typical, [name]: value * 0.999, size: '4 AWG' }).verdict, name).toBe('enough');
			expect(resultsOf({ ...typical, [name]: value * 1.001, size: '4 AWG' }).verdict, name).toBe('too thin');
		}
		expect(headline).toContain('4 AWG');
		expect(tipping).toHaveLength(2);
	});

	test('what was taken for granted is listed', () => {
		const names = answered({ currentA: 5, lengthM: 3 }).assumed.map((one) => one.name);
		expect(names).toEqual(
			expect.arrayContaining([
				'voltageV',
				'dropLimit',
				'insulationC',
				'ambientC',
				'bundled',
				'routing',
				'continuous',
			]),
		);
	});
});

describe('a named size', () => {
	test('enough', () => {
		const sizing = answered({ currentA: 20, voltageV: 24, lengthM: 3.5, size: '35 mm²' }, eu);
		expect(sizing.headline).toBe('35 mm² is enough: 25 A fuse or breaker at the source end');
		expect(sizing.neighbours[0]?.text).toContain('would do');
	});

	test('too thin for the drop: a warning and the size that does it', () => {
		const sizing = answered({ ...typical, size: '8 AWG' });
		expect(sizing.headline).toBe('8 AWG is too thin: take 4 AWG with a 50 A device');
		expect(sizing.findings).toMatchObject([{ code: 'drop-over-limit', severity: 'warning' }]);
		expect(sizing.governedBy).toBe('voltage drop');
	});

	test('too thin for the heat: a danger', () => {
		const sizing = answered({ ...typical, size: '16 AWG' });
		expect(sizing.findings[0]).toMatchObject({ code: 'conductor-overloaded', severity: 'danger' });
	});

	test('carries the load but no device fits: a danger that names the device', () => {
		const sizing = answered({ currentA: 22, voltageV: 48, lengthM: 1, continuous: false, size: '12 AWG' });
		expect(sizing.findings[0]).toMatchObject({ code: 'conductor-overloaded', severity: 'danger' });
		expect(sizing.findings[0]?.text).toContain('no standard device');
	});

	test('thinner than the rules allow', () => {
		const sizing = answered({ currentA: 0.5, voltageV: 12, lengthM: 1, size: '18 AWG' });
		expect(sizing.findings[0]).toMatchObject({ code: 'thinner-than-allowed', severity: 'warning' });
		expect(sizing.governedBy).toBe('smallest size allowed');
	});

	test('thin conductors in parallel on mains are judged too thin, with the danger', () => {
		const sizing = answered({ currentA: 16, voltageV: 120, lengthM: 5, parallel: 2, size: '4 AWG' });
		expect(sizing.results.find((result) => result.name === 'verdict')?.value).toBe('too thin');
		expect(sizing.findings[0]).toMatchObject({ code: 'parallel-too-thin', severity: 'danger' });
		expect(codesOf({ currentA: 16, voltageV: 120, lengthM: 5, parallel: 2, size: '1/0 AWG' })).not.toContain(
			'parallel-too-thin',
		);
	});

	test('a size of the other series is judged at its area and by its own resistance', () => {
		expect(resultsOf({ currentA: 20, voltageV: 24, lengthM: 3.5, size: '35 mm²' }).verdict).toBe('enough');
		// 6 mm² lies between 10 and 8 AWG: the 30 A limit of 10 AWG holds for it.
		expect(
			resultsOf({ currentA: 31, voltageV: 24, lengthM: 1, continuous: false, size: '6 mm²' }).verdict,
		).toBe('too thin');
		expect(
			resultsOf({ currentA: 29, voltageV: 24, lengthM: 1, continuous: false, size: '6 mm²' }).verdict,
		).toBe('enough');
		expect(resultsOf({ currentA: 20, voltageV: 230, lengthM: 3, size: '8 AWG' }, eu).verdict).toBe('enough');
	});

	test('a size of the tables that shops seldom stock is taken when named', () => {
		expect(resultsOf({ ...typical, size: '3 AWG' }).verdict).toBe('enough');
	});

	test('an unknown size is refused with those that exist', () => {
		expect(refused({ ...typical, size: '7 AWG' })[0]).toMatchObject({ code: 'out-of-range', field: 'size' });
	});

	test('a table without a value for it says so', () => {
		const [refusal] = refused({ currentA: 1, voltageV: 120, lengthM: 1, insulationC: 60, size: '18 AWG' });
		expect(refusal).toMatchObject({ code: 'not-covered', field: 'size' });
	});
});

describe('findings come when they should and not otherwise', () => {
	test.each<[string, Given, Given]>([
		[
			'rating-not-load',
			{ currentA: 30, voltageV: 120, lengthM: 4, isRating: true },
			{ currentA: 30, voltageV: 120, lengthM: 4 },
		],
		['motor-start', { ...typical, motor: true }, typical],
		['parallel-conductors', { ...typical, parallel: 2 }, typical],
		['drop-limit-high', { ...typical, dropLimit: 0.15 }, { ...typical, dropLimit: 0.1 }],
		[
			'inverter-low-battery',
			{ powerW: 1000, voltageV: 12, lengthM: 1, load: 'inverter' },
			{ powerW: 1000, voltageV: 12, lengthM: 1, load: 'heater' },
		],
	])('%s', (code, given, without) => {
		expect(codesOf(given)).toContain(code);
		expect(codesOf(without)).not.toContain(code);
	});

	test('an inverter whose low-battery current passes the fuse is warned of', () => {
		const severity = (given: Given) =>
			answered(given).findings.find((one) => one.code === 'inverter-low-battery')?.severity;
		const inverter = { powerW: 1000, voltageV: 12, lengthM: 1, load: 'inverter' };
		expect(severity(inverter)).toBe('note');
		expect(severity({ ...inverter, powerW: 1010, continuous: false })).toBe('warning');
	});

	test('cautions fit the supply', () => {
		expect(answered(typical).cautions[0]).toContain('source end');
		expect(answered({ currentA: 10, voltageV: 120, lengthM: 3 }).cautions[0]).toContain(
			'licensed electrician',
		);
	});
});

describe('what is refused', () => {
	test.each<[string, Given, string, string | null, RegExp]>([
		['aluminium', { ...typical, material: 'aluminium' }, 'not-covered', 'material', /copper only/],
		[
			'high direct current',
			{ ...typical, voltageV: 120, supply: 'dc' },
			'not-covered',
			'voltageV',
			/120 V direct current/,
		],
		['neither battery nor mains', { ...typical, voltageV: 80 }, 'out-of-range', 'voltageV', /80 V/],
		['mains of 12 V', { ...typical, supply: 'mains' }, 'out-of-range', 'voltageV', /12 V/],
		['40 A and 100 W', { ...typical, powerW: 100 }, 'contradiction', 'currentA', /40 A and 100 W at 12 V/],
		['too much power', { powerW: 90_000, voltageV: 12, lengthM: 1 }, 'out-of-range', 'powerW', /7500 A/],
		[
			'hotter than the insulation',
			{ ...typical, insulationC: 60, ambientC: 70 },
			'impossible',
			'ambientC',
			/carries nothing/,
		],
		[
			'no size does it',
			{ currentA: 400, voltageV: 12, lengthM: 50 },
			'impossible',
			null,
			/No single conductor/,
		],
		['900 V', { ...typical, voltageV: 900 }, 'out-of-range', 'voltageV', /900 V/],
		['no length', { ...typical, lengthM: 0 }, 'out-of-range', 'lengthM', /0 ft/],
	])('%s', (_, given, code, field, text) => {
		const [refusal] = refused(given);
		expect(refusal).toMatchObject({ code, field });
		expect(refusal?.text).toMatch(text);
		expect(refusal?.instead.length).toBeGreaterThan(10);
	});

	test('current or power and the length are asked for', () => {
		const outcome = runTopic(wire, { voltageV: 12 }, us);
		expect(outcome.status === 'needs-input' && outcome.missing.map((one) => one.name)).toEqual([
			'lengthM',
			'currentA',
		]);
	});

	test('insulation that no table knows', () => {
		const [refusal] = refused({ currentA: 5, voltageV: 230, lengthM: 2, insulationC: 60 }, eu);
		expect(refusal?.text).toContain('no value for 60 °C insulation');
	});
});

test('metric circuits of a shore inlet of 16 A are taken as a rating', () => {
	const sizing = answered({ currentA: 16, voltageV: 230, lengthM: 6 }, eu);
	expect(sizing.headline).toBe('2.5 mm² copper, 16 A breaker');
	expect(sizing.findings[0]?.source).toBe('common practice of the trade, 80 % of the rating for long loads');
});

describe('how far a size may run', () => {
	const given = { currentA: 15, voltageV: 12, size: '12 AWG', reach: true };

	test('to the length at which its drop is at the limit, worked by hand', () => {
		const { reach } = resultsOf(given);
		const { dropPercent } = resultsOf({ ...given, reach: undefined, lengthM: reach });
		expect(dropPercent).toBeCloseTo(3, 6);
		expect(answered({ ...given, reach: undefined, lengthM: reach }).headline).toMatch(/is enough/);
		expect(answered({ ...given, reach: undefined, lengthM: Number(reach) * 1.01 }).headline).toMatch(
			/too thin/,
		);
	});

	test('is never shown further than it is', () => {
		const shown = Number(/reaches ([\d.]+) ft/.exec(answered(given).headline)?.[1]);
		expect(feet(shown)).toBeLessThanOrEqual(Number(resultsOf(given).reach));
	});

	test('a size that fails however short is too thin', () => {
		expect(answered({ ...given, size: '18 AWG', currentA: 30 }).headline).toMatch(/^18 AWG is too thin/);
		expect(codesOf({ ...given, size: '18 AWG', currentA: 30 })).toContain('conductor-overloaded');
	});

	test('without a size it asks for it', () => {
		const outcome = runTopic(wire, { currentA: 15, reach: true }, us);
		expect(outcome).toMatchObject({ status: 'needs-input', missing: [{ name: 'size' }] });
	});

	test('beside a length it changes nothing', () => {
		expect(answered({ ...typical, reach: true }).headline).toBe(answered(typical).headline);
	});
});
