import type { System } from '../../topic/declare.js';
import type { Severity } from '../../topic/sizing.js';
import type { Source } from '../../topic/source.js';
import { equipmentOf } from '../equipment/index.js';
import type { Facts } from '../facts/facts.js';
import type { Piece } from '../van.js';

/** What a rule says of a van; nothing where it finds no fault or is not concerned. */
export type Verdict =
	| {
			readonly is: 'found';
			readonly severity: Severity;
			/** what does not fit, with the number that clears it */
			readonly text: string;
			/** pieces it rests on, by id */
			readonly rests: readonly string[];
	  }
	| {
			/** something the rule needs was not told: never presumed fine */
			readonly is: 'unknown';
			/** "battery.protectionA": the same for every rule that needs it */
			readonly fact: string;
			/** the question that settles it */
			readonly question: string;
	  };

/** One cross-check of a whole van. */
export interface Rule {
	/** kebab-case; the code of its findings */
	readonly id: string;
	readonly system: System;
	/** what it checks, in a sentence */
	readonly about: string;
	/** what must be known for it, in words */
	readonly needs: string;
	/** kinds of equipment whose adding can clear it */
	readonly clearedBy: readonly string[];
	readonly source: Source;
	readonly check: (facts: Facts) => readonly Verdict[];
}

/** Nothing to say. */
export const fine: readonly Verdict[] = [];

export function found(severity: Severity, text: string, rests: readonly Piece[]): Verdict {
	return { is: 'found', severity, text, rests: rests.map(({ id }) => id) };
}

export function unknown(fact: string, question: string): Verdict {
	return { is: 'unknown', fact, question };
}

/** What was not told of a field that asks for itself: its own question. */
export function unknownField(kind: string, field: string): Verdict {
	const question = equipmentOf(kind).fields[field]?.meta.question;
	if (question == null) throw new Error(`${kind}.${field} has no question of its own`);
	return unknown(`${kind}.${field}`, question);
}

/** Whether something is aboard at all. */
export function unknownKind(kind: string, question: string): Verdict {
	return unknown(kind, question);
}
