import { type Bank, bankFields, bankOf, energyText, energyWrite } from '../climate/bank.js';
import { cautionMains } from '../electrical/cautions.js';
import { writeNumber } from '../quantity/write.js';
import { materials } from '../tables/materials.js';
import { surfaceResistances } from '../tables/surfaces.js';
import { showerMaximumLMin, showerMaximumSource, waterSource } from '../tables/water.js';
import { declareTopic } from '../topic/declare.js';
import { choice, flag, type InputOf, number, quantity } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice } from '../topic/source.js';
import { cautionPotable, cautionRelief, cautionScald } from '../water/cautions.js';
import {
	cylinderLossWK,
	heatingTimeH,
	hotShare,
	scaldAboveC,
	scaldTimeS,
	standingLoss,
} from '../water/heating.js';
import { heatingEnergyJ } from '../water/properties.js';

const fields = {
	volumeL: quantity({
		label: 'water heater',
		kind: 'volume',
		min: 0.5,
		max: 500,
		aliases: [
			'heater',
			'water heater',
			'tank',
			'boiler',
			'calorifier',
			'hot water',
			'calentador',
			'agua caliente',
			'warmwasser',
			'heat',
			'heating',
			'heats',
			'calentar',
			'erhitzen',
			'erwärmen',
		],
		required: 'How much water does the heater hold?',
	}),
	powerW: quantity({
		label: 'heating power',
		kind: 'power',
		min: 20,
		max: 12_000,
		aliases: ['element', 'heater', 'heating element', 'resistencia', 'heizstab', 'leistung'],
	}),
	voltageV: quantity({
		label: 'voltage of the element',
		kind: 'voltage',
		min: 10,
		max: 260,
		aliases: ['element', 'heater', 'mains', 'shore', 'ac', 'heizstab'],
		fallback: {
			value: (given, context) =>
				given.supply === 'dc'
					? typeof given.bankV === 'number'
						? given.bankV
						: 12
					: context.region === 'us'
						? 120
						: 230,
			why: 'a mains element unless a low-voltage one is named',
			confirm: true,
		},
	}),
	supply: choice({
		label: 'what feeds it',
		options: {
			inverter: ['inverter', 'off the inverter', 'on the inverter', 'inversor', 'wechselrichter'],
			mains: ['mains', 'shore', 'shore power', 'plugged in', 'hookup', 'landstrom', 'enchufado'],
			dc: ['DC', 'dc element', 'battery direct', 'gleichstrom', 'corriente continua'],
		},
	}),
	hotC: quantity({
		label: 'hot water',
		kind: 'temperature',
		worseEnd: 'high',
		min: 20,
		max: 95,
		aliases: ['hot', 'to', 'up to', 'set', 'setpoint', 'thermostat', 'caliente', 'heiß', 'auf'],
		fallback: { value: 60, why: 'the usual thermostat (practice)', confirm: true },
	}),
	coldC: quantity({
		label: 'cold water',
		kind: 'temperature',
		worseEnd: 'low',
		min: 0,
		max: 60,
		aliases: [
			'from',
			'von',
			'de',
			'desde',
			'cold',
			'incoming',
			'inlet',
			'cold water',
			'fría',
			'kalt',
			'kaltwasser',
		],
		fallback: { value: 10, why: 'tank water in the cool season; colder in winter' },
	}),
	showerC: quantity({
		label: 'shower temperature',
		kind: 'temperature',
		min: 25,
		max: 49,
		aliases: ['shower', 'mixed', 'shower at', 'ducha', 'dusche'],
		fallback: { value: 40, why: 'what most people shower at (practice)' },
	}),
	showerLMin: quantity({
		label: 'flow of the shower',
		kind: 'flow',
		min: 0.5,
		max: 20,
		aliases: ['shower', 'shower head', 'head', 'ducha', 'dusche'],
		fallback: { value: showerMaximumLMin, why: 'the most a water-saving head may pass', confirm: true },
	}),
	heatUps: number({
		label: 'full tanks heated a day',
		min: 0,
		max: 20,
		aliases: ['heat-ups', 'heatups', 'tanks a day', 'times a day', 'full tanks', 'reheats'],
		fallback: { value: 1, why: 'one tank of hot water used a day (practice)' },
	}),
	timerH: quantity({
		label: 'hours a day on the timer',
		kind: 'duration',
		min: 0.1,
		max: 24,
		aliases: ['timer', 'on a timer', 'on for', 'hours a day', 'temporizador', 'zeitschaltuhr'],
		fallback: { value: 2, why: 'on for 2 h before it is needed (practice)' },
	}),
	standbyW: quantity({
		label: 'standby loss',
		kind: 'power',
		min: 0,
		max: 500,
		aliases: ['standby', 'standing loss', 'standby loss', 'keeps warm', 'bereitschaft', 'pérdida'],
	}),
	insulationMm: quantity({
		label: 'insulation of the heater',
		kind: 'thickness',
		min: 0,
		max: 150,
		aliases: ['insulation', 'insulated', 'foam', 'jacket', 'aislamiento', 'isolierung', 'dämmung'],
		fallback: { value: 20, why: 'foam about the tank (practice)', confirm: true },
	}),
	aroundC: quantity({
		label: 'air around the heater',
		kind: 'temperature',
		worseEnd: 'low',
		min: -30,
		max: 50,
		aliases: ['around', 'ambient', 'cabinet', 'bay', 'air', 'alrededor', 'umgebung'],
		fallback: { value: 15, why: 'a cabinet in the living space' },
	}),
	...bankFields,
	efficiency: quantity({
		label: 'efficiency of the inverter',
		kind: 'fraction',
		min: 0.5,
		max: 1,
		aliases: ['efficiency', 'efficient', 'eficiencia', 'wirkungsgrad'],
		fallback: { value: 0.85, why: 'where its efficiency is unknown (practice)' },
	}),
	idleW: quantity({
		label: 'idle draw of the inverter',
		kind: 'power',
		min: 0,
		max: 200,
		aliases: ['idle', 'no load', 'no-load', 'leerlauf', 'en vacío'],
		fallback: { value: 20, why: 'an inverter left on for the heater (practice)' },
	}),
	leftOn: flag({
		label: 'left on',
		yes: [
			'left on',
			'forgotten',
			'forget',
			'forgot',
			'always on',
			'on all day',
			'left running',
			'encendido todo el día',
			'angelassen',
			'vergessen',
		],
	}),
	mixer: flag({
		label: 'thermostatic mixing valve',
		yes: [
			'mixing valve',
			'thermostatic',
			'tempering valve',
			'anti-scald',
			'válvula termostática',
			'mischventil',
		],
	}),
};

type Input = InputOf<typeof fields>;

export const hotWater = declareTopic({
	name: 'hot-water',
	title: 'Energy of hot water and what it takes from the bank',
	system: 'water',
	purpose:
		'What a tank of hot water costs in energy, time and amps, how long a shower it gives, and what leaving it on does to the bank.',
	words: [
		'wtr heater',
		'hot water',
		'water heater',
		'hot-water',
		'boiler',
		'agua caliente',
		'warmwasser',
		'heat water',
		'heat the water',
		'calorifier',
		'hot shower',
		'calentador de agua',
		'calentador',
		'warmwasserbereiter',
		'wasser erhitzen',
		'minutes of shower',
	],
	examples: [
		'6 gal water heater 1440 W on the inverter, 300 Ah bank at 12 V',
		'heat 23 L from 12 C to 60 C with 800 W',
		'hot water 4 gal 50 F to 120 F 1000 W inverter 24 V bank 200 Ah',
		'boiler 10 L 660 W wechselrichter batterie 280 Ah 12 V',
	],
	notFor: ['fuel'],
	method:
		'Heat stored in the water (IAPWS properties), standing loss through the insulation, shower by the balance of hot and cold. A stratified tank gives about seven tenths of its content hot.',
	fields,
	calculate: calculateHotWater,
});

/** Share of a tank that comes out hot before the cold let in reaches the outlet. */
const drawable = 0.7;
const drawableSource = practice('about 70 % of a small tank comes out hot');
/** Pipes and fittings lose heat too. */
const fittingsFactor = 1.3;
const scaldSource = fromMemory('US Consumer Product Safety Commission', 'burns by hot tap water');
const growthSource = fromMemory(
	'WHO, Legionella and the prevention of legionellosis',
	'store above 60 °C, deliver above 50 °C',
);

interface Figures {
	readonly supply: 'inverter' | 'mains' | 'dc';
	readonly energyWh: number;
	readonly lossWK: number;
	readonly standbyW: number;
	readonly timeH: number | null;
	readonly showerMin: number;
	readonly hot: number;
	/** what the bank gives for a watt-hour at the element */
	readonly perWh: number;
	/** a day left on, a day on the timer: taken from the bank (or the mains) [Wh] */
	readonly leftOnWh: number;
	readonly onTimerWh: number;
	/** left on and forgotten, with no water used, from cold [Wh] */
	readonly forgottenWh: number;
	/** what the bank gives [Wh], or null where it does not feed the heater */
	readonly usableWh: number | null;
	readonly bank: Bank;
	readonly elementV: number;
}

function supplyOf(input: Input): Figures['supply'] {
	if (input.supply !== undefined) return input.supply;
	if (input.voltageV <= 60) return 'dc';
	return input.bankAh === undefined && input.bankWh === undefined ? 'mains' : 'inverter';
}

function figuresOf(input: Input, bank: Bank, mainsV: number): Figures {
	const supply = supplyOf(input);
	const energyWh = heatingEnergyJ(input.volumeL, input.coldC, input.hotC) / 3600;
	const lossWK =
		input.standbyW === undefined
			? fittingsFactor *
				cylinderLossWK(
					input.volumeL,
					input.insulationMm,
					materials.closedCellSpray.conductivityWmK,
					surfaceResistances.insideHorizontal.resistanceM2KW,
				)
			: input.standbyW / Math.max(1, input.hotC - input.aroundC);
	const standbyW = lossWK * Math.max(0, input.hotC - input.aroundC);
	const tank = { volumeL: input.volumeL, lossWK, hotC: input.hotC, aroundC: input.aroundC };
	const loss = standingLoss(tank, input.timerH);
	const hot = hotShare(input.hotC, input.coldC, input.showerC);
	const perWh = supply === 'inverter' ? 1 / input.efficiency : 1;
	const idle = (hours: number) => (supply === 'inverter' ? input.idleW * hours : 0);
	const drawnWh = energyWh * input.heatUps;
	return {
		supply,
		energyWh,
		lossWK,
		standbyW,
		timeH: input.powerW === undefined ? null : heatingTimeH(tank, input.coldC, input.hotC, input.powerW),
		showerMin: hot > 1 ? 0 : (drawable * input.volumeL) / (hot * input.showerLMin),
		hot,
		perWh,
		leftOnWh: (drawnWh + loss.leftOnWh) * perWh + idle(24),
		onTimerWh: (drawnWh + loss.onTimerWh) * perWh + idle(input.timerH),
		forgottenWh: (energyWh + loss.leftOnWh) * perWh + idle(24),
		usableWh: supply === 'mains' ? null : bank.usableWh,
		bank,
		// An inverter feeds a mains element: a low voltage named beside it is the bank's.
		elementV: supply === 'inverter' && input.voltageV <= 60 ? mainsV : input.voltageV,
	};
}

function calculateHotWater(input: Input, sheet: Sheet) {
	if (input.hotC <= input.coldC) {
		return sheet.refuse(
			'contradiction',
			sheet.say`Hot water of ${sheet.show('temperature', input.hotC)} from cold of ${sheet.show('temperature', input.coldC)} needs no heater.`,
			'The hot temperature lies above the cold one.',
			'hotC',
		);
	}
	if (input.showerC <= input.coldC) {
		return sheet.refuse(
			'contradiction',
			sheet.say`A shower of ${sheet.show('temperature', input.showerC)} needs no hot water: the cold is ${sheet.show('temperature', input.coldC)}.`,
			'The shower lies between cold and hot.',
			'showerC',
		);
	}
	if (input.voltageV > 60 && input.voltageV < 100) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read ${sheet.show('voltage', input.voltageV)}, which is neither a battery nor a mains voltage.`,
			'Batteries are 12, 24 or 48 V (up to 60 V); mains is 100 to 250 V.',
			'voltageV',
		);
	}
	const bank = bankOf(input, sheet, input.voltageV <= 60 ? input.voltageV : 12);
	const figures = figuresOf(input, bank, sheet.rules.mainsVoltageV);
	if (figures.timeH === Number.POSITIVE_INFINITY) {
		return sheet.refuse(
			'impossible',
			sheet.say`${sheet.show('power', input.powerW as number)} never brings it to ${sheet.show('temperature', input.hotC)}: standing loss alone is ${sheet.show('power', figures.standbyW, { round: 'up' })}.`,
			'Give more power, more insulation or a lower temperature.',
			'powerW',
		);
	}
	writeWorking(sheet, input, figures);
	writeResults(sheet, input, figures);
	writeNeighbours(sheet, input, bank);
	writeTipping(sheet, input, figures);
	writeFindings(sheet, input, figures);
	sheet.caution(cautionScald, cautionRelief, cautionPotable);
	if (figures.supply !== 'dc') sheet.caution(cautionMains);

	const energy = energyText(sheet, figures.energyWh);
	const minutes = writeNumber(figures.showerMin, 1, 'down');
	const time = figures.timeH === null ? null : sheet.show('duration', figures.timeH, { round: 'up' });
	const tank =
		time === null
			? sheet.say`${energy} a tank; ${minutes} min of shower`
			: sheet.say`${energy} and ${time} a tank; ${minutes} min of shower`;
	const leftOn = energyText(sheet, figures.leftOnWh);
	const onTimer = energyText(sheet, figures.onTimerWh);
	const share = figures.usableWh === null ? null : percentUp(figures.leftOnWh / figures.usableWh);
	const headline = input.leftOn === true && figures.usableWh !== null ? leftOnText(sheet, figures) : tank;
	return sheet.answer(headline, {
		governedBy: 'heat stored in the water',
		because:
			share === null
				? sheet.say`Left on it takes ${leftOn} a day, on a timer ${onTimer}.`
				: sheet.say`Left on it takes ${leftOn} a day (${share} of what the bank gives), on a timer ${onTimer}.`,
	});
}

/** The verdict where somebody asks what leaving it on does. */
function leftOnText(sheet: Sheet, figures: Figures): string {
	const takes = energyText(sheet, figures.leftOnWh);
	const gives = energyText(sheet, figures.usableWh ?? 0, 'down');
	return figures.leftOnWh > (figures.usableWh ?? 0)
		? sheet.say`Left on it empties the bank: ${takes} a day, ${gives} there`
		: sheet.say`Left on it takes ${takes} a day; the bank gives ${gives}`;
}

function percentUp(fraction: number): string {
	return `${writeNumber(fraction * 100, 0, 'up')} %`;
}

function writeWorking(sheet: Sheet, input: Input, figures: Figures): void {
	const n = (value: number, decimals = 2) => writeNumber(value, decimals);
	sheet.step(
		'heat for one tank',
		'Q = V · ρ · c · (Th − Tc)',
		`${n(input.volumeL)} L × (${n(input.hotC, 1)} − ${n(input.coldC, 1)}) K`,
		figures.energyWh,
		{ kind: 'energy', source: waterSource },
	);
	if (input.standbyW === undefined) {
		sheet.step(
			'heat lost per kelvin',
			'UA = 1.3 · A / (d/λ + Rs)',
			`upright cylinder of ${n(input.volumeL)} L under ${n(input.insulationMm, 0)} mm of foam (λ ${n(materials.closedCellSpray.conductivityWmK, 3)} W/mK)`,
			figures.lossWK,
			{ kind: 'heatLoss', source: materials.closedCellSpray.source },
		);
		sheet.source(practice('30 % more for pipes and fittings'));
	}
	sheet.step(
		'standing loss',
		'P = UA · (Th − Ta)',
		`${n(figures.lossWK, 3)} W/K × (${n(input.hotC, 1)} − ${n(input.aroundC, 1)}) K`,
		figures.standbyW,
		{ kind: 'power', source: physics('heat balance') },
	);
	if (figures.timeH !== null) {
		sheet.step(
			'time to heat',
			't = Q / (P − mean loss)',
			`${n(figures.energyWh, 0)} Wh / (${n(input.powerW as number, 0)} W − loss)`,
			figures.timeH,
			{ kind: 'duration', source: physics('heat balance') },
		);
	}
	sheet.step(
		'hot share of the shower',
		'x = (Ts − Tc) / (Th − Tc)',
		`(${n(input.showerC, 1)} − ${n(input.coldC, 1)}) / (${n(input.hotC, 1)} − ${n(input.coldC, 1)})`,
		figures.hot,
		{ kind: 'fraction', source: physics('mixing balance') },
	);
	sheet.step(
		'minutes of shower',
		't = 0.7 · V / (x · q)',
		`0.7 × ${n(input.volumeL)} L / (${n(figures.hot, 3)} × ${n(input.showerLMin)} L/min)`,
		figures.showerMin,
		{ unit: 'min', source: drawableSource },
	);
	if (!sheet.isGiven('showerLMin')) sheet.source(showerMaximumSource);
	sheet.step(
		'a day left on',
		'E = (k · Q + 24 h · P) / η + idle',
		`(${n(input.heatUps)} × ${n(figures.energyWh, 0)} Wh + 24 h × ${n(figures.standbyW, 1)} W) × ${n(figures.perWh, 3)}`,
		figures.leftOnWh,
		{ kind: 'energy', source: physics('heat balance') },
	);
	sheet.step(
		'a day on the timer',
		'E = (k · Q + ton · P + C · ΔT · (1 − exp(−toff · UA/C))) / η + idle',
		`on for ${n(input.timerH)} h, cooling for ${n(24 - input.timerH)} h`,
		figures.onTimerWh,
		{ kind: 'energy', source: physics('lumped cooling') },
	);
}

function writeResults(sheet: Sheet, input: Input, figures: Figures): void {
	const energy = (name: string, label: string, valueWh: number, round: 'up' | 'down' = 'up') =>
		sheet.result(name, label, valueWh, { kind: 'energy', write: energyWrite(valueWh, round) });
	energy('energy', 'heat for one tank', figures.energyWh);
	if (figures.timeH !== null) {
		sheet.result('time', 'time to heat', figures.timeH, {
			kind: 'duration',
			write: { round: 'up', decimals: 2 },
		});
	}
	if (input.powerW !== undefined) {
		const amps = { kind: 'current', write: { round: 'up' } } as const;
		sheet.result('elementCurrent', 'current of the element', input.powerW / figures.elementV, amps);
		if (figures.supply !== 'mains') {
			const bankA = (input.powerW * figures.perWh) / figures.bank.voltageV;
			sheet.result('bankCurrent', 'current from the bank', bankA, amps);
		}
	}
	sheet.result('showerTime', 'minutes of mixed shower from one tank', figures.showerMin, {
		unit: 'min',
		write: { decimals: 1, round: 'down' },
	});
	sheet.result('hotShare', 'hot share of the shower', figures.hot, { kind: 'fraction' });
	sheet.result('mixedVolume', 'mixed water from one tank', figures.showerMin * input.showerLMin, {
		kind: 'volume',
		write: { round: 'down' },
	});
	sheet.result('standby', 'standing loss', figures.standbyW, { kind: 'power', write: { round: 'up' } });
	energy('standbyPerDay', 'standing loss a day', figures.standbyW * 24);
	energy('dayLeftOn', 'a day left on', figures.leftOnWh);
	energy('dayOnTimer', 'a day on the timer', figures.onTimerWh);
	energy('timerSaves', 'a timer saves a day', figures.leftOnWh - figures.onTimerWh, 'down');
	sheet.result('dayCharge', 'a day left on, from the bank', figures.leftOnWh / figures.bank.voltageV, {
		kind: 'charge',
		write: { round: 'up' },
	});
	if (figures.usableWh !== null) {
		const share = { kind: 'fraction', write: { round: 'up' } } as const;
		sheet.result(
			'tankShare',
			'share of the bank for one tank',
			(figures.energyWh * figures.perWh) / figures.usableWh,
			share,
		);
		sheet.result(
			'dayShare',
			'share of the bank for a day left on',
			figures.leftOnWh / figures.usableWh,
			share,
		);
		sheet.result(
			'timerShare',
			'share of the bank for a day on the timer',
			figures.onTimerWh / figures.usableWh,
			share,
		);
	}
}

function writeNeighbours(sheet: Sheet, input: Input, bank: Bank): void {
	for (const factor of [0.5, 2]) {
		const other = figuresOf({ ...input, volumeL: input.volumeL * factor }, bank, sheet.rules.mainsVoltageV);
		const energy = energyText(sheet, other.energyWh);
		const minutes = writeNumber(other.showerMin, 1, 'down');
		const fits = other.usableWh === null || other.leftOnWh <= other.usableWh;
		sheet.neighbour(
			sheet.show('volume', input.volumeL * factor),
			fits,
			sheet.say`${energy} a tank, ${minutes} min of shower`,
		);
	}
}

/** Full tanks a day that the bank still bears. */
function writeTipping(sheet: Sheet, input: Input, figures: Figures): void {
	if (figures.usableWh === null) return;
	const perTank = figures.energyWh * figures.perWh;
	const heatUps = (figures.usableWh - (figures.onTimerWh - input.heatUps * perTank)) / perTank;
	if (heatUps <= 0) return;
	const shown = writeNumber(heatUps, 1, 'down');
	sheet.tipping(
		'heatUps',
		'full tanks heated a day',
		heatUps,
		sheet.say`up to ${shown} tanks a day on the timer`,
		{
			unit: '1/day',
		},
	);
}

function writeFindings(sheet: Sheet, input: Input, figures: Figures): void {
	if (input.hotC > scaldAboveC && input.mixer !== true) {
		const hot = sheet.show('temperature', input.hotC);
		const seconds = String(scaldTimeS(input.hotC));
		const limit = sheet.show('temperature', scaldAboveC);
		sheet.finding(
			'danger',
			'scald',
			sheet.say`Water of ${hot} burns skin badly within ${seconds} s. Fit a thermostatic mixing valve set to ${limit} or less.`,
			scaldSource,
		);
	}
	if (input.hotC < 55) {
		sheet.finding(
			'note',
			'germs',
			sheet.say`Water kept below 60 °C (140 °F) can breed germs: heat it through once a week or drain it when not in use.`,
			growthSource,
		);
	}
	if (figures.hot > 1) {
		sheet.finding(
			'warning',
			'too-cool-for-shower',
			sheet.say`The water is cooler than the shower wanted; set it to at least ${sheet.show('temperature', input.showerC, { round: 'up' })}.`,
			physics('mixing balance'),
		);
	}
	if (figures.usableWh !== null) {
		const needed = energyText(sheet, figures.forgottenWh / figures.bank.depth);
		const neededAh = sheet.show('charge', figures.forgottenWh / figures.bank.depth / figures.bank.voltageV, {
			round: 'up',
		});
		const takes = energyText(sheet, figures.forgottenWh);
		const gives = energyText(sheet, figures.usableWh, 'down');
		if (figures.forgottenWh > figures.usableWh) {
			sheet.finding(
				'warning',
				'forgotten-heater-empties-bank',
				sheet.say`Forgotten for a day it takes ${takes}; the bank gives ${gives}. A timer, or a bank of ${needed} (${neededAh}), clears it.`,
				physics('heat balance'),
			);
		} else if (figures.leftOnWh > figures.usableWh) {
			sheet.finding(
				'warning',
				'use-empties-bank',
				sheet.say`${writeNumber(input.heatUps, 1)} tanks a day and the standing loss empty the bank; it needs shore power or fewer tanks.`,
				physics('heat balance'),
			);
		}
	}
	if (figures.supply === 'inverter' && input.powerW !== undefined) {
		const bankA = sheet.show('current', (input.powerW * figures.perWh) / figures.bank.voltageV, {
			round: 'up',
		});
		sheet.finding(
			'note',
			'inverter-load',
			sheet.say`The inverter must carry the element without pause: ${bankA} from the bank; ask the inverter and wire topics for cable and fuse.`,
			practice(),
		);
	}
}
