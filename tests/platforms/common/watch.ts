/**
 * Waiting for something to become true without polling: every change of a stand-in's state calls `changed`,
 * and each waiter looks again.
 */

/** A condition that is waited for comes when the machine gets to it [ms]. */
export const PATIENCE_MS = 30_000;

export class Watch {
	private readonly waiters = new Set<() => void>();

	changed(): void {
		for (const look of [...this.waiters]) look();
	}

	/**
	 * Resolves with the first value `look` gives that is not `undefined`.
	 * @param what named in the error when nothing came in time; a function is asked only then
	 * @param timeoutMs how long to wait [ms]
	 */
	until<T>(what: string | (() => string), look: () => T | undefined, timeoutMs = PATIENCE_MS): Promise<T> {
		const found = look();
		if (found !== undefined) return Promise.resolve(found);
		return new Promise((resolve, reject) => {
			const again = () => {
				const value = look();
				if (value === undefined) return;
				clearTimeout(timer);
				this.waiters.delete(again);
				resolve(value);
			};
			const timer = setTimeout(() => {
				this.waiters.delete(again);
				const named = typeof what === 'string' ? what : what();
				reject(new Error(`waited ${timeoutMs} ms for ${named}, and it did not come`));
			}, timeoutMs);
			this.waiters.add(again);
		});
	}
}

export const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
