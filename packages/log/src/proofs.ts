import type { Kysely } from 'kysely';
import { Leaves } from './merkle.js';
import type { Tables } from './tables.js';

/** The tree over the first `size` entries of a shop, in one hash. */
export interface TreeHead {
	size: number;
	/** SHA-256 in hexadecimal. */
	root: string;
}

/** Shows that an entry is in a tree without showing another entry. */
export interface InclusionProof {
	kind: 'inclusion';
	shop: string;
	number: number;
	/** Hash of the entry; the leaf is the hash over its bytes. */
	hash: string;
	tree: TreeHead;
	path: string[];
}

/** Shows that nothing in an earlier tree was changed or taken away on the way to a later one. */
export interface ConsistencyProof {
	kind: 'consistency';
	shop: string;
	from: TreeHead;
	to: TreeHead;
	path: string[];
}

/** Hashes read from the database at a time. */
const PAGE = 5000;

/** The leaves of the first `size` entries; fewer when there are not so many. */
export async function leavesOf(db: Kysely<Tables>, shop: string, size: number): Promise<Leaves> {
	const leaves = new Leaves();
	while (leaves.size < size) {
		const rows = await db
			.selectFrom('entries')
			.select('hash')
			.where('shop', '=', shop)
			.where('number', '>', leaves.size)
			.where('number', '<=', Math.min(size, leaves.size + PAGE))
			.orderBy('number')
			.execute();
		if (rows.length === 0) break;
		for (const { hash } of rows) leaves.push(Buffer.from(hash, 'hex'));
	}
	return leaves;
}

export function treeHead(leaves: Leaves, size: number): TreeHead {
	return { size, root: leaves.root(0, size).toString('hex') };
}

export function pathOf(hashes: readonly Buffer[]): string[] {
	return hashes.map((hash) => hash.toString('hex'));
}
