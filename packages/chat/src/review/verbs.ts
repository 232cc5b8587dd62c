import { topicNamed } from '@lugbook/core';
import type { Entry } from '@lugbook/log';
import { exchangeOf } from '../memory.js';
import type { Reply } from '../message.js';
import { entryLine } from '../render/entry.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { answerAt, noAnswer } from './about.js';
import { type Review, reviewsOf } from './acts.js';
import { leadVerbs } from './leads.js';
import { replaceVerb } from './replace.js';
import { report } from './report.js';
import { sheetRecordOf } from './sheet.js';
import { stateWords } from './shown.js';
import { signVerbs } from './sign.js';

async function sheet(turn: Turn, number: number): Promise<Reply> {
	const about = await answerAt(turn, number);
	if (about === null) return listed(noAnswer(number), 'asker');
	const record = await sheetRecordOf(turn.log, about);
	if (record === null) return listed(`No. ${number} has no calculation to show.`, 'asker');
	const { sheetText } = await report();
	return listed(sheetText(record), 'channel');
}

/** Unsigned answers of the build, those with a danger first, then by the system they belong to. */
async function review(turn: Turn): Promise<Reply> {
	const build = await turn.build();
	const { shop, channel } = turn.incoming;
	const { entries } = await turn.log.find(shop, {
		...(build === null ? { channel } : { build }),
		kinds: ['exchange'],
		states: ['answered'],
		limit: 200,
	});
	const reviews = await reviewsOf(turn.log, shop, entries);
	const open: { entry: Entry; grave: number; system: string; said: string }[] = [];
	for (const entry of entries) {
		const found = reviews.get(entry.number) as Review;
		if (['signed', 'rejected', 'replaced'].includes(found.state)) continue;
		const findings = exchangeOf(entry)?.answer.findings ?? [];
		const grave = findings.some(({ severity }) => severity === 'danger')
			? 0
			: findings.some(({ severity }) => severity === 'warning')
				? 1
				: 2;
		const system = entry.topic === null ? 'other' : (topicNamed(entry.topic)?.system ?? 'other');
		open.push({ entry, grave, system, said: stateWords(found) });
	}
	const where = build === null ? 'this channel' : `build "${build}"`;
	if (open.length === 0) return listed(`Nothing is unsigned in ${where}.`, 'channel');
	open.sort(
		(a, b) => a.grave - b.grave || a.system.localeCompare(b.system) || a.entry.number - b.entry.number,
	);
	const lines = open.slice(0, 30).map(({ entry, grave, system, said }) => {
		const word = grave === 0 ? 'DANGER ' : grave === 1 ? 'warning ' : '';
		return `${word}${system}: ${entryLine(entry)}${said}`;
	});
	const more = open.length > lines.length ? [`and ${open.length - lines.length} more`] : [];
	return listed([`${open.length} unsigned in ${where}`, ...lines, ...more].join('\n'), 'channel');
}

export const reviewVerbs: readonly Verb[] = [
	{
		usage: 'review',
		help: 'what is unsigned in the build, dangers first',
		pattern: /^review$/i,
		run: review,
	},
	{
		usage: 'sheet 128',
		help: null,
		pattern: /^sheet\s+#?([1-9]\d{0,8})$/i,
		run: (turn, match) => sheet(turn, Number(match[1])),
	},
	...signVerbs,
	replaceVerb,
	...leadVerbs,
];
