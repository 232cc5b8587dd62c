import type { Context, FieldValue, Sizing } from '@lugbook/core';
import type { Picture } from '../picture/draw.js';

/**
 * One logged answer as the calculation sheet needs it: what the log holds of the exchange, of the signing and of what
 * came after. It is a plain record; nothing in it is looked up here but the topic's declaration.
 */
export interface SheetRecord {
	/** number of the entry in the shop's log */
	readonly number: number;
	readonly shop: string;
	readonly build: string | null;
	/** what identifies the vehicle, where the shop gave it */
	readonly vehicle: string | null;
	readonly state: SheetState;
	/** why it was rejected, or what has changed since */
	readonly stateReason: string | null;
	/** what the answer decides in this build, beside the topic's own purpose */
	readonly decision: string | null;
	readonly context: Context;
	/** the question as typed; null where it was erased on the person's request */
	readonly typed: string | null;
	readonly inputs: readonly SheetInput[];
	/** how something was taken */
	readonly notes: readonly string[];
	/** words that could not be used */
	readonly unread: readonly string[];
	readonly sizing: Sizing;
	/** checks against limits beside those that the working shows */
	readonly checks: readonly SheetCheck[];
	/** where the answer departs from a rule, and why */
	readonly deviations: readonly string[];
	readonly asked: { readonly name: string | null; readonly at: string };
	/** who had the unchanged question worked out again from its build, and the answer under which it was asked */
	readonly rerun: { readonly name: string | null; readonly at: string; readonly askedIn: number } | null;
	/** checking, signing, rejecting, in the order they were done */
	readonly signatures: readonly SheetSignature[];
	readonly revision: Revision | null;
	/** the entry that replaced this one */
	readonly replacedBy: number | null;
	/** the entry computed again with a later version */
	readonly recomputed: Recomputed | null;
	readonly versions: {
		/** of the calculation and its tables, as they were when it was computed */
		readonly calculation: string;
		/** of the program that wrote this sheet */
		readonly program: string;
	};
	readonly place: {
		readonly channel: string | null;
		readonly thread: string | null;
		/** SHA-256 over the entry and the one before it, in hexadecimal */
		readonly hash: string;
		readonly previousHash: string;
	};
	readonly pictures: readonly Picture[];
}

/** In words, as they are printed. */
export const sheetStates = [
	'not checked',
	'asked of the lead',
	'checked',
	'signed',
	'rejected',
	'out of date',
	'replaced',
] as const;
export type SheetState = (typeof sheetStates)[number];

export interface SheetInput {
	/** the field's name, as in the request: "currentA" */
	readonly name: string;
	readonly label: string;
	/** in the base unit */
	readonly value: FieldValue;
	/** base unit of the value; "1" for a fraction, null for none */
	readonly unit: string | null;
	/** value and unit as shown to a person */
	readonly text: string;
	readonly from: InputOrigin;
	/** how the value was come by, where it is known */
	readonly basis: 'measured' | 'nameplate' | 'estimate' | null;
}

export type InputOrigin =
	/** read from these words of the question */
	| { readonly kind: 'said'; readonly words: string }
	/** known of the build */
	| { readonly kind: 'build'; readonly entry: number | null }
	/** from an earlier question of the thread */
	| { readonly kind: 'thread'; readonly entry: number | null };

export interface SheetCheck {
	readonly what: string;
	/** as shown */
	readonly value: string;
	readonly limit: string;
	readonly margin: string;
	readonly holds: boolean;
}

export interface SheetSignature {
	readonly act: 'checked' | 'signed' | 'rejected' | 'withdrawn' | 'asked of the lead' | 'commented';
	/** null where the name was erased on the person's request */
	readonly name: string | null;
	readonly at: string;
	/** what the signature means, as it was shown to the one who signed */
	readonly meaning: string;
	/** number of its entry in the log */
	readonly entry: number | null;
	/** true where the one who signed had asked the question too, which a one-person shop may allow */
	readonly ownQuestion: boolean;
}

export interface Revision {
	/** the entry that this one replaces */
	readonly replaces: number;
	readonly reason: string;
	/** what else it touches: "No. 131" goes on from the entry that was replaced */
	readonly affects: readonly string[];
}

export interface Recomputed {
	readonly version: string;
	readonly at: string;
	/** empty where the numbers are the same */
	readonly differences: readonly string[];
}
