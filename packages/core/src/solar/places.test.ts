import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { climateRow, stationNames } from '../tables/climate.js';
import { designCooling, designHeating, recordLow } from './climate.js';
import { distanceKm } from './distance.js';
import { editDistance } from './edit-distance.js';
import { findPlaces, lookUpPlace, type Place } from './places.js';

function found(text: string, region: 'us' | 'eu' = 'us'): Place {
	const lookup = lookUpPlace(text, region);
	if (lookup.kind !== 'found') throw new Error(`"${text}" is not found: ${JSON.stringify(lookup)}`);
	return lookup.place;
}

describe('lookUpPlace', () => {
	test.each([
		['Flagstaff', 'Flagstaff, AZ', 'Flagstaff Pulliam Airport, AZ'],
		['flagstaff az', 'Flagstaff, AZ', 'Flagstaff Pulliam Airport, AZ'],
		['FLAGSTAFF, Arizona', 'Flagstaff, AZ', 'Flagstaff Pulliam Airport, AZ'],
		['flagstaff, arizona, usa', 'Flagstaff, AZ', 'Flagstaff Pulliam Airport, AZ'],
		['Munich', 'Munich, Germany', 'Munich, Germany'],
		['München', 'Munich, Germany', 'Munich, Germany'],
		['muenchen', 'Munich, Germany', 'Munich, Germany'],
		['koeln', 'Köln, Germany', 'Koln, Germany'],
		['zion', 'Zion National Park, UT', 'Saint George, UT'],
		['zion national park', 'Zion National Park, UT', 'Saint George, UT'],
		['st. george utah', 'Saint George, UT', 'Saint George, UT'],
		['moab', 'Moab, UT', 'Moab-Canyonlands Field, UT'],
		['Page AZ', 'Page, AZ', 'Page Municipal, AZ'],
		['vegas', 'Las Vegas, NV', 'Las Vegas-McCarran International Airport, NV'],
		['las vegas nm', 'Las Vegas, NM', 'Las Vegas-Municipal Airport, NM'],
		['tucson', 'Tucson, AZ', 'Tucson International Airport, AZ'],
		['frankfurt', 'Frankfurt am Main, Germany', 'Frankfurt am Main, Germany'],
		['Vancouver BC', 'Vancouver, BC', 'Vancouver International Airport, BC'],
		[
			'phoenix sky harbor intl ap',
			'Phoenix Sky Harbor International Airport, AZ',
			'Phoenix Sky Harbor International Airport, AZ',
		],
		['new york', 'New York City, NY', 'New York-Central Park, NY'],
	])('%s', (said, name, station) => {
		const place = found(said);
		expect(place.name).toBe(name);
		expect(place.stationName).toBe(station);
	});

	test('slips of the thumb are put right and reported', () => {
		for (const [said, meant] of [
			['flagstaf', 'Flagstaff, AZ'],
			['Tuscon', 'Tucson, AZ'],
			['Albuqerque', 'Albuquerque, NM'],
		] as const) {
			const lookup = lookUpPlace(said);
			expect(lookup).toMatchObject({ kind: 'found', respelt: true, place: { name: meant } });
		}
		expect(lookUpPlace('Flagstaff')).toMatchObject({ kind: 'found', respelt: false });
	});

	test('a position takes the nearest station and its distance', () => {
		const place = found('35.2,-111.7');
		expect(place.stationName).toBe('Flagstaff Pulliam Airport, AZ');
		// Flagstaff Pulliam: 35.133 N 111.667 W; 0.067 degrees of latitude are 7.4 km.
		expect(place.distanceKm).toBeCloseTo(8.0, 0);
		expect(found('35.2 N, 111.7 W').stationName).toBe(place.stationName);
		expect(found('33.9 S 151.2 E').stationName).toMatch(/Sydney/);
	});

	test('a name of several places is asked, with the likeliest three', () => {
		expect(lookUpPlace('Springfield')).toEqual({
			kind: 'unsure',
			why: 'many',
			nearest: ['Springfield, MO', 'Springfield, MA', 'Springfield, IL'],
		});
		expect(found('springfield mo').name).toBe('Springfield, MO');
	});

	test('the likeliest is taken only with the others named', () => {
		const lookup = lookUpPlace('portland');
		expect(lookup).toMatchObject({ kind: 'found', place: { name: 'Portland, OR' } });
		expect(lookup.kind === 'found' && lookup.others).toContain('Portland, ME');
		expect(found('portland maine').stationName).toBe('Portland International Jetport, ME');
	});

	test('the same name is read nearer home', () => {
		expect(lookUpPlace('naples', 'us')).toMatchObject({ kind: 'unsure', why: 'many' });
		expect(found('naples', 'eu').name).toBe('Naples, Italy');
	});

	test('a state or a country is no place: which town is asked', () => {
		expect(lookUpPlace('utah')).toMatchObject({ kind: 'unsure', why: 'region' });
		expect(lookUpPlace('Deutschland', 'eu')).toMatchObject({ kind: 'unsure', why: 'region' });
	});

	test('the unknown is asked with three names that are found', () => {
		for (const said of ['xyzzyville', 'Atlantis', 'Mordor', 'qq']) {
			const lookup = lookUpPlace(said);
			expect(lookup, said).toMatchObject({ kind: 'unsure', why: 'unknown' });
			if (lookup.kind !== 'unsure') continue;
			expect(lookup.nearest.length, said).toBe(3);
		}
	});

	test('far from every station no climate is made up', () => {
		expect(lookUpPlace('89,0')).toMatchObject({ kind: 'unsure', why: 'remote' });
		expect(lookUpPlace('0,-30')).toMatchObject({ kind: 'unsure', why: 'remote' });
	});

	test('every station of the United States is found by its own name', () => {
		const lost: string[] = [];
		for (const station of stationNames()) {
			if (station.country !== 'USA') continue;
			const lookup = lookUpPlace(`${station.station}, ${station.state}`);
			const near =
				lookup.kind === 'found' &&
				distanceKm(lookup.place, station) < 60 &&
				lookup.place.state === station.state;
			if (!near) lost.push(`${station.station}, ${station.state}: ${JSON.stringify(lookup).slice(0, 80)}`);
		}
		expect(lost).toEqual([]);
	});

	test('no text makes it throw, and what it offers can be looked up', () => {
		fc.assert(
			fc.property(fc.string({ maxLength: 40, unit: 'grapheme' }), (text) => {
				const lookup = lookUpPlace(text);
				if (lookup.kind === 'found') return Number.isFinite(lookup.place.distanceKm);
				return lookup.nearest.length <= 3;
			}),
			{ numRuns: 150 },
		);
	});
});

describe('findPlaces', () => {
	const cases: readonly (readonly [string, readonly (readonly [string, boolean])[]])[] = [
		['Flagstaff in March', [['Flagstaff', true]]],
		['400W in Tucson december', [['Tucson', true]]],
		['200 w panel zion in july', [['zion', true]]],
		['2 x 200W flat in bend oregon in october, page 3', [['bend oregon', true]]],
		['solar 35.2,-111.7 june', [['35.2,-111.7', true]]],
		['denver co jan', [['denver co', true]]],
		['columbus in march', [['columbus', true]]],
		['mobile al 300w', [['mobile al', true]]],
		['solar in st. george, utah in dec.', [['st. george, utah', true]]],
		['solar in new mexico', [['new mexico', true]]],
		['münchen im märz 300W', [['münchen', true]]],
		['nach Nordkapp im Juni', [['Nordkapp', true]]],
		['Barcelona en agosto 400 W', [['Barcelona', true]]],
		['winter in Orange, TX', [['Orange, TX', true]]],
		['solar for austin', [['austin', false]]],
		['400W tuscon december', [['tuscon', false]]],
		// A note of the trade is no place.
		['fan in van 12v 3A', []],
		['cable in series, panels in parallel', []],
		['budget fridge 60W 8h, lights 20W 5h, water pump 5A 10min', []],
		['40A 12V 15 ft', []],
		['max power 24V, lead acid, gel 200 Ah, AGM', []],
		['shore 30A 120V, outlet 15 A', []],
		['tank 30 gal fresh 2 people 3 days', []],
		['reading 12.5, 13.2 V', []],
		['iron 1500W in summer, wall 2 in', []],
		['', []],
	];
	test.each(cases)('%s', (text, expected) => {
		const matches = findPlaces(text);
		expect(matches.map((match) => [match.said, match.sure])).toEqual(expected);
		for (const match of matches) expect(text.slice(match.start, match.end)).toBe(match.said);
	});

	test('what it hands over as sure is known to the lookup', () => {
		for (const [text] of cases) {
			for (const match of findPlaces(text)) {
				const lookup = lookUpPlace(match.place);
				expect(lookup.kind === 'found' || lookup.why !== 'unknown', match.place).toBe(true);
			}
		}
	});

	test('spans lie in the text, in order and apart', () => {
		fc.assert(
			fc.property(fc.string({ maxLength: 60, unit: 'grapheme' }), (text) => {
				let last = 0;
				for (const { start, end, said } of findPlaces(`${text} flagstaff az ${text} 35.2,-111.7`)) {
					if (start < last || end <= start || said === '') return false;
					last = end;
				}
				return true;
			}),
			{ numRuns: 150 },
		);
	});
});

describe('design temperatures', () => {
	test('published values stand as they are', () => {
		const denver = found('denver');
		expect(denver.extremeMinC).not.toBeNull();
		expect(recordLow(denver)).toMatchObject({ valueC: denver.extremeMinC, standIn: null });
		expect(designHeating(denver, '99 %').valueC).toBe(denver.heat99C);
		expect(designCooling(denver).valueC).toBe(denver.cool04C);
	});

	test('where none is published the harsher of typical year and nearest station counts, and is named', () => {
		let standIns = 0;
		for (const station of stationNames()) {
			const row = climateRow(station.index);
			const place: Place = {
				...row,
				name: row.station,
				stationName: row.station,
				distanceKm: 0,
				position: row,
			};
			const low = recordLow(place);
			if (row.extremeMinC !== null) continue;
			standIns += 1;
			expect(low.standIn).not.toBeNull();
			if (row.typicalMinC !== null) expect(low.valueC).toBeLessThanOrEqual(row.typicalMinC);
			expect(designCooling(place).valueC).toBeLessThan(50);
			expect(designHeating(place).valueC).toBeLessThanOrEqual(designHeating(place, '99 %').valueC + 3);
		}
		// As many as SOURCES.md counts: 284 in the United States, 113 elsewhere.
		expect(standIns).toBe(284 + 113);
	});
});

test('distances agree with those of a globe', () => {
	// A quarter of the meridian of a sphere of 6371 km.
	expect(distanceKm({ latitudeDeg: 0, longitudeDeg: 0 }, { latitudeDeg: 90, longitudeDeg: 0 })).toBeCloseTo(
		10007.5,
		1,
	);
	expect(
		distanceKm({ latitudeDeg: 0, longitudeDeg: 179 }, { latitudeDeg: 0, longitudeDeg: -179 }),
	).toBeCloseTo(222.4, 1);
});

test('slips are counted, a swap of neighbours as one', () => {
	expect(editDistance('tucson', 'tuscon', 3)).toBe(1);
	expect(editDistance('flagstaf', 'flagstaff', 3)).toBe(1);
	expect(editDistance('moab', 'moab', 3)).toBe(0);
	expect(editDistance('moab', 'page', 2)).toBe(3);
});
