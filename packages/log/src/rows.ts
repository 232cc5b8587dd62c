import { type Kysely, type Selectable, sql } from 'kysely';
import { type Chained, commitmentTo, type ErasablePart, entryHash } from './chain.js';
import type { Head } from './database.js';
import type { Entry, EntryKind } from './entry.js';
import { LogError } from './errors.js';
import type { Json } from './json.js';
import type { LogPerson } from './log.js';
import type { Tables } from './tables.js';

/** An entry as the database gives it, with its erasable part if that is still there. */
export interface EntryRow extends Selectable<Tables['entries']> {
	person_id: string | null;
	person_name: string | null;
	text: string | null;
	salt: string | null;
}

export function selectEntries(db: Kysely<Tables>) {
	return db
		.selectFrom('entries')
		.leftJoin('erasable', (join) =>
			join.onRef('erasable.shop', '=', 'entries.shop').onRef('erasable.number', '=', 'entries.number'),
		)
		.selectAll('entries')
		.select(['erasable.person_id', 'erasable.person_name', 'erasable.text', 'erasable.salt']);
}

export function chainedOf(row: EntryRow): Chained {
	return {
		shop: row.shop,
		number: row.number,
		// Whatever stands in the row goes into the hash; a kind that never was gives another hash.
		kind: row.kind as EntryKind,
		delivery: row.delivery,
		platform: row.platform,
		channel: row.channel,
		thread: row.thread,
		build: row.build,
		topic: row.topic,
		at: row.at,
		follows: row.follows,
		replaces: row.replaces,
		state: row.state,
		personTag: row.person_tag,
		commitment: row.commitment,
		bodyText: row.body,
		previousHash: row.previous_hash,
	};
}

export function erasablePartOf(row: EntryRow): ErasablePart | null {
	const { person_id: personId, person_name: personName, text, salt } = row;
	if (personId === null || personName === null || text === null || salt === null) return null;
	return { personId, personName, text, salt };
}

/**
 * What is wrong with an entry taken by itself, or null. A damaged row may hold anything, so the sums are
 * guarded: half a surrogate pair, for one, can't be hashed at all.
 */
export function faultOf(row: EntryRow): 'content' | 'erasable' | null {
	try {
		if (entryHash(chainedOf(row)) !== row.hash) return 'content';
	} catch {
		return 'content';
	}
	try {
		const part = erasablePartOf(row);
		return part === null || commitmentTo(part) === row.commitment ? null : 'erasable';
	} catch {
		return 'erasable';
	}
}

/**
 * @throws LogError 'corrupt' when the entry no longer matches its hash: a calculation that was altered is
 * never handed out as if it were the one that was checked
 */
export function toEntry(row: EntryRow): Entry {
	const fault = faultOf(row);
	if (fault !== null) {
		const part = fault === 'content' ? 'content' : 'name or text';
		throw new LogError(
			'corrupt',
			`the ${part} of entry ${row.number} of shop ${row.shop} does not match its hash: it was altered after it was written`,
		);
	}
	const { bodyText, commitment, ...chained } = chainedOf(row);
	const part = erasablePartOf(row);
	return {
		...chained,
		personId: part?.personId ?? '',
		personName: part?.personName ?? '',
		text: part?.text ?? '',
		body: JSON.parse(bodyText) as Json,
		hash: row.hash,
		erased: part === null,
	};
}

/** The one entry of a shop that a condition narrows down to, or null. */
export async function entryWhere(
	db: Kysely<Tables>,
	shop: string,
	narrow: (query: ReturnType<typeof selectEntries>) => ReturnType<typeof selectEntries>,
): Promise<Entry | null> {
	const row = await narrow(selectEntries(db).where('entries.shop', '=', shop)).executeTakeFirst();
	return row === undefined ? null : toEntry(row);
}

export async function headOf(db: Kysely<Tables>, shop: string): Promise<Head | null> {
	const head = await db
		.selectFrom('heads')
		.select(['number', 'hash'])
		.where('shop', '=', shop)
		.executeTakeFirst();
	return head ?? null;
}

/** Everybody behind a pseudonym of the shop, with the name of the newest entry; a search down an index for each. */
export async function peopleOf(db: Kysely<Tables>, shop: string): Promise<LogPerson[]> {
	return await db
		.selectFrom('people')
		.innerJoin('erasable', (join) =>
			join.onRef('erasable.shop', '=', 'people.shop').on('erasable.number', '=', (eb) =>
				eb
					.selectFrom('entries')
					.select((one) => one.fn.max('entries.number').as('newest'))
					.whereRef('entries.shop', '=', 'people.shop')
					.whereRef('entries.person_tag', '=', 'people.person_tag'),
			),
		)
		.select(['people.person_id as id', 'erasable.person_name as name', 'people.person_tag as tag'])
		.where('people.shop', '=', shop)
		.execute();
}

/** Lower and upper number of what is stored of a shop; null when nothing is. */
export async function numberRange(
	db: Kysely<Tables>,
	shop: string,
	above: number,
): Promise<{ first: number; last: number } | null> {
	const row = await db
		.selectFrom('entries')
		.select([sql<number | null>`min(number)`.as('first'), sql<number | null>`max(number)`.as('last')])
		.where('shop', '=', shop)
		.where('number', '>', above)
		.executeTakeFirst();
	if (row === undefined || row.first === null || row.last === null) return null;
	return { first: row.first, last: row.last };
}
