import { createWriteStream, existsSync } from 'node:fs';
import { basename, extname, join, resolve } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ReplyFile } from '@lugbook/chat';

/**
 * Writes what goes along with a reply into a folder and never over another file.
 * @returns where each file is, and what it shows
 */
export async function writeFiles(
	files: readonly ReplyFile[],
	folder: string,
): Promise<{ readonly path: string; readonly alternativeText: string }[]> {
	const written: { path: string; alternativeText: string }[] = [];
	for (const { name, bytes, alternativeText } of files) {
		const path = freePath(folder, basename(name));
		// A file that appeared meanwhile is not overwritten either.
		await pipeline(
			Readable.from(bytes instanceof Uint8Array ? [bytes] : bytes),
			createWriteStream(path, { flags: 'wx' }),
		);
		written.push({ path, alternativeText });
	}
	return written;
}

/** "heron.pdf", or "heron-2.pdf" where that is taken. */
function freePath(folder: string, name: string): string {
	const extension = extname(name);
	const stem = basename(name, extension);
	for (let number = 1; ; number += 1) {
		const path = resolve(join(folder, number === 1 ? name : `${stem}-${number}${extension}`));
		if (!existsSync(path)) return path;
	}
}
