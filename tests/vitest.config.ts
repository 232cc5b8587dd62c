import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Workspace packages are read from their sources, so a test never sees a stale build.
// Node gets these conditions too, for `require` as well as `import`: one that names a kind of module, such as
// 'import', would hand a CommonJS package the other half of its dependency.
const conditions = ['lugbook:source', 'node'];

export default defineConfig({
	root: fileURLToPath(new URL('..', import.meta.url)),
	resolve: { conditions },
	ssr: { resolve: { conditions, externalConditions: conditions } },
	test: {
		include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.ts', 'tests/**/*.test.ts'],
		exclude: ['**/node_modules/**', '**/dist/**'],
		setupFiles: [fileURLToPath(new URL('setup.ts', import.meta.url))],
		pool: 'forks',
		// Unless told, one core is left idle for a person at the machine: on two that would double the time.
		maxWorkers: availableParallelism(),
		testTimeout: 180_000,
		// A condition that is waited for comes when the machine gets to it.
		expect: { poll: { timeout: 30_000 } },
		hookTimeout: 180_000,
		allowOnly: false,
		passWithNoTests: false,
	},
});
