import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Chat, openChat, plainText } from '../index.js';

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

async function build(text: string, shop = 'demo'): Promise<string> {
	count += 1;
	const person = { id: 'u1', name: 'Robin', lead: false };
	const reply = await chat.handle({
		platform: 'terminal',
		shop,
		channel: 'c1',
		thread: null,
		delivery: `d${count}`,
		person,
		command: 'build',
		text,
	});
	return plainText(reply, { folded: true });
}

test('a description is kept as read, corrected in words, and checked', async () => {
	await build('use heron');
	const told = await build(
		'describe two 100 Ah 12 V lithium batteries, 2000 W inverter, fridge 45 W, diesel heater, no CO alarm, fresh tank 30 gal, gray tank 15 gal',
	);
	expect(told).toContain('fridge: power 45 W');
	expect(told).toMatch(/Said not to be there: .*(?:CO|carbon)/i);
	expect(await build('describe the fridge is 60 W')).toContain('fridge: power 60 W');
	const check = await build('check');
	expect(check).toMatch(/Build "heron": \d+ dangers?, \d+ warnings?/);
	expect(check).toMatch(/DANGER: .*carbon/i);
	expect(check).toContain('Not known: ');
	const { entries } = await chat.log.find('demo', { kinds: ['build-changed'] });
	expect(entries).toHaveLength(2);
	expect(JSON.stringify(entries[0]?.body)).not.toContain('the fridge is');
});

test('nothing told, nothing checked', async () => {
	expect(await build('check')).toContain('No build is chosen');
	await build('use wren');
	expect(await build('check')).toContain('Nothing is known of build "wren"');
	expect(await build('describe hello there')).toContain('no equipment');
});

test("another shop's build of the same name is another build", async () => {
	await build('use heron');
	await build('describe fridge 45 W');
	await build('use heron', 'other');
	expect(await build('check', 'other')).toContain('Nothing is known');
});
