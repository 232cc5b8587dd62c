/** The files of a reply in memory, as far as the platform takes them where the reply is shown. */

import { setImmediate as turnOfTheLoop } from 'node:timers/promises';
import type { Part, Reply, ReplyFile } from '../message.js';
import { fileTooLarge } from './words.js';

/** What files a platform takes beside one reply. */
export interface FileRoom {
	/** of one file */
	readonly fileBytes: number;
	/** of all files together */
	readonly allBytes: number;
	readonly files: number;
}

/** A file of which every byte is there. */
export interface LoadedFile extends ReplyFile {
	readonly bytes: Uint8Array;
}

/** A reply with its files in memory. */
export interface LoadedReply extends Reply {
	readonly files?: readonly LoadedFile[];
}

/** While a file is made, everybody else of this process has a turn at least as often as this [ms]. */
const TURN_MS = 20;

/** Reads the files of a reply; it says itself which of them do not fit and how to get those. */
export async function loaded(reply: Reply, room: FileRoom): Promise<LoadedReply> {
	const { files, ...rest } = reply;
	if (files === undefined) return rest;
	const there: LoadedFile[] = [];
	const left: Part[] = [];
	let bytesLeft = room.allBytes;
	for (const file of files) {
		const bytes = there.length < room.files ? await bytesOf(file, Math.min(room.fileBytes, bytesLeft)) : null;
		if (bytes === null) {
			const text = fileTooLarge(reply.language ?? 'en', file.name);
			left.push({ kind: 'list', text, fold: false });
		} else {
			bytesLeft -= bytes.length;
			there.push({ ...file, bytes });
		}
	}
	return { ...rest, files: there, parts: [...reply.parts, ...left] };
}

/** The whole file, or null where it has more than `max` bytes. */
async function bytesOf({ bytes }: ReplyFile, max: number): Promise<Uint8Array | null> {
	if (bytes instanceof Uint8Array) return bytes.length > max ? null : bytes;
	const chunks: Uint8Array[] = [];
	let size = 0;
	let turnMs = performance.now();
	for await (const chunk of bytes) {
		size += chunk.length;
		if (size > max) return null;
		chunks.push(chunk);
		if (performance.now() - turnMs < TURN_MS) continue;
		await turnOfTheLoop();
		turnMs = performance.now();
	}
	return Buffer.concat(chunks);
}
