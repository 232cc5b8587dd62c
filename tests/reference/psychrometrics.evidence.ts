import { airDensityKgM3, airHeatWK } from '../../packages/core/src/climate/air.js';
import {
	dewPointC,
	humidityRatio,
	moistEnthalpyJKg,
	moistVolumeM3Kg,
	saturationPressurePa,
	saturationTemperatureC,
} from '../../packages/core/src/climate/psychrometrics.js';
import { readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

const standardPa = 101_325;
const library = {
	source: 'open psychrometric library, ASHRAE Fundamentals 2017 chapter 1, 101,325 Pa',
	mark: 'computed with a reference library',
} as const;

const table = readTable('heat/psychrometrics_101325pa.csv');
const state = (row: Record<string, string>) => `${row.temp_c} °C, ${Number(row.rh) * 100} %`;

// The cells are printed to 0.001 Pa, 1e-7 kg/kg, 0.001 K and 0.1 J/kg: half of the last digit.
const saturation: EvidenceRow[] = [...new Map(table.map((row) => [row.temp_c, row])).values()].map((row) => ({
	topic: 'psychrometrics',
	what: `saturation pressure at ${row.temp_c} °C`,
	...library,
	published: Number(row.sat_vapour_pressure_pa),
	unit: 'Pa',
	tolerance: { abs: 0.0006 },
	ours: () => saturationPressurePa(Number(row.temp_c)),
}));

const ratios: EvidenceRow[] = table.map((row) => ({
	topic: 'psychrometrics',
	what: `${state(row)}: humidity ratio`,
	...library,
	published: Number(row.humidity_ratio_kg_kg),
	unit: 'kg/kg',
	tolerance: { abs: 6e-8 },
	ours: () => humidityRatio(Number(row.temp_c), Number(row.rh), standardPa),
}));

const dewPoints: EvidenceRow[] = table.map((row) => ({
	topic: 'psychrometrics',
	what: `${state(row)}: dew point`,
	...library,
	published: Number(row.dew_point_c),
	unit: '°C',
	// The library stops its search within 0.001 K.
	tolerance: { abs: 0.002 },
	ours: () => dewPointC(Number(row.temp_c), Number(row.rh)),
}));

const enthalpies: EvidenceRow[] = table.map((row) => ({
	topic: 'psychrometrics',
	what: `${state(row)}: enthalpy`,
	...library,
	published: Number(row.enthalpy_j_kg_da),
	unit: 'J/kg',
	tolerance: { abs: 0.2 },
	ours: () =>
		moistEnthalpyJKg(Number(row.temp_c), humidityRatio(Number(row.temp_c), Number(row.rh), standardPa)),
}));

const volumes: EvidenceRow[] = table.map((row) => ({
	topic: 'psychrometrics',
	what: `${state(row)}: volume of a kilogram of dry air`,
	...library,
	published: Number(row.volume_m3_kg_da),
	unit: 'm³/kg',
	tolerance: { abs: 6e-6 },
	ours: () =>
		moistVolumeM3Kg(
			Number(row.temp_c),
			humidityRatio(Number(row.temp_c), Number(row.rh), standardPa),
			standardPa,
		),
}));

// Printed with the enhancement factor of moist air (0.4 to 0.5 %), which is left out here.
const saturated: EvidenceRow[] = [
	[-10, 0.0016062],
	[0, 0.00379],
	[10, 0.007661],
	[20, 0.014758],
	[30, 0.027329],
].map(([temperatureC, published]) => ({
	topic: 'psychrometrics',
	what: `saturated air at ${temperatureC} °C: humidity ratio`,
	source: 'ASHRAE Handbook of Fundamentals, thermodynamic properties of moist air',
	mark: 'from memory',
	published: published as number,
	unit: 'kg/kg',
	tolerance: { rel: 0.006 },
	ours: () => humidityRatio(temperatureC as number, 1, standardPa),
}));

// Goff-Gratch and Hyland-Wexler differ by less than 0.1 %.
const smithsonian: EvidenceRow[] = [
	[-30, 0.3798, 'ice'],
	[-20, 1.032, 'ice'],
	[-10, 2.597, 'ice'],
	[10, 12.272, 'water'],
	[20, 23.373, 'water'],
	[30, 42.43, 'water'],
	[40, 73.777, 'water'],
].map(([temperatureC, published, over]) => ({
	topic: 'psychrometrics',
	what: `saturation pressure over ${over} at ${temperatureC} °C`,
	source: 'Smithsonian Meteorological Tables (List 1949)',
	mark: 'from memory',
	published: published as number,
	unit: 'hPa',
	tolerance: { rel: 0.0015 },
	ours: () => saturationPressurePa(temperatureC as number) / 100,
}));

// The Magnus form lies up to 0.3 % below the tables (at 25 °C 31.60 hPa; the Smithsonian Tables have 31.67).
const magnus: EvidenceRow[] = [0.02, 15, 25, 45].map((temperatureC) => ({
	topic: 'psychrometrics',
	what: `saturation pressure by the Magnus form at ${temperatureC} °C`,
	source: 'WMO Guide to Instruments and Methods of Observation (WMO-No. 8), annex on humidity',
	mark: 'from memory',
	published: 6.112 * Math.exp((17.62 * temperatureC) / (243.12 + temperatureC)),
	unit: 'hPa',
	tolerance: { rel: 0.0035 },
	ours: () => saturationPressurePa(temperatureC) / 100,
}));

const atmosphere = readTable('air/standard_atmosphere_iso2533.csv');

const densities: EvidenceRow[] = atmosphere.map((row) => ({
	topic: 'vent',
	what: `density of the air at ${row.geopotential_altitude_m} m`,
	source: 'ISO 2533, standard atmosphere',
	mark: 'verified',
	published: Number(row.density_kg_m3),
	unit: 'kg/m³',
	tolerance: { abs: 1.1e-5 },
	ours: () => airDensityKgM3(Number(row.temp_c), Number(row.pressure_kpa)),
}));

// Hyland-Wexler and IAPWS-IF97 lie within 0.03 K of each other between 83 and 102 °C.
const boiling: EvidenceRow[] = atmosphere.map((row) => ({
	topic: 'psychrometrics',
	what: `boiling point of water at ${row.geopotential_altitude_m} m`,
	source: 'IAPWS-IF97 saturation at the pressure of ISO 2533',
	mark: 'computed with a reference library',
	published: Number(row.water_boiling_point_c),
	unit: '°C',
	tolerance: { abs: 0.03 },
	ours: () => saturationTemperatureC(Number(row.pressure_kpa) * 1000),
}));

const flows: EvidenceRow[] = [
	{
		topic: 'vent',
		what: 'heat of 1 cfm of standard air for 1 °F',
		source: 'ASHRAE Handbook of Fundamentals, sensible heat factor 1.08',
		mark: 'from memory',
		published: 1.08,
		unit: 'Btu/h',
		// 1.08 is 60 × 0.075 lb/ft³ × 0.24 Btu/lb°F, rounded.
		tolerance: { rel: 0.005 },
		ours: () => airHeatWK(1.69901082, 0.075 * 16.01846) / 1.8 / 0.29307107,
	},
	{
		topic: 'vent',
		what: 'heat of 1 m³/h of air for 1 K',
		source: 'CIBSE Guide A, 0.33 W/K',
		mark: 'from memory',
		published: 0.33,
		unit: 'W/K',
		tolerance: { abs: 0.006 },
		ours: () => airHeatWK(1, 1.2),
	},
	{
		topic: 'heat',
		what: '12 m³, 1.5 air changes, 30 K: heat loss',
		source: 'sensible infiltration',
		mark: 'computed with a reference library',
		published: 180.9,
		unit: 'W',
		tolerance: { rel: 0.002 },
		ours: () => airHeatWK(12 * 1.5, 1.2) * 30,
	},
	{
		topic: 'vent',
		what: 'density of dry air at 20 °C and 101.325 kPa',
		source: 'CRC Handbook of Chemistry and Physics',
		mark: 'from memory',
		published: 1.2041,
		unit: 'kg/m³',
		tolerance: { abs: 0.0002 },
		ours: () => airDensityKgM3(20, 101.325),
	},
];

export const rows: readonly EvidenceRow[] = [
	...saturation,
	...ratios,
	...dewPoints,
	...enthalpies,
	...volumes,
	...saturated,
	...smithsonian,
	...magnus,
	...densities,
	...boiling,
	...flows,
];
