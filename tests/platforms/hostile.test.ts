/**
 * Whatever people type, nothing that the bots send or change mentions anybody, links anywhere but to our own answers, or
 * is read as markup. First the very functions that make the requests, over thousands of texts, with clients that only
 * write down what they are asked to send; then the whole way over the stand-ins of both platforms.
 */

import type { Button, Part, Reply, ReplyFile } from '@lugbook/chat';
import fc from 'fast-check';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { InteractionWay } from '../../apps/discord/src/interaction-way.js';
import { DiscordPlatform } from '../../apps/discord/src/platform.js';
import { SlackPlatform } from '../../apps/slack/src/platform.js';
import { afterwards } from './common/closing.js';
import { openConversation } from './common/conversation.js';
import { arrayOf, type JsonObject, objectOf } from './common/json.js';
import { discordFaults, nasty, slackFaults } from './common/nasty.js';
import { discordShop } from './discord/shop.js';
import { slackShop } from './slack/shop.js';
import { readable } from './slack.js';

const RUNS = 1000;
const PATIENCE = { timeout: 60_000 };
const silent = { info() {}, warn() {}, error() {} };
const leads = { people: new Set<string>(), roles: new Set<string>() };
const always = async () => {};
const shopAt = { channel: 'C01', message: '1.000001' };

const part: fc.Arbitrary<Part> = fc.record({
	kind: fc.constantFrom(
		...(['read', 'because', 'danger', 'warning', 'note', 'neighbours', 'results', 'assumed'] as const),
		...(['caution', 'unread', 'kept', 'working', 'list'] as const),
	),
	text: nasty,
	fold: fc.boolean(),
	struck: fc.boolean(),
});
const button: fc.Arbitrary<Button> = fc.record({
	action: fc.constantFrom('working' as const, 'answer' as const, 'share' as const),
	label: nasty,
	value: nasty,
});
const files: fc.Arbitrary<ReplyFile[]> = fc.array(
	fc.record({
		name: nasty,
		mediaType: fc.constant('text/plain'),
		alternativeText: nasty,
		bytes: fc.constant(new Uint8Array([1])),
	}),
	{ maxLength: 2 },
);

interface Said {
	readonly headline: string;
	readonly struck: boolean;
	readonly parts: readonly Part[];
	readonly buttons: readonly Button[];
	readonly files: readonly ReplyFile[];
	readonly audience: Reply['audience'];
	/** of a mark, of what is told, and of how far the work has come */
	readonly words: readonly [string, string, string];
	readonly marks: boolean;
}
const said: fc.Arbitrary<Said> = fc.record({
	headline: nasty.filter((text) => text.trim() !== ''),
	struck: fc.boolean(),
	parts: fc.array(part, { maxLength: 8 }),
	buttons: fc.array(button, { maxLength: 4 }),
	files,
	audience: fc.constantFrom('channel' as const, 'asker' as const),
	words: fc.tuple(nasty, nasty, nasty),
	marks: fc.boolean(),
});

let base: Reply;
beforeEach(async () => {
	const chat = await openConversation();
	afterwards(() => chat.close());
	const place = { platform: 'local', shop: 'x', channel: 'c', thread: null, delivery: null };
	const person = { id: '1', name: 'one', lead: false };
	base = await chat.handle({ ...place, person, command: 'ask', text: '40A 12V 15 ft' });
});

function replyOf({ headline, struck, parts, buttons, audience, files }: Said) {
	const first: Part = { kind: 'headline', text: headline, fold: false, struck };
	const answer = {
		...base.answer,
		headline,
		assumed: base.answer.assumed.map((one) => ({ ...one, text: headline, label: headline })),
	};
	const whole = files.map((file) => ({ ...file, bytes: new Uint8Array([1]) }));
	return { ...base, answer, parts: [first, ...parts], buttons, audience, files: whole };
}

describe('each request that is made', () => {
	test('for Slack: posts, private notices, response_urls, edits, marks, progress', {
		timeout: 300_000,
	}, async () => {
		const sent = new Map<string, JsonObject[]>();
		const note = (method: string) => async (args: object) => {
			sent.set(method, [...(sent.get(method) ?? []), args as JsonObject]);
			return { ok: true, ts: '1.000002', permalink: 'https://workshop.example/archives/C01/p1' };
		};
		const client = {
			chat: {
				postMessage: note('chat.postMessage'),
				postEphemeral: note('chat.postEphemeral'),
				update: note('chat.update'),
				delete: async () => ({ ok: true }),
				getPermalink: note('chat.getPermalink'),
			},
			conversations: { history: async () => ({ messages: [] }), replies: async () => ({ messages: [] }) },
			files: { uploadV2: async () => ({ ok: true }) },
		} as unknown as Parameters<SlackPlatform['way']>[0];
		vi.stubGlobal('fetch', async (_: string, { body }: { body: string }) => {
			await note('response_url')(JSON.parse(body));
			return new Response('ok');
		});
		afterwards(async () => vi.unstubAllGlobals());
		const people = { leads } as unknown as ConstructorParameters<typeof SlackPlatform>[1];
		const platform = new SlackPlatform(async () => client, people, silent, Date.now);
		const place = {
			channel: 'C01',
			thread: null,
			user: 'U01',
			responseUrl: null,
			sinceMs: Date.now(),
			delivery: 'd',
		};
		await fc.assert(
			fc.asyncProperty(said, async (one) => {
				sent.clear();
				const reply = replyOf(one);
				const [mark, told, progress] = one.words;
				const way = platform.way(client, place);
				await way.progress(progress);
				await way.progress(mark);
				await way.tell(told);
				await way.show(reply, false, always);
				await platform.way(client, { ...place, channel: 'DU01' }).show(reply, true, always);
				const byUrl = platform.way(client, { ...place, responseUrl: 'http://127.0.0.1:1/r' });
				await byUrl.tell(told);
				await byUrl.show({ ...reply, audience: 'asker' }, false, always);
				const text = `replaced by No. 2 (${mark})`;
				await platform.mark(
					{ shop: 'slack:T1', ...shopAt },
					reply,
					{ text, stands: false, instead: 2 },
					shopAt,
				);
				await platform.mark({ shop: 'slack:T1', ...shopAt }, reply, { text: mark, stands: true }, null);
				for (const [method, payloads] of sent) {
					if (method === 'chat.getPermalink') continue;
					for (const payload of payloads) {
						const links = ['https://workshop.example/archives/C01/p1'];
						expect(slackFaults(payload, method === 'chat.update' ? links : []), method).toEqual([]);
					}
				}
				const methods = [...sent.keys()].toSorted();
				expect(methods).toEqual(expect.arrayContaining(['chat.postMessage', 'chat.update', 'response_url']));
			}),
			{ numRuns: RUNS },
		);
	});

	test('for Discord: messages, replies to commands, follow-ups, edits, marks, progress', {
		timeout: 300_000,
	}, async () => {
		const sent: { readonly how: string; readonly body: JsonObject }[] = [];
		/** The library's own word for it, as it goes over the wire. */
		const asSent = (options: JsonObject): JsonObject => {
			const { allowedMentions, ...rest } = options;
			const { parse, repliedUser } = objectOf(allowedMentions);
			return { ...rest, allowed_mentions: { parse, replied_user: repliedUser } };
		};
		const rest = {
			setToken: () => rest,
			get: async () => [],
			delete: async () => undefined,
			post: async (route: string, { body }: { body: JsonObject }) => {
				if (!route.startsWith('/users/')) sent.push({ how: `POST ${route}`, body });
				return { id: '100000000000000099' };
			},
			patch: async (route: string, { body }: { body: JsonObject }) => {
				sent.push({ how: `PATCH ${route}`, body });
				return { id: '100000000000000099' };
			},
		};
		const platform = new DiscordPlatform(
			rest as unknown as ConstructorParameters<typeof DiscordPlatform>[0],
			'token',
			() => '1',
			leads,
			silent,
			Date.now,
		);
		function interaction() {
			const made = {
				channelId: '100000000000000003',
				attachmentSizeLimit: 1_000_000,
				deferred: false,
				replied: false,
				deferReply: async () => {
					made.deferred = true;
				},
				editReply: async (options: JsonObject) => {
					made.replied = true;
					sent.push({ how: 'editReply', body: asSent(options) });
					return { id: '100000000000000098' };
				},
				followUp: async (options: JsonObject) => {
					sent.push({ how: 'followUp', body: asSent(options) });
					return { id: '100000000000000097' };
				},
				reply: async (options: JsonObject) => {
					made.replied = true;
					sent.push({ how: 'reply', body: asSent(options) });
					return { resource: { message: { id: '100000000000000096' } } };
				},
				deleteReply: async () => undefined,
			};
			return made as unknown as ConstructorParameters<typeof InteractionWay>[0];
		}
		const place = {
			channel: '100000000000000003',
			message: '100000000000000005',
			interaction: null,
			user: '100000000000000011',
			sinceMs: Date.now(),
			delivery: '100000000000000006',
		};
		const at = { shop: 'discord:100000000000000002', channel: place.channel, message: '100000000000000007' };
		const next = { channel: place.channel, message: '100000000000000008' };
		const address = `https://discord.com/channels/100000000000000002/${next.channel}/${next.message}`;
		await fc.assert(
			fc.asyncProperty(said, async (one) => {
				sent.length = 0;
				const reply = replyOf(one);
				const [mark, told, progress] = one.words;
				const way = platform.way(place);
				await way.progress(progress);
				await way.progress(mark);
				await way.tell(told);
				await way.show(reply, false, always);
				await platform
					.way({ ...place, interaction: { applicationId: '1', token: 't' } })
					.show(reply, false, always);
				for (const steps of [['show'], ['progress', 'show'], ['progress', 'tell'], ['tell', 'show']]) {
					const answered = new InteractionWay(interaction(), platform.way(place), () => {}, 60_000);
					for (const step of steps) {
						if (step === 'progress') await answered.progress(progress);
						else if (step === 'tell') await answered.tell(told);
						else await answered.show(reply, false, always);
					}
					answered.release();
				}
				for (const { how, body } of sent) expect(discordFaults(body), how).toEqual([]);
				expect(new Set(sent.map(({ how }) => how.split(' ')[0]))).toEqual(
					new Set(['POST', 'PATCH', 'editReply', 'followUp', 'reply']),
				);
				sent.length = 0;
				const text = `replaced by No. 2 (${mark})`;
				await platform.mark(at, reply, { text, stands: false, instead: 2 }, next);
				await platform.mark(at, reply, { text: mark, stands: true }, null);
				const [replaced, standing] = sent;
				expect(discordFaults(replaced?.body ?? {}, [address])).toEqual([]);
				expect(String(replaced?.body.content)).toContain(`[No. 2](${address})`);
				expect(discordFaults(standing?.body ?? {})).toEqual([]);
			}),
			{ numRuns: RUNS },
		);
	});

	test('and the judges see what is wrong', () => {
		const quiet = { parse: 'none', link_names: false };
		const element = (one: JsonObject) => ({
			...{ text: 'x', ...quiet },
			blocks: [{ type: 'rich_text', elements: [{ type: 'rich_text_section', elements: [one] }] }],
		});
		for (const message of [
			{ text: '<!channel>', ...quiet },
			{ text: 'a & b', ...quiet },
			{ text: 'x' },
			{ text: 'x', parse: 'none', link_names: true },
			element({ type: 'user', user_id: 'U01' }),
			element({ type: 'broadcast', range: 'here' }),
			element({ type: 'link', url: 'https://evil.example' }),
			{
				...element({ type: 'text', text: 'x' }),
				blocks: [{ type: 'section', text: { type: 'mrkdwn', text: 'x' } }],
			},
		]) {
			expect(slackFaults(message), JSON.stringify(message)).not.toEqual([]);
		}
		expect(slackFaults(element({ type: 'text', text: '<!channel>' }))).toEqual([]);
		const none = { allowed_mentions: { parse: [], replied_user: false } };
		for (const message of [
			{ content: 'x' },
			{ content: 'x', allowed_mentions: { parse: ['users'] } },
			{ content: 'x', allowed_mentions: { parse: [], users: ['1'] } },
			{ content: 'x', allowed_mentions: { parse: [], replied_user: true } },
			...['@everyone', '<@1>', '[a](b)', 'https://evil.example', '*a*', '# a', '- a', '1. a', '\\\\*'].map(
				(content) => ({ content, ...none }),
			),
		]) {
			expect(discordFaults(message), JSON.stringify(message)).not.toEqual([]);
		}
		for (const content of ['**a**', '~~a~~', '-# a', '\\@everyone', '\\<\\@1\\>', 'a \\\\\\*']) {
			expect(discordFaults({ content, ...none }), content).toEqual([]);
		}
	});
});

/** Texts of the whole way: each is a name, a load, a reason, a comment, words nobody can read. */
const SAMPLES = 12;
const samples = () => fc.sample(nasty, { numRuns: SAMPLES, seed: 20_260_504 });

/** What a person and the lead say about one text, as commands with what follows them. */
const conversation = (text: string) =>
	[
		['build', `use ${text}`, false],
		['build', `describe ${text} 45 W, fridge 60 W, two 100 Ah 12 V lithium batteries`, false],
		['ask', `40A 12V 15 ft ${text}`, false],
		['ask', text, false],
		['ask', `wire for the ${text} 15 ft`, false],
		['log', `comment 1 ${text}`, false],
		['log', `sign 1 ${text}`, true],
		['log', `reject 1 ${text}`, true],
		['log', `replace 1 and at 30 ft ${text}`, true],
		['log', `show ${text}`, false],
		['log', 'show', false],
		['log', 'review', true],
		['build', 'show', false],
		['build', 'check', false],
		['build', 'rerun', false],
		['log', `digest on ${text}`, true],
	] as const;

describe('the whole way', () => {
	test('in Slack', { timeout: 300_000 }, async () => {
		const texts = samples();
		let current = '';
		const bodies: JsonObject[] = [];
		const { slack, bot } = await slackShop({
			leads: ['U02'],
			pace: { burst: 10_000, perMinute: 10_000 },
			progressEveryMs: 1,
			handle: (chat) => async (incoming, progress) => {
				progress?.(`Working on ${current}`);
				await new Promise((resolve) => setTimeout(resolve, 5));
				return await chat.handle(incoming);
			},
		});
		// The stand-in shows what came by a response_url, and this what was asked of it.
		const { workspace } = slack;
		const post = workspace.post.bind(workspace);
		workspace.post = (message) => {
			if (message.via === 'response_url') bodies.push({ text: message.text, blocks: message.blocks });
			return post(message);
		};
		for (const [at, text] of texts.entries()) {
			current = text;
			const user = `U1${at}`;
			slack.addUser(user, { name: text });
			for (const [command, words, isLead] of conversation(text)) {
				const { ackStatus } = await slack.command(`/${command}`, words, { user: isLead ? 'U02' : user });
				expect(ackStatus).toBe(200);
				await bot.desk.settled();
			}
		}
		expect(
			slack
				.botMessages()
				.map(readable)
				.filter((shown) => shown.startsWith('Working on')),
		).toEqual([]);
		const calls = slack.calls().filter(({ method }) => /^chat\.(?:post|update)/.test(method));
		const addresses = slack.calls('chat.getPermalink').map(({ answer }) => String(answer.permalink));
		expect(calls.length).toBeGreaterThan(texts.length * 5);
		expect(calls.filter(({ method }) => method === 'chat.update').length).toBeGreaterThan(texts.length);
		for (const { method, args } of calls) {
			expect(slackFaults(args, method === 'chat.update' ? addresses : []), method).toEqual([]);
		}
		for (const body of bodies) {
			expect(slackFaults({ ...body, parse: 'none', link_names: false }), 'response_url').toEqual([]);
		}
		expect(slack.violations).toEqual([]);
	});

	test('in Discord', { timeout: 300_000 }, async () => {
		const texts = samples();
		let current = '';
		const { discord } = await discordShop({
			leads: ['100000000000000012'],
			pace: { burst: 10_000, perMinute: 10_000 },
			progressEveryMs: 1,
			handle: (chat) => async (incoming, progress) => {
				progress?.(`Working on ${current}`);
				await new Promise((resolve) => setTimeout(resolve, 5));
				return await chat.handle(incoming);
			},
		});
		for (const [at, text] of texts.entries()) {
			current = text;
			const { id } = discord.addUser(`1000000000000002${at + 10}`, text);
			for (const [command, words, isLead] of conversation(text)) {
				const user = isLead ? discord.people.two : id;
				if (words.trim() === '' || words.length > 2000) continue;
				if (command === 'ask') {
					const asked = discord.mention(words, { user });
					const isReply = () =>
						discord.botMessages(discord.channelId, user).some(({ replyTo }) => replyTo === asked.id);
					await expect.poll(isReply, PATIENCE).toBe(true);
				} else {
					const asked = await discord.command(command, { text: words }, { user });
					await discord.settled(asked, PATIENCE.timeout);
				}
			}
		}
		const calls = discord
			.calls()
			.filter(({ route }) =>
				/^(?:channel\.(?:send|edit)|webhook\.(?:edit|followup)|interaction\.callback)$/.test(route),
			)
			.map(({ route, body }) => {
				const { type, data } = objectOf(body);
				// A wait without a word, and words that are offered while somebody types, have no text of ours.
				const isMessage = route !== 'interaction.callback' || type === 4;
				return { route, body: isMessage ? objectOf(route === 'interaction.callback' ? data : body) : null };
			})
			.flatMap(({ route, body }) => (body === null ? [] : [{ route, body }]));
		expect(calls.length).toBeGreaterThan(texts.length * 10);
		expect(calls.filter(({ route }) => route === 'channel.edit').length).toBeGreaterThan(0);
		for (const { route, body } of calls) {
			const addresses = [
				...String(body.content).matchAll(/\]\((https:\/\/discord\.com\/channels\/[\d/]+)\)/g),
			];
			const own = addresses.map(([, url]) => String(url)).filter((url) => isOfOurs(url));
			expect(discordFaults(body, route === 'channel.edit' ? own : []), route).toEqual([]);
		}
		function isOfOurs(url: string): boolean {
			return discord.guild.messages.some(
				({ author, guildId, channelId, id }) =>
					author.bot && url === `https://discord.com/channels/${guildId}/${channelId}/${id}`,
			);
		}
		const pinged = discord.guild.messages.filter(
			({ author, pings }) =>
				author.bot && (pings.everyone || pings.users.length > 0 || pings.roles.length > 0),
		);
		expect(pinged).toEqual([]);
		expect(arrayOf(discord.violations)).toEqual([]);
	});
});
