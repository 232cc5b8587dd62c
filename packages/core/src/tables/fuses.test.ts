import { describe, expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import {
	bladeOpening,
	fuseClasses,
	fuseClassNamed,
	interruptingRows,
	type OpeningTime,
	openingTimes,
	typeCOpening,
	typeEOpening,
} from './fuses.js';

const standards = readTable('electrical/fuse_standards_breaking_capacity.csv');

/** Printed rows that break direct current, in the order of the core's table. */
const printed = [
	standards.find((row) => row.standard === 'ISO 8820-3:2015'),
	standards.find((row) => row.standard === 'ISO 8820-12:2020'),
	standards.find((row) => row.standard === 'ISO 8820-4:2016'),
	standards.find((row) => row.standard === 'ISO 8820-5:2015'),
	standards.find((row) => row.standard === 'ISO 8820-6:2019'),
	standards.find((row) => row.standard === 'UL 248-15' && row.current_kind === 'DC'),
	standards.find((row) => row.standard === 'UL 248-8' && row.current_kind === 'DC'),
];

test.each(fuseClasses.map((fuse, index) => [fuse.name, fuse, printed[index]] as const))(
	'%s: standard, voltage, rating and breaking capacity as printed',
	(_, fuse, row) => {
		const voltages = [...(row?.rated_voltage_V ?? '').matchAll(/\d+/g)].map((match) => Number(match[0]));
		expect(fuse.standard).toBe(row?.standard);
		expect(fuse.largestRatingA).toBe(Number(row?.rated_current_max_A));
		expect(fuse.breaksA).toBe(Number(row?.breaking_capacity_A));
		expect(voltages).toContain(fuse.ratedVoltageV);
		expect(fuse.source.mark).toBe(row?.status === 'VERIFIED' ? 'verified' : 'from-memory');
		// Only the classes whose direct-current rating is optional are known by their marking.
		expect(fuse.markedUpToA === null).toBe(row?.status === 'VERIFIED');
		if (fuse.markedUpToA !== null && fuse.markedUpToA > fuse.breaksA) {
			expect(row?.text).toContain(`to ${fuse.markedUpToA / 1000} kA by maker`);
		}
	},
);

test('every direct-current row of the print is there', () => {
	const direct = standards.filter((row) => row.current_kind === 'DC');
	expect(fuseClasses).toHaveLength(direct.length);
});

describe('opening times', () => {
	const rows = readTable('electrical/fuse_time_current.csv');
	const ofFuse = (fuse: string): OpeningTime[] =>
		rows
			.filter((row) => row.fuse === fuse)
			.map((row) => ({
				share: Number(row.percent_of_rating) / 100,
				leastS: row.open_min_s === '' ? null : Number(row.open_min_s),
				mostS: row.open_max_s === '' ? null : Number(row.open_max_s),
				source: {} as OpeningTime['source'],
			}));
	const bare = (times: readonly OpeningTime[]) =>
		times.map(({ share, leastS, mostS }) => ({ share, leastS, mostS }));

	test.each([
		['standard blade 35 and 40 A', bladeOpening],
		['ISO 8820-3 type C', typeCOpening],
		['ISO 8820-3 type E (maxi)', typeEOpening],
	] as const)('%s as printed', (fuse, times) => {
		expect(bare(times)).toEqual(bare(ofFuse(fuse)));
	});

	test.each([[bladeOpening], [typeCOpening], [typeEOpening]])('more current never opens later', (times) => {
		for (const [index, point] of times.entries()) {
			const before = times[index - 1];
			if (before === undefined) continue;
			expect(point.share).toBeGreaterThan(before.share);
			if (point.mostS !== null && before.mostS !== null) expect(point.mostS).toBeLessThan(before.mostS);
			if (point.leastS !== null && before.leastS !== null) expect(point.leastS).toBeLessThan(before.leastS);
			if (point.mostS !== null && point.leastS !== null) expect(point.mostS).toBeGreaterThan(point.leastS);
		}
	});

	test('each rating finds its table', () => {
		expect(openingTimes('blade', 15)).toBe(typeCOpening);
		expect(openingTimes('blade', 40)).toBe(bladeOpening);
		expect(openingTimes('blade', 60)).toBe(typeEOpening);
		expect(openingTimes('blade', 100)).toEqual([]);
		expect(openingTimes('strip', 60)).toEqual([]);
	});
});

test('marine interrupting capacities as printed', () => {
	const rows = readTable('electrical/interrupting_capacity_battery.csv').filter((row) =>
		/Table V-A/.test(row.source ?? ''),
	);
	expect(
		interruptingRows.map((row) => [
			row.mainA,
			row.branchA,
			row.source.mark === 'verified' ? 'VERIFIED' : 'FROM MEMORY',
		]),
	).toEqual(
		rows.map((row) => [Number(row.main_breaker_min_AIC_A), Number(row.branch_breaker_min_AIC_A), row.status]),
	);
	for (const [index, row] of rows.entries()) {
		const limits = [...(row.battery_bank ?? '').matchAll(/\d+/g)].map((match) => Number(match[0]));
		const toCrankingA = interruptingRows[index]?.toCrankingA;
		if (/over/.test(row.battery_bank ?? '')) expect(toCrankingA).toBe(Number.POSITIVE_INFINITY);
		else expect(toCrankingA).toBe(limits.at(-1));
	}
});

test('a class that does not exist is a programming error', () => {
	expect(fuseClassNamed('strip').ratedVoltageV).toBe(32);
	expect(() => fuseClassNamed('glass' as never)).toThrow('no fuse class "glass"');
});
