/** The language of a reply: that of the message; where it says none, that of its thread or of the question before it. */

import { type Language, languages, type Speaking, sayFor } from '@lugbook/core';
import { languageIn } from '@lugbook/language';
import type { Entry, Log } from '@lugbook/log';
import { checkPairs, wholeVan } from './build/check.js';
import { vanOf } from './build/van.js';
import { exchangeOf } from './memory.js';
import type { Incoming, Reply } from './message.js';
import { books } from './phrases/books.js';
import { entryLine } from './render/entry.js';
import { rephraser } from './render/rephrase.js';
import { type About, retell, workedIn } from './retell.js';
import type { Turn } from './turn.js';

function isLanguage(text: string | null): text is Language {
	return languages.some((language) => language === text);
}

/** What the message itself is written in. The first word of "/build describe ..." and "/log show" is a command's. */
function saidIn(message: Pick<Incoming, 'command' | 'text' | 'fields'>): Language | null {
	const text = message.text.trim();
	const typed = Object.values(message.fields ?? {}).join(' ');
	// What the buttons of an answer say, and short words that are typed in any language.
	if (/^(?:>\s*)?(?:why|show (?:the )?working|(?:one )?size (?:up|down))[.?]?$/i.test(text)) return null;
	if (/^ayuda$/i.test(text)) return 'es';
	if (/^hilfe$/i.test(text)) return 'de';
	if (message.command === 'log') {
		const words = /^(?:sign|reject|comment|replace)\s+\S+\s+(\S[\s\S]*)$/i.exec(text)?.[1];
		return words === undefined ? null : languageIn(words);
	}
	if (message.command === 'ask') return languageIn(`${text} ${typed}`);
	return languageIn(`${text.replace(/^\S+/, '')} ${typed}`);
}

const ofEntry = (entry: number) => `language of No. ${entry}`;
const ofChannel = (channel: string) => `language in ${channel}`;
const ofThread = (channel: string, thread: string) => `language in ${channel} ${thread}`;

/** What the place of a message remembers. */
async function keptIn(turn: Turn): Promise<Language | null> {
	const { log, incoming } = turn;
	const { shop, channel, thread } = incoming;
	if (incoming.keep === false) return null;
	const inThread = thread === null ? null : await log.getSetting(shop, ofThread(channel, thread));
	if (isLanguage(inThread)) return inThread;
	// "/build check" and "/log review" say no language by themselves: it is that of the channel.
	const isOfChannel = incoming.command === 'build' || incoming.command === 'log';
	const inChannel = isOfChannel ? await log.getSetting(shop, ofChannel(channel)) : null;
	if (thread === null && isOfChannel) return isLanguage(inChannel) ? inChannel : null;
	// In the channel itself a message stands alone unless it goes on with a question.
	if (thread === null && !/^>/.test(incoming.text)) return null;
	const last = await turn.lastQuestion();
	const ofLast = last === null ? inChannel : await log.getSetting(shop, ofEntry(last.entry));
	return isLanguage(ofLast) ? ofLast : null;
}

async function remember(turn: Turn, { language, said, known }: Tongue, entry: number | null) {
	const { log, incoming } = turn;
	if (incoming.keep === false) return;
	const { shop, channel, thread } = incoming;
	if (thread !== null && language !== (known ?? 'en')) {
		await log.setSetting(shop, ofThread(channel, thread), language);
	}
	if (said && thread === null && language !== ((await log.getSetting(shop, ofChannel(channel))) ?? 'en')) {
		await log.setSetting(shop, ofChannel(channel), language);
	}
	if (entry !== null && language !== 'en') await log.setSetting(shop, ofEntry(entry), language);
}

function speaking(turn: Turn, about: About, language: Language): Speaking {
	return { language, units: about.request?.context.units ?? turn.context().units };
}

/** What a reply is about: what was kept for this message, or the answer of the log that it shows. */
async function aboutOf(turn: Turn, reply: Reply): Promise<About> {
	if (turn.kept !== null) {
		const { worked, build } = turn.kept;
		return { request: worked.request, answered: worked.about ?? null, build };
	}
	const { entry: number } = reply.answer;
	const entry = number === null ? null : await turn.log.entry(turn.incoming.shop, number);
	return { ...ofLogged(entry), build: entry?.build ?? null };
}

function ofLogged(entry: Entry | null): Omit<About, 'build'> {
	return { request: (entry === null ? null : exchangeOf(entry)?.request) ?? null, answered: null };
}

/** What the check of a van finds, in the language: worked out anew, as answers are. */
async function checkedIn(turn: Turn, reply: Reply, build: string | null, language: Language) {
	if (reply.answer.topic !== wholeVan || build === null) return new Map<string, string>();
	const van = await vanOf(turn.log, turn.incoming.shop, build);
	return checkPairs(van, { ...turn.context(), language });
}

/** What is known of the language before a message is answered. */
interface Tongue {
	readonly language: Language;
	/** the message itself tells it */
	readonly said: boolean;
	/** what its place remembers */
	readonly known: Language | null;
}

export async function tongueOf(turn: Turn): Promise<Tongue> {
	const { language } = turn.incoming;
	if (language !== undefined) return { language, said: false, known: null };
	const said = saidIn(turn.incoming);
	const isOfLog = turn.incoming.command === 'log';
	const known = said === null || isOfLog || turn.incoming.thread !== null ? await keptIn(turn) : null;
	// A word on an answer is for whoever reads the channel: it is read out in the channel's language, and does not change it.
	if (isOfLog) return { language: known ?? said ?? 'en', said: false, known };
	return { language: said ?? known ?? 'en', said: said !== null, known };
}

/**
 * The language for what is said of a message without answering it: its own, else that of its thread, of its channel,
 * English. While the log can't tell, the message itself is all there is.
 */
export async function languageAt(
	log: Pick<Log, 'getSetting'>,
	message: Pick<Incoming, 'shop' | 'channel' | 'thread' | 'command' | 'text'>,
): Promise<Language> {
	const said = saidIn(message);
	if (said !== null) return said;
	const { shop, channel, thread } = message;
	const kept = async (name: string) => await log.getSetting(shop, name).catch(() => null);
	const inThread = thread === null ? null : await kept(ofThread(channel, thread));
	if (isLanguage(inThread)) return inThread;
	const inChannel = await kept(ofChannel(channel));
	return isLanguage(inChannel) ? inChannel : 'en';
}

/** What is said while a reply is worked out, in the language it will have. */
export function sayingIn(turn: Turn, { language }: Tongue): (text: string) => string {
	return rephraser({ language, units: turn.context().units });
}

/** The reply in the language of whoever asked, which its place remembers. */
export async function inTheirTongue(turn: Turn, tongue: Tongue, reply: Reply): Promise<Reply> {
	const { language } = tongue;
	await remember(turn, tongue, reply.answer.entry);
	if (language === 'en') return reply;
	const about = await aboutOf(turn, reply);
	const told = new Map([
		...(await checkedIn(turn, reply, about.build, language)),
		...(await namedIn(turn, reply, language)),
	]);
	return retell(reply, speaking(turn, about, language), { ...about, told });
}

/** Answers named in one reply that are worked out in its language. */
const NAMED_MAX = 50;

/** The lines of the answers that a reply of the log or of a build names by their numbers, in the language. */
async function namedIn(turn: Turn, reply: Reply, language: Language): Promise<[string, string][]> {
	const { command, shop } = turn.incoming;
	if (command !== 'log' && command !== 'build') return [];
	const texts = reply.parts.filter(({ isPaper }) => isPaper !== true).map(({ text }) => text);
	const numbers = texts.flatMap((text) =>
		[...text.matchAll(/\bNo\. (\d{1,9})\b/g)].map((one) => Number(one[1])),
	);
	const some = [...new Set(numbers)].slice(0, NAMED_MAX);
	if (some.length === 0) return [];
	const { entries } = await turn.log.find(shop, { numbers: some, kinds: ['exchange'], limit: NAMED_MAX });
	const say = sayFor({ language, units: turn.context().units }, books[language]);
	return entries.flatMap((entry): [string, string][] => {
		const exchange = exchangeOf(entry);
		if (exchange === null) return [];
		const { headline } = exchange.answer;
		const told = workedIn(language, exchange.request, exchange.answer)?.headline ?? headline;
		return [
			[headline, told],
			[entryLine(entry), entryLine(entry, say`No. ${entry.number}`, told)],
		];
	});
}

/** The language in which an answer of the log was given. */
export async function languageOf(
	log: Pick<Log, 'getSetting'>,
	shop: string,
	number: number,
): Promise<Language> {
	const kept = await log.getSetting(shop, ofEntry(number)).catch(() => null);
	return isLanguage(kept) ? kept : 'en';
}

/**
 * An answer that a bot shows by itself, long after, in the language in which it was given, and what is said above it.
 * @param words such as what became of it
 * @param other the answer that they name beside it, or null
 */
export async function asGiven(
	log: Log,
	shop: string,
	number: number,
	{ reply, words, other }: { readonly reply: Reply; readonly words: string; readonly other: number | null },
): Promise<{ readonly reply: Reply; readonly words: string }> {
	const language = await languageOf(log, shop, number);
	if (language === 'en') return { reply, words };
	const entry = await log.entry(shop, number);
	const about = { ...ofLogged(entry), build: entry?.build ?? null };
	const told = new Map<string, string>();
	const next = other === null ? null : await log.entry(shop, other);
	const exchange = next === null ? null : exchangeOf(next);
	if (exchange !== null) {
		const { request, answer } = exchange;
		told.set(answer.headline, workedIn(language, request, answer)?.headline ?? answer.headline);
	}
	// An answer without a request measures nothing: then the units say nothing.
	const speaking = { language, units: about.request?.context.units ?? 'metric' } as const;
	const retold = retell(reply, speaking, { ...about, told });
	return { reply: retold, words: rephraser(speaking, told)(words) };
}

/** A reply that was given before, in the language it was given in. */
export async function repliedIn(turn: Turn, reply: Reply, entry: Entry): Promise<Reply> {
	const kept = await turn.log.getSetting(turn.incoming.shop, ofEntry(entry.number));
	if (!isLanguage(kept)) return reply;
	const about = { ...ofLogged(entry), build: entry.build };
	const told = await checkedIn(turn, reply, about.build, kept);
	return retell(reply, speaking(turn, about, kept), { ...about, told });
}

/** A reply that the log could not keep: only the message itself tells its language. */
export function unkept(turn: Turn, reply: Reply): Reply {
	const about: About = { request: null, answered: null, build: null };
	return retell(reply, speaking(turn, about, saidIn(turn.incoming) ?? 'en'), about);
}
