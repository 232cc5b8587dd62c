import { climateSource } from '../tables/climate.js';
import type { Decision, Sheet } from '../topic/sheet.js';
import { practice } from '../topic/source.js';
import { lookUpPlace, type Place } from './places.js';

/** From here on the station's weather may differ noticeably from the place's [km] (practice). */
const nearKm = 60;

/**
 * What a topic does with a place field: looks it up, and says on the sheet which station's climate is used.
 *
 * @returns the place, or the question that settles which place is meant
 */
export function readPlace(sheet: Sheet, said: string, field = 'place'): Place | Decision {
	const found = lookUpPlace(said, sheet.context.region);
	if (found.kind === 'unsure') {
		const names = found.nearest.map((name) => `"${name}"`).join(', ');
		const question = {
			many: sheet.say`Which "${said}" is meant: ${names}?`,
			unknown: sheet.say`I have no climate for "${said}". Which place is nearest: ${names}, or a position such as "35.2,-111.7"?`,
			region: sheet.say`Which town in "${said}": ${names}, or another?`,
			remote: sheet.say`No weather station lies within 300 km of "${said}". Which of these comes nearest: ${names}?`,
		}[found.why];
		return sheet.ask({ name: field, label: 'place', question });
	}
	const { place } = found;
	sheet.source(climateSource(place.dataset));
	const distance = kilometres(sheet, place.distanceKm);
	if (found.respelt) {
		sheet.assume(field, 'place', place.name, sheet.say`read from "${said}"`, { confirm: true });
	}
	if (found.others.length > 0) {
		const others = found.others.join(', ');
		sheet.assume(field, 'place', place.name, sheet.say`the largest of that name; there is also ${others}`, {
			confirm: true,
		});
	}
	sheet.assume(
		`${field}Station`,
		'weather station',
		place.stationName,
		place.distanceKm < 1
			? 'the station of that name'
			: sheet.say`the nearest in the climate table, ${distance} from ${place.name}`,
	);
	if (place.distanceKm > nearKm) {
		sheet.finding(
			'note',
			'station-far',
			sheet.say`The climate is that of ${place.stationName}, ${distance} away at ${sheet.show('length', place.elevationM)}: sun and temperature at ${place.name} may differ, in mountains by a lot.`,
			practice('climate of the nearest station'),
		);
	}
	return place;
}

function kilometres(sheet: Sheet, km: number): string {
	return sheet.show('length', km * 1000, {
		unit: sheet.context.units === 'us' ? 'mi' : 'km',
		decimals: 0,
	});
}

/** True where `readPlace` came back with a question. */
export function isDecision(place: Place | Decision): place is Decision {
	return 'kind' in place;
}
