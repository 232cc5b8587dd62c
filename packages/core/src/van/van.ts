import { z } from 'zod';
import type { Context } from '../topic/context.js';
import { problemsOf } from '../topic/problems.js';
import type { Refusal } from '../topic/sizing.js';
import type { AnyEquipment, Values } from './equipment/declare.js';
import { equipmentOf, isKind } from './equipment/index.js';

/** One piece of equipment aboard, or several of a kind that are alike. */
export interface Piece {
	/** its name in the build: "fridge", "solar-2" */
	readonly id: string;
	readonly kind: string;
	/** what was said of it, by field, in base units */
	readonly values: Values;
}

/** A van as far as it was told. What is in neither list was not said. */
export interface Van {
	readonly pieces: readonly Piece[];
	/** kinds that were said not to be there */
	readonly absent: readonly string[];
}

export const emptyVan: Van = { pieces: [], absent: [] };

const valuesSchema = z.record(z.string(), z.union([z.number(), z.string(), z.boolean()]));

/** One step in the telling of a van; a build is the fold over them. */
export const changeSchema = z.discriminatedUnion('change', [
	z.object({ change: z.literal('add'), id: z.string(), kind: z.string(), values: valuesSchema }),
	z.object({ change: z.literal('set'), id: z.string(), values: valuesSchema }),
	z.object({ change: z.literal('remove'), id: z.string() }),
	z.object({ change: z.literal('absent'), kind: z.string() }),
]);
export type Change = z.infer<typeof changeSchema>;

/** Inputs that say the same thing in two ways: the newer one stands alone. */
const rivals: readonly (readonly string[])[] = [
	['powerW', 'currentA'],
	['unitAh', 'unitWh'],
];

/**
 * The van after the changes. Changes to what is not there, or of a kind that is no longer declared, are passed over:
 * the log outlives the declarations.
 */
export function changed(van: Van, changes: readonly Change[]): Van {
	return changes.reduce(applied, van);
}

function applied(van: Van, change: Change): Van {
	switch (change.change) {
		case 'add': {
			if (!isKind(change.kind) || van.pieces.some(({ id }) => id === change.id)) return van;
			const piece = { id: change.id, kind: change.kind, values: change.values };
			return { pieces: [...van.pieces, piece], absent: van.absent.filter((kind) => kind !== change.kind) };
		}
		case 'set':
			return {
				...van,
				pieces: van.pieces.map((piece) =>
					piece.id === change.id ? withValues(piece, change.values) : piece,
				),
			};
		case 'remove': {
			const gone = van.pieces.find(({ id }) => id === change.id);
			if (gone === undefined) return van;
			const pieces = van.pieces.filter((piece) => piece !== gone);
			const isLast = !pieces.some(({ kind }) => kind === gone.kind);
			return { pieces, absent: isLast ? withKind(van.absent, gone.kind) : van.absent };
		}
		case 'absent':
			// "no second fridge" does not take the first one away.
			return van.pieces.some(({ kind }) => kind === change.kind) || !isKind(change.kind)
				? van
				: { ...van, absent: withKind(van.absent, change.kind) };
	}
}

function withKind(kinds: readonly string[], kind: string): readonly string[] {
	return kinds.includes(kind) ? kinds : [...kinds, kind];
}

function withValues(piece: Piece, values: Values): Piece {
	const ousted = rivals.flatMap((group) =>
		group.some((name) => name in values) ? group.filter((name) => !(name in values)) : [],
	);
	const kept = Object.entries(piece.values).filter(([name]) => !ousted.includes(name));
	return { ...piece, values: { ...Object.fromEntries(kept), ...values } };
}

/** A name for a new piece that none aboard has: "fridge", then "fridge-2". */
export function freeId(van: Van, kind: string, name: string | null = null): string {
	const stem = (name ?? kind).toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
	const taken = new Set(van.pieces.map(({ id }) => id));
	if (!taken.has(stem)) return stem;
	for (let number = 2; ; number += 1) {
		if (!taken.has(`${stem}-${number}`)) return `${stem}-${number}`;
	}
}

/** What a piece is called in a sentence: "fridge", "laptop", "fridge 2". */
export function labelOf(piece: Piece): string {
	const { label } = equipmentOf(piece.kind);
	const name = typeof piece.values.name === 'string' ? piece.values.name : label;
	const number = /-(\d+)$/.exec(piece.id)?.[1];
	return number === undefined ? name : `${name} ${number}`;
}

/** What was read of a kind, brought into its fields; what its fields can't take is refused, each by name. */
export function settled(
	kind: string,
	values: Values,
	context: Context,
): { readonly values: Values; readonly refusals: readonly Refusal[] } {
	const declared: AnyEquipment = equipmentOf(kind);
	const known: Record<string, number | string | boolean> = {};
	const refusals: Refusal[] = [];
	for (const [name, value] of Object.entries(values)) {
		const field = declared.fields[name];
		if (field === undefined) continue;
		const problems = problemsOf(name, field, value, context);
		refusals.push(...problems);
		if (problems.length === 0) known[name] = value;
	}
	return { values: declared.settle(known as never), refusals };
}
