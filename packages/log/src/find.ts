import { type Kysely, sql } from 'kysely';
import { z } from 'zod';
import {
	ENTRY_KINDS,
	type EntryKind,
	entryNumber,
	identifier,
	instant,
	LIMITS,
	parseOrRefuse,
	storable,
} from './entry.js';
import { LogError } from './errors.js';
import { selectEntries } from './rows.js';
import type { Tables } from './tables.js';
import { wordsOf } from './words.js';

/** Which entries of a shop; everything given must hold. Null asks for entries without a value. */
export interface LogFilter {
	build?: string | null | undefined;
	topic?: string | null | undefined;
	channel?: string | undefined;
	thread?: string | null | undefined;
	/** Entries of a person who has been forgotten are no longer found by the id; see `personTag`. */
	personId?: string | undefined;
	personTag?: string | undefined;
	/** First instant that counts. */
	from?: string | undefined;
	/** First instant that no longer counts. */
	to?: string | undefined;
	kinds?: readonly EntryKind[] | undefined;
	states?: readonly string[] | undefined;
	/** Every one of these words, whole or (letters) as a beginning, in the text, the build or the topic. */
	words?: string | undefined;
	/** Any one of these. */
	numbers?: readonly number[] | undefined;
	/** The entry it follows, or any one of several. */
	follows?: number | readonly number[] | undefined;
	/** The entry it replaces, or any one of several. */
	replaces?: number | readonly number[] | undefined;
}

export interface FindOptions extends LogFilter {
	/** By number; newest first unless said. */
	order?: 'newest' | 'oldest' | undefined;
	/** Entries of a page, 50 unless said, at most LIMITS.pageEntries. */
	limit?: number | undefined;
	/** `next` of the page before. */
	cursor?: string | null | undefined;
}

const DEFAULT_PAGE = 50;

const entryNumbers = z.union([entryNumber, z.array(entryNumber).max(LIMITS.pageEntries)]);

const filterFields = {
	build: identifier.nullish(),
	topic: identifier.nullish(),
	channel: identifier.optional(),
	thread: identifier.nullish(),
	personId: identifier.optional(),
	personTag: identifier.optional(),
	from: instant.optional(),
	to: instant.optional(),
	kinds: z.array(z.enum(ENTRY_KINDS)).max(LIMITS.filterItems).optional(),
	states: z.array(identifier).max(LIMITS.filterItems).optional(),
	words: storable(LIMITS.textBytes).optional(),
	numbers: z.array(entryNumber).max(LIMITS.pageEntries).optional(),
	follows: entryNumbers.optional(),
	replaces: entryNumbers.optional(),
};
const filterSchema = z.strictObject(filterFields);
const optionsSchema = z.strictObject({
	...filterFields,
	order: z.enum(['newest', 'oldest']).default('newest'),
	limit: z.int().min(1).max(LIMITS.pageEntries).default(DEFAULT_PAGE),
	cursor: z
		.string()
		.regex(/^(newest|oldest):[1-9]\d{0,9}$/, 'is not the `next` of an earlier page')
		.nullish(),
});

export type CheckedFilter = z.output<typeof filterSchema>;
export type CheckedOptions = z.output<typeof optionsSchema>;

export function checkFilter(filter: LogFilter): CheckedFilter {
	return parseOrRefuse(filterSchema, filter, 'filter');
}

export function checkOptions(options: FindOptions): CheckedOptions {
	const checked = parseOrRefuse(optionsSchema, options, 'filter');
	if (typeof checked.cursor === 'string' && !checked.cursor.startsWith(checked.order)) {
		throw new LogError(
			'bad-entry',
			`filter.cursor is ${checked.cursor}, from a page in another order than ${checked.order}`,
		);
	}
	return checked;
}

export function cursorNumber(cursor: string): number {
	return Number(cursor.slice(cursor.indexOf(':') + 1));
}

/** A column that no index is used for: entries are read by number, and their day is only looked at. */
const at = sql<string>`(entries.at || '')`;
/** Nearly all entries are exchanges: no index finds one by that. */
const unindexedKind = sql<EntryKind>`(entries.kind || '')`;

/** The same for the state, where anything else narrows the entries down further than their state does. */
const unindexedState = sql<string | null>`(entries.state || '')`;

/** The words that are searched for, or null where none are given. */
export function searchedWords({ words }: CheckedFilter): string[] | null {
	if (words === undefined) return null;
	const found = wordsOf(words);
	if (found.length > LIMITS.filterItems) {
		throw new LogError(
			'bad-entry',
			`filter.words has ${found.length} words; at most ${LIMITS.filterItems} are searched at once`,
		);
	}
	return found;
}

/** Lowest and highest number of the entries between two instants; null when there are none. */
export async function numbersOfDays(
	db: Kysely<Tables>,
	shop: string,
	{ from, to }: CheckedFilter,
): Promise<{ first: number; last: number } | null> {
	let query = db
		.selectFrom('entries')
		// A sum, so that PostgreSQL reads the days from their index and does not walk along the numbers to find one.
		.select([sql<number | null>`min(number + 0)`.as('first'), sql<number | null>`max(number + 0)`.as('last')])
		.where('shop', '=', shop);
	if (from !== undefined) query = query.where('at', '>=', from);
	if (to !== undefined) query = query.where('at', '<', to);
	const row: { first: number | null; last: number | null } = await query.executeTakeFirstOrThrow();
	return row.first === null || row.last === null ? null : { first: row.first, last: row.last };
}

/** The query for the filtered entries of a shop, without order and limit; `words` are not looked at. */
export function filtered(db: Kysely<Tables>, shop: string, filter: CheckedFilter) {
	let query = selectEntries(db).where('entries.shop', '=', shop);
	for (const column of ['build', 'topic', 'thread'] as const) {
		const value = filter[column];
		if (value === null) query = query.where(`entries.${column}`, 'is', null);
		else if (value !== undefined) query = query.where(`entries.${column}`, '=', value);
	}
	if (filter.channel !== undefined) query = query.where('entries.channel', '=', filter.channel);
	const { numbers, follows, replaces } = filter;
	for (const [column, value] of Object.entries({ number: numbers, follows, replaces } as const)) {
		if (value === undefined) continue;
		const several = typeof value === 'number' ? [value] : value;
		query = query.where((eb) =>
			several.length === 0
				? eb.lit(false)
				: eb(`entries.${column as 'number' | 'follows' | 'replaces'}`, 'in', several),
		);
	}
	if (filter.personTag !== undefined) query = query.where('entries.person_tag', '=', filter.personTag);
	const { personId, kinds, states } = filter;
	if (personId !== undefined) {
		query = query.where('entries.person_tag', '=', (eb) =>
			eb
				.selectFrom('people')
				.select('people.person_tag')
				.where('people.shop', '=', shop)
				.where('people.person_id', '=', personId),
		);
	}
	if (filter.from !== undefined) query = query.where(at, '>=', filter.from);
	if (filter.to !== undefined) query = query.where(at, '<', filter.to);
	// PostgreSQL has no `in ()`: an empty list holds for no entry.
	if (kinds !== undefined) {
		const kind = kinds.includes('exchange') ? unindexedKind : sql.ref<EntryKind>('entries.kind');
		query = query.where((eb) => (kinds.length === 0 ? eb.lit(false) : eb(kind, 'in', kinds)));
	}
	if (states !== undefined) {
		const state = isNarrow(filter) ? unindexedState : sql.ref<string | null>('entries.state');
		query = query.where((eb) => (states.length === 0 ? eb.lit(false) : eb(state, 'in', states)));
	}
	return query;
}

/** Whether few of a shop's entries have what is asked for, whatever their state. */
export function isNarrow({
	build,
	topic,
	thread,
	personId,
	personTag,
	numbers,
	follows,
	replaces,
}: CheckedFilter): boolean {
	const asked = [build, topic, thread, personId, personTag, numbers, follows, replaces];
	return asked.some((value) => value !== undefined && value !== null);
}
