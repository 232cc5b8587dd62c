import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { demoBook } from '../gallery/book.js';
import { gallery } from '../gallery/pictures.js';
import { feedSheet, thinSheet } from '../gallery/records.js';
import { writePictures } from '../gallery/write.js';
import {
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
		// A rasteriser may differ by a shade on another processor, never by a stroke.
		let different = 0;
		for (let at = 0; at < ours.pixels.length; at += 4) {
			if (Math.abs((ours.pixels[at] as number) - (kept.pixels[at] as number)) > 64) different += 1;
		}
		expect(different).toBeLessThan(ours.pixels.length / 4 / 10_000);
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
