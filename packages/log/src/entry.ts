import { z } from 'zod';
import { LogError } from './errors.js';
import { canonicalJson, isWellFormed, type Json } from './json.js';

/** Everything that can be put into the log. Signing, rejecting and commenting are entries too. */
export const ENTRY_KINDS = [
	'exchange',
	'build-set',
	'channel-bound',
	'build-changed',
	'signed',
	'build-signed',
	'rejected',
	'commented',
	'asked',
	'refused-action',
	'settings',
	'forgotten',
] as const;

export type EntryKind = (typeof ENTRY_KINDS)[number];

/** The most of everything. What is longer is refused, never cut in silence: the caller knows where to cut. */
export const LIMITS = {
	/** Canonical JSON of a body. */
	bodyBytes: 1024 * 1024,
	bodyDepth: 100,
	/** The text as typed. */
	textBytes: 256 * 1024,
	/** Shop, delivery, platform, channel, thread, build, topic, state, a person's id. */
	idBytes: 512,
	personNameBytes: 1024,
	/** Distinct words of an entry that can be found by `words`, taken together; later ones are not indexed. */
	indexedBytes: 256 * 1024,
	settingKeyBytes: 256,
	settingValueBytes: 256 * 1024,
	pathBytes: 4096,
	/** Entries of a page of `find`. */
	pageEntries: 500,
	/** Words of one search, kinds and states of one filter. */
	filterItems: 50,
	/** Writes of one process that may wait for their turn. */
	waitingWrites: 10_000,
} as const;

/** What a caller gives to be logged. */
export interface NewEntry {
	/** The tenant, e.g. `slack:T123` or `local`. */
	shop: string;
	kind: EntryKind;
	/** The platform's own id of the delivery, unique in a shop: the same one again is the same entry. */
	delivery: string | null;
	platform: string;
	channel: string;
	thread: string | null;
	/** Name of the build (the van). */
	build: string | null;
	topic: string | null;
	/** The platform's id of the person; can be erased. */
	personId: string;
	/** Can be erased. */
	personName: string;
	/** The text as typed; can be erased. */
	text: string;
	/** ISO 8601 instant in UTC, as the caller's clock had it. Order comes from the number, not from this. */
	at: string;
	/** Number of the entry in the same shop that this one follows. */
	follows: number | null;
	/** Number of the entry in the same shop that this one replaces. */
	replaces: number | null;
	/** For filters, e.g. the status of an answer. */
	state: string | null;
	/** The engineering content; part of the hash chain. */
	body: Json;
}

/** An entry as it stands in the log. */
export interface Entry extends NewEntry {
	/** 1, 2, 3 ... in the shop, without gaps. */
	number: number;
	/** Hash of the entry before, or 64 zeros for the first. */
	previousHash: string;
	/** SHA-256 over everything chained, in hexadecimal. */
	hash: string;
	/** Pseudonym of the person in this shop; stays when the person is forgotten. */
	personTag: string;
	/** True when the erasable part is gone: `personId`, `personName` and `text` are then empty. */
	erased: boolean;
}

/** A checked entry: the body in its one encoding, the time in its one notation. */
export interface CheckedEntry extends Omit<NewEntry, 'body'> {
	bodyText: string;
}

/** Text that both databases keep unchanged: PostgreSQL has no U+0000 in text. */
export function storable(limitBytes: number, emptyAllowed = true) {
	return z.string().superRefine((text, context) => {
		const bytes = Buffer.byteLength(text);
		if (bytes > limitBytes) {
			context.addIssue(`is ${bytes} bytes long; at most ${limitBytes} are kept`);
		} else if (bytes === 0 && !emptyAllowed) {
			context.addIssue('is empty');
		}
		if (!isWellFormed(text)) {
			context.addIssue('holds half of a surrogate pair, which is not valid Unicode text');
		}
		if (text.includes('\0')) {
			context.addIssue('holds the character U+0000, which can not be kept as text');
		}
	});
}

export const identifier = storable(LIMITS.idBytes, false);

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,9})?Z$/;

/** An instant in the one notation that sorts as text: `2026-05-04T12:00:00.000Z`. */
export const instant = z.string().transform((text, context) => {
	const date = new Date(text);
	if (!INSTANT.test(text) || Number.isNaN(date.getTime())) {
		context.addIssue(
			`is ${JSON.stringify(text)}; expected an instant in UTC such as 2026-05-04T12:00:00.000Z`,
		);
		return z.NEVER;
	}
	// Some engines carry 31 February over into March; a date that moves was not a date.
	if (date.toISOString().slice(0, 19) !== text.slice(0, 19)) {
		context.addIssue(`is ${JSON.stringify(text)}, which is no day of the calendar`);
		return z.NEVER;
	}
	return date.toISOString();
});

/** What both databases hold in an `integer` column. */
export const LARGEST_NUMBER = 2_147_483_647;

export const entryNumber = z.int().min(1).max(LARGEST_NUMBER);

/** Every field of an entry but its body, which is checked as it is encoded. */
export const entryFields = {
	shop: identifier,
	kind: z.enum(ENTRY_KINDS),
	delivery: identifier.nullable(),
	platform: identifier,
	channel: identifier,
	thread: identifier.nullable(),
	build: identifier.nullable(),
	topic: identifier.nullable(),
	personId: identifier,
	personName: storable(LIMITS.personNameBytes),
	text: storable(LIMITS.textBytes),
	at: instant,
	follows: entryNumber.nullable(),
	replaces: entryNumber.nullable(),
	state: identifier.nullable(),
};
const fields = z.strictObject(entryFields);

/** Reads a value by its schema, or says in one sentence which field is wrong. */
export function parseOrRefuse<T>(schema: z.ZodType<T>, value: unknown, name: string): T {
	const result = schema.safeParse(value, { reportInput: true });
	if (result.success) return result.data;
	const sentences = result.error.issues.map(
		(issue) => `${[name, ...issue.path].join('.')} ${complaint(issue)}`,
	);
	throw new LogError('bad-entry', sentences.join('; '), result.error);
}

/** What was read and what would be right. Our own messages say both already. */
function complaint(issue: z.core.$ZodIssue): string {
	switch (issue.code) {
		case 'invalid_type':
			return `is ${shortly(issue.input)}; expected a ${issue.expected === 'int' ? 'whole number' : issue.expected}`;
		case 'invalid_value':
			return `is ${shortly(issue.input)}; expected one of ${issue.values.map(shortly).join(', ')}`;
		case 'unrecognized_keys':
			return `has a field that is not known: ${issue.keys.join(', ')}`;
		case 'too_big':
			return `is ${shortly(issue.input)}, above the ${issue.maximum} allowed`;
		case 'too_small':
			return `is ${shortly(issue.input)}, below ${issue.minimum}`;
		default:
			return issue.message;
	}
}

function shortly(value: unknown): string {
	if (Array.isArray(value)) return `a list of ${value.length}`;
	if (typeof value === 'object' && value !== null) return 'an object';
	const text = typeof value === 'string' ? JSON.stringify(value) : String(value);
	return text.length > 60 ? `${text.slice(0, 60)}...` : text;
}

/**
 * Checks everything about an entry that can be known without the database.
 * @throws LogError 'bad-entry' naming the field, what was read and what would be right
 */
export function checkEntry(entry: NewEntry): CheckedEntry {
	if (typeof entry !== 'object' || entry === null) {
		throw new LogError('bad-entry', `entry is ${shortly(entry)}; expected an object`);
	}
	const { body, ...rest } = entry;
	const checked = parseOrRefuse(fields, rest, 'entry');
	const bodyText = canonicalJson(body, 'entry.body', { bytes: LIMITS.bodyBytes, depth: LIMITS.bodyDepth });
	return { ...checked, bodyText };
}
