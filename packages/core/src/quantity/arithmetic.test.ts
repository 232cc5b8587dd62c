import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluateSum } from './arithmetic.js';

describe('sums that are read', () => {
	test.each([
		['6+9', 15],
		[' 6 + 9 ', 15],
		['2*(3+1.5)', 9],
		['20-4-6', 10],
		['7/2', 3.5],
		['8/2*(2+2)', 16],
		['-3+5', 2],
		['2*-3', -6],
		['+4', 4],
		['.5+.5', 1],
		['((6))', 6],
		['1+2+3+4+5+6+7+8+9+10+11+12+13+14+15+16+17+18+19+20', 210],
		['42', 42],
	])('%s = %d', (text, value) => {
		expect(evaluateSum(text)).toBe(value);
	});
});

describe('texts that are not small sums', () => {
	test.each([
		['a tower of powers', '9^9^9^9'],
		['a power', '2**3'],
		['a function', 'sqrt(4)'],
		['a constant by name', 'pi'],
		['a big number by exponent', '1e308'],
		['an assignment', 'a=3'],
		['several statements', '1;2'],
		['a matrix', '[1,2]'],
		['a range', '1:1000000000'],
		['a factorial', '170!'],
		['a percentage', '50%'],
		['a division by zero', '1/0'],
		['no number at all', '0/0'],
		['an open bracket', '(3+1'],
		['a dangling sign', '3-'],
		['two numbers side by side', '2 3'],
		['a number with two points', '1.2.3'],
		['nothing', ''],
		['blanks', '   '],
		['points', '..'],
		['brackets nested beyond use', `${'('.repeat(20)}1${')'.repeat(20)}`],
		['signs without end', `${'-'.repeat(40)}1`],
		['a long text', '1+'.repeat(40)],
		['a sum of 61 characters', `${'1+'.repeat(30)}1`],
	])('%s: %s', (_, text) => {
		expect(evaluateSum(text)).toBeNull();
	});
});

test('whatever is typed, it answers with a finite number or null, at once', () => {
	const character = fc.constantFrom(...'0123456789.+-*/() ^%e!x');
	fc.assert(
		fc.property(fc.string({ unit: character, maxLength: 80 }), (text) => {
			const value = evaluateSum(text);
			expect(value === null || Number.isFinite(value)).toBe(true);
		}),
		{ numRuns: 3000 },
	);
});

test('agrees with JavaScript on plain sums', () => {
	const part = fc.tuple(fc.constantFrom('+', '-', '*'), fc.integer({ min: 0, max: 99 }));
	fc.assert(
		fc.property(fc.integer({ min: 0, max: 99 }), fc.array(part, { maxLength: 12 }), (first, rest) => {
			const text = first + rest.map(([sign, value]) => `${sign}${value}`).join('');
			fc.pre(text.length <= 60);
			// The text holds digits and signs alone.
			expect(evaluateSum(text)).toBe(new Function(`return ${text.replace(/\b0+(?=\d)/g, '')}`)());
		}),
	);
});
