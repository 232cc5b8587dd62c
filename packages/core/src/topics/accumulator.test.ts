import { describe, expect, test } from 'vitest';
import { answered, codesOf, numberOf, numbersOf, refusal } from '../../../../tests/reference/outcome.js';
import { accumulator } from './accumulator.js';

const psi = 6.894757293168;
const usual = { volumeL: 0.75, prechargeKPa: 30 * psi, cutInKPa: 35 * psi, cutOutKPa: 55 * psi };

describe('drawdown', () => {
	test('0.75 L, 30 psi gas, 35 to 55 psi: 0.1936 L', () => {
		expect(numberOf(accumulator, usual, 'drawdown')).toBeCloseTo(0.1936, 4);
	});

	test('a tank for a wanted drawdown gives it', () => {
		const wanted = { ...usual, volumeL: undefined, wantedL: 0.5 };
		expect(numberOf(accumulator, wanted, 'drawdown')).toBeCloseTo(0.5, 9);
		expect(answered(accumulator, wanted).headline).toMatch(/accumulator for/);
	});

	test('the gas is taken 2 psi below the cut-in where it is not named', () => {
		const { assumed } = answered(accumulator, { ...usual, prechargeKPa: undefined });
		expect(assumed.find((one) => one.name === 'prechargeKPa')?.value).toBeCloseTo(33 * psi, 1);
	});

	test('thin air gives a little more from the same gauge pressures', () => {
		const high = numberOf(accumulator, { ...usual, altitudeM: 3000 }, 'drawdown');
		expect(high / numberOf(accumulator, usual, 'drawdown')).toBeGreaterThan(1.01);
	});

	test('worst starts an hour are at half the flow of the pump', () => {
		const given = { ...usual, pumpLMin: 10 };
		const most = numberOf(accumulator, given, 'startsPerHour');
		expect(numberOf(accumulator, { ...given, drawLMin: 5 }, 'startsAtDraw')).toBeCloseTo(most, 9);
		expect(numberOf(accumulator, { ...given, drawLMin: 2 }, 'startsAtDraw')).toBeLessThan(most);
		expect(most).toBeCloseTo((60 * 10) / (4 * 0.1936), 0);
	});
});

test('pressures stamped on a switch are read as psi', () => {
	const stamped = { volumeL: 0.75, pressureSwitch: '35/55' };
	const named = { volumeL: 0.75, cutInKPa: 35 * psi, cutOutKPa: 55 * psi };
	expect(numbersOf(accumulator, stamped)).toEqual(numbersOf(accumulator, named));
	expect(refusal(accumulator, { volumeL: 0.75, pressureSwitch: '55/35' })).toMatchObject({
		code: 'contradiction',
	});
	expect(refusal(accumulator, { volumeL: 0.75, pressureSwitch: 'soft' })).toMatchObject({
		field: 'pressureSwitch',
	});
	expect(() => answered(accumulator, { volumeL: 1 })).toThrow(/At what pressure does the pump start/);
});

describe('findings', () => {
	test('gas set above the cut-in', () => {
		expect(codesOf(accumulator, { ...usual, prechargeKPa: 40 * psi })).toContain('precharge-above-cut-in');
		expect(codesOf(accumulator, usual)).not.toContain('precharge-above-cut-in');
	});

	test('gas set far too low', () => {
		expect(codesOf(accumulator, { ...usual, prechargeKPa: 10 * psi })).toContain('precharge-low');
		expect(codesOf(accumulator, usual)).not.toContain('precharge-low');
	});

	test('short cycling, and the tank that ends it', () => {
		const tap = { ...usual, drawLMin: 5 };
		const finding = answered(accumulator, tap).findings.find((one) => one.code === 'short-cycling');
		expect(finding?.severity).toBe('warning');
		const calm = numberOf(accumulator, tap, 'volumeForCalm');
		expect(codesOf(accumulator, { ...tap, volumeL: calm * 1.0001 })).not.toContain('short-cycling');
	});

	test('a tap that takes all the pump gives', () => {
		expect(codesOf(accumulator, { ...usual, drawLMin: 20 })).toContain('pump-never-stops');
		expect(codesOf(accumulator, { ...usual, drawLMin: 5 })).not.toContain('pump-never-stops');
		expect(numbersOf(accumulator, { ...usual, drawLMin: 20 })).not.toHaveProperty('startsAtDraw');
	});
});

test('pressures that contradict each other are refused', () => {
	expect(refusal(accumulator, { ...usual, cutOutKPa: 30 * psi })).toMatchObject({
		code: 'contradiction',
		field: 'cutOutKPa',
	});
	expect(refusal(accumulator, { ...usual, prechargeKPa: 60 * psi })).toMatchObject({
		code: 'impossible',
		field: 'prechargeKPa',
	});
});

test('the tipping pre-charge gives nine tenths', () => {
	const [tip] = answered(accumulator, usual).tipping;
	const left = numberOf(accumulator, { ...usual, prechargeKPa: tip?.value }, 'drawdown');
	expect(left).toBeCloseTo(0.9 * numberOf(accumulator, usual, 'drawdown'), 9);
});

test('small volumes are shown in quarts in US units', () => {
	expect(answered(accumulator, usual).headline).toMatch(/^0\.2 qt/);
});
