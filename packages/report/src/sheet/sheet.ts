import { htmlOf } from '../document/html.js';
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
