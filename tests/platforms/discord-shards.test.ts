/**
 * The Discord bot in two shards, each a process of its own on one log: every server is answered once, private messages
 * too, and the commands are offered once. The programs are those that were built.
 */

import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openChat } from '@lugbook/chat';
import { expect, test } from 'vitest';
import { afterwards } from './common/closing.js';
import { keptIn } from './common/conversation.js';
import { type DiscordStandIn, startDiscordStandIn } from './discord.js';

const SCRIPT = fileURLToPath(new URL('../../apps/discord/dist/shards.js', import.meta.url));
const START_WITHIN_MS = 60_000;
/** bits 22 and up are odd: of two shards it is the second's */
const SECOND_GUILD = String((23841857910156n << 22n) | (1n << 22n) | 77n);

class Shards {
	readonly #child: ChildProcess;
	readonly ended: Promise<number | null>;
	#output = '';
	#look: () => void = () => {};

	constructor(discord: DiscordStandIn, databaseUrl: string) {
		if (!existsSync(SCRIPT))
			throw new Error(`${SCRIPT} is missing: build the workspace first (npm run build)`);
		this.#child = spawn(process.execPath, [SCRIPT], {
			stdio: ['ignore', 'pipe', 'pipe'],
			env: {
				...process.env,
				NODE_OPTIONS: '',
				DISCORD_TOKEN: discord.botToken,
				DISCORD_API_URL: discord.apiUrl,
				DATABASE_URL: databaseUrl,
				PORT: '0',
			},
		});
		for (const stream of [this.#child.stdout, this.#child.stderr]) {
			stream?.setEncoding('utf8').on('data', (text: string) => {
				this.#output += text;
				this.#look();
			});
		}
		this.ended = new Promise((resolve) => this.#child.once('close', (code) => resolve(code)));
	}

	says(words: string): Promise<void> {
		return new Promise((resolve, reject) => {
			const timer = setTimeout(
				() => reject(new Error(`no "${words}" in: ${this.#output.slice(0, 2000)}`)),
				START_WITHIN_MS,
			);
			this.#look = () => {
				if (!this.#output.includes(words)) return;
				clearTimeout(timer);
				resolve();
			};
			this.#look();
		});
	}

	async end(): Promise<number | null> {
		this.#child.kill('SIGTERM');
		return await this.ended;
	}
}

test('two shards: each server is answered once by its own, the commands are offered once, all end together', async () => {
	const discord = await startDiscordStandIn({ shards: 2 });
	afterwards(() => discord.close());
	const elsewhere = discord.addChannel({ id: '100000000000000903', guildId: SECOND_GUILD, name: 'van-two' });
	const folder = mkdtempSync(join(tmpdir(), 'lugbook-shards-'));
	afterwards(async () => rmSync(folder, { recursive: true }));
	const databaseUrl = `sqlite:${join(folder, 'log.sqlite')}`;
	const shards = new Shards(discord, databaseUrl);
	afterwards(() => shards.end());
	await shards.says('started in shards');
	await discord.waitForCall('commands.put', START_WITHIN_MS);
	expect(discord.gateway.shards).toEqual([0, 1]);

	// On a busy machine the three seconds of an interaction may pass: then the answer comes by a post of its own.
	await discord.command('ask', { text: '40A 12V 15 ft' });
	await discord.waitForMessage((text, { guildId }) => guildId === discord.guildId && /AWG/.test(text));
	await discord.command('ask', { text: '60A 24V 10 ft' }, { channel: elsewhere.id });
	await discord.waitForMessage((text, { guildId }) => guildId === SECOND_GUILD && /AWG/.test(text));
	discord.dm('30A 12V 5 ft');
	await discord.waitForMessage((text, { guildId }) => guildId === undefined && /AWG/.test(text));
	expect(discord.guild.messages.filter(({ author }) => author.id === discord.bot.id)).toHaveLength(3);
	expect(discord.calls('commands.put')).toHaveLength(1);
	expect(discord.violations).toEqual([]);

	expect(await shards.end()).toBe(0);
	expect(discord.gateway.shards).toEqual([]);
	const chat = await openChat({ databaseUrl, region: 'us' });
	afterwards(() => chat.close());
	const kept = async (shop: string) => (await keptIn(chat, shop)).map(({ text }) => text);
	expect(await kept(`discord:${discord.guildId}`)).toEqual(['40A 12V 15 ft']);
	expect(await kept(`discord:${SECOND_GUILD}`)).toEqual(['60A 24V 10 ft']);
	expect(await kept(`discord:user:${discord.people.one}`)).toEqual(['30A 12V 5 ft']);
	expect((await chat.log.verify()).ok).toBe(true);
}, 180_000);
