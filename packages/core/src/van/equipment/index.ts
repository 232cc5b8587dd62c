import * as body from './body.js';
import * as charging from './charging.js';
import * as climate from './climate.js';
import type { AnyEquipment } from './declare.js';
import * as energy from './energy.js';
import * as gas from './gas.js';
import * as kitchen from './kitchen.js';
import * as mains from './mains.js';
import * as protection from './protection.js';
import * as solar from './solar.js';
import * as trip from './trip.js';
import * as water from './water.js';

/** Every kind of thing a van may carry, in the order in which a build is listed. */
export const equipment: readonly AnyEquipment[] = [
	energy,
	charging,
	solar,
	mains,
	protection,
	kitchen,
	climate,
	gas,
	water,
	body,
	trip,
].flatMap((family): AnyEquipment[] => Object.values(family));

const byKind = new Map(equipment.map((one) => [one.kind, one]));

/** @throws on a kind that is not declared: an error of the program, since kinds come from the declarations */
export function equipmentOf(kind: string): AnyEquipment {
	const found = byKind.get(kind);
	if (found === undefined) throw new Error(`no equipment of kind "${kind}"`);
	return found;
}

export function isKind(kind: string): boolean {
	return byKind.has(kind);
}
