/**
 * Several processes of one bot on one PostgreSQL, killed in mid-work again and again: whatever was delivered is answered
 * in the channel once and kept once, by whichever process is left.
 */

import { openLog } from '@lugbook/log';
import { EVENTS_PATH } from '@lugbook/slack';
import { expect, test } from 'vitest';
import { sharedCluster } from '../log/postgres.js';
import { BotProcess } from './common/bot-process.js';
import { afterwards } from './common/closing.js';
import { pause } from './common/watch.js';
import { type DiscordStandIn, readable as discordText, startDiscordStandIn } from './discord.js';
import { type SlackStandIn, readable as slackText, startSlackStandIn } from './slack.js';

const ROUNDS = 4;
const QUESTIONS_PER_ROUND = 12;
/** Short, so that the test need not wait long for what a dead process held. */
const TIMES = { leaseMs: 1500, sweepMs: 200 };
const ALL_ANSWERED_WITHIN_MS = 20_000;

/** Questions whose answers can be told apart by the current and voltage that were read. */
const questions = Array.from({ length: ROUNDS * QUESTIONS_PER_ROUND }, (_, at) => ({
	text: `${5 + Math.floor(at / 2)}A ${at % 2 === 0 ? 12 : 24}V 15 ft`,
	read: `Read: ${5 + Math.floor(at / 2)} A, ${at % 2 === 0 ? 12 : 24} V,`,
}));

async function expectKeptOnce(databaseUrl: string, shop: string): Promise<void> {
	const log = await openLog(databaseUrl);
	try {
		const { entries } = await log.find(shop, { kinds: ['exchange'], limit: 200 });
		expect(entries.map(({ text }) => text).toSorted()).toEqual(questions.map(({ text }) => text).toSorted());
		expect(await log.verify(shop)).toMatchObject({ ok: true });
	} finally {
		await log.close();
	}
}

/** How often each question's answer stands before everyone. */
const counted = (shown: readonly string[]) =>
	questions.map(({ read }) => shown.filter((text) => text.includes(read)).length);
const once = questions.map(() => 1);

/** Two processes, of which one is killed and replaced in each round, 0 to 130 ms after the round began. */
async function killRounds(
	start: () => Promise<BotProcess>,
	ask: (at: number, processes: readonly BotProcess[]) => Promise<unknown>,
): Promise<BotProcess[]> {
	const processes = await Promise.all([start(), start()]);
	for (let round = 0; round < ROUNDS; round += 1) {
		const first = round * QUESTIONS_PER_ROUND;
		const asked = Array.from({ length: QUESTIONS_PER_ROUND }, (_, at) => ask(first + at, processes));
		await pause((round * 53) % 131);
		const victim = processes[round % 2] as BotProcess;
		await victim.kill();
		await Promise.all(asked);
		processes[round % 2] = await start();
	}
	return processes;
}

async function slackWorkspace(mode: 'http' | 'socket') {
	const slack = await startSlackStandIn();
	afterwards(() => slack.close());
	const databaseUrl = await (await sharedCluster()).freshDatabase();
	// The platform takes its time, so that a kill meets answers on their way.
	slack.faults.order('chat.postMessage', { kind: 'slow', delayMs: 80 }, 1000);
	const settings = {
		botToken: slack.botToken,
		apiUrl: slack.apiUrl,
		connection:
			mode === 'http' ? { mode, signingSecret: slack.signingSecret } : { mode, appToken: slack.appToken },
	};
	const start = () => BotProcess.start({ platform: 'slack', databaseUrl, settings, ...TIMES });
	return { slack, databaseUrl, start };
}

/** Delivers to one process, and as the platform does to whichever answers when that one does not. */
async function deliverSlack(
	slack: SlackStandIn,
	at: number,
	processes: readonly BotProcess[],
): Promise<void> {
	const url = (index: number) => `http://127.0.0.1:${processes[index % 2]?.port}${EVENTS_PATH}`;
	const isHttp = processes.every(({ port }) => port > 0) && slack.socket.connections === 0;
	if (isHttp) slack.deliverTo(url(at));
	const text = questions[at]?.text ?? '';
	let result = await (at % 3 === 0 ? slack.command('/ask', text) : slack.mention(text));
	for (let retry = 1; retry <= 20 && (retry === 1 || result.ackStatus !== 200); retry += 1) {
		// Every other delivery comes again although it was acknowledged.
		if (result.ackStatus === 200 && at % 2 === 0) return;
		await pause(100 * (retry - 1));
		if (isHttp) slack.deliverTo(url(at + retry));
		result = await slack.redeliver(result, retry);
	}
	expect(result.ackStatus).toBe(200);
}

const shownInSlack = (slack: SlackStandIn) =>
	slack.workspace.messages
		.filter(({ fromBot, visibleTo, deleted }) => fromBot && visibleTo === undefined && !deleted)
		.map(slackText);

test.each(['http', 'socket'] as const)(
	'two Slack bots over %s: each delivery is answered once while they are killed by turns',
	{ timeout: 180_000 },
	async (mode) => {
		const { slack, databaseUrl, start } = await slackWorkspace(mode);
		const processes = await killRounds(start, (at, running) => deliverSlack(slack, at, running));
		await expect
			.poll(() => counted(shownInSlack(slack)), { timeout: ALL_ANSWERED_WITHIN_MS, interval: 200 })
			.toEqual(once);
		// What could still come twice would come by now.
		await pause(TIMES.leaseMs + 3 * TIMES.sweepMs);
		expect(counted(shownInSlack(slack))).toEqual(once);
		expect(processes.map(({ isAlive }) => isAlive)).toEqual([true, true]);
		await expectKeptOnce(databaseUrl, `slack:${slack.teamId}`);
		expect(slack.violations).toEqual([]);
	},
);

const shownInDiscord = (discord: DiscordStandIn) =>
	discord.guild.messages
		.filter(({ author, visibleTo, deleted }) => author.bot && visibleTo === undefined && !deleted)
		.map(discordText);

test('two Discord bots: each delivery reaches both and is answered once while they are killed by turns', {
	timeout: 180_000,
}, async () => {
	const discord = await startDiscordStandIn();
	afterwards(() => discord.close());
	const databaseUrl = await (await sharedCluster()).freshDatabase();
	for (const route of ['channel.send', 'interaction.callback']) {
		discord.faults.order(route, { kind: 'slow', delayMs: 80 }, 1000);
	}
	const settings = { token: discord.botToken, guildId: discord.guildId, apiUrl: discord.apiUrl };
	const start = () => BotProcess.start({ platform: 'discord', databaseUrl, settings, ...TIMES });
	const ask = async (at: number) => {
		const text = questions[at]?.text ?? '';
		if (at % 3 === 0) await discord.command('ask', { text });
		else discord.mention(text);
	};
	const processes = await killRounds(start, ask);
	await expect
		.poll(() => counted(shownInDiscord(discord)), { timeout: ALL_ANSWERED_WITHIN_MS, interval: 200 })
		.toEqual(once);
	await pause(TIMES.leaseMs + 3 * TIMES.sweepMs);
	expect(counted(shownInDiscord(discord))).toEqual(once);
	expect(shownInDiscord(discord).filter((text) => text === '(thinking)')).toEqual([]);
	expect(processes.map(({ isAlive }) => isAlive)).toEqual([true, true]);
	await expectKeptOnce(databaseUrl, `discord:${discord.guildId}`);
	expect(discord.violations).toEqual([]);
});
