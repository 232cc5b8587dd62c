import type { Wheelbase } from '../../tables/interiors.js';
import { vanClasses } from '../../tables/vans.js';
import type { Outcome } from '../../topic/sizing.js';
import { practice, published } from '../../topic/source.js';
import { defined } from '../facts/climate.js';
import { type Facts, findingOf, isYes, num, resultOf, word } from '../facts/facts.js';
import { peopleOf, type Weight, weightsOf } from '../facts/weights.js';
import { labelOf, type Piece } from '../van.js';
import { fine, found, type Rule, unknown, unknownField, type Verdict } from './rule.js';

/** A person with what they wear [kg], as the payload topic takes it. */
const personKg = 75;
/** Sum of the lines [kg], tanks full. */
function sumKg(lines: readonly Weight[]): number {
	return lines.reduce((sum, { massKg, waterL }) => sum + massKg + waterL, 0);
}

const kg = (facts: Facts, mass: number, round: 'up' | 'down' = 'up') =>
	facts.show('mass', mass, { round, decimals: 0 });

interface Gross {
	/** what must be there by what was told [kg] */
	readonly toldKg: number | null;
	/** with usual masses for the rest [kg], or null where the empty van is not known */
	readonly allKg: number | null;
}

/** The total with everything aboard. A mass off the scales as it stands counts before any sum of parts. */
function grossOf(facts: Facts): Gross {
	return facts.once('gross', () => {
		const body = facts.first('van');
		const lines = weightsOf(facts);
		const crewKg = (peopleOf(facts) ?? 0) * personKg;
		const builtKg = body === null ? undefined : num(body, 'builtKg');
		if (builtKg !== undefined) {
			const waterKg = lines.reduce((sum, { waterL }) => sum + waterL, 0);
			return { toldKg: builtKg, allKg: builtKg + crewKg + waterKg };
		}
		const emptyKg = body === null ? undefined : num(body, 'emptyKg');
		const size = body === null ? undefined : word(body, 'wheelbase');
		const usualKg = size === undefined ? undefined : vanClasses[size as Wheelbase].emptyKg;
		const told = lines.map((line) => (line.isToldMass ? line : { ...line, massKg: 0 }));
		const bareKg = emptyKg ?? usualKg;
		return {
			toldKg: emptyKg === undefined ? null : emptyKg + crewKg + sumKg(told),
			allKg: bareKg === undefined ? null : bareKg + crewKg + sumKg(lines),
		};
	});
}

const grossWeight: Rule = {
	id: 'gvwr-exceeded',
	system: 'weight',
	about: 'With everything and everybody aboard and full tanks the van is within its GVWR.',
	needs: 'GVWR, empty mass (or mass off the scales), people, tanks, masses',
	clearedBy: [],
	source: published('49 CFR 571.3', 'GVWR: loaded weight the maker specifies'),
	check: (facts) => {
		const body = facts.first('van');
		const gvwrKg = body === null ? undefined : num(body, 'gvwrKg');
		if (body === null || gvwrKg === undefined) return [unknownField('van', 'gvwrKg')];
		const { toldKg, allKg } = grossOf(facts);
		const asks: Verdict[] = [];
		if (toldKg === null)
			asks.push(
				unknown('van.emptyKg', 'What does the empty van weigh, or what do the scales show as it stands?'),
			);
		if (peopleOf(facts) === null) asks.push(unknown('people', 'How many people live aboard?'));
		if (toldKg !== null && toldKg > gvwrKg) {
			return [
				found(
					'danger',
					facts.say`By what was told the van weighs at least ${kg(facts, toldKg)}; its GVWR is ${kg(facts, gvwrKg, 'down')}: leave ${kg(facts, toldKg - gvwrKg)} out. Brakes, frame and insurance end at the rating.`,
					[body],
				),
				...asks,
			];
		}
		if (allKg !== null && allKg > gvwrKg) {
			return [
				found(
					'warning',
					facts.say`With full tanks, people and usual masses for what was not weighed it comes to about ${kg(facts, allKg)}, over the GVWR of ${kg(facts, gvwrKg, 'down')} by ${kg(facts, allKg - gvwrKg)}. Weigh it before more goes in.`,
					[body],
				),
				...asks,
			];
		}
		if (allKg !== null && gvwrKg - allKg < 0.04 * gvwrKg) {
			return [
				found(
					'note',
					facts.say`Only about ${kg(facts, gvwrKg - allKg, 'down')} are left to the GVWR: clothes, food and tools of a trip weigh more. Weigh it.`,
					[body],
				),
				...asks,
			];
		}
		return asks;
	},
};

/** Things that hang behind the rear axle lighten the front one: not counted for the front, the safe side. */
const behindAxle: ReadonlySet<string> = new Set(['back', 'door']);
/** A second row of seats behind the front axle [m] (practice). */
const secondRowM = 2.4;

type Tank = 'fresh-tank' | 'gray-tank';

/** The payload topic on the lines given, with one of the two kinds of tank full. */
function payloadOf(facts: Facts, lines: readonly Weight[], full: Tank): Outcome | null {
	const body = facts.first('van');
	if (body === null) return null;
	const size = word(body, 'wheelbase');
	const wheelbaseM = num(body, 'wheelbaseM');
	if (size === undefined && wheelbaseM === undefined) return null;
	const lift = facts.first('lift');
	const tanks = facts.pieces(full);
	const items = lines
		.map((line) => {
			const volumeL = tanks.includes(line.piece)
				? (num(line.piece, 'volumeL') ?? 0) * (num(line.piece, 'count') ?? 1)
				: 0;
			return defined({
				name: line.name,
				// The topic's own ends; what is heavier is overloaded all the same.
				massKg: Math.min(5000, line.massKg),
				volumeL: volumeL > 0 ? Math.min(2000, volumeL) : undefined,
				zone: line.zone ?? undefined,
				onRoof: line.onRoof ? true : undefined,
			});
		})
		.slice(0, 100);
	return facts.run(
		'payload',
		defined({
			items: items.length === 0 ? [{ name: 'nothing', massKg: 0, zone: 'middle' }] : items,
			gvwrKg: num(body, 'gvwrKg'),
			rearRatingKg: num(body, 'rearRatingKg'),
			frontRatingKg: num(body, 'frontRatingKg'),
			emptyKg: num(body, 'emptyKg'),
			frontEmptyKg: num(body, 'frontEmptyKg'),
			rearEmptyKg: num(body, 'rearEmptyKg'),
			wheelbase: size,
			wheelbaseM,
			roof: word(body, 'roof'),
			trackM: num(body, 'trackM'),
			liftM: lift === null ? undefined : num(lift, 'liftM'),
			people: peopleOf(facts) ?? undefined,
			rearSeatM: (peopleOf(facts) ?? 0) > 2 ? secondRowM : undefined,
		}),
	);
}

/** From here on a thing without a place leaves the axles open [kg]. */
const openKg = 30;

function axleRule(axle: 'rear' | 'front'): Rule {
	const field = `${axle}RatingKg`;
	const id = `${axle}-axle-overloaded`;
	return {
		id,
		system: 'weight',
		about: `With full tanks the ${axle} axle is within its rating.`,
		needs: `rating of the ${axle} axle, wheelbase, empty mass, place and mass of what is aboard`,
		clearedBy: [],
		source: published('49 CFR 571.3', 'GAWR: load-carrying capacity of a single axle system'),
		check: (facts) => {
			const body = facts.first('van');
			if (body === null || num(body, field) === undefined) {
				return [
					unknown(`van.${field}`, 'What are the ratings of the front and the rear axle on the door label?'),
				];
			}
			if (word(body, 'wheelbase') === undefined && num(body, 'wheelbaseM') === undefined) {
				return [
					unknown(
						'van.wheelbase',
						'How big is the van: short, medium, long or extra-long wheelbase, and which roof?',
					),
				];
			}
			const counted = weightsOf(facts).filter(
				({ zone }) => axle === 'rear' || zone === null || !behindAxle.has(zone),
			);
			const placed = counted.filter(({ zone }) => zone !== null);
			const open = counted.filter((line) => line.zone === null && line.massKg + line.waterL >= openKg);
			const asks = open.map(({ piece, name }) =>
				unknown(
					`${piece.kind}.zone`,
					facts.say`Where does the ${name} stand (front, middle, over the axle, back)?`,
				),
			);
			if (num(body, 'emptyKg') === undefined) {
				asks.push(
					unknown('van.emptyKg', 'What does the empty van weigh, or what do the scales show as it stands?'),
				);
			}
			const told = placed.filter(
				({ isToldMass, isToldZone, waterL }) => isToldZone && (isToldMass || waterL > 0),
			);
			// Off a scale axle by axle; a share of the whole is only typical.
			const isWeighed = num(body, 'frontEmptyKg') !== undefined && num(body, 'rearEmptyKg') !== undefined;
			for (const full of ['fresh-tank', 'gray-tank'] as const) {
				const bare = told.map((line) => (line.isToldMass ? line : { ...line, massKg: 0 }));
				const outcome = payloadOf(facts, bare, full);
				const finding = outcome === null ? null : findingOf(outcome, id);
				if (finding !== null && isWeighed)
					return [found('danger', finding.text, [body, ...told.map(({ piece }) => piece)]), ...asks];
			}
			for (const full of ['fresh-tank', 'gray-tank'] as const) {
				const outcome = payloadOf(facts, placed, full);
				const finding = outcome === null ? null : findingOf(outcome, id);
				if (finding === null) continue;
				const text = facts.say`By usual masses and places: ${finding.text} Weigh each axle.`;
				return [found('warning', text, [body, ...placed.map(({ piece }) => piece)]), ...asks];
			}
			return asks;
		},
	};
}

/** What many van roofs bear where no limit was told [kg] (practice). */
const usualRoofKg = 150;

const roofLoad: Rule = {
	id: 'roof-overloaded',
	system: 'weight',
	about: 'What stands on the roof stays within the roof load allowed.',
	needs: 'roof load allowed, masses on the roof',
	clearedBy: [],
	source: practice("the vehicle maker's roof load, with rack; about 150 kg where it was not read"),
	check: (facts) => {
		const above = weightsOf(facts).filter(({ onRoof }) => onRoof);
		if (above.length === 0) return fine;
		const limits = facts.pieces('roof-rack').flatMap((piece) => num(piece, 'limitKg') ?? []);
		const limitKg = limits.length === 0 ? null : Math.min(...limits);
		const totalKg = sumKg(above);
		const toldKg = sumKg(above.filter(({ isToldMass }) => isToldMass));
		const pieces = above.map(({ piece }) => piece);
		const names = above.map(({ name, massKg }) => `${name} ${kg(facts, massKg)}`).join(', ');
		if (limitKg !== null && totalKg > limitKg) {
			return [
				found(
					toldKg > limitKg ? 'danger' : 'warning',
					facts.say`The roof carries about ${kg(facts, totalKg)} (${names}); ${kg(facts, limitKg, 'down')} are allowed: take ${kg(facts, totalKg - limitKg)} down.`,
					pieces,
				),
			];
		}
		if (limitKg === null && totalKg > usualRoofKg) {
			return [
				found(
					'warning',
					facts.say`The roof carries about ${kg(facts, totalKg)} (${names}); many van roofs allow ${kg(facts, usualRoofKg)} with the rack. Read the limit in the vehicle's manual.`,
					pieces,
				),
			];
		}
		return fine;
	},
};

const liftUnchecked: Rule = {
	id: 'lift-without-stability',
	system: 'weight',
	about: 'After a lift the stability factor was worked out again.',
	needs: 'lift, whether stability was checked again',
	clearedBy: [],
	source: published('National Highway Traffic Safety Administration', 'static stability factor'),
	check: (facts) => {
		const lift = facts.first('lift');
		if (lift === null || isYes(lift, 'checked')) return fine;
		const outcome = payloadOf(
			facts,
			weightsOf(facts).map((line) => ({ ...line, zone: line.zone ?? 'middle' })),
			'fresh-tank',
		);
		const before = outcome === null ? null : resultOf(outcome, 'stabilityBefore');
		const after = outcome === null ? null : resultOf(outcome, 'stabilityAfter');
		const figures =
			before === null || after === null
				? facts.say`Tell me the size of the van and I work it out.`
				: facts.say`By usual masses it goes from ${Math.floor(before * 100) / 100} bare to ${Math.floor(after * 100) / 100} loaded and lifted.`;
		const by = num(lift, 'liftM');
		const much =
			by === undefined
				? ''
				: facts.say` of ${facts.show('length', by, { unit: facts.context.units === 'us' ? 'in' : 'cm', decimals: 1 })}`;
		return [
			found(
				'warning',
				facts.say`The lift${much} raises the centre of gravity and the static stability factor was not worked out again: it tips sooner. ${figures} Keep weight low and have the change approved where the law asks for it.`,
				[lift],
			),
		];
	},
};

const tiresOverloaded: Rule = {
	id: 'tires-overloaded',
	system: 'weight',
	about: 'The tires carry the heavier axle at its rating.',
	needs: 'load index, axle rating',
	clearedBy: [],
	source: published('ETRTO Standards Manual', 'load index'),
	check: (facts) => {
		const tires = facts.first('tires');
		const body = facts.first('van');
		const loadIndex = tires === null ? undefined : num(tires, 'loadIndex');
		const axleKg = body === null ? undefined : num(body, 'rearRatingKg');
		if (tires === null || body === null || loadIndex === undefined || axleKg === undefined) return fine;
		const finding = findingOf(facts.run('tire', { axleLoadKg: axleKg, loadIndex }), 'tire-overloaded');
		return finding === null ? fine : [found('danger', finding.text, [tires, body])];
	},
};

/** A tank worth a word of its own [L]. */
const largeTankL = 60;

const tankBehindAxle: Rule = {
	id: 'tank-behind-axle',
	system: 'weight',
	about: 'Large tanks do not hang behind the rear axle.',
	needs: 'place and volume of the tanks',
	clearedBy: [],
	source: practice('heavy things between the axles, low'),
	check: (facts) =>
		facts
			.pieces('fresh-tank', 'gray-tank')
			.filter(
				(tank: Piece) =>
					behindAxle.has(word(tank, 'zone') ?? '') && (num(tank, 'volumeL') ?? 0) >= largeTankL,
			)
			.map((tank) => {
				const massKg = num(tank, 'volumeL') ?? 0;
				return found(
					'note',
					facts.say`The ${labelOf(tank)} puts ${kg(facts, massKg)} behind the rear axle when full: more than that on the rear axle, and it lightens the front. Between the axles it loads both.`,
					[tank],
				);
			}),
};

export const weightRules: readonly Rule[] = [
	grossWeight,
	axleRule('rear'),
	axleRule('front'),
	roofLoad,
	liftUnchecked,
	tiresOverloaded,
	tankBehindAxle,
];
