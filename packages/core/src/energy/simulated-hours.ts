import type { Context } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { simulate } from '../topics/simulate.js';
import type { HourlyPowers, Simulation } from './simulation.js';
import { type SimulationInput, type SolvedSimulation, solveSimulation } from './van-simulation.js';

/** The hours behind an answer of the topic "simulate", for drawing them. */
export interface SimulatedHours {
	/** where the energy went, and the state of charge at the end of every hour */
	readonly run: Simulation;
	/** mean powers of every hour, at the bank [W] */
	readonly powers: HourlyPowers;
	/** month of the first hour, 1 to 12; it begins at midnight, local standard time */
	readonly firstMonth: number;
	readonly days: number;
	/** rated capacity of the bank as run [Ah] */
	readonly capacityAh: number;
	/** rated power of the array as run [W] */
	readonly arrayW: number;
	/** share of the capacity that was to be kept */
	readonly reserve: number;
	/** state of charge before the first hour, as a share of the full bank */
	readonly startSoc: number;
}

/**
 * Runs the hours of a question again, from the same inputs that the topic got.
 *
 * @param given the inputs by field name, in base units
 * @returns null where the topic asks or refuses
 */
export function simulatedHours(
	given: Readonly<Record<string, unknown>>,
	context: Context,
): SimulatedHours | null {
	let solved: SolvedSimulation | null = null;
	let reserve = 0;
	runTopic(
		{
			...simulate,
			calculate: (input: SimulationInput, sheet) => {
				const found = solveSimulation(input, sheet);
				if ('kind' in found) return found;
				solved = found;
				reserve = input.reserve;
				return sheet.answer('');
			},
		},
		given,
		context,
	);
	const taken = solved as SolvedSimulation | null;
	if (taken === null) return null;
	const { run, powers, plan, bank, capacityWh, arrayW } = taken;
	return {
		run,
		powers,
		firstMonth: plan.firstMonth,
		days: plan.days,
		capacityAh: capacityWh / plan.nominalV,
		arrayW,
		reserve,
		startSoc: bank.start,
	};
}
