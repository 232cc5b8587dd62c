/** The bot: the platform's library, wired to the conversation. */

import type { AddressInfo } from 'node:net';
import { type Conversation, closedServer, Desk, errorFacts, type Service, serveService } from '@lugbook/chat';
import { Client, Events, GatewayIntentBits, Options, Partials } from 'discord.js';
import { listen } from './listeners/index.js';
import type { Logger } from './log.js';
import { DiscordPlatform } from './platform.js';
import { registerCommands } from './register.js';
import { NO_MENTIONS } from './render.js';
import type { Settings } from './settings.js';

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
	readonly chat: Conversation;
	readonly log: Logger;
	readonly nowMs?: () => number;
	/** how often the outbox is looked through, and after which time what another process held is taken over [ms] */
	readonly sweepMs?: number;
	readonly leaseMs?: number;
	/** how often people hear how far long work has come [ms] */
	readonly progressEveryMs?: number;
	/** called when the platform has refused the bot for good after the start */
	readonly onFatal?: () => void;
}

export interface DiscordBot {
	/** the port on which health questions are answered */
	readonly port: number;
	readonly desk: Desk;
	stop(): Promise<void>;
}

/** @throws when the token or an intent is refused, or the port is taken */
export async function startDiscordBot({
	settings,
	chat,
	log,
	onFatal,
	...options
}: BotOptions): Promise<DiscordBot> {
	const nowMs = options.nowMs ?? Date.now;
	const client = new Client({
		intents: INTENTS,
		// Private messages come in channels that nothing announced before.
		partials: [Partials.Channel],
		allowedMentions: NO_MENTIONS,
		// Nothing here goes back to an earlier message by the library's memory, which would keep 200 of every channel.
		makeCache: Options.cacheWithLimits({ ...Options.DefaultMakeCacheSettings, MessageManager: 0 }),
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
	const platform = new DiscordPlatform(
		client.rest,
		settings.token,
		() => client.user?.id,
		settings.leads,
		log,
		nowMs,
	);
	const desk = new Desk({
		chat,
		platform,
		log,
		nowMs,
		pace: settings.pace,
		...(options.sweepMs === undefined ? {} : { sweepMs: options.sweepMs }),
		...(options.leaseMs === undefined ? {} : { leaseMs: options.leaseMs }),
		...(options.progressEveryMs === undefined ? {} : { progressEveryMs: options.progressEveryMs }),
	});
	const service: Service = {
		isConnected: () => client.isReady(),
		isReady: async () => client.isReady() && (await desk.canKeep()),
		metrics: async () =>
			desk.metrics.text({
				connected: { help: '1 while the platform can reach the bot', value: Number(client.isReady()) },
				waiting_answers: { help: 'answers not shown yet', value: await desk.waiting() },
			}),
	};
	const server = await serveService(service, settings);
	try {
		const ready = new Promise<Client<true>>((resolve) => client.once(Events.ClientReady, resolve));
		await client.login(settings.token);
		const connected = await ready;
		listen(connected, { desk, platform, log, nowMs });
		// One shard of several offers the commands for all.
		if (connected.ws.shards.has(0)) {
			await registerCommands(client.rest, connected.application.id, settings.guildId, log);
		}
	} catch (error) {
		await client.destroy();
		await desk.close(0);
		await closedServer(server);
		throw error;
	}
	const { port } = server.address() as AddressInfo;
	log.info({ port }, 'started');

	return {
		port,
		desk,
		async stop() {
			await desk.close(STOP_PATIENCE_MS);
			// A connection that is closed on purpose is no news.
			client.removeAllListeners(Events.ShardReconnecting);
			await client.destroy();
			await closedServer(server);
			log.info('stopped');
		},
	};
}
