import { unknownInverterEfficiency, unknownInverterSource } from '../tables/batteries.js';
import { quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { sourceText } from '../topic/source.js';

/** What is asked of the inverter between bank and mains loads. */
export const inverterUseFields = {
	inverterEfficiency: quantity({
		label: 'inverter efficiency',
		kind: 'fraction',
		min: 0.3,
		max: 1,
		aliases: ['efficiency', 'efficient', 'eff', 'wirkungsgrad', 'eficiencia', 'rendimiento'],
	}),
	inverterIdleW: quantity({
		label: 'idle draw of the inverter',
		kind: 'power',
		min: 0,
		max: 500,
		aliases: ['idle', 'idle draw', 'idles', 'no load', 'standby', 'leerlauf', 'en vacío', 'self consumption'],
	}),
};

/** Idle draw of an unsearched inverter of 2 to 3 kW [W] (practice). */
export const usualIdleW = 20;

interface Named {
	readonly inverterEfficiency?: number | undefined;
	readonly inverterIdleW?: number | undefined;
}

/** Efficiency and idle draw as named, or assumed on the safe side and listed so. */
export function inverterUse(
	named: Named,
	sheet: Sheet,
): { readonly efficiency: number; readonly idleW: number } {
	return { efficiency: efficiencyOf(named, sheet), idleW: idleOf(named, sheet) };
}

export function efficiencyOf(named: Named, sheet: Sheet): number {
	if (named.inverterEfficiency !== undefined) return named.inverterEfficiency;
	sheet.assume(
		'inverterEfficiency',
		'inverter efficiency',
		unknownInverterEfficiency,
		sheet.say`not known: ${sourceText(unknownInverterSource)}`,
		{ kind: 'fraction', confirm: true },
	);
	sheet.source(unknownInverterSource);
	return unknownInverterEfficiency;
}

export function idleOf(named: Named, sheet: Sheet): number {
	if (named.inverterIdleW !== undefined) return named.inverterIdleW;
	sheet.assume(
		'inverterIdleW',
		'idle draw of the inverter',
		usualIdleW,
		'usual for an inverter of 2 to 3 kW (practice); the nameplate decides',
		{ kind: 'power', confirm: true },
	);
	return usualIdleW;
}
