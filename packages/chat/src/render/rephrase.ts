/** Says in another language what the conversation composed in English, by the patterns of the phrasebooks. */

import { type Phrasebook, phrase, type Speaking, sayFor } from '@lugbook/core';
import { books } from '../phrases/books.js';
import { gapsAsTyped } from '../phrases/log/typed.js';

interface Pattern {
	/** gaps that hold names or words as typed */
	readonly typed: readonly number[];
	readonly strings: readonly string[];
	/** gaps as short as can be, and as long as can be: "A: b: c governs" may be parted at either colon */
	readonly matches: readonly RegExp[];
	/** how much the sentence says by itself */
	readonly literal: number;
}

function patternOf(key: string): Pattern {
	const strings = key.split(/\{\d+\}/);
	const escaped = strings.map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
	const gaps = strings.length > 2 ? ['[\\s\\S]*?', '[\\s\\S]*'] : ['[\\s\\S]*'];
	return {
		typed: gapsAsTyped[key] ?? [],
		strings,
		matches: gaps.map((gap) => {
			const pattern = escaped.reduce((before, part) => {
				const isBracketed = before.endsWith('\\(') && part.startsWith('\\)');
				return `${before}(${isBracketed ? BRACKETED : gap})${part}`;
			});
			return new RegExp(`^${pattern}$`, 'u');
		}),
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

/** Around the number of words that are hidden: no text that people type or the books hold has these. */
const OPEN = '\uE000';
const CLOSE = '\uE001';
const HIDDEN = new RegExp(`${OPEN}(\\d+)${CLOSE}`, 'g');
/** Where a name was erased these words stand in its place. */
const FORGOTTEN = /^somebody who was forgotten/;

/** What stands in brackets ends with them: "1 open (No. 2); 1 rejected (No. 3)" are two items. */
const BRACKETED = '(?:[^()]|\\([^()]*\\))*';

/** How deep sentences stand in one another's gaps. */
const deepest = 6;

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
	// Words as typed are out of reach while the sentence around them is told, and put back at its end.
	const hidden: string[] = [];
	const hide = (text: string): string => {
		const forgotten = text.replace(FORGOTTEN, (words) => look(words) ?? words);
		return `${OPEN}${hidden.push(forgotten) - 1}${CLOSE}`;
	};
	const reveal = (text: string): string =>
		text.replace(HIDDEN, (words, index: string) => hidden[Number(index)] ?? words);
	const look = (text: string): string | null => {
		const known = pairs.get(text) ?? (book[text] === undefined ? phrase(speaking, text) : say([text]));
		return known === text ? null : known;
	};
	const rephrase = (text: string, depth: number): string => {
		const known = look(text);
		if (known !== null) return known;
		if (depth >= deepest) return text;
		return spaced(text) ?? fitted(text, depth) ?? parted(text, depth) ?? labelled(text, depth) ?? text;
	};

	/** By the sentence whose words it has. */
	const fitted = (text: string, depth: number): string | null => {
		for (const { strings, matches, typed } of patternsOf(book)) {
			const ways = matches.flatMap((pattern) => {
				const match = pattern.exec(text);
				return match === null ? [] : [match.slice(1)];
			});
			const [first] = ways;
			if (first === undefined) continue;
			const values = ways.find((way) => way.some((value) => pairs.has(value))) ?? first;
			const told = values.map((value, index) => {
				if (typed.includes(index)) return hide(value);
				return strings[index]?.endsWith('"') === true ? value : rephrase(value, depth + 1);
			});
			return say(strings, ...told);
		}
		return null;
	};

	/** A line of help: what is typed, blanks, and what it does. */
	const spaced = (text: string): string | null => {
		const [, typed = '', words = ''] = /^(\S.*? {2,})(\S.*)$/.exec(text) ?? [];
		const told = look(words);
		return told === null ? null : typed + told;
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
	return (text) => (speaking.language === 'en' ? text : reveal(rephrase(text, 0)));
}
