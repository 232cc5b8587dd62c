import { type Context, defaultContext } from '../../packages/core/src/topic/context.js';
import type { AnyTopic } from '../../packages/core/src/topic/declare.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import type { Missing, Refusal, Sizing } from '../../packages/core/src/topic/sizing.js';

type Given = Readonly<Record<string, unknown>>;

export const us = defaultContext;
export const eu: Context = { region: 'eu', units: 'metric', language: 'en' };

/** The answer of a topic; throws where there is none, with what came instead. */
export function answered(topic: AnyTopic, given: Given, context: Context = us): Sizing {
	const outcome = runTopic(topic, given, context);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

export function refused(topic: AnyTopic, given: Given, context: Context = us): readonly Refusal[] {
	const outcome = runTopic(topic, given, context);
	if (outcome.status !== 'refused') throw new Error(JSON.stringify(outcome));
	return outcome.refusals;
}

export function asked(topic: AnyTopic, given: Given, context: Context = us): readonly Missing[] {
	const outcome = runTopic(topic, given, context);
	if (outcome.status !== 'needs-input') throw new Error(JSON.stringify(outcome));
	return outcome.missing;
}

/** The results of an answer by name. */
export function resultsOf(
	topic: AnyTopic,
	given: Given,
	context: Context = us,
): Readonly<Record<string, number | string>> {
	return Object.fromEntries(
		answered(topic, given, context).results.map((result) => [result.name, result.value]),
	);
}

/** The codes of the findings of an answer. */
export function codesOf(topic: AnyTopic, given: Given, context: Context = us): readonly string[] {
	return answered(topic, given, context).findings.map((finding) => finding.code);
}
