import { physics, practice } from '../../topic/source.js';
import { defined, designHighC, designLowC, isForWinter, isSummerOnly, shellOf } from '../facts/climate.js';
import { countOf, type Facts, findingOf, num, resultOf, word } from '../facts/facts.js';
import { labelOf } from '../van.js';
import { fine, found, type Rule, unknown, unknownField, unknownKind, type Verdict } from './rule.js';

const askSize = () =>
	unknown(
		'van.wheelbase',
		'How big is the van: short, medium, long or extra-long wheelbase, and which roof?',
	);
const askInsulation = () => unknownKind('insulation', 'What insulation has the van, and how thick is it?');

/** True where the topics of the shell have the size they need. */
function hasSize(facts: Facts): boolean {
	const shell = shellOf(facts);
	return shell.wheelbase !== undefined || shell.wheelbaseM !== undefined || shell.insideLengthM !== undefined;
}

const heatFuels: Readonly<Record<string, string>> = {
	diesel: 'diesel',
	propane: 'propane',
	gasoline: 'gasoline',
	electric: 'electric',
};

const heaterSize: Rule = {
	id: 'heater-too-small',
	system: 'climate',
	about: 'The heater makes up the heat loss of the shell at the design low of the place.',
	needs: 'heat output of the heater, size of the van, insulation, place',
	clearedBy: ['heater'],
	source: physics('heat balance of the shell'),
	check: (facts) => {
		const heaters = facts.pieces('heater');
		if (heaters.length === 0 || isSummerOnly(facts)) return fine;
		const [first] = heaters;
		const outputs = heaters.map((piece) => num(piece, 'outputW'));
		const asks: Verdict[] = [];
		if (!hasSize(facts)) asks.push(askSize());
		if (!facts.has('insulation') && !facts.lacks('insulation')) asks.push(askInsulation());
		const lowC = designLowC(facts);
		if (lowC === null) asks.push(unknownField('place', 'place'));
		if (outputs.includes(undefined))
			asks.push(unknown('heater.outputW', 'What heat output has the heater (kW)?'));
		if (asks.length > 0 || first === undefined || lowC === null) return asks;
		const heaterW = heaters.reduce((sum, piece) => sum + (num(piece, 'outputW') ?? 0) * countOf(piece), 0);
		const { people: _, ...shell } = shellOf(facts);
		const outcome = facts.run('heat', {
			...shell,
			...(facts.lacks('insulation') ? { insulationMm: 0 } : {}),
			outsideC: Math.max(-60, Math.min(30, lowC)),
			heaterW,
			fuel: heatFuels[word(first, 'fuel') ?? ''] ?? 'diesel',
			alarm: true,
		});
		const finding = findingOf(outcome, 'heater-too-small');
		return finding === null ? fine : [found('warning', finding.text, heaters)];
	},
};

const noHeat: Rule = {
	id: 'no-heat-in-winter',
	system: 'climate',
	about: 'A van for winter has a heater.',
	needs: 'season, heater',
	clearedBy: ['heater'],
	source: practice('a heater for nights below freezing'),
	check: (facts) => {
		const hasHeat =
			facts.has('heater') ||
			facts.pieces('water-heater').some((piece) => /combi|hydronic/.test(labelOf(piece)));
		if (!isForWinter(facts) || hasHeat) return fine;
		if (!facts.lacks('heater')) return [unknownKind('heater', 'What heats the van in winter?')];
		return [
			found(
				'warning',
				facts.say`The van is for winter and has no heater: water freezes and nobody stays. Ask me for the heat loss to size one.`,
				facts.pieces('trip'),
			),
		];
	},
};

const noInsulation: Rule = {
	id: 'no-insulation-in-winter',
	system: 'climate',
	about: 'A van for winter is insulated.',
	needs: 'season, insulation',
	clearedBy: ['insulation'],
	source: practice('bare sheet metal loses heat and runs with water'),
	check: (facts) => {
		if (!isForWinter(facts) || !facts.lacks('insulation')) return fine;
		return [
			found(
				'warning',
				facts.say`The van is for winter and not insulated: bare metal runs with water and loses some five times the heat. 25 mm over walls, roof and doors is what most vans get.`,
				facts.pieces('trip'),
			),
		];
	},
};

const condensation: Rule = {
	id: 'condensation',
	system: 'climate',
	about: 'On cold nights air carries off the water that people and cooking give.',
	needs: 'people, insulation, place, roof fan',
	clearedBy: ['fan'],
	source: physics('water balance and dew point'),
	check: (facts) => {
		const lowC = designLowC(facts);
		if (isSummerOnly(facts) || lowC === null || lowC > 5) return fine;
		const shell = shellOf(facts);
		if (shell.people === undefined) return fine;
		if (!facts.has('insulation') && !facts.lacks('insulation')) return [askInsulation()];
		const cooktop = facts.first('cooktop');
		const fuel = cooktop === null ? undefined : word(cooktop, 'fuel');
		const outcome = facts.run(
			'moisture',
			defined({
				outsideC: Math.max(-50, lowC),
				people: shell.people,
				insulationMm: facts.lacks('insulation') ? 0 : shell.insulationMm,
				material: shell.material,
				windowKind: shell.windowKind,
				covers: shell.covers,
				stove: cooktop === null ? 'none' : fuel === 'induction' ? 'electric' : 'gas',
			}),
		);
		const neededM3H = resultOf(outcome, 'airflow');
		if (neededM3H === null || !Number.isFinite(neededM3H)) return fine;
		const needed = facts.show('airflow', neededM3H, { round: 'up' });
		const fans = facts.pieces('fan');
		if (fans.length > 0) {
			return [
				found(
					'note',
					facts.say`On a cold night the fan must move at least ${needed} to keep the shell dry; run it low with an opening for the air to come in.`,
					fans,
				),
			];
		}
		if (!facts.lacks('fan')) return [unknownKind('fan', 'Is there a roof fan?')];
		return [
			found(
				'warning',
				facts.say`On a cold night it takes ${needed} of air to keep the shell dry and there is no fan: water runs down behind the panels. Fit a roof fan.`,
				facts.pieces('people', 'insulation'),
			),
		];
	},
};

const airConditionerSize: Rule = {
	id: 'air-conditioner-too-small',
	system: 'climate',
	about: 'The air conditioner carries off the heat of the hottest hours.',
	needs: 'its cooling power, size of the van, place',
	clearedBy: ['air-conditioner'],
	source: physics('heat balance of the shell in the sun'),
	check: (facts) =>
		facts.pieces('air-conditioner').flatMap((piece): readonly Verdict[] => {
			const coolingW = num(piece, 'coolingW');
			if (coolingW === undefined) {
				return [unknown('air-conditioner.coolingW', 'What cooling has the air conditioner (Btu/h)?')];
			}
			if (!hasSize(facts)) return [askSize()];
			const highC = designHighC(facts);
			if (highC === null) return [unknownField('place', 'place')];
			if (highC < 27) return fine;
			const outcome = facts.run('cool', {
				...shellOf(facts),
				outsideC: Math.max(10, Math.min(55, highC)),
				unitW: Math.max(200, coolingW * countOf(piece)),
			});
			const finding = findingOf(outcome, 'unit-too-small');
			return finding === null ? fine : [found('warning', finding.text, [piece])];
		}),
};

const heatLossOfSingleGlass: Rule = {
	id: 'single-glass-in-winter',
	system: 'climate',
	about: 'In a van for winter the windows are double or covered.',
	needs: 'season, windows',
	clearedBy: [],
	source: practice('covers over single glass'),
	check: (facts) => {
		const bare = facts
			.pieces('windows')
			.filter((piece) => word(piece, 'windowKind') === 'single' && piece.values.covers !== true);
		if (!isForWinter(facts) || bare.length === 0) return fine;
		return [
			found(
				'note',
				facts.say`Single glass is the coldest part of a winter van and runs with water: insulated covers cut its loss to about a third.`,
				bare,
			),
		];
	},
};

export const climateRules: readonly Rule[] = [
	heaterSize,
	noHeat,
	noInsulation,
	condensation,
	airConditionerSize,
	heatLossOfSingleGlass,
];
