import { type BankSource, readSource, sourceFields } from '../electrical/bank-source.js';
import { cautionDisconnect, cautionSourceEnd } from '../electrical/cautions.js';
import {
	coldLoopOhm,
	fuseFailures,
	marineInterrupting,
	markedInterruptingA,
	prospectiveA,
	servingClasses,
} from '../electrical/short-circuit.js';
import { writeNumber } from '../quantity/write.js';
import { type ConductorSize, conductorSize } from '../tables/conductors.js';
import {
	fuseClasses,
	fuseClassNamed,
	largeBankAh,
	largeBankCrankingA,
	largeBankInterruptingA,
	largeBankSource,
} from '../tables/fuses.js';
import {
	cellResistanceSource,
	chargedResistanceShare,
	chargedResistanceSource,
} from '../tables/internal-resistance.js';
import { declareTopic } from '../topic/declare.js';
import { conductor, count, type InputOf, quantity, text } from '../topic/field.js';
import type { Sheet } from '../topic/sheet.js';
import { physics, practice } from '../topic/source.js';
import { thousandsOf } from '../topic/translate.js';

const fields = {
	...sourceFields,
	point: text({
		label: 'point of the fault',
		words: [
			'fuse box',
			'fusebox',
			'fuse block',
			'fuse panel',
			'busbar',
			'bus bar',
			'main breaker',
			'distribution',
			'inverter',
			'starter',
			'sicherungskasten',
			'caja de fusibles',
		],
	}),
	size: conductor({
		label: 'cable from the bank to the point',
		aliases: ['cable', 'through', 'with', 'kabel', 'cable size'],
	}),
	lengthM: quantity({
		label: 'one-way length of that cable',
		kind: 'length',
		min: 0.02,
		max: 100,
		aliases: ['long', 'length', 'run', 'away', 'one way', 'each way', 'longitud', 'länge', 'lang'],
	}),
	cables: count({
		label: 'cables in parallel in each leg',
		min: 1,
		max: 8,
		aliases: ['cables in parallel', 'parallel cables', 'cables each leg'],
		fallback: { value: 1, why: 'one cable in each leg' },
	}),
	crankingA: quantity({
		label: 'cold-cranking amperes of the bank',
		kind: 'current',
		min: 50,
		max: 20_000,
		aliases: ['cca', 'cranking', 'cold cranking', 'cold-cranking', 'kaltstartstrom'],
	}),
};

type Input = InputOf<typeof fields>;

export const shortCircuit = declareTopic({
	name: 'short-circuit',
	title: 'Prospective short-circuit current',
	system: 'wiring',
	purpose: 'The current a dead short draws at a point of the battery circuit, and which fuses can break it.',
	words: [
		'short circuit',
		'short-circuit',
		'fault current',
		'prospective current',
		'prospective',
		'available fault current',
		'dead short',
		'interrupting capacity',
		'breaking capacity',
		'aic',
		'isc',
		'short circuit current',
		'short at',
		'short current',
		'shorted',
		'how many ka',
		'corto',
		'corriente de corto',
		'dump',
		'kurzschluss',
		'kurzschlussstrom',
		'cortocircuito',
	],
	examples: [
		'fault current 300Ah lithium 12v',
		'short circuit at the fuse box: 2 x 100Ah lfp 12v, 6 ft of 2/0',
		'dead short 200Ah AGM 24V 3 m 35mm2',
		'kurzschlussstrom 280Ah lithium 48V',
	],
	method:
		'Full open-circuit voltage over nine tenths of the internal resistance plus the cold cable loop; joints, switches and the arc are left out, so the true current is lower. Not for the current of chargers and alternators, nor for let-through and clearing times.',
	fields,
	needs: [
		{
			anyOf: ['unitAh', 'internalOhm', 'bankShortA'],
			question: 'What is the bank: capacity and chemistry (or its short-circuit current from the maker)?',
		},
	],
	calculate: calculateShortCircuit,
});

const ohmsLaw = physics("Ohm's law");

function calculateShortCircuit(input: Input, sheet: Sheet) {
	const size = input.size === undefined ? null : conductorSize(input.size);
	if (input.size !== undefined && size === null) {
		return sheet.refuse(
			'out-of-range',
			sheet.say`I read "${input.size}" as the cable; no such size is in my tables.`,
			sheet.say`Name one of: ${sheet.rules.sizes.map((one) => one.name).join(', ')}.`,
			'size',
		);
	}
	if (input.lengthM !== undefined && size === null) {
		return sheet.ask({
			name: 'size',
			label: fields.size.meta.label,
			question: 'What size is that cable?',
		});
	}
	if (size !== null && input.lengthM === undefined) {
		return sheet.ask({
			name: 'lengthM',
			label: fields.lengthM.meta.label,
			question: 'How long is that cable, one way?',
		});
	}
	const source = readSource(input, sheet);
	if (source === null) throw new Error('the declaration asks for the bank');
	if ('code' in source) return sheet.refuse(source.code, source.text, source.instead, source.field);

	const loopOhm =
		size === null || input.lengthM === undefined ? 0 : coldLoopOhm(size, input.lengthM, input.cables);
	const { openCircuitV, sourceOhm } = source;
	const currentA = prospectiveA({ openCircuitV, sourceOhm, loopOhm });
	const terminalA = prospectiveA({ openCircuitV, sourceOhm, loopOhm: 0 });

	writeWorking(sheet, input, source, size, loopOhm, currentA);
	const serving = servingClasses({ voltageV: source.classV, ratingA: null, prospectiveA: currentA });
	const failing = fuseClasses.filter((fuse) => !serving.includes(fuse));
	if (input.point !== undefined) sheet.result('point', 'point of the fault', input.point);
	sheet.result('prospectiveCurrent', 'prospective short-circuit current', currentA, {
		kind: 'current',
		write: { round: 'up', decimals: 0 },
	});
	sheet.result('prospectiveAtTerminals', 'the same at the terminals of the bank', terminalA, {
		kind: 'current',
		write: { round: 'up', decimals: 0 },
	});
	sheet.result('openCircuitVoltage', 'open-circuit voltage', openCircuitV, { kind: 'voltage' });
	sheet.result('bankResistance', 'internal resistance of the bank', sourceOhm, { kind: 'resistance' });
	sheet.result('cableResistance', 'cable loop at 20 °C', loopOhm, { kind: 'resistance' });
	sheet.result(
		'breakingCapacity',
		'interrupting rating a device here needs, at direct current',
		markedInterruptingA(currentA),
		{
			kind: 'current',
			write: { decimals: 0 },
		},
	);
	sheet.result(
		'canBreak',
		'fuses that can break it',
		serving.map((fuse) => sheet.say`${fuse.label}`).join(', ') || 'none of mine',
	);
	sheet.result(
		'cannotBreak',
		'fuses that can not',
		failing.map((fuse) => sheet.say`${fuse.label}`).join(', ') || 'none',
	);
	writeMarine(sheet, input, source);
	writeFindings(sheet, source, currentA);
	writeTipping(sheet, input, source, size, currentA);
	for (const fuse of [...serving.slice(0, 1), ...failing.slice(-1)]) sheet.source(fuse.source);
	sheet.caution(cautionSourceEnd, cautionDisconnect);

	const shown = currentText(sheet, currentA);
	const first = serving[0];
	const volts = `${writeNumber(source.classV, 0)} V`;
	if (first === undefined) {
		return sheet.answer(sheet.say`About ${shown}: no fuse in my tables breaks that, ask the battery maker`, {
			because: becauseOf(sheet, source, loopOhm),
		});
	}
	const headline =
		first.markedUpToA !== null
			? sheet.say`About ${shown}: needs a ${first.label} marked ${currentText(sheet, markedInterruptingA(currentA))} DC or more`
			: sheet.say`About ${shown}: a ${first.label} breaks that on ${volts}`;
	return sheet.answer(headline, {
		because: becauseOf(sheet, source, loopOhm),
		governedBy: 'interrupting rating',
	});
}

function becauseOf(sheet: Sheet, source: BankSource, loopOhm: number): string {
	const volts = sheet.show('voltage', source.openCircuitV);
	const inside = sheet.show('resistance', source.sourceOhm);
	const cable = sheet.show('resistance', loopOhm);
	return loopOhm === 0
		? sheet.say`${volts} behind ${inside} inside the bank, right at its terminals; every metre of cable lowers it.`
		: sheet.say`${volts} behind ${inside} inside the bank and ${cable} of cold cable.`;
}

/** 6,300 A reads better than 6283.2 A; rounded up, since more is the safe side. */
function currentText(sheet: Sheet, currentA: number): string {
	const step = currentA >= 10_000 ? 500 : currentA >= 1000 ? 100 : 10;
	return `${thousandsOf(sheet.context, Math.ceil(currentA / step) * step)} A`;
}

function writeWorking(
	sheet: Sheet,
	input: Input,
	source: BankSource,
	size: ConductorSize | null,
	loopOhm: number,
	currentA: number,
): void {
	const n = (value: number, decimals = 3) => writeNumber(value, decimals);
	const { bank, openCircuitV, sourceOhm, typical } = source;
	if (input.bankShortA !== undefined) {
		sheet.step(
			'resistance of the bank',
			'Rb = E / (0.9 · Ik)',
			`${n(openCircuitV)} V / (0.9 × ${n(input.bankShortA, 0)} A)`,
			sourceOhm,
			{ kind: 'resistance', source: ohmsLaw },
		);
	} else if (bank !== null) {
		const unitOhm = (sourceOhm * bank.parallel) / bank.series;
		sheet.step(
			'resistance of the bank',
			'Rb = r · s / p',
			`${n(unitOhm * 1000)} mohm × ${bank.series} / ${bank.parallel}`,
			sourceOhm,
			{ kind: 'resistance', source: typical ? cellResistanceSource : ohmsLaw },
		);
	}
	if (size !== null && input.lengthM !== undefined) {
		sheet.step(
			'cable loop, both legs at 20 °C',
			'Rc = 2 · L · r20 / n',
			`2 × ${n(input.lengthM)} m × ${n(size.bareOhmPerM20C * 1000, 4)} mohm/m / ${input.cables}`,
			loopOhm,
			{ kind: 'resistance', source: sheet.rules.resistanceSource },
		);
	}
	sheet.step(
		'prospective current',
		'Ik = E / (0.9 · Rb + Rc)',
		`${n(openCircuitV)} V / (${chargedResistanceShare} × ${n(sourceOhm * 1000)} mohm + ${n(loopOhm * 1000)} mohm)`,
		currentA,
		{ kind: 'current', source: chargedResistanceSource },
	);
}

function writeMarine(sheet: Sheet, input: Input, source: BankSource): void {
	const row = input.crankingA === undefined ? null : marineInterrupting(source.classV, input.crankingA);
	if (row !== null) {
		sheet.result('marineMain', 'least interrupting capacity of the main breaker on a boat', row.mainA, {
			kind: 'current',
		});
		sheet.result('marineBranch', 'the same of branch breakers', row.branchA, { kind: 'current' });
		sheet.source(row.source);
	}
	const large =
		(input.crankingA ?? 0) > largeBankCrankingA ||
		(source.capacityAh !== null && source.capacityAh > largeBankAh);
	if (large) {
		sheet.finding(
			'note',
			'large-bank',
			sheet.say`A bank this large needs the battery maker's own short-circuit current; where that is over 10 kA the boat rule takes a device of ${currentText(sheet, largeBankInterruptingA)}.`,
			largeBankSource,
		);
	}
}

function writeFindings(sheet: Sheet, source: BankSource, currentA: number): void {
	const shown = currentText(sheet, currentA);
	if (source.typical) {
		sheet.finding(
			'warning',
			'resistance-typical',
			sheet.say`The internal resistance is the usual one of the chemistry: ask the maker for the short-circuit current of this battery before the main fuse is bought.`,
			cellResistanceSource,
		);
	}
	const strip = fuseClassNamed('strip');
	const blade = fuseClassNamed('blade');
	if (currentA > strip.breaksA) {
		sheet.finding(
			'danger',
			'vehicle-fuses-cannot-break',
			sheet.say`${shown} is more than blade, strip and bolt-down vehicle fuses break (1000 to 2000 A): such a fuse can burst and burn on here. Fit one whose own marking gives the direct-current interrupting rating.`,
			strip.source,
		);
	} else if (currentA > blade.breaksA) {
		sheet.finding(
			'warning',
			'blade-cannot-break',
			sheet.say`${shown} is more than a blade fuse breaks (1000 A): a strip or single-bolt fuse is the least here.`,
			blade.source,
		);
	}
	if (
		fuseFailures(strip, { voltageV: source.classV, ratingA: null, prospectiveA: null }).includes('voltage')
	) {
		sheet.finding(
			'warning',
			'strip-fuse-voltage',
			sheet.say`Strip fuses are 32 V parts: never on a ${source.classV} V bank, whatever the current.`,
			strip.source,
		);
	}
	sheet.finding(
		'note',
		'ac-rating-not-dc',
		sheet.say`An interrupting rating for alternating current says nothing here: a direct-current arc has no zero crossing to go out at.`,
		practice('only the direct-current interrupting rating counts on a battery'),
	);
	if (!source.chemistry.leadAcid) {
		sheet.finding(
			'note',
			'electronics-not-counted',
			sheet.say`The battery's own electronics may switch off sooner, or weld shut; the fuse is sized as if they were not there.`,
			practice('the battery management system is no short-circuit protection of the cable'),
		);
	}
}

/** How long the cable must be before the next smaller class of fuse can break the fault. */
function writeTipping(
	sheet: Sheet,
	input: Input,
	source: BankSource,
	size: ConductorSize | null,
	currentA: number,
): void {
	const below = [2000, 1000].find((breaksA) => currentA > breaksA);
	if (size === null || below === undefined) return;
	const loopOhm = source.openCircuitV / below - chargedResistanceShare * source.sourceOhm;
	const lengthM = (loopOhm * input.cables) / (2 * size.bareOhmPerM20C);
	const shown = sheet.show('length', lengthM, { round: 'up' });
	sheet.tipping('lengthM', 'one-way length', lengthM, sheet.say`below ${below} A from ${shown} on`, {
		kind: 'length',
	});
}
