import { largestHolding } from '../electrical/conductor.js';
import { type Bank, capacityAh, coldShare, dischargeLimit, nominalVoltageV } from '../energy/bank.js';
import {
	bankFields,
	chemistryOf,
	classOf,
	mainsVoltageOf,
	readBank,
	refuseWith,
} from '../energy/bank-fields.js';
import { averageBankW, peakBankW, shareOfSpan } from '../energy/budget.js';
import { cautionBank, cautionMakerLimits } from '../energy/cautions.js';
import { addLimitFinding, addTemperatureFindings } from '../energy/findings.js';
import { efficiencyOf, idleOf, inverterUseFields } from '../energy/inverter-use.js';
import { assumeTypical, type Load, loadFields, partLoads, resolveLoads } from '../energy/loads.js';
import { capacityAtAh } from '../energy/peukert.js';
import { energyWrite, showEnergy } from '../energy/show.js';
import { writeNumber } from '../quantity/write.js';
import { batteryPracticeSource, peukertSource } from '../tables/batteries.js';
import { typicalLoad, typicalLoadSource } from '../tables/loads.js';
import { declareTopic } from '../topic/declare.js';
import { flag, type InputOf, list, number, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';

const fields = {
	loads: list({
		label: 'loads',
		item: {
			name: loadFields.name,
			powerW: loadFields.powerW,
			currentA: loadFields.currentA,
			durationH: loadFields.durationH,
			duty: loadFields.duty,
			count: loadFields.count,
			supply: loadFields.supply,
		},
		max: 60,
		help: 'What is on meanwhile, with watts or amps; hours a day or a share where it is not on all the time.',
	}),
	...bankFields,
	unitWh: quantity({
		label: 'energy of one battery',
		kind: 'energy',
		min: 5,
		max: 200_000,
		aliases: ['battery', 'bank', 'each', 'power station', 'batería', 'batterie'],
	}),
	fromSoc: quantity({
		label: 'state of charge at the start',
		kind: 'fraction',
		min: 0.01,
		max: 1,
		aliases: [
			'from',
			'starting at',
			'start',
			'charged',
			'soc',
			'state of charge',
			'at',
			'desde',
			'von',
			'ab',
		],
		fallback: { value: 1, why: 'from full, as nothing was said' },
	}),
	toSoc: quantity({
		label: 'state of charge to stop at',
		kind: 'fraction',
		min: 0,
		max: 0.99,
		aliases: [
			'till',
			'til',
			'hours til',
			'hours till',
			'hours until',
			'hrs til',
			'stunden bis',
			'horas hasta',
			'down till',
			'to',
			'down to',
			'until',
			'floor',
			'stop at',
			'reserve',
			'left',
			'leave',
			'hasta',
			'bis',
			'rest',
		],
	}),
	...inverterUseFields,
	temperatureC: quantity({
		label: 'temperature of the battery',
		kind: 'temperature',
		min: -40,
		max: 70,
		aliases: ['cold', 'temperature', 'winter', 'temp', 'frío', 'temperatur', 'kälte'],
		fallback: {
			value: 25,
			why: 'inside the heated living space, where the capacity is rated',
			confirm: true,
		},
	}),
	health: quantity({
		label: 'capacity left by age',
		kind: 'fraction',
		min: 0.2,
		max: 1,
		aliases: ['health', 'soh', 'state of health', 'aged', 'gesundheit', 'salud'],
		fallback: { value: 1, why: 'as new; a bank at the end of its life holds 80 %', confirm: true },
	}),
	wantedH: quantity({
		label: 'time it must last',
		kind: 'duration',
		min: 0.01,
		max: 24 * 60,
		aliases: [
			'must last',
			'should last',
			'has to last',
			'needs to last',
			'must do',
			'debe durar',
			'tiene que durar',
			'que dure',
			'muss halten',
			'soll halten',
			'muss reichen',
			'soll reichen',
		],
		help: 'Then the answer says whether the bank carries it.',
	}),
	overnight: flag({
		label: 'for a night',
		yes: [
			'overnight',
			'over night',
			'overnite',
			'all nite',
			'all night',
			'all night long',
			'through the night',
			'the whole night',
			'until morning',
			'till morning',
			'tonight',
			'toda la noche',
			'durante la noche',
			'por la noche',
			'esta noche',
			'hasta la mañana',
			'über nacht',
			'die ganze nacht',
			'durch die nacht',
			'heute nacht',
			'bis morgens',
		],
	}),
	inDays: flag({
		label: 'days are asked for',
		yes: [
			'how many days',
			'how many days will',
			'days will it last',
			'days does it last',
			'how many days does',
			'cuántos días',
			'wie viele tage',
			'wieviel tage',
		],
		help: 'Then the hours of a load are hours a day.',
	}),
	peukert: number({
		label: 'Peukert exponent',
		min: 1,
		max: 1.6,
		aliases: ['peukert', 'exponent', 'peukert exponent'],
	}),
};

type Input = InputOf<typeof fields>;

export const runtime = declareTopic({
	name: 'runtime',
	title: 'How long a bank lasts',
	system: 'energy',
	purpose:
		'How many hours a bank carries a load or a mix of loads, from one state of charge to another, and whether that is enough for a night, some days or the hours that each load is to run.',
	words: [
		'runtime',
		'run time',
		'how long',
		'how long will',
		'last',
		'lasts',
		'how many hours',
		'hours on battery',
		'cuánto dura',
		'cuánto aguanta',
		'aguanta',
		'dura',
		'wie lange',
		'laufzeit',
		'hält',
		'run a',
		'run an',
		'run my',
		'run off',
		'power a',
		'keep running',
		'hours til',
		'hours till',
		'hours until',
		'time til',
		'time till',
		'time until',
		'til empty',
		'till empty',
		'until empty',
		'how many days',
		'cuántos días',
		'wie viele tage',
		'how many days will',
		'days will it last',
		'days does it last',
		'aguanta',
		'wie lang hält',
		'wie lange hält',
		'half the night',
		'die halbe nacht',
		'cuántas horas',
		'cuántas horas dura',
		'cuanto tiempo',
		'wie viele stunden',
		'how long can',
		'how long does',
		'can the bank run',
		'will the bank run',
		'will the battery run',
		'can the battery run',
		'will the batteries run',
		'can the batteries run',
		'does the bank run',
		'how long can i run',
		'reicht die batterie',
		'läuft',
		'run the',
		'carry',
		'carries',
		'my batteries do',
		'my bank do',
		'my battery do',
	],
	askedByQuantities: true,
	// What gives current is no load of a bank, and a store of fuel is none.
	notFor: ['charge', 'fuel', 'solar'],
	examples: [
		'4x100ah lifepo4 how long fridge 60w and fan 20w',
		'how long will 200ah agm last with a 10A load',
		'runtime 5kWh battery air conditioner 600W down to 20%',
		'wie lange hält 100Ah lifepo4 mit kühlschrank 45W und licht 10W',
		'cuánto aguanta 200ah agm nevera 5A',
	],
	method:
		"Usable charge (capacity × share between the two states of charge × cold × age, less by Peukert's law above the rated current) over the average current at the rated voltage. Mains loads through the inverter's efficiency, with its idle draw. A load counts as on all the time unless hours or a share are given. Where it is said how long it must last, or how long each load is on, the energy of that time is held against what the bank gives.",
	fields,
	needs: [
		{ anyOf: ['unitAh', 'unitWh'], question: 'What capacity has the bank (Ah or kWh)?' },
		{ anyOf: ['loads', 'inverterIdleW'], question: 'What is on meanwhile, with watts or amps?' },
	],
	calculate: calculateRuntime,
});

/** What makes the hours: the charge to be had at a current. */
interface Store {
	readonly ratedAh: number;
	readonly ratedH: number;
	readonly exponent: number;
	readonly voltageV: number;
	/** share of the capacity used, cold counted */
	readonly share: number;
}

function hoursAt(store: Store, powerW: number): number {
	const currentA = powerW / store.voltageV;
	return (capacityAtAh(store, currentA) * store.share) / currentA;
}

/** A night that nobody gave the hours of [h]. */
const nightH = 12;

/** What charges a bank and is no load of it; "laptop charger" is one. */
function givesCurrent(name: string | undefined): boolean {
	if (name === undefined || typicalLoad(name) !== null) return false;
	return /^(?:(?:the|a|my) )?(?:(?:battery|dc-?dc|b2b|solar|shore) )?(?:charger|charge|charging|alternator|solar|panels?|dc-?dc|cargador|alternador|placas?|ladegerät|lader|ladebooster|lichtmaschine|solarmodule?)$/iu.test(
		name,
	);
}

const inverterName = /^(?:inverter|wechselrichter|inversor)$/iu;

/** A time that belongs to no load is the time the bank must last. */
function asMeant(input: Input): Input {
	const { items: all, stray } = partLoads(input.loads ?? [], { current: false, duration: true });
	// "ac on a 3000 W inverter": beside other loads the figure of an inverter is its rating, not a draw.
	const others = all.filter(({ name }) => name === undefined || !inverterName.test(name));
	const items =
		others.length > 0 && others.length < all.length
			? others.map((item) => ({ ...item, supply: item.supply ?? ('mains' as const) }))
			: all;
	const spansH = input.wantedH === undefined ? stray.durationsH : [input.wantedH];
	return {
		...input,
		loads: items.length === 0 ? undefined : items,
		wantedH: spansH.length === 0 ? undefined : Math.max(...spansH),
	};
}

/**
 * The time whose energy the bank must have [h]: as said, a night, or, where each load has its hours, the longest of
 * these. Null where only the hours it lasts are asked for.
 */
function spanOf(input: Input, sheet: Sheet): number | null {
	if (input.wantedH !== undefined) return input.wantedH;
	if (input.overnight === true) {
		sheet.assume('wantedH', 'time it must last', nightH, 'a night from dusk to breakfast (practice)', {
			kind: 'duration',
			confirm: true,
		});
		return nightH;
	}
	if (input.inDays === true) return null;
	const hours = (input.loads ?? []).map(({ durationH }) => durationH);
	if (hours.length === 0 || hours.includes(undefined)) return null;
	return Math.max(...(hours as number[]));
}

function calculateRuntime(given: Input, sheet: Sheet) {
	const input = asMeant(given);
	const source = (input.loads ?? []).find(({ name }) => givesCurrent(name))?.name;
	if (source !== undefined) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read "${source}" as a load, but it gives current.`,
			'Name what is on, or ask for the charging time: "charge time 200 Ah AGM, charger 40 A".',
			'loads',
		);
	}
	const chemistry = chemistryOf(input, sheet);
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return refuseWith(sheet, classV);
	const mainsV = mainsVoltageOf(input, sheet);
	if (typeof mainsV !== 'number') return refuseWith(sheet, mainsV);
	const bank = readBank(input, chemistry, classV, sheet);
	if (bank === null) throw new Error('the declaration asks for a capacity');
	if ('code' in bank) return refuseWith(sheet, bank);
	const toGiven = input.toSoc ?? usualFloor(bank, sheet);
	const fromSoc = Math.max(input.fromSoc, toGiven);
	const toSoc = Math.min(input.fromSoc, toGiven);
	if (fromSoc - toSoc < 0.005) {
		return sheet.refuse(
			'impossible',
			sheet.say`From ${sheet.show('fraction', input.fromSoc)} to ${sheet.show('fraction', toGiven)} there is nothing to draw.`,
			'Name a state of charge to start at and a lower one to stop at.',
			'fromSoc',
		);
	}
	const cold = coldShare(chemistry, input.temperatureC);
	if (cold === null) {
		return sheet.refuse(
			'not-covered',
			sheet.say`At ${sheet.show('temperature', input.temperatureC)} my tables for ${chemistry.label} end: hardly any capacity is left and it may freeze.`,
			'Keep the battery inside or heat it, and name the temperature it then has.',
			'temperatureC',
		);
	}

	const voltageV = nominalVoltageV(chemistry, classV);
	const { loads, problem } = resolveLoads(input.loads ?? [], {
		bankV: voltageV,
		mainsV,
		region: sheet.context.region,
		say: sheet.say,
		over: 'while-on',
	});
	if (problem?.kind === 'ask') {
		return sheet.ask({ name: 'loads', label: problem.label, question: problem.question });
	}
	if (problem !== null) return sheet.refuse(problem.kind, problem.text, problem.instead, 'loads');
	assumeTypical(sheet, loads);
	if (loads.some((load) => load.assumed.length > 0)) sheet.source(typicalLoadSource);

	const hasMains = loads.some((load) => load.mains);
	const inverter = {
		efficiency: hasMains ? efficiencyOf(input, sheet) : 1,
		idleW: hasMains ? idleOf(input, sheet) : (input.inverterIdleW ?? 0),
	};
	const spanH = spanOf(input, sheet);
	const averageW = averageBankW(loads, inverter, spanH ?? 24);
	if (averageW <= 0) {
		return sheet.ask({
			name: 'loads',
			label: 'loads',
			question: 'What is on meanwhile, with watts or amps?',
		});
	}
	const store: Store = {
		ratedAh: capacityAh(bank) * input.health,
		ratedH: chemistry.ratedH,
		exponent: input.peukert ?? chemistry.peukertUsed,
		voltageV,
		share: (fromSoc - toSoc) * cold.share,
	};
	const hours = hoursAt(store, averageW);

	writeWorking(sheet, {
		loads,
		inverter,
		averageW,
		spanH,
		store,
		hours,
		bank,
		fromSoc,
		toSoc,
		cold: cold.share,
		input,
	});
	sheet.source(cold.source);
	writeResults(sheet, store, averageW, hours);
	writeNeighbours(sheet, store, loads, inverter, averageW, bank, spanH);
	writeTipping(sheet, store, averageW, hours, spanH);
	addLimitFinding(
		sheet,
		'discharge',
		peakBankW(loads, inverter) / voltageV,
		dischargeLimit(bank, input.protectionA),
	);
	addTemperatureFindings(sheet, chemistry, input.temperatureC, false);
	sheet.caution(cautionBank, cautionMakerLimits);

	const currentA = averageW / voltageV;
	const peukert =
		capacityAtAh(store, currentA) < store.ratedAh * 0.999
			? ` ${sheet.say`At this current the bank gives less than its rating (Peukert).`}`
			: '';
	if (spanH !== null) return answerSpan(sheet, { store, averageW, hours, spanH, fromSoc, toSoc, peukert });
	const power = sheet.show('power', averageW, { round: 'up' });
	const from = sheet.show('fraction', fromSoc);
	const to = sheet.show('fraction', toSoc);
	const because = sheet.say`${sheet.show('current', currentA, { round: 'up' })} at ${writeNumber(voltageV, 1)} V on average, from ${showEnergy(sheet, usableWh(store, averageW), 'down')} usable.`;
	return sheet.answer(sheet.say`${hoursText(sheet, hours)}: ${power} from ${from} down to ${to}`, {
		because: `${because}${peukert}`,
	});
}

interface Span {
	readonly store: Store;
	readonly averageW: number;
	readonly hours: number;
	readonly spanH: number;
	readonly fromSoc: number;
	readonly toSoc: number;
	readonly peukert: string;
}

/** Whether the bank carries what is asked of it, and what is left or missing. */
function answerSpan(sheet: Sheet, { store, averageW, hours, spanH, fromSoc, toSoc, peukert }: Span) {
	const neededWh = averageW * spanH;
	const enough = hours >= spanH * (1 - 1e-9);
	const leftSoc = enough ? fromSoc - ((fromSoc - toSoc) * spanH) / hours : toSoc;
	sheet.step(
		'energy of the time asked for',
		'E = P̄ · t',
		`${writeNumber(averageW, 1)} W × ${writeNumber(spanH, 2)} h`,
		neededWh,
		{ kind: 'energy', source: physics('energy is mean power times time') },
	);
	sheet.result('neededEnergy', 'energy needed', neededWh, {
		kind: 'energy',
		write: energyWrite(neededWh, 'up'),
	});
	sheet.result('verdict', 'verdict', enough ? 'enough' : 'too small');
	// What is left is rounded down: the safe side.
	const down = { round: 'down' } as const;
	if (enough) {
		sheet.result('leftSoc', 'state of charge afterwards', leftSoc, { kind: 'fraction', write: down });
	}
	const span = spanText(sheet, spanH);
	const needed = showEnergy(sheet, neededWh, 'up');
	const usable = showEnergy(sheet, usableWh(store, averageW), 'down');
	const power = sheet.show('power', averageW, { round: 'up' });
	const lasts = sheet.say`It lasts ${hoursText(sheet, hours)} at ${power} on average.`;
	if (enough) {
		return sheet.answer(sheet.say`Enough for ${span}: ${needed} of ${usable} usable`, {
			because: `${lasts} ${sheet.say`${sheet.show('fraction', leftSoc, down)} is left after ${span}.`}${peukert}`,
			governedBy: 'capacity',
		});
	}
	sheet.finding(
		'warning',
		'bank-too-small',
		sheet.say`${needed} are needed for ${span}; the bank gives ${usable}.`,
		batteryPracticeSource,
	);
	return sheet.answer(sheet.say`Too small for ${span}: ${needed} needed, ${usable} usable`, {
		because: `${lasts}${peukert}`,
		governedBy: 'capacity',
	});
}

/** A time as somebody would say it: "20 min", "8 h", "3 days". */
function spanText(sheet: Sheet, spanH: number): string {
	if (spanH < 1) return sheet.show('duration', spanH, { unit: 'min', decimals: 0 });
	if (spanH <= 24) return sheet.say`${writeNumber(spanH, 1)} h`;
	return sheet.say`${writeNumber(spanH / 24, 1)} days`;
}

function usualFloor(bank: Bank, sheet: Sheet): number {
	const floor = 1 - bank.chemistry.depthOfDischarge;
	sheet.assume(
		'toSoc',
		'state of charge to stop at',
		floor,
		sheet.say`usual for ${bank.chemistry.label} that shall last (practice)`,
		{ kind: 'fraction', confirm: true },
	);
	return floor;
}

function usableWh(store: Store, powerW: number): number {
	return hoursAt(store, powerW) * powerW;
}

/** Hours rounded down; from two days on also in days. */
function hoursText(sheet: Sheet, hours: number): string {
	if (hours < 1) return sheet.show('duration', hours, { round: 'down', unit: 'min', decimals: 0 });
	const figure = writeNumber(hours, hours < 48 ? 1 : 0, 'down');
	if (hours < 48) return sheet.say`${figure} h`;
	return sheet.say`${figure} h (${writeNumber(hours / 24, 1, 'down')} days)`;
}

interface Working {
	readonly loads: readonly Load[];
	readonly inverter: { readonly efficiency: number; readonly idleW: number };
	readonly averageW: number;
	readonly spanH: number | null;
	readonly store: Store;
	readonly hours: number;
	readonly bank: Bank;
	readonly fromSoc: number;
	readonly toSoc: number;
	readonly cold: number;
	readonly input: Input;
}

function writeWorking(sheet: Sheet, working: Working): void {
	const { loads, inverter, averageW, store, hours, bank, input } = working;
	const n = (value: number, decimals = 2) => writeNumber(value, decimals);
	for (const load of loads) {
		const share = shareOfSpan(load, working.spanH ?? 24);
		sheet.step(
			load.shown,
			load.mains ? 'P̄ = P · share / η' : 'P̄ = P · share',
			load.mains
				? `${n(load.runningW, 1)} W × ${n(share, 3)} / ${n(inverter.efficiency, 3)}`
				: `${n(load.runningW, 1)} W × ${n(share, 3)}`,
			(load.runningW * share) / (load.mains ? inverter.efficiency : 1),
			{ kind: 'power', source: physics('mean power') },
		);
	}
	if (inverter.idleW > 0) {
		sheet.step('idle draw of the inverter', 'Pi', `${n(inverter.idleW, 1)} W`, inverter.idleW, {
			kind: 'power',
			source: practice('idle draw counted all the time'),
		});
	}
	const currentA = averageW / store.voltageV;
	sheet.step('average current', 'I = P / V', `${n(averageW, 1)} W / ${n(store.voltageV)} V`, currentA, {
		kind: 'current',
		source: physics("Ohm's and Joule's laws"),
	});
	sheet.step(
		'capacity as it is',
		'C = units in parallel · capacity · age',
		`${bank.parallel} × ${n(bank.unitAh, 1)} Ah × ${n(input.health, 3)}`,
		store.ratedAh,
		{ kind: 'charge', source: batteryPracticeSource },
	);
	const atAh = capacityAtAh(store, currentA);
	if (atAh < store.ratedAh) {
		sheet.step(
			'capacity at this current',
			'CI = C · (C / (I · H))^(k − 1)',
			`${n(store.ratedAh, 1)} Ah × (${n(store.ratedAh, 1)} / (${n(currentA)} × ${n(store.ratedH)}))^${n(store.exponent - 1, 3)}`,
			atAh,
			{ kind: 'charge', source: peukertSource },
		);
	}
	sheet.step(
		'charge to be had',
		'Q = CI · (s1 − s2) · cold share',
		`${n(atAh, 1)} Ah × (${n(working.fromSoc, 3)} − ${n(working.toSoc, 3)}) × ${n(working.cold, 3)}`,
		atAh * store.share,
		{ kind: 'charge', source: batteryPracticeSource },
	);
	sheet.step('time', 't = Q / I', `${n(atAh * store.share, 1)} Ah / ${n(currentA)} A`, hours, {
		kind: 'duration',
		source: physics('charge over current'),
	});
}

function writeResults(sheet: Sheet, store: Store, averageW: number, hours: number): void {
	const currentA = averageW / store.voltageV;
	const energy = usableWh(store, averageW);
	sheet.result('runtime', 'time it lasts', hours, { kind: 'duration', write: { round: 'down' } });
	sheet.result('averagePower', 'average power from the bank', averageW, {
		kind: 'power',
		write: { round: 'up', decimals: 1 },
	});
	sheet.result('averageCurrent', 'average current from the bank', currentA, {
		kind: 'current',
		write: { round: 'up' },
	});
	sheet.result('usableCharge', 'charge to be had', capacityAtAh(store, currentA) * store.share, {
		kind: 'charge',
		write: { round: 'down' },
	});
	sheet.result('usableEnergy', 'energy to be had', energy, {
		kind: 'energy',
		write: energyWrite(energy, 'down'),
	});
}

function writeNeighbours(
	sheet: Sheet,
	store: Store,
	loads: readonly Load[],
	inverter: { readonly efficiency: number; readonly idleW: number },
	averageW: number,
	bank: Bank,
	spanH: number | null,
): void {
	const cycling = loads.filter(
		(load) => load.typical !== null && load.typical.duty < 1 && load.duty === 1 && load.hoursPerDay === null,
	);
	if (cycling.length > 0) {
		const cycled = loads.map((load) =>
			cycling.includes(load) && load.typical !== null ? { ...load, duty: load.typical.duty } : load,
		);
		const names = cycling.map((load) => load.shown).join(', ');
		sheet.neighbour(
			sheet.say`${names} running its usual share of the time`,
			true,
			sheet.say`about ${hoursText(sheet, hoursAt(store, averageBankW(cycled, inverter, spanH ?? 24)))}`,
		);
	}
	const lastsH = (parallel: number) =>
		hoursAt({ ...store, ratedAh: (store.ratedAh * parallel) / bank.parallel }, averageW);
	const carries = (parallel: number) => spanH === null || lastsH(parallel) >= spanH * (1 - 1e-9);
	let least = 1;
	while (!carries(least) && least < 64) least += 1;
	const beside = [bank.parallel - 1, bank.parallel + 1, ...(spanH === null ? [] : [least])];
	for (const parallel of [...new Set(beside)].sort((a, b) => a - b)) {
		if (parallel < 1 || parallel === bank.parallel) continue;
		sheet.neighbour(
			sheet.say`${parallel * bank.series} of these batteries`,
			carries(parallel),
			sheet.say`${hoursText(sheet, lastsH(parallel))}`,
		);
	}
}

/** The steady load that the bank carries for the time asked for, or round the clock. */
function writeTipping(
	sheet: Sheet,
	store: Store,
	averageW: number,
	hours: number,
	spanH: number | null,
): void {
	const timeH = spanH ?? 24;
	const least = Math.min(averageW, 0.001);
	const most = Math.max(averageW, (averageW * hours) / Math.min(6, timeH));
	if (hoursAt(store, least) < timeH) return;
	const powerW = largestHolding(least, most, (power) => hoursAt(store, power) >= timeH);
	const shown = sheet.show('power', powerW, { round: 'down' });
	sheet.tipping(
		'averagePowerW',
		'average power',
		powerW,
		spanH === null
			? sheet.say`up to ${shown} for a full day`
			: sheet.say`up to ${shown} on average for ${spanText(sheet, spanH)}`,
		{ kind: 'power' },
	);
}
