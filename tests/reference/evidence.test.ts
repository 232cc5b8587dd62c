import { describe, expect, test } from 'vitest';
import { agrees, allowance, type EvidenceRow } from './evidence.js';

// Every file of this folder named *.evidence.ts exports `rows`; each row is one test and one line of docs/evidence.md.
const files = import.meta.glob<{ rows: readonly EvidenceRow[] }>('./*.evidence.ts', { eager: true });

for (const [file, { rows }] of Object.entries(files)) {
	describe(file, () => {
		test('rows are told apart by what they compare and where it was published', () => {
			const keys = rows.map((row) => `${row.topic} | ${row.what} | ${row.source}`);
			expect(new Set(keys).size).toBe(keys.length);
			expect(rows.length).toBeGreaterThan(0);
		});
		test.each(rows.map((row) => [`${row.topic}: ${row.what} (${row.source})`, row] as const))(
			'%s',
			(_, row) => {
				const ours = row.ours();
				expect(
					agrees(row, ours),
					`published ${row.published} ${row.unit}, ours ${ours} ${row.unit}, allowed ±${allowance(row)}`,
				).toBe(true);
			},
		);
	});
}
