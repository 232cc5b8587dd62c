/**
 * The stand-in for the Discord platform, proved with the real client library: what the library accepts as the
 * platform's protocol, and how it behaves under the faults the stand-in can be told to make.
 */

import {
	ActionRowBuilder,
	AttachmentBuilder,
	ButtonBuilder,
	ButtonStyle,
	Client,
	type ClientOptions,
	Events,
	GatewayIntentBits,
	type Interaction,
	MessageFlags,
	ModalBuilder,
	Partials,
	REST,
	Routes,
	SlashCommandBuilder,
	StringSelectMenuBuilder,
	TextInputBuilder,
	TextInputStyle,
} from 'discord.js';
import { afterEach, describe, expect, test } from 'vitest';
import {
	type DiscordStandIn,
	Intent,
	ResponseType,
	readable,
	startDiscordStandIn,
} from '../../../tests/platforms/discord.js';

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
	for (const close of closing.splice(0).reverse()) await close();
});

async function standIn(options: Parameters<typeof startDiscordStandIn>[0] = {}): Promise<DiscordStandIn> {
	const discord = await startDiscordStandIn(options);
	closing.push(() => discord.close());
	return discord;
}

const commands = [
	new SlashCommandBuilder()
		.setName('ask')
		.setDescription('Ask in words')
		.addStringOption((option) =>
			option.setName('text').setDescription('The question').setRequired(true).setMaxLength(50),
		),
	new SlashCommandBuilder()
		.setName('size')
		.setDescription('Size a part')
		.addSubcommandGroup((group) =>
			group
				.setName('electrical')
				.setDescription('Electrical')
				.addSubcommand((sub) =>
					sub
						.setName('wire')
						.setDescription('A wire')
						.addNumberOption((option) =>
							option.setName('current').setDescription('Amperes').setRequired(true).setMinValue(0),
						)
						.addStringOption((option) =>
							option.setName('cable').setDescription('Type of cable').setAutocomplete(true),
						),
				),
		),
].map((builder) => builder.toJSON());

const restOf = (discord: DiscordStandIn, options: Partial<ClientOptions['rest']> = {}) =>
	new REST({ api: discord.apiUrl, version: '10', retries: 1, offset: 0, ...options }).setToken(
		discord.botToken,
	);

const register = (discord: DiscordStandIn, body: unknown = commands) =>
	restOf(discord).put(Routes.applicationGuildCommands(discord.applicationId, discord.guildId), { body });

async function bot(
	discord: DiscordStandIn,
	onInteraction: (interaction: Interaction) => Promise<unknown> = async () => {},
	options: Partial<ClientOptions> = {},
): Promise<Client> {
	const client = new Client({
		intents: [],
		rest: { api: discord.apiUrl, version: '10', retries: 1, offset: 0 },
		allowedMentions: { parse: [] },
		...options,
	});
	client.on(Events.Error, () => {});
	client.on(Events.InteractionCreate, (interaction) => {
		onInteraction(interaction).catch((error: unknown) => failures.push(error));
	});
	closing.push(() => client.destroy());
	const ready = new Promise((resolve) => client.once(Events.ClientReady, resolve));
	await client.login(discord.botToken);
	await ready;
	return client;
}

let failures: unknown[] = [];
afterEach(() => {
	failures = [];
});
const codes = () => failures.map((error) => (error as { code?: unknown }).code);

const failing = (call: Promise<unknown>): Promise<unknown> =>
	call.then(
		() => 'no error',
		(error: { code?: unknown }) => error.code ?? error,
	);

describe('interactions', () => {
	test('a command reaches the bot without any intent, and the answer is read in the channel', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, async (interaction) => {
			if (!interaction.isChatInputCommand()) return;
			await interaction.reply({ content: `read: ${interaction.options.getString('text')}` });
		});
		const asked = await discord.command('ask', { text: '40A 12V 15 ft' });
		expect(asked.responseType).toBe(ResponseType.message);
		expect(asked.responseMs).toBeLessThan(3000);
		expect(discord.reading()).toEqual(['read: 40A 12V 15 ft']);
		expect(discord.violations).toEqual([]);
	});

	test('subcommand in a group with typed options; autocomplete gets the text as typed', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, async (interaction) => {
			if (interaction.isAutocomplete()) {
				const typed = interaction.options.getFocused(true);
				await interaction.respond([{ name: `${typed.name}=${typed.value}`, value: 'thhn' }]);
			} else if (interaction.isChatInputCommand()) {
				const { options } = interaction;
				const what = [options.getSubcommandGroup(), options.getSubcommand(), options.getNumber('current')];
				await interaction.reply({ content: what.join(' '), flags: MessageFlags.Ephemeral });
			}
		});
		const at = { group: 'electrical', subcommand: 'wire' };
		await discord.command('size', { current: 12.5 }, at);
		expect(discord.reading()).toEqual(['electrical wire 12.5']);
		expect(discord.reading(discord.channelId, discord.people.two)).toEqual([]);
		const typed = await discord.autocomplete('size', { cable: 'th' }, { ...at, focused: 'cable' });
		expect(typed.choices).toEqual([{ name: 'cable=th', value: 'thhn' }]);
	});

	test('what the platform would not let a person send is an error of the test', async () => {
		const discord = await standIn();
		await register(discord);
		const at = { group: 'electrical', subcommand: 'wire' };
		await expect(discord.command('ask', {})).rejects.toThrow(/option text is required/);
		await expect(discord.command('ask', { text: 'x'.repeat(51) })).rejects.toThrow(/0 to 50 characters/);
		await expect(discord.command('size', { current: -1 }, at)).rejects.toThrow(/at least 0/);
		await expect(discord.command('size', { current: 1 }, {})).rejects.toThrow(/needs one of its subcommands/);
		await expect(discord.command('nothing')).rejects.toThrow(/registered no command "nothing"/);
	});

	test('deferred, then edited, then followed up; the notice keeps its privacy', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, async (interaction) => {
			if (!interaction.isChatInputCommand()) return;
			await interaction.deferReply({ flags: MessageFlags.Ephemeral });
			await new Promise((resolve) => setTimeout(resolve, 50));
			await interaction.editReply({ content: 'computed' });
			await interaction.followUp({ content: 'more' });
		});
		const asked = await discord.command('ask', { text: 'x' });
		expect(asked.responseType).toBe(ResponseType.deferMessage);
		expect(discord.reading()).toEqual(['(thinking)']);
		await discord.waitForMessage(/more/);
		expect(readable(await discord.settled(asked))).toBe('computed');
		expect(discord.reading(discord.channelId, discord.people.two)).toEqual(['more']);
	});

	test('a button changes its message, a menu answers, a form is opened and submitted', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, async (interaction) => {
			if (interaction.isChatInputCommand()) {
				const buttons = new ActionRowBuilder<ButtonBuilder>().addComponents(
					new ButtonBuilder().setCustomId('working:128').setLabel('working').setStyle(ButtonStyle.Secondary),
					new ButtonBuilder().setCustomId('form').setLabel('change').setStyle(ButtonStyle.Secondary),
				);
				const menu = new ActionRowBuilder<StringSelectMenuBuilder>().addComponents(
					new StringSelectMenuBuilder().setCustomId('menu').addOptions({ label: 'Heron', value: 'heron' }),
				);
				await interaction.reply({ content: 'Answer', components: [buttons, menu] });
			} else if (interaction.isStringSelectMenu()) {
				await interaction.reply({ content: `chose ${interaction.values.join()}` });
			} else if (interaction.isButton() && interaction.customId === 'form') {
				const input = new TextInputBuilder()
					.setCustomId('length')
					.setLabel('Length')
					.setStyle(TextInputStyle.Short);
				const row = new ActionRowBuilder<TextInputBuilder>().addComponents(input);
				await interaction.showModal(
					new ModalBuilder().setCustomId('m').setTitle('Change').addComponents(row),
				);
			} else if (interaction.isButton()) {
				await interaction.update({ content: `pressed ${interaction.customId}`, components: [] });
			} else if (interaction.isModalSubmit()) {
				await interaction.reply({ content: `length ${interaction.fields.getTextInputValue('length')}` });
			}
		});
		const asked = await discord.command('ask', { text: 'x' });
		const answer = await discord.settled(asked);
		expect(readable(answer)).toBe('Answer\n[working] [change]\n[menu: Heron]');
		await discord.select(answer, 'menu', ['heron'], { user: discord.people.two });
		const opened = await discord.press(answer, 'change');
		expect(opened.responseType).toBe(ResponseType.modal);
		await expect(discord.submitModal(opened, {})).rejects.toThrow(/length is required/);
		await discord.submitModal(opened, { length: '20 ft' });
		await discord.press(answer, 'working:128');
		expect(discord.reading()).toEqual(['pressed working:128', 'chose heron', 'length 20 ft']);
		await expect(discord.press(answer, 'gone')).rejects.toThrow(/no "gone" to use/);
		expect(discord.violations).toEqual([]);
	});

	test('a file and its description come through', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, async (interaction) => {
			if (!interaction.isChatInputCommand()) return;
			const file = new AttachmentBuilder(Buffer.from([1, 2, 254]), {
				name: 'wiring.png',
				description: 'Battery, fuse, load',
			});
			await interaction.reply({ content: 'drawing', files: [file] });
		});
		await discord.command('ask', { text: 'x' });
		const [message] = discord.botMessages();
		expect(message?.attachments[0]).toMatchObject({
			filename: 'wiring.png',
			description: 'Battery, fuse, load',
			bytes: Buffer.from([1, 2, 254]),
		});
		expect(discord.violations).toEqual([]);
	});

	test('a second first response is refused with 40060', async () => {
		const discord = await standIn();
		await register(discord);
		const rest = restOf(discord);
		await bot(discord, async (interaction) => {
			const route = Routes.interactionCallback(interaction.id, interaction.token);
			const answer = { body: { type: 4, data: { content: 'x' } }, auth: false as const };
			await rest.post(route, answer);
			await rest.post(route, answer);
		});
		await discord.command('ask', { text: 'x' });
		await expect.poll(codes).toEqual([40060]);
		expect(discord.reading()).toEqual(['x']);
	});

	test('a first response after 3 s is refused with 10062, a follow-up after 15 min with 50027', async () => {
		let nowMs = Date.now();
		const discord = await standIn({ nowMs: () => nowMs });
		await register(discord);
		let wait = 3001;
		await bot(discord, async (interaction) => {
			if (!interaction.isChatInputCommand()) return;
			nowMs += wait;
			await interaction.reply({ content: 'in time?' });
			nowMs += 15 * 60_000;
			await interaction.followUp({ content: 'much later' });
		});
		const late = await discord.command('ask', { text: 'x' });
		expect(late.responseType).toBeNull();
		wait = 2900;
		await discord.command('ask', { text: 'x' });
		await expect.poll(codes).toEqual([10062, 50027]);
		expect(discord.reading()).toEqual(['in time?']);
	});

	test('the same interaction told twice reaches the listener twice; the second answer is refused', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, async (interaction) => {
			if (interaction.isChatInputCommand()) await interaction.reply({ content: 'once' });
		});
		const asked = await discord.command('ask', { text: 'x' });
		discord.redispatch(asked);
		await expect.poll(codes).toEqual([40060]);
		expect(discord.reading()).toEqual(['once']);
	});

	test('without an answer the person waits three seconds for nothing', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord);
		const startedMs = performance.now();
		const asked = await discord.command('ask', { text: 'x' });
		expect(asked.responseType).toBeNull();
		expect(performance.now() - startedMs).toBeGreaterThanOrEqual(2990);
	});
});

describe('Gateway', () => {
	const answering = async (interaction: Interaction) => {
		if (interaction.isChatInputCommand())
			await interaction.reply({ content: interaction.options.getString('text') ?? '' });
	};

	test('identify, ready, heartbeats', async () => {
		const discord = await standIn({ heartbeatMs: 50 });
		const client = await bot(discord, undefined, { intents: [GatewayIntentBits.Guilds] });
		expect(client.guilds.cache.get(discord.guildId)?.name).toBe('Workshop');
		expect(client.channels.cache.has(discord.channelId)).toBe(true);
		await discord.gateway.waitForHeartbeats(3);
		expect(discord.gateway.identifies).toBe(1);
	});

	test('after a cut the session is resumed, and what was missed is replayed', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, answering);
		discord.gateway.drop();
		const asked = discord.command('ask', { text: 'missed' });
		await discord.gateway.waitForResumes(1);
		expect((await asked).responseType).toBe(ResponseType.message);
		expect(discord.reading()).toEqual(['missed']);
		expect(discord.gateway.identifies).toBe(1);
	});

	test('op 7 is followed by a resume; op 9 without resuming by a new identify', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, answering);
		discord.gateway.requestReconnect();
		await discord.gateway.waitForResumes(1);
		await discord.command('ask', { text: 'after op 7' });
		discord.gateway.invalidate(false);
		await discord.gateway.waitForIdentifies(2);
		await discord.command('ask', { text: 'after op 9' });
		expect(discord.reading()).toEqual(['after op 7', 'after op 9']);
	});

	test('a session that the platform forgot is replaced by a new one', async () => {
		const discord = await standIn();
		await register(discord);
		await bot(discord, answering);
		discord.gateway.forgetSessions();
		discord.gateway.drop();
		await discord.gateway.waitForIdentifies(2);
		await discord.command('ask', { text: 'again' });
		expect(discord.reading()).toEqual(['again']);
	});

	test('a connection whose heartbeats stay unanswered is given up and resumed', async () => {
		const discord = await standIn({ heartbeatMs: 60 });
		await bot(discord);
		discord.gateway.deaf = true;
		await discord.gateway.waitForResumes(1);
		discord.gateway.deaf = false;
		expect(discord.gateway.identifies).toBe(1);
	});

	test('wrong token, unknown and disallowed intents, no starts left: each a clean refusal', async () => {
		const discord = await standIn();
		const start = (token: string, intents: number) => {
			const client = new Client({ intents, rest: { api: discord.apiUrl, version: '10', retries: 0 } });
			client.on(Events.Error, () => {});
			closing.push(() => client.destroy());
			return client.login(token);
		};
		await expect(start('wrong.token.here', 0)).rejects.toThrow(/invalid token/i);
		await expect(start(discord.botToken, Intent.messageContent)).rejects.toThrow(/disallowed intents/i);
		await expect(start(discord.botToken, 1 << 27)).rejects.toThrow(/invalid intents/i);
		discord.sessionsRemaining = 0;
		await expect(start(discord.botToken, 0)).rejects.toThrow(/sessions remaining/i);
	});

	test('messages come as the intents allow: content only when the bot is addressed', async () => {
		const discord = await standIn();
		const seen: string[] = [];
		const client = await bot(discord, undefined, {
			intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages],
			partials: [Partials.Channel],
		});
		client.on(Events.MessageCreate, (message) => {
			if (!message.author.bot) seen.push(`${message.inGuild() ? 'guild' : 'dm'}: ${message.content}`);
			if (message.mentions.has(discord.bot.id)) void message.reply({ content: 'yes?' });
		});
		discord.say('between people');
		discord.mention('40A');
		discord.dm('in private');
		const answer = await discord.waitForMessage(/yes/);
		discord.say('thanks', { replyTo: answer });
		discord.say('thanks, quietly', { replyTo: answer, pingOnReply: false });
		discord.mention('in a thread', { channel: discord.startThread('Heron').id });
		await expect
			.poll(() => seen)
			.toEqual([
				'guild: ',
				`guild: <@${discord.bot.id}> 40A`,
				'dm: in private',
				'guild: thanks',
				'guild: ',
				`guild: <@${discord.bot.id}> in a thread`,
			]);
		expect(discord.violations).toEqual([]);
	});

	test('without the intents no message comes at all', async () => {
		const discord = await standIn();
		await register(discord);
		const seen: string[] = [];
		const client = await bot(discord, answering);
		client.on(Events.MessageCreate, (message) => seen.push(message.content));
		discord.mention('40A');
		await discord.command('ask', { text: 'the command comes after it, on the same connection' });
		expect(seen).toEqual([]);
	});
});

describe('REST', () => {
	test('429 is obeyed for the seconds it names', async () => {
		const discord = await standIn();
		const rest = restOf(discord);
		discord.faults.order('channel.send', { kind: 'rate-limit', retryAfterS: 0.4 });
		const startedMs = performance.now();
		await rest.post(Routes.channelMessages(discord.channelId), { body: { content: 'patient' } });
		expect(performance.now() - startedMs).toBeGreaterThanOrEqual(400);
		expect(discord.calls('channel.send').map((call) => call.status)).toEqual([429, 200]);
		expect(discord.reading()).toEqual(['patient']);
	});

	test('500 is tried again; a cut connection and a spoiled answer are errors', async () => {
		const discord = await standIn();
		const rest = restOf(discord, { retries: 1 });
		const post = (body: object = { content: 'x' }) =>
			rest.post(Routes.channelMessages(discord.channelId), { body });
		discord.faults.order('channel.send', { kind: 'status', status: 500 });
		await post();
		expect(discord.reading()).toEqual(['x']);
		discord.faults.order('channel.send', { kind: 'drop-request' }, 3);
		expect(await failing(post())).not.toBe('no error');
		discord.faults.clear();
		discord.faults.order('channel.send', { kind: 'malformed-answer' });
		expect(await failing(post())).not.toBe('no error');
		discord.faults.order('channel.send', { kind: 'error', error: 'missingPermissions' });
		expect(await failing(post())).toBe(50013);
	});

	test('an answer lost on the way and a repeated nonce: the message stands once', async () => {
		let nowMs = Date.now();
		const discord = await standIn({ nowMs: () => nowMs });
		const rest = restOf(discord, { retries: 0 });
		const body = { content: 'once', nonce: 'entry-128', enforce_nonce: true };
		const post = () => rest.post(Routes.channelMessages(discord.channelId), { body });
		discord.faults.order('channel.send', { kind: 'drop-answer' });
		expect(await failing(post())).not.toBe('no error');
		const repeated = (await post()) as { id: string };
		expect(discord.reading()).toEqual(['once']);
		expect(repeated.id).toBe(discord.botMessages()[0]?.id);
		nowMs += 10 * 60_000;
		await post();
		expect(discord.reading()).toEqual(['once', 'once']);
	});

	test('refusals carry the documented codes', async () => {
		const discord = await standIn();
		discord.addChannel({ id: '555', botCanSend: false });
		const rest = restOf(discord);
		const send = (channel: string) =>
			failing(rest.post(Routes.channelMessages(channel), { body: { content: 'x' } }));
		const edit = (id: string) =>
			failing(rest.patch(Routes.channelMessage(discord.channelId, id), { body: { content: 'x' } }));
		expect(await send('404')).toBe(10003);
		expect(await send('555')).toBe(50013);
		expect(await edit('404')).toBe(10008);
		expect(await edit(discord.say('mine').id)).toBe(50005);
		const stranger = new REST({ api: discord.apiUrl, retries: 0 }).setToken('other');
		const strange = stranger.post(Routes.channelMessages(discord.channelId), { body: { content: 'x' } });
		await expect(strange).rejects.toMatchObject({ status: 401 });
		const late = rest.post(Routes.webhook(discord.applicationId, 'made-up'), {
			body: { content: 'x' },
			auth: false,
		});
		expect(await failing(late)).toBe(10015);
	});

	test('a thread is made, written to, and refuses when archived and locked', async () => {
		const discord = await standIn();
		const rest = restOf(discord);
		const body = { name: 'Heron', auto_archive_duration: 1440 };
		const thread = (await rest.post(Routes.threads(discord.channelId), { body: { ...body, type: 11 } })) as {
			id: string;
		};
		const send = () =>
			failing(rest.post(Routes.channelMessages(thread.id), { body: { content: 'in thread' } }));
		expect(await send()).toBe('no error');
		expect(discord.reading(thread.id)).toEqual(['in thread']);
		Object.assign(discord.guild.channels.get(thread.id) ?? {}, { archived: true, locked: true });
		expect(await send()).toBe(50083);
	});
});
