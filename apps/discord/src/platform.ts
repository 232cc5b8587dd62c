/** What the desk needs of this platform. */

import {
	type Asked,
	assumedInputs,
	errorFacts,
	isLead,
	type Leads,
	type Mark,
	type MessageAt,
	type Person,
	type Platform,
	type ProgramLog,
	type Reply,
	type Way,
} from '@lugbook/chat';
import { type REST, Routes } from 'discord.js';
import { asBody, pagesOf, struckPage } from './render.js';
import { type DiscordPlace, placeSchema, RestWay, repeatedly } from './rest-way.js';

const NAME = 'discord';

/** A server as the log names it; people who write in private have a log of their own. */
export const shopOf = (guildId: string | null, userId: string): string =>
	guildId === null ? `${NAME}:user:${userId}` : `${NAME}:${guildId}`;

/**
 * The address that opens a message in the platform's client, as its "Copy Message Link" gives it. In private messages
 * the place of the server's id is taken by "@me".
 */
function addressOf(shop: string, { channel, message }: MessageAt): string {
	const server = shop.slice(NAME.length + 1);
	const guild = server.startsWith('user:') ? '@me' : server;
	return `https://discord.com/channels/${guild}/${channel}/${message}`;
}

export class DiscordPlatform implements Platform {
	readonly name = NAME;

	constructor(
		private readonly rest: REST,
		private readonly token: string,
		/** the bot's own id, once it is connected */
		private readonly botId: () => string | undefined,
		private readonly leads: Leads,
		private readonly log: ProgramLog,
		private readonly nowMs: () => number,
	) {}

	async person({ user }: Asked): Promise<Person> {
		return { id: user.id, name: user.name ?? user.id, lead: isLead(this.leads, user) };
	}

	async wayBack(_: Asked, place: unknown): Promise<Way | null> {
		const parsed = placeSchema.safeParse(place);
		return parsed.success ? this.way(parsed.data) : null;
	}

	way(place: DiscordPlace): RestWay {
		return new RestWay(this.#authorised(), place, this.botId, this.nowMs);
	}

	/** The library forgets the token at the first 401, and could then send nothing more until the program starts anew. */
	#authorised(): REST {
		return this.rest.setToken(this.token);
	}

	warn(error: unknown, what: string): void {
		this.log.warn(errorFacts(error), what);
	}

	placeIn(channel: string, delivery: string): DiscordPlace {
		return { channel, message: null, interaction: null, user: '', sinceMs: this.nowMs(), delivery };
	}

	async mark(
		{ shop, channel, message }: { shop: string } & MessageAt,
		reply: Reply,
		{ text, stands, instead }: Pick<Mark, 'text' | 'stands' | 'instead'>,
		next: MessageAt | null,
	): Promise<void> {
		const link = next === null || instead == null ? null : { entry: instead, url: addressOf(shop, next) };
		const [first] = stands
			? pagesOf({ ...reply, files: [] }, assumedInputs(reply.answer))
			: [struckPage(reply, text, link)];
		if (first === undefined) return;
		const { attachments: _, ...body } = asBody({ ...first, files: [] }).body;
		// Without a word about attachments, what was attached stays.
		const rest = this.#authorised();
		await repeatedly(() => rest.patch(Routes.channelMessage(channel, message), { body }));
	}
}
