import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { demoBook } from '../gallery/book.js';
import { gallery } from '../gallery/pictures.js';
import { feedSheet, thinSheet } from '../gallery/records.js';
import { writePictures } from '../gallery/write.js';
import {
	bookPdf,
	drawPicture,
	drawPictures,
	figurePng,
	figureSvg,
	scheduleCsv,
	sheetHtml,
	sheetText,
} from './index.js';

const svgFolder = new URL('../gallery/', import.meta.url);
const pngFolder = new URL('../../../docs/gallery/', import.meta.url);

/** Pixels of a PNG, four bytes each. The raster library reads PNG only inside an SVG. */
function pixelsOf(png: Uint8Array): { width: number; height: number; pixels: Uint8Array } {
	const view = new DataView(png.buffer, png.byteOffset);
	const [width, height] = [view.getUint32(16), view.getUint32(20)];
	const href = `data:image/png;base64,${Buffer.from(png).toString('base64')}`;
	const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image href="${href}" width="${width}" height="${height}"/></svg>`;
	return { width, height, pixels: new Resvg(svg).render().pixels };
}

/** How many pixels differ by more than a shade: another processor or another reader may round otherwise. */
function differing(ours: Uint8Array, kept: Uint8Array): number {
	let different = 0;
	for (let at = 0; at < ours.length; at += 4) {
		if (Math.abs((ours[at] as number) - (kept[at] as number)) > 64) different += 1;
	}
	return different;
}

/** Of poppler, which Debian packages; it is no part of the program. */
const rasteriser = 'pdftoppm';

/** Pages of the demo book, with one sheet, as the docs show them, by the name of their file. */
const pages = { 'book-first-page': 1, 'book-wiring': 5, 'book-sheet': 10 } as const;

describe('the gallery', () => {
	test.each(Object.entries(gallery))('%s is drawn as before', async (name, picture) => {
		const figure = await drawPicture(picture);
		await expect(figureSvg(figure)).toMatchFileSnapshot(fileURLToPath(new URL(`${name}.svg`, svgFolder)));
	});

	test.each(Object.entries(gallery))('%s in the docs shows the same', async (name, picture) => {
		const drawn = figurePng(await drawPicture(picture), { scale: 2 });
		const path = new URL(`${name}.png`, pngFolder);
		if (writePictures) writePictures(path, drawn);
		const ours = pixelsOf(drawn);
		const kept = pixelsOf(readFileSync(path));
		expect([kept.width, kept.height]).toEqual([ours.width, ours.height]);
		expect(differing(ours.pixels, kept.pixels)).toBeLessThan(ours.pixels.length / 4 / 10_000);
	});

	test('the pages of the book in the docs show the same', async () => {
		const folder = mkdtempSync(join(tmpdir(), 'gallery-'));
		try {
			writeFileSync(join(folder, 'book.pdf'), await bookPdf({ ...demoBook, sheets: [feedSheet] }));
			for (const [name, page] of Object.entries(pages)) {
				const file = join(folder, name);
				const choice = ['-f', String(page), '-l', String(page), '-singlefile'];
				execFileSync(rasteriser, [...choice, '-r', '80', '-png', join(folder, 'book.pdf'), file]);
				const drawn = readFileSync(`${file}.png`);
				const path = new URL(`${name}.png`, pngFolder);
				if (writePictures) writePictures(path, drawn);
				const ours = pixelsOf(drawn);
				const kept = pixelsOf(readFileSync(path));
				expect([kept.width, kept.height]).toEqual([ours.width, ours.height]);
				// A page of other words differs in some hundredths of its points.
				expect(differing(ours.pixels, kept.pixels)).toBeLessThan(ours.pixels.length / 4 / 500);
			}
		} finally {
			rmSync(folder, { recursive: true });
		}
	});

	test('the page of the gallery in the docs shows every picture with its description', async () => {
		const shown = await Promise.all(
			Object.entries(gallery).map(async ([name, picture]) => {
				const { title, alt } = await drawPicture(picture);
				return `## ${title}\n\n![${alt}](${name}.png)\n\n${alt}\n`;
			}),
		);
		const book = Object.keys(pages).map((name) => `![A page of the demo book](${name}.png)`);
		const head =
			'# Gallery\n\nPictures and pages as the program makes them, of an invented build. Under each picture stands the description that goes with it.\n';
		const text = [head, ...shown, `## The book of the build\n\n${book.join('\n')}\n`].join('\n');
		await expect(text).toMatchFileSnapshot(fileURLToPath(new URL('README.md', pngFolder)));
	});

	test('the sheet reads as before, as text and as HTML', async () => {
		await expect(sheetText(feedSheet)).toMatchFileSnapshot(fileURLToPath(new URL('sheet.txt', svgFolder)));
		await expect(sheetHtml(thinSheet, await drawPictures(thinSheet))).toMatchFileSnapshot(
			fileURLToPath(new URL('sheet-of-a-danger.html', svgFolder)),
		);
	});

	test('the wire and fuse schedule reads as before', async () => {
		await expect(
			await scheduleCsv({ kind: 'runs', units: demoBook.units, rows: demoBook.runs }),
		).toMatchFileSnapshot(fileURLToPath(new URL('runs.csv', svgFolder)));
	});
});
