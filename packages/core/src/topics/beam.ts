import { writeNumber } from '../quantity/write.js';
import { cautionJoints, cautionLifting, cautionMoving } from '../structure/cautions.js';
import {
	barWeightNPerM,
	checkMember,
	type Holding,
	keeps,
	type Limits,
	longestSpanM,
	type Member,
	type MemberCheck,
	type MemberLoad,
} from '../structure/member.js';
import {
	alloyPattern,
	boardPattern,
	readBoardMm,
	readSection,
	sectionPattern,
} from '../structure/section-text.js';
import { isPossible, type Section, type Shape, sectionOf, shapeName } from '../structure/sections.js';
import { type BeamMaterial, type BeamMaterialName, beamMaterials } from '../tables/metals.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, flag, type InputOf, list, number, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';
import { gravityMS2 } from '../weight/gravity.js';

/** A person who was named without a mass [kg]. */
const usualPersonKg = 100;
/** Walls thinner than this share of their flat width may buckle before they yield. */
const slenderAbove = 35;

const loadItem = {
	name: text({
		label: 'load',
		words: [
			'person',
			'people',
			'persons',
			'adult',
			'adults',
			'mattress',
			'battery',
			'fridge',
			'boxes',
			'bike',
			'bikes',
			'tv',
			'cabinet',
			'tools',
			'stove',
			'load',
			'personas',
			'personen',
			'matratze',
			'colchón',
		],
	}),
	count: count({ label: 'how many', min: 1, max: 50, aliases: [] }),
	massKg: quantity({ label: 'mass', kind: 'mass', min: 0.01, max: 5000, aliases: ['mass', 'weight'] }),
	forceN: quantity({ label: 'force', kind: 'force', min: 0.1, max: 50_000, aliases: ['force'] }),
	lineLoadNPerM: quantity({
		label: 'line load',
		kind: 'lineLoad',
		min: 0.1,
		max: 50_000,
		aliases: ['line load', 'uniform'],
	}),
	atM: quantity({
		label: 'place (or where a spread load begins)',
		kind: 'length',
		min: -5,
		max: 12,
		aliases: ['at', 'from'],
		help: 'From the left support; from the wall for a cantilever.',
	}),
	toM: quantity({ label: 'where a spread load ends', kind: 'length', min: -5, max: 12, aliases: ['to'] }),
	spread: flag({
		label: 'spread evenly',
		yes: [
			'spread',
			'evenly',
			'spread evenly',
			'uniform',
			'uniformly',
			'distributed',
			'verteilt',
			'gleichmäßig',
			'repartida',
		],
		no: ['in the middle', 'point load', 'concentrated', 'centered', 'at the middle'],
	}),
};

const fields = {
	spanM: quantity({
		label: 'span',
		kind: 'length',
		min: 0.02,
		max: 10,
		aliases: [
			'span',
			'spans',
			'spanning',
			'between supports',
			'clear span',
			'sticks out',
			'spannweite',
			'stützweite',
			'luz',
			'vano',
		],
		help: 'Between the supports; for a cantilever from the wall to the tip.',
	}),
	loads: list({
		label: 'loads',
		aliases: [],
		item: loadItem,
		max: 30,
		help: 'Each with a mass, a force or a line load, and its place where it has one.',
		required: 'What load does it carry?',
	}),
	section: text({
		label: 'section',
		pattern: sectionPattern,
		help: 'Width × height × wall, "40x40x2"; two figures are a solid bar.',
	}),
	shape: choice({
		label: 'shape of the section',
		options: {
			tube: [
				'tube',
				'box tube',
				'square tube',
				'rectangular tube',
				'box section',
				'hollow',
				'vierkantrohr',
				'tubo cuadrado',
			],
			rectangle: [
				'solid bar',
				'flat bar',
				'flat',
				'solid',
				'plank',
				'board',
				'sheet',
				'slat',
				'flachstahl',
				'brett',
				'pletina',
			],
			angle: ['angle', 'l profile', 'angle iron', 'winkel', 'winkelprofil', 'ángulo'],
			round: ['round bar', 'rod', 'rundstab', 'varilla'],
			pipe: ['round tube', 'pipe', 'rohr', 'tubo redondo'],
		},
	}),
	onEdge: flag({
		label: 'standing on edge',
		yes: ['on edge', 'upright', 'standing', 'on its edge', 'vertical', 'hochkant', 'de canto'],
		no: ['lying flat', 'laid flat', 'flat side down', 'flachliegend', 'acostado'],
		help: 'For a section of two unlike sides given as one marking; without a word it is taken as lying flat.',
	}),
	board: text({
		label: 'nominal thickness of a board',
		pattern: boardPattern,
		help: 'A fraction of an inch before the word plywood or board, "3/4 plywood".',
	}),
	widthMm: quantity({
		label: 'width of the section',
		kind: 'thickness',
		min: 1,
		max: 3000,
		aliases: ['wide', 'width', 'breit', 'breite', 'ancho'],
	}),
	heightMm: quantity({
		label: 'height of the section',
		kind: 'thickness',
		min: 1,
		max: 1000,
		aliases: [
			'high',
			'tall',
			'height',
			'thick',
			'deep',
			'hoch',
			'höhe',
			'dick',
			'alto',
			'grueso',
			'ply',
			'plywood',
			'board',
			'sheet',
			'sperrholz',
			'contrachapado',
		],
	}),
	wallMm: quantity({
		label: 'wall',
		kind: 'thickness',
		min: 0.3,
		max: 50,
		aliases: ['wall', 'wall thickness', 'wandstärke', 'pared'],
	}),
	diameterMm: quantity({
		label: 'diameter',
		kind: 'thickness',
		min: 1,
		max: 500,
		aliases: ['diameter', 'dia', 'round', 'durchmesser', 'diámetro'],
	}),
	secondMomentMm4: quantity({
		label: 'second moment of area',
		kind: 'secondMoment',
		min: 1,
		max: 1e9,
		aliases: ['second moment', 'moment of inertia', 'ix', 'inertia', 'trägheitsmoment', 'inercia'],
		help: 'From the maker for a slotted profile; it is much less than that of its outline.',
	}),
	material: choice({
		label: 'material',
		options: {
			'6063-T5': ['aluminium 6063-T5', 'aluminium', 'aluminum', 'alum', 'alu', 'aluminio', 'extrusion'],
			'6063-T6': ['aluminium 6063-T6'],
			'6061-T6': ['aluminium 6061-T6'],
			'6005A-T61': ['aluminium 6005A-T61'],
			'6105-T5': ['aluminium 6105-T5'],
			steel: ['mild steel', 'steel', 'stahl', 'acero'],
			stainless: ['stainless steel', 'stainless', 'edelstahl', 'inox', 'inoxidable'],
			plywood: ['birch plywood', 'plywood', 'ply', 'sperrholz', 'contrachapado'],
			softwood: [
				'softwood',
				'pine',
				'spruce',
				'wood',
				'lumber',
				'timber',
				'holz',
				'kiefer',
				'madera',
				'pino',
			],
		},
		fallback: {
			value: '6063-T5',
			why: 'the weakest usual aluminium extrusion, the safe side',
			confirm: true,
		},
	}),
	alloy: text({
		label: 'alloy and temper',
		pattern: alloyPattern,
		help: 'As 6061-T6; it stands before the material.',
	}),
	modulusGpa: quantity({
		label: 'modulus of elasticity',
		kind: 'modulus',
		min: 0.5,
		max: 400,
		aliases: ['modulus', 'e modulus', 'youngs modulus', 'e-modul'],
	}),
	strengthMpa: quantity({
		label: 'yield strength',
		kind: 'stress',
		min: 1,
		max: 2000,
		aliases: ['yield', 'yield strength', 'fy', 'strength', 'streckgrenze', 'límite elástico'],
	}),
	welded: flag({
		label: 'welded where it bends most',
		yes: ['welded', 'weld', 'geschweißt', 'soldado', 'soldada'],
		fallback: { value: false, why: 'not welded where it bends most' },
	}),
	holding: choice({
		label: 'how it is held',
		options: {
			simple: [
				'simply supported',
				'resting on both ends',
				'both ends',
				'two supports',
				'rests on',
				'sits on',
				'on brackets',
				'frei aufliegend',
				'apoyada',
			],
			cantilever: [
				'cantilever',
				'cantilevered',
				'one end',
				'fixed at one end',
				'kragarm',
				'voladizo',
				'auskragend',
			],
			fixed: [
				'fixed at both ends',
				'fixed ends',
				'fixed both ends',
				'built in',
				'welded both ends',
				'clamped',
				'beidseitig eingespannt',
				'empotrada',
			],
			propped: ['propped cantilever', 'propped', 'one end fixed'],
		},
		fallback: { value: 'simple', why: 'ends free to turn, the safe side', confirm: true },
	}),
	overhangM: quantity({
		label: 'overhang beyond the right support',
		kind: 'length',
		min: 0.01,
		max: 5,
		aliases: ['overhang', 'overhangs', 'past the support', 'beyond the support', 'überstand', 'vuelo'],
	}),
	leftOverhangM: quantity({
		label: 'overhang beyond the left support',
		kind: 'length',
		min: 0.01,
		max: 5,
		aliases: ['left overhang', 'overhang left', 'overhang on the left'],
	}),
	rails: count({
		label: 'members that share the load',
		min: 1,
		max: 40,
		aliases: [
			'rails',
			'slats',
			'crossbars',
			'crossbeams',
			'beams',
			'bars',
			'members',
			'bearers',
			'leisten',
			'travesaños',
		],
		fallback: { value: 1, why: 'one member carries it all' },
	}),
	limitRatio: number({
		label: 'span over sag',
		min: 20,
		max: 2000,
		aliases: ['l', 'limit', 'span over', 'deflection limit'],
		help: 'The 240 of L/240.',
		fallback: { value: 240, why: 'L/240, as for floors under their whole load (practice)' },
	}),
	moving: flag({
		label: 'loaded while driving',
		yes: [
			'while driving',
			'driving',
			'in motion',
			'roof rack',
			'on the road',
			'moving',
			'während der fahrt',
			'en marcha',
		],
		no: [
			'parked',
			'camp only',
			'only parked',
			'bed',
			'bed rail',
			'bed frame',
			'bunk',
			'bett',
			'cama',
			'litera',
		],
		help: 'People leave a bed while driving.',
		fallback: { value: true, why: 'what is built into a van rides along', confirm: true },
	}),
	bumpFactor: number({
		label: 'load factor on bumps',
		min: 1,
		max: 10,
		aliases: ['bump factor', 'dynamic factor', 'impact factor', 'shock factor'],
		fallback: {
			value: (given) => (given.moving === false ? 1 : 2),
			why: 'twice the load on bumps where it rides along; for strength, not for sag (practice)',
		},
	}),
	safetyFactor: number({
		label: 'safety factor on yield',
		min: 1,
		max: 20,
		aliases: ['safety factor', 'factor of safety', 'sf', 'sicherheit', 'coeficiente de seguridad'],
		fallback: { value: 2, why: 'two against yield (practice)' },
	}),
};

type Input = InputOf<typeof fields>;
type LoadInput = Input['loads'][number];

export const beam = declareTopic({
	name: 'beam',
	title: 'Rail, crossbeam or shelf in bending',
	system: 'structure',
	purpose: 'Whether a rail, crossbeam or shelf is stiff and strong enough, and the span or section that is.',
	words: [
		'beam',
		'how far',
		'longest span',
		'max span',
		'maximum span',
		'bed rail',
		'shelf',
		'crossbar',
		'crossbeam',
		'slat',
		'deflection',
		'sag',
		'bend',
		'joist',
		'rail',
		'stringer',
		'balken',
		'träger',
		'durchbiegung',
		'regal',
		'viga',
		'estante',
		'flecha',
	],
	examples: [
		'bed rail 40x40x2 span 1.2 m, 120 kg spread',
		'bed rail span 1.2 m, 180 kg spread, tube 40 mm wide 40 mm high 2 mm wall',
		'shelf span 36 in, 60 lb, plywood 12 in wide 0.5 in thick',
		'shelf 3/4 plywood 16 in wide 4 ft span, 50 lb spread',
		'how far can a 40x20x2 aluminum tube span with 50 kg',
		'beam span 2 m, 300 N at 0.5 m, 200 N at 1.4 m, 100 N/m from 0.2 m to 1 m, I 8.2 cm4 40 mm high',
		'steel cantilever span 250 mm, 10 kg, flat bar 30 mm wide 6 mm high',
	],
	method:
		'Straight member of even section by direct integration of its moments (small sag, no shear sag), own weight included; sag under the standing load, stress under the load factor. Joints, buckling of thin walls, twist and fatigue are not covered.',
	fields,
	needs: [
		{
			anyOf: ['section', 'widthMm', 'heightMm', 'board', 'diameterMm', 'secondMomentMm4'],
			question: 'Which section is it (as 40x40x2 tube), or what is its second moment of area?',
		},
	],
	calculate: calculateBeam,
});

function n(value: number, decimals = 2): string {
	return writeNumber(value, decimals);
}

function calculateBeam(input: Input, sheet: Sheet) {
	sheet.caution(cautionJoints, cautionLifting, cautionMoving);
	const { spanM: saidM, loads: given } = spanOf(input, sheet);
	// Without a span the longest one is the answer, unless a place on it was named.
	const isOpen = saidM === null && given.every((load) => load.atM === undefined && load.toM === undefined);
	const spanM = saidM ?? (isOpen ? 1 : null);
	if (spanM === null) {
		return sheet.ask({
			name: 'spanM',
			label: fields.spanM.meta.label,
			question: sheet.say`What is the span between the supports?`,
		});
	}
	const bare = given.find((load) => massless(load));
	if (bare !== undefined || given.length === 0) {
		const name = bare?.name ?? 'the load';
		return sheet.ask({
			name: 'loads',
			label: fields.loads.meta.label,
			question: sheet.say`What does ${name} weigh?`,
		});
	}
	const section = sectionFrom(input, sheet);
	if ('problem' in section) {
		return section.problem === 'missing'
			? sheet.ask({ name: 'section', label: fields.section.meta.label, question: section.text })
			: sheet.refuse(
					'impossible',
					section.text,
					sheet.say`Give width, height and wall as 40x40x2, in mm or with "in".`,
					'section',
				);
	}
	const material = materialOf(input);
	if (material === null) {
		return sheet.refuse(
			'not-covered',
			sheet.say`I read "${input.alloy as string}" as the alloy; its temper decides the strength.`,
			sheet.say`Name one of: ${Object.keys(beamMaterials).join(', ')}.`,
			'alloy',
		);
	}
	const member = memberOf(input, spanM, given, section, material, sheet);
	const check = checkMember(member);
	if (check === null) {
		return sheet.refuse(
			'contradiction',
			sheet.say`A load stands off the member, or ends before it begins.`,
			sheet.say`Places are measured from the left support (from the wall for a cantilever), within span and overhang.`,
			'loads',
		);
	}
	const strengthMpa =
		input.strengthMpa ??
		(input.welded && material.weldedMpa !== null ? material.weldedMpa : material.strengthMpa);
	const limits: Limits = {
		ratio: input.limitRatio,
		stressMpa: member.modulusMm3 === null ? null : strengthMpa / (input.safetyFactor * input.bumpFactor),
	};
	if (saidM === null)
		return longestFor({ input, member, check, limits, strengthMpa, section, material }, sheet);
	writeWorking(input, member, section, material, check, strengthMpa, sheet);
	return judge({ input, member, check, limits, strengthMpa, section, material }, sheet);
}

/** Where the span was not named as such, the one length in the message is it, or the longer of two. */
function spanOf(input: Input, sheet: Sheet): { spanM: number | null; loads: readonly LoadInput[] } {
	if (input.spanM !== undefined) return { spanM: input.spanM, loads: input.loads };
	const lone = input.loads.filter((load) => massless(load) && load.atM !== undefined && !isNamedLoad(load));
	const rest = input.loads.filter((load) => !lone.includes(load));
	const placed = rest.filter((load) => load.atM !== undefined);
	const [first] = lone.length === 1 ? lone : placed.length === 1 && lone.length === 0 ? placed : [];
	// "1 m with 80 kg at 0.5 m" gives two lengths; a spread load would end after it begins.
	const isSpread = first?.toM !== undefined && first.atM !== undefined && first.toM > first.atM;
	if (first?.atM === undefined || isSpread || first.atM < 0.02) return { spanM: null, loads: input.loads };
	sheet.assume('spanM', fields.spanM.meta.label, first.atM, 'the one length named is taken as the span', {
		kind: 'length',
		confirm: true,
	});
	const placedAgain = { ...first, atM: first.toM, toM: undefined };
	return {
		spanM: first.atM,
		loads: lone.length === 1 ? rest : rest.map((load) => (load === first ? placedAgain : load)),
	};
}

function isNamedLoad(load: LoadInput): boolean {
	const { type } = loadItem.name;
	return load.name !== undefined && type.sort === 'text' && type.words.includes(load.name.toLowerCase());
}

function massless(load: LoadInput): boolean {
	return (
		load.massKg === undefined &&
		load.forceN === undefined &&
		load.lineLoadNPerM === undefined &&
		!isPerson(load)
	);
}

function isPerson(load: LoadInput): boolean {
	return load.name !== undefined && /person|people|adult/.test(load.name);
}

type SectionProblem = { readonly problem: 'missing' | 'impossible'; readonly text: string };
interface Given {
	readonly section: Section | null;
	readonly shape: Shape | null;
	readonly secondMomentMm4: number;
	readonly modulusMm3: number | null;
}

function sectionFrom(input: Input, sheet: Sheet): Given | SectionProblem {
	if (input.secondMomentMm4 !== undefined) {
		return {
			section: null,
			shape: null,
			secondMomentMm4: input.secondMomentMm4,
			modulusMm3: input.heightMm === undefined ? null : input.secondMomentMm4 / (input.heightMm / 2),
		};
	}
	const shape = shapeFrom(input, sheet);
	if ('problem' in shape) return shape;
	if (!isPossible(shape)) {
		return {
			problem: 'impossible',
			text: sheet.say`The wall is too thick for the width and height: no such section can be.`,
		};
	}
	const section = sectionOf(shape);
	return { section, shape, secondMomentMm4: section.freeSecondMomentMm4, modulusMm3: section.modulusMm3 };
}

/** "1x3" may lie or stand: lying flat is the safe side. */
function laid(shape: Shape, onEdge: boolean | undefined, sheet: Sheet): Shape {
	if (!('heightMm' in shape) || shape.widthMm === shape.heightMm) return shape;
	if (onEdge === undefined) {
		sheet.assume(
			'onEdge',
			fields.onEdge.meta.label,
			false,
			'lying flat, the safe side; say on edge where it stands',
			{
				confirm: true,
			},
		);
	}
	const sides = [shape.widthMm, shape.heightMm];
	const heightMm = onEdge === true ? Math.max(...sides) : Math.min(...sides);
	return { ...shape, heightMm, widthMm: shape.widthMm + shape.heightMm - heightMm };
}

function shapeFrom(input: Input, sheet: Sheet): Shape | SectionProblem {
	if (input.section !== undefined) {
		const read = readSection(input.section, input.shape);
		return read === null
			? { problem: 'impossible', text: sheet.say`I read "${input.section}" as the section; that can't be.` }
			: laid(read, input.onEdge, sheet);
	}
	const { widthMm, wallMm, diameterMm } = input;
	const heightMm = input.heightMm ?? (input.board === undefined ? undefined : readBoardMm(input.board));
	if (diameterMm !== undefined) {
		return wallMm === undefined ? { shape: 'round', diameterMm } : { shape: 'pipe', diameterMm, wallMm };
	}
	const side = widthMm ?? heightMm;
	if (side === undefined)
		return { problem: 'missing', text: sheet.say`Which section is it (as 40x40x2 tube)?` };
	if (wallMm !== undefined) {
		return {
			shape: input.shape === 'angle' ? 'angle' : 'tube',
			widthMm: widthMm ?? side,
			heightMm: heightMm ?? side,
			wallMm,
		};
	}
	if (input.shape === 'tube' || input.shape === 'angle' || input.shape === 'pipe') {
		return { problem: 'missing', text: sheet.say`How thick is its wall?` };
	}
	if (widthMm === undefined || heightMm === undefined) {
		return {
			problem: 'missing',
			text: widthMm === undefined ? sheet.say`How wide is it?` : sheet.say`How high (thick) is it?`,
		};
	}
	return { shape: 'rectangle', widthMm, heightMm };
}

function materialOf(input: Input): BeamMaterial | null {
	if (input.alloy === undefined) return beamMaterials[input.material];
	const plain = (text: string) => text.toUpperCase().replaceAll(/[\s-]/g, '');
	const wanted = plain(input.alloy);
	const names = Object.keys(beamMaterials) as BeamMaterialName[];
	const exact = names.find((name) => plain(name) === wanted);
	// Without its temper an alloy counts for the weakest of its tempers in the table.
	const name = exact ?? names.find((one) => plain(one).startsWith(wanted));
	return name === undefined ? null : beamMaterials[name];
}

function memberOf(
	input: Input,
	spanM: number,
	given: readonly LoadInput[],
	section: Given,
	material: BeamMaterial,
	sheet: Sheet,
): Member {
	return {
		holding: input.holding,
		spanM,
		leftOverhangM: input.leftOverhangM ?? 0,
		rightOverhangM: input.overhangM ?? 0,
		loads: given.map((load) => loadFrom(load, spanM, input, sheet)),
		sharing: input.rails,
		secondMomentMm4: section.secondMomentMm4,
		modulusMm3: section.modulusMm3,
		modulusGpa: input.modulusGpa ?? material.modulusGpa,
		ownWeightNPerM:
			section.section === null ? 0 : barWeightNPerM(section.section.areaMm2, material.densityKgM3),
	};
}

function loadFrom(load: LoadInput, spanM: number, input: Input, sheet: Sheet): MemberLoad {
	const name = load.name ?? 'load';
	const times = load.count ?? 1;
	if (load.lineLoadNPerM !== undefined) {
		const amount = { perMetreN: load.lineLoadNPerM * times };
		return load.atM === undefined
			? { kind: 'even', amount }
			: { kind: 'spread', fromM: load.atM, toM: load.toM ?? spanM, amount };
	}
	let massKg = load.massKg;
	if (massKg === undefined && load.forceN === undefined) {
		massKg = usualPersonKg;
		sheet.assume(`mass of ${name}`, sheet.say`mass of ${name}`, usualPersonKg, 'a heavy adult (practice)', {
			kind: 'mass',
			confirm: true,
		});
	}
	const forceN = (load.forceN ?? (massKg as number) * gravityMS2) * times;
	if (load.atM !== undefined && load.toM !== undefined) {
		return { kind: 'spread', fromM: load.atM, toM: load.toM, amount: { totalN: forceN } };
	}
	if (load.atM !== undefined) return { kind: 'point', atM: load.atM, forceN };
	if (load.spread === true) return { kind: 'even', amount: { totalN: forceN } };
	sheet.assume(
		`place of ${name}`,
		sheet.say`place of ${name}`,
		input.holding === 'cantilever' ? 'at the tip' : 'where it bends the member most',
		'no place was named and it was not said to be spread: the safe side',
	);
	return { kind: 'anywhere', forceN };
}

function writeWorking(
	input: Input,
	member: Member,
	section: Given,
	material: BeamMaterial,
	check: MemberCheck,
	strengthMpa: number,
	sheet: Sheet,
): void {
	const theory = physics('Euler-Bernoulli beam, direct integration');
	if (section.section !== null && section.shape !== null) {
		sheet.step(
			'second moment of area',
			secondMomentFormula(section.shape),
			nameOf(section.shape, sheet),
			section.secondMomentMm4,
			{
				unit: 'mm⁴',
				write: { decimals: 0 },
				source: physics('second moment of area'),
			},
		);
		sheet.step(
			'own weight',
			'g = A · ρ · g',
			`${n(section.section.areaMm2, 1)} mm² × ${material.densityKgM3} kg/m³ × ${gravityMS2} m/s²`,
			member.ownWeightNPerM,
			{ kind: 'lineLoad', source: physics('mass times free fall') },
		);
	}
	sheet.step(
		'stiffness',
		'E · I',
		`${n(member.modulusGpa, 1)} GPa × ${n(member.secondMomentMm4, 0)} mm⁴`,
		check.solved.beam.rigidityNm2,
		{ unit: 'N m²', source: material.source },
	);
	sheet.step('largest bending moment', 'M = max |M(x)|', holdingText[input.holding], check.momentNm, {
		kind: 'moment',
		source: theory,
	});
	sheet.step('largest sag', 'v = ∬ M / (E · I) dx²', holdingText[input.holding], check.spanSagM * 1000, {
		unit: 'mm',
		source: theory,
	});
	if (check.stressMpa !== null) {
		sheet.step(
			'bending stress under the load factor',
			'σ = k · M / W',
			`${n(input.bumpFactor)} × ${n(check.momentNm, 1)} N m / ${n(member.modulusMm3 as number, 0)} mm³`,
			check.stressMpa * input.bumpFactor,
			{ kind: 'stress', source: theory },
		);
		sheet.step(
			'safety factor',
			'Fy / σ',
			`${n(strengthMpa, 0)} MPa / ${n(check.stressMpa * input.bumpFactor, 1)} MPa`,
			strengthMpa / (check.stressMpa * input.bumpFactor),
			{ source: material.source },
		);
	}
	sheet.source(fromMemory('International Building Code', 'Table 1604.3: L/240, L/360'));
}

const holdingText: Readonly<Record<Holding, string>> = {
	simple: 'ends free to turn',
	cantilever: 'fixed at one end',
	fixed: 'fixed at both ends',
	propped: 'left end fixed, right end resting',
};

function nameOf(shape: Shape, sheet: Sheet): string {
	return shapeName(shape, sheet.context.units === 'us' ? 'in' : 'mm', sheet.say);
}

function secondMomentFormula(shape: Shape): string {
	switch (shape.shape) {
		case 'rectangle':
			return 'I = b · h³ / 12';
		case 'tube':
			return 'I = (B · H³ − b · h³) / 12';
		case 'angle':
			return 'I = Ix − Ixy² / Iy';
		case 'round':
			return 'I = π · d⁴ / 64';
		case 'pipe':
			return 'I = π · (D⁴ − d⁴) / 64';
	}
}

interface Case {
	readonly input: Input;
	readonly member: Member;
	readonly check: MemberCheck;
	readonly limits: Limits;
	readonly strengthMpa: number;
	readonly section: Given;
	readonly material: BeamMaterial;
}

/** "How far can it span": the longest span that keeps both limits, and what it does there. */
function longestFor(one: Case, sheet: Sheet) {
	const { input, limits, section, material, strengthMpa } = one;
	const spanM = longestSpanM(one.member, limits);
	const member = { ...one.member, spanM };
	const check = spanM < 0.02 ? null : checkMember(member);
	if (check === null) {
		return sheet.refuse(
			'impossible',
			sheet.say`This section does not carry that load over any span worth the name.`,
			sheet.say`Take a stronger section, more members or less load.`,
			'loads',
		);
	}
	writeWorking(input, member, section, material, check, strengthMpa, sheet);
	const factor = check.stressMpa === null ? null : strengthMpa / (check.stressMpa * input.bumpFactor);
	writeResults({ ...one, member, check }, factor, spanM, sheet);
	writeNotes({ ...one, member, check }, sheet);
	const isStiffnessLimited = check.ratio <= limits.ratio * 1.001;
	return sheet.answer(sheet.say`Up to ${lengthText(sheet, spanM)} of span`, {
		governedBy: isStiffnessLimited ? 'deflection' : 'strength',
		because: isStiffnessLimited
			? sheet.say`There it sags ${sagText(sheet, check)}, L/${n(input.limitRatio, 0)}.`
			: sheet.say`There its safety factor is down to ${n(input.safetyFactor, 1)}.`,
	});
}

function judge(one: Case, sheet: Sheet) {
	const { input, member, check, limits, strengthMpa } = one;
	const stiff = check.ratio >= limits.ratio;
	const holds = keeps(check, limits);
	const strong =
		holds || check.stressMpa === null || check.stressMpa <= (limits.stressMpa ?? Number.POSITIVE_INFINITY);
	const factor = check.stressMpa === null ? null : strengthMpa / (check.stressMpa * input.bumpFactor);
	const spanLimitM = longestSpanM(member, limits);
	writeResults(one, factor, spanLimitM, sheet);
	writeNotes(one, sheet);
	sheet.tipping(
		'spanM',
		fields.spanM.meta.label,
		spanLimitM,
		sheet.say`up to ${lengthText(sheet, spanLimitM)}`,
		{ kind: 'length' },
	);
	const sag = sagText(sheet, check);
	const ratio = ratioText(check.ratio);
	const sf = factor === null ? null : n(factor, 1);
	const limitSag = sheet.say`L/${n(input.limitRatio, 0)} is the limit.`;
	if (holds) {
		return sheet.answer(
			sf === null
				? sheet.say`Holds: sags ${sag} (${ratio}); strength not checked`
				: sheet.say`Holds: sags ${sag} (${ratio}), safety factor ${sf}`,
			{
				governedBy: 'deflection',
				because: sheet.say`${limitSag} Good up to a span of ${lengthText(sheet, spanLimitM)}.`,
			},
		);
	}
	const clears = clearingText(one, spanLimitM, sheet);
	if (!strong) {
		const isBroken = (factor as number) < 1;
		sheet.finding(
			'danger',
			isBroken ? 'beam-yields' : 'stress-over-limit',
			isBroken
				? sheet.say`It bends for good: the stress under the load factor is above the ${sheet.show('stress', strengthMpa)} of the material. ${clears}`
				: sheet.say`Safety factor ${writeNumber(factor as number, 2, 'down')}, below ${n(input.safetyFactor, 1)}. ${clears}`,
			one.material.source,
		);
	}
	if (!stiff) {
		sheet.finding(
			'warning',
			'deflection-over-limit',
			// What clears the strength clears the sag too, and is said there.
			strong
				? sheet.say`It sags ${sag}, ${ratio}; ${limitSag} ${clears}`
				: sheet.say`It sags ${sag}, ${ratio}; ${limitSag}`,
			practice('L/240 for furniture and beds'),
		);
	}
	return sheet.answer(
		strong
			? sheet.say`Too soft: sags ${sag} (${ratio}, limit L/${n(input.limitRatio, 0)})`
			: sheet.say`Too weak: safety factor ${writeNumber(factor as number, 2, 'down')} of ${n(input.safetyFactor, 1)}`,
		{
			governedBy: strong ? 'deflection' : 'strength',
			because: strong ? clears : sheet.say`It sags ${sag} (${ratio}). ${clears}`,
		},
	);
}

function writeResults(one: Case, factor: number | null, spanLimitM: number, sheet: Sheet): void {
	const { input, member, check, section } = one;
	const { solved } = check;
	sheet.result('verdict', 'verdict', keeps(check, one.limits) ? 'holds' : 'not enough');
	sheet.result('deflection', 'largest sag between supports', check.spanSagM * 1000, {
		kind: 'thickness',
		write: { round: 'up', decimals: sheet.context.units === 'us' ? 3 : 2 },
	});
	if (check.overhangSag !== null) {
		sheet.result('overhangDeflection', 'sag of the overhang', check.overhangSag.sagM * 1000, {
			kind: 'thickness',
			write: { round: 'up', decimals: sheet.context.units === 'us' ? 3 : 2 },
		});
	}
	// JSON has no infinity; a member that does not sag has no ratio to tell.
	if (Number.isFinite(check.ratio)) {
		sheet.result('deflectionRatio', 'span over sag', check.ratio, { write: { decimals: 0, round: 'down' } });
	}
	sheet.result('maxMoment', 'largest bending moment', check.momentNm, {
		kind: 'moment',
		write: { round: 'up' },
	});
	sheet.result('maxShear', 'largest shear force', solved.largestShearN, {
		kind: 'force',
		write: { round: 'up' },
	});
	if (check.stressMpa !== null) {
		sheet.result('stress', 'bending stress, standing load', check.stressMpa, {
			kind: 'stress',
			write: { round: 'up' },
		});
		sheet.result('stressOnBumps', 'bending stress, load factor', check.stressMpa * input.bumpFactor, {
			kind: 'stress',
			write: { round: 'up' },
		});
	}
	if (factor !== null && Number.isFinite(factor)) {
		sheet.result('safetyFactor', 'safety factor on yield', factor, { write: { decimals: 2, round: 'down' } });
	}
	sheet.result('secondMoment', 'second moment of area', member.secondMomentMm4, { kind: 'secondMoment' });
	if (section.shape !== null) sheet.result('section', 'section', nameOf(section.shape, sheet));
	const sides = input.holding === 'cantilever' ? ['Wall'] : ['Left', 'Right'];
	solved.reactions.forEach((reaction, index) => {
		const side = sides[index] as string;
		sheet.result(`reaction${side}`, sheet.say`${side.toLowerCase()} support carries`, reaction.forceN, {
			kind: 'force',
		});
		if (reaction.momentNm !== 0) {
			sheet.result(
				`couple${side}`,
				sheet.say`${side.toLowerCase()} support holds a couple of`,
				Math.abs(reaction.momentNm),
				{
					kind: 'moment',
				},
			);
		}
	});
	sheet.result('spanLimit', 'longest span', spanLimitM, {
		kind: 'length',
		write: { round: 'down', decimals: 2 },
	});
	const needed = neededSecondMoment(one);
	if (needed !== null) {
		sheet.result('neededSecondMoment', 'second moment needed for the sag', needed, {
			kind: 'secondMoment',
			write: { round: 'up' },
		});
	}
}

/** For the sag alone, sag being as 1/I; own weight is taken as it is. */
function neededSecondMoment(one: Case): number | null {
	const { check, limits, member } = one;
	if (!Number.isFinite(check.ratio) || check.ratio >= limits.ratio) return null;
	return (member.secondMomentMm4 * limits.ratio) / check.ratio;
}

function writeNotes(one: Case, sheet: Sheet): void {
	const { input, check, section } = one;
	const lifting = check.solved.reactions.some((reaction) => reaction.forceN < -1e-6);
	if (lifting && input.holding === 'simple') {
		sheet.finding(
			'warning',
			'support-lifts',
			sheet.say`One support is pulled upward: it must be held down, not only rested on.`,
			physics('balance of forces and moments'),
		);
	}
	if (section.section !== null && (section.section.slenderness ?? 0) > slenderAbove) {
		sheet.finding(
			'warning',
			'thin-wall',
			sheet.say`The wall is thin for its width (${n(section.section.slenderness as number, 0)} to 1): it may buckle or dent before it yields. Take a thicker wall.`,
			practice('flat walls up to 35 times their thickness'),
		);
	}
	if (section.shape?.shape === 'angle') {
		sheet.finding(
			'note',
			'angle-twists',
			sheet.say`An angle twists and drifts sideways under a plumb load; that is counted for sag and stress, twist is not. Brace it or take a tube.`,
			physics('unsymmetric bending'),
		);
	}
	if (
		input.welded &&
		one.material.weldedMpa !== null &&
		one.material.weldedMpa < one.material.strengthMpa &&
		input.strengthMpa === undefined
	) {
		sheet.finding(
			'note',
			'weld-softens',
			sheet.say`Beside a weld the alloy keeps about half its yield: ${sheet.show('stress', one.material.weldedMpa)} is taken.`,
			one.material.source,
		);
	}
	if (check.stressMpa === null) {
		sheet.finding(
			'warning',
			'strength-not-checked',
			sheet.say`Strength is not checked: the height of the profile is not known. Name it.`,
			practice('stress needs the distance to the edge'),
		);
	}
}

/** The section, the number of members or the span that clears it. */
function clearingText(one: Case, spanLimitM: number, sheet: Sheet): string {
	const taller = tallerSection(one, sheet);
	const more = moreMembers(one);
	const span = spanLimitM >= 0.02 ? sheet.say`a span of ${lengthText(sheet, spanLimitM)}` : null;
	const parts = [
		taller === null ? null : taller,
		span,
		more === null ? null : sheet.say`${more} members sharing the load`,
	].filter((part) => part !== null);
	const needed = neededSecondMoment(one);
	if (parts.length === 0 && needed !== null) {
		return sheet.say`It takes ${sheet.show('secondMoment', needed, { round: 'up' })}.`;
	}
	return parts.length === 0
		? sheet.say`Take a stronger section or less load.`
		: sheet.say`Cleared by ${parts.join(sheet.say`, or `)}.`;
}

/** The same width and wall, higher in the steps in which bars are sold, that keeps both limits. */
function tallerSection(one: Case, sheet: Sheet): string | null {
	const { shape } = one.section;
	if (shape === null || !('heightMm' in shape)) return null;
	const step = sheet.context.units === 'us' ? 25.4 / 8 : shape.heightMm < 30 ? 1 : 5;
	for (
		let heightMm = Math.ceil(shape.heightMm / step) * step;
		heightMm <= 4 * shape.heightMm;
		heightMm += step
	) {
		if (heightMm <= shape.heightMm) continue;
		const section = sectionOf({ ...shape, heightMm });
		const check = checkMember({
			...one.member,
			secondMomentMm4: section.freeSecondMomentMm4,
			modulusMm3: section.modulusMm3,
			ownWeightNPerM: barWeightNPerM(section.areaMm2, one.material.densityKgM3),
		});
		if (check !== null && keeps(check, one.limits)) return nameOf({ ...shape, heightMm }, sheet);
	}
	return null;
}

function moreMembers(one: Case): number | null {
	for (let sharing = one.member.sharing + 1; sharing <= 40; sharing += 1) {
		const check = checkMember({ ...one.member, sharing });
		if (check !== null && keeps(check, one.limits)) return sharing;
	}
	return null;
}

function lengthText(sheet: Sheet, valueM: number): string {
	return sheet.show('length', valueM, { decimals: 2, round: 'down' });
}

function sagText(sheet: Sheet, check: MemberCheck): string {
	const sagM = Math.max(check.spanSagM, check.overhangSag?.sagM ?? 0);
	return sheet.show('thickness', sagM * 1000, {
		decimals: sheet.context.units === 'us' ? 2 : 1,
		round: 'up',
	});
}

function ratioText(ratio: number): string {
	return Number.isFinite(ratio) ? `L/${writeNumber(ratio, 0, 'down')}` : 'no sag';
}
