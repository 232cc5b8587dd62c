import type { Sheet } from '../topic/sheet.js';
import { published } from '../topic/source.js';

/** True where the load named is an inverter: its power is what it gives, not what it draws. */
export function isInverter(load: string | undefined): boolean {
	return load !== undefined && /inverter|inversor|wechselrichter/.test(load);
}

/** Efficiency of an inverter whose own is unknown; put on the sheet as assumed. */
export function assumedInverterEfficiency(sheet: Sheet): number {
	sheet.assume(
		'efficiency',
		'efficiency of the inverter',
		0.85,
		"the power named is the inverter's output; 85 % where its efficiency is unknown",
		{ kind: 'fraction', confirm: true },
	);
	return 0.85;
}

/**
 * What the inverter draws as the battery falls to its low end (1.75 V a lead-acid cell), against the fuse.
 * @param currentA drawn at the rated voltage [A]
 * @param deviceA rating of the fuse, or null where none was found [A]
 */
export function lowBatteryFinding(
	sheet: Sheet,
	currentA: number,
	voltageV: number,
	deviceA: number | null,
): void {
	const cutoffV = (voltageV / 12) * 10.5;
	const lowA = (currentA * voltageV) / cutoffV;
	const enough = deviceA !== null && lowA <= deviceA;
	const low = sheet.show('current', lowA, { round: 'up' });
	const cutoff = sheet.show('voltage', cutoffV);
	sheet.finding(
		enough ? 'note' : 'warning',
		'inverter-low-battery',
		enough
			? sheet.say`As the battery falls to ${cutoff} the inverter draws ${low}; the fuse still carries that for a while. The inverter topic sizes for that worst case.`
			: sheet.say`As the battery falls to ${cutoff} the inverter draws ${low}, above the fuse: ask the inverter topic, which sizes for that worst case.`,
		published('UPS capacity worksheet', 'end of discharge 1.75 V a cell'),
	);
}
