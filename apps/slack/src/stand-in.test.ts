/**
 * The stand-in for the Slack platform, proved with the real client library: what the library accepts as the
 * platform's protocol, and how it behaves under the faults the stand-in can be told to make.
 */

import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { App, HTTPReceiver, LogLevel, SocketModeReceiver } from '@slack/bolt';
import { afterEach, describe, expect, test } from 'vitest';
import {
	postRaw,
	readable,
	type SlackStandIn,
	signatureHeaders,
	startSlackStandIn,
} from '../../../tests/platforms/slack.js';

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
	for (const close of closing.splice(0).reverse()) await close();
});

async function standIn(options: Parameters<typeof startSlackStandIn>[0] = {}): Promise<SlackStandIn> {
	const slack = await startSlackStandIn(options);
	closing.push(() => slack.close());
	return slack;
}

const clientOptions = (slack: SlackStandIn) => ({
	slackApiUrl: slack.apiUrl,
	retryConfig: { retries: 2, minTimeout: 10, maxTimeout: 20 },
});

/** A bot over HTTP; `register` adds its listeners. */
async function httpBot(slack: SlackStandIn, register: (app: App) => void = () => {}): Promise<App> {
	const receiver = new HTTPReceiver({ signingSecret: slack.signingSecret, logLevel: LogLevel.ERROR });
	const app = new App({
		token: slack.botToken,
		receiver,
		deferInitialization: true,
		logLevel: LogLevel.ERROR,
		clientOptions: clientOptions(slack),
	});
	register(app);
	await app.init();
	const server = (await app.start({ port: 0, host: '127.0.0.1' })) as Server;
	closing.push(() => app.stop());
	slack.deliverTo(`http://127.0.0.1:${(server.address() as AddressInfo).port}/slack/events`);
	return app;
}

/** A bot over Socket Mode that renews a lost connection after 200 ms. */
async function socketBot(slack: SlackStandIn, register: (app: App) => void): Promise<App> {
	const options = clientOptions(slack);
	const receiver = new SocketModeReceiver({
		appToken: slack.appToken,
		logLevel: LogLevel.ERROR,
		installerOptions: { clientOptions: options },
		clientPingTimeout: 200,
	});
	const app = new App({
		token: slack.botToken,
		receiver,
		deferInitialization: true,
		logLevel: LogLevel.ERROR,
		clientOptions: options,
	});
	register(app);
	await app.init();
	await app.start();
	closing.push(() => app.stop());
	return app;
}

describe('signed HTTP delivery', () => {
	test('a command is acknowledged, answered at its response_url, and read in the channel', async () => {
		const slack = await standIn();
		await httpBot(slack, (app) => {
			app.command('/ask', async ({ ack, command, respond }) => {
				await ack();
				await respond({ response_type: 'in_channel', text: `read: ${command.text}` });
			});
		});
		const { ackStatus, ackBody, ackMs } = await slack.command('/ask', '40A 12V 15 ft', { user: 'U02' });
		expect(ackStatus).toBe(200);
		expect(ackBody).toBeUndefined();
		expect(ackMs).toBeLessThan(3000);
		const answer = await slack.waitForMessage(/read:/);
		expect(readable(answer)).toBe('read: 40A 12V 15 ft');
		expect(answer).toMatchObject({ channel: 'C01', via: 'response_url', fromBot: true });
		expect(slack.reading('C01', 'U01')).toEqual(['read: 40A 12V 15 ft']);
		expect(slack.violations).toEqual([]);
	});

	test('a text in the acknowledgement is seen by the person alone', async () => {
		const slack = await standIn();
		await httpBot(slack, (app) => {
			app.command('/ask', async ({ ack }) => ack('only for you'));
		});
		await slack.command('/ask', 'help', { user: 'U02' });
		expect(slack.reading('C01', 'U02')).toEqual(['only for you']);
		expect(slack.reading('C01', 'U01')).toEqual([]);
	});

	test.each([
		['wrong-secret' as const],
		['missing' as const],
		['unknown-version' as const],
		['garbage' as const],
		['of-other-body' as const],
	])('a request with signature %s is refused with 401 and runs nothing', async (signature) => {
		const slack = await standIn();
		let ran = 0;
		await httpBot(slack, (app) => {
			app.command('/ask', async ({ ack }) => {
				ran += 1;
				await ack();
			});
		});
		const { ackStatus } = await slack.command('/ask', 'x', {}, { signature });
		expect(ackStatus).toBe(401);
		expect(ran).toBe(0);
	});

	test('a request older than five minutes is refused; one of four minutes is taken', async () => {
		const slack = await standIn();
		await httpBot(slack, (app) => {
			app.command('/ask', async ({ ack }) => ack());
		});
		const old = await slack.command('/ask', 'x', {}, { timestampOffsetS: -302 });
		expect(old.ackStatus).toBe(401);
		const recent = await slack.command('/ask', 'x', {}, { timestampOffsetS: -240 });
		expect(recent.ackStatus).toBe(200);
	});

	test('a listener that never acknowledges costs the person three seconds', async () => {
		const slack = await standIn();
		await httpBot(slack, (app) => {
			app.command('/ask', async () => {});
		});
		const { ackStatus, failure, ackMs } = await slack.command('/ask', 'x');
		expect(ackStatus).toBeNull();
		expect(failure).toBe('timeout');
		expect(ackMs).toBeGreaterThanOrEqual(2990);
	});

	test('a retry carries its number and reason, and the same event id', async () => {
		const slack = await standIn();
		const seen: unknown[] = [];
		await httpBot(slack, (app) => {
			app.event('app_mention', async ({ context, body }) => {
				seen.push([body.event_id, context.retryNum, context.retryReason]);
			});
		});
		const first = await slack.mention('40A 12V 15 ft');
		await slack.redeliver(first, 1, 'http_timeout');
		expect(first.ackStatus).toBe(200);
		expect(seen).toEqual([
			['Ev00000001', undefined, undefined],
			['Ev00000001', 1, 'http_timeout'],
		]);
	});

	test('malformed bodies are refused even when rightly signed', async () => {
		const slack = await standIn();
		await httpBot(slack);
		for (const [contentType, body] of [
			['application/json', '{"type":"event_callback","event":'],
			['application/x-www-form-urlencoded', 'payload=%7Bnot-json'],
		] as const) {
			const headers = {
				'content-type': contentType,
				...signatureHeaders(slack.signingSecret, body, Date.now()),
			};
			const { status } = await postRaw(slack.requestUrl, body, headers);
			expect(status, body).toBe(400);
		}
	});

	test('a mention, a private message and a visit of the Home tab arrive as their events', async () => {
		const slack = await standIn();
		const seen: string[] = [];
		await httpBot(slack, (app) => {
			app.event('app_mention', async ({ event, say }) => {
				seen.push(`mention ${event.text}`);
				await say({ text: 'in thread', thread_ts: event.ts });
			});
			app.message(async ({ message, say }) => {
				seen.push(`${message.channel_type} ${'text' in message ? message.text : message.subtype}`);
				if (message.subtype === undefined) await say('private');
			});
			app.event('app_home_opened', async ({ event, client }) => {
				await client.views.publish({
					user_id: event.user,
					view: { type: 'home', blocks: [{ type: 'section', text: { type: 'mrkdwn', text: 'Welcome' } }] },
				});
			});
		});
		const asked = await slack.mention('5 < 6 & @everyone');
		const reply = await slack.waitForMessage(/in thread/);
		expect(reply.threadTs).toBe(asked.message.ts);
		const direct = await slack.dm('hello');
		await slack.waitForMessage(/private/);
		await slack.editByPerson(direct.message, 'hello again');
		await slack.openHome('U02');
		await slack.waitForHome('U02');
		expect(seen).toEqual(['mention <@UBOT> 5 &lt; 6 &amp; <!everyone>', 'im hello', 'im message_changed']);
		expect(slack.reading('DU01', 'U01')).toEqual(['hello again', 'private']);
	});
});

describe('interactions', () => {
	const withButton = [
		{ type: 'section', text: { type: 'mrkdwn', text: 'Answer' } },
		{
			type: 'actions',
			block_id: 'more',
			elements: [
				{ type: 'button', action_id: 'working', value: '128', text: { type: 'plain_text', text: 'working' } },
				{ type: 'button', action_id: 'form', text: { type: 'plain_text', text: 'change' } },
			],
		},
	];

	test('a button under a message, replacing it; a form opened, refused at a field, then submitted', async () => {
		const slack = await standIn();
		await httpBot(slack, (app) => {
			app.command('/ask', async ({ ack, respond }) => {
				await ack();
				await respond({ response_type: 'in_channel', text: 'Answer', blocks: withButton });
			});
			app.action('working', async ({ ack, respond, action }) => {
				await ack();
				await respond({
					replace_original: true,
					text: `working of ${'value' in action ? action.value : '?'}`,
				});
			});
			app.action('form', async ({ ack, client, body }) => {
				await ack();
				await client.views.open({
					trigger_id: 'trigger_id' in body ? body.trigger_id : '',
					view: {
						type: 'modal',
						callback_id: 'change',
						title: { type: 'plain_text', text: 'Change' },
						submit: { type: 'plain_text', text: 'Size it' },
						blocks: [
							{
								type: 'input',
								block_id: 'length',
								label: { type: 'plain_text', text: 'Length' },
								element: { type: 'plain_text_input', action_id: 'value' },
							},
						],
					},
				});
			});
			app.view('change', async ({ ack, view }) => {
				const value = view.state.values.length?.value?.value ?? '';
				if (!/^\d/.test(value))
					await ack({ response_action: 'errors', errors: { length: 'a number, please' } });
				else await ack();
			});
		});
		await slack.command('/ask', 'x');
		const answer = await slack.waitForMessage(/Answer/);
		expect(readable(answer)).toBe('Answer\n[working] [change]');
		await slack.press(answer, 'change');
		const modal = await slack.waitForModal();
		const refused = await slack.submitModal(modal, { length: 'far' });
		expect(refused.ackBody).toEqual({ response_action: 'errors', errors: { length: 'a number, please' } });
		const taken = await slack.submitModal(modal, { length: '20 ft' });
		expect([taken.ackStatus, taken.ackBody]).toEqual([200, undefined]);
		await slack.press(answer, 'working');
		await slack.waitForMessage(/working of 128/);
		expect(slack.reading()).toEqual(['working of 128']);
		expect(slack.violations).toEqual([]);
		expect(() => slack.press(answer, 'nothing')).toThrow(/there is no "nothing" to press/);
	});

	test('a menu with options from the app', async () => {
		const slack = await standIn();
		await httpBot(slack, (app) => {
			app.options('topic', async ({ ack, options }) => {
				const text = { type: 'plain_text' as const, text: `${options.value}-topic` };
				await ack({ options: [{ text, value: 'wire' }] });
			});
		});
		const { ackBody } = await slack.suggest('topic', 'wi');
		expect(ackBody).toMatchObject({ options: [{ text: { text: 'wi-topic' }, value: 'wire' }] });
		expect(slack.violations).toEqual([]);
	});

	test('a response_url is good for 5 posts and 30 minutes; a trigger for one form within 3 s', async () => {
		let nowMs = Date.now();
		const slack = await standIn({ nowMs: () => nowMs });
		const { delivery } = await slack.command('/ask', 'x');
		const url = String(delivery.payload.response_url);
		const post = () => fetch(url, { method: 'POST', body: JSON.stringify({ text: 'again' }) });
		const statuses: number[] = [];
		for (let at = 0; at < 6; at += 1) statuses.push((await post()).status);
		expect(statuses).toEqual([200, 200, 200, 200, 200, 404]);
		const later = await slack.command('/ask', 'y');
		nowMs += 31 * 60_000;
		expect(
			(await fetch(String(later.delivery.payload.response_url), { method: 'POST', body: '{}' })).status,
		).toBe(404);
		const app = new App({
			token: slack.botToken,
			signingSecret: 'x',
			deferInitialization: true,
			clientOptions: clientOptions(slack),
		});
		const view = {
			type: 'modal' as const,
			title: { type: 'plain_text' as const, text: 'T' },
			blocks: [{ type: 'divider' as const }],
		};
		const open = (triggerId: string) =>
			app.client.views.open({ token: slack.botToken, trigger_id: triggerId, view }).then(
				() => 'opened',
				(error: { data: { error: string } }) => error.data.error,
			);
		expect(await open(String(later.delivery.payload.trigger_id))).toBe('expired_trigger_id');
		const fresh = String((await slack.command('/ask', 'z')).delivery.payload.trigger_id);
		expect([await open(fresh), await open(fresh), await open('made-up')]).toEqual([
			'opened',
			'exchanged_trigger_id',
			'invalid_trigger_id',
		]);
	});
});

describe('Web API', () => {
	const client = async (slack: SlackStandIn, token = slack.botToken) =>
		new App({
			token,
			signingSecret: 'x',
			deferInitialization: true,
			logLevel: LogLevel.ERROR,
			clientOptions: clientOptions(slack),
		}).client;
	const failing = (call: Promise<unknown>) =>
		call.then(
			() => 'no error',
			(error: { code: string; data?: { error: string } }) => error.data?.error ?? error.code,
		);

	test('post, thread, update, private notice and file are what people then see', async () => {
		const slack = await standIn();
		const web = await client(slack);
		const token = slack.botToken;
		const { ts = '' } = await web.chat.postMessage({ token, channel: 'C01', text: 'first' });
		await web.chat.postMessage({ token, channel: 'C01', text: 'reply', thread_ts: ts });
		await web.chat.update({ token, channel: 'C01', ts, text: 'first, corrected' });
		await web.chat.postEphemeral({ token, channel: 'C01', user: 'U02', text: 'psst' });
		const file = Buffer.from('%PDF-1.7 demo');
		await web.filesUploadV2({
			token,
			channel_id: 'C01',
			filename: 'book.pdf',
			file,
			initial_comment: 'the book',
		});
		expect(slack.reading('C01', 'U01')).toEqual(['first, corrected', 'reply', 'the book']);
		expect(slack.reading('C01', 'U02')).toEqual(['first, corrected', 'reply', 'psst', 'the book']);
		expect(slack.workspace.thread('C01', ts).map(readable)).toEqual(['first, corrected', 'reply']);
		expect(slack.workspace.find('C01', ts)?.edits).toEqual([{ text: 'first', blocks: [] }]);
		expect([...slack.files.values()][0]).toMatchObject({
			filename: 'book.pdf',
			bytes: file,
			completed: true,
		});
		expect(slack.calls('chat.update')[0]?.args).toMatchObject({ channel: 'C01', ts });
		expect(slack.violations).toEqual([]);
	});

	test('refusals carry the documented codes', async () => {
		const slack = await standIn({ scopes: ['chat:write'] });
		slack.addChannel({ id: 'C02', botIsMember: false });
		slack.addChannel({ id: 'C03', isArchived: true });
		const web = await client(slack);
		const token = slack.botToken;
		const post = (channel: string) => failing(web.chat.postMessage({ token, channel, text: 'x' }));
		expect(await post('C02')).toBe('not_in_channel');
		expect(await post('C03')).toBe('is_archived');
		expect(await post('C99')).toBe('channel_not_found');
		expect(await failing(web.chat.update({ token, channel: 'C01', ts: '1.2', text: 'x' }))).toBe(
			'message_not_found',
		);
		expect(await failing(web.users.info({ token, user: 'U01' }))).toBe('missing_scope');
		expect(await failing(web.apiCall('chat.shout', { token }))).toBe('unknown_method');
		expect(await failing(web.chat.postMessage({ token: 'xoxb-other', channel: 'C01', text: 'x' }))).toBe(
			'invalid_auth',
		);
		const { message } = await slack.say('mine');
		expect(await failing(web.chat.update({ token, channel: 'C01', ts: message.ts, text: 'x' }))).toBe(
			'cant_update_message',
		);
	});

	test('429 is obeyed for the seconds it names', async () => {
		const slack = await standIn();
		const web = await client(slack);
		slack.faults.order('chat.postMessage', { kind: 'rate-limit', retryAfterS: 1 });
		const startedMs = performance.now();
		await web.chat.postMessage({ token: slack.botToken, channel: 'C01', text: 'patient' });
		expect(performance.now() - startedMs).toBeGreaterThanOrEqual(1000);
		expect(slack.calls('chat.postMessage').map((call) => call.answer.ok)).toEqual([false, true]);
		expect(slack.faults.pending).toBe(0);
	});

	test('500, a cut connection, and an answer that is lost after the message was posted', async () => {
		const slack = await standIn();
		const web = await client(slack);
		const post = () => web.chat.postMessage({ token: slack.botToken, channel: 'C01', text: 'x' });
		slack.faults.order('chat.postMessage', { kind: 'status', status: 500 });
		await post();
		slack.faults.order('chat.postMessage', { kind: 'drop-request' });
		await post();
		expect(slack.reading()).toEqual(['x', 'x']);
		// The client reports a failure although the message stands: repeating it would post it twice.
		slack.faults.order('chat.postMessage', { kind: 'drop-answer' });
		await expect(post()).rejects.toThrow(/terminated/);
		expect(slack.reading()).toEqual(['x', 'x', 'x']);
		slack.faults.order('chat.postMessage', { kind: 'error', error: 'invalid_auth' });
		expect(await failing(post())).toBe('invalid_auth');
		slack.faults.order('chat.postMessage', { kind: 'malformed-answer' });
		expect(await failing(post())).toContain('not JSON');
		slack.faults.order('chat.postMessage', { kind: 'slow', delayMs: 200 });
		const startedMs = performance.now();
		await post();
		expect(performance.now() - startedMs).toBeGreaterThanOrEqual(190);
	});

	test('a refused token is a clean error at start', async () => {
		const slack = await standIn();
		const receiver = new HTTPReceiver({ signingSecret: 'x', logLevel: LogLevel.ERROR });
		const app = new App({
			token: 'xoxb-wrong',
			receiver,
			deferInitialization: true,
			logLevel: LogLevel.ERROR,
			clientOptions: clientOptions(slack),
		});
		await expect(app.init()).rejects.toMatchObject({ data: { error: 'invalid_auth' } });
	});
});

describe('Socket Mode', () => {
	const echo = (app: App) => {
		app.command('/ask', async ({ ack, command }) => ack(`read: ${command.text}`));
		app.event('app_mention', async ({ say, context }) => {
			await say(`mention, retry ${context.retryNum ?? 0}`);
		});
	};

	test('an envelope is acknowledged by its id, with the body', async () => {
		const slack = await standIn();
		await socketBot(slack, echo);
		const { ackStatus, ackBody } = await slack.command('/ask', '40A');
		expect([ackStatus, ackBody]).toEqual([200, { text: 'read: 40A' }]);
		const mention = await slack.mention('hi');
		expect(mention.ackStatus).toBe(200);
		await slack.waitForMessage(/mention, retry 0/);
		await slack.redeliver(mention, 2, 'timeout');
		await slack.waitForMessage(/mention, retry 2/);
	});

	test('renewed when asked to, and after a cut; garbage on the socket is survived', async () => {
		const slack = await standIn();
		await socketBot(slack, echo);
		slack.socket.sendRaw('not json');
		slack.socket.sendRaw('{"type":"new_kind","envelope_id":"x","payload":{}}');
		slack.socket.refresh();
		await slack.socket.waitForOpened(2);
		expect((await slack.command('/ask', 'two')).ackBody).toEqual({ text: 'read: two' });
		slack.socket.drop();
		await slack.socket.waitForOpened(3);
		expect((await slack.command('/ask', 'three')).ackBody).toEqual({ text: 'read: three' });
		expect(slack.calls('apps.connections.open')).toHaveLength(3);
	});

	test('without a connection a command fails at once', async () => {
		const slack = await standIn();
		expect(await slack.command('/ask', 'x')).toMatchObject({ ackStatus: null, failure: 'no-connection' });
	});

	test('a bot token is refused where an app-level token is needed', async () => {
		const slack = await standIn();
		const answer = await fetch(`${slack.apiUrl}apps.connections.open`, {
			method: 'POST',
			headers: { authorization: `Bearer ${slack.botToken}` },
		});
		expect(await answer.json()).toEqual({ ok: false, error: 'not_allowed_token_type' });
	});
});
