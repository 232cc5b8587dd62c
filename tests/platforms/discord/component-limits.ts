/**
 * Limits of message components and modals, from discord-api-docs `components/reference.mdx` and
 * `interactions/receiving-and-responding.mdx`: 5 rows of 5 buttons or one menu; with the components-v2 flag 40
 * components in all; button label 80, custom_id 1 to 100 and unique, url 512; menu 25 options of 100/100/100,
 * placeholder 150; text input 4000, placeholder 100; modal title 45 with 1 to 5 components, label 45, its
 * description 100. From memory: 4000 characters in all text displays together, 1 to 10 gallery items, 1 to 3
 * texts in a section.
 */

import { arrayOf, isObject, type JsonObject, objectOf, stringOf } from '../common/json.js';
import type { FormErrors } from './form-errors.js';

export const ComponentType = {
	row: 1,
	button: 2,
	stringSelect: 3,
	textInput: 4,
	userSelect: 5,
	roleSelect: 6,
	mentionableSelect: 7,
	channelSelect: 8,
	section: 9,
	textDisplay: 10,
	thumbnail: 11,
	mediaGallery: 12,
	file: 13,
	separator: 14,
	container: 17,
	label: 18,
	fileUpload: 19,
} as const;

const SELECTS: readonly unknown[] = [3, 5, 6, 7, 8];
const V2_TOP_LEVEL: readonly unknown[] = [1, 9, 10, 12, 13, 14, 17];
const LINK_STYLE = 5;

/** All components of a tree, the nested ones included. */
export function* allComponents(value: unknown): Generator<JsonObject> {
	for (const component of arrayOf(value).map(objectOf)) {
		yield component;
		yield* allComponents(component.components);
		for (const single of [component.accessory, component.component]) {
			if (isObject(single)) yield* allComponents([single]);
		}
	}
}

/** Texts that people read in components-v2 messages. */
export function textDisplays(components: unknown): string[] {
	const texts = [...allComponents(components)].filter((one) => one.type === ComponentType.textDisplay);
	return texts.map((one) => stringOf(one.content));
}

class ComponentCheck {
	private readonly customIds = new Set<string>();

	constructor(private readonly errors: FormErrors) {}

	private customId(where: string, component: JsonObject): void {
		this.errors.length(`${where}.custom_id`, component.custom_id, 100, 1);
		const id = stringOf(component.custom_id);
		if (this.customIds.has(id))
			this.errors.add(`${where}.custom_id`, 'Component custom id cannot be duplicated');
		this.customIds.add(id);
	}

	private button(where: string, button: JsonObject): void {
		const style = button.style;
		if (typeof style !== 'number' || style < 1 || style > 6)
			this.errors.add(`${where}.style`, 'Must be 1 to 6');
		this.errors.length(`${where}.label`, button.label, 80);
		if (button.label === undefined && button.emoji === undefined)
			this.errors.add(where, 'Needs a label or an emoji');
		if (style === LINK_STYLE) {
			this.errors.length(`${where}.url`, button.url, 512, 1);
			if (button.custom_id !== undefined)
				this.errors.add(where, 'A custom id and url cannot both be specified');
		} else {
			this.customId(where, button);
			if (button.url !== undefined) this.errors.add(where, 'A custom id and url cannot both be specified');
		}
	}

	private select(where: string, select: JsonObject): void {
		this.customId(where, select);
		this.errors.length(`${where}.placeholder`, select.placeholder, 150);
		for (const [bound, least] of [['min_values', 0] as const, ['max_values', 1] as const]) {
			const value = select[bound];
			if (value !== undefined && (typeof value !== 'number' || value < least || value > 25)) {
				this.errors.add(`${where}.${bound}`, `Must be ${least} to 25`);
			}
		}
		if (select.type !== ComponentType.stringSelect) return;
		const values = new Set<string>();
		this.errors.list(`${where}.options`, select.options, 25, 1).forEach((option, at) => {
			const path = `${where}.options.${at}`;
			this.errors.length(`${path}.label`, option.label, 100, 1);
			this.errors.length(`${path}.value`, option.value, 100, 1);
			this.errors.length(`${path}.description`, option.description, 100);
			if (values.has(stringOf(option.value))) {
				this.errors.add(`${path}.value`, 'The specified option value is already used');
			}
			values.add(stringOf(option.value));
		});
	}

	row(where: string, row: JsonObject): void {
		const children = this.errors.list(`${where}.components`, row.components, 5, 1);
		const menus = children.filter((one) => SELECTS.includes(one.type)).length;
		if (menus > 0 && children.length > 1)
			this.errors.add(`${where}.components`, 'A row holds one menu alone');
		children.forEach((child, at) => {
			const path = `${where}.components.${at}`;
			if (child.type === ComponentType.button) this.button(path, child);
			else if (SELECTS.includes(child.type)) this.select(path, child);
			else this.errors.add(`${path}.type`, `Can't stand in an action row (${child.type})`);
		});
	}

	private media(where: string, holder: JsonObject): void {
		if (stringOf(objectOf(holder.media).url) === '')
			this.errors.add(`${where}.media.url`, 'This field is required');
		this.errors.length(`${where}.description`, holder.description, 1024);
	}

	v2(where: string, component: JsonObject): void {
		switch (component.type) {
			case ComponentType.row:
				this.row(where, component);
				break;
			case ComponentType.textDisplay:
				this.errors.length(`${where}.content`, component.content, 4000, 1);
				break;
			case ComponentType.section: {
				this.errors.list(`${where}.components`, component.components, 3, 1).forEach((text, at) => {
					this.v2(`${where}.components.${at}`, text);
				});
				const accessory = objectOf(component.accessory);
				if (accessory.type === ComponentType.button) this.button(`${where}.accessory`, accessory);
				else if (accessory.type === ComponentType.thumbnail) this.media(`${where}.accessory`, accessory);
				else this.errors.add(`${where}.accessory`, 'Must be a button or a thumbnail');
				break;
			}
			case ComponentType.mediaGallery:
				this.errors.list(`${where}.items`, component.items, 10, 1).forEach((item, at) => {
					this.media(`${where}.items.${at}`, item);
				});
				break;
			case ComponentType.container:
				this.errors.list(`${where}.components`, component.components, 40, 1).forEach((child, at) => {
					if (child.type === ComponentType.container)
						this.errors.add(`${where}.components.${at}`, 'Cannot be nested');
					else this.v2(`${where}.components.${at}`, child);
				});
				break;
			case ComponentType.file:
			case ComponentType.separator:
				break;
			default:
				this.errors.add(`${where}.type`, `Unknown component type ${component.type}`);
		}
	}

	private textInput(where: string, input: JsonObject, labelled: boolean): void {
		this.customId(where, input);
		if (input.style !== 1 && input.style !== 2) this.errors.add(`${where}.style`, 'Must be 1 or 2');
		if (!labelled) this.errors.length(`${where}.label`, input.label, 45, 1);
		this.errors.length(`${where}.value`, input.value, 4000);
		this.errors.length(`${where}.placeholder`, input.placeholder, 100);
		for (const [bound, least] of [['min_length', 0] as const, ['max_length', 1] as const]) {
			const value = input[bound];
			if (value !== undefined && (typeof value !== 'number' || value < least || value > 4000)) {
				this.errors.add(`${where}.${bound}`, `Must be ${least} to 4000`);
			}
		}
	}

	modalPart(where: string, part: JsonObject): void {
		if (part.type === ComponentType.row) {
			this.errors.list(`${where}.components`, part.components, 1, 1).forEach((input, at) => {
				const path = `${where}.components.${at}`;
				if (input.type === ComponentType.textInput) this.textInput(path, input, false);
				else this.errors.add(`${path}.type`, 'Only a text input can stand in a modal row');
			});
		} else if (part.type === ComponentType.label) {
			this.errors.length(`${where}.label`, part.label, 45, 1);
			this.errors.length(`${where}.description`, part.description, 100);
			const inner = objectOf(part.component);
			if (inner.type === ComponentType.textInput) this.textInput(`${where}.component`, inner, true);
			else if (SELECTS.includes(inner.type)) this.select(`${where}.component`, inner);
			else if (inner.type === ComponentType.fileUpload) this.customId(`${where}.component`, inner);
			else this.errors.add(`${where}.component.type`, `Can't stand in a label (${inner.type})`);
		} else if (part.type === ComponentType.textDisplay) {
			this.v2(where, part);
		} else {
			this.errors.add(`${where}.type`, `Can't stand in a modal (${part.type})`);
		}
	}
}

export function checkMessageComponents(errors: FormErrors, components: unknown, isV2: boolean): void {
	const check = new ComponentCheck(errors);
	if (!isV2) {
		errors.list('components', components, 5).forEach((row, at) => {
			if (row.type === ComponentType.row) check.row(`components.${at}`, row);
			else errors.add(`components.${at}.type`, 'Only action rows, without the components-v2 flag');
		});
		return;
	}
	errors.list('components', components, 40, 1).forEach((component, at) => {
		if (V2_TOP_LEVEL.includes(component.type)) check.v2(`components.${at}`, component);
		else errors.add(`components.${at}.type`, `Can't stand at the top level (${component.type})`);
	});
	const total = [...allComponents(components)].length;
	if (total > 40) errors.add('components', `Must be at most 40 components in all (got ${total})`);
	const characters = textDisplays(components).reduce((sum, text) => sum + text.length, 0);
	if (characters > 4000)
		errors.add('components', `Must be at most 4000 characters in all texts (got ${characters})`);
}

export function checkModal(errors: FormErrors, modal: JsonObject): void {
	const check = new ComponentCheck(errors);
	errors.length('data.title', modal.title, 45, 1);
	errors.length('data.custom_id', modal.custom_id, 100, 1);
	errors.list('data.components', modal.components, 5, 1).forEach((part, at) => {
		check.modalPart(`data.components.${at}`, part);
	});
}
