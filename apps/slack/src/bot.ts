/** The bot: the platform's library, wired to the conversation. */

import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import {
	type Conversation,
	closedServer,
	Desk,
	type Service,
	serveService,
	serviceRoutes,
} from '@lugbook/chat';
import { App, type Authorize, type Receiver, SocketModeReceiver } from '@slack/bolt';
import { Install } from './install.js';
import { Installations } from './installations.js';
import { LateAckApp } from './late-ack.js';
import { BODY_BYTES_MAX } from './limits.js';
import { listen } from './listeners/index.js';
import { listenToInstallations } from './listeners/installations.js';
import { asLibraryLogger, type Logger } from './log.js';
import { People } from './people.js';
import { type ClientOf, SlackPlatform } from './platform.js';
import { SignedReceiver } from './receiver.js';
import type { Settings } from './settings.js';

export const EVENTS_PATH = '/slack/events';

/**
 * How long the library waits for a pong, and then before it connects again [ms]. Its default of 5000 leaves the bot
 * deaf for five seconds whenever the platform renews the connection.
 */
const SOCKET_PATIENCE_MS = 2000;
/** how long a stop waits for answers under way [ms] */
const STOP_PATIENCE_MS = 10_000;
/** None by the library: what may be repeated is decided call by call (calls.ts). */
const NO_RETRIES = { retryConfig: { retries: 0 }, rejectRateLimitedCalls: true };
const CALL_TIMEOUT_MS = 10_000;

export interface BotOptions {
	readonly settings: Settings;
	readonly chat: Conversation;
	readonly log: Logger;
	readonly nowMs?: () => number;
	/** in place of SOCKET_PATIENCE_MS */
	readonly socketPatienceMs?: number;
	/** how often the outbox is looked through, and after which time what another process held is taken over [ms] */
	readonly sweepMs?: number;
	readonly leaseMs?: number;
	/** how often people hear how far long work has come [ms] */
	readonly progressEveryMs?: number;
}

export interface SlackBot {
	/** the port on which requests or health questions are answered */
	readonly port: number;
	readonly desk: Desk;
	stop(): Promise<void>;
}

/** @throws when the token is refused or the port is taken */
export async function startSlackBot({ settings, chat, log, ...options }: BotOptions): Promise<SlackBot> {
	const { connection, host } = settings;
	const nowMs = options.nowMs ?? Date.now;
	const logger = asLibraryLogger(log);
	const address = settings.apiUrl === null ? {} : { slackApiUrl: settings.apiUrl };
	let isConnected = false;
	const service: Service = {
		isConnected: () => isConnected,
		isReady: async () => isConnected && (await desk.canKeep()),
		metrics: async () =>
			desk.metrics.text({
				connected: { help: '1 while the platform can reach the bot', value: Number(isConnected) },
				waiting_answers: { help: 'answers not shown yet', value: await desk.waiting() },
			}),
	};

	const callOptions = { ...address, timeout: CALL_TIMEOUT_MS, ...NO_RETRIES };
	const installations =
		settings.install === undefined
			? null
			: new Installations(chat.log, settings.install.tokenKey, callOptions, log);
	const install =
		settings.install === undefined || installations === null
			? null
			: new Install({
					settings: settings.install,
					installations,
					log: chat.log,
					programLog: log,
					clientOptions: callOptions,
					nowMs,
				});

	let receiver: Receiver;
	if (connection.mode === 'http') {
		receiver = new SignedReceiver(
			{
				signingSecret: connection.signingSecret,
				endpoints: [EVENTS_PATH],
				customRoutes: Object.entries({ ...serviceRoutes(service), ...install?.routes() }).map(
					([path, handler]) => ({
						path,
						method: 'GET',
						handler,
					}),
				),
				// The answer to the platform waits until the message is noted, not until it is answered.
				processBeforeResponse: true,
				bodyLimit: BODY_BYTES_MAX,
				logger,
			},
			nowMs,
		);
	} else {
		const socket = new SocketModeReceiver({
			appToken: connection.appToken,
			logger,
			clientPingTimeout: options.socketPatienceMs ?? SOCKET_PATIENCE_MS,
			// Its own retries are kept: the connection has to be found again after a longer outage too.
			installerOptions: { clientOptions: { ...address, timeout: CALL_TIMEOUT_MS } },
		});
		for (const state of ['connecting', 'reconnecting', 'disconnected', 'close']) {
			socket.client.on(state, () => {
				isConnected = false;
			});
		}
		socket.client.on('connected', () => {
			isConnected = true;
		});
		receiver = socket;
	}

	const app = new (connection.mode === 'http' ? App : LateAckApp)({
		...authorization(settings.botToken, installations),
		receiver,
		logger,
		deferInitialization: true,
		clientOptions: callOptions,
	});
	const people = new People(settings.leads, log, nowMs);
	const clientOf: ClientOf = async (teamId) =>
		installations === null ? app.client : await installations.clientOf(teamId);
	const platform = new SlackPlatform(clientOf, people, log, nowMs);
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
	listen(app, { desk, platform, log, nowMs });
	listenToInstallations(app, installations);
	await app.init();

	let server: Server;
	if (connection.mode === 'http') {
		server = (await app.start({ host, port: settings.port })) as Server;
		isConnected = true;
	} else {
		server = await serveService(service, { host, port: settings.port });
		await app.start();
	}
	const { port } = server.address() as AddressInfo;
	log.info({ mode: connection.mode, port }, 'started');

	return {
		port,
		desk,
		async stop() {
			isConnected = false;
			await app.stop();
			if (connection.mode === 'socket') await closedServer(server);
			await desk.close(STOP_PATIENCE_MS);
			log.info('stopped');
		},
	};
}

/** The one token, or the token of the workspace that a delivery comes from. */
function authorization(
	token: string | null,
	installations: Installations | null,
): { token: string } | { authorize: Authorize<boolean> } {
	if (installations !== null) {
		return {
			authorize: async ({ teamId = '' }) => {
				const found = await installations.of(teamId);
				if (found === null) throw new Error(`the app is not installed in workspace ${teamId}`);
				const { botToken, botId, botUserId } = found;
				return { botToken, botId, botUserId, teamId };
			},
		};
	}
	if (token === null) throw new Error('there is neither a bot token nor a way to install the app');
	return { token };
}
