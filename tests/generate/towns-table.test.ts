import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { packTown } from '../../packages/core/src/tables/towns.js';
import { readTable } from '../reference/csv.js';

// `pnpm generate` packs the list of towns into the module that the core ships.
const target = fileURLToPath(new URL('../../packages/core/src/tables/towns.generated.ts', import.meta.url));

test('the table of towns holds every town of the reference list', async () => {
	const groups = new Map<string, string[]>();
	for (const row of readTable('solar/towns.csv')) {
		const key = `${row.country}|${row.state}`;
		const towns = groups.get(key) ?? [];
		towns.push(
			packTown({
				name: row.name as string,
				latitudeDeg: Number(row.lat),
				longitudeDeg: Number(row.lon),
				people: Number(row.population),
			}),
		);
		groups.set(key, towns);
	}
	const lines = [...groups].map(([key, towns]) => `${key}|${towns.join(';')}`);
	const text = `// Written by \`pnpm generate\` from shared/reference/solar/towns.csv (GeoNames, CC BY 4.0): one state a line.
// country|state|town and, packed as towns.ts says, where it lies and how large it is;next town
export const townRows = \`
${lines.join('\n')}
\`;
`;
	expect(text.match(/`/g)?.length).toBe(4);
	await expect(text).toMatchFileSnapshot(target);
});
