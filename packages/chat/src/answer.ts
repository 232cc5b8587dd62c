import {
	assumptionSchema,
	findingSchema,
	resultSchema,
	sizingSchema,
	stepSchema,
	tippingSchema,
} from '@lugbook/core';
import { z } from 'zod';

/** What became of a message. */
export const answerStatuses = [
	'answered',
	'needs-input',
	'refused',
	'listed',
	'small-talk',
	'not-understood',
] as const;
export type AnswerStatus = (typeof answerStatuses)[number];

const fieldValue = z.union([z.number(), z.string(), z.boolean(), z.array(z.record(z.string(), z.unknown()))]);

/** The answer as a program reads it; a public interface of the project (docs/answer.md). */
export const answerSchema = z.object({
	status: z.enum(answerStatuses),
	topic: z.string().nullable().describe("the topic's name, where one was read"),
	headline: z.string().describe('the decision, the question or the reason in one line'),
	because: z.string().nullable().describe('why, in one or two sentences'),
	understood: z.array(
		z.object({
			name: z.string(),
			label: z.string(),
			value: fieldValue,
			unit: z.string().nullable().describe('base unit of the value; 1 for a fraction'),
			text: z.string().describe('value and unit as shown to a person'),
			said: z.string().describe('the very words it was read from'),
		}),
	),
	assumed: z.array(assumptionSchema),
	tipping: z.array(tippingSchema),
	missing: z.array(z.string()).describe('names of the inputs asked for'),
	results: z.array(resultSchema),
	governedBy: z.string().nullable(),
	neighbours: sizingNeighbours(),
	findings: z.array(findingSchema),
	cautions: z.array(z.string()),
	sources: z.array(z.string()),
	working: z.array(stepSchema),
	chain: z.array(sizingSchema).describe('sizings of other topics this answer rests on'),
	notes: z.array(z.string()).describe('how something was taken'),
	unread: z.array(z.string()).describe('the words that could not be used'),
	entry: z.int().nullable().describe("the log entry's number, or null where nothing is kept"),
});
export type Answer = z.infer<typeof answerSchema>;

function sizingNeighbours() {
	return z.array(z.object({ choice: z.string(), passes: z.boolean(), text: z.string() }));
}

/** An answer with nothing in it but its status and its line. */
export function bareAnswer(status: AnswerStatus, headline: string, more: Partial<Answer> = {}): Answer {
	return {
		status,
		topic: null,
		headline,
		because: null,
		understood: [],
		assumed: [],
		tipping: [],
		missing: [],
		results: [],
		governedBy: null,
		neighbours: [],
		findings: [],
		cautions: [],
		sources: [],
		working: [],
		chain: [],
		notes: [],
		unread: [],
		entry: null,
		...more,
	};
}
