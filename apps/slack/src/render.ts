/**
 * A reply as messages of the platform. Every text goes into elements that the platform shows as it stands
 * (plain_text and rich_text): nothing a person typed can become a mention, a link or a style. Severity is a word.
 *
 * Nothing is cut as long as four messages hold it, and a danger never: dangers stand in the first one.
 */

import {
	aroundNumber,
	CHANGE_AN_ASSUMPTION,
	inLanguage,
	inReadingOrder,
	type Language,
	MORE_THAN_FITS,
	type Part,
	partText,
	pieces,
	type Reply,
	SENT_AGAIN,
	shortened,
	shortText,
} from '@lugbook/chat';
import type { types } from '@slack/bolt';
import {
	BLOCK_CHARACTERS_MAX,
	BLOCKS_MAX,
	BUTTON_LABEL_CHARACTERS_MAX,
	BUTTON_VALUE_CHARACTERS_MAX,
	BUTTONS_PER_ROW_MAX,
	FALLBACK_CHARACTERS_MAX,
	HEADER_CHARACTERS_MAX,
	MESSAGE_CHARACTERS_MAX,
	OPTION_CHARACTERS_MAX,
	POSTS_PER_RESPONSE_URL_MAX,
	SELECT_OPTIONS_MAX,
} from './limits.js';
import { inert } from './text.js';

export interface Page {
	/** what notifications and screen readers use: the decision and the gravest finding */
	readonly text: string;
	readonly blocks: types.KnownBlock[];
	/** belongs below the first page, into its thread */
	readonly folded: boolean;
	readonly language: Language;
}

/** One post of a response_url is kept for saying that something failed. */
const PAGES_MAX = POSTS_PER_RESPONSE_URL_MAX - 1;

/** An answer up to this length stands in one message with all its small print; of a longer one that goes below [characters]. */
const UNFOLDED_CHARACTERS_MAX = 2500;

/** Buttons and menus carry the action in their action_id; a number keeps the ids of one row apart. */
export const BUTTON_ACTION = /^lugbook:([a-z-]+):\d+$/;

interface Sized {
	readonly block: types.KnownBlock;
	readonly characters: number;
}

/**
 * @param assumed inputs that a menu under the answer lets people say instead
 */
export function pagesOf(reply: Reply, assumed: readonly { value: string; label: string }[] = []): Page[] {
	const { language = 'en' } = reply;
	const parts = inReadingOrder(reply.parts);
	const length = parts.reduce((sum, part) => sum + part.text.length, 0);
	const isLong = length > UNFOLDED_CHARACTERS_MAX;
	const isFolded = (part: Part) => isLong && part.fold && part.kind !== 'danger';
	const below = controls(reply, assumed);
	// Labels of buttons and options count among the characters of the message they stand in.
	const room = MESSAGE_CHARACTERS_MAX - below.characters;
	const shown = packed(parts.filter((part) => !isFolded(part)).flatMap(blocksOf), room);
	const folded = packed(parts.filter(isFolded).flatMap(blocksOf));
	// A danger stays in the channel, on whichever page it came to stand; the rest of a long answer goes below it.
	const dangers = packed(
		parts.filter((part) => part.kind === 'headline' || part.kind === 'danger').flatMap(blocksOf),
		room,
	).length;
	const all = [...shown, ...folded];
	const kept = all.slice(0, PAGES_MAX);
	if (all.length > kept.length) {
		kept.at(-1)?.splice(-1, 1, plainLine(inLanguage(language, MORE_THAN_FITS)));
	}
	kept[0]?.push(...below.blocks);
	const fallback = inert(shortened(shortText(reply), FALLBACK_CHARACTERS_MAX / 5));
	return kept.map((blocks, at) => ({
		text: at === 0 ? fallback : `${fallback} (${at + 1} of ${kept.length})`,
		blocks,
		folded: at >= dangers,
		language,
	}));
}

/**
 * Blocks on as few pages as the platform's limits allow.
 * @param firstRoom characters that the first page takes, less than the others where something stands below it
 */
function packed(texts: readonly Sized[], firstRoom = MESSAGE_CHARACTERS_MAX): types.KnownBlock[][] {
	const pages: types.KnownBlock[][] = [];
	let characters = 0;
	for (const { block, characters: own } of texts) {
		const current = pages.at(-1);
		// Two places are kept for the buttons and the menu.
		if (
			current === undefined ||
			current.length >= BLOCKS_MAX - 2 ||
			characters + own > (pages.length === 1 ? firstRoom : MESSAGE_CHARACTERS_MAX)
		) {
			pages.push([block]);
			characters = own;
		} else {
			current.push(block);
			characters += own;
		}
	}
	return pages;
}

function blocksOf(part: Part): Sized[] {
	const text = partText(part);
	if (
		part.kind === 'headline' &&
		part.struck !== true &&
		text.length <= HEADER_CHARACTERS_MAX &&
		!text.includes('\n')
	) {
		const block: types.HeaderBlock = { type: 'header', text: { type: 'plain_text', text, emoji: false } };
		return [{ block, characters: text.length }];
	}
	return pieces(text, BLOCK_CHARACTERS_MAX).map((piece) => ({
		block: blockOf(part, piece),
		characters: piece.length,
	}));
}

function blockOf(part: Part, text: string): types.KnownBlock {
	if (part.kind === 'working') {
		return {
			type: 'rich_text',
			elements: [{ type: 'rich_text_preformatted', elements: [{ type: 'text', text }] }],
		};
	}
	if ((part.fold || part.kind === 'kept') && part.struck !== true) {
		return { type: 'context', elements: [{ type: 'plain_text', text, emoji: false }] };
	}
	const isBold = part.kind === 'headline' || part.kind === 'danger';
	return plainLine(text, {
		...(isBold ? { bold: true } : {}),
		...(part.struck === true ? { strike: true } : {}),
	});
}

function plainLine(text: string, style: types.RichTextStyleable['style'] = {}): types.RichTextBlock {
	const element: types.RichTextText =
		Object.keys(style).length === 0 ? { type: 'text', text } : { type: 'text', text, style };
	return { type: 'rich_text', elements: [{ type: 'rich_text_section', elements: [element] }] };
}

function controls(
	reply: Reply,
	assumed: readonly { value: string; label: string }[],
): { readonly blocks: types.KnownBlock[]; readonly characters: number } {
	const buttons = reply.buttons
		// A longer value could not come back whole, and a button without a word is refused with its message.
		.filter(({ label, value }) => value.length <= BUTTON_VALUE_CHARACTERS_MAX && label.trim() !== '')
		.slice(0, BUTTONS_PER_ROW_MAX)
		.map(
			(button, at): types.Button => ({
				type: 'button',
				action_id: `lugbook:${button.action}:${at}`,
				value: button.value,
				text: plain(shortened(button.label, BUTTON_LABEL_CHARACTERS_MAX)),
			}),
		);
	const options = assumed.slice(0, SELECT_OPTIONS_MAX).map(({ value, label }) => ({
		text: plain(shortened(label, OPTION_CHARACTERS_MAX)),
		value: value.slice(0, OPTION_CHARACTERS_MAX),
	}));
	const menu: types.StaticSelect = {
		type: 'static_select',
		action_id: 'lugbook:assume:0',
		placeholder: plain(inLanguage(reply.language ?? 'en', CHANGE_AN_ASSUMPTION)),
		options,
	};
	const blocks = [
		...(buttons.length === 0 ? [] : [{ type: 'actions' as const, elements: buttons }]),
		...(options.length === 0 ? [] : [{ type: 'actions' as const, elements: [menu] }]),
	];
	return { blocks, characters: JSON.stringify(blocks).length };
}

const plain = (text: string): types.PlainTextElement => ({ type: 'plain_text', text, emoji: false });

/** The page as the platform takes it. */
export function asPost({ text, blocks }: Page): { text: string; blocks: types.KnownBlock[] } {
	return { text, blocks };
}

/** A page of one sentence. */
export function textPage(text: string, language: Language = 'en'): Page {
	const blocks = [plainLine(shortened(text, BLOCK_CHARACTERS_MAX))];
	return { text: inert(shortened(text, FALLBACK_CHARACTERS_MAX / 5)), blocks, folded: false, language };
}

/** The page without blocks, for when the platform refuses the blocks. */
export function bare(page: Page): Page {
	return { ...page, blocks: [] };
}

/** Makes of a post one that may stand there already, saying so. */
export function notedAgainIn(language: Language) {
	const words = inLanguage(language, SENT_AGAIN);
	const note: types.ContextBlock = { type: 'context', elements: [plain(words)] };
	return <P extends { readonly text: string; readonly blocks: types.KnownBlock[] }>(post: P): P =>
		post.blocks.length === 0
			? { ...post, text: `${post.text} (${words})` }
			: { ...post, blocks: [...post.blocks.slice(0, BLOCKS_MAX - 1), note] };
}

/** An address of the platform's own, under the number of the answer whose message it opens. */
export interface AnswerLink {
	readonly entry: number;
	readonly url: string;
}

/**
 * An earlier answer as one that no longer stands: its lines struck through, then what became of it. No buttons.
 * @param link to the answer that holds in its place
 */
export function struckPage(reply: Reply, text: string, link: AnswerLink | null = null): Page {
	const parts = inReadingOrder(reply.parts).filter((part) => !part.fold);
	const [headline = '', ...others] = parts.map((part) => shortened(partText(part), BLOCK_CHARACTERS_MAX));
	const line = (words: string, style: types.RichTextStyleable['style']): types.RichTextSection => ({
		type: 'rich_text_section',
		elements: [textElement(words, style)],
	});
	// Said in words as well: a line through a text is seen by some alone.
	const words = shortened(text, BLOCK_CHARACTERS_MAX - 1);
	const first: types.RichTextSection = {
		type: 'rich_text_section',
		elements: linked(`${words}\n`, link),
	};
	const lines = [first, line(`${headline}\n`, { strike: true })];
	let room = MESSAGE_CHARACTERS_MAX - headline.length - words.length;
	for (const other of others) {
		room -= other.length;
		if (room > 0) lines.push(line(`${other}\n`, { strike: true }));
	}
	return {
		text: inert(shortened(`${words} (${headline})`, FALLBACK_CHARACTERS_MAX / 5)),
		blocks: [{ type: 'rich_text', elements: lines }],
		folded: false,
		language: reply.language ?? 'en',
	};
}

function textElement(text: string, style: types.RichTextStyleable['style']): types.RichTextText {
	return { type: 'text', text, ...(style === undefined ? {} : { style }) };
}

/** Bold words, with the link under the answer's number. */
function linked(words: string, link: AnswerLink | null): types.RichTextElement[] {
	const style = { bold: true };
	const around = link === null ? null : aroundNumber(words, link.entry);
	if (link === null || around === null) return [textElement(words, style)];
	const { before, name, after } = around;
	return [
		textElement(before, style),
		{ type: 'link', url: link.url, text: name, style },
		textElement(after, style),
	];
}
