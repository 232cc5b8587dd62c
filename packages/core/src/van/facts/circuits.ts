import { inverterInputA } from '../../energy/inverter.js';
import type { Piece } from '../van.js';
import { houseV, knownBank } from './bank.js';
import { inverterUseOf } from './budget.js';
import { countOf, type Facts, num } from './facts.js';
import { loadsAboard } from './loads.js';

/** The circuit of a piece: what flows in it, at which voltage. */
export interface Circuit {
	readonly piece: Piece;
	readonly supply: 'dc' | 'mains';
	readonly voltageV: number;
	/** the most that flows; null where it was not told [A] */
	readonly currentA: number | null;
	/** what flows at the bank's nominal voltage, where that differs [A] */
	readonly usualA?: number;
	/** on for 3 h or more */
	readonly continuous: boolean;
}

/** The circuits of everything that draws on the bank or feeds it, and of every mains load. */
export function circuitsOf(facts: Facts): readonly Circuit[] {
	return facts.once('circuits', () => facts.van.pieces.flatMap((piece) => circuitOf(facts, piece) ?? []));
}

function circuitOf(facts: Facts, piece: Piece): Circuit | null {
	const bankV = houseV(facts);
	const dc = (currentA: number | null, continuous = true): Circuit => ({
		piece,
		supply: 'dc',
		voltageV: bankV,
		currentA,
		continuous,
	});
	switch (piece.kind) {
		case 'inverter': {
			const ratedW = num(piece, 'ratedW');
			if (ratedW === undefined) return dc(null);
			const known = knownBank(facts);
			const { efficiency } = inverterUseOf(facts);
			const usualA = inverterInputA(ratedW, known?.nominalV ?? bankV, efficiency);
			return { ...dc(inverterInputA(ratedW, known?.cutoffV ?? bankV * 0.875, efficiency)), usualA };
		}
		case 'charger':
		case 'dcdc':
			return dc(num(piece, 'chargeA') ?? null);
		case 'solar-controller':
			return dc(num(piece, 'controllerA') ?? null);
		case 'shore-inlet':
			return {
				piece,
				supply: 'mains',
				voltageV: facts.rules.mainsVoltageV,
				currentA: num(piece, 'ratingA') ?? null,
				continuous: false,
			};
		default: {
			const mine = loadsAboard(facts).loads.filter((one) => one.piece === piece);
			const [first] = mine;
			if (first === undefined) return null;
			const { load } = first;
			const voltageV = load.mains ? facts.rules.mainsVoltageV : bankV;
			const isTyped =
				piece.values.powerW !== undefined ||
				piece.values.currentA !== undefined ||
				piece.values.drawW !== undefined;
			return {
				piece,
				supply: load.mains ? 'mains' : 'dc',
				voltageV,
				// A typical figure says nothing of this very circuit.
				currentA: isTyped ? load.runningW / countOf(piece) / voltageV : null,
				continuous: load.continuous,
			};
		}
	}
}
