import fc from 'fast-check';
import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { faceRuns, fontFiles, textWidth, wrap } from './font.js';

/** The width another reader of the same font finds, with its kerning. */
const other = new PDFDocument({ autoFirstPage: false, font: fontFiles.regular });
function otherWidth(text: string, size: number, bold: boolean): number {
	return other
		.font(bold ? fontFiles.bold : fontFiles.regular)
		.fontSize(size)
		.widthOfString(text);
}

describe('widths of text', () => {
	test.each([
		['Voltage drop 0.32 V = 2.7 %', false],
		['4/0 AWG, 12 ft', true],
		['AVATAR Tokyo Wäg', false],
		['Σ ΔV · η Ω ½ µ', true],
	])('"%s" is as wide as a full layout engine finds, or a little wider for want of kerning', (text, bold) => {
		const ours = textWidth(text, 12, bold);
		const theirs = otherWidth(text, 12, bold);
		expect(ours).toBeGreaterThanOrEqual(theirs - 0.01);
		expect(ours).toBeLessThan(theirs * 1.05);
	});

	test('signs that the text face lacks come from the mathematical one', () => {
		expect(faceRuns('I ≤ √2 A')).toEqual([
			{ face: 'regular', text: 'I ' },
			{ face: 'math', text: '≤' },
			{ face: 'regular', text: ' ' },
			{ face: 'math', text: '√' },
			{ face: 'regular', text: '2 A' },
		]);
		expect(textWidth('≤', 10)).toBeGreaterThan(4);
	});

	test('a character that no face has becomes a replacement mark of some width', () => {
		expect(faceRuns('\u{1f600}')).toEqual([{ face: 'regular', text: '\ufffd' }]);
		expect(textWidth('\u{1f600}', 10)).toBe(textWidth('\ufffd', 10));
	});

	test('wrapped lines are no wider than asked and lose no letter', () => {
		const word = fc.string({ minLength: 1, maxLength: 30 }).filter((text) => !/[\s]/.test(text));
		fc.assert(
			fc.property(
				fc.array(word, { minLength: 1, maxLength: 12 }),
				fc.integer({ min: 40, max: 200 }),
				(words, width) => {
					const lines = wrap(words.join(' '), width, 12);
					for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(width);
					expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''));
				},
			),
		);
	});
});
