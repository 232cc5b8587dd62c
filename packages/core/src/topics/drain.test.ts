import { describe, expect, test } from 'vitest';
import { answered, codesOf, numberOf, numbersOf, refusal } from '../../../../tests/reference/outcome.js';
import { drain } from './drain.js';

/** 75 L, 0.25 m deep, through a sharp 12.7 mm opening: 713 s to 10 mm. */
const tank = { volumeL: 75, depthM: 0.25, valveMm: 12.7 };

describe('time to empty', () => {
	test('the worked example: 10.1 L/min at the start, 713 s', () => {
		const numbers = numbersOf(drain, tank);
		expect(numbers.firstFlow).toBeCloseTo(10.098, 2);
		expect((numbers.time ?? 0) * 3600).toBeCloseTo(713, 0);
	});

	test('half the water is out well before half the time', () => {
		const { half = 0, time = 0 } = numbersOf(drain, tank);
		expect(half).toBeLessThan(time / 2);
	});

	test('a hose slows it, fall speeds it up', () => {
		const time = (more: object) => numberOf(drain, { ...tank, ...more }, 'time');
		const hose = { hoseLengthM: 5, hoseMm: 12.7 };
		expect(time(hose)).toBeGreaterThan(time({}) * 1.3);
		expect(time({ ...hose, fallM: 0.5 })).toBeLessThan(time(hose));
		expect(answered(drain, { ...tank, hoseLengthM: 8 }).governedBy).toBe('friction in the hose');
		expect(answered(drain, tank).governedBy).toBe('the valve');
	});

	test('asked for a valve, the narrowest that is quick enough is named', () => {
		const given = { volumeL: 150, depthM: 0.25, wantedH: 5 / 60 };
		const chosen = numberOf(drain, given, 'valve');
		expect(numberOf(drain, given, 'time')).toBeLessThanOrEqual(5 / 60);
		const smaller = answered(drain, { ...given, valveMm: chosen * 0.8 });
		expect(smaller.findings.map((one) => one.code)).toContain('slower-than-wanted');
		expect(answered(drain, given).neighbours.map((one) => one.passes)).toEqual([false, true]);
	});

	test('the tipping bore is just quick enough', () => {
		const given = { ...tank, valveMm: 25.4, wantedH: 0.1 };
		const [tip] = answered(drain, given).tipping;
		expect(numberOf(drain, { ...given, valveMm: tip?.value }, 'time')).toBeCloseTo(0.1, 6);
	});
});

describe('findings', () => {
	test('no vent', () => {
		expect(codesOf(drain, { ...tank, vented: false })).toContain('no-vent');
		expect(codesOf(drain, tank)).not.toContain('no-vent');
	});
	test('a vent that is too small, and the one that is not', () => {
		const needed = numberOf(drain, tank, 'vent');
		expect(codesOf(drain, { ...tank, ventMm: needed * 0.99 })).toContain('vent-too-small');
		expect(codesOf(drain, { ...tank, ventMm: needed * 1.01 })).not.toContain('vent-too-small');
	});
	test('slower than wanted, and what would do', () => {
		const finding = answered(drain, { ...tank, wantedH: 0.05 }).findings.find(
			(one) => one.code === 'slower-than-wanted',
		);
		expect(finding?.text).toMatch(/a valve of 1 in does it/);
		expect(codesOf(drain, { ...tank, wantedH: 1 })).not.toContain('slower-than-wanted');
	});
	test('a hose narrower than the valve', () => {
		const hose = { ...tank, valveMm: 38, hoseLengthM: 2 };
		expect(codesOf(drain, { ...hose, hoseMm: 25 })).toContain('hose-narrower-than-valve');
		expect(codesOf(drain, { ...hose, hoseMm: 38 })).not.toContain('hose-narrower-than-valve');
	});
});

describe('what can not be answered', () => {
	test('a puddle', () => {
		expect(refusal(drain, { volumeL: 3000, depthM: 0.05, valveMm: 20 })).toMatchObject({
			code: 'contradiction',
			field: 'depthM',
		});
	});
	test('a time no valve meets', () => {
		expect(refusal(drain, { volumeL: 3000, depthM: 1, wantedH: 0.5 / 60 })).toMatchObject({
			code: 'impossible',
			field: 'wantedH',
		});
	});
	test('a hose of no length is asked for', () => {
		expect(() => answered(drain, { ...tank, hoseMm: 20 })).toThrow(/How long is the hose/);
	});
	test('neither valve nor time', () => {
		expect(() => answered(drain, { volumeL: 75 })).toThrow(/bore of the drain valve/);
	});
});
