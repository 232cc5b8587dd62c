import type { Token } from './lex.js';
import type { Meaning, Vocabulary } from './vocabulary.js';

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
	| { readonly type: 'unknown'; readonly word: string; readonly start: number; readonly end: number };

/** Joins words to the longest phrases of the vocabulary; a hyphen or slash between two words does not part them. */
export function toElements(tokens: readonly Token[], vocabulary: Vocabulary): Element[] {
	const elements: Element[] = [];
	let at = 0;
	while (at < tokens.length) {
		const token = tokens[at] as Token;
		if (token.type !== 'word') {
			elements.push(token);
			at += 1;
			continue;
		}
		const run = wordRun(tokens, at);
		const match = vocabulary.match(
			run.map(({ word }) => word),
			0,
		);
		if (match === null) {
			elements.push({ type: 'unknown', word: token.word, start: token.start, end: token.end });
			at += 1;
			continue;
		}
		const last = run[match.length - 1] as WordAt;
		elements.push({
			type: 'phrase',
			phrase: match.phrase,
			meanings: match.meanings,
			corrected: match.corrected,
			start: token.start,
			end: last.end,
		});
		at = last.index + 1;
	}
	return elements;
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
export function meaningsFor(
	element: Element,
	topic: string,
): Exclude<Meaning, { means: 'filler' | 'month' | 'said' }>[] {
	if (element.type !== 'phrase') return [];
	return element.meanings.filter(
		(meaning): meaning is Exclude<Meaning, { means: 'filler' | 'month' | 'said' }> =>
			'topic' in meaning && meaning.topic === topic,
	);
}

export function isFiller(element: Element): boolean {
	return element.type === 'phrase' && element.meanings.some((meaning) => meaning.means === 'filler');
}

export function isBreak(element: Element): boolean {
	return element.type === 'mark' && /[,;\n|]/.test(element.mark);
}
