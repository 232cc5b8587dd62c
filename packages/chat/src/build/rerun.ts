/** "/build rerun": answers that are out of date worked out again from the van as it stands; each keeps its old one. */

import type { Given } from '@lugbook/language';
import type { Mark, Part, Reply } from '../message.js';
import { workOut } from '../question.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import { isFromBuild, withBuild } from './borrowed.js';
import { counted } from './lines.js';
import { type Outdated, outdatedOf, whyOutdated } from './outdated.js';
import { noBuild } from './tell.js';
import { vanOf } from './van.js';

export async function rerunBuild(turn: Turn): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed(noBuild, 'asker');
	const van = await vanOf(turn.log, turn.incoming.shop, build);
	const outdated = await outdatedOf(turn.log, turn.incoming.shop, build, van, turn.context());
	if (outdated.length === 0) return listed(`No answer of build "${build}" is out of date.`, 'channel');
	const parts: Part[] = [];
	const marks: Mark[] = [];
	for (const [at, old] of outdated.entries()) {
		const { answer } = await again(turn, build, old, at);
		const number = answer.entry;
		parts.push({
			kind: 'list',
			text: `No. ${number} replaces No. ${old.number}: ${answer.headline} (${whyOutdated(van, old.rests, turn.context())})`,
			fold: false,
		});
		for (const { severity, text } of answer.findings) {
			if (severity !== 'note') parts.push({ kind: severity, text: `No. ${number}: ${text}`, fold: false });
		}
		marks.push({
			entry: old.number,
			channel: turn.incoming.channel,
			thread: turn.incoming.thread,
			text: `No longer valid: replaced by No. ${number}: ${answer.headline}`,
			stands: false,
			instead: number,
		});
	}
	const reply = listed(
		`Worked out again: ${counted(outdated.length, 'answer')} of build "${build}"`,
		'channel',
	);
	return { ...reply, parts: [...reply.parts, ...parts], marks };
}

/** One answer again: what was said stays, what came from the build is asked of it anew. */
async function again(turn: Turn, build: string, { number, exchange }: Outdated, at: number): Promise<Reply> {
	const { request } = exchange;
	if (request === null) throw new Error('an answer without a request rests on nothing');
	const { topic, context, named = [] } = request;
	const reading = {
		topic,
		given: (request.given as Given[]).filter((given) => !isFromBuild(given)),
		conflicts: [],
		notes: [],
		unread: [],
		unplaced: [],
		said: [],
		context,
		rival: null,
		followsUp: false,
		tooLong: false,
		smallTalk: false,
	};
	const known = await withBuild(turn.log, turn.incoming.shop, build, reading, named);
	const { delivery } = turn.incoming;
	return await turn.keep(
		build,
		// The question stays that of whoever asked it: to work it out again changes nothing of it.
		{ ...workOut(known.reading, named), rests: known.rests, askedIn: exchange.askedIn ?? number },
		// One message makes several entries; the first bears its delivery, so that it is done once.
		{ replaces: number, ...(at === 0 || delivery === null ? {} : { delivery: `${delivery} ${at}` }) },
	);
}
