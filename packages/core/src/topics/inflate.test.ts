import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import type { Sizing } from '../topic/sizing.js';
import { inflate } from './inflate.js';

const psi = 6.894757293168;
const outcomeOf = (given: Readonly<Record<string, unknown>>) => runTopic(inflate, given, defaultContext);
function answered(given: Readonly<Record<string, unknown>>): Sizing {
	const outcome = outcomeOf(given);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}
const value = (sizing: Sizing, name: string) =>
	sizing.results.find((result) => result.name === name)?.value as number;
const codes = (sizing: Sizing) => sizing.findings.map((finding) => finding.code);

const job = { pumpFlowLMin: 72, volumeL: 62, fromKpa: 25 * psi, toKpa: 65 * psi, tires: 1 };

describe('time', () => {
	test('free air by Boyle; the open flow is a lower bound', () => {
		const sizing = answered(job);
		expect(value(sizing, 'freeAir')).toBeCloseTo(168.75, 1);
		expect(value(sizing, 'openFlowTime') * 60).toBeCloseTo(2.344, 3);
		expect(value(sizing, 'timePerTire')).toBeGreaterThan(value(sizing, 'openFlowTime'));
	});

	test('cubic feet and litres a minute are the same flow', () => {
		const cfm = answered({ ...job, pumpFlowLMin: undefined, pumpFlowM3H: (72 * 60) / 1000 });
		expect(value(cfm, 'timePerTire')).toBeCloseTo(value(answered(job), 'timePerTire'), 12);
	});

	test('a second point of the curve counts instead of the usual loss', () => {
		const sizing = answered({ ...job, loadedFlowLMin: 40, loadedPressureKpa: 40 * psi });
		expect(sizing.assumed.some((one) => one.name === 'deadSpace')).toBe(false);
		expect(value(sizing, 'timePerTire')).toBeGreaterThan(value(answered(job), 'timePerTire'));
	});

	test('both pressures as one marking', () => {
		const { fromKpa: _, toKpa: __, ...rest } = job;
		const sizing = answered({ ...rest, pressures: '25 to 65 psi' });
		expect(value(sizing, 'timePerTire')).toBeCloseTo(value(answered(job), 'timePerTire'), 9);
		expect(value(answered({ ...rest, pressures: '1,8-4,2 bar' }), 'freeAir')).toBeCloseTo(
			(62 * 240) / 101.325,
			9,
		);
	});

	test('four tires take four times as long, thin air longer', () => {
		expect(value(answered({ ...job, tires: 4 }), 'runTime')).toBeCloseTo(
			4 * value(answered(job), 'runTime'),
			12,
		);
		expect(value(answered({ ...job, altitudeM: 2500 }), 'runTime')).toBeGreaterThan(
			value(answered(job), 'runTime'),
		);
	});

	test('the volume follows from the size, and is said to be a guess', () => {
		const sizing = answered({ ...job, volumeL: undefined, tireSize: 'LT225/75R16' });
		expect(value(sizing, 'tireVolume')).toBeGreaterThan(50);
		expect(value(sizing, 'tireVolume')).toBeLessThan(70);
		expect(sizing.assumed.map((one) => one.name)).toContain('fill');
	});

	test('a higher target never takes less time or charge', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 100, max: 400, noNaN: true }),
				fc.double({ min: 1, max: 150, noNaN: true }),
				(toKpa, more) => {
					const at = (target: number) =>
						answered({ ...job, fromKpa: 50, toKpa: target, currentA: 30, bankAh: 100 });
					const low = at(toKpa);
					const high = at(toKpa + more);
					expect(value(high, 'totalTime')).toBeGreaterThan(value(low, 'totalTime'));
					expect(value(high, 'charge')).toBeGreaterThan(value(low, 'charge'));
				},
			),
		);
	});
});

describe('rests and battery', () => {
	test('a pump that must rest', () => {
		const sizing = answered({ ...job, tires: 4, spellH: 5 / 60, restH: 10 / 60 });
		expect(value(sizing, 'rests')).toBe(2);
		expect(value(sizing, 'totalTime')).toBeCloseTo(value(sizing, 'runTime') + 20 / 60, 9);
		expect(codes(sizing)).toContain('pump-must-rest');
		expect(codes(answered({ ...job, spellH: 0.5 }))).not.toContain('pump-must-rest');
	});

	test('a long run without a known duty is a warning', () => {
		expect(codes(answered({ ...job, pumpFlowLMin: 30, tires: 4 }))).toContain('duty-unknown');
		expect(codes(answered(job))).not.toContain('duty-unknown');
		expect(codes(answered({ ...job, pumpFlowLMin: 30, tires: 4, spellH: 1 }))).not.toContain('duty-unknown');
	});

	test('charge, energy and share of the bank', () => {
		const sizing = answered({ ...job, powerW: 360, bankAh: 50 });
		expect(value(sizing, 'current')).toBe(30);
		expect(value(sizing, 'charge')).toBeCloseTo(30 * value(sizing, 'runTime'), 9);
		expect(value(sizing, 'energy')).toBeCloseTo(360 * value(sizing, 'runTime'), 9);
		expect(value(sizing, 'bankShare')).toBeCloseTo(value(sizing, 'charge') / 50, 9);
		expect(codes(sizing)).not.toContain('bank-too-small');
		expect(codes(answered({ ...job, tires: 4, currentA: 60, bankAh: 10 }))).toContain('bank-too-small');
	});
});

describe('what is asked and refused', () => {
	test.each([
		[{ ...job, pumpFlowLMin: undefined }, 'pumpFlowLMin'],
		[{ ...job, volumeL: undefined }, 'volumeL'],
		[{ ...job, fromKpa: undefined }, 'fromKpa'],
		[{ ...job, toKpa: undefined }, 'toKpa'],
	])('asks for %#', (given, name) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'needs-input' && outcome.missing.map((one) => one.name)).toContain(name);
	});

	test.each([
		['lets air out', { ...job, fromKpa: 450, toKpa: 300 }, 'contradiction', 'toKpa'],
		['bursts the tire', { ...job, sidewallKpa: 60 * psi }, 'unsafe', 'toKpa'],
		['two flows', { ...job, pumpFlowM3H: 10 }, 'contradiction', 'pumpFlowLMin'],
		['no tire', { ...job, volumeL: undefined, tireSize: 'big' }, 'out-of-range', 'tireSize'],
		[
			'a curve that rises',
			{ ...job, loadedFlowLMin: 80, loadedPressureKpa: 200 },
			'contradiction',
			'loadedFlowLMin',
		],
		['half a curve', { ...job, loadedFlowLMin: 40 }, 'contradiction', 'loadedFlowLMin'],
		['stalls', { ...job, loadedFlowLMin: 10, loadedPressureKpa: 300 }, 'impossible', 'toKpa'],
		['no two pressures', { ...job, fromKpa: undefined, pressures: 'some psi' }, 'out-of-range', 'pressures'],
		['no pressure', { ...job, toKpa: -5 }, 'out-of-range', 'toKpa'],
	])('%s', (_, given, code, field) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'refused' && outcome.refusals[0]).toMatchObject({ code, field });
	});
});

test('bursting and the sidewall stand among the cautions', () => {
	expect(answered(job).cautions.join(' ')).toMatch(/sidewall/);
});
