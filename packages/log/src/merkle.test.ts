/** The Merkle tree, held against published test values and the definitions of RFC 9162. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isConsistent, isIncluded, Leaves, leafHash } from './merkle.js';

const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');
const unhex = (text: string) => Buffer.from(text, 'hex');

function treeOf(contents: readonly Uint8Array[]): Leaves {
	const leaves = new Leaves();
	for (const content of contents) leaves.push(content);
	return leaves;
}

/**
 * The eight leaves and the hashes that the reference implementation of RFC 6962 (whose trees RFC 9162 keeps) publishes
 * in its tests; leaves and hashes as remembered. A hash that was remembered wrongly could not come out of the code.
 */
describe('published values of the RFC 6962 reference implementation', () => {
	const leaves = [
		'',
		'00',
		'10',
		'2021',
		'3031',
		'40414243',
		'5051525354555657',
		'606162636465666768696a6b6c6d6e6f',
	];
	const roots = [
		'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
		'6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
		'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
		'aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77',
		'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
		'4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4',
		'76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef',
		'ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c',
		'5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328',
	];
	const tree = treeOf(leaves.map(unhex));

	test.each(roots.map((root, size) => ({ root, size })))(
		'root of the first $size leaves',
		({ root, size }) => {
			expect(hex(tree.root(0, size))).toBe(root);
		},
	);

	const node = {
		leaf1: '96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7',
		leaf4: 'bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b',
		two3: '5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e',
		four5: '0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a',
		six7: 'ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0',
		four7: '6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4',
		four: roots[4] ?? '',
		two: roots[2] ?? '',
		one: roots[1] ?? '',
	};

	test.each([
		{ index: 0, size: 1, path: [] },
		{ index: 0, size: 8, path: [node.leaf1, node.two3, node.four7] },
		{ index: 5, size: 8, path: [node.leaf4, node.six7, node.four] },
		{ index: 2, size: 3, path: [node.two] },
		{ index: 1, size: 5, path: [node.one, node.two3, node.leaf4] },
	])('inclusion proof of leaf $index in $size', ({ index, size, path }) => {
		expect(tree.inclusionProof(index, size).map(hex)).toEqual(path);
	});

	test.each([
		{ from: 1, to: 1, path: [] },
		{ from: 1, to: 8, path: [node.leaf1, node.two3, node.four7] },
		{ from: 6, to: 8, path: [node.four5, node.six7, node.four] },
		{ from: 2, to: 5, path: [node.two3, node.leaf4] },
	])('consistency proof from $from to $to', ({ from, to, path }) => {
		expect(tree.consistencyProof(from, to).map(hex)).toEqual(path);
	});
});

/** RFC 9162, section 2.1.5: a tree of seven leaves d0 to d6, its nodes named a to l. */
test('RFC 9162, section 2.1.5: the proofs of the example tree are the nodes it names (as remembered)', () => {
	const tree = treeOf(Array.from({ length: 7 }, (_, index) => Buffer.from(`d${index}`)));
	const [a, b, c, d, e, f, j] = Array.from({ length: 7 }, (_, index) => hex(tree.root(index, index + 1)));
	const [g, h, i] = [0, 2, 4].map((start) => hex(tree.root(start, start + 2)));
	const k = hex(tree.root(0, 4));
	const l = hex(tree.root(4, 7));
	expect(tree.inclusionProof(0, 7).map(hex)).toEqual([b, h, l]);
	expect(tree.inclusionProof(3, 7).map(hex)).toEqual([c, g, l]);
	expect(tree.inclusionProof(4, 7).map(hex)).toEqual([f, j, k]);
	expect(tree.inclusionProof(6, 7).map(hex)).toEqual([i, k]);
	expect(tree.consistencyProof(3, 7).map(hex)).toEqual([c, d, g, l]);
	expect(tree.consistencyProof(4, 7).map(hex)).toEqual([l]);
	expect(tree.consistencyProof(6, 7).map(hex)).toEqual([i, j, k]);
	expect([a, e]).toHaveLength(2);
});

const contents = fc.array(fc.uint8Array({ maxLength: 4 }), { minLength: 1, maxLength: 40 });

describe('laws', () => {
	test('every leaf is proved to be in every tree that holds it', () => {
		fc.assert(
			fc.property(contents, (all) => {
				const tree = treeOf(all);
				for (const [index, content] of all.entries()) {
					for (let size = index + 1; size <= all.length; size += 1) {
						const proof = tree.inclusionProof(index, size);
						expect(proof.length).toBeLessThanOrEqual(Math.ceil(Math.log2(size)));
						expect(
							isIncluded({ hash: leafHash(content), index }, { size, root: tree.root(0, size) }, proof),
						).toBe(true);
					}
				}
			}),
			{ numRuns: 25 },
		);
	});

	test('every tree is proved to be the beginning of every later one', () => {
		fc.assert(
			fc.property(contents, (all) => {
				const tree = treeOf(all);
				for (let from = 0; from <= all.length; from += 1) {
					for (let to = from; to <= all.length; to += 1) {
						const [old, later] = [from, to].map((size) => ({ size, root: tree.root(0, size) }));
						if (old === undefined || later === undefined) throw new Error('unreachable');
						expect(isConsistent(old, later, tree.consistencyProof(from, to)), `${from} ${to}`).toBe(true);
					}
				}
			}),
			{ numRuns: 25 },
		);
	});
});

describe('a false proof is not believed', () => {
	const all = Array.from({ length: 23 }, (_, index) => Buffer.from([index]));
	const tree = treeOf(all);
	const root = (size: number) => ({ size, root: tree.root(0, size) });

	/** Ways to spoil a list of hashes: one bit, one hash less, one more, two exchanged. */
	function* spoiled(proof: readonly Buffer[]): Generator<Buffer[]> {
		for (let step = 0; step < proof.length; step += 1) {
			const flipped = proof.map((hash) => Buffer.from(hash));
			const bytes = flipped[step];
			if (bytes !== undefined) bytes[step % 32] = (bytes[step % 32] ?? 0) ^ 1;
			yield flipped;
			yield proof.filter((_, index) => index !== step);
			yield [...proof.slice(0, step), Buffer.alloc(32), ...proof.slice(step)];
		}
		yield [...proof, Buffer.alloc(32)];
		if (proof.length > 1) yield proof.toReversed();
	}

	test('of inclusion: proof spoiled, another leaf, another place, another size, another root', () => {
		for (const size of [1, 2, 7, 8, 23]) {
			for (let index = 0; index < size; index += 1) {
				const leaf = { hash: leafHash(all[index] ?? Buffer.of()), index };
				const proof = tree.inclusionProof(index, size);
				for (const bad of spoiled(proof)) expect(isIncluded(leaf, root(size), bad)).toBe(false);
				expect(isIncluded({ ...leaf, hash: leafHash(Buffer.from('other')) }, root(size), proof)).toBe(false);
				for (const other of [index - 1, index + 1, -1, size, 0.5, Number.NaN]) {
					if (other === index) continue;
					expect(isIncluded({ ...leaf, index: other }, root(size), proof), `${index} as ${other}`).toBe(
						false,
					);
				}
				expect(isIncluded(leaf, { size, root: Buffer.alloc(32) }, proof)).toBe(false);
				expect(isIncluded(leaf, { size: 0, root: tree.root(0, size) }, proof)).toBe(false);
			}
		}
	});

	test('of consistency: proof spoiled, roots exchanged, a tree that differs in one early leaf', () => {
		const changed = treeOf(all.map((content, index) => (index === 1 ? Buffer.from('forged') : content)));
		for (const from of [2, 3, 4, 7, 8, 16, 22]) {
			for (const to of [from + 1, 23].filter((size) => size <= 23 && size > from)) {
				const proof = tree.consistencyProof(from, to);
				expect(isConsistent(root(from), root(to), proof)).toBe(true);
				for (const bad of spoiled(proof)) expect(isConsistent(root(from), root(to), bad)).toBe(false);
				expect(isConsistent(root(to), root(from), proof)).toBe(false);
				const forged = { size: to, root: changed.root(0, to) };
				expect(isConsistent(root(from), forged, proof)).toBe(false);
				expect(isConsistent(root(from), forged, changed.consistencyProof(from, to))).toBe(false);
			}
		}
		expect(isConsistent(root(5), { size: 5, root: changed.root(0, 5) }, [])).toBe(false);
		expect(isConsistent({ size: 0, root: tree.root(0, 1) }, root(5), [])).toBe(false);
	});

	test('a node given out as a leaf is none', () => {
		const pair = Buffer.concat([tree.root(0, 1), tree.root(1, 2)]);
		const asLeaf = treeOf([pair, all[2] ?? Buffer.of()]);
		expect(hex(asLeaf.root())).not.toBe(hex(tree.root(0, 3)));
	});
});

test('a tree of more leaves than were given is refused', () => {
	const tree = treeOf([Buffer.from('a')]);
	for (const attempt of [
		() => tree.root(0, 2),
		() => tree.inclusionProof(1, 1),
		() => tree.inclusionProof(0, 2),
		() => tree.inclusionProof(-1, 1),
		() => tree.consistencyProof(2, 1),
		() => tree.consistencyProof(0.5, 1),
	]) {
		expect(attempt).toThrow(RangeError);
	}
});
