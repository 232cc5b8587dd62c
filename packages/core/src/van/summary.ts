import type { Wheelbase } from '../tables/interiors.js';
import { vanClasses } from '../tables/vans.js';
import type { Context } from '../topic/context.js';
import { type Floor, floorOf, type Zone, zoneM } from '../weight/placing.js';
import { houseV, knownBank } from './facts/bank.js';
import { budgetOf } from './facts/budget.js';
import { arrayW } from './facts/charging.js';
import { type Circuit, circuitsOf } from './facts/circuits.js';
import { Facts, num, word } from './facts/facts.js';
import { dailyLoads, loadsAboard } from './facts/loads.js';
import { weightsOf } from './facts/weights.js';
import { labelOf, type Piece, type Van } from './van.js';

/** What is known of a van as a whole, for its papers; in base units. */
export interface VanSummary {
	/** class of the house voltage [V] */
	readonly houseV: number;
	/** null where there is no bank, or its capacity was not told */
	readonly bank: SummaryBank | null;
	/** rated power of all panels, or null where some were not told [W] */
	readonly arrayW: number | null;
	readonly loads: readonly SummaryLoad[];
	/** what an ordinary day takes from the bank, or null where no load was told [Wh] */
	readonly dailyWh: number | null;
	/** circuits of everything that draws on the bank or feeds it, and of every mains load */
	readonly circuits: readonly Circuit[];
	readonly weights: readonly SummaryWeight[];
}

export interface SummaryBank {
	readonly chemistry: string;
	readonly leadAcid: boolean;
	readonly classV: number;
	readonly capacityAh: number;
	readonly fullWh: number;
	/** between full and the usual depth of discharge */
	readonly usableWh: number;
	/** largest charge current; `given` where the maker's figure was told, else the usual rate [A] */
	readonly charge: { readonly limitA: number; readonly given: boolean };
	readonly discharge: { readonly limitA: number; readonly given: boolean };
	/** cell temperatures between which it may be charged [°C] */
	readonly chargeMinC: number;
	readonly chargeMaxC: number;
}

export interface SummaryLoad {
	readonly name: string;
	readonly count: number;
	/** of all of them together while they run [W] */
	readonly powerW: number;
	readonly hoursPerDay: number | null;
	readonly energyWh: number | null;
	readonly mains: boolean;
	/** true where a figure is typical of the name, not told */
	readonly isTypical: boolean;
	/** counted into an ordinary day */
	readonly isDaily: boolean;
}

export interface SummaryWeight {
	readonly name: string;
	/** with its water, tanks full [kg] */
	readonly massKg: number;
	/** false where the mass is the usual one of its kind */
	readonly isToldMass: boolean;
	/** middle of the zone it stands in behind the front axle, or null where zone or wheelbase is not known [m] */
	readonly positionM: number | null;
}

/** The van in figures; the same van gives the same ones. */
export function vanSummary(van: Van, context: Context): VanSummary {
	const facts = new Facts(van, context);
	const daily = new Set(dailyLoads(facts).map(({ load }) => load));
	const floor = floorIn(facts.first('van'));
	return {
		houseV: houseV(facts),
		bank: bankIn(facts),
		arrayW: arrayW(facts),
		loads: loadsAboard(facts).loads.map(({ piece, load }) => ({
			name: labelOf(piece),
			count: load.count,
			powerW: load.runningW,
			hoursPerDay: load.hoursPerDay,
			energyWh: load.dailyWh,
			mains: load.mains,
			isTypical: load.assumed.some(({ field }) => field !== 'supply'),
			isDaily: daily.has(load),
		})),
		dailyWh: budgetOf(facts)?.totalWh ?? null,
		circuits: circuitsOf(facts),
		weights: weightsOf(facts).map(({ name, massKg, waterL, isToldMass, zone }) => ({
			name,
			// A liter of water weighs a kilogram.
			massKg: massKg + waterL,
			isToldMass,
			positionM: floor === null || zone === null ? null : zoneM(zone as Zone, floor),
		})),
	};
}

function bankIn(facts: Facts): SummaryBank | null {
	const known = knownBank(facts);
	if (known === null) return null;
	const { bank, charge, discharge, fullWh, usableWh } = known;
	const { label, leadAcid, chargeMinC, chargeMaxC } = bank.chemistry;
	const { classV, unitAh, parallel } = bank;
	const capacityAh = unitAh * parallel;
	const limits = { charge, discharge, chargeMinC, chargeMaxC };
	return { chemistry: label, leadAcid, classV, capacityAh, fullWh, usableWh, ...limits };
}

function floorIn(body: Piece | null): Floor | null {
	const size = body === null ? undefined : word(body, 'wheelbase');
	if (body === null || size === undefined) return null;
	const wheelbase = size as Wheelbase;
	return floorOf(wheelbase, num(body, 'wheelbaseM') ?? vanClasses[wheelbase].wheelbaseM);
}
