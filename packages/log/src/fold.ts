import type { Entry } from './entry.js';

/** Entries that are held in memory at a time. */
export const FOLD_PAGE = 200;

/**
 * Runs through entries by pages and not by an open cursor: the step may itself use the log.
 * @param end number of the last entry there was when it began
 * @param page at most FOLD_PAGE entries above one number, up to another
 */
export async function foldPages<T>(
	end: number,
	page: (above: number, end: number) => Promise<readonly Entry[]>,
	initial: T,
	step: (state: T, entry: Entry) => T | Promise<T>,
): Promise<T> {
	let state = initial;
	for (let above = 0; above < end; ) {
		const entries = await page(above, end);
		for (const entry of entries) state = await step(state, entry);
		above = entries.length < FOLD_PAGE ? end : (entries.at(-1)?.number ?? end);
	}
	return state;
}
