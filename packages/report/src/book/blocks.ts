import { type Severity, severities, write, writeNumber } from '@lugbook/core';
import { type Block, type ContentsEntry, facts, heading, lead, paragraph, table } from '../document/block.js';
import { drawPicture, type Picture } from '../picture/draw.js';
import { slices } from '../picture/figure.js';
import {
	assumptionCount,
	nameText,
	severityWord,
	sheetBlocks,
	timeText,
	topicTitle,
} from '../sheet/blocks.js';
import { sheetStates } from '../sheet/record.js';
import { drawPictures } from '../sheet/sheet.js';
import {
	type BuildBook,
	type EnergyPart,
	eachSheet,
	type FactsPart,
	type LoadRow,
	type RunRow,
	runsShare,
	type Signing,
	type WeightRow,
	type WeightsPart,
	type WholeSignature,
} from './book.js';

/** A figure of this height still fits a page of Letter with its words readable [CSS px]. */
const tallestFigure = 1100;

/** Rows of the register in one table: a register of thousands is written bit by bit. */
const registerRows = 100;

export function bookTitle({ build, shop }: Pick<BuildBook, 'build' | 'shop'>): string {
	return `Book of the build: ${build} (${shop})`;
}

const sections = [
	['findings', 'Open findings and what is not known'],
	['equipment', 'Equipment'],
	['wiring', 'Wire and fuse schedule'],
	['energy', 'Energy balance'],
	['water', 'Water'],
	['climate', 'Heating, cooling and air'],
	['weights', 'Weights'],
	['handover', 'For the owner: limits and cautions'],
	['register', 'Register of calculations'],
	['sheets', 'Calculation sheets'],
] as const satisfies readonly (readonly [id: string, title: string])[];

export const bookContents: readonly ContentsEntry[] = sections.map(([id, title], index) => ({
	id,
	text: `${index + 1} ${title}`,
}));

/** The whole book, block by block; no more than one sheet is held at a time. */
export async function* bookBlocks(book: BuildBook): AsyncGenerator<Block> {
	yield* coverBlocks(book);
	yield { kind: 'contents', entries: bookContents };
	yield { kind: 'page' };
	yield* section('findings');
	yield* findingBlocks(book);
	yield* section('equipment');
	yield* equipmentBlocks(book);
	yield* section('wiring');
	yield* await wiringBlocks(book);
	yield* section('energy');
	yield* await energyBlocks(book.energy);
	yield* section('water');
	yield* factsBlocks(book.water);
	yield* section('climate');
	yield* factsBlocks(book.climate);
	yield* section('weights');
	yield* await weightBlocks(book, book.weights);
	yield { kind: 'page' };
	yield* section('handover');
	yield* handoverBlocks(book);
	yield { kind: 'page' };
	yield* section('register');
	yield* registerBlocks(book);
	yield* section('sheets');
	let none = true;
	for await (const record of eachSheet(book.sheets)) {
		if (!none) yield { kind: 'page' };
		none = false;
		yield* sheetBlocks(record, 3, await drawPictures(record));
	}
	if (none) yield paragraph('None.');
}

function section(id: (typeof sections)[number][0]): Block[] {
	const entry = bookContents.find((one) => one.id === id) as ContentsEntry;
	return [heading(2, entry.text, id)];
}

function coverBlocks(book: BuildBook): Block[] {
	const dangers = book.findings.filter(({ severity }) => severity === 'danger');
	return [
		heading(1, bookTitle(book)),
		facts([
			['Shop', book.shop],
			['Build', book.build],
			['Vehicle', book.vehicle],
			...book.use.map(({ label, text }) => [label, text] as const),
			['Made on', book.date],
			['Made by', `Lugbook ${book.program}`],
			['Rests on the log', book.log === null ? null : `up to No. ${book.log.entry}, hash ${book.log.hash}`],
			['Calculations', stateCounts(book.signing)],
			['Assumptions', confirmText(book.signing)],
			[
				'Sheets in this file',
				book.part === null
					? null
					: `No. ${book.part.from} to ${book.part.to} alone; the others are in the other pieces`,
			],
			['Open findings', findingCounts(book)],
			['Not known', book.notKnown.length === 0 ? 'nothing' : `${book.notKnown.length} matters, see part 1`],
		]),
		...dangers.map(
			({ text, clears, entries }): Block => ({
				kind: 'box',
				word: [severityWord.danger, ...entries.map((entry) => `No. ${entry}`)].join(', '),
				lines: [text, ...(clears === null ? [] : [`What clears it: ${clears}`])],
				weight: 'strong',
			}),
		),
		...signatureBlocks(book),
	];
}

function stateCounts({ answers }: Signing): string {
	const parts = sheetStates.flatMap((state) => {
		const count = answers[state]?.length ?? 0;
		return count === 0 ? [] : [`${count} ${state}`];
	});
	return parts.length === 0 ? 'none' : parts.join(', ');
}

function confirmText({ toConfirm: { values, answers } }: Signing): string {
	if (values === 0) return 'none still to be confirmed';
	const noun = values === 1 ? '1 assumed value' : `${values} assumed values`;
	return `${noun} STILL TO BE CONFIRMED, in ${answers} ${answers === 1 ? 'answer' : 'answers'}; the register has how many in each`;
}

/** More runs of numbers than these are not read on a cover. */
const mostRuns = 40;

/** Numbers with those that follow one another drawn together: "No. 3 to 7, 9". */
function numbersText(numbers: readonly number[]): string {
	const runs: [first: number, last: number][] = [];
	for (const number of numbers) {
		const run = runs.at(-1);
		if (run !== undefined && run[1] === number - 1) run[1] = number;
		else runs.push([number, number]);
	}
	const shown = runs
		.slice(0, mostRuns)
		.map(([first, last]) =>
			first === last ? `${first}` : last === first + 1 ? `${first}, ${last}` : `${first} to ${last}`,
		);
	return `No. ${shown.join(', ')}${runs.length > mostRuns ? ' and more, see the register' : ''}`;
}

function findingCounts({ findings }: BuildBook): string {
	const parts = severities.flatMap((severity) => {
		const count = findings.filter((one) => one.severity === severity).length;
		const word = severityWord[severity].toLowerCase();
		return count === 0 ? [] : [`${count} ${word}${count === 1 ? '' : 's'}`];
	});
	return parts.length === 0 ? 'none' : parts.join(', ');
}

/** The signature under the build as a whole, with what it covers and whether it still holds. */
function wholeBlocks(whole: WholeSignature | null): Block[] {
	if (whole === null)
		return [paragraph('NOT SIGNED AS A WHOLE: there is no signature under the build as a whole.')];
	const { name, at, entry, meaning, words, covers, signed, open, ownQuestion, since, withdrawn } = whole;
	const state =
		withdrawn !== null
			? 'SIGNATURE WITHDRAWN: signed'
			: since.length === 0
				? 'SIGNED'
				: 'SIGNATURE OUT OF DATE: signed';
	const own = ownQuestion ? ', own questions among them, as this shop allows' : '';
	return [
		facts([
			['Build as a whole', `${state} by ${nameText(name)}, ${timeText(at)} (No. ${entry}): ${meaning}${own}`],
			['In their words', words],
			[
				'Withdrawn',
				withdrawn === null
					? null
					: `by ${nameText(withdrawn.name)}, ${timeText(withdrawn.at)} (No. ${withdrawn.entry})${withdrawn.words === null ? '' : `: ${withdrawn.words}`}`,
			],
			['It covers', `the log up to No. ${covers.entry} (signed answers: ${signed}), hash ${covers.hash}`],
			[
				'Hash now',
				covers.now === null
					? null
					: `${covers.now}: the log was chained anew since, as an import under another name does; compare it with the log that was signed`,
			],
			['Open when signed', open ?? 'nothing'],
			[
				'Changed since',
				since.length === 0 ? 'nothing' : `by ${numbersText(since)}; the signature does not cover it`,
			],
		]),
	];
}

function signatureBlocks({ signing: { answers, signers, whole } }: BuildBook): Block[] {
	const states = sheetStates.flatMap((state) => {
		const numbers = answers[state] ?? [];
		return numbers.length === 0 ? [] : [[state, String(numbers.length), numbersText(numbers)]];
	});
	if (states.length === 0)
		return [...wholeBlocks(whole), paragraph('NOT SIGNED: there is no answer to sign.')];
	const said =
		signers.length === 0
			? 'NOT SIGNED: no answer of this build has a signature that holds.'
			: 'Each answer is signed by itself. NOT SIGNED is every answer whose state is another than "signed":';
	return [
		...wholeBlocks(whole),
		lead(said),
		table(['State:4', 'Answers:>3', 'Which:13'], states),
		...(signers.length === 0
			? []
			: [
					table(
						['Signed by:5', 'When:5', 'Which:10'],
						signers.map(({ name, first, last, answers: signed, own }) => [
							nameText(name),
							first === last ? timeText(first) : `${timeText(first)} to ${timeText(last)}`,
							own === 0
								? numbersText(signed)
								: `${numbersText(signed)}; ${own} of them to an own question, as this shop allows`,
						]),
					),
				]),
	];
}

function findingBlocks({ findings, notKnown }: BuildBook): Block[] {
	const rank = (severity: Severity) => severities.indexOf(severity);
	const rows = findings
		.toSorted((a, b) => rank(a.severity) - rank(b.severity))
		.map(({ severity, text, source, clears, entries }) => [
			severity === 'note' ? severityWord.note : severityWord[severity].toUpperCase(),
			text,
			clears ?? '',
			[source, ...entries.map((entry) => `No. ${entry}`)].join('; '),
		]);
	return [
		rows.length === 0
			? paragraph('No open finding.')
			: table(['Severity:3', 'Finding:7', 'What clears it:5', 'Rests on:5'], rows),
		...(notKnown.length === 0
			? [paragraph('Nothing is noted as not known.')]
			: [
					lead('Not known, and not presumed fine:'),
					{ kind: 'list', items: notKnown } as const satisfies Block,
				]),
	];
}

function equipmentBlocks({ equipment }: BuildBook): Block[] {
	if (equipment.length === 0) return [paragraph('None named.')];
	return [
		table(
			['Equipment:7', 'Count:>2', 'Rating:5', 'Place:4', 'Entry:2'],
			equipment.map(({ name, count, rating, place, entry }) => [
				name,
				String(count),
				rating ?? 'not known',
				place ?? '',
				entryText(entry),
			]),
		),
	];
}

function entryText(entry: number | null): string {
	return entry === null ? '' : `No. ${entry}`;
}

async function wiringBlocks(book: BuildBook): Promise<Block[]> {
	const { runs, oneLine } = book;
	return [
		runs.length === 0
			? paragraph('No run is sized.')
			: table(
					['Run:5', 'Load:>2', 'Length:>2', 'Conductor:3', 'Protection:4', 'Drop:>2', 'Entry:2'],
					runs.map((run) => runCells(run, book)),
				),
		...(await pictureBlocks(oneLine)),
	];
}

function runCells(run: RunRow, { units }: BuildBook): string[] {
	const rating = run.deviceA === null ? 'rating not known' : `${writeNumber(run.deviceA, 1)} A`;
	const at = run.deviceAt === null ? '' : `, at ${run.deviceAt}`;
	const entry = run.entry === null ? 'not sized' : `No. ${run.entry}`;
	return [
		`${run.from} to ${run.to}`,
		[
			...(run.currentA === null ? [] : [write('current', run.currentA, units, { round: 'up' })]),
			...(run.voltageV === null ? [] : [`at ${write('voltage', run.voltageV, units)}`]),
		].join('\n'),
		run.lengthM === null ? 'not known' : write('length', run.lengthM, units, { round: 'up' }),
		run.conductor ?? 'not known',
		run.device !== null
			? `${run.device} ${rating}${at}`
			: run.unprotected === null
				? 'NONE NAMED'
				: `none: ${run.unprotected}`,
		run.drop === null ? '' : `${writeNumber(run.drop * 100, 1, 'up')} %`,
		run.state === null ? entry : `${entry}\n${run.state}`,
	];
}

async function pictureBlocks(...pictures: readonly (Picture | null)[]): Promise<Block[]> {
	const blocks: Block[] = [];
	for (const picture of pictures) {
		if (picture === null) continue;
		const whole = await drawPicture(picture, 'page');
		for (const figure of slices(whole, tallestFigure)) blocks.push({ kind: 'figure', figure });
	}
	return blocks;
}

function factsBlocks(part: FactsPart | null): Block[] {
	if (part === null || part.facts.length + part.notes.length === 0)
		return [paragraph('Nothing is recorded.')];
	return [{ kind: 'facts', rows: part.facts }, ...part.notes.map(paragraph)];
}

async function energyBlocks(energy: EnergyPart | null): Promise<Block[]> {
	if (energy === null) return factsBlocks(null);
	return [
		...factsBlocks(energy),
		...(energy.loads.length === 0
			? []
			: [
					table(
						['Load:6', 'Count:>2', 'Power of all:>3', 'Hours a day:>3', 'Energy a day:>3', 'Numbers:3'],
						energy.loads.map(loadCells),
					),
				]),
		...(await pictureBlocks(energy.day, energy.week, energy.months)),
	];
}

function loadCells({ name, count, powerW, hoursPerDay, energyWh, mains, assumed }: LoadRow): string[] {
	return [
		mains ? `${name} (mains)` : name,
		String(count),
		powerW === null ? 'not known' : `${writeNumber(powerW, 0, 'up')} W`,
		hoursText({ powerW, hoursPerDay, energyWh }),
		energyWh === null ? 'not known' : `${writeNumber(energyWh, 0, 'up')} Wh`,
		assumed ? 'typical, to be confirmed' : 'given',
	];
}

/** With the share of the time it runs, where power times hours is more than the energy. */
function hoursText({
	powerW,
	hoursPerDay,
	energyWh,
}: Pick<LoadRow, 'powerW' | 'hoursPerDay' | 'energyWh'>): string {
	if (hoursPerDay === null) return 'not known';
	const hours = `${writeNumber(hoursPerDay, 2)} h`;
	const share = runsShare({ powerW, hoursPerDay, energyWh });
	return share < 0.995 ? `${hours} at ${writeNumber(share * 100, 0)} %` : hours;
}

async function weightBlocks({ units }: BuildBook, weights: WeightsPart | null): Promise<Block[]> {
	if (weights === null) return factsBlocks(null);
	const cells = ({ name, massKg, positionM, sideM }: WeightRow) => [
		name,
		write('mass', massKg, units, { round: 'up' }),
		positionM === null ? 'not known' : write('length', positionM, units),
		sideM === null ? '' : sideText(sideM, write('length', Math.abs(sideM), units)),
	];
	const sumKg = weights.items.reduce((sum, { massKg }) => sum + massKg, 0);
	const sum = { label: 'Sum of the items', text: write('mass', sumKg, units, { round: 'up' }) };
	const facts = weights.items.length === 0 ? weights.facts : [...weights.facts, sum];
	return [
		...factsBlocks({ facts, notes: weights.notes }),
		...(weights.items.length === 0
			? []
			: [
					table(
						['Item:9', 'Weight:>3', 'Behind the front axle:>4', 'From the middle:>4'],
						weights.items.map(cells),
					),
				]),
		...(await pictureBlocks(weights.axles)),
	];
}

function sideText(sideM: number, shown: string): string {
	return sideM === 0 ? 'in the middle' : `${shown} ${sideM > 0 ? 'right' : 'left'}`;
}

function handoverBlocks({ handover }: BuildBook): Block[] {
	return [
		handover.limits.length === 0
			? paragraph('No operating limit is recorded.')
			: table(
					['What:6', 'Limit:5', 'Why:9'],
					handover.limits.map(({ what, limit, why }) => [what, limit, why]),
				),
		lead('Cautions:'),
		handover.cautions.length === 0 ? paragraph('None recorded.') : { kind: 'list', items: handover.cautions },
		paragraph(
			'Work on mains, gas and fuel-burning appliances belongs to licensed trades, and local codes decide. This book tells what was calculated and who answers for it; it replaces neither.',
		),
	];
}

async function* registerBlocks({ sheets }: BuildBook): AsyncGenerator<Block> {
	let rows: string[][] = [];
	let any = false;
	const flush = () =>
		table(['No.:2', 'Calculation:5', 'Result:6', 'To confirm:>2', 'Dangers:>2', 'State:3'], rows);
	for await (const record of eachSheet(sheets)) {
		any = true;
		const dangers = record.sizing.findings.filter(({ severity }) => severity === 'danger').length;
		rows.push([
			String(record.number),
			topicTitle(record.sizing.topic),
			record.sizing.headline,
			String(assumptionCount(record).open),
			String(dangers),
			record.state,
		]);
		if (rows.length === registerRows) {
			yield flush();
			rows = [];
		}
	}
	if (rows.length > 0) yield flush();
	if (!any) yield paragraph('None.');
}
