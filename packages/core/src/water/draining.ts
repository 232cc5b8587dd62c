import { boreAreaM2, frictionFactor } from './flow.js';
import { gravityMS2 } from './gravity.js';

/** A tank with upright walls that empties through a valve, and perhaps a hose, by gravity. */
export interface Drain {
	/** water surface, the same at every height [m²] */
	readonly tankAreaM2: number;
	readonly valveBoreMm: number;
	/** discharge coefficient of the valve alone, 0.6 for a sharp edge */
	readonly dischargeCoefficient: number;
	/** the hose behind the valve, or null where it pours free */
	readonly hose: { readonly boreMm: number; readonly lengthM: number; readonly roughnessMm: number } | null;
	/** how far the open end lies below the tank's outlet [m] */
	readonly fallM: number;
	readonly viscosityM2S: number;
}

/**
 * Flow out of the drain at a water depth [m³/s].
 *
 * Free: Torricelli, Q = Cd A sqrt(2 g z). With a hose, Bernoulli from surface to open end:
 * z = (1/Cd² - 1) vv²/2g + (1 + f L/D) vh²/2g, z being the depth and the fall together.
 */
export function drainFlowM3S(drain: Drain, depthM: number): number {
	const headM = depthM + drain.fallM;
	if (headM <= 0) return 0;
	const valveM2 = boreAreaM2(drain.valveBoreMm);
	const free = drain.dischargeCoefficient * valveM2 * Math.sqrt(2 * gravityMS2 * headM);
	const { hose } = drain;
	if (hose === null) return free;
	const hoseM2 = boreAreaM2(hose.boreMm);
	const valveTerm = (1 / drain.dischargeCoefficient ** 2 - 1) / valveM2 ** 2;
	const lost = (flow: number) => {
		const reynolds = ((flow / hoseM2) * (hose.boreMm / 1000)) / drain.viscosityM2S;
		const friction =
			frictionFactor(reynolds, hose.roughnessMm / hose.boreMm) * (hose.lengthM / (hose.boreMm / 1000));
		return (flow ** 2 / (2 * gravityMS2)) * (valveTerm + (1 + friction) / hoseM2 ** 2);
	};
	// The loss grows with the flow, so the flow that spends the head is found by halving. Without friction it would
	// be no more than this:
	let high = Math.sqrt((2 * gravityMS2 * headM) / (valveTerm + 1 / hoseM2 ** 2));
	let low = 0;
	for (let step = 0; step < 40; step += 1) {
		const middle = (low + high) / 2;
		if (lost(middle) > headM) high = middle;
		else low = middle;
	}
	return low;
}

/**
 * Time for the depth to fall from one height to another [s]: the integral of At dh / Q(h), taken over the square
 * root of the head, where it is smooth.
 */
export function drainTimeS(drain: Drain, fromM: number, toM: number): number {
	if (fromM <= toM) return 0;
	const from = Math.sqrt(fromM + drain.fallM);
	const to = Math.sqrt(toM + drain.fallM);
	const parts = 64;
	const width = (from - to) / parts;
	let sum = 0;
	for (let part = 0; part < parts; part += 1) {
		const root = to + (part + 0.5) * width;
		sum += (2 * root * width) / drainFlowM3S(drain, root ** 2 - drain.fallM);
	}
	return drain.tankAreaM2 * sum;
}

/** Head below the highest point of the water that the air coming in may cost [Pa], and the vent bore it needs [mm]. */
export function ventBoreMm(flowM3S: number, allowedPa: number, airDensityKgM3: number): number {
	const areaM2 = flowM3S / (0.6 * Math.sqrt((2 * allowedPa) / airDensityKgM3));
	return Math.sqrt((4 * areaM2) / Math.PI) * 1000;
}
