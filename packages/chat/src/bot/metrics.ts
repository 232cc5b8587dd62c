/** Counts and times of a bot in the text format that Prometheus reads (its "Exposition formats", text version 0.0.4). */

type Labels = Readonly<Record<string, string>>;

/** upper bounds of the times' classes [s] */
const BOUNDS_S = [0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10];

interface Times {
	readonly counts: number[];
	sumS: number;
	count: number;
}

/** What is counted, with what it means. Names of the metrics begin with `lugbook_`. */
const COUNTERS = {
	messages_total: 'messages taken on, by platform and command',
	answers_total: 'answers shown, by platform and status',
	repeated_total: 'deliveries that were repetitions and needed nothing',
	failures_total: 'messages that failed, by platform and stage',
	slowed_total: 'messages refused because their sender was too fast',
	resumed_total: 'answers taken over from a process that ended, or tried again',
} as const;
const TIMES = {
	noted_seconds: 'from the delivery to its note in the outbox',
	answer_seconds: 'from the delivery to the answer on the screen',
} as const;

export class Metrics {
	readonly #counters = new Map<string, Map<string, number>>();
	readonly #times = new Map<string, Map<string, Times>>();
	readonly #startedMs = Date.now();

	count(name: keyof typeof COUNTERS, labels: Labels): void {
		const series = this.#counters.get(name) ?? new Map<string, number>();
		this.#counters.set(name, series);
		const key = written(labels);
		series.set(key, (series.get(key) ?? 0) + 1);
	}

	time(name: keyof typeof TIMES, labels: Labels, ms: number): void {
		const series = this.#times.get(name) ?? new Map<string, Times>();
		this.#times.set(name, series);
		const key = written(labels);
		const times = series.get(key) ?? { counts: BOUNDS_S.map(() => 0), sumS: 0, count: 0 };
		series.set(key, times);
		BOUNDS_S.forEach((bound, at) => {
			if (ms / 1000 <= bound) times.counts[at] = (times.counts[at] ?? 0) + 1;
		});
		times.sumS += ms / 1000;
		times.count += 1;
	}

	/** @param gauges what stands right now, such as how many answers wait */
	text(gauges: Readonly<Record<string, { readonly help: string; readonly value: number }>> = {}): string {
		const lines: string[] = [];
		const begin = (name: string, type: string, help: string) =>
			lines.push(`# HELP lugbook_${name} ${help}`, `# TYPE lugbook_${name} ${type}`);
		for (const [name, help] of Object.entries(COUNTERS)) {
			begin(name, 'counter', help);
			for (const [labels, value] of this.#counters.get(name) ?? [])
				lines.push(`lugbook_${name}{${labels}} ${value}`);
		}
		for (const [name, help] of Object.entries(TIMES)) {
			begin(name, 'histogram', help);
			for (const [labels, times] of this.#times.get(name) ?? []) {
				BOUNDS_S.forEach((bound, at) => {
					lines.push(`lugbook_${name}_bucket{${labels},le="${bound}"} ${times.counts[at] ?? 0}`);
				});
				lines.push(`lugbook_${name}_bucket{${labels},le="+Inf"} ${times.count}`);
				lines.push(`lugbook_${name}_sum{${labels}} ${times.sumS}`);
				lines.push(`lugbook_${name}_count{${labels}} ${times.count}`);
			}
		}
		const usual = {
			resident_memory_bytes: {
				help: 'memory of the process in RAM',
				value: process.memoryUsage.rss(),
			},
			uptime_seconds: {
				help: 'since the start of the process',
				value: (Date.now() - this.#startedMs) / 1000,
			},
		};
		for (const [name, { help, value }] of Object.entries({ ...usual, ...gauges })) {
			begin(name, 'gauge', help);
			lines.push(`lugbook_${name} ${value}`);
		}
		return `${lines.join('\n')}\n`;
	}
}

/** `platform="slack",command="ask"`; a label's value has backslash, quote and line end escaped. */
function written(labels: Labels): string {
	return Object.entries(labels)
		.map(
			([name, value]) =>
				`${name}="${value.replaceAll('\\', '\\\\').replaceAll('"', '\\"').replaceAll('\n', '\\n')}"`,
		)
		.join(',');
}
