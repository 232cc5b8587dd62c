import { type ClimateRow, climateRow, stationNames } from '../tables/climate.js';
import type { Region as RuleRegion } from '../topic/context.js';
import { distanceKm, type Position } from './distance.js';
import { editDistance } from './edit-distance.js';
import {
	isKnownName,
	keyOf,
	knownNames,
	landmarkWeight,
	largestTowns,
	liesIn,
	longestName,
	type NamedPlace,
	placesNamed,
	type Region,
	regionsNamed,
	stationLabel,
	type Word,
	wordsOf,
} from './place-names.js';
import { strictWords, tradeWords } from './place-words.js';

/** A place and the climate that stands for it: that of the nearest weather station. */
export interface Place extends ClimateRow {
	/** as shown: "Sedona, AZ" */
	readonly name: string;
	/** as shown: "Flagstaff Pulliam Airport, AZ" */
	readonly stationName: string;
	/** from the place to the station [km]; 0 where the place is the station */
	readonly distanceKm: number;
	/** where the place lies; the row's own position is the station's */
	readonly position: Position;
}

export type PlaceLookup =
	| {
			readonly kind: 'found';
			readonly place: Place;
			/** other places of that name, which the asker may have meant */
			readonly others: readonly string[];
			/** true where the name was spelt otherwise and this is the nearest spelling */
			readonly respelt: boolean;
	  }
	| {
			readonly kind: 'unsure';
			/** `many`: several of that name; `unknown`: none; `region`: a state or country; `remote`: no station near */
			readonly why: 'many' | 'unknown' | 'region' | 'remote';
			/** up to three names, any of which would be found */
			readonly nearest: readonly string[];
	  };

/** Beyond this from every station a place's climate is not known [km]. */
const remoteKm = 300;
/** A town within the rule set's own continent is likelier meant by this factor. */
const homeFactor = 20;
/** The likeliest of several is taken where it leads by this factor; otherwise it is asked. */
const leadFactor = 8;

/** A misspelt name is taken for a town only where this many people live; a smaller one is asked. */
const respeltPeople = 10_000;

const home: Readonly<Record<RuleRegion, (country: string) => boolean>> = {
	us: (country) => country === 'USA',
	eu: (country) => country !== 'USA' && country !== 'CAN' && country !== 'AUS' && country !== 'NZL',
};

/** The stations nearest to a position, nearest first. */
export function nearestStations(
	at: Position,
	howMany: number,
	fits: (row: ReturnType<typeof stationNames>[number]) => boolean = () => true,
): readonly { readonly index: number; readonly distanceKm: number }[] {
	return stationNames()
		.filter(fits)
		.map((station) => ({ index: station.index, distanceKm: distanceKm(at, station) }))
		.toSorted((a, b) => a.distanceKm - b.distanceKm)
		.slice(0, howMany);
}

/** The place at a position, with the climate of the nearest station, or null where none is near. */
function placeAt(position: Position, name?: string): Place | null {
	const nearest = nearestStations(position, 1)[0];
	if (nearest === undefined || nearest.distanceKm > remoteKm) return null;
	return placeOf(nearest.index, position, name ?? coordinateText(position), nearest.distanceKm);
}

function placeOf(index: number, position: Position, name: string, km: number): Place {
	const station = stationNames()[index];
	if (station === undefined) throw new Error(`no station ${index}`);
	return { ...climateRow(index), name, stationName: stationLabel(station), distanceKm: km, position };
}

function coordinateText({ latitudeDeg, longitudeDeg }: Position): string {
	const ns = latitudeDeg < 0 ? 'S' : 'N';
	const ew = longitudeDeg < 0 ? 'W' : 'E';
	return `${Math.abs(latitudeDeg)}° ${ns}, ${Math.abs(longitudeDeg)}° ${ew}`;
}

/** A station that carries the town's own name, or the nearest one. */
function climateOf(named: NamedPlace): Place | null {
	const key = keyOf(named.name.replace(/,[^,]*$/, ''));
	if (named.station !== null) return placeOf(named.station, named, named.name, 0);
	const near = nearestStations(named, 12).filter(({ distanceKm: km }) => km <= remoteKm);
	const nearest = near[0];
	if (nearest === undefined) return null;
	const own = near.filter(({ index, distanceKm: km }) => {
		const station = stationNames()[index];
		return km <= 30 && station !== undefined && keyOf(station.station).startsWith(key);
	});
	const taken = own.find(({ index }) => stationNames()[index]?.hasExtreme) ?? own[0] ?? nearest;
	return placeOf(taken.index, named, named.name, taken.distanceKm);
}

const latLon =
	/(-?\d{1,2}(?:\.\d+)?)\s*°?\s*([NS])?\s*[,;/ ]\s*(-?\d{1,3}(?:\.\d+)?)\s*°?\s*([EWO])?(?![\p{L}\d])/iu;

/** Reads "35.2,-111.7", "35.2 N 111.7 W"; null where the text is no position on earth. */
function readPosition(text: string): Position | null {
	const match = latLon.exec(text);
	if (match === null || match[0].trim() !== text.trim()) return null;
	const latitudeDeg = Number(match[1]) * (match[2]?.toUpperCase() === 'S' ? -1 : 1);
	const longitudeDeg = Number(match[3]) * (match[4]?.toUpperCase() === 'W' ? -1 : 1);
	if (Math.abs(latitudeDeg) > 90 || Math.abs(longitudeDeg) > 180) return null;
	return { latitudeDeg, longitudeDeg };
}

const leadingWords = new Set(['in', 'at', 'near', 'around', 'by', 'the', 'bei', 'nahe', 'en', 'cerca', 'de']);

/**
 * Looks a place up by what a person calls it: a town ("flagstaff az", "München"), a park ("zion"), a station, or a
 * position ("35.2,-111.7"). Upper and lower case, accents and slips of the thumb are borne; a name that stands for
 * several places, for none, or for a whole state is never guessed at.
 *
 * @param region the rule set's region: towns of it are likelier meant
 */
export function lookUpPlace(text: string, region: RuleRegion = 'us'): PlaceLookup {
	const position = readPosition(text);
	if (position !== null) {
		const place = placeAt(position);
		return place === null
			? { kind: 'unsure', why: 'remote', nearest: nearestNames(position) }
			: { kind: 'found', place, others: [], respelt: false };
	}
	const words = wordsOf(text).map((word) => word.plain);
	const read = splitRegion(words);
	// "near Moab", "The Dalles": the first word may or may not belong to the name.
	while (words.length > 1 && leadingWords.has(words[0] as string)) {
		words.shift();
		read.push(...splitRegion(words));
	}
	for (const { key, regions } of read) {
		const named = placesNamed(key).filter((place) => regions === null || liesIn(place, regions));
		if (named.length > 0) return decide(named, key, regions, region, false);
	}
	const whole = regionsNamed(words.join(' '));
	if (whole.length > 0) {
		return { kind: 'unsure', why: 'region', nearest: largestTowns(whole, 3).map((town) => town.name) };
	}
	for (const { key, regions } of read) {
		const begun = namesBeginning(key).flatMap((name) =>
			placesNamed(name).filter((place) => regions === null || liesIn(place, regions)),
		);
		if (begun.length > 0) return decide(begun, key, regions, region, false);
	}
	for (const { key, regions } of read) {
		const respelt = nearKeys(key).flatMap((near) =>
			placesNamed(near).filter(
				(place) => place.weight >= respeltPeople && (regions === null || liesIn(place, regions)),
			),
		);
		if (respelt.length > 0) return decide(respelt, key, regions, region, true);
	}
	return { kind: 'unsure', why: 'unknown', nearest: similarNames(read, region) };
}

function decide(
	named: readonly NamedPlace[],
	key: string,
	regions: readonly Region[] | null,
	region: RuleRegion,
	respelt: boolean,
): PlaceLookup {
	const ranked = rank(named, region);
	const [first, second] = ranked;
	if (first === undefined) throw new Error('nothing to decide between');
	const whole = regions === null ? regionsNamed(key) : [];
	// "New York" is the city before it is the state; "Washington" is asked.
	if (whole.length > 0 && first.weight < landmarkWeight) {
		const towns = largestTowns(whole, 2).map((town) => town.name);
		return { kind: 'unsure', why: 'region', nearest: [...new Set([first.name, ...towns])].slice(0, 3) };
	}
	if (second !== undefined && weightOf(first, region) < leadFactor * weightOf(second, region)) {
		return {
			kind: 'unsure',
			why: respelt ? 'unknown' : 'many',
			nearest: distinct(ranked).slice(0, 3),
		};
	}
	const place = climateOf(first);
	if (place === null) return { kind: 'unsure', why: 'remote', nearest: nearestNames(first) };
	return {
		kind: 'found',
		place,
		others: distinct(ranked.slice(1))
			.filter((name) => name !== first.name)
			.slice(0, 3),
		respelt,
	};
}

function weightOf(place: NamedPlace, region: RuleRegion): number {
	return place.weight * (home[region](place.country) ? homeFactor : 1);
}

function rank(places: readonly NamedPlace[], region: RuleRegion): NamedPlace[] {
	return places.toSorted((a, b) => weightOf(b, region) - weightOf(a, region));
}

function distinct(places: readonly NamedPlace[]): string[] {
	return [...new Set(places.map((place) => place.name))];
}

function nearestNames(position: Position): string[] {
	return nearestStations(position, 3).map(({ index }) => {
		const station = stationNames()[index];
		return station === undefined ? '' : stationLabel(station);
	});
}

interface Split {
	readonly key: string;
	readonly regions: readonly Region[] | null;
}

/** The ways to read the words: all of them as a name, or the last ones as the region the name lies in. */
function splitRegion(words: readonly string[]): Split[] {
	const splits: Split[] = [{ key: words.join(' '), regions: null }];
	for (const length of [3, 2, 1]) {
		if (words.length <= length) continue;
		const regions = regionsNamed(words.slice(-length).join(' '));
		if (regions.length > 0) splits.push({ key: words.slice(0, -length).join(' '), regions });
	}
	// "Paris, Texas, USA": the region may itself be followed by its country.
	const last = splits.at(-1);
	if (last !== undefined && last.regions !== null) {
		const inner = splitRegion(last.key.split(' ')).slice(1);
		splits.push(...inner);
	}
	return splits;
}

/** How many slips of the thumb a name of this length may hold and still be taken for another. */
function allowedSlips(key: string): number {
	return key.length < 5 ? 0 : key.length < 10 ? 1 : 2;
}

/** "Frankfurt" where only "Frankfurt am Main" is known. */
function namesBeginning(key: string): string[] {
	return key.length < 5 ? [] : [...knownNames()].filter((known) => known.startsWith(`${key} `));
}

/** The known names that are the fewest slips away, if few enough. */
function nearKeys(key: string): string[] {
	let best = allowedSlips(key);
	if (best === 0) return [];
	let found: string[] = [];
	for (const known of knownNames()) {
		// The first letter is seldom missed.
		if (Math.abs(known.length - key.length) > best || known[0] !== key[0]) continue;
		const slips = editDistance(key, known, best);
		if (slips > best) continue;
		if (slips < best) found = [];
		best = slips;
		found.push(known);
	}
	return found;
}

/** The three known names most like an unknown one. */
function similarNames(read: readonly Split[], region: RuleRegion): string[] {
	const split = read.find(({ regions }) => regions !== null) ?? read[0];
	if (split === undefined) return [];
	const most = Math.max(3, Math.ceil(split.key.length / 2));
	const scored: { key: string; score: number }[] = [];
	for (const known of knownNames()) {
		if (Math.abs(known.length - split.key.length) > most) continue;
		const slips = editDistance(split.key, known, most);
		const begins = known.startsWith(split.key.slice(0, 3)) ? 1 : 0;
		if (slips <= most) scored.push({ key: known, score: slips - begins });
	}
	const names: string[] = [];
	for (const { key } of scored.toSorted((a, b) => a.score - b.score).slice(0, 40)) {
		const places = placesNamed(key).filter((place) => split.regions === null || liesIn(place, split.regions));
		const place = rank(places, region)[0];
		if (place !== undefined && !names.includes(place.name)) names.push(place.name);
		if (names.length === 3) break;
	}
	return names;
}

/** A place named in a message. */
export interface PlaceMatch {
	/** where it stands in the message, in UTF-16 units; the end is exclusive */
	readonly start: number;
	readonly end: number;
	/** the very words */
	readonly said: string;
	/** what to put into a place field; `lookUpPlace` finds it */
	readonly place: string;
	/** false where the words may well be meant otherwise ("Page", "Bend" with nothing that marks a place) */
	readonly sure: boolean;
}

const placeMarks = new Set([
	'in',
	'at',
	'near',
	'around',
	'outside',
	'bei',
	'nahe',
	'um',
	'nach',
	'en',
	'cerca',
	'to',
]);

/** Postal letters that are everyday words; in small letters they count only where nothing else could be meant. */
const wordlikeStates = new Set([
	'in',
	'or',
	'me',
	'hi',
	'ok',
	'oh',
	'la',
	'de',
	'on',
	'as',
	'al',
	'ma',
	'pa',
	'id',
]);

/** With nothing that marks it as a place, a name is trusted only where this many people live. */
const trustedPeople = 40_000;

/**
 * The places named in a message, in its order and not overlapping: towns, parks, stations with or without state or
 * country, and positions.
 */
export function findPlaces(text: string): PlaceMatch[] {
	const matches: PlaceMatch[] = positionsIn(text);
	const words = wordsOf(text);
	let at = 0;
	while (at < words.length) {
		const found = matchAt(text, words, at);
		if (
			found === null ||
			matches.some((other) => other.start < found.match.end && found.match.start < other.end)
		) {
			at += 1;
		} else {
			matches.push(found.match);
			at += found.words;
		}
	}
	return matches.toSorted((a, b) => a.start - b.start);
}

/** Two numbers before a unit are measurements. */
const unitPattern = /^\s*(?:[vaw]|ah|wh|kwh?|ft|mm?|cm|in(?!\s+\p{L})|kg|lbs?|gal|l|%|°)(?![\p{L}\d])/iu;

function positionsIn(text: string): PlaceMatch[] {
	const found: PlaceMatch[] = [];
	for (const match of text.matchAll(new RegExp(latLon.source, 'giu'))) {
		const [said, lat, ns, lon, ew] = match;
		// "2, 3" are two numbers; a position has hemispheres or decimals, and no digit before it.
		const marked = ns !== undefined && ew !== undefined;
		const decimal = lat?.includes('.') === true && lon?.includes('.') === true && /[,;]/.test(said);
		const start = match.index;
		const before = text.slice(0, start).at(-1) ?? ' ';
		const unitAfter = unitPattern.test(text.slice(start + said.length));
		if (!(marked || decimal) || unitAfter || /[\p{L}\d.]/u.test(before) || readPosition(said) === null)
			continue;
		found.push({
			start,
			end: start + said.trimEnd().length,
			said: said.trim(),
			place: said.trim(),
			sure: true,
		});
	}
	return found;
}

function matchAt(
	text: string,
	words: readonly Word[],
	at: number,
): { readonly match: PlaceMatch; readonly words: number } | null {
	const marked = at > 0 && placeMarks.has((words[at - 1] as Word).plain);
	for (let count = Math.min(longestName(), words.length - at); count >= 1; count -= 1) {
		const name = words.slice(at, at + count);
		const key = name.map((word) => word.plain).join(' ');
		if (!isOneRun(text, name)) continue;
		if (key.length > 3 && regionsNamed(key).length > 0 && !isKnownName(key)) {
			// "in Utah": which town is asked by the lookup.
			return { match: matchOf(text, name, marked), words: count };
		}
		if (!isKnownName(key)) continue;
		const region = regionAfter(text, words, at + count, key);
		const bare = region.words === 0;
		const known = placesNamed(key);
		const people = Math.max(...known.map((place) => place.weight));
		const single = count === 1;
		if (bare && single && tradeWords.has(key)) continue;
		if (bare && single && !marked && key.length < 4) continue;
		const everyday = single && strictWords.has(key);
		const sure = !bare || (marked && !everyday) || (!everyday && (count > 1 || people >= trustedPeople));
		const whole = words.slice(at, at + count + region.words);
		return { match: matchOf(text, whole, sure), words: whole.length };
	}
	const word = words[at] as Word;
	return isMisspeltCity(word.plain) ? { match: matchOf(text, [word], false), words: 1 } : null;
}

let cities: readonly string[] | null = null;

/** "tuscon": one slip away from the name of a large town; perhaps a place. */
function isMisspeltCity(plain: string): boolean {
	if (plain.length < 6 || tradeWords.has(plain) || strictWords.has(plain)) return false;
	cities ??= [...knownNames()].filter(
		(key) => key.length >= 6 && !key.includes(' ') && placesNamed(key).some((one) => one.weight >= 100_000),
	);
	return cities.some(
		(key) =>
			key[0] === plain[0] && Math.abs(key.length - plain.length) <= 1 && editDistance(plain, key, 1) === 1,
	);
}

function matchOf(text: string, words: readonly Word[], sure: boolean): PlaceMatch {
	const first = words[0] as Word;
	const last = words.at(-1) as Word;
	const end = last.raw.endsWith('.') ? last.end - 1 : last.end;
	const said = text.slice(first.start, end);
	return { start: first.start, end, said, place: said, sure };
}

/** True where nothing but spaces, hyphens and dots stands between the words. */
function isOneRun(text: string, words: readonly Word[]): boolean {
	return words.every((word, number) => {
		const next = words[number + 1];
		return next === undefined || /^[\s.'’-]*$/.test(text.slice(word.end, next.start));
	});
}

/** The words after a name that say in which state or country it lies. */
function regionAfter(
	text: string,
	words: readonly Word[],
	from: number,
	key: string,
): { readonly words: number } {
	const before = words[from - 1];
	for (const count of [3, 2, 1]) {
		const taken = words.slice(from, from + count);
		const first = taken[0];
		const last = taken.at(-1);
		if (before === undefined || first === undefined || last === undefined || taken.length < count) continue;
		const gap = text.slice(before.end, first.start);
		if (!/^[\s,(]*$/.test(gap) || !isOneRun(text, taken)) continue;
		const regions = regionsNamed(taken.map((word) => word.plain).join(' '));
		if (regions.length === 0 || !placesNamed(key).some((place) => liesIn(place, regions))) continue;
		if (count === 1 && wordlikeStates.has(first.plain) && !isState(text, words, from, gap)) continue;
		return { words: count };
	}
	return { words: 0 };
}

function isState(text: string, words: readonly Word[], at: number, gap: string): boolean {
	const word = words[at] as Word;
	if (gap.includes(',') || word.raw === word.raw.toUpperCase()) return true;
	if (word.plain === 'in') return false;
	const next = words[at + 1];
	return next === undefined || placeMarks.has(next.plain) || /\d/.test(text.charAt(next.start));
}
