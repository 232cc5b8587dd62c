/** What is kept about the one who asks, and how to be forgotten. Only about oneself, and only answered in private. */

import { forgetPerson } from '../forget.js';
import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { dayText } from './dates.js';
import { forgetLead, rightsOf } from './leads.js';
import { NOBODY } from './people.js';

/** In the words of a question. */
const ASKED_WHAT =
	/^(?:(?:so )?what (?:do|have) you (?:keep|kept|know|store|stored|have|save|saved) (?:about|on|of) me|my data|what is (?:kept|stored) about me|was (?:speicherst|wei(?:ß|ss)t) du (?:ü|ue)ber mich|qu[ée] (?:guardas|sabes) (?:de|sobre) m[íi])$/i;
const ASKED_FORGET =
	/^(?:(?:please )?(?:forget|erase|delete) (?:me|my data|my name)|vergiss mich(?: bitte)?|olv[íi]dame)(?: please)?$/i;

/** The reply to a message that is about oneself, or null. */
export async function aboutMe(turn: Turn): Promise<Reply | null> {
	const said = turn.text.replace(/[\s?!.¿¡,]+$/u, '').replace(/^[¿¡\s]+/u, '');
	if (ASKED_WHAT.test(said)) return await me(turn);
	return ASKED_FORGET.test(said) ? await askForgetting(turn) : null;
}

interface Counts {
	readonly entries: number;
	readonly questions: number;
	readonly signatures: number;
	readonly builds: ReadonlySet<string>;
	readonly channels: ReadonlySet<string>;
	readonly first: string | null;
	readonly last: string | null;
}

const none: Counts = {
	entries: 0,
	questions: 0,
	signatures: 0,
	builds: new Set(),
	channels: new Set(),
	first: null,
	last: null,
};

async function countsOf(turn: Turn): Promise<Counts> {
	const { shop, person } = turn.incoming;
	return await turn.log.fold(shop, { personId: person.id }, none, (before, entry) => ({
		entries: before.entries + 1,
		questions: before.questions + (entry.kind === 'exchange' ? 1 : 0),
		signatures: before.signatures + (entry.kind === 'signed' ? 1 : 0),
		builds: entry.build === null ? before.builds : new Set([...before.builds, entry.build]),
		channels: new Set([...before.channels, entry.channel]),
		first: before.first ?? entry.at,
		last: entry.at,
	}));
}

async function me(turn: Turn): Promise<Reply> {
	const { log, incoming } = turn;
	const { shop, person } = incoming;
	const counts = await countsOf(turn);
	const { isLead } = await rightsOf(log, shop, person);
	if (counts.entries === 0) {
		const nothing = "I keep no entry of yours in this shop's log.";
		return listed(isLead ? `${nothing} You are a lead here.` : nothing, 'asker');
	}
	const many = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;
	const counted = `Among them: ${many(counts.questions, 'question')}, ${many(counts.signatures, 'signature')}, in ${many(counts.channels.size, 'channel')}.`;
	const builds = [...counts.builds].slice(0, 20).join(', ');
	const lines = [
		`I keep ${counts.entries} entries of yours in this shop's log, from ${dayText(counts.first ?? '')} to ${dayText(counts.last ?? '')}.`,
		builds === '' ? counted : `${counted} Builds: ${builds}.`,
		`With each: your name (${person.name}), your id (${person.id}), your words as typed. That part can be erased.`,
		'For good: the calculation, when and where it was asked, and a pseudonym that is the same in all of them.',
		...(isLead ? ['You are a lead of this shop.'] : []),
		'Not in my hands: the messages in the channel itself, and backups and exports made before.',
		'To have your name and words erased: "/log forget-me".',
	];
	return {
		...listed(lines.join('\n'), 'asker'),
		buttons: [{ action: 'forget', label: 'Forget me', value: 'ask' }],
	};
}

async function askForgetting(turn: Turn): Promise<Reply> {
	const { entries, signatures } = await countsOf(turn);
	if (entries === 0)
		return listed("There is nothing to erase: I keep no entry of yours in this shop's log.", 'asker');
	const lines = [
		`This erases your name, your id and your words as typed from ${entries} entries. It can't be undone.`,
		'The calculations stay, and the log still verifies.',
		...(signatures === 0 ? [] : ['Your signatures stay as signatures of somebody who was forgotten.']),
		'What waits to be shown to you is dropped. Backups and exports made before are not in my hands.',
		'To do it: the button, or "/log forget-me confirm".',
	];
	return {
		...listed(lines.join('\n'), 'asker'),
		buttons: [{ action: 'forget', label: 'Yes, forget me', value: 'confirm' }],
	};
}

/** Whoever says it is forgotten, nobody else: the button carries no name. */
async function forget(turn: Turn): Promise<Reply> {
	const { log, incoming } = turn;
	const { shop, person, platform } = incoming;
	if (incoming.keep === false) return await askForgetting(turn);
	const erased = await forgetPerson(log, { platform, shop, personId: person.id });
	const isStillListed = await forgetLead(log, shop, person.id);
	// That it was done is kept, of whom is not.
	await log.append({
		...turn.entry(null),
		personId: NOBODY,
		personName: NOBODY,
		text: '',
		kind: 'forgotten',
		topic: null,
		follows: null,
		state: null,
		body: { entries: erased },
	});
	const lines = [
		`Done: your name, your id and your words are erased from ${erased} entries. The log still verifies.`,
		...(isStillListed
			? ["One thing stays, your id alone: that an administrator took the lead's right away from it."]
			: []),
		'If you write to me again, that is kept anew.',
	];
	return listed(lines.join('\n'), 'asker');
}

export const meVerbs: readonly Verb[] = [
	{
		usage: 'me, forget-me',
		help: 'what is kept about you; has your name and words erased',
		pattern: /^me$/i,
		run: me,
	},
	{ usage: 'forget-me', help: null, pattern: /^forget-?me$/i, run: askForgetting },
	{ usage: 'forget-me confirm', help: null, pattern: /^forget-?me\s+confirm$/i, run: forget },
];
