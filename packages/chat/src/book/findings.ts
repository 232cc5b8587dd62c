/** The open findings of a build: those of its answers that stand, and those of the van as it was told. */

import { equipmentOf, labelOf, type Van, type VanCheck } from '@lugbook/core';
import type { OpenFinding } from '@lugbook/report';
import type { Reviewed } from './answers.js';
import type { Told } from './told.js';

type VanFinding = VanCheck['findings'][number];

interface Found {
	readonly finding: Pick<OpenFinding, 'code' | 'severity' | 'text' | 'source'>;
	readonly entries: number[];
	/** first lines of the answers that have it, by entry */
	readonly headlines: string[];
}

/** Gathers what the answers found; one text may rest on several of them. */
export class FindingsOfAnswers {
	readonly #found = new Map<string, Found>();

	/** @param reviewed an answer that stands */
	add({ entry, exchange }: Reviewed): void {
		for (const { code, severity, text, source } of exchange.answer.findings) {
			if (severity === 'note') continue;
			const key = `${severity} ${text}`;
			const known = this.#found.get(key) ?? {
				finding: { code, severity, text, source },
				entries: [],
				headlines: [],
			};
			known.entries.push(entry.number);
			known.headlines.push(exchange.answer.headline);
			this.#found.set(key, known);
		}
	}

	/** Together with what the check of the whole van finds; what both find stands once. */
	with(check: VanCheck | null, told: Told): OpenFinding[] {
		const left = new Map(this.#found);
		const ofVan = (check?.findings ?? []).map((one): OpenFinding => {
			const { code, severity, text, source, rests } = one;
			const key = `${severity} ${text}`;
			const same = left.get(key);
			left.delete(key);
			const tellers = rests.flatMap((id) => told.entryOf.get(id) ?? []);
			return {
				code,
				severity,
				text,
				source,
				clears: [clearsOfVan(one, told.van), ...(same === undefined ? [] : [clearsOfAnswer(same)])].join(
					'; ',
				),
				entries: [...new Set([...tellers, ...(same?.entries ?? [])])],
			};
		});
		const ofAnswers = [...left.values()].map(
			(one): OpenFinding => ({ ...one.finding, clears: clearsOfAnswer(one), entries: one.entries }),
		);
		return [...ofVan, ...ofAnswers];
	}
}

/** The finding itself has the figure; this says what has to be changed and told for it to go. */
function clearsOfVan({ clearedBy, rests }: VanFinding, van: Van): string {
	if (clearedBy.length > 0)
		return `fit or change, then tell it: ${clearedBy.map((kind) => equipmentOf(kind).label).join(' or ')}`;
	const named = rests.flatMap((id) => van.pieces.find((piece) => piece.id === id) ?? []).map(labelOf);
	return named.length === 0 ? 'a change of the van, told' : `change, then tell it: ${named.join(', ')}`;
}

/** An answer's finding goes with its answer; its first line says which choice it belongs to. */
function clearsOfAnswer({ entries, headlines: [headline] }: Found): string {
	const numbers = entries.map((entry) => `No. ${entry}`).join(', ');
	return entries.length > 1
		? `answers in place of ${numbers}`
		: `an answer in place of ${numbers}, which says: ${headline}`;
}
