import { altitudeShare, fuelL } from '../../packages/core/src/climate/heater.js';
import { breathedGH, waterPerPropane } from '../../packages/core/src/climate/moisture.js';
import { dewPointC } from '../../packages/core/src/climate/psychrometrics.js';
import { floorElement, windowElement } from '../../packages/core/src/climate/shell.js';
import { solAirC } from '../../packages/core/src/climate/sun.js';
import { innerSurfaceC, layer, resistanceOf } from '../../packages/core/src/climate/wall.js';
import {
	type FuelName,
	higherHeatingValueWhPerL,
	lowerHeatingValueWhPerKg,
	lowerHeatingValueWhPerL,
} from '../../packages/core/src/tables/fuels.js';
import { type MaterialName, materials } from '../../packages/core/src/tables/materials.js';
import { bodyHeat } from '../../packages/core/src/tables/people.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

interface Wall {
	readonly id: string;
	readonly given: {
		readonly rsi: number;
		readonly rse: number;
		readonly layers: readonly (readonly [string, number, number])[];
	};
	readonly expected: Readonly<Record<string, number>>;
}

function wall(id: string): Wall {
	const found = readJson<Wall[]>('heat/examples.json').find((one) => one.id === id);
	if (found === undefined) throw new Error(`no example ${id}`);
	return found;
}

function wallResistance({ given }: Wall): number {
	return resistanceOf({
		layers: given.layers.map(([name, thicknessM, conductivity]) =>
			layer(name, thicknessM * 1000, conductivity),
		),
		bridgeShare: 0,
		insideM2KW: given.rsi,
		outsideM2KW: given.rse,
	}).totalM2KW;
}

const brick = wall('heat-iso6946-wall');
const van = wall('heat-van-wall');

const walls: EvidenceRow[] = [
	{
		topic: 'heat',
		what: '300 mm brick with 50 mm EPS: resistance',
		source: 'ISO 6946, layer sum worked in a public repository',
		mark: 'verified',
		published: brick.expected.r_total as number,
		unit: 'm²K/W',
		tolerance: { abs: 0.00006 },
		ours: () => wallResistance(brick),
	},
	{
		topic: 'heat',
		what: '300 mm brick with 50 mm EPS: U',
		source: 'ISO 6946, layer sum worked in a public repository',
		mark: 'verified',
		published: brick.expected.u as number,
		unit: 'W/m²K',
		tolerance: { abs: 0.00006 },
		ours: () => 1 / wallResistance(brick),
	},
	{
		topic: 'heat',
		what: 'steel, 25 mm XPS, 6 mm plywood: U',
		source: 'ISO 6946, layer sum',
		mark: 'computed with a reference library',
		published: van.expected.u as number,
		unit: 'W/m²K',
		tolerance: { rel: 0.002 },
		ours: () => 1 / wallResistance(van),
	},
	{
		topic: 'moisture',
		what: 'inner surface of that wall, 20 °C inside, -10 °C outside',
		source: 'ISO 6946 with Rsi 0.13',
		mark: 'computed with a reference library',
		published: 16.38,
		unit: '°C',
		tolerance: { abs: 0.1 },
		ours: () => innerSurfaceC(20, -10, 0.13, wallResistance(van)),
	},
	{
		topic: 'moisture',
		what: 'dew point of air of 20 °C and 60 %',
		source: 'Magnus form, checked with an open psychrometric library',
		mark: 'computed with a reference library',
		published: 12.0,
		unit: '°C',
		tolerance: { abs: 0.1 },
		ours: () => dewPointC(20, 0.6),
	},
	{
		topic: 'heat',
		what: 'one pane of 4 mm glass: U',
		source: 'EN 673 / ISO 10077-1, single glazing',
		mark: 'from memory',
		published: 5.8,
		unit: 'W/m²K',
		tolerance: { abs: 0.06 },
		ours: () => 1 / resistanceOf(windowElement('single', false)).totalM2KW,
	},
	{
		topic: 'heat',
		what: 'two uncoated panes with about 15 mm of air: U',
		source: 'ISO 10077-1, double glazing 4-16-4',
		mark: 'from memory',
		published: 2.7,
		unit: 'W/m²K',
		// Acrylic insulates a little better than the glass of the table.
		tolerance: { abs: 0.1 },
		ours: () => 1 / resistanceOf(windowElement('double', false)).totalM2KW,
	},
	{
		topic: 'heat',
		what: 'uninsulated floor, heat flow downward: what the films alone leave',
		source: 'ISO 6946, Rsi 0.17 and Rse 0.04: U 4.76',
		mark: 'from memory',
		published: 4.76,
		unit: 'W/m²K',
		tolerance: { abs: 0.005 },
		ours: () => {
			const element = floorElement(materials.xps, 0);
			return 1 / (element.insideM2KW + element.outsideM2KW);
		},
	},
	{
		topic: 'cool',
		what: 'radiation of a flat roof to the clear sky',
		source: 'ASHRAE Handbook of Fundamentals, sol-air temperature: 7 °F',
		mark: 'from memory',
		published: 7,
		unit: '°F',
		// 20 Btu/h ft² over 3.0 Btu/h ft² °F is 6.7; the handbook rounds.
		tolerance: { abs: 0.1 },
		ours: () => -solAirC(0, 0, 0.5, 0.044, 'sky') * 1.8,
	},
	{
		topic: 'cool',
		what: 'light surface in 1000 W/m²: how much hotter than the air it drives',
		source: 'ASHRAE Handbook of Fundamentals, alpha/ho 0.026 m²K/W for light colours',
		mark: 'from memory',
		published: 26,
		unit: 'K',
		// 0.45 of the sun over ho 17 W/m²K (a surface in 3.4 m/s of wind has 22.7, the figure of a table is rounded).
		tolerance: { abs: 1 },
		ours: () => solAirC(30, 1000, 0.45, 1 / 17, 'horizon') - 30,
	},
];

// Resistance of an inch in ft² h °F/Btu, the way US shops speak of insulation; lists print one decimal.
const perInch: EvidenceRow[] = (
	[
		['xps', 5.0, 'verified'],
		['openCellSpray', 3.6, 'verified'],
		['glassWool', 3.2, 'verified'],
		['closedCellSpray', 6.0, 'from memory'],
		['polyiso', 6.0, 'from memory'],
		['mineralWool', 4.1, 'from memory'],
	] as const satisfies readonly (readonly [MaterialName, number, EvidenceRow['mark']])[]
).map(([name, published, mark]) => ({
	topic: 'heat',
	what: `${materials[name].words[0]}: R of an inch`,
	source:
		mark === 'verified'
			? 'public lists of insulation R-values'
			: 'ASHRAE Handbook of Fundamentals, aged design values',
	mark,
	published,
	unit: 'ft² h °F/Btu',
	tolerance: { abs: 0.06 },
	ours: () => 0.0254 / materials[name].conductivityWmK / 0.17611,
}));

const byVolume = {
	lhv_kwh_per_l: ['lower heating value of a litre', 'kWh/L', lowerHeatingValueWhPerL],
	hhv_kwh_per_l: ['higher heating value of a litre', 'kWh/L', higherHeatingValueWhPerL],
} as const;
const fuelNames: Readonly<Record<string, FuelName>> = { gasoline: 'gasoline', propane: 'propane' };

const fuels: EvidenceRow[] = readTable('heat/fuel_heating_values.csv')
	.filter((row) => row.status?.startsWith('VERIFIED'))
	.flatMap((row) => {
		const fuel = fuelNames[row.fuel ?? ''] ?? 'diesel';
		const common = {
			topic: 'heat',
			source: 'US Department of Energy, Alternative Fuels Data Center, Properties of Fuels',
			mark: 'verified',
			tolerance: { abs: 0.0006 },
		} as const;
		return [
			...Object.entries(byVolume).map(([column, [label, unit, of]]) => ({
				...common,
				what: `${fuel}: ${label}`,
				published: Number(row[column]),
				unit,
				ours: () => of(fuel) / 1000,
			})),
			{
				...common,
				what: `${fuel}: lower heating value of a kilogram`,
				published: Number(row.lhv_kwh_per_kg),
				unit: 'kWh/kg',
				ours: () => lowerHeatingValueWhPerKg(fuel) / 1000,
			},
		];
	});

const burning: EvidenceRow[] = [
	{
		topic: 'heat',
		what: 'diesel: lower heating value of a litre',
		source: 'EN 590 diesel, about 35.8 MJ/L',
		mark: 'from memory',
		published: 35.8,
		unit: 'MJ/L',
		tolerance: { rel: 0.01 },
		ours: () => lowerHeatingValueWhPerL('diesel') * 0.0036,
	},
	{
		topic: 'heat',
		what: 'propane: lower heating value of a kilogram',
		source: 'heat of combustion of propane, 46.35 MJ/kg',
		mark: 'from memory',
		published: 46.35,
		unit: 'MJ/kg',
		tolerance: { rel: 0.005 },
		ours: () => lowerHeatingValueWhPerKg('propane') * 0.0036,
	},
	{
		topic: 'heat',
		what: '1500 W for 10 h at 80 %: diesel burned',
		source: 'US Department of Energy heating value, worked',
		mark: 'computed with a reference library',
		published: 1.885,
		unit: 'L',
		tolerance: { rel: 0.005 },
		ours: () => fuelL(15_000, 0.8, 'diesel'),
	},
	{
		topic: 'heat',
		what: 'burner output kept at 5000 ft',
		source: 'NFPA 54 (National Fuel Gas Code), 4 % less per 1000 ft',
		mark: 'from memory',
		published: 0.8,
		unit: '',
		tolerance: { abs: 0.0001 },
		ours: () => altitudeShare(1524),
	},
	{
		topic: 'moisture',
		what: 'water from burning a kilogram of propane',
		source: 'stoichiometry of C3H8, 1.63 kg (gas trade handbooks)',
		mark: 'from memory',
		published: 1.63,
		unit: 'kg',
		tolerance: { abs: 0.005 },
		ours: () => waterPerPropane,
	},
	{
		topic: 'moisture',
		what: 'water given off by a sleeper',
		source: 'BS 5250, 40 g/h asleep',
		mark: 'from memory',
		published: 40,
		unit: 'g/h',
		// From 25 W of latent heat; the British figure is rounded to 10 g/h.
		tolerance: { abs: 5 },
		ours: () => breathedGH('asleep'),
	},
];

const activities = { seated: 0, lightWork: 1, active: 2, walking: 4 } as const;
const people: EvidenceRow[] = Object.entries(activities).map(([activity, index]) => {
	const row = readTable('heat/people_heat_w.csv')[index];
	const heat = bodyHeat[activity as keyof typeof activities];
	return {
		topic: 'cool',
		what: `${row?.activity}: total heat of a person`,
		source: 'ASHRAE Handbook of Fundamentals, heat gain from people, adjusted total',
		mark: row?.status?.startsWith('VERIFIED') === true ? 'verified' : 'from memory',
		published: Number(row?.adjusted_w),
		unit: 'W',
		ours: () => heat.sensibleW + heat.latentW,
	};
});

export const rows: readonly EvidenceRow[] = [...walls, ...perInch, ...fuels, ...burning, ...people];
