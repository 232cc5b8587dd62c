import { exchangeOf } from '../memory.js';
import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { noAnswer } from './about.js';
import { buildSignatureLines, buildSignatureOf } from './build-signature.js';
import { digestVerbs } from './digest.js';
import { leadVerbs } from './leads.js';
import { meVerbs } from './me.js';
import { noAnswerReply } from './no-answer.js';
import { olderLines, openAnswers, openLines } from './open.js';
import { replaceVerb } from './replace.js';
import { report } from './report.js';
import { rootVerb } from './root.js';
import { sheetRecordOf } from './sheet.js';
import { signVerbs } from './sign.js';
import { withdrawVerbs } from './withdraw.js';

async function sheet(turn: Turn, number: number): Promise<Reply> {
	const entry = await turn.log.entry(turn.incoming.shop, number);
	if (entry === null) return listed(noAnswer(number), 'asker');
	if (exchangeOf(entry) === null) return await noAnswerReply(turn, entry);
	const record = await sheetRecordOf(turn.log, entry);
	if (record === null)
		return listed(`No. ${number} has no calculation: "/log show ${number}" shows what was said.`, 'asker');
	const { sheetText } = await report();
	const reply = listed(sheetText(record), 'channel');
	return { ...reply, parts: reply.parts.map((part) => ({ ...part, isPaper: true })) };
}

/** Unsigned answers of the build, those with a danger first, then by the system they belong to. */
async function review(turn: Turn): Promise<Reply> {
	const build = await turn.build();
	const { shop, channel } = turn.incoming;
	const { open, rejected, amongNewest } = await openAnswers(
		turn.log,
		shop,
		build === null ? { channel } : { build },
	);
	const where = build === null ? 'this channel' : `build "${build}"`;
	const whole =
		build === null ? [] : buildSignatureLines(build, await buildSignatureOf(turn.log, shop, build));
	const head = open.length === 0 ? `Nothing is unsigned in ${where}.` : `${open.length} unsigned in ${where}`;
	const lines = [
		head,
		...olderLines(amongNewest),
		...openLines(open, 30),
		...rejectedLines(rejected),
		...whole,
	];
	return listed(lines.join('\n'), 'channel');
}

/** What was rejected still wants an answer, or the word that none is needed. */
function rejectedLines(rejected: readonly number[]): string[] {
	if (rejected.length === 0) return [];
	const shown = `No. ${rejected.slice(-10).join(', ')}`;
	return [`Rejected, and nothing in their place yet: ${shown}`];
}

export const reviewVerbs: readonly Verb[] = [
	{
		usage: 'review',
		help: 'what is unsigned in the build, dangers first',
		pattern: /^review$/i,
		run: review,
	},
	{
		usage: 'sheet 128',
		help: null,
		pattern: /^sheet\s+#?([1-9]\d{0,8})$/i,
		run: (turn, match) => sheet(turn, Number(match[1])),
	},
	...signVerbs,
	replaceVerb,
	...withdrawVerbs,
	...leadVerbs,
	...digestVerbs,
	...meVerbs,
	rootVerb,
];
