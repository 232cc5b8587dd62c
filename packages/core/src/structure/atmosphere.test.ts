import { expect, test } from 'vitest';
import {
	highestAltitudeM,
	lowestAltitudeM,
	standardDensityKgM3,
	standardPressureKpa,
	standardTemperatureC,
} from './atmosphere.js';

test('sea level by definition', () => {
	expect(standardPressureKpa(0)).toBe(101.325);
	expect(standardTemperatureC(0)).toBeCloseTo(15, 12);
	expect(standardDensityKgM3(0)).toBeCloseTo(1.225, 6);
});

test('pressure, temperature and density only fall with height', () => {
	for (let altitudeM = lowestAltitudeM; altitudeM < highestAltitudeM; altitudeM += 100) {
		expect(standardPressureKpa(altitudeM + 100)).toBeLessThan(standardPressureKpa(altitudeM));
		expect(standardTemperatureC(altitudeM + 100)).toBeLessThan(standardTemperatureC(altitudeM));
		expect(standardDensityKgM3(altitudeM + 100)).toBeLessThan(standardDensityKgM3(altitudeM));
	}
});
