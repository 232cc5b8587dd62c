import type { Kysely } from 'kysely';
import { FIRST_PREVIOUS_HASH, personTagFor } from './chain.js';
import type { Head } from './database.js';
import { type EntryRow, faultOf, numberRange, selectEntries } from './rows.js';
import type { Tables } from './tables.js';

/** What can be wrong with a chain. */
export type ChainFault =
	/** The entry does not match its own hash: something in it was changed. */
	| 'content'
	/** The entry does not carry the hash of the one before it. */
	| 'link'
	/** No entry has this number, though later ones are there; or a number is below 1. */
	| 'gap'
	/** The number is there twice. */
	| 'doubled-number'
	/** Name, id or text as typed do not match the salted hash in the entry, or the person's pseudonym. */
	| 'erasable'
	/** The head record knows of more entries than are there; `number` is the first that is missing. */
	| 'truncated'
	/** The head record is missing, behind, or has another hash than the last entry. */
	| 'head'
	/** The entry is not the one that was known outside the log to stand at its number. */
	| 'known-head';

export interface ChainProblem {
	shop: string;
	/** The first entry that is wrong. */
	number: number;
	fault: ChainFault;
	message: string;
}

export interface ShopReport {
	shop: string;
	/** Entries read, up to the first bad one. */
	entries: number;
	/** Of these, entries whose person has been forgotten. */
	erased: number;
	head: Head | null;
	problem: ChainProblem | null;
}

export interface VerifyReport {
	ok: boolean;
	shops: ShopReport[];
	/** The first problem of the first shop that has one. */
	problem: ChainProblem | null;
	/**
	 * Damage of the database below the entries: what SQLite's own check finds when all shops are asked for, or
	 * why reading had to end early. Null when there is none to be seen.
	 */
	damage: string | null;
}

/** Numbers read at a time: memory stays bounded however long the chain is. */
const WINDOW = 200;

/**
 * Walks the chain of a shop from its first entry to its head.
 * @param known a head seen earlier and kept outside the log: also finds a tail that was cut together with its head
 */
export async function verifyShop(
	db: Kysely<Tables>,
	shop: string,
	known: Head | null,
	headOf: () => Promise<Head | null>,
): Promise<ShopReport> {
	const report: ShopReport = { shop, entries: 0, erased: 0, head: null, problem: null };
	let last: Head = { number: 0, hash: FIRST_PREVIOUS_HASH };

	function bad(number: number, fault: ChainFault, message: string): ShopReport {
		report.problem = { shop, number, fault, message: `entry ${number} of shop ${shop}: ${message}` };
		return report;
	}

	// Numbers below 1 can only be there by tampering, but then they must be seen.
	let above = -2_147_483_648;
	for (;;) {
		const range = await numberRange(db, shop, above);
		if (range === null) {
			const head = await headOf();
			report.head = head;
			if (head === null) {
				if (last.number > 0) return bad(last.number, 'head', 'the head record of the shop is missing');
			} else if (head.number > last.number) {
				// Entries written since the last window are read in another round; only then is one missing.
				if ((await numberRange(db, shop, above)) !== null) continue;
				return bad(
					last.number + 1,
					'truncated',
					`is missing, though the head record says that ${head.number} entries were written`,
				);
			} else if (head.number < last.number) {
				return bad(head.number + 1, 'head', `stands after the last entry of the head record, ${head.number}`);
			} else if (head.hash !== last.hash) {
				return bad(last.number, 'head', 'has another hash than the head record');
			}
			if (known !== null && known.number > last.number) {
				return bad(
					last.number + 1,
					'known-head',
					`is missing, though entry ${known.number} was known outside the log`,
				);
			}
			return report;
		}
		// Not beyond what was seen to be there: entries written meanwhile belong to the next round.
		above = Math.min(range.first + WINDOW - 1, range.last);
		const { rows, tags } = await readWindow(db, shop, { first: range.first, last: above });
		for (const row of rows) {
			const expected = last.number + 1;
			if (row.number < 1) return bad(row.number, 'gap', 'has a number below 1');
			if (row.number < expected) return bad(row.number, 'doubled-number', 'stands there twice');
			if (row.number > expected) {
				return bad(expected, 'gap', `is missing; the next one there is ${row.number}`);
			}
			const fault = faultOf(row);
			if (fault === 'content') return bad(row.number, fault, 'its content does not match its hash');
			if (row.previous_hash !== last.hash) {
				return bad(row.number, 'link', 'does not carry the hash of the entry before it');
			}
			if (fault === 'erasable') {
				return bad(row.number, fault, 'its name, id or text does not match the salted hash in the chain');
			}
			if (row.person_id === null) {
				report.erased += 1;
			} else if (tags.get(row.person_id) !== row.person_tag) {
				return bad(row.number, 'erasable', "the person's id does not match the pseudonym in the chain");
			}
			last = { number: row.number, hash: row.hash };
			report.entries += 1;
			if (known !== null && known.number === last.number && known.hash !== last.hash) {
				return bad(row.number, 'known-head', 'has another hash than was known outside the log');
			}
		}
	}
}

/** Entries and, computed anew, the pseudonyms of their people, both as they stood at one moment. */
async function readWindow(
	db: Kysely<Tables>,
	shop: string,
	range: { first: number; last: number },
): Promise<{ rows: EntryRow[]; tags: Map<string, string> }> {
	return await db
		.transaction()
		.setIsolationLevel('repeatable read')
		.setAccessMode('read only')
		.execute(async (snapshot) => {
			const rows = await selectEntries(snapshot)
				.where('entries.shop', '=', shop)
				.where('entries.number', '>=', range.first)
				.where('entries.number', '<=', range.last)
				.orderBy('entries.number')
				.orderBy('entries.id')
				.execute();
			const ids = [...new Set(rows.flatMap((row) => (row.person_id === null ? [] : [row.person_id])))];
			if (ids.length === 0) return { rows, tags: new Map() };
			const people = await snapshot
				.selectFrom('people')
				.selectAll()
				.where('shop', '=', shop)
				.where('person_id', 'in', ids)
				.execute();
			const tags = people.map(
				(person) => [person.person_id, personTagFor(shop, person.person_id, person.salt)] as const,
			);
			return { rows, tags: new Map(tags) };
		});
}
