import {
	type Bank,
	type CurrentLimit,
	chargeLimit,
	cutoffVoltageV,
	dischargeLimit,
	energyWh,
	nominalVoltageV,
} from '../../energy/bank.js';
import { type BankInput, chemistryOf, classOf, readBank } from '../../energy/bank-fields.js';
import { type Chemistry, type ChemistryName, chemistries } from '../../tables/batteries.js';
import { Sheet } from '../../topic/sheet.js';
import type { Refusal } from '../../topic/sizing.js';
import type { Piece } from '../van.js';
import { type Facts, num, word } from './facts.js';

export interface BankFacts {
	readonly piece: Piece;
	readonly bank: Bank;
	readonly nominalV: number;
	/** lowest voltage under load */
	readonly cutoffV: number;
	readonly charge: CurrentLimit;
	readonly discharge: CurrentLimit;
	readonly fullWh: number;
	/** between full and the usual depth of discharge */
	readonly usableWh: number;
}

export type BankKnown =
	| { readonly is: 'known'; readonly bank: BankFacts }
	/** there is a bank, but its capacity was not told */
	| { readonly is: 'unknown'; readonly piece: Piece }
	| { readonly is: 'wrong'; readonly piece: Piece; readonly refusal: Refusal }
	| { readonly is: 'none' };

/** The house bank as told: voltage, chemistry and layout as the battery topic takes them. */
export function bankOf(facts: Facts): BankKnown {
	return facts.once('bank', () => readBankOf(facts));
}

export function knownBank(facts: Facts): BankFacts | null {
	const known = bankOf(facts);
	return known.is === 'known' ? known.bank : null;
}

function readBankOf(facts: Facts): BankKnown {
	const piece = facts.first('battery');
	if (piece === null) return { is: 'none' };
	const sheet = new Sheet('battery', facts.context, new Set(), []);
	const input = bankInput(piece);
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return { is: 'wrong', piece, refusal: classV };
	const chemistry = chemistryOf(input, sheet);
	const bank = readBank(input, chemistry, classV, sheet);
	if (bank === null) return { is: 'unknown', piece };
	if ('code' in bank) return { is: 'wrong', piece, refusal: bank };
	const fullWh = energyWh(bank);
	return {
		is: 'known',
		bank: {
			piece,
			bank,
			nominalV: nominalVoltageV(chemistry, classV),
			cutoffV: cutoffVoltageV(chemistry, classV),
			charge: chargeLimit(bank, num(piece, 'chargeLimitA')),
			discharge: dischargeLimit(bank, num(piece, 'protectionA')),
			fullWh,
			usableWh: fullWh * chemistry.depthOfDischarge,
		},
	};
}

/** The chemistry as told; null where it was not, undefined where there is no bank. */
export function toldChemistry(facts: Facts): Chemistry | null | undefined {
	const piece = facts.first('battery');
	if (piece === null) return undefined;
	const name = word(piece, 'chemistry');
	return name === undefined ? null : chemistries[name as ChemistryName];
}

function bankInput(piece: Piece): BankInput {
	return piece.values as BankInput;
}

/** The class of the house voltage [V]: the bank's, or 12 V where none was told. */
export function houseV(facts: Facts): number {
	const known = knownBank(facts);
	if (known !== null) return known.bank.classV;
	const piece = facts.first('battery');
	if (piece === null) return 12;
	const classV = classOf(bankInput(piece), new Sheet('battery', facts.context, new Set(), []));
	return typeof classV === 'number' ? classV : 12;
}

/** The bank's inputs under the names the topics know them by. */
export function bankGiven(known: BankFacts): Readonly<Record<string, unknown>> {
	const { bank } = known;
	return {
		unitAh: bank.unitAh,
		unitCount: bank.series * bank.parallel,
		bankV: bank.classV,
		...(bank.series > 1 ? { unitV: bank.unitV } : {}),
		chemistry: bank.chemistry.name,
	};
}
