/**
 * A reply as messages of the platform. Every text goes into elements that the platform shows as it stands
 * (plain_text and rich_text): nothing a person typed can become a mention, a link or a style. Severity is a word.
 *
 * Nothing is cut as long as four messages hold it, and a danger never: dangers stand in the first one.
 */

import { type Part, partText, type Reply, shortText } from '@lugbook/chat';
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
	POSTS_PER_RESPONSE_URL_MAX,
} from './limits.js';
import { inert, pieces, shortened } from './text.js';

export interface Page {
	/** what notifications and screen readers use: the decision and the gravest finding */
	readonly text: string;
	readonly blocks: types.KnownBlock[];
}

/** One post of a response_url is kept for saying that something failed. */
const PAGES_MAX = POSTS_PER_RESPONSE_URL_MAX - 1;

/** Buttons carry the action in their action_id; a number keeps the ids of one row apart. */
export const BUTTON_ACTION = /^lugbook:([a-z-]+):\d+$/;

interface Sized {
	readonly block: types.KnownBlock;
	readonly characters: number;
}

export function pagesOf(reply: Reply): Page[] {
	const texts = inOrder(reply.parts).flatMap(blocksOf);
	const buttons = buttonRow(reply);
	const pages: types.KnownBlock[][] = [[]];
	let characters = 0;
	for (const { block, characters: own } of texts) {
		const current = pages.at(-1) as types.KnownBlock[];
		// One place is kept for the row of buttons.
		if (current.length >= BLOCKS_MAX - 1 || characters + own > MESSAGE_CHARACTERS_MAX) {
			pages.push([block]);
			characters = own;
		} else {
			current.push(block);
			characters += own;
		}
	}
	const kept = pages.slice(0, PAGES_MAX);
	if (pages.length > kept.length) {
		(kept.at(-1) as types.KnownBlock[]).splice(
			-1,
			1,
			plainLine('There is more than fits here: ask for less at once.'),
		);
	}
	if (buttons) kept[0]?.push(buttons);
	const fallback = inert(shortened(shortText(reply), FALLBACK_CHARACTERS_MAX / 5));
	return kept.map((blocks, at) => ({
		text: at === 0 ? fallback : `${fallback} (${at + 1} of ${kept.length})`,
		blocks,
	}));
}

/** The headline, then every danger, then the rest as it came; small print last. */
function inOrder(parts: readonly Part[]): Part[] {
	const rank = (part: Part) =>
		part.kind === 'headline' ? 0 : part.kind === 'danger' ? 1 : part.fold ? 3 : 2;
	return parts.filter((part) => part.text.trim() !== '').toSorted((a, b) => rank(a) - rank(b));
}

function blocksOf(part: Part): Sized[] {
	const text = partText(part);
	if (part.kind === 'headline' && text.length <= HEADER_CHARACTERS_MAX && !text.includes('\n')) {
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
	if (part.fold || part.kind === 'kept') {
		return { type: 'context', elements: [{ type: 'plain_text', text, emoji: false }] };
	}
	const isBold = part.kind === 'headline' || part.kind === 'danger';
	return plainLine(text, isBold);
}

function plainLine(text: string, isBold = false): types.RichTextBlock {
	const element: types.RichTextText = isBold
		? { type: 'text', text, style: { bold: true } }
		: { type: 'text', text };
	return { type: 'rich_text', elements: [{ type: 'rich_text_section', elements: [element] }] };
}

function buttonRow(reply: Reply): types.ActionsBlock | null {
	const elements = reply.buttons
		.filter((button) => button.value.length <= BUTTON_VALUE_CHARACTERS_MAX)
		.slice(0, BUTTONS_PER_ROW_MAX)
		.map(
			(button, at): types.Button => ({
				type: 'button',
				action_id: `lugbook:${button.action}:${at}`,
				value: button.value,
				text: {
					type: 'plain_text',
					text: shortened(button.label, BUTTON_LABEL_CHARACTERS_MAX),
					emoji: false,
				},
			}),
		);
	return elements.length === 0 ? null : { type: 'actions', elements };
}

/** The page without blocks, for when the platform refuses the blocks. */
export function bare(page: Page): Page {
	return { text: page.text, blocks: [] };
}
