import type { Severity, UnitHabit } from '@lugbook/core';
import type { Fact } from '../document/block.js';
import type { AxlesPicture } from '../picture/axles.js';
import type { ChargePicture } from '../picture/charge.js';
import type { MonthsPicture } from '../picture/months.js';
import type { OneLinePicture } from '../picture/oneline/input.js';
import type { SheetRecord, SheetState } from '../sheet/record.js';

/**
 * Everything that is known of one build, for its book: the papers that go with the van. Numbers are in base units;
 * they are written in the build's unit habit.
 */
export interface BuildBook {
	readonly shop: string;
	readonly build: string;
	/** what identifies the vehicle, where the shop gave it */
	readonly vehicle: string | null;
	/** what was told of its use: how many people, where, how long without hookups */
	readonly use: readonly Fact[];
	/** the day the book was made, as the caller's clock had it: "2026-05-04" */
	readonly date: string;
	readonly units: UnitHabit;
	/** version of the program that made the book */
	readonly program: string;
	/** the newest entry of the shop's log that the book rests on */
	readonly log: { readonly entry: number; readonly hash: string } | null;
	readonly signing: Signing;
	/** where the file holds the sheets of some answers alone: the first and the last number; null where all are in it */
	readonly part: { readonly from: number; readonly to: number } | null;
	readonly findings: readonly OpenFinding[];
	/** what was not said of the build; it is never presumed fine */
	readonly notKnown: readonly string[];
	readonly equipment: readonly EquipmentItem[];
	/** the wire and fuse schedule */
	readonly runs: readonly RunRow[];
	readonly oneLine: OneLinePicture | null;
	readonly energy: EnergyPart | null;
	readonly water: FactsPart | null;
	readonly climate: FactsPart | null;
	readonly weights: WeightsPart | null;
	readonly handover: Handover;
	readonly sheets: Sheets;
}

/**
 * The calculation sheets: a list, or, where there are too many to hold at once, what begins to read them. It is called
 * anew for each time they are gone through, and gives the same ones in the same order each time.
 */
export type Sheets = readonly SheetRecord[] | (() => Iterable<SheetRecord> | AsyncIterable<SheetRecord>);

/** How far the build is checked. */
export interface Signing {
	/** numbers of the answers in each state, ascending */
	readonly answers: Readonly<Partial<Record<SheetState, readonly number[]>>>;
	/** the signature under the build as a whole; null where there is none */
	readonly whole: WholeSignature | null;
	/** who signed answers, each by itself */
	readonly signers: readonly Signer[];
	/** assumed values still to be confirmed in the answers that stand, and how many answers have any */
	readonly toConfirm: { readonly values: number; readonly answers: number };
}

/** A lead's signature under a build as it stood at one entry of the log. */
export interface WholeSignature {
	/** number of its own entry */
	readonly entry: number;
	/** null where the name was erased on the person's request */
	readonly name: string | null;
	readonly at: string;
	/** what it means, as it was shown to the one who signed */
	readonly meaning: string;
	/** their own words, such as the reason why it is signed all the same; null where there are none or were erased */
	readonly words: string | null;
	readonly covers: {
		readonly entry: number;
		readonly hash: string;
		/** the hash of that entry in this log where it is another than the one that was signed, else null */
		readonly now: string | null;
	};
	/** answers that had a signature which held */
	readonly signed: number;
	/** what stood open and was signed all the same; null where nothing was */
	readonly open: string | null;
	/** whether answers to the signer's own questions stood unsigned, which a one-person shop may allow */
	readonly ownQuestion: boolean;
	/** the first entries that changed the build since; empty while the signature holds */
	readonly since: readonly number[];
	/** by whom, when and why it was withdrawn; null where it was not */
	readonly withdrawn: {
		readonly entry: number;
		/** null where the name was erased on the person's request */
		readonly name: string | null;
		readonly at: string;
		/** the reason as typed; null where it was erased */
		readonly words: string | null;
	} | null;
}

/** One person's signatures that hold. */
export interface Signer {
	/** null where the name was erased on the person's request */
	readonly name: string | null;
	/** numbers of the answers, ascending */
	readonly answers: readonly number[];
	readonly first: string;
	readonly last: string;
	/** how many of them are answers to the person's own question, which a one-person shop may allow */
	readonly own: number;
}

export interface OpenFinding {
	readonly code: string;
	readonly severity: Severity;
	readonly text: string;
	readonly source: string;
	/** what would clear it, where that is known */
	readonly clears: string | null;
	/** numbers of the entries it rests on */
	readonly entries: readonly number[];
}

export interface EquipmentItem {
	readonly name: string;
	readonly count: number;
	/** "12 V, 300 Ah" */
	readonly rating: string | null;
	readonly place: string | null;
	/** the entry that says so */
	readonly entry: number | null;
}

export interface RunRow {
	/** "main bus to fridge" */
	readonly from: string;
	readonly to: string;
	readonly currentA: number | null;
	readonly voltageV: number | null;
	/** one way [m] */
	readonly lengthM: number | null;
	readonly conductor: string | null;
	/** "fuse", "circuit breaker" */
	readonly device: string | null;
	readonly deviceA: number | null;
	/** where the device stands */
	readonly deviceAt: string | null;
	/** why the run may go without a device; null where it may not */
	readonly unprotected: string | null;
	/** share of the voltage */
	readonly drop: number | null;
	/** the entry that sized it */
	readonly entry: number | null;
	readonly state: SheetState | null;
}

export interface LoadRow {
	readonly name: string;
	readonly count: number;
	/** of all of them together */
	readonly powerW: number | null;
	readonly hoursPerDay: number | null;
	readonly energyWh: number | null;
	/** on the inverter, not on the battery's own voltage */
	readonly mains: boolean;
	/** true where the numbers are typical ones, not those of the nameplate */
	readonly assumed: boolean;
}

/** The share of its hours in which a load draws its power: a compressor starts and stops. */
export function runsShare({
	powerW,
	hoursPerDay,
	energyWh,
}: Pick<LoadRow, 'powerW' | 'hoursPerDay' | 'energyWh'>): number {
	const whole = (powerW ?? 0) * (hoursPerDay ?? 0);
	return energyWh === null || whole === 0 ? 1 : energyWh / whole;
}

export interface WeightRow {
	readonly name: string;
	readonly massKg: number;
	/** behind the front axle; below 0 ahead of it [m] */
	readonly positionM: number | null;
	/** to the right of the middle; below 0 to the left [m] */
	readonly sideM: number | null;
}

/** A part of the book that is told in facts. */
export interface FactsPart {
	readonly facts: readonly Fact[];
	readonly notes: readonly string[];
}

export interface EnergyPart extends FactsPart {
	readonly loads: readonly LoadRow[];
	readonly day: ChargePicture | null;
	readonly week: ChargePicture | null;
	readonly months: MonthsPicture | null;
}

export interface WeightsPart extends FactsPart {
	readonly items: readonly WeightRow[];
	readonly axles: AxlesPicture | null;
}

/** What the owner has to know. */
export interface Handover {
	readonly limits: readonly OwnerLimit[];
	readonly cautions: readonly string[];
}

export interface OwnerLimit {
	/** "Load on the rear axle" */
	readonly what: string;
	/** "at most 2,400 kg" */
	readonly limit: string;
	readonly why: string;
}

/** The sheets one by one, whichever way they were given. */
export async function* eachSheet(sheets: Sheets): AsyncGenerator<SheetRecord> {
	yield* typeof sheets === 'function' ? sheets() : sheets;
}
