import { commandNames, type Incoming } from '@lugbook/chat';
import type { Message } from 'discord.js';
import { type Conversation, shopOf } from '../conversation.js';
import { MessageOutlet } from '../outlets.js';
import { placeOf } from '../place.js';
import { typedText } from '../text.js';

/** Answers what is addressed to the bot: private messages, mentions, and replies to its messages. */
export async function onMessage(message: Message, botId: string, conversation: Conversation): Promise<void> {
	if (message.author.bot || message.system) return;
	const isForBot =
		message.guildId === null ||
		message.mentions.users.has(botId) ||
		message.mentions.repliedUser?.id === botId;
	if (!isForBot) return;
	const { author, guildId, channel, channelId } = message;
	const words = typedText(message.content, botId);
	// A reply to the bot's message goes on with the question before.
	const goesOn = message.mentions.repliedUser?.id === botId;
	const asked = {
		shop: shopOf(guildId, author.id),
		...placeOf(channel, channelId),
		delivery: message.id,
		user: { id: author.id, name: message.member?.displayName ?? author.displayName },
		...inWords(words, goesOn),
	};
	await conversation.answer(asked, new MessageOutlet(message));
}

/** A message in words may begin with a command's name, as it would be typed after a slash. */
function inWords(text: string, goesOn: boolean): Pick<Incoming, 'command' | 'text'> {
	const match = /^\/([a-z]+)(?:\s+|$)/i.exec(text);
	const command = commandNames.find((name) => name === match?.[1]?.toLowerCase());
	if (command !== undefined) return { command, text: text.slice(match?.[0].length) };
	return { command: 'ask', text: goesOn ? `> ${text}` : text };
}
