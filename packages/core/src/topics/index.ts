// Written by `pnpm generate` from the files of this folder: one topic a file.
import type { AnyTopic } from '../topic/declare.js';
import { accumulator } from './accumulator.js';
import { battery } from './battery.js';
import { beam } from './beam.js';
import { budget } from './budget.js';
import { drain } from './drain.js';
import { freeze } from './freeze.js';
import { heat } from './heat.js';
import { hotWater } from './hot-water.js';
import { inflate } from './inflate.js';
import { pipe } from './pipe.js';
import { restraint } from './restraint.js';
import { runtime } from './runtime.js';
import { strut } from './strut.js';
import { tank } from './tank.js';
import { tire } from './tire.js';
import { wire } from './wire.js';

export const topics: readonly AnyTopic[] = [
	accumulator,
	battery,
	beam,
	budget,
	drain,
	freeze,
	heat,
	hotWater,
	inflate,
	pipe,
	restraint,
	runtime,
	strut,
	tank,
	tire,
	wire,
];

export function topicNamed(name: string): AnyTopic | null {
	return topics.find((topic) => topic.name === name) ?? null;
}
