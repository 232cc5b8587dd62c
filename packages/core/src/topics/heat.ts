import { airDensityKgM3, airHeatWK } from '../climate/air.js';
import { type Bank, bankFields, bankOf, energyText, energyWrite } from '../climate/bank.js';
import { cautionBreathing, cautionFuelGas, cautionHeaterFire, cautionMonoxide } from '../climate/cautions.js';
import { askingWords } from '../climate/fuel-fields.js';
import { altitudeShare, burnerEfficiency, fuelL, heaterSizesW, heaterTurndown } from '../climate/heater.js';
import { airVolumeM3, type Box, type Fitout, type Part, shellParts } from '../climate/shell.js';
import { boxOf, fitoutOf, shellFields, sizeFields, sizeNeed } from '../climate/van.js';
import { writeNumber } from '../quantity/write.js';
import { designHeating } from '../solar/climate.js';
import { isDecision, readPlace } from '../solar/place-input.js';
import { atmosphereSource, standardPressureKpa } from '../structure/atmosphere.js';
import { type FuelName, fuelSource, lowerHeatingValueWhPerL } from '../tables/fuels.js';
import { surfaceResistances } from '../tables/surfaces.js';
import { declareTopic } from '../topic/declare.js';
import { choice, flag, type InputOf, number, place, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice, published } from '../topic/source.js';

const fields = {
	outsideC: quantity({
		label: 'outside temperature',
		kind: 'temperature',
		worseEnd: 'low',
		min: -60,
		max: 30,
		aliases: [
			'outside',
			'down to',
			'low',
			'lows',
			'cold',
			'night',
			'nights',
			'winter',
			'at',
			'fuera',
			'hasta',
			'außen',
			'draußen',
			'bis',
		],
	}),
	insideC: quantity({
		label: 'inside temperature',
		kind: 'temperature',
		worseEnd: 'high',
		min: 0,
		max: 35,
		aliases: [
			'inside',
			'indoors',
			'interior',
			'keep',
			'keep it',
			'warm',
			'room',
			'dentro',
			'innen',
			'drinnen',
		],
		fallback: { value: 20, why: 'a comfortable evening (practice)' },
	}),
	place: place({
		label: 'place',
		aliases: ['in', 'near', 'around', 'winter in', 'en', 'bei'],
		help: 'Its design low and its altitude are taken where they are not named.',
	}),
	...sizeFields,
	...shellFields,
	altitudeM: quantity({
		label: 'altitude',
		kind: 'length',
		min: -400,
		max: 5500,
		aliases: [
			'altitude',
			'elevation',
			'above sea level',
			'at',
			'up at',
			'altitud',
			'höhe',
			'meereshöhe',
			'msnm',
		],
	}),
	airChanges: number({
		label: 'air changes an hour',
		min: 0.2,
		max: 20,
		aliases: ['air changes', 'air changes an hour', 'ach', 'renovaciones', 'luftwechsel'],
		fallback: { value: 2, why: 'vents cracked open for two people (practice)', confirm: true },
	}),
	heaterW: quantity({
		label: 'heater',
		kind: 'power',
		min: 100,
		max: 30_000,
		aliases: ['heater', 'furnace', 'diesel heater', 'gas heater', 'calefactor', 'calefacción', 'heizung'],
		help: 'Name its rating to have it judged.',
	}),
	fuel: choice({
		label: 'fuel',
		options: {
			diesel: ['diesel', 'diesel heater', 'gasoil', 'dieselheizung', 'diesel tank', ...askingWords.diesel],
			propane: [
				'propane',
				'propane heater',
				'lpg',
				'fuel gas',
				'propano',
				'gasheizung',
				'propan',
				'propane tank',
				'propane cylinder',
				'propane bottle',
				'gas bottle',
				...askingWords.propane,
			],
			gasoline: ['gasoline', 'petrol', 'gasoline heater', 'gasolina', 'benzin', ...askingWords.gasoline],
			electric: ['electric', 'electric heater', 'space heater', 'eléctrico', 'elektrisch', 'heizlüfter'],
		},
		fallback: { value: 'diesel', why: 'the usual fuel of van heaters', confirm: true },
	}),
	unvented: flag({
		label: 'heater without a flue',
		yes: [
			'unvented',
			'ventless',
			'vent free',
			'vent-free',
			'no flue',
			'without flue',
			'catalytic',
			'portable propane',
			'portable gas',
			'radiant propane',
			'sin salida de humos',
			'ohne abgas',
		],
	}),
	alarm: flag({
		label: 'carbon-monoxide alarm',
		yes: [
			'co alarm',
			'co detector',
			'carbon monoxide alarm',
			'carbon monoxide detector',
			'with alarm',
			'co melder',
		],
		no: [
			'no co alarm',
			'no co detector',
			'no carbon monoxide alarm',
			'no alarm',
			'without alarm',
			'sin alarma',
			'kein co melder',
		],
	}),
	efficiency: quantity({
		label: 'efficiency of the heater',
		kind: 'fraction',
		min: 0.3,
		max: 1,
		aliases: ['efficiency', 'efficient', 'eficiencia', 'wirkungsgrad'],
		fallback: {
			value: (given) => (given.fuel === 'electric' ? 0.85 : burnerEfficiency),
			why: 'burner heaters turn about 80 % of the lower heating value into heat; an inverter passes 85 % (practice)',
		},
	}),
	stayH: quantity({
		label: 'time to provide for',
		kind: 'duration',
		min: 24,
		max: 24 * 120,
		aliases: ['for', 'trip', 'stay', 'lasts', 'last', 'para', 'durante', 'für'],
		help: 'Days or nights for which the fuel has to last.',
	}),
	nightH: quantity({
		label: 'hours heated',
		kind: 'duration',
		min: 0.5,
		max: 24,
		aliases: ['night', 'overnight', 'hours', 'for', 'noche', 'nacht'],
		fallback: { value: 14, why: 'a long winter night (practice)' },
	}),
	fanW: quantity({
		label: 'electric draw of the heater',
		kind: 'power',
		min: 0,
		max: 500,
		aliases: ['fan', 'blower', 'heater draws', 'heater fan', 'ventilador', 'gebläse', 'lüfter'],
		fallback: {
			value: (given) => (given.fuel === 'electric' ? 0 : 25),
			why: 'fan and fuel pump, running (practice)',
			confirm: true,
		},
	}),
	...bankFields,
};

type Input = InputOf<typeof fields>;

export const heat = declareTopic({
	name: 'heat',
	title: 'Heat loss of the van and the heater it needs',
	system: 'climate',
	purpose:
		'How much heat the van loses on a cold night, which heater covers it, and what fuel and battery a night costs.',
	words: [
		'heat loss',
		'heater',
		'heating',
		'heat',
		'heizung',
		'calefacción',
		'diesel heater',
		'propane heater',
		'heater size',
		'what heater',
		'diesel per week',
		'propane per week',
		'diesel a night',
		'diesel a week',
		'propane a week',
		'furnace',
		'how big a furnace',
		'how much insulation',
		'what insulation',
		'keep warm',
		'electric heater',
		'fuel per night',
		'propane per night',
		'diesel per night',
		'how much diesel',
		'how much propane',
		'standheizung',
		'wärmeverlust',
		'pérdida de calor',
		'stay warm',
		'calefactor',
		'heizen',
		'calefa',
	],
	examples: [
		'heater for a long wheelbase high roof van at 0 F, 1 in foam board',
		'heat loss medium van -10 C outside 20 C inside 30 mm sheep wool',
		'is a 2 kW diesel heater enough: extended van, 10 F, 8000 ft altitude, 100 Ah bank',
		'heizung langer radstand -15 C 40 mm dämmung',
	],
	includes: ['fuel'],
	method:
		'Heat through every surface by its layers, films and ribs (ISO 6946, mean of upper and lower limit), plus the air that is renewed; no sun, no people. Heater output falls with the density of the air. Steady state: warming up a cold van takes the reserve.',
	fields,
	needs: [{ anyOf: ['outsideC', 'place'], question: 'How cold does it get outside (or where)?' }, sizeNeed],
	calculate: calculateHeat,
});

/** Reserve for warming up and wind. */
const reserve = 1.2;

interface Loss {
	readonly parts: readonly Part[];
	readonly airM3H: number;
	readonly airWK: number;
	readonly totalWK: number;
	readonly totalW: number;
	/** with every part at its lower or upper limit of resistance [W] */
	readonly mostW: number;
	readonly leastW: number;
	/** what the ribs cost beyond a shell without any [W] */
	readonly ribsW: number;
}

interface Climate {
	readonly outsideC: number;
	readonly altitudeM: number;
}

function lossOf(input: Input, box: Box, fitout: Fitout, climate: Climate): Loss {
	const parts = shellParts(box, fitout);
	const volumeM3 = airVolumeM3(box, fitout.cabClosed);
	const airM3H = volumeM3 * input.airChanges;
	const density = airDensityKgM3(input.insideC, standardPressureKpa(climate.altitudeM));
	const airWK = airHeatWK(airM3H, density);
	const difference = input.insideC - climate.outsideC;
	const sum = (pick: (part: Part) => number) =>
		parts.reduce((total, part) => total + part.areaM2 / pick(part), airWK);
	const totalWK = sum((part) => part.resistance.totalM2KW);
	return {
		parts,
		airM3H,
		airWK,
		totalWK,
		totalW: totalWK * difference,
		mostW: sum((part) => part.resistance.lowerM2KW) * difference,
		leastW: sum((part) => part.resistance.upperM2KW) * difference,
		ribsW: (totalWK - sum((part) => part.resistance.clearM2KW)) * difference,
	};
}

interface Heater {
	/** rated output needed at the altitude [W] */
	readonly neededW: number;
	/** the heater chosen or named [W], or null where none is large enough */
	readonly chosenW: number | null;
	readonly share: number;
}

function heaterFor(input: Input, loss: Loss, climate: Climate): Heater {
	const share = input.fuel === 'electric' ? 1 : altitudeShare(climate.altitudeM);
	const neededW = (loss.totalW * reserve) / share;
	const chosenW = input.heaterW ?? heaterSizesW.find((size) => size >= neededW) ?? null;
	return { neededW, chosenW, share };
}

function calculateHeat(input: Input, sheet: Sheet) {
	if (input.unvented === true) {
		return sheet.refuse(
			'unsafe',
			'I size no heater that burns fuel without a flue for a van people sleep in: it fills the air with carbon monoxide and water and uses up the oxygen.',
			'Use a heater with a sealed burner: combustion air from outside, exhaust to outside; and a carbon-monoxide alarm.',
			'unvented',
		);
	}
	const climate = climateOf(input, sheet);
	if ('kind' in climate) return climate;
	if (climate.outsideC >= input.insideC) {
		return sheet.refuse(
			'contradiction',
			sheet.say`It is ${sheet.show('temperature', climate.outsideC)} outside and ${sheet.show('temperature', input.insideC)} is wanted inside: no heat is lost.`,
			'Give an outside temperature below the inside one; for the opposite ask the cool topic.',
			'outsideC',
		);
	}
	const box = boxOf(input, sheet);
	const fitout = fitoutOf(input, sheet);
	const loss = lossOf(input, box, fitout, climate);
	const heater = heaterFor(input, loss, climate);
	const bank = bankOf(input, sheet);
	const night = nightOf(input, loss, bank);

	writeWorking(sheet, input, loss, heater, night, climate);
	writeResults(sheet, loss, heater, night);
	if (input.stayH !== undefined) writeStay(sheet, night, Math.ceil(input.stayH / 24));
	writeNeighbours(sheet, input, box, fitout, climate);
	writeTipping(sheet, input, loss, heater, climate);
	writeFindings(sheet, input, loss, heater, night, climate);
	addCautions(sheet, input);

	const lost = sheet.show('power', loss.totalW, { round: 'up' });
	const outside = sheet.show('temperature', climate.outsideC);
	const largest = loss.parts[0];
	const partName = largest === undefined || loss.airWK > largest.lossWK ? 'air' : largest.name;
	const partW = sheet.show(
		'power',
		Math.max(loss.airWK, largest?.lossWK ?? 0) * (input.insideC - climate.outsideC),
	);
	const because = sheet.say`The van loses ${lost} at ${outside}; most of it through: ${partName} (${partW}).`;
	if (heater.chosenW === null) {
		const needed = kilowatts(sheet, heater.neededW, 'up');
		return sheet.answer(sheet.say`${needed} of heat needed: more than one heater, or insulate`, { because });
	}
	const size = kilowatts(sheet, heater.chosenW, 'nearest');
	const enough = heater.chosenW >= heater.neededW;
	const tail = takenIn(sheet, night, 1);
	const nights = input.stayH === undefined ? 1 : Math.ceil(input.stayH / 24);
	const stay =
		nights === 1
			? sheet.say`${tail} a night`
			: sheet.say`${takenIn(sheet, night, nights)} for ${nights} nights`;
	const headline =
		input.heaterW === undefined
			? sheet.say`${size} heater; ${stay}`
			: enough
				? sheet.say`${size} will do; ${stay}`
				: sheet.say`${size} is too small: ${kilowatts(sheet, heater.neededW, 'up')} needed`;
	return sheet.answer(headline, { governedBy: 'heat loss of the shell', because });
}

/** What so many nights take: fuel, or electricity where no fuel heats. */
function takenIn(sheet: Sheet, night: Night, nights: number): string {
	return night.fuelL === null
		? energyText(sheet, nights * night.electricWh)
		: sheet.show('volume', nights * night.fuelL, { decimals: 2, round: 'up' });
}

function kilowatts(sheet: Sheet, powerW: number, round: 'up' | 'nearest'): string {
	return sheet.show('power', powerW, { unit: 'kW', decimals: 1, round });
}

function climateOf(input: Input, sheet: Sheet): Climate | ReturnType<Sheet['ask']> {
	let { outsideC, altitudeM } = input;
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
		if (altitudeM === undefined) {
			altitudeM = found.elevationM;
			sheet.assume('altitudeM', 'altitude', altitudeM, sheet.say`that of ${found.stationName}`, {
				kind: 'length',
			});
		}
	}
	if (outsideC === undefined) throw new Error('the declaration asks for a temperature or a place');
	if (altitudeM === undefined) {
		altitudeM = 0;
		sheet.assume('altitudeM', 'altitude', 0, 'sea level, as none was named', {
			kind: 'length',
			confirm: true,
		});
	}
	return { outsideC, altitudeM };
}

interface Night {
	readonly heatWh: number;
	/** null for an electric heater */
	readonly fuelL: number | null;
	readonly electricWh: number;
	readonly bank: Bank;
}

function nightOf(input: Input, loss: Loss, bank: Bank): Night {
	const heatWh = loss.totalW * input.nightH;
	if (input.fuel === 'electric') {
		return { heatWh, fuelL: null, electricWh: heatWh / input.efficiency, bank };
	}
	return {
		heatWh,
		fuelL: fuelL(heatWh, input.efficiency, input.fuel),
		electricWh: input.fanW * input.nightH,
		bank,
	};
}

function writeWorking(
	sheet: Sheet,
	input: Input,
	loss: Loss,
	heater: Heater,
	night: Night,
	climate: Climate,
): void {
	for (const part of loss.parts) {
		const { resistance } = part;
		sheet.step(
			`heat lost per kelvin: ${part.name}`,
			'UA = A / R, R = (R′ + R″) / 2',
			`${n(part.areaM2)} m² / ((${n(resistance.upperM2KW, 3)} + ${n(resistance.lowerM2KW, 3)}) / 2) m²K/W`,
			part.lossWK,
			{ kind: 'heatLoss', source: published('ISO 6946', 'combined method') },
		);
	}
	sheet.source(
		...Object.values(surfaceResistances)
			.slice(0, 4)
			.map((one) => one.source),
	);
	sheet.step(
		'heat lost per kelvin: air',
		'UA = ρ · c · V / 3600',
		`${n(loss.airM3H, 1)} m³/h of air at ${n(climate.altitudeM, 0)} m`,
		loss.airWK,
		{ kind: 'heatLoss', source: atmosphereSource },
	);
	sheet.step(
		'heat loss',
		'Q = ΣUA · (Ti − Te)',
		`${n(loss.totalWK, 1)} W/K × (${n(input.insideC, 1)} − ${n(climate.outsideC, 1)}) K`,
		loss.totalW,
		{ kind: 'power', source: physics('heat balance') },
	);
	sheet.step(
		'rated output needed',
		'P = 1.2 · Q / k(h)',
		`1.2 × ${n(loss.totalW, 0)} W / ${n(heater.share, 3)}`,
		heater.neededW,
		{ kind: 'power', source: practice('20 % reserve for warming up and wind') },
	);
	if (heater.share < 1) sheet.source(deratingSource);
	if (night.fuelL !== null) {
		const fuel = input.fuel as FuelName;
		sheet.step(
			'fuel a night',
			'V = Q · t / (η · LHV)',
			`${n(loss.totalW, 0)} W × ${n(input.nightH, 1)} h / (${n(input.efficiency)} × ${n(lowerHeatingValueWhPerL(fuel), 0)} Wh/L)`,
			night.fuelL,
			{ kind: 'volume', source: fuelSource },
		);
	}
	sheet.step(
		'battery a night',
		input.fuel === 'electric' ? 'E = Q · t / η' : 'E = P,fan · t',
		input.fuel === 'electric'
			? `${n(night.heatWh, 0)} Wh / ${n(input.efficiency)}`
			: `${n(input.fanW, 0)} W × ${n(input.nightH, 1)} h`,
		night.electricWh,
		{ kind: 'energy', source: physics('energy') },
	);
}

const deratingSource = fromMemory(
	'NFPA 54 (National Fuel Gas Code)',
	'4 % less output per 1000 ft above 2000 ft',
);

function writeResults(sheet: Sheet, loss: Loss, heater: Heater, night: Night): void {
	const up = { kind: 'power', write: { round: 'up' } } as const;
	sheet.result('heatLoss', 'heat loss', loss.totalW, up);
	sheet.result('heatLossMost', 'heat loss if heat spreads freely to the ribs', loss.mostW, up);
	sheet.result('heatLossLeast', 'heat loss if it does not', loss.leastW, { kind: 'power' });
	sheet.result('lossPerKelvin', 'heat lost per kelvin', loss.totalWK, {
		kind: 'heatLoss',
		write: { round: 'up' },
	});
	const difference = loss.totalW / loss.totalWK;
	for (const part of loss.parts) {
		sheet.result(
			`${resultName(part.name)}Loss`,
			sheet.say`through: ${part.name}`,
			part.lossWK * difference,
			up,
		);
	}
	sheet.result('airLoss', 'through: air', loss.airWK * difference, up);
	const walls = loss.parts.find((part) => part.name === 'walls');
	if (walls !== undefined) {
		sheet.result('wallU', 'U of the walls', 1 / walls.resistance.totalM2KW, {
			kind: 'conductance',
			write: { round: 'up' },
		});
	}
	sheet.result('heaterNeeded', 'rated output needed', heater.neededW, up);
	if (heater.chosenW !== null) {
		sheet.result('heater', 'heater', heater.chosenW, { kind: 'power' });
		sheet.result('heaterOutput', 'its output at this altitude', heater.chosenW * heater.share, {
			kind: 'power',
			write: { round: 'down' },
		});
	}
	sheet.result('altitudeShare', 'output kept at this altitude', heater.share, {
		kind: 'fraction',
		write: { round: 'down' },
	});
	if (night.fuelL !== null) {
		sheet.result('fuelPerNight', 'fuel a night', night.fuelL, {
			kind: 'volume',
			write: { round: 'up', decimals: 2 },
		});
	}
	sheet.result('batteryPerNight', 'battery a night', night.electricWh, {
		kind: 'energy',
		write: energyWrite(night.electricWh),
	});
	sheet.result('chargePerNight', 'from the bank a night', night.electricWh / night.bank.voltageV, {
		kind: 'charge',
		write: { round: 'up' },
	});
	const { usableWh } = night.bank;
	if (usableWh !== null) {
		sheet.result('bankShare', 'share of the bank a night', night.electricWh / usableWh, {
			kind: 'fraction',
			write: { round: 'up' },
		});
	}
}

/** "cab glass" is cabGlass. */
function resultName(part: string): string {
	return part.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase());
}

const n = (value: number, decimals = 2) => writeNumber(value, decimals);

/** What several nights like this take. */
function writeStay(sheet: Sheet, night: Night, nights: number): void {
	if (night.fuelL !== null) {
		const fuel = nights * night.fuelL;
		sheet.step('fuel for the stay', 'Vs = n · V', `${nights} × ${n(night.fuelL)} L`, fuel, {
			kind: 'volume',
			source: physics('as many nights as cold as this one'),
		});
		sheet.result('fuelForStay', 'fuel for the stay', fuel, {
			kind: 'volume',
			write: { round: 'up', decimals: 2 },
		});
	}
	const electricWh = nights * night.electricWh;
	sheet.result('batteryForStay', 'battery for the stay', electricWh, {
		kind: 'energy',
		write: energyWrite(electricWh),
	});
}

function writeNeighbours(sheet: Sheet, input: Input, box: Box, fitout: Fitout, climate: Climate): void {
	const other = (change: Partial<Fitout>, name: string) => {
		const loss = lossOf(input, box, { ...fitout, ...change }, climate);
		const { neededW } = heaterFor(input, loss, climate);
		const lost = sheet.show('power', loss.totalW, { round: 'up' });
		const passes = input.heaterW === undefined || input.heaterW >= neededW;
		sheet.neighbour(name, passes, sheet.say`loses ${lost}`);
	};
	if (fitout.wallMm > 0) {
		other({ wallMm: 0, roofMm: 0, floorMm: 0, ribCoverMm: 0 }, sheet.say`no insulation`);
		const twice = sheet.show('thickness', fitout.wallMm * 2);
		other(
			{ wallMm: fitout.wallMm * 2, roofMm: fitout.roofMm * 2, floorMm: fitout.floorMm * 2 },
			sheet.say`${twice} of insulation`,
		);
	} else {
		const some = sheet.show('thickness', 25);
		other({ wallMm: 25, roofMm: 25, floorMm: 15 }, sheet.say`${some} of insulation`);
	}
	if (fitout.ribCoverMm === 0 && fitout.wallMm > 0) {
		const cover = sheet.show('thickness', 10);
		other({ ribCoverMm: 10 }, sheet.say`${cover} over the ribs`);
	}
	if (!fitout.covers) other({ covers: true }, sheet.say`insulated window covers`);
}

/** The cold down to which the heater still covers the loss. */
function writeTipping(sheet: Sheet, input: Input, loss: Loss, heater: Heater, climate: Climate): void {
	if (heater.chosenW === null || heater.chosenW < heater.neededW) return;
	const differenceK = (heater.chosenW * heater.share) / (loss.totalWK * reserve);
	const outsideC = input.insideC - differenceK;
	const shown = sheet.show('temperature', outsideC, { round: 'up' });
	sheet.tipping('outsideC', 'outside temperature', outsideC, sheet.say`down to ${shown}`, {
		kind: 'temperature',
	});
	if (input.fuel === 'electric' || heater.share <= 0) return;
	const enough = (altitudeM: number) =>
		(heater.chosenW ?? 0) >= heaterFor(input, lossAt(altitudeM), { ...climate, altitudeM }).neededW;
	// The thin air carries less heat away as well, but the burner loses more.
	const lossAt = (altitudeM: number): Loss => {
		const airWK = loss.airWK * (standardPressureKpa(altitudeM) / standardPressureKpa(climate.altitudeM));
		const totalWK = loss.totalWK - loss.airWK + airWK;
		return { ...loss, airWK, totalWK, totalW: (totalWK * loss.totalW) / loss.totalWK };
	};
	if (enough(5500)) return;
	let low = climate.altitudeM;
	let high = 5500;
	for (let step = 0; step < 40; step += 1) {
		const middle = (low + high) / 2;
		if (enough(middle)) low = middle;
		else high = middle;
	}
	const top = sheet.show('length', low, { decimals: 0, round: 'down' });
	sheet.tipping('altitudeM', 'altitude', low, sheet.say`up to ${top}`, { kind: 'length' });
}

function writeFindings(
	sheet: Sheet,
	input: Input,
	loss: Loss,
	heater: Heater,
	night: Night,
	climate: Climate,
): void {
	const burns = input.fuel !== 'electric';
	if (burns && input.alarm === false) {
		sheet.finding(
			'danger',
			'no-carbon-monoxide-alarm',
			sheet.say`A fuel-burning heater without a carbon-monoxide alarm can kill people in their sleep. Fit an alarm at sleeping height first.`,
			practice('carbon-monoxide alarm wherever fuel is burned'),
		);
	}
	if (input.heaterW !== undefined && input.heaterW < heater.neededW) {
		const next = heaterSizesW.find((size) => size >= heater.neededW);
		const output = sheet.show('power', input.heaterW * heater.share, { round: 'down' });
		const needed = kilowatts(sheet, next ?? heater.neededW, 'up');
		sheet.finding(
			'warning',
			'heater-too-small',
			sheet.say`It gives ${output} here and the van needs more in reserve; ${needed}, or better insulation, clears it.`,
			physics('heat balance'),
		);
	}
	if (burns && heater.chosenW !== null && heater.chosenW * heaterTurndown > loss.totalW) {
		const least = sheet.show('power', heater.chosenW * heaterTurndown);
		sheet.finding(
			'note',
			'heater-oversized',
			sheet.say`Even at its lowest (about ${least}) it gives more than the van loses: it will cycle and soot up.`,
			practice('burner heaters turn down to about a third'),
		);
	}
	if (burns && heater.share < 0.95) {
		const kept = writeNumber(heater.share * 100, 0, 'down');
		const altitude = sheet.show('length', climate.altitudeM, { decimals: 0 });
		sheet.finding(
			heater.share < 0.85 ? 'warning' : 'note',
			'altitude-derating',
			sheet.say`At ${altitude} the burner keeps about ${kept} % of its output; it needs a high-altitude setting or it burns rich and soots.`,
			deratingSource,
		);
	}
	const { usableWh } = night.bank;
	if (usableWh !== null && night.electricWh > usableWh) {
		const takes = energyText(sheet, night.electricWh);
		const gives = energyText(sheet, usableWh, 'down');
		const needed = energyText(sheet, night.electricWh / night.bank.depth);
		sheet.finding(
			'warning',
			'heating-empties-bank',
			burns
				? sheet.say`Fan and pump take ${takes} a night and the bank gives ${gives}; a bank of ${needed} clears it.`
				: sheet.say`Heating takes ${takes} a night and the bank gives ${gives}; it takes ${needed} of bank, or a heater that burns fuel.`,
			physics('energy balance'),
		);
	}
	if (loss.ribsW > 0.25 * loss.totalW) {
		const ribs = sheet.show('power', loss.ribsW, { round: 'up' });
		const most = sheet.show('power', loss.mostW, { round: 'up' });
		sheet.finding(
			'note',
			'ribs-bridge-insulation',
			sheet.say`The ribs cost about ${ribs}; if heat spreads freely to them the loss is ${most}. Insulation over the ribs helps more than thicker insulation between them.`,
			fromMemory('ISO 6946', 'the combined method leaves out insulation bridged by metal'),
		);
	}
}

function addCautions(sheet: Sheet, input: Input): void {
	sheet.caution(cautionBreathing);
	if (input.fuel === 'electric') return;
	sheet.caution(cautionMonoxide, cautionHeaterFire);
	if (input.fuel === 'propane') sheet.caution(cautionFuelGas);
}
