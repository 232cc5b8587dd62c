/** Writes that wait at the same moment: one commit, each answered for itself, none before it is durable. */
import BetterSqlite3 from 'better-sqlite3';
import { sql, type Transaction } from 'kysely';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import type { Database } from './database.js';
import { LogError, openLog } from './index.js';
import { openSqlite } from './sqlite.js';
import type { Tables } from './tables.js';
import { Writes } from './writes.js';

describe('on SQLite', () => {
	let file: string;
	let remove: () => Promise<void>;
	let database: Database;
	let writes: Writes;

	beforeEach(async () => {
		const fresh = await (
			DIALECTS.find(({ title }) => title === 'SQLite') as (typeof DIALECTS)[number]
		).fresh();
		remove = fresh.remove;
		file = fresh.url.slice('sqlite:'.length);
		database = await openSqlite(file, { patienceMs: 5000 });
		await sql`create table written (n integer not null)`.execute(database.db);
		writes = new Writes(database, 5000);
	});
	afterEach(async () => {
		await database.close();
		await remove();
	});

	/** What another program sees of the file now. */
	function seen(): unknown[] {
		const raw = new BetterSqlite3(file, { readonly: true });
		try {
			return raw.prepare('select n from written order by rowid').pluck().all();
		} finally {
			raw.close();
		}
	}

	test('they share a transaction, in the order asked for, and each is durable when it is answered', async () => {
		const shared = new Set<Transaction<Tables>>();
		const numbers = Array.from({ length: 10 }, (_, at) => at);
		const seenAtAnswer = await Promise.all(
			numbers.map(async (n) => {
				const answer = await writes.run('any shop', async (transaction) => {
					shared.add(transaction);
					await sql`insert into written values (${n})`.execute(transaction);
					return n;
				});
				return { answer, seen: seen() };
			}),
		);
		expect(shared.size).toBe(1);
		expect(seenAtAnswer).toEqual(numbers.map((answer) => ({ answer, seen: numbers })));
	});

	test('what a power cut may undo waits for no disk, unless something lasting goes along', async () => {
		const waitsForDisk = async (transaction: Transaction<Tables>) => {
			const { rows } = await sql<{ synchronous: number }>`pragma synchronous`.execute(transaction);
			return rows[0]?.synchronous;
		};
		const [FULL, NORMAL] = [2, 1];
		expect(await writes.run('any shop', waitsForDisk)).toBe(FULL);
		expect(await writes.run('any shop', waitsForDisk, { lasting: false })).toBe(NORMAL);
		const together = [{ lasting: false }, {}, { lasting: false }];
		expect(await Promise.all(together.map((how) => writes.run('any shop', waitsForDisk, how)))).toEqual([
			...[FULL, FULL, FULL],
		]);
		const failing = writes.run('any shop', () => Promise.reject(new LogError('bad-entry', 'no')), {
			lasting: false,
		});
		await expect(failing).rejects.toThrow('no');
		expect(await writes.run('any shop', waitsForDisk)).toBe(FULL);
	});

	test.each([
		['a refusal of the log', new LogError('bad-entry', 'no')],
		['an error of the database', null],
	])('%s in one of them takes no other along', async (_, refusal) => {
		const outcomes = await Promise.allSettled(
			[1, 2, 3, 4, 5].map((n) =>
				writes.run('any shop', async (transaction) => {
					await sql`insert into written values (${n})`.execute(transaction);
					if (n !== 3) return n;
					if (refusal !== null) throw refusal;
					await sql`insert into written values (null)`.execute(transaction);
					return n;
				}),
			),
		);
		expect(outcomes.map((outcome) => (outcome.status === 'fulfilled' ? outcome.value : null))).toEqual([
			...[1, 2, null, 4, 5],
		]);
		expect(outcomes[2]).toMatchObject({ reason: { code: refusal?.code ?? 'unavailable' } });
		expect(seen()).toEqual([1, 2, 4, 5]);
	});
});

test.each(DIALECTS)(
	'$title: of many at once some are refused; the others are a chain without gaps',
	async ({ fresh }) => {
		const { url, remove } = await fresh();
		const log = await openLog(url);
		try {
			const outcomes = await Promise.allSettled(
				Array.from({ length: 100 }, async (_, at) => {
					if (at % 10 === 3) return void (await log.setSetting('local', `key ${at}`, 'value'));
					// Follows an entry that is not there yet.
					if (at % 10 === 7) return void (await log.append(entryOf({ follows: 1000 })));
					await log.append(entryOf({ delivery: `Ev${at % 10 === 5 ? at - 1 : at}`, personId: `U${at % 4}` }));
				}),
			);
			const refused = outcomes.flatMap((outcome, at) => (outcome.status === 'rejected' ? [at] : []));
			expect(refused).toEqual([7, 17, 27, 37, 47, 57, 67, 77, 87, 97]);
			expect(await log.verify('local')).toMatchObject({ ok: true, shops: [{ entries: 70 }] });
			expect(await log.settingsOf('local')).toHaveLength(10);
			expect((await log.people('local')).map(({ id }) => id)).toEqual(['U0', 'U1', 'U2', 'U3']);
		} finally {
			await log.close();
			await remove();
		}
	},
);
