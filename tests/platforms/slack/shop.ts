/** A workspace of the stand-in with a bot in it, as most tests need it; closed after the test. */

import { readFileSync } from 'node:fs';
import { type Chat, defaultPace, type Pace } from '@lugbook/chat';
import { EVENTS_PATH, openProgramLog, type Settings, type SlackBot, startSlackBot } from '@lugbook/slack';
import { afterwards } from '../common/closing.js';
import { handling, type KeptExchange, keptIn, openConversation } from '../common/conversation.js';
import { type SlackStandIn, startSlackStandIn } from '../slack.js';

interface Manifest {
	readonly oauth_config: { readonly scopes: { readonly bot: string[] } };
	readonly settings: { readonly event_subscriptions: { readonly bot_events: string[] } };
	readonly features: { readonly slash_commands: { readonly command: string }[] };
}

/** What the app asks of a workspace. */
const manifest = JSON.parse(
	readFileSync(new URL('../../../apps/slack/manifest.json', import.meta.url), 'utf8'),
) as Manifest;

interface SlackShopOptions {
	readonly mode?: 'http' | 'socket';
	/** in place of the manifest's; null for all there are */
	readonly scopes?: readonly string[] | null;
	readonly leads?: readonly string[];
	readonly leadGroups?: readonly string[];
	readonly pace?: Pace;
	readonly databaseUrl?: string;
	readonly nowMs?: () => number;
	readonly sweepMs?: number;
	readonly leaseMs?: number;
	readonly progressEveryMs?: number;
	/** how long the socket waits for a pong before it connects again [ms] */
	readonly socketPatienceMs?: number;
	/** settings in place of the usual ones */
	readonly settings?: Partial<Settings>;
	/** another way to handle messages */
	readonly handle?: (chat: Chat) => Chat['handle'];
}

export interface SlackShop {
	readonly slack: SlackStandIn;
	readonly chat: Chat;
	readonly bot: SlackBot;
	/** the workspace as the log names it */
	readonly shop: string;
	/** lines of the program's own log */
	readonly programLog: string[];
	entries(): Promise<KeptExchange[]>;
	/** ends the bot as a shutdown does; otherwise it ends after the test */
	stop(): Promise<void>;
}

/** The bot on a stand-in that is there already. */
export async function slackBotOn(
	slack: SlackStandIn,
	chat: Chat,
	options: SlackShopOptions,
	programLog: string[] = [],
): Promise<SlackBot> {
	const mode = options.mode ?? 'http';
	const bot = await startSlackBot({
		settings: {
			botToken: slack.botToken,
			connection:
				mode === 'http' ? { mode, signingSecret: slack.signingSecret } : { mode, appToken: slack.appToken },
			apiUrl: slack.apiUrl,
			host: '127.0.0.1',
			port: 0,
			databaseUrl: 'sqlite::memory:',
			region: 'us',
			leads: { people: new Set(options.leads ?? []), roles: new Set(options.leadGroups ?? []) },
			pace: options.pace ?? defaultPace,
			logLevel: 'silent',
			...options.settings,
		},
		chat: options.handle === undefined ? chat : handling(chat, options.handle(chat)),
		log: openProgramLog('debug', { write: (line) => programLog.push(line) }),
		...(options.socketPatienceMs === undefined ? {} : { socketPatienceMs: options.socketPatienceMs }),
		...(options.nowMs === undefined ? {} : { nowMs: options.nowMs }),
		...(options.sweepMs === undefined ? {} : { sweepMs: options.sweepMs }),
		...(options.leaseMs === undefined ? {} : { leaseMs: options.leaseMs }),
		...(options.progressEveryMs === undefined ? {} : { progressEveryMs: options.progressEveryMs }),
	});
	if (mode === 'http') slack.deliverTo(`http://127.0.0.1:${bot.port}${EVENTS_PATH}`);
	return bot;
}

export async function slackShop(options: SlackShopOptions = {}): Promise<SlackShop> {
	const { scopes = manifest.oauth_config.scopes.bot, nowMs } = options;
	const slack = await startSlackStandIn({
		botEvents: manifest.settings.event_subscriptions.bot_events,
		...(scopes === null ? {} : { scopes }),
		...(nowMs === undefined ? {} : { nowMs }),
	});
	afterwards(() => slack.close());
	const chat = await openConversation(options.databaseUrl);
	afterwards(() => chat.close());
	const programLog: string[] = [];
	const bot = await slackBotOn(slack, chat, options, programLog);
	let stopped: Promise<void> | null = null;
	const stop = () => {
		stopped ??= bot.stop();
		return stopped;
	};
	afterwards(stop);
	const shop = `slack:${slack.teamId}`;
	return { slack, chat, bot, shop, programLog, entries: () => keptIn(chat, shop), stop };
}
