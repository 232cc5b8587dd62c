import { topicNamed } from '@lugbook/chat';
import type { AutocompleteInteraction } from 'discord.js';
import { optionNames, suggestionsFor } from '../commands.js';
import { CHOICE_CHARACTERS_MAX, CHOICES_MAX } from '../limits.js';

/** Offers the words of the field that is being typed; the person may type anything else as well. */
export async function suggest(interaction: AutocompleteInteraction): Promise<void> {
	const topic = topicNamed(interaction.options.getSubcommand(false) ?? '');
	const { name, value } = interaction.options.getFocused(true);
	const [fieldName] =
		[...(topic === null ? [] : optionNames(topic))].find(([, option]) => option === name) ?? [];
	const field = fieldName === undefined ? undefined : topic?.fields[fieldName];
	const words = field === undefined ? [] : (suggestionsFor(field) ?? []);
	const start = value.trim().toLowerCase();
	const fitting = words.filter(
		(word) => word.toLowerCase().includes(start) && word.length <= CHOICE_CHARACTERS_MAX,
	);
	// Words that begin with what was typed come first.
	const ranked = fitting.toSorted(
		(a, b) => Number(b.toLowerCase().startsWith(start)) - Number(a.toLowerCase().startsWith(start)),
	);
	await interaction.respond(ranked.slice(0, CHOICES_MAX).map((word) => ({ name: word, value: word })));
}
