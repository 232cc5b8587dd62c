import { fromBase, kindNames, kindOf, toBase, unitsOf, writeNumber } from '@lugbook/core';

/** A base unit as a person reads it. */
export function unitText(unit: string | null): string {
	if (unit === null || unit === '1') return '';
	return unit
		.replace('degC', '°C')
		.replace(/mm4/, 'mm⁴')
		.replace(/m2K/, 'm²K')
		.replace(/\bm2\b/, 'm²')
		.replace(/\bm3\b/, 'm³');
}

/** A computed value with six significant figures: more than anybody measures, few enough to copy by hand. */
export function computedText(value: number | string | boolean, unit: string | null): string {
	if (typeof value === 'boolean') return value ? 'yes' : 'no';
	if (typeof value === 'string') return value;
	if (!Number.isFinite(value)) return value > 0 ? 'without limit' : 'none';
	const figure = String(Number(value.toPrecision(6)));
	const shown = unitText(unit);
	return shown === '' ? figure : `${figure} ${shown}`;
}

export type Rounding = 'not rounded' | 'rounded up' | 'rounded down';

/**
 * How a shown figure was rounded, found by comparing it with the computed value; null where the two can't be compared.
 * @param unit base unit of the value
 * @param text the value as shown, "14.7 ft"
 */
export function roundingOf(value: number | string, unit: string | null, text: string): Rounding | null {
	if (typeof value !== 'number') return null;
	const shown = shownValue(text, unit);
	if (shown === null) return null;
	const slack = 1e-9 * Math.max(1, Math.abs(value), Math.abs(shown));
	if (Math.abs(shown - value) <= slack) return 'not rounded';
	return shown > value ? 'rounded up' : 'rounded down';
}

/** A shown figure turned back into the base unit, or null where it is in none of the units of that base. */
function shownValue(text: string, unit: string | null): number | null {
	const [, figure, symbol] = /^(-?\d+(?:\.\d+)?)\s*(\S.*)?$/.exec(text) ?? [];
	if (figure === undefined) return null;
	const number = Number(figure);
	const written = symbol ?? '';
	if (written === unitText(unit)) return number;
	const kind = kindNames.find(
		(name) => kindOf(name).base === unit && unitsOf(name).some((one) => one.symbol === written),
	);
	return kind === undefined ? null : toBase(kind, number, written);
}

/**
 * What is left between a value and its limit, as shown: the difference of the two figures as they stand on the sheet,
 * or the computed one where that is smaller, so that the reader's own subtraction is right and nothing is overstated.
 * @param left computed, in the base unit
 * @returns null where the two are not shown in one unit of that base
 */
export function leftText(
	left: number,
	unit: string | null,
	shown: { value: string; limit: string },
): string | null {
	const value = amountIn(shown.value);
	const limit = amountIn(shown.limit);
	if (value === null || limit === null || value.symbol !== limit.symbol) return null;
	const computed = inUnit(left, unit, value.symbol);
	if (computed === null) return null;
	const decimals = Math.max(decimalsOf(value.figure), decimalsOf(limit.figure), 2);
	const least = Math.min(Number(limit.figure) - Number(value.figure), computed);
	const figure = writeNumber(least, decimals, 'down');
	return value.symbol === '' ? figure : `${figure} ${value.symbol}`;
}

/** The first amount in a text: "up to 16.7 ft" holds 16.7 ft. */
function amountIn(text: string): { readonly figure: string; readonly symbol: string } | null {
	const [, figure, symbol] = /(-?\d+(?:\.\d+)?)\s*([^\s\d,;)]*)/.exec(text) ?? [];
	return figure === undefined ? null : { figure, symbol: symbol ?? '' };
}

function decimalsOf(figure: string): number {
	return figure.split('.')[1]?.length ?? 0;
}

/** A difference in a base unit, turned into another unit of it; of a difference only the factor counts. */
function inUnit(difference: number, unit: string | null, symbol: string): number | null {
	if (symbol === unitText(unit)) return difference;
	const kind = kindNames.find(
		(name) => kindOf(name).base === unit && unitsOf(name).some((one) => one.symbol === symbol),
	);
	return kind === undefined ? null : fromBase(kind, difference, symbol) - fromBase(kind, 0, symbol);
}
