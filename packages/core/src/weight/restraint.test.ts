import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Bolt, bolts } from '../tables/bolts.js';
import {
	allowedOf,
	boltArms,
	checkBolt,
	type Fixing,
	loadCases,
	tippingPullN,
	worstOf,
} from './restraint.js';

const m8 = bolts.find((bolt) => bolt.thread === 'M8' && bolt.propertyClass === '8.8') as Bolt;
const hard = bolts.find((bolt) => bolt.thread === 'M8' && bolt.propertyClass === '10.9') as Bolt;

const fixing: Fixing = {
	massKg: 60,
	centreHeightM: 0.2,
	alongM: 0.4,
	acrossM: 0.3,
	count: 4,
	prying: 1,
	sheet: null,
	insertN: null,
	safetyFactor: 2,
};

describe('balances', () => {
	test('the bolts’ pulls hold the tipping moment', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 5000, noNaN: true }),
				fc.array(fc.double({ min: 0, max: 2, noNaN: true }), { minLength: 2, maxLength: 12 }),
				(momentNm, arms) => {
					const most = Math.max(...arms);
					fc.pre(most > 0.01);
					const pull = tippingPullN(momentNm, arms);
					// every bolt pulls in proportion to its arm
					const held = arms.reduce((sum, arm) => sum + ((pull * arm) / most) * arm, 0);
					expect(held).toBeCloseTo(momentNm, 6);
				},
			),
		);
	});

	test('the bolts’ shear adds to the force', () => {
		for (const count of [4, 6, 8, 10, 12]) {
			for (const check of checkBolt({ ...fixing, count }, m8, loadCases.driving)) {
				if (check.direction !== 'upward') expect(check.shearN * count).toBeCloseTo(check.forceN, 9);
			}
		}
	});

	test('upward, the bolts’ pull adds to the force', () => {
		const upward = checkBolt(fixing, m8, loadCases.crash).find((check) => check.direction === 'upward');
		expect((upward?.tensionN as number) * 4).toBeCloseTo(10 * 60 * 9.80665, 9);
		expect(upward?.shearN).toBe(0);
	});
});

test('no arm, no hold against tipping', () => {
	expect(tippingPullN(10, [0, 0])).toBe(Number.POSITIVE_INFINITY);
	expect(tippingPullN(0, [0, 0])).toBe(0);
});

test('bolts stand in two even lines; an odd one is left out', () => {
	expect(boltArms({ ...fixing, count: 6 })).toEqual({
		along: [0, 0.2, 0.4, 0, 0.2, 0.4],
		across: [0, 0, 0, 0.3, 0.3, 0.3],
	});
	expect(boltArms({ ...fixing, count: 7 })).toEqual(boltArms({ ...fixing, count: 6 }));
	expect(boltArms({ ...fixing, count: 2 }).along).toEqual([0, 0]);
});

test('heavier, taller, closer, fewer or more prying is never better', () => {
	fc.assert(
		fc.property(
			fc.double({ min: 1, max: 300, noNaN: true }),
			fc.double({ min: 0, max: 1.5, noNaN: true }),
			fc.double({ min: 0.1, max: 1.5, noNaN: true }),
			(massKg, centreHeightM, alongM) => {
				const base = { ...fixing, massKg, centreHeightM, alongM };
				const used = (changed: Partial<Fixing>) =>
					worstOf(checkBolt({ ...base, ...changed }, m8, loadCases.crash)).utilisation;
				const now = used({});
				expect(used({ massKg: massKg * 1.1 })).toBeGreaterThan(now);
				expect(used({ centreHeightM: centreHeightM + 0.1 })).toBeGreaterThanOrEqual(now);
				expect(used({ alongM: alongM * 0.9 })).toBeGreaterThanOrEqual(now);
				expect(used({ prying: 2 })).toBeGreaterThanOrEqual(now);
				expect(used({ count: 8 })).toBeLessThanOrEqual(now);
			},
		),
	);
});

describe('what a bolt may take', () => {
	test('six tenths in shear, half for class 10.9 threads', () => {
		expect(allowedOf(fixing, m8).shearN).toBeCloseTo((0.6 * 21_200) / 2, 9);
		expect(allowedOf(fixing, hard).shearN).toBeCloseTo((0.5 * 30_400) / 2, 9);
	});

	test('the weakest of bolt, insert and sheet counts', () => {
		expect(allowedOf({ ...fixing, insertN: 5000 }, m8).tensionN).toBe(2500);
		expect(allowedOf({ ...fixing, insertN: 1e6 }, m8).tensionN).toBe(10_600);
		const sheet = { thicknessMm: 0.8, ultimateMpa: 270, washerMm: 16 };
		const thin = allowedOf({ ...fixing, sheet }, m8);
		expect(thin.shearN).toBeCloseTo((1.5 * 270 * 8 * 0.8) / 2, 9);
		expect(thin.tensionN).toBeCloseTo((0.6 * Math.PI * 16 * 0.8 * 270) / 2, 9);
		const thick = allowedOf({ ...fixing, sheet: { ...sheet, thicknessMm: 20 } }, m8);
		expect(thick).toEqual(allowedOf(fixing, m8));
	});
});
