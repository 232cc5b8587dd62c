import { type BuildBook, bookPdf, bookPdfChunks, sheetPdf, sheetText } from '@lugbook/report';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoBook } from '../../packages/report/gallery/book.js';
import { demoSheets, feedSheet } from '../../packages/report/gallery/records.js';
import { longBook } from './long-book.js';
import { only, poppler, printed } from './pdf.js';
import {
	expectInsidePages,
	expectNumbered,
	expectWholeFigures,
	expectWholeRows,
	wholeFigures,
} from './print.js';

const squeezed = (text: string) => text.replaceAll(/\s+/g, '');

describe('the book of a build as PDF', () => {
	let pdf: Uint8Array;
	let info: string;

	beforeAll(async () => {
		pdf = await bookPdf(demoBook);
		info = poppler('pdfinfo', [], pdf);
	});

	test('has its title, its day and its structure', () => {
		expect(info).toMatch(/Title:\s+Book of the build: heron \(Demo van shop\)/);
		expect(info).toMatch(/Tagged:\s+yes/);
		expect(info).toMatch(/JavaScript:\s+no/);
		expect(info).toMatch(/CreationDate:.*May\s+6.*2026/);
	});

	test('embeds every font, and holds no picture of points', () => {
		const fonts = poppler('pdffonts', [], pdf).trim().split('\n').slice(2);
		expect(fonts.length).toBeGreaterThanOrEqual(3);
		// name, type, encoding, embedded, subset, with a map to Unicode
		for (const font of fonts) expect(font).toMatch(/\+NotoSans.*\byes yes yes\b/);
		expect(poppler('pdfimages', ['-list'], pdf).trim().split('\n')).toHaveLength(2);
	});

	test('its text can be selected: the sheets stand in it word by word', () => {
		const text = squeezed(poppler('pdftotext', ['-layout'], pdf));
		for (const { sizing } of demoSheets) {
			for (const { label } of sizing.working) expect(text).toContain(squeezed(label).slice(0, 12));
			expect(text).toContain(squeezed(sizing.headline).slice(0, 30));
		}
		// A sign that only the mathematical font has.
		expect(text).toContain('Ir,min≤Ir≤Ir,max');
		expect(sheetText(demoSheets[0] as (typeof demoSheets)[number])).toContain('Ir,min ≤ Ir ≤ Ir,max');
	});

	test('figures carry their description, headings and tables their tags', () => {
		const structure = poppler('pdfinfo', ['-struct-text'], pdf);
		expect(structure.match(/^\s*H1\b/gm)).toHaveLength(1);
		expect(structure.match(/^\s*H3\b/gm)).toHaveLength(demoSheets.length);
		expect(structure.match(/^\s*Table\b/gm)?.length).toBeGreaterThan(20);
		const figures = structure.match(/^\s*Figure\b/gm) ?? [];
		expect(figures.length).toBeGreaterThan(7);
		const latin = Buffer.from(pdf).toString('latin1');
		expect(latin.match(/\/Alt \(/g)).toHaveLength(figures.length);
	});

	test('has a bookmark for each part and, under the last, for each sheet', () => {
		const latin = Buffer.from(pdf).toString('latin1');
		const titles = [
			...latin.matchAll(
				/\/Title \(((?:[^()\\]|\\.)*)\)\s*\/(?:Dest|Parent)|\/Parent [^/]*\/Title \(((?:[^()\\]|\\.)*)\)/g,
			),
		].map(([, one, other]) => one ?? other ?? '');
		expect(titles).toContain('3 Wire and fuse schedule');
		for (const { number } of demoSheets)
			expect(titles.some((title) => title.startsWith(`No. ${number}: `))).toBe(true);
		expect(titles).toHaveLength(10 + demoSheets.length);
	});

	test('the contents name the page of each part', () => {
		const print = printed(pdf);
		const first = print.words.filter(({ page }) => page === 1);
		const [entry] = first.filter(({ text }) => text === 'Weights').slice(-1);
		const number = first.find(({ top, left }) => Math.abs(top - (entry?.top ?? 0)) < 3 && left > 400)?.text;
		const heading = print.words.find(
			({ text, page, bottom, top }) => text === 'Weights' && page > 1 && bottom - top > 14,
		);
		expect(Number(number)).toBe(heading?.page);
	});

	test('of the same book has the same bytes, whole or in pieces', async () => {
		expect(Buffer.compare(await bookPdf(structuredClone(demoBook)), pdf)).toBe(0);
		const pieces: Uint8Array[] = [];
		for await (const piece of bookPdfChunks(demoBook)) pieces.push(piece);
		expect(pieces.length).toBeGreaterThan(5);
		expect(Buffer.compare(Buffer.concat(pieces), pdf)).toBe(0);
	});

	test('a day that is none does not let the clock in', async () => {
		const undated = await bookPdf({ ...demoBook, date: 'soon', sheets: [] });
		expect(poppler('pdfinfo', [], undated)).toMatch(/CreationDate:.*Jan\s+1.*1970/);
	});

	test.each([
		['a4', 595.28, 841.89],
		['letter', 612, 792],
	] as const)('on %s no row and no figure is cut, and pages are numbered', async (page, width, height) => {
		const print = printed(await bookPdf(longBook(demoBook, feedSheet), { page }));
		for (const one of print.pages)
			expect([one.width, one.height]).toEqual([expect.closeTo(width, 0), expect.closeTo(height, 0)]);
		expectWholeRows(print);
		expectWholeFigures(print, wholeFigures);
		expectInsidePages(print);
		expectNumbered(print);
	});

	test('takes A4 for a metric shop and Letter for one that writes in US units', async () => {
		const small: BuildBook = { ...demoBook, sheets: [], energy: null, oneLine: null, weights: null };
		expect(printed(await bookPdf(small)).pages[0]?.width).toBe(612);
		expect(printed(await bookPdf({ ...small, units: 'metric' })).pages[0]?.width).toBeCloseTo(595.28, 1);
	});

	test('a row taller than a page runs over pages and loses no word', async () => {
		const words = Array.from({ length: 1500 }, (_, index) => `word${index}`);
		const book: BuildBook = {
			...demoBook,
			sheets: [],
			equipment: [{ name: 'one', count: 1, rating: words.join(' '), place: null, entry: null }],
		};
		const print = printed(await bookPdf(book));
		for (const word of words) expect(only(print, word).page).toBeGreaterThan(1);
		expectInsidePages(print);
	});

	test('strange text is drawn as far as it can be and breaks nothing', async () => {
		const strange = `\u0000\u202e(\\)\ud800 \u{1f600} <b> %PDF endobj \uffff ${'W'.repeat(400)}`;
		const book: BuildBook = { ...demoBook, build: strange, shop: strange, notKnown: [strange], sheets: [] };
		const bytes = await bookPdf(book);
		expect(poppler('pdfinfo', [], bytes)).toMatch(/Pages:\s+\d+/);
		const text = squeezed(poppler('pdftotext', ['-layout'], bytes));
		expect(text).toContain('%PDFendobj');
		expect(text).toContain('W'.repeat(40));
		expectInsidePages(printed(bytes));
	});
});

describe('one calculation sheet as PDF', () => {
	test('stands by itself, with its title, its pages numbered, and the same bytes each time', async () => {
		const pdf = await sheetPdf(feedSheet);
		expect(Buffer.compare(await sheetPdf(structuredClone(feedSheet)), pdf)).toBe(0);
		expect(poppler('pdfinfo', [], pdf)).toMatch(
			/Title:\s+Calculation sheet No\. 128, heron \(Demo van shop\)/,
		);
		const print = printed(pdf);
		expectNumbered(print);
		expectWholeFigures(print, wholeFigures.slice(0, 1));
		expect(squeezed(poppler('pdftotext', ['-layout'], pdf))).toContain(squeezed(feedSheet.sizing.headline));
	});
});
