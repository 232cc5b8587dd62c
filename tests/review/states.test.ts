/**
 * Where answers stand in review, against a model of a page: whatever people do, in whatever order, the lists of the log
 * show each answer in the state that the model has it in, and every refusal is kept.
 */

import { type Person, plainText } from '@lugbook/chat';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DIALECTS } from '../log/databases.js';
import { kim, openShop, robin, type Shop, sam } from './shop.js';

const people = [robin, sam, kim, { id: 'U0000005', name: 'Toni', lead: true }] as const;
/** Answers that one list shows without a second page. */
const ANSWERS_MAX = 8;

interface ModelAnswer {
	readonly asker: string;
	readonly follows: number | null;
	/** a follow-up replaces nothing; what is replaced is also followed, and no ground to stand on */
	readonly replaces: boolean;
	readonly thread: string;
	replaced: boolean;
	askedOfLead: boolean;
	/** entry of the last signature or rejection */
	decidedAt: number;
	decided: 'signed' | 'rejected' | null;
	/** entry by which it ceased to stand; 0 while it stands */
	lostAt: number;
}

const states = ['replaced', 'rejected', 'out of date', 'signed', 'asked of the lead', 'not checked'] as const;

class Model {
	readonly answers = new Map<number, ModelAnswer>();
	readonly newest = new Map<string, number>();
	/** the last entry's number */
	entries = 0;
	refused = 0;

	answer(asker: Person, thread: string, follows: number | null, replaces: boolean): void {
		this.entries += 1;
		if (replaces && follows !== null) {
			const old = this.answers.get(follows) as ModelAnswer;
			old.replaced = true;
			old.lostAt = this.entries;
		}
		this.newest.set(thread, this.entries);
		this.answers.set(this.entries, {
			...{ asker: asker.id, follows, replaces, thread, replaced: false, askedOfLead: false },
			...{ decidedAt: 0, decided: null, lostAt: 0 },
		});
	}

	refuse(): void {
		this.entries += 1;
		this.refused += 1;
	}

	decide(answer: ModelAnswer, how: 'signed' | 'rejected'): void {
		this.entries += 1;
		answer.decided = how;
		answer.decidedAt = this.entries;
		if (!answer.replaced) answer.lostAt = how === 'rejected' ? this.entries : 0;
	}

	stateOf(number: number): (typeof states)[number] {
		const answer = this.answers.get(number) as ModelAnswer;
		if (answer.replaced) return 'replaced';
		if (answer.decided === null) return answer.askedOfLead ? 'asked of the lead' : 'not checked';
		if (answer.decided === 'rejected') return 'rejected';
		for (let above = answer; above.follows !== null; ) {
			const below = this.answers.get(above.follows) as ModelAnswer;
			if (!above.replaces && below.lostAt > answer.decidedAt) return 'out of date';
			above = below;
		}
		return 'signed';
	}
}

interface Step {
	readonly kind: 'ask' | 'follow' | 'sign' | 'reject' | 'comment' | 'ask-lead' | 'replace';
	readonly who: number;
	readonly which: number;
}

const step: fc.Arbitrary<Step> = fc.record({
	kind: fc.constantFrom(
		...([
			'ask',
			'follow',
			'follow',
			'sign',
			'sign',
			'sign',
			'reject',
			'comment',
			'ask-lead',
			'replace',
		] as const),
	),
	who: fc.nat({ max: people.length - 1 }),
	which: fc.nat({ max: 100 }),
});

async function take(shop: Shop, model: Model, { kind, who, which }: Step, at: number): Promise<void> {
	const person = people[who] as Person;
	const numbers = [...model.answers.keys()];
	const number = numbers[which % Math.max(1, numbers.length)];
	const isFull = model.answers.size >= ANSWERS_MAX;
	// A length that no question had before, so that every change is one.
	const feet = 5 + at / 4;
	if (kind === 'ask' || number === undefined) {
		if (isFull) return;
		model.answer(person, `t${at}`, null, false);
		await shop.tell(person, `5A 12V ${feet} ft`, { thread: `t${at}` });
		return;
	}
	const answer = model.answers.get(number) as ModelAnswer;
	const { thread } = answer;
	if (kind === 'follow') {
		if (isFull) return;
		model.answer(person, thread, model.newest.get(thread) ?? null, false);
		await shop.tell(person, `and at ${feet} ft?`, { thread });
		return;
	}
	if (kind === 'replace') {
		if (isFull) return;
		if (person.id !== answer.asker && !person.lead) model.refuse();
		else if (!answer.replaced) model.answer(person, thread, number, true);
		await shop.tell(person, `/log replace ${number} and at ${feet} ft`, { thread });
		return;
	}
	if (kind === 'sign' || kind === 'reject') {
		const isOwn = kind === 'sign' && person.id === answer.asker;
		if (!person.lead || isOwn || (kind === 'sign' && answer.replaced)) model.refuse();
		else model.decide(answer, kind === 'sign' ? 'signed' : 'rejected');
		await shop.tell(person, `/log ${kind} ${number}${kind === 'reject' ? ' look again' : ''}`);
		return;
	}
	model.entries += 1;
	if (kind === 'ask-lead') answer.askedOfLead = true;
	await shop.tell(person, `/log ${kind} ${number}${kind === 'comment' ? ' measured' : ''}`);
}

describe.each(DIALECTS)('where answers stand ($title)', (dialect) => {
	test('the lists of the log show every answer in the state that the model has it in', async () => {
		await fc.assert(
			fc.asyncProperty(fc.array(step, { minLength: 20, maxLength: 35 }), async (steps) => {
				const shop = await openShop(dialect);
				try {
					const model = new Model();
					for (const [at, one] of steps.entries()) await take(shop, model, one, at);
					const listed = async (what: string) => {
						const reply = await shop.tell(kim, `/log show ${what} everywhere`);
						const text = plainText({ ...reply, buttons: [] });
						return [...text.matchAll(/^No\. (\d+), /gm)].map((match) => Number(match[1]));
					};
					const inState = (wanted: readonly string[]) =>
						[...model.answers.keys()].filter((number) => wanted.includes(model.stateOf(number))).reverse();
					for (const state of states) {
						if (state === 'not checked') continue;
						expect(await listed(state), state).toEqual(inState([state]));
					}
					expect(await listed('unsigned')).toEqual(
						inState(['not checked', 'asked of the lead', 'out of date']),
					);
					const kinds = await shop.kinds();
					expect(kinds).toHaveLength(model.entries);
					expect(kinds.filter((kind) => kind === 'refused-action')).toHaveLength(model.refused);
				} finally {
					await shop.close();
				}
			}),
			{ numRuns: dialect.title === 'SQLite' ? 40 : 10 },
		);
	});
});
