import { choice, count, type Field, flag, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { practice, published } from '../topic/source.js';
import type { Surface } from './irradiance.js';
import { type Mounting, mountings, pvWattsLosses, totalLoss } from './photovoltaic.js';
import type { Place } from './places.js';
import type { PvArray } from './yield.js';

/** How an array on a roof is named: "2 x 200 W flat", "400 W tilted 30° south". */
export const arrayFields = {
	panelW: quantity({
		label: 'rated power of a panel',
		kind: 'power',
		min: 1,
		max: 20_000,
		// The plural belongs to their number: "3 panels, 200 W".
		aliases: ['panel', 'module', 'each', 'pv', 'placa', 'panel solar', 'solarmodul', 'modul', 'solaranlage'],
		help: 'Under standard test conditions, from the label; the whole array where no number of panels is named.',
	}),
	panels: count({
		label: 'number of panels',
		min: 1,
		max: 100,
		aliases: [
			'panels',
			'modules',
			'placas',
			'paneles',
			'solarmodule',
			'stück',
			'solar panels',
			'paneles solares',
			'placas solares',
			'solar modules',
		],
	}),
	arrayW: quantity({
		label: 'rated power of the whole array',
		kind: 'power',
		min: 1,
		max: 20_000,
		aliases: ['array', 'in all', 'altogether', 'total array', 'insgesamt', 'en total'],
	}),
	tiltDeg: quantity({
		label: 'tilt from flat',
		kind: 'angle',
		min: 0,
		max: 90,
		aliases: [
			'tilt',
			'tilted',
			'angle',
			'pitch',
			'inclined',
			'inclinación',
			'inclinado',
			'neigung',
			'geneigt',
		],
		fallback: { value: 0, why: 'flat on the roof' },
	}),
	facing: choice({
		label: 'direction a tilted array faces',
		options: {
			north: ['north', 'facing north', 'north facing', 'norte', 'norden', 'nord'],
			northeast: ['northeast', 'facing northeast', 'north east', 'noreste', 'nordosten', 'nordost'],
			east: ['east', 'facing east', 'east facing', 'al este', 'osten', 'ost'],
			southeast: ['southeast', 'facing southeast', 'south east', 'sureste', 'südosten', 'südost'],
			south: ['south', 'facing south', 'south facing', 'sur', 'süden', 'süd'],
			southwest: ['southwest', 'facing southwest', 'south west', 'suroeste', 'südwesten', 'südwest'],
			west: ['west', 'facing west', 'west facing', 'oeste', 'westen'],
			northwest: ['northwest', 'facing northwest', 'north west', 'noroeste', 'nordwesten', 'nordwest'],
		},
	}),
	glued: flag({
		label: 'glued flat to the roof',
		yes: [
			'glued',
			'flexible',
			'flexible panel',
			'flexible panels',
			'flex panel',
			'stuck down',
			'bonded',
			'geklebt',
			'flexibel',
			'pegado',
			'pegada',
			'flexibles',
		],
		no: ['on brackets', 'on rails', 'air gap', 'with a gap', 'rack', 'on a rack', 'rigid', 'auf schienen'],
		fallback: { value: false, why: 'a rigid panel on brackets, with air under it', confirm: true },
	}),
	shading: quantity({
		label: 'share lost to shade',
		kind: 'fraction',
		min: 0,
		max: 1,
		aliases: ['shade', 'shading', 'shaded', 'trees', 'sombra', 'sombreado', 'schatten', 'verschattung'],
		fallback: {
			value: pvWattsLosses.shading,
			why: 'in the open, with fan, rack and vents on the roof; under trees it is far more',
			confirm: true,
		},
	}),
	losses: quantity({
		label: 'dirt, mismatch, wiring and ageing',
		kind: 'fraction',
		min: 0,
		max: 0.6,
		aliases: ['losses', 'loss', 'system losses', 'dirt', 'soiling', 'verluste', 'pérdidas'],
		fallback: {
			value: totalLoss({ ...pvWattsLosses, shading: 0, availability: 0 }),
			why: 'PVWatts losses without its share for shade (counted apart) and for grid outages',
		},
	}),
	controller: choice({
		label: 'kind of charge controller',
		options: {
			mppt: ['MPPT', 'mppt controller', 'maximum power point'],
			pwm: ['PWM', 'pwm controller'],
		},
		fallback: { value: 'mppt', why: 'the usual kind', confirm: true },
	}),
	controllerEfficiency: quantity({
		label: 'efficiency of the charge controller',
		kind: 'fraction',
		min: 0.3,
		max: 1,
		aliases: ['controller efficiency', 'efficiency', 'efficient', 'wirkungsgrad', 'eficiencia'],
		fallback: {
			value: (given) => (given.controller === 'pwm' ? 0.72 : 0.95),
			why: '95 % for MPPT; a PWM controller pulls the panel down to the battery: about 13.4 V of 18.6 V (practice)',
		},
	}),
	powerPerK: quantity({
		label: 'temperature coefficient of power',
		kind: 'voltagePerDegree',
		min: -0.01,
		max: 0.01,
		aliases: ['pmax', 'gamma', 'power coefficient', 'coefficient of power', 'temperature coefficient', 'tc'],
		fallback: {
			value: -0.0042,
			why: 'the warm end of standard monocrystalline, −0.37 to −0.42 %/K; the data sheet decides',
		},
	}),
};

const directionsDeg = {
	north: 0,
	northeast: 45,
	east: 90,
	southeast: 135,
	south: 180,
	southwest: 225,
	west: 270,
	northwest: 315,
} as const;

export interface ArrayInput {
	readonly panelW?: number | undefined;
	readonly panels?: number | undefined;
	readonly arrayW?: number | undefined;
	readonly tiltDeg: number;
	readonly facing?: keyof typeof directionsDeg | undefined;
	readonly glued: boolean;
	readonly shading: number;
	readonly losses: number;
	readonly controllerEfficiency: number;
	readonly powerPerK: number;
}

/** Wind at a parked van's roof [m/s] (practice): little, the safe side for heat. */
const calmMS = 1;

/** What sunlit ground around a van throws back (practice). */
const usualAlbedo = 0.2;

const mountSource = published('SAND2004-3535', 'close roof mount; insulated back for a glued panel');

/** Rated power of the array as named [W], or null where none was. */
export function ratedPower(input: Pick<ArrayInput, 'panelW' | 'panels' | 'arrayW'>): number | null {
	if (input.arrayW !== undefined) return input.arrayW;
	return input.panelW === undefined ? null : input.panelW * (input.panels ?? 1);
}

export function mountingOf(input: Pick<ArrayInput, 'glued'>): Mounting {
	return input.glued ? mountings.insulated_back_glass_polymer : mountings.close_mount_glass_glass;
}

/** The array of one rated power, with what the sheet says of it. */
export function arrayOf(ratedW: number, input: ArrayInput, place: Place, sheet: Sheet): PvArray {
	sheet.source(mountSource);
	return {
		ratedW,
		surface: surfaceOf(input, place, sheet),
		powerPerK: -Math.abs(input.powerPerK),
		mounting: mountingOf(input),
		windMS: calmMS,
		albedo: usualAlbedo,
		reflection: true,
		losses: input.losses,
		shading: input.shading,
		controllerEfficiency: input.controllerEfficiency,
	};
}

function surfaceOf(input: ArrayInput, place: Place, sheet: Sheet): Surface {
	const equator = place.latitudeDeg < 0 ? 'north' : 'south';
	if (input.tiltDeg > 0 && input.facing === undefined) {
		sheet.assume(
			'facing',
			'direction the tilted array faces',
			equator,
			'towards the noon sun; a van parked otherwise gets less',
			{ confirm: true },
		);
		sheet.source(practice('a tilted array is turned to the noon sun'));
	}
	return { tiltDeg: input.tiltDeg, azimuthDeg: directionsDeg[input.facing ?? equator] };
}

type Optional<F> = { readonly [K in keyof F]: F[K] extends Field<infer T> ? Field<T, 'optional'> : never };

/** The same fields for a topic that does without an array: nothing is assumed of an array that is not there. */
export const optionalArrayFields = Object.fromEntries(
	Object.entries(arrayFields).map(([name, field]) => [
		name,
		{ ...field, meta: { ...field.meta, fallback: null }, presence: 'optional' },
	]),
) as unknown as Optional<typeof arrayFields>;

/** What the fallbacks of the array's fields add to an input that has none, each written on the sheet as assumed. */
export function assumeArray<I extends Partial<Record<keyof typeof arrayFields, unknown>>>(
	input: I,
	sheet: Sheet,
): I & ArrayInput {
	const filled: Record<string, unknown> = { ...input };
	for (const [name, field] of Object.entries(arrayFields) as [string, Field][]) {
		const { label, fallback } = field.meta;
		if (fallback === null || filled[name] !== undefined) continue;
		const value =
			typeof fallback.value === 'function' ? fallback.value(filled, sheet.context) : fallback.value;
		filled[name] = value;
		const shown = field.type.sort === 'choice' ? (field.type.options[String(value)]?.[0] ?? value) : value;
		const options =
			field.type.sort === 'quantity'
				? { kind: field.type.kind, confirm: fallback.confirm }
				: { confirm: fallback.confirm };
		sheet.assume(name, label, shown as number | string | boolean, fallback.why, options);
	}
	return filled as unknown as I & ArrayInput;
}
