/** What whoever sets the bot up should know before it runs: settings, token, server, commands, as the platform sees them. */

import {
	type Diagnosis,
	errorFacts,
	good,
	portDiagnosis,
	settingsDiagnosis,
	unsure,
	wrong,
} from '@lugbook/chat';
import { DiscordAPIError, HTTPError, REST, Routes } from 'discord.js';
import { readSettings, type Settings } from './settings.js';

const CALL_TIMEOUT_MS = 10_000;
const INVITE =
	'invite the app again with the scopes "bot" and "applications.commands" (README, Discord, step 4)';

/** Looks at everything that can be looked at from here, without changing anything on the platform. */
export async function diagnoseDiscord(environment: NodeJS.ProcessEnv): Promise<Diagnosis[]> {
	const settings = readSettings(environment);
	if ('errors' in settings) return settingsDiagnosis('Discord', settings.errors);
	const found = settingsDiagnosis('Discord', []);
	const rest = new REST({
		retries: 0,
		timeout: CALL_TIMEOUT_MS,
		...(settings.apiUrl === null ? {} : { api: settings.apiUrl }),
	}).setToken(settings.token);
	const token = await tokenDiagnosis(rest);
	found.push(token);
	if (token.state === 'good') {
		found.push(
			await startsDiagnosis(rest),
			await commandsDiagnosis(rest, settings),
			leadsDiagnosis(settings),
		);
	}
	found.push(await portDiagnosis('Discord', settings.host, settings.port));
	return found;
}

function failed(about: string, error: unknown, fix: string): Diagnosis {
	if (error instanceof DiscordAPIError || (error instanceof HTTPError && error.status === 401)) {
		const { message, status } = error;
		return wrong(about, `the platform answered ${status}: ${message.split('\n')[0]}`, fix);
	}
	return wrong(
		about,
		`no answer from the platform (${errorFacts(error).error})`,
		'look at the network, a proxy or firewall, and DISCORD_API_URL',
	);
}

async function tokenDiagnosis(rest: REST): Promise<Diagnosis> {
	const about = 'Discord token';
	try {
		const { username } = (await rest.get(Routes.user())) as { username: string };
		return good(about, `good, as "${username}"`);
	} catch (error) {
		return failed(
			about,
			error,
			'press "Reset Token" under "Bot" in the developer portal and copy the new one into .env',
		);
	}
}

/** The platform counts starts: a thousand a day, then it withdraws the token. */
async function startsDiagnosis(rest: REST): Promise<Diagnosis> {
	const about = 'Discord starts left';
	try {
		const { session_start_limit: limit } = (await rest.get(Routes.gatewayBot())) as {
			session_start_limit: { remaining: number; total: number; reset_after: number };
		};
		const hours = Math.ceil(limit.reset_after / 3_600_000);
		return limit.remaining > 0
			? good(about, `${limit.remaining} of ${limit.total} today`)
			: wrong(about, `none of ${limit.total}`, `find out what restarts the bot, and wait ${hours} h`);
	} catch (error) {
		return failed(about, error, 'try again in a minute');
	}
}

async function commandsDiagnosis(rest: REST, { guildId }: Settings): Promise<Diagnosis> {
	const about =
		guildId === null ? 'Discord commands in every server' : `Discord commands in server ${guildId}`;
	try {
		const { id } = (await rest.get(Routes.currentApplication())) as { id: string };
		const route =
			guildId === null ? Routes.applicationCommands(id) : Routes.applicationGuildCommands(id, guildId);
		const commands = (await rest.get(route)) as { name: string }[];
		return commands.length > 0
			? good(about, commands.map(({ name }) => `/${name}`).join(' '))
			: unsure(about, 'none yet', 'start the bot: it offers them at the start');
	} catch (error) {
		return failed(about, error, `look at DISCORD_GUILD_ID, and ${INVITE}`);
	}
}

function leadsDiagnosis({ leads }: Settings): Diagnosis {
	const about = 'Discord leads';
	if (leads.people.size + leads.roles.size > 0) {
		return good(about, `${leads.people.size} people and ${leads.roles.size} roles`);
	}
	return unsure(
		about,
		'nobody may sign answers',
		'name somebody in LUGBOOK_LEADS, or a role in LUGBOOK_LEAD_ROLES, if answers are to be signed',
	);
}
