import { type Asked, type CommandName, commandNames, errorFacts, topicNamed } from '@lugbook/chat';
import type { ChatInputCommandInteraction, CommandInteractionOption } from 'discord.js';
import { ALSO, optionNames, WORDS } from '../commands.js';
import { sizeForm } from '../form.js';
import { askedFrom, receive } from './about.js';
import type { Wiring } from './index.js';

export async function onCommand(interaction: ChatInputCommandInteraction, wiring: Wiring): Promise<void> {
	const command = commandNames.find((name) => name === interaction.commandName);
	if (command === undefined) return;
	const asked = whatIsAsked(interaction, command);
	const topic = command === 'size' ? topicNamed(asked.text) : null;
	if (topic !== null && Object.keys(asked.fields ?? {}).length === 0) {
		try {
			const language = await wiring.desk.languageFor({ ...askedFrom(interaction), command });
			return void (await interaction.showModal(sizeForm(topic, language)));
		} catch (error) {
			// Where the form could not be opened, the conversation asks in words.
			wiring.log.warn(errorFacts(error), 'could not open a form');
		}
	}
	await receive(interaction, asked, wiring);
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
