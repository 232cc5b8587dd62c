import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figuresOf, phrase, sayFor, thousandsOf } from './translate.js';

const german = { language: 'de', units: 'metric' } as const;
const spanish = { language: 'es', units: 'metric' } as const;
const spanishUs = { language: 'es', units: 'us' } as const;
const english = { language: 'en', units: 'us' } as const;

describe('sentences', () => {
	test('a known one is said in the language, its gaps filled', () => {
		expect(sayFor(german)`${'4 AWG'} copper, ${'50 A'} fuse at the source end`).toBe(
			'4 AWG Kupfer, Sicherung 50 A am Quellenende',
		);
		expect(sayFor(english)`${'4 AWG'} copper, ${'50 A'} fuse at the source end`).toBe(
			'4 AWG copper, 50 A fuse at the source end',
		);
	});

	test('an unknown one stays English: never silence', () => {
		expect(sayFor(german)`${'x'} is no sentence of any book`).toBe('x is no sentence of any book');
	});

	test('a value that is a phrase is said too; what stands in quotes is what was typed', () => {
		expect(sayFor(spanish)`Name one of: ${'fuse'}.`).toBe('Indica uno de estos: fusible.');
		expect(sayFor(spanish)`I can't use "${'fuse'}" as the pressure switch.`).toBe(
			'No puedo usar "fuse" como presostato.',
		);
	});

	test('whatever the values, none is lost', () => {
		fc.assert(
			fc.property(
				fc.stringMatching(/^[a-z]{3,8} [A-Z]{2}$/),
				fc.stringMatching(/^\d{1,3} A$/),
				(size, rating) => {
					for (const speaking of [german, spanish, english]) {
						const said = sayFor(speaking)`${size} copper, ${rating} fuse at the source end`;
						expect(said).toContain(size);
						expect(said).toContain(rating);
					}
				},
			),
		);
	});

	test('a fixed text that is none of the books comes back as it is', () => {
		expect(phrase(german, 'Flagstaff, AZ')).toBe('Flagstaff, AZ');
	});
});

// Decimal comma: DIN 1333 in German; ISO 80000-1, 7.3.2 allows either sign. From memory.
describe('figures', () => {
	test.each([
		[german, '2.7 % of 12.5 V', '2,7 % of 12,5 V'],
		[spanish, '2.7 %', '2,7 %'],
		[spanishUs, '2.7 %', '2.7 %'],
		[english, '2.7 %', '2.7 %'],
		[german, 'sind 3.5.', 'sind 3,5.'],
		[german, '33 CFR 183.455', '33 CFR 183.455'],
		[german, 'NEC 310.10(G)', 'NEC 310.10(G)'],
		[german, '4 × M10 Klasse 8.8', '4 × M10 Klasse 8.8'],
		[german, 'Ich lese "2.5" als Größe', 'Ich lese "2.5" als Größe'],
	] as const)('%j: %s', (speaking, text, written) => {
		expect(figuresOf(speaking, text)).toBe(written);
		expect(figuresOf(speaking, written)).toBe(written);
	});

	test('thousands are never parted by what reads as a decimal sign', () => {
		expect(thousandsOf(english, 18_900)).toBe('18,900');
		expect(thousandsOf(german, 18_900)).toBe('18\u202F900');
		expect(thousandsOf(spanish, 1_234_500)).toBe('1\u202F234\u202F500');
	});
});
