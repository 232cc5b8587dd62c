import { describe, expect, test } from 'vitest';
import { books } from '../../packages/chat/src/phrases/books.js';
import { german } from '../../packages/core/src/phrases/de/index.js';
import { spanish } from '../../packages/core/src/phrases/es/index.js';
import { conversationSentences, topicSentences, vanSentences } from './sentences.js';

// Every sentence is said in Spanish and German, with the same gaps and the same numbers. The terms of the trade are those
// of IEC 60050 (the International Electrotechnical Vocabulary) in the language, from memory, and common practice.

const languages = [
	['Spanish', spanish, books.es],
	['German', german, books.de],
] as const;

const topics = topicSentences();
const conversation = conversationSentences();
const van = vanSentences();

test('there are sentences to look for', () => {
	expect(topics.found.length).toBeGreaterThan(2000);
	expect(conversation.length).toBeGreaterThan(20);
	expect(van.length).toBeGreaterThan(140);
	const places = new Set(topics.found.map(({ where }) => where.split(' ')[1]));
	for (const place of [
		'say',
		'finding',
		'refuse',
		'caution',
		'required',
		'question',
		'label',
		'result',
		'why',
	]) {
		expect(places).toContain(place);
	}
});

test('no sentence is composed past the phrasebooks', () => {
	const composed = topics.untagged.filter(({ where }) => !/ step$/.test(where));
	expect(composed).toEqual([]);
});

describe.each(languages)('%s', (_, book, chatBook) => {
	test('lacks no sentence, label, question, finding or caution of the topics', () => {
		expect(topics.found.filter(({ key }) => book[key] === undefined)).toEqual([]);
	});

	test('lacks nothing that a check of a van finds or asks', () => {
		expect(van.filter(({ key }) => book[key] === undefined)).toEqual([]);
	});

	test('lacks none of what the conversation says of itself', () => {
		const known = (key: string) => chatBook[key] !== undefined || book[key] !== undefined;
		expect(conversation.filter(({ key }) => !known(asTold(key)) && !isName(key))).toEqual([]);
	});

	const all = [...Object.entries(book), ...Object.entries(chatBook)];

	test('has the gaps of the English sentence, each once', () => {
		const gaps = (text: string) => (text.match(/\{\d+\}/g) ?? []).toSorted();
		const wrong = all.filter(([key, told]) => gaps(key).join() !== gaps(told).join());
		expect(wrong).toEqual([]);
	});

	test('changes no number', () => {
		// A whole number with a comma for its thousands is written without it.
		const numbers = (text: string) =>
			(text.replace(/\{\d+\}/g, '').match(/\d+(?:[.,]\d+)*/g) ?? [])
				.map((number) => (/^\d,\d{3}$/.test(number) ? number.replace(',', '') : number))
				.toSorted();
		const wrong = all.filter(([key, told]) => numbers(key).join() !== numbers(told).join());
		expect(wrong).toEqual([]);
	});

	test('keeps blanks and marks at the ends, so that sentences join as in English', () => {
		const ends = (text: string) => [/^[\s,;]*/.exec(text)?.[0], /\s*$/.exec(text)?.[0]].join('|');
		const wrong = all.filter(([key, told]) => ends(key) !== ends(told));
		expect(wrong).toEqual([]);
	});

	test('a sentence that forbids or warns does so here too', () => {
		const forbids = /\b(?:never|must not|do not)\b/i;
		const here = /\b(?:nunca|no|ni|nada)\b|\b(?:nie|nicht|kein\w*|darf)\b/i;
		const weaker = Object.entries(book).filter(
			([key, told]) => forbids.test(key) && key.length > 40 && !here.test(told),
		);
		expect(weaker).toEqual([]);
	});

	test('what must be done must be done here too', () => {
		const must = /\bmust\b/i;
		const here =
			/\b(?:deb[ae]\w*|tiene\w* que|hay que|necesit\w+|exig\w+|obligan)\b|\b(?:muss|müss\w*|müsste\w*|darf|dürfen|braucht|anzugeben|nötig|Zulässig)\b/;
		const weaker = Object.entries(book).filter(
			([key, told]) => must.test(key) && key.length > 60 && !here.test(told) && !/^The \{0\} must/.test(key),
		);
		expect(weaker).toEqual([]);
	});
});

/** Sentences whose parts are put in before they are told. */
function asTold(key: string): string {
	if (key.startsWith('I read {0} for the {1}: {2}'))
		return 'I read two values for the {0}: {1} and {2}. Which one is meant?';
	if (key.startsWith('Is this about {0}?')) return 'Is this about {0}, or {1}?';
	if (key === 'Without a build') return 'Without a build: {0}';
	if (key.startsWith('"{0}" names no answers')) return key.replace('/log export {1} 1..400', '{1}');
	return key
		.replace(/^\{0\} is taken as \{1\} \{2\} \(\{3\}\)\.$/, '{0} is taken as {1} ({2}).')
		.replace(/^\{0\} is taken as \{0\} \{1\} \(\{2\}\)\.$/, '{0} is taken as {1} ({2}).');
}

/** Examples and names of documents are the same in every language. */
function isName(key: string): boolean {
	return /^(?:NFPA|IEC|ISO|NEC|UL)\b/.test(key);
}
