import { topicNamed } from '@lugbook/core';
import type { Entry } from '@lugbook/log';
import { exchangeOf } from '../memory.js';
import type { Reply } from '../message.js';
import { entryLine } from '../render/entry.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { type ActKind, reviewOf } from './acts.js';
import { pictureOfAnswer } from './picture.js';
import { report } from './report.js';
import { sheetRecordOf } from './sheet.js';

const ownSignature = "a signature under one's own question is allowed";

/** The answer a verb is about, or the reply that says why there is none. */
async function answerAt(turn: Turn, number: number): Promise<Entry | Reply> {
	const entry = await turn.log.entry(turn.incoming.shop, number);
	const exchange = entry === null ? null : exchangeOf(entry);
	if (entry === null || exchange === null || exchange.answer.status !== 'answered') {
		return listed(`There is no answer No. ${number} in this shop's log.`, 'asker');
	}
	return entry;
}

function isReply(found: Entry | Reply): found is Reply {
	return 'parts' in found;
}

/** Puts an act about an answer into the log. */
async function act(
	turn: Turn,
	about: Entry,
	kind: ActKind,
	meaning: string,
	ownQuestion = false,
): Promise<number> {
	const { entry } = await turn.log.append({
		...turn.entry(about.build),
		kind,
		topic: about.topic,
		follows: about.number,
		state: null,
		body: { meaning, ownQuestion },
	});
	return entry.number;
}

/** What somebody may not do is refused politely, and kept. */
async function refuse(turn: Turn, about: Entry, why: string): Promise<Reply> {
	await turn.log.append({
		...turn.entry(about.build),
		kind: 'refused-action',
		topic: about.topic,
		follows: about.number,
		state: null,
		body: { why },
	});
	return listed(why, 'asker');
}

async function sign(turn: Turn, number: number): Promise<Reply> {
	const about = await answerAt(turn, number);
	if (isReply(about)) return about;
	const { person, shop } = turn.incoming;
	if (!person.lead)
		return await refuse(
			turn,
			about,
			'Signing is for the leads of this shop. Ask one of them with "/log ask-lead".',
		);
	const own = about.personId === person.id && !about.erased;
	if (own && (await turn.log.getSetting(shop, ownSignature)) !== 'yes') {
		return await refuse(turn, about, `No. ${number} is your own question: somebody else signs its answer.`);
	}
	const review = await reviewOf(turn.log, shop, number);
	if (review.state === 'replaced') {
		return await refuse(
			turn,
			about,
			`No. ${number} was replaced by No. ${review.replacedBy}: look at that one.`,
		);
	}
	await act(turn, about, 'signed', own ? 'checked and approved, own question' : 'checked and approved', own);
	const ownWords = own ? ' (their own question; this shop allows it)' : '';
	return listed(
		`No. ${number} signed by ${person.name}${ownWords}, checked and approved: ${entryLine(about)}`,
		'channel',
	);
}

async function reject(turn: Turn, number: number, reason: string): Promise<Reply> {
	const about = await answerAt(turn, number);
	if (isReply(about)) return about;
	if (!turn.incoming.person.lead)
		return await refuse(turn, about, 'Rejecting is for the leads of this shop. You can "/log comment".');
	if (reason === '') return listed(`Say why: "/log reject ${number} REASON".`, 'asker');
	await act(turn, about, 'rejected', 'rejected');
	return listed(`No. ${number} rejected by ${turn.incoming.person.name}: ${reason}`, 'channel');
}

async function comment(turn: Turn, number: number, words: string): Promise<Reply> {
	const about = await answerAt(turn, number);
	if (isReply(about)) return about;
	if (words === '') return listed(`Say what: "/log comment ${number} TEXT".`, 'asker');
	await act(turn, about, 'commented', 'comment');
	return listed(`No. ${number}, ${turn.incoming.person.name}: ${words}`, 'channel');
}

async function askLead(turn: Turn, number: number): Promise<Reply> {
	const about = await answerAt(turn, number);
	if (isReply(about)) return about;
	await act(turn, about, 'asked', 'asked of the lead');
	return listed(
		`No. ${number} is asked of the lead: it stands in "/log review" until it is signed or rejected.`,
		'channel',
	);
}

async function sheet(turn: Turn, number: number): Promise<Reply> {
	const about = await answerAt(turn, number);
	if (isReply(about)) return about;
	const record = await sheetRecordOf(turn.log, about);
	if (record === null) return listed(`No. ${number} has no calculation to show.`, 'asker');
	const { sheetText } = await report();
	return listed(sheetText(record), 'channel');
}

/** Unsigned answers of the build, those with a danger first, then by the system they belong to. */
async function review(turn: Turn): Promise<Reply> {
	const build = await turn.build();
	const { shop, channel } = turn.incoming;
	const { entries } = await turn.log.find(shop, {
		...(build === null ? { channel } : { build }),
		kinds: ['exchange'],
		states: ['answered'],
		limit: 200,
	});
	const open: { entry: Entry; grave: number; system: string; state: string }[] = [];
	for (const entry of entries) {
		const { state } = await reviewOf(turn.log, shop, entry.number);
		if (state === 'signed' || state === 'rejected' || state === 'replaced') continue;
		const findings = exchangeOf(entry)?.answer.findings ?? [];
		const grave = findings.some(({ severity }) => severity === 'danger')
			? 0
			: findings.some(({ severity }) => severity === 'warning')
				? 1
				: 2;
		const system = entry.topic === null ? 'other' : (topicNamed(entry.topic)?.system ?? 'other');
		open.push({ entry, grave, system, state });
	}
	const where = build === null ? 'this channel' : `build "${build}"`;
	if (open.length === 0) return listed(`Nothing is unsigned in ${where}.`, 'channel');
	open.sort(
		(a, b) => a.grave - b.grave || a.system.localeCompare(b.system) || a.entry.number - b.entry.number,
	);
	const lines = open.slice(0, 30).map(({ entry, grave, system, state }) => {
		const word = grave === 0 ? 'DANGER ' : grave === 1 ? 'warning ' : '';
		return `${word}${system}: ${entryLine(entry)}${state === 'asked of the lead' ? ' (asked of the lead)' : ''}`;
	});
	const more = open.length > lines.length ? [`and ${open.length - lines.length} more`] : [];
	return listed([`${open.length} unsigned in ${where}`, ...lines, ...more].join('\n'), 'channel');
}

async function allowOwn(turn: Turn, on: boolean): Promise<Reply> {
	if (!turn.incoming.person.lead) return listed('Only a lead can change that.', 'asker');
	await turn.log.append({
		...turn.entry(null),
		kind: 'settings',
		topic: null,
		follows: null,
		state: null,
		body: { ownSignature: on },
	});
	await turn.log.setSetting(turn.incoming.shop, ownSignature, on ? 'yes' : null);
	return listed(
		on
			? 'Leads may now sign answers to their own questions; the signature says so.'
			: 'Nobody signs an answer to their own question.',
		'channel',
	);
}

const numbered = (word: string) =>
	new RegExp(`^(?:${word})\\s+#?(\\d{1,9})(?:\\s+(\\S[\\s\\S]{0,999}))?$`, 'i');
const numberOf = (match: RegExpExecArray) => Number(match[1]);
const wordsIn = (match: RegExpExecArray) => (match[2] ?? '').trim();

export const reviewVerbs: readonly Verb[] = [
	{
		usage: 'review',
		help: 'what is unsigned in the build, dangers first',
		pattern: /^review$/i,
		run: review,
	},
	{
		usage: 'sheet 128',
		help: 'one answer as a calculation sheet',
		pattern: numbered('sheet'),
		run: (turn, match) => sheet(turn, numberOf(match)),
	},
	{
		usage: 'picture 128 [WHICH]',
		help: null,
		pattern: numbered('picture'),
		run: (turn, match) => pictureOfAnswer(turn, numberOf(match), wordsIn(match)),
	},
	{
		usage: 'sign 128',
		help: 'a lead signs it',
		pattern: numbered('sign'),
		run: (turn, match) => sign(turn, numberOf(match)),
	},
	{
		usage: 'reject 128 WHY',
		help: 'a lead rejects it',
		pattern: numbered('reject'),
		run: (turn, match) => reject(turn, numberOf(match), wordsIn(match)),
	},
	{
		usage: 'comment 128 TEXT',
		help: 'a word on it',
		pattern: numbered('comment'),
		run: (turn, match) => comment(turn, numberOf(match), wordsIn(match)),
	},
	{
		usage: 'ask-lead 128',
		help: 'puts it before the lead',
		pattern: numbered('ask-lead|ask'),
		run: (turn, match) => askLead(turn, numberOf(match)),
	},
	{
		usage: 'own-signature on|off',
		help: null,
		pattern: /^own-signature\s+(on|off)$/i,
		run: (turn, match) => allowOwn(turn, (match[1] as string).toLowerCase() === 'on'),
	},
];
