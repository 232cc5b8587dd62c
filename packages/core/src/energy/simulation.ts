/**
 * Hour by hour through days or a year: what the loads take, what sun, engine and shore bring, what the bank holds.
 * Pure functions on plain numbers; an hour is one step, its powers are means over the hour.
 */

/** The bank as simulated. */
export interface SimulatedBank {
	/** usable energy between empty and full, at the temperature that counts [Wh] */
	readonly capacityWh: number;
	/** state of charge at which the loads are switched off, 0 to 1 */
	readonly floor: number;
	/** state of charge at the beginning, 0 to 1 */
	readonly start: number;
	/** most that may go in [W]; 0 where it must not be charged */
	readonly chargeLimitW: number;
	/** energy given back over energy put in; the loss is booked when charging */
	readonly efficiency: number;
}

/** Hourly mean powers at the bank's terminals [W]; all four of one length. */
export interface HourlyPowers {
	readonly loadW: Float64Array;
	readonly solarW: Float64Array;
	readonly engineW: Float64Array;
	readonly shoreW: Float64Array;
}

/** Where the energy of the whole time went [Wh]. Solar + engine + shore = served + stored + lost + spilled + unused. */
export interface SimulationTotals {
	readonly solarWh: number;
	readonly engineWh: number;
	readonly shoreWh: number;
	/** asked for by the loads */
	readonly demandWh: number;
	/** given to the loads */
	readonly servedWh: number;
	/** asked for and not given */
	readonly unservedWh: number;
	/** in the bank at the end less that at the beginning; negative where it was drawn down */
	readonly storedWh: number;
	/** lost in charging and discharging the bank */
	readonly lostWh: number;
	/** solar that neither loads nor bank could take */
	readonly spilledWh: number;
	/** engine and shore power that was there but not needed */
	readonly unusedWh: number;
	readonly lowestSoc: number;
	/** number of the hour at whose end it was lowest, from 0 */
	readonly lowestHour: number;
	readonly endSoc: number;
	readonly hoursUnserved: number;
}

/** A simulation with the state of charge at the end of every hour. */
export interface Simulation extends SimulationTotals {
	readonly soc: Float64Array;
}

/**
 * Runs the bank through the hours. In each hour the sources feed the loads first, solar before shore and engine;
 * what is left charges the bank up to its limit and its room; what is missing comes from the bank down to its floor.
 *
 * @param soc where given, receives the state of charge at the end of every hour
 * @throws where the lengths differ or the bank is impossible: a programming error
 */
export function runHours(powers: HourlyPowers, bank: SimulatedBank, soc?: Float64Array): SimulationTotals {
	const { loadW, solarW, engineW, shoreW } = powers;
	const hours = loadW.length;
	if (solarW.length !== hours || engineW.length !== hours || shoreW.length !== hours) {
		throw new Error('the hourly powers differ in length');
	}
	const { capacityWh, chargeLimitW, efficiency } = bank;
	if (!(capacityWh > 0 && efficiency > 0 && efficiency <= 1 && chargeLimitW >= 0)) {
		throw new Error(`no such bank: ${JSON.stringify(bank)}`);
	}
	const floorWh = bank.floor * capacityWh;
	const startWh = bank.start * capacityWh;
	let energyWh = startWh;
	let lowestWh = energyWh;
	let lowestHour = 0;
	let solarWh = 0;
	let engineWh = 0;
	let shoreWh = 0;
	let demandWh = 0;
	let unservedWh = 0;
	let lostWh = 0;
	let spilledWh = 0;
	let unusedWh = 0;
	let hoursUnserved = 0;
	for (let hour = 0; hour < hours; hour += 1) {
		const load = loadW[hour] as number;
		const solar = solarW[hour] as number;
		const others = (engineW[hour] as number) + (shoreW[hour] as number);
		solarWh += solar;
		engineWh += engineW[hour] as number;
		shoreWh += shoreW[hour] as number;
		demandWh += load;
		const net = solar + others - load;
		if (net >= 0) {
			const roomWh = Math.max(0, capacityWh - energyWh) / efficiency;
			const taken = Math.min(net, chargeLimitW, roomWh);
			energyWh += taken * efficiency;
			lostWh += taken * (1 - efficiency);
			const left = net - taken;
			// The sun comes first to loads and bank; what the others could add and nobody needs is not spilled.
			const unused = Math.min(left, others);
			unusedWh += unused;
			spilledWh += left - unused;
		} else {
			const given = Math.min(-net, Math.max(0, energyWh - floorWh));
			energyWh -= given;
			const short = -net - given;
			if (short > 1e-9) {
				unservedWh += short;
				hoursUnserved += 1;
			}
		}
		if (energyWh < lowestWh) {
			lowestWh = energyWh;
			lowestHour = hour;
		}
		if (soc !== undefined) soc[hour] = energyWh / capacityWh;
	}
	return {
		solarWh,
		engineWh,
		shoreWh,
		demandWh,
		servedWh: demandWh - unservedWh,
		unservedWh,
		storedWh: energyWh - startWh,
		lostWh,
		spilledWh,
		unusedWh,
		lowestSoc: lowestWh / capacityWh,
		lowestHour,
		endSoc: energyWh / capacityWh,
		hoursUnserved,
	};
}

/** As `runHours`, with the state of charge of every hour kept. */
export function simulate(powers: HourlyPowers, bank: SimulatedBank): Simulation {
	const soc = new Float64Array(powers.loadW.length);
	return { ...runHours(powers, bank, soc), soc };
}

/** Days (of 24 h from the beginning) in which the state of charge was below a share at the end of some hour. */
export function daysBelow(soc: Float64Array, share: number): number {
	let days = 0;
	for (let day = 0; day * 24 < soc.length; day += 1) {
		if (soc.subarray(day * 24, day * 24 + 24).some((value) => value < share)) days += 1;
	}
	return days;
}

/** True where every load was served and the state of charge never fell below the reserve. */
export function keepsReserve(powers: HourlyPowers, bank: SimulatedBank, reserve: number): boolean {
	const totals = runHours(powers, bank);
	return totals.unservedWh === 0 && totals.lowestSoc >= reserve;
}

export interface Search {
	readonly reserve: number;
	/** the bank as a function of its capacity: limits may grow with it */
	readonly most: number;
	/** steps in which the answer is counted; it is rounded up to one [same unit as `most`] */
	readonly step: number;
}

/**
 * The smallest bank that serves every load and keeps the reserve, by bisection: a larger bank never holds a smaller
 * share at any hour, as long as its limits do not shrink with it and it starts at or above the reserve.
 *
 * @param bankOf the bank of a capacity [Wh]
 * @returns its capacity [Wh], a whole number of steps, or null where even the largest does not
 */
export function smallestBank(
	powers: HourlyPowers,
	bankOf: (capacityWh: number) => SimulatedBank,
	search: Search,
): number | null {
	return smallest(search, (capacityWh) => keepsReserve(powers, bankOf(capacityWh), search.reserve));
}

/**
 * The smallest array that serves every load and keeps the reserve, by bisection: more sun never leaves less in the
 * bank.
 *
 * @param powersPerW the hours with the solar power of an array of 1 W
 * @returns rated power [W], a whole number of steps, or null where even the largest does not
 */
export function smallestArray(powersPerW: HourlyPowers, bank: SimulatedBank, search: Search): number | null {
	const solarW = new Float64Array(powersPerW.solarW.length);
	return smallest(search, (ratedW) => {
		for (let hour = 0; hour < solarW.length; hour += 1) {
			solarW[hour] = (powersPerW.solarW[hour] as number) * ratedW;
		}
		return keepsReserve({ ...powersPerW, solarW }, bank, search.reserve);
	});
}

/** The smallest whole number of steps for which `holds`, given that it holds for every larger one; never 0 steps. */
function smallest(search: Search, holds: (value: number) => boolean): number | null {
	let high = Math.floor(search.most / search.step);
	if (high < 1 || !holds(high * search.step)) return null;
	let low = 0;
	while (high - low > 1) {
		const middle = Math.floor((low + high) / 2);
		if (holds(middle * search.step)) high = middle;
		else low = middle;
	}
	return high * search.step;
}
