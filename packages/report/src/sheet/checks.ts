import type { Sizing } from '@lugbook/core';
import { writeNumber } from '@lugbook/core';
import type { SheetCheck, SheetInput, SheetRecord } from './record.js';
import { leftText } from './units.js';

/**
 * The checks against limits: those the caller gave, those that stand in the working as inequalities with the numbers
 * put in, results that have a limit of the same name among the inputs, and results that are themselves what is left.
 */
export function checksOf(record: Pick<SheetRecord, 'checks' | 'sizing' | 'inputs'>): SheetCheck[] {
	const { sizing, inputs } = record;
	return [
		...record.checks,
		...sizing.working.flatMap(inequalities),
		...namedLimits(sizing, inputs),
		...margins(sizing),
	];
}

/** "50 A ≤ 50 A ≤ 81.6 A" holds two checks. */
function inequalities({ label, formula, substituted }: Sizing['working'][number]): SheetCheck[] {
	const terms = substituted.split(/\s*[≤≥]\s*/);
	const signs = [...substituted.matchAll(/[≤≥]/g)].map(([sign]) => sign);
	const symbols = formula.split(/\s*[≤≥]\s*/);
	return signs.flatMap((sign, index) => {
		const left = amount(terms[index]);
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

/** "payloadLeft" and "rearReserve" say what is left to a rating. */
function margins({ results }: Sizing): SheetCheck[] {
	return results.flatMap(({ name, label, value, text }) =>
		typeof value === 'number' && /^[a-z]+(?:Left|Reserve)$/.test(name)
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
