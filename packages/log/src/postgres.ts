import { Kysely, PostgresDialect, sql, type Transaction } from 'kysely';
import pg from 'pg';
import { FIRST_PREVIOUS_HASH } from './chain.js';
import type { Database, DatabaseOptions, Head } from './database.js';
import { driverCode, LogError, messageOf } from './errors.js';
import { retrying } from './retry.js';
import type { Tables } from './tables.js';
import { isPrefix } from './words.js';

const POOL_CONNECTIONS = 10;
/** No statement of the log takes long; one that does hangs. */
const STATEMENT_TIMEOUT_MS = 60_000;

export async function openPostgres(url: string, options: DatabaseOptions): Promise<Database> {
	const pool = new pg.Pool({
		connectionString: url,
		application_name: 'lugbook',
		max: POOL_CONNECTIONS,
		connectionTimeoutMillis: options.patienceMs,
		keepAlive: true,
		lock_timeout: options.patienceMs,
		statement_timeout: STATEMENT_TIMEOUT_MS,
		idle_in_transaction_session_timeout: STATEMENT_TIMEOUT_MS,
		// A server that vanished without closing the connection would otherwise never answer.
		query_timeout: STATEMENT_TIMEOUT_MS + options.patienceMs,
		// By the pool and not by the query builder, which would keep a connection that breaks here, and with it one
		// of the pool's places, for good.
		onConnect: commitsOnDisk,
	});
	// A connection that breaks says so by an event. The statement that next needs it fails and is handled there;
	// without listeners the event itself would end the process, idle (pool) or between two statements (client).
	pool.on('error', () => undefined);
	pool.on('connect', (client) => client.on('error', () => undefined));
	const database = new PostgresDatabase(pool);
	try {
		// A server that is just coming up is waited for.
		await retrying(database, Date.now() + options.patienceMs, () => database.checkServer());
	} catch (error) {
		await database.close();
		throw toLogError(error);
	}
	return database;
}

/** A server may be set up to answer before a commit is on disk. The log may not. */
async function commitsOnDisk(client: pg.ClientBase): Promise<void> {
	await client.query(
		`select set_config('synchronous_commit', 'on', false) where current_setting('synchronous_commit') = 'off'`,
	);
}

class PostgresDatabase implements Database {
	readonly kind = 'postgres';
	/** Its server gathers the commits of its connections; several writes in one would take each other's locks in any order. */
	readonly writesPerCommit = 1;
	readonly db: Kysely<Tables>;
	readonly toLogError = toLogError;
	readonly #pool: pg.Pool;

	constructor(pool: pg.Pool) {
		this.#pool = pool;
		this.db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
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

	async indexWords(
		transaction: Transaction<Tables>,
		entries: readonly { readonly id: number; readonly words: readonly string[] }[],
	): Promise<void> {
		if (entries.length === 0) return;
		const rows = entries.map(({ id, words }) => sql`(${id}, array_to_tsvector(${[...words]}::text[]))`);
		await sql`insert into word_index (entry_id, words) values ${sql.join(rows)}`.execute(transaction);
	}

	async unindexWords(transaction: Transaction<Tables>, entryIds: readonly number[]): Promise<void> {
		await sql`delete from word_index where entry_id = any (${[...entryIds]}::integer[])`.execute(transaction);
	}

	hasWords(words: readonly string[]) {
		// Materialized, so that the server begins with the index: without statistics it walks through the entries.
		return sql<boolean>`entries.id in (with hits as materialized
			(select entry_id from word_index where words @@ ${matching(words)}::tsquery) select entry_id from hits)`;
	}

	hasWordsNear(words: readonly string[]) {
		// As a value, not as `exists`: that one the server may turn into a join, or answer by reading all words first.
		return sql<boolean>`(select words @@ ${matching(words)}::tsquery from word_index where entry_id = entries.id)`;
	}

	async idsWithWords(
		words: readonly string[],
		which: { readonly limit: number } & ({ readonly above: number } | { readonly below: number }),
	): Promise<number[]> {
		const side =
			'above' in which
				? sql`entry_id > ${which.above} order by entry_id`
				: sql`entry_id < ${which.below} order by entry_id desc`;
		// Materialized, so that the server begins with the index and does not walk along the ids.
		const { rows } = await sql<{ entry_id: number }>`with hits as materialized
			(select entry_id from word_index where words @@ ${matching(words)}::tsquery)
			select entry_id from hits where ${side} limit ${which.limit}`.execute(this.db);
		return rows.map(({ entry_id }) => entry_id);
	}

	async scrub(): Promise<void> {
		// Deleted rows stay in their pages until a vacuum; one that may not run now runs by itself later.
		for (const table of ['erasable', 'people', 'word_index']) {
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

/** Words hold letters and digits alone, so nothing in them can end the quotes. */
function matching(words: readonly string[]): string {
	return words.map((word) => `'${word}'${isPrefix(word) ? ':*' : ''}`).join(' & ');
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
