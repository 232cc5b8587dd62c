/** What people see in the workspace: channels with their messages, threads, edits and private notices. */

import { arrayOf, type JsonObject, objectOf, stringOf } from '../common/json.js';

export interface SlackMessage {
	readonly channel: string;
	/** the message's id within its channel, as the platform's decimal string of seconds */
	readonly ts: string;
	readonly threadTs?: string;
	readonly user: string;
	readonly fromBot: boolean;
	/** set when only this person sees the message */
	readonly visibleTo?: string;
	/** how it came: a Web API method, `response_url`, `ack`, or `person` */
	readonly via: string;
	text: string;
	blocks: JsonObject[];
	/** earlier states, oldest first */
	readonly edits: { text: string; blocks: JsonObject[] }[];
	readonly files: SlackFile[];
	/** for apps alone, as given with the post */
	readonly metadata?: JsonObject;
	deleted: boolean;
}

export interface SlackFile {
	readonly id: string;
	readonly filename: string;
	readonly announcedLength: number;
	readonly altText?: string;
	title?: string;
	bytes?: Buffer;
	uploadUrl: string;
	channel?: string;
	threadTs?: string;
	completed: boolean;
}

export type NewMessage = Pick<SlackMessage, 'channel' | 'user' | 'fromBot' | 'via' | 'text'> & {
	blocks?: JsonObject[];
	threadTs?: string | undefined;
	visibleTo?: string | undefined;
	files?: SlackFile[];
	metadata?: JsonObject;
};

export class Workspace {
	readonly messages: SlackMessage[] = [];
	private lastTs = 0;

	constructor(private readonly nowMs: () => number) {}

	/** A new id: later than every one before, whatever the clock does. */
	nextTs(): string {
		this.lastTs = Math.max(this.lastTs + 1, this.nowMs() * 1000);
		return `${Math.floor(this.lastTs / 1e6)}.${String(this.lastTs % 1e6).padStart(6, '0')}`;
	}

	post({ threadTs, visibleTo, blocks = [], files = [], ...rest }: NewMessage): SlackMessage {
		const message: SlackMessage = {
			...rest,
			...(threadTs === undefined ? {} : { threadTs }),
			...(visibleTo === undefined ? {} : { visibleTo }),
			blocks,
			files,
			ts: this.nextTs(),
			edits: [],
			deleted: false,
		};
		this.messages.push(message);
		return message;
	}

	edit(message: SlackMessage, text: string, blocks: JsonObject[]): void {
		message.edits.push({ text: message.text, blocks: message.blocks });
		message.text = text;
		message.blocks = blocks;
	}

	find(channel: string, ts: string): SlackMessage | undefined {
		return this.messages.findLast((one) => one.channel === channel && one.ts === ts && !one.deleted);
	}

	/** Messages that this person sees in the channel, oldest first, threads included. */
	seenBy(user: string, channel: string): SlackMessage[] {
		return this.messages.filter(
			(one) =>
				one.channel === channel && !one.deleted && (one.visibleTo === undefined || one.visibleTo === user),
		);
	}

	/** A thread's first message and its replies. */
	thread(channel: string, threadTs: string): SlackMessage[] {
		return this.messages.filter(
			(one) => one.channel === channel && !one.deleted && (one.ts === threadTs || one.threadTs === threadTs),
		);
	}
}

/** Entities are undone where the platform reads mrkdwn, and stand as they are everywhere else. */
function unescaped(text: string): string {
	return text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');
}

function textOf(value: unknown): string {
	const { type, text } = objectOf(value);
	return type === 'mrkdwn' ? unescaped(stringOf(text)) : stringOf(text);
}

function elementText(element: JsonObject): string {
	if (element.type === 'button') return `[${textOf(element.text)}]`;
	if (element.type === 'image') return `(image: ${stringOf(element.alt_text)})`;
	if (element.type === 'mrkdwn' || element.type === 'plain_text') return textOf(element);
	const options = arrayOf(element.options).map((option) => textOf(objectOf(option).text));
	const shown = [textOf(element.placeholder), ...options].filter(Boolean).join(' | ');
	return `[${stringOf(element.type)}: ${shown}]`;
}

/** What stands on the screen for a part of rich text. */
function richText(part: JsonObject): string {
	const inside = arrayOf(part.elements).map(objectOf);
	if (part.type === 'rich_text_list') return inside.map(richText).join('\n');
	return inside
		.map((one) => (one.type === 'broadcast' ? `@${one.range}` : stringOf(one.text, stringOf(one.url))))
		.join('');
}

function blockText(block: JsonObject): string {
	switch (block.type) {
		case 'section': {
			const fields = arrayOf(block.fields).map(textOf);
			const accessory = block.accessory === undefined ? [] : [elementText(objectOf(block.accessory))];
			return [textOf(block.text), ...fields, ...accessory].filter(Boolean).join('\n');
		}
		case 'header':
			return textOf(block.text);
		case 'context':
		case 'actions':
			return arrayOf(block.elements)
				.map((element) => elementText(objectOf(element)))
				.join(' ');
		case 'input':
			return `${textOf(block.label)}: ${elementText(objectOf(block.element))}`;
		case 'image':
			return `(image: ${stringOf(block.alt_text)})`;
		case 'markdown':
			return unescaped(stringOf(block.text));
		case 'rich_text':
			return arrayOf(block.elements)
				.map((part) => richText(objectOf(part)))
				.join('\n');
		case 'table':
			return arrayOf(block.rows)
				.map((row) =>
					arrayOf(row)
						.map((cell) => stringOf(objectOf(cell).text))
						.join(' | '),
				)
				.join('\n');
		default:
			return '';
	}
}

/** The text people read: the blocks where there are any, else the message's text. */
export function readable(message: { text: string; blocks: readonly JsonObject[] }): string {
	if (message.blocks.length === 0) return unescaped(message.text);
	return message.blocks.map(blockText).filter(Boolean).join('\n');
}

/** The interactive elements of these blocks with the block they stand in. */
export function interactiveElements(
	blocks: readonly JsonObject[],
): { block: JsonObject; element: JsonObject }[] {
	return blocks.flatMap((block) => {
		const elements = [
			...(block.type === 'actions' ? arrayOf(block.elements) : []),
			...(block.accessory === undefined ? [] : [block.accessory]),
			...(block.element === undefined ? [] : [block.element]),
		];
		return elements.map((element) => ({ block, element: objectOf(element) }));
	});
}
