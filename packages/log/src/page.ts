/**
 * One page of found entries. Whatever is searched for and however many entries there are, the work is bounded: words
 * that are common are found among the first thousand entries that all else holds for; words that are not are taken from
 * the whole index of words, where they are rare. Days become a range of numbers first.
 */

import type { Kysely } from 'kysely';
import type { Database } from './database.js';
import { type CheckedOptions, cursorNumber, filtered, numbersOfDays, searchedWords } from './find.js';
import type { EntryRow } from './rows.js';
import type { Tables } from './tables.js';

/** Entries among which words are looked for before the whole index of words is searched. */
const LOOKED_UP = 1000;

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
	const far = query
		.where('entries.number', isOldestFirst ? '>' : '<', border)
		.where(database.hasWords(words));
	return [...found, ...(await inOrder(far, limit + 1 - found.length).execute())];
}
