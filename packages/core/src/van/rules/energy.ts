import { coldShare } from '../../energy/bank.js';
import { energyWrite } from '../../energy/show.js';
import { practice, published } from '../../topic/source.js';
import { type BankFacts, bankOf, knownBank } from '../facts/bank.js';
import { budgetOf, inverterUseOf } from '../facts/budget.js';
import { arrayW, sourcesOf } from '../facts/charging.js';
import { defined, designLowC, isForWinter, isSummerOnly, placeOf } from '../facts/climate.js';
import { type Facts, isNo, isYes, num, resultOf, word } from '../facts/facts.js';
import { dailyLoads, loadsAboard } from '../facts/loads.js';
import { labelOf } from '../van.js';
import { fine, found, type Rule, unknownField, type Verdict } from './rule.js';

const energy = (facts: Facts, value: number, round: 'up' | 'down' = 'up') =>
	facts.show('energy', value, energyWrite(value, round));

/** Capacity of the known bank's class that gives so much [Ah], in words. */
function bankFor(facts: Facts, known: BankFacts, needWh: number): string {
	const neededAh = (needWh / known.usableWh) * (known.fullWh / known.nominalV);
	return facts.show('charge', neededAh, { round: 'up' });
}

const bankBelowDay: Rule = {
	id: 'bank-below-budget',
	system: 'energy',
	about: 'The bank carries a day of the loads aboard.',
	needs: 'bank, loads',
	clearedBy: ['battery'],
	source: published('IEEE 485', 'capacity by the sum of the loads; depth of discharge is practice'),
	check: (facts) => {
		const budget = budgetOf(facts);
		const known = bankOf(facts);
		if (known.is === 'unknown') return [unknownField('battery', 'unitAh')];
		if (known.is !== 'known' || budget === null || budget.totalWh <= known.bank.usableWh) return fine;
		const { bank } = known;
		return [
			found(
				'warning',
				facts.say`A day takes ${energy(facts, budget.totalWh)} and the bank gives ${energy(facts, bank.usableWh, 'down')} from full: ${bankFor(facts, bank, budget.totalWh)} at ${bank.bank.classV} V would carry it.`,
				[bank.piece, ...dailyLoads(facts).map(({ piece }) => piece)],
			),
		];
	},
};

const autonomy: Rule = {
	id: 'autonomy-short',
	system: 'energy',
	about: 'The bank and what charges it on the way last for the days off grid that are wanted.',
	needs: 'days off grid, bank, loads; panels and place, driving',
	clearedBy: ['battery', 'solar', 'dcdc'],
	source: practice('balance of a mean day'),
	check: (facts) => {
		const trip = facts.first('trip');
		const offGridH = trip === null ? undefined : num(trip, 'offGridH');
		const budget = budgetOf(facts);
		const known = knownBank(facts);
		if (trip === null || offGridH === undefined || budget === null || known === null) return fine;
		const days = offGridH / 24;
		const gains = dailyGains(facts, known);
		if (gains === null) return [unknownField('place', 'place')];
		const drawn = days * (budget.totalWh - gains);
		if (drawn <= known.usableWh) return fine;
		const lasts = Math.floor((10 * known.usableWh) / (budget.totalWh - gains)) / 10;
		return [
			found(
				'warning',
				facts.say`The bank lasts ${lasts} days of the ${Math.round(days * 10) / 10} wanted off grid: a day takes ${energy(facts, budget.totalWh)} and gains ${energy(facts, gains, 'down')}. ${bankFor(facts, known, drawn)} at ${known.bank.classV} V would do.`,
				[trip, known.piece],
			),
		];
	},
};

/** What sun and driving give a day [Wh]; null where panels are aboard and the place is not known. */
function dailyGains(facts: Facts, known: BankFacts): number | null {
	const powerW = arrayW(facts);
	const trip = facts.first('trip');
	const driveH = trip === null ? 0 : (num(trip, 'driveH') ?? 0);
	const drivenA = sourcesOf(facts)
		.filter(({ way }) => way === 'drive')
		.reduce((sum, { currentA }) => sum + (currentA ?? 0), 0);
	const drivenWh = driveH * drivenA * known.nominalV;
	if (powerW === null) return drivenWh;
	const place = facts.first('place');
	const said = place === null ? undefined : word(place, 'place');
	if (place === null || said === undefined || placeOf(facts) === null) return null;
	const month = num(place, 'month') ?? (isForWinter(facts) ? 12 : isSummerOnly(facts) ? 7 : undefined);
	const outcome = facts.run('solar', defined({ place: said, arrayW: powerW, month }));
	return drivenWh + (resultOf(outcome, month === undefined ? 'worstMonthEnergyPerDay' : 'energyPerDay') ?? 0);
}

/** Hours of a winter night that heater and pad run [h] (practice). */
const nightH = 14;

const winterNight: Rule = {
	id: 'winter-night-drains-bank',
	system: 'energy',
	about: 'Heater fan, heating pads and what runs at night leave the bank something on a winter night.',
	needs: 'bank, heater, heating pads, place',
	clearedBy: ['battery'],
	source: practice('14 h of night; pads on half of it, the heater all of it'),
	check: (facts) => {
		const known = knownBank(facts);
		if (known === null || isSummerOnly(facts)) return fine;
		const night = loadsAboard(facts).loads.filter(
			({ piece, load }) => ['heater', 'heating-pad', 'fridge', 'freezer'].includes(piece.kind) && !load.mains,
		);
		const warming = night.filter(({ piece }) => piece.kind === 'heater' || piece.kind === 'heating-pad');
		if (warming.length === 0) return fine;
		const drawnWh = night.reduce((sum, { load }) => sum + load.runningW * load.duty * nightH, 0);
		const lowC = designLowC(facts);
		const cellC = lowC === null ? 0 : Math.max(lowC, known.piece.values.outside === true ? lowC : 5);
		const share = coldShare(known.bank.chemistry, cellC)?.share ?? 0.5;
		const leftWh = known.usableWh * share;
		if (drawnWh <= 0.5 * leftWh) return fine;
		const isOver = drawnWh > leftWh;
		const names = night.map(({ load }) => load.shown).join(', ');
		return [
			found(
				isOver ? 'warning' : 'note',
				facts.say`On a winter night of ${nightH} h ${names} take ${energy(facts, drawnWh)} of the ${energy(facts, leftWh, 'down')} a cold bank gives: when it is empty the heat goes off and water freezes. ${bankFor(facts, known, (2 * drawnWh) / share)} would leave half.`,
				[known.piece, ...night.map(({ piece }) => piece)],
			),
		];
	},
};

const waterHeaterLeftOn: Rule = {
	id: 'water-heater-left-on',
	system: 'energy',
	about: 'An electric water heater left on does not empty the bank.',
	needs: 'bank, inverter, volume of the water heater',
	clearedBy: ['battery'],
	source: practice('standing loss of a small heater and the idle draw of the inverter'),
	check: (facts) => {
		const known = knownBank(facts);
		const heaters = facts
			.pieces('water-heater')
			.filter(
				(piece) => (word(piece, 'fuel') ?? 'electric') === 'electric' && word(piece, 'onBank') !== 'mains',
			);
		if (known === null || !facts.has('inverter')) return fine;
		return heaters.flatMap((piece): readonly Verdict[] => {
			if (isNo(piece, 'leftOn')) return fine;
			const isTold = word(piece, 'fuel') === 'electric';
			if (!isTold) return [unknownField('water-heater', 'fuel')];
			const outcome = facts.run(
				'hot-water',
				defined({
					volumeL: num(piece, 'volumeL') ?? 15,
					powerW: num(piece, 'powerW'),
					supply: 'inverter',
					hotC: num(piece, 'hotC'),
					bankAh: known.fullWh / known.nominalV,
					bankV: known.nominalV,
					depth: known.bank.chemistry.depthOfDischarge,
				}),
			);
			const share = resultOf(outcome, 'dayShare');
			if (share === null) return fine;
			if (share < 0.3) return fine;
			const percent = Math.round(share * 100);
			const volume = facts.show('volume', num(piece, 'volumeL') ?? 15);
			return [
				found(
					isYes(piece, 'leftOn') || share > 0.8 ? 'warning' : 'note',
					facts.say`The ${volume} water heater left on for a day takes ${percent} % of what the bank gives. Put it on a timer of two hours, or run it on shore power only.`,
					[known.piece, piece],
				),
			];
		});
	},
};

const airConditionerOnBank: Rule = {
	id: 'air-conditioner-on-bank',
	system: 'energy',
	about: 'The bank carries the air conditioner for the hours it is wanted.',
	needs: 'bank, draw of the air conditioner',
	clearedBy: ['battery'],
	source: practice('a unit that runs at its duty'),
	check: (facts) => {
		const known = knownBank(facts);
		if (known === null) return fine;
		return loadsAboard(facts)
			.loads.filter(
				({ piece, load }) => piece.kind === 'air-conditioner' && (!load.mains || facts.has('inverter')),
			)
			.map(({ piece, load }) => {
				const { efficiency } = inverterUseOf(facts);
				const drawW = load.mains ? load.runningW / efficiency : load.runningW;
				const hours = Math.floor((10 * known.usableWh) / drawW) / 10;
				const wanted = num(piece, 'durationH');
				const isShort = hours < (wanted ?? 3);
				const needed = bankFor(facts, known, drawW * (wanted ?? 8) * (wanted === undefined ? load.duty : 1));
				return found(
					isShort ? 'warning' : 'note',
					facts.say`The ${load.shown} at ${facts.show('power', load.runningW)} runs ${hours} h from a full bank with nothing else on. For ${wanted ?? 8} h it takes ${needed} at ${known.bank.classV} V, or shore power.`,
					[known.piece, piece],
				);
			});
	},
};

const electricHeatOnBank: Rule = {
	id: 'electric-heat-on-bank',
	system: 'energy',
	about: 'Electric heat is not run from the bank.',
	needs: 'bank, inverter, electric heater',
	clearedBy: [],
	source: practice('a night of electric heat takes more than any van bank'),
	check: (facts) => {
		const known = knownBank(facts);
		if (known === null || !facts.has('inverter')) return fine;
		return loadsAboard(facts)
			.loads.filter(({ piece, load }) => piece.kind === 'heater' && load.mains)
			.map(({ piece, load }) => {
				const hours =
					Math.floor((10 * known.usableWh * inverterUseOf(facts).efficiency) / load.runningW) / 10;
				return found(
					'warning',
					facts.say`The ${labelOf(piece)} of ${facts.show('power', load.runningW)} empties the bank in ${hours} h: keep electric heat for shore power and heat with fuel on the road.`,
					[known.piece, piece],
				);
			});
	},
};

const peakCurrent: Rule = {
	id: 'everything-on-over-protection',
	system: 'energy',
	about: "All direct-current loads and the inverter together stay within the batteries' own protection.",
	needs: 'bank, its protection, loads, inverter',
	clearedBy: ['battery'],
	source: practice('direct-current loads run while the inverter does'),
	check: (facts) => {
		const known = knownBank(facts);
		const inverter = facts.first('inverter');
		const ratedW = inverter === null ? undefined : num(inverter, 'ratedW');
		if (known === null || inverter === null || ratedW === undefined || !known.discharge.given) return fine;
		const inverterA = ratedW / (known.nominalV * inverterUseOf(facts).efficiency);
		const direct = loadsAboard(facts).loads.filter(({ load }) => !load.mains);
		const directA = direct.reduce((sum, { load }) => sum + load.runningW, 0) / known.nominalV;
		const { limitA } = known.discharge;
		// The inverter alone over the limit is another rule's.
		if (inverterA > limitA || inverterA + directA <= limitA) return fine;
		const all = facts.show('current', inverterA + directA, { round: 'up', decimals: 0 });
		return [
			found(
				'note',
				facts.say`The inverter at full power and all 12 V loads together draw ${all}; the batteries' own protection allows ${facts.show('current', limitA, { round: 'down', decimals: 0 })}. Leave the inverter at ${facts.show('power', (limitA - directA) * known.nominalV * inverterUseOf(facts).efficiency, { round: 'down' })} or less.`,
				[known.piece, inverter],
			),
		];
	},
};

export const energyRules: readonly Rule[] = [
	bankBelowDay,
	autonomy,
	winterNight,
	waterHeaterLeftOn,
	airConditionerOnBank,
	electricHeatOnBank,
	peakCurrent,
];
