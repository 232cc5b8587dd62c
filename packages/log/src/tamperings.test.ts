/**
 * A thousand random tamperings with a log: a bit flipped, an entry taken away, two exchanged, an entry cut short, a proof
 * forged. Each must be found and its entry named twice: by the log's own walk over the database, and by the independent
 * verifier, which gets what stands in the tables as a copy that trusts nothing would write it down.
 */
import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import BetterSqlite3 from 'better-sqlite3';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { entryOf } from '../../../tests/log/entries.js';
import {
	type ConsistencyProof,
	type InclusionProof,
	isConsistent,
	isIncluded,
	type Log,
	leafHash,
	openLog,
} from './index.js';
import { type Checked, verifyExport, verifyProof, Wrong } from './verifier.mjs';

const SHOP = 'slack:T1';
const ENTRIES = 24;
const VERIFIER = fileURLToPath(new URL('../dist/verifier.mjs', import.meta.url));

let folder: string;
let log: Log;
let database: BetterSqlite3.Database;

beforeAll(async () => {
	folder = await mkdtemp(join(tmpdir(), 'lugbook-tamperings-'));
	const path = join(folder, 'log.db');
	log = await openLog(`sqlite:${path}`);
	for (let number = 1; number <= ENTRIES; number += 1) {
		await log.append(
			entryOf({
				shop: SHOP,
				// No tampering makes one delivery another: the table would refuse two that are alike.
				delivery: `${(number * 7919).toString(36)} ${number}`,
				thread: `T${number % 3}`,
				build: 'heron',
				topic: 'wire',
				state: 'answered',
				personId: `U${number % 3}`,
				personName: `Person ${number % 3}`,
				text: `question ${number} é`,
				follows: number === 1 ? null : number - 1,
				body: { headline: `${number} AWG copper`, currentA: 40 + number / 7, list: [number, null, true] },
			}),
		);
	}
	await log.forget(SHOP, 'U1');
	database = new BetterSqlite3(path);
	database.pragma('foreign_keys = OFF');
	database.pragma('synchronous = OFF');
	database.exec(`drop trigger entries_no_update; drop trigger entries_no_delete;
		create table entries_before as select * from entries; create table erasable_before as select * from erasable`);
});

afterAll(async () => {
	database.close();
	await log.close();
	await rm(folder, { recursive: true, force: true });
});

function restore(): void {
	database.exec(`begin; delete from entries; insert into entries select * from entries_before;
		delete from erasable; insert into erasable select * from erasable_before; commit`);
}

/** Marsaglia's xorshift with 32 bits: the same tamperings at every run. */
let state = 20261125;
function below(end: number): number {
	state ^= state << 13;
	state ^= state >>> 17;
	state ^= state << 5;
	return (state >>> 0) % end;
}

function oneOf<T>(list: readonly T[]): T {
	return list[below(list.length)] as T;
}

type Row = Record<string, string | number | null>;

/** What stands in the tables, as a copy that checks nothing would write it down. */
function copyOut(): string[] {
	const head = database.prepare('select number, hash from heads where shop = ?').get(SHOP) as Row;
	const rows = database
		.prepare(
			`select entries.*, erasable.person_id, erasable.person_name, erasable.text, erasable.salt, people.salt as tag_salt
			from entries left join erasable on erasable.shop = entries.shop and erasable.number = entries.number
			left join people on people.shop = erasable.shop and people.person_id = erasable.person_id
			where entries.shop = ? order by entries.number`,
		)
		.all(SHOP) as Row[];
	const text = (value: Row[string] | undefined) => JSON.stringify(value ?? null);
	return [
		`{"format":"lugbook-log-1","head":{"hash":${text(head.hash)},"number":${head.number}},"shop":${text(SHOP)}}`,
		...rows.map((row) => {
			const erasable =
				row.salt === null
					? 'null'
					: `{"personId":${text(row.person_id)},"personName":${text(row.person_name)},"salt":${text(row.salt)},"tagSalt":${text(row.tag_salt)},"text":${text(row.text)}}`;
			return `{"at":${text(row.at)},"body":${row.body},"build":${text(row.build)},"channel":${text(row.channel)},"commitment":${text(row.commitment)},"delivery":${text(row.delivery)},"erasable":${erasable},"follows":${text(row.follows)},"hash":${text(row.hash)},"kind":${text(row.kind)},"number":${row.number},"personTag":${text(row.person_tag)},"platform":${text(row.platform)},"previousHash":${text(row.previous_hash)},"replaces":${text(row.replaces)},"state":${text(row.state)},"thread":${text(row.thread)},"topic":${text(row.topic)}}`;
		}),
	];
}

const chainedColumns =
	'kind delivery platform channel thread build topic at state person_tag commitment body previous_hash hash'.split(
		' ',
	);
const erasableColumns = ['person_id', 'person_name', 'text', 'salt'];

/** A place in the tables that holds text: of an entry, or of what can be erased of it. */
function placeOf(number: number): { table: string; column: string; text: Buffer } {
	const isThere = database.prepare('select 1 from erasable where number = ? and shop = ?').get(number, SHOP);
	const column = oneOf(isThere === undefined ? chainedColumns : [...chainedColumns, ...erasableColumns]);
	const table = chainedColumns.includes(column) ? 'entries' : 'erasable';
	const row = database
		.prepare(`select cast(${column} as blob) as bytes from ${table} where number = ? and shop = ?`)
		.get(number, SHOP) as { bytes: Buffer };
	return { table, column, text: row.bytes };
}

function write(number: number, { table, column }: { table: string; column: string }, bytes: Buffer): void {
	database
		.prepare(`update ${table} set ${column} = cast(? as text) where number = ? and shop = ?`)
		.run(bytes, number, SHOP);
}

/** Each does one thing at random and says which entry must be named. */
const tamperings = {
	'a flipped bit': () => {
		const number = 1 + below(ENTRIES);
		const place = placeOf(number);
		const bytes = Buffer.from(place.text);
		const at = below(bytes.length);
		bytes[at] = (bytes[at] as number) ^ (1 << below(8));
		write(number, place, bytes);
		return number;
	},
	'an entry taken away': () => {
		const number = 1 + below(ENTRIES);
		database.prepare('delete from erasable where number = ? and shop = ?').run(number, SHOP);
		database.prepare('delete from entries where number = ? and shop = ?').run(number, SHOP);
		return number;
	},
	'two entries exchanged': () => {
		const first = 1 + below(ENTRIES - 1);
		const second = first + 1 + below(ENTRIES - first);
		const column = oneOf(['number', 'body', 'hash', 'commitment']);
		const of = (number: number) =>
			(
				database
					.prepare(`select ${column} as value from entries where number = ? and shop = ?`)
					.get(number, SHOP) as Row
			).value as string | number;
		const set = (value: string | number, number: number) =>
			database
				.prepare(`update entries set ${column} = ? where number = ? and shop = ?`)
				.run(value, number, SHOP);
		const [a, b] = [of(first), of(second)];
		if (column === 'number') {
			set(0, first);
			set(first, second);
			set(second, 0);
		} else {
			set(b, first);
			set(a, second);
		}
		return first;
	},
	'an entry cut short': () => {
		const number = 1 + below(ENTRIES);
		const place = placeOf(number);
		write(number, place, place.text.subarray(0, below(place.text.length)));
		return number;
	},
} satisfies Record<string, () => number>;

/** The entry that the verifier names first. */
async function namedByVerifier(lines: readonly string[]): Promise<number> {
	const error: unknown = await verifyExport(lines).then(
		() => null,
		(one: unknown) => one,
	);
	if (!(error instanceof Wrong)) throw new Error(`the verifier says ${String(error)}`, { cause: error });
	return Number(/entry (\d+)/.exec(error.message)?.[1]);
}

test('the untouched log is right for both', async () => {
	expect((await log.verify()).ok).toBe(true);
	expect((await verifyExport(copyOut())).hashes).toHaveLength(ENTRIES);
});

test('800 random tamperings with entries: each is found and its entry named, by both', async () => {
	for (const [name, tamper] of Object.entries(tamperings)) {
		const seen = new Set<number>();
		for (let count = 0; count < 200; count += 1) {
			const number = tamper();
			seen.add(number);
			const { problem } = await log.verify(SHOP);
			expect([problem?.number, await namedByVerifier(copyOut())], `${name}, the ${count}th`).toEqual([
				number,
				number,
			]);
			expect(problem?.message).toContain(`entry ${number} of shop ${SHOP}`);
			restore();
		}
		// At random means: nearly every entry had its turn.
		expect(seen.size).toBeGreaterThan(ENTRIES - 4);
	}
	expect((await log.verify()).ok).toBe(true);
	expect((await verifyExport(copyOut())).hashes).toHaveLength(ENTRIES);
});

const bytes = (hex: string) => Buffer.from(hex, 'hex');

/** Whether the log itself would stand by a proof: it holds by its sums, and its trees are those of the log. */
async function holds(proof: InclusionProof | ConsistencyProof): Promise<boolean> {
	const isTree = async ({ size, root }: { size: number; root: string }) =>
		size >= 1 && size <= ENTRIES && (await log.tree(SHOP, size)).root === root;
	const path = proof.path.map(bytes);
	if (proof.kind === 'inclusion') {
		const leaf = { hash: leafHash(bytes(proof.hash)), index: proof.number - 1 };
		const tree = { size: proof.tree.size, root: bytes(proof.tree.root) };
		return (await isTree(proof.tree)) && isIncluded(leaf, tree, path);
	}
	const [from, to] = [proof.from, proof.to].map(({ size, root }) => ({ size, root: bytes(root) }));
	if (from === undefined || to === undefined) return false;
	return (await isTree(proof.from)) && (await isTree(proof.to)) && isConsistent(from, to, path);
}

function flipped(hex: string): string {
	const flippedBytes = bytes(hex);
	const at = below(flippedBytes.length);
	flippedBytes[at] = (flippedBytes[at] as number) ^ (1 << below(8));
	return flippedBytes.toString('hex');
}

/** A path with a step changed, taken away, put in, or two exchanged. */
function forgedPath(path: readonly string[]): string[] {
	const at = below(path.length);
	const next = (at + 1) % path.length;
	const step = path[at] as string;
	switch (path.length < 2 ? below(3) : below(4)) {
		case 0:
			return path.with(at, flipped(step));
		case 1:
			return path.toSpliced(at, 1);
		case 2:
			return path.toSpliced(at, 0, flipped(step));
		default:
			return path.with(at, path[next] as string).with(next, step);
	}
}

function moved(number: number): number {
	return number + (below(2) === 0 ? -1 : 1) * (1 + below(3));
}

function forged(proof: InclusionProof | ConsistencyProof): InclusionProof | ConsistencyProof {
	const what = below(4);
	if (what === 0 && proof.path.length > 0) return { ...proof, path: forgedPath(proof.path) };
	if (proof.kind === 'inclusion') {
		const { tree } = proof;
		switch (what) {
			case 1:
				return { ...proof, hash: flipped(proof.hash) };
			case 2:
				return { ...proof, number: moved(proof.number) };
			default:
				return { ...proof, tree: { ...tree, root: flipped(tree.root) } };
		}
	}
	const which = oneOf(['from', 'to'] as const);
	const tree = proof[which];
	const other = what === 1 ? { ...tree, size: moved(tree.size) } : { ...tree, root: flipped(tree.root) };
	return { ...proof, [which]: other };
}

test('200 forged proofs: none is believed, by the log or by the verifier, which says what is wrong', async () => {
	const checked: Checked = await verifyExport(copyOut());
	for (let count = 0; count < 200; count += 1) {
		const to = 2 + below(ENTRIES - 1);
		const from = 1 + below(to - 1);
		const proof =
			count % 2 === 0 ? await log.inclusion(SHOP, from, to) : await log.consistency(SHOP, from, to);
		expect(await holds(proof)).toBe(true);
		expect(verifyProof(proof, checked)).toContain('root');
		const forgery = forged(proof);
		const title = JSON.stringify(forgery);
		expect(await holds(forgery), title).toBe(false);
		expect(() => verifyProof(forgery, checked), title).toThrow(/proof|tree|entry \d+|head/);
		expect(() => verifyProof(forgery, checked), title).toThrow(Wrong);
	}
});

test('the verifier as a program of its own names the same entry, with exit status 1', async () => {
	const file = join(folder, 'tampered.jsonl');
	for (const tamper of Object.values(tamperings)) {
		for (let count = 0; count < 3; count += 1) {
			const number = tamper();
			await writeFile(file, `${copyOut().join('\n')}\n`);
			restore();
			const said: { code?: number; stderr?: string } = await promisify(execFile)(process.execPath, [
				VERIFIER,
				file,
			]).catch((error: { code: number; stderr: string }) => error);
			expect(said.code).toBe(1);
			expect(said.stderr).toMatch(new RegExp(`^WRONG: .*entry ${number}\\b`));
		}
	}
});
