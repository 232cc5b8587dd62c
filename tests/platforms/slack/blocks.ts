/**
 * Limits of Block Kit blocks and elements.
 *
 * Published in Slack's Block Kit reference (docs.slack.dev/reference/block-kit: blocks, block elements,
 * composition objects) and repeated in the docstrings of the package `@slack/types` 3.2.0, from which the
 * numbers here were read. From memory, and never looser than those pages: image_url 3000, an action needs at
 * least one element, ids must be unique within a message.
 *
 * Lengths are counted in UTF-16 code units, the larger of the possible counts.
 */

import { arrayOf, isObject, type JsonObject, objectOf, stringOf } from '../common/json.js';

export interface Problem {
	/** path in the payload, as in `blocks[2].elements[0].value` */
	readonly where: string;
	readonly rule: string;
}

export type Surface = 'message' | 'modal' | 'home';

const BLOCKS_MAX: Record<Surface, number> = { message: 50, modal: 100, home: 100 };
/** No limit is published for rich text: it is held to that of a section. */
const BLOCK_TEXT_MAX = 3000;
const RICH_TEXT_PARTS = new Set(['rich_text_section', 'rich_text_preformatted', 'rich_text_quote']);
const RICH_TEXT_ELEMENTS = new Set([
	'text',
	'link',
	'emoji',
	'user',
	'usergroup',
	'channel',
	'broadcast',
	'date',
	'color',
	'team',
]);
const INTERACTIVE_IN_ACTIONS = new Set([
	'button',
	'checkboxes',
	'datepicker',
	'datetimepicker',
	'timepicker',
	'radio_buttons',
	'overflow',
	'static_select',
	'external_select',
	'users_select',
	'conversations_select',
	'channels_select',
	'multi_static_select',
	'multi_external_select',
	'multi_users_select',
	'multi_conversations_select',
	'multi_channels_select',
	'workflow_button',
]);
const INPUT_ELEMENTS = new Set([
	...[...INTERACTIVE_IN_ACTIONS].filter((type) => !/button$|overflow/.test(type)),
	'plain_text_input',
	'number_input',
	'email_text_input',
	'url_text_input',
	'rich_text_input',
	'file_input',
]);

/** Collects the problems of one payload. */
class Check {
	readonly problems: Problem[] = [];
	private readonly blockIds = new Set<string>();
	private readonly actionIds = new Set<string>();

	constructor(private readonly surface: Surface) {}

	add(where: string, rule: string): void {
		this.problems.push({ where, rule });
	}

	private length(where: string, value: unknown, max: number, min = 0): void {
		if (value === undefined) return;
		if (typeof value !== 'string') {
			this.add(where, 'must be a string');
		} else if (value.length > max) {
			this.add(where, `must be at most ${max} characters (got ${value.length})`);
		} else if (value.length < min)
			this.add(where, `must be at least ${min} characters (got ${value.length})`);
	}

	private count(where: string, value: unknown, max: number, min = 0): JsonObject[] {
		if (!Array.isArray(value)) {
			this.add(where, 'must be an array');
			return [];
		}
		if (value.length > max) this.add(where, `must have at most ${max} items (got ${value.length})`);
		if (value.length < min) this.add(where, `must have at least ${min} items (got ${value.length})`);
		return value.map(objectOf);
	}

	private text(where: string, value: unknown, max: number, kind: 'plain_text' | 'any'): void {
		if (!isObject(value)) {
			this.add(where, 'must be a text object');
			return;
		}
		const type = value.type;
		if (type !== 'plain_text' && type !== 'mrkdwn') this.add(`${where}.type`, 'must be plain_text or mrkdwn');
		if (kind === 'plain_text' && type !== 'plain_text') this.add(`${where}.type`, 'must be plain_text');
		if (value.text === undefined) this.add(`${where}.text`, 'is required');
		this.length(`${where}.text`, value.text, max, 1);
	}

	private optionalText(where: string, value: unknown, max: number, kind: 'plain_text' | 'any'): void {
		if (value !== undefined) this.text(where, value, max, kind);
	}

	private unique(where: string, id: unknown, seen: Set<string>): void {
		this.length(where, id, 255, 1);
		if (typeof id !== 'string') return;
		if (seen.has(id))
			this.add(where, `must be unique within the message (${JSON.stringify(id)} is used twice)`);
		seen.add(id);
	}

	private option(where: string, option: JsonObject, kind: 'plain_text' | 'any'): void {
		this.text(`${where}.text`, option.text, 75, kind);
		if (typeof option.value !== 'string') this.add(`${where}.value`, 'is required');
		this.length(`${where}.value`, option.value, 75);
		this.optionalText(`${where}.description`, option.description, 75, kind);
		this.length(`${where}.url`, option.url, 3000);
	}

	options(where: string, value: unknown, max: number, kind: 'plain_text' | 'any', min = 1): void {
		this.count(where, value, max, min).forEach((option, at) => {
			this.option(`${where}[${at}]`, option, kind);
		});
	}

	private confirm(where: string, value: unknown): void {
		if (value === undefined) return;
		const confirm = objectOf(value);
		this.text(`${where}.title`, confirm.title, 100, 'plain_text');
		this.text(`${where}.text`, confirm.text, 300, 'any');
		this.text(`${where}.confirm`, confirm.confirm, 30, 'plain_text');
		this.text(`${where}.deny`, confirm.deny, 30, 'plain_text');
	}

	private image(where: string, image: JsonObject): void {
		this.length(`${where}.image_url`, image.image_url, 3000, 1);
		if (image.image_url === undefined && image.slack_file === undefined) {
			this.add(where, 'needs image_url or slack_file');
		}
		if (typeof image.alt_text !== 'string' || image.alt_text.trim() === '') {
			this.add(`${where}.alt_text`, 'is required: an image needs a text for those who do not see it');
		}
		this.length(`${where}.alt_text`, image.alt_text, 2000);
	}

	private element(where: string, element: JsonObject): void {
		const type = stringOf(element.type);
		if (type === 'image') {
			this.image(where, element);
			return;
		}
		if (element.action_id !== undefined) this.unique(`${where}.action_id`, element.action_id, this.actionIds);
		this.confirm(`${where}.confirm`, element.confirm);
		this.optionalText(`${where}.placeholder`, element.placeholder, 150, 'plain_text');
		if (type === 'button') {
			this.text(`${where}.text`, element.text, 75, 'plain_text');
			this.length(`${where}.value`, element.value, 2000);
			this.length(`${where}.url`, element.url, 3000);
			this.length(`${where}.accessibility_label`, element.accessibility_label, 75);
			if (element.style !== undefined && element.style !== 'primary' && element.style !== 'danger') {
				this.add(`${where}.style`, 'must be primary or danger');
			}
		} else if (type === 'overflow') {
			this.options(`${where}.options`, element.options, 5, 'plain_text');
		} else if (type === 'checkboxes' || type === 'radio_buttons') {
			this.options(`${where}.options`, element.options, 10, 'any');
		} else if (type === 'static_select' || type === 'multi_static_select') {
			if (element.option_groups === undefined) {
				this.options(`${where}.options`, element.options, 100, 'plain_text');
			} else {
				this.count(`${where}.option_groups`, element.option_groups, 100, 1).forEach((group, at) => {
					const path = `${where}.option_groups[${at}]`;
					this.text(`${path}.label`, group.label, 75, 'plain_text');
					this.options(`${path}.options`, group.options, 100, 'plain_text');
				});
			}
		} else if (type === 'plain_text_input') {
			this.length(`${where}.initial_value`, element.initial_value, 3000);
			for (const bound of ['min_length', 'max_length']) {
				const value = element[bound];
				if (typeof value === 'number' && (value < 0 || value > 3000)) {
					this.add(`${where}.${bound}`, `must be 0 to 3000 (got ${value})`);
				}
			}
		} else if (type === 'number_input') {
			if (typeof element.is_decimal_allowed !== 'boolean')
				this.add(`${where}.is_decimal_allowed`, 'is required');
			for (const bound of ['min_value', 'max_value', 'initial_value']) {
				const value = element[bound];
				if (value !== undefined && typeof value !== 'string')
					this.add(`${where}.${bound}`, 'must be a string');
			}
		} else if (!INTERACTIVE_IN_ACTIONS.has(type) && !INPUT_ELEMENTS.has(type)) {
			this.add(`${where}.type`, `unsupported element type ${JSON.stringify(element.type)}`);
		}
	}

	/** A section, list, quote or preformatted text of a rich_text block, with the elements that may stand in it. */
	private richText(where: string, part: JsonObject): void {
		const isList = part.type === 'rich_text_list';
		if (!isList && !RICH_TEXT_PARTS.has(stringOf(part.type))) {
			this.add(`${where}.type`, `unsupported rich text ${JSON.stringify(part.type)}`);
		}
		this.count(`${where}.elements`, part.elements, Number.POSITIVE_INFINITY, 1).forEach((element, at) => {
			const path = `${where}.elements[${at}]`;
			if (isList) this.richText(path, element);
			else if (!RICH_TEXT_ELEMENTS.has(stringOf(element.type))) {
				this.add(`${path}.type`, `unsupported rich text element ${JSON.stringify(element.type)}`);
			} else if (element.type === 'text') this.length(`${path}.text`, element.text, BLOCK_TEXT_MAX, 1);
		});
	}

	private block(where: string, block: JsonObject): void {
		if (block.block_id !== undefined) this.unique(`${where}.block_id`, block.block_id, this.blockIds);
		// An action_id has to be unique within its block only.
		this.actionIds.clear();
		switch (block.type) {
			case 'section': {
				if (block.text === undefined && block.fields === undefined) this.add(where, 'needs text or fields');
				this.optionalText(`${where}.text`, block.text, 3000, 'any');
				if (block.fields !== undefined) {
					this.count(`${where}.fields`, block.fields, 10, 1).forEach((field, at) => {
						this.text(`${where}.fields[${at}]`, field, 2000, 'any');
					});
				}
				if (block.accessory !== undefined) this.element(`${where}.accessory`, objectOf(block.accessory));
				break;
			}
			case 'header':
				this.text(`${where}.text`, block.text, 150, 'plain_text');
				break;
			case 'divider':
				break;
			case 'image':
				this.image(where, block);
				this.optionalText(`${where}.title`, block.title, 2000, 'plain_text');
				break;
			case 'context':
				this.count(`${where}.elements`, block.elements, 10, 1).forEach((element, at) => {
					const path = `${where}.elements[${at}]`;
					if (element.type === 'image') this.image(path, element);
					else this.text(path, element, 3000, 'any');
				});
				break;
			case 'actions':
				this.count(`${where}.elements`, block.elements, 25, 1).forEach((element, at) => {
					const path = `${where}.elements[${at}]`;
					if (!INTERACTIVE_IN_ACTIONS.has(stringOf(element.type))) {
						this.add(`${path}.type`, `can't stand in an actions block (${JSON.stringify(element.type)})`);
					}
					this.element(path, element);
				});
				break;
			case 'input': {
				const element = objectOf(block.element);
				this.text(`${where}.label`, block.label, 2000, 'plain_text');
				this.optionalText(`${where}.hint`, block.hint, 2000, 'plain_text');
				if (!INPUT_ELEMENTS.has(stringOf(element.type))) {
					this.add(
						`${where}.element.type`,
						`can't stand in an input block (${JSON.stringify(element.type)})`,
					);
				}
				this.element(`${where}.element`, element);
				break;
			}
			case 'markdown':
				this.length(`${where}.text`, block.text, 12_000, 1);
				break;
			case 'rich_text':
				this.count(`${where}.elements`, block.elements, Number.POSITIVE_INFINITY, 1).forEach((part, at) => {
					this.richText(`${where}.elements[${at}]`, part);
				});
				break;
			case 'table':
				this.count(
					`${where}.rows`,
					arrayOf(block.rows).map((cells) => ({ cells })),
					100,
					1,
				).forEach((row, at) => {
					this.count(`${where}.rows[${at}]`, row.cells, 20, 1);
				});
				break;
			default:
				this.add(`${where}.type`, `unsupported block type ${JSON.stringify(block.type)}`);
		}
	}

	blocks(where: string, value: unknown): void {
		const min = this.surface === 'message' ? 0 : 1;
		this.count(where, value, BLOCKS_MAX[this.surface], min).forEach((block, at) => {
			this.block(`${where}[${at}]`, block);
		});
	}
}

/** What breaks a published limit in these blocks; empty when nothing does. */
export function blockProblems(blocks: unknown, surface: Surface): Problem[] {
	const check = new Check(surface);
	check.blocks('blocks', blocks);
	return check.problems;
}

/** The same for the options that answer a `block_suggestion`. */
export function suggestionProblems(options: unknown): Problem[] {
	const check = new Check('message');
	check.options('options', options, 100, 'plain_text', 0);
	return check.problems;
}

/** Every object with a text inside these blocks, at any depth. */
function* objectsWithText(value: unknown): Generator<{ type: unknown; text: string }> {
	if (Array.isArray(value)) for (const one of value) yield* objectsWithText(one);
	if (!isObject(value)) return;
	if (typeof value.text === 'string') yield { type: value.type, text: value.text };
	for (const one of Object.values(value)) yield* objectsWithText(one);
}

/** The rich-text elements that notify a whole channel or group. */
export function broadcasts(value: unknown): string[] {
	if (Array.isArray(value)) return value.flatMap(broadcasts);
	if (!isObject(value)) return [];
	if (value.type === 'broadcast') return [`broadcast ${stringOf(value.range)}`];
	if (value.type === 'usergroup') return [`usergroup ${stringOf(value.usergroup_id)}`];
	return Object.values(value).flatMap(broadcasts);
}

/** All texts of these blocks that Slack reads as mrkdwn, where a mention notifies. */
export function mrkdwnTexts(blocks: unknown): string[] {
	const marked = [...objectsWithText(blocks)].filter(({ type }) => type === 'mrkdwn' || type === 'markdown');
	return marked.map(({ text }) => text);
}

/** Characters of all texts together, which is what the undocumented cap on a message's blocks counts. */
export function blockTextLength(blocks: unknown): number {
	return [...objectsWithText(blocks)].reduce((sum, { text }) => sum + text.length, 0);
}
