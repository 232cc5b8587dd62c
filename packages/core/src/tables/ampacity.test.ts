import { describe, expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import {
	type AmpacityTable,
	ambientFactor,
	ampacityOf,
	bandFactor,
	boatAmpacity,
	boatBundleBands,
	engineSpaceFactors,
	iecAmpacity,
	interpolatedA,
	isoAmpacity,
	necAmbientBands,
	necAmpacity,
	necBundleBands,
	tabulatedA,
} from './ampacity.js';
import { awgSizes, conductorSize, metricSizes } from './conductors.js';

const cell = (text: string | undefined) => (text === undefined || text === '' ? null : Number(text));

const tables: readonly {
	readonly name: string;
	readonly table: AmpacityTable;
	readonly file: string;
	readonly key: string;
	readonly unit: string;
	readonly columns: readonly string[];
	/** printed sizes that no shop buys and the core leaves out */
	readonly leftOut: readonly string[];
}[] = [
	{
		name: '33 CFR 183.425 Table 5',
		table: boatAmpacity,
		file: 'electrical/cfr33_183_425_table5_ampacity.csv',
		key: 'awg',
		unit: 'AWG',
		columns: [60, 75, 80, 90, 105, 125, 200].map((classC) => `ampacity_A_insulation_${classC}C`),
		leftOut: [],
	},
	{
		name: 'NEC Table 310.16',
		table: necAmpacity,
		file: 'electrical/nec310_16_ampacity_copper.csv',
		key: 'awg',
		unit: 'AWG',
		columns: [60, 75, 90].map((classC) => `ampacity_A_${classC}C`),
		leftOut: [],
	},
	{
		name: 'ISO 10133 Annex A (from memory)',
		table: isoAmpacity,
		file: 'electrical/iso10133_annexA_ampacity_FROM_MEMORY.csv',
		key: 'area_mm2',
		unit: 'mm²',
		columns: ['60C', '70C', '85to90C', '105C', '125C', '200C'].map((name) => `ampacity_A_insulation_${name}`),
		leftOut: ['150'],
	},
];

describe.each(tables)('$name', ({ table, file, key, unit, columns, leftOut }) => {
	const rows = readTable(file).filter((row) => !leftOut.includes(row[key] ?? ''));

	test('has the sizes that are printed, in order', () => {
		expect(Object.keys(table.rows)).toEqual(rows.map((row) => `${row[key]} ${unit}`));
	});

	test('equals the print cell by cell', () => {
		for (const row of rows) {
			expect(table.rows[`${row[key]} ${unit}`], row[key]).toEqual(columns.map((name) => cell(row[name])));
		}
	});
});

describe.each([...tables, { name: 'IEC 60364-5-52 B2', table: iecAmpacity }])(
	'shape of $name',
	({ table }) => {
		const rows = Object.values(table.rows);

		test('classes rise and every row has a cell for each', () => {
			expect(table.classesC).toEqual([...table.classesC].sort((a, b) => a - b));
			for (const row of rows) expect(row).toHaveLength(table.classesC.length);
		});

		test('a thicker conductor carries more, in every column', () => {
			for (let column = 0; column < table.classesC.length; column += 1) {
				const values = rows.map((row) => row[column] ?? null).filter((value) => value !== null);
				for (const [index, value] of values.entries()) {
					if (index > 0) expect(value).toBeGreaterThan(values[index - 1] as number);
				}
			}
		});

		test('hotter insulation never carries less', () => {
			for (const row of rows) {
				const values = row.filter((value) => value !== null);
				expect(values).toEqual([...values].sort((a, b) => a - b));
			}
		});

		test('every row is a size that is sold', () => {
			for (const name of Object.keys(table.rows)) expect(conductorSize(name)?.name).toBe(name);
		});
	},
);

describe('factors', () => {
	test('NEC ambient bands equal the print from 30 °C up; no credit for a cool place', () => {
		const rows = readTable('electrical/nec310_15_B1_ambient_factors.csv').filter(
			(row) => Number(row.ambient_to_C) >= 30,
		);
		expect(necAmbientBands).toEqual(
			rows.map((row) => ({
				toC: Number(row.ambient_to_C),
				factors: [cell(row.factor_60C), cell(row.factor_75C), cell(row.factor_90C)],
			})),
		);
	});

	test('NEC bundling equals the print', () => {
		for (const row of readTable('electrical/nec310_15_C1_bundling.csv')) {
			const from = Number(row.current_carrying_conductors_from);
			const to = row.current_carrying_conductors_to === '' ? 500 : Number(row.current_carrying_conductors_to);
			for (let count = from; count <= to; count += 1) {
				expect(bandFactor(necBundleBands, count), `${count}`).toBe(Number(row.factor));
			}
		}
	});

	const notes = new Map(
		readTable('electrical/cfr33_183_425_notes.csv').map((row) => [row.key ?? '', Number(row.value)]),
	);

	test.each([
		[1, 2, null],
		[3, 3, 'bundle_factor_3_conductors'],
		[4, 6, 'bundle_factor_4_to_6_conductors'],
		[7, 24, 'bundle_factor_7_to_24_conductors'],
		[25, 100, 'bundle_factor_25_and_more_conductors'],
	])('boat rule: %i to %i conductors together', (from, to, key) => {
		const printed = key === null ? 1 : notes.get(key);
		for (let count = from; count <= to; count += 1) expect(bandFactor(boatBundleBands, count)).toBe(printed);
	});

	test.each(Object.keys(engineSpaceFactors).map(Number))(
		'boat rule: engine space, %i °C insulation',
		(classC) => {
			expect(engineSpaceFactors[classC]).toBe(notes.get(`engine_space_factor_${classC}C`));
		},
	);

	test('the looser printed factor of 200 °C insulation is left to physics', () => {
		expect(engineSpaceFactors[200]).toBeUndefined();
		expect(notes.get('engine_space_factor_200C')).toBeGreaterThan(ambientFactor(200, 50));
	});

	test('a band is asked of no more than it has', () => {
		expect(() => bandFactor([{ to: 3, factor: 1 }], 4)).toThrow('no band for 4 conductors');
	});

	test('ambient equation: nothing at the insulation temperature, no credit below 30 °C', () => {
		expect(ambientFactor(90, 90)).toBe(0);
		expect(ambientFactor(90, 120)).toBe(0);
		expect(ambientFactor(90, -20)).toBe(1);
		expect(ambientFactor(60, 50)).toBeCloseTo(0.577, 3);
	});
});

describe('reading a table', () => {
	test('takes the hottest column that the insulation reaches', () => {
		expect(tabulatedA(boatAmpacity, '4 AWG', 105)).toBe(160);
		expect(tabulatedA(boatAmpacity, '4 AWG', 104)).toBe(135);
		expect(tabulatedA(boatAmpacity, '4 AWG', 59)).toBeNull();
		expect(tabulatedA(necAmpacity, '18 AWG', 75)).toBeNull();
		expect(tabulatedA(necAmpacity, '35 mm²', 75)).toBeNull();
	});

	test('between two sizes lies between their values; at a size it is the printed value', () => {
		for (const [index, size] of awgSizes.entries()) {
			const own = tabulatedA(boatAmpacity, size.name, 105) as number;
			expect(interpolatedA(boatAmpacity, awgSizes, size.areaMm2, 105)).toBe(own);
			const next = awgSizes[index + 1];
			if (next === undefined) continue;
			const between = interpolatedA(boatAmpacity, awgSizes, (size.areaMm2 + next.areaMm2) / 2, 105);
			expect(between).toBeGreaterThan(own);
			expect(between).toBeLessThan(tabulatedA(boatAmpacity, next.name, 105) as number);
		}
	});

	test('beyond the thickest size counts no more than the thickest, below the thinnest less than the thinnest', () => {
		expect(interpolatedA(boatAmpacity, awgSizes, 300, 105)).toBe(445);
		expect(interpolatedA(boatAmpacity, awgSizes, 0.4115, 105)).toBeCloseTo(10, 9);
	});

	test('a size of the other series is read at its area', () => {
		const metric = conductorSize('35 mm²');
		const american = conductorSize('2 AWG');
		if (metric === null || american === null) throw new Error('sizes are missing');
		expect(ampacityOf(boatAmpacity, awgSizes, american, 105)).toBe(210);
		const read = ampacityOf(boatAmpacity, awgSizes, metric, 105);
		expect(read).toBeGreaterThan(210);
		expect(read).toBeLessThan(245);
		expect(ampacityOf(isoAmpacity, metricSizes, metric, 105)).toBe(210);
	});
});
