import { describe, expect, test } from 'vitest';
import type { Context } from '../topic/context.js';
import { topicNamed } from '../topics/index.js';
import { borrowFrom } from './borrow.js';
import { changed, emptyVan } from './van.js';

const us: Context = { region: 'us', units: 'us', language: 'en' };
const van = changed(emptyVan, [
	{
		change: 'add',
		id: 'battery',
		kind: 'battery',
		values: { unitAh: 100, unitCount: 2, bankV: 12, chemistry: 'lifepo4' },
	},
	{ change: 'add', id: 'solar', kind: 'solar', values: { panelW: 200, count: 2 } },
	{ change: 'add', id: 'fridge', kind: 'fridge', values: { powerW: 45 } },
	{ change: 'add', id: 'inverter', kind: 'inverter', values: { ratedW: 2000 } },
	{ change: 'add', id: 'alternator', kind: 'alternator', values: { ratingA: 180 } },
	{ change: 'add', id: 'fresh-tank', kind: 'fresh-tank', values: { volumeL: 100 } },
	{ change: 'add', id: 'gray-tank', kind: 'gray-tank', values: { volumeL: 50 } },
]);

function taken(topicName: string, given: Record<string, unknown>, named: readonly string[] = []) {
	const topic = topicNamed(topicName);
	if (topic === null) throw new Error(`no topic ${topicName}`);
	return Object.fromEntries(borrowFrom(van, topic, given, named, us).map(({ name, value }) => [name, value]));
}

describe('what a question takes from its build', () => {
	test('the circuit of the piece that it names', () => {
		expect(taken('wire', { load: 'fridge', lengthM: 5 }, ['fridge'])).toEqual({ powerW: 45, voltageV: 12 });
	});

	test('the bank, for its charging time', () => {
		expect(taken('charge', { chargerA: 40 })).toEqual({
			unitAh: 100,
			unitCount: 2,
			bankV: 12,
			chemistry: 'lifepo4',
		});
		expect(taken('charge', { chargerA: 40, unitAh: 300 })).not.toHaveProperty('unitCount');
	});

	test('burners and cylinders of the fuel it asks about, each with what its plate rates', () => {
		const burning = changed(emptyVan, [
			{ change: 'add', id: 'heater', kind: 'heater', values: { fuel: 'diesel', outputW: 4000 } },
			{ change: 'add', id: 'cooktop', kind: 'cooktop', values: { fuel: 'gas' } },
			{ change: 'add', id: 'propane', kind: 'propane', values: { contentKg: 5, count: 2 } },
		]);
		const of = (given: Record<string, unknown>, named: readonly string[] = []) => {
			const topic = topicNamed('fuel');
			if (topic === null) throw new Error('no topic fuel');
			const borrowed = borrowFrom(burning, topic, given, named, us);
			return Object.fromEntries(borrowed.map(({ name, value }) => [name, value]));
		};
		expect(of({ fuel: 'diesel', wantedH: 72 })).toEqual({
			burners: [{ name: 'heater', powerW: 4000, rating: 'output' }],
		});
		expect(of({ fuel: 'propane' })).toEqual({ amountKg: 5, containers: 2, burners: [{ name: 'cooktop' }] });
		// Two fuels aboard: which is meant has to be asked; so too what a burner that is not aboard burns.
		expect(of({ volumeL: 10 })).toEqual({});
		expect(of({ volumeL: 10, burners: [{ name: 'oven' }] })).toEqual({});
		expect(of({ volumeL: 10 }, ['heater'])).toEqual({
			fuel: 'diesel',
			burners: [{ name: 'heater', powerW: 4000, rating: 'output' }],
		});
	});

	test('nothing that it says itself', () => {
		expect(taken('wire', { currentA: 40, voltageV: 24, lengthM: 5 }, ['fridge'])).toEqual({});
	});

	test('no count of panels beside panels of its own, no count of batteries beside a bank of its own', () => {
		expect(taken('simulate', { panelW: 400, place: 'tucson' })).not.toHaveProperty('panels');
		expect(taken('simulate', { place: 'tucson' })).toMatchObject({
			panelW: 200,
			panels: 2,
			unitAh: 100,
			unitCount: 2,
		});
		expect(taken('runtime', { unitAh: 200, loads: [{ name: 'tv', powerW: 50 }] })).not.toHaveProperty(
			'unitCount',
		);
	});

	test('figures for things that it names without any', () => {
		expect(taken('runtime', { loads: [{ name: 'fridge' }] }).loads).toEqual([{ name: 'fridge', powerW: 45 }]);
		expect(taken('inverter', { loads: [{ name: 'inverter' }] }).loads).toEqual([
			{ name: 'inverter', powerW: 2000 },
		]);
		// What charges is no load.
		expect(taken('battery', { loads: [{ name: 'alternator', durationH: 2 }] })).not.toHaveProperty('loads');
	});

	test('the water of the tank that is named, and of none where two might be meant', () => {
		expect(taken('freeze', { what: 'tank', outsideC: -10 }, ['fresh-tank'])).toMatchObject({ volumeL: 100 });
		expect(taken('freeze', { what: 'tank', outsideC: -10 })).not.toHaveProperty('volumeL');
	});

	test('each value says what it rests on', () => {
		const topic = topicNamed('wire');
		if (topic === null) throw new Error('no wire');
		expect(borrowFrom(van, topic, { load: 'fridge' }, ['fridge'], us)[0]).toEqual({
			name: 'powerW',
			value: 45,
			rests: [{ item: 'fridge', field: 'powerW', value: 45 }],
		});
	});
});
