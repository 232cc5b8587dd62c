/** While one process brings a log up to date, others that open it wait for its end and say so. */
import { setTimeout as sleep } from 'node:timers/promises';
import { Kysely, Migrator, PostgresDialect, sql } from 'kysely';
import pg from 'pg';
import { describe, expect, test } from 'vitest';
import { DIALECTS } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import { sharedCluster } from '../../../tests/log/postgres.js';
import { openLog } from './index.js';
import { migrationsFor } from './migrations.js';
import { openPostgres } from './postgres.js';
import { openSqlite } from './sqlite.js';
import type { Tables } from './tables.js';

const steps = Object.keys(migrationsFor('sqlite'));
/** What a connection to a server takes on a busy machine has to be in it [ms]. */
const PATIENCE_MS = 1000;
const FIRST = steps[0] as string;
const LAST = steps.at(-1) as string;

function latch() {
	let open = () => {};
	let fail = (_: Error) => {};
	const opened = new Promise<void>((resolve, reject) => {
		open = resolve;
		fail = reject;
	});
	return { opened, open, break: fail };
}

/** A database as an earlier program left it; and a program that brings it up to date on our word. */
async function earlierLog(url: string) {
	const isSqlite = url.startsWith('sqlite:');
	const database = isSqlite
		? await openSqlite(url.slice('sqlite:'.length), { patienceMs: 5000 })
		: await openPostgres(url, { patienceMs: 5000 });
	// As the query builder does it by itself: an earlier program has no adapter of ours.
	const db: Kysely<Tables> = isSqlite
		? database.db
		: new Kysely({ dialect: new PostgresDialect({ pool: new pg.Pool({ connectionString: url }) }) });
	const gate = latch();
	const begun = latch();
	const migrations = migrationsFor(database.kind);
	const slow = {
		...migrations,
		[LAST]: {
			up: async (transaction: Kysely<unknown>) => {
				await migrations[LAST]?.up(transaction);
				begun.open();
				await gate.opened;
			},
		},
	};
	const migrator = new Migrator({
		db,
		provider: { getMigrations: async () => slow },
		migrationTableName: 'log_migrations',
		migrationLockTableName: 'log_migrations_lock',
	});
	expect((await migrator.migrateTo(FIRST)).error).toBeUndefined();
	const outcome = migrator.migrateToLatest();
	await begun.opened;
	return {
		gate,
		end: async () => {
			const { error } = await outcome;
			await db.destroy();
			if (!isSqlite) await database.close();
			return error;
		},
	};
}

async function until(condition: () => boolean): Promise<void> {
	while (!condition()) await sleep(5);
}

describe.each(DIALECTS)('$title', (dialect) => {
	test.each([
		['ends well', undefined],
		['fails, and is then done by who waited', new Error('no room left')],
	])('a process that brings the log up to date is waited for; it %s', async (_, failure) => {
		const { url, remove } = await dialect.fresh();
		const first = await earlierLog(url);
		const heard: string[] = [];
		let isOpen = false;
		const opening = openLog(url, {
			patienceMs: PATIENCE_MS,
			waiting: (sentence) => void heard.push(sentence),
		});
		void opening.then(() => {
			isOpen = true;
		});
		await until(() => heard.length > 0);
		// Several times as long as it has patience for a lock.
		await sleep(3 * PATIENCE_MS);
		expect(isOpen).toBe(false);
		expect(heard).toEqual([
			expect.stringMatching(
				/^the log is of an earlier version and another process holds it, .+; waiting for its end, \d+ s so far$/,
			),
		]);
		if (failure === undefined) first.gate.open();
		else first.gate.break(failure);
		const log = await opening;
		expect(await first.end()).toBe(failure);
		expect(heard.slice(1)).toEqual(['the log is up to date; going on']);
		await log.append(entryOf({ text: 'pump after' }));
		expect((await log.find('local', { words: 'pu' })).entries.map(({ text }) => text)).toEqual([
			'pump after',
		]);
		expect(await log.verify()).toMatchObject({ ok: true, shops: [{ entries: 1 }] });
		await log.close();
		await remove();
	});

	test('a log that is up to date opens while somebody writes to it', async () => {
		const { url, remove } = await dialect.fresh();
		const log = await openLog(url);
		const database = url.startsWith('sqlite:')
			? await openSqlite(url.slice('sqlite:'.length), { patienceMs: PATIENCE_MS })
			: await openPostgres(url, { patienceMs: PATIENCE_MS });
		await database.db.transaction().execute(async (transaction) => {
			await database.lockHead(transaction, 'local');
			const heard: string[] = [];
			const other = await openLog(url, {
				patienceMs: PATIENCE_MS,
				waiting: (sentence) => void heard.push(sentence),
			});
			await expect(other.append(entryOf())).rejects.toMatchObject({ code: 'locked' });
			expect(heard).toEqual([]);
			await other.close();
		});
		await database.close();
		await log.close();
		await remove();
	});
});

test('PostgreSQL: a step may take longer than any statement of the log', async () => {
	const database = await openPostgres(await (await sharedCluster()).freshDatabase(), { patienceMs: 5000 });
	const limit = async (db: Kysely<Tables>) =>
		(await sql<{ statement_timeout: string }>`show statement_timeout`.execute(db)).rows[0]?.statement_timeout;
	expect(await limit(database.db)).toBe('1min');
	expect(await database.withoutTimeLimit(limit)).toBe('0');
	await database.close();
});
