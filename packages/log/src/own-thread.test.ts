/** The log in a thread of its own: what is otherwise than in the thread that asks. The rest is in log.test.ts. */
import type { Worker } from 'node:worker_threads';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS, openInThread } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import { type Log, openLog } from './index.js';

const [sqlite] = DIALECTS;
if (sqlite === undefined) throw new Error('there is no database');

let url: string;
let remove: () => Promise<void>;
let log: Log;
let threads: Worker[];

const onWorker = (worker: Worker) => void threads.push(worker);

beforeEach(async () => {
	threads = [];
	process.on('worker', onWorker);
	({ url, remove } = await sqlite.fresh());
	log = await openInThread(url, { searchable: ['headline'] });
});

afterEach(async () => {
	process.off('worker', onWorker);
	await log.close();
	await remove();
});

/**
 * The first thread counts as ended. To end it for real in the middle of a statement would take the whole process along:
 * that is how the driver is built.
 */
function endFirst(): void {
	threads[0]?.emit('exit', 1);
	threads[0]?.unref();
}

async function linesOf(lines: AsyncIterable<string>): Promise<string[]> {
	const all: string[] = [];
	for await (const line of lines) all.push(line);
	return all;
}

test('it is another thread, one for a log, and gone once the log is closed', async () => {
	expect(threads).toHaveLength(1);
	const ended = new Promise((resolve) => threads[0]?.once('exit', resolve));
	await log.append(entryOf());
	await log.close();
	await ended;
	await expect(log.head('local')).rejects.toMatchObject({
		code: 'unavailable',
		message: 'this log has been closed',
	});
	await log.close();
});

describe('a thread that ends', () => {
	test('fails what waits for it as a lost server does; the next call has a new one, and nothing is lost', async () => {
		await log.append(entryOf({ delivery: 'Ev1' }));
		const writes = Array.from({ length: 20 }, (_, at) => log.append(entryOf({ delivery: `Ev${at + 2}` })));
		const outcomes = Promise.allSettled(writes);
		endFirst();
		for (const outcome of await outcomes) {
			expect(outcome).toMatchObject({ status: 'rejected', reason: { code: 'connection-lost' } });
		}
		expect((await log.byDelivery('local', 'Ev1'))?.number).toBe(1);
		expect(threads).toHaveLength(2);
		// The same deliveries again tell which were written.
		for (let at = 1; at <= 21; at += 1) await log.append(entryOf({ delivery: `Ev${at}` }));
		expect(await log.verify('local')).toMatchObject({ ok: true, shops: [{ entries: 21 }] });
	});

	test('by an error of its own says which', async () => {
		const failing = expect(log.append(entryOf())).rejects.toThrow(
			'the thread that keeps the log has ended: no memory left',
		);
		threads[0]?.emit('error', new Error('no memory left'));
		endFirst();
		await failing;
	});
});

test('an address that is none, and a log that can not be opened, are refused as ever, and leave no thread', async () => {
	await expect(openInThread('log.db')).rejects.toMatchObject({
		code: 'bad-url',
		message: expect.stringContaining('expected sqlite:PATH'),
	});
	await expect(openInThread('sqlite:/proc/none/log.db')).rejects.toMatchObject({ code: 'unavailable' });
	expect(threads).toHaveLength(3);
	for (const thread of threads.slice(1)) {
		// One that has ended has no id.
		await expect.poll(() => thread.threadId).toBe(-1);
	}
});

test('what can not travel is refused as what can not be kept, and the thread goes on', async () => {
	const body = { calculate: () => 1 } as unknown as null;
	await expect(log.append(entryOf({ body }))).rejects.toMatchObject({ code: 'bad-entry' });
	expect((await log.append(entryOf())).entry.number).toBe(1);
});

describe('many entries', () => {
	const COUNT = 450;
	beforeEach(async () => {
		await Promise.all(
			Array.from({ length: COUNT }, (_, at) =>
				log.append(entryOf({ delivery: `Ev${at + 1}`, text: `question ${at + 1}`, personId: `U${at % 7}` })),
			),
		);
	});

	test('are run through in order, and each step may use the log', async () => {
		const numbers = await log.fold('local', { personId: 'U3' }, [] as number[], async (all, { number }) => {
			expect((await log.entry('local', number))?.number).toBe(number);
			return [...all, number];
		});
		expect(numbers).toEqual(
			Array.from({ length: COUNT }, (_, at) => at + 1).filter((number) => (number - 1) % 7 === 3),
		);
		expect(await log.fold('nobody', {}, 0, (count) => count + 1)).toBe(0);
		const failing = log.fold('local', {}, 0, () => Promise.reject(new Error('the step has failed')));
		await expect(failing).rejects.toThrow('the step has failed');
	});

	test('are exported as by the thread that asks, also where only the beginning is taken', async () => {
		const beside = await openLog(url);
		const lines = await linesOf(log.export('local', { persons: true }));
		expect(lines).toHaveLength(COUNT + 1);
		expect(lines).toEqual(await linesOf(beside.export('local', { persons: true })));
		await beside.close();
		for await (const line of log.export('local', { persons: false })) {
			expect(JSON.parse(line)).toMatchObject({ shop: 'local', head: { number: COUNT } });
			break;
		}
		await expect(linesOf(log.export('nobody', { persons: true }))).rejects.toMatchObject({
			code: 'bad-entry',
		});
	});

	test('are not taken for all where the thread ends in the middle of an export', async () => {
		const lines = log.export('local', { persons: true })[Symbol.asyncIterator]();
		await lines.next();
		endFirst();
		// Another export in the thread that is started anew has lines of its own.
		const others = log.export('local', { persons: true })[Symbol.asyncIterator]();
		await others.next();
		const rest = async () => {
			while ((await lines.next()).done !== true);
		};
		await expect(rest()).rejects.toMatchObject({
			code: 'connection-lost',
			message: 'the thread that keeps the log has ended in the middle of its lines',
		});
		await others.return?.();
	});

	test('are brought into it from elsewhere; lines that break off are told as they are', async () => {
		const lines = await linesOf(log.export('local', { persons: true }));
		const { url: emptyUrl, remove: removeEmpty } = await sqlite.fresh();
		const target = await openInThread(emptyUrl, { searchable: ['headline'] });
		const broken = async function* () {
			yield* lines.slice(0, 120);
			throw new Error('the file could not be read to its end');
		};
		await expect(target.import(broken())).rejects.toThrow('the file could not be read to its end');
		expect(await target.import(lines)).toMatchObject({ shop: 'local' });
		expect(await target.verify()).toMatchObject({ ok: true, shops: [{ entries: COUNT }] });
		expect((await target.find('local', { words: 'copper', limit: 500 })).entries).toHaveLength(COUNT);
		await target.close();
		await removeEmpty();
	});
});
