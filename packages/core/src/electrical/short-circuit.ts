import { type Bank, cellsInSeries } from '../energy/bank.js';
import type { ConductorSize } from '../tables/conductors.js';
import {
	type FuseClass,
	fuseClasses,
	type InterruptingRow,
	interruptingRows,
	type OpeningTime,
} from '../tables/fuses.js';
import { cellSources, chargedResistanceShare } from '../tables/internal-resistance.js';

/** Open-circuit voltage of a full, rested bank [V]. */
export function fullBankV(bank: Bank): number {
	return cellsInSeries(bank.chemistry, bank.classV) * cellSources[bank.chemistry.name].fullV;
}

/**
 * Internal resistance of one unit of the bank, typical of its chemistry and capacity [ohm]: cells in series, each
 * with resistance over capacity at the low end of what is printed, which gives the highest current.
 */
export function typicalUnitOhm(bank: Bank): number {
	const cells = cellsInSeries(bank.chemistry, bank.classV) / bank.series;
	return (cells * cellSources[bank.chemistry.name].ohmAh) / bank.unitAh;
}

/** Units in series add their resistances, strings in parallel share the current [ohm]. */
export function bankOhm(unitOhm: number, bank: Pick<Bank, 'series' | 'parallel'>): number {
	return (unitOhm * bank.series) / bank.parallel;
}

/**
 * Both legs of a cable at 20 °C [ohm]: the cold conductor carries the highest fault current.
 * @param lengthM one way [m]
 * @param parallel conductors side by side in each leg
 */
export function coldLoopOhm(size: ConductorSize, lengthM: number, parallel: number): number {
	return (2 * lengthM * size.bareOhmPerM20C) / parallel;
}

export interface Fault {
	/** source voltage behind its resistance [V] */
	readonly openCircuitV: number;
	/** rated internal resistance of the whole source [ohm] */
	readonly sourceOhm: number;
	/** resistance of the cable loop from the source to the fault and back [ohm] */
	readonly loopOhm: number;
}

/**
 * Prospective short-circuit current [A]: I = E / (0.9 Rb + Rc). Joints, switches and the arc are not counted: they
 * only lower it.
 * @source IEC 61660-1 (from memory) for the 0.9; Ohm's law
 */
export function prospectiveA({ openCircuitV, sourceOhm, loopOhm }: Fault): number {
	return openCircuitV / (chargedResistanceShare * sourceOhm + loopOhm);
}

/**
 * Source resistance that a named terminal short-circuit current stands for [ohm], so that {@link prospectiveA} gives
 * just that current at the terminals.
 */
export function ohmOfShortCircuit(openCircuitV: number, terminalA: number): number {
	return openCircuitV / terminalA / chargedResistanceShare;
}

/** Why a class of fuse does not serve. */
export type FuseFailure = 'voltage' | 'rating' | 'breaking';

export interface FuseDuty {
	/** highest working voltage between the poles [V] */
	readonly voltageV: number;
	/** rating wanted [A], or null where only the fault counts */
	readonly ratingA: number | null;
	/** prospective current at the fuse [A], or null where it is not known */
	readonly prospectiveA: number | null;
}

/** What keeps a class of fuse from this duty; empty where it serves. */
export function fuseFailures(fuse: FuseClass, duty: FuseDuty): FuseFailure[] {
	const failures: FuseFailure[] = [];
	if (duty.voltageV > fuse.ratedVoltageV) failures.push('voltage');
	if (duty.ratingA !== null && duty.ratingA > fuse.largestRatingA) failures.push('rating');
	if (duty.prospectiveA !== null && duty.prospectiveA > (fuse.markedUpToA ?? fuse.breaksA)) {
		failures.push('breaking');
	}
	return failures;
}

/** The classes that serve, smallest construction first. */
export function servingClasses(duty: FuseDuty): FuseClass[] {
	return fuseClasses.filter((fuse) => fuseFailures(fuse, duty).length === 0);
}

/**
 * Row of the marine table for breakers on a battery.
 * @returns null above 32 V, where the table has none
 */
export function marineInterrupting(systemV: number, crankingA: number): InterruptingRow | null {
	return interruptingRows.find((row) => systemV <= row.toV && crankingA <= row.toCrankingA) ?? null;
}

/**
 * When a fuse opens at a current, from its points: no sooner than the last point at or above it, no later than the
 * nearest point at or below it.
 */
export function openingWindow(
	points: readonly OpeningTime[],
	share: number,
): { readonly leastS: number; readonly mostS: number } {
	const at = points.filter((point) => point.mostS !== null && point.share <= share).at(-1);
	const above = points.find((point) => point.leastS !== null && point.share >= share);
	return { leastS: above?.leastS ?? 0, mostS: at?.mostS ?? Number.POSITIVE_INFINITY };
}

const markingsA = [500, 750, 1000, 1500, 2000, 2500, 3000, 5000, 10_000, 20_000, 50_000, 100_000, 200_000];

/** The next interrupting rating in which devices are marked [A]. */
export function markedInterruptingA(currentA: number): number {
	return markingsA.find((one) => one >= currentA) ?? Math.ceil(currentA / 100_000) * 100_000;
}
