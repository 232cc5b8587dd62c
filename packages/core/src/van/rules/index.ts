import { chargingRules } from './charging.js';
import { climateRules } from './climate.js';
import { energyRules } from './energy.js';
import { fireRules } from './fire.js';
import { inverterRules } from './inverter.js';
import { protectionRules } from './protection.js';
import type { Rule } from './rule.js';
import { shoreRules } from './shore.js';
import { solarRules } from './solar.js';
import { waterRules } from './water.js';
import { weightRules } from './weight.js';

/** Every cross-check of a whole van. */
export const vanRules: readonly Rule[] = [
	...fireRules,
	...protectionRules,
	...chargingRules,
	...inverterRules,
	...solarRules,
	...shoreRules,
	...energyRules,
	...waterRules,
	...climateRules,
	...weightRules,
];
