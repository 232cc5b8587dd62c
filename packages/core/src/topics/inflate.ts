import { writeNumber } from '../quantity/write.js';
import { atmosphereSource, standardPressureKpa } from '../structure/atmosphere.js';
import { cautionHotPump, cautionInflating, cautionSidewall } from '../structure/cautions.js';
import {
	assumedCurve,
	freeAirL,
	overallDiameterMm,
	type PumpPoint,
	pressureRangePattern,
	pumpingMinutes,
	readPressureRange,
	readTireSize,
	tireSizePattern,
	tireVolumeL,
	withRests,
} from '../structure/inflation.js';
import { declareTopic } from '../topic/declare.js';
import { count, type InputOf, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';

/** Dead space of a small piston pump over its stroke, where its curve is not known. */
const usualDeadSpace = 0.1;
/** How full the ring between rim and tread is with air. */
const usualFill = 0.9;

const fields = {
	pumpFlowLMin: quantity({
		label: 'free-air flow of the pump',
		kind: 'flow',
		min: 2,
		max: 2000,
		aliases: [
			'pump',
			'compressor',
			'free air',
			'fad',
			'flow',
			'delivers',
			'kompressor',
			'compresor',
			'bomba',
		],
		help: 'As rated, against no pressure.',
	}),
	pumpFlowM3H: quantity({
		label: 'free-air flow of the pump in cubic feet or metres',
		kind: 'airflow',
		min: 0.1,
		max: 120,
		aliases: ['pump', 'compressor', 'free air', 'delivers', 'kompressor', 'compresor'],
	}),
	loadedFlowLMin: quantity({
		label: 'flow against a pressure',
		kind: 'flow',
		min: 1,
		max: 2000,
		aliases: ['loaded', 'under load', 'against pressure', 'loaded flow'],
		help: 'A second point of the pump curve, with its pressure.',
	}),
	fromKpa: quantity({
		label: 'pressure to start from',
		kind: 'pressure',
		min: 0,
		max: 900,
		aliases: ['from', 'start', 'starting', 'aired down to', 'down to', 'now at', 'von', 'desde'],
	}),
	toKpa: quantity({
		label: 'pressure to reach',
		kind: 'pressure',
		min: 10,
		max: 900,
		aliases: ['to', 'up to', 'back to', 'back up to', 'target', 'reach', 'auf', 'hasta', 'a'],
	}),
	pressures: text({
		label: 'both pressures',
		pattern: pressureRangePattern,
		help: 'From and to with one unit, "25 to 65 psi".',
	}),
	loadedPressureKpa: quantity({
		label: 'pressure of the second flow',
		kind: 'pressure',
		min: 10,
		max: 1500,
		aliases: ['loaded pressure', 'loaded at', 'under load at', 'flow at'],
	}),
	sidewallKpa: quantity({
		label: 'highest pressure on the sidewall',
		kind: 'pressure',
		min: 100,
		max: 1000,
		aliases: ['sidewall', 'max pressure', 'max psi', 'limit', 'sidewall pressure'],
	}),
	volumeL: quantity({
		label: 'air in one tire',
		kind: 'volume',
		min: 1,
		max: 1000,
		aliases: ['tire volume', 'tyre volume', 'volume', 'holds', 'air volume', 'volumen'],
	}),
	tireSize: text({
		label: 'tire size',
		pattern: tireSizePattern,
		help: 'As printed, "LT225/75R16"; the volume follows from it.',
	}),
	tires: count({
		label: 'tires',
		min: 1,
		max: 12,
		aliases: [
			'tires',
			'tyres',
			'wheels',
			'air up',
			'inflate',
			'pump up',
			'reifen',
			'neumáticos',
			'llantas',
			'ruedas',
		],
		fallback: { value: 4, why: 'all four tires of a van' },
	}),
	altitudeM: quantity({
		label: 'altitude',
		kind: 'length',
		min: -450,
		max: 5000,
		aliases: ['altitude', 'elevation', 'up at', 'above sea level', 'pass', 'höhe', 'altitud'],
		fallback: { value: 0, why: 'sea level; thinner air takes longer', confirm: true },
	}),
	currentA: quantity({
		label: 'current of the pump',
		kind: 'current',
		min: 1,
		max: 200,
		aliases: ['draws', 'draw', 'pulls', 'current', 'strom', 'corriente'],
	}),
	powerW: quantity({
		label: 'power of the pump',
		kind: 'power',
		min: 10,
		max: 5000,
		aliases: ['power', 'leistung', 'potencia'],
	}),
	voltageV: quantity({
		label: 'voltage',
		kind: 'voltage',
		min: 10,
		max: 60,
		aliases: ['system', 'battery', 'spannung', 'tensión'],
		fallback: { value: 12, why: 'the usual house voltage' },
	}),
	bankAh: quantity({
		label: 'battery bank',
		kind: 'charge',
		min: 5,
		max: 10_000,
		aliases: ['bank', 'battery', 'batería', 'batterie'],
	}),
	spellH: quantity({
		label: 'longest run of the pump',
		kind: 'duration',
		min: 0.01,
		max: 24,
		aliases: ['duty', 'on', 'max run', 'run time', 'longest run', 'runs', 'continuous', 'einschaltdauer'],
		help: 'How long it may run before it must rest.',
	}),
	restH: quantity({
		label: 'rest after it',
		kind: 'duration',
		min: 0.01,
		max: 24,
		aliases: ['rest', 'off', 'cool', 'cool down', 'cooldown', 'pause', 'descanso'],
		fallback: {
			value: (given) => (typeof given.spellH === 'number' ? given.spellH : 0.5),
			why: 'as long as it ran (practice); the maker says how long',
			confirm: true,
		},
	}),
};

type Input = InputOf<typeof fields>;

export const inflate = declareTopic({
	name: 'inflate',
	title: 'Time to inflate tires',
	system: 'structure',
	purpose: 'How long a pump takes to fill the tires, with its rests, and what that costs the battery.',
	words: [
		'inflate',
		'air up',
		'airing up',
		'pump up',
		'inflation',
		'inflating',
		'air compressor',
		'tire pump',
		'tyre pump',
		'refill the tires',
		'aufpumpen',
		'inflar',
	],
	examples: [
		'air up four LT225/75R16 from 25 psi to 65 psi with a 72 L/min pump',
		'air up 4 tires 62 L from 25 psi to 65 psi, pump 72 L/min',
		'inflate 2 tires 1.8 to 4.2 bar, 70 l/min kompressor, 60 L each',
		'inflate tires volume 55 L from 1.5 bar to 4.5 bar, pump 160 L/min draws 45A, altitude 2400 m',
		'air compressor 2.5 cfm from 20 psi to 60 psi, tire volume 2.2 ft3, duty 30 min rest 30 min',
	],
	method:
		"Boyle's law at the air pressure of the altitude, integrated along the pump curve; where only the open flow is known, the textbook loss of a piston pump with dead space. Voltage drop at the pump, leaks and warming of the air are not covered.",
	fields,
	needs: [
		{ anyOf: ['fromKpa', 'pressures'], question: 'From which pressure?' },
		{ anyOf: ['toKpa', 'pressures'], question: 'Up to which pressure?' },
		{ anyOf: ['pumpFlowLMin', 'pumpFlowM3H'], question: 'What free-air flow has the pump (L/min or cfm)?' },
		{
			anyOf: ['volumeL', 'tireSize'],
			question: 'What size are the tires (as LT225/75R16), or how much air do they hold?',
		},
	],
	calculate: calculateInflate,
});

function n(value: number, decimals = 2): string {
	return writeNumber(value, decimals);
}

/** The inputs with both pressures in place. */
type Job = Input & { readonly fromKpa: number; readonly toKpa: number };

function calculateInflate(given: Input, sheet: Sheet) {
	const both = given.pressures === undefined ? null : readPressureRange(given.pressures);
	const fromKpa = given.fromKpa ?? both?.fromKpa;
	const toKpa = given.toKpa ?? both?.toKpa;
	if (fromKpa === undefined || toKpa === undefined) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read "${given.pressures ?? ''}" as both pressures.`,
			sheet.say`Give them as 25 to 65 psi.`,
			'pressures',
		);
	}
	return timeFor({ ...given, fromKpa, toKpa }, sheet);
}

function timeFor(input: Job, sheet: Sheet) {
	sheet.caution(cautionInflating, cautionSidewall, cautionHotPump);
	if (input.toKpa <= input.fromKpa) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read from ${sheet.show('pressure', input.fromKpa)} to ${sheet.show('pressure', input.toKpa)}: that lets air out.`,
			sheet.say`Give the lower pressure as the start and the higher one as the end.`,
			'toKpa',
		);
	}
	if (input.sidewallKpa !== undefined && input.toKpa > input.sidewallKpa) {
		return sheet.refuse(
			'unsafe',
			sheet.say`${sheet.show('pressure', input.toKpa)} is above the ${sheet.show('pressure', input.sidewallKpa)} on the sidewall: a tire can burst.`,
			sheet.say`Stay at or below ${sheet.show('pressure', input.sidewallKpa, { round: 'down' })}, and at what the door label asks.`,
			'toKpa',
		);
	}
	const openLMin = openFlow(input);
	if (openLMin === null) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read ${flow(sheet, input.pumpFlowLMin as number)} and ${sheet.show('airflow', input.pumpFlowM3H as number)} as the pump's flow.`,
			sheet.say`Give one of them.`,
			'pumpFlowLMin',
		);
	}
	const ambientKpa = standardPressureKpa(input.altitudeM);
	const volumeL = volumeOf(input, sheet);
	if (volumeL === null) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read "${input.tireSize as string}" as the tire size.`,
			sheet.say`Give it as printed, such as LT225/75R16, or the volume of air.`,
			'tireSize',
		);
	}
	const curve = curveOf(input, openLMin, ambientKpa, sheet);
	if (curve === null) {
		return sheet.refuse(
			'contradiction',
			sheet.say`The flow against pressure must be below the open flow of ${flow(sheet, openLMin)}, and its pressure be named.`,
			sheet.say`Give two points of the pump curve, such as 70 L/min open and 40 L/min at 40 psi.`,
			'loadedFlowLMin',
		);
	}
	const airL = freeAirL(volumeL, input.fromKpa, input.toKpa, ambientKpa);
	const perTireMin = pumpingMinutes(volumeL, input.fromKpa, input.toKpa, ambientKpa, curve);
	if (perTireMin === null) {
		return sheet.refuse(
			'impossible',
			sheet.say`By its curve this pump stalls before ${sheet.show('pressure', input.toKpa)}.`,
			sheet.say`Take a pump made for the pressure, or a lower target.`,
			'toKpa',
		);
	}
	const idealMin = airL / openLMin;
	const runMin = perTireMin * input.tires;
	sheet.step(
		'air pressure here',
		'pa',
		sheet.say`standard atmosphere at ${n(input.altitudeM, 0)} m`,
		ambientKpa,
		{
			kind: 'pressure',
			source: atmosphereSource,
		},
	);
	sheet.step(
		'free air for one tire',
		'Va = V · (p2 − p1) / pa',
		`${n(volumeL)} L × (${n(input.toKpa)} − ${n(input.fromKpa)}) kPa / ${n(ambientKpa)} kPa`,
		airL,
		{ unit: 'L', source: physics("Boyle's law") },
	);
	sheet.step('time at the open flow', 't0 = Va / Q0', `${n(airL)} L / ${n(openLMin)} L/min`, idealMin, {
		unit: 'min',
		source: physics('volume over flow'),
	});
	sheet.step(
		'time along the pump curve',
		't = ∫ V / (pa · Q(p)) dp',
		sheet.say`from ${n(input.fromKpa)} to ${n(input.toKpa)} kPa`,
		perTireMin,
		{ unit: 'min', source: physics("Boyle's law") },
	);
	sheet.result('tireVolume', 'air in one tire', volumeL, { unit: 'L', write: { decimals: 1 } });
	sheet.result('freeAir', 'free air for one tire', airL, { unit: 'L', write: { decimals: 1, round: 'up' } });
	minutes(sheet, 'openFlowTime', 'one tire at the open flow', idealMin);
	minutes(sheet, 'timePerTire', 'one tire', perTireMin);
	minutes(sheet, 'runTime', 'pump running', runMin);
	const spellMin = input.spellH === undefined ? Number.POSITIVE_INFINITY : input.spellH * 60;
	const rested = withRests(runMin, spellMin, input.restH * 60);
	minutes(sheet, 'totalTime', 'with rests', rested.totalMinutes);
	sheet.result('rests', 'rests', rested.rests, {});
	batteryCost(input, runMin, sheet);
	if (input.spellH === undefined && runMin > 15) {
		sheet.finding(
			'warning',
			'duty-unknown',
			sheet.say`It runs for ${n(runMin, 0)} min in all: small pumps may run 10 to 30 min before they must rest. Look it up.`,
			practice('duty of small pumps'),
		);
	}
	if (rested.rests > 0) {
		sheet.finding(
			'note',
			'pump-must-rest',
			sheet.say`The pump must rest ${rested.rests} times on the way.`,
			practice('duty cycle as its maker states'),
		);
	}
	const perTire = `${n(perTireMin, 1)} min`;
	const total = `${writeNumber(rested.totalMinutes, 0, 'up')} min`;
	const fastest = largestTargetText(input, sheet);
	return sheet.answer(
		input.tires === 1
			? sheet.say`${total} for the tire`
			: sheet.say`${total} for ${input.tires} tires, ${perTire} each`,
		{
			because:
				rested.rests > 0
					? sheet.say`${n(runMin, 1)} min of pumping and ${rested.rests} rests. ${fastest}`
					: sheet.say`${n(airL, 0)} L of free air a tire. ${fastest}`,
		},
	);
}

function minutes(sheet: Sheet, name: string, label: string, value: number): void {
	sheet.result(name, label, value / 60, {
		kind: 'duration',
		write: { unit: 'min', decimals: 1, round: 'up' },
	});
}

function flow(sheet: Sheet, value: number): string {
	return sheet.show('flow', value, { unit: 'L/min', decimals: 1 });
}

function largestTargetText(input: Input, sheet: Sheet): string {
	return input.altitudeM > 300
		? sheet.say`Thin air at this altitude adds ${n((standardPressureKpa(0) / standardPressureKpa(input.altitudeM) - 1) * 100, 0)} % to the air needed.`
		: sheet.say`Flow falls as the pressure rises; that is counted.`;
}

/** The open flow in L/min, or null where two flows contradict each other. */
function openFlow(input: Input): number | null {
	const other = input.pumpFlowM3H === undefined ? undefined : (input.pumpFlowM3H * 1000) / 60;
	if (input.pumpFlowLMin !== undefined && other !== undefined) {
		return Math.abs(other - input.pumpFlowLMin) <= 0.05 * other ? Math.min(other, input.pumpFlowLMin) : null;
	}
	return input.pumpFlowLMin ?? other ?? null;
}

function volumeOf(input: Input, sheet: Sheet): number | null {
	if (input.volumeL !== undefined) return input.volumeL;
	const size = readTireSize(input.tireSize as string);
	if (size === null) return null;
	const volumeL = tireVolumeL(size, usualFill);
	const outerMm = overallDiameterMm(size);
	sheet.assume('fill', 'air in the ring between rim and tread', usualFill, 'nine tenths of it (practice)', {
		kind: 'fraction',
	});
	sheet.step(
		'air in one tire',
		'V = 0.9 · π · (D² − d²) · b / 4',
		`0.9 × π × (${n(outerMm, 0)}² − ${n(size.rimMm, 1)}²) mm² × ${n(size.widthMm, 0)} mm / 4`,
		volumeL,
		{ unit: 'L', source: practice('the ring between rim and tread, nine tenths full') },
	);
	return volumeL;
}

/** The pump's curve: two given points on a straight line, or the open flow with the loss of a usual pump. */
function curveOf(
	input: Job,
	openLMin: number,
	ambientKpa: number,
	sheet: Sheet,
): readonly PumpPoint[] | null {
	const { loadedFlowLMin, loadedPressureKpa } = input;
	if (loadedFlowLMin === undefined && loadedPressureKpa === undefined) {
		sheet.assume(
			'deadSpace',
			'dead space of the pump',
			usualDeadSpace,
			'a usual small piston pump (practice)',
			{
				kind: 'fraction',
				confirm: true,
			},
		);
		return assumedCurve(openLMin, usualDeadSpace, ambientKpa, Math.max(input.toKpa, 100));
	}
	if (loadedFlowLMin === undefined || loadedPressureKpa === undefined || loadedFlowLMin >= openLMin)
		return null;
	// The line goes on beyond the second point until no flow is left.
	const stallKpa = (loadedPressureKpa * openLMin) / (openLMin - loadedFlowLMin);
	return [
		{ gaugeKpa: 0, freeAirLMin: openLMin },
		{ gaugeKpa: loadedPressureKpa, freeAirLMin: loadedFlowLMin },
		{ gaugeKpa: stallKpa, freeAirLMin: 0 },
	];
}

function batteryCost(input: Input, runMin: number, sheet: Sheet): void {
	const currentA = input.currentA ?? (input.powerW === undefined ? undefined : input.powerW / input.voltageV);
	if (currentA === undefined) return;
	const chargeAh = (currentA * runMin) / 60;
	sheet.step('charge taken', 'q = I · t', `${n(currentA)} A × ${n(runMin)} min / 60`, chargeAh, {
		kind: 'charge',
		source: physics('current times time'),
	});
	sheet.result('current', 'current', currentA, { kind: 'current', write: { round: 'up' } });
	sheet.result('charge', 'charge taken', chargeAh, { kind: 'charge', write: { decimals: 1, round: 'up' } });
	sheet.result('energy', 'energy taken', chargeAh * input.voltageV, {
		kind: 'energy',
		write: { unit: 'Wh', decimals: 0, round: 'up' },
	});
	if (input.bankAh === undefined) return;
	const share = chargeAh / input.bankAh;
	sheet.result('bankShare', 'share of the bank', share, { kind: 'fraction', write: { round: 'up' } });
	if (share > 0.5) {
		sheet.finding(
			'warning',
			'bank-too-small',
			sheet.say`That takes ${sheet.show('fraction', share, { round: 'up' })} of the bank: run the engine or charge meanwhile.`,
			practice('half the bank for one task'),
		);
	}
}
