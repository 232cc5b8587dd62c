/** The settings, from the environment: checked at the start, each with the way to get it. */

import { fileURLToPath } from 'node:url';
import { commonVariables, Environment, idsIn, type Leads, type Pace, paceOf } from '@lugbook/chat';
import { z } from 'zod';

/** under data/ at the root of the checkout, where the terminal keeps it too */
export const defaultLogPath = fileURLToPath(new URL('../../../data/lugbook.sqlite', import.meta.url));

const VARIABLES = {
	...commonVariables,
	DISCORD_TOKEN: {
		schema: z.string().regex(/^[\w-]+\.[\w-]+\.[\w-]+$/),
		expected: 'a bot token, three parts joined by dots',
		whence: 'in the developer portal, under "Bot", press "Reset Token" and copy it',
		isSecret: true,
	},
	DISCORD_GUILD_ID: {
		schema: z.string().regex(/^\d{15,22}$/),
		expected: 'the id of a server, 15 to 22 digits',
		whence: 'with developer mode on, "Copy Server ID"; leave it out to offer the commands in every server',
		isSecret: false,
	},
	DISCORD_SHARDS: {
		schema: z.coerce.number().int().min(1).max(1000) as z.ZodType<number>,
		expected: 'a number of shards from 1 to 1000',
		whence: 'leave it out for as many as the platform advises; only apps/discord/dist/shards.js asks for it',
		isSecret: false,
	},
	DISCORD_API_URL: {
		schema: z.url(),
		expected: 'an address',
		whence: 'leave it out to use the platform itself',
		isSecret: false,
	},
	LUGBOOK_LEADS: {
		schema: z.string().regex(/^\d+(?:\s*,\s*\d+)*$/),
		expected: 'user ids separated by commas',
		whence: 'with developer mode on, "Copy User ID" of a person',
		isSecret: false,
	},
	LUGBOOK_LEAD_ROLES: {
		schema: z.string().regex(/^\d+(?:\s*,\s*\d+)*$/),
		expected: 'role ids separated by commas',
		whence: 'with developer mode on, "Copy Role ID" under the server\'s roles',
		isSecret: false,
	},
} as const;

export interface Settings {
	readonly token: string;
	/** the one server in which the commands are offered; null for every server */
	readonly guildId: string | null;
	readonly apiUrl: string | null;
	/** how many shards shards.js starts; null for as many as the platform advises */
	readonly shards: number | null;
	readonly host: string;
	readonly port: number;
	readonly databaseUrl: string;
	readonly region: 'us' | 'eu';
	/** who may sign */
	readonly leads: Leads;
	/** how fast one person may ask */
	readonly pace: Pace;
	readonly logLevel: string;
}

/** What the environment says, or what is wrong with it, one line for each variable. */
export function readSettings(environment: NodeJS.ProcessEnv): Settings | { readonly errors: string[] } {
	const variables = new Environment(VARIABLES, environment);
	const token = variables.required('DISCORD_TOKEN');
	const rest = {
		guildId: variables.optional('DISCORD_GUILD_ID') ?? null,
		apiUrl: variables.optional('DISCORD_API_URL') ?? null,
		shards: variables.optional('DISCORD_SHARDS') ?? null,
		host: variables.optional('HOST') ?? '127.0.0.1',
		port: portOf(variables.optional('PORT') ?? 3001, environment),
		databaseUrl: variables.optional('DATABASE_URL') ?? `sqlite:${defaultLogPath}`,
		region: variables.optional('LUGBOOK_REGION') ?? 'us',
		leads: {
			people: idsIn(variables.optional('LUGBOOK_LEADS')),
			roles: idsIn(variables.optional('LUGBOOK_LEAD_ROLES')),
		},
		pace: paceOf(variables.optional('LUGBOOK_PACE')),
		logLevel: variables.optional('LOG_LEVEL') ?? 'info',
	};
	const { errors } = variables;
	return errors.length > 0 || token === undefined ? { errors } : { token, ...rest };
}

/** Each shard's process is told its number by the one that starts it, and listens on a port of its own. */
function portOf(first: number, { SHARDS: shard = '0' }: NodeJS.ProcessEnv): number {
	return first === 0 ? 0 : first + (Number(shard) || 0);
}
