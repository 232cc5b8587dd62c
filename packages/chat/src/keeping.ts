import { copyLog, type Log, openLog, rechained } from '@lugbook/log';
import { isShelf } from './bot/outbox.js';
import { report } from './review/report.js';
import { sheetRecordOf } from './review/sheet.js';

export { aboutFormat, type BookFormat, bookFiles, bookFormats, partIn, TooManySheets } from './book/files.js';
export { recompute } from './recompute.js';
export { copyLog, openLog };

/** One answer's calculation sheet as a page or a document, or null where there is no such answer. */
export async function sheetFile(
	log: Log,
	shop: string,
	number: number,
	format: 'html' | 'pdf',
): Promise<Uint8Array | null> {
	const entry = await log.entry(shop, number);
	const record = entry === null ? null : await sheetRecordOf(log, entry);
	if (record === null) return null;
	const { sheetPage, sheetPdf } = await report();
	return format === 'html' ? Buffer.from(await sheetPage(record)) : await sheetPdf(record);
}

/**
 * Takes in an export of a shop, each entry checked before it is written; under another name, chained anew.
 *
 * @param open begins to read the lines of the export
 * @param shop the name to take it in under; null for its own
 * @throws Error where the lines are the book of one build, which nothing can be taken in from
 */
export async function importLog(
	log: Log,
	open: () => AsyncIterable<string>,
	shop: string | null,
): Promise<{ readonly shop: string; readonly written: number; readonly present: number }> {
	if (await isBook(open)) throw new Error((await report()).bookJsonAbout);
	return await log.import(shop === null ? open() : rechained(open, shop));
}

/** A book begins with its format too, and its first line is no whole object. */
async function isBook(open: () => AsyncIterable<string>): Promise<boolean> {
	const { bookJsonFormat } = await report();
	for await (const line of open()) return line.startsWith(`{"format":"${bookJsonFormat.split('/')[0]}/`);
	return false;
}

/**
 * Brings what a backup has into a log. Entries that are there already must be the same; a setting that is there already
 * stays, since it may have been changed since for a reason: somebody is no lead any more. What waited to be shown at
 * the time of the backup was shown long ago and stays behind.
 */
export async function restoreLog(
	backup: Log,
	log: Log,
): Promise<{ readonly shop: string; readonly written: number; readonly present: number }[]> {
	const shops = [];
	for (const shop of await backup.shops()) {
		shops.push(await log.import(backup.export(shop, { persons: true })));
	}
	for (const { shop, key, value } of await backup.settings()) {
		if (!isShelf(shop)) await log.swapSetting(shop, key, null, value);
	}
	return shops;
}
