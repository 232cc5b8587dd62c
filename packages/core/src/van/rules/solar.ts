import { energyWrite } from '../../energy/show.js';
import { type Wheelbase, wheelbases } from '../../tables/interiors.js';
import type { Severity } from '../../topic/sizing.js';
import { fromMemory, practice, published, type Source } from '../../topic/source.js';
import { knownBank } from '../facts/bank.js';
import { budgetOf } from '../facts/budget.js';
import { arrayW, isChargedByAlternator } from '../facts/charging.js';
import { defined, isForWinter, isSummerOnly, lowestC, placeOf } from '../facts/climate.js';
import { countOf, type Facts, findingOf, num, resultOf, word } from '../facts/facts.js';
import { labelOf, type Piece } from '../van.js';
import { fine, found, type Rule, unknown, unknownField, type Verdict } from './rule.js';

/** Panels that are wired to the roof's controller. */
function fixedArrays(facts: Facts): readonly Piece[] {
	return facts.pieces('solar').filter((piece) => piece.values.portable !== true);
}

/** How many are in series, as told; null where a number of panels leaves it open. */
function seriesOf(piece: Piece): number | null {
	const panels = countOf(piece);
	if (panels === 1) return 1;
	const told = num(piece, 'series');
	if (told !== undefined) return told;
	const wiring = word(piece, 'wiring');
	return wiring === undefined ? null : wiring === 'series' ? panels : 1;
}

/** The controller that bears least: which array goes to which was not told. */
function weakestController(facts: Facts): Piece | null {
	const rated = facts.pieces('solar-controller').filter((piece) => num(piece, 'controllerV') !== undefined);
	return rated.toSorted((a, b) => (num(a, 'controllerV') ?? 0) - (num(b, 'controllerV') ?? 0))[0] ?? null;
}

/** The array topic on one array and a controller; typical modules stand in for labels that were not read. */
function arrayOutcome(facts: Facts, piece: Piece, series: number, controller: Piece | null) {
	const panels = countOf(piece);
	const known = knownBank(facts);
	return facts.run(
		'array',
		defined({
			panels,
			series,
			parallel: Math.max(1, Math.floor(panels / series)),
			panelW: num(piece, 'panelW'),
			vocV: num(piece, 'vocV'),
			iscA: num(piece, 'iscA'),
			vocPerK: num(piece, 'vocPerK'),
			glued: piece.values.glued === true ? true : undefined,
			controllerV: controller === null ? undefined : num(controller, 'controllerV'),
			controllerA: controller === null ? undefined : num(controller, 'controllerA'),
			controller: controller === null ? undefined : word(controller, 'type'),
			bankV: known?.bank.classV,
			lowC: Math.max(-60, Math.min(25, lowestC(facts) ?? 0)),
		}),
	);
}

const stringInTheCold: Rule = {
	id: 'string-over-controller',
	system: 'energy',
	about: 'In the cold the string stays below the largest input voltage of its controller.',
	needs: "panels in series, their open-circuit voltage, the controller's largest voltage, the coldest place",
	clearedBy: [],
	source: published('NFPA 70 (NEC)', 'Table 690.7(A): voltage correction for cold'),
	check: (facts) => {
		const arrays = fixedArrays(facts).filter(
			(piece) => num(piece, 'panelW') !== undefined || num(piece, 'vocV') !== undefined,
		);
		if (arrays.length === 0 || !facts.has('solar-controller')) return fine;
		const controller = weakestController(facts);
		if (controller === null) return [unknownField('solar-controller', 'controllerV')];
		return arrays.flatMap((piece): readonly Verdict[] => {
			const series = seriesOf(piece);
			if (series === null) {
				return [unknown('solar.series', 'How are the solar panels joined: how many in series?')];
			}
			// Even at 0 °C, which every place sees, a string may be over.
			const asks = lowestC(facts) === null && !isSummerOnly(facts) ? [unknownField('place', 'place')] : [];
			const labelRead = num(piece, 'vocV') !== undefined;
			const ask = labelRead ? asks : [...asks, unknownField('solar', 'vocV')];
			const finding = findingOf(arrayOutcome(facts, piece, series, controller), 'string-over-controller');
			if (finding === null) return ask;
			const by = labelRead ? '' : facts.say` (voltage typical of such panels: read the label)`;
			return [found(labelRead ? 'danger' : 'warning', `${finding.text}${by}`, [piece, controller]), ...ask];
		});
	},
};

/** Findings of the array topic that a whole van passes on. */
function passedOn(id: string, severity: Severity, about: string, source: Source): Rule {
	return {
		id,
		system: 'energy',
		about,
		needs: 'panels, how they are joined, the controller',
		clearedBy: ['solar-controller'],
		source,
		check: (facts) =>
			fixedArrays(facts).flatMap((piece): readonly Verdict[] => {
				const controllers = facts.pieces('solar-controller');
				const [controller] = controllers;
				// Several controllers share the arrays in a way nobody told.
				if (num(piece, 'panelW') === undefined || controllers.length > 1) return fine;
				const series = seriesOf(piece);
				const isOfStrings = id === 'string-fuses-needed';
				if (isOfStrings && (series === null || num(piece, 'fuseA') !== undefined)) return fine;
				const finding = findingOf(arrayOutcome(facts, piece, series ?? 1, controller ?? null), id);
				if (finding === null) return fine;
				return [found(severity, finding.text, controller === undefined ? [piece] : [piece, controller])];
			}),
	};
}

const controllerOverloaded = passedOn(
	'controller-overloaded',
	'danger',
	'A PWM controller bears all the current of the array.',
	practice('a PWM controller does not limit its current'),
);
const controllerLimits = passedOn(
	'controller-limits',
	'note',
	'An MPPT controller can pass what the array gives.',
	practice('an MPPT controller limits its output'),
);
const pwmWastes = passedOn(
	'pwm-wastes',
	'warning',
	'Panels on a PWM controller have the voltage class of the bank.',
	practice('PWM pulls the string down to the battery'),
);
const stringFuses = passedOn(
	'string-fuses-needed',
	'warning',
	'Three and more strings in parallel are fused each.',
	fromMemory('NFPA 70 (NEC)', '690.9(A): strings that others can feed'),
);

const withoutController: Rule = {
	id: 'solar-without-controller',
	system: 'energy',
	about: 'Panels charge the bank through a charge controller.',
	needs: 'panels, controller',
	clearedBy: ['solar-controller'],
	source: practice('a controller between panels and bank'),
	check: (facts) => {
		const arrays = fixedArrays(facts);
		if (arrays.length === 0 || facts.has('solar-controller')) return fine;
		if (!facts.lacks('solar-controller')) {
			return [
				unknownField('solar-controller', 'controllerA'),
				unknownField('solar-controller', 'controllerV'),
			];
		}
		return [
			found(
				'danger',
				facts.say`The panels are joined to the bank without a charge controller: they overcharge it, which can end in fire. Fit one rated for their open-circuit voltage in the cold and for their current.`,
				arrays,
			),
		];
	},
};

const belowBudget: Rule = {
	id: 'solar-below-budget',
	system: 'energy',
	about: 'In the place and month the panels give what a day takes.',
	needs: 'panels, place, loads; month or season',
	clearedBy: ['solar'],
	source: published('PVWatts-style yield on monthly mean irradiation', null),
	check: (facts) => {
		const powerW = arrayW(facts);
		const budget = budgetOf(facts);
		if (powerW === null || budget === null) return fine;
		const piece = facts.first('place');
		const said = piece === null ? undefined : word(piece, 'place');
		if (piece === null || said === undefined || placeOf(facts) === null)
			return [unknownField('place', 'place')];
		const month = num(piece, 'month') ?? (isForWinter(facts) ? 12 : isSummerOnly(facts) ? 7 : undefined);
		const outcome = facts.run('solar', defined({ place: said, arrayW: powerW, month }));
		const yieldWh = resultOf(outcome, month === undefined ? 'worstMonthEnergyPerDay' : 'energyPerDay');
		if (yieldWh === null || yieldWh >= budget.totalWh) return fine;
		const others =
			isChargedByAlternator(facts) ||
			facts.has('charger', 'generator') ||
			facts.pieces('inverter').some((one) => one.values.combi === true);
		const when = month === undefined ? facts.say`in the darkest month` : facts.say`in month ${month}`;
		const needed = facts.show('power', (powerW * budget.totalWh) / yieldWh, { round: 'up' });
		const gives = facts.show('energy', yieldWh, energyWrite(yieldWh, 'down'));
		const takes = facts.show('energy', budget.totalWh, energyWrite(budget.totalWh, 'up'));
		return [
			found(
				others ? 'note' : 'warning',
				facts.say`At ${said} ${when} the panels give ${gives} a day; the loads take ${takes}. ${needed} of panels would carry it, or driving and shore power.`,
				[...facts.pieces('solar'), piece],
			),
		];
	},
};

/** Power of rigid panels on a square metre [W/m²] (practice). */
const panelWPerM2 = 200;
/** Share of the roof that fans, air conditioner and edges leave to panels (practice). */
const freeShare = 0.75;
const roofWidthM = 1.5;

const roofTooSmall: Rule = {
	id: 'panels-larger-than-roof',
	system: 'energy',
	about: 'The panels fit on the roof of the size class beside fans and air conditioner.',
	needs: 'panels, size of the van',
	clearedBy: [],
	source: practice('200 W of rigid panels on a square metre; three quarters of the roof left to them'),
	check: (facts) => {
		const body = facts.first('van');
		const size = body === null ? undefined : word(body, 'wheelbase');
		if (size === undefined) return fine;
		const powerW = fixedArrays(facts).reduce(
			(sum, piece) => sum + (num(piece, 'panelW') ?? 0) * countOf(piece),
			0,
		);
		const areaM2 = powerW / panelWPerM2;
		const takenM2 = facts.has('air-conditioner') ? 0.9 : 0;
		const roofM2 = wheelbases[size as Wheelbase].lengthM * roofWidthM * freeShare - takenM2;
		if (areaM2 <= roofM2) return fine;
		const most = facts.show('power', roofM2 * panelWPerM2, { round: 'down' });
		return [
			found(
				'warning',
				facts.say`${facts.show('power', powerW)} of panels take some ${facts.show('area', areaM2, { decimals: 1 })} and the roof holds about ${facts.show('area', roofM2, { round: 'down', decimals: 1 })} beside what else stands there: about ${most} fit. Measure before you buy.`,
				fixedArrays(facts),
			),
		];
	},
};

const mixedVoltages: Rule = {
	id: 'controller-below-bank',
	system: 'energy',
	about: 'The string has the voltage to charge the bank in the heat.',
	needs: 'panels in series, bank voltage',
	clearedBy: [],
	source: practice('a controller needs some volts above the bank to go on'),
	check: (facts) =>
		fixedArrays(facts).flatMap((piece): readonly Verdict[] => {
			const known = knownBank(facts);
			const series = seriesOf(piece);
			if (known === null || series === null || num(piece, 'panelW') === undefined) return fine;
			if (known.bank.classV <= 12) return fine;
			const [controller] = facts.pieces('solar-controller');
			const finding = findingOf(arrayOutcome(facts, piece, series, controller ?? null), 'too-low-in-heat');
			if (finding === null) return fine;
			return [found('warning', facts.say`${labelOf(piece)}: ${finding.text}`, [piece, known.piece])];
		}),
};

export const solarRules: readonly Rule[] = [
	stringInTheCold,
	controllerOverloaded,
	controllerLimits,
	pwmWastes,
	stringFuses,
	withoutController,
	belowBudget,
	roofTooSmall,
	mixedVoltages,
];
