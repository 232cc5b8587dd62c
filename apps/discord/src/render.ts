/**
 * A reply as messages of the platform: plain lines in the content, which needs no permission, is what notifications
 * and screen readers read, and fits a phone. Every text is made inert. Severity is a word.
 *
 * Nothing is cut: what three messages do not hold goes along as a text file, and dangers stand in the first message.
 */

import { type Part, partText, plainText, type Reply } from '@lugbook/chat';
import {
	ActionRowBuilder,
	AttachmentBuilder,
	ButtonBuilder,
	ButtonStyle,
	type MessageActionRowComponentBuilder,
} from 'discord.js';
import {
	BUTTON_LABEL_CHARACTERS_MAX,
	BUTTONS_PER_ROW_MAX,
	CONTENT_CHARACTERS_MAX,
	CUSTOM_ID_CHARACTERS_MAX,
	ROWS_MAX,
} from './limits.js';
import { inert, pieces, shortened } from './text.js';

export interface Page {
	readonly content: string;
	readonly components: ActionRowBuilder<MessageActionRowComponentBuilder>[];
	readonly files: AttachmentBuilder[];
	/** on new messages and edits alike: an edit without it would be read by the platform's defaults again */
	readonly allowedMentions: { readonly parse: []; readonly repliedUser: false };
}

export const NO_MENTIONS: Page['allowedMentions'] = { parse: [], repliedUser: false };
const PAGES_MAX = 3;
/** A piece may double when every sign in it is made inert; the marks around it take the rest. */
const PIECE_CHARACTERS_MAX = CONTENT_CHARACTERS_MAX / 2 - 20;

/** `lugbook:ACTION:VALUE` */
export const BUTTON_ID = /^lugbook:([a-z-]+):([\s\S]*)$/;

export function pagesOf(reply: Reply): Page[] {
	const contents: string[] = [''];
	for (const line of inOrder(reply.parts).flatMap(linesOf)) {
		const current = contents.at(-1) as string;
		if (current === '') contents[contents.length - 1] = line;
		else if (current.length + 1 + line.length <= CONTENT_CHARACTERS_MAX) {
			contents[contents.length - 1] = `${current}\n${line}`;
		} else contents.push(line);
	}
	const isLong = contents.length > PAGES_MAX;
	const kept = isLong ? contents.slice(0, 1) : contents;
	return kept.map((content, at) => ({
		content,
		// The buttons stand below everything that is to be read first.
		components: at === kept.length - 1 ? buttonRows(reply) : [],
		files: isLong ? [asFile(reply)] : [],
		allowedMentions: NO_MENTIONS,
	}));
}

/** The headline, then every danger, then the rest as it came; small print last. */
function inOrder(parts: readonly Part[]): Part[] {
	const rank = (part: Part) =>
		part.kind === 'headline' ? 0 : part.kind === 'danger' ? 1 : part.fold ? 3 : 2;
	return parts.filter((part) => part.text.trim() !== '').toSorted((a, b) => rank(a) - rank(b));
}

function linesOf(part: Part): string[] {
	return pieces(partText(part), PIECE_CHARACTERS_MAX).map((piece) => marked(part, inert(piece)));
}

/** Style on top of the words: what matters is said in the words already. */
function marked(part: Part, text: string): string {
	if (part.kind === 'headline' || part.kind === 'danger') {
		return /^\s|\s$|\n/.test(text) ? text : `**${text}**`;
	}
	if (part.fold || part.kind === 'kept') return text.replace(/^(?=.*\S)/gm, '-# ');
	return text;
}

function asFile(reply: Reply): AttachmentBuilder {
	const text = plainText({ ...reply, buttons: [] }, { folded: true });
	const { entry } = reply.answer;
	const name = entry === null ? 'answer.txt' : `answer-${entry}.txt`;
	return new AttachmentBuilder(Buffer.from(text, 'utf8'), { name, description: 'The whole answer as text' });
}

function buttonRows(reply: Reply): Page['components'] {
	const ids = new Set<string>();
	const buttons = reply.buttons.flatMap((button) => {
		const id = `lugbook:${button.action}:${button.value}`;
		// A longer value could not come back whole.
		if (id.length > CUSTOM_ID_CHARACTERS_MAX || ids.has(id)) return [];
		ids.add(id);
		const label = shortened(button.label, BUTTON_LABEL_CHARACTERS_MAX);
		return [new ButtonBuilder().setCustomId(id).setLabel(label).setStyle(ButtonStyle.Secondary)];
	});
	const rows: Page['components'] = [];
	for (let at = 0; at < buttons.length && rows.length < ROWS_MAX; at += BUTTONS_PER_ROW_MAX) {
		const row = new ActionRowBuilder<MessageActionRowComponentBuilder>();
		rows.push(row.addComponents(buttons.slice(at, at + BUTTONS_PER_ROW_MAX)));
	}
	return rows;
}
