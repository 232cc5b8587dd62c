/** What an entry is found by beside its words: the indexes of both databases list these as terms of their own. */

import { createHash } from 'node:crypto';

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

/** How a database writes a value of a shop as a term: `mark` tells what kind of value it is. */
export type WriteTerm = (mark: string, shop: string, value: string) => string;

const marks = { build: 'b', topic: 't', channel: 'c', personTag: 'p', state: 'a' } as const;

/** Short, because two values that meet by chance are told apart by the entry. */
export function hashOf(text: string): Buffer {
	return createHash('sha256').update(text).digest().subarray(0, 4);
}

/** The terms of everything that an entry belongs to. */
export function facetTerms(facets: Facets, write: WriteTerm): string[] {
	const { shop } = facets;
	const places = Object.entries(marks).flatMap(([name, mark]) => {
		const value = facets[name as keyof typeof marks];
		return value === null ? [] : [write(mark, shop, value)];
	});
	return [write('s', shop, ''), ...places];
}

/**
 * The terms of what is asked for.
 * @returns those of which an entry must have each one; and those, common by themselves, of which it must have any one,
 * where there are some
 */
export function askedTerms(
	{ shop, states = [], ...facets }: AskedFacets,
	write: WriteTerm,
): { each: string[]; any: string[] } {
	const each = (['build', 'personTag', 'topic', 'channel'] as const).flatMap((name) => {
		const value = facets[name];
		return value === undefined ? [] : [write(marks[name], shop, value)];
	});
	const any = states.map((state) => write(marks.state, shop, state));
	// Every other term says the shop as well; by itself its list is the longest of all.
	return { each, any: each.length + any.length > 0 ? any : [write('s', shop, '')] };
}
