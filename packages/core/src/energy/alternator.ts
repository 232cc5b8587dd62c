import { fromMemory, practice } from '../topic/source.js';

/** Share of its rating an alternator gives hot, at idle (practice). */
export const hotIdleShare = 0.5;
export const hotIdleSource = practice('a hot alternator gives about half its rating at idle');

/** Largest steady load on an alternator over its rating. */
export const steadyShare = 0.8;
export const steadySource = fromMemory(
	'FAA AC 43.13-1B',
	'chapter 11: continuous load at most 80 % of the generator rating',
);

/**
 * Engine, lights and blower of a van while driving [A] (practice): 50 A, less where the alternator itself is small.
 * @param ratedA the alternator's rating
 */
export function usualVehicleLoadA(ratedA: number): number {
	return Math.min(50, 0.3 * ratedA);
}

/** Lowest voltage at the charger's input with the engine on, for a 12 V vehicle [V] (practice). */
export const inputVoltageV = 12.5;
export const usualConverterEfficiency = 0.9;

/** Outputs in which DC-DC chargers are sold [A] (practice). */
export const chargerSizesA = [10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120] as const;

export interface Converter {
	/** voltage it charges at [V] */
	readonly outputV: number;
	/** lowest voltage it is fed with [V] */
	readonly inputV: number;
	readonly efficiency: number;
}

/** Current a DC-DC charger takes at its input for a current at its output [A]: Ii = Io Vo / (Vi η). */
export function converterInputA(outputA: number, converter: Converter): number {
	return (outputA * converter.outputV) / (converter.inputV * converter.efficiency);
}

/** Current a DC-DC charger can give for a current at its input [A]. */
export function converterOutputA(inputA: number, converter: Converter): number {
	return (inputA * converter.inputV * converter.efficiency) / converter.outputV;
}

/** What an alternator can spare for charging [A], never below 0. */
export interface Headroom {
	readonly drivingA: number;
	readonly idlingA: number;
}

/**
 * @param ratedA the alternator's rating
 * @param vehicleLoadA what the vehicle itself takes
 */
export function headroom(ratedA: number, vehicleLoadA: number, idleShare: number): Headroom {
	return {
		drivingA: Math.max(0, steadyShare * ratedA - vehicleLoadA),
		idlingA: Math.max(0, idleShare * ratedA - vehicleLoadA),
	};
}

/** The largest charger sold whose output is within a limit [A], or null where even the smallest is over it. */
export function largestCharger(limitA: number): number | null {
	return chargerSizesA.findLast((sizeA) => sizeA <= limitA) ?? null;
}
