import {
	type Change,
	type Context,
	changed,
	equipmentOf,
	freeId,
	labelOf,
	type Piece,
	settled,
	type Values,
	type Van,
} from '@lugbook/core';
import type { Description, Mention } from './describe.js';
import { countFieldOf } from './take.js';

export interface Told {
	readonly changes: readonly Change[];
	readonly notes: readonly string[];
	/** what a description left open: "CO alarm" */
	readonly unsure: readonly string[];
}

/**
 * How a text is meant: told for the first time; put right, so that it speaks of what is there and the newer figure
 * stands; or added, so that it speaks of new pieces.
 */
export type Telling = 'description' | 'correction' | 'addition';

/** The steps that bring a van to what a text tells. */
export function changesFor(van: Van, description: Description, telling: Telling = 'description'): Told {
	return new Teller(van, description.context, telling).run(description.mentions);
}

const ordinals: readonly RegExp[] = [
	/\b(?:first|1st|primer|primera|erste[rsn]?)\b/i,
	/\b(?:second|2nd|other|segund[oa]|zweite[rsn]?)\b/i,
	/\b(?:third|3rd|tercer|tercera|dritte[rsn]?)\b/i,
];

/** "the second fan": 2; 0 where none is counted. */
function ordinalIn(said: string): number {
	return ordinals.findIndex((ordinal) => ordinal.test(said)) + 1;
}

/** Kinds that say nothing by being named. */
const empty: ReadonlySet<string> = new Set(['van', 'people', 'place', 'trip', 'sink', 'furniture', 'cargo']);

/** "600 W, three 200 W panels": one of two figures is that of all together. */
function isTotal(piece: Piece, values: Values, countName: string | undefined, name: string): boolean {
	const before = piece.values[name];
	const now = values[name];
	if (countName === undefined || typeof before !== 'number' || typeof now !== 'number') return false;
	const many = values[countName] ?? piece.values[countName];
	if (typeof many !== 'number' || many < 2) return false;
	const whole = Math.max(before, now);
	return Math.abs(whole - many * Math.min(before, now)) <= 0.02 * whole;
}

class Teller {
	#van: Van;
	readonly #context: Context;
	readonly #changes: Change[] = [];
	readonly #notes: string[] = [];
	readonly #unsure = new Set<string>();
	/** pieces told of in this description: there the first figure stands, elsewhere the newer one */
	readonly #told = new Set<string>();
	/** pieces brought in as new ones: "a propane heater", "two fans" */
	readonly #new = new Set<string>();

	readonly #telling: Telling;

	constructor(van: Van, context: Context, telling: Telling) {
		this.#van = van;
		this.#context = context;
		this.#telling = telling;
	}

	run(mentions: readonly Mention[]): Told {
		// What is pointed at ("off the inverter") may be told of in full later on.
		const pointed = mentions.filter((mention) => mention.status === 'present' && mention.isPointed);
		for (const mention of mentions) {
			if (mention.status === 'present' && !mention.isPointed) this.#present(mention);
		}
		for (const mention of pointed) this.#present(mention);
		for (const { kind, status } of mentions) {
			if (status === 'absent') this.#absent(kind);
			if (status === 'unsure' && !this.#has(kind)) this.#unsure.add(equipmentOf(kind).label);
		}
		return { changes: this.#changes, notes: this.#notes, unsure: [...this.#unsure] };
	}

	/** "no inverter yet": put right, it takes away one that was told of. */
	#absent(kind: string): void {
		if (this.#telling === 'correction') {
			for (const piece of this.#van.pieces.filter((one) => one.kind === kind)) {
				this.#apply({ change: 'remove', id: piece.id });
			}
		}
		this.#apply({ change: 'absent', kind });
	}

	#has(kind: string): boolean {
		return this.#van.pieces.some((piece) => piece.kind === kind);
	}

	#apply(change: Change): void {
		const after = changed(this.#van, [change]);
		if (after === this.#van) return;
		this.#van = after;
		this.#changes.push(change);
	}

	#present(mention: Mention): void {
		const { kind } = mention;
		const read = Object.fromEntries(mention.given.map(({ name, value }) => [name, value]));
		const { values, refusals } = settled(kind, read as Values, this.#context);
		for (const { text, instead } of refusals) this.#notes.push(`${text} ${instead}`);
		// "the van" alone tells nothing; a heater, a fuse block or insulation does.
		if (Object.keys(values).length === 0 && empty.has(kind)) return;
		const same = this.#piecesLike(kind, values);
		const meant = this.#meant(mention, values, same);
		if (meant === null) {
			const id = freeId(this.#van, kind, typeof values.name === 'string' ? values.name : null);
			this.#told.add(id);
			if (mention.article === 'indefinite') this.#new.add(id);
			this.#apply({ change: 'add', id, kind, values });
			return;
		}
		this.#set(meant, values);
		this.#told.add(meant.id);
	}

	/** Pieces of the kind; of appliances and cargo those of the name. */
	#piecesLike(kind: string, values: Values): Piece[] {
		return this.#van.pieces.filter(
			(piece) =>
				piece.kind === kind &&
				(values.name === undefined || piece.values.name === undefined || piece.values.name === values.name),
		);
	}

	/** The piece a mention speaks of, or null where it names a new one. */
	#meant(mention: Mention, values: Values, same: readonly Piece[]): Piece | null {
		const last = same.at(-1);
		if (last === undefined) return null;
		if (equipmentOf(mention.kind).single) return last;
		if (this.#telling === 'addition') return null;
		if (this.#telling === 'correction') return same[ordinalIn(mention.said) - 1] ?? last;
		if (mention.article === 'another') return null;
		if (Object.keys(values).length === 0) return last;
		const countName = countFieldOf(mention.kind)?.[0];
		const isCounted = countName !== undefined && values[countName] !== undefined;
		const clash = (piece: Piece) =>
			Object.entries(values).some(([name, value]) => {
				const before = piece.values[name];
				if (before === undefined || before === value || isTotal(piece, values, countName, name)) return false;
				// "the fan" after one roof fan is that fan, whatever its words lack; a figure corrects what was told earlier.
				const isCorrection = typeof value !== 'number' || !this.#told.has(piece.id);
				return !(mention.article === 'definite' && same.length === 1 && isCorrection);
			});
		const repeats = (piece: Piece) =>
			Object.entries(values).some(
				([name, value]) => typeof value === 'number' && piece.values[name] === value,
			);
		const meant = same.filter((piece) => !clash(piece)).at(-1);
		if (meant === undefined) return null;
		const isNew =
			(mention.article === 'indefinite' && (this.#new.has(meant.id) || repeats(meant))) ||
			(isCounted && repeats(meant));
		return isNew ? null : meant;
	}

	#set(piece: Piece, values: Values): void {
		const isTold = this.#telling === 'description' && this.#told.has(piece.id);
		const countName = countFieldOf(piece.kind)?.[0];
		const news = Object.entries(values).filter(([name, value]) => {
			const before = piece.values[name];
			if (before === value) return false;
			if (before === undefined || !isTold) return true;
			if (isTotal(piece, values, countName, name)) return typeof value === 'number' && value < Number(before);
			if (typeof value === 'number') {
				this.#notes.push(`Two figures were told for the ${labelOf(piece)}; the first one stands.`);
			}
			return false;
		});
		if (news.length > 0)
			this.#apply({ change: 'set', id: piece.id, values: Object.fromEntries(news) as never });
	}
}
