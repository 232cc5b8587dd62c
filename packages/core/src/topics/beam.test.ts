import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beamMaterials } from '../tables/metals.js';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import type { Sizing } from '../topic/sizing.js';
import { beam } from './beam.js';

const context = { ...defaultContext, units: 'metric' } as const;
const outcomeOf = (given: Readonly<Record<string, unknown>>) => runTopic(beam, given, context);
function answered(given: Readonly<Record<string, unknown>>): Sizing {
	const outcome = outcomeOf(given);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}
const shown = (sizing: Sizing, name: string) => sizing.results.find((result) => result.name === name)?.value;
const value = (sizing: Sizing, name: string) => shown(sizing, name) as number;
const codes = (sizing: Sizing) => sizing.findings.map((finding) => finding.code);

const tube = { widthMm: 40, heightMm: 40, wallMm: 2 };
const rail = { spanM: 1.2, ...tube, loads: [{ massKg: 40, spread: true }] };

describe('worked by hand', () => {
	test('40 × 40 × 2 tube, 400 N/m over 1.2 m, and its own weight', () => {
		const sizing = answered({ spanM: 1.2, ...tube, loads: [{ lineLoadNPerM: 400 }], moving: false });
		const w = 400 + 304 * 1e-6 * 2700 * 9.80665;
		expect(value(sizing, 'secondMoment')).toBeCloseTo(73_365.3, 1);
		expect(value(sizing, 'maxMoment')).toBeCloseTo((w * 1.2 ** 2) / 8, 9);
		expect(value(sizing, 'stress')).toBeCloseTo(((w * 1.2 ** 2) / 8 / 3668.27) * 1000, 2);
		expect(value(sizing, 'deflection')).toBeCloseTo((5 * w * 1.2 ** 4 * 1000) / (384 * 69.6 * 73.3653), 4);
		expect(value(sizing, 'reactionLeft')).toBeCloseTo((w * 1.2) / 2, 9);
		expect(shown(sizing, 'verdict')).toBe('holds');
	});

	test('steel flat as a bracket, 100 N at the tip', () => {
		const sizing = answered({
			spanM: 0.25,
			widthMm: 30,
			heightMm: 6,
			material: 'steel',
			holding: 'cantilever',
			loads: [{ forceN: 100 }],
			moving: false,
		});
		const own = 180e-6 * 7850 * 9.80665;
		expect(value(sizing, 'maxMoment')).toBeCloseTo(25 + (own * 0.25 ** 2) / 2, 9);
		expect(value(sizing, 'coupleWall')).toBeCloseTo(25 + (own * 0.25 ** 2) / 2, 9);
		expect(value(sizing, 'deflection')).toBeCloseTo(4.8225 + (own * 0.25 ** 4 * 1e3) / (8 * 200 * 0.54), 3);
	});

	test('any set of loads on a given section', () => {
		const sizing = answered({
			spanM: 2,
			secondMomentMm4: 82_000,
			heightMm: 40,
			loads: [
				{ forceN: 300, atM: 0.5 },
				{ forceN: 200, atM: 1.4 },
				{ lineLoadNPerM: 100, atM: 0.2, toM: 1 },
			],
			moving: false,
		});
		// moments about the right support
		expect(value(sizing, 'reactionLeft')).toBeCloseTo((300 * 1.5 + 200 * 0.6 + 80 * 1.4) / 2, 9);
		expect(value(sizing, 'reactionRight')).toBeCloseTo(580 - 341, 9);
	});
});

describe('what the answer promises', () => {
	test('within its limits whenever it says it holds, at the longest span too', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 300, noNaN: true }),
				fc.double({ min: 0.3, max: 3, noNaN: true }),
				fc.constantFrom('simple', 'cantilever', 'fixed', 'propped'),
				fc.constantFrom('6063-T5', '6061-T6', 'steel', 'plywood'),
				fc.boolean(),
				(massKg, spanM, holding, material, spread) => {
					const given = { ...tube, spanM, holding, material, loads: [{ massKg, spread }] };
					const sizing = answered(given);
					const holds = value(sizing, 'deflectionRatio') >= 240 && value(sizing, 'safetyFactor') >= 2;
					expect(shown(sizing, 'verdict')).toBe(holds ? 'holds' : 'not enough');
					const limitM = value(sizing, 'spanLimit');
					if (limitM < 0.02 || limitM > 10) return;
					expect(shown(answered({ ...given, spanM: limitM * 0.9999 }), 'verdict')).toBe('holds');
				},
			),
			{ numRuns: 40 },
		);
	});

	test('the section that is said to clear it clears it', () => {
		const sizing = answered({ ...rail, loads: [{ massKg: 180, spread: true }], moving: false });
		const named = /Cleared by 40 × (\d+) × 2 mm tube/.exec(sizing.because ?? '');
		expect(named).not.toBeNull();
		const heightMm = Number(named?.[1]);
		const given = { ...rail, loads: [{ massKg: 180, spread: true }], moving: false };
		expect(shown(answered({ ...given, heightMm }), 'verdict')).toBe('holds');
		expect(shown(answered({ ...given, heightMm: heightMm - 5 }), 'verdict')).toBe('not enough');
		const members = /(\d+) members/.exec(sizing.because ?? '');
		expect(shown(answered({ ...given, rails: Number(members?.[1]) }), 'verdict')).toBe('holds');
	});
});

describe('findings', () => {
	test('too soft: a warning with what clears it', () => {
		const sizing = answered({
			...rail,
			loads: [{ massKg: 90, spread: true }],
			material: '6061-T6',
			spanM: 1.6,
			moving: false,
		});
		expect(codes(sizing)).toEqual(['deflection-over-limit']);
		expect(sizing.findings[0]).toMatchObject({ severity: 'warning' });
		expect(sizing.findings[0]?.text).toMatch(/Cleared by 40 × \d+ × 2 mm tube, or a span of [\d.]+ m/);
		expect(codes(answered(rail))).not.toContain('deflection-over-limit');
	});

	test('less than the safety factor asked, and beyond yield', () => {
		const at = (massKg: number) => answered({ ...rail, loads: [{ massKg }], moving: false });
		expect(codes(at(120))).toContain('stress-over-limit');
		expect(codes(at(300))).toContain('beam-yields');
		expect(at(300).findings[0]?.severity).toBe('danger');
		expect(codes(at(20))).toEqual([]);
	});

	test('bumps count for strength, not for sag', () => {
		const parked = answered({ ...rail, moving: false });
		const moving = answered({ ...rail, moving: true });
		expect(value(moving, 'deflection')).toBe(value(parked, 'deflection'));
		expect(value(moving, 'safetyFactor')).toBeCloseTo(value(parked, 'safetyFactor') / 2, 9);
		expect(value(answered(rail), 'safetyFactor')).toBe(value(moving, 'safetyFactor'));
	});

	test('an overhang that lifts its far support', () => {
		const over = { ...rail, overhangM: 0.4, loads: [{ massKg: 30, atM: 1.6 }] };
		expect(codes(answered(over))).toContain('support-lifts');
		expect(value(answered(over), 'reactionLeft')).toBeLessThan(0);
		expect(codes(answered({ ...over, loads: [{ massKg: 30, atM: 0.6 }] }))).not.toContain('support-lifts');
	});

	test('thin walls, angles, welds', () => {
		expect(codes(answered({ ...rail, widthMm: 80, heightMm: 80, wallMm: 1.5 }))).toContain('thin-wall');
		expect(codes(answered(rail))).not.toContain('thin-wall');
		expect(codes(answered({ ...rail, shape: 'angle', wallMm: 4 }))).toContain('angle-twists');
		expect(codes(answered(rail))).not.toContain('angle-twists');
		const welded = answered({ ...rail, welded: true });
		expect(codes(welded)).toContain('weld-softens');
		expect(value(welded, 'safetyFactor')).toBeCloseTo(value(answered(rail), 'safetyFactor') / 2, 9);
		expect(codes(answered({ ...rail, welded: true, material: 'steel' }))).not.toContain('weld-softens');
	});

	test('a profile without its height is not checked for strength', () => {
		const slot = { spanM: 1.2, secondMomentMm4: 82_000, loads: [{ massKg: 20 }] };
		expect(codes(answered(slot))).toContain('strength-not-checked');
		expect(shown(answered(slot), 'safetyFactor')).toBeUndefined();
		expect(codes(answered({ ...slot, heightMm: 40 }))).not.toContain('strength-not-checked');
	});
});

describe('how loads and sizes are read', () => {
	test('a load with no place stands where it is worst, and that is said', () => {
		const sizing = answered({ ...rail, loads: [{ massKg: 40 }] });
		expect(sizing.assumed.map((one) => one.name)).toContain('place of load');
		expect(value(sizing, 'maxMoment')).toBeGreaterThan(value(answered(rail), 'maxMoment'));
	});

	test('people without a mass are taken heavy, once for each', () => {
		const two = answered({ ...rail, loads: [{ name: 'people', count: 2 }] });
		expect(two.assumed.find((one) => one.name === 'mass of people')?.value).toBe(100);
		const given = answered({ ...rail, loads: [{ name: 'people', massKg: 100, count: 2 }] });
		expect(value(two, 'maxMoment')).toBe(value(given, 'maxMoment'));
	});

	test('the one length named is the span', () => {
		const sizing = answered({ ...tube, loads: [{ massKg: 40, atM: 1.2 }] });
		expect(sizing.assumed.find((one) => one.name === 'spanM')?.value).toBe(1.2);
		const apart = answered({ ...tube, loads: [{ atM: 1.2 }, { massKg: 40 }] });
		expect(value(apart, 'deflection')).toBe(value(sizing, 'deflection'));
	});

	test('of two lengths with one load the first and longer is the span', () => {
		const sizing = answered({ ...tube, loads: [{ massKg: 40, atM: 1, toM: 0.4 }] });
		const said = answered({ ...tube, spanM: 1, loads: [{ massKg: 40, atM: 0.4 }] });
		expect(value(sizing, 'deflection')).toBe(value(said, 'deflection'));
	});

	test('a word with a length and nothing to weigh is no load', () => {
		const sizing = answered({ ...tube, loads: [{ name: 'bracket', atM: 0.5 }, { massKg: 40 }] });
		expect(value(sizing, 'deflection')).toBe(
			value(answered({ ...tube, spanM: 0.5, loads: [{ massKg: 40 }] }), 'deflection'),
		);
	});

	test('no span: the longest one', () => {
		const sizing = answered({ ...tube, loads: [{ massKg: 40 }] });
		const longest = value(sizing, 'spanLimit');
		expect(sizing.headline).toBe(`Up to ${Math.floor(longest * 100) / 100} m of span`);
		const at = (spanM: number) => shown(answered({ ...tube, spanM, loads: [{ massKg: 40 }] }), 'verdict');
		expect(at(longest * 0.999)).toBe('holds');
		expect(at(longest * 1.001)).toBe('not enough');
		const outcome = outcomeOf({ ...tube, loads: [{ massKg: 1e5 / 20 }, { massKg: 5000, count: 50 }] });
		expect(outcome.status === 'refused' && outcome.refusals[0]?.code).toBe('impossible');
	});

	test('a board by its fraction of an inch', () => {
		const board = { spanM: 0.9, widthMm: 400, material: 'plywood', loads: [{ massKg: 10 }] };
		expect(value(answered({ ...board, board: '3/4' }), 'deflection')).toBeCloseTo(
			value(answered({ ...board, heightMm: 19.05 }), 'deflection'),
			9,
		);
	});

	test('the section as one marking', () => {
		const marked = answered({ spanM: 1.2, section: '40x40x2', loads: rail.loads });
		expect(value(marked, 'deflection')).toBe(value(answered(rail), 'deflection'));
	});

	test('a marking of two unlike sides lies flat unless it is said to stand', () => {
		const given = { spanM: 1.2, loads: rail.loads };
		const flat = answered({ ...given, section: '20x40x2' });
		expect(value(flat, 'deflection')).toBe(
			value(answered({ ...given, widthMm: 40, heightMm: 20, wallMm: 2 }), 'deflection'),
		);
		expect(flat.assumed.map((one) => one.name)).toContain('onEdge');
		const standing = answered({ ...given, section: '40x20x2', onEdge: true });
		expect(value(standing, 'deflection')).toBe(
			value(answered({ ...given, widthMm: 20, heightMm: 40, wallMm: 2 }), 'deflection'),
		);
		expect(standing.assumed.map((one) => one.name)).not.toContain('onEdge');
		expect(answered({ ...given, section: '40x40x2' }).assumed.map((one) => one.name)).not.toContain('onEdge');
	});

	test('an alloy without its temper counts for the weaker one', () => {
		const plain = answered({ ...rail, alloy: '6063' });
		expect(value(plain, 'safetyFactor')).toBe(value(answered({ ...rail, alloy: '6063-T5' }), 'safetyFactor'));
		expect(value(answered({ ...rail, alloy: '6063 T6' }), 'safetyFactor')).toBeGreaterThan(
			value(plain, 'safetyFactor'),
		);
	});

	test('a material from memory says so', () => {
		expect(answered({ ...rail, material: '6105-T5' }).sources.join(';')).toContain(
			'6105-T5 extrusions up to 25 mm (from memory',
		);
		expect(beamMaterials['6063-T5'].source.mark).toBe('verified');
	});
});

describe('what is asked and refused', () => {
	test.each([
		[
			{
				...tube,
				loads: [
					{ massKg: 40, atM: 0.3 },
					{ massKg: 20, atM: 0.6 },
				],
			},
			'spanM',
		],
		[{ spanM: 1.2, ...tube }, 'loads'],
		[{ spanM: 1.2, ...tube, loads: [{ name: 'fridge' }] }, 'loads'],
		[{ spanM: 1.2, loads: [{ massKg: 40 }] }, 'section'],
		[{ spanM: 1.2, widthMm: 40, shape: 'tube', loads: [{ massKg: 40 }] }, 'section'],
		[{ spanM: 1.2, widthMm: 40, loads: [{ massKg: 40 }] }, 'section'],
	])('asks for %#', (given, name) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'needs-input' && outcome.missing[0]?.name).toBe(name);
	});

	test.each([
		['a wall that fills it', { ...rail, wallMm: 20 }, 'impossible', 'section'],
		[
			'a section that is none',
			{ spanM: 1.2, section: '40x40x30', loads: rail.loads },
			'impossible',
			'section',
		],
		['an unknown alloy', { ...rail, alloy: '6082-T6' }, 'not-covered', 'alloy'],
		['a load off the rail', { ...rail, loads: [{ massKg: 5, atM: 2 }] }, 'contradiction', 'loads'],
		[
			'a load that ends before it begins',
			{ ...rail, loads: [{ massKg: 5, atM: 0.8, toM: 0.2 }] },
			'contradiction',
			'loads',
		],
		['no span', { ...rail, spanM: 0 }, 'out-of-range', 'spanM'],
	])('%s', (_, given, code, field) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'refused' && outcome.refusals[0]).toMatchObject({ code, field });
	});
});

test('in inches for those who think so', () => {
	const outcome = runTopic(beam, rail, defaultContext);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	expect(shown(outcome.sizing, 'section')).toBe('1.575 × 1.575 × 0.079 in tube');
});
