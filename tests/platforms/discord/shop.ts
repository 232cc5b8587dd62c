/** A server of the stand-in with a bot in it, as most tests need it; closed after the test. */

import { type Chat, defaultPace, type Pace } from '@lugbook/chat';
import { type DiscordBot, openProgramLog, startDiscordBot } from '@lugbook/discord';
import { afterwards } from '../common/closing.js';
import { handling, type KeptExchange, keptIn, openConversation } from '../common/conversation.js';
import { type DiscordStandIn, startDiscordStandIn } from '../discord.js';

interface DiscordShopOptions {
	readonly leads?: readonly string[];
	readonly leadRoles?: readonly string[];
	readonly pace?: Pace;
	readonly databaseUrl?: string;
	readonly nowMs?: () => number;
	readonly sweepMs?: number;
	readonly leaseMs?: number;
	readonly progressEveryMs?: number;
	/** where the commands are offered; null for every server, the stand-in's own unless said */
	readonly guildId?: string | null;
	/** another way to handle messages */
	readonly handle?: (chat: Chat) => Chat['handle'];
}

export interface DiscordShop {
	readonly discord: DiscordStandIn;
	readonly chat: Chat;
	readonly bot: DiscordBot;
	/** the server as the log names it */
	readonly shop: string;
	/** lines of the program's own log */
	readonly programLog: string[];
	entries(shop?: string): Promise<KeptExchange[]>;
	/** ends the bot as a shutdown does; otherwise it ends after the test */
	stop(): Promise<void>;
}

/** The bot on a stand-in that is there already. */
export async function discordBotOn(
	discord: DiscordStandIn,
	chat: Chat,
	options: DiscordShopOptions & { readonly token?: string } = {},
	programLog: string[] = [],
): Promise<DiscordBot> {
	return await startDiscordBot({
		settings: {
			token: options.token ?? discord.botToken,
			guildId: options.guildId === undefined ? discord.guildId : options.guildId,
			apiUrl: discord.apiUrl,
			shards: null,
			host: '127.0.0.1',
			port: 0,
			databaseUrl: 'sqlite::memory:',
			region: 'us',
			leads: { people: new Set(options.leads ?? []), roles: new Set(options.leadRoles ?? []) },
			pace: options.pace ?? defaultPace,
			logLevel: 'silent',
		},
		chat: options.handle === undefined ? chat : handling(chat, options.handle(chat)),
		log: openProgramLog('debug', { write: (line) => programLog.push(line) }),
		...(options.nowMs === undefined ? {} : { nowMs: options.nowMs }),
		...(options.sweepMs === undefined ? {} : { sweepMs: options.sweepMs }),
		...(options.leaseMs === undefined ? {} : { leaseMs: options.leaseMs }),
		...(options.progressEveryMs === undefined ? {} : { progressEveryMs: options.progressEveryMs }),
	});
}

export async function discordShop(options: DiscordShopOptions = {}): Promise<DiscordShop> {
	const { nowMs } = options;
	const discord = await startDiscordStandIn(nowMs === undefined ? {} : { nowMs });
	afterwards(() => discord.close());
	const chat = await openConversation(options.databaseUrl);
	afterwards(() => chat.close());
	const programLog: string[] = [];
	const bot = await discordBotOn(discord, chat, options, programLog);
	let stopped: Promise<void> | null = null;
	const stop = () => {
		stopped ??= bot.stop();
		return stopped;
	};
	afterwards(stop);
	const shop = `discord:${discord.guildId}`;
	return { discord, chat, bot, shop, programLog, entries: (at = shop) => keptIn(chat, at), stop };
}
