/** The form of /size, derived from a topic's declaration: one input for each of its fields. */

import {
	type AnyTopic,
	type Field,
	FormWords,
	formKinds,
	languages,
	shortened,
	topics,
	type WordsForm,
} from '@lugbook/chat';
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
	/** what its words are said in; a form that a former version opened does not tell */
	language: z.enum(languages).default('en'),
	place: placeSchema,
});
export type Opened = z.infer<typeof openedSchema>;

/** @throws when it is none of ours */
export function openedIn(view: { private_metadata: string }): Opened {
	return openedSchema.parse(JSON.parse(view.private_metadata));
}

const plain = (text: string): types.PlainTextElement => ({ type: 'plain_text', text, emoji: false });

function option(text: string, value: string): types.PlainTextOption {
	return {
		text: plain(shortened(text, OPTION_CHARACTERS_MAX)),
		value: shortened(value, OPTION_CHARACTERS_MAX),
	};
}

function inputOf(
	name: string,
	field: Field,
	prefilled: string | undefined,
	words: FormWords,
): types.InputBlock {
	const { label, hint, example, choices } = words.input(field);
	const block = {
		type: 'input' as const,
		block_id: name,
		label: plain(shortened(label, INPUT_LABEL_CHARACTERS_MAX)),
		optional: field.presence !== 'required',
		...(hint === '' ? {} : { hint: plain(shortened(hint, INPUT_LABEL_CHARACTERS_MAX)) }),
	};
	if (choices !== null) {
		const options = choices.slice(0, SELECT_OPTIONS_MAX).map(({ text, value }) => option(text, value));
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
			placeholder: plain(shortened(example, PLACEHOLDER_CHARACTERS_MAX)),
		},
	};
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
	const words = new FormWords(opened.language);
	const fields = Object.entries(topic.fields).filter(([name]) => only === undefined || name === only);
	return {
		type: 'modal',
		callback_id: FORM,
		private_metadata: JSON.stringify({ ...opened, topic: topic.name }),
		title: plain(shortened(words.title(topic), MODAL_TITLE_CHARACTERS_MAX)),
		submit: plain(words.size),
		close: plain(words.cancel),
		blocks: [
			{ type: 'context', elements: [plain(shortened(words.purpose(topic), BLOCK_CHARACTERS_MAX))] },
			...fields
				.toSorted(([, a], [, b]) => Number(b.presence === 'required') - Number(a.presence === 'required'))
				.slice(0, MODAL_BLOCKS_MAX - 1)
				.map(([name, field]) => inputOf(name, field, prefilled[name], words)),
		],
	};
}

/** A form with one line of words, such as the reason of a rejection. */
export function wordsView({ title, label, maxCharacters }: WordsForm, opened: Opened): types.ModalView {
	const words = new FormWords(opened.language);
	return {
		type: 'modal',
		callback_id: FORM,
		private_metadata: JSON.stringify(opened),
		title: plain(shortened(title, MODAL_TITLE_CHARACTERS_MAX)),
		submit: plain(words.send),
		close: plain(words.cancel),
		blocks: [
			{
				type: 'input',
				block_id: 'words',
				label: plain(shortened(label, INPUT_LABEL_CHARACTERS_MAX)),
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
	const words = new FormWords(opened.language);
	return {
		type: 'modal',
		callback_id: TOPIC_CHOICE,
		private_metadata: JSON.stringify(opened),
		title: plain(words.sizeAPart),
		submit: plain(words.next),
		close: plain(words.cancel),
		blocks: [
			{
				type: 'input',
				block_id: 'topic',
				label: plain(shortened(words.whichTopic, INPUT_LABEL_CHARACTERS_MAX)),
				element: {
					type: 'static_select',
					action_id: VALUE,
					options: topics
						.slice(0, SELECT_OPTIONS_MAX)
						.map((topic) => option(`${topic.name}: ${words.title(topic)}`, topic.name)),
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
