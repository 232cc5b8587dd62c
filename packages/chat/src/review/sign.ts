/** Signing, rejecting, commenting on and asking the lead about an answer. */

import type { Mark, Reply } from '../message.js';
import { entryLine, instantText } from '../render/entry.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { act, answerAt, noAnswer, refuse } from './about.js';
import { restingOn, reviewOf } from './acts.js';
import { isOwnQuestion } from './asker.js';
import { rightsOf } from './leads.js';

export const OWN_SIGNATURE = "a signature under one's own question is allowed";
const APPROVED = 'checked and approved';

async function sign(turn: Turn, number: number, words: string): Promise<Reply> {
	const { person, shop } = turn.incoming;
	const about = await answerAt(turn, number);
	if (about === null) return await refuse(turn, null, noAnswer(number));
	if (!(await rightsOf(turn.log, shop, person)).isLead) {
		const why = `Signing is for the leads of this shop. Ask one of them with "/log ask-lead ${number}".`;
		return await refuse(turn, about, why);
	}
	const own = await isOwnQuestion(turn.log, about, person);
	if (own && (await turn.log.getSetting(shop, OWN_SIGNATURE)) !== 'yes') {
		return await refuse(turn, about, `No. ${number} is your own question: somebody else signs its answer.`);
	}
	const review = await reviewOf(turn.log, about);
	if (review.state === 'replaced') {
		const why = `No. ${number} was replaced by No. ${review.replacedBy}: look at that one.`;
		return await refuse(turn, about, why);
	}
	const again =
		review.asked === null || about.erased || about.personId !== person.id
			? ''
			: ', worked out again by the signer';
	const meaning = `${APPROVED}${own ? ', own question' : ''}${again}`;
	const signed = await act(turn, about, 'signed', { meaning, ownQuestion: own });
	const said = `${APPROVED}${again}${words === '' ? '' : `, ${words}`}`;
	const reply = listed(
		own
			? `No. ${number} signed by ${person.name} (their own question; this shop allows it), ${said}: ${entryLine(about)}`
			: `No. ${number} signed by ${person.name}, ${said}: ${entryLine(about)}`,
		'channel',
	);
	const text = own
		? `Signed by ${person.name} (their own question; this shop allows it), ${instantText(signed.at)}: ${said}`
		: `Signed by ${person.name}, ${instantText(signed.at)}: ${said}`;
	return { ...reply, marks: [{ ...placeIn(about), text, stands: true }] };
}

async function reject(turn: Turn, number: number, reason: string): Promise<Reply> {
	const { person, shop } = turn.incoming;
	const about = await answerAt(turn, number);
	if (about === null) return await refuse(turn, null, noAnswer(number));
	if (!(await rightsOf(turn.log, shop, person)).isLead) {
		return await refuse(
			turn,
			about,
			`Rejecting is for the leads of this shop. You can say a word: "/log comment ${number} TEXT".`,
		);
	}
	if (reason === '') return listed(`Say why: "/log reject ${number} REASON".`, 'asker');
	const rejected = await act(turn, about, 'rejected', { meaning: 'rejected' });
	const resting = await restingLines(turn, number);
	const reply = listed(
		[`No. ${number} rejected by ${person.name}: ${reason}`, ...resting].join('\n'),
		'channel',
	);
	const text = `No longer valid: rejected by ${person.name} (${instantText(rejected.at)}): ${reason}`;
	return { ...reply, marks: [{ ...placeIn(about), text, stands: false }] };
}

/** What else no longer stands on firm ground when an answer falls. */
export async function restingLines(turn: Turn, number: number): Promise<string[]> {
	const resting = await restingOn(turn.log, turn.incoming.shop, number);
	return resting.length === 0
		? []
		: [`These rest on No. ${number}: look at them again`, ...resting.map((entry) => entryLine(entry))];
}

/** The place of an answer, for its mark. */
export function placeIn(about: {
	readonly number: number;
	readonly channel: string;
	readonly thread: string | null;
}): Pick<Mark, 'entry' | 'channel' | 'thread'> {
	return { entry: about.number, channel: about.channel, thread: about.thread };
}

async function comment(turn: Turn, number: number, words: string): Promise<Reply> {
	const about = await answerAt(turn, number);
	if (about === null) return await refuse(turn, null, noAnswer(number));
	if (words === '') return listed(`Say what: "/log comment ${number} TEXT".`, 'asker');
	await act(turn, about, 'commented', { meaning: 'comment' });
	return listed(`No. ${number}, comment by ${turn.incoming.person.name}: ${words}`, 'channel');
}

async function askLead(turn: Turn, number: number): Promise<Reply> {
	const about = await answerAt(turn, number);
	if (about === null) return await refuse(turn, null, noAnswer(number));
	await act(turn, about, 'asked', { meaning: 'asked of the lead' });
	return listed(
		`No. ${number} is asked of the lead: it stands in "/log review" until it is signed or rejected.`,
		'channel',
	);
}

async function allowOwn(turn: Turn, on: boolean): Promise<Reply> {
	const { person, shop } = turn.incoming;
	if (!(await rightsOf(turn.log, shop, person)).isLead) {
		return await refuse(turn, null, 'Only a lead can change that.');
	}
	const before = await turn.log.getSetting(shop, OWN_SIGNATURE);
	await turn.log.setSetting(shop, OWN_SIGNATURE, on ? 'yes' : null);
	try {
		await turn.log.append({
			...turn.entry(null),
			kind: 'settings',
			topic: null,
			follows: null,
			state: null,
			body: { ownSignature: on },
		});
	} catch (error) {
		// Nothing is allowed without a trace.
		if (on) await turn.log.setSetting(shop, OWN_SIGNATURE, before);
		throw error;
	}
	return listed(
		on
			? 'Leads may now sign answers to their own questions; the signature says so.'
			: 'Nobody signs an answer to their own question.',
		'channel',
	);
}

/** What came with an act that takes a number but is none: typed wrongly, or the value of a button that was forged. */
async function noNumber(turn: Turn, word: string, value: string): Promise<Reply> {
	const right = `Say the number of an answer: "/log ${word.toLowerCase()} 128".`;
	if (value === '') return listed(right, 'asker');
	return await refuse(
		turn,
		null,
		`"${value.slice(0, 40).replaceAll('"', '')}" is no number of an answer. ${right}`,
	);
}

const numbered = (word: string) =>
	new RegExp(`^(?:${word})\\s+(?:no\\.?\\s*|#)?([1-9]\\d{0,8})(?:[ \\t,:]+(\\S[\\s\\S]{0,999}))?$`, 'i');
const numberOf = (match: RegExpExecArray) => Number(match[1]);
const wordsIn = (match: RegExpExecArray) => (match[2] ?? '').trim();

/** "sign all", "sign 3 and 4", "reject 3, 4 too thin": never one of them with the rest taken for a remark. */
const several =
	/^(sign|approve|reject|withdraw|unsign)\s+(?:all|everything)\b|^(sign|approve|reject|withdraw|unsign)\s+#?\d+(?:(?:\s*(?:,|and|&|\+)\s*|\s+)#?\d+)+(?:\s*$|(?<=(?:,|and|&|\+)\s*#?\d+)\s+(?!(?:mm|cm|m|ft|in|a|ah|v|w|kg|lb|awg)\b))/i;

export const signVerbs: readonly Verb[] = [
	{
		usage: 'sign all',
		help: null,
		pattern: several,
		run: async () =>
			listed(
				'Nothing was done: answers are judged one by one, each by its number. "/log review" lists what is unsigned; "/log sign build" signs the build as a whole.',
				'asker',
			),
	},
	{
		usage: 'sign 128',
		help: null,
		pattern: numbered('sign|approve'),
		run: (turn, match) => sign(turn, numberOf(match), wordsIn(match)),
	},
	{
		usage: 'reject 128 WHY',
		help: null,
		pattern: numbered('reject'),
		run: (turn, match) => reject(turn, numberOf(match), wordsIn(match)),
	},
	{
		usage: 'comment 128 TEXT',
		help: null,
		pattern: numbered('comment'),
		run: (turn, match) => comment(turn, numberOf(match), wordsIn(match)),
	},
	{
		usage: 'ask-lead 128',
		help: null,
		pattern: numbered('ask-lead|ask'),
		run: (turn, match) => askLead(turn, numberOf(match)),
	},
	{
		usage: 'own-signature on|off',
		help: null,
		pattern: /^own-signature\s+(on|off)$/i,
		run: (turn, match) => allowOwn(turn, (match[1] as string).toLowerCase() === 'on'),
	},
	{
		usage: 'sign|withdraw|reject|comment|ask-lead 128 [WORDS]',
		help: 'a lead signs ("sign build": the whole build), takes that back, or rejects; all comment or ask the lead',
		pattern: /^(sign|reject|comment|ask-lead)(?:\s+([\s\S]*))?$/i,
		run: (turn, match) => noNumber(turn, match[1] as string, (match[2] ?? '').trim()),
	},
];
