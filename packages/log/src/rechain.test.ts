/** An export taken in under another shop's name: everything as it was, chained anew. */
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DIALECTS } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import { type Entry, type Log, openLog, rechained } from './index.js';
import { verifyExport } from './verifier.mjs';

const FROM = 'slack:T1';
const TO = 'local';

async function linesOf(lines: AsyncIterable<string>): Promise<string[]> {
	const found: string[] = [];
	for await (const line of lines) found.push(line);
	return found;
}

/** What must be the same in both shops; the hashes and the pseudonyms of those who are known hold the shop's name. */
function withoutChain({ shop: _, hash: __, previousHash: ___, personTag, ...content }: Entry): unknown {
	return content.erased ? { ...content, personTag } : content;
}

describe.each(DIALECTS)('$title', (dialect) => {
	let log: Log;
	let remove: () => Promise<void>;
	let lines: string[];

	beforeAll(async () => {
		const fresh = await dialect.fresh();
		remove = fresh.remove;
		log = await openLog(fresh.url, { searchable: [] });
		for (let number = 1; number <= 230; number += 1) {
			await log.append(
				entryOf({
					shop: FROM,
					delivery: number % 3 === 0 ? null : `Ev${number}`,
					personId: `U${number % 4}`,
					personName: `Person ${number % 4}`,
					text: `question ${number} é😀`,
					follows: number % 5 === 0 ? number - 1 : null,
					replaces: number % 7 === 0 ? number - 2 : null,
					body: { n: number, share: 1 / number, list: [null, true, '"'] },
				}),
			);
		}
		await log.forget(FROM, 'U1');
		lines = await linesOf(log.export(FROM, { persons: true }));
	});

	afterAll(async () => {
		await log.close();
		await remove();
	});

	test('loses nothing: every entry, its people and texts, what it follows and replaces', async () => {
		expect(await log.import(rechained(() => lines, TO))).toEqual({ shop: TO, written: 230, present: 0 });
		const contentOf = (shop: string) =>
			log.fold(shop, {}, [] as unknown[], (all, entry) => [...all, withoutChain(entry)]);
		expect(await contentOf(TO)).toEqual(await contentOf(FROM));
		const report = await log.verify(TO);
		expect(report.ok).toBe(true);
		expect(report.shops[0]).toMatchObject({ entries: 230, erased: 58 });
		// One person's entries are still one person's, there and here.
		for (const personId of ['U0', 'U2', 'U3']) {
			const tagsOf = async (shop: string) =>
				new Set((await log.find(shop, { personId, limit: 500 })).entries.map(({ personTag }) => personTag));
			const [from, to] = [await tagsOf(FROM), await tagsOf(TO)];
			expect([from.size, to.size]).toEqual([1, 1]);
			expect(from).not.toEqual(to);
		}
		// And it stands the independent check.
		const checked = await verifyExport(await linesOf(log.export(TO, { persons: true })), []);
		expect(checked).toMatchObject({ shop: TO, named: 230 - 58 });
	});

	test('an import that was cut off is finished by another with the same name', async () => {
		const anew = await linesOf(rechained(() => lines, 'again'));
		await expect(log.import(anew.slice(0, 210))).rejects.toMatchObject({ code: 'bad-entry' });
		expect(await log.import(rechained(() => lines, 'again'))).toEqual({
			shop: 'again',
			written: 230 - 209,
			present: 209,
		});
	});

	test('its own name gives the very same lines', async () => {
		expect(await linesOf(rechained(() => lines, FROM))).toEqual(lines);
	});

	test('and back again gives the very same lines, unless somebody was forgotten in between', async () => {
		const there = await linesOf(rechained(() => lines, 'there'));
		expect(await linesOf(rechained(() => there, FROM))).toEqual(lines);
	});

	test('a shop that has other entries takes none of them in', async () => {
		await log.append(entryOf({ shop: 'taken' }));
		await expect(log.import(rechained(() => lines, 'taken'))).rejects.toMatchObject({ code: 'bad-entry' });
		expect((await log.head('taken'))?.number).toBe(1);
	});

	test('a name that is none is refused before a line is read', async () => {
		await expect(log.import(rechained(() => lines, ''))).rejects.toThrow(/shop is empty/);
	});

	test('any one character of the export changed is refused, and nothing of it is written', async () => {
		let count = 0;
		await fc.assert(
			fc.asyncProperty(fc.nat(), fc.nat(), fc.integer({ min: 1, max: 94 }), async (line, column, by) => {
				const at = line % lines.length;
				const text = lines[at] as string;
				const place = column % text.length;
				const code = text.charCodeAt(place);
				if (code < 33 || code > 126) return;
				const other = String.fromCharCode(33 + ((code - 33 + by) % 94));
				if (other === text[place]) return;
				const spoiled = lines.with(at, text.slice(0, place) + other + text.slice(place + 1));
				// The name in the header is no content: with another one the first entry does not fit its hash.
				count += 1;
				const shop = `spoiled${count}`;
				const outcome = await log.import(rechained(() => spoiled, shop)).then(
					() => 'taken in',
					(error: unknown) => (error as { code: string }).code,
				);
				expect(['bad-entry', 'corrupt']).toContain(outcome);
				expect(await log.head(shop)).toBeNull();
			}),
			{ numRuns: 60 },
		);
		expect(count).toBeGreaterThan(30);
	});
});
