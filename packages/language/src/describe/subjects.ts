import { type AnyEquipment, equipment } from '@lugbook/core';
import { phraseWords, type Subject, Vocabulary } from '../vocabulary.js';
import { everyday, pointing } from './words.js';

interface EquipmentSubject extends Subject {
	readonly single: boolean;
	readonly attaches: boolean;
}

/** The kinds of equipment as things that words are read against. */
const subjects: ReadonlyMap<string, EquipmentSubject> = new Map(
	equipment.map((one) => [one.kind, subjectFrom(one)]),
);

function subjectFrom(one: AnyEquipment): EquipmentSubject {
	const { kind, fields, single, attaches } = one;
	return { name: kind, words: [...one.words, ...namedWithin(one)], fields, single, attaches };
}

/** "strip fuse" tells the kind of fuse and names the fuse: words of a choice that hold the thing's own name. */
function namedWithin({ words, fields }: AnyEquipment): string[] {
	const own = new Set(words.map((word) => phraseWords(word).join(' ')));
	const said = Object.values(fields).flatMap(({ type }) =>
		type.sort === 'choice' ? Object.values(type.options).flat() : type.sort === 'flag' ? type.yes : [],
	);
	return said.filter((phrase) => {
		const parts = phraseWords(phrase);
		return parts.length > 1 && parts.some((part) => own.has(part)) && !pointing.has(parts[0] as string);
	});
}

let vocabulary: Vocabulary | null = null;

/** The words of all equipment; built when the first description is read. */
export function equipmentVocabulary(): Vocabulary {
	vocabulary ??= new Vocabulary([...subjects.values()], everyday);
	return vocabulary;
}

export function subjectOf(kind: string): EquipmentSubject {
	const subject = subjects.get(kind);
	if (subject === undefined) throw new Error(`no equipment of kind "${kind}"`);
	return subject;
}
