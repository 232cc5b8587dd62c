import type { z } from 'zod';
import { writeNumber } from '../quantity/write.js';
import type { Context } from './context.js';
import type { Field } from './field.js';
import type { Refusal } from './sizing.js';
import { phrase, sayFor } from './translate.js';
import { writeIn } from './value.js';

/**
 * What is wrong with a value, in plain words: the field, what was read, what would be accepted. Bounds come from
 * the schema's issues, units from the field's kind; the wording stands in this one file.
 */
export function problemsOf(name: string, field: Field, value: unknown, context: Context): Refusal[] {
	const parsed = field.schema.safeParse(value);
	if (parsed.success) return [];
	const { issues } = parsed.error;
	const places = issues.map((issue) => issue.path.join('.'));
	// A text where a list belongs is also too long for one: one place, one refusal.
	return issues
		.filter((_, index) => places.indexOf(places[index] as string) === index)
		.map((issue) => toRefusal(name, field, value, issue, context));
}

function toRefusal(
	name: string,
	field: Field,
	value: unknown,
	issue: z.core.$ZodIssue,
	context: Context,
): Refusal {
	const owner = innerField(field, issue.path) ?? field;
	const read = readAt(value, issue.path);
	const label = phrase(context, owner.meta.label);
	const say = sayFor(context);
	const shown = show(owner, read, context);
	const accepted = acceptedBy(owner, context);
	const text =
		read === undefined
			? say`The ${label} is missing.`
			: issue.code === 'too_small' || issue.code === 'too_big'
				? say`I read ${shown} as the ${label}; that can't be.`
				: say`I can't use ${shown} as the ${label}.`;
	return { code: 'out-of-range', text, instead: accepted, field: name };
}

function innerField(field: Field, path: readonly PropertyKey[]): Field | undefined {
	const last = path.at(-1);
	return field.type.sort === 'list' && typeof last === 'string' ? field.type.item[last] : undefined;
}

function readAt(value: unknown, path: readonly PropertyKey[]): unknown {
	return path.reduce<unknown>(
		(inside, key) =>
			typeof inside === 'object' && inside !== null
				? (inside as Record<PropertyKey, unknown>)[key]
				: undefined,
		value,
	);
}

function show(field: Field, value: unknown, context: Context): string {
	if (typeof value === 'number' && field.type.sort === 'quantity') return writeIn(field.type, value, context);
	if (typeof value === 'number') return writeNumber(value, 3);
	if (typeof value === 'string') return `"${value.slice(0, 60)}"`;
	return Array.isArray(value) ? sayFor(context)`a list of ${value.length}` : String(value);
}

/** What a field takes, in a sentence. */
export function acceptedBy(field: Field, context: Context): string {
	const { type } = field;
	const label = phrase(context, field.meta.label);
	const say = sayFor(context);
	switch (type.sort) {
		case 'quantity':
			return say`The ${label} must be from ${writeIn(type, type.min, context)} to ${writeIn(type, type.max, context)}.`;
		case 'count':
		case 'number':
			return type.sort === 'count'
				? say`The ${label} must be a whole number from ${writeNumber(type.min, 3)} to ${writeNumber(type.max, 3)}.`
				: say`The ${label} must be from ${writeNumber(type.min, 3)} to ${writeNumber(type.max, 3)}.`;
		case 'choice':
			return say`The ${label} is one of: ${Object.values(type.options)
				.map((words) => phrase(context, words[0] ?? ''))
				.join(', ')}.`;
		case 'flag':
			return say`The ${label} is yes or no.`;
		case 'conductor':
			return say`The ${label} is a size such as 4 AWG, 2/0 AWG or 35 mm².`;
		case 'text':
			return say`The ${label} is a name of up to 200 characters.`;
		case 'place':
			return say`The ${label} is the name of a place, such as "Flagstaff".`;
		case 'month':
			return say`The ${label} is a month, such as "March".`;
		case 'list':
			return say`The ${label} holds 1 to ${type.max} items.`;
	}
}
