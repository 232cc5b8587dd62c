import type { Log } from '@lugbook/log';
import { unshownIn } from './bot/outbox.js';
import { exchangeOf } from './memory.js';
import type { Reply } from './message.js';
import { audienceOf, listed, replyWith } from './reply.js';
import { reviewedReply } from './review/shown.js';
import type { Verb } from './verb.js';

/** An answer as it was given, from its entry; null where there is none of that number in the shop. */
export async function replyOf(log: Log, shop: string, number: number): Promise<Reply | null> {
	const entry = await log.entry(shop, number);
	const exchange = entry === null ? null : exchangeOf(entry);
	if (entry === null || exchange === null) return null;
	const answer = { ...exchange.answer, entry: entry.number };
	return replyWith(answer, entry.build, audienceOf(answer));
}

/** The same with what became of it since. */
export async function reviewedReplyOf(log: Log, shop: string, number: number): Promise<Reply | null> {
	const entry = await log.entry(shop, number);
	return entry === null ? null : await reviewedReply(log, entry);
}

/** An answer that did not reach the channel, or got lost in it, once more. */
export const resend: Verb = {
	usage: 'resend [128]',
	help: null,
	pattern: /^resend(?:\s+#?(\d{1,9}))?$/i,
	run: async (turn, match) => {
		const { shop } = turn.incoming;
		const [newest, ...others] = (await unshownIn(turn.log, turn.incoming)).reverse();
		const number = match[1] === undefined ? newest : Number(match[1]);
		if (number === undefined) {
			return listed(
				'No answer of this channel waits to be shown. "/log resend 128" shows one again.',
				'asker',
			);
		}
		const reply = await reviewedReplyOf(turn.log, shop, number);
		if (reply === null) return listed(`There is no answer No. ${number} in this shop's log.`, 'asker');
		if (match[1] !== undefined || others.length === 0) return reply;
		const text = `Also waiting to be shown: ${others.map((one) => `No. ${one}`).join(', ')}.`;
		return { ...reply, parts: [...reply.parts, { kind: 'list', text, fold: false }] };
	},
};
