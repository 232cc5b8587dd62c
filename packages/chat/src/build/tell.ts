/** A van told in words: descriptions and corrections, by "/build describe" or as a message that plainly is one. */

import { changed, equipmentOf, topicNamed, type Van } from '@lugbook/core';
import {
	type Correction,
	changesFor,
	type Description,
	describe,
	type Reading,
	readCorrection,
} from '@lugbook/language';
import type { Json } from '@lugbook/log';
import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import { changedLines, counted, vanLines } from './lines.js';
import { outdatedOf } from './outdated.js';
import { type Build, bodyOfChanges, buildNamed } from './van.js';

export const noBuild = 'No build is chosen for this channel. Say "/build use NAME".';

/** "/build describe TEXT": a description where it tells of the van, a correction where it puts one right. */
export async function tellBuild(turn: Turn, text: string): Promise<Reply> {
	const build = await turn.build();
	// A command's own words stand nowhere once it is refused: they are given back, to be sent again.
	if (build === null) {
		return listed([noBuild, 'Then send this again:', `/build describe ${text}`].join('\n'), 'asker');
	}
	const before = await buildNamed(turn.log, turn.incoming.shop, build);
	const description = describe(text, turn.context());
	if (description.tooLong)
		return listed('That description is too long for me: send it in two parts.', 'asker');
	const correction =
		before.van.pieces.length === 0 ? null : readCorrection(text, before.van, before.last, turn.context());
	const isCorrection = correction !== null && (correction.how === 'plain' || kindsIn(description).size <= 1);
	return await keepChanges(turn, build, before, isCorrection ? correction : toldBy(before.van, description));
}

/**
 * A message that plainly tells of the van the channel works on, or puts it right; null for everything else.
 *
 * @param reading the message read as a question
 * @param goesOn it stands under an answer: figures for a piece that is named there change the question
 */
export async function toldInWords(
	turn: Turn,
	build: string | null,
	text: string,
	reading: Reading,
	goesOn: boolean,
): Promise<Reply | null> {
	if (turn.incoming.keep === false || soundsAsking(text)) return null;
	const description = describe(text, turn.context());
	if (isPlainDescription(text, description, reading)) {
		if (build === null) return listed(`That tells of a van. ${noBuild}`, 'asker');
		return await tellBuild(turn, text);
	}
	if (build === null) return null;
	const before = await buildNamed(turn.log, turn.incoming.shop, build);
	if (before.van.pieces.length === 0) return null;
	const justTold = await wasJustTold(turn);
	const correction = readCorrection(text, before.van, justTold ? before.last : null, turn.context());
	if (correction === null) return null;
	const isMeant = {
		plain: true,
		named: !goesOn && (states.test(text) || corrects.test(text) || contradicts.test(text)),
		last: justTold || (!goesOn && corrects.test(text)),
		bare: justTold && reading.topic === null,
	}[correction.how];
	return isMeant ? await keepChanges(turn, build, before, correction) : null;
}

/** "the fridge is 60 W", "los paneles son de 200 W", "der Kühlschrank hat 60 W". */
const states =
	/^(?:(?:no|ok|wait|sorry|actually|also|and|now)[, ]+)*(?:the|our|my|both|el|la|los|las|der|die|das)\s.*\b(?:is|are|has|have|draws?|weighs?|holds?|es|son|tiene|tienen|ist|sind|hat|haben|zieht|wiegt)\b/iu;

/** "fridge 55 W sorry", "perdón la nevera 55 W", "Kühlschrank doch 55 W": said to put something right. */
const corrects =
	/^(?:sorry|sry|oops|ups|wait|actually|correction|perd[oó]n|perdona|quatsch|halt|eigentlich|korrektur)\b|\b(?:sorry|sry|perd[oó]n)[.! ]*$|\s(?:doch|mejor|lieber|eher)\s+\d/iu;

const questions =
	/\?\s*$|^\W*(?:hey |hi |ok |so |and |hola |hallo |moin )*(?:what|which|whats|what's|how|can|could|will|would|does|do|is|are|should|why|when|where|size|need|check|qué|que|cuál|cuánt[oa]s?|cómo|puedo|puede|va|necesito|was|welche[rsn]?|wie|wieviel|kann|können|reicht|passt|brauche|braucht)\b|\b(?:what|which|qué|welche[rsn]?) (?:size|wire|fuse|cable|gauge|sección|fusible|querschnitt|sicherung)\b/iu;

/** "No, three batteries", "no, son tres baterías": puts right what was said before, however long ago. */
const contradicts = /^(?:no|nope|nein|nö)\s*[,.:;]\s*\S/iu;

function soundsAsking(text: string): boolean {
	return questions.test(text.trim());
}

/** "the van has", "we fitted", "lleva", "eingebaut sind": says that what follows is there. */
const tells =
	/\b(?:(?:the|this|our) (?:van|build) (?:has|gets|got|comes|is getting)|(?:it|she|he) (?:has|gets|got)|we(?:'ve| have)? (?:got|fitted|installed|put in|are fitting)|on board|aboard|la furgo(?:neta)? (?:tiene|lleva)|lleva|hemos (?:puesto|montado)|der (?:van|bus|kasten|kastenwagen) (?:hat|bekommt)|verbaut|eingebaut|an bord)\b/iu;

function kindsIn({ mentions }: Description): ReadonlySet<string> {
	return new Set(mentions.filter(({ isPointed }) => !isPointed).map(({ kind }) => kind));
}

/** Told of by questions too, as what is to be fed or where. */
const inQuestions: ReadonlySet<string> = new Set(['people', 'place', 'trip', 'appliance', 'lights']);

/**
 * Several pieces of equipment and no question: two that are said to be there, three where no topic is asked for, or
 * four that no list of loads has, three with a bank and its inverter among them.
 */
function isPlainDescription(text: string, description: Description, reading: Reading): boolean {
	const kinds = [...kindsIn(description)];
	if (kinds.length < 2 || /^[a-z-]+:/i.test(text)) return false;
	// "payload long wheelbase, water 100 L, ..." asks for its topic; "battery 2 x 100 Ah, ..." begins with a piece.
	const first = /^[a-z-]+/i.exec(text)?.[0].toLowerCase() ?? '';
	if (topicNamed(first) !== null && !kinds.includes(first)) return false;
	if (tells.test(text) || (kinds.length >= 3 && reading.topic === null)) return true;
	const aboard = kinds.filter(
		(kind) =>
			!inQuestions.has(kind) && equipmentOf(kind).draws({} as never, description.context).length === 0,
	);
	const isWholeSystem = ['battery', 'inverter'].every((kind) => aboard.includes(kind));
	return aboard.length >= (isWholeSystem ? 3 : 4);
}

/** Whether the last thing kept of this person here told of a van. */
async function wasJustTold({ log, incoming }: Turn): Promise<boolean> {
	const { entries } = await log.find(incoming.shop, {
		channel: incoming.channel,
		personId: incoming.person.id,
		kinds: ['exchange', 'build-changed'],
		limit: 1,
	});
	return entries[0]?.kind === 'build-changed';
}

type Told = Pick<Correction, 'changes' | 'notes' | 'unread' | 'context'> & {
	readonly unsure?: readonly string[];
};

function toldBy(van: Van, description: Description): Told {
	const { unread, context } = description;
	return { ...changesFor(van, description), unread, context };
}

/** Makes the changes durable, then says what was understood, what changed where a list is known, and what is out of date. */
async function keepChanges(turn: Turn, build: string, before: Build, told: Told): Promise<Reply> {
	const { changes, notes, context } = told;
	const unread =
		told.unread.length === 0 ? [] : [`Not used: ${told.unread.map((words) => `"${words}"`).join(', ')}`];
	const open =
		told.unsure === undefined || told.unsure.length === 0 ? [] : [`Left open: ${told.unsure.join(', ')}`];
	if (changes.length === 0) {
		const first = notes.length === 0 ? ['I found no equipment in that.'] : [];
		return listed([...first, ...notes, ...unread].join('\n'), 'asker');
	}
	await turn.log.append({
		...turn.entry(build),
		kind: 'build-changed',
		topic: null,
		follows: null,
		state: null,
		body: JSON.parse(JSON.stringify(bodyOfChanges(changes))) as Json,
	});
	const van = changed(before.van, changes);
	const outdated = await outdatedOf(turn.log, turn.incoming.shop, build, van, turn.context());
	const numbers = outdated.map(({ number }) => `No. ${number}`).join(', ');
	const stale =
		outdated.length === 0
			? []
			: [
					`Out of date now: ${numbers}. "/build rerun" works ${outdated.length === 1 ? 'it' : 'them'} out again.`,
				];
	const isFirst = before.van.pieces.length === 0;
	const head = `Build "${build}" as understood: ${counted(van.pieces.length, 'piece')}`;
	const lines = isFirst
		? vanLines(van, context)
		: [...changedLines(before.van, van, context), 'The rest is as it was: "/build show" has all of it.'];
	return listed([head, ...lines, ...notes, ...open, ...unread, ...stale].join('\n'), 'channel');
}
