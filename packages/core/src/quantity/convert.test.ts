import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase, toBase, unitsOf } from './convert.js';
import { type KindName, kindNames, kindOf } from './kinds.js';

describe('conversions as published', () => {
	// NIST SP 811, Appendix B.8 and B.9 (from memory); those marked exact are so by definition.
	test.each<[string, KindName, string, number]>([
		['foot (exact)', 'length', 'ft', 0.3048],
		['inch (exact)', 'length', 'in', 0.0254],
		['inch of a thickness (exact)', 'thickness', 'in', 25.4],
		['mile (exact)', 'length', 'mi', 1609.344],
		['square foot (exact)', 'area', 'ft²', 0.09290304],
		['US gallon', 'volume', 'gal', 3.785412],
		['US quart', 'volume', 'qt', 0.9463529],
		['cubic foot', 'volume', 'ft³', 28.31685],
		['gallon per minute', 'flow', 'gpm', 3.785412],
		['cubic foot per minute', 'airflow', 'cfm', 1.699011],
		['pound (exact)', 'mass', 'lb', 0.45359237],
		['ounce', 'mass', 'oz', 0.02834952],
		['pound-force', 'force', 'lbf', 4.448222],
		['pound-force foot', 'moment', 'lbf ft', 1.355818],
		['pound-force per foot', 'lineLoad', 'lbf/ft', 14.5939],
		['kilogram-force per metre', 'lineLoad', 'kg/m', 9.80665],
		['psi', 'pressure', 'psi', 6.894757],
		['bar (exact)', 'pressure', 'bar', 100],
		['thousand psi', 'stress', 'ksi', 6.894757],
		['Btu per hour', 'power', 'Btu/h', 0.2930711],
		['horsepower (550 ft·lbf/s)', 'power', 'hp', 745.6999],
		['megajoule', 'energy', 'MJ', 277.7778],
		['mile per hour (exact)', 'speed', 'mph', 0.44704],
		['inch to the fourth', 'secondMoment', 'in⁴', 416231.4],
		['pound per cubic foot', 'density', 'lb/ft³', 16.01846],
		['percent', 'fraction', '%', 0.01],
		['percent per kelvin', 'voltagePerDegree', '%/K', 0.01],
		['minute', 'duration', 'min', 1 / 60],
		['week', 'duration', 'wk', 168],
	])('%s', (_, kind, symbol, factor) => {
		// seven figures are printed
		expect(toBase(kind, 1, symbol) / factor).toBeCloseTo(1, 6);
	});

	test.each([
		[32, 0],
		[212, 100],
		[-40, -40],
		[98.6, 37],
		[0, -17.777778],
	])('%d °F is %d °C', (fahrenheit, celsius) => {
		expect(toBase('temperature', fahrenheit, '°F')).toBeCloseTo(celsius, 6);
		expect(fromBase('temperature', celsius, '°F')).toBeCloseTo(fahrenheit, 5);
	});
});

describe.each(kindNames)('%s', (kind) => {
	test('every unit converts and comes back', () => {
		for (const { symbol } of unitsOf(kind)) {
			fc.assert(
				fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
					const back = fromBase(kind, toBase(kind, value, symbol), symbol);
					expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
				}),
				{ numRuns: 20 },
			);
		}
	});

	test('the symbols that are shown are its own units', () => {
		const symbols = unitsOf(kind).map((unit) => unit.symbol);
		const { shown } = kindOf(kind);
		for (const symbol of [...shown.us, ...shown.metric]) expect(symbols).toContain(symbol);
	});

	test('no word stands for two of its units', () => {
		const words = unitsOf(kind).flatMap((unit) => [...new Set([unit.symbol.toLowerCase(), ...unit.words])]);
		const exact = new Set(unitsOf(kind).flatMap((unit) => unit.exact ?? []));
		const twice = words.filter((word, index) => words.indexOf(word) !== index && !exact.has(word));
		// told apart by case: mW and MW share a lower-case spelling only where one is typed exactly
		expect(twice).toEqual([]);
	});
});

test('an unknown unit is a programming error with its name', () => {
	expect(() => toBase('length', 1, 'furlong')).toThrow('"furlong" is not a unit of length');
});
