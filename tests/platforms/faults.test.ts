/**
 * A thousand schedules of faults, drawn from a fixed seed, over both bots: repeated deliveries, a busy platform, errors,
 * slow and cut answers, answers that can't be read, expired tokens, cut connections, opcodes 7 and 9, garbage and wrong
 * signatures. Many schedules run at once over one bot, so that each disturbs the others as well. In the end every
 * question is kept once and its answer stands in its channel once, and the process lives.
 */

import { HEALTH_PATH } from '@lugbook/chat';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Fault } from './common/faults.js';
import { pause } from './common/watch.js';
import { discordShop } from './discord/shop.js';
import { type DiscordInteraction, readable as discordText } from './discord.js';
import { slackShop } from './slack/shop.js';
import { postRaw, signatureHeaders, readable as slackText } from './slack.js';

/** 5 x 50 schedules for each of the two ways to Slack, 5 x 100 for Discord */
const BATCHES = 5;
const SEED = 20_260_504;
const ENDED_WITHIN_MS = 30_000;
/** A machine that is busy with something else takes its time [ms]. */
const ACKNOWLEDGED_WITHIN_MS = 120_000;
/** An event sent so shortly before its session ended may not have arrived [ms]. */
const FORGOTTEN_WITHIN_MS = 1500;
/** Long enough that a busy machine does not cut connections by itself [ms]. */
const SOCKET_PATIENCE_MS = 1000;
/** Far more than one person types. */
const pace = { burst: 10_000, perMinute: 10_000 };
const SENT_AGAIN = 'Sent again';

interface Question {
	readonly kind: 'command' | 'mention' | 'private';
	/** [A] */
	readonly currentA: number;
	/** how often it is delivered again */
	readonly repeated: number;
	readonly afterMs: number;
}
const question = (kinds: readonly Question['kind'][]): fc.Arbitrary<Question> =>
	fc.record({
		kind: fc.constantFrom(...kinds),
		currentA: fc.integer({ min: 5, max: 60 }),
		repeated: fc.constantFrom(0, 0, 0, 1, 3),
		afterMs: fc.integer({ min: 0, max: 300 }),
	});

interface Schedule<Event> {
	readonly questions: readonly Question[];
	readonly faults: readonly { readonly route: string; readonly fault: Fault; readonly times: number }[];
	readonly events: readonly { readonly event: Event; readonly afterMs: number }[];
}
function schedules<Event extends string>(
	kinds: readonly Question['kind'][],
	routes: readonly string[],
	faults: readonly Fault[],
	events: readonly Event[],
	count: number,
): fc.Arbitrary<Schedule<Event>[]> {
	const schedule = fc.record({
		questions: fc.uniqueArray(question(kinds), {
			minLength: 1,
			maxLength: 2,
			selector: ({ currentA }) => currentA,
		}),
		faults: fc.array(
			fc.record({
				route: fc.constantFrom(...routes),
				fault: fc.constantFrom(...faults),
				times: fc.constantFrom(1, 1, 1, 2, 5),
			}),
			{ maxLength: 3 },
		),
		events: fc.array(
			fc.record({ event: fc.constantFrom(...events), afterMs: fc.integer({ min: 0, max: 400 }) }),
			{ maxLength: 1 },
		),
	});
	return fc.array(schedule, { minLength: count, maxLength: count });
}

const wordsOf = ({ currentA }: Question) => `${currentA}A 12V 15 ft`;
const isAnswerTo = ({ currentA }: Question, text: string) => text.includes(`Read: ${currentA} A,`);

const common: readonly Fault[] = [
	{ kind: 'slow', delayMs: 30 },
	{ kind: 'slow', delayMs: 400 },
	{ kind: 'status', status: 500 },
	{ kind: 'status', status: 503 },
	{ kind: 'drop-request' },
	{ kind: 'drop-answer' },
	{ kind: 'malformed-answer' },
];

/** A clock that runs on and can be put forward. */
function clock(): { readonly nowMs: () => number; forward(ms: number): void } {
	let aheadMs = 0;
	return {
		nowMs: () => Date.now() + aheadMs,
		forward(ms) {
			aheadMs += ms;
		},
	};
}

interface Working {
	readonly bot: {
		readonly port: number;
		readonly desk: { sweep(): Promise<void>; settled(): Promise<void>; waiting(): Promise<number> };
	};
}

/** The faults are over: what waits for its next try gets it, until nothing waits. */
async function recovered({ bot }: Working, forward: (ms: number) => void): Promise<void> {
	const endMs = Date.now() + ENDED_WITHIN_MS;
	await bot.desk.settled();
	while ((await bot.desk.waiting()) > 0) {
		if (Date.now() > endMs) throw new Error(`${await bot.desk.waiting()} answers still wait`);
		forward(31_000);
		await bot.desk.sweep();
		await bot.desk.settled();
	}
}

const healthOf = async ({ bot }: Working) =>
	(await fetch(`http://127.0.0.1:${bot.port}${HEALTH_PATH}`)).status;

async function runSlack(mode: 'http' | 'socket', all: readonly Schedule<SlackEvent>[], mayLook: boolean) {
	const time = clock();
	const shop = await slackShop({
		mode,
		pace,
		sweepMs: 300,
		nowMs: time.nowMs,
		socketPatienceMs: SOCKET_PATIENCE_MS,
		// Without these scopes the bot can't look for what it may have posted, and says so.
		...(mayLook ? { scopes: null } : {}),
	});
	const { slack } = shop;
	const channelOf = (at: number) => `C${String(at).padStart(4, '0')}`;
	const userOf = (at: number) => `U${String(1000 + at)}`;

	const happen = async (event: SlackEvent, at: number) => {
		if (event === 'cut') slack.socket.drop();
		else if (event === 'refresh') slack.socket.refresh();
		else if (event === 'garbage' && mode === 'socket') slack.socket.sendRaw('{"type": "not JS');
		else if (event === 'garbage') {
			const body = '{"type": "event_callback", "event": not JSON';
			const headers = signatureHeaders(slack.signingSecret, body, Date.now());
			const type = { 'content-type': 'application/json' };
			await postRaw(slack.requestUrl, body, { ...headers, ...type });
		} else if (event === 'odd event') {
			await slack.rawEvent({ type: 'app_mention', channel: 7, ts: null }, { channel: channelOf(at) });
		} else if (event === 'wrong signature' && mode === 'http') {
			const place = { channel: channelOf(at), user: userOf(at) };
			const { ackStatus } = await slack.command('/ask', '99A 12V 15 ft', place, {
				signature: 'wrong-secret',
			});
			// It may be too busy to answer; that nothing came of the question is looked at in the end.
			expect([401, null]).toContain(ackStatus);
		}
	};
	/** What is not acknowledged is delivered again, and sometimes what is. */
	const delivered = async (first: Awaited<ReturnType<typeof slack.command>>, repeated: number) => {
		let result = first;
		const endMs = performance.now() + ACKNOWLEDGED_WITHIN_MS;
		for (let retry = 1; retry <= repeated || result.ackStatus !== 200; retry += 1) {
			if (performance.now() > endMs) throw new Error(`not acknowledged: ${JSON.stringify(result.failure)}`);
			await pause(retry <= repeated ? 5 : 60);
			result = await slack.redeliver(result, retry);
		}
	};
	const ask = async (one: Question, at: number) => {
		await pause(one.afterMs);
		const from = { channel: channelOf(at), user: userOf(at) };
		const words = wordsOf(one);
		const result = await (one.kind === 'command'
			? slack.command('/ask', words, from)
			: one.kind === 'mention'
				? slack.mention(words, from)
				: slack.dm(words, { user: from.user }));
		await delivered(result, one.repeated);
	};
	await Promise.all(
		all.flatMap(({ questions, faults, events }, at) => {
			for (const { route, fault, times } of faults) {
				const forbidsToLook = fault.kind === 'error' && fault.error === 'not_in_channel';
				if (mayLook && forbidsToLook && route.startsWith('conversations.')) continue;
				slack.faults.order(route, fault, times);
			}
			return [
				...questions.map((one) => ask(one, at)),
				...events.map(async ({ event, afterMs }) => {
					await pause(afterMs);
					await happen(event, at);
				}),
			];
		}),
	);
	slack.faults.clear();
	await recovered(shop, time.forward);

	const wrong: string[] = [];
	for (const [at, { questions }] of all.entries()) {
		for (const one of questions) {
			const channel = one.kind === 'private' ? `D${userOf(at)}` : channelOf(at);
			const shown = slack.workspace.messages.filter(
				({ channel: where, fromBot, visibleTo, deleted, ...message }) =>
					where === channel &&
					fromBot &&
					visibleTo === undefined &&
					!deleted &&
					isAnswerTo(one, slackText(message)),
			);
			const unsaid = shown.slice(1).filter((message) => !slackText(message).includes(SENT_AGAIN));
			const isRight = shown.length === 1 || (!mayLook && shown.length > 1 && unsaid.length === 0);
			if (!isRight) {
				const texts = slack.workspace.messages
					.filter((message) => message.channel === channel)
					.map(slackText);
				const calls = slack.calls().filter(({ args }) => args.channel === channel);
				const what = calls.map(({ atMs, method, answer }) => `${atMs} ${method} ${answer.error ?? 'ok'}`);
				wrong.push(
					`${one.kind} ${one.currentA} A of ${channel} shown ${shown.length} times: ${texts.join(' / ')}; ${what.join(', ')}`,
				);
			}
		}
	}
	expect(wrong).toEqual([]);
	const asked = all.flatMap(({ questions }) => questions.map(wordsOf)).toSorted();
	const kept = await shop.chat.log.fold(
		shop.shop,
		{ kinds: ['exchange'] },
		[] as string[],
		(texts, { text }) => [...texts, text],
	);
	expect(kept.toSorted()).toEqual(asked);
	expect(slack.workspace.messages.map(slackText).filter((text) => /gave no answer/.test(text))).toEqual([]);
	if (mode === 'socket') await slack.socket.waitForOpened(1);
	await expect.poll(() => healthOf(shop), { timeout: 10_000 }).toBe(200);
	await delivered(await slack.command('/ask', '77A 12V 15 ft', { channel: 'C9999' }), 0);
	const isLastAnswered = () => slack.reading('C9999').some((text) => text.includes('Read: 77 A,'));
	await expect.poll(isLastAnswered, { timeout: 10_000 }).toBe(true);
	expect(slack.violations).toEqual([]);
	await shop.stop();
}

type SlackEvent = 'cut' | 'refresh' | 'garbage' | 'odd event' | 'wrong signature';
const slackRoutes = [
	'chat.postMessage',
	'chat.postMessage',
	'chat.postMessage',
	'chat.postEphemeral',
	'response_url',
	'users.info',
	'conversations.history',
	'conversations.replies',
] as const;
const slackFaults: readonly Fault[] = [
	...common,
	{ kind: 'rate-limit', retryAfterS: 1 },
	{ kind: 'error', error: 'internal_error' },
	{ kind: 'error', error: 'token_expired' },
	{ kind: 'error', error: 'not_in_channel' },
];

test.each(['http', 'socket'] as const)(
	'Slack over %s: nothing is lost, nothing stands twice without saying so',
	{ timeout: 300_000 },
	async (mode) => {
		const batches = fc.sample(
			schedules(
				['command', 'mention', 'private'],
				slackRoutes,
				slackFaults,
				['cut', 'refresh', 'garbage', 'odd event', 'wrong signature'] as const,
				50,
			),
			{ seed: SEED, numRuns: BATCHES },
		);
		for (const [at, all] of batches.entries()) await runSlack(mode, all, at % 2 === 0);
	},
);

type DiscordEvent =
	| 'reconnect'
	| 'invalid but resumable'
	| 'invalid'
	| 'forgotten'
	| 'cut'
	| 'closed'
	| 'odd event';

async function runDiscord(all: readonly Schedule<DiscordEvent>[]) {
	const time = clock();
	const shop = await discordShop({ pace, sweepMs: 300, nowMs: time.nowMs });
	const { discord } = shop;
	const places = all.map((_, at) => ({
		channel: discord.addChannel({ id: `20000000000000${String(1000 + at)}` }).id,
		user: discord.addUser(`30000000000000${String(1000 + at)}`).id,
	}));
	const forgottenAtMs: number[] = [];
	const happen = (event: DiscordEvent, at: number) => {
		const { gateway } = discord;
		if (event === 'invalid' || event === 'forgotten') forgottenAtMs.push(performance.now());
		switch (event) {
			case 'reconnect':
				return gateway.requestReconnect();
			case 'invalid but resumable':
				return gateway.invalidate(true);
			case 'invalid':
				return gateway.invalidate(false);
			case 'forgotten':
				gateway.forgetSessions();
				return gateway.drop();
			case 'cut':
				return gateway.drop();
			case 'closed':
				return gateway.closeWith(4000, 'Unknown error.');
			case 'odd event': {
				const data = { id: '1', channel_id: places[at]?.channel, type: 99, token: 'none', data: null };
				return gateway.dispatch({ name: 'INTERACTION_CREATE', data, intent: 0 });
			}
		}
	};
	const reached = async () => {
		const endMs = Date.now() + ENDED_WITHIN_MS;
		while (!discord.gateway.hasSession) {
			if (Date.now() > endMs) throw new Error('the bot did not identify again');
			await pause(20);
		}
	};
	interface Asked {
		readonly channel: string;
		readonly shop: string;
		readonly one: Question;
		readonly id: string;
		readonly atMs: number;
		/** of a command */
		readonly interaction?: DiscordInteraction;
		again(): void;
	}
	const asked: Asked[] = [];
	const ask = async (one: Question, at: number) => {
		await pause(one.afterMs);
		await reached();
		const place = places[at] as (typeof places)[number];
		const text = wordsOf(one);
		const about = { one, atMs: performance.now(), shop: shop.shop, channel: place.channel };
		if (one.kind === 'command') {
			const interacting = discord.command('ask', { text }, place);
			const interaction = discord.latestInteraction();
			if (interaction === undefined) throw new Error('there is no interaction');
			const again = () => discord.redispatch(interaction);
			asked.push({ ...about, id: interaction.id, interaction, again });
			for (let time = 0; time < one.repeated; time += 1) {
				await pause(5);
				again();
			}
			await interacting;
			return;
		}
		const isPrivate = one.kind === 'private';
		const message = isPrivate ? discord.dm(text, place.user) : discord.mention(text, place);
		const where = isPrivate ? { shop: `discord:user:${place.user}`, channel: message.channelId } : {};
		const again = () => discord.tellAgain(message);
		asked.push({ ...about, ...where, id: message.id, again });
		for (let time = 0; time < one.repeated; time += 1) {
			await pause(5);
			again();
		}
	};
	await Promise.all(
		all.flatMap(({ questions, faults, events }, at) => {
			for (const { route, fault, times } of faults) {
				// A platform that denies an answer it shows leaves nothing to go by.
				if (route === 'webhook.get' && fault.kind === 'error' && fault.error === 'unknownInteraction')
					continue;
				discord.faults.order(route, fault, times);
			}
			return [
				...questions.map((one) => ask(one, at)),
				...events.map(async ({ event, afterMs }) => {
					await pause(afterMs);
					happen(event, at);
				}),
			];
		}),
	);
	discord.faults.clear();
	const isConnected = async () => (await healthOf(shop)) === 200 && discord.gateway.connected;
	await expect.poll(isConnected, { timeout: ENDED_WITHIN_MS }).toBe(true);
	// What a session held when the platform forgot it reaches nobody: such a question is told once more.
	for (const { shop: where, id, atMs, again } of asked) {
		const isForgotten = forgottenAtMs.some((endMs) => endMs >= atMs && endMs - atMs < FORGOTTEN_WITHIN_MS);
		if (isForgotten && (await shop.chat.log.byDelivery(where, id)) === null) again();
	}
	// Whatever was replayed at the last resume has been taken on by the time a later question is answered.
	const last = { channel: discord.addChannel({ id: '200000000000009999' }).id, user: discord.people.one };
	discord.mention('77A 12V 15 ft', last);
	const isLastAnswered = () => discord.reading(last.channel).some((text) => text.includes('Read: 77 A,'));
	await expect.poll(isLastAnswered, { timeout: ENDED_WITHIN_MS }).toBe(true);
	await recovered(shop, time.forward);

	const shownTo = (channel: string, one: Question) =>
		discord.guild.messages.filter(
			(message) =>
				message.channelId === channel &&
				message.author.bot &&
				message.visibleTo === undefined &&
				!message.deleted &&
				isAnswerTo(one, discordText(message)),
		).length;
	const wrong = asked.flatMap(({ channel, one }) => {
		const times = shownTo(channel, one);
		const texts = discord.guild.messages
			.filter((message) => message.channelId === channel)
			.map((message) => `${message.origin}: ${discordText(message).slice(0, 200)}`);
		return times === 1
			? []
			: [`${one.kind} ${one.currentA} A of ${channel} shown ${times} times: ${texts.join(' / ')}`];
	});
	expect(wrong).toEqual([]);
	const words = (found: readonly { readonly text: string }[]) => found.map(({ text }) => text).toSorted();
	const kept: string[] = [];
	for (const where of new Set(asked.map((one) => one.shop))) kept.push(...words(await shop.entries(where)));
	expect(kept.toSorted()).toEqual([...asked.map(({ one }) => wordsOf(one)), '77A 12V 15 ft'].toSorted());
	const texts = discord.guild.messages.filter(({ author }) => author.bot).map(discordText);
	expect(texts.filter((text) => /gave no answer/.test(text))).toEqual([]);
	const notices = asked.filter(({ interaction }) => {
		const notice = interaction?.original;
		return notice !== undefined && !notice.deleted && discordText(notice) === '(thinking)';
	});
	const standing = notices.map(({ one, channel, interaction }) => {
		const calls = discord.restCalls.filter(
			({ path }) => path.includes(interaction?.token ?? '') || path.startsWith(`/channels/${channel}/`),
		);
		const what = calls.map(
			({ atMs, method, route, status }) =>
				`${atMs - (interaction?.createdMs ?? 0)} ms ${method} ${route} ${status}`,
		);
		return `${one.currentA} A of ${channel}: ${what.join(', ')}`;
	});
	expect(standing).toEqual([]);
	expect(discord.violations).toEqual([]);
	await shop.stop();
}

const discordRoutes = [
	'channel.send',
	'channel.send',
	'interaction.callback',
	'interaction.callback',
	'webhook.followup',
	'webhook.edit',
	'webhook.get',
	'channel.messages',
] as const;
const discordFaults: readonly Fault[] = [
	...common,
	{ kind: 'slow', delayMs: 1700 },
	{ kind: 'rate-limit', retryAfterS: 0.2 },
	{ kind: 'rate-limit', retryAfterS: 0.3, global: true },
	{ kind: 'error', error: 'unknownInteraction' },
	{ kind: 'error', error: 'missingPermissions' },
	{ kind: 'error', error: 'unauthorized' },
];

test('Discord: nothing is lost, nothing stands twice', { timeout: 300_000 }, async () => {
	const batches = fc.sample(
		schedules(
			['command', 'mention', 'private'],
			discordRoutes,
			discordFaults,
			['reconnect', 'invalid but resumable', 'invalid', 'forgotten', 'cut', 'closed', 'odd event'] as const,
			100,
		),
		{ seed: SEED, numRuns: BATCHES },
	);
	for (const all of batches) await runDiscord(all);
});
