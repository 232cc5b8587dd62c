import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { agrees, type EvidenceMark, type EvidenceRow } from '../reference/evidence.js';
import { cell, table } from './markdown.js';

// What the code computes beside what was published, worked out in this run. The rows themselves are tests of their own.
const file = fileURLToPath(new URL('../../docs/evidence.md', import.meta.url));
const files = import.meta.glob<{ rows: readonly EvidenceRow[] }>('../reference/*.evidence.ts', {
	eager: true,
});

const marks: Readonly<Record<EvidenceMark, string>> = {
	verified: 'the value was read in the document or a reprint of it',
	'from memory': 'written down from recall and not seen again; never used to loosen a limit',
	'common practice': 'what careful shops do; no document says so',
	'computed with a reference library':
		'worked out from the published formula, or by a general-purpose library',
};

/** Six figures are far beyond what matters and far from where machines differ. */
function sixFigures(value: number | string): string {
	if (typeof value === 'string') return value;
	return Number.isFinite(value) ? String(Number(value.toPrecision(6))) : String(value);
}

/** As printed; formulas worked out are shown to six figures too. */
function publishedText(row: EvidenceRow): string {
	if (typeof row.published === 'string') return row.published;
	const asIs = String(row.published);
	return asIs.replace(/\D/g, '').length > 8 ? sixFigures(row.published) : asIs;
}

function differenceText(row: EvidenceRow, ours: number | string): string {
	if (typeof row.published === 'string' || typeof ours === 'string') {
		return row.published === ours ? 'the same' : 'differs';
	}
	const difference = ours - row.published;
	// Dust of floating point is no difference, and need not be the same on every machine.
	if (Math.abs(difference) <= 1e-6 * Math.abs(row.published) || Math.abs(difference) < 1e-9) return '0';
	return String(Number(difference.toPrecision(2)));
}

function allowedText(row: EvidenceRow): string {
	if (row.tolerance === undefined) return 'exact';
	// Rounding alone is meant where so little is allowed.
	if ('abs' in row.tolerance) return `±${sixFigures(row.tolerance.abs)}`;
	return row.tolerance.rel <= 1e-6 ? 'rounding' : `±${sixFigures(row.tolerance.rel * 100)} %`;
}

/** The document without its clause: what stands before the first comma, colon or bracket. */
function documentOf(row: EvidenceRow): string {
	return (/^[^,:(]*/.exec(row.source)?.[0] ?? row.source).trim();
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

test('docs/evidence.md is what the code computes today', async () => {
	const rows = Object.entries(files)
		.toSorted(([a], [b]) => byText(a, b))
		.flatMap(([, module]) => module.rows);
	const topics = [...new Set(rows.map((row) => row.topic))].toSorted(byText);
	const outside: string[] = [];

	const parts = topics.map((topic) => {
		// Rows stay as their file orders them: tables by size, examples by case.
		const own = rows.filter((row) => row.topic === topic);
		const lines = own.map((row) => {
			const ours = row.ours();
			if (!agrees(row, ours)) outside.push(`${row.topic}: ${row.what}`);
			return [
				row.what,
				`${publishedText(row)} ${row.unit}`.trim(),
				`${sixFigures(ours)} ${row.unit}`.trim(),
				differenceText(row, ours),
				allowedText(row),
				row.source,
				row.mark,
			].map(cell);
		});
		return [
			`## ${topic}`,
			`${own.length} values from ${new Set(own.map(documentOf)).size} documents.`,
			table(['what', 'published', 'ours', 'difference', 'allowed', 'source', 'mark'], lines),
		].join('\n\n');
	});

	const documents = [...new Set(rows.map(documentOf))].toSorted(byText);
	const summary = table(
		['mark', 'values', 'meaning'],
		(Object.keys(marks) as EvidenceMark[]).map((mark) => [
			mark,
			String(rows.filter((row) => row.mark === mark).length),
			marks[mark],
		]),
	);
	const text = [
		'# Evidence',
		'Written by `pnpm generate`: what the code computes beside what was published. Every line is a test too (`tests/reference`).',
		`${rows.length} values from ${documents.length} documents (${new Set(rows.map((row) => row.source)).size} with their clauses told apart), on ${topics.length} subjects.`,
		summary,
		table(
			['subject', 'values', 'documents'],
			topics.map((topic) => {
				const own = rows.filter((row) => row.topic === topic);
				return [
					`[${topic}](#${topic.replaceAll(' ', '-')})`,
					String(own.length),
					String(new Set(own.map(documentOf)).size),
				];
			}),
		),
		'## Documents',
		documents.map((one) => `- ${one}`).join('\n'),
		...parts,
	].join('\n\n');
	expect(outside).toEqual([]);
	await expect(`${text}\n`).toMatchFileSnapshot(file);
});
