/** Forms about an answer. The platform's forms hold five inputs at most. */

import {
	type Answer,
	type AnyTopic,
	type Field,
	type FormKind,
	FormWords,
	formKinds,
	type Language,
	shortened,
	type WordsForm,
} from '@lugbook/chat';
import { ActionRowBuilder, ModalBuilder, TextInputBuilder, TextInputStyle } from 'discord.js';
import {
	INPUT_LABEL_CHARACTERS_MAX,
	INPUT_VALUE_CHARACTERS_MAX,
	MODAL_INPUTS_MAX,
	MODAL_TITLE_CHARACTERS_MAX,
	PLACEHOLDER_CHARACTERS_MAX,
} from './limits.js';

/** `form:KIND:ENTRY` */
export const FORM_ID = new RegExp(`^form:(${formKinds.join('|')}):(\\d{1,9})$`);
const idOf = (form: FormKind, entry: number): string => `form:${form}:${entry}`;
/** `form:size:TOPIC` */
export const SIZE_FORM_ID = /^form:size:([a-z0-9-]{1,60})$/;

/**
 * @param only the one field that is asked for; else the five that matter most. What has no input stays as it was.
 */
export function topicForm(
	topic: AnyTopic,
	answer: Answer,
	entry: number,
	language: Language,
	only?: string,
): ModalBuilder {
	const given = new Map(answer.understood.map((one) => [one.name, one.text]));
	const assumed = new Map(answer.assumed.map((one) => [one.name, one.text]));
	const before = only === undefined ? given : new Map([...assumed, ...given]);
	const id = idOf(only === undefined ? 'change' : 'assume', entry);
	return formOf(topic, id, before, language, (name) => only === undefined || name === only);
}

/** The form of "/size TOPIC" without inputs. */
export function sizeForm(topic: AnyTopic, language: Language): ModalBuilder {
	return formOf(topic, `form:size:${topic.name}`, new Map(), language, () => true);
}

function formOf(
	topic: AnyTopic,
	id: string,
	before: ReadonlyMap<string, string>,
	language: Language,
	isMeant: (name: string) => boolean,
): ModalBuilder {
	const words = new FormWords(language);
	const needed = new Set(topic.needs.flatMap((need) => need.anyOf));
	const rank = ([name, field]: [string, Field]) =>
		before.has(name)
			? 0
			: field.presence === 'required'
				? 1
				: needed.has(name) && field.type.sort !== 'flag'
					? 2
					: 3;
	const fields = Object.entries(topic.fields)
		.filter(([name]) => isMeant(name))
		.toSorted((a, b) => rank(a) - rank(b))
		.slice(0, MODAL_INPUTS_MAX);
	const rows = fields.map(([name, field]) => {
		const { label, leftEmpty, choices } = words.input(field);
		const input = new TextInputBuilder()
			.setCustomId(name)
			.setLabel(shortened(label, INPUT_LABEL_CHARACTERS_MAX))
			.setStyle(field.type.sort === 'list' ? TextInputStyle.Paragraph : TextInputStyle.Short)
			.setRequired(field.presence === 'required');
		if (leftEmpty !== null) input.setPlaceholder(shortened(leftEmpty, PLACEHOLDER_CHARACTERS_MAX));
		const known = before.get(name);
		const text = choices?.find(({ value }) => value === known)?.text ?? known;
		if (text !== undefined) input.setValue(text.slice(0, INPUT_VALUE_CHARACTERS_MAX));
		return new ActionRowBuilder<TextInputBuilder>().addComponents(input);
	});
	return new ModalBuilder()
		.setCustomId(id)
		.setTitle(shortened(words.title(topic), MODAL_TITLE_CHARACTERS_MAX))
		.addComponents(rows);
}

/** A form with one line of words, such as the reason of a rejection. */
export function wordsModal(
	form: FormKind,
	entry: number,
	{ title, label, maxCharacters }: WordsForm,
): ModalBuilder {
	const input = new TextInputBuilder()
		.setCustomId('words')
		.setLabel(shortened(label, INPUT_LABEL_CHARACTERS_MAX))
		.setStyle(maxCharacters > 100 ? TextInputStyle.Paragraph : TextInputStyle.Short)
		.setMaxLength(maxCharacters)
		.setRequired(true);
	return new ModalBuilder()
		.setCustomId(idOf(form, entry))
		.setTitle(shortened(title, MODAL_TITLE_CHARACTERS_MAX))
		.addComponents(new ActionRowBuilder<TextInputBuilder>().addComponents(input));
}
