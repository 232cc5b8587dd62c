import { checkSize, type Run } from '../../packages/core/src/electrical/conductor.js';
import { ruleSetOf } from '../../packages/core/src/rules/rules.js';
import { ambientFactor, isoAmpacity } from '../../packages/core/src/tables/ampacity.js';
import { conductorSize } from '../../packages/core/src/tables/conductors.js';
import type { Region } from '../../packages/core/src/topic/context.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import { wire } from '../../packages/core/src/topics/wire.js';
import { readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

/** The allowable current that the answer names for this size, all corrections applied. */
function allowableA(size: string, region: Region, given: Readonly<Record<string, unknown>>): number {
	const outcome = runTopic(
		wire,
		{ currentA: 0.1, lengthM: 0.1, ...given, size },
		{ region, units: 'us', language: 'en' },
	);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return Number(outcome.sizing.results.find((result) => result.name === 'ampacity')?.value);
}

const plainRun: Run = {
	supply: 'dc',
	currentA: 0.1,
	voltageV: 12,
	lengthM: 0.1,
	dropLimit: 0.1,
	insulationC: 105,
	ambientC: 30,
	bundled: 2,
	routing: 'free',
	continuous: false,
	motor: false,
	isRating: false,
	terminalC: null,
	parallel: 1,
	tinned: false,
};

function checked(name: string, region: Region, changed: Partial<Run>) {
	const size = conductorSize(name);
	const check = size === null ? null : checkSize({ ...plainRun, ...changed }, size, ruleSetOf(region));
	if (check === null) throw new Error(`${name} has no check`);
	return check;
}

const boat: EvidenceRow[] = readTable('electrical/cfr33_183_425_table5_ampacity.csv').flatMap((row) =>
	[75, 105].map(
		(classC): EvidenceRow => ({
			topic: 'wire',
			what: `${row.awg} AWG, ${classC} °C insulation, 12 V: allowable current`,
			source: '33 CFR 183.425, Table 5',
			mark: 'verified',
			published: Number(row[`ampacity_A_insulation_${classC}C`]),
			unit: 'A',
			ours: () => allowableA(`${row.awg} AWG`, 'us', { voltageV: 12, insulationC: classC }),
		}),
	),
);

const engineSpace: EvidenceRow[] = [
	{
		topic: 'wire',
		what: '4 AWG, 105 °C insulation, in the engine space: allowable current',
		source: '33 CFR 183.425, Table 5 with Note 1 (160 A × 0.85)',
		mark: 'verified',
		published: 136,
		unit: 'A',
		ours: () => allowableA('4 AWG', 'us', { voltageV: 12, engineBay: true }),
	},
	...readTable('electrical/cfr33_183_425_notes.csv')
		.filter((row) => /^engine_space_factor_(60|75|80|90|105|125)C$/.test(row.key ?? ''))
		.map((row): EvidenceRow => {
			const classC = Number(/(\d+)C$/.exec(row.key ?? '')?.[1]);
			return {
				topic: 'ampacity',
				what: `${classC} °C insulation at 50 °C: factor by the heat balance`,
				source: '33 CFR 183.425, Table 5, Note 1',
				mark: row.status === 'VERIFIED' ? 'verified' : 'from memory',
				published: Number(row.value),
				unit: '',
				// two figures printed, and the rule rounds down at 105 and 125 °C
				tolerance: { abs: 0.0075 },
				ours: () => ambientFactor(classC, 50),
			};
		}),
];

const bundles: EvidenceRow[] = [
	...(
		[
			[3, 'bundle_factor_3_conductors'],
			[5, 'bundle_factor_4_to_6_conductors'],
			[12, 'bundle_factor_7_to_24_conductors'],
			[25, 'bundle_factor_25_and_more_conductors'],
		] as const
	).map(([conductors, key]): EvidenceRow => {
		const row = readTable('electrical/cfr33_183_425_notes.csv').find((one) => one.key === key);
		return {
			topic: 'wire',
			what: `${conductors} conductors together: share of the single conductor's allowable current`,
			source: '33 CFR 183.425, Table 5, Note 2',
			mark: 'verified',
			published: Number(row?.value),
			unit: '',
			ours: () =>
				allowableA('2 AWG', 'us', { voltageV: 12, bundled: conductors }) /
				allowableA('2 AWG', 'us', { voltageV: 12 }),
		};
	}),
	...readTable('electrical/nec310_15_C1_bundling.csv').map((row): EvidenceRow => {
		const conductors = Number(row.current_carrying_conductors_from);
		return {
			topic: 'wire',
			what: `${conductors} conductors in one raceway, 120 V: share of the table value`,
			source: 'NFPA 70 (NEC), Table 310.15(C)(1)',
			mark: 'verified',
			published: Number(row.factor),
			unit: '',
			ours: () =>
				checked('10 AWG', 'us', {
					supply: 'mains',
					voltageV: 120,
					insulationC: 90,
					terminalC: 90,
					bundled: conductors,
				}).correctedA / 40,
		};
	}),
];

const raceway: EvidenceRow[] = readTable('electrical/nec310_16_ampacity_copper.csv').flatMap((row) =>
	[60, 75, 90]
		.filter((classC) => row[`ampacity_A_${classC}C`] !== '')
		.map(
			(classC): EvidenceRow => ({
				topic: 'wire',
				what: `${row.awg} AWG, ${classC} °C insulation and terminals, 120 V: allowable current`,
				source: 'NFPA 70 (NEC), Table 310.16',
				mark: 'verified',
				published: Number(row[`ampacity_A_${classC}C`]),
				unit: 'A',
				ours: () =>
					allowableA(`${row.awg} AWG`, 'us', { voltageV: 120, insulationC: classC, terminalC: classC }),
			}),
		),
);

const terminals: EvidenceRow[] = [
	{
		topic: 'wire',
		what: '8 AWG, 90 °C insulation, circuit up to 100 A, terminals unmarked: allowable current',
		source: 'NFPA 70 (NEC), 110.14(C)(1)(a) with Table 310.16 (60 °C column)',
		mark: 'verified',
		published: 40,
		unit: 'A',
		ours: () => allowableA('8 AWG', 'us', { voltageV: 120, currentA: 20 }),
	},
	{
		topic: 'wire',
		what: '1/0 AWG, 90 °C insulation, circuit over 100 A, terminals unmarked: allowable current',
		source: 'NFPA 70 (NEC), 110.14(C)(1)(b) with Table 310.16 (75 °C column)',
		mark: 'verified',
		published: 150,
		unit: 'A',
		ours: () => allowableA('1/0 AWG', 'us', { voltageV: 120, currentA: 110, continuous: false }),
	},
	{
		topic: 'wire',
		what: '6 AWG 90 °C wire, 9 current-carrying conductors in a raceway, 100 °F: corrected ampacity',
		source: 'code-exam textbooks: 75 A × 0.91 × 0.70 = 47.8 A',
		mark: 'from memory',
		published: 47.8,
		unit: 'A',
		tolerance: { abs: 0.05 },
		ours: () =>
			checked('6 AWG', 'us', {
				supply: 'mains',
				voltageV: 120,
				insulationC: 90,
				ambientC: (100 - 32) / 1.8,
				bundled: 9,
			}).correctedA,
	},
];

/** The equation of 310.15(B) against the table's printed cells, at the hot end of each band. */
const ambient: EvidenceRow[] = readTable('electrical/nec310_15_B1_ambient_factors.csv')
	.filter((row) => Number(row.ambient_to_C) > 30)
	.flatMap((row) =>
		[60, 75, 90]
			.filter((classC) => row[`factor_${classC}C`] !== '')
			.map(
				(classC): EvidenceRow => ({
					topic: 'ampacity',
					what: `${classC} °C insulation at ${row.ambient_to_C} °C: ambient factor by the equation`,
					source: 'NFPA 70 (NEC), Table 310.15(B)(1)',
					mark: row.status === 'VERIFIED' ? 'verified' : 'from memory',
					published: Number(row[`factor_${classC}C`]),
					unit: '',
					// two figures printed
					tolerance: { abs: 0.00501 },
					ours: () => ambientFactor(classC, Number(row.ambient_to_C)),
				}),
			),
	);

/**
 * The metric table is capped by the boat table at the same area; the rows where the cap lies below it are left to
 * the property that the answer never exceeds either.
 */
const metric: EvidenceRow[] = Object.entries(isoAmpacity.rows)
	.filter(([name]) => Number.parseFloat(name) <= 35 && Number.parseFloat(name) >= 1)
	.map(([name]) => {
		const row = readTable('electrical/iso10133_annexA_ampacity_FROM_MEMORY.csv').find(
			(one) => `${one.area_mm2} mm²` === name,
		);
		return {
			topic: 'wire',
			what: `${name}, 105 °C insulation, 12 V: allowable current`,
			source: 'ISO 10133, Annex A, Table A.1',
			mark: 'from memory',
			published: Number(row?.ampacity_A_insulation_105C),
			unit: 'A',
			ours: () => allowableA(name, 'eu', { voltageV: 12, insulationC: 105 }),
		} satisfies EvidenceRow;
	});

export const rows: readonly EvidenceRow[] = [
	...boat,
	...engineSpace,
	...bundles,
	...raceway,
	...terminals,
	...ambient,
	...metric,
];
