import { fromMemory, physics } from '../../topic/source.js';
import { defined, isForWinter, isSummerOnly, lowestC } from '../facts/climate.js';
import { countOf, type Facts, findingOf, isNo, isYes, num, resultOf, word } from '../facts/facts.js';
import { peopleOf } from '../facts/weights.js';
import { labelOf } from '../van.js';
import { fine, found, type Rule, unknown, unknownField, unknownKind, type Verdict } from './rule.js';

/** Volume of all tanks of a kind [L], or null where there is none or one was not told. */
function volumeOf(facts: Facts, kind: string): number | null {
	const tanks = facts.pieces(kind);
	if (tanks.length === 0) return null;
	let sum = 0;
	for (const tank of tanks) {
		const volumeL = num(tank, 'volumeL');
		if (volumeL === undefined) return null;
		sum += volumeL * countOf(tank);
	}
	return sum;
}

const grayTooSmall: Rule = {
	id: 'gray-smaller-than-fresh',
	system: 'water',
	about: 'The gray tank takes the part of the fresh water that ends in it.',
	needs: 'volumes of the fresh and the gray tanks',
	clearedBy: ['gray-tank'],
	source: physics('balance of volumes'),
	check: (facts) => {
		const freshL = volumeOf(facts, 'fresh-tank');
		if (freshL === null) return facts.has('fresh-tank') ? [unknownField('fresh-tank', 'volumeL')] : fine;
		if (facts.lacks('gray-tank')) {
			return [
				found(
					'warning',
					facts.say`There is no gray tank: dumping on the ground is forbidden in most places. One of about ${facts.show('volume', 0.85 * freshL, { round: 'up' })} takes what the fresh tank gives.`,
					facts.pieces('fresh-tank'),
				),
			];
		}
		const grayL = volumeOf(facts, 'gray-tank');
		if (grayL === null) {
			return facts.has('gray-tank')
				? [unknownField('gray-tank', 'volumeL')]
				: [unknownKind('gray-tank', 'How large is the gray tank?')];
		}
		const outcome = tankOutcome(facts, freshL, grayL);
		const finding = findingOf(outcome, 'gray-too-small');
		if (finding === null) return fine;
		return [found('warning', finding.text, facts.pieces('fresh-tank', 'gray-tank'))];
	},
};

/** The tank topic; two people where nobody said, since the share of gray hardly depends on it. */
function tankOutcome(facts: Facts, freshL: number, grayL: number, wantedH?: number) {
	const shower = facts.first('shower');
	return facts.run(
		'tank',
		defined({
			freshL: Math.min(3000, freshL),
			grayL: Math.min(3000, grayL),
			people: peopleOf(facts) ?? 2,
			showers: facts.lacks('shower') ? false : undefined,
			showerLMin: shower === null ? undefined : num(shower, 'showerLMin'),
			showerH: shower === null ? undefined : num(shower, 'showerH'),
			wantedH,
		}),
	);
}

const waterDays: Rule = {
	id: 'water-days-short',
	system: 'water',
	about: 'Water lasts as many days as the van is to stay off grid.',
	needs: 'days off grid, tanks, people',
	clearedBy: ['fresh-tank', 'gray-tank'],
	source: physics('balance of volumes'),
	check: (facts) => {
		const trip = facts.first('trip');
		const wantedH = trip === null ? undefined : num(trip, 'offGridH');
		const freshL = volumeOf(facts, 'fresh-tank');
		if (trip === null || wantedH === undefined || freshL === null) return fine;
		if (peopleOf(facts) === null) return [unknown('people', 'How many people live aboard?')];
		const grayL = volumeOf(facts, 'gray-tank') ?? freshL;
		const outcome = tankOutcome(facts, freshL, grayL, wantedH);
		const finding = findingOf(outcome, 'days-not-met');
		if (finding === null) return fine;
		return [found('warning', finding.text, [trip, ...facts.pieces('fresh-tank', 'gray-tank', 'people')])];
	},
};

const tankFreezes: Rule = {
	id: 'tank-freezes',
	system: 'water',
	about: 'Tanks outside the heated space are kept from freezing.',
	needs: 'where the tanks hang, the lowest temperature, heating pads',
	clearedBy: ['heating-pad'],
	source: physics('heat balance of a tank'),
	check: (facts) => {
		if (isSummerOnly(facts)) return fine;
		const lowC = lowestC(facts) ?? (isForWinter(facts) ? -5 : null);
		return facts.pieces('fresh-tank', 'gray-tank').flatMap((tank): readonly Verdict[] => {
			if (
				isYes(tank, 'heated') ||
				facts.has('heating-pad') ||
				isNo(tank, 'outside') ||
				word(tank, 'zone') !== undefined
			) {
				return fine;
			}
			const isOutside = isYes(tank, 'outside');
			if (!isOutside) {
				return lowC !== null && lowC < 0
					? [
							unknown(
								`${tank.kind}.outside`,
								facts.say`Is the ${labelOf(tank)} inside the heated space, or under the floor?`,
							),
						]
					: fine;
			}
			if (lowC === null) return [unknownField('place', 'place')];
			if (lowC >= 0) return fine;
			const volumeL = num(tank, 'volumeL') ?? 50;
			const outcome = facts.run(
				'freeze',
				defined({
					what: 'tank',
					outsideC: Math.max(-60, lowC),
					volumeL,
					insulationMm: isYes(tank, 'insulated') ? 20 : undefined,
				}),
			);
			const hours = resultOf(outcome, 'hoursToFreezing');
			const padW = resultOf(outcome, 'padPower') ?? resultOf(outcome, 'holdPower');
			const within =
				hours === null
					? ''
					: facts.say` It begins to freeze after ${facts.show('duration', hours, { round: 'down' })}.`;
			const pad =
				padW === null
					? ''
					: facts.say` A heating pad of ${facts.show('power', padW, { round: 'up' })} holds it; with insulation less does, or drain it.`;
			return [
				found(
					'warning',
					facts.say`The ${labelOf(tank)} hangs in the cold and the place sees ${facts.show('temperature', lowC)}.${within}${pad}`,
					[tank],
				),
			];
		});
	},
};

const scald: Rule = {
	id: 'scald',
	system: 'water',
	about: 'Hot water reaches the taps through a mixing valve.',
	needs: 'whether the water heater has a thermostatic mixing valve',
	clearedBy: [],
	source: fromMemory(
		'US Consumer Product Safety Commission',
		'burns by hot tap water: 60 °C burns in seconds',
	),
	check: (facts) =>
		facts.pieces('water-heater').flatMap((piece): readonly Verdict[] => {
			const hotC = num(piece, 'hotC');
			if (isYes(piece, 'mixer') || (hotC !== undefined && hotC <= 49)) return fine;
			if (!isNo(piece, 'mixer')) {
				return [
					unknown('water-heater.mixer', 'Is there a thermostatic mixing valve after the water heater?'),
				];
			}
			const set =
				hotC === undefined
					? facts.say`Water heaters are set to about ${facts.show('temperature', 60)}`
					: facts.say`The water heater is set to ${facts.show('temperature', hotC)}`;
			return [
				found(
					'danger',
					facts.say`${set} and no valve mixes it down: it burns skin in seconds. Fit a thermostatic mixing valve set to ${facts.show('temperature', 49)} or below.`,
					[piece],
				),
			];
		}),
};

const padTooSmall: Rule = {
	id: 'heating-pad-too-small',
	system: 'water',
	about: 'The heating pads hold a tank outside above freezing.',
	needs: 'power of the pads, tank outside, place',
	clearedBy: ['heating-pad'],
	source: physics('heat balance of a tank'),
	check: (facts) => {
		const lowC = lowestC(facts);
		const pads = facts.pieces('heating-pad');
		const hanging = facts.pieces('fresh-tank', 'gray-tank').filter((tank) => isYes(tank, 'outside'));
		const largest = hanging.toSorted((a, b) => (num(b, 'volumeL') ?? 0) - (num(a, 'volumeL') ?? 0))[0];
		const told = pads.filter((pad) => num(pad, 'powerW') !== undefined);
		if (lowC === null || lowC >= 0 || largest === undefined || told.length === 0) return fine;
		const padW = Math.max(...told.map((pad) => num(pad, 'powerW') ?? 0));
		const outcome = facts.run('freeze', {
			what: 'tank',
			outsideC: Math.max(-60, lowC),
			volumeL: num(largest, 'volumeL') ?? 50,
			padW,
		});
		const finding = findingOf(outcome, 'pad-too-small');
		return finding === null
			? fine
			: [found('warning', `${labelOf(largest)}: ${finding.text}`, [largest, ...told])];
	},
};

export const waterRules: readonly Rule[] = [grayTooSmall, waterDays, tankFreezes, padTooSmall, scald];
