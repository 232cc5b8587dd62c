/**
 * Load on each bot with the durable log: the bot is a process of its own, the platform's stand-in and the people are in
 * this one. After the first thousand messages, `LUGBOOK_LOAD_S` seconds (20 unless said) of `LUGBOOK_LOAD_PER_S`
 * messages a second (100), sent on time whether or not earlier ones are answered; and the memory of the bot over `LUGBOOK_LOAD_MESSAGES` messages (2000), as
 * fast as it takes them, at every tenth of them after a collection of garbage: 100000 tell whether it stays flat.
 */

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { startDiscordStandIn } from '../platforms/discord.js';
import { startSlackStandIn } from '../platforms/slack.js';
import type { Bench } from './bench.js';

const LOAD_S = Number(process.env.LUGBOOK_LOAD_S ?? 20);
const PER_S = Number(process.env.LUGBOOK_LOAD_PER_S ?? 100);
const MESSAGES = Number(process.env.LUGBOOK_LOAD_MESSAGES ?? 2000);
/** What the stand-in remembers of a steady load: more than ever is under way. */
const NEWEST = 5 * PER_S;
/** Messages before the steady load. */
const WARM_UP = 1000;
/** messages under way at once when as many as possible are sent */
const AT_ONCE = 8;
const CHANNELS = 100;
const PEOPLE = 200;

/** A question that no other is like. */
const question = (at: number) => `${1 + (at % 97)}A 12V ${1 + ((at * 7) % 29)}.${at % 10} ft`;

/** A message and its way to the screen [ms]. */
interface Told {
	/** until the platform has its acknowledgement */
	readonly acknowledgedMs: number;
	/** until the answer is shown */
	readonly answeredMs: number;
}

/** A bot under load. */
interface Target {
	/** a person asks; resolves when the answer is shown */
	ask(at: number): Promise<Told>;
	/** of the bot's process, after a collection of garbage */
	memory(): Promise<NodeJS.MemoryUsage>;
	/** drops what the stand-in remembers but the newest: it looks through all of it, and is no part of the load */
	forget(newest?: number): void;
	end(): Promise<void>;
}

/** Loaded before the bot: collects garbage when it is asked for its memory, and does not keep the process alive. */
const LISTENER = `
	process.on('message', () => {
		globalThis.gc();
		process.send(process.memoryUsage());
	});
	process.channel.unref();
`;

interface Bot {
	readonly port: number;
	memory(): Promise<NodeJS.MemoryUsage>;
	end(): Promise<void>;
}

/** A bot as a process, from its start until it says that it has started. */
async function botProcess(script: string, environment: Record<string, string>): Promise<Bot> {
	const folder = mkdtempSync(join(tmpdir(), 'lugbook-load-'));
	const child = spawn(
		process.execPath,
		[
			'--expose-gc',
			'--import',
			`data:text/javascript,${encodeURIComponent(LISTENER)}`,
			fileURLToPath(new URL(`../../../apps/${script}`, import.meta.url)),
		],
		{
			env: {
				...process.env,
				DATABASE_URL: `sqlite:${join(folder, 'log.sqlite')}`,
				PORT: '0',
				LUGBOOK_PACE: '9999/9999',
				...environment,
			},
			stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
		},
	);
	const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
	const port = await new Promise<number>((resolve, reject) => {
		let output = '';
		child.once('exit', () => reject(new Error(`ended before it was ready: ${output.slice(0, 300)}`)));
		child.stdout?.on('data', (chunk: Buffer) => {
			// The program's log goes on and has to be read; only its beginning is of interest.
			if (output.length < 10_000) output += chunk.toString();
			const started = /"port":(\d+),"msg":"started"/.exec(output);
			if (started !== null) resolve(Number(started[1]));
		});
	});
	return {
		port,
		memory: () =>
			new Promise((resolve, reject) => {
				child.once('message', (usage) => resolve(usage as NodeJS.MemoryUsage));
				child.send('memory', (error) => error !== null && reject(error));
			}),
		async end() {
			child.kill('SIGTERM');
			await ended;
			rmSync(folder, { recursive: true });
		},
	};
}

async function slackTarget(): Promise<Target> {
	const slack = await startSlackStandIn();
	const bot = await botProcess('slack/dist/main.js', {
		SLACK_BOT_TOKEN: slack.botToken,
		SLACK_SIGNING_SECRET: slack.signingSecret,
		SLACK_MODE: 'http',
		SLACK_API_URL: slack.apiUrl,
	});
	slack.deliverTo(`http://127.0.0.1:${bot.port}/slack/events`);
	const waiting = new Map<string, (atMs: number) => void>();
	const { workspace } = slack;
	const post = workspace.post.bind(workspace);
	workspace.post = (fresh) => {
		const message = post(fresh);
		if (message.fromBot && message.threadTs !== undefined) waiting.get(message.threadTs)?.(performance.now());
		return message;
	};
	return {
		async ask(at) {
			const startMs = performance.now();
			let answered: (atMs: number) => void = () => {};
			const shown = new Promise<number>((resolve) => {
				answered = resolve;
			});
			// The answer may come before the acknowledgement has: whoever posts the question is told its ts at once.
			const watched = workspace.post;
			workspace.post = (fresh) => {
				const message = watched(fresh);
				if (!message.fromBot) waiting.set(message.ts, answered);
				return message;
			};
			const asked = slack.mention(question(at), {
				user: `U${1000 + (at % PEOPLE)}`,
				channel: `C${1000 + (at % CHANNELS)}`,
			});
			workspace.post = watched;
			const { ackMs, ackStatus, message } = await asked;
			if (ackStatus !== 200) throw new Error(`acknowledged with ${ackStatus}`);
			const answeredMs = (await shown) - startMs;
			waiting.delete(message.ts);
			return { acknowledgedMs: ackMs, answeredMs };
		},
		memory: bot.memory,
		forget: (newest) => slack.forget(newest),
		async end() {
			await bot.end();
			await slack.close();
		},
	};
}

async function discordTarget(): Promise<Target> {
	const discord = await startDiscordStandIn();
	for (let at = 0; at < CHANNELS; at += 1) discord.addChannel({ id: String(100000000000001000 + at * 100) });
	const people = Array.from({ length: PEOPLE }, (_, at) => discord.addUser(`2000000000000${10_000 + at}`));
	const channels = [...discord.guild.channels.keys()];
	const bot = await botProcess('discord/dist/main.js', {
		DISCORD_TOKEN: discord.botToken,
		DISCORD_GUILD_ID: discord.guildId,
		DISCORD_API_URL: discord.apiUrl,
	});
	return {
		async ask(at) {
			const startMs = performance.now();
			const asked = await discord.command(
				'ask',
				{ text: question(at) },
				{
					user: people[at % PEOPLE]?.id ?? discord.people.one,
					channel: channels[at % channels.length] ?? discord.channelId,
				},
			);
			if (asked.responseMs === null) throw new Error('there was no first response within three seconds');
			await discord.settled(asked);
			return { acknowledgedMs: asked.responseMs, answeredMs: performance.now() - startMs };
		},
		memory: bot.memory,
		forget: (newest) => discord.forget(newest),
		async end() {
			await bot.end();
			await discord.close();
		},
	};
}

const targets = { Slack: slackTarget, Discord: discordTarget } as const;

/** "p50 3.1 ms, p99 9.8 ms, most 20 ms" */
function shares(times: readonly number[]): string {
	const sorted = times.toSorted((a, b) => a - b);
	const at = (share: number) => (sorted[Math.ceil(sorted.length * share) - 1] ?? Number.NaN).toFixed(1);
	return `p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, most ${at(1)} ms`;
}

/** Messages sent on time; what a late one waits for its turn counts. */
async function steadily(target: Target): Promise<string> {
	// A program that has just started runs uncompiled for some seconds: told apart, and no part of the steady load.
	const first: Told[] = [];
	const person = async () => {
		while (first.length < WARM_UP) {
			first.push(await target.ask(first.length));
			target.forget(NEWEST);
		}
	};
	await Promise.all(Array.from({ length: AT_ONCE }, person));
	const total = LOAD_S * PER_S;
	const startMs = performance.now();
	const told: Promise<Told | null>[] = [];
	while (told.length < total) {
		const due = Math.min(total, Math.floor(((performance.now() - startMs) / 1000) * PER_S) + 1);
		while (told.length < due) told.push(target.ask(WARM_UP + told.length).catch(() => null));
		target.forget(NEWEST);
		await new Promise((resolve) => setTimeout(resolve, 2));
	}
	const all = (await Promise.all(told)).flatMap((one) => one ?? []);
	const tookS = (performance.now() - startMs) / 1000;
	const lost = total - all.length;
	return [
		`${total} messages in ${tookS.toFixed(1)} s, ${lost} unanswered`,
		`acknowledged ${shares(all.map((one) => one.acknowledgedMs))}`,
		`answered ${shares(all.map((one) => one.answeredMs))}`,
		`before it the first ${first.length} after the start, ${AT_ONCE} at once: acknowledged ${shares(first.map((one) => one.acknowledgedMs))}`,
	].join('; ');
}

const mb = (bytes: number) => Math.round(bytes / 1024 / 1024);

/** The bot's memory at the start and at every tenth of the messages. */
async function memoryOver(target: Target): Promise<string> {
	const seen = [await target.memory()];
	const startMs = performance.now();
	let next = 0;
	for (let tenth = 1; tenth <= 10; tenth += 1) {
		const end = Math.round((MESSAGES * tenth) / 10);
		const person = async () => {
			while (next < end) {
				const at = next;
				next += 1;
				await target.ask(at);
			}
		};
		await Promise.all(Array.from({ length: AT_ONCE }, person));
		// Not while a question is under way: its thread would be gone.
		target.forget();
		seen.push(await target.memory());
	}
	const perS = MESSAGES / ((performance.now() - startMs) / 1000);
	const over = (what: 'rss' | 'heapUsed') => seen.map((usage) => mb(usage[what])).join(', ');
	const last = seen.at(-1)?.rss ?? Number.NaN;
	const growth = mb(last - (seen[2]?.rss ?? Number.NaN));
	return [
		`resident ${over('rss')} MB (${growth >= 0 ? '+' : ''}${growth} MB since the second tenth)`,
		`heap in use ${over('heapUsed')} MB`,
		`${MESSAGES} messages, ${perS.toFixed(0)} a second`,
	].join('; ');
}

export const benches: readonly Bench[] = Object.entries(targets).flatMap(([name, start]) => {
	const on = (measure: (target: Target) => Promise<string>) => async () => {
		const target = await start();
		try {
			return await measure(target);
		} finally {
			await target.end();
		}
	};
	return [
		{
			name: `load on the ${name} bot: ${PER_S} messages a second for ${LOAD_S} s, durable log`,
			target: 'acknowledged p99 under 100 ms, answered p99 under 500 ms',
			run: on(steadily),
		},
		{
			name: `load on the ${name} bot: its memory at the start and at every tenth of ${MESSAGES} messages, garbage collected`,
			target: 'flat after the second tenth',
			run: on(memoryOver),
		},
	];
});
