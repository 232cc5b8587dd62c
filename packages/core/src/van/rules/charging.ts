import {
	converterInputA,
	headroom,
	hotIdleShare,
	inputVoltageV,
	steadyShare,
	usualConverterEfficiency,
	usualVehicleLoadA,
} from '../../energy/alternator.js';
import { chargingVoltageV } from '../../energy/bank.js';
import { fromMemory, practice, published } from '../../topic/source.js';
import { bankOf, knownBank, toldChemistry } from '../facts/bank.js';
import { arrayW, type Source as ChargeSource, sourcesOf } from '../facts/charging.js';
import { isForWinter, lowestC } from '../facts/climate.js';
import { type Facts, isNo, isYes, num, word } from '../facts/facts.js';
import { labelOf } from '../van.js';
import { fine, found, type Rule, unknown, unknownField, unknownKind } from './rule.js';

const amps = (facts: Facts, currentA: number, round: 'up' | 'down' = 'up') =>
	facts.show('current', currentA, { round, decimals: 0 });

const bankCannotBeBuilt: Rule = {
	id: 'bank-cannot-be-built',
	system: 'energy',
	about: 'The batteries named can be joined to the voltage named.',
	needs: 'number and voltage of the batteries, bank voltage',
	clearedBy: [],
	source: practice('equal batteries in whole strings'),
	check: (facts) => {
		const known = bankOf(facts);
		if (known.is === 'unknown') return [unknownField('battery', 'unitAh')];
		if (known.is !== 'wrong') return fine;
		return [found('warning', `${known.refusal.text} ${known.refusal.instead}`, [known.piece])];
	},
};

const chargersTogether: Rule = {
	id: 'charge-over-limit',
	system: 'energy',
	about: 'All chargers that may run at once stay within what the bank may be charged with.',
	needs: 'bank, its charge limit, the current of every charger, the size of the array',
	// A smaller controller lets less of the sun through.
	clearedBy: ['battery', 'solar-controller'],
	source: practice("the maker's charge limit; the usual rate of the chemistry where none was told"),
	check: (facts) => {
		const known = knownBank(facts);
		const sources = sourcesOf(facts);
		if (known === null || sources.length === 0) return fine;
		const untold = sources
			.filter(({ currentA }) => currentA === null)
			.flatMap(({ piece }) => questionOf(piece.kind));
		const told = sources.filter((one): one is ChargeSource & { currentA: number } => one.currentA !== null);
		const sumOf = (way: ChargeSource['way']) =>
			told.filter((one) => one.way === way).reduce((sum, { currentA }) => sum + currentA, 0);
		const atOnceA = Math.max(sumOf('shore'), sumOf('drive')) + sumOf('sun');
		const allA = sumOf('shore') + sumOf('drive') + sumOf('sun');
		const { limitA, given } = known.charge;
		const askLimit = given ? [] : [unknownField('battery', 'chargeLimitA')];
		if (allA <= limitA) return [...untold, ...askLimit];
		const isDanger = given ? atOnceA > limitA : atOnceA > 2 * limitA;
		const parts = told.map(({ piece, currentA }) => `${labelOf(piece)} ${amps(facts, currentA)}`).join(', ');
		const most = amps(facts, limitA, 'down');
		const limit = given
			? facts.say`the ${most} it may be charged with`
			: facts.say`the usual ${most} for this bank`;
		const text = facts.say`The chargers together give ${amps(facts, allA)} (${parts}), over ${limit}: set them to ${most} together, or add batteries.`;
		const rests = [known.piece, ...told.map(({ piece }) => piece)];
		return [found(isDanger ? 'danger' : 'warning', text, rests), ...untold, ...askLimit];
	},
};

function questionOf(kind: string) {
	if (kind === 'charger' || kind === 'dcdc') return [unknownField(kind, 'chargeA')];
	if (kind === 'solar') return [unknownField('solar', 'panelW')];
	return [unknown('inverter.chargerA', 'What current does the charger in the inverter give?')];
}

const askChemistry = () =>
	unknown(
		'battery.chemistry',
		'Which chemistry has the bank: lithium iron phosphate, AGM, gel, flooded lead-acid?',
	);

const chargeInTheCold: Rule = {
	id: 'lithium-charge-below-freezing',
	system: 'energy',
	about: 'A lithium bank that meets frost is heated, or stops every charger below 0 °C.',
	needs: 'chemistry, the lowest temperature, whether the battery is heated or stops charging in the cold',
	clearedBy: ['place'],
	source: published('LiFePO4 cell specification', 'charge 0 to 60 °C'),
	check: (facts) => {
		const piece = facts.first('battery');
		const chemistry = toldChemistry(facts);
		if (piece === null || chemistry === undefined || chemistry?.leadAcid === true) return fine;
		if (isYes(piece, 'coldCutOff') || isYes(piece, 'heated')) return fine;
		const lowC = lowestC(facts) ?? (isForWinter(facts) ? -1 : null);
		if (lowC !== null && lowC >= 0) return fine;
		if (chemistry === null) return [askChemistry()];
		const isDenied = isNo(piece, 'coldCutOff') || isNo(piece, 'heated');
		if (isDenied && lowC !== null) {
			const low = facts.show('temperature', lowC);
			const least = facts.show('temperature', chemistry.chargeMinC);
			const where = isYes(piece, 'outside') ? facts.say`outside the heated space ` : '';
			return [
				found(
					'danger',
					facts.say`The lithium bank ${where}may see ${low} and nothing stops its charging below ${least}: lithium plates in the cells, which ruins them and can start a fire. Take batteries with a low-temperature cut-off or a heater, or stop every charger by a cold switch.`,
					[piece],
				),
			];
		}
		if (lowC === null && isDenied) return [unknownField('place', 'place')];
		return [
			unknown(
				'battery.coldCutOff',
				'Does the battery stop charging below freezing by itself, or is it heated?',
			),
			...(lowC === null ? [unknownField('place', 'place')] : []),
		];
	},
};

const withoutIsolation: Rule = {
	id: 'alternator-without-isolation',
	system: 'energy',
	about: 'The house bank is not tied straight to the alternator and the starter battery.',
	needs: 'how the bank is joined to the alternator, chemistry',
	clearedBy: ['dcdc', 'isolator'],
	source: practice('a relay or a DC-DC charger between starter battery and house bank'),
	check: (facts) => {
		const alternator = facts.first('alternator');
		if (alternator === null || facts.has('dcdc', 'isolator')) return fine;
		if (word(alternator, 'link') !== 'direct') return fine;
		const battery = facts.first('battery');
		const chemistry = toldChemistry(facts);
		if (battery === null || chemistry == null) return [askChemistry()];
		const rests = [alternator, battery];
		if (chemistry.leadAcid) {
			return [
				found(
					'warning',
					facts.say`The bank is tied straight to the alternator: the house loads drain the starter battery. Put a relay or a DC-DC charger between them, fused at both ends.`,
					rests,
				),
			];
		}
		return [
			found(
				'danger',
				facts.say`A lithium bank tied straight to the alternator takes all it can give: the alternator overheats and can burn, and the starter battery is drained with it. Put a DC-DC charger between them, fused at both ends.`,
				rests,
			),
		];
	},
};

const relayToLithium: Rule = {
	id: 'relay-to-lithium',
	system: 'energy',
	about: 'A lithium bank is charged from the alternator through a DC-DC charger, not a relay.',
	needs: 'chemistry, what joins bank and alternator',
	clearedBy: ['dcdc'],
	source: practice('a lithium bank behind a relay takes all the alternator can give'),
	check: (facts) => {
		const relay = facts.first('isolator');
		const battery = facts.first('battery');
		const chemistry = toldChemistry(facts);
		if (relay === null || battery === null || facts.has('dcdc')) return fine;
		if (chemistry == null) return [askChemistry()];
		if (chemistry.leadAcid) return fine;
		return [
			found(
				'danger',
				facts.say`A relay between alternator and a lithium bank sets no limit to the current: the alternator overheats and can burn. Charge through a DC-DC charger sized to the alternator.`,
				[relay, battery],
			),
		];
	},
};

const overAlternator: Rule = {
	id: 'dcdc-over-alternator',
	system: 'energy',
	about: 'The DC-DC chargers take no more than the alternator can spare, driving and at hot idle.',
	needs: 'alternator rating, current of the DC-DC chargers, bank voltage',
	clearedBy: [],
	source: fromMemory(
		'FAA AC 43.13-1B',
		'chapter 11: continuous load at most 80 % of the rating; half of it at hot idle (practice)',
	),
	check: (facts) => {
		const converters = sourcesOf(facts).filter(({ way, currentA }) => way === 'drive' && currentA !== null);
		const known = knownBank(facts);
		if (converters.length === 0 || known === null) return fine;
		const alternator = facts.first('alternator');
		const ratedA = alternator === null ? undefined : num(alternator, 'ratingA');
		if (alternator === null || ratedA === undefined) return [unknownField('alternator', 'ratingA')];
		const outputA = converters.reduce((sum, { currentA }) => sum + (currentA ?? 0), 0);
		const converter = {
			outputV: chargingVoltageV(known.bank.chemistry, known.bank.classV),
			inputV: inputVoltageV,
			efficiency: usualConverterEfficiency,
		};
		const inputA = converterInputA(outputA, converter);
		const vehicleA = usualVehicleLoadA(ratedA);
		const spare = headroom(ratedA, vehicleA, hotIdleShare);
		const rests = [alternator, ...converters.map(({ piece }) => piece)];
		const takes = facts.say`The DC-DC charging of ${amps(facts, outputA)} takes ${amps(facts, inputA)} from the ${amps(facts, ratedA)} alternator; the vehicle itself takes some ${amps(facts, vehicleA)}`;
		const inputShare = (limitA: number) =>
			amps(facts, (limitA * converter.inputV * converter.efficiency) / converter.outputV, 'down');
		if (inputA + vehicleA > ratedA) {
			return [
				found(
					'danger',
					facts.say`${takes}: more than it is rated for. It overheats; charge with at most ${inputShare(spare.drivingA)}.`,
					rests,
				),
			];
		}
		if (inputA > spare.drivingA) {
			const share = Math.round(steadyShare * 100);
			return [
				found(
					'warning',
					facts.say`${takes}: over ${share} % of its rating for long. Charge with at most ${inputShare(spare.drivingA)}.`,
					rests,
				),
			];
		}
		if (inputA > spare.idlingA) {
			return [
				found(
					'note',
					facts.say`${takes}: at hot idle it gives about half its rating and can spare ${inputShare(spare.idlingA)} of charging. Stop charging at idle, or set the charger to that.`,
					rests,
				),
			];
		}
		return fine;
	},
};

const leadAcidUnvented: Rule = {
	id: 'lead-acid-unvented',
	system: 'energy',
	about: 'A lead-acid bank stands in a compartment vented to the outside.',
	needs: 'chemistry, whether its compartment is vented',
	clearedBy: [],
	source: published('NFPA 70 (NEC)', '552.10(D): battery compartments vented, sealed from the living space'),
	check: (facts) => {
		const known = knownBank(facts);
		if (known === null || !known.bank.chemistry.leadAcid) return fine;
		const { piece } = known;
		if (isYes(piece, 'vented') || isYes(piece, 'outside')) return fine;
		const isFlooded = known.bank.chemistry.name === 'flooded';
		if (!isNo(piece, 'vented')) {
			return [unknown('battery.vented', 'Is the battery compartment vented to the outside, low and high?')];
		}
		return [
			found(
				isFlooded ? 'danger' : 'warning',
				facts.say`The ${known.bank.chemistry.label} bank gives off hydrogen while charging and its compartment is not vented: a spark can set it off. Vent it to the outside with openings of at least ${facts.show('area', 0.0011, { unit: 'cm²', decimals: 0 })}, one low and one high.`,
				[piece],
			),
		];
	},
};

const noChargingSource: Rule = {
	id: 'no-charging-source',
	system: 'energy',
	about: 'Something charges the bank.',
	needs: 'the chargers aboard',
	clearedBy: ['charger', 'dcdc', 'solar', 'isolator', 'inverter', 'alternator'],
	source: practice('a bank needs a source'),
	check: (facts) => {
		const battery = facts.first('battery');
		const alternator = facts.first('alternator');
		const isDirect = alternator !== null && word(alternator, 'link') === 'direct';
		if (battery === null || sourcesOf(facts).length > 0 || facts.has('isolator') || isDirect) return fine;
		const kinds = ['charger', 'dcdc', 'solar'];
		if (kinds.every((kind) => facts.lacks(kind))) {
			return [
				found('warning', facts.say`Nothing charges the bank: add shore, alternator or solar charging.`, [
					battery,
				]),
			];
		}
		return [unknownKind('charger', 'What charges the bank: shore power, the alternator, solar?')];
	},
};

const solarAlone: Rule = {
	id: 'solar-alone-in-winter',
	system: 'energy',
	about: 'A van for winter has a source of charge besides the sun.',
	needs: 'season, the chargers aboard',
	clearedBy: ['charger', 'dcdc', 'isolator', 'inverter', 'generator'],
	source: practice('a flat array gives little in winter'),
	check: (facts) => {
		const ways = new Set(sourcesOf(facts).map(({ way }) => way));
		const isSunOnly = ways.size === 1 && ways.has('sun') && arrayW(facts) !== null;
		if (!isForWinter(facts) || !isSunOnly) return fine;
		if (facts.has('isolator', 'generator')) return fine;
		if (!facts.lacks('charger') && !facts.lacks('dcdc')) {
			return [unknownKind('dcdc', 'What charges the bank besides the sun: the alternator, shore power?')];
		}
		return [
			found(
				'warning',
				facts.say`In winter the sun alone charges the bank: a flat array gives a tenth to a third of its summer yield. Add alternator or shore charging.`,
				facts.pieces('solar'),
			),
		];
	},
};

export const chargingRules: readonly Rule[] = [
	bankCannotBeBuilt,
	chargersTogether,
	chargeInTheCold,
	withoutIsolation,
	relayToLithium,
	overAlternator,
	leadAcidUnvented,
	noChargingSource,
	solarAlone,
];
