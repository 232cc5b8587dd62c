import { setTimeout as sleep } from 'node:timers/promises';
import type { Database } from './database.js';
import { LogError } from './errors.js';

/** Whether the same try may go through later: somebody holds a lock, or the server is away. */
export function mayPass(error: unknown): error is LogError {
	return error instanceof LogError && (error.code === 'locked' || error.code === 'connection-lost');
}

/**
 * Tries once, and again, ever more slowly, while somebody holds a lock or the server is away.
 * @param deadlineMs the time of `Date.now()` after which no further try begins
 */
export async function retrying<T>(
	database: Database,
	deadlineMs: number,
	task: () => Promise<T>,
): Promise<T> {
	for (let pauseMs = 4; ; pauseMs = Math.min(pauseMs * 2, 250)) {
		try {
			return await task();
		} catch (error) {
			const ours = database.toLogError(error);
			if (!mayPass(ours) || Date.now() + pauseMs > deadlineMs) throw ours;
			// Chance keeps two processes from meeting at the same lock again and again.
			await sleep(pauseMs * (0.5 + Math.random()));
		}
	}
}
