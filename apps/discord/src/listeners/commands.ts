import { type CommandName, commandNames, topicNamed } from '@lugbook/chat';
import type { ChatInputCommandInteraction, CommandInteractionOption } from 'discord.js';
import { ALSO, optionNames, WORDS } from '../commands.js';
import { type Asked, type Conversation, shopOf } from '../conversation.js';
import { InteractionOutlet } from '../outlets.js';
import { placeOf } from '../place.js';

export async function onCommand(
	interaction: ChatInputCommandInteraction,
	conversation: Conversation,
): Promise<void> {
	const command = commandNames.find((name) => name === interaction.commandName);
	if (command === undefined) return;
	const { user, guildId, channelId, channel } = interaction;
	const asked: Asked = {
		shop: shopOf(guildId, user.id),
		...placeOf(channel, channelId),
		delivery: interaction.id,
		user: { id: user.id, name: user.displayName },
		...whatIsAsked(interaction, command),
	};
	const outlet = new InteractionOutlet(interaction);
	await conversation.answer(asked, outlet);
	outlet.release();
}

function whatIsAsked(
	interaction: ChatInputCommandInteraction,
	command: CommandName,
): Pick<Asked, 'command' | 'text' | 'fields'> {
	if (command !== 'size') return { command, text: interaction.options.getString(WORDS) ?? '' };
	const topic = topicNamed(interaction.options.getSubcommand());
	if (topic === null) return { command, text: interaction.options.getSubcommand() };
	const fieldNames = new Map([...optionNames(topic)].map(([field, option]) => [option, field]));
	const given = optionsIn(interaction.options.data).filter((one) => fieldNames.has(one.name));
	const also = interaction.options.getString(ALSO);
	if (also === null) {
		const fields = given.map((one) => [fieldNames.get(one.name) as string, typed(one)]);
		return { command, text: topic.name, fields: Object.fromEntries(fields) };
	}
	// With more in words everything is said in words, each input beside its name.
	const said = given.map(
		(one) => `${topic.fields[fieldNames.get(one.name) as string]?.meta.label} ${typed(one)}`,
	);
	return { command, text: [topic.name, [...said, also].join(', ')].join(' ') };
}

/** The options themselves, out of the groups and subcommands around them. */
function optionsIn(data: readonly CommandInteractionOption[]): CommandInteractionOption[] {
	return data.flatMap((one) => (one.options === undefined ? [one] : optionsIn(one.options)));
}

/** An option's value as a person would type it. */
function typed({ value }: CommandInteractionOption): string {
	return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value ?? '');
}
