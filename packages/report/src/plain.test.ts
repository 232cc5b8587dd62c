import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { escapeMarkup, plain, plainLine } from './plain.js';

describe('plain text', () => {
	test('control characters, halves of surrogate pairs and turning marks leave a mark', () => {
		expect(plain('a\u0000b\u001bc\u007f')).toBe('a\ufffdb\ufffdc\ufffd');
		expect(plain('12\u202e V')).toBe('12\ufffd V');
		expect(plain('\ud83d x \ude00')).toBe('\ufffd x \ufffd');
		expect(plain('\u{1f600} ok')).toBe('\u{1f600} ok');
	});

	test('lines are kept, one line is made one line', () => {
		expect(plain('a\r\nb\rc\n')).toBe('a\nb\nc\n');
		expect(plainLine('a\r\nb\tc\u2028d')).toBe('a b c d');
	});

	test('whatever is escaped holds no markup and reads back as the plain text', () => {
		fc.assert(
			fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
				const escaped = escapeMarkup(text);
				expect(escaped).not.toMatch(/[<>"']/);
				expect(escaped.isWellFormed()).toBe(true);
				const back = escaped
					.replaceAll('&lt;', '<')
					.replaceAll('&gt;', '>')
					.replaceAll('&quot;', '"')
					.replaceAll('&#39;', "'")
					.replaceAll('&amp;', '&');
				expect(back).toBe(plain(text));
			}),
		);
	});
});
