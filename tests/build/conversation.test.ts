/** The conversation over one van through the conversation package on a file, and through each app. */

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openChat, plainText } from '@lugbook/chat';
import { expect, test } from 'vitest';
import { afterwards } from '../platforms/common/closing.js';
import { type DiscordMessage, readable as discordText } from '../platforms/discord/model.js';
import { discordShop } from '../platforms/discord/shop.js';
import { readable as slackText } from '../platforms/slack/model.js';
import { slackShop } from '../platforms/slack/shop.js';
import { conversation } from './conversation.js';
import { commandOf, misses } from './replay.js';

/** nobody types so fast, a test does */
const pace = { burst: 1000, perMinute: 1000 };

function scratch(): string {
	const directory = mkdtempSync(join(tmpdir(), 'lugbook-conversation-'));
	afterwards(async () => rmSync(directory, { recursive: true, force: true }));
	return `sqlite:${join(directory, 'log.sqlite')}`;
}

test('it has at least forty messages', () => {
	expect(conversation.length).toBeGreaterThanOrEqual(40);
});

test('through the conversation itself, opened anew before each message', async () => {
	const databaseUrl = scratch();
	let count = 0;
	const missed = await misses(async (line) => {
		const chat = await openChat({ databaseUrl, region: 'us' });
		count += 1;
		const { command, rest } = commandOf(line);
		const reply = await chat.handle({
			platform: 'test',
			shop: 'shop',
			channel: 'van-heron',
			thread: line.thread ?? null,
			delivery: `${count}`,
			person: { id: line.by, name: line.by, lead: line.by === 'Kim' },
			command,
			text: rest,
		});
		await chat.close();
		return plainText(reply, { folded: false });
	});
	expect(missed).toEqual([]);
});

test('in the terminal', async () => {
	const script = fileURLToPath(new URL('../../apps/console/dist/ask.js', import.meta.url));
	const program = spawn(process.execPath, [script, '--batch'], {
		env: { ...process.env, DATABASE_URL: scratch(), LUGBOOK_REGION: 'us' },
		stdio: ['pipe', 'pipe', 'inherit'],
	});
	afterwards(async () => program.kill());
	let output = '';
	program.stdout.setEncoding('utf8').on('data', (text: string) => {
		output += text;
	});
	let before: string | undefined;
	const missed = await misses(async ({ text, thread }) => {
		output = '';
		program.stdin.write(`${thread !== undefined && thread === before ? '> ' : ''}${text}\n`);
		before = thread;
		// An answer ends with an empty line.
		await expect.poll(() => output, { timeout: 20_000, interval: 5 }).toMatch(/\n\n$/);
		// The lines are broken for a narrow screen; words are what is looked for.
		return output.replace(/\n {2,}/g, ' ');
	});
	program.stdin.end();
	expect(missed).toEqual([]);
}, 60_000);

test('in Slack', async () => {
	const { slack, bot } = await slackShop({ pace, leads: ['U02'], databaseUrl: scratch() });
	const threads = new Map<string, string>();
	const missed = await misses(async (line) => {
		const user = line.by === 'Kim' ? 'U02' : 'U01';
		const before = new Set(slack.botMessages('C01', user));
		const { command, rest } = commandOf(line);
		if (command === 'ask') {
			const threadTs = line.thread === undefined ? undefined : threads.get(line.thread);
			await slack.mention(rest, { user, ...(threadTs === undefined ? {} : { threadTs }) });
		} else await slack.command(`/${command}`, rest, { user });
		await bot.desk.settled();
		const news = slack.botMessages('C01', user).filter((message) => !before.has(message));
		const [first] = news;
		if (line.thread !== undefined && first !== undefined && !threads.has(line.thread)) {
			threads.set(line.thread, first.threadTs ?? first.ts);
		}
		return news.map(slackText).join('\n');
	});
	expect(missed).toEqual([]);
	expect(slack.violations).toEqual([]);
}, 60_000);

test('in Discord', async () => {
	const { discord, bot } = await discordShop({ pace, databaseUrl: scratch() });
	const threads = new Map<string, DiscordMessage>();
	const missed = await misses(async (line) => {
		const user = line.by === 'Kim' ? discord.people.two : discord.people.one;
		const before = new Set(discord.botMessages(discord.channelId, user));
		const { command, rest } = commandOf(line);
		if (command === 'ask') {
			const replyTo = line.thread === undefined ? undefined : threads.get(line.thread);
			discord.mention(rest, { user, ...(replyTo === undefined ? {} : { replyTo }) });
			await expect
				.poll(() => discord.botMessages(discord.channelId, user).length, { interval: 5 })
				.toBeGreaterThan(before.size);
		} else await discord.settled(await discord.command(command, { text: rest }, { user }));
		await bot.desk.settled();
		const news = discord.botMessages(discord.channelId, user).filter((message) => !before.has(message));
		const first = news.at(0);
		if (line.thread !== undefined && first !== undefined) threads.set(line.thread, first);
		return news
			.map((message) =>
				discordText(message)
					.replace(/^-# /gm, '')
					.replace(/\*\*/g, '')
					.replace(/\\([^0-9A-Za-z\s])/g, '$1'),
			)
			.join('\n');
	});
	expect(missed).toEqual([]);
	expect(discord.violations).toEqual([]);
}, 60_000);
