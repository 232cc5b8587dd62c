/**
 * Payloads as the platform sends them: slash commands (docs.slack.dev/interactivity/implementing-slash-commands),
 * interactions (docs.slack.dev/reference/interaction-payloads) and events (docs.slack.dev/apis/events-api).
 */

import { arrayOf, type JsonObject, objectOf, stringOf } from '../common/json.js';
import type { SlackMessage } from './model.js';

type EnvelopeType = 'slash_commands' | 'interactive' | 'events_api';

/** One thing to tell the bot. Delivering the same object again is what the platform's retry does. */
export interface Delivery {
	readonly type: EnvelopeType;
	readonly payload: JsonObject;
}

export interface Place {
	readonly teamId: string;
	readonly appId: string;
	readonly botUserId: string;
	readonly user: string;
	readonly channel: string;
}

export function slashCommand(
	place: Place,
	command: string,
	text: string,
	ids: { triggerId: string; responseUrl: string },
): Delivery {
	return {
		type: 'slash_commands',
		payload: {
			token: 'verification-token-is-deprecated',
			team_id: place.teamId,
			team_domain: 'workshop',
			channel_id: place.channel,
			channel_name: place.channel.startsWith('D') ? 'directmessage' : place.channel.toLowerCase(),
			user_id: place.user,
			user_name: place.user.toLowerCase(),
			command,
			text,
			api_app_id: place.appId,
			is_enterprise_install: 'false',
			response_url: ids.responseUrl,
			trigger_id: ids.triggerId,
		},
	};
}

function who(place: Place): JsonObject {
	return {
		user: {
			id: place.user,
			username: place.user.toLowerCase(),
			name: place.user.toLowerCase(),
			team_id: place.teamId,
		},
		team: { id: place.teamId, domain: 'workshop' },
		api_app_id: place.appId,
		is_enterprise_install: false,
		enterprise: null,
		token: 'verification-token-is-deprecated',
	};
}

export function messageObject(message: SlackMessage, place: Place): JsonObject {
	return {
		type: 'message',
		user: message.user,
		...(message.fromBot ? { bot_id: 'B01', app_id: place.appId } : {}),
		ts: message.ts,
		text: message.text,
		blocks: message.blocks,
		team: place.teamId,
		...(message.threadTs === undefined ? {} : { thread_ts: message.threadTs }),
	};
}

export function blockAction(
	place: Place,
	action: JsonObject,
	source: { message: SlackMessage } | { view: JsonObject },
	ids: { triggerId: string; responseUrl: string; actionTs: string },
): Delivery {
	const base = {
		type: 'block_actions',
		...who(place),
		trigger_id: ids.triggerId,
		actions: [{ ...action, action_ts: ids.actionTs }],
	};
	if ('view' in source) {
		// A button in a modal has neither a channel nor a response_url.
		return {
			type: 'interactive',
			payload: { ...base, container: { type: 'view', view_id: source.view.id }, view: source.view },
		};
	}
	const { message } = source;
	const ephemeral = message.visibleTo !== undefined;
	return {
		type: 'interactive',
		payload: {
			...base,
			container: {
				type: 'message',
				message_ts: message.ts,
				channel_id: message.channel,
				is_ephemeral: ephemeral,
				...(message.threadTs === undefined ? {} : { thread_ts: message.threadTs }),
			},
			channel: { id: message.channel, name: message.channel.toLowerCase() },
			// The platform gives no message object for a private notice.
			...(ephemeral ? {} : { message: messageObject(message, place) }),
			state: { values: {} },
			response_url: ids.responseUrl,
		},
	};
}

/** An element's state, made from the plain value a test gives for it. */
function inputState(element: JsonObject, value: string): JsonObject {
	const type = stringOf(element.type);
	const options = [
		...arrayOf(element.options),
		...arrayOf(element.option_groups).flatMap((group) => arrayOf(objectOf(group).options)),
	].map(objectOf);
	if (type === 'static_select' || type === 'radio_buttons' || type === 'external_select') {
		const option = options.find((one) => one.value === value);
		if (!option && type !== 'external_select') {
			throw new Error(`the form offers no option ${JSON.stringify(value)} in ${stringOf(element.action_id)}`);
		}
		return { type, selected_option: option ?? { text: { type: 'plain_text', text: value }, value } };
	}
	if (type === 'checkboxes') {
		const wanted = value.split(',');
		return { type, selected_options: options.filter((one) => wanted.includes(stringOf(one.value))) };
	}
	return { type, value: value === '' ? null : value };
}

/**
 * @param values block_id -> what the person enters; blocks not named keep their initial value
 */
export function viewSubmission(
	place: Place,
	view: JsonObject,
	values: Record<string, string>,
	triggerId: string,
): Delivery {
	const state: Record<string, Record<string, JsonObject>> = {};
	const known = new Set<string>();
	for (const block of arrayOf(view.blocks).map(objectOf)) {
		if (block.type !== 'input') continue;
		const element = objectOf(block.element);
		const blockId = stringOf(block.block_id);
		known.add(blockId);
		const initial = element.initial_value ?? objectOf(element.initial_option).value;
		const entered = values[blockId] ?? stringOf(initial);
		if (entered === '' && block.optional !== true) {
			throw new Error(`the platform would not submit the form: ${blockId} is required and empty`);
		}
		const chosen = entered === '' ? { type: element.type, value: null } : inputState(element, entered);
		state[blockId] = { [stringOf(element.action_id)]: chosen };
	}
	for (const blockId of Object.keys(values)) {
		if (!known.has(blockId))
			throw new Error(`the form has no field ${blockId}; it has ${[...known].join(', ')}`);
	}
	return {
		type: 'interactive',
		payload: {
			type: 'view_submission',
			...who(place),
			trigger_id: triggerId,
			view: { ...view, state: { values: state } },
			response_urls: [],
		},
	};
}

export function blockSuggestion(
	place: Place,
	query: { actionId: string; blockId: string; value: string },
): Delivery {
	return {
		type: 'interactive',
		payload: {
			type: 'block_suggestion',
			...who(place),
			action_id: query.actionId,
			block_id: query.blockId,
			value: query.value,
			container: { type: 'message', channel_id: place.channel },
			channel: { id: place.channel, name: place.channel.toLowerCase() },
		},
	};
}

export function event(
	place: Place,
	inner: JsonObject,
	ids: { eventId: string; eventTimeS: number },
): Delivery {
	return {
		type: 'events_api',
		payload: {
			token: 'verification-token-is-deprecated',
			team_id: place.teamId,
			api_app_id: place.appId,
			event: inner,
			type: 'event_callback',
			event_id: ids.eventId,
			event_time: ids.eventTimeS,
			authorizations: [
				{
					enterprise_id: null,
					team_id: place.teamId,
					user_id: place.botUserId,
					is_bot: true,
					is_enterprise_install: false,
				},
			],
			is_ext_shared_channel: false,
			event_context: `4-${ids.eventId}`,
		},
	};
}

/**
 * A person's text as the platform hands it over: `&`, `<`, `>` as entities and the three mass mentions as
 * `<!channel>`, `<!here>`, `<!everyone>` (docs.slack.dev/messaging/formatting-message-text).
 */
export function asTransmitted(typed: string): string {
	return typed
		.replaceAll('&', '&amp;')
		.replaceAll('<', '&lt;')
		.replaceAll('>', '&gt;')
		.replace(/(^|[^\w])@(channel|here|everyone)\b/g, '$1<!$2>');
}
