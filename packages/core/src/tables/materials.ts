import { fromMemory, published, type Source } from '../topic/source.js';

/** A building material as a plane layer: its design conductivity, with the words by which people name it. */
export interface Material {
	readonly conductivityWmK: number;
	readonly words: readonly string[];
	readonly source: Source;
}

const iso10456 = (clause: string) => fromMemory('ISO 10456', clause);
const handbook = (clause: string) => fromMemory('ASHRAE Handbook of Fundamentals', clause);

/** Foams age, and some insulate worse in deep cold: the maker's declared value for the product wins. */
export const materials = {
	eps: {
		conductivityWmK: 0.036,
		words: ['EPS', 'expanded polystyrene', 'white foam board', 'eps foam'],
		source: handbook('design values, expanded polystyrene EPS'),
	},
	xps: {
		conductivityWmK: 0.029,
		words: ['XPS', 'extruded polystyrene', 'xps board', 'xps foam', 'rigid foam', 'foam board', 'hartschaum'],
		source: published('lists of insulation R-values', 'R 5 per inch, rounded up in conductivity'),
	},
	polyiso: {
		conductivityWmK: 0.024,
		words: ['polyiso', 'polyisocyanurate', 'polyiso board', 'pir', 'pir board'],
		source: handbook('design values, polyisocyanurate faced'),
	},
	closedCellSpray: {
		conductivityWmK: 0.024,
		words: [
			'closed-cell spray foam',
			'closed cell spray foam',
			'spray foam',
			'closed cell',
			'spray polyurethane',
			'pu foam',
			'sprühschaum',
			'espuma proyectada',
		],
		source: handbook('design values, closed-cell spray polyurethane'),
	},
	openCellSpray: {
		conductivityWmK: 0.04,
		words: ['open-cell spray foam', 'open cell spray foam', 'open cell'],
		source: published('lists of insulation R-values', 'R 3.6 per inch'),
	},
	mineralWool: {
		conductivityWmK: 0.035,
		words: ['mineral wool', 'rock wool', 'stone wool', 'steinwolle', 'lana de roca'],
		source: handbook('design values, mineral (stone) wool batt'),
	},
	glassWool: {
		conductivityWmK: 0.045,
		words: ['glass wool', 'fiberglass', 'fibreglass', 'fiberglass batt', 'glaswolle', 'lana de vidrio'],
		source: published('lists of insulation R-values', 'R 3.2 per inch'),
	},
	sheepWool: {
		conductivityWmK: 0.039,
		words: ['sheep wool', "sheep's wool", 'wool', 'schafwolle', 'lana de oveja'],
		source: handbook('design values, sheep wool'),
	},
	cork: {
		conductivityWmK: 0.04,
		words: ['cork', 'cork board', 'kork', 'corcho'],
		source: handbook('design values, cork board'),
	},
	elastomericFoam: {
		conductivityWmK: 0.036,
		words: [
			'elastomeric foam',
			'closed-cell rubber foam',
			'rubber foam',
			'self-adhesive foam',
			'kautschuk',
			'espuma elastomérica',
		],
		source: handbook('design values, elastomeric closed-cell foam sheet'),
	},
	polyethyleneFoam: {
		conductivityWmK: 0.038,
		words: ['polyethylene foam', 'pe foam', 'xpe foam'],
		source: handbook('design values, polyethylene closed-cell foam sheet'),
	},
	plywood: {
		conductivityWmK: 0.13,
		words: ['plywood', 'ply', 'sperrholz', 'contrachapado'],
		source: iso10456('design values, plywood'),
	},
	softwood: {
		conductivityWmK: 0.13,
		words: ['softwood', 'pine', 'cedar', 'spruce', 'nadelholz'],
		source: iso10456('design values, softwood'),
	},
	hardwood: {
		conductivityWmK: 0.18,
		words: ['hardwood', 'hartholz'],
		source: iso10456('design values, hardwood'),
	},
	glass: {
		conductivityWmK: 1,
		words: ['glass', 'vidrio', 'glas'],
		source: iso10456('design values, glass soda-lime'),
	},
	steel: {
		conductivityWmK: 50,
		words: ['steel', 'acero', 'stahl'],
		source: iso10456('design values, steel'),
	},
	stainlessSteel: {
		conductivityWmK: 17,
		words: ['stainless steel', 'stainless'],
		source: iso10456('design values, stainless steel austenitic'),
	},
	aluminium: {
		conductivityWmK: 160,
		words: ['aluminium', 'aluminum', 'aluminio'],
		source: iso10456('design values, aluminium alloy'),
	},
	acrylic: {
		conductivityWmK: 0.2,
		words: ['acrylic', 'pmma'],
		source: iso10456('design values, acrylic PMMA'),
	},
	polycarbonate: {
		conductivityWmK: 0.2,
		words: ['polycarbonate'],
		source: iso10456('design values, polycarbonate'),
	},
	abs: {
		conductivityWmK: 0.17,
		words: ['ABS'],
		source: handbook('design values, ABS'),
	},
	pvc: {
		conductivityWmK: 0.17,
		words: ['PVC'],
		source: iso10456('design values, PVC rigid'),
	},
	rubber: {
		conductivityWmK: 0.25,
		words: ['rubber', 'EPDM'],
		source: iso10456('design values, rubber EPDM'),
	},
	linoleum: {
		conductivityWmK: 0.17,
		words: ['linoleum'],
		source: iso10456('design values, linoleum'),
	},
	vinylFloor: {
		conductivityWmK: 0.2,
		words: ['vinyl floor', 'vinyl flooring'],
		source: handbook('design values, PVC flooring sheet'),
	},
	reinforcedPolyester: {
		conductivityWmK: 0.3,
		words: ['glass-fibre reinforced polyester', 'gfrp', 'frp'],
		source: handbook('design values, glass-fibre reinforced polyester'),
	},
	carpet: {
		conductivityWmK: 0.06,
		words: ['carpet', 'teppich', 'moqueta'],
		source: iso10456('design values, carpet'),
	},
} as const satisfies Record<string, Material>;

export type MaterialName = keyof typeof materials;

/** The materials sold to insulate with. */
export const insulationNames = [
	'eps',
	'xps',
	'polyiso',
	'closedCellSpray',
	'openCellSpray',
	'mineralWool',
	'glassWool',
	'sheepWool',
	'cork',
	'elastomericFoam',
	'polyethyleneFoam',
] as const satisfies readonly MaterialName[];

export type InsulationName = (typeof insulationNames)[number];

/** Words for a field's choice of insulation. */
export const insulationOptions = Object.fromEntries(
	insulationNames.map((name) => [name, materials[name].words]),
) as unknown as Readonly<Record<InsulationName, readonly string[]>>;
