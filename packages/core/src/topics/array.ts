import { cautionDisconnect, cautionSourceEnd } from '../electrical/cautions.js';
import { bankClassV } from '../energy/bank.js';
import { writeNumber } from '../quantity/write.js';
import { mountingOf } from '../solar/array-fields.js';
import { cautionLive, cautionOrder } from '../solar/cautions.js';
import { designCooling, recordLow } from '../solar/climate.js';
import { type Panel, readPanel } from '../solar/panel.js';
import { sapmSource, sapmTemperatures } from '../solar/photovoltaic.js';
import { isDecision, readPlace } from '../solar/place-input.js';
import type { Place } from '../solar/places.js';
import {
	type ColdFactor,
	coldestWithin,
	coldFactor,
	conductorA,
	designShortA,
	fewestInSeries,
	layouts,
	mostInSeries,
	stringVocV,
} from '../solar/strings.js';
import { dcRatingsA, dcRatingsSource } from '../tables/devices.js';
import { necCurrentSource } from '../tables/modules.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, flag, type InputOf, place, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';
import { wire } from './wire.js';

const fields = {
	panels: count({
		label: 'number of panels',
		min: 1,
		max: 60,
		aliases: [
			'panels',
			'modules',
			'placas',
			'paneles',
			'solarmodule',
			'stück',
			'solar panels',
			'paneles solares',
			'placas solares',
			'solar modules',
			'panels in series',
			'panels in parallel',
		],
	}),
	series: count({
		label: 'panels in series',
		min: 1,
		max: 60,
		aliases: ['series', 'in series', 'in a string', 'per string', 's', 'en serie', 'in reihe'],
	}),
	parallel: count({
		label: 'strings in parallel',
		min: 1,
		max: 60,
		aliases: ['parallel', 'in parallel', 'strings', 'p', 'en paralelo', 'parallelstränge', 'stränge'],
	}),
	joined: choice({
		label: 'how the panels are joined',
		options: {
			series: [
				'in series',
				'series',
				'panels in series',
				'all in series',
				'en serie',
				'in reihe',
				'reihenschaltung',
			],
			parallel: [
				'parallel',
				'in parallel',
				'panels in parallel',
				'all in parallel',
				'en paralelo',
				'parallel geschaltet',
			],
		},
		help: 'Where only the number of panels is named: all of them in one string, or each its own.',
	}),
	panelW: quantity({
		label: 'rated power of a panel',
		kind: 'power',
		min: 1,
		max: 1000,
		aliases: ['panel', 'solar', 'each', 'module', 'placa', 'modul'],
	}),
	bankV: quantity({
		label: 'bank voltage',
		kind: 'voltage',
		min: 10,
		max: 60,
		aliases: ['bank', 'system', 'battery', 'house', 'bordnetz', 'sistema', 'batería', 'batterie'],
		fallback: { value: 12, why: 'the usual house voltage', confirm: true },
	}),
	vocV: quantity({
		label: 'open-circuit voltage of a panel',
		kind: 'voltage',
		min: 0.5,
		max: 150,
		aliases: ['voc', 'open circuit', 'open-circuit', 'uoc', 'leerlaufspannung', 'circuito abierto'],
	}),
	vmpV: quantity({
		label: 'voltage of greatest power of a panel',
		kind: 'voltage',
		min: 0.5,
		max: 150,
		aliases: ['vmp', 'vmpp', 'max power voltage', 'umpp', 'ump'],
	}),
	controllerV: quantity({
		label: 'largest input voltage of the controller',
		kind: 'voltage',
		min: 10,
		max: 1000,
		aliases: [
			'controller',
			'mppt',
			'pwm',
			'regulator',
			'max',
			'max input',
			'input',
			'limit',
			'laderegler',
			'regler',
			'regulador',
		],
	}),
	controllerA: quantity({
		label: 'rated output current of the controller',
		kind: 'current',
		min: 1,
		max: 300,
		aliases: ['controller', 'mppt', 'pwm', 'regulator', 'output', 'laderegler', 'regler', 'regulador'],
	}),
	iscA: quantity({
		label: 'short-circuit current of a panel',
		kind: 'current',
		min: 0.05,
		max: 50,
		aliases: ['isc', 'short circuit', 'short-circuit', 'ik', 'kurzschlussstrom', 'cortocircuito'],
	}),
	impA: quantity({
		label: 'current of greatest power of a panel',
		kind: 'current',
		min: 0.05,
		max: 50,
		aliases: ['imp', 'impp', 'max power current'],
	}),
	vocPerK: quantity({
		label: 'temperature coefficient of the open-circuit voltage',
		kind: 'voltagePerDegree',
		min: -0.01,
		max: 0.01,
		aliases: [
			'voc',
			'beta',
			'coefficient',
			'temperature coefficient',
			'tc',
			'temperaturkoeffizient',
			'coeficiente',
		],
	}),
	place: place({
		label: 'coldest place it will see',
		aliases: ['in', 'at', 'near', 'place', 'lugar', 'ort'],
		help: 'Its record low decides how high the voltage climbs.',
	}),
	lowC: quantity({
		label: 'lowest temperature',
		kind: 'temperature',
		worseEnd: 'low',
		min: -60,
		max: 25,
		aliases: [
			'low',
			'lowest',
			'record low',
			'cold',
			'down to',
			'coldest',
			'kälteste',
			'mínima',
			'tiefste',
			'frío',
		],
	}),
	hotC: quantity({
		label: 'hottest air',
		kind: 'temperature',
		worseEnd: 'high',
		min: 0,
		max: 60,
		aliases: ['high', 'hot', 'hottest', 'record high', 'up to', 'heißeste', 'máxima', 'calor'],
	}),
	controller: choice({
		label: 'kind of charge controller',
		options: {
			mppt: ['MPPT', 'maximum power point', 'mppt controller', 'mppt charge controller'],
			pwm: ['PWM', 'pwm controller', 'pwm charge controller'],
		},
		fallback: { value: 'mppt', why: 'the usual kind', confirm: true },
	}),
	cells: choice({
		label: 'cells of a panel',
		options: {
			cells36: [
				'36 cells',
				'36 cell',
				'12 v class',
				'12v panel',
				'12 v panel',
				'12v panels',
				'12 volt panels',
				'36 zellen',
			],
			cells60: ['60 cells', '60 cell', '120 half cells', '54 cells', '60 zellen'],
			cells72: ['72 cells', '72 cell', '144 half cells', '72 zellen'],
		},
	}),
	glued: flag({
		label: 'glued flat to the roof',
		yes: [
			'glued',
			'flexible',
			'flexible panels',
			'flex panel',
			'stuck down',
			'bonded',
			'geklebt',
			'flexibel',
			'flexibles',
		],
		no: ['on brackets', 'on rails', 'air gap', 'rack', 'rigid'],
		fallback: { value: false, why: 'a rigid panel on brackets, with air under it' },
	}),
	lengthM: quantity({
		label: 'one-way length from the roof to the controller',
		kind: 'length',
		min: 0.2,
		max: 50,
		aliases: [
			'run',
			'cable',
			'wire',
			'away',
			'one way',
			'length',
			'roof run',
			'kabel',
			'cable solar',
			'lang',
		],
	}),
	dropLimit: quantity({
		label: 'allowed voltage drop',
		kind: 'fraction',
		min: 0.001,
		max: 0.2,
		aliases: ['drop', 'voltage drop', 'vd', 'caída', 'spannungsabfall'],
		fallback: { value: 0.03, why: '3 % between roof and controller (practice)' },
	}),
};

type Input = InputOf<typeof fields>;

export const array = declareTopic({
	name: 'array',
	title: 'Solar strings and charge controller',
	system: 'energy',
	purpose:
		'How the panels are joined, and which controller, conductor and protection they take, in the cold and the heat.',
	words: [
		'array',
		'solar string',
		'strings',
		'solar strings',
		'string voltage',
		'solar controller',
		'charge controller',
		'controller',
		'series or parallel',
		'panels in series',
		'voc',
		'mppt',
		'pwm controller',
		'panels in parallel',
		'regulador solar',
		'en serie o en paralelo',
		'solarregler',
		'laderegler',
		'strang',
		'reihenschaltung',
	],
	examples: [
		'array 4 x 200W voc 22.5V isc 11.4A controller 100V 30A flagstaff',
		'2 panels 410W in series voc 37.5 V mppt 150V 35A fairbanks 24v bank',
		'charge controller for 3 x 100W panels in Minneapolis, 5 m run',
		'solarregler 2 x 200W in reihe voc 24V regler 75V 20A München',
	],
	includes: ['wire'],
	method:
		'Open-circuit voltage at the record low by the maker’s coefficient, or by NEC Table 690.7(A) for crystalline silicon; voltage of greatest power at the design heat with the cell temperature of a close roof mount; short-circuit current times 1.25, and again for conductors and protection. Not for grid-tied arrays, tracking mounts or strings on faces that differ.',
	fields,
	needs: [
		{ anyOf: ['panelW', 'vocV'], question: 'What panels (watts of one, or Voc and Isc from the label)?' },
		{
			anyOf: ['place', 'lowC'],
			question: 'Which is the coldest place it will see, or the lowest temperature?',
		},
	],
	calculate: calculateArray,
});

/** Air that is taken as hot where no place is named [°C] (practice). */
const usualHotC = 40;
/** Wind on a parked van's roof [m/s] (practice). */
const calmMS = 1;
/** The voltage of greatest power falls with heat about as fast as the power does [1/K] (practice). */
const vmpPerK = -0.0042;
/** A controller of this kind needs so much above the battery to go on charging [V] (practice). */
const runningMarginV = 1;
/** Charging voltage of a 12 V class bank, the upper end [V]. */
const chargingV = 14.6;
/** Battery voltage to which a PWM controller pulls a string, for the 12 V class [V] (practice). */
const pwmV = 13.4;
/** Around roof wiring in the sun [°C] (practice). */
const roofC = 60;

interface Layout {
	readonly series: number;
	readonly parallel: number;
}

/** What the panels make together; null where only voltages were named. */
interface Output {
	readonly arrayW: number;
	/** short-circuit current of one panel [A] */
	readonly iscA: number;
	/** NEC 690.8: 1.25 times the short-circuit current, and 1.25 again for conductors [A] */
	readonly shortA: number;
	readonly conductorA: number;
	/** into the battery [A] */
	readonly outA: number;
}

/** Everything the answer rests on. */
interface Strings {
	readonly panel: Panel;
	readonly layout: Layout;
	readonly output: Output | null;
	readonly classV: number;
	readonly lowC: number;
	readonly cold: ColdFactor;
	/** open-circuit voltage of a string in the cold [V] */
	readonly coldV: number;
	readonly cellC: number;
	/** voltage of greatest power of a string in the heat, and what charging takes [V] */
	readonly hotV: number;
	readonly neededV: number;
	readonly fewest: number;
	/** most in series that the controller bears, or null where its voltage was not named */
	readonly most: number | null;
	readonly tooHigh: boolean;
}

function calculateArray(input: Input, sheet: Sheet) {
	const where = input.place === undefined ? null : readPlace(sheet, input.place);
	if (where !== null && isDecision(where)) return where;
	const classV = bankClassV(input.bankV);
	if (classV === null) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read ${sheet.show('voltage', input.bankV)} as the bank voltage; banks are not built so.`,
			'Name a bank of 12, 24, 36 or 48 V.',
			'bankV',
		);
	}
	const panel = readPanel(input, sheet);
	if ('code' in panel) return sheet.refuse(panel.code, panel.text, panel.instead, panel.field);
	if (input.lengthM !== undefined && panel.iscA === null) {
		return sheet.ask({
			name: 'panelW',
			label: 'rated power of a panel',
			question: 'How many watts has one panel (or what is its Isc)? The roof run takes its current.',
		});
	}
	const lowC = input.lowC ?? lowAt(where as Place, sheet);
	const hotAirC = input.hotC ?? hotAt(where, sheet);
	const cold = coldFactor(lowC, panel.vocPerK);
	const { cellC } = sapmTemperatures({ planeWM2: 1000, airC: hotAirC, windMS: calmMS }, mountingOf(input));
	const hotVmpV = panel.vmpV * (1 + vmpPerK * Math.max(0, cellC - 25));
	const chargeV = (chargingV * classV) / 12;
	const neededV = input.controller === 'mppt' ? chargeV + runningMarginV : chargeV;
	const fewest = fewestInSeries(neededV, hotVmpV);
	const most =
		input.controllerV === undefined ? null : mostInSeries(input.controllerV, panel.vocV, cold.factor);
	const layout = layoutOf(input, fewest, most, sheet);
	if ('text' in layout) return sheet.refuse('contradiction', layout.text, layout.instead, layout.field);
	const coldV = stringVocV(panel.vocV, layout.series, cold.factor);
	const strings: Strings = {
		panel,
		layout,
		output: outputOf(panel, layout, input.controller, classV),
		classV,
		lowC,
		cold,
		coldV,
		cellC,
		hotV: hotVmpV * layout.series,
		neededV,
		fewest,
		most,
		tooHigh: input.controllerV !== undefined && coldV > input.controllerV,
	};
	sheet.caution(cautionLive, cautionOrder, cautionDisconnect, cautionSourceEnd);
	writeWorking(sheet, strings);
	writeResults(sheet, input, strings);
	writeNeighbours(sheet, input, panel, layout, cold);
	wireTheRun(input, sheet, strings);
	writeFindings(sheet, input, strings);
	return decide(sheet, input, strings);
}

function outputOf(
	panel: Panel,
	layout: Layout,
	controller: Input['controller'],
	classV: number,
): Output | null {
	if (panel.ratedW === null || panel.iscA === null) return null;
	const arrayW = panel.ratedW * layout.series * layout.parallel;
	const shortA = designShortA(panel.iscA, layout.parallel);
	return {
		arrayW,
		iscA: panel.iscA,
		shortA,
		conductorA: conductorA(panel.iscA, layout.parallel),
		// A PWM controller passes the panels' own current on.
		outA: controller === 'pwm' ? shortA : arrayW / classV,
	};
}

function lowAt(where: Place, sheet: Sheet): number {
	const low = recordLow(where);
	sheet.assume(
		'lowC',
		'lowest temperature',
		low.valueC,
		low.standIn?.(sheet.say) ?? sheet.say`mean of each year's lowest hour at ${where.stationName}`,
		{ kind: 'temperature', confirm: true },
	);
	sheet.source(low.source);
	return low.valueC;
}

function hotAt(where: Place | null, sheet: Sheet): number {
	if (where === null) {
		sheet.assume('hotC', 'hottest air', usualHotC, 'a hot summer day (practice)', { kind: 'temperature' });
		return usualHotC;
	}
	const hot = designCooling(where);
	sheet.assume(
		'hotC',
		'hottest air',
		hot.valueC,
		hot.standIn?.(sheet.say) ?? sheet.say`exceeded in 0.4 % of the hours at ${where.stationName}`,
		{ kind: 'temperature' },
	);
	sheet.source(hot.source);
	return hot.valueC;
}

/** Series and parallel as named, or the layout of the panels that fits controller and bank best. */
function layoutOf(
	input: Input,
	fewest: number,
	most: number | null,
	sheet: Sheet,
): Layout | { readonly text: string; readonly instead: string; readonly field: string } {
	const { panels, series, parallel } = input;
	if (series !== undefined || parallel !== undefined) {
		const inSeries = series ?? (panels === undefined ? 1 : panels / (parallel as number));
		const inParallel = parallel ?? (panels === undefined ? 1 : panels / inSeries);
		if (
			!Number.isInteger(inSeries) ||
			!Number.isInteger(inParallel) ||
			inSeries < 1 ||
			inParallel < 1 ||
			(panels !== undefined && inSeries * inParallel !== panels)
		) {
			return {
				text: sheet.say`${panels ?? 0} panels don't make ${series ?? 'any'} in series by ${parallel ?? 'any'} in parallel.`,
				instead: 'Series times parallel must be the number of panels.',
				field: series === undefined ? 'parallel' : 'series',
			};
		}
		return { series: inSeries, parallel: inParallel };
	}
	if (input.joined !== undefined && panels !== undefined) {
		return input.joined === 'series' ? { series: panels, parallel: 1 } : { series: 1, parallel: panels };
	}
	const number = panels ?? 1;
	if (panels === undefined)
		sheet.assume('panels', 'number of panels', 1, 'none was named', { confirm: true });
	const all = layouts(number);
	const fits = all.filter((one) => one.series >= fewest && (most === null || one.series <= most));
	const safe = all.filter((one) => most === null || one.series <= most);
	// Two strings need no fuses of their own; fewer in series bear shade better.
	const best = fits.find((one) => one.parallel <= 2) ?? fits[0] ?? safe.at(-1) ?? (all[0] as Layout);
	if (number > 1) {
		sheet.assume(
			'series',
			'panels in series',
			best.series,
			'the fewest in series that charge in the heat, with at most two strings where that can be',
			{ confirm: true },
		);
	}
	return best;
}

function writeWorking(sheet: Sheet, strings: Strings): void {
	const n = writeNumber;
	const { panel, layout, cold, lowC, cellC, output } = strings;
	sheet.step(
		'factor of the open-circuit voltage in the cold',
		cold.method === 'coefficient' ? 'k = 1 + β (T − 25)' : 'k from the table',
		cold.method === 'coefficient'
			? `1 + ${n(((cold.factor - 1) / (lowC - 25)) * 100, 3)} % · (${n(lowC, 1)} − 25)`
			: `T = ${n(lowC, 1)} °C`,
		cold.factor,
		{ source: cold.source },
	);
	sheet.step(
		'open-circuit voltage of a string in the cold',
		'V = n · Voc · k',
		`${layout.series} · ${n(panel.vocV, 2)} V · ${n(cold.factor, 4)}`,
		strings.coldV,
		{ kind: 'voltage', source: cold.source },
	);
	sheet.step(
		'hottest cell',
		'Tc = Ta + 1000 · exp(a + b · v) + ΔT',
		`at 1000 W/m² and ${calmMS} m/s`,
		cellC,
		{
			kind: 'temperature',
			source: sapmSource,
		},
	);
	sheet.step(
		'voltage of greatest power of a string in the heat',
		'V = n · Vmp · (1 + β (Tc − 25))',
		`${layout.series} · ${n(panel.vmpV, 2)} V · (1 − ${n(-vmpPerK * 100, 2)} % · (${n(cellC, 1)} − 25))`,
		strings.hotV,
		{ kind: 'voltage', source: practice('the voltage falls about as fast as the power') },
	);
	if (output === null) return;
	sheet.step(
		'short-circuit current to design for',
		'I = 1.25 · p · Isc',
		`1.25 · ${layout.parallel} · ${n(output.iscA, 2)} A`,
		output.shortA,
		{ kind: 'current', source: necCurrentSource },
	);
	sheet.step(
		'current for conductors and protection',
		'I = 1.25 · 1.25 · p · Isc',
		`1.5625 · ${layout.parallel} · ${n(output.iscA, 2)} A`,
		output.conductorA,
		{ kind: 'current', source: necCurrentSource },
	);
	sheet.step(
		'controller output',
		'I = P / V',
		`${n(output.arrayW, 0)} W / ${strings.classV} V`,
		output.arrayW / strings.classV,
		{ kind: 'current', source: physics('current is power over voltage') },
	);
}

function writeResults(sheet: Sheet, input: Input, strings: Strings): void {
	const { layout, output } = strings;
	const up = { round: 'up' } as const;
	sheet.result('series', 'panels in series', layout.series);
	sheet.result('parallel', 'strings in parallel', layout.parallel);
	sheet.result('coldVoltage', 'open-circuit voltage of a string at the record low', strings.coldV, {
		kind: 'voltage',
		write: { ...up, decimals: 1 },
	});
	sheet.result('lowestTemperature', 'lowest temperature reckoned with', strings.lowC, {
		kind: 'temperature',
		write: { decimals: 1 },
	});
	sheet.result('hotVoltage', 'voltage of greatest power of a string in the heat', strings.hotV, {
		kind: 'voltage',
		write: { round: 'down', decimals: 1 },
	});
	sheet.result('fewestInSeries', 'fewest in series that charge in the heat', strings.fewest);
	if (strings.most !== null) {
		sheet.result('mostInSeries', 'most in series the controller bears in the cold', strings.most);
	}
	if (input.controllerV === undefined) {
		sheet.result('controllerVoltage', 'input voltage the controller must bear', strings.coldV, {
			kind: 'voltage',
			write: { ...up, decimals: 0 },
		});
	}
	if (output === null) return;
	const current = (name: string, label: string, value: number) =>
		sheet.result(name, label, value, { kind: 'current', write: up });
	current('shortCircuitCurrent', 'short-circuit current to design for', output.shortA);
	current('conductorCurrent', 'current conductors and protection must carry', output.conductorA);
	sheet.result('arrayPower', 'rated power of the array', output.arrayW, { kind: 'power' });
	current('controllerCurrent', 'output current the array can make', output.outA);
	const outputFuseA = ratingFor((input.controllerA ?? output.outA) * 1.25);
	if (outputFuseA !== null) {
		current('outputFuse', 'fuse between controller and battery', outputFuseA);
		sheet.source(dcRatingsSource);
	}
	const stringFuseA = layout.parallel > 2 ? ratingFor(conductorA(output.iscA, 1)) : null;
	if (stringFuseA !== null) current('stringFuse', 'fuse for each string', stringFuseA);
}

/** The next standard rating of a fuse, or null above the largest. */
function ratingFor(currentA: number): number | null {
	return dcRatingsA.find((rating) => rating >= currentA - 1e-9) ?? null;
}

function writeNeighbours(sheet: Sheet, input: Input, panel: Panel, layout: Layout, cold: ColdFactor): void {
	for (const series of [layout.series - 1, layout.series + 1]) {
		if (series < 1) continue;
		const voltageV = stringVocV(panel.vocV, series, cold.factor);
		sheet.neighbour(
			sheet.say`${series} in series`,
			input.controllerV === undefined || voltageV <= input.controllerV,
			sheet.say`${sheet.show('voltage', voltageV, { round: 'up', decimals: 1 })} in the cold`,
		);
	}
	if (input.controllerV === undefined) return;
	const coldestC = coldestWithin(input.controllerV, {
		vocV: panel.vocV,
		series: layout.series,
		vocPerK: panel.vocPerK,
	});
	if (coldestC === null) return;
	const shown = sheet.show('temperature', coldestC, { round: 'up' });
	sheet.tipping('lowC', 'lowest temperature', coldestC, sheet.say`down to ${shown}`, { kind: 'temperature' });
}

/** Conductor and protection from the roof to the controller. */
function wireTheRun(input: Input, sheet: Sheet, { output, hotV }: Strings): void {
	if (input.lengthM === undefined || output === null) return;
	// The sizing of low-voltage runs ends at 60 V: above it the same drop in volts is kept.
	const voltageV = Math.min(60, hotV);
	sheet.assume('ambientC', 'temperature around the roof cable', roofC, 'on a roof in the sun (practice)', {
		kind: 'temperature',
	});
	const outcome = sheet.call(wire, {
		currentA: output.shortA,
		voltageV,
		lengthM: input.lengthM,
		dropLimit: Math.min(0.2, (input.dropLimit * hotV) / voltageV),
		ambientC: roofC,
		continuous: true,
	});
	if (outcome.status !== 'answered') {
		sheet.finding(
			'warning',
			'roof-run-not-sized',
			sheet.say`No single conductor fits the run from the roof: shorten it, join more panels in series, or run the strings apart.`,
			practice('roof run'),
		);
		return;
	}
	const of = (name: string) => outcome.sizing.results.find((one) => one.name === name)?.value;
	const conductor = of('conductor');
	const deviceA = of('device');
	const dropV = of('drop');
	if (typeof conductor === 'string') sheet.result('roofConductor', 'conductor of the roof run', conductor);
	if (typeof deviceA === 'number') {
		sheet.result('roofDevice', 'fuse or breaker the roof run may have', deviceA, { kind: 'current' });
	}
	if (typeof dropV === 'number') {
		sheet.result('roofDrop', 'voltage drop of the roof run', dropV, { kind: 'voltage' });
	}
}

function writeFindings(sheet: Sheet, input: Input, strings: Strings): void {
	voltageFindings(sheet, input, strings);
	if (strings.output !== null) currentFindings(sheet, input, strings, strings.output);
}

function volts(sheet: Sheet, value: number, round: 'up' | 'down' = 'up'): string {
	return sheet.show('voltage', value, { round, decimals: 1 });
}

function voltageFindings(sheet: Sheet, input: Input, strings: Strings): void {
	const { panel, layout, coldV, hotV, neededV } = strings;
	const cold = volts(sheet, coldV);
	if (input.controllerV !== undefined && strings.tooHigh) {
		const coldestC = coldestWithin(input.controllerV, {
			vocV: panel.vocV,
			series: layout.series,
			vocPerK: panel.vocPerK,
		});
		const passes =
			coldestC === null
				? sheet.say`It is over at any temperature.`
				: sheet.say`It would pass only above ${sheet.show('temperature', coldestC, { round: 'up' })}.`;
		const instead =
			(strings.most ?? 0) >= 1
				? sheet.say`At most ${strings.most ?? 0} in series.`
				: sheet.say`Not even one such panel fits this controller.`;
		const low = sheet.show('temperature', strings.lowC, { round: 'down' });
		const limit = volts(sheet, input.controllerV, 'down');
		sheet.finding(
			'danger',
			'string-over-controller',
			`${sheet.say`${layout.series} in series reach ${cold} at ${low}; the controller bears ${limit}: it can fail and burn.`} ${passes} ${instead}`,
			strings.cold.source,
		);
	} else if (input.controllerV !== undefined && coldV > 0.95 * input.controllerV) {
		const limit = volts(sheet, input.controllerV, 'down');
		sheet.finding(
			'warning',
			'string-near-limit',
			sheet.say`${cold} in the cold is within 5 % of the controller's ${limit}: a colder night than the record, or a panel above its label, breaks it.`,
			practice('5 % kept below the limit'),
		);
	}
	if (hotV < neededV) {
		const hot = volts(sheet, hotV, 'down');
		const needed = volts(sheet, neededV);
		sheet.finding(
			'warning',
			'too-low-in-heat',
			sheet.say`In the heat a string gives ${hot}; charging to the full takes ${needed}. The last part of the charge fails on hot days: put more in series.`,
			practice('a controller needs about 1 V above the battery to go on'),
		);
	}
	if (coldV > 60) {
		sheet.finding(
			coldV > 120 ? 'danger' : 'warning',
			'touch-voltage',
			sheet.say`${cold} direct current can give a shock and holds an arc: fuses, disconnect, connectors and cable rated for it, live parts covered, and work on it by someone trained for it.`,
			fromMemory('IEC 60364-4-41', '60 V direct current where skin may be wet, 120 V where it is dry'),
		);
	}
}

function currentFindings(sheet: Sheet, input: Input, strings: Strings, output: Output): void {
	const { panel, layout, classV } = strings;
	const stringV = panel.vmpV * layout.series;
	if (input.controller === 'pwm' && stringV > 1.9 * classV) {
		const whole = volts(sheet, stringV);
		const used = volts(sheet, (pwmV * classV) / 12);
		sheet.finding(
			'warning',
			'pwm-wastes',
			sheet.say`A PWM controller pulls the string down to the battery: of ${whole} only ${used} are used. Take an MPPT controller, or panels of the bank's class.`,
			practice('PWM takes panels of the bank’s own class'),
		);
	}
	if (input.controllerA !== undefined && output.outA > input.controllerA) {
		const most = sheet.show('current', input.controllerA);
		const can = sheet.show('current', output.outA, { round: 'up' });
		if (input.controller === 'pwm') {
			sheet.finding(
				'danger',
				'controller-overloaded',
				sheet.say`The array can push ${can} into a PWM controller rated ${most}: it does not limit the current and overheats.`,
				necCurrentSource,
			);
		} else {
			sheet.finding(
				'note',
				'controller-limits',
				sheet.say`The array could make ${can}; the controller gives ${most} at most and leaves the rest unused at noon.`,
				practice('an MPPT controller limits its output'),
			);
		}
	}
	if (layout.parallel > 2) {
		const fed = sheet.show('current', designShortA(output.iscA, layout.parallel - 1), { round: 'up' });
		const cold = volts(sheet, strings.coldV);
		sheet.finding(
			'warning',
			'string-fuses-needed',
			sheet.say`${layout.parallel} strings in parallel feed a shorted one with ${fed}: each needs its own fuse, not above the panel's largest series fuse rating, made for ${cold} direct current.`,
			fromMemory('NFPA 70 (NEC)', '690.9(A), strings in parallel'),
		);
	}
}

function decide(sheet: Sheet, input: Input, strings: Strings) {
	const { layout, most, output, coldV } = strings;
	const cold = volts(sheet, coldV);
	const low = sheet.show('temperature', strings.lowC, { round: 'down' });
	const joined = joinedText(sheet, layout);
	const method = strings.cold.method === 'coefficient' ? 'the temperature coefficient' : 'NEC Table 690.7(A)';
	const hot = volts(sheet, strings.hotV, 'down');
	const needed = volts(sheet, strings.neededV);
	const because = sheet.say`At ${low} a string stands at ${cold} open circuit (by ${method}); in the heat it gives ${hot} where charging takes ${needed}.`;
	const governed = { because, governedBy: 'open-circuit voltage in the cold' };
	if (input.controllerV === undefined) {
		const least = sheet.show('voltage', coldV, { round: 'up', decimals: 0 });
		if (output === null)
			return sheet.answer(sheet.say`${joined}: a controller for ${least} or more`, governed);
		const amps = sheet.show('current', output.outA, { round: 'up', decimals: 0 });
		return sheet.answer(sheet.say`${joined}: a controller for ${least} or more and ${amps}`, governed);
	}
	const limit = sheet.show('voltage', input.controllerV, { round: 'down' });
	if (!strings.tooHigh) {
		return sheet.answer(sheet.say`${joined}: ${cold} cold, within the controller's ${limit}`, governed);
	}
	const instead =
		(most ?? 0) >= 1 ? sheet.say`${most ?? 0} in series at most` : sheet.say`take a controller for more`;
	return sheet.answer(sheet.say`Too high: ${cold} cold on a ${limit} controller; ${instead}`, governed);
}

function joinedText(sheet: Sheet, { series, parallel }: Layout): string {
	if (series === 1 && parallel === 1) return sheet.say`One panel`;
	if (parallel === 1) return sheet.say`${series} in series`;
	if (series === 1) return sheet.say`${parallel} in parallel`;
	return sheet.say`${series} in series, ${parallel} in parallel`;
}
