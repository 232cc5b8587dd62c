import { type Bank, capacityAh } from '../energy/bank.js';
import { type BankInput, bankFields, chemistryOf, classOf, readBank } from '../energy/bank-fields.js';
import type { Chemistry } from '../tables/batteries.js';
import { cellResistanceSource, cellSources } from '../tables/internal-resistance.js';
import { quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import type { Refusal } from '../topic/sizing.js';
import { bankOhm, fullBankV, ohmOfShortCircuit, typicalUnitOhm } from './short-circuit.js';

/** How the source of a fault is named: by the bank, or by the maker's figures. */
export const sourceFields = {
	unitAh: bankFields.unitAh,
	unitCount: bankFields.unitCount,
	bankV: bankFields.bankV,
	unitV: bankFields.unitV,
	chemistry: bankFields.chemistry,
	internalOhm: quantity({
		label: 'internal resistance of one battery',
		kind: 'resistance',
		min: 0.0001,
		max: 1,
		aliases: ['internal resistance', 'internal', 'impedance', 'innenwiderstand', 'resistencia interna'],
	}),
	openCircuitV: quantity({
		label: 'open-circuit voltage of the bank',
		kind: 'voltage',
		min: 2,
		max: 65,
		aliases: ['open circuit', 'open-circuit', 'ocv', 'rested', 'resting', 'leerlaufspannung'],
	}),
	bankShortA: quantity({
		label: "maker's short-circuit current of the bank",
		onlyNamed: true,
		kind: 'current',
		min: 50,
		max: 200_000,
		aliases: [
			'at the terminals',
			'battery short circuit',
			'maker says',
			'data sheet',
			'datasheet',
			'rated short circuit',
			'isc',
			'maker',
		],
	}),
};

export interface SourceInput extends BankInput {
	readonly internalOhm?: number | undefined;
	readonly openCircuitV?: number | undefined;
	readonly bankShortA?: number | undefined;
}

/** What feeds the fault. */
export interface BankSource {
	readonly chemistry: Chemistry;
	readonly classV: number;
	readonly openCircuitV: number;
	/** rated internal resistance of the whole bank [ohm] */
	readonly sourceOhm: number;
	/** null where the maker's figures made the layout needless */
	readonly bank: Bank | null;
	/** capacity of the whole bank, where it was named [Ah] */
	readonly capacityAh: number | null;
	/** true where the resistance is the usual one of the chemistry, not the maker's */
	readonly typical: boolean;
}

/**
 * The source as named, with what is assumed put on the sheet.
 * @returns null where neither capacity, resistance nor short-circuit current was named, or why it can't be
 */
export function readSource(input: SourceInput, sheet: Sheet): BankSource | Refusal | null {
	const { bankShortA, internalOhm, openCircuitV } = input;
	if (input.unitAh === undefined && internalOhm === undefined && bankShortA === undefined) return null;
	const chemistry = chemistryOf(input, sheet);
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return classV;
	// With a resistance or a current named, the capacity plays no part; the layout still does.
	const bank = readBank({ ...input, unitAh: input.unitAh ?? 100 }, chemistry, classV, sheet);
	if (bank === null || 'code' in bank) return bank;
	const fullV = openCircuitV ?? assumedFullV(bank, sheet);
	if (fullV < classV * 0.8 || fullV > classV * 1.4) {
		return {
			code: 'contradiction',
			text: sheet.say`${sheet.show('voltage', fullV)} can't be the open-circuit voltage of a ${classV} V bank.`,
			instead: sheet.say`Give the voltage of the full, rested bank, about ${sheet.show('voltage', fullBankV(bank))}.`,
			field: 'openCircuitV',
		};
	}
	const named = input.unitAh === undefined ? null : capacityAh(bank);
	const common = { chemistry, classV, openCircuitV: fullV, bank, capacityAh: named };
	if (bankShortA !== undefined) {
		return { ...common, sourceOhm: ohmOfShortCircuit(fullV, bankShortA), typical: false };
	}
	const unitOhm = internalOhm ?? assumedUnitOhm(bank, sheet);
	return { ...common, sourceOhm: bankOhm(unitOhm, bank), typical: internalOhm === undefined };
}

function assumedFullV(bank: Bank, sheet: Sheet): number {
	const fullV = fullBankV(bank);
	sheet.assume(
		'openCircuitV',
		'open-circuit voltage of the bank',
		fullV,
		sheet.say`full and rested, ${cellSources[bank.chemistry.name].fullV} V a cell (practice)`,
		{ kind: 'voltage' },
	);
	return fullV;
}

function assumedUnitOhm(bank: Bank, sheet: Sheet): number {
	const unitOhm = typicalUnitOhm(bank);
	sheet.assume(
		'internalOhm',
		'internal resistance of one battery',
		unitOhm,
		'low end of what is usual for the chemistry and capacity: the highest current is the safe side (practice)',
		{ kind: 'resistance', confirm: true },
	);
	sheet.source(cellResistanceSource);
	return unitOhm;
}
