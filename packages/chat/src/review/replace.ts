/** An answer asked again with a change: the new one replaces it, the old one stays in the log and says so. */

import { declineOf, type Given } from '@lugbook/language';
import { exchangeOf } from '../memory.js';
import type { Reply } from '../message.js';
import { workOut } from '../question.js';
import { instantText } from '../render/entry.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { answerAt, noAnswer, refuse } from './about.js';
import { reviewOf } from './acts.js';
import { isOwnQuestion } from './asker.js';
import { rightsOf } from './leads.js';
import { placeIn, restingLines } from './sign.js';

async function replace(turn: Turn, number: number, change: string): Promise<Reply> {
	const { log, incoming, reader } = turn;
	const { shop, person } = incoming;
	const about = await answerAt(turn, number);
	const request = about === null ? null : (exchangeOf(about)?.request ?? null);
	if (about === null || request === null) return await refuse(turn, null, noAnswer(number));
	const isOwn = await isOwnQuestion(log, about, person);
	if (!isOwn && !(await rightsOf(log, shop, person)).isLead) {
		return await refuse(turn, about, `No. ${number} is replaced by whoever asked it, or by a lead.`);
	}
	const { replacedBy } = await reviewOf(log, about);
	if (replacedBy !== null) {
		return listed(`No. ${number} was replaced by No. ${replacedBy} already: change that one.`, 'asker');
	}
	if (change === '') {
		return listed(`Say what changes: "/log replace ${number} and at 20 ft", or the whole question.`, 'asker');
	}
	const decline = declineOf(change);
	if (decline !== null) return listed(`No. ${number} stays. ${decline.why} ${decline.instead}`, 'asker');
	const previous = { topic: request.topic, given: request.given as Given[], asked: request.asked };
	const reading = reader.read(change, {
		context: { ...turn.context(), region: request.context.region },
		previous,
	});
	const worked = workOut(reading);
	if (worked.answer.status !== 'answered') {
		return listed(`No. ${number} stays: ${worked.answer.headline}`, 'asker');
	}
	const reply = await turn.keep(about.build, worked, { follows: number, replaces: number });
	if (reply.repeated) return reply;
	const now = reply.answer.entry;
	const lines = [`It replaces No. ${number}, which stays in the log.`, ...(await restingLines(turn, number))];
	const entry = now === null ? null : await log.entry(shop, now);
	const by = entry === null ? person.name : `${person.name}, ${instantText(entry.at)}`;
	const [headline, ...others] = reply.parts;
	return {
		...reply,
		parts: [
			...(headline === undefined ? [] : [headline]),
			...lines.map((text) => ({ kind: 'list' as const, text, fold: false })),
			...others,
		],
		marks: [
			{
				...placeIn(about),
				text: `No longer valid: replaced by No. ${now} (${by}).`,
				stands: false,
				instead: now,
			},
		],
	};
}

export const replaceVerb: Verb = {
	usage: 'replace 128 CHANGE',
	help: 'asks it again with a change; the old one stays, struck through',
	pattern: /^replace\s+#?([1-9]\d{0,8})(?:\s+(\S[\s\S]*))?$/i,
	run: (turn, match) => replace(turn, Number(match[1]), (match[2] ?? '').trim()),
};
