import type { Token } from './lex.js';
import type { Meaning, PhraseMatch, Vocabulary } from './vocabulary.js';

/** A piece of the message after words have been joined to phrases. */
export type Element =
	| Exclude<Token, { type: 'word' }>
	| {
			readonly type: 'phrase';
			readonly phrase: string;
			readonly meanings: readonly Meaning[];
			readonly corrected: boolean;
			readonly start: number;
			readonly end: number;
	  }
	| {
			readonly type: 'unknown';
			readonly word: string;
			/** true where it is a value to another subject, and so is no name of a thing */
			readonly elsewhere: boolean;
			/** true where it asks for another subject and means nothing to this one */
			readonly asks: boolean;
			readonly start: number;
			readonly end: number;
	  };

/** The phrases that could begin at each word of a message: worked out once, then read for one topic after the other. */
export class PhraseTable {
	readonly #tokens: readonly Token[];
	readonly #vocabulary: Vocabulary;
	readonly #retold: (topic: string) => readonly Token[] | null;
	readonly #known = new Map<string, Element[]>();
	readonly #at = new Map<
		number,
		{ readonly run: readonly WordAt[]; readonly matches: readonly PhraseMatch[] }
	>();

	/**
	 * @param retold the tokens as one topic sees them, where its markings ("6061-T6") make a difference; else null
	 */
	constructor(
		tokens: readonly Token[],
		vocabulary: Vocabulary,
		retold: (topic: string) => readonly Token[] | null = () => null,
	) {
		this.#tokens = tokens;
		this.#vocabulary = vocabulary;
		this.#retold = retold;
		for (const [index, token] of tokens.entries()) {
			if (token.type !== 'word') continue;
			const run = wordRun(tokens, index);
			const words = run.map(({ word }) => word);
			this.#at.set(index, { run, matches: vocabulary.matches(words, 0) });
		}
	}

	/**
	 * The message as pieces. A phrase counts where it means something to the topic (null: to any); a hyphen or a slash
	 * between two words does not part them.
	 */
	elements(topic: string | null): Element[] {
		const key = topic ?? '';
		const known = this.#known.get(key);
		if (known !== undefined) return known;
		const own = topic === null ? null : this.#retold(topic);
		const elements =
			own === null ? this.#elements(topic) : new PhraseTable(own, this.#vocabulary).elements(topic);
		this.#known.set(key, elements);
		return elements;
	}

	/** "a gas stove": what the topic knows from a later word on reaches further than "a gas". */
	#outgrown(run: readonly WordAt[], whole: PhraseMatch, topic: string | null): boolean {
		return run.slice(1, whole.length).some(({ index }, skipped) => {
			const own = this.#at.get(index)?.matches.find((one) => concerns(one.meanings, topic));
			return own !== undefined && skipped + 1 + own.length > whole.length;
		});
	}

	#elements(topic: string | null): Element[] {
		const elements: Element[] = [];
		let index = 0;
		while (index < this.#tokens.length) {
			const token = this.#tokens[index] as Token;
			const place = this.#at.get(index);
			if (token.type !== 'word' || place === undefined) {
				elements.push(token as Exclude<Token, { type: 'word' }>);
				index += 1;
				continue;
			}
			const match = place.matches.find((one) => concerns(one.meanings, topic));
			const [longest] = place.matches;
			// "engine bay" is one value: a topic that knows but "engine" must not take half of it.
			const whole = longest !== undefined && longest !== match && isValue(longest, topic) ? longest : null;
			if (whole !== null && whole.length > (match?.length ?? 0) && !this.#outgrown(place.run, whole, topic)) {
				const last = place.run[whole.length - 1] as WordAt;
				elements.push({
					type: 'unknown',
					word: whole.phrase,
					elsewhere: true,
					asks: false,
					start: token.start,
					end: last.end,
				});
				index = last.index + 1;
				continue;
			}
			if (match === undefined) {
				elements.push({
					type: 'unknown',
					word: token.word,
					elsewhere: false,
					asks: place.matches.some(({ meanings }) => meanings.some(({ means }) => means === 'topic')),
					start: token.start,
					end: token.end,
				});
				index += 1;
				continue;
			}
			const last = place.run[match.length - 1] as WordAt;
			elements.push({
				type: 'phrase',
				phrase: match.phrase,
				meanings: match.meanings,
				corrected: match.corrected,
				start: token.start,
				end: last.end,
			});
			index = last.index + 1;
		}
		return elements;
	}
}

type TopicMeaning = Exclude<Meaning, { means: 'filler' | 'month' | 'said' }>;

interface ByTopic {
	readonly topics: ReadonlyMap<string, readonly TopicMeaning[]>;
	/** it means something whatever the topic */
	readonly always: boolean;
}

const byTopic = new WeakMap<readonly Meaning[], ByTopic>();

/** The meanings of a phrase by topic; worked out once a phrase. */
function sorted(meanings: readonly Meaning[]): ByTopic {
	const known = byTopic.get(meanings);
	if (known !== undefined) return known;
	const topics = new Map<string, TopicMeaning[]>();
	for (const meaning of meanings) {
		if ('topic' in meaning) topics.set(meaning.topic, [...(topics.get(meaning.topic) ?? []), meaning]);
	}
	const made = { topics, always: meanings.some((meaning) => !('topic' in meaning)) };
	byTopic.set(meanings, made);
	return made;
}

function concerns(meanings: readonly Meaning[], topic: string | null): boolean {
	if (topic === null) return true;
	const { topics, always } = sorted(meanings);
	return always || topics.has(topic);
}

/** A phrase of several words that is a value to some subject, written as it is. */
function isValue({ length, corrected, meanings }: PhraseMatch, topic: string | null): boolean {
	return (
		topic !== null &&
		length > 1 &&
		!corrected &&
		meanings.every(({ means }) => means === 'flag' || means === 'choice')
	);
}

interface WordAt {
	readonly word: string;
	readonly end: number;
	readonly index: number;
}

/** The words that follow each other from here, at most eight, parted by nothing but a hyphen or a slash. */
function wordRun(tokens: readonly Token[], from: number): WordAt[] {
	const run: WordAt[] = [];
	let index = from;
	while (run.length < 8) {
		const token = tokens[index];
		if (token?.type === 'word') {
			run.push({ word: token.word, end: token.end, index });
			index += 1;
		} else if (
			token?.type === 'mark' &&
			(token.mark === '-' || token.mark === '/') &&
			tokens[index + 1]?.type === 'word'
		) {
			index += 1;
		} else break;
	}
	return run;
}

/** What a phrase means within one topic. */
export function meaningsFor(element: Element, topic: string): readonly TopicMeaning[] {
	return element.type === 'phrase' ? (sorted(element.meanings).topics.get(topic) ?? none) : none;
}

const none: readonly TopicMeaning[] = [];

export function isFiller(element: Element): boolean {
	return element.type === 'phrase' && element.meanings.some((meaning) => meaning.means === 'filler');
}

export function isBreak(element: Element): boolean {
	return element.type === 'mark' && /[,;\n|]/.test(element.mark);
}
