/** The form of /size, derived from a topic's declaration: one input for each of its fields. */

import { type AnyTopic, type Field, formKinds, shortened, topics, type WordsForm } from '@lugbook/chat';
import type { types } from '@slack/bolt';
import { z } from 'zod';
import {
	BLOCK_CHARACTERS_MAX,
	INPUT_LABEL_CHARACTERS_MAX,
	MODAL_BLOCKS_MAX,
	MODAL_TITLE_CHARACTERS_MAX,
	OPTION_CHARACTERS_MAX,
	PLACEHOLDER_CHARACTERS_MAX,
	SELECT_OPTIONS_MAX,
} from './limits.js';
import { placeSchema } from './show.js';

export const FORM = 'lugbook:form';
export const TOPIC_CHOICE = 'lugbook:topic';
const VALUE = 'value';

/** What a form remembers of where it was opened: what is sent of it has no channel and no response_url of its own. */
const openedSchema = z.object({
	form: z.enum([...formKinds, 'size']),
	/** the topic, or null while it is being chosen */
	topic: z.string().nullable(),
	/** the answer it is about */
	entry: z.number().nullable(),
	place: placeSchema,
});
export type Opened = z.infer<typeof openedSchema>;

/** @throws when it is none of ours */
export function openedIn(view: { private_metadata: string }): Opened {
	return openedSchema.parse(JSON.parse(view.private_metadata));
}

const plain = (text: string): types.PlainTextElement => ({ type: 'plain_text', text, emoji: false });
const monthName = new Intl.DateTimeFormat('en', { month: 'long', timeZone: 'UTC' });
const MONTHS = Array.from({ length: 12 }, (_, month) => monthName.format(Date.UTC(2026, month)));

function option(text: string, value: string): types.PlainTextOption {
	return {
		text: plain(shortened(text, OPTION_CHARACTERS_MAX)),
		value: shortened(value, OPTION_CHARACTERS_MAX),
	};
}

/** The words to choose from, where a field is a choice. */
function choicesOf({ type }: Field): string[] | null {
	switch (type.sort) {
		case 'choice':
			// The first word of an option is understood as well as its name, and reads better.
			return Object.entries(type.options).map(([name, words]) => words[0] ?? name);
		case 'flag':
			return ['yes', 'no'];
		case 'month':
			return MONTHS;
		default:
			return null;
	}
}

function inputOf(name: string, field: Field, prefilled: string | undefined): types.InputBlock {
	const { label, help, fallback } = field.meta;
	const choices = choicesOf(field);
	const hint = [help, fallback === null ? null : `Left empty: ${fallback.why}.`]
		.filter((one) => one !== null)
		.join(' ');
	const block = {
		type: 'input' as const,
		block_id: name,
		label: plain(shortened(label, INPUT_LABEL_CHARACTERS_MAX)),
		optional: field.presence !== 'required',
		...(hint === '' ? {} : { hint: plain(shortened(hint, INPUT_LABEL_CHARACTERS_MAX)) }),
	};
	if (choices !== null) {
		const options = choices.slice(0, SELECT_OPTIONS_MAX).map((word) => option(word, word));
		const initial = options.find((one) => one.value === prefilled?.toLowerCase() || one.value === prefilled);
		return {
			...block,
			element: {
				type: 'static_select',
				action_id: VALUE,
				options,
				...(initial === undefined ? {} : { initial_option: initial }),
			},
		};
	}
	return {
		...block,
		element: {
			type: 'plain_text_input',
			action_id: VALUE,
			multiline: field.type.sort === 'list',
			max_length: 2000,
			...(prefilled === undefined ? {} : { initial_value: prefilled }),
			placeholder: plain(shortened(exampleFor(field), PLACEHOLDER_CHARACTERS_MAX)),
		},
	};
}

function exampleFor({ type }: Field): string {
	switch (type.sort) {
		case 'quantity':
			return 'a number with its unit';
		case 'count':
			return 'a whole number';
		case 'number':
			return 'a number';
		case 'conductor':
			return '4 AWG, 2/0, 35 mm2';
		case 'place':
			return 'the name of a town';
		default:
			return 'in words';
	}
}

/**
 * @param prefilled texts by field name, as from an earlier answer
 * @param only the one field that is asked for
 */
export function topicForm(
	topic: AnyTopic,
	opened: Opened,
	prefilled: Readonly<Record<string, string>> = {},
	only?: string,
): types.ModalView {
	const fields = Object.entries(topic.fields).filter(([name]) => only === undefined || name === only);
	return {
		type: 'modal',
		callback_id: FORM,
		private_metadata: JSON.stringify({ ...opened, topic: topic.name }),
		title: plain(shortened(topic.title, MODAL_TITLE_CHARACTERS_MAX)),
		submit: plain('Size it'),
		close: plain('Cancel'),
		blocks: [
			{ type: 'context', elements: [plain(shortened(topic.purpose, BLOCK_CHARACTERS_MAX))] },
			...fields
				.toSorted(([, a], [, b]) => Number(b.presence === 'required') - Number(a.presence === 'required'))
				.slice(0, MODAL_BLOCKS_MAX - 1)
				.map(([name, field]) => inputOf(name, field, prefilled[name])),
		],
	};
}

/** A form with one line of words, such as the reason of a rejection. */
export function wordsView({ title, label, maxCharacters }: WordsForm, opened: Opened): types.ModalView {
	return {
		type: 'modal',
		callback_id: FORM,
		private_metadata: JSON.stringify(opened),
		title: plain(shortened(title, MODAL_TITLE_CHARACTERS_MAX)),
		submit: plain('Send'),
		close: plain('Cancel'),
		blocks: [
			{
				type: 'input',
				block_id: 'words',
				label: plain(label),
				element: {
					type: 'plain_text_input',
					action_id: VALUE,
					multiline: maxCharacters > 100,
					max_length: maxCharacters,
				},
			},
		],
	};
}

export function topicChoiceForm(opened: Opened): types.ModalView {
	return {
		type: 'modal',
		callback_id: TOPIC_CHOICE,
		private_metadata: JSON.stringify(opened),
		title: plain('Size a part'),
		submit: plain('Next'),
		close: plain('Cancel'),
		blocks: [
			{
				type: 'input',
				block_id: 'topic',
				label: plain('What is to be sized?'),
				element: {
					type: 'static_select',
					action_id: VALUE,
					options: topics
						.slice(0, SELECT_OPTIONS_MAX)
						.map((topic) => option(`${topic.name}: ${topic.title}`, topic.name)),
				},
			},
		],
	};
}

/** What was entered, by field name; fields left empty are not in it. */
export function enteredIn(view: {
	state: {
		values: Record<
			string,
			Record<string, { value?: string | null; selected_option?: { value: string } | null }>
		>;
	};
}): Record<string, string> {
	const entered: Record<string, string> = {};
	for (const [name, elements] of Object.entries(view.state.values)) {
		const element = elements[VALUE];
		const value = element?.selected_option?.value ?? element?.value ?? '';
		if (value.trim() !== '') entered[name] = value;
	}
	return entered;
}
