import {
	type Context,
	changed,
	checkVan,
	equipmentOf,
	labelOf,
	type Piece,
	showValue,
	type Van,
} from '@lugbook/core';
import { changesFor, describe } from '@lugbook/language';
import type { Json } from '@lugbook/log';
import type { Part, Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { bodyOfChanges, vanOf } from './van.js';

const noBuild = 'No build is chosen for this channel. Say "/build use NAME".';

/** A piece as understood: "fridge: power 60 W, 24 h". */
function pieceLine(piece: Piece, context: Context): string {
	const { fields } = equipmentOf(piece.kind);
	const values = Object.entries(piece.values).flatMap(([name, value]) => {
		const field = fields[name];
		return field === undefined || name === 'name'
			? []
			: [`${field.meta.label} ${showValue(field, value, context)}`];
	});
	return values.length === 0 ? labelOf(piece) : `${labelOf(piece)}: ${values.join(', ')}`;
}

function vanLines(van: Van, context: Context): string[] {
	const absent = van.absent.map((kind) => equipmentOf(kind).label);
	return [
		...van.pieces.map((piece) => pieceLine(piece, context)),
		...(absent.length === 0 ? [] : [`Said not to be there: ${absent.join(', ')}`]),
	];
}

/** Takes in a description, or a correction to one, and says what was understood. */
async function describeBuild(turn: Turn, text: string): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed(noBuild, 'asker');
	const description = describe(text, turn.context());
	if (description.tooLong)
		return listed('That description is too long for me: send it in two parts.', 'asker');
	const before = await vanOf(turn.log, turn.incoming.shop, build);
	const { changes, notes, unsure } = changesFor(before, description);
	const van = changed(before, changes);
	const unread =
		description.unread.length === 0
			? []
			: [`Not used: ${description.unread.map((words) => `"${words}"`).join(', ')}`];
	const open = unsure.length === 0 ? [] : [`Left open: ${unsure.join(', ')}`];
	if (changes.length === 0) {
		return listed(['I found no equipment in that.', ...notes, ...unread].join('\n'), 'asker');
	}
	await turn.log.append({
		...turn.entry(build),
		kind: 'build-changed',
		topic: null,
		follows: null,
		state: null,
		body: JSON.parse(JSON.stringify(bodyOfChanges(changes))) as Json,
	});
	const lines = [
		`Build "${build}" as understood: ${van.pieces.length} pieces`,
		...vanLines(van, description.context),
		...notes,
		...open,
		...unread,
	];
	return listed(lines.join('\n'), 'channel');
}

/** Runs the cross-checks on what is known of the build: dangers first, then what is not known. */
async function checkBuild(turn: Turn): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed(noBuild, 'asker');
	const van = await vanOf(turn.log, turn.incoming.shop, build);
	if (van.pieces.length === 0)
		return listed(`Nothing is known of build "${build}" yet. Tell it with "/build describe ...".`, 'asker');
	const check = checkVan(van, turn.context());
	const count = (severity: string) =>
		check.findings.filter((finding) => finding.severity === severity).length;
	const head = `Build "${build}": ${count('danger')} dangers, ${count('warning')} warnings, ${count('note')} notes; ${check.notKnown.length} things not known`;
	const reply = listed(head, 'channel', {
		findings: check.findings.map(({ code, severity, text, source }) => ({ code, severity, text, source })),
	});
	const findings = check.findings.map((finding): Part => {
		const rests = finding.rests.length === 0 ? '' : ` (${finding.rests.join(', ')})`;
		return { kind: finding.severity, text: `${finding.text}${rests}`, fold: finding.severity === 'note' };
	});
	const questions = check.notKnown.map(
		({ question }): Part => ({ kind: 'list', text: `Not known: ${question}`, fold: false }),
	);
	return { ...reply, parts: [...reply.parts, ...findings, ...questions] };
}

export const vanVerbs: readonly Verb[] = [
	{
		usage: 'describe TEXT',
		help: 'tells the equipment of the van, or corrects it ("the fridge is 60 W")',
		pattern: /^describe\s+(\S[\s\S]*)$/i,
		run: (turn, match) => describeBuild(turn, (match[1] as string).trim()),
	},
	{
		usage: 'check',
		help: 'what does not fit together, dangers first, and what is not known',
		pattern: /^check$/i,
		run: checkBuild,
	},
];
