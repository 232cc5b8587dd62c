import { writeNumber } from '../quantity/write.js';
import { type TankFluid, tankFluids } from '../tables/fluids.js';
import {
	type Roof,
	roofOptions,
	type Wheelbase,
	wheelbaseClass,
	wheelbaseOptions,
} from '../tables/interiors.js';
import {
	bulkheadM,
	roofClasses,
	usualLoadHeightM,
	usualSeatM,
	usualSideM,
	usualTrackM,
	vanClasses,
	vanSource,
} from '../tables/vans.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, flag, type InputOf, list, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice, published } from '../topic/source.js';
import { cautionAxle, cautionScales } from '../weight/cautions.js';
import {
	type Axle,
	type AxleLoads,
	axleLoads,
	type EmptyVehicle,
	type Load,
	reliefOf,
	rolloverBand,
	rolloverSource,
	shareOn,
	stabilityFactor,
} from '../weight/ledger.js';
import { type Floor, floorOf, zoneM } from '../weight/placing.js';

/** Where one side carries so much more than the other, of the whole. */
const usualSideShare = 0.05;
/** Below this share on the front axle, steering and brakes suffer. */
const leastFrontShare = 0.3;
/** Up to this factor a vehicle falls in the lowest of the five published bands. */
const lowestBand = 1.03;
/** Below this factor, or having lost so much of what the bare van had, a van is called top-heavy. */
const lowStability = 0.95;
const usualLoss = 0.15;

const words = (text: string) => text.split('|');

const item = {
	name: text({
		label: 'item',
		words: words(
			'battery|batteries|bank|fridge|refrigerator|bed|mattress|kitchen|galley|cabinets|cabinet|solar|panels|solar panels|rack|roof rack|awning|bike|bikes|bike rack|spare|spare wheel|stove|heater|air conditioner|aircon|inverter|tools|gear|water|water tank|fresh water|fresh tank|fresh|gray|grey|gray tank|grey tank|gray water|grey water|black tank|fuel|diesel|diesel tank|gasoline|propane|lpg|propane tank|bottle|floor|flooring|walls|paneling|ceiling|insulation|shower|toilet|seat|seats|bench|swivels|generator|compressor|luggage|food|dog|kayak|ladder|box|winch|bumper|table|wardrobe|batterie|bett|küche|kühlschrank|wasser|frischwasser|grauwasser|gepäck|fahrräder|cama|batería|nevera|cocina|agua|agua limpia|aguas grises|equipaje|bicicletas',
		),
	}),
	count: count({ label: 'how many', min: 1, max: 100, aliases: [] }),
	massKg: quantity({ label: 'mass', kind: 'mass', min: 0, max: 5000, aliases: ['mass', 'weight', 'weighs'] }),
	volumeL: quantity({
		label: 'volume of a tank',
		kind: 'volume',
		min: 0.1,
		max: 2000,
		aliases: ['volume', 'tank'],
		help: 'Its mass when full is counted, beside the mass of the tank itself.',
	}),
	fluid: choice({
		label: 'what the tank holds',
		options: {
			water: words(
				'water|fresh water|fresh|fresh tank|water tank|gray|grey|gray water|grey water|gray tank|grey tank|black tank|agua|agua limpia|aguas grises|wasser|frischwasser|grauwasser',
			),
			diesel: ['diesel', 'diesel tank', 'diésel', 'gasoil'],
			gasoline: ['gasoline', 'petrol', 'gas tank', 'gasolina', 'benzin'],
			propane: ['propane', 'lpg', 'propane tank', 'propano', 'propan', 'flüssiggas'],
		},
	}),
	positionM: quantity({
		label: 'place behind the front axle',
		kind: 'length',
		min: -2,
		max: 8,
		aliases: ['at', 'behind the front axle', 'from the front axle'],
	}),
	zone: choice({
		label: 'part of the van',
		options: {
			cab: ['in the cab', 'cab', 'passenger side floor', 'fahrerhaus', 'cabina'],
			front: [
				'behind the cab',
				'behind the seats',
				'behind the driver',
				'front of the living space',
				'vorn',
				'delante',
			],
			middle: ['in the middle', 'middle', 'midship', 'amidships', 'mitte', 'en medio'],
			axle: [
				'over the rear axle',
				'above the rear axle',
				'over the axle',
				'über der hinterachse',
				'sobre el eje',
			],
			back: [
				'in the back',
				'at the back',
				'in the rear',
				'at the rear',
				'garage',
				'back',
				'under the bed',
				'hinten',
				'heckgarage',
				'atrás',
				'behind the rear axle',
				'behind rear axle',
				'behind the axle',
				'in back',
				'hinter der hinterachse',
				'detrás del eje',
			],
			door: [
				'on the rear door',
				'rear door',
				'on the back door',
				'rear carrier',
				'hitch',
				'on the hitch',
				'hecktür',
				'portón',
			],
		},
	}),
	sideM: quantity({
		label: 'distance from the middle line',
		kind: 'length',
		min: 0,
		max: 1.3,
		aliases: ['off centre', 'off center', 'from the middle', 'from the centre line'],
	}),
	side: choice({
		label: 'side',
		options: {
			left: ['left', 'left side', 'links', 'izquierda'],
			right: ['right side', 'on the right', 'rechts', 'derecha'],
		},
	}),
	heightM: quantity({
		label: 'height of its centre over the ground',
		kind: 'length',
		min: 0.1,
		max: 4,
		aliases: ['above ground', 'over the ground', 'high'],
	}),
	onRoof: flag({
		label: 'on the roof',
		yes: ['on the roof', 'on roof', 'roof', 'on top', 'auf dem dach', 'sobre el techo'],
	}),
	whatIf: flag({
		label: 'what if',
		yes: ['what if', 'moved to', 'move to', 'if moved', 'if it sat', 'was wenn', 'y si'],
		help: 'The line shows what another place or mass of the item of that name would do.',
	}),
};

const fields = {
	items: list({
		label: 'items aboard',
		aliases: ['items', 'ledger', 'cargo'],
		item,
		max: 100,
		help: 'Each with its mass (or the volume of its tank) and its place.',
	}),
	gvwrKg: quantity({
		label: 'GVWR',
		kind: 'mass',
		min: 500,
		max: 20_000,
		aliases: [
			'gvwr',
			'gvw',
			'gvm',
			'gross',
			'gross weight',
			'gross vehicle weight',
			'max weight',
			'mtplm',
			'zgg',
			'zulässiges gesamtgewicht',
			'gesamtgewicht',
			'mma',
			'masa máxima',
		],
		help: 'The greatest mass of the loaded van, on the door label.',
	}),
	rearRatingKg: quantity({
		label: 'rear axle rating',
		kind: 'mass',
		min: 200,
		max: 12_000,
		aliases: [
			'rear axle rating',
			'rear rating',
			'rear gawr',
			'gawr rear',
			'rgawr',
			'rear axle limit',
			'rear axle max',
			'rear axle',
			'hinterachse',
			'hinterachslast',
			'eje trasero',
		],
	}),
	frontRatingKg: quantity({
		label: 'front axle rating',
		kind: 'mass',
		min: 200,
		max: 8000,
		aliases: [
			'front axle rating',
			'front rating',
			'front gawr',
			'gawr front',
			'fgawr',
			'front axle limit',
			'front axle max',
			'front axle',
			'vorderachse',
			'vorderachslast',
			'eje delantero',
		],
	}),
	emptyKg: quantity({
		label: 'empty weight',
		kind: 'mass',
		min: 300,
		max: 15_000,
		aliases: [
			'empty',
			'empty weight',
			'curb',
			'curb weight',
			'kerb weight',
			'unladen',
			'van weighs',
			'truck weighs',
			'weighs now',
			'weighed',
			'scale weight',
			'loaded',
			'tare',
			'leergewicht',
			'leer',
			'tara',
		],
		help: 'With fuel, without people and load.',
	}),
	frontEmptyKg: quantity({
		label: 'empty front axle',
		kind: 'mass',
		min: 100,
		max: 8000,
		aliases: [
			'empty front',
			'front empty',
			'empty front axle',
			'front axle empty',
			'front scale',
			'vorn leer',
		],
	}),
	rearEmptyKg: quantity({
		label: 'empty rear axle',
		kind: 'mass',
		min: 100,
		max: 8000,
		aliases: ['empty rear', 'rear empty', 'empty rear axle', 'rear axle empty', 'rear scale', 'hinten leer'],
	}),
	wheelbase: choice({ label: 'size of the van', options: wheelbaseOptions }),
	roof: choice({
		label: 'roof',
		options: roofOptions,
		fallback: {
			value: 'high',
			why: 'the usual roof of a camper van; the safe side for its height',
			confirm: true,
		},
	}),
	wheelbaseM: quantity({
		label: 'wheelbase',
		kind: 'length',
		min: 1.8,
		max: 7,
		unit: 'in',
		aliases: ['wheelbase', 'wb', 'radstand', 'batalla'],
	}),
	centreHeightM: quantity({
		label: 'centre of gravity of the bare van over the ground',
		kind: 'length',
		min: 0.3,
		max: 2,
		aliases: ['centre of gravity', 'center of gravity', 'cg height', 'cg', 'schwerpunkthöhe', 'schwerpunkt'],
		fallback: {
			value: (given) => roofClasses[(given.roof as Roof | undefined) ?? 'high'].centreHeightM,
			why: 'typical for the roof (practice)',
			confirm: true,
		},
	}),
	trackM: quantity({
		label: 'track',
		kind: 'length',
		min: 1,
		max: 2.3,
		aliases: ['track', 'track width', 'spurweite', 'ancho de vía'],
		fallback: { value: usualTrackM, why: 'usual for panel vans (practice)', confirm: true },
	}),
	liftM: quantity({
		label: 'lift',
		kind: 'length',
		min: 0.005,
		max: 0.5,
		aliases: ['lift', 'lifted', 'raised', 'lift kit', 'höherlegung', 'elevación'],
		help: 'What springs and tires raise the body; item heights are taken as before it.',
	}),
	people: count({
		label: 'people',
		min: 0,
		max: 12,
		aliases: [
			'ppl',
			'peeps',
			'pers',
			'people',
			'persons',
			'adults',
			'passengers',
			'crew',
			'travellers',
			'travelers',
			'personas',
			'personen',
			'leute',
			'pax',
		],
		fallback: { value: 1, why: 'the driver at least', confirm: true },
	}),
	personKg: quantity({
		label: 'mass of a person',
		kind: 'mass',
		min: 30,
		max: 250,
		aliases: ['each person', 'a person', 'per person', 'pro person', 'por persona'],
		fallback: {
			value: 75,
			why: '75 kg as the European rule counts a driver; the US label counts 68 kg (150 lb). Weigh your people',
			confirm: true,
		},
	}),
	rearSeatM: quantity({
		label: 'second row behind the front axle',
		kind: 'length',
		min: 1,
		max: 6,
		aliases: ['second row', 'rear seats', 'rear seat', 'back seats', 'zweite reihe', 'segunda fila'],
		help: 'Where the third person and more sit.',
	}),
};

type Input = InputOf<typeof fields>;
type ItemInput = NonNullable<Input['items']>[number];

export const payload = declareTopic({
	name: 'payload',
	title: 'Weight ledger, axle loads and stability',
	system: 'weight',
	purpose:
		'Whether the van with everything aboard stays within its GVWR and axle ratings, how it stands side to side, and what would clear an overload.',
	words: [
		'payload',
		'axle load',
		'axle loads',
		'gvwr',
		'weight ledger',
		'overloaded',
		'overweight',
		'weight',
		'ledger',
		'axle weight',
		'zuladung',
		'achslast',
		'gewicht',
		'carga útil',
		'peso por eje',
		'axle ratings',
		'axle rating',
		'over the axle',
		'over the axle ratings',
		'over gvwr',
		'too heavy',
	],
	examples: [
		'payload long wheelbase high roof, gvwr 3500 kg, rear axle rating 2240 kg, water 100 L at 4.2 m, battery 60 kg at 2.4 m, bed 90 kg at 4.2 m, 2 people',
		'gvwr 9350 lb, extended van, rear gawr 5500 lb, fresh tank 40 gal in the back, batteries 250 lb over the rear axle, 2 people',
		'weight: medium van empty weight 1980 kg gvwr 3500 kg, cabinets 180 kg in the middle left side, fridge 40 kg at 2 m, lift 50 mm',
		'zuladung langer radstand, zulässiges gesamtgewicht 3500 kg, frischwasser 90 L hinten, batterie 50 kg mitte, 2 personen',
	],
	method:
		'Moments about the front axle and the middle line on the empty weights of van or size class; tanks full, and empty for comparison; static stability factor from the heights. Tow loads, suspension and moving loads are not covered; the scale decides.',
	fields,
	needs: [
		{
			anyOf: ['gvwrKg', 'rearRatingKg', 'frontRatingKg'],
			question: 'What is the GVWR (and the axle ratings), on the door label?',
		},
		{
			anyOf: ['wheelbase', 'wheelbaseM'],
			question: 'Which wheelbase: short, medium, long or extra-long (or in inches or metres)?',
		},
	],
	calculate: calculatePayload,
});

function n(value: number, decimals = 1): string {
	return writeNumber(value, decimals);
}

/** Masses in the ledger are shown in whole units, loads up and reserves down. */
function up(sheet: Sheet, kg: number): string {
	return sheet.show('mass', kg, { decimals: 0, round: 'up' });
}
function down(sheet: Sheet, kg: number): string {
	return sheet.show('mass', kg, { decimals: 0, round: 'down' });
}

interface Vehicle {
	readonly empty: EmptyVehicle;
	readonly floor: Floor;
	readonly roofHeightM: number;
}

/** One thing aboard with its place where it is known, and what of it is fluid. */
interface Aboard {
	readonly name: string;
	readonly dryKg: number;
	readonly fluidKg: number;
	readonly positionM: number | null;
	readonly sideM: number;
	readonly heightM: number;
	readonly isPeople: boolean;
}

function calculatePayload(input: Input, sheet: Sheet) {
	sheet.caution(cautionScales, cautionAxle);
	const problem = contradictionIn(input, sheet);
	if (problem !== null) return problem;
	const vehicle = vehicleOf(input, sheet);
	const lines = input.items ?? [];
	const { plain, changes } = partWhatIfs(lines);
	const unweighed = plain.find((line) => line.massKg === undefined && line.volumeL === undefined);
	if (unweighed !== undefined) {
		const name = unweighed.name ?? sheet.say`the item without a name`;
		return sheet.ask({
			name: 'items',
			label: fields.items.meta.label,
			question: sheet.say`What does ${name} weigh (or how much does its tank hold)?`,
		});
	}
	const aboard = [...plain.map((line) => aboardOf(line, vehicle, sheet)), ...peopleOf(input, sheet)];
	return report({ input, vehicle, aboard, changes, plain }, sheet);
}

function contradictionIn(input: Input, sheet: Sheet) {
	const { emptyKg, frontEmptyKg, rearEmptyKg, gvwrKg } = input;
	if (frontEmptyKg !== undefined && rearEmptyKg !== undefined && emptyKg !== undefined) {
		const sum = frontEmptyKg + rearEmptyKg;
		if (Math.abs(sum - emptyKg) > 0.02 * emptyKg) {
			return sheet.refuse(
				'contradiction',
				sheet.say`The empty axles add to ${up(sheet, sum)}, the empty weight is ${up(sheet, emptyKg)}.`,
				sheet.say`Give the two axle weights alone, from one weighing.`,
				'emptyKg',
			);
		}
	}
	const bare = emptyKg ?? (frontEmptyKg ?? 0) + (rearEmptyKg ?? 0);
	if (gvwrKg !== undefined && bare > gvwrKg) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read an empty weight of ${up(sheet, bare)} above the GVWR of ${down(sheet, gvwrKg)}.`,
			sheet.say`Read both from the door label and the scale slip again.`,
			'gvwrKg',
		);
	}
	const { frontRatingKg, rearRatingKg } = input;
	if (gvwrKg !== undefined && ((frontRatingKg ?? 0) > gvwrKg || (rearRatingKg ?? 0) > gvwrKg)) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read an axle rating above the GVWR of ${down(sheet, gvwrKg)}.`,
			sheet.say`The GVWR is the rating of the whole van; each axle has a smaller one.`,
			'gvwrKg',
		);
	}
	return null;
}

/** The bare van: what was weighed, else what its size class usually is. */
function vehicleOf(input: Input, sheet: Sheet): Vehicle {
	const sizeClass: Wheelbase = input.wheelbase ?? wheelbaseClass(input.wheelbaseM as number);
	const usual = vanClasses[sizeClass];
	const roof = roofClasses[input.roof];
	const typical = (name: string, label: string, value: number, kind: 'mass' | 'length') =>
		sheet.assume(name, label, value, 'typical of the size class (practice); weigh or measure yours', {
			kind,
			confirm: true,
			write: kind === 'mass' ? { decimals: 0 } : { decimals: 2 },
		});
	const wheelbaseM = input.wheelbaseM ?? usual.wheelbaseM;
	if (input.wheelbaseM === undefined) typical('wheelbaseM', 'wheelbase', wheelbaseM, 'length');
	const { frontKg, rearKg, isWeighed } = emptyAxles(input, usual.emptyKg + roof.moreKg, usual.frontShare);
	if (!isWeighed) {
		typical('frontEmptyKg', 'empty front axle', frontKg, 'mass');
		typical('rearEmptyKg', 'empty rear axle', rearKg, 'mass');
		sheet.finding(
			'warning',
			'empty-weight-typical',
			sheet.say`The empty axle weights are typical of the size class, no more: they can be off by 200 kg. Weigh the van.`,
			vanSource,
		);
	}
	sheet.source(vanSource);
	return {
		empty: { wheelbaseM, frontKg, rearKg, trackM: input.trackM, centreHeightM: input.centreHeightM },
		floor: floorOf(sizeClass, wheelbaseM),
		roofHeightM: roof.heightM,
	};
}

function emptyAxles(input: Input, usualKg: number, usualShare: number) {
	const { frontEmptyKg, rearEmptyKg, emptyKg } = input;
	if (frontEmptyKg !== undefined && rearEmptyKg !== undefined) {
		return { frontKg: frontEmptyKg, rearKg: rearEmptyKg, isWeighed: true };
	}
	const totalKg = emptyKg ?? usualKg;
	if (frontEmptyKg !== undefined && frontEmptyKg < totalKg) {
		return { frontKg: frontEmptyKg, rearKg: totalKg - frontEmptyKg, isWeighed: emptyKg !== undefined };
	}
	if (rearEmptyKg !== undefined && rearEmptyKg < totalKg) {
		return { frontKg: totalKg - rearEmptyKg, rearKg: rearEmptyKg, isWeighed: emptyKg !== undefined };
	}
	return { frontKg: totalKg * usualShare, rearKg: totalKg * (1 - usualShare), isWeighed: false };
}

/** Lines that ask "what if": said so, or naming again without a mass what stands in the ledger already. */
function partWhatIfs(lines: readonly ItemInput[]): {
	readonly plain: readonly ItemInput[];
	readonly changes: readonly ItemInput[];
} {
	const isAgain = (line: ItemInput, index: number) =>
		line.massKg === undefined &&
		line.volumeL === undefined &&
		lines.slice(0, index).some((other) => sameName(other, line));
	const changes = lines.filter((line, index) => line.whatIf === true || isAgain(line, index));
	return { plain: lines.filter((line) => !changes.includes(line)), changes };
}

function sameName(a: ItemInput, b: ItemInput): boolean {
	return a.name !== undefined && b.name !== undefined && a.name.toLowerCase() === b.name.toLowerCase();
}

function aboardOf(line: ItemInput, vehicle: Vehicle, sheet: Sheet): Aboard {
	const name = line.name ?? 'item';
	const times = line.count ?? 1;
	const fluid: TankFluid = line.fluid ?? 'water';
	const fluidKg = (line.volumeL ?? 0) * tankFluids[fluid].kgPerL * times;
	if (line.volumeL !== undefined) sheet.source(tankFluids[fluid].source);
	let positionM = line.positionM ?? null;
	if (positionM === null && line.zone !== undefined) {
		positionM = zoneM(line.zone, vehicle.floor);
		sheet.assume(
			`place of ${name}`,
			sheet.say`place of ${name}`,
			positionM,
			'the middle of the part of the van named (practice)',
			{
				kind: 'length',
				confirm: true,
			},
		);
	}
	const offsetM = line.sideM ?? (line.side === undefined ? 0 : usualSideM);
	return {
		name,
		dryKg: (line.massKg ?? 0) * times,
		fluidKg,
		positionM,
		sideM: line.side === 'left' ? -offsetM : offsetM,
		heightM: line.heightM ?? (line.onRoof === true ? vehicle.roofHeightM + 0.1 : usualLoadHeightM),
		isPeople: false,
	};
}

/** Two sit in the cab; where more ride, their row must be named or they are taken at the worse place. */
function peopleOf(input: Input, sheet: Sheet): Aboard[] {
	const inCab = Math.min(2, input.people);
	const behind = input.people - inCab;
	const row = (name: string, howMany: number, positionM: number | null): Aboard[] =>
		howMany === 0
			? []
			: [
					{
						name,
						dryKg: howMany * input.personKg,
						fluidKg: 0,
						positionM,
						sideM: 0,
						heightM: usualLoadHeightM,
						isPeople: true,
					},
				];
	if (inCab > 0) {
		sheet.assume('seatM', 'cab seats behind the front axle', usualSeatM, 'usual (practice)', {
			kind: 'length',
		});
	}
	return [
		...row('people in the cab', inCab, usualSeatM),
		...row('people behind', behind, input.rearSeatM ?? null),
	];
}

interface Case {
	readonly input: Input;
	readonly vehicle: Vehicle;
	readonly aboard: readonly Aboard[];
	readonly changes: readonly ItemInput[];
	readonly plain: readonly ItemInput[];
}

/** The ledger with tanks full or empty; what has no place stands at `elsewhereM`. */
function loadsOf(aboard: readonly Aboard[], full: boolean, elsewhereM: number): Load[] {
	return aboard.map((one) => ({
		name: one.name,
		massKg: one.dryKg + (full ? one.fluidKg : 0),
		positionM: one.positionM ?? elsewhereM,
		sideM: one.sideM,
		heightM: one.heightM,
	}));
}

function lifted(vehicle: EmptyVehicle, liftM: number): EmptyVehicle {
	return { ...vehicle, centreHeightM: vehicle.centreHeightM + liftM };
}

function report(one: Case, sheet: Sheet) {
	const { input, vehicle, aboard } = one;
	const { floor } = vehicle;
	const liftM = input.liftM ?? 0;
	const empty = lifted(vehicle.empty, liftM);
	const raise = (loads: Load[]) => loads.map((load) => ({ ...load, heightM: load.heightM + liftM }));
	const endM = floor.wheelbaseM + floor.rearOverhangM;
	const at = (elsewhereM: number, full: boolean) =>
		axleLoads(empty, raise(loadsOf(aboard, full, elsewhereM)));
	const worstRear = at(endM, true);
	const worstFront = at(usualSeatM, true);
	const drained = at(endM, false);
	const unplaced = aboard.filter((load) => load.positionM === null && load.dryKg + load.fluidKg > 0);
	const isPlaced = unplaced.length === 0;

	writeWorking(one, empty, worstRear, sheet);
	writeResults(one, { worstRear, worstFront, drained, isPlaced }, sheet);
	if (!isPlaced) nameUnplaced(unplaced, sheet);
	writeStability(one, worstRear, sheet);
	if (isPlaced) {
		writeSides(input, worstRear, sheet);
		writeFrontShare(drained, worstRear, sheet);
	}
	// People are not left out or stowed elsewhere.
	const loads = loadsOf(
		aboard.filter((load) => !load.isPeople),
		true,
		endM,
	);
	const overloads = [
		overGross(input, worstRear.totalKg, sheet),
		overAxle(
			'rear',
			{ rating: input.rearRatingKg, kg: worstRear.rearKg, other: worstFront.frontKg },
			one,
			loads,
			isPlaced,
			sheet,
		),
		overAxle(
			'front',
			{ rating: input.frontRatingKg, kg: worstFront.frontKg, other: worstRear.rearKg },
			one,
			loads,
			isPlaced,
			sheet,
		),
	].filter((text) => text !== null);
	if (input.rearRatingKg === undefined || input.frontRatingKg === undefined) {
		const which =
			input.rearRatingKg === undefined
				? input.frontRatingKg === undefined
					? 'front and rear axle ratings are'
					: 'rear axle rating is'
				: 'front axle rating is';
		sheet.finding(
			'warning',
			'axle-rating-unknown',
			sheet.say`The ${which} not known: a van within its GVWR can still overload an axle. Read it from the door label.`,
			published('49 CFR 571.3', 'GAWR: load-carrying capacity of a single axle system'),
		);
	}
	writeWhatIfs(one, worstRear, sheet);
	return decide(input, { worstRear, worstFront, isPlaced }, overloads, sheet);
}

function nameUnplaced(unplaced: readonly Aboard[], sheet: Sheet): void {
	const names = unplaced.map((load) => load.name).join(', ');
	sheet.finding(
		'warning',
		'position-unknown',
		sheet.say`No place was named for: ${names}. Each axle is taken with all of it at the worse end; name their places behind the front axle.`,
		physics('moments about the front axle'),
	);
}

function writeWorking(one: Case, empty: EmptyVehicle, full: AxleLoads, sheet: Sheet): void {
	const moments = physics('moments about the front axle');
	for (const load of one.aboard) {
		if (load.positionM === null) continue;
		const kg = load.dryKg + load.fluidKg;
		sheet.step(
			sheet.say`${load.name} on the rear axle`,
			'm · x / L',
			`${n(kg)} kg × ${n(load.positionM, 2)} m / ${n(empty.wheelbaseM, 2)} m`,
			kg * shareOn('rear', load.positionM, empty.wheelbaseM),
			{ kind: 'mass', source: moments },
		);
	}
	sheet.step(
		'total',
		'Σ m',
		sheet.say`${n(empty.frontKg + empty.rearKg)} kg empty and ${one.aboard.length} lines`,
		full.totalKg,
		{
			kind: 'mass',
			source: physics('sum of the masses'),
		},
	);
	sheet.step(
		'rear axle',
		'R = R0 + Σ m · x / L',
		sheet.say`${n(empty.rearKg)} kg empty and ${one.aboard.length} lines`,
		full.rearKg,
		{ kind: 'mass', source: moments },
	);
	sheet.step('front axle', 'F = Σ m − R', `${n(full.totalKg)} kg − ${n(full.rearKg)} kg`, full.frontKg, {
		kind: 'mass',
		source: moments,
	});
	sheet.step(
		'centre of gravity over the ground',
		'h = Σ m · z / Σ m',
		sheet.say`bare van at ${n(empty.centreHeightM, 2)} m and ${one.aboard.length} lines`,
		full.centreHeightM,
		{ kind: 'length', source: physics('centre of mass') },
	);
}

interface Loaded {
	readonly worstRear: AxleLoads;
	readonly worstFront: AxleLoads;
	readonly drained: AxleLoads;
	readonly isPlaced: boolean;
}

function writeResults(one: Case, loaded: Loaded, sheet: Sheet): void {
	const { input } = one;
	const { worstRear, worstFront, drained, isPlaced } = loaded;
	const mass = (name: string, label: string, kg: number, round: 'up' | 'down') =>
		sheet.result(name, label, kg, { kind: 'mass', write: { decimals: 0, round } });
	mass('total', 'total, tanks full', worstRear.totalKg, 'up');
	if (isPlaced) {
		mass('frontAxle', 'front axle, tanks full', worstFront.frontKg, 'up');
		mass('rearAxle', 'rear axle, tanks full', worstRear.rearKg, 'up');
	} else {
		mass('frontAxleAtMost', 'front axle at most', worstFront.frontKg, 'up');
		mass('rearAxleAtMost', 'rear axle at most', worstRear.rearKg, 'up');
	}
	if (input.gvwrKg !== undefined)
		mass('payloadLeft', 'left to the GVWR', input.gvwrKg - worstRear.totalKg, 'down');
	if (input.frontRatingKg !== undefined) {
		mass('frontReserve', 'left to the front axle rating', input.frontRatingKg - worstFront.frontKg, 'down');
	}
	if (input.rearRatingKg !== undefined) {
		mass('rearReserve', 'left to the rear axle rating', input.rearRatingKg - worstRear.rearKg, 'down');
	}
	mass('totalTanksEmpty', 'total, tanks empty', drained.totalKg, 'up');
	if (!isPlaced) return;
	mass('frontAxleTanksEmpty', 'front axle, tanks empty', drained.frontKg, 'up');
	mass('rearAxleTanksEmpty', 'rear axle, tanks empty', drained.rearKg, 'up');
	sheet.result('centreBehindFront', 'centre of gravity behind the front axle', worstRear.centreBehindFrontM, {
		kind: 'length',
		write: { decimals: 2 },
	});
	sheet.result('frontShare', 'share on the front axle', worstRear.frontKg / worstRear.totalKg, {
		kind: 'fraction',
	});
}

function writeStability(one: Case, full: AxleLoads, sheet: Sheet): void {
	const { input, vehicle } = one;
	const before = stabilityFactor(input.trackM, vehicle.empty.centreHeightM);
	const after = stabilityFactor(input.trackM, full.centreHeightM);
	const source = fromMemory('NHTSA rollover resistance rating', 'static stability factor T / 2h');
	sheet.step(
		'static stability factor',
		'SSF = T / (2 · h)',
		`${n(input.trackM, 2)} m / (2 × ${n(full.centreHeightM, 3)} m)`,
		after,
		{ source },
	);
	sheet.result('centreHeight', 'centre of gravity over the ground', full.centreHeightM, {
		kind: 'length',
		write: { decimals: 2, round: 'up' },
	});
	sheet.result('stabilityBefore', 'static stability factor, bare van', before, {
		write: { decimals: 3, round: 'down' },
	});
	sheet.result('stabilityAfter', 'static stability factor, loaded', after, {
		write: { decimals: 3, round: 'down' },
	});
	sheet.result(
		'rolloverBand',
		'rollover in single-vehicle crashes of passenger vehicles',
		rolloverBand(after),
	);
	sheet.source(rolloverSource);
	const factor = writeNumber(after, 2, 'down');
	if (after < lowStability || after < (1 - usualLoss) * before) {
		sheet.finding(
			'warning',
			'stability-low',
			sheet.say`Top-heavy: static stability factor ${factor}, ${writeNumber(before, 2)} for the bare van. Lower the heavy things and take weight off the roof.`,
			practice('0.95, and at most 15 % lost'),
		);
	} else if (after <= lowestBand) {
		sheet.finding(
			'note',
			'stability-lowest-band',
			sheet.say`Static stability factor ${factor}: up to ${n(lowestBand, 2)} is the lowest of the five published bands, ${rolloverBand(after)} of single-vehicle crashes rolled over. Tall vans are there; drive so.`,
			rolloverSource,
		);
	}
	if (input.liftM !== undefined) {
		sheet.finding(
			'note',
			'lift-lowers-stability',
			sheet.say`The lift is counted: factor ${writeNumber(before, 2, 'down')} bare before it, ${writeNumber(after, 2, 'down')} loaded after it. Ratings stay as they are.`,
			source,
		);
	}
}

function writeSides(input: Input, full: AxleLoads, sheet: Sheet): void {
	const difference = Math.abs(full.leftKg - full.rightKg);
	const mass = (name: string, label: string, kg: number) =>
		sheet.result(name, label, kg, { kind: 'mass', write: { decimals: 0, round: 'up' } });
	mass('left', 'left wheels', full.leftKg);
	mass('right', 'right wheels', full.rightKg);
	const heavy = full.leftKg > full.rightKg ? 'left' : 'right';
	if (difference > usualSideShare * full.totalKg) {
		const clears = (difference * input.trackM) / 2;
		sheet.finding(
			'warning',
			'side-heavy',
			sheet.say`The ${heavy} side carries ${up(sheet, difference)} more than the other: move about ${up(sheet, clears / usualSideM / 2)} from one wall to the other.`,
			practice('sides within a twentieth of the total'),
		);
	}
	const corners = [
		{ name: 'left rear', kg: full.rearLeftKg, rating: input.rearRatingKg },
		{ name: 'right rear', kg: full.rearRightKg, rating: input.rearRatingKg },
		{ name: 'left front', kg: full.frontLeftKg, rating: input.frontRatingKg },
		{ name: 'right front', kg: full.frontRightKg, rating: input.frontRatingKg },
	];
	for (const corner of corners) {
		if (corner.rating === undefined || corner.kg <= corner.rating / 2) continue;
		sheet.finding(
			'warning',
			'corner-heavy',
			sheet.say`The ${corner.name} wheel carries ${up(sheet, corner.kg)}, above half the axle's rating (${down(sheet, corner.rating / 2)}): check its tire with the tire topic.`,
			practice('each wheel at most half the axle rating'),
		);
	}
}

function writeFrontShare(drained: AxleLoads, full: AxleLoads, sheet: Sheet): void {
	const share = Math.min(drained.frontKg / drained.totalKg, full.frontKg / full.totalKg);
	if (share >= leastFrontShare) return;
	sheet.finding(
		share < 0.2 ? 'danger' : 'warning',
		'front-light',
		sheet.say`Only ${writeNumber(share * 100, 0, 'down')} % stand on the front axle: steering and front brakes suffer. Move weight forward of the rear axle.`,
		practice('three tenths on the front axle; the European rule for goods vehicles asks two'),
	);
}

function overGross(input: Input, totalKg: number, sheet: Sheet): string | null {
	if (input.gvwrKg === undefined || totalKg <= input.gvwrKg) return null;
	const over = up(sheet, totalKg - input.gvwrKg);
	const text = sheet.say`${over} over the GVWR`;
	sheet.finding(
		'danger',
		'gvwr-exceeded',
		sheet.say`Total ${up(sheet, totalKg)}, GVWR ${down(sheet, input.gvwrKg)}: leave ${over} out, wherever it stands. Brakes, frame and insurance end at the rating.`,
		published('49 CFR 571.3', 'GVWR: loaded weight the maker specifies'),
	);
	return text;
}

interface AxleState {
	readonly rating: number | undefined;
	readonly kg: number;
	/** what stands on the other axle [kg] */
	readonly other: number;
}

/** An axle over its rating: how much, and the smallest step that clears it. */
function overAxle(
	axle: Axle,
	state: AxleState,
	one: Case,
	loads: readonly Load[],
	isPlaced: boolean,
	sheet: Sheet,
): string | null {
	if (state.rating === undefined || state.kg <= state.rating) return null;
	const excessKg = state.kg - state.rating;
	const over = up(sheet, excessKg);
	const { floor } = one.vehicle;
	const reliefs = reliefOf(axle, excessKg, loads, floor.wheelbaseM, {
		nearestM: bulkheadM,
		farthestM: floor.wheelbaseM + floor.rearOverhangM,
	});
	const remove = least(reliefs, (relief) => relief.removeKg);
	const otherRating = axle === 'rear' ? one.input.frontRatingKg : one.input.rearRatingKg;
	const takes = otherRating === undefined || state.other + excessKg <= otherRating;
	const move = takes ? least(reliefs, (relief) => relief.moveM) : null;
	if (axle === 'rear' && isPlaced) {
		sheet.result('rearExcess', 'over the rear axle rating', excessKg, {
			kind: 'mass',
			write: { decimals: 0, round: 'up' },
		});
	}
	const ways: string[] = [];
	if (remove !== null) {
		sheet.result(
			`${axle}ClearByRemoving`,
			sheet.say`leave out of ${remove.name}`,
			remove.removeKg as number,
			{
				kind: 'mass',
				write: { decimals: 0, round: 'up' },
			},
		);
		ways.push(sheet.say`leave out ${up(sheet, remove.removeKg as number)} of ${remove.name}`);
	}
	if (move !== null) {
		sheet.result(`${axle}ClearByMoving`, sheet.say`move ${move.name}`, move.moveM as number, {
			kind: 'length',
			write: { decimals: 2, round: 'up' },
		});
		const distance = sheet.show('length', move.moveM as number, { decimals: 2, round: 'up' });
		ways.push(
			axle === 'rear'
				? sheet.say`move ${move.name} ${distance} forward`
				: sheet.say`move ${move.name} ${distance} back`,
		);
	}
	const share =
		excessKg / Math.max(...loads.map((load) => shareOn(axle, load.positionM, floor.wheelbaseM)), 1e-9);
	const clears =
		ways.length > 0
			? sheet.say`Cleared by one of: ${ways.join('; ')}.`
			: sheet.say`No single item clears it: take at least ${up(sheet, share)} off at that end, over several items.`;
	sheet.finding(
		'danger',
		`${axle}-axle-overloaded`,
		sheet.say`The ${axle} axle has ${up(sheet, state.kg)} with full tanks, rated ${down(sheet, state.rating)}: ${over} too much. ${clears}`,
		published('49 CFR 571.3', 'GAWR: load-carrying capacity of a single axle system'),
	);
	return sheet.say`${axle} axle ${over} over its rating`;
}

function least<T>(all: readonly T[], of: (one: T) => number | null): T | null {
	const possible = all.filter((one) => of(one) !== null);
	return possible.toSorted((a, b) => (of(a) as number) - (of(b) as number))[0] ?? null;
}

/** What another place or mass of an item, or one more item, would do. */
function writeWhatIfs(one: Case, before: AxleLoads, sheet: Sheet): void {
	for (const change of one.changes) {
		const index = one.plain.findIndex((line) => sameName(line, change));
		const known = one.plain[index];
		if (known === undefined && change.massKg === undefined && change.volumeL === undefined) continue;
		const given = Object.fromEntries(Object.entries(change).filter(([, value]) => value !== undefined));
		// A place named anew stands for the old one, whether it was named in metres or by a part of the van.
		const placeless =
			change.positionM === undefined && change.zone === undefined
				? known
				: { ...known, positionM: undefined, zone: undefined };
		const line = { ...placeless, ...given } as ItemInput;
		const aboard = [...one.aboard];
		const changed = aboardOf(line, one.vehicle, sheet);
		if (known === undefined) aboard.push(changed);
		else aboard[index] = changed;
		const { floor, empty } = one.vehicle;
		const after = axleLoads(empty, loadsOf(aboard, true, floor.wheelbaseM + floor.rearOverhangM));
		const mass = (name: string, label: string, kg: number) =>
			sheet.result(name, label, kg, { kind: 'mass', write: { decimals: 0, round: 'up' } });
		mass('whatIfTotal', 'what if: total', after.totalKg);
		mass('whatIfFrontAxle', 'what if: front axle', after.frontKg);
		mass('whatIfRearAxle', 'what if: rear axle', after.rearKg);
		const by = sheet.show('mass', after.rearKg - before.rearKg, { decimals: 0 });
		const clears =
			one.input.rearRatingKg === undefined
				? ''
				: after.rearKg <= one.input.rearRatingKg
					? sheet.say` Within the rear rating.`
					: sheet.say` Still over the rear rating.`;
		sheet.finding(
			'note',
			'what-if',
			sheet.say`What if ${changed.name}: rear axle ${up(sheet, after.rearKg)} (${by}), front axle ${up(sheet, after.frontKg)}, total ${up(sheet, after.totalKg)}.${clears}`,
			physics('moments about the front axle'),
		);
	}
}

function decide(
	input: Input,
	loaded: Pick<Loaded, 'worstRear' | 'worstFront' | 'isPlaced'>,
	overloads: readonly string[],
	sheet: Sheet,
) {
	const { worstRear, worstFront, isPlaced } = loaded;
	const rear = up(sheet, worstRear.rearKg);
	const front = up(sheet, worstFront.frontKg);
	const axles = isPlaced
		? sheet.say`Front axle ${front}, rear axle ${rear}, tanks full.`
		: sheet.say`Front axle at most ${front}, rear axle at most ${rear}, tanks full.`;
	sheet.result('verdict', 'verdict', overloads.length === 0 ? 'within the ratings' : 'overloaded');
	if (overloads.length > 0) {
		const text = overloads.slice(0, 2).join(', ');
		return sheet.answer(text.charAt(0).toUpperCase() + text.slice(1), {
			governedBy: 'rating',
			because: axles,
		});
	}
	const total = up(sheet, worstRear.totalKg);
	const left = leastReserve(input, worstRear, worstFront, sheet);
	if (left.kg < 0.02 * left.rating) {
		sheet.finding(
			'warning',
			'little-payload-left',
			sheet.say`Only ${down(sheet, left.kg)} are left ${left.where}: clothes, food and water bottles of a trip weigh more.`,
			practice('a fiftieth of the rating in hand'),
		);
	}
	sheet.tipping('items', 'more load', left.kg, sheet.say`up to ${down(sheet, left.kg)} more ${left.where}`, {
		kind: 'mass',
	});
	const gross =
		input.gvwrKg === undefined || left.where === grossText
			? ''
			: sheet.say`, ${down(sheet, input.gvwrKg - worstRear.totalKg)} ${grossText}`;
	return sheet.answer(sheet.say`${total} in all: ${down(sheet, left.kg)} left ${left.where}${gross}`, {
		governedBy: 'rating',
		because: axles,
	});
}

const grossText = 'to the GVWR';

/** The rating that is reached first. */
function leastReserve(input: Input, worstRear: AxleLoads, worstFront: AxleLoads, sheet: Sheet) {
	const reserves = [
		{ rating: input.gvwrKg, kg: worstRear.totalKg, where: grossText },
		{ rating: input.rearRatingKg, kg: worstRear.rearKg, where: sheet.say`on the rear axle` },
		{ rating: input.frontRatingKg, kg: worstFront.frontKg, where: sheet.say`on the front axle` },
	].flatMap(({ rating, kg, where }) => (rating === undefined ? [] : [{ rating, kg: rating - kg, where }]));
	const least = reserves.toSorted((one, other) => one.kg - other.kg)[0];
	if (least === undefined) throw new Error('the declaration asks for a rating');
	return least;
}
