import { z } from 'zod';
import type { Context } from '../topic/context.js';
import { Facts } from './facts/facts.js';
import { loadsAboard } from './facts/loads.js';
import { weightsOf } from './facts/weights.js';
import type { Van } from './van.js';

/** A value of a build that a sizing rested on. */
export const restSchema = z.object({
	/** a piece of equipment by its name in the build, or "*" for what all of them make up */
	item: z.string(),
	/** its field, or "loads", "mains loads", "masses" */
	field: z.string(),
	/** null where it was not told */
	value: z.union([z.number(), z.string(), z.boolean(), z.null()]),
});
export type Rest = z.infer<typeof restSchema>;

/** The value as it stands in the van now. */
export function restValue(van: Van, item: string, field: string, context: Context): Rest['value'] {
	if (item !== '*') return van.pieces.find(({ id }) => id === item)?.values[field] ?? null;
	const facts = new Facts(van, context);
	switch (field) {
		case 'loads':
			return fingerprint(
				loadsAboard(facts).loads.map(({ piece, load }) => [piece.id, load.shown, load.dailyWh]),
			);
		case 'mains loads':
			return fingerprint(
				loadsAboard(facts)
					.loads.filter(({ load }) => load.mains)
					.map(({ piece, load }) => [piece.id, load.shown, load.runningW]),
			);
		case 'masses':
			return fingerprint(
				weightsOf(facts).map(({ piece, massKg, waterL, zone }) => [piece.id, massKg, waterL, zone]),
			);
		default:
			return null;
	}
}

/** True where the van no longer holds the value. */
export function isOutdated(van: Van, rest: Rest, context: Context): boolean {
	return restValue(van, rest.item, rest.field, context) !== rest.value;
}

/** A short text that differs where the list does (32-bit FNV-1a); it guards against no attacker, only against change. */
function fingerprint(list: unknown): string {
	const text = JSON.stringify(list);
	let hash = 0x811c9dc5;
	for (let index = 0; index < text.length; index += 1) {
		hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
	}
	return (hash >>> 0).toString(16).padStart(8, '0');
}
