/**
 * "/log withdraw 128 WHY" and "/log withdraw build WHY": a lead takes a signature back. It stays in the log with its
 * withdrawal behind it.
 */

import type { z } from 'zod';
import type { Reply } from '../message.js';
import { entryLine, instantText } from '../render/entry.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { act, answerAt, noAnswer, refuse } from './about.js';
import { reviewOf } from './acts.js';
import { buildSignatureLines, buildSignatureOf, type buildWithdrawnSchema } from './build-signature.js';
import { rightsOf } from './leads.js';
import { placeIn } from './sign.js';

const WITHDRAWN = 'signature withdrawn';
const forLeads = 'Withdrawing a signature is for the leads of this shop.';

/** The answer goes back to the lead: it stands in review until it is signed again or rejected. */
async function withdraw(turn: Turn, number: number, reason: string): Promise<Reply> {
	const { person, shop } = turn.incoming;
	const about = await answerAt(turn, number);
	if (about === null) return await refuse(turn, null, noAnswer(number));
	if (!(await rightsOf(turn.log, shop, person)).isLead) return await refuse(turn, about, forLeads);
	const { state, replacedBy } = await reviewOf(turn.log, about);
	if (replacedBy !== null) {
		const why = `No. ${number} was replaced by No. ${replacedBy}: look at that one.`;
		return await refuse(turn, about, why);
	}
	if (state !== 'signed' && state !== 'out of date')
		return await refuse(turn, about, `No. ${number} has no signature that could be withdrawn.`);
	if (reason === '') return listed(`Say why: "/log withdraw ${number} REASON".`, 'asker');
	const withdrawn = await act(turn, about, 'asked', { meaning: WITHDRAWN, withdraws: true });
	const lines = [
		`The signature under No. ${number} is withdrawn by ${person.name}: ${reason}`,
		`It stands in "/log review" until it is signed again or rejected: ${entryLine(about)}`,
	];
	const text = `Withdrawn by ${person.name}, ${instantText(withdrawn.at)}: ${reason}`;
	return {
		...listed(lines.join('\n'), 'channel'),
		marks: [{ ...placeIn(about), text, stands: true }],
	};
}

async function withdrawBuild(turn: Turn, reason: string): Promise<Reply> {
	const { log, incoming } = turn;
	const { person, shop } = incoming;
	const build = await turn.build();
	if (build === null) return listed('No build is chosen for this channel. Say "/build use NAME".', 'asker');
	const no = (why: string) => refuse(turn, null, why, build);
	if (!(await rightsOf(log, shop, person)).isLead) return await no(forLeads);
	const signature = await buildSignatureOf(log, shop, build);
	if (signature === null) return await no(`Build "${build}" has no signature as a whole to withdraw.`);
	if (signature.withdrawn !== null)
		return await no(
			`The signature under build "${build}" as a whole was withdrawn already (No. ${signature.withdrawn.entry}).`,
		);
	if (reason === '') return listed('Say why it is withdrawn: "/log withdraw build REASON".', 'asker');
	const body: z.infer<typeof buildWithdrawnSchema> = { meaning: WITHDRAWN, withdraws: signature.entry };
	await log.append({
		...turn.entry(build),
		kind: 'build-signed',
		topic: null,
		follows: null,
		state: null,
		body,
	});
	return listed(buildSignatureLines(build, await buildSignatureOf(log, shop, build)).join('\n'), 'channel');
}

export const withdrawVerbs: readonly Verb[] = [
	{
		usage: 'withdraw 128|build WHY',
		help: null,
		pattern:
			/^(?:withdraw|unsign)\s+(?:the\s+)?(?:signature\s+(?:(?:under|of|from)\s+)?(?:the\s+)?)?build(?:[\s,:]+(\S[\s\S]{0,999}))?$/i,
		run: (turn, match) => withdrawBuild(turn, (match[1] ?? '').trim()),
	},
	{
		usage: 'withdraw 128 WHY',
		help: null,
		pattern:
			/^(?:withdraw|unsign)\s+(?:the\s+)?(?:signature\s+(?:(?:under|of|from)\s+)?)?(?:no\.?\s*|#)?([1-9]\d{0,8})(?:[\s,:]+(\S[\s\S]{0,999}))?$/i,
		run: (turn, match) => withdraw(turn, Number(match[1]), (match[2] ?? '').trim()),
	},
];
