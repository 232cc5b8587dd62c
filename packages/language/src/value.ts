import { type Context, type Field, kindOf, shownIn, toBase } from '@lugbook/core';
import type { Element } from './elements.js';

/** The value of an element as a field would take it, or null where it can't be one. */
export function readingFor(
	element: Element,
	field: Field,
	context: Context,
): { value: number; note: string | null } | null {
	const { type } = field;
	if (element.type === 'quantity' && type.sort === 'quantity') {
		const reading = element.readings.find((one) => one.kind === type.kind);
		return reading === undefined ? null : { value: reading.value, note: null };
	}
	if (element.type !== 'number') return null;
	if (type.sort === 'count' || type.sort === 'number') return { value: element.value, note: null };
	if (type.sort === 'quantity') {
		const unit = habitUnit(field, context);
		return unit === null
			? null
			: {
					value: toBase(type.kind, element.value, unit),
					note: `${element.value} is taken as ${element.value} ${unit} (${field.meta.label}).`,
				};
	}
	return null;
}

/** The unit in which somebody of this habit means a bare number. */
function habitUnit(field: Field, context: Context): string | null {
	if (field.type.sort !== 'quantity') return null;
	if (field.type.unit !== null) return field.type.unit;
	const shown = kindOf(field.type.kind).shown[context.units];
	return shown[0] === undefined ? null : shownIn(field.type.kind, 1e9, context.units).symbol;
}
