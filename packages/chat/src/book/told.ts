/** What was told of a build, piece by piece, with the entry that told it last. */

import { type Change, changed, emptyVan, type Van } from '@lugbook/core';
import type { Log } from '@lugbook/log';
import { changesOf } from '../build/van.js';

export interface Told {
	readonly van: Van;
	/** number of the entry that told of a piece last, by the piece's name in the build */
	readonly entryOf: ReadonlyMap<string, number>;
}

export async function toldOf(log: Log, shop: string, build: string, upTo: number): Promise<Told> {
	const entryOf = new Map<string, number>();
	const van = await log.fold(shop, { build, kinds: ['build-changed'] }, emptyVan, (before, entry) => {
		if (entry.number > upTo) return before;
		const changes = changesOf(entry);
		for (const id of changes.flatMap(pieceOf)) entryOf.set(id, entry.number);
		return changed(before, changes);
	});
	return { van, entryOf };
}

function pieceOf(change: Change): string[] {
	return change.change === 'add' || change.change === 'set' ? [change.id] : [];
}
