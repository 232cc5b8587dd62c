import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Context } from '../topic/context.js';
import type { AnyTopic } from '../topic/declare.js';
import type { Field } from '../topic/field.js';
import { runTopic } from '../topic/run.js';
import { type Sizing, sizingSchema } from '../topic/sizing.js';
import { accumulator } from '../topics/accumulator.js';
import { cool } from '../topics/cool.js';
import { drain } from '../topics/drain.js';
import { freeze } from '../topics/freeze.js';
import { heat } from '../topics/heat.js';
import { hotWater } from '../topics/hot-water.js';
import { moisture } from '../topics/moisture.js';
import { pipe } from '../topics/pipe.js';
import { tank } from '../topics/tank.js';
import { vent } from '../topics/vent.js';

const topics: readonly AnyTopic[] = [
	tank,
	pipe,
	accumulator,
	hotWater,
	drain,
	freeze,
	heat,
	cool,
	moisture,
	vent,
];

/** Any value a field accepts, its ends more often than chance would have them. */
function anyValue({ type }: Field): fc.Arbitrary<unknown> {
	switch (type.sort) {
		case 'quantity':
		case 'number':
			return fc.oneof(
				{
					weight: 8,
					// As people type them: no more than six decimals.
					arbitrary: fc
						.double({ min: type.min, max: type.max, noNaN: true })
						.map((value) => Math.min(type.max, Math.max(type.min, Number(value.toFixed(6))))),
				},
				{ weight: 1, arbitrary: fc.constantFrom(type.min, type.max) },
			);
		case 'count':
			return fc.integer({ min: type.min, max: type.max });
		case 'choice':
			return fc.constantFrom(...Object.keys(type.options));
		case 'flag':
			return fc.boolean();
		case 'month':
			return fc.integer({ min: 1, max: 12 });
		case 'text':
			return fc.constantFrom(
				'1/2 pex',
				'pex 16 mm',
				'7/8 pex',
				'x',
				'30/50',
				'20/40 psi',
				'6x10 in',
				'30 x 30 cm',
			);
		default:
			// Places are tried by name elsewhere; here the temperature is given.
			return fc.constant(undefined);
	}
}

function questions(topic: AnyTopic): fc.Arbitrary<Record<string, unknown>> {
	const shape = Object.fromEntries(
		Object.entries(topic.fields).map(([name, field]) => [
			name,
			field.presence === 'required'
				? anyValue(field)
				: fc.option(anyValue(field), { nil: undefined, freq: 2 }),
		]),
	);
	return fc.record(shape);
}

const contexts: readonly Context[] = [
	{ region: 'us', units: 'us', language: 'en' },
	{ region: 'eu', units: 'metric', language: 'de' },
];

function numbers(sizing: Sizing): readonly (readonly [string, number])[] {
	return [
		...sizing.results.map(({ name, value }) => [name, value] as const),
		...sizing.working.map(({ label, value }) => [label, value] as const),
		...sizing.tipping.map(({ name, value }) => [name, value] as const),
	].filter((pair): pair is readonly [string, number] => typeof pair[1] === 'number');
}

const codePattern = /^[a-z]+(?:-[a-z]+)*$/;

describe.each(topics.map((topic) => [topic.name, topic] as const))('%s', (_, topic) => {
	test.each(contexts)('500 random questions end in an answer, a question or a refusal: $units', (context) => {
		let answers = 0;
		fc.assert(
			fc.property(questions(topic), (given) => {
				const outcome = runTopic(topic, given, context);
				if (outcome.status === 'refused') {
					for (const { text, instead } of outcome.refusals) {
						expect(text).not.toMatch(/NaN|undefined|without limit/);
						expect(instead.length).toBeGreaterThan(5);
					}
				}
				if (outcome.status !== 'answered') return;
				answers += 1;
				const { sizing } = outcome;
				expect(sizingSchema.parse(sizing)).toEqual(sizing);
				for (const [name, value] of numbers(sizing)) {
					expect(Number.isFinite(value), `${name} is ${value}`).toBe(true);
				}
				const texts = [
					sizing.headline,
					sizing.because ?? '',
					...sizing.findings.map((one) => one.text),
					...sizing.neighbours.map((one) => one.text),
					...sizing.results.map((one) => one.text),
				];
				for (const text of texts) expect(text).not.toMatch(/NaN|undefined|Infinity|no number/);
				expect(sizing.headline.length).toBeLessThanOrEqual(110);
				for (const { code } of sizing.findings) expect(code).toMatch(codePattern);
				expect(new Set(sizing.results.map((one) => one.name)).size).toBe(sizing.results.length);
				expect(sizing.cautions.length).toBeGreaterThan(0);
				expect(sizing.sources.length).toBeGreaterThan(0);
			}),
			{ numRuns: 500, seed: 20_250_101 },
		);
		// A test in which everything is refused would prove nothing.
		expect(answers).toBeGreaterThan(25);
	});
});

describe('limits are never met by rounding', () => {
	const context = contexts[0] as Context;
	const value = (sizing: Sizing, name: string) =>
		Number(sizing.results.find((one) => one.name === name)?.value ?? Number.NaN);

	test('a heater that is chosen covers the loss, the reserve and the altitude', () => {
		fc.assert(
			fc.property(questions(heat), (given) => {
				const outcome = runTopic(heat, { ...given, heaterW: undefined, unvented: false }, context);
				if (outcome.status !== 'answered') return;
				const heater = value(outcome.sizing, 'heater');
				if (Number.isNaN(heater)) return;
				expect(heater * value(outcome.sizing, 'altitudeShare')).toBeGreaterThanOrEqual(
					value(outcome.sizing, 'heatLoss') * 1.2 * (1 - 1e-9),
				);
			}),
			{ numRuns: 500 },
		);
	});

	test('a unit that is chosen covers the worst hour', () => {
		fc.assert(
			fc.property(questions(cool), (given) => {
				const outcome = runTopic(cool, { ...given, unitW: undefined }, context);
				if (outcome.status !== 'answered') return;
				const unit = value(outcome.sizing, 'unit');
				if (Number.isNaN(unit)) return;
				expect(unit).toBeGreaterThanOrEqual(value(outcome.sizing, 'heatGain') * (1 - 1e-9));
			}),
			{ numRuns: 300 },
		);
	});

	test('a pipe that passes leaves the pressure wanted and runs calm', () => {
		fc.assert(
			fc.property(questions(pipe), (given) => {
				const outcome = runTopic(pipe, given, context);
				if (outcome.status !== 'answered') return;
				const passes = outcome.sizing.results.find((one) => one.name === 'verdict')?.value === 'passes';
				const wanted =
					(given.fixtureKPa as number | undefined) ??
					Number(outcome.sizing.assumed.find((one) => one.name === 'fixtureKPa')?.value);
				const good =
					value(outcome.sizing, 'pressureAtFixture') >= wanted && value(outcome.sizing, 'velocity') <= 2.4;
				expect(passes).toBe(good);
			}),
			{ numRuns: 1000 },
		);
	});
});
