import {
	accessSync,
	closeSync,
	constants,
	existsSync,
	fsyncSync,
	mkdirSync,
	openSync,
	renameSync,
	rmSync,
} from 'node:fs';
import { dirname, resolve } from 'node:path';
import { setTimeout as sleep, setImmediate as turnOfTheLoop } from 'node:timers/promises';
import BetterSqlite3 from 'better-sqlite3';
import {
	CompiledQuery,
	type DatabaseConnection,
	type Driver,
	Kysely,
	type SqliteDatabase as KyselyDatabase,
	SqliteAdapter,
	SqliteDialect,
	SqliteDriver,
	sql,
	type Transaction,
	type TransactionSettings,
} from 'kysely';
import type { Database, DatabaseOptions, Head, IdRange, IndexedEntry, NearIds } from './database.js';
import { driverCode, LogError, messageOf } from './errors.js';
import { headOf } from './rows.js';
import { listedTerms, matching } from './sqlite-terms.js';
import type { Tables } from './tables.js';
import type { AskedFacets } from './terms.js';

/** SQLite waits for a lock on the thread that runs the bot, so it may only wait shortly; we wait between tries. */
const BLOCKING_WAIT_MS = 20;

/** Entries that are looked at to tell which word is rarer than another. */
const SAMPLE_ENTRIES = 2000;
/** Of so many ids one: these entries are quicker looked up one by one than listed with all between them. */
const FAR_APART = 200;

/** Each takes about a millisecond in which nobody else of this process gets a turn. */
const WRITES_PER_COMMIT = 16;

/**
 * Kysely starts every transaction with a plain `begin`, which takes the write lock only at the first write.
 * Two processes that both read and then write would so get SQLITE_BUSY_SNAPSHOT, which no waiting cures.
 */
class ImmediateDriver extends SqliteDriver {
	readonly #database: BetterSqlite3.Database;

	constructor(database: BetterSqlite3.Database) {
		super({ database: rememberingStatements(database) });
		this.#database = database;
	}

	override async acquireConnection(): Promise<DatabaseConnection> {
		// SQLite answers at once, without the event loop ever turning: a walk through a long chain would shut out
		// everybody else of this process until its end.
		await turnOfTheLoop();
		return await super.acquireConnection();
	}

	override async beginTransaction(
		connection: DatabaseConnection,
		settings?: TransactionSettings,
	): Promise<void> {
		const begin = settings?.accessMode === 'read only' ? 'begin' : 'begin immediate';
		await connection.executeQuery(CompiledQuery.raw(begin));
	}

	override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
		// A full disk or an I/O error has already rolled the transaction back.
		if (this.#database.inTransaction) await super.rollbackTransaction(connection);
	}
}

/** The log uses some dozens, and a few more by how many entries a statement writes. */
const STATEMENTS_MAX = 200;

/** Most of a short statement's time is its preparation; the same few come again and again. */
function rememberingStatements(database: BetterSqlite3.Database): KyselyDatabase {
	const statements = new Map<string, BetterSqlite3.Statement<unknown[]>>();
	return {
		close: () => void database.close(),
		prepare(text) {
			const known = statements.get(text);
			if (known !== undefined) return known;
			const statement = database.prepare<unknown[]>(text);
			if (statements.size >= STATEMENTS_MAX) statements.clear();
			statements.set(text, statement);
			return statement;
		},
	};
}

class TransactionalDdlAdapter extends SqliteAdapter {
	/** SQLite has it. With it Kysely migrates in one transaction, which `begin immediate` makes exclusive. */
	override get supportsTransactionalDdl(): boolean {
		return true;
	}
}

class LogSqliteDialect extends SqliteDialect {
	readonly #database: BetterSqlite3.Database;

	constructor(database: BetterSqlite3.Database) {
		super({ database });
		this.#database = database;
	}

	override createDriver(): Driver {
		return new ImmediateDriver(this.#database);
	}

	override createAdapter(): SqliteAdapter {
		return new TransactionalDdlAdapter();
	}
}

/** @param path a file, made with its folder when it isn't there; or `:memory:` */
export async function openSqlite(path: string, options: DatabaseOptions): Promise<Database> {
	const inMemory = path === ':memory:';
	const file = inMemory ? path : resolve(path);
	let database: BetterSqlite3.Database | undefined;
	try {
		if (!inMemory) createFile(file);
		database = new BetterSqlite3(file, { timeout: BLOCKING_WAIT_MS });
		await makeDurable(database, inMemory, options.patienceMs);
	} catch (error) {
		database?.close();
		// What SQLite says of a file that it may not write depends on which of its files it tried first.
		const unwritable = inMemory ? undefined : whyUnwritable(file);
		if (unwritable === undefined) throw toLogError(error);
		throw new LogError('read-only', `the log may not be written: ${messageOf(unwritable)}`, error);
	}
	return new SqliteDatabase(database);
}

/** The reason why an existing file, or the folder where SQLite puts its other two files, can't be written. */
function whyUnwritable(file: string): unknown {
	if (!existsSync(file)) return undefined;
	try {
		accessSync(file, constants.W_OK);
		accessSync(dirname(file), constants.W_OK);
		return undefined;
	} catch (reason) {
		return reason;
	}
}

/** Not mkdir's own `recursive`: in a file system that refuses new folders with ENOENT it never returns. */
function makeFolder(folder: string): void {
	if (existsSync(folder)) return;
	makeFolder(dirname(folder));
	try {
		mkdirSync(folder, { mode: 0o700 });
	} catch (error) {
		if (driverCode(error) !== 'EEXIST') throw error;
	}
}

/** The log holds names and what people wrote: only the owner of the process may read it. */
function createFile(file: string): void {
	const folder = dirname(file);
	makeFolder(folder);
	try {
		closeSync(openSync(file, 'wx', 0o600));
	} catch (error) {
		if (driverCode(error) === 'EEXIST') return;
		throw error;
	}
	syncFolderOf(file);
}

/** Without this a power cut could take a new file's name away with all that was synced into it. */
function syncFolderOf(file: string): void {
	const handle = openSync(dirname(file), 'r');
	fsyncSync(handle);
	closeSync(handle);
}

/** A copy is only a backup when it can be read. */
function assertSound(file: string): void {
	const copy = new BetterSqlite3(file);
	try {
		const found: unknown = copy.pragma('integrity_check(1)', { simple: true });
		if (found !== 'ok') throw new LogError('corrupt', `the copy of the log is damaged: ${found}`);
	} finally {
		copy.close();
	}
}

async function makeDurable(
	database: BetterSqlite3.Database,
	inMemory: boolean,
	patienceMs: number,
): Promise<void> {
	// Two processes that switch a new file to WAL at the same moment get SQLITE_BUSY whatever the timeout.
	const deadline = Date.now() + patienceMs;
	for (;;) {
		try {
			database.pragma('journal_mode = WAL');
			break;
		} catch (error) {
			if (!driverCode(error).startsWith('SQLITE_BUSY') || Date.now() > deadline) throw error;
			await sleep(5 + Math.random() * 20);
		}
	}
	// The library is built to fall back to NORMAL in WAL mode, which may lose the last commits at a power cut.
	database.pragma('synchronous = FULL');
	// On macOS a plain fsync leaves the data in the drive's cache.
	database.pragma('fullfsync = ON');
	database.pragma('foreign_keys = ON');
	// What is deleted is overwritten with zeros: a forgotten name must not stay in a free page.
	database.pragma('secure_delete = ON');
	database.pragma('cell_size_check = ON');
	// The usual 2 MB hold too little of the indexes of a long log [KiB, negative by SQLite's convention].
	database.pragma('cache_size = -65536');
	const expected: Record<string, unknown> = {
		journal_mode: inMemory ? 'memory' : 'wal',
		synchronous: 2,
		foreign_keys: 1,
		secure_delete: 1,
	};
	for (const [name, value] of Object.entries(expected)) {
		const actual: unknown = database.pragma(name, { simple: true });
		if (actual !== value) {
			throw new LogError('unavailable', `SQLite keeps ${name} at ${actual}; the log needs ${value}`);
		}
	}
}

class SqliteDatabase implements Database {
	readonly kind = 'sqlite';
	readonly writesPerCommit = WRITES_PER_COMMIT;
	readonly db: Kysely<Tables>;
	readonly toLogError = toLogError;
	readonly #database: BetterSqlite3.Database;

	constructor(database: BetterSqlite3.Database) {
		this.#database = database;
		this.db = new Kysely<Tables>({ dialect: new LogSqliteDialect(database) });
	}

	async withoutTimeLimit<T>(task: (db: Kysely<Tables>) => Promise<T>): Promise<T> {
		return await task(this.db);
	}

	async transact(lasting: boolean, task: (transaction: Transaction<Tables>) => Promise<void>): Promise<void> {
		if (lasting) return await this.db.transaction().execute(task);
		// It waits for no disk; the next one that does brings it there too, because all go into one file one after the other.
		await this.db.connection().execute(async (db) => {
			await sql`pragma synchronous = normal`.execute(db);
			try {
				await db.transaction().execute(task);
			} finally {
				await sql`pragma synchronous = full`.execute(db);
			}
		});
	}

	/** SQLite has one writer, whatever the shop. */
	writeKey(): string {
		return '';
	}

	async lockHead(transaction: Transaction<Tables>, shop: string): Promise<Head | null> {
		// `begin immediate` holds the lock already.
		return await headOf(transaction, shop);
	}

	async indexWords(transaction: Transaction<Tables>, entries: readonly IndexedEntry[]): Promise<void> {
		if (entries.length === 0) return;
		const rows = entries.map((entry) => sql`(${entry.id}, ${listedTerms(entry)})`);
		await sql`insert into term_index (rowid, terms) values ${sql.join(rows)}`.execute(transaction);
	}

	async unindexWords(transaction: Transaction<Tables>, entryIds: readonly number[]): Promise<void> {
		for (const id of entryIds) await sql`delete from term_index where rowid = ${id}`.execute(transaction);
		// A deleted row leaves its words in the index until the segments are merged.
		await sql`insert into term_index (term_index) values ('optimize')`.execute(transaction);
	}

	hasWords(words: readonly string[], facets: AskedFacets) {
		return sql<boolean>`entries.id in (select rowid from term_index where term_index match ${matching(words, facets)})`;
	}

	hasWordsNear(words: readonly string[], { first, last, count }: NearIds) {
		const search = matching(words, null);
		if (last - first > FAR_APART * count) {
			return sql<boolean>`exists
				(select 1 from term_index where term_index match ${search} and rowid = entries.id)`;
		}
		// With the plus SQLite walks along the numbers and stops when the page is full, and sorts no whole entries.
		return sql<boolean>`+entries.id in
			(select rowid from term_index where term_index match ${search}
				and rowid between ${whole(first)} and ${whole(last)})`;
	}

	async idsWithWords(words: readonly string[], facets: AskedFacets, range: IdRange): Promise<number[]> {
		const search = matching(words, facets);
		// The index gives its entries in either order, one after the other, and reads no more than are taken.
		const order = range.nearest === 'above' ? sql`order by rowid` : sql`order by rowid desc`;
		const { rows } = await sql<{
			rowid: number;
		}>`select rowid from term_index where term_index match ${search}
			and rowid > ${whole(range.above)} and rowid < ${whole(range.below)}
			${order} limit ${range.limit}`.execute(this.db);
		return rows.map(({ rowid }) => rowid);
	}

	async rarestFirst(words: readonly string[], nearId: number): Promise<readonly string[]> {
		if (words.length < 2) return words;
		const [first, last] = [nearId - SAMPLE_ENTRIES / 2, nearId + SAMPLE_ENTRIES / 2];
		const counted = words.map(
			(word, at) => sql`select ${at} as at, (select count(*) from term_index
				where term_index match ${matching([word], null)} and rowid between ${whole(first)} and ${whole(last)}) as count`,
		);
		const { rows } = await sql<{ at: number }>`select at from (${sql.join(counted, sql` union all `)})
			order by count`.execute(this.db);
		return rows.map(({ at }) => words[at] as string);
	}

	async scrub(): Promise<void> {
		// The write-ahead file still holds the pages as they were; this moves and empties it.
		const { rows } = await sql<{ busy: number }>`pragma wal_checkpoint(truncate)`.execute(this.db);
		if (rows[0]?.busy !== 0) throw new LogError('locked', 'another program is reading the log');
	}

	async damage(): Promise<string | null> {
		const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check(1)`.execute(this.db);
		const first = rows[0]?.integrity_check;
		return first === undefined || first === 'ok' ? null : first;
	}

	async backup(path: string): Promise<void> {
		const file = resolve(path);
		if (existsSync(file))
			throw new LogError('unavailable', `${file} exists; a backup never overwrites a file`);
		const unfinished = `${file}.unfinished`;
		try {
			rmSync(unfinished, { force: true });
			createFile(unfinished);
			// Page by page between other work; pages written meanwhile are copied again.
			await this.#database.backup(unfinished);
			assertSound(unfinished);
			renameSync(unfinished, file);
			syncFolderOf(file);
		} catch (error) {
			for (const ending of ['', '-wal', '-shm']) rmSync(unfinished + ending, { force: true });
			throw error;
		}
	}

	async close(): Promise<void> {
		await this.db.destroy();
		// Kysely closes only a database that it has used.
		this.#database.close();
	}
}

/** The driver gives every number as a float, and with a float the index of words does not keep to a range. */
function whole(id: number) {
	return sql<number>`cast(${id} as integer)`;
}

function toLogError(error: unknown): LogError {
	if (error instanceof LogError) return error;
	const code = driverCode(error);
	const detail = `${messageOf(error)}${code === '' ? '' : ` (${code})`}`;
	// SHMSIZE: the file beside the database that its readers share could not grow.
	if (['SQLITE_FULL', 'SQLITE_IOERR_SHMSIZE', 'ENOSPC', 'EDQUOT'].includes(code)) {
		return new LogError('full', `no room left to write the log; nothing was written: ${detail}`, error);
	}
	if (code.startsWith('SQLITE_READONLY') || code === 'EROFS' || code === 'EACCES') {
		return new LogError('read-only', `the log may not be written; nothing was written: ${detail}`, error);
	}
	if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) {
		return new LogError('locked', `another program holds the log; nothing was written: ${detail}`, error);
	}
	if (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB') {
		return new LogError('corrupt', `the file of the log is damaged or is no log: ${detail}`, error);
	}
	return new LogError('unavailable', `the log can't be used: ${detail}`, error);
}
