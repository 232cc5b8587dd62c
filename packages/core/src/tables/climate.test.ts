import { expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import { type ClimateRow, climateRow, type Monthly, stationNames } from './climate.js';

const months = Array.from({ length: 12 }, (_, index) => String(index + 1).padStart(2, '0'));
const rows = ['usa_tmy3', 'canada', 'world'].flatMap((name) =>
	readTable(`solar/climate_monthly_${name}.csv`),
);

test('every station of the reference tables is there, in their order', () => {
	expect(stationNames().length).toBe(1020 + 5 + 444);
	expect(stationNames().map((station) => station.station.replaceAll("'", '`'))).toEqual(
		rows.map((row) => (row.name as string).replaceAll("'", '`')),
	);
});

const monthly: readonly (readonly [string, (row: ClimateRow) => Monthly | null])[] = [
	['ghi', (row) => row.ghiKWhM2],
	['dni', (row) => row.dniKWhM2],
	['dhi', (row) => row.dhiKWhM2],
	['t', (row) => row.meanC],
	['tdaymin', (row) => row.dayMinC],
	['tdaymax', (row) => row.dayMaxC],
];
const single: readonly (readonly [string, (row: ClimateRow) => number | null])[] = [
	['lat', (row) => row.latitudeDeg],
	['lon', (row) => row.longitudeDeg],
	['elev_m', (row) => row.elevationM],
	['tz_h', (row) => row.utcOffsetH],
	['tmy_min', (row) => row.typicalMinC],
	['tmy_p0_4', (row) => row.typicalP04C],
	['tmy_p1', (row) => row.typicalP1C],
	['tmy_p99', (row) => row.typicalP99C],
	['tmy_max', (row) => row.typicalMaxC],
	['design_heat_99_6', (row) => row.heat996C],
	['design_heat_99', (row) => row.heat99C],
	['design_cool_0_4', (row) => row.cool04C],
	['design_cool_1', (row) => row.cool1C],
	['extreme_annual_min_mean', (row) => row.extremeMinC],
	['extreme_annual_max_mean', (row) => row.extremeMaxC],
];

test('every cell is the published one, blank cells stay blank', () => {
	const wrong: string[] = [];
	for (const [index, row] of rows.entries()) {
		const ours = climateRow(index);
		const compare = (cell: string, value: number | null | undefined) => {
			const published = row[cell] ?? '';
			const same = published === '' ? value === null || value === undefined : value === Number(published);
			if (!same) wrong.push(`${row.name} ${cell}: ${published}, ours ${value}`);
		};
		for (const [name, pick] of monthly) {
			for (const [month, label] of months.entries()) compare(`${name}_${label}`, pick(ours)?.[month]);
		}
		for (const [name, pick] of single) compare(name, pick(ours));
	}
	expect(wrong).toEqual([]);
});

test('the station list knows which stations have an extreme minimum', () => {
	for (const [index, station] of stationNames().entries()) {
		expect(station.hasExtreme, station.station).toBe(climateRow(index).extremeMinC !== null);
	}
});

test('the means of a month lie between its mean daily minimum and maximum', () => {
	for (const index of stationNames().keys()) {
		const { meanC, dayMinC, dayMaxC, station } = climateRow(index);
		for (const [month, mean] of meanC.entries()) {
			if (dayMinC === null || dayMaxC === null) continue;
			expect(mean, `${station} ${month + 1}`).toBeGreaterThan(dayMinC[month] as number);
			expect(mean, `${station} ${month + 1}`).toBeLessThan(dayMaxC[month] as number);
		}
	}
});
