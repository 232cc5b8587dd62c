import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { answerSchema, type Chat, type Incoming, openChat, plainText, type Reply } from './index.js';

let chat: Chat;
let count = 0;

beforeEach(async () => {
	chat = await openChat({
		databaseUrl: 'sqlite::memory:',
		region: 'us',
		now: () => new Date('2026-05-04T12:00:00Z'),
	});
});
afterEach(async () => {
	await chat.close();
});

function message(text: string, more: Partial<Incoming> = {}): Incoming {
	count += 1;
	return {
		platform: 'terminal',
		shop: 'demo',
		channel: 'c1',
		thread: null,
		delivery: `d${count}`,
		person: { id: 'u1', name: 'Robin', lead: false },
		command: 'ask',
		text,
		...more,
	};
}

const say = (text: string, more: Partial<Incoming> = {}): Promise<Reply> => chat.handle(message(text, more));
const result = (reply: Reply, name: string) => reply.answer.results.find((one) => one.name === name)?.value;

describe('a question is answered and kept', () => {
	test('40 A at 12 V over 15 ft', async () => {
		const { answer } = await say('40A 12V 15 ft');
		expect(answer.status).toBe('answered');
		expect(answer.headline).toBe('4 AWG copper, 50 A fuse at the source end');
		expect(answer.understood.map(({ name, said }) => [name, said])).toEqual([
			['currentA', '40A'],
			['voltageV', '12V'],
			['lengthM', '15 ft'],
		]);
		expect(answer.governedBy).toBe('voltage drop');
		expect(answer.entry).toBe(1);
		const entry = await chat.log.entry('demo', 1);
		expect(entry?.text).toBe('40A 12V 15 ft');
		expect(entry?.state).toBe('answered');
	});

	test('getting ready keeps nothing, and the first question is the first', async () => {
		await chat.prepare();
		expect(await chat.log.shops()).toEqual([]);
		const { answer } = await say('40A 12V 15 ft');
		expect(answer.entry).toBe(1);
		expect(await chat.log.shops()).toEqual(['demo']);
	});

	test('every answer keeps to the published schema', async () => {
		for (const text of [
			'40A 12V 15 ft',
			'12v 15 ft',
			'-5A 12V 3ft',
			'hello',
			'',
			'gibberish of no use',
			'40 A and 100 W at 12 V',
		]) {
			const { answer } = await say(text);
			expect(answerSchema.safeParse(answer).error).toBeUndefined();
		}
	});

	test('the chain holds neither the text as typed nor what could not be used', async () => {
		const { answer } = await say('40A 12V 15 ft for Jamie Doe in bay seven');
		expect(answer.unread.join(' ')).toMatch(/jamie doe/i);
		const entry = await chat.log.entry('demo', answer.entry as number);
		expect(JSON.stringify(entry?.body)).not.toMatch(/jamie/i);
		expect(entry?.text).toMatch(/Jamie Doe/);
	});

	test('with keep: false nothing is kept and no number is given', async () => {
		const { answer } = await say('40A 12V 15 ft', { keep: false });
		expect(answer.status).toBe('answered');
		expect(answer.entry).toBeNull();
		expect(await chat.log.head('demo')).toBeNull();
	});
});

describe('what is missing, wrong or in doubt', () => {
	test.each([
		['12v 15 ft', ['currentA'], /current/i],
		['40A 12V', ['lengthM'], /long/i],
		['9^9^9^9 ft 10A', ['lengthM'], /long/i],
	])('%s asks for just that number', async (text, missing, question) => {
		const { answer } = await say(text);
		expect(answer.status).toBe('needs-input');
		expect(answer.missing).toEqual(missing);
		expect(answer.headline).toMatch(question);
	});

	test('what could not be read is said back', async () => {
		expect((await say('9^9^9^9 ft 10A')).answer.unread).toEqual(['9^9^9^9 ft']);
		const reply = await say('40A 12V 15 ft zorgwick');
		expect(plainText(reply)).toContain('Not used: "zorgwick"');
	});

	test('a contradiction is named before anything is asked for', async () => {
		const { answer } = await say('40 A and 100 W at 12 V');
		expect(answer.status).toBe('refused');
		expect(answer.headline).toContain('contradict');
		expect(answer.headline).toContain('8.3 A');
	});

	test('an impossible value is refused with what was read and what would be right', async () => {
		const { answer, audience } = await say('-5A 12V 3ft');
		expect(answer.status).toBe('refused');
		expect(answer.headline).toContain('-5 A');
		expect(answer.because).toMatch(/must be from .* to /);
		expect(audience).toBe('asker');
	});

	test('two lengths are a question with both as buttons, and the answer to it is understood', async () => {
		const asked = await say('40A 12V 15 ft 20 ft', { thread: 't' });
		expect(asked.answer.status).toBe('needs-input');
		expect(asked.answer.headline).toContain('15 ft and 20 ft');
		expect(asked.buttons.map((button) => button.value)).toEqual(['15 ft', '20 ft']);
		const { answer } = await say('20 ft', { thread: 't' });
		expect(answer.status).toBe('answered');
		expect(result({ answer } as Reply, 'conductor')).toBe('2 AWG');
	});

	test('100 kB of text is not answered in part', async () => {
		const { answer } = await say(`40A 12V 15 ft ${'x'.repeat(100_000)}`);
		expect(answer.status).toBe('not-understood');
		expect(answer.headline).toContain('too long');
	});

	test('friendly words get a friendly line and no sizing', async () => {
		const { answer } = await say('thanks!');
		expect(answer.status).toBe('small-talk');
		expect(answer.results).toEqual([]);
	});
});

describe('follow-ups', () => {
	test('a whole question of another topic in the thread is answered as if it stood alone', async () => {
		const alone = await say('2000w inverter 12v 4ft each way');
		await say('40A 12V 15 ft', { thread: 't0' });
		const inThread = await say('2000w inverter 12v 4ft each way', { thread: 't0' });
		expect(inThread.answer.topic).toBe('inverter');
		expect(inThread.answer.headline).toBe(alone.answer.headline);
	});

	test('change length, then limit, then voltage, one after the other', async () => {
		const thread = 't1';
		expect(result(await say('40A 12V 15 ft', { thread }), 'conductor')).toBe('4 AWG');
		const longer = await say('and at 20 ft?', { thread });
		expect(result(longer, 'conductor')).toBe('2 AWG');
		expect((await chat.log.entry('demo', longer.answer.entry as number))?.follows).toBe(1);
		expect(result(await say('10% is fine', { thread }), 'conductor')).toBe('8 AWG');
		const other = await say('what about 24 V', { thread });
		expect(other.answer.understood.map(({ name, value }) => [name, value])).toEqual([
			['currentA', 40],
			['lengthM', 20 * 0.3048],
			['dropLimit', 0.1],
			['voltageV', 24],
		]);
	});

	test('a bare number answers the number asked for', async () => {
		await say('12v 15 ft', { thread: 't2' });
		const { answer } = await say('7.5', { thread: 't2' });
		expect(answer.status).toBe('answered');
		expect(answer.understood.find((one) => one.name === 'currentA')?.value).toBe(7.5);
	});

	test('why, the working and one size up are about the answer before', async () => {
		await say('40A 12V 15 ft', { thread: 't3' });
		expect((await say('why?', { thread: 't3' })).answer.headline).toContain('voltage drop governs');
		const working = await say('show the working', { thread: 't3' });
		expect(working.answer.working.length).toBeGreaterThan(4);
		expect(plainText(working, { folded: true })).toContain('ΔV = I · R');
		expect((await say('one size up?', { thread: 't3' })).answer.headline).toContain('2 AWG');
		expect(result(await say('and at 20 ft', { thread: 't3' }), 'conductor')).toBe('2 AWG');
	});

	test('another thread and another person in the channel keep their own questions', async () => {
		await say('40A 12V 15 ft', { thread: 'a' });
		expect((await say('and at 20 ft?', { thread: 'b' })).answer.status).not.toBe('answered');
		await say('40A 12V 15 ft');
		const other = await say('and at 20 ft?', { person: { id: 'u2', name: 'Sam', lead: false } });
		expect(other.answer.status).not.toBe('answered');
		expect(result(await say('and at 20 ft?'), 'conductor')).toBe('2 AWG');
	});

	test('the same for another load keeps voltage and length and asks for its current', async () => {
		await say('fridge 5A 12V 20 ft', { thread: 't4' });
		const asked = await say('same for the water pump', { thread: 't4' });
		expect(asked.answer.status).toBe('needs-input');
		expect(asked.answer.missing).toEqual(['currentA']);
		const { answer } = await say('8A', { thread: 't4' });
		expect(answer.understood.find(({ name }) => name === 'currentA')?.value).toBe(8);
		expect(answer.understood.find(({ name }) => name === 'voltageV')?.value).toBe(12);
	});

	test('a thread under the message that shows an answer goes on with it', async () => {
		const { answer } = await say('40A 12V 15 ft');
		await chat.shown({ shop: 'demo', channel: 'c1', message: 'm77', entry: answer.entry as number });
		const reply = await say('and at 20 ft?', {
			thread: 'm77',
			person: { id: 'u2', name: 'Sam', lead: false },
		});
		expect(result(reply, 'conductor')).toBe('2 AWG');
		expect((await say('and at 20 ft?', { thread: 'm77', channel: 'c2' })).answer.status).not.toBe('answered');
	});

	test('the thread is remembered after a restart', async () => {
		const folder = mkdtempSync(join(tmpdir(), 'lugbook-'));
		const databaseUrl = `sqlite:${join(folder, 'log.sqlite')}`;
		try {
			const first = await openChat({ databaseUrl, region: 'us' });
			await first.handle(message('40A 12V 15 ft', { thread: 't' }));
			await first.close();
			const second = await openChat({ databaseUrl, region: 'us' });
			const reply = await second.handle(message('and at 20 ft?', { thread: 't' }));
			expect(result(reply, 'conductor')).toBe('2 AWG');
			await second.close();
		} finally {
			rmSync(folder, { recursive: true });
		}
	});
});

describe('deliveries', () => {
	test('the same delivery five times is one entry and the same answer', async () => {
		const once = message('40A 12V 15 ft');
		const replies = [];
		for (let time = 0; time < 5; time += 1) replies.push(await chat.handle(once));
		expect(replies.map((reply) => reply.repeated)).toEqual([false, true, true, true, true]);
		expect(replies[4]?.answer).toEqual(replies[0]?.answer);
		expect((await chat.log.head('demo'))?.number).toBe(1);
	});

	test('five at once are one entry too', async () => {
		const once = message('40A 12V 15 ft blurf');
		const replies = await Promise.all(Array.from({ length: 5 }, () => chat.handle(once)));
		expect(replies.filter((reply) => !reply.repeated)).toHaveLength(1);
		expect(new Set(replies.map((reply) => JSON.stringify(reply.answer))).size).toBe(1);
		expect((await chat.log.head('demo'))?.number).toBe(1);
	});
});

describe('builds and the log', () => {
	test('a channel is bound to a build, and answers are kept under it', async () => {
		const bound = await say('use Heron', { command: 'build' });
		expect(bound.answer.headline).toContain('"heron"');
		const reply = await say('40A 12V 15 ft');
		expect(plainText(reply)).toContain('No. 2 in build "heron"');
		expect((await say('40A 12V 15 ft', { channel: 'c2' })).parts.at(-1)?.text).toBe('No. 3');
		const shown = plainText(await say('show', { command: 'build' }));
		expect(shown).toContain('4 AWG copper');
		expect(shown).not.toContain('No. 3');
	});

	test('/log shows, finds by topic and number, and verifies', async () => {
		await say('40A 12V 15 ft');
		await say('12v 15 ft');
		await say('5A 12v 15 ft');
		const shown = plainText(await say('show', { command: 'log' }));
		expect(shown).toMatch(/No\. 3[\s\S]*No\. 1/);
		expect(shown).not.toContain('No. 2');
		expect(plainText(await say('show unanswered', { command: 'log' }))).toContain('No. 2');
		expect(plainText(await say('show 1', { command: 'log' }))).toContain('ΔV = I · R');
		expect(plainText(await say('show 99', { command: 'log' }))).toContain('no answer No. 99');
		expect(plainText(await say('verify', { command: 'log' }))).toContain('unbroken');
	});

	test("another shop's entries are not seen", async () => {
		await say('40A 12V 15 ft');
		expect(plainText(await say('show 1', { command: 'log', shop: 'other' }))).toContain('no answer No. 1');
	});

	test.each(['ask', 'size', 'build', 'log'] as const)(
		'/%s help is private, ten lines at most',
		async (command) => {
			const reply = await say('help', { command });
			expect(reply.audience).toBe('asker');
			expect(plainText(reply).split('\n').length).toBeLessThanOrEqual(10);
		},
	);
});

describe('/size', () => {
	test('typed fields give what the words give', async () => {
		const typed = await say('wire', {
			command: 'size',
			fields: { currentA: '40', voltageV: '12 V', lengthM: "15'", dropLimit: '3' },
		});
		expect(typed.answer.headline).toBe('4 AWG copper, 50 A fuse at the source end');
		const words = await say('wire 40A 12V 15 ft', { command: 'size' });
		expect(words.answer.results).toEqual(typed.answer.results);
	});

	test('a field that can not be read is named with what was typed', async () => {
		const { answer } = await say('wire', { command: 'size', fields: { currentA: 'lots', lengthM: '15' } });
		expect(answer.status).toBe('refused');
		expect(answer.headline).toContain('"lots"');
		expect(answer.headline).toContain('current must be from');
	});

	test('an unknown topic lists those there are', async () => {
		expect(plainText(await say('flux', { command: 'size' }))).toMatch(/"flux" is no topic[\s\S]*wire: /);
	});
});

test('what a message says of region and units counts for that message', async () => {
	expect(result(await say('3.5m 20A 24v 35mm2 ok?'), 'verdict')).toBe('enough');
	expect(result(await say('16A 230V 12m'), 'conductor')).toBe('2.5 mm²');
	expect(result(await say('40A 12V 15 ft'), 'conductor')).toBe('4 AWG');
	expect(result(await say('40A 12V 15 ft', { region: 'eu' }), 'conductor')).toMatch(/mm²$/);
});
