import { arrayOf, assumeArray, optionalArrayFields, ratedPower } from '../solar/array-fields.js';
import { dailyFactors } from '../solar/day-sequence.js';
import { isDecision, readPlace } from '../solar/place-input.js';
import type { Place } from '../solar/places.js';
import { daysInMonth } from '../solar/typical-day.js';
import { type DayYield, yearYield } from '../solar/yield.js';
import { typicalLoadSource } from '../tables/loads.js';
import { type InputOf, list, month, place, quantity } from '../topic/field.js';
import type { Decision, Sheet } from '../topic/sheet.js';
import type { Say } from '../topic/translate.js';
import { monthNames } from '../topic/value.js';
import { type Bank, chargeLimit, coldShare, energyWh, nominalVoltageV } from './bank.js';
import { bankFields, chemistryOf, classOf, readBank } from './bank-fields.js';
import { clockSource, dayShape, spread, startOf, type TimedLoad } from './day-shape.js';
import { inverterUse, inverterUseFields } from './inverter-use.js';
import { assumeTypical, loadFields, partLoads, resolveLoads } from './loads.js';
import {
	type HourlyPowers,
	keepsReserve,
	type SimulatedBank,
	type Simulation,
	simulate,
	smallestArray,
	smallestBank,
} from './simulation.js';

const dailyWords = [
	'a day',
	'per day',
	'each day',
	'daily',
	'need',
	'use',
	'used',
	'usage',
	'consumption',
	'al día',
	'por día',
	'am tag',
	'pro tag',
	'täglich',
	'consumo',
	'verbrauch',
] as const;

export const simulationFields = {
	loads: list({
		label: 'loads',
		item: {
			name: loadFields.name,
			powerW: loadFields.powerW,
			currentA: loadFields.currentA,
			durationH: loadFields.durationH,
			startH: quantity({ label: 'clock hour it begins', kind: 'duration', min: 0, max: 24 }),
			duty: loadFields.duty,
			count: loadFields.count,
			supply: loadFields.supply,
		},
		max: 60,
		help: 'Each with watts or amps, hours a day and, as a second time, the clock hour it begins: "lights 20W 5h from 18h".',
	}),
	needWh: quantity({
		label: 'energy used a day',
		kind: 'energy',
		min: 1,
		max: 100_000,
		aliases: dailyWords,
		help: 'In place of a list: taken evenly over the day.',
	}),
	...bankFields,
	unitAh: quantity({
		label: 'capacity of one battery',
		kind: 'charge',
		min: 1,
		max: 5000,
		aliases: [
			'each',
			'per battery',
			'batteries',
			'battery',
			'house battery',
			'bank',
			'battery bank',
			'lifepo4',
			'lithium',
			'agm',
			'gel',
			'flooded',
			'lead acid',
			'litio',
			'batería',
			'baterías',
			'batterie',
			'batterien',
		],
	}),
	unitWh: quantity({
		label: 'energy of one battery',
		kind: 'energy',
		min: 10,
		max: 100_000,
		aliases: ['bank', 'battery', 'batteries', 'battery bank', 'batería', 'batterie', 'lithium', 'lifepo4'],
	}),
	needAh: quantity({
		label: 'charge used a day',
		kind: 'charge',
		min: 0.1,
		max: 5000,
		aliases: dailyWords,
		help: 'In place of a list: taken evenly over the day.',
	}),
	...optionalArrayFields,
	panelW: quantity({
		label: 'rated power of a panel',
		kind: 'power',
		min: 1,
		max: 20_000,
		// A power with none of these words is a load's.
		aliases: [
			'solar',
			'panel',
			'panels',
			'of solar',
			'of panels',
			'module',
			'modules',
			'pv',
			'solar panel',
			'solar panels',
			'array',
			'placa',
			'placas',
			'placas solares',
			'panel solar',
			'paneles',
			'paneles solares',
			'solarmodul',
			'solarmodule',
			'modul',
			'solaranlage',
			'photovoltaik',
			'sonne',
		],
	}),
	place: place({
		label: 'place',
		aliases: ['in', 'at', 'near', 'place', 'location', 'lugar', 'ort'],
		help: 'A town, a park or a position; needed where there is solar.',
	}),
	month: month({
		label: 'month',
		aliases: ['month', 'mes', 'monat'],
		help: 'The first month of the run; without it and without a period a whole year is run.',
	}),
	periodH: quantity({
		label: 'period',
		kind: 'duration',
		min: 24,
		max: 24 * 365,
		aliases: ['for', 'over', 'period', 'during', 'run', 'trip', 'zeitraum', 'durante', 'über'],
	}),
	driveH: quantity({
		label: 'driving a day',
		kind: 'duration',
		min: 0,
		max: 24,
		aliases: [
			'driving',
			'drive',
			'drives',
			'on the road',
			'engine',
			'fahren',
			'fahrt',
			'conduciendo',
			'conducir',
		],
	}),
	alternatorA: quantity({
		label: 'charging current while driving',
		kind: 'current',
		min: 0.1,
		max: 500,
		aliases: [
			'alternator',
			'dc-dc',
			'dcdc',
			'dc dc',
			'b2b',
			'driving',
			'lichtmaschine',
			'ladebooster',
			'alternador',
		],
	}),
	shoreH: quantity({
		label: 'hours a day on shore power',
		kind: 'duration',
		min: 0,
		max: 24,
		aliases: ['shore', 'shore power', 'plugged in', 'hookup', 'landstrom', 'enchufado'],
	}),
	shoreA: quantity({
		label: 'charging current on shore power',
		kind: 'current',
		min: 0.1,
		max: 500,
		aliases: ['shore', 'charger', 'shore charger', 'battery charger', 'ladegerät', 'cargador', 'landstrom'],
	}),
	startSoc: quantity({
		label: 'state of charge at the start',
		kind: 'fraction',
		min: 0.01,
		max: 1,
		aliases: [
			'start',
			'starting',
			'starts',
			'begin',
			'beginning',
			'initially',
			'soc',
			'anfang',
			'al empezar',
		],
		fallback: { value: 1, why: 'full at the start' },
	}),
	reserve: quantity({
		label: 'reserve to keep',
		kind: 'fraction',
		min: 0,
		max: 0.95,
		aliases: ['reserve', 'keep', 'minimum', 'above', 'not below', 'reserva', 'mindestens'],
		fallback: {
			value: (given) => (isLeadAcid(given.chemistry) ? 0.5 : 0.2),
			why: '20 % for lithium, 50 % for lead-acid (practice)',
		},
	}),
	floor: quantity({
		label: 'state of charge at which the loads are switched off',
		kind: 'fraction',
		min: 0,
		max: 0.9,
		aliases: [
			'cut-off',
			'cutoff',
			'cut off',
			'empty',
			'low voltage',
			'disconnect',
			'min soc',
			'minimum soc',
			'abschaltung',
			'corte',
		],
		fallback: {
			value: (given) => (isLeadAcid(given.chemistry) ? 0.2 : 0.05),
			why: 'where low-voltage cut-offs usually stand (practice)',
		},
	}),
	chargeLimitA: quantity({
		label: 'charge limit of one battery',
		kind: 'current',
		min: 0.1,
		max: 2000,
		aliases: [
			'max charge',
			'charge limit',
			'max charge current',
			'maximum charge',
			'ladelimit',
			'límite de carga',
		],
	}),
	temperatureC: quantity({
		label: 'temperature of the battery',
		kind: 'temperature',
		min: -40,
		max: 70,
		aliases: ['battery at', 'bank at', 'temperature', 'temp', 'cold', 'temperatur', 'temperatura'],
		fallback: { value: 20, why: 'kept inside the living space', confirm: true },
	}),
	...inverterUseFields,
};

export type SimulationInput = InputOf<typeof simulationFields>;

function isLeadAcid(chemistry: unknown): boolean {
	return chemistry === 'agm' || chemistry === 'gel' || chemistry === 'flooded';
}

/** Hours of the day at which driving and shore power begin where nobody said (practice). */
const driveStartH = 10;
const shoreStartH = 18;

/** A van ready to be run: the hours of its powers and the bank. */
export interface VanSimulation {
	/** month of the first hour, 1 to 12 */
	readonly firstMonth: number;
	readonly days: number;
	/** the sun's share is of the array named, or of 1 W where only its size is asked */
	readonly powers: HourlyPowers;
	/** with solar power per watt of array, or null where there is none */
	readonly perW: HourlyPowers | null;
	/** rated power [W]; 0 for none, null where it is to be found */
	readonly arrayW: number | null;
	/** null where its size is to be found */
	readonly bank: Bank | null;
	readonly classV: number;
	readonly nominalV: number;
	/** the bank of a capacity [Wh], as simulated */
	readonly bankOf: (capacityWh: number) => SimulatedBank;
	/** share of the rated capacity left at the temperature */
	readonly coldShare: number;
	readonly place: Place | null;
	readonly year: readonly DayYield[] | null;
	/** mean power from the bank in each clock hour [W] */
	readonly loadShape: readonly number[];
	/** most current that engine and shore charge with at once [A] */
	readonly chargerA: number;
}

/** Reads everything off the input, or returns the question or refusal that stands in the way. */
function planSimulation(input: SimulationInput, sheet: Sheet): VanSimulation | Decision {
	const chemistry = chemistryOf(input, sheet);
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return { kind: 'refuse', refusals: [classV] };
	const bank = readBank(input, chemistry, classV, sheet);
	if (bank !== null && 'code' in bank) return { kind: 'refuse', refusals: [bank] };
	if (input.floor > input.reserve) {
		return sheet.refuse(
			'contradiction',
			sheet.say`The loads are switched off at ${sheet.show('fraction', input.floor)}, above the reserve of ${sheet.show('fraction', input.reserve)}.`,
			'Give a cut-off at or below the reserve.',
			'floor',
		);
	}
	if (input.startSoc < input.reserve) {
		return sheet.refuse(
			'contradiction',
			sheet.say`A start at ${sheet.show('fraction', input.startSoc)} is already below the reserve of ${sheet.show('fraction', input.reserve)}.`,
			'Give a start at or above the reserve.',
			'startSoc',
		);
	}

	const parted = partPeriod(input.loads ?? []);
	const stray = partLoads(parted.items, { current: false, duration: true });
	const { items, barePowerW } = partArray(input, stray.items);
	const loadShape = readLoads(input, items, classV, sheet);
	if (!Array.isArray(loadShape)) return loadShape;
	const periodH = input.periodH ?? parted.periodH ?? stray.stray.durationsH.find((hours) => hours >= 24);

	const ratedW = ratedPower(input) ?? barePowerW;
	if (barePowerW !== null) {
		sheet.assume(
			'arrayW',
			'rated power of the array',
			barePowerW,
			'a power with neither name nor hours at a place',
			{
				kind: 'power',
				confirm: true,
			},
		);
	}
	const wantsSun = ratedW !== null || (input.place !== undefined && bank !== null);
	if (ratedW !== null && input.place === undefined) {
		return sheet.ask({
			name: 'place',
			label: 'place',
			question: 'Where is the van (a town, a park, or a position such as "35.2,-111.7")?',
		});
	}
	if (bank === null && ratedW === null && input.driveH === undefined && input.shoreH === undefined) {
		return sheet.ask({
			name: 'unitAh',
			label: 'bank',
			question: 'Which bank is there (Ah), or which array (W)?',
		});
	}
	const where = input.place === undefined ? null : readPlace(sheet, input.place);
	if (where !== null && isDecision(where)) return where;
	const year =
		where !== null && wantsSun ? yearYield(where, arrayOf(1, assumeArray(input, sheet), where, sheet)) : null;

	const { firstMonth, days } = periodOf(input, periodH, year, sheet);
	const nominalV = nominalVoltageV(chemistry, classV);
	const cold = coldShare(chemistry, input.temperatureC);
	if (cold === null) {
		return sheet.refuse(
			'not-covered',
			sheet.say`At ${sheet.show('temperature', input.temperatureC)} no table says what is left of this bank.`,
			'Give the temperature of the battery itself, above −17 °C (0 °F).',
			'temperatureC',
		);
	}
	sheet.source(cold.source);
	const charging = chargingShapes(input, nominalV, sheet);
	const hours = days * 24;
	const loadW = Float64Array.from({ length: hours }, (_, hour) => loadShape[hour % 24] as number);
	const engineW = Float64Array.from({ length: hours }, (_, hour) => charging.engine[hour % 24] as number);
	const shoreW = Float64Array.from({ length: hours }, (_, hour) => charging.shore[hour % 24] as number);
	const perWatt = year === null ? null : solarHours(year, firstMonth, days);
	const solarW = new Float64Array(hours);
	if (perWatt !== null && ratedW !== null) {
		for (let hour = 0; hour < hours; hour += 1) solarW[hour] = (perWatt[hour] as number) * ratedW;
	}
	const tooCold = !chemistry.leadAcid && input.temperatureC < chemistry.chargeMinC;
	const bankOf = (capacityWh: number): SimulatedBank => {
		const ratedAh = capacityWh / nominalV;
		const limitA =
			bank !== null && input.chargeLimitA !== undefined
				? chargeLimit(bank, input.chargeLimitA).limitA
				: ratedAh * chemistry.chargeRatePerH;
		return {
			capacityWh: capacityWh * cold.share,
			floor: input.floor,
			start: input.startSoc,
			chargeLimitW: tooCold ? 0 : limitA * nominalV,
			efficiency: chemistry.roundTripEfficiency,
		};
	};
	return {
		firstMonth,
		days,
		powers: { loadW, solarW, engineW, shoreW },
		perW: perWatt === null ? null : { loadW, solarW: perWatt, engineW, shoreW },
		arrayW: ratedW ?? (year === null ? 0 : null),
		bank,
		classV,
		nominalV,
		bankOf,
		coldShare: cold.share,
		place: where,
		year,
		loadShape,
		chargerA: charging.mostA,
	};
}

/** A run with everything decided: what was asked for is found, what was named is kept. */
export interface SolvedSimulation {
	readonly plan: VanSimulation;
	readonly run: Simulation;
	readonly powers: HourlyPowers;
	readonly bank: SimulatedBank;
	/** rated capacity of the bank as run [Wh] */
	readonly capacityWh: number;
	/** rated power of the array as run [W] */
	readonly arrayW: number;
	/** smallest bank that keeps the reserve with the array named [Wh], or null where none does or no array is fixed */
	readonly bankFound: number | null;
	/** smallest array that keeps the reserve with the bank as run [W], or null where none does */
	readonly arrayFound: number | null;
}

/** Largest bank and array that are looked for, and the steps of the answer. */
const mostBankAh = 3000;
const bankStepAh = 10;
const mostArrayW = 5000;
const arrayStepW = 10;

/** Plans the run, finds the smallest bank and array that keep the reserve, and runs it. */
export function solveSimulation(input: SimulationInput, sheet: Sheet): SolvedSimulation | Decision {
	const plan = planSimulation(input, sheet);
	if ('kind' in plan) return plan;
	const { reserve } = input;
	const bankFound =
		plan.arrayW === null
			? null
			: smallestBank(plan.powers, plan.bankOf, {
					reserve,
					most: mostBankAh * plan.nominalV,
					step: bankStepAh * plan.nominalV,
				});
	const capacityWh = plan.bank === null ? bankFound : energyWh(plan.bank);
	if (capacityWh === null) {
		return sheet.refuse(
			'impossible',
			sheet.say`No bank up to ${sheet.show('charge', mostBankAh)} keeps the reserve: over the period less comes in than the loads take.`,
			'Name a larger array, more driving or shore power, or fewer loads.',
			'unitAh',
		);
	}
	const bank = plan.bankOf(capacityWh);
	if (plan.arrayW === null && keepsReserve(plan.powers, bank, reserve)) {
		// Driving and shore power carry it: no array is called for.
		const run = simulate(plan.powers, bank);
		return {
			plan: { ...plan, arrayW: 0 },
			run,
			powers: plan.powers,
			bank,
			capacityWh,
			arrayW: 0,
			bankFound,
			arrayFound: null,
		};
	}
	const arrayFound =
		plan.perW === null
			? null
			: smallestArray(plan.perW, bank, { reserve, most: mostArrayW, step: arrayStepW });
	if (plan.arrayW === null && arrayFound === null) {
		return sheet.refuse(
			'impossible',
			sheet.say`No array up to ${sheet.show('power', mostArrayW)} keeps the reserve with this bank in the period.`,
			'Name a larger bank, driving or shore power, fewer loads or another month.',
			'panelW',
		);
	}
	const arrayW = plan.arrayW ?? (arrayFound as number);
	const powers =
		plan.perW === null
			? plan.powers
			: { ...plan.perW, solarW: plan.perW.solarW.map((value) => value * arrayW) };
	return { plan, run: simulate(powers, bank), powers, bank, capacityWh, arrayW, bankFound, arrayFound };
}

/**
 * "simulate 7 days fridge 45W 24h": no load runs 168 h a day, so a time of more than a day is the period of the run,
 * and the second time is the load's hours.
 */
function partPeriod(items: NonNullable<SimulationInput['loads']>): {
	readonly items: NonNullable<SimulationInput['loads']>;
	readonly periodH: number | undefined;
} {
	let periodH: number | undefined;
	const kept = items.map((item) => {
		if (item.durationH === undefined || item.durationH <= 24) return item;
		periodH ??= item.durationH;
		return { ...item, durationH: item.startH, startH: undefined };
	});
	return { items: kept.filter((item) => Object.values(item).some((value) => value !== undefined)), periodH };
}

/** "300Ah 600W Moab june 1.5 kWh a day": a lone power beside a place is the array, not a load. */
function partArray(
	input: SimulationInput,
	items: NonNullable<SimulationInput['loads']>,
): { readonly items: NonNullable<SimulationInput['loads']>; readonly barePowerW: number | null } {
	if (input.place === undefined || ratedPower(input) !== null) return { items, barePowerW: null };
	const bare = items.filter(
		(item) =>
			item.powerW !== undefined && Object.values(item).filter((value) => value !== undefined).length === 1,
	);
	const [only] = bare;
	if (bare.length !== 1 || only?.powerW === undefined) return { items, barePowerW: null };
	return { items: items.filter((item) => item !== only), barePowerW: only.powerW };
}

function readLoads(
	input: SimulationInput,
	items: NonNullable<SimulationInput['loads']>,
	classV: number,
	sheet: Sheet,
): number[] | Decision {
	const given = [items.length > 0, input.needWh !== undefined, input.needAh !== undefined].filter(
		Boolean,
	).length;
	if (given === 0) {
		return sheet.ask({
			name: 'loads',
			label: 'loads',
			question: 'Which loads run (watts and hours a day), or how much is used a day (Wh or Ah)?',
		});
	}
	if (items.length === 0) {
		const dailyWh = input.needWh ?? (input.needAh as number) * classV;
		sheet.assume('loadShape', 'when the energy is used', 'evenly over the day', 'no list of loads was given');
		return dayShape([], { efficiency: 1, idleW: 0 }).map(() => dailyWh / 24);
	}
	if (given > 1) {
		return sheet.refuse(
			'contradiction',
			'I read both a list of loads and an amount used a day.',
			'Give the list or the amount, not both.',
			'loads',
		);
	}
	const { loads, problem } = resolveLoads(items, {
		bankV: classV,
		mainsV: sheet.rules.mainsVoltageV,
		region: sheet.context.region,
		over: 'day',
	});
	if (problem?.kind === 'ask') {
		return sheet.ask({ name: 'loads', label: problem.label, question: problem.question });
	}
	if (problem !== null) return sheet.refuse(problem.kind, problem.text, problem.instead, 'loads');
	assumeTypical(sheet, loads);
	if (loads.some((load) => load.assumed.length > 0)) sheet.source(typicalLoadSource);
	const hasMains = loads.some((load) => load.mains);
	const inverter = hasMains ? inverterUse(input, sheet) : { efficiency: 1, idleW: 0 };
	const timed = loads.map(
		(load, index): TimedLoad => ({ load, startH: startOf(load, items[index]?.startH) }),
	);
	for (const [index, { load, startH }] of timed.entries()) {
		if (items[index]?.startH !== undefined) continue;
		const when = startH === null ? 'evenly over the day' : sheet.say`from ${startH}:00`;
		sheet.assume(
			`loads.${load.name}.startH`,
			sheet.say`when the ${load.name} runs`,
			when,
			'usual (practice)',
		);
		sheet.source(clockSource);
	}
	return dayShape(timed, inverter);
}

/** Which months and how many days are run. */
function periodOf(
	input: SimulationInput,
	periodH: number | undefined,
	year: readonly DayYield[] | null,
	sheet: Sheet,
): { readonly firstMonth: number; readonly days: number } {
	const days = periodH === undefined ? null : Math.max(1, Math.ceil(periodH / 24 - 1e-9));
	if (input.month !== undefined) {
		return { firstMonth: input.month, days: days ?? (daysInMonth[input.month - 1] as number) };
	}
	if (year === null) {
		if (days === null) sheet.assume('periodH', 'period', '7 days', 'no sun in it: every day is the same');
		return { firstMonth: 1, days: days ?? 7 };
	}
	if (days === null) {
		sheet.assume('periodH', 'period', 'a year', 'neither month nor period was named');
		return { firstMonth: 1, days: 365 };
	}
	if (days >= 365) return { firstMonth: 1, days: 365 };
	const worst = year.reduce((least, one) => (one.batteryWh < least.batteryWh ? one : least)).month;
	sheet.assume(
		'month',
		'month',
		monthNames[worst - 1] as string,
		'no month was named: the one with the least sun counts',
		{
			confirm: true,
		},
	);
	return { firstMonth: worst, days };
}

/** Solar power of 1 W of array in every hour of the run: each month's mean day times the factor of the day. */
function solarHours(year: readonly DayYield[], firstMonth: number, days: number): Float64Array {
	const solarW = new Float64Array(days * 24);
	let month = firstMonth;
	let dayOfMonth = 0;
	let factors: readonly number[] = [];
	for (let day = 0; day < days; day += 1) {
		const count = daysInMonth[month - 1] as number;
		const { hourlyW, typical } = year[month - 1] as DayYield;
		if (dayOfMonth === 0) factors = dailyFactors(typical.clearness, count);
		for (let hour = 0; hour < 24; hour += 1) {
			solarW[day * 24 + hour] = (hourlyW[hour] as number) * (factors[dayOfMonth] as number);
		}
		dayOfMonth += 1;
		if (dayOfMonth === count) {
			dayOfMonth = 0;
			month = (month % 12) + 1;
		}
	}
	return solarW;
}

function chargingShapes(
	input: SimulationInput,
	nominalV: number,
	sheet: Sheet,
): { readonly engine: number[]; readonly shore: number[]; readonly mostA: number } {
	const engine = new Array<number>(24).fill(0);
	const shore = new Array<number>(24).fill(0);
	const driveH = input.driveH ?? 0;
	const shoreH = input.shoreH ?? 0;
	const engineA =
		driveH > 0 ? currentOf(input.alternatorA, 'alternatorA', 'charging current while driving', sheet) : 0;
	const shoreA = shoreH > 0 ? currentOf(input.shoreA, 'shoreA', 'charging current on shore power', sheet) : 0;
	spread(engine, engineA * nominalV * driveH, driveStartH, driveH);
	spread(shore, shoreA * nominalV * shoreH, shoreStartH, shoreH);
	if (driveH > 0) {
		sheet.assume(
			'driveStart',
			'when the van is driven',
			sheet.say`from ${driveStartH}:00 every day`,
			'usual (practice)',
		);
	}
	if (shoreH > 0) {
		sheet.assume(
			'shoreStart',
			'when shore power is there',
			sheet.say`from ${shoreStartH}:00 every day`,
			'usual (practice)',
		);
	}
	return { engine, shore, mostA: engineA + shoreA };
}

/** Charging current where only the hours were named [A] (practice). */
const usualChargerA = 20;

function currentOf(given: number | undefined, name: string, label: string, sheet: Sheet): number {
	if (given !== undefined) return given;
	sheet.assume(name, label, usualChargerA, 'a small charger, the safe side (practice)', {
		kind: 'current',
		confirm: true,
	});
	return usualChargerA;
}

/** "day 12, 07:00" for an hour of the run, with the month where it is a long one. */
export function whenText(plan: VanSimulation, hour: number, say: Say): string {
	let month = plan.firstMonth;
	let day = Math.floor(hour / 24);
	const clock = `${String((hour % 24) + 1).padStart(2, '0')}:00`;
	if (plan.year === null) return say`day ${day + 1}, ${clock}`;
	while (day >= (daysInMonth[month - 1] as number)) {
		day -= daysInMonth[month - 1] as number;
		month = (month % 12) + 1;
	}
	return say`${monthNames[month - 1] ?? month} ${day + 1}, ${clock}`;
}
