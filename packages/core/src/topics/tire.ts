import { writeNumber } from '../quantity/write.js';
import { atmosphereSource, standardPressureKpa } from '../structure/atmosphere.js';
import {
	indexForLoad,
	largestLoadIndex,
	loadIndexSource,
	loadOfIndexKg,
	type SpeedSymbol,
	smallestLoadIndex,
	speedSymbolSource,
	speedSymbolsKmh,
} from '../tables/tires.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, type InputOf, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';
import { cautionAxle, cautionCold, cautionTireBurst, cautionTireMaker } from '../weight/cautions.js';
import { passengerTireDivisor, pressureAfterKpa, pressureForLoadKpa } from '../weight/tire.js';

/**
 * Load index of a single tire, that of the same tire in twins, and the speed symbol: "121/120R", "115/112". One number
 * alone needs a letter that is no unit: "116R" is a tire, "100W" a lamp.
 */
const markingPattern =
	'(?<![\\w/.,])(?:[7-9]\\d|1[0-3]\\d)(?:/(?:[7-9]\\d|1[0-3]\\d)\\s?[JKLMNPQRSTUHVWY]?|[PQRT])(?![\\w/])';

/** Width, height and rim as printed: "LT245/75R16", "225/75 R16C". */
const sizePattern =
	'(?<![\\w/.,])(?:LT|P|C)?\\s?[1-3]\\d{2}/[2-9]\\d\\s?-?(?:Z?R|D|B)?\\s?(?:1[2-9]|2[0-4])(?:\\.5)?(?:C|LT)?(?![\\w/])';

/** A tire should keep so much of its rating in hand. */
const usualReserve = 0.1;

const symbolWords = (symbol: SpeedSymbol) => [
	`speed symbol ${symbol}`,
	`speed rating ${symbol}`,
	`speed rated ${symbol}`,
	`speed index ${symbol}`,
];

const fields = {
	axleLoadKg: quantity({
		label: 'axle load',
		kind: 'mass',
		min: 50,
		max: 12_000,
		aliases: [
			'axle',
			'rear axle',
			'front axle',
			'on the axle',
			'axle weight',
			'axle load',
			'carries',
			'scale',
			'weighs',
			'achslast',
			'hinterachse',
			'vorderachse',
			'eje',
			'eje trasero',
			'eje delantero',
		],
		help: 'What stands on this axle with tanks full and people aboard.',
	}),
	tireLoadKg: quantity({
		label: 'load on one tire',
		kind: 'mass',
		min: 25,
		max: 6000,
		aliases: [
			'per tire',
			'per tyre',
			'each tire',
			'each tyre',
			'on one tire',
			'on one tyre',
			'per wheel',
			'each wheel',
			'on the wheel',
			'per corner',
			'each corner',
			'corner',
			'rear corner',
			'front corner',
			'pro reifen',
			'je reifen',
			'pro rad',
			'por neumático',
			'por rueda',
			'cada rueda',
		],
		help: 'Where one tire was weighed and not the axle; of two that differ the heavier.',
	}),
	loadIndex: count({
		label: 'load index',
		min: smallestLoadIndex,
		max: largestLoadIndex,
		aliases: [
			'índice',
			'loadindex',
			'li',
			'index',
			'load index',
			'single',
			'lastindex',
			'tragfähigkeitsindex',
			'índice de carga',
		],
		help: 'The number before the speed letter on the sidewall; of two numbers the first, for single tires.',
	}),
	dualLoadIndex: count({
		label: 'load index in twins',
		min: smallestLoadIndex,
		max: largestLoadIndex,
		aliases: ['dual index', 'dual load index', 'twin index', 'dually index', 'second index'],
		help: 'The second of two numbers on the sidewall.',
	}),
	marking: text({
		label: 'marking on the sidewall',
		pattern: markingPattern,
		help: 'Load index and speed symbol as printed, "121/120R".',
	}),
	size: text({
		label: 'size on the sidewall',
		pattern: sizePattern,
		help: 'Read so that it is not lost; what a tire carries stands in its load index, "LT245/75R16 120/116R".',
	}),
	arrangement: choice({
		label: 'tires on the axle',
		options: {
			single: ['two single tires', 'single tires', 'singles', 'srw', 'single wheels', 'einzelbereift'],
			twin: [
				'twin tires',
				'twins',
				'dual',
				'duals',
				'dually',
				'drw',
				'dual wheels',
				'twin wheels',
				'zwillingsbereift',
				'zwillinge',
				'ruedas gemelas',
			],
		},
		fallback: { value: 'single', why: 'one tire a side; say twins where there are two', confirm: true },
	}),
	speedSymbol: choice({
		label: 'speed symbol',
		options: {
			J: symbolWords('J'),
			K: symbolWords('K'),
			L: symbolWords('L'),
			M: symbolWords('M'),
			N: symbolWords('N'),
			P: symbolWords('P'),
			Q: symbolWords('Q'),
			R: symbolWords('R'),
			S: symbolWords('S'),
			T: symbolWords('T'),
			U: symbolWords('U'),
			H: symbolWords('H'),
			V: symbolWords('V'),
			W: symbolWords('W'),
			Y: symbolWords('Y'),
		},
	}),
	speedMS: quantity({
		label: 'top speed',
		kind: 'speed',
		min: 5,
		max: 90,
		aliases: ['top speed', 'max speed', 'speed', 'drive', 'höchstgeschwindigkeit', 'velocidad'],
	}),
	construction: choice({
		label: 'kind of tire',
		options: {
			commercial: [
				'LT or C tire',
				'lt',
				'c tire',
				'light truck',
				'commercial',
				'van tire',
				'transporterreifen',
			],
			passenger: [
				'passenger car tire',
				'passenger',
				'car tire',
				'car tires',
				'p metric',
				'suv tire',
				'pkw reifen',
			],
		},
		fallback: { value: 'commercial', why: 'LT or C marking, as vans carry', confirm: true },
	}),
	pressureKpa: quantity({
		label: 'cold pressure',
		kind: 'pressure',
		min: 30,
		max: 1000,
		aliases: ['pressure', 'cold', 'set to', 'inflated', 'pumped', 'at', 'druck', 'reifendruck', 'presión'],
	}),
	referencePressureKpa: quantity({
		label: 'pressure at the full load',
		kind: 'pressure',
		min: 150,
		max: 1000,
		aliases: [
			'max load at',
			'sidewall',
			'sidewall pressure',
			'max pressure',
			'reference pressure',
			'rated at',
			'max psi',
		],
		help: 'The pressure printed beside the largest load on the sidewall.',
	}),
	labelPressureKpa: quantity({
		label: 'pressure on the door label',
		kind: 'pressure',
		min: 100,
		max: 1000,
		aliases: ['placard', 'door label', 'label', 'sticker', 'door sticker', 'türaufkleber'],
	}),
	temperatureC: quantity({
		label: 'temperature now',
		kind: 'temperature',
		min: -50,
		max: 60,
		aliases: [
			'now',
			'outside',
			'will be',
			'falls to',
			'drops to',
			'down to',
			'tonight',
			'draußen',
			'fuera',
			'jetzt',
			'ahora',
			'today',
			'heute',
			'hoy',
			'its now',
			'currently',
		],
	}),
	setTemperatureC: quantity({
		label: 'temperature when it was set',
		kind: 'temperature',
		min: -50,
		max: 60,
		aliases: [
			'set at',
			'was',
			'when set',
			'filled at',
			'garage',
			'shop',
			'from',
			'eingestellt',
			'gesetzt',
			'puesto',
			'puesta',
			'ajustado',
			'ajustada',
		],
		fallback: { value: 20, why: 'a shop at 20 °C' },
	}),
	altitudeM: quantity({
		label: 'altitude now',
		kind: 'length',
		min: -450,
		max: 5000,
		aliases: ['altitude', 'elevation', 'pass', 'up at', 'above sea level', 'höhe', 'meereshöhe', 'altitud'],
	}),
	setAltitudeM: quantity({
		label: 'altitude where it was set',
		kind: 'length',
		min: -450,
		max: 5000,
		aliases: ['set altitude', 'shop altitude', 'from altitude', 'set elevation'],
		fallback: { value: 0, why: 'sea level' },
	}),
};

type Input = InputOf<typeof fields>;

export const tire = declareTopic({
	name: 'tire',
	title: 'Tires against the axle load and the cold',
	system: 'weight',
	purpose:
		'Whether the tires carry what stands on their axle, at which pressure, and what cold and height make of the pressure.',
	words: [
		'tire',
		'tires',
		'tyre',
		'tyres',
		'load index',
		'tire load',
		'tire pressure',
		'tyre pressure',
		'speed symbol',
		'reifen',
		'reifendruck',
		'neumático',
		'neumáticos',
		'llanta',
		'llantas',
	],
	examples: [
		'tires load index 116, rear axle 2240 kg',
		'121/120R tires on a 5600 lb rear axle, 80 psi sidewall',
		'tire load index 121 dual index 120 dually axle 9200 lb ok?',
		'tire pressure 65 psi set at 68F, 14F outside',
		'reifen lastindex 112, hinterachse 2150 kg',
	],
	method:
		"Load index table times the tires of the axle against the axle load; pressure in proportion to the load as the safe side of the published exponents; the gas law at fixed volume for cold and height. Side-to-side differences, camber and speed above the symbol are not covered; the tire maker's table decides.",
	fields,
	needs: [
		{
			anyOf: ['loadIndex', 'marking', 'pressureKpa'],
			question: 'What load index is on the sidewall (as 121/120R), or what is the pressure?',
		},
	],
	calculate: calculateTire,
});

interface Marked {
	readonly loadIndex: number | undefined;
	readonly dualLoadIndex: number | undefined;
	readonly speedSymbol: SpeedSymbol | undefined;
}

/** The printed marking; what is given by itself stands before it. */
function markedIn(input: Input): Marked {
	const match = /^(\d{2,3})(?:\s?\/\s?(\d{2,3}))?\s?([A-Za-z])?$/.exec(input.marking?.trim() ?? '');
	const number = (text: string | undefined) => (text === undefined ? undefined : Number(text));
	const letter = match?.[3]?.toUpperCase();
	return {
		loadIndex: input.loadIndex ?? number(match?.[1]),
		dualLoadIndex: input.dualLoadIndex ?? number(match?.[2]),
		speedSymbol:
			input.speedSymbol ??
			(letter !== undefined && letter in speedSymbolsKmh ? (letter as SpeedSymbol) : undefined),
	};
}

function calculateTire(input: Input, sheet: Sheet) {
	const marked = markedIn(input);
	if (input.marking !== undefined && marked.loadIndex === undefined) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read "${input.marking}" as the marking on the sidewall; that is no load index.`,
			sheet.say`Give it as printed, such as 121/120R.`,
			'marking',
		);
	}
	sheet.caution(cautionTireMaker, cautionAxle, cautionCold);
	return marked.loadIndex === undefined ? pressureOnly(input, sheet) : loadCheck(input, marked, sheet);
}

/** The pressure now, from the pressure as set, where temperature or altitude have changed. */
function pressureNowKpa(input: Input, sheet: Sheet): number | null {
	if (input.pressureKpa === undefined) return null;
	if (input.temperatureC === undefined && input.altitudeM === undefined) return input.pressureKpa;
	const temperatureC = input.temperatureC ?? input.setTemperatureC;
	const altitudeM = input.altitudeM ?? input.setAltitudeM;
	const before = {
		gaugeKpa: input.pressureKpa,
		temperatureC: input.setTemperatureC,
		ambientKpa: standardPressureKpa(input.setAltitudeM),
	};
	const after = { temperatureC, ambientKpa: standardPressureKpa(altitudeM) };
	const nowKpa = pressureAfterKpa(before, after);
	sheet.step(
		'pressure now',
		'p2 = (p1 + pa1) · T2 / T1 − pa2',
		`(${n(before.gaugeKpa)} + ${n(before.ambientKpa)}) kPa × ${n(temperatureC + 273.15)} K / ${n(before.temperatureC + 273.15)} K − ${n(after.ambientKpa)} kPa`,
		nowKpa,
		{ kind: 'pressure', source: physics("Gay-Lussac's law at fixed volume") },
	);
	sheet.source(atmosphereSource);
	return nowKpa;
}

function n(value: number, decimals = 2): string {
	return writeNumber(value, decimals);
}

function pressureOnly(input: Input, sheet: Sheet) {
	if (input.temperatureC === undefined && input.altitudeM === undefined) {
		return sheet.ask({
			name: 'loadIndex',
			label: fields.loadIndex.meta.label,
			question: sheet.say`What load index is on the sidewall and what does the axle carry (or how cold, how high is it now)?`,
		});
	}
	const setKpa = input.pressureKpa as number;
	const nowKpa = pressureNowKpa(input, sheet) as number;
	if (nowKpa <= 0) {
		return sheet.refuse(
			'impossible',
			sheet.say`From ${sheet.show('pressure', setKpa)} nothing would be left.`,
			sheet.say`Check the pressure and both temperatures.`,
			'pressureKpa',
		);
	}
	sheet.result('pressureNow', 'pressure now', nowKpa, {
		kind: 'pressure',
		write: { decimals: 1, round: 'down' },
	});
	sheet.result('pressureChange', 'change', nowKpa - setKpa, { kind: 'pressure', write: { decimals: 1 } });
	const backKpa = pressureAfterKpa(
		{
			gaugeKpa: setKpa,
			temperatureC: input.temperatureC ?? input.setTemperatureC,
			ambientKpa: standardPressureKpa(input.altitudeM ?? input.setAltitudeM),
		},
		{ temperatureC: input.setTemperatureC, ambientKpa: standardPressureKpa(input.setAltitudeM) },
	);
	sheet.result('setForNow', 'set there, to have as much now', backKpa, {
		kind: 'pressure',
		write: { decimals: 1, round: 'up' },
	});
	againstLabel(input, nowKpa, sheet);
	const now = sheet.show('pressure', nowKpa, { decimals: 1, round: 'down' });
	const set = sheet.show('pressure', setKpa, { decimals: 1 });
	const falls = nowKpa < setKpa;
	return sheet.answer(
		falls ? sheet.say`${set} becomes ${now}: add air in the cold` : sheet.say`${set} becomes ${now}`,
		{
			because: sheet.say`The air in the tire keeps its amount: its absolute pressure goes with the absolute temperature, and the gauge reads against the air around.`,
		},
	);
}

function againstLabel(input: Input, nowKpa: number, sheet: Sheet): void {
	const labelKpa = input.labelPressureKpa;
	if (labelKpa === undefined || nowKpa >= labelKpa) return;
	sheet.finding(
		'warning',
		'below-label-pressure',
		sheet.say`${sheet.show('pressure', nowKpa, { round: 'down' })} is below the ${sheet.show('pressure', labelKpa)} of the door label: add ${sheet.show('pressure', labelKpa - nowKpa, { round: 'up' })}.`,
		practice('the label is the least pressure'),
	);
}

/** What stands on the axle; of an axle and a tire that were both weighed, the one that says more. */
function axleLoadKgOf({ axleLoadKg = 0, tireLoadKg }: Input, tires: number, sheet: Sheet): number {
	if (tireLoadKg === undefined) return axleLoadKg;
	const byTireKg = tireLoadKg * tires;
	sheet.step('load on the axle', 'm = n · m1', `${tires} × ${n(tireLoadKg)} kg`, byTireKg, {
		kind: 'mass',
		source: physics('every tire of the axle taken as loaded like the one that was named'),
	});
	return Math.max(axleLoadKg, byTireKg);
}

function loadCheck(input: Input, marked: Marked, sheet: Sheet) {
	const twin = input.arrangement === 'twin';
	if (input.axleLoadKg === undefined && input.tireLoadKg === undefined) {
		return sheet.ask({
			name: 'axleLoadKg',
			label: fields.axleLoadKg.meta.label,
			question: sheet.say`What stands on the axle, loaded?`,
		});
	}
	const index = twin ? marked.dualLoadIndex : marked.loadIndex;
	if (index === undefined) {
		return sheet.ask({
			name: 'dualLoadIndex',
			label: fields.dualLoadIndex.meta.label,
			question: sheet.say`What is the second load index on the sidewall, for twin tires?`,
		});
	}
	if (
		marked.dualLoadIndex !== undefined &&
		marked.loadIndex !== undefined &&
		marked.dualLoadIndex > marked.loadIndex
	) {
		return sheet.refuse(
			'contradiction',
			sheet.say`I read ${marked.loadIndex} for single tires and ${marked.dualLoadIndex} for twins; in twins a tire carries less.`,
			sheet.say`Give the first number on the sidewall for single tires, the second for twins.`,
			'dualLoadIndex',
		);
	}
	const tires = twin ? 4 : 2;
	const divisor = input.construction === 'passenger' ? passengerTireDivisor : 1;
	const capacityOf = (one: number) => ((loadOfIndexKg(one) ?? 0) * tires) / divisor;
	const tableKg = loadOfIndexKg(index);
	if (tableKg === null) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read ${index} as the load index.`,
			sheet.say`Load indices from ${smallestLoadIndex} to ${largestLoadIndex} are in my table.`,
			'loadIndex',
		);
	}
	const loadKg = axleLoadKgOf(input, tires, sheet);
	const capacityKg = capacityOf(index);
	const reserveKg = capacityKg - loadKg;
	const carries = reserveKg >= 0;
	sheet.step(
		'the axle’s tires carry',
		'C = n · m(LI) / d',
		`${tires} × ${tableKg} kg / ${n(divisor)}`,
		capacityKg,
		{ kind: 'mass', source: loadIndexSource },
	);
	sheet.step('reserve', 'C − axle load', `${n(capacityKg)} kg − ${n(loadKg)} kg`, reserveKg, {
		kind: 'mass',
		source: physics('difference'),
	});
	if (divisor !== 1) {
		sheet.finding(
			'note',
			'passenger-tire',
			sheet.say`Passenger car tires on a van count for their rating divided by 1.10.`,
			fromMemory('49 CFR 571.120', 'S5.1.2'),
		);
	}
	sheet.result('capacity', 'the tires carry', capacityKg, {
		kind: 'mass',
		write: { decimals: 0, round: 'down' },
	});
	sheet.result('reserve', 'reserve', reserveKg, { kind: 'mass', write: { decimals: 0, round: 'down' } });
	sheet.result('reserveShare', 'reserve over the load', reserveKg / loadKg, {
		kind: 'fraction',
		write: { round: 'down' },
	});
	sheet.result('verdict', 'verdict', carries ? 'enough' : 'too weak');
	const needed = indexForLoad((loadKg * divisor) / tires);
	if (needed !== null) sheet.result('neededLoadIndex', 'smallest load index that carries it', needed);
	neighbours(index, loadKg, capacityOf, sheet);
	sheet.tipping(
		'axleLoadKg',
		fields.axleLoadKg.meta.label,
		capacityKg,
		sheet.say`up to ${sheet.show('mass', capacityKg, { decimals: 0, round: 'down' })}`,
		{ kind: 'mass' },
	);
	speedCheck(input, marked.speedSymbol, sheet);
	pressureCheck(input, loadKg / capacityKg, carries, sheet);
	if (twin) {
		sheet.finding(
			'note',
			'twins-share',
			sheet.say`Twins share only when both have the same size and pressure; with one flat the other carries all, more than it may.`,
			practice('twin tires'),
		);
	}

	const capacity = sheet.show('mass', capacityKg, { decimals: 0, round: 'down' });
	const load = sheet.show('mass', loadKg, { decimals: 0, round: 'up' });
	if (!carries) {
		const over = sheet.show('mass', -reserveKg, { decimals: 0, round: 'up' });
		const index2 = needed === null ? null : String(needed);
		sheet.finding(
			'danger',
			'tire-overloaded',
			index2 === null
				? sheet.say`The tires carry ${capacity}, the axle has ${load}: ${over} too much. Take that off the axle; no load index in my table carries it.`
				: sheet.say`The tires carry ${capacity}, the axle has ${load}: ${over} too much. Take that off the axle or fit tires of load index ${index2} or more, if the axle's rating allows the load.`,
			loadIndexSource,
		);
		return sheet.answer(sheet.say`Too weak: the axle is ${over} over what its tires carry`, {
			governedBy: 'load index',
			because: sheet.say`${tires} tires of load index ${index} carry ${capacity}; ${load} stand on the axle.`,
		});
	}
	const reserve = sheet.show('mass', reserveKg, { decimals: 0, round: 'down' });
	if (reserveKg < usualReserve * loadKg) {
		sheet.finding(
			'warning',
			'small-tire-reserve',
			sheet.say`Only ${reserve} in hand. Sides are never loaded alike: weigh each wheel, or take the next load index.`,
			practice('a tenth in hand'),
		);
	}
	return sheet.answer(sheet.say`Enough: the tires carry ${capacity}, ${reserve} more than the axle has`, {
		governedBy: 'load index',
		because: sheet.say`${tires} tires of load index ${index} at ${n(tableKg, 0)} kg each; ${load} stand on the axle.`,
	});
}

function neighbours(
	index: number,
	loadKg: number,
	capacityOf: (index: number) => number,
	sheet: Sheet,
): void {
	for (const other of [index - 1, index + 1]) {
		const capacityKg = capacityOf(other);
		if (loadOfIndexKg(other) === null) continue;
		sheet.neighbour(
			sheet.say`load index ${other}`,
			capacityKg >= loadKg,
			sheet.say`carries ${sheet.show('mass', capacityKg, { decimals: 0, round: 'down' })}`,
		);
	}
}

function speedCheck(input: Input, symbol: SpeedSymbol | undefined, sheet: Sheet): void {
	if (symbol === undefined) return;
	const limitKmh = speedSymbolsKmh[symbol];
	sheet.result('speedLimit', 'highest speed of the symbol', limitKmh / 3.6, {
		kind: 'speed',
		write: { unit: sheet.context.units === 'us' ? 'mph' : 'km/h', decimals: 0, round: 'down' },
	});
	sheet.source(speedSymbolSource);
	if (input.speedMS !== undefined && input.speedMS * 3.6 > limitKmh + 1e-9) {
		sheet.finding(
			'danger',
			'speed-above-symbol',
			sheet.say`Symbol ${symbol} ends at ${limitKmh} km/h; the load index does not hold above it. Drive slower or fit a faster symbol.`,
			speedSymbolSource,
		);
	}
}

function pressureCheck(input: Input, loadShare: number, carries: boolean, sheet: Sheet): void {
	const nowKpa = pressureNowKpa(input, sheet);
	if (nowKpa !== null) {
		sheet.result('pressureNow', 'pressure now', nowKpa, {
			kind: 'pressure',
			write: { decimals: 1, round: 'down' },
		});
		againstLabel(input, nowKpa, sheet);
	}
	const referenceKpa = input.referencePressureKpa;
	if (referenceKpa === undefined) return;
	if (input.pressureKpa !== undefined && input.pressureKpa > referenceKpa) {
		sheet.finding(
			'danger',
			'above-sidewall-pressure',
			sheet.say`${sheet.show('pressure', input.pressureKpa)} is above the ${sheet.show('pressure', referenceKpa)} printed on the sidewall.`,
			practice('the sidewall’s pressure is not exceeded cold'),
		);
		sheet.caution(cautionTireBurst);
	}
	if (!carries) return;
	const linearKpa = pressureForLoadKpa(loadShare, referenceKpa);
	const leastKpa = Math.max(linearKpa, input.labelPressureKpa ?? 0);
	sheet.step(
		'pressure for this load',
		'p = pref · load / C',
		`${n(referenceKpa)} kPa × ${n(loadShare, 3)}`,
		linearKpa,
		{
			kind: 'pressure',
			source: practice('in proportion to the load, the safe side of the published exponents'),
		},
	);
	sheet.step(
		'for comparison, with exponent 0.8',
		'p = pref · (load / C)^(1/0.8)',
		`${n(referenceKpa)} kPa × ${n(loadShare, 3)}^1.25`,
		pressureForLoadKpa(loadShare, referenceKpa, 0.8),
		{ kind: 'pressure', source: fromMemory('ETRTO and ISO 4000-1', 'load and inflation, exponent 0.8') },
	);
	sheet.result('pressureAtLeast', 'cold pressure at least', leastKpa, {
		kind: 'pressure',
		write: { decimals: 1, round: 'up' },
	});
	if (nowKpa !== null && nowKpa < leastKpa) {
		sheet.finding(
			'danger',
			'under-inflated',
			sheet.say`${sheet.show('pressure', nowKpa, { round: 'down' })} is too little for this load: set at least ${sheet.show('pressure', leastKpa, { decimals: 1, round: 'up' })} cold.`,
			fromMemory('ISO 4000-1', 'a load index holds at the reference pressure'),
		);
	}
}
