/** The book of a build as files: a page, a document, spreadsheets or JSON. */

import type { Log } from '@lugbook/log';
import type { BuildBook, Schedule } from '@lugbook/report';
import type { ReplyFile } from '../message.js';
import { fileStem } from '../review/picture.js';
import { report } from '../review/report.js';
import type { Part } from './answers.js';
import { type BookOptions, bookOf } from './book.js';

export const bookFormats = ['html', 'pdf', 'csv', 'json'] as const;
export type BookFormat = (typeof bookFormats)[number];

/** How often the sheets are gone through for a file: in HTML and PDF the register and the sheets each, in PDF twice. */
const goingsThrough: Readonly<Record<BookFormat, number>> = { html: 2, pdf: 4, csv: 1, json: 1 };

/**
 * Sheets in one PDF at most. A PDF keeps in memory what each cell is until it ends, some 60 MB for 400 sheets of four
 * pages, beside the 50 MB of the program; the other formats are written sheet by sheet and have no end.
 */
const MOST_IN_A_PDF = 400;

/** Asked for more in one file than goes into one. */
export class TooManySheets extends Error {
	/** the first piece that goes, "2..401" */
	readonly piece: string;

	constructor(message: string, piece: string) {
		super(message);
		this.piece = piece;
	}
}

/** "2..401" of a command, or null where it is none. */
export function partIn(text: string): Part | null {
	const [, from, to] = /^([1-9]\d{0,8})\.\.([1-9]\d{0,8})$/.exec(text) ?? [];
	return from === undefined || Number(from) > Number(to) ? null : { from: Number(from), to: Number(to) };
}

/** What somebody has to know who is given the format, or null. */
export async function aboutFormat(format: BookFormat): Promise<string | null> {
	return format === 'json' ? (await report()).bookJsonAbout : null;
}

export interface BookFilesOptions extends Omit<BookOptions, 'progress'> {
	readonly format: BookFormat;
	/** hears what share of the work is done, from 0 to 1, as the files are read */
	readonly progress?: (share: number) => void;
}

/**
 * The files of a build's book; their bytes are made as they are read, so memory stays bounded however many sheets
 * there are. Null where the shop's log has nothing of a build of that name.
 *
 * @throws TooManySheets where they are more than a PDF can take, saying which pieces do
 */
export async function bookFiles(log: Log, options: BookFilesOptions): Promise<ReplyFile[] | null> {
	const { format, progress } = options;
	const times = goingsThrough[format];
	let before = 0;
	let last = 0;
	const heard = (read: number, sheets: number) => {
		if (read <= last) before += 1;
		last = read;
		progress?.(Math.min(1, (before + read / sheets) / times));
	};
	const book = await bookOf(log, { ...options, progress: heard });
	if (book === null) return null;
	if (format === 'pdf') keepToLimit(book);
	return await filesIn(book, format);
}

function keepToLimit({ build, part, signing }: BuildBook): void {
	const numbers = Object.values(signing.answers)
		.flat()
		.filter((number) => part === null || (number >= part.from && number <= part.to))
		.sort((a, b) => a - b);
	if (numbers.length <= MOST_IN_A_PDF) return;
	const pieces = Array.from({ length: Math.ceil(numbers.length / MOST_IN_A_PDF) }, (_, piece) => {
		const own = numbers.slice(piece * MOST_IN_A_PDF, (piece + 1) * MOST_IN_A_PDF);
		return `${own[0]}..${own.at(-1)}`;
	});
	const shown = pieces.length <= 6 ? pieces : [...pieces.slice(0, 3), '...', pieces.at(-1)];
	const [first = ''] = pieces;
	throw new TooManySheets(
		`These are ${numbers.length} calculation sheets of build "${build}"; a PDF takes ${MOST_IN_A_PDF}. ` +
			`Export it in ${pieces.length} pieces, by the numbers of the answers: ${shown.join(', ')}. ` +
			'HTML, CSV and JSON take all of them in one file.',
		first,
	);
}

async function filesIn(book: BuildBook, format: BookFormat): Promise<ReplyFile[]> {
	const { bookHtmlChunks, bookJsonChunks, bookPdfChunks, scheduleCsvLines } = await report();
	const numbers = book.part === null ? '' : `-${book.part.from}-${book.part.to}`;
	const stem = `${fileStem(book.build)}${numbers}`;
	const about = `Book of the build "${book.build}"`;
	switch (format) {
		case 'html':
			return [file(`${stem}.html`, 'text/html', `${about}, a page to print`, encoded(bookHtmlChunks(book)))];
		case 'pdf':
			return [file(`${stem}.pdf`, 'application/pdf', `${about}, to print`, bookPdfChunks(book))];
		case 'json':
			return [
				file(`${stem}.json`, 'application/json', `${about}, for programs`, encoded(bookJsonChunks(book))),
			];
		case 'csv':
			return schedulesOf(book).map(({ name, words, schedule }) =>
				file(
					`${stem}-${name}.csv`,
					'text/csv',
					`Build "${book.build}": ${words}, for a spreadsheet`,
					encoded(scheduleCsvLines(schedule)),
				),
			);
	}
}

function file(
	name: string,
	mediaType: string,
	alternativeText: string,
	bytes: AsyncIterable<Uint8Array>,
): ReplyFile {
	return { name, mediaType, alternativeText, bytes };
}

function schedulesOf(book: BuildBook): { name: string; words: string; schedule: Schedule }[] {
	const { units, equipment, runs, energy, weights, sheets } = book;
	return [
		{ name: 'equipment', words: 'equipment', schedule: { kind: 'equipment', rows: equipment } },
		{ name: 'wiring', words: 'wire and fuse schedule', schedule: { kind: 'runs', units, rows: runs } },
		{ name: 'loads', words: 'loads', schedule: { kind: 'loads', rows: energy?.loads ?? [] } },
		{ name: 'weights', words: 'weights', schedule: { kind: 'weights', units, rows: weights?.items ?? [] } },
		{
			name: 'calculations',
			words: 'register of calculations',
			schedule: { kind: 'sheets', rows: typeof sheets === 'function' ? sheets() : sheets },
		},
	];
}

const encoder = new TextEncoder();

async function* encoded(texts: AsyncIterable<string>): AsyncGenerator<Uint8Array> {
	for await (const text of texts) yield encoder.encode(text);
}
