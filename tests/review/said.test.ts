/** What a lead types without knowing the verbs: it is understood, or nothing is done and the reply says what would do. */

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop } from './shop.js';

describe.each(DIALECTS)('the log asked in plain words ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
		await shop.say(robin, '/build use heron');
		for (const length of [10, 15, 20]) await shop.say(robin, `40A 12V ${length} ft`);
	});
	afterEach(async () => {
		await shop.close();
	});

	test.each([
		'sign all',
		'sign all of heron',
		'sign 3 and 4',
		'sign 3, 4',
		'sign 3 4',
		'sign everything',
		'reject 3 and 4 wrong length',
		'unsign all',
	])('"%s" does nothing and says so', async (text) => {
		const before = await shop.kinds();
		expect(await shop.say(kim, `/log ${text}`)).toContain('Nothing was done');
		expect(await shop.kinds()).toEqual(before);
	});

	test.each([
		['sign no. 3', /No\. 3 signed by Kim/],
		['approve 3 looks good', /No\. 3 signed by Kim, .*looks good/],
		['sign 3, 4 mm lug seen', /No\. 3 signed by Kim, .*4 mm lug seen/],
		['reject 3: too thin', /No\. 3 rejected by Kim: too thin/],
		['whats left to sign', /3 unsigned in build "heron"/],
		["what's open?", /3 unsigned in build "heron"/],
		['who signed the build?', /is not signed as a whole/],
		['who signed 3', /^4 AWG copper/],
		['find copper', /Answers: "copper"/],
		['csv', /The book of build "heron": .*csv/],
		['show me everything unsigned', /^Answers: unsigned, build "heron"/],
	])('"%s" is understood', async (text, reply) => {
		expect(await shop.say(kim, `/log ${text}`)).toMatch(reply);
	});

	test('a reason behind a colon is the reason; a signature under "the build" can be withdrawn as it was given', async () => {
		await shop.say(kim, '/log reject 3: too thin');
		expect(await shop.say(kim, '/log show 3')).toMatch(/Rejected by Kim, .*: rejected: too thin/);
		expect(await shop.say(kim, '/log sign the build anyway it leaves today')).toContain('it leaves today');
		expect(await shop.say(kim, '/log review')).toContain('it leaves today');
		expect(await shop.say(kim, '/log withdraw the signature under the build it came back')).toContain(
			'is WITHDRAWN by Kim',
		);
	});
});
