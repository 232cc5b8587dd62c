import { write, writeNumber } from '../quantity/write.js';
import type { Context } from './context.js';
import type { Field, FieldType, FieldValue } from './field.js';
import { figuresOf, phrase } from './translate.js';

export const monthNames = [
	'January',
	'February',
	'March',
	'April',
	'May',
	'June',
	'July',
	'August',
	'September',
	'October',
	'November',
	'December',
] as const;

/** A quantity in the field's own unit, where the trade marks it so, or in the asker's habit. */
export function writeIn(
	type: Extract<FieldType, { sort: 'quantity' }>,
	value: number,
	context: Context,
): string {
	return write(type.kind, value, context.units, type.unit === null ? {} : { unit: type.unit });
}

/** A field's value as a person reads it. */
export function showValue(field: Field, value: FieldValue, context: Context): string {
	const { type } = field;
	if (typeof value === 'boolean') return phrase(context, value ? 'yes' : 'no');
	if (typeof value === 'string') {
		return type.sort === 'choice' ? phrase(context, type.options[value]?.[0] ?? value) : value;
	}
	if (typeof value === 'number') {
		if (type.sort === 'quantity') return figuresOf(context, writeIn(type, value, context));
		if (type.sort === 'month') return phrase(context, monthNames[value - 1] ?? String(value));
		return figuresOf(context, writeNumber(value, 3));
	}
	if (type.sort !== 'list') return JSON.stringify(value);
	return value
		.map((item) =>
			Object.entries(item)
				.filter(([, part]) => part !== undefined)
				.map(([name, part]) => {
					const inner = type.item[name];
					return inner === undefined ? String(part) : showValue(inner, part as FieldValue, context);
				})
				.join(' '),
		)
		.join('; ');
}
