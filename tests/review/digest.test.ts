import { digestGiven, dueDigests, plainText } from '@lugbook/chat';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop } from './shop.js';

describe.each(DIALECTS)('the daily digest ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
	});
	afterEach(async () => {
		await shop.close();
	});
	// In the machine's own time zone, as the shop's clock on the wall shows it.
	const at = (hour: number, day = 4) => new Date(2026, 4, day, hour, 5);

	test('is off at first; a lead alone switches it on, into the channel where that is said', async () => {
		await shop.say(robin, '40A 12V 15 ft', { channel: 'c9' });
		expect(await dueDigests(shop.chat.log, 'demo', at(23))).toEqual([]);
		expect(await shop.say(robin, '/log digest on')).toContain('by a lead');
		expect(await dueDigests(shop.chat.log, 'demo', at(23))).toEqual([]);
		expect(await shop.say(kim, '/log digest on 25:00')).toContain('no time of day');
		expect(await shop.say(kim, '/log digest on 7')).toContain('at 07:00');
		expect(await shop.say(robin, '/log digest')).toContain('at 07:00 into this channel');
		expect(await shop.kinds()).toEqual(['exchange', 'refused-action', 'settings']);
		expect(await dueDigests(shop.chat.log, 'demo', at(6))).toEqual([]);
		expect(await dueDigests(shop.chat.log, 'demo', at(7))).toEqual([
			{ shop: 'demo', channel: 'c1', day: '2026-05-04' },
		]);
		await shop.say(kim, '/log digest off');
		expect(await dueDigests(shop.chat.log, 'demo', at(23))).toEqual([]);
	});

	test('comes once a day, and not on a day when nothing is open', async () => {
		await shop.say(kim, '/log digest on');
		expect(await dueDigests(shop.chat.log, 'demo', at(8))).toEqual([]);
		await shop.say(robin, '40A 12V 15 ft');
		// The day without anything is over.
		expect(await dueDigests(shop.chat.log, 'demo', at(9))).toEqual([]);
		const due = await dueDigests(shop.chat.log, 'demo', at(8, 5));
		expect(due).toEqual([{ shop: 'demo', channel: 'c1', day: '2026-05-05' }]);
		await digestGiven(shop.chat.log, { shop: 'demo', day: '2026-05-05' });
		expect(await dueDigests(shop.chat.log, 'demo', at(9, 5))).toEqual([]);
		expect(await dueDigests(shop.chat.log, 'demo', at(9, 6))).toHaveLength(1);
		expect(await dueDigests(shop.chat.log, 'elsewhere', at(9, 6))).toEqual([]);
	});

	test('says what is unsigned, the build with a danger first, and nothing of another shop', async () => {
		await shop.say(robin, '5A 12V 10 ft', { build: 'egret' });
		await shop.say(robin, '8A 12V 10 ft', { build: 'egret' });
		await shop.say(robin, '40A 12V 15 ft 10 awg ok?', { build: 'heron' });
		await shop.say(robin, '9A 12V 10 ft');
		await shop.say(robin, '11A 12V 10 ft', { shop: 'other' });
		await shop.say(kim, '/log sign 1');
		await shop.say(kim, '/log ask-lead 2');
		const reply = await shop.tell(kim, '/log digest now');
		expect(reply.answer.headline).toBe('To look at: 3 unsigned, 1 with a danger, 1 asked of the lead');
		const lines = plainText(reply).split('\n');
		expect(lines[1]).toBe('Build "heron": 1');
		expect(lines[2]).toMatch(/^DANGER wiring: No\. 3/);
		expect(lines.slice(3)).toEqual([
			'Build "egret": 1',
			expect.stringMatching(/No\. 2 .*\(asked of the lead\)/),
			'Without a build: 1',
			expect.stringMatching(/No\. 4 /),
		]);
	});
});
