import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { demoBook } from '../../gallery/book.js';
import { htmlTokens, textOfHtml } from '../../gallery/html.js';
import { demoSheets, feedSheet } from '../../gallery/records.js';
import type { SheetRecord } from '../sheet/record.js';
import { bookContents } from './blocks.js';
import type { BuildBook } from './book.js';
import { bookHtml, bookHtmlChunks } from './html.js';
import { bookJson, bookJsonAbout, bookJsonChunks, bookJsonFormat } from './json.js';

const bare: BuildBook = {
	...demoBook,
	vehicle: null,
	log: null,
	signing: { answers: {}, signers: [], whole: null, toConfirm: { values: 0, answers: 0 } },
	findings: [],
	notKnown: [],
	equipment: [],
	runs: [],
	oneLine: null,
	energy: null,
	water: null,
	climate: null,
	weights: null,
	handover: { limits: [], cautions: [] },
	sheets: [],
};

/** The tokens of the body; the head is of one kind and tested by itself. */
function bodyOf(html: string): string {
	return html.slice(html.indexOf('<main>'), html.indexOf('</body>'));
}

describe('the book as HTML', () => {
	test('is closed in itself: no script, no address, nothing but its own style, by hash', async () => {
		const html = await bookHtml(demoBook);
		expect(html).not.toMatch(/<script|<link|<img|<iframe|<object|url\(|@import|\ssrc=|\son\w+="/i);
		expect(
			[...html.matchAll(/https?:\/\/[^"\s<]+/g)]
				.map(([address]) => address)
				.filter((address) => address !== 'http://www.w3.org/2000/svg'),
		).toEqual([]);
		const style = /<style>([\s\S]*?)<\/style>/.exec(html)?.[1] as string;
		const hash = createHash('sha256').update(style).digest('base64');
		expect(/content="(default-src[^"]+)"/.exec(html)?.[1]).toBe(
			`default-src 'none'; style-src 'sha256-${hash}'; base-uri 'none'; form-action 'none'`,
		);
		for (const token of htmlTokens(bodyOf(html))) {
			if (token.kind === 'open') expect(Object.keys(token.attributes)).not.toContain('style');
		}
	});

	test('every link points to a place in the book, and no place stands twice', async () => {
		const html = bodyOf(await bookHtml(demoBook));
		const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
		expect(new Set(ids).size).toBe(ids.length);
		const links = [...html.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id);
		expect(links).toEqual(bookContents.map(({ id }) => id));
		for (const link of links) expect(ids).toContain(link);
		for (const { number } of demoSheets) expect(ids).toContain(`sheet-${number}`);
	});

	test('every figure says in words what it shows', async () => {
		const html = bodyOf(await bookHtml(demoBook));
		const figures = html.match(/<figure/g) ?? [];
		expect(figures.length).toBeGreaterThan(7);
		const described = [...html.matchAll(/<svg [^>]*role="img" aria-label="([^"]{40,})"/g)];
		expect(described).toHaveLength(figures.length);
	});

	test('holds dangers and the state of signing on its first page, what is not known, and the hand-over', async () => {
		const text = textOfHtml(bodyOf(await bookHtml(demoBook)));
		const contents = text.indexOf(bookContents[0]?.text as string);
		for (const { text: finding, severity } of demoBook.findings) {
			expect(text).toContain(finding);
			if (severity === 'danger') expect(text.indexOf(finding)).toBeLessThan(contents);
		}
		expect(text.indexOf('NOT SIGNED')).toBeLessThan(contents);
		expect(text).toContain('5 not checked, 1 signed, 1 rejected');
		for (const one of [...demoBook.notKnown, ...demoBook.handover.cautions]) expect(text).toContain(one);
		for (const { what, limit, why } of demoBook.handover.limits)
			for (const one of [what, limit, why]) expect(text).toContain(one);
	});

	test('says of a run without protection that none is named, or why none is needed', async () => {
		const text = textOfHtml(bodyOf(await bookHtml(demoBook)));
		expect(text).toContain('NONE NAMED');
		expect(text).toContain('none: bond of the negative pole');
	});

	test('of a build of which nothing is known says so in every part', async () => {
		const text = textOfHtml(bodyOf(await bookHtml(bare)));
		for (const { text: title } of bookContents) expect(text).toContain(title);
		for (const words of [
			'No open finding.',
			'No run is sized.',
			'No operating limit is recorded.',
			'NOT SIGNED',
		]) {
			expect(text).toContain(words);
		}
		expect(text.match(/Nothing is recorded\./g)).toHaveLength(4);
	});

	test('of the same book is the same', async () => {
		expect(await bookHtml(structuredClone(demoBook))).toBe(await bookHtml(demoBook));
	});

	test('escapes the names of shop and build in title and text', async () => {
		const html = await bookHtml({ ...bare, build: '</title><script>x</script>', shop: '"><b>' });
		expect(html).not.toContain('<script');
		expect(html).not.toContain('<b>');
		expect(() => [...htmlTokens(bodyOf(html))]).not.toThrow();
	});
});

describe('the book as JSON', () => {
	test('reads back as the book', async () => {
		const read = JSON.parse(await bookJson(demoBook));
		expect(read.format).toBe(bookJsonFormat);
		expect(read.sheets).toHaveLength(demoSheets.length);
		const { format: _, about, ...rest } = read;
		expect(about).toBe(bookJsonAbout);
		expect(rest).toEqual(JSON.parse(JSON.stringify(demoBook)));
	});

	test('of a book without sheets is whole too', async () => {
		expect(JSON.parse(await bookJson(bare)).sheets).toEqual([]);
	});
});

describe('a book of 10,000 sheets', () => {
	/** Sheets that are made as they are asked for, and counted. */
	function counted() {
		const counts = { begun: 0, made: 0 };
		const sheets = async function* (): AsyncGenerator<SheetRecord> {
			counts.begun += 1;
			for (let number = 1; number <= 10_000; number += 1) {
				counts.made += 1;
				yield { ...feedSheet, number, pictures: [] };
			}
		};
		return { counts, sheets };
	}

	test('is written as JSON one sheet at a time', async () => {
		const { counts, sheets } = counted();
		let pieces = 0;
		let longest = 0;
		for await (const piece of bookJsonChunks({ ...bare, sheets })) {
			pieces += 1;
			longest = Math.max(longest, piece.length);
			expect(counts.made).toBeLessThanOrEqual(pieces);
		}
		expect(counts).toEqual({ begun: 1, made: 10_000 });
		expect(longest).toBeLessThan(40_000);
	});

	test('is written as HTML bit by bit: the register first, then each sheet as it is read', async () => {
		const { counts, sheets } = counted();
		let length = 0;
		let longest = 0;
		let inSheets = 0;
		let ahead = 0;
		for await (const chunk of bookHtmlChunks({ ...bare, sheets })) {
			length += chunk.length;
			longest = Math.max(longest, chunk.length);
			if (chunk.startsWith('<h3 id="sheet-')) {
				inSheets += 1;
				ahead = Math.max(ahead, counts.made - 10_000 - inSheets);
			}
		}
		expect(counts).toEqual({ begun: 2, made: 20_000 });
		expect(inSheets).toBe(10_000);
		expect(ahead).toBeLessThanOrEqual(1);
		expect(longest).toBeLessThan(60_000);
		expect(length).toBeGreaterThan(100_000_000);
	});
});
