/** What to look for in the log, as it is said: `wire by Robin last week "roof fan" unsigned`. */

import { topicNamed } from '@lugbook/core';
import type { Log } from '@lugbook/log';
import type { SheetState } from '@lugbook/report';
import { datesIn, type Span, spanText, WrongDate } from './dates.js';
import { personNamed } from './people.js';

/** Where to look: one build, the channel the question stands in, or everywhere in the shop. */
export type Scope = { readonly build: string } | 'here' | 'everywhere';

export interface Filter {
	readonly scope: Scope;
	readonly topic: string | null;
	readonly person: { readonly id: string; readonly name: string } | null;
	/** what the person did: asked the question, or signed or rejected the answer ("rejected by Kim") */
	readonly did: 'asked' | 'decided';
	readonly span: Span;
	/** where an answer stands in review, or what became of the question; null for any answer */
	readonly state: FilterState | null;
	readonly words: readonly string[];
}

export type FilterState =
	| 'unsigned'
	| 'refused'
	| 'unanswered'
	| Exclude<SheetState, 'not checked' | 'checked'>;

const statesBy: Readonly<Record<string, FilterState>> = {
	unsigned: 'unsigned',
	open: 'unsigned',
	signed: 'signed',
	rejected: 'rejected',
	replaced: 'replaced',
	'out of date': 'out of date',
	'asked of the lead': 'asked of the lead',
	refused: 'refused',
	unanswered: 'unanswered',
};
const STATE = new RegExp(`(?<![\\w-])(?:${Object.keys(statesBy).join('|')})(?![\\w-])`, 'i');
const EVERYWHERE = /(?<![\w-])(?:everywhere|all builds)(?![\w-])/i;
/** "build heron", "build \"grey heron\"" */
const BUILD = /(?<![\w-])build\s+(?:"([^"]{1,60})"|([^\s"]{1,60}))/i;
const BY = /(?<![\w-])by\s+(?:"([^"]{1,100})"|(<@[^<>]{1,80}>|@?\S{1,100}(?:\s+\S{1,50}){0,2}))/i;
const DECIDED = /(?<![\w-])(?:signed|rejected)\s+$/i;
const QUOTED = /"([^"]{1,200})"/g;
/** What people say around the words they look for. */
const FILLERS = new Set([
	'the',
	'of',
	'and',
	'with',
	'about',
	'in',
	'on',
	'for',
	'answers',
	'answer',
	'all',
	'me',
	'everything',
]);

/**
 * @param usual where to look when nothing is said of it
 * @returns the filter, or what could not be understood
 */
export async function filterOf(
	log: Log,
	said: string,
	usual: Scope,
	{ shop, personId, now }: { readonly shop: string; readonly personId: string; readonly now: Date },
): Promise<Filter | string> {
	let rest = said.normalize('NFKC').replace(/[“”„]/g, '"');
	const take = (pattern: RegExp): RegExpExecArray | null => {
		const match = pattern.exec(rest);
		if (match !== null) rest = `${rest.slice(0, match.index)} ${rest.slice(match.index + match[0].length)}`;
		return match;
	};
	const everywhere = take(EVERYWHERE) !== null;
	const named = take(BUILD);
	const build = (named?.[1] ?? named?.[2])?.trim().toLowerCase();
	let person: Filter['person'] = null;
	let did: Filter['did'] = 'asked';
	const by = BY.exec(rest);
	if (by !== null) {
		if (DECIDED.test(rest.slice(0, by.index))) did = 'decided';
		const found = await personSaid(log, shop, personId, by);
		if (typeof found === 'string') return found;
		person = found.person;
		rest = `${rest.slice(0, by.index)} ${found.left} ${rest.slice(by.index + by[0].length)}`;
	}
	const words = [...rest.matchAll(QUOTED)].map((match) => match[1] as string);
	rest = rest.replace(QUOTED, ' ').replace(/\s+/g, ' ');
	let span: Span;
	try {
		const dated = datesIn(rest, now);
		span = dated.span;
		rest = dated.rest;
	} catch (error) {
		if (error instanceof WrongDate) return error.message;
		throw error;
	}
	const state = take(STATE)?.[0].toLowerCase();
	let topic: string | null = null;
	for (const word of rest.split(/\s+/)) {
		const isTopic = topic === null && topicNamed(word.toLowerCase()) !== null;
		if (isTopic) topic = word.toLowerCase();
		else if (/[\p{L}\p{N}]/u.test(word) && !FILLERS.has(word.toLowerCase())) {
			words.push(word.replaceAll('"', ''));
		}
	}
	return {
		scope: build !== undefined ? { build } : everywhere ? 'everywhere' : usual,
		topic,
		person,
		did,
		span,
		state: state === undefined ? null : (statesBy[state] as FilterState),
		words,
	};
}

/** A name may be of up to three words; what follows it is left for the rest of the filter. */
async function personSaid(
	log: Log,
	shop: string,
	personId: string,
	[, quoted, plain = '']: RegExpExecArray,
): Promise<{ person: NonNullable<Filter['person']>; left: string } | string> {
	if (quoted !== undefined) {
		const found = await personNamed(log, shop, quoted);
		return typeof found === 'string' ? found : { person: found, left: '' };
	}
	const words = plain.split(/\s+/);
	if (words[0]?.toLowerCase() === 'me') {
		return { person: { id: personId, name: 'you' }, left: words.slice(1).join(' ') };
	}
	let none = '';
	for (let count = words.length; count > 0; count -= 1) {
		const found = await personNamed(log, shop, words.slice(0, count).join(' '));
		if (typeof found !== 'string') return { person: found, left: words.slice(count).join(' ') };
		none = found;
	}
	return none;
}

/** The filter in words that are read as the same filter again, on any later day: for the button of the next page. */
export function filterText({ scope, topic, person, did, span, state, words }: Filter): string {
	const who = person === null ? '' : `by "${person.id}"`;
	return [
		scope === 'here' ? '' : scope === 'everywhere' ? scope : `build "${scope.build.replaceAll('"', '')}"`,
		topic ?? '',
		...(did === 'decided' ? [spanText(span), `${state} ${who}`] : [who, spanText(span), state ?? '']),
		...words.map((word) => `"${word}"`),
	]
		.filter((part) => part !== '')
		.join(' ');
}

/** The filter as a title shows it. */
export function filterTitle({ scope, topic, person, did, span, state, words }: Filter): string {
	const told = person !== null && did === 'decided' ? `${state} by ${person.name}` : state;
	const what = [told, topic, words.map((word) => `"${word}"`).join(' ')].filter(Boolean).join(' ');
	const who = person === null || did === 'decided' ? '' : ` by ${person.name}`;
	const when = spanText(span) === '' ? '' : `, ${spanText(span)}`;
	const where =
		scope === 'here' ? 'this channel' : scope === 'everywhere' ? 'all builds' : `build "${scope.build}"`;
	return `${what === '' ? 'Newest answers' : `Answers: ${what}`}${who}${when}, ${where}`;
}
