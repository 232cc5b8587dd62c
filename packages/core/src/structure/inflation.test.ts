import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	assumedCurve,
	flowAt,
	freeAirL,
	overallDiameterMm,
	pressureRangePattern,
	pumpingMinutes,
	readPressureRange,
	readTireSize,
	tireSizePattern,
	tireVolumeL,
	volumetricEfficiency,
	withRests,
} from './inflation.js';

const pressure = fc.double({ min: 0, max: 600, noNaN: true });

describe('pumping', () => {
	test('along a level curve it is volume over flow', () => {
		const minutes = pumpingMinutes(60, 150, 450, 100, [
			{ gaugeKpa: 0, freeAirLMin: 30 },
			{ gaugeKpa: 600, freeAirLMin: 30 },
		]);
		expect(minutes).toBeCloseTo(freeAirL(60, 150, 450, 100) / 30, 9);
	});

	test('two halves take as long as the whole', () => {
		fc.assert(
			fc.property(pressure, pressure, pressure, (a, b, c) => {
				const [from, between, to] = [a, b, c].toSorted((x, y) => x - y) as [number, number, number];
				fc.pre(to - from > 1);
				const curve = assumedCurve(70, 0.1, 90, 700);
				const whole = pumpingMinutes(60, from, to, 90, curve) as number;
				const parts =
					(pumpingMinutes(60, from, between, 90, curve) as number) +
					(pumpingMinutes(60, between, to, 90, curve) as number);
				expect(parts).toBeCloseTo(whole, 8);
			}),
		);
	});

	test('against a fine sum of small steps', () => {
		const curve = [
			{ gaugeKpa: 0, freeAirLMin: 72 },
			{ gaugeKpa: 276, freeAirLMin: 40 },
			{ gaugeKpa: 621, freeAirLMin: 0 },
		];
		let sum = 0;
		const steps = 20_000;
		for (let index = 0; index < steps; index += 1) {
			const p = 172 + ((448 - 172) * (index + 0.5)) / steps;
			sum += (62 * (448 - 172)) / steps / 101.325 / flowAt(curve, p);
		}
		expect(pumpingMinutes(62, 172, 448, 101.325, curve)).toBeCloseTo(sum, 5);
	});

	test('a higher target, a larger tire, thinner air or a weaker pump never takes less time', () => {
		fc.assert(
			fc.property(fc.double({ min: 150, max: 500, noNaN: true }), (toKpa) => {
				const at = (volumeL: number, to: number, ambientKpa: number, openLMin: number) =>
					pumpingMinutes(
						volumeL,
						100,
						to,
						ambientKpa,
						assumedCurve(openLMin, 0.1, ambientKpa, 700),
					) as number;
				const base = at(60, toKpa, 100, 70);
				expect(at(60, toKpa + 10, 100, 70)).toBeGreaterThan(base);
				expect(at(66, toKpa, 100, 70)).toBeGreaterThan(base);
				expect(at(60, toKpa, 80, 70)).toBeGreaterThan(base);
				expect(at(60, toKpa, 100, 60)).toBeGreaterThan(base);
			}),
		);
	});

	test('a pump that stalls never gets there', () => {
		const curve = [
			{ gaugeKpa: 0, freeAirLMin: 20 },
			{ gaugeKpa: 300, freeAirLMin: 0 },
		];
		expect(pumpingMinutes(60, 100, 299, 100, curve)).toBeGreaterThan(0);
		expect(pumpingMinutes(60, 100, 300, 100, curve)).toBeNull();
		expect(pumpingMinutes(60, 100, 400, 100, curve)).toBeNull();
		expect(pumpingMinutes(60, 100, 200, 100, [])).toBeNull();
	});

	test('the assumed curve reaches its last pressure exactly', () => {
		expect(assumedCurve(70, 0.1, 101.325, 413.68543756587536).at(-1)?.gaugeKpa).toBe(413.68543756587536);
	});
});

test('dead space costs flow, and none costs none', () => {
	expect(volumetricEfficiency(1, 0.1)).toBeCloseTo(1, 12);
	expect(volumetricEfficiency(5, 0)).toBe(1);
	expect(volumetricEfficiency(5, 0.1)).toBeLessThan(volumetricEfficiency(5, 0.05));
	expect(volumetricEfficiency(1000, 0.1)).toBe(0);
});

describe('rests', () => {
	test.each([
		[12, 30, 30, 1, 0, 12],
		[30, 30, 30, 1, 0, 30],
		[31, 30, 20, 2, 1, 51],
		[95, 30, 15, 4, 3, 140],
		[12, Number.POSITIVE_INFINITY, 30, 1, 0, 12],
	])('%d min in spells of %d min', (run, spell, rest, spells, rests, total) => {
		expect(withRests(run, spell, rest)).toEqual({ spells, rests, totalMinutes: total });
	});
});

describe('tire sizes', () => {
	test.each([
		['LT225/75R16', 225, 0.75, 16],
		['225/75 R16C', 225, 0.75, 16],
		['lt245/75r17', 245, 0.75, 17],
		['235/65ZR16', 235, 0.65, 16],
		['225/70R19.5', 225, 0.7, 19.5],
	])('%s', (text, widthMm, aspect, inches) => {
		expect(readTireSize(text)).toEqual({ widthMm, aspect, rimMm: inches * 25.4 });
		expect(text.match(new RegExp(tireSizePattern, 'giu'))).toEqual([text]);
	});

	test.each([
		['LT285/75-16', 285, 0.75, 16],
		['265/70 17', 265, 0.7, 17],
		['265 70 R17', 265, 0.7, 17],
	])('%s as it is typed', (text, widthMm, aspect, inches) => {
		expect(readTireSize(text)).toEqual({ widthMm, aspect, rimMm: inches * 25.4 });
		expect(text.match(new RegExp(tireSizePattern, 'giu'))).toEqual([text]);
	});

	test.each([
		['33x12.50R15LT', 33, 12.5, 15],
		['LT33x12.50R15', 33, 12.5, 15],
		['31x10.5-15', 31, 10.5, 15],
		['35x1250r17', 35, 12.5, 17],
	])('%s gives its own diameter', (text, diameterIn, widthIn, rimIn) => {
		const size = readTireSize(text);
		expect(size?.widthMm).toBeCloseTo(widthIn * 25.4, 9);
		expect(size?.rimMm).toBeCloseTo(rimIn * 25.4, 9);
		expect(size === null ? null : overallDiameterMm(size)).toBeCloseTo(diameterIn * 25.4, 9);
		expect(text.match(new RegExp(tireSizePattern, 'giu'))).toEqual([text]);
	});

	test.each(['15x33R12', '33x12.5', '12 x 24 in', '12V 15 ft', '100 50 30'])('%s is no tire', (text) => {
		expect(readTireSize(text)).toBeNull();
	});

	test.each(['225', 'LT', '999/75R16', '225/99R16', '225/75R40', 'sidewall'])('%s is none', (text) => {
		expect(readTireSize(text)).toBeNull();
	});

	test('wider, taller or on a larger rim holds more', () => {
		const volume = tireVolumeL({ widthMm: 225, aspect: 0.75, rimMm: 406.4 });
		expect(tireVolumeL({ widthMm: 245, aspect: 0.75, rimMm: 406.4 })).toBeGreaterThan(volume);
		expect(tireVolumeL({ widthMm: 225, aspect: 0.8, rimMm: 406.4 })).toBeGreaterThan(volume);
		expect(tireVolumeL({ widthMm: 225, aspect: 0.75, rimMm: 431.8 })).toBeGreaterThan(volume);
	});
});

describe('pressures written as a pair', () => {
	test.each([
		['from 25 to 65 psi', '25 to 65 psi', 25 * 6.894757293168, 65 * 6.894757293168],
		['20-60psi', '20-60psi', 20 * 6.894757293168, 60 * 6.894757293168],
		['von 1,8 auf 4,2 bar', '1,8 auf 4,2 bar', 180, 420],
		['180 - 420 kPa', '180 - 420 kPa', 180, 420],
	])('%s', (text, marking, fromKpa, toKpa) => {
		const found = text.match(new RegExp(pressureRangePattern, 'giu'));
		expect(found).toEqual([marking]);
		const read = readPressureRange(marking);
		expect(read?.fromKpa).toBeCloseTo(fromKpa, 9);
		expect(read?.toKpa).toBeCloseTo(toKpa, 9);
	});

	test.each(['25 psi', '25 psi to 65 psi', '4 to 6 ft', 'psi'])('%s is none', (text) => {
		expect(text.match(new RegExp(pressureRangePattern, 'giu'))).toBeNull();
		expect(readPressureRange(text)).toBeNull();
	});
});
