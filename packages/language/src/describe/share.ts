import type { Context } from '@lugbook/core';
import { type Element, isFiller } from '../elements.js';
import type { Clause } from './clauses.js';
import type { Head } from './heads.js';
import { take } from './take.js';
import { type Span, type Text, textOf } from './text.js';
import { definite, indefinite } from './words.js';

/** The piece told of before, which a clause may go on about before it names the next one. */
export interface Before {
	/** how much better it is told of with a span more */
	readonly gain: (span: Span) => number;
	/** figures may belong to it too, as after "with" */
	readonly takesFigures: boolean;
}

export interface Share {
	/** null for the piece told of before */
	readonly head: Head | null;
	readonly kind: string;
	readonly span: Span;
}

/** What a figure counts right before its head, and right after it. */
const rightBefore = 0.6;
/** What a marking of two figures ("75/15") counts right before its head. */
const markedBefore = 1;
const rightAfter = 0.3;
/** What a value counts that stands on the side of its head on which the clause began. */
const usualSide = 0.4;

/**
 * Which words and figures of a clause belong to which of its heads: "200 Ah bank 2000 W inverter", "fridge 50 W pump
 * 7 A". Between two heads the text is cut where both parts fit their heads best.
 */
export function shared(
	text: Text,
	clause: Clause,
	heads: readonly Head[],
	before: Before | null,
	context: Context,
): Share[] {
	const { elements } = clause;
	const valuesFirst = isBeforeHead(elements, heads[0] as Head);
	/** scores by head and kind, for a span from one element to another */
	const best = (head: Head, from: number, to: number) => {
		const span = spanOf(elements, from, to);
		const side = elements.slice(from, to).filter((element, index) => {
			const isValue =
				element.type === 'quantity' || element.type === 'conductor' || element.type === 'number';
			return isValue && from + index < head.at === valuesFirst;
		}).length;
		const beside = nearness(text, elements, head, from, to);
		const kinds = head.kinds.map((kind) => ({ kind, score: take(text, kind, [span], context).score }));
		const [first, ...others] = kinds;
		if (first === undefined) throw new Error('a head that names nothing');
		const winner = others.reduce((a, b) => (b.score > a.score ? b : a), first);
		return { kind: winner.kind, span, score: winner.score + usualSide * side + beside };
	};

	// Row by row: for each head, the best way to have cut everything before it, by where its own part begins.
	let rows = [{ from: 0, score: 0, shares: [] as Share[] }, ...prefixes(elements, heads[0] as Head, before)];
	for (const [index, head] of heads.entries()) {
		const next = heads[index + 1];
		const cuts =
			next === undefined
				? [elements.length]
				: Array.from({ length: next.at - head.at }, (_, gap) => head.at + 1 + gap).filter(
						// "75/15" is one marking.
						(cut) => !isSlashed(text, elements[cut - 1], elements[cut]),
					);
		rows = cuts.map((cut) => {
			const ways = rows.map(({ from, score, shares }) => {
				const part = best(head, from, cut);
				const share: Share = { head, kind: part.kind, span: part.span };
				return { from: cut, score: score + part.score, shares: [...shares, share] };
			});
			return ways.reduce((a, b) => (b.score > a.score ? b : a));
		});
	}
	return rows.reduce((a, b) => (b.score > a.score ? b : a)).shares;
}

/** "150 A alternator" belongs together, whatever stands before. */
function nearness(text: Text, elements: readonly Element[], head: Head, from: number, to: number): number {
	const isFigure = (at: number) => {
		const type = at < from || at >= to ? undefined : elements[at]?.type;
		return type === 'quantity' || type === 'conductor';
	};
	const isMarked = head.at - 2 >= from && isSlashed(text, elements[head.at - 2], elements[head.at - 1]);
	return (
		(isMarked ? markedBefore : 0) +
		(isFigure(head.at - 1) ? rightBefore : 0) +
		(isFigure(head.at + 1) ? rightAfter : 0)
	);
}

/** The ways in which the clause may begin with something of the piece before. */
function prefixes(elements: readonly Element[], first: Head, before: Before | null) {
	if (before === null) return [];
	return Array.from({ length: first.at }, (_, index) => index + 1).flatMap((cut) => {
		const isFigure = ({ type }: Element) => type === 'quantity' || type === 'conductor' || type === 'number';
		if (!before.takesFigures && elements.slice(0, cut).some(isFigure)) return [];
		const span = spanOf(elements, 0, cut);
		// "with a 150 A main fuse": a figure right before the head is the head's own.
		const last = elements.slice(0, cut).findLastIndex(isFigure);
		if (last >= 0 && elements.slice(last + 1, first.at).every(isSmall)) return [];
		const gain = before.gain(span);
		return gain <= 0 ? [] : [{ from: cut, score: gain, shares: [{ head: null, kind: '', span }] as Share[] }];
	});
}

/** True between the two figures of a marking, which stand with nothing but a slash between them. */
function isSlashed(text: Text, before: Element | undefined, after: Element | undefined): boolean {
	if (before?.type !== 'quantity' || after?.type !== 'quantity') return false;
	return text.message.slice(before.end, after.start).trim() === '/';
}

function isSmall(element: Element): boolean {
	return isFiller(element) || indefinite.has(textOf(element)) || definite.has(textOf(element));
}

function spanOf(elements: readonly Element[], from: number, to: number): Span {
	const first = elements[from] as Element;
	const last = elements[to - 1] as Element;
	return { start: first.start, end: last.end };
}

/** True where the clause begins with a figure: then figures stand before what they belong to. */
function isBeforeHead(elements: readonly Element[], first: Head): boolean {
	return elements
		.slice(0, first.at)
		.some(({ type }) => type === 'quantity' || type === 'conductor' || type === 'number');
}
