import { vanVerbs } from '../build/verbs.js';
import type { Reply } from '../message.js';
import { entryLine } from '../render/entry.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';

const use: Verb = {
	usage: 'use NAME',
	help: 'this channel works on that build (the van); its answers are kept under that name',
	pattern: /^use\s+(\S.{0,59})$/i,
	run: async (turn, match) => {
		const name = (match[1] as string).trim().toLowerCase();
		await turn.log.append({
			...turn.entry(name),
			kind: 'channel-bound',
			topic: null,
			follows: null,
			state: null,
			body: { build: name },
		});
		return listed(`This channel now works on build "${name}".`, 'channel');
	},
};

const show: Verb = {
	usage: 'show',
	help: 'the build of this channel and its newest answers',
	pattern: /^(?:show)?$/i,
	run: showBuild,
};

async function showBuild(turn: Turn): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed('No build is chosen for this channel. Say "/build use NAME".', 'asker');
	const { entries } = await turn.log.find(turn.incoming.shop, { build, kinds: ['exchange'], limit: 10 });
	return listed([`Build "${build}"`, ...entries.map(entryLine)].join('\n'), 'channel');
}

export const buildVerbs: readonly Verb[] = [use, ...vanVerbs, show];
export const buildExample = '/build use heron';
