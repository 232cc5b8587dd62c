import { describe, expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import { awgAreaMm2, awgSizes, conductorSize, copperResistanceAt, metricSizes } from './conductors.js';

const kftPerM = 1 / 304.8;

describe('American sizes', () => {
	const printed = readTable('electrical/nec_ch9_table8_dc_resistance.csv').filter(
		(row) => row.form === 'stranded',
	);

	test('are the stranded rows of NEC Chapter 9 Table 8, in order', () => {
		expect(awgSizes.map((size) => size.name)).toEqual(printed.map((row) => `${row.awg} AWG`));
	});

	test.each(printed.map((row) => [row.awg ?? '', row] as const))(
		'%s AWG at 75 °C is the print',
		(awg, row) => {
			const size = conductorSize(`${awg} AWG`);
			if (size === null) throw new Error(`${awg} AWG is missing`);
			const at75 = (ohmPerM20C: number) => copperResistanceAt(ohmPerM20C, 75) / kftPerM;
			expect(at75(size.bareOhmPerM20C)).toBeCloseTo(
				Number(row.resistance_uncoated_copper_ohm_per_kft_75C),
				10,
			);
			expect(at75(size.tinnedOhmPerM20C)).toBeCloseTo(
				Number(row.resistance_coated_copper_ohm_per_kft_75C),
				10,
			);
		},
	);

	test.each(readTable('electrical/awg_geometry.csv').filter((row) => row.area_mm2_nec_table8 !== ''))(
		'$awg AWG has the printed area',
		(row) => {
			expect(conductorSize(`${row.awg} AWG`)?.areaMm2).toBe(Number(row.area_mm2_nec_table8));
		},
	);

	test('areas follow the formula of the gauge', () => {
		for (const [index, size] of awgSizes.entries()) {
			const gauge = size.name.startsWith('4/0') ? -3 : gaugeOf(size.name);
			expect(Math.abs(size.areaMm2 / awgAreaMm2(gauge) - 1), `${index} ${size.name}`).toBeLessThan(0.003);
		}
	});
});

function gaugeOf(name: string): number {
	const zeros = /^(\d)\/0/.exec(name);
	return zeros === null ? Number.parseInt(name, 10) : 1 - Number(zeros[1]);
}

describe('metric sizes', () => {
	// 0.5 mm² is below every minimum.
	const printed = readTable('electrical/iec60228_max_resistance.csv').filter(
		(row) => Number(row.area_nominal_mm2) >= 0.75,
	);

	test('are the class 5 columns of IEC 60228, cell by cell', () => {
		expect(
			metricSizes.map((size) => [
				size.areaMm2,
				Number((size.bareOhmPerM20C * 1000).toPrecision(6)),
				Number((size.tinnedOhmPerM20C * 1000).toPrecision(6)),
			]),
		).toEqual(
			printed.map((row) => [
				Number(row.area_nominal_mm2),
				Number(row.class5_plain_copper_max_ohm_per_km_20C),
				Number(row.class5_metal_coated_copper_max_ohm_per_km_20C),
			]),
		);
	});
});

describe.each([
	['American', awgSizes],
	['metric', metricSizes],
] as const)('%s series', (_, sizes) => {
	test('grows in area and falls in resistance; tin only adds', () => {
		for (const [index, size] of sizes.entries()) {
			expect(size.tinnedOhmPerM20C).toBeGreaterThan(size.bareOhmPerM20C);
			const thinner = sizes[index - 1];
			if (thinner === undefined) continue;
			expect(size.areaMm2).toBeGreaterThan(thinner.areaMm2);
			expect(size.bareOhmPerM20C).toBeLessThan(thinner.bareOhmPerM20C);
			expect(size.tinnedOhmPerM20C).toBeLessThan(thinner.tinnedOhmPerM20C);
		}
	});

	test('no stranded conductor is better than pure copper of its area', () => {
		for (const size of sizes) {
			const pureOhmPerM = 0.017241 / size.areaMm2;
			expect(size.bareOhmPerM20C, size.name).toBeGreaterThan(pureOhmPerM);
			expect(size.bareOhmPerM20C, size.name).toBeLessThan(pureOhmPerM * 1.17);
		}
	});
});

test('a name is one size or none', () => {
	expect(conductorSize('2/0 AWG')?.areaMm2).toBe(67.43);
	expect(conductorSize('2.5 mm²')?.system).toBe('metric');
	expect(conductorSize('7 AWG')).toBeNull();
	expect(conductorSize('4awg')).toBeNull();
});

test('copper resists less when cold', () => {
	expect(copperResistanceAt(1, 20)).toBe(1);
	expect(copperResistanceAt(1, -20)).toBeCloseTo(0.8428, 4);
});
