/**
 * What PostgreSQL's index lists of an entry, each as a term by itself: its words, their beginnings, and where it belongs.
 * A search is then an intersection of finished lists, however common each of its words is. Left to look for the
 * beginnings itself, the server gathers every entry of every such word first, and what is no word it can only check
 * entry by entry.
 */

import type { IndexedEntry } from './database.js';
import { type AskedFacets, askedTerms, facetTerms, hashOf } from './terms.js';
import { isPrefix } from './words.js';

/** Letters of a beginning that is listed. Of longer ones few words have each, and the server can gather these. */
const SHORTEST = 2;
const LONGEST = 16;
/** Words that have their beginnings listed, together; with them they are up to nine times as long [bytes]. */
const WITH_BEGINNINGS = 64 * 1024;

/** Never a word, for these have no such sign. */
function term(mark: string, shop: string, value: string): string {
	return `=${mark}${hashOf(`${shop}\n${value}`).toString('hex')}`;
}

/** Neighbouring ids have a term in common: this many of them. */
const STRETCH_BITS = 15;

/** The stretch of ids that an id is in, counted from 0. */
export function stretchOf(id: number): number {
	return id >> STRETCH_BITS;
}

/** What stands before the number of a stretch in its term. */
export const STRETCH = '=n';

/** Everything to list an entry under. */
export function termsOf({ id, words, facets }: IndexedEntry): string[] {
	const found = new Set(words);
	let bytes = 0;
	for (const word of words) {
		bytes += Buffer.byteLength(word);
		if (bytes > WITH_BEGINNINGS || !isPrefix(word)) continue;
		const letters = [...word];
		for (let end = SHORTEST; end <= Math.min(LONGEST, letters.length - 1); end += 1) {
			found.add(letters.slice(0, end).join(''));
		}
	}
	found.add(`${STRETCH}${stretchOf(id)}`);
	for (const facet of facetTerms(facets, term)) found.add(facet);
	return [...found];
}

/** One condition of a search: an entry has any one of some terms. */
export interface Condition {
	/** in the notation of the server */
	readonly query: string;
	/** what it names */
	readonly terms: readonly string[];
}

/** A search: everything must hold. */
export interface Search {
	/** words, which the index has a list for */
	readonly words: readonly Condition[];
	/** and where the entries belong, by which they are looked through once more when they are found */
	readonly places: readonly Condition[];
	/** what the index would have to gather first, in the notation of the server: looked at in what the lists leave; or null */
	readonly checked: string | null;
}

// Words hold letters and digits alone, and terms beside these one sign, so nothing in them can end the quotes.
const anyOf = (terms: readonly string[]): Condition => ({
	query: terms.length === 1 ? `'${terms[0]}'` : `(${terms.map((one) => `'${one}'`).join(' | ')})`,
	terms,
});

/** Whether more of a word is asked for than the longest beginning that is listed. */
const isLong = (word: string) => isPrefix(word) && [...word].length > LONGEST;

/** The search for words and facets in all entries. */
export function searchFor(words: readonly string[], facets: AskedFacets): Search {
	const { each, any } = askedTerms(facets, term);
	const states = any.length === 0 ? [] : [anyOf(any)];
	const long = words.filter(isLong);
	return {
		words: words.map((word) => anyOf(isLong(word) ? [[...word].slice(0, LONGEST).join(''), word] : [word])),
		places: [...each.map((one) => anyOf([one])), ...states],
		checked: long.length === 0 ? null : wordsIn(long),
	};
}

/** All of these words or beginnings, in the notation of the server: for entries that are at hand. */
export function wordsIn(words: readonly string[]): string {
	return words.map((word) => `'${word}'${isLong(word) ? ':*' : ''}`).join(' & ');
}
