import { type AnyTopic, type Context, findPlaces } from '@lugbook/core';
import type { Candidate } from './choose.js';
import { type Element, isFiller, type PhraseTable } from './elements.js';
import { type Filled, fill } from './fill.js';
import { fits } from './pair.js';

/** A topic with the message filled into it, and how well that went. */
export interface Weighed {
	readonly topic: AnyTopic;
	readonly elements: readonly Element[];
	readonly filled: Filled;
	/** fit of words and quantities alone */
	readonly score: number;
	/** fit of words and quantities, less what the topic can't place or take */
	readonly weight: number;
	/** everything it can't do without is there */
	readonly complete: boolean;
	readonly named: boolean;
}

/** Only topics within this share of the best are tried. */
const share = 0.5;
const most = 6;

/**
 * The likeliest topics with the message filled in, best first. A topic that leaves a quantity over, or reads a value
 * that its field can't take, was hardly meant.
 */
export function weigh(
	ranked: readonly Candidate[],
	table: PhraseTable,
	message: string,
	context: Context,
): Weighed[] {
	const [best] = ranked;
	if (best === undefined) return [];
	const close = ranked.filter((candidate) => candidate.score >= best.score * share).slice(0, most);
	const places = close.some(({ topic }) => hasPlace(topic)) && mayNamePlace(table) ? findPlaces(message) : [];
	const tried = close.map(({ topic, score, named }) => {
		const elements = table.elements(topic.name);
		const filled = fill(elements, topic, message, context);
		const complete = isComplete(topic, filled);
		const weight =
			score -
			leftWeight({ elements: complete && named ? withoutRemarks(elements, filled) : elements, filled }) -
			3 * misfits(topic, filled) +
			(complete && named ? 1 : 0) +
			(places.some(({ sure }) => sure) && hasPlace(topic) ? 1 : 0);
		return { topic, elements, filled, score, weight, complete, named };
	});
	return tried.sort((a, b) => b.weight - a.weight);
}

function hasPlace(topic: AnyTopic): boolean {
	return Object.values(topic.fields).some((field) => field.type.sort === 'place');
}

/** Looking for places costs more than reading all the rest, so it waits for a word that nothing else explains. */
function mayNamePlace(table: PhraseTable): boolean {
	return table.elements(null).some((element) => element.type === 'unknown' || element.type === 'number');
}

/**
 * Without what stands before or behind all that was used and says nothing to any topic, past its first words: a whole
 * question is not undone by a greeting or a joke, which is said back as not used.
 */
function withoutRemarks(elements: readonly Element[], { claimed }: Filled): readonly Element[] {
	const first = elements.findIndex((element) => claimed.has(element));
	const last = elements.findLastIndex((element) => claimed.has(element));
	const isRemark = (element: Element) => element.type === 'unknown' && !element.elsewhere && !element.asks;
	let kept = 0;
	return elements.filter((element, index) => {
		if ((index > first && index < last) || !isRemark(element)) return true;
		kept += 1;
		return kept <= mostCounted;
	});
}

/** So many words of a remark still count against a topic. */
const mostCounted = 2;

/** What the message says that the topic found no use for. */
export function leftWeight({ elements, filled }: Pick<Weighed, 'elements' | 'filled'>): number {
	let weight = 0;
	for (const element of elements) {
		if (filled.claimed.has(element) || element.type === 'mark') continue;
		if (element.type === 'quantity' || element.type === 'conductor') weight += 2;
		else if (element.type === 'number') weight += 1;
		else if (element.type === 'unknown' && element.elsewhere) weight += 1.5;
		// "alternator" in a question about a battery: it was hardly meant to be passed over.
		else if (element.type === 'unknown' && element.asks) weight += 1;
		else if (element.type === 'unknown' || !isFiller(element)) weight += 0.6;
	}
	return weight + 2 * filled.conflicts.length;
}

function misfits(topic: AnyTopic, filled: Filled): number {
	return filled.given.filter(({ name, value }) => {
		const field = topic.fields[name];
		return field !== undefined && typeof value === 'number' && !fits(field, value);
	}).length;
}

/** True where everything the topic can't do without was said. */
export function isComplete(topic: AnyTopic, filled: Filled): boolean {
	const given = new Set(filled.given.map(({ name }) => name));
	const required = Object.entries(topic.fields).filter(([, field]) => field.presence === 'required');
	return (
		required.every(([name]) => given.has(name)) &&
		topic.needs.every((need) => need.anyOf.some((name) => given.has(name)))
	);
}
