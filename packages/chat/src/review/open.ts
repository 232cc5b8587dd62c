/** What of a shop still has to be looked at, the gravest first. */

import { topicNamed } from '@lugbook/core';
import type { Entry, FindOptions, Log, LogFilter } from '@lugbook/log';
import type { SheetState } from '@lugbook/report';
import { exchangeOf } from '../memory.js';
import { entryLine } from '../render/entry.js';
import { type Review, reviewsOf } from './acts.js';
import { stands, stateWords } from './shown.js';

/** Answers are looked at this many at a time ... */
const LOOK = 500;
/** ... and the newest this many for one list: some seconds' work. */
const LOOK_MAX = 10_000;

/** An answer that is to be looked at, without its body: a list may hold thousands. */
export interface Open {
	readonly number: number;
	readonly build: string | null;
	readonly state: SheetState;
	/** 0 with a danger, 1 with a warning, 2 otherwise */
	readonly grave: 0 | 1 | 2;
	readonly system: string;
	/** what a list says about it */
	readonly line: string;
}

/** What is to be looked at. */
interface ToLookAt {
	/** answers that stand and are not signed, or whose signature is out of date: dangers first, then by system and number */
	readonly open: Open[];
	/** rejected, with no other in their place yet: numbers, ascending */
	readonly rejected: readonly number[];
	/** how many newest answers were looked at, where there are older ones; else null */
	readonly amongNewest: number | null;
}

export async function openAnswers(
	log: Log,
	shop: string,
	where: LogFilter,
	lookMax = LOOK_MAX,
): Promise<ToLookAt> {
	const open: Open[] = [];
	const rejected: number[] = [];
	let looked = 0;
	let cursor: string | null = null;
	do {
		const limit = Math.min(LOOK, lookMax - looked);
		const options: FindOptions = { ...where, kinds: ['exchange'], states: ['answered'], limit, cursor };
		const page: { entries: Entry[]; next: string | null } = await log.find(shop, options);
		const reviews = await reviewsOf(log, shop, page.entries);
		for (const entry of page.entries) {
			const review = reviews.get(entry.number) as Review;
			if (review.state === 'rejected') rejected.push(entry.number);
			if (review.state !== 'signed' && stands(review)) open.push(openOf(entry, review));
		}
		looked += page.entries.length;
		cursor = page.next;
	} while (cursor !== null && looked < lookMax);
	open.sort((a, b) => a.grave - b.grave || a.system.localeCompare(b.system) || a.number - b.number);
	rejected.sort((a, b) => a - b);
	return { open, rejected, amongNewest: cursor === null ? null : looked };
}

function openOf(entry: Entry, review: Review): Open {
	const severities = (exchangeOf(entry)?.answer.findings ?? []).map(({ severity }) => severity);
	const grave = severities.includes('danger') ? 0 : severities.includes('warning') ? 1 : 2;
	const system = topicNamed(entry.topic ?? '')?.system ?? 'other';
	const word = ['DANGER ', 'warning ', ''][grave];
	const comments = review.signatures.filter(({ act }) => act === 'commented').length;
	const said = comments === 0 ? '' : ` (${comments === 1 ? '1 comment' : `${comments} comments`})`;
	const line = `${word}${system}: ${entryLine(entry)}${stateWords(review)}${said}`;
	return { number: entry.number, build: entry.build, state: review.state, grave, system, line };
}

/** Says so where not all answers were looked at. */
export function olderLines(amongNewest: number | null): string[] {
	if (amongNewest === null) return [];
	return [`Only the newest ${amongNewest} answers were looked at; older ones: "/log show unsigned"`];
}

/** The lines of a list, and how many more there are. */
export function openLines(open: readonly Open[], max: number): string[] {
	const more = open.length > max ? [`and ${open.length - max} more: "/log show unsigned"`] : [];
	return [...open.slice(0, max).map(({ line }) => line), ...more];
}
