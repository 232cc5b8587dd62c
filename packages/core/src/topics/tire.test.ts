import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { largestLoadIndex, smallestLoadIndex } from '../tables/tires.js';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import type { Sizing } from '../topic/sizing.js';
import { tire } from './tire.js';

const context = { ...defaultContext, units: 'metric' } as const;
const psi = 6.894757293168;

function outcomeOf(given: Readonly<Record<string, unknown>>) {
	return runTopic(tire, given, context);
}
function answered(given: Readonly<Record<string, unknown>>): Sizing {
	const outcome = outcomeOf(given);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	return outcome.sizing;
}
function value(sizing: Sizing, name: string) {
	return sizing.results.find((result) => result.name === name)?.value;
}
const codes = (sizing: Sizing) => sizing.findings.map((finding) => finding.code);

const single = { loadIndex: 116, axleLoadKg: 2240 };

describe('load against the load index', () => {
	test('two tires of index 116 under 2240 kg', () => {
		const sizing = answered(single);
		expect(sizing.headline).toBe('Enough: the tires carry 2500 kg, 260 kg more than the axle has');
		expect(value(sizing, 'capacity')).toBe(2500);
		expect(value(sizing, 'reserve')).toBe(260);
		expect(value(sizing, 'neededLoadIndex')).toBe(112);
		expect(codes(sizing)).toEqual([]);
		expect(sizing.tipping[0]?.value).toBe(2500);
	});

	test('exactly the rating passes, a kilogram more does not', () => {
		expect(value(answered({ ...single, axleLoadKg: 2500 }), 'verdict')).toBe('enough');
		const over = answered({ ...single, axleLoadKg: 2501 });
		expect(value(over, 'verdict')).toBe('too weak');
		expect(codes(over)).toEqual(['tire-overloaded']);
		expect(over.findings[0]).toMatchObject({ severity: 'danger' });
		expect(over.findings[0]?.text).toContain('1 kg too much');
		expect(over.findings[0]?.text).toContain('load index 117');
	});

	test('twins count four tires of the second index', () => {
		const sizing = answered({ loadIndex: 121, dualLoadIndex: 120, arrangement: 'twin', axleLoadKg: 4000 });
		expect(value(sizing, 'capacity')).toBe(5600);
		expect(codes(sizing)).toContain('twins-share');
		expect(codes(answered({ ...single }))).not.toContain('twins-share');
	});

	test('the printed marking is read whole', () => {
		const sizing = answered({ marking: '121/120R', arrangement: 'twin', axleLoadKg: 4000 });
		expect(value(sizing, 'capacity')).toBe(5600);
		expect(value(sizing, 'speedLimit')).toBeCloseTo(170 / 3.6, 9);
		expect(value(answered({ marking: '116 R', axleLoadKg: 2240 }), 'capacity')).toBe(2500);
	});

	test('the pattern finds markings, not watts or ratios', () => {
		const { type } = tire.fields.marking;
		const pattern = type.sort === 'text' ? (type.pattern ?? '') : '';
		const find = (text: string) => text.match(new RegExp(pattern, 'giu'));
		expect(find('LT225/75R16 115/112R tires')).toEqual(['115/112R']);
		expect(find('dually 115/112, rear axle')).toEqual(['115/112']);
		expect(find('a 116R tire')).toEqual(['116R']);
		for (const text of [
			'100W',
			'2 x 100 W',
			'120/240 V',
			'12/24 V',
			'80 L',
			'100l',
			'75 m',
			'90 s',
			'1/2',
			'225/75R16',
		]) {
			expect(find(text), text).toBeNull();
		}
	});

	test('a passenger tire counts for its rating over 1.10', () => {
		const sizing = answered({ loadIndex: 105, axleLoadKg: 1600, construction: 'passenger' });
		expect(value(sizing, 'capacity')).toBeCloseTo(1850 / 1.1, 9);
		expect(codes(sizing)).toContain('passenger-tire');
		expect(codes(answered({ loadIndex: 105, axleLoadKg: 1600 }))).not.toContain('passenger-tire');
	});

	test('little in hand is said', () => {
		expect(codes(answered({ ...single, axleLoadKg: 2300 }))).toContain('small-tire-reserve');
		expect(codes(answered({ ...single, axleLoadKg: 2270 }))).not.toContain('small-tire-reserve');
	});

	test('no index in the table carries it', () => {
		const sizing = answered({ loadIndex: 130, axleLoadKg: 5000 });
		expect(value(sizing, 'neededLoadIndex')).toBeUndefined();
		expect(sizing.findings[0]?.text).toContain('no load index in my table');
	});

	test('never called enough above the table, needed index always enough', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: smallestLoadIndex, max: largestLoadIndex }),
				fc.double({ min: 100, max: 4000, noNaN: true }),
				fc.constantFrom('commercial', 'passenger'),
				(loadIndex, axleLoadKg, construction) => {
					const sizing = answered({ loadIndex, axleLoadKg, construction });
					const isEnough = (value(sizing, 'capacity') as number) >= axleLoadKg;
					expect(value(sizing, 'verdict')).toBe(isEnough ? 'enough' : 'too weak');
					expect(codes(sizing).includes('tire-overloaded')).toBe(!isEnough);
					const needed = value(sizing, 'neededLoadIndex') as number | undefined;
					if (needed !== undefined) {
						expect(value(answered({ loadIndex: needed, axleLoadKg, construction }), 'verdict')).toBe(
							'enough',
						);
						if (needed > smallestLoadIndex) {
							expect(value(answered({ loadIndex: needed - 1, axleLoadKg, construction }), 'verdict')).toBe(
								'too weak',
							);
						}
					}
				},
			),
		);
	});
});

describe('speed', () => {
	test('H ends at 210 km/h, not between G and J', () => {
		expect(value(answered({ ...single, speedSymbol: 'H' }), 'speedLimit')).toBeCloseTo(210 / 3.6, 9);
	});
	test('driven faster than the symbol', () => {
		expect(codes(answered({ ...single, speedSymbol: 'N', speedMS: 141 / 3.6 }))).toContain(
			'speed-above-symbol',
		);
		expect(codes(answered({ ...single, speedSymbol: 'N', speedMS: 140 / 3.6 }))).not.toContain(
			'speed-above-symbol',
		);
	});
});

describe('pressure', () => {
	const rated = { ...single, referencePressureKpa: 80 * psi };

	test('in proportion to the load, never below the label', () => {
		const least = value(answered(rated), 'pressureAtLeast') as number;
		expect(least / psi).toBeCloseTo((80 * 2240) / 2500, 9);
		expect(value(answered({ ...rated, labelPressureKpa: 75 * psi }), 'pressureAtLeast')).toBeCloseTo(
			75 * psi,
			9,
		);
		expect(value(answered({ ...rated, labelPressureKpa: 60 * psi }), 'pressureAtLeast')).toBeCloseTo(
			least,
			9,
		);
	});

	test('too little for the load is a danger', () => {
		const low = answered({ ...rated, pressureKpa: 70 * psi });
		expect(codes(low)).toContain('under-inflated');
		expect(low.findings.find((one) => one.code === 'under-inflated')?.severity).toBe('danger');
		expect(codes(answered({ ...rated, pressureKpa: 72 * psi }))).not.toContain('under-inflated');
	});

	test('enough in the shop, too little in the cold', () => {
		expect(codes(answered({ ...rated, pressureKpa: 73 * psi, temperatureC: -20 }))).toContain(
			'under-inflated',
		);
	});

	test('above the sidewall', () => {
		expect(codes(answered({ ...rated, pressureKpa: 81 * psi }))).toContain('above-sidewall-pressure');
		expect(codes(answered({ ...rated, pressureKpa: 80 * psi }))).not.toContain('above-sidewall-pressure');
	});

	test('below the door label', () => {
		const given = { pressureKpa: 65 * psi, temperatureC: -10, labelPressureKpa: 60 * psi };
		expect(codes(answered(given))).toContain('below-label-pressure');
		expect(codes(answered({ ...given, labelPressureKpa: 55 * psi }))).not.toContain('below-label-pressure');
	});

	test('65 psi at 20 °C is 56.8 psi at -10 °C', () => {
		const sizing = answered({ pressureKpa: 65 * psi, temperatureC: -10 });
		expect((value(sizing, 'pressureNow') as number) / psi).toBeCloseTo(56.84, 1);
		const setThere = value(sizing, 'setForNow') as number;
		expect(value(answered({ pressureKpa: setThere, temperatureC: -10 }), 'pressureNow')).toBeCloseTo(
			65 * psi,
			6,
		);
	});
});

test('the load on one tire counts for every tire of the axle', () => {
	const byAxle = answered({ loadIndex: 116, axleLoadKg: 1800 });
	expect(value(answered({ loadIndex: 116, tireLoadKg: 900 }), 'reserve')).toBe(value(byAxle, 'reserve'));
	const both = answered({ loadIndex: 116, tireLoadKg: 950, axleLoadKg: 1800 });
	expect(value(both, 'reserve')).toBeCloseTo((value(byAxle, 'reserve') as number) - 100, 9);
});

describe('what is asked and refused', () => {
	test.each([
		[{}, 'loadIndex'],
		[{ loadIndex: 116 }, 'axleLoadKg'],
		[{ pressureKpa: 450 }, 'loadIndex'],
		[{ loadIndex: 121, axleLoadKg: 4000, arrangement: 'twin' }, 'dualLoadIndex'],
	])('%j asks for %s', (given, name) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'needs-input' && outcome.missing[0]?.name).toBe(name);
	});

	test.each([
		[{ loadIndex: 118, dualLoadIndex: 121, axleLoadKg: 2000 }, 'contradiction', 'dualLoadIndex'],
		[{ marking: 'heavy', axleLoadKg: 2000 }, 'out-of-range', 'marking'],
		[{ marking: 'R121', axleLoadKg: 2000 }, 'out-of-range', 'marking'],
		[{ marking: '131/130R', axleLoadKg: 2000 }, 'out-of-range', 'loadIndex'],
		[{ loadIndex: 69, axleLoadKg: 2000 }, 'out-of-range', 'loadIndex'],
		[{ loadIndex: 116, axleLoadKg: -5 }, 'out-of-range', 'axleLoadKg'],
		[{ pressureKpa: 40, temperatureC: -50, setTemperatureC: 60 }, 'impossible', 'pressureKpa'],
	])('%j is refused: %s', (given, code, field) => {
		const outcome = outcomeOf(given);
		expect(outcome.status === 'refused' && outcome.refusals[0]).toMatchObject({ code, field });
	});
});
