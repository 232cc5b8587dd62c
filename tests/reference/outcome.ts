import { type Context, defaultContext } from '../../packages/core/src/topic/context.js';
import type { AnyTopic } from '../../packages/core/src/topic/declare.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import type { Refusal, Sizing } from '../../packages/core/src/topic/sizing.js';

export type Inputs = Readonly<Record<string, unknown>>;

export const metric: Context = { region: 'eu', units: 'metric', language: 'en' };

/** The sizing of a question that must be answered. */
export function answered(topic: AnyTopic, inputs: Inputs, context = defaultContext): Sizing {
	const outcome = runTopic(topic, inputs, context);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

/** Why a question that must not be answered was refused. */
export function refusal(topic: AnyTopic, inputs: Inputs, context = defaultContext): Refusal {
	const outcome = runTopic(topic, inputs, context);
	const [first] = outcome.status === 'refused' ? outcome.refusals : [];
	if (first === undefined) throw new Error(JSON.stringify(outcome));
	return first;
}

/** The numbers of an answer by name. */
export function numbersOf(
	topic: AnyTopic,
	inputs: Inputs,
	context = defaultContext,
): Readonly<Record<string, number>> {
	return Object.fromEntries(
		answered(topic, inputs, context).results.flatMap(({ name, value }) =>
			typeof value === 'number' ? [[name, value]] : [],
		),
	);
}

/** One number of an answer. */
export function numberOf(topic: AnyTopic, inputs: Inputs, name: string, context = defaultContext): number {
	const value = numbersOf(topic, inputs, context)[name];
	if (value === undefined) throw new Error(`${topic.name} gives no number "${name}"`);
	return value;
}

/** The codes of the findings of an answer. */
export function codesOf(topic: AnyTopic, inputs: Inputs, context = defaultContext): readonly string[] {
	return answered(topic, inputs, context).findings.map((finding) => finding.code);
}
