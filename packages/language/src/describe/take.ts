import type { Context, Field, FieldValue } from '@lugbook/core';
import { type Element, isFiller, meaningsFor } from '../elements.js';
import { fill, type Given } from '../fill.js';
import { fits } from '../pair.js';
import { subjectOf } from './subjects.js';
import { kindsNamed, type Span, type Text, textOf } from './text.js';
import { indefinite, negations } from './words.js';

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
		.map((element, index, all) => denied(element, all[index - 1], kind))
		.map((element, index, all) => deniedAfter(element, all.slice(index + 1), kind));
	const filled = fill(elements, subject, text.only(spans), context);
	const claimed = new Set(filled.claimed);
	const given: Given[] = filled.given.filter((one) => isNamed(one, elements, kind, claimed, text));
	const notes = [...filled.notes];
	let score = 0;

	const countName = Object.entries(subject.fields).find(([, field]) => field.type.sort === 'count')?.[0];
	const times = timesIn(elements, given, claimed, text);
	if (times !== null && countName !== undefined) {
		for (const element of times.from) claimed.add(element);
		const others = given.filter(({ name }) => name !== times.name && name !== countName);
		given.splice(0, given.length, ...others, times.each, {
			...times.each,
			name: countName,
			value: times.count,
		});
		score += 1;
	}
	const bare = bareFigure(elements, kind, given, claimed, context);
	if (bare !== null) {
		claimed.add(bare.element);
		given.push(bare.given);
		notes.push(bare.note);
		score += 1;
	}
	// Adults and children are counted by their own words.
	const counted = kind === 'people' && given.length > 0 ? null : countIn(elements, kind, claimed, text);
	if (counted !== null) {
		for (const element of counted.from) claimed.add(element);
		if (countName !== undefined && !given.some(({ name }) => name === countName)) {
			given.push({ name: countName, value: counted.count, said: String(counted.count) });
			score += 1;
		}
	}
	for (const one of articleCounts(elements, kind, given)) given.push(one);
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

/** Fields whose figure must be named: a bare current beside a thing is its own, not that of its fuse. */
const namedOnly: ReadonlySet<string> = new Set(['fuseA']);

function isNamed(
	one: Given,
	elements: readonly Element[],
	kind: string,
	claimed: Set<Element>,
	text: Text,
): boolean {
	if (!namedOnly.has(one.name)) return true;
	const isSaid = elements.some((element) =>
		meaningsFor(element, kind).some((meaning) => meaning.means === 'alias' && meaning.field === one.name),
	);
	if (isSaid) return true;
	const value = elements.find((element) => claimed.has(element) && text.slice(element) === one.said);
	if (value !== undefined) claimed.delete(value);
	return false;
}

/** "460 Ah (2 x 230)", "800 W = 4 x 200": how many, and the figure of each, where they make up the figure named. */
function timesIn(
	elements: readonly Element[],
	given: readonly Given[],
	claimed: ReadonlySet<Element>,
	text: Text,
) {
	for (const [index, first] of elements.entries()) {
		const sign = elements[index + 1];
		const second = elements[index + 2];
		if (first.type !== 'number' || second?.type !== 'number' || sign === undefined) continue;
		if (claimed.has(first) && claimed.has(second)) continue;
		if (!/^[x*]$/i.test(text.slice(sign))) continue;
		const product = first.value * second.value;
		const whole = given.find(
			({ value }) => typeof value === 'number' && Math.abs(value - product) <= 0.01 * product,
		);
		if (whole === undefined) continue;
		const each = { ...whole, value: second.value };
		return { name: whole.name, each, count: first.value, from: [first, sign, second] };
	}
	return null;
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

/** "direct no", "heated: no": the property before a closing negation is not there. */
function deniedAfter(element: Element, rest: readonly Element[], kind: string): Element {
	const [next, end] = rest[0]?.type === 'mark' && /[:=]/.test(rest[0].mark) ? rest.slice(1) : rest;
	const isClosing = end === undefined || (end.type === 'mark' && /[,;.]/.test(end.mark));
	if (element.type !== 'phrase' || next === undefined || !isClosing || !negations.has(textOf(next)))
		return element;
	const isOf = (topic: string, means: string) => topic === kind && (means === 'choice' || means === 'flag');
	if (kindsNamed(element).includes(kind)) return element;
	const meanings = element.meanings.flatMap((meaning) => {
		if (!('topic' in meaning) || !isOf(meaning.topic, meaning.means)) return [meaning];
		return meaning.means === 'flag' ? [{ ...meaning, value: !meaning.value }] : [];
	});
	return { ...element, meanings };
}

/** "two adults and a child": the article counts, where the word is that of a number. */
function articleCounts(elements: readonly Element[], kind: string, given: readonly Given[]): Given[] {
	if (kind !== 'people') return [];
	const { fields } = subjectOf(kind);
	return elements.flatMap((element, index) => {
		const before = elements[index - 1];
		if (before === undefined || !indefinite.has(textOf(before))) return [];
		return meaningsFor(element, kind).flatMap((meaning) => {
			if (meaning.means !== 'alias' || fields[meaning.field]?.type.sort !== 'count') return [];
			const isKnown = given.some(({ name }) => name === meaning.field);
			return isKnown ? [] : [{ name: meaning.field, value: 1, said: textOf(element) }];
		});
	});
}

/** The figure each kind is known by, the least that is no count of it, and its unit where people leave it out. */
const knownBy: Readonly<Record<string, readonly [field: string, least: number, us: string, metric: string]>> =
	{
		battery: ['unitAh', 40, 'Ah', 'Ah'],
		inverter: ['ratedW', 150, 'W', 'W'],
		charger: ['chargeA', 13, 'A', 'A'],
		dcdc: ['chargeA', 13, 'A', 'A'],
		alternator: ['ratingA', 50, 'A', 'A'],
		solar: ['panelW', 50, 'W', 'W'],
		'fresh-tank': ['volumeL', 5, 'gal', 'L'],
		'gray-tank': ['volumeL', 5, 'gal', 'L'],
		microwave: ['powerW', 300, 'W', 'W'],
		kettle: ['powerW', 300, 'W', 'W'],
		cooktop: ['powerW', 300, 'W', 'W'],
	};

/** "42 fresh 38 gray", "a 2000 inverter", "three 100s, lithium": the figure without its unit. */
function bareFigure(
	elements: readonly Element[],
	kind: string,
	given: readonly Given[],
	claimed: ReadonlySet<Element>,
	context: Context,
): { readonly element: Element; readonly given: Given; readonly note: string } | null {
	const known = knownBy[kind];
	if (known === undefined) return null;
	const [name, least, us, metric] = known;
	// The same input under another name ("10 kWh in all") leaves nothing open.
	const sort = (one: string) => one.replace(/^(?:unit|panel|total|rated|power)/, '');
	if (given.some((one) => sort(one.name) === sort(name) || /Wh$/.test(one.name))) return null;
	const named = elements.findIndex((one) => kindsNamed(one).includes(kind));
	const [nearest] = elements
		.map((element, at) => ({ element, at }))
		.filter(({ element, at }) => {
			if (element.type !== 'number' || claimed.has(element) || element.value < least) return false;
			const isMarking = [elements[at - 1], elements[at + 1]].some(
				(one) => one?.type === 'mark' && /[/x*=]/.test(one.mark),
			);
			return Number.isInteger(element.value) && !isMarking;
		})
		.toSorted((a, b) => Math.abs(a.at - named) - Math.abs(b.at - named));
	if (named < 0 || nearest?.element.type !== 'number') return null;
	const field = subjectOf(kind).fields[name];
	const unit = context.units === 'us' ? us : metric;
	const value = unit === 'gal' ? nearest.element.value * litresPerGallon : nearest.element.value;
	if (field === undefined || !fits(field, value)) return null;
	const said = `${nearest.element.value} ${unit}`;
	return {
		element: nearest.element,
		given: { name, value, said },
		note: `I read "${nearest.element.value}" of the ${kind.replace('-', ' ')} as ${said}.`,
	};
}

/** US liquid gallon: 231 cubic inches (NIST Handbook 44, Appendix C). */
const litresPerGallon = 3.785411784;

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
		if (
			namesAhead(elements, index, kind) ||
			(element.value <= 12 && namedRightBefore(elements, index, kind))
		) {
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
