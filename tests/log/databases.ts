import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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
