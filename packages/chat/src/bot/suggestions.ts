import { awgSizes, type Field, metricSizes } from '@lugbook/core';

const monthName = new Intl.DateTimeFormat('en', { month: 'long', timeZone: 'UTC' });
const MONTHS = Array.from({ length: 12 }, (_, month) => monthName.format(Date.UTC(2026, month)));
const SIZES = [...awgSizes, ...metricSizes].map((size) => size.name);

/** Words to choose from while a field is typed; null where there are none. */
export function suggestionsFor({ type }: Field): readonly string[] | null {
	switch (type.sort) {
		case 'choice':
			// The first word of an option is understood as well as its name, and reads better.
			return Object.entries(type.options).map(([name, synonyms]) => synonyms[0] ?? name);
		case 'flag':
			return ['yes', 'no'];
		case 'text':
			return type.words.length === 0 ? null : type.words;
		case 'month':
			return MONTHS;
		case 'conductor':
			return SIZES;
		case 'list': {
			const words = Object.values(type.item).flatMap((field) => suggestionsFor(field) ?? []);
			return words.length === 0 ? null : words;
		}
		default:
			return null;
	}
}

/** Words for a field of which so much is typed: for a list those that its last item may begin with. */
export function offered(field: Field, typed: string): string[] {
	const words = suggestionsFor(field) ?? [];
	if (field.type.sort !== 'list') return fitting(words, typed);
	const [, before = '', last = ''] = /^([\s\S]*[,;]\s*)?([\s\S]*)$/.exec(typed) ?? [];
	return fitting(words, last).map((word) => before + word);
}

/** Those that hold what was typed, those that begin with it first. */
export function fitting(words: readonly string[], typed: string): string[] {
	const start = typed.trim().toLowerCase();
	return words
		.filter((word) => word.toLowerCase().includes(start))
		.toSorted(
			(a, b) => Number(b.toLowerCase().startsWith(start)) - Number(a.toLowerCase().startsWith(start)),
		);
}
