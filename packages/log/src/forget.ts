import type { Transaction } from 'kysely';
import type { Database } from './database.js';
import { headOf } from './rows.js';
import type { Tables } from './tables.js';

/** Entries whose content is held in memory at a time. */
const PAGE = 200;

/**
 * Erases a person in a shop: id, name and text of every entry, the key of the pseudonym, and the words of the texts.
 * @param wordsWithoutText the words that an entry keeps when its text is gone
 * @returns how many entries were erased
 */
export async function forgetIn(
	database: Database,
	transaction: Transaction<Tables>,
	person: { shop: string; personId: string },
	wordsWithoutText: (entry: { build: string | null; topic: string | null; bodyText: string }) => string[],
): Promise<number> {
	const { shop, personId } = person;
	// Locking the head of a shop that isn't there would make it.
	if ((await headOf(transaction, shop)) === null) return 0;
	await database.lockHead(transaction, shop);
	const theirs = await transaction
		.selectFrom('erasable')
		.innerJoin('entries', (join) =>
			join.onRef('entries.shop', '=', 'erasable.shop').onRef('entries.number', '=', 'erasable.number'),
		)
		.select('entries.id')
		.where('erasable.shop', '=', shop)
		.where('erasable.person_id', '=', personId)
		.execute();
	const ids = theirs.map((entry) => entry.id);
	await database.unindexWords(transaction, ids);
	for (let start = 0; start < ids.length; start += PAGE) {
		const page = await transaction
			.selectFrom('entries')
			.select(['id', 'build', 'topic', 'channel', 'state', 'person_tag', 'body'])
			.where('id', 'in', ids.slice(start, start + PAGE))
			.execute();
		const words = page.map(({ id, body, person_tag: personTag, ...entry }) => ({
			id,
			words: wordsWithoutText({ ...entry, bodyText: body }),
			facets: { ...entry, shop, personTag },
		}));
		await database.indexWords(transaction, words);
	}
	for (const table of ['erasable', 'people'] as const) {
		await transaction.deleteFrom(table).where('shop', '=', shop).where('person_id', '=', personId).execute();
	}
	return ids.length;
}
