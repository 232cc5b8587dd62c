/**
 * A message of which the platform lost the reply, shown again when its nonce is known no more: what the bot then sees
 * when it looks, and that one answer stands in the end.
 */

import { expect, test } from 'vitest';
import { discordShop } from './discord/shop.js';
import { readable } from './discord.js';

const QUESTION = '40A 12V 15 ft';
const ANSWER = /Read: 40 A,/;
const SENT_AGAIN = /Sent again/;
/** more than the platform knows a nonce for [ms] */
const LATER_MS = 10 * 60 * 1000;
/** more than the bot tries by itself at once */
const OFTEN = 30;

/** A question whose answer stands, which the bot can't know; it is to be shown again much later. */
async function lostReply() {
	let nowMs = Date.now();
	const shop = await discordShop({ sweepMs: 0, nowMs: () => nowMs });
	const { discord, bot } = shop;
	discord.faults.order('channel.send', { kind: 'drop-answer' }, OFTEN);
	discord.mention(QUESTION);
	await expect.poll(() => bot.desk.waiting()).toBe(1);
	await bot.desk.settled();
	discord.faults.clear();
	const answers = () => discord.botMessages().filter((message) => ANSWER.test(readable(message)));
	expect(answers()).toHaveLength(1);
	const sweep = async () => {
		nowMs += LATER_MS;
		await bot.desk.sweep();
		await bot.desk.settled();
	};
	/** People go on talking. */
	const talk = (messages: number) => {
		for (let at = 0; at < messages; at += 1) discord.say(`hand me the ${at} mm key`);
	};
	return { ...shop, answers, sweep, talk };
}

test('it is found', async () => {
	const { bot, answers, sweep, talk } = await lostReply();
	talk(150);
	await sweep();
	expect(answers()).toHaveLength(1);
	expect(await bot.desk.waiting()).toBe(0);
});

test.each([
	['the platform fails', { kind: 'status', status: 503 }],
	['the connection is cut', { kind: 'drop-request' }],
	['the answer can not be read', { kind: 'malformed-answer' }],
	['the token is refused for a moment', { kind: 'error', error: 'unauthorized' }],
] as const)('a look that tells nothing is no look: %s', async (_, fault) => {
	const { discord, bot, answers, sweep } = await lostReply();
	discord.faults.order('channel.messages', fault, OFTEN);
	await sweep();
	expect(answers()).toHaveLength(1);
	expect(await bot.desk.waiting()).toBe(1);
	discord.faults.clear();
	await sweep();
	expect(answers()).toHaveLength(1);
	expect(await bot.desk.waiting()).toBe(0);
});

test('where the bot may not look, the second answer says so', async () => {
	const { discord, answers, sweep } = await lostReply();
	discord.faults.order('channel.messages', { kind: 'error', error: 'missingPermissions' }, OFTEN);
	await sweep();
	expect(answers().map((message) => SENT_AGAIN.test(readable(message)))).toEqual([false, true]);
});
