import type { WriteOptions } from '../quantity/write.js';
import type { Sheet } from '../topic/sheet.js';

/** How an energy is written: whole watt-hours below 1 kWh, hundredths of a kilowatt-hour above. */
export function energyWrite(
	energyWh: number,
	round: NonNullable<WriteOptions['round']> = 'nearest',
): WriteOptions {
	return energyWh < 999.5 ? { unit: 'Wh', decimals: 0, round } : { unit: 'kWh', decimals: 2, round };
}

export function showEnergy(
	sheet: Sheet,
	energyWh: number,
	round: NonNullable<WriteOptions['round']> = 'nearest',
): string {
	return sheet.show('energy', energyWh, energyWrite(energyWh, round));
}
