import { describe, expect, test } from 'vitest';
import { readJson, readTable } from '../../../../tests/reference/csv.js';
import { fusionKjKg, iceDensityKgM3, lavatoryMaximumLMin, showerMaximumLMin, waterRows } from './water.js';

const printed = readTable('water/water_properties.csv');

describe('water', () => {
	test('has a row for every printed temperature', () => {
		expect(waterRows.map((row) => row.temperatureC)).toEqual(printed.map((row) => Number(row.temp_c)));
	});

	test.each(printed.map((row, index) => [row.temp_c ?? '', row, index] as const))(
		'%s °C is the print',
		(_, row, index) => {
			expect(waterRows[index]).toEqual({
				temperatureC: Number(row.temp_c),
				densityKgM3: Number(row.density_kg_m3),
				specificHeatKjKgK: Number(row.cp_kj_kgk),
				dynamicViscosityMPaS: Number(row.dyn_viscosity_mpa_s),
				vaporizationKjKg: Number(row.heat_of_vaporisation_kj_kg),
			});
		},
	);
});

test('ice is the print', () => {
	const facts = readJson<Record<string, number>>('water/facts_and_formulas.json');
	expect(fusionKjKg).toBe(facts.latent_heat_fusion_kj_kg);
	expect(iceDensityKgM3).toBe(facts.ice_density_kg_m3);
});

test('fixture flows are the print, in litres', () => {
	const gpm = (fixture: string) =>
		Number(readTable('water/fixture_flows.csv').find((row) => row.fixture === fixture)?.flow_us_gpm);
	expect(showerMaximumLMin).toBeCloseTo(gpm('shower head, high-efficiency') * 3.785411784, 2);
	expect(lavatoryMaximumLMin).toBeCloseTo(gpm('lavatory tap, high-efficiency') * 3.785411784, 2);
});
