import type { Head } from './database.js';
import type { Entry, EntryKind, NewEntry } from './entry.js';
import type { FindOptions, LogFilter } from './find.js';
import type { ImportResult } from './portable.js';
import type { ConsistencyProof, InclusionProof, TreeHead } from './proofs.js';
import type { VerifyReport } from './verify.js';

export interface LogOptions {
	/**
	 * How long an operation waits for a lock that somebody else holds, or for a lost server to come back,
	 * before it fails with 'locked' or 'connection-lost' [ms]; 5000 unless said.
	 */
	readonly patienceMs?: number | undefined;
	/**
	 * Hears why the opening takes its time, in a sentence: while another process brings the log up to date, however
	 * long that takes, it is waited for. Told after `patienceMs`, then each minute, and when it is over.
	 */
	readonly waiting?: ((sentence: string) => void) | undefined;
	/**
	 * Leaves a log of an earlier version as it is: the opening fails with 'unavailable' then. Programs of that version
	 * may be writing it, and could not go on. A new log is made.
	 */
	readonly asItIs?: boolean | undefined;
	/**
	 * Where in a body the text stands that `words` shall find beside what the person typed: the names of the fields on
	 * the way to it, as `['answer', 'headline']`. It stays in the index when the person is forgotten. None unless said.
	 */
	readonly searchable?: readonly string[] | undefined;
}

/** Somebody who has entries in a shop. */
export interface LogPerson {
	/** the platform's id */
	readonly id: string;
	readonly name: string;
	/** the pseudonym in the chain; null where a person has no entry yet */
	readonly tag: string | null;
}

export interface WriteOptions {
	/** False for what a power cut may undo; a process that ends undoes nothing. It then waits for no disk. */
	readonly lasting?: boolean | undefined;
}

/** Texts from `from` up to, but without, `below`, in the order of their UTF-8 bytes. */
export interface ValueRange {
	readonly from: string;
	readonly below: string;
}

export interface Log {
	/**
	 * Writes an entry; durable when it resolves. The same delivery of the same shop again changes nothing and
	 * gives the first entry, whatever else was given this time.
	 * @throws LogError; with every code but 'connection-lost' nothing was written. After that one it is not
	 * known, and the same delivery again will tell.
	 */
	append(entry: NewEntry): Promise<{ entry: Entry; repeated: boolean }>;
	entry(shop: string, number: number): Promise<Entry | null>;
	byDelivery(shop: string, delivery: string): Promise<Entry | null>;
	/** The newest entry of a thread (null: the channel itself), of these kinds when given. */
	latestInThread(
		shop: string,
		channel: string,
		thread: string | null,
		kinds?: readonly EntryKind[],
	): Promise<Entry | null>;
	/** A page of entries; `next` is the cursor of the page after it, null when there is none. */
	find(shop: string, options: FindOptions): Promise<{ entries: Entry[]; next: string | null }>;
	/** Runs through the entries that were there when it began, oldest first, a page of them in memory at a time. */
	fold<T>(
		shop: string,
		filter: LogFilter,
		initial: T,
		step: (state: T, entry: Entry) => T | Promise<T>,
	): Promise<T>;
	/** The last entry's number and hash; null when the shop has none. Kept elsewhere, it lets `verify` see a cut tail. */
	head(shop: string): Promise<Head | null>;
	/**
	 * Walks the chain of one shop or of all.
	 * @param known a head of that shop as it was seen earlier and kept outside the log
	 */
	verify(shop?: string, known?: Head): Promise<VerifyReport>;
	/**
	 * Erases id, name and text as typed in all entries of a person, and the key of the pseudonym. The chain
	 * still verifies. The caller logs that it was done, without the name.
	 * @returns how many entries were erased
	 */
	forget(shop: string, personId: string): Promise<number>;
	/** The people of a shop who have entries and are not forgotten, each by the newest name, sorted by name. */
	people(shop: string): Promise<LogPerson[]>;
	/** The shops that have entries, sorted. */
	shops(): Promise<string[]>;
	/** Keeps a small text outside the chain, e.g. how the bot is installed; null removes it. */
	setSetting(shop: string, key: string, value: string | null): Promise<void>;
	/** Several of them, all or none; null removes one. */
	setSettings(
		shop: string,
		values: Readonly<Record<string, string | null>>,
		options?: WriteOptions,
	): Promise<void>;
	getSetting(shop: string, key: string): Promise<string | null>;
	/**
	 * Changes a setting only where it is as expected (null: not there), so that of several processes one alone
	 * gets to do it; `to` null removes it.
	 * @returns whether it was changed
	 */
	swapSetting(
		shop: string,
		key: string,
		from: string | null,
		to: string | null,
		options?: WriteOptions,
	): Promise<boolean>;
	/**
	 * The settings of one shop, by key. They may hold secrets.
	 * @param outside leaves those out whose value lies in this range
	 */
	settingsOf(shop: string, outside?: ValueRange): Promise<{ key: string; value: string }[]>;
	/**
	 * Removes the settings of a shop whose value lies in a range.
	 * @returns how many they were
	 */
	dropSettings(shop: string, range: ValueRange): Promise<number>;
	/** All settings of all shops, by shop and key. They may hold secrets. */
	settings(): Promise<{ shop: string; key: string; value: string }[]>;
	/** The Merkle tree over the first `size` entries of a shop (all unless said). Kept elsewhere, it pins them. */
	tree(shop: string, size?: number): Promise<TreeHead>;
	/** Proof that an entry is in the tree of the first `size` entries (all unless said). */
	inclusion(shop: string, number: number, size?: number): Promise<InclusionProof>;
	/** Proof that the tree of the first `from` entries is the beginning of the tree of the first `to` (all unless said). */
	consistency(shop: string, from: number, to?: number): Promise<ConsistencyProof>;
	/**
	 * The entries of a shop as lines of JSON, up to its head at the time.
	 * @param options.persons whether names, ids and texts as typed go along; the chain can be checked without them
	 */
	export(shop: string, options: { persons: boolean }): AsyncIterable<string>;
	/**
	 * Writes the entries of an export, numbers and hashes as they were. Entries that are there already must be the
	 * same; an import that was interrupted is run again.
	 */
	import(lines: Iterable<string> | AsyncIterable<string>): Promise<ImportResult>;
	/**
	 * Copies the whole log into a new file while it is in use, checked before it gets its name. SQLite only:
	 * PostgreSQL has its own tools. A copy still has the names of people who are forgotten later.
	 * @throws LogError 'unavailable' when the file exists, or on PostgreSQL
	 */
	backup(path: string): Promise<void>;
	/** Lets the waiting writes finish, then closes. */
	close(): Promise<void>;
}
