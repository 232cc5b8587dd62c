import { chargingVoltageV } from '../../energy/bank.js';
import type { Piece } from '../van.js';
import { type BankFacts, knownBank } from './bank.js';
import { countOf, type Facts, num, word } from './facts.js';

/** One source of charge at the bank's voltage. */
export interface Source {
	readonly piece: Piece;
	readonly way: 'shore' | 'drive' | 'sun';
	/** null where it was not told [A] */
	readonly currentA: number | null;
}

/** Everything that charges the bank. */
export function sourcesOf(facts: Facts): readonly Source[] {
	return facts.once('sources', () => {
		const known = knownBank(facts);
		return facts.van.pieces.flatMap((piece): Source[] => {
			const times = countOf(piece);
			switch (piece.kind) {
				case 'charger':
				case 'dcdc': {
					const watts = num(piece, 'inputW');
					const byPower = watts === undefined || known === null ? null : watts / chargingV(known);
					const each = num(piece, 'chargeA') ?? byPower;
					const way = piece.kind === 'dcdc' ? 'drive' : 'shore';
					return [{ piece, way, currentA: each === null ? null : each * times }];
				}
				case 'inverter': {
					const each = num(piece, 'chargerA');
					const charges = piece.values.combi === true;
					return charges ? [{ piece, way: 'shore', currentA: each === undefined ? null : each * times }] : [];
				}
				case 'solar':
					return [{ piece, way: 'sun', currentA: solarA(facts, piece, known) }];
				default:
					return [];
			}
		});
	});
}

function chargingV(known: BankFacts): number {
	return chargingVoltageV(known.bank.chemistry, known.bank.classV);
}

/** What panels can give at the bank's voltage, at most what their controller passes [A]. */
function solarA(facts: Facts, piece: Piece, known: BankFacts | null): number | null {
	const panelW = num(piece, 'panelW');
	if (panelW === undefined || known === null) return null;
	const fromPanelsA = (panelW * countOf(piece)) / known.nominalV;
	const arrays = facts.pieces('solar').length;
	const passed = facts
		.pieces('solar-controller')
		.map((one) => (num(one, 'controllerA') ?? Number.POSITIVE_INFINITY) * countOf(one));
	// Several arrays share the controllers in a way nobody told: then the panels' own current counts.
	const limitA =
		arrays === 1 && passed.length > 0 ? passed.reduce((sum, one) => sum + one, 0) : Number.POSITIVE_INFINITY;
	return Math.min(fromPanelsA, limitA);
}

/** All panels together [W], or null where some were not told. */
export function arrayW(facts: Facts): number | null {
	const panels = facts.pieces('solar');
	if (panels.length === 0) return null;
	let sum = 0;
	for (const piece of panels) {
		const panelW = num(piece, 'panelW');
		if (panelW === undefined) return null;
		sum += panelW * countOf(piece);
	}
	return sum;
}

/** True where the bank is fed from the alternator in any way that was told. */
export function isChargedByAlternator(facts: Facts): boolean {
	const alternator = facts.first('alternator');
	return facts.has('dcdc', 'isolator') || (alternator !== null && word(alternator, 'link') === 'direct');
}
