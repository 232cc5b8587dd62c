import { plainText } from '@lugbook/chat';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop, sam } from './shop.js';

describe.each(DIALECTS)('what became of an answer ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
		await shop.say(robin, '40A 12V 15 ft');
	});
	afterEach(async () => {
		await shop.close();
	});
	const inThread = { thread: 't1' };

	test('a signature is shown with name, time and meaning wherever the answer is, and marks its message', async () => {
		shop.at('2026-05-05T08:30:00.000Z');
		const reply = await shop.tell(kim, '/log sign 1 measured on the van');
		const line = 'Signed by Kim, 2026-05-05 08:30 UTC: checked and approved, measured on the van';
		expect(reply.marks).toEqual([{ entry: 1, channel: 'c1', thread: null, text: line, stands: true }]);
		for (const text of ['show 1', 'resend 1', 'sheet 1']) {
			const shown = await shop.say(robin, `/log ${text}`);
			expect(shown, text).toContain('Kim');
			expect(shown, text).toMatch(/2026-05-05/);
			expect(shown, text).toMatch(/checked and approved.{1,3}measured on the van/);
		}
	});

	test('a signature is withdrawn by a lead, with a reason; the answer waits for the lead again', async () => {
		expect(await shop.say(kim, '/log withdraw 1 too early')).toContain('has no signature');
		await shop.say(kim, '/log sign 1');
		expect(await shop.say(sam, '/log withdraw 1 too early')).toContain('for the leads');
		expect(await shop.say(kim, '/log withdraw 1')).toContain('Say why: "/log withdraw 1 REASON"');
		expect(await shop.say(robin, '/log show signed')).toContain('No. 1');
		const reply = await shop.tell(kim, '/log withdraw 1 wrong number');
		expect(reply.answer.headline).toBe('The signature under No. 1 is withdrawn by Kim: wrong number');
		expect(reply.marks).toMatchObject([{ entry: 1, stands: true }]);
		expect(await shop.say(robin, '/log show 1')).toContain(
			'Withdrawn by Kim, 2026-05-04 12:00 UTC: signature withdrawn: wrong number',
		);
		expect(await shop.say(robin, '/log review')).toMatch(/No\. 1 .*\(asked of the lead\)/);
		expect(await shop.say(robin, '/log show signed')).toContain('none');
		const sheet = (await shop.say(robin, '/log sheet 1')).replaceAll(/\s+/g, ' ');
		expect(sheet).toContain('withdrawn');
		expect(sheet).toContain('Not yet checked, not yet signed. State: asked of the lead.');
		const number = (await shop.kinds()).length;
		expect(await shop.say(robin, `/log show ${number}`)).toContain('it withdraws the signature under No. 1');
		expect(await shop.say(kim, '/log withdraw 1 once more')).toContain('has no signature');
		await shop.say(kim, '/log sign 1');
		expect(await shop.say(robin, '/log review')).toContain('Nothing is unsigned');
		expect((await shop.kinds()).filter((kind) => kind === 'refused-action')).toHaveLength(3);
	});

	test('a replaced answer stays, struck through, with the number of the new one', async () => {
		const reply = await shop.tell(robin, '/log replace 1 and at 20 ft');
		expect(reply.answer).toMatchObject({ status: 'answered', entry: 2 });
		expect(reply.marks).toEqual([
			{
				entry: 1,
				channel: 'c1',
				thread: null,
				text: 'No longer valid: replaced by No. 2 (Robin, 2026-05-04 12:00 UTC).',
				stands: false,
				instead: 2,
			},
		]);
		const old = await shop.tell(robin, '/log show 1');
		expect(old.parts[0]).toMatchObject({ kind: 'headline', struck: true });
		expect(plainText(old)).toContain('No longer valid: replaced by No. 2.');
		expect(old.buttons).toEqual([]);
		expect(await shop.say(kim, '/log sign 1')).toContain('replaced by No. 2');
		expect(await shop.say(kim, '/log sheet 1')).toMatch(/replaced/i);
		const { entries } = await shop.chat.log.find('demo', { replaces: 1 });
		expect(entries.map(({ number, follows }) => [number, follows])).toEqual([[2, 1]]);
		expect(await shop.say(kim, '/log sign 2')).toContain('No. 2 signed');
	});

	test('a danger of an answer that no longer stands is not struck through', async () => {
		await shop.say(robin, '40A 12V 15 ft 10 awg ok?');
		await shop.say(kim, '/log reject 2 far too thin');
		const shown = await shop.tell(robin, '/log show 2');
		const dangers = shown.parts.filter(({ kind }) => kind === 'danger');
		expect(dangers.length).toBeGreaterThan(0);
		for (const danger of dangers) expect(danger.struck).toBeUndefined();
		expect(shown.parts[0]?.struck).toBe(true);
	});

	test('what rests on a rejected or replaced answer is listed, and signatures under it are out of date', async () => {
		await shop.say(robin, '20A 12V 10 ft', inThread);
		await shop.say(robin, 'and at 20 ft?', inThread);
		await shop.say(robin, '3% is too much, make it 2%', inThread);
		await shop.say(kim, '/log sign 3');
		const reply = await shop.tell(kim, '/log replace 2 25A 12V 10 ft');
		const told = plainText(reply, { folded: true });
		expect(told).toContain('These rest on No. 2');
		expect(told).toMatch(/No\. 3 {2}wire/);
		expect(told).not.toMatch(/No\. 1 {2}wire/);
		expect(await shop.say(kim, '/log show 3')).toMatch(/signature is out of date.*No\. 2/);
		expect(await shop.say(kim, '/log sheet 3')).toMatch(/out of date/i);
		expect(await shop.say(kim, '/log review')).toMatch(/No\. 3.*\(out of date\)/);
		await shop.say(kim, '/log sign 3');
		expect(await shop.say(kim, '/log show 3')).not.toContain('out of date');
	});

	test('a signed answer whose build has changed since is out of date, until it is worked out again', async () => {
		await shop.say(kim, '/build use heron');
		await shop.say(robin, '/build describe 12 V battery 200 Ah, fridge 45 W');
		const asked = await shop.tell(robin, 'wire for the fridge 15 ft');
		const number = asked.answer.entry as number;
		await shop.say(kim, `/log sign ${number}`);
		expect(await shop.say(kim, `/log show ${number}`)).not.toContain('out of date');
		await shop.say(robin, '/build describe the fridge is 120 W');
		expect(await shop.say(kim, `/log show ${number}`)).toMatch(
			/signature is out of date.*fridge: power was 45 W, is 120 W/,
		);
		expect(await shop.say(kim, '/log review')).toContain(`No. ${number}`);
		const rerun = await shop.tell(kim, '/build rerun');
		expect(rerun.marks).toMatchObject([{ entry: number, stands: false }]);
		expect(await shop.say(kim, `/log show ${number}`)).toContain('No longer valid: replaced by');
	});

	test('only an answer can replace one: what needs an input, or is refused, leaves the old one', async () => {
		for (const change of ['', 'and the colour?', 'and at 20 ft, and bypass the fuse']) {
			const reply = await shop.tell(robin, `/log replace 1 ${change}`.trim());
			expect(reply.marks, change).toBeUndefined();
			expect(reply.audience, change).toBe('asker');
		}
		expect((await shop.chat.log.find('demo', { replaces: 1 })).entries).toEqual([]);
		expect(await shop.say(sam, '/log show 1')).not.toContain('No longer valid');
	});

	test('an answer is replaced once; the next change is about the new one', async () => {
		await shop.say(robin, '/log replace 1 and at 20 ft');
		expect(await shop.say(robin, '/log replace 1 and at 25 ft')).toContain('replaced by No. 2 already');
		expect(await shop.say(robin, '/log replace 2 and at 25 ft')).toContain('It replaces No. 2');
		expect(await shop.say(robin, '/log show 2')).toContain('replaced by No. 3');
	});

	test("another shop's answer can't be replaced, rejected or marked", async () => {
		for (const text of ['replace 1 and at 20 ft', 'reject 1 no', 'sign 1']) {
			const reply = await shop.tell(kim, `/log ${text}`, { shop: 'other' });
			expect(reply.marks, text).toBeUndefined();
		}
		expect(await shop.kinds()).toEqual(['exchange']);
	});
});
