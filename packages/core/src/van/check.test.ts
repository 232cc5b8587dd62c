import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Context } from '../topic/context.js';
import type { Field } from '../topic/field.js';
import { checkVan } from './check.js';
import type { Values } from './equipment/declare.js';
import { equipment, equipmentOf } from './equipment/index.js';
import { vanRules } from './rules/index.js';
import { type Change, changed, changeSchema, emptyVan, freeId, settled, type Van } from './van.js';

const us: Context = { region: 'us', units: 'us', language: 'en' };
const places = ['Bozeman, MT', 'Phoenix, AZ', 'Moab, UT', 'Innsbruck, Austria'];

/** Any value a field takes. */
function anyValueOf({ type }: Field): fc.Arbitrary<number | string | boolean> | null {
	switch (type.sort) {
		case 'quantity': {
			const low = Math.max(type.min, 1e-3);
			if (type.min < 0) return fc.double({ min: type.min, max: type.max, noNaN: true });
			// Figures of every size: as many between 1 and 10 as between 100 and 1000.
			return fc
				.double({ min: Math.log(low), max: Math.log(type.max), noNaN: true })
				.map((log) => Math.min(type.max, Math.max(type.min, Math.exp(log))));
		}
		case 'count':
			return fc.integer({ min: type.min, max: Math.min(type.max, type.min + 5) });
		case 'choice':
			return fc.constantFrom(...Object.keys(type.options));
		case 'flag':
			return fc.boolean();
		case 'place':
			return fc.constantFrom(...places);
		case 'month':
			return fc.integer({ min: 1, max: 12 });
		case 'conductor':
			return fc.constantFrom('14 AWG', '10 AWG', '4 AWG', '2/0 AWG');
		default:
			return null;
	}
}

const piece: fc.Arbitrary<{ kind: string; values: Values }> = fc
	.constantFrom(...equipment.map(({ kind }) => kind))
	.chain((kind) => {
		const fields = Object.entries(equipmentOf(kind).fields).flatMap(([name, field]) => {
			const value = anyValueOf(field);
			return value === null ? [] : ([[name, fc.option(value, { nil: undefined })]] as const);
		});
		return fc.record(Object.fromEntries(fields)).map((values) => ({
			kind,
			values: Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Values,
		}));
	});

const absent = fc.subarray(
	equipment.map(({ kind }) => kind),
	{ maxLength: 12 },
);

function withPiece(van: Van, kind: string, values: Values): Van {
	const known = van.pieces.find((one) => one.kind === kind);
	const own = { ...settled(kind, values, us).values };
	// Of a kind that is one a van, more is told only of what was not told yet.
	if (known !== undefined && equipmentOf(kind).single) {
		return changed(van, [{ change: 'set', id: known.id, values: { ...own, ...known.values } }]);
	}
	return changed(van, [{ change: 'add', id: freeId(van, kind), kind, values: own }]);
}

const anyVan = fc.tuple(fc.array(piece, { maxLength: 14 }), absent).map(([pieces, kinds]) => {
	const told = pieces.reduce((van, { kind, values }) => withPiece(van, kind, values), emptyVan);
	return changed(
		told,
		kinds.map((kind): Change => ({ change: 'absent', kind })),
	);
});

const dangersOf = (van: Van) =>
	new Set(
		checkVan(van, us)
			.findings.filter(({ severity }) => severity === 'danger')
			.map(({ code }) => code),
	);

describe('whatever is told of a van', () => {
	test('the check answers, the same way each time, with dangers first', () => {
		fc.assert(
			fc.property(anyVan, (van) => {
				const first = checkVan(van, us);
				expect(checkVan(van, us)).toEqual(first);
				const order = first.findings.map(({ severity }) => ['danger', 'warning', 'note'].indexOf(severity));
				expect(order).toEqual(order.toSorted((a, b) => a - b));
				for (const { text, rests } of first.findings) {
					expect(text).not.toMatch(/NaN|undefined|Infinity|null/);
					expect(rests.length).toBeGreaterThan(0);
				}
			}),
			{ numRuns: 500 },
		);
	});

	test('adding equipment hides no danger but one that it clears', () => {
		const clears = new Map(vanRules.map(({ id, clearedBy }) => [id, clearedBy]));
		fc.assert(
			fc.property(anyVan, piece, (van, { kind, values }) => {
				// A second piece of a kind that is one a van tells more of the first: nothing was added.
				fc.pre(!(equipmentOf(kind).single && van.pieces.some((one) => one.kind === kind)));
				const before = dangersOf(van);
				fc.pre(before.size > 0);
				const after = dangersOf(withPiece(van, kind, values));
				const hidden = [...before].filter(
					(code) => !after.has(code) && clears.get(code)?.includes(kind) !== true,
				);
				expect(hidden).toEqual([]);
			}),
			{ numRuns: 2000 },
		);
	});
});

describe('the fold over changes', () => {
	const fridge: Change = { change: 'add', id: 'fridge', kind: 'fridge', values: { powerW: 60 } };

	test('adds, sets, removes, and knows what is not there', () => {
		const van = changed(emptyVan, [
			{ change: 'absent', kind: 'fridge' },
			fridge,
			{ change: 'set', id: 'fridge', values: { count: 2 } },
		]);
		expect(van).toEqual({
			pieces: [{ id: 'fridge', kind: 'fridge', values: { powerW: 60, count: 2 } }],
			absent: [],
		});
		expect(changed(van, [{ change: 'remove', id: 'fridge' }])).toEqual({ pieces: [], absent: ['fridge'] });
		expect(changed(van, [{ change: 'absent', kind: 'fridge' }])).toBe(van);
	});

	test('a new power takes the place of a current told before', () => {
		const van = changed(emptyVan, [fridge, { change: 'set', id: 'fridge', values: { currentA: 4 } }]);
		expect(van.pieces[0]?.values).toEqual({ currentA: 4 });
	});

	test('what the declarations no longer know is passed over', () => {
		const gone: Change = { change: 'add', id: 'x', kind: 'steam-engine', values: {} };
		expect(changed(emptyVan, [gone, { change: 'remove', id: 'y' }])).toEqual(emptyVan);
	});

	test('names are free ones', () => {
		const van = changed(emptyVan, [fridge, { ...fridge, id: 'fridge-2' }]);
		expect(freeId(van, 'fridge')).toBe('fridge-3');
		expect(freeId(van, 'appliance', 'Coffee maker')).toBe('coffee-maker');
	});

	test('a change reads back from JSON as it was', () => {
		fc.assert(
			fc.property(piece, ({ kind, values }) => {
				const change: Change = { change: 'add', id: kind, kind, values };
				expect(changeSchema.parse(JSON.parse(JSON.stringify(change)))).toEqual(
					JSON.parse(JSON.stringify(change)),
				);
			}),
			{ numRuns: 100 },
		);
	});

	test('a value that can not be is refused with what would be right', () => {
		const { values, refusals } = settled('fridge', { powerW: 60, massKg: -3 }, us);
		expect(values).toEqual({ powerW: 60 });
		expect(refusals).toHaveLength(1);
		expect(refusals[0]?.text).toMatch(/-6\.6 lb|-3/);
		expect(refusals[0]?.instead).toMatch(/must be from/);
	});
});
