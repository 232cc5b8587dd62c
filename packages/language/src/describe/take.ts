import type { Context, Field, FieldValue } from '@lugbook/core';
import { type Element, isFiller, meaningsFor } from '../elements.js';
import { fill, type Given } from '../fill.js';
import { fits } from '../pair.js';
import { subjectOf } from './subjects.js';
import { kindsNamed, type Span, type Text, textOf } from './text.js';
import { negations } from './words.js';

/** What a stretch of text says of one piece of equipment. */
export interface Taken {
	readonly given: readonly Given[];
	readonly claimed: ReadonlySet<Element>;
	readonly notes: readonly string[];
	/** how well the stretch fits the kind: what it explains less what it leaves over or contradicts */
	readonly score: number;
}

/** Reads the spans as being about one kind. */
export function take(text: Text, kind: string, spans: readonly Span[], context: Context): Taken {
	const subject = subjectOf(kind);
	const elements = text
		.within(kind, spans)
		.map((element, index, all) => denied(element, all[index - 1], kind));
	const filled = fill(elements, subject, text.only(spans), context);
	const claimed = new Set(filled.claimed);
	const given: Given[] = [...filled.given];
	const notes = [...filled.notes];
	let score = 0;

	const counted = countIn(elements, kind, claimed, text);
	const countName = Object.entries(subject.fields).find(([, field]) => field.type.sort === 'count')?.[0];
	if (counted !== null) {
		for (const element of counted.from) claimed.add(element);
		if (countName !== undefined && !given.some(({ name }) => name === countName)) {
			given.push({ name: countName, value: counted.count, said: String(counted.count) });
			score += 1;
		}
	}
	const many = given.find(({ name }) => name === countName)?.value;
	for (const { name, values } of filled.conflicts) {
		const settled = ofMany(values, typeof many === 'number' ? many : 1);
		given.push({ name, ...settled.value });
		if (settled.doubt) {
			score -= 3;
			const said = values.map((one) => `"${one.said}"`).join(' and ');
			notes.push(`I read ${said} for one value of the ${subject.name}; "${settled.value.said}" is taken.`);
		}
	}
	for (const element of elements) score += worth(element, kind, claimed);
	for (const { name, value } of given) {
		const field = subject.fields[name];
		if (field !== undefined && typeof value === 'number' && !fits(field, value)) score -= 4;
	}
	return { given, claimed, notes, score };
}

function worth(element: Element, kind: string, claimed: ReadonlySet<Element>): number {
	const isUsed = claimed.has(element);
	if (element.type === 'quantity' || element.type === 'conductor') return isUsed ? 2 : -2;
	if (element.type === 'number') return isUsed ? 0.5 : -0.5;
	if (element.type !== 'phrase') return 0;
	if (meaningsFor(element, kind).length === 0) return 0;
	return isUsed && !isFiller(element) ? 0.5 : 0;
}

/** "not heated", "no timer": the yes-or-no word after a negation says the opposite. */
function denied(element: Element, before: Element | undefined, kind: string): Element {
	if (element.type !== 'phrase' || before === undefined || !negations.has(textOf(before))) return element;
	if (!element.meanings.some((meaning) => meaning.means === 'flag' && meaning.topic === kind)) return element;
	const meanings = element.meanings.map((meaning) =>
		meaning.means === 'flag' ? { ...meaning, value: !meaning.value } : meaning,
	);
	return { ...element, meanings };
}

/** How many: "2 roof fans", "fans: 2", "200 W x 2", "100 Ah (x2)". */
function countIn(
	elements: readonly Element[],
	kind: string,
	claimed: ReadonlySet<Element>,
	text: Text,
): { readonly count: number; readonly from: readonly Element[] } | null {
	for (const [index, element] of elements.entries()) {
		if (claimed.has(element)) continue;
		const times = element.type === 'unknown' ? /^x(\d{1,2})$/.exec(element.word) : null;
		if (times !== null) return { count: Number(times[1]), from: [element] };
		if (
			element.type !== 'number' ||
			!Number.isInteger(element.value) ||
			element.value < 1 ||
			element.value > 100
		)
			continue;
		const before = elements[index - 1];
		const after = elements[index + 1];
		const signs = [before, after].filter((one) => one !== undefined && /^x$/i.test(text.slice(one)));
		if (signs.length > 0) return { count: element.value, from: [element, ...(signs as Element[])] };
		if (namesAhead(elements, index, kind) || namedRightBefore(elements, index, kind)) {
			return { count: element.value, from: [element] };
		}
	}
	return null;
}

/** True where the thing itself follows, with nothing but its own words and figures between. */
function namesAhead(elements: readonly Element[], index: number, kind: string): boolean {
	for (const next of elements.slice(index + 1, index + 7)) {
		if (kindsNamed(next).includes(kind)) return true;
		const between =
			next.type === 'quantity' ||
			(next.type === 'mark' && /[)x-]/.test(next.mark)) ||
			next.type === 'unknown' ||
			isFiller(next) ||
			meaningsFor(next, kind).length > 0;
		if (!between) return false;
	}
	return false;
}

function namedRightBefore(elements: readonly Element[], index: number, kind: string): boolean {
	const before = elements[index - 1];
	const named = before?.type === 'mark' && /[:=]/.test(before.mark) ? elements[index - 2] : before;
	return named !== undefined && kindsNamed(named).includes(kind);
}

interface Said {
	readonly value: FieldValue;
	readonly said: string;
}

/** "400 W of solar, 2 x 200 W": the figure of one where the other is that of all together. */
function ofMany(values: readonly Said[], many: number): { readonly value: Said; readonly doubt: boolean } {
	const first = values[0] as Said;
	const numbers = values.filter((one): one is Said & { value: number } => typeof one.value === 'number');
	const least = numbers.toSorted((a, b) => a.value - b.value)[0];
	const most = numbers.toSorted((a, b) => b.value - a.value)[0];
	const isTotal =
		least !== undefined &&
		most !== undefined &&
		many > 1 &&
		Math.abs(most.value - many * least.value) <= 0.02 * most.value;
	if (isTotal) return { value: least, doubt: false };
	return { value: first, doubt: true };
}

/** The first count of a kind: how many of the thing itself. */
export function countFieldOf(kind: string): readonly [string, Field] | null {
	return Object.entries(subjectOf(kind).fields).find(([, field]) => field.type.sort === 'count') ?? null;
}
