/// <reference lib="dom" />

import { bookHtml, sheetPage } from '@lugbook/report';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoBook } from '../../packages/report/gallery/book.js';
import { feedSheet } from '../../packages/report/gallery/records.js';
import { listen, type Served, serve, startBrowser } from './browser.js';
import { longBook } from './long-book.js';
import { printed } from './pdf.js';
import {
	expectInsidePages,
	expectNumbered,
	expectWholeFigures,
	expectWholeRows,
	wholeFigures,
} from './print.js';

describe('the book of a build in a browser', () => {
	let browser: Browser;
	let served: Served;

	beforeAll(async () => {
		browser = await startBrowser();
		served = await serve(await bookHtml(demoBook));
	});

	afterAll(async () => {
		await served[Symbol.asyncDispose]();
		await browser.close();
	});

	async function open(width = 900) {
		const page = await browser.newPage({ viewport: { width, height: 900 } });
		const heard = listen(page);
		await page.goto(served.address, { waitUntil: 'networkidle' });
		return { page, ...heard };
	}

	test('says nothing in the console and asks for nothing but itself', async () => {
		const { page, said, requests } = await open();
		expect(said).toEqual([]);
		// A browser may ask a server for its icon; the page itself asks for nothing.
		expect(requests.filter((address) => !address.endsWith('/favicon.ico'))).toEqual([served.address]);
		await page.close();
	});

	test('its policy truly stops a script and a style that are not its own', async () => {
		const { page, said } = await open();
		const ran = await page.evaluate(() => {
			const script = document.createElement('script');
			script.textContent = 'window.ran = true';
			const style = document.createElement('style');
			style.textContent = 'body { display: none }';
			document.body.append(script, style);
			return 'ran' in window || getComputedStyle(document.body).display === 'none';
		});
		expect(ran).toBe(false);
		expect(said.filter((line) => line.includes('Content Security Policy')).length).toBeGreaterThan(0);
		await page.close();
	});

	test('its own style holds', async () => {
		const { page } = await open();
		const looks = await page.evaluate(() => {
			const style = (selector: string) => getComputedStyle(document.querySelector(selector) as Element);
			return [style('.box.strong').borderTopWidth, style('table').tableLayout, style('td.number').textAlign];
		});
		expect(looks).toEqual(['3px', 'fixed', 'right']);
		await page.close();
	});

	test('its text can be selected, in figures too', async () => {
		const { page } = await open();
		const selected = await page.evaluate(() => {
			getSelection()?.selectAllChildren(document.body);
			return String(getSelection());
		});
		expect(selected).toContain('4 AWG copper, 50 A fuse at the source end');
		expect(selected).toContain('Main bus');
		expect(selected).toContain('one-way length, ft');
		await page.close();
	});

	test('every figure is an image with a name that says what it shows', async () => {
		const { page } = await open();
		const count = await page.locator('figure').count();
		expect(count).toBeGreaterThan(7);
		const images = page.getByRole('img');
		expect(await images.count()).toBe(count);
		const names = await images.evaluateAll((found) =>
			found.map((one) => one.getAttribute('aria-label') ?? ''),
		);
		for (const name of names) expect(name.length).toBeGreaterThan(60);
		expect(await page.getByRole('img', { name: /6 AWG 4\.4 %, over the limit/ }).count()).toBe(1);
		await page.close();
	});

	test('headings go down one step at a time, and contents and tables have their roles', async () => {
		const { page } = await open();
		const levels = await page
			.locator('h1, h2, h3, h4')
			.evaluateAll((found) => found.map((one) => Number(one.tagName[1])));
		expect(levels.filter((level) => level === 1)).toHaveLength(1);
		levels.forEach((level, index) => {
			expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
		});
		await page
			.getByRole('navigation', { name: 'Contents' })
			.getByRole('link', { name: /Weights/ })
			.click();
		expect(new URL(page.url()).hash).toBe('#weights');
		expect(await page.getByRole('columnheader', { name: 'Protection' }).count()).toBe(1);
		await page.close();
	});

	test.each([360, 412, 768])(
		'at %d pixels nothing hangs over the edge and no word is small',
		async (width) => {
			const { page } = await open(width);
			const found = await page.evaluate(() => {
				const inWide = (one: Element) => one.closest('figure.wide') !== null;
				const over = [...document.querySelectorAll('main *')].filter(
					(one) => !inWide(one) && one.getBoundingClientRect().right > innerWidth + 0.5,
				);
				// What an SVG's text measures on the screen, after the figure was fitted to the width.
				const small = [
					...document.querySelectorAll('main p, main td, main th, main li, main dd, main text'),
				].filter((one) => {
					const svg = one.closest('svg');
					const scale = svg === null ? 1 : svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
					return Number.parseFloat(getComputedStyle(one).fontSize) * scale < 10;
				});
				return {
					scrolls: document.documentElement.scrollWidth > innerWidth,
					over: over.map((one) => one.outerHTML.slice(0, 90)),
					small: small.map((one) => one.textContent),
				};
			});
			expect(found).toEqual({ scrolls: false, over: [], small: [] });
			await page.close();
		},
	);

	test.each(['A4', 'Letter'] as const)(
		'prints to %s without cut rows or figures, with numbered pages',
		async (format) => {
			await using long = await serve(await bookHtml(longBook(demoBook, feedSheet)));
			const page = await browser.newPage();
			await page.goto(long.address);
			const print = printed(await page.pdf({ format }));
			const [width, height] = format === 'A4' ? [595, 842] : [612, 792];
			for (const one of print.pages) {
				expect(Math.abs(one.width - width)).toBeLessThan(2);
				expect(Math.abs(one.height - height)).toBeLessThan(2);
			}
			expectWholeRows(print);
			expectWholeFigures(print, wholeFigures);
			expectInsidePages(print);
			expectNumbered(print);
			await page.close();
		},
	);

	test('one calculation sheet is a page by itself, as quiet as the book', async () => {
		await using one = await serve(await sheetPage(feedSheet));
		const page = await browser.newPage();
		const { said, requests } = listen(page);
		await page.goto(one.address, { waitUntil: 'networkidle' });
		expect(said).toEqual([]);
		expect(requests.filter((address) => !address.endsWith('/favicon.ico'))).toEqual([one.address]);
		expect(await page.title()).toBe('Calculation sheet No. 128, heron (Demo van shop)');
		expect(await page.getByRole('heading', { level: 1 }).textContent()).toContain('No. 128');
		await page.close();
	});
});
