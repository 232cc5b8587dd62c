import type { Reply } from '../message.js';
import { entryLine } from '../render/entry.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { checkBuild } from './check.js';
import { counted, vanLines } from './lines.js';
import { buildsOf } from './names.js';
import { outdatedOf, whyOutdated } from './outdated.js';
import { rerunBuild } from './rerun.js';
import { noBuild, tellBuild } from './tell.js';
import { vanOf } from './van.js';

async function useBuild(turn: Turn, name: string): Promise<Reply> {
	await turn.log.append({
		...turn.entry(name),
		kind: 'channel-bound',
		topic: null,
		follows: null,
		state: null,
		body: { build: name },
	});
	return listed(`This channel now works on build "${name}".`, 'channel');
}

async function listBuilds(turn: Turn): Promise<Reply> {
	const builds = await buildsOf(turn.log, turn.incoming.shop);
	if (builds.length === 0) return listed('This shop has no build yet. Say "/build use NAME".', 'asker');
	const current = await turn.build();
	const lines = builds
		.slice(0, 40)
		.map(
			({ name, told }) =>
				`${name}${name === current ? ' (this channel)' : ''}${told === 0 ? ': nothing told of it yet' : ''}`,
		);
	const more = builds.length > 40 ? [`and ${builds.length - 40} more`] : [];
	return listed(
		[`${counted(builds.length, 'build')} of this shop:`, ...lines, ...more].join('\n'),
		'channel',
	);
}

/** Answers in the list, newest first. */
const shownAnswers = 10;

async function showBuild(turn: Turn): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed(noBuild, 'asker');
	const { shop } = turn.incoming;
	const van = await vanOf(turn.log, shop, build);
	const outdated = await outdatedOf(turn.log, shop, build, van, turn.context());
	const { entries } = await turn.log.find(shop, {
		build,
		kinds: ['exchange'],
		states: ['answered'],
		limit: shownAnswers,
	});
	const stale = outdated.map(({ number, exchange, rests }) => {
		const why = whyOutdated(van, rests, turn.context());
		return `Out of date: No. ${number}, ${exchange.answer.headline} (${why})`;
	});
	const head =
		outdated.length === 0
			? `Build "${build}": ${counted(van.pieces.length, 'piece')}`
			: `Build "${build}": ${counted(van.pieces.length, 'piece')}, ${counted(outdated.length, 'answer')} out of date`;
	const rerun = outdated.length === 0 ? [] : ['"/build rerun" works them out again.'];
	return listed(
		[
			head,
			...vanLines(van, turn.context()),
			...stale,
			...rerun,
			...entries.map((entry) => entryLine(entry)),
		].join('\n'),
		'channel',
	);
}

export const buildVerbs: readonly Verb[] = [
	{
		usage: 'use NAME',
		help: 'this channel works on that build (the van); its answers are kept under that name',
		pattern: /^use\s+(\S.{0,59})$/i,
		run: (turn, match) => useBuild(turn, (match[1] as string).trim().toLowerCase()),
	},
	{
		usage: 'describe TEXT',
		help: 'tells the equipment of the van, or corrects it ("the fridge is 60 W", "drop the cooktop")',
		pattern: /^describe\s+(\S[\s\S]*)$/i,
		run: (turn, match) => tellBuild(turn, (match[1] as string).trim()),
	},
	{
		usage: 'check',
		help: 'what does not fit together, dangers first, and what is not known',
		pattern: /^check$/i,
		run: checkBuild,
	},
	{
		usage: 'show',
		help: 'the equipment of the build, its newest answers and those out of date',
		pattern: /^(?:show)?$/i,
		run: showBuild,
	},
	{
		usage: 'rerun',
		help: 'works out again what is out of date',
		pattern: /^re-?run$/i,
		run: rerunBuild,
	},
	{ usage: 'list', help: "the shop's builds", pattern: /^list$/i, run: listBuilds },
];
export const buildExample = '/build use heron';
