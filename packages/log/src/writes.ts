import type { Transaction } from 'kysely';
import type { Database } from './database.js';
import type { WriteOptions } from './log.js';
import { WriteQueue } from './queue.js';
import { mayPass, retrying } from './retry.js';
import type { Tables } from './tables.js';

interface Write {
	/** May run again, after a try that was rolled back. */
	readonly task: (transaction: Transaction<Tables>) => Promise<void>;
	/** the time of `Date.now()` after which it is not tried again */
	readonly deadlineMs: number;
	readonly lasting: boolean;
}

/**
 * The writing transactions of a log. Writes that wait at the same moment share one commit where the database has a
 * single writer: what takes longest in a small write is the wait for the disk at its end. None is answered before it.
 */
export class Writes {
	readonly #database: Database;
	readonly #patienceMs: number;
	readonly #queue: WriteQueue<Write>;

	constructor(database: Database, patienceMs: number) {
		this.#database = database;
		this.#patienceMs = patienceMs;
		this.#queue = new WriteQueue(database.writesPerCommit, (writes, failureBefore) =>
			this.#carryOut(writes, failureBefore),
		);
	}

	/**
	 * Runs a task in a transaction; after a try that was rolled back it is run again.
	 * @param options.lasting durable when it resolves, unless said
	 */
	async run<T>(
		shop: string,
		task: (transaction: Transaction<Tables>) => Promise<T>,
		{ lasting = true }: WriteOptions = {},
	): Promise<T> {
		const result: { value?: T } = {};
		await this.#queue.run(this.#database.writeKey(shop), {
			deadlineMs: Date.now() + this.#patienceMs,
			lasting,
			task: async (transaction) => {
				result.value = await task(transaction);
			},
		});
		return result.value as T;
	}

	/** Resolves when everything that was waiting is done. */
	async idle(): Promise<void> {
		await this.#queue.idle();
	}

	async #carryOut(writes: readonly Write[], failureBefore: unknown): Promise<unknown[]> {
		const [first, ...others] = writes;
		let before = failureBefore;
		if (first !== undefined && others.length > 0) {
			before = await this.#inOneTransaction(writes, first.deadlineMs);
			if (before === null) return writes.map(() => null);
			// Nothing of any of them is written. One by one, the one that can't be written takes no other along.
		}
		const failures: unknown[] = [];
		for (const write of writes) {
			// Who stood behind a writer that gave up has waited as long: all who wait are told at about the same time.
			const isTooLate = mayPass(before) && Date.now() >= write.deadlineMs;
			before = isTooLate ? before : await this.#inOneTransaction([write], write.deadlineMs);
			failures.push(before);
		}
		return failures;
	}

	/** @returns what it failed with, and nothing is written; or null */
	async #inOneTransaction(writes: readonly Write[], deadlineMs: number): Promise<unknown> {
		try {
			const lasting = writes.some((write) => write.lasting);
			await retrying(this.#database, deadlineMs, () =>
				this.#database.transact(lasting, async (transaction) => {
					for (const { task } of writes) await task(transaction);
				}),
			);
			return null;
		} catch (error) {
			return error;
		}
	}
}
