/** What people see in the server: channels and threads with their messages, edits and private notices. */

import { arrayOf, type JsonObject, objectOf, stringOf } from '../common/json.js';
import { ComponentType } from './component-limits.js';
import { Flag, type Pings } from './message-limits.js';

export interface DiscordUser {
	readonly id: string;
	readonly username: string;
	readonly bot: boolean;
}

export interface DiscordAttachment {
	readonly id: string;
	readonly filename: string;
	readonly contentType: string;
	readonly description: string;
	readonly bytes: Buffer;
}

export interface DiscordChannel {
	readonly id: string;
	readonly name: string;
	/** 0 text, 1 direct messages, 11 public thread */
	readonly type: 0 | 1 | 11;
	readonly guildId?: string;
	readonly parentId?: string;
	/** the person of a direct-message channel */
	readonly recipient?: string;
	/** whether the bot may write here */
	botCanSend: boolean;
	/** whether it may read what was written before */
	botCanRead: boolean;
	archived: boolean;
	locked: boolean;
}

export interface DiscordMessage {
	readonly id: string;
	readonly channelId: string;
	readonly guildId?: string;
	readonly author: DiscordUser;
	/** set when only this person sees the message */
	readonly visibleTo?: string;
	readonly origin: 'channel' | 'interaction' | 'person';
	readonly replyTo?: string;
	/** the interaction that it answers */
	readonly interaction?: { readonly id: string; readonly type: number; readonly user: string };
	readonly createdMs: number;
	content: string;
	embeds: JsonObject[];
	components: JsonObject[];
	flags: number;
	attachments: DiscordAttachment[];
	pings: Pings;
	/** earlier contents and embeds, oldest first */
	readonly edits: { content: string; embeds: JsonObject[]; components: JsonObject[] }[];
	deleted: boolean;
}

export const userObject = (user: DiscordUser): JsonObject => ({
	id: user.id,
	username: user.username,
	global_name: user.username,
	discriminator: '0',
	avatar: null,
	bot: user.bot,
});

/** The message as the API gives it. */
export function messageObject(message: DiscordMessage, origin: string): JsonObject {
	return {
		id: message.id,
		channel_id: message.channelId,
		type: message.replyTo === undefined ? 0 : 19,
		author: userObject(message.author),
		content: message.content,
		embeds: message.embeds,
		components: message.components,
		flags: message.flags,
		attachments: message.attachments.map((file) => ({
			id: file.id,
			filename: file.filename,
			description: file.description,
			content_type: file.contentType,
			size: file.bytes.length,
			url: `${origin}/attachments/${file.id}/${file.filename}`,
			proxy_url: `${origin}/attachments/${file.id}/${file.filename}`,
		})),
		mentions: [],
		mention_roles: [],
		mention_everyone: message.pings.everyone,
		pinned: false,
		tts: false,
		timestamp: new Date(message.createdMs).toISOString(),
		edited_timestamp: message.edits.length > 0 ? new Date(message.createdMs).toISOString() : null,
		...(message.replyTo === undefined
			? {}
			: { message_reference: { message_id: message.replyTo, channel_id: message.channelId } }),
		...(message.interaction === undefined ? {} : { interaction_metadata: metadataOf(message.interaction) }),
	};
}

/** By `resources/message.mdx`, "Message Interaction Metadata Object". */
function metadataOf({ id, type, user }: NonNullable<DiscordMessage['interaction']>): JsonObject {
	return { id, type, user: { id: user }, authorizing_integration_owners: {} };
}

function embedText(embed: JsonObject): string {
	const fields = arrayOf(embed.fields).map(objectOf);
	return [
		stringOf(objectOf(embed.author).name),
		stringOf(embed.title),
		stringOf(embed.description),
		...fields.map((field) => `${stringOf(field.name)}: ${stringOf(field.value)}`),
		stringOf(objectOf(embed.footer).text),
	]
		.filter(Boolean)
		.join('\n');
}

function componentText(component: JsonObject): string {
	switch (component.type) {
		case ComponentType.button:
			return `[${stringOf(component.label)}]`;
		case ComponentType.stringSelect:
			return `[menu: ${arrayOf(component.options)
				.map((option) => stringOf(objectOf(option).label))
				.join(' | ')}]`;
		case ComponentType.textDisplay:
			return stringOf(component.content);
		case ComponentType.row:
			return arrayOf(component.components)
				.map((one) => componentText(objectOf(one)))
				.join(' ');
		case ComponentType.section:
		case ComponentType.container: {
			const inside = arrayOf(component.components).map((one) => componentText(objectOf(one)));
			if (component.accessory !== undefined) inside.push(componentText(objectOf(component.accessory)));
			return inside.filter(Boolean).join('\n');
		}
		default:
			return '';
	}
}

/** The text people read: content, embeds, components, names of files. */
export function readable(message: DiscordMessage): string {
	if ((message.flags & Flag.loading) !== 0) return '(thinking)';
	return [
		message.content,
		...message.embeds.map(embedText),
		...message.components.map(componentText),
		...message.attachments.map((file) => `(file: ${file.filename})`),
	]
		.filter(Boolean)
		.join('\n');
}

export class Guild {
	readonly messages: DiscordMessage[] = [];
	readonly channels = new Map<string, DiscordChannel>();
	readonly users = new Map<string, DiscordUser>();

	find(channelId: string, messageId: string): DiscordMessage | undefined {
		return this.messages.find((one) => one.channelId === channelId && one.id === messageId && !one.deleted);
	}

	/** Messages that this person sees in the channel, oldest first. */
	seenBy(user: string, channelId: string): DiscordMessage[] {
		return this.messages.filter(
			(one) =>
				one.channelId === channelId &&
				!one.deleted &&
				(one.visibleTo === undefined || one.visibleTo === user),
		);
	}

	edit(
		message: DiscordMessage,
		change: Partial<Pick<DiscordMessage, 'content' | 'embeds' | 'components'>>,
	): void {
		const { content, embeds, components } = message;
		message.edits.push({ content, embeds, components });
		Object.assign(message, change);
	}
}
