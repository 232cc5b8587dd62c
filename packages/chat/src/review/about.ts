/** What every verb about an answer needs: to find it, to keep what is done about it, and to refuse. */

import type { Entry } from '@lugbook/log';
import { exchangeOf } from '../memory.js';
import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { ActKind } from './acts.js';

/** The answer of that number in the shop of the message, or null. */
export async function answerAt(turn: Turn, number: number): Promise<Entry | null> {
	const entry = await turn.log.entry(turn.incoming.shop, number);
	const exchange = entry === null ? null : exchangeOf(entry);
	return exchange === null || exchange.answer.status !== 'answered' ? null : entry;
}

export function noAnswer(number: number): string {
	return `There is no answer No. ${number} in this shop's log.`;
}

/** Puts an act about an answer into the log. */
export async function act(
	turn: Turn,
	about: Entry,
	kind: ActKind,
	{
		meaning,
		ownQuestion = false,
		withdraws = false,
	}: { readonly meaning: string; readonly ownQuestion?: boolean; readonly withdraws?: boolean },
): Promise<Entry> {
	const { entry } = await turn.log.append({
		...turn.entry(about.build),
		kind,
		topic: about.topic,
		follows: about.number,
		state: null,
		body: { meaning, ownQuestion, ...(withdraws ? { withdraws } : {}) },
	});
	return entry;
}

/** What somebody may not do is refused politely, and kept: about an answer, a build, or the shop itself. */
export async function refuse(
	turn: Turn,
	about: Entry | null,
	why: string,
	build: string | null = about?.build ?? null,
): Promise<Reply> {
	await turn.log.append({
		...turn.entry(build),
		kind: 'refused-action',
		topic: about?.topic ?? null,
		follows: about?.number ?? null,
		state: null,
		body: { why },
	});
	return listed(why, 'asker');
}
