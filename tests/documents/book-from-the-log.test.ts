/// <reference lib="dom" />

import type { SheetRecord } from '@lugbook/report';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { listen, type Served, serve, startBrowser } from './browser.js';
import { openDemoShop } from './demo-shop.js';
import { type Printed, poppler, printed } from './pdf.js';
import { expectInsidePages, expectNumbered, expectWholeFigures } from './print.js';

/** Figures of this book: words of its title and, under them, words at its foot. */
const figures = [
	['Voltage drop against length', 'one-way length,'],
	['State of charge on day', 'time of day'],
	['Solar energy by month', 'J F M'],
	['Loads against ratings,', 'rating'],
	['Wiring of build', 'lights'],
] as const;

/** What no document says: a value that was not there, a unit twice. */
const slips = /undefined|NaN|\[object|\bnull\b|Infinity|\d (A|V|W|Wh|kWh|Ah|ft|lb|gal|L|kg|m|%|mm²) \1\b/;

/** A whole morning is played, written in three formats and printed [ms]. */
const patience = 300_000;

let browser: Browser;
beforeAll(async () => {
	browser = await startBrowser();
});
afterAll(async () => {
	await browser.close();
});

describe.each(['us', 'eu'] as const)('the book that a shop in %s gets by "/log export"', (region) => {
	let html: string;
	let pdf: Uint8Array;
	let sheets: readonly SheetRecord[];
	let equipment: readonly { readonly name: string; readonly rating: string | null }[];
	let served: Served;

	beforeAll(async () => {
		await using shop = await openDemoShop(region);
		const file = async (format: string) => {
			const bytes = (await shop.exported(format)).get(`heron.${format}`);
			if (bytes === undefined) throw new Error(`there is no heron.${format}`);
			return bytes;
		};
		html = Buffer.from(await file('html')).toString();
		pdf = await file('pdf');
		({ sheets, equipment } = JSON.parse(Buffer.from(await file('json')).toString()));
		served = await serve(html);
	}, patience);
	afterAll(async () => {
		await served[Symbol.asyncDispose]();
	});

	async function opened<T>(use: (page: Page, heard: ReturnType<typeof listen>) => Promise<T>): Promise<T> {
		const page = await browser.newPage({ viewport: { width: 900, height: 900 } });
		const heard = listen(page);
		await page.goto(served.address, { waitUntil: 'networkidle' });
		const result = await use(page, heard);
		await page.close();
		return result;
	}

	test('holds answers in every state that the demo leaves them in', () => {
		const states = new Set(sheets.map(({ state }) => state));
		expect([...states].sort()).toEqual(['not checked', 'out of date', 'rejected', 'replaced', 'signed']);
		expect(sheets.length).toBeGreaterThan(15);
	});

	test('says nothing in the console and asks for nothing but itself', async () => {
		await opened(async (_page, { said, requests }) => {
			expect(said).toEqual([]);
			expect(requests.filter((address) => !address.endsWith('/favicon.ico'))).toEqual([served.address]);
		});
	});

	test('its text can be selected, in figures too', async () => {
		const selected = await opened((page) =>
			page.evaluate(() => {
				getSelection()?.selectAllChildren(document.body);
				return String(getSelection());
			}),
		);
		for (const { number, sizing } of sheets) {
			expect(selected).toContain(`No. ${number}: `);
			expect(selected).toContain(sizing.headline);
		}
		for (const [title] of figures) expect(selected.replaceAll(/\s+/g, ' ')).toContain(title);
		expect(selected).not.toMatch(slips);
	});

	test('every figure is an image with a name that says what it shows', async () => {
		await opened(async (page) => {
			const count = await page.locator('figure').count();
			expect(count).toBeGreaterThan(sheets.filter(({ sizing }) => sizing.topic === 'wire').length);
			const names = await page
				.getByRole('img')
				.evaluateAll((found) => found.map((one) => one.getAttribute('aria-label') ?? ''));
			expect(names).toHaveLength(count);
			for (const name of names) {
				expect(name.length).toBeGreaterThan(60);
				expect(name).not.toMatch(slips);
			}
		});
	});

	test('no heading is followed by nothing, and no column of a table is empty', async () => {
		const found = await opened((page) =>
			page.evaluate(() => {
				const headings = [...document.querySelectorAll('h2, h3, h4')];
				const rank = (one: Element | null) => Number(/^H(\d)$/.exec(one?.tagName ?? '')?.[1] ?? 9);
				const bare = headings.filter(
					(one) => one.nextElementSibling === null || rank(one.nextElementSibling) <= rank(one),
				);
				const empty = [...document.querySelectorAll('table')].flatMap((table) =>
					[...table.querySelectorAll('thead th')].flatMap((head, index) =>
						[...table.querySelectorAll('tbody tr')].some((row) => row.children[index]?.textContent !== '')
							? []
							: [head.textContent],
					),
				);
				return { bare: bare.map((one) => one.textContent), empty };
			}),
		);
		expect(found).toEqual({ bare: [], empty: [] });
	});

	test.each(['A4', 'Letter'] as const)(
		'prints to %s with every row, figure and heading whole',
		async (format) => {
			const print = await opened(async (page) => {
				await page.evaluate(markParts);
				return printed(await page.pdf({ format }));
			});
			const [width, height] = format === 'A4' ? [595, 842] : [612, 792];
			for (const one of print.pages) {
				expect(Math.abs(one.width - width)).toBeLessThan(2);
				expect(Math.abs(one.height - height)).toBeLessThan(2);
			}
			expectTogether(print);
			expectWholeFigures(print, figures);
			expectInsidePages(print);
			expectNumbered(print);
		},
		patience,
	);

	describe('as PDF', () => {
		let print: Printed;
		beforeAll(() => {
			print = printed(pdf);
		});

		test('is on the paper of its region, with numbered pages and nothing over their edges', () => {
			expect(print.pages[0]?.width).toBeCloseTo(region === 'us' ? 612 : 595.28, 1);
			expectInsidePages(print);
			expectNumbered(print);
		});

		test('holds the figures whole, each with its description', () => {
			expectWholeFigures(print, figures);
			const described = Buffer.from(pdf)
				.toString('latin1')
				.match(/\/Alt \(/g);
			expect(described).toHaveLength(html.match(/<figure/g)?.length ?? 0);
		});

		test('has no slip in its text, and every answer in it', () => {
			const text = poppler('pdftotext', ['-layout'], pdf);
			expect(text.replaceAll(/\s+/g, ' ')).not.toMatch(slips);
			for (const { number } of sheets) expect(text).toContain(`No. ${number}: `);
		});

		test('no page ends with a heading or with a sentence that says what follows', async () => {
			const headings = new Set(
				await opened((page) =>
					page.locator('h1, h2, h3, h4').evaluateAll((found) => found.map((one) => one.textContent)),
				),
			);
			expect(headings.size).toBeGreaterThan(30);
			// The first page ends with the contents, whose lines are headings of later pages.
			for (const page of print.pages.keys()) {
				const words = page === 0 ? '' : lastLine(print, page + 1);
				expect(headings, `end of page ${page + 1}`).not.toContain(words);
				expect(words, `end of page ${page + 1}`).not.toMatch(/:$/);
			}
		});

		test('a piece of equipment stands on one page, with its rating beside its name', () => {
			for (const { name, rating } of equipment) {
				const first = name.split(' ')[0] as string;
				const last = rating?.split(' ').at(-1) ?? 'known';
				const rows = print.words.filter(({ text, left }) => text === first && left < 60);
				const isBeside = rows.some((row) =>
					print.words.some(
						(word) =>
							word.text === last &&
							word.page === row.page &&
							word.left > row.right &&
							word.top >= row.top - 2 &&
							word.top < row.top + 60,
					),
				);
				expect(isBeside, `${name}: ${rating}`).toBe(true);
			}
		});
	});
});

/**
 * Puts a word before and behind each row of a table, each figure and each heading with what follows it, too small to
 * move anything: where they stand in the print tells whether the part was cut.
 */
function markParts(): void {
	let count = 0;
	const mark = (text: string) => {
		const span = document.createElement('span');
		span.textContent = ` ${text} `;
		span.style.fontSize = '1px';
		span.style.lineHeight = '0';
		return span;
	};
	const firstIn = (block: Element) => block.querySelector('tbody th, tbody td, dt, li, p') ?? block;
	for (const row of document.querySelectorAll('tbody tr')) {
		count += 1;
		for (const cell of row.children) {
			cell.prepend(mark(`part${count}`));
			cell.append(mark(`part${count}`));
		}
	}
	for (const figure of document.querySelectorAll('figure')) {
		count += 1;
		figure.prepend(mark(`part${count}`));
		figure.append(mark(`part${count}`));
	}
	for (const heading of document.querySelectorAll('h1, h2, h3, h4, .lead')) {
		const next = heading.nextElementSibling;
		// An empty one is a page's end.
		if (next === null || next.className === 'page') continue;
		count += 1;
		heading.append(mark(`part${count}`));
		firstIn(next).prepend(mark(`part${count}`));
	}
}

/** Both words of a part stand on one page. */
function expectTogether(print: Printed): void {
	const pages = new Map<string, Set<number>>();
	for (const { text, page } of print.words) {
		if (!/^part\d+$/.test(text)) continue;
		pages.set(text, (pages.get(text) ?? new Set<number>()).add(page));
	}
	expect(pages.size).toBeGreaterThan(500);
	expect([...pages].filter(([, on]) => on.size > 1).map(([part]) => part)).toEqual([]);
}

/** The words of the lowest line over the page's foot. */
function lastLine(print: Printed, page: number): string {
	const height = print.pages[page - 1]?.height ?? 0;
	const words = print.words.filter((word) => word.page === page && word.bottom < height - 45);
	const lowest = Math.max(...words.map(({ bottom }) => bottom));
	return words
		.filter(({ bottom }) => lowest - bottom < 4)
		.map(({ text }) => text)
		.join(' ');
}
