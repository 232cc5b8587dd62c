import { writeNumber } from '../quantity/write.js';
import { cautionGasSpring, cautionLid } from '../structure/cautions.js';
import {
	type GasSpring,
	holdingForceN,
	type Lid,
	lidFrom,
	type SwingPoint,
	springFor,
	springLine,
	swingCurve,
	swingPoint,
	temperatureFactor,
} from '../structure/strut.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, type InputOf, number, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';
import { gravityMS2 } from '../weight/gravity.js';

/** Springs are sold in steps of so much [N]. */
const forceStepN = 50;
/** What a hand is asked to give at the handle [N]. */
const usualHandN = 150;
/** Fittings and the rod's guide take so much beside the stroke, in the closed length [m]. */
const fittingsM = 0.06;
/** Lid weight is taken so much heavier than said: paint, damp, hinges. */
const usualReserve = 1.1;

const fields = {
	massKg: quantity({
		label: 'mass of the lid',
		kind: 'mass',
		min: 0.2,
		max: 300,
		aliases: ['lid', 'door', 'hatch', 'weighs', 'weight', 'mass', 'deckel', 'klappe', 'tapa', 'puerta'],
		required: 'What does the lid weigh?',
	}),
	lidLengthM: quantity({
		label: 'hinge to free edge',
		kind: 'length',
		min: 0.1,
		max: 4,
		aliases: ['lid length', 'long', 'deep', 'length', 'lang', 'länge', 'tief', 'larga', 'largo'],
	}),
	centreM: quantity({
		label: 'hinge to centre of mass',
		kind: 'length',
		min: 0.02,
		max: 4,
		aliases: [
			'centre of mass',
			'center of mass',
			'cg',
			'centre of gravity',
			'center of gravity',
			'schwerpunkt',
		],
		fallback: {
			value: (given) => (typeof given.lidLengthM === 'number' ? given.lidLengthM / 2 : 0.5),
			why: 'half way from the hinge to the free edge, an even lid',
			confirm: true,
		},
	}),
	armM: quantity({
		label: 'lever of the spring',
		kind: 'length',
		min: 0.01,
		max: 2,
		aliases: ['arm', 'lever', 'moment arm', 'lever arm', 'hebelarm', 'brazo'],
		help: 'Distance of the hinge from the line of the spring, where only one place is looked at.',
	}),
	lidMountM: quantity({
		label: 'spring on the lid, from the hinge',
		kind: 'length',
		min: 0.02,
		max: 4,
		aliases: [
			'mount',
			'lid mount',
			'mount on lid',
			'mounted on the lid',
			'upper mount',
			'top mount',
			'on the lid',
			'mounted',
			'from the hinge',
			'from hinge',
			'am deckel',
		],
		help: 'Along the lid.',
	}),
	bodyMountBelowM: quantity({
		label: 'spring on the body, below the hinge',
		kind: 'length',
		min: -2,
		max: 3,
		aliases: [
			'below',
			'below the hinge',
			'below hinge',
			'under the hinge',
			'down',
			'unter dem scharnier',
			'debajo',
		],
	}),
	bodyMountOutM: quantity({
		label: 'spring on the body, out from the hinge',
		kind: 'length',
		min: -2,
		max: 3,
		aliases: ['out', 'out from the hinge', 'ahead of the hinge', 'body mount', 'vor dem scharnier'],
		help: 'Level, towards the free edge of the lid.',
		fallback: { value: 0, why: 'straight below the hinge', confirm: true },
	}),
	lidMountBelowM: quantity({
		label: 'spring on the lid, under its face',
		kind: 'length',
		min: -1,
		max: 1,
		aliases: ['bracket depth', 'under the lid', 'under the lid face', 'bracket'],
		fallback: { value: 0, why: 'in the line of hinge and lid' },
	}),
	handleM: quantity({
		label: 'hinge to handle',
		kind: 'length',
		min: 0.05,
		max: 4,
		aliases: ['handle', 'grip', 'griff', 'asa'],
		fallback: {
			value: (given) =>
				typeof given.lidLengthM === 'number'
					? given.lidLengthM
					: 2 * (typeof given.centreM === 'number' ? given.centreM : 0.5),
			why: 'at the free edge',
		},
	}),
	springs: count({
		label: 'springs',
		min: 1,
		max: 6,
		aliases: [
			'struts',
			'springs',
			'gas springs',
			'gas struts',
			'shocks',
			'dämpfer',
			'federn',
			'amortiguadores',
		],
		fallback: { value: 2, why: 'one on each side' },
	}),
	springN: quantity({
		label: 'force of the spring to be checked',
		kind: 'force',
		min: 10,
		max: 5000,
		aliases: ['strut', 'spring', 'gas spring', 'rated', 'force', 'with', 'have', 'kraft', 'fuerza'],
		help: 'Extended, as printed on it; leave it out to have it chosen.',
	}),
	lid: choice({
		label: 'how it hangs when shut',
		options: {
			flat: [
				'flat',
				'bench',
				'bed',
				'bed box',
				'platform',
				'bed platform',
				'box',
				'horizontal',
				'top opening',
				'liegend',
			],
			hatch: [
				'hatch',
				'hanging',
				'tailgate',
				'vertical',
				'awning door',
				'top hinged',
				'top-hinged',
				'heckklappe',
				'portón',
			],
		},
		fallback: { value: 'flat', why: 'lying flat when shut, as on a bench', confirm: true },
	}),
	openingDeg: quantity({
		label: 'opening angle',
		kind: 'angle',
		min: 5,
		max: 170,
		aliases: ['opens', 'open', 'opening', 'swing', 'öffnet', 'öffnungswinkel', 'abre'],
		fallback: { value: 90, why: 'a quarter turn', confirm: true },
	}),
	coldC: quantity({
		label: 'coldest use',
		kind: 'temperature',
		min: -50,
		max: 40,
		aliases: ['cold', 'coldest', 'winter', 'down to', 'kalt', 'frío'],
		fallback: { value: -10, why: 'winter use; springs weaken in the cold' },
	}),
	hotC: quantity({
		label: 'hottest use',
		kind: 'temperature',
		min: 0,
		max: 90,
		aliases: ['hottest', 'summer', 'hot', 'heiß', 'verano'],
		fallback: { value: 40, why: 'a closed van in summer; springs stiffen in the heat' },
	}),
	progression: number({
		label: 'force pushed in over force extended',
		min: 1,
		max: 2,
		aliases: ['progression', 'k factor', 'progressivity', 'progression factor', 'kennung'],
		fallback: {
			value: 1.2,
			why: 'the low end of the usual 1.2 to 1.4, the safe side for holding (practice)',
			confirm: true,
		},
	}),
};

type Input = InputOf<typeof fields>;

export const strut = declareTopic({
	name: 'strut',
	title: 'Gas spring for a lid or door',
	system: 'structure',
	purpose:
		'Which gas spring holds a lid or door open, with its stroke and the force a hand needs over the swing.',
	words: [
		'strut',
		'gas strut',
		'gas struts',
		'struts',
		'gas spring',
		'gas springs',
		'lid',
		'lift support',
		'bed lift',
		'hold',
		'holds',
		'hold open',
		'holds open',
		'hold it open',
		'gasfeder',
		'gasdruckdämpfer',
		'gasdruckfeder',
		'resorte de gas',
		'amortiguador de gas',
	],
	examples: [
		'gas strut for a lid 28 kg, center of mass 0.62 m, arm 0.16 m',
		'gas struts bench lid 22 lb, 30 in long, lid mount 8 in, 9 in below the hinge, opens 85 degrees',
		'strut 300 N on a hatch 12 kg, 0.8 m long, lid mount 250 mm, 200 mm below, out 50 mm',
		'gasfeder deckel 15 kg, 0.9 m lang, am deckel 0.3 m, unter dem scharnier 0.25 m',
	],
	method:
		'Moments about the hinge over the whole swing: weight, spring on its line, hand at the handle; force by stroke and absolute temperature. Friction of spring and hinge, side pull and wear (a spring loses some percent a year) are not covered.',
	fields,
	needs: [
		{
			anyOf: ['lidLengthM', 'centreM'],
			question: 'How long is the lid from hinge to free edge?',
		},
		{
			anyOf: ['armM', 'lidMountM'],
			question: 'Where does the spring sit on the lid, from the hinge (or what is its lever)?',
		},
	],
	calculate: calculateStrut,
});

function n(value: number, decimals = 2): string {
	return writeNumber(value, decimals);
}

function calculateStrut(input: Input, sheet: Sheet) {
	sheet.caution(cautionGasSpring, cautionLid);
	if (input.lidLengthM !== undefined && input.centreM > input.lidLengthM) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read the centre of mass at ${sheet.show('length', input.centreM, { decimals: 2 })} on a lid ${sheet.show('length', input.lidLengthM, { decimals: 2 })} long.`,
			sheet.say`Both are measured from the hinge; the centre of mass lies within the lid.`,
			'centreM',
		);
	}
	return input.lidMountM === undefined
		? byLever(input, input.armM as number, sheet)
		: byGeometry(input, input.lidMountM, sheet);
}

/** Only the lever is known: the balance at one place, with the lid level. */
function byLever(input: Input, armM: number, sheet: Sheet) {
	const momentNm = input.massKg * gravityMS2 * input.centreM;
	const balanceN = momentNm / (input.springs * armM);
	const neededN = (balanceN * usualReserve) / temperatureFactor(input.coldC);
	sheet.step(
		'moment of the lid, level',
		'M = m · g · x',
		`${n(input.massKg)} kg × ${gravityMS2} m/s² × ${n(input.centreM, 3)} m`,
		momentNm,
		{ kind: 'moment', source: physics('moment about the hinge') },
	);
	sheet.step(
		'force to balance it',
		'F = M / (n · d)',
		`${n(momentNm)} N m / (${input.springs} × ${n(armM, 3)} m)`,
		balanceN,
		{ kind: 'force', source: physics('balance of moments') },
	);
	writeReserve(input, balanceN, neededN, sheet);
	sheet.result('moment', 'moment of the lid, level', momentNm, { kind: 'moment', write: { round: 'up' } });
	sheet.result('balanceForce', 'force that balances it', balanceN, {
		kind: 'force',
		write: { round: 'up', decimals: 0 },
	});
	sheet.finding(
		'note',
		'one-place-only',
		sheet.say`This looks at one place of the swing. Name where the spring sits on lid and body to have the whole swing checked.`,
		practice('the whole swing is checked before drilling'),
	);
	return decide(input, neededN, balanceN, null, sheet);
}

function writeReserve(input: Input, balanceN: number, neededN: number, sheet: Sheet): void {
	sheet.step(
		'with reserve, in the cold',
		'F20 = 1.1 · F · 293 K / T',
		`1.1 × ${n(balanceN)} N / ${n(temperatureFactor(input.coldC), 3)}`,
		neededN,
		{ kind: 'force', source: practice('a tenth in hand; force goes with the absolute temperature') },
	);
}

function byGeometry(input: Input, lidMountM: number, sheet: Sheet) {
	if (input.bodyMountBelowM === undefined) {
		return sheet.ask({
			name: 'bodyMountBelowM',
			label: fields.bodyMountBelowM.meta.label,
			question: sheet.say`How far below the hinge does the spring sit on the body?`,
		});
	}
	if (input.lidLengthM !== undefined && lidMountM > input.lidLengthM) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read the spring ${sheet.show('length', lidMountM, { decimals: 2 })} from the hinge on a lid ${sheet.show('length', input.lidLengthM, { decimals: 2 })} long.`,
			sheet.say`Both are measured from the hinge.`,
			'lidMountM',
		);
	}
	const lid = lidFrom({ ...input, lidMountM, bodyMountBelowM: input.bodyMountBelowM });
	const unit = springFor(lid, 1, input.progression);
	const { extendedM, strokeM } = unit;
	const shortestM = extendedM - strokeM;
	// Two millimetres past its longest are play in the fittings.
	if (springLine(lid, lid.openDeg).lengthM < extendedM - 0.002 || strokeM < 0.005) {
		return sheet.refuse(
			'impossible',
			sheet.say`Mounted so, the spring does not lengthen all the way as the lid opens: it would be longest before the lid is open.`,
			sheet.say`Move the body's end lower or further back, or open the lid less.`,
			'bodyMountBelowM',
		);
	}
	const midDeg = (lid.closedDeg + lid.openDeg) / 2;
	const balanceN = holdingForceN(lid, unit, midDeg, 20, 1);
	const neededN = holdingForceN(lid, unit, midDeg, input.coldC, usualReserve);
	if (neededN === null || balanceN === null || neededN <= 0) {
		return sheet.refuse(
			'impossible',
			neededN === null
				? sheet.say`Between mid swing and open the spring's line passes the hinge on the wrong side: no force holds the lid so.`
				: sheet.say`Between mid swing and open the weight does not close this lid: no spring is needed to hold it.`,
			neededN === null
				? sheet.say`Move the body's end lower or further out, so that the spring pushes the lid open.`
				: sheet.say`Check the opening angle and how the lid hangs.`,
			'bodyMountBelowM',
		);
	}
	const mid = swingPoint(lid, { ...unit, extendedN: balanceN }, midDeg, 20);
	sheet.step(
		'moment of the lid at mid swing',
		'M = m · g · x · cos θ',
		`${n(input.massKg)} kg × ${gravityMS2} m/s² × ${n(input.centreM, 3)} m × cos ${n(midDeg, 1)}°`,
		mid.weightMomentNm,
		{ kind: 'moment', source: physics('moment about the hinge') },
	);
	sheet.step('lever of the spring at mid swing', 'd', sheet.say`hinge to the line of the spring`, mid.armM, {
		kind: 'length',
		write: { unit: 'm', decimals: 3 },
		source: physics('geometry of the mounts'),
	});
	sheet.step(
		'force that balances it from mid swing to open',
		'F1 = max of M / (n · d · f(s))',
		sheet.say`${input.springs} springs, force rising to ${n(input.progression)} times as they are pushed in`,
		balanceN,
		{ kind: 'force', source: physics('balance of moments') },
	);
	writeReserve(input, balanceN, neededN, sheet);
	sheet.result('balanceForce', 'force that balances it', balanceN, {
		kind: 'force',
		write: { round: 'up', decimals: 0 },
	});
	millimetres(sheet, 'stroke', 'stroke', strokeM);
	millimetres(sheet, 'extendedLength', 'length open, eye to eye', extendedM);
	millimetres(sheet, 'compressedLength', 'length shut, eye to eye', shortestM);
	if (shortestM < strokeM + fittingsM) {
		sheet.finding(
			'warning',
			'no-room-for-spring',
			sheet.say`Shut, only ${mm(shortestM)} mm lie between the mounts; a spring of ${mm(strokeM)} mm stroke needs about ${mm(strokeM + fittingsM)} mm. Move a mount.`,
			practice('stroke and fittings fit into the closed length'),
		);
	}
	return decide(input, neededN, balanceN, { lid, unit, midDeg }, sheet);
}

interface Geometry {
	readonly lid: Lid;
	readonly unit: Omit<GasSpring, 'extendedN'>;
	readonly midDeg: number;
}

function decide(input: Input, neededN: number, balanceN: number, geometry: Geometry | null, sheet: Sheet) {
	const standardN = Math.ceil(neededN / forceStepN - 1e-9) * forceStepN;
	const chosenN = input.springN ?? standardN;
	sheet.result('forceNeeded', 'force needed, each', neededN, {
		kind: 'force',
		write: { round: 'up', decimals: 0 },
	});
	sheet.result('force', 'spring, each', chosenN, { kind: 'force', write: { decimals: 0 } });
	sheet.result('springs', 'springs', input.springs, {});
	const force = sheet.show('force', chosenN, { decimals: 0, unit: 'N' });
	const standard = sheet.show('force', standardN, { decimals: 0, unit: 'N' });
	const needed = sheet.show('force', neededN, { decimals: 0, round: 'up', unit: 'N' });
	const holds = chosenN >= neededN * (1 - 1e-9);
	if (geometry !== null) writeSwing(input, geometry, chosenN, sheet);
	if (!holds) {
		const balances = chosenN >= balanceN / temperatureFactor(input.coldC);
		sheet.finding(
			balances ? 'warning' : 'danger',
			balances ? 'small-strut-reserve' : 'falls-at-mid-swing',
			balances
				? sheet.say`${force} just balances the lid in the cold, with less than a tenth in hand: it will sink as the spring ages. ${standard} each would hold.`
				: sheet.say`${force} each does not hold the lid from mid swing to open in the cold: it falls on whoever is under it. It takes at least ${needed} each (${standard} as sold).`,
			physics('balance of moments'),
		);
		return sheet.answer(
			balances
				? sheet.say`${force} only just holds: take ${standard} each`
				: sheet.say`${force} is too weak: the lid falls. Take ${standard} each`,
			{
				governedBy: 'holding at mid swing',
				because: sheet.say`Needed ${needed} each, a tenth in hand at ${sheet.show('temperature', input.coldC)}.`,
			},
		);
	}
	sheet.tipping(
		'massKg',
		fields.massKg.meta.label,
		(input.massKg * chosenN) / neededN,
		sheet.say`up to ${sheet.show('mass', (input.massKg * chosenN) / neededN, { round: 'down' })}`,
		{ kind: 'mass' },
	);
	sheet.neighbour(
		`${n(standardN - forceStepN, 0)} N`,
		standardN - forceStepN >= neededN,
		sheet.say`below the ${needed} needed`,
	);
	sheet.neighbour(
		`${n(standardN + forceStepN, 0)} N`,
		true,
		sheet.say`holds with more in hand, harder to close`,
	);
	return sheet.answer(
		input.springN === undefined
			? sheet.say`${input.springs} × ${force} gas spring`
			: sheet.say`${input.springs} × ${force} holds the lid`,
		{
			governedBy: 'holding at mid swing',
			because:
				geometry === null
					? sheet.say`Balances the level lid at ${sheet.show('temperature', input.coldC)} with a tenth in hand; ${needed} each is needed.`
					: sheet.say`Holds from mid swing to open at ${sheet.show('temperature', input.coldC)} with a tenth in hand; ${needed} each is needed.`,
		},
	);
}

function millimetres(sheet: Sheet, name: string, label: string, valueM: number): void {
	sheet.result(name, label, valueM, {
		kind: 'length',
		write: sheet.context.units === 'us' ? { unit: 'in', decimals: 1 } : { unit: 'mm', decimals: 0 },
	});
}

function mm(valueM: number): string {
	return n(valueM * 1000, 0);
}

/** The hand force over the swing, warm and cold, and what it means. */
function writeSwing(input: Input, geometry: Geometry, chosenN: number, sheet: Sheet): void {
	const { lid, unit, midDeg } = geometry;
	const spring: GasSpring = { ...unit, extendedN: chosenN };
	const cold = swingCurve(lid, spring, input.coldC);
	const hot = swingCurve(lid, spring, input.hotC);
	const first = cold[0] as SwingPoint;
	const hotFirst = hot[0] as SwingPoint;
	const hotLast = hot.at(-1) as SwingPoint;
	const hand = (name: string, label: string, value: number) =>
		// Upright, what is left of the force is rounding.
		sheet.result(name, label, Math.abs(value) < 1e-6 ? 0 : value, {
			kind: 'force',
			write: { decimals: 0, round: 'up' },
		});
	hand('handForceClosed', 'hand to lift it from shut, cold (below 0 it rises by itself)', first.handN);
	hand(
		'handForceMid',
		'hand at mid swing, cold (below 0 it rises by itself)',
		swingPoint(lid, spring, midDeg, input.coldC).handN,
	);
	hand('handForceOpen', 'hand to start closing it, hot', -hotLast.handN);
	const mostN = Math.max(...cold.map((point) => point.handN), ...hot.map((point) => -point.handN));
	hand('handForceMost', 'most a hand must give', Math.max(0, mostN));
	const holdsFrom = cold.findLast((point) => point.handN > 1e-6);
	sheet.result(
		'holdsFrom',
		'holds by itself from an opening of',
		holdsFrom === undefined ? 0 : Math.min(input.openingDeg, holdsFrom.angleDeg - lid.closedDeg),
		{ kind: 'angle', write: { decimals: 0, round: 'up' } },
	);
	if (mostN > usualHandN) {
		sheet.finding(
			'warning',
			'hand-force-high',
			sheet.say`Somewhere in the swing a hand must give ${sheet.show('force', mostN, { decimals: 0, round: 'up' })} at the handle, more than the usual ${usualHandN} N. Move a mount or the handle.`,
			practice('about 150 N for one hand'),
		);
	}
	if (hotFirst.handN < 0) {
		sheet.finding(
			'warning',
			'opens-by-itself',
			sheet.say`Shut and hot, the springs lift the lid with ${sheet.show('force', -hotFirst.handN, { decimals: 0, round: 'up' })} at the handle: it needs a latch that holds, also in a crash.`,
			physics('balance of moments'),
		);
	}
}
