/** A shop taken out of one log and into another under another name: nothing of what people did is lost. */

import { bookFiles, importLog, openLog } from '@lugbook/chat';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop, sam } from './shop.js';

/** The lines as a file gives them. */
async function* read(lines: readonly string[]): AsyncGenerator<string> {
	yield* lines;
}

const day = [
	[robin, '/build use heron'],
	[robin, '/build describe fridge 60 W, 2 batteries 100 Ah lithium, bank 12 V'],
	[robin, '40A 12V 15 ft'],
	[robin, '3A 12V 10 ft'],
	[robin, '20A 12V 12 ft'],
	[robin, 'wire for the fridge 10 ft'],
	[sam, '/log comment 3 =2+3 tight bend, mind it'],
	[kim, '/log reject 4 too thin'],
	[robin, '/log replace 5 and at 20 ft'],
	[sam, '/log sign 3'],
	[kim, '/log sign 3 looked at in the van'],
	[robin, '/log ask-lead 6'],
	[kim, '/log sign build anyway the fan follows'],
	[kim, '/log own-signature on'],
	[kim, '/log leads add @Robin'],
	[robin, 'the fridge is 80 W'],
	[robin, '/build rerun'],
] as const;

describe.each(DIALECTS)('an export read back under another name ($title)', (dialect) => {
	let shop: Shop;
	let other: Shop;
	beforeEach(async () => {
		[shop, other] = [await openShop(dialect), await openShop(dialect)];
		for (const [person, text] of day) await shop.say(person, text);
	});
	afterEach(async () => {
		await shop.close();
		await other.close();
	});

	const linesOf = async () => {
		const lines: string[] = [];
		for await (const line of shop.chat.log.export('demo', { persons: true })) lines.push(line);
		return lines;
	};
	const book = async (from: Shop, name: string) => {
		const [page] =
			(await bookFiles(from.chat.log, {
				shop: name,
				build: 'heron',
				format: 'html',
				context: { region: 'us', units: 'us', language: 'en' },
				date: '2026-05-04',
			})) ?? [];
		if (page === undefined || page.bytes instanceof Uint8Array) throw new Error('there is no book');
		let text = '';
		for await (const bytes of page.bytes) text += Buffer.from(bytes).toString('utf8');
		return text;
	};
	/** Everything that is not a hash and not the shop's name. */
	const content = (text: string) => text.replaceAll(/[0-9a-f]{64}/g, '#').replaceAll(/demo|second/g, 'shop');

	test('every entry is there with its person, words, links and content, and the chain verifies', async () => {
		const lines = await linesOf();
		const taken = await importLog(other.chat.log, () => read(lines), 'second');
		const before = (await shop.chat.log.find('demo', { order: 'oldest', limit: 500 })).entries;
		const after = (await other.chat.log.find('second', { order: 'oldest', limit: 500 })).entries;
		expect(taken).toEqual({ shop: 'second', written: before.length, present: 0 });
		for (const kind of ['build-signed', 'signed', 'rejected', 'commented', 'asked', 'refused-action'])
			expect(before.map((entry) => entry.kind)).toContain(kind);
		expect(before.some(({ replaces }) => replaces !== null)).toBe(true);
		// What the shop's name is part of differs, and nothing else.
		const kept = after.map(({ hash, previousHash, personTag, ...rest }) => ({ ...rest, shop: 'demo' }));
		expect(kept).toEqual(before.map(({ hash, previousHash, personTag, ...rest }) => rest));
		expect(after.map(({ hash }) => hash)).not.toEqual(before.map(({ hash }) => hash));
		expect(await other.chat.log.verify('second')).toMatchObject({ ok: true });
		// Once more with the same lines: nothing is written twice.
		expect(await importLog(other.chat.log, () => read(lines), 'second')).toMatchObject({
			written: 0,
			present: before.length,
		});
	});

	test('every number, the review and the book tell the same; the signature names the hash it was made under and the new one', async () => {
		const lines = await linesOf();
		await importLog(other.chat.log, () => read(lines), 'second');
		const here = { shop: 'second', delivery: null };
		const count = (await shop.kinds()).length;
		for (let number = 1; number <= count; number += 1) {
			const [was, is] = [
				await shop.say(kim, `/log show ${number}`),
				await other.say(kim, `/log show ${number}`, here),
			];
			const kind = (await shop.kinds())[number - 1];
			const anew = is.split('\n').filter((line) => line.startsWith('In this log No.'));
			expect(anew).toHaveLength(kind === 'build-signed' ? 1 : 0);
			const rest = is.split('\n').filter((line) => !line.startsWith('In this log No.'));
			expect(content(rest.join('\n'))).toBe(content(was));
		}
		const build = await shop.say(kim, '/log show 13');
		const [signed] = /[0-9a-f]{64}/.exec(build) ?? [];
		const covered = (await other.chat.log.entry('second', 12))?.hash;
		expect(await other.say(kim, '/log show 13', here)).toMatch(
			new RegExp(`up to No\\. 12, hash ${signed}\nIn this log No\\. 12 has another hash, ${covered}`),
		);
		expect(await other.say(kim, '/log review', { ...here, build: 'heron' })).toBe(
			await shop.say(kim, '/log review', { build: 'heron' }),
		);
		const now = await book(other, 'second');
		expect(now).toContain('the log was chained anew since');
		expect(now).toContain(signed);
		const page = (text: string) => content(text.replace(/<div><dt>Hash now<\/dt>.*?<\/div>\n/s, ''));
		expect(page(now)).toBe(page(await book(shop, 'demo')));
	});

	test('and back under its first name: the very same log', async () => {
		const lines = await linesOf();
		const url = await dialect.fresh();
		const back = await openLog(url.url);
		try {
			await importLog(other.chat.log, () => read(lines), 'second');
			const second: string[] = [];
			for await (const line of other.chat.log.export('second', { persons: true })) second.push(line);
			await importLog(back, () => read(second), 'demo');
			const again: string[] = [];
			for await (const line of back.export('demo', { persons: true })) again.push(line);
			expect(again).toEqual(lines);
		} finally {
			await back.close();
			await url.remove();
		}
	});
});
