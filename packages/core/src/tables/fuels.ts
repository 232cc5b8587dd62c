import { fromMemory, practice, published, type Source } from '../topic/source.js';

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

/**
 * Butane, in Btu per pound: higher as printed, lower without the heat of condensing its water (1.55 lb of water from a
 * pound). Sold by its mass alone.
 */
export const butane = { lowerBtuPerLb: 19594, higherBtuPerLb: 21221 } as const;

/** A fuel that burners of a van use. */
export type BurnerFuel = FuelName | 'butane';
const butaneSource = fromMemory('NFPA 58', 'properties of LP-gases, commercial butane');

export function heatingValueSource(fuel: BurnerFuel): Source {
	return fuel === 'butane' ? butaneSource : fuelSource;
}

/** Share of a gas container's volume that liquid may fill. */
export const gasFillShare = 0.8;
export const gasFillSource = fromMemory('NFPA 58', 'filled to 80 % of the volume at most');

/** At and below it butane gives no gas at the pressure of the air [°C]: its boiling point, rounded up. */
export const butaneLeastC = 0;
export const butaneColdSource = fromMemory('NIST Chemistry WebBook', 'n-butane boils at −0.5 °C');

/** What portable gas cylinders hold, by region [kg] (common practice); the last is the largest one person handles. */
export const cylinderSizesKg = {
	us: [5, 11, 20, 30].map((pounds) => pounds * 0.45359237),
	eu: [2, 5, 6, 11],
} as const;
export const cylinderSource = practice('usual fillings of portable gas cylinders');

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

function byMass(fuel: BurnerFuel): { readonly lowerBtuPerLb: number; readonly higherBtuPerLb: number } {
	return fuel === 'butane' ? butane : fuels[fuel];
}

/** Lower heating value by mass [Wh/kg]. */
export function lowerHeatingValueWhPerKg(fuel: BurnerFuel): number {
	return (byMass(fuel).lowerBtuPerLb * whPerBtu) / kgPerLb;
}

/** Higher heating value by mass [Wh/kg]. */
export function higherHeatingValueWhPerKg(fuel: BurnerFuel): number {
	return (byMass(fuel).higherBtuPerLb * whPerBtu) / kgPerLb;
}
