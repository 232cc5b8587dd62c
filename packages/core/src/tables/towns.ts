import { packedDigits } from './climate.js';
import { townRows } from './towns.generated.js';

/**
 * Towns by which people say where they are; their climate is that of the nearest station. GeoNames (CC BY 4.0),
 * selected as shared/reference/solar/SOURCES.md says. Packed: six digits after the name, two each for latitude and
 * longitude in tenths of a degree, two for the logarithm of the number of people.
 */
export interface Town {
	readonly name: string;
	readonly latitudeDeg: number;
	readonly longitudeDeg: number;
	/** to a few per cent */
	readonly people: number;
}

const base = packedDigits.length;
const digitsOfTown = 6;
/** steps of the logarithm for each factor of e */
const stepsPerE = 20;

function digits(value: number): string {
	const steps = Math.round(value);
	if (steps < 0 || steps >= base ** 2) throw new Error(`${value} does not fit into two digits`);
	return packedDigits.charAt(Math.floor(steps / base)) + packedDigits.charAt(steps % base);
}

function number(text: string): number {
	return packedDigits.indexOf(text.charAt(0)) * base + packedDigits.indexOf(text.charAt(1));
}

/** A town as it stands in the packed table. */
export function packTown(town: Town): string {
	return (
		town.name +
		digits((town.latitudeDeg + 90) * 10) +
		digits((town.longitudeDeg + 180) * 10) +
		digits(Math.log(Math.max(1, town.people)) * stepsPerE)
	);
}

export function unpackTown(text: string): Town {
	const packed = text.slice(-digitsOfTown);
	return {
		name: text.slice(0, -digitsOfTown),
		latitudeDeg: (number(packed.slice(0, 2)) - 900) / 10,
		longitudeDeg: (number(packed.slice(2, 4)) - 1800) / 10,
		people: Math.round(Math.exp(number(packed.slice(4, 6)) / stepsPerE)),
	};
}

/** The towns of one state (or, where the list names no states, of one country). */
export interface TownGroup {
	/** three letters, ISO 3166-1 */
	readonly country: string;
	readonly state: string | null;
	/** each as packed; `townName` and `unpackTown` read it */
	readonly towns: readonly string[];
}

let groups: readonly TownGroup[] | null = null;

export function townGroups(): readonly TownGroup[] {
	groups ??= townRows
		.split('\n')
		.filter((line) => line !== '')
		.map((line) => {
			const [country, state, towns] = line.split('|') as [string, string, string];
			return { country, state: state === '' ? null : state, towns: towns.split(';') };
		});
	return groups;
}

export function townName(packed: string): string {
	return packed.slice(0, -digitsOfTown);
}
