/**
 * REST API version 10: routes by discord-api-docs `resources/*.mdx` and `interactions/*.mdx`. Bot calls carry
 * `Authorization: Bot TOKEN`; interaction callbacks and webhooks are opened by the interaction's token instead.
 */

import type { Answer } from '../common/http.js';
import { arrayOf, type JsonObject, objectOf, stringOf } from '../common/json.js';
import { checkCommands } from './command-limits.js';
import { refusals } from './errors.js';
import { FormErrors } from './form-errors.js';
import type { GatewayEvent } from './gateway.js';
import { Intent } from './gateway.js';
import type { Interactions } from './interactions.js';
import {
	type DiscordChannel,
	type DiscordMessage,
	type DiscordUser,
	type Guild,
	messageObject,
	userObject,
} from './model.js';
import { channelObject } from './payloads.js';
import type { Judged, Posting, UploadedFile } from './posting.js';
import type { Snowflakes } from './snowflake.js';

const THREAD_ARCHIVE_MINUTES = [60, 1440, 4320, 10_080];

export interface RestCall {
	/** the route's name, as used for faults */
	readonly route: string;
	readonly method: string;
	readonly path: string;
	readonly body: unknown;
	readonly files: readonly UploadedFile[];
	readonly atMs: number;
	status: number;
}

interface RouteMatch {
	readonly name: string;
	readonly needsToken: boolean;
	readonly at: readonly string[];
}

const ROUTES: readonly (readonly [method: string, pattern: RegExp, name: string, needsToken: boolean])[] = [
	['GET', /^\/gateway\/bot$/, 'gateway.bot', true],
	['GET', /^\/users\/@me$/, 'users.me', true],
	['POST', /^\/users\/@me\/channels$/, 'dm.open', true],
	['GET', /^\/(?:oauth2\/)?applications\/@me$/, 'application.me', true],
	['GET', /^\/applications\/(\d+)(?:\/guilds\/(\d+))?\/commands$/, 'commands.get', true],
	['PUT', /^\/applications\/(\d+)(?:\/guilds\/(\d+))?\/commands$/, 'commands.put', true],
	['POST', /^\/applications\/(\d+)(?:\/guilds\/(\d+))?\/commands$/, 'commands.post', true],
	['DELETE', /^\/applications\/(\d+)(?:\/guilds\/(\d+))?\/commands\/(\d+)$/, 'commands.delete', true],
	['POST', /^\/interactions\/(\d+)\/([^/]+)\/callback$/, 'interaction.callback', false],
	['POST', /^\/webhooks\/(\d+)\/([^/]+)$/, 'webhook.followup', false],
	['GET', /^\/webhooks\/(\d+)\/([^/]+)\/messages\/([^/]+)$/, 'webhook.get', false],
	['PATCH', /^\/webhooks\/(\d+)\/([^/]+)\/messages\/([^/]+)$/, 'webhook.edit', false],
	['DELETE', /^\/webhooks\/(\d+)\/([^/]+)\/messages\/([^/]+)$/, 'webhook.delete', false],
	['GET', /^\/channels\/(\d+)$/, 'channel.get', true],
	['POST', /^\/channels\/(\d+)\/typing$/, 'channel.typing', true],
	['POST', /^\/channels\/(\d+)\/messages$/, 'channel.send', true],
	['GET', /^\/channels\/(\d+)\/messages$/, 'channel.messages', true],
	['GET', /^\/channels\/(\d+)\/messages\/(\d+)$/, 'channel.message', true],
	['PATCH', /^\/channels\/(\d+)\/messages\/(\d+)$/, 'channel.edit', true],
	['DELETE', /^\/channels\/(\d+)\/messages\/(\d+)$/, 'channel.delete', true],
	['POST', /^\/channels\/(\d+)(?:\/messages\/(\d+))?\/threads$/, 'thread.create', true],
];

export function matchRoute(method: string, path: string): RouteMatch | undefined {
	for (const [verb, pattern, name, needsToken] of ROUTES) {
		const match = verb === method ? pattern.exec(path) : null;
		if (match) return { name, needsToken, at: match.slice(1).map((one) => decodeURIComponent(one ?? '')) };
	}
	return undefined;
}

export interface RestSetting {
	readonly applicationId: string;
	readonly botToken: string;
	readonly bot: DiscordUser;
	readonly guild: Guild;
	readonly guildId: string;
	readonly ids: Snowflakes;
	readonly posting: Posting;
	readonly interactions: Interactions;
	readonly origin: () => string;
	readonly gatewayUrl: () => string;
	readonly sessionsRemaining: () => number;
	/** shards that the platform advises */
	readonly shards: number;
	readonly judged: Judged;
	readonly published: (message: DiscordMessage) => void;
	readonly dispatch: (event: GatewayEvent) => void;
}

export class Rest {
	/** commands by scope: `global` or a guild's id */
	readonly commands = new Map<string, JsonObject[]>();

	constructor(private readonly at: RestSetting) {}

	answer(
		route: RouteMatch,
		request: {
			method: string;
			authorization: string;
			query: URLSearchParams;
			body: unknown;
			files: UploadedFile[];
		},
	): Answer {
		if (route.needsToken && request.authorization !== `Bot ${this.at.botToken}`) return refusals.unauthorized;
		const [first = '', second = '', third = ''] = route.at;
		const body = objectOf(request.body);
		switch (route.name) {
			case 'gateway.bot':
				return {
					status: 200,
					body: {
						url: this.at.gatewayUrl(),
						shards: this.at.shards,
						session_start_limit: {
							total: 1000,
							remaining: this.at.sessionsRemaining(),
							reset_after: 0,
							max_concurrency: 1,
						},
					},
				};
			case 'users.me':
				return { status: 200, body: userObject(this.at.bot) };
			case 'application.me':
				return {
					status: 200,
					body: { id: this.at.applicationId, name: 'lugbook', description: '', bot_public: false, flags: 0 },
				};
			case 'dm.open':
				return this.openDm(stringOf(body.recipient_id));
			case 'commands.get':
				if (second !== '' && second !== this.at.guildId) return refusals.missingAccess;
				return { status: 200, body: (this.commands.get(second || 'global') ?? []).map(asGivenBack) };
			case 'commands.put':
				return this.putCommands(first, second, arrayOf(request.body).map(objectOf));
			case 'commands.post': {
				// A command under a name that is there takes its place (interactions/application-commands.mdx).
				const others = (this.commands.get(second || 'global') ?? []).filter(({ name }) => name !== body.name);
				const answer = this.putCommands(first, second, [...others, body]);
				return answer.status === 200 ? { status: 201, body: arrayOf(answer.body).at(-1) } : answer;
			}
			case 'commands.delete': {
				const before = this.commands.get(second || 'global') ?? [];
				const after = before.filter(({ id }) => id !== third);
				if (after.length === before.length) return refusals.notFound;
				this.commands.set(second || 'global', after);
				return { status: 204 };
			}
			case 'interaction.callback': {
				const withResponse = request.query.get('with_response') === 'true';
				return this.at.interactions.callback({ id: first, token: second, withResponse }, body, request.files);
			}
			case 'webhook.followup':
				return this.at.interactions.followUp(first, second, body, request.files);
			case 'webhook.get':
			case 'webhook.edit':
			case 'webhook.delete': {
				const path = { applicationId: first, token: second, messageId: third };
				return this.at.interactions.webhookMessage(request.method, path, body, request.files);
			}
			case 'channel.messages':
				return this.history(first, request.query);
			default:
				return this.inChannel(route.name, first, second, body, request.files);
		}
	}

	private openDm(userId: string): Answer {
		if (!this.at.guild.users.has(userId)) return refusals.notFound;
		return { status: 200, body: channelObject(this.dmChannel(userId)) };
	}

	/** The direct-message channel with a person, made on first use. */
	dmChannel(userId: string): DiscordChannel {
		const existing = [...this.at.guild.channels.values()].find((one) => one.recipient === userId);
		if (existing) return existing;
		const channel: DiscordChannel = {
			id: this.at.ids.next(),
			name: '',
			type: 1,
			recipient: userId,
			botCanSend: true,
			botCanRead: true,
			archived: false,
			locked: false,
		};
		this.at.guild.channels.set(channel.id, channel);
		return channel;
	}

	private putCommands(applicationId: string, guildId: string, commands: readonly JsonObject[]): Answer {
		if (applicationId !== this.at.applicationId) return refusals.missingAccess;
		if (guildId !== '' && guildId !== this.at.guildId) return refusals.missingAccess;
		const errors = new FormErrors();
		checkCommands(errors, commands);
		if (errors.any) {
			this.at.judged('commands.put', errors.problems, { commands }, 50035);
			return refusals.invalidForm(errors.body());
		}
		const kept = commands.map((command) => ({
			...command,
			id: command.id ?? this.at.ids.next(),
			application_id: applicationId,
			version: this.at.ids.next(),
			type: command.type ?? 1,
			default_member_permissions: command.default_member_permissions ?? null,
		}));
		this.commands.set(guildId || 'global', kept);
		return { status: 200, body: kept };
	}

	/** Newest first; private answers to interactions are in no history (resources/message.mdx). */
	private history(channelId: string, query: URLSearchParams): Answer {
		const channel = this.at.guild.channels.get(channelId);
		if (!channel) return refusals.unknownChannel;
		if (!channel.botCanRead) return refusals.missingAccess;
		const after = BigInt(query.get('after') ?? '0');
		const found = this.at.guild.messages.filter(
			({ channelId: at, id, visibleTo, deleted }) =>
				at === channelId && !deleted && visibleTo === undefined && BigInt(id) > after,
		);
		// With `after` the platform gives those next to it, still newest first.
		const chosen = found.slice(0, Number(query.get('limit') ?? 50)).reverse();
		return { status: 200, body: chosen.map((one) => messageObject(one, this.at.origin())) };
	}

	private inChannel(
		name: string,
		channelId: string,
		messageId: string,
		body: JsonObject,
		files: UploadedFile[],
	): Answer {
		const channel = this.at.guild.channels.get(channelId);
		if (!channel) return refusals.unknownChannel;
		if (name === 'channel.get') return { status: 200, body: channelObject(channel) };
		if (!channel.botCanSend) return refusals.missingPermissions;
		if (name === 'channel.typing') return { status: 204 };
		if (name === 'channel.send') return this.sendTo(channel, body, files);
		if (name === 'thread.create') return this.createThread(channel, messageId, body);
		const message = this.at.guild.find(channelId, messageId);
		if (!message || message.visibleTo !== undefined) return refusals.unknownMessage;
		if (name === 'channel.message') return { status: 200, body: messageObject(message, this.at.origin()) };
		if (message.author.id !== this.at.bot.id) {
			return name === 'channel.edit' ? refusals.cannotEditOther : refusals.missingPermissions;
		}
		if (name === 'channel.delete') {
			message.deleted = true;
			return { status: 204 };
		}
		const outcome = this.at.posting.edit(message, body, files, name, 'channel');
		if ('refused' in outcome) return outcome.refused;
		return { status: 200, body: messageObject(message, this.at.origin()) };
	}

	private sendTo(channel: DiscordChannel, body: JsonObject, files: UploadedFile[]): Answer {
		if (channel.archived && channel.locked) return refusals.threadArchived;
		const target = {
			channelId: channel.id,
			guildId: channel.guildId,
			author: this.at.bot,
			origin: 'channel' as const,
		};
		const outcome = this.at.posting.create(target, body, files, 'channel.send');
		if ('refused' in outcome) return outcome.refused;
		// Posting into an archived thread wakes it (discord-api-docs topics/threads).
		channel.archived = false;
		if (outcome.isNew) this.at.published(outcome.message);
		const answer = messageObject(outcome.message, this.at.origin());
		return { status: 200, body: { ...answer, ...(body.nonce === undefined ? {} : { nonce: body.nonce }) } };
	}

	private createThread(parent: DiscordChannel, messageId: string, body: JsonObject): Answer {
		const errors = new FormErrors();
		errors.length('name', body.name, 100, 1);
		const minutes = body.auto_archive_duration;
		if (minutes !== undefined && !THREAD_ARCHIVE_MINUTES.includes(Number(minutes))) {
			errors.add('auto_archive_duration', `Must be one of ${THREAD_ARCHIVE_MINUTES.join(', ')}`);
		}
		if (errors.any) {
			this.at.judged('thread.create', errors.problems, body, 50035);
			return refusals.invalidForm(errors.body());
		}
		if (messageId !== '' && !this.at.guild.find(parent.id, messageId)) return refusals.unknownMessage;
		const thread: DiscordChannel = {
			// A thread started from a message has that message's id.
			id: messageId === '' ? this.at.ids.next() : messageId,
			name: stringOf(body.name),
			type: 11,
			parentId: parent.id,
			...(parent.guildId === undefined ? {} : { guildId: parent.guildId }),
			botCanSend: true,
			botCanRead: true,
			archived: false,
			locked: false,
		};
		this.at.guild.channels.set(thread.id, thread);
		const data = channelObject(thread);
		this.at.dispatch({
			name: 'THREAD_CREATE',
			data: { ...data, newly_created: true },
			intent: Intent.guilds,
		});
		return { status: 201, body: data };
	}
}

/**
 * A command as the platform gives it back (interactions/application-commands.mdx, "Application Command Structure"):
 * with fields that nobody sent. That `false` and empty lists are left out is from memory.
 */
function asGivenBack(command: JsonObject): JsonObject {
	return {
		...withoutDefaults(command),
		dm_permission: true,
		contexts: null,
		integration_types: [0],
		nsfw: false,
		name_localizations: null,
		description_localizations: null,
	};
}

function withoutDefaults(option: JsonObject): JsonObject {
	const said = Object.entries(option).filter(
		([, value]) => value !== false && !(Array.isArray(value) && value.length === 0),
	);
	return Object.fromEntries(
		said.map(([name, value]) =>
			name === 'options'
				? [name, arrayOf(value).map((one) => withoutDefaults(objectOf(one)))]
				: [name, value],
		),
	);
}
