import { fromMemory, published, type Source } from '../topic/source.js';

/** What a beam may be made of. */
export interface BeamMaterial {
	readonly name: string;
	/** modulus of elasticity [GPa] */
	readonly modulusGpa: number;
	/** stress at which it yields; for wood the characteristic bending strength [MPa] */
	readonly strengthMpa: number;
	/** the same beside a weld, or null where it isn't welded or does not lose strength [MPa] */
	readonly weldedMpa: number | null;
	readonly densityKgM3: number;
	readonly source: Source;
}

const extrusions = published('ASTM B221 / Aluminum Design Manual', 'minimum strengths of extrusions');
const wood = fromMemory('EN 338 and plywood makers’ handbooks', 'low end of the usual range');

/**
 * Minimum strengths, so that a better piece only adds reserve. The 6063-T5 row is that of walls up to 12.5 mm.
 * Beside a weld 6061-T6 keeps about half its yield; the same half is taken for its neighbours.
 */
export const beamMaterials = {
	'6063-T5': aluminium('6063-T5', 110),
	'6063-T6': aluminium('6063-T6', 172),
	'6061-T6': aluminium('6061-T6', 241),
	'6005A-T61': aluminium('6005A-T61', 241),
	'6105-T5': {
		...aluminium('6105-T5', 241),
		source: fromMemory('ASTM B221', '6105-T5 extrusions up to 25 mm'),
	},
	steel: {
		name: 'mild steel',
		modulusGpa: 200,
		strengthMpa: 235,
		weldedMpa: 235,
		densityKgM3: 7850,
		source: fromMemory('EN 10025-2', 'S235, yield 235 MPa up to 16 mm'),
	},
	stainless: {
		name: 'stainless steel 304',
		modulusGpa: 193,
		strengthMpa: 205,
		weldedMpa: 205,
		densityKgM3: 7930,
		source: fromMemory('ASTM A240', 'type 304, yield 30 ksi'),
	},
	plywood: {
		name: 'birch plywood',
		modulusGpa: 6,
		strengthMpa: 20,
		weldedMpa: null,
		densityKgM3: 700,
		source: wood,
	},
	softwood: {
		name: 'softwood C16',
		modulusGpa: 8,
		strengthMpa: 16,
		weldedMpa: null,
		densityKgM3: 600,
		source: wood,
	},
} as const satisfies Record<string, BeamMaterial>;

export type BeamMaterialName = keyof typeof beamMaterials;

function aluminium(temper: string, strengthMpa: number): BeamMaterial {
	return {
		name: `aluminium ${temper}`,
		modulusGpa: 69.6,
		strengthMpa,
		weldedMpa: strengthMpa / 2,
		densityKgM3: 2700,
		source: extrusions,
	};
}
