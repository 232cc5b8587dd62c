import { describe, expect, test } from 'vitest';
import {
	answered,
	codesOf,
	metric,
	numberOf,
	numbersOf,
	refusal,
} from '../../../../tests/reference/outcome.js';
import { openingLossPa } from '../climate/air.js';
import { vent } from './vent.js';

const fan = { airM3H: 600, volumeL: 12_000 };

describe('air changes and intake', () => {
	test('600 m³/h in 12 m³ renew the air 50 times an hour', () => {
		expect(numbersOf(vent, fan)).toMatchObject({ airChanges: 50, minutesPerChange: 1 / 50 });
	});

	test('the intake keeps the air at 2.5 m/s through its free area', () => {
		const needed = numberOf(vent, { ...fan, freeShare: 0.5 }, 'intakeNeeded');
		expect(600 / 3600 / (needed * 0.5)).toBeCloseTo(2.5, 9);
	});

	test('fan and opening meet where their pressures are equal', () => {
		const given = { ...fan, intakeM2: 0.02, freeShare: 1, stallPa: 0.04, airC: 20 };
		const { deliveredFlow = 0, intakeLoss = 0 } = numbersOf(vent, given);
		const fanPa = 40 * (1 - (deliveredFlow / 600) ** 2);
		expect(intakeLoss * 1000).toBeCloseTo(fanPa, 6);
		expect(intakeLoss * 1000).toBeCloseTo(openingLossPa(deliveredFlow, 0.02, 0.6, 1.2041), 2);
	});

	test('asked for air changes, the fan is the answer', () => {
		const given = { airChanges: 20, wheelbase: 'long', roof: 'high' };
		expect(numberOf(vent, given, 'fanFlow')).toBeCloseTo(20 * (3.7 + 1.4) * 1.8 * 2, 6);
		expect(answered(vent, given).headline).toMatch(/fan for 20 air changes/);
	});

	test('through a named intake the fan is chosen so that the air changes are met', () => {
		const given = { airChanges: 30, volumeL: 12_000, intakeM2: 0.1 };
		const free = numberOf(vent, given, 'fanFlow');
		expect(free).toBeGreaterThan(360);
		expect(numberOf(vent, given, 'deliveredFlow')).toBeCloseTo(360, 6);
		expect(refusal(vent, { ...given, intakeM2: 0.01 })).toMatchObject({
			code: 'impossible',
			field: 'intakeM2',
		});
	});

	test('without the size of the van the intake is still answered', () => {
		expect(answered(vent, { airM3H: 600 }).headline).toMatch(/^Intake of/);
		expect(numbersOf(vent, { airM3H: 600 })).not.toHaveProperty('airChanges');
		expect(answered(vent, { airM3H: 600, intakeM2: 0.02 }).headline).toMatch(/through this intake/);
	});

	test('an opening written as width by height', () => {
		const velocity = (more: object) => numberOf(vent, { ...fan, ...more }, 'intakeVelocity');
		expect(velocity({ opening: '6x10 in' })).toBeCloseTo(velocity({ intakeM2: 60 * 0.0254 ** 2 }), 9);
		expect(velocity({ opening: '20 x 30 cm' })).toBeCloseTo(velocity({ intakeM2: 0.06 }), 9);
		expect(velocity({ opening: '200x300mm' })).toBeCloseTo(velocity({ intakeM2: 0.06 }), 9);
		expect(refusal(vent, { ...fan, opening: '900x900 in' })).toMatchObject({ field: 'opening' });
	});

	test('velocity through a fan of named diameter', () => {
		expect(numberOf(vent, { ...fan, fanMm: 356 }, 'fanVelocity')).toBeCloseTo(
			600 / 3600 / ((Math.PI / 4) * 0.356 ** 2),
			9,
		);
	});

	test('thin air carries off less heat', () => {
		const given = { ...fan, heatW: 1000 };
		const sea = numbersOf(vent, given);
		const high = numbersOf(vent, { ...given, altitudeM: 3000 });
		expect(high.heatPerKelvin).toBeLessThan(sea.heatPerKelvin ?? 0);
		expect(sea.warmer).toBeCloseTo(1000 / (sea.heatPerKelvin ?? 1), 9);
		expect(high.densityShare).toBeCloseTo(0.6919, 3);
	});

	test('openings are shown in square inches or square centimetres', () => {
		expect(answered(vent, fan).headline).toMatch(/in²/);
		expect(answered(vent, fan, metric).headline).toMatch(/cm²/);
	});
});

describe('findings', () => {
	test('an intake that is too small, and the one that is not', () => {
		const small = { ...fan, intakeM2: 0.02 };
		expect(codesOf(vent, small)).toContain('intake-too-small');
		const needed = numberOf(vent, small, 'intakeNeeded');
		expect(codesOf(vent, { ...fan, intakeM2: needed })).not.toContain('intake-too-small');
	});
	test('a whistling intake is a warning, a lively one a note', () => {
		const severity = (intakeM2: number) =>
			answered(vent, { ...fan, intakeM2, freeShare: 1, stallPa: 0.2 }).findings.find(
				(one) => one.code === 'intake-too-small',
			)?.severity;
		expect(severity(0.01)).toBe('warning');
		expect(severity(0.05)).toBe('note');
	});
	test('a fan beside a flame is a danger', () => {
		expect(answered(vent, { ...fan, burning: true }).findings[0]).toMatchObject({
			code: 'backdraft',
			severity: 'danger',
		});
		expect(codesOf(vent, fan)).not.toContain('backdraft');
	});
	test('fewer air changes than wanted', () => {
		expect(codesOf(vent, { ...fan, airChanges: 60 })).toContain('too-few-air-changes');
		expect(codesOf(vent, { ...fan, airChanges: 40 })).not.toContain('too-few-air-changes');
	});
	test('altitude', () => {
		expect(codesOf(vent, { ...fan, altitudeM: 2000 })).toContain('thin-air');
		expect(codesOf(vent, fan)).not.toContain('thin-air');
	});
});

test('through the tipping opening the fan moves nine tenths', () => {
	const [tip] = answered(vent, fan).tipping;
	expect(numberOf(vent, { ...fan, intakeM2: tip?.value }, 'deliveredFlow')).toBeCloseTo(540, 6);
});

test('what is missing is asked for', () => {
	expect(() => answered(vent, { volumeL: 12_000 })).toThrow(/What flow/);
	expect(() => answered(vent, { airChanges: 30 })).toThrow(/How big is the van/);
});
