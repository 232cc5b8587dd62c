import { largestHolding } from '../electrical/conductor.js';
import { chargerSizesA } from '../energy/alternator.js';
import { type Bank, type CurrentLimit, capacityAh, chargeLimit, chargingVoltageV } from '../energy/bank.js';
import { bankFields, chemistryOf, classOf, readBank, refuseWith } from '../energy/bank-fields.js';
import {
	cautionBank,
	cautionLeadAcidVent,
	cautionLithiumCold,
	cautionMakerLimits,
} from '../energy/cautions.js';
import {
	type ChargeSpan,
	chargeBecause,
	chargeSpanOf,
	hoursUp,
	type TimedCharge,
	writeCharge,
} from '../energy/charge-work.js';
import { chargeTime } from '../energy/charging.js';
import { addLimitFinding, addTemperatureFindings } from '../energy/findings.js';
import { writeNumber } from '../quantity/write.js';
import { batteryPracticeSource } from '../tables/batteries.js';
import { typicalLoadWords } from '../tables/loads.js';
import { declareTopic } from '../topic/declare.js';
import { flag, type InputOf, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';

const { protectionA: _discharge, ...named } = bankFields;

/** What takes current while it charges; a charger gives it. */
const loadNames = typicalLoadWords.filter((name) => !/charger|cargador|lade|lader/iu.test(name));

const fields = {
	chargerA: quantity({
		label: 'output of the charger',
		kind: 'current',
		min: 0.5,
		max: 1000,
		aliases: [
			'charger',
			'charge',
			'charging',
			'battery charger',
			'shore charger',
			'recharge',
			'ladegerät',
			'lader',
			'ladestrom',
			'laden',
			'cargador',
			'carga',
			'cargando',
		],
	}),
	chargerW: quantity({
		label: 'power of the charger',
		kind: 'power',
		min: 5,
		max: 20_000,
		aliases: ['charger', 'battery charger', 'charge', 'charging', 'ladegerät', 'lader', 'cargador'],
		help: 'What it gives to the bank, where no amps are on its plate.',
	}),
	...named,
	unitWh: quantity({
		label: 'energy of one battery',
		kind: 'energy',
		min: 5,
		max: 200_000,
		aliases: ['battery', 'bank', 'each', 'power station', 'batería', 'batterie'],
	}),
	loadA: quantity({
		label: 'loads while it charges',
		onlyNamed: true,
		kind: 'current',
		min: 0,
		max: 1000,
		aliases: [
			...loadNames,
			'load',
			'loads',
			'house loads',
			'while running',
			'draw',
			'verbraucher',
			'cargas',
			'consumo',
		],
	}),
	chargeLimitA: quantity({
		label: 'charge limit of one battery',
		onlyNamed: true,
		kind: 'current',
		min: 0.1,
		max: 2000,
		aliases: [
			'max charge',
			'charge limit',
			'max charge current',
			'maximum charge',
			'maximum charge current',
			'ladelimit',
			'límite de carga',
		],
	}),
	fromSoc: quantity({
		label: 'state of charge at the start',
		kind: 'fraction',
		min: 0,
		max: 1,
		aliases: ['from', 'starting at', 'start', 'at', 'soc', 'state of charge', 'desde', 'von', 'ab'],
	}),
	toSoc: quantity({
		label: 'state of charge to reach',
		kind: 'fraction',
		min: 0.01,
		max: 1,
		aliases: ['to', 'up to', 'until', 'till', 'reach', 'hasta', 'bis', 'auf'],
	}),
	wantedH: quantity({
		label: 'time there is',
		kind: 'duration',
		min: 0.1,
		max: 240,
		worseEnd: 'low',
		aliases: ['in', 'within', 'for', 'plugged in', 'at the campground', 'en', 'in der', 'innerhalb'],
		help: 'Then the answer says whether it is enough.',
	}),
	overnight: flag({
		label: 'for a night',
		yes: [
			'overnight',
			'over night',
			'all night',
			'a night',
			'in one night',
			'toda la noche',
			'en una noche',
			'über nacht',
			'in einer nacht',
		],
	}),
	temperatureC: quantity({
		label: 'temperature of the battery',
		kind: 'temperature',
		min: -40,
		max: 70,
		aliases: ['cold', 'temperature', 'winter', 'freezing', 'temp', 'frío', 'temperatur', 'kälte'],
	}),
	heated: flag({
		label: 'battery heated',
		yes: ['heated battery', 'self heating', 'self-heating', 'self heated', 'battery heater', 'beheizt'],
		no: ['not heated', 'unheated', 'no heater'],
	}),
};

type Input = InputOf<typeof fields>;

export const charge = declareTopic({
	name: 'charge',
	title: 'Charging time',
	system: 'energy',
	purpose:
		'How long a charger takes to fill a bank from one state of charge to another, whether the bank bears it, and which charger does it in the time there is.',
	words: [
		'charge time',
		'charging time',
		'fill it',
		'fill the bank',
		'fill the battery',
		'time to charge',
		'how long to charge',
		'how long to recharge',
		'how long to fill',
		'how long does it take to charge',
		'how long will it take to charge',
		'hours to charge',
		'recharge time',
		'can i charge',
		'can we charge',
		'ok to charge',
		'safe to charge',
		'charge it',
		'charge them',
		'puedo cargar',
		'darf ich laden',
		'kann ich laden',
		'recharge',
		'charger',
		'ladegerät',
		'cargador',
		'time to recharge',
		'battery charger',
		'what charger',
		'which charger',
		'what size charger',
		'how big a charger',
		'biggest charger',
		'largest charger',
		'take a charger',
		'shore charger',
		'charger for',
		'ladezeit',
		'ladedauer',
		'wie lange laden',
		'wie lange lädt',
		'welches ladegerät',
		'aufladen',
		'vollladen',
		'tiempo de carga',
		'cuánto tarda en cargar',
		'cuánto tarda en cargarse',
		'tarda en cargar',
		'qué cargador',
		'cargar',
	],
	examples: [
		'how long to charge 200ah lithium from 20% with a 40a charger',
		'charge time 300Ah 50A',
		'what charger for 400ah lifepo4 to fill it overnight',
		'will 200ah agm take a 60a charger',
		'ladezeit 280ah mit 30A ladegerät von 30% bis 90%',
		'cuánto tarda en cargar 100ah agm con cargador 15A',
	],
	includes: ['battery'],
	// What the sun gives is no steady charger.
	notFor: ['budget', 'solar'],
	method:
		"Constant current up to the knee, then constant voltage with an exponentially falling current (battery as a resistance behind a voltage that rises straight with the charge); what the loads take meanwhile doesn't reach the bank. The charger is held against the maker's charge limit, or the usual rate of the chemistry. A maker's own charging stages may take longer: the last percent of lead-acid most of all.",
	fields,
	needs: [{ anyOf: ['unitAh', 'unitWh'], question: 'What capacity has the bank (Ah or kWh)?' }],
	calculate: calculateCharge,
});

/** A night that nobody gave the hours of [h]. */
const nightH = 12;

const n = (value: number, decimals = 2) => writeNumber(value, decimals);

interface Question {
	readonly bank: Bank;
	readonly limit: CurrentLimit;
	readonly span: ChargeSpan;
	/** current that the loads take meanwhile [A] */
	readonly loadA: number;
	/** the time there is [h], null where none was said */
	readonly wantedH: number | null;
}

function timeAt({ bank, span, loadA }: Question, chargerA: number): TimedCharge | null {
	const currentA = chargerA - loadA;
	if (currentA <= 0) return null;
	const time = chargeTime({
		capacityAh: capacityAh(bank),
		currentA,
		...span,
		chemistry: bank.chemistry,
	});
	return { ...time, ...span, currentA };
}

function calculateCharge(input: Input, sheet: Sheet) {
	const chemistry = chemistryOf(input, sheet);
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return refuseWith(sheet, classV);
	const bank = readBank(input, chemistry, classV, sheet);
	if (bank === null) throw new Error('the declaration asks for a capacity');
	if ('code' in bank) return refuseWith(sheet, bank);
	const span = chargeSpanOf(input, chemistry, sheet);
	if ('kind' in span) return span;
	const question: Question = {
		bank,
		limit: chargeLimit(bank, input.chargeLimitA),
		span,
		loadA: input.loadA ?? 0,
		wantedH: wantedOf(input, sheet),
	};
	writeLimit(sheet, question, input.chargeLimitA);
	sheet.caution(cautionBank, cautionMakerLimits);
	sheet.caution(chemistry.leadAcid ? cautionLeadAcidVent : cautionLithiumCold);
	if (input.temperatureC !== undefined) {
		addTemperatureFindings(sheet, chemistry, input.temperatureC, input.heated === true);
	}
	const givenA = chargerOf(input, bank, sheet);
	const chargerA = givenA ?? proposed(question);
	if (chargerA === null) return nothingSold(sheet, question);
	const time = timeAt(question, chargerA);
	if (time === null) {
		return sheet.refuse(
			'impossible',
			sheet.say`Nothing is left to charge with: ${sheet.show('current', chargerA, { round: 'down' })} from the charger, ${sheet.show('current', question.loadA)} for the loads.`,
			'Switch loads off while it charges, or take a larger charger.',
			'loadA',
		);
	}
	if (question.loadA > 0) {
		sheet.step('into the bank', 'I = Ic − Il', `${n(chargerA)} A − ${n(question.loadA)} A`, time.currentA, {
			kind: 'current',
			source: physics('sum of currents'),
		});
	}
	sheet.result('charger', 'output of the charger', chargerA, { kind: 'current' });
	sheet.result('chargeTime', 'charging time', time.totalH, { kind: 'duration', write: { round: 'up' } });
	writeCharge(sheet, bank, time);
	// With loads off, the whole of it reaches the bank.
	const borne = addLimitFinding(sheet, 'charge', chargerA, question.limit);
	addRateFinding(sheet, bank, chargerA);
	writeNeighbours(sheet, question, chargerA);
	const { temperatureC } = input;
	if (
		!chemistry.leadAcid &&
		input.heated !== true &&
		temperatureC !== undefined &&
		temperatureC < chemistry.chargeMinC
	) {
		return sheet.answer(
			sheet.say`Do not charge it at ${sheet.show('temperature', temperatureC)}; warm, it takes ${hoursUp(sheet, time.totalH)}`,
			{ because: chargeBecause(sheet, time), governedBy: 'temperature' },
		);
	}
	if (givenA === null) return answerCharger(sheet, question, chargerA, time);
	return answerTime(sheet, question, chargerA, time, borne);
}

function wantedOf(input: Input, sheet: Sheet): number | null {
	if (input.wantedH !== undefined) return input.wantedH;
	if (input.overnight !== true) return null;
	sheet.assume('wantedH', 'time there is', nightH, 'a night on the hook-up (practice)', {
		kind: 'duration',
		confirm: true,
	});
	return nightH;
}

/** The charger's current, from its power where that is on the plate [A]. */
function chargerOf(input: Input, bank: Bank, sheet: Sheet): number | null {
	if (input.chargerA !== undefined) return input.chargerA;
	if (input.chargerW === undefined) return null;
	const voltageV = chargingVoltageV(bank.chemistry, bank.classV);
	const currentA = input.chargerW / voltageV;
	sheet.step('current of the charger', 'Ic = P / Vc', `${n(input.chargerW)} W / ${n(voltageV)} V`, currentA, {
		kind: 'current',
		source: physics('power over voltage'),
	});
	return currentA;
}

function writeLimit(sheet: Sheet, { bank, limit }: Question, unitLimitA: number | undefined): void {
	sheet.step(
		'largest charge current of the bank',
		limit.given ? 'Imax = units in parallel · limit of one' : 'Imax = rate · C',
		limit.given
			? `${bank.parallel} × ${n(unitLimitA ?? 0)} A`
			: `${n(bank.chemistry.chargeRatePerH)}/h × ${n(capacityAh(bank))} Ah`,
		limit.limitA,
		{ kind: 'current', source: limit.given ? practice("the maker's limit as given") : batteryPracticeSource },
	);
	sheet.result('chargeLimit', 'largest charge current of the bank', limit.limitA, {
		kind: 'current',
		write: { round: 'down' },
	});
}

/** The charger to take: the smallest sold that does it in time, else the largest that the bank bears. */
function proposed(question: Question): number | null {
	const borne = chargerSizesA.filter((sizeA) => sizeA <= question.limit.limitA);
	const { wantedH } = question;
	const inTime =
		wantedH === null
			? undefined
			: borne.find((sizeA) => (timeAt(question, sizeA)?.totalH ?? Number.POSITIVE_INFINITY) <= wantedH);
	return inTime ?? borne.at(-1) ?? null;
}

function nothingSold(sheet: Sheet, { bank, limit }: Question) {
	return sheet.refuse(
		'impossible',
		sheet.say`${sheet.show('charge', capacityAh(bank))} of ${bank.chemistry.label} bears ${sheet.show('current', limit.limitA, { round: 'down' })} of charging; chargers begin at ${sheet.show('current', chargerSizesA[0])}.`,
		'Name a charger that can be set so low, or a larger bank.',
		'unitAh',
	);
}

/** The trade's least rate for lead-acid [1/h]. */
const leastLeadAcidRatePerH = 0.1;

function addRateFinding(sheet: Sheet, bank: Bank, chargerA: number): void {
	const leastA = leastLeadAcidRatePerH * capacityAh(bank);
	if (!bank.chemistry.leadAcid || chargerA >= leastA) return;
	sheet.finding(
		'note',
		'charger-small-for-lead-acid',
		sheet.say`Below a tenth of the capacity (${sheet.show('current', leastA, { round: 'up' })}) a lead-acid bank in daily use is hardly ever full, and sulphates.`,
		practice('a charger of 10 to 20 % of the capacity for lead-acid in daily use'),
	);
}

function writeNeighbours(sheet: Sheet, question: Question, chargerA: number): void {
	const smaller = chargerSizesA.findLast((sizeA) => sizeA < chargerA);
	const larger = chargerSizesA.find((sizeA) => sizeA > chargerA);
	for (const sizeA of [smaller, larger]) {
		if (sizeA === undefined) continue;
		const time = timeAt(question, sizeA);
		if (time === null) continue;
		const borne = sizeA <= question.limit.limitA;
		const inTime = question.wantedH === null || time.totalH <= question.wantedH;
		const why = borne ? '' : sheet.say`, more than the bank may be charged with`;
		sheet.neighbour(sheet.show('current', sizeA), borne && inTime, `${hoursUp(sheet, time.totalH)}${why}`);
	}
}

/** What it is charged with: "40 % to 90 % of 200 Ah at 50 A". */
function chargeText(sheet: Sheet, { bank }: Question, time: TimedCharge): string {
	const capacity = sheet.show('charge', capacityAh(bank));
	const current = sheet.show('current', time.currentA, { round: 'down' });
	return sheet.say`${hoursUp(sheet, time.totalH)}: ${sheet.show('fraction', time.from)} to ${sheet.show('fraction', time.to)} of ${capacity} at ${current}`;
}

/** How far it gets in the time there is. */
function reachedIn(question: Question, chargerA: number, hours: number): number {
	const { from, to } = question.span;
	const timeTo = (state: number) =>
		timeAt({ ...question, span: { from, to: state } }, chargerA)?.totalH ?? Number.POSITIVE_INFINITY;
	return largestHolding(from, to, (state) => timeTo(state) <= hours);
}

function answerTime(sheet: Sheet, question: Question, chargerA: number, time: TimedCharge, borne: boolean) {
	const { bank, limit, wantedH } = question;
	const charged = chargeText(sheet, question, time);
	const because = chargeBecause(sheet, time);
	if (!borne) {
		const most = sheet.show('current', limit.limitA, { round: 'down' });
		const what = `${sheet.show('charge', capacityAh(bank))} ${bank.chemistry.label}`;
		return sheet.answer(
			sheet.say`${sheet.show('current', chargerA, { round: 'up' })} is too much for ${what}: ${most} at most`,
			{ because: sheet.say`It would take ${charged}.`, governedBy: 'charge limit' },
		);
	}
	if (wantedH === null) return sheet.answer(charged, { because });
	const wanted = hoursUp(sheet, wantedH);
	if (time.totalH <= wantedH) return sheet.answer(sheet.say`${wanted} is enough; ${charged}`, { because });
	const reached = sheet.show('fraction', reachedIn(question, chargerA, wantedH), { round: 'down' });
	return sheet.answer(sheet.say`${wanted} is not enough; ${charged}`, {
		because: `${sheet.say`In ${wanted} it gets to ${reached}.`} ${because}`,
	});
}

function answerCharger(sheet: Sheet, question: Question, chargerA: number, time: TimedCharge) {
	const { bank, limit, wantedH } = question;
	const charger = sheet.show('current', chargerA);
	const charged = chargeText(sheet, question, time);
	const most = sheet.show('current', limit.limitA, { round: 'down' });
	const bears = limit.given
		? sheet.say`The bank bears ${most} by its maker's figure.`
		: sheet.say`The bank bears ${most}, the usual rate of ${bank.chemistry.label}.`;
	const because = `${bears} ${chargeBecause(sheet, time)}`;
	if (wantedH === null) {
		return sheet.answer(sheet.say`${charger} charger at most; ${charged}`, {
			because,
			governedBy: 'charge limit',
		});
	}
	const wanted = hoursUp(sheet, wantedH);
	if (time.totalH <= wantedH) {
		return sheet.answer(sheet.say`${charger} charger for ${wanted}; ${charged}`, {
			because,
			governedBy: 'time',
		});
	}
	const reached = sheet.show('fraction', reachedIn(question, chargerA, wantedH), { round: 'down' });
	return sheet.answer(sheet.say`Not in ${wanted}: ${charger} charger at most; ${charged}`, {
		because: `${sheet.say`In ${wanted} it gets to ${reached}.`} ${because}`,
		governedBy: 'charge limit',
	});
}
