import type { ConductorSize } from '../tables/conductors.js';
import type { Region } from '../topic/context.js';
import type { Source } from '../topic/source.js';
import { eu } from './eu.js';
import { us } from './us.js';

/** A number with the place it comes from. */
export interface Sourced {
	readonly value: number;
	readonly source: Source;
}

/** How one kind of circuit (direct current or mains) is sized under a rule set. */
export interface CircuitRules {
	/** insulation temperature taken where none is given [°C] */
	readonly usualInsulationC: number;
	/** allowable current of one conductor in free air or cable at 30 °C [A], or null where the table has none */
	readonly ampacity: (size: ConductorSize, insulationC: number) => Sourced | null;
	readonly ambientFactor: (insulationC: number, ambientC: number) => Sourced;
	readonly bundleFactor: (conductors: number) => Sourced;
	/** the cap that the terminals set [A], or null for none */
	readonly terminalCap: (size: ConductorSize, terminalC: number) => Sourced | null;
	/** terminal temperature taken where none is given [°C], or null where terminals set no cap of their own */
	readonly usualTerminalC: (deviceA: number, size: ConductorSize) => number | null;
	/** standard ratings of protective devices, rising [A] */
	readonly deviceRatingsA: readonly number[];
	readonly deviceSource: Source;
	/** the largest device that small conductors may have whatever their ampacity, or null */
	readonly smallConductorLimit: (size: ConductorSize) => Sourced | null;
	/** the thinnest conductor allowed for a wire run by itself [mm²] */
	readonly minimumAreaMm2: Sourced;
	/** the thinnest conductor that may be one of several in parallel [mm²], or null for no rule */
	readonly minimumParallelAreaMm2: Sourced | null;
	/** device rating over a load of 3 h or more */
	readonly continuous: Sourced;
	/** reactance of one conductor above 35 mm² [ohm/m]; 0 for direct current */
	readonly reactanceOhmPerM: number;
}

export interface RuleSet {
	readonly region: Region;
	readonly mainsVoltageV: number;
	readonly mainsFrequencyHz: number;
	/** conductor sizes sold, thinnest first */
	readonly sizes: readonly ConductorSize[];
	readonly resistanceSource: Source;
	readonly dc: CircuitRules;
	readonly mains: CircuitRules;
	/** ambient taken for an engine bay [°C] */
	readonly engineBayC: Sourced;
	/** the current a shore inlet or outlet of the region may be rated [A] */
	readonly supplyRatingsA: readonly number[];
}

const ruleSets: Readonly<Record<Region, RuleSet>> = { us, eu };

export function ruleSetOf(region: Region): RuleSet {
	return ruleSets[region];
}
