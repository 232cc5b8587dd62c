import { copyLog, type Log, openLog } from '@lugbook/log';
import { report } from './review/report.js';
import { sheetRecordOf } from './review/sheet.js';

export { type BookFormat, bookFiles, bookFormats } from './book/files.js';
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
