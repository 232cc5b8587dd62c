/** What forms say around their inputs, in the language of their place. What is sent of them is read as English. */

import { type AnyTopic, type Field, type Language, monthNames, sayFor } from '@lugbook/core';
import { books } from '../phrases/books.js';

/** A word to choose: as it is shown, and as it is read. */
interface Choice {
	readonly text: string;
	readonly value: string;
}

/** What stands beside one input. */
export interface InputWords {
	readonly label: string;
	/** what it means, and what counts where it is left empty; empty where there is nothing to say */
	readonly hint: string;
	/** what counts where it is left empty; null where it is simply not known then */
	readonly leftEmpty: string | null;
	/** an example of what may be typed, in words */
	readonly example: string;
	/** null where the input is typed */
	readonly choices: readonly Choice[] | null;
}

/** The words of all forms in one language. */
export class FormWords {
	readonly #say;

	constructor(readonly language: Language) {
		// Nothing in these is measured: the units say nothing here.
		this.#say = sayFor({ language, units: 'metric' }, books[language]);
	}

	get size(): string {
		return this.#say`Size it`;
	}

	get send(): string {
		return this.#say`Send`;
	}

	get cancel(): string {
		return this.#say`Cancel`;
	}

	get next(): string {
		return this.#say`Next`;
	}

	get sizeAPart(): string {
		return this.#say`Size a part`;
	}

	get whichTopic(): string {
		return this.#say`What is to be sized?`;
	}

	get chooseOne(): string {
		return this.#say`Choose one of the list.`;
	}

	title({ title }: AnyTopic): string {
		return this.#say([title]);
	}

	purpose({ purpose }: AnyTopic): string {
		return this.#say([purpose]);
	}

	input(field: Field): InputWords {
		const say = this.#say;
		const { label, help, fallback } = field.meta;
		const leftEmpty = fallback === null ? null : say`Left empty: ${say([fallback.why])}`;
		const hints = [help === null ? null : say([help]), leftEmpty === null ? null : `${leftEmpty}.`];
		return {
			label: say([label]),
			hint: hints.filter((one) => one !== null).join(' '),
			leftEmpty,
			example: this.#example(field),
			choices: choicesOf(field)?.map((value) => ({ text: say([value]), value })) ?? null,
		};
	}

	#example({ type }: Field): string {
		const say = this.#say;
		switch (type.sort) {
			case 'quantity':
				return say`a number with its unit`;
			case 'count':
				return say`a whole number`;
			case 'number':
				return say`a number`;
			case 'conductor':
				return '4 AWG, 2/0, 35 mm2';
			case 'place':
				return say`the name of a town`;
			default:
				return say`in words`;
		}
	}
}

/** The words to choose from, where a field is a choice. */
function choicesOf({ type }: Field): readonly string[] | null {
	switch (type.sort) {
		case 'choice':
			// The first word of an option is understood as well as its name, and reads better.
			return Object.entries(type.options).map(([name, words]) => words[0] ?? name);
		case 'flag':
			return ['yes', 'no'];
		case 'month':
			return monthNames;
		default:
			return null;
	}
}
