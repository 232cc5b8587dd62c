import { isPossible, type Shape } from './sections.js';

const number = '\\d+(?:[.,]\\d+)?';
/** A wall as inch trade writes it: "1/8". */
const wall = `(?:\\d{1,2}/\\d{1,2}|${number})`;

/** What makes "2x200w" and "2x80 kg" a number of things. */
const otherUnits = 'k?wh?|m?ah?|v|kg|g|lbs?|oz|n|l|gal|m|cm|ft|psi|bar|people|persons';

/** A section as the trade writes it: "40x40x2", "1.5x1.5x0.125 in", "25x2 round". For reading text. */
export const sectionPattern = `(?<![\\d.,x])${number}\\s?x\\s?${number}(?:\\s?x\\s?${wall})?(?![\\d./]|\\s?(?:${otherUnits})\\b)(?:\\s?(?:mm\\b|in\\b(?!\\s+(?:the|a|an|my|our)\\b)|"))?`;

/** An extrusion alloy with its temper: "6061-T6". For reading text. */
export const alloyPattern = '\\b6(?:063|061|005A?|105)(?:\\s?-?\\s?T\\d{1,2})?\\b';

/** A board by its nominal thickness: "3/4 plywood", "1/2 in birch board". For reading text. */
export const boardPattern =
	'\\d{1,2}/\\d{1,2}(?=\\s?(?:in\\b|inch|")?\\s?(?:birch\\s|pine\\s)?(?:ply|plywood|board)\\b)';

/** @returns [mm], or undefined where the text is no fraction */
export function readBoardMm(text: string): number | undefined {
	const match = /^(\d{1,2})\/(\d{1,2})$/.exec(text.trim());
	return match === null || Number(match[2]) === 0 ? undefined : (Number(match[1]) / Number(match[2])) * 25.4;
}

export type ShapeName = Shape['shape'];

/**
 * The shape behind two or three figures. Without a unit, figures of 6 and less all through are inches, others
 * millimetres.
 * @param named the shape where it was said; otherwise three figures are a tube and two a solid bar
 * @returns null where the text is no section, or one that can't be
 */
export function readSection(text: string, named: ShapeName | undefined): Shape | null {
	const match = new RegExp(
		`^(${number})\\s?[x×*]\\s?(${number})(?:\\s?[x×*]\\s?(${wall}))?\\s?(mm|in|")?`,
		'i',
	).exec(text.trim());
	if (match === null) return null;
	const figures = [match[1], match[2], match[3]].filter((one) => one !== undefined).map(figureOf);
	const isInches =
		match[4] === undefined ? figures.every((one) => one <= 6) : match[4].toLowerCase() !== 'mm';
	const [first, second, third] = figures.map((one) => (isInches ? one * 25.4 : one));
	if (first === undefined || second === undefined) return null;
	const shape = shapeOf(first, second, third, named);
	return shape !== null && first > 0 && second > 0 && (third ?? 1) > 0 && isPossible(shape) ? shape : null;
}

function figureOf(text: string): number {
	const [over = '', under] = text.split('/');
	return under === undefined ? Number(over.replace(',', '.')) : Number(over) / Number(under);
}

function shapeOf(
	first: number,
	second: number,
	third: number | undefined,
	named: ShapeName | undefined,
): Shape | null {
	if (third === undefined) {
		if (named === 'pipe' || named === 'round') return { shape: 'pipe', diameterMm: first, wallMm: second };
		if (named === 'tube' || named === 'angle') {
			// "40x2 tube": a square one.
			return second < first / 2 ? { shape: named, widthMm: first, heightMm: first, wallMm: second } : null;
		}
		return { shape: 'rectangle', widthMm: first, heightMm: second };
	}
	if (named === 'angle') return { shape: 'angle', widthMm: first, heightMm: second, wallMm: third };
	return named === undefined || named === 'tube'
		? { shape: 'tube', widthMm: first, heightMm: second, wallMm: third }
		: null;
}
