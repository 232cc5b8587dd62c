import type { Language } from '../topic/context.js';
import { german } from './de/index.js';
import { spanish } from './es/index.js';

const wordPattern = /\p{L}{2,}/gu;

function wordsIn(texts: readonly string[]): Set<string> {
	return new Set(texts.flatMap((text) => text.toLowerCase().match(wordPattern) ?? []));
}

let known: Readonly<Record<Language, ReadonlySet<string>>> | null = null;

/**
 * The words that mark one language of the phrasebooks: those that its sentences use and the others' do not. The trade's
 * own words are among them, so a message of two words can be told ("Sicherung 16 mm²").
 */
export function wordsOf(language: Language): ReadonlySet<string> {
	if (known === null) {
		const en = wordsIn(Object.keys(spanish));
		const es = wordsIn(Object.values(spanish));
		const de = wordsIn(Object.values(german));
		const alone = (own: ReadonlySet<string>, ...others: readonly ReadonlySet<string>[]) =>
			new Set([...own].filter((word) => others.every((other) => !other.has(word))));
		known = { en: alone(en, es, de), es: alone(es, en, de), de: alone(de, en, es) };
	}
	return known[language];
}
