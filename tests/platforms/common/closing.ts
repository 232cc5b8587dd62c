/** What a test opened and has to be closed after it, last opened first. */

import { afterEach } from 'vitest';

const opened: (() => Promise<unknown>)[] = [];

afterEach(async () => {
	for (const close of opened.splice(0).reverse()) await close();
});

export function afterwards(close: () => Promise<unknown>): void {
	opened.push(close);
}
