import { quantity } from '../topic/field.js';

/** The battery bank, where a topic says what share of it something costs. */
export const bankFields = {
	bankAh: quantity({
		label: 'bank capacity',
		kind: 'charge',
		min: 1,
		max: 10_000,
		aliases: ['bank', 'battery', 'batteries', 'lithium', 'lifepo4', 'batería', 'batterie', 'akku'],
	}),
	bankWh: quantity({
		label: 'bank energy',
		kind: 'energy',
		min: 10,
		max: 500_000,
		aliases: ['bank', 'battery', 'batteries', 'batería', 'batterie', 'akku'],
	}),
	depth: quantity({
		label: 'usable share of the bank',
		kind: 'fraction',
		min: 0.1,
		max: 1,
		aliases: ['usable', 'depth of discharge', 'dod', 'entladetiefe', 'profundidad de descarga'],
		fallback: {
			value: 0.8,
			why: 'lithium iron phosphate down to 20 % (practice); lead-acid gives about 50 %',
			confirm: true,
		},
	}),
};

/** Energy the bank gives between full and its floor [Wh], or null where no bank was named. */
export function usableWh(bank: {
	readonly bankAh: number | undefined;
	readonly bankWh: number | undefined;
	readonly bankV: number;
	readonly depth: number;
}): number | null {
	if (bank.bankWh !== undefined) return bank.bankWh * bank.depth;
	return bank.bankAh === undefined ? null : bank.bankAh * bank.bankV * bank.depth;
}
