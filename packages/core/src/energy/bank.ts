import {
	armyColdCapacity,
	armyColdSource,
	type Chemistry,
	ieee485Factor,
	ieee485FromMemorySource,
	ieee485LargestFactor,
	ieee485Source,
	lithiumColdCapacity,
	lithiumColdSource,
	warmSource,
} from '../tables/batteries.js';
import { interpolate } from '../tables/interpolate.js';
import type { Source } from '../topic/source.js';

/** Bank voltages the trade builds [V]; the true voltage depends on the chemistry. */
const bankClassesV = [12, 24, 36, 48] as const;

/**
 * The class a bank's voltage belongs to: 12.8 V and 13.6 V are the 12 V class, 51.2 V the 48 V class.
 * @returns the class [V], or null where the voltage belongs to none
 */
export function bankClassV(voltageV: number): number | null {
	return bankClassesV.find((classV) => voltageV >= classV * 0.875 && voltageV <= classV * 1.25) ?? null;
}

/** Cells in series for a bank of the class. */
export function cellsInSeries(chemistry: Chemistry, classV: number): number {
	return (chemistry.cellsFor12V * classV) / 12;
}

/** Rated voltage of a bank of the class [V]: 12.8 V for LiFePO4 of the 12 V class. */
export function nominalVoltageV(chemistry: Chemistry, classV: number): number {
	return cellsInSeries(chemistry, classV) * chemistry.nominalVPerCell;
}

/** Voltage at which a bank of the class is called empty [V]: 10.5 V for lead-acid of the 12 V class. */
export function cutoffVoltageV(chemistry: Chemistry, classV: number): number {
	return cellsInSeries(chemistry, classV) * chemistry.cutoffVPerCell;
}

/** Upper end of the charging voltage of a bank of the class [V]. */
export function chargingVoltageV(chemistry: Chemistry, classV: number): number {
	return cellsInSeries(chemistry, classV) * chemistry.chargeVPerCell;
}

/** Equal units wired in series and parallel. */
export interface Bank {
	readonly chemistry: Chemistry;
	/** voltage class of the whole [V] */
	readonly classV: number;
	/** capacity of one unit at its rated time [Ah] */
	readonly unitAh: number;
	/** voltage of one unit as named [V] */
	readonly unitV: number;
	readonly series: number;
	readonly parallel: number;
}

/** Units in series for a bank of the class, or null where the units can't make it up. */
export function unitsInSeries(chemistry: Chemistry, unitV: number, classV: number): number | null {
	const unitClassV = bankClassV(unitV);
	const cells =
		unitClassV === null
			? Math.round(unitV / chemistry.nominalVPerCell)
			: cellsInSeries(chemistry, unitClassV);
	// Below the 12 V class a unit is so many cells; a voltage far from any whole number of cells is no unit.
	const isWhole = unitClassV !== null || Math.abs(cells * chemistry.nominalVPerCell - unitV) <= 0.1 * unitV;
	if (cells < 1 || !isWhole) return null;
	const series = cellsInSeries(chemistry, classV) / cells;
	return Number.isInteger(series) && series >= 1 ? series : null;
}

/** Capacity of the bank at its rated time, new and at 25 °C [Ah]. */
export function capacityAh(bank: Bank): number {
	return bank.unitAh * bank.parallel;
}

/** Energy of the bank at its rated time, new and at 25 °C [Wh]. */
export function energyWh(bank: Bank): number {
	return capacityAh(bank) * nominalVoltageV(bank.chemistry, bank.classV);
}

/** A current a bank must not exceed, and who says so. */
export interface CurrentLimit {
	/** the whole bank's limit [A] */
	readonly limitA: number;
	/** true where the maker's figure was given, false where it is the usual rate of the chemistry */
	readonly given: boolean;
}

/**
 * Largest charge current of the bank: the unit's own figure where it is given, else the usual rate.
 * @param givenA limit of one unit [A], or undefined
 */
export function chargeLimit(bank: Bank, givenA: number | undefined): CurrentLimit {
	return limitOf(bank, givenA, bank.chemistry.chargeRatePerH);
}

/**
 * Largest steady discharge current of the bank: the unit's protection (BMS) limit where it is given, else the usual
 * rate. Units in series share one current, units in parallel add up.
 */
export function dischargeLimit(bank: Bank, givenA: number | undefined): CurrentLimit {
	return limitOf(bank, givenA, bank.chemistry.dischargeRatePerH);
}

function limitOf(bank: Bank, givenA: number | undefined, ratePerH: number): CurrentLimit {
	return givenA === undefined
		? { limitA: ratePerH * capacityAh(bank), given: false }
		: { limitA: givenA * bank.parallel, given: true };
}

/** Share of the capacity that is left in the cold, with its source. */
export interface ColdShare {
	readonly share: number;
	readonly source: Source;
}

/**
 * Share of the rated capacity at a cell temperature; never more than 1.
 * Lead-acid: 1 over the IEEE 485 factor; below −3.9 °C, where that table ends, the Army's percentages, which are for
 * a faster discharge, but never more than at the end of the table.
 * @returns null where no table reaches (below −17.8 °C for lead-acid, −20 °C for lithium)
 */
export function coldShare(chemistry: Chemistry, temperatureC: number): ColdShare | null {
	if (temperatureC >= 25) return { share: 1, source: warmSource };
	if (!chemistry.leadAcid) {
		const share = interpolate(lithiumColdCapacity, temperatureC);
		return share === null ? null : { share, source: lithiumColdSource };
	}
	const factor = ieee485Factor(temperatureC);
	if (factor !== null) {
		return { share: 1 / factor, source: temperatureC < 4.4 ? ieee485FromMemorySource : ieee485Source };
	}
	const army = interpolate(armyColdCapacity, temperatureC);
	return army === null ? null : { share: Math.min(army, 1 / ieee485LargestFactor), source: armyColdSource };
}

/** What raises the capacity to be installed above the charge that is drawn. */
export interface CapacityFactors {
	readonly depthOfDischarge: number;
	/** share of the capacity left at the lowest temperature */
	readonly coldShare: number;
	/** 1.25 so that it still serves at 80 % of its capacity */
	readonly ageing: number;
	/** design margin on top, 1 for none */
	readonly margin: number;
}

/**
 * Capacity a bank must have so that a charge can be drawn from it: C = Q · ageing · margin / (DoD · cold share).
 * @param chargeAh drawn between two full charges [Ah]
 * @returns rated capacity [Ah], not rounded
 * @source IEEE 485 and UFC 3-520-01 Appendix E (temperature, ageing, margin); depth of discharge is practice
 */
export function requiredCapacityAh(chargeAh: number, factors: CapacityFactors): number {
	return (chargeAh * factors.ageing * factors.margin) / (factors.depthOfDischarge * factors.coldShare);
}
