import { equipmentOf } from '../equipment/index.js';
import { labelOf, type Piece } from '../van.js';
import { countOf, type Facts, isYes, num, word } from './facts.js';

/** One line of the weight ledger. */
export interface Weight {
	readonly piece: Piece;
	readonly name: string;
	/** without its water [kg] */
	readonly massKg: number;
	readonly waterL: number;
	/** mass told, not the usual one */
	readonly isToldMass: boolean;
	readonly zone: string | null;
	readonly isToldZone: boolean;
	readonly onRoof: boolean;
}

/** Things that stand on the roof unless told otherwise. */
const roofKinds: ReadonlySet<string> = new Set(['solar', 'air-conditioner', 'roof-rack']);
const tankKinds: ReadonlySet<string> = new Set(['fresh-tank', 'gray-tank']);
/** What is no load of the van or is told as a whole elsewhere. */
const weightless: ReadonlySet<string> = new Set([
	'van',
	'people',
	'place',
	'trip',
	'alternator',
	'starter-battery',
	'lift',
	'tires',
	'run',
	'fuse',
]);

/** Everything aboard by mass, usual masses where none was told. Fresh and gray are never full at once: the larger counts. */
export function weightsOf(facts: Facts): readonly Weight[] {
	return facts.once('weights', () => {
		const lines = facts.van.pieces
			.filter(({ kind }) => !weightless.has(kind))
			.flatMap((piece) => weightOf(piece) ?? []);
		const water = (kind: string) =>
			lines.filter(({ piece }) => piece.kind === kind).reduce((sum, { waterL }) => sum + waterL, 0);
		const emptied = water('gray-tank') > water('fresh-tank') ? 'fresh-tank' : 'gray-tank';
		return lines.map((line) => (line.piece.kind === emptied ? { ...line, waterL: 0 } : line));
	});
}

function weightOf(piece: Piece): Weight | null {
	const declared = equipmentOf(piece.kind);
	const told = num(piece, 'massKg');
	const usual = told === undefined ? declared.usualKg(piece.values as never) : null;
	const massKg = told === undefined ? usual : told * (piece.kind === 'battery' ? 1 : countOf(piece));
	const waterL = tankKinds.has(piece.kind) ? (num(piece, 'volumeL') ?? 0) * countOf(piece) : 0;
	if (massKg === null && waterL === 0) return null;
	const zone = word(piece, 'zone');
	return {
		piece,
		name: labelOf(piece),
		massKg: massKg ?? 0,
		waterL,
		isToldMass: told !== undefined,
		zone: zone ?? declared.usualZone,
		isToldZone: zone !== undefined,
		onRoof: isYes(piece, 'onRoof') || (roofKinds.has(piece.kind) && piece.values.portable !== true),
	};
}

/** How many ride along, where told. */
export function peopleOf(facts: Facts): number | null {
	const piece = facts.first('people');
	return piece === null ? null : (num(piece, 'people') ?? null);
}
