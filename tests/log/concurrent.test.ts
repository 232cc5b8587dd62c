/** Several processes write one log at once: nothing is lost, nothing is there twice, the numbers have no gaps. */
import { openLog } from '@lugbook/log';
import { expect, test } from 'vitest';
import { DIALECTS } from './databases.js';
import { Writer } from './writers.js';

const PROCESSES = 4;
/** `LUGBOOK_WRITER_ENTRIES=10000` has each process write as many. */
const ENTRIES_EACH = Number(process.env.LUGBOOK_WRITER_ENTRIES ?? 150);

test.each(DIALECTS)(
	'$title: four processes, one shop, from an empty database on',
	async ({ fresh }) => {
		const { url, remove } = await fresh();
		// All four also find the database without tables and make them at the same time.
		const writers = Array.from(
			{ length: PROCESSES },
			(_, index) => new Writer({ url, shop: 'slack:T1', name: `w${index}`, count: ENTRIES_EACH }),
		);
		// Meanwhile the chain is checked again and again: what is written during a check is no fault.
		const log = await openLog(url, { patienceMs: 30_000 });
		let writing = true;
		const checking = (async () => {
			const seen: number[] = [];
			while (writing && seen.length < 100_000) {
				const report = await log.verify('slack:T1');
				expect(report.problem).toBeNull();
				seen.push(report.shops[0]?.entries ?? 0);
			}
			return seen;
		})();
		await Promise.all(writers.map((writer) => writer.done()));
		writing = false;
		const seen = await checking;
		expect(seen).toEqual([...seen].sort((a, b) => a - b));
		expect(new Set(seen).size).toBeGreaterThan(3);
		const total = PROCESSES * ENTRIES_EACH;
		const acknowledged = writers.flatMap((writer) => writer.acknowledged);
		const numbers = acknowledged.map((entry) => entry.number).sort((a, b) => a - b);
		expect(numbers).toEqual(Array.from({ length: total }, (_, index) => index + 1));
		for (const writer of writers) {
			// Each process sees its own entries in the order it wrote them.
			const own = writer.acknowledged.map((entry) => entry.number);
			expect(own).toEqual([...own].sort((a, b) => a - b));
		}
		// They did write at the same time and not one after the other.
		const turns = [...acknowledged]
			.sort((a, b) => a.number - b.number)
			.map((entry) => entry.delivery.split('-')[0]);
		const changes = turns.filter((name, index) => index > 0 && name !== turns[index - 1]).length;
		expect(changes).toBeGreaterThan(PROCESSES);

		expect(await log.verify()).toMatchObject({
			ok: true,
			shops: [{ entries: total, head: { number: total } }],
		});
		const stored = await log.fold('slack:T1', {}, new Map<string, string>(), (hashes, entry) =>
			hashes.set(`${entry.delivery}`, entry.hash),
		);
		expect(stored.size).toBe(total);
		for (const { delivery, hash } of acknowledged) expect(stored.get(delivery)).toBe(hash);
		// Four processes met the same four people for the first time: each has one pseudonym.
		const tags = await log.fold('slack:T1', {}, new Map<string, Set<string>>(), (found, entry) =>
			found.set(entry.personId, (found.get(entry.personId) ?? new Set()).add(entry.personTag)),
		);
		expect([...tags.values()].map((set) => set.size)).toEqual([1, 1, 1, 1]);
		await log.close();
		await remove();
	},
	Math.max(180_000, 120 * ENTRIES_EACH),
);
