import { designCooling, designHeating, recordLow } from '../../solar/climate.js';
import { lookUpPlace, type Place } from '../../solar/places.js';
import { type Facts, num, word } from './facts.js';

/** The place the van is for, or null where none was told or it can't be told which is meant. */
export function placeOf(facts: Facts): Place | null {
	return facts.once('place', () => {
		const piece = facts.first('place');
		const said = piece === null ? undefined : word(piece, 'place');
		if (said === undefined) return null;
		const looked = lookUpPlace(said, facts.context.region);
		return looked.kind === 'found' ? looked.place : null;
	});
}

/** Only used in summer: frost is no concern. */
export function isSummerOnly(facts: Facts): boolean {
	const trip = facts.first('trip');
	return trip !== null && word(trip, 'season') === 'summer';
}

export function isForWinter(facts: Facts): boolean {
	const trip = facts.first('trip');
	return trip !== null && word(trip, 'season') === 'winter';
}

/** The cold the van must bear [°C]: as told, else the place's record low; null where neither is known. */
export function lowestC(facts: Facts): number | null {
	return facts.once('lowest', () => {
		const piece = facts.first('place');
		const told = piece === null ? undefined : num(piece, 'lowC');
		if (told !== undefined) return told;
		if (isSummerOnly(facts)) return null;
		const place = placeOf(facts);
		return place === null ? null : recordLow(place).valueC;
	});
}

/** The cold a heater is sized for [°C]. */
export function designLowC(facts: Facts): number | null {
	const piece = facts.first('place');
	const told = piece === null ? undefined : num(piece, 'lowC');
	if (told !== undefined) return told;
	const place = placeOf(facts);
	return place === null ? null : designHeating(place).valueC;
}

/** The heat an air conditioner is sized for [°C]. */
export function designHighC(facts: Facts): number | null {
	const piece = facts.first('place');
	const told = piece === null ? undefined : num(piece, 'highC');
	if (told !== undefined) return told;
	const place = placeOf(facts);
	return place === null ? null : designCooling(place).valueC;
}

/** Size and shell of the van under the names the climate topics know them by. */
export function shellOf(facts: Facts): Readonly<Record<string, unknown>> {
	const body = facts.first('van');
	const insulation = facts.first('insulation');
	const windows = facts.pieces('windows');
	const people = facts.first('people');
	const area = windows.reduce((sum, piece) => sum + (num(piece, 'windowM2') ?? 0), 0);
	return defined({
		wheelbase: body === null ? undefined : word(body, 'wheelbase'),
		roof: body === null ? undefined : word(body, 'roof'),
		insideLengthM: body === null ? undefined : num(body, 'insideLengthM'),
		wheelbaseM: body === null ? undefined : clamped(num(body, 'wheelbaseM'), 2.2, 5.5),
		insulationMm: insulation === null ? undefined : num(insulation, 'insulationMm'),
		roofInsulationMm: insulation === null ? undefined : num(insulation, 'roofInsulationMm'),
		floorInsulationMm: insulation === null ? undefined : num(insulation, 'floorInsulationMm'),
		material: insulation === null ? undefined : word(insulation, 'material'),
		windowM2: windows.length === 0 ? undefined : area,
		windowKind: windows.map((piece) => word(piece, 'windowKind')).find((kind) => kind !== undefined),
		covers: windows.some((piece) => piece.values.covers === true) ? true : undefined,
		people: people === null ? undefined : num(people, 'people'),
	});
}

function clamped(value: number | undefined, min: number, max: number): number | undefined {
	return value === undefined || value < min || value > max ? undefined : value;
}

/** The entries that have a value. */
export function defined(values: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
	return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}
