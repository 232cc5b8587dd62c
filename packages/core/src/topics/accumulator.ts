import { type WriteOptions, write, writeNumber } from '../quantity/write.js';
import { atmosphereSource, standardPressureKpa } from '../structure/atmosphere.js';
import type { Context } from '../topic/context.js';
import { declareTopic } from '../topic/declare.js';
import { type InputOf, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import type { Refusal } from '../topic/sizing.js';
import { physics, practice } from '../topic/source.js';
import { sayFor } from '../topic/translate.js';
import { drawdownL, mostStartsPerH, type PumpCycle, pumpCycle, waterHeldL } from '../water/accumulator.js';
import { cautionPressure } from '../water/cautions.js';

/** "30/50": cut-in and cut-out of a pressure switch in psi. */
const switchPattern = String.raw`(?<![\d/.])[1-7]\d ?/ ?[2-9]\d(?:\s*psi)?(?![\d/])`;

const fields = {
	volumeL: quantity({
		label: 'accumulator',
		kind: 'volume',
		min: 0.05,
		max: 200,
		aliases: [
			'accumulator',
			'accumulator tank',
			'pressure tank',
			'expansion tank',
			'vessel',
			'acumulador',
			'druckspeicher',
			'ausgleichsbehälter',
		],
		help: 'The whole inside, gas and water together.',
	}),
	wantedL: quantity({
		label: 'water wanted without the pump',
		kind: 'volume',
		min: 0.01,
		max: 100,
		aliases: [
			'want',
			'wanted',
			'drawdown',
			'without the pump',
			'between starts',
			'usable',
			'quiero',
			'gewünscht',
		],
	}),
	pressureSwitch: text({
		label: 'pressure switch',
		pattern: switchPattern,
		help: 'Cut-in and cut-out in psi as stamped on it: 30/50.',
	}),
	cutInKPa: quantity({
		label: 'cut-in pressure',
		kind: 'pressure',
		min: 10,
		max: 900,
		aliases: [
			'cut-in',
			'cut in',
			'cutin',
			'on at',
			'starts at',
			'kicks in',
			'turns on',
			'pump on',
			'low',
			'arranque',
			'einschalten',
			'ein',
		],
	}),
	cutOutKPa: quantity({
		label: 'cut-out pressure',
		kind: 'pressure',
		min: 10,
		max: 1000,
		aliases: [
			'cut-out',
			'cut out',
			'cutout',
			'off at',
			'stops at',
			'shuts off',
			'shutoff',
			'turns off',
			'pump off',
			'high',
			'parada',
			'ausschalten',
			'aus',
		],
	}),
	prechargeKPa: quantity({
		label: 'pre-charge',
		kind: 'pressure',
		min: 0,
		max: 900,
		aliases: [
			'pre-charge',
			'precharge',
			'pre charge',
			'precharged',
			'pre-load',
			'air',
			'gas',
			'bladder',
			'precarga',
			'vordruck',
		],
		fallback: {
			value: (given) => Math.max(0, (pressuresOf(given).cutInKPa ?? 0) - belowCutInKPa),
			why: '2 psi below the cut-in pressure (practice); set it with the water side open',
			confirm: true,
		},
	}),
	pumpLMin: quantity({
		label: 'flow of the pump',
		kind: 'flow',
		min: 0.2,
		max: 100,
		aliases: ['pump', 'pump flow', 'bomba', 'pumpe'],
		fallback: { value: 11.356, why: '3 gpm, the usual 12 V pump (practice)', confirm: true },
	}),
	drawLMin: quantity({
		label: 'flow drawn',
		kind: 'flow',
		min: 0.05,
		max: 100,
		aliases: ['tap', 'draw', 'drawn', 'drawing', 'shower', 'faucet', 'running', 'grifo', 'hahn'],
	}),
	altitudeM: quantity({
		label: 'altitude',
		kind: 'length',
		min: -400,
		max: 6000,
		aliases: ['altitude', 'elevation', 'above sea level', 'altitud', 'höhe', 'meereshöhe'],
		fallback: { value: 0, why: 'sea level; thinner air changes it by a few percent' },
	}),
};

type Given = InputOf<typeof fields>;
type Input = Omit<Given, keyof Pressures> & { readonly cutInKPa: number; readonly cutOutKPa: number };

interface Pressures {
	readonly cutInKPa?: number | undefined;
	readonly cutOutKPa?: number | undefined;
}

const kPaPerPsi = 6.894757293168;

/** Both pressures as named one by one, or as stamped on the switch. */
function pressuresOf(given: Pressures & { readonly pressureSwitch?: string | undefined }): Pressures {
	const [low, high] = (given.pressureSwitch?.match(/\d+/g) ?? []).map((psi) => Number(psi) * kPaPerPsi);
	return { cutInKPa: given.cutInKPa ?? low, cutOutKPa: given.cutOutKPa ?? high };
}

/** Careful shops set the gas 2 psi below the cut-in [kPa]. */
const belowCutInKPa = 13.79;
/** No pressure switch tells two pressures apart that lie nearer [kPa]. */
const leastSpanKPa = 5;
/** More starts than this are felt as a stutter and wear pump and switch [1/h]: six a minute. */
const mostStarts = 360;
const startsSource = practice('no more than six starts a minute for a small diaphragm pump');
/** An accumulator is small: quarts in US shops. */
function small(sheet: Sheet, round: 'up' | 'down' | 'nearest'): WriteOptions {
	return { unit: sheet.context.units === 'us' ? 'qt' : 'L', decimals: 2, round };
}

const boyle = physics("Boyle's law, absolute pressures");

export const accumulator = declareTopic({
	name: 'accumulator',
	title: 'Water an accumulator gives between pump starts',
	system: 'water',
	purpose: 'How much water comes without the pump, and how often the pump starts.',
	words: [
		'accumulator',
		'accumulator tank',
		'drawdown',
		'pressure tank',
		'pre-charge',
		'precharge',
		'pump cycling',
		'pump cycles',
		'short cycling',
		'acumulador',
		'druckspeicher',
	],
	examples: [
		'accumulator 0.75 L precharge 30 psi cut-in 35 psi cut-out 55 psi',
		'1 qt accumulator, pump on at 30 psi off at 50 psi',
		'druckspeicher 2 L vordruck 1.4 bar ein 1.5 bar aus 2.8 bar',
		'what accumulator for a drawdown of 0.5 gal, cut in 25 psi cut out 45 psi',
	],
	method:
		"Boyle's law at constant temperature with absolute pressures; gauges read against the air of the altitude. The pump's flow is taken as constant between the two pressures.",
	fields,
	needs: [
		{ anyOf: ['cutInKPa', 'pressureSwitch'], question: 'At what pressure does the pump start?' },
		{ anyOf: ['cutOutKPa', 'pressureSwitch'], question: 'At what pressure does the pump stop?' },
		{
			anyOf: ['volumeL', 'wantedL'],
			question: 'How big is the accumulator (or how much water is wanted from it)?',
		},
	],
	contradictions: pressureContradictions,
	calculate: calculateAccumulator,
});

/** Pressures in an order that no pump and no gas can have. */
function pressureContradictions(given: Partial<Given>, context: Context): Refusal[] {
	const say = sayFor(context);
	const { cutInKPa, cutOutKPa } = pressuresOf(given);
	const { prechargeKPa, pressureSwitch } = given;
	if (pressureSwitch !== undefined && !new RegExp(`^${switchPattern}$`, 'i').test(pressureSwitch)) {
		return [
			{
				code: 'out-of-range',
				text: say`I can't use "${pressureSwitch}" as the pressure switch.`,
				instead: 'It is written as cut-in and cut-out in psi: 30/50.',
				field: 'pressureSwitch',
			},
		];
	}
	if (cutOutKPa === undefined) return [];
	const pressure = (value: number) => write('pressure', value, context.units);
	if (cutInKPa !== undefined && cutOutKPa < cutInKPa + leastSpanKPa) {
		return [
			{
				code: 'contradiction',
				text: say`The pump can't stop at ${pressure(cutOutKPa)} and start at ${pressure(cutInKPa)}.`,
				instead: say`The cut-out pressure lies at least ${pressure(leastSpanKPa)} above the cut-in pressure.`,
				field: 'cutOutKPa',
			},
		];
	}
	if (prechargeKPa === undefined || prechargeKPa <= cutOutKPa - leastSpanKPa) return [];
	return [
		{
			code: 'impossible',
			text: say`With a pre-charge of ${pressure(prechargeKPa)} no water gets in before the pump stops at ${pressure(cutOutKPa)}.`,
			instead: 'Set the pre-charge just below the cut-in pressure.',
			field: 'prechargeKPa',
		},
	];
}

function calculateAccumulator(given: Given, sheet: Sheet) {
	const { cutInKPa, cutOutKPa } = pressuresOf(given);
	if (cutInKPa === undefined || cutOutKPa === undefined) {
		throw new Error('the declaration asks for both pressures');
	}
	const input: Input = { ...given, cutInKPa, cutOutKPa };
	const { prechargeKPa } = input;
	const pressure = (value: number) => sheet.show('pressure', value);
	const atmosphereKPa = standardPressureKpa(input.altitudeM);
	const gauge = { prechargeKPa, cutInKPa, cutOutKPa };
	const perLitre = drawdownL(1, gauge, atmosphereKPa);
	const volumeL = input.volumeL ?? (input.wantedL as number) / perLitre;
	const drawdown = volumeL * perLitre;
	const most = mostStartsPerH(drawdown, input.pumpLMin);
	// The volume at which the pump starts no more than it should, at any tap.
	const calmL = (most / mostStarts) * volumeL;
	const bestKPa = Math.max(0, cutInKPa - belowCutInKPa);
	const bestL = drawdownL(volumeL, { ...gauge, prechargeKPa: bestKPa }, atmosphereKPa);

	writeWorking(sheet, input, volumeL, drawdown, atmosphereKPa, most);
	const down = { kind: 'volume', write: small(sheet, 'down') } as const;
	const up = { kind: 'volume', write: small(sheet, 'up') } as const;
	sheet.result('drawdown', 'water without the pump', drawdown, down);
	sheet.result('volume', 'accumulator', volumeL, up);
	sheet.result(
		'waterAtCutOut',
		'water in it at cut-out',
		waterHeldL(volumeL, prechargeKPa, cutOutKPa, atmosphereKPa),
		down,
	);
	sheet.result('startsPerHour', 'most pump starts an hour, at half its flow', most, {
		unit: '1/h',
		write: { round: 'up', decimals: 0 },
	});
	sheet.result('volumeForCalm', sheet.say`accumulator for ${mostStarts} starts an hour at most`, calmL, up);
	sheet.result('bestPrecharge', 'best pre-charge', bestKPa, { kind: 'pressure', write: { round: 'down' } });
	sheet.result('bestDrawdown', 'water without the pump at the best pre-charge', bestL, down);
	const cycle = input.drawLMin === undefined ? null : pumpCycle(drawdown, input.drawLMin, input.pumpLMin);
	if (cycle !== null) {
		sheet.result('startsAtDraw', 'pump starts an hour at the flow drawn', cycle.startsPerH, {
			unit: '1/h',
			write: { round: 'up', decimals: 0 },
		});
		sheet.result('pumpOff', 'pump off in each turn', cycle.offMin / 60, {
			kind: 'duration',
			write: { unit: 's', decimals: 0, round: 'down' },
		});
		sheet.result('pumpOn', 'pump on in each turn', cycle.onMin / 60, {
			kind: 'duration',
			write: { unit: 's', decimals: 0, round: 'down' },
		});
	}
	for (const factor of [0.5, 2]) {
		const other = sheet.show('volume', volumeL * factor, small(sheet, 'nearest'));
		const gives = sheet.show('volume', drawdown * factor, small(sheet, 'down'));
		const starts = writeNumber(most / factor, 0, 'up');
		sheet.neighbour(other, most / factor <= mostStarts, sheet.say`${gives}, up to ${starts} starts an hour`);
	}
	writeTipping(sheet, input, volumeL, gauge, atmosphereKPa);
	writeFindings(sheet, input, most, calmL, bestKPa, cycle);
	sheet.caution(
		cautionPressure,
		'Check the pre-charge with the water side open and the pump off; a gauge on a full accumulator reads the water.',
	);
	const gives = sheet.show('volume', drawdown, small(sheet, 'down'));
	const size = sheet.show('volume', volumeL, small(sheet, 'up'));
	const starts = writeNumber(most, 0, 'up');
	return sheet.answer(
		input.volumeL === undefined
			? sheet.say`${size} accumulator for ${gives} without the pump`
			: sheet.say`${gives} without the pump; up to ${starts} starts an hour`,
		{
			governedBy: 'gas pressure',
			because: sheet.say`Between ${pressure(cutInKPa)} and ${pressure(cutOutKPa)}, gas set to ${pressure(prechargeKPa)}.`,
		},
	);
}

function writeWorking(
	sheet: Sheet,
	input: Input,
	volumeL: number,
	drawdown: number,
	atmosphereKPa: number,
	most: number,
): void {
	const n = (value: number, decimals = 2) => writeNumber(value, decimals);
	sheet.step('air pressure around', 'p(h)', `${n(input.altitudeM, 0)} m above the sea`, atmosphereKPa, {
		kind: 'pressure',
		source: atmosphereSource,
	});
	const fromKPa = Math.max(input.prechargeKPa, input.cutInKPa);
	sheet.step(
		'water without the pump',
		'V = Vt · P0 · (1/Pin − 1/Pout)',
		`${n(volumeL, 3)} L × ${n(input.prechargeKPa + atmosphereKPa)} × (1/${n(fromKPa + atmosphereKPa)} − 1/${n(input.cutOutKPa + atmosphereKPa)})`,
		drawdown,
		{ kind: 'volume', source: boyle },
	);
	sheet.step(
		'most pump starts an hour',
		'Qp / (4 V)',
		`60 × ${n(input.pumpLMin)} L/min / (4 × ${n(drawdown, 3)} L)`,
		most,
		{
			unit: '1/h',
			source: physics('water balance'),
		},
	);
}

/** Pre-charge down to which the drawdown stays above nine tenths of what it is. */
function writeTipping(
	sheet: Sheet,
	input: Input,
	volumeL: number,
	gauge: { readonly prechargeKPa: number; readonly cutInKPa: number; readonly cutOutKPa: number },
	atmosphereKPa: number,
): void {
	// The drawdown falls in proportion to the absolute pre-charge: nine tenths of one are nine tenths of the other.
	const lowKPa = 0.9 * (Math.min(input.prechargeKPa, input.cutInKPa) + atmosphereKPa) - atmosphereKPa;
	if (lowKPa <= 0) return;
	const left = drawdownL(volumeL, { ...gauge, prechargeKPa: lowKPa }, atmosphereKPa);
	const shown = sheet.show('pressure', lowKPa);
	const gives = sheet.show('volume', left, small(sheet, 'down'));
	sheet.tipping(
		'prechargeKPa',
		'pre-charge',
		lowKPa,
		sheet.say`down to ${shown} of gas, where it gives ${gives}, a tenth less`,
		{ kind: 'pressure' },
	);
}

function writeFindings(
	sheet: Sheet,
	input: Input,
	most: number,
	calmL: number,
	bestKPa: number,
	cycle: PumpCycle | null,
): void {
	const best = sheet.show('pressure', bestKPa);
	if (input.prechargeKPa > input.cutInKPa) {
		sheet.finding(
			'warning',
			'precharge-above-cut-in',
			sheet.say`The gas is set above the cut-in: the accumulator is empty before the pump starts and the tap stutters. Set it to ${best}.`,
			practice('pre-charge just below the cut-in'),
		);
	} else if (input.prechargeKPa < 0.5 * input.cutInKPa) {
		sheet.finding(
			'note',
			'precharge-low',
			sheet.say`The gas is set low; at ${best} the same accumulator gives more.`,
			boyle,
		);
	}
	const starts = cycle?.startsPerH ?? most;
	if (starts > mostStarts) {
		const needed = sheet.show('volume', calmL, small(sheet, 'up'));
		const shown = writeNumber(starts, 0, 'up');
		const limit = String(mostStarts);
		sheet.finding(
			cycle === null ? 'note' : 'warning',
			'short-cycling',
			cycle === null
				? sheet.say`A slow tap can start the pump ${shown} times an hour; an accumulator of ${needed} keeps it to ${limit}.`
				: sheet.say`This tap starts the pump ${shown} times an hour; an accumulator of ${needed} keeps any tap to ${limit}.`,
			startsSource,
		);
	}
	if (input.drawLMin !== undefined && input.drawLMin >= input.pumpLMin) {
		sheet.finding(
			'note',
			'pump-never-stops',
			sheet.say`The tap takes all the pump gives: once started it runs on and the pressure falls.`,
			physics('water balance'),
		);
	}
}
