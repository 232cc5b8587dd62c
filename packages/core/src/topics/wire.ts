import { cautionDisconnect, cautionLugs, cautionMains, cautionSourceEnd } from '../electrical/cautions.js';
import {
	checkSize,
	checkSizes,
	chooseSize,
	firstPassing,
	largestHolding,
	passesAll,
	type Rule,
	type Run,
	type SizeCheck,
	smallestDevice,
} from '../electrical/conductor.js';
import { assumedInverterEfficiency, isInverter, lowBatteryFinding } from '../electrical/inverter-run.js';
import { loadContradictions } from '../electrical/load-current.js';
import { writeNumber } from '../quantity/write.js';
import type { CircuitRules, RuleSet } from '../rules/rules.js';
import { type ConductorSize, conductorSize, copperAlphaSource } from '../tables/conductors.js';
import { typicalLoadWords } from '../tables/loads.js';
import type { Region } from '../topic/context.js';
import { declareTopic } from '../topic/declare.js';
import { choice, conductor, count, flag, type InputOf, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import type { Severity } from '../topic/sizing.js';
import { fromMemory, physics, practice, published, type Source } from '../topic/source.js';

const fields = {
	currentA: quantity({
		label: 'current',
		kind: 'current',
		min: 0.01,
		max: 2000,
		aliases: ['load', 'draw', 'draws', 'pulls', 'corriente', 'strom'],
	}),
	powerW: quantity({
		label: 'power',
		kind: 'power',
		min: 0.1,
		max: 100_000,
		aliases: ['potencia', 'leistung'],
	}),
	voltageV: quantity({
		label: 'voltage',
		kind: 'voltage',
		min: 5,
		max: 260,
		aliases: ['system', 'battery', 'bank', 'tensión', 'voltaje', 'spannung'],
		fallback: {
			value: (given, context) =>
				given.supply === 'mains' || given.isRating === true ? mainsOf(context.region) : 12,
			why: 'the usual house voltage',
			confirm: true,
		},
	}),
	lengthM: quantity({
		label: 'one-way length',
		kind: 'length',
		min: 0.05,
		max: 300,
		aliases: [
			'run',
			'long',
			'length',
			'away',
			'one way',
			'each way',
			'cable run',
			'longitud',
			'länge',
			'lang',
		],
		help: 'From the source to the load, along the cable; both legs are counted by the calculation.',
	}),
	dropLimit: quantity({
		label: 'allowed voltage drop',
		kind: 'fraction',
		min: 0.001,
		max: 0.2,
		aliases: ['drop', 'voltage drop', 'vd', 'loss', 'caída', 'spannungsabfall'],
		fallback: {
			value: (given) => (given.critical === false ? 0.1 : 0.03),
			why: '3 % for what matters, 10 % where the load is said not to be critical (practice)',
		},
	}),
	critical: flag({
		label: 'critical load',
		yes: ['critical', 'sensitive'],
		no: ['non-critical', 'noncritical', 'non critical', 'not critical', 'not important', 'uncritical'],
	}),
	load: text({
		label: 'load',
		words: [
			// "AC" tells how it is fed before it names an air conditioner.
			...typicalLoadWords.filter((word) => word !== 'ac'),
			'fridge',
			'refrigerator',
			'freezer',
			'inverter',
			'pump',
			'water pump',
			'fan',
			'roof fan',
			'lights',
			'light',
			'led',
			'leds',
			'heater',
			'diesel heater',
			'cooktop',
			'induction',
			'air conditioner',
			'aircon',
			'charger',
			'dc-dc',
			'dcdc',
			'alternator',
			'solar',
			'panel',
			'panels',
			'winch',
			'compressor',
			'water heater',
			'outlet',
			'outlets',
			'usb',
			'socket',
			'toilet',
			'microwave',
			'kettle',
			'main',
			'mains',
			'busbar',
			'bus bar',
			'shore',
			'inlet',
			'nevera',
			'frigorífico',
			'kühlschrank',
			'wechselrichter',
			'inversor',
			'bomba',
			'pumpe',
			'luces',
			'licht',
		],
	}),
	supply: choice({
		label: 'kind of supply',
		options: {
			dc: ['DC', 'battery', '12v system', 'gleichstrom', 'corriente continua'],
			mains: [
				'mains',
				'AC',
				'shore',
				'shore power',
				'shoreline',
				'household',
				'cord',
				'power cord',
				'extension cord',
				'extension lead',
				'verlängerungskabel',
				'alargadera',
				'netzstrom',
				'landstrom',
				'corriente alterna',
			],
		},
	}),
	efficiency: quantity({
		label: 'efficiency',
		kind: 'fraction',
		min: 0.3,
		max: 1,
		aliases: ['efficiency', 'efficient', 'eff', 'wirkungsgrad', 'eficiencia'],
		help: 'Between the power named and the power drawn from this run, as for an inverter.',
	}),
	insulationC: quantity({
		label: 'insulation class',
		kind: 'temperature',
		unit: '°C',
		worseEnd: 'low',
		min: 60,
		max: 200,
		aliases: [
			'insulation',
			'insulated',
			'rated',
			'class',
			'cable rated',
			'wire rated',
			'aislamiento',
			'isolierung',
		],
		fallback: {
			value: (given, context) => (isMains(given) ? (context.region === 'us' ? 90 : 70) : 105),
			why: 'usual cable for this work; read it from the jacket',
			confirm: true,
		},
	}),
	ambientC: quantity({
		label: 'temperature around the cable',
		kind: 'temperature',
		worseEnd: 'high',
		min: -40,
		max: 120,
		aliases: ['ambient', 'around', 'surroundings', 'hot', 'umgebung', 'ambiente'],
		fallback: {
			value: (given, context) => (given.engineBay === true ? (context.region === 'us' ? 50 : 60) : 30),
			why: 'inside the living space; an engine space is hotter',
		},
	}),
	engineBay: flag({
		label: 'in the engine bay',
		yes: [
			'engine bay',
			'engine space',
			'engine compartment',
			'under the hood',
			'under hood',
			'underhood',
			'motorraum',
			'compartimento del motor',
		],
	}),
	bundled: count({
		label: 'conductors together',
		min: 1,
		max: 100,
		aliases: ['bundled', 'bundle', 'conductors', 'wires', 'wires together', 'in a bundle', 'cables together'],
		fallback: { value: 2, why: 'the two conductors of this run, not bundled with others', confirm: true },
	}),
	routing: choice({
		label: 'laid in',
		options: {
			free: ['free air', 'in the open', 'clipped', 'surface'],
			enclosed: [
				'loom',
				'conduit',
				'behind the panel',
				'behind panels',
				'behind panel',
				'in the wall',
				'raceway',
				'enclosed',
				'split loom',
				'kabelkanal',
			],
			insulation: ['in insulation', 'in the insulation', 'in foam', 'buried in insulation', 'spray foam'],
		},
		fallback: {
			value: 'free',
			why: 'clipped in free air; say so where it runs in a loom, a wall or insulation',
			confirm: true,
		},
	}),
	continuous: flag({
		label: 'on for 3 h or more',
		yes: [
			'continuous',
			'continuously',
			'all day',
			'all night',
			'overnight',
			'constant',
			'dauerlast',
			'continuo',
		],
		no: [
			'intermittent',
			'short',
			'briefly',
			'a few minutes',
			'momentary',
			'not continuous',
			'non-continuous',
			'noncontinuous',
			'occasional',
		],
		fallback: { value: (given) => given.isRating !== true, why: 'the safe side: a load of 3 h or more' },
	}),
	motor: flag({
		label: 'motor',
		yes: ['motor', 'compressor', 'winch'],
		fallback: { value: false, why: 'nothing said of a motor' },
	}),
	isRating: flag({
		label: 'the current is the rating of the circuit',
		yes: [
			'shore',
			'inlet',
			'pedestal',
			'hookup',
			'hook-up',
			'shoreline',
			'circuit',
			'breaker',
			'receptacle',
			'outlet',
			'rated circuit',
			'cord',
			'power cord',
			'shore cord',
			'verlängerungskabel',
			'landanschluss',
		],
		help: 'The current named is the rating of an inlet or circuit, so its device has that rating.',
		fallback: {
			value: (given, context) =>
				isMains(given) && context.region === 'eu' && (given.currentA === 16 || given.currentA === 32),
			why: 'a load current unless an inlet or a circuit is named; 16 A and 32 A on 230 V are inlet ratings',
		},
	}),
	terminalC: quantity({
		label: 'terminal temperature limit',
		kind: 'temperature',
		unit: '°C',
		worseEnd: 'low',
		min: 60,
		max: 200,
		aliases: ['terminal', 'terminals', 'lug', 'lugs', 'termination', 'terminations', 'klemme'],
	}),
	parallel: count({
		label: 'conductors in parallel in each leg',
		min: 1,
		max: 8,
		aliases: ['parallel', 'in parallel', 'paralleled', 'doubled up', 'runs'],
		fallback: { value: 1, why: 'one conductor in each leg' },
	}),
	tinned: flag({
		label: 'tinned copper',
		yes: ['tinned', 'boat cable', 'marine cable', 'verzinnt', 'estañado'],
		no: ['bare copper', 'untinned'],
		fallback: { value: false, why: 'bare copper; tinned adds 2 to 6 % to the drop' },
	}),
	material: choice({
		label: 'conductor metal',
		options: {
			copper: ['copper', 'cobre', 'kupfer'],
			aluminium: ['aluminium', 'aluminum', 'cca', 'copper clad', 'copper-clad', 'aluminio'],
		},
		fallback: { value: 'copper', why: 'stranded copper, as the vehicle rules ask' },
	}),
	size: conductor({
		label: 'size to be checked',
		aliases: ['ok', 'enough', 'okay', 'good', 'fine', 'big enough', 'use', 'using', 'reicht', 'basta'],
		help: 'Name a size to have it judged.',
	}),
	reach: flag({
		label: 'asked how far it may run',
		yes: [
			'how far',
			'max length',
			'maximum length',
			'max distance',
			'maximum distance',
			'max run',
			'longest run',
			'longest',
			'wie weit',
			'maximale länge',
			'höchstens lang',
			'longitud máxima',
			'distancia máxima',
			'hasta qué distancia',
		],
		help: 'The longest run of the named size that keeps the drop.',
	}),
};

type Input = InputOf<typeof fields>;

function mainsOf(region: Region): number {
	return region === 'us' ? 120 : 230;
}

function isMains(given: Readonly<Record<string, unknown>>): boolean {
	const voltage = given.voltageV;
	return typeof voltage === 'number' ? voltage > 60 : given.supply === 'mains' || given.isRating === true;
}

export const wire = declareTopic({
	name: 'wire',
	title: 'Conductor size and protection for one run',
	system: 'wiring',
	purpose: 'Which conductor one run needs, and which fuse or breaker protects it.',
	words: [
		'wire',
		'cable',
		'wire from',
		'wire between',
		'wire from alternator',
		'wire from the alternator',
		'cable from alternator',
		'cable from the alternator',
		'wire between alternator',
		'cable between alternator',
		'cable between the alternator',
		'cable from',
		'cable between',
		'kabel von',
		'kabel zwischen',
		'cable de',
		'cable entre',
		'gauge',
		'awg',
		'wire size',
		'cable size',
		'wiring',
		'conductor',
		'kabel',
		'leitung',
		'querschnitt',
		'calibre',
		'sección',
	],
	includes: ['fuse'],
	examples: [
		'40A 12V 15 ft',
		"fridge 5 amps 22' run 12v",
		'winch 120A 12v 4ft each way, short',
		'30a shore 120v 18 ft',
		'3.5m 20A 24v 35mm2 ok?',
		'how far can 12 awg run 15A at 12V',
	],
	askedByQuantities: true,
	method:
		'The smallest stranded copper conductor that carries the load and its device, keeps the drop, and is not thinner than the rule set allows. Resistance at operating temperature; ambient, bundle and terminal limits applied. Not for fixed building wiring, motors above 100 A or fault clearing times.',
	fields,
	needs: [
		{ anyOf: ['lengthM', 'reach'], question: 'How long is the run, one way?' },
		{ anyOf: ['currentA', 'powerW'], question: 'What current does it carry (or what power)?' },
	],
	contradictions: loadContradictions,
	calculate: calculateWire,
});

function calculateWire(input: Input, sheet: Sheet) {
	const { rules } = sheet;
	if (input.material === 'aluminium') {
		return sheet.refuse(
			'not-covered',
			'I size copper only: aluminium and copper-clad conductors creep under the lug, corrode in a damp van and carry less.',
			'Use stranded copper of the size I give for the same run.',
			'material',
		);
	}
	const mains = input.voltageV > 60;
	if (input.supply === 'dc' && mains) {
		return sheet.refuse(
			'not-covered',
			sheet.say`I read ${sheet.show('voltage', input.voltageV)} direct current; low-voltage rules end at 60 V.`,
			'Name a bank of 12, 24 or 48 V, or a mains voltage of 100 to 250 V.',
			'voltageV',
		);
	}
	if ((mains && input.voltageV < 100) || (input.supply === 'mains' && !mains)) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read ${sheet.show('voltage', input.voltageV)}, which is neither a battery nor a mains voltage.`,
			'Batteries are 12, 24 or 48 V (up to 60 V); mains is 100 to 250 V.',
			'voltageV',
		);
	}

	const efficiency = input.efficiency ?? efficiencyOf(input, mains, sheet);
	const fromPower = input.powerW === undefined ? null : input.powerW / (input.voltageV * efficiency);
	const contradiction = loadContradictions(input, sheet.context)[0];
	if (contradiction !== undefined) {
		return sheet.refuse(contradiction.code, contradiction.text, contradiction.instead, contradiction.field);
	}
	const currentA = input.currentA ?? fromPower;
	if (currentA === null) throw new Error('the declaration asks for current or power');
	if (currentA > 2000) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`That power draws ${sheet.show('current', currentA)} at ${sheet.show('voltage', input.voltageV)}.`,
			'Up to 2000 A is sized here; check power and voltage.',
			'powerW',
		);
	}
	if (input.ambientC >= input.insulationC) {
		return sheet.refuse(
			'impossible',
			sheet.say`At ${sheet.show('temperature', input.ambientC)} around it, insulation of ${sheet.show('temperature', input.insulationC, { unit: '°C' })} carries nothing.`,
			'Choose a cable with a hotter insulation class or a cooler way.',
			'ambientC',
		);
	}

	const run: Run = {
		supply: mains ? 'mains' : 'dc',
		currentA,
		voltageV: input.voltageV,
		lengthM: input.lengthM ?? shortestM,
		dropLimit: input.dropLimit,
		insulationC: input.insulationC,
		ambientC: input.ambientC,
		bundled: input.bundled,
		routing: input.routing,
		continuous: input.continuous,
		motor: input.motor,
		isRating: input.isRating,
		terminalC: input.terminalC ?? null,
		parallel: input.parallel,
		tinned: input.tinned,
	};
	if (input.lengthM === undefined && input.size === undefined) {
		return sheet.ask({
			name: 'size',
			label: fields.size.meta.label,
			question: 'How far which size may run? Name the conductor, or the length.',
		});
	}
	const checks = checkSizes(run, rules);
	const choiceMade = chooseSize(checks);
	addCautions(sheet, mains, input.parallel);

	if (input.size !== undefined) {
		const named = conductorSize(input.size);
		if (named === null) {
			return sheet.refuse(
				'out-of-range',
				sheet.say`I read "${input.size}" as the size to be checked; no such size is in my tables.`,
				sheet.say`Name one of: ${rules.sizes.map((size) => size.name).join(', ')}.`,
				'size',
			);
		}
		if (input.lengthM === undefined) {
			const furthest = reachOf(run, named, rules);
			if (furthest !== null) return answerReach(sheet, furthest, input, efficiency, named);
		}
		const needed = choiceMade === null ? null : (checks[choiceMade.index] as SizeCheck);
		return judgeNamed(sheet, run, input, efficiency, named, needed);
	}
	if (choiceMade === null) return nothingFits(sheet, run, checks);

	const chosen = checks[choiceMade.index] as SizeCheck;
	writeWorking(sheet, run, chosen, input, efficiency);
	writeResults(sheet, run, chosen);
	writeNeighbours(sheet, run, checks, choiceMade.index);
	writeTipping(sheet, run, chosen.size, rules);
	writeFindings(sheet, run, chosen, input);
	return sheet.answer(headlineOf(sheet, run, chosen), {
		governedBy: ruleText[choiceMade.governedBy],
		because: becauseOf(sheet, run, checks, chosen, choiceMade.governedBy),
	});
}

function efficiencyOf(input: Input, mains: boolean, sheet: Sheet): number {
	if (input.powerW === undefined || input.currentA !== undefined) return 1;
	if (!mains && isInverter(input.load)) return assumedInverterEfficiency(sheet);
	sheet.assume('efficiency', 'efficiency', 1, 'the power named is what this run delivers', {
		kind: 'fraction',
	});
	return 1;
}

const ruleText: Readonly<Record<Rule, string>> = {
	drop: 'voltage drop',
	heat: 'ampacity',
	protection: 'protection',
	minimum: 'smallest size allowed',
};

function nameOf(size: ConductorSize, parallel: number): string {
	return parallel === 1 ? size.name : `${parallel} x ${size.name}`;
}

function ratingText(ratingA: number): string {
	return `${writeNumber(ratingA, 1)} A`;
}

/** A drop: rounded up, so that one above its limit is never read as at it, and none as smaller than it is. */
function dropShown(fraction: number): string {
	return `${writeNumber(fraction * 100, 1, 'up')} %`;
}

/** A limit as it was asked for, which no rounding may loosen. */
function limitText(fraction: number): string {
	return `${writeNumber(fraction * 100, 2, 'down')} %`;
}

function headlineOf(sheet: Sheet, run: Run, chosen: SizeCheck): string {
	const size = nameOf(chosen.size, run.parallel);
	const device = ratingText(chosen.deviceA as number);
	return run.supply === 'dc'
		? sheet.say`${size} copper, ${device} fuse at the source end`
		: sheet.say`${size} copper, ${device} breaker`;
}

function becauseOf(
	sheet: Sheet,
	run: Run,
	checks: readonly SizeCheck[],
	chosen: SizeCheck,
	rule: Rule,
): string {
	const drop = sheet.show('voltage', chosen.dropV, { round: 'up' });
	const share = dropShown(chosen.dropFraction);
	const limit = limitText(run.dropLimit);
	const dropText = sheet.say`Drop ${drop} = ${share} (limit ${limit}).`;
	const heat = firstPassing(checks, 'heat')?.size.name ?? chosen.size.name;
	const byDrop = firstPassing(checks, 'drop')?.size.name ?? chosen.size.name;
	switch (rule) {
		case 'drop':
			return `${dropText} ${sheet.say`The drop decides; for heat alone ${heat} would do.`}`;
		case 'heat':
			return `${dropText} ${sheet.say`Heat decides; for the drop alone ${byDrop} would do.`}`;
		case 'protection':
			return `${dropText} ${sheet.say`The device decides: it must carry the load and still protect the conductor.`}`;
		case 'minimum':
			return `${dropText} ${
				run.parallel > 1
					? sheet.say`This is the thinnest conductor allowed in parallel.`
					: sheet.say`This is the thinnest conductor allowed for a wire run by itself.`
			}`;
	}
}

function writeResults(sheet: Sheet, run: Run, chosen: SizeCheck): void {
	sheet.result('conductor', 'conductor', chosen.size.name);
	sheet.result('conductorAreaMm2', 'copper area', chosen.size.areaMm2, { unit: 'mm²' });
	sheet.result('device', run.supply === 'dc' ? 'fuse' : 'breaker', chosen.deviceA as number, {
		kind: 'current',
	});
	sheet.result('largestDevice', 'largest device that still protects it', chosen.largestDeviceA as number, {
		kind: 'current',
	});
	sheet.result('current', 'load current', run.currentA, { kind: 'current', write: { round: 'up' } });
	sheet.result('minimumDevice', 'smallest device rating', smallestDevice(run, circuitOf(run, sheet.rules)), {
		kind: 'current',
		write: { round: 'up' },
	});
	sheet.result('ampacity', 'allowable current', chosen.allowableA, {
		kind: 'current',
		write: { round: 'down' },
	});
	writeDropResults(sheet, run, chosen);
}

function writeDropResults(sheet: Sheet, run: Run, check: SizeCheck): void {
	sheet.result('drop', 'voltage drop', check.dropV, { kind: 'voltage', write: { round: 'up' } });
	sheet.result('dropPercent', 'voltage drop', check.dropFraction * 100, {
		unit: '%',
		write: { decimals: 2, round: 'up' },
	});
	sheet.result('voltageAtLoad', 'voltage at the load', run.voltageV - check.dropV, {
		kind: 'voltage',
		write: { round: 'down' },
	});
	sheet.result('loss', 'loss in the run', check.lossW, { kind: 'power', write: { decimals: 1 } });
	sheet.result('conductorTemperature', 'conductor temperature', check.conductorC, {
		kind: 'temperature',
		write: { round: 'up' },
	});
}

function circuitOf(run: Run, rules: RuleSet) {
	return run.supply === 'dc' ? rules.dc : rules.mains;
}

const ohmsLaw = physics("Ohm's law");

function writeWorking(sheet: Sheet, run: Run, check: SizeCheck, input: Input, efficiency: number): void {
	const circuit = circuitOf(run, sheet.rules);
	const n = (value: number, decimals = 3) => writeNumber(value, decimals);
	if (input.currentA === undefined) {
		sheet.step(
			'load current',
			'I = P / (V · η)',
			`${n(input.powerW as number)} W / (${n(run.voltageV)} V × ${n(efficiency)})`,
			run.currentA,
			{
				kind: 'current',
				source: ohmsLaw,
			},
		);
	}
	const minimumA = smallestDevice(run, circuit);
	if (run.isRating) {
		sheet.step('smallest device rating', 'Ir ≥ rating of the circuit', `${n(run.currentA)} A`, minimumA, {
			kind: 'current',
			source: published('NFPA 70 (NEC)', '240.4: conductors are protected at their ampacity'),
		});
	} else if (run.continuous || run.motor) {
		sheet.step('smallest device rating', 'Ir ≥ 1.25 · I', `1.25 × ${n(run.currentA)} A`, minimumA, {
			kind: 'current',
			source: circuit.continuous.source,
		});
	} else {
		sheet.step('smallest device rating', 'Ir ≥ I', `${n(run.currentA)} A, on for less than 3 h`, minimumA, {
			kind: 'current',
			source: circuit.continuous.source,
		});
	}
	const routing = check.routingFactor?.value ?? 1;
	sheet.step(
		'allowable current by heat',
		'Iz = n · It · ka · kb · kr',
		`${run.parallel} × ${n(check.tableA.value, 1)} A × ${n(check.ambientFactor.value)} × ${n(check.bundleFactor.value)} × ${n(routing)}`,
		check.correctedA,
		{ kind: 'current', source: check.tableA.source },
	);
	sheet.source(check.ambientFactor.source, check.bundleFactor.source);
	if (check.routingFactor !== null) sheet.source(check.routingFactor.source);
	if (check.terminalA !== null) {
		sheet.step(
			'cap by the terminals',
			'It,term',
			`${n(check.terminalA.value, 1)} A in the terminals' column`,
			check.terminalA.value,
			{
				kind: 'current',
				source: check.terminalA.source,
			},
		);
	}
	if (check.smallLimit !== null) {
		sheet.step(
			'largest device on this small conductor',
			'Ir ≤ fixed limit',
			`${n(check.smallLimit.value, 1)} A`,
			check.smallLimit.value,
			{
				kind: 'current',
				source: check.smallLimit.source,
			},
		);
	}
	if (check.deviceA !== null) {
		sheet.step(
			'protective device',
			'Ir,min ≤ Ir ≤ Ir,max',
			`${n(minimumA)} A ≤ ${n(check.deviceA)} A ≤ ${n(check.deviceCapA, 1)} A`,
			check.deviceA,
			{
				kind: 'current',
				source: circuit.deviceSource,
			},
		);
	}
	sheet.step(
		'conductor temperature',
		'T = Ta + (Tmax − Ta) · (I / Iz)²',
		`${n(run.ambientC)} + (${n(run.insulationC)} − ${n(run.ambientC)}) × (${n(run.currentA)} / ${n(check.correctedA, 1)})²`,
		check.conductorC,
		{ kind: 'temperature', source: physics('heat balance of a conductor') },
	);
	const ohm20 = run.tinned ? check.size.tinnedOhmPerM20C : check.size.bareOhmPerM20C;
	sheet.step(
		'resistance, both legs',
		'R = 2 · L · r20 · (1 + 0.00393 · (T − 20)) / n',
		`2 × ${n(run.lengthM)} m × ${n(ohm20 * 1000, 4)} mohm/m × (1 + 0.00393 × (${n(check.conductorC, 1)} − 20)) / ${run.parallel}`,
		check.loopOhm,
		{ kind: 'resistance', source: sheet.rules.resistanceSource },
	);
	sheet.source(copperAlphaSource);
	sheet.step('voltage drop', 'ΔV = I · R', `${n(run.currentA)} A × ${n(check.loopOhm, 5)} ohm`, check.dropV, {
		kind: 'voltage',
		source: ohmsLaw,
	});
	sheet.step(
		'voltage drop, share',
		'ΔV / V',
		`${n(check.dropV, 4)} V / ${n(run.voltageV)} V`,
		check.dropFraction * 100,
		{
			unit: '%',
			source: published('NFPA 70 (NEC)', '210.19, informational note: 3 % is advice, not a requirement'),
		},
	);
}

function failureText(sheet: Sheet, run: Run, check: SizeCheck): string {
	if (!check.passes.heat) {
		return sheet.say`carries only ${sheet.show('current', check.allowableA, { round: 'down' })}, too little`;
	}
	if (!check.passes.drop) return sheet.say`${dropShown(check.dropFraction)} drop, too much`;
	if (!check.passes.protection) return sheet.say`no standard device both carries the load and protects it`;
	return run.parallel > 1
		? sheet.say`thinner than allowed for conductors in parallel`
		: sheet.say`thinner than allowed for a wire run by itself`;
}

function writeNeighbours(sheet: Sheet, run: Run, checks: readonly SizeCheck[], index: number): void {
	const smaller = checks[index - 1];
	const larger = checks[index + 1];
	if (smaller !== undefined)
		sheet.neighbour(nameOf(smaller.size, run.parallel), false, failureText(sheet, run, smaller));
	if (larger !== undefined) {
		sheet.neighbour(
			nameOf(larger.size, run.parallel),
			passesAll(larger),
			sheet.say`${dropShown(larger.dropFraction)} drop`,
		);
	}
}

function writeTipping(sheet: Sheet, run: Run, size: ConductorSize, rules: RuleSet): void {
	const holds = (changed: Partial<Run>) => {
		const check = checkSize({ ...run, ...changed }, size, rules);
		return check !== null && passesAll(check);
	};
	const currentA = largestHolding(run.currentA, run.currentA * 20, (value) => holds({ currentA: value }));
	const lengthM = largestHolding(run.lengthM, run.lengthM * 100, (value) => holds({ lengthM: value }));
	sheet.tipping(
		'currentA',
		'current',
		currentA,
		sheet.say`up to ${sheet.show('current', currentA, { round: 'down' })}`,
		{ kind: 'current' },
	);
	sheet.tipping(
		'lengthM',
		'one-way length',
		lengthM,
		sheet.say`up to ${sheet.show('length', lengthM, { round: 'down' })}`,
		{ kind: 'length' },
	);
}

function writeFindings(sheet: Sheet, run: Run, check: SizeCheck, input: Input): void {
	if (run.isRating) {
		const sustained = sheet.show('current', run.currentA * 0.8, { round: 'down' });
		const rating = sheet.show('current', run.currentA);
		sheet.finding(
			'note',
			'rating-not-load',
			sheet.say`${rating} is taken as the rating of the circuit: what runs on it for 3 h or more stays at or below ${sustained} (80 %).`,
			sheet.context.region === 'us'
				? published('NFPA 70 (NEC)', '210.20(A)')
				: practice('80 % of the rating for long loads'),
		);
	}
	if (isInverter(input.load) && run.supply === 'dc' && input.powerW !== undefined) {
		lowBatteryFinding(sheet, run.currentA, run.voltageV, check.deviceA);
	}
	if (run.motor) {
		sheet.finding(
			'note',
			'motor-start',
			sheet.say`A motor draws several times its running current at the start: take a slow fuse or a breaker of motor type.`,
			practice('slow device for a motor'),
		);
	}
	if (run.parallel > 1) {
		sheet.finding(
			'warning',
			'parallel-conductors',
			sheet.say`Parallel conductors share only when they are of the same length, size and lugs; if one comes off, the others are overloaded behind this device. One thicker conductor is better.`,
			fromMemory('NFPA 70 (NEC)', '310.10(G): conductors in parallel'),
		);
		const smallest = circuitOf(run, sheet.rules).minimumParallelAreaMm2;
		if (smallest !== null && check.size.areaMm2 < smallest.value) {
			sheet.finding(
				'danger',
				'parallel-too-thin',
				sheet.say`On mains only 1/0 AWG (50 mm²) and thicker may be run in parallel.`,
				smallest.source,
			);
		}
	}
	if (run.supply === 'dc' && run.dropLimit > 0.1) {
		sheet.finding(
			'warning',
			'drop-limit-high',
			sheet.say`A drop over 10 % leaves many 12 V devices below their working voltage.`,
			practice('10 % for loads that are not critical'),
		);
	}
}

function nothingFits(sheet: Sheet, run: Run, checks: readonly SizeCheck[]) {
	const thickest = checks.at(-1);
	const why =
		thickest === undefined
			? sheet.say`my tables have no value for ${sheet.show('temperature', run.insulationC, { unit: '°C' })} insulation`
			: failureText(sheet, run, thickest);
	const name = thickest === undefined ? '' : nameOf(thickest.size, run.parallel);
	return sheet.refuse(
		'impossible',
		sheet.say`No single conductor in my tables does it: ${name} ${why}.`,
		sheet.say`Shorten the run, raise the voltage (24 or 48 V), split the load, or lay it in a cooler or freer way.`,
	);
}

/** The shortest run there is [m]: what fails on it fails by heat, protection or the smallest size. */
const shortestM = 0.05;
/** No run in a van or beside it is longer [m]. */
const longestM = 300;

/** The run at the longest that the size keeps all its limits, or null where it fails however short. */
function reachOf(run: Run, size: ConductorSize, rules: RuleSet): Run | null {
	const holds = (lengthM: number) => {
		const check = checkSize({ ...run, lengthM }, size, rules);
		return check !== null && passesAll(check);
	};
	return holds(shortestM) ? { ...run, lengthM: largestHolding(shortestM, longestM, holds) } : null;
}

function answerReach(sheet: Sheet, run: Run, input: Input, efficiency: number, named: ConductorSize) {
	const { rules } = sheet;
	const check = checkSize(run, named, rules) as SizeCheck;
	const far = (lengthM: number) => sheet.show('length', lengthM, { round: 'down' });
	writeWorking(sheet, run, check, input, efficiency);
	writeFindings(sheet, run, check, input);
	sheet.result('conductor', 'conductor', named.name);
	sheet.result('reach', 'longest run, one way', run.lengthM, { kind: 'length', write: { round: 'down' } });
	sheet.result('device', run.supply === 'dc' ? 'fuse' : 'breaker', check.deviceA as number, {
		kind: 'current',
	});
	sheet.result('ampacity', 'allowable current', check.allowableA, {
		kind: 'current',
		write: { round: 'down' },
	});
	writeDropResults(sheet, run, check);
	const proposed = rules.sizes.filter((size) => size.proposed);
	const smaller = proposed.findLast((size) => size.areaMm2 < named.areaMm2);
	const larger = proposed.find((size) => size.areaMm2 > named.areaMm2);
	for (const size of [smaller, larger]) {
		if (size === undefined) continue;
		const other = reachOf(run, size, rules);
		const shortest = checkSize({ ...run, lengthM: shortestM }, size, rules);
		if (other !== null) sheet.neighbour(nameOf(size, run.parallel), true, far(other.lengthM));
		else if (shortest !== null)
			sheet.neighbour(nameOf(size, run.parallel), false, failureText(sheet, run, shortest));
	}
	const name = nameOf(named, run.parallel);
	const current = sheet.show('current', run.currentA, { round: 'up' });
	const voltage = sheet.show('voltage', run.voltageV);
	const drop = sheet.show('voltage', check.dropV, { round: 'up' });
	return sheet.answer(
		sheet.say`${name} reaches ${far(run.lengthM)} one way with ${current} at ${voltage}; ${ratingText(check.deviceA as number)} device`,
		{
			because: sheet.say`There the drop is ${drop} = ${dropShown(check.dropFraction)} (limit ${limitText(run.dropLimit)}).`,
			governedBy: ruleText.drop,
		},
	);
}

function judgeNamed(
	sheet: Sheet,
	run: Run,
	input: Input,
	efficiency: number,
	named: ConductorSize,
	needed: SizeCheck | null,
) {
	const check = checkSize(run, named, sheet.rules);
	if (check === null) {
		return sheet.refuse(
			'not-covered',
			sheet.say`I have no ampacity for ${named.name} at ${sheet.show('temperature', run.insulationC, { unit: '°C' })} insulation under these rules.`,
			sheet.say`Name a size of this region's range: ${sheet.rules.sizes.map((size) => size.name).join(', ')}.`,
			'size',
		);
	}
	writeWorking(sheet, run, check, input, efficiency);
	writeFindings(sheet, run, check, input);
	sheet.result('conductor', 'conductor', named.name);
	const enough = passesAll(check);
	sheet.result('verdict', 'verdict', enough ? 'enough' : 'too thin');
	if (check.deviceA !== null)
		sheet.result('device', run.supply === 'dc' ? 'fuse' : 'breaker', check.deviceA, { kind: 'current' });
	sheet.result('ampacity', 'allowable current', check.allowableA, {
		kind: 'current',
		write: { round: 'down' },
	});
	writeDropResults(sheet, run, check);
	if (needed !== null) sheet.result('neededConductor', 'smallest size that passes', needed.size.name);
	const drop = sheet.show('voltage', check.dropV, { round: 'up' });
	const share = dropShown(check.dropFraction);
	const because = sheet.say`Drop ${drop} = ${share} (limit ${limitText(run.dropLimit)}).`;
	const name = nameOf(named, run.parallel);
	if (enough) {
		if (needed !== null && needed.size.areaMm2 < named.areaMm2) {
			sheet.neighbour(needed.size.name, true, sheet.say`would do: ${dropShown(needed.dropFraction)} drop`);
		}
		writeTipping(sheet, run, named, sheet.rules);
		const device = ratingText(check.deviceA as number);
		return sheet.answer(sheet.say`${name} is enough: ${device} fuse or breaker at the source end`, {
			because,
		});
	}
	const failure = failureText(sheet, run, check);
	const { rule, severity, code, source } = failureOf(run, check, circuitOf(run, sheet.rules));
	sheet.finding(severity, code, sheet.say`${name}: ${failure}.`, source);
	if (needed === null) {
		return sheet.answer(sheet.say`${name} is too thin, and no single size in my tables is enough`, {
			because,
		});
	}
	sheet.neighbour(nameOf(needed.size, run.parallel), true, sheet.say`${dropShown(needed.dropFraction)} drop`);
	const right = nameOf(needed.size, run.parallel);
	const device = ratingText(needed.deviceA as number);
	return sheet.answer(sheet.say`${name} is too thin: take ${right} with a ${device} device`, {
		because,
		governedBy: ruleText[rule],
	});
}

/** The gravest rule that a named size breaks, as a finding. */
function failureOf(
	run: Run,
	check: SizeCheck,
	circuit: CircuitRules,
): { rule: Rule; severity: Severity; code: string; source: Source } {
	if (!check.passes.heat || !check.passes.protection) {
		const rule = check.passes.heat ? 'protection' : 'heat';
		return { rule, severity: 'danger', code: 'conductor-overloaded', source: check.tableA.source };
	}
	if (!check.passes.drop) {
		return {
			rule: 'drop',
			severity: 'warning',
			code: 'drop-over-limit',
			source: practice('limit of the voltage drop'),
		};
	}
	const parallel = run.parallel > 1 ? circuit.minimumParallelAreaMm2 : null;
	const { source } = parallel ?? circuit.minimumAreaMm2;
	return { rule: 'minimum', severity: 'warning', code: 'thinner-than-allowed', source };
}

function addCautions(sheet: Sheet, mains: boolean, parallel: number): void {
	if (mains) sheet.caution(cautionMains);
	else sheet.caution(cautionSourceEnd);
	sheet.caution(cautionDisconnect, cautionLugs);
	if (parallel > 1)
		sheet.caution('Each parallel conductor: same length, same lugs, landed on the same studs.');
}
