import { expect, test } from 'vitest';
import { runTopic } from '../topic/run.js';
import { solar } from './solar.js';

const context = { region: 'us', units: 'us', language: 'en' } as const;

function answered(input: Record<string, unknown>) {
	const outcome = runTopic(solar, { place: 'Moab, UT', month: 4, panelW: 400, ...input }, context);
	if (outcome.status !== 'answered') throw new Error(`${outcome.status}`);
	const resultOf = (name: string) => outcome.sizing.results.find((one) => one.name === name)?.value;
	return { energyWh: resultOf('energyPerDay') as number, days: resultOf('daysToFill') as number };
}

test('a charge is put back in its energy at 13.5 V over the energy of a day, at 24 V twice as long', () => {
	const { energyWh, days } = answered({ fillAh: 400 });
	expect(days).toBeCloseTo((400 * 13.5) / energyWh, 6);
	expect(answered({ fillAh: 400, bankV: 24 }).days).toBeCloseTo(2 * days, 6);
});

test('with panels asked for and no need named, the need is asked', () => {
	const outcome = runTopic(solar, { place: 'Moab, UT', month: 4, isSizing: true }, context);
	expect(outcome).toMatchObject({ status: 'needs-input', missing: [{ name: 'needWh' }] });
});
