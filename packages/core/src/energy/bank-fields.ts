import { writeNumber } from '../quantity/write.js';
import { type Chemistry, chemistries } from '../tables/batteries.js';
import { choice, count, quantity } from '../topic/field.js';
import type { Decision, Sheet } from '../topic/sheet.js';
import type { Refusal } from '../topic/sizing.js';
import { type Bank, bankClassV, nominalVoltageV, unitsInSeries } from './bank.js';

export const chemistryWords = {
	lifepo4: [
		'LiFePO4',
		'lifepo',
		'lfp',
		'lithium',
		'lithium iron phosphate',
		'litio',
		'li',
		'eisenphosphat',
		'lithium battery',
	],
	agm: ['AGM', 'glass mat', 'vlies'],
	gel: ['gel', 'gel cell'],
	flooded: [
		'flooded lead-acid',
		'lead acid',
		'lead-acid',
		'flooded',
		'wet cell',
		'golf cart',
		'fla',
		'plomo',
		'plomo ácido',
		'blei',
		'bleisäure',
		'bleibatterie',
		'nassbatterie',
	],
	nmc: ['NMC', 'nca', 'li-ion', 'lithium ion', 'lithium-ion'],
} as const;

/** How a bank is named: "4 x 100 Ah 12 V LiFePO4 in 24 V". */
export const bankFields = {
	unitAh: quantity({
		label: 'capacity of one battery',
		kind: 'charge',
		min: 1,
		max: 5000,
		aliases: ['capacity', 'capacidad', 'kapazität'],
	}),
	unitCount: count({
		label: 'number of batteries',
		min: 1,
		max: 64,
		aliases: ['batteries', 'units', 'baterías', 'batterien', 'stück'],
	}),
	bankV: quantity({
		label: 'bank voltage',
		kind: 'voltage',
		min: 2,
		max: 260,
		aliases: [
			'bank',
			'system',
			'house',
			'battery',
			'battery bank',
			'battery voltage',
			'batterie',
			'batería',
			'sistema',
			'bordnetz',
			'tensión',
			'spannung',
		],
	}),
	unitV: quantity({
		label: 'voltage of one battery',
		kind: 'voltage',
		min: 2,
		max: 260,
		aliases: ['each', 'per battery', 'batteries'],
	}),
	seriesCount: count({
		label: 'number in series',
		min: 1,
		max: 24,
		aliases: ['in series', 'series', 'en serie', 'in reihe', 'in serie'],
	}),
	parallelCount: count({
		label: 'number of strings',
		min: 1,
		max: 24,
		aliases: ['in parallel', 'parallel', 'strings', 'en paralelo', 'stränge'],
	}),
	layout: choice({
		label: 'how the batteries are joined',
		options: {
			series: ['in series', 'series', 'en serie', 'in reihe', 'in serie'],
			parallel: ['in parallel', 'parallel', 'en paralelo'],
		},
		help: 'All of them one way; name the numbers where they are joined both ways.',
	}),
	chemistry: choice({
		label: 'battery chemistry',
		options: chemistryWords,
	}),
	protectionA: quantity({
		label: "discharge limit of one battery's own protection",
		kind: 'current',
		min: 1,
		max: 2000,
		aliases: ['bms', 'protection', 'own protection', 'discharge limit', 'max discharge', 'schutzschaltung'],
		help: 'From the maker: the current at which the battery management system switches the battery off.',
	}),
};

export interface BankInput {
	readonly unitAh?: number | undefined;
	readonly unitWh?: number | undefined;
	readonly unitCount?: number | undefined;
	readonly seriesCount?: number | undefined;
	readonly parallelCount?: number | undefined;
	readonly layout?: 'series' | 'parallel' | undefined;
	readonly bankV?: number | undefined;
	readonly unitV?: number | undefined;
	/** for topics that ask for it; any voltage above 60 V is taken as the mains */
	readonly mainsV?: number | undefined;
	readonly chemistry?: keyof typeof chemistryWords | undefined;
}

/** Voltages in which only lead-acid batteries and cells are sold [V]. */
const leadAcidUnitsV = [2, 4, 6, 8] as const;

/** The chemistry named, or assumed. */
export function chemistryOf(input: BankInput, sheet: Sheet): Chemistry {
	if (input.chemistry !== undefined) return chemistries[input.chemistry];
	if (namedVoltages(input).some((value) => leadAcidUnitsV.some((unitV) => Math.abs(value - unitV) < 0.25))) {
		sheet.assume(
			'chemistry',
			'battery chemistry',
			chemistries.flooded.label,
			'batteries of 2, 4, 6 and 8 V are lead-acid',
			{ confirm: true },
		);
		return chemistries.flooded;
	}
	sheet.assume(
		'chemistry',
		'battery chemistry',
		chemistries.lifepo4.label,
		'what most conversions fit now (practice)',
		{ confirm: true },
	);
	return chemistries.lifepo4;
}

/** Above this a voltage named beside a bank is the mains [V]. */
const highestBankV = 60;

/** The mains voltage where one was named beside the bank's, else that of the region [V]; or why it can't be. */
export function mainsVoltageOf(input: BankInput, sheet: Sheet): number | Refusal {
	const mainsV = namedVoltages(input).find((value) => value > highestBankV);
	if (mainsV === undefined) return sheet.rules.mainsVoltageV;
	if (mainsV >= 100) return mainsV;
	return {
		code: 'out-of-range',
		text: sheet.say`I read ${sheet.show('voltage', mainsV)}, which is neither a bank nor a mains voltage.`,
		instead: 'Banks are 12, 24, 36 or 48 V; mains is 100 to 250 V.',
		field: 'bankV',
	};
}

function namedVoltages(input: BankInput): number[] {
	return [input.bankV, input.mainsV, input.unitV].filter((value) => value !== undefined);
}

/** How many in series were asked for, or null where that follows from the voltages. */
function seriesNamed(input: BankInput): number | null {
	if (input.seriesCount !== undefined) return input.seriesCount;
	if (input.layout === 'series' && input.parallelCount === undefined) return input.unitCount ?? null;
	return input.layout === 'parallel' || input.parallelCount === input.unitCount ? 1 : null;
}

function countOf(input: BankInput): number | null {
	if (input.unitCount !== undefined) return input.unitCount;
	if (input.seriesCount === undefined && input.parallelCount === undefined) return null;
	return (input.seriesCount ?? 1) * (input.parallelCount ?? 1);
}

/** The bank's voltages named: of two, the lower is the unit's, since units in series can only add up. */
function voltagesOf(input: BankInput): { readonly bankV: number | null; readonly unitV: number | null } {
	const named = namedVoltages(input).filter((value) => value <= highestBankV);
	const [first] = named;
	const series = seriesNamed(input);
	if (first === undefined) {
		return series === null || series === 1 ? { bankV: null, unitV: null } : { bankV: 12 * series, unitV: 12 };
	}
	if (named.length > 1) return { bankV: Math.max(...named), unitV: Math.min(...named) };
	const isUnit = bankClassV(first) === null && first < 10;
	// "2 x 12 V in series" names the batteries; "in series, 24 V" names the bank.
	if (series !== null && (isUnit || bankClassV(first) === 12)) return { bankV: first * series, unitV: first };
	// A lone 6 V, 3.2 V or 2 V is one battery or cell; no van is wired so.
	return isUnit ? { bankV: null, unitV: first } : { bankV: first, unitV: null };
}

/** The voltage class of the bank [V], assumed 12 V where none was named; or why it can't be. */
export function classOf(input: BankInput, sheet: Sheet): number | Refusal {
	const { bankV } = voltagesOf(input);
	const isNamed = namedVoltages(input).some((value) => value <= highestBankV);
	if (bankV !== null && !isNamed) {
		sheet.assume('unitV', 'voltage of one battery', 12, 'batteries for vans are mostly 12 V', {
			kind: 'voltage',
			confirm: true,
		});
	}
	if (bankV === null) {
		sheet.assume('bankV', 'bank voltage', 12, 'the usual house voltage', { kind: 'voltage', confirm: true });
		return 12;
	}
	return (
		bankClassV(bankV) ?? {
			code: 'out-of-range',
			text: sheet.say`I read ${sheet.show('voltage', bankV)} as the bank voltage; banks are not built so.`,
			instead: 'Name a bank of 12, 24, 36 or 48 V.',
			field: 'bankV',
		}
	);
}

/**
 * The bank as named, with series and parallel worked out.
 * @returns the bank, null where no capacity was named, or why these units can't make it
 */
export function readBank(
	input: BankInput,
	chemistry: Chemistry,
	classV: number,
	sheet: Sheet,
): Bank | Refusal | null {
	if (input.unitAh === undefined && input.unitWh === undefined) return null;
	const unitV = unitVoltage(input, chemistry, classV, sheet);
	const series = unitsInSeries(chemistry, unitV, classV);
	if (series === null) {
		return {
			code: 'impossible',
			text: sheet.say`Batteries of ${sheet.show('voltage', unitV)} can't be put in series to make ${classV} V with ${chemistry.label}.`,
			instead: sheet.say`Use batteries of ${classV} V, or of a voltage that divides it.`,
			field: 'unitV',
		};
	}
	const unitCount = countOf(input) ?? series;
	const asked = { series: input.seriesCount ?? series, parallel: input.parallelCount ?? unitCount / series };
	if (asked.series !== series || asked.series * asked.parallel !== unitCount) {
		const each = sheet.show('voltage', unitV);
		return {
			code: 'contradiction',
			text: sheet.say`${asked.series} in series and ${writeNumber(asked.parallel, 1)} in parallel don't make ${classV} V of ${unitCount} batteries of ${each}.`,
			instead: sheet.say`For ${classV} V put ${series} of ${each} in series; the number of batteries is a multiple of that.`,
			field: 'seriesCount',
		};
	}
	if (unitCount % series !== 0) {
		return {
			code: 'impossible',
			text: sheet.say`${unitCount} batteries don't make whole strings: ${classV} V takes ${series} of ${sheet.show('voltage', unitV)} in series.`,
			instead: sheet.say`Use ${series}, ${2 * series} or ${3 * series} batteries.`,
			field: 'unitCount',
		};
	}
	const unitAh = input.unitAh ?? (input.unitWh as number) / (nominalVoltageV(chemistry, classV) / series);
	return { chemistry, classV, unitAh, unitV, series, parallel: unitCount / series };
}

function unitVoltage(input: BankInput, chemistry: Chemistry, classV: number, sheet: Sheet): number {
	const { unitV } = voltagesOf(input);
	if (unitV !== null) return unitV;
	if (seriesNamed(input) === 1) return classV;
	const inSeries = unitsInSeries(chemistry, 12, classV);
	const many = countOf(input) ?? 1;
	if (classV > 12 && many > 1 && inSeries !== null && many % inSeries === 0) {
		sheet.assume(
			'unitV',
			'voltage of one battery',
			12,
			'several batteries in a higher bank are mostly 12 V',
			{
				kind: 'voltage',
				confirm: true,
			},
		);
		return 12;
	}
	return classV;
}

/** Ends a calculation with a refusal found on the way. */
export function refuseWith(sheet: Sheet, refusal: Refusal): Decision {
	return sheet.refuse(refusal.code, refusal.text, refusal.instead, refusal.field);
}

/** "2 in series, 2 in parallel" in words. */
export function layoutText(bank: Pick<Bank, 'series' | 'parallel'>, sheet: Sheet): string {
	const { series, parallel } = bank;
	if (series === 1 && parallel === 1) return sheet.say`one battery`;
	if (series === 1) return sheet.say`${parallel} in parallel`;
	if (parallel === 1) return sheet.say`${series} in series`;
	return sheet.say`${parallel} strings in parallel, each of ${series} in series`;
}
