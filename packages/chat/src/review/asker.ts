/**
 * Whose question an answer is. One that was worked out again from its build ("/build rerun") is still the question of
 * whoever asked it first, not of whoever said to work it out again: the question has not changed, only the van has.
 */

import { type Entry, LIMITS, type Log } from '@lugbook/log';
import { exchangeOf } from '../memory.js';
import type { Person } from '../message.js';

/** The entries under which the questions of answers were asked, for those that were worked out again, by number. */
export async function askedBefore(
	log: Log,
	shop: string,
	answers: readonly Entry[],
): Promise<ReadonlyMap<number, Entry>> {
	const askedIn = new Map(
		answers.flatMap((entry) => {
			const number = exchangeOf(entry)?.askedIn;
			return number === undefined ? [] : [[entry.number, number] as const];
		}),
	);
	const numbers = [...new Set(askedIn.values())];
	const asked = new Map<number, Entry>();
	for (let start = 0; start < numbers.length; start += LIMITS.pageEntries) {
		const some = numbers.slice(start, start + LIMITS.pageEntries);
		const { entries } = await log.find(shop, { numbers: some, limit: LIMITS.pageEntries });
		for (const entry of entries) asked.set(entry.number, entry);
	}
	return new Map(
		[...askedIn].flatMap(([number, first]) => {
			const entry = asked.get(first);
			return entry === undefined ? [] : [[number, entry] as const];
		}),
	);
}

/** Whether somebody asked the question of an answer. */
export async function isOwnQuestion(log: Log, answer: Entry, person: Person): Promise<boolean> {
	const asked = (await askedBefore(log, answer.shop, [answer])).get(answer.number) ?? answer;
	return asked.personId === person.id && !asked.erased;
}
