import type { Sizing } from '@lugbook/core';
import { writeNumber } from '@lugbook/core';
import { limitsByTopic } from './limits.js';
import type { SheetCheck, SheetInput, SheetRecord } from './record.js';
import { computedText, leftText } from './units.js';

/**
 * The checks against limits: those the caller gave, those that stand in the working as inequalities with the numbers
 * put in, results that have a limit of the same name among the inputs, values that the topic holds against each other,
 * and results that are themselves what is left.
 */
export function checksOf(record: Pick<SheetRecord, 'checks' | 'sizing' | 'inputs'>): SheetCheck[] {
	const { sizing, inputs } = record;
	return [
		...record.checks,
		...sizing.working.flatMap(inequalities),
		...namedLimits(sizing, inputs),
		...limitsOfTopic(sizing, inputs),
		...margins(sizing),
	];
}

/** "50 A ≤ 50 A ≤ 81.6 A" holds two checks; of "1.25 × 12 A ≤ 15 A" the left side is the value of the step. */
function inequalities({ label, formula, substituted, value, unit }: Sizing['working'][number]): SheetCheck[] {
	const terms = substituted.split(/\s*[≤≥]\s*/);
	const signs = [...substituted.matchAll(/[≤≥]/g)].map(([sign]) => sign);
	const symbols = formula.split(/\s*[≤≥]\s*/);
	return signs.flatMap((sign, index) => {
		const left = amount(terms[index]) ?? (index === 0 ? amount(computedText(value, unit)) : null);
		const right = amount(terms[index + 1]);
		if (left === null || right === null || left.unit !== right.unit) return [];
		const margin = sign === '≤' ? right.value - left.value : left.value - right.value;
		const named =
			symbols.length === terms.length ? `${label}: ${symbols[index]} ${sign} ${symbols[index + 1]}` : label;
		return [
			{
				what: named,
				value: left.text,
				limit: `${sign === '≤' ? 'at most' : 'at least'} ${right.text}`,
				margin: marginText(`${writeNumber(margin, 4)}${left.unit === '' ? '' : ` ${left.unit}`}`),
				holds: margin >= 0,
			},
		];
	});
}

/** What is "left to" a rating is a margin by its own name; a left support is none. */
function margins({ results }: Sizing): SheetCheck[] {
	return results.flatMap(({ label, value, text, unit }) =>
		typeof value === 'number' && unit === 'kg' && /^left to /.test(label)
			? [{ what: label, value: '', limit: '', margin: marginText(text), holds: value >= 0 }]
			: [],
	);
}

/** A margin below nothing is said in words: a sign alone is overlooked. */
function marginText(text: string): string {
	return text.startsWith('-') ? `beyond by ${text.slice(1)}` : text;
}

function amount(term: string | undefined): { value: number; unit: string; text: string } | null {
	const [, figure, unit] = /^(-?\d+(?:\.\d+)?)\s*([^\d\s(×+−-][^\d(×+−]*)?$/.exec(term?.trim() ?? '') ?? [];
	if (figure === undefined) return null;
	return { value: Number(figure), unit: (unit ?? '').trim(), text: (term ?? '').trim() };
}

function shareOf(share: number) {
	const text = `${writeNumber(share * 100, 0)} %`;
	return { label: share === 1 ? 'all of it' : `${text} of it`, value: share, unit: '1', text };
}

/** What the topic holds against each other, where the sheet has both, as numbers of one unit. */
function limitsOfTopic(sizing: Sizing, inputs: readonly SheetInput[]): SheetCheck[] {
	const all = [...sizing.results, ...inputs, ...sizing.assumed];
	const numberNamed = (name: string) => {
		const found = all.find((one) => one.name === name);
		return typeof found?.value === 'number' ? { ...found, value: found.value } : null;
	};
	return (limitsByTopic[sizing.topic] ?? []).flatMap(({ value: name, limit: against, sense }) => {
		const value = numberNamed(name);
		const limit = typeof against === 'number' ? shareOf(against) : numberNamed(against);
		if (value === null || limit === null) return [];
		const asShare = limit.unit === '1' && value.unit === '%';
		if (!asShare && value.unit !== limit.unit) return [];
		const bound = asShare ? limit.value * 100 : limit.value;
		const margin = sense === 'at most' ? bound - value.value : value.value - bound;
		const shown =
			sense === 'at most'
				? { value: value.text, limit: limit.text }
				: { value: limit.text, limit: value.text };
		return [
			{
				what: `${value.label} against ${limit.label === value.label ? 'its limit' : limit.label}`,
				value: value.text,
				limit: `${sense} ${limit.text}`,
				margin: marginText(leftText(margin, value.unit, shown) ?? writeNumber(margin, 4, 'down')),
				holds: margin >= 0,
			},
		];
	});
}

/** An input "dropLimit" is the limit of the result "drop", or of "dropPercent" where the limit is a share. */
function namedLimits(sizing: Sizing, inputs: readonly SheetInput[]): SheetCheck[] {
	const limits = [...inputs, ...sizing.assumed].filter(({ name }) => name.endsWith('Limit'));
	return limits.flatMap(({ name, label, value: limit, unit, text }) => {
		if (typeof limit !== 'number') return [];
		const stem = name.slice(0, -'Limit'.length);
		return sizing.results.flatMap((result) => {
			if (typeof result.value !== 'number') return [];
			const asShare = unit === '1' && result.unit === '%' && result.name === `${stem}Percent`;
			if (!asShare && !(result.name === stem && result.unit === unit)) return [];
			const most = asShare ? limit * 100 : limit;
			const margin = most - result.value;
			return [
				{
					what: `${result.label} against ${label}`,
					value: result.text,
					limit: `at most ${text}`,
					margin: marginText(
						leftText(margin, result.unit, { value: result.text, limit: text }) ??
							writeNumber(margin, 4, 'down'),
					),
					holds: margin >= 0,
				},
			];
		});
	});
}
