import { expect, test } from 'vitest';
import { pieces, shortened } from './text.js';

test.each([
	['one two three', 8, ['one two', 'three']],
	['line one\nline two', 9, ['line one', 'line two']],
	['x'.repeat(20), 8, ['xxxxxxxx', 'xxxxxxxx', 'xxxx']],
	['12345\u{1F600}89', 6, ['12345', '\u{1F600}89']],
	['', 8, ['']],
])('%j in pieces of %i', (text, max, expected) => {
	expect(pieces(text, max)).toEqual(expected);
});

test('a shortened text keeps to its bound and says that it was cut', () => {
	expect(shortened('within', 10)).toBe('within');
	expect(shortened('battery end of the run', 12)).toBe('battery end…');
	expect(shortened('x'.repeat(20), 10)).toBe(`${'x'.repeat(9)}…`);
});
