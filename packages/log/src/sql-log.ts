import { type Kysely, sql, type Transaction } from 'kysely';
import { z } from 'zod';
import { appendIn } from './append.js';
import type { Database, Head } from './database.js';
import {
	type CheckedEntry,
	checkEntry,
	type Entry,
	type EntryKind,
	entryNumber,
	identifier,
	LIMITS,
	type NewEntry,
	parseOrRefuse,
	storable,
} from './entry.js';
import { LogError } from './errors.js';
import {
	type CheckedFilter,
	checkFilter,
	checkOptions,
	type FindOptions,
	facetsOf,
	filtered,
	type LogFilter,
	searchedWords,
} from './find.js';
import { FOLD_PAGE, foldPages } from './fold.js';
import { forgetIn } from './forget.js';
import type { Json } from './json.js';
import type { Log, LogPerson, ValueRange, WriteOptions } from './log.js';
import type { Leaves } from './merkle.js';
import { pageOfRows } from './page.js';
import { exportLines, type ImportResult, importLines } from './portable.js';
import {
	type ConsistencyProof,
	type InclusionProof,
	leavesOf,
	pathOf,
	type TreeHead,
	treeHead,
} from './proofs.js';
import { retrying } from './retry.js';
import { type EntryRow, entryWhere, headOf, peopleOf, toEntry } from './rows.js';
import type { Tables } from './tables.js';
import { type VerifyReport, verifyShop } from './verify.js';
import { indexedWordsOf, textAt } from './words.js';
import { Writes } from './writes.js';

const settingKey = storable(LIMITS.settingKeyBytes, false);
const settingValue = storable(LIMITS.settingValueBytes).nullable();
const headSchema = z.strictObject({
	number: entryNumber,
	hash: z.string().regex(/^[0-9a-f]{64}$/, 'is no SHA-256'),
});

export class SqlLog implements Log {
	readonly #database: Database;
	readonly #db: Kysely<Tables>;
	readonly #patienceMs: number;
	readonly #searchable: readonly string[] | null;
	readonly #writes: Writes;
	#closed = false;

	constructor(database: Database, patienceMs: number, searchable: readonly string[] | null) {
		this.#database = database;
		this.#db = database.db;
		this.#patienceMs = patienceMs;
		this.#searchable = searchable;
		this.#writes = new Writes(database, patienceMs);
	}

	async append(given: NewEntry): Promise<{ entry: Entry; repeated: boolean }> {
		const checked = checkEntry(given);
		const words = this.#wordsOf(checked, checked.text);
		// A connection that breaks during commit leaves it open whether the entry is there. The next try sees by
		// the hash, which its salts make unlike any other.
		const attempted = new Map<number, string>();
		return await this.#write(checked.shop, (transaction) =>
			appendIn(this.#database, transaction, checked, { words, attempted }),
		);
	}

	async entry(shop: string, number: number): Promise<Entry | null> {
		parseOrRefuse(identifier, shop, 'shop');
		parseOrRefuse(entryNumber, number, 'number');
		return await this.#read(() =>
			entryWhere(this.#db, shop, (query) => query.where('entries.number', '=', number)),
		);
	}

	async byDelivery(shop: string, delivery: string): Promise<Entry | null> {
		parseOrRefuse(identifier, shop, 'shop');
		parseOrRefuse(identifier, delivery, 'delivery');
		return await this.#read(() =>
			entryWhere(this.#db, shop, (query) => query.where('entries.delivery', '=', delivery)),
		);
	}

	async latestInThread(
		shop: string,
		channel: string,
		thread: string | null,
		kinds?: readonly EntryKind[],
	): Promise<Entry | null> {
		const { entries } = await this.find(shop, { channel, thread, kinds, limit: 1 });
		return entries[0] ?? null;
	}

	async find(shop: string, given: FindOptions): Promise<{ entries: Entry[]; next: string | null }> {
		parseOrRefuse(identifier, shop, 'shop');
		const options = checkOptions(given);
		const { order, limit } = options;
		return await this.#read(async () => {
			const rows = await pageOfRows(this.#database, this.#db, shop, options);
			const entries = rows.slice(0, limit).map(toEntry);
			const last = entries.at(-1);
			const next = rows.length > limit && last !== undefined ? `${order}:${last.number}` : null;
			return { entries, next };
		});
	}

	async fold<T>(
		shop: string,
		given: LogFilter,
		initial: T,
		step: (state: T, entry: Entry) => T | Promise<T>,
	): Promise<T> {
		parseOrRefuse(identifier, shop, 'shop');
		const filter = checkFilter(given);
		const end = (await this.head(shop))?.number ?? 0;
		return await foldPages(end, (above, end) => this.page(shop, filter, above, end), initial, step);
	}

	/** The first FOLD_PAGE entries above a number, up to another, oldest first. */
	async page(shop: string, given: LogFilter, above: number, end: number): Promise<Entry[]> {
		parseOrRefuse(identifier, shop, 'shop');
		const filter = checkFilter(given);
		return (await this.#read(() => this.#page(shop, filter, above, end))).map(toEntry);
	}

	async #page(shop: string, filter: CheckedFilter, above: number, end: number): Promise<EntryRow[]> {
		const words = searchedWords(filter);
		if (words !== null && words.length === 0) return [];
		let query = filtered(this.#database, shop, filter);
		if (words !== null) query = query.where(this.#database.hasWords(words, facetsOf(shop, filter)));
		return await query
			.where('entries.number', '>', above)
			.where('entries.number', '<=', end)
			.orderBy('entries.number')
			.limit(FOLD_PAGE)
			.execute();
	}

	async head(shop: string): Promise<Head | null> {
		parseOrRefuse(identifier, shop, 'shop');
		return await this.#read(() => headOf(this.#db, shop));
	}

	async verify(shop?: string, known?: Head): Promise<VerifyReport> {
		if (shop !== undefined) parseOrRefuse(identifier, shop, 'shop');
		if (known !== undefined) parseOrRefuse(headSchema, known, 'known');
		if (known !== undefined && shop === undefined) {
			throw new LogError('bad-entry', 'a known head belongs to one shop; name the shop');
		}
		return await this.#read(async () => {
			const report: VerifyReport = { ok: true, shops: [], problem: null, damage: null };
			try {
				if (shop === undefined) report.damage = await this.#database.damage();
				for (const each of shop === undefined ? await this.#everyShop() : [shop]) {
					const found = await verifyShop(this.#db, each, known ?? null, () => headOf(this.#db, each));
					report.shops.push(found);
					report.problem ??= found.problem;
				}
			} catch (error) {
				// A file too damaged to be read to its end is a finding, not a failure to look.
				const ours = this.#database.toLogError(error);
				if (ours.code !== 'corrupt') throw ours;
				report.damage ??= ours.message;
			}
			report.ok = report.problem === null && report.damage === null;
			return report;
		});
	}

	/** Also shops whose head record or whose entries somebody took away. */
	async #everyShop(): Promise<string[]> {
		const heads = await this.#db.selectFrom('heads').select('shop').execute();
		const entries = await this.#db.selectFrom('entries').select('shop').distinct().execute();
		return [...new Set([...heads, ...entries].map((row) => row.shop))].sort();
	}

	async forget(shop: string, personId: string): Promise<number> {
		parseOrRefuse(identifier, shop, 'shop');
		parseOrRefuse(identifier, personId, 'personId');
		// A second try, after a commit whose answer was lost, finds nothing left to erase: the first count stands.
		let erased = 0;
		await this.#write(shop, async (transaction) => {
			const count = await forgetIn(this.#database, transaction, { shop, personId }, (entry) =>
				this.#wordsOf(entry, ''),
			);
			erased = Math.max(erased, count);
		});
		// They are erased already; a file that somebody else is reading is only cleaned later.
		if (erased > 0) await this.#read(() => this.#database.scrub()).catch(() => undefined);
		return erased;
	}

	async people(shop: string): Promise<LogPerson[]> {
		parseOrRefuse(identifier, shop, 'shop');
		const rows = await this.#read(() => peopleOf(this.#db, shop));
		return rows.sort((a, b) => (a.name === b.name ? (a.id < b.id ? -1 : 1) : a.name < b.name ? -1 : 1));
	}

	async shops(): Promise<string[]> {
		const rows = await this.#read(() => this.#db.selectFrom('heads').select('shop').execute());
		return rows.map((row) => row.shop).sort();
	}

	async setSetting(shop: string, key: string, value: string | null): Promise<void> {
		await this.setSettings(shop, { [key]: value });
	}

	async setSettings(
		shop: string,
		values: Readonly<Record<string, string | null>>,
		options?: WriteOptions,
	): Promise<void> {
		parseOrRefuse(identifier, shop, 'shop');
		const settings = Object.entries(values);
		for (const [key, value] of settings) {
			parseOrRefuse(settingKey, key, 'key');
			parseOrRefuse(settingValue, value, 'value');
		}
		const put = async (transaction: Transaction<Tables>) => {
			for (const [key, value] of settings) await putSetting(transaction, { shop, key, value });
		};
		await this.#write(shop, put, options);
	}

	async getSetting(shop: string, key: string): Promise<string | null> {
		parseOrRefuse(identifier, shop, 'shop');
		parseOrRefuse(settingKey, key, 'key');
		const row = await this.#read(() =>
			this.#db
				.selectFrom('settings')
				.select('value')
				.where('shop', '=', shop)
				.where('key', '=', key)
				.executeTakeFirst(),
		);
		return row?.value ?? null;
	}

	async swapSetting(
		shop: string,
		key: string,
		from: string | null,
		to: string | null,
		options?: WriteOptions,
	): Promise<boolean> {
		parseOrRefuse(identifier, shop, 'shop');
		parseOrRefuse(settingKey, key, 'key');
		parseOrRefuse(settingValue, from, 'from');
		parseOrRefuse(settingValue, to, 'to');
		let isChanged = false;
		const swap = async (transaction: Transaction<Tables>) => {
			const at = { shop, key };
			const result =
				from === null
					? to === null
						? null
						: await transaction
								.insertInto('settings')
								.values({ ...at, value: to })
								.onConflict((conflict) => conflict.columns(['shop', 'key']).doNothing())
								.executeTakeFirst()
					: to === null
						? await transaction
								.deleteFrom('settings')
								.where('shop', '=', shop)
								.where('key', '=', key)
								.where('value', '=', from)
								.executeTakeFirst()
						: await transaction
								.updateTable('settings')
								.set({ value: to })
								.where('shop', '=', shop)
								.where('key', '=', key)
								.where('value', '=', from)
								.executeTakeFirst();
			isChanged = result !== null && changedRows(result) > 0;
		};
		await this.#write(shop, swap, options);
		return isChanged;
	}

	async settingsOf(shop: string, outside?: ValueRange): Promise<{ key: string; value: string }[]> {
		parseOrRefuse(identifier, shop, 'shop');
		const rows = await this.#read(() => {
			const all = this.#db.selectFrom('settings').select(['key', 'value']).where('shop', '=', shop);
			if (outside === undefined) return all.execute();
			return all.where(sql<boolean>`not ${this.#valueWithin(outside)}`).execute();
		});
		return rows.sort((a, b) => (a.key < b.key ? -1 : 1));
	}

	async dropSettings(shop: string, range: ValueRange): Promise<number> {
		parseOrRefuse(identifier, shop, 'shop');
		let dropped = 0;
		await this.#write(shop, async (transaction) => {
			const result = await transaction
				.deleteFrom('settings')
				.where('shop', '=', shop)
				.where(this.#valueWithin(range))
				.executeTakeFirst();
			dropped = changedRows(result);
		});
		return dropped;
	}

	#valueWithin({ from, below }: ValueRange) {
		// A server's usual order looks past punctuation.
		const value = this.#database.kind === 'postgres' ? sql`(value collate "C")` : sql`value`;
		return sql<boolean>`(${value} >= ${from} and ${value} < ${below})`;
	}

	async settings(): Promise<{ shop: string; key: string; value: string }[]> {
		const rows = await this.#read(() => this.#db.selectFrom('settings').selectAll().execute());
		return rows.sort((a, b) => (a.shop === b.shop ? (a.key < b.key ? -1 : 1) : a.shop < b.shop ? -1 : 1));
	}

	async tree(shop: string, size?: number): Promise<TreeHead> {
		const { leaves, end } = await this.#leaves(shop, size);
		return treeHead(leaves, end);
	}

	async inclusion(shop: string, number: number, size?: number): Promise<InclusionProof> {
		parseOrRefuse(entryNumber, number, 'number');
		const { leaves, end } = await this.#leaves(shop, size);
		const entry = await this.entry(shop, number);
		if (number > end || entry === null) {
			throw new LogError('bad-entry', `number is ${number}, but the tree of shop ${shop} has ${end} entries`);
		}
		const path = pathOf(leaves.inclusionProof(number - 1, end));
		return { kind: 'inclusion', shop, number, hash: entry.hash, tree: treeHead(leaves, end), path };
	}

	async consistency(shop: string, from: number, to?: number): Promise<ConsistencyProof> {
		parseOrRefuse(entryNumber, from, 'from');
		const { leaves, end } = await this.#leaves(shop, to);
		if (from > end) {
			throw new LogError(
				'bad-entry',
				`from is ${from}, but the later tree of shop ${shop} has ${end} entries`,
			);
		}
		const path = pathOf(leaves.consistencyProof(from, end));
		return { kind: 'consistency', shop, from: treeHead(leaves, from), to: treeHead(leaves, end), path };
	}

	async #leaves(shop: string, size: number | undefined): Promise<{ leaves: Leaves; end: number }> {
		const written = (await this.head(shop))?.number ?? 0;
		const end = size === undefined ? written : parseOrRefuse(entryNumber, size, 'size');
		const leaves = await this.#read(() => leavesOf(this.#db, shop, end));
		if (leaves.size < end) {
			const code = end <= written ? 'corrupt' : 'bad-entry';
			throw new LogError(
				code,
				`shop ${shop} has ${leaves.size} entries, not the ${end} that a tree was asked of`,
			);
		}
		return { leaves, end };
	}

	async *export(shop: string, { persons }: { persons: boolean }): AsyncGenerator<string> {
		const head = await this.head(shop);
		if (head === null) throw new LogError('bad-entry', `shop ${shop} has no entries to export`);
		try {
			yield* exportLines(this.#db, { shop, head, persons });
		} catch (error) {
			throw this.#database.toLogError(error);
		}
	}

	async import(lines: Iterable<string> | AsyncIterable<string>): Promise<ImportResult> {
		this.#assertOpen();
		return await importLines(
			{
				database: this.#database,
				write: (shop, task) => this.#write(shop, task),
				wordsOf: (entry, text) => this.#wordsOf(entry, text),
			},
			lines,
		);
	}

	async backup(path: string): Promise<void> {
		parseOrRefuse(storable(LIMITS.pathBytes, false), path, 'path');
		await this.#read(() => this.#database.backup(path));
	}

	async close(): Promise<void> {
		if (this.#closed) return;
		this.#closed = true;
		await this.#writes.idle();
		await this.#database.close();
	}

	#wordsOf(entry: Pick<CheckedEntry, 'build' | 'topic' | 'bodyText'>, text: string): string[] {
		const searchable =
			this.#searchable === null ? '' : textAt(JSON.parse(entry.bodyText) as Json, this.#searchable);
		// Build and topic first: a search within a build counts on their words, whatever is left out of a long text.
		return indexedWordsOf([entry.build ?? '', entry.topic ?? '', text, searchable].join('\n'));
	}

	async #read<T>(task: () => Promise<T>): Promise<T> {
		this.#assertOpen();
		return await retrying(this.#database, Date.now() + this.#patienceMs, task);
	}

	async #write<T>(
		shop: string,
		task: (transaction: Transaction<Tables>) => Promise<T>,
		options?: WriteOptions,
	): Promise<T> {
		this.#assertOpen();
		return await this.#writes.run(shop, task, options);
	}

	#assertOpen(): void {
		if (this.#closed) throw new LogError('unavailable', 'this log has been closed');
	}
}

async function putSetting(
	transaction: Transaction<Tables>,
	{ shop, key, value }: { readonly shop: string; readonly key: string; readonly value: string | null },
): Promise<void> {
	if (value === null) {
		await transaction.deleteFrom('settings').where('shop', '=', shop).where('key', '=', key).execute();
		return;
	}
	await transaction
		.insertInto('settings')
		.values({ shop, key, value })
		.onConflict((conflict) => conflict.columns(['shop', 'key']).doUpdateSet({ value }))
		.execute();
}

/** Rows that a statement inserted, deleted or changed. */
function changedRows(
	result: Partial<
		Record<'numInsertedOrUpdatedRows' | 'numDeletedRows' | 'numUpdatedRows', bigint | undefined>
	>,
): number {
	return Number(result.numInsertedOrUpdatedRows ?? result.numDeletedRows ?? result.numUpdatedRows ?? 0);
}
