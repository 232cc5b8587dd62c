import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answered, asked, codesOf, eu, refused, resultsOf, us } from '../../../../tests/reference/answers.js';
import { typicalBurners } from '../tables/burners.js';
import { lowerHeatingValueWhPerKg, lowerHeatingValueWhPerL } from '../tables/fuels.js';
import { sizingSchema } from '../topic/sizing.js';
import { fuel } from './fuel.js';

const lb = 0.45359237;
const btuH = 0.29307107;
const furnace = { name: 'furnace', powerW: 12_000 * btuH };
const cylinder = { fuel: 'propane', amountKg: 20 * lb };

describe('how long it burns', () => {
	test('20 lb of propane with a furnace of 12,000 Btu/h', () => {
		const sizing = answered(fuel, { ...cylinder, burners: [furnace] });
		expect(sizing.headline).toBe('33.1 h of burning: 20 lb of propane at 12000 Btu/h');
		expect(sizing.because).toBe('At 8 h a day that is 4.1 days; without a stop, 1.3 days.');
		expect(sizingSchema.parse(sizing)).toEqual(sizing);
		// 20 lb × 19,900 Btu/lb over 12,000 Btu/h.
		expect(resultsOf(fuel, { ...cylinder, burners: [furnace] }).burnTime).toBeCloseTo(
			(20 * 19_900) / 12_000,
			4,
		);
	});

	test('a plate by the higher heating value burns less, and the answer says how much longer', () => {
		const sizing = answered(fuel, { ...cylinder, burners: [furnace] });
		expect(sizing.neighbours.at(-1)).toMatchObject({
			choice: 'plates by the higher heating value',
			text: '35.9 h',
		});
		const higher = resultsOf(fuel, { ...cylinder, basis: 'higher', burners: [furnace] });
		expect(higher.burnTime).toBeCloseTo((20 * 21_594) / 12_000, 4);
	});

	test('a plate of the output takes the efficiency besides', () => {
		const time = (burner: object, more = {}) =>
			Number(resultsOf(fuel, { ...cylinder, burners: [burner], ...more }).burnTime);
		const input = time({ ...furnace, rating: 'input' });
		expect(time({ ...furnace, rating: 'output' })).toBeCloseTo(0.8 * input, 9);
		expect(time({ ...furnace, rating: 'output' }, { efficiency: 0.95 })).toBeCloseTo(0.95 * input, 9);
	});

	test('plates of gas heaters rate the input in North America and the output in Europe', () => {
		const assumed = (context: typeof us) =>
			answered(fuel, { ...cylinder, burners: [furnace] }, context).assumed.find(({ name }) =>
				name.endsWith('rating'),
			)?.value;
		expect(assumed(us)).toBe('input');
		expect(assumed(eu)).toBe('output');
		const diesel = { fuel: 'diesel', volumeL: 10, burners: [{ name: 'heater', powerW: 2000 }] };
		expect(answered(fuel, diesel, us).assumed.find(({ name }) => name.endsWith('rating'))?.value).toBe(
			'output',
		);
	});

	test('half a load burns twice as long', () => {
		const at = (duty: number) =>
			Number(resultsOf(fuel, { ...cylinder, burners: [{ ...furnace, duty }] }).burnTime);
		expect(at(0.5)).toBeCloseTo(2 * at(1), 9);
		expect(answered(fuel, { ...cylinder, burners: [{ ...furnace, setting: 'half' }] }).headline).toBe(
			'66.3 h of burning: 20 lb of propane at 50 % of 12000 Btu/h',
		);
	});

	test('of a generator little comes out as electricity', () => {
		const given = {
			fuel: 'gasoline',
			volumeL: 10,
			isContent: true,
			burners: [{ name: 'generator', powerW: 1000 }],
		};
		expect(resultsOf(fuel, given).burnTime).toBeCloseTo(
			(10 * lowerHeatingValueWhPerL('gasoline') * 0.15) / 1000,
			6,
		);
		expect(codesOf(fuel, given)).toContain('generator-fumes');
	});
});

describe('what is in the store', () => {
	const there = (given: object) =>
		Number(resultsOf(fuel, { burners: [{ powerW: 1000 }], ...given }).fuelThere);

	test('80 % of a propane container, all of it where the liquid was named', () => {
		const kgPerL = lowerHeatingValueWhPerL('propane') / lowerHeatingValueWhPerKg('propane');
		expect(there({ fuel: 'propane', volumeL: 60 })).toBeCloseTo(0.8 * 60 * kgPerL, 9);
		expect(there({ fuel: 'propane', volumeL: 60, isContent: true })).toBeCloseTo(60 * kgPerL, 9);
		expect(answered(fuel, { fuel: 'propane', volumeL: 60, burners: [furnace] }).sources.join()).toMatch(
			/NFPA 58/,
		);
	});

	test("what the pick-up leaves in a tank, a quarter in the vehicle's own", () => {
		expect(there({ fuel: 'diesel', volumeL: 10 })).toBeCloseTo(9.5, 9);
		expect(there({ fuel: 'diesel', volumeL: 80, mainTank: true })).toBeCloseTo(60, 9);
		expect(there({ fuel: 'diesel', volumeL: 10, usable: 0.9 })).toBeCloseTo(9, 9);
	});

	test('several, and how full they are', () => {
		expect(there({ ...cylinder, containers: 2, level: 0.5 })).toBeCloseTo(20 * lb, 9);
	});

	test('named by mass and volume, the smaller counts', () => {
		expect(there({ ...cylinder, volumeL: 10, isContent: true })).toBeLessThan(10 * 0.51);
		expect(there({ ...cylinder, volumeL: 100 })).toBeCloseTo(20 * lb, 9);
	});

	test('of butane the mass is asked for', () => {
		expect(asked(fuel, { fuel: 'butane', volumeL: 10, burners: [furnace] })).toMatchObject([
			{ name: 'amountKg' },
		]);
	});

	test('a mass is of propane, a volume may be of anything', () => {
		const heater = { name: 'heater', powerW: 2000 };
		expect(answered(fuel, { amountKg: 5, burners: [heater] }).assumed).toMatchObject(
			expect.arrayContaining([expect.objectContaining({ name: 'fuel', value: 'propane', confirm: true })]),
		);
		expect(asked(fuel, { volumeL: 10, burners: [heater] })).toMatchObject([{ name: 'fuel' }]);
	});

	test('no store of nothing', () => {
		expect(refused(fuel, { ...cylinder, amountKg: 0, burners: [furnace] })).toMatchObject([
			{ code: 'out-of-range', field: 'amountKg' },
		]);
		expect(refused(fuel, { ...cylinder, burners: [{ ...furnace, durationH: 30 }] })).toMatchObject([
			{ field: 'burners' },
		]);
	});
});

describe('for the days of a trip', () => {
	const weekend = {
		amountKg: 11 * lb,
		stay: 'weekend',
		burners: [
			{ name: 'cooktop', durationH: 1 },
			{ name: 'heater', durationH: 8, duty: 0.5 },
		],
	};

	test('11 lb do a weekend', () => {
		const sizing = answered(fuel, weekend);
		expect(sizing.headline).toBe('Enough for 2 days: 7.2 lb of 11 lb of propane');
		expect(sizing.assumed.map(({ name }) => name)).toContain('wantedH');
		expect(sizing.tipping).toMatchObject([{ name: 'durationH' }]);
	});

	test('up to the hours of the tipping it is enough, and not above', () => {
		const tipped = answered(fuel, weekend).tipping[0]?.value as number;
		const [cooktop, heater] = weekend.burners;
		const with_ = (durationH: number) =>
			codesOf(fuel, { ...weekend, burners: [cooktop, { ...heater, durationH }] });
		expect(with_(tipped - 0.01)).not.toContain('fuel-too-little');
		expect(with_(tipped + 0.01)).toContain('fuel-too-little');
	});

	test('what lacks is named', () => {
		const sizing = answered(fuel, {
			amountKg: 11 * lb,
			wantedH: 72,
			burners: [{ ...furnace, powerW: 16_000 * btuH, durationH: 8 }],
		});
		expect(sizing.headline).toBe('Not enough for 3 days: 11 lb of propane last 1.7 days');
		expect(sizing.findings[0]).toMatchObject({ code: 'fuel-too-little', severity: 'warning' });
		// 3 × 8 h × 16,000 Btu/h / 19,900 Btu/lb = 19.3 lb
		expect(sizing.findings[0]?.text).toBe(
			'19.3 lb of propane are needed for 3 days and 11 lb can be burned: 8.3 lb more, or fewer hours.',
		);
	});

	test('the smallest cylinder that holds it, or as many of the largest', () => {
		const need = (days: number) =>
			answered(fuel, { fuel: 'propane', wantedH: 24 * days, burners: [{ ...furnace, durationH: 8 }] })
				.headline;
		expect(need(1)).toBe('4.9 lb of propane for 1 day: a 5 lb cylinder');
		expect(need(4)).toBe('19.3 lb of propane for 4 days: a 20 lb cylinder');
		expect(need(10)).toBe('48.3 lb of propane for 10 days: 2 cylinders of 30 lb');
	});

	test('a tank of diesel with what its pick-up leaves', () => {
		const given = {
			fuel: 'diesel',
			wantedH: 168,
			burners: [{ name: 'heater', powerW: 2000, durationH: 10 }],
		};
		const results = resultsOf(fuel, given, eu);
		const litres = (7 * 10 * 2000) / 0.8 / lowerHeatingValueWhPerL('diesel');
		expect(results.fuelNeeded).toBeCloseTo(litres, 9);
		expect(results.tank).toBeCloseTo(litres / 0.95, 9);
	});

	test('what a trip needs lasts as long as the trip', () => {
		fc.assert(
			fc.property(
				fc.constantFrom('propane', 'butane', 'diesel', 'gasoline'),
				fc.constantFrom(...typicalBurners),
				fc.double({ min: 1, max: 60, noNaN: true }),
				fc.double({ min: 0.1, max: 24, noNaN: true }),
				fc.double({ min: 0.05, max: 1, noNaN: true }),
				(name, { name: burner }, days, durationH, duty) => {
					const burners = [{ name: burner, durationH, duty }];
					const needed = Number(resultsOf(fuel, { fuel: name, wantedH: 24 * days, burners }).fuelNeeded);
					const isGas = name === 'propane' || name === 'butane';
					const amount = isGas ? { amountKg: needed } : { volumeL: needed, isContent: true };
					fc.pre(needed > 0.2 && needed < 500);
					expect(resultsOf(fuel, { fuel: name, ...amount, burners }).days).toBeCloseTo(days, 6);
				},
			),
			{ numRuns: 60 },
		);
	});

	test('what nobody said of a burner is typical and marked so', () => {
		const names = answered(fuel, { amountKg: 5, burners: [{ name: 'stove' }] }, eu)
			.assumed.filter(({ confirm }) => confirm)
			.map(({ name }) => name);
		expect(names).toEqual(
			expect.arrayContaining(['burners.stove.powerW', 'burners.stove.durationH', 'burners.stove.rating']),
		);
		expect(asked(fuel, { amountKg: 5, wantedH: 48, burners: [{ powerW: 1000 }] })).toMatchObject([
			{ name: 'burners' },
		]);
		expect(asked(fuel, { amountKg: 5, burners: [{ name: 'forge' }] })).toMatchObject([
			{ question: 'How much does the forge burn or give (Btu/h or kW)?' },
		]);
	});

	test('the hours named once go for every burner without its own', () => {
		const given = {
			amountKg: 5,
			hoursPerDayH: 2,
			burners: [
				{ name: 'stove', powerW: 2000 },
				{ name: 'oven', powerW: 2000, durationH: 1 },
			],
		};
		expect(resultsOf(fuel, given).days).toBeCloseTo((5 * lowerHeatingValueWhPerKg('propane')) / 6000, 9);
	});

	test('fuel named as a rate is taken as it is', () => {
		const diesel = {
			fuel: 'diesel',
			volumeL: 10,
			isContent: true,
			burners: [{ name: 'heater', burnLMin: 0.25 / 60, durationH: 8 }],
		};
		expect(resultsOf(fuel, diesel).days).toBeCloseTo(5, 9);
		expect(
			resultsOf(fuel, { amountKg: 2, burners: [{ name: 'kocher', burnKgH: 0.15, durationH: 1 }] }).days,
		).toBeCloseTo(2 / 0.15, 9);
	});
});

describe('what must be known of it', () => {
	test('butane in the cold gives nothing', () => {
		const butane = { fuel: 'butane', amountKg: 5, burners: [furnace] };
		const severity = (more: object) =>
			answered(fuel, { ...butane, ...more }).findings.find(({ code }) => code === 'butane-cold')?.severity;
		expect(severity({})).toBe('note');
		expect(severity({ coldC: 5 })).toBe('note');
		expect(severity({ coldC: 0 })).toBe('warning');
		expect(codesOf(fuel, { ...cylinder, coldC: -10, burners: [furnace] })).toContain('cylinder-cold');
	});

	test('no flue and no alarm are dangers', () => {
		const findings = answered(fuel, {
			...cylinder,
			unvented: true,
			alarm: false,
			burners: [furnace],
		}).findings;
		expect(findings.filter(({ severity }) => severity === 'danger').map(({ code }) => code)).toEqual([
			'unvented-heater',
			'no-carbon-monoxide-alarm',
		]);
	});

	test('a heater at full burn for hours is noted, and what half of it would be', () => {
		const hours = (duty?: number) => ({
			...cylinder,
			burners: [{ ...furnace, durationH: 8, ...(duty === undefined ? {} : { duty }) }],
		});
		expect(codesOf(fuel, hours())).toEqual(['cycling-burner']);
		expect(codesOf(fuel, hours(0.5))).toEqual([]);
		expect(answered(fuel, hours()).neighbours.map(({ choice }) => choice)).toContain(
			'furnace at half of full burn',
		);
	});

	test('gas has the cautions of gas, other fuels theirs', () => {
		const gas = answered(fuel, { ...cylinder, burners: [furnace] }).cautions.join(' ');
		for (const word of [/carbon-monoxide alarm/, /upright/, /leaks/, /gas detector/, /licensed gas fitter/])
			expect(gas).toMatch(word);
		const diesel = answered(fuel, {
			fuel: 'diesel',
			volumeL: 10,
			burners: [{ name: 'heater' }],
		}).cautions.join(' ');
		expect(diesel).toMatch(/carbon-monoxide alarm/);
		expect(diesel).not.toMatch(/gas detector/);
	});
});
