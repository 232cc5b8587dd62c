/**
 * Offering the commands to Discord, which allows 200 new commands a day for a server: a start sends only what differs
 * from what is there, for one server and for all. By the real client, from one start of the bot to the next.
 */

import { expect, test } from 'vitest';
import { arrayOf, type JsonObject, objectOf } from './common/json.js';
import { discordBotOn, discordShop } from './discord/shop.js';
import type { DiscordStandIn } from './discord.js';

const NAMES = ['ask', 'build', 'log', 'size'];

/** Takes the calls that change something since the last time: method, the command's name, and its body or id. */
function sentTo(discord: DiscordStandIn) {
	let seen = 0;
	return () => {
		const calls = discord.calls().slice(seen);
		seen += calls.length;
		return calls
			.filter(({ route, method }) => route.startsWith('commands.') && method !== 'GET')
			.map(({ method, path, body }) => ({ method, path, name: objectOf(body).name }));
	};
}

/** The first option of all that holds no other, as deep as it stands. */
function deepest(command: JsonObject): JsonObject {
	const [first] = arrayOf(command.options).map(objectOf);
	return first === undefined ? command : deepest(first);
}

test.each(['one server', 'every server'] as const)('for %s', { timeout: 180_000 }, async (scope) => {
	const isGuild = scope === 'one server';
	const options = isGuild ? {} : { guildId: null };
	const { discord, chat, stop } = await discordShop(options);
	await stop();
	const take = sentTo(discord);
	const all = isGuild
		? `/applications/${discord.applicationId}/guilds/${discord.guildId}/commands`
		: `/applications/${discord.applicationId}/commands`;
	const start = async () => {
		const bot = await discordBotOn(discord, chat, options);
		await bot.stop();
		return take();
	};
	const named = (name: string) => discord.registered().find((command) => command.name === name) ?? {};
	const names = () =>
		discord
			.registered()
			.map(({ name }) => name)
			.toSorted();

	expect(take()).toEqual([{ method: 'PUT', path: all, name: undefined }]);
	expect(names()).toEqual(NAMES);
	expect(await start()).toEqual([]);

	// One command that differs, somewhere: that one and no other.
	const changes: readonly (readonly [name: string, change: (command: JsonObject) => void])[] = [
		['ask', (command) => Object.assign(command, { description: 'As it was called before' })],
		['size', (command) => Object.assign(deepest(command), { description: 'Said otherwise' })],
		['size', (command) => Object.assign(deepest(command), { required: deepest(command).required !== true })],
		['build', (command) => Object.assign(deepest(command), { autocomplete: false })],
		['log', (command) => Object.assign(deepest(command), { max_length: 10 })],
		['log', (command) => Object.assign(command, { options: [] })],
	];
	for (const [name, change] of changes) {
		change(named(name));
		expect(await start()).toEqual([{ method: 'POST', path: all, name }]);
		expect(names()).toEqual(NAMES);
		expect(await start()).toEqual([]);
	}

	// One that is missing is sent, one that is no more is taken back.
	const registered = discord.registered();
	registered.splice(registered.indexOf(named('build')), 1);
	expect(await start()).toEqual([{ method: 'POST', path: all, name: 'build' }]);
	discord.registered().push({ ...named('log'), name: 'gone', id: '100000000000000099' });
	expect(await start()).toEqual([{ method: 'DELETE', path: `${all}/100000000000000099`, name: undefined }]);
	expect(names()).toEqual(NAMES);
	expect(await start()).toEqual([]);
	expect(discord.violations).toEqual([]);
});
