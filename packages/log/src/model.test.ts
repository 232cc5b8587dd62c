/** Random use of the log, step by step beside a plain list that is known to be right. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DIALECTS } from '../../../tests/log/databases.js';
import { entryOf } from '../../../tests/log/entries.js';
import { type FindOptions, type Json, type Log, type NewEntry, openLog } from './index.js';

interface ModelEntry extends NewEntry {
	number: number;
	erased: boolean;
}

/** The whole log as lists in memory. */
class Model {
	readonly shops = new Map<string, ModelEntry[]>();

	of(shop: string): ModelEntry[] {
		return this.shops.get(shop) ?? [];
	}

	append(given: NewEntry): { entry: ModelEntry; repeated: boolean } {
		const entries = this.of(given.shop);
		const first = entries.find((entry) => entry.delivery !== null && entry.delivery === given.delivery);
		if (first !== undefined) return { entry: first, repeated: true };
		const entry = { ...given, number: entries.length + 1, erased: false };
		this.shops.set(given.shop, [...entries, entry]);
		return { entry, repeated: false };
	}

	forget(shop: string, personId: string): number {
		const theirs = this.of(shop).filter((entry) => entry.personId === personId);
		for (const entry of theirs)
			Object.assign(entry, { personId: '', personName: '', text: '', erased: true });
		return theirs.length;
	}

	find(
		shop: string,
		{ build, personId, kinds, states, words, follows, from, to, ...page }: FindOptions,
	): ModelEntry[] {
		const found = this.of(shop).filter(
			(entry) =>
				(build === undefined || entry.build === build) &&
				(personId === undefined || entry.personId === personId) &&
				(kinds === undefined || kinds.includes(entry.kind)) &&
				(states === undefined || (entry.state !== null && states.includes(entry.state))) &&
				(follows === undefined || entry.follows === follows) &&
				(from === undefined || entry.at >= from) &&
				(to === undefined || entry.at < to) &&
				(words === undefined || entry.text.split(' ').some((word) => word.startsWith(words))),
		);
		return page.order === 'oldest' ? found : found.toReversed();
	}
}

const shop = fc.constantFrom('local', 'slack:T1');
const person = fc.constantFrom('U1', 'U2', 'U3');
const build = fc.constantFrom(null, 'heron', 'egret');
const kind = fc.constantFrom('exchange', 'signed', 'commented');
const state = fc.constantFrom(null, 'answered', 'stale');
const word = fc.constantFrom('wire', 'wired', 'tank', 'fuse', 'zink');
const at = fc
	.date({ min: new Date('2026-01-01T00:00:00Z'), max: new Date('2026-01-10T00:00:00Z'), noInvalidDate: true })
	.map((date) => date.toISOString());
const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined });

const given: fc.Arbitrary<NewEntry> = fc
	.record({
		shop,
		kind,
		delivery: fc.option(fc.integer({ min: 1, max: 12 }).map((id) => `Ev${id}`)),
		build,
		state,
		personId: person,
		personName: fc.string().filter((text) => !text.includes('\0')),
		text: fc.array(word, { maxLength: 4 }).map((words) => words.join(' ')),
		at,
		body: fc.jsonValue().map((value) => JSON.parse(JSON.stringify(value)) as Json),
	})
	.map(entryOf);

interface Real {
	url: string;
	log: Log;
}
type Step = fc.AsyncCommand<Model, Real>;

function step(name: string, run: (model: Model, real: Real) => Promise<void>): Step {
	return { check: () => true, run, toString: () => name };
}

const steps: fc.Arbitrary<Step>[] = [
	given.chain((entry) =>
		fc.nat().map((seed) =>
			step(`append ${JSON.stringify(entry)}`, async (model, real) => {
				// A follow-up may only point back.
				const length = model.of(entry.shop).length;
				const whole = { ...entry, follows: length === 0 ? null : 1 + (seed % length) };
				const expected = model.append(whole);
				const actual = await real.log.append(whole);
				expect(actual.repeated).toBe(expected.repeated);
				expect(actual.entry).toMatchObject(expected.entry);
			}),
		),
	),
	fc.array(given, { minLength: 2, maxLength: 6 }).map((entries) =>
		step(`append ${entries.length} at once`, async (model, real) => {
			const results = await Promise.all(entries.map((entry) => real.log.append(entry)));
			// The log lets writes of a shop through in the order they were asked for; so does the list.
			for (const [index, entry] of entries.entries()) {
				const expected = model.append(entry);
				expect(results[index]?.repeated).toBe(expected.repeated);
				expect(results[index]?.entry.number).toBe(expected.entry.number);
			}
		}),
	),
	fc.tuple(shop, person).map(([where, who]) =>
		step(`forget ${who} of ${where}`, async (model, real) => {
			expect(await real.log.forget(where, who)).toBe(model.forget(where, who));
		}),
	),
	fc
		.tuple(
			shop,
			fc.record({
				build: maybe(build),
				personId: maybe(person),
				kinds: maybe(fc.subarray(['exchange', 'signed', 'commented'] as const)),
				states: maybe(fc.subarray(['answered', 'stale'])),
				words: maybe(fc.constantFrom('wir', 'wire', 'tank', 'zi')),
				follows: maybe(fc.integer({ min: 1, max: 5 })),
				from: maybe(at),
				to: maybe(at),
				order: fc.constantFrom('newest', 'oldest'),
				limit: fc.integer({ min: 1, max: 5 }),
			}),
		)
		.map(([where, options]) =>
			step(`find ${where} ${JSON.stringify(options)}`, async (model, real) => {
				const numbers: number[] = [];
				let cursor: string | null = null;
				do {
					const page = await real.log.find(where, { ...options, cursor });
					expect(page.entries.length).toBeLessThanOrEqual(options.limit);
					numbers.push(...page.entries.map((entry) => entry.number));
					cursor = page.next;
				} while (cursor !== null);
				expect(numbers).toEqual(model.find(where, options).map((entry) => entry.number));
			}),
		),
	fc.constant(
		step('close and open', async (_, real) => {
			await real.log.close();
			real.log = await openLog(real.url);
		}),
	),
];

async function expectSame(model: Model, log: Log): Promise<void> {
	expect(await log.shops()).toEqual([...model.shops.keys()].sort());
	expect((await log.verify()).ok).toBe(true);
	for (const [name, entries] of model.shops) {
		const tags = new Map<string, string>();
		await log.fold(name, {}, 0, (index, entry) => {
			expect(entry).toMatchObject({ ...entries[index] });
			// Of the people still known, one tag is one person.
			if (!entry.erased) {
				expect(tags.get(entry.personId) ?? entry.personTag).toBe(entry.personTag);
				tags.set(entry.personId, entry.personTag);
			}
			return index + 1;
		});
		expect(new Set(tags.values()).size).toBe(tags.size);
		expect((await log.head(name))?.number).toBe(entries.length);
	}
}

describe.each(DIALECTS)('on $title', ({ title, fresh }) => {
	test('whatever is done in whatever order, the log holds what a plain list would hold', async () => {
		await fc.assert(
			fc.asyncProperty(fc.commands(steps, { maxCommands: 30 }), async (commands) => {
				const { url, remove } = await fresh();
				const real = { url, log: await openLog(url) };
				const model = new Model();
				try {
					await fc.asyncModelRun(() => ({ model, real }), commands);
					await expectSame(model, real.log);
				} finally {
					await real.log.close();
					await remove();
				}
			}),
			{ numRuns: title === 'SQLite' ? 100 : 40 },
		);
	}, 120_000);
});
