import {
	type Change,
	type Context,
	changed,
	equipmentOf,
	labelOf,
	settled,
	type Values,
	type Van,
} from '@lugbook/core';
import { contextOf } from '../message-context.js';
import { changesFor } from './changes.js';
import { describe } from './describe.js';
import { countFieldOf, take } from './take.js';
import { Text } from './text.js';

/** What a few words change in a van that was told of. */
export interface Correction {
	readonly changes: readonly Change[];
	readonly notes: readonly string[];
	readonly unread: readonly string[];
	readonly context: Context;
	/**
	 * How plainly it is one: `plain` by a verb of its own ("add", "drop", "make the bank"), `named` where it names a piece
	 * ("the fridge is 60 W"), `last` where it speaks of the piece told of last ("no, two of them"), `bare` where it is
	 * figures alone ("60 W").
	 */
	readonly how: 'plain' | 'named' | 'last' | 'bare';
}

const start = '^(?:(?:ok|okay|please|pls|and|also|then|so|now|bitte|por favor)[, ]+)*';
const verbs = {
	remove: new RegExp(
		`${start}(?:drop|remove|delete|scrap|take (?:out|off|away)|get rid of|lose|quitar?|quitamos|elimina(?:r|mos)?|saca(?:r|mos)?|entferne[n]?|streiche[n]?|weg mit)\\s+(?<rest>.+)$`,
		'iu',
	),
	add: new RegExp(
		`${start}(?:we (?:added|add)|add|put in|install|fit|añad(?:e|ir|imos)|agrega(?:r|mos)?|pon(?:er|emos)?|füge[n]? .{0,3}hinzu|ergänze[n]?)\\s+(?<rest>.+)$`,
		'iu',
	),
	swap: new RegExp(
		`${start}(?:swap|replace|exchange|cambia(?:r|mos)?|sustituye|ersetze[n]?|tausche[n]?)\\s+(?<rest>.+?)\\s+(?:with|for|by|against|por|durch|gegen)\\s+(?<other>.+)$`,
		'iu',
	),
	set: new RegExp(
		`${start}(?:make|set|change|turn|correct|upgrade|downgrade|cambia|pon|haz|mach|ändere|setze)\\s+(?:the|our|my|el|la|los|las|die|den|das|der)\\s+(?<rest>.+)$`,
		'iu',
	),
	whole: new RegExp(
		`${start}(?:use|make|run|go(?: with)?|usa(?:mos)?|nimm|nehmen wir)?\\s*(?:it )?(?<rest>\\d{2}(?:[.,]\\d)?\\s*v(?:olts?|olt|oltios)?)\\s*(?:for|in|across|throughout|para|en|für|im)?\\s*(?:the|la|toda la|todo el|den|das)?\\s*(?:whole|entire|all of the|ganzen?|gesamten?|toda|todo)\\b.*$`,
		'iu',
	),
} as const;

/** "fridge out", "la nevera fuera", "das Kochfeld fliegt raus". */
const removedBehind =
	/^(?<rest>.+?)\s+(?:is out|is gone|goes out|fuera|se quita|se va|weg|raus|(?:fliegt|kommt|muss|ist|kann) (?:raus|weg))[.! ]*$/iu;
/** "no fridge", "sin nevera", "ohne Kühlschrank". */
const leftOut =
	/^(?:no|without|sin|ohne|kein(?:e[nr]?)?)\s+(?:the |any |el |la |los |las |die |den |das )?(?<rest>\p{L}[\p{L} -]*)[.! ]*$/iu;

/** "no, two of them", "actually 80 W": about the piece told of last. */
const pronoun =
	/^(?:no|nope|nein|wait|sorry|actually|correction|perdón|halt|eigentlich|make (?:it|that)|it's|its|it is|there are|son|es sind)[, ]+(?<rest>.+)$/iu;

/**
 * Reads a correction: "the fridge is 60 W", "no, two of them", "drop the cooktop", "add a 100 W panel", "make the bank
 * 24 V", "use 24 V for the whole van".
 *
 * @param last the piece told of last, which "no, two of them" speaks of
 * @returns null where the words change nothing in a van
 */
export function readCorrection(
	message: string,
	van: Van,
	last: string | null,
	base: Context,
): Correction | null {
	const text = message.trim();
	if (text === '' || text.length > 600 || /[?]\s*$/.test(text)) return null;
	const matched = (name: keyof typeof verbs) => verbs[name].exec(text)?.groups;
	const whole = matched('whole');
	if (whole?.rest !== undefined)
		return corrected(`battery bank ${whole.rest}`, van, base, 'correction', 'plain');
	const swap = matched('swap');
	if (swap?.rest !== undefined && swap.other !== undefined) return swapped(swap.rest, swap.other, van, base);
	const removed = matched('remove');
	if (removed?.rest !== undefined) return without(removed.rest, van, base);
	const behind = removedBehind.exec(text)?.groups?.rest ?? leftOut.exec(text)?.groups?.rest;
	const gone = behind === undefined ? null : without(behind, van, base);
	// Only what is in the build can be taken out by so few words.
	if (gone !== null && gone.changes.length > 0 && gone.unread.length === 0) return gone;
	const added = matched('add');
	if (added?.rest !== undefined) return corrected(added.rest, van, base, 'addition', 'plain');
	const set = matched('set');
	if (set?.rest !== undefined) return corrected(set.rest, van, base, 'correction', 'plain');
	const about = pronoun.exec(text)?.groups?.rest;
	const ofLast = last === null ? null : ofPiece(about ?? text, van, last, base);
	const named = corrected(about ?? text, van, base, 'correction', 'named');
	// "sorry, the fridge 55 W" speaks of the fridge, whatever was told of last.
	if (named !== null && named.changes.length > 0) {
		return about !== undefined && last !== null ? { ...named, how: 'last' } : named;
	}
	if (about !== undefined && ofLast !== null) return { ...ofLast, how: 'last' };
	return named ?? ofLast;
}

function corrected(
	text: string,
	van: Van,
	base: Context,
	telling: 'correction' | 'addition',
	how: Correction['how'],
): Correction | null {
	const description = describe(text, base);
	const told = changesFor(van, description, telling);
	if (told.changes.length === 0 && told.notes.length === 0) return null;
	return {
		changes: told.changes,
		notes: [...description.notes, ...told.notes],
		unread: description.unread,
		context: description.context,
		how,
	};
}

/** "drop the cooktop", "remove the second fan": what is named goes, with what the words tell it by. */
function without(text: string, van: Van, base: Context): Correction | null {
	const description = describe(text, base);
	const notes: string[] = [];
	const changes = description.mentions.flatMap(({ kind, given, said }): Change[] => {
		const same = van.pieces.filter((piece) => piece.kind === kind);
		if (same.length === 0) {
			notes.push(`There is no ${equipmentOf(kind).label} in this build.`);
			return [];
		}
		const { values } = settled(
			kind,
			Object.fromEntries(given.map(({ name, value }) => [name, value])) as Values,
			base,
		);
		const fitting = same.filter((piece) =>
			Object.entries(values).every(
				([name, value]) => piece.values[name] === undefined || piece.values[name] === value,
			),
		);
		const all = /\b(?:all|both|alle|beide|todos|todas|ambos)\b/iu.test(said);
		const meant = all ? fitting : fitting.slice(-1);
		if (meant.length === 0) {
			notes.push(
				`No ${equipmentOf(kind).label} in this build is like that: ${same.map(labelOf).join(', ')}.`,
			);
		}
		return meant.map(({ id }) => ({ change: 'remove', id }));
	});
	if (changes.length === 0 && notes.length === 0) return null;
	return { changes, notes, unread: description.unread, context: description.context, how: 'plain' };
}

function swapped(text: string, other: string, van: Van, base: Context): Correction | null {
	const gone = without(text, van, base);
	if (gone === null) return null;
	const added = corrected(other, changed(van, gone.changes), base, 'addition', 'plain');
	if (added === null) return null;
	return {
		changes: [...gone.changes, ...added.changes],
		notes: [...gone.notes, ...added.notes],
		unread: [...gone.unread, ...added.unread],
		context: added.context,
		how: 'plain',
	};
}

/** Figures without a thing: of the piece told of last. */
function ofPiece(words: string, van: Van, last: string, base: Context): Correction | null {
	const piece = van.pieces.find(({ id }) => id === last);
	if (piece === undefined) return null;
	const text = new Text(words);
	const context = contextOf(text.elements(null), words, base);
	const whole = { start: 0, end: words.length };
	const taken = take(text, piece.kind, [whole], context);
	const values: Record<string, number | string | boolean> = {};
	for (const { name, value } of taken.given) if (typeof value !== 'object') values[name] = value;
	const count = countFieldOf(piece.kind)?.[0];
	const alone = text
		.elements(piece.kind)
		.filter((element) => element.type === 'number' && !taken.claimed.has(element));
	const [only] = alone;
	// "two of them", "three": how many.
	if (count !== undefined && only?.type === 'number' && alone.length === 1 && Number.isInteger(only.value)) {
		values[count] = only.value;
	}
	const { values: known, refusals } = settled(piece.kind, values, context);
	const notes = refusals.map(({ text: what, instead }) => `${what} ${instead}`);
	if (Object.keys(known).length === 0 && notes.length === 0) return null;
	const change: Change = { change: 'set', id: last, values: { ...known } };
	return {
		changes: Object.keys(known).length === 0 ? [] : [change],
		notes,
		unread: [],
		context,
		how: 'bare',
	};
}
