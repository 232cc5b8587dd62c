import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ChemistryName, chemistries, chemistryNames } from '../tables/batteries.js';
import {
	type Bank,
	bankClassV,
	capacityAh,
	cellsInSeries,
	chargeLimit,
	coldShare,
	cutoffVoltageV,
	dischargeLimit,
	energyWh,
	nominalVoltageV,
	requiredCapacityAh,
	unitsInSeries,
} from './bank.js';
import { chargeTime } from './charging.js';
import { capacityAtAh, peukertHours, ratedForAh } from './peukert.js';

const logarithmic = (min: number, max: number) =>
	fc.integer({ min: 0, max: 1_000_000 }).map((step) => min * (max / min) ** (step / 1_000_000));
const anyChemistry = fc.constantFrom(...chemistryNames).map((name) => chemistries[name]);

describe('voltages', () => {
	test.each([
		[12, 12],
		[12.8, 12],
		[14.4, 12],
		[25.6, 24],
		[36, 36],
		[51.2, 48],
		[54, 48],
		[18, null],
		[6, null],
		[900, null],
	])('%d V belongs to the class %s', (voltageV, classV) => {
		expect(bankClassV(voltageV)).toBe(classV);
	});

	test('cells, rated and cut-off voltage', () => {
		expect(cellsInSeries(chemistries.lifepo4, 48)).toBe(16);
		expect(nominalVoltageV(chemistries.lifepo4, 12)).toBeCloseTo(12.8, 9);
		expect(nominalVoltageV(chemistries.agm, 24)).toBe(24);
		expect(cutoffVoltageV(chemistries.agm, 12)).toBe(10.5);
		expect(cutoffVoltageV(chemistries.lifepo4, 24)).toBe(20);
	});

	test.each<[ChemistryName, number, number, number | null]>([
		['agm', 12, 12, 1],
		['agm', 12, 24, 2],
		['flooded', 6, 12, 2],
		['flooded', 6, 48, 8],
		['flooded', 2, 12, 6],
		['flooded', 8, 24, 3],
		['flooded', 8, 12, null],
		['lifepo4', 3.2, 12, 4],
		['lifepo4', 3.2, 48, 16],
		['lifepo4', 12.8, 48, 4],
		['lifepo4', 24, 12, null],
		['agm', 7, 24, null],
	])('%s of %d V for %d V: %s in series', (name, unitV, classV, series) => {
		expect(unitsInSeries(chemistries[name], unitV, classV)).toBe(series);
	});
});

describe('a bank of units', () => {
	const bank: Bank = {
		chemistry: chemistries.lifepo4,
		classV: 24,
		unitAh: 100,
		unitV: 12,
		series: 2,
		parallel: 3,
	};

	test('adds capacity in parallel and voltage in series', () => {
		expect(capacityAh(bank)).toBe(300);
		expect(energyWh(bank)).toBeCloseTo(7680, 9);
	});

	test("keeps the maker's limit of each unit, in parallel only", () => {
		expect(dischargeLimit(bank, 100)).toEqual({ limitA: 300, given: true });
		expect(dischargeLimit(bank, undefined)).toEqual({ limitA: 300, given: false });
		expect(chargeLimit(bank, 20)).toEqual({ limitA: 60, given: true });
		expect(chargeLimit(bank, undefined)).toEqual({ limitA: 150, given: false });
	});
});

describe('the cold', () => {
	test('where the tables end there is no figure', () => {
		expect(coldShare(chemistries.agm, -17.9)).toBeNull();
		expect(coldShare(chemistries.lifepo4, -20.1)).toBeNull();
		expect(coldShare(chemistries.lifepo4, -20)?.share).toBeCloseTo(0.7, 9);
	});

	test('rows from memory are marked so', () => {
		expect(coldShare(chemistries.agm, 10)?.source.mark).toBe('verified');
		expect(coldShare(chemistries.agm, 0)?.source.mark).toBe('from-memory');
		expect(coldShare(chemistries.lifepo4, 0)?.source.mark).toBe('practice');
	});

	test('colder never means more, in every chemistry', () => {
		fc.assert(
			fc.property(
				anyChemistry,
				fc.double({ min: -17.8, max: 60, noNaN: true }),
				fc.double({ min: 0, max: 30, noNaN: true }),
				(chemistry, temperatureC, warmer) => {
					const cold = coldShare(chemistry, temperatureC)?.share as number;
					const warm = coldShare(chemistry, temperatureC + warmer)?.share as number;
					expect(cold).toBeLessThanOrEqual(warm + 1e-12);
					expect(warm).toBeLessThanOrEqual(1);
					expect(cold).toBeGreaterThanOrEqual(0.4 - 1e-12);
				},
			),
			{ numRuns: 2000 },
		);
	});
});

test('more of anything that costs capacity never makes a smaller bank', () => {
	const factor = fc.double({ min: 1, max: 2, noNaN: true });
	const share = fc.double({ min: 0.05, max: 1, noNaN: true });
	fc.assert(
		fc.property(
			logarithmic(0.1, 5000),
			factor,
			factor,
			share,
			share,
			factor,
			(chargeAh, ageing, margin, depthOfDischarge, cold, more) => {
				const factors = { ageing, margin, depthOfDischarge, coldShare: cold };
				const plain = requiredCapacityAh(chargeAh, factors);
				expect(plain).toBeGreaterThanOrEqual(chargeAh);
				expect(requiredCapacityAh(chargeAh * more, factors)).toBeGreaterThanOrEqual(plain);
				expect(requiredCapacityAh(chargeAh, { ...factors, ageing: ageing * more })).toBeGreaterThanOrEqual(
					plain,
				);
				expect(
					requiredCapacityAh(chargeAh, { ...factors, depthOfDischarge: depthOfDischarge / more }),
				).toBeGreaterThanOrEqual(plain);
				expect(requiredCapacityAh(chargeAh, { ...factors, coldShare: cold / more })).toBeGreaterThanOrEqual(
					plain,
				);
				// Taken out again, exactly the charge comes back.
				expect((plain * depthOfDischarge * cold) / (ageing * margin)).toBeCloseTo(chargeAh, 6);
			},
		),
		{ numRuns: 2000 },
	);
});

describe("Peukert's law", () => {
	const rating = fc.record({
		ratedAh: logarithmic(5, 2000),
		ratedH: fc.constantFrom(5, 10, 20, 100),
		exponent: fc.double({ min: 1, max: 1.6, noNaN: true }),
	});

	test('gives the rating at the rated current', () => {
		fc.assert(
			fc.property(rating, (one) => {
				const ratedA = one.ratedAh / one.ratedH;
				expect(peukertHours(one, ratedA)).toBeCloseTo(one.ratedH, 6);
				expect(capacityAtAh(one, ratedA)).toBeCloseTo(one.ratedAh, 6);
			}),
		);
	});

	test('a larger current never gives more charge, and none gives more than the rating', () => {
		fc.assert(
			fc.property(rating, logarithmic(0.01, 2000), logarithmic(1, 50), (one, currentA, more) => {
				const slow = capacityAtAh(one, currentA);
				expect(slow).toBeLessThanOrEqual(one.ratedAh * (1 + 1e-12));
				expect(capacityAtAh(one, currentA * more)).toBeLessThanOrEqual(slow * (1 + 1e-12));
			}),
			{ numRuns: 2000 },
		);
	});

	test('the capacity chosen for a charge gives that charge at that current', () => {
		fc.assert(
			fc.property(rating, logarithmic(1, 5000), logarithmic(0.01, 2000), (one, chargeAh, currentA) => {
				const ratedAh = ratedForAh(chargeAh, currentA, one);
				expect(ratedAh).toBeGreaterThanOrEqual(chargeAh * (1 - 1e-12));
				const gives = capacityAtAh({ ...one, ratedAh }, currentA);
				expect(gives / chargeAh).toBeGreaterThanOrEqual(1 - 1e-9);
				// No larger than it has to be.
				expect(capacityAtAh({ ...one, ratedAh: ratedAh * 0.999 }, currentA)).toBeLessThan(chargeAh);
			}),
			{ numRuns: 2000 },
		);
	});
});

describe('constant current, then constant voltage', () => {
	/** The same charge stepped through in small slices of charge, knowing only the current at each state. */
	function stepped(
		capacityAh: number,
		currentA: number,
		from: number,
		to: number,
		name: ChemistryName,
	): number {
		const { taperH, tailRatePerH, chargeEfficiency } = chemistries[name];
		const slices = 20_000;
		const slice = (to - from) / slices;
		let hours = 0;
		for (let index = 0; index < slices; index += 1) {
			const state = from + (index + 0.5) * slice;
			const limitA = (tailRatePerH + (1 - state) / taperH) * capacityAh;
			hours += (slice * capacityAh) / (Math.min(currentA, limitA) * chargeEfficiency);
		}
		return hours;
	}

	test.each<[number, number, number, number, ChemistryName]>([
		[200, 50, 0.4, 0.9, 'lifepo4'],
		[200, 50, 0.4, 1, 'lifepo4'],
		[100, 100, 0, 1, 'lifepo4'],
		[200, 40, 0.5, 1, 'agm'],
		[200, 40, 0.9, 1, 'agm'],
		[100, 300, 0, 1, 'flooded'],
		[400, 5, 0.2, 1, 'gel'],
	])('%d Ah at %d A from %d to %d (%s) agrees with small steps', (capacity, currentA, from, to, name) => {
		const time = chargeTime({ capacityAh: capacity, currentA, from, to, chemistry: chemistries[name] });
		expect(time.totalH).toBeCloseTo(stepped(capacity, currentA, from, to, name), 3);
		expect(time.totalH).toBeCloseTo(time.constantH + time.taperH, 12);
	});

	const charge = fc.record({
		capacityAh: logarithmic(20, 2000),
		currentA: logarithmic(1, 500),
		from: fc.double({ min: 0, max: 0.9, noNaN: true }),
		rise: fc.double({ min: 0.01, max: 1, noNaN: true }),
		chemistry: anyChemistry,
	});

	test('no charge is quicker than its charge over its current, and the current never rises', () => {
		fc.assert(
			fc.property(charge, ({ capacityAh: capacity, currentA, from, rise, chemistry }) => {
				const to = Math.min(1, from + rise);
				const time = chargeTime({ capacityAh: capacity, currentA, from, to, chemistry });
				const least = ((to - from) * capacity) / (currentA * chemistry.chargeEfficiency);
				expect(time.totalH).toBeGreaterThanOrEqual(least * (1 - 1e-9));
				expect(time.endA).toBeLessThanOrEqual(currentA * (1 + 1e-12));
				expect(Number.isFinite(time.totalH)).toBe(true);
			}),
			{ numRuns: 2000 },
		);
	});

	test('a larger charger is never slower, a higher target never quicker, two halves make the whole', () => {
		fc.assert(
			fc.property(
				charge,
				fc.double({ min: 1, max: 4, noNaN: true }),
				({ capacityAh: capacity, currentA, from, rise, chemistry }, more) => {
					const to = Math.min(1, from + rise);
					const middle = (from + to) / 2;
					const hours = (start: number, end: number, amps: number) =>
						chargeTime({ capacityAh: capacity, currentA: amps, from: start, to: end, chemistry }).totalH;
					const whole = hours(from, to, currentA);
					expect(hours(from, to, currentA * more)).toBeLessThanOrEqual(whole * (1 + 1e-9));
					expect(hours(from, middle, currentA)).toBeLessThanOrEqual(whole * (1 + 1e-9));
					expect(hours(from, middle, currentA) + hours(middle, to, currentA)).toBeCloseTo(whole, 6);
				},
			),
			{ numRuns: 2000 },
		);
	});
});
