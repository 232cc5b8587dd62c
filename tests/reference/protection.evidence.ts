import { type Run, smallestDevice } from '../../packages/core/src/electrical/conductor.js';
import { ruleSetOf } from '../../packages/core/src/rules/rules.js';
import type { Region } from '../../packages/core/src/topic/context.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import { wire } from '../../packages/core/src/topics/wire.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

function answered(region: Region, given: Readonly<Record<string, unknown>>) {
	const outcome = runTopic(wire, { lengthM: 0.3, ...given }, { region, units: 'us', language: 'en' });
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

function resultOf(region: Region, given: Readonly<Record<string, unknown>>, name: string): number | string {
	const value = answered(region, given).results.find((result) => result.name === name)?.value;
	if (value === undefined) throw new Error(`no result "${name}"`);
	return value;
}

/** The largest load, on for less than 3 h, for which this conductor is still judged enough [A]. */
function largestDeviceA(size: string, given: Readonly<Record<string, unknown>>): number {
	const ratings = [...ruleSetOf('us').dc.deviceRatingsA, ...ruleSetOf('us').mains.deviceRatingsA];
	const carried = [...new Set(ratings)].filter(
		(currentA) =>
			resultOf('us', { continuous: false, dropLimit: 0.2, ...given, currentA, size }, 'verdict') === 'enough',
	);
	return Math.max(...carried);
}

interface Example {
	readonly id: string;
	readonly expected: Readonly<Record<string, { readonly value: number }>>;
}
const examples = readJson<{ readonly examples: readonly Example[] }>(
	'electrical/worked-examples.json',
).examples;

function expected(id: string, name: string): number {
	const value = examples.find((one) => one.id === id)?.expected[name]?.value;
	if (value === undefined) throw new Error(`no ${name} in ${id}`);
	return value;
}

const tenAmps: Run = {
	supply: 'dc',
	currentA: 10,
	voltageV: 12,
	lengthM: 1,
	dropLimit: 0.03,
	insulationC: 105,
	ambientC: 30,
	bundled: 2,
	routing: 'free',
	continuous: true,
	motor: false,
	isRating: false,
	terminalC: null,
	parallel: 1,
	tinned: false,
};

const courses: EvidenceRow[] = [
	{
		topic: 'wire',
		what: '10 A of normal current: rating against overload',
		source: 'US Navy NEETS Module 3, circuit protection (125 %)',
		mark: 'verified',
		published: expected('elec-d03', 'overload_fuse'),
		unit: 'A',
		ours: () => smallestDevice(tenAmps, ruleSetOf('us').dc),
	},
	...(
		[
			[12, 15],
			[16, 20],
			[24, 30],
			[40, 50],
		] as const
	).map(
		([load, breaker]): EvidenceRow => ({
			topic: 'wire',
			what: `${load} A for 3 h or more on 120 V: breaker`,
			source: 'NFPA 70 (NEC), 210.20(A): 80 % of the rating',
			mark: 'verified',
			published: breaker,
			unit: 'A',
			ours: () => resultOf('us', { voltageV: 120, currentA: load, continuous: true }, 'device'),
		}),
	),
];

const boat: EvidenceRow[] = [
	{
		topic: 'wire',
		what: '10 AWG, 105 °C, 12 V: largest rating as we design (100 % of Table 5, before the small-conductor limit)',
		source: '33 CFR 183.455(c)(1) with Table 5',
		mark: 'verified',
		published: expected('elec-d05', 'recommended_max_rating'),
		unit: 'A',
		ours: () => resultOf('us', { voltageV: 12, currentA: 1, size: '10 AWG' }, 'ampacity'),
	},
	{
		topic: 'wire',
		what: '10 AWG, 105 °C, 12 V: is a load that needs the 90 A which the law would allow judged enough?',
		source: '33 CFR 183.455(c)(1): 150 % of Table 5; the design default here is 100 %',
		mark: 'verified',
		published: 'too thin',
		unit: '',
		ours: () =>
			resultOf(
				'us',
				{
					voltageV: 12,
					currentA: expected('elec-d05', 'legal_max_rating'),
					continuous: false,
					size: '10 AWG',
				},
				'verdict',
			),
	},
];

const small: EvidenceRow[] = [
	...readTable('electrical/nec240_4_D_small_conductors.csv')
		.filter((row) => row.material === 'copper' && Number(row.awg) <= 14)
		.map(
			(row): EvidenceRow => ({
				topic: 'wire',
				what: `${row.awg} AWG copper, 90 °C insulation and terminals, 120 V: largest device`,
				source: `NFPA 70 (NEC), ${row.section}`,
				mark: 'verified',
				published: Number(row.max_overcurrent_A),
				unit: 'A',
				ours: () => largestDeviceA(`${row.awg} AWG`, { voltageV: 120, terminalC: 90 }),
			}),
		),
	...readTable('electrical/nec551_rv_facts.csv')
		.filter((row) => /^1[0-6] AWG max overcurrent$/.test(row.key ?? ''))
		.map((row): EvidenceRow => {
			const name = (row.key ?? '').replace(' max overcurrent', '');
			return {
				topic: 'wire',
				what: `${name}, low-voltage circuit of a vehicle: largest device`,
				source: 'NFPA 70 (NEC), 552.10(E)(1) and ANSI/RVIA LV',
				mark: 'from memory',
				published: Number(row.value),
				unit: 'A',
				// 8 A is no rating of a blade fuse: the largest that is sold below it is 7.5 A
				...(name === '16 AWG' ? { tolerance: { abs: 0.5 } } : {}),
				ours: () => largestDeviceA(name, { voltageV: 12 }),
			};
		}),
	...readTable('electrical/faa_ac43_13_1b_table11_3_dc_protectors.csv')
		.filter((row) => ['14', '12', '10'].includes(row.wire_awg ?? ''))
		.map(
			(row): EvidenceRow => ({
				topic: 'wire',
				what: `${row.wire_awg} AWG on direct current: largest fuse`,
				source: 'FAA AC 43.13-1B, Table 11-3',
				mark: 'verified',
				published: Number(row.fuse_A),
				unit: 'A',
				ours: () => largestDeviceA(`${row.wire_awg} AWG`, { voltageV: 24 }),
			}),
		),
];

/** A load just above one standard rating gets the next one, and no other. */
const standard = readTable('electrical/nec240_6_A_standard_ratings.csv')
	.filter((row) => row.fuse_only === 'no' && Number(row.rating_A) <= 200)
	.map((row) => Number(row.rating_A));

const ratings: EvidenceRow[] = standard.slice(1).map((rating, index) => ({
	topic: 'wire',
	what: `device for a load just above ${standard[index]} A on 120 V, on for less than 3 h`,
	source: 'NFPA 70 (NEC), 240.6(A)',
	mark: 'verified',
	published: rating,
	unit: 'A',
	ours: () =>
		resultOf(
			'us',
			{ voltageV: 120, currentA: (standard[index] ?? 0) + 0.5, continuous: false, terminalC: 90 },
			'device',
		),
}));

export const rows: readonly EvidenceRow[] = [...courses, ...boat, ...small, ...ratings];
