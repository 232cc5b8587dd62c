import { createHash } from 'node:crypto';
import { type Kysely, type Migration, sql } from 'kysely';

/**
 * The history of the schema, oldest first. A migration that has run anywhere is never edited: it uses neither
 * today's types nor today's code, and what it got wrong is put right by a later one.
 */
export function migrationsFor(dialect: 'sqlite' | 'postgres'): Record<string, Migration> {
	return {
		'2026-01-01-chain': {
			async up(db: Kysely<unknown>): Promise<void> {
				await createChain(db, dialect);
				await forbidRewriting(db, dialect);
				await createWordIndex(db, dialect);
			},
		},
		'2026-11-25-days': {
			async up(db: Kysely<unknown>): Promise<void> {
				// With the number in it, the index alone tells between which numbers the entries of some days lie.
				await db.schema.dropIndex('entries_at').execute();
				await db.schema
					.createIndex('entries_at_number')
					.on('entries')
					.columns(['shop', 'at', 'number'])
					.execute();
			},
		},
		'2026-11-29-beginnings': {
			async up(db: Kysely<unknown>): Promise<void> {
				if (dialect === 'sqlite') await indexBeginnings(db);
			},
		},
		'2026-11-29-kinds': {
			async up(db: Kysely<unknown>): Promise<void> {
				// What is not an exchange is rare among a million of them: which build a channel works on is asked each time.
				await db.schema
					.createIndex('entries_kind')
					.on('entries')
					.columns(['shop', 'kind', 'channel', 'number'])
					.execute();
			},
		},
		'2026-11-30-spans': {
			async up(db: Kysely<unknown>): Promise<void> {
				await keepSpans(db, dialect);
			},
		},
		'2026-11-30-terms': {
			async up(db: Kysely<unknown>): Promise<void> {
				if (dialect === 'postgres') await indexTerms(db);
			},
		},
		'2026-12-01-places': {
			async up(db: Kysely<unknown>): Promise<void> {
				if (dialect === 'sqlite') await indexPlaces(db);
			},
		},
		'2026-12-01-rare-kinds': {
			async up(db: Kysely<unknown>): Promise<void> {
				// All signatures of a shop, wherever they were given, in their order.
				await sql`create index entries_rare on entries (shop, kind, number) where kind <> 'exchange'`.execute(
					db,
				);
			},
		},
	};
}

async function createChain(db: Kysely<unknown>, dialect: 'sqlite' | 'postgres'): Promise<void> {
	// STRICT makes SQLite hold to the column types as PostgreSQL does.
	const ending = dialect === 'sqlite' ? sql`strict` : sql``;
	await db.schema
		.createTable('entries')
		.addColumn('id', 'integer', (column) =>
			dialect === 'sqlite' ? column.primaryKey() : column.generatedAlwaysAsIdentity().primaryKey(),
		)
		.addColumn('shop', 'text', (column) => column.notNull())
		.addColumn('number', 'integer', (column) => column.notNull())
		.addColumn('kind', 'text', (column) => column.notNull())
		.addColumn('delivery', 'text')
		.addColumn('platform', 'text', (column) => column.notNull())
		.addColumn('channel', 'text', (column) => column.notNull())
		.addColumn('thread', 'text')
		.addColumn('build', 'text')
		.addColumn('topic', 'text')
		.addColumn('at', 'text', (column) => column.notNull())
		.addColumn('follows', 'integer')
		.addColumn('replaces', 'integer')
		.addColumn('state', 'text')
		.addColumn('person_tag', 'text', (column) => column.notNull())
		.addColumn('commitment', 'text', (column) => column.notNull())
		.addColumn('body', 'text', (column) => column.notNull())
		.addColumn('previous_hash', 'text', (column) => column.notNull())
		.addColumn('hash', 'text', (column) => column.notNull())
		.addUniqueConstraint('entries_number', ['shop', 'number'])
		.addUniqueConstraint('entries_delivery', ['shop', 'delivery'])
		.modifyEnd(ending)
		.execute();
	await db.schema
		.createTable('erasable')
		.addColumn('shop', 'text', (column) => column.notNull())
		.addColumn('number', 'integer', (column) => column.notNull())
		.addColumn('person_id', 'text', (column) => column.notNull())
		.addColumn('person_name', 'text', (column) => column.notNull())
		.addColumn('text', 'text', (column) => column.notNull())
		.addColumn('salt', 'text', (column) => column.notNull())
		.addPrimaryKeyConstraint('erasable_key', ['shop', 'number'])
		.addForeignKeyConstraint('erasable_entry', ['shop', 'number'], 'entries', ['shop', 'number'])
		.modifyEnd(ending)
		.execute();
	await db.schema
		.createTable('people')
		.addColumn('shop', 'text', (column) => column.notNull())
		.addColumn('person_id', 'text', (column) => column.notNull())
		.addColumn('person_tag', 'text', (column) => column.notNull())
		.addColumn('salt', 'text', (column) => column.notNull())
		.addPrimaryKeyConstraint('people_key', ['shop', 'person_id'])
		.modifyEnd(ending)
		.execute();
	await db.schema
		.createTable('heads')
		.addColumn('shop', 'text', (column) => column.notNull().primaryKey())
		.addColumn('number', 'integer', (column) => column.notNull())
		.addColumn('hash', 'text', (column) => column.notNull())
		.modifyEnd(ending)
		.execute();
	await db.schema
		.createTable('settings')
		.addColumn('shop', 'text', (column) => column.notNull())
		.addColumn('key', 'text', (column) => column.notNull())
		.addColumn('value', 'text', (column) => column.notNull())
		.addPrimaryKeyConstraint('settings_key', ['shop', 'key'])
		.modifyEnd(ending)
		.execute();
	const indexes: Record<string, string[]> = {
		entries_thread: ['shop', 'channel', 'thread', 'number'],
		entries_build: ['shop', 'build', 'number'],
		entries_topic: ['shop', 'topic', 'number'],
		entries_person: ['shop', 'person_tag', 'number'],
		entries_state: ['shop', 'state', 'number'],
		entries_at: ['shop', 'at'],
		entries_follows: ['shop', 'follows', 'number'],
		entries_replaces: ['shop', 'replaces', 'number'],
	};
	for (const [name, columns] of Object.entries(indexes)) {
		await db.schema.createIndex(name).on('entries').columns(columns).execute();
	}
}

/** A second lock behind the types: the database itself refuses to change or delete an entry. */
async function forbidRewriting(db: Kysely<unknown>, dialect: 'sqlite' | 'postgres'): Promise<void> {
	if (dialect === 'sqlite') {
		for (const change of ['update', 'delete']) {
			await sql`create trigger ${sql.ref(`entries_no_${change}`)} before ${sql.raw(change)} on entries
				begin select raise(abort, 'an entry of the log is never changed or deleted'); end`.execute(db);
		}
		return;
	}
	await sql`create function refuse_rewriting() returns trigger language plpgsql as
		$$ begin raise exception 'an entry of the log is never changed or deleted'; end $$`.execute(db);
	await sql`create trigger entries_no_change before update or delete or truncate on entries
		for each statement execute function refuse_rewriting()`.execute(db);
}

/** Words come cut and folded by the program, so that both databases find the same entries. */
async function createWordIndex(db: Kysely<unknown>, dialect: 'sqlite' | 'postgres'): Promise<void> {
	if (dialect === 'sqlite') {
		await sql`create virtual table word_index using
			fts5(words, content = '', contentless_delete = 1, tokenize = 'ascii', detail = none)`.execute(db);
		return;
	}
	await sql`create table word_index (entry_id integer primary key references entries (id), words tsvector not null)`.execute(
		db,
	);
	await sql`create index word_index_words on word_index using gin (words)`.execute(db);
}

/**
 * The words again in an index that also lists the entries of each beginning of a word. Without these lists SQLite
 * merges those of all words with the same beginning at every search, however few entries are then looked at.
 */
async function indexBeginnings(db: Kysely<unknown>): Promise<void> {
	const lengths = Array.from({ length: 15 }, (_, at) => at + 2).join(' ');
	await sql`alter table word_index rename to words_before`.execute(db);
	await sql`create virtual table word_index using fts5(words, content = '', contentless_delete = 1,
		tokenize = 'ascii', detail = none, prefix = ${sql.lit(lengths)})`.execute(db);
	// The index keeps no texts, but which word is in which entry: that is all there is to carry over.
	await sql`create virtual table temp.occurrences using fts5vocab(main, words_before, instance)`.execute(db);
	await sql`insert into word_index (rowid, words)
		select doc, group_concat(term, ' ') from temp.occurrences group by doc`.execute(db);
	await sql`drop table temp.occurrences`.execute(db);
	await sql`drop table words_before`.execute(db);
}

/**
 * Of each 1024 entries of a shop the first and the last instant: where some days lie is read from a few hundred rows,
 * and no longer from every entry of a year. A trigger keeps them, so they hold whatever program writes.
 */
async function keepSpans(db: Kysely<unknown>, dialect: 'sqlite' | 'postgres'): Promise<void> {
	await db.schema
		.createTable('spans')
		.addColumn('shop', 'text', (column) => column.notNull())
		.addColumn('span', 'integer', (column) => column.notNull())
		.addColumn('first_at', 'text', (column) => column.notNull())
		.addColumn('last_at', 'text', (column) => column.notNull())
		.addPrimaryKeyConstraint('spans_key', ['shop', 'span'])
		.modifyEnd(dialect === 'sqlite' ? sql`strict, without rowid` : sql``)
		.execute();
	// Nobody writes between the count of what is there and the trigger for what comes: SQLite has one writer anyway.
	if (dialect === 'postgres') await sql`lock table entries in share row exclusive mode`.execute(db);
	await sql`insert into spans (shop, span, first_at, last_at)
		select shop, number / 1024, min(at), max(at) from entries group by shop, number / 1024`.execute(db);
	if (dialect === 'sqlite') {
		await sql`create trigger entries_span after insert on entries begin
			insert into spans (shop, span, first_at, last_at) values (new.shop, new.number / 1024, new.at, new.at)
			on conflict (shop, span) do update set
				first_at = min(first_at, excluded.first_at), last_at = max(last_at, excluded.last_at);
			end`.execute(db);
	} else {
		await sql`create function keep_span() returns trigger language plpgsql as $$ begin
			insert into spans (shop, span, first_at, last_at)
				select shop, number / 1024, min(at), max(at) from written group by shop, number / 1024
			on conflict (shop, span) do update set
				first_at = least(spans.first_at, excluded.first_at), last_at = greatest(spans.last_at, excluded.last_at);
			return null; end $$`.execute(db);
		await sql`create trigger entries_span after insert on entries
			referencing new table as written for each statement execute function keep_span()`.execute(db);
	}
	await db.schema.dropIndex('entries_at_number').execute();
}

/**
 * The index of words again, with every beginning of 2 to 16 letters and with where an entry belongs as terms of their
 * own, these and the stretch of 32768 ids it is in. It has a new name: a program that knows nothing of them would write entries that can't be found.
 */
async function indexTerms(db: Kysely<unknown>): Promise<void> {
	await sql`lock table word_index in share row exclusive mode`.execute(db);
	await sql`create table term_index (entry_id integer not null, terms tsvector not null)`.execute(db);
	const place = (mark: string, column: string) =>
		sql`'=' || ${sql.lit(mark)} || left(encode(sha256(convert_to(
			entries.shop || chr(10) || ${sql.raw(column)}, 'UTF8')), 'hex'), 8)`;
	const places = sql`array[${sql.join([
		place('s', `''`),
		place('b', 'entries.build'),
		place('t', 'entries.topic'),
		place('c', 'entries.channel'),
		place('p', 'entries.person_tag'),
		place('a', 'entries.state'),
	])}]`;
	// Together the terms of an entry may be 1 MiB long, and with its beginnings a word is up to nine times as long:
	// where an entry has very many words, those of the first 64 KiB have beginnings.
	for (const few of [true, false]) {
		const words = few
			? sql`(select lexeme from unnest(words) as one(lexeme, positions, weights))`
			: sql`(select lexeme from (
				select lexeme, sum(octet_length(lexeme)) over (order by lexeme) as bytes
				from unnest(words) as one(lexeme, positions, weights)) as counted where bytes <= 65536)`;
		const size = few ? sql`length(words) <= 1000` : sql`length(words) > 1000`;
		await sql`insert into term_index (entry_id, terms)
			select entry_id, array_to_tsvector(tsvector_to_array(words)
				|| array(select left(lexeme, letters)
					from ${words} as short, generate_series(2, least(16, char_length(lexeme) - 1)) as letters
					where lexeme !~ ${sql.lit(`^[${digits()}]`)})
				|| array_remove(${places}, null) || array['=n' || (entry_id >> 15)])
			from word_index join entries on entries.id = entry_id where ${size} order by entry_id`.execute(db);
	}
	await sql`drop table word_index`.execute(db);
	await sql`alter table term_index add primary key (entry_id)`.execute(db);
	await sql`alter table term_index add foreign key (entry_id) references entries (id)`.execute(db);
	await sql`set local maintenance_work_mem = '256MB'`.execute(db);
	// A long list of entries that are not yet sorted in would be read through at every search.
	await sql`create index term_index_terms on term_index using gin (terms) with (gin_pending_list_limit = 512)`.execute(
		db,
	);
}

/** Every digit of every script, as ranges of characters: what the server takes for one depends on its locale. */
function digits(): string {
	const ranges: string[] = [];
	let start: string | null = null;
	let last = '';
	for (let code = 0; code <= 0x10_ff_ff; code += 1) {
		const letter = code >= 0xd8_00 && code <= 0xdf_ff ? '' : String.fromCodePoint(code);
		if (/^\p{N}$/u.test(letter)) {
			start ??= letter;
			last = letter;
		} else if (start !== null) {
			ranges.push(`${start}-${last}`);
			start = null;
		}
	}
	return ranges.join('');
}

/**
 * The index of words again, which also lists where an entry belongs: shop, build, topic, channel, person and state, each
 * as a term of two characters for private use. Its new name keeps out a program that knows nothing of them.
 */
async function indexPlaces(db: Kysely<unknown>): Promise<void> {
	const columns = { s: null, b: 'build', t: 'topic', c: 'channel', p: 'person_tag', a: 'state' } as const;
	await sql`create temp table places (mark text, shop text, value text, term text,
		primary key (mark, shop, value)) without rowid`.execute(db);
	for (const [mark, column] of Object.entries(columns)) {
		const value = column === null ? sql`''` : sql.ref(column);
		const { rows } = await sql<{
			shop: string;
			value: string;
		}>`select distinct shop, ${value} as value from entries where ${value} is not null`.execute(db);
		for (const { shop, value } of rows) {
			const hash = createHash('sha256').update(`${mark}${shop}\n${value}`).digest();
			const term = String.fromCodePoint(
				0xf_00_00 + (hash.readUInt16BE(0) % 65_534),
				0x10_00_00 + (hash.readUInt16BE(2) % 65_534),
			);
			await sql`insert into temp.places values (${mark}, ${shop}, ${value}, ${term})`.execute(db);
		}
	}
	const lengths = Array.from({ length: 31 }, (_, at) => at + 2).join(' ');
	await sql`create virtual table term_index using fts5(terms, content = '', contentless_delete = 1,
		tokenize = 'ascii', detail = none, prefix = ${sql.lit(lengths)})`.execute(db);
	await sql`create virtual table temp.occurrences using fts5vocab(main, word_index, instance)`.execute(db);
	const places = Object.entries(columns).map(
		([mark, column]) => sql`select entries.id, places.term from entries join temp.places as places
			on places.mark = ${sql.lit(mark)} and places.shop = entries.shop
			and places.value = ${column === null ? sql`''` : sql.ref(`entries.${column}`)}`,
	);
	await sql`insert into term_index (rowid, terms) select id, group_concat(term, ' ') from (
		select doc as id, term from temp.occurrences union all ${sql.join(places, sql` union all `)})
		group by id`.execute(db);
	await sql`drop table temp.occurrences`.execute(db);
	await sql`drop table temp.places`.execute(db);
	await sql`drop table word_index`.execute(db);
}
