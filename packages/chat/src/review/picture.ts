import type { Figure, Picture } from '@lugbook/report';
import type { Reply, ReplyFile } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import { report } from './report.js';
import { sheetRecordOf } from './sheet.js';

/** Words by which the pictures of an answer or a build are asked for, in the order the pictures come. */
const wordsOfKind: Readonly<Record<Picture['kind'], readonly string[]>> = {
	drop: ['drop'],
	charge: ['day', 'week'],
	months: ['months'],
	axles: ['axles'],
	'one-line': ['wiring'],
	swing: ['force'],
};

/** A picture under the word it is asked for by. */
export interface NamedPicture {
	readonly word: string;
	readonly picture: Picture;
}

export function named(pictures: readonly Picture[]): NamedPicture[] {
	const seen = new Map<string, number>();
	return pictures.map((picture) => {
		const words = wordsOfKind[picture.kind];
		const at = seen.get(picture.kind) ?? 0;
		seen.set(picture.kind, at + 1);
		return { word: words[at] ?? `${words[0]}-${at + 1}`, picture };
	});
}

/** "/log picture 128 [WHICH]": the pictures of an answer as files. */
export async function pictureOfAnswer(turn: Turn, number: number, which: string): Promise<Reply> {
	const entry = await turn.log.entry(turn.incoming.shop, number);
	const record = entry === null ? null : await sheetRecordOf(turn.log, entry);
	if (entry === null || record === null) {
		return listed(`There is no answer No. ${number} in this shop's log.`, 'asker');
	}
	return await picturesReply(named(record.pictures), which, {
		about: `No. ${number}`,
		stem: `${entry.build ?? 'answer'}-${number}`,
		none: `No. ${number} (${entry.topic}) has no picture. Runs, payloads, simulations, solar answers with a need and gas springs with both mounts have one.`,
	});
}

/** The pictures asked for, as PNG with their words; or what there is instead. */
export async function picturesReply(
	pictures: readonly NamedPicture[],
	which: string,
	{ about, stem, none }: { readonly about: string; readonly stem: string; readonly none: string },
): Promise<Reply> {
	if (pictures.length === 0) return listed(none, 'asker');
	const asked = which.toLowerCase();
	const chosen = asked === '' ? pictures : pictures.filter(({ word }) => word === asked);
	if (chosen.length === 0) {
		const words = pictures.map(({ word }) => `"${word}"`).join(', ');
		return listed(`There is no picture "${which.slice(0, 40)}" of ${about}. There is ${words}.`, 'asker');
	}
	const { drawPicture, figurePng } = await report();
	const drawn: { word: string; figure: Figure }[] = [];
	for (const { word, picture } of chosen) drawn.push({ word, figure: await drawPicture(picture) });
	const titles = drawn.map(({ figure }) => figure.title).join('; ');
	const reply = listed(`${drawn.length === 1 ? 'Picture' : 'Pictures'} of ${about}: ${titles}`, 'channel');
	const words = drawn.map(
		({ figure }) => ({ kind: 'list', text: figure.alt, fold: true, isPaper: true }) as const,
	);
	const files = drawn.map(
		({ word, figure }): ReplyFile => ({
			name: `${fileStem(stem)}-${word}.png`,
			mediaType: 'image/png',
			alternativeText: figure.alt,
			bytes: figurePng(figure),
		}),
	);
	return { ...reply, parts: [...reply.parts, ...words], files };
}

/** A name that every file system takes. */
export function fileStem(text: string): string {
	const safe = text
		.normalize('NFKC')
		.replace(/[^\p{L}\p{N}]+/gu, '-')
		.replace(/^-|-$/g, '');
	return safe === '' ? 'build' : safe.slice(0, 80);
}
