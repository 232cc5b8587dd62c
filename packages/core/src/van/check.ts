import type { Context } from '../topic/context.js';
import type { System } from '../topic/declare.js';
import type { Severity } from '../topic/sizing.js';
import { sourceText } from '../topic/source.js';
import { Facts } from './facts/facts.js';
import { vanRules } from './rules/index.js';
import type { Van } from './van.js';

/** Something that does not fit together, and what it rests on. */
export interface VanFinding {
	/** the rule's id */
	readonly code: string;
	readonly severity: Severity;
	readonly system: System;
	readonly text: string;
	readonly source: string;
	/** pieces of equipment by their name in the build */
	readonly rests: readonly string[];
	/** kinds of equipment whose adding or changing can clear it; empty where only what it rests on can */
	readonly clearedBy: readonly string[];
}

/** Something that was not told: never presumed fine. */
export interface NotKnown {
	/** "battery.protectionA" */
	readonly fact: string;
	/** the question that settles it */
	readonly question: string;
	/** rules that wait for it */
	readonly rules: readonly string[];
}

export interface VanCheck {
	/** dangers first, then warnings, then notes */
	readonly findings: readonly VanFinding[];
	readonly notKnown: readonly NotKnown[];
	/** how many rules were run */
	readonly rules: number;
}

const rank: Record<Severity, number> = { danger: 0, warning: 1, note: 2 };

/** Runs every rule on what is known of a van. The same van gives the same findings in the same order. */
export function checkVan(van: Van, context: Context): VanCheck {
	const facts = new Facts(van, context);
	const findings: VanFinding[] = [];
	const open = new Map<string, { question: string; rules: Set<string> }>();
	for (const rule of vanRules) {
		for (const verdict of rule.check(facts)) {
			if (verdict.is === 'unknown') {
				const known = open.get(verdict.fact) ?? { question: verdict.question, rules: new Set<string>() };
				known.rules.add(rule.id);
				open.set(verdict.fact, known);
				continue;
			}
			const { severity, text, rests } = verdict;
			findings.push({
				code: rule.id,
				severity,
				system: rule.system,
				text,
				source: sourceText(rule.source),
				rests: [...new Set(rests)],
				clearedBy: rule.clearedBy,
			});
		}
	}
	return {
		findings: findings.toSorted((a, b) => rank[a.severity] - rank[b.severity]),
		// What most rules wait for is asked first.
		notKnown: [...open]
			.map(([fact, { question, rules }]) => ({ fact, question, rules: [...rules] }))
			.toSorted((a, b) => b.rules.length - a.rules.length),
		rules: vanRules.length,
	};
}
