import type { Entry, EntryKind, Log } from '@lugbook/log';
import type { SheetSignature, SheetState } from '@lugbook/report';
import { z } from 'zod';

/** What people do about an answer; each is an entry of its own that follows it. */
const actKinds = ['signed', 'rejected', 'commented', 'asked'] as const satisfies readonly EntryKind[];
export type ActKind = (typeof actKinds)[number];

/** What the chain keeps of an act. Its words are typed text and lie in the erasable part. */
const actBodySchema = z.object({ meaning: z.string(), ownQuestion: z.boolean() });

const acts: Readonly<Record<ActKind, SheetSignature['act']>> = {
	signed: 'signed',
	rejected: 'rejected',
	commented: 'commented',
	asked: 'asked of the lead',
};

/** Where an answer stands in review, from the entries that follow it. */
export interface Review {
	readonly state: SheetState;
	/** the words of whoever rejected it, or null */
	readonly reason: string | null;
	readonly signatures: readonly SheetSignature[];
	readonly replacedBy: number | null;
}

export async function reviewOf(log: Log, shop: string, number: number): Promise<Review> {
	const { entries } = await log.find(shop, {
		follows: number,
		kinds: [...actKinds],
		order: 'oldest',
		limit: 200,
	});
	const replacing = await log.find(shop, { replaces: number, kinds: ['exchange'], limit: 1 });
	const replacedBy = replacing.entries[0]?.number ?? null;
	const last = entries.findLast((entry) => entry.kind === 'signed' || entry.kind === 'rejected');
	const asked = entries.some((entry) => entry.kind === 'asked');
	const decided: SheetState | null =
		last === undefined ? null : last.kind === 'signed' ? 'signed' : 'rejected';
	return {
		state: replacedBy !== null ? 'replaced' : (decided ?? (asked ? 'asked of the lead' : 'not checked')),
		reason: last?.kind === 'rejected' ? wordsOf(last) : null,
		signatures: entries.map(signatureOf),
		replacedBy,
	};
}

function signatureOf(entry: Entry): SheetSignature {
	const body = actBodySchema.safeParse(entry.body);
	const words = wordsOf(entry);
	const meaning = body.success ? body.data.meaning : entry.kind;
	return {
		act: acts[entry.kind as ActKind],
		name: entry.erased ? null : entry.personName,
		at: entry.at,
		meaning: words === null ? meaning : `${meaning}: ${words}`,
		entry: entry.number,
		ownQuestion: body.success && body.data.ownQuestion,
	};
}

/** What was typed behind the number: "reject 12 wrong length" has "wrong length". */
function wordsOf(entry: Entry): string | null {
	if (entry.erased) return null;
	const words = /\d+\s+(\S[\s\S]*)$/.exec(entry.text)?.[1]?.trim();
	return words === undefined || words === '' ? null : words;
}
