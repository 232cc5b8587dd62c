import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { sizingSchema } from '../topic/sizing.js';
import { network } from './network.js';
import { wire } from './wire.js';

type Given = Readonly<Record<string, unknown>>;
const feet = (count: number) => count * 0.3048;

function answered(given: Given) {
	const outcome = runTopic(network, given, defaultContext);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

const resultsOf = (given: Given) =>
	Object.fromEntries(answered(given).results.map((result) => [result.name, result.value]));
const codesOf = (given: Given) => answered(given).findings.map((one) => one.code);

const van = [
	{ from: 'battery', to: 'bus', size: '2/0 AWG', lengthM: feet(3) },
	{ from: 'bus', to: 'fridge', size: '10 AWG', lengthM: feet(20) },
	{ from: 'bus', to: 'fan', size: '14 AWG', lengthM: feet(12) },
	{ from: 'fridge', currentA: 5 },
	{ from: 'fan', powerW: 30 },
];

describe('voltages and currents', () => {
	test('a tree by hand', () => {
		const resistances = {
			parts: [
				{ from: 'battery', to: 'bus', ohm: 0.01 },
				{ from: 'bus', to: 'fridge', ohm: 0.05 },
				{ from: 'bus', to: 'fan', ohm: 0.1 },
				{ from: 'fridge', currentA: 5 },
				{ from: 'fan', currentA: 3 },
			],
		};
		const results = resultsOf(resistances) as Record<string, number>;
		expect(results.currentInBatteryBus).toBeCloseTo(8, 9);
		expect(results.voltageAtFridge).toBeCloseTo(12 - 0.08 - 0.25, 9);
		expect(results.voltageAtFan).toBeCloseTo(12 - 0.08 - 0.3, 9);
		expect(results.worstLoad).toBe('fan');
		expect(results.loss).toBeCloseTo(64 * 0.01 + 25 * 0.05 + 9 * 0.1, 9);
		expect(results.totalLoad).toBeCloseTo(12 * 8 - (results.loss ?? 0), 9);
	});

	test('one run alone drops what the wire topic says', () => {
		const outcome = runTopic(
			wire,
			{ currentA: 40, voltageV: 12, lengthM: feet(15), size: '4 AWG' },
			defaultContext,
		);
		const drop =
			outcome.status === 'answered' ? outcome.sizing.results.find((one) => one.name === 'drop')?.value : null;
		const results = resultsOf({
			parts: [{ from: 'battery', to: 'winch', size: '4 AWG', lengthM: feet(15), currentA: 40 }],
		});
		expect(12 - Number(results.worstVoltage)).toBeCloseTo(Number(drop), 6);
	});

	test('a load at the end of its own segment, several of a kind, and names with more words', () => {
		const results = resultsOf({
			parts: [
				{ from: 'Battery', to: 'Bus', ohm: 0.01 },
				{ from: 'bus', to: 'lights', ohm: 0.1, currentA: 2 },
				{ from: 'bus', to: 'roof', ohm: 0.1 },
				{ from: 'fan on roof', currentA: 1.5, count: 2 },
			],
		}) as Record<string, number>;
		expect(results.currentInBatteryBus).toBeCloseTo(5, 9);
		expect(results.currentInBusRoof).toBeCloseTo(3, 9);
		expect(results.voltageAtLights).toBeCloseTo(12 - 0.05 - 0.2, 9);
	});

	test('both names written as one', () => {
		const parts = [
			{ from: 'battery - bus', ohm: 0.01 },
			{ from: 'bus -> fan', ohm: 0.1 },
			{ from: 'bus to pump', ohm: 0.1, currentA: 4 },
			{ from: 'fan', currentA: 1 },
		];
		expect(resultsOf({ parts }).currentInBatteryBus).toBeCloseTo(5, 9);
	});

	test('a shared chassis return as its own resistance', () => {
		const given = {
			parts: [
				{ from: 'battery', to: 'fridge', ohm: 0.04 },
				{ from: 'fridge', to: 'chassis', ohm: 0.002, leg: 'return' },
				{ from: 'battery', to: 'fan', ohm: 0.08 },
				{ from: 'fan', to: 'chassis', ohm: 0.003, leg: 'return' },
				{ from: 'chassis', to: 'battery', ohm: 0.01, leg: 'return' },
				{ from: 'fridge', currentA: 5 },
				{ from: 'fan', currentA: 3 },
			],
		};
		const results = resultsOf(given) as Record<string, number>;
		expect(results.voltageAtFridge).toBeCloseTo(12 - 5 * 0.042 - 8 * 0.01, 9);
		expect(results.voltageAtFan).toBeCloseTo(12 - 3 * 0.083 - 8 * 0.01, 9);
		expect(results.currentInChassisBattery).toBeCloseTo(8, 9);
		expect(codesOf(given)).toContain('measured-return');
		expect(answered(given).assumed.find((one) => one.name === 'leg')).toMatchObject({
			value: 'positive',
			confirm: true,
		});
		expect(codesOf({ parts: van })).not.toContain('measured-return');
	});

	test('a pair is the same as its two legs named one by one', () => {
		const way = { size: '10 AWG', lengthM: 5 };
		const pair = resultsOf({ parts: [{ from: 'battery', to: 'fan', ...way, currentA: 9 }] });
		const legs = resultsOf({
			parts: [
				{ from: 'battery', to: 'fan', ...way, leg: 'positive', currentA: 9 },
				{ from: 'fan', to: 'battery', ...way, leg: 'return' },
			],
		});
		expect(legs.voltageAtFan).toBeCloseTo(Number(pair.voltageAtFan), 9);
		expect(legs.loss).toBeCloseTo(Number(pair.loss), 9);
	});

	test('pairs and single legs mixed', () => {
		const results = resultsOf({
			parts: [
				{ from: 'battery', to: 'bus', ohm: 0.02, leg: 'both' },
				{ from: 'bus', to: 'fan', ohm: 0.1, leg: 'positive' },
				{ from: 'fan', to: 'bus', ohm: 0.05, leg: 'return' },
				{ from: 'fan', currentA: 2 },
			],
		}) as Record<string, number>;
		expect(results.voltageAtFan).toBeCloseTo(12 - 2 * 0.17, 9);
	});

	test('the bank’s own resistance lowers the bus, not the drop', () => {
		const parts = [
			{ from: 'battery', to: 'bus', ohm: 0.01 },
			{ from: 'bus', currentA: 20 },
		];
		const results = resultsOf({ parts, internalOhm: 0.005 }) as Record<string, number>;
		expect(results.busVoltage).toBeCloseTo(11.9, 9);
		expect(results.voltageAtBus).toBeCloseTo(11.7, 9);
		expect(results.dropAtBus).toBeCloseTo((0.2 / 12) * 100, 9);
	});

	test('conductors side by side', () => {
		const at = (count: number) =>
			Number(
				resultsOf({
					parts: [
						{ from: 'battery', to: 'bus', size: '4 AWG', lengthM: 3, count },
						{ from: 'bus', currentA: 20 },
					],
				}).dropAtBus,
			);
		expect(at(2)).toBeLessThan(at(1) / 1.99);
	});

	test('the source is the node named for it, the first, or the one named', () => {
		const assumed = (parts: unknown) =>
			answered({ parts }).assumed.find((one) => one.name === 'sourceNode')?.value;
		expect(assumed(van)).toBe('battery');
		expect(
			assumed([
				{ from: 'bus', to: 'battery', ohm: 0.01 },
				{ from: 'bus', currentA: 1 },
			]),
		).toBe('battery');
		expect(
			assumed([
				{ from: 'panel', to: 'bus', ohm: 0.01 },
				{ from: 'bus', currentA: 1 },
			]),
		).toBe('panel');
		expect(answered({ parts: van, sourceNode: 'Bus' }).assumed.some((one) => one.name === 'sourceNode')).toBe(
			false,
		);
	});

	test('the record holds to its schema and shows its balance', () => {
		const sizing = answered({ parts: van });
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
		expect(sizing.headline).toBe('All loads within 3 %: the worst is fridge, 11.78 V (1.9 %)');
		expect(sizing.working.at(-1)?.label).toBe('balance of power');
	});
});

describe('which segment to thicken first', () => {
	const long = [
		{ from: 'battery', to: 'bus', size: '6 AWG', lengthM: 3 },
		{ from: 'bus', to: 'fridge', size: '14 AWG', lengthM: 6 },
		{ from: 'bus', to: 'heater', size: '8 AWG', lengthM: 4 },
		{ from: 'fridge', currentA: 6 },
		{ from: 'heater', currentA: 25 },
	];

	test('the step that helps the worst load most, against trying every one', () => {
		const sizing = answered({ parts: long });
		const results = resultsOf({ parts: long });
		expect(results.worstLoad).toBe('fridge');
		const next: Readonly<Record<string, string>> = { '6 AWG': '4 AWG', '14 AWG': '12 AWG', '8 AWG': '6 AWG' };
		const tried = long.flatMap((part, index) => {
			if (part.size === undefined) return [];
			const parts = long.map((one, at) => (at === index ? { ...one, size: next[part.size] } : one));
			return [{ name: `${part.from}-${part.to}`, drop: Number(resultsOf({ parts }).dropAtFridge) }];
		});
		const best = tried.sort((a, b) => a.drop - b.drop)[0];
		expect(results.thickenFirst).toBe(best?.name);
		expect(results.thickenDropPercent).toBeCloseTo(best?.drop ?? 0, 6);
		expect(sizing.headline).toContain(`thicken ${best?.name} first`);
		expect(sizing.neighbours[0]?.choice).toBe(`${best?.name} in 12 AWG`);
	});

	test('among many segments, more than are tried in full', () => {
		const many = Array.from({ length: 12 }, (_, index) => ({
			from: index === 0 ? 'battery' : index < 7 ? 'n1' : `n${index - 5}`,
			to: `n${index + 1}`,
			size: index % 3 === 0 ? '6 AWG' : '10 AWG',
			lengthM: 1 + (index % 4),
			currentA: 1 + (index % 5),
		}));
		const results = resultsOf({ parts: many });
		const worst = `dropAtN${String(results.worstLoad).slice(1)}`;
		const tried = many.map((part, index) => {
			const size = part.size === '6 AWG' ? '4 AWG' : '8 AWG';
			const parts = many.map((one, at) => (at === index ? { ...one, size } : one));
			return { name: `${part.from}-${part.to}`, drop: Number(resultsOf({ parts })[worst]) };
		});
		expect(results.thickenFirst).toBe(tried.sort((a, b) => a.drop - b.drop)[0]?.name);
	});

	test('no step where only resistances are named', () => {
		const sizing = answered({ parts: [{ from: 'battery', to: 'fan', ohm: 0.5, currentA: 2 }] });
		expect(sizing.headline).toBe('fan gets only 11 V (8.4 % lost)');
		expect(sizing.neighbours).toEqual([]);
	});

	test('no step where the conductor is the thickest', () => {
		const results = resultsOf({
			parts: [{ from: 'battery', to: 'bus', size: '4/0 AWG', lengthM: 1, currentA: 50 }],
		});
		expect(results).not.toHaveProperty('thickenFirst');
	});
});

describe('findings', () => {
	test('an overloaded segment is a danger and comes first', () => {
		const parts = [{ from: 'battery', to: 'bus', size: '14 AWG', lengthM: 1, currentA: 50 }];
		const sizing = answered({ parts });
		expect(sizing.headline).toBe('battery-bus is overloaded: 50 A on 14 AWG (35 A)');
		expect(sizing.findings[0]).toMatchObject({ code: 'segment-overloaded', severity: 'danger' });
		expect(codesOf({ parts: van })).not.toContain('segment-overloaded');
	});

	test('carried, but no fuse both carries and protects', () => {
		const parts = [{ from: 'battery', to: 'bus', size: '12 AWG', lengthM: 0.3, currentA: 22 }];
		expect(codesOf({ parts })).toContain('segment-without-fuse');
		expect(codesOf({ parts: [{ ...parts[0], currentA: 15 }] })).not.toContain('segment-without-fuse');
	});

	test('a drop over the limit, load by load', () => {
		const parts = [{ from: 'battery', to: 'fan', size: '16 AWG', lengthM: 12, currentA: 3 }];
		expect(codesOf({ parts })).toContain('drop-over-limit');
		expect(codesOf({ parts, critical: false })).not.toContain('drop-over-limit');
		expect(codesOf({ parts: van })).not.toContain('drop-over-limit');
	});

	test('a ring is fed from both sides', () => {
		const ring = [
			{ from: 'battery', to: 'left', size: '8 AWG', lengthM: 3 },
			{ from: 'battery', to: 'right', size: '8 AWG', lengthM: 3 },
			{ from: 'left', to: 'right', size: '8 AWG', lengthM: 2 },
			{ from: 'left', currentA: 10 },
		];
		expect(codesOf({ parts: ring })).toContain('ring-fed-from-both-sides');
		expect(codesOf({ parts: van })).not.toContain('ring-fed-from-both-sides');
		const results = resultsOf({ parts: ring }) as Record<string, number>;
		expect((results.currentInBatteryLeft ?? 0) + (results.currentInBatteryRight ?? 0)).toBeCloseTo(10, 9);
	});
});

describe('what is asked or refused', () => {
	const outcomeOf = (parts: unknown, more: Given = {}) =>
		runTopic(network, { parts, ...more }, defaultContext);

	test.each<[string, unknown, RegExp]>([
		['loads alone', [{ from: 'fan', currentA: 3 }], /Which conductors/],
		['segments alone', [{ from: 'battery', to: 'fan', size: '14 AWG', lengthM: 3 }], /Which loads/],
		['no length', [{ from: 'battery', to: 'fan', size: '14 AWG', currentA: 3 }], /How long is battery-fan/],
		[
			'no size',
			[{ from: 'battery', to: 'fan', lengthM: 3, currentA: 3 }],
			/What size is the conductor of battery-fan/,
		],
	])('%s', (_, parts, question) => {
		const outcome = outcomeOf(parts);
		expect(outcome.status === 'needs-input' && outcome.missing[0]?.question).toMatch(question);
	});

	test.each<[string, unknown, RegExp]>([
		[
			'a load nowhere',
			[...van, { from: 'heater', currentA: 3 }],
			/load at "heater", but no segment leads there/,
		],
		['an unknown size', [{ from: 'battery', to: 'fan', size: '7 AWG', lengthM: 3, currentA: 3 }], /"7 AWG"/],
		['a segment to itself', [{ from: 'bus', to: 'bus', ohm: 1, currentA: 3 }], /from bus to itself/],
		[
			'two resistances',
			[{ from: 'battery', to: 'fan', ohm: 1, lengthM: 3, currentA: 3 }],
			/as well as a size or length/,
		],
		[
			'an island',
			[...van, { from: 'tank', to: 'pump', size: '14 AWG', lengthM: 2, currentA: 4 }],
			/No segment leads from the source to: tank, pump/,
		],
		[
			'no way back',
			[
				{ from: 'battery', to: 'fan', ohm: 0.1 },
				{ from: 'fan', to: 'chassis', ohm: 0.1, leg: 'return' },
				{ from: 'fan', currentA: 2 },
			],
			/No return leads back to the source from/,
		],
		['more power than it can carry', [{ from: 'battery', to: 'fan', ohm: 0.5, powerW: 200 }], /collapses/],
		['no name', [{ size: '14 AWG', lengthM: 3 }], /node it starts at/],
		[
			'no length at all',
			[{ from: 'battery', to: 'fan', size: '14 AWG', lengthM: 0, currentA: 3 }],
			/one-way length/,
		],
	])('%s', (_, parts, text) => {
		const outcome = outcomeOf(parts);
		if (outcome.status !== 'refused') throw new Error(JSON.stringify(outcome));
		expect(outcome.refusals[0]?.text).toMatch(text);
		expect(outcome.refusals[0]?.field).toBe('parts');
	});

	test('a source that is no node, and insulation that can’t be', () => {
		const source = outcomeOf(van, { sourceNode: 'alternator' });
		expect(source.status === 'refused' && source.refusals[0]?.field).toBe('sourceNode');
		const hot = outcomeOf(van, { ambientC: 110 });
		expect(hot.status === 'refused' && hot.refusals[0]?.field).toBe('ambientC');
	});
});

test('whatever the tree: no load above the source, the loss is the difference, deeper nodes are never higher', () => {
	const sizes = ['14 AWG', '10 AWG', '6 AWG', '2 AWG', '4/0 AWG'];
	const tree = fc.array(
		fc.record({
			parent: fc.integer({ min: 0, max: 1_000_000 }),
			size: fc.constantFrom(...sizes),
			centimetres: fc.integer({ min: 10, max: 500 }),
			watts: fc.integer({ min: 1, max: 40 }),
		}),
		{ minLength: 1, maxLength: 25 },
	);
	fc.assert(
		fc.property(tree, (branches) => {
			const nameOf = (index: number) => (index === 0 ? 'battery' : `n${index}`);
			const parents = branches.map(({ parent }, index) => parent % (index + 1));
			const parts = branches.map(({ size, centimetres, watts }, index) => ({
				from: nameOf(parents[index] as number),
				to: nameOf(index + 1),
				size,
				lengthM: centimetres / 100,
				powerW: watts,
			}));
			const outcome = runTopic(network, { parts }, defaultContext);
			if (outcome.status !== 'answered') return;
			const results = Object.fromEntries(outcome.sizing.results.map((one) => [one.name, Number(one.value)]));
			const volts = (index: number) => (index === 0 ? 12 : (results[`voltageAtN${index}`] as number));
			for (const [index, parent] of parents.entries()) {
				expect(volts(index + 1)).toBeLessThan(volts(parent));
			}
			const wanted = branches.reduce((sum, { watts }) => sum + watts, 0);
			expect(results.totalLoad).toBeCloseTo(wanted, 6);
			expect((results.totalCurrent as number) * 12).toBeCloseTo(
				(results.totalLoad as number) + (results.loss as number),
				6,
			);
		}),
		{ numRuns: 200 },
	);
});
