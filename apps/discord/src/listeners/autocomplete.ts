import { buildsOf, type Desk, fitting, offered, topicNamed } from '@lugbook/chat';
import type { AutocompleteInteraction } from 'discord.js';
import { optionNames } from '../commands.js';
import { CHOICE_CHARACTERS_MAX, CHOICES_MAX } from '../limits.js';
import { shopOf } from '../platform.js';

/** Offers words for what is being typed; the person may type anything else as well. */
export async function suggest(interaction: AutocompleteInteraction, desk: Desk): Promise<void> {
	const words = (await wordsFor(interaction, desk)).filter((word) => word.length <= CHOICE_CHARACTERS_MAX);
	await interaction.respond(words.slice(0, CHOICES_MAX).map((word) => ({ name: word, value: word })));
}

async function wordsFor(interaction: AutocompleteInteraction, desk: Desk): Promise<readonly string[]> {
	const { name, value } = interaction.options.getFocused(true);
	if (interaction.commandName === 'build') {
		const shop = shopOf(interaction.guildId, interaction.user.id);
		const builds = await buildsOf(desk.log, shop);
		const words = ['show', 'check', 'rerun', 'list', ...builds.map((build) => `use ${build.name}`), 'help'];
		return fitting(words, value);
	}
	const topic = topicNamed(interaction.options.getSubcommand(false) ?? '');
	const [fieldName] =
		[...(topic === null ? [] : optionNames(topic))].find(([, option]) => option === name) ?? [];
	const field = fieldName === undefined ? undefined : topic?.fields[fieldName];
	return field === undefined ? [] : offered(field, value);
}
