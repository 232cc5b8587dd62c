import { expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import {
	dcRatingsA,
	iecRatingsA,
	lowVoltageSmallConductors,
	necRatingsA,
	necSmallConductors,
} from './devices.js';

const largestStocked = 600;

test('mains ratings are those of NEC 240.6(A) that are no fuse-only sizes, up to 600 A', () => {
	const printed = readTable('electrical/nec240_6_A_standard_ratings.csv')
		.filter((row) => row.fuse_only === 'no' && Number(row.rating_A) <= largestStocked)
		.map((row) => Number(row.rating_A));
	expect(necRatingsA).toEqual(printed);
});

test('direct-current ratings up to 80 A are the blade fuses of ISO 8820-3', () => {
	const blades = readTable('electrical/fuse_blade_ratings.csv')
		.filter((row) => row.status === 'VERIFIED' && row.body !== 'mini')
		.flatMap((row) => (row.ratings_A ?? '').split(';').map(Number));
	const printed = [...new Set(blades)].sort((a, b) => a - b);
	expect(dcRatingsA.filter((rating) => rating <= 80)).toEqual(printed);
});

test('direct-current ratings above 80 A are standard ratings', () => {
	for (const rating of dcRatingsA.filter((one) => one > 80)) expect(necRatingsA).toContain(rating);
});

test.each([
	['NEC', necRatingsA],
	['direct current', dcRatingsA],
	['IEC', iecRatingsA],
])('%s ratings rise', (_, ratings) => {
	expect(ratings).toEqual([...new Set(ratings)].sort((a, b) => a - b));
});

test('small mains conductors are limited as in NEC 240.4(D)', () => {
	const copper = readTable('electrical/nec240_4_D_small_conductors.csv').filter(
		(row) => row.material === 'copper',
	);
	expect(necSmallConductors).toEqual(
		Object.fromEntries(copper.map((row) => [`${row.awg} AWG`, Number(row.max_overcurrent_A)])),
	);
});

test('small low-voltage conductors are limited as in NEC 552.10(E)(1)', () => {
	const rows = readTable('electrical/nec551_rv_facts.csv').filter((row) =>
		/AWG max overcurrent/.test(row.key ?? ''),
	);
	expect(rows).toHaveLength(5);
	expect(lowVoltageSmallConductors).toEqual(
		Object.fromEntries(
			rows.map((row) => [(row.key ?? '').replace(' max overcurrent', ''), Number(row.value)]),
		),
	);
});
