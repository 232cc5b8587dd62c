import { fromMemory, practice, published } from '../../topic/source.js';
import { bankGiven, houseV, knownBank } from '../facts/bank.js';
import { sourcesOf } from '../facts/charging.js';
import { defined } from '../facts/climate.js';
import { countOf, type Facts, findingOf, num, resultOf } from '../facts/facts.js';
import { mainsLoads } from '../facts/loads.js';
import { labelOf, type Piece } from '../van.js';
import { fine, found, type Rule, unknownField } from './rule.js';

/** The shore topic on the inlet, the chargers and every mains load. */
function shoreOutcome(facts: Facts, inlet: Piece) {
	return facts.once('shore', () => {
		const known = knownBank(facts);
		const chargerA = sourcesOf(facts)
			.filter(({ way }) => way === 'shore')
			.reduce((sum, { currentA }) => sum + (currentA ?? 0), 0);
		const loads = mainsLoads(facts).map(({ piece, load }) => ({
			name: load.typical?.name ?? labelOf(piece),
			powerW: Math.min(30_000, load.runningW / load.count),
			count: load.count,
		}));
		return facts.run(
			'shore',
			defined({
				inletA: num(inlet, 'ratingA'),
				outletA: outletOf(facts, inlet),
				cordA: num(inlet, 'cordA'),
				household: inlet.values.household === true ? true : undefined,
				chargerA: chargerA > 0 ? Math.min(400, chargerA) : undefined,
				loads: loads.length > 0 ? loads.slice(0, 16) : undefined,
				bankV: houseV(facts),
				chemistry: known === null ? undefined : bankGiven(known).chemistry,
			}),
		);
	});
}

/** The outlet it is plugged into: as told, or the usual circuit of a house where only that was told. */
function outletOf(facts: Facts, inlet: Piece): number | undefined {
	const told = num(inlet, 'outletA');
	if (told !== undefined || inlet.values.household !== true) return told;
	return facts.context.region === 'us' ? 15 : 10;
}

const loadsOverSupply: Rule = {
	id: 'shore-loads-over-supply',
	system: 'energy',
	about: 'What runs on shore power together stays within the smallest rating in its way.',
	needs: 'rating of the inlet (and of the outlet), mains loads, shore charger',
	clearedBy: [],
	source: published('NFPA 70 (NEC)', '210.20(A): 80 % for loads of 3 h or more'),
	check: (facts) => {
		const inlet = facts.first('shore-inlet');
		if (inlet === null) return fine;
		if (num(inlet, 'ratingA') === undefined) return [unknownField('shore-inlet', 'ratingA')];
		const finding = findingOf(shoreOutcome(facts, inlet), 'over-supply');
		if (finding === null) return fine;
		const order = shedOrder(facts, inlet);
		return [
			found('warning', `${finding.text}${order}`, [inlet, ...mainsLoads(facts).map(({ piece }) => piece)]),
		];
	},
};

function shedOrder(facts: Facts, inlet: Piece): string {
	const outcome = shoreOutcome(facts, inlet);
	if (outcome.status !== 'answered') return '';
	const order = outcome.sizing.results.find(({ name }) => name === 'shedFirst')?.text;
	const usable = resultOf(outcome, 'usableCurrent');
	const most =
		usable === null
			? ''
			: facts.say` For hours on end stay at or below ${facts.show('current', usable, { round: 'down' })}.`;
	return order === undefined ? most : `${most}${facts.say` Switch off in this order: ${order}.`}`;
}

const householdAdapter: Rule = {
	id: 'inlet-on-household-adapter',
	system: 'energy',
	about: 'An inlet fed through an adapter is used within the rating of the outlet.',
	needs: 'rating of the inlet, outlet it is plugged into',
	clearedBy: [],
	source: practice('the smallest rating in the chain counts'),
	check: (facts) => {
		const inlet = facts.first('shore-inlet');
		const ratedA = inlet === null ? undefined : num(inlet, 'ratingA');
		const outletA = inlet === null ? undefined : outletOf(facts, inlet);
		if (inlet === null || ratedA === undefined || outletA === undefined || outletA >= ratedA) return fine;
		const steady = facts.show('current', 0.8 * outletA, { round: 'down' });
		return [
			found(
				'warning',
				facts.say`The ${facts.show('current', ratedA)} inlet gives no more than the ${facts.show('current', outletA)} of the outlet behind the adapter, ${steady} for hours: the breaker in the van will not trip at that. Set the charger down and run one large load at a time.`,
				[inlet],
			),
		];
	},
};

const cordTooSmall: Rule = {
	id: 'cord-below-supply',
	system: 'energy',
	about: 'The cord is made for what the breaker before it lets through.',
	needs: 'rating of the cord, the outlet or the inlet',
	clearedBy: [],
	source: published('NFPA 70 (NEC)', '240.4: conductors are protected at their ampacity'),
	check: (facts) => {
		const inlet = facts.first('shore-inlet');
		if (inlet === null || num(inlet, 'cordA') === undefined) return fine;
		const supply = {
			inletA: num(inlet, 'ratingA'),
			outletA: outletOf(facts, inlet),
			cordA: num(inlet, 'cordA'),
		};
		const finding = findingOf(facts.run('shore', defined(supply)), 'cord-below-supply');
		return finding === null ? fine : [found('danger', finding.text, [inlet])];
	},
};

const generatorTooSmall: Rule = {
	id: 'generator-too-small',
	system: 'energy',
	about: 'The generator carries the largest mains load and the start of an air conditioner.',
	needs: 'power of the generator, mains loads',
	clearedBy: [],
	source: practice('a generator carries its rated power less 3 % for each 300 m of altitude'),
	check: (facts) =>
		facts.pieces('generator').flatMap((generator) => {
			const powerW = num(generator, 'powerW');
			if (powerW === undefined) return [unknownField('generator', 'powerW')];
			const largest = mainsLoads(facts).toSorted((a, b) => peakW(b) - peakW(a))[0];
			if (largest === undefined || peakW(largest) <= powerW) return fine;
			const needed = facts.show('power', peakW(largest), { round: 'up' });
			return [
				found(
					'warning',
					facts.say`The ${largest.load.shown} takes up to ${needed} at its start; the generator gives ${facts.show('power', powerW * countOf(generator))}. Take one of at least ${needed}, or a soft start.`,
					[generator, largest.piece],
				),
			];
		}),
};

function peakW({
	load,
}: {
	readonly load: { readonly runningW: number; readonly surgeFactor: number };
}): number {
	return load.runningW * load.surgeFactor;
}

const chargerOnGenerator: Rule = {
	id: 'generator-neutral',
	system: 'wiring',
	about: 'A generator with a bonded neutral feeds a van that has no second bond.',
	needs: 'neutral of the generator, bonds in the van',
	clearedBy: [],
	source: fromMemory('NFPA 70 (NEC)', '250.34 and 551.30: generators'),
	check: (facts) => {
		const bonds = facts
			.pieces('neutral-bond')
			.filter((bond) => bond.values.switched !== true && bond.values.inPanel === true);
		const bonded = facts.pieces('generator').filter((generator) => generator.values.neutralBonded === true);
		if (bonds.length === 0 || bonded.length === 0) return fine;
		return [
			found(
				'danger',
				facts.say`The generator joins neutral and ground in its frame and the panel of the van does so again: current flows on the metal of the van. Keep one bond, at the source that feeds.`,
				[...bonded, ...bonds],
			),
		];
	},
};

export const shoreRules: readonly Rule[] = [
	loadsOverSupply,
	householdAdapter,
	cordTooSmall,
	generatorTooSmall,
	chargerOnGenerator,
];
