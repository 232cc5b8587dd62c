/** Works out logged answers again with today's code: the same numbers, or what differs. */

import { runTopic, type Sizing, topicNamed } from '@lugbook/core';
import type { Log } from '@lugbook/log';
import type { Answer } from './answer.js';
import { exchangeOf } from './memory.js';

export interface Recomputed {
	readonly number: number;
	/** version of the calculation that gave the logged answer */
	readonly version: string;
	/** in words, one a value that differs; empty where all are the same */
	readonly differences: readonly string[];
}

/** Relative difference below which two numbers are the same: what processors of several makes may differ by. */
const samePart = 1e-9;

const PAGE = 100;

/** Every answer of a shop whose request is kept, oldest first, a page of them in memory at a time. */
export async function* recompute(log: Log, shop: string): AsyncGenerator<Recomputed> {
	let cursor: string | null = null;
	do {
		const page: Awaited<ReturnType<Log['find']>> = await log.find(shop, {
			kinds: ['exchange'],
			states: ['answered'],
			order: 'oldest',
			limit: PAGE,
			cursor,
		});
		for (const entry of page.entries) {
			const exchange = exchangeOf(entry);
			if (exchange === null || exchange.request === null) {
				yield {
					number: entry.number,
					version: '',
					differences: ["its body is none that today's code can read"],
				};
				continue;
			}
			const { request, answer, version } = exchange;
			const topic = topicNamed(request.topic);
			if (topic === null) {
				yield {
					number: entry.number,
					version,
					differences: [`there is no topic "${request.topic}" any more`],
				};
				continue;
			}
			const known = request.given.filter(({ name }) => topic.fields[name] !== undefined);
			const gone = request.given
				.filter((given) => !known.includes(given))
				.map(({ name }) => `${topic.name} has no input "${name}" any more`);
			const outcome = runTopic(
				topic,
				Object.fromEntries(known.map(({ name, value }) => [name, value])),
				request.context,
			);
			const differences =
				outcome.status === 'answered'
					? differencesOf(answer, outcome.sizing)
					: [
							outcome.status === 'refused'
								? `today it is refused: ${outcome.refusals.map(({ text }) => text).join(' ')}`
								: `today it asks: ${outcome.missing.map(({ question }) => question).join(' ')}`,
						];
			yield { number: entry.number, version, differences: [...gone, ...differences] };
		}
		cursor = page.next;
	} while (cursor !== null);
}

function differencesOf(was: Answer, is: Sizing): string[] {
	const results = new Map(is.results.map((result) => [result.name, result]));
	const differences: string[] = [];
	for (const { name, label, value, text } of was.results) {
		const now = results.get(name);
		results.delete(name);
		if (now === undefined) differences.push(`${label}: was ${text}, is not given any more`);
		else if (!isSame(value, now.value))
			differences.push(`${label}: was ${shown(value, text)}, is ${shown(now.value, now.text)}`);
	}
	for (const { label, text } of results.values()) differences.push(`${label}: was not given, is ${text}`);
	const dangers = (findings: Answer['findings']) =>
		findings.filter(({ severity }) => severity !== 'note').map(({ code, severity }) => `${severity} ${code}`);
	const [before, after] = [dangers(was.findings), dangers(is.findings)];
	for (const one of before) if (!after.includes(one)) differences.push(`${one}: was found, is not any more`);
	for (const one of after) if (!before.includes(one)) differences.push(`${one}: was not found, is now`);
	if (was.governedBy !== is.governedBy)
		differences.push(`what governs: was ${was.governedBy}, is ${is.governedBy}`);
	return differences;
}

function isSame(was: number | string, is: number | string): boolean {
	if (typeof was === 'string' || typeof is === 'string') return was === is;
	return Math.abs(was - is) <= samePart * Math.max(Math.abs(was), Math.abs(is));
}

/** The value as people read it, and all its digits where rounding would hide the difference. */
function shown(value: number | string, text: string): string {
	return typeof value === 'number' ? `${text} (${value})` : text;
}
