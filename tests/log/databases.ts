import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Log, type LogOptions, openLog } from '@lugbook/log';
import { sharedCluster } from './postgres.js';

/** A database the log runs on. Suites go through the list and put the title into theirs. */
export interface DialectUnderTest {
	readonly title: 'SQLite' | 'PostgreSQL';
	/** Address of a new, empty database, and the way to take it away. */
	fresh(): Promise<{ url: string; remove(): Promise<void> }>;
}

export const DIALECTS: readonly DialectUnderTest[] = [
	{
		title: 'SQLite',
		async fresh() {
			const folder = await mkdtemp(join(tmpdir(), 'lugbook-log-'));
			return {
				url: `sqlite:${join(folder, 'log.db')}`,
				remove: () => rm(folder, { recursive: true, force: true }),
			};
		},
	},
	{
		title: 'PostgreSQL',
		async fresh() {
			const cluster = await sharedCluster();
			// Goes with the cluster at the end of the run.
			return { url: await cluster.freshDatabase(), remove: async () => undefined };
		},
	},
];

const BUILT = new URL('../../packages/log/dist/index.js', import.meta.url);

/** The log in a thread of its own. The thread loads the built package: nothing translates sources for it. */
export async function openInThread(url: string, options?: LogOptions): Promise<Log> {
	const path = fileURLToPath(BUILT);
	if (!existsSync(path)) throw new Error(`${path} is missing: build the workspace first (npm run build)`);
	const { openLogInThread }: typeof import('@lugbook/log') = await import(BUILT.href);
	return await openLogInThread(url, options);
}

/** Each database, and one of them in a thread of its own: all the thread adds is the way to it and back. */
export const OPENINGS: readonly (Omit<DialectUnderTest, 'title'> & {
	readonly title: string;
	open(url: string, options?: LogOptions): Promise<Log>;
})[] = [
	...DIALECTS.map((dialect) => ({ ...dialect, open: openLog })),
	...DIALECTS.slice(0, 1).map((sqlite) => ({
		...sqlite,
		title: `${sqlite.title}, in a thread of its own`,
		open: openInThread,
	})),
];
