import { Kysely, PostgresAdapter, PostgresDialect, sql, type Transaction } from 'kysely';
import pg from 'pg';
import { FIRST_PREVIOUS_HASH } from './chain.js';
import type { Database, DatabaseOptions, Head, IdRange, IndexedEntry } from './database.js';
import { driverCode, LogError, messageOf } from './errors.js';
import {
	type Condition,
	type Search,
	STRETCH,
	searchFor,
	stretchOf,
	termsOf,
	wordsIn,
} from './postgres-terms.js';
import { retrying } from './retry.js';
import type { Tables } from './tables.js';
import type { AskedFacets } from './terms.js';

const POOL_CONNECTIONS = 10;
/** Entries that a search lists and that may be fetched to be put in order. */
const FEW = 2000;
/** Share of the entries that have what nearly all have. */
const NEARLY_ALL = 0.8;
/** What the server has learned about its terms is asked for again after this time [ms]. */
const LEARNED_FOR_MS = 60_000;
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
	/** in which share of the entries the common terms are; empty where the server has not learned it */
	#shareOf: ReadonlyMap<string, number> = new Map();
	#learnedMs = Number.NEGATIVE_INFINITY;

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

	/** Its server has others do the waiting, so that all may last. */
	async transact(
		_lasting: boolean,
		task: (transaction: Transaction<Tables>) => Promise<void>,
	): Promise<void> {
		// Each statement must see what the holder of the lock before us wrote, whatever the server's default.
		await this.db.transaction().setIsolationLevel('read committed').execute(task);
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
			(select entry_id from term_index where ${this.#holds(searchFor(words, facets))})
			select entry_id from hits)`;
	}

	hasWordsNear(words: readonly string[]) {
		// As a value, not as `exists`: that one the server may turn into a join, or answer by reading all words first.
		return sql<boolean>`(select terms @@ ${wordsIn(words)}::tsquery from term_index
			where entry_id = entries.id)`;
	}

	/** The server knows by its statistics; the conditions of this search shall know too. */
	async rarestFirst(words: readonly string[]): Promise<readonly string[]> {
		await this.#learn();
		return words;
	}

	async #learn(): Promise<void> {
		const nowMs = performance.now();
		if (nowMs - this.#learnedMs < LEARNED_FOR_MS) return;
		// Nobody may read the statistics of what he may not read: then there is no row.
		const { rows } = await sql<{ terms: string[]; shares: number[] }>`select
			most_common_elems::text::text[] as terms, most_common_elem_freqs as shares from pg_stats
			where tablename = 'term_index' and attname = 'terms' and schemaname = any (current_schemas(false))
			and most_common_elems is not null`.execute(this.db);
		const [learned] = rows;
		this.#shareOf = new Map(learned?.terms.map((term, at) => [term, learned.shares[at] ?? 0]));
		this.#learnedMs = nowMs;
	}

	/** In which share of the entries a condition holds, by what the server has learned; what is rare it has not. */
	#share({ terms }: Condition): number {
		return terms.reduce((sum, term) => sum + (this.#shareOf.get(term) ?? 0), 0);
	}

	/** Whether a search finds many among so many: only where all conditions but one hold nearly always is that known. */
	#isMany({ words, places }: Search, entries: number): boolean {
		const shares = [...words, ...places].map((one) => this.#share(one)).sort((a, b) => a - b);
		const expected = shares.reduce((product, share) => product * share, entries);
		return shares.slice(1).every((share) => share > 0.5) && expected > 10 * FEW;
	}

	/**
	 * Conditions, the rarest first, as far as the server has learned how common terms are: of two conditions the index
	 * skips in the list of one past what the other has not. In a single one it looks up each entry of the rarest term in
	 * the lists of all others, also where these have none left.
	 */
	#ordered(conditions: readonly Condition[]): Condition[] {
		return [...conditions].sort((a, b) => this.#share(a) - this.#share(b));
	}

	/** Condition on `terms`, for all entries. The two rarest in one: two lists that never meet are read sooner so. */
	#holds({ words, places, checked }: Search) {
		const ordered = this.#ordered([...words, ...places]).map(({ query }) => query);
		const together = this.#shareOf.size === 0 ? ordered.length : 2;
		return allOf([ordered.slice(0, together).join(' & '), ...ordered.slice(together)], checked);
	}

	/** Condition on `terms`, for a stretch. A place of nearly all entries costs more to look up than it leaves out. */
	#holdsNear({ words, places, checked }: Search) {
		const telling = this.#ordered(places).filter(
			(one, at) => this.#share(one) < NEARLY_ALL || (at === 0 && words.length === 0),
		);
		return allOf(
			this.#ordered([...words, ...telling]).map(({ query }) => query),
			checked,
		);
	}

	/**
	 * The index itself gives no order, and to fetch all it lists takes long where these are many. Few are fetched and put
	 * in order; where there are more, each stretch of ids is asked for by itself, the nearest first, until enough are
	 * found. For few, or none, that would take longer: each stretch reads the lists anew.
	 */
	async idsWithWords(words: readonly string[], facets: AskedFacets, range: IdRange): Promise<number[]> {
		const { rows: ends } = await sql<{ first: number; last: number }>`select
			coalesce(min(entry_id), 0) as first, coalesce(max(entry_id), 0) as last from term_index`.execute(
			this.db,
		);
		const [{ first, last } = { first: 0, last: 0 }] = ends;
		const asked = searchFor(words, facets);
		const isAscending = range.nearest === 'above';
		if (!this.#isMany(asked, last - first)) {
			// Materialized, so that the server begins with the index and does not walk along the ids; the limit stands
			// outside, for within it the server would rather read entry by entry until so many are found.
			const { rows: some } = await sql<{ entry_id: number }>`with hits as materialized
				(select entry_id from term_index where ${this.#holds(asked)})
				select entry_id from hits limit ${FEW + 1}`.execute(this.db);
			if (some.length <= FEW) {
				const within = some.flatMap(({ entry_id: id }) => (id > range.above && id < range.below ? id : []));
				return within.sort((a, b) => (isAscending ? a - b : b - a)).slice(0, range.limit);
			}
		}
		const from = stretchOf(Math.max(range.above + 1, first));
		const to = stretchOf(Math.min(range.below - 1, last));
		const stretches = isAscending
			? sql`generate_series(${from}::integer, ${to}::integer)`
			: sql`generate_series(${to}::integer, ${from}::integer, -1)`;
		// The stretch comes first: where the next list has nothing in it, both are left there and then.
		const { rows } = await sql<{ entry_id: number }>`select near.entry_id from ${stretches} as stretch,
			lateral (select entry_id from term_index
				where terms @@ (${`'${STRETCH}`} || stretch || '''')::tsquery
				and ${this.#holdsNear(asked)}
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

/** Every one of these, and what no list of the index is to be made for: that question is none of the index's. */
function allOf(queries: readonly string[], checked: string | null) {
	const conditions = queries.map((query) => sql`terms @@ ${query}::tsquery`);
	if (checked !== null) conditions.push(sql`(terms @@ ${checked}::tsquery) is true`);
	return sql.join(conditions, sql` and `);
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
