/**
 * The same hundred questions, typed in the terminal, in a Slack channel and in a Discord channel: the same record is
 * kept, and the same numbers, findings and cautions stand before the people. Each goes its own way through its
 * platform's protocol; the terminal asks the conversation itself.
 */

import { partText, plainText, topics } from '@lugbook/chat';
import { expect, test } from 'vitest';
import { afterwards } from './common/closing.js';
import { NOTICE, openConversation } from './common/conversation.js';
import { discordShop } from './discord/shop.js';
import { slackShop } from './slack/shop.js';
import { readable } from './slack.js';

const QUESTIONS = 100;
const FAST = { burst: 1000, perMinute: 1000 };

/** Examples of the topics in turn: the first of each, then the second, so that every topic is asked. */
const questions = topics
	.flatMap(({ examples }) => examples.map((text, turn) => ({ text, turn })))
	.toSorted((a, b) => a.turn - b.turn)
	.slice(0, QUESTIONS)
	.map(({ text }) => text);

const inOneLine = (text: string) => text.replace(/\s+/g, ' ');
const numbersIn = (text: string) => (text.match(/\d+(?:\.\d+)?/g) ?? []).toSorted();

test('a hundred questions: the same numbers, findings and cautions in the terminal, Slack and Discord', async () => {
	expect(questions).toHaveLength(QUESTIONS);
	const terminal = await openConversation();
	afterwards(() => terminal.close());
	const { slack, bot: slackBot, ...slackSide } = await slackShop({ pace: FAST });
	const { discord, bot: discordBot, ...discordSide } = await discordShop({ pace: FAST });
	const person = { id: 'one', name: 'one', lead: false };
	const place = { platform: 'terminal', shop: 'local', channel: 'terminal', thread: null };
	const statuses = new Set<string>();
	let findings = 0;
	let cautions = 0;
	for (const [at, text] of questions.entries()) {
		const reply = await terminal.handle({ ...place, person, command: 'ask', text, delivery: `line ${at}` });
		statuses.add(reply.answer.status);
		findings += reply.answer.findings.length;
		cautions += reply.answer.cautions.length;
		const number = reply.answer.entry ?? 0;
		const said = plainText({ ...reply, buttons: [] }, { folded: true });

		const before = slack.workspace.messages.length;
		await slack.command('/ask', text);
		await slackBot.desk.settled();
		const blocks = slack.workspace.messages
			.slice(before)
			.flatMap((message) => message.blocks)
			.filter(({ type }) => type !== 'actions');
		const onSlack = withoutNotice(readable({ text: '', blocks }));

		const messagesBefore = discord.guild.messages.length;
		await discord.command('ask', { text });
		await discordBot.desk.settled();
		const fresh = discord.guild.messages.slice(messagesBefore);
		const files = fresh.flatMap(({ attachments }) => attachments.map(({ bytes }) => bytes.toString('utf8')));
		const contents = fresh.map(({ content }) => shown(content)).join('\n');
		const onDiscord = withoutNotice(files.length === 0 ? contents : files.join('\n'));

		for (const [where, whole] of [
			['Slack', onSlack],
			['Discord', onDiscord],
		] as const) {
			const line = inOneLine(whole);
			for (const part of reply.parts) {
				const wanted = inOneLine(partText(part));
				expect(line.includes(wanted) || `${where} does not show of "${text}": ${wanted}\n${whole}`).toBe(
					true,
				);
			}
			expect([where, text, numbersIn(whole)]).toEqual([where, text, numbersIn(said)]);
		}
		// What goes into a file is not the only place of what may hurt somebody.
		for (const { severity, text: danger } of reply.answer.findings) {
			if (severity === 'danger') expect(inOneLine(contents)).toContain(inOneLine(danger));
		}
		const kept = await terminal.log.entry('local', number);
		const recordOf = async (side: typeof slackSide | typeof discordSide) =>
			(await side.chat.log.entry(side.shop, number))?.body;
		expect(await recordOf(slackSide)).toEqual(kept?.body);
		expect(await recordOf(discordSide)).toEqual(kept?.body);
	}
	// The hundred are of some weight: nearly all are answered, with things found and cautions said.
	expect(statuses.has('answered')).toBe(true);
	expect(findings).toBeGreaterThan(QUESTIONS / 2);
	expect(cautions).toBeGreaterThan(QUESTIONS);
	expect([slack.violations, discord.violations]).toEqual([[], []]);
}, 240_000);

/** The first answer in a place says besides what is kept. */
function withoutNotice(text: string): string {
	return text
		.split('\n')
		.filter((line) => !NOTICE.test(line))
		.join('\n');
}

/** A message as people see it: styles off, escapes undone. */
function shown(content: string): string {
	return content
		.replace(/^\*\*|\*\*$/gm, '')
		.replace(/^-# /gm, '')
		.replace(/\\([^0-9A-Za-z\s])/g, '$1');
}
