import { airDensityKgM3, airHeatWK } from '../climate/air.js';
import { type Bank, bankFields, bankOf, energyText, energyWrite } from '../climate/bank.js';
import { cautionHeatStroke, cautionRefrigerant, cautionRoofUnit } from '../climate/cautions.js';
import { type HourGain, hourGain, hoursOnBank, moistureOf, type Room } from '../climate/gains.js';
import { airVolumeM3, type Box, type Fitout, type Part, shellParts } from '../climate/shell.js';
import { clearDay, dayTemperaturesC, type Stand } from '../climate/sun.js';
import { boxOf, fitoutOf, shellFields, sizeFields, sizeNeed } from '../climate/van.js';
import { cautionMains } from '../electrical/cautions.js';
import { writeNumber } from '../quantity/write.js';
import { dailySwing, designCooling } from '../solar/climate.js';
import { isDecision, readPlace } from '../solar/place-input.js';
import { atmosphereSource, standardPressureKpa } from '../structure/atmosphere.js';
import { bodyHeat } from '../tables/people.js';
import {
	absorptanceSource,
	solarAbsorptance,
	solarHeatGain,
	solarHeatGainSource,
	surfaceResistances,
} from '../tables/surfaces.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, flag, type InputOf, month, number, place, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';
import { monthNames } from '../topic/value.js';

const fields = {
	outsideC: quantity({
		label: 'highest outside temperature',
		kind: 'temperature',
		worseEnd: 'high',
		min: 10,
		max: 55,
		aliases: [
			'outside',
			'high',
			'highs',
			'heat',
			'hot',
			'day',
			'afternoon',
			'up to',
			'at',
			'fuera',
			'außen',
			'draußen',
		],
	}),
	insideC: quantity({
		label: 'inside temperature',
		kind: 'temperature',
		worseEnd: 'low',
		min: 15,
		max: 40,
		aliases: [
			'inside',
			'indoors',
			'keep',
			'keep it',
			'cool to',
			'down to',
			'room',
			'dentro',
			'innen',
			'cool it to',
		],
		fallback: { value: 26, why: 'comfortable in the heat (practice)' },
	}),
	place: place({
		label: 'place',
		aliases: ['in', 'near', 'around', 'summer in', 'en', 'bei'],
		help: 'Its sun, altitude and design high are taken where they are not named.',
	}),
	month: month({ label: 'month', aliases: ['in', 'month', 'mes', 'monat'] }),
	unitW: quantity({
		label: 'cooling power of the unit',
		kind: 'power',
		min: 200,
		max: 20_000,
		aliases: [
			'unit',
			'air conditioner',
			'ac',
			'aircon',
			'rooftop',
			'roof air',
			'cooling',
			'aire acondicionado',
			'klimaanlage',
			'klima',
		],
		help: 'Name its rating to have it judged.',
	}),
	...sizeFields,
	...shellFields,
	paint: choice({
		label: 'colour',
		options: {
			white: ['white', 'white van', 'blanco', 'blanca', 'weiß', 'weiss'],
			lightGrey: ['light grey', 'light gray', 'beige', 'tan', 'gris claro', 'hellgrau'],
			silver: ['silver', 'metallic', 'plateado', 'silber'],
			coloured: [
				'red',
				'green',
				'blue',
				'dark grey',
				'dark gray',
				'grey',
				'gray',
				'rojo',
				'verde',
				'azul',
				'rot',
				'grün',
				'blau',
				'grau',
			],
			black: ['black', 'black van', 'negro', 'negra', 'schwarz'],
		},
		fallback: { value: 'coloured', why: 'the safe side of most paints', confirm: true },
	}),
	people: count({
		label: 'people',
		min: 0,
		max: 20,
		aliases: [
			'peeps',
			'pers',
			'people',
			'persons',
			'person',
			'adults',
			'of us',
			'pax',
			'personas',
			'personen',
			'leute',
			'ppl',
		],
		fallback: { value: 2, why: 'two people aboard' },
	}),
	appliancesW: quantity({
		label: 'appliances running inside',
		kind: 'power',
		min: 0,
		max: 5000,
		aliases: [
			'appliances',
			'fridge',
			'electronics',
			'computers',
			'laptop',
			'cooking',
			'aparatos',
			'geräte',
			'kühlschrank',
		],
		fallback: { value: 80, why: 'fridge, fans and electronics (practice)' },
	}),
	airChanges: number({
		label: 'air changes an hour',
		min: 0.1,
		max: 30,
		aliases: ['air changes', 'ach', 'renovaciones', 'luftwechsel'],
		fallback: { value: 1, why: 'closed up for cooling, with some fresh air (practice)' },
	}),
	outsideRh: quantity({
		label: 'outside humidity in the afternoon',
		kind: 'fraction',
		min: 0.02,
		max: 1,
		aliases: ['humidity', 'rh', 'humid', 'relative humidity', 'humedad', 'luftfeuchte', 'feuchte'],
		fallback: { value: 0.4, why: 'a summer afternoon; muggy coasts have more', confirm: true },
	}),
	latitudeDeg: quantity({
		label: 'latitude',
		kind: 'angle',
		min: -66,
		max: 66,
		aliases: ['latitude', 'lat', 'latitud', 'breite', 'breitengrad'],
		fallback: { value: 36, why: 'where no place is named' },
	}),
	altitudeM: quantity({
		label: 'altitude',
		kind: 'length',
		min: -400,
		max: 5000,
		aliases: ['altitude', 'elevation', 'above sea level', 'altitud', 'höhe', 'meereshöhe'],
	}),
	coefficient: number({
		label: 'cooling per unit of electricity',
		min: 1,
		max: 8,
		aliases: ['cop', 'coefficient of performance', 'efficiency ratio', 'leistungszahl'],
		fallback: { value: 2.4, why: 'a small unit on a hot roof (practice)', confirm: true },
	}),
	drawW: quantity({
		label: 'electric draw of the unit',
		kind: 'power',
		min: 50,
		max: 8000,
		aliases: ['draws', 'draw', 'input', 'pulls', 'consumes', 'consumption', 'consumo', 'verbrauch', 'zieht'],
	}),
	supply: choice({
		label: 'what feeds the unit',
		options: {
			dc: ['DC', '12 v unit', 'battery powered', 'dc unit', 'gleichstrom', 'corriente continua'],
			inverter: [
				'inverter',
				'on the inverter',
				'off the inverter',
				'mains unit',
				'inversor',
				'wechselrichter',
			],
		},
		fallback: { value: 'dc', why: 'a unit that runs straight from the bank', confirm: true },
	}),
	overnight: flag({
		label: 'through the night',
		yes: [
			'overnight',
			'all night',
			'through the night',
			'at night',
			'toda la noche',
			'die ganze nacht',
			'über nacht',
		],
	}),
	solarW: quantity({
		label: 'solar on the roof',
		kind: 'power',
		min: 0,
		max: 10_000,
		aliases: ['solar', 'panels', 'panel', 'pv', 'array', 'placas', 'paneles', 'solarmodule', 'module'],
		fallback: { value: 0, why: 'no panels named' },
	}),
	...bankFields,
};

type Input = InputOf<typeof fields>;

export const cool = declareTopic({
	name: 'cool',
	title: 'Heat that comes in and the air conditioner it takes',
	system: 'climate',
	purpose:
		'How much heat a parked van takes in on a clear hot day, which unit keeps up, and how long the bank runs it.',
	words: [
		'air conditioner',
		'ac size',
		'size ac',
		'how big an ac',
		'what ac',
		'how much ac',
		'ac btu',
		'air conditioning',
		'aircon',
		'cooling load',
		'klimaanlage',
		'aire acondicionado',
		'cool',
		'cooling',
		'air con',
		'ac unit',
		'rooftop ac',
		'roof ac',
		'ac for',
		'run the ac',
		'need ac',
		'heat gain',
		'how many btu',
		'kühllast',
		'klima',
		'refrigeración',
	],
	examples: [
		'what air conditioner for a long high roof van at 100 F, white, 400 Ah bank at 12 V',
		'cooling load medium wheelbase black van 38 C outside 26 C inside 2 people',
		'is an 8000 btu aircon enough: extended van 105 F with 600 W solar and 10 kWh bank',
		'klimaanlage langer radstand 36 C außen 48 V batterie 100 Ah',
	],
	method:
		'Hour by hour through a clear day: sol-air temperatures on roof and walls, conduction and solar gain of the glass, renewed air and people with their moisture, appliances. Nothing is stored: a van is light. The worst of four directions to park in.',
	fields,
	needs: [{ anyOf: ['outsideC', 'place'], question: 'How hot does it get outside (or where)?' }, sizeNeed],
	calculate: calculateCool,
});

/** Cooling powers in which units are sold [W]: 5,000 to 18,000 Btu/h (common practice). */
const unitSizesW: readonly number[] = [5000, 7000, 9000, 11_000, 13_500, 15_000, 18_000].map(
	(btuH) => btuH * 0.29307107,
);
/** Humidity the air inside is dried to (common practice). */
const insideRh = 0.5;
/** Inverter (common practice). */
const inverterEfficiency = 0.85;
/** What flat panels give of their rating under full sun, hot and dusty (common practice). */
const panelShare = 0.75;
/** Difference of a clear day's highest and lowest temperature where no place is named [K] (common practice). */
const usualRangeK = 11;

interface Climate {
	readonly highC: number;
	readonly lowC: number;
	readonly stand: Stand;
}

interface Day {
	readonly parts: readonly Part[];
	readonly gains: readonly HourGain[];
	readonly peakHour: number;
	readonly peak: HourGain;
	readonly headingDeg: number;
	/** sun on the roof, by hour [W/m²] */
	readonly roofSun: readonly number[];
	readonly airM3H: number;
	/** heat in per kelvin of cooler inside [W/K] */
	readonly perKelvinWK: number;
}

function dayOf(input: Input, box: Box, fitout: Fitout, climate: Climate, absorptance: number): Day {
	const parts = shellParts(box, fitout);
	const airM3H = airVolumeM3(box, fitout.cabClosed) * input.airChanges;
	const pressureKPa = standardPressureKpa(climate.stand.altitudeM);
	const temperatures = dayTemperaturesC(climate.highC, climate.lowC);
	const room: Room = {
		insideC: input.insideC,
		airM3H,
		people: input.people,
		appliancesW: input.appliancesW,
		absorptance,
		windowGain: fitout.window === 'single' ? solarHeatGain.clearSingle : solarHeatGain.acrylicDouble,
		covers: fitout.covers,
		pressureKPa,
		outsideRatio: moistureOf(climate.highC, input.outsideRh, pressureKPa),
		insideRatio: moistureOf(input.insideC, insideRh, pressureKPa),
	};
	const days = [0, 90, 180, 270].map((headingDeg) => {
		const sun = clearDay(climate.stand, headingDeg);
		const gains = sun.map((hour, index) =>
			hourGain(parts, room, hour, temperatures[index] ?? climate.highC, index),
		);
		const peakHour = gains.reduce(
			(best, gain, hour) => (gain.totalW > (gains[best]?.totalW ?? 0) ? hour : best),
			0,
		);
		return {
			headingDeg,
			gains,
			peakHour,
			peak: gains[peakHour] as HourGain,
			roofSun: sun.map((one) => one.roofWm2),
		};
	});
	const worst = days.reduce((a, b) => (b.peak.totalW > a.peak.totalW ? b : a));
	const airWK = airHeatWK(airM3H, airDensityKgM3(climate.highC, pressureKPa));
	return { ...worst, parts, airM3H, perKelvinWK: parts.reduce((sum, part) => sum + part.lossWK, airWK) };
}

interface Unit {
	/** cooling power [W], or null where no standard unit is large enough */
	readonly powerW: number | null;
	/** electric draw while running [W] */
	readonly drawW: number;
	/** from the bank, by clock hour [W] */
	readonly hourlyW: readonly number[];
	readonly perWatt: number;
}

function unitFor(input: Input, day: Day): Unit {
	const powerW = input.unitW ?? unitSizesW.find((size) => size >= day.peak.totalW) ?? null;
	const effective = powerW ?? day.peak.totalW;
	const drawW = input.drawW ?? effective / input.coefficient;
	const perWatt = input.supply === 'inverter' ? 1 / inverterEfficiency : 1;
	const hourlyW = day.gains.map(
		(gain) => Math.min(1, Math.max(0, gain.totalW) / effective) * drawW * perWatt,
	);
	return { powerW, drawW, hourlyW, perWatt };
}

function calculateCool(input: Input, sheet: Sheet) {
	const climate = climateOf(input, sheet);
	if ('kind' in climate) return climate;
	const box = boxOf(input, sheet);
	const fitout = fitoutOf(input, sheet);
	const day = dayOf(input, box, fitout, climate, solarAbsorptance[input.paint]);
	sheet.caution(cautionRefrigerant, cautionRoofUnit, cautionHeatStroke);
	if (input.supply === 'inverter') sheet.caution(cautionMains);
	sheet.source(surfaceResistances.outsideSummer.source, atmosphereSource);
	if (day.peak.totalW <= 0) {
		return sheet.answer(sheet.say`No cooling needed: the van takes in no heat at any hour`, {
			because: sheet.say`Even in the sun it loses more than it gains.`,
		});
	}
	const unit = unitFor(input, day);
	const stay = stayOf(input, day, unit, bankOf(input, sheet));
	writeWorking(sheet, input, day, unit, climate, stay.bank.voltageV);
	writeResults(sheet, day, unit, stay);
	writeNeighbours(sheet, input, box, fitout, climate, unit);
	writeTipping(sheet, day, unit, climate);
	writeFindings(sheet, input, day, unit, stay);

	const gain = sheet.show('power', day.peak.totalW, { round: 'up' });
	const btu = btuText(sheet, day.peak.totalW, 'up');
	const hour = String(day.peakHour);
	const amps = sheet.show('current', (unit.drawW * unit.perWatt) / stay.bank.voltageV, { round: 'up' });
	const because = sheet.say`Up to ${gain} (${btu}) come in at about ${hour} h; most of it through: ${largestOf(day.peak)}.`;
	if (unit.powerW === null) {
		return sheet.answer(sheet.say`${btu} come in: more than one unit, or shade and insulation`, { because });
	}
	const size = btuText(sheet, unit.powerW, 'nearest');
	if (input.overnight === true && stay.bank.usableWh !== null) {
		const night = energyText(sheet, stay.nightWh);
		const gives = energyText(sheet, stay.bank.usableWh, 'down');
		return sheet.answer(
			stay.nightWh <= stay.bank.usableWh
				? sheet.say`The bank carries the night: ${night} of ${gives}`
				: sheet.say`The bank won't last the night: it takes ${night}, the bank gives ${gives}`,
			{ governedBy: 'heat gain from 21 to 7 h', because },
		);
	}
	return sheet.answer(
		input.unitW === undefined
			? sheet.say`${size} unit, ${amps} from the bank while it runs`
			: unit.powerW >= day.peak.totalW
				? sheet.say`${size} will do, ${amps} from the bank while it runs`
				: sheet.say`${size} is too small: ${btu} come in`,
		{ governedBy: 'heat gain at the worst hour', because },
	);
}

/** Cooling is spoken of in Btu/h in US shops, in watts elsewhere. */
function btuText(sheet: Sheet, powerW: number, round: 'up' | 'nearest'): string {
	return sheet.context.units === 'us'
		? sheet.show('power', powerW, { unit: 'Btu/h', round })
		: sheet.show('power', powerW, { round });
}

function largestOf(gain: HourGain): string {
	const named: readonly (readonly [string, number])[] = [
		['roof', gain.roofW],
		['walls', gain.wallsW],
		['glass', gain.glassW],
		['air', gain.airW],
		['people', gain.peopleW],
		['appliances', gain.appliancesW],
	];
	return named.reduce((a, b) => (b[1] > a[1] ? b : a))[0];
}

function climateOf(input: Input, sheet: Sheet): Climate | ReturnType<Sheet['ask']> {
	if (input.place !== undefined) {
		const found = readPlace(sheet, input.place);
		if (isDecision(found)) return found;
		const hottest =
			found.meanC.reduce((best, value, index) => (value > (found.meanC[best] ?? 0) ? index : best), 0) + 1;
		const monthNumber = input.month ?? hottest;
		if (input.month === undefined) {
			sheet.assume('month', 'month', monthNames[monthNumber - 1] ?? '', 'the hottest of the year there');
		}
		const swing = dailySwing(found, monthNumber);
		let highC = input.outsideC;
		if (highC === undefined) {
			const design = designCooling(found);
			// Away from the hottest month the design high is lowered by as much as the month is cooler.
			highC = design.valueC - ((found.meanC[hottest - 1] ?? 0) - (found.meanC[monthNumber - 1] ?? 0));
			sheet.assume(
				'outsideC',
				'highest outside temperature',
				highC,
				design.standIn?.(sheet.say) ?? sheet.say`the design high of ${found.name}`,
				{
					kind: 'temperature',
				},
			);
			sheet.source(design.source);
		}
		return {
			highC,
			lowC: highC - (swing.maxC - swing.minC),
			stand: {
				latitudeDeg: found.latitudeDeg,
				longitudeDeg: found.longitudeDeg,
				utcOffsetH: found.utcOffsetH,
				altitudeM: input.altitudeM ?? found.elevationM,
				month: monthNumber,
			},
		};
	}
	if (input.outsideC === undefined) throw new Error('the declaration asks for a temperature or a place');
	const monthNumber = input.month ?? (input.latitudeDeg < 0 ? 1 : 7);
	if (input.month === undefined) {
		sheet.assume('month', 'month', monthNames[monthNumber - 1] ?? '', 'midsummer, as no month was named');
	}
	sheet.assume('dailyRangeK', 'range of the day', usualRangeK, 'a clear summer day (practice)', {
		kind: 'temperatureDifference',
	});
	return {
		highC: input.outsideC,
		lowC: input.outsideC - usualRangeK,
		stand: {
			latitudeDeg: input.latitudeDeg,
			longitudeDeg: 0,
			utcOffsetH: 0,
			altitudeM: input.altitudeM ?? 0,
			month: monthNumber,
		},
	};
}

/** How long the bank runs the unit. */
interface Stay {
	readonly bank: Bank;
	readonly withoutSunH: number | null;
	readonly withSunH: number | null;
	readonly dayWh: number;
	readonly nightWh: number;
}

function stayOf(input: Input, day: Day, unit: Unit, bank: Bank): Stay {
	const { usableWh } = bank;
	const none = new Array<number>(24).fill(0);
	const yieldW = day.roofSun.map((irradiance) => (input.solarW * panelShare * irradiance) / 1000);
	const sum = (hours: readonly number[]) => hours.reduce((total, value) => total + value, 0);
	return {
		bank,
		withoutSunH: usableWh === null ? null : hoursOnBank(usableWh, unit.hourlyW, none),
		withSunH: usableWh === null ? null : hoursOnBank(usableWh, unit.hourlyW, yieldW),
		dayWh: sum(unit.hourlyW),
		nightWh: sum(unit.hourlyW.filter((_, hour) => hour >= 21 || hour < 7)),
	};
}

function writeWorking(
	sheet: Sheet,
	input: Input,
	day: Day,
	unit: Unit,
	climate: Climate,
	bankV: number,
): void {
	const n = (value: number, decimals = 1) => writeNumber(value, decimals);
	const { peak } = day;
	const u = (name: Part['name']) => n(day.parts.find((part) => part.name === name)?.lossWK ?? 0);
	const sun = physics('sol-air temperature');
	sheet.step(
		'sun on the roof at the worst hour',
		'clear sky of Ineichen and Perez, Linke turbidity 3',
		`${monthNames[climate.stand.month - 1] ?? ''} 21, ${String(day.peakHour)} to ${String(day.peakHour + 1)} h, latitude ${n(climate.stand.latitudeDeg)}°`,
		day.roofSun[day.peakHour] ?? 0,
		{ kind: 'irradiance', source: fromMemory('Ineichen and Perez 2002', 'clear-sky model') },
	);
	sheet.step(
		'roof',
		'Q = UA · (To + α I / ho − 3.9 K − Ti)',
		`UA ${u('roof')} W/K, α ${n(solarAbsorptance[input.paint], 2)}`,
		peak.roofW,
		{
			kind: 'power',
			source: sun,
		},
	);
	sheet.step(
		'walls and cab metal',
		'Q = UA · (To + α I / ho − Ti)',
		`UA ${u('walls')} + ${u('cab metal')} W/K`,
		peak.wallsW,
		{
			kind: 'power',
			source: absorptanceSource,
		},
	);
	sheet.step(
		'glass',
		'Q = UA · (To − Ti) + A · g · I',
		`UA ${u('windows')} + ${u('cab glass')} W/K`,
		peak.glassW,
		{
			kind: 'power',
			source: solarHeatGainSource,
		},
	);
	sheet.step(
		'renewed air, with its moisture',
		'Q = ρ V (c · (To − Ti) + r · (xo − xi)) / 3600',
		`${n(day.airM3H)} m³/h`,
		peak.airW,
		{ kind: 'power', source: fromMemory('ASHRAE Handbook of Fundamentals', 'psychrometrics') },
	);
	sheet.step(
		'people',
		'Q = n · (sensible + latent)',
		`${input.people} × (${bodyHeat.lightWork.sensibleW} + ${bodyHeat.lightWork.latentW}) W`,
		peak.peopleW,
		{ kind: 'power', source: bodyHeat.lightWork.source },
	);
	sheet.step('heat that comes in', 'ΣQ', 'with floor and appliances', peak.totalW, {
		kind: 'power',
		source: physics('heat balance'),
	});
	sheet.step(
		'electric draw',
		input.drawW === undefined ? 'P = Qu / ε' : 'P as named',
		input.drawW === undefined
			? `${n(unit.powerW ?? peak.totalW, 0)} W / ${n(input.coefficient, 2)}`
			: `${n(input.drawW, 0)} W`,
		unit.drawW,
		{ kind: 'power', source: practice('cooling per unit of electricity of small units') },
	);
	sheet.step(
		'current from the bank',
		'I = P / (η · V)',
		`${n(unit.drawW * unit.perWatt, 0)} W / ${n(bankV)} V`,
		(unit.drawW * unit.perWatt) / bankV,
		{
			kind: 'current',
			source: physics("Ohm's law"),
		},
	);
}

function writeResults(sheet: Sheet, day: Day, unit: Unit, stay: Stay): void {
	const up = { kind: 'power', write: { round: 'up' } } as const;
	const { peak } = day;
	sheet.result('heatGain', 'heat that comes in at the worst hour', peak.totalW, up);
	sheet.result('peakHour', 'worst hour, local standard time', day.peakHour, {
		unit: 'h',
		write: { decimals: 0 },
	});
	sheet.result('roofGain', 'through the roof', peak.roofW, up);
	sheet.result('wallsGain', 'through the walls', peak.wallsW, up);
	sheet.result('glassGain', 'through the glass', peak.glassW, up);
	sheet.result('floorGain', 'through the floor', peak.floorW, up);
	sheet.result('airGain', 'with the air', peak.airW, up);
	sheet.result('peopleGain', 'from people', peak.peopleW, up);
	sheet.result('appliancesGain', 'from appliances', peak.appliancesW, up);
	if (unit.powerW !== null) sheet.result('unit', 'cooling power of the unit', unit.powerW, { kind: 'power' });
	sheet.result('draw', 'electric draw while it runs', unit.drawW, up);
	sheet.result(
		'bankCurrent',
		'current from the bank while it runs',
		(unit.drawW * unit.perWatt) / stay.bank.voltageV,
		{
			kind: 'current',
			write: { round: 'up' },
		},
	);
	const share = { kind: 'fraction', write: { round: 'up' } } as const;
	sheet.result(
		'peakDuty',
		'share of the worst hour it runs',
		Math.min(1, peak.totalW / (unit.powerW ?? peak.totalW)),
		share,
	);
	sheet.result('meanDuty', 'share of the day it runs', stay.dayWh / (24 * unit.drawW * unit.perWatt), share);
	sheet.result('energyPerDay', 'energy for a day and night', stay.dayWh, {
		kind: 'energy',
		write: energyWrite(stay.dayWh),
	});
	sheet.result('energyPerNight', 'of it at night, 21 to 7 h', stay.nightWh, {
		kind: 'energy',
		write: energyWrite(stay.nightWh),
	});
	const { usableWh } = stay.bank;
	if (usableWh === null) return;
	const hours = (value: number | null) => (value === null ? 72 : value);
	const down = { kind: 'duration', write: { unit: 'h', round: 'down' } } as const;
	sheet.result('hoursOnBank', 'hours on the bank from 10 h, without sun', hours(stay.withoutSunH), down);
	sheet.result('hoursWithSun', 'hours on the bank from 10 h, with the panels', hours(stay.withSunH), down);
	sheet.result(
		'hoursAtFullPower',
		'hours on the bank running without a pause',
		usableWh / (unit.drawW * unit.perWatt),
		down,
	);
}

function writeNeighbours(
	sheet: Sheet,
	input: Input,
	box: Box,
	fitout: Fitout,
	climate: Climate,
	unit: Unit,
): void {
	const other = (name: string, change: Partial<Fitout>, absorptance = solarAbsorptance[input.paint]) => {
		const { peak } = dayOf(input, box, { ...fitout, ...change }, climate, absorptance);
		const gain = btuText(sheet, Math.max(0, peak.totalW), 'up');
		sheet.neighbour(name, unit.powerW === null || peak.totalW <= unit.powerW, sheet.say`${gain} come in`);
	};
	if (input.paint === 'white') other(sheet.say`black paint`, {}, solarAbsorptance.black);
	else other(sheet.say`white paint`, {}, solarAbsorptance.white);
	if (!fitout.covers) other(sheet.say`reflective covers on all glass`, { covers: true });
	const twice = sheet.show('thickness', Math.max(25, fitout.wallMm * 2));
	other(sheet.say`${twice} of insulation`, {
		wallMm: Math.max(25, fitout.wallMm * 2),
		roofMm: Math.max(25, fitout.roofMm * 2),
	});
	const at = unitSizesW.findIndex((size) => unit.powerW !== null && size >= unit.powerW - 1);
	const smaller = unitSizesW[at - 1];
	if (smaller !== undefined && input.unitW === undefined) {
		const share = writeNumber((worstGainW(input, box, fitout, climate) / smaller) * 100, 0, 'up');
		sheet.neighbour(
			btuText(sheet, smaller, 'nearest'),
			false,
			sheet.say`would have to run ${share} % of the worst hour`,
		);
	}
}

function worstGainW(input: Input, box: Box, fitout: Fitout, climate: Climate): number {
	return dayOf(input, box, fitout, climate, solarAbsorptance[input.paint]).peak.totalW;
}

/** The outside temperature up to which the unit keeps up. */
function writeTipping(sheet: Sheet, day: Day, unit: Unit, climate: Climate): void {
	if (unit.powerW === null || unit.powerW < day.peak.totalW) return;
	const outsideC = climate.highC + (unit.powerW - day.peak.totalW) / day.perKelvinWK;
	const shown = sheet.show('temperature', outsideC, { round: 'down' });
	sheet.tipping(
		'outsideC',
		'highest outside temperature',
		outsideC,
		sheet.say`up to about ${shown} outside`,
		{
			kind: 'temperature',
		},
	);
}

function writeFindings(sheet: Sheet, input: Input, day: Day, unit: Unit, stay: Stay): void {
	if (unit.powerW !== null && unit.powerW < day.peak.totalW) {
		const reached = sheet.show(
			'temperature',
			input.insideC + (day.peak.totalW - unit.powerW) / day.perKelvinWK,
			{
				round: 'up',
			},
		);
		const next = unitSizesW.find((size) => size >= day.peak.totalW);
		const needed = btuText(sheet, next ?? day.peak.totalW, 'up');
		sheet.finding(
			'warning',
			'unit-too-small',
			sheet.say`In the worst hour it only holds about ${reached}; ${needed}, shade or covers clear it.`,
			physics('heat balance'),
		);
	}
	if (unit.powerW !== null && unit.powerW > 2.5 * day.peak.totalW) {
		sheet.finding(
			'note',
			'unit-oversized',
			sheet.say`So large a unit runs in short bursts: the air gets cold but stays damp.`,
			practice('a unit near the load dries better'),
		);
	}
	if (stay.bank.usableWh !== null && stay.withSunH !== null && stay.withSunH < 24) {
		const lasts = sheet.show('duration', stay.withSunH, { unit: 'h', round: 'down' });
		const needed = energyText(sheet, stay.dayWh / stay.bank.depth);
		sheet.finding(
			'warning',
			'bank-too-small-for-cooling',
			sheet.say`From a full bank at 10 h it lasts ${lasts}; a day and night without sun takes a bank of ${needed}.`,
			physics('energy balance'),
		);
	}
	if (stay.bank.usableWh !== null && stay.nightWh > stay.bank.usableWh) {
		const night = energyText(sheet, stay.nightWh);
		const needed = energyText(sheet, stay.nightWh / stay.bank.depth);
		sheet.finding(
			'warning',
			'night-empties-bank',
			sheet.say`Cooling from 21 to 7 h takes ${night}; a bank of ${needed}, full at sunset, clears it.`,
			physics('energy balance'),
		);
	}
	const bankA = (unit.drawW * unit.perWatt) / stay.bank.voltageV;
	if (bankA > 60) {
		const amps = sheet.show('current', bankA, { round: 'up' });
		sheet.finding(
			'note',
			'heavy-current',
			sheet.say`${amps} for hours: size cable and fuse as a continuous load (wire topic), and check what the battery may give.`,
			practice(),
		);
	}
	if (input.supply === 'inverter') {
		sheet.finding(
			'note',
			'start-surge',
			sheet.say`A compressor starts with several times its running current: the inverter must bear it, or the unit needs a soft start.`,
			practice('compressors start hard'),
		);
	}
}
