import type { Context } from '../topic/context.js';
import type { AnyTopic } from '../topic/declare.js';
import type { FieldValue } from '../topic/field.js';
import { equipmentOf } from './equipment/index.js';
import { houseV, knownBank } from './facts/bank.js';
import { circuitsOf } from './facts/circuits.js';
import { Facts, num, word } from './facts/facts.js';
import { dailyLoads, loadsAboard, mainsLoads } from './facts/loads.js';
import { weightsOf } from './facts/weights.js';
import { type Rest, restValue } from './rests.js';
import type { Piece, Van } from './van.js';

/** An input that a question takes from the build it is asked in. */
export interface Borrowed {
	/** the topic's field */
	readonly name: string;
	readonly value: FieldValue;
	/** the values of the build it rests on */
	readonly rests: readonly Rest[];
}

/** A value with the fields of the build it comes from; null where nothing was told. */
type Known = {
	readonly value: FieldValue;
	readonly from: readonly (readonly [item: string, field: string])[];
} | null;
type Find = (facts: Facts, named: readonly string[], given: Readonly<Record<string, unknown>>) => Known;

/** Fields of a piece, the first piece of its kind that was told of it. */
function of(kind: string, ...fields: readonly string[]): Find {
	return (facts) => {
		for (const piece of facts.pieces(kind)) {
			for (const field of fields) {
				const value = piece.values[field];
				if (value !== undefined) return { value, from: [[piece.id, field]] };
			}
		}
		return null;
	};
}

/** The house voltage, where it was told. */
const bankV: Find = (facts) => {
	const piece = facts.first('battery');
	if (piece === null) return null;
	const told = ['bankV', 'unitV'].filter((field) => piece.values[field] !== undefined);
	if (told.length === 0) return null;
	return { value: houseV(facts), from: told.map((field) => [piece.id, field] as const) };
};

const bankAh: Find = (facts) => {
	const known = knownBank(facts);
	if (known === null) return null;
	const { piece, bank } = known;
	const fields = ['unitAh', 'unitWh', 'unitCount', 'unitV', 'bankV', 'layout'];
	return { value: bank.unitAh * bank.parallel, from: fields.map((field) => [piece.id, field] as const) };
};

const depth: Find = (facts) => {
	const known = knownBank(facts);
	const piece = facts.first('battery');
	if (known === null || piece === null) return null;
	return { value: known.bank.chemistry.depthOfDischarge, from: [[piece.id, 'chemistry']] };
};

const loads: Find = (facts) => {
	const list = dailyLoads(facts).map(({ load }) => ({
		name: load.name,
		powerW: load.runningW / load.count,
		...(load.count > 1 ? { count: load.count } : {}),
		...(load.hoursPerDay === null ? {} : { durationH: load.hoursPerDay }),
		...(load.duty < 1 ? { duty: load.duty } : {}),
		supply: load.mains ? 'mains' : 'dc',
	}));
	return list.length === 0 ? null : { value: list, from: [['*', 'loads']] };
};

const loadsOnMains: Find = (facts) => {
	const list = mainsLoads(facts).map(({ load }) => ({
		name: load.typical?.name ?? load.name,
		powerW: load.runningW / load.count,
		...(load.count > 1 ? { count: load.count } : {}),
	}));
	return list.length === 0 ? null : { value: list.slice(0, 16), from: [['*', 'mains loads']] };
};

type Item = Readonly<Record<string, unknown>>;

/**
 * Things that the question names without figures, each with what the build knows of it: "how long will the bank run the
 * fridge"; null where there is nothing to add.
 */
function completed(facts: Facts, items: readonly Item[]): Known {
	const from: [item: string, field: string][] = [];
	const list = items.map((item) => {
		const isBare = ['powerW', 'currentA', 'energyWh', 'chargeAh'].every((name) => item[name] === undefined);
		const called = String(item.name ?? '').toLowerCase();
		const piece = isBare && called !== '' ? pieceCalled(facts, called) : null;
		if (piece === null) return item;
		const field = [...powerFields, ...currentFields].find((name) => num(piece, name) !== undefined);
		if (field === undefined) return item;
		from.push([piece.id, field]);
		const isCurrent = (currentFields as readonly string[]).includes(field);
		return { ...item, [isCurrent ? 'currentA' : 'powerW']: num(piece, field) };
	});
	return from.length === 0 ? null : { value: list, from };
}

/** The only piece that a word of the question can mean. */
function pieceCalled(facts: Facts, called: string): Piece | null {
	const pieces = facts.van.pieces.filter(
		(piece) =>
			(piece.kind === 'inverter' || drawsSomething(facts, piece)) &&
			(piece.values.name === called ||
				equipmentOf(piece.kind).label.toLowerCase() === called ||
				equipmentOf(piece.kind).words.some((word) => word.toLowerCase() === called)),
	);
	return pieces.length === 1 ? (pieces[0] as Piece) : null;
}

function drawsSomething(facts: Facts, piece: Piece): boolean {
	return loadsAboard(facts).loads.some((one) => one.piece === piece);
}

/** Water of the tank that is named, or of the only one. */
const tankL: Find = (facts, named) => {
	const tanks = ['fresh-tank', 'gray-tank'].flatMap((kind) => facts.pieces(kind));
	const meant = tanks.filter(({ kind }) => named.includes(kind));
	const [piece, other] = meant.length > 0 ? meant : tanks;
	const volumeL = piece === undefined ? undefined : num(piece, 'volumeL');
	if (piece === undefined || volumeL === undefined || other !== undefined) return null;
	return { value: volumeL, from: [[piece.id, 'volumeL']] };
};

/** What burns fuel aboard under the names the topic knows it by, and where its power was told. */
const burnerKinds = {
	heater: ['heater', 'outputW'],
	cooktop: ['cooktop', 'powerW'],
	'water-heater': ['water heater', 'powerW'],
} as const;

/** The fuel of a piece as a store of it is named; null where it burns none that is stored in a van. */
function storedFuel(piece: Piece): string | null {
	const burns = word(piece, 'fuel');
	if (burns === 'gas') return 'propane';
	return burns === 'propane' || burns === 'diesel' || burns === 'gasoline' ? burns : null;
}

function burnersAboard(facts: Facts): readonly Piece[] {
	return Object.keys(burnerKinds).flatMap((kind) =>
		facts.pieces(kind).filter((piece) => storedFuel(piece) !== null),
	);
}

/** The fuel a question of stores is about: the one all burners aboard share, or that of the piece named. */
const fuelAboard: Find = (facts, named, given) => {
	// A cylinder of a mass holds gas, and burners named may be any of those aboard.
	if (given.amountKg !== undefined || given.inCylinder === true) return null;
	const aboard = burnersAboard(facts);
	const meant = aboard.filter(({ kind, id }) => named.includes(kind) || named.includes(id));
	if (given.burners !== undefined && meant.length === 0) return null;
	const pieces = meant.length > 0 ? meant : aboard;
	const fuels = new Set(pieces.map(storedFuel));
	const [only] = fuels;
	if (only === undefined || only === null || fuels.size > 1) return null;
	return { value: only, from: pieces.map((piece) => [piece.id, 'fuel'] as const) };
};

/** The burners of the fuel asked about, each with the power that was told of it. */
const burners: Find = (facts, named, given) => {
	const fuel =
		typeof given.fuel === 'string'
			? given.fuel
			: given.amountKg !== undefined || given.inCylinder === true
				? 'propane'
				: fuelAboard(facts, named, given)?.value;
	const pieces = burnersAboard(facts).filter((piece) => storedFuel(piece) === fuel);
	const list = pieces.map((piece) => {
		const [name, field] = burnerKinds[piece.kind as keyof typeof burnerKinds];
		const powerW = num(piece, field);
		// What a description tells of a heater is the heat it gives.
		return {
			name,
			...(powerW === undefined ? {} : { powerW, ...(name === 'heater' ? { rating: 'output' } : {}) }),
		};
	});
	if (list.length === 0) return null;
	return {
		value: list,
		from: pieces.map((piece) => [piece.id, burnerKinds[piece.kind as keyof typeof burnerKinds][1]] as const),
	};
};

/** What the gas cylinders aboard hold, where the question is about gas. */
const cylinderOf =
	(field: string): Find =>
	(facts, named, given) => {
		const isGas = given.fuel === 'propane' || given.fuel === 'butane' || given.inCylinder === true;
		return isGas ? of('propane', field)(facts, named, given) : null;
	};

const masses: Find = (facts) => {
	const list = weightsOf(facts).map(({ name, massKg, waterL, zone, onRoof }) => ({
		name,
		massKg: Math.min(5000, massKg),
		...(waterL > 0 ? { volumeL: Math.min(2000, waterL) } : {}),
		...(zone === null ? {} : { zone }),
		...(onRoof ? { onRoof: true } : {}),
	}));
	return list.length === 0 ? null : { value: list.slice(0, 100), from: [['*', 'masses']] };
};

/** The piece a question is about: the one of the kinds it names, if there is but one. */
function namedPiece(facts: Facts, named: readonly string[]): Piece | null {
	const pieces = facts.van.pieces.filter(
		({ kind, id }) => named.includes(id) || (named.includes(kind) && kind !== 'battery'),
	);
	return pieces.length === 1 ? (pieces[0] as Piece) : null;
}

const currentFields = ['currentA', 'chargeA', 'ratingA', 'controllerA'] as const;
const powerFields = ['powerW', 'ratedW', 'drawW'] as const;

/** The current of the circuit of the piece named. */
const currentOfNamed: Find = (facts, named) => {
	const piece = namedPiece(facts, named);
	if (piece === null) return null;
	const field = currentFields.find((name) => num(piece, name) !== undefined);
	return field === undefined ? null : { value: num(piece, field) as number, from: [[piece.id, field]] };
};

const powerOfNamed: Find = (facts, named, given) => {
	const piece = namedPiece(facts, named);
	// A current told of it says the same; an inverter's or a load's power is what flows.
	if (piece === null || currentOfNamed(facts, named, given) !== null) return null;
	const field = powerFields.find((name) => num(piece, name) !== undefined);
	return field === undefined ? null : { value: num(piece, field) as number, from: [[piece.id, field]] };
};

const lengthOfNamed: Find = (facts, named) => {
	const piece = namedPiece(facts, named);
	return piece === null || num(piece, 'runM') === undefined
		? null
		: { value: num(piece, 'runM') as number, from: [[piece.id, 'runM']] };
};

const sizeOfNamed: Find = (facts, named) => {
	const piece = namedPiece(facts, named);
	const size = piece === null ? undefined : word(piece, 'wireSize');
	return piece === null || size === undefined ? null : { value: size, from: [[piece.id, 'wireSize']] };
};

/** The voltage of the circuit of the piece named: mains where it draws on mains, else that of the bank. */
const voltageOfNamed: Find = (facts, named, given) => {
	// A supply that was named is not the bank's.
	if (given.supply === 'mains' || given.isRating === true) return null;
	const piece = namedPiece(facts, named);
	const circuit = piece === null ? undefined : circuitsOf(facts).find((one) => one.piece === piece);
	if (piece !== null && circuit?.supply === 'mains') {
		return { value: circuit.voltageV, from: [[piece.id, 'voltageV']] };
	}
	return bankV(facts, named, given);
};

/** "needed" is taken only where the question can't be answered without more; "always" where it was left out. */
type When = 'always' | 'needed';
type Table = Readonly<Record<string, readonly [When, Find]>>;

/** What every topic that has such an input takes. */
const everywhere: Table = {
	bankV: ['always', bankV],
	chemistry: ['always', of('battery', 'chemistry')],
	place: ['always', of('place', 'place')],
	people: ['always', of('people', 'people')],
	wheelbase: ['always', of('van', 'wheelbase')],
	roof: ['always', of('van', 'roof')],
	insideLengthM: ['always', of('van', 'insideLengthM')],
	insulationMm: ['always', of('insulation', 'insulationMm')],
	roofInsulationMm: ['always', of('insulation', 'roofInsulationMm')],
	floorInsulationMm: ['always', of('insulation', 'floorInsulationMm')],
	windowKind: ['always', of('windows', 'windowKind')],
	bankAh: ['always', bankAh],
	depth: ['always', depth],
};

/** The bank as its own inputs name it. */
const batteries: Table = {
	unitAh: ['needed', of('battery', 'unitAh')],
	unitCount: ['needed', of('battery', 'unitCount')],
	unitV: ['needed', of('battery', 'unitV')],
};
const bankUnits: Table = { ...batteries, protectionA: ['needed', of('battery', 'protectionA')] };

const byTopic: Readonly<Record<string, Table>> = {
	wire: {
		currentA: ['needed', currentOfNamed],
		powerW: ['needed', powerOfNamed],
		voltageV: ['always', voltageOfNamed],
		lengthM: ['needed', lengthOfNamed],
	},
	fuse: {
		currentA: ['needed', currentOfNamed],
		powerW: ['needed', powerOfNamed],
		size: ['needed', sizeOfNamed],
		...bankUnits,
	},
	'short-circuit': bankUnits,
	budget: { loads: ['needed', loads] },
	battery: { loads: ['needed', loads] },
	runtime: { ...bankUnits, loads: ['needed', loads] },
	charge: {
		...batteries,
		chargeLimitA: ['always', of('battery', 'chargeLimitA')],
		chargerA: ['needed', of('charger', 'chargeA')],
	},
	solar: {
		panelW: ['needed', of('solar', 'panelW')],
		panels: ['needed', of('solar', 'count')],
	},
	array: {
		panelW: ['needed', of('solar', 'panelW')],
		panels: ['needed', of('solar', 'count')],
		series: ['needed', of('solar', 'series')],
		vocV: ['needed', of('solar', 'vocV')],
		iscA: ['needed', of('solar', 'iscA')],
		controllerV: ['always', of('solar-controller', 'controllerV')],
		controllerA: ['always', of('solar-controller', 'controllerA')],
		controller: ['always', of('solar-controller', 'type')],
	},
	alternator: {
		chargerA: ['needed', of('dcdc', 'chargeA')],
		alternatorA: ['always', of('alternator', 'ratingA')],
		unitAh: ['always', of('battery', 'unitAh')],
		unitCount: ['always', of('battery', 'unitCount')],
	},
	shore: {
		inletA: ['needed', of('shore-inlet', 'ratingA')],
		chargerA: ['needed', of('charger', 'chargeA')],
		loads: ['needed', loadsOnMains],
	},
	inverter: {
		ratedW: ['needed', of('inverter', 'ratedW')],
		unitAh: ['always', of('battery', 'unitAh')],
		unitCount: ['always', of('battery', 'unitCount')],
		protectionA: ['always', of('battery', 'protectionA')],
	},
	simulate: {
		loads: ['always', loads],
		unitAh: ['always', of('battery', 'unitAh')],
		unitCount: ['always', of('battery', 'unitCount')],
		panelW: ['always', of('solar', 'panelW')],
		panels: ['always', of('solar', 'count')],
	},
	fuel: {
		fuel: ['always', fuelAboard],
		amountKg: ['needed', cylinderOf('contentKg')],
		containers: ['needed', cylinderOf('count')],
		burners: ['needed', burners],
	},
	tank: {
		freshL: ['needed', of('fresh-tank', 'volumeL')],
		grayL: ['always', of('gray-tank', 'volumeL')],
	},
	'hot-water': {
		volumeL: ['needed', of('water-heater', 'volumeL')],
		powerW: ['always', of('water-heater', 'powerW')],
	},
	cool: { drawW: ['always', of('air-conditioner', 'powerW')] },
	payload: {
		items: ['needed', masses],
		gvwrKg: ['always', of('van', 'gvwrKg')],
		rearRatingKg: ['always', of('van', 'rearRatingKg')],
		frontRatingKg: ['always', of('van', 'frontRatingKg')],
		emptyKg: ['always', of('van', 'emptyKg')],
		wheelbaseM: ['always', of('van', 'wheelbaseM')],
		liftM: ['always', of('lift', 'liftM')],
	},
	freeze: { volumeL: ['needed', tankL] },
	tire: { loadIndex: ['needed', of('tires', 'loadIndex')] },
	vent: { airM3H: ['needed', of('fan', 'airM3H')] },
	pipe: {
		currentA: ['always', of('water-pump', 'currentA')],
		powerW: ['always', of('water-pump', 'powerW')],
	},
};

/**
 * Inputs that say the same thing, or that together tell of one thing: where the question says one of them, it speaks of
 * its own, and none of the others is taken ("400 W of solar" is not two panels of that).
 */
const together: readonly (readonly string[])[] = [
	['currentA', 'powerW'],
	['loads', 'needWh', 'needAh', 'chargePerDayAh', 'energyPerDayWh'],
	['unitAh', 'unitWh', 'unitCount', 'unitV', 'protectionA', 'bankAh', 'bankWh', 'depth'],
	['panelW', 'arrayW', 'panels', 'series', 'vocV', 'iscA'],
	['controllerV', 'controllerA', 'controller'],
	['place', 'outsideC', 'lowC'],
	['wheelbase', 'wheelbaseM', 'insideLengthM'],
	['chargerA', 'houseLoadA'],
	['amountKg', 'volumeL', 'containers', 'wantedH', 'stay'],
];

/** Of these the build gives one: another would contradict it or count it twice. */
const exclusive: readonly (readonly string[])[] = [
	['currentA', 'powerW'],
	['loads', 'needWh', 'needAh', 'chargePerDayAh', 'energyPerDayWh'],
	['unitAh', 'unitWh', 'bankAh', 'bankWh'],
	['panelW', 'arrayW'],
	['place', 'outsideC', 'lowC'],
	['wheelbase', 'wheelbaseM', 'insideLengthM'],
	['chargerA', 'houseLoadA'],
];

/**
 * The inputs a question leaves out and the build knows; things it names without figures come back with theirs.
 *
 * @param given inputs read from the question, by field name
 * @param named kinds (or names of pieces) that the question speaks of
 */
export function borrowFrom(
	van: Van,
	topic: AnyTopic,
	given: Readonly<Record<string, unknown>>,
	named: readonly string[],
	context: Context,
): Borrowed[] {
	const facts = new Facts(van, context);
	const lacking = isLacking(topic, given);
	const table: Table = { ...everywhere, ...byTopic[topic.name] };
	const saidOf: ReadonlySet<string> = new Set(Object.keys(given));
	const taken = new Set(saidOf);
	const borrowed: Borrowed[] = [];
	const take = (name: string, { value, from }: NonNullable<Known>): void => {
		const rests = from.map(([item, field]) => ({ item, field, value: restValue(van, item, field, context) }));
		borrowed.push({ name, value, rests });
	};
	if (topic.fields.loads !== undefined && Array.isArray(given.loads)) {
		const known = completed(facts, given.loads as readonly Item[]);
		if (known !== null && topic.fields.loads.schema.safeParse(known.value).success) take('loads', known);
	}
	for (const [name, [when, find]] of Object.entries(table)) {
		const field = topic.fields[name];
		if (field === undefined || taken.has(name) || (when === 'needed' && !lacking)) continue;
		if (together.some((group) => group.includes(name) && group.some((other) => saidOf.has(other)))) continue;
		if (exclusive.some((group) => group.includes(name) && group.some((other) => taken.has(other)))) continue;
		const known = find(facts, named, given);
		if (known === null || !field.schema.safeParse(known.value).success) continue;
		taken.add(name);
		take(name, known);
	}
	return borrowed;
}

/** True where something the topic can't do without was left out. */
function isLacking(topic: AnyTopic, given: Readonly<Record<string, unknown>>): boolean {
	const has = (name: string) => given[name] !== undefined;
	return (
		Object.entries(topic.fields).some(([name, field]) => field.presence === 'required' && !has(name)) ||
		topic.needs.some(({ anyOf }) => !anyOf.some(has)) ||
		// Topics that ask while they calculate declare no need of their own.
		(topic.needs.length === 0 && Object.values(topic.fields).every(({ presence }) => presence !== 'required'))
	);
}
