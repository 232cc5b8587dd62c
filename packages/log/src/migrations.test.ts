/** A log as the version before left it is brought up to date when it is opened, and loses nothing by it. */
import { Migrator, sql } from 'kysely';
import { describe, expect, test } from 'vitest';
import { DIALECTS } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import type { Database } from './database.js';
import { type Log, openLog } from './index.js';
import { migrationsFor } from './migrations.js';
import { openPostgres } from './postgres.js';
import { SqlLog } from './sql-log.js';
import { openSqlite } from './sqlite.js';
import { isPrefix } from './words.js';

const LONG_WORD = 'Batteriehauptschaltergehäuse';

async function openDatabase(url: string): Promise<Database> {
	const options = { patienceMs: 5000 };
	return url.startsWith('sqlite:')
		? await openSqlite(url.slice('sqlite:'.length), options)
		: await openPostgres(url, options);
}

/** More words than are carried over at a stroke. */
const MANY_WORDS = Array.from(
	{ length: 1200 },
	(_, at) => `w${[...String(at)].map((digit) => 'abcdefghij'[Number(digit)]).join('')}`,
).join(' ');

/** Until these steps an index lists words alone. */
const LISTED_SINCE = { postgres: '2026-11-30-terms', sqlite: '2026-12-01-places' } as const;

type WordIndex = Pick<Database, 'indexWords' | 'unindexWords' | 'hasWordsNear' | 'rarestFirst'>;

const rarestFirst: Database['rarestFirst'] = async (words) => words;

function asked(words: readonly string[], mark: string, beginning: string, and: string): string {
	return words.map((word) => `${mark}${word}${mark}${isPrefix(word) ? beginning : ''}`).join(and);
}

/** The index of words as it was before: the database looks for their beginnings. */
const wordIndexes: Readonly<Record<Database['kind'], WordIndex>> = {
	postgres: {
		rarestFirst,
		async indexWords(transaction, entries) {
			for (const { id, words } of entries) {
				await sql`insert into word_index (entry_id, words)
					values (${id}, array_to_tsvector(${[...words]}::text[]))`.execute(transaction);
			}
		},
		async unindexWords(transaction, ids) {
			await sql`delete from word_index where entry_id = any (${[...ids]}::integer[])`.execute(transaction);
		},
		hasWordsNear(words) {
			return sql<boolean>`(select words @@ ${asked(words, "'", ':*', ' & ')}::tsquery from word_index
				where entry_id = entries.id)`;
		},
	},
	sqlite: {
		rarestFirst,
		async indexWords(transaction, entries) {
			for (const { id, words } of entries) {
				await sql`insert into word_index (rowid, words) values (${id}, ${words.join(' ')})`.execute(
					transaction,
				);
			}
		},
		async unindexWords(transaction, ids) {
			for (const id of ids) await sql`delete from word_index where rowid = ${id}`.execute(transaction);
		},
		hasWordsNear(words) {
			return sql<boolean>`entries.id in
				(select rowid from word_index where word_index match ${asked(words, '"', '*', ' AND ')})`;
		},
	},
};

/** A log with the schema of an earlier version. */
async function openLogAt(url: string, lastStep: string): Promise<Log> {
	const database = await openDatabase(url);
	const migrator = new Migrator({
		db: database.db,
		provider: { getMigrations: async () => migrationsFor(database.kind) },
		migrationTableName: 'log_migrations',
		migrationLockTableName: 'log_migrations_lock',
	});
	const { error } = await migrator.migrateTo(lastStep);
	if (error !== undefined) throw error;
	if (lastStep < LISTED_SINCE[database.kind]) Object.assign(database, wordIndexes[database.kind]);
	return new SqlLog(database, 5000, ['headline']);
}

/** What the database keeps beside the entries, so that they are found. */
async function listsOf(url: string): Promise<unknown> {
	const database = await openDatabase(url);
	const { rows: spans } = await sql`select * from spans order by shop, span`.execute(database.db);
	if (database.kind === 'sqlite') {
		await sql`create virtual table temp.occurrences using fts5vocab(main, term_index, instance)`.execute(
			database.db,
		);
	}
	const { rows: terms } = await (database.kind === 'sqlite'
		? sql`select shop, number, term from temp.occurrences join entries on id = doc order by shop, number, term`
		: sql`select shop, number, tsvector_to_array(terms) as terms
			from term_index join entries on id = entry_id order by shop, number`
	).execute(database.db);
	await database.close();
	expect(terms.length).toBeGreaterThanOrEqual(150);
	return { spans, terms };
}

const steps = Object.keys(migrationsFor('sqlite'));

describe.each(DIALECTS)('$title', (dialect) => {
	// At the newest step there is nothing to bring up to date: the same must hold.
	test.each(steps)('a log at the step %s, opened today', async (step) => {
		const { url, remove } = await dialect.fresh();
		const before = await openLogAt(url, step);
		for (let at = 1; at <= 150; at += 1) {
			const text =
				at === 8
					? ''
					: at === 9
						? `${LONG_WORD} 4/0 12 mm² ١٢٣ größe 𐐨𐐩𐐪`
						: `job ${at % 3 === 0 ? 'pump' : 'fan'} ${at}`;
			await before.append(
				entryOf({
					text: at === 10 ? `${text} ${MANY_WORDS}` : text,
					build: at % 2 === 0 ? 'heron' : null,
					personId: at % 10 === 1 || at % 10 === 5 ? 'U-gone' : 'U1',
					shop: at % 5 === 0 ? 'other' : 'local',
					topic: at % 3 === 0 ? 'wire' : null,
					state: at % 4 === 0 ? 'answered' : null,
					body: { headline: 'copper fuse' },
					// A clock that goes back.
					at: new Date(Date.UTC(2026, 4, 1) + ((at * 37) % 100) * 3_600_000).toISOString(),
				}),
			);
		}
		await before.forget('local', 'U-gone');
		await before.forget('other', 'U-gone');
		await before.setSetting('local', 'leads', 'U1');
		const words = ['job', 'pu', 'fan', 'copper', 'cop heron', '12', '1', '4 0', 'mm', 'gone', ''].concat(
			Array.from({ length: LONG_WORD.length }, (_, at) => LONG_WORD.slice(0, at + 1)),
		);
		const everything = async (log: Log) => {
			const found: Record<string, unknown> = {};
			for (const shop of ['local', 'other']) {
				const lines: string[] = [];
				for await (const line of log.export(shop, { persons: true })) lines.push(line);
				found[shop] = lines;
				for (const word of words) {
					const { entries } = await log.find(shop, { words: word, limit: 500 });
					found[`${shop} ${word}`] = entries.map(({ number }) => number);
				}
			}
			return { found, settings: await log.settings(), heads: await log.verify() };
		};
		const kept = await everything(before);
		expect(kept.heads).toMatchObject({ ok: true, shops: [{ entries: 120 }, { entries: 30 }] });
		expect(kept.found['local job']).toHaveLength(120 - 15 - 2);
		expect(kept.found['other job']).toHaveLength(30 - 15);
		expect(kept.found[`local ${LONG_WORD}`]).toEqual([8]);
		expect(kept.found['other pu']).toHaveLength(5);
		expect(kept.found['local copper']).toHaveLength(120);
		await before.close();

		const after = await openLog(url, { searchable: ['headline'] });
		expect(await everything(after)).toEqual(kept);
		// It lists what it would had every entry been written into a new log of today.
		const fresh = await dialect.fresh();
		const anew = await openLog(fresh.url, { searchable: ['headline'] });
		for (const shop of await after.shops()) await anew.import(after.export(shop, { persons: true }));
		await anew.close();
		expect(await listsOf(url)).toEqual(await listsOf(fresh.url));
		await fresh.remove();
		// What was there is erased, and what comes is found, as ever.
		await after.append(entryOf({ text: 'job grommet' }));
		expect((await after.find('local', { words: 'gromm job' })).entries.map(({ number }) => number)).toEqual([
			121,
		]);
		await after.forget('local', 'U1');
		expect((await after.find('local', { words: 'job' })).entries).toEqual([]);
		expect((await after.find('local', { words: 'gromm' })).entries).toEqual([]);
		expect((await after.find('local', { words: 'copp', limit: 500 })).entries).toHaveLength(121);
		expect(await after.verify()).toMatchObject({ ok: true });
		await after.close();
		await remove();
	});
});
