import type { Transaction } from 'kysely';
import {
	type Chained,
	commitmentTo,
	type ErasablePart,
	entryHash,
	FIRST_PREVIOUS_HASH,
	newSalt,
	personTagFor,
} from './chain.js';
import type { Database, Head } from './database.js';
import type { CheckedEntry, Entry } from './entry.js';
import { LogError } from './errors.js';
import type { Json } from './json.js';
import { entryWhere } from './rows.js';
import type { Tables } from './tables.js';

/**
 * Writes an entry behind the last one of its shop, inside a transaction.
 * @param attempted numbers and hashes of earlier tries of this same append whose commit was not answered; those of
 * this try are added
 */
export async function appendIn(
	database: Database,
	transaction: Transaction<Tables>,
	checked: CheckedEntry,
	{ words, attempted }: { words: readonly string[]; attempted: Map<number, string> },
): Promise<{ entry: Entry; repeated: boolean }> {
	const { shop, delivery, personId, personName, text, bodyText, ...others } = checked;
	const head = await database.lockHead(transaction, shop);
	if (attempted.size > 0) {
		const written = await entryWhere(transaction, shop, (query) =>
			query
				.where('entries.number', 'in', [...attempted.keys()])
				.where('entries.hash', 'in', [...attempted.values()]),
		);
		if (written !== null) return { entry: written, repeated: false };
	}
	if (delivery !== null) {
		const first = await entryWhere(transaction, shop, (query) =>
			query.where('entries.delivery', '=', delivery),
		);
		if (first !== null) return { entry: first, repeated: true };
	}
	await assertTail(transaction, shop, head);
	const number = (head?.number ?? 0) + 1;
	for (const field of ['follows', 'replaces'] as const) {
		const target = checked[field];
		if (target !== null && target >= number) {
			throw new LogError(
				'bad-entry',
				`entry.${field} is ${target}, but the last entry of shop ${shop} is ${number - 1}`,
			);
		}
	}
	const salt = newSalt();
	const chained: Chained = {
		...others,
		shop,
		delivery,
		bodyText,
		number,
		personTag: await personTag(transaction, shop, personId),
		commitment: commitmentTo({ personId, personName, text, salt }),
		previousHash: head?.hash ?? FIRST_PREVIOUS_HASH,
	};
	const hash = entryHash(chained);
	await insertEntries(database, transaction, [
		{ chained, hash, part: { personId, personName, text, salt }, words },
	]);
	attempted.set(number, hash);
	const { bodyText: _, commitment: __, ...fields } = chained;
	const body = JSON.parse(bodyText) as Json;
	return { entry: { ...fields, personId, personName, text, body, hash, erased: false }, repeated: false };
}

/** An entry with everything that is written of it. */
export interface WholeEntry {
	chained: Chained;
	hash: string;
	part: ErasablePart | null;
	words: readonly string[];
}

/** Writes the rows of entries that follow each other in a shop, and makes the last one its head. */
export async function insertEntries(
	database: Database,
	transaction: Transaction<Tables>,
	entries: readonly WholeEntry[],
): Promise<void> {
	const last = entries.at(-1);
	if (last === undefined) return;
	const ids = await transaction
		.insertInto('entries')
		.values(
			entries.map(({ chained, hash }) => ({
				shop: chained.shop,
				number: chained.number,
				kind: chained.kind,
				delivery: chained.delivery,
				platform: chained.platform,
				channel: chained.channel,
				thread: chained.thread,
				build: chained.build,
				topic: chained.topic,
				at: chained.at,
				follows: chained.follows,
				replaces: chained.replaces,
				state: chained.state,
				person_tag: chained.personTag,
				commitment: chained.commitment,
				body: chained.bodyText,
				previous_hash: chained.previousHash,
				hash,
			})),
		)
		.returning(['id', 'number'])
		.execute();
	const erasable = entries.flatMap(({ chained: { shop, number }, part }) =>
		part === null
			? []
			: [
					{
						shop,
						number,
						person_id: part.personId,
						person_name: part.personName,
						text: part.text,
						salt: part.salt,
					},
				],
	);
	if (erasable.length > 0) await transaction.insertInto('erasable').values(erasable).execute();
	const { shop, number } = last.chained;
	const { hash } = last;
	await transaction
		.insertInto('heads')
		.values({ shop, number, hash })
		.onConflict((conflict) => conflict.column('shop').doUpdateSet({ number, hash }))
		.execute();
	const written = new Map(entries.map((entry) => [entry.chained.number, entry]));
	await database.indexWords(
		transaction,
		ids.flatMap(({ id, number }) => {
			const entry = written.get(number);
			return entry === undefined ? [] : [{ id, words: entry.words, facets: entry.chained }];
		}),
	);
}

/** Nothing is written after a tail that does not end where the head record says. */
export async function assertTail(
	transaction: Transaction<Tables>,
	shop: string,
	head: Head | null,
): Promise<void> {
	const tail = await transaction
		.selectFrom('entries')
		.select(['number', 'hash'])
		.where('shop', '=', shop)
		.orderBy('number', 'desc')
		.limit(1)
		.executeTakeFirst();
	if (tail?.number === head?.number && tail?.hash === head?.hash) return;
	throw new LogError(
		'corrupt',
		`the log of shop ${shop} ends at entry ${tail?.number ?? 0}, but its head record says ${head?.number ?? 0}: verify it before writing on`,
	);
}

async function personTag(transaction: Transaction<Tables>, shop: string, personId: string): Promise<string> {
	const known = await transaction
		.selectFrom('people')
		.select('person_tag')
		.where('shop', '=', shop)
		.where('person_id', '=', personId)
		.executeTakeFirst();
	if (known !== undefined) return known.person_tag;
	const salt = newSalt();
	const tag = personTagFor(shop, personId, salt);
	await transaction
		.insertInto('people')
		.values({ shop, person_id: personId, person_tag: tag, salt })
		.execute();
	return tag;
}
