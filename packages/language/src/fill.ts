import { type Context, type Field, type FieldValue, findPlaces } from '@lugbook/core';
import { drawOfCooling, isAirConditioner } from './cooling.js';
import { type Element, isBreak, isFiller, meaningsFor } from './elements.js';
import { readItems } from './items.js';
import type { QuantityToken } from './lex.js';
import { wholeMarkings } from './markings.js';
import { fits, pairWords } from './pair.js';
import { otherEnd, readingFor } from './value.js';
import type { Subject } from './vocabulary.js';
import { fillers } from './words/common.js';

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
	/** the question that settles it, where naming the two values would not do */
	readonly question?: string;
}

export interface Filled {
	readonly given: readonly Given[];
	readonly conflicts: readonly Conflict[];
	/** sentences that say how something was taken */
	readonly notes: readonly string[];
	/** values whose "2 x" has no place in the question */
	readonly uncounted: readonly string[];
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
	/** the field each value went to */
	readonly #wentTo = new Map<Element, string>();
	/** inputs that a marking told, which no word beside another value names again */
	readonly #fromMarkings = new Set<string>();
	readonly #notes: string[] = [];
	readonly #uncounted: string[] = [];
	readonly #doubts: Conflict[] = [];

	constructor(elements: readonly Element[], topic: Subject, message: string, context: Context) {
		this.#elements = elements;
		this.#topic = topic;
		this.#message = message;
		this.#context = context;
	}

	run(): Filled {
		this.#replaced();
		this.#markings();
		this.#place();
		this.#words();
		this.#ranges();
		this.#marked();
		this.#each();
		this.#together();
		this.#ofBatteries();
		this.#aliased();
		this.#items();
		this.#unaliased();
		this.#alternating();
		this.#cooling();
		this.#lengthsAsSaid();
		const given: Given[] = [];
		const conflicts: Conflict[] = [];
		for (const [name, values] of this.#values) {
			const [first] = values;
			if (first === undefined) continue;
			if (values.some((one) => one.value !== first.value)) conflicts.push({ name, values });
			else given.push({ name, value: first.value, said: first.said });
		}
		return {
			given,
			conflicts: [...this.#doubts, ...conflicts],
			notes: this.#notes,
			uncounted: this.#uncounted,
			claimed: this.#claimed,
		};
	}

	#said(from: Element, to: Element = from): string {
		return this.#message.slice(Math.min(from.start, to.start), Math.max(from.end, to.end));
	}

	#set(name: string, value: FieldValue, said: string): void {
		const values = this.#values.get(name) ?? [];
		if (values.length === 0) this.#values.set(name, values);
		values.push({ value, said });
	}

	/** "24 V instead of 12": the value behind is the one it was, and no second one. */
	#replaced(): void {
		for (const [index, element] of this.#elements.entries()) {
			if (element.type !== 'quantity' && element.type !== 'number') continue;
			const before = this.#elements
				.slice(Math.max(0, index - 2), index)
				.map((one) => (one.type === 'phrase' ? one.phrase : one.type === 'unknown' ? one.word : ''))
				.join(' ');
			if (!insteadOf.test(before)) continue;
			const isSame = (other: Element) =>
				other !== element &&
				(element.type === 'number'
					? other.type === 'quantity' || other.type === 'conductor'
					: other.type === 'quantity' &&
						other.readings.some(({ kind }) => element.readings.some((one) => one.kind === kind)));
			if (!this.#elements.some(isSame)) continue;
			this.#claimed.add(element);
			this.#notes.push(`"${this.#said(element)}" is taken as what it was before.`);
		}
	}

	/** Markings such as "LT225/75R16" or "40x40x2": one word to the trade, however the lexer cut it. */
	#markings(): void {
		for (const { name, start, end } of wholeMarkings(this.#topic.fields, this.#message)) {
			if (this.#values.has(name)) continue;
			const covered = this.#elements.filter((element) => element.start < end && element.end > start);
			if (covered.some((element) => this.#claimed.has(element))) continue;
			this.#set(name, this.#message.slice(start, end), this.#message.slice(start, end));
			for (const element of covered) this.#claimed.add(element);
			// "four 265/70R17": how many of what bears the marking.
			const before = this.#elements[this.#elements.indexOf(covered[0] as Element) - 1];
			if (
				before?.type === 'number' &&
				Number.isInteger(before.value) &&
				before.value > 1 &&
				before.value <= 20
			) {
				this.#placeCount(before.value, this.#said(before));
				this.#claimed.add(before);
			}
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
			// "80 l a -8": a name can't begin within a value.
			if (covered.some((element) => element.start < match.start || element.end > match.end)) continue;
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
			const meanings = meaningsFor(element, this.#topic.name);
			for (const meaning of meanings) {
				// A second name ("wire for the fridge and the pump") is said back, not swallowed.
				if (meaning.means === 'text' && meanings.length === 1 && this.#values.has(meaning.field)) continue;
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
		// "Flagstaff may": behind the place.
		if (before.type === 'unknown' && this.#claimed.has(before)) return true;
		return (
			before.type === 'phrase' && /^(?:in|of|for|during|early|late|mid|through|until)$/.test(before.phrase)
		);
	}

	#fieldOfSort(sort: Field['type']['sort']): string | null {
		return Object.entries(this.#topic.fields).find(([, field]) => field.type.sort === sort)?.[0] ?? null;
	}

	/** "20 to 80 %", "pump 30-50 psi": both ends of a range, where the topic asks for both. */
	#ranges(): void {
		for (const element of this.#elements) {
			if (element.type !== 'quantity' || !element.range || this.#claimed.has(element)) continue;
			for (const { kind, value } of element.readings) {
				const low = element.low.find((one) => one.kind === kind);
				const ends = endsOf(this.#topic, kind);
				if (low === undefined || ends === null || ends.some((name) => this.#values.has(name))) continue;
				this.#set(ends[0], low.value, this.#said(element));
				this.#set(ends[1], value, this.#said(element));
				this.#claimed.add(element);
				break;
			}
		}
	}

	/** Values that a word beside them names: "fresh 30 gal", "30 gal fresh", "2 people", "drop 3". */
	#aliased(): void {
		const pairs = pairWords(
			this.#elements,
			this.#topic,
			this.#context,
			(element) => this.#claimed.has(element),
			this.#fromMarkings,
		);
		for (const { value, name, reading, note } of pairs) {
			this.#claimed.add(value);
			this.#wentTo.set(value, name);
			this.#setEnd(name, reading, value);
			if (note !== null) this.#notes.push(note);
			if (value.type === 'quantity') this.#placeCount(value.count, this.#said(value), name);
		}
		this.#counted();
	}

	/** "3 panels of 150 W": the word names the figure behind it and counts by the one before it. */
	#counted(): void {
		for (const [index, element] of this.#elements.entries()) {
			const before = this.#elements[index - 1];
			if (before?.type !== 'number' || this.#claimed.has(before) || !Number.isInteger(before.value)) continue;
			for (const meaning of meaningsFor(element, this.#topic.name)) {
				if (meaning.means !== 'alias' || this.#values.has(meaning.field)) continue;
				const field = this.#topic.fields[meaning.field];
				if (field?.type.sort !== 'count' || !fits(field, before.value)) continue;
				this.#set(meaning.field, before.value, this.#said(before));
				this.#claimed.add(before);
				break;
			}
		}
	}

	/**
	 * "AC" is alternating current or an air conditioner, and of either voltage at that: the voltage tells how it is fed;
	 * without one it is asked.
	 */
	#alternating(): void {
		const supply = this.#values.get('supply');
		const word = this.#elements.find(
			(element) => element.type === 'phrase' && element.phrase.toLowerCase() === 'ac',
		);
		if (word === undefined || supply?.length !== 1 || supply[0]?.said !== this.#said(word)) return;
		if (this.#topic.fields.voltageV === undefined || this.#topic.fields.load === undefined) return;
		const [voltage] = this.#values.get('voltageV') ?? [];
		const isMains = voltage !== undefined && (voltage.value as number) >= 100;
		if (isMains) return;
		this.#values.delete('supply');
		if (!this.#values.has('load')) this.#set('load', 'air conditioner', this.#said(word));
		if (voltage !== undefined) return;
		const mains = this.#context.region === 'us' ? '120 V' : '230 V';
		this.#doubts.push({
			name: 'voltageV',
			values: [mains, '12 V'].map((said) => ({ value: Number.parseInt(said, 10), said })),
			question: `Is "${this.#said(word)}" fed from the mains (${mains}), or is it a 12 V air conditioner?`,
		});
	}

	/** "75/15" of a controller: its volts and its amperes, whatever else is free for such values. */
	#marked(): void {
		for (const element of this.#elements) {
			if (element.type !== 'quantity' || element.of !== 'controller') continue;
			for (const { kind, value } of element.readings) {
				const name = `${element.of}${kind === 'voltage' ? 'V' : 'A'}`;
				const type = this.#topic.fields[name]?.type;
				if (type?.sort !== 'quantity' || type.kind !== kind || this.#values.has(name)) continue;
				this.#set(name, value, this.#said(element));
				this.#fromMarkings.add(name);
				this.#claimed.add(element);
				this.#wentTo.set(element, name);
			}
		}
	}

	/** The one current or power of what a run feeds, where the topic has no list of loads. */
	#loadField(element: Element): 'currentA' | 'powerW' | null {
		const { fields } = this.#topic;
		if (fields.load?.type.sort !== 'text' || element.type !== 'quantity' || this.#claimed.has(element))
			return null;
		const names = ['currentA', 'powerW'] as const;
		return names.find((name) => readingOf(element, fields[name]) !== null) ?? null;
	}

	#namesLoad(element: Element | undefined): boolean {
		return (
			element !== undefined &&
			meaningsFor(element, this.#topic.name).some(
				(meaning) => meaning.means === 'text' && meaning.field === 'load',
			)
		);
	}

	/** "8 puck lights 3 W each": what all of them draw together. */
	#each(): void {
		for (const [index, word] of this.#elements.entries()) {
			if (word.type !== 'phrase' || !eachOf.test(word.phrase)) continue;
			const value = this.#elements[index - 1];
			const name = value === undefined ? null : this.#loadField(value);
			if (value?.type !== 'quantity' || name === null || value.count !== null) continue;
			const before = this.#elements.slice(Math.max(0, index - 5), index - 1);
			const many = before.findLast((one) => one.type === 'number' && !this.#claimed.has(one));
			if (many?.type !== 'number' || !Number.isInteger(many.value) || many.value < 2 || many.value > 200)
				continue;
			this.#setTogether(name, [{ element: value, times: many.value }], many, word);
			this.#claimed.add(many);
			this.#claimed.add(word);
		}
	}

	/**
	 * "Fan 3 A, fridge 5 A, pump 7 A on one fuse": what hangs on one conductor draws the sum. A fuse is for all that is
	 * named with it; a wire only where it is said to feed them together.
	 */
	#together(): void {
		const loads: { readonly element: QuantityToken; readonly times: number }[] = [];
		const kinds = new Set<string>();
		let name: Element | null = null;
		let waiting: QuantityToken | null = null;
		let first: Element | null = null;
		for (const element of this.#elements) {
			const kind = this.#loadField(element);
			if (element.type === 'quantity' && kind !== null) {
				waiting = name === null ? element : null;
				if (name === null) continue;
				first ??= name;
				kinds.add(kind);
				loads.push({ element, times: element.count ?? 1 });
				name = null;
			} else if (this.#namesLoad(element)) {
				if (waiting !== null) {
					first ??= waiting;
					const own = this.#loadField(waiting);
					if (own !== null) kinds.add(own);
					loads.push({ element: waiting, times: waiting.count ?? 1 });
					waiting = null;
				} else name = element;
			} else if (isBreak(element) || (element.type !== 'phrase' && element.type !== 'unknown')) {
				name = null;
				waiting = null;
			}
		}
		const [kind] = kinds;
		const last = loads.at(-1)?.element;
		if (loads.length < 2 || kinds.size !== 1 || first === null || last === undefined) return;
		if (this.#topic.name !== 'fuse' && !onOne.test(this.#message.toLowerCase())) return;
		this.#setTogether(kind as 'currentA' | 'powerW', loads, first, last);
	}

	#setTogether(
		name: 'currentA' | 'powerW',
		loads: readonly { readonly element: QuantityToken; readonly times: number }[],
		from: Element,
		to: Element,
	): void {
		const field = this.#topic.fields[name] as Field;
		let sum = 0;
		for (const { element, times } of loads) {
			sum += times * (readingOf(element, field) ?? 0);
			this.#claimed.add(element);
			this.#wentTo.set(element, name);
		}
		const said = this.#said(from, to);
		const rounded = Math.round(sum * 1000) / 1000;
		this.#set(name, rounded, said);
		const total = `${rounded} ${name === 'currentA' ? 'A' : 'W'}`;
		this.#notes.push(`"${said}" is taken as ${total}.`);
	}

	/** "2 batteries of 100", "2 baterías de 100": the trade names them by their ampere-hours. */
	#ofBatteries(): void {
		const field = this.#topic.fields.unitAh;
		if (field === undefined) return;
		for (const [index, element] of this.#elements.entries()) {
			if (element.type !== 'number' || element.value < leastNamedAh || this.#claimed.has(element)) continue;
			const [things, of] = this.#elements.slice(Math.max(0, index - 2), index);
			const counts =
				things !== undefined &&
				of?.type === 'phrase' &&
				/^(?:of|de|von|zu|mit|à)$/.test(of.phrase) &&
				meaningsFor(things, this.#topic.name).some(
					(meaning) => meaning.means === 'alias' && meaning.field === 'unitCount',
				);
			const reading = counts ? readingFor(element, field, this.#context) : null;
			if (reading === null || this.#values.has('unitAh')) continue;
			this.#set('unitAh', reading.value, this.#said(element));
			this.#claimed.add(element);
			if (reading.note !== null) this.#notes.push(reading.note);
		}
	}

	/** "13,500 Btu ac": the heat that an air conditioner moves is not what it draws; a burner's is nothing the wire carries. */
	#cooling(): void {
		const field = this.#topic.fields.powerW;
		const powers = this.#values.get('powerW');
		if (field === undefined || this.#topic.fields.load === undefined || powers === undefined) return;
		const written = this.#elements.find(
			(element) =>
				element.type === 'quantity' &&
				element.readings.some(({ kind, symbol }) => kind === 'power' && symbol === 'Btu/h') &&
				powers.some(({ said }) => said === this.#said(element)),
		);
		if (written === undefined) return;
		const said = this.#said(written);
		const load = this.#values.get('load')?.[0]?.value;
		if (typeof load === 'string' && isAirConditioner(load)) {
			const drawn = drawOfCooling(powers[0]?.value as number, said);
			this.#values.set('powerW', [{ value: drawn.powerW, said }]);
			this.#notes.push(drawn.note);
			return;
		}
		this.#values.delete('powerW');
		this.#claimed.delete(written);
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
			this.#notes.push(...read.notes);
			if (read.items.length > 0) this.#set(name, read.items, read.said);
		}
	}

	/** What no word names goes to the first free field of its kind; one more of a kind is a conflict. */
	#unaliased(): void {
		for (const element of this.#elements) {
			if (this.#claimed.has(element)) continue;
			if (element.type === 'number' && element.value < 0) this.#placeBelowZero(element);
			if (element.type === 'quantity') this.#placeQuantity(element);
			if (element.type === 'conductor') {
				const name = this.#firstFree((field) => field.type.sort === 'conductor');
				if (name !== null) {
					this.#set(name, element.name, this.#said(element));
					this.#claimed.add(element);
					this.#placeParallel(element.count, this.#said(element));
				}
			}
		}
	}

	/** "at -8", "bei minus 12": below zero is only a temperature. */
	#placeBelowZero(element: Extract<Element, { type: 'number' }>): void {
		const name = this.#firstFree(({ type }) => type.sort === 'quantity' && type.kind === 'temperature');
		const reading =
			name === null ? null : readingFor(element, this.#topic.fields[name] as Field, this.#context);
		if (name === null || reading === null) return;
		this.#set(name, reading.value, this.#said(element));
		this.#claimed.add(element);
		if (reading.note !== null) this.#notes.push(reading.note);
	}

	#placeQuantity(element: QuantityToken): void {
		const takes = (field: Field) => {
			const reading = field.type.sort === 'quantity' ? readingFor(element, field, this.#context) : null;
			return reading === null ? null : fits(field, reading.value);
		};
		// "13,500 Btu" is the cooling, not the draw, where a field is always in that unit.
		const hasUnit = (field: Field) =>
			field.type.sort === 'quantity' && element.readings.some(({ symbol }) => symbol === usualUnit(field));
		const kin = this.#kinOf(element);
		const name =
			this.#firstFree(
				(field, name) =>
					kin.some((one) => this.#areKin(one, name)) &&
					takes(field) === true &&
					!isMainsForBank(element, name),
			) ??
			this.#firstFree((field) => hasUnit(field) && takes(field) === true) ??
			this.#firstFree((field) => takes(field) === true) ??
			this.#firstFree((field) => takes(field) !== null) ??
			this.#lastOf((field) => takes(field) !== null);
		if (name === null) return;
		const reading = readingFor(element, this.#topic.fields[name] as Field, this.#context);
		if (reading === null) return;
		this.#setEnd(name, reading.value, element);
		this.#claimed.add(element);
		this.#wentTo.set(element, name);
		this.#placeCount(element.count, this.#said(element), name);
	}

	/** A value, of a range the unfavourable end; both ends, to be asked about, where that can be either. */
	#setEnd(name: string, value: FieldValue, element: Element): void {
		const field = this.#topic.fields[name] as Field;
		const said = this.#said(element);
		const other = otherEnd(element, field);
		if (other !== null) this.#set(name, other, said);
		this.#set(name, value, said);
		if (element.type !== 'quantity' || !element.range || other !== null) return;
		this.#notes.push(
			field.meta.worseEnd === 'low'
				? `"${said}" is a range: its smaller end is taken, the unfavourable one.`
				: `"${said}" is a range: its larger end is taken.`,
		);
	}

	/** "2 x 200 W": the count is of the thing the value belongs to, else the first the topic counts. */
	#placeCount(count: number | null, said: string, of: string | null = null): void {
		if (count === null) return;
		const isCount = (field: Field) => field.type.sort === 'count';
		const name =
			(of === null
				? null
				: this.#firstFree((field, other) => isCount(field) && stemOf(other) === stemOf(of))) ??
			this.#firstFree((field, other) => isCount(field) && !surrounding.has(other));
		if (name !== null) this.#set(name, count, said);
		else this.#uncounted.push(said);
	}

	/** "2 x 2/0": as many conductors in parallel. */
	#placeParallel(count: number | null, said: string): void {
		if (count === null) return;
		const name = ['parallel', 'cables'].find((one) => this.#topic.fields[one]?.type.sort === 'count');
		if (name === undefined) this.#placeCount(count, said);
		else if (!this.#values.has(name)) this.#set(name, count, said);
	}

	/** Inputs of the thing a value belongs to: one of several that are counted, or what the value beside it went to. */
	#kinOf(element: QuantityToken): string[] {
		if (element.count !== null) {
			const counted = Object.entries(this.#topic.fields).find(([, field]) => field.type.sort === 'count');
			return counted === undefined ? [] : [counted[0]];
		}
		const at = this.#elements.indexOf(element);
		return [-1, 1].flatMap((side) => {
			const near = this.#elements[at + side];
			const next = near?.type === 'phrase' && this.#names(near) ? this.#elements[at + 2 * side] : near;
			return (next === undefined ? undefined : this.#wentTo.get(next)) ?? [];
		});
	}

	/** Two inputs are of one thing where their names begin alike or one word may stand for both. */
	#areKin(one: string, other: string): boolean {
		const [a, b] = [this.#topic.fields[one], this.#topic.fields[other]];
		if (a === undefined || b === undefined || measures(a) === measures(b)) return false;
		if (stemOf(one) === stemOf(other)) return true;
		return b.meta.aliases.some((alias) => !fillers.has(alias) && a.meta.aliases.includes(alias));
	}

	#names(element: Element): boolean {
		return meaningsFor(element, this.#topic.name).some((meaning) => meaning.means === 'alias');
	}

	#firstFree(fits: (field: Field, name: string) => boolean): string | null {
		return (
			Object.entries(this.#topic.fields).find(
				([name, field]) => !field.meta.onlyNamed && fits(field, name) && !this.#values.has(name),
			)?.[0] ?? null
		);
	}

	#lastOf(fits: (field: Field) => boolean): string | null {
		return (
			Object.entries(this.#topic.fields).find(([, field]) => !field.meta.onlyNamed && fits(field))?.[0] ??
			null
		);
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

const eachOf = /^(?:each|apiece|a piece|je|jeweils|pro stück|cada una?)$/;
/** Loads that one conductor feeds together. */
const onOne =
	/\b(?:on|from|off|with|over|through)\s+(?:one|a single|the same|1)\b|\b(?:same|one|single|shared?|common)\s+(?:wire|run|cable|circuit|feed|line|fuse|pair)\b|\btogether\b|\bshar(?:e|es|ed|ing)\b|\bdaisy|\bzusammen\b|\bgemeinsam|\bein(?:er|em|e)?\s+(?:kabel|leitung|sicherung)\b|\bjuntos?\b|\bmismo\s+cable\b|\bun solo\b/;
/** A bare figure behind "batteries of" is of ampere-hours from here on. */
const leastNamedAh = 20;

/** A quantity as a field would take it, as it is written. */
function readingOf(element: QuantityToken, field: Field | undefined): number | null {
	if (field?.type.sort !== 'quantity') return null;
	const { kind } = field.type;
	return element.readings.find((one) => one.kind === kind && one.symbol !== 'Btu/h')?.value ?? null;
}

/** Behind such words stands the value that no longer holds. */
const insteadOf = /(?:^| )(?:(?:instead|rather)(?: of| than)?|not|statt|anstatt|vez(?: de)?|lugar(?: de)?)$/;

/** Counts of what surrounds a thing, never of the thing a value stands for: "2 x 25 A" is no current that two conductors share. */
const surrounding: ReadonlySet<string> = new Set(['bundled', 'parallel', 'cables']);

/** No bank of a van has the voltage of the mains. */
function isMainsForBank(element: QuantityToken, name: string): boolean {
	const volts = element.readings.find(({ kind }) => kind === 'voltage')?.value ?? 0;
	return volts >= 100 && /^(?:bank|unit)/.test(name);
}

/** What a field measures; two fields of one thing never measure the same (Ah and Wh, A and W). */
function measures({ type }: Field): string {
	if (type.sort !== 'quantity') return type.sort;
	return { energy: 'charge', power: 'current' }[type.kind as string] ?? type.kind;
}

/** The thing a field tells of, by the first word of its name: "bankV" and "bankAh" are of the bank. */
function stemOf(name: string): string {
	return (/^[a-z]+/.exec(name)?.[0] ?? name).replace(/s$/, '');
}

/** Names of inputs that are the two ends of one span. */
const ends = [
	['from', 'to'],
	['cutIn', 'cutOut'],
	['cold', 'hot'],
] as const;

/** The two inputs of a topic that a range of this kind names, or null. */
function endsOf({ fields }: Subject, kind: string): readonly [string, string] | null {
	const named = (start: string) =>
		Object.entries(fields).find(
			([name, { type }]) => type.sort === 'quantity' && type.kind === kind && name.startsWith(start),
		)?.[0];
	for (const [first, second] of ends) {
		const low = named(first);
		const high = named(second);
		if (low !== undefined && high !== undefined) return [low, high];
	}
	return null;
}

/** The unit the trade always names a field in, or null. */
function usualUnit({ type }: Field): string | null {
	return type.sort === 'quantity' ? type.unit : null;
}
