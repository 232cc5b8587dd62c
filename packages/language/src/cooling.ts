import { typicalLoad } from '@lugbook/core';

/** Heat that an air conditioner moves for each watt-hour it draws, at the least [Btu/Wh] (common practice). */
const leastCoolingBtuPerWh = 9;
/** One Btu/h in watts. */
const wattsPerBtuH = 0.29307107;

/** True for whatever name people give to an air conditioner. */
export function isAirConditioner(name: string): boolean {
	return /air conditioner/.test(typicalLoad(name)?.name ?? '');
}

/**
 * "13,500 Btu" of an air conditioner is the heat it moves; what it draws is less.
 *
 * @param coolingW the cooling [W]
 * @param said how it was written
 * @returns the draw in whole watts [W], and the sentence that says so
 */
export function drawOfCooling(
	coolingW: number,
	said: string,
): { readonly powerW: number; readonly note: string } {
	const powerW = Math.ceil(coolingW / wattsPerBtuH / leastCoolingBtuPerWh);
	return {
		powerW,
		note: `${said} is the cooling; its draw is taken as ${powerW} W (${leastCoolingBtuPerWh} Btu/Wh).`,
	};
}
