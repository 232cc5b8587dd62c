/** Finding where there are more entries than are looked through one by one: against a plain filter over all of them. */

import { type Entry, type FindOptions, type Log, openLog } from '@lugbook/log';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DIALECTS } from './databases.js';
import { entryOf } from './entries.js';

const ENTRIES = 3400;
/** The list of PostgreSQL is parted by ids: they shall not all be in its first part. */
async function startIds(url: string, first: number): Promise<void> {
	const client = new pg.Client(url);
	await client.connect();
	await client.query(`alter table entries alter column id restart with ${first}`);
	await client.end();
}

const START_MS = Date.UTC(2026, 0, 1);

/** With what it has gathered about the words of the log, the server is asked otherwise: this is done by and by. */
async function gathered(url: string): Promise<void> {
	const client = new pg.Client(url);
	await client.connect();
	await client.query('analyze term_index');
	await client.end();
}

const cases = [
	...DIALECTS.map((dialect) => ({ ...dialect, isGathered: false })),
	...DIALECTS.filter(({ title }) => title === 'PostgreSQL').map((dialect) => ({
		...dialect,
		title: 'PostgreSQL that knows the words',
		isGathered: true,
	})),
];

describe.each(cases)('finding among many ($title)', ({ fresh: freshLog, title, isGathered }) => {
	let log: Log;
	let remove: () => Promise<void>;
	let all: Entry[];

	beforeAll(async () => {
		const fresh = await freshLog();
		remove = fresh.remove;
		log = await openLog(fresh.url);
		// Written where that is quick, in the order in which they come, and brought over both shops at once.
		const source = await openLog('sqlite::memory:');
		if (title !== 'SQLite') await startIds(fresh.url, 32_768 - 1500);
		const waiting: Promise<unknown>[] = [];
		for (let at = 1; at <= ENTRIES; at += 1) {
			// A clock that is put back now and then: days and numbers do not run side by side.
			const clockMs = START_MS + at * 600_000 - (at % 50 === 0 ? 5 * 86_400_000 : 0);
			const words = [
				'job',
				at % 3 === 0 ? 'pump' : 'fan',
				at <= 40 ? 'early' : '',
				at === 1234 ? 'single' : '',
				at <= 1400 ? 'before' : '',
				at > 1100 ? 'after' : '',
				// So many that they are not all put in order, and none among the first thousand from the other end.
				at <= 2300 ? 'long' : '',
				at > 1100 ? 'lately' : '',
				// Longer than any beginning that is listed.
				at % 4 === 1 ? 'kühlschrankleitung' : '',
				at % 4 === 3 ? 'kühlschrankleitungen' : '',
			];
			const isAtAnEnd = at <= 1100 || at > 2480;
			waiting.push(
				source.append(
					entryOf({
						text: words.join(' '),
						build: at % 2 === 0 ? 'heron' : 'egret',
						personId: `U${at % 4}`,
						personName: `Person ${at % 4} ${at < 10 ? 'before' : 'now'}`,
						at: new Date(clockMs).toISOString(),
						follows: at % 7 === 0 ? at - 6 : null,
						// With these words, the first thousand of a state or a thread and the thousand behind them have nothing.
						state: at <= 20 || at > 1400 ? 'answered' : 'refused',
						channel: isAtAnEnd ? 'C2' : 'C1',
						// So far apart that each is looked at by itself.
						topic: at % 425 === 3 ? 'seldom' : null,
						thread: isAtAnEnd ? 'T1' : null,
					}),
				),
			);
			if (at % 5 === 0)
				waiting.push(source.append(entryOf({ shop: 'other', text: 'job pump early single' })));
		}
		await Promise.all(waiting);
		const shops = await source.shops();
		await Promise.all(shops.map((shop) => log.import(source.export(shop, { persons: true }))));
		await source.close();
		if (isGathered) {
			// As if there were far more entries: then what many have is not listed first.
			await startIds(fresh.url, 250_000);
			await log.append(entryOf({ shop: 'other', text: 'job' }));
			await gathered(fresh.url);
		}
		all = [];
		await log.fold('local', {}, null, (_, entry) => {
			all.push(entry);
			return null;
		});
	});
	afterAll(async () => {
		await log.close();
		await remove();
	});

	const instantOf = (day: number) => new Date(START_MS + day * 86_400_000).toISOString();
	const has = (...words: string[]) => {
		return (entry: Entry) => words.every((word) => entry.text.split(' ').includes(word));
	};
	const searches: readonly [string, FindOptions, (entry: Entry) => boolean][] = [
		['a word of all', { words: 'job' }, has('job')],
		['a word of every third', { words: 'pump' }, has('pump')],
		['a word of the oldest alone', { words: 'early' }, has('early')],
		['a word of one', { words: 'single' }, has('single')],
		['a word of none', { words: 'zzz' }, () => false],
		['a long word', { words: 'kühlschrankleitungen' }, has('kühlschrankleitungen')],
		[
			'the beginning of a long word and another',
			{ words: 'pump kühlschrankleitun' },
			(entry) => has('pump')(entry) && entry.number % 2 === 1,
		],
		['a longer word than any', { words: 'kühlschrankleitungenx' }, () => false],
		['two words', { words: 'early pump' }, has('early', 'pump')],
		['two words that none has together', { words: 'fan pump' }, () => false],
		['three words', { words: 'job after before' }, has('job', 'after', 'before')],
		['four words, two of which never meet', { words: 'fan job after pump' }, () => false],
		[
			'a word and a topic that few have',
			{ words: 'pump', topic: 'seldom' },
			(entry) => has('pump')(entry) && entry.topic === 'seldom',
		],
		['a topic that the build has not', { topic: 'seldom', build: 'gannet' }, () => false],
		[
			'words and a build',
			{ words: 'early', build: 'heron' },
			(entry) => has('early')(entry) && entry.build === 'heron',
		],
		[
			'a word that the newest thousand of a state have not',
			{ words: 'before', states: ['answered'] },
			(entry) => has('before')(entry) && entry.state === 'answered',
		],
		[
			'a word that the oldest thousand of a channel have not',
			{ words: 'after', channel: 'C2' },
			(entry) => has('after')(entry) && entry.channel === 'C2',
		],
		[
			'a word that the oldest thousand of a thread have not',
			{ words: 'after', thread: 'T1' },
			(entry) => has('after')(entry) && entry.thread === 'T1',
		],
		[
			'a word that the build alone has not',
			{ words: 'early single', build: 'egret', states: ['refused'] },
			() => false,
		],
		['a word of very many, but of none of the newest', { words: 'long' }, has('long')],
		['a word of very many, but of none of the oldest', { words: 'lately' }, has('lately')],
		[
			'a word of very many and days',
			{ words: 'lon', from: instantOf(2), to: instantOf(12) },
			(entry) => has('long')(entry) && entry.at >= instantOf(2) && entry.at < instantOf(12),
		],
		[
			'a build and a state',
			{ build: 'egret', states: ['refused'] },
			({ build, state }) => build === 'egret' && state === 'refused',
		],
		[
			'a build and two states, one of which nothing has',
			{ build: 'egret', states: ['refused', 'replaced'], words: 'pump' },
			(entry) => has('pump')(entry) && entry.build === 'egret' && entry.state === 'refused',
		],
		['a person who is never on the build', { build: 'heron', personId: 'U1' }, () => false],
		['nobody', { build: 'heron', personId: 'U9' }, () => false],
		[
			'a build and a channel',
			{ build: 'heron', channel: 'C2' },
			({ build, channel }) => build === 'heron' && channel === 'C2',
		],
		['days', { from: instantOf(3), to: instantOf(4) }, ({ at }) => at >= instantOf(3) && at < instantOf(4)],
		[
			'a word and days',
			{ words: 'pump', from: instantOf(10) },
			(entry) => has('pump')(entry) && entry.at >= instantOf(10),
		],
		['days of nobody', { from: instantOf(400), words: 'job' }, () => false],
		['numbers', { numbers: [3, 2400, 7, 9999] }, ({ number }) => [3, 2400, 7].includes(number)],
		[
			'several that are followed',
			{ follows: [1, 8, 2388] },
			({ follows }) => [1, 8, 2388].includes(follows ?? 0),
		],
		['none that are followed', { follows: [] }, () => false],
	];

	test.each(searches)('%s: every one, once, in both orders, page by page', async (_, options, holds) => {
		const expected = all.filter(holds).map(({ number }) => number);
		for (const order of ['oldest', 'newest'] as const) {
			for (const limit of [500, 37]) {
				const found: number[] = [];
				let cursor: string | null = null;
				do {
					const page: Awaited<ReturnType<Log['find']>> = await log.find('local', {
						...options,
						...{ order, limit, cursor },
					});
					expect(page.entries.length).toBeLessThanOrEqual(limit);
					found.push(...page.entries.map(({ number }) => number));
					cursor = page.next;
				} while (cursor !== null);
				expect(found).toEqual(order === 'oldest' ? expected : expected.toReversed());
			}
		}
	});

	test('people of a shop have their newest name; who is forgotten is none of them', async () => {
		const names = async () => (await log.people('local')).map(({ id, name }) => [id, name]);
		expect(await names()).toEqual([
			['U0', 'Person 0 now'],
			['U1', 'Person 1 now'],
			['U2', 'Person 2 now'],
			['U3', 'Person 3 now'],
		]);
		expect((await log.people('local'))[1]?.tag).toBe(all[0]?.personTag);
		await log.forget('local', 'U2');
		expect((await names()).map(([id]) => id)).toEqual(['U0', 'U1', 'U3']);
		expect(await log.people('nowhere')).toEqual([]);
	});
});
