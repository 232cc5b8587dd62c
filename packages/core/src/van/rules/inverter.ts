import { inverterInputA, surgeW } from '../../energy/inverter.js';
import { usualIdleW } from '../../energy/inverter-use.js';
import { practice, published } from '../../topic/source.js';
import { houseV, knownBank } from '../facts/bank.js';
import { inverterUseOf } from '../facts/budget.js';
import { countOf, type Facts, isYes, num } from '../facts/facts.js';
import { type Aboard, inverterLoads, mainsLoads } from '../facts/loads.js';
import { labelOf, type Piece } from '../van.js';
import { fine, found, type Rule, unknown, unknownField, unknownKind, type Verdict } from './rule.js';

const watts = (facts: Facts, powerW: number, round: 'up' | 'down' = 'up') =>
	facts.show('power', powerW, { round });

/** Each inverter with the power it is rated for; those whose power was not told ask for it. */
function eachInverter(
	facts: Facts,
	judge: (inverter: Piece, ratedW: number) => readonly Verdict[],
): readonly Verdict[] {
	return facts.pieces('inverter').flatMap((inverter) => {
		const ratedW = num(inverter, 'ratedW');
		return ratedW === undefined
			? [unknownField('inverter', 'ratedW')]
			: judge(inverter, ratedW * countOf(inverter));
	});
}

const overProtection: Rule = {
	id: 'inverter-over-protection',
	system: 'energy',
	about: "At full power the inverter draws no more than the batteries' own protection allows.",
	needs: "inverter power, bank, discharge limit of the batteries' own protection",
	clearedBy: ['battery'],
	source: practice("the discharge limit of the batteries' own protection (BMS)"),
	check: (facts) => {
		const known = knownBank(facts);
		if (known === null) return fine;
		return eachInverter(facts, (inverter, ratedW) => {
			const { efficiency } = inverterUseOf(facts);
			const usualA = inverterInputA(ratedW, known.nominalV, efficiency);
			const lowA = inverterInputA(ratedW, known.cutoffV, efficiency);
			const { limitA, given } = known.discharge;
			const ask = given || known.bank.chemistry.leadAcid ? [] : [unknownField('battery', 'protectionA')];
			// The usual rate is no limit of this very bank: only at its nominal voltage does it count.
			if ((given ? lowA : usualA) <= limitA) return ask;
			const isOnlyLow = usualA <= limitA;
			const most = facts.show('current', limitA, { round: 'down', decimals: 0 });
			const draws = facts.show('current', isOnlyLow ? lowA : usualA, { round: 'up', decimals: 0 });
			const power = watts(facts, limitA * known.nominalV * efficiency, 'down');
			const needed = facts.show('current', lowA, { round: 'up', decimals: 0 });
			if (!given) {
				const text = facts.say`The ${watts(facts, ratedW)} inverter draws ${draws} at full power, over the usual ${most} for this bank: its voltage falls and the inverter cuts out. Stay at or below ${power}, take a larger bank, or confirm the maker's limit.`;
				return [found('warning', text, [inverter, known.piece]), ...ask];
			}
			const when = isOnlyLow ? facts.say`near empty draws` : facts.say`draws`;
			const text = facts.say`The ${watts(facts, ratedW)} inverter ${when} ${draws}, over the ${most} at which the batteries' own protection switches off: everything goes dark under load. Stay at or below ${power}, or take batteries whose protection allows ${needed} together.`;
			return [found(isOnlyLow ? 'warning' : 'danger', text, [inverter, known.piece])];
		});
	},
};

const surgeOverProtection: Rule = {
	id: 'inverter-surge-over-protection',
	system: 'energy',
	about: "Starting the largest motor does not trip the batteries' own protection.",
	needs: 'inverter, mains loads, discharge limit of the protection',
	clearedBy: ['battery'],
	source: practice('protection of batteries bears about twice its limit for some seconds'),
	check: (facts) => {
		const known = knownBank(facts);
		const loads = inverterLoads(facts);
		if (known === null || loads.length === 0 || !known.discharge.given) return fine;
		return eachInverter(facts, (inverter, ratedW) => {
			const starting = loads
				.map((one) => ({ ...one, peakW: surgeW([one.load]) }))
				.filter(({ load, peakW }) => load.runningW <= ratedW && peakW > load.runningW)
				.toSorted((a, b) => b.peakW - a.peakW)[0];
			if (starting === undefined) return fine;
			const surgeA = inverterInputA(starting.peakW, known.nominalV, inverterUseOf(facts).efficiency);
			if (surgeA <= known.discharge.limitA) return fine;
			const isLong = surgeA > 2 * known.discharge.limitA;
			const current = facts.show('current', surgeA, { round: 'up', decimals: 0 });
			const most = facts.show('current', known.discharge.limitA, { round: 'down', decimals: 0 });
			return [
				found(
					isLong ? 'warning' : 'note',
					facts.say`Starting the ${starting.load.shown} draws ${current} for a moment; the batteries' own protection allows ${most}. See that it bears that for some seconds, or fit a soft start.`,
					[inverter, known.piece, starting.piece],
				),
			];
		});
	},
};

const loadTooLarge: Rule = {
	id: 'load-over-inverter',
	system: 'energy',
	about: 'No single mains load is larger than the inverter that must carry it.',
	needs: 'inverter power, mains loads',
	clearedBy: ['inverter'],
	source: practice('an inverter carries its rated power'),
	check: (facts) => {
		const rated = largestInverter(facts);
		if (rated === null) return fine;
		return inverterLoads(facts)
			.filter(({ load }) => load.runningW / load.count > rated.ratedW)
			.map(({ piece, load }) => {
				const power = watts(facts, load.runningW / load.count);
				return found(
					'warning',
					facts.say`The ${labelOf(piece)} takes ${power}, more than the ${watts(facts, rated.ratedW)} inverter gives: run it on shore power only, set it lower, or take an inverter of at least ${power}.`,
					[rated.inverter, piece],
				);
			});
	},
};

function largestInverter(facts: Facts): { readonly inverter: Piece; readonly ratedW: number } | null {
	const known = facts.pieces('inverter').flatMap((inverter) => {
		const ratedW = num(inverter, 'ratedW');
		return ratedW === undefined ? [] : [{ inverter, ratedW: ratedW * countOf(inverter) }];
	});
	return known.toSorted((a, b) => b.ratedW - a.ratedW)[0] ?? null;
}

const loadsTogether: Rule = {
	id: 'loads-over-inverter-together',
	system: 'energy',
	about: 'The mains loads that are likely on together fit on the inverter.',
	needs: 'inverter power, mains loads',
	clearedBy: ['inverter'],
	source: practice('the two largest loads are on together sooner or later'),
	check: (facts) => {
		const rated = largestInverter(facts);
		if (rated === null) return fine;
		const fitting = inverterLoads(facts)
			.filter(({ load }) => load.runningW <= rated.ratedW)
			.toSorted((a, b) => b.load.runningW - a.load.runningW);
		const [first, second] = fitting as [Aboard?, Aboard?];
		if (first === undefined || second === undefined) return fine;
		const togetherW = first.load.runningW + second.load.runningW;
		if (togetherW <= rated.ratedW) return fine;
		return [
			found(
				'warning',
				facts.say`${first.load.shown} and ${second.load.shown} together take ${watts(facts, togetherW)}, more than the ${watts(facts, rated.ratedW)} inverter gives: use one at a time, or take an inverter of at least ${watts(facts, togetherW)}.`,
				[rated.inverter, first.piece, second.piece],
			),
		];
	},
};

const mainsWithoutSource: Rule = {
	id: 'mains-load-without-source',
	system: 'energy',
	about: 'Loads that need mains have an inverter, shore power or a generator.',
	needs: 'mains loads, inverter, shore inlet',
	clearedBy: ['inverter', 'shore-inlet', 'generator'],
	source: practice('a mains load needs a source'),
	check: (facts) => {
		const loads = mainsLoads(facts);
		if (loads.length === 0 || facts.has('inverter', 'shore-inlet', 'generator')) return fine;
		if (!facts.lacks('inverter') && !facts.lacks('shore-inlet')) {
			return [unknownKind('inverter', 'Is there an inverter or a shore inlet for the mains loads?')];
		}
		const largestW = Math.max(...loads.map(({ load }) => load.runningW));
		return [
			found(
				'warning',
				facts.say`${loads.map(({ load }) => load.shown).join(', ')}: mains loads, but no inverter and no shore power feeds them. An inverter of at least ${watts(facts, largestW)} or a shore inlet would.`,
				loads.map(({ piece }) => piece),
			),
		];
	},
};

const idleDraw: Rule = {
	id: 'inverter-idle',
	system: 'energy',
	about: 'What an inverter draws with nothing on is no large share of the bank.',
	needs: 'inverter, bank; its idle draw',
	clearedBy: ['battery'],
	source: practice('idle draw of an unsearched inverter, about 1 % of its power'),
	check: (facts) => {
		const known = knownBank(facts);
		if (known === null) return fine;
		return facts.pieces('inverter').flatMap((inverter): readonly Verdict[] => {
			const idleW = num(inverter, 'idleW') ?? usualIdleW;
			const dayWh = idleW * 24;
			const share = dayWh / known.usableWh;
			const limit = isYes(inverter, 'alwaysOn') ? 0.1 : 0.2;
			if (share <= limit || inverter.values.alwaysOn === false) return fine;
			const percent = Math.round(share * 100);
			const draw = facts.show('power', idleW);
			return [
				found(
					isYes(inverter, 'alwaysOn') ? 'warning' : 'note',
					facts.say`Left on, the inverter draws ${draw} with nothing connected: ${percent} % of what the bank gives, every day. Fit a remote switch or use its search mode.`,
					[inverter, known.piece],
				),
			];
		});
	},
};

/** From here on a 12 V inverter draws more than cables and fuses of the trade bear well [W] (practice). */
const largestOn12W = 3000;

const lowVoltage: Rule = {
	id: 'inverter-voltage-low',
	system: 'energy',
	about: 'A large inverter is fed at 24 V or more.',
	needs: 'inverter power, bank voltage',
	clearedBy: [],
	source: practice('3 kW and more at 24 or 48 V'),
	check: (facts) => {
		if (!facts.has('battery') || houseV(facts) > 12) return fine;
		return eachInverter(facts, (inverter, ratedW) => {
			if (ratedW < largestOn12W) return fine;
			const currentA = inverterInputA(ratedW, 10, inverterUseOf(facts).efficiency);
			return [
				found(
					'note',
					facts.say`${watts(facts, ratedW)} at 12 V is up to ${facts.show('current', currentA, { round: 'up', decimals: 0 })}: at 24 V it is half, with thinner cables and smaller losses.`,
					[inverter],
				),
			];
		});
	},
};

const enclosed: Rule = {
	id: 'inverter-enclosed',
	system: 'energy',
	about: 'The inverter has air to shed its heat.',
	needs: 'whether the inverter stands in a closed space',
	clearedBy: [],
	source: practice('free air round the inverter as its manual asks'),
	check: (facts) =>
		facts
			.pieces('inverter')
			.filter((inverter) => isYes(inverter, 'enclosed'))
			.map((inverter) => {
				const heatW = (num(inverter, 'ratedW') ?? 2000) * (1 / inverterUseOf(facts).efficiency - 1);
				return found(
					'warning',
					facts.say`The inverter stands in a closed space and must shed up to ${watts(facts, heatW)} of heat: give it openings low and high, or it cuts out and ages.`,
					[inverter],
				);
			}),
};

const neutralBonds: Rule = {
	id: 'two-neutral-bonds',
	system: 'wiring',
	about: 'Neutral and ground are joined at one place only, at the source that feeds.',
	needs: 'where neutral and ground are joined',
	clearedBy: [],
	source: published('NFPA 70 (NEC)', '551.54(C): neutral insulated from ground in the van'),
	check: (facts) => {
		const bonds = facts.pieces('neutral-bond');
		const fixed = bonds.filter((bond) => !isYes(bond, 'switched'));
		const places = fixed.flatMap((bond) => {
			const named = ['inInverter', 'inPanel', 'atInlet'].filter((name) => isYes(bond, name));
			return named.length === 0 ? [bond.id] : named;
		});
		const onShore =
			facts.has('shore-inlet') && places.some((place) => place === 'inPanel' || place === 'atInlet');
		if (new Set(places).size >= 2 || onShore) {
			const second = onShore
				? facts.say`on shore power the supply has its bond already`
				: facts.say`it is joined at ${places.length} places`;
			return [
				found(
					'danger',
					facts.say`Neutral and ground are joined in the van, and ${second}: current flows on the metal of the van and protective devices may not trip. Keep one bond, in the source that feeds, made and broken by the transfer relay of the inverter.`,
					[...fixed, ...facts.pieces('shore-inlet')],
				),
			];
		}
		const needs = facts.has('inverter') && facts.has('shore-inlet');
		return needs && bonds.length === 0
			? [
					unknown(
						'neutral-bond',
						'Where are neutral and ground joined: in the inverter only while it feeds, and nowhere else in the van?',
					),
				]
			: fine;
	},
};

export const inverterRules: readonly Rule[] = [
	overProtection,
	surgeOverProtection,
	loadTooLarge,
	loadsTogether,
	mainsWithoutSource,
	idleDraw,
	lowVoltage,
	enclosed,
	neutralBonds,
];
