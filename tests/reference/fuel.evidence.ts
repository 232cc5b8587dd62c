import { burnerOf, unitEnergyWh } from '../../packages/core/src/climate/burning.js';
import {
	type BurnerFuel,
	butane,
	butaneLeastC,
	fuels,
	gasFillShare,
	higherHeatingValueWhPerKg,
	lowerHeatingValueWhPerKg,
} from '../../packages/core/src/tables/fuels.js';
import { fuel } from '../../packages/core/src/topics/fuel.js';
import { eu, resultsOf, us } from './answers.js';
import { readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

const containers = readTable('heat/gas_containers.csv');

function printed(what: string, unit: string, source: string): number {
	const row = containers.find(
		(one) => one.what === what && one.unit === unit && one.source?.startsWith(source) === true,
	);
	if (row === undefined) throw new Error(`no row ${what} in ${unit} of ${source}`);
	return Number(row.value);
}

const lbKg = 0.45359237;
const galL = 3.785411784;
const btuW = 0.29307107;
const mjPerWh = 0.0036;

/** What a burner takes of a fuel at full burn, in the unit the fuel is counted in, an hour. */
function takenPerHour(
	of: BurnerFuel,
	powerW: number,
	rating: 'input' | 'output',
	basis: 'lower' | 'higher',
): number {
	const burner = burnerOf(
		{ powerW, rating },
		{ fuel: of, region: 'eu', efficiency: undefined, rating: undefined, basis },
	);
	if (burner === null) throw new Error('a burner of a power has its fuel');
	return burner.inputW / unitEnergyWh(of);
}

const heatingValues: EvidenceRow[] = [
	{
		topic: 'fuel',
		what: 'propane: higher heating value of a US gallon',
		source: 'NFPA 58, properties of LP-gases',
		mark: 'from memory',
		published: printed('higher heating value of propane', 'Btu/US gal', 'NFPA 58'),
		unit: 'Btu/US gal',
		tolerance: { rel: 0.002 },
		ours: () => fuels.propane.higherBtuPerGal,
	},
	{
		topic: 'fuel',
		what: 'propane: higher heating value of a pound',
		source: 'NFPA 58, properties of LP-gases',
		mark: 'from memory',
		published: printed('higher heating value of propane', 'Btu/lb', 'NFPA 58'),
		unit: 'Btu/lb',
		// ours is the Department of Energy's 21,594
		tolerance: { rel: 0.003 },
		ours: () => fuels.propane.higherBtuPerLb,
	},
	{
		topic: 'fuel',
		what: 'propane: higher heating value of a US gallon, energy statistics',
		source: 'US Energy Information Administration, energy conversion',
		mark: 'from memory',
		published: printed('higher heating value of propane', 'Btu/US gal', 'US Energy'),
		unit: 'Btu/US gal',
		tolerance: { rel: 0.001 },
		ours: () => fuels.propane.higherBtuPerGal,
	},
	{
		topic: 'fuel',
		what: 'diesel: higher heating value of a US gallon, energy statistics',
		source: 'US Energy Information Administration, energy conversion',
		mark: 'from memory',
		published: printed('higher heating value of diesel', 'Btu/US gal', 'US Energy'),
		unit: 'Btu/US gal',
		tolerance: { rel: 0.001 },
		ours: () => fuels.diesel.higherBtuPerGal,
	},
	{
		topic: 'fuel',
		what: 'butane: higher heating value of a pound',
		source: 'NFPA 58, properties of LP-gases',
		mark: 'from memory',
		published: 21221,
		unit: 'Btu/lb',
		tolerance: { abs: 0.5 },
		ours: () => butane.higherBtuPerLb,
	},
	{
		topic: 'fuel',
		what: 'butane: lower heating value of a kilogram',
		source: 'NIST Chemistry WebBook, heats of formation of n-butane, carbon dioxide and water vapour',
		mark: 'from memory',
		published: printed('lower heating value of n-butane', 'MJ/kg', 'from the NIST'),
		unit: 'MJ/kg',
		// ours is commercial butane's, a little below
		tolerance: { rel: 0.005 },
		ours: () => lowerHeatingValueWhPerKg('butane') * mjPerWh,
	},
	{
		topic: 'fuel',
		what: 'diesel: lower heating value of a kilogram',
		source: 'EN 590 fuel, engine and boiler handbooks: 42.5 to 43 MJ/kg',
		mark: 'from memory',
		published: printed('lower heating value of diesel', 'MJ/kg', 'EN 590'),
		unit: 'MJ/kg',
		tolerance: { rel: 0.01 },
		ours: () => lowerHeatingValueWhPerKg('diesel') * mjPerWh,
	},
	{
		topic: 'fuel',
		what: 'gasoline: lower heating value of a kilogram',
		source: 'EN 228 fuel, handbooks: 43 to 44 MJ/kg',
		mark: 'from memory',
		published: printed('lower heating value of gasoline', 'MJ/kg', 'EN 228'),
		unit: 'MJ/kg',
		tolerance: { rel: 0.012 },
		ours: () => lowerHeatingValueWhPerKg('gasoline') * mjPerWh,
	},
	{
		topic: 'fuel',
		what: 'propane: higher over lower heating value',
		source:
			'US Department of Energy, Alternative Fuels Data Center, Properties of Fuels: 21,594 over 19,900 Btu/lb',
		mark: 'verified',
		published: 1.0851,
		unit: '',
		tolerance: { abs: 0.0001 },
		ours: () => higherHeatingValueWhPerKg('propane') / lowerHeatingValueWhPerKg('propane'),
	},
];

const stores: EvidenceRow[] = [
	{
		topic: 'fuel',
		what: 'share of a propane container that liquid may fill',
		source: 'NFPA 58, 80 % rule; UN ECE R67',
		mark: 'from memory',
		published: printed('share of the volume that liquid propane may fill', '1', 'NFPA 58'),
		unit: '',
		ours: () => gasFillShare,
	},
	{
		topic: 'fuel',
		what: 'propane in a cylinder stamped with 47.6 lb of water, by its volume',
		source: '49 CFR 173.304a, 42 % by mass of the water capacity: 20 lb',
		mark: 'from memory',
		published:
			printed('propane by mass of the water capacity', '1', '49 CFR') *
			printed('water capacity stamped on a 20 lb propane cylinder', 'lb', 'common'),
		unit: 'lb',
		// 80 % of the volume at 15 °C is 3 % less than 42 % of the mass of the water.
		tolerance: { rel: 0.04 },
		ours: () => {
			const waterLb = printed('water capacity stamped on a 20 lb propane cylinder', 'lb', 'common');
			const given = { fuel: 'propane', volumeL: waterLb * lbKg, burners: [{ powerW: 1000 }] };
			return Number(resultsOf(fuel, given).fuelThere) / lbKg;
		},
	},
	{
		topic: 'fuel',
		what: 'temperature at which butane gives no gas',
		source: 'NIST Chemistry WebBook, boiling point of n-butane',
		mark: 'from memory',
		published: printed('boiling point of n-butane', 'C', 'NIST'),
		unit: '°C',
		// rounded up to the freezing point: the safe side
		tolerance: { abs: 0.5 },
		ours: () => butaneLeastC,
	},
];

const burning: EvidenceRow[] = [
	{
		topic: 'fuel',
		what: 'a 20 lb cylinder at 100,000 Btu/h of input',
		source: 'extension services: 430,000 Btu in a 20 lb cylinder (4.7 gal at 91,500 Btu), 4.3 h',
		mark: 'from memory',
		published: 4.3,
		unit: 'h',
		tolerance: { abs: 0.03 },
		ours: () =>
			Number(
				resultsOf(
					fuel,
					{
						fuel: 'propane',
						amountKg: 20 * lbKg,
						basis: 'higher',
						burners: [{ powerW: 100_000 * btuW, rating: 'input' }],
					},
					us,
				).burnTime,
			),
	},
	{
		topic: 'fuel',
		what: 'propane burned at 91,502 Btu/h of input by the higher heating value',
		source: 'NFPA 58, properties of LP-gases: a US gallon (4.24 lb) an hour',
		mark: 'from memory',
		published: 4.24,
		unit: 'lb/h',
		tolerance: { rel: 0.005 },
		ours: () => takenPerHour('propane', 91_502 * btuW, 'input', 'higher') / lbKg,
	},
	{
		topic: 'fuel',
		what: 'diesel burned by a heater of 5 kW at full output',
		source: 'data sheets of diesel air heaters of 5 kW: about 0.6 L/h',
		mark: 'common practice',
		published: 0.62,
		unit: 'L/h',
		tolerance: { abs: 0.03 },
		ours: () => takenPerHour('diesel', 5000, 'output', 'lower'),
	},
	{
		topic: 'fuel',
		what: 'diesel burned by a heater of 2 kW at full output',
		source: 'data sheets of diesel air heaters of 2 kW: 0.24 to 0.28 L/h',
		mark: 'common practice',
		published: 0.26,
		unit: 'L/h',
		tolerance: { abs: 0.02 },
		ours: () => takenPerHour('diesel', 2000, 'output', 'lower'),
	},
	{
		topic: 'fuel',
		what: 'propane burned by a camping burner of 2 kW',
		source: 'plates of camping cookers: about 145 g/h at 2 kW by the higher heating value',
		mark: 'common practice',
		published: 0.145,
		unit: 'kg/h',
		tolerance: { rel: 0.03 },
		ours: () => takenPerHour('propane', 2000, 'input', 'higher'),
	},
	{
		topic: 'fuel',
		what: 'a US gallon of diesel, 1500 W of heat at 80 %: hours',
		source: 'US Department of Energy heating value, worked: 128,450 Btu × 0.8 / 5118 Btu/h',
		mark: 'computed with a reference library',
		published: 20.08,
		unit: 'h',
		tolerance: { rel: 0.001 },
		ours: () =>
			Number(
				resultsOf(fuel, { fuel: 'diesel', volumeL: galL, isContent: true, burners: [{ powerW: 1500 }] }, eu)
					.burnTime,
			),
	},
];

export const rows: EvidenceRow[] = [...heatingValues, ...stores, ...burning];
