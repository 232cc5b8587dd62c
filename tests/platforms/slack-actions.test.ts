/**
 * What stands under an answer of the Slack bot and beside it: buttons, menus, forms, files, marks on earlier answers,
 * threads. Over loopback, by the platform's own protocol.
 */

import type { Chat, Reply, ReplyFile } from '@lugbook/chat';
import { describe, expect, test } from 'vitest';
import { interactiveElements } from './slack/model.js';
import { slackShop } from './slack/shop.js';
import { readable } from './slack.js';

const QUESTION = '40A 12V 15 ft';

/** The conversation whose replies carry something more. */
const adding =
	(more: (reply: Reply, text: string) => Partial<Reply>) =>
	(chat: Chat): Chat['handle'] =>
	async (incoming) => {
		const reply = await chat.handle(incoming);
		return { ...reply, ...more(reply, incoming.text) };
	};

describe('after an answer', () => {
	test('a thread under the answer to a command goes on with its question', async () => {
		const { slack, entries } = await slackShop();
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		await slack.mention('and at 30 ft?', { threadTs: answer.ts, user: 'U02' });
		const next = await slack.waitForMessage(/30 ft/);
		expect(next.threadTs).toBe(answer.ts);
		expect(await entries()).toHaveLength(2);
		expect(slack.violations).toEqual([]);
	});

	test('asked of the lead, refused to another, signed by the lead; every step is in the log', async () => {
		const { slack, chat, shop } = await slackShop({ leads: ['U02'] });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		await slack.press(answer, 'Ask the lead');
		const asked = await slack.waitForMessage(/is asked of the lead/);
		expect(asked.threadTs).toBe(answer.ts);
		await slack.press(asked, 'Sign', { user: 'U01' });
		expect((await slack.waitForMessage(/for the leads/)).visibleTo).toBe('U01');
		await slack.press(asked, 'Sign', { user: 'U02' });
		const signed = await slack.waitForMessage(/No\. 1 signed by person u02/);
		expect(signed.visibleTo).toBeUndefined();
		const { entries } = await chat.log.find(shop, { order: 'oldest', limit: 10 });
		expect(entries.map(({ kind }) => kind)).toEqual(['exchange', 'asked', 'refused-action', 'signed']);
		expect(slack.violations).toEqual([]);
	});

	test('a lead by a group of the workspace is one as long as the group has them', async () => {
		let nowMs = Date.now();
		const { slack } = await slackShop({ leadGroups: ['S01'], scopes: null, nowMs: () => nowMs });
		slack.groups.set('S01', new Set(['U02']));
		await slack.command('/ask', QUESTION);
		await slack.waitForMessage(/AWG/);
		await slack.command('/log', 'sign 1', { user: 'U02' });
		await slack.waitForMessage(/No\. 1 signed/);
		await slack.command('/ask', '10A 12V 15 ft');
		await slack.waitForMessage(/read: 10 A|current 10 A|10 A at/i);
		slack.groups.set('S01', new Set());
		nowMs += 60_000;
		await slack.command('/log', 'sign 3', { user: 'U02' });
		expect((await slack.waitForMessage(/for the leads/)).visibleTo).toBe('U02');
	});

	test('rejected and commented with words from a form', async () => {
		const { slack } = await slackShop({ leads: ['U02'] });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		await slack.press(answer, 'Ask the lead');
		const asked = await slack.waitForMessage(/is asked of the lead/);
		await slack.press(asked, 'Comment', { user: 'U02' });
		await slack.submitModal(await slack.waitForModal('U02'), { words: 'measure the run again' });
		await slack.waitForMessage(/No\. 1, comment by person u02: measure the run again/);
		await slack.press(asked, 'Reject', { user: 'U02' });
		await slack.submitModal(await slack.waitForModal('U02'), { words: 'the run is longer' });
		const rejected = await slack.waitForMessage(/No\. 1 rejected by person u02: the run is longer/);
		expect(rejected.threadTs).toBe(answer.ts);
		expect(slack.violations).toEqual([]);
	});

	test('an assumption is changed from the menu: a form with that one input, and a new answer below', async () => {
		const { slack, entries } = await slackShop();
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		await slack.press(answer, 'lugbook:assume:0', { value: '1 insulationC' });
		const form = await slack.waitForModal();
		const blocks = form.view.blocks as { type: string; block_id: string }[];
		const inputs = blocks.filter(({ type }) => type === 'input').map(({ block_id }) => block_id);
		expect(inputs).toEqual(['insulationC']);
		await slack.submitModal(form, { insulationC: '75 °C' });
		const changed = await slack.waitForMessage((_, { threadTs }) => threadTs === answer.ts);
		expect(readable(changed)).toMatch(/40 A/);
		expect(readable(changed)).not.toMatch(/Assumed[^\n]*insulation/i);
		const [newest] = await entries();
		expect(newest?.number).toBe(2);
		expect(slack.violations).toEqual([]);
	});

	test('saved to a build by its name', async () => {
		const { slack, chat, shop } = await slackShop();
		await slack.command('/ask', QUESTION);
		await slack.press(await slack.waitForMessage(/AWG/), 'Save to a build');
		await slack.submitModal(await slack.waitForModal(), { words: 'heron' });
		await slack.waitForMessage(/heron/);
		expect(await chat.log.entry(shop, 2)).toMatchObject({ build: 'heron', topic: 'wire' });
		expect(slack.violations).toEqual([]);
	});

	test('what one person alone sees is shown to the channel at a press', async () => {
		const { slack, entries } = await slackShop();
		await slack.command('/ask', 'qwertz', { user: 'U02' });
		const own = await slack.waitForMessage(/could not|Ask me/i);
		expect(own.visibleTo).toBe('U02');
		await slack.press(own, 'Show to the channel', { user: 'U02' });
		await expect.poll(() => slack.botMessages('C01', 'U01').length).toBe(1);
		const [shared] = slack.botMessages('C01', 'U01');
		expect(shared?.visibleTo).toBeUndefined();
		expect(shared?.threadTs).toBeUndefined();
		expect(await entries()).toHaveLength(1);
		expect(slack.violations).toEqual([]);
	});

	test.each(['1 OR 1=1', '99'])('a forged button to sign %j is refused, which is kept', async (value) => {
		const { slack, chat, shop } = await slackShop({ leads: ['U02'] });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		const [button] = interactiveElements(answer.blocks);
		Object.assign(button?.element ?? {}, { action_id: 'lugbook:sign:0', value });
		await slack.press(answer, 'lugbook:sign:0', { user: 'U02' });
		expect((await slack.waitForMessage(/no number|no answer/)).visibleTo).toBe('U02');
		const { entries } = await chat.log.find(shop, { limit: 10 });
		expect(entries.map(({ kind }) => kind)).toEqual(['refused-action', 'exchange']);
	});

	test.each([
		['assume', '1 constructor'],
		['assume', '99 currentA'],
		['change', '-1'],
		['save', '0x1'],
		['format', '1'],
	])('a forged button "%s" with the value %j changes nothing', async (action, value) => {
		const { slack, chat, shop } = await slackShop({ leads: ['U02'] });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		const [button] = interactiveElements(answer.blocks);
		Object.assign(button?.element ?? {}, { action_id: `lugbook:${action}:0`, value });
		expect((await slack.press(answer, `lugbook:${action}:0`, { user: 'U02' })).ackStatus).toBe(200);
		const told = await slack.waitForMessage((_, { visibleTo }) => visibleTo === 'U02');
		expect(readable(told)).toMatch(/leads nowhere|failed on my side/);
		const { entries } = await chat.log.find(shop, { limit: 10 });
		expect(entries.map(({ kind }) => kind)).toEqual(['exchange']);
		expect(slack.views.current('U02')).toBeUndefined();
	});
});

describe('an earlier answer', () => {
	const marks = [
		{ entry: 1, channel: 'C01', thread: null, text: 'No longer valid: replaced by No. 2', stands: false },
	];

	test('that no longer stands is changed in its place: struck through, said in words, without buttons', async () => {
		const { slack } = await slackShop({
			handle: adding((_, text) => (text.startsWith('60A') ? { marks } : {})),
		});
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		const before = slack.botMessages().length;
		await slack.command('/ask', '60A 12V 15 ft');
		await expect.poll(() => answer.edits.length).toBe(1);
		expect(slack.botMessages()).toHaveLength(before + 1);
		expect(readable(answer)).toMatch(/no longer valid[\s\S]*replaced by No\. 2/i);
		expect(answer.text).toMatch(/no longer valid/i);
		expect(JSON.stringify(answer.blocks)).toMatch(/"text":"4 AWG copper[^}]*"style":\{[^}]*"strike":true/);
		expect(JSON.stringify(answer.blocks)).not.toMatch(/"button"|mrkdwn/);
		expect(slack.violations).toEqual([]);
	});

	test('whose message is gone does not hold up the new one', async () => {
		const { slack } = await slackShop({ handle: adding(() => ({ marks })) });
		await slack.command('/ask', QUESTION);
		(await slack.waitForMessage(/AWG/)).deleted = true;
		await slack.command('/ask', '60A 12V 15 ft');
		await slack.waitForMessage(/60 A/);
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

	test('go along with the answer, into its thread, whole and with a text for those who do not see them', async () => {
		const { slack } = await slackShop({ handle: adding(() => ({ files: [picture, table] })) });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/);
		const sent = () => slack.botMessages().flatMap(({ files }) => files);
		await expect.poll(() => sent().length).toBe(2);
		expect(
			sent().map(({ filename, altText, bytes }) => [filename, altText, bytes?.toString('latin1')]),
		).toEqual([
			['drop.png', 'Voltage drop against length', '\x89PNG'],
			['heron.csv', 'The log of heron', 'part 0\npart 1\npart 2\n'],
		]);
		for (const message of slack.botMessages().slice(1)) expect(message.threadTs).toBe(answer.ts);
		expect(slack.violations).toEqual([]);
	});

	test('that cannot be sent are told to the asker, with what is missing; the answer stands', async () => {
		const { slack } = await slackShop({
			scopes: ['commands', 'chat:write', 'app_mentions:read', 'im:history', 'users:read'],
			handle: adding(() => ({ files: [picture] })),
		});
		await slack.command('/ask', QUESTION, { user: 'U02' });
		await slack.waitForMessage(/AWG/);
		const told = await slack.waitForMessage(/files:write/);
		expect([told.visibleTo, readable(told)]).toEqual(['U02', expect.stringContaining('drop.png')]);
	});

	test('of an answer for one person are not shown to the channel', async () => {
		const { slack } = await slackShop({
			handle: adding(() => ({ files: [picture], audience: 'asker' as const })),
		});
		await slack.command('/ask', QUESTION, { user: 'U02' });
		await slack.waitForMessage(/for you alone/);
		expect(slack.botMessages('C01', 'U01')).toEqual([]);
		await slack.dm(QUESTION, { user: 'U02' });
		await expect.poll(() => slack.botMessages('DU02', 'U02').flatMap(({ files }) => files).length).toBe(1);
	});
});

test('a long answer is one message in the channel; the small print goes below it, every danger stays', async () => {
	const line = (kind: 'danger' | 'note', fold: boolean) =>
		Array.from({ length: 12 }, (_, at) => ({
			kind,
			text: `${kind} ${at} ${'in so many words '.repeat(12)}`,
			fold,
		}));
	const { slack } = await slackShop({
		handle: adding(({ parts }) => ({ parts: [...parts, ...line('note', true), ...line('danger', true)] })),
	});
	await slack.command('/ask', QUESTION);
	const answer = await slack.waitForMessage(/AWG/);
	await slack.waitForMessage((text) => /note 11/.test(text));
	const inChannel = slack.botMessages().filter(({ threadTs }) => threadTs === undefined);
	expect(inChannel).toHaveLength(1);
	for (let at = 0; at < 12; at += 1) {
		expect(readable(answer)).toMatch(new RegExp(`danger ${at} in so many words`, 'i'));
		expect(readable(answer)).not.toMatch(new RegExp(`note ${at} in so many words`));
	}
	expect(slack.violations).toEqual([]);
});
