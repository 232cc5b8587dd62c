import type { Context } from '@lugbook/core';
import { type Element, isFiller, meaningsFor } from '../elements.js';
import type { Given } from '../fill.js';
import { contextOf } from '../message-context.js';
import { type Clause, clausesOf } from './clauses.js';
import { attachmentsOf, type Head, headsOf } from './heads.js';
import { impliedKinds } from './implied.js';
import { type PlaceNamed, placeNamed } from './place.js';
import { shared } from './share.js';
import { subjectOf } from './subjects.js';
import { take } from './take.js';
import { kindsNamed, kindsServed, type Span, Text, textOf } from './text.js';
import {
	affirmations,
	alternatives,
	belongings,
	both,
	definite,
	indefinite,
	joins,
	narrative,
	negations,
	outlets,
	states,
	weak,
} from './words.js';

/** Longest description that is read [UTF-16 units]; some 500 words. */
export const longestDescription = 4000;

/** One piece of equipment as it was told. */
export interface Mention {
	readonly kind: string;
	readonly status: 'present' | 'absent' | 'unsure';
	readonly given: readonly Given[];
	/** the words it was read from */
	readonly said: string;
	/** named as a new one or as one spoken of before */
	readonly article: Head['article'];
	/** only pointed at by another piece: "runs off the inverter" */
	readonly isPointed: boolean;
}

export interface Description {
	readonly mentions: readonly Mention[];
	readonly notes: readonly string[];
	/** what was written but found no use, in the words of the text */
	readonly unread: readonly string[];
	readonly context: Context;
	readonly tooLong: boolean;
}

/** Reads a paragraph or a list as the equipment of a van. Deterministic. */
export function describe(message: string, base: Context): Description {
	if (message.length > longestDescription) {
		return { mentions: [], notes: [], unread: [], context: base, tooLong: true };
	}
	const text = new Text(message);
	const context = contextOf(text.elements(null), message, base);
	return new Describer(text, context).run();
}

interface Draft {
	readonly kind: string;
	readonly spans: Span[];
	readonly status: Mention['status'];
	readonly article: Head['article'];
	readonly isPointed: boolean;
	/** its line lists fuses: currents in it are ratings */
	readonly fuses: boolean;
	readonly head: Element | null;
}

class Describer {
	readonly #text: Text;
	readonly #context: Context;
	readonly #drafts: Draft[] = [];
	readonly #used: Span[] = [];
	readonly #notes: string[] = [];
	/** the piece that a clause without a word of its own belongs to */
	#current: Draft | null = null;
	#fuseLine = -1;
	/** the piece pointed at by the last words before */
	#tail: Draft | null = null;

	constructor(text: Text, context: Context) {
		this.#text = text;
		this.#context = context;
	}

	run(): Description {
		const place = placeNamed(this.#text, this.#context);
		if (place !== null) {
			this.#used.push(...place.spans);
			this.#notes.push(...place.notes);
		}
		const clauses = clausesOf(this.#text).flatMap((clause) => outside(clause, place?.spans ?? []));
		this.#carryNegation(clauses);
		for (const clause of clauses) {
			this.#read(clause);
			this.#readCold(clause);
		}
		const mentions = this.#burningGas(this.#drafts.flatMap((draft) => this.#mention(draft)));
		return {
			mentions: place === null ? mentions : withPlace(mentions, place),
			notes: this.#notes,
			unread: this.#unread(),
			context: this.#context,
			tooLong: false,
		};
	}

	/** Where bottles of gas are told of, a cooktop of which nothing else was said burns it. */
	#burningGas(mentions: readonly Mention[]): Mention[] {
		const bottle = mentions.find(({ kind, status }) => kind === 'propane' && status === 'present');
		return mentions.map((mention) => {
			const { kind, status, given } = mention;
			const isOpen =
				kind === 'cooktop' &&
				status === 'present' &&
				!given.some(({ name }) => ['fuel', 'powerW', 'currentA', 'voltageV'].includes(name));
			if (bottle === undefined || !isOpen) return mention;
			this.#notes.push('The cooktop is taken to burn the gas of the bottle.');
			return { ...mention, given: [...given, { name: 'fuel', value: 'gas', said: bottle.said }] };
		});
	}

	/** "no inverter, shore power or generator": a list that ends in "or" is denied as a whole. */
	readonly #alsoDenied = new Set<Clause>();
	#carryNegation(clauses: readonly Clause[]): void {
		for (const [index, clause] of clauses.entries()) {
			if (!headsOf(clause, this.#text).some(({ status }) => status === 'absent')) continue;
			const members: Clause[] = [];
			for (const next of clauses.slice(index + 1)) {
				const isListed = next.sentence === clause.sentence && headsOf(next, this.#text).length > 0;
				const hasFigures = next.elements.some(({ type }) => type === 'quantity');
				if (!isListed || hasFigures || next.elements.some((one) => negations.has(textOf(one)))) break;
				members.push(next);
				if (next.elements.some((one) => alternatives.has(textOf(one)))) {
					for (const member of members) this.#alsoDenied.add(member);
					break;
				}
			}
		}
	}

	#read(clause: Clause): void {
		this.#noteFuseLine(clause);
		const all = this.#headsOf(clause);
		this.#use(all.map(({ element }) => element));
		const own = all.filter((head) => !head.isPointed);
		const pointed = all.filter((head) => head.isPointed);
		for (const head of pointed) this.#pointAt(head);
		const current = this.#current;
		const [first] = own;
		const isAttribute = first !== undefined && this.#isAttribute(first, clause);
		const main = isAttribute ? own.slice(1) : own;
		if (main.length === 0) {
			const isTold = this.#headless(clause);
			const only = pointed.length === 1 ? this.#drafts.at(-1) : undefined;
			// "water is carried in jerry cans": nothing else is spoken of here.
			if (!isTold && only?.isPointed === true) this.#current = only;
		} else {
			const before =
				current === null
					? null
					: {
							gain: (span: Span) => this.#gain(current, span),
							takesFigures: isAttribute || (clause.joiner !== null && belongings.has(clause.joiner)),
						};
			for (const { head, kind, span } of shared(this.#text, clause, main, before, this.#context)) {
				if (head === null) current?.spans.push(span);
				else this.#begin(kind, span, head, clause);
			}
		}
		// "from the alternator with 180 A": what follows belongs to what was pointed at last.
		const last = pointed.at(-1);
		const isLast = last !== undefined && clause.elements.slice(last.at + 1).every((one) => isFiller(one));
		this.#tail = isLast ? (this.#drafts.findLast(({ kind }) => last.kinds.includes(kind)) ?? null) : null;
	}

	/** The heads of a clause, less those that only look so, with what a list denies denied. */
	#headsOf(clause: Clause): Head[] {
		const heads = headsOf(clause, this.#text);
		const isDenied = this.#alsoDenied.has(clause);
		const [first] = heads;
		return heads
			.filter((head) => head.status === 'absent' || !this.#isWeak(head, clause))
			.filter((head, index, kept) => !this.#isSame(head, kept[index - 1], clause))
			.filter((head, index, kept) => !isOfCombined(head, kept[index - 1]))
			.map((head): Head => {
				const inList = clause.elements.slice(0, head.at).some((one) => alternatives.has(textOf(one)));
				const follows = inList && first?.status === 'absent';
				return isDenied || follows ? { ...head, status: 'absent' } : head;
			});
	}

	/** "the heater is a diesel heater", "a class T main fuse": one thing named twice. */
	#isSame(head: Head, before: Head | undefined, clause: Clause): boolean {
		if (before === undefined || !head.kinds.some((kind) => before.kinds.includes(kind))) return false;
		if (head.kinds.includes('people') || head.article === 'another') return false;
		const between = clause.elements.slice(before.at + 1, head.at);
		if (between.some((one) => /^(?:is|are|es|son|ist|sind)$/.test(textOf(one)))) return true;
		const isNewOne = between.some(
			(one) => one.type === 'number' || indefinite.has(textOf(one)) || definite.has(textOf(one)),
		);
		const figures = between.filter((one) => one.type === 'quantity');
		// "a PWM 30 A controller" is one, "100 W panel 50 W panel" are two.
		const ahead = clause.elements.slice(0, before.at).findLast((one) => !isFiller(one))?.type === 'quantity';
		return !isNewOne && figures.length <= (ahead ? 0 : 1) && figures.every((one) => one.count === null);
	}

	/** What another piece points at is aboard, whether or not more is told of it. */
	#pointAt(head: Head): void {
		const [kind] = head.kinds;
		if (kind === undefined || this.#isKnown(head) || head.status !== 'present') return;
		const { start, end } = head.element;
		this.#drafts.push({
			kind,
			spans: [{ start, end }],
			status: 'present',
			article: null,
			isPointed: true,
			fuses: false,
			head: head.element,
		});
	}

	#begin(kind: string, span: Span, head: Head, clause: Clause): void {
		const known = this.#drafts.find((draft) => draft.kind === kind && draft.status === 'present');
		if (known !== undefined && subjectOf(kind).single && head.status === 'present') {
			known.spans.push(span);
			this.#current = known;
			return;
		}
		const draft: Draft = {
			kind,
			spans: [span],
			status: head.status,
			article: head.article,
			isPointed: head.isPointed,
			fuses: this.#fuseLine === clause.line && !['fuse-block', 'main-fuse'].includes(kind),
			head: head.element,
		};
		this.#drafts.push(draft);
		if (head.status === 'present') this.#current = draft;
		else this.#current = null;
	}

	/** "Fuses: fridge 10 A, pump 10 A". */
	#noteFuseLine(clause: Clause): void {
		if (!clause.beginsLine) return;
		const [first, second] = clause.elements;
		const isHeading = second?.type === 'mark' && second.mark === ':';
		if (first !== undefined && isHeading && kindsNamed(first).some((kind) => /^fuse/.test(kind))) {
			this.#fuseLine = clause.line;
		}
	}

	/** "20 gal gray" names a tank, "gray cabinets" does not: some words count only beside a figure of theirs. */
	#isWeak(head: Head, clause: Clause): boolean {
		if (!weak.has(textOf(head.element))) return false;
		const next = clause.elements[head.at + 1];
		const answer = next?.type === 'mark' ? clause.elements[head.at + 2] : next;
		if (answer !== undefined && affirmations.has(textOf(answer))) return false;
		if (head.kinds.includes('bed') && isListed(head, clause)) return false;
		return !head.kinds.some((kind) => {
			const { given, claimed } = take(this.#text, kind, [clause], this.#context);
			const hasFigure = [...claimed].some((one) => one.type === 'quantity' || one.type === 'number');
			return hasFigure || (given.length > 0 && ['trip', 'insulation', 'shower', 'lift'].includes(kind));
		});
	}

	/** "winters in the hills, down to -20 F": a cold that no piece takes is that of the place. */
	#readCold(clause: Clause): void {
		const isTaken = (element: Element) =>
			this.#drafts.some(
				({ kind, spans }) =>
					spans.some(({ start, end }) => start <= element.start && element.end <= end) &&
					[...take(this.#text, kind, spans, this.#context).claimed].some(
						({ start }) => start === element.start,
					),
			);
		for (const element of clause.elements) {
			if (element.type !== 'quantity') continue;
			const isCold = element.readings.some(({ kind, value }) => kind === 'temperature' && value <= 5);
			if (!isCold || isTaken(element)) continue;
			const { start, end } = element;
			const known = this.#drafts.find(({ kind, status }) => kind === 'place' && status === 'present');
			if (known !== undefined) known.spans.push({ start, end });
			else {
				const current = this.#current;
				this.#begin('place', { start, end }, plainHead, clause);
				this.#current = current;
			}
		}
	}

	#isKnown(head: Head): boolean {
		return this.#drafts.some(({ kind, status }) => status === 'present' && head.kinds.includes(kind));
	}

	/** "with a 100 A charger" after an inverter says something of the inverter. */
	#isAttribute(head: Head, clause: Clause): boolean {
		const current = this.#current;
		if (current === null || head.status !== 'present' || head.kinds.includes(current.kind)) return false;
		if (clause.joiner === null || !belongings.has(clause.joiner)) return false;
		return meaningsFor(head.element, current.kind).some(
			(one) => one.means === 'alias' || one.means === 'flag',
		);
	}

	/** A clause without a word of its own: goes with the piece before it, or its figures say what it is. */
	#headless(clause: Clause): boolean {
		const attached = attachmentsOf(clause);
		const says = clause.elements.some(
			(one) => one.type === 'quantity' || one.type === 'conductor' || kindsServed(one).length > 0,
		);
		// "120 V outlets" says nothing of the stove before.
		const isOther =
			this.#current?.kind !== 'shore-inlet' && clause.elements.some((one) => outlets.has(textOf(one)));
		if (isOther) return false;
		if (!says && attached.length === 0 && !isProduct(clause, this.#text)) return false;
		const [attachment] = attached;
		if (attachment?.kind === 'fuse' && isOfBank(clause)) {
			this.#begin('main-fuse', clause, { ...plainHead, element: attachment.element }, clause);
			return true;
		}
		if (this.#tail !== null && clause.joiner !== null && belongings.has(clause.joiner)) {
			if (this.#gain(this.#tail, clause) > 0) {
				this.#tail.spans.push(clause);
				return true;
			}
		}
		const current = this.#current;
		const gain = current === null ? 0 : this.#gain(current, clause);
		const [best] = impliedKinds(clause.elements)
			.filter((kind) => kind !== current?.kind)
			.map((kind) => ({ kind, gain: this.#gainOf(kind, clause) }))
			.toSorted((a, b) => b.gain - a.gain);
		// What fits the piece before goes there unless something else fits plainly better.
		if (best !== undefined && best.gain > (gain > 0 ? gain + 1 : 0)) {
			this.#begin(best.kind, clause, plainHead, clause);
			return true;
		}
		if (current !== null && gain > 0) {
			current.spans.push(clause);
			this.#alsoToOther(clause, current);
			return true;
		}
		if (attachment !== undefined && this.#gainOf(attachment.kind, clause) > 0) {
			this.#begin(attachment.kind, clause, { ...plainHead, element: attachment.element }, clause);
			return true;
		}
		return false;
	}

	/** "fresh 100 L, gray 90 L, both inside": said of the piece before as well. */
	#alsoToOther(clause: Clause, current: Draft): void {
		if (!clause.elements.some((one) => both.has(textOf(one)))) return;
		const other = this.#drafts[this.#drafts.indexOf(current) - 1];
		if (other?.status === 'present' && this.#gain(other, clause) > 0) other.spans.push(clause);
	}

	#gain(draft: Draft, clause: Span): number {
		const before = take(this.#text, draft.kind, draft.spans, this.#context);
		const after = take(this.#text, draft.kind, [...draft.spans, clause], this.#context);
		return after.score - before.score;
	}

	#gainOf(kind: string, clause: Span): number {
		const known = this.#drafts.findLast((draft) => draft.kind === kind && draft.status === 'present');
		if (known !== undefined && subjectOf(kind).single) return this.#gain(known, clause);
		return take(this.#text, kind, [clause], this.#context).score;
	}

	#mention(draft: Draft): Mention[] {
		const { kind, status, article, isPointed, spans } = draft;
		const taken = take(this.#text, kind, spans, this.#context);
		this.#use([...taken.claimed]);
		if (status === 'present') this.#notes.push(...taken.notes);
		const given = status === 'present' ? taken.given : [];
		const first = spans[0] as Span;
		const last = spans.at(-1) as Span;
		const said = this.#text.message.slice(first.start, last.end).trim();
		return [{ kind, status, given: draft.fuses ? asFuse(given) : given, said, article, isPointed }];
	}

	#use(elements: readonly Element[]): void {
		for (const { start, end } of elements) this.#used.push({ start, end });
	}

	/** Neighbouring words that found no use and are not the small talk of descriptions. */
	#unread(): string[] {
		const left: Span[] = [];
		for (const element of this.#text.elements(null)) {
			if (element.type === 'mark' || this.#isSmallTalk(element)) continue;
			if (this.#used.some(({ start, end }) => element.start < end && element.end > start)) continue;
			const last = left.at(-1);
			const between = last === undefined ? null : this.#text.message.slice(last.end, element.start);
			if (last !== undefined && between !== null && /^[\s-]*$/.test(between)) {
				left[left.length - 1] = { start: last.start, end: element.end };
			} else left.push({ start: element.start, end: element.end });
		}
		return left.map((span) => this.#text.slice(span));
	}

	#isSmallTalk(element: Element): boolean {
		const word = textOf(element);
		if (
			joins.has(word) ||
			negations.has(word) ||
			narrative.has(word) ||
			states.has(word) ||
			both.has(word) ||
			isFiller(element)
		)
			return true;
		return element.type === 'phrase' && element.meanings.some((meaning) => meaning.means === 'said');
	}
}

/** "a bed", "bed for two" as a member of a list: it begins its clause, and nothing else is named. */
function isListed(head: Head, clause: Clause): boolean {
	const before = clause.elements.slice(0, head.at);
	const after = clause.elements.slice(head.at + 1);
	const isSmall = (one: Element) =>
		one.type === 'number' || isFiller(one) || indefinite.has(textOf(one)) || definite.has(textOf(one));
	return before.every(isSmall) && after.every((one) => kindsNamed(one).length === 0);
}

/** "the inverter-charger has a 120 A charger in it": its own, not another. */
function isOfCombined(head: Head, before: Head | undefined): boolean {
	if (before === undefined || !head.kinds.includes('charger') || head.article === 'another') return false;
	return before.kinds.includes('inverter') && /charger|cargador|ladeger/.test(textOf(before.element));
}

/** "a strip fuse at the battery", "250 A main": the fuse of the bank. */
function isOfBank(clause: Clause): boolean {
	return clause.elements.some(
		(one, at) =>
			/^mains?$/.test(textOf(one)) ||
			(kindsNamed(one).includes('battery') &&
				clause.elements
					.slice(Math.max(0, at - 2), at)
					.some((before) => /^(?:on|at|an|der|en|de)$/.test(textOf(before)))),
	);
}

/** "(2 x 230)" after a figure. */
function isProduct({ elements }: Clause, text: Text): boolean {
	return elements.some(
		(one, at) =>
			one.type === 'number' &&
			elements[at + 2]?.type === 'number' &&
			/^[x*]$/i.test(text.slice(elements[at + 1] as Element)),
	);
}

const plainHead: Head = {
	at: 0,
	element: { type: 'mark', mark: '', start: 0, end: 0 },
	kinds: [],
	status: 'present',
	isPointed: false,
	article: null,
};

/** A current in a list of fuses is a rating. */
function asFuse(given: readonly Given[]): readonly Given[] {
	if (given.some(({ name }) => name === 'fuseA')) return given;
	return given.map((one) =>
		/^(?:currentA|chargeA|ratingA|chargerA)$/.test(one.name) ? { ...one, name: 'fuseA' } : one,
	);
}

/** The parts of a clause that no place name covers. */
function outside(clause: Clause, spans: readonly Span[]): Clause[] {
	const elements = clause.elements.filter(
		(element) => !spans.some(({ start, end }) => element.start < end && element.end > start),
	);
	return elements.length === 0 ? [] : [{ ...clause, elements }];
}

function withPlace(mentions: readonly Mention[], place: PlaceNamed): Mention[] {
	const own = mentions.find(({ kind, status }) => kind === 'place' && status === 'present');
	const given = [...place.given, ...(own?.given.filter(({ name }) => name !== 'place') ?? [])];
	const said = place.said;
	const mention: Mention = { kind: 'place', status: 'present', given, said, article: null, isPointed: false };
	return [...mentions.filter((one) => one !== own), mention];
}
