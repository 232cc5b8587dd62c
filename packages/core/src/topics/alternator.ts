import {
	type Converter,
	chargerSizesA,
	converterInputA,
	converterOutputA,
	type Headroom,
	headroom,
	hotIdleShare,
	hotIdleSource,
	inputVoltageV,
	largestCharger,
	steadyShare,
	steadySource,
	usualConverterEfficiency,
	usualVehicleLoadA,
} from '../energy/alternator.js';
import { type Bank, capacityAh, chargeLimit, chargingVoltageV } from '../energy/bank.js';
import { bankFields, chemistryOf, classOf, readBank, refuseWith } from '../energy/bank-fields.js';
import { cautionBank, cautionBothEnds, cautionLithiumCold, cautionMakerLimits } from '../energy/cautions.js';
import {
	chargeBecause,
	chargeSpanOf,
	hoursUp,
	type TimedCharge,
	writeCharge,
} from '../energy/charge-work.js';
import { chargeTime } from '../energy/charging.js';
import { addLimitFinding, addTemperatureFindings } from '../energy/findings.js';
import { type RunCable, runCable } from '../energy/run-cable.js';
import { writeNumber } from '../quantity/write.js';
import type { Chemistry } from '../tables/batteries.js';
import { declareTopic } from '../topic/declare.js';
import { choice, flag, type InputOf, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';

const fields = {
	chargerA: quantity({
		label: 'output of the DC-DC charger',
		kind: 'current',
		min: 1,
		max: 500,
		aliases: [
			'dcdc',
			'dc-dc',
			'dc to dc',
			'dcdc charger',
			'dc-dc charger',
			'charger',
			'charge',
			'charging',
			'booster',
			'b2b',
			'b2b charger',
			'converter',
			'ladebooster',
			'cargador',
		],
	}),
	alternatorA: quantity({
		label: 'alternator rating',
		kind: 'current',
		worseEnd: 'low',
		min: 20,
		max: 600,
		aliases: [
			'lima',
			'alt',
			'alternator',
			'alternator charge',
			'alternator recharge',
			'alternator refill',
			'lichtmaschine',
			'alternador',
			'rated',
		],
	}),
	vehicleLoadA: quantity({
		label: 'load of the vehicle itself',
		onlyNamed: true,
		kind: 'current',
		min: 0,
		max: 300,
		aliases: ['vehicle', 'vehicle load', 'engine', 'headlights', 'base load', 'fahrzeug', 'vehículo'],
	}),
	houseLoadA: quantity({
		label: 'house loads while driving',
		onlyNamed: true,
		kind: 'current',
		min: 0,
		max: 400,
		aliases: ['house loads', 'house load', 'loads', 'load', 'fridge', 'while driving', 'consumers'],
	}),
	fromSoc: quantity({
		label: 'state of charge at the start',
		kind: 'fraction',
		min: 0,
		max: 1,
		aliases: ['from', 'starting at', 'start', 'soc', 'state of charge', 'desde', 'von', 'ab'],
	}),
	toSoc: quantity({
		label: 'state of charge to reach',
		kind: 'fraction',
		min: 0.01,
		max: 1,
		aliases: ['to', 'up to', 'until', 'reach', 'hasta', 'bis', 'auf'],
	}),
	driveH: quantity({
		label: 'driving time',
		kind: 'duration',
		min: 0.1,
		max: 200,
		worseEnd: 'low',
		aliases: [
			'driving',
			'drive',
			'of driving',
			'hours driving',
			'hours of driving',
			'driving time',
			'drive time',
			'on the road',
			'fahren',
			'fahrt',
			'fahrzeit',
			'conduciendo',
			'conducir',
			'de conducción',
		],
		help: 'To see whether so much driving is enough.',
	}),
	hotIdle: quantity({
		label: 'hot output at idle',
		kind: 'fraction',
		min: 0.1,
		max: 1,
		aliases: ['idle', 'at idle', 'hot idle', 'idling', 'leerlauf', 'ralentí'],
		fallback: { value: hotIdleShare, why: 'about half the rating, hot and at idle (practice)' },
	}),
	...bankFields,
	chargeLimitA: quantity({
		label: 'charge limit of one battery',
		onlyNamed: true,
		kind: 'current',
		min: 0.1,
		max: 2000,
		aliases: ['max charge', 'charge limit', 'max charge current', 'maximum charge', 'ladelimit'],
	}),
	vehicleV: quantity({
		label: 'voltage of the vehicle',
		kind: 'voltage',
		min: 10,
		max: 32,
		aliases: ['vehicle', 'starter', 'starter battery', 'chassis', 'truck battery', 'starterbatterie'],
		fallback: { value: 12, why: 'a van; heavy trucks have 24 V' },
	}),
	lengthM: quantity({
		label: 'one-way length',
		kind: 'length',
		min: 0.2,
		max: 30,
		aliases: ['run', 'long', 'length', 'away', 'cable', 'cable run', 'longitud', 'länge', 'lang'],
		help: 'From the starter battery to the charger, along the cable.',
	}),
	dropLimit: quantity({
		label: 'allowed voltage drop',
		kind: 'fraction',
		min: 0.001,
		max: 0.2,
		aliases: ['drop', 'voltage drop', 'caída', 'spannungsabfall'],
	}),
	efficiency: quantity({
		label: 'efficiency of the DC-DC charger',
		kind: 'fraction',
		min: 0.5,
		max: 1,
		aliases: ['efficiency', 'efficient', 'eff', 'wirkungsgrad', 'eficiencia'],
		fallback: { value: usualConverterEfficiency, why: 'usual for DC-DC chargers (practice)' },
	}),
	temperatureC: quantity({
		label: 'temperature of the battery',
		kind: 'temperature',
		min: -40,
		max: 70,
		aliases: ['cold', 'temperature', 'winter', 'freezing', 'temp', 'battery', 'frío', 'temperatur', 'kälte'],
	}),
	heated: flag({
		label: 'battery heated',
		yes: ['heated battery', 'self heating', 'self-heating', 'self heated', 'battery heater', 'beheizt'],
		no: ['not heated', 'unheated', 'no heater'],
	}),
	link: choice({
		label: 'how the bank is joined to the alternator',
		options: {
			converter: ['DC-DC charger', 'dcdc', 'dc-dc', 'b2b', 'b2b charger', 'booster', 'ladebooster'],
			direct: [
				'isolator',
				'relay',
				'split charge',
				'split charge relay',
				'voltage sensitive relay',
				'vsr',
				'direct',
				'directly',
				'trennrelais',
				'relé',
				'solenoid',
			],
		},
	}),
};

type Input = InputOf<typeof fields>;

export const alternator = declareTopic({
	name: 'alternator',
	title: 'Charging from the alternator',
	system: 'energy',
	purpose:
		'Which DC-DC charger an alternator bears, its cable, and how many hours of driving bring a bank to a state of charge.',
	words: [
		'alternator',
		'dcdc',
		'dc-dc',
		'dc to dc',
		'dc-dc charger',
		'hours driving',
		'hours of driving',
		'driving',
		'drive',
		'charge while driving',
		'booster',
		'b2b',
		'split charge',
		'lichtmaschine',
		'ladebooster',
		'fahren',
		'fahrt',
		'alternador',
		'conduciendo',
		'conducir',
		'horas',
		'dcdc charger',
		'dc to dc charger',
		'how long driving',
		'how long to drive',
		'driving time',
		'drive time',
		'time driving',
		'alternator charge',
		'alternator recharge',
		'alternator refill',
		'charge the bank',
		'lima',
	],
	examples: [
		'how many hours driving 50A dcdc from 40% to 90% 200ah',
		'what dcdc charger for a 180A alternator, 200ah lifepo4, 20 ft',
		'30A dc-dc on a 90A alternator ok?',
		'ladebooster 45A, 230ah lifepo4 von 30% bis 100%, wie lange fahren',
		'alternador 150A, cargador dcdc 40A, cable 5 m',
	],
	includes: ['wire'],
	method:
		"The charger's input by power balance against 80 % of the alternator's rating less the vehicle's loads, and against its hot output at idle. Time: constant current up to the knee, then constant voltage with an exponentially falling current (battery as a resistance behind a voltage that rises straight with the charge). Not for charging without a DC-DC charger.",
	fields,
	needs: [
		{
			anyOf: ['chargerA', 'alternatorA'],
			question: 'Which DC-DC charger (amps), or which alternator rating?',
		},
	],
	calculate: calculateAlternator,
});

function calculateAlternator(input: Input, sheet: Sheet) {
	const chemistry = chemistryOf(input, sheet);
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return refuseWith(sheet, classV);
	const bank = readBank(input, chemistry, classV, sheet);
	if (bank !== null && 'code' in bank) return refuseWith(sheet, bank);
	const converter: Converter = {
		outputV: chargingVoltageV(chemistry, classV),
		inputV: (inputVoltageV * input.vehicleV) / 12,
		efficiency: input.efficiency,
	};
	const spare =
		input.alternatorA === undefined
			? null
			: headroom(input.alternatorA, vehicleLoad(input, sheet), input.hotIdle);
	const bankLimit = bank === null ? null : chargeLimit(bank, input.chargeLimitA);
	const proposedA = proposedCharger(spare, bankLimit?.limitA ?? null, converter);
	const chargerA = input.chargerA ?? proposedA;
	if (spare !== null) writeHeadroom(sheet, input, spare, converter, proposedA);
	if (chargerA === null) return nothingFits(sheet, input, spare, converter, bankLimit?.limitA ?? null);

	const inputA = converterInputA(chargerA, converter);
	writeInput(sheet, chargerA, inputA, converter);
	addFindings(sheet, input, chemistry, spare, inputA);
	if (bankLimit !== null) {
		sheet.result('chargeLimit', 'largest charge current of the bank', bankLimit.limitA, {
			kind: 'current',
			write: { round: 'down' },
		});
		addLimitFinding(sheet, 'charge', chargerA, bankLimit);
	}
	sheet.caution(cautionBothEnds, cautionBank, cautionMakerLimits);
	if (!chemistry.leadAcid) sheet.caution(cautionLithiumCold);

	if (bank === null && input.driveH !== undefined) {
		return sheet.ask({
			name: 'unitAh',
			label: 'capacity of one battery',
			question: 'What is the capacity of the bank, in ampere-hours?',
		});
	}
	const asksTime =
		bank !== null &&
		(input.chargerA !== undefined || input.fromSoc !== undefined || input.driveH !== undefined);
	const time = asksTime ? timeOf(sheet, input, bank, chargerA, spare, converter) : null;
	if (time !== null && 'kind' in time) return time;
	const cable = input.lengthM === undefined && time !== null ? null : cableOf(sheet, input, inputA);
	if (cable === undefined) {
		return sheet.refuse(
			'impossible',
			sheet.say`No cable in my tables carries ${sheet.show('current', inputA, { round: 'up' })} that far.`,
			'Shorten the run or take a smaller charger.',
			'lengthM',
		);
	}
	writeNeighbours(sheet, input, bank, chargerA, time, spare, converter);
	const tooCold =
		!chemistry.leadAcid &&
		input.heated !== true &&
		input.temperatureC !== undefined &&
		input.temperatureC < chemistry.chargeMinC;
	return time === null
		? answerSize(sheet, input, chargerA, spare, converter, cable)
		: answerTime(sheet, time, bank as Bank, input.driveH, tooCold ? (input.temperatureC as number) : null);
}

/** No charger is sold that small: the alternator spares too little, or the bank bears too little. */
function nothingFits(
	sheet: Sheet,
	input: Input,
	spare: Headroom | null,
	converter: Converter,
	bankLimitA: number | null,
) {
	const smallest = sheet.show('current', chargerSizesA[0]);
	const byAlternatorA = spare === null ? 0 : converterOutputA(spare.drivingA, converter);
	if (bankLimitA !== null && bankLimitA < chargerSizesA[0] && byAlternatorA >= chargerSizesA[0]) {
		return sheet.refuse(
			'impossible',
			sheet.say`The bank bears ${sheet.show('current', bankLimitA, { round: 'down' })} of charging; DC-DC chargers begin at ${smallest}.`,
			'Take a larger bank, or a charger that can be set so low, and name it.',
			'unitAh',
		);
	}
	return sheet.refuse(
		'impossible',
		sheet.say`An alternator of ${sheet.show('current', input.alternatorA as number)} spares too little for charging beside the vehicle's own loads; DC-DC chargers begin at ${smallest}.`,
		'Fit a larger alternator, or charge by sun and shore power.',
		'alternatorA',
	);
}

function vehicleLoad(input: Input, sheet: Sheet): number {
	if (input.vehicleLoadA !== undefined) return input.vehicleLoadA;
	const loadA = usualVehicleLoadA(input.alternatorA as number);
	sheet.assume(
		'vehicleLoadA',
		'load of the vehicle itself',
		loadA,
		'engine, lights and blower of a van (practice)',
		{ kind: 'current', confirm: true },
	);
	return loadA;
}

/** The largest charger sold that alternator, half its rating, and bank bear; null where nothing is spare. */
function proposedCharger(
	spare: Headroom | null,
	bankLimitA: number | null,
	converter: Converter,
): number | null {
	if (spare === null) return null;
	const byAlternatorA = converterOutputA(spare.drivingA, converter);
	return largestCharger(Math.min(byAlternatorA, bankLimitA ?? Number.POSITIVE_INFINITY));
}

const n = (value: number, decimals = 2) => writeNumber(value, decimals);
const balance = physics('power in times efficiency is power out');

function writeHeadroom(
	sheet: Sheet,
	input: Input,
	spare: Headroom,
	converter: Converter,
	proposedA: number | null,
): void {
	const ratedA = input.alternatorA as number;
	const vehicleA = input.vehicleLoadA ?? usualVehicleLoadA(ratedA);
	sheet.step(
		'to spare while driving',
		'Id = 0.8 · Ir − Iv',
		`${n(steadyShare)} × ${n(ratedA)} A − ${n(vehicleA)} A`,
		spare.drivingA,
		{ kind: 'current', source: steadySource },
	);
	sheet.step(
		'to spare hot, at idle',
		'Ii = share · Ir − Iv',
		`${n(input.hotIdle)} × ${n(ratedA)} A − ${n(vehicleA)} A`,
		spare.idlingA,
		{ kind: 'current', source: hotIdleSource },
	);
	const down = { kind: 'current', write: { round: 'down' } } as const;
	sheet.result('spareDriving', 'alternator current to spare while driving', spare.drivingA, down);
	sheet.result('spareIdling', 'alternator current to spare at idle', spare.idlingA, down);
	sheet.result(
		'chargingAtIdle',
		'charging current at idle',
		converterOutputA(spare.idlingA, converter),
		down,
	);
	if (proposedA !== null) {
		sheet.result('recommendedCharger', 'largest DC-DC charger', proposedA, { kind: 'current' });
	}
}

function writeInput(sheet: Sheet, chargerA: number, inputA: number, converter: Converter): void {
	sheet.assume(
		'inputVoltageV',
		'lowest voltage at the charger input',
		converter.inputV,
		'with the engine on and the drop of the cable (practice)',
		{ kind: 'voltage' },
	);
	sheet.step(
		'input of the charger',
		'Ii = Io · Vo / (Vi · η)',
		`${n(chargerA)} A × ${n(converter.outputV)} V / (${n(converter.inputV)} V × ${n(converter.efficiency)})`,
		inputA,
		{ kind: 'current', source: balance },
	);
	sheet.result('chargerInput', 'current the charger takes', inputA, {
		kind: 'current',
		write: { round: 'up' },
	});
}

function addFindings(
	sheet: Sheet,
	input: Input,
	chemistry: Chemistry,
	spare: Headroom | null,
	inputA: number,
): void {
	if (input.temperatureC !== undefined) {
		addTemperatureFindings(sheet, chemistry, input.temperatureC, input.heated === true);
	}
	if (input.link === 'direct' && !chemistry.leadAcid) {
		sheet.finding(
			'danger',
			'lithium-without-converter',
			sheet.say`A lithium bank joined to the alternator by a relay or directly draws all the alternator gives: it overheats and can burn. Put a DC-DC charger between.`,
			practice('lithium banks are charged through a DC-DC charger'),
		);
	}
	if (spare === null) return;
	const draw = sheet.show('current', inputA, { round: 'up' });
	const ratedA = input.alternatorA as number;
	const vehicleA = input.vehicleLoadA ?? usualVehicleLoadA(ratedA);
	if (inputA > spare.drivingA) {
		const most = sheet.show('current', spare.drivingA, { round: 'down' });
		sheet.finding(
			inputA + vehicleA > ratedA ? 'danger' : 'warning',
			'alternator-overloaded',
			sheet.say`The charger takes ${draw}; beside the vehicle the alternator can spare ${most} for hours on end. It would run too hot.`,
			steadySource,
		);
	}
	if (inputA > spare.idlingA) {
		const most = sheet.show('current', spare.idlingA, { round: 'down' });
		sheet.finding(
			'warning',
			'over-hot-idle',
			sheet.say`Hot and at idle the alternator spares only ${most}; the charger takes ${draw}. Do not charge for long at idle, or set the charger lower: the alternator overheats and the starter battery drains.`,
			hotIdleSource,
		);
	}
}

/** Hours of driving, or the decision that ends the question. */
function timeOf(
	sheet: Sheet,
	input: Input,
	bank: Bank,
	chargerA: number,
	spare: Headroom | null,
	converter: Converter,
) {
	const { chemistry } = bank;
	const span = chargeSpanOf(input, chemistry, sheet);
	if ('kind' in span) return span;
	const deliveredA =
		spare === null ? chargerA : Math.min(chargerA, converterOutputA(spare.drivingA, converter));
	const currentA = deliveredA - (input.houseLoadA ?? 0);
	if (currentA <= 0) {
		return sheet.refuse(
			'impossible',
			sheet.say`Nothing is left to charge with: ${sheet.show('current', deliveredA, { round: 'down' })} from the charger, ${sheet.show('current', input.houseLoadA ?? 0)} for the loads.`,
			'Switch loads off while driving, or take a larger charger.',
			'houseLoadA',
		);
	}
	const time = {
		...chargeTime({ capacityAh: capacityAh(bank), currentA, ...span, chemistry }),
		...span,
		currentA,
	};
	writeTime(sheet, bank, time, deliveredA, input.houseLoadA ?? 0);
	return time;
}

function writeTime(sheet: Sheet, bank: Bank, time: TimedCharge, deliveredA: number, houseA: number): void {
	if (deliveredA !== time.currentA) {
		sheet.step('into the bank', 'I = Ic − Il', `${n(deliveredA)} A − ${n(houseA)} A`, time.currentA, {
			kind: 'current',
			source: physics('sum of currents'),
		});
	}
	sheet.result('drivingTime', 'hours of driving', time.totalH, { kind: 'duration', write: { round: 'up' } });
	writeCharge(sheet, bank, time);
}

/** The cable, null where it was not asked for, undefined where none does it. */
function cableOf(sheet: Sheet, input: Input, inputA: number): RunCable | null | undefined {
	const lengthM = input.lengthM ?? 6;
	if (input.lengthM === undefined) {
		sheet.assume(
			'lengthM',
			'one-way length',
			lengthM,
			'from the starter battery under the bonnet to a bank behind the seats, along the cable',
			{ kind: 'length', confirm: true },
		);
	}
	const cable = runCable(sheet, {
		currentA: inputA,
		voltageV: input.vehicleV,
		lengthM,
		dropLimit: input.dropLimit,
		engineBay: true,
		continuous: true,
		load: 'dc-dc charger',
	});
	return cable ?? undefined;
}

function writeNeighbours(
	sheet: Sheet,
	input: Input,
	bank: Bank | null,
	chargerA: number,
	time: TimedCharge | null,
	spare: Headroom | null,
	converter: Converter,
): void {
	const smaller = chargerSizesA.findLast((sizeA) => sizeA < chargerA);
	const larger = chargerSizesA.find((sizeA) => sizeA > chargerA);
	for (const sizeA of [smaller, larger]) {
		if (sizeA === undefined) continue;
		const inputA = converterInputA(sizeA, converter);
		const byAlternator = spare === null || inputA <= spare.drivingA;
		const byBank = bank === null || sizeA <= chargeLimit(bank, input.chargeLimitA).limitA;
		const draws = sheet.say`takes ${sheet.show('current', inputA, { round: 'up' })}`;
		const netA = sizeA - (input.houseLoadA ?? 0);
		const lasts =
			bank === null || time === null || netA <= 0
				? ''
				: `, ${hoursUp(sheet, chargeTime({ capacityAh: capacityAh(bank), currentA: netA, from: time.from, to: time.to, chemistry: bank.chemistry }).totalH)}`;
		const why = !byAlternator
			? sheet.say`, more than the alternator can spare`
			: !byBank
				? sheet.say`, more than the bank may be charged with`
				: '';
		sheet.neighbour(sheet.show('current', sizeA), byAlternator && byBank, `${draws}${lasts}${why}`);
	}
}

/** @param coldC the temperature at which the bank must not be charged, or null */
function answerTime(
	sheet: Sheet,
	time: TimedCharge,
	bank: Bank,
	driveH: number | undefined,
	coldC: number | null,
) {
	const total = hoursUp(sheet, time.totalH);
	const from = sheet.show('fraction', time.from);
	const to = sheet.show('fraction', time.to);
	const capacity = sheet.show('charge', capacityAh(bank));
	const current = sheet.show('current', time.currentA, { round: 'down' });
	const because = chargeBecause(sheet, time);
	if (coldC !== null) {
		const cold = sheet.show('temperature', coldC);
		return sheet.answer(sheet.say`Do not charge it at ${cold}; warm, it takes ${total} of driving`, {
			because,
			governedBy: 'temperature',
		});
	}
	const charge = sheet.say`${total} of driving: ${from} to ${to} of ${capacity} at ${current}`;
	if (driveH === undefined) return sheet.answer(charge, { because });
	const driven = hoursUp(sheet, driveH);
	return sheet.answer(
		driveH < time.totalH
			? sheet.say`${driven} is not enough; ${charge}`
			: sheet.say`${driven} is enough; ${charge}`,
		{ because },
	);
}

function answerSize(
	sheet: Sheet,
	input: Input,
	chargerA: number,
	spare: Headroom | null,
	converter: Converter,
	cable: RunCable | null,
) {
	const charger = sheet.show('current', chargerA);
	const cableText = cable === null ? '' : sheet.say`, ${cable.conductor}, ${n(cable.deviceA)} A fuse`;
	const inputText = sheet.show('current', converterInputA(chargerA, converter), { round: 'up' });
	if (spare === null) {
		return sheet.answer(sheet.say`${charger} DC-DC charger takes ${inputText}${cableText}`, {
			because: sheet.say`Name the alternator's rating to see whether it bears that.`,
		});
	}
	const rating = sheet.show('current', input.alternatorA as number);
	const driving = sheet.show('current', spare.drivingA, { round: 'down' });
	const idling = sheet.show('current', spare.idlingA, { round: 'down' });
	const because = sheet.say`It takes ${inputText}; the alternator spares ${driving} while driving and ${idling} hot at idle.`;
	const fits = converterInputA(chargerA, converter) <= spare.drivingA;
	if (input.chargerA === undefined) {
		const most = sheet.say`${charger} DC-DC charger at most on ${rating}${cableText}`;
		return sheet.answer(input.link === 'direct' ? sheet.say`Not directly: ${most}` : most, {
			because,
			governedBy: 'alternator',
		});
	}
	return sheet.answer(
		fits
			? sheet.say`${charger} suits a ${rating} alternator${cableText}`
			: sheet.say`${charger} is too much for a ${rating} alternator`,
		{ because, governedBy: 'alternator' },
	);
}
