import {
	type Bank,
	type CapacityFactors,
	capacityAh,
	chargeLimit,
	coldShare,
	cutoffVoltageV,
	dischargeLimit,
	energyWh,
	nominalVoltageV,
	requiredCapacityAh,
	unitsInSeries,
} from '../energy/bank.js';
import { bankFields, chemistryOf, classOf, layoutText, readBank, refuseWith } from '../energy/bank-fields.js';
import {
	cautionBank,
	cautionEqualUnits,
	cautionFuseBank,
	cautionLeadAcidVent,
	cautionLithiumCold,
	cautionMakerLimits,
} from '../energy/cautions.js';
import { addBankFindings, addLimitFinding, addTemperatureFindings } from '../energy/findings.js';
import { efficiencyOf, inverterUseFields } from '../energy/inverter-use.js';
import { loadFields, partLoads } from '../energy/loads.js';
import { capacityAtAh, ratedForAh } from '../energy/peukert.js';
import { energyWrite, showEnergy } from '../energy/show.js';
import { writeNumber } from '../quantity/write.js';
import {
	ageingFactor,
	ageingSource,
	batteryPracticeSource,
	type Chemistry,
	peukertSource,
} from '../tables/batteries.js';
import { declareTopic } from '../topic/declare.js';
import { flag, type InputOf, list, number, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import type { Refusal } from '../topic/sizing.js';
import { physics, practice } from '../topic/source.js';
import { budget } from './budget.js';

const fields = {
	chargePerDayAh: quantity({
		label: 'charge used a day',
		kind: 'charge',
		min: 0.1,
		max: 5000,
		aliases: [
			'a day',
			'per day',
			'each day',
			'daily',
			'use',
			'used',
			'using',
			'usage',
			'need',
			'al día',
			'por día',
			'am tag',
			'pro tag',
			'täglich',
		],
	}),
	energyPerDayWh: quantity({
		label: 'energy used a day',
		kind: 'energy',
		min: 1,
		max: 100_000,
		aliases: [
			'a day',
			'per day',
			'each day',
			'daily',
			'use',
			'used',
			'al día',
			'por día',
			'am tag',
			'pro tag',
		],
	}),
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
		help: 'In place of a daily figure: each load with watts or amps and hours a day.',
	}),
	autonomyH: quantity({
		label: 'time between charges',
		kind: 'duration',
		min: 1,
		max: 24 * 60,
		aliases: [
			'autonomy',
			'off grid',
			'off-grid',
			'without sun',
			'without charging',
			'no sun',
			'reserve',
			'autonomía',
			'autark',
			'autarkie',
			'ohne sonne',
		],
		help: 'How long the bank must last without being charged.',
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
			'house battery',
			'units',
			'lifepo4',
			'lithium',
			'agm',
			'gel',
			'flooded',
			'lead acid',
			'litio',
			'baterías',
			'batterien',
		],
	}),
	depthOfDischarge: quantity({
		label: 'depth of discharge',
		kind: 'fraction',
		min: 0.05,
		max: 1,
		aliases: [
			'dod',
			'depth of discharge',
			'depth',
			'discharge depth',
			'usable',
			'entladetiefe',
			'profundidad de descarga',
		],
	}),
	temperatureC: quantity({
		label: 'lowest temperature of the battery',
		kind: 'temperature',
		min: -40,
		max: 70,
		aliases: ['cold', 'temperature', 'winter', 'freezing', 'down to', 'temp', 'frío', 'temperatur', 'kälte'],
	}),
	heated: flag({
		label: 'battery heated',
		yes: ['heated battery', 'self heating', 'self-heating', 'self heated', 'battery heater', 'beheizt'],
		no: ['not heated', 'unheated', 'no heater'],
	}),
	ageing: number({
		label: 'ageing factor',
		min: 1,
		max: 2,
		aliases: ['ageing', 'aging', 'ageing factor', 'aging factor', 'alterung', 'envejecimiento'],
	}),
	margin: number({
		label: 'design margin',
		min: 1,
		max: 2,
		aliases: ['margin', 'design margin', 'reserve factor', 'zuschlag'],
		help: 'On top of everything else, 1 for none; IEEE 485 suggests 1.1 to 1.15 where loads may grow.',
	}),
	peukert: number({
		label: 'Peukert exponent',
		min: 1,
		max: 1.6,
		aliases: ['peukert', 'exponent', 'peukert exponent'],
	}),
	chargeA: quantity({
		label: 'charge current',
		kind: 'current',
		min: 0.1,
		max: 2000,
		aliases: [
			'charger',
			'charge',
			'charging',
			'chargers',
			'charge current',
			'dcdc',
			'dc-dc',
			'solar controller',
			'ladegerät',
			'ladestrom',
			'lader',
			'carga',
			'cargador',
		],
		help: 'All chargers that may run at once, added up.',
	}),
	dischargeA: quantity({
		label: 'steady discharge current',
		kind: 'current',
		min: 0.1,
		max: 2000,
		aliases: ['discharge', 'draw', 'draws', 'drawing', 'load', 'loads', 'entladestrom', 'descarga'],
	}),
	inverterW: quantity({
		label: 'inverter power',
		kind: 'power',
		min: 50,
		max: 30_000,
		aliases: ['inverter', 'inversor', 'wechselrichter'],
	}),
	inverterEfficiency: inverterUseFields.inverterEfficiency,
	chargeLimitA: quantity({
		label: 'charge limit of one battery',
		onlyNamed: true,
		kind: 'current',
		min: 0.1,
		max: 2000,
		aliases: ['max charge', 'charge limit', 'max charge current', 'maximum charge', 'ladelimit'],
		help: 'From the maker.',
	}),
};

type Input = InputOf<typeof fields>;

export const battery = declareTopic({
	name: 'battery',
	title: 'Battery bank',
	system: 'energy',
	purpose:
		'Which bank carries the daily use for so long, how its units are joined, and what currents it bears.',
	words: [
		'battery',
		'battery bank',
		'battery size',
		'batteries',
		'bank',
		'house battery',
		'autonomy',
		'series',
		'parallel',
		'batería',
		'baterías',
		'banco de baterías',
		'banco',
		'banco de litio',
		'how many batteries',
		'wie viele batterien',
		'cuántas baterías',
		'batterie',
		'batteriebank',
		'batterien',
		'akku',
		'aufbaubatterie',
		'bordbatterie',
		'charge at',
		'charge it at',
	],
	examples: [
		'battery for 120 Ah a day 3 days',
		'what battery for 1.5 kWh a day, 2 days, agm',
		'battery bank 4 x 100ah 12v lifepo4 in 24v',
		'battery for fridge 50w 2 days, charger 40A',
		'welche batterie für 80 Ah am tag, 2 tage, 5 °C, agm',
		'batería para nevera 60W 24h 40%, luces 20W 5h, 2 días',
	],
	includes: ['budget'],
	method:
		'Capacity = daily charge × days × ageing × margin / (depth of discharge × share left in the cold), raised by Peukert where the current is above the rated one (IEEE 485, UFC 3-520-01). Round-trip loss does not enlarge the bank; it is in what must be put back. Currents against the usual rates, or the limits of the battery where they are given.',
	fields,
	needs: [
		{
			anyOf: ['chargePerDayAh', 'energyPerDayWh', 'loads', 'unitAh'],
			question: 'How much is used a day (Ah or Wh), or which loads?',
		},
	],
	calculate: calculateBattery,
});

/** What must be drawn from the bank, and what makes it larger than that. */
interface Need {
	readonly perDayAh: number;
	readonly days: number;
	/** steady current that Peukert's law is applied to [A] */
	readonly currentA: number;
	readonly factors: CapacityFactors;
	readonly rating: { readonly ratedH: number; readonly exponent: number };
}

function calculateBattery(given: Input, sheet: Sheet) {
	const input = asMeant(given);
	const chemistry = chemistryOf(input, sheet);
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return refuseWith(sheet, classV);
	const bank = readBank(input, chemistry, classV, sheet);
	if (bank !== null && 'code' in bank) return refuseWith(sheet, bank);
	const daily = dailyCharge(input, chemistry, classV, sheet);
	if (daily !== null && typeof daily !== 'number') return daily;

	addCautions(sheet, chemistry);
	if (input.temperatureC !== undefined) {
		addTemperatureFindings(sheet, chemistry, input.temperatureC, input.heated === true);
	}
	if (daily === null) {
		// The declaration asks for a daily figure or a battery.
		return bank === null
			? sheet.ask({
					name: 'unitAh',
					label: 'capacity of one battery',
					question: 'What capacity has one battery (Ah)?',
				})
			: answerLayout(sheet, bank, input);
	}

	const temperatureC = input.temperatureC ?? insideC(sheet);
	const cold = coldShare(chemistry, temperatureC);
	if (cold === null) {
		return sheet.refuse(
			'not-covered',
			sheet.say`At ${sheet.show('temperature', temperatureC)} my tables for ${chemistry.label} end: hardly any capacity is left and it may freeze.`,
			'Keep the battery inside or heat it, and name the temperature it then has.',
			'temperatureC',
		);
	}
	const need: Need = {
		perDayAh: daily,
		days: daysOf(input, sheet),
		currentA: input.dischargeA ?? daily / 24,
		factors: {
			depthOfDischarge: input.depthOfDischarge ?? usualDepth(chemistry, sheet),
			coldShare: cold.share,
			ageing: input.ageing ?? usualAgeing(sheet),
			margin: input.margin ?? 1,
		},
		rating: { ratedH: chemistry.ratedH, exponent: input.peukert ?? chemistry.peukertUsed },
	};
	const plainAh = requiredCapacityAh(need.perDayAh * need.days, need.factors);
	const requiredAh = ratedForAh(plainAh, need.currentA, need.rating);
	writeWorking(sheet, need, plainAh, requiredAh, input);
	sheet.source(cold.source);

	const judged = bank !== null && (input.unitCount ?? input.seriesCount ?? input.parallelCount) !== undefined;
	const installed = judged ? bank : proposedBank(bank, chemistry, classV, requiredAh);
	sheet.result('requiredCapacity', 'capacity needed', requiredAh, { kind: 'charge', write: { round: 'up' } });
	sheet.result('temperatureFactor', 'temperature factor', 1 / cold.share, {
		write: { decimals: 3, round: 'up' },
	});
	writeBankResults(sheet, installed, input);
	checkCurrents(sheet, installed, input);
	addBankFindings(sheet, installed);
	const usableAh =
		(capacityAtAh({ ...need.rating, ratedAh: capacityAh(installed) }, need.currentA) *
			need.factors.depthOfDischarge *
			need.factors.coldShare) /
		(need.factors.ageing * need.factors.margin);
	const daysCarried = usableAh / need.perDayAh;
	sheet.result('daysCarried', 'days it lasts', daysCarried, {
		unit: 'd',
		write: { decimals: 1, round: 'down' },
	});
	writeRecharge(sheet, need, chemistry, classV);
	writeTipping(sheet, need, usableAh);
	if (judged) return answerJudged(sheet, installed, need, requiredAh, daysCarried);
	writeNeighbours(sheet, installed, bank !== null, need, requiredAh, daysCarried);
	return answerSized(sheet, installed, bank !== null, need, requiredAh);
}

function insideC(sheet: Sheet): number {
	sheet.assume(
		'temperatureC',
		'lowest temperature of the battery',
		25,
		'inside the heated living space, where the capacity is rated',
		{ kind: 'temperature', confirm: true },
	);
	return 25;
}

function usualDepth(chemistry: Chemistry, sheet: Sheet): number {
	sheet.assume(
		'depthOfDischarge',
		'depth of discharge',
		chemistry.depthOfDischarge,
		sheet.say`usual for ${chemistry.label} that shall last (practice)`,
		{ kind: 'fraction' },
	);
	return chemistry.depthOfDischarge;
}

function usualAgeing(sheet: Sheet): number {
	sheet.assume(
		'ageing',
		'ageing factor',
		ageingFactor,
		'so that it still serves at 80 % of its capacity, the end of its life',
	);
	return ageingFactor;
}

/** "4 x 100 Ah" names units even where it looks like a daily figure; a bare time in the list is the autonomy. */
function asMeant(input: Input): Input {
	const { items, stray } = partLoads(input.loads ?? [], { current: false, duration: true });
	const autonomyH =
		input.autonomyH ?? (stray.durationsH.length === 0 ? undefined : Math.max(...stray.durationsH));
	const loads = items.length === 0 ? undefined : items;
	const countsUnits =
		(input.unitCount ?? input.seriesCount ?? input.parallelCount ?? input.layout) !== undefined &&
		input.unitAh === undefined &&
		input.chargePerDayAh !== undefined;
	return countsUnits
		? { ...input, loads, autonomyH, unitAh: input.chargePerDayAh, chargePerDayAh: undefined }
		: { ...input, loads, autonomyH };
}

/** Charge drawn a day [Ah], null where none was named, or the decision that ends the question. */
function dailyCharge(input: Input, chemistry: Chemistry, classV: number, sheet: Sheet) {
	const { chargePerDayAh, energyPerDayWh, loads } = input;
	const fromEnergyAh = energyPerDayWh === undefined ? undefined : energyPerDayWh / classV;
	const named = [chargePerDayAh, energyPerDayWh, loads].filter((one) => one !== undefined).length;
	if (named === 0) return null;
	if (chargePerDayAh !== undefined && fromEnergyAh !== undefined) {
		const nominalAh = (energyPerDayWh as number) / nominalVoltageV(chemistry, classV);
		if (chargePerDayAh < 0.9 * nominalAh || chargePerDayAh > 1.1 * fromEnergyAh) {
			return sheet.refuse(
				'contradiction',
				sheet.say`${sheet.show('charge', chargePerDayAh)} and ${showEnergy(sheet, energyPerDayWh as number)} a day contradict each other at ${classV} V.`,
				'Give one of them, whichever you trust.',
				'chargePerDayAh',
			);
		}
	}
	if (loads !== undefined && named > 1) {
		return sheet.refuse(
			'contradiction',
			'I read both a daily figure and a list of loads.',
			'Give one of them: the daily figure, or all loads.',
			'loads',
		);
	}
	if (loads !== undefined) {
		const outcome = sheet.call(budget, {
			loads: loads.map((load) => Object.fromEntries(Object.entries(load).filter(([, v]) => v !== undefined))),
			bankV: classV,
			inverterEfficiency: input.inverterEfficiency,
		});
		if (outcome.status === 'needs-input') return sheet.ask(...outcome.missing);
		if (outcome.status === 'refused') return refuseWith(sheet, outcome.refusals[0] as Refusal);
		return outcome.sizing.results.find((result) => result.name === 'chargePerDay')?.value as number;
	}
	return Math.max(chargePerDayAh ?? 0, fromEnergyAh ?? 0);
}

function daysOf(input: Input, sheet: Sheet): number {
	if (input.autonomyH !== undefined) return input.autonomyH / 24;
	sheet.assume(
		'autonomyH',
		'time between charges',
		24,
		'charged every day; name the days it must last without',
		{ kind: 'duration', confirm: true },
	);
	return 1;
}

/** Whole units of the size named, or of common 12 V batteries in at most four strings, that give the capacity. */
function proposedBank(unit: Bank | null, chemistry: Chemistry, classV: number, requiredAh: number): Bank {
	const strings = (unitAh: number) => Math.max(1, Math.ceil(requiredAh / unitAh - 1e-9));
	const unitAh = unit?.unitAh ?? commonUnitsAh.find((size) => strings(size) <= 4) ?? 300;
	const one: Bank = unit ?? {
		chemistry,
		classV,
		unitAh,
		unitV: 12,
		series: unitsInSeries(chemistry, 12, classV) ?? 1,
		parallel: 1,
	};
	return { ...one, parallel: strings(unitAh) };
}

const commonUnitsAh = [100, 200, 300] as const;

function unitsOf(bank: Bank): number {
	return bank.series * bank.parallel;
}

function unitsText(bank: Bank, sheet: Sheet): string {
	const each = sheet.show('charge', bank.unitAh, { decimals: bank.unitAh < 20 ? 1 : 0 });
	return unitsOf(bank) === 1 ? each : `${unitsOf(bank)} × ${each}`;
}

function daysText(sheet: Sheet, value: number, round: 'nearest' | 'down' = 'nearest'): string {
	const figure = writeNumber(value, 1, round);
	return figure === '1' ? sheet.say`1 day` : sheet.say`${figure} days`;
}

function answerLayout(sheet: Sheet, bank: Bank, input: Input) {
	writeBankResults(sheet, bank, input);
	const over = checkCurrents(sheet, bank, input);
	addBankFindings(sheet, bank);
	const capacity = sheet.show('charge', capacityAh(bank), { round: 'down' });
	const energy = showEnergy(sheet, energyWh(bank), 'down');
	const layout = layoutText(bank, sheet);
	const units = unitsText(bank, sheet);
	const makeUp = sheet.say`${units}: ${capacity} at ${bank.classV} V, ${energy}`;
	const tooCold =
		input.temperatureC !== undefined &&
		input.temperatureC < bank.chemistry.chargeMinC &&
		input.heated !== true;
	if (!bank.chemistry.leadAcid && tooCold) {
		return sheet.answer(
			sheet.say`Do not charge it at ${sheet.show('temperature', input.temperatureC as number)}`,
			{ because: `${makeUp}. ${sheet.say`It must be warmer than freezing before any charge.`}` },
		);
	}
	const [first] = over;
	if (first !== undefined) return sheet.answer(first, { because: `${makeUp}.` });
	return sheet.answer(makeUp, {
		because: sheet.say`Joined as ${layout}. Name what is used a day to see how long it lasts.`,
	});
}

function answerJudged(sheet: Sheet, bank: Bank, need: Need, requiredAh: number, daysCarried: number) {
	const enough = capacityAh(bank) >= requiredAh * (1 - 1e-9);
	sheet.result('verdict', 'verdict', enough ? 'enough' : 'too small');
	const perDay = sheet.show('charge', need.perDayAh, { round: 'up' });
	const required = sheet.show('charge', requiredAh, { round: 'up' });
	const has = sheet.show('charge', capacityAh(bank), { round: 'down' });
	const because = sheet.say`${daysText(sheet, need.days)} of ${perDay} need ${required} at ${bank.classV} V; it has ${has}, which lasts ${daysText(sheet, daysCarried, 'down')}.`;
	if (!enough) {
		sheet.finding(
			'warning',
			'bank-too-small',
			sheet.say`The bank has ${has}; ${required} are needed.`,
			ageingSource,
		);
	}
	return sheet.answer(
		enough
			? sheet.say`${unitsText(bank, sheet)} is enough: ${daysText(sheet, daysCarried, 'down')} of ${perDay}`
			: sheet.say`${unitsText(bank, sheet)} is too small: ${daysText(sheet, daysCarried, 'down')} of ${perDay}`,
		{ because, governedBy: 'capacity' },
	);
}

function answerSized(sheet: Sheet, bank: Bank, unitNamed: boolean, need: Need, requiredAh: number) {
	const perDay = sheet.show('charge', need.perDayAh, { round: 'up' });
	const required = sheet.show('charge', requiredAh, { round: 'up' });
	const span = daysText(sheet, need.days);
	const because = sheet.say`${span} of ${perDay}, with depth of discharge, cold and ageing counted. ${unitsText(bank, sheet)} gives ${sheet.show('charge', capacityAh(bank), { round: 'down' })}, joined as ${layoutText(bank, sheet)}.`;
	const headline = unitNamed
		? sheet.say`${unitsText(bank, sheet)} at ${bank.classV} V for ${span} of ${perDay} (${required} needed)`
		: sheet.say`${required} of ${bank.chemistry.label} at ${bank.classV} V for ${span} of ${perDay}`;
	return sheet.answer(headline, { because, governedBy: 'capacity' });
}

function writeWorking(sheet: Sheet, need: Need, plainAh: number, requiredAh: number, input: Input): void {
	const { factors, rating } = need;
	const n = (value: number, decimals = 3) => writeNumber(value, decimals);
	if (input.energyPerDayWh !== undefined && input.chargePerDayAh === undefined) {
		sheet.step(
			'charge a day',
			'q = E / V',
			`${n(input.energyPerDayWh)} Wh / ${n(input.energyPerDayWh / need.perDayAh)} V`,
			need.perDayAh,
			{ kind: 'charge', source: physics('charge is energy over voltage') },
		);
	}
	sheet.step(
		'charge between two full charges',
		'Q = q · d',
		`${n(need.perDayAh)} Ah × ${n(need.days)}`,
		need.perDayAh * need.days,
		{ kind: 'charge', source: physics('sum over the days') },
	);
	sheet.step(
		'capacity at the rated current',
		'C = Q · ka · km / (DoD · kT)',
		`${n(need.perDayAh * need.days)} Ah × ${n(factors.ageing)} × ${n(factors.margin)} / (${n(factors.depthOfDischarge)} × ${n(factors.coldShare)})`,
		plainAh,
		{ kind: 'charge', source: ageingSource },
	);
	sheet.source(batteryPracticeSource);
	if (requiredAh > plainAh) {
		sheet.step(
			'capacity at the current drawn',
			'C · (C / (I · H))^(k − 1) = Cr',
			`${n(plainAh)} Ah at ${n(need.currentA)} A, rated over ${n(rating.ratedH)} h, k = ${n(rating.exponent)}`,
			requiredAh,
			{ kind: 'charge', source: peukertSource },
		);
	}
}

function writeBankResults(sheet: Sheet, bank: Bank, input: Input): void {
	const down = { round: 'down' } as const;
	sheet.result('bankCapacity', 'capacity of the bank', capacityAh(bank), { kind: 'charge', write: down });
	sheet.result('bankEnergy', 'energy of the bank', energyWh(bank), {
		kind: 'energy',
		write: energyWrite(energyWh(bank), 'down'),
	});
	sheet.result('bankVoltage', 'rated voltage', nominalVoltageV(bank.chemistry, bank.classV), {
		kind: 'voltage',
	});
	sheet.result('units', 'batteries', unitsOf(bank));
	sheet.result('series', 'in series', bank.series);
	sheet.result('parallel', 'strings in parallel', bank.parallel);
	sheet.result('chargeLimit', 'largest charge current', chargeLimit(bank, input.chargeLimitA).limitA, {
		kind: 'current',
		write: down,
	});
	sheet.result(
		'dischargeLimit',
		'largest steady discharge current',
		dischargeLimit(bank, input.protectionA).limitA,
		{ kind: 'current', write: down },
	);
	sheet.source(batteryPracticeSource);
}

/** Currents against the limits; what is over them, in one line each. */
function checkCurrents(sheet: Sheet, bank: Bank, input: Input): string[] {
	const over: string[] = [];
	const charging = chargeLimit(bank, input.chargeLimitA);
	if (input.chargeA !== undefined && !addLimitFinding(sheet, 'charge', input.chargeA, charging)) {
		const most = sheet.show('current', charging.limitA, { round: 'down' });
		over.push(sheet.say`Charge it with ${most} at most; ${sheet.show('current', input.chargeA)} is too much`);
	}
	const drawing = dischargeLimit(bank, input.protectionA);
	const check = (currentA: number) => {
		if (addLimitFinding(sheet, 'discharge', currentA, drawing)) return;
		const most = sheet.show('current', drawing.limitA, { round: 'down' });
		const draw = sheet.show('current', currentA, { round: 'up' });
		over.push(sheet.say`It gives ${most} at most; ${draw} is too much`);
	};
	if (input.dischargeA !== undefined) check(input.dischargeA);
	if (input.inverterW === undefined) return over;
	const efficiency = efficiencyOf(input, sheet);
	const cutoffV = cutoffVoltageV(bank.chemistry, bank.classV);
	const inverterA = input.inverterW / (cutoffV * efficiency);
	sheet.step(
		'current of the inverter at the end of discharge',
		'I = P / (V · η)',
		`${writeNumber(input.inverterW, 1)} W / (${writeNumber(cutoffV, 2)} V × ${writeNumber(efficiency, 3)})`,
		inverterA,
		{ kind: 'current', source: bank.chemistry.cutoffSource },
	);
	sheet.result('inverterCurrent', 'current of the inverter at low battery', inverterA, {
		kind: 'current',
		write: { round: 'up' },
	});
	check(inverterA);
	return over;
}

/** Round-trip loss does not make the bank larger, but more must be put back than was drawn. */
function writeRecharge(sheet: Sheet, need: Need, chemistry: Chemistry, classV: number): void {
	const rechargeWh = (need.perDayAh * classV) / chemistry.roundTripEfficiency;
	sheet.step(
		'energy to put back for each day',
		'Ein = q · V / ηrt',
		`${writeNumber(need.perDayAh, 1)} Ah × ${classV} V / ${writeNumber(chemistry.roundTripEfficiency, 2)}`,
		rechargeWh,
		{ kind: 'energy', source: batteryPracticeSource },
	);
	sheet.result('rechargePerDay', 'energy to put back for each day', rechargeWh, {
		kind: 'energy',
		write: energyWrite(rechargeWh, 'up'),
	});
}

function writeTipping(sheet: Sheet, need: Need, usableAh: number): void {
	const perDayAh = usableAh / need.days;
	sheet.tipping(
		'chargePerDayAh',
		'charge used a day',
		perDayAh,
		sheet.say`up to ${sheet.show('charge', perDayAh, { round: 'down' })} a day`,
		{ kind: 'charge' },
	);
}

function writeNeighbours(
	sheet: Sheet,
	bank: Bank,
	unitNamed: boolean,
	need: Need,
	requiredAh: number,
	daysCarried: number,
): void {
	for (const parallel of [bank.parallel - 1, bank.parallel, bank.parallel + 1]) {
		if (parallel < 1 || (unitNamed && parallel === bank.parallel)) continue;
		const other: Bank = { ...bank, parallel };
		const passes = capacityAh(other) >= requiredAh * (1 - 1e-9);
		const lasts = daysText(sheet, (daysCarried * parallel) / bank.parallel, 'down');
		const wanted = daysText(sheet, need.days);
		sheet.neighbour(
			unitsText(other, sheet),
			passes,
			passes ? sheet.say`about ${lasts}` : sheet.say`about ${lasts}, too little for ${wanted}`,
		);
	}
}

function addCautions(sheet: Sheet, chemistry: Chemistry): void {
	sheet.caution(cautionBank, cautionEqualUnits, cautionFuseBank, cautionMakerLimits);
	sheet.caution(chemistry.leadAcid ? cautionLeadAcidVent : cautionLithiumCold);
	if (!chemistry.leadAcid) sheet.source(practice('lithium cells are not charged below 0 °C'));
}
