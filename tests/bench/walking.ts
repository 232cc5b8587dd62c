import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Incoming, openChat } from '@lugbook/chat';
import { defaultContext, runTopic, topicNamed } from '@lugbook/core';
import { Reader } from '@lugbook/language';
import { startDiscordStandIn } from '../platforms/discord.js';
import { startSlackStandIn } from '../platforms/slack.js';
import { type Bench, percentiles } from './bench.js';

const questions = [
	'40A 12V 15 ft',
	"fridge 5 amps 22' run 12v",
	'2000w inverter 12v 4ft each way',
	'30a shore 120v 18 ft',
	'3.5m 20A 24v 35mm2 ok?',
	'need wrie for frige 60w 12v 20ft non critical',
];
const question = (index: number) => questions[index % questions.length] as string;

function message(text: string, index: number): Incoming {
	return {
		platform: 'bench',
		shop: 'bench',
		channel: 'c',
		thread: `t${index}`,
		delivery: `d${index}`,
		person: { id: 'u', name: 'u', lead: false },
		command: 'ask',
		text,
	};
}

/** Start of an app until it prints a line that matches, with its memory then. */
async function coldStart(
	script: string,
	ready: RegExp,
	environment: Record<string, string> = {},
): Promise<string> {
	const start = performance.now();
	const child = spawn(
		process.execPath,
		[fileURLToPath(new URL(`../../../apps/${script}`, import.meta.url))],
		{
			env: { ...process.env, ...environment },
			stdio: ['ignore', 'pipe', 'pipe'],
		},
	);
	try {
		return await new Promise<string>((resolve, reject) => {
			let output = '';
			const read = (chunk: Buffer) => {
				output += chunk.toString();
				if (!ready.test(output)) return;
				const ms = performance.now() - start;
				resolve(`${ms.toFixed(0)} ms, ${memoryMb(child.pid)} MB`);
			};
			child.stdout.on('data', read);
			child.stderr.on('data', read);
			child.on('exit', () => reject(new Error(`ended before it was ready: ${output.slice(0, 300)}`)));
			setTimeout(() => reject(new Error('not ready after 20 s')), 20_000).unref();
		});
	} finally {
		child.kill('SIGKILL');
	}
}

/** Most memory the process has had in real memory (Linux), or "?" elsewhere. */
function memoryMb(pid: number | undefined): string {
	try {
		const status = readFileSync(`/proc/${pid}/status`, 'utf8');
		return (Number(/VmHWM:\s+(\d+)/.exec(status)?.[1]) / 1024).toFixed(0);
	} catch {
		return '?';
	}
}

export const benches: readonly Bench[] = [
	{
		name: 'wire sizings a second in core',
		target: null,
		run: () => {
			const wire = topicNamed('wire');
			if (wire === null) throw new Error('there is no topic "wire"');
			const end = performance.now() + 1000;
			let count = 0;
			while (performance.now() < end) {
				runTopic(
					wire,
					{ currentA: 5 + (count % 90), voltageV: 12, lengthM: 1 + (count % 13) },
					defaultContext,
				);
				count += 1;
			}
			return `${count} a second`;
		},
	},
	{
		name: 'text to answer, nothing kept',
		target: null,
		run: async () => {
			const chat = await openChat({ databaseUrl: 'sqlite::memory:', region: 'us' });
			const figure = await percentiles(2000, (index) =>
				chat.handle({ ...message(question(index), index), keep: false }),
			);
			await chat.close();
			return figure;
		},
	},
	{
		name: 'reading alone',
		target: 'p99 under 5 ms',
		run: () => {
			const reader = new Reader();
			return percentiles(5000, (index) => reader.read(question(index), { context: defaultContext }));
		},
	},
	{
		name: 'text to durable entry (SQLite, synchronous FULL)',
		target: null,
		run: async () => {
			const folder = mkdtempSync(join(tmpdir(), 'lugbook-bench-'));
			const chat = await openChat({ databaseUrl: `sqlite:${join(folder, 'log.sqlite')}`, region: 'us' });
			const figure = await percentiles(2000, (index) => chat.handle(message(question(index), index)));
			await chat.close();
			rmSync(folder, { recursive: true });
			return figure;
		},
	},
	{
		name: 'cold start of the console (demo played to its first line)',
		target: null,
		run: () => coldStart('console/dist/main.js', /Lugbook/),
	},
	{
		name: 'cold start of the Slack bot (Socket Mode, stand-in platform)',
		target: null,
		run: async () => {
			const slack = await startSlackStandIn();
			try {
				return await coldStart('slack/dist/main.js', /"started"/, {
					SLACK_BOT_TOKEN: slack.botToken,
					SLACK_APP_TOKEN: slack.appToken,
					SLACK_MODE: 'socket',
					SLACK_API_URL: slack.apiUrl,
					DATABASE_URL: 'sqlite::memory:',
					PORT: '0',
				});
			} finally {
				await slack.close();
			}
		},
	},
	{
		name: 'cold start of the Discord bot (stand-in platform)',
		target: null,
		run: async () => {
			const discord = await startDiscordStandIn();
			try {
				return await coldStart('discord/dist/main.js', /"started"/, {
					DISCORD_TOKEN: discord.botToken,
					DISCORD_API_URL: discord.apiUrl,
					DATABASE_URL: 'sqlite::memory:',
					PORT: '0',
				});
			} finally {
				await discord.close();
			}
		},
	},
];
