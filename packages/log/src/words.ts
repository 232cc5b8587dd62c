import { LIMITS } from './entry.js';
import type { Json } from './json.js';

/** Longest word kept in the index; longer runs of letters are no words of the trade. */
const WORD_LENGTH = 64;

/**
 * The words of a text, the same for both databases: runs of letters and runs of digits, lower case, in
 * compatibility form, so that "4AWG", "4 AWG" and "4 awg" are the same words and "mm²" is "mm" and "2".
 */
export function wordsOf(text: string): string[] {
	const runs = text
		.normalize('NFKC')
		.toLowerCase()
		.match(/\p{N}+|[\p{L}\p{M}]+/gu);
	return [...new Set((runs ?? []).map((run) => [...run].slice(0, WORD_LENGTH).join('')))];
}

/** The text that stands at the end of a way through a body; anything else there is taken as its JSON, nothing as ''. */
export function textAt(body: Json, way: readonly string[]): string {
	let at: Json | undefined = body;
	for (const name of way) {
		const isObject: boolean = typeof at === 'object' && at !== null && !Array.isArray(at);
		at = isObject && Object.hasOwn(at as object, name) ? (at as { [name: string]: Json })[name] : undefined;
	}
	return at === undefined ? '' : typeof at === 'string' ? at : JSON.stringify(at);
}

/**
 * The words of a text that go into the index: all of them, up to a length that both databases take. The lexemes of
 * a PostgreSQL tsvector may together be 1 MiB long; given more it complains of nothing and then loses some.
 */
export function indexedWordsOf(text: string): string[] {
	let bytes = 0;
	return wordsOf(text).filter((word) => {
		bytes += Buffer.byteLength(word);
		return bytes <= LIMITS.indexedBytes;
	});
}

/** A word that may be the beginning of a longer one. A number may not: "12" must not find "120". */
export function isPrefix(word: string): boolean {
	return /^[\p{L}\p{M}]{2}/u.test(word);
}
