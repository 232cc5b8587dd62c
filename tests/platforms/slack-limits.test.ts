/**
 * Each published limit of the Slack platform, at the limit (taken) and one beyond it (refused with the platform's
 * code and kept as a violation). Sources: Slack's Block Kit reference as repeated in the docstrings of
 * `@slack/types` 3.2.0; the method pages of chat.postMessage, views.open and files.getUploadURLExternal.
 */

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type SlackStandIn, startSlackStandIn } from './slack.js';

let slack: SlackStandIn;
beforeAll(async () => {
	slack = await startSlackStandIn();
});
afterAll(() => slack.close());

interface ApiAnswer {
	readonly ok: boolean;
	readonly error?: string;
}

async function call(method: string, args: object): Promise<{ answer: ApiAnswer; violations: string[] }> {
	slack.violations.length = 0;
	const response = await fetch(slack.apiUrl + method, {
		method: 'POST',
		headers: { authorization: `Bearer ${slack.botToken}`, 'content-type': 'application/json' },
		body: JSON.stringify(args),
	});
	const answer = (await response.json()) as ApiAnswer;
	return { answer, violations: slack.violations.map((one) => `${one.where}: ${one.rule}`) };
}

const post = (args: object) => call('chat.postMessage', { channel: 'C01', text: 'fallback', ...args });
const of = (length: number) => 'x'.repeat(length);
const many = <T>(count: number, make: (at: number) => T): T[] =>
	Array.from({ length: count }, (_, at) => make(at));
const plain = (text: string) => ({ type: 'plain_text', text });
const section = (text: string) => ({ type: 'section', text: { type: 'mrkdwn', text } });
const actions = (...elements: object[]) => ({ type: 'actions', elements });
const button = (more: object = {}) => ({ type: 'button', action_id: 'a', text: plain('Go'), ...more });
const option = (at: number | string, more: object = {}) => ({
	text: plain(`o${at}`),
	value: `v${at}`,
	...more,
});
const select = (more: object = {}) => ({
	type: 'static_select',
	action_id: 's',
	options: [option(1)],
	...more,
});
const confirm = (more: object) => ({
	title: plain('Sure?'),
	text: plain('Really'),
	confirm: plain('Yes'),
	deny: plain('No'),
	...more,
});
const image = (more: object = {}) => ({
	type: 'image',
	image_url: 'https://example.com/a.png',
	alt_text: 'a run',
	...more,
});

const blockLimits: [name: string, max: number, make: (n: number) => object[]][] = [
	['blocks of a message', 50, (n) => many(n, () => ({ type: 'divider' }))],
	['section text', 3000, (n) => [section(of(n))]],
	['section fields', 10, (n) => [{ type: 'section', fields: many(n, () => plain('f')) }]],
	['a section field', 2000, (n) => [{ type: 'section', fields: [plain(of(n))] }]],
	['header text', 150, (n) => [{ type: 'header', text: plain(of(n)) }]],
	['context elements', 10, (n) => [{ type: 'context', elements: many(n, () => plain('c')) }]],
	['actions elements', 25, (n) => [actions(...many(n, (at) => button({ action_id: `a${at}` })))]],
	['block_id', 255, (n) => [{ ...section('x'), block_id: of(n) }]],
	['action_id', 255, (n) => [actions(button({ action_id: of(n) }))]],
	['button text', 75, (n) => [actions(button({ text: plain(of(n)) }))]],
	['button value', 2000, (n) => [actions(button({ value: of(n) }))]],
	['button url', 3000, (n) => [actions(button({ url: of(n) }))]],
	['button accessibility_label', 75, (n) => [actions(button({ accessibility_label: of(n) }))]],
	['select options', 100, (n) => [actions(select({ options: many(n, option) }))]],
	['select placeholder', 150, (n) => [actions(select({ placeholder: plain(of(n)) }))]],
	['option text', 75, (n) => [actions(select({ options: [option(1, { text: plain(of(n)) })] }))]],
	['option value', 75, (n) => [actions(select({ options: [option(1, { value: of(n) })] }))]],
	[
		'option description',
		75,
		(n) => [actions(select({ options: [option(1, { description: plain(of(n)) })] }))],
	],
	[
		'option groups',
		100,
		(n) => [
			actions({
				type: 'static_select',
				action_id: 's',
				option_groups: many(n, () => ({ label: plain('g'), options: [option(1)] })),
			}),
		],
	],
	['overflow options', 5, (n) => [actions({ type: 'overflow', action_id: 'o', options: many(n, option) })]],
	[
		'checkbox options',
		10,
		(n) => [actions({ type: 'checkboxes', action_id: 'c', options: many(n, option) })],
	],
	[
		'radio options',
		10,
		(n) => [actions({ type: 'radio_buttons', action_id: 'r', options: many(n, option) })],
	],
	['confirm title', 100, (n) => [actions(button({ confirm: confirm({ title: plain(of(n)) }) }))]],
	['confirm text', 300, (n) => [actions(button({ confirm: confirm({ text: plain(of(n)) }) }))]],
	['confirm button', 30, (n) => [actions(button({ confirm: confirm({ deny: plain(of(n)) }) }))]],
	['image alt_text', 2000, (n) => [image({ alt_text: of(n) })]],
	['image title', 2000, (n) => [image({ title: plain(of(n)) })]],
	['image_url', 3000, (n) => [image({ image_url: of(n) })]],
	['markdown block', 12_000, (n) => [{ type: 'markdown', text: of(n) }]],
	[
		'rich text',
		3000,
		(n) => [
			{
				type: 'rich_text',
				elements: [{ type: 'rich_text_section', elements: [{ type: 'text', text: of(n) }] }],
			},
		],
	],
	['table rows', 100, (n) => [{ type: 'table', rows: many(n, () => [{ type: 'raw_text', text: 'c' }]) }]],
	['table cells', 20, (n) => [{ type: 'table', rows: [many(n, () => ({ type: 'raw_text', text: 'c' }))] }]],
];

describe('blocks', () => {
	test.each(blockLimits)('%s: %i taken, one more is invalid_blocks', async (_, max, make) => {
		const taken = await post({ blocks: make(max) });
		expect(taken).toEqual({ answer: expect.objectContaining({ ok: true }), violations: [] });
		const refused = await post({ blocks: make(max + 1) });
		expect(refused.answer).toMatchObject({ ok: false, error: 'invalid_blocks' });
		expect(refused.violations).not.toEqual([]);
	});

	const broken: [name: string, blocks: object[]][] = [
		['a section without text or fields', [{ type: 'section' }]],
		['an empty section text', [section('')]],
		['an empty header', [{ type: 'header', text: plain('') }]],
		['a header in mrkdwn', [{ type: 'header', text: { type: 'mrkdwn', text: 'x' } }]],
		['a button label in mrkdwn', [actions(button({ text: { type: 'mrkdwn', text: 'x' } }))]],
		['a button style of our own', [actions(button({ style: 'secondary' }))]],
		['an image without alt_text', [image({ alt_text: undefined })]],
		['an image with a blank alt_text', [image({ alt_text: '  ' })]],
		[
			'an image in a context without alt_text',
			[{ type: 'context', elements: [image({ alt_text: undefined })] }],
		],
		[
			'the same block_id twice',
			[
				{ ...section('x'), block_id: 'b' },
				{ ...section('y'), block_id: 'b' },
			],
		],
		['the same action_id twice in a block', [actions(button(), button())]],
		['an actions block without elements', [actions()]],
		['an input element in an actions block', [actions({ type: 'plain_text_input', action_id: 'p' })]],
		['a select without options', [actions(select({ options: [] }))]],
		['an option without value', [actions(select({ options: [{ text: plain('o') }] }))]],
		['a block type that does not exist', [{ type: 'paragraph', text: plain('x') }]],
		['a text where an object belongs', [{ type: 'section', text: 'x' }]],
	];
	test.each(broken)('%s is invalid_blocks', async (_, blocks) => {
		const refused = await post({ blocks });
		expect(refused.answer).toMatchObject({ ok: false, error: 'invalid_blocks' });
		expect(refused.violations).not.toEqual([]);
	});

	test('the same action_id in two blocks is taken', async () => {
		expect((await post({ blocks: [actions(button()), actions(button())] })).violations).toEqual([]);
	});

	test('all blocks together: 13,200 characters taken, more is msg_blocks_too_long', async () => {
		const filled = many(4, () => section(of(3000)));
		expect((await post({ blocks: [...filled, section(of(1200))] })).answer.ok).toBe(true);
		expect((await post({ blocks: [...filled, section(of(1201))] })).answer.error).toBe('msg_blocks_too_long');
	});
});

describe('messages', () => {
	test('text: 40,000 taken, one more is msg_too_long', async () => {
		expect((await post({ text: of(40_000) })).answer.ok).toBe(true);
		expect((await post({ text: of(40_001) })).answer.error).toBe('msg_too_long');
	});

	test('neither text nor blocks is no_text', async () => {
		expect((await post({ text: '  ' })).answer.error).toBe('no_text');
	});

	test('blocks without a text beside them are taken, and kept as a violation', async () => {
		const { answer, violations } = await post({ text: undefined, blocks: [section('x')] });
		expect(answer.ok).toBe(true);
		expect(violations).toEqual([expect.stringContaining('for notifications and screen readers')]);
	});

	test.each([['<!channel>'], ['<!here>'], ['<!everyone>'], ['<!channel|channel>'], ['<!subteam^S01>']])(
		'%s is kept as a violation in the text, in mrkdwn and in markdown, not in plain text',
		async (mention) => {
			expect((await post({ text: `look ${mention}` })).violations).toHaveLength(1);
			expect((await post({ blocks: [section(mention)] })).violations).toHaveLength(1);
			expect((await post({ blocks: [{ type: 'markdown', text: mention }] })).violations).toHaveLength(1);
			expect((await post({ blocks: [{ type: 'header', text: plain(mention) }] })).violations).toEqual([]);
			const escaped = mention.replace('<', '&lt;').replace('>', '&gt;');
			expect((await post({ text: escaped })).violations).toEqual([]);
		},
	);

	test.each([[{ type: 'broadcast', range: 'here' }], [{ type: 'usergroup', usergroup_id: 'S01' }]])(
		'rich text with $type is a violation',
		async (element) => {
			const blocks = [{ type: 'rich_text', elements: [{ type: 'rich_text_section', elements: [element] }] }];
			expect((await post({ blocks })).violations).toEqual([expect.stringContaining('whole channel')]);
		},
	);

	test('@channel is harmless as text, and a violation where names are made links', async () => {
		expect((await post({ text: 'ask @channel' })).violations).toEqual([]);
		expect((await post({ text: 'ask @channel', link_names: true })).violations).toHaveLength(1);
		expect((await post({ text: 'ask @channel', parse: 'full' })).violations).toHaveLength(1);
	});

	test('an update, a private notice, a response_url and an acknowledgement are judged alike', async () => {
		const { answer } = await post({ text: 'x' });
		const ts = (answer as unknown as { ts: string }).ts;
		const blocks = [section('')];
		expect((await call('chat.update', { channel: 'C01', ts, text: 'x', blocks })).answer.error).toBe(
			'invalid_blocks',
		);
		const notice = { channel: 'C01', user: 'U01', text: 'x', blocks };
		expect((await call('chat.postEphemeral', notice)).answer.error).toBe('invalid_blocks');
		slack.violations.length = 0;
		const { delivery } = await slack.command('/ask', 'x');
		const respond = await fetch(String(delivery.payload.response_url), {
			method: 'POST',
			body: JSON.stringify({ text: 'x', blocks }),
		});
		expect([respond.status, await respond.text()]).toEqual([400, 'invalid_blocks']);
		expect(slack.violations[0]).toMatchObject({
			where: 'response_url blocks[0].text.text',
			error: 'invalid_blocks',
		});
	});
});

describe('modals and Home tabs', () => {
	const input = (more: object = {}) => ({
		type: 'input',
		label: plain('Length'),
		element: { type: 'plain_text_input', action_id: 'v', ...more },
	});
	const modal = (more: object = {}) => ({
		type: 'modal',
		title: plain('Size'),
		submit: plain('Go'),
		blocks: [input()],
		...more,
	});
	const open = async (view: object) => {
		const { delivery } = await slack.command('/size', 'wire');
		return call('views.open', { trigger_id: delivery.payload.trigger_id, view });
	};

	test.each([
		['title', 24, (n: number) => modal({ title: plain(of(n)) })],
		['submit', 24, (n: number) => modal({ submit: plain(of(n)) })],
		['close', 24, (n: number) => modal({ close: plain(of(n)) })],
		['private_metadata', 3000, (n: number) => modal({ private_metadata: of(n) })],
		['callback_id', 255, (n: number) => modal({ callback_id: of(n) })],
		['blocks', 100, (n: number) => modal({ blocks: many(n, () => ({ type: 'divider' })) })],
		['initial value', 3000, (n: number) => modal({ blocks: [input({ initial_value: of(n) })] })],
		['max_length', 3000, (n: number) => modal({ blocks: [input({ max_length: n })] })],
		['label', 2000, (n: number) => modal({ blocks: [{ ...input(), label: plain(of(n)) }] })],
		['hint', 2000, (n: number) => modal({ blocks: [{ ...input(), hint: plain(of(n)) }] })],
	] as const)('%s: %i taken, one more is invalid_arguments', async (_, max, make) => {
		expect(await open(make(max))).toEqual({ answer: expect.objectContaining({ ok: true }), violations: [] });
		const refused = await open(make(max + 1));
		expect(refused.answer).toMatchObject({ ok: false, error: 'invalid_arguments' });
		expect(refused.violations).not.toEqual([]);
	});

	test.each([
		['no title', modal({ title: undefined })],
		['an input but no submit', modal({ submit: undefined })],
		['no blocks', modal({ blocks: [] })],
		['the type of another surface', modal({ type: 'home' })],
		[
			'a number input that does not say whether decimals are allowed',
			modal({ blocks: [input({ type: 'number_input' })] }),
		],
		['a button in an input block', modal({ blocks: [input({ type: 'button' })] })],
	])('%s is refused', async (_, view) => {
		expect((await open(view)).answer.error).toBe('invalid_arguments');
	});

	test('a Home tab of 100 blocks is taken, of 101 refused', async () => {
		const home = (n: number) => ({
			user_id: 'U01',
			view: { type: 'home', blocks: many(n, () => ({ type: 'divider' })) },
		});
		expect((await call('views.publish', home(100))).answer.ok).toBe(true);
		expect((await call('views.publish', home(101))).answer.error).toBe('invalid_arguments');
	});
});

describe('files', () => {
	const announce = (args: object) =>
		call('files.getUploadURLExternal', { filename: 'a.pdf', length: 3, ...args });

	test('alt_text: 1000 taken, one more refused; a picture without it is a violation', async () => {
		expect((await announce({ alt_text: of(1000) })).answer.ok).toBe(true);
		expect((await announce({ alt_text: of(1001) })).answer.error).toBe('alt_text_too_large');
		expect((await announce({ filename: 'a.png' })).violations).toHaveLength(1);
		expect((await announce({ filename: 'a.png', alt_text: 'a run' })).violations).toEqual([]);
	});

	test('the bytes must be as many as were announced, and must have come before completion', async () => {
		const { answer } = await announce({});
		const { upload_url: url, file_id: id } = answer as unknown as { upload_url: string; file_id: string };
		const complete = () => call('files.completeUploadExternal', { files: [{ id }], channel_id: 'C01' });
		expect((await complete()).answer.error).toBe('file_not_found');
		expect((await fetch(url, { method: 'POST', body: 'four' })).status).toBe(400);
		expect((await fetch(url, { method: 'POST', body: 'abc' })).status).toBe(200);
		expect((await complete()).answer.ok).toBe(true);
		expect((await complete()).answer.error).toBe('file_not_found');
	});
});
