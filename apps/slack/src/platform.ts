/** What the desk needs of this platform. */

import {
	type Asked,
	assumedInputs,
	errorFacts,
	isLead,
	type Mark,
	type MessageAt,
	type Person,
	type Platform,
	type ProgramLog,
	type Reply,
	type Way,
} from '@lugbook/chat';
import type { webApi } from '@slack/bolt';
import { AS_WRITTEN, repeatedly } from './calls.js';
import type { People } from './people.js';
import { asPost, pagesOf, struckPage } from './render.js';
import { isPrivate, placeSchema, type SlackPlace, SlackWay } from './show.js';

const NAME = 'slack';

/** A workspace as the log names it. */
export const shopOf = (teamId: string): string => `${NAME}:${teamId}`;
const teamOf = (shop: string): string => shop.slice(NAME.length + 1);

/** The platform's client for a workspace; null where the app is not installed (any more). */
export type ClientOf = (teamId: string) => Promise<webApi.WebClient | null>;

export class SlackPlatform implements Platform {
	readonly name = NAME;

	constructor(
		private readonly clientOf: ClientOf,
		private readonly people: People,
		private readonly log: ProgramLog,
		private readonly nowMs: () => number,
	) {}

	async person({ shop, user }: Asked): Promise<Person> {
		const client = await this.clientOf(teamOf(shop));
		if (client === null) return { id: user.id, name: user.id, lead: false };
		const roles = await this.people.groupsOf(user.id, shop, client);
		const name = user.name ?? (await this.people.nameOf(user.id, shop, client));
		return { id: user.id, name, lead: isLead(this.people.leads, { id: user.id, roles }) };
	}

	async wayBack({ shop }: Asked, place: unknown): Promise<Way | null> {
		const parsed = placeSchema.safeParse(place);
		const client = parsed.success ? await this.clientOf(teamOf(shop)) : null;
		return parsed.success && client !== null ? this.way(client, parsed.data) : null;
	}

	way(client: webApi.WebClient, place: ConstructorParameters<typeof SlackWay>[1]): SlackWay {
		return new SlackWay(client, place, (error, what) => this.log.warn(errorFacts(error), what), this.nowMs);
	}

	placeIn(channel: string, delivery: string): SlackPlace {
		return { channel, thread: null, user: '', responseUrl: null, sinceMs: this.nowMs(), delivery };
	}

	async mark(
		{ shop, channel, message }: { shop: string } & MessageAt,
		reply: Reply,
		{ text, stands, instead }: Pick<Mark, 'text' | 'stands' | 'instead'>,
		next: MessageAt | null,
	): Promise<void> {
		const client = await this.clientOf(teamOf(shop));
		if (client === null) return;
		const url = next === null || stands ? null : await this.#linkTo(client, next, channel);
		const link = url === null || instead == null ? null : { entry: instead, url };
		const [first] = stands ? pagesOf(reply, assumedInputs(reply.answer)) : [struckPage(reply, text, link)];
		if (first === undefined) return;
		await repeatedly(() => client.chat.update({ channel, ts: message, ...asPost(first), ...AS_WRITTEN }));
	}

	/** @returns the address of a message for those who read `from`; null where it is private or can't be told */
	async #linkTo(
		client: webApi.WebClient,
		{ channel, message }: MessageAt,
		from: string,
	): Promise<string | null> {
		if (isPrivate(channel) && channel !== from) return null;
		try {
			const asked = { channel, message_ts: message };
			return (await repeatedly(() => client.chat.getPermalink(asked))).permalink ?? null;
		} catch (error) {
			this.log.warn(errorFacts(error), 'could not look up the address of a message');
			return null;
		}
	}
}
