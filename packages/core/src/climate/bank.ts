import type { WriteOptions } from '../quantity/write.js';
import { quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';

/** The battery bank, where a topic says what share of it something costs. */
export const bankFields = {
	bankV: quantity({
		label: 'bank voltage',
		kind: 'voltage',
		min: 10,
		max: 60,
		aliases: [
			'bank',
			'battery',
			'batteries',
			'house bank',
			'system',
			'banco',
			'batería',
			'batterie',
			'bordnetz',
		],
	}),
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
		help: 'Where it is not named: 80 %, lithium iron phosphate down to 20 %.',
	}),
};

export interface Bank {
	readonly voltageV: number;
	/** share of it that may be used */
	readonly depth: number;
	/** between full and its floor [Wh], or null where no bank was named */
	readonly usableWh: number | null;
}

/**
 * The bank as it was named. Voltage and usable share are assumed on the sheet where they are needed and were not said.
 *
 * @param likelyV the voltage taken where none is named
 */
export function bankOf(
	input: {
		readonly bankV: number | undefined;
		readonly bankAh: number | undefined;
		readonly bankWh: number | undefined;
		readonly depth: number | undefined;
	},
	sheet: Sheet,
	likelyV = 12,
): Bank {
	const voltageV = input.bankV ?? likelyV;
	if (input.bankV === undefined) {
		sheet.assume('bankV', 'bank voltage', voltageV, 'the usual house bank', {
			kind: 'voltage',
			confirm: input.bankAh !== undefined,
		});
	}
	const depth = input.depth ?? 0.8;
	const fullWh = input.bankWh ?? (input.bankAh === undefined ? null : input.bankAh * voltageV);
	if (fullWh !== null && input.depth === undefined) {
		sheet.assume(
			'depth',
			'usable share of the bank',
			depth,
			'lithium iron phosphate down to 20 % (practice); lead-acid gives about 50 %',
			{ kind: 'fraction', confirm: true },
		);
	}
	return { voltageV, depth, usableWh: fullWh === null ? null : fullWh * depth };
}

/** Watt-hours need no decimals; kilowatt-hours do. */
export function energyWrite(energyWh: number, round: 'up' | 'down' = 'up'): WriteOptions {
	return { round, decimals: Math.abs(energyWh) < 1000 ? 0 : 2 };
}

/** An amount of energy as a person reads it. */
export function energyText(sheet: Sheet, energyWh: number, round: 'up' | 'down' = 'up'): string {
	return sheet.show('energy', energyWh, energyWrite(energyWh, round));
}
