import type { Phrasebook } from '../phrasebook.js';
import { accumulator } from './accumulator.js';
import { alternator } from './alternator.js';
import { array } from './array.js';
import { battery } from './battery.js';
import { beam } from './beam.js';
import { budget } from './budget.js';
import { charge } from './charge.js';
import { climateWork } from './climate-work.js';
import { common } from './common.js';
import { cool } from './cool.js';
import { drain } from './drain.js';
import { electricalWork } from './electrical-work.js';
import { energyWork } from './energy-work.js';
import { freeze } from './freeze.js';
import { fuel } from './fuel.js';
import { fuse } from './fuse.js';
import { heat } from './heat.js';
import { hotWater } from './hot-water.js';
import { inflate } from './inflate.js';
import { inputs } from './inputs.js';
import { inverter } from './inverter.js';
import { moisture } from './moisture.js';
import { network } from './network.js';
import { parts } from './parts.js';
import { payload } from './payload.js';
import { pipe } from './pipe.js';
import { restraint } from './restraint.js';
import { runtime } from './runtime.js';
import { shore } from './shore.js';
import { shortCircuit } from './short-circuit.js';
import { simulate } from './simulate.js';
import { solarWork } from './solar-work.js';
import { structureWork } from './structure-work.js';
import { strut } from './strut.js';
import { tank } from './tank.js';
import { tire } from './tire.js';
import { van } from './van.js';
import { vent } from './vent.js';
import { waterWork } from './water-work.js';
import { weightWork } from './weight-work.js';
import { wire } from './wire.js';
import { words } from './words.js';

/** What every topic says, in Spanish. */
export const spanish: Phrasebook = {
	...accumulator,
	...alternator,
	...array,
	...battery,
	...beam,
	...budget,
	...charge,
	...climateWork,
	...common,
	...cool,
	...drain,
	...electricalWork,
	...energyWork,
	...freeze,
	...fuel,
	...fuse,
	...heat,
	...hotWater,
	...inflate,
	...inputs,
	...inverter,
	...moisture,
	...network,
	...parts,
	...payload,
	...pipe,
	...restraint,
	...runtime,
	...shore,
	...shortCircuit,
	...simulate,
	...solarWork,
	...structureWork,
	...strut,
	...tank,
	...tire,
	...van,
	...vent,
	...waterWork,
	...weightWork,
	...wire,
	...words,
};
