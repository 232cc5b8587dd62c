import {
	type Context,
	equipmentOf,
	isOutdated,
	labelOf,
	type Rest,
	restValue,
	showValue,
	type Van,
} from '@lugbook/core';
import type { Log } from '@lugbook/log';
import { type ExchangeBody, exchangeOf } from '../memory.js';

/** An answer that rested on a value of the build which has changed since. */
export interface Outdated {
	readonly number: number;
	readonly exchange: ExchangeBody;
	/** what it rested on and no longer holds */
	readonly rests: readonly Rest[];
}

/**
 * The answers of a build that are out of date, oldest first. No entry is touched: it follows from what each rested on
 * and from the van as it stands.
 */
export async function outdatedOf(
	log: Log,
	shop: string,
	build: string,
	van: Van,
	context: Context,
): Promise<Outdated[]> {
	const replaced = new Set<number>();
	const found = await log.fold(
		shop,
		{ build, kinds: ['exchange'], states: ['answered'] },
		[] as Outdated[],
		(before, entry) => {
			if (entry.replaces !== null) replaced.add(entry.replaces);
			const exchange = exchangeOf(entry);
			const rests = (exchange?.rests ?? []).filter((rest) => isOutdated(van, rest, context));
			if (exchange !== null && rests.length > 0) before.push({ number: entry.number, exchange, rests });
			return before;
		},
	);
	return found.filter(({ number }) => !replaced.has(number));
}

/** "battery bank: bank voltage was 12 V, is 24 V". */
export function whyOutdated(van: Van, rests: readonly Rest[], context: Context): string {
	const reasons = rests.map(({ item, field, value }) => {
		if (item === '*') return `the ${field} have changed`;
		const piece = van.pieces.find(({ id }) => id === item);
		if (piece === undefined) return `${item} is gone`;
		const declared = equipmentOf(piece.kind).fields[field];
		if (declared === undefined) return `${labelOf(piece)} has changed`;
		const shown = (one: Rest['value']) => (one === null ? 'not told' : showValue(declared, one, context));
		const now = restValue(van, item, field, context);
		return `${labelOf(piece)}: ${declared.meta.label} was ${shown(value)}, is ${shown(now)}`;
	});
	return [...new Set(reasons)].join('; ');
}
