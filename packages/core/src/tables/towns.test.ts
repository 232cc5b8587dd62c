import { expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import { townGroups, unpackTown } from './towns.js';

test('every town of the reference list is there, to a twentieth of a degree and a few per cent of its people', () => {
	const ours = townGroups().flatMap(({ country, state, towns }) =>
		towns.map((packed) => ({ country, state: state ?? '', ...unpackTown(packed) })),
	);
	const rows = readTable('solar/towns.csv');
	expect(ours.length).toBe(rows.length);
	const key = (country: string, state: string, name: string, lat: number, lon: number) =>
		`${country}|${state}|${name}|${lat.toFixed(1)}|${lon.toFixed(1)}`;
	const known = new Map(
		ours.map((town) => [key(town.country, town.state, town.name, town.latitudeDeg, town.longitudeDeg), town]),
	);
	const near = (value: number) => [Math.floor(value * 10) / 10, Math.ceil(value * 10) / 10];
	for (const row of rows) {
		const found = near(Number(row.lat))
			.flatMap((lat) => near(Number(row.lon)).map((lon) => [lat, lon] as const))
			.map(([lat, lon]) =>
				known.get(key(row.country as string, row.state as string, row.name as string, lat, lon)),
			)
			.find(
				(town) =>
					town !== undefined &&
					Math.abs(town.latitudeDeg - Number(row.lat)) <= 0.0501 &&
					Math.abs(town.longitudeDeg - Number(row.lon)) <= 0.0501 &&
					Math.abs(town.people / Number(row.population) - 1) < 0.03,
			);
		expect(found, JSON.stringify(row)).toBeDefined();
	}
});
