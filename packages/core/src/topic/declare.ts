import type { Context } from './context.js';
import type { Fields, InputOf } from './field.js';
import type { Decision, Sheet } from './sheet.js';
import type { Refusal } from './sizing.js';

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
	/** true where people ask for it by quantities alone, with no word that names it ("40A 12V 15 ft") */
	readonly askedByQuantities: boolean;
	/** topics it is easily taken for: a message with a word that asks for one of them hardly means this one */
	readonly notFor: readonly string[];
	/** topics whose answer is part of this one's: a message that fits both means this one */
	readonly includes: readonly string[];
	/** the method in a sentence or two, with what it does not cover */
	readonly method: string;
	readonly fields: F;
	readonly needs: readonly Need<keyof F & string>[];
	/** contradictions among what was given, named before anything missing is asked for */
	readonly contradictions: (given: Partial<InputOf<F>>, context: Context) => readonly Refusal[];
	readonly calculate: (input: InputOf<F>, sheet: Sheet) => Decision;
}

/** A topic of any fields, for code that handles them all. */
export type AnyTopic = Omit<Topic, 'calculate' | 'needs' | 'contradictions'> & {
	readonly needs: readonly Need[];
	readonly contradictions: (given: never, context: Context) => readonly Refusal[];
	// The engine hands over values that passed this very topic's schemas.
	readonly calculate: (input: never, sheet: Sheet) => Decision;
};

type Optional = 'needs' | 'contradictions' | 'askedByQuantities' | 'includes' | 'notFor';

export function declareTopic<const F extends Fields>(
	topic: Omit<Topic<F>, Optional> & Partial<Pick<Topic<F>, Optional>>,
): Topic<F> {
	return {
		needs: [],
		contradictions: () => [],
		askedByQuantities: false,
		includes: [],
		notFor: [],
		...topic,
	};
}
