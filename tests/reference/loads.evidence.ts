import { resolveLoads } from '../../packages/core/src/energy/loads.js';
import { demandA } from '../../packages/core/src/energy/together.js';
import { alternator } from '../../packages/core/src/topics/alternator.js';
import { battery } from '../../packages/core/src/topics/battery.js';
import { budget } from '../../packages/core/src/topics/budget.js';
import { inverter } from '../../packages/core/src/topics/inverter.js';
import { shore } from '../../packages/core/src/topics/shore.js';
import { answered, eu, resultsOf } from './answers.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

const day = (given: Readonly<Record<string, unknown>>, name: string) =>
	Number(resultsOf(budget, given)[name]);

const cabin = {
	loads: [{ name: 'cabin', energyWh: 3000, supply: 'mains' }],
	bankV: 24,
	inverterEfficiency: 0.85,
	inverterIdleW: 0,
};

const unknownEfficiency = Number(
	readTable('electrical/battery_sizing_factors.csv').find(
		(row) => row.factor === 'inverter efficiency if unknown',
	)?.value,
);

const budgets: EvidenceRow[] = [
	{
		topic: 'budget',
		what: 'off-grid cabin: 3000 Wh of mains loads through an inverter of 85 %',
		source: 'Masters: Renewable and Efficient Electric Power Systems, off-grid cabin battery example',
		mark: 'from memory',
		published: 3529,
		unit: 'Wh',
		tolerance: { abs: 0.5 },
		ours: () => day(cabin, 'energyPerDay'),
	},
	{
		topic: 'budget',
		what: 'off-grid cabin: the same at 24 V',
		source: 'Masters: Renewable and Efficient Electric Power Systems, off-grid cabin battery example',
		mark: 'from memory',
		published: 147,
		unit: 'Ah',
		tolerance: { abs: 0.5 },
		ours: () => day(cabin, 'chargePerDay'),
	},
	{
		topic: 'budget',
		what: 'computer of 0.200 kW, 6 h a day: energy of 30 days',
		source: 'OpenStax: College Physics, section 20.4, cost of electricity',
		mark: 'from memory',
		published: 36,
		unit: 'kWh',
		tolerance: { abs: 0.05 },
		ours: () =>
			(30 * day({ loads: [{ name: 'computer', powerW: 200, durationH: 6, supply: 'dc' }] }, 'energyPerDay')) /
			1000,
	},
	{
		topic: 'budget',
		what: 'efficiency taken for an inverter nobody knows',
		source: 'UPS battery capacity worksheet',
		mark: 'verified',
		published: unknownEfficiency,
		unit: '',
		tolerance: { abs: 1e-9 },
		ours: () =>
			850 /
			day({ loads: [{ name: 'tools', energyWh: 850, supply: 'mains' }], inverterIdleW: 0 }, 'energyPerDay'),
	},
	{
		topic: 'inverter',
		what: 'efficiency taken for an inverter nobody knows, from its bank current',
		source: 'Sandia stand-alone example',
		mark: 'verified',
		published: unknownEfficiency,
		unit: '',
		tolerance: { abs: 1e-9 },
		ours: () =>
			1000 / (10.5 * Number(resultsOf(inverter, { ratedW: 1000, chemistry: 'agm', bankV: 12 }).bankCurrent)),
	},
];

/** The current of one thing on a supply, as the working has it [A]. */
function currentOf(name: string, powerW: number, voltage: number): number {
	const sizing = answered(shore, { inletA: 100, supplyV: voltage, loads: [{ name, powerW }] });
	return Number(sizing.working.find((step) => step.label === name)?.value);
}

interface Circuit {
	readonly source: string;
	readonly ratingA: number;
	readonly loads: readonly (readonly [name: string, powerW: number, currentA: number, tolerance: number])[];
	readonly totalA: number;
}

const circuits: readonly Circuit[] = [
	{
		source: 'Giancoli: Physics, example "Will a fuse blow?"',
		ratingA: 20,
		loads: [
			['lightbulb', 100, 0.8, 0.05],
			['heater on the circuit', 1800, 15, 0.05],
			['stereo receiver', 350, 2.9, 0.05],
			['hair dryer', 1200, 10, 0.05],
		],
		// The book adds its rounded currents.
		totalA: 28.7,
	},
	{
		source: 'OpenStax: College Physics, chapter 21, toaster, frying pan and lamp on one outlet',
		ratingA: 15,
		loads: [
			['toaster', 1800, 15, 0.05],
			['frying pan', 1400, 11.7, 0.05],
			['lamp', 75, 0.625, 0.0005],
		],
		totalA: 27.3,
	},
];

const fuses: EvidenceRow[] = circuits.flatMap(({ source, ratingA, loads, totalA }): EvidenceRow[] => {
	const given = {
		outletA: ratingA,
		supplyV: 120,
		loads: loads.map(([name, powerW]) => ({ name, powerW })),
	};
	return [
		...loads.map(
			([name, powerW, currentA, tolerance]): EvidenceRow => ({
				topic: 'shore',
				what: `${name}, ${powerW} W at 120 V`,
				source,
				mark: 'from memory',
				published: currentA,
				unit: 'A',
				tolerance: { abs: tolerance },
				ours: () => currentOf(name, powerW, 120),
			}),
		),
		{
			topic: 'shore',
			what: 'all of it at once',
			source,
			mark: 'from memory',
			published: totalA,
			unit: 'A',
			tolerance: { abs: 0.1 },
			ours: () => Number(resultsOf(shore, given).allTogether),
		},
		{
			topic: 'shore',
			what: `all of it on ${ratingA} A`,
			source,
			mark: 'from memory',
			published: 'too much',
			unit: '',
			ours: () =>
				answered(shore, given).findings.some((finding) => finding.code === 'over-supply')
					? 'too much'
					: 'fits',
		},
	];
});

const usable = (given: Readonly<Record<string, unknown>>, name = 'usableCurrent', context = eu) =>
	Number(resultsOf(shore, given, context)[name]);
const american = { region: 'us', units: 'us', language: 'en' } as const;

/** The largest single load that may run, in tenths of an ampere, for some minutes [A]. */
function largestA(given: Readonly<Record<string, unknown>>, name: string): number {
	const tenths = Array.from({ length: 600 }, (_, index) => (index + 1) / 10);
	return tenths.findLast((currentA) =>
		answered(shore, { ...given, supplyV: 120, loads: [{ name, powerW: currentA * 120 }] }).findings.every(
			(finding) => finding.code !== 'over-supply',
		),
	) as number;
}

const supplies: EvidenceRow[] = [
	...(
		[
			[15, 12],
			[20, 16],
		] as const
	).map(
		([ratingA, published]): EvidenceRow => ({
			topic: 'shore',
			what: `${ratingA} A household receptacle: largest cord-connected load, even for minutes`,
			source: 'NFPA 70 (NEC), Table 210.21(B)(2)',
			mark: 'from memory',
			published,
			unit: 'A',
			ours: () => largestA({ outletA: ratingA, household: true }, 'kettle'),
		}),
	),
	{
		topic: 'shore',
		what: '30 A supply: for hours on end',
		source: 'NFPA 70 (NEC), Table 210.21(B)(2)',
		mark: 'from memory',
		published: 24,
		unit: 'A',
		tolerance: { abs: 1e-9 },
		ours: () => usable({ inletA: 30 }, 'usableCurrent', american),
	},
	{
		topic: 'shore',
		what: '16 A for 3 h or more: rating needed',
		source: 'NFPA 70 (NEC), 210.20(A)',
		mark: 'verified',
		published: 20,
		unit: 'A',
		tolerance: { abs: 1e-9 },
		ours: () => demandA([{ name: 'load', currentA: 16, continuous: true }], { limitA: 20, household: false }),
	},
	{
		topic: 'shore',
		what: 'shortest time that counts as continuous',
		source: 'NFPA 70 (NEC), Article 100',
		mark: 'verified',
		published: 3,
		unit: 'h',
		ours: () =>
			[1, 2, 2.9, 3, 4].find(
				(durationH) =>
					resolveLoads([{ name: 'tool', powerW: 100, durationH, supply: 'mains' }], {
						bankV: 12,
						mainsV: 120,
						region: 'us',
						over: 'while-on',
					}).loads[0]?.continuous,
			) as number,
	},
	{
		topic: 'shore',
		what: '1440 W storage water heater on 120 V: rating needed however short it runs',
		source: 'NFPA 70 (NEC), 422.13',
		mark: 'from memory',
		published: 15,
		unit: 'A',
		tolerance: { abs: 1e-9 },
		ours: () => {
			const [load] = resolveLoads([{ name: 'water heater', powerW: 1440, durationH: 0.5 }], {
				bankV: 12,
				mainsV: 120,
				region: 'us',
				over: 'while-on',
			}).loads;
			return demandA(
				[
					{
						name: 'water heater',
						currentA: (load?.runningW ?? 0) / 120,
						continuous: load?.continuous ?? false,
					},
				],
				{ limitA: 15, household: false },
			);
		},
	},
	...(
		[
			[15, 1440],
			[20, 1920],
			[30, 2880],
		] as const
	).map(
		([ratingA, published]): EvidenceRow => ({
			topic: 'shore',
			what: `${ratingA} A at 120 V: watts for hours on end`,
			source: '80 % of rating times voltage',
			mark: 'common practice',
			published,
			unit: 'W',
			tolerance: { abs: 1e-6 },
			ours: () => usable({ outletA: ratingA, supplyV: 120 }, 'usablePower', american),
		}),
	),
	...([16, 25, 32, 63] as const).map((ratingA): EvidenceRow => {
		const row = readTable('electrical/caravan_iec_facts.csv').find(
			(one) => one.key === `supply cable ${ratingA} A`,
		);
		return {
			topic: 'shore',
			what: `supply cable for ${ratingA} A`,
			source: 'IEC 60364-7-721, Table 721',
			mark: row?.status === 'VERIFIED' ? 'verified' : 'from memory',
			published: Number(row?.value),
			unit: 'mm²',
			ours: () => Number.parseFloat(String(resultsOf(shore, { inletA: ratingA }, eu).cordSize)),
		};
	}),
	{
		topic: 'shore',
		what: 'residual current of the protective device at most',
		source: 'IEC 60364-7-721, 721.415',
		mark: 'verified',
		published: 30,
		unit: 'mA',
		ours: () =>
			Number(/(\d+) mA/.exec(String(resultsOf(shore, { inletA: 16 }, eu).residualCurrentProtection))?.[1]),
	},
];

interface Example {
	readonly id: string;
	readonly expected: { readonly overload_fuse: { readonly value: number } };
}
const navy = readJson<{ readonly examples: readonly Example[] }>(
	'electrical/worked-examples.json',
).examples.find((one) => one.id === 'elec-d03') as Example;

const others: EvidenceRow[] = [
	{
		topic: 'inverter',
		what: 'normal current of 10 A: current for the overload fuse',
		source: 'US Navy NEETS Module 3, circuit protection',
		mark: 'verified',
		published: navy.expected.overload_fuse.value,
		unit: 'A',
		tolerance: { abs: 1e-9 },
		ours: () =>
			Number(
				resultsOf(inverter, { ratedW: 100, cutoffV: 10, inverterEfficiency: 1, bankV: 12 }).designCurrent,
			),
	},
	{
		topic: 'alternator',
		what: '100 A alternator with no load of the vehicle: to spare for hours on end',
		source: 'FAA AC 43.13-1B, chapter 11, load limits: 80 % of the generator rating',
		mark: 'from memory',
		published: 80,
		unit: 'A',
		tolerance: { abs: 1e-9 },
		ours: () => Number(resultsOf(alternator, { alternatorA: 100, vehicleLoadA: 0 }).spareDriving),
	},
	{
		topic: 'battery',
		what: 'opening of a lead-acid compartment',
		source: 'NFPA 70 (NEC), 552.10(D)',
		mark: 'verified',
		published: Number(
			readTable('electrical/nec551_rv_facts.csv').find((row) => row.section === '552.10(D)')?.value,
		),
		unit: 'mm²',
		ours: () =>
			Number(
				/(\d+) mm²/.exec(
					answered(battery, { unitAh: 100, chemistry: 'agm' }).findings.find(
						(finding) => finding.code === 'lead-acid-vent',
					)?.text ?? '',
				)?.[1],
			),
	},
	{
		topic: 'inverter',
		what: 'lead-acid 12 V bank: voltage at which it switches off',
		source: 'UPS battery capacity worksheet, 1.75 V a cell, six cells',
		mark: 'verified',
		published: 10.5,
		unit: 'V',
		tolerance: { abs: 1e-9 },
		ours: () =>
			Number(
				answered(inverter, { ratedW: 1000, chemistry: 'flooded', bankV: 12 }).assumed.find(
					(one) => one.name === 'cutoffV',
				)?.value,
			),
	},
	{
		topic: 'inverter',
		what: 'LiFePO4 12 V bank: voltage at which it switches off',
		source: 'LiFePO4 cell specification, 2.5 V a cell, four cells',
		mark: 'from memory',
		published: 10,
		unit: 'V',
		tolerance: { abs: 1e-9 },
		ours: () =>
			Number(
				answered(inverter, { ratedW: 1000, chemistry: 'lifepo4', bankV: 12 }).assumed.find(
					(one) => one.name === 'cutoffV',
				)?.value,
			),
	},
];

export const rows: readonly EvidenceRow[] = [...budgets, ...fuses, ...supplies, ...others];
