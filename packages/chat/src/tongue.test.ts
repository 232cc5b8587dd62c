import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openLog } from '@lugbook/log';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Chat } from './chat.js';
import { exchangeOf } from './memory.js';
import type { Incoming, Reply } from './message.js';
import { plainText } from './render/plain.js';

let folder: string;
let chat: Chat;

beforeEach(async () => {
	folder = await mkdtemp(join(tmpdir(), 'tongue-'));
	chat = new Chat(await openLog(`sqlite:${join(folder, 'log.sqlite')}`), { region: 'eu' });
});

afterEach(async () => {
	await chat.close();
	await rm(folder, { recursive: true });
});

async function ask(text: string, more: Partial<Incoming> = {}): Promise<Reply> {
	return await chat.handle({
		platform: 'test',
		shop: 'shop',
		channel: 'van',
		thread: null,
		delivery: null,
		person: { id: 'p1', name: 'Ina', lead: false },
		command: 'ask',
		text,
		...more,
	});
}

const seen = (reply: Reply) => plainText(reply, { folded: true });

describe('the language of a message decides', () => {
	test.each([
		['qué cable necesito para 40 A a 12 V, 5 m', 'de cobre, fusible de'],
		['welches Kabel brauche ich für 40 A 12 V 5 m', 'Kupfer, Sicherung'],
		['what wire do I need for 40 A 12 V 5 m', 'copper, 50 A fuse'],
		['40A 12V 5 m', 'copper, 50 A fuse'],
	])('%s', async (text, words) => {
		const reply = await ask(text);
		expect(reply.answer.status).toBe('answered');
		expect(reply.answer.headline).toContain(words);
		expect(reply.parts[0]?.text).toBe(reply.answer.headline);
	});

	test('whatever the language, the figures are the same', async () => {
		const answers = await Promise.all(
			[
				'qué cable necesito para 40 A a 12 V, 5 m',
				'welches Kabel brauche ich für 40 A 12 V 5 m',
				'what wire do I need for 40 A 12 V 5 m',
			].map((text) => ask(text)),
		);
		const [first, ...others] = answers.map(({ answer }) =>
			answer.results.map(({ name, value }) => [name, value]),
		);
		expect(first).toContainEqual(['conductor', '25 mm²']);
		for (const other of others) expect(other).toEqual(first);
	});
});

describe('a thread keeps its language', () => {
	test('a short follow-up, a reason and the working stay in it, until somebody writes another', async () => {
		await ask('qué cable necesito para un inversor de 2000 W a 12 V, 2 m', { thread: 't1' });
		const follow = await ask('y con 24 V?', { thread: 't1' });
		expect(follow.answer.headline).toMatch(/^2000 W a 24 V: fusible de 150 A/);
		expect(seen(await ask('24 V', { thread: 't1' }))).toContain('Leído:');
		expect(seen(await ask('por qué', { thread: 't1' }))).toContain('decide corriente del banco en el corte');
		expect(seen(await ask('show the working', { thread: 't1' }))).toContain(
			'Supuesto rendimiento del inversor',
		);
		const english = await ask('what about 48 V, please', { thread: 't1' });
		expect(seen(english)).toContain('Read:');
	});

	test('it holds under the message that shows the answer', async () => {
		const first = await ask('welche Sicherung brauche ich für 20 A auf 2.5 mm2, 12 V');
		await chat.shown({ shop: 'shop', channel: 'van', message: 'm7', entry: first.answer.entry ?? 0 });
		expect(seen(await ask('30A', { thread: 'm7' }))).toContain('Gelesen:');
	});

	test('another thread is none of it', async () => {
		await ask('qué cable necesito para 40 A a 12 V, 5 m', { thread: 't1' });
		expect(seen(await ask('40A 12V 5 m', { thread: 't2' }))).toContain('Read:');
	});

	test('what was not understood keeps it too', async () => {
		const lost = await ask('necesito una cosa con muchas patatas', { thread: 't3' });
		expect(lost.answer.status).toBe('not-understood');
		expect(seen(lost)).toContain('No he entendido');
		expect(seen(await ask('40A 12V 5 m', { thread: 't3' }))).toContain('Leído:');
	});
});

test('what the log keeps is English with the same numbers', async () => {
	const reply = await ask('qué cable necesito para 40 A a 12 V, 5 m');
	const entry = await chat.log.entry('shop', reply.answer.entry ?? 0);
	const kept = entry === null ? null : exchangeOf(entry);
	expect(kept?.answer.headline).toBe('25 mm² copper, 50 A fuse at the source end');
	expect(kept?.request?.context.language).toBe('en');
	expect(kept?.answer.results.map(({ value }) => value)).toEqual(
		reply.answer.results.map(({ value }) => value),
	);
});

test('a delivery that comes again is answered in the language it was answered in', async () => {
	const first = await ask('welches Kabel brauche ich für 40 A 12 V 5 m', { delivery: 'd1' });
	const again = await ask('welches Kabel brauche ich für 40 A 12 V 5 m', { delivery: 'd1' });
	expect(again.repeated).toBe(true);
	expect(again.answer.headline).toBe(first.answer.headline);
});

describe('danger is as plain as in English', () => {
	test('a danger has its word and stays in sight', async () => {
		const reply = await ask(
			'batería de litio conectada directo al alternador de 150 A, 200 Ah, cable de 5 m con relé',
		);
		const dangers = reply.parts.filter(({ kind }) => kind === 'danger');
		expect(dangers.length).toBeGreaterThan(0);
		for (const { severity, fold } of dangers) {
			expect(severity).toBe('PELIGRO');
			expect(fold).toBe(false);
		}
		expect(seen(reply)).toContain('PELIGRO: ');
	});

	test.each([
		['puedo puentear el fusible principal', 'No ayudo a anular un dispositivo de protección'],
		['kann ich die sicherung überbrücken', 'Ich helfe nicht, eine Schutzeinrichtung außer Kraft zu setzen'],
	])('%s', async (text, words) => {
		const reply = await ask(text);
		expect(reply.answer.status).toBe('refused');
		expect(reply.answer.headline).toContain(words);
		expect(reply.answer.because).not.toMatch(/\b(?:the|and|of)\b/);
	});
});

test('thousands are never parted by a comma that reads as a decimal one', async () => {
	const reply = await ask('Kurzschlussstrom der Batterie 12 V 300 Ah LiFePO4, welche Sicherung brauche ich', {
		thread: 't9',
	});
	expect(reply.answer.topic).toBe('short-circuit');
	expect(reply.answer.headline).toMatch(/\d\u202F\d{3} A/);
	expect(seen(reply)).not.toMatch(/\d,000/);
});

test('a number that is asked for is asked for in the language', async () => {
	const reply = await ask('nevera 40A 12V');
	expect(reply.answer.status).toBe('needs-input');
	expect(reply.answer.headline).toBe('¿Qué longitud tiene el recorrido, solo la ida?');
	expect(reply.answer.missing).toEqual(['lengthM']);
});
