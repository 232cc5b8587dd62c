import { cautionMains } from '../electrical/cautions.js';
import { type Bank, cutoffVoltageV, dischargeLimit, unitsInSeries } from '../energy/bank.js';
import { bankFields, classOf, mainsVoltageOf, readBank, refuseWith } from '../energy/bank-fields.js';
import { cautionBank, cautionFuseBank, cautionInverterAir, cautionOneBond } from '../energy/cautions.js';
import { addLimitFinding } from '../energy/findings.js';
import {
	inverterInputA,
	inverterSizesW,
	smallestInverter,
	steadyLoadShare,
	surgeW,
	usualSurgeShare,
} from '../energy/inverter.js';
import { efficiencyOf, idleOf, inverterUseFields } from '../energy/inverter-use.js';
import { assumeTypical, type Load, type LoadItem, loadFields, resolveLoads } from '../energy/loads.js';
import { type RunCable, runCable } from '../energy/run-cable.js';
import { energyWrite } from '../energy/show.js';
import { writeNumber } from '../quantity/write.js';
import { chemistries, unknownInverterSource } from '../tables/batteries.js';
import { typicalLoadSource, typicalLoadWords } from '../tables/loads.js';
import { declareTopic } from '../topic/declare.js';
import { flag, type InputOf, list, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';

const fields = {
	loads: list({
		label: 'loads',
		item: {
			name: text({
				label: 'load',
				words: [...typicalLoadWords, 'inverter', 'inversor', 'wechselrichter', 'inverter charger'],
			}),
			powerW: loadFields.powerW,
			currentA: loadFields.currentA,
			count: loadFields.count,
		},
		max: 30,
		help: 'The inverter itself ("2000W inverter"), or what it must run: "microwave 1500W, laptop 60W".',
	}),
	ratedW: quantity({
		label: 'continuous power of the inverter',
		kind: 'power',
		min: 50,
		max: 20_000,
		aliases: ['rating', 'rated', 'inverter rating', 'continuous power', 'dauerleistung'],
	}),
	surgeW: quantity({
		label: 'surge power of the inverter',
		kind: 'power',
		min: 50,
		max: 60_000,
		aliases: ['surge', 'peak', 'surge power', 'peak power', 'spitze', 'spitzenleistung', 'pico'],
	}),
	bankV: bankFields.bankV,
	mainsV: quantity({
		label: 'mains voltage',
		kind: 'voltage',
		min: 2,
		max: 260,
		aliases: ['mains', 'output', 'ausgang', 'salida'],
	}),
	cutoffV: quantity({
		label: 'voltage at which it switches off',
		kind: 'voltage',
		min: 8,
		max: 60,
		aliases: [
			'cutoff',
			'cut-off',
			'cut off',
			'low voltage',
			'low battery',
			'lvd',
			'abschaltspannung',
			'corte',
		],
	}),
	unitAh: bankFields.unitAh,
	unitCount: bankFields.unitCount,
	unitV: bankFields.unitV,
	seriesCount: bankFields.seriesCount,
	parallelCount: bankFields.parallelCount,
	layout: bankFields.layout,
	chemistry: bankFields.chemistry,
	protectionA: bankFields.protectionA,
	...inverterUseFields,
	onH: quantity({
		label: 'hours a day it is on',
		kind: 'duration',
		min: 0,
		max: 24,
		aliases: ['on', 'left on', 'running', 'eingeschaltet', 'encendido'],
		fallback: { value: 24, why: 'left on all day: the safe side' },
	}),
	lengthM: quantity({
		label: 'one-way length',
		kind: 'length',
		min: 0.1,
		max: 20,
		aliases: ['run', 'long', 'length', 'away', 'cable', 'cables', 'kabel', 'longitud', 'länge', 'lang'],
		help: 'From the bank to the inverter, along the cable.',
		fallback: { value: 1.5, why: 'beside the bank, as short as can be', confirm: true },
	}),
	dropLimit: quantity({
		label: 'allowed voltage drop',
		kind: 'fraction',
		min: 0.001,
		max: 0.2,
		aliases: ['drop', 'voltage drop', 'caída', 'spannungsabfall'],
	}),
	enclosed: flag({
		label: 'in a closed space',
		yes: [
			'sealed',
			'enclosed',
			'in a box',
			'no ventilation',
			'unventilated',
			'closed locker',
			'under the bed',
		],
		no: ['ventilated', 'open', 'free air'],
	}),
};

type Input = InputOf<typeof fields>;

export const inverter = declareTopic({
	name: 'inverter',
	title: 'Inverter, its cable and fuse',
	system: 'energy',
	purpose:
		'Which inverter the loads need, the current it draws, its cable and fuse, and whether the bank bears it.',
	words: [
		'inverter',
		'inverter size',
		'what inverter',
		'which inverter',
		'size inverter',
		'inversor',
		'wechselrichter',
		'inverter charger',
		'surge',
		'pure sine',
		'on the inverter',
		'run on the inverter',
		'off the inverter',
		'from the inverter',
	],
	examples: [
		'2000w inverter 12v what fuse',
		'what size inverter for microwave 1500W, laptop 60W and tv 50W',
		'3000W inverter on 4x100ah lifepo4, bms 100A each',
		'wechselrichter 1500W 24V welche sicherung, kabel 2 m',
		'qué inversor para microondas y portátil 60W, 12V',
	],
	includes: ['wire', 'fuse'],
	method:
		'Continuous power is the sum of what runs at once at no more than 80 % of the inverter; for a moment the worst starter is added. Bank current at the cut-off voltage and the real efficiency, then 125 % for cable and fuse by the wire topic. Not for the mains wiring behind it, nor for how long the bank lasts.',
	fields,
	needs: [{ anyOf: ['ratedW', 'loads'], question: 'Which inverter (watts), or what must it run?' }],
	calculate: calculateInverter,
});

const inverterName = /^(?:x )?(?:inverter charger|inverter|inversor|wechselrichter)s?$/i;

function calculateInverter(input: Input, sheet: Sheet) {
	const items: readonly LoadItem[] = input.loads ?? [];
	const itself = items.find((item) => inverterName.test(item.name ?? '') && item.powerW !== undefined);
	// "inverter 100 A": amperes of the bank or of the mains, and no watts: neither can be guessed.
	const inAmperes = items.some((item) => inverterName.test(item.name ?? '') && item.currentA !== undefined);
	if (inAmperes && input.ratedW === undefined && itself === undefined) {
		return sheet.ask({
			name: 'ratedW',
			label: 'continuous power of the inverter',
			question: 'Which inverter (watts), or what must it run?',
		});
	}
	const named = items.filter((item) => !inverterName.test(item.name ?? ''));
	const ratedW = input.ratedW ?? itself?.powerW;
	if (input.ratedW !== undefined && itself?.powerW !== undefined && input.ratedW !== itself.powerW) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read two inverters: ${sheet.show('power', input.ratedW)} and ${sheet.show('power', itself.powerW)}.`,
			'Name one; size the other by itself.',
			'ratedW',
		);
	}
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return refuseWith(sheet, classV);
	const mainsV = mainsVoltageOf(input, sheet);
	if (typeof mainsV !== 'number') return refuseWith(sheet, mainsV);
	const { loads, problem } = resolveLoads(
		named.map((item) => ({ ...item, supply: 'mains' as const })),
		{ bankV: classV, mainsV, region: sheet.context.region, say: sheet.say, over: 'while-on' },
	);
	if (problem?.kind === 'ask') {
		return sheet.ask({ name: 'loads', label: problem.label, question: problem.question });
	}
	if (problem !== null) return sheet.refuse(problem.kind, problem.text, problem.instead, 'loads');
	if (ratedW === undefined && loads.length === 0) {
		return sheet.ask({
			name: 'ratedW',
			label: 'continuous power of the inverter',
			question: 'Which inverter (watts), or what must it run?',
		});
	}
	assumeTypical(sheet, loads);
	if (loads.some((load) => load.assumed.length > 0)) sheet.source(typicalLoadSource);

	const need = needOf(loads);
	const sizeW = ratedW ?? smallestInverter(need.continuousW, need.peakW, usualSurgeShare);
	if (sizeW === null) {
		return sheet.refuse(
			'not-covered',
			sheet.say`All of it at once is ${sheet.show('power', need.continuousW)} (${sheet.show('power', need.peakW)} for a moment), more than a van's inverter gives.`,
			'Leave out what need not run at the same time, or put it on shore power.',
			'loads',
		);
	}
	const battery = batteryOf(input, classV, sheet);
	if (battery !== null && 'code' in battery) return refuseWith(sheet, battery);
	const efficiency = efficiencyOf(input, sheet);
	const lowV = cutoffOf(input, classV, sheet);
	if (lowV > classV * 1.2) {
		return sheet.refuse(
			'contradiction',
			sheet.say`It can't switch off at ${sheet.show('voltage', lowV)} on a bank of ${classV} V.`,
			'Name the cut-off at the bank, for instance 10.5 V on 12 V.',
			'cutoffV',
		);
	}
	const currentA = inverterInputA(sizeW, lowV, efficiency);
	writeWorking(sheet, loads, need, sizeW, { lowV, efficiency, currentA });
	writeResults(sheet, input, loads, need, sizeW, { efficiency, currentA });

	const cable = runCable(sheet, {
		currentA,
		voltageV: classV,
		lengthM: input.lengthM,
		dropLimit: input.dropLimit,
		continuous: true,
		load: 'inverter',
	});
	if (cable === null) {
		return sheet.refuse(
			'impossible',
			sheet.say`${sheet.show('power', sizeW)} at ${classV} V draws ${sheet.show('current', currentA, { round: 'up' })}: no cable and fuse in my tables do that.`,
			classV < 48 ? 'Take a bank of 24 or 48 V, or a smaller inverter.' : 'Take a smaller inverter.',
			'ratedW',
		);
	}
	addLoadFindings(sheet, input, need, sizeW, loads);
	const overLimitA = addBankLimit(sheet, input, battery, currentA, sizeW, lowV, efficiency);
	addOther(sheet, input, classV, currentA);
	writeNeighbours(sheet, sizeW, classV, lowV, efficiency, ratedW === undefined, need);
	writeTipping(sheet, cable, lowV, efficiency);
	const surgeLimitW = surgeLimitOf(input, sizeW);
	return answer(sheet, {
		...{ sizeW, ratedW, classV, lowV, currentA, cable, need, loads },
		...{ efficiency, surgeLimitW, overLimitA },
	});
}

interface Need {
	readonly continuousW: number;
	readonly peakW: number;
}

function needOf(loads: readonly Load[]): Need {
	return {
		continuousW: loads.reduce((sum, load) => sum + load.runningW, 0),
		peakW: surgeW(loads),
	};
}

/** The bank where its capacity was named, or one unit whose protection was named. */
function batteryOf(input: Input, classV: number, sheet: Sheet) {
	const chemistry = chemistries[input.chemistry ?? 'lifepo4'];
	const bank = readBank(input, chemistry, classV, sheet);
	if (bank !== null || input.protectionA === undefined) return bank;
	const series = unitsInSeries(chemistry, 12, classV) ?? 1;
	const parallel = Math.max(1, Math.floor((input.unitCount ?? series) / series));
	const one: Bank = { chemistry, classV, unitAh: 100, unitV: 12, series, parallel };
	return one;
}

/** The lowest voltage it runs at; where the chemistry is not known, the lowest of the usual ones. */
function cutoffOf(input: Input, classV: number, sheet: Sheet): number {
	if (input.cutoffV !== undefined) return input.cutoffV;
	const named = input.chemistry;
	const candidates = named === undefined ? (['lifepo4', 'agm'] as const) : [named];
	const cutoffs = candidates.map((name) => cutoffVoltageV(chemistries[name], classV));
	const lowV = Math.min(...cutoffs);
	sheet.source(...candidates.map((name) => chemistries[name].cutoffSource));
	sheet.assume(
		'cutoffV',
		'voltage at which it switches off',
		lowV,
		named === undefined
			? 'the safe side: LiFePO4 at 2.5 V a cell is lower than lead-acid at 1.75 V a cell'
			: sheet.say`end of discharge of ${chemistries[named].label}`,
		{ kind: 'voltage' },
	);
	return lowV;
}

const n = (value: number, decimals = 2) => writeNumber(value, decimals);

function writeWorking(
	sheet: Sheet,
	loads: readonly Load[],
	need: Need,
	sizeW: number,
	at: { readonly lowV: number; readonly efficiency: number; readonly currentA: number },
): void {
	if (loads.length > 0) {
		sheet.step(
			'running at once',
			'P = Σ Pi',
			loads.map((load) => `${n(load.runningW, 1)} W`).join(' + '),
			need.continuousW,
			{ kind: 'power', source: physics('sum of powers') },
		);
		sheet.step(
			'for a moment',
			'Pmax = P + max((k − 1) · Pi)',
			loads.map((load) => `${load.shown}: k = ${n(load.surgeFactor, 1)}`).join(', '),
			need.peakW,
			{ kind: 'power', source: practice('start-up power of motors and compressors') },
		);
	}
	sheet.step(
		'current from the bank at its lowest voltage',
		'I = P / (V · η)',
		`${n(sizeW, 1)} W / (${n(at.lowV)} V × ${n(at.efficiency, 3)})`,
		at.currentA,
		{ kind: 'current', source: unknownInverterSource },
	);
	sheet.step('for cable and fuse', 'Id = 1.25 · I', `1.25 × ${n(at.currentA, 1)} A`, 1.25 * at.currentA, {
		kind: 'current',
		source: sheet.rules.dc.continuous.source,
	});
}

function writeResults(
	sheet: Sheet,
	input: Input,
	loads: readonly Load[],
	need: Need,
	sizeW: number,
	at: { readonly efficiency: number; readonly currentA: number },
): void {
	const up = { round: 'up' } as const;
	sheet.result('inverterPower', 'continuous power of the inverter', sizeW, { kind: 'power' });
	if (loads.length > 0) {
		sheet.result('continuousLoad', 'running at once', need.continuousW, { kind: 'power', write: up });
		sheet.result('surgeLoad', 'for a moment', need.peakW, { kind: 'power', write: up });
	}
	sheet.result('bankCurrent', 'current from the bank at low battery', at.currentA, {
		kind: 'current',
		write: up,
	});
	sheet.result('designCurrent', 'current for cable and fuse', 1.25 * at.currentA, {
		kind: 'current',
		write: up,
	});
	const idleWh = idleOf(input, sheet) * input.onH;
	sheet.result('idlePerDay', 'energy a day with nothing connected', idleWh, {
		kind: 'energy',
		write: energyWrite(idleWh, 'up'),
	});
	sheet.result('heat', 'heat it gives off at full load', sizeW / at.efficiency - sizeW, {
		kind: 'power',
		write: up,
	});
}

function addLoadFindings(
	sheet: Sheet,
	input: Input,
	need: Need,
	sizeW: number,
	loads: readonly Load[],
): void {
	if (loads.length === 0) return;
	const load = sheet.show('power', need.continuousW, { round: 'up' });
	const size = sheet.show('power', sizeW);
	if (need.continuousW > sizeW) {
		sheet.finding(
			'warning',
			'inverter-overloaded',
			sheet.say`All of it at once is ${load}, more than the inverter's ${size}: it switches off. Run less at a time or take a larger one.`,
			physics('sum of powers'),
		);
	} else if (need.continuousW > steadyLoadShare * sizeW) {
		sheet.finding(
			'note',
			'inverter-loaded-hard',
			sheet.say`${load} is more than 80 % of ${size}: in a warm place it may cut back or switch off.`,
			practice('80 % of the continuous power for long'),
		);
	}
	const surgeLimitW = surgeLimitOf(input, sizeW);
	if (need.peakW > surgeLimitW) {
		sheet.finding(
			'warning',
			'surge-too-small',
			sheet.say`Starting takes ${sheet.show('power', need.peakW, { round: 'up' })} for a moment, more than the ${sheet.show('power', surgeLimitW)} it gives.`,
			practice('start-up power of motors and compressors'),
		);
	}
}

/** @returns the bank's limit where the inverter is over it [A], or null */
function addBankLimit(
	sheet: Sheet,
	input: Input,
	bank: Bank | null,
	currentA: number,
	sizeW: number,
	lowV: number,
	efficiency: number,
): number | null {
	if (bank === null) {
		sheet.finding(
			'note',
			'bank-limit-unknown',
			sheet.say`The bank must give ${sheet.show('current', currentA, { round: 'up' })} without switching itself off; name its batteries and their protection to have that checked.`,
			practice("the battery's own protection decides"),
		);
		return null;
	}
	const limit = dischargeLimit(bank, input.protectionA);
	sheet.result('dischargeLimit', 'largest steady discharge current of the bank', limit.limitA, {
		kind: 'current',
		write: { round: 'down' },
	});
	if (!addLimitFinding(sheet, 'discharge', currentA, limit)) return limit.limitA;
	const surgeA = inverterInputA(input.surgeW ?? usualSurgeShare * sizeW, lowV, efficiency);
	if (surgeA > limit.limitA) {
		sheet.finding(
			'note',
			'surge-over-protection',
			sheet.say`For a moment it may draw ${sheet.show('current', surgeA, { round: 'up' })}; see that the battery's protection bears that for some seconds.`,
			practice('surge for some seconds against the protection of the battery'),
		);
	}
	return null;
}

function addOther(sheet: Sheet, input: Input, classV: number, currentA: number): void {
	if (classV < 48 && currentA > 300) {
		sheet.finding(
			'warning',
			'higher-voltage-better',
			sheet.say`Over 300 A at ${classV} V every joint counts: at double the voltage it is half the current, cable and fuse.`,
			practice('24 or 48 V above some 3 kW'),
		);
	}
	if (input.enclosed === true) {
		sheet.finding(
			'warning',
			'inverter-enclosed',
			sheet.say`In a closed space it overheats and can start a fire: give it air in and out, and keep bedding and clothes away.`,
			practice('an inverter gives off its losses as heat'),
		);
	}
	sheet.caution(cautionFuseBank, cautionBank, cautionInverterAir, cautionOneBond, cautionMains);
	sheet.source(fromMemory('NFPA 70 (NEC)', '551.54(C): neutral bonded at the source only'));
}

function writeNeighbours(
	sheet: Sheet,
	sizeW: number,
	classV: number,
	lowV: number,
	efficiency: number,
	proposed: boolean,
	need: Need,
): void {
	if (proposed) {
		const smaller = inverterSizesW.findLast((size) => size < sizeW);
		const larger = inverterSizesW.find((size) => size > sizeW);
		if (smaller !== undefined) {
			const tooLittle =
				smaller < need.continuousW
					? sheet.say`too small for ${sheet.show('power', need.continuousW)}`
					: smaller * usualSurgeShare < need.peakW
						? sheet.say`starts ${sheet.show('power', need.peakW)} only with luck`
						: sheet.say`loaded to ${writeNumber((need.continuousW / smaller) * 100, 0, 'up')} %`;
			sheet.neighbour(sheet.show('power', smaller), false, tooLittle);
		}
		if (larger !== undefined) {
			sheet.neighbour(
				sheet.show('power', larger),
				true,
				sheet.say`${sheet.show('current', inverterInputA(larger, lowV, efficiency), { round: 'up' })} from the bank`,
			);
		}
	}
	for (const otherV of [12, 24, 48].filter((value) => value > classV)) {
		const otherA = inverterInputA(sizeW, (lowV * otherV) / classV, efficiency);
		sheet.neighbour(
			sheet.say`${otherV} V bank`,
			true,
			sheet.say`${sheet.show('current', otherA, { round: 'up' })}`,
		);
	}
}

/** The largest inverter that the same fuse still carries. */
function writeTipping(sheet: Sheet, cable: RunCable, lowV: number, efficiency: number): void {
	const mostW = (cable.deviceA / sheet.rules.dc.continuous.value) * lowV * efficiency;
	sheet.tipping(
		'ratedW',
		'continuous power of the inverter',
		mostW,
		sheet.say`up to ${sheet.show('power', mostW, { round: 'down' })} on the same fuse`,
		{ kind: 'power' },
	);
}

interface Answer {
	readonly sizeW: number;
	readonly ratedW: number | undefined;
	readonly classV: number;
	readonly lowV: number;
	readonly currentA: number;
	readonly cable: RunCable;
	readonly need: Need;
	readonly loads: readonly Load[];
	readonly efficiency: number;
	/** what it gives for a moment [W] */
	readonly surgeLimitW: number;
	/** the bank's limit where it is exceeded [A] */
	readonly overLimitA: number | null;
}

/** What it gives for a moment [W]: as on its plate, or the usual multiple. */
function surgeLimitOf(input: Input, sizeW: number): number {
	return input.surgeW ?? usualSurgeShare * sizeW;
}

function answer(sheet: Sheet, found: Answer) {
	const size = sheet.show('power', found.sizeW);
	const fuse = `${n(found.cable.deviceA, 1)} A`;
	const current = sheet.show('current', found.currentA, { round: 'up', decimals: 0 });
	const low = sheet.show('voltage', found.lowV);
	const load = sheet.show('power', found.need.continuousW, { round: 'up' });
	const peak = sheet.show('power', found.need.peakW, { round: 'up' });
	const draws = sheet.say`At ${low} and ${n(found.efficiency * 100, 0)} % it draws ${current}; 125 % of that is for cable and fuse.`;
	const cableText = sheet.say`${fuse} fuse, ${found.cable.conductor}`;
	if (found.overLimitA !== null) {
		const most = sheet.show('current', found.overLimitA, { round: 'down', decimals: 0 });
		return sheet.answer(sheet.say`${size} is too much for this bank: ${current}, it gives ${most}`, {
			because: sheet.say`${draws} For the cable alone: ${cableText}.`,
			governedBy: 'discharge limit of the bank',
		});
	}
	if (found.loads.length === 0) {
		return sheet.answer(sheet.say`${size} at ${found.classV} V: ${cableText} (${current} at low battery)`, {
			because: draws,
			governedBy: 'bank current at the cut-off',
		});
	}
	const because = sheet.say`${load} at once, ${peak} for a moment. ${draws}`;
	if (found.ratedW !== undefined && found.need.continuousW > found.sizeW) {
		return sheet.answer(sheet.say`${size} is too small for ${load} at once`, {
			because,
			governedBy: 'continuous power',
		});
	}
	if (found.ratedW !== undefined && found.need.peakW > found.surgeLimitW) {
		return sheet.answer(sheet.say`${size} runs ${load} but may not start it: ${peak} for a moment`, {
			because: sheet.say`It gives ${sheet.show('power', found.surgeLimitW)} for a moment. ${draws}`,
			governedBy: 'start-up power',
		});
	}
	return sheet.answer(
		found.ratedW === undefined
			? sheet.say`${size} inverter for ${load}; ${cableText} at ${found.classV} V`
			: sheet.say`${size} is enough for ${load}; ${cableText} at ${found.classV} V`,
		{ because, governedBy: 'continuous power' },
	);
}
