import type { KindName } from '../../quantity/kinds.js';
import { type WriteOptions, write } from '../../quantity/write.js';
import { type RuleSet, ruleSetOf } from '../../rules/rules.js';
import type { Context } from '../../topic/context.js';
import { runTopic } from '../../topic/run.js';
import type { Finding, Outcome } from '../../topic/sizing.js';
import { type Say, sayFor } from '../../topic/translate.js';
import { topicNamed } from '../../topics/index.js';
import { labelOf, type Piece, type Van } from '../van.js';

/** What is known of a van, as the rules ask for it. Everything worked out is worked out once. */
export class Facts {
	readonly van: Van;
	readonly context: Context;
	readonly rules: RuleSet;
	readonly #memory = new Map<string, unknown>();

	constructor(van: Van, context: Context) {
		this.van = van;
		this.context = context;
		this.rules = ruleSetOf(context.region);
		this.say = sayFor(context);
	}

	pieces(...kinds: readonly string[]): readonly Piece[] {
		return this.van.pieces.filter(({ kind }) => kinds.includes(kind));
	}

	first(kind: string): Piece | null {
		return this.van.pieces.find((piece) => piece.kind === kind) ?? null;
	}

	has(...kinds: readonly string[]): boolean {
		return this.van.pieces.some(({ kind }) => kinds.includes(kind));
	}

	/** Said not to be there. */
	lacks(kind: string): boolean {
		return !this.has(kind) && this.van.absent.includes(kind);
	}

	/** Neither told nor denied. */
	isUnsaid(kind: string): boolean {
		return !this.has(kind) && !this.van.absent.includes(kind);
	}

	/** A sentence for people; see `Sheet.say`. */
	readonly say: Say;

	show(kind: KindName, value: number, options: WriteOptions = {}): string {
		return write(kind, value, this.context.units, options);
	}

	/** "inverter, fridge 2" */
	names(pieces: readonly Piece[]): string {
		return pieces.map(labelOf).join(', ');
	}

	/** Works out a fact once. */
	once<T>(name: string, work: () => T): T {
		if (!this.#memory.has(name)) this.#memory.set(name, work());
		return this.#memory.get(name) as T;
	}

	/** Runs a topic on what is known of the van; inputs that are undefined are left out. */
	run(topicName: string, given: Readonly<Record<string, unknown>>): Outcome {
		const topic = topicNamed(topicName);
		if (topic === null) throw new Error(`no topic "${topicName}"`);
		return runTopic(topic, given, this.context);
	}
}

export function num(piece: Piece, field: string): number | undefined {
	const value = piece.values[field];
	return typeof value === 'number' ? value : undefined;
}

export function word(piece: Piece, field: string): string | undefined {
	const value = piece.values[field];
	return typeof value === 'string' ? value : undefined;
}

export function isYes(piece: Piece, field: string): boolean {
	return piece.values[field] === true;
}

export function isNo(piece: Piece, field: string): boolean {
	return piece.values[field] === false;
}

export function countOf(piece: Piece): number {
	return num(piece, 'count') ?? 1;
}

/** A topic's named result, or null where it gave none. */
export function resultOf(outcome: Outcome, name: string): number | null {
	if (outcome.status !== 'answered') return null;
	const value = outcome.sizing.results.find((result) => result.name === name)?.value;
	return typeof value === 'number' ? value : null;
}

export function findingOf(outcome: Outcome, code: string): Finding | null {
	if (outcome.status !== 'answered') return null;
	return outcome.sizing.findings.find((finding) => finding.code === code) ?? null;
}
