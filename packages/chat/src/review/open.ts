/** What of a shop still has to be looked at, the gravest first. */

import { topicNamed } from '@lugbook/core';
import type { Entry, Log, LogFilter } from '@lugbook/log';
import { exchangeOf } from '../memory.js';
import { entryLine } from '../render/entry.js';
import { type Review, reviewsOf } from './acts.js';
import { stands, stateWords } from './shown.js';

/** Newest answers that are looked at for one list. */
const LOOK_MAX = 500;

export interface Open {
	readonly entry: Entry;
	readonly review: Review;
	/** 0 with a danger, 1 with a warning, 2 otherwise */
	readonly grave: 0 | 1 | 2;
	readonly system: string;
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

export async function openAnswers(log: Log, shop: string, where: LogFilter): Promise<ToLookAt> {
	const { entries, next } = await log.find(shop, {
		...where,
		kinds: ['exchange'],
		states: ['answered'],
		limit: LOOK_MAX,
	});
	const reviews = await reviewsOf(log, shop, entries);
	const open = entries
		.flatMap((entry): Open[] => {
			const review = reviews.get(entry.number) as Review;
			if (review.state === 'signed' || !stands(review)) return [];
			const severities = (exchangeOf(entry)?.answer.findings ?? []).map(({ severity }) => severity);
			const grave = severities.includes('danger') ? 0 : severities.includes('warning') ? 1 : 2;
			const system = topicNamed(entry.topic ?? '')?.system ?? 'other';
			return [{ entry, review, grave, system }];
		})
		.sort((a, b) => a.grave - b.grave || a.system.localeCompare(b.system) || a.entry.number - b.entry.number);
	const rejected = entries.flatMap(({ number }) =>
		reviews.get(number)?.state === 'rejected' ? [number] : [],
	);
	return {
		open,
		rejected: rejected.sort((a, b) => a - b),
		amongNewest: next === null ? null : entries.length,
	};
}

/** Says so where not all answers were looked at. */
export function olderLines(amongNewest: number | null): string[] {
	if (amongNewest === null) return [];
	return [`Only the newest ${amongNewest} answers were looked at; older ones: "/log show unsigned"`];
}

function openLine({ entry, review, grave, system }: Open): string {
	const word = ['DANGER ', 'warning ', ''][grave];
	const comments = review.signatures.filter(({ act }) => act === 'commented').length;
	const said = comments === 0 ? '' : ` (${comments === 1 ? '1 comment' : `${comments} comments`})`;
	return `${word}${system}: ${entryLine(entry)}${stateWords(review)}${said}`;
}

/** The lines of a list, and how many more there are. */
export function openLines(open: readonly Open[], max: number): string[] {
	const more = open.length > max ? [`and ${open.length - max} more: "/log show unsigned"`] : [];
	return [...open.slice(0, max).map(openLine), ...more];
}
