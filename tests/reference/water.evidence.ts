import { drawdownL } from '../../packages/core/src/water/accumulator.js';
import { type Drain, drainFlowM3S, drainTimeS } from '../../packages/core/src/water/draining.js';
import { freezeTimes } from '../../packages/core/src/water/freezing.js';
import { hotShare, scaldTimeS } from '../../packages/core/src/water/heating.js';
import { heatingEnergyJ, waterAt } from '../../packages/core/src/water/properties.js';
import { readJson } from './csv.js';
import type { EvidenceRow } from './evidence.js';

const psi = 6.894757293168;
const gallonL = 3.785411784;

interface Example {
	readonly id: string;
	readonly given: Readonly<Record<string, number>>;
	readonly expected: Readonly<Record<string, number>>;
}

const examples = [
	...readJson<Example[]>('water/examples.json'),
	...readJson<Example[]>('heat/examples.json'),
];

function numberOf(id: string, part: 'given' | 'expected', name: string): number {
	const found = examples.find((one) => one.id === id)?.[part][name];
	if (found === undefined) throw new Error(`no ${name} in example ${id}`);
	return found;
}

// Between two rows of the table 5 K apart the straight line lies up to 0.05 kg/m³ off the curve.
const densities: EvidenceRow[] = [
	[8, 999.849],
	[12, 999.4996],
	[18, 998.5956],
	[22, 997.7735],
	[28, 996.2335],
].map(([temperatureC, published]) => ({
	topic: 'water properties',
	what: `density at ${temperatureC} °C`,
	source: 'Kell 1975, as in the CRC Handbook of Chemistry and Physics',
	mark: 'from memory',
	published: published as number,
	unit: 'kg/m³',
	tolerance: { abs: 0.06 },
	ours: () => waterAt(temperatureC as number).densityKgM3,
}));

// The older handbook scale starts from 1.002 mPa s at 20 °C, 0.04 % above today's; the rest is reading between rows.
const viscosities: EvidenceRow[] = [
	[18, 1.053],
	[22, 0.9548],
	[28, 0.8327],
].map(([temperatureC, published]) => ({
	topic: 'water properties',
	what: `viscosity at ${temperatureC} °C`,
	source: 'CRC Handbook of Chemistry and Physics, viscosity of water',
	mark: 'from memory',
	published: published as number,
	unit: 'mPa s',
	tolerance: { rel: 0.004 },
	ours: () => {
		const water = waterAt(temperatureC as number);
		return water.viscosityM2S * water.densityKgM3 * 1000;
	},
}));

const energy: EvidenceRow[] = [
	{
		topic: 'hot-water',
		what: 'heat of 1 g of water from 14.5 to 15.5 °C',
		source: '15 °C calorie, 4.1855 J (CIPM 1950)',
		mark: 'from memory',
		published: 4.1855,
		unit: 'J',
		// The calorie of 1950 lies 0.08 % below the formulation of 1997.
		tolerance: { rel: 0.0015 },
		ours: () => heatingEnergyJ(1 / waterAt(14.5).densityKgM3, 14.5, 15.5),
	},
	{
		topic: 'hot-water',
		what: '23 L from 12 to 60 °C',
		source: 'IAPWS-IF97, m c dT',
		mark: 'computed with a reference library',
		published: numberOf('water-heat-energy-1', 'expected', 'kwh'),
		unit: 'kWh',
		tolerance: { rel: 0.005 },
		ours: () => heatingEnergyJ(23, 12, 60) / 3.6e6,
	},
	{
		topic: 'hot-water',
		what: 'hot share of a 40 °C shower from 60 and 12 °C',
		source: 'mixing balance',
		mark: 'computed with a reference library',
		published: numberOf('water-mixing', 'expected', 'hot_fraction'),
		unit: '',
		tolerance: { rel: 0.002 },
		ours: () => hotShare(60, 12, 40),
	},
	...[
		[60, 31],
		[80, 23],
		[100, 18],
	].map(
		([riseF, gallons]): EvidenceRow => ({
			topic: 'hot-water',
			what: `4500 W element, ${riseF} °F rise: gallons an hour`,
			source: 'recovery tables of electric water heaters',
			mark: 'from memory',
			published: gallons as number,
			unit: 'gal/h',
			// printed as whole gallons
			tolerance: { abs: 0.5 },
			ours: () => {
				const joulePerGallon = heatingEnergyJ(gallonL, 10, 10 + (riseF as number) / 1.8);
				return (4500 * 3600) / joulePerGallon;
			},
		}),
	),
	...[
		[120, 300],
		[130, 30],
		[140, 6],
		[150, 2],
	].map(
		([temperatureF, seconds]): EvidenceRow => ({
			topic: 'hot-water',
			what: `time to a serious burn at ${temperatureF} °F`,
			source: 'US Consumer Product Safety Commission, leaflet on tap water scalds',
			mark: 'from memory',
			published: seconds as number,
			unit: 's',
			// The rows are kept in whole degrees Celsius.
			ours: () => scaldTimeS(Math.floor(((temperatureF as number) - 32) / 1.8)),
		}),
	),
	{
		topic: 'tank',
		what: 'weight of a US gallon at 60 °F',
		source: 'plumbing handbooks, 8.34 lb',
		mark: 'from memory',
		published: 8.34,
		unit: 'lb',
		tolerance: { abs: 0.005 },
		ours: () => (gallonL / 1000) * (waterAt(15.56).densityKgM3 / 0.45359237),
	},
];

// Published acceptance factors are for a pre-charge equal to the cut-in, printed to two digits.
const factors: EvidenceRow[] = [
	[20, 40, 0.37],
	[30, 50, 0.31],
	[40, 60, 0.27],
].map(([cutIn, cutOut, factor]) => ({
	topic: 'accumulator',
	what: `${cutIn}/${cutOut} psi: share of the tank that is drawn down`,
	source: 'acceptance factors of well tanks',
	mark: 'from memory',
	published: factor as number,
	unit: '',
	tolerance: { abs: 0.005 },
	ours: () =>
		drawdownL(
			1,
			{
				prechargeKPa: (cutIn as number) * psi,
				cutInKPa: (cutIn as number) * psi,
				cutOutKPa: (cutOut as number) * psi,
			},
			101.325,
		),
}));

const tank: Drain = {
	tankAreaM2: numberOf('water-drain-1', 'given', 'tank_area_m2'),
	valveBoreMm: numberOf('water-drain-1', 'given', 'orifice_mm'),
	dischargeCoefficient: numberOf('water-drain-1', 'given', 'cd'),
	hose: null,
	fallM: 0,
	viscosityM2S: 1.3e-6,
};
const freezing = () => freezeTimes(numberOf('heat-tank-freeze-1', 'given', 'mass_kg'), 2, 10, -10);

const worked: EvidenceRow[] = [
	{
		topic: 'accumulator',
		what: '0.75 L, 30 psi gas, 35 to 55 psi: drawdown',
		source: "Boyle's law, isothermal",
		mark: 'computed with a reference library',
		published: numberOf('water-accumulator-1', 'expected', 'drawdown_l'),
		unit: 'L',
		tolerance: { rel: 0.002 },
		ours: () =>
			drawdownL(0.75, { prechargeKPa: 30 * psi, cutInKPa: 35 * psi, cutOutKPa: 55 * psi }, 14.696 * psi),
	},
	{
		topic: 'drain',
		what: '12.7 mm opening, 0.25 m of water: flow',
		source: 'Torricelli with Cd 0.6, checked by time steps',
		mark: 'computed with a reference library',
		published: numberOf('water-drain-1', 'expected', 'initial_l_min'),
		unit: 'L/min',
		tolerance: { rel: 0.005 },
		ours: () => drainFlowM3S(tank, 0.25) * 60_000,
	},
	{
		topic: 'drain',
		what: '12.7 mm opening, 75 L from 0.25 to 0.01 m: time',
		source: 'Torricelli with Cd 0.6, checked by time steps',
		mark: 'computed with a reference library',
		published: numberOf('water-drain-1', 'expected', 'time_s'),
		unit: 's',
		tolerance: { rel: 0.005 },
		ours: () => drainTimeS(tank, 0.25, 0.01),
	},
	{
		topic: 'drain',
		what: 'speed of a jet under 1 m of water',
		source: 'textbook mechanics, Torricelli: 4.43 m/s',
		mark: 'from memory',
		published: 4.43,
		unit: 'm/s',
		tolerance: { abs: 0.005 },
		ours: () => drainFlowM3S({ ...tank, dischargeCoefficient: 1 }, 1) / ((Math.PI / 4) * 0.0127 ** 2),
	},
	{
		topic: 'freeze',
		what: '75 kg, 2 W/K, from 10 °C in -10 °C: hours until ice begins',
		source: 'lumped cooling, checked by time steps',
		mark: 'computed with a reference library',
		published: numberOf('heat-tank-freeze-1', 'expected', 'hours_to_0c'),
		unit: 'h',
		tolerance: { rel: 0.01 },
		ours: () => freezing().toFreezingH,
	},
	{
		topic: 'freeze',
		what: '75 kg, 2 W/K, in -10 °C: hours from 0 °C to solid',
		source: 'latent heat of fusion, checked by time steps',
		mark: 'computed with a reference library',
		published: numberOf('heat-tank-freeze-1', 'expected', 'hours_0c_to_solid'),
		unit: 'h',
		tolerance: { rel: 0.01 },
		ours: () => freezing().toSolidH - freezing().toFreezingH,
	},
	{
		topic: 'freeze',
		what: 'a short ton of water at 0 °C frozen by 12,000 Btu/h: hours',
		source: 'definition of the ton of refrigeration',
		mark: 'from memory',
		published: 24,
		unit: 'h',
		// The ton counts 144 Btu/lb; today's heat of fusion is 143.4.
		tolerance: { rel: 0.006 },
		ours: () => freezeTimes(2000 * 0.45359237, 12_000 * 0.29307107, 0, -1).toSolidH,
	},
];

export const rows: readonly EvidenceRow[] = [...densities, ...viscosities, ...energy, ...factors, ...worked];
