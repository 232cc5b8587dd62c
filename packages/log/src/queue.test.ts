import { setTimeout as sleep } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { LIMITS } from './entry.js';
import { WriteQueue } from './queue.js';

test('tasks of one key run one at a time in the order given; other keys do not wait for them', async () => {
	const queue = new WriteQueue();
	const seen: string[] = [];
	const task = (name: string, ms: number) => async () => {
		seen.push(`${name} begins`);
		await sleep(ms);
		seen.push(`${name} ends`);
	};
	await Promise.all([
		queue.run('a', task('a1', 20)),
		queue.run('a', task('a2', 1)),
		queue.run('b', task('b1', 1)),
	]);
	expect(seen).toEqual(['a1 begins', 'b1 begins', 'b1 ends', 'a1 ends', 'a2 begins', 'a2 ends']);
});

test('a task that fails does not stop the ones behind it; the next is told the failure', async () => {
	const queue = new WriteQueue();
	const told: unknown[] = [];
	const task = async (failureBefore: unknown) => told.push(failureBefore);
	const error = new Error('no');
	const failed = queue.run('a', () => Promise.reject(error));
	const next = queue.run('a', task);
	const later = queue.run('a', task);
	await expect(failed).rejects.toThrow('no');
	expect(await next).toBe(1);
	expect(await later).toBe(2);
	expect(told).toEqual([error, null]);
});

test('what would wait behind too many is refused at once', async () => {
	const queue = new WriteQueue();
	let open = () => {};
	const gate = new Promise<void>((resolve) => {
		open = resolve;
	});
	const waiting = Array.from({ length: LIMITS.waitingWrites }, () => queue.run('a', () => gate));
	await expect(queue.run('b', async () => 1)).rejects.toMatchObject({ code: 'locked' });
	open();
	await Promise.all(waiting);
	await queue.idle();
	expect(await queue.run('b', async () => 1)).toBe(1);
});

test('idle waits for what was asked for, also for what came while it waited', async () => {
	const queue = new WriteQueue();
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
