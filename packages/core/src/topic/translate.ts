import { german } from '../phrases/de/index.js';
import { spanish } from '../phrases/es/index.js';
import type { Phrasebook } from '../phrases/phrasebook.js';
import type { Context, Language } from './context.js';

/** Composes a sentence for people in the language of whoever asked: say`Drop ${drop} of ${limit}`. */
export type Say = (strings: readonly string[], ...values: readonly (string | number)[]) => string;

/** What a sentence depends on besides its values. */
export type Speaking = Pick<Context, 'language' | 'units'>;

const phrasebooks: ReadonlyMap<Language, Phrasebook> = new Map([
	['es', spanish],
	['de', german],
]);

/** The phrase as it stands in the books: the English sentence with its gaps numbered. */
function phraseKey(strings: readonly string[]): string {
	return strings.reduce((text, part, index) => `${text}{${index - 1}}${part}`);
}

/**
 * A sentence in the language asked for; where the phrasebook lacks it, in English: never silence. A value that is a
 * phrase of the book itself ("fuse", "voltage drop") is said in the language too.
 */
function translate(
	speaking: Speaking,
	strings: readonly string[],
	values: readonly (string | number)[],
	more: Phrasebook = {},
): string {
	const book = phrasebooks.get(speaking.language);
	const key = phraseKey(strings);
	if (book === undefined) return fill(key, (index) => String(values[index]));
	const look = (text: string) => more[text] ?? book[text];
	const filled = fill(look(key) ?? key, (index, quoted) => {
		const value = String(values[index]);
		// What stands in quotes are the words of whoever asked.
		return quoted ? value : (look(value) ?? value);
	});
	return figuresOf(speaking, filled);
}

function fill(pattern: string, valueAt: (index: number, quoted: boolean) => string): string {
	return pattern.replace(/("?)\{(\d+)\}/g, (_, quote: string, index: string) => {
		return `${quote}${valueAt(Number(index), quote !== '')}`;
	});
}

/** The tag that composes sentences for somebody; `more` holds phrases of a package of its own. */
export function sayFor(speaking: Speaking, more?: Phrasebook): Say {
	return (strings, ...values) => translate(speaking, strings, values, more);
}

/** For what is composed apart from any question. */
export const inEnglish: Say = sayFor({ language: 'en', units: 'us' });

/** A fixed text, a label or a name, in the language asked for; anything else comes back as it is. */
export function phrase(speaking: Speaking, text: string): string {
	const known = phrasebooks.get(speaking.language)?.[text];
	return known === undefined ? text : figuresOf(speaking, known);
}

/**
 * Figures as the language writes them: with a decimal comma in German, and in Spanish where units are metric. Spanish
 * speakers who work in feet and gallons write the point. Words in quotes, clauses ("33 CFR 183.455", "310.10(G)") and
 * property classes of bolts keep theirs.
 */
export function figuresOf({ language, units }: Speaking, text: string): string {
	const comma = language === 'de' || (language === 'es' && units === 'metric');
	if (!comma) return text;
	const parts = text.split(/("[^"]*")/);
	return parts.map((part, index) => (index % 2 === 1 ? part : part.replace(decimal, '$1,$2'))).join('');
}

/**
 * A whole number with its thousands apart: by a comma in English alone, where elsewhere 18,900 A would be read as not
 * quite 19 A; there by a narrow space.
 */
export function thousandsOf({ language }: Speaking, value: number): string {
	const grouped = value.toLocaleString('en-US');
	return language === 'en' ? grouped : grouped.replaceAll(',', '\u202F');
}

const decimal =
	/(?<![\p{L}\d.,]|[Kk]lasse |[Cc]lase |class )(?!\d{3}\.\d{3}\b)(\d+)\.(\d+)(?!\d|\.\d|\(|er\b)/gu;
