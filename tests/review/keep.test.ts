/** What is kept stays what it was: answers worked out again, a log taken in elsewhere, its root posted. */

import { importLog, recompute } from '@lugbook/chat';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop } from './shop.js';

describe.each(DIALECTS)('$title', (dialect) => {
	let shop: Shop;
	beforeEach(async () => {
		shop = await openShop(dialect);
	});
	afterEach(async () => {
		await shop.close();
	});

	async function recomputed(name = 'demo') {
		const found = [];
		for await (const one of recompute(shop.chat.log, name)) found.push(one);
		return found;
	}

	/** An answer of the log once more, told otherwise. */
	async function forged(number: number, change: (body: never) => unknown): Promise<number> {
		const {
			number: _,
			previousHash: __,
			hash: ___,
			personTag: ____,
			erased: _____,
			...entry
		} = (await shop.chat.log.entry('demo', number)) as NonNullable<
			Awaited<ReturnType<typeof shop.chat.log.entry>>
		>;
		const body = change(structuredClone(entry.body) as never) as typeof entry.body;
		return (await shop.chat.log.append({ ...entry, delivery: null, body })).entry.number;
	}

	test('every answer of every sort works out the same again', async () => {
		await shop.say(kim, '/build use heron');
		await shop.say(robin, '/build describe 4 x 100Ah lifepo4 12V, fridge 60W 24h 40%, 2000W inverter');
		const answered: (number | null)[] = [];
		for (const text of [
			'40A 12V 15 ft',
			'fridge 12 ft',
			'3.5m 20A 24v 35mm2 ok?',
			'2 people fresh tank 30 gal, waste tank 20 gal',
			'400W in Denver december',
			'12v 15 ft',
		]) {
			const { answer } = await shop.tell(robin, text);
			if (answer.status === 'answered') answered.push(answer.entry);
		}
		const found = await recomputed();
		expect(found.length).toBeGreaterThanOrEqual(4);
		expect(found.map(({ number }) => number)).toEqual(answered);
		expect(found.flatMap(({ differences }) => differences)).toEqual([]);
	});

	test('a number that today comes out otherwise is named with both; others are not', async () => {
		await shop.say(robin, '40A 12V 15 ft');
		const number = await forged(1, (body: { answer: { results: { name: string; value: number }[] } }) => {
			for (const result of body.answer.results) if (result.name === 'drop') result.value += 0.01;
			return body;
		});
		const found = await recomputed();
		expect(found.find((one) => one.number === 1)?.differences).toEqual([]);
		expect(found.find((one) => one.number === number)?.differences).toEqual([
			expect.stringMatching(/^voltage drop: was .*0\.33.*, is .*0\.32/),
		]);
	});

	test('another choice, a danger that is new, an input and a topic that are gone', async () => {
		await shop.say(robin, '40A 12V 15 ft');
		const choice = await forged(
			1,
			(body: { answer: { results: { name: string; value: unknown; text: string }[] } }) => {
				for (const result of body.answer.results)
					if (result.name === 'conductor') Object.assign(result, { value: '6 AWG', text: '6 AWG' });
				return body;
			},
		);
		const danger = await forged(1, (body: { answer: { findings: unknown[] } }) => {
			body.answer.findings.push({ code: 'once-found', severity: 'danger', text: 'x', source: 'x' });
			return body;
		});
		const input = await forged(1, (body: { request: { given: unknown[] } }) => {
			body.request.given.push({ name: 'oldInput', value: 1, said: 'x' });
			return body;
		});
		const topic = await forged(1, (body: { request: { topic: string } }) => {
			body.request.topic = 'old-topic';
			return body;
		});
		const differences = new Map((await recomputed()).map((one) => [one.number, one.differences]));
		expect(differences.get(choice)).toEqual(['conductor: was 6 AWG, is 4 AWG']);
		expect(differences.get(danger)).toEqual(['danger once-found: was found, is not any more']);
		expect(differences.get(input)).toEqual(['wire has no input "oldInput" any more']);
		expect(differences.get(topic)).toEqual(['there is no topic "old-topic" any more']);
	});

	test("a shop's log taken in by another shop answers there as it did here", async () => {
		await shop.say(kim, '/build use heron');
		await shop.say(robin, '40A 12V 15 ft');
		await shop.say(kim, '/log sign 2');
		const lines: string[] = [];
		for await (const line of shop.chat.log.export('demo', { persons: true })) lines.push(line);
		const open = async function* () {
			yield* lines;
		};
		expect(await importLog(shop.chat.log, open, 'second')).toEqual({
			shop: 'second',
			written: 3,
			present: 0,
		});
		const sheet = await shop.say(robin, '/log sheet 2', { shop: 'second' });
		expect(sheet).toContain('4 AWG copper');
		expect(sheet).toContain('Kim');
		const elsewhere = { shop: 'second', thread: null } as const;
		expect(await shop.say(robin, '5A 12V 10 ft', elsewhere)).toContain('No. 4 in build "heron"');
		expect((await shop.chat.log.verify()).ok).toBe(true);
		expect((await recomputed('second')).every(({ differences }) => differences.length === 0)).toBe(true);
	});

	test('/log root posts what pins the log, for leads alone', async () => {
		await shop.say(robin, '40A 12V 15 ft');
		expect(await shop.say(robin, '/log root')).toContain('for the leads');
		const reply = await shop.tell(kim, '/log root');
		expect(reply.audience).toBe('channel');
		const head = await shop.chat.log.head('demo');
		const tree = await shop.chat.log.tree('demo');
		const words = reply.parts.map(({ text }) => text).join('\n');
		expect(head?.number).toBe(2);
		expect(words).toContain(`2 entries, ${tree.root}`);
		expect(words).toContain(`Head 2:${head?.hash}`);
		expect(await shop.say(kim, '/log root', { shop: 'empty' })).toContain('no entries yet');
		// Kept outside, it finds a rewritten log that is whole in itself.
		await shop.say(robin, '5A 12V 10 ft');
		expect((await shop.chat.log.verify('demo', head ?? undefined)).ok).toBe(true);
		expect((await shop.chat.log.verify('demo', { number: 2, hash: '0'.repeat(64) })).ok).toBe(false);
	});
});
