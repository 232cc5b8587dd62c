/**
 * kill -9 while the log is being written. What was acknowledged is there afterwards, nothing is there by half, and
 * the chain verifies. This proves death of the process, not of the machine: a power cut can't be tried here.
 */
import { randomInt } from 'node:crypto';
import { setTimeout as sleep } from 'node:timers/promises';
import { type Log, openLog } from '@lugbook/log';
import { expect, test } from 'vitest';
import { DIALECTS } from './databases.js';
import { entryOf } from './entries.js';
import { type Acknowledged, Writer } from './writers.js';

const SHOP = 'slack:T1';
/** Far more than a writer manages before it is killed. */
const ENDLESS = 1_000_000;

async function expectAllThere(log: Log, acknowledged: readonly Acknowledged[]): Promise<number> {
	const report = await log.verify();
	expect(report).toMatchObject({ ok: true, problem: null, damage: null });
	const stored = await log.fold(SHOP, {}, new Map<number, string>(), (hashes, entry) => {
		// Each entry came with its name and text, or not at all.
		expect(entry.erased).toBe(false);
		return hashes.set(entry.number, `${entry.hash} ${entry.delivery}`);
	});
	for (const { number, hash, delivery } of acknowledged)
		expect(stored.get(number)).toBe(`${hash} ${delivery}`);
	// An entry whose acknowledgement the kill cut off may be there too, at most one for each process killed.
	return stored.size - acknowledged.length;
}

/** Entries of each writer that a round waits for, in turn, before its moment of chance. */
const ENTRIES_BEFORE = [2, 4, 6, 0];

/**
 * Rounds of writers on one database, killed together at a moment of chance: some while they open and migrate it,
 * some before their first entry, most between two later ones.
 */
async function killRounds(
	url: string,
	rounds: number,
	together: number,
): Promise<{ kills: number; entries: number }> {
	const acknowledged: Acknowledged[] = [];
	let kills = 0;
	for (let round = 0; round < rounds; round += 1) {
		const writers = Array.from(
			{ length: together },
			(_, index) => new Writer({ url, shop: SHOP, name: `r${round}w${index}`, count: ENDLESS }),
		);
		if (round === 0) await sleep(randomInt(60, 160));
		else {
			await Promise.all(writers.map((writer) => writer.spoken()));
			const entries = together * (ENTRIES_BEFORE[(round - 1) % ENTRIES_BEFORE.length] ?? 0);
			const written = () => writers.reduce((sum, { acknowledged }) => sum + acknowledged.length, 0);
			// However slow the disk is: by the clock alone the writers of a busy machine have not begun.
			while (written() < entries && writers.every(({ errors }) => errors === '')) await sleep(1);
			await sleep(randomInt(12));
		}
		await Promise.all(writers.map((writer) => writer.kill()));
		kills += together;
		for (const writer of writers) {
			expect(writer.errors).toBe('');
			acknowledged.push(...writer.acknowledged);
		}
		const log = await openLog(url);
		const unsaid = await expectAllThere(log, acknowledged);
		expect(unsaid).toBeGreaterThanOrEqual(0);
		expect(unsaid).toBeLessThanOrEqual(together);
		// The platform delivers again what it got no answer for: each is there once, whether it was or not.
		for (const [index, writer] of writers.entries()) {
			const delivery = `r${round}w${index}-${writer.acknowledged.length + 1}`;
			const { entry } = await log.append(entryOf({ shop: SHOP, delivery }));
			expect(await log.byDelivery(SHOP, delivery)).toEqual(entry);
			acknowledged.push({ number: entry.number, hash: entry.hash, delivery });
		}
		await log.close();
	}
	const log = await openLog(url);
	expect(await expectAllThere(log, acknowledged)).toBe(0);
	await log.close();
	return { kills, entries: acknowledged.length };
}

const KILLS = {
	SQLite: { databases: 5, rounds: 10, together: 4 },
	PostgreSQL: { databases: 2, rounds: 5, together: 4 },
};

test.each(DIALECTS)(
	'$title: every acknowledged entry outlives its writer',
	async ({ title, fresh }) => {
		const { databases, rounds, together } = KILLS[title];
		let kills = 0;
		let entries = 0;
		for (let count = 0; count < databases; count += 1) {
			const { url, remove } = await fresh();
			const result = await killRounds(url, rounds, together);
			kills += result.kills;
			entries += result.entries;
			await remove();
		}
		expect(kills).toBe(databases * rounds * together);
		// The writers must have been in the middle of their work, or the kills prove nothing.
		expect(entries).toBeGreaterThan(2 * kills);
	},
	300_000,
);
