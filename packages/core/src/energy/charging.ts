import type { Chemistry } from '../tables/batteries.js';

/** A charge with a constant current up to a voltage, then at constant voltage with a falling current. */
export interface Charge {
	readonly capacityAh: number;
	/** current while it is constant [A] */
	readonly currentA: number;
	/** states of charge, 0 to 1 */
	readonly from: number;
	readonly to: number;
	readonly chemistry: Pick<Chemistry, 'taperH' | 'tailRatePerH' | 'chargeEfficiency'>;
}

export interface ChargeTime {
	/** at constant current [h] */
	readonly constantH: number;
	/** at constant voltage [h] */
	readonly taperH: number;
	readonly totalH: number;
	/** state of charge at which the current begins to fall */
	readonly knee: number;
	/** current at the end [A] */
	readonly endA: number;
}

/**
 * Time from one state of charge to another.
 *
 * The battery is taken as an open-circuit voltage that rises straight with the state of charge s, behind a constant
 * resistance. At the charging voltage the current over capacity is then i(s) = it + (1 − s) / T, where T [h] is
 * resistance over slope and it the current at which charging is called complete; s approaches the end
 * exponentially. The current is constant until i(s) falls below it: the knee at s = 1 − T (i − it).
 *
 * @returns times [h]; the last percent are reached at the tail current, so 100 % is finite
 * @source constant-current, constant-voltage charging; T and it by chemistry are common practice
 */
export function chargeTime(charge: Charge): ChargeTime {
	const { capacityAh, currentA, from, to, chemistry } = charge;
	const { taperH, tailRatePerH, chargeEfficiency } = chemistry;
	const rate = currentA / capacityAh;
	const knee = Math.min(1, Math.max(0, 1 - taperH * (rate - tailRatePerH)));
	const rateAt = (state: number) => Math.min(rate, tailRatePerH + (1 - state) / taperH);
	const constantTo = Math.min(to, knee);
	const constantH = constantTo > from ? (constantTo - from) / (rate * chargeEfficiency) : 0;
	const taperFrom = Math.max(from, knee);
	const tapering =
		to > taperFrom ? (taperH / chargeEfficiency) * Math.log(rateAt(taperFrom) / rateAt(to)) : 0;
	return {
		constantH,
		taperH: tapering,
		totalH: constantH + tapering,
		knee,
		endA: rateAt(to) * capacityAh,
	};
}
