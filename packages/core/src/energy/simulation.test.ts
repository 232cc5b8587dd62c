import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	daysBelow,
	type HourlyPowers,
	keepsReserve,
	runHours,
	type SimulatedBank,
	simulate,
	smallestArray,
	smallestBank,
} from './simulation.js';

function hours(values: Partial<Record<keyof HourlyPowers, readonly number[]>>, length: number): HourlyPowers {
	const of = (name: keyof HourlyPowers) =>
		Float64Array.from({ length }, (_, hour) => {
			const list = values[name] ?? [0];
			return list[hour % list.length] as number;
		});
	return { loadW: of('loadW'), solarW: of('solarW'), engineW: of('engineW'), shoreW: of('shoreW') };
}

const bank: SimulatedBank = { capacityWh: 1000, floor: 0.1, start: 1, chargeLimitW: 400, efficiency: 0.9 };

describe('runHours, worked by hand', () => {
	test('a load alone draws the bank down to its floor and is then not served', () => {
		const run = simulate(hours({ loadW: [250] }, 5), bank);
		// 1000 Wh with 100 Wh kept back: 900 Wh serve 3.6 h of 250 W.
		expect([...run.soc]).toEqual([0.75, 0.5, 0.25, 0.1, 0.1]);
		expect(run.servedWh).toBeCloseTo(900, 9);
		expect(run.unservedWh).toBeCloseTo(350, 9);
		expect(run.hoursUnserved).toBe(2);
		expect(run.lowestSoc).toBeCloseTo(0.1, 12);
		expect(run.lowestHour).toBe(3);
	});

	test('charging is held by the limit, then by the room; what the sun has left is spilled', () => {
		const run = simulate(hours({ solarW: [500] }, 3), { ...bank, start: 0.3 });
		// 400 W in, 360 Wh stored: 660, then 1000 - 660 = 340 Wh of room takes 377.8 W, then nothing.
		expect(run.soc[0]).toBeCloseTo(0.66, 12);
		expect(run.soc[1]).toBeCloseTo(1, 12);
		expect(run.spilledWh).toBeCloseTo(100 + (500 - 340 / 0.9) + 500, 9);
		expect(run.lostWh).toBeCloseTo(40 + (340 / 0.9) * 0.1, 9);
		expect(run.unusedWh).toBe(0);
	});

	test('the sun goes first: engine and shore that are not needed are unused, not spilled', () => {
		const run = runHours(hours({ loadW: [100], solarW: [200], shoreW: [300] }, 1), bank);
		expect(run.unusedWh).toBeCloseTo(300, 9);
		expect(run.spilledWh).toBeCloseTo(100, 9);
	});

	test('a bank that must not be charged still gives', () => {
		const run = runHours(hours({ solarW: [500, 0], loadW: [0, 50] }, 2), {
			...bank,
			start: 0.5,
			chargeLimitW: 0,
		});
		expect(run.spilledWh).toBe(500);
		expect(run.endSoc).toBeCloseTo(0.45, 12);
	});

	test('days below a share are counted by the calendar of the run', () => {
		const soc = Float64Array.from({ length: 72 }, (_, hour) => (hour === 30 ? 0.19 : 0.5));
		expect(daysBelow(soc, 0.2)).toBe(1);
		expect(daysBelow(soc, 0.19)).toBe(0);
		expect(daysBelow(soc, 0.6)).toBe(3);
	});

	test('lengths that differ and impossible banks are programming errors', () => {
		const powers = hours({}, 3);
		expect(() => runHours({ ...powers, solarW: new Float64Array(2) }, bank)).toThrow('length');
		expect(() => runHours(powers, { ...bank, capacityWh: 0 })).toThrow('no such bank');
	});
});

const power = (max: number) =>
	fc.array(fc.double({ min: 0, max, noNaN: true }), { minLength: 1, maxLength: 30 });
const anyHours = fc
	.record({ loadW: power(500), solarW: power(900), engineW: power(600), shoreW: power(600) })
	.map((values) => hours(values, 24 * 10));
const anyBank = fc.record({
	capacityWh: fc.double({ min: 50, max: 20_000, noNaN: true }),
	floor: fc.double({ min: 0, max: 0.5, noNaN: true }),
	start: fc.double({ min: 0.5, max: 1, noNaN: true }),
	chargeLimitW: fc.double({ min: 0, max: 2000, noNaN: true }),
	efficiency: fc.double({ min: 0.5, max: 1, noNaN: true }),
});

describe('laws', () => {
	test('no energy is made or lost unseen', () => {
		fc.assert(
			fc.property(anyHours, anyBank, (powers, anyOne) => {
				const run = runHours(powers, anyOne);
				const inWh = run.solarWh + run.engineWh + run.shoreWh;
				const outWh = run.servedWh + run.storedWh + run.lostWh + run.spilledWh + run.unusedWh;
				// What lies in the bank has its own rounding, hour by hour.
				const dustWh = 1e-9 * Math.max(1, inWh + run.demandWh) + 1e-12 * anyOne.capacityWh;
				expect(Math.abs(inWh - outWh)).toBeLessThanOrEqual(dustWh);
			}),
			{ numRuns: 300 },
		);
	});

	test('the state of charge stays between floor and full, and nothing is negative', () => {
		fc.assert(
			fc.property(anyHours, anyBank, (powers, anyOne) => {
				const run = simulate(powers, anyOne);
				for (const soc of run.soc) {
					expect(soc).toBeGreaterThanOrEqual(Math.min(anyOne.floor, anyOne.start) - 1e-12);
					expect(soc).toBeLessThanOrEqual(1 + 1e-12);
				}
				for (const value of [run.servedWh, run.unservedWh, run.lostWh, run.spilledWh, run.unusedWh]) {
					expect(value).toBeGreaterThanOrEqual(-1e-9);
				}
			}),
			{ numRuns: 200 },
		);
	});

	test('a larger bank and more sun never leave a smaller share', () => {
		fc.assert(
			fc.property(anyHours, anyBank, fc.double({ min: 1, max: 5, noNaN: true }), (powers, anyOne, factor) => {
				const before = runHours(powers, anyOne).lowestSoc;
				const larger = { ...anyOne, capacityWh: anyOne.capacityWh * factor };
				expect(runHours(powers, larger).lowestSoc).toBeGreaterThanOrEqual(before - 1e-9);
				const sunnier = { ...powers, solarW: powers.solarW.map((value) => value * factor) };
				expect(runHours(sunnier, anyOne).lowestSoc).toBeGreaterThanOrEqual(before - 1e-9);
			}),
			{ numRuns: 300 },
		);
	});

	test('the smallest bank keeps the reserve and one step less does not', () => {
		fc.assert(
			fc.property(anyHours, anyBank, (powers, anyOne) => {
				const search = { reserve: 0.2, most: 100_000, step: 50 };
				const bankOf = (capacityWh: number) => ({ ...anyOne, floor: 0, start: 1, capacityWh });
				const found = smallestBank(powers, bankOf, search);
				if (found === null) {
					expect(keepsReserve(powers, bankOf(100_000), 0.2)).toBe(false);
					return;
				}
				expect(keepsReserve(powers, bankOf(found), 0.2)).toBe(true);
				if (found > 50) expect(keepsReserve(powers, bankOf(found - 50), 0.2)).toBe(false);
			}),
			{ numRuns: 100 },
		);
	});

	test('the smallest array keeps the reserve and one step less does not', () => {
		fc.assert(
			fc.property(anyHours, anyBank, (powers, anyOne) => {
				const perW = { ...powers, solarW: powers.solarW.map((value) => value / 1000) };
				const start = { ...anyOne, floor: 0, start: 1 };
				const keeps = (ratedW: number) =>
					keepsReserve({ ...perW, solarW: perW.solarW.map((value) => value * ratedW) }, start, 0.2);
				const found = smallestArray(perW, start, { reserve: 0.2, most: 5000, step: 10 });
				if (found === null) expect(keeps(5000)).toBe(false);
				else {
					expect(keeps(found)).toBe(true);
					if (found > 10) expect(keeps(found - 10)).toBe(false);
				}
			}),
			{ numRuns: 100 },
		);
	});
});
