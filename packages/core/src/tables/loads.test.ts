import { describe, expect, test } from 'vitest';
import { typicalLoad, typicalLoadNamed, typicalLoadSource, typicalLoads, typicalLoadWords } from './loads.js';

describe('typical loads', () => {
	test('are common practice and say so', () => {
		expect(typicalLoadSource.mark).toBe('practice');
	});

	test.each(typicalLoads)('$name is a load that can be', (load) => {
		for (const powerW of Object.values(load.powerW)) {
			expect(powerW).toBeGreaterThan(0);
			expect(powerW).toBeLessThanOrEqual(2500);
		}
		expect(load.hoursPerDay).toBeGreaterThan(0);
		expect(load.hoursPerDay).toBeLessThanOrEqual(24);
		expect(load.duty).toBeGreaterThan(0);
		expect(load.duty).toBeLessThanOrEqual(1);
		expect(load.surgeFactor).toBeGreaterThanOrEqual(1);
		expect(load.shedOrder).toBeGreaterThanOrEqual(1);
	});

	test('each word leads back to its own load', () => {
		for (const load of typicalLoads) {
			for (const word of load.words) expect([word, typicalLoad(word)?.name]).toEqual([word, load.name]);
		}
		expect(new Set(typicalLoadWords).size).toBe(typicalLoadWords.length);
	});

	test.each([
		['Fridge', 'fridge'],
		['two fans', 'fan'],
		['roof fan', 'roof fan'],
		['the water heater', 'water heater'],
		['heater', 'diesel heater'],
		['AC', 'air conditioner'],
		['a/c', 'air conditioner'],
		['12V AC', '12 V air conditioner'],
		['Kühlschrank', 'fridge'],
		['cocina de inducción', 'induction cooktop'],
		['laptops', 'laptop'],
		['power tool charger', 'tool charger'],
	])('"%s" is the %s', (said, name) => {
		expect(typicalLoad(said)?.name).toBe(name);
	});

	test('words that only contain a known one are not it', () => {
		expect(typicalLoad('fantasy')).toBeNull();
		expect(typicalLoad('acme box')).toBeNull();
		expect(typicalLoad('')).toBeNull();
	});

	test('a name that is not there is an error of the program', () => {
		expect(typicalLoadNamed('kettle').mains).toBe(true);
		expect(() => typicalLoadNamed('zeppelin')).toThrow('zeppelin');
	});
});
