import { expect, test } from 'vitest';
import { defaultContext } from '../topic/context.js';
import { runTopic } from '../topic/run.js';
import { strut } from '../topics/strut.js';
import { strutSwing } from './strut-swing.js';

const bench = { massKg: 15, lidLengthM: 0.9, lidMountM: 0.3, bodyMountBelowM: 0.25 };

test('the curves are those the answer was read from', () => {
	const swing = strutSwing(bench, defaultContext);
	const outcome = runTopic(strut, bench, defaultContext);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
	const value = (name: string) => outcome.sizing.results.find((result) => result.name === name)?.value;
	expect(swing?.springN).toBe(value('force'));
	expect(swing?.curves.map((curve) => curve.temperatureC)).toEqual([-10, 20, 40]);
	const cold = swing?.curves[0]?.points ?? [];
	const hot = swing?.curves[2]?.points ?? [];
	expect(cold[0]?.handN).toBe(value('handForceClosed'));
	expect(cold).toHaveLength(61);
	expect(Math.max(...cold.map((point) => point.handN), ...hot.map((point) => -point.handN))).toBe(
		value('handForceMost'),
	);
	// Warmer springs leave the hand less to lift.
	expect(hot[20]?.handN).toBeLessThan(cold[20]?.handN as number);
});

test('no curve without the mounts, or without an answer', () => {
	expect(strutSwing({ massKg: 28, centreM: 0.62, armM: 0.16 }, defaultContext)).toBeNull();
	expect(strutSwing({ massKg: 15 }, defaultContext)).toBeNull();
	expect(strutSwing({ ...bench, lidMountM: 2 }, defaultContext)).toBeNull();
});
