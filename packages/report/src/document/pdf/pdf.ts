import { fontFiles } from '../../picture/font.js';
import { plainLine } from '../../plain.js';
import type { Block } from '../block.js';
import { BlankPaper } from './paper.js';
import { PdfPaper } from './pdf-paper.js';
import type { Pdf } from './shapes.js';
import { PdfWriter, type Places } from './writer.js';

/** Width and height [pt]. */
const pageSizes = { a4: [595.28, 841.89], letter: [612, 792] } as const;

export interface PdfOptions {
	readonly page: keyof typeof pageSizes;
	readonly title: string;
	/** at the foot of each page, beside its number */
	readonly footer: string;
	/** the day the document was made, "2026-05-04"; something else is not written into the file's own dates */
	readonly date: string;
}

/**
 * Blocks as a PDF: text that can be selected, fonts embedded, bookmarks, "page n of m". The blocks are gone through
 * twice, since the number of pages is known only at the end; they must be the same both times.
 *
 * @param blocks begins to read the blocks
 * @returns the file, piece by piece; the same blocks give the same bytes
 */
export async function* pdfChunks(
	blocks: () => AsyncIterable<Block>,
	options: PdfOptions,
): AsyncGenerator<Uint8Array> {
	const places = await measured(blocks, options);
	const { default: Document } = await import('pdfkit');
	const pdf = begin(Document, options);
	const writer = new PdfWriter(new PdfPaper(pdf, pageSizes[options.page]), options.footer, places);
	for await (const block of blocks()) {
		writer.write(block);
		yield* ready(pdf);
	}
	writer.end();
	for await (const chunk of pdf) yield chunk as Uint8Array;
}

/** The first going-through, on paper that keeps nothing. */
async function measured(blocks: () => AsyncIterable<Block>, options: PdfOptions): Promise<Places> {
	const writer = new PdfWriter(new BlankPaper(pageSizes[options.page]), options.footer, null);
	for await (const block of blocks()) writer.write(block);
	writer.end();
	return { pages: writer.pages, total: writer.page };
}

/** What the document has written so far. */
function* ready(pdf: Pdf): Generator<Uint8Array> {
	for (;;) {
		const chunk = pdf.read() as Uint8Array | null;
		if (chunk === null) return;
		yield chunk;
	}
}

function begin(Document: new (options: PDFKit.PDFDocumentOptions) => Pdf, options: PdfOptions): Pdf {
	const title = plainLine(options.title);
	const day = /^\d{4}-\d\d-\d\d$/.test(options.date)
		? new Date(`${options.date}T00:00:00Z`)
		: new Date(Number.NaN);
	const pdf = new Document({
		size: [...pageSizes[options.page]],
		// Every line is placed by the writer: the library must never begin a page of its own.
		margins: { top: 0, bottom: 0, left: 0, right: 0 },
		autoFirstPage: false,
		pdfVersion: '1.7',
		tagged: true,
		lang: 'en',
		displayTitle: true,
		font: fontFiles.regular,
		info: {
			Title: title,
			Producer: 'Lugbook',
			Creator: 'Lugbook',
			// Without a day that can be read the epoch stands in: the bytes must not depend on when they were written.
			CreationDate: Number.isNaN(day.getTime()) ? new Date(0) : day,
		},
	});
	return pdf;
}
