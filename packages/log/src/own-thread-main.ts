/** The thread of `openLogInThread`: opens the log that it was told of, and does what it is asked for. */

import { parentPort, workerData } from 'node:worker_threads';
import { Batches, linesOf } from './batches.js';
import { Calls, type Serve } from './calls.js';
import { LogError } from './errors.js';
import { openLog } from './open.js';
import { ONE_CALL, type ThreadData } from './own-thread.js';
import type { SqlLog } from './sql-log.js';

if (parentPort === null) throw new Error('this is no program of its own');
const { url, options }: ThreadData = workerData;
const exported = new Batches();
let opening: Promise<SqlLog> | null = null;

const serve: Serve = async (name, given) => {
	if (name === 'open') {
		opening = openLog(url, { ...options, waiting: (sentence) => void calls.call('waiting', sentence) });
		await opening;
		return;
	}
	if (opening === null) throw new LogError('unavailable', 'this log is not open');
	// Calls that come before it is open begin in their order, once it is.
	const opened = await opening;
	const [first, second] = given;
	switch (name) {
		case 'page':
			return await opened.page(...(given as Parameters<SqlLog['page']>));
		case 'export':
			return exported.open(opened.export(first as string, second as { persons: boolean }));
		case 'exported':
			return await exported.next(first as string);
		case 'exportEnd':
			return await exported.close(first as string);
		case 'import':
			return await opened.import(linesOf(async () => (await calls.call('lines', first)) as string[]));
		case 'close':
			return await opened.close();
	}
	const known = ONE_CALL.find((one) => one === name);
	if (known === undefined) throw new Error(`a log does not know how to do "${name}"`);
	return await (opened[known] as (...given: readonly unknown[]) => Promise<unknown>)(...given);
};

const calls = new Calls(parentPort, serve);
