/** Every number of the log can be shown: answers as answers, everything else as what it is. */

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop, sam } from './shop.js';

/** A day in a shop that leaves every kind of entry that people make, with what its number says of itself. */
const day = [
	[robin, '/build use heron', 'is no answer: a channel was set to build "heron", by Robin'],
	[robin, '40A 12V 15 ft', '4 AWG copper'],
	[robin, '/build describe fridge 60 W, 2 batteries 100 Ah', 'it tells of build "heron", by Robin'],
	[sam, '/log sign 2', 'something was refused to Sam'],
	[sam, '/log comment 2 tight bend, mind it', 'it is a comment on No. 2, by Sam'],
	[robin, '/log ask-lead 2', 'it asks the lead about No. 2, by Robin'],
	[kim, '/log reject 2 too thin', 'it is the rejection of No. 2, by Kim'],
	[kim, '/log sign 2 on second thought', 'it is the signature under No. 2, by Kim'],
	[robin, '3A 12V 10 ft', 'copper'],
	[kim, '/log sign build anyway the fuse follows', 'the signature under build "heron" as a whole, by Kim'],
	[kim, '/log own-signature on', 'a setting was changed by Kim'],
	[kim, '/log leads add @Robin', 'a setting was changed by Kim'],
	[kim, '/log digest on 07:00', 'a setting was changed by Kim'],
	[robin, 'the fridge is 80 W', 'it tells of build "heron", by Robin'],
] as const;

describe.each(DIALECTS)('a number that is no answer ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
		for (const [person, text] of day) await shop.say(person, text);
	});
	afterEach(async () => {
		await shop.close();
	});

	test('is shown as what it is, by show and by sheet', async () => {
		expect(await shop.kinds()).toHaveLength(day.length);
		for (const [index, [, , words]] of day.entries()) {
			const number = index + 1;
			const shown = await shop.say(kim, `/log show ${number}`);
			expect(shown).toContain(words);
			expect(shown).not.toContain('There is no');
			if (number !== 2 && number !== 9) expect(await shop.say(kim, `/log sheet ${number}`)).toBe(shown);
		}
	});

	test('says what it is about, in the words of whoever did it', async () => {
		expect(await shop.say(sam, '/log show 5')).toMatch(
			/2026-05-04 12:00 UTC\nIt says: comment: tight bend, mind it\nAbout No\. 2 .*4 AWG/,
		);
		expect(await shop.say(sam, '/log show 7')).toContain('rejected: too thin');
		expect(await shop.say(sam, '/log show 8')).toContain('checked and approved: on second thought');
		const build = await shop.say(sam, '/log show 10');
		expect(build).toContain('with what is open: the fuse follows');
		expect(build).toMatch(/It covers the log up to No\. 9, hash [0-9a-f]{64}/);
		expect(build).toContain('Open when it was signed: 1 not checked (No. 9)');
		expect(build).toContain('OUT OF DATE: the build was changed since by No. 14');
		expect(build).not.toContain('another hash');
		expect(await shop.say(sam, '/log show 3')).toMatch(/battery bank: .*100 Ah/);
		expect(await shop.say(sam, '/log show 14')).toMatch(/fridge: power 80 W/);
		expect(await shop.say(sam, '/log show 14')).not.toContain('100 Ah');
	});

	test('a refusal and a setting are told to the asker alone, with what they were', async () => {
		for (const number of [4, 11, 12, 13])
			expect((await shop.tell(sam, `/log show ${number}`)).audience).toBe('asker');
		for (const number of [1, 3, 5, 8, 10])
			expect((await shop.tell(sam, `/log show ${number}`)).audience).toBe('channel');
		expect(await shop.say(sam, '/log show 4')).toContain('Signing is for the leads of this shop.');
		expect(await shop.say(sam, '/log show 11')).toContain('Leads may sign answers to their own questions.');
		expect(await shop.say(sam, '/log show 12')).toContain('Robin was made a lead.');
		expect(await shop.say(sam, '/log show 13')).toContain('The daily digest comes at 07:00.');
	});

	test('keeps the names of those who were forgotten to itself', async () => {
		await shop.say(sam, '/log forget-me confirm');
		const shown = await shop.say(kim, '/log show 5');
		expect(shown).toContain('by somebody who was forgotten');
		expect(shown).not.toMatch(/Sam|tight bend/);
		expect(await shop.say(kim, `/log show ${day.length + 1}`)).toContain(
			'Name and words are erased from entries of theirs: 2.',
		);
	});

	test('a question without an answer has no sheet, and the way to what was said', async () => {
		await shop.say(robin, 'wire for the stove 12V');
		const number = day.length + 1;
		expect(await shop.say(kim, `/log sheet ${number}`)).toBe(
			`No. ${number} has no calculation: "/log show ${number}" shows what was said.`,
		);
		expect(await shop.say(kim, `/log show ${number}`)).toContain('?');
	});
});
