/** One figure of the benchmark run. Benchmarks measure and print; tests don't time. */
export interface Bench {
	readonly name: string;
	/** what it should come to on two cores, or null where no target is set */
	readonly target: string | null;
	/** runs it and returns the figure as printed */
	readonly run: () => Promise<string> | string;
}

/** Milliseconds of one call, the least of several runs: the others measure the machine's neighbours. */
export async function leastMs(call: () => unknown, runs = 7): Promise<number> {
	let least = Number.POSITIVE_INFINITY;
	for (let run = 0; run < runs; run += 1) {
		const start = performance.now();
		await call();
		least = Math.min(least, performance.now() - start);
	}
	return least;
}

/** "p50 0.12 ms, p99 0.45 ms" of many single calls. */
export async function percentiles(calls: number, call: (index: number) => unknown): Promise<string> {
	const times: number[] = [];
	for (let index = 0; index < calls; index += 1) {
		const start = performance.now();
		await call(index);
		times.push(performance.now() - start);
	}
	times.sort((a, b) => a - b);
	const at = (share: number) =>
		(times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? 0).toFixed(3);
	return `p50 ${at(0.5)} ms, p99 ${at(0.99)} ms`;
}
