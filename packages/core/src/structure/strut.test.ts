import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	type GasSpring,
	holdingForceN,
	type Lid,
	lidFrom,
	springFor,
	springForceN,
	springLine,
	swingCurve,
	swingPoint,
	temperatureFactor,
	weightMomentNm,
} from './strut.js';

const lidValues = {
	massKg: 15,
	centreM: 0.45,
	lid: 'flat',
	openingDeg: 85,
	handleM: 0.9,
	lidMountM: 0.3,
	lidMountBelowM: 0.02,
	bodyMountOutM: 0.03,
	bodyMountBelowM: 0.25,
	springs: 2,
} as const;

const aLid: fc.Arbitrary<Lid> = fc
	.record({
		massKg: fc.double({ min: 1, max: 60, noNaN: true }),
		centreM: fc.double({ min: 0.1, max: 1, noNaN: true }),
		lid: fc.constantFrom('flat' as const, 'hatch' as const),
		openingDeg: fc.double({ min: 30, max: 100, noNaN: true }),
		handleM: fc.double({ min: 0.2, max: 1.5, noNaN: true }),
		lidMountM: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
		lidMountBelowM: fc.double({ min: 0, max: 0.05, noNaN: true }),
		bodyMountOutM: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
		bodyMountBelowM: fc.double({ min: 0.15, max: 0.7, noNaN: true }),
		springs: fc.integer({ min: 1, max: 4 }),
	})
	.map(lidFrom);

const radians = Math.PI / 180;

describe('virtual work', () => {
	test('the springs’ moment is the work of their force on their lengthening', () => {
		fc.assert(
			fc.property(aLid, fc.double({ min: 0, max: 1, noNaN: true }), (lid, share) => {
				const spring = springFor(lid, 400, 1.3);
				const angle = lid.closedDeg + share * (lid.openDeg - lid.closedDeg);
				const step = 1e-4;
				const lengthening =
					(springLine(lid, angle + step).lengthM - springLine(lid, angle - step).lengthM) /
					(2 * step * radians);
				const point = swingPoint(lid, spring, angle, 20);
				expect(point.springMomentNm).toBeCloseTo(lid.springs * point.springN * lengthening, 3);
			}),
		);
	});

	test('the weight’s moment is what raising the centre of mass takes', () => {
		fc.assert(
			fc.property(aLid, fc.double({ min: 0, max: 1, noNaN: true }), (lid, share) => {
				const angle = lid.closedDeg + share * (lid.openDeg - lid.closedDeg);
				const height = (degrees: number) =>
					lid.centre.x * Math.sin(degrees * radians) + lid.centre.y * Math.cos(degrees * radians);
				const step = 1e-4;
				const rise = (height(angle + step) - height(angle - step)) / (2 * step * radians);
				expect(weightMomentNm(lid, angle)).toBeCloseTo(lid.massKg * 9.80665 * rise, 4);
			}),
		);
	});

	test('over a whole swing the hand gives the lift less what the springs give', () => {
		fc.assert(
			fc.property(aLid, (lid) => {
				const spring = springFor(lid, 300, 1.25);
				const curve = swingCurve(lid, spring, 20, 2000);
				const stepRad = ((lid.openDeg - lid.closedDeg) * radians) / 2000;
				// trapezia over the swing
				const handJ = curve.reduce(
					(sum, point, index) =>
						sum + point.handN * lid.handleM * stepRad * (index === 0 || index === 2000 ? 0.5 : 1),
					0,
				);
				const height = (degrees: number) => lid.centre.x * Math.sin(degrees * radians);
				const liftJ = lid.massKg * 9.80665 * (height(lid.openDeg) - height(lid.closedDeg));
				const first = springLine(lid, lid.closedDeg).lengthM;
				const last = springLine(lid, lid.openDeg).lengthM;
				const mean = (springForceN(spring, first, 20) + springForceN(spring, last, 20)) / 2;
				const springJ = lid.springs * mean * (last - first);
				expect(Math.abs(handJ - (liftJ - springJ))).toBeLessThan(
					1e-3 * (Math.abs(liftJ) + Math.abs(springJ) + 1),
				);
			}),
			{ numRuns: 30 },
		);
	});
});

describe('the force that holds', () => {
	test('it holds from there to open, and nine tenths of it do not', () => {
		fc.assert(
			fc.property(aLid, fc.double({ min: -30, max: 40, noNaN: true }), (lid, temperatureC) => {
				const unit = springFor(lid, 1, 1.2);
				const middle = (lid.closedDeg + lid.openDeg) / 2;
				const needed = holdingForceN(lid, unit, middle, temperatureC, 1);
				fc.pre(needed !== null && needed > 1);
				const handsAt = (extendedN: number) =>
					Array.from({ length: 181 }, (_, index) => {
						const angle = middle + ((lid.openDeg - middle) * index) / 180;
						return swingPoint(lid, { ...unit, extendedN }, angle, temperatureC);
					})
						// beyond upright the weight itself keeps the lid open
						.filter((point) => point.weightMomentNm > 1e-6)
						.map((point) => point.handN);
				expect(Math.max(...handsAt(needed as number))).toBeLessThanOrEqual(1e-6);
				expect(Math.max(...handsAt(0.9 * (needed as number)))).toBeGreaterThan(0);
			}),
		);
	});

	test('more mass takes more force, in proportion', () => {
		const lid = lidFrom(lidValues);
		const unit = springFor(lid, 1, 1.2);
		const force = (massKg: number) => holdingForceN({ ...lid, massKg }, unit, 40, 20, 1) as number;
		expect(force(30)).toBeCloseTo(2 * force(15), 9);
	});

	test('none where the spring pulls the wrong way', () => {
		const lid = lidFrom({ ...lidValues, bodyMountBelowM: -0.6, bodyMountOutM: 0.4 });
		expect(holdingForceN(lid, springFor(lid, 1, 1.2), 40, 20, 1)).toBeNull();
	});

	test('an upright lid needs none', () => {
		const lid = lidFrom({ ...lidValues, openingDeg: 90 });
		expect(holdingForceN(lid, springFor(lid, 1, 1.2), 90, 20, 1)).toBe(0);
	});
});

describe('the spring', () => {
	const spring: GasSpring = { extendedN: 400, progression: 1.3, extendedM: 0.5, strokeM: 0.2 };

	test('its rated force extended, progression times as much pushed in', () => {
		expect(springForceN(spring, 0.5, 20)).toBeCloseTo(400, 9);
		expect(springForceN(spring, 0.3, 20)).toBeCloseTo(520, 9);
		expect(springForceN(spring, 0.4, 20)).toBeCloseTo(460, 9);
	});

	test('weaker in the cold, stronger in the heat', () => {
		expect(temperatureFactor(20)).toBe(1);
		expect(springForceN(spring, 0.5, -10)).toBeLessThan(400);
		expect(springForceN(spring, 0.5, 40)).toBeGreaterThan(400);
	});
});

test('the curve runs from shut to open', () => {
	const lid = lidFrom({ ...lidValues, lid: 'hatch' });
	const curve = swingCurve(lid, springFor(lid, 300, 1.2), 20);
	expect(curve).toHaveLength(61);
	expect(curve[0]?.angleDeg).toBe(-90);
	expect(curve.at(-1)?.angleDeg).toBe(-5);
});
