import { commandNames, type Incoming } from '@lugbook/chat';
import type { App, webApi } from '@slack/bolt';
import { shopOf } from '../platform.js';
import { typedText } from '../text.js';
import type { Wiring } from './index.js';
import { notedOrLate } from './note.js';

export function listenToMessages(app: App, { desk, platform, nowMs }: Wiring): void {
	const receive = async (
		at: { channel: string; thread: string | null; user: string; delivery: string; teamId: string },
		words: Pick<Incoming, 'command' | 'text'>,
		client: webApi.WebClient,
	) => {
		const { channel, thread, user, delivery, teamId } = at;
		const place = { channel, thread, user, responseUrl: null, sinceMs: nowMs(), delivery };
		const asked = { shop: shopOf(teamId), channel, thread, delivery, user: { id: user }, ...words };
		await notedOrLate(desk.receive(asked, place, platform.way(client, place)).noted);
	};

	app.event('app_mention', async ({ event, body, client, context }) => {
		const { channel, user, text, ts, thread_ts: threadTs, bot_id: botId } = event;
		if (user === undefined || botId !== undefined) return;
		// An answer goes into the thread of the question, and so do questions that go on with it.
		const at = { channel, thread: threadTs ?? ts, user, delivery: body.event_id, teamId: body.team_id };
		await receive(at, inWords(typedText(text, context.botUserId ?? '')), client);
	});

	app.message(async ({ message, body, client, context }) => {
		// Edits, joins, files without words and other bots' messages have a subtype or a bot_id.
		if (message.subtype !== undefined || message.bot_id !== undefined) return;
		const { channel, user, text, thread_ts: thread = null } = message;
		if (message.channel_type !== 'im' || text === undefined) return;
		const at = { channel, thread, user, delivery: body.event_id, teamId: body.team_id };
		await receive(at, inWords(typedText(text, context.botUserId ?? '')), client);
	});
}

/** A message in words may begin with a command's name, as it would be typed after a slash. */
function inWords(text: string): Pick<Incoming, 'command' | 'text'> {
	const match = /^\/([a-z]+)(?:\s+|$)/i.exec(text);
	const command = commandNames.find((name) => name === match?.[1]?.toLowerCase());
	return command === undefined ? { command: 'ask', text } : { command, text: text.slice(match?.[0].length) };
}
