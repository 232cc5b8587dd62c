/**
 * What SQLite's index lists of an entry. It finds the beginnings of words by itself; where an entry belongs are terms
 * of two characters that are letters of no script, so that no word and no beginning of one is ever the same.
 */

import type { IndexedEntry } from './database.js';
import { type AskedFacets, askedTerms, facetTerms, hashOf } from './terms.js';
import { isPrefix } from './words.js';

/** The two planes of Unicode for private use, whose last two characters are none. */
const PLANES = [0xf_00_00, 0x10_00_00] as const;
const IN_A_PLANE = 0xff_fe;

function term(mark: string, shop: string, value: string): string {
	const hash = hashOf(`${mark}${shop}\n${value}`);
	return String.fromCodePoint(...PLANES.map((plane, at) => plane + (hash.readUInt16BE(2 * at) % IN_A_PLANE)));
}

/** Everything to list an entry under, with a space between. */
export function listedTerms({ words, facets }: IndexedEntry): string {
	return [...words, ...facetTerms(facets, term)].join(' ');
}

/** A term of no entry. */
const NONE = `"${String.fromCodePoint(PLANES[0])}"`;

/**
 * The search for words, and for facets where given, in the notation of the index. Where several must meet, the index
 * moves all of their lists forward whenever one of them does. So each is joined to what all before it have in common,
 * from which an "or" keeps it apart: the longer lists stand last and are hardly moved.
 * @param words the rarest first
 */
export function matching(words: readonly string[], facets: AskedFacets | null): string {
	// Words hold letters and digits alone, so nothing in them can end the quotes.
	const asked = words.map((word) => `"${word}"${isPrefix(word) ? '*' : ''}`);
	const { each, any } = facets === null ? { each: [], any: [] } : askedTerms(facets, term);
	const quoted = (terms: readonly string[]) => terms.map((one) => `"${one}"`);
	const states = any.length === 0 ? [] : [`(${quoted(any).join(' OR ')})`];
	return [...quoted(each), ...asked, ...states].reduce((before, one, at) =>
		at === 1 ? `${before} AND ${one}` : `(${before} OR ${NONE}) AND ${one}`,
	);
}
