import type { Context, Field, Fields } from '@lugbook/core';
import { type Element, isBreak, isFiller, meaningsFor } from './elements.js';
import { readingFor } from './value.js';
import type { Subject } from './vocabulary.js';

/** A value and the word beside it that says what it is. */
export interface Pair {
	readonly value: Element;
	readonly name: string;
	readonly reading: number;
	readonly note: string | null;
}

interface Option extends Pair {
	/** place of the value in the message */
	readonly at: number;
	readonly weight: number;
}

/** How far, in meaningful pieces, a word may stand from the value it names. */
const farthest = 3;
/** More naming words than this are not weighed against each other. */
const mostWords = 14;
/** Words that point forward only: "from 25 psi", "to 65 psi", "off at 50 psi". */
const forward =
	/(?:^| )(?:from|to|at|with|of|through|until|till|on|by|per|de|a|con|hasta|desde|von|bis|mit)$/;

/**
 * Which word names which value: "fresh 30 gal gray 20 gal", "30 gal fresh, 20 gal gray", "from 25 psi to 65 psi".
 * A word names the value right before or right after it; words and values keep their order; the choice that names
 * most values wins, and among those the one with the least between them and with values their fields can take.
 */
export function pairWords(
	elements: readonly Element[],
	topic: Subject,
	context: Context,
	taken: (element: Element) => boolean,
	told: ReadonlySet<string> = new Set(),
): Pair[] {
	const words = elements
		.map((word, at) => optionsOf(elements, at, word, topic, context, taken))
		.filter((options) => options.length > 0)
		.slice(0, mostWords);
	return best(words, 0, -1, told).pairs;
}

/** "30 in wide": the size stands before the word. */
const postpositive =
	/^(?:wide|tall|long|high|deep|thick|across|along|breit|hoch|lang|tief|dick|quer|längs|ancho|alto|largo|hondo)$/;
const asking = /^(?:what|whats|what's|which|wat|welche[rsnm]?|qué|que|q|cuál|cual)$/;
/** What such a word begins is another thing: "inverter surge for an 800 W blender". */
const parting = /^(?:for|para|für)$/;

interface Choice {
	readonly weight: number;
	readonly pairs: Pair[];
}

function best(
	words: readonly (readonly Option[])[],
	from: number,
	lastAt: number,
	named: ReadonlySet<string>,
): Choice {
	const options = words[from];
	if (options === undefined) return { weight: 0, pairs: [] };
	let winner = best(words, from + 1, lastAt, named);
	for (const option of options) {
		if (option.at <= lastAt || named.has(option.name)) continue;
		const rest = best(words, from + 1, option.at, new Set([...named, option.name]));
		const weight = option.weight + rest.weight;
		if (weight > winner.weight) winner = { weight, pairs: [option, ...rest.pairs] };
	}
	return winner;
}

function optionsOf(
	elements: readonly Element[],
	at: number,
	word: Element,
	topic: Subject,
	context: Context,
	taken: (element: Element) => boolean,
): Option[] {
	const fields = meaningsFor(word, topic.name).flatMap((meaning) =>
		meaning.means === 'alias' ? [meaning.field] : [],
	);
	if (fields.length === 0 || word.type !== 'phrase') return [];
	// "alternator 180 A, which charger": what is asked for has no value yet, least of all one that stands before.
	const before = elements[at - 1];
	const isAsked = before?.type === 'phrase' && asking.test(before.phrase);
	const sides = isAsked || forward.test(word.phrase) ? [1] : [1, -1];
	return sides.flatMap((side) => {
		const found = valueBeside(elements, at, side);
		if (found === null || taken(found.value)) return [];
		return fields.flatMap((name) => {
			const field = topic.fields[name] as Field;
			const reading = readingFor(found.value, field, context);
			if (reading === null) return [];
			const bare = found.value.type === 'number' && field.type.sort === 'quantity';
			// A bare number belongs only to the word right beside it.
			if (found.value.type === 'number' && found.gap > 0) return [];
			// "3 panels 22.5 voc": no half things are counted.
			if (field.type.sort === 'count' && !Number.isInteger(reading.value)) return [];
			// A bare figure before the name of a thing counts it: "run 8 puck lights".
			if (bare && side === 1 && namesThing(elements[found.at + 1], topic)) return [];
			// "3 m of 15 mm pipe": what one input can't be, another can.
			if (!fits(field, reading.value) && takes(topic.fields, found.value, context)) return [];
			const behind = side === -1 && postpositive.test(word.phrase) ? 1 : 0;
			const weight = 10 - 2 * found.gap + behind - (bare ? 3 : 0) - (fits(field, reading.value) ? 0 : 6);
			return [{ ...found, name, reading: reading.value, note: reading.note, weight }];
		});
	});
}

/** The nearest value on one side, with the meaningful pieces between; null where a clause ends first. */
function valueBeside(
	elements: readonly Element[],
	from: number,
	side: number,
): { readonly value: Element; readonly at: number; readonly gap: number } | null {
	let gap = 0;
	for (let at = from + side; ; at += side) {
		const element = elements[at];
		if (element === undefined || isBreak(element) || gap > farthest) return null;
		if (element.type === 'phrase' && parting.test(element.phrase) && isFiller(element)) return null;
		if (element.type === 'quantity' || element.type === 'number') return { value: element, at, gap };
		if (element.type === 'conductor') return null;
		if (!isFiller(element) && element.type !== 'mark') gap += 1;
	}
}

/** A word that no input knows, or a name that a text field takes. */
function namesThing(element: Element | undefined, topic: Subject): boolean {
	if (element === undefined) return false;
	if (element.type === 'unknown') return !element.elsewhere;
	return meaningsFor(element, topic.name).some(({ means }) => means === 'text');
}

/** Whether one of these inputs, or one of the things of a list among them, can be this value. */
export function takes(fields: Fields, value: Element, context: Context): boolean {
	return Object.values(fields).some((field) => {
		if (field.type.sort === 'list') return takes(field.type.item, value, context);
		const reading = field.type.sort === 'quantity' ? readingFor(value, field, context) : null;
		return reading !== null && fits(field, reading.value);
	});
}

/** Whether a field can take the value: "3 m" is no bore of a valve. */
export function fits(field: Field, value: number): boolean {
	const { type } = field;
	return !('min' in type) || (value >= type.min && value <= type.max);
}
