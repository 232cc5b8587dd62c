import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Chat, type Incoming, openChat, type Person, plainText } from '../index.js';

let chat: Chat;
let count = 0;
const robin: Person = { id: 'u1', name: 'Robin', lead: false };
const kim: Person = { id: 'u2', name: 'Kim', lead: true };

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

async function say(person: Person, text: string, more: Partial<Incoming> = {}): Promise<string> {
	count += 1;
	const command = text.startsWith('/log ') ? 'log' : text.startsWith('/build ') ? 'build' : 'ask';
	const reply = await chat.handle({
		platform: 'terminal',
		shop: 'demo',
		channel: 'c1',
		thread: null,
		delivery: `d${count}`,
		person,
		command,
		text: text.replace(/^\/\w+ /, ''),
		...more,
	});
	return plainText({ ...reply, buttons: [] }, { folded: true });
}

const kinds = async () =>
	(await chat.log.find('demo', { order: 'oldest', limit: 100 })).entries.map(({ kind }) => kind);

describe('signing', () => {
	test("a lead signs somebody else's answer, and the sheet shows name, time and meaning", async () => {
		await say(robin, '40A 12V 15 ft');
		expect(await say(kim, '/log sign 1')).toContain('No. 1 signed by Kim');
		const sheet = await say(robin, '/log sheet 1');
		expect(sheet).toContain('Kim');
		expect(sheet).toMatch(/checked and approved/);
		expect(sheet).toMatch(/2026-05-04/);
		expect(await kinds()).toEqual(['exchange', 'signed']);
	});

	test('somebody who is no lead is refused politely, and that is kept', async () => {
		await say(robin, '40A 12V 15 ft');
		expect(await say(robin, '/log sign 1')).toContain('for the leads');
		expect(await say(robin, '/log reject 1 too thin')).toContain('for the leads');
		expect(await kinds()).toEqual(['exchange', 'refused-action', 'refused-action']);
	});

	test('nobody signs the answer to their own question, unless the shop allows it, and then the signature says so', async () => {
		await say(kim, '40A 12V 15 ft');
		expect(await say(kim, '/log sign 1')).toContain('your own question');
		expect(await say(robin, '/log own-signature on')).toContain('Only a lead');
		await say(kim, '/log own-signature on');
		expect(await say(kim, '/log sign 1')).toContain('their own question; this shop allows it');
		expect(await say(kim, '/log sheet 1')).toMatch(/own question/);
		expect(await kinds()).toEqual(['exchange', 'refused-action', 'refused-action', 'settings', 'signed']);
	});

	test('a rejection needs a reason, which the sheet shows', async () => {
		await say(robin, '40A 12V 15 ft');
		expect(await say(kim, '/log reject 1')).toContain('Say why');
		expect(await say(kim, '/log reject 1 the run is 25 ft')).toContain('the run is 25 ft');
		expect(await say(kim, '/log sheet 1')).toContain('the run is 25 ft');
	});

	test('the chain holds no word of a reason or a comment', async () => {
		await say(robin, '40A 12V 15 ft');
		await say(kim, '/log reject 1 measured wrongly');
		await say(robin, '/log comment 1 measured again');
		const { entries } = await chat.log.find('demo', { kinds: ['rejected', 'commented'] });
		expect(entries).toHaveLength(2);
		for (const entry of entries) expect(JSON.stringify(entry.body)).not.toContain('measured');
		expect((await chat.log.verify('demo')).problem).toBeNull();
	});

	test('the same delivery of a signature signs once', async () => {
		await say(robin, '40A 12V 15 ft');
		await say(kim, '/log sign 1', { delivery: 'once' });
		expect(await say(kim, '/log sign 1', { delivery: 'once' })).toContain('Done already');
		expect(await kinds()).toEqual(['exchange', 'signed']);
	});

	test.each(['sign 99', 'sheet 99', 'comment 99 x', 'ask-lead 99', 'reject 99 x'])(
		'/log %s: no such answer',
		async (text) => {
			expect(await say(kim, `/log ${text}`)).toContain('no answer No. 99');
		},
	);

	test("another shop's answer can't be seen or signed by its number", async () => {
		await say(robin, '40A 12V 15 ft');
		expect(await say(kim, '/log sign 1', { shop: 'other' })).toContain('no answer No. 1');
		expect(await say(kim, '/log sheet 1', { shop: 'other' })).toContain('no answer No. 1');
		expect(await kinds()).toEqual(['exchange']);
	});
});

describe('review', () => {
	test('shows what is unsigned, dangers first, and what was asked of the lead', async () => {
		await say(kim, '/build use heron');
		await say(robin, '40A 12V 15 ft');
		await say(robin, '40A 12V 15 ft 10 awg ok?');
		await say(robin, '5A 12V 10 ft');
		await say(robin, '/log ask-lead 4');
		const before = await say(kim, '/log review');
		expect(before).toMatch(
			/3 unsigned in build "heron"[\s\S]*DANGER wiring: No\. 3[\s\S]*No\. 2[\s\S]*No\. 4.*\(asked of the lead\)/,
		);
		await say(kim, '/log sign 2');
		await say(kim, '/log reject 3 far too thin');
		const after = await say(kim, '/log review');
		expect(after).toMatch(/1 unsigned/);
		expect(after).not.toContain('No. 2');
	});
});

describe('pictures', () => {
	const pictureOf = (text: string, more: Partial<Incoming> = {}) => {
		count += 1;
		const place = { platform: 'terminal', shop: 'demo', channel: 'c1', thread: null, delivery: `p${count}` };
		return chat.handle({ ...place, person: robin, command: 'log', text, ...more });
	};

	test('of a run: a PNG of the drop against the length, and the same in words', async () => {
		await say(kim, '/build use Heron / 2');
		await say(robin, '40A 12V 15 ft');
		const { files, parts, audience } = await pictureOf('picture 2');
		expect(audience).toBe('channel');
		expect(parts[0]?.text).toBe('Picture of No. 2: Voltage drop against length');
		expect(files).toHaveLength(1);
		const [file] = files ?? [];
		expect(file?.name).toBe('heron-2-2-drop.png');
		expect(file?.mediaType).toBe('image/png');
		expect(file?.alternativeText).toContain('4 AWG');
		const bytes = Buffer.from(file?.bytes as Uint8Array);
		// Signature, then width and height of the header (PNG specification, 5.2 and 11.2.2).
		expect(bytes.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a');
		expect(bytes.readUInt32BE(16)).toBe(360 * 3);
	});

	test('of a simulation: the day, the week, or both', async () => {
		await say(robin, 'simulate 14 days 200Ah lithium 400W solar denver january 900 Wh a day');
		const both = await pictureOf('picture 1');
		expect(both.files?.map(({ name }) => name)).toEqual(['answer-1-day.png', 'answer-1-week.png']);
		const week = await pictureOf('picture #1 Week');
		expect(week.files?.map(({ name }) => name)).toEqual(['answer-1-week.png']);
		const other = await pictureOf('picture 1 moon');
		expect(other.files).toBeUndefined();
		expect(other.parts[0]?.text).toBe('There is no picture "moon" of No. 1. There is "day", "week".');
	});

	test('what has none says so; another shop sees none', async () => {
		await say(robin, '2 people fresh tank 40 gal, waste tank 40 gal for 5 days');
		expect((await pictureOf('picture 1')).parts[0]?.text).toMatch(/^No\. 1 \(tank\) has no picture/);
		await say(robin, '40A 12V 15 ft');
		const other = await pictureOf('picture 2', { shop: 'other' });
		expect(other.files).toBeUndefined();
		expect(other.parts[0]?.text).toContain('no answer No. 2');
		expect((await pictureOf('picture 99')).parts[0]?.text).toContain('no answer No. 99');
	});
});
