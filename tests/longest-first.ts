/** The order in which test files start. */

import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Files that take more than some ten seconds, longest first: one that began last would run on alone. */
const long = [
	'tests/review/large-export.test.ts',
	'tests/platforms/faults.test.ts',
	'tests/log/kill.test.ts',
	'tests/platforms/processes.test.ts',
	'tests/documents/book-from-the-log.test.ts',
	'tests/language/fuzz.test.ts',
	'tests/safety/wire.test.ts',
	'tests/language/followups.test.ts',
	'tests/build/conversation.test.ts',
	'packages/core/src/van/check.test.ts',
];

const missing = long.filter((path) => !existsSync(`${root}${path}`));
if (missing.length > 0)
	throw new Error(`no test file ${missing.join(', ')}: it is named among the long ones`);

/**
 * Files with a process of their own before those that share one, so that the shared ones, small and many, fill the
 * cores to the end; among each the long ones first.
 */
export class LongestFirst extends BaseSequencer {
	override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
		const place = ({ moduleId }: TestSpecification) => {
			const found = long.indexOf(moduleId.slice(root.length));
			return found < 0 ? long.length : found;
		};
		const sharing = ({ project }: TestSpecification) => Number(!project.config.isolate);
		return files.toSorted(
			(a, b) => sharing(a) - sharing(b) || place(a) - place(b) || a.moduleId.localeCompare(b.moduleId),
		);
	}
}
