/** When the log fails, the asker is told why and what to do, nothing is said to be kept, and it goes on once the fault is gone. */

import { createRequire } from 'node:module';
import { join } from 'node:path';
import { type Incoming, openChat, type Reply } from '@lugbook/chat';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { SmallDisk } from '../log/mount.js';
import { Cluster, sharedCluster } from '../log/postgres.js';
import { robin } from './shop.js';

type Chat = Awaited<ReturnType<typeof openChat>>;

let count = 0;
function ask(chat: Chat, text: string, more: Partial<Incoming> = {}): Promise<Reply> {
	count += 1;
	const place = { platform: 'terminal', shop: 'demo', channel: 'c1', thread: null };
	return chat.handle({ ...place, delivery: `f${count}`, person: robin, command: 'ask', text, ...more });
}

/** A refusal that goes to the asker alone, names the fault and claims no entry. */
function expectRefused(reply: Reply, words: RegExp): void {
	expect(reply.answer.status).toBe('refused');
	expect(reply.audience).toBe('asker');
	expect(reply.answer.entry).toBeNull();
	expect(reply.answer.results).toEqual([]);
	expect(reply.parts.map(({ text }) => text).join('\n')).toMatch(words);
	expect(reply.parts.some(({ kind }) => kind === 'kept')).toBe(false);
}

async function expectGoesOn(chat: Chat, entries: number): Promise<void> {
	const reply = await ask(chat, '40A 12V 15 ft');
	expect(reply.answer).toMatchObject({ status: 'answered', entry: entries + 1 });
	expect(await chat.log.verify('demo')).toMatchObject({ ok: true, shops: [{ entries: entries + 1 }] });
}

test('a disk that is full: said so, earlier answers are still shown, and with room it goes on', async () => {
	const disk = await SmallDisk.mount(2048);
	const chat = await openChat({ databaseUrl: `sqlite:${join(disk.folder, 'log.db')}`, region: 'us' });
	try {
		let reply = await ask(chat, '40A 12V 15 ft');
		for (let turn = 0; turn < 1000 && reply.answer.status === 'answered'; turn += 1) {
			reply = await ask(chat, `${5 + (turn % 60)}A 12V ${5 + (turn % 30)} ft`);
		}
		expectRefused(reply, /disk that holds the log is full.*Nothing was saved.*ask again/);
		const kept = (await chat.log.head('demo'))?.number ?? 0;
		expect(kept).toBeGreaterThan(5);
		expectRefused(
			await ask(chat, 'sign 1', { command: 'log', person: { ...robin, id: 'u2', lead: true } }),
			/full/,
		);
		const shown = await ask(chat, `show ${kept}`, { command: 'log' });
		expect(shown.answer.entry).toBe(kept);
		await disk.change('size=8192k');
		await expectGoesOn(chat, kept);
	} finally {
		await chat.close();
		await disk.unmount();
	}
});

test('a file that can only be read: said when it is opened, and works when it may be written', async () => {
	const disk = await SmallDisk.mount(4096);
	const options = { databaseUrl: `sqlite:${join(disk.folder, 'log.db')}`, region: 'us' } as const;
	try {
		const before = await openChat(options);
		await ask(before, '40A 12V 15 ft');
		await before.close();
		await disk.change('ro');
		await expect(openChat(options)).rejects.toMatchObject({ code: 'read-only' });
		await disk.change('rw');
		const after = await openChat(options);
		await expectGoesOn(after, 1);
		await after.close();
	} finally {
		await disk.unmount();
	}
});

test('a PostgreSQL that may only be read: said so, and it goes on when it may be written', async () => {
	const cluster = await sharedCluster();
	const url = await cluster.freshDatabase();
	const name = new URL(url).pathname.slice(1);
	const chat = await openChat({ databaseUrl: url, region: 'us' });
	const newConnections = () =>
		cluster.query(`select pg_terminate_backend(pid) from pg_stat_activity where datname = '${name}'`);
	try {
		await ask(chat, '40A 12V 15 ft');
		await cluster.query(`alter database ${name} set default_transaction_read_only = on`);
		await newConnections();
		expectRefused(await ask(chat, '5A 12V 10 ft'), /can only be read.*Nothing was saved/);
		expect((await ask(chat, 'show 1', { command: 'log' })).answer.entry).toBe(1);
		await cluster.query(`alter database ${name} reset default_transaction_read_only`);
		await newConnections();
		await expectGoesOn(chat, 1);
	} finally {
		await chat.close();
	}
});

describe.each(DIALECTS)('a log that another program holds on $title', (dialect) => {
	test('for longer than anybody waits: said so, and it goes on', async () => {
		const { url, remove } = await dialect.fresh();
		const chat = await openChat({ databaseUrl: url, region: 'us' });
		await ask(chat, '40A 12V 15 ft');
		const release = await hold(url);
		try {
			const startedMs = performance.now();
			expectRefused(await ask(chat, '5A 12V 10 ft'), /another program is holding the log.*Nothing was saved/);
			expect(performance.now() - startedMs).toBeLessThan(15_000);
		} finally {
			await release();
		}
		await expectGoesOn(chat, 1);
		await chat.close();
		await remove();
	});
});

/** A second log of the same database would wait politely; this one holds what a writer needs. */
async function hold(url: string): Promise<() => Promise<void>> {
	if (url.startsWith('sqlite:')) {
		// The driver is the log's own dependency; nothing here but this needs it.
		const Database = createRequire(new URL('../../packages/log/package.json', import.meta.url))(
			'better-sqlite3',
		) as new (
			path: string,
		) => { exec(text: string): void; close(): void };
		const raw = new Database(url.slice('sqlite:'.length));
		raw.exec('begin immediate');
		return async () => {
			raw.exec('rollback');
			raw.close();
		};
	}
	const client = new pg.Client(url);
	await client.connect();
	await client.query('begin');
	await client.query('select * from heads for update');
	return async () => {
		await client.query('rollback');
		await client.end();
	};
}

describe('a PostgreSQL that goes away', () => {
	let cluster: Cluster;
	beforeAll(async () => {
		cluster = await Cluster.start();
	});
	afterAll(async () => {
		await cluster.remove();
	});

	test('in mid-write: said so, and the same question again is answered and kept once', async () => {
		const chat = await openChat({ databaseUrl: await cluster.freshDatabase(), region: 'us' });
		await ask(chat, '40A 12V 15 ft');
		const asked = Array.from({ length: 12 }, (_, turn) => `dropped${turn}`);
		const writing = Promise.all(
			asked.map((delivery, turn) => ask(chat, `${5 + turn}A 12V 10 ft`, { delivery })),
		);
		await cluster.down('immediate');
		const replies = await writing;
		const lost = replies.filter(({ answer }) => answer.status === 'refused');
		expect(lost.length).toBeGreaterThan(0);
		for (const reply of lost) expectRefused(reply, /database does not answer.*is not kept twice/);
		await cluster.up();
		// Each platform delivers again what was not acknowledged.
		const again = [];
		for (const [turn, delivery] of asked.entries())
			again.push(await ask(chat, `${5 + turn}A 12V 10 ft`, { delivery }));
		const numbers = again.map(({ answer }) => answer.entry);
		expect(numbers.every((number) => number !== null)).toBe(true);
		expect(new Set(numbers).size).toBe(asked.length);
		for (const [turn, { answer }] of replies.entries()) {
			if (answer.status === 'answered') expect(answer.entry).toBe(numbers[turn]);
		}
		await expectGoesOn(chat, 1 + asked.length);
		await chat.close();
		// Each writer waits for the database as long as a person would.
	}, 120_000);
});
