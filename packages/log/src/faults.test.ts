/** Disks that fill up, files that can't be written, locks that are held, servers that go: said clearly, nothing by half. */

import { readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer, connect as dial, type Server, type Socket } from 'node:net';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import BetterSqlite3 from 'better-sqlite3';
import pg from 'pg';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import { SmallDisk } from '../../../tests/log/mount.js';
import { Cluster, sharedCluster } from '../../../tests/log/postgres.js';
import { type Log, LogError, type LogErrorCode, openLog } from './index.js';

/** Appends until the log refuses. */
async function appendUntilRefused(log: Log, body: string): Promise<LogError> {
	for (let count = 0; count < 10_000; count += 1) {
		try {
			await log.append(entryOf({ body }));
		} catch (error) {
			if (error instanceof LogError) return error;
			throw error;
		}
	}
	throw new Error('never refused');
}

/** Every entry acknowledged is there, and no other. */
async function expectWhole(log: Log, count: number): Promise<void> {
	expect(await log.verify('local')).toMatchObject({ ok: true, shops: [{ entries: count, erased: 0 }] });
	expect((await log.head('local'))?.number ?? 0).toBe(count);
}

async function codeOf(attempt: Promise<unknown>): Promise<LogErrorCode | 'none'> {
	try {
		await attempt;
		return 'none';
	} catch (error) {
		if (error instanceof LogError) return error.code;
		throw error;
	}
}

/** Somebody else's transaction that holds what a writer needs. */
async function holdLock(url: string): Promise<() => Promise<void>> {
	if (url.startsWith('sqlite:')) {
		const raw = new BetterSqlite3(url.slice('sqlite:'.length));
		raw.exec('begin immediate');
		return async () => {
			raw.exec('rollback');
			raw.close();
		};
	}
	const client = new pg.Client(url);
	await client.connect();
	await client.query('begin');
	await client.query('select * from heads for update');
	return async () => {
		await client.query('rollback');
		await client.end();
	};
}

describe.each(DIALECTS)('a lock held by somebody else on $title', ({ fresh }) => {
	let database: Awaited<ReturnType<typeof fresh>>;
	let log: Log;

	beforeEach(async () => {
		database = await fresh();
		log = await openLog(database.url, { patienceMs: 400 });
		await log.append(entryOf());
	});

	afterEach(async () => {
		await log.close();
		await database.remove();
	});

	test('for too long: `locked`, the bot goes on meanwhile, and afterwards it works again', async () => {
		const release = await holdLock(database.url);
		let longestPauseMs = 0;
		let last = performance.now();
		const timer = setInterval(() => {
			longestPauseMs = Math.max(longestPauseMs, performance.now() - last);
			last = performance.now();
		}, 5);
		const started = performance.now();
		const error = await log.append(entryOf()).catch((caught: unknown) => caught);
		const waitedMs = performance.now() - started;
		clearInterval(timer);
		expect(error).toMatchObject({ code: 'locked', cause: expect.any(Error) });
		expect(error).toHaveProperty('message', expect.stringContaining('nothing was written'));
		expect(waitedMs).toBeGreaterThan(100);
		expect(waitedMs).toBeLessThan(3000);
		// Waiting for the lock on the main thread would stop it for all of the 400 ms.
		expect(longestPauseMs).toBeLessThan(250);
		// Reading needs no lock.
		expect((await log.find('local', {})).entries).toHaveLength(1);
		await release();
		expect((await log.append(entryOf())).entry.number).toBe(2);
		await expectWhole(log, 2);
	});

	test('while many wait: the last is told about when the first is, and a later one goes through', async () => {
		const release = await holdLock(database.url);
		const startedMs = performance.now();
		const codes = await Promise.all(
			Array.from({ length: 40 }, (_, turn) => codeOf(log.append(entryOf({ delivery: `Ev${turn}` })))),
		);
		const waitedMs = performance.now() - startedMs;
		await release();
		expect(codes).toEqual(Array.from({ length: 40 }, () => 'locked'));
		// One after the other they would take 40 times 400 ms.
		expect(waitedMs).toBeLessThan(8000);
		expect(await log.append(entryOf({ delivery: 'Ev7' }))).toMatchObject({
			repeated: false,
			entry: { number: 2 },
		});
		await expectWhole(log, 2);
	});

	test('for a while: the entry waits and is written once', async () => {
		const release = await holdLock(database.url);
		const pending = log.append(entryOf({ delivery: 'Ev1' }));
		await sleep(150);
		await release();
		expect(await pending).toMatchObject({ repeated: false, entry: { number: 2 } });
		await expectWhole(log, 2);
	});
});

describe('a small disk under SQLite', () => {
	let disk: SmallDisk;
	let url: string;
	let log: Log | undefined;

	beforeEach(async () => {
		log = undefined;
		disk = await SmallDisk.mount(2048);
		url = `sqlite:${join(disk.folder, 'log.db')}`;
	});

	afterEach(async () => {
		// A disk with an open file on it can't be taken away.
		await log?.close();
		await disk.unmount();
	});

	test('that is full: `full`, nothing by half, still readable, and goes on when there is room', async () => {
		log = await openLog(url);
		const error = await appendUntilRefused(log, 'x'.repeat(5000));
		expect(error).toMatchObject({ code: 'full', cause: expect.any(Error) });
		expect(error.message).toContain('nothing was written');
		const written = (await log.head('local'))?.number ?? 0;
		expect(written).toBeGreaterThan(20);
		await expectWhole(log, written);
		expect(await codeOf(log.append(entryOf({ body: 'x'.repeat(5000) })))).toBe('full');
		expect((await log.find('local', { limit: 1 })).entries[0]?.number).toBe(written);
		await disk.change('size=8192k');
		expect((await log.append(entryOf())).entry.number).toBe(written + 1);
		await expectWhole(log, written + 1);
	});

	test('that is full when the log is closed and opened again', async () => {
		log = await openLog(url);
		await appendUntilRefused(log, 'x'.repeat(5000));
		const written = (await log.head('local'))?.number ?? 0;
		await log.close();
		await disk.change('size=8192k');
		log = await openLog(url);
		await expectWhole(log, written);
		expect((await log.append(entryOf())).entry.number).toBe(written + 1);
	});

	test('without room for an empty log, however little is missing: `full` on opening, and works with room', async () => {
		const filler = join(disk.folder, 'filler');
		for (const roomKiB of [0, 4, 8, 16, 32, 36, 48, 64, 96, 128]) {
			writeFileSync(filler, Buffer.alloc((2048 - roomKiB) * 1024));
			await expect(openLog(url), `${roomKiB} KiB`).rejects.toMatchObject({ code: 'full' });
			rmSync(filler);
			log = await openLog(url);
			await expectWhole(log, 0);
			await log.close();
			for (const name of readdirSync(disk.folder)) rmSync(join(disk.folder, name));
		}
	});

	test('that turned read-only: `read-only` on opening, the file untouched, and works when it is writable', async () => {
		log = await openLog(url);
		await log.append(entryOf());
		await log.close();
		const before = statSync(join(disk.folder, 'log.db'));
		await disk.change('ro');
		await expect(openLog(url)).rejects.toMatchObject({ code: 'read-only', cause: expect.any(Error) });
		await expect(openLog(`sqlite:${join(disk.folder, 'new', 'log.db')}`)).rejects.toMatchObject({
			code: 'read-only',
		});
		expect(statSync(join(disk.folder, 'log.db')).mtimeMs).toBe(before.mtimeMs);
		await disk.change('rw');
		log = await openLog(url);
		expect((await log.append(entryOf())).entry.number).toBe(2);
		await expectWhole(log, 2);
	});
});

describe('a small disk under PostgreSQL', () => {
	test('that is full: `full`, nothing by half, and goes on when there is room', async () => {
		const cluster = await sharedCluster();
		// A table space on it, so that the server itself keeps its room.
		const disk = await SmallDisk.mount(12 * 1024);
		const name = `full_${Date.now()}`;
		try {
			await disk.giveTo('postgres');
			await cluster.query(`create tablespace ${name} location '${disk.folder}'`);
			await cluster.query(`create database ${name} tablespace ${name}`);
			const log = await openLog(cluster.urlOf(name));
			const error = await appendUntilRefused(log, randomText(200_000));
			expect(error).toMatchObject({ code: 'full', cause: expect.any(Error) });
			expect(error.message).toContain('nothing was written');
			const written = (await log.head('local'))?.number ?? 0;
			expect(written).toBeGreaterThan(3);
			await expectWhole(log, written);
			await disk.change(`size=${24 * 1024}k`);
			expect((await log.append(entryOf())).entry.number).toBe(written + 1);
			await expectWhole(log, written + 1);
			await log.close();
		} finally {
			await cluster.query(`drop database if exists ${name} with (force)`);
			await cluster.query(`drop tablespace if exists ${name}`);
			await disk.unmount();
		}
	});
});

/** Text the server can't compress away. */
function randomText(length: number): string {
	return Array.from({ length }, () => String.fromCharCode(97 + Math.floor(Math.random() * 26))).join('');
}

describe('a PostgreSQL that may not be written', () => {
	test('`read-only`, nothing written, and works when it may again', async () => {
		const cluster = await sharedCluster();
		const url = await cluster.freshDatabase();
		const name = new URL(url).pathname.slice(1);
		const log = await openLog(url);
		await log.append(entryOf());
		await cluster.query(`alter database ${name} set default_transaction_read_only = on`);
		await cluster.query(`select pg_terminate_backend(pid) from pg_stat_activity where datname = '${name}'`);
		expect(await codeOf(log.append(entryOf()))).toBe('read-only');
		await expectWhole(log, 1);
		await cluster.query(`alter database ${name} reset default_transaction_read_only`);
		await cluster.query(`select pg_terminate_backend(pid) from pg_stat_activity where datname = '${name}'`);
		expect((await log.append(entryOf())).entry.number).toBe(2);
		await log.close();
	});
});

describe('a PostgreSQL that goes away', () => {
	let cluster: Cluster;

	beforeAll(async () => {
		cluster = await Cluster.start();
	});

	afterAll(async () => {
		await cluster.remove();
	});

	test.each(['fast', 'immediate'] as const)(
		'stopped (%s) and started in mid-write: every entry once',
		async (mode) => {
			const log = await openLog(await cluster.freshDatabase(), { patienceMs: 20_000 });
			const total = 400;
			const results: Promise<{ entry: { number: number }; repeated: boolean }>[] = [];
			const writing = (async () => {
				for (let turn = 1; turn <= total; turn += 1) {
					// Every other one has no delivery to be known by.
					const delivery = turn % 2 === 0 ? `Ev${turn}` : null;
					results.push(log.append(entryOf({ delivery, body: turn })));
					await sleep(2);
				}
			})();
			await sleep(250);
			const before = (await log.head('local'))?.number ?? 0;
			await cluster.down(mode);
			await sleep(100);
			await cluster.up();
			await writing;
			const written = await Promise.all(results);
			expect(before).toBeLessThan(total);
			expect(written.map((result) => result.entry.number)).toEqual(
				Array.from({ length: total }, (_, index) => index + 1),
			);
			expect(written.filter((result) => result.repeated)).toEqual([]);
			await expectWhole(log, total);
			const bodies = await log.fold('local', {}, [] as unknown[], (all, entry) => [...all, entry.body]);
			expect(bodies).toEqual(Array.from({ length: total }, (_, index) => index + 1));
			await log.close();
		},
	);

	test('and stays away: `connection-lost` in time for reading and writing, and works when it is back', async () => {
		const log = await openLog(await cluster.freshDatabase(), { patienceMs: 500 });
		await log.append(entryOf());
		await cluster.down();
		const started = performance.now();
		expect(await codeOf(log.append(entryOf({ delivery: 'Ev1' })))).toBe('connection-lost');
		expect(await codeOf(log.find('local', {}))).toBe('connection-lost');
		expect(performance.now() - started).toBeLessThan(5000);
		expect(await codeOf(openLog(cluster.urlOf('postgres'), { patienceMs: 200 }))).toBe('connection-lost');
		await cluster.up();
		expect(await log.append(entryOf({ delivery: 'Ev1' }))).toMatchObject({
			repeated: false,
			entry: { number: 2 },
		});
		await expectWhole(log, 2);
		await log.close();
	});
});

/** Stands between the log and the server and can break the line at a commit, or as soon as it is up. */
class Line {
	readonly #server: Server;
	readonly #target: number;
	readonly #sockets = new Set<Socket>();
	/** `before`: the commit does not reach the server. `after`: its answer does not reach the log. */
	breakAtCommit: 'before' | 'after' | null = null;
	/** How many new connections break at their first statement. */
	breakNew = 0;
	broken = 0;

	constructor(target: number) {
		this.#target = target;
		this.#server = createServer((client) => this.#join(client));
	}

	async open(): Promise<number> {
		await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
		return (this.#server.address() as AddressInfo).port;
	}

	hangUpAll(): void {
		for (const socket of this.#sockets) socket.destroy();
	}

	async close(): Promise<void> {
		this.hangUpAll();
		await new Promise((resolve) => this.#server.close(resolve));
	}

	#join(client: Socket): void {
		const server = dial(this.#target, '127.0.0.1');
		let deaf = false;
		const hangUp = () => {
			client.destroy();
			server.destroy();
		};
		for (const socket of [client, server]) {
			this.#sockets.add(socket);
			socket.on('error', hangUp);
			socket.on('close', () => {
				this.#sockets.delete(socket);
				hangUp();
			});
		}
		client.on('data', (bytes) => {
			// The driver sends a statement without values as a simple query, its text as it is.
			if (this.breakNew > 0 && bytes.includes('synchronous_commit')) {
				this.breakNew -= 1;
				return hangUp();
			}
			const mode = bytes.includes('commit\0') ? this.breakAtCommit : null;
			if (mode !== null) {
				this.breakAtCommit = null;
				this.broken += 1;
				if (mode === 'before') return hangUp();
				deaf = true;
			}
			server.write(bytes);
		});
		server.on('data', (bytes) => {
			if (deaf) hangUp();
			else client.write(bytes);
		});
	}
}

test('connections that break as soon as they are up take no place in the pool, and nobody waits for their end', async () => {
	const cluster = await sharedCluster();
	const url = new URL(await cluster.freshDatabase());
	const line = new Line(cluster.port);
	url.port = String(await line.open());
	const log = await openLog(url.href, { patienceMs: 30_000 });
	try {
		await log.append(entryOf());
		line.hangUpAll();
		// More than the pool has places.
		line.breakNew = 25;
		expect((await log.append(entryOf())).entry.number).toBe(2);
		expect(line.breakNew).toBe(0);
		await expectWhole(log, 2);
	} finally {
		await log.close();
		await line.close();
	}
});

describe('a line that breaks at a commit', () => {
	let line: Line;
	let log: Log;

	beforeEach(async () => {
		const cluster = await sharedCluster();
		const url = new URL(await cluster.freshDatabase());
		line = new Line(cluster.port);
		url.port = String(await line.open());
		log = await openLog(url.href);
		await log.append(entryOf());
	});

	afterEach(async () => {
		await log.close();
		await line.close();
	});

	test.each([
		['before', 'Ev1'],
		['before', null],
		['after', 'Ev1'],
		['after', null],
	] as const)(
		'%s the server has it, delivery %j: the entry is there once, and was not there before',
		async (when, delivery) => {
			line.breakAtCommit = when;
			const { entry, repeated } = await log.append(entryOf({ delivery, text: 'in doubt' }));
			expect(line.broken).toBe(1);
			expect([entry.number, repeated]).toEqual([2, false]);
			await expectWhole(log, 2);
			expect(await log.entry('local', 2)).toEqual(entry);
			expect((await log.append(entryOf())).entry.number).toBe(3);
		},
	);

	test.each(['before', 'after'] as const)(
		'%s the server has it, while forgetting: the count is right',
		async (when) => {
			line.breakAtCommit = when;
			expect(await log.forget('local', 'U1')).toBe(1);
			expect(line.broken).toBe(1);
			expect((await log.entry('local', 1))?.erased).toBe(true);
		},
	);
});
