import { openChat } from '@lugbook/chat';
import { afterAll, describe, expect, test } from 'vitest';

// What people add to a question that has nothing to do with it (common practice; the messages are our own).

const chat = await openChat({ databaseUrl: 'sqlite::memory:', region: 'us' });
afterAll(() => chat.close());

async function ask(text: string) {
	const { answer } = await chat.handle({
		platform: 'test',
		shop: 's',
		channel: 'c',
		thread: null,
		delivery: null,
		person: { id: 'u', name: 'u', lead: false },
		command: 'ask',
		text,
		keep: false,
		region: 'us',
	});
	return answer;
}

describe('a whole question is answered whatever stands around it, and the rest is said back', () => {
	test.each([
		['40A 12V 15 ft thanks see you monday', 'monday'],
		[
			'40A 12V 15 ft haha nice weather today boss is grumpy nobody brought donuts again unbelievable',
			'grumpy',
		],
		['what wire for 40 amps 12v 15 ft 😂😂😂 gotta laugh otherwise crying lmao jajaja', 'jajaja'],
		['yo legends hope everybody slept fine, what wire for 40A 12V 15 ft', 'legends'],
		['40A 12V 15 ft *bold* _it_ <@U123> zork plugh xyzzy frobnicate', 'frobnicate'],
	])('%s', async (text, left) => {
		const answer = await ask(text);
		expect(answer.status).toBe('answered');
		expect(answer.headline).toBe((await ask('40A 12V 15 ft')).headline);
		expect(answer.unread.join(' ')).toContain(left);
	});
});

describe('a figure that has no place is asked about', () => {
	test.each([
		['40A 12V 15 ft the dog ate my 3 sandwiches', '3'],
		['40A 12V 15 ft and 23', '23'],
		['40A 12V 15 ft lunch costs 7 coins for everybody in the building, honestly', '7'],
	])('%s', async (text, figure) => {
		const answer = await ask(text);
		expect(answer.status).toBe('needs-input');
		expect(answer.headline).toContain(`"${figure}" has no place`);
	});
});

test('words alone are no question, however many', async () => {
	const answer = await ask('haha nice weather today boss is grumpy nobody brought donuts again unbelievable');
	expect(answer.status).toBe('not-understood');
});

test.each(['40A 15 ft 24V instead of 12', '40A 24V not 12V 15 ft', '40A 15 ft 24 V statt 12 V'])(
	'%s: the value it was is no second one',
	async (text) => {
		const { status, understood, notes } = await ask(text);
		expect(status).toBe('answered');
		expect(understood.find(({ name }) => name === 'voltageV')?.value).toBe(24);
		expect(notes.join()).toMatch(/12/);
	},
);
