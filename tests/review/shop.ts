/** A conversation over a fresh database, for what the lead's side of the log is tried on. */

import { type Chat, type Incoming, openChat, type Person, plainText, type Reply } from '@lugbook/chat';
import type { DialectUnderTest } from '../log/databases.js';

/** Asks and installs; no lead. */
export const robin: Person = { id: 'U0000001', name: 'Robin', lead: false };
/** A lead by the bot's own configuration, and so the administrator. */
export const kim: Person = { id: 'U0000002', name: 'Kim', lead: true };
/** Another installer. */
export const sam: Person = { id: 'U0000003', name: 'Sam', lead: false };

export interface Shop {
	readonly chat: Chat;
	/** says something and gives the reply */
	tell(person: Person, text: string, more?: Partial<Incoming>): Promise<Reply>;
	/** the same, as plain text with everything unfolded */
	say(person: Person, text: string, more?: Partial<Incoming>): Promise<string>;
	/** kinds of the entries of a shop, oldest first */
	kinds(shop?: string): Promise<string[]>;
	/** moves the clock */
	at(instant: string): void;
	close(): Promise<void>;
}

export async function openShop(dialect: DialectUnderTest): Promise<Shop> {
	const { url, remove } = await dialect.fresh();
	let now = '2026-05-04T12:00:00.000Z';
	const chat = await openChat({ databaseUrl: url, region: 'us', now: () => new Date(now) });
	let count = 0;
	const tell: Shop['tell'] = (person, text, more = {}) => {
		count += 1;
		const command = /^\/(log|build|size) /.exec(text)?.[1] ?? 'ask';
		return chat.handle({
			platform: 'terminal',
			shop: 'demo',
			channel: 'c1',
			thread: null,
			delivery: `d${count}`,
			person,
			command: command as Incoming['command'],
			text: text.replace(/^\/\w+ /, ''),
			...more,
		});
	};
	return {
		chat,
		tell,
		say: async (person, text, more) =>
			plainText({ ...(await tell(person, text, more)), buttons: [] }, { folded: true }),
		kinds: async (shop = 'demo') =>
			(await chat.log.find(shop, { order: 'oldest', limit: 500 })).entries.map(({ kind }) => kind),
		at: (instant) => {
			now = instant;
		},
		close: async () => {
			await chat.close();
			await remove();
		},
	};
}
