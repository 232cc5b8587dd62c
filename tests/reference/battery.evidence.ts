import {
	chargingVoltageV,
	coldShare,
	cutoffVoltageV,
	requiredCapacityAh,
} from '../../packages/core/src/energy/bank.js';
import { chargeTime } from '../../packages/core/src/energy/charging.js';
import { peukertHours } from '../../packages/core/src/energy/peukert.js';
import { chemistries } from '../../packages/core/src/tables/batteries.js';
import { battery } from '../../packages/core/src/topics/battery.js';
import { runtime } from '../../packages/core/src/topics/runtime.js';
import { codesOf, eu, resultsOf } from './answers.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceMark, EvidenceRow } from './evidence.js';

const fromF = (temperatureF: number) => (temperatureF - 32) / 1.8;

/** By how much the answer raises the bank for the cold. */
function temperatureFactor(temperatureC: number): number {
	const warm = { chargePerDayAh: 100, autonomyH: 24, chemistry: 'flooded', ageing: 1 };
	const at = (temperature: number) =>
		Number(resultsOf(battery, { ...warm, temperatureC: temperature }).requiredCapacity);
	return at(temperatureC) / at(25);
}

const rowMark = (status: string | undefined): EvidenceMark =>
	status === 'VERIFIED' ? 'verified' : 'from memory';

// Above 77 °F the table gives credit for warmth; ours gives none (next group).
const fahrenheit: EvidenceRow[] = readTable('electrical/battery_lead_acid_temperature_factor.csv')
	.filter((row) => Number(row.electrolyte_temp_F) <= 77)
	.map((row) => ({
		topic: 'battery',
		what: `lead-acid at ${row.electrolyte_temp_F} °F: capacity needed over that at 77 °F`,
		source: 'IEEE 485, Table 1',
		mark: rowMark(row.status),
		published: Number(row.capacity_multiplier),
		unit: '',
		tolerance: { abs: 1e-9 },
		ours: () => temperatureFactor(fromF(Number(row.electrolyte_temp_F))),
	}));

// The 2010 edition prints whole and half degrees Fahrenheit as rounded °C: a tenth of a degree is 0.0014.
const celsius: EvidenceRow[] = (
	[
		[18.9, 1.072],
		[19.4, 1.064],
		[20, 1.056],
		[20.6, 1.048],
		[21.7, 1.034],
		[22.2, 1.029],
		[22.8, 1.023],
		[23.4, 1.017],
		[23.9, 1.011],
		[24.5, 1.006],
	] as const
).map(([temperatureC, published]) => ({
	topic: 'battery',
	what: `lead-acid at ${temperatureC} °C: capacity needed over that at 25 °C`,
	source: 'IEEE 485-2010, Table 1, rows in °C',
	mark: 'from memory',
	published,
	unit: '',
	tolerance: { abs: 0.0014 },
	ours: () => temperatureFactor(temperatureC),
}));

const factor = (name: string) =>
	Number(
		readTable('electrical/battery_sizing_factors.csv').find((row) => row.factor?.startsWith(name) === true)
			?.value,
	);

const plain = {
	chargePerDayAh: 100,
	autonomyH: 24,
	chemistry: 'agm',
	depthOfDischarge: 1,
	temperatureC: 25,
	ageing: 1,
};
const required = (changed: Readonly<Record<string, unknown>>) =>
	Number(resultsOf(battery, { ...plain, ...changed }).requiredCapacity);

const factors: EvidenceRow[] = [
	{
		topic: 'battery',
		what: 'ageing: capacity needed over that of a battery that stays new',
		source: 'UFC 3-520-01, Appendix E',
		mark: 'verified',
		published: factor('aging factor'),
		unit: '',
		tolerance: { abs: 1e-9 },
		ours: () => required({ ageing: undefined }) / required({}),
	},
	{
		topic: 'battery',
		what: 'typical design margin, asked for as 1.1',
		source: 'UPS battery capacity worksheet',
		mark: 'verified',
		published: factor('design margin'),
		unit: '',
		tolerance: { abs: 1e-9 },
		ours: () => required({ margin: 1.1 }) / required({}),
	},
	{
		topic: 'battery',
		what: 'lead-acid at 35 °C: no credit for warmth',
		source: 'UPS battery capacity worksheet',
		mark: 'verified',
		published: factor('temperature factor above 25 C'),
		unit: '',
		ours: () => temperatureFactor(35),
	},
	{
		topic: 'battery',
		what: 'end of discharge of a lead-acid cell',
		source: 'UPS battery capacity worksheet',
		mark: 'verified',
		published: factor('end-of-discharge voltage lead-acid general'),
		unit: 'V',
		ours: () => cutoffVoltageV(chemistries.agm, 48) / 24,
	},
	{
		topic: 'battery',
		what: 'lowest temperature the lead-acid factor is taken from the table',
		source: 'IEEE 485, Table 1, range',
		mark: 'verified',
		published: factor('IEEE 485 Table 1 range low'),
		unit: '°C',
		// The file rounds 25 °F to a tenth of a degree.
		tolerance: { abs: 0.05 },
		ours: () => {
			const tenths = Array.from({ length: 200 }, (_, index) => 5 - index / 20);
			return tenths.findLast(
				(temperatureC) => coldShare(chemistries.agm, temperatureC)?.source.document === 'IEEE 485',
			) as number;
		},
	},
];

const lost = (temperatureC: number) =>
	Number(
		resultsOf(runtime, {
			loads: [{ currentA: 1 }],
			unitAh: 100,
			chemistry: 'flooded',
			toSoc: 0,
			temperatureC,
		}).usableCharge,
	);
const cold: EvidenceRow[] = [77, 0].map((temperatureF) => ({
	topic: 'runtime',
	what: `100 Ah vehicle battery at ${temperatureF} °F: charge to be had`,
	source: 'TM 10-6140-200-14, paragraph 1-9',
	mark: 'verified',
	published: Number(
		readTable('electrical/battery_capacity_vs_temperature_lead_acid.csv').find(
			(row) => Number(row.temp_F) === temperatureF,
		)?.available_capacity_percent,
	),
	unit: 'Ah',
	// 0 °F is -17.78 °C; the file says -17.8.
	tolerance: { abs: 0.1 },
	ours: () => lost(Math.round(fromF(temperatureF) * 10) / 10),
}));

interface Example {
	readonly id: string;
	readonly expected: { readonly time: { readonly value: number; readonly tolerance: number } };
}
const peukertExample = readJson<{ readonly examples: readonly Example[] }>(
	'electrical/worked-examples.json',
).examples.find((one) => one.id === 'elec-d04') as Example;

/** Hours a full lead-acid bank carries a current, down to nothing. */
const hours = (given: Readonly<Record<string, unknown>>) =>
	Number(
		resultsOf(runtime, { chemistry: 'flooded', toSoc: 0, temperatureC: 25, health: 1, ...given }).runtime,
	);

const peukert: EvidenceRow[] = [
	{
		topic: 'runtime',
		what: '100 Ah at the 1 A rate, k = 1.2, 5 A',
		source: 'public article on the Peukert law, worked example',
		mark: 'verified',
		published: peukertExample.expected.time.value,
		unit: 'h',
		tolerance: { abs: peukertExample.expected.time.tolerance },
		ours: () => peukertHours({ ratedAh: 100, ratedH: 100, exponent: 1.2 }, 5),
	},
	{
		topic: 'runtime',
		what: '100 Ah at the 20 h rate, k = 1.2, 5 A: the rated time itself',
		source: 'public article on the Peukert law, form for a rating over H hours',
		mark: 'verified',
		published: 20,
		unit: 'h',
		tolerance: { abs: 1e-9 },
		ours: () => hours({ unitAh: 100, loads: [{ currentA: 5 }], peukert: 1.2 }),
	},
	{
		topic: 'runtime',
		what: '200 Ah at the 20 h rate, k = 1.2, 20 A',
		source: 'encyclopedia article on the Peukert law',
		mark: 'from memory',
		published: 8.7,
		unit: 'h',
		tolerance: { abs: 0.05 },
		ours: () => hours({ unitAh: 200, loads: [{ currentA: 20 }], peukert: 1.2 }),
	},
	{
		topic: 'runtime',
		what: '25 Ah aircraft battery (5 h rate) at 48 A, k = 1.2',
		source: 'FAA-H-8083-30, aircraft battery ratings: 20 min rate',
		mark: 'from memory',
		published: 20,
		unit: 'min',
		tolerance: { rel: 0.02 },
		ours: () => peukertHours({ ratedAh: 25, ratedH: 5, exponent: 1.2 }, 48) * 60,
	},
	{
		topic: 'runtime',
		what: '25 Ah aircraft battery (5 h rate) at 140 A, k = 1.2',
		source: 'FAA-H-8083-30, aircraft battery ratings: 5 min rate',
		mark: 'from memory',
		published: 5,
		unit: 'min',
		// At 28 times the rated current acid no longer reaches the plates fast enough, which the law does not know.
		tolerance: { rel: 0.12 },
		ours: () => peukertHours({ ratedAh: 25, ratedH: 5, exponent: 1.2 }, 140) * 60,
	},
	{
		topic: 'runtime',
		what: '76 Ah flooded battery at 25 A: reserve capacity',
		source: 'BCI, reserve capacity 120 min for 76 Ah (Ah = RC / 2 + 16)',
		mark: 'from memory',
		published: 120,
		unit: 'min',
		// The exponent used, 1.3, lies at the safe end of the range; 1.22 would meet it.
		tolerance: { rel: 0.15 },
		ours: () => hours({ unitAh: 76, loads: [{ currentA: 25 }] }) * 60,
	},
];

const chemistryInFile: Readonly<Record<string, string>> = {
	AGM: 'agm',
	gel: 'gel',
	flooded: 'flooded',
	'lithium ion / LiFePO4': 'lifepo4',
};

/** The exponent that the answers behave by, from two currents well above the rated one. */
function exponentOf(chemistry: string): number {
	const at = (currentA: number) => hours({ unitAh: 100, chemistry, loads: [{ currentA }] });
	return Math.log(at(30) / at(60)) / Math.log(60 / 30);
}

const exponents: EvidenceRow[] = readTable('electrical/battery_peukert.csv')
	.filter((row) => chemistryInFile[row.chemistry ?? ''] !== undefined)
	.map((row) => {
		const published = `within ${row.exponent_min} to ${row.exponent_max}`;
		return {
			topic: 'runtime',
			what: `${row.chemistry}: Peukert exponent by which two runtimes differ`,
			source: 'public reference page on the Peukert law, ranges by chemistry',
			mark: 'verified',
			published,
			unit: '',
			ours: () => {
				const exponent = exponentOf(chemistryInFile[row.chemistry ?? ''] as string);
				const inside =
					exponent >= Number(row.exponent_min) - 1e-9 && exponent <= Number(row.exponent_max) + 1e-9;
				return inside ? published : String(exponent);
			},
		};
	});

// Textbooks take a battery as ideal: k = 1, down to nothing.
const ideal: EvidenceRow[] = [
	{
		topic: 'runtime',
		what: '120 Ah, 12 V car battery at 100 W',
		source: 'Halliday, Resnick, Walker: Fundamentals of Physics, chapter on circuits, problem',
		mark: 'from memory',
		published: 14.4,
		unit: 'h',
		tolerance: { abs: 0.05 },
		ours: () => hours({ unitAh: 120, bankV: 12, loads: [{ powerW: 100 }], peukert: 1 }),
	},
	{
		topic: 'runtime',
		what: '85 Ah car battery with two 40 W headlights and two 6 W taillights left on',
		source: 'Giancoli: Physics, chapter on electric currents, problem',
		mark: 'from memory',
		published: 11,
		unit: 'h',
		tolerance: { abs: 0.5 },
		ours: () =>
			hours({
				unitAh: 85,
				bankV: 12,
				loads: [
					{ name: 'headlight', powerW: 40, count: 2 },
					{ name: 'taillight', powerW: 6, count: 2 },
				],
				peukert: 1,
			}),
	},
	{
		topic: 'runtime',
		what: '70 Ah car battery at 3.5 A',
		source: 'Kuphaldt: Lessons in Electric Circuits, volume I, battery ratings',
		mark: 'from memory',
		published: 20,
		unit: 'h',
		tolerance: { abs: 1e-9 },
		ours: () => hours({ unitAh: 70, loads: [{ currentA: 3.5 }] }),
	},
	{
		topic: 'runtime',
		what: '70 Ah battery at 70 A, taken as ideal',
		source: 'Kuphaldt: Lessons in Electric Circuits, volume I, battery ratings',
		mark: 'from memory',
		published: 1,
		unit: 'h',
		tolerance: { abs: 1e-9 },
		ours: () => hours({ unitAh: 70, loads: [{ currentA: 70 }], peukert: 1 }),
	},
	{
		topic: 'runtime',
		what: '100 Ah deep-cycle battery at 5 A',
		source: 'BCI, definition of the 20 h rate',
		mark: 'from memory',
		published: 20,
		unit: 'h',
		tolerance: { abs: 1e-9 },
		ours: () => hours({ unitAh: 100, loads: [{ currentA: 5 }] }),
	},
	{
		topic: 'battery',
		what: 'off-grid cabin: 147 Ah a day over 4.6 days, 80 % deep, 97 % of capacity in the cold',
		source: 'Masters: Renewable and Efficient Electric Power Systems, off-grid cabin battery example',
		mark: 'from memory',
		published: 871,
		unit: 'Ah',
		tolerance: { abs: 1 },
		ours: () =>
			requiredCapacityAh(147 * 4.6, { depthOfDischarge: 0.8, coldShare: 0.97, ageing: 1, margin: 1 }),
	},
];

/** The temperature at which a finding begins or ends, searched to a hundredth of a degree. */
function edgeC(code: string, coldC: number, hotC: number): number {
	const has = (temperatureC: number) =>
		codesOf(battery, { unitAh: 100, chemistry: 'lifepo4', temperatureC }).includes(code);
	let low = coldC;
	let high = hotC;
	const atLow = has(low);
	for (let step = 0; step < 40; step += 1) {
		const middle = (low + high) / 2;
		if (has(middle) === atLow) low = middle;
		else high = middle;
	}
	return Math.round(((low + high) / 2) * 100) / 100;
}

const bank = (given: Readonly<Record<string, unknown>>, name: string) =>
	Number(resultsOf(battery, given)[name]);

const cells: EvidenceRow[] = [
	{
		topic: 'battery',
		what: 'LiFePO4: below this cell temperature charging is a danger',
		source: 'LiFePO4 cell specification, charging temperature',
		mark: 'verified',
		published: 0,
		unit: '°C',
		ours: () => edgeC('lithium-charge-below-freezing', -20, 20),
	},
	{
		topic: 'battery',
		what: 'LiFePO4: above this cell temperature charging is a danger',
		source: 'LiFePO4 cell specification, charging temperature',
		mark: 'verified',
		published: 60,
		unit: '°C',
		ours: () => edgeC('charge-too-hot', 46, 70),
	},
	{
		topic: 'battery',
		what: 'LiFePO4: charging voltage of a cell at most',
		source: 'LiFePO4 cell specification, upper voltage limit',
		mark: 'verified',
		published: 3.65,
		unit: 'V',
		tolerance: { abs: 1e-9 },
		ours: () => chargingVoltageV(chemistries.lifepo4, 48) / 16,
	},
	...(
		[
			['LiFePO4', { chemistry: 'lifepo4' }, 12.8],
			['AGM', { chemistry: 'agm' }, 12],
		] as const
	).map(
		([label, given, published]): EvidenceRow => ({
			topic: 'battery',
			what: `${label} of the 12 V class: rated voltage`,
			source: 'rated cell voltages (3.2 V and 2 V) times cells in series',
			mark: 'common practice',
			published,
			unit: 'V',
			tolerance: { abs: 1e-9 },
			ours: () => bank({ unitAh: 100, ...given }, 'bankVoltage'),
		}),
	),
];

const layouts: EvidenceRow[] = (
	[
		[
			'4 × 100 Ah 12 V in 24 V',
			{ unitAh: 100, unitCount: 4, unitV: 12, bankV: 24 },
			'bankCapacity',
			200,
			'Ah',
		],
		[
			'2 × 225 Ah 6 V in 12 V',
			{ unitAh: 225, unitCount: 2, unitV: 6, bankV: 12, chemistry: 'flooded' },
			'bankCapacity',
			225,
			'Ah',
		],
		[
			'8 × 225 Ah 6 V in 24 V: strings',
			{ unitAh: 225, unitCount: 8, unitV: 6, bankV: 24, chemistry: 'flooded' },
			'parallel',
			2,
			'',
		],
		[
			'16 cells of 280 Ah 3.2 V in 48 V',
			{ unitAh: 280, unitCount: 16, unitV: 3.2, bankV: 48, chemistry: 'lifepo4' },
			'bankEnergy',
			14336,
			'Wh',
		],
		[
			'4 × 100 Ah 12.8 V in parallel',
			{ unitAh: 100, unitCount: 4, unitV: 12.8, bankV: 12.8, chemistry: 'lifepo4' },
			'bankEnergy',
			5120,
			'Wh',
		],
	] as const
).map(([what, given, name, published, unit]) => ({
	topic: 'battery',
	what,
	source: 'series adds voltage, parallel adds capacity',
	mark: 'common practice',
	published,
	unit,
	tolerance: { abs: 1e-6 },
	ours: () => bank(given, name),
}));

const charging: EvidenceRow[] = [
	{
		topic: 'alternator',
		what: 'LiFePO4 from empty at 0.5 C, constant current and voltage to 0.05 C',
		source: 'LiFePO4 cell specification, standard charge of about 2.5 h',
		mark: 'from memory',
		published: 2.5,
		unit: 'h',
		// "About": specifications say 2 to 3 h.
		tolerance: { rel: 0.12 },
		ours: () =>
			chargeTime({ capacityAh: 100, currentA: 50, from: 0, to: 1, chemistry: chemistries.lifepo4 }).totalH,
	},
	{
		topic: 'alternator',
		what: 'lead-acid at 0.2 C: state of charge where the current begins to fall',
		source: 'bulk charging ends at about 80 %',
		mark: 'common practice',
		published: 0.8,
		unit: '',
		tolerance: { abs: 0.05 },
		ours: () =>
			chargeTime({ capacityAh: 100, currentA: 20, from: 0, to: 1, chemistry: chemistries.agm }).knee,
	},
	{
		topic: 'alternator',
		what: 'lead-acid from empty at a tenth of its capacity',
		source: '10 A into 100 Ah takes 12 to 14 h',
		mark: 'common practice',
		published: 13,
		unit: 'h',
		tolerance: { abs: 1 },
		ours: () =>
			chargeTime({ capacityAh: 100, currentA: 10, from: 0, to: 1, chemistry: chemistries.agm }).totalH,
	},
];

const rules: EvidenceRow[] = [
	{
		topic: 'battery',
		what: 'smallest living-area battery that is not remarked on',
		source: 'EN 1648-2:2018, 4.3.2',
		mark: 'verified',
		published: 60,
		unit: 'Ah',
		ours: () =>
			[40, 50, 59, 60, 61, 80].find(
				(unitAh) =>
					!codesOf(battery, { unitAh, chemistry: 'agm', bankV: 12 }, eu).includes('below-auxiliary-minimum'),
			) as number,
	},
];

export const rows: readonly EvidenceRow[] = [
	...fahrenheit,
	...celsius,
	...factors,
	...cold,
	...peukert,
	...exponents,
	...ideal,
	...cells,
	...layouts,
	...charging,
	...rules,
];
