import { type ClimateRow, climateRow, climateSource, designSource, stationNames } from '../tables/climate.js';
import type { Source } from '../topic/source.js';
import type { Say } from '../topic/translate.js';
import { stationLabel } from './place-names.js';
import { nearestStations, type Place } from './places.js';

/** A temperature of a place's climate, and how it is known. */
export interface ClimateTemperature {
	readonly valueC: number;
	readonly source: Source;
	/** what stands in for the missing published value, in words, or null where the value is the station's own */
	readonly standIn: ((say: Say) => string) | null;
}

/** Above this no hour of a sane weather file lies; a few stations' hours are faulty [°C]. */
const hottestCredibleC = 50;

/** Farther off another station's design temperature says nothing [km]; only the record low is taken from anywhere. */
const designKm = 300;

/** The nearest other station for which the handbook has a value. */
function nearestWith(
	place: Place,
	pick: (row: ClimateRow) => number | null,
): { readonly valueC: number; readonly station: string; readonly km: number } {
	for (const { index, distanceKm } of nearestStations(place, stationNames().length)) {
		const valueC = pick(climateRow(index));
		const station = stationNames()[index];
		if (valueC !== null && station !== undefined) {
			return { valueC, station: stationLabel(station), km: distanceKm };
		}
	}
	throw new Error('the climate table holds no design temperature at all');
}

/**
 * A published value, or where the station has none the harsher of its own typical year and the nearest station's
 * published value.
 */
function publishedOr(
	place: Place,
	pick: (row: ClimateRow) => number | null,
	typicalC: number | null,
	harsher: (a: number, b: number) => number,
	mostKm = designKm,
): ClimateTemperature {
	const own = pick(place);
	if (own !== null) return { valueC: own, source: designSource, standIn: null };
	const near = nearestWith(place, pick);
	if (typicalC === null || (near.km <= mostKm && harsher(typicalC, near.valueC) === near.valueC)) {
		return {
			valueC: near.valueC,
			source: designSource,
			standIn: (say) =>
				say`that of ${near.station}, ${Math.round(near.km)} km away: none is published for ${place.stationName}`,
		};
	}
	return {
		valueC: typicalC,
		source: climateSource(place.dataset),
		standIn: (say) => say`from the typical year of ${place.stationName}: no design value is published for it`,
	};
}

/** The mean of each year's lowest hour: the cold for which a string's open-circuit voltage is reckoned. */
export function recordLow(place: Place): ClimateTemperature {
	return publishedOr(place, (row) => row.extremeMinC, place.typicalMinC, Math.min, Number.POSITIVE_INFINITY);
}

/** The temperature that all but `share` of the year's hours exceed; 99.6 % is the harsher. */
export function designHeating(place: Place, share: '99.6 %' | '99 %' = '99.6 %'): ClimateTemperature {
	return share === '99.6 %'
		? publishedOr(place, (row) => row.heat996C, place.typicalP04C, Math.min)
		: publishedOr(place, (row) => row.heat99C, place.typicalP1C, Math.min);
}

/** The temperature that all but 0.4 % (the harsher) or 1 % of the year's hours stay below. */
export function designCooling(place: Place, share: '0.4 %' | '1 %' = '0.4 %'): ClimateTemperature {
	const p99 = place.typicalP99C;
	const credible = p99 !== null && p99 < hottestCredibleC ? p99 : null;
	return share === '0.4 %'
		? publishedOr(place, (row) => row.cool04C, credible, Math.max)
		: publishedOr(place, (row) => row.cool1C, credible, Math.max);
}

/** Half the usual swing of a day, where the data set gives only the mean [K] (practice). */
const usualHalfSwingK = 5;

/** The mean daily minimum and maximum of a month, 1 to 12 [°C]. */
export function dailySwing(
	place: ClimateRow,
	month: number,
): { readonly minC: number; readonly maxC: number; readonly isUsual: boolean } {
	const meanC = place.meanC[month - 1] as number;
	const minC = place.dayMinC?.[month - 1];
	const maxC = place.dayMaxC?.[month - 1];
	return minC === undefined || maxC === undefined
		? { minC: meanC - usualHalfSwingK, maxC: meanC + usualHalfSwingK, isUsual: true }
		: { minC, maxC, isUsual: false };
}
