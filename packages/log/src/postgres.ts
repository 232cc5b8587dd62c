import { Kysely, PostgresAdapter, PostgresDialect, sql, type Transaction } from 'kysely';
import pg from 'pg';
import { FIRST_PREVIOUS_HASH } from './chain.js';
import type { Database, DatabaseOptions, Head, IdRange, IndexedEntry } from './database.js';
import { driverCode, LogError, messageOf } from './errors.js';
import { STRETCH, searchFor, stretchOf, termsOf } from './postgres-terms.js';
import { retrying } from './retry.js';
import type { Tables } from './tables.js';
import type { AskedFacets } from './terms.js';

const POOL_CONNECTIONS = 10;
/** Entries that a search lists and that may be fetched to be put in order. */
const FEW = 2000;
/** No statement of the log takes long; one that does hangs. */
const STATEMENT_TIMEOUT_MS = 60_000;

export async function openPostgres(url: string, options: DatabaseOptions): Promise<Database> {
	const unlimited: pg.PoolConfig = {
		connectionString: url,
		application_name: 'lugbook',
		max: POOL_CONNECTIONS,
		connectionTimeoutMillis: options.patienceMs,
		keepAlive: true,
		lock_timeout: options.patienceMs,
		// By the pool and not by the query builder, which would keep a connection that breaks here, and with it one
		// of the pool's places, for good.
		onConnect: setUp,
	};
	const pool = poolOf({
		...unlimited,
		statement_timeout: STATEMENT_TIMEOUT_MS,
		idle_in_transaction_session_timeout: STATEMENT_TIMEOUT_MS,
		// A server that vanished without closing the connection would otherwise never answer.
		query_timeout: STATEMENT_TIMEOUT_MS + options.patienceMs,
	});
	const database = new PostgresDatabase(pool, unlimited);
	try {
		// A server that is just coming up is waited for.
		await retrying(database, Date.now() + options.patienceMs, () => database.checkServer());
	} catch (error) {
		await database.close();
		throw toLogError(error);
	}
	return database;
}

function poolOf(config: pg.PoolConfig): pg.Pool {
	const pool = new pg.Pool(config);
	// A connection that breaks says so by an event. The statement that next needs it fails and is handled there;
	// without listeners the event itself would end the process, idle (pool) or between two statements (client).
	pool.on('error', () => undefined);
	pool.on('connect', (client) => client.on('error', () => undefined));
	return pool;
}

/**
 * A server may be set up to answer before a commit is on disk: the log may not. And its statements read some thousand
 * rows at most: to compile them, or to start processes for them, takes longer than they do.
 */
async function setUp(client: pg.ClientBase): Promise<void> {
	await client.query(
		`select set_config('synchronous_commit', 'on', false) where current_setting('synchronous_commit') = 'off'
		union all select set_config('jit', 'off', false)
		union all select set_config('max_parallel_workers_per_gather', '0', false)`,
	);
}

/** The one that the query builder takes: a program with an earlier one and this one shut each other out. */
const MIGRATION_LOCK = '3853314791062309107';

class LogPostgresAdapter extends PostgresAdapter {
	/** Whoever waits for this lock inside the server can't say so: we wait between tries. */
	override async acquireMigrationLock(db: Kysely<unknown>): Promise<void> {
		const { rows } = await sql<{ is_ours: boolean }>`
			select pg_try_advisory_lock(${sql.lit(MIGRATION_LOCK)}) as is_ours`.execute(db);
		if (rows[0]?.is_ours !== true) {
			throw new LogError('locked', 'another process brings the log up to date; nothing was written');
		}
	}
}

class LogPostgresDialect extends PostgresDialect {
	override createAdapter(): PostgresAdapter {
		return new LogPostgresAdapter();
	}
}

class PostgresDatabase implements Database {
	readonly kind = 'postgres';
	/** Its server gathers the commits of its connections; several writes in one would take each other's locks in any order. */
	readonly writesPerCommit = 1;
	readonly db: Kysely<Tables>;
	readonly toLogError = toLogError;
	readonly #pool: pg.Pool;
	readonly #unlimited: pg.PoolConfig;

	/** @param unlimited how to connect where a statement may take as long as it takes */
	constructor(pool: pg.Pool, unlimited: pg.PoolConfig) {
		this.#pool = pool;
		this.#unlimited = unlimited;
		this.db = new Kysely<Tables>({ dialect: new LogPostgresDialect({ pool }) });
	}

	async withoutTimeLimit<T>(task: (db: Kysely<Tables>) => Promise<T>): Promise<T> {
		const db = new Kysely<Tables>({ dialect: new LogPostgresDialect({ pool: poolOf(this.#unlimited) }) });
		try {
			return await task(db);
		} finally {
			await db.destroy();
		}
	}

	async checkServer(): Promise<void> {
		const { rows } = await sql<{ server_encoding: string }>`show server_encoding`.execute(this.db);
		const encoding = rows[0]?.server_encoding;
		if (encoding !== 'UTF8') {
			throw new LogError('unavailable', `the database is encoded in ${encoding}; the log needs UTF8`);
		}
	}

	writeKey(shop: string): string {
		return shop;
	}

	async lockHead(transaction: Transaction<Tables>, shop: string): Promise<Head | null> {
		const read = () =>
			transaction
				.selectFrom('heads')
				.select(['number', 'hash'])
				.where('shop', '=', shop)
				.forUpdate()
				.executeTakeFirst();
		const head = await read();
		if (head !== undefined) return head;
		// No row, nothing to lock: put one there. Of two first writers the second waits here for the first.
		await transaction
			.insertInto('heads')
			.values({ shop, number: 0, hash: FIRST_PREVIOUS_HASH })
			.onConflict((conflict) => conflict.column('shop').doNothing())
			.execute();
		const created = await read();
		return created === undefined || created.number === 0 ? null : created;
	}

	async indexWords(transaction: Transaction<Tables>, entries: readonly IndexedEntry[]): Promise<void> {
		if (entries.length === 0) return;
		const rows = entries.map((entry) => sql`(${entry.id}, array_to_tsvector(${termsOf(entry)}::text[]))`);
		await sql`insert into term_index (entry_id, terms) values ${sql.join(rows)}`.execute(transaction);
	}

	async unindexWords(transaction: Transaction<Tables>, entryIds: readonly number[]): Promise<void> {
		await sql`delete from term_index where entry_id = any (${[...entryIds]}::integer[])`.execute(transaction);
	}

	hasWords(words: readonly string[], facets: AskedFacets) {
		// Materialized, so that the server begins with the index: without statistics it walks through the entries.
		return sql<boolean>`entries.id in (with hits as materialized
			(select entry_id from term_index where terms @@ ${searchFor(words, facets)}::tsquery)
			select entry_id from hits)`;
	}

	hasWordsNear(words: readonly string[]) {
		// As a value, not as `exists`: that one the server may turn into a join, or answer by reading all words first.
		return sql<boolean>`(select terms @@ ${searchFor(words, null)}::tsquery from term_index
			where entry_id = entries.id)`;
	}

	/** The server knows by its statistics. */
	async rarestFirst(words: readonly string[]): Promise<readonly string[]> {
		return words;
	}

	/**
	 * The index itself gives no order, and to fetch all it lists takes long where these are many. Few are fetched and put
	 * in order; where there are more, each stretch of ids is asked for by itself, the nearest first, until enough are
	 * found. For few, or none, that would take longer: each stretch reads the lists anew.
	 */
	async idsWithWords(words: readonly string[], facets: AskedFacets, range: IdRange): Promise<number[]> {
		const search = searchFor(words, facets);
		// Materialized, so that the server begins with the index and does not walk along the ids.
		const { rows: some } = await sql<{ entry_id: number }>`with hits as materialized
			(select entry_id from term_index where terms @@ ${search}::tsquery limit ${FEW + 1})
			select entry_id from hits`.execute(this.db);
		const isAscending = range.nearest === 'above';
		const within = some.flatMap(({ entry_id: id }) => (id > range.above && id < range.below ? id : []));
		within.sort((a, b) => (isAscending ? a - b : b - a));
		if (some.length <= FEW) return within.slice(0, range.limit);
		const { rows: ends } = await sql<{ first: number; last: number }>`select
			coalesce(min(entry_id), 0) as first, coalesce(max(entry_id), 0) as last from term_index`.execute(
			this.db,
		);
		const first = stretchOf(Math.max(range.above + 1, ends[0]?.first ?? 0));
		const last = stretchOf(Math.min(range.below - 1, ends[0]?.last ?? 0));
		const stretches = isAscending
			? sql`generate_series(${first}::integer, ${last}::integer)`
			: sql`generate_series(${last}::integer, ${first}::integer, -1)`;
		const { rows } = await sql<{ entry_id: number }>`select near.entry_id from ${stretches} as stretch,
			lateral (select entry_id from term_index
				where terms @@ (${`${search} & '${STRETCH}`} || stretch || '''')::tsquery
				and entry_id > ${range.above} and entry_id < ${range.below}
				order by entry_id + 0 ${isAscending ? sql`asc` : sql`desc`}) as near
			limit ${range.limit}`.execute(this.db);
		return rows.map(({ entry_id }) => entry_id);
	}

	async scrub(): Promise<void> {
		// Deleted rows stay in their pages until a vacuum; one that may not run now runs by itself later.
		for (const table of ['erasable', 'people', 'term_index']) {
			await sql`vacuum ${sql.table(table)}`.execute(this.db).catch(() => undefined);
		}
	}

	async damage(): Promise<string | null> {
		return null;
	}

	async backup(): Promise<void> {
		throw new LogError(
			'unavailable',
			'a log on PostgreSQL is backed up with the tools of PostgreSQL, e.g. pg_dump',
		);
	}

	async close(): Promise<void> {
		await this.db.destroy();
		if (!this.#pool.ended) await this.#pool.end();
	}
}

/** SQLSTATE classes and Node codes that mean: the server is not there, or is going away or coming up. */
const CONNECTION_LOST = new Set([
	'57P01',
	'57P02',
	'57P03',
	'25P03',
	'ECONNREFUSED',
	'ECONNRESET',
	'ECONNABORTED',
	'EPIPE',
	'ETIMEDOUT',
	'EHOSTUNREACH',
	'ENETUNREACH',
	'ENOENT',
]);

/** The client has no code for these; its words are all there is. */
const CONNECTION_LOST_WORDS =
	/Connection terminated|timeout exceeded when trying to connect|not queryable|Client has encountered a connection error|Query read timeout|connection has been discarded/i;

/** PostgreSQL codes: Appendix A, "PostgreSQL Error Codes". */
function toLogError(error: unknown): LogError {
	if (error instanceof LogError) return error;
	const code = driverCode(error);
	const detail = `${messageOf(error)}${code === '' ? '' : ` (${code})`}`;
	if (code.startsWith('08') || CONNECTION_LOST.has(code) || CONNECTION_LOST_WORDS.test(messageOf(error))) {
		return new LogError('connection-lost', `the database of the log does not answer: ${detail}`, error);
	}
	switch (code) {
		case '53100':
			return new LogError('full', `no room left to write the log; nothing was written: ${detail}`, error);
		case '25006':
			return new LogError('read-only', `the log may not be written; nothing was written: ${detail}`, error);
		case '55P03':
		case '40P01':
		case '40001':
		case '57014':
			return new LogError('locked', `another program holds the log; nothing was written: ${detail}`, error);
		case 'XX001':
		case 'XX002':
			return new LogError('corrupt', `the database of the log is damaged: ${detail}`, error);
		default:
			return new LogError('unavailable', `the log can't be used: ${detail}`, error);
	}
}
