/** Somebody with the database's own tools changes what is written. The check names the first entry that is wrong. */
import BetterSqlite3 from 'better-sqlite3';
import fc from 'fast-check';
import pg from 'pg';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import { commitmentTo, entryHash } from './chain.js';
import { type ChainProblem, type Entry, type Head, type Log, openLog } from './index.js';
import { chainedOf, type EntryRow } from './rows.js';

type Value = string | number | null;

/** A way past the log into its tables, with the guards taken off. */
interface BackDoor {
	run(text: string, ...values: Value[]): Promise<void>;
	rows<T>(text: string, ...values: Value[]): Promise<T[]>;
	/** Takes away what keeps a number from being there twice. */
	allowDoubles(): Promise<void>;
	close(): Promise<void>;
}

async function backDoorOf(url: string): Promise<BackDoor> {
	if (url.startsWith('sqlite:')) {
		const database = new BetterSqlite3(url.slice('sqlite:'.length));
		database.pragma('foreign_keys = OFF');
		database.exec('drop trigger entries_no_update; drop trigger entries_no_delete');
		return {
			async run(text, ...values) {
				database.prepare(text).run(...values);
			},
			async rows<T>(text: string, ...values: Value[]) {
				return database.prepare<Value[], T>(text).all(...values);
			},
			async allowDoubles() {
				database.exec(`create table loose as select * from entries; drop table entries;
					alter table loose rename to entries`);
			},
			async close() {
				database.close();
			},
		};
	}
	const client = new pg.Client(url);
	await client.connect();
	for (const table of ['entries', 'erasable']) await client.query(`alter table ${table} disable trigger all`);
	const numbered = (text: string) => {
		let count = 0;
		return text.replaceAll('?', () => {
			count += 1;
			return `$${count}`;
		});
	};
	return {
		async run(text, ...values) {
			await client.query(numbered(text), values);
		},
		async rows<T>(text: string, ...values: Value[]) {
			return (await client.query(numbered(text), values)).rows as T[];
		},
		async allowDoubles() {
			await client.query('alter table erasable drop constraint erasable_entry');
			await client.query('alter table entries drop constraint entries_number');
			await client.query('alter table entries drop constraint entries_delivery');
		},
		async close() {
			await client.end();
		},
	};
}

const SHOP = 'slack:T1';
const ENTRIES = 9;

describe.each(DIALECTS)('on $title', (dialect) => {
	let database: Awaited<ReturnType<typeof dialect.fresh>>;
	let log: Log;
	let entries: Entry[];
	let backDoor: BackDoor;

	beforeEach(async () => {
		database = await dialect.fresh();
		log = await openLog(database.url);
		entries = [];
		for (let number = 1; number <= ENTRIES; number += 1) {
			const given = entryOf({
				shop: SHOP,
				delivery: `Ev${number}`,
				thread: 'T1',
				build: 'heron',
				topic: 'wire',
				state: 'answered',
				personId: `U${number % 2}`,
				text: `question ${number}`,
				follows: number === 1 ? null : number - 1,
				replaces: number === 1 ? null : 1,
				body: { headline: '4 AWG copper', currentA: 40 + number },
			});
			entries.push((await log.append(given)).entry);
		}
		// A shop beside it, which must never be blamed.
		await log.append(entryOf({ shop: 'local' }));
		backDoor = await backDoorOf(database.url);
	});

	afterEach(async () => {
		await backDoor.close();
		await log.close();
		await database.remove();
	});

	async function problem(known?: Head): Promise<Pick<ChainProblem, 'number' | 'fault'> | null> {
		const report = await log.verify(SHOP, known);
		expect(report.ok).toBe(report.problem === null);
		const all = await log.verify();
		if (known === undefined) expect(all.problem).toEqual(report.problem);
		expect(all.shops.find((shop) => shop.shop === 'local')?.problem ?? null).toBeNull();
		if (report.problem === null) return null;
		const { shop, number, fault, message } = report.problem;
		expect(shop).toBe(SHOP);
		expect(message).toContain(`entry ${number} of shop ${SHOP}`);
		return { number, fault };
	}

	test('an untouched chain has no problem', async () => {
		expect(await problem()).toBeNull();
		expect(await problem({ number: 5, hash: entries[4]?.hash ?? '' })).toBeNull();
	});

	test('the database refuses to change or delete an entry while its guards are on', async () => {
		const guarded = await dialect.fresh();
		const another = await openLog(guarded.url);
		await another.append(entryOf());
		if (guarded.url.startsWith('sqlite:')) {
			const raw = new BetterSqlite3(guarded.url.slice('sqlite:'.length));
			expect(() => raw.exec(`update entries set body = '1'`)).toThrow('never changed or deleted');
			expect(() => raw.exec(`delete from entries`)).toThrow('never changed or deleted');
			raw.close();
		} else {
			const raw = new pg.Client(guarded.url);
			await raw.connect();
			for (const text of [
				`update entries set body = '1'`,
				'delete from entries',
				'truncate entries cascade',
			]) {
				await expect(raw.query(text)).rejects.toThrow('never changed or deleted');
			}
			await raw.end();
		}
		expect((await another.verify()).ok).toBe(true);
		await another.close();
		await guarded.remove();
	});

	test.each<[string, Value]>([
		['kind', 'signed'],
		['delivery', 'Ev99'],
		['delivery', null],
		['platform', 'discord'],
		['channel', 'C2'],
		['thread', null],
		['build', 'egret'],
		['topic', 'tank'],
		['at', '2026-05-04T12:00:00.001Z'],
		['follows', 1],
		['replaces', null],
		['state', 'stale'],
		['person_tag', '0'.repeat(32)],
		['commitment', '0'.repeat(64)],
		['body', '{"currentA":44,"headline":"6 AWG copper"}'],
		['body', '{"headline":"4 AWG copper","currentA":44}'],
		['body', 'no longer JSON'],
		['previous_hash', '0'.repeat(64)],
		['hash', '0'.repeat(64)],
	])('%s of entry 4 set to %j', async (column, value) => {
		await backDoor.run(`update entries set ${column} = ? where shop = ? and number = 4`, value, SHOP);
		expect(await problem()).toEqual({ number: 4, fault: 'content' });
	});

	test('any one character of a body changed, anywhere', async () => {
		const row = async (number: number) => {
			const [found] = await backDoor.rows<{ body: string }>(
				'select body from entries where shop = ? and number = ?',
				SHOP,
				number,
			);
			return found?.body ?? '';
		};
		await fc.assert(
			fc.asyncProperty(
				fc.integer({ min: 1, max: ENTRIES }),
				fc.nat(),
				fc.integer({ min: 0, max: 6 }),
				async (number, place, bit) => {
					const body = await row(number);
					const at = place % body.length;
					const flipped = String.fromCharCode(body.charCodeAt(at) ^ (1 << bit));
					fc.pre(flipped !== '\0');
					const changed = body.slice(0, at) + flipped + body.slice(at + 1);
					const update = 'update entries set body = ? where shop = ? and number = ?';
					await backDoor.run(update, changed, SHOP, number);
					try {
						expect(await problem()).toEqual({ number, fault: 'content' });
					} finally {
						await backDoor.run(update, body, SHOP, number);
					}
				},
			),
			{ numRuns: 60 },
		);
		expect(await problem()).toBeNull();
	});

	test('an altered entry is not handed out, nor is anything said to repeat it', async () => {
		await backDoor.run('update entries set body = ? where shop = ? and number = 4', '"6 AWG"', SHOP);
		const refusal = { code: 'corrupt', message: expect.stringContaining(`entry 4 of shop ${SHOP}`) };
		await expect(log.entry(SHOP, 4)).rejects.toMatchObject(refusal);
		await expect(log.byDelivery(SHOP, 'Ev4')).rejects.toMatchObject(refusal);
		await expect(log.find(SHOP, {})).rejects.toMatchObject(refusal);
		await expect(log.fold(SHOP, {}, 0, (sum) => sum + 1)).rejects.toMatchObject(refusal);
		await expect(log.append(entryOf({ shop: SHOP, delivery: 'Ev4' }))).rejects.toMatchObject(refusal);
		expect(await log.entry(SHOP, 5)).toEqual(entries[4]);
	});

	test.each([
		[1, 'gap'],
		[5, 'gap'],
		[ENTRIES, 'truncated'],
	])('entry %d deleted', async (number, fault) => {
		await backDoor.run('delete from erasable where shop = ? and number = ?', SHOP, number);
		await backDoor.run('delete from entries where shop = ? and number = ?', SHOP, number);
		expect(await problem()).toEqual({ number, fault });
	});

	test('all entries of the shop deleted', async () => {
		await backDoor.run('delete from erasable where shop = ?', SHOP);
		await backDoor.run('delete from entries where shop = ?', SHOP);
		expect(await problem()).toEqual({ number: 1, fault: 'truncated' });
	});

	test('nothing is written behind a tail that was cut', async () => {
		await backDoor.run('delete from erasable where shop = ? and number > 7', SHOP);
		await backDoor.run('delete from entries where shop = ? and number > 7', SHOP);
		await expect(log.append(entryOf({ shop: SHOP }))).rejects.toMatchObject({
			code: 'corrupt',
			message: expect.stringContaining('ends at entry 7, but its head record says 9'),
		});
		expect(await problem()).toEqual({ number: 8, fault: 'truncated' });
	});

	test('a tail cut together with its head shows only beside a head that was kept elsewhere', async () => {
		const known = { number: ENTRIES, hash: entries[ENTRIES - 1]?.hash ?? '' };
		await backDoor.run('delete from erasable where shop = ? and number > 7', SHOP);
		await backDoor.run('delete from entries where shop = ? and number > 7', SHOP);
		const hash = entries[6]?.hash ?? '';
		await backDoor.run('update heads set number = 7, hash = ? where shop = ?', hash, SHOP);
		expect(await problem()).toBeNull();
		expect(await problem(known)).toEqual({ number: 8, fault: 'known-head' });
	});

	test('two entries exchanged', async () => {
		const move = 'update entries set number = ? where shop = ? and number = ?';
		await backDoor.run(move, 1000, SHOP, 3);
		await backDoor.run(move, 3, SHOP, 6);
		await backDoor.run(move, 6, SHOP, 1000);
		expect(await problem()).toEqual({ number: 3, fault: 'content' });
	});

	test('an entry moved to another number, to number 0, to another shop', async () => {
		await backDoor.run('update entries set number = 1000 where shop = ? and number = 5', SHOP);
		expect(await problem()).toEqual({ number: 5, fault: 'gap' });
		await backDoor.run('update entries set number = 0 where shop = ? and number = 1000', SHOP);
		expect(await problem()).toEqual({ number: 0, fault: 'gap' });
		await backDoor.run(
			'update entries set shop = ?, number = 1 where shop = ? and number = 0',
			'slack:T9',
			SHOP,
		);
		expect(await problem()).toEqual({ number: 5, fault: 'gap' });
		expect((await log.verify('slack:T9')).problem).toMatchObject({ number: 1, fault: 'content' });
	});

	test.each([
		['a copy of entry 5', 5],
		['a copy of the last entry', ENTRIES],
	])('%s put beside it', async (_, number) => {
		await backDoor.allowDoubles();
		const columns = `shop, kind, delivery, platform, channel, thread, build, topic, at, follows, replaces, state,
			person_tag, commitment, body, previous_hash, hash, number`;
		await backDoor.run(
			`insert into entries (${columns}) select ${columns} from entries where shop = ? and number = ?`,
			SHOP,
			number,
		);
		expect(await problem()).toEqual({ number, fault: 'doubled-number' });
	});

	test.each([
		['person_id', 'U7'],
		['person_name', 'Somebody else'],
		['text', 'another question'],
		['salt', '0'.repeat(64)],
	])('%s of the erasable part of entry 4 changed', async (column, value) => {
		await backDoor.run(`update erasable set ${column} = ? where shop = ? and number = 4`, value, SHOP);
		expect(await problem()).toEqual({ number: 4, fault: 'erasable' });
		await expect(log.entry(SHOP, 4)).rejects.toMatchObject({
			code: 'corrupt',
			message: expect.stringContaining('the name or text of entry 4'),
		});
	});

	test('the erasable parts of two entries exchanged', async () => {
		const move = 'update erasable set number = ? where shop = ? and number = ?';
		await backDoor.run(move, 1000, SHOP, 3);
		await backDoor.run(move, 3, SHOP, 6);
		await backDoor.run(move, 6, SHOP, 1000);
		expect(await problem()).toEqual({ number: 3, fault: 'erasable' });
	});

	test("the key of a person's pseudonym changed, or taken away without the person's texts", async () => {
		await backDoor.run(`update people set salt = salt || '0' where shop = ? and person_id = ?`, SHOP, 'U0');
		expect(await problem()).toEqual({ number: 2, fault: 'erasable' });
		await backDoor.run('delete from people where shop = ? and person_id = ?', SHOP, 'U0');
		expect(await problem()).toEqual({ number: 2, fault: 'erasable' });
	});

	test('the head record taken away, set back, set forward, given another hash', async () => {
		await backDoor.run('update heads set hash = ? where shop = ?', '0'.repeat(64), SHOP);
		expect(await problem()).toEqual({ number: ENTRIES, fault: 'head' });
		await backDoor.run('update heads set number = 4 where shop = ?', SHOP);
		expect(await problem()).toEqual({ number: 5, fault: 'head' });
		await backDoor.run('update heads set number = 12 where shop = ?', SHOP);
		expect(await problem()).toEqual({ number: ENTRIES + 1, fault: 'truncated' });
		await backDoor.run('delete from heads where shop = ?', SHOP);
		expect(await problem()).toEqual({ number: ENTRIES, fault: 'head' });
	});

	/** Writes an entry's row again with another body, and its hash so that it fits. */
	async function forge(number: number, previousHash: string | null, body: string): Promise<string> {
		const [row] = await backDoor.rows<EntryRow>(
			`select entries.*, null as person_id, null as person_name, null as text, null as salt
				from entries where shop = ? and number = ?`,
			SHOP,
			number,
		);
		if (row === undefined) throw new Error(`no entry ${number}`);
		const forged = { ...row, body, previous_hash: previousHash ?? row.previous_hash };
		const hash = entryHash(chainedOf(forged));
		await backDoor.run(
			'update entries set body = ?, previous_hash = ?, hash = ? where shop = ? and number = ?',
			forged.body,
			forged.previous_hash,
			hash,
			SHOP,
			number,
		);
		return hash;
	}

	test('a forger who also computes the hash is caught at the next entry', async () => {
		await forge(4, null, '"6 AWG"');
		expect(await problem()).toEqual({ number: 5, fault: 'link' });
	});

	test('one who computes all hashes to the end is caught by the head record, then by a kept head', async () => {
		const known = { number: 6, hash: entries[5]?.hash ?? '' };
		let previous = await forge(4, null, '"6 AWG"');
		for (let number = 5; number <= ENTRIES; number += 1) previous = await forge(number, previous, '"then"');
		expect(await problem()).toEqual({ number: ENTRIES, fault: 'head' });
		await backDoor.run('update heads set hash = ? where shop = ?', previous, SHOP);
		// Whoever rewrites everything rewrites history: only what was kept outside can tell.
		expect(await problem()).toBeNull();
		expect(await problem(known)).toEqual({ number: 6, fault: 'known-head' });
	});

	test('a forger who rewrites a text with a salt of his own fits neither chain nor commitment', async () => {
		const part = { personId: 'U0', personName: 'Robin', text: 'forged', salt: '11'.repeat(32) };
		await backDoor.run(
			'update erasable set text = ?, salt = ? where shop = ? and number = 4',
			part.text,
			part.salt,
			SHOP,
		);
		expect(await problem()).toEqual({ number: 4, fault: 'erasable' });
		await backDoor.run(
			'update entries set commitment = ? where shop = ? and number = 4',
			commitmentTo(part),
			SHOP,
		);
		expect(await problem()).toEqual({ number: 4, fault: 'content' });
	});

	test('after all forgetting and tampering with what is left of a person, the chain still tells', async () => {
		await log.forget(SHOP, 'U0');
		expect(await problem()).toBeNull();
		await backDoor.run('update entries set person_tag = ? where shop = ? and number = 2', 'x', SHOP);
		expect(await problem()).toEqual({ number: 2, fault: 'content' });
	});

	test('of several problems the first is named', async () => {
		await backDoor.run('update entries set state = null where shop = ? and number = 8', SHOP);
		await backDoor.run('update erasable set text = ? where shop = ? and number = 6', 'x', SHOP);
		await backDoor.run('delete from heads where shop = ?', SHOP);
		expect(await problem()).toEqual({ number: 6, fault: 'erasable' });
	});
});

describe.each(DIALECTS)('a long chain on $title', ({ fresh }) => {
	test('is walked in windows: the doubled number at their border and the bad entry far behind are seen', async () => {
		const { url, remove } = await fresh();
		const log = await openLog(url);
		const count = 610;
		for (let number = 1; number <= count; number += 1) await log.append(entryOf({ shop: SHOP }));
		const backDoor = await backDoorOf(url);
		expect((await log.verify()).shops).toMatchObject([{ entries: count, problem: null }]);
		await backDoor.run('update entries set state = ? where number = 601', 'x');
		expect((await log.verify()).problem).toMatchObject({ number: 601, fault: 'content' });
		await backDoor.allowDoubles();
		for (const border of [401, 400, 200]) {
			await backDoor.run(
				`insert into entries (shop, kind, platform, channel, at, person_tag, commitment, body, previous_hash, hash, number)
					select shop, kind, platform, channel, at, person_tag, commitment, body, previous_hash, hash, number
					from entries where number = ?`,
				border,
			);
			expect((await log.verify()).problem).toMatchObject({ number: border, fault: 'doubled-number' });
		}
		await backDoor.close();
		await log.close();
		await remove();
	});
});
