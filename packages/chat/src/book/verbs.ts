/** "/log export" and "/log picture": the papers of the channel's build. */

import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import { named, pictureOfAnswer, picturesReply } from '../review/picture.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { bookOf } from './book.js';
import {
	aboutFormat,
	type BookFilesOptions,
	type BookFormat,
	bookFiles,
	bookFormats,
	partIn,
	TooManySheets,
} from './files.js';
import { signBuildVerb } from './sign-build.js';

const noBuild = 'No build is chosen for this channel. Say "/build use NAME".';

function unknownBuild(build: string): Reply {
	return listed(`There is nothing of build "${build}" in this shop's log yet.`, 'asker');
}

async function exportBook(turn: Turn, format: BookFormat, part: BookFilesOptions['part']): Promise<Reply> {
	const build = await turn.build();
	if (build === null) return listed(noBuild, 'asker');
	const made = await bookFiles(turn.log, {
		shop: turn.incoming.shop,
		build,
		format,
		part: part ?? null,
		context: turn.context(),
		date: turn.today(),
		progress: (share) => turn.progress(`Writing the book of build "${build}": ${Math.floor(share * 100)} %`),
	}).catch((error: unknown) => {
		if (error instanceof TooManySheets) return `${error.message} Say "/log export pdf ${error.piece}".`;
		throw error;
	});
	if (typeof made === 'string') return listed(made, 'asker');
	if (made === null) return unknownBuild(build);
	const files = made;
	const names = files.map(({ name }) => name).join(', ');
	const about = await aboutFormat(format);
	const told = [`The book of build "${build}": ${names}`, ...(about === null ? [] : [about])];
	return { ...listed(told.join('\n'), 'channel'), files };
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
		pattern: /^export(?:\s+(\S{1,40}))?(?:\s+(\S{1,40}))?$/i,
		run: async (turn, match) => {
			const asked = (match[1] ?? 'pdf').toLowerCase();
			const format = bookFormats.find((one) => one === asked);
			if (format === undefined) {
				return listed(`"${asked}" is no format of the book. It is ${bookFormats.join(', ')}.`, 'asker');
			}
			const numbers = match[2] ?? '';
			const part = partIn(numbers);
			if (numbers !== '' && part === null) {
				return listed(
					`"${numbers}" names no answers. Say the first and the last number: "/log export ${format} 1..400".`,
					'asker',
				);
			}
			return await exportBook(turn, format, part);
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
	signBuildVerb,
];
