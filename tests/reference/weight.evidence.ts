import { type Bolt, bolts } from '../../packages/core/src/tables/bolts.js';
import { tankFluids } from '../../packages/core/src/tables/fluids.js';
import { speedSymbolsKmh } from '../../packages/core/src/tables/tires.js';
import type { AnyTopic } from '../../packages/core/src/topic/declare.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import { payload } from '../../packages/core/src/topics/payload.js';
import { restraint } from '../../packages/core/src/topics/restraint.js';
import { tire } from '../../packages/core/src/topics/tire.js';
import { rolloverBand, stabilityFactor } from '../../packages/core/src/weight/ledger.js';
import { checkBolt, loadCases, tippingPullN, worstOf } from '../../packages/core/src/weight/restraint.js';
import { pressureAfterKpa } from '../../packages/core/src/weight/tire.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

const psi = 6.894757293168;
const lb = 0.45359237;

function resultOf(topic: AnyTopic, given: Readonly<Record<string, unknown>>, name: string): number | string {
	const outcome = runTopic(topic, given, { region: 'us', units: 'metric', language: 'en' });
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	const value = outcome.sizing.results.find((result) => result.name === name)?.value;
	if (value === undefined) throw new Error(`no result "${name}"`);
	return value;
}

/** What the answer says two tires carry, for every index of the table. */
const loadIndices: readonly EvidenceRow[] = readTable('vehicle/tire_load_index.csv').map((row) => ({
	topic: 'tire',
	what: `load index ${row.load_index}: load of one tire`,
	source: 'ISO 4000-1, load index table',
	mark: 'verified',
	published: Number(row.kg),
	unit: 'kg',
	ours: () => Number(resultOf(tire, { loadIndex: Number(row.load_index), axleLoadKg: 300 }, 'capacity')) / 2,
}));

/** The same in pounds as sidewalls print it: rounded to whole pounds. */
const loadsInPounds: readonly EvidenceRow[] = readTable('vehicle/tire_load_index.csv')
	.filter((_, index) => index % 10 === 0)
	.map((row) => ({
		topic: 'tire',
		what: `load index ${row.load_index}: load of one tire in pounds`,
		source: 'ISO 4000-1, load index table',
		mark: 'verified',
		published: Number(row.lb_rounded),
		unit: 'lb',
		tolerance: { abs: 0.5 },
		ours: () =>
			Number(resultOf(tire, { loadIndex: Number(row.load_index), axleLoadKg: 300 }, 'capacity')) / 2 / lb,
	}));

const symbols: readonly EvidenceRow[] = readTable('vehicle/speed_symbols.csv').map((row) => ({
	topic: 'tire',
	what: `speed symbol ${row.symbol}: highest speed`,
	source: 'ISO 4000-1, speed symbols',
	mark: 'verified',
	published: Number(row.km_h),
	unit: 'km/h',
	tolerance: { rel: 1e-12 },
	ours: () =>
		Number(resultOf(tire, { loadIndex: 116, axleLoadKg: 2240, speedSymbol: row.symbol }, 'speedLimit')) * 3.6,
}));

interface Example {
	readonly id: string;
	readonly source: string;
	readonly expected: Readonly<Record<string, number>>;
}
const vehicleExamples = readJson<Example[]>('vehicle/examples.json');
const airExamples = readJson<Example[]>('air/examples.json');
function expected(examples: readonly Example[], id: string, key: string): number {
	const value = examples.find((one) => one.id === id)?.expected[key];
	if (value === undefined) throw new Error(`no ${key} in ${id}`);
	return value;
}

const tires: readonly EvidenceRow[] = [
	{
		topic: 'tire',
		what: 'load index 116, two tires, 2240 kg: the axle’s tires carry',
		source: 'worked example on the load index table of ISO 4000-1',
		mark: 'verified',
		published: expected(vehicleExamples, 'vehicle-tire-load', 'axle_capacity_kg'),
		unit: 'kg',
		ours: () => resultOf(tire, { loadIndex: 116, axleLoadKg: 2240 }, 'capacity'),
	},
	{
		topic: 'tire',
		what: 'load index 116, two tires, 2240 kg: reserve',
		source: 'worked example on the load index table of ISO 4000-1',
		mark: 'verified',
		published: expected(vehicleExamples, 'vehicle-tire-load', 'margin_kg'),
		unit: 'kg',
		ours: () => resultOf(tire, { loadIndex: 116, axleLoadKg: 2240 }, 'reserve'),
	},
	{
		topic: 'tire',
		what: 'passenger car tire of 1,540 lb on a van counts for 1,400 lb (divided by 1.10)',
		source: '49 CFR 571.120, S5.1.2',
		mark: 'from memory',
		published: 1400,
		unit: 'lb',
		// the nearest index to 1,540 lb is 95, 690 kg = 1,521 lb
		tolerance: { rel: 0.015 },
		ours: () =>
			Number(resultOf(tire, { loadIndex: 95, axleLoadKg: 500, construction: 'passenger' }, 'capacity')) /
			2 /
			lb,
	},
	{
		topic: 'tire',
		what: '65 psi set at 20 °C, at -10 °C',
		source: "Gay-Lussac's law, worked example",
		mark: 'computed with a reference library',
		published: expected(airExamples, 'air-cold-tyre', 'psig'),
		unit: 'psi',
		tolerance: { abs: 0.05 },
		ours: () => Number(resultOf(tire, { pressureKpa: 65 * psi, temperatureC: -10 }, 'pressureNow')) / psi,
	},
	{
		topic: 'tire',
		what: 'a passenger tire of 35 psi loses about 1 psi for 10 °F',
		source: 'tire care guides of the tire makers’ associations: 1 psi for every 10 °F',
		mark: 'common practice',
		published: 1,
		unit: 'psi',
		// "about": the rule is a round figure for usual pressures
		tolerance: { abs: 0.1 },
		ours: () => {
			const at = (fahrenheit: number) => ({ temperatureC: ((fahrenheit - 32) * 5) / 9, ambientKpa: 101.325 });
			return 35 - pressureAfterKpa({ gaugeKpa: 35 * psi, ...at(70) }, at(60)) / psi;
		},
	},
];

const van = {
	wheelbaseM: 3.665,
	frontEmptyKg: 1350,
	rearEmptyKg: 1050,
	gvwrKg: 3500,
	centreHeightM: 0.8,
	people: 0,
	items: [
		{ name: 'water', massKg: 75, positionM: 2.9 },
		{ name: 'battery', massKg: 60, positionM: 2.4 },
		{ name: 'bed', massKg: 90, positionM: 4.2 },
		{ name: 'two in front seats', massKg: 150, positionM: 0.9 },
	],
};

/** A ledger of nothing but its tank, to read what a full tank weighs. */
function tankLb(volumeGal: number, fluid: string): number {
	const given = { ...van, items: [{ name: 'tank', volumeL: volumeGal * 3.785411784, fluid, positionM: 2 }] };
	return (Number(resultOf(payload, given, 'total')) - 2400) / lb;
}

const ledgers: readonly EvidenceRow[] = [
	...(
		[
			['front axle', 'front_kg', 'frontAxle'],
			['rear axle', 'rear_kg', 'rearAxle'],
			['total', 'total_kg', 'total'],
		] as const
	).map(
		([what, key, name]): EvidenceRow => ({
			topic: 'payload',
			what: `van of 1350 and 1050 kg with four items: ${what}`,
			source: 'moments about the front axle, worked example',
			mark: 'computed with a reference library',
			published: expected(vehicleExamples, 'vehicle-axle-1', key),
			unit: 'kg',
			// printed to a hundredth
			tolerance: { abs: 0.01 },
			ours: () => resultOf(payload, van, name),
		}),
	),
	{
		topic: 'payload',
		what: '6,400 lb unloaded, 1,500 lb of cargo, four seats at 150 lb: least GVWR',
		source: '49 CFR 567.4(g)(3)',
		mark: 'verified',
		published: expected(vehicleExamples, 'vehicle-gvwr-min', 'min_gvwr_lb'),
		unit: 'lb',
		tolerance: { rel: 1e-12 },
		ours: () =>
			Number(
				resultOf(
					payload,
					{
						wheelbaseM: 3.5,
						frontEmptyKg: 3400 * lb,
						rearEmptyKg: 3000 * lb,
						gvwrKg: 9000 * lb,
						people: 4,
						personKg: 150 * lb,
						rearSeatM: 2,
						items: [{ name: 'cargo', massKg: 1500 * lb, positionM: 2.5 }],
					},
					'total',
				),
			) / lb,
	},
	{
		topic: 'payload',
		what: 'a US gallon of fresh water in a full tank',
		source: 'US Geological Survey, water science school: 8.34 lb a gallon',
		mark: 'from memory',
		published: 8.34,
		unit: 'lb',
		// ours is 1 kg/L, the heavy end
		tolerance: { abs: 0.01 },
		ours: () => tankLb(1, 'water'),
	},
	{
		topic: 'payload',
		what: 'a US gallon of diesel in a full tank',
		source: 'fuel density tables, 7.079 lb a gallon',
		mark: 'verified',
		published: 7.079,
		unit: 'lb',
		// ours is 0.85 kg/L, the heavy end
		tolerance: { abs: 0.02 },
		ours: () => tankLb(1, 'diesel'),
	},
	{
		topic: 'payload',
		what: 'a US gallon of liquid propane',
		source: 'NFPA 58, properties of propane: 4.24 lb a gallon at 60 °F',
		mark: 'from memory',
		published: 4.24,
		unit: 'lb',
		// ours is 0.51 kg/L, the heavy end
		tolerance: { abs: 0.02 },
		ours: () => tankLb(1, 'propane'),
	},
	{
		topic: 'payload',
		what: 'density of liquid propane at 15 °C that a full bottle is taken at',
		source: 'propane, liquid at 15 °C',
		mark: 'verified',
		published: 0.508,
		unit: 'kg/L',
		tolerance: { abs: 0.003 },
		ours: () => tankFluids.propane.kgPerL,
	},
	{
		topic: 'payload',
		what: 'half the track over the height: wheels leave the ground at T / 2h = 0.5 g, track 1.5 m, height 1.5 m',
		source: 'NHTSA, rollover resistance rating, static stability factor',
		mark: 'from memory',
		published: 0.5,
		unit: '',
		ours: () => stabilityFactor(1.5, 1.5),
	},
	...(
		[
			[1.03, '40 % or more'],
			[1.04, '30 to 40 %'],
			[1.12, '30 to 40 %'],
			[1.13, '20 to 30 %'],
			[1.24, '20 to 30 %'],
			[1.25, '10 to 20 %'],
			[1.44, '10 to 20 %'],
			[1.45, 'less than 10 %'],
		] as const
	).map(
		([factor, band]): EvidenceRow => ({
			topic: 'payload',
			what: `static stability factor ${factor}: rollovers in single-vehicle crashes`,
			source: '66 FR 3388 (12 January 2001), rollover resistance bands',
			mark: 'from memory',
			published: band,
			unit: '',
			ours: () => rolloverBand(factor),
		}),
	),
];

const item = { centreHeightM: 0, alongM: 0.4, acrossM: 0.3, bolts: 4, prying: 1 };

/** The force that the answer names in each direction of the securement rule. */
const securement: readonly EvidenceRow[] = (
	[
		['forward', 'forward_n', 'forwardForce'],
		['rearward', 'rearward_n', 'rearwardForce'],
		['sideways', 'lateral_n', 'sidewaysForce'],
	] as const
).map(([direction, key, name]) => ({
	topic: 'restraint',
	what: `60 kg under the securement rule: force ${direction}`,
	source: '49 CFR 393.102(a)(1)',
	mark: 'verified',
	published: expected(vehicleExamples, 'vehicle-securement', key),
	unit: 'N',
	// printed to a tenth of a newton
	tolerance: { abs: 0.05 },
	ours: () => resultOf(restraint, { ...item, massKg: 60, boltSize: 'M8', loadCase: 'driving' }, name),
}));

/** Tension that the answer allows at a safety factor of 1: the proof load. */
const proofLoads: readonly EvidenceRow[] = readTable('structure/iso898_1_proof_loads.csv').flatMap(
	(row): EvidenceRow[] => [
		{
			topic: 'restraint',
			what: `${row.thread} class ${row.class}: proof load as the tension allowed at a safety factor of 1`,
			source: 'ISO 898-1, proof loads, coarse thread',
			mark: 'verified',
			published: Number(row.proof_load_n),
			unit: 'N',
			tolerance: { rel: 1e-12 },
			ours: () =>
				resultOf(
					restraint,
					{ ...item, massKg: 1, boltSize: row.thread, boltClass: Number(row.class), safetyFactor: 1 },
					'allowedTension',
				),
		},
		{
			topic: 'restraint',
			what: `${row.thread} class ${row.class}: least breaking load over stress area`,
			source: 'ISO 898-1, minimum ultimate tensile loads: 800 MPa for 8.8, 1040 MPa for 10.9',
			mark: 'from memory',
			published: row.class === '8.8' ? 800 : 1040,
			unit: 'MPa',
			// the table rounds loads to three figures
			tolerance: { rel: 0.005 },
			ours: () => {
				const bolt = bolts.find(
					(one) => one.thread === row.thread && one.propertyClass === row.class,
				) as Bolt;
				return bolt.ultimateN / bolt.stressAreaMm2;
			},
		},
	],
);

const m8 = bolts.find((bolt) => bolt.thread === 'M8' && bolt.propertyClass === '8.8') as Bolt;
const boltExample = readJson<Example[]>('structure/examples.json');
const plain = {
	massKg: 120,
	centreHeightM: 0,
	alongM: 0.4,
	acrossM: 0.3,
	count: 4,
	prying: 1,
	sheet: null,
	insertN: null,
	safetyFactor: 1,
};

const fixings: readonly EvidenceRow[] = [
	{
		topic: 'restraint',
		what: '120 kg at 0.8 g on four M8 class 8.8: shear in each bolt',
		source: 'worked example on ISO 898-1 and 49 CFR 393.102',
		mark: 'computed with a reference library',
		published: expected(boltExample, 'structure-bolt', 'per_bolt_n'),
		unit: 'N',
		tolerance: { rel: 0.005 },
		ours: () => worstOf(checkBolt(plain, m8, loadCases.driving)).shearN,
	},
	{
		topic: 'restraint',
		what: '120 kg at 0.8 g on four M8 class 8.8: share of what shear allows',
		source: 'worked example on ISO 898-1 and 49 CFR 393.102',
		mark: 'computed with a reference library',
		published: expected(boltExample, 'structure-bolt', 'utilisation'),
		unit: '',
		tolerance: { rel: 0.005 },
		ours: () => worstOf(checkBolt(plain, m8, loadCases.driving)).utilisation,
	},
	{
		topic: 'restraint',
		what: 'bracket of 12 kN at 400 mm on bolts 50 and 375 mm from its lower edge: pull of an upper bolt',
		source: 'Khurmi and Gupta, A Textbook of Machine Design, chapter 11, bracket of a travelling crane',
		mark: 'from memory',
		published: 6.29,
		unit: 'kN',
		// printed to three figures
		tolerance: { abs: 0.005 },
		ours: () => tippingPullN(12_000 * 0.4, [0.05, 0.05, 0.375, 0.375]) / 1000,
	},
	{
		topic: 'restraint',
		what: 'bracket of 30 kN at 500 mm on bolts 80 and 250 mm from its lower edge: pull of an upper bolt',
		source: 'Khurmi and Gupta, A Textbook of Machine Design, chapter 11, bracket under an off-centre load',
		mark: 'from memory',
		published: 27.2,
		unit: 'kN',
		tolerance: { abs: 0.05 },
		ours: () => tippingPullN(30_000 * 0.5, [0.08, 0.08, 0.25, 0.25]) / 1000,
	},
	...(
		[
			['forward', 20, '49 CFR 571.207, S4.2: 20 times the seat’s weight'],
			['rearward', 20, '49 CFR 571.207, S4.2: 20 times the seat’s weight'],
			['sideways', 10, 'EN 1789, ambulance fittings: 10 g'],
			['upward', 10, 'EN 1789, ambulance fittings: 10 g'],
		] as const
	).map(
		([direction, g, source]): EvidenceRow => ({
			topic: 'restraint',
			what: `crash case, 1 kg ${direction}: force over its weight`,
			source,
			mark: 'from memory',
			published: g,
			unit: 'g',
			tolerance: { rel: 1e-12 },
			ours: () =>
				Number(resultOf(restraint, { ...item, massKg: 1, boltSize: 'M8' }, `${direction}Force`)) / 9.80665,
		}),
	),
];

const fastest: readonly EvidenceRow[] = [
	{
		topic: 'tire',
		what: 'H is faster than T and slower than V',
		source: 'ISO 4000-1, speed symbols',
		mark: 'verified',
		published: 'T H V',
		unit: '',
		ours: () =>
			(['V', 'H', 'T'] as const)
				.toSorted((one, other) => speedSymbolsKmh[one] - speedSymbolsKmh[other])
				.join(' '),
	},
];

export const rows: readonly EvidenceRow[] = [
	...loadIndices,
	...loadsInPounds,
	...symbols,
	...fastest,
	...tires,
	...ledgers,
	...securement,
	...proofLoads,
	...fixings,
];
