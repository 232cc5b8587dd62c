import { actOf } from '@lugbook/chat';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop, sam } from './shop.js';

describe.each(DIALECTS)('who may do what ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
		await shop.say(robin, '40A 12V 15 ft');
	});
	afterEach(async () => {
		await shop.close();
	});
	const refusals = async (name = 'demo') =>
		(await shop.kinds(name)).filter((kind) => kind === 'refused-action').length;

	test('an administrator makes a lead, who then signs; made no lead again, is refused at once', async () => {
		await shop.say(sam, '5A 12V 10 ft');
		expect(await shop.say(sam, '/log sign 1')).toContain('for the leads');
		expect(await shop.say(kim, '/log leads add @Sam')).toContain('Sam (U0000003) is now a lead');
		expect(await shop.say(sam, '/log sign 1')).toContain('No. 1 signed by Sam');
		expect(await shop.say(kim, '/log leads remove U0000003')).toContain('no lead any more');
		expect(await shop.say(sam, '/log reject 1 too thin')).toContain('for the leads');
		expect(await shop.say(robin, '/log leads')).toContain('Sam (U0000003): no lead any more');
		expect(await shop.kinds()).toEqual([
			'exchange',
			'exchange',
			'refused-action',
			'settings',
			'signed',
			'settings',
			'refused-action',
		]);
		expect((await shop.chat.log.verify('demo')).ok).toBe(true);
	});

	test('a lead named by the configuration is refused at once when an administrator takes the right away', async () => {
		const alex = { id: 'U0000004', name: 'Alex', lead: true };
		await shop.say(alex, '10A 12V 3 ft');
		await shop.say(kim, '/log leads remove Alex');
		for (const text of ['sign 1', 'reject 1 no', 'own-signature on', 'leads add Robin']) {
			await shop.say(alex, `/log ${text}`);
		}
		expect(await refusals()).toBe(4);
		expect(await shop.kinds()).not.toContain('signed');
		await shop.say(kim, '/log leads add Alex');
		expect(await shop.say(alex, '/log sign 1')).toContain('signed by Alex');
	});

	test.each([
		['sign 1', 'for the leads'],
		['reject 1 too thin', 'for the leads'],
		['own-signature on', 'Only a lead'],
		['replace 1 at 30 ft', 'whoever asked it, or by a lead'],
		['leads add Sam', 'Only an administrator'],
		['leads remove Kim', 'Only an administrator'],
	])('somebody who is no lead is refused /log %s, and that is kept', async (text, why) => {
		const reply = await shop.tell(sam, `/log ${text}`);
		expect(reply.answer.headline).toContain(why);
		expect(reply.audience).toBe('asker');
		expect(await shop.kinds()).toEqual(['exchange', 'refused-action']);
		expect(await shop.chat.log.getSetting('demo', 'leads')).toBeNull();
	});

	test('a lead whom an administrator made is no administrator', async () => {
		await shop.say(kim, '/log leads add U0000003');
		expect(await shop.say(sam, '/log leads add Robin')).toContain('Only an administrator');
		expect(await shop.say(robin, '/log sign 1')).toContain('for the leads');
		expect(await refusals()).toBe(2);
	});

	test('a lead of one shop is nobody in another, whose numbers mean its own answers', async () => {
		await shop.say(kim, '/log leads add U0000003');
		const elsewhere = { shop: 'other', channel: 'c1' };
		expect(await shop.say(sam, '/log sign 1', elsewhere)).toContain('no answer No. 1');
		await shop.say(robin, '5A 12V 10 ft', elsewhere);
		expect(await shop.say(sam, '/log sign 2', elsewhere)).toContain('for the leads');
		expect(await shop.kinds('other')).toEqual(['refused-action', 'exchange', 'refused-action']);
		expect(await shop.kinds()).toEqual(['exchange', 'settings']);
		expect(await shop.say(kim, '/log sheet 1', elsewhere)).toContain('no answer No. 1');
		expect(await shop.say(kim, '/log show 1', elsewhere)).not.toContain('AWG');
	});

	test.each([
		'99999999',
		'0',
		'-1',
		'1e3',
		'1; sign 2',
		'../1',
		'demo 1',
		'1\n2',
		'\u{1D7D9}',
		'<@U0000002>',
	])('the forged value %j of a button signs nothing and is kept as refused', async (value) => {
		const act = actOf('sign', value);
		if (act?.kind !== 'say') throw new Error('it does not reach the conversation');
		expect(act.command).toBe('log');
		await shop.say(kim, `/log ${act.text}`);
		expect(await shop.kinds()).toEqual(['exchange', 'refused-action']);
	});

	test('a button pressed by somebody who is no lead is refused by the conversation', async () => {
		const act = actOf('sign', '1');
		expect(act).toEqual({ kind: 'say', command: 'log', text: 'sign 1' });
		expect(await shop.say(sam, '/log sign 1')).toContain('for the leads');
		expect(await shop.kinds()).toEqual(['exchange', 'refused-action']);
	});

	test('names that two people share are asked about; unknown ones are nobody', async () => {
		const other = { id: 'U0000009', name: 'sam', lead: false };
		await shop.say(sam, '5A 12V 10 ft');
		await shop.say(other, '5A 12V 12 ft');
		expect(await shop.say(kim, '/log leads add Sam')).toMatch(/2 people.*U0000003, U0000009/);
		expect(await shop.say(kim, '/log leads add Nobody')).toContain('nobody called "Nobody"');
		expect(await shop.say(kim, '/log leads add <@U0000009>')).toContain('sam (U0000009) is now a lead');
		expect(await shop.say(other, '/log sign 1')).toContain('signed');
	});

	test('nobody takes the right from themselves, so one administrator always stays', async () => {
		expect(await shop.say(kim, '/log leads remove @Kim')).toMatch(/nobody called|Another administrator/);
		await shop.say(kim, '5A 12V 10 ft');
		expect(await shop.say(kim, '/log leads remove @Kim')).toContain('Another administrator');
		expect(await shop.say(kim, '/log sign 1')).toContain('signed by Kim');
	});

	test('of two administrators who remove each other at the same moment one stays', async () => {
		const alex = { id: 'U0000004', name: 'Alex', lead: true };
		await Promise.all([
			shop.say(kim, '/log leads remove U0000004'),
			shop.say(alex, '/log leads remove U0000002'),
		]);
		const signed = [await shop.say(kim, '/log sign 1'), await shop.say(alex, '/log sign 1')];
		expect(signed.filter((text) => text.includes('signed by'))).toHaveLength(1);
	});

	test('the chain holds neither the name nor the id of who was made a lead', async () => {
		await shop.say(sam, '5A 12V 10 ft');
		await shop.say(kim, '/log leads add Sam');
		const { entries } = await shop.chat.log.find('demo', { kinds: ['settings'] });
		expect(entries).toHaveLength(1);
		const [added] = entries;
		expect(JSON.stringify(added?.body)).not.toMatch(/Sam|U0000003/);
		const { entries: theirs } = await shop.chat.log.find('demo', { personId: sam.id });
		expect(added?.body).toMatchObject({ leads: 'added', personTag: theirs[0]?.personTag });
	});
});
