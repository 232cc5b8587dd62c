/**
 * A reply as messages of the platform: plain lines in the content, which needs no permission, is what notifications
 * and screen readers read, and fits a phone. Every text is made inert. Severity is a word.
 *
 * One message for one answer: what does not fit goes along whole as a text file. Dangers are never left to the file
 * alone; where they fill more than a message, more messages follow.
 */

import {
	aroundNumber,
	CHANGE_AN_ASSUMPTION,
	IN_THE_FILE,
	inLanguage,
	inReadingOrder,
	type LoadedFile,
	type LoadedReply,
	type Part,
	partText,
	pieces,
	plainText,
	type Reply,
	shortened,
} from '@lugbook/chat';
import {
	ActionRowBuilder,
	AttachmentBuilder,
	ButtonBuilder,
	ButtonStyle,
	type MessageActionRowComponentBuilder,
	type RawFile,
	StringSelectMenuBuilder,
} from 'discord.js';
import {
	ATTACHMENT_DESCRIPTION_CHARACTERS_MAX,
	BUTTON_LABEL_CHARACTERS_MAX,
	BUTTONS_PER_ROW_MAX,
	CONTENT_CHARACTERS_MAX,
	CUSTOM_ID_CHARACTERS_MAX,
	FILES_MAX,
	ROWS_MAX,
	SELECT_CHARACTERS_MAX,
	SELECT_OPTIONS_MAX,
} from './limits.js';
import { inert } from './text.js';

export interface PageFile {
	readonly name: string;
	readonly bytes: Buffer;
	readonly description: string;
}

export interface Page {
	readonly content: string;
	readonly components: ActionRowBuilder<MessageActionRowComponentBuilder>[];
	readonly files: readonly PageFile[];
	/** on new messages and edits alike: an edit without it would be read by the platform's defaults again */
	readonly allowedMentions: { readonly parse: []; readonly repliedUser: false };
}

export const NO_MENTIONS: Page['allowedMentions'] = { parse: [], repliedUser: false };
/** messages that the dangers of one answer may fill: far more than any answer has, so that none is ever cut */
const PAGES_MAX = 60;
/** A piece may double when every sign in it is made inert; the marks around it take the rest. */
const PIECE_CHARACTERS_MAX = CONTENT_CHARACTERS_MAX / 2 - 20;

/** `lugbook:ACTION:VALUE` */
export const BUTTON_ID = /^lugbook:([a-z-]+):([\s\S]*)$/;
export const ASSUME_ID = 'lugbook-assume';

/** @param assumed inputs that a menu under the answer lets people say instead */
export function pagesOf(
	reply: LoadedReply,
	assumed: readonly { value: string; label: string }[] = [],
): Page[] {
	const parts = inReadingOrder(reply.parts);
	const whole = parts.flatMap(linesOf).join('\n');
	const isLong = whole.length > CONTENT_CHARACTERS_MAX;
	const contents = isLong
		? shortenedTo(parts, `-# ${inLanguage(reply.language ?? 'en', IN_THE_FILE)}`)
		: [whole];
	const files = (reply.files ?? []).map(attached);
	return contents.map((content, at) => ({
		content,
		// The buttons stand below everything that is to be read first.
		components: at === contents.length - 1 ? rowsOf(reply, assumed) : [],
		files: at === 0 ? [...(isLong ? [asFile(reply)] : []), ...files].slice(0, FILES_MAX) : [],
		allowedMentions: NO_MENTIONS,
	}));
}

function attached({ name, bytes, alternativeText }: LoadedFile): PageFile {
	const description = shortened(alternativeText, ATTACHMENT_DESCRIPTION_CHARACTERS_MAX);
	return { name, bytes: Buffer.from(bytes), description };
}

/**
 * The decision and every danger, and of the rest as much as the last message holds.
 * @param ending the last line, which says where the whole is
 */
function shortenedTo(parts: readonly Part[], ending: string): string[] {
	const isGrave = (part: Part) => part.kind === 'headline' || part.kind === 'danger';
	const contents = [''];
	const room = CONTENT_CHARACTERS_MAX - ending.length - 1;
	const add = (line: string): boolean => {
		const current = contents.at(-1) as string;
		const longer = current === '' ? line : `${current}\n${line}`;
		if (longer.length > room) return false;
		contents[contents.length - 1] = longer;
		return true;
	};
	for (const line of parts.filter(isGrave).flatMap(linesOf)) {
		if (add(line)) continue;
		if (contents.length >= PAGES_MAX) break;
		contents.push(line);
	}
	for (const line of parts.filter((part) => !isGrave(part)).flatMap(linesOf)) if (!add(line)) break;
	contents[contents.length - 1] = `${contents.at(-1)}\n${ending}`;
	return contents;
}

function linesOf(part: Part): string[] {
	// Every sign that begins a line somewhere begins one here.
	const text = partText(part).replace(/\r\n?|[\u2028\u2029]/g, '\n');
	return pieces(text, PIECE_CHARACTERS_MAX).map((piece) => marked(part, inert(piece)));
}

/** Style on top of the words: what matters is said in the words already. */
function marked(part: Part, text: string): string {
	if (part.struck === true) {
		return text.replace(/[^\n]+/g, (line) => (line.trim() === '' ? line : `~~${line.trim()}~~`));
	}
	if (part.kind === 'headline' || part.kind === 'danger') {
		return /^\s|\s$|\n/.test(text) ? text : `**${text}**`;
	}
	if (part.fold || part.kind === 'kept') return text.replace(/^(?=.*\S)/gm, '-# ');
	return text;
}

function asFile(reply: Reply): PageFile {
	const text = plainText({ ...reply, buttons: [] }, { folded: true });
	const { entry } = reply.answer;
	const name = entry === null ? 'answer.txt' : `answer-${entry}.txt`;
	return { name, bytes: Buffer.from(text, 'utf8'), description: 'The whole answer as text' };
}

function rowsOf(reply: Reply, assumed: readonly { value: string; label: string }[]): Page['components'] {
	const ids = new Set<string>();
	const buttons = reply.buttons.flatMap((button) => {
		const id = `lugbook:${button.action}:${button.value}`;
		// A longer value could not come back whole, and a button without a word is refused with its message.
		if (id.length > CUSTOM_ID_CHARACTERS_MAX || ids.has(id) || button.label.trim() === '') return [];
		ids.add(id);
		const label = shortened(button.label, BUTTON_LABEL_CHARACTERS_MAX);
		return [new ButtonBuilder().setCustomId(id).setLabel(label).setStyle(ButtonStyle.Secondary)];
	});
	const rows: Page['components'] = [];
	for (let at = 0; at < buttons.length && rows.length < ROWS_MAX - 1; at += BUTTONS_PER_ROW_MAX) {
		const row = new ActionRowBuilder<MessageActionRowComponentBuilder>();
		rows.push(row.addComponents(buttons.slice(at, at + BUTTONS_PER_ROW_MAX)));
	}
	const options = assumed
		.filter(({ value }) => value.length <= SELECT_CHARACTERS_MAX)
		.slice(0, SELECT_OPTIONS_MAX);
	if (options.length > 0) {
		const menu = new StringSelectMenuBuilder()
			.setCustomId(ASSUME_ID)
			.setPlaceholder(inLanguage(reply.language ?? 'en', CHANGE_AN_ASSUMPTION))
			.addOptions(
				options.map(({ value, label }) => ({ value, label: shortened(label, SELECT_CHARACTERS_MAX) })),
			);
		rows.push(new ActionRowBuilder<MessageActionRowComponentBuilder>().addComponents(menu));
	}
	return rows;
}

/** A page of one sentence. */
export function textPage(text: string): Page {
	return { content: inert(text), components: [], files: [], allowedMentions: NO_MENTIONS };
}

/** An address of the platform's own, under the number of the answer whose message it opens. */
export interface AnswerLink {
	readonly entry: number;
	readonly url: string;
}

/**
 * An earlier answer as one that no longer stands: what became of it, then its lines struck through. No buttons.
 * @param link to the answer that holds in its place
 */
export function struckPage(reply: Reply, text: string, link: AnswerLink | null = null): Page {
	// Said in words as well: a line through a text is seen by some alone.
	const first = `**${linked(shortened(inOneLine(text), 300), link)}**`;
	const lines = [first];
	let room = CONTENT_CHARACTERS_MAX - first.length;
	for (const part of inReadingOrder(reply.parts).filter((one) => !one.fold)) {
		for (const piece of pieces(inOneLine(partText(part)), PIECE_CHARACTERS_MAX - 5)) {
			const line = `~~${inert(piece)}~~`;
			room -= line.length + 1;
			if (room >= 0) lines.push(line);
		}
	}
	return { content: lines.join('\n'), components: [], files: [], allowedMentions: NO_MENTIONS };
}

/** Style goes over a whole line. */
const inOneLine = (text: string): string => text.replace(/[\r\n\u2028\u2029]+/g, ' ').trim();

function linked(words: string, link: AnswerLink | null): string {
	const around = link === null ? null : aroundNumber(words, link.entry);
	if (link === null || around === null) return inert(words);
	return `${inert(around.before)}[${inert(around.name)}](${link.url})${inert(around.after)}`;
}

/** The page for the library's methods. */
export function asMessage({ content, components, files, allowedMentions }: Page) {
	const attachments = files.map(
		({ name, bytes, description }) => new AttachmentBuilder(bytes, { name, description }),
	);
	return { content, components, files: attachments, allowedMentions };
}

/** The page as the platform's REST API takes it. */
export function asBody({ content, components, files }: Page) {
	const raw: RawFile[] = files.map(({ name, bytes }) => ({ name, data: bytes }));
	return {
		body: {
			content,
			components: components.map((row) => row.toJSON()),
			attachments: files.map(({ name, description }, id) => ({ id, filename: name, description })),
			allowed_mentions: { parse: [], replied_user: false },
		},
		files: raw,
	};
}
