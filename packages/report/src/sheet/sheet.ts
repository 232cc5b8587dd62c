import type { Block } from '../document/block.js';
import { htmlOf, pageEnd, pageStart } from '../document/html.js';
import { type PdfOptions, pdfChunks } from '../document/pdf/pdf.js';
import { textOf } from '../document/text.js';
import { drawPicture } from '../picture/draw.js';
import type { Figure } from '../picture/figure.js';
import { sheetBlocks } from './blocks.js';
import type { SheetRecord } from './record.js';

/**
 * The calculation sheet as plain text.
 * @param width longest line in characters; a word that is longer stays whole
 */
export function sheetText(record: SheetRecord, width = 80): string {
	return [...textOf(sheetBlocks(record, 1), width)].join('');
}

/**
 * The calculation sheet as a fragment of HTML, its pictures as inline SVG. The style sheet is the page's.
 * @param figures the record's pictures, drawn by `drawPictures`
 */
export function sheetHtml(record: SheetRecord, figures: readonly Figure[] = []): string {
	return [...htmlOf(sheetBlocks(record, 1, figures))].join('');
}

/** Draws the pictures of a record. @throws RangeError where one can't be drawn */
export function drawPictures({ pictures }: Pick<SheetRecord, 'pictures'>): Promise<Figure[]> {
	return Promise.all(pictures.map((picture) => drawPicture(picture)));
}

/** The calculation sheet as a page by itself: no script, nothing from elsewhere. */
export async function sheetPage(record: SheetRecord): Promise<string> {
	return `${pageStart(sheetTitle(record))}${sheetHtml(record, await drawPictures(record))}${pageEnd}`;
}

/** The calculation sheet as a PDF by itself; on A4 unless the shop writes in US units. */
export async function sheetPdf(record: SheetRecord, page?: PdfOptions['page']): Promise<Uint8Array> {
	const blocks = sheetBlocks(record, 1, await drawPictures(record));
	const chunks: Uint8Array[] = [];
	const file = pdfChunks(() => each(blocks), {
		page: page ?? (record.context.units === 'us' ? 'letter' : 'a4'),
		title: sheetTitle(record),
		footer: `${sheetTitle(record)}, hash ${record.place.hash.slice(0, 12)}`,
		date: (record.rerun ?? record.asked).at.slice(0, 10),
	});
	for await (const chunk of file) chunks.push(chunk);
	return Buffer.concat(chunks);
}

function sheetTitle({ number, shop, build }: SheetRecord): string {
	return `Calculation sheet No. ${number}, ${build === null ? shop : `${build} (${shop})`}`;
}

async function* each(blocks: readonly Block[]): AsyncGenerator<Block> {
	yield* blocks;
}
