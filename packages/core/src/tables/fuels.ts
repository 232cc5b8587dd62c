import { published } from '../topic/source.js';

/** Heating values as printed by the US Department of Energy: Btu per US gallon and per pound. */
export const fuelSource = published(
	'US Department of Energy, Alternative Fuels Data Center',
	'Properties of Fuels',
);

export interface Fuel {
	readonly lowerBtuPerGal: number;
	readonly higherBtuPerGal: number;
	readonly lowerBtuPerLb: number;
	readonly higherBtuPerLb: number;
}

export const fuels = {
	gasoline: {
		lowerBtuPerGal: 116090,
		higherBtuPerGal: 124340,
		lowerBtuPerLb: 18676,
		higherBtuPerLb: 20004,
	},
	diesel: {
		lowerBtuPerGal: 128450,
		higherBtuPerGal: 137380,
		lowerBtuPerLb: 18394,
		higherBtuPerLb: 19673,
	},
	propane: {
		lowerBtuPerGal: 84250,
		higherBtuPerGal: 91420,
		lowerBtuPerLb: 19900,
		higherBtuPerLb: 21594,
	},
} as const satisfies Record<string, Fuel>;

export type FuelName = keyof typeof fuels;

const whPerBtu = 1055.05585262 / 3600;
const litresPerGallon = 3.785411784;
const kgPerLb = 0.45359237;

/** Lower heating value: the water of combustion leaves as vapour [Wh/L]. */
export function lowerHeatingValueWhPerL(fuel: FuelName): number {
	return (fuels[fuel].lowerBtuPerGal * whPerBtu) / litresPerGallon;
}

/** Higher heating value: the water of combustion is condensed [Wh/L]. */
export function higherHeatingValueWhPerL(fuel: FuelName): number {
	return (fuels[fuel].higherBtuPerGal * whPerBtu) / litresPerGallon;
}

/** Lower heating value by mass [Wh/kg]. */
export function lowerHeatingValueWhPerKg(fuel: FuelName): number {
	return (fuels[fuel].lowerBtuPerLb * whPerBtu) / kgPerLb;
}

/** Higher heating value by mass [Wh/kg]. */
export function higherHeatingValueWhPerKg(fuel: FuelName): number {
	return (fuels[fuel].higherBtuPerLb * whPerBtu) / kgPerLb;
}
