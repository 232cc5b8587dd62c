/**
 * A message of which the platform lost the reply, or took its time: what the bot then sees when it looks, and that one
 * answer stands in the end. Where the app's scopes don't let it look, a second one says what it is.
 */

import { describe, expect, test } from 'vitest';
import { afterwards } from './common/closing.js';
import type { SlackMessage } from './slack/model.js';
import { type SlackShop, slackBotOn, slackShop } from './slack/shop.js';
import { readable } from './slack.js';

const QUESTION = '40A 12V 15 ft';
const ANSWER = /Read: 40 A,/;
const SENT_AGAIN = /Sent again/;
const PATIENCE = { timeout: 30_000 };

/** A bot that may look into its channels. */
const looking = { scopes: null, sweepMs: 0 } as const;
const answers = ({ slack }: SlackShop, channel = 'C01'): SlackMessage[] =>
	slack.botMessages(channel).filter((message) => ANSWER.test(readable(message)));
const posts = ({ slack }: SlackShop) => slack.calls('chat.postMessage').length;

describe('a post that is done late, after the bot has looked for it', () => {
	test.each([
		['before', 'the second is posted', 'conversations.replies'],
		['after', 'the second is posted', 'chat.postMessage'],
	])('%s %s: the older one stays', async (_, __, call) => {
		const shop = await slackShop(looking);
		const { slack, chat, bot } = shop;
		const until = slack.waitForCall(call).then(() => undefined);
		slack.faults.order('chat.postMessage', { kind: 'late', until });
		await slack.mention(QUESTION);
		await expect.poll(() => slack.calls('chat.delete').length, PATIENCE).toBe(1);
		await bot.desk.settled();
		expect(posts(shop)).toBe(2);
		const all = slack.workspace.messages.filter((one) => one.fromBot && ANSWER.test(readable(one)));
		expect(all.map(({ deleted }) => deleted)).toEqual([false, true]);
		expect(answers(shop)[0]?.ts).toBe(all[0]?.ts);
		expect(SENT_AGAIN.test(readable(all[0] as SlackMessage))).toBe(false);
		// Where it stands is known: a mark of the answer finds the message that stayed.
		await slack.command('/log', 'replace 1 and at 20 ft');
		await expect.poll(() => all[0]?.edits.length, PATIENCE).toBe(1);
		expect(await chat.log.verify(shop.shop)).toMatchObject({ ok: true });
	});

	test('that of a process which was slow, while another took the message over', async () => {
		let nowMs = Date.now();
		const shop = await slackShop({ ...looking, leaseMs: 10_000, nowMs: () => nowMs });
		const { slack, chat, bot } = shop;
		slack.faults.order('chat.postMessage', { kind: 'slow', delayMs: 3000 });
		await slack.mention(QUESTION);
		await expect.poll(() => slack.faults.pending, PATIENCE).toBe(0);
		nowMs += 10_001;
		const other = await slackBotOn(slack, chat, { sweepMs: 0, nowMs: () => nowMs });
		afterwards(() => other.stop());
		await other.desk.sweep();
		await other.desk.settled();
		await bot.desk.settled();
		expect(answers(shop)).toHaveLength(1);
		expect(slack.reading().filter((text) => SENT_AGAIN.test(text))).toEqual([]);
	});
});

describe('a look that tells nothing', () => {
	test('is not taken for a message that is not there: the answer waits, and is found later', async () => {
		let nowMs = Date.now();
		const shop = await slackShop({ ...looking, nowMs: () => nowMs });
		const { slack, bot } = shop;
		slack.faults.order('chat.postMessage', { kind: 'drop-answer' });
		slack.faults.order('conversations.replies', { kind: 'status', status: 503 }, 4);
		await slack.mention(QUESTION);
		await slack.waitForMessage(/the answer is kept as No. 1/);
		await bot.desk.settled();
		expect(posts(shop)).toBe(1);
		expect(await bot.desk.waiting()).toBe(1);
		nowMs += 60_000;
		await bot.desk.sweep();
		await bot.desk.settled();
		expect(await bot.desk.waiting()).toBe(0);
		expect(posts(shop)).toBe(1);
		expect(answers(shop)).toHaveLength(1);
	});

	test('of a busy platform is repeated after its pause', async () => {
		const shop = await slackShop(looking);
		const { slack, bot } = shop;
		slack.faults.order('chat.postMessage', { kind: 'drop-answer' });
		slack.faults.order('conversations.replies', { kind: 'rate-limit', retryAfterS: 1 }, 2);
		await slack.mention(QUESTION);
		await expect.poll(() => slack.calls('conversations.replies').length, PATIENCE).toBe(3);
		await bot.desk.settled();
		expect(posts(shop)).toBe(1);
		expect(answers(shop)).toHaveLength(1);
	});
});

describe('a busy place', () => {
	/** People go on talking while the reply to the bot's post is lost. */
	async function talkedOver(messages: number, pageMax: number) {
		const shop = await slackShop(looking);
		const { slack, bot } = shop;
		slack.historyPageMax = pageMax;
		const talk = slack.waitForCall('chat.postMessage').then(async () => {
			for (let at = 0; at < messages; at += 1) await slack.say(`hand me the ${at} mm key`);
		});
		slack.faults.order('chat.postMessage', { kind: 'drop-answer' });
		await slack.command('/ask', QUESTION);
		await talk;
		await expect.poll(() => slack.calls('conversations.history').length, PATIENCE).toBeGreaterThan(0);
		await bot.desk.settled();
		return shop;
	}

	test('is looked through page by page', async () => {
		const shop = await talkedOver(8, 3);
		expect(posts(shop)).toBe(1);
		expect(shop.slack.calls('conversations.history').length).toBeGreaterThan(1);
		expect(answers(shop)).toHaveLength(1);
	});

	test('of more pages than are looked through is not known: the second answer says so', async () => {
		const shop = await talkedOver(12, 2);
		expect(answers(shop).map((message) => SENT_AGAIN.test(readable(message)))).toEqual([false, true]);
	});

	test('what stood in a thread long before the question takes no page', async () => {
		let nowMs = Date.now();
		const shop = await slackShop({ ...looking, nowMs: () => nowMs });
		const { slack, bot } = shop;
		slack.historyPageMax = 3;
		const { message } = await slack.say('the van of the heron');
		const threadTs = message.ts;
		for (let at = 0; at < 20; at += 1) await slack.say(`hand me the ${at} mm key`, { threadTs });
		nowMs += 24 * 60 * 60 * 1000;
		slack.faults.order('chat.postMessage', { kind: 'drop-answer' });
		await slack.mention(QUESTION, { threadTs });
		await expect.poll(() => slack.calls('conversations.replies').length, PATIENCE).toBe(1);
		await bot.desk.settled();
		expect(answers(shop)).toHaveLength(1);
		expect(posts(shop)).toBe(1);
	});
});

describe('where the bot may not look', () => {
	test('the second answer says so in its own language, as does its menu', async () => {
		const { slack, bot } = await slackShop({ sweepMs: 0 });
		slack.faults.order('chat.postMessage', { kind: 'drop-answer' });
		await slack.mention('welches Kabel brauche ich für 40 A 12 V 5 m');
		const told = await slack.waitForMessage(/Noch einmal gesendet/);
		await bot.desk.settled();
		expect(readable(told)).toMatch(/Gelesen: 40 A,/);
		expect(JSON.stringify(told.blocks)).toContain('Eine Annahme ändern');
	});

	test('a post that may stand there, then refused: the response_url says that it may be there twice', async () => {
		const shop = await slackShop({ sweepMs: 0 });
		const { slack, bot } = shop;
		slack.faults.order('chat.postMessage', { kind: 'drop-answer' });
		slack.faults.order('chat.postMessage', { kind: 'error', error: 'not_in_channel' });
		await slack.command('/ask', QUESTION);
		await expect.poll(() => answers(shop).length, PATIENCE).toBe(2);
		await bot.desk.settled();
		expect(answers(shop).map((message) => SENT_AGAIN.test(readable(message)))).toEqual([false, true]);
	});

	test.each(['drop-answer', 'drop-request'] as const)(
		'a response_url after %s: again, saying so',
		async (kind) => {
			const shop = await slackShop({ sweepMs: 0 });
			const { slack, bot } = shop;
			slack.addChannel({ id: 'C09', botIsMember: false });
			slack.faults.order('response_url', { kind });
			await slack.command('/ask', QUESTION, { channel: 'C09' });
			const told = await slack.waitForMessage(SENT_AGAIN);
			await bot.desk.settled();
			expect(answers(shop, 'C09').at(-1)).toBe(told);
			expect(answers(shop, 'C09')).toHaveLength(kind === 'drop-answer' ? 2 : 1);
			expect(await bot.desk.waiting()).toBe(0);
		},
	);

	test('a response_url that is busy: shown once, after its pause, without a word on it', async () => {
		const shop = await slackShop({ sweepMs: 0 });
		const { slack } = shop;
		slack.addChannel({ id: 'C09', botIsMember: false });
		slack.faults.order('response_url', { kind: 'rate-limit', retryAfterS: 1 });
		const startedMs = performance.now();
		await slack.command('/ask', QUESTION, { channel: 'C09' });
		await expect.poll(() => answers(shop, 'C09').length, PATIENCE).toBe(1);
		expect(performance.now() - startedMs).toBeGreaterThanOrEqual(1000);
		expect(SENT_AGAIN.test(slack.reading('C09').join())).toBe(false);
	});
});

test("the platform's own trouble leaves open whether a message was posted: it is looked for, and posted", async () => {
	const shop = await slackShop(looking);
	const { slack, bot } = shop;
	slack.faults.order('chat.postMessage', { kind: 'error', error: 'internal_error' });
	slack.faults.order('chat.postMessage', { kind: 'malformed-answer' });
	await slack.mention(QUESTION);
	await expect.poll(() => answers(shop).length, PATIENCE).toBe(1);
	await bot.desk.settled();
	expect(slack.calls('conversations.replies')).toHaveLength(2);
	expect(answers(shop)).toHaveLength(1);
	expect(slack.reading().filter((text) => /failed on my side/.test(text))).toEqual([]);
});
