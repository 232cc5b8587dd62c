import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isPrefix, textAt, wordsOf } from './words.js';

test.each([
	['Fridge on 4AWG', ['fridge', 'on', '4', 'awg']],
	['12V/24V', ['12', 'v', '24']],
	['35 mm²', ['35', 'mm', '2']],
	['LiFePO₄ 0.5 Ω', ['lifepo', '4', '0', '5', 'ω']],
	['Größe GRÖSSE größe', ['größe', 'grösse']],
	['Ｗｉｄｅ', ['wide']],
	['', []],
	['--- !! ""', []],
])('the words of %j are %j', (text, words) => {
	expect(wordsOf(text)).toEqual(words);
});

test('words hold letters, marks and digits alone, whatever the text, and none is there twice', () => {
	fc.assert(
		fc.property(fc.string({ unit: 'binary' }), (text) => {
			const words = wordsOf(text);
			expect(new Set(words).size).toBe(words.length);
			for (const word of words) expect(word).toMatch(/^(\p{N}+|[\p{L}\p{M}]+)$/u);
		}),
	);
});

test('a run of letters without end is cut at 64, between characters', () => {
	expect(wordsOf('𝒳'.normalize('NFKC').repeat(100))).toEqual(['x'.repeat(64)]);
	expect(wordsOf('𐐨'.repeat(100))).toEqual(['𐐨'.repeat(64)]);
});

test('the beginning of a word may stand for it, but not of a number nor a single letter', () => {
	expect(isPrefix('frid')).toBe(true);
	expect(isPrefix('v')).toBe(false);
	expect(isPrefix('12')).toBe(false);
});

test.each([
	[['answer', 'headline'], '4 AWG'],
	[['answer', 'wires'], '[1,2]'],
	[['answer', 'none'], ''],
	[['answer', 'headline', 'length'], ''],
	[['answer', 'wires', 'length'], ''],
	[['toString'], ''],
	[[], '{"answer":{"headline":"4 AWG","wires":[1,2]}}'],
])('the text of a body at %j', (way, text) => {
	expect(textAt({ answer: { headline: '4 AWG', wires: [1, 2] } }, way)).toBe(text);
});
