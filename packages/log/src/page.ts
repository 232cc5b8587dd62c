/**
 * One page of found entries. Whatever is searched for and however many entries there are, the work is bounded: what
 * many have is found among the first thousand entries that one part of the filter holds for; what few have is listed by
 * the index of words and places, nearest first, and these entries are looked up. Days become a range of numbers first.
 */

import { type Kysely, sql } from 'kysely';
import type { Database } from './database.js';
import { LARGEST_NUMBER } from './entry.js';
import {
	type CheckedFilter,
	type CheckedOptions,
	cursorNumber,
	facetsOf,
	filtered,
	isApart,
	isOrdered,
	isRare,
	numbersOfDays,
	oneFacetOf,
	searchedWords,
} from './find.js';
import type { EntryRow } from './rows.js';
import type { Tables } from './tables.js';
import type { AskedFacets } from './terms.js';

/** Entries among which words are looked for, and then entries with the words that are looked up, before a walk. */
const LOOKED_UP = 1000;
/** Of those that are listed, how many are looked up at once: most often the first of them fill the page. */
const AT_ONCE = 100;

const number = sql<number>`entries.number`;
/** A sum, for which no index gives the order. */
const fetched = sql<number>`(entries.number + 0)`;

/** @returns at most `limit + 1` rows in the order asked for */
export async function pageOfRows(
	database: Database,
	db: Kysely<Tables>,
	shop: string,
	options: CheckedOptions,
): Promise<EntryRow[]> {
	const { order, limit, cursor, ...filter } = options;
	const isOldestFirst = order === 'oldest';
	const isDated = filter.from !== undefined || filter.to !== undefined;
	const days = isDated ? await numbersOfDays(db, shop, filter) : null;
	if (isDated && days === null) return [];
	const from = (asked: CheckedFilter) => {
		let query = filtered(database, shop, asked);
		if (days !== null) {
			query = query.where('entries.number', '>=', days.first).where('entries.number', '<=', days.last);
		}
		if (typeof cursor === 'string') {
			query = query.where('entries.number', isOldestFirst ? '>' : '<', cursorNumber(cursor));
		}
		return query;
	};
	const query = from(filter);
	// Few entries are put in order: else a database may walk along all numbers until it has met them.
	const isFetched = isApart(filter);
	const inOrder = (one: typeof query, rows: number) =>
		one.orderBy(isFetched ? fetched : number, isOldestFirst ? 'asc' : 'desc').limit(rows);
	const said = searchedWords(filter) ?? [];
	if (filter.words !== undefined && said.length === 0) return [];
	const isListed = !isRare(filter);
	if (filter.words === undefined && (!isListed || isOrdered(filter))) {
		return await inOrder(query, limit + 1).execute();
	}
	const first = inOrder(isListed ? from(oneFacetOf(filter)) : query, LOOKED_UP);
	const around = await db
		.selectFrom(first.clearSelect().select(['entries.id', 'entries.number']).as('around'))
		.select((eb) => [
			eb.fn.countAll<number | string>().as('count'),
			eb.fn.min('around.id').as('firstId'),
			eb.fn.max('around.id').as('lastId'),
			(isOldestFirst ? eb.fn.max('around.number') : eb.fn.min('around.number')).as('border'),
		])
		.executeTakeFirstOrThrow();
	const count = Number(around.count);
	const {
		border,
		firstId,
		lastId,
	}: { border: number | null; firstId: number | null; lastId: number | null } = around;
	if (border === null || firstId === null || lastId === null) return [];
	const words = await database.rarestFirst(said, isOldestFirst ? firstId : lastId);
	let near = query.where('entries.number', isOldestFirst ? '<=' : '>=', border);
	if (words.length > 0) {
		near = near.where(database.hasWordsNear(words, { first: firstId, last: lastId, count }));
	}
	const found: EntryRow[] = await inOrder(near, limit + 1).execute();
	if (count < LOOKED_UP || found.length > limit) return found;
	const facets = await everyFacet(db, shop, filter);
	if (facets === null) return found;
	// Numbers and ids of a shop run side by side: beyond the border in one is beyond it in the other.
	const end = days === null ? null : await idNear(db, shop, days, isOldestFirst);
	const ids = await database.idsWithWords(words, facets, {
		above: isOldestFirst ? lastId : (end ?? 0) - 1,
		below: isOldestFirst ? (end ?? LARGEST_NUMBER - 1) + 1 : firstId,
		nearest: isOldestFirst ? 'above' : 'below',
		limit: LOOKED_UP,
	});
	let listedTo = border;
	for (let start = 0; start < ids.length && found.length <= limit; start += AT_ONCE) {
		const numbers = await numbersOf(db, shop, ids.slice(start, start + AT_ONCE));
		if (numbers.length === 0) continue;
		listedTo = (isOldestFirst ? Math.max : Math.min)(listedTo, ...numbers);
		found.push(
			...(await inOrder(query.where('entries.number', 'in', numbers), limit + 1 - found.length).execute()),
		);
	}
	if (ids.length < LOOKED_UP || found.length > limit) return found;
	const far = query
		.where('entries.number', isOldestFirst ? '>' : '<', listedTo)
		.where(database.hasWords(words, facets));
	return [...found, ...(await inOrder(far, limit + 1 - found.length).execute())];
}

/** What of a filter the index of words may know, with the person's tag; null where nobody has the id. */
async function everyFacet(
	db: Kysely<Tables>,
	shop: string,
	filter: CheckedFilter,
): Promise<AskedFacets | null> {
	const facets = facetsOf(shop, filter);
	if (filter.personId === undefined) return facets;
	const person = await db
		.selectFrom('people')
		.select('person_tag')
		.where('shop', '=', shop)
		.where('person_id', '=', filter.personId)
		.executeTakeFirst();
	return person === undefined ? null : { ...facets, personTag: person.person_tag };
}

/** Id of the last (else the first) entry of the shop in a range of numbers. */
async function idNear(
	db: Kysely<Tables>,
	shop: string,
	{ first, last }: { first: number; last: number },
	isLast: boolean,
): Promise<number | null> {
	const row = await db
		.selectFrom('entries')
		.select('id')
		.where('shop', '=', shop)
		.where('number', '>=', first)
		.where('number', '<=', last)
		.orderBy('number', isLast ? 'desc' : 'asc')
		.limit(1)
		.executeTakeFirst();
	return row?.id ?? null;
}

/** Numbers of the entries that belong to the shop. */
async function numbersOf(db: Kysely<Tables>, shop: string, ids: readonly number[]): Promise<number[]> {
	if (ids.length === 0) return [];
	const rows = await db
		.selectFrom('entries')
		.select('number')
		.where('id', 'in', ids)
		// No column, so that each is looked up by its id, and SQLite does not go through all of the shop.
		.where(sql<string>`(shop || '')`, '=', shop)
		.execute();
	return rows.map(({ number }) => number);
}
