import { type Kysely, sql } from 'kysely';
import { z } from 'zod';
import type { Database } from './database.js';
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
import { SPAN_ENTRIES, type Tables } from './tables.js';
import type { AskedFacets } from './terms.js';
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
	/** The entry it replaces, or any one of several; `any` for whatever replaces another. */
	replaces?: number | readonly number[] | 'any' | undefined;
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
	replaces: z.union([entryNumbers, z.literal('any')]).optional(),
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

/** What is no exchange is rare and has an index of its own, which SQLite takes only where this is said as well. */
const isRareKind = sql<boolean>`entries.kind <> 'exchange'`;
/**
 * SQLite counts no values. Nearly all entries are exchanges, and no index shall find one by that, nor any entry by its
 * kind that is found by what it is about ...
 */
const unindexedKind = sql<EntryKind>`(entries.kind || '')`;
/** ... nor by the state, where anything else narrows the entries down further than their state does. */
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

/**
 * Numbers between which all entries between two instants lie, and some others beside them; null when there are none.
 * Clocks go back: only the spans that the database keeps tell it without a look at every entry.
 */
export async function numbersOfDays(
	db: Kysely<Tables>,
	shop: string,
	{ from, to }: CheckedFilter,
): Promise<{ first: number; last: number } | null> {
	let query = db
		.selectFrom('spans')
		.select((eb) => [eb.fn.min('span').as('first'), eb.fn.max('span').as('last')])
		.where('shop', '=', shop);
	if (from !== undefined) query = query.where('last_at', '>=', from);
	if (to !== undefined) query = query.where('first_at', '<', to);
	const { first, last }: { first: number | null; last: number | null } =
		await query.executeTakeFirstOrThrow();
	if (first === null || last === null) return null;
	return { first: first * SPAN_ENTRIES, last: (last + 1) * SPAN_ENTRIES - 1 };
}

/** What of a filter the index of words may know. A person who is asked for by id is not among it. */
export function facetsOf(shop: string, filter: CheckedFilter): AskedFacets {
	const { build, topic, channel, personTag, states } = filter;
	return {
		shop,
		...(typeof build === 'string' ? { build } : {}),
		...(typeof topic === 'string' ? { topic } : {}),
		...(channel === undefined ? {} : { channel }),
		...(personTag === undefined ? {} : { personTag }),
		states,
	};
}

/** The query for the filtered entries of a shop, without order and limit; `words` are not looked at. */
export function filtered(database: Database, shop: string, filter: CheckedFilter) {
	const countsValues = database.kind === 'postgres';
	let query = selectEntries(database.db).where('entries.shop', '=', shop);
	for (const column of ['build', 'topic', 'thread'] as const) {
		const value = filter[column];
		if (value === null) query = query.where(`entries.${column}`, 'is', null);
		else if (value !== undefined) query = query.where(`entries.${column}`, '=', value);
	}
	if (filter.channel !== undefined) query = query.where('entries.channel', '=', filter.channel);
	const { numbers, follows, replaces } = filter;
	for (const [column, value] of Object.entries({ number: numbers, follows, replaces } as const)) {
		if (value === undefined) continue;
		if (value === 'any') {
			query = query.where(`entries.${column as 'replaces'}`, 'is not', null);
			continue;
		}
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
	if (filter.from !== undefined) query = query.where('entries.at', '>=', filter.from);
	if (filter.to !== undefined) query = query.where('entries.at', '<', filter.to);
	// PostgreSQL has no `in ()`: an empty list holds for no entry.
	if (kinds !== undefined) {
		const isExchange = kinds.includes('exchange');
		const isHidden = !countsValues && (isExchange || isNamed(filter));
		const kind = isHidden ? unindexedKind : sql.ref<EntryKind>('entries.kind');
		query = query.where((eb) => (kinds.length === 0 ? eb.lit(false) : eb(kind, 'in', kinds)));
		if (!isExchange && !isHidden) query = query.where(isRareKind);
	}
	if (states !== undefined) {
		const state =
			!countsValues && isNarrow(filter) ? unindexedState : sql.ref<string | null>('entries.state');
		query = query.where((eb) => (states.length === 0 ? eb.lit(false) : eb(state, 'in', states)));
	}
	return query;
}

/** Whether one facet at most is asked for, of which an index lists the entries in the order of their numbers. */
export function isOrdered(filter: CheckedFilter): boolean {
	const { shop: _, ...facets } = facetsOf('', filter);
	const asked = Object.values({ ...facets, personId: filter.personId }).filter(
		(value) => value !== undefined,
	);
	return asked.length < 2 && filter.channel === undefined;
}

/** What of a filter is the most telling by itself and has its entries listed in the order of their numbers. */
export function oneFacetOf(filter: CheckedFilter): CheckedFilter {
	const { personId, personTag, build, topic, states } = filter;
	if (personId !== undefined) return { personId };
	if (personTag !== undefined) return { personTag };
	if (typeof build === 'string') return { build };
	return typeof topic === 'string' ? { topic } : { states };
}

/** Whether a filter names the entries, or those that they are about: all of them can be looked at. */
function isNamed({ numbers, follows, replaces }: CheckedFilter): boolean {
	return [numbers, follows, replaces].some((value) => value !== undefined);
}

/** Whether the entries of a filter are few and lie apart: a database looks them up, and puts them in order then. */
export function isApart(filter: CheckedFilter): boolean {
	const { kinds } = filter;
	return isNamed(filter) || (kinds !== undefined && kinds.length > 1 && !kinds.includes('exchange'));
}

/** Whether a filter holds for so few entries that they need no list. */
export function isRare(filter: CheckedFilter): boolean {
	const { thread, kinds } = filter;
	return (
		isNamed(filter) || typeof thread === 'string' || (kinds !== undefined && !kinds.includes('exchange'))
	);
}

/** Whether few of a shop's entries have what is asked for, whatever their state. */
function isNarrow({
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
