/** One plane layer of a wall, from the inside outwards. */
export interface Layer {
	readonly name: string;
	readonly thicknessMm: number;
	readonly conductivityWmK: number;
	/** conductivity of what bridges this layer (a rib, a batten), or null where nothing does */
	readonly bridgeWmK: number | null;
}

/** A wall, roof, floor or window built up of plane layers, with the air films on both sides. */
export interface Element {
	readonly layers: readonly Layer[];
	/** share of the area where the bridges are */
	readonly bridgeShare: number;
	readonly insideM2KW: number;
	readonly outsideM2KW: number;
}

/** Thermal resistance of a wall with bridges [m²K/W]. The truth lies between the two limits. */
export interface Resistance {
	/** heat flows straight through clear wall and bridge side by side */
	readonly upperM2KW: number;
	/** heat spreads sideways freely between the layers */
	readonly lowerM2KW: number;
	/** their mean, the design value */
	readonly totalM2KW: number;
	readonly clearM2KW: number;
	/** through the bridge itself */
	readonly bridgeM2KW: number;
}

export function layer(
	name: string,
	thicknessMm: number,
	conductivityWmK: number,
	bridgeWmK: number | null = null,
): Layer {
	return { name, thicknessMm, conductivityWmK, bridgeWmK };
}

/**
 * Total thermal resistance by the combined method of ISO 6946: the mean of the upper limit (sections in parallel)
 * and the lower limit (each layer's conductivity averaged over the area).
 *
 * The standard leaves out insulation bridged by metal, where the limits lie far apart: keep both in view.
 */
export function resistanceOf(element: Element): Resistance {
	const films = element.insideM2KW + element.outsideM2KW;
	const share = element.bridgeShare;
	const sum = (conductivity: (one: Layer) => number) =>
		element.layers.reduce((total, one) => total + one.thicknessMm / 1000 / conductivity(one), films);
	const clearM2KW = sum((one) => one.conductivityWmK);
	const bridgeM2KW = sum((one) => one.bridgeWmK ?? one.conductivityWmK);
	const upperM2KW = 1 / ((1 - share) / clearM2KW + share / bridgeM2KW);
	const lowerM2KW = sum(
		(one) => (1 - share) * one.conductivityWmK + share * (one.bridgeWmK ?? one.conductivityWmK),
	);
	return { upperM2KW, lowerM2KW, totalM2KW: (upperM2KW + lowerM2KW) / 2, clearM2KW, bridgeM2KW };
}

/** Temperature of the inner surface [°C]: ti - (ti - te) Rsi / R, R being the whole resistance with that same film. */
export function innerSurfaceC(
	insideC: number,
	outsideC: number,
	insideFilm: number,
	totalM2KW: number,
): number {
	return insideC - ((insideC - outsideC) * insideFilm) / totalM2KW;
}
