// Written by `pnpm generate` from the files of this folder: one topic a file.
import type { AnyTopic } from '../topic/declare.js';
import { accumulator } from './accumulator.js';
import { alternator } from './alternator.js';
import { array } from './array.js';
import { battery } from './battery.js';
import { beam } from './beam.js';
import { budget } from './budget.js';
import { charge } from './charge.js';
import { cool } from './cool.js';
import { drain } from './drain.js';
import { freeze } from './freeze.js';
import { fuel } from './fuel.js';
import { fuse } from './fuse.js';
import { heat } from './heat.js';
import { hotWater } from './hot-water.js';
import { inflate } from './inflate.js';
import { inverter } from './inverter.js';
import { moisture } from './moisture.js';
import { network } from './network.js';
import { payload } from './payload.js';
import { pipe } from './pipe.js';
import { restraint } from './restraint.js';
import { runtime } from './runtime.js';
import { shore } from './shore.js';
import { shortCircuit } from './short-circuit.js';
import { simulate } from './simulate.js';
import { solar } from './solar.js';
import { strut } from './strut.js';
import { tank } from './tank.js';
import { tire } from './tire.js';
import { vent } from './vent.js';
import { wire } from './wire.js';

export const topics: readonly AnyTopic[] = [
	accumulator,
	alternator,
	array,
	battery,
	beam,
	budget,
	charge,
	cool,
	drain,
	freeze,
	fuel,
	fuse,
	heat,
	hotWater,
	inflate,
	inverter,
	moisture,
	network,
	payload,
	pipe,
	restraint,
	runtime,
	shore,
	shortCircuit,
	simulate,
	solar,
	strut,
	tank,
	tire,
	vent,
	wire,
];

export function topicNamed(name: string): AnyTopic | null {
	return topics.find((topic) => topic.name === name) ?? null;
}
