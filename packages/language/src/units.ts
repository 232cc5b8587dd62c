import { type KindName, kindNames, unitsOf } from '@lugbook/core';

/** One way of writing a unit: the kinds it may stand for. */
interface UnitWord {
	readonly word: string;
	readonly kinds: readonly { readonly kind: KindName; readonly symbol: string }[];
}

function collect(): ReadonlyMap<string, UnitWord> {
	const found = new Map<string, { word: string; kinds: { kind: KindName; symbol: string }[] }>();
	for (const kind of kindNames) {
		for (const unit of unitsOf(kind)) {
			for (const word of new Set([...unit.words, unit.symbol.toLowerCase()])) {
				if (unit.exact !== undefined && word === unit.symbol.toLowerCase() && !unit.words.includes(word))
					continue;
				const entry = found.get(word) ?? { word, kinds: [] };
				entry.kinds.push({ kind, symbol: unit.symbol });
				found.set(word, entry);
			}
		}
	}
	return found;
}

const byWord = collect();
const longestWord = Math.max(...[...byWord.keys()].map((word) => word.length));

/** Units that are typed in one case only: "6in" yes, "6 in the van" no; "N", "K", "g" stand for too much else. */
const glued: readonly { readonly text: RegExp; readonly kind: KindName; readonly symbol: string }[] = [
	{ text: /^in(?![a-z])/, kind: 'length', symbol: 'in' },
	{ text: /^N(?![a-zA-Z/])/, kind: 'force', symbol: 'N' },
	{ text: /^K(?![a-zA-Z])/, kind: 'temperatureDifference', symbol: 'K' },
	{ text: /^g(?![a-z])/, kind: 'mass', symbol: 'g' },
];

export interface UnitMatch extends UnitWord {
	/** characters it takes */
	readonly length: number;
}

const letter = /[\p{L}]/u;

/**
 * The longest unit that stands at this place of the text, whole words only.
 * @param text the plain text
 * @param message the message as typed, for units that are told apart by case
 */
export function unitAt(text: string, message: string, at: number): UnitMatch | null {
	for (let length = Math.min(longestWord, text.length - at); length > 0; length -= 1) {
		const word = text.slice(at, at + length);
		const unit = byWord.get(word);
		if (unit === undefined) continue;
		const next = text[at + length];
		const last = word.at(-1) as string;
		if (letter.test(last) && next !== undefined && letter.test(next)) continue;
		// "4 LT265/70R17": a tire for light trucks, not litres.
		if (word === 'lt' && next !== undefined && /\d/.test(next)) continue;
		// "12 V AC": an air conditioner of 12 V; alternating current is never of so little.
		if (word.endsWith(' ac') && Number(/(\d+(?:\.\d+)?)\s*$/.exec(text.slice(0, at))?.[1]) < 60) continue;
		// "24 V DC-DC charger": the second DC belongs to the charger.
		if (word.endsWith('dc') && /^(?:[-/]| to )dc\b/.test(text.slice(at + length, at + length + 8))) continue;
		return { ...unit, length };
	}
	const rest = message.slice(at, at + 3);
	for (const one of glued) {
		const match = one.text.exec(rest);
		if (match !== null) {
			const word = match[0];
			const both = one.symbol === 'in' || one.symbol === 'N' ? sameUnit(one.kind, one.symbol) : [one];
			return { word, length: word.length, kinds: both };
		}
	}
	return null;
}

/** A unit that serves two kinds: an inch is a length and a thickness. */
function sameUnit(kind: KindName, symbol: string): { kind: KindName; symbol: string }[] {
	return symbol === 'in'
		? [
				{ kind, symbol },
				{ kind: 'thickness', symbol },
			]
		: [{ kind, symbol }];
}

/** A unit glued to more letters ("12vfridge"): the longest unit whose rest is a known word. */
export function unitPrefixAt(text: string, at: number, isWord: (word: string) => boolean): UnitMatch | null {
	const run = /^\p{L}+/u.exec(text.slice(at))?.[0] ?? '';
	for (let length = run.length - 2; length > 0; length -= 1) {
		const unit = byWord.get(run.slice(0, length));
		if (unit !== undefined && isWord(run.slice(length))) return { ...unit, length };
	}
	return null;
}
