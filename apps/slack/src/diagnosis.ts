/** What whoever sets the bot up should know before it runs: settings, tokens, scopes, leads, as the platform sees them. */

import {
	type Diagnosis,
	errorFacts,
	good,
	openLog,
	portDiagnosis,
	settingsDiagnosis,
	unsure,
	wrong,
} from '@lugbook/chat';
import { webApi } from '@slack/bolt';
import { refusalOf } from './calls.js';
import { Installations } from './installations.js';
import { botScopes, LEAD_GROUPS_SCOPE } from './scopes.js';
import { readSettings, type Settings } from './settings.js';

const CALL_TIMEOUT_MS = 10_000;

const INSTALL_AGAIN = 'install the app again under "OAuth & Permissions" and copy the new token into .env';
const WHAT_TO_DO: Readonly<Record<string, string>> = {
	invalid_auth: 'copy the token again; it was mistyped, or belongs to another app',
	not_authed: 'copy the token into .env',
	account_inactive: INSTALL_AGAIN,
	token_revoked: INSTALL_AGAIN,
	token_expired: INSTALL_AGAIN,
	not_allowed_token_type:
		'SLACK_APP_TOKEN takes the app-level token (xapp-), SLACK_BOT_TOKEN the bot token (xoxb-)',
	missing_scope: 'add the scope to the app, then install it again',
	user_not_found: 'copy the member id again from the profile of the person in this workspace',
	no_such_subteam: 'copy the id of the user group again; it is not of this workspace',
};

/** Looks at everything that can be looked at from here, without changing anything on the platform. */
export async function diagnoseSlack(environment: NodeJS.ProcessEnv): Promise<Diagnosis[]> {
	const settings = readSettings(environment);
	if ('errors' in settings) return settingsDiagnosis('Slack', settings.errors);
	const found = settingsDiagnosis('Slack', []);
	let tokens: OwnToken[] = [];
	try {
		tokens = await tokensOf(settings);
	} catch (error) {
		// What is wrong with the log has been said by itself, with what to do.
		found.push(
			unsure('Slack workspaces', errorFacts(error).error, 'put the database right, then look again'),
		);
	}
	for (const { token, about } of tokens) {
		if (token === null) {
			found.push(
				wrong(
					about,
					'does not open',
					'put back the LUGBOOK_TOKEN_KEY it was kept under, or let the workspace install the app again',
				),
			);
			continue;
		}
		const client = clientFor(settings, token);
		const looked = await tokenDiagnosis(client, settings, about);
		found.push(...looked);
		if (looked[0]?.state === 'good') found.push(...(await leadsDiagnosis(client, settings)));
	}
	found.push(await connectionDiagnosis(settings));
	found.push(await portDiagnosis('Slack', settings.host, settings.port));
	return found;
}

function clientFor({ apiUrl }: Settings, token: string): webApi.WebClient {
	return new webApi.WebClient(token, {
		...(apiUrl === null ? {} : { slackApiUrl: apiUrl }),
		timeout: CALL_TIMEOUT_MS,
		retryConfig: { retries: 0 },
		rejectRateLimitedCalls: true,
		logLevel: webApi.LogLevel.ERROR,
	});
}

function failed(about: string, error: unknown): Diagnosis {
	const refusal = refusalOf(error);
	// What is no code at all comes from something between, such as the page of a proxy.
	if (refusal !== null && /^[a-z_]+$/.test(refusal)) {
		const fix = WHAT_TO_DO[refusal] ?? `look up "${refusal}" in the platform's documentation`;
		return wrong(about, `the platform answered "${refusal}"`, fix);
	}
	return wrong(
		about,
		`no answer from the platform (${errorFacts(error).error})`,
		'look at the network, a proxy or firewall, and SLACK_API_URL',
	);
}

interface OwnToken {
	/** null where it can't be read */
	readonly token: string | null;
	readonly about: string;
}

/** The one token, or those of the workspaces that installed the app. */
async function tokensOf({ botToken, install, databaseUrl }: Settings): Promise<OwnToken[]> {
	if (botToken !== null) return [{ token: botToken, about: 'Slack bot token' }];
	if (install === undefined) return [];
	const log = await openLog(databaseUrl, { asItIs: true });
	try {
		const quiet = { info: () => {}, warn: () => {}, error: () => {} };
		const installations = new Installations(log, install.tokenKey, {}, quiet);
		const found: OwnToken[] = [];
		for (const team of await installations.teams()) {
			const token = (await installations.of(team))?.botToken ?? null;
			found.push({ token, about: `Slack token of ${team}` });
		}
		return found;
	} finally {
		await log.close();
	}
}

async function tokenDiagnosis(
	client: webApi.WebClient,
	{ leads }: Settings,
	about: string,
): Promise<Diagnosis[]> {
	try {
		const { team, user, response_metadata: metadata } = await client.auth.test();
		const found = [good(about, `good for the workspace "${team}", as "${user}"`)];
		const granted = new Set(metadata?.scopes ?? []);
		const needed = [...Object.keys(botScopes), ...(leads.roles.size > 0 ? [LEAD_GROUPS_SCOPE] : [])];
		const missing = needed.filter((scope) => !granted.has(scope));
		const spare = [...granted].filter((scope) => !needed.includes(scope));
		if (granted.size === 0) {
			found.push(unsure('Slack scopes', 'the platform did not tell them', 'compare them with the README'));
		} else if (missing.length > 0) {
			found.push(
				wrong(
					'Slack scopes',
					`missing: ${missing.join(', ')}`,
					'add them under "OAuth & Permissions", "Bot Token Scopes", then install the app again',
				),
			);
		} else found.push(good('Slack scopes', 'all there'));
		if (spare.length > 0) {
			found.push(
				unsure(
					'Slack scopes',
					`more than the bot uses: ${spare.join(', ')}`,
					'remove what nothing else needs',
				),
			);
		}
		return found;
	} catch (error) {
		return [failed(about, error)];
	}
}

async function leadsDiagnosis(client: webApi.WebClient, { leads }: Settings): Promise<Diagnosis[]> {
	if (leads.people.size === 0 && leads.roles.size === 0) {
		return [
			unsure(
				'Slack leads',
				'nobody may sign answers',
				'name somebody in LUGBOOK_LEADS if answers are to be signed',
			),
		];
	}
	const found: Diagnosis[] = [];
	for (const user of leads.people) {
		const about = `Slack lead ${user}`;
		try {
			const { user: person } = await client.users.info({ user });
			const isGone = person?.deleted === true || person?.is_bot === true;
			found.push(
				isGone
					? wrong(about, 'is a bot or has left the workspace', 'take the id out of LUGBOOK_LEADS')
					: good(about, person?.real_name ?? 'known'),
			);
		} catch (error) {
			found.push(failed(about, error));
		}
	}
	for (const usergroup of leads.roles) {
		const about = `Slack leads' group ${usergroup}`;
		try {
			const { users = [] } = await client.usergroups.users.list({ usergroup });
			found.push(good(about, `${users.length} people`));
		} catch (error) {
			found.push(failed(about, error));
		}
	}
	return found;
}

async function connectionDiagnosis(settings: Settings): Promise<Diagnosis> {
	const { connection } = settings;
	if (connection.mode === 'http') {
		return unsure(
			'Slack signing secret',
			'can be checked by the platform alone',
			'start the bot, then enter its address under "Event Subscriptions": the platform says at once whether it is verified',
		);
	}
	const about = 'Slack app-level token';
	try {
		await clientFor(settings, connection.appToken).apps.connections.open({});
		return good(about, 'opens a socket');
	} catch (error) {
		return failed(about, error);
	}
}
