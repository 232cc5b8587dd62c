/** One thing that draws on a supply. */
export interface Draw {
	readonly name: string;
	/** while it runs [A] */
	readonly currentA: number;
	/** on for 3 h or more */
	readonly continuous: boolean;
}

export interface Supply {
	/** the least of the ratings in the way: outlet, cord, adapter, inlet [A] */
	readonly limitA: number;
	/** an outlet of a house: everything plugged in there counts as continuous */
	readonly household: boolean;
}

export const continuousShare = 0.8;

/**
 * Rating a set of draws calls for [A]: 125 % of what runs 3 h or more, 100 % of the rest; at a household outlet 125 %
 * of everything.
 * @source NEC 210.20(A); at a household receptacle Table 210.21(B)(2), 80 % of the rating for a cord-connected load
 */
export function demandA(draws: readonly Draw[], supply: Supply): number {
	return draws.reduce((total, draw) => total + draw.currentA * weightOf(draw, supply), 0);
}

function weightOf(draw: Draw, supply: Supply): number {
	return draw.continuous || supply.household ? 1 / continuousShare : 1;
}

/** True where the supply bears them all at once. Exactly at the limit counts as borne; above it nothing does. */
export function mayRunTogether(draws: readonly Draw[], supply: Supply): boolean {
	return demandA(draws, supply) <= supply.limitA * (1 + 1e-12);
}

/** Sets of draws by index. */
export interface Sets {
	/** sets that may run together and that nothing more may be added to */
	readonly maximal: readonly (readonly number[])[];
	/** sets that are too much, and would not be with any one of them off */
	readonly minimalOver: readonly (readonly number[])[];
}

/** Most draws whose sets are worked through: 2^18 sets are a blink. */
export const mostDraws = 18;

/**
 * Every set of the draws is tried.
 * @param draws at most `mostDraws`
 * @throws where there are more: an error of the program, since the list of loads is shorter
 */
export function setsOf(draws: readonly Draw[], supply: Supply): Sets {
	if (draws.length > mostDraws) throw new Error(`${draws.length} draws make too many sets`);
	const demands = draws.map((draw) => demandA([draw], supply));
	const total = 1 << draws.length;
	const limitA = supply.limitA * (1 + 1e-12);
	const sums = new Float64Array(total);
	for (let mask = 1; mask < total; mask += 1) {
		const lowest = 31 - Math.clz32(mask & -mask);
		sums[mask] = (sums[mask & (mask - 1)] as number) + (demands[lowest] as number);
	}
	const borne = (mask: number) => (sums[mask] as number) <= limitA;
	const maximal: number[][] = [];
	const minimalOver: number[][] = [];
	const members = (mask: number) =>
		draws.map((_, index) => index).filter((index) => (mask & (1 << index)) !== 0);
	const all = total - 1;
	for (let mask = 1; mask < total; mask += 1) {
		if (borne(mask)) {
			if (everyBit(all & ~mask, (bit) => !borne(mask | bit))) maximal.push(members(mask));
		} else if (everyBit(mask, (bit) => borne(mask & ~bit))) {
			minimalOver.push(members(mask));
		}
	}
	return { maximal, minimalOver };
}

function everyBit(mask: number, holds: (bit: number) => boolean): boolean {
	for (let rest = mask; rest !== 0; rest &= rest - 1) {
		if (!holds(rest & -rest)) return false;
	}
	return true;
}

/** A mains battery charger. */
export interface MainsCharger {
	/** voltage it charges at [V] */
	readonly chargingV: number;
	readonly mainsV: number;
	readonly efficiency: number;
	readonly powerFactor: number;
}

/** Current a charger draws from the mains for a charging current [A]: I = Idc Vdc / (V η cos φ). */
export function chargerInputA(chargingA: number, charger: MainsCharger): number {
	return (chargingA * charger.chargingV) / (charger.mainsV * charger.efficiency * charger.powerFactor);
}

/**
 * Charging current a charger may be set to while a set of other draws runs [A], in whole amps, rounded down.
 * A charger counts as continuous. 0 where it must be off.
 */
export function chargerLimitA(others: readonly Draw[], supply: Supply, charger: MainsCharger): number {
	const leftA = (supply.limitA - demandA(others, supply)) * continuousShare;
	if (leftA <= 0) return 0;
	const chargingA = (leftA * charger.mainsV * charger.efficiency * charger.powerFactor) / charger.chargingV;
	return Math.floor(chargingA + 1e-9);
}
