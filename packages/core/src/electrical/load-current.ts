import type { KindName } from '../quantity/kinds.js';
import { write } from '../quantity/write.js';
import type { Context } from '../topic/context.js';
import type { Refusal } from '../topic/sizing.js';
import { sayFor } from '../topic/translate.js';

/** A load as far as it was named. */
export interface NamedLoad {
	readonly currentA?: number | undefined;
	readonly powerW?: number | undefined;
	readonly voltageV?: number | undefined;
	readonly efficiency?: number | undefined;
}

/** Current and power that don't go together at the voltage named; a tenth apart is rounding, not contradiction. */
export function loadContradictions(load: NamedLoad, context: Context): Refusal[] {
	const { currentA, powerW, voltageV } = load;
	if (currentA === undefined || powerW === undefined || voltageV === undefined) return [];
	const impliedA = powerW / (voltageV * (load.efficiency ?? 1));
	if (Math.abs(impliedA - currentA) <= 0.1 * Math.max(currentA, impliedA)) return [];
	const show = (kind: KindName, value: number) => write(kind, value, context.units);
	return [
		{
			code: 'contradiction',
			text: sayFor(
				context,
			)`${show('current', currentA)} and ${show('power', powerW)} at ${show('voltage', voltageV)} contradict each other: that power draws ${show('current', impliedA)}.`,
			instead: 'Give the current or the power, whichever you trust.',
			field: 'currentA',
		},
	];
}
