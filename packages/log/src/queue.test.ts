import { setTimeout as sleep } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { LIMITS } from './entry.js';
import { WriteQueue } from './queue.js';

type Write = () => Promise<unknown>;

const failureOf = async (write: Write) =>
	await write().then(
		() => null,
		(error: unknown) => error,
	);

/** A queue that carries out one write at a time. */
const single = () => new WriteQueue<Write>(1, async ([write]) => (write ? [await failureOf(write)] : []));

test('writes of one key run one at a time in the order given; other keys do not wait for them', async () => {
	const queue = single();
	const seen: string[] = [];
	let open = () => {};
	const gate = new Promise<void>((resolve) => {
		open = resolve;
	});
	const write = (name: string, until?: Promise<void>) => async () => {
		seen.push(`${name} begins`);
		await until;
		seen.push(`${name} ends`);
	};
	const ofA = Promise.all([queue.run('a', write('a1', gate)), queue.run('a', write('a2'))]);
	await queue.run('b', write('b1'));
	open();
	await ofA;
	expect(seen).toEqual(['a1 begins', 'b1 begins', 'b1 ends', 'a1 ends', 'a2 begins', 'a2 ends']);
});

test('what waits at the same moment is carried out together, in the order given, as many as are allowed', async () => {
	const seen: number[][] = [];
	const queue = new WriteQueue<number>(3, async (writes) => {
		seen.push([...writes]);
		return writes.map(() => null);
	});
	await Promise.all([1, 2, 3, 4, 5].map((write) => queue.run('a', write)));
	await queue.run('a', 6);
	expect(seen).toEqual([[1, 2, 3], [4, 5], [6]]);
});

test('a write that fails does not stop the ones behind it; the next is told the failure', async () => {
	const told: unknown[] = [];
	const error = new Error('no');
	const queue = new WriteQueue<number>(2, async (writes, failureBefore) => {
		told.push(failureBefore);
		return writes.map((write) => (write === 2 ? error : null));
	});
	const outcomes = await Promise.allSettled([1, 2, 3, 4, 5].map((write) => queue.run('a', write)));
	expect(outcomes.map(({ status }) => status)).toEqual([
		'fulfilled',
		'rejected',
		...['fulfilled', 'fulfilled', 'fulfilled'],
	]);
	expect(outcomes[1]).toMatchObject({ reason: error });
	expect(told).toEqual([null, error, null]);
});

test('what would wait behind too many is refused at once', async () => {
	const queue = single();
	let open = () => {};
	const gate = new Promise<void>((resolve) => {
		open = resolve;
	});
	const waiting = Array.from({ length: LIMITS.waitingWrites }, () => queue.run('a', () => gate));
	await expect(queue.run('b', async () => 1)).rejects.toMatchObject({ code: 'locked' });
	open();
	await Promise.all(waiting);
	await queue.idle();
	await queue.run('b', async () => 1);
});

test('idle waits for what was asked for, also for what came while it waited', async () => {
	const queue = single();
	const done: number[] = [];
	void queue.run('a', async () => {
		await sleep(5);
		done.push(1);
		void queue.run('b', async () => {
			await sleep(5);
			done.push(2);
		});
	});
	await queue.idle();
	expect(done).toEqual([1, 2]);
});
