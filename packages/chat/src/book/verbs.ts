/** "/log export" and "/log picture": the papers of the channel's build. */

import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import { named, pictureOfAnswer, picturesReply } from '../review/picture.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { bookOf } from './book.js';
import { type BookFormat, bookFiles, bookFormats } from './files.js';

const noBuild = 'No build is chosen for this channel. Say "/build use NAME".';

function unknownBuild(build: string): Reply {
	return listed(`There is nothing of build "${build}" in this shop's log yet.`, 'asker');
}

async function exportBook(turn: Turn, format: BookFormat): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed(noBuild, 'asker');
	const files = await bookFiles(turn.log, {
		shop: turn.incoming.shop,
		build,
		format,
		context: turn.context(),
		date: turn.today(),
		progress: (share) => turn.progress(`Writing the book of build "${build}": ${Math.floor(share * 100)} %`),
	});
	if (files === null) return unknownBuild(build);
	const names = files.map(({ name }) => name).join(', ');
	return { ...listed(`The book of build "${build}": ${names}`, 'channel'), files };
}

/** The pictures of the build itself: its wiring, its axles, and its energy where it was asked about. */
async function picturesOfBuild(turn: Turn, which: string): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed(noBuild, 'asker');
	const book = await bookOf(turn.log, {
		shop: turn.incoming.shop,
		build,
		context: turn.context(),
		date: turn.today(),
	});
	if (book === null) return unknownBuild(build);
	const { oneLine, weights, energy } = book;
	const pictures = [oneLine, weights?.axles, energy?.day, energy?.week, energy?.months];
	return await picturesReply(named(pictures.flatMap((picture) => picture ?? [])), which, {
		about: `build "${build}"`,
		stem: build,
		none: `Build "${build}" has no picture yet: tell its battery bank for the wiring, its size and weights for the axles.`,
	});
}

export const bookVerbs: readonly Verb[] = [
	{
		usage: 'export html|pdf|csv|json',
		help: "the book of the channel's build as a file",
		pattern: /^export(?:\s+(\S{1,40}))?$/i,
		run: async (turn, match) => {
			const asked = (match[1] ?? 'pdf').toLowerCase();
			const format = bookFormats.find((one) => one === asked);
			if (format === undefined) {
				return listed(`"${asked}" is no format of the book. It is ${bookFormats.join(', ')}.`, 'asker');
			}
			return await exportBook(turn, format);
		},
	},
	{
		usage: 'picture [128] [WHICH]',
		help: null,
		pattern: /^picture\s+#?(\d{1,9})(?:\s+(\S{1,40}))?$/i,
		run: (turn, match) => pictureOfAnswer(turn, Number(match[1]), match[2] ?? ''),
	},
	{
		usage: 'picture wiring',
		help: null,
		pattern: /^picture(?:\s+(\S{1,40}))?$/i,
		run: (turn, match) => picturesOfBuild(turn, match[1] ?? ''),
	},
];
