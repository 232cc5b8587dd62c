import type { Element } from '../elements.js';
import { isFiller } from '../elements.js';
import type { Clause } from './clauses.js';
import { subjectOf } from './subjects.js';
import { kindsNamed, kindsServed, type Text, textOf } from './text.js';
import { another, definite, indefinite, later, negations, pointing, states, unsure } from './words.js';

/** A word that names a piece of equipment, and how it is meant. */
export interface Head {
	/** place in the clause */
	readonly at: number;
	readonly element: Element;
	readonly kinds: readonly string[];
	readonly status: 'present' | 'absent' | 'unsure';
	/** only pointed at: "runs off the inverter" */
	readonly isPointed: boolean;
	/** "a fridge", "another fridge": a new one; "the fridge": the one spoken of */
	readonly article: 'another' | 'indefinite' | 'definite' | null;
}

/** Kinds that are told of after a preposition: "for two people", "in winter". */
const circumstances: ReadonlySet<string> = new Set(['people', 'place', 'trip', 'insulation']);

/** The heads of a clause in their order. A fuse or a cable counts where nothing else is named. */
export function headsOf(clause: Clause, text: Text): Head[] {
	const raw = text.slice(clause).toLowerCase().replaceAll('’', "'");
	const named = clause.elements
		.map((element, at) => ({ element, at, kinds: kindsNamed(element) }))
		.filter(({ kinds }) => kinds.length > 0);
	const regular = named.flatMap((one) => {
		const kinds = one.kinds.filter((kind) => !subjectOf(kind).attaches);
		return kinds.length === 0 ? [] : [{ ...one, kinds }];
	});
	const placed = regular.map((one) => ({ ...one, isPointed: isPointedAt(clause.elements, one) }));
	const denied = deniedAmong(clause.elements, placed);
	const standing = placed.filter((head, index) => !isFuelOf(clause.elements, head, placed[index + 1]));
	return standing.map(({ element, at, kinds, isPointed }) => ({
		at,
		element,
		kinds,
		status: denied.has(at) || later.test(raw) ? 'absent' : unsure.test(raw) ? 'unsure' : 'present',
		isPointed,
		article: articleOf(clause.elements, at),
	}));
}

/** "propane 2 burner stove": what it burns, no bottle of it. */
function isFuelOf(elements: readonly Element[], head: PlacedHead, next: PlacedHead | undefined): boolean {
	const word = textOf(elements[head.at] as Element);
	if (
		!head.kinds.includes('propane') ||
		!/^(?:propane|butane|lpg|lp|propano|butano|propan|butan)$/.test(word)
	) {
		return false;
	}
	if (next === undefined || !next.kinds.some((kind) => fuelled.has(kind))) return false;
	return elements
		.slice(head.at + 1, next.at)
		.every(({ type }, index, all) => type === 'number' || (type === 'mark' && all.length > index + 1));
}

const fuelled: ReadonlySet<string> = new Set(['cooktop', 'heater', 'water-heater']);

/** Fuses and cables named where nothing else is. */
export function attachmentsOf(
	clause: Clause,
): readonly { readonly element: Element; readonly kind: string }[] {
	return clause.elements.flatMap((element) => {
		const kind = kindsNamed(element).find((one) => subjectOf(one).attaches);
		return kind === undefined ? [] : [{ element, kind }];
	});
}

interface PlacedHead {
	readonly at: number;
	readonly kinds: readonly string[];
	readonly isPointed: boolean;
}

/** Which heads are said not to be there: "no inverter", "no shore power or generator", "GFCI not fitted yet". */
function deniedAmong(elements: readonly Element[], heads: readonly PlacedHead[]): Set<number> {
	const denied = new Set<number>();
	for (const index of elements.keys()) {
		if (!isNegation(elements, index)) continue;
		const next = elements.findIndex((one, at) => at > index && !isSmall(one));
		if (heads.some(({ at }) => at === next)) {
			denied.add(next);
			continue;
		}
		const following = elements[next];
		// "not heated" denies a property, "not more than 100 A" a figure.
		if (following !== undefined && kindsServed(following).length > 0) continue;
		const before = heads.findLast(({ at, isPointed }) => at < index && !isPointed);
		// "alternator direct no" denies the property said last.
		const said = elements.slice(0, index).findLast(({ type }) => type !== 'mark');
		if (
			said !== undefined &&
			before !== undefined &&
			elements[before.at] !== said &&
			isProperty(said, before.kinds)
		) {
			continue;
		}
		const rest = elements.slice(index + 1);
		const endsHere = rest.every((one) => isSmall(one) || states.has(textOf(one)) || one.type === 'mark');
		// "CO alarm: none, because ..." needs nothing after it.
		const isNone = /^(?:none|ninguno|ninguna|keine|keiner|keins)$/.test(textOf(elements[index] as Element));
		if (before !== undefined && (endsHere || isNone)) denied.add(before.at);
	}
	return denied;
}

function isProperty(element: Element, kinds: readonly string[]): boolean {
	const isNamed = kindsNamed(element).some((kind) => kinds.includes(kind));
	return !isNamed && kindsServed(element).some((kind) => kinds.includes(kind));
}

/** "no", "without", and "don't have": the verb tells it from "don't want". */
function isNegation(elements: readonly Element[], index: number): boolean {
	const word = textOf(elements[index] as Element);
	if (negations.has(word)) return true;
	if (!/^(?:don't|doesn't|dont|doesnt|haven't|hasn't|won't|didn't)$/.test(word)) return false;
	const next = elements[index + 1];
	return next !== undefined && /^(?:have|has|need|carry|use|got|get|fit|install)$/.test(textOf(next));
}

function isSmall(element: Element): boolean {
	const word = textOf(element);
	return (
		definite.has(word) ||
		indefinite.has(word) ||
		/^(?:any|of|yet|hay|tiene|lleva|está|have|has|need|still|as|real|proper|even)$/.test(word) ||
		(element.type === 'mark' && /[-:"']/.test(element.mark)) ||
		(isFiller(element) && kindsServed(element).length === 0 && kindsNamed(element).length === 0)
	);
}

/** True where only an article stands between a preposition and the head, and no figure of its own follows. */
function isPointedAt(
	elements: readonly Element[],
	{ at, kinds }: { readonly at: number; readonly kinds: readonly string[] },
): boolean {
	if (kinds.some((kind) => circumstances.has(kind))) return false;
	let index = at - 1;
	const article = elements[index];
	if (article !== undefined && indefinite.has(textOf(article))) return false;
	if (article !== undefined && definite.has(textOf(article))) index -= 1;
	const preposition = elements[index];
	if (preposition === undefined || !pointing.has(textOf(preposition))) return false;
	for (const next of elements.slice(at + 1)) {
		if (kindsNamed(next).length > 0) return true;
		// "off the alternator, which is 180 A" tells of the alternator.
		if (next.type === 'quantity') return false;
	}
	return true;
}

function articleOf(elements: readonly Element[], at: number): Head['article'] {
	for (const element of elements.slice(Math.max(0, at - 4), at).toReversed()) {
		const word = textOf(element);
		if (another.has(word)) return 'another';
		if (definite.has(word)) return 'definite';
		if (indefinite.has(word)) return 'indefinite';
	}
	return null;
}
