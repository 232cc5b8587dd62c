import { type Bank, bankFields, bankOf, energyText, energyWrite } from '../climate/bank.js';
import { writeNumber } from '../quantity/write.js';
import { designHeating } from '../solar/climate.js';
import { isDecision, readPlace } from '../solar/place-input.js';
import { insulationOptions, materials } from '../tables/materials.js';
import { surfaceResistances } from '../tables/surfaces.js';
import { iceDensityKgM3, iceSource, waterSource } from '../tables/water.js';
import { declareTopic } from '../topic/declare.js';
import { choice, flag, type InputOf, place, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';
import { cautionPad, cautionPotable } from '../water/cautions.js';
import { boreAreaM2 } from '../water/flow.js';
import {
	type Cover,
	cooledC,
	type FreezeTimes,
	flatLossWK,
	freezeTimes,
	pipeLossWK,
	tankAreaM2,
} from '../water/freezing.js';
import { waterAt } from '../water/properties.js';

const fields = {
	what: choice({
		label: 'what is in the cold',
		options: {
			tank: ['tank', 'fresh tank', 'gray tank', 'grey tank', 'water tank', 'depósito', 'wassertank'],
			pipe: [
				'pipe',
				'pex',
				'hose',
				'water line',
				'drain pipe',
				'tubo',
				'tubería',
				'rohr',
				'leitung',
				'schlauch',
			],
			bay: [
				'pump bay',
				'bay',
				'pump',
				'wet bay',
				'compartment',
				'locker',
				'compartimento',
				'pumpe',
				'stauraum',
			],
		},
		fallback: {
			value: (given) => (typeof given.lengthM === 'number' && given.volumeL === undefined ? 'pipe' : 'tank'),
			why: 'a tank, unless only the length of a pipe is given',
		},
	}),
	outsideC: quantity({
		label: 'temperature around it',
		kind: 'temperature',
		worseEnd: 'low',
		min: -60,
		max: 40,
		aliases: [
			'outside',
			'cold',
			'night',
			'low',
			'lows',
			'down to',
			'ambient',
			'at',
			'weather',
			'fuera',
			'noche',
			'außen',
			'draußen',
			'nacht',
		],
	}),
	place: place({
		label: 'place',
		aliases: ['in', 'near', 'at', 'en', 'bei'],
		help: 'Its design low is taken where no temperature is named.',
	}),
	volumeL: quantity({
		label: 'water',
		kind: 'volume',
		min: 0.05,
		max: 3000,
		aliases: ['tank', 'water', 'fresh', 'gray', 'grey', 'holds', 'agua', 'wasser'],
	}),
	insulationMm: quantity({
		label: 'insulation',
		kind: 'thickness',
		min: 0,
		max: 300,
		aliases: [
			'insulation',
			'insulated',
			'foam',
			'jacket',
			'sleeve',
			'lagging',
			'wrap',
			'aislamiento',
			'dämmung',
			'isolierung',
		],
		fallback: { value: 0, why: 'the safe side: bare, as no insulation was named', confirm: true },
	}),
	bare: flag({
		label: 'no insulation',
		yes: [
			'uninsulated',
			'no insulation',
			'not insulated',
			'bare',
			'sin aislamiento',
			'ungedämmt',
			'ohne dämmung',
		],
	}),
	boreMm: quantity({
		label: 'bore of the pipe',
		kind: 'thickness',
		min: 2,
		max: 160,
		aliases: [
			'bore',
			'diameter',
			'inside diameter',
			'pex',
			'rohr',
			'diámetro',
			'pipe',
			'tube',
			'tubo',
			'tubería',
			'leitung',
			'schlauch',
		],
		fallback: { value: 12, why: '1/2 in tubing (practice)' },
	}),
	lengthM: quantity({
		label: 'length of pipe',
		kind: 'length',
		min: 0.05,
		max: 100,
		aliases: [
			'pipe',
			'run',
			'length',
			'long',
			'exposed',
			'hose',
			'tubo',
			'rohr',
			'schlauch',
			'länge',
			'pex',
			'line',
			'pex line',
			'water line',
		],
	}),
	material: choice({
		label: 'insulation material',
		options: insulationOptions,
		fallback: { value: 'elastomericFoam', why: 'closed-cell rubber foam, the usual cover (practice)' },
	}),
	areaM2: quantity({
		label: 'outside area',
		kind: 'area',
		min: 0.02,
		max: 30,
		aliases: ['area', 'surface', 'walls', 'superficie', 'fläche'],
	}),
	sheltered: flag({
		label: 'out of the wind',
		yes: ['sheltered', 'enclosed', 'out of the wind', 'boxed in', 'inside a locker', 'windgeschützt'],
		no: [
			'exposed',
			'in the wind',
			'underslung',
			'under the van',
			'under the floor',
			'below the floor',
			'outside tank',
			'while driving',
			'unterflur',
			'bajo el piso',
		],
		fallback: {
			value: (given) => given.what === 'bay',
			why: 'a bay is sheltered; a tank or pipe is taken as exposed (the safe side)',
		},
	}),
	startC: quantity({
		label: 'water at the start',
		kind: 'temperature',
		worseEnd: 'low',
		min: 0,
		max: 80,
		aliases: ['water at', 'start', 'starts at', 'starting', 'from', 'initially', 'agua a', 'anfangs'],
		fallback: { value: 10, why: 'as it comes from the tap in winter' },
	}),
	padW: quantity({
		label: 'heating pad',
		kind: 'power',
		min: 1,
		max: 3000,
		aliases: [
			'pad',
			'heat pad',
			'heating pad',
			'heater',
			'heat tape',
			'heat trace',
			'heat cable',
			'manta',
			'heizmatte',
			'heizkabel',
			'heizband',
		],
	}),
	holdC: quantity({
		label: 'temperature it is held at',
		kind: 'temperature',
		min: 1,
		max: 30,
		aliases: ['hold', 'held at', 'keep', 'kept at', 'thermostat', 'set', 'mantener', 'halten'],
		fallback: { value: 5, why: 'the usual thermostat of a pad (practice)' },
	}),
	nightH: quantity({
		label: 'hours of cold',
		kind: 'duration',
		min: 0.1,
		max: 24 * 60,
		aliases: [
			'night',
			'for',
			'hours',
			'overnight',
			'long',
			'noche',
			'nacht',
			'durante',
			'tonight',
			'heute nacht',
			'esta noche',
		],
		fallback: { value: 14, why: 'a long winter night (practice)' },
	}),
	...bankFields,
};

type Input = InputOf<typeof fields>;

export const freeze = declareTopic({
	name: 'freeze',
	title: 'A tank, pipe or pump bay in the cold',
	system: 'water',
	purpose: 'Whether it freezes overnight, how long until it does, and what a heating pad needs.',
	words: [
		'freeze',
		'freezing',
		'frozen',
		'freezes',
		'heating pad',
		'heat tape',
		'frost',
		'einfrieren',
		'congelar',
		'friert',
		'gefriert',
		'friert ein',
		'congela',
		'tank heater',
		'heat pad',
		'winterize',
		'freeze up',
		'helada',
		'heizmatte',
		'heizband',
		'frostschutz',
	],
	examples: [
		'will a 30 gal tank freeze at 10 F with 1 in of foam',
		'heating pad for 75 L gray tank at -10 C, 20 mm insulation',
		'how long until 3 m of pipe freezes at -5 C',
		'friert ein 80 L wassertank bei -12 C ein, 60 W heizmatte',
	],
	method:
		'Heat lost through insulation and air film at a steady temperature around it; the water cools as one lump to 0 °C and then gives up its heat of fusion. Growing ice slows the end, supercooling may delay the start; neither is counted.',
	fields,
	needs: [
		{ anyOf: ['outsideC', 'place'], question: 'How cold does it get (or where)?' },
		{ anyOf: ['volumeL', 'lengthM'], question: 'How much water is in it (or how long is the pipe)?' },
	],
	calculate: calculateFreeze,
});

/** A pad is chosen this much stronger than the loss. */
const padMargin = 1.25;
/** Powers in which pads are sold [W] (common practice). */
const padSizesW: readonly number[] = [20, 30, 40, 60, 80, 100, 120, 150, 200, 300, 400];
/** Wall of a water pipe [mm] (common practice). */
const pipeWallMm = 2;

interface Figures {
	readonly what: 'tank' | 'pipe' | 'bay';
	readonly massKg: number;
	readonly areaM2: number | null;
	readonly lossWK: number;
	readonly times: FreezeTimes;
	/** to hold it above freezing at the temperature around it [W] */
	readonly holdW: number;
	readonly nightWh: number;
}

function coverOf(input: Input): Cover {
	return {
		insulationMm: input.insulationMm,
		conductivityWmK: materials[input.material].conductivityWmK,
		filmM2KW: (input.sheltered ? surfaceResistances.insideHorizontal : surfaceResistances.outside)
			.resistanceM2KW,
	};
}

function figuresOf(input: Input, outsideC: number): Figures {
	const cover = coverOf(input);
	const density = waterAt(input.startC).densityKgM3 / 1000;
	if (input.what === 'pipe') {
		const lengthM = input.lengthM ?? 0;
		const massKg = boreAreaM2(input.boreMm) * lengthM * density * 1000;
		const lossWK = pipeLossWK(input.boreMm + 2 * pipeWallMm, lengthM, cover);
		return finish(input, outsideC, { what: 'pipe', massKg, areaM2: null, lossWK });
	}
	const volumeL = input.volumeL ?? 0;
	const areaM2 = input.areaM2 ?? (input.what === 'bay' ? bayAreaM2 : tankAreaM2(volumeL));
	return finish(input, outsideC, {
		what: input.what,
		massKg: volumeL * density,
		areaM2,
		lossWK: flatLossWK(areaM2, cover),
	});
}

/** Walls of a pump bay of about 0.4 × 0.4 × 0.5 m [m²] (common practice). */
const bayAreaM2 = 1.1;

function finish(
	input: Input,
	outsideC: number,
	body: Pick<Figures, 'what' | 'massKg' | 'areaM2' | 'lossWK'>,
): Figures {
	const holdW = body.lossWK * Math.max(0, input.holdC - outsideC);
	return {
		...body,
		times: freezeTimes(body.massKg, body.lossWK, input.startC, outsideC),
		holdW,
		nightWh: holdW * input.nightH,
	};
}

function calculateFreeze(input: Input, sheet: Sheet) {
	let outsideC = input.outsideC;
	if (input.place !== undefined) {
		const found = readPlace(sheet, input.place);
		if (isDecision(found)) return found;
		if (outsideC === undefined) {
			const low = designHeating(found);
			outsideC = low.valueC;
			sheet.assume(
				'outsideC',
				'temperature around it',
				outsideC,
				low.standIn?.(sheet.say) ?? sheet.say`the design low of ${found.name}`,
				{
					kind: 'temperature',
					confirm: true,
				},
			);
			sheet.source(low.source);
		}
	}
	if (outsideC === undefined) throw new Error('the declaration asks for a temperature or a place');
	if (input.what === 'pipe' && input.lengthM === undefined) {
		return sheet.ask({
			name: 'lengthM',
			label: fields.lengthM.meta.label,
			question: 'How long is the pipe?',
		});
	}
	if (input.what !== 'pipe' && input.volumeL === undefined) {
		return sheet.ask({
			name: 'volumeL',
			label: fields.volumeL.meta.label,
			question: 'How much water is in it?',
		});
	}
	const figures = figuresOf(input, outsideC);
	const bank = bankOf(input, sheet);
	const safe = outsideC >= 0;
	writeWorking(sheet, input, figures, outsideC);
	writeResults(sheet, input, figures, outsideC, bank);
	sheet.caution(cautionPad, cautionPotable);
	sheet.caution(
		'Drain pump, filter, taps and low points when the van stands unheated: they freeze before the tank.',
	);
	if (safe) {
		const around = sheet.show('temperature', outsideC);
		return sheet.answer(sheet.say`No freezing at ${around}`, {
			because: sheet.say`Water freezes only below 0 °C (32 °F) around it; wind does not change that.`,
		});
	}
	writeNeighbours(sheet, input, outsideC);
	writeTipping(sheet, input, figures);
	writeFindings(sheet, input, figures, outsideC, bank);

	const toIce = sheet.show('duration', figures.times.toFreezingH, { round: 'down' });
	const toSolid = sheet.show('duration', figures.times.toSolidH, { round: 'down' });
	const hold = sheet.show('power', figures.holdW, { round: 'up' });
	const night = energyText(sheet, figures.nightWh);
	const freezesTonight = figures.times.toFreezingH < input.nightH;
	const nightText = sheet.show('duration', input.nightH);
	return sheet.answer(
		freezesTonight
			? sheet.say`Ice after ${toIce} without heat; ${hold} keeps it open`
			: sheet.say`No ice within ${nightText}; ice after ${toIce} without heat`,
		{
			governedBy: 'heat loss',
			because: sheet.say`Solid after ${toSolid}. Holding it takes ${hold}, ${night} a night.`,
		},
	);
}

function writeWorking(sheet: Sheet, input: Input, figures: Figures, outsideC: number): void {
	const n = (value: number, decimals = 2) => writeNumber(value, decimals);
	const cover = coverOf(input);
	const film = input.sheltered ? surfaceResistances.insideHorizontal : surfaceResistances.outside;
	const insulation = `${n(input.insulationMm, 0)} mm / ${n(cover.conductivityWmK, 3)} W/mK`;
	if (figures.areaM2 === null) {
		sheet.step(
			'heat lost per kelvin',
			'UA = L / (ln(r2/r1)/(2πλ) + Rs/(2πr2))',
			`${n(input.lengthM ?? 0)} m of pipe, ${n(input.boreMm, 1)} mm bore; ${insulation}; Rs ${n(cover.filmM2KW)} m²K/W`,
			figures.lossWK,
			{ kind: 'heatLoss', source: physics('conduction through a cylinder') },
		);
	} else {
		if (input.areaM2 === undefined) {
			sheet.assume(
				'areaM2',
				'outside area',
				figures.areaM2,
				figures.what === 'bay' ? 'a usual pump bay (practice)' : 'a flat tank, sides 4 : 2 : 1 (practice)',
				{ kind: 'area', confirm: true },
			);
		}
		sheet.step(
			'heat lost per kelvin',
			'UA = A / (d/λ + Rs)',
			`${n(figures.areaM2)} m² / (${insulation} + ${n(cover.filmM2KW)} m²K/W)`,
			figures.lossWK,
			{ kind: 'heatLoss', source: film.source },
		);
	}
	sheet.source(film.source, materials[input.material].source);
	if (outsideC >= 0) return;
	const water = waterAt(input.startC / 2);
	sheet.step(
		'hours until ice begins',
		't1 = (m c / UA) · ln((T0 − Ta)/(0 − Ta))',
		`(${n(figures.massKg, 1)} kg × ${n(water.specificHeatJKgK, 0)} J/kgK / ${n(figures.lossWK, 3)} W/K) × ln((${n(input.startC, 1)} − ${n(outsideC, 1)}) / ${n(-outsideC, 1)})`,
		figures.times.toFreezingH,
		{ kind: 'duration', source: waterSource },
	);
	sheet.step(
		'hours until solid',
		't2 = t1 + m L / (UA · (0 − Ta))',
		`${n(figures.times.toFreezingH)} h + ${n(figures.massKg, 1)} kg × 333.5 kJ/kg / (${n(figures.lossWK, 3)} W/K × ${n(-outsideC, 1)} K)`,
		figures.times.toSolidH,
		{ kind: 'duration', source: iceSource },
	);
	sheet.step(
		'heat to hold it',
		'P = UA · (Th − Ta)',
		`${n(figures.lossWK, 3)} W/K × (${n(input.holdC, 1)} − ${n(outsideC, 1)}) K`,
		figures.holdW,
		{ kind: 'power', source: physics('heat balance') },
	);
}

function padFor(holdW: number): number | null {
	return padSizesW.find((size) => size >= holdW * padMargin) ?? null;
}

function writeResults(sheet: Sheet, input: Input, figures: Figures, outsideC: number, bank: Bank): void {
	sheet.result('lossPerKelvin', 'heat lost per kelvin', figures.lossWK, {
		kind: 'heatLoss',
		write: { decimals: 2, round: 'up' },
	});
	sheet.result('around', 'temperature around it', outsideC, { kind: 'temperature' });
	if (outsideC >= 0) return;
	const down = { kind: 'duration', write: { round: 'down' } } as const;
	sheet.result('hoursToFreezing', 'hours until ice begins', figures.times.toFreezingH, down);
	sheet.result('hoursToSolid', 'hours until solid', figures.times.toSolidH, down);
	sheet.result('holdPower', 'heat to hold it', figures.holdW, { kind: 'power', write: { round: 'up' } });
	sheet.result('padPower', 'least power of a pad', figures.holdW * padMargin, {
		kind: 'power',
		write: { round: 'up' },
	});
	const pad = input.padW ?? padFor(figures.holdW);
	if (pad !== null) {
		if (input.padW === undefined) sheet.result('pad', 'pad to fit', pad, { kind: 'power' });
		sheet.result('padDuty', 'share of the time the pad is on', Math.min(1, figures.holdW / pad), {
			kind: 'fraction',
			write: { round: 'up' },
		});
		sheet.result('padCurrent', 'current while the pad is on', pad / bank.voltageV, {
			kind: 'current',
			write: { round: 'up' },
		});
	}
	const delivered =
		input.padW === undefined ? figures.nightWh : Math.min(figures.nightWh, input.padW * input.nightH);
	sheet.result('energyPerNight', 'energy a night', delivered, {
		kind: 'energy',
		write: energyWrite(delivered),
	});
	sheet.result('chargePerNight', 'from the bank a night', delivered / bank.voltageV, {
		kind: 'charge',
		write: { round: 'up' },
	});
	const { usableWh } = bank;
	if (usableWh !== null) {
		sheet.result('bankShare', 'share of the bank a night', delivered / usableWh, {
			kind: 'fraction',
			write: { round: 'up' },
		});
	}
}

function writeNeighbours(sheet: Sheet, input: Input, outsideC: number): void {
	const steps = input.insulationMm === 0 ? [10, 25] : [input.insulationMm / 2, input.insulationMm * 2];
	for (const insulationMm of steps) {
		const other = figuresOf({ ...input, insulationMm }, outsideC);
		const thick = sheet.show('thickness', insulationMm);
		const hold = sheet.show('power', other.holdW, { round: 'up' });
		const toIce = sheet.show('duration', other.times.toFreezingH, { round: 'down' });
		sheet.neighbour(
			sheet.say`${thick} of insulation`,
			other.times.toFreezingH >= input.nightH,
			sheet.say`ice after ${toIce}, ${hold} to hold`,
		);
	}
}

/** The cold it stands through the night without heat. */
function writeTipping(sheet: Sheet, input: Input, figures: Figures): void {
	const holds = (around: number) =>
		freezeTimes(figures.massKg, figures.lossWK, input.startC, around).toFreezingH >= input.nightH;
	let warm = 0;
	let cold = -60;
	if (holds(cold)) return;
	for (let step = 0; step < 50; step += 1) {
		const middle = (warm + cold) / 2;
		if (holds(middle)) warm = middle;
		else cold = middle;
	}
	const shown = sheet.show('temperature', warm, { decimals: 1, round: 'up' });
	const night = sheet.show('duration', input.nightH);
	sheet.tipping(
		'outsideC',
		'temperature around it',
		warm,
		sheet.say`down to ${shown} for ${night} without heat`,
		{ kind: 'temperature' },
	);
}

function writeFindings(sheet: Sheet, input: Input, figures: Figures, outsideC: number, bank: Bank): void {
	const night = sheet.show('duration', input.nightH);
	const freezesTonight = figures.times.toFreezingH < input.nightH;
	const least = sheet.show('power', figures.holdW * padMargin, { round: 'up' });
	if (freezesTonight && input.padW === undefined) {
		sheet.finding(
			'warning',
			'freezes-tonight',
			sheet.say`With no heat it freezes within ${night}. A pad of at least ${least}, or draining it, clears it.`,
			physics('heat balance'),
		);
	}
	if (figures.times.toSolidH < input.nightH && input.padW === undefined) {
		const growth = writeNumber((waterAt(0).densityKgM3 / iceDensityKgM3 - 1) * 100, 0);
		const solid = sheet.show('duration', figures.times.toSolidH, { round: 'down' });
		sheet.finding(
			'warning',
			'freezes-solid',
			sheet.say`It is solid after ${solid}: ice takes ${growth} % more room and splits pipes, pump, filter and valves.`,
			iceSource,
		);
	}
	if (input.padW !== undefined && input.padW < figures.holdW) {
		// The pad holds a balance below the thermostat: is it above freezing?
		const balanceC = outsideC + input.padW / figures.lossWK;
		const pad = sheet.show('power', input.padW);
		const settles = sheet.show('temperature', balanceC, { decimals: 1, round: 'down' });
		sheet.finding(
			'warning',
			balanceC > 0 ? 'pad-short' : 'pad-too-small',
			balanceC > 0
				? sheet.say`The pad (${pad}) can't hold the thermostat's temperature: it settles at ${settles}. ${least} would hold it.`
				: sheet.say`The pad (${pad}) can't keep it from freezing; it takes at least ${least}, or more insulation.`,
			physics('heat balance'),
		);
	}
	const { usableWh } = bank;
	const delivered =
		input.padW === undefined ? figures.nightWh : Math.min(figures.nightWh, input.padW * input.nightH);
	if (usableWh !== null && delivered > usableWh) {
		const gives = energyText(sheet, usableWh, 'down');
		const takes = energyText(sheet, delivered);
		const needed = energyText(sheet, delivered / bank.depth);
		sheet.finding(
			'warning',
			'pad-empties-bank',
			sheet.say`The pad takes ${takes} a night and the bank gives ${gives}; a bank of ${needed}, or more insulation, clears it.`,
			physics('heat balance'),
		);
	}
	if (figures.what === 'tank' && freezesTonight === false) {
		const atDawn = sheet.show(
			'temperature',
			cooledC(figures.massKg, figures.lossWK, input.startC, outsideC, input.nightH),
			{ decimals: 1, round: 'down' },
		);
		sheet.finding(
			'note',
			'pipes-first',
			sheet.say`The tank is at ${atDawn} after ${night}, but its pipes, valve and pump hold little water and freeze far sooner.`,
			practice('small bodies of water freeze first'),
		);
	}
}
