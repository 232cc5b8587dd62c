import { plateRating, type Rating, type TypicalBurner, typicalBurner } from '../tables/burners.js';
import {
	type BurnerFuel,
	higherHeatingValueWhPerKg,
	lowerHeatingValueWhPerKg,
	lowerHeatingValueWhPerL,
} from '../tables/fuels.js';
import type { Region } from '../topic/context.js';

/** One burner as named by the shop. */
export interface BurnerItem {
	readonly name?: string | undefined;
	readonly powerW?: number | undefined;
	/** fuel it burns at full power [L/min] */
	readonly burnLMin?: number | undefined;
	/** fuel it burns at full power [kg/h] */
	readonly burnKgH?: number | undefined;
	readonly durationH?: number | undefined;
	readonly duty?: number | undefined;
	readonly setting?: 'low' | 'half' | 'full' | undefined;
	readonly count?: number | undefined;
	readonly rating?: Rating | undefined;
}

/** One burner with its fuel worked out; of all of its count together. */
export interface Burner {
	/** as typed, or the kind it is taken for */
	readonly name: string | null;
	readonly count: number;
	/** fuel at full burn, by lower heating value [W] */
	readonly inputW: number;
	/** power the shop named or that is typical, each [W]; null where its fuel was named */
	readonly plateW: number | null;
	readonly rating: Rating;
	readonly efficiency: number;
	readonly typical: TypicalBurner | null;
}

export interface BurnerOptions {
	readonly fuel: BurnerFuel;
	readonly region: Region;
	/** efficiency of what is rated by its output, or undefined for the usual one */
	readonly efficiency: number | undefined;
	/** what every plate rates, where it was said */
	readonly rating: Rating | undefined;
	/** the heating value the input on a plate was worked out with */
	readonly basis: 'lower' | 'higher';
}

/** Gas is sold and carried by its mass, other fuels by their volume. */
export function isGas(fuel: BurnerFuel): fuel is 'propane' | 'butane' {
	return fuel === 'propane' || fuel === 'butane';
}

/** Lower heating value of the unit a fuel is counted in: a kilogram of gas, a litre of others [Wh]. */
export function unitEnergyWh(fuel: BurnerFuel): number {
	return isGas(fuel) ? lowerHeatingValueWhPerKg(fuel) : lowerHeatingValueWhPerL(fuel);
}

/** The burner of an item; null where nobody said its power and none is typical. */
export function burnerOf(item: BurnerItem, options: BurnerOptions): Burner | null {
	const { fuel, region } = options;
	const named = item.name === undefined ? null : typicalBurner(item.name);
	// A heater that burns gas is a furnace, by whatever name.
	const typical = named?.name === 'heater' && isGas(fuel) ? typicalBurner('furnace') : named;
	const count = item.count ?? 1;
	const rating = item.rating ?? options.rating ?? plateRating(typical, fuel, region);
	const efficiency = options.efficiency ?? typical?.efficiency ?? 0.8;
	const shared = { name: item.name ?? null, count, rating, efficiency, typical };
	const burnedW = burnedOf(item, fuel);
	if (burnedW !== null) return { ...shared, rating: 'input', inputW: burnedW * count, plateW: null };
	const plateW = item.powerW ?? typical?.powerW[region];
	if (plateW === undefined) return null;
	const eachW = rating === 'output' ? plateW / efficiency : plateW * lowerOf(options);
	return { ...shared, inputW: eachW * count, plateW };
}

/** Fuel named as a rate, by lower heating value [W]; null where none was. */
function burnedOf(item: BurnerItem, fuel: BurnerFuel): number | null {
	if (item.burnKgH !== undefined) return item.burnKgH * lowerHeatingValueWhPerKg(fuel);
	// A rate of gas in litres is one of vapour, which nobody gives for a van.
	if (item.burnLMin === undefined || fuel === 'butane') return null;
	return item.burnLMin * 60 * lowerHeatingValueWhPerL(fuel);
}

/** What a watt of input on the plate is by the lower heating value. */
function lowerOf({ basis, fuel }: BurnerOptions): number {
	return basis === 'lower' ? 1 : lowerHeatingValueWhPerKg(fuel) / higherHeatingValueWhPerKg(fuel);
}
