import { practice } from '../topic/source.js';
import type { Load } from './loads.js';

export const clockSource = practice('when in the day a load is used, where nobody said');

/** Clock hour at which a load commonly begins, by the name in the table of typical loads (practice). */
export const usualStartH: Readonly<Record<string, number>> = {
	lights: 18,
	television: 19,
	monitor: 9,
	laptop: 9,
	'desktop computer': 9,
	stereo: 18,
	'coffee maker': 7,
	kettle: 7,
	toaster: 7,
	blender: 7,
	'hair dryer': 7,
	microwave: 18,
	'induction cooktop': 18,
	'air fryer': 18,
	'pressure cooker': 18,
	'washing machine': 11,
	dishwasher: 20,
	'vacuum cleaner': 11,
	'diesel heater': 20,
	'electric blanket': 22,
	'sleep apnea machine': 22,
	'satellite internet': 9,
	'electric bicycle charger': 18,
	'tool charger': 18,
	'air conditioner': 12,
	'roof fan': 12,
};

/** A load with the clock hour at which it is switched on, or null where it is spread over the day. */
export interface TimedLoad {
	readonly load: Load;
	readonly startH: number | null;
}

/** The hour a load begins: as said, else the usual one, else null: evenly over the day. */
export function startOf(load: Load, saidH: number | undefined): number | null {
	if (saidH !== undefined) return saidH % 24;
	return (load.typical === null ? undefined : usualStartH[load.typical.name]) ?? null;
}

/** What feeds the mains loads. */
interface InverterFeed {
	readonly efficiency: number;
	readonly idleW: number;
}

/**
 * Mean power from the bank in each clock hour of a day [W]. Every load keeps its energy of the day; where its hours
 * begin is known it takes it in them, otherwise evenly. An inverter idles all day.
 */
export function dayShape(loads: readonly TimedLoad[], inverter: InverterFeed): number[] {
	const shape = new Array<number>(24).fill(0);
	for (const { load, startH } of loads) {
		const energyWh = (load.dailyWh ?? 0) / (load.mains ? inverter.efficiency : 1);
		const hours = load.hoursPerDay ?? 24;
		spread(shape, energyWh, startH === null ? 0 : startH, startH === null ? 24 : Math.min(24, hours));
	}
	if (loads.some(({ load }) => load.mains)) spread(shape, inverter.idleW * 24, 0, 24);
	return shape;
}

/** Adds an energy to the hours from a clock hour on, round midnight. */
export function spread(shape: number[], energyWh: number, startH: number, hours: number): void {
	if (energyWh === 0 || hours <= 0) return;
	const powerW = energyWh / hours;
	const end = startH + hours;
	for (let hour = Math.floor(startH); hour < end; hour += 1) {
		const overlapH = Math.min(hour + 1, end) - Math.max(hour, startH);
		shape[hour % 24] = (shape[hour % 24] as number) + powerW * overlapH;
	}
}
