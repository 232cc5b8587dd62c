import { type Language, languages, wordsOf } from '@lugbook/core';

/** Small words and words of asking, which no sentence of the phrasebooks need hold. */
const small: Readonly<Record<Language, ReadonlySet<string>>> = {
	en: set(
		'the is are what which how much many need want for with and from does will can should have my our size long wire cable fuse fridge lights night day what about why please thanks okay',
	),
	es: set(
		'y el la los las un una de del con para por que qué cual cuál cuanto cuánto cuanta cuánta cuantos cuántos cuantas cuántas necesito necesita quiero está tengo tiene hay mi mis si sí hasta desde entre favor gracias hola puedo puede aguanta nevera cable grosor amperios vatios metros litros horas kilos noche día días cabe sirve basta vale mejor pongo poner frigorífico tubería hace falta voltios',
	),
	de: set(
		'der die das den dem des ein eine einen einer einem und oder ich wir ist sind habe hat haben brauche brauchen braucht welche welcher welches welchen wie wieviel viel viele mit ohne für von vom zu zum zur im am auf aus bei bis nach über unter mein meine unser bitte danke hallo kann muss soll reicht lange kabel kühlschrank stunden tage nacht wohnmobil ampere geht passt noch nicht auch dann meter',
	),
};

function set(words: string): ReadonlySet<string> {
	return new Set(words.split(/\s+/));
}

/** English small words that Spanish or German share, or that people type in either. */
const nobody = set(
	'a an in on so no me die was man hat also will den war des son van con camper solar laptop router',
);

/**
 * The language a message is written in, by its words; null where that is not plain, as in "40A 12V 15 ft".
 *
 * @param words in lower case
 */
export function languageOf(words: readonly string[]): Language | null {
	const plain = [...new Set(words)].filter((word) => !nobody.has(word));
	const counts = languages.map((language) => ({
		language,
		count: plain.filter((word) => small[language].has(word) || wordsOf(language).has(word)).length,
		// A short word alone may be a name or a slip.
		sure: plain.some(
			(word) =>
				(word.length >= 4 && small[language].has(word)) || (word.length >= 5 && wordsOf(language).has(word)),
		),
	}));
	const [first, second] = counts.toSorted((a, b) => b.count - a.count);
	if (first === undefined || second === undefined || first.count === second.count) return null;
	return first.count >= 2 || first.sure ? first.language : null;
}

/** The language of a text as typed. Marks that only one language writes count as a word of it. */
export function languageIn(text: string): Language | null {
	const words =
		text
			.toLowerCase()
			.normalize('NFC')
			.match(/\p{L}{2,}/gu) ?? [];
	const marks = [...(/[¿¡ñ]/u.test(text) ? ['qué', 'está'] : []), ...(/ß/u.test(text) ? ['für', 'ist'] : [])];
	return languageOf([...words, ...marks]);
}
