import { published, type Source } from '../topic/source.js';
import { climateRows } from './climate.generated.js';

/** Mean daily values of the twelve months, January first. */
export type Monthly = readonly number[];

/** What the climate table holds of one weather station. Temperatures in °C, irradiation in kWh/m² a day. */
export interface ClimateRow {
	/** station number and data set; with the name it is unique */
	readonly id: string;
	readonly dataset: Dataset;
	/** the station's name as published */
	readonly station: string;
	/** three letters, ISO 3166-1 */
	readonly country: string;
	/** state, province or region, or null where the data set names none */
	readonly state: string | null;
	readonly latitudeDeg: number;
	readonly longitudeDeg: number;
	readonly elevationM: number;
	/** local standard time ahead of UTC [h] */
	readonly utcOffsetH: number;
	/** on the horizontal, all of the sky */
	readonly ghiKWhM2: Monthly;
	/** on a plane that follows the sun, or null where not published */
	readonly dniKWhM2: Monthly | null;
	/** diffuse on the horizontal, or null where not published */
	readonly dhiKWhM2: Monthly | null;
	readonly meanC: Monthly;
	/** mean of the daily minima, or null where not published */
	readonly dayMinC: Monthly | null;
	readonly dayMaxC: Monthly | null;
	/** lowest hour of the typical year, or null where the source's hours are faulty or not published */
	readonly typicalMinC: number | null;
	/** 0.4 %, 1 % and 99 % of the typical year's hours, and its highest hour */
	readonly typicalP04C: number | null;
	readonly typicalP1C: number | null;
	readonly typicalP99C: number | null;
	readonly typicalMaxC: number | null;
	/** published design temperatures (ASHRAE), each null where the handbook has none for the station */
	readonly heat996C: number | null;
	readonly heat99C: number | null;
	readonly cool04C: number | null;
	readonly cool1C: number | null;
	/** mean of each year's lowest and highest hour */
	readonly extremeMinC: number | null;
	readonly extremeMaxC: number | null;
}

const datasetSources = {
	TMY3: published(
		'NREL Users Manual for TMY3 Data Sets, NREL/TP-581-43156',
		'1991-2005, monthly means of the hours',
	),
	IWEC: published(
		'ASHRAE International Weather for Energy Calculations (IWEC)',
		'monthly means of the hours',
	),
	RMY: published('Representative Meteorological Year, Australia (RMY)', 'monthly means of the hours'),
	NIWA: published('NIWA typical years, New Zealand', 'monthly means of the hours'),
	IGDG: published('Italian climatic data collection Gianni De Giorgio (IGDG)', 'monthly means of the hours'),
	IMGW: published('Typical years of IMGW, Poland', 'monthly means of the hours'),
	SWEC: published('Spanish Weather for Energy Calculations (SWEC)', 'monthly means of the hours'),
	SWERA: published('UNEP Solar and Wind Energy Resource Assessment (SWERA)', 'monthly means of the hours'),
	ETMY: published('Egyptian Typical Meteorological Year (ETMY)', 'monthly means of the hours'),
	CSWD: published('Chinese Standard Weather Data (CSWD)', 'monthly means of the hours'),
	MSI: published('Typical years of the Israel Meteorological Service (MSI)', 'monthly means of the hours'),
	CWEC: published('Canadian Weather for Energy Calculations 2016 (CWEC)', 'monthly means; ASHRAE HOF 2017'),
} as const satisfies Record<string, Source>;

export type Dataset = keyof typeof datasetSources;

/** Where a station's irradiation and temperatures were published. */
export function climateSource(dataset: Dataset): Source {
	return datasetSources[dataset];
}

export const designSource = published(
	'ASHRAE Handbook of Fundamentals',
	'climatic design conditions (2009; Canada 2017)',
);

/** Digits of the packed numbers: base 64, most significant first; `~` fills the place of a blank cell. */
export const packedDigits = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-_';

/** The packed columns of a row in order: how many cells, digits each, how many steps make one unit, the offset. */
export const packedColumns = {
	ghiKWhM2: { cells: 12, digits: 3, perUnit: 1000, offset: 0 },
	dniKWhM2: { cells: 12, digits: 3, perUnit: 1000, offset: 0 },
	dhiKWhM2: { cells: 12, digits: 3, perUnit: 1000, offset: 0 },
	meanC: { cells: 12, digits: 3, perUnit: 100, offset: 10_000 },
	dayMinC: { cells: 12, digits: 2, perUnit: 10, offset: 1000 },
	dayMaxC: { cells: 12, digits: 2, perUnit: 10, offset: 1000 },
	single: { cells: 11, digits: 2, perUnit: 10, offset: 1000 },
} as const;

type Packed = (typeof packedColumns)[keyof typeof packedColumns];

const digitValues = new Map([...packedDigits].map((digit, value) => [digit, value]));

let lines: readonly string[] | null = null;
const decoded = new Map<number, ClimateRow>();

/** The table is one long text until somebody asks for a place: a question of wires never pays for it. */
function climateLines(): readonly string[] {
	lines ??= climateRows.split('\n').filter((line) => line !== '');
	return lines;
}

/** The name and whereabouts of every station, without its months. */
export interface StationName {
	readonly index: number;
	readonly id: string;
	readonly dataset: Dataset;
	readonly station: string;
	readonly country: string;
	readonly state: string | null;
	readonly latitudeDeg: number;
	readonly longitudeDeg: number;
	readonly elevationM: number;
	readonly utcOffsetH: number;
	/** true where the handbook's extreme yearly minimum is known */
	readonly hasExtreme: boolean;
}

let names: readonly StationName[] | null = null;

export function stationNames(): readonly StationName[] {
	names ??= climateLines().map((line, index) => {
		const [id, dataset, station, country, state, lat, lon, elevation, offset, packed] = line.split('|');
		return {
			index,
			id: id as string,
			dataset: dataset as Dataset,
			station: station as string,
			country: country as string,
			state: state === '' ? null : (state as string),
			latitudeDeg: Number(lat),
			longitudeDeg: Number(lon),
			elevationM: Number(elevation),
			utcOffsetH: Number(offset),
			// The last cell but one, two digits each.
			hasExtreme: (packed as string).at(-4) !== '~',
		};
	});
	return names;
}

/** Everything the table holds of one station. */
export function climateRow(index: number): ClimateRow {
	const known = decoded.get(index);
	if (known !== undefined) return known;
	const { index: _, hasExtreme: __, ...where } = stationNames()[index] as StationName;
	const packed = (climateLines()[index] as string).split('|').at(-1) as string;
	const cells: Record<keyof typeof packedColumns, (number | null)[]> = {
		ghiKWhM2: [],
		dniKWhM2: [],
		dhiKWhM2: [],
		meanC: [],
		dayMinC: [],
		dayMaxC: [],
		single: [],
	};
	let at = 0;
	for (const [name, column] of Object.entries(packedColumns)) {
		for (let cell = 0; cell < column.cells; cell += 1) {
			cells[name as keyof typeof packedColumns].push(unpack(packed.slice(at, at + column.digits), column));
			at += column.digits;
		}
	}
	const single = cells.single;
	const row: ClimateRow = {
		...where,
		ghiKWhM2: cells.ghiKWhM2 as number[],
		dniKWhM2: whole(cells.dniKWhM2),
		dhiKWhM2: whole(cells.dhiKWhM2),
		meanC: cells.meanC as number[],
		dayMinC: whole(cells.dayMinC),
		dayMaxC: whole(cells.dayMaxC),
		typicalMinC: single[0] ?? null,
		typicalP04C: single[1] ?? null,
		typicalP1C: single[2] ?? null,
		typicalP99C: single[3] ?? null,
		typicalMaxC: single[4] ?? null,
		heat996C: single[5] ?? null,
		heat99C: single[6] ?? null,
		cool04C: single[7] ?? null,
		cool1C: single[8] ?? null,
		extremeMinC: single[9] ?? null,
		extremeMaxC: single[10] ?? null,
	};
	decoded.set(index, row);
	return row;
}

function whole(values: readonly (number | null)[]): Monthly | null {
	return values.every((value) => value !== null) ? (values as number[]) : null;
}

function unpack(digits: string, column: Packed): number | null {
	if (digits.startsWith('~')) return null;
	let steps = 0;
	for (const digit of digits) steps = steps * packedDigits.length + (digitValues.get(digit) ?? Number.NaN);
	return (steps - column.offset) / column.perUnit;
}
