import { type Load, type LoadProblem, resolveLoads } from '../../energy/loads.js';
import { equipmentOf } from '../equipment/index.js';
import type { Piece } from '../van.js';
import { houseV } from './bank.js';
import type { Facts } from './facts.js';

/** A load and the piece of equipment that draws it. */
export interface Aboard {
	readonly piece: Piece;
	readonly load: Load;
}

export interface LoadsAboard {
	readonly loads: readonly Aboard[];
	readonly problems: readonly { readonly piece: Piece; readonly problem: LoadProblem }[];
}

/** Every load aboard, what was not told filled in from the table of typical loads. */
export function loadsAboard(facts: Facts): LoadsAboard {
	return facts.once('loads', () => {
		const loads: Aboard[] = [];
		const problems: { piece: Piece; problem: LoadProblem }[] = [];
		const options = {
			bankV: houseV(facts),
			mainsV: facts.rules.mainsVoltageV,
			region: facts.context.region,
			over: 'day',
		} as const;
		for (const piece of facts.van.pieces) {
			const items = equipmentOf(piece.kind).draws(piece.values as never, facts.context);
			const resolved = resolveLoads(items, options);
			for (const load of resolved.loads) loads.push({ piece, load });
			if (resolved.problem !== null) problems.push({ piece, problem: resolved.problem });
		}
		return { loads, problems };
	});
}

/** Loads so heavy that they are judged by themselves: nobody counts them into every day unless they say the hours. */
const heavy: ReadonlySet<string> = new Set([
	'air conditioner',
	'12 V air conditioner',
	'water heater',
	'space heater',
	'heating pad',
	'floor heating',
	'dehumidifier',
]);

/** The loads of an ordinary day. */
export function dailyLoads(facts: Facts): readonly Aboard[] {
	return loadsAboard(facts).loads.filter(
		({ piece, load }) => !heavy.has(load.typical?.name ?? '') || piece.values.durationH !== undefined,
	);
}

/** Loads that need mains: shore power, a generator or the inverter. */
export function mainsLoads(facts: Facts): readonly Aboard[] {
	return loadsAboard(facts).loads.filter(({ load }) => load.mains);
}

/** Mains loads that the inverter may have to carry. */
export function inverterLoads(facts: Facts): readonly Aboard[] {
	return mainsLoads(facts).filter(({ piece }) => piece.values.onBank !== 'mains');
}
