/**
 * One page of found entries. Whatever is searched for and however many entries there are, the work is bounded: words
 * that are common are found among the first thousand entries that all else holds for; words that are not are listed by
 * the index of words, nearest first, and their entries looked up. Only words that are common elsewhere, but not where
 * all else holds, need a walk through both. Days become a range of numbers first.
 */

import { type Kysely, sql } from 'kysely';
import type { Database } from './database.js';
import {
	type CheckedOptions,
	cursorNumber,
	filtered,
	isNarrow,
	numbersOfDays,
	searchedWords,
} from './find.js';
import type { EntryRow } from './rows.js';
import type { Tables } from './tables.js';
import { wordsOf } from './words.js';

/** Entries among which words are looked for, and then entries with the words that are looked up, before a walk. */
const LOOKED_UP = 1000;
const MOST_OTHER_WORDS = 8;

/** @returns at most `limit + 1` rows in the order asked for */
export async function pageOfRows(
	database: Database,
	db: Kysely<Tables>,
	shop: string,
	options: CheckedOptions,
): Promise<EntryRow[]> {
	const { order, limit, cursor, ...filter } = options;
	const isOldestFirst = order === 'oldest';
	let query = filtered(db, shop, filter);
	if (filter.from !== undefined || filter.to !== undefined) {
		const days = await numbersOfDays(db, shop, filter);
		if (days === null) return [];
		query = query.where('entries.number', '>=', days.first).where('entries.number', '<=', days.last);
	}
	if (typeof cursor === 'string') {
		query = query.where('entries.number', isOldestFirst ? '>' : '<', cursorNumber(cursor));
	}
	const inOrder = (one: typeof query, rows: number) =>
		one.orderBy('entries.number', isOldestFirst ? 'asc' : 'desc').limit(rows);
	const words = searchedWords(filter);
	if (words === null) return await inOrder(query, limit + 1).execute();
	if (words.length === 0) return [];
	const around = await db
		.selectFrom(inOrder(query, LOOKED_UP).clearSelect().select(['entries.id', 'entries.number']).as('around'))
		.select((eb) => [
			eb.fn.countAll<number | string>().as('count'),
			eb.fn.min('around.id').as('firstId'),
			eb.fn.max('around.id').as('lastId'),
			(isOldestFirst ? eb.fn.max('around.number') : eb.fn.min('around.number')).as('border'),
		])
		.executeTakeFirstOrThrow();
	const {
		border,
		firstId,
		lastId,
	}: { border: number | null; firstId: number | null; lastId: number | null } = around;
	if (border === null || firstId === null || lastId === null) return [];
	const near = query
		.where('entries.number', isOldestFirst ? '<=' : '>=', border)
		.where(database.hasWordsNear(words, { first: firstId, last: lastId }));
	const found: EntryRow[] = await inOrder(near, limit + 1).execute();
	if (Number(around.count) < LOOKED_UP || found.length > limit) return found;
	const wanted = limit + 1 - found.length;
	// The words of build and topic are in the index too: with them it lists few entries of others.
	const others = [filter.build ?? '', filter.topic ?? ''].flatMap(wordsOf).slice(0, MOST_OTHER_WORDS);
	const indexed = [...new Set([...words, ...others])];
	// Numbers and ids of a shop run side by side: beyond the border in one is beyond it in the other.
	const ids = await database.idsWithWords(indexed, {
		...(isOldestFirst ? { above: lastId } : { below: firstId }),
		limit: LOOKED_UP,
	});
	const numbers = await numbersOf(db, shop, ids);
	const listed: EntryRow[] =
		numbers.length === 0 ? [] : await inOrder(query.where('entries.number', 'in', numbers), wanted).execute();
	if (ids.length < LOOKED_UP || listed.length === wanted) return [...found, ...listed];
	const end = (isOldestFirst ? Math.max : Math.min)(border, ...numbers);
	// A few entries are quicker looked at one by one, unless the other words have made the list short.
	const walked =
		isNarrow(filter) && others.length === 0
			? database.hasWordsNear(indexed, { first: 0, last: Number.MAX_SAFE_INTEGER })
			: database.hasWords(indexed);
	const far = query.where('entries.number', isOldestFirst ? '>' : '<', end).where(walked);
	return [...found, ...listed, ...(await inOrder(far, wanted - listed.length).execute())];
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
