/** The bot: the platform's library, wired to the conversation. */

import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Chat } from '@lugbook/chat';
import { Client, Events, GatewayIntentBits, Partials, Routes } from 'discord.js';
import { commands } from './commands.js';
import { Conversation } from './conversation.js';
import { Deliveries } from './deliveries.js';
import { listen } from './listeners/index.js';
import { errorFacts, type Logger } from './log.js';
import { NO_MENTIONS } from './render.js';
import type { Settings } from './settings.js';

export const HEALTH_PATH = '/healthz';

/** how long a stop waits for answers under way [ms] */
const STOP_PATIENCE_MS = 10_000;
const RETRIES = 2;
const CALL_TIMEOUT_MS = 10_000;

/**
 * None is privileged. Commands and buttons need none at all; messages that mention the bot and private messages come
 * with their text through these, and other people's messages without it.
 */
const INTENTS = [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages];

export interface BotOptions {
	readonly settings: Settings;
	readonly chat: Pick<Chat, 'handle'>;
	readonly log: Logger;
	/** called when the platform has refused the bot for good after the start */
	readonly onFatal?: () => void;
}

export interface DiscordBot {
	/** the port on which health questions are answered */
	readonly port: number;
	stop(): Promise<void>;
}

/** @throws when the token or an intent is refused, or the port is taken */
export async function startDiscordBot({ settings, chat, log, onFatal }: BotOptions): Promise<DiscordBot> {
	const client = new Client({
		intents: INTENTS,
		// Private messages come in channels that nothing announced before.
		partials: [Partials.Channel],
		allowedMentions: NO_MENTIONS,
		rest: {
			retries: RETRIES,
			timeout: CALL_TIMEOUT_MS,
			...(settings.apiUrl === null ? {} : { api: settings.apiUrl }),
		},
	});
	// Without a listener the library would throw these.
	client.on(Events.Error, (error) => log.error(errorFacts(error), 'the connection failed'));
	client.on(Events.ShardDisconnect, ({ code }) => {
		log.fatal({ code }, 'the platform closed the connection for good');
		onFatal?.();
	});
	client.on(Events.ShardReconnecting, () => log.warn('the connection was lost; connecting again'));
	const conversation = new Conversation(chat, settings.leads, new Deliveries(), log);

	const server = await healthServer(settings, () => client.isReady());
	try {
		const ready = new Promise<Client<true>>((resolve) => client.once(Events.ClientReady, resolve));
		await client.login(settings.token);
		const connected = await ready;
		listen(connected, conversation, log);
		const route =
			settings.guildId === null
				? Routes.applicationCommands(connected.application.id)
				: Routes.applicationGuildCommands(connected.application.id, settings.guildId);
		await client.rest.put(route, { body: commands() });
	} catch (error) {
		await client.destroy();
		await closed(server);
		throw error;
	}
	const { port } = server.address() as AddressInfo;
	log.info({ port }, 'started');

	return {
		port,
		async stop() {
			await Promise.race([conversation.settled(), patience(STOP_PATIENCE_MS)]);
			// A connection that is closed on purpose is no news.
			client.removeAllListeners(Events.ShardReconnecting);
			await client.destroy();
			await closed(server);
			log.info('stopped');
		},
	};
}

function healthServer({ host, port }: Settings, isHealthy: () => boolean): Promise<Server> {
	const server = createServer((request, response) => {
		if (request.url !== HEALTH_PATH) {
			response.writeHead(404).end();
			return;
		}
		const healthy = isHealthy();
		response.writeHead(healthy ? 200 : 503, { 'content-type': 'application/json' });
		response.end(JSON.stringify({ status: healthy ? 'ok' : 'not connected' }));
	});
	return new Promise((resolve, reject) => {
		server.once('error', reject).listen({ host, port }, () => resolve(server));
	});
}

function closed(server: Server): Promise<void> {
	return new Promise((resolve) => {
		server.close(() => resolve());
		server.closeAllConnections();
	});
}

function patience(ms: number): Promise<void> {
	return new Promise((resolve) => setTimeout(resolve, ms).unref());
}
