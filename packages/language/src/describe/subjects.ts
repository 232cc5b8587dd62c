import { equipment } from '@lugbook/core';
import { type Subject, Vocabulary } from '../vocabulary.js';
import { narrative } from './words.js';

/** The kinds of equipment as things that words are read against. */
export const subjects: ReadonlyMap<
	string,
	Subject & { readonly single: boolean; readonly attaches: boolean }
> = new Map(
	equipment.map(({ kind, words, fields, single, attaches }) => [
		kind,
		{ name: kind, words, fields, single, attaches },
	]),
);

let vocabulary: Vocabulary | null = null;

/** The words of all equipment; built when the first description is read. */
export function equipmentVocabulary(): Vocabulary {
	vocabulary ??= new Vocabulary([...subjects.values()], narrative);
	return vocabulary;
}

export function subjectOf(kind: string) {
	const subject = subjects.get(kind);
	if (subject === undefined) throw new Error(`no equipment of kind "${kind}"`);
	return subject;
}
