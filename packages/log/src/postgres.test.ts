/** What the log asks of PostgreSQL beyond what it asks of every database. */
import { sql } from 'kysely';
import pg from 'pg';
import { describe, expect, test } from 'vitest';
import { entryOf } from '../../../tests/log/entries.js';
import { sharedCluster } from '../../../tests/log/postgres.js';
import { openLog } from './index.js';
import { openPostgres } from './postgres.js';

async function freshDatabase(): Promise<{
	url: string;
	name: string;
	configure(setting: string): Promise<unknown>;
}> {
	const cluster = await sharedCluster();
	const url = await cluster.freshDatabase();
	const name = new URL(url).pathname.slice(1);
	return { url, name, configure: (setting) => cluster.query(`alter database ${name} set ${setting}`) };
}

describe('durability', () => {
	test.each([
		['off', 'on'],
		['remote_apply', 'remote_apply'],
	])(
		'a server that answers commits with synchronous_commit = %s is asked for %s',
		async (configured, asked) => {
			const { url, configure } = await freshDatabase();
			await configure(`synchronous_commit = '${configured}'`);
			const database = await openPostgres(url, { patienceMs: 5000 });
			const seen = await Promise.all(
				Array.from({ length: 5 }, () =>
					sql<{ synchronous_commit: string }>`show synchronous_commit`.execute(database.db),
				),
			);
			expect(new Set(seen.map(({ rows }) => rows[0]?.synchronous_commit))).toEqual(new Set([asked]));
			await database.close();
		},
	);
});

test('a server whose transactions are serializable by default numbers without gaps all the same', async () => {
	const { url, configure } = await freshDatabase();
	await configure(`default_transaction_isolation = 'serializable'`);
	const logs = await Promise.all([openLog(url), openLog(url), openLog(url)]);
	const results = await Promise.all(
		Array.from({ length: 60 }, (_, index) =>
			logs[index % 3]?.append(entryOf({ delivery: `Ev${index % 50}` })),
		),
	);
	const numbers = new Set(results.map((result) => result?.entry.number));
	expect([...numbers].sort((a, b) => Number(a) - Number(b))).toEqual(
		Array.from({ length: 50 }, (_, index) => index + 1),
	);
	expect(await logs[0]?.verify()).toMatchObject({ ok: true, shops: [{ entries: 50 }] });
	await Promise.all(logs.map((log) => log.close()));
});

test('a database in an encoding that has not every letter is refused', async () => {
	const cluster = await sharedCluster();
	const name = `ascii_${Date.now()}`;
	await cluster.query(`create database ${name} encoding 'SQL_ASCII' locale 'C' template template0`);
	await expect(openLog(cluster.urlOf(name))).rejects.toMatchObject({
		code: 'unavailable',
		message: expect.stringContaining('encoded in SQL_ASCII; the log needs UTF8'),
	});
});

test('a database that is not there, a user who may not: `unavailable`, said by the server', async () => {
	const cluster = await sharedCluster();
	await expect(openLog(cluster.urlOf('none'))).rejects.toMatchObject({
		code: 'unavailable',
		message: expect.stringContaining('"none" does not exist'),
	});
	const url = new URL(cluster.urlOf('postgres'));
	url.username = 'nobody_known';
	await expect(openLog(url.href)).rejects.toMatchObject({
		code: 'unavailable',
		message: expect.stringContaining('"nobody_known" does not exist'),
	});
});

test('eight logs that make the tables at the same moment make them once', async () => {
	const { url } = await freshDatabase();
	const logs = await Promise.all(Array.from({ length: 8 }, () => openLog(url)));
	await Promise.all(logs.map((log) => log.append(entryOf())));
	expect(await logs[0]?.verify()).toMatchObject({ ok: true, shops: [{ entries: 8 }] });
	await Promise.all(logs.map((log) => log.close()));
});

test('more shops at once than there are connections all get their turn', async () => {
	const { url } = await freshDatabase();
	const log = await openLog(url);
	const shops = Array.from({ length: 40 }, (_, index) => `slack:T${String(index).padStart(2, '0')}`);
	await Promise.all(shops.flatMap((shop) => [log.append(entryOf({ shop })), log.append(entryOf({ shop }))]));
	expect(await log.shops()).toEqual(shops);
	expect((await log.verify()).shops.map(({ entries, problem }) => [entries, problem])).toEqual(
		shops.map(() => [2, null]),
	);
	await log.close();
});

test('a backup is the business of the tools of PostgreSQL', async () => {
	const { url } = await freshDatabase();
	const log = await openLog(url);
	await expect(log.backup('never.db')).rejects.toMatchObject({
		code: 'unavailable',
		message: expect.stringContaining('pg_dump'),
	});
	await log.close();
});

test('a connection that the server ends while it is idle is replaced without a word', async () => {
	const { url, name } = await freshDatabase();
	const cluster = await sharedCluster();
	const log = await openLog(url);
	for (let round = 1; round <= 5; round += 1) {
		await log.append(entryOf());
		await cluster.query(`select pg_terminate_backend(pid) from pg_stat_activity where datname = '${name}'`);
		expect((await log.find('local', {})).entries).toHaveLength(round);
	}
	await log.close();
});

test('a connection that the server ends in the middle of an append is replaced, and the entry is there once', async () => {
	const { url, name } = await freshDatabase();
	const cluster = await sharedCluster();
	const log = await openLog(url);
	await log.append(entryOf());
	const holder = new pg.Client(url);
	await holder.connect();
	await holder.query('begin');
	await holder.query('select * from heads for update');
	const pending = log.append(entryOf({ text: 'second' }));
	// Once it waits for the lock, its own connection is ended under it.
	const waiting = `from pg_stat_activity where datname = '${name}' and wait_event_type = 'Lock'`;
	for (let ended = 0; ended === 0; )
		ended = await cluster.query(`select pg_terminate_backend(pid) ${waiting}`);
	await holder.query('rollback');
	await holder.end();
	expect(await pending).toMatchObject({ repeated: false, entry: { number: 2, text: 'second' } });
	expect(await log.verify()).toMatchObject({ ok: true, shops: [{ entries: 2 }] });
	await log.close();
});
