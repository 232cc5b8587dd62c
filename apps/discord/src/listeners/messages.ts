import { commandNames, type Incoming } from '@lugbook/chat';
import type { Message } from 'discord.js';
import { placeOf } from '../place.js';
import { shopOf } from '../platform.js';
import { typedText } from '../text.js';
import type { Wiring } from './index.js';

/** Answers what is addressed to the bot: private messages, mentions, and replies to its messages. */
export async function onMessage(
	message: Message,
	botId: string,
	{ desk, platform, nowMs }: Wiring,
): Promise<void> {
	if (message.author.bot || message.system) return;
	const isReplyToBot = message.mentions.repliedUser?.id === botId;
	if (message.guildId !== null && !message.mentions.users.has(botId) && !isReplyToBot) return;
	const { author, guildId, channel, channelId, member } = message;
	const at = placeOf(channel, channelId);
	// A reply to an answer goes on with its question, as if it stood in a thread below it.
	const under = isReplyToBot ? (message.reference?.messageId ?? null) : null;
	const asked = {
		shop: shopOf(guildId, author.id),
		channel: at.channel,
		thread: under ?? at.thread,
		delivery: message.id,
		user: {
			id: author.id,
			name: member?.displayName ?? author.displayName,
			roles: [...(member?.roles.cache.keys() ?? [])],
		},
		...inWords(typedText(message.content, botId)),
	};
	const place = {
		channel: channelId,
		message: message.id,
		interaction: null,
		user: author.id,
		sinceMs: nowMs(),
		delivery: message.id,
	};
	await desk.receive(asked, place, platform.way(place)).done;
}

/** A message in words may begin with a command's name, as it would be typed after a slash. */
function inWords(text: string): Pick<Incoming, 'command' | 'text'> {
	const match = /^\/([a-z]+)(?:\s+|$)/i.exec(text);
	const command = commandNames.find((name) => name === match?.[1]?.toLowerCase());
	return command === undefined ? { command: 'ask', text } : { command, text: text.slice(match?.[0].length) };
}
