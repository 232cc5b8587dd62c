import { bankClassV } from '../energy/bank.js';
import { energyWrite, showEnergy } from '../energy/show.js';
import { writeNumber } from '../quantity/write.js';
import { arrayFields, arrayOf, ratedPower } from '../solar/array-fields.js';
import { cautionLive, cautionRoof } from '../solar/cautions.js';
import { dailyFactors, daySequenceSource } from '../solar/day-sequence.js';
import { extraterrestrialSource, transpositionSource } from '../solar/irradiance.js';
import { glassSource, pvWattsSource, sapmSource } from '../solar/photovoltaic.js';
import { isDecision, readPlace } from '../solar/place-input.js';
import type { Place } from '../solar/places.js';
import { sunPositionSource } from '../solar/sun-position.js';
import { daysInMonth, diffuseSource, hourlyShapeSource } from '../solar/typical-day.js';
import { type DayYield, dayYield, type PvArray, yearYield } from '../solar/yield.js';
import { climateSource } from '../tables/climate.js';
import { declareTopic } from '../topic/declare.js';
import { flag, type InputOf, month, place, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';
import { monthNames } from '../topic/value.js';

const fields = {
	place: place({
		label: 'place',
		aliases: ['in', 'at', 'near', 'place', 'location', 'where', 'lugar', 'ort'],
		help: 'A town with its state or country, a park, or a position such as "35.2,-111.7".',
		required: 'Where is the van (a town, a park, or a position such as "35.2,-111.7")?',
	}),
	month: month({
		label: 'month',
		aliases: ['month', 'mes', 'monat'],
		help: 'Without it the worst month counts.',
	}),
	...arrayFields,
	needWh: quantity({
		label: 'energy needed a day',
		kind: 'energy',
		min: 1,
		max: 100_000,
		aliases: [
			'need',
			'needs',
			'use',
			'a day',
			'per day',
			'daily',
			'budget',
			'bedarf',
			'pro tag',
			'al día',
			'consumo',
		],
	}),
	needAh: quantity({
		label: 'charge needed a day',
		kind: 'charge',
		min: 0.1,
		max: 5000,
		aliases: [
			'need',
			'needs',
			'use',
			'a day',
			'per day',
			'daily',
			'budget',
			'bedarf',
			'pro tag',
			'al día',
			'consumo',
		],
	}),
	fillAh: quantity({
		label: 'charge to put back',
		onlyNamed: true,
		kind: 'charge',
		min: 1,
		max: 5000,
		aliases: [
			'recharge',
			'recharge a',
			'recharge my',
			'refill',
			'refill a',
			'fill',
			'fill a',
			'fill up',
			'charge',
			'charge a',
			'charge up',
			'charge my',
			'top up',
			'recargar',
			'cargar',
			'llenar',
			'laden',
			'aufladen',
			'vollladen',
		],
		help: 'Then the answer says in how many such days the array puts it back.',
	}),
	isSizing: flag({
		label: 'the array is to be sized',
		yes: [
			'how many solar panels',
			'how many panels',
			'how much solar do i need',
			'how much solar to run',
			'how many watts of solar',
			'how many watts of panel',
			'cuántas placas',
			'cuántos paneles',
			'wie viele module',
			'wie viele solarmodule',
		],
	}),
	bankV: quantity({
		label: 'bank voltage',
		kind: 'voltage',
		min: 10,
		max: 60,
		aliases: ['bank', 'system', 'battery', 'house', 'bordnetz', 'sistema', 'batería', 'batterie'],
		fallback: { value: 12, why: 'the usual house voltage', confirm: true },
	}),
};

type Input = InputOf<typeof fields>;

export const solar = declareTopic({
	name: 'solar',
	title: 'Solar yield',
	system: 'energy',
	purpose:
		'What an array on the roof puts into the battery at a place in a month, or how large an array a daily need takes.',
	words: [
		'solar',
		'solar yield',
		'how much solar',
		'how many solar panels',
		'how many panels',
		'how much panel',
		'how many watts of solar',
		'how many watts of panel',
		'was bringen',
		'was bringt',
		'wie viel bringen',
		'wie viel bringt',
		'cuánto dan',
		'cuánto producen',
		'cuánto da',
		'cuánto produce',
		'wie viele module',
		'cuántas placas',
		'how much sun',
		'solar power',
		'solar panels',
		'solar panel',
		'sun hours',
		'peak sun hours',
		'panel output',
		'yield',
		'pv',
		'solarertrag',
		'ertrag',
		'solaranlage',
		'sonnenstunden',
		'producción solar',
		'placas solares',
		'paneles solares',
		'horas de sol',
	],
	examples: [
		'400W in Tucson december',
		'sun hours Flagstaff in March',
		'200 w panel zion in july',
		'solar 2 x 200W flagstaff in march',
		'how much solar do I need for 1.5 kWh a day in Denver in january',
		'solarertrag 300W München im Juni',
		'how long to recharge 400ah with 400w solar in Moab in april',
		'600 W solar tilted 30° Munich december 24V',
	],
	askedByQuantities: true,
	method:
		'The average day of the month in steps of ten minutes: monthly means of the nearest climate station spread over the day (Collares-Pereira and Rabl; Liu and Jordan), sun position, tilted plane (Hay and Davies), glass reflection, cell temperature (SAND2004-3535), PVWatts power and losses, controller. It is a mean over many years: single days and years differ, and snow, deep shade and horizon are not in it.',
	fields,
	calculate: calculateSolar,
});

/** What an answer is for where no array was named [W]. */
const perW = 100;

function calculateSolar(input: Input, sheet: Sheet) {
	const where = readPlace(sheet, input.place);
	if (isDecision(where)) return where;
	const classV = bankClassV(input.bankV);
	if (classV === null) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read ${sheet.show('voltage', input.bankV)} as the bank voltage; banks are not built so.`,
			'Name a bank of 12, 24, 36 or 48 V.',
			'bankV',
		);
	}
	if (input.panelW !== undefined && input.arrayW !== undefined && input.panels !== undefined) {
		const sumW = input.panelW * input.panels;
		if (Math.abs(sumW - input.arrayW) > 0.02 * input.arrayW) {
			return sheet.refuse(
				'contradiction',
				sheet.say`${input.panels} panels of ${sheet.show('power', input.panelW)} make ${sheet.show('power', sumW)}, not ${sheet.show('power', input.arrayW)}.`,
				'Give the power of a panel and their number, or the whole array.',
				'arrayW',
			);
		}
	}
	if (input.shading >= 1) {
		return sheet.refuse(
			'impossible',
			'In full shade an array gives nothing worth counting.',
			'Give the share lost to shade as less than 100 %.',
			'shading',
		);
	}
	const needWh = input.needWh ?? (input.needAh === undefined ? null : input.needAh * classV);
	if (input.needWh !== undefined && input.needAh !== undefined) {
		const fromAh = input.needAh * classV;
		if (Math.abs(fromAh - input.needWh) > 0.15 * input.needWh) {
			return sheet.refuse(
				'contradiction',
				sheet.say`${showEnergy(sheet, input.needWh)} and ${sheet.show('charge', input.needAh)} a day contradict each other: at ${classV} V that charge is ${showEnergy(sheet, fromAh)}.`,
				'Give the energy or the charge, whichever you trust.',
				'needAh',
			);
		}
	}

	if (input.isSizing === true && needWh === null && ratedPower(input) === null) {
		return sheet.ask({
			name: 'needWh',
			label: fields.needWh.meta.label,
			question: 'How much is used a day (Wh or Ah)? The daily energy budget adds it up from the loads.',
		});
	}

	const rated = ratedPower(input) ?? (needWh === null ? perW : null);
	// For the size alone an array of 1 W is reckoned: the yield is in proportion.
	const array = arrayOf(rated ?? 1, input, where, sheet);
	if (ratedPower(input) === null && needWh === null) {
		sheet.assume(
			'arrayW',
			'rated power of the array',
			perW,
			'no array was named: the answer is for each 100 W',
			{
				kind: 'power',
				confirm: true,
			},
		);
	}
	const year = yearYield(where, array);
	const worst = year.reduce((least, one) => (one.batteryWh < least.batteryWh ? one : least));
	const chosen = input.month === undefined ? worst : (year[input.month - 1] as DayYield);
	sheet.caution(cautionLive, cautionRoof);
	writeWorking(sheet, where, array, chosen, classV);
	if (rated === null) return sizeArray(input, sheet, where, chosen, worst, needWh as number, classV);
	return report(input, sheet, where, array, chosen, worst, year, needWh, classV);
}

function monthName(one: DayYield): string {
	return monthNames[one.month - 1] as string;
}

function report(
	input: Input,
	sheet: Sheet,
	where: Place,
	array: PvArray,
	chosen: DayYield,
	worst: DayYield,
	year: readonly DayYield[],
	needWh: number | null,
	classV: number,
) {
	const energy = showEnergy(sheet, chosen.batteryWh, 'down');
	const charge = sheet.show('charge', chosen.batteryWh / classV, { round: 'down' });
	const name = monthName(chosen);
	sheet.result('energyPerDay', 'into the battery a day', chosen.batteryWh, {
		kind: 'energy',
		write: energyWrite(chosen.batteryWh, 'down'),
	});
	sheet.result('chargePerDay', sheet.say`charge a day at ${classV} V`, chosen.batteryWh / classV, {
		kind: 'charge',
		write: { round: 'down' },
	});
	writeSun(sheet, chosen);
	sheet.result('peakPower', 'mean power of the best hour', Math.max(...chosen.hourlyW), {
		kind: 'power',
		write: { round: 'down' },
	});
	sheet.result('arrayPower', 'rated power of the array', array.ratedW, { kind: 'power' });
	writeYear(input, sheet, worst, year);
	writeNeighbours(input, sheet, where, array, chosen, worst);
	writeFindings(input, sheet, chosen);
	const hours = sheet.show('irradiation', chosen.planeKWhM2);
	const kept = writeNumber((100 * chosen.batteryWh) / Math.max(1e-9, chosen.planeKWhM2 * array.ratedW), 0);
	const tilt = input.tiltDeg === 0 ? 'flat' : sheet.say`tilted ${sheet.show('angle', input.tiltDeg)}`;
	const because =
		chosen.planeKWhM2 > 0
			? sheet.say`${hours} a day of sun on ${sheet.show('power', array.ratedW)} ${tilt} at ${where.name}; ${kept} % of it reaches the battery.`
			: sheet.say`The sun does not rise at ${where.name} in ${name}.`;
	if (ratedPower(input) === null && needWh === null) {
		const month = input.month === undefined ? sheet.say`Worst month ${name}` : name;
		return sheet.answer(sheet.say`${month}: ${hours} of sun a day, ${energy} from each 100 W`, { because });
	}
	if (input.fillAh !== undefined) return reportFilling(sheet, input.fillAh, chosen, classV, because);
	if (needWh === null) {
		return input.month === undefined
			? sheet.answer(sheet.say`Worst month ${name}: ${energy} a day = ${charge} at ${classV} V`, { because })
			: sheet.answer(sheet.say`${energy} a day = ${charge} at ${classV} V in ${name}`, { because });
	}
	const need = showEnergy(sheet, needWh, 'up');
	const share = chosen.batteryWh / needWh;
	sheet.result('needCovered', 'share of the need that is covered', share, {
		kind: 'fraction',
		write: { round: 'down', decimals: 0 },
	});
	const neededW = neededPower(chosen.batteryWh / array.ratedW, needWh);
	if (neededW !== null) {
		sheet.result('arrayNeeded', 'array for the whole need', neededW, {
			kind: 'power',
			write: { round: 'up' },
		});
		sheet.tipping('needWh', 'energy needed a day', chosen.batteryWh, sheet.say`for up to ${energy} a day`, {
			kind: 'energy',
		});
	}
	if (share >= 1) {
		return sheet.answer(sheet.say`Enough in ${name}: ${energy} a day for a need of ${need}`, { because });
	}
	const short = showEnergy(sheet, needWh - chosen.batteryWh, 'up');
	sheet.finding(
		'warning',
		'need-not-covered',
		neededW === null
			? sheet.say`No array covers the need in ${name}; another source must.`
			: sheet.say`The sun leaves ${short} a day open in ${name}: take ${sheet.show('power', neededW, { round: 'up' })}, or plan driving or shore power.`,
		physics('energy balance of a day'),
	);
	return sheet.answer(sheet.say`Short in ${name}: ${energy} a day for a need of ${need}`, { because });
}

/** Mean voltage of a 12 V lithium bank while it is charged [V] (common practice). */
const fillingVoltageV = 13.5;

/** In how many days of the month the array puts a charge back, with nothing drawn meanwhile. */
function reportFilling(sheet: Sheet, fillAh: number, chosen: DayYield, classV: number, because: string) {
	const name = monthName(chosen);
	if (chosen.batteryWh < 1) {
		return sheet.refuse(
			'impossible',
			sheet.say`In ${name} this array gives next to nothing: it never puts that back.`,
			'Name another month, or charge from the alternator or shore power.',
			'month',
		);
	}
	const voltageV = (fillingVoltageV * classV) / 12;
	sheet.assume(
		'fillingVoltage',
		'mean voltage while charging',
		voltageV,
		'usual of lithium; lead-acid takes a fifth more (practice)',
		{ kind: 'voltage' },
	);
	const fillWh = fillAh * voltageV;
	const days = fillWh / chosen.batteryWh;
	sheet.step(
		'days to put it back',
		't = Q · U / E',
		`${writeNumber(fillAh, 1)} Ah · ${writeNumber(voltageV, 1)} V / ${writeNumber(chosen.batteryWh, 0)} Wh`,
		days,
		{ unit: 'd', source: physics('energy balance of a day') },
	);
	sheet.result('daysToFill', 'days to put it back', days, { unit: 'd', write: { decimals: 1, round: 'up' } });
	sheet.finding(
		'note',
		'nothing-drawn-meanwhile',
		'What is drawn meanwhile is not in it: simulate counts loads and sun together.',
		physics('energy balance of a day'),
	);
	return sheet.answer(
		sheet.say`${writeNumber(days, 1, 'up')} days in ${name} to put back ${sheet.show('charge', fillAh)}: ${showEnergy(sheet, chosen.batteryWh, 'down')} a day`,
		{ because },
	);
}

/** Rated power that a need takes, in whole steps of 10 W, or null where the sun gives nothing to speak of. */
function neededPower(whPerW: number, needWh: number): number | null {
	const ratedW = Math.ceil(needWh / whPerW / 10 - 1e-9) * 10;
	return whPerW > 0.05 && Number.isFinite(ratedW) ? ratedW : null;
}

function sizeArray(
	input: Input,
	sheet: Sheet,
	where: Place,
	chosen: DayYield,
	worst: DayYield,
	needWh: number,
	classV: number,
) {
	const name = monthName(chosen);
	const neededW = neededPower(chosen.batteryWh, needWh);
	if (neededW === null) {
		return sheet.refuse(
			'impossible',
			sheet.say`At ${where.name} in ${name} the sun gives next to nothing: no array on a roof covers that need.`,
			'Name another month, or plan driving, shore power or fuel for it.',
			'month',
		);
	}
	const array = sheet.show('power', neededW, { round: 'up' });
	const need = showEnergy(sheet, needWh, 'up');
	sheet.result('arrayNeeded', 'array for the whole need', neededW, { kind: 'power', write: { round: 'up' } });
	sheet.result('energyPerDay', 'into the battery a day with it', chosen.batteryWh * neededW, {
		kind: 'energy',
		write: energyWrite(chosen.batteryWh * neededW, 'down'),
	});
	sheet.result(
		'chargePerDay',
		sheet.say`charge a day at ${classV} V with it`,
		(chosen.batteryWh * neededW) / classV,
		{
			kind: 'charge',
			write: { round: 'down' },
		},
	);
	writeSun(sheet, chosen);
	sheet.step(
		'array for the need',
		'P = E / (E per W)',
		`${writeNumber(needWh, 0)} Wh / ${writeNumber(chosen.batteryWh, 3)} Wh/W, up to 10 W`,
		neededW,
		{ kind: 'power', source: physics('yield in proportion to rated power') },
	);
	if (input.month !== undefined && worst.month !== input.month) {
		const worstW = neededPower(worst.batteryWh, needWh);
		sheet.neighbour(
			monthName(worst),
			worstW !== null && worstW <= neededW,
			worstW === null
				? sheet.say`the sun gives next to nothing then`
				: sheet.say`${sheet.show('power', worstW, { round: 'up' })}, the worst month`,
		);
	}
	if (neededW > 1200) {
		sheet.finding(
			'warning',
			'array-larger-than-roof',
			sheet.say`${array} takes some ${sheet.show('area', neededW / 200, { round: 'up', decimals: 0 })} of panels: more than most van roofs hold. Cut the need, tilt the panels or add driving or shore power.`,
			practice('about 200 W of panel on a square metre'),
		);
	}
	writeFindings(input, sheet, chosen);
	return sheet.answer(sheet.say`${array} of panels for ${need} a day in ${name}`, {
		because: sheet.say`A watt of panel gives ${writeNumber(chosen.batteryWh, 1, 'down')} Wh a day at ${where.name} in ${name}: ${sheet.show('irradiation', chosen.planeKWhM2)} of sun, less heat, losses and controller.`,
	});
}

function writeSun(sheet: Sheet, chosen: DayYield): void {
	sheet.result('sunHours', 'sun hours on the panels a day', chosen.planeKWhM2, { kind: 'irradiation' });
	sheet.result('month', 'month', monthName(chosen));
}

/** The year's profile where no month was named; the worst month beside the one that was. */
function writeYear(input: Input, sheet: Sheet, worst: DayYield, year: readonly DayYield[]): void {
	const days = daysInMonth.reduce((sum: number, count) => sum + count, 0);
	const meanWh =
		year.reduce((sum, one) => sum + one.batteryWh * (daysInMonth[one.month - 1] as number), 0) / days;
	sheet.result('worstMonth', 'worst month', monthName(worst));
	sheet.result('worstMonthEnergyPerDay', 'a day in the worst month', worst.batteryWh, {
		kind: 'energy',
		write: energyWrite(worst.batteryWh, 'down'),
	});
	sheet.result('yearMeanEnergyPerDay', 'a day in the mean of the year', meanWh, {
		kind: 'energy',
		write: energyWrite(meanWh, 'down'),
	});
	if (input.month !== undefined) return;
	for (const one of year) {
		sheet.result(`energyPerDay${monthName(one)}`, sheet.say`a day in ${monthName(one)}`, one.batteryWh, {
			kind: 'energy',
			write: energyWrite(one.batteryWh, 'down'),
		});
	}
	sheet.assume('month', 'month', monthName(worst), 'no month was named: the worst of the year counts');
}

function writeNeighbours(
	input: Input,
	sheet: Sheet,
	where: Place,
	array: PvArray,
	chosen: DayYield,
	worst: DayYield,
): void {
	if (input.month !== undefined && worst.month !== chosen.month) {
		sheet.neighbour(
			monthName(worst),
			true,
			sheet.say`${showEnergy(sheet, worst.batteryWh, 'down')} a day, the worst month`,
		);
	}
	const equatorDeg = where.latitudeDeg < 0 ? 0 : 180;
	const tiltDeg = array.surface.tiltDeg === 0 ? 30 : 0;
	const other = dayYield(where, chosen.month, { ...array, surface: { tiltDeg, azimuthDeg: equatorDeg } });
	const energy = showEnergy(sheet, other.batteryWh, 'down');
	sheet.neighbour(
		tiltDeg === 0 ? 'flat on the roof' : sheet.say`tilted ${sheet.show('angle', tiltDeg)} to the noon sun`,
		true,
		sheet.say`${energy} a day`,
	);
}

function writeFindings(input: Input, sheet: Sheet, chosen: DayYield): void {
	if (chosen.planeKWhM2 < 0.5) {
		sheet.finding(
			'warning',
			'next-to-no-sun',
			sheet.say`${sheet.show('irradiation', chosen.planeKWhM2)} of sun a day in ${monthName(chosen)}: plan another source for it.`,
			practice('under half a sun hour an array is no source'),
		);
	} else {
		const factors = dailyFactors(chosen.typical.clearness, daysInMonth[chosen.month - 1] as number).toSorted(
			(a, b) => a - b,
		);
		const dull = writeNumber((factors[3] as number) * 100, 0, 'down');
		sheet.finding(
			'note',
			'days-vary',
			sheet.say`This is the month's mean: about one day in ten gives less than ${dull} % of it. Whether the bank bears that is a question for simulate.`,
			daySequenceSource,
		);
	}
	if (sheet.isGiven('shading') && input.shading > 0) {
		sheet.finding(
			'note',
			'shade-takes-strings',
			'Shade on part of one panel can take down its whole string: watch rack, fan and antenna shadows, and join shaded panels in parallel.',
			practice('partial shade'),
		);
	}
	const swing = chosen.typical.steps.map((step) => step.airC);
	if (swing.length > 0 && Math.min(...swing) < -1 && input.tiltDeg < 30) {
		sheet.finding(
			'note',
			'snow-not-counted',
			'It freezes in this month: snow on a flat panel stops it altogether until it is cleared.',
			practice('snow is not in the yield'),
		);
	}
	if (input.glued) {
		sheet.finding(
			'note',
			'glued-runs-hot',
			sheet.say`A panel glued to the roof runs hotter (up to ${sheet.show('temperature', chosen.hottestCellC ?? 0)} on the mean day): it gives less, ages sooner and warms the van.`,
			sapmSource,
		);
	}
}

function writeWorking(sheet: Sheet, where: Place, array: PvArray, chosen: DayYield, classV: number): void {
	const n = writeNumber;
	const { typical } = chosen;
	sheet.step(
		'irradiation on the horizontal, mean day',
		'H from the climate table',
		`${where.stationName}, ${monthName(chosen)}`,
		typical.ghiKWhM2,
		{ kind: 'irradiation', source: climateSource(where.dataset) },
	);
	sheet.step(
		'of it from the sky',
		typical.isDiffuseReckoned ? 'Hd = H · f(K)' : 'Hd from the climate table',
		typical.isDiffuseReckoned
			? `${n(typical.ghiKWhM2, 2)} kWh/m² · f(${n(typical.clearness, 3)})`
			: `${where.stationName}, ${monthName(chosen)}`,
		typical.dhiKWhM2,
		{ kind: 'irradiation', source: typical.isDiffuseReckoned ? diffuseSource : climateSource(where.dataset) },
	);
	if (typical.isSwingUsual) {
		sheet.assume(
			'dailySwing',
			'daily swing of the temperature',
			10,
			'none is published for the station: 5 K either way (practice)',
			{
				kind: 'temperatureDifference',
			},
		);
	}
	sheet.step(
		'irradiation on the panels',
		'Hp = Σ (beam · cos θ + sky + ground) over the day',
		`${typical.steps.length} steps of 10 min, tilt ${n(array.surface.tiltDeg, 0)}°, facing ${n(array.surface.azimuthDeg, 0)}°`,
		chosen.planeKWhM2,
		{ kind: 'irradiation', source: transpositionSource },
	);
	sheet.source(sunPositionSource, extraterrestrialSource, hourlyShapeSource, glassSource);
	if (chosen.hottestCellC !== null) {
		sheet.step(
			'hottest cell of the day',
			'Tc = Ta + G · exp(a + b · v) + G / 1000 · ΔT',
			`a ${array.mounting.a}, b ${array.mounting.b}, v ${array.windMS} m/s, ΔT ${array.mounting.deltaK} K`,
			chosen.hottestCellC,
			{ kind: 'temperature', source: sapmSource },
		);
	}
	sheet.step(
		'energy from the panels',
		'Edc = Σ P · G / 1000 · (1 + γ (Tc − 25)) · Δt',
		`P ${n(array.ratedW, 0)} W, γ ${n(array.powerPerK * 100, 2)} %/K`,
		chosen.dcWh,
		{ kind: 'energy', source: pvWattsSource },
	);
	sheet.step(
		'into the battery',
		'E = Edc · (1 − losses) · (1 − shade) · controller',
		`${n(chosen.dcWh, 1)} Wh · ${n(1 - array.losses, 4)} · ${n(1 - array.shading, 3)} · ${n(array.controllerEfficiency, 3)}`,
		chosen.batteryWh,
		{ kind: 'energy', source: pvWattsSource },
	);
	sheet.step('charge', 'Q = E / V', `${n(chosen.batteryWh, 1)} Wh / ${classV} V`, chosen.batteryWh / classV, {
		kind: 'charge',
		source: physics('charge is energy over voltage'),
	});
}
