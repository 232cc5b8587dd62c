import { type KindName, kindOf } from '../quantity/kinds.js';
import { type WriteOptions, write, writeNumber } from '../quantity/write.js';
import { type RuleSet, ruleSetOf } from '../rules/rules.js';
import type { Context } from './context.js';
import type { AnyTopic } from './declare.js';
import { runTopic } from './run.js';
import type {
	Assumption,
	Missing,
	Neighbour,
	Outcome,
	Refusal,
	Result,
	Severity,
	Sizing,
	Step,
	Tipping,
} from './sizing.js';
import { type Source, sourceText } from './source.js';
import { figuresOf, phrase, type Say, sayFor } from './translate.js';

/** What a calculation ends in. */
export type Decision =
	| {
			readonly kind: 'answer';
			readonly headline: string;
			readonly governedBy: string | null;
			readonly because: string | null;
	  }
	| { readonly kind: 'ask'; readonly missing: readonly Missing[] }
	| { readonly kind: 'refuse'; readonly refusals: readonly Refusal[] };

interface Valued {
	/** the kind of the value; its base unit becomes the unit. Leave out for plain numbers and words. */
	readonly kind?: KindName;
	/** a unit that is no kind's ("Ah/day"), or null for none */
	readonly unit?: string;
	readonly write?: WriteOptions;
}

/**
 * The calculation sheet a topic writes on while it calculates: results, steps, assumptions, findings, cautions and
 * sources are gathered here in the order of an engineer's sheet and become the `Sizing`.
 */
export class Sheet {
	readonly context: Context;
	/** the rule set of the region: tables, standard ratings, limits */
	readonly rules: RuleSet;
	readonly #topic: string;
	readonly #given: ReadonlySet<string>;
	readonly #results: Result[] = [];
	readonly #neighbours: Neighbour[] = [];
	readonly #working: Step[] = [];
	readonly #assumed: Assumption[];
	readonly #tipping: Tipping[] = [];
	readonly #findings: { code: string; severity: Severity; text: string; source: string }[] = [];
	readonly #cautions = new Set<string>();
	readonly #sources = new Set<string>();
	readonly #chain: Sizing[] = [];

	constructor(topic: string, context: Context, given: ReadonlySet<string>, assumed: readonly Assumption[]) {
		this.#topic = topic;
		this.context = context;
		this.rules = ruleSetOf(context.region);
		this.say = sayFor(context);
		this.#given = given;
		this.#assumed = [...assumed];
	}

	/** True where the person gave this input (false where it was assumed or is missing). */
	isGiven(name: string): boolean {
		return this.#given.has(name);
	}

	/**
	 * A sentence for people. Use it for every text with values in it, so that it can be said in another language:
	 * sheet.say`Drop ${drop} of ${limit}`.
	 */
	readonly say: Say;

	/** A value in its kind's base unit, written in the asker's unit habit. */
	show(kind: KindName, value: number, options: WriteOptions = {}): string {
		return write(kind, value, this.context.units, options);
	}

	/** A named result. Give `kind` for a physical quantity in base units; `write` says how the shown figure rounds. */
	result(name: string, label: string, value: number | string, valued: Valued = {}): void {
		this.#results.push({
			name,
			label: this.#phrase(label),
			value,
			unit: unitOf(valued),
			text: this.#text(value, valued),
		});
	}

	/** One line of working: the formula with symbols, the same with the numbers put in, its value and its source. */
	step(
		label: string,
		formula: string,
		substituted: string,
		value: number | string,
		valued: Valued & { readonly source: Source },
	): void {
		this.#working.push({
			label: this.#phrase(label),
			formula,
			substituted,
			value,
			unit: unitOf(valued),
			source: sourceText(valued.source),
		});
		this.source(valued.source);
	}

	/** Something taken for granted by the calculation itself (fallbacks of fields are listed without this). */
	assume(
		name: string,
		label: string,
		value: number | string | boolean,
		why: string,
		options: Valued & { readonly confirm?: boolean } = {},
	): void {
		this.#assumed.push({
			name,
			label: this.#phrase(label),
			value,
			unit: unitOf(options),
			text: typeof value === 'boolean' ? this.#phrase(value ? 'yes' : 'no') : this.#text(value, options),
			why: this.#phrase(why),
			confirm: options.confirm ?? false,
		});
	}

	/** Something the person must know about this answer. */
	finding(severity: Severity, code: string, text: string, source: Source): void {
		this.#findings.push({ code, severity, text: this.#phrase(text), source: sourceText(source) });
	}

	/** A standing caution of this kind of work. */
	caution(...texts: readonly string[]): void {
		for (const text of texts) this.#cautions.add(this.#phrase(text));
	}

	source(...sources: readonly Source[]): void {
		for (const source of sources) this.#sources.add(sourceText(source));
	}

	/** What one step smaller or larger would give. */
	neighbour(choice: string, passes: boolean, text: string): void {
		this.#neighbours.push({
			choice: figuresOf(this.context, this.#phrase(choice)),
			passes,
			text: this.#phrase(text),
		});
	}

	/** How far an input can move before the choice changes. */
	tipping(name: string, label: string, value: number, text: string, valued: Valued): void {
		this.#tipping.push({
			name,
			label: this.#phrase(label),
			value,
			unit: unitOf(valued),
			text: this.#phrase(text),
		});
	}

	/**
	 * Another topic's answer that this one rests on. When it is answered, its sheet joins the chain, and its
	 * findings, cautions and assumptions are carried here.
	 */
	call(topic: AnyTopic, given: Readonly<Record<string, unknown>>): Outcome {
		const outcome = runTopic(topic, given, this.context);
		if (outcome.status === 'answered') {
			const { sizing } = outcome;
			this.#chain.push(sizing);
			this.#findings.push(...sizing.findings);
			for (const caution of sizing.cautions) this.#cautions.add(caution);
			for (const source of sizing.sources) this.#sources.add(source);
			for (const one of sizing.assumed) {
				if (!this.#assumed.some((mine) => mine.name === one.name)) this.#assumed.push(one);
			}
		}
		return outcome;
	}

	answer(
		headline: string,
		options: { readonly governedBy?: string; readonly because?: string } = {},
	): Decision {
		return {
			kind: 'answer',
			headline: this.#phrase(headline),
			governedBy: options.governedBy === undefined ? null : this.#phrase(options.governedBy),
			because: options.because === undefined ? null : this.#phrase(options.because),
		};
	}

	/** One number is missing that the declaration alone could not tell. */
	ask(...missing: readonly Missing[]): Decision {
		return {
			kind: 'ask',
			missing: missing.map((one) => ({
				...one,
				label: this.#phrase(one.label),
				question: this.#phrase(one.question),
			})),
		};
	}

	/** No answer: unsafe, impossible or contradictory, with what would be right. */
	refuse(code: Refusal['code'], text: string, instead: string, field: string | null = null): Decision {
		return {
			kind: 'refuse',
			refusals: [{ code, text: this.#phrase(text), instead: this.#phrase(instead), field }],
		};
	}

	/** The record, once the calculation has decided. */
	toSizing(decision: Extract<Decision, { kind: 'answer' }>): Sizing {
		const rank: Record<Severity, number> = { danger: 0, warning: 1, note: 2 };
		return {
			topic: this.#topic,
			headline: decision.headline,
			because: decision.because,
			results: this.#results,
			governedBy: decision.governedBy,
			neighbours: this.#neighbours,
			working: this.#working,
			assumed: this.#assumed,
			tipping: this.#tipping,
			findings: this.#findings.toSorted((a, b) => rank[a.severity] - rank[b.severity]),
			cautions: [...this.#cautions],
			sources: [...this.#sources],
			chain: this.#chain,
		};
	}

	#text(value: number | string, valued: Valued): string {
		if (typeof value === 'string') return this.#phrase(value);
		if (valued.kind !== undefined)
			return figuresOf(this.context, this.show(valued.kind, value, valued.write));
		const figure = writeNumber(value, valued.write?.decimals ?? 2, valued.write?.round);
		const text = valued.unit === undefined ? figure : `${figure} ${this.#phrase(valued.unit)}`;
		return figuresOf(this.context, text);
	}

	#phrase(text: string): string {
		return phrase(this.context, text);
	}
}

function unitOf(valued: Valued): string | null {
	if (valued.kind !== undefined) return valued.kind === 'fraction' ? '1' : kindOf(valued.kind).base;
	return valued.unit ?? null;
}
