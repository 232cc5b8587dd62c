import { setImmediate as turnOfTheLoop } from 'node:timers/promises';
import { LIMITS } from './entry.js';
import { LogError } from './errors.js';

interface Waiting<Write> {
	readonly write: Write;
	done(): void;
	failed(error: unknown): void;
}

/**
 * Carries out writes that were waiting together.
 * @param failureBefore what the write before them failed with, null when it did not or none was there
 * @returns what each failed with, or null; it never rejects
 */
type CarryOut<Write> = (writes: readonly Write[], failureBefore: unknown) => Promise<readonly unknown[]>;

/**
 * Lets the writes of one key through in the order they were asked for, those that wait at the same moment together.
 * Without it they would all wait for the same lock in the database, each holding a connection that a reader could use.
 */
export class WriteQueue<Write> {
	readonly #carryOut: CarryOut<Write>;
	readonly #mostTogether: number;
	readonly #lines = new Map<string, { waiting: Waiting<Write>[]; end: Promise<void> }>();
	#waiting = 0;

	constructor(mostTogether: number, carryOut: CarryOut<Write>) {
		this.#mostTogether = mostTogether;
		this.#carryOut = carryOut;
	}

	/** Resolves when the write is done, rejects with what it failed with. */
	async run(key: string, write: Write): Promise<void> {
		if (this.#waiting >= LIMITS.waitingWrites) {
			throw new LogError(
				'locked',
				`${this.#waiting} writes are already waiting for the log; nothing was written`,
			);
		}
		this.#waiting += 1;
		try {
			await new Promise<void>((done, failed) => {
				const turn = { write, done, failed };
				const line = this.#lines.get(key);
				if (line !== undefined) line.waiting.push(turn);
				else {
					const waiting = [turn];
					this.#lines.set(key, { waiting, end: this.#serve(key, waiting) });
				}
			});
		} finally {
			this.#waiting -= 1;
		}
	}

	async #serve(key: string, waiting: Waiting<Write>[]): Promise<void> {
		let failureBefore: unknown = null;
		while (waiting.length > 0) {
			// Messages that came in together ask for their writes in the same turn of the event loop.
			await turnOfTheLoop();
			const together = waiting.splice(0, this.#mostTogether);
			const failures = await this.#carryOut(
				together.map(({ write }) => write),
				failureBefore,
			);
			for (const [at, { done, failed }] of together.entries()) {
				failureBefore = failures[at] ?? null;
				if (failureBefore === null) done();
				else failed(failureBefore);
			}
		}
		this.#lines.delete(key);
	}

	/** Resolves when everything that was waiting is done. */
	async idle(): Promise<void> {
		while (this.#lines.size > 0) await Promise.all([...this.#lines.values()].map(({ end }) => end));
	}
}
