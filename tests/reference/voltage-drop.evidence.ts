import { conductorSize, copperResistanceAt } from '../../packages/core/src/tables/conductors.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import { wire } from '../../packages/core/src/topics/wire.js';
import { readJson } from './csv.js';
import type { EvidenceRow } from './evidence.js';

const metresPerFoot = 0.3048;

/** Both legs at 75 °C, as the K = 12.9 formula takes them; the length is one way [V]. */
function dropAt75(name: string, currentA: number, oneWayFt: number): number {
	const size = conductorSize(name);
	if (size === null) throw new Error(`${name} is not in the tables`);
	return 2 * currentA * oneWayFt * metresPerFoot * copperResistanceAt(size.bareOhmPerM20C, 75);
}

function chosen(given: Readonly<Record<string, unknown>>): string {
	const outcome = runTopic(wire, given, { region: 'us', units: 'us', language: 'en' });
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return String(outcome.sizing.results.find((result) => result.name === 'conductor')?.value);
}

interface Example {
	readonly id: string;
	readonly source: string;
	readonly given: Readonly<Record<string, { readonly value: number }>>;
	readonly expected: Readonly<Record<string, string | { readonly value: number }>>;
}
const textbook = readJson<{ readonly examples: readonly Example[] }>(
	'electrical/worked-examples.json',
).examples.find((one) => one.id === 'elec-d02');
if (textbook === undefined) throw new Error('the textbook example is missing');

function numberOf(value: string | { readonly value: number } | undefined): number {
	if (value === undefined || typeof value === 'string') throw new Error('no number');
	return value.value;
}

const oneWayFt = numberOf(textbook.given.one_way_length);
const currentA = numberOf(textbook.given.current);

// K = 12.9 is three figures of 12.82 to 12.91 in Table 8: half a per cent.
const roundedK = { rel: 0.007 };

export const rows: readonly EvidenceRow[] = [
	{
		topic: 'wire',
		what: '10 A, 120 V, 140 ft one way, 3 %: conductor',
		source: textbook.source,
		mark: 'verified',
		published: String(textbook.expected.wire_size),
		unit: '',
		ours: () => chosen({ currentA, voltageV: 120, lengthM: oneWayFt * metresPerFoot, dropLimit: 0.03 }),
	},
	...(['10', '8'] as const).map(
		(awg): EvidenceRow => ({
			topic: 'wire',
			what: `10 A, 140 ft one way, ${awg} AWG at 75 °C: drop`,
			source: textbook.source,
			mark: 'verified',
			published: numberOf(textbook.expected[`drop_${awg}AWG`]),
			unit: 'V',
			tolerance: roundedK,
			ours: () => dropAt75(`${awg} AWG`, currentA, oneWayFt),
		}),
	),
	{
		topic: 'wire',
		what: '16 A, 100 ft one way, 12 AWG at 75 °C: drop',
		source: 'code-based trade textbooks, 2·K·I·D/CM with K = 12.9: 6.32 V',
		mark: 'from memory',
		published: 6.32,
		unit: 'V',
		tolerance: roundedK,
		ours: () => dropAt75('12 AWG', 16, 100),
	},
	{
		topic: 'wire',
		what: '16 A, 100 ft one way, 12 AWG: drop from the resistance of 200 ft',
		source: 'code-based trade textbooks, Ohm’s law with 2 ohm/kft: 6.4 V',
		mark: 'from memory',
		published: 6.4,
		unit: 'V',
		// 1.98 ohm/kft rounded to 2
		tolerance: { rel: 0.011 },
		ours: () => dropAt75('12 AWG', 16, 100),
	},
	{
		topic: 'wire',
		what: '24 A, 240 V, 160 ft one way, 3 %: conductor',
		source: 'code-based trade textbooks, CM = 2·K·I·D/VD: 13,760 cmil, 8 AWG',
		mark: 'from memory',
		published: '8 AWG',
		unit: '',
		ours: () =>
			chosen({
				currentA: 24,
				voltageV: 240,
				lengthM: 160 * metresPerFoot,
				dropLimit: 0.03,
				continuous: false,
			}),
	},
];
