/** How an answer of the log is shown with what became of it: who signed it, when and meaning what, or why it no longer stands. */

import type { Entry, Log } from '@lugbook/log';
import { exchangeOf } from '../memory.js';
import type { Part, Reply } from '../message.js';
import { instantText, nameOf } from '../render/entry.js';
import { audienceOf, replyWith } from '../reply.js';
import { type Review, reviewOf } from './acts.js';

/** The answer as it was given, with its review; null where the entry is no exchange. */
export async function reviewedReply(log: Log, entry: Entry): Promise<Reply | null> {
	const exchange = exchangeOf(entry);
	if (exchange === null) return null;
	const answer = { ...exchange.answer, entry: entry.number };
	const reply = replyWith(answer, entry.build, audienceOf(answer));
	return answer.status === 'answered' ? withReview(reply, entry, await reviewOf(log, entry)) : reply;
}

function withReview(reply: Reply, entry: Entry, review: Review): Reply {
	const [headline, ...others] = reply.parts;
	const lines = [...againLine(entry, review), ...reviewLines(review)];
	if (headline === undefined || lines.length === 0) return reply;
	if (stands(review)) return { ...reply, parts: [headline, ...lines, ...others] };
	// A danger of it is still one, and is read without a line through it.
	const struck = others.map((part) => (part.kind === 'danger' ? part : { ...part, struck: true }));
	return { ...reply, parts: [{ ...headline, struck: true }, ...lines, ...struck], buttons: [] };
}

/** Who asked an answer that somebody had worked out again. */
function againLine(entry: Entry, { asked }: Review): Part[] {
	if (asked === null) return [];
	const text = `Asked by ${nameOf(asked)} in No. ${asked.number}, worked out again from the build by ${nameOf(entry)}`;
	return [{ kind: 'list', text, fold: false }];
}

/** Whether an answer still counts. */
export function stands({ state }: Review): boolean {
	return state !== 'replaced' && state !== 'rejected';
}

function reviewLines({ state, reason, signatures, replacedBy }: Review): Part[] {
	const warnings: string[] = [];
	if (replacedBy !== null) warnings.push(`No longer valid: replaced by No. ${replacedBy}.`);
	if (state === 'rejected') warnings.push('No longer valid: rejected.');
	if (state === 'out of date') warnings.push(`The signature is out of date. ${reason ?? ''}`.trim());
	const said = signatures.map(({ act, name, at, meaning, ownQuestion }) => {
		const by = `${name ?? 'somebody who was forgotten'}${ownQuestion ? ' (their own question; this shop allows it)' : ''}`;
		const words = {
			signed: 'Signed',
			rejected: 'Rejected',
			withdrawn: 'Withdrawn',
			commented: 'Comment',
			'asked of the lead': 'Asked',
		};
		const how = act in words ? words[act as keyof typeof words] : act;
		return `${how} by ${by}, ${instantText(at)}: ${meaning}`;
	});
	return [
		...warnings.map((text): Part => ({ kind: 'warning', text, fold: false })),
		...said.map((text): Part => ({ kind: 'list', text, fold: false })),
	];
}

/** The state in a list, behind the answer's line; empty for one that nobody has looked at yet. */
export function stateWords({ state, replacedBy }: Review): string {
	if (state === 'not checked') return '';
	return state === 'replaced' ? ` (replaced by No. ${replacedBy})` : ` (${state})`;
}
