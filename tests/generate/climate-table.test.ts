import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { packedColumns, packedDigits } from '../../packages/core/src/tables/climate.js';
import { readTable } from '../reference/csv.js';

// `pnpm generate` packs the climate tables of shared/reference into the module that the core ships.
const target = fileURLToPath(new URL('../../packages/core/src/tables/climate.generated.ts', import.meta.url));

const months = Array.from({ length: 12 }, (_, index) => String(index + 1).padStart(2, '0'));
const cellNames: Readonly<Record<keyof typeof packedColumns, readonly string[]>> = {
	ghiKWhM2: months.map((month) => `ghi_${month}`),
	dniKWhM2: months.map((month) => `dni_${month}`),
	dhiKWhM2: months.map((month) => `dhi_${month}`),
	meanC: months.map((month) => `t_${month}`),
	dayMinC: months.map((month) => `tdaymin_${month}`),
	dayMaxC: months.map((month) => `tdaymax_${month}`),
	single: [
		'tmy_min',
		'tmy_p0_4',
		'tmy_p1',
		'tmy_p99',
		'tmy_max',
		'design_heat_99_6',
		'design_heat_99',
		'design_cool_0_4',
		'design_cool_1',
		'extreme_annual_min_mean',
		'extreme_annual_max_mean',
	],
};

function pack(row: Readonly<Record<string, string>>): string {
	return Object.entries(packedColumns)
		.flatMap(([name, { digits, perUnit, offset }]) =>
			cellNames[name as keyof typeof packedColumns].map((cell) => {
				const text = row[cell] ?? '';
				if (text === '') return '~'.repeat(digits);
				let steps = Math.round(Number(text) * perUnit) + offset;
				if (steps < 0 || steps >= packedDigits.length ** digits)
					throw new Error(`${row.name} ${cell}: ${text}`);
				let packed = '';
				for (let digit = 0; digit < digits; digit += 1) {
					packed = packedDigits.charAt(steps % packedDigits.length) + packed;
					steps = Math.floor(steps / packedDigits.length);
				}
				return packed;
			}),
		)
		.join('');
}

function line(row: Readonly<Record<string, string>>): string {
	// The Canadian table names what its numbers are, not the data set.
	const dataset = row.country === 'CAN' ? 'CWEC' : row.dataset;
	const number = (text: string | undefined) => String(Number(text));
	// A station of the source spells its apostrophe with a grave accent.
	const name = (row.name as string).replaceAll('`', "'");
	return [
		row.id,
		dataset,
		name,
		row.country,
		row.state,
		number(row.lat),
		number(row.lon),
		number(row.elev_m),
		number(row.tz_h),
		pack(row),
	].join('|');
}

test('the climate table holds every station of the reference tables', async () => {
	const rows = ['usa_tmy3', 'canada', 'world'].flatMap((name) =>
		readTable(`solar/climate_monthly_${name}.csv`),
	);
	const text = `// Written by \`pnpm generate\` from shared/reference/solar/climate_monthly_*.csv: one station a line.
// id|data set|station|country|state|latitude|longitude|elevation m|UTC offset h|months, packed as climate.ts says
export const climateRows = \`
${rows.map(line).join('\n')}
\`;
`;
	expect(text.match(/`/g)?.length).toBe(4);
	await expect(text).toMatchFileSnapshot(target);
});
