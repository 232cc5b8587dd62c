/**
 * The lead's daily digest by the real clients: off until a lead switches it on, then once a day in the channel where
 * that was said, whichever of two processes on one database is first.
 */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { afterwards } from './common/closing.js';
import { openConversation } from './common/conversation.js';
import { discordBotOn, discordShop } from './discord/shop.js';
import { readable as discordText } from './discord.js';
import { slackBotOn, slackShop } from './slack/shop.js';
import { readable as slackText } from './slack.js';

const QUESTION = '40A 12V 15 ft';
const PATIENCE = { timeout: 30_000 };
const DIGEST = /^(?:\*\*)?To look at: /;
/** By the clock of the shop; the digest of these tests is due at 07:00. */
const at = (day: number, hour: number, minute = 0) => new Date(2026, 4, day, hour, minute).getTime();

interface Bots {
	readonly bots: readonly { readonly desk: { sweep(): Promise<void>; settled(): Promise<void> } }[];
	readonly setClock: (ms: number) => void;
	/** a person asks in the first channel, and waits for the answer */
	readonly ask: () => Promise<unknown>;
	/** the lead says something of /log in the lead's channel, and waits for the answer */
	readonly lead: (text: string, answer: RegExp) => Promise<unknown>;
	/** first lines of the messages in the first channel and in the lead's */
	readonly digests: () => { readonly first: number; readonly lead: readonly string[] };
	readonly violations: () => readonly unknown[];
}

function sharedFile(): string {
	const folder = mkdtempSync(join(tmpdir(), 'lugbook-digest-'));
	afterwards(async () => rmSync(folder, { recursive: true }));
	return `sqlite:${join(folder, 'log.sqlite')}`;
}

async function inSlack(): Promise<Bots> {
	let nowMs = at(4, 12);
	const databaseUrl = sharedFile();
	const options = { databaseUrl, leads: ['U02'], sweepMs: 0, nowMs: () => nowMs, mode: 'socket' as const };
	const { slack, bot } = await slackShop(options);
	slack.addChannel({ id: 'C02', name: 'lead' });
	const chat = await openConversation(databaseUrl);
	afterwards(() => chat.close());
	const other = await slackBotOn(slack, chat, options);
	afterwards(() => other.stop());
	const said = (channel: string) =>
		slack.botMessages(channel, 'U02').map((message) => slackText(message).split('\n')[0] ?? '');
	return {
		bots: [bot, other],
		setClock: (ms) => {
			nowMs = ms;
		},
		ask: async () => {
			await slack.command('/ask', QUESTION);
			return await slack.waitForMessage(/AWG/, PATIENCE.timeout);
		},
		lead: async (text, answer) => {
			await slack.command('/log', text, { user: 'U02', channel: 'C02' });
			return await slack.waitForMessage(answer, PATIENCE.timeout);
		},
		digests: () => ({
			first: said('C01').filter((line) => DIGEST.test(line)).length,
			lead: said('C02').filter((line) => DIGEST.test(line)),
		}),
		violations: () => slack.violations,
	};
}

async function inDiscord(): Promise<Bots> {
	let nowMs = at(4, 12);
	const databaseUrl = sharedFile();
	const leads = ['100000000000000012'];
	const options = { databaseUrl, leads, sweepMs: 0, nowMs: () => nowMs };
	const { discord, bot } = await discordShop(options);
	const { two } = discord.people;
	const { id } = discord.addChannel({ id: '100000000000000004', name: 'lead' });
	const chat = await openConversation(databaseUrl);
	afterwards(() => chat.close());
	const other = await discordBotOn(discord, chat, options);
	afterwards(() => other.stop());
	const said = (channel: string) =>
		discord.botMessages(channel, two).map((message) => discordText(message).split('\n')[0] ?? '');
	return {
		bots: [bot, other],
		setClock: (ms) => {
			nowMs = ms;
		},
		ask: async () => {
			await discord.command('ask', { text: QUESTION });
			return await discord.waitForMessage(/AWG/, PATIENCE.timeout);
		},
		lead: async (text, answer) => {
			await discord.command('log', { text }, { user: two, channel: id });
			return await discord.waitForMessage(answer, PATIENCE.timeout);
		},
		digests: () => ({
			first: said(discord.channelId).filter((line) => DIGEST.test(line)).length,
			lead: said(id).filter((line) => DIGEST.test(line)),
		}),
		violations: () => discord.violations,
	};
}

test.each([
	['Slack', inSlack],
	['Discord', inDiscord],
] as const)('in %s', { timeout: 120_000 }, async (_, start) => {
	const { bots, setClock, ask, lead, digests, violations } = await start();
	/** Both look at the same moment, and again later that day. */
	const look = async (ms: number) => {
		for (const later of [0, 10, 600]) {
			setClock(ms + later * 60_000);
			await Promise.all(bots.map(({ desk }) => desk.sweep()));
			await Promise.all(bots.map(({ desk }) => desk.settled()));
		}
	};
	await ask();
	await look(at(5, 7, 30));
	expect(digests()).toEqual({ first: 0, lead: [] });
	await lead('digest on 07:00', /comes into this channel at 07:00/);
	setClock(at(6, 6, 50));
	await Promise.all(bots.map(({ desk }) => desk.sweep()));
	await Promise.all(bots.map(({ desk }) => desk.settled()));
	expect(digests()).toEqual({ first: 0, lead: [] });
	for (const [index, day] of [6, 7].entries()) {
		await look(at(day, 7, 30));
		expect(digests().first).toBe(0);
		expect(digests().lead).toHaveLength(index + 1);
		expect(digests().lead.at(-1)).toMatch(/To look at: 1 unsigned/);
	}
	await lead('digest off', /The daily digest is off/);
	await look(at(8, 7, 30));
	expect(digests().lead).toHaveLength(2);
	expect(violations()).toEqual([]);
});
