import { createHash, createHmac, randomBytes } from 'node:crypto';
import type { CheckedEntry } from './entry.js';
import { canonicalJson } from './json.js';

/** What stands before the first entry of a shop. */
export const FIRST_PREVIOUS_HASH = '0'.repeat(64);

/** Goes into every hash, so that a later way of hashing can never be confused with this one. */
const CHAIN_FORMAT = 1;

/** 256 bits from the system's generator: nobody can guess a forgotten name by trying names against its hash. */
const SALT_BYTES = 32;
/** A pseudonym of 128 bits: no two people of a shop will ever share one. */
const TAG_HEX_DIGITS = 32;

export function newSalt(): string {
	return randomBytes(SALT_BYTES).toString('hex');
}

export function sha256Hex(text: string | Uint8Array): string {
	return createHash('sha256').update(text).digest('hex');
}

/** The part of an entry that can be taken away without breaking the chain. */
export interface ErasablePart {
	personId: string;
	personName: string;
	text: string;
	salt: string;
}

/** Hash that binds an entry to its erasable part and tells nothing about it once the salt is gone. */
export function commitmentTo(part: ErasablePart): string {
	const { personId, personName, text, salt } = part;
	return sha256Hex(canonicalJson({ personId, personName, text, salt }));
}

/**
 * Pseudonym of a person in a shop. The key is random for each person and erased with the person, so after
 * that nobody can compute the pseudonym from a list of known ids. The key is taken as the text it is kept as:
 * decoding it would give several texts the same meaning.
 */
export function personTagFor(shop: string, personId: string, key: string): string {
	return createHmac('sha256', key)
		.update(canonicalJson([shop, personId]))
		.digest('hex')
		.slice(0, TAG_HEX_DIGITS);
}

/** Everything of an entry that its hash covers; the body as canonical JSON. */
export interface Chained
	extends Pick<
		CheckedEntry,
		| 'shop'
		| 'kind'
		| 'delivery'
		| 'platform'
		| 'channel'
		| 'thread'
		| 'build'
		| 'topic'
		| 'at'
		| 'follows'
		| 'replaces'
		| 'state'
		| 'bodyText'
	> {
	number: number;
	personTag: string;
	commitment: string;
	previousHash: string;
}

/**
 * SHA-256 over the canonical JSON of the chained fields, `body` among them, and of the hash before.
 * The body is put in as its text, so a stored body that is no longer in its canonical form gives another hash.
 */
export function entryHash(entry: Chained): string {
	const hash = createHash('sha256');
	const { bodyText, ...others } = entry;
	const members: [string, string][] = Object.entries(others).map(([key, value]) => [
		key,
		canonicalJson(value),
	]);
	members.push(['body', bodyText], ['format', canonicalJson(CHAIN_FORMAT)]);
	members.sort(([a], [b]) => (a < b ? -1 : 1));
	members.forEach(([key, text], index) => {
		hash.update(`${index === 0 ? '{' : ','}"${key}":`);
		hash.update(text);
	});
	hash.update('}');
	return hash.digest('hex');
}
