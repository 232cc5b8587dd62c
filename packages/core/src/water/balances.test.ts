import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawdownL, mostStartsPerH, pumpCycle, waterHeldL } from './accumulator.js';
import { type Drain, drainFlowM3S, drainTimeS } from './draining.js';
import {
	boreAreaM2,
	flowAt,
	frictionFactor,
	hazenWilliamsPa,
	laminarBelow,
	pipeFlow,
	swameeJain,
	velocityIn,
} from './flow.js';
import { cooledC, flatLossWK, freezeTimes, pipeLossWK, tankAreaM2 } from './freezing.js';
import { cylinderLossWK, heatingTimeH, hotShare, scaldTimeS, standingLoss } from './heating.js';
import { dailyWater } from './household.js';
import { type PipeRun, runLoss } from './piping.js';
import { heatingEnergyJ, waterAt } from './properties.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const water = waterAt(10);

describe('flow', () => {
	test('flow in is flow out: what passes a bore at a velocity passes it at that flow', () => {
		fc.assert(
			fc.property(within(0.1, 100), within(3, 80), (flowLMin, boreMm) => {
				expect(flowAt(velocityIn(flowLMin, boreMm), boreMm)).toBeCloseTo(flowLMin, 9);
			}),
		);
	});

	test('more flow, a longer or a narrower pipe never lose less', () => {
		fc.assert(
			fc.property(
				within(0.1, 60),
				within(4, 40),
				within(0.5, 50),
				within(1, 2),
				(flow, boreMm, lengthM, factor) => {
					const loss = (q: number, d: number, l: number) =>
						pipeFlow(q, { boreMm: d, lengthM: l, roughnessMm: 0.0015 }, water).lossPa;
					const own = loss(flow, boreMm, lengthM);
					expect(loss(flow * factor, boreMm, lengthM)).toBeGreaterThanOrEqual(own * 0.999999);
					expect(loss(flow, boreMm, lengthM * factor)).toBeGreaterThanOrEqual(own * 0.999999);
					expect(loss(flow, boreMm / factor, lengthM)).toBeGreaterThanOrEqual(own * 0.999999);
				},
			),
		);
	});

	test('laminar below Re 2300, and never below laminar or turbulent in the doubtful range', () => {
		fc.assert(
			fc.property(within(1, 1e6), (re) => {
				const factor = frictionFactor(re, 1e-4);
				if (re < laminarBelow) expect(factor).toBe(64 / re);
				else expect(factor).toBeGreaterThanOrEqual(swameeJain(re, 1e-4));
				if (re < 4000) expect(factor).toBeGreaterThanOrEqual(64 / re);
			}),
		);
		expect(frictionFactor(0, 1e-4)).toBe(0);
	});

	test('Hazen-Williams grows with the power 1.852 of the flow', () => {
		const pipe = { boreMm: 12, lengthM: 10, coefficient: 150 };
		expect(hazenWilliamsPa(10, pipe, 999) / hazenWilliamsPa(5, pipe, 999)).toBeCloseTo(2 ** 1.852, 9);
	});

	test('a run loses what its parts lose; more fittings never lose less', () => {
		const run: PipeRun = {
			flowLMin: 8,
			lengthM: 6,
			riseM: 1,
			fittings: { elbow: 2, tee: 1, valve: 1 },
			insert: true,
			waterC: 10,
		};
		fc.assert(
			fc.property(within(6, 30), fc.nat(10), (boreMm, elbow) => {
				const loss = runLoss({ ...run, fittings: { ...run.fittings, elbow } }, boreMm);
				expect(loss.totalPa).toBeCloseTo(loss.straightPa + loss.fittingsPa + loss.risePa, 6);
				const more = runLoss({ ...run, fittings: { ...run.fittings, elbow: elbow + 1 } }, boreMm);
				expect(more.totalPa).toBeGreaterThan(loss.totalPa);
				// Straight pipe of the equivalent length loses as much as the fittings.
				const asPipe = pipeFlow(
					run.flowLMin,
					{ boreMm, lengthM: loss.fittingsAsLengthM, roughnessMm: 0.0015 },
					water,
				);
				expect(asPipe.lossPa).toBeCloseTo(loss.fittingsPa, 3);
			}),
		);
	});
});

describe('draining', () => {
	const anyDrain = fc.record({
		tankAreaM2: within(0.05, 2),
		valveBoreMm: within(8, 100),
		dischargeCoefficient: within(0.5, 1),
		hose: fc.option(
			fc.record({ boreMm: within(8, 100), lengthM: within(0.1, 10), roughnessMm: fc.constant(0.0015) }),
		),
		fallM: within(0, 1),
		viscosityM2S: fc.constant(1.3e-6),
	});

	test('the water that flows out in that time is the water that was there', () => {
		fc.assert(
			fc.property(anyDrain, within(0.1, 1), (drain, depthM) => {
				const restM = 0.02;
				// Step by step, the level falls by what flows out.
				const seconds = drainTimeS(drain, depthM, restM);
				const steps = 4000;
				let level = depthM;
				for (let step = 0; step < steps; step += 1) {
					const dt = seconds / steps;
					const half = level - (drainFlowM3S(drain, level) / drain.tankAreaM2) * (dt / 2);
					level -= (drainFlowM3S(drain, Math.max(0, half)) / drain.tankAreaM2) * dt;
				}
				expect(Math.abs(level - restM)).toBeLessThan(0.003 * depthM + 0.001);
			}),
			{ numRuns: 60 },
		);
	});

	test('without a hose it is the closed form of Torricelli', () => {
		fc.assert(
			fc.property(within(0.05, 2), within(5, 100), within(0.05, 2), (tankAreaM2, valveBoreMm, depthM) => {
				const drain: Drain = {
					tankAreaM2,
					valveBoreMm,
					dischargeCoefficient: 0.6,
					hose: null,
					fallM: 0,
					viscosityM2S: 1e-6,
				};
				const closed =
					((2 * tankAreaM2) / (0.6 * boreAreaM2(valveBoreMm) * Math.sqrt(2 * 9.80665))) *
					(Math.sqrt(depthM) - Math.sqrt(0.01));
				expect(drainTimeS(drain, depthM, 0.01)).toBeCloseTo(closed, 6);
			}),
		);
	});

	test('a hose never makes it quicker than a free valve with the same fall', () => {
		fc.assert(
			fc.property(anyDrain, within(0.05, 1), (drain, depthM) => {
				if (drain.hose === null || drain.hose.boreMm > drain.valveBoreMm) return;
				expect(drainFlowM3S(drain, depthM)).toBeLessThanOrEqual(
					drainFlowM3S({ ...drain, hose: null }, depthM) * (1 + 1e-9),
				);
			}),
		);
	});
});

describe('accumulator', () => {
	const atmosphere = 101.325;
	const pressures = fc
		.tuple(within(0, 300), within(10, 300), within(10, 300))
		.map(([precharge, a, b]) => ({ prechargeKPa: precharge, cutInKPa: a, cutOutKPa: a + b }));

	test('gas pressure times gas volume stays what it was', () => {
		fc.assert(
			fc.property(within(0.1, 50), pressures, (volumeL, { prechargeKPa, cutOutKPa }) => {
				const gasL = volumeL - waterHeldL(volumeL, prechargeKPa, cutOutKPa, atmosphere);
				if (cutOutKPa <= prechargeKPa) expect(gasL).toBe(volumeL);
				else expect(gasL * (cutOutKPa + atmosphere)).toBeCloseTo(volumeL * (prechargeKPa + atmosphere), 6);
			}),
		);
	});

	test('it never gives more than it holds, and nothing from below its pre-charge', () => {
		fc.assert(
			fc.property(within(0.1, 50), pressures, (volumeL, gauge) => {
				const given = drawdownL(volumeL, gauge, atmosphere);
				expect(given).toBeGreaterThanOrEqual(0);
				expect(given).toBeLessThan(volumeL);
			}),
		);
	});

	test('water in is water out over each turn of the pump', () => {
		fc.assert(
			fc.property(within(0.05, 5), within(1, 20), within(0.05, 0.95), (drawdown, pumpLMin, share) => {
				const drawLMin = pumpLMin * share;
				const cycle = pumpCycle(drawdown, drawLMin, pumpLMin);
				if (cycle === null) throw new Error('the pump rests');
				expect(pumpLMin * cycle.onMin).toBeCloseTo(drawLMin * (cycle.onMin + cycle.offMin), 9);
				expect(cycle.startsPerH).toBeLessThanOrEqual(mostStartsPerH(drawdown, pumpLMin) * (1 + 1e-9));
			}),
		);
		expect(pumpCycle(1, 5, 5)).toBeNull();
	});
});

describe('freezing', () => {
	test('heat given off is heat lost: cooling', () => {
		fc.assert(
			fc.property(
				within(5, 300),
				within(0.2, 10),
				within(2, 30),
				within(-30, -1),
				(mass, loss, start, around) => {
					const hours = freezeTimes(mass, loss, start, around).toFreezingH;
					const specificHeat = waterAt(start / 2).specificHeatJKgK;
					// The loss integrated over the cooling, by the mean of many steps.
					const steps = 2000;
					let lostJ = 0;
					for (let step = 0; step < steps; step += 1) {
						const at = cooledC(mass, loss, start, around, ((step + 0.5) / steps) * hours);
						lostJ += loss * (at - around) * ((hours * 3600) / steps);
					}
					expect(lostJ / (mass * specificHeat * start)).toBeCloseTo(1, 4);
					expect(cooledC(mass, loss, start, around, hours)).toBeCloseTo(0, 9);
				},
			),
			{ numRuns: 50 },
		);
	});

	test('heat given off is heat lost: freezing', () => {
		const { toFreezingH, toSolidH } = freezeTimes(10, 2, 5, -10);
		expect((toSolidH - toFreezingH) * 3600 * 2 * 10).toBeCloseTo(10 * 333_500, 3);
	});

	test('never frozen above freezing; sooner the colder it is', () => {
		expect(freezeTimes(10, 1, 5, 0).toFreezingH).toBe(Number.POSITIVE_INFINITY);
		fc.assert(
			fc.property(within(-40, -2), within(0.1, 10), (around, colder) => {
				expect(freezeTimes(10, 1, 5, around - colder).toSolidH).toBeLessThan(
					freezeTimes(10, 1, 5, around).toSolidH,
				);
			}),
		);
	});

	test('insulation slows the loss of a flat wall; on a very thin pipe the film may win', () => {
		const cover = { conductivityWmK: 0.036, filmM2KW: 0.04 };
		fc.assert(
			fc.property(within(0.1, 5), within(0, 100), within(1, 50), (area, mm, more) => {
				expect(flatLossWK(area, { ...cover, insulationMm: mm + more })).toBeLessThan(
					flatLossWK(area, { ...cover, insulationMm: mm }),
				);
			}),
		);
		// A wide pipe under thin insulation is nearly a flat wall.
		const wide = pipeLossWK(1000, 1, { ...cover, insulationMm: 10 });
		expect(wide).toBeCloseTo(flatLossWK(Math.PI * 1.01, { ...cover, insulationMm: 10 }), 1);
	});

	test('a flat tank has more surface than a cube of the same content', () => {
		expect(tankAreaM2(100)).toBeGreaterThan(6 * 0.1 ** (2 / 3));
	});
});

describe('hot water', () => {
	test('hot and cold carry the heat of the mixture', () => {
		fc.assert(
			fc.property(within(45, 90), within(1, 30), within(31, 44), (hot, cold, mixed) => {
				const share = hotShare(hot, cold, mixed);
				expect(share * hot + (1 - share) * cold).toBeCloseTo(mixed, 9);
			}),
		);
	});

	test('heat put in over a day is heat lost over a day, on the timer too', () => {
		fc.assert(
			fc.property(
				within(5, 100),
				within(0.2, 5),
				within(40, 80),
				within(0.5, 23.5),
				(volumeL, lossWK, hotC, onH) => {
					const tank = { volumeL, lossWK, hotC, aroundC: 15 };
					const { leftOnWh, onTimerWh } = standingLoss(tank, onH);
					const hot = waterAt(hotC);
					const capacity = (volumeL / 1000) * hot.densityKgM3 * hot.specificHeatJKgK;
					const steps = 2000;
					let lostWh = lossWK * (hotC - 15) * onH;
					for (let step = 0; step < steps; step += 1) {
						const s = ((step + 0.5) / steps) * (24 - onH) * 3600;
						const at = (hotC - 15) * Math.exp((-s * lossWK) / capacity);
						lostWh += (lossWK * at * (24 - onH)) / steps;
					}
					expect(onTimerWh / lostWh).toBeCloseTo(1, 4);
					expect(onTimerWh).toBeLessThan(leftOnWh);
				},
			),
			{ numRuns: 50 },
		);
	});

	test('heating takes at least energy over power, and without limit where the loss is larger', () => {
		const tank = { volumeL: 20, lossWK: 1, aroundC: 15 };
		const least = heatingEnergyJ(20, 10, 60) / 3600 / 1000;
		expect(heatingTimeH(tank, 10, 60, 1000)).toBeGreaterThan(least);
		expect(heatingTimeH(tank, 10, 60, 40)).toBe(Number.POSITIVE_INFINITY);
		expect(heatingTimeH(tank, 60, 60, 40)).toBe(0);
	});

	test('a larger tank loses more, a better insulated one less', () => {
		expect(cylinderLossWK(40, 20, 0.024, 0.13)).toBeGreaterThan(cylinderLossWK(20, 20, 0.024, 0.13));
		expect(cylinderLossWK(20, 40, 0.024, 0.13)).toBeLessThan(cylinderLossWK(20, 20, 0.024, 0.13));
	});

	test('hotter water never burns later', () => {
		fc.assert(
			fc.property(within(40, 95), within(0, 20), (at, more) => {
				expect(scaldTimeS(at + more)).toBeLessThanOrEqual(scaldTimeS(at));
			}),
		);
	});
});

test('what comes from the fresh tank goes to gray, is drunk or is flushed', () => {
	fc.assert(
		fc.property(
			fc.record({
				people: fc.integer({ min: 1, max: 10 }),
				showersPerPersonDay: within(0, 3),
				showerMin: within(0, 20),
				showerLMin: within(1, 15),
				dishesLDay: within(0, 50),
				washingLPersonDay: within(0, 20),
				drinkingLPersonDay: within(0, 10),
				flushingLPersonDay: within(0, 20),
			}),
			(habits) => {
				const day = dailyWater(habits);
				expect(day.freshL).toBeCloseTo(day.grayL + day.parts.drinkingL + day.parts.flushingL, 9);
				expect(day.grayL).toBeLessThanOrEqual(day.freshL + 1e-9);
			},
		),
	);
});

test('water is densest at 4 °C and thins as it warms', () => {
	fc.assert(
		fc.property(within(4, 94), within(0.5, 5), (at, more) => {
			expect(waterAt(at + more).densityKgM3).toBeLessThan(waterAt(at).densityKgM3);
			expect(waterAt(at + more).viscosityM2S).toBeLessThan(waterAt(at).viscosityM2S);
		}),
	);
	expect(waterAt(-5)).toEqual(waterAt(0));
	expect(waterAt(120)).toEqual(waterAt(99));
});
