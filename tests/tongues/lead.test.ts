/** The lead's side of the log in a channel that speaks Spanish or German: every sentence in its language, names and words as typed untouched. */

import { openChat, type Person, plainText, type Reply } from '@lugbook/chat';
import type { Language } from '@lugbook/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kim, robin, sam } from '../review/shop.js';

/** Words of English that no sentence in Spanish or German holds. */
const english =
	/\b(?:the|and|is|are|of|by|with|which|signed|unsigned|rejected|comment|comments|build|answers?|leads?|says?|this|that|you|your|yours|for|from|since|until|nothing|signature|withdraw(?:n|s)?|entries|asked|checked|open|newest|none|more|forgotten|replaced|somebody|nobody|picture|day|digest|setting|approved|whole|date)\b/i;

const questions = {
	es: ['qué cable necesito para 40 A a 12 V, 5 m', 'qué cable necesito para una bomba de 7 A a 12 V, 3 m'],
	de: [
		'welches Kabel brauche ich für 40 A 12 V 5 m',
		'welches Kabel brauche ich für eine Pumpe 7 A 12 V 3 m',
	],
} as const;

const descriptions = {
	es: '/build describe nevera de 60 W, 2 baterías de 100 Ah',
	de: '/build describe Kühlschrank mit 60 W, 2 Batterien mit 100 Ah',
} as const;

/** Words that would be told otherwise if they were taken for a sentence of the books. */
const typed = 'wire and fuse: 2.5 mm, more; signed';

/** A lead's days; the numbers are those of the entries. */
const script = (language: 'es' | 'de'): readonly (readonly [Person, string])[] => [
	[robin, '/build use heron'],
	[robin, questions[language][0]],
	[robin, questions[language][1]],
	[robin, descriptions[language]],
	[kim, '/log help'],
	[kim, '/build help'],
	[kim, '/log nonsense'],
	[kim, '/log review'],
	[kim, '/log'],
	[kim, '/log show unsigned wire by Robin'],
	[kim, '/log show by me since 2026-05-01'],
	[kim, '/log show until yesterday everywhere'],
	[kim, '/log show signed'],
	[kim, '/log show by Nobodyknown'],
	[kim, '/log show 5/4'],
	[kim, '/log show 2026-02-30'],
	[kim, '/log show 2'],
	[kim, '/log show 99'],
	[sam, '/log sign 2'],
	[robin, '/log reject 2 x'],
	[sam, `/log comment 2 ${typed}`],
	[sam, '/log comment 2'],
	[sam, '/log sign'],
	[sam, '/log sign "x"'],
	[robin, '/log ask-lead 3'],
	[kim, '/log review'],
	[kim, '/log reject 3'],
	[kim, `/log reject 3 ${typed}`],
	[kim, '/log show 3'],
	[kim, '/log sign build'],
	[kim, `/log sign 2 ${typed}`],
	[kim, '/log sign 2'],
	[kim, '/log show 2'],
	[kim, '/log show 3'],
	[kim, '/log sign build anyway'],
	[kim, `/log sign build anyway ${typed}`],
	[kim, '/log review'],
	[sam, '/log withdraw build x'],
	[kim, '/log withdraw build'],
	[kim, `/log withdraw build ${typed}`],
	[kim, '/log withdraw build x'],
	[kim, '/log review'],
	[sam, '/log withdraw 2 x'],
	[kim, '/log withdraw 2'],
	[kim, `/log withdraw 2 ${typed}`],
	[kim, '/log withdraw 2 x'],
	[kim, '/log show 2'],
	[kim, `/log sign 2 ${typed}`],
	[robin, '/log replace 3 10 A'],
	[sam, '/log replace 2 10 A'],
	[kim, '/log replace 3'],
	[kim, '/log replace 3 12 A'],
	[kim, '/log review'],
	[kim, '/log show'],
	[kim, '/log show replaced'],
	[kim, '/log show refused'],
	[kim, '/log show rejected'],
	[sam, '/log own-signature on'],
	[kim, '/log own-signature on'],
	[kim, '/log own-signature off'],
	[sam, '/log leads add @Robin'],
	[kim, '/log leads'],
	[kim, '/log leads add @Robin'],
	[kim, '/log leads add @Robin'],
	[kim, '/log leads remove @Robin'],
	[kim, '/log leads remove @Robin'],
	[kim, '/log leads add @Kim'],
	[kim, '/log leads remove @Kim'],
	[kim, '/log leads'],
	[kim, '/log digest'],
	[sam, '/log digest on'],
	[kim, '/log digest on 25:00'],
	[kim, '/log digest on 06:30'],
	[kim, '/log digest'],
	[kim, '/log digest now'],
	[kim, '/log digest off'],
	[sam, '/log root'],
	[kim, '/log root'],
	[kim, '/log verify'],
	[kim, '/log export docx'],
	[kim, '/log export csv x'],
	[kim, '/log export csv'],
	[kim, '/log export json'],
	[kim, '/log picture'],
	[kim, '/log picture 2 nothere'],
	[kim, '/log picture 99'],
	[kim, '/log resend'],
	[kim, '/log resend 99'],
	[robin, '/log me'],
	[kim, '/log me'],
	[sam, '/log forget-me'],
	[sam, '/log forget-me confirm'],
	[sam, '/log forget-me'],
	[kim, '/log show 2'],
	...Array.from({ length: 45 }, (_, index) => [kim, `/log show ${index + 1}`] as const),
	...Array.from({ length: 6 }, (_, index) => [kim, `/log sheet ${index + 4}`] as const),
];

/** What of a line is told by the bot: without quotes, names, words as typed and what is to be typed. */
function told(line: string): string {
	return (
		line
			.replaceAll(typed, '')
			.replaceAll(/"[^"]*"/g, '')
			// Documents keep their names.
			.replaceAll(/\[[^[\]]*\]$|^(?:Fuentes|Quellen): .*/g, '')
			.replaceAll(/\/(?:log|build) \S.*/g, '')
			// Pictures are English, and so are their titles.
			.replace(/^(Imagen|Bild) (.*?): .*/, '$1 $2')
			.replace(/^\S.*? {2,}(?=\S)/, '')
			.replaceAll(/\([^()]*\)/g, (words) => (/^\((?:usual|no value)/.test(words) ? '' : words))
	);
}

interface Conversation {
	say(person: Person, text: string): Promise<Reply>;
}

let count = 0;
async function conversation(language: Language) {
	const chat = await openChat({
		databaseUrl: 'sqlite::memory:',
		region: 'eu',
		now: () => new Date('2026-05-04T12:00:00.000Z'),
	});
	const say: Conversation['say'] = (person, text) => {
		count += 1;
		const command = /^\/(log|build) /.exec(`${text} `)?.[1] ?? 'ask';
		return chat.handle({
			platform: 'test',
			shop: 's',
			channel: `c-${language}`,
			thread: null,
			delivery: `d${count}`,
			person,
			command: command as 'log' | 'build' | 'ask',
			text: text.replace(/^\/\w+ ?/, ''),
		});
	};
	return { chat, say };
}

const linesOf = (reply: Reply) =>
	plainText(
		{ ...reply, parts: reply.parts.filter(({ isPaper }) => isPaper !== true) },
		{ folded: true },
	).split('\n');

describe.each(['es', 'de'] as const)('a lead in a channel that speaks %s', (language) => {
	test('hears no English sentence, and the same numbers', async () => {
		const { chat, say } = await conversation(language);
		const wrong: string[] = [];
		let lines = 0;
		for (const [index, [person, text]] of script(language).entries()) {
			const reply = await say(person, text);
			// Before anything was said the channel has no language.
			if (index === 0) continue;
			for (const line of linesOf(reply)) {
				lines += 1;
				if (english.test(told(line)) || /\bNo\. \d/.test(told(line))) wrong.push(`${text}: ${line}`);
			}
		}
		await chat.close();
		expect(lines).toBeGreaterThan(300);
		expect(wrong).toEqual([]);
	});

	test('words as typed are given back as they were', async () => {
		const { chat, say } = await conversation(language);
		for (const [person, text] of script(language).slice(0, 4)) await say(person, text);
		const words = fc
			.stringMatching(/^[a-z0-9.,;:()"? ]{1,40}$/)
			.map((rest) => `signed ${rest}`.replaceAll(/\s+/g, ' ').trim());
		await fc.assert(
			fc.asyncProperty(words, async (typedWords) => {
				const comment = await say(sam, `/log comment 2 ${typedWords}`);
				expect(comment.parts[0]?.text).toMatch(/^(?:N\.º|Nr\.) 2, /);
				expect(comment.parts[0]?.text.endsWith(`: ${typedWords}`)).toBe(true);
				const shown = linesOf(await say(kim, '/log show 2'));
				expect(shown.some((line) => line.endsWith(`: ${typedWords}`))).toBe(true);
			}),
			{ numRuns: 25 },
		);
		await chat.close();
	});

	test('a word in another language on an answer changes neither the reply nor the channel', async () => {
		const { chat, say } = await conversation(language);
		for (const [person, text] of script(language).slice(0, 4)) await say(person, text);
		const reply = await say(kim, '/log reject 2 the wire is far too thin for what it should carry');
		expect(reply.parts[0]?.text).toMatch(/rechazado por Kim|abgelehnt von Kim/);
		expect((await say(kim, '/log review')).parts[0]?.text).toMatch(/sin firmar|ohne Unterschrift/);
		await chat.close();
	});
});

test('in a channel that spoke English the log is English; a word in another language is answered in that one', async () => {
	const { chat, say } = await conversation('en');
	await say(robin, '/build use heron');
	await say(robin, 'what wire do I need for 40 A 12 V 5 m');
	expect((await say(kim, '/log review')).parts[0]?.text).toBe('1 unsigned in build "heron"');
	const reply = await say(kim, '/log reject 2 zu dünn für diesen Verbraucher, bitte noch einmal');
	expect(reply.parts[0]?.text).toBe(
		'Nr. 2 abgelehnt von Kim: zu dünn für diesen Verbraucher, bitte noch einmal',
	);
	expect((await say(kim, '/log review')).parts[0]?.text).toBe('Nothing is unsigned in build "heron".');
	await chat.close();
});
