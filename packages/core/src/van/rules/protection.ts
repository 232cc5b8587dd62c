import { type FuseDuty, fullBankV, fuseFailures } from '../../electrical/short-circuit.js';
import { type FuseClassName, fuseClassNamed } from '../../tables/fuses.js';
import { fromMemory, practice, published } from '../../topic/source.js';
import { bankGiven, knownBank } from '../facts/bank.js';
import { type Circuit, circuitsOf } from '../facts/circuits.js';
import { type Facts, findingOf, num, resultOf, word } from '../facts/facts.js';
import { labelOf, type Piece } from '../van.js';
import { fine, found, type Rule, unknown, unknownKind, type Verdict } from './rule.js';

const mainFuseMissing: Rule = {
	id: 'main-fuse-missing',
	system: 'wiring',
	about: 'The bank has a main fuse at its positive pole.',
	needs: 'battery, main fuse',
	clearedBy: ['main-fuse'],
	source: published('33 CFR 183.455', 'overcurrent protection at the source of power'),
	check: (facts) => {
		const battery = facts.first('battery');
		if (battery === null || facts.has('main-fuse') || num(battery, 'fuseA') !== undefined) return fine;
		if (!facts.lacks('main-fuse')) {
			return [unknownKind('main-fuse', 'Which main fuse sits at the bank: its rating and its kind?')];
		}
		const known = knownBank(facts);
		const shortA =
			known === null
				? null
				: resultOf(facts.run('short-circuit', bankGiven(known)), 'prospectiveAtTerminals');
		const short =
			shortA === null
				? ''
				: facts.say` It can feed about ${facts.show('current', shortA, { unit: 'kA', decimals: 1 })} into a short.`;
		return [
			found(
				'danger',
				facts.say`The bank has no main fuse: a short burns the cable and the van.${short} Fit one within ${facts.show('length', 0.18, { unit: facts.context.units === 'us' ? 'in' : 'cm', decimals: 0 })} of its positive pole, of a kind that breaks that current at direct current.`,
				[battery],
			),
		];
	},
};

const mainFuseBreaks: Rule = {
	id: 'main-fuse-cannot-break',
	system: 'wiring',
	about: 'The main fuse can break what the bank feeds into a short, at its voltage.',
	needs: 'bank, kind of main fuse',
	clearedBy: [],
	source: published('ISO 8820-3 and -5', 'blade fuses break 1000 A, strip fuses 2000 A at 32 V'),
	check: (facts) => {
		const known = knownBank(facts);
		const mains = facts.pieces('main-fuse');
		if (known === null || mains.length === 0) return fine;
		const shortA = resultOf(facts.run('short-circuit', bankGiven(known)), 'prospectiveAtTerminals');
		return mains.flatMap((piece) => judgeMain(facts, piece, shortA));
	},
};

function judgeMain(facts: Facts, piece: Piece, shortA: number | null): readonly Verdict[] {
	const known = knownBank(facts);
	const name = word(piece, 'fuseClass');
	if (known === null) return fine;
	if (name === undefined) {
		return [
			unknown(
				'main-fuse.fuseClass',
				'Of what kind is the main fuse (blade, strip, class T ...), and what current does it break?',
			),
		];
	}
	if (name === 'household') {
		return [
			found(
				'danger',
				facts.say`The main fuse is made for household alternating current: on direct current its arc does not go out. Take a class T fuse.`,
				[piece, known.piece],
			),
		];
	}
	const fuse = fuseClassNamed(name as FuseClassName);
	const duty: FuseDuty = {
		voltageV: fullBankV(known.bank),
		ratingA: num(piece, 'ratingA') ?? null,
		prospectiveA: shortA,
	};
	const marked = num(piece, 'breaksA');
	const failures = fuseFailures(fuse, duty).filter(
		(failure) => failure !== 'breaking' || marked === undefined || (shortA ?? 0) > marked,
	);
	const breaks = facts.show('current', marked ?? fuse.breaksA, { unit: 'kA', decimals: 1, round: 'down' });
	const short =
		shortA === null ? '' : facts.show('current', shortA, { unit: 'kA', decimals: 1, round: 'up' });
	if (failures.includes('voltage')) {
		return [
			found(
				'danger',
				facts.say`A ${fuse.label} is a ${facts.show('voltage', fuse.ratedVoltageV)} part and the bank stands at ${facts.show('voltage', duty.voltageV, { decimals: 1 })}: it can't put out the arc. Take a class T fuse.`,
				[piece, known.piece],
			),
		];
	}
	if (!failures.includes('breaking')) return fine;
	if (fuse.markedUpToA !== null && marked === undefined) {
		return [
			found(
				'note',
				facts.say`The bank can feed about ${short} into a short: the ${fuse.label} must be marked for at least that at direct current; usual ones for ${breaks}. Ask the battery maker for the true figure.`,
				[piece, known.piece],
			),
		];
	}
	return [
		found(
			known.bank.chemistry.leadAcid ? 'warning' : 'danger',
			facts.say`A ${fuse.label} as main fuse breaks ${breaks}; the bank can feed about ${short} into a short, and the fuse may burst. Take a class T fuse, or one marked for at least ${short} at direct current.`,
			[piece, known.piece],
		),
	];
}

/** Kinds whose cable carries much or runs far from its source. */
const heavyKinds: ReadonlySet<string> = new Set(['inverter', 'charger', 'dcdc', 'solar-controller']);

const protectionNotNamed: Rule = {
	id: 'protection-not-named',
	system: 'wiring',
	about: 'Every charger, inverter and controller has a fuse or breaker of its own.',
	needs: 'the fuse or breaker of each',
	clearedBy: [],
	source: published('33 CFR 183.455', 'each ungrounded conductor protected at its source'),
	check: (facts) => {
		const bare = facts.van.pieces.filter(
			(piece) => heavyKinds.has(piece.kind) && piece.values.fuseA === undefined,
		);
		if (bare.length === 0) return fine;
		return [
			found(
				'warning',
				facts.say`No fuse or breaker is named for: ${facts.names(bare)}. Each needs one at its source that protects its conductor; ask me for wire and fuse together.`,
				bare,
			),
		];
	},
};

const loadsOnNoCircuit: Rule = {
	id: 'loads-on-no-circuit',
	system: 'wiring',
	about: 'Every direct-current load is on a fused circuit.',
	needs: 'fuse block, or the fuse of each load',
	clearedBy: ['fuse-block'],
	source: published('33 CFR 183.455', 'each ungrounded conductor protected at its source'),
	check: (facts) => {
		if (facts.has('fuse-block')) return fine;
		const bare = circuitsOf(facts).filter(
			({ piece, supply }) =>
				supply === 'dc' && !heavyKinds.has(piece.kind) && piece.values.fuseA === undefined,
		);
		if (bare.length === 0) return fine;
		const pieces = bare.map(({ piece }) => piece);
		if (facts.lacks('fuse-block')) {
			return [
				found(
					'danger',
					facts.say`There is no fuse block and no fuse of their own for: ${facts.names(pieces)}. A short in one of their wires is fed by the whole bank; put each on a fuse that protects its wire.`,
					pieces,
				),
			];
		}
		return [
			found(
				'warning',
				facts.say`No circuit is named for: ${facts.names(pieces)}. A fuse block with a way for each would take them.`,
				pieces,
			),
		];
	},
};

/** Circuits of pieces whose cable was told. */
function wired(facts: Facts): readonly (Circuit & { readonly size: string })[] {
	return circuitsOf(facts).flatMap((circuit) => {
		const size = word(circuit.piece, 'wireSize');
		return size === undefined ? [] : [{ ...circuit, size }];
	});
}

/** The wire topic's judgement of the cable that was told. */
function judgedWire(facts: Facts, circuit: Circuit & { readonly size: string }) {
	const lengthM = num(circuit.piece, 'runM');
	return facts.run('wire', {
		currentA: circuit.currentA,
		voltageV: circuit.voltageV,
		supply: circuit.supply,
		continuous: circuit.continuous,
		size: circuit.size,
		// Heat does not ask for the length; without one the drop is left out.
		lengthM: lengthM ?? 0.3,
		...(circuit.piece.kind === 'shore-inlet' ? { isRating: true } : {}),
	});
}

const conductorTooThin: Rule = {
	id: 'conductor-overloaded',
	system: 'wiring',
	about: 'Each cable named carries its current and can be protected.',
	needs: 'cable and current of the circuit',
	clearedBy: ['battery'],
	source: published('33 CFR 183.425', 'Table 5; NFPA 70 (NEC) Table 310.16 on mains'),
	check: (facts) =>
		wired(facts).flatMap((circuit): readonly Verdict[] => {
			if (circuit.currentA === null) return fine;
			const outcome = judgedWire(facts, circuit);
			if (findingOf(outcome, 'conductor-overloaded') === null || outcome.status !== 'answered') return fine;
			const ampacityA = resultOf(outcome, 'ampacity') ?? 0;
			const current = facts.show('current', circuit.currentA, { round: 'up', decimals: 0 });
			const carries = facts.show('current', ampacityA, { round: 'down', decimals: 0 });
			const name = labelOf(circuit.piece);
			if ((circuit.usualA ?? circuit.currentA) > ampacityA) {
				return [
					found(
						'danger',
						facts.say`The ${name} takes ${facts.show('current', circuit.usualA ?? circuit.currentA, { round: 'up', decimals: 0 })} through ${circuit.size}, which carries ${carries}: ${outcome.sizing.headline}.`,
						[circuit.piece],
					),
				];
			}
			return [
				found(
					'warning',
					facts.say`The ${name} takes up to ${current} through ${circuit.size}, which carries ${carries}: no standard fuse both holds that load and protects the cable. ${outcome.sizing.headline}.`,
					[circuit.piece],
				),
			];
		}),
};

const dropTooLarge: Rule = {
	id: 'drop-too-large',
	system: 'wiring',
	about: 'Each run named keeps its voltage drop within 3 %.',
	needs: 'cable, length and current of the run',
	clearedBy: [],
	source: practice('3 % for what matters'),
	check: (facts) =>
		wired(facts).flatMap((circuit): readonly Verdict[] => {
			if (circuit.currentA === null || num(circuit.piece, 'runM') === undefined) return fine;
			const outcome = judgedWire(facts, circuit);
			if (outcome.status !== 'answered') return fine;
			const finding = findingOf(outcome, 'drop-over-limit');
			if (finding === null) return fine;
			return [
				found(
					'warning',
					facts.say`Run of the ${labelOf(circuit.piece)}: ${outcome.sizing.headline}. ${outcome.sizing.because ?? ''}`.trim(),
					[circuit.piece],
				),
			];
		}),
};

const fuseOverConductor: Rule = {
	id: 'fuse-over-conductor',
	system: 'wiring',
	about: 'Each fuse named protects the conductor behind it.',
	needs: 'fuse and conductor of the circuit',
	clearedBy: [],
	source: published('33 CFR 183.455', 'protection not above the ampacity of the conductor'),
	check: (facts) =>
		wired(facts).flatMap(({ piece, size }): readonly Verdict[] => {
			const fuseA = num(piece, 'fuseA');
			if (fuseA === undefined) return fine;
			const outcome = facts.run('fuse', { ratingA: fuseA, size });
			const finding = findingOf(outcome, 'fuse-over-conductor');
			if (finding === null) return fine;
			return [found('danger', facts.say`${labelOf(piece)}: ${finding.text}`, [piece])];
		}),
};

const fuseUnderLoad: Rule = {
	id: 'fuse-under-load',
	system: 'wiring',
	about: 'Each fuse named carries its load without blowing.',
	needs: 'fuse and current of the circuit',
	clearedBy: [],
	source: published('NFPA 70 (NEC)', '210.20(A): 125 % of a load of 3 h or more'),
	check: (facts) =>
		circuitsOf(facts).flatMap(({ piece, currentA, continuous }): readonly Verdict[] => {
			const fuseA = num(piece, 'fuseA');
			if (fuseA === undefined || currentA === null) return fine;
			const neededA = continuous ? 1.25 * currentA : currentA;
			if (neededA <= fuseA) return fine;
			const needed = facts.show('current', neededA, { round: 'up' });
			return [
				found(
					currentA > fuseA ? 'warning' : 'note',
					facts.say`The ${labelOf(piece)} takes ${facts.show('current', currentA, { round: 'up' })} on a ${facts.show('current', fuseA)} fuse: it opens in use. Its rating must be at least ${needed}, with a conductor to match.`,
					[piece],
				),
			];
		}),
};

/** True where household voltage is led to outlets or loads in the van. */
function hasMains(facts: Facts): boolean {
	return facts.has('shore-inlet', 'generator', 'inverter');
}

const residualCurrent: Rule = {
	id: 'mains-without-residual-current',
	system: 'wiring',
	about: 'Mains in the van has ground-fault protection (GFCI, RCD).',
	needs: 'whether there is a GFCI or an RCD',
	clearedBy: ['gfci'],
	source: published('IEC 60364-7-721', '721.415; NFPA 70 (NEC) 551.40(C) and 551.41(C)'),
	check: (facts) => {
		if (!hasMains(facts) || facts.has('gfci')) return fine;
		if (!facts.lacks('gfci')) {
			return [
				unknownKind(
					'gfci',
					facts.context.region === 'us'
						? 'Is there GFCI protection on the mains outlets?'
						: 'Is there an RCD of at most 30 mA on the mains?',
				),
			];
		}
		return [
			found(
				'danger',
				facts.context.region === 'us'
					? facts.say`Mains outlets without GFCI protection: a fault can kill. Put every outlet behind a GFCI, on shore power and on the inverter.`
					: facts.say`Mains without a residual current device: a fault can kill. Fit an RCD of at most 30 mA that opens all live conductors.`,
				facts.pieces('shore-inlet', 'inverter', 'generator'),
			),
		];
	},
};

const mainsBreakers: Rule = {
	id: 'mains-without-breakers',
	system: 'wiring',
	about: 'Shore power enters through a main breaker.',
	needs: 'shore inlet, breaker panel',
	clearedBy: ['mains-panel'],
	source: published('NFPA 70 (NEC)', '551.45: distribution panelboard'),
	check: (facts) => {
		const [inlet] = facts.pieces('shore-inlet');
		if (inlet === undefined || facts.has('mains-panel') || num(inlet, 'fuseA') !== undefined) return fine;
		if (!facts.lacks('mains-panel')) {
			return [unknownKind('mains-panel', 'Which breakers does shore power go through in the van?')];
		}
		const rating = num(inlet, 'ratingA');
		const most = rating === undefined ? facts.say`the inlet's rating` : facts.show('current', rating);
		return [
			found(
				'danger',
				facts.say`Shore power enters without a breaker: a fault in the van is fed until the pedestal trips. Fit a panel with a main breaker of at most ${most}, by a licensed electrician.`,
				[inlet],
			),
		];
	},
};

const noDisconnect: Rule = {
	id: 'no-disconnect',
	system: 'wiring',
	about: 'The bank can be switched off by hand.',
	needs: 'battery, disconnect switch',
	clearedBy: ['disconnect'],
	source: fromMemory('ANSI/RVIA LV', 'battery disconnect'),
	check: (facts) => {
		const battery = facts.first('battery');
		if (battery === null || facts.has('disconnect')) return fine;
		if (!facts.lacks('disconnect'))
			return [unknownKind('disconnect', 'Is there a switch that disconnects the bank?')];
		return [
			found(
				'warning',
				facts.say`Nothing disconnects the bank: fit a switch by its main fuse, rated for the largest current of the van, for work, storage and a fire.`,
				[battery],
			),
		];
	},
};

const mainFuseUnderInverter: Rule = {
	id: 'main-fuse-under-inverter',
	system: 'wiring',
	about: 'The main fuse carries the inverter at full power.',
	needs: 'rating of the main fuse, inverter power',
	clearedBy: [],
	source: published('NFPA 70 (NEC)', '210.20(A): 125 % of a load of 3 h or more'),
	check: (facts) => {
		const inverters = circuitsOf(facts).filter(
			({ piece, currentA }) => piece.kind === 'inverter' && currentA !== null,
		);
		const largest = inverters.toSorted((a, b) => (b.currentA ?? 0) - (a.currentA ?? 0))[0];
		const mains = facts.pieces('main-fuse').filter((piece) => num(piece, 'ratingA') !== undefined);
		if (largest === undefined) return fine;
		return mains
			.filter((piece) => (num(piece, 'ratingA') ?? 0) < (largest.currentA ?? 0))
			.map((piece) => {
				const current = facts.show('current', largest.currentA ?? 0, { round: 'up', decimals: 0 });
				return found(
					'warning',
					facts.say`The ${labelOf(largest.piece)} at full power draws up to ${current} near empty, over the main fuse of ${facts.show('current', num(piece, 'ratingA') ?? 0)}: it opens in use. Take a rating of at least ${current}, with cable to match.`,
					[piece, largest.piece],
				);
			});
	},
};

export const protectionRules: readonly Rule[] = [
	mainFuseMissing,
	mainFuseBreaks,
	mainFuseUnderInverter,
	protectionNotNamed,
	loadsOnNoCircuit,
	conductorTooThin,
	dropTooLarge,
	fuseOverConductor,
	fuseUnderLoad,
	residualCurrent,
	mainsBreakers,
	noDisconnect,
];
