/** What an entry is that holds no answer: somebody's act, a change of a van, a refusal. Its number can be shown too. */

import { type Change, changed, type Van } from '@lugbook/core';
import type { Entry } from '@lugbook/log';
import { z } from 'zod';
import { toldOf } from '../book/told.js';
import { changedLines } from '../build/lines.js';
import { changesOf } from '../build/van.js';
import type { Audience, Reply } from '../message.js';
import { entryLine, instantText, nameOf } from '../render/entry.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import { type ActKind, isAct, isWithdrawal, signatureOf } from './acts.js';
import {
	buildSignedSchema,
	buildWithdrawnSchema,
	changedSince,
	coversText,
	sinceText,
	withdrawalOf,
	wordsOfBuildSignature,
	wordsOfWithdrawal,
} from './build-signature.js';

const refusedBody = z.object({ why: z.string() });
const forgottenBody = z.object({ entries: z.int() });
const settingsBody = z.union([
	z.object({ ownSignature: z.boolean() }),
	z.object({ digest: z.string().nullable() }),
	z.object({ leads: z.enum(['added', 'removed']), personTag: z.string().nullable() }),
]);

/** An entry that is no answer, in words: what it is, by whom and when, and what it is about. */
export async function noAnswerReply(turn: Turn, entry: Entry): Promise<Reply> {
	const { lines, audience } = await told(turn, entry);
	return listed(lines.join('\n'), audience);
}

/** What an act is, with its number, that of the answer it is about, and who did it when. */
const heads: Readonly<Record<ActKind, (number: number, about: number | null, by: string) => string>> = {
	signed: (number, about, by) =>
		`No. ${number} is no answer: it is the signature under No. ${about}, by ${by}`,
	rejected: (number, about, by) =>
		`No. ${number} is no answer: it is the rejection of No. ${about}, by ${by}`,
	commented: (number, about, by) => `No. ${number} is no answer: it is a comment on No. ${about}, by ${by}`,
	asked: (number, about, by) => `No. ${number} is no answer: it asks the lead about No. ${about}, by ${by}`,
};

/** What was only said to one person, or is about people, is not read out to the channel. */
async function told(turn: Turn, entry: Entry): Promise<{ lines: string[]; audience: Audience }> {
	const { number, build } = entry;
	const by = `${nameOf(entry)}, ${instantText(entry.at)}`;
	if (isAct(entry.kind)) {
		const about = entry.follows === null ? null : await turn.log.entry(entry.shop, entry.follows);
		const lines = [
			isWithdrawal(entry)
				? `No. ${number} is no answer: it withdraws the signature under No. ${entry.follows}, by ${by}`
				: heads[entry.kind](number, entry.follows, by),
			`It says: ${signatureOf(entry).meaning}`,
			...(about === null ? [] : [`About ${entryLine(about)}`]),
		];
		return { lines, audience: 'channel' };
	}
	switch (entry.kind) {
		case 'build-signed':
			return { lines: await buildSigned(turn, entry), audience: 'channel' };
		case 'build-changed': {
			const lines = [
				`No. ${number} is no answer: it tells of build "${build}", by ${by}`,
				...(await changes(turn, entry)),
			];
			return { lines, audience: 'channel' };
		}
		case 'channel-bound':
			return {
				lines: [`No. ${number} is no answer: a channel was set to build "${build}", by ${by}`],
				audience: 'channel',
			};
		case 'refused-action': {
			const body = refusedBody.safeParse(entry.body);
			const lines = [
				`No. ${number} is no answer: something was refused to ${by}`,
				...(body.success ? [body.data.why] : []),
			];
			return { lines, audience: 'asker' };
		}
		case 'settings':
			return {
				lines: [`No. ${number} is no answer: a setting was changed by ${by}`, await setting(turn, entry)],
				audience: 'asker',
			};
		case 'forgotten': {
			const body = forgottenBody.safeParse(entry.body);
			const count = body.success ? body.data.entries : 0;
			return {
				lines: [
					`No. ${number} is no answer: somebody was forgotten on ${instantText(entry.at)}`,
					`Name and words are erased from entries of theirs: ${count}.`,
				],
				audience: 'asker',
			};
		}
		default:
			return {
				lines: [
					`No. ${number} is kept in the log in a form that I can't read: kind "${entry.kind}", by ${by}`,
				],
				audience: 'asker',
			};
	}
}

async function buildSigned(turn: Turn, entry: Entry): Promise<string[]> {
	const { number, build, shop } = entry;
	const by = `${nameOf(entry)}, ${instantText(entry.at)}`;
	const withdrawal = buildWithdrawnSchema.safeParse(entry.body);
	if (withdrawal.success) {
		const why = wordsOfWithdrawal(entry);
		const { meaning, withdraws } = withdrawal.data;
		return [
			`No. ${number} is no answer: it withdraws the signature under build "${build}" as a whole (No. ${withdraws}), by ${by}`,
			`It says: ${meaning}${why === null ? '' : `: ${why}`}`,
		];
	}
	const head = `No. ${number} is no answer: it is the signature under build "${build}" as a whole, by ${by}`;
	const body = buildSignedSchema.safeParse(entry.body);
	if (!body.success || build === null) return [head];
	const { meaning, covers, open, ownQuestion } = body.data;
	const words = wordsOfBuildSignature(entry);
	const since = await changedSince(turn.log, shop, build, { from: covers.entry, upTo: null });
	const withdrawn = await withdrawalOf(turn.log, entry);
	return [
		head,
		`It says: ${meaning}${words === null ? '' : `: ${words}`}`,
		...(await coversText(turn.log, shop, covers)),
		...(open === null ? [] : [`Open when it was signed: ${open}`]),
		...(ownQuestion ? ['Among them are answers to their own questions, as this shop allows.'] : []),
		withdrawn !== null
			? `WITHDRAWN by ${nameOf(withdrawn)}, ${instantText(withdrawn.at)} (No. ${withdrawn.number})`
			: since.length === 0
				? 'Nothing of the build has changed since: it holds.'
				: `OUT OF DATE: the build was changed since by ${sinceText(since)}`,
	];
}

/** The van's pieces that an entry told of, as they stood after it. */
async function changes(turn: Turn, entry: Entry): Promise<string[]> {
	const steps: readonly Change[] = changesOf(entry);
	const before: Van = (await toldOf(turn.log, entry.shop, entry.build ?? '', entry.number - 1)).van;
	const lines = changedLines(before, changed(before, steps), turn.context());
	return lines.length === 0 ? ['It left the van as it was.'] : lines;
}

async function setting(turn: Turn, entry: Entry): Promise<string> {
	const parsed = settingsBody.safeParse(entry.body);
	if (!parsed.success) return "It is kept in a form that I can't read.";
	const body = parsed.data;
	if ('ownSignature' in body)
		return body.ownSignature
			? 'Leads may sign answers to their own questions.'
			: 'Nobody signs an answer to their own question.';
	if ('digest' in body)
		return body.digest === null ? 'The daily digest is off.' : `The daily digest comes at ${body.digest}.`;
	const who = (await turn.log.people(entry.shop)).find(({ tag }) => tag !== null && tag === body.personTag);
	// Under another shop's name pseudonyms are others: then only the words themselves tell.
	const name = who?.name ?? typedName(entry) ?? 'somebody';
	return body.leads === 'added' ? `${name} was made a lead.` : `The lead's right was taken from ${name}.`;
}

function typedName({ erased, text }: Entry): string | null {
	return erased ? null : (/^leads\s+(?:add|remove)\s+@?(\S[\s\S]*)$/i.exec(text.trim())?.[1] ?? null);
}
