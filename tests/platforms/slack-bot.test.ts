/**
 * The Slack bot against the stand-in of its platform: what people ask, what they then read, and what the log keeps.
 * Everything goes over loopback by the platform's own protocol.
 */

import { HEALTH_PATH, plainText } from '@lugbook/chat';
import { pagesOf } from '@lugbook/slack';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { afterwards } from './common/closing.js';
import { NOTICE, openConversation } from './common/conversation.js';
import { slackBotOn, slackShop } from './slack/shop.js';
import { readable, startSlackStandIn } from './slack.js';

const QUESTION = '40A 12V 15 ft';

/** What the terminal says to the same question, from a log of its own. */
async function terminalAnswer(text: string): Promise<string[]> {
	const chat = await openConversation();
	const reply = await chat.handle({
		platform: 'terminal',
		shop: 'local',
		channel: 'terminal',
		thread: null,
		delivery: null,
		person: { id: 'one', name: 'one', lead: false },
		command: 'ask',
		text,
	});
	await chat.close();
	return plainText({ ...reply, buttons: [] }, { folded: true }).split('\n');
}

const sorted = (lines: readonly string[]) => lines.toSorted();

describe.each(['http' as const, 'socket' as const])('over %s', (mode) => {
	test('a command: acknowledged, answered in the channel, kept, the same words as in the terminal', async () => {
		const { slack, entries } = await slackShop({ mode });
		const asked = await slack.command('/ask', QUESTION, { user: 'U02' });
		expect(asked.ackStatus).toBe(200);
		expect(asked.ackBody).toBeUndefined();
		const answer = await slack.waitForMessage(/AWG/);
		expect(answer.visibleTo).toBeUndefined();
		const lines = readable(answer).split('\n');
		const buttons = lines.filter((line) => /^\[.*\]$/.test(line));
		const words = lines.filter((line) => !/^\[.*\]$/.test(line) && !NOTICE.test(line));
		expect(lines.filter((line) => NOTICE.test(line))).toHaveLength(1);
		expect(sorted(words)).toEqual(sorted(await terminalAnswer(QUESTION)));
		expect(words[0]).toMatch(/\d\/?\d* AWG/);
		expect(buttons).toHaveLength(2);
		const kept = await entries();
		expect(kept).toMatchObject([{ number: 1, text: QUESTION, personName: 'person u02', headline: words[0] }]);
		// The text beside the blocks is what a notification shows: the decision itself.
		expect(answer.text.startsWith(String(words[0]))).toBe(true);
		expect(slack.violations).toEqual([]);
	});

	test('a mention is answered in its thread, and a follow-up there goes on', async () => {
		const { slack, entries } = await slackShop({ mode });
		const asked = await slack.mention(QUESTION);
		const first = await slack.waitForMessage(/AWG/);
		expect(first.threadTs).toBe(asked.message.ts);
		await slack.mention('and at 30 ft?', { threadTs: asked.message.ts, user: 'U02' });
		await expect.poll(() => slack.botMessages().length).toBe(2);
		const [, second] = slack.botMessages();
		expect(second?.threadTs).toBe(asked.message.ts);
		expect(readable(second as typeof first)).toMatch(/30 ft/);
		expect((await entries()).map(({ thread }) => thread)).toEqual([asked.message.ts, asked.message.ts]);
		expect(slack.violations).toEqual([]);
	});

	test('the same event five times, together and again later: one entry, one answer', async () => {
		const { slack, entries } = await slackShop({ mode });
		const first = slack.mention(QUESTION);
		const result = await first;
		await Promise.all([1, 2, 3].map((retry) => slack.redeliver(result, retry, 'http_timeout')));
		await slack.waitForMessage(/AWG/);
		await slack.redeliver(result, 3, 'http_timeout');
		await slack.command('/ask', '10A 12V 3 ft');
		await expect.poll(() => slack.botMessages().length).toBe(2);
		expect((await entries()).map(({ text }) => text)).toEqual(['10A 12V 3 ft', QUESTION]);
	});
});

describe('what reaches the bot', () => {
	test.each([
		['a wrong signature', { signature: 'wrong-secret' as const }],
		['no signature', { signature: 'missing' as const }],
		['a time 301 s in the past', { timestampOffsetS: -302 }],
		['a time 301 s in the future', { timestampOffsetS: 302 }],
	])('%s is refused with 401 and leaves no trace', async (_, spoiled) => {
		const { slack, entries } = await slackShop();
		expect((await slack.command('/ask', QUESTION, {}, spoiled)).ackStatus).toBe(401);
		expect(await entries()).toEqual([]);
		expect(slack.botMessages()).toEqual([]);
	});

	test('four minutes off, either way, is taken', async () => {
		const { slack } = await slackShop();
		for (const timestampOffsetS of [-240, 240]) {
			expect((await slack.command('/ask', QUESTION, {}, { timestampOffsetS })).ackStatus).toBe(200);
		}
		await expect.poll(() => slack.botMessages().length).toBe(2);
	});

	test('an acknowledgement does not wait for a slow log', async () => {
		const { slack } = await slackShop({
			handle: (chat) => async (incoming) => {
				await new Promise((resolve) => setTimeout(resolve, 400));
				return chat.handle(incoming);
			},
		});
		const { ackMs } = await slack.command('/ask', QUESTION);
		expect(ackMs).toBeLessThan(300);
		await slack.waitForMessage(/AWG/);
	});

	test('a private message, and one in a thread; edits and the bot itself are left alone', async () => {
		const { slack, entries } = await slackShop();
		const asked = await slack.dm(QUESTION);
		await slack.waitForMessage(/AWG/);
		await slack.dm('and at 30 ft?', { threadTs: asked.message.ts });
		await slack.editByPerson(asked.message, '60A 12V 15 ft');
		await slack.rawEvent({
			type: 'message',
			channel_type: 'im',
			channel: 'DU01',
			user: slack.botUserId,
			bot_id: 'B01',
			text: QUESTION,
			ts: '1.000001',
			event_ts: '1.000001',
		});
		await slack.dm('10A 12V 3 ft');
		await expect.poll(() => slack.botMessages('DU01').length).toBe(3);
		expect((await entries()).map(({ text }) => text)).toEqual(['10A 12V 3 ft', 'and at 30 ft?', QUESTION]);
	});

	test('a slash command where the bot is no member is answered all the same', async () => {
		const { slack } = await slackShop();
		slack.addChannel({ id: 'C09', botIsMember: false });
		await slack.command('/ask', QUESTION, { channel: 'C09' });
		expect((await slack.waitForMessage(/AWG/)).channel).toBe('C09');
	});
});

describe('what people read', () => {
	const hostile =
		'@everyone @channel <!here> <@U02> *bold* _it_ `x` <https://example.com|go> &amp; &lt;!channel&gt;';

	test('mentions and markup in a question are inert in the answer', async () => {
		const { slack } = await slackShop();
		await slack.mention(`${QUESTION} ${hostile}`);
		const answer = await slack.waitForMessage(/bold/);
		expect(JSON.stringify(answer.blocks)).not.toContain('mrkdwn');
		expect(slack.violations).toEqual([]);
	});

	test('whatever the conversation repeats is shown letter by letter, in blocks and beside them', async () => {
		const kinds = [
			'headline',
			'read',
			'danger',
			'warning',
			'unread',
			'assumed',
			'working',
			'list',
			'kept',
		] as const;
		const { slack } = await slackShop({
			handle: (chat) => async (incoming) => {
				const reply = await chat.handle({ ...incoming, text: QUESTION });
				const parts = kinds.map((kind) => ({ kind, text: hostile, fold: kind === 'warning' }));
				const buttons = [{ action: 'answer' as const, label: hostile, value: hostile }];
				return { ...reply, parts, buttons };
			},
		});
		await slack.mention(QUESTION);
		const answer = await slack.waitForMessage(/bold/);
		expect(readable(answer).split(hostile)).toHaveLength(kinds.length + 1);
		expect(readable({ text: answer.text, blocks: [] })).toContain(hostile);
		expect(answer.text).not.toMatch(/[<>]/);
		expect(slack.violations).toEqual([]);
	});

	test('what was not understood is said to the asker alone', async () => {
		const { slack } = await slackShop();
		await slack.mention('qwertz', { user: 'U02' });
		const answer = await slack.waitForMessage(/could not|Ask me/i);
		expect(answer.visibleTo).toBe('U02');
		await slack.command('/ask', 'help', { user: 'U01' });
		const help = await slack.waitForMessage(/one way unless/);
		expect(help.visibleTo).toBe('U01');
		expect(slack.violations).toEqual([]);
	});

	test('the working is shown in the thread under the answer', async () => {
		const { slack } = await slackShop();
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		const pressed = await slack.press(answer, 'Show working', { user: 'U02' });
		expect(pressed.ackStatus).toBe(200);
		const working = await slack.waitForMessage((_, message) => message.threadTs === answer.ts);
		expect(readable(working)).toMatch(/=/);
		expect(slack.violations).toEqual([]);
	});

	test('changing an answer opens its form, filled in; the new answer goes below it', async () => {
		const { slack, entries } = await slackShop();
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		await slack.press(answer, 'Change');
		const form = await slack.waitForModal();
		const blocks = form.view.blocks as { block_id: string; element?: { initial_value?: string } }[];
		const initial = (name: string) => blocks.find((block) => block.block_id === name)?.element?.initial_value;
		expect([initial('currentA'), initial('voltageV'), initial('lengthM')]).toEqual(['40 A', '12 V', '15 ft']);
		await slack.submitModal(form, { lengthM: '30 ft' });
		await slack.waitForMessage((text, message) => message.threadTs === answer.ts && /30 ft/.test(text));
		expect(await entries()).toHaveLength(2);
		expect(slack.violations).toEqual([]);
	});

	test('/size opens the choice of topics, then the form; /size TOPIC the form; with inputs it answers', async () => {
		const { slack, entries } = await slackShop();
		await slack.command('/size', '');
		const choice = await slack.waitForModal();
		const next = await slack.submitModal(choice, { topic: 'wire' });
		expect(next.ackBody).toMatchObject({ response_action: 'update' });
		await slack.submitModal(choice, { currentA: '40', voltageV: '12', lengthM: '15 ft' });
		await slack.waitForMessage(/AWG/);
		await slack.command('/size', 'wire', { user: 'U02' });
		const form = await slack.waitForModal('U02');
		const refused = await slack.submitModal(form, { currentA: 'plenty', voltageV: '12', lengthM: '15 ft' });
		// Said in the form, which stays open: the field, what was read, what would be right.
		expect(refused.ackBody).toEqual({
			response_action: 'errors',
			errors: { currentA: expect.stringMatching(/^I read "plenty"\. .*\bA\b/) },
		});
		expect(await entries()).toHaveLength(1);
		await slack.submitModal(form, { currentA: '30', voltageV: '12', lengthM: '15 ft' });
		await expect.poll(entries).toHaveLength(2);
		await slack.command('/size', `wire ${QUESTION}`);
		await expect.poll(entries).toHaveLength(3);
		expect(slack.violations).toEqual([]);
	});

	test('the Home tab says what can be asked', async () => {
		const { slack } = await slackShop();
		await slack.openHome();
		const home = await slack.waitForHome();
		expect(readable({ text: '', blocks: home.blocks as Record<string, unknown>[] })).toMatch(/40A 12V 15 ft/);
		expect(slack.violations).toEqual([]);
	});
});

describe('pages', () => {
	const part = fc.record({
		kind: fc.constantFrom(
			...(['danger', 'warning', 'note', 'list', 'working', 'caution', 'assumed', 'kept'] as const),
		),
		text: fc.oneof(
			fc.string({ maxLength: 300 }),
			fc.string({ minLength: 2900, maxLength: 4000 }),
			fc.constant('<!here>'),
		),
		fold: fc.boolean(),
	});
	const button = fc.record({
		action: fc.constantFrom('working' as const, 'answer' as const),
		label: fc.string({ minLength: 1, maxLength: 120 }),
		value: fc.string({ maxLength: 2500 }),
	});

	test('any reply keeps to the limits, and shows every danger in full', async () => {
		const { slack, chat, shop } = await slackShop();
		const person = { id: 'U01', name: 'one', lead: false };
		const place = { platform: 'slack', shop, channel: 'C01', thread: null, delivery: null, person };
		const base = await chat.handle({ ...place, command: 'ask', text: QUESTION });
		const letters = (text: string) => text.replace(/\s/g, '');
		await fc.assert(
			fc.asyncProperty(
				fc.array(part, { maxLength: 90 }),
				fc.array(button, { maxLength: 30 }),
				fc.string({ minLength: 1, maxLength: 400 }),
				async (parts, buttons, headline) => {
					const dangers = parts.filter((one) => one.kind === 'danger').slice(0, 8);
					const others = parts.filter((one) => one.kind !== 'danger');
					const all = [{ kind: 'headline' as const, text: headline, fold: false }, ...others, ...dangers];
					const pages = pagesOf({ ...base, parts: all, buttons });
					expect(pages.length).toBeLessThanOrEqual(4);
					const shown: string[] = [];
					for (const page of pages) {
						const answer = await fetch(`${slack.apiUrl}chat.postMessage`, {
							method: 'POST',
							headers: { authorization: `Bearer ${slack.botToken}`, 'content-type': 'application/json' },
							body: JSON.stringify({ channel: 'C01', ...page }),
						});
						expect(await answer.json()).toMatchObject({ ok: true });
						shown.push(
							readable({ text: page.text, blocks: page.blocks as unknown as Record<string, unknown>[] }),
						);
					}
					for (const danger of dangers) expect(letters(shown.join(''))).toContain(letters(danger.text));
				},
			),
			{ numRuns: 100 },
		);
		expect(slack.violations).toEqual([]);
	});
});

test('the program log holds no word of a message and no secret', async () => {
	const { slack, programLog } = await slackShop();
	slack.faults.order('chat.postMessage', { kind: 'error', error: 'token_expired' });
	await slack.mention(`${QUESTION} teapot`);
	await slack.waitForMessage(/failed on my side/);
	await slack.command('/ask', `${QUESTION} teapot`);
	await slack.waitForMessage(/AWG/);
	await slack.command('/ask', 'teapot', {}, { signature: 'wrong-secret' });
	await expect.poll(() => programLog.join('')).toMatch(/"msg":"answered"/);
	await expect.poll(() => programLog.join('')).toMatch(/Failed to parse and verify/);
	const lines = programLog.join('');
	expect(lines).toMatch(/token_expired/);
	for (const secret of ['teapot', QUESTION, slack.botToken, slack.signingSecret])
		expect(lines).not.toContain(secret);
});

describe('when things go wrong', () => {
	test('the platform is busy: the answer comes after its pause, once', async () => {
		const { slack } = await slackShop();
		slack.faults.order('chat.postMessage', { kind: 'rate-limit', retryAfterS: 1 });
		await slack.mention(QUESTION);
		await slack.waitForMessage(/AWG/);
		expect(slack.botMessages()).toHaveLength(1);
	});

	test('the platform fails twice: the third try shows the answer', async () => {
		const { slack } = await slackShop();
		slack.faults.order('chat.postMessage', { kind: 'drop-request' }, 2);
		await slack.mention(QUESTION);
		await slack.waitForMessage(/AWG/, 10_000);
	});

	test('an answer that could not be shown is shown when the platform delivers again; it is kept once', async () => {
		const { slack, entries } = await slackShop();
		slack.faults.order('chat.postMessage', { kind: 'error', error: 'token_expired' });
		const asked = await slack.mention(QUESTION);
		await slack.waitForMessage(/failed on my side/);
		await slack.redeliver(asked, 1, 'http_error');
		await slack.waitForMessage(/AWG/);
		expect(await entries()).toHaveLength(1);
	});

	test('blocks that the platform refuses are shown as text', async () => {
		const { slack } = await slackShop();
		slack.faults.order('chat.postMessage', { kind: 'error', error: 'invalid_blocks' });
		await slack.mention(QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		expect(answer.blocks).toEqual([]);
	});

	test('a conversation that throws is told to the asker, and the bot lives on', async () => {
		let broken = true;
		const { slack } = await slackShop({
			handle: (chat) => async (incoming) => {
				if (broken) throw new Error('the log is gone');
				return chat.handle(incoming);
			},
		});
		await slack.command('/ask', QUESTION, { user: 'U02' });
		expect((await slack.waitForMessage(/failed on my side/)).visibleTo).toBe('U02');
		broken = false;
		await slack.command('/ask', QUESTION);
		await slack.waitForMessage(/AWG/);
	});

	test('without the name of a person the id is kept', async () => {
		const { slack, entries } = await slackShop();
		slack.faults.order('users.info', { kind: 'error', error: 'missing_scope' });
		await slack.command('/ask', QUESTION, { user: 'U02' });
		await slack.waitForMessage(/AWG/);
		expect(await entries()).toMatchObject([{ personName: 'U02' }]);
	});

	test('a renewed socket goes on; health tells when it is away', async () => {
		const { slack, bot } = await slackShop({ mode: 'socket' });
		const health = () => fetch(`http://127.0.0.1:${bot.port}${HEALTH_PATH}`).then(({ status }) => status);
		expect(await health()).toBe(200);
		slack.socket.drop();
		await expect.poll(health).toBe(503);
		await slack.socket.waitForOpened(2);
		await expect.poll(health).toBe(200);
		await slack.command('/ask', QUESTION);
		await slack.waitForMessage(/AWG/);
	});

	test('a refused token stops the start with the reason', async () => {
		const slack = await startSlackStandIn();
		afterwards(() => slack.close());
		const chat = await openConversation();
		afterwards(() => chat.close());
		slack.faults.order('auth.test', { kind: 'error', error: 'invalid_auth' });
		await expect(slackBotOn(slack, chat, {})).rejects.toMatchObject({ data: { error: 'invalid_auth' } });
	});

	test('a stop lets the answer under way be shown', async () => {
		const { slack, stop } = await slackShop({
			handle: (chat) => async (incoming) => {
				await new Promise((resolve) => setTimeout(resolve, 300));
				return chat.handle(incoming);
			},
		});
		await slack.command('/ask', QUESTION);
		await stop();
		expect(slack.reading().join()).toMatch(/AWG/);
	});
});
