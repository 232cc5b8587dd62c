import { defaultContext, lookUpPlace, runHours, runTopic, simulatedHours, topicNamed } from '@lugbook/core';
import { type Bench, leastMs } from './bench.js';

const van = {
	unitAh: 300,
	chemistry: 'lifepo4',
	panelW: 400,
	place: 'Denver',
	needWh: 900,
	driveH: 1,
	alternatorA: 30,
};

function topic(name: string) {
	const found = topicNamed(name);
	if (found === null) throw new Error(`there is no topic "${name}"`);
	return found;
}

/** Answers the question, and fails where there is no answer: a refusal would be quick. */
function answer(name: string, given: Readonly<Record<string, unknown>>): void {
	const outcome = runTopic(topic(name), given, defaultContext);
	if (outcome.status !== 'answered') throw new Error(JSON.stringify(outcome));
}

export const benches: readonly Bench[] = [
	{
		name: 'simulate: 8,760 hours alone',
		target: 'under 10 ms',
		run: async () => {
			const hours = simulatedHours(van, defaultContext);
			if (hours === null) throw new Error('no hours');
			const bank = { capacityWh: 3840, floor: 0.05, start: 1, chargeLimitW: 1920, efficiency: 0.92 };
			return `${(await leastMs(() => runHours(hours.powers, bank))).toFixed(2)} ms`;
		},
	},
	{
		name: 'simulate: a year with the searches for bank and array',
		target: 'under 200 ms',
		run: async () => `${(await leastMs(() => answer('simulate', van))).toFixed(1)} ms`,
	},
	{
		name: 'solar: a month named',
		target: null,
		run: async () =>
			`${(await leastMs(() => answer('solar', { place: 'Denver', month: 1, panelW: 400 }))).toFixed(2)} ms`,
	},
	{
		name: 'places: a name, once the index stands',
		target: null,
		run: async () => `${(await leastMs(() => lookUpPlace('flagstaff az'))).toFixed(3)} ms`,
	},
];
