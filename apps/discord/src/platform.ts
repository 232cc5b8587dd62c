/** What the desk needs of this platform. */

import {
	type Asked,
	assumedInputs,
	errorFacts,
	isLead,
	type Leads,
	type Mark,
	type Person,
	type Platform,
	type ProgramLog,
	type Reply,
	type Way,
} from '@lugbook/chat';
import { type REST, Routes } from 'discord.js';
import { asBody, pagesOf, struckPage } from './render.js';
import { type DiscordPlace, placeSchema, RestWay } from './rest-way.js';

const NAME = 'discord';

/** A server as the log names it; people who write in private have a log of their own. */
export const shopOf = (guildId: string | null, userId: string): string =>
	guildId === null ? `${NAME}:user:${userId}` : `${NAME}:${guildId}`;

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
		{ channel, message }: { channel: string; message: string },
		reply: Reply,
		{ text, stands }: Pick<Mark, 'text' | 'stands'>,
	): Promise<void> {
		const [first] = stands ? await pagesOf(reply, assumedInputs(reply.answer)) : [struckPage(reply, text)];
		if (first === undefined) return;
		const { attachments: _, ...body } = asBody({ ...first, files: [] }).body;
		// Without a word about attachments, what was attached stays.
		await this.#authorised().patch(Routes.channelMessage(channel, message), { body });
	}
}
