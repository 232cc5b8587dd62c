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

/** Milliseconds of processor time that this process has used. */
export function ownCpuMs(): number {
	const { user, system } = process.cpuUsage();
	return (user + system) / 1000;
}

/**
 * Wall time and processor time of one call, the least of several runs of each: on a machine that others use as well,
 * the second tells what the call itself takes.
 * @param cpuMs processor time used so far [ms], by everybody who works for the call
 */
export async function leastTimes(
	call: () => unknown,
	cpuMs: () => number = ownCpuMs,
	runs = 7,
): Promise<{ wallMs: number; cpuMs: number }> {
	const least = { wallMs: Number.POSITIVE_INFINITY, cpuMs: Number.POSITIVE_INFINITY };
	for (let run = 0; run < runs; run += 1) {
		const [startMs, startCpuMs] = [performance.now(), cpuMs()];
		await call();
		least.wallMs = Math.min(least.wallMs, performance.now() - startMs);
		least.cpuMs = Math.min(least.cpuMs, cpuMs() - startCpuMs);
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
