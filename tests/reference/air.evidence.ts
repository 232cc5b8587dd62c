import {
	standardDensityKgM3,
	standardPressureKpa,
	standardTemperatureC,
} from '../../packages/core/src/structure/atmosphere.js';
import {
	overallDiameterMm,
	readTireSize,
	volumetricEfficiency,
} from '../../packages/core/src/structure/inflation.js';
import { temperatureFactor } from '../../packages/core/src/structure/strut.js';
import type { AnyTopic } from '../../packages/core/src/topic/declare.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import { inflate } from '../../packages/core/src/topics/inflate.js';
import { strut } from '../../packages/core/src/topics/strut.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

const psi = 6.894757293168;

function resultOf(topic: AnyTopic, given: Readonly<Record<string, unknown>>, name: string): number {
	const outcome = runTopic(topic, given, { region: 'us', units: 'metric', language: 'en' });
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	const value = outcome.sizing.results.find((result) => result.name === name)?.value;
	if (typeof value !== 'number') throw new Error(`no result "${name}"`);
	return value;
}

const atmosphere: readonly EvidenceRow[] = readTable('air/standard_atmosphere_iso2533.csv').flatMap((row) => {
	const altitudeM = Number(row.geopotential_altitude_m);
	const source = 'ISO 2533 / US Standard Atmosphere 1976, by geopotential altitude';
	const mark = 'computed with a reference library';
	const shared = { topic: 'atmosphere', source, mark } as const;
	return [
		{
			...shared,
			what: `${altitudeM} m: pressure`,
			published: Number(row.pressure_kpa),
			unit: 'kPa',
			// printed to four decimals
			tolerance: { abs: 0.00006 },
			ours: () => standardPressureKpa(altitudeM),
		},
		{
			...shared,
			what: `${altitudeM} m: temperature`,
			published: Number(row.temp_c),
			unit: '°C',
			tolerance: { abs: 0.0006 },
			ours: () => standardTemperatureC(altitudeM),
		},
		{
			...shared,
			what: `${altitudeM} m: density`,
			published: Number(row.density_kg_m3),
			unit: 'kg/m³',
			tolerance: { abs: 0.000006 },
			ours: () => standardDensityKgM3(altitudeM),
		},
	];
});

/** Heights on a map; our formula takes geopotential ones, 0.1 % off in pressure at most. */
const geometric: readonly EvidenceRow[] = (
	[
		[1000, 89.8763],
		[2000, 79.5014],
		[3000, 70.1212],
		[5000, 54.0483],
	] as const
).map(([altitudeM, kpa]) => ({
	topic: 'atmosphere',
	what: `${altitudeM} m above the sea: pressure`,
	source: 'US Standard Atmosphere 1976, by geometric altitude',
	mark: 'computed with a reference library',
	published: kpa,
	unit: 'kPa',
	tolerance: { rel: 0.001 },
	ours: () => standardPressureKpa(altitudeM),
}));

const icao: readonly EvidenceRow[] = (
	[
		[1457, 85],
		[3012, 70],
		[5574, 50],
	] as const
).map(([altitudeM, kpa]) => ({
	topic: 'atmosphere',
	what: `${kpa * 10} hPa stands at ${altitudeM} m`,
	source: 'ICAO Doc 7488, Manual of the ICAO Standard Atmosphere',
	mark: 'from memory',
	published: kpa,
	unit: 'kPa',
	// heights rounded to a metre
	tolerance: { rel: 0.0002 },
	ours: () => standardPressureKpa(altitudeM),
}));

interface Example {
	readonly id: string;
	readonly expected: Readonly<Record<string, number>>;
}
const expectedIn = (file: string) => {
	const examples = readJson<Example[]>(file);
	return (id: string, key: string) => {
		const value = examples.find((one) => one.id === id)?.expected[key];
		if (value === undefined) throw new Error(`no ${key} in ${id}`);
		return value;
	};
};
const air = expectedIn('air/examples.json');
const structure = expectedIn('structure/examples.json');

const job = { pumpFlowLMin: 72, volumeL: 62, fromKpa: 25 * psi, toKpa: 65 * psi, tires: 1 };

const inflation: readonly EvidenceRow[] = [
	{
		topic: 'inflate',
		what: '62 L from 25 to 65 psi: free air',
		source: "Boyle's law, worked example",
		mark: 'computed with a reference library',
		published: air('air-inflate-1', 'free_air_l'),
		unit: 'L',
		tolerance: { rel: 0.005 },
		ours: () => resultOf(inflate, job, 'freeAir'),
	},
	{
		topic: 'inflate',
		what: '62 L from 25 to 65 psi at 72 L/min free air: time at the open flow',
		source: "Boyle's law, worked example",
		mark: 'computed with a reference library',
		published: air('air-inflate-1', 'minutes'),
		unit: 'min',
		tolerance: { rel: 0.005 },
		ours: () => resultOf(inflate, job, 'openFlowTime') * 60,
	},
	{
		topic: 'inflate',
		what: 'at 1,500 m: pressure of the air around',
		source: 'ISO 2533, worked example',
		mark: 'computed with a reference library',
		published: air('air-isa-1500', 'pa'),
		unit: 'Pa',
		tolerance: { rel: 0.0005 },
		ours: () => {
			// free air = V (p2 − p1) / pa, so the answer tells the pressure it took
			const freeL = resultOf(inflate, { ...job, altitudeM: 1500 }, 'freeAir');
			return (1000 * 62 * 40 * psi) / freeL;
		},
	},
	{
		topic: 'inflate',
		what: 'piston pump of 5 % dead space, 0.95 to 7 bar, n = 1.3: volume taken in over swept volume',
		source: 'Eastop and McConkey, Applied Thermodynamics, reciprocating compressors, worked example',
		mark: 'from memory',
		published: 0.818,
		unit: '',
		tolerance: { abs: 0.0006 },
		ours: () => volumetricEfficiency(7 / 0.95, 0.05, 1.3),
	},
	...(
		[
			['LT225/75R16', 29.3],
			['LT245/75R16', 30.5],
			['LT215/85R16', 30.4],
			['LT265/70R17', 31.6],
		] as const
	).map(
		([size, inches]): EvidenceRow => ({
			topic: 'inflate',
			what: `${size}: overall diameter`,
			source: 'Tire and Rim Association Year Book, design dimensions of light truck tires',
			mark: 'from memory',
			published: inches,
			unit: 'in',
			// printed to a tenth; design values differ from the bare geometry by up to as much
			tolerance: { abs: 0.1 },
			ours: () => {
				const read = readTireSize(size);
				return read === null ? Number.NaN : overallDiameterMm(read) / 25.4;
			},
		}),
	),
	...(
		[
			['225/75R16C', 744],
			['235/65R16C', 712],
			['215/65R16C', 686],
			['205/75R16C', 714],
		] as const
	).map(
		([size, millimetres]): EvidenceRow => ({
			topic: 'inflate',
			what: `${size}: overall diameter`,
			source: 'ETRTO Standards Manual, commercial vehicle tires, design dimensions',
			mark: 'from memory',
			published: millimetres,
			unit: 'mm',
			tolerance: { abs: 1 },
			ours: () => {
				const read = readTireSize(size);
				return read === null ? Number.NaN : overallDiameterMm(read);
			},
		}),
	),
];

const lids: readonly EvidenceRow[] = [
	{
		topic: 'strut',
		what: '28 kg lid, centre 0.62 m from the hinge, level: moment',
		source: 'moment balance about the hinge, worked example',
		mark: 'computed with a reference library',
		published: structure('structure-gas-spring-1', 'moment_nm'),
		unit: 'N m',
		tolerance: { rel: 0.002 },
		ours: () => resultOf(strut, { massKg: 28, centreM: 0.62, armM: 0.16 }, 'moment'),
	},
	{
		topic: 'strut',
		what: '28 kg lid on two springs of 0.16 m lever: force of each',
		source: 'moment balance about the hinge, worked example',
		mark: 'computed with a reference library',
		published: structure('structure-gas-spring-1', 'force_each_n'),
		unit: 'N',
		tolerance: { rel: 0.002 },
		ours: () => resultOf(strut, { massKg: 28, centreM: 0.62, armM: 0.16 }, 'balanceForce'),
	},
	{
		topic: 'strut',
		what: 'a gas spring gains about 3.4 % of its force from 20 to 30 °C',
		source: 'gas spring catalogues: about 0.34 % a kelvin',
		mark: 'common practice',
		published: 3.4,
		unit: '%',
		tolerance: { abs: 0.05 },
		ours: () => (temperatureFactor(30) - 1) * 100,
	},
];

export const rows: readonly EvidenceRow[] = [...atmosphere, ...geometric, ...icao, ...inflation, ...lids];
