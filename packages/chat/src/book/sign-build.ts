/** "/log sign build": a lead signs the channel's build as a whole, as it stands at that moment. */

import { checkVan } from '@lugbook/core';
import type { Log } from '@lugbook/log';
import type { OpenFinding, SheetState } from '@lugbook/report';
import type { z } from 'zod';
import type { Reply } from '../message.js';
import { instantText } from '../render/entry.js';
import { listed } from '../reply.js';
import { refuse } from '../review/about.js';
import { isOwnQuestion } from '../review/asker.js';
import { ANYWAY, type buildSignedSchema } from '../review/build-signature.js';
import { rightsOf } from '../review/leads.js';
import { OWN_SIGNATURE } from '../review/sign.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { Answers, counts } from './answers.js';
import { FindingsOfAnswers } from './findings.js';
import { SigningSoFar } from './signing.js';
import { toldOf } from './told.js';

/** Numbers named of each matter. */
const NUMBERS_MAX = 10;
/** States in which an answer stands in the way; a replaced one has its answer elsewhere. */
const openStates = [
	'not checked',
	'asked of the lead',
	'rejected',
	'out of date',
] as const satisfies readonly SheetState[];

/** A build at one moment, as somebody who signs it has to know it. */
interface Standing {
	/** the newest entry of the log it rests on; null where the log has none */
	readonly covers: { readonly entry: number; readonly hash: string } | null;
	readonly answers: number;
	readonly pieces: number;
	readonly signed: number;
	/** what stands in the way, in words: "2 not checked (No. 4, 9)" */
	readonly open: readonly string[];
	/** answers that are not signed and whose question the person asked */
	readonly own: readonly number[];
}

async function standingOf(turn: Turn, build: string): Promise<Standing> {
	const { log, incoming } = turn;
	const { shop, person } = incoming;
	const answers = await Answers.take(log, shop, build);
	const head = await headAt(log, shop, answers.upTo);
	const told = await toldOf(log, shop, build, answers.upTo);
	const found = new FindingsOfAnswers();
	const signing = new SigningSoFar();
	const own: number[] = [];
	for await (const reviewed of answers.each()) {
		signing.add(reviewed);
		if (!counts(reviewed)) continue;
		found.add(reviewed);
		const isOpen = reviewed.review.state !== 'signed';
		if (isOpen && (await isOwnQuestion(log, reviewed.entry, person))) own.push(reviewed.entry.number);
	}
	const { answers: states } = signing.signing();
	const check = told.van.pieces.length === 0 ? null : checkVan(told.van, turn.context());
	const dangers = found.with(check, told).filter(({ severity }) => severity === 'danger');
	return {
		covers: head,
		answers: answers.count,
		pieces: told.van.pieces.length,
		signed: states.signed?.length ?? 0,
		open: [
			...(dangers.length === 0 ? [] : [dangersText(dangers)]),
			...openStates.flatMap((state) => {
				const numbers = states[state] ?? [];
				return numbers.length === 0 ? [] : [`${numbers.length} ${state} (${numbersText(numbers)})`];
			}),
		],
		own,
	};
}

async function headAt(log: Log, shop: string, number: number): Promise<Standing['covers']> {
	const entry = number === 0 ? null : await log.entry(shop, number);
	return entry === null ? null : { entry: entry.number, hash: entry.hash };
}

function dangersText(dangers: readonly OpenFinding[]): string {
	const numbers = [...new Set(dangers.flatMap(({ entries }) => entries))].sort((a, b) => a - b);
	const count = dangers.length === 1 ? '1 danger' : `${dangers.length} dangers`;
	return numbers.length === 0 ? count : `${count} (${numbersText(numbers)})`;
}

function numbersText(numbers: readonly number[]): string {
	const more = numbers.length > NUMBERS_MAX ? ` and ${numbers.length - NUMBERS_MAX} more` : '';
	return `No. ${numbers.slice(0, NUMBERS_MAX).join(', ')}${more}`;
}

async function signBuild(turn: Turn, words: string): Promise<Reply> {
	const { log, incoming } = turn;
	const { person, shop } = incoming;
	const build = await turn.build();
	if (build === null) return listed('No build is chosen for this channel. Say "/build use NAME".', 'asker');
	const no = (why: string) => refuse(turn, null, why, build);
	if (!(await rightsOf(log, shop, person)).isLead)
		return await no('Signing a build is for the leads of this shop.');
	const standing = await standingOf(turn, build);
	const { covers, open, own } = standing;
	if (covers === null || (standing.answers === 0 && standing.pieces === 0))
		return await no(`There is nothing of build "${build}" to sign yet.`);
	const allowsOwn = own.length > 0 && (await log.getSetting(shop, OWN_SIGNATURE)) === 'yes';
	if (own.length > 0 && !allowsOwn)
		return await no(
			own.length === 1
				? `Build "${build}" is not signed: ${numbersText(own)} is your own question, whose answer somebody else signs first.`
				: `Build "${build}" is not signed: ${numbersText(own)} are your own questions, whose answers somebody else signs first.`,
		);
	const anyway = ANYWAY.exec(words);
	const reason = (anyway?.[1] ?? '').trim();
	if (open.length > 0 && anyway === null)
		return await no(
			`Build "${build}" is not signed, for there is still open: ${open.join('; ')}. Settle it first, or say why it is signed all the same: "/log sign build anyway REASON".`,
		);
	if (anyway !== null && reason === '')
		return listed('Say why it is signed all the same: "/log sign build anyway REASON".', 'asker');
	const isOpen = open.length > 0;
	const meaning = isOpen ? 'approved as a whole, with what is open' : 'checked and approved as a whole';
	const body: z.infer<typeof buildSignedSchema> = {
		meaning,
		ownQuestion: allowsOwn,
		covers,
		signed: standing.signed,
		open: isOpen ? open.join('; ') : null,
	};
	const { entry } = await log.append({
		...turn.entry(build),
		kind: 'build-signed',
		topic: null,
		follows: null,
		state: null,
		body,
	});
	const typed = anyway === null ? words : reason;
	const said = typed === '' ? meaning : `${meaning}: ${typed}`;
	return listed(
		[
			`Build "${build}" signed as a whole by ${person.name}, ${instantText(entry.at)} (No. ${entry.number}): ${said}`,
			`It covers the log up to No. ${covers.entry}, hash ${covers.hash}`,
			`${standing.signed} of ${standing.answers} answers have a signature that holds; ${isOpen ? `open all the same: ${open.join('; ')}` : 'nothing is open'}${allowsOwn ? '; among them answers to their own questions, as this shop allows' : ''}`,
			'Whatever changes the build from now on puts this signature out of date.',
		].join('\n'),
		'channel',
	);
}

export const signBuildVerb: Verb = {
	usage: 'sign build [anyway WHY]',
	help: null,
	pattern: /^sign\s+(?:the\s+)?(?:whole\s+)?build(?:\s+(\S[\s\S]{0,999}))?$/i,
	run: (turn, match) => signBuild(turn, (match[1] ?? '').trim()),
};
