import type { Context, Field, FieldValue } from '@lugbook/core';
import { acceptedBy, languages, monthNames, phrase } from '@lugbook/core';
import { type Element, PhraseTable } from './elements.js';
import { fill } from './fill.js';
import { lex } from './lex.js';
import { plain } from './message.js';
import { readingFor } from './value.js';
import type { Subject, Vocabulary } from './vocabulary.js';

export type TypedValue =
	| { readonly ok: true; readonly value: FieldValue }
	| { readonly ok: false; readonly error: string };

/** Reads what somebody typed into one field of a form: "15 ft", "15", "2/0", "yes", "March". */
export function readTyped(
	vocabulary: Vocabulary,
	topic: Subject,
	name: string,
	typed: string,
	context: Context,
): TypedValue {
	const field = topic.fields[name];
	if (field === undefined) return { ok: false, error: `${topic.name} has no input "${name}".` };
	const text = typed.trim();
	const elements = new PhraseTable(lex(plain(text), text, vocabulary.knows), vocabulary).elements(topic.name);
	const value = single(field, text, elements, context) ?? fromWords(topic, name, elements, text, context);
	if (value !== null) return { ok: true, value };
	return { ok: false, error: `I read "${text.slice(0, 60)}". ${acceptedBy(field, context)}` };
}

function single(
	field: Field,
	text: string,
	elements: readonly Element[],
	context: Context,
): FieldValue | null {
	const { type } = field;
	const lower = text.toLowerCase();
	switch (type.sort) {
		case 'text':
		case 'place':
			return text === '' ? null : text.slice(0, 200);
		case 'month': {
			const byName = monthNames.findIndex(
				(month) => lower.length >= 3 && toldWords(month).some((word) => word.startsWith(lower)),
			);
			const number = Number(lower);
			if (byName >= 0) return byName + 1;
			return Number.isInteger(number) && number >= 1 && number <= 12 ? number : null;
		}
		case 'flag':
			if (/^(?:yes|y|true|on|1|sí|si|ja)$/.test(lower) || type.yes.includes(lower)) return true;
			return /^(?:no|n|false|off|0|nein)$/.test(lower) || type.no.includes(lower) ? false : null;
		case 'choice': {
			const options = Object.entries(type.options);
			const named = options.find(
				([option, words]) => option === lower || words.some((word) => word.toLowerCase() === lower),
			);
			// A form and an answer show the first word of an option, in the language of their channel.
			const shown = named ?? options.find(([option, [word = option]]) => toldWords(word).includes(lower));
			return shown?.[0] ?? null;
		}
		case 'conductor': {
			const size = elements.find((element) => element.type === 'conductor');
			return size?.type === 'conductor' && elements.length === 1 ? size.name : null;
		}
		case 'quantity':
		case 'count':
		case 'number': {
			const [only] = elements;
			if (only === undefined || elements.length > 1) return null;
			return readingFor(only, field, context)?.value ?? null;
		}
		case 'list':
			return null;
	}
}

/** How a word of a declaration is shown in each language, in small letters. */
function toldWords(word: string): string[] {
	return languages.map((language) => phrase({ language, units: 'metric' }, word).toLowerCase());
}

/** A list, or words around a value: read as text would be. */
function fromWords(
	topic: Subject,
	name: string,
	elements: readonly Element[],
	text: string,
	context: Context,
): FieldValue | null {
	const given = fill(elements, topic, text, context).given.find((one) => one.name === name);
	return given?.value ?? null;
}
