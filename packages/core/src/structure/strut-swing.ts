import type { Context } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { strut } from '../topics/strut.js';
import { lidFrom, type SwingPoint, springFor, swingCurve } from './strut.js';

/** The swing behind an answer of the topic "strut", for drawing it. */
export interface StrutSwing {
	/** extended force of one spring: the one to be checked, or the one chosen [N] */
	readonly springN: number;
	/** cold, the rated 20 °C, hot */
	readonly curves: readonly {
		readonly temperatureC: number;
		/** from closed to open, in 61 even steps */
		readonly points: readonly SwingPoint[];
	}[];
}

/**
 * Works out the swing of a question again, from the same inputs that the topic got.
 *
 * @param given the inputs by field name, in base units
 * @returns null where the topic asks or refuses, or where only the spring's lever is known
 */
export function strutSwing(given: Readonly<Record<string, unknown>>, context: Context): StrutSwing | null {
	let taken: Parameters<typeof strut.calculate>[0] | null = null;
	const outcome = runTopic(
		{
			...strut,
			calculate: (input: Parameters<typeof strut.calculate>[0], sheet) => {
				taken = input;
				return strut.calculate(input, sheet);
			},
		},
		given,
		context,
	);
	const input = taken as Parameters<typeof strut.calculate>[0] | null;
	if (outcome.status !== 'answered' || input === null) return null;
	const { lidMountM, bodyMountBelowM } = input;
	const springN = outcome.sizing.results.find((result) => result.name === 'force')?.value;
	if (lidMountM === undefined || bodyMountBelowM === undefined || typeof springN !== 'number') return null;
	const lid = lidFrom({ ...input, lidMountM, bodyMountBelowM });
	const spring = springFor(lid, springN, input.progression);
	return {
		springN,
		curves: [input.coldC, 20, input.hotC].map((temperatureC) => ({
			temperatureC,
			points: swingCurve(lid, spring, temperatureC),
		})),
	};
}
