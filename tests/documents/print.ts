import { expect } from 'vitest';
import { longRows } from './long-book.js';
import { only, type Printed, type PrintedWord } from './pdf.js';

/** No row is cut, and on each page over which the list runs its head stands over its first row. */
export function expectWholeRows(print: Printed): void {
	const pages = new Map<number, PrintedWord[]>();
	for (let row = 0; row < longRows; row += 1) {
		const pieces = ['item', 'begin', 'end', 'place'].map((word) => only(print, `${word}${row}`));
		expect(new Set(pieces.map(({ page }) => page)).size, `row ${row} is cut between pages`).toBe(1);
		const { page } = pieces[0] as PrintedWord;
		pages.set(page, [...(pages.get(page) ?? []), ...pieces]);
	}
	expect(pages.size).toBeGreaterThan(3);
	for (const [page, pieces] of pages) {
		const first = Math.min(...pieces.map(({ top }) => top));
		for (const word of ['Equipment', 'Rating', 'Place', 'Entry']) {
			const heads = print.words.filter((one) => one.page === page && one.text === word && one.top < first);
			expect(heads.length, `"${word}" stands over the rows of page ${page}`).toBeGreaterThan(0);
		}
	}
}

/** A figure's title and the words at its foot stand on one page, the foot under the title. */
export function expectWholeFigures(
	print: Printed,
	figures: readonly (readonly [title: string, foot: string])[],
): void {
	for (const [title, foot] of figures) {
		const titles = placesOf(print, title);
		const feet = placesOf(print, foot);
		expect(titles.length, `"${title}" is printed`).toBeGreaterThan(0);
		for (const one of titles) {
			const under = feet.filter(({ page, top }) => page === one.page && top > one.top);
			expect(under.length, `"${title}" on page ${one.page} has its foot "${foot}"`).toBeGreaterThan(0);
		}
	}
}

/** Where a few words stand one after another. */
function placesOf({ words }: Printed, text: string): PrintedWord[] {
	const wanted = text.split(' ');
	return words.filter((_, at) => wanted.every((one, offset) => words[at + offset]?.text === one));
}

/** No word reaches over the edge of its page, nor into the last hundredth of an inch before it. */
export function expectInsidePages({ pages, words }: Printed): void {
	expect(words.length).toBeGreaterThan(1000);
	for (const { text, page, left, right, top, bottom } of words) {
		const { width, height } = pages[page - 1] as Printed['pages'][number];
		const where = `"${text}" on page ${page}`;
		expect(left, where).toBeGreaterThan(20);
		expect(right, where).toBeLessThan(width - 20);
		expect(top, where).toBeGreaterThan(15);
		expect(bottom, where).toBeLessThan(height - 10);
	}
}

/** Each page says "page n of m". */
export function expectNumbered({ pages, words }: Printed): void {
	pages.forEach((_, index) => {
		const text = words
			.filter(({ page }) => page === index + 1)
			.map((word) => word.text)
			.join(' ');
		expect(text).toContain(`page ${index + 1} of ${pages.length}`);
	});
}

/** Figures that a long book holds: the words at its head and the words at its foot. */
export const wholeFigures = [
	['Voltage drop against length', 'one-way length, ft'],
	['State of charge on a day', 'time of day'],
	['State of charge over a week', 'day 7'],
	['Energy in and out by month', 'J F M'],
	['Loads against ratings,', 'rating 9350 lb'],
	['DC wiring of build heron', 'USB outlets'],
] as const;
