/**
 * What stands under an answer of the Discord bot and beside it: buttons, menus, forms, files, marks on earlier answers,
 * replies. Over loopback, by the platform's own protocol.
 */

import type { Chat, Reply, ReplyFile } from '@lugbook/chat';
import { describe, expect, test } from 'vitest';
import { objectOf } from './common/json.js';
import { discordShop } from './discord/shop.js';
import { ResponseType, readable } from './discord.js';

const QUESTION = '40A 12V 15 ft';

/** The conversation whose replies carry something more. */
const adding =
	(more: (reply: Reply, text: string) => Partial<Reply>) =>
	(chat: Chat): Chat['handle'] =>
	async (incoming) => {
		const reply = await chat.handle(incoming);
		return { ...reply, ...more(reply, incoming.text) };
	};

async function answered(shop: Awaited<ReturnType<typeof discordShop>>, text = QUESTION, user?: string) {
	const { discord } = shop;
	const asked = await discord.command('ask', { text }, user === undefined ? {} : { user });
	return await discord.settled(asked);
}

describe('after an answer', () => {
	test('a reply to the answer of a command goes on with its question', async () => {
		const shop = await discordShop();
		const { discord } = shop;
		const answer = await answered(shop);
		discord.say('and at 30 ft?', { replyTo: answer, user: discord.people.two });
		const next = await discord.waitForMessage(/30 ft/);
		expect(next.visibleTo).toBeUndefined();
		expect(await shop.entries()).toHaveLength(2);
		expect(discord.violations).toEqual([]);
	});

	test('a thread started from the answer goes on with its question', async () => {
		const shop = await discordShop();
		const { discord } = shop;
		const thread = discord.startThread('heron', await answered(shop));
		discord.mention('and at 30 ft?', { channel: thread.id });
		expect((await discord.waitForMessage(/30 ft/)).channelId).toBe(thread.id);
	});

	test('asked of the lead, refused to another, signed by the lead; every step is in the log', async () => {
		const shop = await discordShop({ leads: ['100000000000000012'] });
		const { discord, chat } = shop;
		const asked = await discord.settled(await discord.press(await answered(shop), 'Ask the lead'));
		expect(readable(asked)).toMatch(/is asked of the lead/);
		const refused = await discord.settled(await discord.press(asked, 'Sign'));
		expect([refused.visibleTo, refused.content]).toEqual([
			discord.people.one,
			expect.stringMatching(/for the leads/),
		]);
		const signed = await discord.settled(await discord.press(asked, 'Sign', { user: discord.people.two }));
		expect(signed.visibleTo).toBeUndefined();
		expect(readable(signed)).toMatch(/No.{1,2} 1 signed by person/);
		const { entries } = await chat.log.find(shop.shop, { order: 'oldest', limit: 10 });
		expect(entries.map(({ kind }) => kind)).toEqual(['exchange', 'asked', 'refused-action', 'signed']);
		expect(discord.violations).toEqual([]);
	});

	test('a lead by a role of the server is one as long as they have it', async () => {
		const shop = await discordShop({ leadRoles: ['100000000000000021'] });
		const { discord } = shop;
		await answered(shop);
		await answered(shop, '10A 12V 15 ft');
		discord.roleHolders.add(discord.people.two);
		const asLead = { user: discord.people.two };
		const signed = await discord.settled(await discord.command('log', { text: 'sign 1' }, asLead));
		expect(readable(signed)).toMatch(/1 signed by/);
		discord.roleHolders.clear();
		const refused = await discord.settled(await discord.command('log', { text: 'sign 2' }, asLead));
		expect(readable(refused)).toMatch(/for the leads/);
	});

	test('rejected and commented with words from a form', async () => {
		const shop = await discordShop({ leads: ['100000000000000012'] });
		const { discord } = shop;
		const asked = await discord.settled(await discord.press(await answered(shop), 'Ask the lead'));
		const lead = { user: discord.people.two };
		const comment = await discord.press(asked, 'Comment', lead);
		expect(comment.responseType).toBe(ResponseType.modal);
		const said = await discord.settled(
			await discord.submitModal(comment, { words: 'measure the run again' }),
		);
		expect(readable(said)).toMatch(/measure the run again/);
		const reject = await discord.press(asked, 'Reject', lead);
		const rejected = await discord.settled(await discord.submitModal(reject, { words: 'the run is longer' }));
		expect(readable(rejected)).toMatch(/rejected by person.*the run is longer/);
		expect(discord.violations).toEqual([]);
	});

	test('an assumption is changed from the menu: a form with that one input, and a new answer', async () => {
		const shop = await discordShop();
		const { discord } = shop;
		const chosen = await discord.select(await answered(shop), 'lugbook-assume', ['1 insulationC']);
		expect(chosen.responseType).toBe(ResponseType.modal);
		expect(JSON.stringify(chosen.modal)).toMatch(/insulationC/);
		expect((objectOf(chosen.modal).components as unknown[]).length).toBe(1);
		const changed = await discord.settled(await discord.submitModal(chosen, { insulationC: '75 °C' }));
		expect(readable(changed)).toMatch(/40 A/);
		expect(readable(changed)).not.toMatch(/Assumed[^\n]*insulation/i);
		expect(await shop.entries()).toHaveLength(2);
		expect(discord.violations).toEqual([]);
	});

	test('saved to a build by its name', async () => {
		const shop = await discordShop();
		const { discord, chat } = shop;
		const opened = await discord.press(await answered(shop), 'Save to a build');
		const saved = await discord.settled(await discord.submitModal(opened, { words: 'Heron' }));
		expect(readable(saved)).toMatch(/heron/);
		expect(await chat.log.entry(shop.shop, 2)).toMatchObject({ build: 'heron', topic: 'wire' });
	});

	test('what one person alone sees is shown to the channel at a press, once', async () => {
		const shop = await discordShop();
		const { discord } = shop;
		const own = await answered(shop, 'qwertz', discord.people.two);
		expect(own.visibleTo).toBe(discord.people.two);
		const shared = await discord.settled(
			await discord.press(own, 'Show to the channel', { user: discord.people.two }),
		);
		expect(shared.visibleTo).toBeUndefined();
		const again = await discord.settled(
			await discord.press(own, 'Show to the channel', { user: discord.people.two }),
		);
		expect([again.visibleTo, again.content]).toEqual([
			discord.people.two,
			expect.stringMatching(/in the channel already/),
		]);
		expect(await shop.entries()).toHaveLength(1);
		expect(discord.violations).toEqual([]);
	});

	test.each(['1 OR 1=1', '99'])('a forged button to sign "%s" is refused, which is kept', async (value) => {
		const shop = await discordShop({ leads: ['100000000000000012'] });
		const { discord, chat } = shop;
		const answer = await answered(shop);
		const [row] = answer.components as { components: Record<string, unknown>[] }[];
		Object.assign(row?.components[0] ?? {}, { custom_id: `lugbook:sign:${value}` });
		const told = await discord.settled(
			await discord.press(answer, `lugbook:sign:${value}`, { user: discord.people.two }),
		);
		expect([told.visibleTo, told.content]).toEqual([
			discord.people.two,
			expect.stringMatching(/no number|no answer/),
		]);
		const { entries } = await chat.log.find(shop.shop, { limit: 10 });
		expect(entries.map(({ kind }) => kind)).toEqual(['refused-action', 'exchange']);
	});

	test.each(['assume:1 constructor', 'assume:99 currentA', 'change:-1', 'save:0x1', 'format:1'])(
		'a forged button "%s" changes nothing',
		async (id) => {
			const shop = await discordShop({ leads: ['100000000000000012'] });
			const { discord, chat } = shop;
			const answer = await answered(shop);
			const [row] = answer.components as { components: Record<string, unknown>[] }[];
			Object.assign(row?.components[0] ?? {}, { custom_id: `lugbook:${id}` });
			const pressed = await discord.press(answer, `lugbook:${id}`, { user: discord.people.two });
			expect(pressed.responseType).toBe(ResponseType.message);
			expect((await discord.settled(pressed)).visibleTo).toBe(discord.people.two);
			const { entries } = await chat.log.find(shop.shop, { limit: 10 });
			expect(entries.map(({ kind }) => kind)).toEqual(['exchange']);
		},
	);
});

describe('an earlier answer', () => {
	const marks = [
		{ entry: 1, channel: 'c', thread: null, text: 'No longer valid: replaced by No. 2', stands: false },
	];

	test('that no longer stands is changed in its place: struck through, said in words, without buttons', async () => {
		const shop = await discordShop({
			handle: adding((_, text) => (text.startsWith('60A') ? { marks } : {})),
		});
		const answer = await answered(shop);
		await answered(shop, '60A 12V 15 ft');
		await expect.poll(() => answer.edits.length).toBe(1);
		expect(shop.discord.botMessages()).toHaveLength(2);
		expect(readable(answer)).toMatch(/no longer valid: replaced by No.{1,2} 2/i);
		expect(answer.content).toMatch(/^~~4 AWG copper.*~~$/m);
		expect(answer.components).toEqual([]);
		expect(shop.discord.violations).toEqual([]);
	});

	test('whose message is gone does not hold up the new one', async () => {
		const shop = await discordShop({ handle: adding(() => ({ marks })) });
		(await answered(shop)).deleted = true;
		expect(readable(await answered(shop, '60A 12V 15 ft'))).toMatch(/60 A/);
	});
});

describe('files', () => {
	const picture: ReplyFile = {
		name: 'drop.png',
		mediaType: 'image/png',
		alternativeText: 'Voltage drop against length',
		bytes: new Uint8Array([137, 80, 78, 71]),
	};
	async function* inPieces() {
		for (let at = 0; at < 3; at += 1) yield new TextEncoder().encode(`part ${at}\n`);
	}
	const table: ReplyFile = {
		name: 'heron.csv',
		mediaType: 'text/csv',
		alternativeText: 'The log of heron',
		bytes: inPieces(),
	};

	test('go along with the answer, whole and with a text for those who do not see them', async () => {
		const shop = await discordShop({ handle: adding(() => ({ files: [picture, table] })) });
		const { attachments } = await answered(shop);
		expect(
			attachments.map(({ filename, description, bytes }) => [
				filename,
				description,
				bytes.toString('latin1'),
			]),
		).toEqual([
			['drop.png', 'Voltage drop against length', '\x89PNG'],
			['heron.csv', 'The log of heron', 'part 0\npart 1\npart 2\n'],
		]);
		expect(shop.discord.violations).toEqual([]);
	});

	test('larger than the platform takes are named, and the answer stands', async () => {
		const huge = { ...picture, name: 'huge.png', bytes: new Uint8Array(11 * 1024 * 1024) };
		const shop = await discordShop({ handle: adding(() => ({ files: [huge, picture] })) });
		const answer = await answered(shop);
		expect(answer.attachments.map(({ filename }) => filename)).toEqual(['drop.png']);
		expect(readable(answer)).toMatch(/AWG[\s\S]*huge\\?\.png is larger than may be sent here/);
		expect(shop.discord.violations).toEqual([]);
	});

	test('of an answer for one person are seen by that person alone', async () => {
		const shop = await discordShop({
			handle: adding(() => ({ files: [picture], audience: 'asker' as const })),
		});
		const answer = await answered(shop, QUESTION, shop.discord.people.two);
		expect([answer.visibleTo, answer.attachments.length]).toEqual([shop.discord.people.two, 1]);
	});
});

test('a long answer is one message; the whole goes along as a file, every danger stays in sight', async () => {
	const line = (kind: 'danger' | 'note', fold: boolean) =>
		Array.from({ length: 9 }, (_, at) => ({
			kind,
			text: `${kind} ${at} ${'in so many words '.repeat(8)}`,
			fold,
		}));
	const shop = await discordShop({
		handle: adding(({ parts }) => ({ parts: [...parts, ...line('note', true), ...line('danger', true)] })),
	});
	const { discord } = shop;
	const answer = await answered(shop);
	expect(discord.botMessages()).toHaveLength(1);
	const file = answer.attachments[0]?.bytes.toString('utf8') ?? '';
	for (let at = 0; at < 9; at += 1) {
		expect(answer.content).toMatch(new RegExp(`danger ${at} in so many words`, 'i'));
		expect(file).toMatch(new RegExp(`note ${at} in so many words`, 'i'));
	}
	expect(discord.violations).toEqual([]);
});
