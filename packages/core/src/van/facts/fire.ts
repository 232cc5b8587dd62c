import type { Piece } from '../van.js';
import { type Facts, isYes, word } from './facts.js';

/** What burns a fuel aboard, or may: each can give off carbon monoxide. */
export function burners(facts: Facts): readonly Piece[] {
	return facts.van.pieces.filter((piece) => {
		switch (piece.kind) {
			case 'heater': {
				const fuel = word(piece, 'fuel');
				return piece.values.unvented === true || (fuel !== undefined && fuel !== 'electric');
			}
			case 'cooktop': {
				const fuel = word(piece, 'fuel');
				return fuel !== undefined && fuel !== 'induction';
			}
			case 'water-heater':
				return ['propane', 'diesel'].includes(word(piece, 'fuel') ?? '');
			case 'fridge':
				return word(piece, 'works') === 'absorption';
			case 'generator':
			case 'propane':
				return true;
			default:
				return false;
		}
	});
}

/** What holds or burns fuel gas. */
export function gasUsers(facts: Facts): readonly Piece[] {
	return facts.van.pieces.filter((piece) => {
		if (piece.kind === 'propane') return true;
		if (piece.kind === 'fridge') return word(piece, 'works') === 'absorption';
		if (piece.kind === 'generator') return word(piece, 'fuel') === 'propane';
		return ['gas', 'propane'].includes(word(piece, 'fuel') ?? '');
	});
}

/** One alarm may watch for both gases. */
export function hasGasAlarm(facts: Facts): boolean {
	return facts.has('gas-alarm') || facts.pieces('co-alarm').some((piece) => isYes(piece, 'combined'));
}
