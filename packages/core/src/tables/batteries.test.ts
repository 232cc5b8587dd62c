import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import {
	ageingFactor,
	armyColdCapacity,
	type Chemistry,
	type ChemistryName,
	chemistries,
	chemistryNames,
	ieee485Factor,
	ieee485Factors,
	ieee485LargestFactor,
	unknownInverterEfficiency,
} from './batteries.js';
import { interpolate } from './interpolate.js';

const inFile: Readonly<Record<ChemistryName, string>> = {
	lifepo4: 'LiFePO4',
	agm: 'AGM lead-acid',
	gel: 'gel lead-acid',
	flooded: 'flooded lead-acid',
	nmc: 'Li-ion NMC/NCA',
};

describe('battery_chemistry.csv, cell by cell', () => {
	const rows = readTable('electrical/battery_chemistry.csv');
	const firstOf = (text: string | undefined) => Number.parseFloat(text ?? '');
	const lastOf = (text: string | undefined) => Number((text ?? '').split('-').at(-1));

	test('every chemistry of the file is in the core', () => {
		expect(rows.map((row) => row.chemistry).sort()).toEqual(Object.values(inFile).sort());
	});

	test.each(chemistryNames)('%s', (name) => {
		const row = rows.find((one) => one.chemistry === inFile[name]) ?? {};
		const ours: Chemistry = chemistries[name];
		expect(ours.nominalVPerCell).toBe(Number(row.nominal_V_per_cell));
		expect(ours.chargeVPerCell).toBe(lastOf(row.charge_V_per_cell_25C));
		expect(ours.cutoffVPerCell).toBe(firstOf(row.cutoff_V_per_cell));
		// "3 or 4": the fewer cells, the larger the current.
		expect(ours.cellsFor12V).toBe(firstOf(row.cells_for_12V));
		expect(ours.chargeMinC).toBe(Number(row.charge_temp_min_C));
		expect(ours.chargeMaxC).toBe(Number(row.charge_temp_max_C));
		expect(ours.dischargeMinC).toBe(Number(row.discharge_temp_min_C));
		expect(ours.dischargeMaxC).toBe(Number(row.discharge_temp_max_C));
	});
});

test('battery_peukert.csv: ranges, and the exponent used at the safe end or that of lead-acid in general', () => {
	const rows = readTable('electrical/battery_peukert.csv');
	const of = (chemistry: string) => rows.find((row) => row.chemistry === chemistry) ?? {};
	const names = { agm: 'AGM', gel: 'gel', flooded: 'flooded', lifepo4: 'lithium ion / LiFePO4' } as const;
	for (const [name, chemistry] of Object.entries(names)) {
		const ours = chemistries[name as ChemistryName];
		expect(ours.peukertMin).toBe(Number(of(chemistry).exponent_min));
		expect(ours.peukertMax).toBe(Number(of(chemistry).exponent_max));
	}
	expect(chemistries.agm.peukertUsed).toBe(chemistries.agm.peukertMax);
	expect(chemistries.gel.peukertUsed).toBe(chemistries.gel.peukertMax);
	expect(chemistries.lifepo4.peukertUsed).toBe(chemistries.lifepo4.peukertMax);
	expect(chemistries.flooded.peukertUsed).toBe(Number(of('lead-acid general').exponent_max));
});

test('battery_lead_acid_temperature_factor.csv, cell by cell', () => {
	const rows = readTable('electrical/battery_lead_acid_temperature_factor.csv');
	expect(ieee485Factors).toEqual(
		rows.map((row) => [Number(row.electrolyte_temp_F), Number(row.capacity_multiplier)]),
	);
	expect(ieee485Factors[0]?.[1]).toBe(ieee485LargestFactor);
});

test('battery_capacity_vs_temperature_lead_acid.csv below 25 °C', () => {
	const rows = readTable('electrical/battery_capacity_vs_temperature_lead_acid.csv')
		.map((row) => [Number(row.temp_C), Number(row.available_capacity_percent) / 100])
		.filter(([temperatureC]) => (temperatureC as number) < 25);
	expect([...armyColdCapacity].reverse()).toEqual(rows);
});

test('battery_sizing_factors.csv', () => {
	const value = (start: string) =>
		Number(
			readTable('electrical/battery_sizing_factors.csv').find((row) => row.factor?.startsWith(start) === true)
				?.value,
		);
	expect(ageingFactor).toBe(value('aging factor'));
	expect(unknownInverterEfficiency).toBe(value('inverter efficiency if unknown'));
	expect(chemistries.agm.cutoffVPerCell).toBe(value('end-of-discharge voltage lead-acid general'));
});

describe('the temperature factor', () => {
	test('gives no credit for warmth and ends with its table', () => {
		expect(ieee485Factor(25)).toBe(1);
		expect(ieee485Factor(49)).toBe(1);
		expect(ieee485Factor((25 - 32) / 1.8)).toBeCloseTo(1.52, 9);
		expect(ieee485Factor(-4)).toBeNull();
	});

	test('never falls as it gets colder', () => {
		fc.assert(
			fc.property(
				fc.double({ min: -3.8, max: 40, noNaN: true }),
				fc.double({ min: 0, max: 20, noNaN: true }),
				(temperatureC, warmer) => {
					const cold = ieee485Factor(temperatureC) as number;
					expect(cold).toBeGreaterThanOrEqual(ieee485Factor(temperatureC + warmer) as number);
					expect(cold).toBeLessThanOrEqual(ieee485LargestFactor);
				},
			),
		);
	});
});

test('interpolation is never carried past the ends', () => {
	const rows = [
		[0, 10],
		[10, 30],
	] as const;
	expect(interpolate(rows, 5)).toBe(20);
	expect(interpolate(rows, 0)).toBe(10);
	expect(interpolate(rows, 10)).toBe(30);
	expect(interpolate(rows, -0.01)).toBeNull();
	expect(interpolate(rows, 10.01)).toBeNull();
});
