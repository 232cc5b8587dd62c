/**
 * What PostgreSQL's index lists of an entry, each as a term by itself: its words, their beginnings, and where it belongs.
 * A search is then an intersection of finished lists, however common each of its words is. Left to look for the
 * beginnings itself, the server gathers every entry of every such word first, and what is no word it can only check
 * entry by entry.
 */

import { createHash } from 'node:crypto';
import type { IndexedEntry } from './database.js';
import { isPrefix } from './words.js';

/** What an entry is found by beside its words. */
export interface Facets {
	readonly shop: string;
	readonly build: string | null;
	readonly topic: string | null;
	readonly channel: string;
	readonly personTag: string;
	readonly state: string | null;
}

/** Facets that a search asks for; of several states any one. */
export interface AskedFacets extends Partial<Record<Exclude<keyof Facets, 'state'>, string>> {
	readonly shop: string;
	readonly states?: readonly string[] | undefined;
}

const marks = { build: 'b', topic: 't', channel: 'c', personTag: 'p', state: 'a' } as const;
/** Letters of a beginning that is listed. Of longer ones few words have each, and the server can gather these. */
const SHORTEST = 2;
const LONGEST = 16;
/** Words that have their beginnings listed, together; with them they are up to nine times as long [bytes]. */
const WITH_BEGINNINGS = 64 * 1024;

/** Never a word, for these have no such sign; short, because two that meet by chance are told apart by the entry. */
function term(mark: string, shop: string, value: string): string {
	return `=${mark}${createHash('sha256').update(`${shop}\n${value}`).digest('hex').slice(0, 8)}`;
}

function shopTerm(shop: string): string {
	return term('s', shop, '');
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
	found.add(shopTerm(facets.shop));
	for (const [name, mark] of Object.entries(marks)) {
		const value = facets[name as keyof typeof marks];
		if (value !== null) found.add(term(mark, facets.shop, value));
	}
	return [...found];
}

/** The search for words, and for facets where given, in the notation of the server. */
export function searchFor(words: readonly string[], facets: AskedFacets | null): string {
	// Words hold letters and digits alone, and terms beside these one sign, so nothing in them can end the quotes.
	const asked = words.map((word) => `'${word}'${[...word].length > LONGEST && isPrefix(word) ? ':*' : ''}`);
	if (facets === null) return asked.join(' & ');
	const { shop, states } = facets;
	const places = (['build', 'topic', 'channel', 'personTag'] as const).flatMap((name) => {
		const value = facets[name];
		return value === undefined ? [] : [`'${term(marks[name], shop, value)}'`];
	});
	if (states !== undefined && states.length > 0) {
		places.push(`(${states.map((state) => `'${term(marks.state, shop, state)}'`).join(' | ')})`);
	}
	// Every one of these terms says the shop as well; by itself its list is the longest of all.
	if (places.length === 0) places.push(`'${shopTerm(shop)}'`);
	return [...asked, ...places].join(' & ');
}
