import { cautionBank, cautionLithiumCold, cautionMakerLimits } from '../energy/cautions.js';
import { addLimitFinding, addTemperatureFindings } from '../energy/findings.js';
import { energyWrite, showEnergy } from '../energy/show.js';
import { daysBelow, runHours, type Simulation } from '../energy/simulation.js';
import {
	type SimulationInput,
	type SolvedSimulation,
	simulationFields,
	solveSimulation,
	type VanSimulation,
	whenText,
} from '../energy/van-simulation.js';
import { writeNumber } from '../quantity/write.js';
import { daySequenceSource } from '../solar/day-sequence.js';
import { pvWattsSource } from '../solar/photovoltaic.js';
import { hourlyShapeSource } from '../solar/typical-day.js';
import { batteryPracticeSource } from '../tables/batteries.js';
import { declareTopic } from '../topic/declare.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';
import { monthNames } from '../topic/value.js';

export const simulate = declareTopic({
	name: 'simulate',
	title: 'Energy hour by hour',
	system: 'energy',
	purpose:
		'Whether bank, array, driving and shore power carry the loads through days or a year, and the smallest that do.',
	words: [
		'simulate',
		'simulation',
		'hour by hour',
		'will it last',
		'keep up',
		'through the winter',
		'whole year',
		'year round',
		'a year',
		'energy balance',
		'simular',
		'simulación',
		'todo el año',
		'simulieren',
		'das ganze jahr',
		'energiebilanz jahr',
		'sim',
		'refill the bank',
		'refills the bank',
		'refill',
		'sun and alternator',
		'solar and alternator',
		'sun and driving',
		'solar and driving',
		'does sun and',
		'sun and',
		'solar and',
		'sun plus',
		'solar plus',
		'enough solar',
		'keep the bank full',
		'keep up with',
		'rellena el banco',
		'sol y alternador',
		'füllt die batterie',
		'sonne und lichtmaschine',
		'solar und lichtmaschine',
	],
	examples: [
		'simulate 200Ah lithium 400W solar flagstaff december: fridge 60W 24h 40%, lights 20W 5h',
		'simulate 300Ah 600W solar Moab june 1.5 kWh a day',
		'simulate a year in Denver 400W solar 200Ah 900 Wh a day 2h driving 30A alternator',
		'simulieren 2 x 100Ah 300W solar München juli 800 Wh pro tag',
		'simulate 7 days 100Ah agm fridge 45W 24h 40%, lights 10W 4h, shore 8h charger 20A',
	],
	includes: ['solar', 'battery', 'budget'],
	method:
		'Every hour of the period in turn: loads by the clock, the month’s mean solar day times a fixed order of dull and clear days with the month’s true mean, driving and shore power at fixed hours; the bank with one efficiency, charge limit and floor. The smallest bank and array are found by halving. A mean year: real weather has worse weeks; capacity and efficiency are taken as constant, ageing and the falling current near full are not in it.',
	fields: simulationFields,
	calculate: calculateSimulation,
});

function calculateSimulation(input: SimulationInput, sheet: Sheet) {
	const solved = solveSimulation(input, sheet);
	if ('kind' in solved) return solved;
	const { plan, run } = solved;
	sheet.caution(cautionBank, cautionMakerLimits);
	if (plan.bank === null || !plan.bank.chemistry.leadAcid) sheet.caution(cautionLithiumCold);
	if (plan.year !== null) sheet.source(hourlyShapeSource, pvWattsSource, daySequenceSource);
	sheet.source(batteryPracticeSource);
	const below = daysBelow(run.soc, input.reserve);
	const found = { below, bankFound: solved.bankFound, arrayFound: solved.arrayFound };
	writeWorking(sheet, solved);
	writeResults(sheet, solved, below);
	writeFindings(sheet, input, solved, below);
	writeNeighbours(sheet, input, solved);
	return decide(sheet, input, plan, run, found);
}

interface Found {
	readonly below: number;
	readonly bankFound: number | null;
	readonly arrayFound: number | null;
}

function periodText(sheet: Sheet, plan: VanSimulation): string {
	if (plan.days >= 365) return sheet.say`a year`;
	const name = monthNames[plan.firstMonth - 1] as string;
	return plan.year === null ? sheet.say`${plan.days} days` : sheet.say`${plan.days} days from ${name} 1`;
}

function writeWorking(sheet: Sheet, { plan, run, bank, capacityWh }: SolvedSimulation): void {
	const n = (value: number, decimals = 0) => writeNumber(value, decimals);
	const sumSource = physics('conservation of energy');
	sheet.step(
		'energy of the bank at its temperature',
		'E = C · V · cold share',
		`${n(capacityWh / plan.nominalV, 1)} Ah · ${n(plan.nominalV, 1)} V · ${n(plan.coldShare, 3)}`,
		bank.capacityWh,
		{ kind: 'energy', source: physics('energy is charge times voltage') },
	);
	const dailyWh = plan.loadShape.reduce((sum, value) => sum + value, 0);
	sheet.step('loads a day, at the bank', 'E = Σ P · Δt', '24 hours', dailyWh, {
		kind: 'energy',
		source: sumSource,
	});
	if (plan.year !== null) {
		sheet.step(
			'from the sun, as much a day',
			'mean of the period',
			`${n(run.solarWh)} Wh / ${plan.days} days`,
			run.solarWh / plan.days,
			{ kind: 'energy', source: pvWattsSource },
		);
	}
	sheet.step(
		'every hour',
		'ΔE = η · min(P − L, limit, room), or −min(L − P, E − floor)',
		`η ${n(bank.efficiency, 2)}, limit ${n(bank.chargeLimitW)} W, floor ${n(bank.floor * 100)} %`,
		`${plan.days * 24} steps`,
		{ source: sumSource },
	);
	const inWh = run.solarWh + run.engineWh + run.shoreWh;
	const outWh = run.servedWh + run.storedWh + run.lostWh + run.spilledWh + run.unusedWh;
	sheet.step(
		'check: in less served, stored, lost, spilled, unused',
		'Σ in − Σ out',
		`${n(inWh, 1)} − (${n(run.servedWh, 1)} + ${n(run.storedWh, 1)} + ${n(run.lostWh, 1)} + ${n(run.spilledWh, 1)} + ${n(run.unusedWh, 1)}) Wh`,
		// Binary dust of thousands of additions is no difference.
		Math.abs(inWh - outWh) < 1e-6 ? 0 : inWh - outWh,
		{ kind: 'energy', source: sumSource },
	);
}

function writeResults(sheet: Sheet, solved: SolvedSimulation, below: number): void {
	const { plan, run } = solved;
	const energy = (
		name: string,
		label: string,
		valueWh: number,
		round: 'up' | 'down' | 'nearest' = 'nearest',
	) => sheet.result(name, label, valueWh, { kind: 'energy', write: energyWrite(valueWh, round) });
	sheet.result('lowestCharge', 'lowest state of charge', run.lowestSoc, {
		kind: 'fraction',
		write: { round: 'down', decimals: 0 },
	});
	sheet.result('lowestWhen', 'when it is lowest', whenText(plan, run.lowestHour, sheet.say));
	sheet.result('endCharge', 'state of charge at the end', run.endSoc, {
		kind: 'fraction',
		write: { round: 'down', decimals: 0 },
	});
	sheet.result('daysBelowReserve', 'days below the reserve', below);
	energy('unservedEnergy', 'asked for and not given', run.unservedWh, 'up');
	sheet.result('hoursUnserved', 'hours with a load not served', run.hoursUnserved);
	energy('demand', 'asked for by the loads', run.demandWh);
	energy('solar', 'from the sun', run.solarWh);
	energy('spilled', 'solar left unused', run.spilledWh);
	energy('engine', 'offered while driving', run.engineWh);
	energy('shore', 'offered by shore power', run.shoreWh);
	energy('lost', 'lost in the bank', run.lostWh);
	sheet.result('days', 'days run', plan.days);
	sheet.result('bankCapacity', 'bank simulated', solved.capacityWh / plan.nominalV, {
		kind: 'charge',
		write: { round: 'down' },
	});
	if (solved.bankFound !== null) {
		sheet.result('smallestBank', 'smallest bank that keeps the reserve', solved.bankFound / plan.nominalV, {
			kind: 'charge',
			write: { round: 'up' },
		});
	}
	if (solved.arrayFound !== null) {
		sheet.result('smallestArray', 'smallest array that keeps the reserve', solved.arrayFound, {
			kind: 'power',
			write: { round: 'up' },
		});
	}
}

function writeNeighbours(
	sheet: Sheet,
	input: SimulationInput,
	{ plan, capacityWh, powers }: SolvedSimulation,
): void {
	for (const factor of [0.5, 2]) {
		const run = runHours(powers, plan.bankOf(capacityWh * factor));
		const passes = run.unservedWh === 0 && run.lowestSoc >= input.reserve;
		sheet.neighbour(
			factor === 2 ? 'twice the bank' : 'half the bank',
			passes,
			sheet.say`lowest ${sheet.show('fraction', run.lowestSoc, { round: 'down', decimals: 0 })}`,
		);
	}
}

function writeFindings(
	sheet: Sheet,
	input: SimulationInput,
	{ plan, run, bank, powers, capacityWh }: SolvedSimulation,
	below: number,
): void {
	const reserve = sheet.show('fraction', input.reserve);
	if (run.unservedWh > 0) {
		sheet.finding(
			'warning',
			'loads-not-served',
			sheet.say`The bank runs empty: ${showEnergy(sheet, run.unservedWh, 'up')} in ${run.hoursUnserved} hours are not given.`,
			physics('conservation of energy'),
		);
	} else if (below > 0) {
		sheet.finding(
			'warning',
			'below-reserve',
			sheet.say`On ${below} of ${plan.days} days the bank falls below the reserve of ${reserve}; the lowest is ${sheet.show('fraction', run.lowestSoc, { round: 'down', decimals: 0 })}.`,
			practice('reserve kept in the bank'),
		);
	}
	// It may end in the dark hours of its daily round, up to a day's use lower.
	const dayShare = run.demandWh / plan.days / bank.capacityWh;
	if (run.endSoc < input.startSoc - Math.max(0.1, 1.2 * dayShare)) {
		sheet.finding(
			'warning',
			'not-steady',
			sheet.say`The bank ends at ${sheet.show('fraction', run.endSoc, { round: 'down', decimals: 0 })} where it began at ${sheet.show('fraction', input.startSoc)}: over a longer time it would not hold.`,
			physics('conservation of energy'),
		);
	}
	if (run.solarWh > 0 && run.spilledWh > 0.3 * run.solarWh) {
		sheet.finding(
			'note',
			'sun-left-unused',
			sheet.say`${sheet.show('fraction', run.spilledWh / run.solarWh, { decimals: 0 })} of the sun finds the bank full or its charge limit reached: there is room for more loads, or the array could be smaller.`,
			physics('conservation of energy'),
		);
	}
	if (plan.bank !== null) {
		addTemperatureFindings(sheet, plan.bank.chemistry, input.temperatureC, false);
		const peakSolarW = powers.solarW.reduce((most, value) => Math.max(most, value), 0);
		const limitA =
			(input.chargeLimitA ?? plan.bank.unitAh * plan.bank.chemistry.chargeRatePerH) * plan.bank.parallel;
		addLimitFinding(sheet, 'charge', plan.chargerA + peakSolarW / plan.nominalV, {
			limitA,
			given: input.chargeLimitA !== undefined,
		});
		if (plan.bank.chemistry.leadAcid && plan.days >= 14 && !fullWithin(run, 14)) {
			sheet.finding(
				'warning',
				'lead-acid-never-full',
				'The bank is not full for two weeks and more: lead-acid that stays half charged sulphates and loses its capacity.',
				practice('lead-acid is charged to the full every week or two'),
			);
		}
	}
	if (plan.year !== null) {
		sheet.finding(
			'note',
			'mean-year',
			sheet.say`The sun is that of a mean year with dull and clear days in a fixed order: a real run of bad weather can be longer, and snow or shade are not in it.`,
			daySequenceSource,
		);
	}
	if (capacityWh / plan.nominalV > 1000) {
		sheet.finding(
			'note',
			'bank-very-large',
			sheet.say`${sheet.show('charge', capacityWh / plan.nominalV, { round: 'up' })} is more than most vans carry: add sun, driving or shore power instead.`,
			practice('banks of vans'),
		);
	}
}

/** True where the bank is full at least once in every run of so many days. */
function fullWithin(run: Simulation, days: number): boolean {
	let since = 0;
	for (const soc of run.soc) {
		since = soc > 0.995 ? 0 : since + 1;
		if (since >= days * 24) return false;
	}
	return true;
}

function decide(sheet: Sheet, input: SimulationInput, plan: VanSimulation, run: Simulation, found: Found) {
	const period = periodText(sheet, plan);
	const lowest = sheet.show('fraction', run.lowestSoc, { round: 'down', decimals: 0 });
	const reserve = sheet.show('fraction', input.reserve);
	const bank =
		found.bankFound === null ? null : sheet.show('charge', found.bankFound / plan.nominalV, { round: 'up' });
	const array = found.arrayFound === null ? null : sheet.show('power', found.arrayFound, { round: 'up' });
	const because = becauseOf(sheet, plan, run);
	if (plan.bank === null) {
		return sheet.answer(sheet.say`${bank ?? ''} at ${plan.classV} V keep ${reserve} through ${period}`, {
			because,
		});
	}
	if (plan.arrayW === null) {
		return sheet.answer(sheet.say`${array ?? ''} of panels keep ${reserve} in the bank through ${period}`, {
			because,
		});
	}
	if (run.unservedWh === 0 && run.lowestSoc >= input.reserve) {
		if (found.bankFound !== null) {
			sheet.tipping(
				'unitAh',
				'capacity of the bank',
				found.bankFound / plan.nominalV,
				sheet.say`down to ${bank ?? ''}`,
				{ kind: 'charge' },
			);
		}
		const without = plan.arrayW === 0 && plan.year !== null ? sheet.say` without solar` : '';
		return sheet.answer(sheet.say`It holds${without}: never below ${lowest} through ${period}`, { because });
	}
	const wanted = [
		bank === null ? null : sheet.say`${bank} of bank`,
		array === null ? null : sheet.say`${array} of panels`,
	].filter((one) => one !== null);
	const cure =
		wanted.length === 0
			? sheet.say`no bank or array alone cures it`
			: sheet.say`it takes ${wanted.join(sheet.say` or `)}`;
	const verdict = run.unservedWh > 0 ? sheet.say`It runs empty` : sheet.say`It falls to ${lowest}`;
	return sheet.answer(sheet.say`${verdict} in ${period}: ${cure}`, { because });
}

function becauseOf(sheet: Sheet, plan: VanSimulation, run: Simulation): string {
	const daily = (energyWh: number) => showEnergy(sheet, energyWh / plan.days);
	const offered = [
		run.solarWh > 0 ? sheet.say`the sun brings ${daily(run.solarWh)}` : null,
		run.engineWh > 0 ? sheet.say`driving could bring ${daily(run.engineWh)}` : null,
		run.shoreWh > 0 ? sheet.say`shore power could bring ${daily(run.shoreWh)}` : null,
	].filter((one) => one !== null);
	const from = offered.length === 0 ? sheet.say`nothing charges the bank` : offered.join(', ');
	const when = sheet.say`Lowest ${whenText(plan, run.lowestHour, sheet.say)}.`;
	return `${sheet.say`${daily(run.demandWh)} a day asked for; ${from}.`} ${when}`;
}
