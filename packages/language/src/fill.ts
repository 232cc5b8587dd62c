import { type Context, type Field, type FieldValue, findPlaces } from '@lugbook/core';
import { type Element, isFiller, meaningsFor } from './elements.js';
import { readItems } from './items.js';
import type { QuantityToken } from './lex.js';
import { markingsIn } from './markings.js';
import { fits, pairWords } from './pair.js';
import { readingFor } from './value.js';
import type { Subject } from './vocabulary.js';

/** One input as read, with the very words it was read from. */
export interface Given {
	readonly name: string;
	readonly value: FieldValue;
	readonly said: string;
}

/** Two values for one input: which is meant? */
export interface Conflict {
	readonly name: string;
	readonly values: readonly { readonly value: FieldValue; readonly said: string }[];
}

export interface Filled {
	readonly given: readonly Given[];
	readonly conflicts: readonly Conflict[];
	/** sentences that say how something was taken */
	readonly notes: readonly string[];
	/** elements that found a use */
	readonly claimed: ReadonlySet<Element>;
}

/** Puts what stands in the message into the fields of one subject. */
export function fill(
	elements: readonly Element[],
	topic: Subject,
	message: string,
	context: Context,
): Filled {
	return new Filler(elements, topic, message, context).run();
}

class Filler {
	readonly #elements: readonly Element[];
	readonly #topic: Subject;
	readonly #message: string;
	readonly #context: Context;
	readonly #values = new Map<string, { value: FieldValue; said: string }[]>();
	readonly #claimed = new Set<Element>();
	readonly #notes: string[] = [];

	constructor(elements: readonly Element[], topic: Subject, message: string, context: Context) {
		this.#elements = elements;
		this.#topic = topic;
		this.#message = message;
		this.#context = context;
	}

	run(): Filled {
		this.#markings();
		this.#place();
		this.#words();
		this.#aliased();
		this.#items();
		this.#unaliased();
		this.#lengthsAsSaid();
		const given: Given[] = [];
		const conflicts: Conflict[] = [];
		for (const [name, values] of this.#values) {
			const [first] = values;
			if (first === undefined) continue;
			if (values.some((one) => one.value !== first.value)) conflicts.push({ name, values });
			else given.push({ name, value: first.value, said: first.said });
		}
		return { given, conflicts, notes: this.#notes, claimed: this.#claimed };
	}

	#said(from: Element, to: Element = from): string {
		return this.#message.slice(Math.min(from.start, to.start), Math.max(from.end, to.end));
	}

	#set(name: string, value: FieldValue, said: string): void {
		const values = this.#values.get(name) ?? [];
		if (values.length === 0) this.#values.set(name, values);
		values.push({ value, said });
	}

	/** Markings such as "LT225/75R16" or "40x40x2": one word to the trade, however the lexer cut it. */
	#markings(): void {
		for (const { name, start, end } of markingsIn(this.#topic.fields, this.#message)) {
			if (this.#values.has(name)) continue;
			const covered = this.#elements.filter((element) => element.start < end && element.end > start);
			if (covered.some((element) => this.#claimed.has(element))) continue;
			this.#set(name, this.#message.slice(start, end), this.#message.slice(start, end));
			for (const element of covered) this.#claimed.add(element);
		}
	}

	/** The place named, if the topic asks for one; its words mean nothing else then. */
	#place(): void {
		const name = this.#fieldOfSort('place');
		if (name === null) return;
		for (const match of findPlaces(this.#message)) {
			const covered = this.#elements.filter(
				(element) => element.start < match.end && element.end > match.start,
			);
			// A doubtful name ("Page") counts only where its words mean nothing to the topic.
			const free = covered.every((element) => element.type === 'unknown' || isFiller(element));
			if (!match.sure && !free) continue;
			this.#set(name, match.place, match.said);
			for (const element of covered) this.#claimed.add(element);
			return;
		}
		this.#unknownPlace(name);
	}

	/** "in Zorgville": no place we know, but plainly meant as one; the topic asks which is meant. */
	#unknownPlace(name: string): void {
		for (const [index, element] of this.#elements.entries()) {
			if (element.type !== 'phrase' || !/^(?:in|near|at|around|en|bei)$/.test(element.phrase)) continue;
			const words: Element[] = [];
			for (const next of this.#elements.slice(index + 1)) {
				if (next.type !== 'unknown') break;
				words.push(next);
			}
			const [first] = words;
			const last = words.at(-1);
			if (first === undefined || last === undefined) continue;
			this.#set(name, this.#said(first, last), this.#said(first, last));
			for (const word of words) this.#claimed.add(word);
			return;
		}
	}

	/** Choices, yes-or-no words, names, months: the words that are values themselves. */
	#words(): void {
		for (const [index, element] of this.#elements.entries()) {
			if (element.type !== 'phrase' || this.#claimed.has(element)) continue;
			for (const meaning of meaningsFor(element, this.#topic.name)) {
				this.#claimed.add(element);
				if (meaning.means === 'choice' && !this.#values.has(meaning.field))
					this.#set(meaning.field, meaning.value, this.#said(element));
				if (meaning.means === 'flag' && !this.#values.has(meaning.field))
					this.#set(meaning.field, meaning.value, this.#said(element));
				if (meaning.means === 'text' && !this.#values.has(meaning.field))
					this.#set(meaning.field, element.phrase, this.#said(element));
			}
			const month = element.meanings.find((meaning) => meaning.means === 'month');
			const field = this.#fieldOfSort('month');
			if (month !== undefined && field !== null && this.#isMonth(index, element.phrase)) {
				this.#set(field, month.month, this.#said(element));
				this.#claimed.add(element);
			}
			if (element.meanings.some((meaning) => meaning.means === 'said')) this.#claimed.add(element);
		}
	}

	/** "may" and "mar" are months only where they stand as one. */
	#isMonth(index: number, phrase: string): boolean {
		if (phrase !== 'may') return true;
		const before = this.#elements[index - 1];
		// ", may" and "400W may" stand as a month; "it may run" does not.
		if (before === undefined || before.type === 'mark' || before.type === 'quantity') return true;
		return (
			before.type === 'phrase' && /^(?:in|of|for|during|early|late|mid|through|until)$/.test(before.phrase)
		);
	}

	#fieldOfSort(sort: Field['type']['sort']): string | null {
		return Object.entries(this.#topic.fields).find(([, field]) => field.type.sort === sort)?.[0] ?? null;
	}

	/** Values that a word beside them names: "fresh 30 gal", "30 gal fresh", "2 people", "drop 3". */
	#aliased(): void {
		const pairs = pairWords(this.#elements, this.#topic, this.#context, (element) =>
			this.#claimed.has(element),
		);
		for (const { value, name, reading, note } of pairs) {
			this.#claimed.add(value);
			this.#set(name, reading, this.#said(value));
			if (note !== null) this.#notes.push(note);
			if (value.type === 'quantity') this.#placeCount(value.count, this.#said(value));
		}
	}

	#items(): void {
		for (const [name, field] of Object.entries(this.#topic.fields)) {
			if (field.type.sort !== 'list') continue;
			const read = readItems(
				this.#elements,
				this.#topic,
				name,
				field.type.item,
				this.#claimed,
				this.#message,
				this.#context,
			);
			for (const element of read.claimed) this.#claimed.add(element);
			if (read.items.length > 0) this.#set(name, read.items, read.said);
		}
	}

	/** What no word names goes to the first free field of its kind; one more of a kind is a conflict. */
	#unaliased(): void {
		for (const element of this.#elements) {
			if (this.#claimed.has(element)) continue;
			if (element.type === 'quantity') this.#placeQuantity(element);
			if (element.type === 'conductor') {
				const name = this.#firstFree((field) => field.type.sort === 'conductor');
				if (name !== null) {
					this.#set(name, element.name, this.#said(element));
					this.#claimed.add(element);
					this.#placeCount(element.count, this.#said(element));
				}
			}
		}
	}

	#placeQuantity(element: QuantityToken): void {
		const takes = (field: Field) => {
			const reading = field.type.sort === 'quantity' ? readingFor(element, field, this.#context) : null;
			return reading === null ? null : fits(field, reading.value);
		};
		// "13,500 Btu" is the cooling, not the draw, where a field is always in that unit.
		const hasUnit = (field: Field) =>
			field.type.sort === 'quantity' && element.readings.some(({ symbol }) => symbol === usualUnit(field));
		const name =
			this.#firstFree((field) => hasUnit(field) && takes(field) === true) ??
			this.#firstFree((field) => takes(field) === true) ??
			this.#firstFree((field) => takes(field) !== null) ??
			this.#lastOf((field) => takes(field) !== null);
		if (name === null) return;
		const reading = readingFor(element, this.#topic.fields[name] as Field, this.#context);
		if (reading === null) return;
		this.#set(name, reading.value, this.#said(element));
		this.#claimed.add(element);
		this.#placeCount(element.count, this.#said(element));
		if (element.range) this.#notes.push(`"${this.#said(element)}" is a range: its larger end is taken.`);
	}

	/** "2 x 200 W": the count goes to the topic's count field that is meant for unmarked counts, the first one. */
	#placeCount(count: number | null, said: string): void {
		if (count === null) return;
		const name = this.#firstFree((field) => field.type.sort === 'count');
		if (name !== null) this.#set(name, count, said);
		else this.#notes.push(`I could not use the "${count} x" of "${said}".`);
	}

	#firstFree(fits: (field: Field) => boolean): string | null {
		return (
			Object.entries(this.#topic.fields).find(
				([name, field]) => fits(field) && !this.#values.has(name),
			)?.[0] ?? null
		);
	}

	#lastOf(fits: (field: Field) => boolean): string | null {
		return Object.entries(this.#topic.fields).find(([, field]) => fits(field))?.[0] ?? null;
	}

	/** Typed lengths are one way unless the text says otherwise; which was taken is said. */
	#lengthsAsSaid(): void {
		const lengths = this.#values.get('lengthM');
		if (lengths === undefined) return;
		const said = (what: string) =>
			this.#elements.some(
				(element) =>
					element.type === 'phrase' &&
					element.meanings.some((meaning) => meaning.means === 'said' && meaning.what === what),
			);
		if (said('round-trip')) {
			this.#values.set(
				'lengthM',
				lengths.map(({ value, said: words }) => ({ value: (value as number) / 2, said: words })),
			);
			this.#notes.push('The length was given there and back: half of it is the one-way length.');
		}
	}
}

/** The unit the trade always names a field in, or null. */
function usualUnit({ type }: Field): string | null {
	return type.sort === 'quantity' ? type.unit : null;
}
