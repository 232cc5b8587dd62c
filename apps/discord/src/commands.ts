/**
 * The four commands as the platform registers them. `/size` is derived from the topics' declarations: a subcommand for
 * each topic (in groups by system once there are more than fit beside each other), an option for each field.
 *
 * The platform allows 8000 characters for a command with everything in it, which is less than all fields of all topics
 * need. So each topic first gets what it can't do without, then the topics take turns until the room is used up. What
 * has no option of its own can be said in words under `also`.
 */

import { type AnyTopic, type Field, shortened, suggestionsFor, topics } from '@lugbook/chat';
import {
	type APIApplicationCommandBasicOption,
	type APIApplicationCommandSubcommandGroupOption,
	type APIApplicationCommandSubcommandOption,
	type RESTPostAPIChatInputApplicationCommandsJSONBody,
	ApplicationCommandOptionType as Type,
} from 'discord.js';
import {
	COMMAND_CHARACTERS_MAX,
	DESCRIPTION_CHARACTERS_MAX,
	NAME_CHARACTERS_MAX,
	OPTIONS_MAX,
} from './limits.js';

/** the option for anything said in words */
export const WORDS = 'text';
export const ALSO = 'also';

type Command = RESTPostAPIChatInputApplicationCommandsJSONBody;

const words = (description: string, isRequired: boolean) => ({
	type: Type.String as const,
	name: WORDS,
	description,
	required: isRequired,
	max_length: 2000,
});

export function commands(declared: readonly AnyTopic[] = topics): Command[] {
	return [
		{ name: 'ask', description: 'Ask a sizing question in words', options: [words('40A 12V 15 ft', true)] },
		sizeCommand(declared),
		{
			name: 'build',
			description: "Choose this channel's van, show what is known of it",
			options: [{ ...words('use heron; show; help', false), autocomplete: true }],
		},
		{
			name: 'log',
			description: 'Show and check the project log',
			options: [words('show; show 128; verify; help', false)],
		},
	];
}

/** The name of a field's option: its label, or where that is taken or too long, its own name. */
export function optionNames(topic: AnyTopic): Map<string, string> {
	const names = new Map<string, string>();
	const taken = new Set([ALSO]);
	for (const [fieldName, field] of Object.entries(topic.fields)) {
		const fromLabel = hyphenated(field.meta.label);
		const name =
			fromLabel.length > 0 && fromLabel.length <= NAME_CHARACTERS_MAX && !taken.has(fromLabel)
				? fromLabel
				: hyphenated(fieldName);
		taken.add(name);
		names.set(fieldName, name);
	}
	return names;
}

function hyphenated(text: string): string {
	return text
		.replace(/([\p{Ll}\d])(\p{Lu})/gu, '$1-$2')
		.toLowerCase()
		.replace(/[^\p{L}\p{N}]+/gu, '-')
		.replace(/^-|-$/g, '');
}

/** Fields in the order in which they get an option: required, then those of which one is needed, then the others. */
function byNeed(topic: AnyTopic): [string, Field][] {
	const needed = new Set(topic.needs.flatMap((need) => need.anyOf));
	const rank = ([name, field]: [string, Field]) =>
		field.presence === 'required' ? 0 : needed.has(name) && field.type.sort !== 'flag' ? 1 : 2;
	return Object.entries(topic.fields).toSorted((a, b) => rank(a) - rank(b));
}

const SORTS: Readonly<Record<Field['type']['sort'], string>> = {
	quantity: 'with unit',
	count: 'how many',
	number: 'a number',
	choice: 'which',
	flag: 'yes or no',
	conductor: 'a size',
	text: 'in words',
	place: 'a town',
	month: 'a month',
	list: 'in words',
};

function optionOf(name: string, field: Field): APIApplicationCommandBasicOption {
	const base = { name, description: SORTS[field.type.sort], required: field.presence === 'required' };
	switch (field.type.sort) {
		case 'flag':
			return { ...base, type: Type.Boolean };
		case 'count':
			return { ...base, type: Type.Integer, min_value: field.type.min, max_value: field.type.max };
		case 'number':
			return { ...base, type: Type.Number, min_value: field.type.min, max_value: field.type.max };
		default:
			return {
				...base,
				type: Type.String,
				...(suggestionsFor(field) === null ? {} : { autocomplete: true }),
			};
	}
}

interface Growing {
	readonly subcommand: APIApplicationCommandSubcommandOption & {
		options: APIApplicationCommandBasicOption[];
	};
	/** fields that have no option yet */
	readonly waiting: [name: string, field: Field][];
}

function sizeCommand(declared: readonly AnyTopic[]): Command {
	const growing = new Map<AnyTopic, Growing>();
	for (const topic of declared) growing.set(topic, start(topic));
	const command = () => assembled(declared, growing);
	let room = COMMAND_CHARACTERS_MAX - charactersOf(command());
	// Turns: one more option for each topic, as long as there is room for it.
	for (let isGrowing = true; isGrowing; ) {
		isGrowing = false;
		for (const { subcommand, waiting } of growing.values()) {
			const next = waiting[0];
			if (next === undefined || subcommand.options.length >= OPTIONS_MAX) continue;
			const option = optionOf(...next);
			const cost = charactersOf(option);
			if (cost > room) continue;
			waiting.shift();
			room -= cost;
			subcommand.options.splice(-1, 0, option);
			isGrowing = true;
		}
	}
	return command();
}

/** A topic's subcommand with the options that it can't do without, and the one for words. */
function start(topic: AnyTopic): Growing {
	const names = optionNames(topic);
	const waiting = byNeed(topic).map(([name, field]): [string, Field] => [names.get(name) as string, field]);
	const required = waiting.filter(([, field]) => field.presence === 'required').slice(0, OPTIONS_MAX - 1);
	const also: APIApplicationCommandBasicOption = {
		type: Type.String,
		name: ALSO,
		description: 'more in words',
	};
	return {
		subcommand: {
			type: Type.Subcommand,
			name: topic.name,
			description: shortened(topic.title, 60),
			options: [...required.map(([name, field]) => optionOf(name, field)), { ...also, max_length: 1000 }],
		},
		waiting: waiting.filter((one) => !required.includes(one)),
	};
}

function assembled(declared: readonly AnyTopic[], growing: ReadonlyMap<AnyTopic, Growing>): Command {
	const subcommandsOf = (some: readonly AnyTopic[]) =>
		some.map((topic) => (growing.get(topic) as Growing).subcommand);
	const base = { name: 'size', description: 'Size one part, with its inputs in fields' };
	if (!isGrouped(declared)) return { ...base, options: subcommandsOf(declared) };
	const systems = [...new Set(declared.map((topic) => topic.system))];
	const groups = systems.map(
		(system): APIApplicationCommandSubcommandGroupOption => ({
			type: Type.SubcommandGroup,
			name: system,
			description: shortened(`What belongs to ${system}`, DESCRIPTION_CHARACTERS_MAX),
			options: subcommandsOf(declared.filter((topic) => topic.system === system)),
		}),
	);
	return { ...base, options: groups };
}

/** More topics than subcommands fit side by side. */
export function isGrouped(declared: readonly AnyTopic[] = topics): boolean {
	return declared.length > OPTIONS_MAX;
}

/** Characters of a command or an option with everything in it, as the platform counts them. */
export function charactersOf(part: {
	name: string;
	description: string;
	options?: readonly object[] | undefined;
}): number {
	const inside = (part.options ?? []) as readonly { name: string; description: string }[];
	return part.name.length + part.description.length + inside.reduce((sum, one) => sum + charactersOf(one), 0);
}
