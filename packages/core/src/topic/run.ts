import type { Context } from './context.js';
import type { AnyTopic } from './declare.js';
import { baseUnitOf, type Field } from './field.js';
import { problemsOf } from './problems.js';
import { Sheet } from './sheet.js';
import type { Assumption, Missing, Outcome, Refusal } from './sizing.js';
import { phrase, sayFor } from './translate.js';
import { showValue } from './value.js';

/**
 * Answers one question.
 *
 * @param given the inputs by field name, in base units; what is missing is filled in from the declaration or asked for
 * @returns the sizing, or what is missing, or why there is no answer. It throws only on a programming error.
 */
export function runTopic(
	topic: AnyTopic,
	given: Readonly<Record<string, unknown>>,
	context: Context,
): Outcome {
	const refusals: Refusal[] = [];
	const input: Record<string, unknown> = {};
	for (const [name, value] of Object.entries(given)) {
		if (value === undefined) continue;
		const field = topic.fields[name];
		if (field === undefined) throw new Error(`${topic.name} has no field "${name}"`);
		const problems = problemsOf(name, field, value, context);
		refusals.push(...problems);
		if (problems.length === 0) input[name] = value;
	}
	for (const one of topic.contradictions(input as never, context)) {
		refusals.push({ ...one, text: phrase(context, one.text), instead: phrase(context, one.instead) });
	}
	if (refusals.length > 0) return { status: 'refused', topic: topic.name, refusals };

	const missing = missingOf(topic, input, context);
	if (missing.length > 0) return { status: 'needs-input', topic: topic.name, missing };

	const present = new Set(Object.keys(input));
	const assumed: Assumption[] = [];
	for (const [name, field] of Object.entries(topic.fields)) {
		if (present.has(name) || field.meta.fallback === null) continue;
		const { value, why, confirm } = field.meta.fallback;
		const taken = typeof value === 'function' ? value(input, context) : value;
		input[name] = taken;
		assumed.push({
			name,
			label: phrase(context, field.meta.label),
			value: typeof taken === 'object' ? JSON.stringify(taken) : taken,
			unit: baseUnitOf(field),
			text: showValue(field, taken, context),
			why: phrase(context, why),
			confirm,
		});
	}

	const sheet = new Sheet(topic.name, context, present, assumed);
	const decision = topic.calculate(input as never, sheet);
	switch (decision.kind) {
		case 'answer':
			return { status: 'answered', topic: topic.name, sizing: sheet.toSizing(decision) };
		case 'ask':
			return { status: 'needs-input', topic: topic.name, missing: [...decision.missing] };
		case 'refuse':
			return { status: 'refused', topic: topic.name, refusals: [...decision.refusals] };
	}
}

function missingOf(topic: AnyTopic, input: Readonly<Record<string, unknown>>, context: Context): Missing[] {
	const missing: Missing[] = [];
	for (const [name, field] of Object.entries(topic.fields)) {
		if (field.presence === 'required' && input[name] === undefined) {
			missing.push({ name, label: phrase(context, field.meta.label), question: questionOf(field, context) });
		}
	}
	for (const need of topic.needs) {
		const first = need.anyOf[0];
		if (first === undefined || need.anyOf.some((name) => input[name] !== undefined)) continue;
		const label = phrase(context, (topic.fields[first] as Field).meta.label);
		missing.push({ name: first, label, question: phrase(context, need.question) });
	}
	return missing;
}

function questionOf(field: Field, context: Context): string {
	const { label, question } = field.meta;
	return question === null ? sayFor(context)`What is the ${label}?` : phrase(context, question);
}
