import { type BuildBook, eachSheet } from './book.js';

/** Name and version of the form in which a book is written as JSON. */
export const bookJsonFormat = 'lugbook-build-book/1';

/** Stands in the file, and is said where it is made: somebody may take it for a backup. */
export const bookJsonAbout =
	'This is the book of one build, for programs to read. It can\'t be read back into a log: for that take the whole shop, with "pnpm log export FILE", and bring it in with "pnpm log import FILE".';

/** The book as one JSON object, piece by piece; the sheets come last, one a piece. */
export async function* bookJsonChunks(book: BuildBook): AsyncGenerator<string> {
	const { sheets, ...rest } = book;
	const head = JSON.stringify({ format: bookJsonFormat, about: bookJsonAbout, ...rest });
	yield `${head.slice(0, -1)},"sheets":[`;
	let first = true;
	for await (const record of eachSheet(sheets)) {
		yield `${first ? '' : ','}\n${JSON.stringify(record)}`;
		first = false;
	}
	yield ']}\n';
}

/** The whole object at once. */
export async function bookJson(book: BuildBook): Promise<string> {
	const chunks: string[] = [];
	for await (const chunk of bookJsonChunks(book)) chunks.push(chunk);
	return chunks.join('');
}
