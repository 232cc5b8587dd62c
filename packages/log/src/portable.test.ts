/** Export, import and the move from one database to another; the independent check of what was exported. */
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import { entryHash } from './chain.js';
import { copyLog, isConsistent, isIncluded, type Json, type Log, leafHash, openLog } from './index.js';
import { canonicalJson } from './json.js';
import { verifyExport, verifyProof, Wrong } from './verifier.mjs';

const SHOP = 'slack:T1';
const VERIFIER = fileURLToPath(new URL('../dist/verifier.mjs', import.meta.url));

async function linesOf(log: Log, persons = true, shop = SHOP): Promise<string[]> {
	const lines: string[] = [];
	for await (const line of log.export(shop, { persons })) lines.push(line);
	return lines;
}

/** Entries of all sorts, with one of three people forgotten. */
async function fill(log: Log, count: number): Promise<void> {
	for (let number = 1; number <= count; number += 1) {
		await log.append(
			entryOf({
				shop: SHOP,
				delivery: number % 3 === 0 ? null : `Ev${number}`,
				thread: number % 2 === 0 ? 'T1' : null,
				personId: `U${number % 3}`,
				personName: `Person ${number % 3} "é😀"`,
				text: `question ${number}\n\u0001`,
				follows: number === 1 ? null : number - 1,
				body: { headline: 'tank 80 l', n: number, z: [1.5e-7, -0.25, null, true], 'é"\\': '😀' },
			}),
		);
	}
	await log.forget(SHOP, 'U1');
}

/** An entry's line with something changed and the hash made to fit, as a forger would. */
function rehashed(line: string, change: { [key: string]: Json }): string {
	const { hash: _, erasable, body, ...fields } = { ...JSON.parse(line), ...change };
	const hash = entryHash({ ...fields, shop: SHOP, bodyText: canonicalJson(body) });
	return canonicalJson({ ...fields, body, erasable, hash });
}

/** All that can be read of a log. */
async function contentOf(log: Log, shop = SHOP): Promise<unknown[]> {
	return await log.fold(shop, {}, [] as unknown[], (all, entry) => [...all, entry]);
}

/** Every database as source and as target. */
const DIRECTIONS = DIALECTS.flatMap((from) =>
	DIALECTS.map((to) => ({ from, to, title: `${from.title} to ${to.title}` })),
);

describe.each(DIRECTIONS)('$title', ({ from, to }) => {
	let source: Log;
	let target: Log;
	let closeSource: () => Promise<void>;
	let closeTarget: () => Promise<void>;

	async function open(dialect: typeof from): Promise<{ log: Log; close(): Promise<void> }> {
		const { url, remove } = await dialect.fresh();
		const log = await openLog(url, { searchable: [] });
		return {
			log,
			async close() {
				await log.close();
				await remove();
			},
		};
	}

	// No test changes the shop in the source.
	beforeAll(async () => {
		({ log: source, close: closeSource } = await open(from));
		await fill(source, 250);
	});

	beforeEach(async () => {
		({ log: target, close: closeTarget } = await open(to));
	});

	afterEach(async () => {
		await closeTarget();
	});

	afterAll(async () => {
		await closeSource();
	});

	test('an export taken in is the same log: content, chain, people, words, and it can be written on', async () => {
		expect(await target.import(await linesOf(source))).toEqual({ shop: SHOP, written: 250, present: 0 });
		expect(await contentOf(target)).toEqual(await contentOf(source));
		expect(await target.verify()).toEqual(await source.verify());
		expect(await linesOf(target)).toEqual(await linesOf(source));
		for (const words of ['question 7', 'tank', 'zebra']) {
			const found = await source.find(SHOP, { words });
			expect(await target.find(SHOP, { words })).toEqual(found);
		}
		const known = await source.find(SHOP, { personId: 'U2', limit: 1 });
		const { entry } = await target.append(entryOf({ shop: SHOP, personId: 'U2' }));
		expect(entry.number).toBe(251);
		expect(entry.personTag).toBe(known.entries[0]?.personTag);
		expect(await target.append(entryOf({ shop: SHOP, delivery: 'Ev7' }))).toMatchObject({
			repeated: true,
			entry: { number: 7 },
		});
		expect(await target.forget(SHOP, 'U2')).toBe(84);
		expect((await target.verify()).ok).toBe(true);
	});

	test('without people it has neither name nor text, and still the chain', async () => {
		const lines = await linesOf(source, false);
		expect(lines.join('\n')).not.toMatch(/Person|question|U2/);
		await target.import(lines);
		expect(await target.verify()).toMatchObject({ ok: true, shops: [{ entries: 250, erased: 250 }] });
		expect(await target.head(SHOP)).toEqual(await source.head(SHOP));
	});

	test('an import that was interrupted is finished by another; a third changes nothing', async () => {
		const lines = await linesOf(source);
		await expect(target.import(lines.slice(0, 231))).rejects.toMatchObject({
			code: 'bad-entry',
			message: 'the export ends at entry 230, but its first line says 250: part of it is missing',
		});
		expect((await target.verify()).shops).toMatchObject([{ entries: 230, problem: null }]);
		expect(await target.import(lines)).toEqual({ shop: SHOP, written: 20, present: 230 });
		expect(await target.import(lines)).toEqual({ shop: SHOP, written: 0, present: 250 });
		expect(await contentOf(target)).toEqual(await contentOf(source));
	});

	test('whoever was forgotten in the target stays forgotten when the export comes again', async () => {
		const lines = await linesOf(source);
		await target.import(lines);
		await target.forget(SHOP, 'U2');
		expect(await target.import(lines)).toMatchObject({ written: 0, present: 250 });
		expect((await target.entry(SHOP, 2))?.erased).toBe(true);
		expect((await target.verify()).ok).toBe(true);
	});

	test('another history of the same shop is not mixed in', async () => {
		const lines = await linesOf(source);
		await target.append(entryOf({ shop: SHOP }));
		await expect(target.import(lines)).rejects.toMatchObject({
			code: 'bad-entry',
			message: `entry 1 of shop ${SHOP} is another one in this log than in the export`,
		});
		expect((await target.verify()).shops).toMatchObject([{ entries: 1, problem: null }]);
	});

	test('copyLog brings every shop and every setting, and may be run again', async () => {
		await source.append(entryOf({ shop: 'local' }));
		await source.setSetting('slack:T9', 'installation', 'xoxb');
		await source.setSetting('local', 'units', 'us');
		expect(await copyLog(source, target)).toMatchObject({
			shops: [{ written: 1 }, { written: 250 }],
			settings: 2,
		});
		await source.append(entryOf({ shop: 'local' }));
		expect(await copyLog(source, target)).toMatchObject({
			shops: [{ written: 1, present: 1 }, { written: 0 }],
		});
		expect(await target.settings()).toEqual(await source.settings());
		expect(await contentOf(target, 'local')).toEqual(await contentOf(source, 'local'));
		expect((await target.verify()).ok).toBe(true);
	});

	test('a forged export is refused at the forged entry, and what stands before it is right', async () => {
		const lines = await linesOf(source);
		const forged = (number: number, change: (line: { [key: string]: Json }) => void) => {
			const line = JSON.parse(lines[number] ?? '');
			change(line);
			return [...lines.slice(0, number), canonicalJson(line), ...lines.slice(number + 1)];
		};
		const cases: [string[], string, string][] = [
			[
				lines.with(3, rehashed(lines[3] ?? '', { previousHash: '1'.repeat(64) })),
				'corrupt',
				'it does not carry the hash of the entry before it',
			],
			[
				forged(3, (line) => Object.assign(line, { body: 'other' })),
				'corrupt',
				'line 4, entry 3 of shop slack:T1: its content',
			],
			[forged(3, (line) => Object.assign(line, { hash: '0'.repeat(64) })), 'corrupt', 'entry 3'],
			[
				forged(2, (line) => Object.assign(line.erasable ?? {}, { text: 'other' })),
				'corrupt',
				'name, id or text',
			],
			[
				forged(2, (line) => Object.assign(line.erasable ?? {}, { tagSalt: '0'.repeat(64) })),
				'corrupt',
				'name, id or text',
			],
			[forged(3, (line) => Object.assign(line, { kind: 'bought' })), 'bad-entry', 'line 4.kind is "bought"'],
			[forged(3, (line) => Object.assign(line, { extra: 1 })), 'bad-entry', 'not known: extra'],
			[lines.toSpliced(3, 1), 'bad-entry', 'line 4, entry 4 of shop slack:T1: entry 3 was expected'],
			[lines.toSpliced(3, 0, lines[3] ?? ''), 'bad-entry', 'entry 4 was expected'],
			[lines.with(3, '{'), 'bad-entry', 'line 4 is not JSON'],
			[lines.with(0, '{"format":"other"}'), 'bad-entry', 'line 1.format is "other"'],
			[lines.with(3, ' '.repeat(5_000_000)), 'bad-entry', 'line 4 is longer than'],
			[[], 'bad-entry', 'the export is empty'],
			[lines.slice(1), 'bad-entry', 'line 1'],
		];
		for (const [bad, code, message] of cases) {
			await expect(target.import(bad), message).rejects.toMatchObject({
				code,
				message: expect.stringContaining(message),
			});
			expect((await target.verify()).ok).toBe(true);
		}
		expect(await target.import(lines)).toMatchObject({ shop: SHOP });
		expect(await contentOf(target)).toEqual(await contentOf(source));
	});
});

test('a person who was forgotten in the source between two imports is to be forgotten in the target too', async () => {
	const source = await openLog('sqlite::memory:');
	const target = await openLog('sqlite::memory:');
	await fill(source, 10);
	await target.import(await linesOf(source));
	await source.forget(SHOP, 'U2');
	await source.append(entryOf({ shop: SHOP, personId: 'U2' }));
	const lines = await linesOf(source);
	await expect(target.import(lines)).rejects.toMatchObject({
		code: 'bad-entry',
		message: expect.stringContaining('has another pseudonym in this log than in the export'),
	});
	expect(await target.verify()).toMatchObject({ ok: true, shops: [{ entries: 10 }] });
	await target.forget(SHOP, 'U2');
	expect(await target.import(lines)).toMatchObject({ written: 1, present: 10 });
	expect(await contentOf(target)).toEqual(await contentOf(source));
	expect((await target.verify()).ok).toBe(true);
	await source.close();
	await target.close();
});

test('a shop without entries has nothing to export', async () => {
	const log = await openLog('sqlite::memory:');
	await expect(linesOf(log)).rejects.toMatchObject({ code: 'bad-entry' });
	await log.close();
});

describe('proofs', () => {
	let log: Log;
	const bytes = (hex: string) => Buffer.from(hex, 'hex');

	beforeEach(async () => {
		log = await openLog('sqlite::memory:');
		for (let number = 1; number <= 21; number += 1) await log.append(entryOf({ shop: SHOP, body: number }));
	});

	afterEach(async () => {
		await log.close();
	});

	test('of inclusion hold for every entry in every tree, and for no other root', async () => {
		for (const size of [1, 8, 13, 21]) {
			for (let number = 1; number <= size; number += 1) {
				const { hash, tree, path } = await log.inclusion(SHOP, number, size);
				expect(hash).toBe((await log.entry(SHOP, number))?.hash);
				expect(tree).toEqual(await log.tree(SHOP, size));
				const leaf = { hash: leafHash(bytes(hash)), index: number - 1 };
				const root = { size, root: bytes(tree.root) };
				expect(isIncluded(leaf, root, path.map(bytes))).toBe(true);
				expect(isIncluded(leaf, { size, root: Buffer.alloc(32) }, path.map(bytes))).toBe(false);
			}
		}
	});

	test('of consistency tie a tree that was noted to what the log has grown to', async () => {
		const noted = await log.tree(SHOP);
		expect(noted.size).toBe(21);
		await log.append(entryOf({ shop: SHOP }));
		await log.forget(SHOP, 'U1');
		const { from, to, path } = await log.consistency(SHOP, noted.size);
		expect(from).toEqual(noted);
		expect(to).toEqual(await log.tree(SHOP));
		const [old, grown] = [from, to].map(({ size, root }) => ({ size, root: bytes(root) }));
		if (old === undefined || grown === undefined) throw new Error('unreachable');
		expect(isConsistent(old, grown, path.map(bytes))).toBe(true);
		expect(isConsistent({ ...old, root: Buffer.alloc(32) }, grown, path.map(bytes))).toBe(false);
	});

	test('of trees that were never there are refused', async () => {
		for (const attempt of [
			() => log.tree(SHOP, 22),
			() => log.inclusion(SHOP, 22),
			() => log.inclusion(SHOP, 5, 4),
			() => log.inclusion(SHOP, 0),
			() => log.consistency(SHOP, 22),
			() => log.consistency(SHOP, 5, 4),
			() => log.inclusion('local', 1),
		]) {
			await expect(attempt()).rejects.toMatchObject({ code: 'bad-entry' });
		}
		// RFC 9162, section 2.1.1: the tree without leaves is the hash of nothing.
		expect(await log.tree('local')).toEqual({
			size: 0,
			root: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
		});
	});
});

describe('the independent verifier', () => {
	let log: Log;
	let lines: string[];

	beforeEach(async () => {
		log = await openLog('sqlite::memory:');
		await fill(log, 20);
		lines = await linesOf(log);
	});

	afterEach(async () => {
		await log.close();
	});

	test('accepts an export with and without people, and counts what it saw', async () => {
		const head = await log.head(SHOP);
		const checked = await verifyExport(lines, head === null ? [] : [head]);
		expect(checked).toMatchObject({ shop: SHOP, named: 13 });
		expect(checked.hashes.at(-1)).toBe(head?.hash);
		expect(await verifyExport(await linesOf(log, false))).toMatchObject({ named: 0 });
	});

	test('accepts every proof of the log', async () => {
		const checked = await verifyExport(lines);
		for (let size = 1; size <= 20; size += 1) {
			for (const number of [1, Math.ceil(size / 2), size]) {
				expect(verifyProof(await log.inclusion(SHOP, number, size), checked)).toContain(
					`entry ${number} is in the tree of ${size}`,
				);
				expect(verifyProof(await log.consistency(SHOP, number, size), checked)).toContain(
					`is the beginning of that of ${size}`,
				);
			}
		}
	});

	test('any one character of an export changed, taken away or put in is noticed', async () => {
		const whole = lines.join('\n');
		await fc.assert(
			fc.asyncProperty(
				fc.integer({ min: 0, max: whole.length - 1 }),
				fc.constantFrom('change', 'remove', 'insert'),
				fc.constantFrom('0', 'a', ' ', '"', ',', '\n', '{', 'é'),
				async (at, how, character) => {
					fc.pre(how === 'remove' || whole[at] !== character);
					const changed =
						whole.slice(0, at) +
						(how === 'remove' ? '' : character) +
						whole.slice(how === 'insert' ? at : at + 1);
					fc.pre(changed !== whole);
					await expect(verifyExport(changed.split('\n'))).rejects.toThrow(Wrong);
				},
			),
			{ numRuns: 1000 },
		);
	});

	test('names the first entry that is wrong', async () => {
		const changed = (number: number, change: { [key: string]: Json }) =>
			lines.with(number, canonicalJson({ ...JSON.parse(lines[number] ?? ''), ...change }));
		const cases: [string[], string][] = [
			[changed(4, { state: 'signed' }), 'the content of entry 4 does not match its hash'],
			[
				lines.with(4, rehashed(lines[4] ?? '', { body: 'other' })),
				'entry 5 does not carry the hash of the entry before it',
			],
			[changed(4, { number: 5 }), 'entry 4 is missing; number 5 stands in its place'],
			[
				changed(5, { erasable: { personId: 'U2', personName: 'x', text: 'y', salt: '00', tagSalt: '00' } }),
				'the name or text of entry 5 does not match',
			],
			[lines.toSpliced(7, 1), 'entry 7 is missing; number 8 stands in its place'],
			[lines.slice(0, -1), 'entry 20 was written, but the export ends at 19'],
			[[...lines, lines[20] ?? ''], 'entry 21 is missing; number 20 stands in its place'],
			[lines.slice(1), 'the first line does not have exactly the fields'],
			[[], 'the export is empty'],
			[lines.with(4, `{"__proto__":1,${lines[4]?.slice(1)}`), 'entry 4 does not have exactly the fields'],
		];
		for (const [bad, message] of cases) await expect(verifyExport(bad), message).rejects.toThrow(message);
	});

	test('a key that is there twice is not read in one way or the other', async () => {
		const twice = lines.with(4, (lines[4] ?? '').replace('{"at":', '{"at":"2000-01-01T00:00:00.000Z","at":'));
		await expect(verifyExport(twice)).rejects.toThrow('entry 4 is not in its canonical form');
	});

	test('an export that was rewritten from some entry on is caught by a head that was noted', async () => {
		const noted = { number: 12, hash: (await log.entry(SHOP, 12))?.hash ?? '' };
		const forger = await openLog('sqlite::memory:');
		await fill(forger, 20);
		const forged = await linesOf(forger);
		await forger.close();
		await verifyExport(forged);
		await expect(verifyExport(forged, [noted])).rejects.toThrow('entry 12 is not the one that was known');
		await expect(verifyExport(lines.slice(0, 11), [noted])).rejects.toThrow(Wrong);
	});

	test('no spoiled proof is believed', async () => {
		const checked = await verifyExport(lines);
		const inclusion = await log.inclusion(SHOP, 6, 19);
		const consistency = await log.consistency(SHOP, 6, 19);
		const zeros = '0'.repeat(64);
		const spoiled: unknown[] = [
			null,
			[],
			{ ...inclusion, shop: 'local' },
			{ ...inclusion, kind: 'promise' },
			{ ...inclusion, number: 7 },
			{ ...inclusion, number: 20 },
			{ ...inclusion, number: 0 },
			{ ...inclusion, number: '6' },
			{ ...inclusion, hash: checked.hashes[6] },
			{ ...inclusion, hash: 'x' },
			{ ...inclusion, tree: { ...inclusion.tree, size: 18 } },
			// A root does not tell its size: in a tree beyond the export this one would stand as its own claim.
			{ ...inclusion, tree: { ...inclusion.tree, size: 20 } },
			{ ...inclusion, tree: { ...inclusion.tree, root: zeros } },
			{ ...inclusion, tree: null },
			{ ...inclusion, path: inclusion.path.slice(1) },
			{ ...inclusion, path: [...inclusion.path, zeros] },
			{ ...inclusion, path: inclusion.path.toReversed() },
			{ ...inclusion, path: inclusion.path.with(2, zeros) },
			{ ...inclusion, path: inclusion.path.with(2, 'short') },
			{ ...inclusion, path: undefined },
			{ ...consistency, from: consistency.to, to: consistency.from },
			{ ...consistency, from: { ...consistency.from, root: zeros } },
			{ ...consistency, to: { ...consistency.to, root: zeros } },
			{ ...consistency, from: { ...consistency.from, size: 5 } },
			{ ...consistency, to: { ...consistency.to, size: 18 } },
			{ ...consistency, path: consistency.path.slice(1) },
			{ ...consistency, path: [...consistency.path, zeros] },
			{ ...consistency, path: [] },
			{ ...consistency, path: consistency.path.with(0, zeros) },
		];
		for (const proof of spoiled)
			expect(() => verifyProof(proof, checked), JSON.stringify(proof)).toThrow(Wrong);
	});

	test('a good proof of another chain does not pass beside this export', async () => {
		const checked = await verifyExport(lines);
		const other = await openLog('sqlite::memory:');
		await fill(other, 20);
		const inclusion = await other.inclusion(SHOP, 3);
		expect(() => verifyProof(inclusion, checked)).toThrow('of the export is another one');
		const consistency = await other.consistency(SHOP, 5, 9);
		expect(() => verifyProof(consistency, checked)).toThrow('make another tree');
		// Its later tree is beyond the export; the earlier one is not.
		for (let count = 0; count < 5; count += 1) await other.append(entryOf({ shop: SHOP }));
		const beyond = await other.consistency(SHOP, 5, 25);
		expect(() => verifyProof(beyond, checked)).toThrow('the first 5 entries of the export make another tree');
		await other.close();
	});

	test('as a program of its own: what it says and its exit status', async () => {
		if (!existsSync(VERIFIER))
			throw new Error(`${VERIFIER} is missing: build the workspace first (npm run build)`);
		const folder = await mkdtemp(join(tmpdir(), 'lugbook-verifier-'));
		const file = join(folder, 'export.jsonl');
		const proof = join(folder, 'proof.json');
		const run = (...args: string[]) =>
			new Promise<{ status: number; said: string }>((resolve) => {
				execFile(
					process.execPath,
					[VERIFIER, ...args],
					{ env: { PATH: process.env.PATH } },
					(error, out, err) =>
						resolve({ status: typeof error?.code === 'number' ? error.code : 0, said: out + err }),
				);
			});
		await writeFile(file, lines.map((line) => `${line}\n`).join(''));
		await writeFile(proof, JSON.stringify(await log.inclusion(SHOP, 6)));
		const head = await log.head(SHOP);
		const tree = await log.tree(SHOP);
		expect(await run(file, '--head', `20:${head?.hash}`, '--proof', proof)).toEqual({
			status: 0,
			said: [
				`shop ${SHOP}: 20 entries, chain unbroken, 13 with name and text`,
				`head 20:${head?.hash}`,
				`root ${tree.root}`,
				`entry 6 is in the tree of 20 entries with root ${tree.root}`,
				'',
			].join('\n'),
		});
		expect(await run(file, '--head', `19:${head?.hash}`)).toMatchObject({
			status: 1,
			said: expect.stringContaining('WRONG: entry 19'),
		});
		await writeFile(file, lines.slice(0, 9).join('\n'));
		expect(await run(file)).toMatchObject({
			status: 1,
			said: 'WRONG: entry 20 was written, but the export ends at 8\n',
		});
		expect(await run(join(folder, 'none'))).toMatchObject({
			status: 2,
			said: expect.stringContaining('ENOENT'),
		});
		expect(await run()).toMatchObject({ status: 2, said: expect.stringContaining('usage') });
		await rm(folder, { recursive: true });
	});
});
