import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answered, asked, codesOf, eu, refused, resultsOf } from '../../../../tests/reference/answers.js';
import { sizingSchema } from '../topic/sizing.js';
import { inverter } from './inverter.js';

const named = { loads: [{ name: 'inverter', powerW: 2000 }], bankV: 12 };

describe('cable and fuse of an inverter', () => {
	test('2000 W at 12 V', () => {
		const sizing = answered(inverter, named);
		expect(sizing.headline).toBe('2000 W at 12 V: 300 A fuse, 2/0 AWG (236 A at low battery)');
		expect(sizing.chain.map((one) => one.topic)).toEqual(['wire']);
		expect(sizing.chain[0]?.headline).toContain('300 A fuse');
		expect(sizing.neighbours.map((one) => one.choice)).toEqual(['24 V bank', '48 V bank']);
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
		const results = resultsOf(inverter, named);
		expect(results.bankCurrent).toBeCloseTo(2000 / (10 * 0.85), 9);
		expect(results.designCurrent).toBeCloseTo((1.25 * 2000) / (10 * 0.85), 9);
		expect(results).toMatchObject({ device: 300, conductor: '2/0 AWG', idlePerDay: 480 });
		expect(results.heat).toBeCloseTo(2000 / 0.85 - 2000, 9);
	});

	test('the same from a field as from the list', () => {
		expect(resultsOf(inverter, { ratedW: 2000, bankV: 12 })).toEqual(resultsOf(inverter, named));
	});

	test('the cut-off follows the chemistry; unnamed, the safe side', () => {
		const at = (given: object) => Number(resultsOf(inverter, { ...named, ...given }).bankCurrent);
		expect(at({ chemistry: 'agm' })).toBeCloseTo(2000 / (10.5 * 0.85), 9);
		expect(at({ chemistry: 'lifepo4' })).toBeCloseTo(2000 / (10 * 0.85), 9);
		expect(at({})).toBe(Math.max(at({ chemistry: 'agm' }), at({ chemistry: 'lifepo4' })));
		expect(at({ cutoffV: 11 })).toBeCloseTo(2000 / (11 * 0.85), 9);
	});

	test('twice the voltage, half the current', () => {
		const at = (bankV: number) => Number(resultsOf(inverter, { ratedW: 3000, bankV }).bankCurrent);
		expect(at(24) * 2).toBeCloseTo(at(12), 9);
		expect(at(48) * 4).toBeCloseTo(at(12), 9);
	});

	test('what one cable does not carry, two in parallel do', () => {
		const sizing = answered(inverter, { ratedW: 3000, bankV: 12 });
		expect(sizing.results.find((result) => result.name === 'conductor')?.value).toMatch(/^2 × /);
		expect(sizing.findings.map((one) => one.code)).toContain('parallel-conductors');
	});

	test('metric sizes in Europe, where 230 V is the mains', () => {
		const sizing = answered(inverter, { ...named, mainsV: 230 }, eu);
		expect(sizing.headline).toBe('2000 W at 12 V: 300 A fuse, 70 mm² (236 A at low battery)');
	});

	test('the same fuse carries up to what is said', () => {
		const mostW = answered(inverter, named).tipping[0]?.value as number;
		expect(resultsOf(inverter, { ratedW: Math.floor(mostW), bankV: 12 }).device).toBe(300);
		expect(resultsOf(inverter, { ratedW: Math.ceil(mostW) + 1, bankV: 12 }).device).toBe(350);
	});
});

describe('the inverter for a set of loads', () => {
	const loads = [
		{ name: 'microwave', powerW: 1500 },
		{ name: 'laptop', powerW: 60 },
	];

	test('a size above the sum, with the surge of the worst starter', () => {
		const sizing = answered(inverter, { loads, bankV: 24 });
		expect(sizing.headline).toMatch(/^2000 W inverter for 1560 W; \d+ A fuse, .+ at 24 V$/);
		expect(sizing.neighbours.slice(0, 2)).toMatchObject([
			{ choice: '1500 W', passes: false },
			{ choice: '2500 W', passes: true },
		]);
		expect(resultsOf(inverter, { loads, bankV: 24 })).toMatchObject({
			continuousLoad: 1560,
			surgeLoad: 2310,
			inverterPower: 2000,
		});
	});

	test('an inverter beside its loads is judged', () => {
		const of = (powerW: number) => answered(inverter, { loads: [{ name: 'inverter', powerW }, ...loads] });
		expect(of(2000).headline).toMatch(/^2000 W is enough for 1560 W; /);
		expect(of(1500).headline).toBe('1500 W is too small for 1560 W at once');
		expect(of(1500).findings.map((one) => one.code)).toContain('inverter-overloaded');
		expect(of(1600).findings.map((one) => one.code)).toContain('inverter-loaded-hard');
		expect(of(2000).findings.map((one) => one.code)).not.toContain('inverter-loaded-hard');
	});

	test('one that runs the loads but may not start them is not called enough', () => {
		const compressor = [{ name: 'AC', powerW: 1500 }];
		const { headline } = answered(inverter, { ratedW: 2000, surgeW: 4000, loads: compressor });
		expect(headline).toBe('2000 W runs 1500 W but may not start it: 4500 W for a moment');
	});

	test('surge', () => {
		const compressor = [{ name: 'AC', powerW: 1500 }];
		expect(codesOf(inverter, { ratedW: 2000, surgeW: 4000, loads: compressor })).toContain('surge-too-small');
		expect(codesOf(inverter, { ratedW: 2000, surgeW: 5000, loads: compressor })).not.toContain(
			'surge-too-small',
		);
	});
});

describe('the bank behind it', () => {
	test.each([
		[
			'over the protection',
			{ unitAh: 100, unitCount: 2, protectionA: 100 },
			'draw-over-protection',
			'danger',
		],
		['over the usual rate', { unitAh: 200 }, 'draw-over-protection', 'warning'],
		['protection of one, named alone', { protectionA: 100 }, 'draw-over-protection', 'danger'],
		[
			'only the surge is over it',
			{ unitAh: 100, unitCount: 3, protectionA: 100 },
			'surge-over-protection',
			'note',
		],
	])('%s', (_, given, code, severity) => {
		const sizing = answered(inverter, { ...named, chemistry: 'lifepo4', ...given });
		expect(sizing.findings.find((one) => one.code === code)?.severity).toBe(severity);
	});

	test('is the decision where it is too weak', () => {
		expect(answered(inverter, { ...named, chemistry: 'lifepo4', protectionA: 100 }).headline).toBe(
			'2000 W is too much for this bank: 236 A, it gives 100 A',
		);
	});

	test('large enough there is no finding, unnamed it is said', () => {
		const codes = codesOf(inverter, { ...named, chemistry: 'lifepo4', unitAh: 300, unitCount: 2 });
		expect(codes).toEqual([]);
		expect(codesOf(inverter, named)).toEqual(['bank-limit-unknown']);
	});
});

test('a closed space and a large current are warned of', () => {
	expect(codesOf(inverter, { ...named, enclosed: true })).toContain('inverter-enclosed');
	expect(codesOf(inverter, { ...named, enclosed: false })).not.toContain('inverter-enclosed');
	expect(codesOf(inverter, { ratedW: 3000, bankV: 12 })).toContain('higher-voltage-better');
	expect(codesOf(inverter, { ratedW: 3000, bankV: 24 })).not.toContain('higher-voltage-better');
	const cautions = answered(inverter, named).cautions.join(' ');
	for (const word of ['one place only', 'free air', 'licensed electrician', 'breaking capacity'])
		expect(cautions).toContain(word);
});

describe('no answer', () => {
	test('what is missing is asked for', () => {
		expect(asked(inverter, {})[0]?.question).toContain('Which inverter');
		expect(asked(inverter, { loads: [{ name: 'inverter' }] })[0]?.name).toBe('ratedW');
		expect(asked(inverter, { loads: [{ name: 'zorgblat' }] })[0]?.question).toContain('zorgblat');
	});

	test.each([
		['two inverters', { ...named, ratedW: 3000 }, 'ratedW', 'contradiction'],
		['5000 W at 12 V', { ratedW: 5000, bankV: 12 }, 'ratedW', 'impossible'],
		['a cut-off of 24 V at 12 V', { ...named, cutoffV: 24 }, 'cutoffV', 'contradiction'],
		['a bank of 18 V', { ratedW: 500, bankV: 18 }, 'bankV', 'out-of-range'],
		['loads for a house', { loads: [{ name: 'oven', powerW: 9000 }] }, 'loads', 'not-covered'],
		['watts against amps', { loads: [{ name: 'fan', powerW: 10, currentA: 10 }] }, 'loads', 'contradiction'],
		[
			'3 of 12 V in 24 V',
			{ ...named, bankV: 24, unitV: 12, unitAh: 100, unitCount: 3 },
			'unitCount',
			'impossible',
		],
	])('%s', (_, given, field, code) => {
		expect(refused(inverter, given)[0]).toMatchObject({ field, code });
	});
});

test('the fuse carries 125 % of the current and the conductor is protected by it', () => {
	fc.assert(
		fc.property(
			fc.record({
				ratedW: fc.integer({ min: 100, max: 3000 }),
				bankV: fc.constantFrom(12, 24, 48),
				inverterEfficiency: fc.double({ min: 0.85, max: 1, noNaN: true }),
				lengthM: fc.double({ min: 0.3, max: 4, noNaN: true }),
			}),
			(given) => {
				const sizing = answered(inverter, given);
				const value = (name: string) => Number(sizing.results.find((one) => one.name === name)?.value);
				expect(value('device')).toBeGreaterThanOrEqual(value('designCurrent') - 1e-9);
				const wire = sizing.chain[0];
				const ampacity = Number(wire?.results.find((one) => one.name === 'ampacity')?.value);
				expect(value('device')).toBeLessThanOrEqual(ampacity + 1e-9);
				// Power in is power out and heat.
				const lowV = Number(sizing.assumed.find((one) => one.name === 'cutoffV')?.value);
				expect(value('bankCurrent') * lowV).toBeCloseTo(given.ratedW + value('heat'), 6);
			},
		),
		{ numRuns: 150 },
	);
});
