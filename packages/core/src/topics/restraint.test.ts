import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bolts } from '../tables/bolts.js';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import type { Sizing } from '../topic/sizing.js';
import { checkBolt, loadCases, worstOf } from '../weight/restraint.js';
import { restraint } from './restraint.js';

const context = { ...defaultContext, units: 'metric' } as const;
const outcomeOf = (given: Readonly<Record<string, unknown>>) => runTopic(restraint, given, context);
function answered(given: Readonly<Record<string, unknown>>): Sizing {
	const outcome = outcomeOf(given);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}
const value = (sizing: Sizing, name: string) => sizing.results.find((result) => result.name === name)?.value;
const codes = (sizing: Sizing) => sizing.findings.map((finding) => finding.code);

const battery = { massKg: 60, heightM: 0.3, alongM: 0.4, acrossM: 0.3 };

describe('chosen', () => {
	test('a 60 kg battery in a crash', () => {
		const sizing = answered(battery);
		expect(sizing.headline).toBe('4 × M8 class 8.8 hold 60 kg at 20 g (88 % used)');
		expect(value(sizing, 'forwardForce')).toBeCloseTo(20 * 60 * 9.80665, 6);
		expect(value(sizing, 'direction')).toBe('forward');
		// the next thinner one does not do
		expect(sizing.neighbours[0]).toMatchObject({ choice: '4 × M6 class 8.8', passes: false });
		expect(sizing.tipping[0]?.value).toBeCloseTo(60 / (value(sizing, 'utilisation') as number), 6);
	});

	test('what is chosen is never above what its bolts allow', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 250, noNaN: true }),
				fc.double({ min: 0.05, max: 1.2, noNaN: true }),
				fc.double({ min: 0.15, max: 1.5, noNaN: true }),
				fc.double({ min: 0.15, max: 1.5, noNaN: true }),
				fc.constantFrom('crash', 'van', 'driving'),
				(massKg, heightM, alongM, acrossM, loadCase) => {
					const outcome = outcomeOf({ massKg, heightM, alongM, acrossM, loadCase });
					if (outcome.status !== 'answered') return;
					const { sizing } = outcome;
					const bolt = bolts.find(
						(one) => one.thread === value(sizing, 'bolt') && one.propertyClass === '8.8',
					);
					if (bolt === undefined) throw new Error('no such bolt');
					const worst = worstOf(
						checkBolt(
							{
								massKg,
								centreHeightM: heightM / 2,
								alongM,
								acrossM,
								count: value(sizing, 'bolts') as number,
								prying: 2,
								sheet: null,
								insertN: null,
								safetyFactor: 2,
							},
							bolt,
							loadCases[loadCase],
						),
					);
					expect(worst.utilisation).toBeLessThanOrEqual(1);
				},
			),
		);
	});

	test('a forward figure below the load case does not lower it, one above raises it', () => {
		expect(value(answered({ ...battery, forwardG: 5 }), 'forwardForce')).toBe(
			value(answered(battery), 'forwardForce'),
		);
		expect(value(answered({ ...battery, forwardG: 30 }), 'forwardForce')).toBeCloseTo(30 * 60 * 9.80665, 6);
	});

	test('nothing in the table holds it', () => {
		const outcome = outcomeOf({ massKg: 900, heightM: 2, alongM: 0.1, acrossM: 0.1 });
		expect(outcome.status === 'refused' && outcome.refusals[0]?.code).toBe('impossible');
	});
});

describe('judged', () => {
	const tank = { massKg: 120, centreHeightM: 0.25, alongM: 0.8, acrossM: 0.5, bolts: 4, boltSize: 'M8' };

	test('too weak, with what would hold', () => {
		const sizing = answered(tank);
		expect(value(sizing, 'verdict')).toBe('too weak');
		expect(sizing.findings[0]).toMatchObject({ severity: 'danger', code: 'fixing-overloaded' });
		expect(sizing.findings[0]?.text).toContain('4 × M12 class 8.8 would hold');
		expect(value(answered({ ...tank, boltSize: 'M12' }), 'verdict')).toBe('enough');
		expect(codes(answered({ ...tank, boltSize: 'M12' }))).not.toContain('fixing-overloaded');
	});

	test('under the road loads the same bolts do', () => {
		const sizing = answered({ ...tank, loadCase: 'driving' });
		expect(value(sizing, 'verdict')).toBe('enough');
		expect(codes(sizing)).toContain('not-for-a-crash');
		expect(codes(answered(tank))).not.toContain('not-for-a-crash');
	});

	test('an odd bolt is not counted', () => {
		const five = answered({ ...tank, bolts: 5 });
		expect(codes(five)).toContain('odd-bolt');
		expect(value(five, 'utilisation')).toBe(value(answered(tank), 'utilisation'));
		expect(codes(answered(tank))).not.toContain('odd-bolt');
	});

	test('class 10.9 is stronger in tension', () => {
		const used = (boltClass: number) => value(answered({ ...tank, boltClass }), 'utilisation') as number;
		expect(used(10.9)).toBeLessThan(used(8.8));
	});
});

describe('what it is bolted to', () => {
	test('thin sheet decides', () => {
		const open = answered(battery);
		expect(codes(open)).toContain('sheet-not-checked');
		const given = { ...battery, bolts: 4, boltSize: 'M8', sheetMm: 0.8, washerMm: 30 };
		const thin = answered(given);
		expect(codes(thin)).not.toContain('sheet-not-checked');
		expect(value(thin, 'verdict')).toBe('too weak');
		expect(value(answered({ ...given, sheetMm: 4 }), 'verdict')).toBe('enough');
	});

	test('without a washer the bare hole counts', () => {
		const given = { ...battery, loadCase: 'driving', sheetMm: 1.5 };
		expect(codes(answered(given))).toContain('no-washer-named');
		expect(codes(answered({ ...given, washerMm: 30 }))).not.toContain('no-washer-named');
	});

	test('aluminium sheet takes less than steel', () => {
		const given = { ...battery, loadCase: 'driving', sheetMm: 1.5, washerMm: 30 };
		const shear = (sheetMetal: string) => value(answered({ ...given, sheetMetal }), 'allowedShear') as number;
		expect(shear('aluminium')).toBeLessThan(shear('steel'));
	});

	test('a rivet nut is asked for its maker’s figure and counts for it', () => {
		const outcome = outcomeOf({ ...battery, fixing: 'insert' });
		expect(outcome.status === 'needs-input' && outcome.missing[0]?.name).toBe('insertN');
		const sizing = answered({ ...battery, loadCase: 'driving', fixing: 'insert', insertN: 4000 });
		expect(value(sizing, 'allowedTension')).toBe(2000);
	});
});

describe('declined', () => {
	test.each([
		{ occupants: true },
		{ occupants: true, massKg: 30 },
		{ item: 'rear bench seat', ...battery },
		{ item: 'seat belt anchorage', massKg: 3 },
		{ item: 'Kindersitz', ...battery },
	])('%j: unsafe, before anything is asked', (given) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'refused' && outcome.refusals[0]).toMatchObject({
			code: 'unsafe',
			field: 'item',
		});
		expect(outcome.status === 'refused' && outcome.refusals[0]?.instead).toContain('certified');
	});

	test('a battery under the seat is no seat', () => {
		expect(outcomeOf({ ...battery, item: 'battery', occupants: false }).status).toBe('answered');
	});

	test.each([
		['wood screws', { ...battery, fixing: 'wood' }, 'not-covered', 'fixing'],
		['two bolts', { ...battery, bolts: 2 }, 'unsafe', 'bolts'],
		['a class without proof loads here', { ...battery, boltClass: 4.8 }, 'not-covered', 'boltClass'],
		['centre above the item', { ...battery, centreHeightM: 0.5 }, 'contradiction', 'centreHeightM'],
		['no mass', { ...battery, massKg: 0 }, 'out-of-range', 'massKg'],
	])('%s', (_, given, code, field) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'refused' && outcome.refusals[0]).toMatchObject({ code, field });
	});

	test.each([
		[{ ...battery, massKg: undefined }, 'massKg'],
		[{ ...battery, alongM: undefined }, 'alongM'],
		[{ ...battery, acrossM: undefined }, 'acrossM'],
		[{ ...battery, heightM: undefined }, 'centreHeightM'],
	])('asks for %#', (given, name) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'needs-input' && outcome.missing.map((one) => one.name)).toContain(name);
	});
});

test('what rests on memory says so', () => {
	expect(answered(battery).sources.join('; ')).toContain('49 CFR 571.207, S4.2');
	expect(answered(battery).sources.join('; ')).toContain('from memory');
});
