/** What the log asks of SQLite, and what becomes of it when the file itself is damaged. */
import { randomInt } from 'node:crypto';
import {
	copyFileSync,
	existsSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	statSync,
	writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import fc from 'fast-check';
import { sql } from 'kysely';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { entryOf } from '../../../tests/log/entries.js';
import { checkFilter, filtered, type LogFilter } from './find.js';
import { type Entry, LogError, openLog } from './index.js';
import { openSqlite } from './sqlite.js';

let folder: string;
let file: string;

beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'lugbook-sqlite-'));
	file = join(folder, 'log.db');
});

afterEach(() => {
	rmSync(folder, { recursive: true, force: true });
});

/** Everything in all files of the database, as bytes. */
function storedBytes(): Buffer {
	return Buffer.concat(readdirSync(folder).map((name) => readFileSync(join(folder, name))));
}

describe('settings', () => {
	test('every connection syncs each commit: also one that finds the file there', async () => {
		// The library falls back to NORMAL (1) in WAL mode after the first write and on each opening.
		for (let opening = 1; opening <= 2; opening += 1) {
			const database = await openSqlite(file, { patienceMs: 1000 });
			await sql`create table if not exists written (n integer)`.execute(database.db);
			await sql`insert into written values (1)`.execute(database.db);
			const pragma = async (name: string) =>
				Object.values(
					(await sql<Record<string, unknown>>`pragma ${sql.raw(name)}`.execute(database.db)).rows[0] ?? {},
				)[0];
			expect(await pragma('synchronous')).toBe(2);
			expect(await pragma('journal_mode')).toBe('wal');
			expect(await pragma('foreign_keys')).toBe(1);
			expect(await pragma('secure_delete')).toBe(1);
			await database.close();
		}
	});

	test('a transaction takes the write lock when it begins, a reading one does not', async () => {
		const database = await openSqlite(file, { patienceMs: 1000 });
		const raw = new BetterSqlite3(file, { timeout: 0 });
		await database.db.transaction().execute(async () => {
			expect(() => raw.exec('begin immediate')).toThrow('database is locked');
		});
		await database.db
			.transaction()
			.setAccessMode('read only')
			.execute(async () => {
				raw.exec('begin immediate; rollback');
			});
		raw.close();
		await database.close();
	});

	test('folders are made, for the owner alone, and so is the file', async () => {
		const deep = join(folder, 'a', 'b', 'log.db');
		const log = await openLog(`sqlite:${deep}`);
		await log.append(entryOf());
		for (const name of [join(folder, 'a'), join(folder, 'a', 'b')])
			expect(statSync(name).mode & 0o777).toBe(0o700);
		for (const ending of ['', '-wal', '-shm']) expect(statSync(deep + ending).mode & 0o777).toBe(0o600);
		await log.close();
	});
});

test('a folder that can not be made, a folder where the file should be, a file that is none: clear errors', async () => {
	writeFileSync(file, 'no database at all, but long enough to be looked at'.repeat(100));
	await expect(openLog(`sqlite:${file}`)).rejects.toMatchObject({ code: 'corrupt' });
	expect(readFileSync(file, 'utf8')).toContain('no database at all');
	await expect(openLog(`sqlite:${folder}`)).rejects.toMatchObject({ code: 'unavailable' });
	await expect(openLog(`sqlite:${file}/below/log.db`)).rejects.toMatchObject({ code: 'unavailable' });
	await expect(openLog('sqlite:/proc/none/log.db')).rejects.toMatchObject({ code: 'unavailable' });
});

test('a log of a newer version is left alone', async () => {
	await (await openLog(`sqlite:${file}`)).close();
	const raw = new BetterSqlite3(file);
	raw.exec(`insert into log_migrations values ('2999-01-01-later', '2999-01-01T00:00:00.000Z')`);
	raw.close();
	await expect(openLog(`sqlite:${file}`)).rejects.toMatchObject({
		code: 'unavailable',
		message: expect.stringContaining(
			'written by a newer version of this program (it has the step 2999-01-01-later)',
		),
	});
});

test('a migration that fails half-way leaves nothing behind', async () => {
	const raw = new BetterSqlite3(file);
	// Stands in the way of the step's last statement.
	raw.exec('create table word_index (x)');
	raw.close();
	await expect(openLog(`sqlite:${file}`)).rejects.toMatchObject({ code: 'unavailable' });
	const after = new BetterSqlite3(file);
	expect(after.prepare(`select name from sqlite_schema where name = 'entries'`).all()).toEqual([]);
	after.exec('drop table word_index');
	after.close();
	const log = await openLog(`sqlite:${file}`);
	expect((await log.append(entryOf())).entry.number).toBe(1);
	await log.close();
});

// Few entries among many: the index then merges nothing by itself. Many: it merges, but late.
test.each([
	[3, 150],
	[50, 50],
])(
	'what was forgotten of %d entries beside %d is in no byte of any file: name, id, text, a word of it',
	async (theirs, others) => {
		const log = await openLog(`sqlite:${file}`);
		const person = { personId: 'U77777', personName: 'Quentin' };
		for (let count = 0; count < Math.max(theirs, others); count += 1) {
			if (count < theirs)
				await log.append(entryOf({ ...person, text: `xylophone beside the zeppelin ${count}` }));
			if (count < others) await log.append(entryOf({ text: 'harpsichord' }));
		}
		const traces = ['U77777', 'Quentin', 'xylophone', 'zeppelin'];
		for (const trace of traces) expect(storedBytes().includes(trace), trace).toBe(true);
		expect(await log.forget('local', person.personId)).toBe(theirs);
		for (const trace of traces) expect(storedBytes().includes(trace), trace).toBe(false);
		expect(storedBytes().includes('harpsichord')).toBe(true);
		await log.close();
		for (const trace of traces) expect(storedBytes().includes(trace), trace).toBe(false);
	},
);

describe('backup', () => {
	test('of a log in use is a whole log of its own, for the owner alone', async () => {
		const log = await openLog(`sqlite:${file}`);
		for (let count = 0; count < 300; count += 1) await log.append(entryOf({ body: 'x'.repeat(3000) }));
		const copy = join(folder, 'backups', 'copy.db');
		const backup = log.backup(copy);
		const meanwhile = Promise.all(Array.from({ length: 50 }, () => log.append(entryOf())));
		await backup;
		await meanwhile;
		expect(statSync(copy).mode & 0o777).toBe(0o600);
		expect(readdirSync(join(folder, 'backups'))).toEqual(['copy.db']);
		const opened = await openLog(`sqlite:${copy}`);
		const count = (await opened.head('local'))?.number ?? 0;
		expect(count).toBeGreaterThanOrEqual(300);
		expect(await opened.verify()).toMatchObject({ ok: true, shops: [{ entries: count }] });
		expect(await opened.entry('local', 300)).toEqual(await log.entry('local', 300));
		expect((await opened.append(entryOf())).entry.number).toBe(count + 1);
		expect(await log.verify()).toMatchObject({ ok: true, shops: [{ entries: 350 }] });
		await opened.close();
		await log.close();
	});

	test('never overwrites a file, and leaves none behind when it fails', async () => {
		const log = await openLog(`sqlite:${file}`);
		const copy = join(folder, 'copy.db');
		writeFileSync(copy, 'precious');
		await expect(log.backup(copy)).rejects.toMatchObject({ code: 'unavailable' });
		expect(readFileSync(copy, 'utf8')).toBe('precious');
		await expect(log.backup(join(copy, 'below.db'))).rejects.toMatchObject({ code: 'unavailable' });
		expect(readdirSync(folder).filter((name) => name.includes('unfinished'))).toEqual([]);
		await log.close();
	});
});

describe('a damaged file', () => {
	let original: Entry[];
	let bytes: Buffer;

	beforeEach(async () => {
		const log = await openLog(`sqlite:${file}`);
		original = [];
		for (let count = 0; count < 40; count += 1) {
			const body = { headline: '4 AWG copper', working: 'x'.repeat(50 * count) };
			original.push((await log.append(entryOf({ build: 'heron', body }))).entry);
		}
		await log.close();
		bytes = readFileSync(file);
	});

	/**
	 * Opens what is left and reads all of it. Whatever was damaged: either the log says so, or every entry reads
	 * as it was written. It never ends otherwise.
	 */
	async function expectNoLie(): Promise<'noticed' | 'unharmed'> {
		try {
			const log = await openLog(`sqlite:${file}`, { patienceMs: 0 });
			try {
				const report = await log.verify();
				if (!report.ok) return 'noticed';
				const read = await log.fold('local', {}, [] as Entry[], (all, entry) => [...all, entry]);
				expect(read).toEqual(original);
				return 'unharmed';
			} finally {
				await log.close();
			}
		} catch (error) {
			expect(error).toBeInstanceOf(LogError);
			return 'noticed';
		}
	}

	function put(damaged: Buffer): void {
		for (const ending of ['-wal', '-shm']) rmSync(file + ending, { force: true });
		writeFileSync(file, damaged);
	}

	test('one byte changed, anywhere, is noticed or does no harm', async () => {
		let noticed = 0;
		await fc.assert(
			fc.asyncProperty(
				fc.integer({ min: 0, max: bytes.length - 1 }),
				fc.integer({ min: 1, max: 255 }),
				async (at, bits) => {
					const damaged = Buffer.from(bytes);
					damaged[at] = (damaged[at] ?? 0) ^ bits;
					put(damaged);
					if ((await expectNoLie()) === 'noticed') noticed += 1;
				},
			),
			{ numRuns: 300 },
		);
		// Much of the file is entries, so the check can't have been blind.
		expect(noticed).toBeGreaterThan(100);
	});

	test('a sector of zeros or of noise, anywhere, is noticed or does no harm', async () => {
		const sector = 512;
		for (let round = 0; round < 60; round += 1) {
			const damaged = Buffer.from(bytes);
			const start = sector * randomInt(Math.floor(bytes.length / sector));
			for (let at = start; at < start + sector; at += 1) damaged[at] = round % 2 === 0 ? 0 : randomInt(256);
			put(damaged);
			await expectNoLie();
		}
	});

	test('a file cut short, anywhere, is noticed', async () => {
		for (const share of [0.05, 0.2, 0.5, 0.8, 0.99]) {
			put(bytes.subarray(0, Math.floor(bytes.length * share)));
			expect(await expectNoLie(), `${share}`).toBe('noticed');
		}
	});

	test('an empty file in its place is an empty log, which only a kept head can tell from the lost one', async () => {
		put(Buffer.alloc(0));
		const log = await openLog(`sqlite:${file}`);
		expect((await log.verify()).shops).toEqual([]);
		const known = { number: 40, hash: original.at(-1)?.hash ?? '' };
		expect((await log.verify('local', known)).problem).toMatchObject({ number: 1, fault: 'known-head' });
		await log.close();
	});
});

test('a write-ahead file cut at any byte of its last entry leaves the log as it was before that entry', async () => {
	const log = await openLog(`sqlite:${file}`);
	await log.append(entryOf({ text: 'first' }));
	const before = statSync(`${file}-wal`).size;
	await log.append(entryOf({ text: 'second' }));
	const wal = readFileSync(`${file}-wal`);
	const copy = join(folder, 'copy.db');
	const seen = new Set<number>();
	for (
		let length = before;
		length <= wal.length;
		length += Math.max(1, Math.floor((wal.length - before) / 50))
	) {
		for (const ending of ['-wal', '-shm']) if (existsSync(copy + ending)) rmSync(copy + ending);
		copyFileSync(file, copy);
		writeFileSync(`${copy}-wal`, wal.subarray(0, length));
		const cut = await openLog(`sqlite:${copy}`);
		const report = await cut.verify();
		expect(report.ok).toBe(true);
		const count = (await cut.head('local'))?.number ?? 0;
		seen.add(count);
		expect(count).toBe(length === wal.length ? 2 : 1);
		expect((await cut.append(entryOf())).entry.number).toBe(count + 1);
		await cut.close();
	}
	expect(seen.has(1)).toBe(true);
	await log.close();
});

test('what is rare is found by its kind, without a walk through the exchanges', async () => {
	await (await openLog(`sqlite:${file}`)).close();
	const database = await openSqlite(file, { patienceMs: 1000 });
	const raw = new BetterSqlite3(file);
	const planOf = (filter: LogFilter) => {
		const query = filtered(database, 'local', checkFilter(filter)).orderBy('entries.number', 'desc').limit(2);
		const { sql: text, parameters } = query.compile();
		const steps = raw.prepare<unknown[], { detail: string }>(`explain query plan ${text}`).all(...parameters);
		return steps.map(({ detail }) => detail).join('\n');
	};
	const bound = planOf({ channel: 'C1', kinds: ['channel-bound'] });
	expect(bound).toContain('USING INDEX entries_kind (shop=? AND kind=? AND channel=?)');
	expect(bound).not.toContain('TEMP B-TREE');
	expect(planOf({ channel: 'C1', kinds: ['exchange', 'build-changed'] })).not.toContain('entries_kind');
	expect(planOf({ channel: 'C1', thread: 'T1', kinds: ['exchange'] })).toContain('entries_thread');
	const signed = planOf({ kinds: ['signed'] });
	expect(signed).toContain('USING INDEX entries_rare (shop=? AND kind=?)');
	expect(signed).not.toContain('TEMP B-TREE');
	raw.close();
	await database.close();
});
