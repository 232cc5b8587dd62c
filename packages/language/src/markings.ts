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

/** The patterns of a subject's fields, made once. */
const compiled = new WeakMap<Fields, readonly { readonly name: string; readonly pattern: RegExp }[]>();

function patternsOf(fields: Fields): readonly { readonly name: string; readonly pattern: RegExp }[] {
	const known = compiled.get(fields);
	if (known !== undefined) return known;
	const made = Object.entries(fields).flatMap(([name, { type }]) =>
		type.sort === 'text' && type.pattern !== null ? { name, pattern: new RegExp(type.pattern, 'giu') } : [],
	);
	compiled.set(fields, made);
	return made;
}

/** What was found last: a reading asks twice of each subject, one message at a time. */
const lastFound = new WeakMap<Fields, { readonly message: string; readonly found: readonly Marking[] }>();

/** The markings of text fields that a message holds, by the patterns their fields declare. */
export function markingsIn(fields: Fields, message: string): readonly Marking[] {
	const patterns = patternsOf(fields);
	// Every marking holds a figure.
	if (patterns.length === 0 || !/[\d½¼¾]|half|three/i.test(message)) return [];
	const last = lastFound.get(fields);
	if (last?.message === message) return last.found;
	const text = plain(message);
	const found: Marking[] = [];
	for (const { name, pattern } of patterns) {
		for (const match of text.matchAll(pattern)) {
			found.push({ name, start: match.index, end: match.index + match[0].length });
		}
	}
	lastFound.set(fields, { message, found });
	return found;
}
