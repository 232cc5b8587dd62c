/** The signature under a build as a whole, and whether it still holds: read from the entries, never from a column. */

import { type Entry, type EntryKind, LIMITS, type Log } from '@lugbook/log';
import type { WholeSignature } from '@lugbook/report';
import { z } from 'zod';
import { instantText } from '../render/entry.js';
import { isWithdrawal } from './acts.js';

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

/**
 * What the chain keeps of a withdrawal. It is an entry of the same kind, so that the newest of them alone says where a
 * build stands. The reason is typed text and lies in the erasable part.
 */
export const buildWithdrawnSchema = z.object({
	meaning: z.string(),
	/** the entry of the signature that is withdrawn */
	withdraws: z.int().min(1),
});

/**
 * What changes a build: what is told of it, a new answer, one in place of another, one that is rejected; and, among
 * what asks the lead, one whose signature is withdrawn.
 */
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
	const [newest] = entries;
	const withdrawal = buildWithdrawnSchema.safeParse(newest?.body);
	const entry = withdrawal.success ? await log.entry(shop, withdrawal.data.withdraws) : newest;
	const body = buildSignedSchema.safeParse(entry?.body);
	if (newest === undefined || entry == null || !body.success) return null;
	const { covers, signed, open, ownQuestion, meaning } = body.data;
	return {
		withdrawn: withdrawal.success ? withdrawnBy(newest) : null,
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

/** The entry that withdraws a signature under a build, or null: it can only be the next one under that build. */
export async function withdrawalOf(log: Log, { shop, build, number }: Entry): Promise<Entry | null> {
	const { entries } = await log.find(shop, {
		build,
		kinds: ['build-signed'],
		order: 'oldest',
		cursor: `oldest:${number}`,
		limit: 1,
	});
	const [next] = entries;
	const body = buildWithdrawnSchema.safeParse(next?.body);
	return next !== undefined && body.success && body.data.withdraws === number ? next : null;
}

function withdrawnBy(entry: Entry): NonNullable<WholeSignature['withdrawn']> {
	const { number, at, erased, personName } = entry;
	return { entry: number, at, name: erased ? null : personName, words: wordsOfWithdrawal(entry) };
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
	const withdrawn = await withdrawnSince(log, shop, build, from);
	return [...pages.flatMap(({ entries }) => entries.map(({ number }) => number)), ...withdrawn]
		.filter((number) => upTo === null || number <= upTo)
		.sort((a, b) => a - b)
		.slice(0, SINCE_MAX);
}

/** The first answers whose signatures were withdrawn since an entry: numbers of the withdrawals. */
async function withdrawnSince(log: Log, shop: string, build: string, from: number): Promise<number[]> {
	const found: number[] = [];
	let cursor: string | null = `oldest:${from}`;
	do {
		const page: { entries: Entry[]; next: string | null } = await log.find(shop, {
			build,
			kinds: ['asked'],
			order: 'oldest',
			limit: LIMITS.pageEntries,
			cursor,
		});
		found.push(...page.entries.filter(isWithdrawal).map(({ number }) => number));
		cursor = page.next;
	} while (cursor !== null && found.length < SINCE_MAX);
	return found;
}

/** What was said behind "sign build", or null. */
export function wordsOfBuildSignature({ erased, text }: Entry): string | null {
	if (erased) return null;
	const words = /^sign\s+(?:the\s+)?(?:whole\s+)?build\s+(\S[\s\S]*)$/i.exec(text.trim())?.[1] ?? '';
	const anyway = ANYWAY.exec(words);
	return (anyway === null ? words : (anyway[1] ?? '')).trim() || null;
}

/** Why a signature under a build was withdrawn, as typed, or null. */
export function wordsOfWithdrawal({ erased, text }: Entry): string | null {
	return erased ? null : (/\bbuild[\s,:]+(\S[\s\S]*)$/i.exec(text.trim())?.[1] ?? null);
}

/** The lines by which review tells of it. */
export function buildSignatureLines(build: string, signature: WholeSignature | null): string[] {
	if (signature === null)
		return [`Build "${build}" is not signed as a whole. A lead says "/log sign build".`];
	const { name, at, covers, since, open, words, meaning, entry, withdrawn } = signature;
	const who = byAndWhen(name, at);
	if (withdrawn !== null) {
		const by = byAndWhen(withdrawn.name, withdrawn.at);
		const told = `The signature under build "${build}" as a whole (No. ${entry}) is WITHDRAWN by ${by} (No. ${withdrawn.entry})`;
		return [
			withdrawn.words === null ? told : `${told}: ${withdrawn.words}`,
			'A lead signs it anew with "/log sign build".',
		];
	}
	const said = words === null ? meaning : `${meaning}: ${words}`;
	return [
		since.length === 0
			? `Build "${build}" is signed as a whole by ${who} (No. ${entry}), as it stood at No. ${covers.entry}: ${said}`
			: `The signature under build "${build}" as a whole is OUT OF DATE: ${who} signed it as it stood at No. ${covers.entry}; changed since by ${sinceText(since)}`,
		...(open === null ? [] : [`Open when it was signed: ${open}`]),
	];
}

/** "Kim, 2026-05-04 12:00 UTC". */
function byAndWhen(name: string | null, at: string): string {
	return `${name ?? 'somebody who was forgotten'}, ${instantText(at)}`;
}

/** "No. 12, 14 and later ones". */
export function sinceText(since: readonly number[]): string {
	return `No. ${since.slice(0, 8).join(', ')}${since.length > 8 ? ' and later ones' : ''}`;
}
