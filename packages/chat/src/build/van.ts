import { type Change, changed, changeSchema, emptyVan, type Van } from '@lugbook/core';
import type { Log } from '@lugbook/log';
import { z } from 'zod';

/** What an entry of kind 'build-changed' holds: the steps as read, never the text. */
const changesBody = z.object({ changes: z.array(changeSchema) });

/** The van of a build: a fold over what was told of it, oldest first. */
export async function vanOf(log: Log, shop: string, build: string): Promise<Van> {
	return await log.fold(shop, { build, kinds: ['build-changed'] }, emptyVan, (van, entry) => {
		const body = changesBody.safeParse(entry.body);
		return body.success ? changed(van, body.data.changes) : van;
	});
}

export function bodyOfChanges(changes: readonly Change[]): z.infer<typeof changesBody> {
	return { changes: [...changes] };
}
