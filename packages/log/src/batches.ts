import { randomUUID } from 'node:crypto';
import { LogError } from './errors.js';

/** Lines that go from one thread to the other together, and how long they may be together [characters]. */
const LINES_TOGETHER = 100;
const LENGTH_TOGETHER = 1024 * 1024;

/** Lines of which there may be any number, asked for by the other thread a batch at a time. */
export class Batches {
	readonly #sources = new Map<string, Iterator<string> | AsyncIterator<string>>();

	/** @returns what the other thread calls these lines */
	open(lines: Iterable<string> | AsyncIterable<string>): string {
		// No number: a thread that is started anew would give the same ones again.
		const id = randomUUID();
		this.#sources.set(
			id,
			Symbol.asyncIterator in lines ? lines[Symbol.asyncIterator]() : lines[Symbol.iterator](),
		);
		return id;
	}

	/**
	 * @returns the next lines; none at their end
	 * @throws LogError 'connection-lost' for lines that a thread had which is no more
	 */
	async next(id: string): Promise<string[]> {
		const source = this.#sources.get(id);
		if (source === undefined) {
			throw new LogError(
				'connection-lost',
				'the thread that keeps the log has ended in the middle of its lines',
			);
		}
		const batch: string[] = [];
		let length = 0;
		while (batch.length < LINES_TOGETHER && length < LENGTH_TOGETHER) {
			const { done, value } = await source.next();
			if (done === true) break;
			batch.push(value);
			length += value.length;
		}
		return batch;
	}

	/** No more of them are wanted. */
	async close(id: string): Promise<void> {
		const source = this.#sources.get(id);
		this.#sources.delete(id);
		await source?.return?.();
	}
}

/** The lines that stand behind batches. */
export async function* linesOf(next: () => Promise<readonly string[]>): AsyncGenerator<string> {
	for (;;) {
		const batch = await next();
		if (batch.length === 0) return;
		yield* batch;
	}
}
