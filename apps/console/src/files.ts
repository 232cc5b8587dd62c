import { existsSync } from 'node:fs';
import { open, rm } from 'node:fs/promises';
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
		await writeWhole(path, bytes instanceof Uint8Array ? [bytes] : bytes);
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

/** Writes a file that is not there yet; what failed half-way is taken away again. Others may not read it. */
export async function writeWhole(
	path: string,
	pieces: Iterable<string | Uint8Array> | AsyncIterable<string | Uint8Array>,
): Promise<void> {
	// A file that appeared meanwhile is not overwritten: opening fails, and it stays.
	const file = await open(path, 'wx', 0o600);
	try {
		await pipeline(Readable.from(pieces), file.createWriteStream());
	} catch (error) {
		await rm(path, { force: true });
		throw error;
	}
}
