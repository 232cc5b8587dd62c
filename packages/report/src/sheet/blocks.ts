import { acceptedBy, calculationVersion, type Severity, type Sizing, topicNamed } from '@lugbook/core';
import { type Block, facts, type HeadingBlock, heading, lead, paragraph, table } from '../document/block.js';
import type { Figure } from '../picture/figure.js';
import { checksOf } from './checks.js';
import { noLimitByTopic } from './limits.js';
import type { InputOrigin, SheetRecord, SheetSignature } from './record.js';
import { computedText, leftText, roundingOf } from './units.js';

export const severityWord: Readonly<Record<Severity, string>> = {
	danger: 'Danger',
	warning: 'Warning',
	note: 'Note',
};

/** Where links to a sheet point. */
function sheetId(number: number): string {
	return `sheet-${number}`;
}

export function topicTitle(topic: string): string {
	return topicNamed(topic)?.title ?? topic;
}

/** An instant as written in the log, to the minute; something else is left as it is. */
export function timeText(at: string): string {
	const [, day, minute] = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)(?::\d\d(?:\.\d+)?)?Z$/.exec(at) ?? [];
	return day === undefined ? at : `${day} ${minute} UTC`;
}

export function nameText(name: string | null): string {
	return name ?? 'name erased on request';
}

/** How many assumptions there are and how many still want confirming. */
export function assumptionCount({ sizing }: Pick<SheetRecord, 'sizing'>): {
	readonly all: number;
	readonly open: number;
} {
	const { assumed } = sizing;
	return { all: assumed.length, open: assumed.filter(({ confirm }) => confirm).length };
}

function countText(record: SheetRecord): string {
	const { all, open } = assumptionCount(record);
	if (all === 0) return 'None: every input was given.';
	const noun = all === 1 ? '1 assumption' : `${all} assumptions`;
	return open === 0
		? `${noun}, none still to be confirmed.`
		: `${noun}, ${open} STILL TO BE CONFIRMED before building.`;
}

/**
 * The calculation sheet of one logged answer, in the order in which another person can follow it by hand.
 * @param level of its title; its sections are one lower
 * @param figures the record's pictures, drawn
 */
export function sheetBlocks(record: SheetRecord, level: 1 | 3, figures: readonly Figure[] = []): Block[] {
	const below = (level + 1) as HeadingBlock['level'];
	const sections: [title: string, blocks: readonly Block[]][] = [
		['Purpose', purposeBlocks(record)],
		['Inputs', inputBlocks(record)],
		['Assumptions', assumptionBlocks(record)],
		['Method', methodBlocks(record)],
		['Working', workingBlocks(record.sizing)],
		['Result', resultBlocks(record.sizing, figures)],
		['Checks against limits', checkBlocks(record)],
		['How close it is', closenessBlocks(record)],
		['Findings', findingBlocks(record.sizing)],
		['Cautions and remaining risks', cautionBlocks(record)],
		['Calculations it rests on', record.sizing.chain.flatMap((one) => chainBlocks(one, 1))],
		['Asked, computed, checked, signed', signatureBlocks(record)],
		['Revision', revisionBlocks(record)],
		['Versions and place in the log', placeBlocks(record)],
	];
	const shown = sections.filter(([, blocks]) => blocks.length > 0);
	return [
		heading(level, `No. ${record.number}: ${topicTitle(record.sizing.topic)}`, sheetId(record.number)),
		...headBlocks(record),
		...shown.flatMap(([title, blocks], index) => [heading(below, `${index + 1} ${title}`), ...blocks]),
	];
}

/** What a hurried reader needs: what it is about, the decision, every danger, what is still open. */
function headBlocks(record: SheetRecord): Block[] {
	const { sizing } = record;
	const state = record.stateReason === null ? record.state : `${record.state}: ${record.stateReason}`;
	return [
		facts([
			['Shop', record.shop],
			['Build', record.build ?? 'none named'],
			['Vehicle', record.vehicle],
			['State', state.toUpperCase().slice(0, 1) + state.slice(1)],
			['Replaced by', record.replacedBy === null ? null : `No. ${record.replacedBy}`],
			[
				'Replaces',
				record.revision === null ? null : `No. ${record.revision.replaces}: ${record.revision.reason}`,
			],
			['Assumptions', countText(record)],
		]),
		{ kind: 'box', word: 'Result', lines: [sizing.headline], weight: 'strong' },
		...sizing.findings
			.filter(({ severity }) => severity === 'danger')
			.map(
				({ text }): Block => ({ kind: 'box', word: severityWord.danger, lines: [text], weight: 'strong' }),
			),
	];
}

function purposeBlocks({ sizing, decision }: SheetRecord): Block[] {
	const topic = topicNamed(sizing.topic);
	return [
		paragraph(topic?.purpose ?? `Answers a question of the topic "${sizing.topic}".`),
		...(decision === null ? [] : [paragraph(`It supports this decision: ${decision}`)]),
	];
}

function originText(from: InputOrigin): string {
	const number = from.kind !== 'said' && from.entry !== null ? `, No. ${from.entry}` : '';
	switch (from.kind) {
		case 'said':
			return `said: "${from.words}"`;
		case 'build':
			return `the build${number}`;
		case 'thread':
			return `earlier in the thread${number}`;
	}
}

function inputBlocks({ inputs, typed, notes, unread, asked }: SheetRecord): Block[] {
	const question =
		typed === null ? 'The question as typed was erased on request.' : `Asked in these words: "${typed}"`;
	const blocks: Block[] = [
		paragraph(question),
		inputs.length === 0
			? paragraph('No input was given.')
			: table(
					['Input:5', 'Value:7', 'Where from:8'],
					inputs.map(({ label, value, text, from, basis }) => [
						label,
						// The items of a list stand under one another.
						typeof value === 'object' ? text.replaceAll('; ', '\n') : text,
						[originText(from), ...(basis === null ? [] : [basis])].join('; '),
					]),
				),
	];
	if (inputs.some(({ from }) => from.kind === 'said'))
		blocks.push(paragraph(`Said by ${nameText(asked.name)}.`));
	if (notes.length > 0) blocks.push(paragraph(`How it was taken: ${notes.join(' ')}`));
	if (unread.length > 0) {
		blocks.push(paragraph(`Words that were not used: ${unread.map((word) => `"${word}"`).join(', ')}.`));
	}
	return blocks;
}

function assumptionBlocks(record: SheetRecord): Block[] {
	const { sizing } = record;
	if (sizing.assumed.length === 0) return [paragraph(countText(record))];
	return [
		lead(countText(record)),
		table(
			['Assumed:5', 'Value:>4', 'Why:7', 'To confirm:4'],
			// What still wants confirming stands first.
			sizing.assumed
				.toSorted((a, b) => Number(b.confirm) - Number(a.confirm))
				.map(({ label, text, why, confirm }) => [label, text, why, confirm ? 'YES, before building' : 'no']),
		),
		...(assumptionCount(record).open === 0
			? []
			: [
					paragraph(
						'An assumption is confirmed by asking again with the value as found: in the new answer it is an input.',
					),
				]),
	];
}

function methodBlocks({ sizing, inputs, context, deviations }: SheetRecord): Block[] {
	const topic = topicNamed(sizing.topic);
	const blocks: Block[] = [];
	if (topic !== null) blocks.push(paragraph(topic.method));
	const rules = context.region === 'us' ? 'United States' : 'Europe';
	blocks.push(lead(`Rule set: ${rules}. Documents and clauses used:`), {
		kind: 'list',
		items: sizing.sources,
	});
	// The range of what went in: beyond it the method is not used.
	const used = new Set([...inputs, ...sizing.assumed].map(({ name }) => name));
	const ranges = Object.entries(topic?.fields ?? {}).flatMap(([name, field]) =>
		used.has(name) && ['quantity', 'count', 'number'].includes(field.type.sort)
			? [acceptedBy(field, context)]
			: [],
	);
	if (ranges.length > 0) blocks.push(lead('Range of validity:'), { kind: 'list', items: ranges });
	blocks.push(
		deviations.length === 0
			? paragraph('Deviations from these rules: none recorded.')
			: lead('Deviations from these rules:'),
	);
	if (deviations.length > 0) blocks.push({ kind: 'list', items: deviations });
	return blocks;
}

function workingBlocks({ working }: Sizing): Block[] {
	if (working.length === 0) return [];
	return [
		table(
			['Step:4', 'Symbols, then the numbers put in:8', 'Value:>3', 'Source:5'],
			working.map(({ label, formula, substituted, value, unit, source }) => [
				label,
				`${formula}\n${putIn(substituted, computedText(value, unit))}`,
				computedText(value, unit),
				source,
			]),
		),
		paragraph('Values in the working are not rounded; six figures of them are shown.'),
	];
}

/** Numbers put in stand behind a "="; what only says where they come from stands in brackets. */
function putIn(substituted: string, computed: string): string {
	const isSum = / [×·/+−≤≥-] |√/.test(substituted);
	const figure = /^-?[\d.]+/.exec(substituted)?.[0];
	const isValue = figure !== undefined && figure === /^-?[\d.]+/.exec(computed)?.[0];
	return isSum || isValue ? `= ${substituted}` : `(${substituted})`;
}

function resultBlocks(
	{ headline, because, governedBy, results }: Sizing,
	figures: readonly Figure[],
): Block[] {
	return [
		{
			kind: 'box',
			word: 'Result',
			lines: [headline, ...(because === null ? [] : [because])],
			weight: 'strong',
		},
		...(governedBy === null ? [] : [paragraph(`What decides: ${governedBy}.`)]),
		resultTable(results),
		paragraph(
			'Rounding: nothing is rounded before it is shown. A size is taken up to the next standard one that passes every check; capacities, reserves and what is left round down; a limit is never met by rounding.',
		),
		...figures.map((figure): Block => ({ kind: 'figure', figure })),
	];
}

function resultTable(results: Sizing['results']): Block {
	return table(
		['Result:7', 'Shown:>4', 'Computed:>5', 'Rounding:4'],
		results.map(({ label, text, value, unit }) => [
			label,
			text,
			typeof value === 'number' ? computedText(value, unit) : '',
			roundingOf(value, unit, text) ?? '',
		]),
	);
}

function checkBlocks(record: SheetRecord): Block[] {
	const checks = checksOf(record);
	if (checks.length === 0)
		return [
			paragraph(
				noLimitByTopic[record.sizing.topic] ??
					'No limit with a margin is recorded for this topic; see the findings.',
			),
		];
	return [
		table(
			['Check:7', 'Value:>3', 'Limit:>4', 'Margin:>3', 'Holds:3'],
			checks.map(({ what, value, limit, margin, holds }) => [
				what,
				value,
				limit,
				margin,
				holds ? 'yes' : 'NO',
			]),
		),
	];
}

function closenessBlocks({ sizing, inputs }: SheetRecord): Block[] {
	const blocks: Block[] = [];
	if (sizing.tipping.length > 0) {
		blocks.push(
			lead('The choice stays the same while each of these, by itself, moves no further than this:'),
			table(
				['Input:6', 'Now:>4', 'Holds:5', 'Margin:>5'],
				sizing.tipping.map(({ name, label, value, unit, text }) => {
					const now = nowOf(name, unit, inputs, sizing);
					const shown = now === null ? null : marginTo({ value, unit, text }, now);
					return [label, now?.text ?? '', text, shown ?? ''];
				}),
			),
		);
	}
	if (sizing.neighbours.length > 0) {
		blocks.push(
			table(
				['Neighbouring choice:7', 'Passes:3', 'What it would give:10'],
				sizing.neighbours.map(({ choice, passes, text }) => [choice, passes ? 'yes' : 'NO', text]),
			),
		);
	}
	return blocks;
}

interface Amount {
	readonly value: number;
	readonly unit: string | null;
	readonly text: string;
}

/** The input as it is, or as it was worked out: "current" of a run for which the power was given. */
function nowOf(
	name: string,
	unit: string | null,
	inputs: SheetRecord['inputs'],
	{ assumed, results }: Sizing,
): Amount | null {
	const worked = results.filter((one) => one.unit === unit && name.replace(/[A-Z]+[a-z]?$/, '') === one.name);
	const found = [...inputs, ...assumed].find((one) => one.name === name) ?? worked[0];
	return typeof found?.value === 'number' ? { value: found.value, unit, text: found.text } : null;
}

/** How far it may still move; what is past it already is said so. */
function marginTo(limit: Amount, now: Amount): string | null {
	const isFloor = /^(?:for )?down to/.test(limit.text);
	const margin = isFloor ? now.value - limit.value : limit.value - now.value;
	const shown = isFloor ? { value: limit.text, limit: now.text } : { value: now.text, limit: limit.text };
	const left = leftText(margin, limit.unit, shown);
	return left?.startsWith('-') ? `beyond by ${left.slice(1)}` : left;
}

function findingBlocks({ findings }: Sizing): Block[] {
	if (findings.length === 0) return [paragraph('None.')];
	return [
		table(
			['Severity:3', 'Finding:11', 'Source:6'],
			findings.map(({ severity, text, source }) => [
				severity === 'note' ? severityWord.note : severityWord[severity].toUpperCase(),
				text,
				source,
			]),
		),
	];
}

function cautionBlocks({ sizing }: SheetRecord): Block[] {
	return sizing.cautions.length === 0 ? [] : [{ kind: 'list', items: sizing.cautions }];
}

/** Deeper than this the chain is named, not printed: no topic calls so far down. */
const deepest = 6;

function chainBlocks(sizing: Sizing, depth: number): Block[] {
	const blocks: Block[] = [lead(`${'> '.repeat(depth - 1)}${topicTitle(sizing.topic)}: ${sizing.headline}`)];
	if (depth > deepest) return blocks;
	return [
		...blocks,
		...workingBlocks(sizing).slice(0, 1),
		...(sizing.results.length === 0 ? [] : [resultTable(sizing.results)]),
		...sizing.chain.flatMap((one) => chainBlocks(one, depth + 1)),
	];
}

function signatureBlocks({ asked, rerun, signatures, versions, state }: SheetRecord): Block[] {
	const rows = [
		[
			'asked',
			nameText(asked.name),
			timeText(asked.at),
			`put the question${rerun === null ? '' : ` (No. ${rerun.askedIn})`}`,
		],
		...(rerun === null
			? []
			: [
					[
						'asked again',
						nameText(rerun.name),
						timeText(rerun.at),
						'had it worked out again as the build then stood; the question is unchanged',
					],
				]),
		[
			'computed',
			`Lugbook ${versions.calculation}`,
			timeText(rerun?.at ?? asked.at),
			'calculation by the program, not checked by a person',
		],
		...signatures.map((one) => [one.act, nameText(one.name), timeText(one.at), meaningText(one)]),
	];
	// What was signed and withdrawn is not signed.
	const withdrawnAt = signatures.findLastIndex(({ act }) => act === 'withdrawn');
	const holding = signatures.slice(withdrawnAt + 1);
	const missing = (['checked', 'signed'] as const).filter((act) => !holding.some((one) => one.act === act));
	// A signature covers the check where the shop asks for no separate one.
	const open = holding.some(({ act }) => act === 'signed') ? [] : missing;
	return [
		table(['Act:4', 'By:5', 'When:4', 'Meaning:7'], rows),
		...(open.length === 0 ? [] : [paragraph(`Not yet ${open.join(', not yet ')}. State: ${state}.`)]),
	];
}

function meaningText({ meaning, ownQuestion, entry }: SheetSignature): string {
	const own = ownQuestion ? ' (signed by the one who asked, as this shop allows)' : '';
	return `${meaning}${own}${entry === null ? '' : ` (No. ${entry})`}`;
}

function revisionBlocks({ revision, replacedBy, recomputed }: SheetRecord): Block[] {
	const again =
		recomputed === null
			? null
			: recomputed.differences.length === 0
				? `with version ${recomputed.version}, ${timeText(recomputed.at)}: the same numbers`
				: `with version ${recomputed.version}, ${timeText(recomputed.at)}: DIFFERENT: ${recomputed.differences.join('; ')}`;
	if (revision === null && replacedBy === null && again === null)
		return [paragraph('First answer to this question; nothing has replaced it.')];
	return [
		facts([
			['Replaces', revision === null ? null : `No. ${revision.replaces}`],
			['Reason', revision?.reason ?? null],
			['Touches', revision?.affects.join('; ') ?? null],
			['Replaced by', replacedBy === null ? null : `No. ${replacedBy}`],
			['Computed again', again],
		]),
	];
}

function placeBlocks({ number, versions, place }: SheetRecord): Block[] {
	const later =
		versions.calculation === calculationVersion ? '' : ` (this program has ${calculationVersion})`;
	return [
		facts([
			['Calculation and tables', `version ${versions.calculation}${later}`],
			['Sheet written by', `Lugbook ${versions.program}`],
			['Entry in the log', `No. ${number}`],
			['Channel', place.channel],
			['Thread', place.thread],
			['Hash of the entry', place.hash],
			['Hash before it', place.previousHash],
		]),
	];
}
