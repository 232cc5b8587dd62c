import { type StationName, stationNames } from '../tables/climate.js';
import { landmarks } from '../tables/landmarks.js';
import { countries, states } from '../tables/regions.js';
import { townGroups, townName, unpackTown } from '../tables/towns.js';
import { distanceKm } from './distance.js';

/** Something people call by a name: a town, a landmark, a weather station. */
export interface NamedPlace {
	/** as shown: "Flagstaff, AZ" */
	readonly name: string;
	readonly country: string;
	readonly state: string | null;
	readonly latitudeDeg: number;
	readonly longitudeDeg: number;
	/** how likely it is meant: people living there, or a stand-in for them */
	readonly weight: number;
	/** its number in the climate table where it is a station itself */
	readonly station: number | null;
}

/** A region that follows a town's name: a country, or a state in it. */
export interface Region {
	readonly country: string;
	readonly state: string | null;
}

/** A landmark is meant rather than a small town of its name; a station with no town is meant last. */
export const landmarkWeight = 400_000;
const stationWeight = 3000;
/** Two things of one name this near to each other are one place. */
const samePlaceKm = 60;

/** Letters that Unicode does not take apart into a plain letter and an accent. */
const plainLetters: Readonly<Record<string, string>> = { ß: 'ss', ł: 'l', ø: 'o', æ: 'ae', œ: 'oe', đ: 'd' };

/** Words that are written short or long. */
const shortForms: Readonly<Record<string, string>> = {
	saint: 'st',
	sankt: 'st',
	sainte: 'ste',
	mount: 'mt',
	fort: 'ft',
	nat: 'national',
	natl: 'national',
	np: 'national park',
};

/** One word of a name as compared: lower case, no accents, no dots. */
function plainWord(word: string): string {
	const plain = word
		.toLowerCase()
		.replace(/[ßłøæœđ]/g, (letter) => plainLetters[letter] as string)
		.normalize('NFD')
		.replace(/[\p{M}'’.]/gu, '');
	return shortForms[plain] ?? plain;
}

const wordPattern = /[\p{L}\p{M}\p{N}]+(?:['’.][\p{L}\p{M}]+)*\.?/gu;

export interface Word {
	readonly plain: string;
	readonly raw: string;
	readonly start: number;
	readonly end: number;
}

/** The words of a text with their places in it. */
export function wordsOf(text: string): Word[] {
	return [...text.matchAll(wordPattern)].map((match) => ({
		plain: plainWord(match[0]),
		raw: match[0],
		start: match.index,
		end: match.index + match[0].length,
	}));
}

/** A name as compared: "Saint George" and "St. George" give the same key. */
export function keyOf(name: string): string {
	// Nearly all names are plain letters: the long way would cost most of the time that the index takes.
	if (/^[A-Za-z -]+$/.test(name)) {
		return name
			.toLowerCase()
			.split(/[ -]+/)
			.map((word) => shortForms[word] ?? word)
			.join(' ')
			.trim();
	}
	return wordsOf(name)
		.map((word) => word.plain)
		.join(' ');
}

/** Words in a station's name that say what stands there, not where it is. */
const stationWords = new Set(
	'ap arpt apt airport aero aerodrome intl int international muni municipal rgnl regional awos amos faa af aut wso wsfo mem memorial'.split(
		' ',
	),
);

/** How the source spells a few towns wrong, and what was meant. */
const misspelt: Readonly<Record<string, string>> = {
	'edin prairie': 'eden prairie',
	gadsen: 'gadsden',
	'casa granda': 'casa grande',
	manitowac: 'manitowoc',
	togiac: 'togiak',
	patelleria: 'pantelleria',
	'bahar dar': 'bahir dar',
	'saua la grande': 'sagua la grande',
};

/** The town of a station's name: what stands before the first hyphen, without "airport" and the like. */
function stationTown(station: StationName): string {
	const [first = ''] = station.station.split(/[-/(]/);
	const words = wordsOf(first).filter((word) => !stationWords.has(word.plain));
	// Some data sets put the state before the town.
	const leading = words[0];
	if (words.length > 1 && leading !== undefined && /^[A-Z]{2,3}$/.test(leading.raw)) words.shift();
	const key = words.map((word) => word.plain).join(' ');
	return misspelt[key] ?? key;
}

const stationLabels: readonly (readonly [RegExp, string])[] = [
	[/\s*\((?:awos|amos)\)|\s+A[WM]OS$/gi, ''],
	[/\b(?:AP|Arpt|Apt)\b/g, 'Airport'],
	[/\bMuni\b/g, 'Municipal'],
	[/\bRgnl\b/g, 'Regional'],
	[/\bInt'?l\b/g, 'International'],
	[/\bMem\b/g, 'Memorial'],
	[/\bNatl P\b/g, 'National Park'],
];

/** A station's name as shown, its shortenings written out. */
export function stationLabel(station: StationName): string {
	const name = stationLabels.reduce((text, [short, long]) => text.replace(short, long), station.station);
	return labelled(name.trim(), station.country, station.state);
}

function labelled(name: string, country: string, state: string | null): string {
	if (country === 'USA' || country === 'CAN') return state === null ? name : `${name}, ${state}`;
	const land = countries[country]?.[0] ?? country;
	return `${name}, ${land}`;
}

/** Other names under which people know a town of the tables. */
const otherNames: Readonly<Record<string, string>> = {
	cologne: 'koln',
	colonia: 'koln',
	cracovia: 'krakow',
	cracow: 'krakow',
	danzig: 'gdansk',
	firenze: 'florence',
	florenz: 'florence',
	frisco: 'san francisco',
	genf: 'geneva',
	geneve: 'geneva',
	genoa: 'genova',
	genua: 'genova',
	ginebra: 'geneva',
	gothenburg: 'goteborg',
	kobenhavn: 'copenhagen',
	kopenhagen: 'copenhagen',
	krakau: 'krakow',
	lissabon: 'lisbon',
	lisboa: 'lisbon',
	mailand: 'milan',
	milano: 'milan',
	munchen: 'munich',
	muenchen: 'munich',
	napoli: 'naples',
	neapel: 'naples',
	nizza: 'nice',
	nuremberg: 'nurnberg',
	philly: 'philadelphia',
	posen: 'poznan',
	prag: 'prague',
	praha: 'prague',
	rom: 'rome',
	roma: 'rome',
	saragossa: 'zaragoza',
	seville: 'sevilla',
	sf: 'san francisco',
	stettin: 'szczecin',
	torino: 'turin',
	varsovia: 'warsaw',
	venedig: 'venice',
	venezia: 'venice',
	viena: 'vienna',
	warschau: 'warsaw',
	warszawa: 'warsaw',
	wien: 'vienna',
	breslau: 'wroclaw',
	bruxelles: 'brussels',
	brussel: 'brussels',
	bruselas: 'brussels',
	athen: 'athens',
	atenas: 'athens',
	londres: 'london',
	'mexico df': 'mexico city',
	cdmx: 'mexico city',
	abq: 'albuquerque',
	kc: 'kansas city',
	nola: 'new orleans',
	okc: 'oklahoma city',
	phx: 'phoenix',
	'palma de mallorca': 'palma',
	mallorca: 'palma',
	majorca: 'palma',
	frankfurt: 'frankfurt am main',
};

interface Index {
	readonly byKey: ReadonlyMap<string, readonly Pending[]>;
	/** most words in any key */
	readonly longest: number;
}

/** A place of the index, unpacked only when its name is asked for. */
type Pending = () => NamedPlace;

let built: Index | null = null;

function index(): Index {
	if (built !== null) return built;
	const byKey = new Map<string, Pending[]>();
	let longest = 1;
	const add = (key: string, pending: Pending) => {
		if (key === '') return;
		const known = byKey.get(key);
		if (known === undefined) byKey.set(key, [pending]);
		else known.push(pending);
		longest = Math.max(longest, key.split(' ').length);
	};
	for (const landmark of landmarks) {
		const place: NamedPlace = {
			name: labelled(landmark.name.replace(/, DC$/, ''), landmark.country, landmark.state),
			country: landmark.country,
			state: landmark.state,
			latitudeDeg: landmark.latitudeDeg,
			longitudeDeg: landmark.longitudeDeg,
			weight: landmarkWeight,
			station: null,
		};
		for (const key of new Set([landmark.name, ...landmark.also].map(keyOf))) add(key, () => place);
	}
	for (const { country, state, towns } of townGroups()) {
		for (const packed of towns) {
			const name = townName(packed);
			const pending = () => {
				const town = unpackTown(packed);
				return {
					name: labelled(town.name, country, state),
					country,
					state,
					latitudeDeg: town.latitudeDeg,
					longitudeDeg: town.longitudeDeg,
					weight: town.people,
					station: null,
				};
			};
			add(keyOf(name), pending);
			// German keyboards abroad: "Muenster".
			if (/[äöü]/i.test(name)) {
				add(keyOf(name.replace(/[äöü]/gi, (letter) => `${plainWord(letter)}e`)), pending);
			}
		}
	}
	for (const station of stationNames()) {
		const pending = () => ({
			name: stationLabel(station),
			country: station.country,
			state: station.state,
			latitudeDeg: station.latitudeDeg,
			longitudeDeg: station.longitudeDeg,
			weight: stationWeight,
			station: station.index,
		});
		const whole = keyOf(station.station);
		const town = stationTown(station);
		add(town, pending);
		if (whole !== town) add(whole, pending);
		const label = keyOf(stationLabel(station).replace(/,[^,]*$/, ''));
		if (label !== town && label !== whole) add(label, pending);
	}
	for (const [other, key] of Object.entries(otherNames)) {
		const largest = (byKey.get(key) ?? [])
			.map((pending) => pending())
			.reduce<NamedPlace | null>(
				(best, one) => (best !== null && best.weight >= one.weight ? best : one),
				null,
			);
		if (largest !== null) add(other, () => largest);
	}
	built = { byKey, longest };
	return built;
}

/** The most words a known name has. */
export function longestName(): number {
	return index().longest;
}

export function isKnownName(key: string): boolean {
	return index().byKey.has(key);
}

/** Every key, for the search of near names. */
export function knownNames(): IterableIterator<string> {
	return index().byKey.keys();
}

/** The places of a name, likeliest first; a station and the town it stands in count once. */
export function placesNamed(key: string): NamedPlace[] {
	const places: NamedPlace[] = [];
	const all = (index().byKey.get(key) ?? []).map((pending) => pending());
	for (const place of all.toSorted((a, b) => b.weight - a.weight)) {
		const same = places.find(
			(other) => other.country === place.country && distanceKm(other, place) < samePlaceKm,
		);
		if (same === undefined) places.push(place);
	}
	return places;
}

let regionKeys: ReadonlyMap<string, readonly Region[]> | null = null;

/** The regions a key names: "az", "arizona", "germany". */
export function regionsNamed(key: string): readonly Region[] {
	if (regionKeys === null) {
		const found = new Map<string, Region[]>();
		const add = (name: string, region: Region) => {
			const known = found.get(keyOf(name));
			if (known === undefined) found.set(keyOf(name), [region]);
			else known.push(region);
		};
		for (const [country, names] of Object.entries(countries)) {
			for (const name of [country, ...names]) add(name, { country, state: null });
		}
		for (const [country, letters] of Object.entries(states)) {
			for (const [state, name] of Object.entries(letters)) {
				for (const one of new Set([state, name])) add(one, { country, state });
			}
		}
		regionKeys = found;
	}
	return regionKeys.get(key) ?? [];
}

export function liesIn(place: Pick<NamedPlace, 'country' | 'state'>, regions: readonly Region[]): boolean {
	return regions.some(
		(region) => region.country === place.country && (region.state === null || region.state === place.state),
	);
}

/** The largest towns of a region, for "which town?". */
export function largestTowns(regions: readonly Region[], howMany: number): NamedPlace[] {
	return townGroups()
		.filter(({ country, state }) => liesIn({ country, state }, regions))
		.flatMap(({ country, state, towns }) =>
			towns.map((packed) => {
				const town = unpackTown(packed);
				return {
					name: labelled(town.name, country, state),
					country,
					state,
					latitudeDeg: town.latitudeDeg,
					longitudeDeg: town.longitudeDeg,
					weight: town.people,
					station: null,
				};
			}),
		)
		.toSorted((a, b) => b.weight - a.weight)
		.slice(0, howMany);
}
