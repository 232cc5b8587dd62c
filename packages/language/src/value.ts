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
		const ends = element.range && field.meta.worseEnd === 'low' ? element.low : element.readings;
		const reading = ends.find((one) => one.kind === type.kind);
		return reading === undefined ? null : { value: reading.value, note: null };
	}
	if (element.type !== 'number') return null;
	if (type.sort === 'count' || type.sort === 'number') return { value: element.value, note: null };
	if (type.sort === 'quantity') {
		const unit = bareUnit(field, element.value, context);
		return unit === null
			? null
			: {
					value: toBase(type.kind, element.value, unit),
					note: `${element.value} is taken as ${element.value} ${unit} (${field.meta.label}).`,
				};
	}
	return null;
}

/**
 * The other end of a range, where either may be the unfavourable one and the difference matters too much to choose:
 * a battery is hurt by heat and by cold. Null where one end is to be taken.
 */
export function otherEnd(element: Element, { type, meta }: Field): number | null {
	if (element.type !== 'quantity' || !element.range || type.sort !== 'quantity') return null;
	if (meta.worseEnd !== null || !/^(?:temperature|charge)$/.test(type.kind)) return null;
	return element.low.find(({ kind }) => kind === type.kind)?.value ?? null;
}

/** Units of a bare length that is out of the field's range in the usual one, by habit. */
const otherLengths = { us: ['in', 'ft', 'mm', 'cm'], metric: ['cm', 'mm', 'in'] } as const;

/** The unit of a bare number: the usual one, or the one in which a length can be meant ("144 wheelbase": inches). */
function bareUnit(field: Field, figure: number, context: Context): string | null {
	const usual = habitUnit(field, context);
	const { type } = field;
	if (usual === null || type.sort !== 'quantity' || type.kind !== 'length') return usual;
	const isIn = (unit: string) => {
		const value = toBase(type.kind, figure, unit);
		return value >= type.min && value <= type.max;
	};
	return [usual, ...otherLengths[context.units]].find(isIn) ?? usual;
}

/** The unit in which somebody of this habit means a bare number. */
function habitUnit(field: Field, context: Context): string | null {
	if (field.type.sort !== 'quantity') return null;
	if (field.type.unit !== null) return field.type.unit;
	const shown = kindOf(field.type.kind).shown[context.units];
	return shown[0] === undefined ? null : shownIn(field.type.kind, 1e9, context.units).symbol;
}
