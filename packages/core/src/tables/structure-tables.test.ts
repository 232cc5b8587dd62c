import { describe, expect, test } from 'vitest';
import { readJson, readTable } from '../../../../tests/reference/csv.js';
import { loadCases } from '../weight/restraint.js';
import { bolts } from './bolts.js';
import { tankFluids } from './fluids.js';
import { roofs, wheelbases } from './interiors.js';
import { type BeamMaterialName, beamMaterials } from './metals.js';
import {
	indexForLoad,
	largestLoadIndex,
	loadOfIndexKg,
	type SpeedSymbol,
	smallestLoadIndex,
	speedSymbolsKmh,
} from './tires.js';
import { roofClasses, vanClasses } from './vans.js';

describe('ISO 898-1 bolts, cell by cell', () => {
	const rows = readTable('structure/iso898_1_proof_loads.csv');
	test('every row is there and no other', () => {
		expect(
			bolts.map((bolt) => [bolt.thread, bolt.propertyClass, bolt.stressAreaMm2, bolt.proofN, bolt.ultimateN]),
		).toEqual(
			rows.map((row) => [
				row.thread,
				row.class,
				Number(row.stress_area_mm2),
				Number(row.proof_load_n),
				Number(row.min_ultimate_tensile_n),
			]),
		);
	});
	test('a proof load is its stress area times its proof stress, as far as the table rounds', () => {
		for (const row of rows) {
			expect(
				Number(row.proof_load_n) / (Number(row.stress_area_mm2) * Number(row.proof_stress_mpa)),
			).toBeCloseTo(1, 2);
		}
	});
	test('the marks are those of the table', () => {
		expect(new Set(rows.map((row) => row.status))).toEqual(new Set(['VERIFIED']));
	});
});

describe('load index and speed symbol, cell by cell', () => {
	const rows = readTable('vehicle/tire_load_index.csv');
	test('load index', () => {
		expect(rows.map((row) => Number(row.kg))).toEqual(
			rows.map((row) => loadOfIndexKg(Number(row.load_index))),
		);
		expect([smallestLoadIndex, largestLoadIndex]).toEqual([70, 130]);
		expect(loadOfIndexKg(69)).toBeNull();
		expect(loadOfIndexKg(131)).toBeNull();
	});
	test('rising, and the index for a load never carries less', () => {
		for (let index = smallestLoadIndex; index < largestLoadIndex; index += 1) {
			const loadKg = loadOfIndexKg(index) as number;
			expect(loadOfIndexKg(index + 1)).toBeGreaterThan(loadKg);
			expect(indexForLoad(loadKg)).toBe(index);
			expect(indexForLoad(loadKg + 0.001)).toBe(index + 1);
		}
		expect(indexForLoad(1901)).toBeNull();
	});
	test('speed symbol', () => {
		const symbols = readTable('vehicle/speed_symbols.csv');
		expect(Object.keys(speedSymbolsKmh)).toEqual(symbols.map((row) => row.symbol));
		for (const row of symbols) expect(speedSymbolsKmh[row.symbol as SpeedSymbol]).toBe(Number(row.km_h));
	});
});

describe('aluminium extrusions', () => {
	test.each(
		readTable('structure/aluminium_properties.csv').filter((row) => row.thickness !== '0.501-1.000 in'),
	)('$alloy_temper', (row) => {
		const material = beamMaterials[row.alloy_temper as BeamMaterialName];
		expect(material.strengthMpa).toBe(Number(row.Fty_mpa));
		expect(material.modulusGpa).toBe(Number(row.E_gpa));
		expect(material.source.mark === 'verified').toBe(row.status?.startsWith('VERIFIED'));
	});
	test('beside a weld never more than half', () => {
		for (const name of ['6063-T5', '6063-T6', '6061-T6', '6005A-T61', '6105-T5'] as const) {
			expect(beamMaterials[name].weldedMpa).toBeLessThanOrEqual(beamMaterials[name].strengthMpa / 2);
		}
	});
});

test('load cases are those of the rules', () => {
	const facts = readJson<
		{
			id: string;
			forward_g?: number;
			rearward_g?: number;
			lateral_g?: number;
			fraction?: number;
			factor?: number;
		}[]
	>('vehicle/regulatory_facts.json');
	const of = (id: string) => facts.find((fact) => fact.id === id);
	const { driving, crash } = loadCases;
	expect([driving.forward, driving.rearward, driving.sideways]).toEqual([
		of('cargo-393-102')?.forward_g,
		of('cargo-393-102')?.rearward_g,
		of('cargo-393-102')?.lateral_g,
	]);
	expect(driving.upward).toBe(of('cargo-393-102-b')?.fraction);
	expect(crash.forward).toBe(of('fmvss-207')?.factor);
	// What is from memory only tightens what was verified.
	for (const one of [loadCases.van, crash]) {
		expect(one.forward).toBeGreaterThanOrEqual(driving.forward);
		expect(one.rearward).toBeGreaterThanOrEqual(driving.rearward);
		expect(one.sideways).toBeGreaterThanOrEqual(driving.sideways);
		expect(one.upward).toBeGreaterThanOrEqual(driving.upward);
	}
});

test('a full tank is never taken lighter than the reference density', () => {
	const density = (material: string) =>
		Number(readTable('vehicle/material_densities.csv').find((row) => row.material === material)?.kg_m3) /
		1000;
	expect(tankFluids.water.kgPerL).toBeGreaterThanOrEqual(density('fresh water'));
	expect(tankFluids.diesel.kgPerL).toBeGreaterThanOrEqual(density('diesel'));
	expect(tankFluids.gasoline.kgPerL).toBeGreaterThanOrEqual(density('gasoline'));
	expect(tankFluids.propane.kgPerL).toBeGreaterThanOrEqual(density('propane liquid 15 C'));
});

test('size classes cover every class and rise with size', () => {
	const classes = Object.keys(wheelbases).map((name) => vanClasses[name as keyof typeof vanClasses]);
	for (let index = 1; index < classes.length; index += 1) {
		const smaller = classes[index - 1];
		const larger = classes[index];
		expect(larger?.wheelbaseM).toBeGreaterThan(smaller?.wheelbaseM as number);
		expect(larger?.emptyKg).toBeGreaterThan(smaller?.emptyKg as number);
	}
	const heights = Object.keys(roofs).map((name) => roofClasses[name as keyof typeof roofClasses]);
	for (let index = 1; index < heights.length; index += 1) {
		expect(heights[index]?.centreHeightM).toBeGreaterThan(heights[index - 1]?.centreHeightM as number);
	}
});
