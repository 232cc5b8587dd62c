import { type AnyTopic, topics as allTopics, type Context } from '@lugbook/core';
import { rankTopics } from './choose.js';
import { type Element, meaningsFor, PhraseTable } from './elements.js';
import { type Conflict, type Filled, fill, type Given } from './fill.js';
import { figuresLost, leftOver } from './left-over.js';
import { lex } from './lex.js';
import { wholeMarkings } from './markings.js';
import { longestMessage, plain } from './message.js';
import { contextOf } from './message-context.js';
import { readTyped, type TypedValue } from './typed.js';
import { readingFor } from './value.js';
import { Vocabulary } from './vocabulary.js';
import { isComplete, leftWeight, type Weighed, weigh } from './weigh.js';
import type { Said } from './words/commands.js';

/** What was asked before in the same thread. */
export interface Previous {
	readonly topic: string;
	readonly given: readonly Given[];
	/** the input that was asked for: a bare number answers it */
	readonly asked: string | null;
}

export interface Reading {
	/** the topic asked for, or null where none can be told */
	readonly topic: string | null;
	readonly given: readonly Given[];
	readonly conflicts: readonly Conflict[];
	readonly notes: readonly string[];
	/** what was written but found no use, in the words of the message */
	readonly unread: readonly string[];
	/** values for which the topic has no place, in the words of the message: what they are for has to be asked */
	readonly unplaced: readonly string[];
	/** phrases that say how the message is meant ("what about", "why", "size up") */
	readonly said: readonly Said[];
	/** the context with what the message itself says of region, units and language */
	readonly context: Context;
	/** another topic that fits about as well, where the choice is in doubt */
	readonly rival: string | null;
	/** true where the message changes the question before it */
	readonly followsUp: boolean;
	/** the message is longer than is read */
	readonly tooLong: boolean;
	/** nothing but friendly words */
	readonly smallTalk: boolean;
}

export interface ReadOptions {
	readonly context: Context;
	/** the topic where it is not for the text to say, as after /size */
	readonly topic?: string;
	readonly previous?: Previous | null;
}

/** Below these a message is not understood rather than guessed at. */
const leastScore = 1.6;
const leastWeight = 0.5;
/** A topic that is named in a message without figures is asked about from this weight on. */
const leastNamed = 1.1;

function isMeant({ score, weight, named, elements }: Weighed): boolean {
	// "what size battery": no figure in it, so that nothing but a question can come of it.
	const bare = elements.every(({ type }) => type === 'phrase' || type === 'unknown' || type === 'mark');
	if (bare && named && weight >= leastNamed) return true;
	return weight >= leastScore || (score >= leastScore && weight >= leastWeight);
}
/** A rival this near leaves the choice in doubt. */
const doubtfulShare = 0.9;
/** Where no word of the message asks for the best one, a rival further off is one too. */
const doubtfulUnnamed = 0.75;
/** A topic that holds another's answer is taken from this share on where it is named. */
const namedShare = 0.75;

/** Reads messages against the declared topics. Deterministic: the same message gives the same reading. */
export class Reader {
	readonly #topics: readonly AnyTopic[];
	readonly #vocabulary: Vocabulary;

	constructor(topics: readonly AnyTopic[] = allTopics) {
		this.#topics = topics;
		this.#vocabulary = new Vocabulary(topics);
	}

	read(message: string, options: ReadOptions): Reading {
		if (message.length > longestMessage) return { ...nothing(options.context), tooLong: true };
		const table = this.#tableOf(message, options.context);
		const anyTopic = table.elements(null);
		const context = contextOf(anyTopic, message, options.context);
		const said = saidIn(anyTopic);
		const ranked = options.topic === undefined ? rankTopics(table, this.#topics, message) : [];
		const forced = this.#topics.find((topic) => topic.name === options.topic);
		const previous = options.previous ?? null;
		const followed =
			previous === null ? undefined : this.#topics.find((topic) => topic.name === previous.topic);

		const weighed = widest(weigh(ranked, table, message, context));
		const best = weighed[0];
		const chosen =
			forced ??
			(followed !== undefined &&
			previous !== null &&
			this.#continues(table, message, followed, best, previous)
				? followed
				: undefined);
		const friendly = isSmallTalk(anyTopic, message);
		const topic =
			chosen ?? (best !== undefined && isMeant(best) && !isFriendly(message) ? best.topic : undefined);
		if (topic === undefined) {
			return {
				...nothing(context),
				said,
				smallTalk: friendly,
				unread: friendly ? [] : leftOver(anyTopic, new Set(), message),
			};
		}
		const own = weighed.find((one) => one.topic === topic);
		const elements = own?.elements ?? table.elements(topic.name);
		const read = own?.filled ?? fill(elements, topic, message, context);
		const filled = answerTo(read, elements, topic, previous, message, context);
		const followsUp = followed !== undefined && topic.name === followed.name;
		const rival = chosen === undefined ? rivalOf(weighed) : null;
		const notes = [...filled.notes, ...takenIn(elements, filled, message)];
		const unread = leftOver(elements, filled.claimed, message, askingFor(anyTopic, topic.includes));
		const accounted = [
			...filled.given.map((one) => one.said),
			...filled.conflicts.flatMap(({ values }) => values.map((one) => one.said)),
			...notes,
			...unread,
		];
		return {
			topic: topic.name,
			given: followsUp && previous !== null ? merge(previous.given, filled.given) : filled.given,
			conflicts: filled.conflicts,
			notes,
			unread: [...unread, ...figuresLost(message, accounted)],
			unplaced: unplacedIn(elements, filled, message),
			said,
			context,
			rival,
			followsUp,
			tooLong: false,
			smallTalk: false,
		};
	}

	#tableOf(message: string, { units }: Context): PhraseTable {
		const text = plain(message);
		const degrees = units === 'us' ? '°F' : '°C';
		const tokens = lex(text, message, this.#vocabulary.knows, { degrees });
		return new PhraseTable(tokens, this.#vocabulary, (name) => {
			const topic = this.#topics.find((one) => one.name === name);
			const whole = topic === undefined ? [] : wholeMarkings(topic.fields, message);
			return whole.length === 0 ? null : lex(text, message, this.#vocabulary.knows, { degrees, whole });
		});
	}

	/** What somebody typed into one input of a topic, or what is wrong with it. */
	readField(topic: AnyTopic, name: string, typed: string, context: Context): TypedValue {
		return readTyped(this.#vocabulary, topic, name, typed, context);
	}

	/** In a thread a message goes on with its topic unless it plainly asks for another, or is a whole question itself. */
	#continues(
		table: PhraseTable,
		message: string,
		followed: AnyTopic,
		best: Weighed | undefined,
		previous: Previous,
	): boolean {
		const { asked } = previous;
		const own = table.elements(followed.name);
		const any = table.elements(null);
		const filled = fill(own, followed, message, { region: 'us', units: 'us', language: 'en' });
		const fits = filled.given.length > 0;
		if (!fits && asked !== null && own.some((element) => element.type === 'number')) return true;
		if (!fits && own.some((element) => element.type === 'number')) {
			if (correctedCount(own, followed, previous, message) !== null) return true;
		}
		if (!fits) return saidIn(any).length > 0 && (best === undefined || !isMeant(best));
		if (best === undefined || best.topic.name === followed.name) return true;
		// Whole in itself under both: a question of its own, answered as if it stood alone.
		const figures = any.filter(({ type }) => type === 'quantity' || type === 'conductor').length;
		if (figures > 1 && best.complete && isMeant(best) && isComplete(followed, filled)) return false;
		const asksForOther = any.some(
			(element) =>
				element.type === 'phrase' &&
				element.meanings.some((meaning) => meaning.means === 'topic' && meaning.topic !== followed.name) &&
				!element.meanings.some((meaning) => 'topic' in meaning && meaning.topic === followed.name),
		);
		return !asksForOther;
	}
}

function nothing(context: Context): Reading {
	return {
		topic: null,
		given: [],
		conflicts: [],
		notes: [],
		unread: [],
		unplaced: [],
		said: [],
		context,
		rival: null,
		followsUp: false,
		tooLong: false,
		smallTalk: false,
	};
}

/** "15" after "How long is the run?" is fifteen of the usual unit. */
function answerTo(
	filled: Filled,
	elements: readonly Element[],
	topic: AnyTopic,
	previous: Previous | null,
	message: string,
	context: Context,
): Filled {
	const asked =
		previous?.topic === topic.name
			? (previous.asked ?? correctedCount(elements, topic, previous, message))
			: null;
	const field = asked === null ? undefined : topic.fields[asked];
	if (asked === null || field === undefined || filled.given.some((given) => given.name === asked))
		return filled;
	const numbers = elements.filter((element) => element.type === 'number' && !filled.claimed.has(element));
	const [only] = numbers;
	const reading = only === undefined || numbers.length > 1 ? null : readingFor(only, field, context);
	if (only === undefined || reading === null) return filled;
	return {
		...filled,
		given: [
			...filled.given,
			{ name: asked, value: reading.value, said: message.slice(only.start, only.end) },
		],
		notes: reading.note === null ? filled.notes : [...filled.notes, reading.note],
		claimed: new Set([...filled.claimed, only]),
	};
}

/** "no, son 3", "nein, 4": the one count that was given before is put right. */
function correctedCount(
	elements: readonly Element[],
	topic: AnyTopic,
	previous: Previous,
	message: string,
): string | null {
	if (!corrects.test(message)) return null;
	const says = (element: Element) =>
		element.type === 'quantity' ||
		element.type === 'conductor' ||
		(element.type === 'unknown' && !corrects.test(element.word));
	if (elements.some(says)) return null;
	const counts = previous.given.filter(({ name }) => topic.fields[name]?.type.sort === 'count');
	return counts.length === 1 ? (counts[0]?.name ?? null) : null;
}

const corrects =
	/^\W*(?:no|nope|nein|nee?|sorry|sry|wait|actually|perd[oó]n|quatsch|halt|doch|son|es sind)\b/iu;

function unplacedIn(elements: readonly Element[], { claimed, uncounted }: Filled, message: string): string[] {
	const left = elements
		.filter(({ type }) => type === 'quantity' || type === 'conductor' || type === 'number')
		.filter((element) => !claimed.has(element))
		.map(({ start, end }) => message.slice(start, end));
	return [...left, ...uncounted];
}

/** What was taken for words without a figure. */
function takenIn(elements: readonly Element[], { claimed }: Filled, message: string): string[] {
	return elements.flatMap((element) =>
		element.type === 'quantity' && element.taken !== undefined && claimed.has(element)
			? `"${message.slice(element.start, element.end)}" is taken as ${element.taken}.`
			: [],
	);
}

/** Newly said values replace those from before. */
function merge(before: readonly Given[], now: readonly Given[]): Given[] {
	const names = new Set(now.map((given) => given.name));
	// Power and current name the same thing: the newer one stands alone.
	if (names.has('currentA')) names.add('powerW');
	if (names.has('powerW')) names.add('currentA');
	// Another load draws another current: "same for the water pump" keeps voltage and length, never the old current.
	const loadIn = (given: readonly Given[]) => given.find(({ name }) => name === 'load')?.value;
	if (names.has('load') && loadIn(now) !== loadIn(before)) {
		for (const name of ['currentA', 'powerW', 'efficiency', 'motor', 'continuous', 'critical'])
			names.add(name);
	}
	const merged = now.map((given) => {
		const old = before.find((one) => one.name === given.name);
		return old !== undefined && Array.isArray(old.value) && Array.isArray(given.value)
			? { ...given, value: mergeItems(old.value, given.value) }
			: given;
	});
	return [...before.filter((given) => !names.has(given.name)), ...merged];
}

type Item = Record<string, unknown>;

/** "and a fan 20 W" adds to a list; a thing of a known name is changed; a nameless value completes an only thing. */
function mergeItems(before: readonly Item[], now: readonly Item[]): Item[] {
	const items = [...before];
	for (const item of now) {
		const same = items.findIndex((one) => one.name === item.name);
		const only = item.name === undefined && items.length === 1 ? 0 : -1;
		const at = item.name === undefined ? only : same;
		if (at < 0) items.push(item);
		else items[at] = { ...items[at], ...item };
	}
	return items;
}

/**
 * Where a topic whose answer holds the best one's fits about as well, it is the one meant; so too where both are asked
 * for by name and the best could not be answered anyway: "wire and fuse for the charger, 20 ft".
 */
function widest(weighed: readonly Weighed[]): readonly Weighed[] {
	const [best, ...others] = weighed;
	if (best === undefined) return weighed;
	const fitsAsWell = (one: Weighed) =>
		one.complete &&
		one.weight >= best.weight * (one.named ? namedShare : doubtfulShare) &&
		// What it must not do is to leave out what the narrower one has a place for ("fuse for 1000 W on 4 AWG").
		leftWeight(one) <= leftWeight(best);
	const wider = others.find(
		(one) =>
			one.topic.includes.includes(best.topic.name) &&
			(fitsAsWell(one) ||
				(isMeant(one) && !best.complete && one.weight >= best.weight * namedShare && isAskedFor(one, best))),
	);
	return wider === undefined ? weighed : [wider, ...weighed.filter((one) => one !== wider)];
}

/** The words that ask for one of these topics. */
function askingFor(elements: readonly Element[], names: readonly string[]): Element[] {
	return elements.filter((element) =>
		names.some((name) => meaningsFor(element, name).some(({ means }) => means === 'topic')),
	);
}

/** A word of the message asks for this topic, and not for the other as well. */
function isAskedFor({ topic, elements }: Weighed, other: Weighed): boolean {
	const asks = (element: Element, name: string) =>
		meaningsFor(element, name).some(({ means }) => means === 'topic');
	return elements.some((element) => asks(element, topic.name) && !asks(element, other.topic.name));
}

/** Another topic that the message fits about as well, and that could be answered: then the choice is the asker's. */
function rivalOf(weighed: readonly Weighed[]): string | null {
	const [best, second] = weighed;
	if (best === undefined || second === undefined || !isMeant(best) || !second.complete) return null;
	if (best.topic.includes.includes(second.topic.name)) return null;
	if (second.topic.notFor.includes(best.topic.name)) return null;
	return second.weight >= best.weight * (best.named ? doubtfulShare : doubtfulUnnamed)
		? second.topic.name
		: null;
}

function saidIn(elements: readonly Element[]): Said[] {
	const said = elements.flatMap((element) =>
		element.type === 'phrase'
			? element.meanings.flatMap((meaning) => (meaning.means === 'said' ? [meaning.what as Said] : []))
			: [],
	);
	return [...new Set(said)];
}

const greetings =
	/^(?:hi|hello|hey|yo|thanks|thank you|thx|cheers|good (?:morning|evening|night)|morning|ok|okay|cool|great|nice|hola|gracias|buenos días|hallo|danke|moin|lol|👍|🙏)\b/u;

const friendly: ReadonlySet<string> = new Set(
	'ok okay cool great nice perfect thanks thank thx you so much mate team guys all good cheers hi hello hey yo morning bud buddy awesome super danke gracias hola hallo moin perfecto vale genial klasse prima'.split(
		' ',
	),
);

/** Nothing but friendly words: "ok cool". */
function isFriendly(message: string): boolean {
	const words = message.toLowerCase().match(/[\p{L}\p{N}']+/gu) ?? [];
	return words.length > 0 && words.every((word) => friendly.has(word));
}

function isSmallTalk(elements: readonly Element[], message: string): boolean {
	const text = message.trim().toLowerCase();
	if (text === '') return false;
	if (
		elements.some(
			(element) => element.type === 'quantity' || element.type === 'number' || element.type === 'conductor',
		)
	)
		return false;
	return greetings.test(text) || isFriendly(message) || (!/[\p{L}\p{N}]/u.test(text) && text.length <= 12);
}
