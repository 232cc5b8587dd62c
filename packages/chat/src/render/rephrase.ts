/** Says in another language what the conversation composed in English, by the patterns of the phrasebooks. */

import { type Phrasebook, phrase, type Speaking, sayFor } from '@lugbook/core';
import { books } from '../phrases/books.js';

interface Pattern {
	readonly strings: readonly string[];
	/** gaps as short as can be, and as long as can be: "A: b: c governs" may be parted at either colon */
	readonly matches: readonly RegExp[];
	/** how much the sentence says by itself */
	readonly literal: number;
}

function patternOf(key: string): Pattern {
	const strings = key.split(/\{\d+\}/);
	const escaped = strings.map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
	const gaps = strings.length > 2 ? ['([\\s\\S]*?)', '([\\s\\S]*)'] : ['([\\s\\S]*)'];
	return {
		strings,
		matches: gaps.map((gap) => new RegExp(`^${escaped.join(gap)}$`, 'u')),
		literal: strings.join('').length,
	};
}

const patterns = new Map<Phrasebook, readonly Pattern[]>();

function patternsOf(book: Phrasebook): readonly Pattern[] {
	const known = patterns.get(book);
	if (known !== undefined) return known;
	const made = Object.keys(book)
		.filter((key) => key.includes('{'))
		.map(patternOf)
		// The sentence that says most by itself is the one that was meant.
		.toSorted((a, b) => b.literal - a.literal);
	patterns.set(book, made);
	return made;
}

/** How deep sentences stand in one another's gaps. */
const deepest = 4;

/**
 * A text in the language of whoever asked. What no phrasebook knows comes back as it is: names, figures, words as
 * typed.
 *
 * @param pairs English texts of this very answer and how they read in the language
 */
export function rephraser(
	speaking: Speaking,
	pairs: ReadonlyMap<string, string> = new Map(),
): (text: string) => string {
	const book = books[speaking.language];
	const say = sayFor(speaking, book);
	const look = (text: string): string | null => {
		const known = pairs.get(text) ?? (book[text] === undefined ? phrase(speaking, text) : say([text]));
		return known === text ? null : known;
	};
	const rephrase = (text: string, depth: number): string => {
		const known = look(text);
		if (known !== null) return known;
		if (depth >= deepest) return text;
		return fitted(text, depth) ?? parted(text, depth) ?? labelled(text, depth) ?? text;
	};

	/** By the sentence whose words it has. */
	const fitted = (text: string, depth: number): string | null => {
		for (const { strings, matches } of patternsOf(book)) {
			const ways = matches.flatMap((pattern) => {
				const match = pattern.exec(text);
				return match === null ? [] : [match.slice(1)];
			});
			const [first] = ways;
			if (first === undefined) continue;
			const values = ways.find((way) => way.some((value) => pairs.has(value))) ?? first;
			const told = values.map((value, index) =>
				strings[index]?.endsWith('"') === true ? value : rephrase(value, depth + 1),
			);
			return say(strings, ...told);
		}
		return null;
	};

	/** Sentence by sentence, or item by item. */
	const parted = (text: string, depth: number): string | null => {
		for (const apart of [/(?<=[.?!]) (?=\S)/, /(?<=;) /, /(?<=:) /, /(?<=,) /]) {
			const pieces = text.split(apart);
			if (pieces.length < 2) continue;
			const told = pieces.map((piece) => {
				const mark = /[.?!;:,]$/.exec(piece)?.[0];
				const whole = look(piece) ?? fitted(piece, depth + 1);
				if (whole !== null || mark === undefined) return whole ?? rephrase(piece, depth + 1);
				return rephrase(piece.slice(0, -1), depth + 1) + mark;
			});
			const changed = told.filter((piece, index) => piece !== pieces[index]).length;
			// A list half in one language and half in another is worse than one in English.
			const needed = apart.source.includes('[.?!]')
				? 1
				: pieces.filter((piece) => /\p{L}{4}/u.test(piece)).length;
			if (changed > 0 && changed >= needed) return told.join(' ');
		}
		return null;
	};

	/** "capacity of one battery 200 Ah": a label of the books with its value. */
	const labelled = (text: string, depth: number): string | null => {
		const words = text.split(' ');
		if (words.length > 12) return null;
		for (let count = words.length - 1; count >= 1; count -= 1) {
			const label = look(words.slice(0, count).join(' '));
			if (label !== null) return `${label} ${rephrase(words.slice(count).join(' '), depth + 1)}`;
		}
		return null;
	};
	return (text) => (speaking.language === 'en' ? text : rephrase(text, 0));
}
