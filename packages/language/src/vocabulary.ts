import { editDistance, type Field, type Fields, monthNames } from '@lugbook/core';
import { commands } from './words/commands.js';
import { fillers } from './words/common.js';

/** What words are read against: a topic, or a kind of equipment. */
export interface Subject {
	readonly name: string;
	/** words by which people name it */
	readonly words: readonly string[];
	readonly fields: Fields;
	/** subjects whose answer is part of this one's: words that ask for them are met by it */
	readonly includes?: readonly string[];
}

/** What a phrase may mean. A phrase often has several meanings; the chosen topic's are used. */
export type Meaning =
	| { readonly means: 'topic'; readonly topic: string; readonly rank: number }
	/** asks for a topic whose answer is part of this one's */
	| { readonly means: 'covered'; readonly topic: string }
	| { readonly means: 'alias'; readonly topic: string; readonly field: string }
	| { readonly means: 'choice'; readonly topic: string; readonly field: string; readonly value: string }
	| { readonly means: 'flag'; readonly topic: string; readonly field: string; readonly value: boolean }
	| { readonly means: 'text'; readonly topic: string; readonly field: string }
	| { readonly means: 'item'; readonly topic: string; readonly field: string; readonly inner: Meaning }
	| { readonly means: 'month'; readonly month: number }
	| { readonly means: 'said'; readonly what: string }
	| { readonly means: 'filler' };

export interface PhraseMatch {
	/** the words as they stand in the vocabulary */
	readonly phrase: string;
	readonly meanings: readonly Meaning[];
	/** how many word tokens it takes */
	readonly length: number;
	/** a typing slip was corrected */
	readonly corrected: boolean;
}

/** The words of all subjects, by first word; derived from the declarations once. */
export class Vocabulary {
	readonly #phrases = new Map<string, { readonly phrase: string; readonly meanings: Meaning[] }>();
	readonly #longestFrom = new Map<string, number>();
	/** words that may be meant by a slip, by first letter, each with the letters it has */
	readonly #single = new Map<string, { readonly word: string; readonly letters: number }[]>();
	readonly #known = new Set<string>();
	readonly #others = new Set<string>();

	/**
	 * @param others words that mean nothing here but are no slips of those that do
	 */
	constructor(subjects: readonly Subject[], others: Iterable<string> = []) {
		for (const word of others) this.#others.add(folded(word));
		for (const topic of subjects) {
			topic.words.forEach((word, rank) => {
				this.#add(word, { means: 'topic', topic: topic.name, rank });
			});
			this.#add(topic.name, { means: 'topic', topic: topic.name, rank: 0 });
			this.#addFields(topic.name, topic.fields, (meaning) => meaning);
			this.#addAsking(topic);
			for (const included of subjects.filter(({ name }) => topic.includes?.includes(name) === true)) {
				for (const word of included.words) this.#add(word, { means: 'covered', topic: topic.name });
			}
		}
		monthNames.forEach((name, index) => {
			this.#add(name, { means: 'month', month: index + 1 });
			this.#add(name.slice(0, 3), { means: 'month', month: index + 1 });
		});
		for (const [index, names] of otherMonths.entries()) {
			for (const name of names) this.#add(name, { means: 'month', month: index + 1 });
		}
		for (const [what, phrases] of Object.entries(commands)) {
			for (const phrase of phrases) this.#add(phrase, { means: 'said', what });
		}
		for (const word of fillers) this.#add(word, { means: 'filler' });
	}

	/** "what fuse for a" names the rating's place, and it asks for a fuse too. */
	#addAsking({ name, words, fields }: Subject): void {
		for (const { meta } of Object.values(fields)) {
			for (const alias of meta.aliases) {
				const rank = words.findIndex((word) => alias !== word && ` ${alias} `.includes(` ${word} `));
				if (rank >= 0) this.#add(alias, { means: 'topic', topic: name, rank });
			}
		}
	}

	#addFields(topic: string, fields: Fields, wrap: (meaning: Meaning) => Meaning): void {
		const aliases = new Set(Object.values(fields).flatMap(({ meta }) => meta.aliases));
		for (const [name, field] of Object.entries(fields)) {
			this.#addField(topic, name, field, wrap, aliases);
			if (field.type.sort === 'list') {
				this.#addFields(topic, field.type.item, (inner) =>
					wrap({ means: 'item', topic, field: name, inner }),
				);
			}
		}
	}

	#addField(
		topic: string,
		name: string,
		field: Field,
		wrap: (meaning: Meaning) => Meaning,
		aliases: ReadonlySet<string>,
	): void {
		const named: Meaning =
			field.type.sort === 'flag'
				? { means: 'flag', topic, field: name, value: true }
				: { means: 'alias', topic, field: name };
		for (const alias of [field.meta.label, ...field.meta.aliases]) this.#add(alias, wrap(named));
		const { type } = field;
		if (type.sort === 'choice') {
			for (const [value, words] of Object.entries(type.options)) {
				for (const word of words) this.#add(word, wrap({ means: 'choice', topic, field: name, value }));
				// "long" of a wheelbase is a word of every question, "insulation" names a figure: then only the option's
				// own words stand for it.
				if (!fillers.has(value) && !aliases.has(value))
					this.#add(value, wrap({ means: 'choice', topic, field: name, value }));
			}
		} else if (type.sort === 'flag') {
			for (const word of type.yes) this.#add(word, wrap({ means: 'flag', topic, field: name, value: true }));
			for (const word of type.no) this.#add(word, wrap({ means: 'flag', topic, field: name, value: false }));
		} else if (type.sort === 'text') {
			for (const word of type.words) this.#add(word, wrap({ means: 'text', topic, field: name }));
		}
	}

	#add(phrase: string, meaning: Meaning): void {
		const words = phraseWords(phrase).map(folded);
		const first = words[0];
		// A phrase with a number in it is lexed as a number and can't be met as words.
		if (first === undefined || words.some((word) => /^\d/.test(word))) return;
		const key = words.join(' ');
		const known = this.#phrases.get(key) ?? { phrase: phrase.toLowerCase(), meanings: [] };
		const { meanings } = known;
		if (meanings.length === 0) this.#phrases.set(key, known);
		if (!meanings.some((one) => JSON.stringify(one) === JSON.stringify(meaning))) meanings.push(meaning);
		this.#longestFrom.set(first, Math.max(this.#longestFrom.get(first) ?? 0, words.length));
		for (const word of words) this.#learn(word);
	}

	#learn(word: string): void {
		if (this.#known.has(word)) return;
		this.#known.add(word);
		if (word.length < 4) return;
		const bucket = this.#single.get(word[0] as string) ?? [];
		if (bucket.length === 0) this.#single.set(word[0] as string, bucket);
		bucket.push({ word, letters: lettersOf(word) });
	}

	/** True for a word that some topic, or the small talk of a message, knows. */
	knows = (typed: string): boolean => {
		const word = folded(typed);
		return this.#known.has(word) || this.#known.has(singular(word));
	};

	/**
	 * All phrases that begin at this word, longest first; where none is written so, those that typing slips hide, if
	 * one reading of each word is plainly nearest.
	 */
	matches(typed: readonly string[], at: number): PhraseMatch[] {
		const words = typed.map(folded);
		const exact = this.#matchesAs(words, at, (word) => word, false);
		const longest = exact[0]?.length ?? 0;
		// "dcdc chager": a slip further on must not hide the longer phrase.
		const mended = this.#matchesAs(words, at, this.#mended, true).filter(({ length }) => length > longest);
		const most = mended[0]?.length ?? longest;
		const completed = this.#completed(words, at).filter(({ length }) => length > most);
		return [...completed, ...mended, ...exact];
	}

	/** Phrases with one word cut short or slipped, where the words beside it leave but one choice: "langer radst". */
	#completed(words: readonly string[], at: number): PhraseMatch[] {
		const first = words[at];
		if (first === undefined || !this.#known.has(first)) return [];
		const found: PhraseMatch[] = [];
		for (
			let length = Math.min(this.#longestFrom.get(first) ?? 0, words.length - at);
			length > 1;
			length -= 1
		) {
			const part = words.slice(at, at + length);
			const odd = part.flatMap((word, index) => (this.#known.has(word) || word.length < 4 ? [] : [index]));
			const [index] = odd;
			if (index === undefined || odd.length > 1) continue;
			const word = part[index] as string;
			const fitting = (this.#single.get(word[0] as string) ?? []).filter(
				({ word: one }) =>
					(one.startsWith(word) || editDistance(one, word, 1) <= 1) &&
					this.#phrases.has(part.with(index, one).join(' ')),
			);
			const [only] = fitting;
			const known = only === undefined ? undefined : this.#phrases.get(part.with(index, only.word).join(' '));
			if (known !== undefined && fitting.length === 1) found.push({ ...known, length, corrected: true });
		}
		return found;
	}

	readonly #mendings = new Map<string, string>();

	readonly #mended = (word: string): string => {
		const known = this.#mendings.get(word);
		if (known !== undefined) return known;
		const mended = this.#mend(word);
		// Words people type are few; strangers' words must not fill the memory.
		if (this.#mendings.size < 10_000) this.#mendings.set(word, mended);
		return mended;
	};

	#matchesAs(
		words: readonly string[],
		at: number,
		read: (word: string) => string,
		corrected: boolean,
	): PhraseMatch[] {
		const first = words[at];
		if (first === undefined) return [];
		const found = new Map<number, PhraseMatch>();
		for (const start of variants(read(first))) {
			const longest = this.#longestFrom.get(start) ?? 0;
			// "doe" is no singular of "does": a word without meaning must be written as it is.
			const loosened = start !== read(first);
			for (let length = Math.min(longest, words.length - at); length > 0; length -= 1) {
				const rest = words.slice(at + 1, at + length).map(read);
				const key = [start, ...rest].join(' ');
				const known = this.#phrases.get(key) ?? this.#phrases.get([start, ...rest.map(singular)].join(' '));
				if (known === undefined || found.has(length)) continue;
				if (loosened && known.meanings.every((one) => one.means === 'filler')) continue;
				found.set(length, { ...known, length, corrected });
			}
		}
		return [...found.values()].sort((a, b) => b.length - a.length);
	}

	/** The one known word a slip away, or the word itself where there is none or more than one. */
	#mend(word: string): string {
		if (word.length < 4 || this.#known.has(word) || this.#others.has(word) || /\d/.test(word)) return word;
		const candidates = [
			...(this.#single.get(word[0] as string) ?? []),
			...(this.#single.get(word[1] as string) ?? []),
		];
		const allowed = word.length >= 8 ? 2 : 1;
		let nearest: string[] = [];
		let least = allowed + 1;
		const letters = lettersOf(word);
		for (const { word: candidate, letters: others } of candidates) {
			if (Math.abs(candidate.length - word.length) > allowed || bitsIn(letters ^ others) > 2 * allowed)
				continue;
			const distance = editDistance(word, candidate, allowed);
			if (distance > allowed || distance === 0) continue;
			// Four letters with one changed make too many other words: "wine" is no "wire".
			if (word.length === 4 && candidate.length === 4 && !isTransposition(word, candidate)) continue;
			if (distance < least) {
				least = distance;
				nearest = [candidate];
			} else if (distance === least && !nearest.includes(candidate)) nearest.push(candidate);
		}
		const roots = new Set(nearest.map(singular));
		if (roots.size === 1) return nearest[0] as string;
		// A last letter is left out more often than added: "freez" is "freeze", not "free".
		const longer = nearest.filter((one) => one.startsWith(word));
		return longer.length === 1 ? (longer[0] as string) : word;
	}
}

const otherMonths: readonly (readonly string[])[] = [
	['enero', 'januar', 'jänner'],
	['febrero', 'februar'],
	['marzo', 'märz'],
	['abril'],
	['mayo', 'mai'],
	['junio', 'juni'],
	['julio', 'juli'],
	['agosto'],
	['septiembre'],
	['octubre', 'oktober'],
	['noviembre'],
	['diciembre', 'dezember'],
];

/** The words of a phrase as the lexer would cut them. */
export function phraseWords(phrase: string): string[] {
	return phrase.toLowerCase().match(/\p{L}[\p{L}\p{N}]*(?:'\p{L}+)?|\d+/gu) ?? [];
}

/** Without accents, as a thumb leaves them out: "sección" and "seccion" are one word. */
function folded(word: string): string {
	if (/^[a-z0-9']*$/.test(word)) return word;
	return word.normalize('NFD').replace(/\p{M}/gu, '').replaceAll('ß', 'ss');
}

function singular(word: string): string {
	return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}

function variants(word: string): string[] {
	const one = singular(word);
	return one === word ? [word, `${word}s`] : [word, one];
}

function isTransposition(a: string, b: string): boolean {
	return a.length === b.length && [...a].sort().join('') === [...b].sort().join('');
}

/**
 * Which letters a word has, a bit each. A letter changed takes one away and brings another, so words whose letters
 * differ in more than twice as many are further apart than so many slips.
 */
function lettersOf(word: string): number {
	let letters = 0;
	for (let index = 0; index < word.length; index += 1) letters |= 1 << (word.charCodeAt(index) % 32);
	return letters;
}

function bitsIn(letters: number): number {
	let count = 0;
	for (let rest = letters; rest !== 0; rest &= rest - 1) count += 1;
	return count;
}
