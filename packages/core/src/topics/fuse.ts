import { type BankSource, readSource, sourceFields } from '../electrical/bank-source.js';
import { cautionDisconnect, cautionLugs, cautionSourceEnd } from '../electrical/cautions.js';
import { checkSize, type Run, type SizeCheck, smallestDevice } from '../electrical/conductor.js';
import { assumedInverterEfficiency, isInverter, lowBatteryFinding } from '../electrical/inverter-run.js';
import { loadContradictions } from '../electrical/load-current.js';
import {
	type FuseFailure,
	fuseFailures,
	markedInterruptingA,
	openingWindow,
	prospectiveA,
	servingClasses,
} from '../electrical/short-circuit.js';
import { bankClassV, chargingVoltageV } from '../energy/bank.js';
import { writeNumber } from '../quantity/write.js';
import { type ConductorSize, conductorSize, copperResistanceAt } from '../tables/conductors.js';
import {
	type FuseClass,
	fuseClassNamed,
	openingTimes,
	selectivityRatio,
	selectivitySource,
} from '../tables/fuses.js';
import { declareTopic } from '../topic/declare.js';
import { choice, conductor, count, flag, type InputOf, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice, published } from '../topic/source.js';
import { thousandsOf } from '../topic/translate.js';
import { wire } from './wire.js';

const loadType = wire.fields.load.type;
const namesOfLoads = loadType.sort === 'text' ? loadType.words : [];

const fields = {
	currentA: quantity({
		label: 'load current',
		kind: 'current',
		min: 0.01,
		max: 2000,
		// "fuse for 20 A" names a load, "20 A fuse" a rating: the longer phrase is read first.
		aliases: [
			'load',
			'draw',
			'draws',
			'pulls',
			'fuse for',
			'fuse for a',
			'what fuse',
			'what fuse for',
			'what fuse for a',
			'which fuse',
			'size fuse',
			'what size fuse',
			'fuse size',
			'fuse size for',
			'fuse do i need',
			'corriente',
			'strom',
			'fusible para',
			'sicherung für',
		],
	}),
	ratingA: quantity({
		label: 'rating of the fuse to be judged',
		kind: 'current',
		min: 0.5,
		max: 2000,
		aliases: [
			'fuse',
			'blade fuse',
			'strip fuse',
			'class t fuse',
			'blade',
			'strip',
			'anl',
			'class t',
			'class j',
			'single bolt',
			'fused at',
			'fuse rated',
			'fuse rating',
			'rating',
			'breaker',
			'fusible',
			'sicherung',
			'ok',
			'okay',
			'too big',
			'too small',
			'zu groß',
			'zu klein',
			'demasiado grande',
			'demasiado pequeño',
			'put a',
			'fit a',
			'use a',
		],
		help: 'Name a rating to have it judged.',
	}),
	powerW: quantity({
		label: 'load power',
		kind: 'power',
		min: 0.1,
		max: 100_000,
		aliases: ['power', 'potencia', 'leistung'],
	}),
	load: text({
		label: 'load',
		// "main" stands for the main fuse here.
		words: namesOfLoads.filter((name) => !/^(?:mains?|shore|inlet|bus ?bar)$/.test(name)),
	}),
	efficiency: wire.fields.efficiency,
	size: conductor({
		label: 'conductor it protects',
		aliases: ['wire', 'cable', 'conductor', 'kabel', 'leitung'],
		required: 'What size is the thinnest conductor behind it?',
	}),
	fuseClass: choice({
		label: 'kind of fuse to be judged',
		options: {
			blade: [
				'blade',
				'blade fuse',
				'maxi',
				'maxi blade',
				'mini blade',
				'flachsicherung',
				'fusible de cuchilla',
			],
			subMiniature: ['sub-miniature blade', 'micro blade'],
			femaleContact: ['cartridge', 'female cartridge', 'pacific type'],
			strip: ['strip', 'strip fuse', 'bolt-down strip', 'anl', 'streifensicherung'],
			singleBolt: ['single-bolt', 'single bolt', 'terminal fuse', 'post fuse'],
			classT: ['class t', 'class-t', 't-class', 't class', 'type t'],
			classJ: ['class j', 'class-j', 'type j'],
			household: [
				'household',
				'ac fuse',
				'ac breaker',
				'ac rated',
				'ac-rated',
				'house breaker',
				'plug fuse',
				'class r',
				'class c',
				'sicherungsautomat',
			],
		},
	}),
	isMain: flag({
		label: 'main fuse of the bank',
		yes: [
			'main fuse',
			'battery fuse',
			'bank fuse',
			'main battery fuse',
			'between battery and busbar',
			'between battery and bus bar',
			'between battery and bus',
			'zwischen batterie und sammelschiene',
			'main',
			'for main',
			'as main',
			'for the main',
			'at the battery',
			'on the battery',
			'hauptsicherung',
			'fusible principal',
		],
		no: ['branch fuse', 'branch', 'in the fuse box', 'fuse block'],
		fallback: { value: false, why: 'a branch, unless the main fuse of the bank is named' },
	}),
	prospectiveA: quantity({
		label: 'prospective short-circuit current at the fuse',
		onlyNamed: true,
		kind: 'current',
		min: 10,
		max: 200_000,
		aliases: [
			'fault',
			'fault current',
			'short circuit',
			'short-circuit',
			'prospective',
			'kurzschluss',
			'cortocircuito',
		],
	}),
	upstreamA: quantity({
		label: 'rating of the fuse before it',
		onlyNamed: true,
		kind: 'current',
		min: 1,
		max: 2000,
		aliases: [
			'upstream',
			'before it',
			'ahead of it',
			'feeder fuse',
			'behind a',
			'vorsicherung',
			'aguas arriba',
		],
	}),
	downstreamA: quantity({
		label: 'largest rating of the fuses after it',
		onlyNamed: true,
		kind: 'current',
		min: 0.5,
		max: 2000,
		aliases: ['downstream', 'after it', 'largest branch', 'biggest branch', 'nachgeschaltet', 'aguas abajo'],
	}),
	lengthM: quantity({
		label: 'one-way length of the conductor',
		kind: 'length',
		min: 0.05,
		max: 300,
		aliases: ['long', 'length', 'run', 'away', 'one way', 'longitud', 'länge', 'lang'],
		help: 'To see whether a short at the far end still opens the fuse at once.',
	}),
	insulationC: wire.fields.insulationC,
	ambientC: wire.fields.ambientC,
	bundled: wire.fields.bundled,
	routing: wire.fields.routing,
	continuous: wire.fields.continuous,
	motor: wire.fields.motor,
	parallel: count({
		label: 'conductors in parallel in each leg',
		min: 1,
		max: 8,
		aliases: ['cables in parallel', 'conductors in parallel', 'doubled up'],
		fallback: { value: 1, why: 'one conductor in each leg' },
	}),
	...sourceFields,
};

type Input = InputOf<typeof fields>;

export const fuse = declareTopic({
	name: 'fuse',
	title: 'Fuse for a conductor and a load',
	system: 'wiring',
	purpose:
		'Which rating and which kind of fuse protects a known conductor on a battery circuit, and how it behaves.',
	words: [
		'fuse',
		'sicherung',
		'fusible',
		'fusible para',
		'sicherung für',
		'max fuse',
		'maximum fuse',
		'biggest fuse',
		'largest fuse',
		'max breaker',
		'biggest breaker',
		'fusible máximo',
		'größte sicherung',
		'maximale sicherung',
		'what fuse',
		'fuse for',
		'what size fuse',
		'fuse size',
		'fuses',
		'fusing',
		'size fuse',
		'which fuse',
		'blade fuse',
		'strip fuse',
		'class t fuse',
		'battery fuse',
		'main fuse',
		'fuse rating',
		'fuse type',
		'selectivity',
		'breaker',
		'circuit breaker',
		'what breaker',
		'leitungsschutzschalter',
		'disyuntor',
		'magnetotérmico',
		'fuse rating for',
	],
	notFor: ['short-circuit'],
	examples: [
		'max fuse for 10 awg',
		'what fuse for a 20A load on 10 awg 12v',
		'fuse for 2000w inverter 12v 2/0',
		'60A fuse on 10 awg ok?',
		'main fuse 2/0 200A 12V 300Ah lithium',
		'main fuse strip 300A 4/0 48V 280Ah lithium',
		'sicherung 16mm2 60A 24V',
	],
	method:
		'The smallest standard rating at or above 125 % of a long load and at or below the allowable current of the conductor; the kind by working voltage, rating and prospective short-circuit current. Battery circuits only; let-through energy and the exact curves stay with the maker.',
	fields,
	needs: [
		{
			// Of the conductor alone, the most that it may have is told.
			anyOf: ['currentA', 'powerW', 'ratingA', 'size'],
			question: 'What current does it carry (or which fuse is to be judged)?',
		},
	],
	calculate: calculateFuse,
});

const ohmsLaw = physics("Ohm's law");
const boatRule = published(
	'33 CFR 183.455(c)(1)',
	'150 % of Table 5 below 50 V; the design default here is 100 %',
);
/** A federal boat rule would allow this much of the ampacity below 50 V; it is told, never used. */
const boatRuleShare = 1.5;

function calculateFuse(input: Input, sheet: Sheet) {
	const classV = classVoltage(input, sheet);
	if (typeof classV !== 'number') return classV;
	const size = conductorSize(input.size);
	if (size === null) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read "${input.size}" as the conductor; no such size is in my tables.`,
			sheet.say`Name one of: ${sheet.rules.sizes.map((one) => one.name).join(', ')}.`,
			'size',
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
	const fromPower = currentOfPower(input, classV, sheet);
	const contradiction = loadContradictions({ ...input, voltageV: classV }, sheet.context)[0];
	if (contradiction !== undefined) {
		return sheet.refuse(contradiction.code, contradiction.text, contradiction.instead, contradiction.field);
	}
	const loadA = input.currentA ?? fromPower;
	if (loadA === null && input.ratingA === undefined && input.load !== undefined) {
		return sheet.ask({
			name: 'currentA',
			label: fields.currentA.meta.label,
			question: 'What current does it carry (or which fuse is to be judged)?',
		});
	}
	const run = runOf(input, classV, loadA ?? 0);
	const check = checkSize(run, size, sheet.rules);
	if (check === null) {
		return sheet.refuse(
			'not-covered',
			sheet.say`I have no ampacity for ${size.name} at ${sheet.show('temperature', input.insulationC, { unit: '°C' })} insulation under these rules.`,
			sheet.say`Name a size of this region's range: ${sheet.rules.sizes.map((one) => one.name).join(', ')}.`,
			'size',
		);
	}
	const source = readSource({ ...input, bankV: input.bankV ?? classV }, sheet);
	if (source !== null && 'code' in source) {
		return sheet.refuse(source.code, source.text, source.instead, source.field);
	}
	const faultA = faultCurrent(input, source, sheet);
	if (isMainFuse(input) && faultA === null) {
		return sheet.ask({
			name: 'unitAh',
			label: fields.unitAh.meta.label,
			question: 'What is the bank: capacity and chemistry (or its short-circuit current from the maker)?',
		});
	}
	sheet.caution(cautionSourceEnd, cautionDisconnect, cautionLugs);

	const minimumA = smallestDevice(run, sheet.rules.dc);
	// With neither a load nor a rating, what is asked is the most that still protects the conductor.
	const proposedA = loadA === null ? check.largestDeviceA : check.deviceA;
	const ratingA = input.ratingA ?? proposedA;
	if (ratingA === null) return tooThin(sheet, run, size, check, minimumA);
	const faults: Judged = { input, sheet, run, check, size, classV, loadA, minimumA, ratingA, faultA, source };
	writeWorking(faults);
	const ratingVerdict = judgeRating(faults);
	const kind = judgeKind(faults);
	writeResults(faults, kind);
	writeOpening(faults, kind.fuse);
	writeSelectivity(faults);
	writeNotes(faults);
	return decide(faults, ratingVerdict, kind);
}

/** A fuse with another before it is no main fuse: the words meant that other. */
function isMainFuse(input: Input): boolean {
	return input.isMain && input.upstreamA === undefined;
}

function currentOfPower(input: Input, classV: number, sheet: Sheet): number | null {
	if (input.powerW === undefined) return null;
	const inverter = isInverter(input.load) && input.currentA === undefined;
	const efficiency = input.efficiency ?? (inverter ? assumedInverterEfficiency(sheet) : 1);
	return input.powerW / (classV * efficiency);
}

interface Judged {
	readonly input: Input;
	readonly sheet: Sheet;
	readonly run: Run;
	readonly check: SizeCheck;
	readonly size: ConductorSize;
	readonly classV: number;
	/** null where only a rating was named */
	readonly loadA: number | null;
	readonly minimumA: number;
	readonly ratingA: number;
	readonly faultA: number | null;
	readonly source: BankSource | null;
}

interface Kind {
	/** null where an AC device was named, or nothing in the tables serves */
	readonly fuse: FuseClass | null;
	readonly verdict: 'serves' | 'does not serve' | 'none serves';
}

type RatingVerdict = 'chosen' | 'most' | 'right' | 'too large' | 'too small';

function classVoltage(input: Input, sheet: Sheet) {
	const voltageV = input.bankV ?? input.unitV;
	if (voltageV === undefined) {
		sheet.assume('bankV', 'bank voltage', 12, 'the usual house voltage', { kind: 'voltage', confirm: true });
		return 12;
	}
	const classV = bankClassV(voltageV);
	if (classV !== null) return classV;
	return sheet.refuse(
		'out-of-range',
		sheet.say`I read ${sheet.show('voltage', voltageV)} as the bank voltage; banks are not built so.`,
		'Name a bank of 12, 24, 36 or 48 V.',
		'bankV',
	);
}

function runOf(input: Input, voltageV: number, currentA: number): Run {
	return {
		supply: 'dc',
		currentA,
		voltageV,
		lengthM: input.lengthM ?? 1,
		// The drop is the wire topic's matter.
		dropLimit: 1,
		insulationC: input.insulationC,
		ambientC: input.ambientC,
		bundled: input.bundled,
		routing: input.routing,
		continuous: input.continuous,
		motor: input.motor,
		isRating: false,
		terminalC: null,
		parallel: input.parallel,
		tinned: false,
	};
}

function faultCurrent(input: Input, source: BankSource | null, sheet: Sheet): number | null {
	if (input.prospectiveA !== undefined) return input.prospectiveA;
	if (source === null) return null;
	const { openCircuitV, sourceOhm } = source;
	const currentA = prospectiveA({ openCircuitV, sourceOhm, loopOhm: 0 });
	sheet.assume(
		'prospectiveA',
		fields.prospectiveA.meta.label,
		currentA,
		'as at the terminals of the bank: cable before the fuse only lowers it',
		{ kind: 'current', write: { round: 'up', decimals: 0 } },
	);
	return currentA;
}

function amps(valueA: number): string {
	return `${writeNumber(valueA, 1)} A`;
}

/** Faults are given to the next hundred amperes up. */
function kiloText(sheet: Sheet, valueA: number): string {
	const step = valueA >= 1000 ? 100 : 10;
	return `${thousandsOf(sheet.context, Math.ceil(valueA / step - 1e-9) * step)} A`;
}

function tooThin(sheet: Sheet, run: Run, size: ConductorSize, check: SizeCheck, minimumA: number) {
	const cap = sheet.show('current', check.deviceCapA, { round: 'down' });
	const needed = sheet.show('current', minimumA, { round: 'up' });
	const larger = sheet.rules.sizes.find((one) => {
		const other = one.proposed ? checkSize(run, one, sheet.rules) : null;
		return other !== null && other.deviceA !== null;
	});
	return sheet.refuse(
		'unsafe',
		sheet.say`${size.name} may have no fuse above ${cap} here, and the load needs ${needed}: no standard rating does both.`,
		larger === undefined
			? sheet.say`Split the load over several conductors, each with its own fuse.`
			: sheet.say`Run at least ${larger.name} for this load, or shed load; the wire topic checks the drop too.`,
		'size',
	);
}

function writeWorking({ sheet, run, check, size, loadA, minimumA, ratingA, input }: Judged): void {
	const n = (value: number, decimals = 3) => writeNumber(value, decimals);
	if (loadA !== null) {
		const long = run.continuous || run.motor;
		sheet.step(
			'smallest rating',
			long ? 'Ir ≥ 1.25 · I' : 'Ir ≥ I',
			long ? `1.25 × ${n(loadA)} A` : `${n(loadA)} A, on for less than 3 h`,
			minimumA,
			{ kind: 'current', source: sheet.rules.dc.continuous.source },
		);
	}
	sheet.step(
		'allowable current of the conductor',
		'Iz = n · It · ka · kb · kr',
		`${run.parallel} × ${n(check.tableA.value, 1)} A × ${n(check.ambientFactor.value)} × ${n(check.bundleFactor.value)} × ${n(check.routingFactor?.value ?? 1)}`,
		check.allowableA,
		{ kind: 'current', source: check.tableA.source },
	);
	sheet.source(check.ambientFactor.source, check.bundleFactor.source);
	if (check.smallLimit !== null) {
		sheet.step(
			'largest fuse on this small conductor',
			'Ir ≤ fixed limit',
			`${size.name}: ${n(check.smallLimit.value, 1)} A`,
			check.smallLimit.value,
			{ kind: 'current', source: check.smallLimit.source },
		);
	}
	sheet.step(
		input.ratingA === undefined ? 'rating' : 'rating to be judged',
		'Ir,min ≤ Ir ≤ Ir,max',
		`${n(minimumA)} A ≤ ${n(ratingA)} A ≤ ${n(check.deviceCapA, 1)} A`,
		ratingA,
		{ kind: 'current', source: sheet.rules.dc.deviceSource },
	);
}

function judgeRating({ input, sheet, check, size, minimumA, ratingA, classV }: Judged): RatingVerdict {
	if (input.ratingA === undefined)
		return input.currentA === undefined && input.powerW === undefined ? 'most' : 'chosen';
	const rating = amps(ratingA);
	if (ratingA > check.deviceCapA) {
		const cap = sheet.show('current', check.deviceCapA, { round: 'down' });
		sheet.finding(
			'danger',
			'fuse-over-conductor',
			sheet.say`${rating} does not protect ${size.name}: the conductor can overheat before the fuse opens. At most ${cap} here.`,
			check.smallLimit !== null && check.smallLimit.value < check.allowableA
				? check.smallLimit.source
				: check.tableA.source,
		);
		if (classV < 50 && ratingA <= boatRuleShare * check.tableA.value * input.parallel) {
			sheet.finding(
				'note',
				'boat-rule-would-allow',
				sheet.say`The federal boat rule would allow up to 150 % of the table value below 50 V; we don't use that.`,
				boatRule,
			);
		}
		return 'too large';
	}
	if (ratingA < minimumA) {
		sheet.finding(
			'warning',
			'fuse-under-load',
			sheet.say`${rating} is under the ${sheet.show('current', minimumA, { round: 'up' })} this load needs: it will age and open for nothing.`,
			sheet.rules.dc.continuous.source,
		);
		return 'too small';
	}
	return 'right';
}

function judgeKind(judged: Judged): Kind {
	const { input, sheet, classV, ratingA, faultA } = judged;
	const duty = { voltageV: classV, ratingA, prospectiveA: faultA };
	if (input.fuseClass === undefined) {
		const offered = servingClasses(duty).find((one) => isOffered(judged, one));
		if (offered === undefined) return { fuse: null, verdict: 'none serves' };
		writeKindFindings(judged, offered);
		return { fuse: offered, verdict: 'serves' };
	}
	if (input.fuseClass === 'household') {
		sheet.finding(
			'danger',
			'ac-rating-on-dc',
			sheet.say`A device rated for alternating current only may never open on a battery: its arc has no zero crossing to go out at. Its AC interrupting rating, however high, counts for nothing here.`,
			practice('only the direct-current rating counts on a battery'),
		);
		return { fuse: null, verdict: 'does not serve' };
	}
	const named = fuseClassNamed(input.fuseClass);
	const failures = fuseFailures(named, duty);
	for (const failure of failures) writeFailure(judged, named, failure);
	writeKindFindings(judged, named);
	return {
		fuse: named,
		verdict: failures.length === 0 && !isWeakMain(judged, named) ? 'serves' : 'does not serve',
	};
}

function writeFailure(
	{ sheet, classV, ratingA, faultA }: Judged,
	named: FuseClass,
	failure: FuseFailure,
): void {
	const { label, source } = named;
	const texts: Readonly<Record<FuseFailure, readonly ['danger' | 'warning', string, string]>> = {
		voltage: [
			'danger',
			'fuse-voltage',
			sheet.say`A ${label} is rated for ${named.ratedVoltageV} V at most: on ${classV} V it may burn on instead of opening.`,
		],
		rating: [
			'warning',
			'no-such-rating',
			sheet.say`${amps(ratingA)} is not made as a ${label}: ${amps(named.largestRatingA)} is the largest.`,
		],
		breaking: [
			'danger',
			'cannot-break',
			sheet.say`A ${label} breaks ${kiloText(sheet, named.markedUpToA ?? named.breaksA)}; a short here draws up to ${kiloText(sheet, faultA ?? 0)}. It can burst and burn on.`,
		],
	};
	const [severity, code, text] = texts[failure];
	sheet.finding(severity, code, text, source);
}

/** A vehicle fuse as the main fuse of a lithium bank, whatever the resistance guessed. */
function isWeakMain({ input, source }: Judged, named: FuseClass): boolean {
	const largeAh = 100;
	const lithium =
		source !== null ? !source.chemistry.leadAcid : input.chemistry === 'lifepo4' || input.chemistry === 'nmc';
	return (
		isMainFuse(input) && lithium && named.markedUpToA === null && (source?.capacityAh ?? largeAh) >= largeAh
	);
}

/**
 * A sub-miniature or cartridge fuse is taken when named; the common kinds are offered. Where the fault current is not
 * known, a feeder gets a fuse that is marked for what it breaks: the safe side.
 */
function isOffered(judged: Judged, fuseClass: FuseClass): boolean {
	const { name, markedUpToA } = fuseClass;
	if (name === 'subMiniature' || name === 'femaleContact' || isWeakMain(judged, fuseClass)) return false;
	const feeder = judged.ratingA > fuseClassNamed('blade').largestRatingA;
	return judged.faultA !== null || !feeder || markedUpToA !== null;
}

function writeKindFindings(judged: Judged, named: FuseClass): void {
	const { sheet, classV, source, faultA } = judged;
	if (isWeakMain(judged, named)) {
		sheet.finding(
			'danger',
			'vehicle-fuse-on-lithium',
			sheet.say`Never a ${named.label} as the main fuse of a lithium bank of 100 Ah or more: it breaks ${kiloText(sheet, named.breaksA)}, the bank can give many times that.`,
			named.source,
		);
	}
	if (named.markedUpToA !== null) {
		const needed = faultA === null ? '' : ` ${sheet.say`at least ${kiloText(sheet, faultA)}`}`;
		sheet.finding(
			'warning',
			'read-the-marking',
			sheet.say`The direct-current rating of a ${named.label} is optional: the fuse itself must be marked for ${classV} V DC or more and an interrupting rating of${needed === '' ? ' the fault current' : needed} DC.`,
			named.source,
		);
	}
	if (named.ratedVoltageV === 58 && classV > 32) {
		sheet.finding(
			'warning',
			'buy-58-volt',
			sheet.say`Most fuses of this kind are 32 V parts: on ${classV} V only those marked 58 V.`,
			named.source,
		);
	}
	const chargingV = source === null ? null : chargingVoltageV(source.chemistry, classV);
	if (chargingV !== null && chargingV > named.ratedVoltageV && classV <= named.ratedVoltageV) {
		sheet.finding(
			'warning',
			'charging-above-rating',
			sheet.say`This bank is charged at up to ${sheet.show('voltage', chargingV)}, above the ${named.ratedVoltageV} V of the fuse: take one of a higher voltage.`,
			named.source,
		);
	}
}

function writeResults(
	{ sheet, check, minimumA, ratingA, loadA, faultA, classV, size }: Judged,
	kind: Kind,
): void {
	sheet.result('rating', 'rating', ratingA, { kind: 'current' });
	sheet.result('conductor', 'conductor', size.name);
	if (loadA !== null) {
		sheet.result('minimumRating', 'smallest rating for the load', minimumA, {
			kind: 'current',
			write: { round: 'up' },
		});
	}
	sheet.result('largestRating', 'largest rating for the conductor', check.deviceCapA, {
		kind: 'current',
		write: { round: 'down' },
	});
	sheet.result('ampacity', 'allowable current of the conductor', check.allowableA, {
		kind: 'current',
		write: { round: 'down' },
	});
	sheet.result(
		'boatRuleMaximum',
		'what the federal boat rule would allow (150 %)',
		boatRuleShare * check.tableA.value,
		{
			kind: 'current',
			write: { round: 'down' },
		},
	);
	sheet.result('fuseClass', 'kind of fuse', kind.fuse?.label ?? 'none of my tables');
	sheet.result('verdict', 'verdict on the kind', kind.verdict);
	if (faultA !== null) {
		sheet.result('prospectiveCurrent', 'prospective short-circuit current', faultA, {
			kind: 'current',
			write: { round: 'up', decimals: 0 },
		});
	}
	if (kind.fuse !== null) {
		if (kind.fuse.markedUpToA === null) {
			sheet.result('breaks', 'what that kind breaks', kind.fuse.breaksA, { kind: 'current' });
		} else if (faultA !== null) {
			sheet.result(
				'requiredMarking',
				'interrupting rating it must be marked with',
				markedInterruptingA(faultA),
				{
					kind: 'current',
				},
			);
		}
		sheet.result('ratedVoltage', 'what that kind is rated for', kind.fuse.ratedVoltageV, { kind: 'voltage' });
		sheet.source(kind.fuse.source);
	}
	sheet.result('systemVoltage', 'bank voltage', classV, { kind: 'voltage' });
}

const percent = (share: number) => String(Math.round(share * 100));

/** When the fuse opens, at the multiples that its standard names, and at a short at the far end. */
function writeOpening(judged: Judged, fuseClass: FuseClass | null): void {
	const { sheet, ratingA } = judged;
	const times = fuseClass === null ? [] : openingTimes(fuseClass.name, ratingA);
	for (const { share, leastS, mostS, source } of times) {
		const at = percent(share);
		if (mostS === null) {
			sheet.result('holdCurrent', sheet.say`carries at least 100 h (${at} %)`, share * ratingA, {
				kind: 'current',
				write: { round: 'down' },
			});
		} else {
			if (leastS !== null)
				sheet.result(`opens${at}LeastS`, sheet.say`at ${at} % opens no sooner than`, leastS, { unit: 's' });
			sheet.result(`opens${at}MostS`, sheet.say`at ${at} % opens no later than`, mostS, { unit: 's' });
		}
		sheet.source(source);
	}
	writeFarEnd(judged, times);
}

function writeFarEnd(judged: Judged, times: ReturnType<typeof openingTimes>): void {
	const { sheet, input, size, classV, ratingA, source } = judged;
	if (input.lengthM === undefined) return;
	// A warm conductor and a worn, half-empty bank: the lowest current is the safe side here.
	const loopOhm =
		(2 * input.lengthM * copperResistanceAt(size.bareOhmPerM20C, input.insulationC)) / input.parallel;
	const farA = classV / ((source === null ? 0 : 2 * source.sourceOhm) + loopOhm);
	sheet.step(
		'short at the far end, at its lowest',
		'I = U / (2 · Rb + R)',
		`${classV} V / (2 × ${writeNumber((source?.sourceOhm ?? 0) * 1000, 2)} mohm + ${writeNumber(loopOhm * 1000, 2)} mohm)`,
		farA,
		{ kind: 'current', source: ohmsLaw },
	);
	sheet.result('farEndCurrent', 'short-circuit current at the far end, at its lowest', farA, {
		kind: 'current',
		write: { round: 'down', decimals: 0 },
	});
	const share = farA / ratingA;
	const { mostS } = openingWindow(times, share);
	if (Number.isFinite(mostS))
		sheet.result('farEndOpensS', 'that short is cut off within', mostS, { unit: 's' });
	if (share < 3.5) {
		sheet.finding(
			share < 2 ? 'danger' : 'warning',
			'far-end-opens-slowly',
			sheet.say`A short at the far end draws only ${writeNumber(share, 1)} times the rating: the fuse opens slowly or not at all while the conductor heats. Take a thicker conductor or a smaller fuse.`,
			practice('a short at the far end should draw several times the rating'),
		);
	}
}

function writeSelectivity({ sheet, input, ratingA }: Judged): void {
	const pairs = [
		{
			name: 'upstreamRatio',
			label: 'rating of the fuse before it over this one',
			large: input.upstreamA,
			small: ratingA,
		},
		{
			name: 'downstreamRatio',
			label: 'this rating over the largest after it',
			large: ratingA,
			small: input.downstreamA,
		},
	];
	for (const { name, label, large, small } of pairs) {
		if (large === undefined || small === undefined) continue;
		const ratio = large / small;
		sheet.result(name, label, ratio, { write: { round: 'down', decimals: 2 } });
		const selective = ratio >= selectivityRatio;
		const shown = writeNumber(ratio, 2, 'down');
		sheet.finding(
			selective ? 'note' : 'warning',
			selective ? 'selective' : 'not-selective',
			selective
				? sheet.say`${amps(large)} before ${amps(small)} is ${shown} : 1, so the smaller mostly opens first. Indicative only: in a dead short both may open; the makers' curves decide.`
				: sheet.say`${amps(large)} before ${amps(small)} is only ${shown} : 1: both may open, and everything behind the larger goes dark. Aim for ${selectivityRatio} : 1 between fuses of one kind (indicative).`,
			selectivitySource,
		);
	}
}

function writeNotes({ sheet, input, classV, faultA, source, ratingA, loadA }: Judged): void {
	if (faultA === null) {
		sheet.finding(
			'warning',
			'fault-current-unknown',
			sheet.say`The kind is chosen by voltage and rating alone: name the bank (capacity and chemistry) or the fault current to have the interrupting rating checked.`,
			published('33 CFR 183.455(d)', 'voltage and interrupting rating of the device'),
		);
	} else if (source?.typical === true && input.prospectiveA === undefined) {
		sheet.finding(
			'warning',
			'resistance-typical',
			sheet.say`The fault current rests on the usual resistance of the chemistry: ask the maker for the short-circuit current of this battery.`,
			practice('internal resistance by chemistry'),
		);
	}
	if (input.ambientC > 40) {
		sheet.finding(
			'note',
			'hot-fuse',
			sheet.say`Fuses are rated at room temperature: at ${sheet.show('temperature', input.ambientC)} they carry less and open sooner. Mount the fuse in a cooler place or ask the maker's derating curve; never answer with a rating above the conductor's.`,
			practice('derate fuses in the heat by their maker’s curve'),
		);
	}
	if (loadA !== null && input.powerW !== undefined && isInverter(input.load)) {
		lowBatteryFinding(sheet, loadA, classV, ratingA);
	}
	if (input.motor) {
		sheet.finding(
			'note',
			'motor-start',
			sheet.say`A motor draws several times its running current at the start: take a slow fuse.`,
			practice('slow device for a motor'),
		);
	}
	if (loadA !== null && input.continuous && loadA > 0.8 * ratingA) {
		sheet.finding(
			'warning',
			'over-80-percent',
			sheet.say`The load is over 80 % of the rating for hours: the fuse runs hot.`,
			practice('80 % of the rating for long loads'),
		);
	}
}

function decide(judged: Judged, rating: RatingVerdict, kind: Kind) {
	const { sheet, input, check, size, ratingA, faultA, loadA } = judged;
	const label = kind.fuse?.label ?? sheet.say`fuse`;
	const cap = sheet.show('current', check.deviceCapA, { round: 'down' });
	const loadText =
		loadA === null ? '' : sheet.say`The load is ${sheet.show('current', loadA, { round: 'up' })}. `;
	const faultText = faultA === null ? '' : sheet.say` A short draws up to ${kiloText(sheet, faultA)}.`;
	const because = sheet.say`${loadText}${size.name} may have at most ${cap} here.${faultText}`;
	const right = check.deviceA === null ? null : amps(check.deviceA);
	if (rating === 'too large') {
		const instead = loadA === null ? sheet.say`at most ${cap}` : (right ?? sheet.say`a thicker conductor`);
		return sheet.answer(sheet.say`${amps(ratingA)} is too large for ${size.name}: ${instead}`, {
			because,
			governedBy: 'ampacity',
		});
	}
	if (rating === 'too small') {
		return sheet.answer(
			right === null
				? sheet.say`${amps(ratingA)} is too small for the load, and ${size.name} takes no larger`
				: sheet.say`${amps(ratingA)} is too small for the load: take ${right}`,
			{ because, governedBy: 'load' },
		);
	}
	if (kind.verdict !== 'serves') {
		const other = servingClasses({ voltageV: judged.classV, ratingA, prospectiveA: faultA }).find((one) =>
			isOffered(judged, one),
		);
		const named =
			input.fuseClass === undefined ? sheet.say`No fuse of my tables` : sheet.say`Not that kind of fuse`;
		return sheet.answer(
			other === undefined
				? sheet.say`${named}: ask the maker for ${amps(ratingA)} with the DC rating needed`
				: sheet.say`${named}: take a ${amps(ratingA)} ${other.label}`,
			{ because, governedBy: 'interrupting rating' },
		);
	}
	if (rating === 'most') {
		return sheet.answer(sheet.say`${amps(ratingA)} ${label} at most on ${size.name}`, {
			because: sheet.say`${because} Within that the load decides: at least 125 % of what is on for 3 h or more.`,
			governedBy: 'ampacity',
		});
	}
	const ok =
		rating === 'right' ? sheet.say` is right on ${size.name}` : sheet.say` at the source end of ${size.name}`;
	return sheet.answer(sheet.say`${amps(ratingA)} ${label}${ok}`, {
		because,
		governedBy: faultA === null ? 'ampacity' : 'interrupting rating',
	});
}
