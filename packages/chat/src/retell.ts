/** A reply in the language it was asked in. What the log keeps stays English; this is made from it when it is shown. */

import { type Language, runTopic, type Speaking, sayFor, topicNamed } from '@lugbook/core';
import type { Given } from '@lugbook/language';
import type { Answer } from './answer.js';
import type { ExchangeBody } from './memory.js';
import type { Button, Part, Reply } from './message.js';
import { books } from './phrases/books.js';
import { answerOf, understoodOf, valuesOf } from './question.js';
import { buttonsOf, partsOf, workingParts } from './render/parts.js';
import { rephraser } from './render/rephrase.js';

/** What was worked out anew in the language, where it is the same answer; null where it is not. */
export function workedIn(
	language: Language,
	request: ExchangeBody['request'],
	answer: Answer,
): Answer | null {
	const topic = request === null ? null : topicNamed(request.topic);
	if (request === null || topic === null) return null;
	const given = request.given as Given[];
	if (given.some(({ name }) => topic.fields[name] === undefined)) return null;
	const context = { ...request.context, language };
	const told = answerOf(runTopic(topic, valuesOf(given), context));
	const figures = (one: Answer) =>
		JSON.stringify(one.results.map(({ name, value }) => [name, typeof value === 'number' ? value : null]));
	const same =
		told.status === answer.status &&
		figures(told) === figures(answer) &&
		told.missing.join() === answer.missing.join() &&
		told.findings.map(({ code }) => code).join() === answer.findings.map(({ code }) => code).join();
	if (!same) return null;
	return {
		...told,
		// A program reads the same words whatever the language; a person reads the text.
		results: told.results.map((one, index) => ({ ...one, value: answer.results[index]?.value ?? one.value })),
		understood: understoodOf(given, topic, context),
	};
}

/** The texts of an answer beside those of the same answer in another language. */
function pairsOf(one: unknown, other: unknown, pairs: Map<string, string>): void {
	if (typeof one === 'string' && typeof other === 'string') {
		if (one !== other) pairs.set(one, other);
	} else if (typeof one === 'object' && typeof other === 'object' && one !== null && other !== null) {
		for (const [key, value] of Object.entries(one)) {
			pairsOf(value, (other as Record<string, unknown>)[key], pairs);
		}
	}
}

/** What a reply is about. */
export interface About {
	/** the question as read, where the reply is about one */
	readonly request: ExchangeBody['request'];
	/** the answer of that question, where the reply only tells something of it */
	readonly answered: Answer | null;
	readonly build: string | null;
	/** English texts that are known in the language from elsewhere */
	readonly told?: ReadonlyMap<string, string>;
}

/** Labels of the buttons under a reply of the log; other labels are words as typed. */
const ofLog: ReadonlySet<string> = new Set(['More', 'Forget me', 'Yes, forget me']);

/** The reply in another language: the same pieces in the same order, and the same figures. */
export function retell(
	reply: Reply,
	speaking: Speaking,
	{ request, answered, build, told: known }: About,
): Reply {
	if (speaking.language === 'en') return reply;
	const say = sayFor(speaking, books[speaking.language]);
	const { answer } = reply;
	const source = answered ?? answer;
	const worked = workedIn(speaking.language, request, source);
	const pairs = new Map<string, string>(known);
	if (worked !== null) pairsOf(source, worked, pairs);
	const rephrase = rephraser(speaking, pairs);
	const told: Answer = {
		...rephrased(answer, rephrase),
		...(worked !== null && answered === null
			? { ...worked, unread: answer.unread, entry: answer.entry }
			: {}),
		notes: answer.notes.map(rephrase),
	};
	// The pieces as they were shown, wherever in the reply they stand.
	const shown: readonly (readonly [readonly Part[], readonly Part[]])[] = [
		[partsOf(answer, build), partsOf(told, build, say, rephrase)],
		...(worked === null ? [] : [[workingParts(source), workingParts(worked, say)] as const]),
	];
	for (const [before, after] of shown) {
		if (before.length === after.length) pairsOf(before, after, pairs);
	}
	const parts = reply.parts.map((part) =>
		part.isPaper === true ? part : { ...part, text: rephrase(part.text) },
	);
	const own = buttonsOf(answer).map(({ label }) => label);
	return {
		...reply,
		language: speaking.language,
		answer: told,
		parts: parts.map((part) => named(part, rephrase)),
		buttons: reply.buttons.map(
			(button): Button => ({
				...button,
				label: own.includes(button.label) || ofLog.has(button.label) ? rephrase(button.label) : button.label,
			}),
		),
	};
}

/** An answer that no topic gave, text by text. */
function rephrased(answer: Answer, rephrase: (text: string) => string): Answer {
	return {
		...answer,
		headline: rephrase(answer.headline),
		because: answer.because === null ? null : rephrase(answer.because),
		governedBy: answer.governedBy === null ? null : rephrase(answer.governedBy),
		findings: answer.findings.map((finding) => ({ ...finding, text: rephrase(finding.text) })),
		cautions: answer.cautions.map(rephrase),
		understood: answer.understood.map((one) => ({ ...one, label: rephrase(one.label) })),
		assumed: answer.assumed.map((one) => ({
			...one,
			label: rephrase(one.label),
			text: rephrase(one.text),
			why: rephrase(one.why),
		})),
		neighbours: answer.neighbours.map((one) => ({
			...one,
			choice: rephrase(one.choice),
			text: rephrase(one.text),
		})),
		tipping: answer.tipping.map((one) => ({ ...one, label: rephrase(one.label), text: rephrase(one.text) })),
		results: answer.results.map((one) => ({ ...one, label: rephrase(one.label), text: rephrase(one.text) })),
	};
}

const severityWords: Partial<Record<Part['kind'], string>> = {
	danger: 'DANGER',
	warning: 'Warning',
	note: 'Note',
	caution: 'Caution',
};

function named(part: Part, rephrase: (text: string) => string): Part {
	const word = severityWords[part.kind];
	return word === undefined ? part : { ...part, severity: rephrase(word) };
}
