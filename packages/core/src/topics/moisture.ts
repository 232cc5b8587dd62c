import { airDensityKgM3, airHeatWK } from '../climate/air.js';
import { cautionBreathing, cautionMonoxide } from '../climate/cautions.js';
import { breathedGH, burnedGH, dryingAirKgH, wettingRatio } from '../climate/moisture.js';
import {
	dewPointC,
	humidityRatio,
	moistVolumeM3Kg,
	relativeHumidityOf,
	saturationTemperatureC,
} from '../climate/psychrometrics.js';
import { liningElement, windowElement } from '../climate/shell.js';
import { shellFields } from '../climate/van.js';
import { innerSurfaceC, resistanceOf } from '../climate/wall.js';
import { writeNumber } from '../quantity/write.js';
import { designHeating } from '../solar/climate.js';
import { isDecision, readPlace } from '../solar/place-input.js';
import { materials } from '../tables/materials.js';
import { bodyHeat } from '../tables/people.js';
import { surfaceResistances } from '../tables/surfaces.js';
import { declareTopic } from '../topic/declare.js';
import { choice, count, type InputOf, place, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';

const fields = {
	outsideC: quantity({
		label: 'outside temperature',
		kind: 'temperature',
		worseEnd: 'low',
		min: -50,
		max: 40,
		aliases: ['outside', 'cold', 'down to', 'low', 'night', 'winter', 'at', 'fuera', 'außen', 'draußen'],
	}),
	insideC: quantity({
		label: 'inside temperature',
		kind: 'temperature',
		min: 0,
		max: 35,
		aliases: ['inside', 'indoors', 'keep', 'room', 'heated to', 'dentro', 'innen', 'drinnen'],
		fallback: { value: 18, why: 'a heated night (practice)' },
	}),
	place: place({
		label: 'place',
		aliases: ['in', 'near', 'around', 'winter in', 'en', 'bei'],
		help: 'Its design low is taken where no temperature is named.',
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
			'sleepers',
			'people sleeping',
			'of us',
			'pax',
			'personas',
			'personen',
			'leute',
			'ppl',
		],
		fallback: { value: 2, why: 'two people aboard' },
	}),
	outsideRh: quantity({
		label: 'outside humidity',
		kind: 'fraction',
		min: 0.02,
		max: 1,
		aliases: ['outside humidity', 'humidity', 'rh', 'humedad', 'luftfeuchte'],
		fallback: { value: 0.9, why: 'a cold night is nearly saturated (the safe side)' },
	}),
	dryingKg: quantity({
		label: 'water in things hung to dry',
		kind: 'mass',
		min: 0,
		max: 30,
		aliases: [
			'drying',
			'wet clothes',
			'wet gear',
			'laundry',
			'towels',
			'ropa mojada',
			'secar',
			'trocknen',
			'nasse wäsche',
			'clothes',
			'wet',
			'of clothes',
			'drying clothes',
		],
		fallback: { value: 0, why: 'nothing hung to dry' },
	}),
	nightH: quantity({
		label: 'hours of the night',
		kind: 'duration',
		min: 1,
		max: 24,
		aliases: ['night', 'overnight', 'sleep', 'asleep', 'for', 'noche', 'nacht'],
		fallback: { value: 8, why: 'a night of sleep' },
	}),
	cookingH: quantity({
		label: 'cooking time',
		kind: 'duration',
		min: 0,
		max: 8,
		aliases: [
			'cooking',
			'cook',
			'stove',
			'boiling',
			'cocinar',
			'kochen',
			'cocinando',
			'cocina',
			'gekocht',
			'cooking on gas',
			'cook on gas',
			'cooking with gas',
			'cook with gas',
			'kochen mit gas',
			'cocinar con gas',
			'cocinando con gas',
		],
		fallback: { value: 0.5, why: 'a meal of half an hour (practice)' },
	}),
	stove: choice({
		label: 'stove',
		options: {
			gas: [
				'gas stove',
				'propane stove',
				'cook on gas',
				'cooking on gas',
				'gas burner',
				'estufa de gas',
				'gaskocher',
				'con gas',
				'mit gas',
				'cocinar con gas',
				'kochen mit gas',
				'on gas',
				'with gas',
				'cooking with gas',
				'cook with gas',
				'cocinando con gas',
			],
			electric: ['induction', 'electric stove', 'electric cooktop', 'inducción', 'induktion'],
			none: ['no cooking', 'no stove', 'cook outside', 'cooking outside', 'sin cocinar', 'kein kochen'],
		},
		fallback: { value: 'gas', why: 'the safe side: burning gas makes water', confirm: true },
	}),
	burnerW: quantity({
		label: 'flame of the stove',
		kind: 'power',
		min: 100,
		max: 12_000,
		aliases: ['burner', 'flame', 'stove', 'quemador', 'brenner'],
		fallback: { value: 2000, why: 'one burner (practice)' },
	}),
	surface: choice({
		label: 'surface that is to stay dry',
		options: {
			lining: ['lining', 'panelling', 'paneling', 'wall panels', 'revestimiento', 'verkleidung'],
			ribs: ['ribs', 'bare ribs', 'metal', 'frames', 'nervios', 'rippen'],
			glass: [
				'glass',
				'windows',
				'window',
				'windscreen',
				'windshield',
				'ventanas',
				'fenster',
				'scheiben',
				'windows dry',
				'keep windows dry',
				'keep the windows dry',
				'windows sweating',
				'sweating windows',
				'wet windows',
				'windows fog',
				'fogged windows',
			],
		},
		fallback: { value: 'ribs', why: 'the lining over a rib, the coldest surface besides the glass' },
	}),
	airM3H: quantity({
		label: 'air flow there is',
		kind: 'airflow',
		min: 0.5,
		max: 5000,
		aliases: ['fan', 'airflow', 'air flow', 'vent', 'ventilation', 'ventilador', 'lüfter', 'luftstrom'],
	}),
	bare: shellFields.bare,
	insulationMm: shellFields.insulationMm,
	material: shellFields.material,
	ribCoverMm: shellFields.ribCoverMm,
	windowKind: shellFields.windowKind,
	covers: shellFields.covers,
	volumeL: quantity({
		label: 'air inside',
		kind: 'volume',
		min: 500,
		max: 60_000,
		aliases: ['volume', 'inside volume', 'interior volume', 'air volume', 'van', 'volumen', 'rauminhalt'],
		fallback: {
			value: 15_000,
			why: 'a long van with a high roof (practice); it only turns flow into air changes',
		},
	}),
};

type Input = InputOf<typeof fields>;

export const moisture = declareTopic({
	name: 'moisture',
	title: 'Air that keeps the inside dry',
	system: 'climate',
	purpose:
		'How much water people, cooking and drying give off, and the air flow that keeps the cold surfaces above the dew point.',
	words: [
		'condensation',
		'moisture',
		'dew point',
		'kondenswasser',
		'condensación',
		'damp',
		'mold',
		'mould',
		'sweating windows',
		'wet windows',
		'windows sweating',
		'windows fog',
		'fogged windows',
		'sweating',
		'windows dry',
		'keep windows dry',
		'keep the windows dry',
		'stop condensation',
		'how much air',
		'how much fresh air',
		'humidity',
		'humedad',
		'moho',
		'schimmel',
		'feuchtigkeit',
		'beschlagen',
	],
	examples: [
		'condensation: 2 people, 20 F outside, 65 F inside, 1 in insulation',
		'how much air to keep windows dry at -5 C with 2 people',
		'moisture with 30 cfm fan, 4 people, 30 F outside',
		'kondenswasser 2 personen -10 C außen 20 mm dämmung',
	],
	method:
		'Water balance of the air in steady state: what is given off leaves with the air, which may carry as much as just saturates at the surface. Surface temperatures by layers with a poorly ventilated inside film. Walls soak up and give back water; that is not counted.',
	fields,
	needs: [{ anyOf: ['outsideC', 'place'], question: 'How cold is it outside (or where)?' }],
	calculate: calculateMoisture,
});

/** Inside film for mould and condensation on opaque surfaces, behind curtains and cupboards [m²K/W]. */
const poorFilmM2KW = 0.25;
const poorFilmSource = fromMemory('ISO 13788', 'Rsi 0.25 for opaque surfaces, 0.13 for glazing');
/** Boiling pots give off [g/h] (common practice). */
const potGH = 300;
const pressurePa = 101_325;
/** From here on the heat of the drying air weighs in the choice of a heater [W] (common practice). */
const costlyW = 800;
const massBalance = physics('water balance of the air');

type SurfaceName = 'lining' | 'ribs' | 'glass';

interface Surface {
	readonly name: SurfaceName;
	readonly temperatureC: number;
	/** air that keeps it dry through the night and while cooking [m³/h] */
	readonly nightM3H: number;
	readonly cookingM3H: number;
}

interface Water {
	readonly sleepGH: number;
	readonly dryingGH: number;
	readonly nightGH: number;
	readonly cookingGH: number;
	readonly nightKg: number;
}

function waterOf(input: Input): Water {
	const sleepGH = input.people * breathedGH('asleep');
	const dryingGH = (input.dryingKg * 1000) / input.nightH;
	const burned = input.stove === 'gas' ? burnedGH(input.burnerW) : 0;
	const stove = input.stove === 'none' ? 0 : burned + potGH;
	const nightGH = sleepGH + dryingGH;
	return {
		sleepGH,
		dryingGH,
		nightGH,
		cookingGH: input.stove === 'none' ? 0 : input.people * breathedGH('active') + stove + dryingGH,
		nightKg: (nightGH * input.nightH + (input.stove === 'none' ? 0 : stove * input.cookingH)) / 1000,
	};
}

function surfacesOf(input: Input, outsideC: number, water: Water): Surface[] {
	const insulation = materials[input.material];
	const fitout = { insulation, ribCoverMm: input.ribCoverMm, ribShare: 0.1 };
	const opaque = resistanceOf(liningElement(fitout, input.insulationMm, poorFilmM2KW));
	const glassFilm = surfaceResistances.insideHorizontal.resistanceM2KW;
	const glass = resistanceOf(windowElement(input.windowKind, input.covers, glassFilm));
	// A cover hangs before the pane and moist air gets behind it: the pane itself is colder than the cover.
	const beforePane = input.covers ? glass.totalM2KW - paneM2KW(input) : glassFilm;
	const paneC = innerSurfaceC(input.insideC, outsideC, beforePane, glass.totalM2KW);
	const outsideRatio = humidityRatio(outsideC, input.outsideRh, pressurePa);
	const surface = (name: SurfaceName, temperatureC: number): Surface => {
		const ratio = wettingRatio(temperatureC, pressurePa);
		// Any surface inside is warmer than the air outside, so saturated air at it is moister.
		const flow = (rateGH: number) =>
			dryingAirKgH(rateGH, ratio, outsideRatio) * moistVolumeM3Kg(input.insideC, ratio, pressurePa);
		return { name, temperatureC, nightM3H: flow(water.nightGH), cookingM3H: flow(water.cookingGH) };
	};
	return [
		surface('lining', innerSurfaceC(input.insideC, outsideC, poorFilmM2KW, opaque.clearM2KW)),
		surface('ribs', innerSurfaceC(input.insideC, outsideC, poorFilmM2KW, opaque.bridgeM2KW)),
		surface('glass', paneC),
	];
}

/** Resistance from the room side of the pane to the air outside [m²K/W]. */
function paneM2KW(input: Input): number {
	return resistanceOf(windowElement(input.windowKind, false, 0)).totalM2KW;
}

function calculateMoisture(input: Input, sheet: Sheet) {
	let { outsideC } = input;
	if (input.place !== undefined) {
		const found = readPlace(sheet, input.place);
		if (isDecision(found)) return found;
		if (outsideC === undefined) {
			const low = designHeating(found);
			outsideC = low.valueC;
			sheet.assume(
				'outsideC',
				'outside temperature',
				outsideC,
				low.standIn?.(sheet.say) ?? sheet.say`the design low of ${found.name}`,
				{
					kind: 'temperature',
				},
			);
			sheet.source(low.source);
		}
	}
	if (outsideC === undefined) throw new Error('the declaration asks for a temperature or a place');
	if (outsideC >= input.insideC) {
		return sheet.refuse(
			'contradiction',
			sheet.say`It is ${sheet.show('temperature', outsideC)} outside and ${sheet.show('temperature', input.insideC)} inside: no inner surface is colder than the air.`,
			'Give an outside temperature below the inside one.',
			'outsideC',
		);
	}
	const water = waterOf(input);
	if (water.nightGH === 0 && water.cookingGH === 0) {
		return sheet.refuse(
			'impossible',
			'Nobody is aboard, nothing dries and nothing is cooked: no water is given off.',
			'Give the people, the cooking or the wet things.',
			'people',
		);
	}
	const surfaces = surfacesOf(input, outsideC, water);
	const target = surfaces.find((one) => one.name === input.surface);
	const glass = surfaces.find((one) => one.name === 'glass');
	if (target === undefined || glass === undefined) throw new Error('every surface is judged');

	writeWorking(sheet, input, water, surfaces, target, outsideC);
	writeResults(sheet, input, water, surfaces, target, outsideC);
	writeNeighbours(sheet, input, water, target, outsideC);
	writeTipping(sheet, input, target, outsideC);
	writeFindings(sheet, input, water, target, glass, outsideC);
	sheet.caution(cautionBreathing);
	if (input.stove === 'gas') sheet.caution(cautionMonoxide);

	const dew = sheet.show('temperature', target.temperatureC);
	const given = sheet.show('mass', water.nightKg, { round: 'up' });
	const because = sheet.say`The night gives off ${given} of water; this surface is at ${dew} and wet below that dew point.`;
	const flow = sheet.show('airflow', target.nightM3H, { round: 'up' });
	const name = surfaceText[target.name];
	if (input.airM3H !== undefined) {
		const enough = input.airM3H >= target.nightM3H;
		const has = sheet.show('airflow', input.airM3H);
		return sheet.answer(
			enough
				? sheet.say`${has} keeps the ${name} dry overnight; ${flow} would do`
				: sheet.say`${has} is too little: the ${name} needs ${flow} overnight`,
			{ governedBy: 'dew point at the surface', because },
		);
	}
	return sheet.answer(sheet.say`${flow} of outside air keeps the ${name} dry overnight`, {
		governedBy: 'dew point at the surface',
		because,
	});
}

const surfaceText: Readonly<Record<SurfaceName, string>> = {
	lining: 'lining',
	ribs: 'lining over the ribs',
	glass: 'glass',
};

function writeWorking(
	sheet: Sheet,
	input: Input,
	water: Water,
	surfaces: readonly Surface[],
	target: Surface,
	outsideC: number,
): void {
	const n = (value: number, decimals = 1) => writeNumber(value, decimals);
	sheet.step(
		'water given off asleep',
		'G = n · latent heat / r',
		`${input.people} × ${bodyHeat.asleep.latentW} W / 2.42 kJ/g`,
		water.sleepGH,
		{ unit: 'g/h', source: bodyHeat.asleep.source },
	);
	if (water.cookingGH > 0) {
		sheet.step(
			'water given off while cooking',
			input.stove === 'gas' ? 'G = people + pots + 1.63 · fuel burned' : 'G = people + pots',
			`${input.people} × ${n(breathedGH('active'))} g/h + ${potGH} g/h${input.stove === 'gas' ? ` + ${n(burnedGH(input.burnerW))} g/h` : ''}`,
			water.cookingGH,
			{ unit: 'g/h', source: practice('300 g/h from boiling pots') },
		);
		if (input.stove === 'gas') sheet.source(physics('combustion of propane, 1.63 g of water from a gram'));
	}
	for (const surface of surfaces) {
		sheet.step(
			`temperature of the ${surfaceText[surface.name]}`,
			'θ = Ti − (Ti − Te) · Rsi / R',
			`${n(input.insideC)} − (${n(input.insideC)} − ${n(outsideC)}) × Rsi / R`,
			surface.temperatureC,
			{ kind: 'temperature', source: poorFilmSource },
		);
	}
	const inside = wettingRatio(target.temperatureC, pressurePa) * 1000;
	const outside = humidityRatio(outsideC, input.outsideRh, pressurePa) * 1000;
	sheet.step(
		'air that carries it away',
		'V = v · G / (xi − xo)',
		`${n(water.nightGH)} g/h / (${n(inside, 2)} − ${n(outside, 2)}) g/kg × ${n(moistVolumeM3Kg(input.insideC, inside / 1000, pressurePa), 3)} m³/kg`,
		target.nightM3H,
		{
			kind: 'airflow',
			source: fromMemory('ASHRAE Handbook of Fundamentals', 'psychrometrics, Hyland-Wexler'),
		},
	);
	sheet.source(materials[input.material].source);
}

function writeResults(
	sheet: Sheet,
	input: Input,
	water: Water,
	surfaces: readonly Surface[],
	target: Surface,
	outsideC: number,
): void {
	const up = { kind: 'airflow', write: { round: 'up' } } as const;
	sheet.result('airflow', 'air that keeps it dry overnight', target.nightM3H, up);
	sheet.result('airChanges', 'air changes an hour', target.nightM3H / (input.volumeL / 1000), {
		unit: '1/h',
		write: { decimals: 1, round: 'up' },
	});
	sheet.result('heatCost', 'heat that air costs', heatCostW(input, target, outsideC), {
		kind: 'power',
		write: { round: 'up' },
	});
	if (water.cookingGH > 0) {
		sheet.result('airflowCooking', 'air that keeps it dry while cooking', target.cookingM3H, up);
	}
	const rate = { unit: 'g/h', write: { decimals: 0, round: 'up' } } as const;
	sheet.result('waterPerHour', 'water given off an hour, asleep', water.nightGH, rate);
	if (water.cookingGH > 0)
		sheet.result('waterCooking', 'water given off an hour, cooking', water.cookingGH, rate);
	sheet.result('waterPerNight', 'water of the night and its meal', water.nightKg, {
		kind: 'mass',
		write: { round: 'up' },
	});
	for (const surface of surfaces) {
		sheet.result(
			`${surface.name}Temperature`,
			sheet.say`temperature of the ${surfaceText[surface.name]}`,
			surface.temperatureC,
			{
				kind: 'temperature',
				write: { decimals: 1, round: 'down' },
			},
		);
		sheet.result(
			`${surface.name}Airflow`,
			sheet.say`air for the ${surfaceText[surface.name]}`,
			surface.nightM3H,
			up,
		);
	}
	const ratio = wettingRatio(target.temperatureC, pressurePa);
	sheet.result(
		'highestHumidity',
		'highest inside humidity that keeps it dry',
		Math.min(1, relativeHumidityOf(input.insideC, ratio, pressurePa)),
		{ kind: 'fraction', write: { round: 'down' } },
	);
	if (input.airM3H !== undefined) {
		const { dewC, rh } = insideWith(input, water, outsideC, input.airM3H);
		sheet.result('humidity', 'inside humidity with this air flow', Math.min(1, rh), {
			kind: 'fraction',
			write: { round: 'up' },
		});
		sheet.result('dewPoint', 'dew point inside with this air flow', dewC, {
			kind: 'temperature',
			write: { decimals: 1, round: 'up' },
		});
	}
}

/** Heat it takes to warm the drying air [W]. */
function heatCostW(input: Input, target: Surface, outsideC: number): number {
	const perKelvin = airHeatWK(target.nightM3H, airDensityKgM3(input.insideC, pressurePa / 1000));
	return perKelvin * (input.insideC - outsideC);
}

/** Steady state of the air inside with a given flow: water in is water out. */
function insideWith(
	input: Input,
	water: Water,
	outsideC: number,
	airM3H: number,
): { dewC: number; rh: number } {
	const outside = humidityRatio(outsideC, input.outsideRh, pressurePa);
	const dryKgH = airM3H / moistVolumeM3Kg(input.insideC, outside, pressurePa);
	const ratio = outside + water.nightGH / 1000 / dryKgH;
	const vapourPa = (pressurePa * ratio) / (0.621945 + ratio);
	return {
		dewC: Math.min(input.insideC, saturationTemperatureC(vapourPa)),
		rh: relativeHumidityOf(input.insideC, ratio, pressurePa),
	};
}

function writeNeighbours(sheet: Sheet, input: Input, water: Water, target: Surface, outsideC: number): void {
	const other = (name: string, change: Partial<Input>) => {
		const there = surfacesOf({ ...input, ...change }, outsideC, water).find(
			(one) => one.name === target.name,
		);
		if (there === undefined) return;
		const passes = input.airM3H === undefined || there.nightM3H <= input.airM3H;
		const flow = sheet.show('airflow', there.nightM3H, { round: 'up' });
		sheet.neighbour(name, passes, sheet.say`takes ${flow}`);
	};
	if (target.name === 'glass') {
		other(input.windowKind === 'single' ? sheet.say`double acrylic windows` : sheet.say`single glass`, {
			windowKind: input.windowKind === 'single' ? 'double' : 'single',
		});
		return;
	}
	const more = input.insulationMm === 0 ? 25 : input.insulationMm * 2;
	other(sheet.say`${sheet.show('thickness', more)} of insulation`, { insulationMm: more });
	if (input.insulationMm > 0) other(sheet.say`no insulation`, { insulationMm: 0, ribCoverMm: 0 });
	if (input.ribCoverMm === 0)
		other(sheet.say`${sheet.show('thickness', 10)} over the ribs`, { ribCoverMm: 10 });
}

/** How many people the air flow there is keeps dry. */
function writeTipping(sheet: Sheet, input: Input, target: Surface, outsideC: number): void {
	if (input.airM3H === undefined || input.airM3H < target.nightM3H) return;
	const people = Math.floor(peopleBorne(input, target, outsideC, input.airM3H));
	if (people <= input.people) return;
	sheet.tipping('people', 'people', people, sheet.say`up to ${people} people`, {});
}

function peopleBorne(input: Input, target: Surface, outsideC: number, airM3H: number): number {
	const ratio = wettingRatio(target.temperatureC, pressurePa);
	const dryKgH = airM3H / moistVolumeM3Kg(input.insideC, ratio, pressurePa);
	const carriesGH = dryKgH * (ratio - humidityRatio(outsideC, input.outsideRh, pressurePa)) * 1000;
	return (carriesGH - waterOf(input).dryingGH) / breathedGH('asleep');
}

function writeFindings(
	sheet: Sheet,
	input: Input,
	water: Water,
	target: Surface,
	glass: Surface,
	outsideC: number,
): void {
	if (input.airM3H !== undefined && input.airM3H < target.nightM3H) {
		const { dewC } = insideWith(input, water, outsideC, input.airM3H);
		const dew = sheet.show('temperature', dewC, { decimals: 1, round: 'up' });
		const needed = sheet.show('airflow', target.nightM3H, { round: 'up' });
		sheet.finding(
			'warning',
			'condensation',
			sheet.say`The dew point inside rises to ${dew}: water forms on the ${surfaceText[target.name]}. ${needed} clears it.`,
			massBalance,
		);
	}
	const costW = heatCostW(input, target, outsideC);
	if (costW > costlyW) {
		const cost = sheet.show('power', costW, { round: 'up' });
		sheet.finding(
			'note',
			'air-costs-heat',
			sheet.say`So much cold air takes ${cost} of heating; insulation on that surface saves more than it costs.`,
			massBalance,
		);
	}
	if (target.name !== 'glass' && glass.nightM3H > target.nightM3H) {
		const needs = sheet.show('airflow', glass.nightM3H, { round: 'up' });
		sheet.finding(
			'note',
			'glass-sweats',
			sheet.say`The glass is colder and needs ${needs} to stay dry; below that, wipe it in the morning.`,
			massBalance,
		);
	}
	if (water.cookingGH > 0 && target.cookingM3H > 2 * target.nightM3H) {
		const needs = sheet.show('airflow', target.cookingM3H, { round: 'up' });
		sheet.finding(
			'note',
			'cook-with-fan',
			sheet.say`Cooking takes ${needs} while it lasts: run the roof fan with a window open.`,
			massBalance,
		);
	}
	const frost = dewPointC(input.insideC, 0.5);
	if (target.temperatureC < 0 && frost > target.temperatureC) {
		sheet.finding(
			'note',
			'frost',
			sheet.say`The surface is below freezing: moisture freezes on it unseen and runs down when it thaws.`,
			physics('frost point'),
		);
	}
}
