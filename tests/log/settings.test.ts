/** What stands beside the chain (leads, digest, what waits to be shown): which way of carrying a log takes it along. */

import { copyLog, importLog, restoreLog } from '@lugbook/chat';
import { type Log, openLog } from '@lugbook/log';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from './databases.js';
import { entryOf } from './entries.js';

const LEADS = JSON.stringify({ U7: { name: 'Alex', isLead: false } });
const settings = [
	{ shop: 'local', key: 'daily digest', value: JSON.stringify({ channel: 'C1', time: '07:00' }) },
	{ shop: 'local', key: 'leads', value: LEADS },
	{ shop: 'other', key: 'leads', value: '{}' },
];
const waiting = { shop: 'outbox of slack', key: 'a message', value: 'waits to be shown' };

describe.each(DIALECTS)('$title', ({ fresh }) => {
	let source: Log;
	let target: Log;
	const ends: (() => Promise<void>)[] = [];

	async function open(): Promise<Log> {
		const { url, remove } = await fresh();
		const log = await openLog(url);
		ends.push(async () => {
			await log.close();
			await remove();
		});
		return log;
	}

	beforeEach(async () => {
		source = await open();
		target = await open();
		for (const shop of ['local', 'other']) await source.append(entryOf({ shop }));
		for (const { shop, key, value } of [...settings, waiting]) await source.setSetting(shop, key, value);
	});
	afterEach(async () => {
		for (const end of ends.splice(0)) await end();
	});

	test('moving takes all of it along', async () => {
		await copyLog(source, target);
		expect(await target.settings()).toEqual([...settings, waiting]);
		expect(await target.verify()).toMatchObject({ ok: true, shops: [{ entries: 1 }, { entries: 1 }] });
	});

	test('restoring takes it along, but for what waited to be shown; what is there stays', async () => {
		await target.setSetting('other', 'leads', LEADS);
		await restoreLog(source, target);
		const [digest, leads] = settings;
		expect(await target.settings()).toEqual([digest, leads, { shop: 'other', key: 'leads', value: LEADS }]);
		expect(await target.verify()).toMatchObject({ ok: true, shops: [{ entries: 1 }, { entries: 1 }] });
	});

	test.each([true, false])('an export has none of it, with names (%s) or without', async (persons) => {
		const lines: string[] = [];
		for await (const line of source.export('local', { persons })) lines.push(line);
		expect(lines).toHaveLength(2);
		expect(lines.join('\n')).not.toMatch(/digest|leads|Alex|U7/);
		async function* again() {
			yield* lines;
		}
		await target.setSetting('local', 'leads', '{}');
		await importLog(target, again, null);
		expect(await target.settings()).toEqual([{ shop: 'local', key: 'leads', value: '{}' }]);
		expect(await target.verify()).toMatchObject({ ok: true, shops: [{ entries: 1 }] });
	});
});
