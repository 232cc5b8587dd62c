/**
 * A message of which the platform lost the reply, shown again when its nonce is known no more, or when the token of its
 * interaction opens nothing any more: what the bot then sees when it looks, and that one answer stands in the end.
 */

import type { Chat } from '@lugbook/chat';
import { describe, expect, test } from 'vitest';
import type { DiscordMessage } from './discord/model.js';
import { discordShop } from './discord/shop.js';
import { type DiscordInteraction, ResponseType, readable } from './discord.js';

const QUESTION = '40A 12V 15 ft';
const ANSWER = /Read: 40 A,/;
const SENT_AGAIN = /Sent again/;
/** more than the platform knows a nonce for [ms] */
const LATER_MS = 10 * 60 * 1000;
/** more than the 15 minutes for which a token opens something (interactions/receiving-and-responding.mdx) [ms] */
const TOKEN_OVER_MS = 16 * 60 * 1000;
/** more than the bot tries by itself at once */
const OFTEN = 30;

/** A question whose answer stands, which the bot can't know; it is to be shown again much later. */
async function lostReply(question = QUESTION, answer = ANSWER) {
	let nowMs = Date.now();
	const shop = await discordShop({ sweepMs: 0, nowMs: () => nowMs });
	const { discord, bot } = shop;
	discord.faults.order('channel.send', { kind: 'drop-answer' }, OFTEN);
	discord.mention(question);
	await expect.poll(() => bot.desk.waiting()).toBe(1);
	await bot.desk.settled();
	discord.faults.clear();
	const answers = () => discord.botMessages().filter((message) => answer.test(readable(message)));
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

test('the second answer says so in its own language, as does its menu', async () => {
	const { discord, answers, sweep } = await lostReply(
		'welches Kabel brauche ich für 40 A 12 V 5 m',
		/Gelesen: 40 A,/,
	);
	discord.faults.order('channel.messages', { kind: 'error', error: 'missingPermissions' }, OFTEN);
	await sweep();
	expect(answers().map((message) => /Noch einmal gesendet/.test(readable(message)))).toEqual([false, true]);
	expect(JSON.stringify(answers()[1]?.components)).toContain('"placeholder":"Eine Annahme ändern"');
});

test('what was said of an answer that could not be shown is not taken for it: it becomes the answer', async () => {
	let nowMs = Date.now();
	const { discord, bot } = await discordShop({ sweepMs: 0, nowMs: () => nowMs });
	discord.faults.order('channel.send', { kind: 'error', error: 'missingPermissions' });
	discord.dm(QUESTION);
	const direct = discord.dmChannel(discord.people.one).id;
	await expect.poll(() => discord.reading(direct).join()).toMatch(/could not show it/);
	await bot.desk.settled();
	nowMs += LATER_MS;
	await bot.desk.sweep();
	await bot.desk.settled();
	expect(discord.reading(direct)).toEqual([QUESTION, expect.stringMatching(ANSWER)]);
	expect(await bot.desk.waiting()).toBe(0);
});

test('an answer to a command is known again without the words on what is kept, which another has said since', async () => {
	let nowMs = Date.now();
	const { discord, bot } = await discordShop({ sweepMs: 0, nowMs: () => nowMs });
	const answers = () => discord.botMessages().filter((message) => ANSWER.test(readable(message)));
	discord.faults.order('interaction.callback', { kind: 'error', error: 'unknownInteraction' }, OFTEN);
	discord.faults.order('channel.send', { kind: 'drop-answer' }, OFTEN);
	await discord.command('ask', { text: QUESTION });
	await expect.poll(() => bot.desk.waiting()).toBe(1);
	await bot.desk.settled();
	discord.faults.clear();
	expect(readable(answers()[0] as DiscordMessage)).toMatch(/I keep what is addressed/);
	discord.mention('30A 12V 15 ft');
	await expect.poll(() => discord.reading().join()).toMatch(/Read: 30 A,[\s\S]*I keep what is addressed/);
	nowMs += LATER_MS;
	await bot.desk.sweep();
	await bot.desk.settled();
	expect(answers()).toHaveLength(1);
	expect(await bot.desk.waiting()).toBe(0);
});

describe('a notice that the bot is thinking', () => {
	/**
	 * A shop where a command is answered after something else has happened to it.
	 * @param first not for a later try, when something stands there already
	 */
	async function shopAfter(first: (asked: DiscordInteraction) => Promise<unknown>, audience?: 'asker') {
		let nowMs = Date.now();
		const shop = await discordShop({
			sweepMs: 0,
			nowMs: () => nowMs,
			handle: (chat: Chat) => async (incoming) => {
				const asked = shop.discord.latestInteraction();
				if (asked?.responseType === null) await first(asked);
				const reply = await chat.handle(incoming);
				return audience === undefined ? reply : { ...reply, audience };
			},
		});
		const later = async () => {
			nowMs += TOKEN_OVER_MS;
			await shop.bot.desk.sweep();
			await shop.bot.desk.settled();
		};
		return { ...shop, later };
	}
	const isDeferred = (asked: DiscordInteraction) =>
		expect.poll(() => asked.responseType, { timeout: 10_000 }).not.toBe(null);

	/** The platform showed the notice, but the bot never learnt that; then the token's time is over. */
	async function lostNotice(audience?: 'asker') {
		const shop = await shopAfter(isDeferred, audience);
		const { discord, bot } = shop;
		discord.faults.order('interaction.callback', { kind: 'drop-answer' });
		await discord.command('ask', { text: QUESTION });
		await expect.poll(() => bot.desk.waiting()).toBe(1);
		await bot.desk.settled();
		expect(discord.botMessages().map(readable)).toEqual(['(thinking)']);
		return shop;
	}

	test('becomes the answer, also when its token opens nothing any more', async () => {
		const { discord, bot, later } = await lostNotice();
		const [notice] = discord.botMessages();
		await later();
		expect(discord.botMessages()).toEqual([notice]);
		expect(discord.botMessages().map(readable)).toEqual([expect.stringMatching(ANSWER)]);
		expect(await bot.desk.waiting()).toBe(0);
	});

	test('goes, where the platform does not let it become the answer', async () => {
		const { discord, bot, later } = await lostNotice();
		discord.faults.order('channel.edit', { kind: 'error', error: 'missingPermissions' });
		await later();
		expect(discord.botMessages().map(readable)).toEqual([expect.stringMatching(ANSWER)]);
		expect(await bot.desk.waiting()).toBe(0);
	});

	test('goes, where the answer is for the asker alone', async () => {
		const { discord, bot, later } = await lostNotice('asker');
		await later();
		expect(discord.reading()).toEqual([]);
		const direct = discord.dmChannel(discord.people.one).id;
		expect(discord.reading(direct)).toEqual([expect.stringMatching(ANSWER)]);
		expect(await bot.desk.waiting()).toBe(0);
	});

	test('stands beside the answer where the bot may not look for it, and the answer says so', async () => {
		const { discord, bot, later } = await lostNotice();
		discord.faults.order('channel.messages', { kind: 'error', error: 'missingPermissions' });
		await later();
		const [notice, answer] = discord.botMessages().map(readable);
		expect(notice).toBe('(thinking)');
		expect(answer).toMatch(ANSWER);
		expect(answer).toMatch(SENT_AGAIN);
		expect(await bot.desk.waiting()).toBe(0);
	});

	test('is not taken for the answer where another process told the platform to wait', async () => {
		const { discord, bot } = await shopAfter(async ({ id, token }) => {
			await fetch(`${discord.apiUrl}/v10/interactions/${id}/${token}/callback`, {
				method: 'POST',
				headers: { 'content-type': 'application/json' },
				body: JSON.stringify({ type: ResponseType.deferMessage }),
			});
		});
		await discord.command('ask', { text: QUESTION });
		await bot.desk.settled();
		expect(discord.botMessages().map(readable)).toEqual([expect.stringMatching(ANSWER)]);
	});
});
