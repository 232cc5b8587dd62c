import type { Element } from '../elements.js';
import { type Span, type Text, textOf } from './text.js';
import { joins } from './words.js';

/** A stretch of the text between commas, stops, lines and "and" or "with". */
export interface Clause extends Span {
	readonly elements: readonly Element[];
	/** the word or mark it begins with, or null for the first */
	readonly joiner: string | null;
	/** first clause of its line */
	readonly beginsLine: boolean;
	readonly line: number;
	readonly sentence: number;
}

export function clausesOf(text: Text): Clause[] {
	const clauses: Clause[] = [];
	let elements: Element[] = [];
	let joiner: string | null = null;
	let line = 0;
	let sentence = 0;
	let beginsLine = true;
	const close = (next: string) => {
		const [first] = elements;
		const last = elements.at(-1);
		if (first !== undefined && last !== undefined) {
			clauses.push({ elements, joiner, line, sentence, beginsLine, start: first.start, end: last.end });
			beginsLine = false;
			elements = [];
			joiner = next;
		} else if (joiner === null || !joins.has(joiner)) joiner = next;
	};
	for (const [index, element] of text.elements(null).entries()) {
		const word = textOf(element);
		if (isBreak(element, index, text)) {
			close(word);
			if (word === '\n') {
				line += 1;
				beginsLine = true;
			}
			if (/[.!?\n]/.test(word)) sentence += 1;
		} else if (isJoin(element)) close(word === '&' || word === '+' ? 'and' : word);
		else elements.push(element);
	}
	close('');
	return clauses;
}

function isJoin(element: Element): boolean {
	if (element.type === 'mark') return element.mark === '&' || element.mark === '+';
	return (element.type === 'phrase' || element.type === 'unknown') && joins.has(textOf(element));
}

function isBreak(element: Element, index: number, text: Text): boolean {
	if (element.type !== 'mark') return false;
	if (/[,;\n|.!?()•·]/.test(element.mark)) return true;
	if (element.mark !== '-' && element.mark !== '/') return false;
	// A dash or a slash between blanks parts; within a word or a marking it does not.
	const around = text.message.slice(element.start - 1, element.end + 1);
	return index > 0 && /^\s.\s$/.test(around);
}
