/**
 * The system takes only part of what is written: a limit on the size of files ends a write in its middle, somewhere
 * in the making of the tables, in an entry, or in the moving of entries from the write-ahead file to the database.
 */
import { openLog } from '@lugbook/log';
import { expect, test } from 'vitest';
import { DIALECTS } from './databases.js';
import { entryOf } from './entries.js';
import { Writer } from './writers.js';

const SHOP = 'slack:T1';
/** Far more than any limit has room for. */
const ENTRIES = 100_000;
/** The write-ahead file is moved into the database whenever it has passed some 4000 KiB. */
const LIMITS_KIB = [0, 3, 8, 31, 64, 100, 177, 240, 450, 777, 1500, 2901, 4000, 4200, 5000];

const sqlite = DIALECTS.filter(({ title }) => title === 'SQLite');

test.each(sqlite)(
	'$title: what was acknowledged before a write was cut is there, and no half of another',
	{ timeout: 300_000 },
	async ({ fresh }) => {
		let most = 0;
		for (const largestFileKiB of LIMITS_KIB) {
			const { url, remove } = await fresh();
			const writer = new Writer({ url, shop: SHOP, name: 'w', count: ENTRIES, largestFileKiB });
			expect(await writer.over(), `${largestFileKiB} KiB`).not.toBe(0);
			// A code of the log's own, and not whatever the driver threw.
			expect(writer.errors).toMatch(/code: '(full|unavailable)'/);
			const log = await openLog(url);
			const report = await log.verify();
			expect(report, `${largestFileKiB} KiB`).toMatchObject({ ok: true, damage: null });
			const stored = await log.fold(SHOP, {}, new Map<number, string>(), (hashes, entry) =>
				hashes.set(entry.number, entry.hash),
			);
			const count = writer.acknowledged.length;
			most = Math.max(most, count);
			for (const { number, hash } of writer.acknowledged) expect(stored.get(number)).toBe(hash);
			// The entry that was refused may have been complete on disk when the refusal came.
			expect(stored.size).toBeGreaterThanOrEqual(count);
			expect(stored.size).toBeLessThanOrEqual(count + 1);
			expect((await log.append(entryOf({ shop: SHOP }))).entry.number).toBe(stored.size + 1);
			await log.close();
			await remove();
		}
		expect(most).toBeGreaterThan(50);
	},
);
