import { cautionMains } from '../electrical/cautions.js';
import { bankClassV, chargingVoltageV } from '../energy/bank.js';
import { bankFields } from '../energy/bank-fields.js';
import { cautionOneBond } from '../energy/cautions.js';
import { type Load, type LoadItem, loadFields, partLoads, resolveLoads } from '../energy/loads.js';
import { cordFor, residualCurrentProtection } from '../energy/supply.js';
import {
	chargerInputA,
	chargerLimitA,
	continuousShare,
	type Draw,
	demandA,
	type MainsCharger,
	mayRunTogether,
	type Supply,
	setsOf,
} from '../energy/together.js';
import { writeNumber } from '../quantity/write.js';
import { chemistries } from '../tables/batteries.js';
import { typicalLoad, typicalLoadSource, typicalLoadWords } from '../tables/loads.js';
import { declareTopic } from '../topic/declare.js';
import { flag, type InputOf, list, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { fromMemory, physics, practice, published, type Source } from '../topic/source.js';
import type { Say } from '../topic/translate.js';

const fields = {
	inletA: quantity({
		label: 'shore inlet rating',
		kind: 'current',
		min: 1,
		max: 200,
		aliases: [
			'inlet',
			'shore',
			'shore power',
			'shore inlet',
			'shoreline',
			'hookup',
			'hook-up',
			'hook up',
			'service',
			'landstrom',
			'landanschluss',
			'einspeisung',
			'toma exterior',
			'conexión',
		],
		help: 'The inlet on the van, or the whole supply where nothing else is named.',
	}),
	outletA: quantity({
		label: 'outlet rating',
		kind: 'current',
		min: 1,
		max: 200,
		aliases: [
			'outlet',
			'household outlet',
			'house outlet',
			'house plug',
			'wall plug',
			'wall outlet',
			'garage outlet',
			'receptacle',
			'socket',
			'plug',
			'fed',
			'fed from',
			'pedestal',
			'circuit',
			'breaker',
			'campground',
			'campsite',
			'post',
			'generator',
			'steckdose',
			'haushaltssteckdose',
			'säule',
			'stromsäule',
			'enchufe',
			'poste',
			'camping',
			'campingplatz',
			'camper site',
			'toma',
		],
		help: 'The household outlet, pedestal or generator it is plugged into.',
	}),
	cordA: quantity({
		label: 'cord or adapter rating',
		kind: 'current',
		min: 1,
		max: 200,
		aliases: [
			'cord',
			'extension cord',
			'extension',
			'adapter',
			'dogbone',
			'power cord',
			'kabel',
			'verlängerung',
			'alargador',
			'adaptador',
		],
	}),
	chargerA: quantity({
		label: 'charging current of the charger',
		kind: 'current',
		min: 0.5,
		max: 400,
		aliases: [
			'charger',
			'battery charger',
			'converter',
			'charge',
			'charge at',
			'charge with',
			'charging',
			'charging at',
			'ladegerät',
			'lader',
			'laden',
			'laden mit',
			'cargador',
			'cargar',
			'cargar a',
		],
		help: "The charger's output into the bank.",
	}),
	loads: list({
		label: 'loads on the supply',
		item: {
			name: text({ label: 'load', words: [...typicalLoadWords, 'charger', 'battery charger'] }),
			powerW: loadFields.powerW,
			currentA: loadFields.currentA,
			count: loadFields.count,
		},
		max: 16,
		help: 'What is to run on the supply: "water heater 1440W, cooktop 1800W, microwave 12A".',
	}),
	supplyV: quantity({
		label: 'supply voltage',
		kind: 'voltage',
		min: 2,
		max: 260,
		aliases: ['supply', 'mains', 'netz', 'red'],
	}),
	bankV: quantity({
		label: 'bank voltage',
		kind: 'voltage',
		min: 2,
		max: 260,
		aliases: [
			'bank',
			'system',
			'battery',
			'bordnetz',
			'batterie',
			'batería',
			'charger',
			'ladegerät',
			'cargador',
			'battery charger',
		],
	}),
	chemistry: bankFields.chemistry,
	chargerEfficiency: quantity({
		label: 'efficiency of the charger',
		kind: 'fraction',
		min: 0.4,
		max: 1,
		aliases: ['efficiency', 'efficient', 'eff', 'wirkungsgrad', 'eficiencia'],
	}),
	chargerPowerFactor: quantity({
		label: 'power factor of the charger',
		kind: 'fraction',
		min: 0.4,
		max: 1,
		aliases: ['power factor', 'pf', 'cos phi', 'leistungsfaktor', 'factor de potencia'],
	}),
	household: flag({
		label: 'household outlet',
		yes: [
			'household',
			'house',
			'home',
			'garage',
			'driveway',
			'wall outlet',
			'domestic',
			'haushalt',
			'haushaltssteckdose',
			'casa',
		],
		no: ['pedestal', 'campground', 'campsite', 'hookup', 'hook-up', 'rv park', 'campingplatz', 'camping'],
	}),
	gfci: flag({
		label: 'ground-fault protection present',
		yes: ['gfci', 'gfi', 'rcd', 'rcbo', 'fi', 'fi-schalter', 'diferencial'],
		no: ['no gfci', 'without gfci', 'no gfi', 'no rcd', 'without rcd', 'ohne fi', 'sin diferencial'],
	}),
	bondInVan: flag({
		label: 'neutral joined to ground in the van',
		yes: [
			'neutral bonded in the van',
			'neutral bonded in the panel',
			'neutral ground bond in the van',
			'neutral ground bond in the panel',
			'neutral bonded to ground in the panel',
			'bonded neutral',
			'bonding screw',
		],
		no: ['neutral not bonded', 'neutral isolated', 'floating neutral', 'bonding screw removed'],
	}),
};

type Input = InputOf<typeof fields>;

export const shore = declareTopic({
	name: 'shore',
	title: 'What may run on shore power',
	system: 'energy',
	purpose:
		'What of the mains loads may run together on a supply, and which charger limit to set with each set.',
	words: [
		'what can run together',
		'what may run together',
		'run together',
		'plugged to',
		'plugged into',
		'plugged in to',
		'plug into',
		'together',
		'run at once',
		'run at the same time',
		'at the same time',
		'what can run',
		'household outlet',
		'house plug',
		'house outlet',
		'wall plug',
		'wall outlet',
		'pedestal',
		'hookup',
		'hook-up',
		'shore power',
		'landstrom',
		'landanschluss',
		'gleichzeitig',
		'al mismo tiempo',
		'a la vez',
		'shore',
		'inlet',
		'outlet',
		'campingplatz',
		'steckdose',
		'enchufe',
	],
	examples: [
		'30a inlet on 15a outlet: charger 70A, water heater 1440W, cooktop 1800W, AC',
		'30A pedestal, what can run together: AC 1500W, microwave 1500W, water heater 1440W, charger 50A',
		'16A hookup 230V kettle 2200W, space heater 1500W, charger 30A',
		'10A steckdose 230V: ladegerät 40A, wasserkocher 2200W, boiler 1500W gleichzeitig?',
		'20a household outlet charger 60A 24v and microwave 1500w',
	],
	method:
		'The least rating of outlet, cord, adapter and inlet; 125 % of what runs 3 h or more plus 100 % of the rest must not exceed it, and 125 % of everything at a household outlet. Every set of the loads is tried. The charger draws charging current × charging voltage / (supply voltage × efficiency × power factor). Start-up surges, and what else hangs on the same house circuit, are not in it.',
	fields,
	needs: [
		{
			anyOf: ['inletA', 'outletA', 'cordA', 'loads'],
			question: 'What is the supply rated: the outlet, pedestal or inlet, in amps?',
		},
	],
	calculate: calculateShore,
});

/** Why 125 % of what runs 3 h or more. */
const continuousRule = (sheet: Sheet): Source => sheet.rules.mains.continuous.source;
/** Why 80 % of a household outlet whatever runs on it. */
const receptacleRule = (sheet: Sheet): Source =>
	sheet.context.region === 'us'
		? fromMemory('NFPA 70 (NEC)', 'Table 210.21(B)(2): 12 A at a 15 A, 16 A at a 20 A receptacle')
		: practice('a household outlet is not made for hours at its full rating');
const chargerSource = physics('power out over power in; apparent power over real power');

/** The charger as the calculation sees it. */
interface Charger extends MainsCharger {
	/** its full charging current [A] */
	readonly fullA: number;
	/** mains current at full charging current [A] */
	readonly inputA: number;
}

interface Case {
	readonly supply: Supply;
	readonly mainsV: number;
	/** everything but the charger */
	readonly draws: readonly Draw[];
	readonly charger: Charger | null;
}

function calculateShore(input: Input, sheet: Sheet) {
	const { items, stray } = partLoads(input.loads ?? [], { current: true, duration: false });
	const ratings = [input.inletA, input.outletA, input.cordA, ...stray.currentsA].filter(
		(value) => value !== undefined,
	);
	if (ratings.length === 0) {
		return sheet.ask({
			name: 'inletA',
			label: 'shore inlet rating',
			question: 'What is the supply rated: the outlet, pedestal or inlet, in amps?',
		});
	}
	const voltages = voltagesOf(input, sheet);
	if ('kind' in voltages) return voltages;
	const limitA = Math.min(...ratings);
	const supply: Supply = { limitA, household: isHousehold(input, sheet, limitA) };

	const parted = partCharger(items);
	const charger = chargerOf(input, parted, voltages, sheet);
	const mainsItems = parted.others.filter((item) => !isBankLoad(item));
	const { loads, problem } = resolveLoads(
		mainsItems.map((item) => ({ ...item, supply: 'mains' as const })),
		{
			bankV: voltages.bankV,
			mainsV: voltages.mainsV,
			region: sheet.context.region,
			say: sheet.say,
			over: 'while-on',
		},
	);
	if (problem?.kind === 'ask') {
		return sheet.ask({ name: 'loads', label: problem.label, question: problem.question });
	}
	if (problem !== null) return sheet.refuse(problem.kind, problem.text, problem.instead, 'loads');
	for (const load of loads) {
		for (const { field, label, value, kind } of load.assumed) {
			if (field !== 'powerW' || kind === null) continue;
			sheet.assume(
				`loads.${load.name}.powerW`,
				label,
				value,
				'typical load (practice); the nameplate decides',
				{ kind, confirm: true },
			);
			sheet.source(typicalLoadSource);
		}
	}
	const draws = drawsOf(loads, voltages.mainsV);
	for (const item of parted.others.filter(isBankLoad)) {
		sheet.finding(
			'note',
			'load-on-bank',
			sheet.say`The ${item.name ?? ''} runs from the bank; on shore it counts through the charger.`,
			typicalLoadSource,
		);
	}

	const all: Case = { supply, mainsV: voltages.mainsV, draws, charger };
	writeWorking(sheet, input, all);
	writeSupply(sheet, input, all);
	addFindings(sheet, input, all, ratings);
	addProtection(sheet, input);
	return answer(sheet, all, draws, unsafe(input, sheet));
}

/** What makes the supply itself unsafe, in a few words, or null. */
function unsafe(input: Input, sheet: Sheet): string | null {
	if (isCordTooSmall(input)) return sheet.say`cord or adapter made for less than the outlet`;
	if (input.gfci === false) return sheet.say`no protection against residual current`;
	if (input.bondInVan === true) return sheet.say`neutral joined to ground in the van`;
	return null;
}

/** The breaker before a cord protects it only where it is no larger than the cord. */
function isCordTooSmall(input: Input): boolean {
	const upstreamA = input.outletA ?? input.inletA;
	return input.cordA !== undefined && upstreamA !== undefined && input.cordA < upstreamA;
}

/** A draw that knows when it should be switched off. */
interface LoadDraw extends Draw {
	readonly shedOrder: number;
}

/** Most draws after several of a kind are taken apart. */
const mostApart = 16;

/** Several of a kind are draws of their own, so that one of them may run where all may not. */
function drawsOf(loads: readonly Load[], mainsV: number): LoadDraw[] {
	const apart = loads.reduce((sum, load) => sum + load.count, 0) <= mostApart;
	return loads.flatMap((load) => {
		const pieces = apart ? load.count : 1;
		const eachW = load.runningW / pieces;
		// Two kettles of different power must not be taken for one another.
		const namesake = loads.some(
			(other) => other.name === load.name && other.runningW / other.count !== load.runningW / load.count,
		);
		const name = apart ? load.name : load.shown;
		const draw: LoadDraw = {
			name: namesake ? `${name} (${writeNumber(eachW, 1)} W)` : name,
			currentA: eachW / mainsV,
			continuous: load.continuous,
			shedOrder: load.typical?.shedOrder ?? 5,
		};
		return Array.from({ length: pieces }, () => draw);
	});
}

/** "2 × air conditioner + kettle". */
function namesOf(draws: readonly Draw[], say: Say): string {
	const counts = new Map<string, number>();
	for (const draw of draws) counts.set(draw.name, (counts.get(draw.name) ?? 0) + 1);
	return [...counts].map(([name, count]) => (count > 1 ? say`${count} × ${name}` : say`${name}`)).join(' + ');
}

/** Sets told apart by what is in them: which of two of a kind runs is all one. */
function distinct<T extends { readonly names: string }>(sets: readonly T[]): T[] {
	return sets.filter((set, index) => sets.findIndex((other) => other.names === set.names) === index);
}

/** Of the voltages named, those up to 60 V are the bank's. */
function voltagesOf(input: Input, sheet: Sheet) {
	const named = [input.supplyV, input.bankV].filter((value) => value !== undefined);
	const mainsV = named.find((value) => value > 60);
	const bankV = named.find((value) => value <= 60);
	if (mainsV !== undefined && mainsV < 100) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read ${sheet.show('voltage', mainsV)}, which is neither a mains nor a bank voltage.`,
			'Mains is 100 to 250 V; banks are 12, 24 or 48 V.',
			'supplyV',
		);
	}
	const classV = bankV === undefined ? 12 : bankClassV(bankV);
	if (classV === null) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read ${sheet.show('voltage', bankV as number)} as the bank voltage; banks are not built so.`,
			'Name a bank of 12, 24, 36 or 48 V.',
			'bankV',
		);
	}
	if (mainsV === undefined) {
		sheet.assume('supplyV', 'supply voltage', sheet.rules.mainsVoltageV, 'mains of the region', {
			kind: 'voltage',
		});
	}
	return { mainsV: mainsV ?? sheet.rules.mainsVoltageV, bankV: classV, bankGiven: bankV !== undefined };
}

/** At a house outlet the circuit may feed other rooms too, and its contacts are not made for hours at full load. */
function isHousehold(input: Input, sheet: Sheet, limitA: number): boolean {
	if (input.household !== undefined) return input.household;
	const household =
		sheet.context.region === 'us'
			? limitA <= 20
			: limitA < 16 || (input.outletA !== undefined && input.outletA <= 16);
	sheet.assume(
		'household',
		'household outlet',
		household,
		household ? 'a rating as houses have; 80 % of it is used' : 'a supply made for vehicles',
	);
	return household;
}

const chargerName = /^(?:x )?(?:battery charger|charger|converter)s?$/;

/** Parts a charger named among the loads from the rest. */
function partCharger<T extends LoadItem>(
	items: readonly T[],
): { readonly chargerItem: T | null; readonly others: readonly T[] } {
	const chargerItem = items.find((item) => chargerName.test(item.name ?? '')) ?? null;
	return { chargerItem, others: items.filter((item) => item !== chargerItem) };
}

/** A load of the bank that was named without a mains power. */
function isBankLoad(item: LoadItem): boolean {
	const known = item.name === undefined ? null : typicalLoad(item.name);
	return item.powerW === undefined && item.currentA === undefined && known !== null && !known.mains;
}

function chargerOf(
	input: Input,
	parted: ReturnType<typeof partCharger>,
	voltages: { readonly mainsV: number; readonly bankV: number; readonly bankGiven: boolean },
	sheet: Sheet,
): Charger | null {
	const item = parted.chargerItem;
	const currentA = input.chargerA ?? item?.currentA;
	if (currentA === undefined && item?.powerW === undefined) return null;
	const chemistry = chemistries[input.chemistry ?? 'lifepo4'];
	const chargingV = chargingVoltageV(chemistry, voltages.bankV);
	if (!voltages.bankGiven) {
		sheet.assume('bankV', 'bank voltage', 12, 'the usual house voltage', { kind: 'voltage', confirm: true });
	}
	sheet.assume(
		'chargingV',
		'charging voltage',
		chargingV,
		sheet.say`upper end for ${chemistry.label}, where the charger draws most`,
		{ kind: 'voltage' },
	);
	const charger: MainsCharger = {
		chargingV,
		mainsV: voltages.mainsV,
		efficiency: input.chargerEfficiency ?? usualEfficiency(sheet),
		powerFactor: input.chargerPowerFactor ?? usualPowerFactor(sheet),
	};
	// A power named for the charger is what it draws.
	const inputA =
		currentA !== undefined
			? chargerInputA(currentA, charger)
			: (item?.powerW as number) / (voltages.mainsV * charger.powerFactor);
	const fullA = currentA ?? (inputA * voltages.mainsV * charger.efficiency * charger.powerFactor) / chargingV;
	return { ...charger, fullA, inputA };
}

function usualEfficiency(sheet: Sheet): number {
	sheet.assume(
		'chargerEfficiency',
		'efficiency of the charger',
		0.85,
		'usual for a charger of this size (practice)',
		{ kind: 'fraction', confirm: true },
	);
	return 0.85;
}

function usualPowerFactor(sheet: Sheet): number {
	sheet.assume(
		'chargerPowerFactor',
		'power factor of the charger',
		0.9,
		'a corrected charger; one without correction has about 0.7 and draws a quarter more (practice)',
		{ kind: 'fraction', confirm: true },
	);
	return 0.9;
}

const n = (value: number, decimals = 2) => writeNumber(value, decimals);

function chargerDraw(charger: Charger, say: Say): Draw {
	return { name: say`charger at ${n(charger.fullA, 0)} A`, currentA: charger.inputA, continuous: true };
}

function usableA(supply: Supply): number {
	return continuousShare * supply.limitA;
}

function writeWorking(sheet: Sheet, input: Input, all: Case): void {
	const { supply, mainsV, draws, charger } = all;
	const ratings = [
		input.outletA === undefined ? null : `outlet ${n(input.outletA)} A`,
		input.cordA === undefined ? null : `cord ${n(input.cordA)} A`,
		input.inletA === undefined ? null : `inlet ${n(input.inletA)} A`,
	].filter((part) => part !== null);
	sheet.step(
		'limit of the supply',
		'I = min(outlet, cord, inlet)',
		ratings.length === 0 ? `${n(supply.limitA)} A` : ratings.join(', '),
		supply.limitA,
		{
			kind: 'current',
			source: physics('a chain is as strong as its weakest link'),
		},
	);
	sheet.step('for hours on end', 'Ic = 0.8 · I', `0.8 × ${n(supply.limitA)} A`, usableA(supply), {
		kind: 'current',
		source: continuousRule(sheet),
	});
	if (supply.household) sheet.source(receptacleRule(sheet));
	for (const draw of draws) {
		sheet.step(draw.name, 'I = P / V', `${n(draw.currentA * mainsV)} W / ${n(mainsV)} V`, draw.currentA, {
			kind: 'current',
			source: physics('power is voltage times current'),
		});
	}
	if (charger === null) return;
	sheet.step(
		'charger at full charging current',
		'I = Idc · Vdc / (V · η · cos φ)',
		`${n(charger.fullA)} A × ${n(charger.chargingV)} V / (${n(mainsV)} V × ${n(charger.efficiency)} × ${n(charger.powerFactor)})`,
		charger.inputA,
		{ kind: 'current', source: chargerSource },
	);
}

function writeSupply(sheet: Sheet, input: Input, all: Case): void {
	const { supply, mainsV, charger } = all;
	const down = { round: 'down' } as const;
	sheet.result('supplyLimit', 'limit of the supply', supply.limitA, { kind: 'current', write: down });
	sheet.result('usableCurrent', 'to use for hours on end', usableA(supply), { kind: 'current', write: down });
	sheet.result('usablePower', 'power for hours on end', usableA(supply) * mainsV, {
		kind: 'power',
		write: down,
	});
	if (charger !== null) {
		sheet.result('chargerInput', 'draw of the charger at full current', charger.inputA, {
			kind: 'current',
			write: { round: 'up' },
		});
	}
	const cord = cordFor(sheet.context.region, input.inletA ?? supply.limitA);
	if (cord !== null) {
		sheet.result('cordSize', 'smallest conductors of the supply cord', cord.size);
		sheet.source(cord.source);
	}
	const protection = residualCurrentProtection(sheet.context.region);
	sheet.result('residualCurrentProtection', 'protection of people', protection.text);
	sheet.source(protection.source);
}

function addFindings(sheet: Sheet, input: Input, all: Case, ratings: readonly number[]): void {
	const { supply } = all;
	const limit = sheet.show('current', supply.limitA);
	const larger = Math.max(...ratings);
	if (input.inletA !== undefined && supply.limitA < input.inletA) {
		sheet.finding(
			'warning',
			'adapter-limits',
			sheet.say`An adapter does not make the outlet larger: the ${sheet.show('current', input.inletA)} inlet gives ${limit} here, and the breaker in the van will not trip at that.`,
			practice('the smallest rating in the chain counts'),
		);
	}
	const upstreamA = input.outletA ?? input.inletA;
	if (isCordTooSmall(input) && input.cordA !== undefined && upstreamA !== undefined) {
		sheet.finding(
			'danger',
			'cord-below-supply',
			sheet.say`The cord or adapter is made for ${sheet.show('current', input.cordA)}, but the breaker before it lets ${sheet.show('current', upstreamA)} through: it can burn. Use a cord of the outlet's rating.`,
			published('NFPA 70 (NEC)', '240.4: conductors are protected at their ampacity'),
		);
	}
	if (input.outletA !== undefined && input.inletA !== undefined && input.outletA > input.inletA) {
		sheet.finding(
			'warning',
			'inlet-below-supply',
			sheet.say`The outlet is larger than the inlet: a main breaker of ${sheet.show('current', input.inletA)} must sit where the cord enters the van.`,
			published('NFPA 70 (NEC)', '240.4: conductors are protected at their ampacity'),
		);
	}
	if (sheet.context.region === 'us' && larger === 50 && supply.limitA === 50) {
		sheet.finding(
			'note',
			'two-legs',
			sheet.say`A 50 A supply of 120/240 V has two legs of 50 A; the sets here are for one leg. Spread the loads over both.`,
			fromMemory('NFPA 70 (NEC)', '551.42(D) and 551.44(D)'),
		);
	}
}

function addProtection(sheet: Sheet, input: Input): void {
	sheet.caution(cautionMains, cautionOneBond);
	sheet.caution(
		'Use one cord, no daisy chain, fully uncoiled; feel the plug after ten minutes: warm is a bad contact, stop.',
	);
	const protection = residualCurrentProtection(sheet.context.region);
	if (input.gfci === false) {
		sheet.finding(
			'danger',
			'no-residual-current-protection',
			sheet.say`Without it a fault can kill whoever touches the van: fit ${protection.text} before the supply is used.`,
			protection.source,
		);
	} else if (input.gfci === undefined) {
		sheet.finding(
			'note',
			'residual-current-protection-unsaid',
			sheet.say`Nothing was said of protection against residual current; the van needs ${protection.text}.`,
			protection.source,
		);
	}
	if (input.bondInVan === true) {
		sheet.finding(
			'danger',
			'second-neutral-bond',
			sheet.say`On shore power the neutral is joined to ground at the source only. A second bond in the van puts load current on the ground and the body: remove it, or switch it so that it is made only while the inverter feeds.`,
			fromMemory('NFPA 70 (NEC)', '551.54(C)'),
		);
	}
}

/** One set that may run, with what is left for the charger. */
interface SetLine {
	readonly members: readonly Draw[];
	readonly names: string;
	/** largest charging current with this set on [A], or null where no charger was named */
	readonly limitA: number | null;
}

function answer(sheet: Sheet, all: Case, draws: readonly LoadDraw[], unsafeBy: string | null) {
	// Where the supply itself is unsafe, that is the decision, and what would run is only the reason's second half.
	const decide = (headline: string, because: string) =>
		unsafeBy === null
			? sheet.answer(headline, { because, governedBy: 'supply rating' })
			: sheet.answer(sheet.say`Unsafe as it stands: ${unsafeBy}`, {
					because: sheet.say`Once that is put right: ${headline}. ${because}`,
					governedBy: 'safety of the supply',
				});
	const { supply, charger } = all;
	const limit = sheet.show('current', supply.limitA);
	const usable = sheet.show('current', usableA(supply), { round: 'down' });
	const usablePower = sheet.show('power', usableA(supply) * all.mainsV, { round: 'down' });
	const everything = charger === null ? draws : [...draws, chargerDraw(charger, sheet.say)];
	if (everything.length === 0) {
		return decide(
			sheet.say`${usable} to use on ${limit}: ${usablePower}`,
			sheet.say`80 % of the rating for what runs for hours. Name the loads to see what may run together.`,
		);
	}
	const lines = setLines(all, sheet.say);
	const aloneA = charger === null ? null : Math.min(charger.fullA, chargerLimitA([], supply, charger));
	writeSets(sheet, all, lines, aloneA);
	const totalA = everything.reduce((sum, draw) => sum + draw.currentA, 0);
	sheet.result('allTogether', 'all of it at once', totalA, { kind: 'current', write: { round: 'up' } });

	if (mayRunTogether(everything, supply)) {
		const total = sheet.show('current', totalA, { round: 'up' });
		const [only] = everything;
		return decide(
			everything.length === 1 && only !== undefined
				? sheet.say`The ${only.name} may run: ${total} on ${limit}`
				: sheet.say`All of it may run together: ${total} on ${limit}`,
			sheet.say`What runs for hours counts 125 %; ${usable} may be used all the time.`,
		);
	}
	writeOver(sheet, all, everything, draws, totalA);
	const options = optionsOf(sheet, lines, charger, aloneA);
	const tooLarge = tooLargeOf(draws, supply);
	const because = [
		sheet.say`${limit} leaves ${usable} for hours on end.`,
		...tooLarge.map(
			(draw) =>
				sheet.say`The ${draw.name} (${sheet.show('current', draw.currentA, { round: 'up' })}) is too much even alone.`,
		),
		...lines
			.filter((line) => line.limitA === 0 && line.members.length > 0)
			.map((line) => sheet.say`With ${line.names} on, the charger must be off.`),
	].join(' ');
	return decide(headlineOf(sheet, limit, options), because);
}

/** Maximal sets of the loads, the charger filling what each leaves. */
function setLines(all: Case, say: Say): SetLine[] {
	const { draws, supply, charger } = all;
	const { maximal } = setsOf(draws, supply);
	const lines = maximal.map((indices) => {
		const members = indices.map((index) => draws[index] as Draw);
		return {
			members,
			names: namesOf(members, say),
			limitA: charger === null ? null : Math.min(charger.fullA, chargerLimitA(members, supply, charger)),
		};
	});
	return distinct(lines);
}

/** Most sets of a kind that are shown. */
const mostShown = 12;

function writeSets(sheet: Sheet, all: Case, lines: readonly SetLine[], aloneA: number | null): void {
	const { supply, charger } = all;
	if (charger !== null && aloneA !== null) {
		writeSet(sheet, all, { members: [], names: '', limitA: aloneA });
		sheet.result('chargerLimit', 'largest charger setting with nothing else on', aloneA, {
			kind: 'current',
			write: { round: 'down' },
		});
		sheet.tipping(
			'chargerA',
			'charging current',
			chargerLimitA([], supply, charger),
			sheet.say`up to ${sheet.show('current', chargerLimitA([], supply, charger), { round: 'down' })} alone`,
			{ kind: 'current' },
		);
	}
	// The fullest sets say most; with a long list of loads there can be thousands.
	const fullest = lines.toSorted((a, b) => sumA(b.members) - sumA(a.members));
	if (fullest.length > mostShown) {
		sheet.finding(
			'note',
			'more-sets',
			sheet.say`Only the ${mostShown} fullest of ${fullest.length} sets are shown; ask again with the loads that matter.`,
			physics('every set of the loads is tried'),
		);
	}
	for (const [index, line] of fullest.slice(0, mostShown).entries()) {
		const used = sheet.show('current', sumA(line.members), { round: 'up' });
		sheet.result(`set${index + 1}`, 'may run together', line.names);
		if (line.limitA !== null) {
			sheet.result(
				`set${index + 1}ChargerLimit`,
				sheet.say`charger setting with ${line.names}`,
				line.limitA,
				{
					kind: 'current',
					write: { round: 'down' },
				},
			);
		}
		writeSet(sheet, all, line);
		sheet.neighbour(line.names, true, `${used}${chargerPart(sheet, line, charger)}`);
	}
	if (lines.length === 0 && aloneA !== null && aloneA > 0) {
		sheet.neighbour(
			sheet.say`charger alone`,
			true,
			sheet.say`set to ${sheet.show('current', aloneA, { round: 'down' })} at most`,
		);
	}
}

/** The sum of one set against the rating, and what it leaves for the charger. */
function writeSet(sheet: Sheet, all: Case, line: SetLine): void {
	const { supply, charger } = all;
	const weighted = line.members.map((draw) => {
		const weight = demandA([draw], supply) / draw.currentA;
		return `${n(weight)} × ${n(draw.currentA)} A`;
	});
	const demand = demandA(line.members, supply);
	const source = supply.household ? receptacleRule(sheet) : continuousRule(sheet);
	if (line.members.length > 0) {
		sheet.step(line.names, 'Σ k · I ≤ In', `${weighted.join(' + ')} ≤ ${n(supply.limitA)} A`, demand, {
			kind: 'current',
			source,
		});
	}
	if (charger === null || line.limitA === null) return;
	sheet.step(
		line.members.length === 0
			? sheet.say`charger setting with nothing else on`
			: sheet.say`charger setting with ${line.names}`,
		'Idc = 0.8 · (In − Σ k · I) · V · η · cos φ / Vdc, rounded down, at most its own',
		`0.8 × (${n(supply.limitA)} − ${n(demand)}) A × ${n(charger.mainsV)} V × ${n(charger.efficiency)} × ${n(charger.powerFactor)} / ${n(charger.chargingV)} V, at most ${n(charger.fullA)} A`,
		line.limitA,
		{ kind: 'current', source: chargerSource },
	);
}

function chargerPart(sheet: Sheet, line: SetLine, charger: Charger | null): string {
	if (charger === null || line.limitA === null) return '';
	if (line.limitA === 0) return sheet.say`; charger off`;
	const most = sheet.show('current', line.limitA, { round: 'down' });
	return line.limitA >= charger.fullA
		? sheet.say`; charger at its full ${most}`
		: sheet.say`; charger set to ${most} at most`;
}

function sumA(draws: readonly Draw[]): number {
	return draws.reduce((sum, draw) => sum + draw.currentA, 0);
}

function writeOver(
	sheet: Sheet,
	all: Case,
	everything: readonly Draw[],
	draws: readonly LoadDraw[],
	totalA: number,
): void {
	const { supply } = all;
	const usable = sheet.show('current', usableA(supply), { round: 'down' });
	const { minimalOver } = setsOf(everything, supply);
	const over = distinct(
		minimalOver.map((indices) => {
			const members = indices.map((index) => everything[index] as Draw);
			return { members, names: namesOf(members, sheet.say) };
		}),
	);
	for (const { members, names } of over.slice(0, mostShown)) {
		const total = sheet.show('current', sumA(members), { round: 'up' });
		sheet.neighbour(
			names,
			false,
			sheet.say`${total}, too much for ${sheet.show('current', supply.limitA)} (${usable} for hours)`,
		);
	}
	sheet.finding(
		'warning',
		'over-supply',
		sheet.say`All of it at once is ${sheet.show('current', totalA, { round: 'up' })} on a supply of ${sheet.show('current', supply.limitA)}: the breaker trips, or a poor outlet or cord overheats.`,
		continuousRule(sheet),
	);
	for (const draw of tooLargeOf(draws, supply)) {
		const most = usableForOne(draw, supply);
		const mostPower = sheet.show('power', most * all.mainsV, { round: 'down' });
		sheet.finding(
			'warning',
			'load-too-large',
			sheet.say`The ${draw.name} draws ${sheet.show('current', draw.currentA, { round: 'up' })}, too much for this supply even alone: ${mostPower} is the most. Run it from the inverter, or at a lower setting if it has one.`,
			supply.household ? receptacleRule(sheet) : continuousRule(sheet),
		);
		sheet.tipping('loads', draw.name, most * all.mainsV, sheet.say`up to ${mostPower} it may run alone`, {
			kind: 'power',
		});
	}
	const order = [
		...(all.charger === null ? [] : ['charger']),
		...new Set(draws.toSorted((a, b) => a.shedOrder - b.shedOrder).map((draw) => draw.name)),
	];
	sheet.result('shedFirst', 'switch off in this order', order.join(', '));
}

/** What is too much even alone, each kind once. */
function tooLargeOf(draws: readonly LoadDraw[], supply: Supply): LoadDraw[] {
	const tooLarge = draws.filter((draw) => !mayRunTogether([draw], supply));
	return tooLarge.filter((draw, index) => tooLarge.findIndex((other) => other.name === draw.name) === index);
}

function usableForOne(draw: Draw, supply: Supply): number {
	return supply.limitA * (draw.currentA / demandA([draw], supply));
}

/** The choices in a few words each. */
function optionsOf(
	sheet: Sheet,
	lines: readonly SetLine[],
	charger: Charger | null,
	aloneA: number | null,
): string[] {
	const options = lines.map((line) => {
		if (charger === null || line.limitA === null || line.limitA === 0) return line.names;
		const most = sheet.show('current', line.limitA, { round: 'down' });
		return line.limitA >= charger.fullA
			? sheet.say`${line.names} + charger`
			: sheet.say`${line.names} + charger at ${most}`;
	});
	const somewhereFull = lines.some((line) => charger !== null && line.limitA === charger.fullA);
	if (charger !== null && aloneA !== null && aloneA > 0 && !somewhereFull) {
		options.push(sheet.say`charger alone at ${sheet.show('current', aloneA, { round: 'down' })}`);
	}
	return options;
}

function headlineOf(sheet: Sheet, limit: string, options: readonly string[]): string {
	if (options.length === 0) return sheet.say`Nothing of it may run on ${limit}`;
	const single = options.length > 1 && !options.some((option) => option.includes(' + '));
	const list = options.join(sheet.say`, or `);
	const whole = single ? sheet.say`On ${limit} one at a time: ${list}` : sheet.say`On ${limit}: ${list}`;
	if (whole.length <= 80) return whole;
	for (let shown = options.length - 1; shown >= 1; shown -= 1) {
		const more = options.length - shown;
		const part = sheet.say`On ${limit}: ${options.slice(0, shown).join(sheet.say`, or `)} (+${more} more)`;
		if (part.length <= 80) return part;
	}
	return sheet.say`Not all together on ${limit}: one of ${options.length} sets at a time`;
}
