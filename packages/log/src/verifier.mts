#!/usr/bin/env node
/**
 * Checks an exported project log without the program that wrote it and without any package: all that it does can be
 * read here from top to bottom.
 *
 *   node verifier.mjs EXPORT.jsonl [--head NUMBER:HASH]... [--proof FILE.json]...
 *
 * An export is a header line, then a line of JSON an entry. Checked are: each entry's hash (SHA-256 over its
 * canonical JSON, RFC 8785), that each carries the hash of the one before, numbers 1, 2, 3 ... without a gap, the
 * salted hashes and pseudonyms of the names and texts that are there, and that the last entry is the one the header
 * names. `--head` adds an entry's number and hash that were written down earlier; `--proof` adds a proof by the
 * Merkle tree of RFC 9162. Exit status: 0 all right, 1 something is wrong, 2 could not be checked.
 */
import { createHash, createHmac } from 'node:crypto';
import { createReadStream, readFileSync, realpathSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

type Head = { number: number; hash: string };
type Tree = { size: number; root: string };
export interface Checked {
	shop: string;
	/** Entries whose name and text are there and match. */
	named: number;
	/** Hash of each entry. */
	hashes: string[];
}

type Fields = { [key: string]: unknown };

const FORMAT = 'lugbook-log-1';
const CHAIN_FORMAT = 1;
const BEFORE_THE_FIRST = '0'.repeat(64);
const SHA256 = /^[0-9a-f]{64}$/;
/** All that the hash of an entry covers, beside its shop and the format of the chain. */
const CHAINED = `at body build channel commitment delivery follows kind number personTag platform previousHash
	replaces state thread topic`.split(/\s+/);
const ENTRY = [...CHAINED, 'erasable', 'hash'].sort();
const ERASABLE = ['personId', 'personName', 'salt', 'tagSalt', 'text'];

/** Says in words what was found wrong. */
export class Wrong extends Error {}

function must(holds: boolean, otherwise: string): asserts holds {
	if (!holds) throw new Wrong(otherwise);
}

/** RFC 8785: keys sorted by UTF-16 code units, no spaces, numbers and strings as ECMAScript writes them. */
function canonical(value: unknown): string {
	if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
	if (!isObject(value)) return JSON.stringify(value);
	const keys = Object.keys(value).sort();
	return `{${keys.map((key) => `${JSON.stringify(key)}:${canonical(value[key])}`).join(',')}}`;
}

function isObject(value: unknown): value is Fields {
	return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function sha256(...parts: (string | Uint8Array)[]): Buffer {
	const hash = createHash('sha256');
	for (const part of parts) hash.update(part);
	return hash.digest();
}

function objectWith(text: string, where: string, keys: readonly string[]): Fields {
	let value: unknown;
	try {
		value = JSON.parse(text);
	} catch {
		throw new Wrong(`${where} is not JSON`);
	}
	const has = isObject(value) && Object.keys(value).sort().join() === keys.join();
	must(has && isObject(value), `${where} does not have exactly the fields ${keys.join(', ')}`);
	// A key that is there twice would be read in one way here and perhaps in another elsewhere.
	must(canonical(value) === text, `${where} is not in its canonical form`);
	return value;
}

/** Checks an export, given line by line, and heads that were written down earlier. */
export async function verifyExport(
	lines: Iterable<string> | AsyncIterable<string>,
	known: readonly Head[] = [],
): Promise<Checked> {
	let header: { shop: string; head: Head } | undefined;
	const hashes: string[] = [];
	let named = 0;
	for await (const line of lines) {
		if (header === undefined) {
			const { format, shop, head } = objectWith(line, 'the first line', ['format', 'head', 'shop']);
			must(format === FORMAT, `the first line says format ${JSON.stringify(format)}, not ${FORMAT}`);
			must(typeof shop === 'string', 'the first line names no shop');
			header = { shop, head: headOf(head) };
			continue;
		}
		const number = hashes.length + 1;
		const entry = objectWith(line, `entry ${number}`, ENTRY);
		must(entry.number === number, `entry ${number} is missing; number ${entry.number} stands in its place`);
		const chained = Object.fromEntries(CHAINED.map((key) => [key, entry[key]]));
		const covered = canonical({ ...chained, shop: header.shop, format: CHAIN_FORMAT });
		const hash = sha256(covered).toString('hex');
		must(hash === entry.hash, `the content of entry ${number} does not match its hash`);
		const previous = hashes.at(-1) ?? BEFORE_THE_FIRST;
		must(entry.previousHash === previous, `entry ${number} does not carry the hash of the entry before it`);
		if (entry.erasable !== null) {
			checkErasable(entry, header.shop);
			named += 1;
		}
		hashes.push(hash);
	}
	must(header !== undefined, 'the export is empty');
	for (const { number, hash } of [header.head, ...known]) {
		must(number <= hashes.length, `entry ${number} was written, but the export ends at ${hashes.length}`);
		must(hashes[number - 1] === hash, `entry ${number} is not the one that was known: its hash differs`);
	}
	must(header.head.number === hashes.length, 'the export has more entries than its first line says');
	return { shop: header.shop, named, hashes };
}

function checkErasable(entry: Fields, shop: string): void {
	const where = `the name or text of entry ${entry.number}`;
	const { tagSalt, ...part } = objectWith(canonical(entry.erasable), where, ERASABLE);
	const commitment = sha256(canonical(part)).toString('hex');
	must(commitment === entry.commitment, `${where} does not match the salted hash in the entry`);
	const tag = createHmac('sha256', String(tagSalt))
		.update(canonical([shop, part.personId]))
		.digest('hex');
	must(
		tag.slice(0, 32) === entry.personTag,
		`the person of entry ${entry.number} does not match the pseudonym`,
	);
}

function headOf(value: unknown): Head {
	must(isObject(value), 'a head is no object');
	const { number, hash } = value;
	must(typeof number === 'number' && Number.isSafeInteger(number) && number > 0, 'a head has no number');
	must(typeof hash === 'string' && SHA256.test(hash), 'a head has no SHA-256');
	return { number, hash };
}

/** RFC 9162, section 2.1.1. */
function node(left: Uint8Array, right: Uint8Array): Buffer {
	return sha256(Uint8Array.of(1), left, right);
}

const leaf = (entryHash: string) => sha256(Uint8Array.of(0), Buffer.from(entryHash, 'hex'));

/** The largest power of two below n. */
function below(n: number): number {
	let power = 1;
	while (power * 2 < n) power *= 2;
	return power;
}

function rootOf(entryHashes: readonly string[]): Buffer {
	const [only] = entryHashes;
	if (only === undefined) return sha256();
	if (entryHashes.length === 1) return leaf(only);
	const middle = below(entryHashes.length);
	return node(rootOf(entryHashes.slice(0, middle)), rootOf(entryHashes.slice(middle)));
}

/** A path's last step stands at the top of the tree. */
function topOf(path: readonly Buffer[]): { sibling: Buffer; rest: Buffer[] } {
	const sibling = path.at(-1);
	must(sibling !== undefined, 'the proof is shorter than the tree is high');
	return { sibling, rest: path.slice(0, -1) };
}

/** The root to which a leaf and its path lead. */
function climb(place: { index: number; size: number; hash: Buffer }, path: readonly Buffer[]): Buffer {
	const { index, size, hash } = place;
	if (size === 1) {
		must(path.length === 0, 'the proof is longer than the tree is high');
		return hash;
	}
	const { sibling, rest } = topOf(path);
	const middle = below(size);
	return index < middle
		? node(climb({ index, size: middle, hash }, rest), sibling)
		: node(sibling, climb({ index: index - middle, size: size - middle, hash }, rest));
}

/**
 * The roots of the old and of the new tree to which a consistency proof leads.
 * @param part.old root of the old tree, in the part that begins where the tree begins
 */
function grow(
	part: { from: number; to: number; old: Buffer | null },
	path: readonly Buffer[],
): [Buffer, Buffer] {
	const { from, to, old } = part;
	if (from === to) {
		must(path.length === (old === null ? 1 : 0), 'the proof is not as long as the trees are high');
		const hash = old ?? topOf(path).sibling;
		return [hash, hash];
	}
	const { sibling, rest } = topOf(path);
	const middle = below(to);
	if (from <= middle) {
		const [before, after] = grow({ from, to: middle, old }, rest);
		return [before, node(after, sibling)];
	}
	const [before, after] = grow({ from: from - middle, to: to - middle, old: null }, rest);
	return [node(sibling, before), node(sibling, after)];
}

function treeOf(value: unknown): Tree {
	must(isObject(value), 'a tree of the proof is no object');
	const { size, root } = value;
	must(typeof size === 'number' && Number.isSafeInteger(size) && size > 0, 'a tree of the proof has no size');
	must(typeof root === 'string' && SHA256.test(root), 'a tree of the proof has no root');
	return { size, root };
}

/** Checks a proof by itself and, as far as its trees reach into it, against the export; says what it proves. */
export function verifyProof(proof: unknown, { shop, hashes }: Checked): string {
	must(isObject(proof), 'the proof is no object');
	must(proof.shop === shop, `the proof is of shop ${JSON.stringify(proof.shop)}, the export of ${shop}`);
	must(Array.isArray(proof.path), 'the proof has no path');
	const path = proof.path.map((step: unknown) => {
		must(typeof step === 'string' && SHA256.test(step), 'a step of the proof is no SHA-256');
		return Buffer.from(step, 'hex');
	});
	const mustBeOfExport = (tree: Tree) => {
		if (tree.size > hashes.length) return;
		const root = rootOf(hashes.slice(0, tree.size)).toString('hex');
		must(
			root === tree.root,
			`the first ${tree.size} entries of the export make another tree than the proof's`,
		);
	};
	if (proof.kind === 'inclusion') {
		const tree = treeOf(proof.tree);
		const { number, hash } = headOf(proof);
		must(number <= tree.size, `entry ${number} can't be in a tree of ${tree.size}`);
		const root = climb({ index: number - 1, size: tree.size, hash: leaf(hash) }, path).toString('hex');
		must(root === tree.root, `the proof does not lead from entry ${number} to the root of the tree`);
		must(
			(hashes[number - 1] ?? hash) === hash,
			`entry ${number} of the export is another one than the proof's`,
		);
		mustBeOfExport(tree);
		return `entry ${number} is in the tree of ${tree.size} entries with root ${tree.root}`;
	}
	must(proof.kind === 'consistency', `a proof of kind ${JSON.stringify(proof.kind)} is not known`);
	const [from, to] = [treeOf(proof.from), treeOf(proof.to)];
	must(from.size <= to.size, 'the later tree is smaller than the earlier one');
	const [before, after] = grow({ from: from.size, to: to.size, old: Buffer.from(from.root, 'hex') }, path);
	const roots = [before, after].map((root) => root.toString('hex'));
	must(roots.join() === [from.root, to.root].join(), `the proof does not lead from the tree of ${from.size} entries to that of ${to.size}`);
	mustBeOfExport(from);
	mustBeOfExport(to);
	return `the tree of ${from.size} entries with root ${from.root} is the beginning of that of ${to.size} with root ${to.root}`;
}

async function main(args: readonly string[]): Promise<number> {
	const heads: Head[] = [];
	const proofs: string[] = [];
	let file: string | undefined;
	for (let at = 0; at < args.length; at += 1) {
		const value = args[at + 1] ?? '';
		if (args[at] === '--head')
			heads.push(headOf({ number: Number(value.split(':')[0]), hash: value.split(':')[1] }));
		else if (args[at] === '--proof') proofs.push(value);
		else {
			file = args[at];
			continue;
		}
		at += 1;
	}
	if (file === undefined) {
		console.error('usage: node verifier.mjs EXPORT.jsonl [--head NUMBER:HASH]... [--proof FILE.json]...');
		return 2;
	}
	const input = createReadStream(file, 'utf8');
	const unreadable = new Promise<never>((_, reject) => input.once('error', reject));
	const lines = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY });
	const checked = await Promise.race([verifyExport(lines, heads), unreadable]);
	const { shop, named, hashes } = checked;
	console.log(`shop ${shop}: ${hashes.length} entries, chain unbroken, ${named} with name and text`);
	console.log(`head ${hashes.length}:${hashes.at(-1)}\nroot ${rootOf(hashes).toString('hex')}`);
	for (const proof of proofs) console.log(verifyProof(JSON.parse(readFileSync(proof, 'utf8')), checked));
	return 0;
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
	main(process.argv.slice(2)).then(
		(status) => {
			process.exitCode = status;
		},
		(error: unknown) => {
			const message = error instanceof Error ? error.message : String(error);
			console.error(error instanceof Wrong ? `WRONG: ${message}` : `could not be checked: ${message}`);
			process.exitCode = error instanceof Wrong ? 1 : 2;
		},
	);
}
