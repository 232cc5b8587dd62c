import type { ColumnType } from 'kysely';

/** A column that is written once: an update of it does not compile. */
type Fixed<T> = ColumnType<T, T, never>;
/** A column the database fills in. */
type Given<T> = ColumnType<T, never, never>;

/** Written into the triggers of every database there is: never to be changed without a migration. */
export const SPAN_ENTRIES = 1024;

export interface Tables {
	entries: {
		/** The row's address in this database, for the index of words; no part of the chain. */
		id: Given<number>;
		shop: Fixed<string>;
		number: Fixed<number>;
		kind: Fixed<string>;
		delivery: Fixed<string | null>;
		platform: Fixed<string>;
		channel: Fixed<string>;
		thread: Fixed<string | null>;
		build: Fixed<string | null>;
		topic: Fixed<string | null>;
		at: Fixed<string>;
		follows: Fixed<number | null>;
		replaces: Fixed<number | null>;
		state: Fixed<string | null>;
		person_tag: Fixed<string>;
		commitment: Fixed<string>;
		/** Canonical JSON. */
		body: Fixed<string>;
		previous_hash: Fixed<string>;
		hash: Fixed<string>;
	};
	/** Names and the text as typed: the rows that forgetting a person deletes. */
	erasable: {
		shop: Fixed<string>;
		number: Fixed<number>;
		person_id: Fixed<string>;
		person_name: Fixed<string>;
		text: Fixed<string>;
		salt: Fixed<string>;
	};
	/** Who is behind a pseudonym; deleted with the person. */
	people: {
		shop: Fixed<string>;
		person_id: Fixed<string>;
		person_tag: Fixed<string>;
		/** Key of the pseudonym. */
		salt: Fixed<string>;
	};
	/** The last entry of each shop, kept apart so that a cut tail shows. Its row is also the lock of the shop. */
	heads: {
		shop: Fixed<string>;
		number: number;
		hash: string;
	};
	/** First and last instant of each thousand or so entries of a shop, kept by the database itself. */
	spans: {
		shop: Given<string>;
		/** The number of an entry, divided by SPAN_ENTRIES and rounded down. */
		span: Given<number>;
		first_at: Given<string>;
		last_at: Given<string>;
	};
	settings: {
		shop: Fixed<string>;
		key: Fixed<string>;
		value: string;
	};
}
