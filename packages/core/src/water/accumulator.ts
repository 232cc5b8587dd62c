/**
 * Water an accumulator gives between two pressures without the pump [L], by Boyle's law at constant temperature:
 * V = Vt P0 (1/Pin - 1/Pout), all pressures absolute. Below its pre-charge the tank holds no water.
 *
 * @param volumeL whole inside of the tank, gas and water
 * @param prechargeKPa gauge pressure of the gas in the empty tank
 * @param atmosphereKPa pressure of the air around, against which gauges read
 */
export function drawdownL(
	volumeL: number,
	gauge: { readonly prechargeKPa: number; readonly cutInKPa: number; readonly cutOutKPa: number },
	atmosphereKPa: number,
): number {
	return (
		waterHeldL(volumeL, gauge.prechargeKPa, gauge.cutOutKPa, atmosphereKPa) -
		waterHeldL(volumeL, gauge.prechargeKPa, gauge.cutInKPa, atmosphereKPa)
	);
}

/** Water in the tank at a gauge pressure [L]. */
export function waterHeldL(
	volumeL: number,
	prechargeKPa: number,
	gaugeKPa: number,
	atmosphereKPa: number,
): number {
	if (gaugeKPa <= prechargeKPa) return 0;
	return volumeL * (1 - (prechargeKPa + atmosphereKPa) / (gaugeKPa + atmosphereKPa));
}

/** One turn of the pump while a tap runs: the tap empties the drawdown, then the pump feeds tap and tank. */
export interface PumpCycle {
	readonly offMin: number;
	readonly onMin: number;
	readonly startsPerH: number;
}

/**
 * @returns the cycle, or null where the tap takes all the pump gives, so that it never stops
 */
export function pumpCycle(drawdown: number, drawLMin: number, pumpLMin: number): PumpCycle | null {
	if (drawLMin >= pumpLMin) return null;
	const offMin = drawdown / drawLMin;
	const onMin = drawdown / (pumpLMin - drawLMin);
	return { offMin, onMin, startsPerH: 60 / (offMin + onMin) };
}

/** Most starts an hour any tap can cause: at half the pump's flow, Qp/(4 V). */
export function mostStartsPerH(drawdown: number, pumpLMin: number): number {
	return (60 * pumpLMin) / (4 * drawdown);
}
