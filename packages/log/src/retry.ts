import { setTimeout as sleep } from 'node:timers/promises';
import type { Database } from './database.js';

/** Tries again, ever more slowly, while somebody holds a lock or the server is away. */
export async function retrying<T>(
	database: Database,
	patienceMs: number,
	task: () => Promise<T>,
): Promise<T> {
	const deadline = Date.now() + patienceMs;
	for (let pauseMs = 4; ; pauseMs = Math.min(pauseMs * 2, 250)) {
		try {
			return await task();
		} catch (error) {
			const ours = database.toLogError(error);
			const mayPass = ours.code === 'locked' || ours.code === 'connection-lost';
			if (!mayPass || Date.now() + pauseMs > deadline) throw ours;
			// Chance keeps two processes from meeting at the same lock again and again.
			await sleep(pauseMs * (0.5 + Math.random()));
		}
	}
}
