import { htmlOfBlock, pageEnd, pageStart } from '../document/html.js';
import { bookBlocks, bookTitle } from './blocks.js';
import type { BuildBook } from './book.js';

/**
 * The book as one self-contained page, piece by piece: no script, nothing from elsewhere, figures as inline SVG. It
 * prints to A4 and to Letter.
 */
export async function* bookHtmlChunks(book: BuildBook): AsyncGenerator<string> {
	yield pageStart(bookTitle(book));
	for await (const block of bookBlocks(book)) yield htmlOfBlock(block);
	yield pageEnd;
}

/** The whole page at once. */
export async function bookHtml(book: BuildBook): Promise<string> {
	const chunks: string[] = [];
	for await (const chunk of bookHtmlChunks(book)) chunks.push(chunk);
	return chunks.join('');
}
