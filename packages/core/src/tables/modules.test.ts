import { expect, test } from 'vitest';
import { readTable } from '../../../../tests/reference/csv.js';
import { moduleClasses, moduleClassFor, necColdFactors, steepestVocPerK } from './modules.js';

test('the cold factors are those of the published table, cell by cell', () => {
	const published = readTable('solar/nec_690_7_a_voltage_correction.csv').map((row) => ({
		fromC: Number(row.ambient_c_from),
		toC: Number(row.ambient_c_to),
		factor: Number(row.factor),
	}));
	expect(necColdFactors).toEqual(published);
});

test('bands follow one another without a gap, and the colder the higher', () => {
	for (const [index, row] of necColdFactors.entries()) {
		const next = necColdFactors[index + 1];
		if (next === undefined) continue;
		expect(next.fromC).toBe(row.toC - 1);
		expect(next.factor).toBeGreaterThan(row.factor);
	}
});

test('the coefficient taken where none is known is the steepest of the typical ones for crystalline silicon', () => {
	const steepest = readTable('solar/pv_temperature_coefficients_typical.csv')
		.filter((row) => /crystalline|PERC|hetero/i.test(row.technology as string))
		.flatMap((row) => [Number(row.voc_pct_per_c_low), Number(row.voc_pct_per_c_high)]);
	expect(steepestVocPerK * 100).toBeCloseTo(Math.min(...steepest), 9);
});

test('a larger panel is never taken for one of fewer cells', () => {
	const order = Object.values(moduleClasses);
	const cells = [50, 100, 200, 230, 231, 300, 420, 421, 600].map((watts) =>
		order.indexOf(moduleClassFor(watts)),
	);
	expect(cells).toEqual(cells.toSorted((a, b) => a - b));
	for (const one of order) expect(one.vmpV).toBeLessThan(one.vocV);
});
