/** The signature under a build as a whole, and whether it still holds: read from the entries, never from a column. */

import type { Entry, EntryKind, Log } from '@lugbook/log';
import type { WholeSignature } from '@lugbook/report';
import { z } from 'zod';
import { instantText } from '../render/entry.js';

/** What the chain keeps of it. The reason for signing all the same is typed text and lies in the erasable part. */
export const buildSignedSchema = z.object({
	meaning: z.string(),
	/** whether answers to the signer's own questions stood unsigned, which a shop may allow */
	ownQuestion: z.boolean(),
	/** the newest entry of the log that it covers; the hash covers all before it */
	covers: z.object({ entry: z.int().min(1), hash: z.string() }),
	/** answers that had a signature which held */
	signed: z.int().min(0),
	/** what stood open and was signed all the same, in words; null where nothing was */
	open: z.string().nullable(),
});

type Covers = z.infer<typeof buildSignedSchema>['covers'];

/** What changes a build: what is told of it, a new answer, one in place of another, one that is rejected. */
const changing = ['build-changed', 'exchange', 'rejected'] as const satisfies readonly EntryKind[];
/** Entries since then that are named. */
const SINCE_MAX = 20;

/** How somebody says that it is signed although something stands open; behind it the reason. */
export const ANYWAY = /^anyway(?:[\s,:]+(\S[\s\S]*))?$/i;

/**
 * The newest signature under a build, or null where nobody has signed it.
 * @param upTo the newest entry of the shop that counts; all of them where it is left out
 */
export async function buildSignatureOf(
	log: Log,
	shop: string,
	build: string,
	upTo: number | null = null,
): Promise<WholeSignature | null> {
	const cursor = upTo === null ? null : `newest:${upTo + 1}`;
	const { entries } = await log.find(shop, { build, kinds: ['build-signed'], limit: 1, cursor });
	const [entry] = entries;
	const body = buildSignedSchema.safeParse(entry?.body);
	if (entry === undefined || !body.success) return null;
	const { covers, signed, open, ownQuestion, meaning } = body.data;
	return {
		entry: entry.number,
		name: entry.erased ? null : entry.personName,
		at: entry.at,
		meaning,
		words: wordsOfBuildSignature(entry),
		covers: { ...covers, now: await hashNow(log, shop, covers) },
		signed,
		open,
		ownQuestion,
		since: await changedSince(log, shop, build, { from: covers.entry, upTo }),
	};
}

/** The hash that the covered entry has in this log, where it is another than the one that was signed. */
async function hashNow(log: Log, shop: string, { entry, hash }: Covers): Promise<string | null> {
	const covered = await log.entry(shop, entry);
	return covered === null || covered.hash === hash ? null : covered.hash;
}

/** What of the log a signature covers; in a log that was taken in under another name the hashes are new. */
export async function coversText(log: Log, shop: string, covers: Covers): Promise<string[]> {
	const now = await hashNow(log, shop, covers);
	return [
		`It covers the log up to No. ${covers.entry}, hash ${covers.hash}`,
		...(now === null
			? []
			: [
					`In this log No. ${covers.entry} has another hash, ${now}: it was chained anew since, as an import under another name does. Compare it with the log that was signed.`,
				]),
	];
}

/** The first entries that changed a build since one, at most some. */
export async function changedSince(
	log: Log,
	shop: string,
	build: string,
	{ from, upTo }: { readonly from: number; readonly upTo: number | null },
): Promise<number[]> {
	const since = { build, order: 'oldest', cursor: `oldest:${from}`, limit: SINCE_MAX } as const;
	const pages = await Promise.all(
		changing.map((kind) =>
			log.find(shop, { ...since, kinds: [kind], ...(kind === 'exchange' ? { states: ['answered'] } : {}) }),
		),
	);
	return pages
		.flatMap(({ entries }) => entries.map(({ number }) => number))
		.filter((number) => upTo === null || number <= upTo)
		.sort((a, b) => a - b)
		.slice(0, SINCE_MAX);
}

/** What was said behind "sign build", or null. */
export function wordsOfBuildSignature({ erased, text }: Entry): string | null {
	if (erased) return null;
	const words = /^sign\s+build\s+(\S[\s\S]*)$/i.exec(text.trim())?.[1] ?? '';
	const anyway = ANYWAY.exec(words);
	return (anyway === null ? words : (anyway[1] ?? '')).trim() || null;
}

/** The lines by which review tells of it. */
export function buildSignatureLines(build: string, signature: WholeSignature | null): string[] {
	if (signature === null)
		return [`Build "${build}" is not signed as a whole. A lead says "/log sign build".`];
	const { name, at, covers, since, open, words, meaning, entry } = signature;
	const who = `${name ?? 'somebody who was forgotten'}, ${instantText(at)}`;
	const said = words === null ? meaning : `${meaning}: ${words}`;
	return [
		since.length === 0
			? `Build "${build}" is signed as a whole by ${who} (No. ${entry}), as it stood at No. ${covers.entry}: ${said}`
			: `The signature under build "${build}" as a whole is OUT OF DATE: ${who} signed it as it stood at No. ${covers.entry}; changed since by ${sinceText(since)}`,
		...(open === null ? [] : [`Open when it was signed: ${open}`]),
	];
}

/** "No. 12, 14 and later ones". */
export function sinceText(since: readonly number[]): string {
	return `No. ${since.slice(0, 8).join(', ')}${since.length > 8 ? ' and later ones' : ''}`;
}
