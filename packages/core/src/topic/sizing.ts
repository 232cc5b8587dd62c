import { z } from 'zod';

/** Danger: someone can be hurt or a fire start. Warning: it will fail or disappoint. Note: worth knowing. */
export const severities = ['danger', 'warning', 'note'] as const;
export type Severity = (typeof severities)[number];

const unit = z.string().nullable();

export const resultSchema = z.object({
	name: z.string(),
	label: z.string(),
	value: z.union([z.number(), z.string()]),
	unit,
	text: z.string().describe('value and unit as shown to a person'),
});
export type Result = z.infer<typeof resultSchema>;

export const assumptionSchema = z.object({
	name: z.string(),
	label: z.string(),
	value: z.union([z.number(), z.string(), z.boolean()]),
	unit,
	text: z.string().describe('value and unit as shown to a person'),
	why: z.string(),
	confirm: z.boolean().describe('true where it should be confirmed before building'),
});
export type Assumption = z.infer<typeof assumptionSchema>;

export const findingSchema = z.object({
	code: z.string(),
	severity: z.enum(severities),
	text: z.string(),
	source: z.string(),
});
export type Finding = z.infer<typeof findingSchema>;

export const stepSchema = z.object({
	label: z.string(),
	formula: z.string(),
	substituted: z.string(),
	value: z.union([z.number(), z.string()]),
	unit,
	source: z.string(),
});
export type Step = z.infer<typeof stepSchema>;

export const neighbourSchema = z.object({
	choice: z.string().describe('the neighbouring choice, "6 AWG"'),
	passes: z.boolean(),
	text: z.string(),
});
export type Neighbour = z.infer<typeof neighbourSchema>;

export const tippingSchema = z.object({
	name: z.string().describe('the input that moves the choice'),
	label: z.string(),
	value: z.number(),
	unit,
	text: z.string(),
});
export type Tipping = z.infer<typeof tippingSchema>;

/** The record a topic returns and the log keeps. */
export interface Sizing {
	topic: string;
	headline: string;
	because: string | null;
	results: Result[];
	governedBy: string | null;
	neighbours: Neighbour[];
	working: Step[];
	assumed: Assumption[];
	tipping: Tipping[];
	findings: Finding[];
	cautions: string[];
	sources: string[];
	chain: Sizing[];
}

export const sizingSchema: z.ZodType<Sizing> = z.lazy(() =>
	z.object({
		topic: z.string(),
		headline: z.string().describe('the decision in one line'),
		because: z.string().nullable().describe('why, in one or two sentences'),
		results: z.array(resultSchema),
		governedBy: z.string().nullable().describe('the rule that decided'),
		neighbours: z.array(neighbourSchema),
		working: z.array(stepSchema),
		assumed: z.array(assumptionSchema),
		tipping: z.array(tippingSchema),
		findings: z.array(findingSchema),
		cautions: z.array(z.string()),
		sources: z.array(z.string()),
		chain: z.array(sizingSchema).describe('the sizings of other topics this one rests on'),
	}),
);

/** An input the question cannot be answered without. */
export interface Missing {
	name: string;
	label: string;
	question: string;
}

/** Why no answer is given, and what would be right. */
export interface Refusal {
	code: 'out-of-range' | 'contradiction' | 'impossible' | 'unsafe' | 'not-covered';
	text: string;
	/** the input it is about, where it is about one */
	field: string | null;
	/** the safe way, or what would be accepted */
	instead: string;
}

export type Outcome =
	| { status: 'answered'; topic: string; sizing: Sizing }
	| { status: 'needs-input'; topic: string; missing: Missing[] }
	| { status: 'refused'; topic: string; refusals: Refusal[] };
