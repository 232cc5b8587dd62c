import type { LoadItem } from '../../energy/loads.js';
import type { Context } from '../../topic/context.js';
import type { System } from '../../topic/declare.js';
import type { Fields, InputOf } from '../../topic/field.js';
import type { Zone } from '../../weight/placing.js';

/** What was said of one piece of equipment, by field. */
type Given<F extends Fields> = Partial<{ [K in keyof F]: Exclude<InputOf<F>[K], undefined> }>;

/** Values of a piece of any kind, for code that handles them all. */
export type Values = Readonly<Record<string, number | string | boolean>>;

/**
 * One kind of thing a van may carry, declared once: how people name it, what is known of it, what it draws and
 * weighs. Reading of descriptions, the list as understood and the checks of the whole van are derived from it.
 */
export interface Equipment<F extends Fields = Fields> {
	/** one word or hyphenated: "fresh-tank" */
	readonly kind: string;
	/** the trade's word for it: "fresh tank" */
	readonly label: string;
	readonly system: System;
	/** words by which people name it; Spanish and German too */
	readonly words: readonly string[];
	/**
	 * A required field is asked for where a check needs it; one with a fallback is assumed and listed so, to be
	 * confirmed.
	 */
	readonly fields: F;
	/** one a van: what is said of it later belongs to the same piece */
	readonly single: boolean;
	/** a fuse or a cable: belongs to what it is named with, and is a piece of its own only where it stands alone */
	readonly attaches: boolean;
	/** brings what was read into its fields: a marking into its figures */
	readonly settle: (given: Given<F>) => Given<F>;
	/** the loads it puts on the bank or on mains */
	readonly draws: (given: Given<F>, context: Context) => readonly LoadItem[];
	/** what it usually weighs where nobody said [kg], without its water (practice); null where it can't be told */
	readonly usualKg: (given: Given<F>) => number | null;
	/** where it usually stands (practice) */
	readonly usualZone: Zone | null;
}

/** Equipment of any fields. */
export type AnyEquipment = Omit<Equipment, 'settle' | 'draws' | 'usualKg'> & {
	// The fold hands over values that passed this very kind's schemas.
	readonly settle: (given: never) => Values;
	readonly draws: (given: never, context: Context) => readonly LoadItem[];
	readonly usualKg: (given: never) => number | null;
};

type Optional = 'single' | 'attaches' | 'settle' | 'draws' | 'usualKg' | 'usualZone';

export function declareEquipment<const F extends Fields>(
	equipment: Omit<Equipment<F>, Optional> & Partial<Pick<Equipment<F>, Optional>>,
): Equipment<F> {
	return {
		single: false,
		attaches: false,
		settle: (given) => given,
		draws: () => [],
		usualKg: () => null,
		usualZone: null,
		...equipment,
	};
}

/** Of a figure for one and a figure for all, whichever were named: that for one. "400 Ah, 4 x 100 Ah" names both. */
export function ofOne(one: number | undefined, all: number | undefined, many: number): number | undefined {
	if (one !== undefined && all !== undefined) return Math.min(one, all);
	return one ?? (all === undefined ? undefined : all / many);
}

/** "fridge|nevera" as a list; the words of a kind are many and short. */
export function words(list: string): readonly string[] {
	return list.split('|');
}
