import { airDensityKgM3 } from '../climate/air.js';
import { writeNumber } from '../quantity/write.js';
import { plasticRoughnessMm, plasticRoughnessSource } from '../tables/pipes.js';
import { waterSource } from '../tables/water.js';
import { declareTopic } from '../topic/declare.js';
import { flag, type InputOf, number, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';
import { cautionDrain } from '../water/cautions.js';
import { type Drain, drainFlowM3S, drainTimeS, ventBoreMm } from '../water/draining.js';
import { gravityMS2 } from '../water/gravity.js';
import { waterAt } from '../water/properties.js';

const fields = {
	volumeL: quantity({
		label: 'tank',
		kind: 'volume',
		min: 1,
		max: 3000,
		aliases: ['tank', 'gray', 'grey', 'fresh', 'waste', 'holds', 'depósito', 'behälter', 'abwassertank'],
		required: 'How much water is in the tank?',
	}),
	valveMm: quantity({
		label: 'bore of the valve',
		kind: 'thickness',
		min: 3,
		max: 160,
		aliases: [
			'valve',
			'drain',
			'drain valve',
			'outlet',
			'opening',
			'gate',
			'port',
			'bore',
			'válvula',
			'desagüe',
			'ventil',
			'ablass',
			'schieber',
		],
	}),
	depthM: quantity({
		label: 'depth of water',
		kind: 'length',
		min: 0.03,
		max: 3,
		aliases: [
			'deep',
			'depth',
			'tall',
			'high',
			'height',
			'head',
			'level',
			'altura',
			'profundidad',
			'tief',
			'hoch',
			'tiefe',
			'höhe',
		],
		help: 'From the outlet up to the water.',
		fallback: { value: 0.25, why: 'a flat tank under the floor (practice)', confirm: true },
	}),
	hoseLengthM: quantity({
		label: 'length of the hose',
		kind: 'length',
		min: 0.05,
		max: 50,
		aliases: ['hose', 'hose length', 'of hose', 'pipe', 'long', 'manguera', 'schlauch'],
	}),
	fallM: quantity({
		label: 'fall from the outlet to the open end',
		kind: 'length',
		min: 0,
		max: 5,
		aliases: ['fall', 'drop', 'below', 'slope', 'downhill', 'lower', 'caída', 'gefälle', 'tiefer'],
		fallback: { value: 0, why: 'the safe side: the open end level with the outlet' },
	}),
	hoseMm: quantity({
		label: 'bore of the hose',
		kind: 'thickness',
		min: 3,
		max: 160,
		aliases: ['hose', 'hose bore', 'pipe', 'manguera', 'schlauch'],
	}),
	wantedH: quantity({
		label: 'time wanted',
		kind: 'duration',
		min: 0.5 / 60,
		max: 48,
		aliases: ['in', 'within', 'under', 'wanted', 'empty in', 'minutes', 'en', 'binnen'],
	}),
	ventMm: quantity({
		label: 'bore of the vent',
		kind: 'thickness',
		min: 1,
		max: 160,
		aliases: ['vent', 'air vent', 'breather', 'respiradero', 'entlüftung', 'belüftung'],
	}),
	vented: flag({
		label: 'vented',
		yes: ['vented'],
		no: [
			'no vent',
			'unvented',
			'without vent',
			'without a vent',
			'vent closed',
			'vent plugged',
			'sin respiradero',
			'ohne entlüftung',
		],
		fallback: { value: true, why: 'air can come in as the water leaves' },
	}),
	discharge: number({
		label: 'discharge coefficient',
		min: 0.3,
		max: 1,
		aliases: ['cd', 'discharge coefficient', 'coefficient'],
		fallback: { value: 0.6, why: 'a sharp edge; a rounded outlet does better' },
	}),
	waterC: quantity({
		label: 'water temperature',
		kind: 'temperature',
		min: 0,
		max: 95,
		aliases: ['water', 'agua', 'wasser'],
		fallback: { value: 10, why: 'cold water, which flows hardest' },
	}),
};

type Input = InputOf<typeof fields>;

/** Bores in which drain valves are sold [mm]: 1/2 to 4 in (common practice). */
const valveBoresMm: readonly number[] = [12.7, 19.05, 25.4, 31.75, 38.1, 50.8, 76.2, 101.6];
/** What is left when a flat tank is called empty [m] (common practice). */
const restM = 0.01;
const torricelli = physics('Torricelli, with falling head');

export const drain = declareTopic({
	name: 'drain',
	title: 'Time to empty a tank by gravity',
	system: 'water',
	purpose: 'How long a tank takes to empty through its valve and hose, and what vent it needs.',
	words: [
		'drain',
		'drain time',
		'dump valve',
		'drain valve',
		'entleeren',
		'vaciar',
		'draining',
		'empty the tank',
		'empty',
		'dump',
		'how long to empty',
		'time to empty',
		'desaguar',
		'ablassen',
		'leeren',
	],
	examples: [
		'how long to empty a 40 gal tank 10 in deep through a 1.5 in valve',
		'drain 75 L, water 25 cm deep, 1/2 in valve',
		'drain 100 L 30 cm deep 38 mm valve with 3 m of hose 32 mm hose',
		'tank 80 L entleeren ventil 25 mm tiefe 20 cm',
	],
	method:
		'Torricelli with the head that falls as the tank empties; with a hose, Bernoulli with its friction (Darcy-Weisbach, Swamee-Jain). Upright walls; empty means 10 mm left. Air must come in as fast as water goes out.',
	fields,
	needs: [{ anyOf: ['valveMm', 'wantedH'], question: 'What is the bore of the drain valve?' }],
	calculate: calculateDrain,
});

function drainOf(input: Input, valveMm: number): Drain {
	return {
		tankAreaM2: input.volumeL / 1000 / input.depthM,
		valveBoreMm: valveMm,
		dischargeCoefficient: input.discharge,
		hose:
			input.hoseLengthM === undefined
				? null
				: {
						boreMm: input.hoseMm ?? valveMm,
						lengthM: input.hoseLengthM,
						roughnessMm: plasticRoughnessMm,
					},
		fallM: input.fallM,
		viscosityM2S: waterAt(input.waterC).viscosityM2S,
	};
}

function timeH(input: Input, valveMm: number): number {
	return drainTimeS(drainOf(input, valveMm), input.depthM, restM) / 3600;
}

function calculateDrain(input: Input, sheet: Sheet) {
	const areaM2 = input.volumeL / 1000 / input.depthM;
	if (areaM2 > 6) {
		return sheet.refuse(
			'contradiction',
			sheet.say`${sheet.show('volume', input.volumeL)} only ${sheet.show('length', input.depthM, { decimals: 2 })} deep would cover ${sheet.show('area', areaM2)}.`,
			'Check the volume and the depth of the water.',
			'depthM',
		);
	}
	if (input.hoseMm !== undefined && input.hoseLengthM === undefined) {
		return sheet.ask({
			name: 'hoseLengthM',
			label: fields.hoseLengthM.meta.label,
			question: 'How long is the hose?',
		});
	}
	const valveMm = input.valveMm ?? valveBoresMm.find((bore) => timeH(input, bore) <= (input.wantedH ?? 0));
	if (valveMm === undefined) {
		return sheet.refuse(
			'impossible',
			sheet.say`No valve up to ${sheet.show('thickness', valveBoresMm.at(-1) ?? 0)} empties it in ${sheet.show('duration', input.wantedH ?? 0)}${input.hoseLengthM === undefined ? '' : sheet.say` through that hose`}.`,
			'Allow more time, a wider or shorter hose, or more fall.',
			'wantedH',
		);
	}
	const drain = drainOf(input, valveMm);
	const hours = timeH(input, valveMm);
	const firstM3S = drainFlowM3S(drain, input.depthM);
	const freeM3S = drainFlowM3S({ ...drain, hose: null }, input.depthM);
	// The air coming in may cost a twentieth of the head.
	const allowedPa = 0.05 * waterAt(input.waterC).densityKgM3 * gravityMS2 * input.depthM;
	const ventMm = ventBoreMm(firstM3S, allowedPa, airDensityKgM3(20, 101.325));

	writeWorking(sheet, input, drain, { hours, firstM3S, ventMm, allowedPa });
	const up = { kind: 'duration', write: { unit: 'min', round: 'up' } } as const;
	sheet.result('time', 'time to empty', hours, up);
	sheet.result('valve', 'bore of the valve', valveMm, { kind: 'thickness' });
	sheet.result('firstFlow', 'flow at the start', firstM3S * 60_000, { kind: 'flow' });
	sheet.result('meanFlow', 'mean flow', (input.volumeL * (1 - restM / input.depthM)) / (hours * 60), {
		kind: 'flow',
	});
	sheet.result(
		'half',
		'time until half is out',
		drainTimeS(drain, input.depthM, input.depthM / 2) / 3600,
		up,
	);
	sheet.result('left', 'left in the tank', (input.volumeL * restM) / input.depthM, {
		kind: 'volume',
		write: { round: 'up' },
	});
	sheet.result('vent', 'bore of the vent it needs', ventMm, { kind: 'thickness', write: { round: 'up' } });
	if (drain.hose !== null) {
		sheet.result('hoseShare', 'flow kept by the hose', firstM3S / freeM3S, {
			kind: 'fraction',
			write: { round: 'down' },
		});
	}
	writeNeighbours(sheet, input, valveMm);
	writeTipping(sheet, input, valveMm);
	writeFindings(sheet, input, valveMm, hours, ventMm);
	sheet.caution(
		cautionDrain,
		'Open the vent before the valve: a thin tank sucked empty without air folds in.',
	);
	const time = sheet.show('duration', hours, { unit: hours > 2 ? 'h' : 'min', round: 'up' });
	const bore = sheet.show('thickness', valveMm);
	const flow = sheet.show('flow', firstM3S * 60_000);
	const vent = sheet.show('thickness', ventMm, { round: 'up' });
	return sheet.answer(
		input.valveMm === undefined
			? sheet.say`${bore} valve: empty in ${time}`
			: sheet.say`Empty in ${time} through ${bore}`,
		{
			governedBy: drain.hose !== null && firstM3S < 0.8 * freeM3S ? 'friction in the hose' : 'the valve',
			because: sheet.say`It starts at ${flow} and slows as the level falls; the vent needs ${vent}.`,
		},
	);
}

interface Figures {
	readonly hours: number;
	readonly firstM3S: number;
	readonly ventMm: number;
	readonly allowedPa: number;
}

function writeWorking(sheet: Sheet, input: Input, drain: Drain, figures: Figures): void {
	const n = (value: number, decimals = 3) => writeNumber(value, decimals);
	sheet.step(
		'surface of the water',
		'At = V / h',
		`${n(input.volumeL)} L / ${n(input.depthM)} m`,
		drain.tankAreaM2,
		{
			kind: 'area',
			source: physics('geometry of a tank with upright walls'),
		},
	);
	if (drain.hose === null) {
		sheet.step(
			'flow at the start',
			'Q = Cd · A · √(2 g (h + z))',
			`${n(input.discharge)} × π/4 × (${n(drain.valveBoreMm, 1)} mm)² × √(2 × 9.80665 × ${n(input.depthM + input.fallM)} m)`,
			figures.firstM3S * 60_000,
			{ kind: 'flow', source: torricelli },
		);
		sheet.source(fromMemory('textbook hydraulics', 'discharge coefficient 0.6 of a sharp-edged opening'));
	} else {
		sheet.step(
			'flow at the start',
			'h + z = (1/Cd² − 1) vv²/2g + (1 + f L/D) vh²/2g',
			`${n(input.depthM + input.fallM)} m over ${n(drain.hose.lengthM)} m of hose with ${n(drain.hose.boreMm, 1)} mm bore`,
			figures.firstM3S * 60_000,
			{ kind: 'flow', source: physics('Bernoulli with Darcy-Weisbach friction') },
		);
		sheet.source(waterSource, plasticRoughnessSource);
	}
	sheet.step(
		'time to empty',
		't = ∫ At dh / Q(h)',
		`from ${n(input.depthM)} m to ${n(restM)} m`,
		figures.hours,
		{ kind: 'duration', source: torricelli },
	);
	sheet.step(
		'bore of the vent',
		'Q = 0.6 · A · √(2 Δp / ρ)',
		`${n(figures.firstM3S * 60_000)} L/min of air at ${n(figures.allowedPa, 0)} Pa, a twentieth of the head`,
		figures.ventMm,
		{ kind: 'thickness', source: practice('air may cost a twentieth of the head') },
	);
}

function writeNeighbours(sheet: Sheet, input: Input, valveMm: number): void {
	const smaller = valveBoresMm.findLast((bore) => bore < valveMm - 0.5);
	const larger = valveBoresMm.find((bore) => bore > valveMm + 0.5);
	for (const bore of [smaller, larger]) {
		if (bore === undefined) continue;
		const hours = timeH(input, bore);
		const time = sheet.show('duration', hours, { unit: hours > 2 ? 'h' : 'min', round: 'up' });
		sheet.neighbour(
			sheet.show('thickness', bore),
			input.wantedH === undefined || hours <= input.wantedH,
			sheet.say`empty in ${time}`,
		);
	}
}

/** The narrowest valve that still meets the time wanted. */
function writeTipping(sheet: Sheet, input: Input, valveMm: number): void {
	const { wantedH } = input;
	if (wantedH === undefined || timeH(input, valveMm) > wantedH) return;
	let low = 1;
	let high = valveMm;
	for (let step = 0; step < 40; step += 1) {
		const middle = (low + high) / 2;
		if (timeH(input, middle) <= wantedH) high = middle;
		else low = middle;
	}
	const shown = sheet.show('thickness', high, { round: 'up' });
	sheet.tipping('valveMm', 'bore of the valve', high, sheet.say`down to ${shown}`, { kind: 'thickness' });
}

function writeFindings(sheet: Sheet, input: Input, valveMm: number, hours: number, ventMm: number): void {
	const vent = sheet.show('thickness', ventMm, { round: 'up' });
	if (!input.vented) {
		sheet.finding(
			'warning',
			'no-vent',
			sheet.say`Without a vent it glugs, stops or folds the tank; it needs a vent of at least ${vent}.`,
			physics('air must replace the water'),
		);
	} else if (input.ventMm !== undefined && input.ventMm < ventMm) {
		const given = sheet.show('thickness', input.ventMm);
		sheet.finding(
			'warning',
			'vent-too-small',
			sheet.say`The vent (${given}) is too small for this flow; it needs ${vent}.`,
			physics('air must replace the water'),
		);
	}
	if (input.wantedH !== undefined && hours > input.wantedH) {
		const better = valveBoresMm.find((bore) => timeH(input, bore) <= (input.wantedH ?? 0));
		const wanted = sheet.show('duration', input.wantedH, { unit: 'min' });
		sheet.finding(
			'warning',
			'slower-than-wanted',
			better === undefined
				? sheet.say`It won't be empty in ${wanted} with any valve through that hose; a wider hose or more fall helps.`
				: sheet.say`It won't be empty in ${wanted}; a valve of ${sheet.show('thickness', better)} does it.`,
			torricelli,
		);
	}
	if (input.hoseMm !== undefined && input.hoseMm < valveMm * 0.9) {
		sheet.finding(
			'note',
			'hose-narrower-than-valve',
			sheet.say`The hose is narrower than the valve and decides; food scraps lodge where it narrows.`,
			practice('drain hose as wide as the valve'),
		);
	}
}
