import type { Kysely, Transaction } from 'kysely';
import { z } from 'zod';
import { assertTail, insertEntries } from './append.js';
import { commitmentTo, entryHash, FIRST_PREVIOUS_HASH, personTagFor } from './chain.js';
import type { Database, Head } from './database.js';
import { entryFields, entryNumber, identifier, LIMITS, parseOrRefuse } from './entry.js';
import { LogError, messageOf } from './errors.js';
import { canonicalJson } from './json.js';
import type { Log } from './log.js';
import { chainedOf, erasablePartOf, faultOf, selectEntries } from './rows.js';
import type { Tables } from './tables.js';

/** First field of an export, so that another version's file is known for what it is. */
export const FORMAT = 'lugbook-log-1';

/** Entries read or written at a time. */
const PAGE = 200;
/** Entries are written earlier when their lines together are as long as this [characters]. */
const BATCH_LENGTH = 8 * 1024 * 1024;
/** A line holds a body and, escaped, a text: the longest that can come out of an export is shorter. */
const LONGEST_LINE = 4 * 1024 * 1024;

const sha256 = z.string().regex(/^[0-9a-f]{64}$/, 'is no SHA-256 in hexadecimal');

const headerSchema = z.strictObject({
	format: z.literal(FORMAT),
	shop: identifier,
	head: z.strictObject({ number: entryNumber, hash: sha256 }),
});

export type Header = z.output<typeof headerSchema>;

const { shop: _, personId, personName, text, ...chainedFields } = entryFields;
const lineSchema = z.strictObject({
	...chainedFields,
	number: entryNumber,
	personTag: identifier,
	commitment: sha256,
	previousHash: sha256,
	hash: sha256,
	body: z.unknown(),
	/** Null when the person was forgotten, or the export leaves people out. */
	erasable: z.strictObject({ personId, personName, text, salt: sha256, tagSalt: sha256 }).nullable(),
});
export type Line = z.output<typeof lineSchema>;

/**
 * The entries of a shop up to its head, as lines of JSON: a header, then an entry a line.
 * @param persons whether names, ids and texts as typed go along; the chain can be checked without them
 * @throws LogError 'corrupt' at an entry that does not match its hash
 */
export async function* exportLines(
	db: Kysely<Tables>,
	{ shop, head, persons }: { shop: string; head: Head; persons: boolean },
): AsyncGenerator<string> {
	yield canonicalJson({ format: FORMAT, shop, head });
	for (let above = 0; above < head.number; above += PAGE) {
		const lines = await exportPage(db, { shop, above, end: head.number, persons });
		yield* lines;
		const expected = Math.min(PAGE, head.number - above);
		if (lines.length !== expected) {
			throw new LogError(
				'corrupt',
				`shop ${shop} has ${lines.length} of the ${expected} entries behind number ${above}`,
			);
		}
	}
}

async function exportPage(
	db: Kysely<Tables>,
	{ shop, above, end, persons }: { shop: string; above: number; end: number; persons: boolean },
): Promise<string[]> {
	const rows = await selectEntries(db)
		.leftJoin('people', (join) =>
			join.onRef('people.shop', '=', 'erasable.shop').onRef('people.person_id', '=', 'erasable.person_id'),
		)
		.select('people.salt as tag_salt')
		.where('entries.shop', '=', shop)
		.where('entries.number', '>', above)
		.where('entries.number', '<=', Math.min(above + PAGE, end))
		.orderBy('entries.number')
		.execute();
	return rows.map((row) => {
		const fault = faultOf(row);
		if (fault !== null) {
			throw new LogError(
				'corrupt',
				`entry ${row.number} of shop ${shop} does not match its hash (${fault}); nothing wrong is exported`,
			);
		}
		const { bodyText, shop: __, ...fields } = chainedOf(row);
		const part = persons ? erasablePartOf(row) : null;
		const erasable = part === null ? null : { ...part, tagSalt: row.tag_salt };
		return canonicalJson({ ...fields, body: JSON.parse(bodyText), hash: row.hash, erasable });
	});
}

export interface ImportResult {
	shop: string;
	/** Entries written now. */
	written: number;
	/** Entries that were there before, the same. */
	present: number;
}

/** What an import needs of the log that it writes into. */
export interface Target {
	database: Database;
	write<T>(shop: string, task: (transaction: Transaction<Tables>) => Promise<T>): Promise<T>;
	wordsOf(entry: { build: string | null; topic: string | null; bodyText: string }, text: string): string[];
}

/**
 * Takes in the lines of an export, each entry checked before it is written. What is there already is compared and
 * left as it is, so an import that was interrupted is run again with the same lines.
 * @throws LogError 'bad-entry' naming the line that can't be read or does not fit, 'corrupt' naming the one that does
 * not match its hash; the entries before it are then written
 */
export async function importLines(
	target: Target,
	lines: Iterable<string> | AsyncIterable<string>,
): Promise<ImportResult> {
	let header: Header | undefined;
	let last: Head = { number: 0, hash: FIRST_PREVIOUS_HASH };
	const result: ImportResult = { shop: '', written: 0, present: 0 };
	let batch: Line[] = [];
	let batchLength = 0;

	async function flush(shop: string): Promise<void> {
		const entries = batch;
		batch = [];
		batchLength = 0;
		const written = await target.write(shop, (transaction) =>
			writeBatch(target, transaction, { shop, entries }),
		);
		result.written += written;
		result.present += entries.length - written;
	}

	let lineNumber = 0;
	for await (const text of lines) {
		lineNumber += 1;
		if (text === '') continue;
		if (header === undefined) {
			header = readHeader(text, lineNumber);
			result.shop = header.shop;
			continue;
		}
		const line = readLine(text, lineNumber);
		assertFits(line, { shop: header.shop, last, lineNumber });
		last = { number: line.number, hash: line.hash };
		batch.push(line);
		batchLength += text.length;
		if (batch.length >= PAGE || batchLength >= BATCH_LENGTH) await flush(header.shop);
	}
	if (header === undefined)
		throw new LogError('bad-entry', 'the export is empty: not even its first line is there');
	if (batch.length > 0) await flush(header.shop);
	if (last.number !== header.head.number || last.hash !== header.head.hash) {
		throw new LogError(
			'bad-entry',
			`the export ends at entry ${last.number}, but its first line says ${header.head.number}: part of it is missing`,
		);
	}
	return result;
}

/** The first line of an export. @throws LogError 'bad-entry' naming the line and what is wrong in it */
export function readHeader(text: string, lineNumber: number): Header {
	return parseOrRefuse(headerSchema, parseLine(text, lineNumber), `line ${lineNumber}`);
}

/** The line of an entry. @throws LogError 'bad-entry' naming the line and what is wrong in it */
export function readLine(text: string, lineNumber: number): Line {
	return parseOrRefuse(lineSchema, parseLine(text, lineNumber), `line ${lineNumber}`);
}

function parseLine(text: string, lineNumber: number): unknown {
	if (text.length > LONGEST_LINE) {
		throw new LogError(
			'bad-entry',
			`line ${lineNumber} is longer than the ${LONGEST_LINE} characters allowed`,
		);
	}
	try {
		return JSON.parse(text);
	} catch (error) {
		throw new LogError('bad-entry', `line ${lineNumber} is not JSON: ${messageOf(error)}`, error);
	}
}

export function bodyTextOf(line: Pick<Line, 'body'>): string {
	return canonicalJson(line.body, 'body', { bytes: LIMITS.bodyBytes, depth: LIMITS.bodyDepth });
}

/** An entry is taken only where it continues the chain and matches everything that is hashed in it. */
export function assertFits(
	line: Line,
	{ shop, last, lineNumber }: { shop: string; last: Head; lineNumber: number },
): void {
	const where = `line ${lineNumber}, entry ${line.number} of shop ${shop}`;
	if (line.number !== last.number + 1) {
		throw new LogError('bad-entry', `${where}: entry ${last.number + 1} was expected here`);
	}
	const { hash, erasable, body: ___, ...fields } = line;
	if (entryHash({ ...fields, shop, bodyText: bodyTextOf(line) }) !== hash) {
		throw new LogError('corrupt', `${where}: its content does not match its hash`);
	}
	if (line.previousHash !== last.hash) {
		throw new LogError('corrupt', `${where}: it does not carry the hash of the entry before it`);
	}
	if (erasable === null) return;
	const { tagSalt, ...part } = erasable;
	if (
		commitmentTo(part) !== line.commitment ||
		personTagFor(shop, part.personId, tagSalt) !== line.personTag
	) {
		throw new LogError('corrupt', `${where}: name, id or text do not match the salted hash in the entry`);
	}
}

/** @returns how many of the entries were not there yet */
async function writeBatch(
	target: Target,
	transaction: Transaction<Tables>,
	{ shop, entries }: { shop: string; entries: readonly Line[] },
): Promise<number> {
	const { database } = target;
	const head = await database.lockHead(transaction, shop);
	await assertTail(transaction, shop, head);
	const end = head?.number ?? 0;
	await assertSame(
		transaction,
		shop,
		entries.filter((entry) => entry.number <= end),
	);
	const missing = entries.filter((entry) => entry.number > end);
	const first = missing[0];
	if (first !== undefined && first.previousHash !== (head?.hash ?? FIRST_PREVIOUS_HASH)) {
		throw new LogError(
			'bad-entry',
			`entry ${first.number} of the export does not continue shop ${shop} of this log, which ends at ${end}`,
		);
	}
	const brought = new Set<string>();
	for (const { erasable, personTag } of missing) {
		if (erasable === null) continue;
		const { personId, tagSalt } = erasable;
		// A person whose lines differ is looked up for each, and refused.
		const person = JSON.stringify([personId, personTag, tagSalt]);
		if (brought.has(person)) continue;
		brought.add(person);
		await bringPerson(transaction, shop, { personId, personTag, tagSalt });
	}
	await insertEntries(
		database,
		transaction,
		missing.map(({ hash, erasable, body, ...fields }) => {
			const chained = { ...fields, shop, bodyText: bodyTextOf({ body }) };
			return { chained, hash, part: erasable, words: target.wordsOf(chained, erasable?.text ?? '') };
		}),
	);
	return missing.length;
}

async function assertSame(
	transaction: Transaction<Tables>,
	shop: string,
	entries: readonly Line[],
): Promise<void> {
	if (entries.length === 0) return;
	const rows = await transaction
		.selectFrom('entries')
		.select(['number', 'hash'])
		.where('shop', '=', shop)
		.where(
			'number',
			'in',
			entries.map((entry) => entry.number),
		)
		.execute();
	const stored = new Map(rows.map((row) => [row.number, row.hash]));
	for (const { number, hash } of entries) {
		if (stored.get(number) === hash) continue;
		throw new LogError(
			'bad-entry',
			`entry ${number} of shop ${shop} is another one in this log than in the export`,
		);
	}
}

async function bringPerson(
	transaction: Transaction<Tables>,
	shop: string,
	person: { personId: string; personTag: string; tagSalt: string },
): Promise<void> {
	await transaction
		.insertInto('people')
		.values({ shop, person_id: person.personId, person_tag: person.personTag, salt: person.tagSalt })
		.onConflict((conflict) => conflict.columns(['shop', 'person_id']).doNothing())
		.execute();
	const known = await transaction
		.selectFrom('people')
		.select('person_tag')
		.where('shop', '=', shop)
		.where('person_id', '=', person.personId)
		.executeTakeFirstOrThrow();
	if (known.person_tag === person.personTag) return;
	throw new LogError(
		'bad-entry',
		`a person of shop ${shop} has another pseudonym in this log than in the export: forgotten there since the last import, so forget the person here too and import again`,
	);
}

/** Brings everything of one log into another, e.g. from SQLite to PostgreSQL. Can be run again after a failure. */
export async function copyLog(from: Log, to: Log): Promise<{ shops: ImportResult[]; settings: number }> {
	const shops: ImportResult[] = [];
	for (const shop of await from.shops()) shops.push(await to.import(from.export(shop, { persons: true })));
	const settings = await from.settings();
	for (const { shop, key, value } of settings) await to.setSetting(shop, key, value);
	return { shops, settings: settings.length };
}
