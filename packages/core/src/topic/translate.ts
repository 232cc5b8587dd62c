import type { Language } from './context.js';

/** Sentences by language: the English sentence with numbered gaps, and how it reads there. */
type Phrasebook = Readonly<Record<string, string>>;

const phrasebooks = new Map<Language, Phrasebook>();

/** A sentence in the language asked for; where the phrasebook lacks it, in English: never silence. */
export function translate(
	language: Language,
	strings: readonly string[],
	values: readonly (string | number)[],
): string {
	const key = strings.reduce((text, part, index) => `${text}{${index - 1}}${part}`);
	const pattern = phrasebooks.get(language)?.[key] ?? key;
	return pattern.replace(/\{(\d+)\}/g, (whole, index: string) => {
		const value = values[Number(index)];
		return value === undefined ? whole : String(value);
	});
}
