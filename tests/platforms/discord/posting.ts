/**
 * Making and changing messages: the one place where bodies are judged, whether they come to a channel or as the
 * answer to an interaction. The nonce rule is that of discord-api-docs `resources/message.mdx`: with
 * `enforce_nonce` a repeated nonce of the same author within the past few minutes returns the first message.
 */

import type { Answer } from '../common/http.js';
import { arrayOf, isObject, type JsonObject, objectOf, stringOf } from '../common/json.js';
import { refusals } from './errors.js';
import type { FormErrors, Problem } from './form-errors.js';
import { checkMessage, Flag, isEmptyMessage, mentionRules, type Origin, pingsOf } from './message-limits.js';
import type { DiscordAttachment, DiscordMessage, DiscordUser, Guild } from './model.js';
import type { Snowflakes } from './snowflake.js';

const FILE_BYTES_MAX = 10 * 1024 * 1024;
const NONCE_REMEMBERED_MS = 5 * 60 * 1000;
/** flags a bot may set on a new message */
const SETTABLE = Flag.suppressEmbeds | Flag.ephemeral | Flag.silent | Flag.componentsV2;

export interface UploadedFile {
	/** n of `files[n]` */
	readonly index: string;
	readonly filename: string;
	readonly contentType: string;
	readonly bytes: Buffer;
}

export interface Target {
	readonly channelId: string;
	readonly guildId?: string | undefined;
	readonly author: DiscordUser;
	readonly origin: Origin;
	readonly visibleTo?: string | undefined;
	readonly interaction?: DiscordMessage['interaction'] | undefined;
}

export type Judged = (
	where: string,
	problems: readonly Problem[],
	payload: JsonObject,
	code?: number,
) => void;

type Outcome = { readonly refused: Answer } | { readonly message: DiscordMessage; readonly isNew: boolean };

export class Posting {
	private readonly nonces: { nonce: string; message: DiscordMessage }[] = [];

	constructor(
		private readonly guild: Guild,
		private readonly ids: Snowflakes,
		private readonly nowMs: () => number,
		private readonly judged: Judged,
	) {}

	private refuse(errors: FormErrors, where: string, body: JsonObject): Outcome {
		this.judged(where, errors.problems, body, 50035);
		return { refused: refusals.invalidForm(errors.body()) };
	}

	private attachments(body: JsonObject, files: readonly UploadedFile[]): DiscordAttachment[] {
		const described = arrayOf(body.attachments).map(objectOf);
		return files.map((file) => {
			const meta = described.find((one) => String(one.id) === file.index);
			return {
				id: this.ids.next(),
				filename: stringOf(meta?.filename, file.filename),
				contentType: file.contentType,
				description: stringOf(meta?.description),
				bytes: file.bytes,
			};
		});
	}

	/** An image without a description says nothing to those who do not see it. */
	private imageRules(where: string, attachments: readonly DiscordAttachment[], body: JsonObject): void {
		const bare = attachments.filter(
			(one) => /\.(png|jpe?g|gif|webp|svg)$/i.test(one.filename) && !one.description.trim(),
		);
		const problems = bare.map((one) => ({
			where: 'attachments',
			rule: `${one.filename} needs a description`,
		}));
		this.judged(where, problems, body);
	}

	create(target: Target, body: JsonObject, files: readonly UploadedFile[], where: string): Outcome {
		const errors = checkMessage(body, files.length);
		if (errors.any) return this.refuse(errors, where, body);
		if (isEmptyMessage(body, files.length)) {
			this.judged(where, [{ where: 'content', rule: 'must not be empty' }], body, 50006);
			return { refused: refusals.emptyMessage };
		}
		if (files.some((file) => file.bytes.length > FILE_BYTES_MAX)) {
			this.judged(where, [{ where: 'attachments', rule: 'must be at most 10 MiB each' }], body, 40005);
			return { refused: refusals.tooLarge };
		}
		const nonce = body.nonce === undefined || body.nonce === null ? undefined : String(body.nonce);
		if (nonce !== undefined && body.enforce_nonce === true) {
			const first = this.nonces.find(
				(one) => one.nonce === nonce && this.nowMs() - one.message.createdMs <= NONCE_REMEMBERED_MS,
			);
			if (first) return { message: first.message, isNew: false };
		}
		this.judged(where, mentionRules(body, target.origin), body);
		const attachments = this.attachments(body, files);
		this.imageRules(where, attachments, body);
		const { visibleTo, guildId, interaction } = target;
		const replyTo = objectOf(body.message_reference).message_id;
		const message: DiscordMessage = {
			id: this.ids.next(),
			channelId: target.channelId,
			...(guildId === undefined ? {} : { guildId }),
			author: target.author,
			...(visibleTo === undefined ? {} : { visibleTo }),
			origin: target.origin,
			...(typeof replyTo === 'string' ? { replyTo } : {}),
			...(interaction === undefined ? {} : { interaction }),
			createdMs: this.nowMs(),
			content: stringOf(body.content),
			embeds: arrayOf(body.embeds).map(objectOf),
			components: arrayOf(body.components).map(objectOf),
			flags: (Number(body.flags ?? 0) & SETTABLE) | (visibleTo === undefined ? 0 : Flag.ephemeral),
			attachments,
			pings: pingsOf(body, target.origin),
			edits: [],
			deleted: false,
		};
		this.guild.messages.push(message);
		if (nonce !== undefined) this.nonces.push({ nonce, message });
		return { message, isNew: true };
	}

	/** The "thinking" notice of a deferred answer. */
	placeholder(target: Target): DiscordMessage {
		const { visibleTo, guildId, interaction } = target;
		const message: DiscordMessage = {
			id: this.ids.next(),
			channelId: target.channelId,
			...(guildId === undefined ? {} : { guildId }),
			author: target.author,
			...(visibleTo === undefined ? {} : { visibleTo }),
			origin: 'interaction',
			...(interaction === undefined ? {} : { interaction }),
			createdMs: this.nowMs(),
			content: '',
			embeds: [],
			components: [],
			flags: Flag.loading | (visibleTo === undefined ? 0 : Flag.ephemeral),
			attachments: [],
			pings: { everyone: false, users: [], roles: [] },
			edits: [],
			deleted: false,
		};
		this.guild.messages.push(message);
		return message;
	}

	edit(
		message: DiscordMessage,
		body: JsonObject,
		files: readonly UploadedFile[],
		where: string,
		origin: Origin,
	): Outcome {
		const before = {
			content: message.content,
			embeds: message.embeds,
			components: message.components,
			flags: message.flags,
		};
		const errors = checkMessage(body, files.length, before);
		if (errors.any) return this.refuse(errors, where, body);
		const kept = Array.isArray(body.attachments)
			? message.attachments.filter((one) =>
					arrayOf(body.attachments).some((item) => objectOf(item).id === one.id),
				)
			: message.attachments;
		const attachments = [...kept, ...this.attachments(body, files)];
		const content = body.content === undefined ? message.content : stringOf(body.content);
		const embeds = body.embeds === undefined ? message.embeds : arrayOf(body.embeds).map(objectOf);
		const components =
			body.components === undefined ? message.components : arrayOf(body.components).map(objectOf);
		const after = { content, embeds, components, attachments };
		if (isEmptyMessage(after, attachments.length)) {
			this.judged(where, [{ where: 'content', rule: 'must not be empty' }], body, 50006);
			return { refused: refusals.emptyMessage };
		}
		// Read again with this body's allowed_mentions alone, whatever the message was first sent with.
		const allowed = isObject(body.allowed_mentions) ? { allowed_mentions: body.allowed_mentions } : {};
		this.judged(where, mentionRules({ content, components, ...allowed }, origin), body);
		this.imageRules(where, attachments, body);
		if ((message.flags & Flag.loading) !== 0) {
			message.flags &= ~Flag.loading;
			Object.assign(message, { content, embeds, components });
		} else {
			this.guild.edit(message, { content, embeds, components });
		}
		message.flags |= Number(body.flags ?? 0) & (Flag.componentsV2 | Flag.suppressEmbeds);
		message.attachments = attachments;
		message.pings = pingsOf({ content, components, ...allowed }, origin);
		return { message, isNew: false };
	}
}
