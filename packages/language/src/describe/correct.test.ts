import { type Change, type Context, changed, emptyVan, type Van } from '@lugbook/core';
import { describe, expect, test } from 'vitest';
import { changesFor } from './changes.js';
import { readCorrection } from './correct.js';
import { describe as readDescription } from './describe.js';

const us: Context = { region: 'us', units: 'us', language: 'en' };

function told(text: string): Van {
	return changed(emptyVan, changesFor(emptyVan, readDescription(text, us)).changes);
}

const van = told(
	'two 100 Ah lithium batteries 12 V, 2000 W inverter, fridge 50 W, induction cooktop 1800 W, roof fan 30 W, a second roof fan of 20 W, 2 x 200 W panels, MPPT 100/30, 30 gal fresh tank',
);

function put(
	text: string,
	last: string | null = null,
): { van: Van; changes: readonly Change[]; notes: readonly string[] } {
	const correction = readCorrection(text, van, last, us);
	const changes = correction?.changes ?? [];
	return { van: changed(van, changes), changes, notes: correction?.notes ?? [] };
}

const valuesOf = (after: Van, id: string) => after.pieces.find((piece) => piece.id === id)?.values;

describe('corrections in words', () => {
	test.each([
		['the fridge is 60 W', 'fridge', { powerW: 60 }],
		['fridge is now 4 A', 'fridge', { currentA: 4 }],
		['make the bank 24 V', 'battery', { bankV: 24, unitAh: 100, unitCount: 2 }],
		['use 24 V for the whole van', 'battery', { bankV: 24 }],
		['make it 24 V for the whole van', 'battery', { bankV: 24 }],
		['change the inverter to 3000 W', 'inverter', { ratedW: 3000 }],
		['the batteries are 200 Ah each', 'battery', { unitAh: 200 }],
		['the second fan is 25 W', 'fan-2', { powerW: 25 }],
		['cambia la nevera a 60 W', 'fridge', { powerW: 60 }],
		['der Kühlschrank hat 60 W', 'fridge', { powerW: 60 }],
		['the fresh tank is 40 gal', 'fresh-tank', { volumeL: 40 * 3.785411784 }],
	])('%s', (text, id, values) => {
		expect(valuesOf(put(text).van, id)).toMatchObject(values);
	});

	test.each([
		['no, two of them', 'fridge', { count: 2, powerW: 50 }],
		['actually 80 W', 'fridge', { powerW: 80 }],
		['no, four of them', 'battery', { unitCount: 4, unitAh: 100 }],
		['60 W', 'fridge', { powerW: 60 }],
	])('"%s" is about the piece told of last', (text, id, values) => {
		expect(valuesOf(put(text, id).van, id)).toMatchObject(values);
	});

	test('drop takes away and is known not to be there', () => {
		const { van: after } = put('drop the cooktop');
		expect(after.pieces.some(({ kind }) => kind === 'cooktop')).toBe(false);
		expect(after.absent).toContain('cooktop');
		expect(put('remove the roof fan of 20 W').van.pieces.filter(({ kind }) => kind === 'fan')).toHaveLength(
			1,
		);
		expect(
			put('take out the second fan')
				.van.pieces.filter(({ kind }) => kind === 'fan')
				.map(({ id }) => id),
		).toEqual(['fan']);
	});

	test('add brings in a new piece beside those that are there', () => {
		const { van: after } = put('add a 100 W panel');
		expect(after.pieces.filter(({ kind }) => kind === 'solar').map(({ values }) => values.panelW)).toEqual([
			200, 100,
		]);
		expect(valuesOf(put('add a CO alarm').van, 'co-alarm')).toEqual({});
	});

	test('swap does both', () => {
		const { van: after } = put('replace the cooktop with a gas stove');
		expect(after.pieces.filter(({ kind }) => kind === 'cooktop').map(({ values }) => values.fuel)).toEqual([
			'gas',
		]);
	});

	test('no inverter takes the inverter away', () => {
		expect(put('no inverter yet').van.pieces.some(({ kind }) => kind === 'inverter')).toBe(false);
	});

	test('what is not there can not be dropped', () => {
		const { changes, notes } = put('drop the generator');
		expect(changes).toEqual([]);
		expect(notes[0]).toContain('There is no generator');
	});

	test('an impossible value changes nothing and says what would be right', () => {
		const { changes, notes } = put('no, -5 W', 'fridge');
		expect(changes).toEqual([]);
		expect(notes.join(' ')).toMatch(/power must be from/);
	});

	test.each(['what wire for the fridge?', 'hello', 'thanks', '', 'how long will it last?'])(
		'"%s" corrects nothing',
		(text) => {
			expect(readCorrection(text, van, null, us)?.changes ?? []).toEqual([]);
		},
	);
});
