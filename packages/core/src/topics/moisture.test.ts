import { describe, expect, test } from 'vitest';
import { answered, codesOf, numberOf, numbersOf, refusal } from '../../../../tests/reference/outcome.js';
import { humidityRatio, moistVolumeM3Kg } from '../climate/psychrometrics.js';
import { moisture } from './moisture.js';

const night = { outsideC: -5, insideC: 18, people: 2, insulationMm: 25, material: 'xps', stove: 'none' };
const pressurePa = 101_325;

describe('the air it takes', () => {
	test('water in is water out: what is given off leaves with the air, just saturated at the surface', () => {
		const numbers = numbersOf(moisture, night);
		const inside = humidityRatio(numbers.ribsTemperature ?? 0, 1, pressurePa);
		const outside = humidityRatio(-5, 0.9, pressurePa);
		const dryKgH = (numbers.airflow ?? 0) / moistVolumeM3Kg(18, inside, pressurePa);
		expect(dryKgH * (inside - outside) * 1000).toBeCloseTo(numbers.waterPerHour ?? 0, 9);
	});

	test('with exactly that air the dew point is the temperature of the surface', () => {
		const numbers = numbersOf(moisture, night);
		const there = numbersOf(moisture, { ...night, airM3H: numbers.airflow });
		expect(there.dewPoint).toBeCloseTo(numbers.ribsTemperature ?? 0, 1);
	});

	test('colder surfaces, more people and wet clothes take more', () => {
		const flow = (more: object) => numberOf(moisture, { ...night, ...more }, 'airflow');
		for (const worse of [{ people: 4 }, { dryingKg: 1 }, { surface: 'glass' }, { insulationMm: 0 }]) {
			expect(flow(worse)).toBeGreaterThan(flow({}));
		}
		for (const better of [{ ribCoverMm: 15 }, { surface: 'lining' }]) {
			expect(flow(better)).toBeLessThan(flow({}));
		}
	});

	test('cooking on gas gives off the water of its flame', () => {
		const electric = numberOf(moisture, { ...night, stove: 'electric' }, 'waterCooking');
		const gas = numberOf(moisture, { ...night, stove: 'gas', burnerW: 2000 }, 'waterCooking');
		// 2 kW of propane: 2/12.858 kg/h of fuel, 1.634 times that of water.
		expect(gas - electric).toBeCloseTo((2000 / 12_858) * 1634, 0);
		expect(numbersOf(moisture, night)).not.toHaveProperty('waterCooking');
	});

	test('a cover leaves the pane colder than it was', () => {
		expect(numberOf(moisture, { ...night, covers: true }, 'glassTemperature')).toBeLessThan(
			numberOf(moisture, night, 'glassTemperature'),
		);
	});

	test('air changes are the flow over the air inside', () => {
		const numbers = numbersOf(moisture, { ...night, volumeL: 12_000 });
		expect(numbers.airChanges).toBeCloseTo((numbers.airflow ?? 0) / 12, 9);
	});
});

describe('findings', () => {
	test('a fan that is too weak, and one that is not', () => {
		const { airflow = 0 } = numbersOf(moisture, night);
		const weak = { ...night, airM3H: airflow * 0.7 };
		expect(codesOf(moisture, weak)).toContain('condensation');
		expect(answered(moisture, weak).headline).toMatch(/too little/);
		expect(codesOf(moisture, { ...night, airM3H: airflow * 1.01 })).not.toContain('condensation');
	});
	test('glass that sweats all the same', () => {
		expect(codesOf(moisture, night)).toContain('glass-sweats');
		expect(codesOf(moisture, { ...night, surface: 'glass' })).not.toContain('glass-sweats');
	});
	test('cooking needs the fan', () => {
		expect(codesOf(moisture, { ...night, stove: 'gas' })).toContain('cook-with-fan');
		expect(codesOf(moisture, night)).not.toContain('cook-with-fan');
	});
	test('frost behind a surface below freezing', () => {
		expect(codesOf(moisture, { ...night, outsideC: -25 })).toContain('frost');
		expect(codesOf(moisture, { ...night, outsideC: 5 })).not.toContain('frost');
	});
	test('air that costs a lot of heat', () => {
		expect(codesOf(moisture, { ...night, people: 8, surface: 'glass' })).toContain('air-costs-heat');
		expect(codesOf(moisture, { ...night, people: 1 })).not.toContain('air-costs-heat');
	});
});

test('people by tipping: one more would be too many', () => {
	const given = { ...night, airM3H: 120 };
	const [tip] = answered(moisture, given).tipping;
	const people = tip?.value ?? 0;
	expect(codesOf(moisture, { ...given, people })).not.toContain('condensation');
	expect(codesOf(moisture, { ...given, people: people + 1 })).toContain('condensation');
});

test('refusals', () => {
	expect(refusal(moisture, { ...night, outsideC: 20 })).toMatchObject({
		code: 'contradiction',
		field: 'outsideC',
	});
	expect(refusal(moisture, { ...night, people: 0 })).toMatchObject({ code: 'impossible', field: 'people' });
});

test('gas carries the caution of carbon monoxide', () => {
	expect(answered(moisture, { ...night, stove: 'gas' }).cautions.join(' ')).toMatch(/carbon-monoxide/);
	expect(answered(moisture, night).cautions.join(' ')).not.toMatch(/carbon-monoxide/);
});
