/**
 * Limits of application commands, from discord-api-docs `interactions/application-commands.mdx`: names
 * `^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$` in lower case, descriptions 1 to 100, 25 options, 25 choices
 * (name 1 to 100, string value 100), required options before optional ones, one level of groups and subcommands
 * that are not mixed with other options, no choices beside autocomplete, min_length and max_length 0 to 6000,
 * 8000 characters in sum per command, 100 chat-input commands, 15 of each menu kind.
 */

import { arrayOf, type JsonObject, objectOf, stringOf } from '../common/json.js';
import type { FormErrors } from './form-errors.js';

export const OptionType = {
	subcommand: 1,
	group: 2,
	string: 3,
	integer: 4,
	boolean: 5,
	user: 6,
	channel: 7,
	role: 8,
	mentionable: 9,
	number: 10,
	attachment: 11,
} as const;

const NAME = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u;

function checkName(errors: FormErrors, where: string, name: unknown): void {
	const text = stringOf(name);
	if (!NAME.test(text) || text !== text.toLowerCase()) {
		errors.add(where, `Must be 1 to 32 lower-case letters, digits, - or _ (got ${JSON.stringify(name)})`);
	}
}

/** The longest of a text and its localizations, which is what the sum counts. */
function longest(text: unknown, localizations: unknown): number {
	const lengths = Object.values(objectOf(localizations)).map((one) => stringOf(one).length);
	return Math.max(stringOf(text).length, ...lengths);
}

/** Characters of names, descriptions and choice values of a command with all its options. */
function commandCharacters(command: JsonObject): number {
	const own =
		longest(command.name, command.name_localizations) +
		longest(command.description, command.description_localizations);
	const choices = arrayOf(command.choices)
		.map(objectOf)
		.reduce(
			(sum, choice) => sum + longest(choice.name, choice.name_localizations) + String(choice.value).length,
			0,
		);
	const options = arrayOf(command.options).map(objectOf);
	return own + choices + options.reduce((sum, option) => sum + commandCharacters(option), 0);
}

function checkOption(errors: FormErrors, where: string, option: JsonObject, depth: number): void {
	checkName(errors, `${where}.name`, option.name);
	errors.length(`${where}.description`, option.description, 100, 1);
	const type = option.type;
	if (typeof type !== 'number' || type < 1 || type > 11) {
		errors.add(`${where}.type`, 'Must be 1 to 11');
		return;
	}
	if (type === OptionType.group || type === OptionType.subcommand) {
		if (type === OptionType.group && depth > 0)
			errors.add(`${where}.type`, 'A group can stand in a command only');
		if (type === OptionType.subcommand && depth > 1)
			errors.add(`${where}.type`, 'A subcommand cannot hold another');
		checkOptions(errors, where, option, type === OptionType.subcommand ? 2 : 1);
		return;
	}
	if (depth === 1) errors.add(`${where}.type`, 'A group holds subcommands only');
	checkValueOption(errors, where, option);
}

function checkValueOption(errors: FormErrors, where: string, option: JsonObject): void {
	const type = option.type as number;
	const takesChoices =
		type === OptionType.string || type === OptionType.integer || type === OptionType.number;
	const choices = errors.list(`${where}.choices`, option.choices, 25);
	if (choices.length > 0 && !takesChoices) errors.add(`${where}.choices`, 'Not for this type of option');
	if (option.autocomplete === true && choices.length > 0)
		errors.add(where, 'Choices and autocomplete exclude each other');
	if (option.autocomplete === true && !takesChoices)
		errors.add(`${where}.autocomplete`, 'Not for this type of option');
	choices.forEach((choice, at) => {
		errors.length(`${where}.choices.${at}.name`, choice.name, 100, 1);
		if (type === OptionType.string) errors.length(`${where}.choices.${at}.value`, choice.value, 100, 1);
		else if (typeof choice.value !== 'number') errors.add(`${where}.choices.${at}.value`, 'Must be a number');
	});
	const { min_value: min, max_value: max } = option;
	if (typeof min === 'number' && typeof max === 'number' && min > max) {
		errors.add(`${where}.min_value`, 'Must not exceed max_value');
	}
	for (const [bound, least] of [['min_length', 0] as const, ['max_length', 1] as const]) {
		const value = option[bound];
		if (value !== undefined && (typeof value !== 'number' || value < least || value > 6000)) {
			errors.add(`${where}.${bound}`, `Must be ${least} to 6000`);
		}
	}
}

/** @param depth 0 in a command, 1 in a group, 2 in a subcommand */
function checkOptions(errors: FormErrors, where: string, parent: JsonObject, depth: number): void {
	const options = errors.list(`${where}.options`, parent.options, 25);
	const isBranch = (one: JsonObject) => one.type === OptionType.group || one.type === OptionType.subcommand;
	const branches = options.filter(isBranch).length;
	if (branches > 0 && branches < options.length) {
		errors.add(`${where}.options`, 'Subcommands cannot be mixed with other options');
	}
	const names = new Set<string>();
	let optionalSeen = false;
	options.forEach((option, at) => {
		const path = `${where}.options.${at}`;
		const name = stringOf(option.name);
		if (names.has(name)) errors.add(`${path}.name`, 'Option names must be unique');
		names.add(name);
		checkOption(errors, path, option, depth);
		if (isBranch(option)) return;
		if (option.required === true && optionalSeen) {
			errors.add(path, 'Required options must be placed before non-required options');
		}
		optionalSeen ||= option.required !== true;
	});
}

/** Checks a whole set, as for a bulk overwrite. */
export function checkCommands(errors: FormErrors, commands: readonly JsonObject[]): void {
	const kinds = new Map<number, Set<string>>();
	commands.forEach((command, at) => {
		const where = String(at);
		const type = typeof command.type === 'number' ? command.type : 1;
		const names = kinds.get(type) ?? new Set();
		if (names.has(stringOf(command.name)))
			errors.add(`${where}.name`, 'Application command names must be unique');
		names.add(stringOf(command.name));
		kinds.set(type, names);
		if (type === 1) {
			checkName(errors, `${where}.name`, command.name);
			errors.length(`${where}.description`, command.description, 100, 1);
			checkOptions(errors, where, command, 0);
		} else {
			errors.length(`${where}.name`, command.name, 32, 1);
			if (stringOf(command.description) !== '') errors.add(`${where}.description`, 'Menu commands have none');
		}
		const characters = commandCharacters(command);
		if (characters > 8000) errors.add(where, `Must be at most 8000 characters in sum (got ${characters})`);
	});
	for (const [type, names] of kinds) {
		const max = type === 1 ? 100 : 15;
		if (names.size > max)
			errors.add('0', `Must be at most ${max} commands of type ${type} (got ${names.size})`);
	}
}
