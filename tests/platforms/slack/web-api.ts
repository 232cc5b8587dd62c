/**
 * The Web API (docs.slack.dev/apis/web-api): every call is a POST whose body is a form (objects as JSON inside
 * its fields) or JSON; the answer is JSON with `ok`, and with `error` when `ok` is false. Errors and the scope a
 * method needs are those of each method's page (docs.slack.dev/reference/methods/NAME).
 */

import { arrayOf, type JsonObject, objectOf, parseJson, stringOf } from '../common/json.js';
import { judgeMessage, type Verdict } from './limits.js';
import type { SlackFile, SlackMessage, Workspace } from './model.js';
import type { OpenView, Views } from './views.js';

/** Methods of the stand-in with the bot scopes of which one is needed (none: empty). */
const SCOPES: Record<string, readonly string[]> = {
	'auth.test': [],
	'chat.postMessage': ['chat:write'],
	'chat.update': ['chat:write'],
	'chat.delete': ['chat:write'],
	'chat.getPermalink': [],
	'chat.postEphemeral': ['chat:write'],
	'views.open': [],
	'views.push': [],
	'views.update': [],
	'views.publish': [],
	'files.getUploadURLExternal': ['files:write'],
	'files.completeUploadExternal': ['files:write'],
	'users.info': ['users:read'],
	'conversations.info': ['channels:read', 'groups:read', 'im:read', 'mpim:read'],
	// docs.slack.dev/reference/methods/conversations.history: by kind of conversation, checked in `history`
	'conversations.history': ['channels:history', 'groups:history', 'im:history', 'mpim:history'],
	'conversations.replies': ['channels:history', 'groups:history', 'im:history', 'mpim:history'],
	'usergroups.users.list': ['usergroups:read'],
	'conversations.open': ['im:write', 'mpim:write', 'channels:manage', 'groups:write'],
};

export interface SlackCall {
	readonly method: string;
	readonly token: string;
	/** the arguments with JSON inside form fields parsed (blocks, view, files ...) */
	readonly args: JsonObject;
	readonly atMs: number;
	answer: JsonObject;
}

export interface SlackChannel {
	readonly id: string;
	readonly name: string;
	readonly isIm: boolean;
	/** the person of a direct-message channel */
	readonly im?: string;
	botIsMember: boolean;
	isArchived: boolean;
}

export interface WebApiSetting {
	readonly teamId: string;
	readonly appId: string;
	readonly botUserId: string;
	readonly botToken: string;
	readonly appToken: string;
	readonly clientId: string;
	readonly clientSecret: string;
	/** bot tokens of the workspaces that have the app, by workspace */
	readonly teamTokens: ReadonlyMap<string, string>;
	/** scopes the bot token carries; all when absent */
	readonly scopes?: readonly string[];
	readonly workspace: Workspace;
	readonly views: Views;
	readonly channels: Map<string, SlackChannel>;
	readonly users: Map<string, { id: string; name: string; tz: string; locale: string }>;
	readonly files: Map<string, SlackFile>;
	/** members of user groups by the group's id */
	readonly groups: Map<string, Set<string>>;
	readonly nowMs: () => number;
	/** messages on a page of a channel's history, whatever is asked for */
	readonly pageMax: () => number;
	/** origin of this server, for addresses it hands out */
	readonly origin: () => string;
	readonly socketUrl: () => string;
	readonly judged: (verdict: Verdict, where: string, payload: JsonObject) => void;
}

const failure = (error: string, more: JsonObject = {}): JsonObject => ({ ok: false, error, ...more });

/** Arguments from a request body; fields that hold JSON objects or arrays are parsed. */
export function decodeArguments(contentType: string, body: string): JsonObject {
	if (contentType.startsWith('application/json')) return objectOf(parseJson(body));
	const args: JsonObject = {};
	for (const [name, value] of new URLSearchParams(body)) {
		const looksStructured =
			/^[[{]/.test(value) && ['blocks', 'view', 'files', 'attachments', 'metadata'].includes(name);
		args[name] = looksStructured ? (parseJson(value) ?? value) : value;
	}
	return args;
}

export class WebApi {
	readonly calls: SlackCall[] = [];
	/** codes of people who allowed the app and are on their way back */
	readonly codes = new Map<
		string,
		{ readonly team: string; readonly user: string; readonly redirectUri: string }
	>();
	private fileCounter = 0;

	constructor(private readonly at: WebApiSetting) {}

	call(method: string, token: string, args: JsonObject): JsonObject {
		const call: SlackCall = { method, token, args, atMs: this.at.nowMs(), answer: {} };
		this.calls.push(call);
		call.answer = this.refusal(method, token) ?? this.run(method, args, token);
		return call.answer;
	}

	private refusal(method: string, token: string): JsonObject | undefined {
		if (method === 'oauth.v2.access') return undefined;
		if (method === 'apps.connections.open') {
			if (token === this.at.appToken) return undefined;
			return failure(
				token === this.at.botToken ? 'not_allowed_token_type' : token ? 'invalid_auth' : 'not_authed',
			);
		}
		const needed = SCOPES[method];
		if (!needed) return failure('unknown_method', { req_method: method });
		if (token === '') return failure('not_authed');
		if (this.teamOf(token) === undefined) return failure('invalid_auth');
		const { scopes } = this.at;
		if (scopes && needed.length > 0 && !needed.some((one) => scopes.includes(one))) {
			return failure('missing_scope', { needed: needed[0], provided: scopes.join(',') });
		}
		return undefined;
	}

	private run(method: string, args: JsonObject, token: string): JsonObject {
		switch (method) {
			case 'auth.test':
				return {
					ok: true,
					url: 'https://workshop.example/',
					team: 'Workshop',
					user: 'lugbook',
					team_id: this.teamOf(token),
					user_id: this.at.botUserId,
					bot_id: 'B01',
					is_enterprise_install: false,
				};
			case 'apps.connections.open':
				return { ok: true, url: this.at.socketUrl() };
			case 'chat.postMessage':
			case 'chat.postEphemeral':
				return this.post(method, args);
			case 'chat.update':
				return this.update(args);
			case 'chat.getPermalink':
				return this.permalink(args);
			case 'chat.delete':
				return this.remove(args);
			case 'views.open':
			case 'views.push':
				return this.viewAnswer(
					this.at.views.open(stringOf(args.trigger_id), objectOf(args.view)),
					method,
					args,
				);
			case 'views.update': {
				const hash = args.hash === undefined ? undefined : stringOf(args.hash);
				return this.viewAnswer(
					this.at.views.update(stringOf(args.view_id), hash, objectOf(args.view)),
					method,
					args,
				);
			}
			case 'views.publish': {
				const user = stringOf(args.user_id);
				if (!this.at.users.has(user)) return failure('user_not_found');
				const { verdict, id } = this.at.views.publish(user, objectOf(args.view));
				this.at.judged(verdict, method, args);
				if (verdict.error) return this.withDetails(verdict);
				return { ok: true, view: { id, type: 'home' } };
			}
			case 'files.getUploadURLExternal':
				return this.announceFile(args);
			case 'files.completeUploadExternal':
				return this.completeFiles(args);
			case 'users.info': {
				const user = this.at.users.get(stringOf(args.user));
				if (!user) return failure('user_not_found');
				const profile = { real_name: user.name, display_name: user.name };
				return { ok: true, user: { ...user, real_name: user.name, is_bot: false, profile } };
			}
			case 'conversations.info': {
				const channel = this.at.channels.get(stringOf(args.channel));
				if (!channel) return failure('channel_not_found');
				return { ok: true, channel: this.channelObject(channel) };
			}
			case 'conversations.history':
			case 'conversations.replies':
				return this.history(method, args);
			case 'usergroups.users.list': {
				const group = this.at.groups.get(stringOf(args.usergroup));
				return group ? { ok: true, users: [...group] } : failure('no_such_subteam');
			}
			case 'conversations.open': {
				const user = stringOf(args.users);
				if (!this.at.users.has(user)) return failure('user_not_found');
				const id = `D${user}`;
				if (!this.at.channels.has(id)) {
					this.at.channels.set(id, {
						id,
						name: id,
						isIm: true,
						im: user,
						botIsMember: true,
						isArchived: false,
					});
				}
				return { ok: true, channel: { id } };
			}
			case 'oauth.v2.access':
				return this.exchange(args);
			default:
				return failure('unknown_method', { req_method: method });
		}
	}

	private teamOf(token: string): string | undefined {
		return [...this.at.teamTokens].find(([, own]) => own === token)?.[0];
	}

	/** docs.slack.dev/reference/methods/oauth.v2.access: a code is good once, for the app and the address it was given to. */
	private exchange(args: JsonObject): JsonObject {
		const isOurs = args.client_id === this.at.clientId && args.client_secret === this.at.clientSecret;
		if (!isOurs)
			return failure(args.client_id === this.at.clientId ? 'bad_client_secret' : 'invalid_client_id');
		const code = stringOf(args.code);
		const allowed = this.codes.get(code);
		if (!allowed) return failure('invalid_code');
		this.codes.delete(code);
		if (args.redirect_uri !== allowed.redirectUri) return failure('bad_redirect_uri');
		return {
			ok: true,
			access_token: this.at.teamTokens.get(allowed.team),
			token_type: 'bot',
			scope: (this.at.scopes ?? ['chat:write', 'commands']).join(','),
			bot_user_id: this.at.botUserId,
			app_id: this.at.appId,
			team: { id: allowed.team, name: `Workshop ${allowed.team}` },
			authed_user: { id: allowed.user },
			enterprise: null,
			is_enterprise_install: false,
		};
	}

	private channelObject(channel: SlackChannel): JsonObject {
		return {
			id: channel.id,
			name: channel.name,
			is_channel: !channel.isIm,
			is_im: channel.isIm,
			is_member: channel.botIsMember,
			is_archived: channel.isArchived,
			...(channel.im === undefined ? {} : { user: channel.im }),
		};
	}

	private withDetails(verdict: Verdict): JsonObject {
		const messages = verdict.problems.map((one) => `[ERROR] ${one.rule} [json-pointer:${one.where}]`);
		return failure(verdict.error ?? 'invalid_arguments', { response_metadata: { messages } });
	}

	private viewAnswer(
		outcome: { error: string; verdict?: Verdict } | { opened: OpenView },
		method: string,
		args: JsonObject,
	): JsonObject {
		if ('opened' in outcome) return { ok: true, view: { ...outcome.opened.view, hash: outcome.opened.hash } };
		if (!outcome.verdict) return failure(outcome.error);
		this.at.judged(outcome.verdict, method, args);
		return this.withDetails(outcome.verdict);
	}

	/**
	 * Newest first for a channel, oldest first for a thread; private notices are in neither. `oldest` leaves out what is
	 * earlier, but for a thread's first message; `cursor` goes on where `next_cursor` says
	 * (docs.slack.dev/reference/methods/conversations.history, conversations.replies).
	 */
	private history(method: string, args: JsonObject): JsonObject {
		const channel = this.channelOf(args);
		if (!('botIsMember' in channel)) return channel;
		const needed = channel.isIm ? 'im:history' : 'channels:history';
		const { scopes } = this.at;
		if (scopes && !scopes.includes(needed)) {
			return failure('missing_scope', { needed, provided: scopes.join(',') });
		}
		const id = channel.id as string;
		const oldestS = Number(args.oldest ?? 0);
		const ts = stringOf(args.ts);
		const seen = this.at.workspace.messages.filter(
			(one) =>
				one.channel === id &&
				!one.deleted &&
				one.visibleTo === undefined &&
				(Number(one.ts) > oldestS || one.ts === ts),
		);
		const chosen =
			method === 'conversations.replies'
				? seen.filter((one) => one.ts === ts || one.threadTs === ts)
				: seen.filter((one) => one.threadTs === undefined).toReversed();
		const limit = Math.min(Number(args.limit ?? 100), this.at.pageMax());
		const from = args.cursor === undefined ? 0 : Number(stringOf(args.cursor).replace('from:', ''));
		if (Number.isNaN(from)) return failure('invalid_cursor');
		const hasMetadata = args.include_all_metadata === true || args.include_all_metadata === 'true';
		const messages = chosen.slice(from, from + limit).map((one) => ({
			...this.messageAnswer(one),
			...(hasMetadata && one.metadata !== undefined ? { metadata: one.metadata } : {}),
		}));
		const hasMore = chosen.length > from + limit;
		const next = hasMore ? { response_metadata: { next_cursor: `from:${from + limit}` } } : {};
		return { ok: true, messages, has_more: hasMore, ...next };
	}

	private channelOf(args: JsonObject): SlackChannel | JsonObject {
		const id = stringOf(args.channel);
		// A user's id in place of a channel's means the direct messages with that person.
		const channel = this.at.channels.get(id) ?? this.at.channels.get(`D${id}`);
		if (!channel) return failure('channel_not_found');
		if (channel.isArchived) return failure('is_archived');
		if (!channel.botIsMember) return failure('not_in_channel');
		return channel;
	}

	private post(method: string, args: JsonObject): JsonObject {
		const channel = this.channelOf(args);
		if (!('botIsMember' in channel)) return channel;
		const verdict = judgeMessage(args);
		this.at.judged(verdict, method, args);
		if (verdict.error) return this.withDetails(verdict);
		const threadTs = args.thread_ts === undefined ? undefined : stringOf(args.thread_ts);
		if (
			threadTs !== undefined &&
			this.at.workspace.messages.findLast((one) => one.ts === threadTs) === undefined
		) {
			return failure('thread_not_found');
		}
		const ephemeral = method === 'chat.postEphemeral';
		if (ephemeral && !this.at.users.has(stringOf(args.user))) return failure('user_not_in_channel');
		const message = this.at.workspace.post({
			channel: channel.id as string,
			user: this.at.botUserId,
			fromBot: true,
			via: method,
			text: stringOf(args.text),
			blocks: arrayOf(args.blocks).map(objectOf),
			threadTs,
			visibleTo: ephemeral ? stringOf(args.user) : undefined,
			...(args.metadata === undefined ? {} : { metadata: objectOf(args.metadata) }),
		});
		if (ephemeral) return { ok: true, message_ts: message.ts };
		return { ok: true, channel: channel.id, ts: message.ts, message: this.messageAnswer(message) };
	}

	private messageAnswer(message: SlackMessage): JsonObject {
		return {
			type: 'message',
			user: message.user,
			bot_id: 'B01',
			ts: message.ts,
			text: message.text,
			blocks: message.blocks,
			...(message.threadTs === undefined ? {} : { thread_ts: message.threadTs }),
		};
	}

	/** A bot's own, public message; a private notice can't be changed by its ts. */
	private ownMessage(args: JsonObject, otherwise: string): SlackMessage | JsonObject {
		const channel = this.channelOf(args);
		if (!('botIsMember' in channel)) return channel;
		const message = this.at.workspace.find(channel.id as string, stringOf(args.ts));
		if (!message || message.visibleTo !== undefined) return failure('message_not_found');
		return message.fromBot ? message : failure(otherwise);
	}

	private update(args: JsonObject): JsonObject {
		const message = this.ownMessage(args, 'cant_update_message');
		if (!('edits' in message)) return message;
		const verdict = judgeMessage(args);
		this.at.judged(verdict, 'chat.update', args);
		if (verdict.error) return this.withDetails(verdict);
		this.at.workspace.edit(message as SlackMessage, stringOf(args.text), arrayOf(args.blocks).map(objectOf));
		return { ok: true, channel: message.channel, ts: message.ts, text: message.text };
	}

	/** docs.slack.dev/reference/methods/chat.getPermalink; the address's form, and that it needs no scope, from memory. */
	private permalink(args: JsonObject): JsonObject {
		const channel = this.channelOf(args);
		if (!('botIsMember' in channel)) return channel;
		const id = channel.id as string;
		const message = this.at.workspace.find(id, stringOf(args.message_ts));
		if (!message || message.visibleTo !== undefined) return failure('message_not_found');
		const thread = message.threadTs === undefined ? '' : `?thread_ts=${message.threadTs}&cid=${id}`;
		const permalink = `https://workshop.example/archives/${id}/p${message.ts.replace('.', '')}${thread}`;
		return { ok: true, channel: id, permalink };
	}

	private remove(args: JsonObject): JsonObject {
		const message = this.ownMessage(args, 'cant_delete_message');
		if (!('edits' in message)) return message;
		(message as SlackMessage).deleted = true;
		return { ok: true, channel: message.channel, ts: message.ts };
	}

	private announceFile(args: JsonObject): JsonObject {
		const length = Number(args.length);
		const filename = stringOf(args.filename);
		const altText = args.alt_text === undefined ? undefined : stringOf(args.alt_text);
		if (filename === '' || !Number.isInteger(length) || length <= 0) return failure('invalid_arguments');
		if (altText !== undefined && altText.length > 1000) {
			const problems = [
				{ where: 'alt_text', rule: `must be at most 1000 characters (got ${altText.length})` },
			];
			this.at.judged({ error: 'alt_text_too_large', problems }, 'files.getUploadURLExternal', args);
			return failure('alt_text_too_large');
		}
		if (/\.(png|jpe?g|gif|webp)$/i.test(filename) && !altText?.trim()) {
			const problems = [{ where: 'alt_text', rule: 'an image needs a text for those who do not see it' }];
			this.at.judged({ problems }, 'files.getUploadURLExternal', args);
		}
		const id = `F${String(++this.fileCounter).padStart(4, '0')}`;
		const uploadUrl = `${this.at.origin()}/upload/${id}`;
		const file: SlackFile = { id, filename, announcedLength: length, uploadUrl, completed: false };
		this.at.files.set(id, altText === undefined ? file : { ...file, altText });
		return { ok: true, upload_url: uploadUrl, file_id: id };
	}

	private completeFiles(args: JsonObject): JsonObject {
		const asked = arrayOf(args.files).map(objectOf);
		if (asked.length === 0) return failure('invalid_arguments');
		const files: SlackFile[] = [];
		for (const one of asked) {
			const file = this.at.files.get(stringOf(one.id));
			if (!file?.bytes || file.completed) return failure('file_not_found');
			file.title = stringOf(one.title, file.filename);
			files.push(file);
		}
		if (args.channel_id !== undefined) {
			const channel = this.channelOf({ channel: args.channel_id });
			if (!('botIsMember' in channel)) return channel;
			const text = stringOf(args.initial_comment);
			if (text !== '') this.at.judged(judgeMessage({ text }), 'files.completeUploadExternal', args);
			this.at.workspace.post({
				channel: channel.id as string,
				user: this.at.botUserId,
				fromBot: true,
				via: 'files.completeUploadExternal',
				text,
				threadTs: args.thread_ts === undefined ? undefined : stringOf(args.thread_ts),
				files,
			});
		}
		for (const file of files) file.completed = true;
		return {
			ok: true,
			files: files.map((file) => ({ id: file.id, title: file.title, name: file.filename })),
		};
	}

	/** Takes the bytes of an announced file. */
	upload(id: string, bytes: Buffer): { status: number; text: string } {
		const file = this.at.files.get(id);
		if (!file) return { status: 404, text: 'no such upload' };
		if (bytes.length !== file.announcedLength) {
			const rule = `announced ${file.announcedLength} bytes, got ${bytes.length}`;
			this.at.judged({ error: 'length_mismatch', problems: [{ where: 'length', rule }] }, 'upload', { id });
			return { status: 400, text: 'length mismatch' };
		}
		file.bytes = bytes;
		return { status: 200, text: `OK - ${bytes.length}` };
	}
}
