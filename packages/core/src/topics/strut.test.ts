import { describe, expect, test } from 'vitest';
import { lidFrom, springFor, swingCurve } from '../structure/strut.js';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import type { Sizing } from '../topic/sizing.js';
import { strut } from './strut.js';

const context = { ...defaultContext, units: 'metric' } as const;
const outcomeOf = (given: Readonly<Record<string, unknown>>) => runTopic(strut, given, context);
function answered(given: Readonly<Record<string, unknown>>): Sizing {
	const outcome = outcomeOf(given);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}
const value = (sizing: Sizing, name: string) =>
	sizing.results.find((result) => result.name === name)?.value as number;
const codes = (sizing: Sizing) => sizing.findings.map((finding) => finding.code);

const bench = { massKg: 15, lidLengthM: 0.9, lidMountM: 0.3, bodyMountBelowM: 0.25 };
const hatch = {
	massKg: 12,
	lidLengthM: 0.8,
	lid: 'hatch',
	openingDeg: 95,
	lidMountM: 0.2,
	bodyMountBelowM: 0.65,
	bodyMountOutM: -0.03,
};

describe('by its lever alone', () => {
	test('28 kg at 0.62 m on two springs with 0.16 m of lever', () => {
		const sizing = answered({ massKg: 28, centreM: 0.62, armM: 0.16 });
		expect(value(sizing, 'moment')).toBeCloseTo(170.24, 2);
		expect(value(sizing, 'balanceForce')).toBeCloseTo(532.0, 1);
		// a tenth in hand at -10 °C, rounded up to the next 50 N
		expect(value(sizing, 'forceNeeded')).toBeCloseTo((532.005 * 1.1 * 293.15) / 263.15, 1);
		expect(value(sizing, 'force')).toBe(700);
		expect(codes(sizing)).toEqual(['one-place-only']);
	});
});

describe('over the whole swing', () => {
	test.each([
		['bench', bench],
		['hatch', hatch],
	])('%s: the spring chosen holds in the cold from mid swing to open', (_, given) => {
		const sizing = answered(given);
		const force = value(sizing, 'force');
		const values = {
			centreM: given.lidLengthM / 2,
			lid: 'flat' as const,
			openingDeg: 90,
			handleM: given.lidLengthM,
			lidMountBelowM: 0,
			bodyMountOutM: 0,
			springs: 2,
			...(given as typeof bench),
		};
		const lid = lidFrom(values);
		const curve = swingCurve(lid, springFor(lid, force, 1.2), -10);
		for (const point of curve.slice(30)) expect(point.handN).toBeLessThanOrEqual(1e-6);
		expect(force % 50).toBe(0);
		expect(force).toBeGreaterThanOrEqual(value(sizing, 'forceNeeded'));
		expect(force - 50).toBeLessThan(value(sizing, 'forceNeeded'));
		expect(codes(sizing)).not.toContain('falls-at-mid-swing');
	});

	test('stroke and lengths are those of the mounts', () => {
		const sizing = answered(bench);
		expect(value(sizing, 'compressedLength')).toBeCloseTo(Math.hypot(0.3, 0.25), 6);
		expect(value(sizing, 'extendedLength')).toBeCloseTo(0.55, 6);
		expect(value(sizing, 'stroke')).toBeCloseTo(0.55 - Math.hypot(0.3, 0.25), 6);
	});

	test('too weak a spring: the lid falls, and the force that would hold is named', () => {
		const needed = value(answered(bench), 'forceNeeded');
		const weak = answered({ ...bench, springN: 200 });
		expect(weak.findings[0]).toMatchObject({ severity: 'danger', code: 'falls-at-mid-swing' });
		expect(weak.findings[0]?.text).toContain(`${Math.ceil(needed)} N`);
		expect(weak.headline).toContain('too weak');
		const held = answered({ ...bench, springN: Math.ceil(needed) });
		expect(codes(held)).not.toContain('falls-at-mid-swing');
	});

	test('just balanced, with nothing in hand', () => {
		const needed = value(answered(bench), 'forceNeeded');
		const sizing = answered({ ...bench, springN: needed * 0.95 });
		expect(codes(sizing)).toContain('small-strut-reserve');
		expect(codes(sizing)).not.toContain('falls-at-mid-swing');
	});

	test('a spring that opens the lid by itself asks for a latch', () => {
		expect(codes(answered(bench))).toContain('opens-by-itself');
		const steep = { ...bench, bodyMountOutM: 0.15, bodyMountBelowM: 0.05 };
		expect(codes(answered(steep))).not.toContain('opens-by-itself');
	});

	test('a hand force beyond one hand', () => {
		expect(codes(answered({ ...bench, springN: 900 }))).toContain('hand-force-high');
		expect(codes(answered(bench))).not.toContain('hand-force-high');
	});

	test('no room for the spring when shut', () => {
		const tight = {
			massKg: 12,
			lidLengthM: 0.8,
			lid: 'hatch',
			lidMountM: 0.25,
			bodyMountBelowM: 0.2,
			bodyMountOutM: 0.05,
		};
		expect(codes(answered(tight))).toContain('no-room-for-spring');
		expect(codes(answered(bench))).not.toContain('no-room-for-spring');
	});

	test('stored energy stands among the cautions', () => {
		expect(answered(bench).cautions.join(' ')).toMatch(/never open, heat/);
	});
});

describe('what is asked and refused', () => {
	test.each([
		[{ ...bench, massKg: undefined }, 'massKg'],
		[{ massKg: 10, lidMountM: 0.3 }, 'lidLengthM'],
		[{ massKg: 10, lidLengthM: 0.8 }, 'armM'],
		[{ ...bench, bodyMountBelowM: undefined }, 'bodyMountBelowM'],
	])('asks for %#', (given, name) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'needs-input' && outcome.missing.map((one) => one.name)).toContain(name);
	});

	test.each([
		['centre off the lid', { ...bench, centreM: 1.2 }, 'contradiction', 'centreM'],
		['mount off the lid', { ...bench, lidMountM: 1.2 }, 'contradiction', 'lidMountM'],
		['spring longest before it is open', { ...bench, openingDeg: 130 }, 'impossible', 'bodyMountBelowM'],
		[
			'wrong side of the hinge',
			{ ...bench, bodyMountBelowM: -0.6, bodyMountOutM: 0.4 },
			'impossible',
			'bodyMountBelowM',
		],
		['no mass', { ...bench, massKg: 0 }, 'out-of-range', 'massKg'],
	])('%s', (_, given, code, field) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'refused' && outcome.refusals[0]).toMatchObject({ code, field });
	});
});
