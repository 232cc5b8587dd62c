import { type Change, changed, changeSchema, emptyVan, type Van } from '@lugbook/core';
import type { Entry, Log } from '@lugbook/log';
import { z } from 'zod';

/** What an entry of kind 'build-changed' holds: the steps as read, never the text. */
const changesBody = z.object({ changes: z.array(changeSchema) });

/** A build as it was told so far. */
export interface Build {
	readonly van: Van;
	/** the piece told of last, which "no, two of them" speaks of */
	readonly last: string | null;
}

const untold: Build = { van: emptyVan, last: null };

/** A build: a fold over what was told of it, oldest first. */
export async function buildNamed(log: Log, shop: string, build: string): Promise<Build> {
	return await log.fold(shop, { build, kinds: ['build-changed'] }, untold, (before, entry) => {
		const changes = changesOf(entry);
		const told = changes.findLast((change) => change.change === 'add' || change.change === 'set');
		const last = told !== undefined && 'id' in told ? told.id : before.last;
		return { van: changed(before.van, changes), last };
	});
}

/** The steps that an entry tells of; none where it is of another kind. */
export function changesOf({ body }: Pick<Entry, 'body'>): readonly Change[] {
	const parsed = changesBody.safeParse(body);
	return parsed.success ? parsed.data.changes : [];
}

export async function vanOf(log: Log, shop: string, build: string): Promise<Van> {
	return (await buildNamed(log, shop, build)).van;
}

export function bodyOfChanges(changes: readonly Change[]): z.infer<typeof changesBody> {
	return { changes: [...changes] };
}
