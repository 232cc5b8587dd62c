import { fromMemory, published } from '../topic/source.js';

export const sapmSource = published(
	'SAND2004-3535 (King, Boyson and Kratochvil)',
	'module temperature from irradiance, air and wind',
);
export const pvWattsSource = published('NREL/TP-6A20-62641, PVWatts version 5', 'module and loss model');
export const glassSource = fromMemory('ASHRAE 93', 'incidence angle modifier, b0 = 0.05');

/** How a panel is mounted, by its heat: coefficients of SAND2004-3535. */
export interface Mounting {
	readonly a: number;
	readonly b: number;
	/** cell above module back at 1,000 W/m² [K] */
	readonly deltaK: number;
}

export const mountings = {
	open_rack_glass_glass: { a: -3.47, b: -0.0594, deltaK: 3 },
	close_mount_glass_glass: { a: -2.98, b: -0.0471, deltaK: 1 },
	open_rack_glass_polymer: { a: -3.56, b: -0.075, deltaK: 3 },
	insulated_back_glass_polymer: { a: -2.81, b: -0.0455, deltaK: 0 },
} as const satisfies Record<string, Mounting>;

/** The weather at a panel. */
export interface PanelWeather {
	readonly planeWM2: number;
	readonly airC: number;
	readonly windMS: number;
}

/** Back of the module and its cells in use: SAND2004-3535, equations 11 and 12 [°C]. */
export function sapmTemperatures(
	weather: PanelWeather,
	mounting: Mounting,
): { readonly moduleC: number; readonly cellC: number } {
	const moduleC = weather.airC + weather.planeWM2 * Math.exp(mounting.a + mounting.b * weather.windMS);
	return { moduleC, cellC: moduleC + (weather.planeWM2 / 1000) * mounting.deltaK };
}

/** Cell temperature from the nominal operating cell temperature (Ross 1976) [°C]. */
export function noctCellC(planeWM2: number, airC: number, noctC: number): number {
	return airC + ((noctC - 20) / 800) * planeWM2;
}

/** Module temperature by a heat balance: Faiman 2008 [°C]. */
export function faimanModuleC(weather: PanelWeather, u0: number, u1: number): number {
	return weather.airC + weather.planeWM2 / (u0 + u1 * weather.windMS);
}

/**
 * Direct-current power of an array: PVWatts 5.
 *
 * @param ratedW power under standard test conditions, 1,000 W/m² and 25 °C at the cell
 * @param powerPerK share of the power by which a degree changes it, negative [1/K]
 */
export function dcPower(ratedW: number, planeWM2: number, cellC: number, powerPerK: number): number {
	return ratedW * (planeWM2 / 1000) * (1 + powerPerK * (cellC - 25));
}

/** The losses of PVWatts 5, each as a share. */
export interface Losses {
	readonly soiling: number;
	readonly shading: number;
	readonly snow: number;
	readonly mismatch: number;
	readonly wiring: number;
	readonly connections: number;
	readonly lightInduced: number;
	readonly nameplate: number;
	readonly age: number;
	readonly availability: number;
}

export const pvWattsLosses: Losses = {
	soiling: 0.02,
	shading: 0.03,
	snow: 0,
	mismatch: 0.02,
	wiring: 0.02,
	connections: 0.005,
	lightInduced: 0.015,
	nameplate: 0.01,
	age: 0,
	availability: 0.03,
};

/** All losses together: 1 less the product of what each leaves. */
export function totalLoss(losses: Losses): number {
	return 1 - Object.values(losses).reduce((left: number, loss: number) => left * (1 - loss), 1);
}

/** A grid-style inverter by its rating and nominal efficiency: PVWatts 5. */
export interface PvInverter {
	/** direct-current power at which it gives its rated output [W] */
	readonly ratedDcW: number;
	readonly nominalEfficiency: number;
	readonly referenceEfficiency: number;
}

/** Output of an inverter [W]. */
export function inverterPower(dcW: number, inverter: PvInverter): number {
	if (dcW <= 0) return 0;
	const share = dcW / inverter.ratedDcW;
	const efficiency =
		(inverter.nominalEfficiency / inverter.referenceEfficiency) * (-0.0162 * share - 0.0059 / share + 0.9858);
	const ratedW = inverter.nominalEfficiency * inverter.ratedDcW;
	return Math.max(0, Math.min(ratedW, efficiency * dcW));
}
