import type { Load } from './loads.js';

/**
 * Current of an inverter from the bank: I = P / (V η).
 * @param powerW at its output
 * @param bankV the lowest voltage it runs at, where the current is largest
 * @returns current [A]
 */
export function inverterInputA(powerW: number, bankV: number, efficiency: number): number {
	return powerW / (bankV * efficiency);
}

/** Largest power for a moment with all loads on [W]: the worst starter starts while the rest runs. */
export function surgeW(loads: readonly Load[]): number {
	const runningW = loads.reduce((sum, load) => sum + load.runningW, 0);
	// Of several of a kind one starts at a time.
	const extra = loads.map((load) => (load.surgeFactor - 1) * (load.runningW / load.count));
	return runningW + Math.max(0, ...extra);
}

/** Inverters as they are sold, by their continuous power [W] (practice). */
export const inverterSizesW = [
	150, 300, 400, 500, 600, 800, 1000, 1200, 1500, 2000, 2500, 3000, 3500, 4000, 5000, 6000, 8000, 10_000,
] as const;

/** Power for a moment over continuous power (practice). */
export const usualSurgeShare = 2;

/** Share of its continuous power that an inverter is loaded with for long: it must shed the heat (practice). */
export const steadyLoadShare = 0.8;

/** The smallest inverter sold that carries a load steadily and for a moment, or null above the largest. */
export function smallestInverter(continuousW: number, peakW: number, surgeShare: number): number | null {
	return (
		inverterSizesW.find((sizeW) => sizeW * steadyLoadShare >= continuousW && sizeW * surgeShare >= peakW) ??
		null
	);
}
