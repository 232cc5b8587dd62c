import { createHash } from 'node:crypto';

/**
 * The Merkle tree over the entries of a shop. Its root stands for all of them in 32 bytes; a short proof shows that
 * one entry is among them, or that an earlier tree is the beginning of a later one, without showing the others.
 * @source RFC 9162, Certificate Transparency Version 2.0, section 2.1
 */

/** Length of SHA-256 [bytes]. */
const HASH_BYTES = 32;

function sha256(...parts: readonly Uint8Array[]): Buffer {
	const hash = createHash('sha256');
	for (const part of parts) hash.update(part);
	return hash.digest();
}

// The two prefixes keep a leaf from ever being taken for a node.
const LEAF = Uint8Array.of(0);
const NODE = Uint8Array.of(1);

/** Hash of a leaf: SHA-256(0x00 || content). @source RFC 9162, section 2.1.1 */
export function leafHash(content: Uint8Array): Buffer {
	return sha256(LEAF, content);
}

/** Hash of a node: SHA-256(0x01 || left || right). @source RFC 9162, section 2.1.1 */
function nodeHash(left: Uint8Array, right: Uint8Array): Buffer {
	return sha256(NODE, left, right);
}

/** The largest power of two smaller than n, for n > 1. */
function split(n: number): number {
	return 2 ** Math.floor(Math.log2(n - 1));
}

/** The leaf hashes of a tree in one piece of memory, 32 bytes each. */
export class Leaves {
	#bytes = Buffer.alloc(HASH_BYTES * 64);
	#count = 0;

	get size(): number {
		return this.#count;
	}

	push(content: Uint8Array): void {
		const end = HASH_BYTES * (this.#count + 1);
		if (end > this.#bytes.length) {
			this.#bytes = Buffer.concat([this.#bytes, Buffer.alloc(this.#bytes.length)]);
		}
		leafHash(content).copy(this.#bytes, end - HASH_BYTES);
		this.#count += 1;
	}

	/**
	 * Merkle tree hash of the leaves from `start` to before `end`.
	 * @source RFC 9162, section 2.1.1: MTH(D[start:end])
	 */
	root(start = 0, end = this.#count): Buffer {
		this.#assertRange(start, end);
		const count = end - start;
		if (count === 0) return sha256();
		if (count === 1) return this.#bytes.subarray(HASH_BYTES * start, HASH_BYTES * end);
		const middle = start + split(count);
		return nodeHash(this.root(start, middle), this.root(middle, end));
	}

	/**
	 * Proof that the leaf at `index` (from 0) is in the tree of the first `size` leaves.
	 * @source RFC 9162, section 2.1.3.1: PATH(m, D_n)
	 */
	inclusionProof(index: number, size = this.#count): Buffer[] {
		this.#assertRange(index, index + 1);
		this.#assertRange(index + 1, size);
		return this.#path(index, 0, size);
	}

	#path(index: number, start: number, end: number): Buffer[] {
		if (end - start === 1) return [];
		const middle = start + split(end - start);
		return index < middle
			? [...this.#path(index, start, middle), this.root(middle, end)]
			: [...this.#path(index, middle, end), this.root(start, middle)];
	}

	/**
	 * Proof that the tree of the first `from` leaves is the beginning of the tree of the first `to`.
	 * @source RFC 9162, section 2.1.4.1: PROOF(m, D_n)
	 */
	consistencyProof(from: number, to = this.#count): Buffer[] {
		this.#assertRange(from, to);
		// A tree without leaves is the beginning of every tree, and of itself every tree: nothing to prove.
		if (from === 0 || from === to) return [];
		return this.#subproof(from, { start: 0, end: to, whole: true });
	}

	/** SUBPROOF(m, D_n, b): `whole` says that the verifier knows the root of the old tree in this part already. */
	#subproof(from: number, { start, end, whole }: { start: number; end: number; whole: boolean }): Buffer[] {
		if (from === end) return whole ? [] : [this.root(start, end)];
		const middle = start + split(end - start);
		return from <= middle
			? [...this.#subproof(from, { start, end: middle, whole }), this.root(middle, end)]
			: [...this.#subproof(from, { start: middle, end, whole: false }), this.root(start, middle)];
	}

	#assertRange(start: number, end: number): void {
		if (
			!(Number.isInteger(start) && Number.isInteger(end) && 0 <= start && start <= end && end <= this.#count)
		) {
			throw new RangeError(`leaves ${start} to ${end} of a tree of ${this.#count}`);
		}
	}
}

/**
 * Whether a proof shows that a leaf is at `index` (from 0) in the tree of `size` leaves with this root.
 * @source RFC 9162, section 2.1.3.2
 */
export function isIncluded(
	leaf: { hash: Uint8Array; index: number },
	tree: { size: number; root: Uint8Array },
	proof: readonly Uint8Array[],
): boolean {
	if (!Number.isSafeInteger(leaf.index) || !Number.isSafeInteger(tree.size)) return false;
	if (leaf.index < 0 || leaf.index >= tree.size) return false;
	let node = BigInt(leaf.index);
	let last = BigInt(tree.size - 1);
	let hash: Uint8Array = leaf.hash;
	for (const step of proof) {
		if (last === 0n) return false;
		if ((node & 1n) === 1n || node === last) {
			hash = nodeHash(step, hash);
			while ((node & 1n) === 0n && node !== 0n) {
				node >>= 1n;
				last >>= 1n;
			}
		} else {
			hash = nodeHash(hash, step);
		}
		node >>= 1n;
		last >>= 1n;
	}
	return last === 0n && Buffer.from(hash).equals(tree.root);
}

/**
 * Whether a proof shows that the tree `from` is the beginning of the tree `to`.
 * @source RFC 9162, section 2.1.4.2
 */
export function isConsistent(
	from: { size: number; root: Uint8Array },
	to: { size: number; root: Uint8Array },
	proof: readonly Uint8Array[],
): boolean {
	if (!Number.isSafeInteger(from.size) || !Number.isSafeInteger(to.size)) return false;
	if (from.size < 0 || from.size > to.size) return false;
	if (from.size === 0) return proof.length === 0 && sha256().equals(from.root);
	if (from.size === to.size) return proof.length === 0 && Buffer.from(from.root).equals(to.root);
	// A whole left subtree is its own first step and is not sent.
	const isPowerOfTwo = (BigInt(from.size) & BigInt(from.size - 1)) === 0n;
	const [first, ...steps] = isPowerOfTwo ? [from.root, ...proof] : proof;
	if (first === undefined) return false;
	let node = BigInt(from.size - 1);
	let last = BigInt(to.size - 1);
	while ((node & 1n) === 1n) {
		node >>= 1n;
		last >>= 1n;
	}
	let oldHash: Uint8Array = first;
	let newHash: Uint8Array = first;
	for (const step of steps) {
		if (last === 0n) return false;
		if ((node & 1n) === 1n || node === last) {
			oldHash = nodeHash(step, oldHash);
			newHash = nodeHash(step, newHash);
			while ((node & 1n) === 0n && node !== 0n) {
				node >>= 1n;
				last >>= 1n;
			}
		} else {
			newHash = nodeHash(newHash, step);
		}
		node >>= 1n;
		last >>= 1n;
	}
	return last === 0n && Buffer.from(oldHash).equals(from.root) && Buffer.from(newHash).equals(to.root);
}
