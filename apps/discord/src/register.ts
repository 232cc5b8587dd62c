/** Offering the commands to the platform, which counts what is sent: 200 new commands a day for a server. */

import type { ProgramLog } from '@lugbook/chat';
import { type REST, Routes } from 'discord.js';
import { commands } from './commands.js';
import { repeatedly } from './rest-way.js';

/** What of a command the platform gives back as it was sent; the rest is its own. */
const COMPARED = [
	'type',
	'name',
	'description',
	'required',
	'autocomplete',
	'min_value',
	'max_value',
	'min_length',
	'max_length',
	'choices',
	'options',
] as const;
const CHAT_INPUT = 1;

/** Sends the commands that are new or differ, and takes back those that are no more. */
export async function registerCommands(
	rest: REST,
	applicationId: string,
	guildId: string | null,
	log: ProgramLog,
): Promise<void> {
	const all =
		guildId === null
			? Routes.applicationCommands(applicationId)
			: Routes.applicationGuildCommands(applicationId, guildId);
	const one = (id: string) =>
		guildId === null
			? Routes.applicationCommand(applicationId, id)
			: Routes.applicationGuildCommand(applicationId, guildId, id);
	const there = (await repeatedly(() => rest.get(all))) as { id: string; name: string }[];
	const wanted = commands();
	const changed = wanted.filter((command) => {
		const before = there.find(({ name }) => name === command.name);
		return before === undefined || essence(before) !== essence(command);
	});
	const gone = there.filter(({ name }) => wanted.every((command) => command.name !== name));
	if (there.length === 0) await repeatedly(() => rest.put(all, { body: wanted }));
	else {
		// A command sent under a name that is there takes its place.
		for (const command of changed) await repeatedly(() => rest.post(all, { body: command }));
		for (const { id } of gone) await repeatedly(() => rest.delete(one(id)));
	}
	log.info(
		{ changed: changed.map(({ name }) => name), gone: gone.map(({ name }) => name) },
		'commands offered',
	);
}

/** A command in one notation, with what the platform leaves out or fills in left out. */
function essence(command: object): string {
	const value = (part: unknown): unknown => {
		if (Array.isArray(part)) return part.map(value);
		if (typeof part !== 'object' || part === null) return part;
		const fields = part as Record<string, unknown>;
		return Object.fromEntries(
			COMPARED.flatMap((name) => {
				const own = fields[name];
				const isUnsaid = own === undefined || own === null || own === false;
				return isUnsaid || (Array.isArray(own) && own.length === 0) ? [] : [[name, value(own)]];
			}),
		);
	};
	// Its kind in the same place whether it was said or not: texts are compared.
	return JSON.stringify({ type: CHAT_INPUT, ...(value(command) as object) });
}
