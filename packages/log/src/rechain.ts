import { type Chained, entryHash, FIRST_PREVIOUS_HASH, personTagFor } from './chain.js';
import type { Head } from './database.js';
import { identifier, parseOrRefuse } from './entry.js';
import { LogError } from './errors.js';
import { canonicalJson } from './json.js';
import { assertFits, bodyTextOf, FORMAT, type Header, type Line, readHeader, readLine } from './portable.js';

/**
 * An export as lines of an export of another shop: everything that was asked, answered and done about it, with numbers,
 * times, people and texts as they were, chained anew under the other name. The shop's name is part of every hash and
 * of every pseudonym, so these differ; the pseudonym of somebody who was forgotten stays as it is. The same export and
 * name give the same lines, so an import of them that was interrupted can be run again.
 *
 * @param open begins to read the export; it is read twice, since the head of the new chain stands in its first line
 * @throws LogError as `Log.import` does, naming the line
 */
export async function* rechained(
	open: () => Iterable<string> | AsyncIterable<string>,
	shop: string,
): AsyncGenerator<string> {
	const name = parseOrRefuse(identifier, shop, 'shop');
	let head: Head = { number: 0, hash: FIRST_PREVIOUS_HASH };
	for await (const { number, hash } of entriesAnew(open(), name)) head = { number, hash };
	yield canonicalJson({ format: FORMAT, shop: name, head });
	for await (const { text } of entriesAnew(open(), name)) yield text;
}

interface Anew extends Head {
	readonly text: string;
}

async function* entriesAnew(
	lines: Iterable<string> | AsyncIterable<string>,
	shop: string,
): AsyncGenerator<Anew> {
	let header: Header | null = null;
	let last: Head = { number: 0, hash: FIRST_PREVIOUS_HASH };
	let previousHash = FIRST_PREVIOUS_HASH;
	let lineNumber = 0;
	for await (const text of lines) {
		lineNumber += 1;
		if (text === '') continue;
		if (header === null) {
			header = readHeader(text, lineNumber);
			continue;
		}
		const line = readLine(text, lineNumber);
		assertFits(line, { shop: header.shop, last, lineNumber });
		last = { number: line.number, hash: line.hash };
		const anew = entryAnew(line, shop, previousHash);
		previousHash = anew.hash;
		yield anew;
	}
	if (header === null)
		throw new LogError('bad-entry', 'the export is empty: not even its first line is there');
	if (last.number !== header.head.number || last.hash !== header.head.hash) {
		throw new LogError(
			'bad-entry',
			`the export ends at entry ${last.number}, but its first line says ${header.head.number}: part of it is missing`,
		);
	}
}

function entryAnew(line: Line, shop: string, previousHash: string): Anew {
	const { hash: _, erasable, body, ...fields } = line;
	const personTag =
		erasable === null ? line.personTag : personTagFor(shop, erasable.personId, erasable.tagSalt);
	const chained: Chained = { ...fields, shop, personTag, previousHash, bodyText: bodyTextOf(line) };
	const hash = entryHash(chained);
	const text = canonicalJson({
		...fields,
		personTag,
		previousHash,
		body: JSON.parse(chained.bodyText),
		hash,
		erasable,
	});
	return { number: line.number, hash, text };
}
