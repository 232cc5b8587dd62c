/** The form that changes an answer: up to five of the topic's fields, which is what the platform's forms hold. */

import type { Answer, AnyTopic, Field } from '@lugbook/chat';
import { ActionRowBuilder, ModalBuilder, TextInputBuilder, TextInputStyle } from 'discord.js';
import {
	INPUT_LABEL_CHARACTERS_MAX,
	INPUT_VALUE_CHARACTERS_MAX,
	MODAL_INPUTS_MAX,
	MODAL_TITLE_CHARACTERS_MAX,
	PLACEHOLDER_CHARACTERS_MAX,
} from './limits.js';
import { shortened } from './text.js';

/** `form:ENTRY` */
export const FORM_ID = /^form:(\d+)$/;

/** @param entry the number of the answer that is changed: what has no input in the form stays as it was there */
export function changeForm(topic: AnyTopic, answer: Answer, entry: string): ModalBuilder {
	const given = new Map(answer.understood.map((one) => [one.name, one.text]));
	const rank = ([name, field]: [string, Field]) =>
		given.has(name) ? 0 : field.presence === 'required' ? 1 : 2;
	const fields = Object.entries(topic.fields)
		.toSorted((a, b) => rank(a) - rank(b))
		.slice(0, MODAL_INPUTS_MAX);
	const rows = fields.map(([name, field]) => {
		const input = new TextInputBuilder()
			.setCustomId(name)
			.setLabel(shortened(field.meta.label, INPUT_LABEL_CHARACTERS_MAX))
			.setStyle(field.type.sort === 'list' ? TextInputStyle.Paragraph : TextInputStyle.Short)
			.setRequired(field.presence === 'required');
		const why = field.meta.fallback?.why;
		if (why !== undefined) input.setPlaceholder(shortened(`Left empty: ${why}`, PLACEHOLDER_CHARACTERS_MAX));
		const before = given.get(name);
		if (before !== undefined) input.setValue(before.slice(0, INPUT_VALUE_CHARACTERS_MAX));
		return new ActionRowBuilder<TextInputBuilder>().addComponents(input);
	});
	return new ModalBuilder()
		.setCustomId(`form:${entry}`)
		.setTitle(shortened(topic.title, MODAL_TITLE_CHARACTERS_MAX))
		.addComponents(rows);
}
