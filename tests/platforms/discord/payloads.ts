/**
 * Interactions and messages as the Gateway sends them (discord-api-docs
 * `interactions/receiving-and-responding.mdx`, `resources/message.mdx`). Options are typed and bounded by the
 * command as the app registered it, as the platform's own client does before it sends anything.
 */

import { arrayOf, type JsonObject, objectOf, stringOf } from '../common/json.js';
import { OptionType } from './command-limits.js';
import { allComponents, ComponentType } from './component-limits.js';
import { type DiscordChannel, type DiscordUser, userObject } from './model.js';

export type OptionValue = string | number | boolean;

export interface Chosen {
	readonly group?: string;
	readonly subcommand?: string;
	/** name of the option being typed, for autocomplete; its value stays as typed */
	readonly focused?: string;
}

const optionsOf = (holder: JsonObject): JsonObject[] => arrayOf(holder.options).map(objectOf);

function branch(holder: JsonObject, type: number, name: string | undefined): JsonObject | undefined {
	const branches = optionsOf(holder).filter((one) => one.type === type);
	if (name === undefined) return undefined;
	const found = branches.find((one) => one.name === name);
	if (!found)
		throw new Error(`no ${JSON.stringify(name)} here, only: ${branches.map((one) => one.name).join(', ')}`);
	return found;
}

/** Why the platform's client would not let a person send this value; undefined when it would. */
function refusal(option: JsonObject, value: OptionValue): string | undefined {
	const choices = arrayOf(option.choices).map(objectOf);
	if (choices.length > 0 && !choices.some((choice) => choice.value === value))
		return 'is none of the choices';
	if (typeof value === 'string') {
		if (option.type !== OptionType.string) return 'is not a text option';
		const min = Number(option.min_length ?? 0);
		const max = Number(option.max_length ?? 6000);
		if (value.length < min || value.length > max) return `must be ${min} to ${max} characters`;
		return undefined;
	}
	if (typeof value === 'boolean')
		return option.type === OptionType.boolean ? undefined : 'is not a yes/no option';
	if (option.type === OptionType.integer && !Number.isInteger(value)) return 'must be a whole number';
	if (option.type !== OptionType.integer && option.type !== OptionType.number)
		return 'is not a number option';
	if (typeof option.min_value === 'number' && value < option.min_value)
		return `must be at least ${option.min_value}`;
	if (typeof option.max_value === 'number' && value > option.max_value)
		return `must be at most ${option.max_value}`;
	return undefined;
}

function filledOptions(
	holder: JsonObject,
	values: Record<string, OptionValue>,
	focused?: string,
): JsonObject[] {
	const known = optionsOf(holder);
	for (const name of Object.keys(values)) {
		if (!known.some((one) => one.name === name)) {
			throw new Error(`no option ${JSON.stringify(name)}, only: ${known.map((one) => one.name).join(', ')}`);
		}
	}
	const filled: JsonObject[] = [];
	for (const option of known) {
		const name = stringOf(option.name);
		const value = values[name];
		if (name === focused) {
			if (option.autocomplete !== true) throw new Error(`${name} has no autocomplete`);
			filled.push({ name, type: option.type, value: String(value ?? ''), focused: true });
		} else if (value === undefined) {
			if (option.required === true && focused === undefined)
				throw new Error(`the option ${name} is required`);
		} else {
			const why = focused === undefined ? refusal(option, value) : undefined;
			if (why) throw new Error(`the platform would not send ${name}: ${JSON.stringify(value)} ${why}`);
			filled.push({ name, type: option.type, value });
		}
	}
	return filled;
}

/** `data` of a chat-input command or its autocomplete. */
export function commandData(
	command: JsonObject,
	values: Record<string, OptionValue>,
	{ group, subcommand, focused }: Chosen,
): JsonObject {
	const base = { id: command.id, name: command.name, type: 1 };
	const groupOption = branch(command, OptionType.group, group);
	const subOption = branch(groupOption ?? command, OptionType.subcommand, subcommand);
	const hasBranches = optionsOf(groupOption ?? command).some(
		(one) => one.type === OptionType.subcommand || one.type === OptionType.group,
	);
	if (hasBranches && !subOption) throw new Error(`/${command.name} needs one of its subcommands`);
	const options = filledOptions(subOption ?? command, values, focused);
	if (!subOption) return { ...base, options };
	const sub = { name: subOption.name, type: OptionType.subcommand, options };
	if (!groupOption) return { ...base, options: [sub] };
	return { ...base, options: [{ name: groupOption.name, type: OptionType.group, options: [sub] }] };
}

/** `data` of a submitted modal, in the form of components it was opened with. */
export function modalData(modal: JsonObject, values: Record<string, string>): JsonObject {
	const known = new Set<string>();
	const filled = (input: JsonObject): JsonObject => {
		const customId = stringOf(input.custom_id);
		known.add(customId);
		const value = values[customId] ?? stringOf(input.value);
		if (value === '' && input.required !== false) throw new Error(`the field ${customId} is required`);
		const max = Number(input.max_length ?? 4000);
		const min = Number(input.min_length ?? 0);
		if (value !== '' && (value.length > max || value.length < min)) {
			throw new Error(`the field ${customId} takes ${min} to ${max} characters`);
		}
		if (input.type === ComponentType.textInput)
			return { type: input.type, id: 1, custom_id: customId, value };
		const chosen = value === '' ? [] : value.split(',');
		const offered = arrayOf(input.options).map((option) => objectOf(option).value);
		const strange = chosen.find((one) => offered.length > 0 && !offered.includes(one));
		if (strange !== undefined) throw new Error(`${customId} offers no ${JSON.stringify(strange)}`);
		return { type: input.type, id: 1, custom_id: customId, values: chosen };
	};
	const components = arrayOf(modal.components)
		.map(objectOf)
		.map((part) => {
			if (part.type === ComponentType.label)
				return { type: part.type, id: 1, component: filled(objectOf(part.component)) };
			if (part.type !== ComponentType.row) return { type: part.type, id: 1 };
			const inputs = arrayOf(part.components).map((input) => filled(objectOf(input)));
			return { type: part.type, id: 1, components: inputs };
		});
	for (const name of Object.keys(values)) {
		if (!known.has(name)) throw new Error(`the form has no field ${name}, only: ${[...known].join(', ')}`);
	}
	return { custom_id: modal.custom_id, components };
}

/** The button or menu with this custom_id or label. */
export function findComponent(components: readonly JsonObject[], which: string): JsonObject {
	const usable = [...allComponents(components)].filter((one) => one.custom_id !== undefined);
	const found = usable.find((one) => one.custom_id === which || one.label === which);
	if (!found) {
		const offered = usable.map((one) => `${one.custom_id} (${one.label})`).join(', ');
		throw new Error(`there is no ${JSON.stringify(which)} to use, only: ${offered}`);
	}
	if (found.disabled === true) throw new Error(`${which} is disabled`);
	return found;
}

export function channelObject(channel: DiscordChannel): JsonObject {
	if (channel.type === 1) return { id: channel.id, type: 1, last_message_id: null, flags: 0 };
	return {
		id: channel.id,
		type: channel.type,
		name: channel.name,
		guild_id: channel.guildId,
		position: 0,
		permission_overwrites: [],
		parent_id: channel.parentId ?? null,
		last_message_id: null,
		topic: null,
		nsfw: false,
		rate_limit_per_user: 0,
		flags: 0,
		...(channel.type === 11
			? {
					owner_id: '0',
					message_count: 0,
					member_count: 1,
					thread_metadata: {
						archived: channel.archived,
						locked: channel.locked,
						auto_archive_duration: 1440,
						archive_timestamp: '2026-01-01T00:00:00.000000+00:00',
					},
				}
			: {}),
	};
}

export interface InteractionPlace {
	readonly applicationId: string;
	readonly user: DiscordUser;
	readonly channel: DiscordChannel;
	/** permissions of the person, as the platform's decimal string */
	readonly permissions: string;
	readonly locale: string;
	/** the person's roles in the server */
	readonly roles: readonly string[];
}

/** The `d` of INTERACTION_CREATE but for id, token, type and data. */
export function interactionBase({
	applicationId,
	user,
	channel,
	permissions,
	locale,
	roles,
}: InteractionPlace): JsonObject {
	const common = {
		application_id: applicationId,
		version: 1,
		channel_id: channel.id,
		channel: channelObject(channel),
		locale,
		entitlements: [],
		attachment_size_limit: 10_485_760,
	};
	if (channel.guildId === undefined) {
		return {
			...common,
			user: userObject(user),
			app_permissions: '0',
			authorizing_integration_owners: { '0': '0' },
			context: 1,
		};
	}
	return {
		...common,
		guild_id: channel.guildId,
		guild: { id: channel.guildId, locale: 'en-US', features: [] },
		guild_locale: 'en-US',
		member: memberObject(user, { roles, permissions }),
		app_permissions: '2248473465835073',
		authorizing_integration_owners: { '0': channel.guildId },
		context: 0,
	};
}

export function memberObject(
	user: DiscordUser,
	{ roles, permissions }: { readonly roles: readonly string[]; readonly permissions?: string },
): JsonObject {
	return {
		user: userObject(user),
		roles,
		...(permissions === undefined ? {} : { permissions }),
		nick: null,
		avatar: null,
		flags: 0,
		joined_at: '2026-01-01T00:00:00.000000+00:00',
		deaf: false,
		mute: false,
		pending: false,
	};
}

/** The smallest GUILD_CREATE the platform's documents allow: what a client needs to call the guild available. */
export function guildObject(guild: {
	id: string;
	name: string;
	ownerId: string;
	channels: readonly DiscordChannel[];
	members: readonly DiscordUser[];
	/** ids of the roles beside the one that everyone has */
	roles: readonly string[];
	rolesOf: (user: DiscordUser) => readonly string[];
}): JsonObject {
	return {
		id: guild.id,
		name: guild.name,
		owner_id: guild.ownerId,
		member_count: guild.members.length,
		joined_at: '2026-01-01T00:00:00.000000+00:00',
		large: false,
		unavailable: false,
		roles: [guild.id, ...guild.roles].map((id, position) => ({
			id,
			name: id === guild.id ? '@everyone' : `role-${id}`,
			color: 0,
			colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
			hoist: false,
			position,
			permissions: id === guild.id ? '2248473465835073' : '0',
			managed: false,
			mentionable: false,
			flags: 0,
		})),
		channels: guild.channels.filter((one) => one.type === 0).map(channelObject),
		threads: guild.channels.filter((one) => one.type === 11).map(channelObject),
		members: guild.members.map((user) => memberObject(user, { roles: guild.rolesOf(user) })),
		emojis: [],
		stickers: [],
		features: [],
		presences: [],
		voice_states: [],
		stage_instances: [],
		guild_scheduled_events: [],
		soundboard_sounds: [],
		icon: null,
		splash: null,
		description: null,
		afk_timeout: 300,
		verification_level: 0,
		default_message_notifications: 0,
		explicit_content_filter: 0,
		mfa_level: 0,
		nsfw_level: 0,
		nsfw: false,
		premium_tier: 0,
		premium_progress_bar_enabled: false,
		system_channel_flags: 0,
		preferred_locale: 'en-US',
		application_id: null,
	};
}
