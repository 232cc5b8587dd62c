import { topicNamed } from '@lugbook/core';
import { resend } from '../again.js';
import type { Reply } from '../message.js';
import { entryLine } from '../render/entry.js';
import { workingParts } from '../render/parts.js';
import { listed } from '../reply.js';
import { noAnswer } from '../review/about.js';
import { reviewedReply } from '../review/shown.js';
import { reviewVerbs } from '../review/verbs.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';

const verify: Verb = {
	usage: 'verify',
	help: 'walks the whole log and says whether it is unbroken',
	pattern: /^verify$/i,
	run: async (turn) => {
		const report = await turn.log.verify(turn.incoming.shop);
		const broken = report.shops.flatMap((shop) => shop.problem ?? [])[0];
		const count = report.shops.reduce((sum, shop) => sum + shop.entries, 0);
		const verdict =
			broken === undefined
				? `The log is unbroken: ${count} entries.`
				: `The log is broken: ${broken.message}.`;
		return listed(verdict, 'channel');
	},
};

const showOne: Verb = {
	usage: 'show 128',
	help: 'one answer with its working',
	pattern: /^(?:show\s+)?#?(\d{1,9})$/i,
	run: (turn, match) => showEntry(turn, Number(match[1])),
};

const showNewest: Verb = {
	usage: 'show [TOPIC]',
	help: "the newest answers of this channel's build",
	pattern: /^(?:show)?\s*([a-z-]*)$/i,
	run: (turn, match) => showEntries(turn, (match[1] as string).toLowerCase()),
};

async function showEntries(turn: Turn, what: string): Promise<Reply> {
	const build = await turn.build();
	const topic = what === '' ? null : topicNamed(what);
	if (what !== '' && topic === null)
		return listed(`"${what.slice(0, 40)}" is no topic and no number.`, 'asker');
	const { entries } = await turn.log.find(turn.incoming.shop, {
		...(build === null ? { channel: turn.incoming.channel } : { build }),
		...(topic === null ? {} : { topic: topic.name }),
		kinds: ['exchange'],
		limit: 10,
	});
	const title = build === null ? 'Newest answers of this channel' : `Newest answers of build "${build}"`;
	if (entries.length === 0) return listed(`${title}: none yet.`, 'channel');
	return listed([title, ...entries.map(entryLine)].join('\n'), 'channel');
}

async function showEntry(turn: Turn, number: number): Promise<Reply> {
	const entry = await turn.log.entry(turn.incoming.shop, number);
	const reply = entry === null ? null : await reviewedReply(turn.log, entry);
	if (reply === null) return listed(noAnswer(number), 'asker');
	const parts = [...reply.parts.map((one) => ({ ...one, fold: false })), ...workingParts(reply.answer)];
	return { ...reply, audience: 'channel', parts, buttons: [] };
}

export const logVerbs: readonly Verb[] = [...reviewVerbs, showOne, verify, resend, showNewest];
export const logExample = '/log show 128';
