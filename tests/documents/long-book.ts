import type { BuildBook, SheetRecord } from '@lugbook/report';

export const longRows = 90;

/**
 * A book made long: its equipment list runs over many pages, each row several lines high and with a word of its own
 * at its beginning and at its end, so that a cut row shows; and it holds the same sheet a dozen times.
 */
export function longBook(book: BuildBook, sheet: SheetRecord): BuildBook {
	return {
		...book,
		equipment: Array.from({ length: longRows }, (_, index) => ({
			name: `item${index}`,
			count: 1,
			rating: `begin${index} ${'a rating that takes several lines '.repeat(1 + (index % 7))}end${index}`,
			place: `place${index}`,
			entry: 300 + index,
		})),
		sheets: Array.from({ length: 12 }, (_, index) => ({ ...sheet, number: 200 + index })),
	};
}
