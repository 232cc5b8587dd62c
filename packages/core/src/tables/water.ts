import { fromMemory, physics, published } from '../topic/source.js';

/** Liquid water at 101.325 kPa, computed with the industrial formulation IAPWS-IF97. */
export const waterSource = physics('IAPWS-IF97, liquid water at 101.325 kPa');

export interface WaterRow {
	readonly temperatureC: number;
	readonly densityKgM3: number;
	readonly specificHeatKjKgK: number;
	readonly dynamicViscosityMPaS: number;
	readonly vaporizationKjKg: number;
}

// temperature [°C], density [kg/m³], specific heat [kJ/kgK], viscosity [mPa s], heat of vaporization [kJ/kg]
const rows: readonly (readonly [number, number, number, number, number])[] = [
	[0.01, 999.845, 4.2194, 1.7911, 2500.9],
	[2, 999.944, 4.2129, 1.6735, 2496.2],
	[4, 999.975, 4.2074, 1.5673, 2491.4],
	[5, 999.967, 4.2049, 1.5182, 2489.1],
	[10, 999.702, 4.1954, 1.3059, 2477.2],
	[15, 999.101, 4.1891, 1.1376, 2465.4],
	[15.56, 999.015, 4.1885, 1.1209, 2464.1],
	[20, 998.206, 4.1848, 1.0016, 2453.5],
	[21.11, 997.971, 4.184, 0.9749, 2450.9],
	[25, 997.048, 4.1819, 0.89, 2441.7],
	[30, 995.652, 4.18, 0.7972, 2429.8],
	[35, 994.039, 4.1789, 0.7191, 2417.9],
	[40, 992.224, 4.1786, 0.6527, 2406],
	[45, 990.223, 4.1788, 0.5958, 2394],
	[50, 988.047, 4.1796, 0.5465, 2382],
	[55, 985.707, 4.1809, 0.5036, 2369.9],
	[60, 983.211, 4.1828, 0.466, 2357.7],
	[65, 980.566, 4.1852, 0.4329, 2345.4],
	[70, 977.779, 4.1881, 0.4036, 2333.1],
	[75, 974.857, 4.1915, 0.3774, 2320.6],
	[80, 971.803, 4.1955, 0.3541, 2308.1],
	[85, 968.622, 4.2, 0.3331, 2295.4],
	[90, 965.319, 4.205, 0.3142, 2282.6],
	[95, 961.895, 4.2106, 0.2971, 2269.6],
	[99, 959.072, 4.2154, 0.2846, 2259.1],
];

/** Coldest first. */
export const waterRows: readonly WaterRow[] = rows.map(
	([temperatureC, densityKgM3, specificHeatKjKgK, dynamicViscosityMPaS, vaporizationKjKg]) => ({
		temperatureC,
		densityKgM3,
		specificHeatKjKgK,
		dynamicViscosityMPaS,
		vaporizationKjKg,
	}),
);

/** Heat given off by water as it freezes [kJ/kg]: IAPWS-06 ice against IF97 liquid at 0 °C, rounded. */
export const fusionKjKg = 333.5;
/** Density of ice at 0 °C [kg/m³]. */
export const iceDensityKgM3 = 916.7;
export const iceSource = physics('IAPWS-06, ice Ih at 0 °C and 101.325 kPa');

/** Largest flow a fixture may pass in the test its standard prescribes [L/min]. */
export const showerMaximumLMin = 7.57;
export const showerMaximumSource = published('EPA WaterSense', 'shower heads: 2.0 gpm at most');
export const lavatoryMaximumLMin = 5.68;
export const lavatoryMaximumSource = published('EPA WaterSense', 'lavatory taps: 1.5 gpm at most');
export const kitchenMaximumLMin = 8.33;
export const kitchenMaximumSource = fromMemory('10 CFR 430.32(o)', 'kitchen taps: 2.2 gpm at most');
