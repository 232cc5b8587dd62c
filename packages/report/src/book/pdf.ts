import { type PdfOptions, pdfChunks } from '../document/pdf/pdf.js';
import { bookBlocks, bookTitle } from './blocks.js';
import type { BuildBook } from './book.js';

export interface BookPdfOptions {
	/** A4 unless the shop writes in US units */
	readonly page?: PdfOptions['page'];
}

/** The book as a PDF, piece by piece. The sheets are read several times: see `Sheets`. */
export function bookPdfChunks(book: BuildBook, options: BookPdfOptions = {}): AsyncGenerator<Uint8Array> {
	const hash = book.log === null ? '' : `, log No. ${book.log.entry} ${book.log.hash.slice(0, 12)}`;
	return pdfChunks(() => bookBlocks(book), {
		page: options.page ?? (book.units === 'us' ? 'letter' : 'a4'),
		title: bookTitle(book),
		footer: `${bookTitle(book)}, ${book.date}${hash}`,
		date: book.date,
	});
}

/** The whole file at once. */
export async function bookPdf(book: BuildBook, options: BookPdfOptions = {}): Promise<Uint8Array> {
	const chunks: Uint8Array[] = [];
	for await (const chunk of bookPdfChunks(book, options)) chunks.push(chunk);
	return Buffer.concat(chunks);
}
