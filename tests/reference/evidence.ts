/** How far the published value was checked: see `shared/reference/README.md`. */
export type EvidenceMark =
	| 'verified'
	| 'from memory'
	| 'common practice'
	| 'computed with a reference library';

/** One published value against what the code computes. */
export interface EvidenceRow {
	/** the topic or the part of the core it supports: "wire", "solar position" */
	readonly topic: string;
	/** what is compared, with its case: "4 AWG, 75 °C insulation: ampacity" */
	readonly what: string;
	/** document, edition, clause, table or example */
	readonly source: string;
	readonly mark: EvidenceMark;
	/** as printed */
	readonly published: number | string;
	/** '' for words and plain numbers */
	readonly unit: string;
	/** how far ours may lie from it, and why not nearer; absent for words and exact values */
	readonly tolerance?: { readonly abs: number } | { readonly rel: number };
	/** computed by the code, in the same unit */
	readonly ours: () => number | string;
}

/** The largest difference a row allows, in its own unit. */
export function allowance(row: EvidenceRow): number {
	if (row.tolerance === undefined) return 0;
	return 'abs' in row.tolerance ? row.tolerance.abs : Math.abs(Number(row.published)) * row.tolerance.rel;
}

/** True where the code's value lies within the row's tolerance (words must be the same). */
export function agrees(row: EvidenceRow, ours: number | string): boolean {
	if (typeof row.published === 'string' || typeof ours === 'string') return row.published === ours;
	// A published figure is itself only known to its last digit: binary dust must not fail an exact row.
	return Math.abs(ours - row.published) <= allowance(row) + 1e-12 * Math.abs(row.published);
}
