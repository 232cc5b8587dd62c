import { defaultContext } from '@lugbook/core';
import { Reader } from '@lugbook/language';
import { climate } from '../language/corpus/climate.js';
import { energy } from '../language/corpus/energy.js';
import { german } from '../language/corpus/german.js';
import { spanish } from '../language/corpus/spanish.js';
import { talk } from '../language/corpus/talk.js';
import { water } from '../language/corpus/water.js';
import { weight } from '../language/corpus/weight.js';
import { wiring } from '../language/corpus/wiring.js';
import { type Bench, leastMs, percentiles } from './bench.js';

const messages = [wiring, energy, water, climate, weight, talk, spanish, german]
	.flat()
	.map(({ text }) => text);

function readAll(reader: Reader, list: readonly string[]): Promise<string> {
	const read = (index: number) =>
		reader.read(list[index % list.length] as string, { context: defaultContext });
	for (let index = 0; index < list.length; index += 1) read(index);
	return percentiles(4 * list.length, read);
}

export const benches: readonly Bench[] = [
	{
		name: 'a reader of all topics made',
		target: 'under 50 ms',
		run: async () => `${(await leastMs(() => new Reader())).toFixed(1)} ms`,
	},
	{
		name: `a message read, ${messages.length} of ordinary length in three languages`,
		target: 'p99 under 5 ms',
		run: () => readAll(new Reader(), messages),
	},
	{
		name: 'a message of the greatest length read',
		target: 'p99 under 100 ms',
		run: () =>
			readAll(
				new Reader(),
				messages.slice(0, 40).map((_, at) => {
					const long = [...messages.slice(at), ...messages.slice(0, at)].join(', ');
					return long.slice(0, 2000);
				}),
			),
	},
];
