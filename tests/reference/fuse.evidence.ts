import { runTopic } from '../../packages/core/src/topic/run.js';
import type { Sizing } from '../../packages/core/src/topic/sizing.js';
import { fuse } from '../../packages/core/src/topics/fuse.js';
import { shortCircuit } from '../../packages/core/src/topics/short-circuit.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceMark, EvidenceRow } from './evidence.js';

type Given = Readonly<Record<string, unknown>>;
const context = { region: 'us', units: 'us', language: 'en' } as const;

function sizingOf(topic: typeof fuse | typeof shortCircuit, given: Given): Sizing {
	const outcome = runTopic(topic as typeof fuse, given, context);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}

function resultOf(sizing: Sizing, name: string): number {
	const value = sizing.results.find((result) => result.name === name)?.value;
	if (typeof value !== 'number') throw new Error(`no number "${name}"`);
	return value;
}

const codesOf = (given: Given) => sizingOf(fuse, given).findings.map((finding) => finding.code);

const markOf = (status: string | undefined): EvidenceMark =>
	status === 'VERIFIED' ? 'verified' : 'from memory';

/** The largest value for which a finding does not come, to the nearest step. */
function largestWithout(
	code: string,
	from: number,
	to: number,
	step: number,
	given: (value: number) => Given,
): number {
	let low = from;
	let high = to;
	while (high - low > step) {
		const middle = Math.round((low + high) / 2 / step) * step;
		if (codesOf(given(middle)).includes(code)) high = middle;
		else low = middle;
	}
	return low;
}

const standards = readTable('electrical/fuse_standards_breaking_capacity.csv').filter((row) =>
	row.standard?.startsWith('ISO'),
);
const classOf: Readonly<Record<string, string>> = {
	'ISO 8820-3:2015': 'blade',
	'ISO 8820-12:2020': 'subMiniature',
	'ISO 8820-4:2016': 'femaleContact',
	'ISO 8820-5:2015': 'strip',
	'ISO 8820-6:2019': 'singleBolt',
};

const kinds: EvidenceRow[] = standards.flatMap((row) => {
	const fuseClass = classOf[row.standard ?? ''];
	const common = { topic: 'fuse', source: `${row.standard}, scope`, mark: 'verified' as const };
	const branch = { ratingA: 20, size: '10 AWG', bankV: 12, fuseClass };
	return [
		{
			...common,
			what: `${fuseClass}: largest short-circuit current it is allowed to face`,
			published: Number(row.breaking_capacity_A),
			unit: 'A',
			ours: () =>
				largestWithout('cannot-break', 100, 50_000, 1, (prospectiveA) => ({ ...branch, prospectiveA })),
		},
		{
			...common,
			what: `${fuseClass}: largest rating that is offered`,
			published: Number(row.rated_current_max_A),
			unit: 'A',
			ours: () =>
				largestWithout('no-such-rating', 5, 1500, 1, (ratingA) => ({
					...branch,
					ratingA,
					size: '4/0 AWG',
					parallel: 8,
				})),
		},
		{
			...common,
			what: `${fuseClass}: allowed on a 48 V bank`,
			published: (row.rated_voltage_V ?? '').includes('58') ? 'yes' : 'no',
			unit: '',
			ours: () => (codesOf({ ...branch, bankV: 48 }).includes('fuse-voltage') ? 'no' : 'yes'),
		},
	] satisfies EvidenceRow[];
});

const opening: EvidenceRow[] = readTable('electrical/fuse_time_current.csv')
	.filter((row) => !row.fuse?.startsWith('UL'))
	.flatMap((row): EvidenceRow[] => {
		const type = row.fuse ?? '';
		// 40 A is answered from the data sheet, other ratings to 40 A from type C, 50 to 80 A from type E.
		const given: Given = type.startsWith('standard')
			? { ratingA: 40, size: '6 AWG', fuseClass: 'blade' }
			: type.includes('type C')
				? { ratingA: 15, size: '14 AWG', fuseClass: 'blade' }
				: { ratingA: 60, size: '4 AWG', fuseClass: 'blade' };
		const percent = Number(row.percent_of_rating);
		const common = {
			topic: 'fuse',
			source: type.startsWith('standard')
				? 'data sheet of 35 and 40 A blade fuses (public copy)'
				: `ISO 8820-3, operating times, ${type.includes('type C') ? 'type C' : 'type E'}`,
			mark: markOf(row.status),
		};
		if (row.open_max_s === '') {
			return [
				{
					...common,
					what: `${type}: share of the rating that it holds for 100 h`,
					published: percent / 100,
					unit: '',
					tolerance: { rel: 1e-9 },
					ours: () => resultOf(sizingOf(fuse, given), 'holdCurrent') / Number(given.ratingA),
				},
			];
		}
		const times = [
			['no sooner than', row.open_min_s ?? '', `opens${percent}LeastS`],
			['no later than', row.open_max_s ?? '', `opens${percent}MostS`],
		] as const;
		return times
			.filter(([, printed]) => printed !== '')
			.map(([words, printed, name]) => ({
				...common,
				what: `${type}: at ${percent} % of the rating opens ${words}`,
				published: Number(printed),
				unit: 's',
				ours: () => resultOf(sizingOf(fuse, given), name),
			}));
	});

interface Example {
	readonly id: string;
	readonly expected: Readonly<Record<string, { readonly value: number }>>;
}
const boat = readJson<{ readonly examples: readonly Example[] }>(
	'electrical/worked-examples.json',
).examples.find((one) => one.id === 'elec-d05');

const law: EvidenceRow[] = [
	{
		topic: 'fuse',
		what: '10 AWG, 105 °C, 12 V: what the federal boat rule would allow',
		source: '33 CFR 183.455(c)(1) with Table 5',
		mark: 'verified',
		published: boat?.expected.legal_max_rating?.value ?? Number.NaN,
		unit: 'A',
		ours: () => resultOf(sizingOf(fuse, { ratingA: 20, size: '10 AWG', bankV: 12 }), 'boatRuleMaximum'),
	},
	{
		topic: 'fuse',
		what: '10 AWG, 105 °C, 12 V: largest fuse that is not called too large',
		source: 'NFPA 70 (NEC), 552.10(E)(1): 30 A on 10 AWG',
		mark: 'from memory',
		published: 30,
		unit: 'A',
		ours: () =>
			largestWithout('fuse-over-conductor', 1, 200, 1, (ratingA) => ({ ratingA, size: '10 AWG', bankV: 12 })),
	},
];

const marine: EvidenceRow[] = readTable('electrical/interrupting_capacity_battery.csv')
	.filter((row) => /Table V-A \(12 V/.test(row.source ?? ''))
	.flatMap((row): EvidenceRow[] => {
		const limits = [...(row.battery_bank ?? '').matchAll(/\d+/g)].map((match) => Number(match[0]));
		const limit = limits.at(-1) ?? 0;
		const crankingA = /over/.test(row.battery_bank ?? '') ? limit + 1 : limit;
		const given = { bankV: 12, chemistry: 'flooded', unitAh: 100, crankingA };
		return (
			[
				['main', row.main_breaker_min_AIC_A, 'marineMain'],
				['branch', row.branch_breaker_min_AIC_A, 'marineBranch'],
			] as const
		).map(([which, printed, name]) => ({
			topic: 'short-circuit',
			what: `bank of ${crankingA} A cold cranking, 12 V: least interrupting capacity of the ${which} breaker`,
			source: row.source ?? '',
			mark: markOf(row.status),
			published: Number(printed),
			unit: 'A',
			ours: () => resultOf(sizingOf(shortCircuit, given), name),
		}));
	});

const currents: EvidenceRow[] = [
	{
		topic: 'short-circuit',
		what: 'emf 12 V, 0.01 ohm inside: short-circuit current (0.9 of the resistance undone)',
		source: 'physics textbooks: I = emf / r, 1200 A of a car battery',
		mark: 'from memory',
		published: 1200,
		unit: 'A',
		tolerance: { rel: 1e-9 },
		ours: () =>
			0.9 *
			resultOf(
				sizingOf(shortCircuit, { bankV: 12, chemistry: 'flooded', openCircuitV: 12, internalOhm: 0.01 }),
				'prospectiveCurrent',
			),
	},
	{
		topic: 'short-circuit',
		what: '10 AWG, 20 ft one way at 20 °C: loop resistance',
		// NBS: 0.9989 ohm/kft solid; Table 8 stranded lies 2 % above solid
		source: 'NBS Handbook 100 (1966), annealed copper at 20 °C, with 2 % for stranding',
		mark: 'from memory',
		published: 0.9989 * 1.02 * 0.04,
		unit: 'ohm',
		tolerance: { rel: 0.006 },
		ours: () =>
			resultOf(
				sizingOf(shortCircuit, {
					bankV: 12,
					chemistry: 'agm',
					bankShortA: 2800,
					size: '10 AWG',
					lengthM: 6.096,
				}),
				'cableResistance',
			),
	},
	{
		topic: 'short-circuit',
		what: '35 mm², 3 m one way at 20 °C: loop resistance',
		source: 'IEC 60228, class 5, 0.554 ohm/km',
		mark: 'verified',
		published: 0.003324,
		unit: 'ohm',
		tolerance: { abs: 1e-9 },
		ours: () =>
			resultOf(
				sizingOf(shortCircuit, {
					bankV: 24,
					chemistry: 'agm',
					bankShortA: 2800,
					size: '35 mm²',
					lengthM: 3,
				}),
				'cableResistance',
			),
	},
];

export const rows: readonly EvidenceRow[] = [...kinds, ...opening, ...law, ...marine, ...currents];
