import {
	type AnyTopic,
	baseUnitOf,
	type Context,
	calculationVersion,
	type Field,
	type Outcome,
	phrase,
	type Rest,
	runTopic,
	showValue,
	topicNamed,
} from '@lugbook/core';
import type { Conflict, Given, Reading } from '@lugbook/language';
import { type Answer, bareAnswer } from './answer.js';
import type { ExchangeBody } from './memory.js';

export const exampleQuestion = '40A 12V 15 ft';

/** What a reading leads to: the answer, and the request as it is kept for follow-ups and review. */
export interface Worked {
	readonly answer: Answer;
	readonly request: ExchangeBody['request'];
	/** values of the build that the answer rests on */
	readonly rests?: readonly Rest[];
	/** for an unchanged question worked out again from its build: the number of the answer under which it was asked */
	readonly askedIn?: number;
	/** the answer before, where this one only tells something of it */
	readonly about?: Answer;
}

/**
 * Calculates what was read. No log, no platform: the same reading gives the same answer.
 *
 * @param named equipment that the question spoke of
 */
export function workOut(read: Reading, named: readonly string[] = []): Worked {
	// What is kept is English, whoever asked; it is retold when it is shown.
	const reading: Reading = { ...read, context: { ...read.context, language: 'en' } };
	const topic = reading.topic === null ? null : topicNamed(reading.topic);
	if (topic === null) return { answer: withoutTopic(reading), request: null };
	const conflict = reading.conflicts[0];
	if (conflict !== undefined) return askWhich(reading, topic, conflict);
	const outcome = runTopic(topic, valuesOf(reading.given), reading.context);
	const [unplaced] = reading.unplaced;
	if (unplaced !== undefined && outcome.status === 'answered') return askWhatFor(reading, topic, unplaced);
	const asked = outcome.status === 'needs-input' ? (outcome.missing[0]?.name ?? null) : null;
	return {
		answer: {
			...answerOf(outcome),
			understood: understoodOf(reading.given, topic, reading.context),
			notes: [...reading.notes],
			unread: [...reading.unread],
		},
		request: { ...requestOf(reading, topic, asked), ...(named.length === 0 ? {} : { named: [...named] }) },
	};
}

export function valuesOf(given: readonly Given[]): Record<string, unknown> {
	return Object.fromEntries(given.map(({ name, value }) => [name, value]));
}

function requestOf(
	reading: Reading,
	topic: AnyTopic,
	asked: string | null,
): NonNullable<ExchangeBody['request']> {
	return {
		topic: topic.name,
		given: reading.given.map(({ name, value, said }) => ({ name, value: plainValue(value), said })),
		asked,
		context: reading.context,
	};
}

/** A value as JSON keeps it. */
function plainValue(value: Given['value']): string | number | boolean | Record<string, unknown>[] {
	return typeof value === 'object' ? [...value] : value;
}

export function understoodOf(
	given: readonly Given[],
	topic: AnyTopic,
	context: Context,
): Answer['understood'] {
	// What the build adds to something that was said stands in its place.
	const last = new Map(given.map((one) => [one.name, one]));
	return [...last.values()].map(({ name, value, said }) => {
		const field = topic.fields[name] as Field;
		return {
			name,
			label: phrase(context, field.meta.label),
			value: plainValue(value),
			unit: baseUnitOf(field),
			text: showValue(field, value, context),
			said,
		};
	});
}

function withoutTopic(reading: Reading): Answer {
	if (reading.tooLong)
		return bareAnswer(
			'not-understood',
			'That message is too long for me: I read up to 2,000 characters. Send the question alone.',
		);
	if (reading.smallTalk)
		return bareAnswer('small-talk', `Happy to help. Ask me a sizing question, such as "${exampleQuestion}".`);
	const unread = [...reading.unread];
	const headline =
		unread.length === 0
			? `Ask me a sizing question, such as "${exampleQuestion}".`
			: `I could not tell what to size. Say it with the numbers, such as "${exampleQuestion}".`;
	return bareAnswer('not-understood', headline, { unread });
}

function askWhich(reading: Reading, topic: AnyTopic, conflict: Conflict): Worked {
	const field = topic.fields[conflict.name] as Field;
	const options = conflict.values.map(({ value }) => showValue(field, value, reading.context));
	const headline =
		conflict.question ??
		`I read ${options.length === 2 ? 'two values' : 'several values'} for the ${field.meta.label}: ${options.join(' and ')}. Which one is meant?`;
	return {
		answer: bareAnswer('needs-input', headline, {
			topic: topic.name,
			missing: [conflict.name],
			understood: understoodOf(reading.given, topic, reading.context),
			notes: [...reading.notes],
			unread: [...reading.unread],
		}),
		request: requestOf(reading, topic, conflict.name),
	};
}

/** The words of the button that leaves a value out. */
export const leaveOut = 'leave it out';

/** A value that has no place in the question: to answer without it could be to answer something else. */
function askWhatFor(reading: Reading, topic: AnyTopic, said: string): Worked {
	const headline = `I take this to be about ${topic.title.toLowerCase()}, where "${said}" has no place. Leave it out, or say it another way?`;
	return {
		answer: bareAnswer('needs-input', headline, {
			topic: topic.name,
			understood: understoodOf(reading.given, topic, reading.context),
			notes: [...reading.notes],
			unread: [...reading.unread],
		}),
		request: requestOf(reading, topic, null),
	};
}

/** A topic's outcome as an answer. */
export function answerOf(outcome: Outcome): Answer {
	switch (outcome.status) {
		case 'answered': {
			const { sizing } = outcome;
			const { topic, headline, ...rest } = sizing;
			return bareAnswer('answered', headline, { topic, ...rest });
		}
		case 'needs-input':
			return bareAnswer('needs-input', outcome.missing.map(({ question }) => question).join(' '), {
				topic: outcome.topic,
				missing: outcome.missing.map(({ name }) => name),
			});
		case 'refused':
			return bareAnswer('refused', outcome.refusals.map(({ text }) => text).join(' '), {
				topic: outcome.topic,
				because: outcome.refusals.map(({ instead }) => instead).join(' '),
			});
	}
}

/** The body of an exchange's entry. What could not be used is words of a person and stays out of the chain. */
export function bodyOf(worked: Worked): ExchangeBody {
	return {
		version: calculationVersion,
		request: worked.request,
		...(worked.rests === undefined || worked.rests.length === 0 ? {} : { rests: [...worked.rests] }),
		...(worked.askedIn === undefined ? {} : { askedIn: worked.askedIn }),
		answer: { ...worked.answer, unread: [], entry: null },
	};
}
