import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Workspace packages are read from their sources, so a test never sees a stale build.
const conditions = ['lugbook:source', 'module', 'node', 'import', 'default'];

export default defineConfig({
	root: fileURLToPath(new URL('..', import.meta.url)),
	resolve: { conditions },
	ssr: { resolve: { conditions, externalConditions: conditions } },
	test: {
		include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.ts', 'tests/**/*.test.ts'],
		exclude: ['**/node_modules/**', '**/dist/**'],
		pool: 'forks',
		testTimeout: 60_000,
		hookTimeout: 60_000,
		allowOnly: false,
		passWithNoTests: false,
	},
});
