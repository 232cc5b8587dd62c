import { writeNumber } from '../quantity/write.js';
import { showerMaximumLMin, showerMaximumSource } from '../tables/water.js';
import { declareTopic } from '../topic/declare.js';
import { count, flag, type InputOf, number, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';
import { cautionBackflow, cautionDrain, cautionPotable, cautionTankWeight } from '../water/cautions.js';
import { type DailyWater, dailyWater } from '../water/household.js';
import { fullMassKg } from '../water/properties.js';

const fields = {
	freshL: quantity({
		label: 'fresh tank',
		kind: 'volume',
		min: 1,
		max: 3000,
		aliases: [
			'fresh',
			'fresh tank',
			'fresh water',
			'freshwater',
			'clean',
			'clean water',
			'potable',
			'water tank',
			'tank',
			'agua limpia',
			'agua potable',
			'depósito',
			'frischwasser',
			'frischwassertank',
		],
	}),
	grayL: quantity({
		label: 'gray tank',
		kind: 'volume',
		min: 1,
		max: 3000,
		aliases: [
			'gray',
			'grey',
			'gray tank',
			'grey tank',
			'gray water',
			'grey water',
			'graywater',
			'greywater',
			'waste',
			'waste water',
			'waste tank',
			'aguas grises',
			'grises',
			'grauwasser',
			'abwasser',
			'abwassertank',
		],
	}),
	people: count({
		label: 'people',
		min: 1,
		max: 20,
		aliases: [
			'peeps',
			'pers',
			'people',
			'persons',
			'person',
			'adults',
			'adult',
			'of us',
			'pax',
			'crew',
			'guests',
			'personas',
			'personen',
			'leute',
			'ppl',
			'folks',
			'family of',
			'familia de',
			'familie mit',
			'familie von',
		],
		required: 'How many people live aboard?',
	}),
	kids: count({
		label: 'children',
		min: 0,
		max: 20,
		aliases: ['kids', 'kid', 'children', 'child', 'niños', 'niñas', 'kinder', 'kind'],
		fallback: { value: 0, why: 'none named besides the people' },
	}),
	wantedH: quantity({
		label: 'days wanted',
		kind: 'duration',
		min: 1,
		max: 24 * 365,
		aliases: [
			'for',
			'trip',
			'off grid',
			'off-grid',
			'boondocking',
			'last',
			'lasts',
			'between fills',
			'autonomía',
			'autark',
			'reichen',
		],
	}),
	showers: flag({
		label: 'showers aboard',
		yes: ['with shower', 'with showers'],
		no: ['no shower', 'no showers', 'without shower', 'without a shower', 'sin ducha', 'ohne dusche'],
		fallback: { value: true, why: 'the safe side: people shower aboard' },
	}),
	showerH: quantity({
		label: 'running time of a shower',
		kind: 'duration',
		min: 0.2 / 60,
		max: 1,
		aliases: ['shower', 'showers', 'shower length', 'showering', 'ducha', 'duchas', 'dusche', 'duschen'],
		help: 'Only while the water runs.',
		fallback: { value: 3 / 60, why: 'water running 3 min, turned off to soap (practice)', confirm: true },
	}),
	showersPerDay: number({
		label: 'showers a person a day',
		min: 0,
		max: 4,
		aliases: [
			'showers',
			'showers a day',
			'showers per day',
			'showers each',
			'showers a person',
			'duchas',
			'duchas al día',
			'duschen am tag',
		],
		fallback: { value: 1, why: 'one a day each; many vans shower less (practice)', confirm: true },
	}),
	showerLMin: quantity({
		label: 'flow of the shower head',
		kind: 'flow',
		min: 0.5,
		max: 20,
		aliases: ['shower head', 'showerhead', 'shower flow', 'head', 'rociador', 'duschkopf'],
		fallback: { value: showerMaximumLMin, why: 'the most a water-saving head may pass', confirm: true },
	}),
	dishesL: quantity({
		label: 'dishes, all together a day',
		kind: 'volume',
		min: 0,
		max: 200,
		aliases: ['dishes', 'dish', 'dishwashing', 'washing up', 'platos', 'vajilla', 'abwasch', 'geschirr'],
		fallback: {
			value: (given) => 3 * (numberOr(given.people, 2) + numberOr(given.kids, 0)),
			why: '3 L a person a day in a basin (practice)',
			confirm: true,
		},
	}),
	washingL: quantity({
		label: 'hands and teeth, a person a day',
		kind: 'volume',
		min: 0,
		max: 100,
		aliases: ['hands', 'teeth', 'washing', 'hand washing', 'basin', 'manos', 'hände', 'zähne'],
		fallback: { value: 2, why: 'hands, face and teeth (practice)' },
	}),
	drinkingL: quantity({
		label: 'drinking and cooking, a person a day',
		kind: 'volume',
		min: 0,
		max: 30,
		aliases: ['drinking', 'drink', 'cooking', 'beber', 'cocinar', 'trinken', 'kochen'],
		fallback: { value: 3, why: 'drinking and cooking (practice); more in the heat' },
	}),
	bottled: flag({
		label: 'drinking water in bottles',
		yes: ['bottled', 'bottled water', 'drink bottled', 'bottles', 'embotellada', 'flaschen'],
		fallback: { value: false, why: 'drinking water comes from the tank' },
	}),
	flushL: quantity({
		label: 'flushing, a person a day',
		kind: 'volume',
		min: 0,
		max: 50,
		aliases: ['flush', 'flushing', 'toilet', 'cassette', 'inodoro', 'toilette'],
		fallback: { value: 0, why: 'nothing said of a toilet that flushes from this tank' },
	}),
	usable: quantity({
		label: 'usable share of the fresh tank',
		kind: 'fraction',
		min: 0.5,
		max: 1,
		aliases: ['usable', 'dead volume', 'nutzbar', 'útil'],
		fallback: { value: 0.95, why: 'the pick-up leaves about 5 % (practice)' },
	}),
};

type Input = InputOf<typeof fields>;

function numberOr(value: unknown, otherwise: number): number {
	return typeof value === 'number' ? value : otherwise;
}

export const tank = declareTopic({
	name: 'tank',
	title: 'Days of fresh and gray water',
	system: 'water',
	purpose:
		'How long the fresh tank lasts, when the gray tank is full, and which comes first; or the tanks that so many days take.',
	words: [
		'fresh water',
		'gray water',
		'grey water',
		'water tank',
		'fresh tank',
		'gray tank',
		'frischwasser',
		'grauwasser',
		'agua limpia',
		'aguas grises',
		'tank',
		'tanks',
		'tank size',
		'tank sizes',
		'how much water',
		'wie viel wasser',
		'how long do the tanks last',
		'how long does the tank last',
		'how long will the tank last',
		'how long will the tanks last',
		'how long does the water last',
		'how long will the water last',
		'wie lange reicht das wasser',
		'cuánto dura el agua',
		'days of water',
		'how many days of water',
		'water last',
		'wassertank',
		'depósito de agua',
		'agua para',
		'días de agua',
		'cuánta agua',
		'cuántos días',
		'reicht das wasser',
		'wasser reicht',
		'tage wasser',
		'wieviel tage',
		'wie viele tage',
		'water for',
		'litros de agua',
		'liter wasser',
		'gal of water',
		'gallons of water',
		'of water',
		'water',
		'wasser',
		'agua',
	],
	examples: [
		'30 gal fresh, 20 gal gray, 2 people, 4 min showers',
		'how many days of water: fresh 100 L gray 60 L 2 adults no shower',
		'2 people fresh tank 40 gal, waste tank 40 gal for 5 days',
		'tank sizes for 3 people 5 days',
		'frischwasser 90 L abwasser 70 L 2 personen',
	],
	notFor: ['fuel'],
	method:
		'Water used a day by people and habits, against both tanks. What is drunk or flushed does not reach the gray tank; everything else does. Spills, rain and refills on the way are not counted.',
	fields,
	needs: [
		{
			anyOf: ['freshL', 'wantedH'],
			question: 'How big is the fresh tank, or how many days should the water last?',
		},
	],
	calculate: calculateTank,
});

const balance = physics('water balance');
/** Less than a glass a day is no use of water [L/day]. */
const leastUseL = 0.1;

function habitsOf(input: Input, people = input.people): DailyWater {
	return dailyWater({
		people,
		showersPerPersonDay: input.showers ? input.showersPerDay : 0,
		showerMin: input.showerH * 60,
		showerLMin: input.showerLMin,
		// Where the dishes are the usual guess, they grow with the crew.
		dishesLDay: (input.dishesL / input.people) * people,
		washingLPersonDay: input.washingL,
		drinkingLPersonDay: input.bottled ? 0 : input.drinkingL,
		flushingLPersonDay: input.flushL,
	});
}

/** With the fresh tank known, by name or by the days it must last. */
type WithTank = Input & { readonly freshL: number };

interface Days {
	readonly freshD: number;
	readonly grayD: number;
	readonly firstD: number;
}

function daysOf(input: WithTank, day: DailyWater): Days {
	const freshD = (input.freshL * input.usable) / day.freshL;
	const grayD =
		input.grayL === undefined || day.grayL < leastUseL ? Number.POSITIVE_INFINITY : input.grayL / day.grayL;
	return { freshD, grayD, firstD: Math.min(freshD, grayD) };
}

/** Days, rounded down so that nobody runs dry. */
function inDays(sheet: Sheet, days: number): string {
	return counted(sheet, writeNumber(days, 1, 'down'));
}

function counted(sheet: Sheet, days: string): string {
	return days === '1' ? sheet.say`${days} day` : sheet.say`${days} days`;
}

function calculateTank(given: Input, sheet: Sheet) {
	const input = { ...given, people: given.people + given.kids };
	const day = habitsOf(input);
	if (day.freshL < leastUseL) {
		return sheet.refuse(
			'impossible',
			'By these habits hardly any water is used at all.',
			'Give at least one use of water: drinking, dishes, washing or showers.',
			'drinkingL',
		);
	}
	if (input.freshL === undefined) return sizeTanks(sheet, input, day, (input.wantedH as number) / 24);
	return lastTanks(sheet, { ...input, freshL: input.freshL }, day);
}

/** How long the tanks last that are there. */
function lastTanks(sheet: Sheet, input: WithTank, day: DailyWater) {
	const days = daysOf(input, day);
	const grayFirst = days.grayD < days.freshD;
	const wantedD = input.wantedH === undefined ? null : input.wantedH / 24;
	writeWorking(sheet, input, day, days);
	writeResults(sheet, input, day, days, wantedD);
	writeNeighbours(sheet, input, wantedD);
	writeTipping(sheet, input, days, wantedD);
	writeFindings(sheet, input, day, days, wantedD);
	sheet.caution(cautionPotable, cautionBackflow, cautionTankWeight, cautionDrain);

	const first = inDays(sheet, days.firstD);
	const fresh = inDays(sheet, days.freshD);
	const headline = grayFirst
		? sheet.say`${first}: the gray tank is full first; fresh lasts ${fresh}`
		: !Number.isFinite(days.grayD)
			? sheet.say`${first} until the fresh tank is empty`
			: sheet.say`${first}: the fresh tank is empty first; gray lasts ${inDays(sheet, days.grayD)}`;
	const use = sheet.show('volume', day.freshL, { round: 'up' });
	const toGray = sheet.show('volume', day.grayL, { round: 'up' });
	return sheet.answer(headline, {
		governedBy: grayFirst ? 'gray tank' : 'fresh tank',
		because: sheet.say`The crew uses ${use} a day; ${toGray} of it runs to the gray tank.`,
	});
}

/** The tanks that so many days take. */
function sizeTanks(sheet: Sheet, input: Input, day: DailyWater, wantedD: number) {
	const n = (value: number) => writeNumber(value, 2);
	const up = { round: 'up' } as const;
	const sized = (other: DailyWater, days: number) => ({
		freshL: (other.freshL * days) / input.usable,
		grayL: other.grayL * days,
	});
	const { freshL, grayL } = sized(day, wantedD);
	writeUse(sheet, input, day);
	sheet.step(
		'fresh tank for the days wanted',
		'Vfresh = Vf · d / u',
		`${n(day.freshL)} L/day × ${n(wantedD)} / ${n(input.usable)}`,
		freshL,
		{ kind: 'volume', source: practice('the pick-up leaves the last of the water') },
	);
	sheet.step(
		'gray tank for the days wanted',
		'Vgray = Vg · d',
		`${n(day.grayL)} L/day × ${n(wantedD)}`,
		grayL,
		{
			kind: 'volume',
			source: balance,
		},
	);
	const volume = { kind: 'volume', write: up } as const;
	sheet.result('freshNeeded', 'fresh tank for the days wanted', freshL, volume);
	sheet.result('grayNeeded', 'gray tank for the days wanted', grayL, volume);
	sheet.result('freshPerDay', 'fresh water a day', day.freshL, volume);
	sheet.result('grayPerDay', 'gray water a day', day.grayL, volume);
	sheet.result('freshMass', 'weight of the water in a full fresh tank', fullMassKg(freshL), {
		kind: 'mass',
		write: up,
	});
	const shown = (tanks: { readonly freshL: number; readonly grayL: number }) =>
		sheet.say`${sheet.show('volume', tanks.freshL, up)} fresh and ${sheet.show('volume', tanks.grayL, up)} gray`;
	for (const days of [wantedD - 1, wantedD + 1]) {
		if (days < 1) continue;
		sheet.neighbour(counted(sheet, writeNumber(days, 1)), true, shown(sized(day, days)));
	}
	for (const people of [input.people - 1, input.people + 1]) {
		if (people < 1) continue;
		const other = shown(sized(habitsOf(input, people), wantedD));
		sheet.neighbour(people === 1 ? sheet.say`1 person` : sheet.say`${people} people`, true, other);
	}
	if (input.grayL !== undefined && input.grayL < grayL) {
		sheet.finding(
			'warning',
			'days-not-met',
			sheet.say`The gray tank (${sheet.show('volume', input.grayL)}) is full before: it must hold ${sheet.show('volume', grayL, up)}.`,
			balance,
		);
	}
	sheet.caution(cautionPotable, cautionBackflow, cautionTankWeight, cautionDrain);
	const use = sheet.show('volume', day.freshL, up);
	const toGray = sheet.show('volume', day.grayL, up);
	const mass = sheet.show('mass', fullMassKg(freshL), up);
	return sheet.answer(sheet.say`${shown({ freshL, grayL })} for ${counted(sheet, writeNumber(wantedD, 1))}`, {
		because: `${sheet.say`The crew uses ${use} a day; ${toGray} of it runs to the gray tank.`} ${sheet.say`The fresh water alone weighs ${mass}.`}`,
		governedBy: 'fresh tank',
	});
}

/** The water of a day. */
function writeUse(sheet: Sheet, input: Input, day: DailyWater): void {
	const n = (value: number) => writeNumber(value, 2);
	if (input.showers) {
		sheet.step(
			'showers a day',
			'Vs = n · k · t · q',
			`${input.people} × ${n(input.showersPerDay)} × ${n(input.showerH * 60)} min × ${n(input.showerLMin)} L/min`,
			day.parts.showersL,
			{ kind: 'volume', source: showerMaximumSource },
		);
	}
	sheet.step(
		'water to the gray tank a day',
		'Vg = Vs + dishes + washing',
		`${n(day.parts.showersL)} L + ${n(day.parts.dishesL)} L + ${n(day.parts.washingL)} L`,
		day.grayL,
		{ kind: 'volume', source: balance },
	);
	sheet.step(
		'fresh water a day',
		'Vf = Vg + drinking + flushing',
		`${n(day.grayL)} L + ${n(day.parts.drinkingL)} L + ${n(day.parts.flushingL)} L`,
		day.freshL,
		{ kind: 'volume', source: balance },
	);
	sheet.source(practice('water habits aboard vans'));
}

function writeWorking(sheet: Sheet, input: WithTank, day: DailyWater, days: Days): void {
	const n = (value: number) => writeNumber(value, 2);
	writeUse(sheet, input, day);
	sheet.step(
		'days of fresh water',
		'u · Vfresh / Vf',
		`${n(input.usable)} × ${n(input.freshL)} L / ${n(day.freshL)} L/day`,
		days.freshD,
		{ unit: 'days', source: practice('the pick-up leaves the last of the water') },
	);
	if (Number.isFinite(days.grayD)) {
		sheet.step(
			'days until the gray tank is full',
			'Vgray / Vg',
			`${n(input.grayL ?? 0)} L / ${n(day.grayL)} L/day`,
			days.grayD,
			{ unit: 'days', source: balance },
		);
	}
}

function writeResults(
	sheet: Sheet,
	input: WithTank,
	day: DailyWater,
	days: Days,
	wantedD: number | null,
): void {
	const down = { unit: 'days', write: { decimals: 1, round: 'down' } } as const;
	const up = { kind: 'volume', write: { round: 'up' } } as const;
	sheet.result('days', 'days until the first tank stops you', days.firstD, down);
	sheet.result('freshDays', 'days until fresh is empty', days.freshD, down);
	if (Number.isFinite(days.grayD)) sheet.result('grayDays', 'days until gray is full', days.grayD, down);
	sheet.result('freshPerDay', 'fresh water a day', day.freshL, up);
	sheet.result('grayPerDay', 'gray water a day', day.grayL, up);
	sheet.result('matchingGray', 'gray tank that takes all of the fresh', grayNeededL(input, day), up);
	const heavy = { kind: 'mass', write: { round: 'up' } } as const;
	sheet.result('freshMass', 'weight of the water in a full fresh tank', fullMassKg(input.freshL), heavy);
	if (input.grayL !== undefined) {
		sheet.result('grayMass', 'weight of the water in a full gray tank', fullMassKg(input.grayL), heavy);
	}
	if (wantedD !== null) {
		sheet.result('freshNeeded', 'fresh tank for the days wanted', (day.freshL * wantedD) / input.usable, up);
		sheet.result('grayNeeded', 'gray tank for the days wanted', day.grayL * wantedD, up);
	}
}

/** Gray-bound share of one filling of the fresh tank [L]. */
function grayNeededL(input: WithTank, day: DailyWater): number {
	return (input.freshL * input.usable * day.grayL) / day.freshL;
}

function writeNeighbours(sheet: Sheet, input: WithTank, wantedD: number | null): void {
	for (const people of [input.people - 1, input.people + 1]) {
		if (people < 1) continue;
		const { firstD } = daysOf(input, habitsOf(input, people));
		sheet.neighbour(
			people === 1 ? sheet.say`1 person` : sheet.say`${people} people`,
			wantedD === null || firstD >= wantedD,
			inDays(sheet, firstD),
		);
	}
}

/** How long a shower may run: until the days wanted are no longer met, or the tanks change places. */
function writeTipping(sheet: Sheet, input: WithTank, days: Days, wantedD: number | null): void {
	if (!input.showers || input.showersPerDay === 0) return;
	const at = (showerH: number) => daysOf(input, habitsOf({ ...input, showerH }));
	if (wantedD !== null && days.firstD >= wantedD) {
		const showerH = crossing(input.showerH, 1, (value) => at(value).firstD >= wantedD);
		if (showerH === null) return;
		const longest = sheet.show('duration', showerH, { unit: 'min', round: 'down' });
		sheet.tipping('showerH', 'running time of a shower', showerH, sheet.say`up to ${longest} a shower`, {
			kind: 'duration',
		});
		return;
	}
	if (input.grayL === undefined) return;
	const grayFirst = days.grayD < days.freshD;
	const showerH = crossing(input.showerH, grayFirst ? 0 : 1, (value) => {
		const there = at(value);
		return there.grayD < there.freshD === grayFirst;
	});
	// Showers of seconds are no choice.
	if (showerH === null || showerH < 0.5 / 60) return;
	const shown = sheet.show('duration', showerH, { unit: 'min' });
	sheet.tipping(
		'showerH',
		'running time of a shower',
		showerH,
		grayFirst
			? sheet.say`down to ${shown} a shower, below which the fresh tank is the first`
			: sheet.say`up to ${shown} a shower, above which the gray tank is the first`,
		{ kind: 'duration' },
	);
}

/** Where between a value for which something holds and an end for which it doesn't the change lies, or null. */
function crossing(from: number, end: number, holds: (value: number) => boolean): number | null {
	if (holds(end)) return null;
	let inside = from;
	let outside = end;
	for (let step = 0; step < 50; step += 1) {
		const middle = (inside + outside) / 2;
		if (holds(middle)) inside = middle;
		else outside = middle;
	}
	return inside;
}

function writeFindings(
	sheet: Sheet,
	input: WithTank,
	day: DailyWater,
	days: Days,
	wantedD: number | null,
): void {
	const needed = sheet.show('volume', grayNeededL(input, day), { round: 'up' });
	if (input.grayL === undefined) {
		sheet.finding(
			'note',
			'gray-tank-not-named',
			sheet.say`No gray tank was named; to take all of this fresh water it must hold ${needed}.`,
			balance,
		);
	} else if (days.grayD < days.freshD) {
		const gray = sheet.show('volume', input.grayL);
		const left = sheet.show('volume', input.freshL * input.usable - days.grayD * day.freshL, {
			round: 'down',
		});
		sheet.finding(
			'warning',
			'gray-too-small',
			sheet.say`The gray tank (${gray}) is full while ${left} of fresh water is left. A gray tank of ${needed} takes it all.`,
			balance,
		);
	}
	if (wantedD !== null && days.firstD < wantedD) {
		const wanted = counted(sheet, writeNumber(wantedD, 1));
		const fresh = sheet.show('volume', (day.freshL * wantedD) / input.usable, { round: 'up' });
		const gray = sheet.show('volume', day.grayL * wantedD, { round: 'up' });
		sheet.finding(
			'warning',
			'days-not-met',
			sheet.say`For ${wanted} it takes ${fresh} fresh and ${gray} gray, or shorter showers.`,
			balance,
		);
	}
}
