import type { KindName } from '../quantity/kinds.js';
import { writeNumber } from '../quantity/write.js';
import { type TypicalLoad, typicalLoad, typicalLoadWords } from '../tables/loads.js';
import type { Region } from '../topic/context.js';
import { choice, count, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { inEnglish, type Say } from '../topic/translate.js';

/** The fields of one load in a list; topics take those they can use. */
export const loadFields = {
	name: text({ label: 'load', words: typicalLoadWords }),
	powerW: quantity({ label: 'power of the load', kind: 'power', min: 0.1, max: 30_000 }),
	currentA: quantity({ label: 'current of the load', kind: 'current', min: 0.005, max: 500 }),
	energyWh: quantity({ label: 'energy a day', kind: 'energy', min: 0.1, max: 100_000 }),
	chargeAh: quantity({ label: 'charge a day', kind: 'charge', min: 0.01, max: 5000 }),
	durationH: quantity({ label: 'hours a day', kind: 'duration', min: 0.001, max: 24 * 60 }),
	duty: quantity({ label: 'share of the time it runs', kind: 'fraction', min: 0.001, max: 1 }),
	count: count({ label: 'how many', min: 1, max: 200 }),
	supply: choice({
		label: 'where it is fed from',
		options: {
			mains: [
				'on inverter',
				'on the inverter',
				'via inverter',
				'through the inverter',
				'from the inverter',
				'mains',
				'household',
				'plugged in',
				'am wechselrichter',
				'con inversor',
			],
			dc: ['dc', 'low voltage', 'from the battery', 'gleichstrom'],
		},
	}),
};

/** One load as named by the shop. */
export interface LoadItem {
	readonly name?: string | undefined;
	readonly powerW?: number | undefined;
	readonly currentA?: number | undefined;
	readonly energyWh?: number | undefined;
	readonly chargeAh?: number | undefined;
	readonly durationH?: number | undefined;
	readonly duty?: number | undefined;
	readonly count?: number | undefined;
	readonly supply?: 'mains' | 'dc' | undefined;
}

/** One load with everything a calculation needs; powers and energies are of all of its count together. */
export interface Load {
	readonly name: string;
	/** with the number of them: "2 × laptop" */
	readonly shown: string;
	readonly count: number;
	/** power while it runs, at its own supply [W] */
	readonly runningW: number;
	/** share of the time it is switched on that it draws that power */
	readonly duty: number;
	/** hours a day it is switched on, or null where nobody said and none is typical [h] */
	readonly hoursPerDay: number | null;
	/** energy a day at its own supply, or null where the hours are not known [Wh] */
	readonly dailyWh: number | null;
	readonly mains: boolean;
	readonly surgeFactor: number;
	/** on for 3 h or more at a stretch */
	readonly continuous: boolean;
	readonly typical: TypicalLoad | null;
	/** what was taken from the table of typical loads */
	readonly assumed: readonly LoadAssumption[];
	/** the shop gave whole hours of a load that cycles */
	readonly cyclesUnsaid: boolean;
}

interface LoadAssumption {
	/** the field it fills: "powerW" */
	readonly field: string;
	readonly label: string;
	readonly value: number | string;
	/** null for words */
	readonly kind: KindName | null;
}

export type LoadProblem =
	| { readonly kind: 'ask'; readonly label: string; readonly question: string }
	| { readonly kind: 'contradiction'; readonly text: string; readonly instead: string };

export interface LoadOptions {
	/** voltage at which a direct current is turned into power [V] */
	readonly bankV: number;
	readonly mainsV: number;
	readonly region: Region;
	/** composes the sentences, so that they can be said in another language */
	readonly say?: Say;
	/** a whole day, whose hours must be known; or while they are on, with hours only where somebody gave them */
	readonly over: 'day' | 'while-on';
}

/** The largest plug of a household circuit in the rule sets [A]: 20 A, and 16 A in Europe. */
const mostPlugA = 20;

/**
 * Loads with the gaps filled from the table of typical loads, or the first thing that must be asked or put right.
 */
export function resolveLoads(
	items: readonly LoadItem[],
	options: LoadOptions,
): { readonly loads: readonly Load[]; readonly problem: LoadProblem | null } {
	const loads: Load[] = [];
	for (const [index, item] of items.entries()) {
		const resolved = resolveLoad(item, index, options);
		if ('kind' in resolved) return { loads, problem: resolved };
		loads.push(resolved);
	}
	return { loads, problem: null };
}

function resolveLoad(item: LoadItem, index: number, options: LoadOptions): Load | LoadProblem {
	const say = options.say ?? inEnglish;
	const known = item.name === undefined ? null : typicalLoad(item.name);
	const name = nameOf(item, index, known, say);
	// No plug gives so much: 45 A of an air conditioner is drawn from the bank.
	const fromBank = item.currentA !== undefined && item.currentA > mostPlugA;
	const usual = known?.mains === true && !fromBank;
	const mains = item.supply === undefined ? usual : item.supply === 'mains';
	const many = item.count ?? 1;
	const assumed: LoadAssumption[] = [];
	if (usual && item.supply === undefined) {
		assumed.push({ field: 'supply', label: say`where the ${name} is fed from`, value: 'mains', kind: null });
	}

	if (item.durationH !== undefined && item.durationH > 24) {
		return {
			kind: 'contradiction',
			text: say`I read ${writeNumber(item.durationH, 1)} h a day for the ${name}; a day has 24.`,
			instead: 'Give the hours a day it is on, up to 24.',
		};
	}
	const contradiction = powerAgainstCurrent(item, name, mains, options);
	if (contradiction !== null) return contradiction;

	const dailyGivenWh =
		item.energyWh ?? (item.chargeAh === undefined ? undefined : item.chargeAh * options.bankV);
	let powerW = item.powerW ?? powerFrom(item, mains, options);
	if (powerW === undefined && known !== null) {
		powerW = known.powerW[options.region];
		assumed.push({ field: 'powerW', label: say`power of the ${name}`, value: powerW, kind: 'power' });
	}
	// Only a day's energy is known: spread over the day, the least power that gives it.
	if (powerW === undefined && dailyGivenWh !== undefined) powerW = dailyGivenWh / 24;
	if (powerW === undefined) {
		return {
			kind: 'ask',
			label: say`power of the ${name}`,
			question: say`How much does the ${name} draw (watts or amps)?`,
		};
	}

	if (dailyGivenWh !== undefined && item.durationH !== undefined && item.powerW !== undefined) {
		const fromHoursWh = item.powerW * (item.duty ?? 1) * item.durationH;
		if (Math.abs(fromHoursWh - dailyGivenWh) > 0.25 * dailyGivenWh) {
			return {
				kind: 'contradiction',
				text: say`${writeNumber(dailyGivenWh, 0)} Wh a day for the ${name} contradicts its power and hours: they make ${writeNumber(fromHoursWh, 0)} Wh.`,
				instead: 'Give the energy a day, or the power and the hours.',
			};
		}
	}
	const { hoursPerDay, duty, fromTable } = timesOf(item, known, dailyGivenWh === undefined, assumed, options);
	for (const one of fromTable) {
		const label =
			one.field === 'duty' ? say`share of that time the ${name} runs` : say`hours a day of the ${name}`;
		assumed.push({ ...one, label });
	}
	if (hoursPerDay === null && dailyGivenWh === undefined && options.over === 'day') {
		return {
			kind: 'ask',
			label: say`hours a day of the ${name}`,
			question: say`How many hours a day is the ${name} on?`,
		};
	}
	const dailyEachWh = dailyGivenWh ?? (hoursPerDay === null ? null : powerW * duty * hoursPerDay);
	return {
		name,
		shown: many > 1 ? say`${many} × ${name}` : name,
		count: many,
		runningW: powerW * many,
		duty,
		hoursPerDay,
		dailyWh: dailyEachWh === null ? null : dailyEachWh * many,
		mains,
		surgeFactor: known?.surgeFactor ?? 1,
		continuous: isContinuous(item, known),
		typical: known,
		assumed,
		cyclesUnsaid: known !== null && known.duty < 1 && item.duty === undefined && (item.durationH ?? 0) >= 12,
	};
}

/**
 * Hours a day and duty: as given, else from the table. Of a load whose power was given, no duty is presumed while it
 * is on: the safe side.
 */
function timesOf(
	item: LoadItem,
	known: TypicalLoad | null,
	energyUnknown: boolean,
	assumed: readonly LoadAssumption[],
	options: LoadOptions,
): {
	readonly hoursPerDay: number | null;
	readonly duty: number;
	readonly fromTable: readonly Omit<LoadAssumption, 'label'>[];
} {
	const hoursGiven = item.durationH ?? (item.duty === undefined ? null : 24);
	const powerIsTypical = assumed.some((one) => one.field === 'powerW');
	const fromDay = options.over === 'day' && hoursGiven === null && energyUnknown;
	const useTable =
		known !== null && item.duty === undefined && hoursGiven === null && (fromDay || powerIsTypical);
	if (!useTable) return { hoursPerDay: hoursGiven, duty: item.duty ?? 1, fromTable: [] };
	const duty = { field: 'duty', value: known.duty, kind: 'fraction' } as const;
	const hours = { field: 'durationH', value: known.hoursPerDay, kind: 'duration' } as const;
	return {
		hoursPerDay: fromDay ? known.hoursPerDay : null,
		duty: known.duty,
		fromTable: [...(fromDay ? [hours] : []), ...(known.duty < 1 ? [duty] : [])],
	};
}

/** Of what nobody said how long it runs, the safe side: 3 h or more. */
function isContinuous(item: LoadItem, known: TypicalLoad | null): boolean {
	if (known?.name === 'water heater') return true;
	if (item.durationH !== undefined) return item.durationH >= 3;
	return known?.continuous ?? true;
}

function powerFrom(item: LoadItem, mains: boolean, options: LoadOptions): number | undefined {
	if (item.currentA === undefined) return undefined;
	return item.currentA * (mains ? options.mainsV : options.bankV);
}

function powerAgainstCurrent(
	item: LoadItem,
	name: string,
	mains: boolean,
	options: LoadOptions,
): LoadProblem | null {
	const say = options.say ?? inEnglish;
	const fromCurrentW = powerFrom(item, mains, options);
	if (item.powerW === undefined || fromCurrentW === undefined) return null;
	// A 12 V class bank stands between 10 and 14.6 V, and motors have a power factor: a quarter apart still agrees.
	if (Math.abs(fromCurrentW - item.powerW) <= 0.25 * item.powerW) return null;
	const voltageV = mains ? options.mainsV : options.bankV;
	return {
		kind: 'contradiction',
		text: say`${writeNumber(item.powerW, 1)} W and ${writeNumber(item.currentA as number, 1)} A for the ${name} contradict each other: at ${voltageV} V that current is ${Math.round(fromCurrentW)} W.`,
		instead: 'Give the power or the current, whichever you trust.',
	};
}

function nameOf(item: LoadItem, index: number, known: TypicalLoad | null, say: Say): string {
	// "2 x fan" leaves the x with the name.
	const name = item.name?.replace(/^x\s+/i, '').trim() ?? '';
	// "AC" alone reads as alternating current.
	if (known !== null && /^a\s?[/.]?\s?c\.?$/i.test(name)) return known.name;
	return name === '' ? say`load ${index + 1}` : name;
}

/** Writes on the sheet what was taken from the table of typical loads. */
export function assumeTypical(sheet: Sheet, loads: readonly Load[]): void {
	for (const one of loads) {
		for (const { field, label, value, kind } of one.assumed) {
			sheet.assume(
				`loads.${one.name}.${field}`,
				label,
				value,
				'typical load (practice); the nameplate decides',
				kind === null ? { confirm: true } : { kind, confirm: true },
			);
		}
	}
}

/** Values of a list that no load goes with: "30 A" or "3 days" alone belong to the question itself. */
export interface Stray {
	readonly currentsA: readonly number[];
	readonly durationsH: readonly number[];
}

/**
 * Parts the loads from the items that hold nothing but a bare current or a bare time. "Fridge 45 W for 3 days" is no
 * running time either: a day has 24 h.
 */
export function partLoads<T extends LoadItem>(
	items: readonly T[],
	bare: { readonly current: boolean; readonly duration: boolean },
): { readonly items: readonly T[]; readonly stray: Stray } {
	const currentsA: number[] = [];
	const durationsH: number[] = [];
	const kept = items.flatMap((item) => {
		const set = Object.entries(item).filter(([, value]) => value !== undefined);
		const [only] = set;
		if (set.length === 1 && only?.[0] === 'currentA' && bare.current) {
			currentsA.push(only[1] as number);
			return [];
		}
		const isBare = set.length === 1 && only?.[0] === 'durationH';
		if (!bare.duration || item.durationH === undefined || !(isBare || item.durationH > 24)) return [item];
		durationsH.push(item.durationH);
		return isBare ? [] : [{ ...item, durationH: undefined }];
	});
	return { items: kept, stray: { currentsA, durationsH } };
}
