import { LIMITS } from './entry.js';
import { LogError } from './errors.js';

/**
 * Lets the writes of one shop through one at a time, in the order they were asked for. Without it they would
 * all wait for the same lock in the database, each holding a connection that a reader could use.
 */
export class WriteQueue {
	/** The last task of each key; resolves with what it failed with, or null. */
	readonly #tails = new Map<string, Promise<unknown>>();
	#waiting = 0;

	/** @param task is given what the task before it in the queue failed with, null when it did not or none was there */
	async run<T>(key: string, task: (failureBefore: unknown) => Promise<T>): Promise<T> {
		if (this.#waiting >= LIMITS.waitingWrites) {
			throw new LogError(
				'locked',
				`${this.#waiting} writes are already waiting for the log; nothing was written`,
			);
		}
		this.#waiting += 1;
		const before = this.#tails.get(key) ?? Promise.resolve(null);
		const result = before.then(task);
		const tail = result.then(
			() => null,
			(error: unknown) => error,
		);
		this.#tails.set(key, tail);
		try {
			return await result;
		} finally {
			this.#waiting -= 1;
			if (this.#tails.get(key) === tail) this.#tails.delete(key);
		}
	}

	/** Resolves when everything that was waiting is done. */
	async idle(): Promise<void> {
		while (this.#tails.size > 0) await Promise.all(this.#tails.values());
	}
}
