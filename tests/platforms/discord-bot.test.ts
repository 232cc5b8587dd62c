/**
 * The Discord bot against the stand-in of its platform: what people ask, what they then read, and what the log keeps.
 * Everything goes over loopback by the platform's own protocol.
 */

import { type AnyTopic, type Chat, HEALTH_PATH, plainText, topics } from '@lugbook/chat';
import { charactersOf, commands, optionNames, pagesOf } from '@lugbook/discord';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isSecondReconnect } from '../../apps/discord/src/second-reconnect.js';
import { afterwards } from './common/closing.js';
import { NOTICE, openConversation } from './common/conversation.js';
import { discordBotOn, discordShop } from './discord/shop.js';
import { Flag, ResponseType, readable, startDiscordStandIn } from './discord.js';

const QUESTION = '40A 12V 15 ft';

/** What the terminal says to the same question, from a log of its own. */
async function terminalAnswer(text: string): Promise<string[]> {
	const chat = await openConversation();
	const person = { id: 'one', name: 'one', lead: false };
	const place = {
		platform: 'terminal',
		shop: 'local',
		channel: 'terminal',
		thread: null,
		delivery: null,
		person,
	};
	const reply = await chat.handle({ ...place, command: 'ask', text });
	await chat.close();
	return plainText({ ...reply, buttons: [] }, { folded: true }).split('\n');
}

/** A message's lines as the platform shows them: escapes undone, style off. */
const shownLines = (content: string) =>
	content
		.replace(/^\*\*|\*\*$/gm, '')
		.replace(/^-# /gm, '')
		.replace(/\\([^0-9A-Za-z\s])/g, '$1')
		.split('\n');
const sorted = (lines: readonly string[]) => lines.toSorted();
const slowly =
	(ms: number) =>
	(chat: Chat): Chat['handle'] =>
	async (incoming: Parameters<Chat['handle']>[0]) => {
		await new Promise((resolve) => setTimeout(resolve, ms));
		return chat.handle(incoming);
	};

describe('questions', () => {
	test('a command: answered in the channel, kept, the same words as in the terminal', async () => {
		// The first answer of a process loads what it needs: under load that may take longer than the platform waits.
		const said = await terminalAnswer(QUESTION);
		const { discord, entries } = await discordShop();
		const asked = await discord.command('ask', { text: QUESTION }, { user: discord.people.two });
		expect([ResponseType.message, ResponseType.deferMessage]).toContain(asked.responseType);
		const answer = await discord.settled(asked, 30_000);
		const lines = shownLines(answer.content);
		const words = lines.filter((line) => !NOTICE.test(line));
		expect(lines.filter((line) => NOTICE.test(line))).toHaveLength(1);
		expect(sorted(words)).toEqual(sorted(said));
		expect(words[0]).toMatch(/\d\/?\d* AWG/);
		expect(answer.visibleTo).toBeUndefined();
		expect(await entries()).toMatchObject([
			{ number: 1, text: QUESTION, personName: 'person-two', headline: words[0] },
		]);
		expect(discord.violations).toEqual([]);
	});

	test('/size with typed fields gives the numbers of the same question in words', async () => {
		const { discord, entries } = await discordShop();
		const wire = sizeOptions('wire');
		await discord.command(
			'size',
			wire.fill({ currentA: '40 A', voltageV: '12 V', lengthM: '15 ft' }),
			wire.at,
		);
		await discord.command('ask', { text: QUESTION });
		await discord.command('size', { ...wire.fill({ lengthM: '15 ft' }), also: '40A 12V' }, wire.at);
		const [first, second, third] = (await entries()).map(({ headline }) => headline);
		expect([first, third]).toEqual([second, second]);
		expect(discord.violations).toEqual([]);
	});

	test('a field that cannot be read is told to the asker alone', async () => {
		const { discord } = await discordShop();
		const wire = sizeOptions('wire');
		await discord.command('size', wire.fill({ currentA: 'plenty', lengthM: '15 ft' }), wire.at);
		const answer = await discord.waitForMessage(/plenty/);
		expect(answer.visibleTo).toBe(discord.people.one);
	});

	test('a mention is answered as a reply; replying to the answer goes on with the question', async () => {
		const { discord, entries } = await discordShop();
		const asked = discord.mention(QUESTION);
		const first = await discord.waitForMessage(/AWG/);
		expect(first.replyTo).toBe(asked.id);
		discord.say('between people: 60A 12V 20 ft');
		discord.say('and at 30 ft?', { replyTo: first });
		const second = await discord.waitForMessage(/30 ft/);
		expect(second.id).not.toBe(first.id);
		expect(await entries()).toHaveLength(2);
		expect(discord.violations).toEqual([]);
	});

	test('a thread keeps its own line of questions', async () => {
		const { discord, entries } = await discordShop();
		const thread = discord.startThread('Heron');
		discord.mention(QUESTION, { channel: thread.id });
		await discord.waitForMessage(/AWG/);
		discord.mention('and at 30 ft?', { channel: thread.id });
		await discord.waitForMessage(/30 ft/);
		expect((await entries()).map((entry) => entry.thread)).toEqual([thread.id, thread.id]);
	});

	test('a private message is answered, and kept apart from the shop', async () => {
		const { discord, entries } = await discordShop();
		discord.dm(QUESTION);
		await discord.waitForMessage(/AWG/);
		expect(await entries()).toEqual([]);
		expect(await entries(`discord:user:${discord.people.one}`)).toHaveLength(1);
	});

	test('the same interaction five times: one entry, one answer, nothing refused', async () => {
		const { discord, entries } = await discordShop();
		const asked = await discord.command('ask', { text: QUESTION });
		for (let again = 0; again < 4; again += 1) discord.redispatch(asked);
		await discord.command('ask', { text: '10A 12V 3 ft' });
		expect(discord.botMessages()).toHaveLength(2);
		expect((await entries()).map(({ text }) => text)).toEqual(['10A 12V 3 ft', QUESTION]);
		expect(discord.calls('interaction.callback').map(({ status }) => status)).toEqual([200, 200]);
	});

	test('the same interaction five times while the first is still being answered', async () => {
		const { discord, entries } = await discordShop({ handle: slowly(200) });
		const asking = discord.command('ask', { text: QUESTION });
		await expect.poll(() => discord.latestInteraction()).toBeDefined();
		const interaction = discord.latestInteraction();
		if (interaction) for (let again = 0; again < 4; again += 1) discord.redispatch(interaction);
		await asking;
		expect(await entries()).toHaveLength(1);
		expect(discord.botMessages()).toHaveLength(1);
	});
});

describe('what people read', () => {
	const hostile =
		'@everyone <@100000000000000012> <@&7> **bold** _it_ `x` ||no|| [go](https://example.com) # \\ -# > 1. <t:0>';

	test('mentions and markup in a question are inert in the answer', async () => {
		const { discord } = await discordShop();
		await discord.command('ask', { text: `${QUESTION} ${hostile}` });
		discord.mention(`${QUESTION} ${hostile}`);
		await expect.poll(() => discord.botMessages().length).toBe(2);
		for (const message of discord.botMessages()) {
			expect(message.content).toContain('bold');
			expect(message.pings).toEqual({ everyone: false, users: [], roles: [] });
		}
		expect(discord.violations).toEqual([]);
	});

	test('whatever the conversation repeats is shown letter by letter, in first answers, edits and follow-ups', async () => {
		const kinds = ['headline', 'danger', 'warning', 'unread', 'list', 'kept'] as const;
		const { discord } = await discordShop({
			handle: (chat) => async (incoming) => {
				const late = incoming.text.includes('late');
				if (late) await new Promise((resolve) => setTimeout(resolve, 1700));
				const reply = await chat.handle({ ...incoming, text: QUESTION });
				const parts = kinds.map((kind) => ({ kind, text: hostile.repeat(late ? 10 : 1), fold: false }));
				return { ...reply, parts, buttons: [] };
			},
		});
		await discord.command('ask', { text: QUESTION });
		const late = await discord.command('ask', { text: 'late' });
		expect(late.responseType).toBe(ResponseType.deferMessage);
		await discord.settled(late);
		await expect.poll(() => late.followUps.length).toBeGreaterThan(0);
		const [first, ...others] = discord.botMessages();
		expect(
			shownLines(first?.content ?? '')
				.join('\n')
				.split(hostile),
		).toHaveLength(kinds.length + 1);
		// The decision and the danger stand in messages whole, however long; the rest goes along as a file.
		const letters = (text: string) => text.replace(/\s/g, '');
		const shown = letters(others.map(({ content }) => shownLines(content).join('')).join(''));
		expect(shown.split(letters(hostile)).length - 1).toBeGreaterThanOrEqual(2 * 10);
		expect(others[0]?.attachments).toHaveLength(1);
		for (const message of discord.botMessages()) expect(message.pings.everyone).toBe(false);
		expect(discord.violations).toEqual([]);
	});

	test('help and what was not understood are for the asker alone', async () => {
		const { discord } = await discordShop();
		const help = await discord.settled(
			await discord.command('ask', { text: 'help' }, { user: discord.people.two }),
		);
		expect(help.visibleTo).toBe(discord.people.two);
		expect(help.flags & Flag.ephemeral).toBe(Flag.ephemeral);
	});

	test('a late answer for the asker alone leaves no notice behind', async () => {
		const { discord } = await discordShop({ handle: slowly(1700) });
		const asked = await discord.command('ask', { text: 'help' }, { user: discord.people.two });
		expect(asked.responseType).toBe(ResponseType.deferMessage);
		await expect.poll(() => discord.reading()).toEqual([]);
		expect(discord.reading(discord.channelId, discord.people.two).join()).toMatch(/one way unless/);
	});

	test('the working, by its button', async () => {
		const { discord } = await discordShop();
		const answer = await discord.settled(await discord.command('ask', { text: QUESTION }));
		const pressed = await discord.press(answer, 'Show working', { user: discord.people.two });
		expect(readable(await discord.settled(pressed))).toMatch(/=/);
		expect(discord.violations).toEqual([]);
	});

	test('changing an answer opens its form, filled in, and keeps what has no input there', async () => {
		const { discord, entries } = await discordShop();
		const answer = await discord.settled(await discord.command('ask', { text: `${QUESTION} 2% drop` }));
		const opened = await discord.press(answer, 'Change');
		expect(opened.responseType).toBe(ResponseType.modal);
		expect(JSON.stringify(opened.modal)).toMatch(/"value":"40 A"/);
		const changed = await discord.submitModal(opened, { lengthM: '30 ft' });
		expect(readable(await discord.settled(changed))).toMatch(/30 ft/);
		expect(readable(await discord.settled(changed))).toMatch(/limit 2 %/);
		expect(await entries()).toHaveLength(2);
		expect(discord.violations).toEqual([]);
	});

	test('words are offered while a field is typed', async () => {
		const { discord } = await discordShop();
		const wire = sizeOptions('wire');
		const typed = await discord.autocomplete('size', wire.fill({ load: 'fri' }), {
			...wire.at,
			focused: wire.option('load'),
		});
		expect(typed.choices?.[0]).toEqual({ name: 'fridge', value: 'fridge' });
		const any = await discord.autocomplete('size', wire.fill({ load: '' }), {
			...wire.at,
			focused: wire.option('load'),
		});
		expect(any.choices?.length).toBe(25);
		// In a list it is the last item that is being typed.
		const budget = sizeOptions('budget');
		const more = await discord.autocomplete('size', budget.fill({ loads: 'fridge 60W 24h, cook' }), {
			...budget.at,
			focused: budget.option('loads'),
		});
		expect(more.choices?.[0]?.value).toMatch(/^fridge 60W 24h, cook\w+/);
		expect(discord.violations).toEqual([]);
	});

	test('/size TOPIC without inputs opens a form of what it can be asked by', async () => {
		const { discord, entries } = await discordShop();
		const topic = sizeOptions('short-circuit');
		const form = () => discord.command('size', {}, topic.at);
		const opened = await form();
		expect(opened.responseType).toBe(ResponseType.modal);
		const unread = await discord.settled(await discord.submitModal(opened, { unitAh: 'a lot' }));
		expect(readable(unread)).toMatch(/I read "a lot"\. The capacity of one battery must be from/);
		expect(unread.visibleTo).toBe(discord.people.one);
		const answer = await discord.settled(await discord.submitModal(await form(), { unitAh: '200 Ah' }));
		expect(readable(answer)).toMatch(/class T fuse/);
		expect(answer.visibleTo).toBeUndefined();
		expect((await entries()).map(({ text }) => text)).toEqual(['short-circuit', 'short-circuit']);
		expect(discord.violations).toEqual([]);
	});
});

/** The options of a topic's subcommand by field, and where the subcommand stands. */
function sizeOptions(topicName: string) {
	const topic = topics.find(({ name }) => name === topicName) as AnyTopic;
	const names = optionNames(topic);
	const at = { subcommand: topicName, ...(topics.length > 25 ? { group: topic.system } : {}) };
	const fill = (fields: Record<string, string>) =>
		Object.fromEntries(Object.entries(fields).map(([field, value]) => [names.get(field) as string, value]));
	return { fill, option: (field: string) => names.get(field) as string, at };
}

describe('commands', () => {
	test('are taken by the platform, within 8000 characters each', async () => {
		const { discord } = await discordShop();
		expect(discord.registered().map((command) => command.name)).toEqual(['ask', 'size', 'build', 'log']);
		for (const command of commands()) expect(charactersOf(command)).toBeLessThanOrEqual(8000);
		expect(discord.violations).toEqual([]);
	});

	test('every topic has its subcommand with all that it asks for', () => {
		const size = commands().find(({ name }) => name === 'size');
		const flat = (options: readonly object[]): { name: string; options?: { name: string }[] }[] =>
			(options as { type: number; name: string; options?: object[] }[]).flatMap((one) =>
				one.type === 2 ? flat(one.options ?? []) : [one as { name: string; options?: { name: string }[] }],
			);
		const subcommands = flat(size?.options ?? []);
		expect(subcommands.map(({ name }) => name).toSorted()).toEqual(topics.map(({ name }) => name).toSorted());
		for (const topic of topics) {
			const options =
				subcommands.find(({ name }) => name === topic.name)?.options?.map(({ name }) => name) ?? [];
			const names = optionNames(topic);
			expect(new Set(names.values()).size).toBe(names.size);
			for (const [field, { presence }] of Object.entries(topic.fields)) {
				if (presence === 'required') expect(options, topic.name).toContain(names.get(field));
			}
			expect(options.at(-1)).toBe('also');
		}
	});

	test('many more topics than there are still fit, in groups', async () => {
		const { discord } = await discordShop();
		const many = Array.from({ length: 60 }, (_, at): AnyTopic => {
			const model = topics[at % topics.length] as AnyTopic;
			const systems = ['wiring', 'energy', 'water', 'climate', 'weight', 'structure'] as const;
			return { ...model, name: `topic-${at}`, system: systems[at % 6] ?? 'wiring' };
		});
		for (const count of [1, 25, 26, 60]) {
			const response = await fetch(
				`${discord.apiUrl}/v10/applications/${discord.applicationId}/guilds/${discord.guildId}/commands`,
				{
					method: 'PUT',
					headers: { authorization: `Bot ${discord.botToken}`, 'content-type': 'application/json' },
					body: JSON.stringify(commands(many.slice(0, count))),
				},
			);
			expect({ count, status: response.status, violations: discord.violations }).toEqual({
				count,
				status: 200,
				violations: [],
			});
		}
	});
});

describe('pages', () => {
	const part = fc.record({
		kind: fc.constantFrom(...(['danger', 'warning', 'note', 'list', 'working', 'assumed', 'kept'] as const)),
		text: fc.oneof(
			fc.string({ maxLength: 300 }),
			fc.string({ minLength: 1900, maxLength: 2500, unit: 'grapheme' }),
			fc.constant('@everyone'),
		),
		fold: fc.boolean(),
	});
	const button = fc.record({
		action: fc.constantFrom('working' as const, 'answer' as const),
		label: fc.string({ minLength: 1, maxLength: 120 }),
		value: fc.string({ maxLength: 120 }),
	});

	test('any reply keeps to the limits; what does not fit goes along as a file', async () => {
		const { discord, chat } = await discordShop();
		const person = { id: '1', name: 'one', lead: false };
		const place = { platform: 'discord', shop: 'x', channel: 'c', thread: null, delivery: null, person };
		const base = await chat.handle({ ...place, command: 'ask', text: QUESTION });
		const letters = (text: string) => text.replace(/\s/g, '');
		await fc.assert(
			fc.asyncProperty(
				fc.array(part, { maxLength: 40 }),
				fc.array(button, { maxLength: 40 }),
				fc.stringMatching(/^[a-z0-9*@_ ]{1,300}$/).filter((text) => text.trim() !== ''),
				async (parts, buttons, headline) => {
					const all = [{ kind: 'headline' as const, text: headline, fold: false }, ...parts];
					const pages = pagesOf({ ...base, parts: all, buttons, files: [] });
					expect(pages.length).toBeLessThanOrEqual(3);
					for (const { content, components, allowedMentions } of pages) {
						const response = await fetch(`${discord.apiUrl}/v10/channels/${discord.channelId}/messages`, {
							method: 'POST',
							headers: { authorization: `Bot ${discord.botToken}`, 'content-type': 'application/json' },
							body: JSON.stringify({
								content,
								components,
								allowed_mentions: { parse: allowedMentions.parse },
							}),
						});
						expect([response.status, discord.violations]).toEqual([200, []]);
					}
					const files = pages.flatMap((page) => page.files).map(({ bytes }) => bytes.toString('utf8'));
					const shown = [...pages.map(({ content }) => shownLines(content).join('\n')), ...files].join('\n');
					for (const { text } of all) expect(letters(shown)).toContain(letters(text));
				},
			),
			{ numRuns: 60 },
		);
	});
});

describe('when things go wrong', () => {
	test('the platform is busy: the answer comes after its pause, once', async () => {
		const { discord } = await discordShop();
		discord.faults.order('channel.send', { kind: 'rate-limit', retryAfterS: 0.5 });
		discord.mention(QUESTION);
		await discord.waitForMessage(/AWG/);
		expect(discord.botMessages()).toHaveLength(1);
	});

	test('an answer lost on the way and sent again stands once', async () => {
		const { discord } = await discordShop();
		discord.faults.order('channel.send', { kind: 'drop-answer' });
		discord.mention(QUESTION);
		await discord.waitForMessage(/AWG/);
		discord.mention('10A 12V 3 ft');
		await expect.poll(() => discord.botMessages().length).toBeGreaterThanOrEqual(2);
		const texts = discord.botMessages().map(({ content }) => content.split('\n')[0]);
		expect(texts.filter((text) => text === texts[0])).toHaveLength(1);
	});

	test('a conversation that throws is told to the asker, and the bot lives on', async () => {
		let broken = true;
		const { discord } = await discordShop({
			handle: (chat) => async (incoming) => {
				if (broken) throw new Error('the log is gone');
				return chat.handle(incoming);
			},
		});
		const asked = await discord.command('ask', { text: QUESTION });
		const told = await discord.settled(asked);
		expect([readable(told), told.visibleTo]).toEqual([
			expect.stringMatching(/failed on my side/),
			discord.people.one,
		]);
		discord.mention(QUESTION);
		await discord.waitForMessage((text, { replyTo }) => /failed/.test(text) && replyTo !== undefined);
		broken = false;
		await discord.command('ask', { text: QUESTION });
		await discord.waitForMessage(/AWG/);
	});

	test('a lost connection is resumed, and what was asked meanwhile is answered', async () => {
		const { discord, bot } = await discordShop();
		const health = () => fetch(`http://127.0.0.1:${bot.port}${HEALTH_PATH}`).then(({ status }) => status);
		expect(await health()).toBe(200);
		discord.gateway.drop();
		const asked = await discord.command('ask', { text: QUESTION });
		expect(asked.responseType).toBe(ResponseType.message);
		expect(await health()).toBe(200);
	});

	test('told twice at once that its session is over, it connects anew once and answers', async () => {
		const { discord, bot } = await discordShop();
		const health = () => fetch(`http://127.0.0.1:${bot.port}${HEALTH_PATH}`).then(({ status }) => status);
		const unhandled: unknown[] = [];
		const keep = (reason: unknown) => void unhandled.push(reason);
		process.on('unhandledRejection', keep);
		afterwards(async () => void process.off('unhandledRejection', keep));
		const identifies = discord.gateway.identifies;
		discord.gateway.atOnce(() => {
			discord.gateway.invalidate(false);
			discord.gateway.invalidate(false);
			discord.gateway.closeWith(1000);
		});
		// The client library leaves its second attempt unhandled; the first one goes on.
		await expect.poll(() => unhandled.map(isSecondReconnect)).toEqual([true]);
		await discord.gateway.waitForIdentifies(identifies + 1);
		await expect.poll(health).toBe(200);
		const asked = await discord.command('ask', { text: QUESTION });
		expect(readable(await discord.settled(asked))).toMatch(/AWG/);
		expect([discord.gateway.identifies, unhandled.length]).toEqual([identifies + 1, 1]);
	});

	test('a refused token or intent stops the start with the reason', async () => {
		const discord = await startDiscordStandIn();
		afterwards(() => discord.close());
		const chat = await openConversation();
		afterwards(() => chat.close());
		await expect(discordBotOn(discord, chat, { token: 'wrong.token.x' })).rejects.toThrow(/invalid token/i);
		discord.sessionsRemaining = 0;
		await expect(discordBotOn(discord, chat)).rejects.toThrow(/sessions remaining/i);
	});

	test('a stop lets the answer under way be shown', async () => {
		const { discord, stop } = await discordShop({ handle: slowly(300) });
		const asking = discord.command('ask', { text: QUESTION });
		await expect.poll(() => discord.latestInteraction()).toBeDefined();
		await new Promise((resolve) => setTimeout(resolve, 50));
		await stop();
		await asking;
		expect(discord.reading().join()).toMatch(/AWG/);
	});

	test('the program log holds no word of a message and no secret', async () => {
		const { discord, programLog } = await discordShop();
		discord.faults.order('interaction.callback', { kind: 'error', error: 'unknownInteraction' });
		discord.faults.order('channel.send', { kind: 'error', error: 'missingPermissions' });
		void discord.command('ask', { text: `${QUESTION} teapot` });
		discord.mention(`${QUESTION} teapot`);
		await expect.poll(() => programLog.join('')).toMatch(/10062/);
		await expect.poll(() => programLog.join('')).toMatch(/50013/);
		const lines = programLog.join('');
		for (const secret of ['teapot', QUESTION, discord.botToken]) expect(lines).not.toContain(secret);
	});
});
