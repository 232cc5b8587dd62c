import type { AnyTopic, Field, Fields, KindName } from '@lugbook/core';
import { type Element, meaningsFor, type PhraseTable } from './elements.js';
import { markingsIn } from './markings.js';
import type { Meaning } from './vocabulary.js';

export interface Candidate {
	readonly topic: AnyTopic;
	readonly score: number;
	/** a word of the message asks for it, or it is one that is asked for by quantities alone */
	readonly named: boolean;
}

/** The kinds of quantity a topic can place, with those of its list items. */
const kindsKnown = new WeakMap<Fields, ReadonlySet<KindName>>();

function kindsOf(fields: Fields): ReadonlySet<KindName> {
	const known = kindsKnown.get(fields);
	if (known !== undefined) return known;
	const kinds = new Set<KindName>();
	for (const field of Object.values(fields)) {
		if (field.type.sort === 'quantity') kinds.add(field.type.kind);
		if (field.type.sort === 'list') for (const kind of kindsOf(field.type.item)) kinds.add(kind);
	}
	kindsKnown.set(fields, kinds);
	return kinds;
}

/**
 * How well each topic fits the message, best first: the words that ask for it, the words of its fields, and whether
 * it can place the quantities that are there. A word that many topics know says little.
 */
export function rankTopics(table: PhraseTable, topics: readonly AnyTopic[], message: string): Candidate[] {
	const asked = new Set(
		table
			.elements(null)
			.flatMap((element) => (element.type === 'phrase' ? element.meanings : []))
			.flatMap((meaning) => (meaning.means === 'topic' ? [meaning.topic] : [])),
	);
	const ends = endsOfRun(table.elements(null), topics);
	const isOther = (topic: AnyTopic) => topic.notFor.some((name) => asked.has(name));
	return topics
		.map((topic) => candidateOf(table.elements(topic.name), topic, message, ends))
		.map((one) => (isOther(one.topic) ? { ...one, score: one.score - otherWeight } : one))
		.filter((candidate) => candidate.score > 0)
		.sort((a, b) => b.score - a.score);
}

/** What begins the way of a cable, and what its other end. */
const begins = /^(?:from|between|von|vom|zwischen|de|del|desde|entre)$/;
const goesTo = /^(?:to|and|zu|zur|zum|nach|und|a|al|hasta|y)$/;

/**
 * Places in the message where the two ends of a cable are named: "cable from the solar controller to the battery" asks
 * about neither.
 */
function endsOfRun(elements: readonly Element[], topics: readonly AnyTopic[]): readonly Element[] {
	const wiring = new Set(topics.filter(({ system }) => system === 'wiring').map(({ name }) => name));
	const isRun = (element: Element) =>
		element.type === 'conductor' ||
		(element.type === 'phrase' &&
			element.meanings.some((meaning) => meaning.means === 'topic' && meaning.topic === 'wire'));
	if (!elements.some(isRun)) return [];
	const start = elements.findIndex((element) => element.type === 'phrase' && begins.test(element.phrase));
	if (start < 0) return [];
	const to = elements.findIndex(
		(element, index) =>
			index > start && index <= start + 5 && element.type === 'phrase' && goesTo.test(element.phrase),
	);
	if (to < 0) return [];
	const isEnd = (element: Element) =>
		element.type === 'phrase' &&
		!element.meanings.some((meaning) => meaning.means === 'topic' && wiring.has(meaning.topic));
	return elements.filter((element, index) => index > start && index <= to + 2 && isEnd(element));
}

/** To the topics of other systems such a word asks for nothing. */
function isEndFor(element: Element, topic: AnyTopic, ends: readonly Element[]): boolean {
	return (
		topic.system !== 'wiring' && ends.some((end) => end.start <= element.start && element.end <= end.end)
	);
}

function candidateOf(
	elements: readonly Element[],
	topic: AnyTopic,
	message: string,
	ends: readonly Element[],
): Candidate {
	// A marking of the trade ("LT225/75R16") points to the topic that reads it.
	let score = 2 * new Set(markingsIn(topic.fields, message).map(({ name }) => name)).size;
	const counted = new Set<string>();
	const kinds = kindsOf(topic.fields);
	const met = new Set<string>();
	for (const element of elements) {
		if (element.type === 'phrase') {
			const meanings = meaningsFor(element, topic.name);
			if (meanings.length === 0 || counted.has(element.phrase)) continue;
			counted.add(element.phrase);
			if (isEndFor(element, topic, ends)) continue;
			score += wordWeight(element, meanings.some((one) => one.means === 'topic') ? meanings : null);
		} else if (element.type === 'quantity') {
			const fits = element.readings.some((reading) => kinds.has(reading.kind));
			for (const reading of element.readings) met.add(reading.kind);
			// A topic with no place for a quantity would have to leave it out: hardly what was asked.
			score += fits ? 1 : -2.5;
		} else if (element.type === 'unreadable') {
			// It was meant as a quantity, so the topic is chosen as if it were one.
			for (const kind of element.kinds) met.add(kind);
			score += element.kinds.some((kind) => kinds.has(kind)) ? 1 : 0;
		} else if (element.type === 'conductor') {
			met.add('conductor');
			// A size that was named is to be judged or protected: a topic that can't place it was hardly asked.
			score += hasSort(topic.fields, 'conductor') ? 1 : -2;
		}
	}
	if (score <= 0) return { topic, score, named: false };
	const total = score + neededBonus(topic, met);
	const named =
		(topic.askedByQuantities && (topic.needs.length - waivable(topic).length < 2 || hasNeeds(topic, met))) ||
		elements.some(
			(element) =>
				!isEndFor(element, topic, ends) &&
				meaningsFor(element, topic.name).some((one) => one.means === 'topic'),
		);
	// Quantities alone fit many topics; only some are asked for so.
	return { topic, score: named ? total : total * unnamedShare, named };
}

/** What a word counts against a topic that says of itself that it is not about it. */
const otherWeight = 3;

/** What the fit of a topic counts that no word of the message asks for. */
const unnamedShare = 0.65;

type TopicMeanings = ReturnType<typeof meaningsFor>;

interface Shared {
	/** how many topics know the phrase, and how many it asks for */
	readonly sharing: number;
	readonly askedFor: number;
}

const sharedKnown = new WeakMap<readonly Meaning[], Shared>();

function topicsOf(meanings: readonly Meaning[]): Shared {
	const known = sharedKnown.get(meanings);
	if (known !== undefined) return known;
	const count = (counts: (meaning: Meaning) => boolean) =>
		new Set(meanings.flatMap((meaning) => ('topic' in meaning && counts(meaning) ? meaning.topic : []))).size;
	const shared = {
		sharing: count(({ means }) => means !== 'covered'),
		askedFor: count(({ means }) => means === 'topic'),
	};
	sharedKnown.set(meanings, shared);
	return shared;
}

/** Words that ask for the topic weigh most; the more topics share a phrase, the less it says. */
function wordWeight(element: Extract<Element, { type: 'phrase' }>, asTopic: TopicMeanings | null): number {
	const { sharing, askedFor } = topicsOf(element.meanings);
	if (asTopic !== null) {
		const rank = Math.min(...asTopic.map((one) => (one.means === 'topic' ? one.rank : 99)));
		const strength = Math.max(2.5, 4 - 0.15 * rank) + 0.4 * (element.phrase.split(' ').length - 1);
		// A word that is equipment to other topics ("battery", "inverter") asks for its own less plainly.
		return Math.max(1.2, strength / Math.sqrt(askedFor) / (1 + 0.12 * (sharing - askedFor)));
	}
	const filler = element.meanings.some((meaning) => meaning.means === 'filler') ? 0.3 : 1;
	return (1.2 * filler) / Math.sqrt(sharing);
}

/** The quantities of everything that has to be known one way or another are there. */
function hasNeeds(topic: AnyTopic, met: ReadonlySet<string>): boolean {
	const has = (field: Field | undefined): boolean => {
		if (field?.type.sort === 'quantity') return met.has(field.type.kind);
		if (field?.type.sort !== 'list') return false;
		return Object.values(field.type.item).some(
			({ type }) =>
				type.sort === 'quantity' && !/^(?:duration|fraction)$/.test(type.kind) && met.has(type.kind),
		);
	};
	return topic.needs.every((need) => need.anyOf.some((name) => has(topic.fields[name])));
}

/** What has to be known unless a flag of the message says otherwise: as good as required inputs. */
function waivable(topic: AnyTopic): AnyTopic['needs'] {
	return topic.needs.filter(({ anyOf }) => anyOf.some((name) => topic.fields[name]?.type.sort === 'flag'));
}

/** A topic whose required inputs are all there is likelier meant than one that would have to ask. */
function neededBonus(topic: AnyTopic, met: ReadonlySet<string>): number {
	const has = (field: Field | undefined) =>
		(field?.type.sort === 'quantity' && met.has(field.type.kind)) ||
		(field?.type.sort === 'conductor' && met.has('conductor'));
	const required = Object.values(topic.fields).filter(
		({ presence, type }) =>
			presence === 'required' && (type.sort === 'quantity' || type.sort === 'conductor'),
	);
	const groups = topic.needs.map((need) => need.anyOf.some((name) => has(topic.fields[name])));
	const all = [...required.map(has), ...groups];
	if (all.length === 0) return 0;
	const share = all.filter(Boolean).length / all.length;
	return share === 1 ? 1 + 0.5 * (required.length + waivable(topic).length) : 0.5 * share;
}

function hasSort(fields: Fields, sort: Field['type']['sort']): boolean {
	return Object.values(fields).some(
		(field) => field.type.sort === sort || (field.type.sort === 'list' && hasSort(field.type.item, sort)),
	);
}
