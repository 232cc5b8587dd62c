import type { Fields } from '@lugbook/core';
import { plain } from './message.js';

export interface Marking {
	readonly name: string;
	readonly start: number;
	readonly end: number;
}

/** The markings that stand whole in a message: of two that overlap, the first field's. */
export function wholeMarkings(fields: Fields, message: string): Marking[] {
	const whole: Marking[] = [];
	for (const marking of markingsIn(fields, message)) {
		const free = whole.every(
			({ name, start, end }) => name !== marking.name && (start >= marking.end || end <= marking.start),
		);
		if (free) whole.push(marking);
	}
	return whole.toSorted((a, b) => a.start - b.start);
}

const compiled = new Map<string, RegExp>();

/** The markings of text fields that a message holds, by the patterns their fields declare. */
export function markingsIn(fields: Fields, message: string): Marking[] {
	const text = plain(message);
	const found: Marking[] = [];
	for (const [name, { type }] of Object.entries(fields)) {
		if (type.sort !== 'text' || type.pattern === null) continue;
		const pattern = compiled.get(type.pattern) ?? new RegExp(type.pattern, 'giu');
		compiled.set(type.pattern, pattern);
		for (const match of text.matchAll(pattern)) {
			found.push({ name, start: match.index, end: match.index + match[0].length });
		}
	}
	return found;
}
