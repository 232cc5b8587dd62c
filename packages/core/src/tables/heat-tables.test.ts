import { describe, expect, test } from 'vitest';
import { readJson, readTable } from '../../../../tests/reference/csv.js';
import { butane, fuels } from './fuels.js';
import { bodyHeat } from './people.js';
import { solarAbsorptance, solarHeatGain, surfaceResistances } from './surfaces.js';

const printedFuels = readTable('heat/fuel_heating_values.csv');

test.each(
	(['gasoline', 'diesel', 'propane'] as const).map((fuel, index) => [fuel, printedFuels[index]] as const),
)('%s: heating values are the print', (fuel, row) => {
	expect(fuels[fuel]).toEqual({
		lowerBtuPerGal: Number(row?.lhv_btu_us_gal),
		higherBtuPerGal: Number(row?.hhv_btu_us_gal),
		lowerBtuPerLb: Number(row?.lhv_btu_lb),
		higherBtuPerLb: Number(row?.hhv_btu_lb),
	});
});

test('butane: heating values are the print, and there is no other fuel', () => {
	const row = printedFuels[3];
	expect(row?.fuel).toBe('n-butane');
	expect(butane).toEqual({
		lowerBtuPerLb: Number(row?.lhv_btu_lb),
		higherBtuPerLb: Number(row?.hhv_btu_lb),
	});
	expect(printedFuels).toHaveLength(4);
});

test.each(
	readTable('heat/people_heat_w.csv').map(
		(row, index) =>
			[
				row.activity ?? '',
				(['seated', 'lightWork', 'active', 'active', 'walking', 'asleep'] as const)[index] ?? 'seated',
				row,
			] as const,
	),
)('%s: heat of a person is the print', (_, activity, row) => {
	expect(bodyHeat[activity]).toMatchObject({
		sensibleW: Number(row.sensible_w),
		latentW: Number(row.latent_w),
	});
});

describe('surfaces', () => {
	const printed = readTable('heat/surface_resistances.csv');
	test.each([
		['ISO 6946', 'inside, heat flow upward', 'insideUpward'],
		['ISO 6946', 'inside, horizontal', 'insideHorizontal'],
		['ISO 6946', 'inside, downward', 'insideDownward'],
		['ISO 6946', 'outside (4 m/s)', 'outside'],
		['ASHRAE', 'outside summer 3.4 m/s', 'outsideSummer'],
	] as const)('%s, %s is the print', (standard, name, key) => {
		const row = printed.find((one) => one.standard === standard && one.case === name);
		expect(surfaceResistances[key].resistanceM2KW).toBe(Number(row?.r_m2k_w));
	});

	test('absorptance and solar heat gain are the print', () => {
		const facts = readJson<{
			readonly solar_absorptance: Readonly<Record<string, number>>;
			readonly shgc_normal: Readonly<Record<string, number>>;
		}>('heat/facts_and_formulas.json');
		expect(solarAbsorptance).toEqual({
			white: facts.solar_absorptance['white paint'],
			lightGrey: facts.solar_absorptance['light grey'],
			silver: facts.solar_absorptance['silver metallic'],
			coloured: facts.solar_absorptance['red/green/blue'],
			black: facts.solar_absorptance.black,
		});
		expect(solarHeatGain.clearSingle).toBe(facts.shgc_normal['clear single 3 mm']);
		expect(solarHeatGain.acrylicDouble).toBe(facts.shgc_normal['acrylic double hinged window']);
	});
});
