import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkSizes, chooseSize, type Run } from '../../packages/core/src/electrical/conductor.js';
import { ruleSetOf } from '../../packages/core/src/rules/rules.js';
import { conductorSize } from '../../packages/core/src/tables/conductors.js';
import type { Context, Region } from '../../packages/core/src/topic/context.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import type { Sizing } from '../../packages/core/src/topic/sizing.js';
import { wire } from '../../packages/core/src/topics/wire.js';
import { readTable } from '../reference/csv.js';

// What must never happen, whatever is asked: 100,000 random valid questions over the properties of this file.
// The limits are put together here from the printed tables, not from the code under test.

const context = (region: Region): Context => ({
	region,
	units: region === 'us' ? 'us' : 'metric',
	language: 'en',
});

const printed = (file: string, key: string, column: string, unit: string) =>
	new Map(
		readTable(`electrical/${file}.csv`)
			.filter((row) => row[column] !== '')
			.map((row) => [`${row[key]} ${unit}`, Number(row[column])]),
	);

const boatHottest = (insulationC: number) => {
	const classC = [60, 75, 80, 90, 105, 125, 200].findLast((one) => one <= insulationC);
	return printed('cfr33_183_425_table5_ampacity', 'awg', `ampacity_A_insulation_${classC}C`, 'AWG');
};
const boatByClass = new Map([60, 75, 80, 90, 105, 125, 200].map((classC) => [classC, boatHottest(classC)]));
const nec90 = printed('nec310_16_ampacity_copper', 'awg', 'ampacity_A_90C', 'AWG');
const mainsSmall = printed('nec240_4_D_small_conductors', 'awg', 'max_overcurrent_A', 'AWG');
for (const name of ['12 AWG', '10 AWG']) {
	// The file also lists aluminium; copper's limits are the ones checked here.
	const row = readTable('electrical/nec240_4_D_small_conductors.csv').find(
		(one) => `${one.awg} AWG` === name && one.material === 'copper',
	);
	mainsSmall.set(name, Number(row?.max_overcurrent_A));
}
const lowVoltageSmall = new Map(
	readTable('electrical/nec551_rv_facts.csv')
		.filter((row) => / AWG max overcurrent$/.test(row.key ?? ''))
		.map((row) => [(row.key ?? '').replace(' max overcurrent', ''), Number(row.value)]),
);

/** Resistivity of pure annealed copper at 20 °C [ohm mm²/m]: IEC 60028. No conductor of the area is better. */
const pureCopper = 0.017241;

// fc.double draws evenly over the representations of a number, which hardly reaches the values that matter.
const logarithmic = (min: number, max: number) =>
	fc.integer({ min: 0, max: 1_000_000 }).map((step) => min * (max / min) ** (step / 1_000_000));

const laid = {
	bundled: fc.integer({ min: 1, max: 30 }),
	routing: fc.constantFrom('free' as const, 'enclosed' as const, 'insulation' as const),
	continuous: fc.boolean(),
	motor: fc.boolean(),
	isRating: fc.boolean(),
	parallel: fc.constantFrom(1, 1, 1, 2, 3),
	tinned: fc.boolean(),
	ambientC: fc.integer({ min: -20, max: 80 }),
	dropLimit: fc.constantFrom(0.01, 0.03, 0.05, 0.1, 0.2),
	lengthM: logarithmic(0.1, 60),
};

const direct = fc.record({
	...laid,
	region: fc.constantFrom<Region>('us', 'eu'),
	voltageV: fc.constantFrom(12, 12.8, 24, 48, 51.2),
	currentA: logarithmic(0.1, 400),
	insulationC: fc.constantFrom(60, 75, 80, 90, 105, 125, 200),
	terminalC: fc.constantFrom(undefined, 75, 105),
});

const mains = fc.record({
	...laid,
	region: fc.constantFrom<Region>('us', 'eu'),
	voltageV: fc.constantFrom(100, 120, 230, 240),
	currentA: logarithmic(0.5, 150),
	insulationC: fc.constantFrom(60, 70, 75, 90),
	terminalC: fc.constantFrom(undefined, 60, 75, 90),
});

interface Question extends Omit<Run, 'supply' | 'terminalC'> {
	readonly region: Region;
	readonly terminalC?: number | undefined;
}

const question: fc.Arbitrary<Question> = fc.oneof(direct, mains);

const isMains = (asked: Question) => asked.voltageV > 60;

function ask(asked: Question, size?: string) {
	const { region, ...given } = asked;
	return runTopic(wire, size === undefined ? given : { ...given, size }, context(region));
}

function resultOf(sizing: Sizing, name: string): number {
	const value = sizing.results.find((result) => result.name === name)?.value;
	if (typeof value !== 'number') throw new Error(`no number "${name}" in ${JSON.stringify(sizing.results)}`);
	return value;
}

function wordOf(sizing: Sizing, name: string): string {
	return String(sizing.results.find((result) => result.name === name)?.value);
}

const leastDevice = (asked: Question) =>
	asked.currentA * ((asked.continuous || asked.motor) && !asked.isRating ? 1.25 : 1);

/** Everything a conductor and its device must satisfy, from the answer's own figures and the printed tables. */
function expectSafe(asked: Question, sizing: Sizing): void {
	const name = wordOf(sizing, 'conductor');
	const size = conductorSize(name);
	if (size === null) throw new Error(`"${name}" is no size`);
	const device = resultOf(sizing, 'device');
	const ampacity = resultOf(sizing, 'ampacity');
	const drop = resultOf(sizing, 'drop');

	expect(device).toBeGreaterThanOrEqual(leastDevice(asked));
	expect(device).toBeLessThanOrEqual(ampacity);
	expect(drop).toBeLessThanOrEqual(asked.dropLimit * asked.voltageV);
	expect(resultOf(sizing, 'dropPercent')).toBeLessThanOrEqual(asked.dropLimit * 100);

	const pureOhm = (2 * asked.lengthM * pureCopper) / (size.areaMm2 * asked.parallel);
	const cold = 1 + 0.00393 * (Math.min(20, asked.ambientC) - 20);
	expect(drop).toBeGreaterThan(asked.currentA * pureOhm * cold);

	const rules = ruleSetOf(asked.region);
	expect((isMains(asked) ? rules.mains : rules.dc).deviceRatingsA).toContain(device);
	const inInsulation = asked.routing === 'insulation' ? 0.5 : 1;
	const limitA = tableLimit(asked, name) * asked.parallel * printedBundling(asked) * inInsulation;
	if (asked.ambientC > 30 && ampacity === limitA) throw new Error('no correction for the heat');
	expect(ampacity).toBeLessThanOrEqual(limitA * (1 + 1e-12));

	if (asked.region === 'us') {
		const limit = (isMains(asked) ? mainsSmall : lowVoltageSmall).get(name);
		if (limit !== undefined) expect(device).toBeLessThanOrEqual(limit * asked.parallel);
	}
	expect(size.areaMm2).toBeGreaterThanOrEqual(isMains(asked) ? (asked.region === 'us' ? 2.08 : 1.5) : 1);
	if (isMains(asked) && asked.parallel > 1) expect(size.areaMm2).toBeGreaterThanOrEqual(50);
	expect(sizing.findings.filter((finding) => finding.severity === 'danger')).toEqual([]);
}

/** What the print allows one such conductor at 30 °C [A]; of a metric size, what the next thicker American one has. */
function tableLimit(asked: Question, name: string): number {
	const { insulationC } = asked;
	const table = isMains(asked)
		? nec90
		: (boatByClass.get([60, 75, 80, 90, 105, 125, 200].findLast((one) => one <= insulationC) ?? 60) ??
			new Map<string, number>());
	const own = table.get(name);
	if (own !== undefined) return own;
	const area = conductorSize(name)?.areaMm2 ?? 0;
	const thicker = [...table].find(([american]) => (conductorSize(american)?.areaMm2 ?? 0) >= area);
	return thicker?.[1] ?? Math.max(...table.values());
}

const bundling = readTable('electrical/nec310_15_C1_bundling.csv');

function printedBundling({ bundled, ...asked }: Question): number {
	if (asked.voltageV <= 60)
		return bundled <= 2 ? 1 : bundled === 3 ? 0.7 : bundled <= 6 ? 0.6 : bundled <= 24 ? 0.5 : 0.4;
	const row = bundling.find(
		(one) =>
			one.current_carrying_conductors_to === '' || bundled <= Number(one.current_carrying_conductors_to),
	);
	return Number(row?.factor);
}

test('an answer carries the load, protects the conductor, keeps the drop, and its smaller neighbour fails', () => {
	let answered = 0;
	fc.assert(
		fc.property(question, (asked) => {
			const outcome = ask(asked);
			if (outcome.status === 'refused') {
				expect(outcome).not.toHaveProperty('sizing');
				for (const refusal of outcome.refusals) {
					expect(refusal.instead).not.toMatch(/AWG|mm²/);
					expect(refusal.text.length * refusal.instead.length).toBeGreaterThan(0);
				}
				return;
			}
			if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
			answered += 1;
			const { sizing } = outcome;
			expectSafe(asked, sizing);
			const smaller = sizing.neighbours.find((neighbour) => !neighbour.passes);
			const name = smaller?.choice.replace(/^\d x /, '');
			if (name === undefined || (conductorSize(name)?.areaMm2 ?? 0) > resultOf(sizing, 'conductorAreaMm2'))
				return;
			const judged = ask(asked, name);
			expect(judged.status === 'answered' && wordOf(judged.sizing, 'verdict')).toBe('too thin');
		}),
		{ numRuns: 40_000 },
	);
	// The draw must not be so wild that hardly any question has an answer.
	expect(answered).toBeGreaterThan(10_000);
});

const anySize = fc.constantFrom(
	...[...ruleSetOf('us').sizes, ...ruleSetOf('eu').sizes].map((size) => size.name),
);

test('a size judged enough satisfies everything; one judged too thin breaks something', () => {
	let enough = 0;
	fc.assert(
		fc.property(question, anySize, (asked, size) => {
			const outcome = ask(asked, size);
			if (outcome.status !== 'answered') return;
			const { sizing } = outcome;
			if (wordOf(sizing, 'verdict') === 'enough') {
				enough += 1;
				expectSafe(asked, sizing);
			} else {
				const codes = sizing.findings.map((finding) => finding.code);
				expect(
					codes.some((code) => /^(conductor-overloaded|drop-over-limit|thinner-than-allowed)$/.test(code)),
				).toBe(true);
			}
		}),
		{ numRuns: 25_000 },
	);
	expect(enough).toBeGreaterThan(2_000);
});

function chosenArea(asked: Question): number {
	const { region, ...laidAs } = asked;
	const run: Run = {
		...laidAs,
		supply: isMains(asked) ? 'mains' : 'dc',
		terminalC: asked.terminalC ?? null,
	};
	const checks = checkSizes(run, ruleSetOf(region));
	const chosen = chooseSize(checks);
	return chosen === null ? Number.POSITIVE_INFINITY : (checks[chosen.index]?.size.areaMm2 ?? 0);
}

const more = logarithmic(1, 3);

test('a longer run never gets a thinner conductor', () => {
	fc.assert(
		fc.property(question, more, (asked, factor) => {
			expect(chosenArea({ ...asked, lengthM: asked.lengthM * factor })).toBeGreaterThanOrEqual(
				chosenArea(asked),
			);
		}),
		{ numRuns: 10_000 },
	);
});

test('a higher current never gets a thinner conductor', () => {
	fc.assert(
		fc.property(question, more, (asked, factor) => {
			const higher = { ...asked, currentA: asked.currentA * factor };
			expect(chosenArea(higher)).toBeGreaterThanOrEqual(chosenArea(asked));
		}),
		{ numRuns: 10_000 },
	);
});

test('just over the 100 A of the terminals rule, no thinner conductor either', () => {
	const common = {
		region: 'us' as const,
		voltageV: 120,
		insulationC: 90,
		ambientC: 25,
		bundled: 2,
		lengthM: 2,
	};
	const laidAs = {
		routing: 'free' as const,
		continuous: false,
		motor: false,
		isRating: false,
		tinned: false,
	};
	const at = (currentA: number) =>
		chosenArea({ ...common, ...laidAs, currentA, parallel: 1, dropLimit: 0.1 });
	expect(at(100)).toBe(42.41);
	expect(at(101)).toBeGreaterThanOrEqual(42.41);
	expect(at(111)).toBe(53.49);
});

test('a hotter, tighter or stricter run never gets a thinner conductor', () => {
	fc.assert(
		fc.property(
			question,
			fc.integer({ min: 0, max: 40 }),
			fc.integer({ min: 0, max: 20 }),
			more,
			(asked, warmer, others, factor) => {
				const before = chosenArea(asked);
				expect(chosenArea({ ...asked, ambientC: asked.ambientC + warmer })).toBeGreaterThanOrEqual(before);
				expect(chosenArea({ ...asked, bundled: asked.bundled + others })).toBeGreaterThanOrEqual(before);
				expect(chosenArea({ ...asked, dropLimit: asked.dropLimit / factor })).toBeGreaterThanOrEqual(before);
				expect(chosenArea({ ...asked, continuous: true })).toBeGreaterThanOrEqual(
					chosenArea({ ...asked, continuous: false }),
				);
				expect(chosenArea({ ...asked, tinned: true })).toBeGreaterThanOrEqual(
					chosenArea({ ...asked, tinned: false }),
				);
			},
		),
		{ numRuns: 15_000 },
	);
});
