import { settled } from '@lugbook/core';
import { contextOf } from '../message-context.js';
import { subjectOf } from './subjects.js';
import { kindsNamed, Text, textOf } from './text.js';

/** Kinds of equipment a message speaks of, and the names of appliances among them. */
export function equipmentNamed(message: string): string[] {
	const text = new Text(message);
	const context = contextOf(text.elements(null), message, { region: 'us', units: 'us', language: 'en' });
	const named = text.elements(null).flatMap((element) =>
		kindsNamed(element).flatMap((kind) => {
			if (subjectOf(kind).attaches) return [];
			if (kind !== 'appliance') return [kind];
			const { name } = settled(kind, { name: textOf(element) }, context).values;
			return typeof name === 'string' ? [name.replace(/\s+/g, '-')] : [kind];
		}),
	);
	return [...new Set(named)];
}
