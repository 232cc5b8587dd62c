import { describe, expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import { fittingK, pexSizes, pexSizeWritten, pipeSizePattern } from './pipes.js';

describe('PEX tubing', () => {
	test.each(readTable('water/pex_sdr9.csv').map((row) => [row.nominal_in ?? '', row] as const))(
		'%s in is the print of ASTM F876',
		(nominal, row) => {
			const size = pexSizes.find((one) => one.name === `${nominal} in PEX`);
			expect(size?.outsideMm).toBeCloseTo(Number(row.od_in) * 25.4, 9);
			expect(size?.averageBoreMm).toBeCloseTo(Number(row.id_avg_in) * 25.4, 9);
			expect(size?.smallestBoreMm).toBeCloseTo(Number(row.id_min_in) * 25.4, 9);
		},
	);

	test('the bore a run is judged by is never the larger one', () => {
		for (const size of pexSizes) expect(size.smallestBoreMm).toBeLessThan(size.averageBoreMm);
	});
});

describe('sizes as people write them', () => {
	test.each([
		['1/2 pex', '1/2 in PEX'],
		['1/2" pex', '1/2 in PEX'],
		['3/8 inch pex', '3/8 in PEX'],
		['half inch pex', '1/2 in PEX'],
		['½ pex', '1/2 in PEX'],
		['three quarter inch pex', '3/4 in PEX'],
		['1 in pex', '1 in PEX'],
		['pex 3/4', '3/4 in PEX'],
		['16mm pipe', '16 mm PEX'],
		['tubería de 20 mm', '20 mm PEX'],
		['rohr 12 mm', '12 mm PEX'],
	])('%s', (written, name) => {
		const found = new RegExp(pipeSizePattern, 'iu').exec(`2 gpm through ${written}, 20 ft`)?.[0] ?? '';
		expect(pexSizeWritten(found)?.name).toBe(name);
	});

	test.each(['20 ft', '2 gpm', '25 psi', '11/2', '10 mm hose', 'pipe 6 m', '1/2 gpm'])(
		'%s is no size of tubing',
		(text) => {
			expect(new RegExp(pipeSizePattern, 'iu').test(text)).toBe(false);
		},
	);

	test('a size that is not sold is not found', () => {
		expect(pexSizeWritten('7/8 pex')).toBeNull();
		expect(pexSizeWritten('pex')).toBeNull();
	});
});

test('a fitting loses less in a wider pipe, and an elbow more than an open valve', () => {
	for (const boreMm of [9, 12, 18, 24]) {
		expect(fittingK('elbow', boreMm)).toBeGreaterThan(fittingK('valve', boreMm));
		expect(fittingK('tee', boreMm)).toBeGreaterThanOrEqual(fittingK('elbow', boreMm));
	}
	expect(fittingK('elbow', 9)).toBeGreaterThan(fittingK('elbow', 24));
});
