import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axleLoads, type EmptyVehicle, type Load, reliefOf, shareOn, stabilityFactor } from './ledger.js';

const van: EmptyVehicle = { wheelbaseM: 3.665, frontKg: 1350, rearKg: 1050, trackM: 1.7, centreHeightM: 0.8 };

const aLoad: fc.Arbitrary<Load> = fc.record({
	name: fc.constant('load'),
	massKg: fc.double({ min: 0, max: 500, noNaN: true }),
	positionM: fc.double({ min: -1, max: 6, noNaN: true }),
	sideM: fc.double({ min: -1, max: 1, noNaN: true }),
	heightM: fc.double({ min: 0.3, max: 3, noNaN: true }),
});
const someLoads = fc.array(aLoad, { maxLength: 20 });

const total = (loads: readonly Load[]) => loads.reduce((sum, load) => sum + load.massKg, 0);

describe('balances', () => {
	test('axles, sides and corners add to the total', () => {
		fc.assert(
			fc.property(someLoads, (loads) => {
				const result = axleLoads(van, loads);
				const expected = 2400 + total(loads);
				expect(result.totalKg).toBeCloseTo(expected, 6);
				expect(result.frontKg + result.rearKg).toBeCloseTo(expected, 6);
				expect(result.leftKg + result.rightKg).toBeCloseTo(expected, 6);
				expect(result.frontLeftKg + result.frontRightKg).toBeCloseTo(result.frontKg, 6);
				expect(result.rearLeftKg + result.rearRightKg).toBeCloseTo(result.rearKg, 6);
			}),
		);
	});

	test('moments about front axle, middle line and ground balance', () => {
		fc.assert(
			fc.property(someLoads, (loads) => {
				const result = axleLoads(van, loads);
				const along = 1050 * 3.665 + loads.reduce((sum, load) => sum + load.massKg * load.positionM, 0);
				expect(result.rearKg * 3.665).toBeCloseTo(along, 5);
				expect(result.centreBehindFrontM * result.totalKg).toBeCloseTo(along, 5);
				const across = loads.reduce((sum, load) => sum + load.massKg * load.sideM, 0);
				expect(((result.rightKg - result.leftKg) * 1.7) / 2).toBeCloseTo(across, 5);
				const up = 2400 * 0.8 + loads.reduce((sum, load) => sum + load.massKg * load.heightM, 0);
				expect(result.centreHeightM * result.totalKg).toBeCloseTo(up, 5);
			}),
		);
	});

	test('loads in one place are as one load, in any order', () => {
		fc.assert(
			fc.property(someLoads, (loads) => {
				const forward = axleLoads(van, loads);
				const backward = axleLoads(van, loads.toReversed());
				expect(forward.rearKg).toBeCloseTo(backward.rearKg, 6);
				const doubled = axleLoads(van, [...loads, ...loads]);
				const twice = axleLoads(
					van,
					loads.map((load) => ({ ...load, massKg: 2 * load.massKg })),
				);
				expect(doubled.rearKg).toBeCloseTo(twice.rearKg, 6);
			}),
		);
	});
});

describe('where a load stands', () => {
	const at = (positionM: number) =>
		axleLoads(van, [{ name: 'x', massKg: 100, positionM, sideM: 0, heightM: 1 }]);

	test('over an axle it is all on that axle', () => {
		expect(at(0).frontKg).toBeCloseTo(1450, 9);
		expect(at(3.665).rearKg).toBeCloseTo(1150, 9);
	});

	test('behind the rear axle it lightens the front', () => {
		expect(at(4.665).frontKg).toBeLessThan(1350);
		expect(at(4.665).rearKg).toBeGreaterThan(1150);
	});

	test('ahead of the front axle it lightens the rear', () => {
		expect(at(-0.5).rearKg).toBeLessThan(1050);
	});
});

describe('what brings an axle down', () => {
	const reach = { nearestM: 1.6, farthestM: 4.6 };

	test.each(['rear', 'front'] as const)('%s: each way clears exactly the excess', (axle) => {
		fc.assert(
			fc.property(
				fc.array(
					aLoad.filter((load) => load.massKg > 1),
					{ minLength: 1, maxLength: 6 },
				),
				fc.double({ min: 0.5, max: 100, noNaN: true }),
				(loads, excessKg) => {
					const on = (some: readonly Load[]) => {
						const result = axleLoads(van, some);
						return axle === 'rear' ? result.rearKg : result.frontKg;
					};
					const before = on(loads);
					reliefOf(axle, excessKg, loads, van.wheelbaseM, reach).forEach((relief, index) => {
						const { removeKg, moveM } = relief;
						const changed = (change: (load: Load) => Load) =>
							on(loads.map((load, place) => (place === index ? change(load) : load)));
						if (removeKg !== null) {
							const after = changed((load) => ({ ...load, massKg: load.massKg - removeKg }));
							expect(before - after).toBeCloseTo(excessKg, 6);
						}
						if (moveM !== null) {
							const direction = axle === 'rear' ? -1 : 1;
							const after = changed((load) => ({ ...load, positionM: load.positionM + direction * moveM }));
							expect(before - after).toBeCloseTo(excessKg, 6);
						}
					});
				},
			),
		);
	});

	test('not more than there is, nor beyond the van', () => {
		const load: Load = { name: 'box', massKg: 20, positionM: 3.665, sideM: 0, heightM: 1 };
		expect(reliefOf('rear', 21, [load], 3.665, reach)[0]).toEqual({
			name: 'box',
			removeKg: null,
			moveM: null,
		});
		expect(reliefOf('rear', 20, [load], 3.665, reach)[0]?.removeKg).toBeCloseTo(20, 9);
	});

	test('taking off a load ahead of the front axle does not help the rear', () => {
		const winch: Load = { name: 'winch', massKg: 60, positionM: -0.6, sideM: 0, heightM: 0.8 };
		expect(reliefOf('rear', 5, [winch], 3.665, reach)[0]?.removeKg).toBeNull();
	});
});

test('shares of both axles make the whole', () => {
	fc.assert(
		fc.property(fc.double({ min: -2, max: 8, noNaN: true }), (x) => {
			expect(shareOn('front', x, 3.5) + shareOn('rear', x, 3.5)).toBeCloseTo(1, 12);
		}),
	);
});

test('higher is less stable, wider is more', () => {
	expect(stabilityFactor(1.7, 0.9)).toBeLessThan(stabilityFactor(1.7, 0.8));
	expect(stabilityFactor(1.8, 0.8)).toBeGreaterThan(stabilityFactor(1.7, 0.8));
});
