import type { Fields, InputOf } from './field.js';
import type { Decision, Sheet } from './sheet.js';

/** The parts of a van a topic belongs to; reviews and the reference are grouped by them. */
export const systems = ['wiring', 'energy', 'water', 'climate', 'weight', 'structure'] as const;
export type System = (typeof systems)[number];

/** At least one of these fields must be known; otherwise the question is asked. */
export interface Need<N extends string = string> {
	readonly anyOf: readonly N[];
	readonly question: string;
}

/** One question the tool can answer, declared once. */
export interface Topic<F extends Fields = Fields> {
	/** one word or hyphenated, as typed after /size */
	readonly name: string;
	readonly title: string;
	readonly system: System;
	/** the question it answers and the decision it supports, for help and the calculation sheet */
	readonly purpose: string;
	/** words by which people ask for it, strongest first; Spanish and German too */
	readonly words: readonly string[];
	/** messages that it answers, as a person types them; run by the tests */
	readonly examples: readonly string[];
	/** the method in a sentence or two, with what it does not cover */
	readonly method: string;
	readonly fields: F;
	readonly needs: readonly Need<keyof F & string>[];
	readonly calculate: (input: InputOf<F>, sheet: Sheet) => Decision;
}

/** A topic of any fields, for code that handles them all. */
export type AnyTopic = Omit<Topic, 'calculate' | 'needs'> & {
	readonly needs: readonly Need[];
	// The engine hands over values that passed this very topic's schemas.
	readonly calculate: (input: never, sheet: Sheet) => Decision;
};

export function declareTopic<const F extends Fields>(
	topic: Omit<Topic<F>, 'needs'> & { readonly needs?: readonly Need<keyof F & string>[] },
): Topic<F> {
	return { ...topic, needs: topic.needs ?? [] };
}
