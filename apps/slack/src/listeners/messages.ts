import { commandNames, type Incoming } from '@lugbook/chat';
import type { App } from '@slack/bolt';
import { type Conversation, shopOf } from '../conversation.js';
import { throughChannel } from '../show.js';
import { typedText } from '../text.js';

export function listenToMessages(app: App, conversation: Conversation): void {
	app.event('app_mention', async ({ event, body, client, context }) => {
		const { channel, user, text, ts, thread_ts: threadTs, bot_id: botId } = event;
		if (user === undefined || botId !== undefined) return;
		// An answer goes into the thread of the question, and so do questions that go on with it.
		const thread = threadTs ?? ts;
		const words = inWords(typedText(text, context.botUserId ?? ''));
		const asked = { shop: shopOf(body.team_id), channel, thread, delivery: body.event_id, user, ...words };
		await conversation.answer(asked, client, throughChannel(client, { channel, thread, user }));
	});

	app.message(async ({ message, body, client, context }) => {
		// Edits, joins, files without words and other bots' messages have a subtype or a bot_id.
		if (message.subtype !== undefined || message.bot_id !== undefined) return;
		const { channel, user, text, thread_ts: thread = null } = message;
		if (message.channel_type !== 'im' || text === undefined) return;
		const words = inWords(typedText(text, context.botUserId ?? ''));
		const asked = { shop: shopOf(body.team_id), channel, thread, delivery: body.event_id, user, ...words };
		await conversation.answer(asked, client, throughChannel(client, { channel, thread, user }));
	});
}

/** A message in words may begin with a command's name, as it would be typed after a slash. */
function inWords(text: string): Pick<Incoming, 'command' | 'text'> {
	const match = /^\/([a-z]+)(?:\s+|$)/i.exec(text);
	const command = commandNames.find((name) => name === match?.[1]?.toLowerCase());
	return command === undefined ? { command: 'ask', text } : { command, text: text.slice(match?.[0].length) };
}
