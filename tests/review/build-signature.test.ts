import { bookFiles } from '@lugbook/chat';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop, sam } from './shop.js';

const lee = { id: 'U0000005', name: 'Lee', lead: true };

describe.each(DIALECTS)('the signature under a build as a whole ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
		await shop.say(robin, '/build use heron');
		await shop.say(robin, '40A 12V 15 ft');
		await shop.say(robin, '3A 12V 10 ft');
	});
	afterEach(async () => {
		await shop.close();
	});
	const html = async (build = 'heron', name = 'demo') => {
		const files = await bookFiles(shop.chat.log, {
			shop: name,
			build,
			format: 'html',
			context: { region: 'us', units: 'us', language: 'en' },
			date: '2026-05-04',
		});
		const [page] = files ?? [];
		if (page === undefined || page.bytes instanceof Uint8Array) throw new Error('there is no book');
		const chunks: Uint8Array[] = [];
		for await (const chunk of page.bytes) chunks.push(chunk);
		return Buffer.concat(chunks)
			.toString('utf8')
			.replaceAll(/<[^>]+>/g, ' ')
			.replaceAll(/\s+/g, ' ');
	};
	const signAll = async () => {
		await shop.say(kim, '/log sign 2');
		await shop.say(kim, '/log sign 3');
	};

	test('is refused while an answer is unsigned, and the refusal names it; then covers what it says', async () => {
		const refused = await shop.tell(kim, '/log sign build');
		expect(refused.audience).toBe('asker');
		expect(refused.answer.headline).toContain('2 not checked (No. 2, 3)');
		expect(await shop.kinds()).not.toContain('build-signed');
		expect(await shop.say(kim, '/log review')).toContain('is not signed as a whole');
		expect(await html()).toContain('NOT SIGNED AS A WHOLE');
		await shop.say(sam, '/log comment 2 tight bend');
		expect(await shop.say(kim, '/log review')).toMatch(/No\. 2 .*\(1 comment\)/);
		await signAll();
		const head = await shop.chat.log.head('demo');
		const said = await shop.say(kim, '/log sign build ready for the road');
		expect(said).toContain('Build "heron" signed as a whole by Kim, 2026-05-04 12:00 UTC (No. 8)');
		expect(said).toContain(`up to No. ${head?.number}, hash ${head?.hash}`);
		expect(said).toContain('2 of 2 answers have a signature that holds; nothing is open');
		expect(await shop.say(sam, '/log review')).toMatch(
			/is signed as a whole by Kim, 2026-05-04 12:00 UTC \(No\. 8\), as it stood at No\. 7: checked and approved as a whole: ready for the road/,
		);
		const cover = await html();
		expect(cover).toContain('SIGNED by Kim, 2026-05-04 12:00 UTC (No. 8)');
		expect(cover).toContain(`the log up to No. 7 (signed answers: 2), hash ${head?.hash}`);
		expect((await shop.chat.log.verify('demo')).ok).toBe(true);
	});

	test.each([
		['a new answer', robin, '10A 12V 8 ft', true],
		['a change of the van', robin, '/build describe fridge 60 W', true],
		['a rejected answer', kim, '/log reject 2 too thin', true],
		['an answer in place of another', robin, '/log replace 2 and at 20 ft', true],
		['a signature withdrawn under an answer', kim, '/log withdraw 2 measured wrongly', true],
		['an answer asked of the lead', robin, '/log ask-lead 2', false],
		['a word on an answer', robin, '/log comment 2 nice and short', false],
		['a question about an answer', robin, '/log show 2', false],
		['work on another build', robin, '/build use wren', false],
	])('%s: is it out of date?', async (_, person, text, changes) => {
		await signAll();
		await shop.say(kim, '/log sign build');
		await shop.say(person, text);
		const review = await shop.say(sam, '/log review', { build: 'heron' });
		expect(review.includes('OUT OF DATE')).toBe(changes);
		expect(review.includes('is signed as a whole')).toBe(!changes);
		expect((await html()).includes('SIGNATURE OUT OF DATE')).toBe(changes);
		if (!changes) return;
		expect(review).toMatch(/changed since by No\. 7/);
		await shop.say(kim, '/log sign build anyway it is the last one');
		expect(await shop.say(sam, '/log review')).toContain('is signed as a whole');
	});

	test('a danger or a rejected answer stands in the way of it, unless said why, and the signature says so', async () => {
		await shop.say(robin, '100A 12V 3 ft 10 AWG ok?');
		await signAll();
		await shop.say(kim, '/log sign 4');
		const refused = await shop.say(kim, '/log sign build');
		expect(refused).toMatch(/still open: 1 danger \(No\. 4\)/);
		await shop.say(kim, '/log reject 3 wrong cable');
		expect(await shop.say(kim, '/log sign build')).toContain('1 rejected (No. 3)');
		expect(await shop.say(kim, '/log review')).toContain('nothing in their place yet: No. 3');
		expect(await shop.say(kim, '/log sign build anyway')).toContain('Say why');
		expect(await shop.kinds()).not.toContain('build-signed');
		const said = await shop.say(kim, '/log sign build anyway the run is taken out again');
		expect(said).toContain('approved as a whole, with what is open: the run is taken out again');
		expect(said).toMatch(/open all the same: 1 danger \(No\. 4\); 1 rejected \(No\. 3\)/);
		for (const text of [await html(), await shop.say(sam, '/log review')]) {
			expect(text).toMatch(/1 danger \(No\. 4\); 1 rejected \(No\. 3\)/);
			expect(text).toContain('the run is taken out again');
		}
	});

	test('nobody but a lead of the shop signs, at that moment, and each refusal is kept', async () => {
		await signAll();
		expect(await shop.say(sam, '/log sign build')).toContain('for the leads');
		expect(await shop.say(sam, '/log sign build anyway I say so')).toContain('for the leads');
		await shop.say(kim, '/log leads add U0000003');
		await shop.say(kim, '/log leads remove U0000003');
		expect(await shop.say(sam, '/log sign build')).toContain('for the leads');
		expect((await shop.kinds()).filter((kind) => kind === 'refused-action')).toHaveLength(3);
		expect(await shop.kinds()).not.toContain('build-signed');
	});

	test('a lead of one shop signs nothing in another, and no build that holds nothing', async () => {
		await shop.say(kim, '/log leads add U0000003');
		const elsewhere = { shop: 'other', build: 'heron' };
		expect(await shop.say(sam, '/log sign build', elsewhere)).toContain('for the leads');
		expect(await shop.say(kim, '/log sign build', elsewhere)).toContain('nothing of build "heron"');
		expect(await shop.say(kim, '/log sign build', { channel: 'c9' })).toContain('No build is chosen');
		await signAll();
		await shop.say(kim, '/log sign build');
		expect(await shop.say(kim, '/log review', elsewhere)).toContain('is not signed as a whole');
	});

	test("what a lead asked is signed by another first; the shop's leave is said in the signature", async () => {
		await shop.say(kim, '5A 12V 4 ft');
		await signAll();
		for (const text of ['sign build', 'sign build anyway in a hurry'])
			expect(await shop.say(kim, `/log ${text}`)).toContain('No. 4 is your own question');
		expect(await shop.say(lee, '/log sign build anyway it waits')).toContain('signed as a whole by Lee');
		await shop.say(kim, '/log own-signature on');
		expect(await shop.say(kim, '/log sign build anyway alone here')).toContain(
			'answers to their own questions',
		);
		expect(await html()).toContain('own questions among them, as this shop allows');
	});

	test('its name and reason go when the person is forgotten; what it covers stays', async () => {
		await shop.say(kim, '/log sign build anyway for the fair');
		await shop.say(kim, '/log forget-me confirm');
		const review = await shop.say(sam, '/log review');
		expect(review).toContain('signed as a whole by somebody who was forgotten');
		expect(review).toContain('2 not checked (No. 2, 3)');
		expect(review).not.toContain('fair');
		expect((await shop.chat.log.verify('demo')).ok).toBe(true);
	});

	test('a lead withdraws it: it is no signature any more, stays in the log, and can be given anew', async () => {
		await signAll();
		await shop.say(kim, '/log sign build ready for the road');
		const signed = (await shop.kinds()).length;
		const said = await shop.tell(lee, '/log withdraw build the roof fan was not tried');
		expect(said.audience).toBe('channel');
		expect(said.answer.headline).toBe(
			`The signature under build "heron" as a whole (No. ${signed}) is WITHDRAWN by Lee, 2026-05-04 12:00 UTC (No. ${signed + 1}): the roof fan was not tried`,
		);
		const review = await shop.say(sam, '/log review');
		expect(review).toContain(`WITHDRAWN by Lee, 2026-05-04 12:00 UTC (No. ${signed + 1}): the roof fan`);
		expect(review).not.toContain('is signed as a whole');
		const cover = await html();
		expect(cover).toContain(`SIGNATURE WITHDRAWN: signed by Kim, 2026-05-04 12:00 UTC (No. ${signed})`);
		expect(cover).toContain(`by Lee, 2026-05-04 12:00 UTC (No. ${signed + 1}): the roof fan was not tried`);
		expect(await shop.say(sam, `/log show ${signed}`)).toContain(
			`WITHDRAWN by Lee, 2026-05-04 12:00 UTC (No. ${signed + 1})`,
		);
		expect(await shop.say(sam, `/log show ${signed}`)).not.toContain('it holds');
		expect(await shop.say(sam, `/log show ${signed + 1}`)).toContain(
			`it withdraws the signature under build "heron" as a whole (No. ${signed}), by Lee`,
		);
		expect(await shop.say(kim, '/log withdraw build again')).toContain('was withdrawn already');
		await shop.say(kim, '/log sign build');
		expect(await shop.say(sam, '/log review')).toContain('is signed as a whole by Kim');
		expect(await html()).not.toContain('WITHDRAWN');
		expect(await shop.say(sam, `/log show ${signed}`)).toContain('WITHDRAWN');
		expect((await shop.chat.log.verify('demo')).ok).toBe(true);
	});

	test('withdrawing is for leads, says why, needs a signature, and its refusals are kept', async () => {
		const refusals = async () => (await shop.kinds()).filter((kind) => kind === 'refused-action').length;
		expect(await shop.say(kim, '/log withdraw build no reason')).toContain('has no signature as a whole');
		await signAll();
		await shop.say(kim, '/log sign build');
		const told = await shop.tell(sam, '/log withdraw build I say so');
		expect(told.audience).toBe('asker');
		expect(told.answer.headline).toContain('for the leads');
		expect(await refusals()).toBe(2);
		expect(await shop.say(kim, '/log withdraw build')).toContain('Say why');
		expect(await shop.say(kim, '/log withdraw build x', { channel: 'c9' })).toContain('No build is chosen');
		expect(await shop.say(kim, '/log withdraw build x', { shop: 'other', build: 'heron' })).toContain(
			'has no signature as a whole',
		);
		expect(await shop.say(sam, '/log review')).toContain('is signed as a whole by Kim');
	});

	test('one that is out of date can be withdrawn too; who withdrew is forgotten by name, the withdrawal stands', async () => {
		await signAll();
		await shop.say(kim, '/log sign build');
		await shop.say(robin, '10A 12V 8 ft');
		await shop.say(lee, '/log unsign build mixed up with the other van');
		await shop.say(lee, '/log forget-me confirm');
		const review = await shop.say(sam, '/log review');
		expect(review).toContain('is WITHDRAWN by somebody who was forgotten');
		expect(review).not.toContain('mixed up');
		expect(await html()).toContain('SIGNATURE WITHDRAWN: signed by Kim');
		expect(await html()).not.toContain('mixed up');
	});

	test('a second delivery of the same message signs once', async () => {
		await signAll();
		await shop.say(kim, '/log sign build', { delivery: 'same' });
		await shop.say(kim, '/log sign build', { delivery: 'same' });
		expect((await shop.kinds()).filter((kind) => kind === 'build-signed')).toHaveLength(1);
	});
});

describe.each(DIALECTS)('a question worked out again from its build ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
		await shop.say(robin, '/build use heron');
		await shop.say(robin, '/build describe fridge 60 W, battery bank 4 x 100Ah lifepo4 12V');
		await shop.say(robin, 'wire for the fridge 15 ft');
		await shop.say(robin, '/build describe fridge 90 W');
	});
	afterEach(async () => {
		await shop.close();
	});
	const newest = async () => {
		const { entries } = await shop.chat.log.find('demo', { kinds: ['exchange'], limit: 1 });
		return entries[0]?.number as number;
	};

	test('is still the question of whoever asked it: the lead who did not ask signs, and the papers name both', async () => {
		expect(await shop.say(kim, '/build rerun')).toContain('replaces No. 3');
		const number = await newest();
		expect(await shop.say(kim, `/log sign ${number}`)).toContain(
			'signed by Kim, checked and approved, worked out again by the signer',
		);
		expect(await shop.say(sam, `/log show ${number}`)).toContain(
			'Asked by Robin in No. 3, worked out again from the build by Kim',
		);
		const sheet = (await shop.say(sam, `/log sheet ${number}`)).replaceAll(/\s+/g, ' ');
		expect(sheet).toContain('put the question (No. 3)');
		expect(sheet).toContain('wire for the fridge 15 ft');
		expect(sheet).toMatch(/asked again .*Kim/);
		expect(sheet).not.toContain('own question');
	});

	test('stays the own question of a lead who asked it, whoever had it worked out again, however often', async () => {
		await shop.say(kim, '/log own-signature off');
		await shop.say(lee, 'wire for the fridge 12 ft');
		const asked = await newest();
		await shop.say(robin, '/build describe fridge 70 W');
		await shop.say(kim, '/build rerun');
		await shop.say(robin, '/build describe fridge 80 W');
		await shop.say(sam, '/build rerun');
		const number = await newest();
		expect(number).toBeGreaterThan(asked);
		expect(await shop.say(lee, `/log sign ${number}`)).toContain('your own question');
		expect(await shop.say(sam, `/log replace ${number} and at 20 ft`)).toContain('whoever asked it');
		expect(await shop.say(kim, `/log sign ${number}`)).toContain('signed by Kim, checked and approved:');
	});

	test("changed by a lead it is that lead's own question", async () => {
		await shop.say(kim, '/build rerun');
		await shop.say(kim, `/log replace ${await newest()} and at 20 ft`);
		expect(await shop.say(kim, `/log sign ${await newest()}`)).toContain('your own question');
	});
});
