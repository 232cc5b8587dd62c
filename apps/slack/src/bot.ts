/** The bot: the platform's library, wired to the conversation. */

import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Chat } from '@lugbook/chat';
import { App, type Receiver, SocketModeReceiver } from '@slack/bolt';
import { Conversation } from './conversation.js';
import { Deliveries } from './deliveries.js';
import { listen } from './listeners/index.js';
import { asLibraryLogger, type Logger } from './log.js';
import { People } from './people.js';
import { SignedReceiver } from './receiver.js';
import type { Settings } from './settings.js';

export const EVENTS_PATH = '/slack/events';
export const HEALTH_PATH = '/healthz';

/**
 * How long the library waits for a pong, and then before it connects again [ms]. Its default of 5000 leaves the bot
 * deaf for five seconds whenever the platform renews the connection.
 */
const SOCKET_PATIENCE_MS = 2000;
/** how long a stop waits for answers under way [ms] */
const STOP_PATIENCE_MS = 10_000;
/** three tries; the platform's own pauses on 429 come on top */
const RETRIES = { retries: 2, minTimeout: 500, maxTimeout: 3000 };
const CALL_TIMEOUT_MS = 10_000;

export interface BotOptions {
	readonly settings: Settings;
	readonly chat: Pick<Chat, 'handle'>;
	readonly log: Logger;
	readonly nowMs?: () => number;
	/** in place of SOCKET_PATIENCE_MS */
	readonly socketPatienceMs?: number;
}

export interface SlackBot {
	/** the port on which requests or health questions are answered */
	readonly port: number;
	stop(): Promise<void>;
}

/** @throws when the token is refused or the port is taken */
export async function startSlackBot({ settings, chat, log, ...options }: BotOptions): Promise<SlackBot> {
	const { connection, host } = settings;
	const nowMs = options.nowMs ?? Date.now;
	const logger = asLibraryLogger(log);
	const address = settings.apiUrl === null ? {} : { slackApiUrl: settings.apiUrl };
	let isConnected = false;
	const health = (_: IncomingMessage, response: ServerResponse) => {
		response.writeHead(isConnected ? 200 : 503, { 'content-type': 'application/json' });
		response.end(JSON.stringify({ status: isConnected ? 'ok' : 'not connected', mode: connection.mode }));
	};

	let receiver: Receiver;
	if (connection.mode === 'http') {
		receiver = new SignedReceiver(
			{
				signingSecret: connection.signingSecret,
				endpoints: [EVENTS_PATH],
				customRoutes: [{ path: HEALTH_PATH, method: 'GET', handler: health }],
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

	const app = new App({
		token: settings.botToken,
		receiver,
		logger,
		deferInitialization: true,
		clientOptions: { ...address, timeout: CALL_TIMEOUT_MS, retryConfig: RETRIES },
	});
	const people = new People(settings.leads, log, nowMs);
	const conversation = new Conversation(chat, people, new Deliveries(), log);
	listen(app, conversation, log);
	await app.init();

	let server: Server;
	if (connection.mode === 'http') {
		server = (await app.start({ host, port: settings.port })) as Server;
		isConnected = true;
	} else {
		server = createServer((request, response) => {
			if (request.url === HEALTH_PATH) health(request, response);
			else response.writeHead(404).end();
		});
		await new Promise<void>((resolve, reject) => {
			server.once('error', reject).listen({ host, port: settings.port }, resolve);
		});
		await app.start();
	}
	const { port } = server.address() as AddressInfo;
	log.info({ mode: connection.mode, port }, 'started');

	return {
		port,
		async stop() {
			isConnected = false;
			await app.stop();
			if (connection.mode === 'socket') await closed(server);
			await Promise.race([conversation.settled(), patience(STOP_PATIENCE_MS)]);
			log.info('stopped');
		},
	};
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
