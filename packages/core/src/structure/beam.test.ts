import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Beam, type BeamLoad, type SolvedBeam, type Support, solveBeam } from './beam.js';

// What is checked against published tables stands in tests/reference; here are the laws every beam obeys.
const place = fc.double({ min: 0, max: 1, noNaN: true });
const force = fc.double({ min: -5000, max: 5000, noNaN: true }).filter((one) => Math.abs(one) > 1e-3);
const aLoad: fc.Arbitrary<BeamLoad> = fc.oneof(
	fc.record({ kind: fc.constant('point' as const), atM: place, forceN: force }),
	fc
		.tuple(place, place, force)
		.filter(([a, b]) => Math.abs(a - b) > 1e-3)
		.map(
			([a, b, forceNPerM]): BeamLoad => ({
				kind: 'uniform',
				fromM: Math.min(a, b),
				toM: Math.max(a, b),
				forceNPerM,
			}),
		),
);
const loads = fc.array(aLoad, { minLength: 1, maxLength: 6 });

const supportSets: readonly (readonly Support[])[] = [
	[
		{ atM: 0, kind: 'pinned' },
		{ atM: 1, kind: 'pinned' },
	],
	[{ atM: 0, kind: 'fixed' }],
	[{ atM: 1, kind: 'fixed' }],
	[
		{ atM: 0, kind: 'fixed' },
		{ atM: 1, kind: 'fixed' },
	],
	[
		{ atM: 0, kind: 'fixed' },
		{ atM: 1, kind: 'pinned' },
	],
	[
		{ atM: 0.2, kind: 'pinned' },
		{ atM: 0.75, kind: 'pinned' },
	],
	[
		{ atM: 0, kind: 'pinned' },
		{ atM: 0.4, kind: 'pinned' },
		{ atM: 1, kind: 'pinned' },
	],
	[
		{ atM: 0.1, kind: 'fixed' },
		{ atM: 0.5, kind: 'pinned' },
		{ atM: 0.9, kind: 'fixed' },
	],
];
const supports = fc.constantFrom(...supportSets);
const aBeam: fc.Arbitrary<Beam> = fc.record({
	lengthM: fc.constant(1),
	supports,
	loads,
	rigidityNm2: fc.double({ min: 50, max: 1e5, noNaN: true }),
});

function solved(beam: Beam): SolvedBeam {
	const solution = solveBeam(beam);
	if (solution === null) throw new Error('not held');
	return solution;
}

function totalN(all: readonly BeamLoad[]): number {
	return all.reduce(
		(sum, load) => sum + (load.kind === 'point' ? load.forceN : load.forceNPerM * (load.toM - load.fromM)),
		0,
	);
}

function momentAboutLeftNm(all: readonly BeamLoad[]): number {
	return all.reduce(
		(sum, load) =>
			sum +
			(load.kind === 'point'
				? load.forceN * load.atM
				: (load.forceNPerM * (load.toM ** 2 - load.fromM ** 2)) / 2),
		0,
	);
}

/** Size of a beam's loads, to judge rounding against. */
function sizeOf(all: readonly BeamLoad[]): number {
	return all.reduce((sum, load) => sum + Math.abs(load.kind === 'point' ? load.forceN : load.forceNPerM), 1);
}

describe('every beam', () => {
	test('reactions add to the loads, and so do their moments', () => {
		fc.assert(
			fc.property(aBeam, (beam) => {
				const { reactions } = solved(beam);
				const size = sizeOf(beam.loads);
				const forces = reactions.reduce((sum, one) => sum + one.forceN, 0);
				expect(Math.abs(forces - totalN(beam.loads)) / size).toBeLessThan(1e-9);
				// A reaction's couple adds sagging moment to its right: it turns against the loads about the left end.
				const moments = reactions.reduce((sum, one) => sum + one.forceN * one.atM - one.momentNm, 0);
				expect(Math.abs(moments - momentAboutLeftNm(beam.loads)) / size).toBeLessThan(1e-9);
			}),
		);
	});

	test('no moment and no shear beyond the right end', () => {
		fc.assert(
			fc.property(aBeam, (beam) => {
				const solution = solved(beam);
				const size = sizeOf(beam.loads);
				expect(Math.abs(solution.momentNm(1)) / size).toBeLessThan(1e-9);
				expect(Math.abs(solution.shearN(1)) / size).toBeLessThan(1e-9);
			}),
		);
	});

	test('supports do not move, fixed ones do not turn', () => {
		fc.assert(
			fc.property(aBeam, (beam) => {
				const solution = solved(beam);
				const scale = sizeOf(beam.loads) / beam.rigidityNm2;
				for (const support of beam.supports) {
					expect(Math.abs(solution.deflectionM(support.atM)) / scale).toBeLessThan(1e-9);
					if (support.kind === 'fixed') {
						expect(Math.abs(solution.slopeRad(support.atM)) / scale).toBeLessThan(1e-9);
					}
				}
			}),
		);
	});

	test('superposition: the sag of all loads is the sum of the sags of each', () => {
		fc.assert(
			fc.property(aBeam, place, (beam, x) => {
				const whole = solved(beam);
				const parts = beam.loads.map((load) => solved({ ...beam, loads: [load] }));
				const scale = sizeOf(beam.loads) / beam.rigidityNm2;
				const sum = parts.reduce((total, part) => total + part.deflectionM(x), 0);
				expect(Math.abs(whole.deflectionM(x) - sum) / scale).toBeLessThan(1e-9);
			}),
		);
	});

	test('reciprocity: a force at a sags b as one at b sags a', () => {
		fc.assert(
			fc.property(supports, place, place, (held, a, b) => {
				const at = (atM: number) =>
					solved({
						lengthM: 1,
						supports: held,
						loads: [{ kind: 'point', atM, forceN: 1000 }],
						rigidityNm2: 1000,
					});
				expect(Math.abs(at(a).deflectionM(b) - at(b).deflectionM(a))).toBeLessThan(1e-9);
			}),
		);
	});

	test('turned round it sags the same', () => {
		fc.assert(
			fc.property(aBeam, place, (beam, x) => {
				const turned: Beam = {
					...beam,
					supports: beam.supports.map((one) => ({ ...one, atM: 1 - one.atM })),
					loads: beam.loads.map((load) =>
						load.kind === 'point'
							? { ...load, atM: 1 - load.atM }
							: { ...load, fromM: 1 - load.toM, toM: 1 - load.fromM },
					),
				};
				const scale = sizeOf(beam.loads) / beam.rigidityNm2;
				expect(
					Math.abs(solved(beam).deflectionM(x) - solved(turned).deflectionM(1 - x)) / scale,
				).toBeLessThan(1e-9);
			}),
		);
	});

	test('the largest values are the largest of a fine search', () => {
		fc.assert(
			fc.property(aBeam, (beam) => {
				const solution = solved(beam);
				const scale = sizeOf(beam.loads);
				for (let index = 0; index <= 150; index += 1) {
					const x = index / 150;
					const sag = Math.abs(solution.deflectionM(x));
					expect(sag).toBeLessThanOrEqual(
						Math.abs(solution.largestDeflection.value) + (1e-9 * scale) / beam.rigidityNm2,
					);
					expect(Math.abs(solution.momentNm(x))).toBeLessThanOrEqual(
						Math.abs(solution.largestMoment.value) + 1e-9 * scale,
					);
					expect(Math.abs(solution.shearN(x))).toBeLessThanOrEqual(solution.largestShearN + 1e-9 * scale);
				}
			}),
			{ numRuns: 300 },
		);
	});

	test('slope is the change of sag, moment that of slope', () => {
		fc.assert(
			fc.property(aBeam, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (beam, x) => {
				const solution = solved(beam);
				const step = 1e-5;
				const scale = sizeOf(beam.loads) / beam.rigidityNm2;
				const slope = (solution.deflectionM(x + step) - solution.deflectionM(x - step)) / (2 * step);
				expect(Math.abs(slope - solution.slopeRad(x)) / scale).toBeLessThan(1e-4);
			}),
		);
	});
});

describe('what does not hold', () => {
	test.each<[string, readonly Support[]]>([
		['nothing', []],
		['one pinned support', [{ atM: 0.5, kind: 'pinned' }]],
		[
			'two supports in one place',
			[
				{ atM: 0.5, kind: 'pinned' },
				{ atM: 0.500001, kind: 'pinned' },
			],
		],
	])('%s', (_, held) => {
		expect(
			solveBeam({
				lengthM: 1,
				supports: held,
				loads: [{ kind: 'point', atM: 0.5, forceN: 1 }],
				rigidityNm2: 1,
			}),
		).toBeNull();
	});
});

test.each<[string, Partial<Beam>]>([
	['a load beyond the end', { loads: [{ kind: 'point', atM: 1 + 1e-12, forceN: 1 }] }],
	['a load before the start', { loads: [{ kind: 'uniform', fromM: -0.1, toM: 0.5, forceNPerM: 1 }] }],
	['a support beyond the end', { supports: [{ atM: 1.1, kind: 'fixed' }] }],
])('off the beam: %s', (_, changed) => {
	const beam: Beam = { lengthM: 1, supports: supportSets[0] as Support[], loads: [], rigidityNm2: 1 };
	expect(solveBeam({ ...beam, ...changed })).toBeNull();
});

test('no load, no sag', () => {
	const solution = solved({ lengthM: 1, supports: supportSets[3] as Support[], loads: [], rigidityNm2: 100 });
	expect(solution.largestDeflection.value).toBe(0);
	expect(solution.largestMoment.value).toBe(0);
	expect(solution.largestShearN).toBe(0);
});

test('loads very near each other and near a support are solved all the same', () => {
	const solution = solved({
		lengthM: 1,
		supports: supportSets[0] as Support[],
		loads: [
			{ kind: 'point', atM: 1e-9, forceN: 1000 },
			{ kind: 'point', atM: 0.5, forceN: 500 },
			{ kind: 'point', atM: 0.5 + 1e-12, forceN: 500 },
		],
		rigidityNm2: 1000,
	});
	expect(solution.largestDeflection.value).toBeCloseTo(1000 / (48 * 1000), 9);
});
