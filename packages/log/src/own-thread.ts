/**
 * A log in a thread of its own: the thread that asks goes on while the log waits for the disk, walks through a long
 * chain or looks through a million entries. A bot acknowledges messages meanwhile.
 */

import { Worker } from 'node:worker_threads';
import { Batches, linesOf } from './batches.js';
import { Calls, type Serve } from './calls.js';
import { LogError, messageOf } from './errors.js';
import { foldPages } from './fold.js';
import type { Log, LogOptions } from './log.js';
import type { ImportResult } from './portable.js';
import type { SqlLog } from './sql-log.js';

/** What the thread does as the log does it: values in, a value out. */
export const ONE_CALL = [
	'append',
	'entry',
	'byDelivery',
	'latestInThread',
	'find',
	'head',
	'verify',
	'forget',
	'people',
	'shops',
	'setSetting',
	'setSettings',
	'getSetting',
	'swapSetting',
	'settingsOf',
	'dropSettings',
	'settings',
	'tree',
	'inclusion',
	'consistency',
	'backup',
] as const satisfies readonly (keyof Log)[];
type OneCall = Pick<Log, (typeof ONE_CALL)[number]>;

/** What the thread is told at its start. */
export interface ThreadData {
	readonly url: string;
	readonly options: Omit<LogOptions, 'waiting'>;
}

/** Opens a log as `openLog` does, in a thread of its own. */
export async function openLogInThread(url: string, options: LogOptions = {}): Promise<Log> {
	const { waiting, ...others } = options;
	const imported = new Batches();
	const serve: Serve = async (name, [given]) => {
		if (name === 'waiting') return waiting?.(given as string);
		return await imported.next(given as string);
	};
	const start = () => new Thread({ url, options: others }, serve);
	let thread = start();
	let isClosed = false;
	const call = async (name: string, ...given: readonly unknown[]) => {
		if (isClosed) throw new LogError('unavailable', 'this log has been closed');
		// One that has ended, as when it had no memory left, is started anew.
		if (thread.hasEnded) thread = start();
		return await thread.calls.call(name, ...given);
	};
	const oneCall = Object.fromEntries(
		ONE_CALL.map((name) => [name, (...given: readonly unknown[]) => call(name, ...given)]),
	) as unknown as OneCall;

	await thread.opened;
	return {
		...oneCall,
		async fold(shop, filter, initial, step) {
			const page = (above: number, end: number) =>
				call('page', shop, filter, above, end) as ReturnType<SqlLog['page']>;
			return await foldPages((await oneCall.head(shop))?.number ?? 0, page, initial, step);
		},
		async *export(shop, given) {
			const id = await call('export', shop, given);
			try {
				yield* linesOf(async () => (await call('exported', id)) as string[]);
			} finally {
				await call('exportEnd', id);
			}
		},
		async import(lines) {
			const id = imported.open(lines);
			try {
				return (await call('import', id)) as ImportResult;
			} finally {
				await imported.close(id);
			}
		},
		async close() {
			if (isClosed) return;
			isClosed = true;
			if (!thread.hasEnded) await thread.end();
		},
	};
}

class Thread {
	readonly calls: Calls;
	/** resolves when the log is open, rejects with the reason why it can't be */
	readonly opened: Promise<unknown>;
	readonly #worker: Worker;
	#hasEnded = false;

	constructor(data: ThreadData, serve: Serve) {
		this.#worker = new Worker(new URL('./own-thread-main.js', import.meta.url), {
			workerData: data,
			name: 'log',
			// What was loaded into the program beforehand is meant for its own thread.
			execArgv: [],
		});
		this.calls = new Calls(this.#worker, serve);
		this.opened = this.calls.call('open');
		this.opened.catch(() => void this.#worker.terminate());
		let reason = 'no reason was given';
		this.#worker.once('error', (error) => {
			reason = messageOf(error);
		});
		this.#worker.once('exit', () => {
			this.#hasEnded = true;
			// Whether a write that was under way is there, only the log can tell: as when a server goes away.
			this.calls.fail(new LogError('connection-lost', `the thread that keeps the log has ended: ${reason}`));
		});
	}

	get hasEnded(): boolean {
		return this.#hasEnded;
	}

	/** Lets the waiting writes finish first. */
	async end(): Promise<void> {
		await this.calls.call('close');
		await this.#worker.terminate();
	}
}
