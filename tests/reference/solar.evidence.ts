import { recordLow } from '../../packages/core/src/solar/climate.js';
import {
	clearSkyHaurwitz,
	clearSkyIneichen,
	extraterrestrial,
	onPlane,
	relativeAirMass,
} from '../../packages/core/src/solar/irradiance.js';
import {
	dcPower,
	faimanModuleC,
	inverterPower,
	mountings,
	noctCellC,
	pvWattsLosses,
	sapmTemperatures,
	totalLoss,
} from '../../packages/core/src/solar/photovoltaic.js';
import { lookUpPlace, type Place } from '../../packages/core/src/solar/places.js';
import { coldFactor, stringVocV } from '../../packages/core/src/solar/strings.js';
import {
	momentMs,
	pressureAt,
	sunDay,
	sunGeocentric,
	sunPosition,
} from '../../packages/core/src/solar/sun-position.js';
import {
	extraterrestrialDay,
	globalHourShare,
	meanDayOfMonth,
	sunsetHourAngleDeg,
} from '../../packages/core/src/solar/typical-day.js';
import { dayYield, type PvArray, yearYield } from '../../packages/core/src/solar/yield.js';
import { climateRow, stationNames } from '../../packages/core/src/tables/climate.js';
import type { Context } from '../../packages/core/src/topic/context.js';
import { defaultContext } from '../../packages/core/src/topic/context.js';
import type { AnyTopic } from '../../packages/core/src/topic/declare.js';
import { runTopic } from '../../packages/core/src/topic/run.js';
import { array } from '../../packages/core/src/topics/array.js';
import { solar } from '../../packages/core/src/topics/solar.js';
import { readJson, readTable } from './csv.js';
import type { EvidenceRow } from './evidence.js';

type Row = Readonly<Record<string, string>>;

const library = 'open solar library pvlib-python 0.15';

function cell(row: Row, name: string): number {
	return Number(row[name]);
}

/** Every n-th row, so that sites, seasons and hours all have their share. */
function every<T>(rows: readonly T[], step: number, from = 0): T[] {
	return rows.filter((_, index) => index % step === from);
}

function dayOfYear(timeMs: number): number {
	return Math.floor((timeMs - Date.UTC(new Date(timeMs).getUTCFullYear(), 0, 1)) / 86_400_000) + 1;
}

function site(row: Row) {
	return { latitudeDeg: cell(row, 'lat'), longitudeDeg: cell(row, 'lon') };
}

function sunOf(row: Row) {
	const altitudeM = cell(row, 'altitude_m');
	return sunPosition(Date.parse(row.time_utc as string), site(row), altitudeM, {
		pressurePa: pressureAt(altitudeM),
		temperatureC: 12,
	});
}

// Sun position: the report's example, textbook examples, almanac facts

const spaReport = 'NREL/TP-560-34302 (Reda and Andreas 2008), appendix A.5';
const spaMs = Date.parse('2003-10-17T19:30:30Z');
const golden = { latitudeDeg: 39.742476, longitudeDeg: -105.1786 };
const spaExample = () => sunPosition(spaMs, golden, 1830.14, { pressurePa: 82_000, temperatureC: 11 });

/** Clock of the day of a moment [h], local standard time. */
function clockH(timeMs: number | null, offsetH: number): number {
	if (timeMs === null) return Number.NaN;
	return (((timeMs / 3_600_000 + offsetH) % 24) + 24) % 24;
}

const spa: EvidenceRow[] = [
	{
		topic: 'sun position',
		what: 'apparent zenith, Golden, 2003-10-17 12:30:30 MST',
		source: spaReport,
		mark: 'verified',
		published: 50.11162,
		unit: '°',
		tolerance: { abs: 0.001 },
		ours: () => spaExample().apparentZenithDeg,
	},
	{
		topic: 'sun position',
		what: 'azimuth from north, Golden, 2003-10-17 12:30:30 MST',
		source: spaReport,
		mark: 'verified',
		published: 194.34024,
		unit: '°',
		tolerance: { abs: 0.001 },
		ours: () => spaExample().azimuthDeg,
	},
	...(
		[
			['apparent longitude of the sun', 204.0085519281, 0.0003, (sun) => sun.longitudeDeg],
			['right ascension of the sun', 202.22741, 0.0003, (sun) => sun.rightAscensionDeg],
			['declination of the sun', -9.31434, 0.0003, (sun) => sun.declinationDeg],
			['obliquity of the ecliptic', 23.440465, 0.0002, (sun) => sun.obliquityDeg],
			['nutation in longitude', -0.0039984, 0.0001, (sun) => sun.nutationDeg],
		] as const satisfies readonly (readonly [
			string,
			number,
			number,
			(sun: ReturnType<typeof sunGeocentric>) => number,
		])[]
	).map(
		([what, published, abs, pick]): EvidenceRow => ({
			topic: 'sun position',
			what: `${what}, 2003-10-17 19:30:30 UTC`,
			source: spaReport,
			mark: 'from memory',
			published,
			unit: '°',
			tolerance: { abs },
			ours: () => pick(sunGeocentric(spaMs)),
		}),
	),
	{
		topic: 'sun position',
		what: 'distance of the sun, 2003-10-17 19:30:30 UTC',
		source: spaReport,
		mark: 'from memory',
		published: 0.9965422974,
		unit: 'au',
		tolerance: { abs: 0.00001 },
		ours: () => sunGeocentric(spaMs).radiusAu,
	},
	{
		topic: 'sun position',
		what: 'equation of time, 2003-10-17 19:30:30 UTC',
		source: spaReport,
		mark: 'from memory',
		published: 14.641503,
		unit: 'min',
		tolerance: { abs: 0.002 },
		ours: () => sunGeocentric(spaMs).equationOfTimeMin,
	},
	{
		topic: 'sun position',
		what: 'sunrise, Golden, 2003-10-17 (06:12:43 MST)',
		source: spaReport,
		mark: 'from memory',
		published: 6 + 12 / 60 + 43 / 3600,
		unit: 'h',
		tolerance: { abs: 2 / 3600 },
		ours: () => clockH(sunDay(spaMs, golden).sunriseMs, -7),
	},
	{
		topic: 'sun position',
		// Within 17 October UTC, as the algorithm looks for it: the evening of the 16th by the local clock.
		what: 'sunset, Golden, 2003-10-17 UTC (17:20:19 MST)',
		source: spaReport,
		mark: 'from memory',
		published: 17 + 20 / 60 + 19 / 3600,
		unit: 'h',
		tolerance: { abs: 2 / 3600 },
		ours: () => clockH(sunDay(spaMs - 86_400_000, golden).sunsetMs, -7),
	},
];

// In these examples time is uniform (TD): no difference to the earth's rotation is added.
const meeus = 'Meeus, Astronomical Algorithms, 2nd ed.';
const october = () => sunGeocentric(momentMs(1992, 10, 13), 0);
const april = () => sunGeocentric(momentMs(1987, 4, 10), 0);
const textbook: EvidenceRow[] = (
	[
		[
			'example 25.b: apparent longitude of the sun, 1992 October 13.0',
			199.906061,
			'°',
			0.0003,
			() => october().longitudeDeg,
		],
		[
			'example 25.b: right ascension of the sun, 1992 October 13.0',
			198.378121,
			'°',
			0.0003,
			() => october().rightAscensionDeg,
		],
		[
			'example 25.b: declination of the sun, 1992 October 13.0',
			-7.783817,
			'°',
			0.0003,
			() => october().declinationDeg,
		],
		[
			'example 25.b: distance of the sun, 1992 October 13.0',
			0.99760775,
			'au',
			0.00001,
			() => october().radiusAu,
		],
		[
			'example 28.a: equation of time, 1992 October 13.0',
			13.7094,
			'min',
			0.002,
			() => october().equationOfTimeMin,
		],
		[
			'example 22.a: nutation in longitude, 1987 April 10.0',
			-3.788 / 3600,
			'°',
			0.1 / 3600,
			() => april().nutationDeg,
		],
		['example 22.a: true obliquity, 1987 April 10.0', 23.443569, '°', 0.1 / 3600, () => april().obliquityDeg],
		[
			'example 12.a: apparent sidereal time, 1987 April 10, 0 h UT',
			197.69223,
			'°',
			0.0001,
			() => april().siderealDeg,
		],
	] as const
).map(
	([what, published, unit, abs, ours]): EvidenceRow => ({
		topic: 'sun position',
		what,
		source: meeus,
		mark: 'from memory',
		published,
		unit,
		tolerance: { abs },
		ours,
	}),
);

const almanac = 'almanac of the US Naval Observatory, earth’s seasons and apsides';
const seasons: EvidenceRow[] = (
	[
		['March equinox 2024', '2024-03-20T03:06Z', 0],
		['June solstice 2024', '2024-06-20T20:51Z', 90],
		['September equinox 2024', '2024-09-22T12:44Z', 180],
		['March equinox 2025', '2025-03-20T09:01Z', 0],
		['June solstice 2025', '2025-06-21T02:42Z', 90],
		['September equinox 2025', '2025-09-22T18:19Z', 180],
		['December solstice 2025', '2025-12-21T15:03Z', 270],
	] as const
).map(
	([what, at, published]): EvidenceRow => ({
		topic: 'sun position',
		what: `${what}: apparent longitude of the sun`,
		source: almanac,
		mark: 'from memory',
		published,
		unit: '°',
		// Printed to the minute, in which the sun moves 0.0007°.
		tolerance: { abs: 0.0008 },
		ours: () => {
			const deg = sunGeocentric(Date.parse(at)).longitudeDeg;
			return deg > 359 ? deg - 360 : deg;
		},
	}),
);
const apsides: EvidenceRow[] = (
	[
		['perihelion, 4 January 2025', '2025-01-04T13:28Z', 0.98333],
		['aphelion, 3 July 2025', '2025-07-03T19:55Z', 1.01664],
	] as const
).map(
	([what, at, published]): EvidenceRow => ({
		topic: 'sun position',
		what: `${what}: distance of the sun`,
		source: almanac,
		mark: 'from memory',
		published,
		unit: 'au',
		tolerance: { abs: 0.00002 },
		ours: () => sunGeocentric(Date.parse(at)).radiusAu,
	}),
);

const positions = readTable('solar/solar_position_clearsky.csv');
const up = positions.filter((row) => row.airmass_relative !== '');
const positionRows: EvidenceRow[] = every(positions, 3).flatMap((row): EvidenceRow[] => [
	{
		topic: 'sun position',
		what: `${row.name} ${row.time_utc}: apparent zenith`,
		source: library,
		mark: 'computed with a reference library',
		published: cell(row, 'apparent_zenith_deg'),
		unit: '°',
		tolerance: { abs: 0.01 },
		ours: () => sunOf(row).apparentZenithDeg,
	},
	{
		topic: 'sun position',
		what: `${row.name} ${row.time_utc}: azimuth`,
		source: library,
		mark: 'computed with a reference library',
		published: cell(row, 'azimuth_deg'),
		unit: '°',
		tolerance: { abs: 0.01 },
		ours: () => sunOf(row).azimuthDeg,
	},
]);

const clearRows: EvidenceRow[] = every(up, 9, 2).flatMap((row): EvidenceRow[] => {
	const zenith = cell(row, 'apparent_zenith_deg');
	const altitudeM = cell(row, 'altitude_m');
	const normal = () => extraterrestrial(dayOfYear(Date.parse(row.time_utc as string)));
	const clear = () =>
		clearSkyIneichen(zenith, {
			absoluteAirMass: ((relativeAirMass(zenith) ?? 0) * pressureAt(altitudeM)) / 101_325,
			linkeTurbidity: 3,
			altitudeM,
			extraterrestrialWM2: normal(),
		});
	const row_ = (
		what: string,
		source: string,
		published: number,
		unit: string,
		abs: number,
		ours: () => number,
	) => ({
		topic: 'clear sky',
		what: `${row.name} ${row.time_utc}: ${what}`,
		source: `${source}, by ${library}`,
		mark: 'computed with a reference library' as const,
		published,
		unit,
		tolerance: { abs },
		ours,
	});
	return [
		row_('irradiance outside the air', 'Spencer 1971', cell(row, 'dni_extra_w_m2'), 'W/m²', 0.001, normal),
		row_(
			'relative air mass',
			'Kasten and Young 1989',
			cell(row, 'airmass_relative'),
			'',
			0.0001,
			() => relativeAirMass(zenith) ?? 0,
		),
		row_('clear-sky global', 'Haurwitz 1945', cell(row, 'ghi_haurwitz'), 'W/m²', 0.01, () =>
			clearSkyHaurwitz(zenith),
		),
		row_(
			'clear-sky global',
			'Ineichen and Perez 2002',
			cell(row, 'ghi_ineichen'),
			'W/m²',
			0.01,
			() => clear().globalWM2,
		),
		row_(
			'clear-sky beam',
			'Ineichen and Perez 2002',
			cell(row, 'dni_ineichen'),
			'W/m²',
			0.01,
			() => clear().beamWM2,
		),
	];
});

const planeRows: EvidenceRow[] = every(readTable('solar/transposition.csv'), 37, 5).map(
	(row): EvidenceRow => ({
		topic: 'tilted plane',
		what: `${row.site} ${row.time_utc}, tilt ${row.surface_tilt_deg}°, facing ${row.surface_azimuth_deg}°: total`,
		source: `${row.model === 'isotropic' ? 'Liu and Jordan 1960' : 'Hay and Davies 1980'}, by ${library}`,
		mark: 'computed with a reference library',
		published: cell(row, 'poa_global'),
		unit: 'W/m²',
		tolerance: { abs: 0.02 },
		ours: () =>
			onPlane(
				{ globalWM2: cell(row, 'ghi'), beamWM2: cell(row, 'dni'), diffuseWM2: cell(row, 'dhi') },
				{ apparentZenithDeg: cell(row, 'apparent_zenith_deg'), azimuthDeg: cell(row, 'azimuth_deg') },
				{ tiltDeg: cell(row, 'surface_tilt_deg'), azimuthDeg: cell(row, 'surface_azimuth_deg') },
				{
					albedo: cell(row, 'albedo'),
					extraterrestrialWM2: cell(row, 'dni_extra'),
					sky: row.model === 'isotropic' ? 'isotropic' : 'hay-davies',
				},
			).totalWM2,
	}),
);

// Cells, power, losses

const cellRows: EvidenceRow[] = every(readTable('solar/pv_cell_temperature_dc_power.csv'), 6, 1).flatMap(
	(row): EvidenceRow[] => {
		const weather = {
			planeWM2: cell(row, 'poa_w_m2'),
			airC: cell(row, 'temp_air_c'),
			windMS: cell(row, 'wind_m_s'),
		};
		const mounting = mountings[row.sapm_mount as keyof typeof mountings];
		const at = `${row.poa_w_m2} W/m², ${row.temp_air_c} °C, ${row.wind_m_s} m/s`;
		const cellC = () => sapmTemperatures(weather, mounting).cellC;
		const row_ = (what: string, source: string, published: number, unit: string, ours: () => number) => ({
			topic: 'photovoltaic',
			what: `${at}: ${what}`,
			source,
			mark: 'computed with a reference library' as const,
			published,
			unit,
			tolerance: { abs: 0.001 },
			ours,
		});
		return [
			row_(
				`cell, ${row.sapm_mount}`,
				'SAND2004-3535 (King et al. 2004)',
				cell(row, 'sapm_cell_c'),
				'°C',
				cellC,
			),
			row_(`cell, NOCT ${row.noct_c} °C`, 'Ross 1976, NOCT relation', cell(row, 'noct_cell_c'), '°C', () =>
				noctCellC(weather.planeWM2, weather.airC, cell(row, 'noct_c')),
			),
			row_('module, u0 25, u1 6.84', 'Faiman 2008', cell(row, 'faiman_module_c'), '°C', () =>
				faimanModuleC(weather, 25, 6.84),
			),
			row_(
				`power of ${row.pdc0_w} W`,
				'NREL/TP-6A20-62641 (PVWatts 5)',
				cell(row, 'pdc_with_sapm_cell_w'),
				'W',
				() => dcPower(cell(row, 'pdc0_w'), weather.planeWM2, cellC(), cell(row, 'gamma_pdc_per_c')),
			),
		];
	},
);

const pvWatts = 'NREL/TP-6A20-62641 (PVWatts 5)';
const lossRows: EvidenceRow[] = readTable('solar/pvwatts_losses_examples.csv').map((row, index) => ({
	topic: 'photovoltaic',
	what: `total of losses, case ${index + 1}`,
	source: pvWatts,
	mark: 'verified',
	published: cell(row, 'total_loss_pct'),
	unit: '%',
	tolerance: { abs: 0.000001 },
	ours: () =>
		100 *
		totalLoss({
			...pvWattsLosses,
			soiling: cell(row, 'soiling') / 100,
			shading: cell(row, 'shading') / 100,
			snow: cell(row, 'snow') / 100,
			mismatch: cell(row, 'mismatch') / 100,
			wiring: cell(row, 'wiring') / 100,
			connections: cell(row, 'connections') / 100,
			lightInduced: cell(row, 'lid') / 100,
			nameplate: cell(row, 'nameplate') / 100,
			age: cell(row, 'age') / 100,
			availability: cell(row, 'availability') / 100,
		}),
}));
const inverterRows: EvidenceRow[] = readTable('solar/pvwatts_inverter_examples.csv').map((row) => ({
	topic: 'photovoltaic',
	what: `inverter of ${row.pac0_w} W at ${row.pdc_w} W`,
	source: pvWatts,
	mark: 'computed with a reference library',
	published: cell(row, 'pac_w'),
	unit: 'W',
	tolerance: { abs: 0.001 },
	ours: () =>
		inverterPower(cell(row, 'pdc_w'), {
			ratedDcW: cell(row, 'pdc0_w'),
			nominalEfficiency: cell(row, 'eta_inv_nom'),
			referenceEfficiency: cell(row, 'eta_inv_ref'),
		}),
}));
const examples =
	readJson<{ id: string; given: Record<string, number>; expected: Record<string, number> }[]>(
		'solar/examples.json',
	);
function example(id: string) {
	const found = examples.find((one) => one.id === id);
	if (found === undefined) throw new Error(`no example ${id}`);
	const of = (part: 'given' | 'expected', name: string) => {
		const value = found[part][name];
		if (value === undefined) throw new Error(`${id} has no ${name}`);
		return value;
	};
	return { given: (name: string) => of('given', name), expected: (name: string) => of('expected', name) };
}
const noct = example('solar-noct-power');
const noctRows: EvidenceRow[] = [
	{
		topic: 'photovoltaic',
		what: '800 W/m², 20 °C, NOCT 45 °C: cell',
		source: 'definition of NOCT, IEC 61215',
		mark: 'verified',
		published: noct.expected('t_cell'),
		unit: '°C',
		ours: () => noctCellC(noct.given('poa'), noct.given('t_air'), noct.given('noct')),
	},
	{
		topic: 'photovoltaic',
		what: '400 W at 800 W/m² and a cell at 45 °C, −0.35 %/K',
		source: pvWatts,
		mark: 'computed with a reference library',
		published: noct.expected('pdc_w'),
		unit: 'W',
		tolerance: { abs: 0.01 },
		ours: () => dcPower(noct.given('pdc0'), noct.given('poa'), noct.expected('t_cell'), noct.given('gamma')),
	},
];

// Strings in the cold

function answer(
	topic: AnyTopic,
	given: Record<string, unknown>,
	name: string,
	context: Context = defaultContext,
) {
	const outcome = runTopic(topic, given, context);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	const found = outcome.sizing.results.find((one) => one.name === name);
	if (found === undefined) throw new Error(`no result ${name}`);
	return found.value;
}

const nec = 'NFPA 70 (NEC 2017), Table 690.7(A)';
const coldRows: EvidenceRow[] = readTable('solar/nec_690_7_a_voltage_correction.csv').flatMap(
	(row): EvidenceRow[] =>
		[cell(row, 'ambient_c_from'), cell(row, 'ambient_c_to')].map((lowC) => ({
			topic: 'array',
			what: `${lowC} °C: open-circuit voltage of 2 in series of 20 V`,
			source: nec,
			mark: 'verified',
			published: 40 * cell(row, 'factor'),
			unit: 'V',
			tolerance: { abs: 1e-9 },
			ours: () =>
				answer(array, { panels: 2, series: 2, panelW: 100, vocV: 20, iscA: 6.5, lowC }, 'coldVoltage'),
		})),
);
const coefficient = example('solar-voc-coefficient');
const at18 = example('solar-voc-33');
const coefficientRows: EvidenceRow[] = [
	{
		topic: 'array',
		what: '14 in series of 49.5 V, −0.27 %/K, −10 °C',
		source: 'NEC 690.7(A)(1), worked example',
		mark: 'verified',
		published: coefficient.expected('voc_max'),
		unit: 'V',
		tolerance: { abs: 0.1 },
		ours: () =>
			answer(
				array,
				{ series: 14, panelW: 400, vocV: 49.5, vocPerK: -0.0027, lowC: -10, bankV: 48 },
				'coldVoltage',
			),
	},
	{
		topic: 'array',
		what: 'factor at −0.27 %/K and −10 °C',
		source: 'NEC 690.7(A)(1), worked example',
		mark: 'verified',
		published: coefficient.expected('factor'),
		unit: '',
		tolerance: { abs: 0.00005 },
		ours: () => coldFactor(-10, -0.0027).factor,
	},
	{
		topic: 'array',
		what: '37.8 V, −0.33 %/K, −18 °C, by the coefficient',
		source: 'NEC 690.7(A)(1)',
		mark: 'computed with a reference library',
		published: at18.expected('coefficient_method_v'),
		unit: 'V',
		tolerance: { abs: 0.001 },
		ours: () => stringVocV(37.8, 1, coldFactor(-18, -0.0033).factor),
	},
	{
		topic: 'array',
		what: '37.8 V, −18 °C, by the table',
		source: nec,
		mark: 'computed with a reference library',
		published: at18.expected('table_method_v'),
		unit: 'V',
		tolerance: { abs: 0.001 },
		ours: () => stringVocV(37.8, 1, coldFactor(-18, null).factor),
	},
	{
		topic: 'array',
		what: '10 A short-circuit: 156.25 % for conductors and protection',
		source: 'NEC 690.8(A)(1) and (B)(1)',
		mark: 'from memory',
		published: 15.625,
		unit: 'A',
		ours: () => answer(array, { panelW: 200, vocV: 24, iscA: 10, lowC: 0 }, 'conductorCurrent'),
	},
];

// Day sums outside the air, declination, day length, hourly shape

const fao = example('solar-fao56-8');
/** The paper's own one-term declination [°] and distance go in (equations 23 and 24): our day sum is judged alone. */
const faoDeclinationDeg = (dayNumber: number) =>
	(0.409 * Math.sin((2 * Math.PI * dayNumber) / 365 - 1.39) * 180) / Math.PI;
function faoDay(latitudeDeg: number, dayNumber: number): number {
	// 0.0820 MJ/m² a minute.
	const normalWM2 = (0.082e6 / 60) * (1 + 0.033 * Math.cos((2 * Math.PI * dayNumber) / 365));
	return 3.6 * extraterrestrialDay(latitudeDeg, faoDeclinationDeg(dayNumber), normalWM2);
}
const faoPaper = 'FAO Irrigation and Drainage Paper 56';
const faoRows: EvidenceRow[] = [
	{
		topic: 'irradiation outside the air',
		what: 'example 8: 20° south, day 246',
		source: faoPaper,
		mark: 'verified',
		published: fao.expected('ra_mj_m2_day'),
		unit: 'MJ/m²',
		tolerance: { abs: 0.1 },
		ours: () => faoDay(fao.given('lat'), fao.given('day_of_year')),
	},
	{
		topic: 'irradiation outside the air',
		what: 'example 9: daylight hours, 20° south, day 246',
		source: faoPaper,
		mark: 'from memory',
		published: 11.7,
		unit: 'h',
		tolerance: { abs: 0.05 },
		ours: () => (2 * sunsetHourAngleDeg(-20, faoDeclinationDeg(246))) / 15,
	},
	// Table 2.6 is for the 15th of the month and rounded to 0.1 MJ/m².
	...(
		[
			[40, [15.0, 20.4, 27.2, 34.7, 39.7, 41.9, 40.8, 36.7, 30.0, 22.5, 16.3, 13.6]],
			[0, [36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6]],
		] as const
	).flatMap(([latitudeDeg, values]) =>
		values.map(
			(published, index): EvidenceRow => ({
				topic: 'irradiation outside the air',
				what: `Table 2.6: ${latitudeDeg}° north, month ${index + 1}`,
				source: faoPaper,
				mark: 'from memory',
				published,
				unit: 'MJ/m²',
				tolerance: { abs: 0.1 },
				ours: () => faoDay(latitudeDeg, dayOfYear(Date.UTC(2026, index, 15))),
			}),
		),
	),
];

const duffie = 'Duffie and Beckman, Solar Engineering of Thermal Processes, 4th ed.';
const declinationOn = (month: number, day: number) =>
	sunGeocentric(momentMs(2026, month, day, 12)).declinationDeg;
const meanDays: EvidenceRow[] = [
	-20.9, -13.0, -2.4, 9.4, 18.8, 23.1, 21.2, 13.5, 2.2, -9.6, -18.9, -23.0,
].map((published, index) => ({
	topic: 'sun position',
	what: `Table 1.6.1: declination on the mean day of month ${index + 1}`,
	source: duffie,
	mark: 'from memory',
	published,
	unit: '°',
	// Cooper's one-term sine in the table, the true sun in ours: up to 1° apart near the equinoxes.
	tolerance: { abs: 1 },
	ours: () => declinationOn(index + 1, meanDayOfMonth[index] as number),
}));
const sap = 'SAP 2012 (BRE), Table U3';
const sapDeclinations: EvidenceRow[] = [
	-20.7, -12.8, -1.8, 9.8, 18.8, 23.1, 21.2, 13.7, 2.9, -8.7, -18.4, -23.0,
].map((published, index) => ({
	topic: 'sun position',
	what: `solar declination of month ${index + 1}`,
	source: sap,
	mark: 'from memory',
	published,
	unit: '°',
	// The month's representative day in the table is not stated to the day.
	tolerance: { abs: 1 },
	ours: () => declinationOn(index + 1, meanDayOfMonth[index] as number),
}));
const shapeRows: EvidenceRow[] = [
	{
		topic: 'hourly shape',
		what: 'example 2.13.2: share of the day from 13 h to 14 h, 43° north, 23 August',
		source: duffie,
		mark: 'from memory',
		published: 0.118,
		unit: '',
		tolerance: { abs: 0.002 },
		ours: () => globalHourShare(22.5, sunsetHourAngleDeg(43, declinationOn(8, 23))),
	},
	{
		topic: 'irradiation outside the air',
		what: 'example 1.10.1: 43° north, 15 April',
		source: duffie,
		mark: 'from memory',
		published: 33.8,
		unit: 'MJ/m²',
		tolerance: { abs: 0.35 },
		ours: () => 3.6 * extraterrestrialDay(43, declinationOn(4, 15), extraterrestrial(105, 1367)),
	},
];
const dayLengths: EvidenceRow[] = (
	[
		['40° north, 21 June', 40, 6, 21, 15 + 1 / 60],
		['40° north, 21 December', 40, 12, 21, 9 + 20 / 60],
		['equator, 21 March', 0, 3, 21, 12 + 7 / 60],
	] as const
).map(([what, latitudeDeg, month, day, published]) => ({
	topic: 'sun position',
	what: `length of the day, ${what}`,
	source: 'US Naval Observatory, duration of daylight tables',
	mark: 'from memory',
	published,
	unit: 'h',
	// Printed to the minute.
	tolerance: { abs: 1.2 / 60 },
	ours: () => {
		const { sunriseMs, sunsetMs } = sunDay(momentMs(2026, month, day, 12), { latitudeDeg, longitudeDeg: 0 });
		return ((sunsetMs as number) - (sunriseMs as number)) / 3_600_000;
	},
}));

// The average day against hourly years, and against the monthly means it starts from

const months = ['01', '02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12'] as const;

function stationOf(id: string) {
	const found = stationNames().find((station) => station.id === id);
	if (found === undefined) throw new Error(`no station ${id}`);
	return climateRow(found.index);
}

/** The array of the hourly runs: PVWatts losses, no reflection; their wind is the file's, ours its usual mean. */
function hourlyArray(row: Row): PvArray {
	return {
		ratedW: 1000,
		surface: { tiltDeg: cell(row, 'tilt_deg'), azimuthDeg: cell(row, 'azimuth_deg') },
		powerPerK: -0.0035,
		mounting: mountings.close_mount_glass_glass,
		windMS: 3.5,
		albedo: 0.2,
		reflection: false,
		losses: totalLoss(pvWattsLosses),
		shading: 0,
		controllerEfficiency: 1,
	};
}

const hourlySource = 'NREL TMY3 hours run through the open solar library pvlib-python 0.15';
const hourlyRows: EvidenceRow[] = readTable('solar/tmy3_hourly_simulation.csv').flatMap(
	(row): EvidenceRow[] => {
		const year = () => yearYield(stationOf(row.usaf_id as string), hourlyArray(row));
		const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
		const sum = (pick: (one: ReturnType<typeof year>[number]) => number) =>
			year().reduce((total, one, index) => total + pick(one) * (days[index] as number), 0);
		const what = `${row.name}, tilt ${row.tilt_deg}°`;
		const base = { topic: 'solar', source: hourlySource, mark: 'computed with a reference library' as const };
		return [
			{
				...base,
				what: `${what}: year on the plane`,
				published: cell(row, 'poa_kwh_m2_year'),
				unit: 'kWh/m²',
				tolerance: { rel: 0.01 },
				ours: () => sum((one) => one.planeKWhM2),
			},
			{
				...base,
				what: `${what}: year from 1 kW, direct current`,
				published: cell(row, 'dc_kwh_per_kwp_year'),
				unit: 'kWh',
				// One mean day a month in place of its 30: the method may lie 3 to 6 % off, month by month.
				tolerance: { rel: 0.025 },
				ours: () => sum((one) => one.batteryWh / 1000),
			},
			...(['01', '04', '07', '10'] as const).map(
				(month): EvidenceRow => ({
					...base,
					what: `${what}: month ${month} from 1 kW, direct current`,
					published: cell(row, `dc_kwh_per_kwp_day_${month}`),
					unit: 'kWh a day',
					// Up to 6 %; where the sun hardly rises (Fairbanks in October and January) up to 0.13 kWh.
					tolerance: { abs: Math.max(0.06 * cell(row, `dc_kwh_per_kwp_day_${month}`), 0.13) },
					ours: () =>
						dayYield(stationOf(row.usaf_id as string), Number(month), hourlyArray(row)).batteryWh / 1000,
				}),
			),
		];
	},
);

const datasetNames: Readonly<Record<string, string>> = {
	TMY3: 'NREL TMY3 (NREL/TP-581-43156)',
	IWEC: 'ASHRAE IWEC',
	RMY: 'Representative Meteorological Year, Australia',
	NIWA: 'NIWA typical years, New Zealand',
	IGDG: 'IGDG, Italy',
	IMGW: 'IMGW typical years, Poland',
	SWEC: 'SWEC, Spain',
	CWEC: 'CWEC 2016, Canada (ASHRAE 2017)',
};
/** Two stations of each data set, a summer and a winter month: the hours must add up to the monthly mean again. */
const sunHourRows: EvidenceRow[] = Object.entries(datasetNames).flatMap(([dataset, source]) =>
	every(
		stationNames().filter((station) => station.dataset === dataset),
		dataset === 'CWEC' ? 2 : dataset === 'TMY3' ? 251 : 13,
		1,
	)
		.slice(0, dataset === 'TMY3' ? 4 : 2)
		.flatMap((station): EvidenceRow[] => {
			const row = climateRow(station.index);
			const table =
				dataset === 'TMY3'
					? 'climate_monthly_usa_tmy3'
					: dataset === 'CWEC'
						? 'climate_monthly_canada'
						: 'climate_monthly_world';
			const published = readTable(`solar/${table}.csv`).find(
				(one) => one.name === station.station && one.id === station.id,
			);
			if (published === undefined) throw new Error(`${station.station} is not in ${table}`);
			return [1, 7].map((month) => ({
				topic: 'solar',
				what: `${station.station}, month ${month}: sun hours on a flat panel`,
				source,
				mark: 'verified',
				published: cell(published, `ghi_${months[month - 1]}`),
				unit: 'kWh/m²',
				// The beam of the last minutes before sunset is kept finite.
				tolerance: { rel: 0.003 },
				ours: () =>
					dayYield(row, month, {
						...hourlyArray({ tilt_deg: '0', azimuth_deg: '180' }),
						reflection: true,
					}).planeKWhM2,
			}));
		}),
);

const topicRows: EvidenceRow[] = (
	[
		['Phoenix', 'PHOENIX', 'Phoenix Sky Harbor Intl AP', 6],
		['Fairbanks', 'FAIRBANKS', 'Fairbanks Intl Arpt', 3],
		['Miami', 'MIAMI', 'Miami Intl AP', 12],
	] as const
).map(([place, , station, month]) => {
	const published = readTable('solar/climate_monthly_usa_tmy3.csv').find((row) => row.name === station);
	if (published === undefined) throw new Error(station);
	return {
		topic: 'solar',
		what: `"${place}" in month ${month}: sun hours of the answer`,
		source: 'NREL TMY3 (NREL/TP-581-43156)',
		mark: 'verified' as const,
		published: cell(published, `ghi_${months[month - 1]}`),
		unit: 'kWh/m²',
		tolerance: { rel: 0.003 },
		ours: () => answer(solar, { place: `${place}`, month, panelW: 100 }, 'sunHours'),
	};
});

const lows: EvidenceRow[] = ['Denver', 'Miami', 'Minneapolis', 'Munich', 'Calgary'].map((name) => {
	const found = lookUpPlace(name);
	if (found.kind !== 'found') throw new Error(name);
	const place: Place = found.place;
	const tables = ['usa_tmy3', 'canada', 'world'].flatMap((table) =>
		readTable(`solar/climate_monthly_${table}.csv`),
	);
	const row = tables.find((one) => one.name === place.station && one.id === place.id);
	if (row === undefined || row.extreme_annual_min_mean === '') throw new Error(`${name} has no extreme`);
	return {
		topic: 'array',
		what: `${name} (${place.stationName}): record low for the open-circuit voltage`,
		source: 'ASHRAE Handbook of Fundamentals, climatic design conditions',
		mark: 'verified',
		published: cell(row, 'extreme_annual_min_mean'),
		unit: '°C',
		ours: () => recordLow(place).valueC,
	};
});

export const rows: readonly EvidenceRow[] = [
	...spa,
	...textbook,
	...seasons,
	...apsides,
	...positionRows,
	...clearRows,
	...planeRows,
	...cellRows,
	...lossRows,
	...inverterRows,
	...noctRows,
	...coldRows,
	...coefficientRows,
	...faoRows,
	...meanDays,
	...sapDeclinations,
	...shapeRows,
	...dayLengths,
	...hourlyRows,
	...sunHourRows,
	...topicRows,
	...lows,
];
