/** "/log show ..." and "/log more ...": answers of the log by build, topic, person, day, words and state, a page at a time. */

import { topicNamed, topics } from '@lugbook/core';
import type { Entry, FindOptions, Log } from '@lugbook/log';
import type { SheetState } from '@lugbook/report';
import type { AnswerStatus } from '../answer.js';
import { exchangeOf } from '../memory.js';
import type { Part, Reply } from '../message.js';
import { workingParts } from '../render/parts.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { noAnswer } from './about.js';
import { answersOnceIn, type Review, reviewsOf } from './acts.js';
import { dayText } from './dates.js';
import { type Filter, type FilterState, filterOf, filterText, filterTitle, type Scope } from './filter.js';
import { noAnswerReply } from './no-answer.js';
import { reviewedReply, stands, stateWords } from './shown.js';

/** Answers of a page: what a phone scrolls through with a thumb. */
const PAGE = 8;
/** A state follows from other entries, so answers are looked at this many at a time ... */
const LOOK = 100;
/** ... and at most this many for one page, where nothing lists them; the page says so, and the next goes on from there. */
const LOOK_MAX = 2000;

async function show(turn: Turn, said: string, below: number | null): Promise<Reply> {
	const build = await turn.build();
	const usual: Scope = build === null ? 'here' : { build };
	const { shop, person } = turn.incoming;
	const filter = await filterOf(turn.log, said, usual, { shop, personId: person.id, now: turn.now() });
	if (typeof filter === 'string') return listed(filter, 'asker');
	const { found, next, looked } = await pageOf(turn, filter, below);
	const title = filterTitle(filter);
	if (found.length === 0 && next === null) {
		return listed(below === null ? `${title}: none.` : `${title}: no more.`, 'channel');
	}
	const reply = listed(title, 'channel');
	const lines = found.map(({ entry, review }): Part => {
		const struck = stands(review) ? {} : { struck: true };
		return { kind: 'list', text: narrowLines(entry, review), fold: false, ...struck };
	});
	if (next === null) return { ...reply, parts: [...reply.parts, ...lines] };
	const value = `${next} ${filterText(filter)}`.trim();
	const more: Part = { kind: 'list', text: `More: /log more ${value}`, fold: true };
	const sofar = `Not all is looked through yet: of ${looked} answers down to No. ${next}, ${found.length} fit.`;
	const halfway: Part[] = found.length === PAGE ? [] : [{ kind: 'list', text: sofar, fold: false }];
	return {
		...reply,
		parts: [...reply.parts, ...lines, ...halfway, more],
		buttons: [{ action: 'more', label: 'More', value }],
	};
}

/** Two short lines, so that a phone breaks neither in the middle of a number. */
function narrowLines(entry: Entry, review: Review): string {
	const who = entry.erased ? 'forgotten' : entry.personName;
	const head = `No. ${entry.number}, ${entry.topic ?? entry.state ?? 'no topic'}, ${who}, ${dayText(entry.at)}`;
	return `${head}${stateWords(review)}\n${exchangeOf(entry)?.answer.headline ?? ''}`;
}

/** What became of a question that has no answer; every other state is one of an answer. */
const statuses: Partial<Record<FilterState, readonly AnswerStatus[]>> = {
	refused: ['refused'],
	unanswered: ['needs-input', 'not-understood'],
};

async function pageOf(
	turn: Turn,
	{ scope, topic, person, did, span, state, words }: Filter,
	below: number | null,
): Promise<{ found: { entry: Entry; review: Review }[]; next: number | null; looked: number }> {
	const { log, incoming } = turn;
	const found: { entry: Entry; review: Review }[] = [];
	const isFolded = state !== null && !(state in statuses);
	const [asker, decider] = did === 'asked' ? [person, null] : [null, person];
	const answers: FindOptions = {
		...(scope === 'everywhere' ? {} : scope === 'here' ? { channel: incoming.channel } : scope),
		...(topic === null ? {} : { topic }),
		...(asker === null ? {} : { personId: asker.id }),
		...(span.from === null ? {} : { from: span.from }),
		...(span.to === null ? {} : { to: span.to }),
		...(words.length === 0 ? {} : { words: words.join(' ') }),
		kinds: ['exchange'],
		states: (state === null ? undefined : statuses[state]) ?? ['answered'],
	};
	const once = isOnceDecided(state) ? await answersOnceIn(log, incoming.shop, state, decider?.id) : null;
	const pages =
		once === null
			? everyPage(turn, { ...answers, limit: isFolded ? LOOK : PAGE }, below)
			: pagesOf(
					turn,
					answers,
					once.filter((number) => below === null || number < below),
				);
	let looked = 0;
	for await (const { entries, isLast } of pages) {
		const reviews = await reviewsOf(log, incoming.shop, entries);
		for (const entry of entries) {
			const review = reviews.get(entry.number) as Review;
			if (isFolded && !isIn(state, review)) continue;
			if (decider !== null && !(await hasDecided(log, entry, review, decider.id))) continue;
			// One more than fits would stand on the next page: the page ends before it.
			if (found.length === PAGE) return { found, next: found.at(-1)?.entry.number ?? 1, looked };
			found.push({ entry, review });
		}
		looked += entries.length;
		const last = entries.at(-1);
		if (isLast) break;
		if (once === null && last !== undefined && (!isFolded || looked >= LOOK_MAX)) {
			return { found, next: last.number, looked };
		}
	}
	return { found, next: null, looked };
}

interface LookedAt {
	/** newest first */
	readonly entries: readonly Entry[];
	readonly isLast: boolean;
}

async function* everyPage(
	{ log, incoming }: Turn,
	options: FindOptions,
	below: number | null,
): AsyncGenerator<LookedAt> {
	let cursor = below === null ? null : `newest:${below}`;
	do {
		const { entries, next } = await log.find(incoming.shop, { ...options, cursor });
		yield { entries, isLast: next === null };
		cursor = next;
	} while (cursor !== null);
}

/** Those among these numbers, newest first, that are asked for. */
async function* pagesOf(
	{ log, incoming }: Turn,
	options: FindOptions,
	numbers: readonly number[],
): AsyncGenerator<LookedAt> {
	for (let start = 0; start < numbers.length; start += LOOK) {
		const some = numbers.slice(start, start + LOOK);
		const { entries } = await log.find(incoming.shop, { ...options, numbers: some, limit: LOOK });
		yield { entries, isLast: start + LOOK >= numbers.length };
	}
}

/** Whether an answer is in the state only once somebody has done something about it. */
function isOnceDecided(state: FilterState | null): state is SheetState & FilterState {
	return state !== null && state !== 'unsigned' && !(state in statuses);
}

function isIn(state: FilterState, review: Review): boolean {
	if (state !== 'unsigned') return review.state === state;
	return review.state !== 'signed' && stands(review);
}

/** Whether the last decision about an answer is the person's. */
async function hasDecided(
	log: Log,
	entry: Entry,
	{ signatures }: Review,
	personId: string,
): Promise<boolean> {
	const last = signatures.findLast(({ act }) => act === 'signed' || act === 'rejected');
	if (last === undefined || last.entry === null) return false;
	return (await log.entry(entry.shop, last.entry))?.personId === personId;
}

async function showEntry(turn: Turn, number: number): Promise<Reply> {
	const entry = await turn.log.entry(turn.incoming.shop, number);
	if (entry === null) return listed(noAnswer(number), 'asker');
	const reply = await reviewedReply(turn.log, entry);
	if (reply === null) return await noAnswerReply(turn, entry);
	const parts = [...reply.parts.map((one) => ({ ...one, fold: false })), ...workingParts(reply.answer)];
	return { ...reply, audience: 'channel', parts, buttons: [] };
}

export const findVerbs: readonly Verb[] = [
	{
		usage: 'show 128, sheet 128',
		help: 'one answer with its working, or what else was kept; as a calculation sheet',
		pattern: /^(?:show\s+)?#?([1-9]\d{0,8})$/i,
		run: (turn, match) => showEntry(turn, Number(match[1])),
	},
	{
		usage: 'show [WHAT]',
		help: 'answers: "wire by Robin last week", "unsigned", "build heron", "roof fan", 2026-05-04',
		pattern: /^(?:show(?:\s+(\S[\s\S]{0,299}))?)?$/i,
		run: (turn, match) => show(turn, match[1] ?? '', null),
	},
	{
		usage: 'TOPIC',
		help: null,
		pattern: new RegExp(`^(?:${topics.map(({ name }) => name).join('|')})$`, 'i'),
		run: (turn) => show(turn, topicNamed(turn.text.toLowerCase())?.name ?? '', null),
	},
	{
		usage: 'more 128 [WHAT]',
		help: null,
		pattern: /^more\s+([1-9]\d{0,8})(?:\s+(\S[\s\S]{0,599}))?$/i,
		run: (turn, match) => show(turn, match[2] ?? '', Number(match[1])),
	},
];
