import { fromMemory, published } from '../../topic/source.js';
import { type Facts, isYes, word } from '../facts/facts.js';
import { burners, gasUsers, hasGasAlarm } from '../facts/fire.js';
import { fine, found, type Rule, unknown, unknownField, unknownKind, type Verdict } from './rule.js';

const monoxideAlarm: Rule = {
	id: 'carbon-monoxide-alarm-missing',
	system: 'climate',
	about: 'A van that burns fuel has a carbon-monoxide alarm.',
	needs: 'what burns fuel aboard, whether there is a carbon-monoxide alarm',
	clearedBy: ['co-alarm'],
	source: fromMemory('NFPA 1192', 'carbon-monoxide alarm in vehicles with fuel-burning equipment'),
	check: (facts) => {
		const fires = burners(facts);
		if (facts.has('co-alarm')) return fine;
		const asks = untoldFuels(facts);
		if (fires.length === 0) return asks;
		if (!facts.lacks('co-alarm')) {
			return [...asks, unknownKind('co-alarm', 'Is a carbon-monoxide alarm fitted where people sleep?')];
		}
		return [
			found(
				'danger',
				facts.say`Fuel burns aboard (${facts.names(fires)}) and there is no carbon-monoxide alarm: the gas kills sleepers without a smell. Fit a listed alarm for vehicles at sleeping height before the first night.`,
				fires,
			),
		];
	},
};

/** Whether these burn anything was not told. */
function untoldFuels(facts: Facts): readonly Verdict[] {
	return ['cooktop', 'heater', 'water-heater'].flatMap((kind) =>
		facts
			.pieces(kind)
			.filter((piece) => word(piece, 'fuel') === undefined)
			.map(() => unknownField(kind, 'fuel')),
	);
}

const gasAlarm: Rule = {
	id: 'gas-alarm-missing',
	system: 'climate',
	about: 'A van with fuel gas has a gas alarm low down.',
	needs: 'gas aboard, whether there is a gas alarm',
	clearedBy: ['gas-alarm', 'co-alarm'],
	source: fromMemory('NFPA 1192', 'propane leak alarm'),
	check: (facts) => {
		const users = gasUsers(facts);
		if (users.length === 0 || hasGasAlarm(facts)) return fine;
		if (!facts.lacks('gas-alarm')) return [unknownKind('gas-alarm', 'Is a gas alarm fitted near the floor?')];
		return [
			found(
				'danger',
				facts.say`Fuel gas is aboard (${facts.names(users)}) and there is no gas alarm: propane and butane sink and gather on the floor until a spark finds them. Fit one near the floor.`,
				users,
			),
		];
	},
};

const bottleInside: Rule = {
	id: 'gas-bottle-inside',
	system: 'climate',
	about: 'Gas bottles stand outside or in a locker sealed from the inside and vented low to the outside.',
	needs: 'where the gas bottles stand',
	clearedBy: [],
	source: published(
		'EN 1949',
		'gas bottle compartments, sealed from the living area and vented at floor level',
	),
	check: (facts) =>
		facts.pieces('propane').flatMap((piece): readonly Verdict[] => {
			const place = word(piece, 'place');
			if (place === 'locker' || place === 'outside' || isYes(piece, 'sealed')) {
				return piece.values.sealed === false ? [leak(piece)] : fine;
			}
			if (place === 'inside' || piece.values.sealed === false) return [leak(piece)];
			return [unknownField('propane', 'place')];
			function leak(bottle: typeof piece): Verdict {
				return found(
					'danger',
					facts.say`The gas bottle stands in the living space without a sealed locker: a leak gathers there and explodes. Put it in a locker sealed from the inside with a vent of at least ${facts.show('area', 0.01, { unit: 'cm²', decimals: 0 })} in its floor, or outside.`,
					[bottle],
				);
			}
		}),
};

const unventedHeater: Rule = {
	id: 'unvented-heater',
	system: 'climate',
	about: 'No heater burns fuel into the living space.',
	needs: 'whether the heater has a flue',
	clearedBy: [],
	source: fromMemory('NFPA 1192', 'heaters vented to the outside, combustion air from the outside'),
	check: (facts) =>
		facts.pieces('heater').flatMap((piece): readonly Verdict[] => {
			const fuel = word(piece, 'fuel');
			if (fuel === 'electric') return fine;
			if (isYes(piece, 'unvented')) {
				return [
					found(
						'danger',
						facts.say`The heater burns into the living space: it gives off carbon monoxide and water and takes the oxygen. Never sleep with it on; take a heater with sealed combustion, air and exhaust outside.`,
						[piece],
					),
				];
			}
			if (fuel === 'propane' && piece.values.unvented === undefined) {
				return [
					unknown(
						'heater.unvented',
						'Does the gas heater take its air from outside and send its exhaust outside?',
					),
				];
			}
			return fine;
		}),
};

const cookingAir: Rule = {
	id: 'cooking-without-ventilation',
	system: 'climate',
	about: 'Cooking on a flame has air: a roof fan or an opening window.',
	needs: 'gas cooktop, roof fan or windows',
	clearedBy: ['fan', 'windows'],
	source: fromMemory('EN 721', 'fixed ventilation of habitations with gas appliances'),
	check: (facts) => {
		const flames = facts
			.pieces('cooktop')
			.filter((piece) => !['induction', undefined].includes(word(piece, 'fuel')));
		if (flames.length === 0 || facts.has('fan', 'windows')) return fine;
		if (!facts.lacks('fan'))
			return [unknownKind('fan', 'Is there a roof fan or a window that opens by the cooktop?')];
		return [
			found(
				'warning',
				facts.say`The cooktop burns with nothing to carry its air out: the flame takes oxygen and gives off carbon monoxide and water. Fit a roof fan and a fixed low opening of at least ${facts.show('area', 0.01, { unit: 'cm²', decimals: 0 })}.`,
				flames,
			),
		];
	},
};

const smokeAlarm: Rule = {
	id: 'smoke-alarm-missing',
	system: 'climate',
	about: 'A van to sleep in has a smoke alarm.',
	needs: 'whether there is a smoke alarm',
	clearedBy: ['smoke-alarm', 'co-alarm'],
	source: fromMemory('NFPA 1192', 'smoke alarm in sleeping areas'),
	check: (facts) => {
		const isSlept = facts.has('bed', 'people', 'battery');
		const both = facts.pieces('co-alarm').some((piece) => isYes(piece, 'smoke'));
		if (!isSlept || facts.has('smoke-alarm') || both) return fine;
		if (!facts.lacks('smoke-alarm')) return [unknownKind('smoke-alarm', 'Is a smoke alarm fitted?')];
		return [
			found(
				'warning',
				facts.say`There is no smoke alarm: fit one on the ceiling of the sleeping area.`,
				facts.pieces('bed', 'people', 'battery'),
			),
		];
	},
};

const extinguisher: Rule = {
	id: 'fire-extinguisher-missing',
	system: 'climate',
	about: 'A fire extinguisher is at hand.',
	needs: 'whether there is a fire extinguisher',
	clearedBy: ['extinguisher'],
	source: fromMemory('NFPA 1192', 'fire extinguisher near the main exit'),
	check: (facts) => {
		if (!facts.has('bed', 'people', 'battery') || facts.has('extinguisher')) return fine;
		if (!facts.lacks('extinguisher'))
			return [unknownKind('extinguisher', 'Is there a fire extinguisher by the door?')];
		return [
			found(
				'warning',
				facts.say`There is no fire extinguisher: keep one within reach of the door.`,
				facts.pieces('bed', 'people', 'battery'),
			),
		];
	},
};

export const fireRules: readonly Rule[] = [
	monoxideAlarm,
	gasAlarm,
	bottleInside,
	unventedHeater,
	cookingAir,
	smokeAlarm,
	extinguisher,
];
