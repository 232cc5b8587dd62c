import { writeNumber } from '../quantity/write.js';
import { type Bolt, boltSource, bolts, type PropertyClass, propertyClasses } from '../tables/bolts.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, flag, type InputOf, number, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import type { Refusal } from '../topic/sizing.js';
import { fromMemory, physics, practice } from '../topic/source.js';
import { cautionCrash, cautionStructure } from '../weight/cautions.js';
import {
	allowedOf,
	type BoltCheck,
	bearingSource,
	checkBolt,
	type Fixing,
	type LoadCase,
	type LoadCaseName,
	loadCases,
	shearSource,
	worstOf,
} from '../weight/restraint.js';

/** Numbers of bolts that are tried, at the corners and between them. */
const triedCounts: readonly number[] = [4, 6, 8, 10, 12];

const fields = {
	massKg: quantity({
		label: 'mass of the item',
		kind: 'mass',
		min: 0.1,
		max: 2000,
		aliases: ['weighs', 'weight', 'mass', 'heavy', 'wiegt', 'pesa', 'schwer'],
		required: 'What does the item weigh (with what is in it)?',
	}),
	item: text({
		label: 'item',
		words: [
			'battery',
			'batteries',
			'battery box',
			'fridge',
			'refrigerator',
			'cabinet',
			'water tank',
			'tank',
			'stove',
			'cooktop',
			'heater',
			'inverter',
			'toolbox',
			'shelf',
			'kitchen',
			'galley',
			'bed frame',
			'bed',
			'wardrobe',
			'compressor',
			'generator',
			'gas bottle',
			'propane tank',
			'bike',
			'table',
			'cupboard',
			'kühlschrank',
			'batterie',
			'schrank',
			'nevera',
			'armario',
			'depósito',
		],
	}),
	centreHeightM: quantity({
		label: 'centre of mass over its base',
		kind: 'length',
		min: 0,
		max: 3,
		aliases: [
			'centre of mass',
			'center of mass',
			'cg',
			'centre of gravity',
			'center of gravity',
			'schwerpunkt',
			'centro de masa',
		],
	}),
	heightM: quantity({
		label: 'height of the item',
		kind: 'length',
		min: 0.01,
		max: 3,
		aliases: ['de alto', 'tall', 'high', 'height', 'hoch', 'höhe', 'alto', 'alta'],
	}),
	alongM: quantity({
		label: 'bolt spacing along the van',
		kind: 'length',
		min: 0.02,
		max: 4,
		aliases: [
			'largo',
			'de largo',
			'lang',
			'along',
			'lengthwise',
			'fore and aft',
			'front to back',
			'bolts along',
			'spacing along',
			'deep',
			'längs',
			'a lo largo',
		],
		required: 'How far apart are the bolts along the van, first to last?',
	}),
	acrossM: quantity({
		label: 'bolt spacing across the van',
		kind: 'length',
		min: 0.02,
		max: 2.5,
		aliases: [
			'ancho',
			'de ancho',
			'breit',
			'across',
			'crosswise',
			'side to side',
			'bolts across',
			'spacing across',
			'wide',
			'quer',
			'a lo ancho',
		],
		required: 'How far apart are the bolts across the van?',
	}),
	bolts: count({
		label: 'bolts',
		min: 1,
		max: 40,
		aliases: [
			'bolts',
			'screws',
			'fasteners',
			'fixings',
			'm6',
			'm8',
			'm10',
			'm12',
			'schrauben',
			'tornillos',
			'pernos',
		],
		help: 'Leave it out to have it chosen.',
	}),
	boltSize: choice({
		label: 'thread',
		options: { M6: ['M6'], M8: ['M8'], M10: ['M10'], M12: ['M12'] },
	}),
	boltClass: number({
		label: 'property class',
		min: 3.6,
		max: 12.9,
		aliases: ['class', 'grade', 'property class', 'festigkeitsklasse', 'clase'],
		fallback: { value: 8.8, why: 'the usual class; read it from the head', confirm: true },
	}),
	loadCase: choice({
		label: 'load case',
		options: {
			crash: ['crash', '20 g', 'collision', 'accident', 'unfall', 'choque'],
			van: ['delivery van', 'cargo securing', 'load securing', 'ladungssicherung'],
			driving: [
				'driving',
				'braking',
				'against braking',
				'braking only',
				'against braking only',
				'securement',
				'road loads',
				'fahrbetrieb',
				'conducción',
			],
		},
		fallback: {
			value: 'crash',
			why: 'people ride in the same room: held in a crash, not only under braking',
			confirm: true,
		},
	}),
	forwardG: number({
		label: 'forward load in g',
		min: 0.1,
		max: 100,
		aliases: ['forward g', 'forward', 'g forward', 'g forwards'],
		help: 'Replaces the forward figure of the load case where it is higher.',
	}),
	prying: number({
		label: 'prying factor',
		min: 1,
		max: 5,
		aliases: ['prying', 'prying factor', 'lever factor'],
		fallback: {
			value: 2,
			why: 'an angle bracket with its bolt in mid leg doubles the pull (a stiff foot or a bolt through the base: 1)',
			confirm: true,
		},
	}),
	fixing: choice({
		label: 'how it is bolted',
		options: {
			through: [
				'through-bolted',
				'through bolt',
				'through bolts',
				'bolted through',
				'backing plate',
				'nut and washer',
				'durchgeschraubt',
				'pasante',
			],
			insert: [
				'rivet nut',
				'rivet nuts',
				'blind rivet nut',
				'insert nut',
				'blind nut',
				'threaded insert',
				'insert',
				'nietmutter',
				'einnietmutter',
				'tuerca remachable',
			],
			wood: ['wood screw', 'wood screws', 'into the plywood', 'into plywood', 'holzschrauben', 'tirafondos'],
		},
		fallback: { value: 'through', why: 'through-bolts with nuts and backing plates', confirm: true },
	}),
	insertN: quantity({
		label: 'pull-out load of the insert',
		kind: 'force',
		min: 50,
		max: 100_000,
		aliases: ['pull out', 'pull-out', 'pullout', 'insert rating', 'auszug'],
		help: 'From its maker, for this sheet.',
	}),
	sheetMm: quantity({
		label: 'thickness of what it is bolted to',
		kind: 'thickness',
		min: 0.3,
		max: 50,
		aliases: ['sheet', 'floor sheet', 'sheet metal', 'floor metal', 'plate', 'blech', 'chapa'],
	}),
	sheetMetal: choice({
		label: 'metal of the sheet',
		options: { steel: ['steel', 'stahl', 'acero'], aluminium: ['aluminium', 'aluminum', 'alu', 'aluminio'] },
		fallback: { value: 'steel', why: 'steel body' },
	}),
	washerMm: quantity({
		label: 'washer or backing plate',
		kind: 'thickness',
		min: 5,
		max: 300,
		aliases: ['washer', 'washers', 'backing', 'backing washer', 'unterlegscheibe', 'arandela'],
		help: 'Its diameter, under each nut.',
	}),
	safetyFactor: number({
		label: 'safety factor on the proof load',
		min: 1,
		max: 20,
		aliases: ['safety factor', 'factor of safety', 'sf', 'sicherheit', 'coeficiente de seguridad'],
		fallback: { value: 2, why: 'two against lasting stretch (practice)' },
	}),
	occupants: flag({
		label: 'it holds people',
		yes: [
			'seat',
			'seats',
			'bench seat',
			'jump seat',
			'passenger seat',
			'seat belt',
			'seat belts',
			'seatbelt',
			'seatbelts',
			'belt',
			'belts',
			'anchorage',
			'anchorages',
			'seat base',
			'swivel',
			'child seat',
			'car seat',
			'isofix',
			'wheelchair',
			'harness',
			'sitz',
			'sitze',
			'sitzbank',
			'gurt',
			'gurte',
			'asiento',
			'asientos',
			'cinturón',
			'cinturones',
		],
		no: [
			'under the seat',
			'under a seat',
			'behind the seat',
			'behind the seats',
			'next to the seat',
			'no seat',
			'no seats',
		],
	}),
};

type Input = InputOf<typeof fields>;

export const restraint = declareTopic({
	name: 'restraint',
	title: 'Bolts that hold an item aboard',
	system: 'weight',
	purpose: 'How many bolts of which size hold a heavy item under braking, in bends and in a crash.',
	words: [
		'restraint',
		'bolt down',
		'bolted down',
		'bolted',
		'tie down',
		'strap',
		'straps',
		'strap down',
		'ratchet strap',
		'correa',
		'correas',
		'spanngurt',
		'gurt',
		'fasten',
		'fastener',
		'fasteners',
		'bolts',
		'secure',
		'anchor',
		'hold down',
		'hold',
		'mount',
		'befestigen',
		'festschrauben',
		'sujetar',
		'fijar',
		'anclar',
		'tornillos',
		'pernos',
		'schrauben',
		'bolt',
		'screws',
	],
	examples: [
		'bolts to hold down a 60 kg battery, 0.3 m tall, bolts 0.4 m along 0.3 m across',
		'secure a fridge 110 lb, 32 in tall, 20 in along and 18 in across',
		'4 bolts M8 class 8.8 on a 120 kg water tank, cg 0.25 m, 0.8 m along, 0.5 m across, enough?',
	],
	method:
		'Each direction by itself: shear shared evenly, tipping about the lee bolts with a stiff base, prying on the pull, shear and pull added in proportion against proof load over the safety factor. Weight and friction are not counted as help. Equipment only: seats, belts and anchorages are not covered.',
	fields,
	needs: [
		{
			anyOf: ['centreHeightM', 'heightM'],
			question: 'How tall is the item (or how high is its centre of mass over its base)?',
		},
	],
	contradictions: declined,
	calculate: calculateRestraint,
});

function n(value: number, decimals = 2): string {
	return writeNumber(value, decimals);
}

const peopleWords = /\b(?:seat|belt|anchorage|isofix|harness|wheelchair|asiento|cintur)|sitz|gurt/i;

/** Declined before anything is asked: no number would make it right. */
function declined(given: Partial<Input>): Refusal[] {
	const holdsPeople =
		given.occupants === true ||
		(given.occupants !== false && given.item !== undefined && peopleWords.test(given.item));
	return holdsPeople
		? [
				{
					code: 'unsafe',
					text: 'I do not size seats, belts, child seats or their anchorages: lives hang on tests that no sum replaces.',
					instead:
						'Use a seat and belt set certified for this van and fit it as its maker says, or have a licensed engineer test the anchorage (49 CFR 571.207, 571.209 and 571.210; UN R14 and R17).',
					field: 'item',
				},
			]
		: [];
}

function calculateRestraint(input: Input, sheet: Sheet) {
	sheet.caution(cautionCrash, cautionStructure);
	if (input.fixing === 'wood') {
		return sheet.refuse(
			'not-covered',
			sheet.say`Wood screws pull out of a floor in a crash; I do not size them for heavy items.`,
			sheet.say`Bolt through the floor with nuts and backing plates, or into rated rails.`,
			'fixing',
		);
	}
	if (input.fixing === 'insert' && input.insertN === undefined) {
		return sheet.ask({
			name: 'insertN',
			label: fields.insertN.meta.label,
			question: sheet.say`What pull-out load does the maker give for the rivet nut in this sheet? No general standard has one.`,
		});
	}
	const centreHeightM = input.centreHeightM ?? (input.heightM as number) / 2;
	if (
		input.centreHeightM !== undefined &&
		input.heightM !== undefined &&
		input.centreHeightM > input.heightM
	) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read a centre of mass ${sheet.show('length', input.centreHeightM, { decimals: 2 })} up on an item ${sheet.show('length', input.heightM, { decimals: 2 })} tall.`,
			sheet.say`The centre of mass lies within the item.`,
			'centreHeightM',
		);
	}
	if (input.centreHeightM === undefined) {
		sheet.assume('centreHeightM', fields.centreHeightM.meta.label, centreHeightM, 'half its height', {
			kind: 'length',
			confirm: true,
		});
	}
	const propertyClass = propertyClasses.find((one) => Number(one) === input.boltClass);
	if (propertyClass === undefined) {
		return sheet.refuse(
			'not-covered',
			sheet.say`I read ${n(input.boltClass, 1)} as the property class; I have proof loads for 8.8 and 10.9 alone.`,
			sheet.say`Use 8.8 or 10.9, marked on the head. Stainless and plain bolts carry less.`,
			'boltClass',
		);
	}
	if (input.bolts !== undefined && input.bolts < 4) {
		return sheet.refuse(
			'unsafe',
			sheet.say`${input.bolts} bolts in one line do not keep an item from tipping over them.`,
			sheet.say`Use at least four, at the corners of the base.`,
			'bolts',
		);
	}
	const loadCase = loadCaseOf(input);
	const fixing = (bolts: number): Fixing => ({
		massKg: input.massKg,
		centreHeightM,
		alongM: input.alongM,
		acrossM: input.acrossM,
		count: bolts,
		prying: input.prying,
		sheet: sheetOf(input),
		insertN: input.insertN ?? null,
		safetyFactor: input.safetyFactor,
	});
	const candidates = candidatesOf(input, propertyClass).map(({ bolt, bolts: howMany }) => {
		const checks = checkBolt(fixing(howMany), bolt, loadCase);
		return { bolt, howMany, checks, worst: worstOf(checks) };
	});
	const chosenIndex = candidates.findIndex((one) => one.worst.utilisation <= 1);
	const judged = input.boltSize !== undefined && input.bolts !== undefined;
	const chosen = candidates[chosenIndex];
	if (judged) return judgeNamed(input, propertyClass, candidates[0] as Candidate, fixing, loadCase, sheet);
	if (chosen === undefined) {
		const best = candidates.at(-1) as Candidate;
		return sheet.refuse(
			'impossible',
			sheet.say`No fixing in my table holds it: even ${nameOf(best, sheet)} would be loaded to ${percent(best.worst.utilisation)}.`,
			sheet.say`Set the bolts further apart, hold the item at its top as well, lower it, use a thicker plate, or split the load.`,
		);
	}
	writeSheet(input, chosen, fixing(chosen.howMany), loadCase, sheet);
	const smaller = candidates[chosenIndex - 1];
	const larger = candidates[chosenIndex + 1];
	if (smaller !== undefined) {
		sheet.neighbour(
			nameOf(smaller, sheet),
			false,
			sheet.say`${percent(smaller.worst.utilisation)} of what is allowed`,
		);
	}
	if (larger !== undefined) {
		sheet.neighbour(
			nameOf(larger, sheet),
			larger.worst.utilisation <= 1,
			sheet.say`${percent(larger.worst.utilisation)} of what is allowed`,
		);
	}
	const mass = sheet.show('mass', input.massKg);
	return sheet.answer(
		sheet.say`${nameOf(chosen, sheet)} hold ${mass} at ${n(loadCase.forward)} g (${percent(chosen.worst.utilisation)} used)`,
		{ governedBy: chosen.worst.direction, because: becauseOf(chosen, sheet) },
	);
}

interface Candidate {
	readonly bolt: Bolt;
	readonly howMany: number;
	readonly checks: readonly BoltCheck[];
	readonly worst: BoltCheck;
}

function nameOf(one: Pick<Candidate, 'bolt' | 'howMany'>, sheet: Sheet): string {
	return sheet.say`${one.howMany} × ${one.bolt.thread} class ${one.bolt.propertyClass}`;
}

function percent(share: number): string {
	return Number.isFinite(share) ? `${writeNumber(share * 100, 0, 'up')} %` : 'more than any bolt';
}

function loadCaseOf(input: Input): LoadCase {
	const base: LoadCase = loadCases[input.loadCase as LoadCaseName];
	return { ...base, forward: Math.max(base.forward, input.forwardG ?? 0) };
}

function sheetOf(input: Input) {
	if (input.sheetMm === undefined) return null;
	return {
		thicknessMm: input.sheetMm,
		// The low end for drawing steel and for soft aluminium sheet: the sheet of a body is no structural plate.
		ultimateMpa: input.sheetMetal === 'steel' ? 270 : 190,
		washerMm: input.washerMm ?? 0,
	};
}

/** Few and thin first. */
function candidatesOf(input: Input, propertyClass: PropertyClass): { bolt: Bolt; bolts: number }[] {
	const sizes = bolts.filter(
		(bolt) =>
			bolt.propertyClass === propertyClass &&
			(input.boltSize === undefined || bolt.thread === input.boltSize),
	);
	const counts = input.bolts === undefined ? triedCounts : [input.bolts];
	return counts.flatMap((howMany) => sizes.map((bolt) => ({ bolt, bolts: howMany })));
}

function becauseOf(one: Candidate, sheet: Sheet): string {
	const { worst } = one;
	const force = sheet.show('force', worst.forceN, { round: 'up', decimals: 0 });
	const shear = sheet.show('force', worst.shearN, { round: 'up', decimals: 0 });
	const pull = sheet.show('force', worst.tensionN, { round: 'up', decimals: 0 });
	return sheet.say`${directionText[worst.direction]} ${force} on its centre of mass: each bolt ${shear} in shear and up to ${pull} in tension.`;
}

const directionText: Readonly<Record<BoltCheck['direction'], string>> = {
	forward: 'Forward',
	rearward: 'Rearward',
	sideways: 'Sideways',
	upward: 'Upward',
};

function writeSheet(input: Input, one: Candidate, fixing: Fixing, loadCase: LoadCase, sheet: Sheet): void {
	const { bolt, worst } = one;
	const allowed = allowedOf(fixing, bolt);
	sheet.source(...loadCase.sources, boltSource, shearSource);
	for (const check of one.checks) {
		sheet.step(
			sheet.say`force ${check.direction}`,
			'F = a · m · g',
			`${n(loadCase[check.direction])} × ${n(input.massKg)} kg × 9.80665 m/s²`,
			check.forceN,
			{ kind: 'force', source: loadCase.sources[0] ?? practice() },
		);
	}
	sheet.step(
		'shear in each bolt',
		'V = F / n',
		`${n(worst.forceN, 0)} N / ${2 * Math.floor(one.howMany / 2)}`,
		worst.shearN,
		{
			kind: 'force',
			source: physics('even share'),
		},
	);
	sheet.step(
		'tension in the most loaded bolt',
		worst.direction === 'upward' ? 'T = q · F / n' : 'T = q · F · h · d / Σ d²',
		`${n(input.prying)} × ${n(worst.forceN, 0)} N × ${n(fixing.centreHeightM, 3)} m, ${worst.direction}`,
		worst.tensionN,
		{ kind: 'force', source: physics('moments about the lee bolts, stiff base') },
	);
	sheet.step(
		'allowed in shear',
		'Va = 0.6 · Fp / s',
		sheet.say`proof load ${n(bolt.proofN, 0)} N, safety factor ${n(input.safetyFactor, 1)}`,
		allowed.shearN,
		{ kind: 'force', source: shearSource },
	);
	sheet.step(
		'allowed in tension',
		'Ta = Fp / s',
		sheet.say`proof load ${n(bolt.proofN, 0)} N, safety factor ${n(input.safetyFactor, 1)}`,
		allowed.tensionN,
		{ kind: 'force', source: boltSource },
	);
	sheet.step(
		'used',
		'V / Va + T / Ta',
		`${n(worst.shearN, 0)} / ${n(allowed.shearN, 0)} + ${n(worst.tensionN, 0)} / ${n(allowed.tensionN, 0)}`,
		worst.utilisation,
		{ source: practice('shear and tension added in proportion') },
	);
	sheet.result('bolt', 'thread', bolt.thread);
	sheet.result('boltClass', 'property class', bolt.propertyClass);
	sheet.result('bolts', 'bolts', one.howMany, {});
	for (const check of one.checks) {
		sheet.result(`${check.direction}Force`, sheet.say`force ${check.direction}`, check.forceN, {
			kind: 'force',
			write: { round: 'up', decimals: 0 },
		});
	}
	sheet.result('shearPerBolt', 'shear in each bolt', worst.shearN, { kind: 'force', write: { round: 'up' } });
	sheet.result('tensionPerBolt', 'tension in the most loaded bolt', worst.tensionN, {
		kind: 'force',
		write: { round: 'up' },
	});
	sheet.result('allowedShear', 'allowed in shear', allowed.shearN, {
		kind: 'force',
		write: { round: 'down' },
	});
	sheet.result('allowedTension', 'allowed in tension', allowed.tensionN, {
		kind: 'force',
		write: { round: 'down' },
	});
	sheet.result('utilisation', 'share used', worst.utilisation, { kind: 'fraction', write: { round: 'up' } });
	sheet.result('direction', 'deciding direction', worst.direction);
	if (worst.utilisation > 0) {
		const massLimitKg = input.massKg / worst.utilisation;
		sheet.tipping(
			'massKg',
			fields.massKg.meta.label,
			massLimitKg,
			sheet.say`up to ${sheet.show('mass', massLimitKg, { round: 'down' })}`,
			{
				kind: 'mass',
			},
		);
	}
	writeNotes(input, one, sheet);
}

function writeNotes(input: Input, one: Candidate, sheet: Sheet): void {
	if (input.loadCase !== 'crash') {
		sheet.finding(
			'warning',
			'not-for-a-crash',
			sheet.say`This load case covers braking and bends alone. In a crash the item comes loose: where people ride in the same room, ask for the crash case.`,
			fromMemory('49 CFR 393.102', 'securement of cargo, not of equipment among people'),
		);
	}
	if (input.sheetMm === undefined) {
		sheet.finding(
			'warning',
			'sheet-not-checked',
			sheet.say`The bolts are checked, what they are bolted to is not: body sheet under 1 mm tears first. Name its thickness, and use backing plates of 3 mm or more over ribs.`,
			practice('backing plates under body sheet'),
		);
	} else {
		sheet.source(bearingSource);
		if (input.washerMm === undefined) {
			sheet.finding(
				'note',
				'no-washer-named',
				sheet.say`No washer or backing plate was named: the sheet is checked as if the nut pulled on the bare hole. Name its diameter.`,
				bearingSource,
			);
		}
	}
	if (one.howMany % 2 === 1) {
		sheet.finding(
			'note',
			'odd-bolt',
			sheet.say`The odd bolt is not counted: two even lines are taken.`,
			practice('bolts in pairs'),
		);
	}
}

function judgeNamed(
	input: Input,
	propertyClass: PropertyClass,
	one: Candidate,
	fixing: (bolts: number) => Fixing,
	loadCase: LoadCase,
	sheet: Sheet,
) {
	writeSheet(input, one, fixing(one.howMany), loadCase, sheet);
	const enough = one.worst.utilisation <= 1;
	sheet.result('verdict', 'verdict', enough ? 'enough' : 'too weak');
	if (enough) {
		return sheet.answer(
			sheet.say`${nameOf(one, sheet)} are enough (${percent(one.worst.utilisation)} used)`,
			{
				governedBy: one.worst.direction,
				because: becauseOf(one, sheet),
			},
		);
	}
	const better = [one.howMany, ...triedCounts.filter((howMany) => howMany > one.howMany)]
		.flatMap((howMany) =>
			bolts
				.filter((bolt) => bolt.propertyClass === propertyClass)
				.map((bolt) => ({ bolt, howMany, worst: worstOf(checkBolt(fixing(howMany), bolt, loadCase)) })),
		)
		.find((other) => other.worst.utilisation <= 1);
	const clears =
		better === undefined
			? sheet.say`Set the bolts further apart, hold the item at its top as well, or lower it.`
			: sheet.say`${nameOf(better, sheet)} would hold (${percent(better.worst.utilisation)}).`;
	sheet.finding(
		'danger',
		'fixing-overloaded',
		sheet.say`${nameOf(one, sheet)} are loaded to ${percent(one.worst.utilisation)} ${one.worst.direction}: the item comes loose. ${clears}`,
		boltSource,
	);
	return sheet.answer(sheet.say`${nameOf(one, sheet)} are too weak (${percent(one.worst.utilisation)})`, {
		governedBy: one.worst.direction,
		because: sheet.say`${becauseOf(one, sheet)} ${clears}`,
	});
}
