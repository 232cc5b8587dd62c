import { classOf, mainsVoltageOf, refuseWith } from '../energy/bank-fields.js';
import { type Budget, dailyBudget, type InverterUse } from '../energy/budget.js';
import { inverterUse, inverterUseFields } from '../energy/inverter-use.js';
import { assumeTypical, type Load, loadFields, resolveLoads } from '../energy/loads.js';
import { energyWrite, showEnergy } from '../energy/show.js';
import { writeNumber } from '../quantity/write.js';
import { unknownInverterSource } from '../tables/batteries.js';
import { typicalLoadSource } from '../tables/loads.js';
import { declareTopic } from '../topic/declare.js';
import { type InputOf, list, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';

const fields = {
	loads: list({
		label: 'loads',
		item: loadFields,
		max: 60,
		help: 'Each with watts or amps and hours a day: "fridge 60W 24h 40%, lights 20W 5h, 2 x laptop 60W 4h".',
		required: 'Which loads, with watts or amps and hours a day?',
	}),
	bankV: quantity({
		label: 'bank voltage',
		kind: 'voltage',
		min: 2,
		max: 260,
		aliases: ['bank', 'system', 'battery', 'house', 'bordnetz', 'sistema', 'batería', 'batterie'],
	}),
	mainsV: quantity({
		label: 'mains voltage',
		kind: 'voltage',
		min: 2,
		max: 260,
		aliases: ['mains', 'household', 'inverter output', 'netz', 'red'],
	}),
	...inverterUseFields,
	inverterOnH: quantity({
		label: 'hours a day the inverter is on',
		onlyNamed: true,
		kind: 'duration',
		min: 0,
		max: 24,
		aliases: ['inverter on', 'inverter is on', 'inverter hours', 'left on', 'inverter left on'],
	}),
};

type Input = InputOf<typeof fields>;

export const budget = declareTopic({
	name: 'budget',
	title: 'Daily energy budget',
	system: 'energy',
	purpose: 'How much the loads of a van take from the bank in a day, and the most they draw at once.',
	words: [
		'budget',
		'energy budget',
		'power budget',
		'load list',
		'how much per day',
		'how much a day',
		'how much power',
		'power needs',
		'energy needs',
		'per day',
		'a day',
		'daily use',
		'daily consumption',
		'energy use',
		'power use',
		'usage',
		'consumption',
		'consumo',
		'consumo diario',
		'presupuesto',
		'energiebilanz',
		'verbrauch',
		'tagesverbrauch',
		'strombedarf',
		'daily draw',
		'daily load',
		'daily power',
	],
	examples: [
		'budget: fridge 60W 24h 40%, lights 20W 5h, 2 x laptop 60W 4h',
		'energy budget 24v fan 3A 10h, router 12w 24h, microwave 1500w 15min',
		'daily consumption fridge 45w 24h, water pump 8A 15 min, kettle 2200W 12 min 230V',
		'verbrauch kühlschrank 50W 24h 40%, licht 15W 5h, laptop 60W 3h',
		'consumo diario nevera 60W 24h 40%, luces 15W 5h',
	],
	notFor: ['fuel'],
	method:
		"Power times hours times duty of each load; mains loads divided by the inverter's efficiency, with its idle draw for every hour it is on; amp-hours at the bank's class voltage. Loads without hours take those of the table of typical loads, or are asked for. Losses in cables and charging are not in it.",
	fields,
	calculate: calculateBudget,
});

function calculateBudget(input: Input, sheet: Sheet) {
	const classV = classOf(input, sheet);
	if (typeof classV !== 'number') return refuseWith(sheet, classV);
	const mainsV = mainsVoltageOf(input, sheet);
	if (typeof mainsV !== 'number') return refuseWith(sheet, mainsV);
	const { loads, problem } = resolveLoads(input.loads, {
		bankV: classV,
		mainsV,
		region: sheet.context.region,
		say: sheet.say,
		over: 'day',
	});
	if (problem?.kind === 'ask') {
		return sheet.ask({ name: 'loads', label: problem.label, question: problem.question });
	}
	if (problem !== null) return sheet.refuse(problem.kind, problem.text, problem.instead, 'loads');
	assumeTypical(sheet, loads);
	if (loads.some((load) => load.assumed.length > 0)) sheet.source(typicalLoadSource);

	const hasMains = loads.some((load) => load.mains);
	const inverter: InverterUse = hasMains
		? { ...inverterUse(input, sheet), onH: onHours(input, sheet) }
		: { efficiency: 1, idleW: 0, onH: 0 };
	const day = dailyBudget(loads, inverter);
	const dayAh = day.totalWh / classV;

	writeWorking(sheet, loads, inverter, day, classV);
	writeResults(sheet, day, dayAh, classV, hasMains);
	writeFindings(sheet, loads, day, classV);
	if (day.idleWh > 0) {
		const withoutWh = day.totalWh - day.idleWh;
		const without = showEnergy(sheet, withoutWh, 'up');
		const withoutAh = sheet.show('charge', withoutWh / classV, { round: 'up' });
		sheet.neighbour(
			sheet.say`inverter switched off between uses`,
			true,
			sheet.say`${without} a day = ${withoutAh}, as far as it can be off`,
		);
	}

	const energy = showEnergy(sheet, day.totalWh, 'up');
	const charge = sheet.show('charge', dayAh, { round: 'up' });
	return sheet.answer(sheet.say`${energy} a day = ${charge} at ${classV} V`, {
		because: becauseOf(sheet, loads, day),
	});
}

function onHours(input: Input, sheet: Sheet): number {
	if (input.inverterOnH !== undefined) return input.inverterOnH;
	sheet.assume('inverterOnH', 'hours a day the inverter is on', 24, 'left on all day: the safe side', {
		kind: 'duration',
		confirm: true,
	});
	return 24;
}

const sumSource = physics('energy is power times time');

function writeWorking(
	sheet: Sheet,
	loads: readonly Load[],
	inverter: InverterUse,
	day: Budget,
	classV: number,
): void {
	const n = (value: number, decimals = 1) => writeNumber(value, decimals);
	for (const load of loads) {
		const hours = load.hoursPerDay;
		const substituted =
			hours === null ? 'as given' : `${n(load.runningW)} W × ${n(hours, 2)} h × ${n(load.duty, 3)}`;
		sheet.step(load.shown, 'E = P · t · duty', substituted, load.dailyWh ?? 0, {
			kind: 'energy',
			source: sumSource,
		});
	}
	if (day.mainsWh > 0) {
		sheet.step(
			'lost in the inverter under load',
			'Ec = Em / η − Em',
			`${n(day.mainsWh)} Wh / ${n(inverter.efficiency, 3)} − ${n(day.mainsWh)} Wh`,
			day.conversionWh,
			{ kind: 'energy', source: unknownInverterSource },
		);
		sheet.step(
			'idle draw of the inverter',
			'Ei = Pi · t',
			`${n(inverter.idleW)} W × ${n(inverter.onH)} h`,
			day.idleWh,
			{ kind: 'energy', source: practice('idle draw counted for every hour the inverter is on') },
		);
	}
	sheet.step(
		'energy a day',
		'E = Σ E + Ec + Ei',
		`${n(day.dcWh)} + ${n(day.mainsWh)} + ${n(day.conversionWh)} + ${n(day.idleWh)} Wh`,
		day.totalWh,
		{ kind: 'energy', source: sumSource },
	);
	sheet.step('charge a day', 'Q = E / V', `${n(day.totalWh)} Wh / ${classV} V`, day.totalWh / classV, {
		kind: 'charge',
		source: physics('charge is energy over voltage'),
	});
}

function writeResults(sheet: Sheet, day: Budget, dayAh: number, classV: number, hasMains: boolean): void {
	const up = { round: 'up' } as const;
	const energy = (name: string, label: string, valueWh: number) =>
		sheet.result(name, label, valueWh, { kind: 'energy', write: energyWrite(valueWh, 'up') });
	energy('energyPerDay', 'energy a day from the bank', day.totalWh);
	sheet.result('chargePerDay', 'charge a day from the bank', dayAh, { kind: 'charge', write: up });
	sheet.result('peakCurrent', 'largest current from the bank, all on', day.peakBankW / classV, {
		kind: 'current',
		write: up,
	});
	energy('dcEnergyPerDay', 'direct-current loads a day', day.dcWh);
	if (!hasMains) return;
	energy('mainsEnergyPerDay', 'mains loads a day', day.mainsWh);
	energy('inverterLossPerDay', 'inverter losses and idle draw a day', day.conversionWh + day.idleWh);
	sheet.result('mainsTogether', 'mains loads all at once', day.mainsTogetherW, { kind: 'power', write: up });
	sheet.result('largestMainsLoad', 'largest mains load', day.largestMainsW, { kind: 'power', write: up });
}

function writeFindings(sheet: Sheet, loads: readonly Load[], day: Budget, classV: number): void {
	for (const load of loads.filter((one) => one.cyclesUnsaid)) {
		sheet.finding(
			'note',
			'cycling-load',
			sheet.say`The ${load.shown} is counted at full power for all its hours. If it switches on and off by itself, name its share ("40%").`,
			typicalLoadSource,
		);
	}
	if (day.idleWh > 0.2 * day.totalWh) {
		const idle = showEnergy(sheet, day.idleWh);
		sheet.finding(
			'note',
			'inverter-idle-large',
			sheet.say`The inverter alone takes ${idle} a day doing nothing; switch it off between uses or use its search mode.`,
			practice('idle draw against the whole budget'),
		);
	}
	const peakA = day.peakBankW / classV;
	if (classV === 12 && peakA > 250) {
		const peak = sheet.show('current', peakA, { round: 'up' });
		sheet.finding(
			'warning',
			'peak-current-high',
			sheet.say`All on at once draws ${peak} at 12 V: cables, fuses and the battery's own protection must bear it. A 24 or 48 V bank halves or quarters it.`,
			practice('above some 250 A a 12 V bank is the wrong choice'),
		);
	}
}

function becauseOf(sheet: Sheet, loads: readonly Load[], day: Budget): string {
	const lossWh = day.conversionWh + day.idleWh;
	const parts = [
		day.dcWh > 0 ? sheet.say`Direct-current loads ${showEnergy(sheet, day.dcWh)}` : null,
		day.mainsWh > 0 ? sheet.say`mains loads ${showEnergy(sheet, day.mainsWh)}` : null,
		lossWh > 0 ? sheet.say`inverter losses and idle ${showEnergy(sheet, lossWh)}` : null,
	].filter((part) => part !== null);
	const list = parts.join(', ');
	const sum = `${list.charAt(0).toUpperCase()}${list.slice(1)}.`;
	const largest = loads.toSorted((a, b) => (b.dailyWh ?? 0) - (a.dailyWh ?? 0))[0];
	if (largest === undefined || loads.length < 2) return sum;
	const most = showEnergy(sheet, largest.dailyWh ?? 0);
	return `${sum} ${sheet.say`Most of it: ${largest.shown}, ${most}.`}`;
}
