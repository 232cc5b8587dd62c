import { type Context, type Field, type Fields, typicalLoad } from '@lugbook/core';
import { drawOfCooling, isAirConditioner } from './cooling.js';
import { type Element, isBreak, isFiller, meaningsFor } from './elements.js';
import { fits, takes } from './pair.js';
import { readingFor } from './value.js';
import type { Meaning, Subject } from './vocabulary.js';

export interface ReadItems {
	readonly items: readonly Record<string, unknown>[];
	readonly claimed: readonly Element[];
	readonly said: string;
	/** what was taken in another sense than it was written */
	readonly notes: readonly string[];
}

interface Draft {
	readonly values: Record<string, unknown>;
	readonly elements: Element[];
	/** words that may turn out to be its name */
	readonly words: Element[];
	hasValue: boolean;
	hasKnownName: boolean;
	/** a dash or "to" was met: the next name is the second one */
	next: boolean;
	/** the last element that named it */
	lastName: Element | null;
	/** the last element that gave it a value */
	lastValue: Element | null;
}

/**
 * The things of a list: "fridge 60W 8h, lights 20W 5h, 2 fans 3A". A comma, a line or an "and" begins a new one, and
 * so does a second value of the same kind or a new name after the values.
 */
export function readItems(
	elements: readonly Element[],
	topic: Subject,
	listName: string,
	item: Fields,
	taken: ReadonlySet<Element>,
	message: string,
	context: Context,
): ReadItems {
	const names = Object.entries(item)
		.filter(([, field]) => field.type.sort === 'text')
		.map(([name]) => name);
	const countName = Object.entries(item).find(([, field]) => field.type.sort === 'count')?.[0] ?? null;
	const drafts: Draft[] = [];
	const notesOfItems: string[] = [];
	let draft = newDraft();
	let pendingCount: { value: number; element: Element } | null = null;

	const close = () => {
		if (isItem(draft, item)) drafts.push(draft);
		draft = newDraft();
	};
	const begin = (element: Element) => {
		draft.elements.push(element);
		if (pendingCount !== null && countName !== null) {
			draft.values[countName] = pendingCount.value;
			draft.elements.push(pendingCount.element);
			pendingCount = null;
		}
	};

	for (const [index, element] of elements.entries()) {
		// What a field of the topic itself took ("in Flagstaff", "for 3 days") is no part of an item.
		if (taken.has(element) && itemMeanings(element, topic.name, listName).length === 0) continue;
		if (isBreak(element) || isJoin(element)) {
			close();
			continue;
		}
		if (element.type === 'mark' && /[?:.!]/.test(element.mark) && !draft.hasValue) {
			// "volts at the fridge? batt 6 ft ...": what was asked is none of the things.
			draft = newDraft();
			continue;
		}
		if (element.type === 'phrase' && /^(?:for|para|für)$/.test(element.phrase) && isFiller(element)) {
			// "inverter for a 1500 W cooktop": what stands before it asks, and is none of the things.
			if (!draft.hasValue && asksFor(draft, topic.name)) draft = newDraft();
		}
		if (element.type === 'mark' && (element.mark === '-' || element.mark === '>') && names.length > 1) {
			draft.next = true;
			continue;
		}
		const inner = itemMeanings(element, topic.name, listName);
		if (inner.length > 0) {
			const asName = inner.find((meaning) => meaning.means === 'text');
			// "50 W heater fan" is one thing; a name after other words begins the next.
			const goesOn = draft.lastName !== null && elements[index - 1] === draft.lastName;
			// "nights 200ah with a 40w fridge": the name right behind the value is its own; what stood further off is none.
			const owns = elements[index - 1] !== undefined && elements[index - 1] === draft.lastValue;
			if (asName !== undefined && owns && !draft.hasKnownName && !isBeside(elements, draft))
				draft.words.length = 0;
			const isSecond = draft.next || isUnended(draft, names);
			if (
				asName !== undefined &&
				draft.hasValue &&
				!goesOn &&
				!isSecond &&
				(draft.hasKnownName || draft.words.length > 0)
			)
				close();
			begin(element);
			applyWords(draft, inner, element, names, goesOn);
			if (asName !== undefined) nameOfLowVoltage(draft, elements[index - 1], names);
			if (asName !== undefined) draft.lastName = element;
			continue;
		}
		if (element.type === 'unknown' && element.elsewhere) {
			// Where the topic has no night of its own, it is the time that this thing is on.
			const hours = item.durationH;
			if (hours !== undefined && wholeNight.test(element.word) && draft.values.durationH === undefined) {
				begin(element);
				draft.values.durationH = nightH;
				notesOfItems.push(`"${message.slice(element.start, element.end)}" is taken as ${nightH} h.`);
			}
			continue;
		}
		if (
			element.type === 'unknown' &&
			twice.test(element.word) &&
			typeof draft.values.durationH === 'number'
		) {
			draft.values.durationH *= 2;
			draft.elements.push(element);
			continue;
		}
		if (element.type === 'unknown') {
			const isSecond = draft.next || isUnended(draft, names);
			if (draft.hasValue && !isSecond && (draft.hasKnownName || draft.words.length > 0)) close();
			const second = names[1];
			const begun = second === undefined ? undefined : draft.values[second];
			if (second !== undefined && (isSecond || (typeof begun === 'string' && !draft.hasValue))) {
				const word = message.slice(element.start, element.end);
				draft.values[second] = typeof begun === 'string' ? `${begun} ${word}` : word;
				draft.elements.push(element);
				draft.next = false;
			} else draft.words.push(element);
			continue;
		}
		if (
			element.type === 'phrase' &&
			names.length > 1 &&
			/^(?:to|a|al|hasta|bis|zu|zur|zum|nach)$/.test(element.phrase)
		) {
			draft.next = true;
			continue;
		}
		if (
			element.type === 'number' &&
			timesADay(elements, index) &&
			typeof draft.values.durationH === 'number'
		) {
			// "10 min 3x a day": each time so long.
			draft.values.durationH *= element.value;
			draft.elements.push(element, elements[index + 1] as Element);
			continue;
		}
		if (element.type === 'number' && countName !== null) {
			if (isCount(element.value, item[countName] as Field)) pendingCount = { value: element.value, element };
			continue;
		}
		// "half full" is the state of the bank and no share of a load's time.
		if (element.type === 'quantity' && element.of !== undefined) continue;
		const name = fieldFor(element, item, draft, context);
		if (name === null || isOfTopic(element, item[name] as Field, topic, context)) continue;
		if (draft.values[name] !== undefined) close();
		begin(element);
		setValue(draft, name, element, item, context);
		draft.lastValue = element;
		if ('count' in element && element.count !== null && countName !== null)
			draft.values[countName] = element.count;
	}
	close();

	for (const one of drafts) nameFromWords(one, names, message);
	const notes = [...notesOfItems, ...drafts.flatMap((one) => drawOfItem(one, message))];
	const used = drafts.flatMap((one) => one.elements);
	const start = Math.min(...used.map((element) => element.start));
	const end = Math.max(...used.map((element) => element.end));
	return {
		items: drafts.map((one) => one.values),
		claimed: used,
		said: used.length === 0 ? '' : message.slice(start, end),
		notes,
	};
}

/** "bus 20 ft 12 AWG fridge 6 A": a conductor has two ends, and its second is still to come. */
function isUnended(draft: Draft, names: readonly string[]): boolean {
	const second = names[1];
	return (
		second !== undefined &&
		draft.values[second] === undefined &&
		draft.words.length + (draft.hasKnownName ? 1 : 0) > 0 &&
		draft.elements.some(({ type }) => type === 'conductor') &&
		draft.elements.every(({ type }) => type === 'conductor' || type === 'quantity') &&
		draft.elements.length > 1
	);
}

/** A night that nobody gave the hours of [h]. */
const nightH = 12;
const wholeNight =
	/^(?:overnight|over night|overnite|all nite|all night|all night long|through the night|the whole night|toda la noche|durante la noche|über nacht|die ganze nacht|durch die nacht)$/;

/** "8 min twice a day". */
const twice = /^(?:twice|zweimal)$/;

/** "3x a day", "3 times a day", "3 mal am tag": how often something is done. */
function timesADay(elements: readonly Element[], at: number): boolean {
	const [times, day] = elements.slice(at + 1, at + 3);
	return (
		times !== undefined &&
		times.type !== 'mark' &&
		/^(?:x|times|mal|veces)$/.test(
			times.type === 'phrase' ? times.phrase : times.type === 'unknown' ? times.word : '',
		) &&
		day?.type === 'phrase' &&
		day.meanings.some((meaning) => meaning.means === 'said' && meaning.what === 'per-day')
	);
}

/** "13,500 Btu" of an air conditioner is the heat it moves. */
function drawOfItem({ values, elements }: Draft, message: string): string[] {
	const written = elements.find(
		(element) =>
			element.type === 'quantity' &&
			element.readings.some(({ kind, symbol }) => kind === 'power' && symbol === 'Btu/h'),
	);
	const { name, powerW } = values;
	if (written === undefined || typeof name !== 'string' || typeof powerW !== 'number') return [];
	if (!isAirConditioner(name)) return [];
	const drawn = drawOfCooling(powerW, message.slice(written.start, written.end));
	values.powerW = drawn.powerW;
	return [drawn.note];
}

/** "GVWR 8550 add 60 lb": such a figure counts nothing. */
function isCount(value: number, { type }: Field): boolean {
	return type.sort === 'count' && Number.isInteger(value) && value >= type.min && value <= type.max;
}

/** A thing has a name or something that makes it one; "2 days" alone is nobody's running time. */
function isItem(draft: Draft, item: Fields): boolean {
	if (draft.hasKnownName) return true;
	if (!draft.hasValue) return false;
	return Object.keys(draft.values).some((name) => {
		const type = item[name]?.type;
		return (
			type?.sort !== 'count' && !(type?.sort === 'quantity' && /^(?:duration|fraction)$/.test(type.kind))
		);
	});
}

/** True where what was met so far is but the words that ask for the topic. */
function asksFor(draft: Draft, topic: string): boolean {
	return (
		draft.elements.length > 0 &&
		draft.elements.every((element) =>
			meaningsFor(element, topic).some((meaning) => meaning.means === 'topic'),
		)
	);
}

function newDraft(): Draft {
	return {
		values: {},
		elements: [],
		words: [],
		hasValue: false,
		hasKnownName: false,
		next: false,
		lastName: null,
		lastValue: null,
	};
}

/** True where the last of its words stands right before its value: "stereo 50 W". */
function isBeside(elements: readonly Element[], { words, lastValue }: Draft): boolean {
	const last = words.at(-1);
	return last !== undefined && lastValue !== null && elements[elements.indexOf(lastValue) - 1] === last;
}

function isJoin(element: Element): boolean {
	return (
		(element.type === 'phrase' && /^(?:and|n|plus|und|y|also)$/.test(element.phrase) && isFiller(element)) ||
		(element.type === 'mark' && /[&+]/.test(element.mark))
	);
}

function itemMeanings(element: Element, topic: string, list: string): Meaning[] {
	const own = meaningsFor(element, topic);
	// A word that asks for the topic or names one of its own inputs is no item ("battery", "bank").
	return own.flatMap((meaning) =>
		meaning.means === 'item' && meaning.field === list ? [meaning.inner] : [],
	);
}

/** No mains is below it [V]. */
const lowestMainsV = 60;

/** "12v ac": the unit that runs off the bank, though the voltage went to the bank. */
function nameOfLowVoltage({ values }: Draft, before: Element | undefined, names: readonly string[]): void {
	const [name] = names;
	const volts =
		before?.type === 'quantity' ? before.readings.find(({ kind }) => kind === 'voltage')?.value : undefined;
	if (name === undefined || volts === undefined || volts >= lowestMainsV) return;
	if (typicalLoad(String(values[name]))?.name !== 'air conditioner') return;
	values[name] = `${volts}v air conditioner`;
}

function applyWords(
	draft: Draft,
	meanings: readonly Meaning[],
	element: Element,
	names: readonly string[],
	goesOn: boolean,
): void {
	for (const meaning of meanings) {
		if (meaning.means === 'text' && element.type === 'phrase') {
			const name = draft.next && names[1] !== undefined ? names[1] : (names[0] as string);
			draft.next = false;
			const before = draft.values[name];
			draft.values[name] =
				typeof before === 'string' && (goesOn || !draft.hasValue)
					? `${before} ${element.phrase}`
					: (before ?? element.phrase);
			draft.hasKnownName = true;
		}
		if (meaning.means === 'choice') draft.values[meaning.field] = meaning.value;
		if (meaning.means === 'flag') draft.values[meaning.field] = meaning.value;
	}
}

/** The item's field this value belongs to: one not yet filled first, so that "2 m 3 m" fill two lengths in order. */
function fieldFor(element: Element, item: Fields, draft: Draft, context: Context): string | null {
	const fitting = Object.entries(item).filter(
		([, field]) =>
			(element.type === 'conductor' && field.type.sort === 'conductor') ||
			(element.type === 'quantity' && readingFor(element, field, context) !== null),
	);
	const free = fitting.find(([name]) => draft.values[name] === undefined);
	return (free ?? fitting[0])?.[0] ?? null;
}

/** "for 4 nights": what the things of a list can't be, an input of the topic itself can. */
function isOfTopic(element: Element, field: Field, topic: Subject, context: Context): boolean {
	const reading = readingFor(element, field, context);
	return reading !== null && !fits(field, reading.value) && takes(topic.fields, element, context);
}

function setValue(draft: Draft, name: string, element: Element, item: Fields, context: Context): void {
	draft.values[name] =
		element.type === 'conductor' ? element.name : readingFor(element, item[name] as Field, context)?.value;
	draft.hasValue = true;
}

/** Words that no vocabulary knows name the thing they stand with: "stereo 50 W". */
function nameFromWords(draft: Draft, names: readonly string[], message: string): void {
	const [name] = names;
	if (name === undefined || draft.words.length === 0) return;
	const words = draft.words.map((element) => message.slice(element.start, element.end)).join(' ');
	const known = draft.values[name];
	draft.values[name] = known === undefined ? words : `${words} ${String(known)}`;
	draft.elements.push(...draft.words);
}
