/** The settings, from the environment: checked at the start, each with the way to get it. */

import { fileURLToPath } from 'node:url';
import { commonVariables, Environment, idsIn, type Leads, type Pace, paceOf, tokenKey } from '@lugbook/chat';
import { z } from 'zod';

/** under data/ at the root of the checkout, where the terminal keeps it too */
export const defaultLogPath = fileURLToPath(new URL('../../../data/lugbook.sqlite', import.meta.url));

const VARIABLES = {
	...commonVariables,
	SLACK_BOT_TOKEN: {
		schema: z.string().regex(/^xoxb-\S{10,}$/),
		expected: 'a bot token, which starts with "xoxb-"',
		whence: 'create the app from apps/slack/manifest.json, install it, then copy "Bot User OAuth Token"',
		isSecret: true,
	},
	SLACK_SIGNING_SECRET: {
		schema: z.string().regex(/^\S{16,}$/),
		expected: 'the signing secret, at least 16 characters without blanks',
		whence: 'copy "Signing Secret" from the app\'s "Basic Information"',
		isSecret: true,
	},
	SLACK_APP_TOKEN: {
		schema: z.string().regex(/^xapp-\S{10,}$/),
		expected: 'an app-level token, which starts with "xapp-"',
		whence: 'generate one with the scope connections:write under "Basic Information", "App-Level Tokens"',
		isSecret: true,
	},
	SLACK_CLIENT_ID: {
		schema: z.string().regex(/^\d+\.\d+$/),
		expected: 'the client id, two numbers joined by a dot',
		whence: 'copy "Client ID" from the app\'s "Basic Information"; only for several workspaces',
		isSecret: false,
	},
	SLACK_CLIENT_SECRET: {
		schema: z.string().regex(/^\S{16,}$/),
		expected: 'the client secret, at least 16 characters without blanks',
		whence: 'copy "Client Secret" from the app\'s "Basic Information"',
		isSecret: true,
	},
	SLACK_PUBLIC_URL: {
		schema: z.url({ protocol: /^https$/ }),
		expected: 'the public address of the bot, such as https://lugbook.example.org',
		whence: 'it is the one in place of YOUR-ADDRESS in the manifest',
		isSecret: false,
	},
	SLACK_TEAMS: {
		schema: z.string().regex(/^T[A-Z0-9]+(?:\s*,\s*T[A-Z0-9]+)*$/),
		expected: 'workspace ids separated by commas, such as T012AB3CD',
		whence:
			'they stand in the address of a workspace in the browser; leave it out to let any workspace install it',
		isSecret: false,
	},
	LUGBOOK_TOKEN_KEY: {
		schema: z.string().refine((text) => tokenKey(text) !== null),
		expected: 'a key of 32 bytes in base64 or hexadecimal',
		whence:
			"make one with `openssl rand -base64 32`, and keep it: without it the workspaces' tokens can't be read",
		isSecret: true,
	},
	SLACK_MODE: {
		schema: z.enum(['http', 'socket']),
		expected: 'http or socket',
		whence: 'http needs SLACK_SIGNING_SECRET and a public address, socket needs SLACK_APP_TOKEN',
		isSecret: false,
	},
	SLACK_API_URL: {
		schema: z.url(),
		expected: 'an address',
		whence: 'leave it out to use the platform itself',
		isSecret: false,
	},
	LUGBOOK_LEADS: {
		schema: z.string().regex(/^[A-Z0-9]+(?:\s*,\s*[A-Z0-9]+)*$/),
		expected: 'member ids separated by commas, such as U012AB3CD,U045EF6GH',
		whence: 'a person\'s profile, "Copy member ID"',
		isSecret: false,
	},
	LUGBOOK_LEAD_GROUPS: {
		schema: z.string().regex(/^S[A-Z0-9]+(?:\s*,\s*S[A-Z0-9]+)*$/),
		expected: 'user group ids separated by commas, such as S012AB3CD',
		whence: 'open the user group, "Copy group ID"; the app then needs the scope usergroups:read',
		isSecret: false,
	},
} as const;

/** What is needed for several workspaces to install the app by themselves. */
export interface InstallSettings {
	readonly clientId: string;
	readonly clientSecret: string;
	readonly publicUrl: string;
	/** the workspaces that may; empty for any */
	readonly teams: ReadonlySet<string>;
	/** under which their tokens are kept */
	readonly tokenKey: Buffer;
}

export interface Settings {
	/** of the one workspace; null where workspaces install the app by themselves */
	readonly botToken: string | null;
	readonly install?: InstallSettings;
	readonly connection:
		| { readonly mode: 'http'; readonly signingSecret: string }
		| { readonly mode: 'socket'; readonly appToken: string };
	readonly apiUrl: string | null;
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
	const isForMany = variables.isSet('SLACK_CLIENT_ID');
	const botToken = isForMany ? null : variables.required('SLACK_BOT_TOKEN');
	const install = isForMany ? installSettings(variables) : undefined;
	const usual = variables.isSet('SLACK_APP_TOKEN') && !isForMany ? 'socket' : 'http';
	const mode = variables.optional('SLACK_MODE') ?? usual;
	if (isForMany && mode === 'socket') {
		variables.errors.push(
			'SLACK_MODE is "socket"; expected http, as SLACK_CLIENT_ID is set: to install the app, workspaces need a public address. To get it: set SLACK_MODE=http, or take SLACK_CLIENT_ID out for one workspace.',
		);
	}
	const secret = variables.required(mode === 'http' ? 'SLACK_SIGNING_SECRET' : 'SLACK_APP_TOKEN');
	const rest = {
		apiUrl: variables.optional('SLACK_API_URL') ?? null,
		host: variables.optional('HOST') ?? '127.0.0.1',
		port: variables.optional('PORT') ?? 3000,
		databaseUrl: variables.optional('DATABASE_URL') ?? `sqlite:${defaultLogPath}`,
		region: variables.optional('LUGBOOK_REGION') ?? 'us',
		leads: {
			people: idsIn(variables.optional('LUGBOOK_LEADS')),
			roles: idsIn(variables.optional('LUGBOOK_LEAD_GROUPS')),
		},
		pace: paceOf(variables.optional('LUGBOOK_PACE')),
		logLevel: variables.optional('LOG_LEVEL') ?? 'info',
	};
	const { errors } = variables;
	if (errors.length > 0 || botToken === undefined || secret === undefined) return { errors };
	const connection = mode === 'http' ? { mode, signingSecret: secret } : { mode, appToken: secret };
	return { botToken, connection, ...(install === undefined ? {} : { install }), ...rest };
}

function installSettings(variables: Environment<typeof VARIABLES>): InstallSettings | undefined {
	const clientId = variables.required('SLACK_CLIENT_ID');
	const clientSecret = variables.required('SLACK_CLIENT_SECRET');
	const publicUrl = variables.required('SLACK_PUBLIC_URL');
	const key = tokenKey(variables.required('LUGBOOK_TOKEN_KEY') ?? '');
	const teams = idsIn(variables.optional('SLACK_TEAMS'));
	if (clientId === undefined || clientSecret === undefined || publicUrl === undefined || key === null) {
		return undefined;
	}
	return { clientId, clientSecret, publicUrl, teams, tokenKey: key };
}
