/** The conversation behind a bot, as tests arrange it and look into it. */

import { type Chat, type Conversation, openChat } from '@lugbook/chat';

export interface KeptExchange {
	readonly number: number;
	readonly text: string;
	readonly personName: string;
	readonly thread: string | null;
	readonly headline: string;
}

/** The exchanges of a shop's log, newest first. */
export async function keptIn({ log }: Pick<Chat, 'log'>, shop: string): Promise<KeptExchange[]> {
	const { entries } = await log.find(shop, { kinds: ['exchange'], limit: 200 });
	return entries.map(({ number, text, personName, thread, body }) => ({
		number,
		text,
		personName,
		thread,
		headline: String((body as { answer: { headline: string } }).answer.headline),
	}));
}

/** The conversation with another way to handle messages. */
export function handling(chat: Chat, handle: Chat['handle']): Conversation {
	return {
		log: chat.log,
		shown: chat.shown.bind(chat),
		fieldErrors: chat.fieldErrors.bind(chat),
		handle,
	};
}

export async function openConversation(databaseUrl = 'sqlite::memory:'): Promise<Chat> {
	return await openChat({ databaseUrl, region: 'us' });
}

/** The first message in a place says once what is kept. */
export const NOTICE = /^I keep what is addressed to me here/;
