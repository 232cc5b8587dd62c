/** Lines that go from one thread to the other together, and how long they may be together [characters]. */
const LINES_TOGETHER = 100;
const LENGTH_TOGETHER = 1024 * 1024;

/** Lines of which there may be any number, asked for by the other thread a batch at a time. */
export class Batches {
	readonly #sources = new Map<number, Iterator<string> | AsyncIterator<string>>();
	#last = 0;

	/** @returns what the other thread calls these lines */
	open(lines: Iterable<string> | AsyncIterable<string>): number {
		this.#last += 1;
		this.#sources.set(
			this.#last,
			Symbol.asyncIterator in lines ? lines[Symbol.asyncIterator]() : lines[Symbol.iterator](),
		);
		return this.#last;
	}

	/** @returns the next lines; none at their end */
	async next(id: number): Promise<string[]> {
		const source = this.#sources.get(id);
		const batch: string[] = [];
		let length = 0;
		while (source !== undefined && batch.length < LINES_TOGETHER && length < LENGTH_TOGETHER) {
			const { done, value } = await source.next();
			if (done === true) break;
			batch.push(value);
			length += value.length;
		}
		return batch;
	}

	/** No more of them are wanted. */
	async close(id: number): Promise<void> {
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
