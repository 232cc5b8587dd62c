/**
 * Long work on both platforms: one message says how far it has come and becomes the answer. The work of these tests
 * goes on when people have seen how far it is, so nothing waits for a time.
 */

import type { Chat } from '@lugbook/chat';
import { describe, expect, test } from 'vitest';
import { afterwards } from './common/closing.js';
import type { DiscordMessage } from './discord/model.js';
import { discordBotOn, discordShop } from './discord/shop.js';
import { readable as discordText, Flag } from './discord.js';
import type { SlackMessage } from './slack/model.js';
import { slackBotOn, slackShop } from './slack/shop.js';
import { readable as slackText } from './slack.js';

const QUESTION = '40A 12V 15 ft';
const PATIENCE_MS = 30_000;
/** A book is printed by a browser, which a busy machine keeps waiting [ms]. */
const BOOK_PATIENCE_MS = 120_000;
const words = (percent: number) => `Writing the book of build "heron": ${percent} %`;

/** A handler that says how far it has come, each time waiting until people see it, and then answers or fails. */
function slowly(
	percents: readonly number[],
	seen: (percent: number) => Promise<unknown>,
	last: (chat: Chat, incoming: Parameters<Chat['handle']>[0]) => ReturnType<Chat['handle']> = (
		chat,
		incoming,
	) => chat.handle(incoming),
) {
	return (chat: Chat): Chat['handle'] =>
		async (incoming, progress) => {
			for (const percent of percents) {
				progress?.(words(percent));
				await seen(percent);
			}
			return await last(chat, incoming);
		};
}

const privately = async (chat: Chat, incoming: Parameters<Chat['handle']>[0]) => ({
	...(await chat.handle(incoming)),
	audience: 'asker' as const,
});
const fails = () => Promise.reject(new Error('the paper is out'));

describe('in Slack', () => {
	type Made = Awaited<ReturnType<typeof slackShop>>;
	async function shopWith(
		percents: readonly number[],
		last?: Parameters<typeof slowly>[2],
		everyMs = 5,
	): Promise<Made> {
		const made: Made = await slackShop({
			progressEveryMs: everyMs,
			handle: slowly(
				percents,
				(percent) => made.slack.waitForMessage(new RegExp(`${percent} %`), PATIENCE_MS),
				last,
			),
		});
		return made;
	}
	const texts = (message: SlackMessage) =>
		[...message.edits, message].map((state) => slackText(state).split('\n')[0]);

	test('a message in the thread says how far it is and becomes the answer', async () => {
		const { slack, entries } = await shopWith([10, 50]);
		const asked = await slack.mention(QUESTION);
		const answer = await slack.waitForMessage(/AWG/, PATIENCE_MS);
		expect(answer.threadTs).toBe(asked.message.ts);
		expect(texts(answer)).toEqual([words(10), words(50), expect.stringMatching(/AWG/)]);
		expect(slack.botMessages()).toEqual([answer]);
		expect(slack.calls('chat.postMessage')).toHaveLength(1);
		// A thread under it goes on with the question: where the answer stands is known.
		await slack.mention('and at 30 ft?', { threadTs: asked.message.ts });
		await expect.poll(async () => (await entries()).length, { timeout: PATIENCE_MS }).toBe(2);
		expect(slack.violations).toEqual([]);
	});

	test('a command, a private message: the same, where the answer goes', async () => {
		const { slack } = await shopWith([10]);
		await slack.command('/ask', QUESTION);
		await expect
			.poll(() => slack.botMessages().map(texts), { timeout: PATIENCE_MS })
			.toEqual([[words(10), expect.stringMatching(/AWG/)]]);
		const [first] = slack.botMessages();
		expect(first?.threadTs).toBeUndefined();
		await slack.dm('30A 12V 15 ft');
		await expect
			.poll(() => slack.botMessages('DU01').map(texts), { timeout: PATIENCE_MS })
			.toEqual([[words(10), expect.stringMatching(/AWG/)]]);
		expect(slack.violations).toEqual([]);
	});

	test('the book of a build, from the log to the file under the answer', async () => {
		const { slack } = await slackShop({ progressEveryMs: 1 });
		await slack.command('/build', 'use heron');
		for (let lengthFt = 5; lengthFt < 15; lengthFt += 1)
			await slack.command('/ask', `40A 12V ${lengthFt} ft`);
		await expect.poll(() => slack.botMessages().length, { timeout: PATIENCE_MS }).toBe(11);
		await slack.command('/log', 'export pdf');
		const answer = await slack.waitForMessage(/^The book of build/, BOOK_PATIENCE_MS);
		const [first, ...others] = texts(answer);
		expect(first).toMatch(/^Writing the book of build "heron": \d{1,3} %$/);
		expect(others.at(-1)).toBe('The book of build "heron": heron.pdf');
		await expect
			.poll(() => slack.botMessages().flatMap(({ files }) => files), { timeout: PATIENCE_MS })
			.toHaveLength(1);
		const file = slack.botMessages().find(({ files }) => files.length > 0);
		expect(file?.threadTs).toBe(answer.ts);
		expect(file?.files[0]?.bytes?.subarray(0, 5).toString()).toBe('%PDF-');
		expect(slack.violations).toEqual([]);
	});

	test('not more often than said, whatever the work says', async () => {
		const everyMs = 150;
		const { slack } = await shopWith([10, 20, 30, 40], undefined, everyMs);
		await slack.mention(QUESTION);
		await slack.waitForMessage(/AWG/, PATIENCE_MS);
		const at = [...slack.calls('chat.postMessage'), ...slack.calls('chat.update').slice(0, 3)].map(
			({ atMs }) => atMs,
		);
		const gaps = at.slice(1).map((atMs, index) => atMs - (at[index] as number));
		expect(gaps).toHaveLength(3);
		// A clock of whole milliseconds may lose one at either end.
		expect(Math.min(...gaps)).toBeGreaterThanOrEqual(everyMs - 2);
	});

	test('a pause the platform asks for is kept, by the next words and by the answer', async () => {
		const made: Made = await slackShop({
			progressEveryMs: 5,
			handle: slowly([10, 50], async (percent) => {
				if (percent === 10) await made.slack.waitForMessage(/10 %/, PATIENCE_MS);
				else await made.slack.waitForCall('chat.update', PATIENCE_MS);
			}),
		});
		const { slack } = made;
		slack.faults.order('chat.update', { kind: 'rate-limit', retryAfterS: 1 });
		await slack.mention(QUESTION);
		const answer = await slack.waitForMessage(/AWG/, PATIENCE_MS);
		expect(texts(answer)).toEqual([words(10), expect.stringMatching(/AWG/)]);
		const [refused, next, ...others] = slack.calls('chat.update');
		expect(refused?.answer.ok).toBe(false);
		expect(next?.answer.ok).toBe(true);
		expect((next?.atMs ?? 0) - (refused?.atMs ?? 0)).toBeGreaterThanOrEqual(1000 - 2);
		expect(others).toEqual([]);
		expect(slack.botMessages()).toEqual([answer]);
	});

	test('work that fails: the message says so and no percentage stands', async () => {
		const { slack } = await shopWith([10], fails);
		await slack.mention(QUESTION);
		await slack.waitForMessage(/^Something failed on my side/, PATIENCE_MS);
		expect(slack.botMessages().map(texts)).toEqual([
			[words(10), expect.stringMatching(/^Something failed on my side, and I gave no answer/)],
		]);
	});

	test('an answer for the asker alone leaves nothing in the channel', async () => {
		const { slack } = await shopWith([10], privately);
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/, PATIENCE_MS);
		expect(answer.visibleTo).toBe('U01');
		expect(slack.botMessages('C01', 'U02')).toEqual([]);
	});

	describe('where the bot is no member', () => {
		const elsewhere = { channel: 'C09' };
		/** Work that waits only until the first words are seen: the next ones come too soon to be said. */
		async function outside(last?: Parameters<typeof slowly>[2], more: Parameters<typeof slackShop>[0] = {}) {
			const made: Made = await slackShop({
				progressEveryMs: 5,
				handle: slowly(
					[10, 50],
					(percent) => (percent === 10 ? made.slack.waitForMessage(/10 %/, PATIENCE_MS) : Promise.resolve()),
					last,
				),
				...more,
			});
			made.slack.addChannel({ id: 'C09', botIsMember: false });
			return made;
		}

		test('it is said by the response_url, whose message becomes the answer', async () => {
			const { slack } = await outside();
			await slack.command('/ask', QUESTION, elsewhere);
			await slack.waitForMessage(/AWG/, PATIENCE_MS);
			expect(slack.botMessages('C09', 'U02').map(texts)).toEqual([[words(10), expect.stringMatching(/AWG/)]]);
			expect(slack.botMessages('C09')).toHaveLength(1);
			expect(slack.violations).toEqual([]);
		});

		test('work that fails says so there', async () => {
			const { slack } = await outside(fails);
			await slack.command('/ask', QUESTION, elsewhere);
			await slack.waitForMessage(/^Something failed on my side/, PATIENCE_MS);
			expect(slack.botMessages('C09').map(texts)).toEqual([
				[words(10), expect.stringMatching(/^Something failed on my side, and I gave no answer/)],
			]);
		});

		test('an answer for the asker alone leaves nothing in the channel', async () => {
			const { slack } = await outside(privately);
			await slack.command('/ask', QUESTION, elsewhere);
			expect((await slack.waitForMessage(/AWG/, PATIENCE_MS)).visibleTo).toBe('U01');
			expect(slack.botMessages('C09', 'U02')).toEqual([]);
		});

		test('a lost reply to the words or to the answer leaves one message', async () => {
			const { slack } = await outside();
			slack.faults.order('response_url', { kind: 'slow', delayMs: 1 });
			slack.faults.order('response_url', { kind: 'drop-answer' });
			slack.faults.order('response_url', { kind: 'status', status: 503 });
			await slack.command('/ask', QUESTION, elsewhere);
			await slack.waitForMessage(/AWG/, PATIENCE_MS);
			expect(slack.botMessages('C09').map((one) => texts(one).at(-1))).toEqual([
				expect.stringMatching(/AWG/),
			]);
			expect(slack.reading('C09').filter((text) => /Sent again/.test(text))).toEqual([]);
			expect(slack.violations).toEqual([]);
		});

		test('a process that is gone: the next one turns its message into the answer', async () => {
			let nowMs = Date.now();
			let release: () => void = () => {};
			const held = new Promise<void>((resolve) => {
				release = resolve;
			});
			const { slack, chat, bot } = await outside(undefined, {
				sweepMs: 0,
				leaseMs: 10_000,
				nowMs: () => nowMs,
				handle: slowly([10], () => held),
			});
			await slack.command('/ask', QUESTION, elsewhere);
			await slack.waitForMessage(/10 %/, PATIENCE_MS);
			const uses = async () =>
				(await chat.log.settingsOf('outbox of slack')).map(
					({ value }) => JSON.parse(value).place.progressUses,
				);
			await expect.poll(uses, { timeout: PATIENCE_MS }).toEqual([1]);
			nowMs += 10_001;
			const other = await slackBotOn(slack, chat, { sweepMs: 0, nowMs: () => nowMs });
			afterwards(() => other.stop());
			await other.desk.sweep();
			await other.desk.settled();
			release();
			await bot.desk.settled();
			expect(slack.botMessages('C09').map(texts)).toEqual([[words(10), expect.stringMatching(/AWG/)]]);
		});
	});

	test('a process that is gone: the next one turns its message into the answer', async () => {
		let nowMs = Date.now();
		let release: () => void = () => {};
		const held = new Promise<void>((resolve) => {
			release = resolve;
		});
		const made: Made = await slackShop({
			progressEveryMs: 5,
			sweepMs: 0,
			leaseMs: 10_000,
			nowMs: () => nowMs,
			handle: slowly([10], () => held),
		});
		const { slack, chat } = made;
		await slack.mention(QUESTION);
		await slack.waitForMessage(/10 %/, PATIENCE_MS);
		const places = async () =>
			(await chat.log.settingsOf('outbox of slack')).map(({ value }) => JSON.parse(value).place.progress);
		await expect.poll(places, { timeout: PATIENCE_MS }).toEqual([slack.botMessages()[0]?.ts]);
		nowMs += 10_001;
		const other = await slackBotOn(slack, chat, { sweepMs: 0, nowMs: () => nowMs });
		afterwards(() => other.stop());
		await other.desk.sweep();
		await other.desk.settled();
		expect(slack.botMessages().map(texts)).toEqual([[words(10), expect.stringMatching(/AWG/)]]);
		// The first was only held up: it leaves things as they are.
		release();
		await made.bot.desk.settled();
		expect(slack.botMessages().map(texts)).toEqual([[words(10), expect.stringMatching(/AWG/)]]);
	});
});

describe('in Discord', () => {
	type Made = Awaited<ReturnType<typeof discordShop>>;
	async function shopWith(
		percents: readonly number[],
		last?: Parameters<typeof slowly>[2],
		everyMs = 5,
	): Promise<Made> {
		const made: Made = await discordShop({
			progressEveryMs: everyMs,
			handle: slowly(
				percents,
				(percent) => made.discord.waitForMessage(new RegExp(`${percent} %`), PATIENCE_MS),
				last,
			),
		});
		return made;
	}
	const texts = (message: DiscordMessage) =>
		[...message.edits, message].map(({ content }) => content.split('\n')[0]);

	test('the notice of a command says how far it is and becomes the answer', async () => {
		const { discord } = await shopWith([10, 50]);
		const asked = await discord.command('ask', { text: QUESTION });
		const answer = await discord.waitForMessage(/AWG/, PATIENCE_MS);
		expect(asked.original).toBe(answer);
		expect(texts(answer)).toEqual([words(10), words(50), expect.stringMatching(/AWG/)]);
		expect(answer.flags & Flag.loading).toBe(0);
		expect(discord.botMessages()).toEqual([answer]);
		expect(discord.violations).toEqual([]);
	});

	test('a mention: the reply says how far it is and becomes the answer', async () => {
		const { discord } = await shopWith([10, 50]);
		const asked = discord.mention(QUESTION);
		const answer = await discord.waitForMessage(/AWG/, PATIENCE_MS);
		expect(answer.replyTo).toBe(asked.id);
		expect(texts(answer)).toEqual([words(10), words(50), expect.stringMatching(/AWG/)]);
		expect(discord.botMessages()).toEqual([answer]);
		expect(discord.calls('channel.send')).toHaveLength(1);
		expect(discord.violations).toEqual([]);
	});

	test('the book of a build, from the log to the file of the answer', async () => {
		const { discord } = await discordShop({ progressEveryMs: 1 });
		await discord.command('build', { text: 'use heron' });
		for (let lengthFt = 5; lengthFt < 15; lengthFt += 1) {
			await discord.command('ask', { text: `40A 12V ${lengthFt} ft` });
		}
		await discord.command('log', { text: 'export pdf' });
		const answer = await discord.waitForMessage(/The book of build/, BOOK_PATIENCE_MS);
		const [first, ...others] = texts(answer);
		expect(first).toMatch(/^Writing the book of build "heron": \d{1,3} %$/);
		expect(others.at(-1)).toMatch(/^\*\*The book of build "heron": heron\.pdf/);
		expect(answer.attachments.map(({ filename }) => filename)).toEqual(['heron.pdf']);
		expect(answer.attachments[0]?.bytes.subarray(0, 5).toString()).toBe('%PDF-');
		expect(discord.violations).toEqual([]);
	});

	test.each(['webhook.edit', 'channel.edit'])(
		'a pause of %s that the platform asks for is kept',
		async (route) => {
			const { discord } = await shopWith([10, 50]);
			if (route === 'webhook.edit') {
				discord.faults.order(route, { kind: 'rate-limit', retryAfterS: 1 });
				await discord.command('ask', { text: QUESTION });
			} else {
				discord.faults.order(route, { kind: 'rate-limit', retryAfterS: 1 });
				discord.mention(QUESTION);
			}
			const answer = await discord.waitForMessage(/AWG/, PATIENCE_MS);
			expect(texts(answer)).toEqual([words(10), words(50), expect.stringMatching(/AWG/)]);
			const [refused, next] = discord.calls(route);
			expect(refused?.status).toBe(429);
			expect((next?.atMs ?? 0) - (refused?.atMs ?? 0)).toBeGreaterThanOrEqual(1000 - 2);
			expect(discord.botMessages()).toEqual([answer]);
		},
	);

	test('work that outlasts the token of its command goes on in the same message', async () => {
		let nowMs = Date.now();
		const made: Made = await discordShop({
			progressEveryMs: 5,
			nowMs: () => nowMs,
			handle: slowly([10, 50], async (percent) => {
				await made.discord.waitForMessage(new RegExp(`${percent} %`), PATIENCE_MS);
				nowMs += 16 * 60_000;
			}),
		});
		const { discord } = made;
		const asked = await discord.command('ask', { text: QUESTION });
		const answer = await discord.waitForMessage(/AWG/, PATIENCE_MS);
		expect(asked.original).toBe(answer);
		expect(texts(answer)).toEqual([words(10), words(50), expect.stringMatching(/AWG/)]);
		expect(discord.botMessages()).toEqual([answer]);
		expect(discord.calls('channel.edit')).toHaveLength(2);
	});

	test('work that fails: the asker hears it and no percentage stands', async () => {
		const { discord } = await shopWith([10], fails);
		await discord.command('ask', { text: QUESTION });
		await discord.waitForMessage(/Something failed on my side/, PATIENCE_MS);
		await expect
			.poll(() => discord.reading().filter((text) => text.includes('%')), { timeout: PATIENCE_MS })
			.toEqual([]);
		discord.mention(QUESTION);
		await expect
			.poll(() => discord.botMessages().flatMap(texts).at(-1), { timeout: PATIENCE_MS })
			.toMatch(/Something failed on my side/);
		expect(discord.reading().filter((text) => text.includes('%'))).toEqual([]);
	});

	test('an answer for the asker alone leaves nothing in the channel', async () => {
		const { discord } = await shopWith([10], privately);
		await discord.command('ask', { text: QUESTION });
		const answer = await discord.waitForMessage(/AWG/, PATIENCE_MS);
		expect(answer.visibleTo).toBe(discord.people.one);
		await expect
			.poll(() => discord.botMessages(discord.channelId, discord.people.two).map(discordText), {
				timeout: PATIENCE_MS,
			})
			.toEqual([]);
	});

	test.each(['command', 'mention'] as const)(
		'a process that is gone after a %s: the next one turns its message into the answer',
		async (kind) => {
			let nowMs = Date.now();
			let release: () => void = () => {};
			const held = new Promise<void>((resolve) => {
				release = resolve;
			});
			const { discord, chat, bot } = await discordShop({
				progressEveryMs: 5,
				sweepMs: 0,
				leaseMs: 10_000,
				nowMs: () => nowMs,
				handle: slowly([10], () => held),
			});
			if (kind === 'mention') discord.mention(QUESTION);
			else await discord.command('ask', { text: QUESTION });
			const first = await discord.waitForMessage(/10 %/, PATIENCE_MS);
			const places = async () =>
				(await chat.log.settingsOf('outbox of discord')).map(({ value }) => JSON.parse(value).place.progress);
			await expect.poll(places, { timeout: PATIENCE_MS }).toEqual([first.id]);
			nowMs += 10_001;
			const other = await discordBotOn(discord, chat, { sweepMs: 0, nowMs: () => nowMs });
			afterwards(() => other.stop());
			await other.desk.sweep();
			await other.desk.settled();
			expect(discord.botMessages().map(texts)).toEqual([[words(10), expect.stringMatching(/AWG/)]]);
			// The first was only held up: it leaves things as they are.
			release();
			await bot.desk.settled();
			expect(discord.botMessages().map(texts)).toEqual([[words(10), expect.stringMatching(/AWG/)]]);
			expect(discord.violations).toEqual([]);
		},
	);
});
