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
