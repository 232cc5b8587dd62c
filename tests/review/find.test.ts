import { type Person, plainText, type Reply } from '@lugbook/chat';
import type { Entry } from '@lugbook/log';
import fc from 'fast-check';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { olderLines, openAnswers } from '../../packages/chat/src/review/open.js';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop, sam } from './shop.js';

const zone = process.env.TZ;
beforeAll(() => {
	// Six hours behind: what was asked at 03:00 UTC was asked the evening before.
	process.env.TZ = 'America/Costa_Rica';
});
afterAll(() => {
	if (zone === undefined) delete process.env.TZ;
	else process.env.TZ = zone;
});

/** Numbers of the answers that a reply lists, in its order. */
const numbersIn = (reply: Reply) =>
	[...plainText({ ...reply, buttons: [] }, { folded: false }).matchAll(/^No\. (\d+), /gm)].map((match) =>
		Number(match[1]),
	);

describe.each(DIALECTS)('finding in the log ($title)', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
	});
	afterEach(async () => {
		await shop.close();
	});
	const asks = async (person: Person, at: string, text: string, more = {}) => {
		shop.at(at);
		return (await shop.tell(person, text, more)).answer.entry as number;
	};
	const found = async (what: string, more = {}) =>
		numbersIn(await shop.tell(kim, `/log show ${what}`.trim(), more));

	/** 1 to 6, over two weeks, two people, two topics, two builds. */
	async function filled() {
		await asks(robin, '2026-04-27T15:00:00.000Z', '40A 12V 15 ft for the roof fan', { build: 'heron' });
		await asks(sam, '2026-05-01T15:00:00.000Z', '5A 12V 10 ft', { build: 'heron' });
		await asks(robin, '2026-05-03T15:00:00.000Z', '20A 12V 10 ft', { build: 'egret' });
		await asks(sam, '2026-05-05T03:00:00.000Z', '8A 12V 10 ft reading lights', { build: 'heron' });
		await asks(robin, '2026-05-05T15:00:00.000Z', 'battery: 100 Ah a day 12V lithium', { build: 'heron' });
		await asks(robin, '2026-05-05T16:00:00.000Z', 'bypass the fuse', { build: 'heron' });
		shop.at('2026-05-05T18:00:00.000Z');
	}
	const heron = { build: 'heron' };

	test('by build, topic, person, day, words, number and together', async () => {
		await filled();
		expect(await found('', heron)).toEqual([5, 4, 2, 1]);
		expect(await found('build heron')).toEqual([5, 4, 2, 1]);
		expect(await found('build "egret"')).toEqual([3]);
		expect(await found('everywhere')).toEqual([5, 4, 3, 2, 1]);
		expect(await found('wire', heron)).toEqual([4, 2, 1]);
		expect(await found('wire everywhere')).toEqual([4, 3, 2, 1]);
		expect(await found('by Sam', heron)).toEqual([4, 2]);
		expect(await found('by @robin everywhere')).toEqual([5, 3, 1]);
		expect(await found('by me everywhere')).toEqual([]);
		expect(await found('today', heron)).toEqual([5]);
		expect(await found('yesterday', heron)).toEqual([4]);
		expect(await found('2026-05-04', heron)).toEqual([4]);
		expect(await found('this week', heron)).toEqual([5, 4]);
		expect(await found('last week everywhere')).toEqual([3, 2, 1]);
		expect(await found('since 2026-05-01 until 2026-05-03 everywhere')).toEqual([3, 2]);
		expect(await found('before 2026-05-03 everywhere')).toEqual([2, 1]);
		expect(await found('2026-04-27..2026-05-01 everywhere')).toEqual([2, 1]);
		expect(await found('last month', heron)).toEqual([1]);
		expect(await found('"roof fan"', heron)).toEqual([1]);
		expect(await found('lights', heron)).toEqual([4]);
		expect(await found('refused', heron)).toEqual([6]);
		expect(await found('wire by Sam last week', heron)).toEqual([2]);
		expect(await found('wire by Sam last week reading', heron)).toEqual([]);
		expect(await shop.say(kim, '/log show 1')).toContain('40 A');
		expect(await shop.say(kim, '/log wire', heron)).toContain('No. 4, wire, Sam, 2026-05-04');
	});

	test('by state, which follows from what was done since', async () => {
		await filled();
		await shop.say(kim, '/log sign 1');
		await shop.say(kim, '/log reject 2 too long');
		await shop.say(kim, '/log ask-lead 4');
		await shop.say(kim, '/log replace 5 and 24 V');
		const replaced = (await shop.chat.log.find('demo', { replaces: 5 })).entries[0]?.number as number;
		expect(await found('signed', heron)).toEqual([1]);
		expect(await found('rejected', heron)).toEqual([2]);
		expect(await found('replaced', heron)).toEqual([5]);
		expect(await found('asked of the lead', heron)).toEqual([4]);
		expect(await found('unsigned', heron)).toEqual([replaced, 4]);
		expect(await found('unsigned wire', heron)).toEqual([4]);
		// Who decided, not who asked: No. 2 is Sam's question.
		expect(await found('rejected by Kim', heron)).toEqual([2]);
		expect(await found('answers signed by me', heron)).toEqual([1]);
		expect(await found('rejected by Sam', heron)).toEqual([]);
		expect(await shop.say(kim, '/log show rejected by Sam', heron)).toContain(
			'rejected by Sam, build "heron": none',
		);
		expect(await found('by Sam rejected', heron)).toEqual([2]);
		const list = await shop.tell(kim, '/log show', heron);
		const struck = list.parts.filter((part) => part.struck === true).map(({ text }) => text);
		expect(struck).toHaveLength(2);
		expect(struck[0]).toMatch(new RegExp(`^No\\. 5, .*\\(replaced by No\\. ${replaced}\\)`));
		expect(struck[1]).toMatch(/^No\. 2, .*\(rejected\)/);
	});

	test('pages follow each other by a button without a gap or a double, whatever was asked meanwhile', async () => {
		for (let count = 1; count <= 30; count += 1) {
			await asks(count % 2 === 0 ? robin : sam, '2026-05-04T15:00:00.000Z', `${count}A 12V 10 ft`, heron);
		}
		for (const [what, expected] of [
			['', 30],
			['wire by Robin today', 15],
			['unsigned', 30],
		] as const) {
			const before = (await shop.chat.log.head('demo'))?.number ?? 0;
			const seen: number[] = [];
			let reply = await shop.tell(kim, `/log show ${what}`.trim(), heron);
			for (;;) {
				seen.push(...numbersIn(reply));
				const [more] = reply.buttons;
				if (more === undefined) break;
				expect(more.action).toBe('more');
				await asks(robin, '2026-05-04T15:30:00.000Z', '3A 12V 3 ft', heron);
				// Pressed on a later day and in another channel's eyes, it still means the same answers.
				shop.at('2026-06-20T12:00:00.000Z');
				reply = await shop.tell(kim, `/log more ${more.value}`);
			}
			expect(seen, what).toEqual([...new Set(seen)].sort((a, b) => b - a));
			expect(seen.filter((number) => number <= 30)).toHaveLength(expected);
			expect(Math.max(...seen)).toBeLessThanOrEqual(before);
			shop.at('2026-05-04T16:00:00.000Z');
		}
	});

	test('the one in a state is found behind thousands, and a list that looked through no more of them says so', async () => {
		await filled();
		await shop.say(kim, '/log reject 1 too long');
		await shop.say(kim, '/log replace 4 and 24 V');
		const { log } = shop.chat;
		const {
			number: _,
			hash: __,
			previousHash: ___,
			personTag: ____,
			erased: _____,
			...like
		} = (await log.entry('demo', 2)) as Entry;
		const first = ((await log.head('demo'))?.number ?? 0) + 1;
		// All signed: as many as are looked through for a page, and one more.
		const count = 2001;
		await Promise.all(
			Array.from({ length: count }, (_, at) => log.append({ ...like, delivery: `answer ${at}` })),
		);
		await Promise.all(
			Array.from({ length: count }, (_, at) =>
				log.append({
					...{
						...like,
						kind: 'signed',
						delivery: `signed ${at}`,
						follows: first + at,
						state: null,
						topic: null,
					},
					...{
						personId: kim.id,
						personName: kim.name,
						text: '',
						body: { meaning: 'checked', ownQuestion: false },
					},
				}),
			),
		);
		expect(await found('rejected', heron)).toEqual([1]);
		expect(await found('rejected "roof fan" everywhere')).toEqual([1]);
		expect(await found('rejected lights', heron)).toEqual([]);
		expect(await found('replaced', heron)).toEqual([4]);
		expect(await found('signed', heron)).toEqual(
			Array.from({ length: 8 }, (_, at) => first + count - 1 - at),
		);
		const reply = await shop.tell(kim, '/log show unsigned', heron);
		const [more] = reply.buttons;
		expect(numbersIn(reply)).toEqual([]);
		expect(plainText({ ...reply, buttons: [] })).toContain(`of 2000 answers down to No. ${first + 1}, 0 fit`);
		expect(numbersIn(await shop.tell(kim, `/log more ${more?.value}`, heron))).toEqual([first - 1, 5, 2]);
		expect(await shop.say(kim, '/log review', heron)).toContain('3 unsigned in build "heron"');
		expect(await shop.say(kim, '/log digest now')).toMatch(/^To look at: [1-9]\d* unsigned/);
		// With fewer to look at, it says what was left out.
		const newest = await openAnswers(log, 'demo', { build: 'heron' }, 700);
		expect([newest.open, newest.amongNewest]).toEqual([[], 700]);
		expect(olderLines(newest.amongNewest)).toEqual([expect.stringContaining('the newest 700 answers')]);
	});

	test('a page fits a phone: no line longer than its headline, eight answers at most', async () => {
		for (let count = 1; count <= 9; count += 1) {
			await asks(robin, '2026-05-04T15:00:00.000Z', `${count}A 12V 10 ft`);
		}
		const reply = await shop.tell(kim, '/log show');
		expect(numbersIn(reply)).toHaveLength(8);
		for (const part of reply.parts.slice(1, 9)) {
			const [head = '', headline, ...rest] = part.text.split('\n');
			expect(head.length).toBeLessThanOrEqual(60);
			expect(headline).toMatch(/AWG/);
			expect(rest).toEqual([]);
		}
	});

	test.each([
		['5/4', 'could be two days'],
		['2026-02-30', 'no day of the calendar'],
		['by Nobody', 'nobody called "Nobody"'],
	])('%s is said back', async (what, why) => {
		await filled();
		const reply = await shop.tell(kim, `/log show ${what}`);
		expect(reply.answer.headline).toContain(why);
		expect(reply.audience).toBe('asker');
	});

	test('nobody finds what belongs to another shop: by words, person, number, page or build', async () => {
		await filled();
		const other = { shop: 'other' };
		for (const what of ['everywhere', 'build heron', 'fan', 'wire', 'refused', '2026-05-04']) {
			expect(await found(what, other), what).toEqual([]);
		}
		expect(await shop.say(kim, '/log show by Sam', other)).toContain('nobody called "Sam"');
		expect(await shop.say(kim, '/log show 1', other)).toContain('no answer No. 1');
		expect(await shop.say(kim, '/log more 6 build "heron"', other)).not.toContain('AWG');
		expect(await shop.say(kim, `/log more 6 by "${sam.id}"`, other)).not.toContain('AWG');
	});

	test('a person who was forgotten is not found by name, the answer is', async () => {
		await filled();
		await shop.chat.log.forget('demo', sam.id);
		expect(await shop.say(kim, '/log show by Sam', heron)).toContain('nobody called "Sam"');
		expect(await found('wire', heron)).toEqual([4, 2, 1]);
		expect(await shop.say(kim, '/log show wire', heron)).toContain('No. 4, wire, forgotten, 2026-05-04');
		expect(await found('lights', heron)).toEqual([]);
	});

	test('whatever is typed is answered', async () => {
		await filled();
		const piece = fc.constantFrom(
			...[
				'by',
				'build',
				'"',
				'since',
				'until',
				'2026-05-04',
				'..',
				'last',
				'week',
				'today',
				'signed',
				'wire',
			],
			...['everywhere', '<@U1>', '@', '\u{1F6B0}', '40', 'A', "'", '*', '(', ')', '\\', '%', '_', ':', '-'],
		);
		const said = fc.oneof(
			fc.array(piece, { maxLength: 8 }).map((words) => words.join(' ')),
			fc.string({ unit: 'binary', maxLength: 60 }),
		);
		await fc.assert(
			fc.asyncProperty(said, async (words) => {
				const reply = await shop.tell(kim, `/log show ${words}`);
				expect(reply.answer.headline).not.toBe('');
				const [more] = reply.buttons.filter(({ action }) => action === 'more');
				if (more !== undefined) await shop.tell(kim, `/log more ${more.value}`);
			}),
			{ numRuns: 100 },
		);
	});
});
