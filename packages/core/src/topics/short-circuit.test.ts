import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coldLoopOhm, prospectiveA } from '../electrical/short-circuit.js';
import { conductorSize } from '../tables/conductors.js';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { sizingSchema } from '../topic/sizing.js';
import { shortCircuit } from './short-circuit.js';

type Given = Readonly<Record<string, unknown>>;

function answered(given: Given) {
	const outcome = runTopic(shortCircuit, given, defaultContext);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

const resultsOf = (given: Given) =>
	Object.fromEntries(answered(given).results.map((result) => [result.name, result.value]));
const currentOf = (given: Given) => Number(resultsOf(given).prospectiveCurrent);
const codesOf = (given: Given) => answered(given).findings.map((one) => one.code);

const lithium = { unitAh: 100, bankV: 12, chemistry: 'lifepo4' };

describe('the current', () => {
	test('by hand: 13.6 V, four cells of 0.6 mohm, nine tenths of it', () => {
		expect(currentOf(lithium)).toBeCloseTo(13.6 / (0.9 * 0.0024), 6);
	});

	test('by hand: with 2 m of 35 mm² at 0.554 mohm/m, both legs', () => {
		const current = currentOf({ ...lithium, size: '35 mm²', lengthM: 2 });
		expect(current).toBeCloseTo(13.6 / (0.9 * 0.0024 + 2 * 2 * 0.000554), 6);
		expect(resultsOf({ ...lithium, size: '35 mm²', lengthM: 2 }).prospectiveAtTerminals).toBeCloseTo(
			13.6 / (0.9 * 0.0024),
			6,
		);
	});

	test('batteries in parallel add, in series they do not', () => {
		const one = currentOf(lithium);
		expect(currentOf({ ...lithium, unitCount: 3 })).toBeCloseTo(3 * one, 6);
		expect(currentOf({ ...lithium, bankV: 24, unitV: 12, unitCount: 2 })).toBeCloseTo(one, 6);
	});

	test('the resistance or the current of the maker goes before the usual one', () => {
		expect(currentOf({ ...lithium, internalOhm: 0.003 })).toBeCloseTo(13.6 / (0.9 * 0.003), 6);
		expect(currentOf({ bankV: 12, chemistry: 'agm', bankShortA: 2800 })).toBeCloseTo(2800, 6);
		expect(codesOf({ ...lithium, internalOhm: 0.003 })).not.toContain('resistance-typical');
		expect(codesOf({ bankV: 12, chemistry: 'agm', bankShortA: 2800 })).not.toContain('resistance-typical');
		expect(codesOf(lithium)).toContain('resistance-typical');
	});

	test('more cable in parallel lets more through', () => {
		const cable = { ...lithium, size: '2/0 AWG', lengthM: 3 };
		expect(currentOf({ ...cable, cables: 2 })).toBeGreaterThan(currentOf(cable));
	});

	test('never above what the terminals give, and falls with length', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 5, max: 1000 }),
				fc.integer({ min: 1, max: 3000 }),
				fc.constantFrom('10 AWG', '4 AWG', '4/0 AWG', '35 mm²'),
				(unitAh, centimetres, name) => {
					const size = conductorSize(name);
					if (size === null) throw new Error(name);
					const source = { openCircuitV: 13.6, sourceOhm: 0.16 / unitAh };
					const near = prospectiveA({ ...source, loopOhm: coldLoopOhm(size, centimetres / 100, 1) });
					const far = prospectiveA({ ...source, loopOhm: coldLoopOhm(size, centimetres / 50, 1) });
					expect(near).toBeLessThan(prospectiveA({ ...source, loopOhm: 0 }));
					expect(far).toBeLessThan(near);
				},
			),
		);
	});
});

describe('what it means', () => {
	test('a bank of the usual size needs a fuse that is marked', () => {
		const sizing = answered(lithium);
		expect(sizing.headline).toBe('About 6,300 A: needs a class T fuse marked 10,000 A DC or more');
		expect(sizing.findings[0]).toMatchObject({ code: 'vehicle-fuses-cannot-break', severity: 'danger' });
		expect(sizing.results.find((one) => one.name === 'canBreak')?.value).toBe('class T fuse, class J fuse');
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
	});

	test('at the end of a long thin cable a blade fuse will do', () => {
		const sizing = answered({ ...lithium, size: '10 AWG', lengthM: 5 });
		expect(sizing.headline).toMatch(/^About \d+ A: a blade fuse breaks that on 12 V$/);
		expect(sizing.findings.map((one) => one.code)).not.toContain('vehicle-fuses-cannot-break');
		expect(sizing.findings.map((one) => one.code)).not.toContain('blade-cannot-break');
	});

	test('between 1 and 2 kA a strip fuse is the least', () => {
		const sizing = answered({ bankV: 12, chemistry: 'agm', bankShortA: 1500 });
		expect(sizing.headline).toBe('About 1,500 A: a strip fuse breaks that on 12 V');
		expect(sizing.findings[0]).toMatchObject({ code: 'blade-cannot-break', severity: 'warning' });
	});

	test('on 48 V strip fuses are out', () => {
		const given = { bankV: 48, chemistry: 'agm', bankShortA: 1500 };
		expect(codesOf(given)).toContain('strip-fuse-voltage');
		expect(resultsOf(given).canBreak).not.toContain('strip');
		expect(codesOf({ ...given, bankV: 24 })).not.toContain('strip-fuse-voltage');
	});

	test('beyond every class the maker is asked', () => {
		expect(answered({ bankV: 12, chemistry: 'nmc', bankShortA: 160_000 }).headline).toContain(
			'no fuse in my tables',
		);
	});

	test('the marine table by cold-cranking amperes', () => {
		const results = resultsOf({ bankV: 12, chemistry: 'flooded', unitAh: 100, crankingA: 900 });
		expect(results).toMatchObject({ marineMain: 3000, marineBranch: 1500 });
		expect(resultsOf({ bankV: 48, chemistry: 'flooded', unitAh: 100, crankingA: 900 })).not.toHaveProperty(
			'marineMain',
		);
	});

	test('large banks', () => {
		expect(codesOf({ ...lithium, unitAh: 600 })).toContain('large-bank');
		expect(codesOf({ ...lithium, unitCount: 5 })).not.toContain('large-bank');
		expect(codesOf({ ...lithium, unitCount: 6 })).toContain('large-bank');
	});

	test('electronics are counted on by nobody; lead-acid has none', () => {
		expect(codesOf(lithium)).toContain('electronics-not-counted');
		expect(codesOf({ ...lithium, chemistry: 'gel' })).not.toContain('electronics-not-counted');
		expect(codesOf(lithium)).toContain('ac-rating-not-dc');
	});

	test('the tipping length is where the next class begins to serve', () => {
		const given = { ...lithium, size: '2/0 AWG', lengthM: 1 };
		const lengthM = answered(given).tipping[0]?.value ?? 0;
		expect(currentOf({ ...given, lengthM })).toBeCloseTo(2000, 6);
		expect(answered(lithium).tipping).toEqual([]);
	});
});

describe('what is asked or refused', () => {
	test.each<[string, Given, string]>([
		['nothing named', { bankV: 12 }, 'unitAh'],
		['a length without a size', { ...lithium, lengthM: 2 }, 'size'],
		['a size without a length', { ...lithium, size: '4 AWG' }, 'lengthM'],
	])('%s', (_, given, name) => {
		const outcome = runTopic(shortCircuit, given, defaultContext);
		expect(outcome.status === 'needs-input' && outcome.missing[0]?.name).toBe(name);
	});

	test.each<[string, Given, string | null]>([
		['an unknown cable', { ...lithium, size: '7 AWG', lengthM: 1 }, 'size'],
		['a voltage no bank has', { ...lithium, bankV: 18 }, 'bankV'],
		['an open-circuit voltage of another bank', { ...lithium, openCircuitV: 26 }, 'openCircuitV'],
		['no whole strings', { ...lithium, bankV: 24, unitV: 12, unitCount: 3 }, 'unitCount'],
		['no resistance at all', { ...lithium, internalOhm: 0 }, 'internalOhm'],
	])('%s', (_, given, field) => {
		const outcome = runTopic(shortCircuit, given, defaultContext);
		expect(outcome.status === 'refused' && outcome.refusals[0]?.field).toBe(field);
	});
});
