import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { isSecondReconnect } from '../apps/discord/src/second-reconnect.js';
import { LongestFirst } from './longest-first.js';

// Workspace packages are read from their sources, so a test never sees a stale build.
// Node gets these conditions too, for `require` as well as `import`: one that names a kind of module, such as
// 'import', would hand a CommonJS package the other half of its dependency.
const conditions = ['lugbook:source', 'node'];

const never = ['**/node_modules/**', '**/dist/**'];
// What works in its own memory and leaves nothing behind shares a process: to load the calculations anew takes longer
// than most of these files.
const sharing = [
	'packages/*/src/**/*.test.ts',
	'apps/*/src/**/*.test.ts',
	'tests/{build,generate,language,reference,tongues}/**/*.test.ts',
	'tests/safety/wire.test.ts',
];

export default defineConfig({
	root: fileURLToPath(new URL('..', import.meta.url)),
	resolve: { conditions },
	ssr: { resolve: { conditions, externalConditions: conditions } },
	test: {
		projects: [
			{
				extends: true,
				test: { name: 'alone', include: ['tests/**/*.test.ts'], exclude: [...never, ...sharing] },
			},
			{ extends: true, test: { name: 'sharing', include: sharing, exclude: never, isolate: false } },
		],
		setupFiles: [fileURLToPath(new URL('setup.ts', import.meta.url))],
		sequence: { sequencer: LongestFirst },
		pool: 'forks',
		// Unless told, one core is left idle for a person at the machine: on two that would double the time. One more
		// than there are cores, because the longest files wait for much of theirs: for platforms, databases, processes.
		maxWorkers: availableParallelism() + 1,
		testTimeout: 180_000,
		// A condition that is waited for comes when the machine gets to it.
		expect: { poll: { timeout: 30_000 } },
		hookTimeout: 180_000,
		// The bot's program takes it so too; in a test the bot runs without its program.
		onUnhandledError: (error) => (isSecondReconnect(error) ? false : undefined),
		allowOnly: false,
		passWithNoTests: false,
	},
});
