import type { Kysely, RawBuilder, Transaction } from 'kysely';
import type { LogError } from './errors.js';
import type { Tables } from './tables.js';
import type { AskedFacets, Facets } from './terms.js';

/** An entry as the index of words takes it. */
export interface IndexedEntry {
	readonly id: number;
	readonly words: readonly string[];
	readonly facets: Facets;
}

/** Ids to list: the nearest to one end of a range, both ends without the ids that are named. */
export interface IdRange {
	readonly above: number;
	readonly below: number;
	readonly nearest: 'above' | 'below';
	readonly limit: number;
}

/** A few entries: how many they are, and between which ids they lie. */
export interface NearIds {
	readonly first: number;
	readonly last: number;
	readonly count: number;
}

export interface Head {
	number: number;
	hash: string;
}

/** What differs between the databases. Everything else of the log is the same code on both. */
export interface Database {
	readonly kind: 'sqlite' | 'postgres';
	readonly db: Kysely<Tables>;
	/** Writes with the same key are let through one at a time, or together. */
	writeKey(shop: string): string;
	/** How many waiting writes of a key may go into one transaction. */
	readonly writesPerCommit: number;
	/** For changes of the schema, which may take longer than any statement of the log. */
	withoutTimeLimit<T>(task: (db: Kysely<Tables>) => Promise<T>): Promise<T>;
	/** Runs a writing transaction. Not `lasting`, a power cut may undo it, as long as nothing lasting was written after. */
	transact(lasting: boolean, task: (transaction: Transaction<Tables>) => Promise<void>): Promise<void>;
	/** Reads the head of a shop so that no other writer can read it before this transaction ends. */
	lockHead(transaction: Transaction<Tables>, shop: string): Promise<Head | null>;
	indexWords(transaction: Transaction<Tables>, entries: readonly IndexedEntry[]): Promise<void>;
	unindexWords(transaction: Transaction<Tables>, entryIds: readonly number[]): Promise<void>;
	/** The words in the order in which they are best looked for, as far as the entries around an id tell. */
	rarestFirst(words: readonly string[], nearId: number): Promise<readonly string[]>;
	/**
	 * Condition on `entries.id`: the entry has every one of these words; the index is read once, for all entries, and
	 * lists as few others as it can of those that have not the facets.
	 */
	hasWords(words: readonly string[], facets: AskedFacets): RawBuilder<boolean>;
	/** The same for a few entries: no more of the index is read than these need. */
	hasWordsNear(words: readonly string[], ids: NearIds): RawBuilder<boolean>;
	/** Ids of entries that have every one of these words, as few as can be of those that have not the facets. */
	idsWithWords(words: readonly string[], facets: AskedFacets, range: IdRange): Promise<number[]>;
	/** Takes what was deleted out of the database's files, as far as the database lets us. */
	scrub(): Promise<void>;
	/** Looks for damage below the level of entries; null when there is none to be seen. */
	damage(): Promise<string | null>;
	/** Copies everything into a new file. */
	backup(path: string): Promise<void>;
	/** Makes anything thrown by the driver ours. */
	toLogError(error: unknown): LogError;
	close(): Promise<void>;
}

export interface DatabaseOptions {
	/** How long a statement may wait for a lock, and an operation for a lost server, before it is given up [ms]. */
	readonly patienceMs: number;
}
