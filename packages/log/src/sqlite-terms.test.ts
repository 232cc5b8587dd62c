import fc from 'fast-check';
import { expect, test } from 'vitest';
import { listedTerms } from './sqlite-terms.js';
import { wordsOf } from './words.js';

const identifier = fc.string({ unit: 'binary', minLength: 1, maxLength: 40 });
const facets = fc.record({
	shop: identifier,
	build: fc.option(identifier),
	topic: fc.option(identifier),
	channel: identifier,
	personTag: identifier,
	state: fc.option(identifier),
});

test('where an entry belongs is listed as terms that are no word of any text, nor the beginning of one', () => {
	fc.assert(
		fc.property(facets, (places) => {
			const terms = listedTerms({ id: 1, words: [], facets: places }).split(' ');
			expect(terms).toHaveLength(
				3 + [places.build, places.topic, places.state].filter((value) => value !== null).length,
			);
			for (const term of terms) {
				expect(term).toMatch(/^\p{Co}\p{Co}$/u);
				expect(wordsOf(term)).toEqual([]);
			}
		}),
	);
});

test('the same value is another term in another shop, and as another kind of value', () => {
	const places = {
		shop: 'a',
		build: 'heron',
		topic: 'heron',
		channel: 'heron',
		personTag: 'heron',
		state: 'heron',
	};
	const ofTwoShops = ['a', 'b'].flatMap((shop) =>
		listedTerms({ id: 1, words: [], facets: { ...places, shop } }).split(' '),
	);
	expect(new Set(ofTwoShops).size).toBe(12);
});
