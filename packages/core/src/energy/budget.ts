import type { Load } from './loads.js';

export interface InverterUse {
	/** output over input while it carries a load */
	readonly efficiency: number;
	/** draw with nothing connected [W] */
	readonly idleW: number;
	/** hours a day it is switched on [h] */
	readonly onH: number;
}

/** What the loads of one day take from a bank. */
export interface Budget {
	readonly dcWh: number;
	/** at the inverter's output */
	readonly mainsWh: number;
	/** lost while the inverter carries loads */
	readonly conversionWh: number;
	readonly idleWh: number;
	readonly totalWh: number;
	/** everything on at once, from the bank [W] */
	readonly peakBankW: number;
	/** all mains loads at once, at the inverter's output [W] */
	readonly mainsTogetherW: number;
	readonly largestMainsW: number;
}

/**
 * Sums the day: E = Σ dc + Σ mains / η + idle · hours. The inverter's idle draw is counted for every hour it is on,
 * loaded or not: the safe side.
 * @param loads with their daily energy known
 */
export function dailyBudget(loads: readonly Load[], inverter: InverterUse): Budget {
	const dc = loads.filter((load) => !load.mains);
	const mains = loads.filter((load) => load.mains);
	const hasMains = mains.length > 0;
	const dcWh = sum(dc.map((load) => load.dailyWh ?? 0));
	const mainsWh = sum(mains.map((load) => load.dailyWh ?? 0));
	const conversionWh = mainsWh / inverter.efficiency - mainsWh;
	const idleWh = hasMains ? inverter.idleW * inverter.onH : 0;
	const mainsTogetherW = sum(mains.map((load) => load.runningW));
	return {
		dcWh,
		mainsWh,
		conversionWh,
		idleWh,
		totalWh: dcWh + mainsWh + conversionWh + idleWh,
		peakBankW: peakBankW(loads, inverter),
		mainsTogetherW,
		largestMainsW: Math.max(0, ...mains.map((load) => load.runningW)),
	};
}

/** Power from the bank with everything on at once [W]. */
export function peakBankW(
	loads: readonly Load[],
	inverter: Pick<InverterUse, 'efficiency' | 'idleW'>,
): number {
	const dcW = sum(loads.filter((load) => !load.mains).map((load) => load.runningW));
	const mains = loads.filter((load) => load.mains);
	const mainsW = sum(mains.map((load) => load.runningW));
	return dcW + mainsW / inverter.efficiency + (mains.length > 0 ? inverter.idleW : 0);
}

/**
 * Share of a span of time that a load draws its power: all of it where nobody said how long it is on, its hours of each
 * day in a span of a day or more, its hours once in a shorter one.
 */
export function shareOfSpan(load: Load, spanH: number): number {
	const onShare = load.hoursPerDay === null ? 1 : Math.min(1, load.hoursPerDay / Math.min(24, spanH));
	return load.duty * onShare;
}

/**
 * Mean power the loads take from the bank over a span of time [W].
 * @param inverter its idle draw is counted throughout; 0 where none is on
 * @param spanH the time it is the mean of; a day or more unless said [h]
 */
export function averageBankW(
	loads: readonly Load[],
	inverter: Pick<InverterUse, 'efficiency' | 'idleW'>,
	spanH = 24,
): number {
	const meanW = (load: Load) => load.runningW * shareOfSpan(load, spanH);
	const dcW = sum(loads.filter((load) => !load.mains).map(meanW));
	const mainsW = sum(loads.filter((load) => load.mains).map(meanW));
	return dcW + mainsW / inverter.efficiency + inverter.idleW;
}

function sum(values: readonly number[]): number {
	return values.reduce((total, value) => total + value, 0);
}
