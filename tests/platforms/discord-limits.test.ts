/**
 * Each published limit of the Discord platform, at the limit (taken) and one beyond it (refused with the
 * platform's code and kept as a violation). Sources: discord-api-docs `resources/message.mdx`,
 * `components/reference.mdx`, `interactions/application-commands.mdx`, `interactions/receiving-and-responding.mdx`.
 */

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type DiscordStandIn, Flag, startDiscordStandIn } from './discord.js';

let discord: DiscordStandIn;
beforeAll(async () => {
	discord = await startDiscordStandIn();
});
afterAll(() => discord.close());

interface Refusal {
	readonly code?: number;
	readonly id?: string;
	readonly errors?: object;
}

async function call(
	method: string,
	path: string,
	body: unknown,
): Promise<{ status: number; answer: Refusal; violations: string[] }> {
	discord.violations.length = 0;
	const isForm = body instanceof FormData;
	const response = await fetch(`${discord.apiUrl}/v10${path}`, {
		method,
		headers: {
			authorization: `Bot ${discord.botToken}`,
			...(isForm ? {} : { 'content-type': 'application/json' }),
		},
		body: isForm ? body : JSON.stringify(body),
	});
	const text = await response.text();
	const answer = (text === '' ? {} : JSON.parse(text)) as Refusal;
	return {
		status: response.status,
		answer,
		violations: discord.violations.map((one) => `${one.where}: ${one.rule}`),
	};
}

const post = (body: object) => call('POST', `/channels/${discord.channelId}/messages`, body);
const of = (length: number) => 'x'.repeat(length);
const many = <T>(count: number, make: (at: number) => T): T[] =>
	Array.from({ length: count }, (_, at) => make(at));
const row = (...components: object[]) => ({ type: 1, components });
const button = (at: number | string = 0, more: object = {}) => ({
	type: 2,
	style: 2,
	custom_id: `b${at}`,
	label: 'Go',
	...more,
});
const option = (at: number, more: object = {}) => ({ label: `o${at}`, value: `v${at}`, ...more });
const menu = (more: object = {}) => ({ type: 3, custom_id: 'm', options: [option(1)], ...more });
const text = (content = 't') => ({ type: 10, content });
const link = (url: string) => ({ type: 2, style: 5, label: 'Open', url });
const v2 = (components: object[]) => ({ flags: Flag.componentsV2, components });
const field = (more: object = {}) => ({ name: 'n', value: 'v', ...more });
const embeds = (...list: object[]) => ({ embeds: list });

const messageLimits: [name: string, max: number, make: (n: number) => object][] = [
	['content', 2000, (n) => ({ content: of(n) })],
	['embeds', 10, (n) => embeds(...many(n, () => ({ title: 't' })))],
	['embed title', 256, (n) => embeds({ title: of(n) })],
	['embed description', 4096, (n) => embeds({ description: of(n) })],
	['embed fields', 25, (n) => embeds({ fields: many(n, () => field()) })],
	['embed field name', 256, (n) => embeds({ fields: [field({ name: of(n) })] })],
	['embed field value', 1024, (n) => embeds({ fields: [field({ value: of(n) })] })],
	['embed footer', 2048, (n) => embeds({ footer: { text: of(n) } })],
	['embed author', 256, (n) => embeds({ author: { name: of(n) } })],
	['embed color', 0xffffff, (n) => embeds({ title: 't', color: n })],
	[
		'characters of all embeds together',
		6000,
		(n) => embeds({ description: of(4096), footer: { text: of(1000) } }, { description: of(n - 5096) }),
	],
	['rows', 5, (n) => ({ components: many(n, (at) => row(button(at))) })],
	['buttons of a row', 5, (n) => ({ components: [row(...many(n, button))] })],
	['button label', 80, (n) => ({ components: [row(button(0, { label: of(n) }))] })],
	['custom_id', 100, (n) => ({ components: [row(button(0, { custom_id: of(n) }))] })],
	['link url', 512, (n) => ({ components: [row(link(of(n)))] })],
	['menu options', 25, (n) => ({ components: [row(menu({ options: many(n, option) }))] })],
	['menu placeholder', 150, (n) => ({ components: [row(menu({ placeholder: of(n) }))] })],
	['menu max_values', 25, (n) => ({ components: [row(menu({ max_values: n }))] })],
	[
		'menu option label',
		100,
		(n) => ({ components: [row(menu({ options: [option(1, { label: of(n) })] }))] }),
	],
	[
		'menu option value',
		100,
		(n) => ({ components: [row(menu({ options: [option(1, { value: of(n) })] }))] }),
	],
	[
		'menu option description',
		100,
		(n) => ({ components: [row(menu({ options: [option(1, { description: of(n) })] }))] }),
	],
	['components in all', 40, (n) => v2([{ type: 17, components: many(n - 1, () => text()) }])],
	['characters of all texts together', 4000, (n) => v2([text(of(3000)), text(of(n - 3000))])],
	[
		'gallery items',
		10,
		(n) => v2([{ type: 12, items: many(n, () => ({ media: { url: 'attachment://a.png' } })) }]),
	],
	['section texts', 3, (n) => v2([{ type: 9, components: many(n, () => text()), accessory: button() }])],
	['nonce', 25, (n) => ({ content: 'x', nonce: of(n) })],
	['users in allowed_mentions', 100, (n) => ({ content: 'x', allowed_mentions: { users: many(n, String) } })],
];

describe('messages', () => {
	test.each(messageLimits)('%s: %i taken, one more is 50035', async (_, max, make) => {
		const taken = await post(make(max));
		expect({ status: taken.status, violations: taken.violations }).toEqual({ status: 200, violations: [] });
		const refused = await post(make(max + 1));
		expect(refused).toMatchObject({ status: 400, answer: { code: 50035, errors: expect.any(Object) } });
		expect(refused.violations).not.toEqual([]);
	});

	const broken: [name: string, body: object][] = [
		['an empty field name', embeds({ fields: [field({ name: '' })] })],
		['an empty field value', embeds({ fields: [field({ value: '' })] })],
		['the same custom_id twice', { components: [row(button(1), button(1))] }],
		['a button without custom_id', { components: [row(button(0, { custom_id: undefined }))] }],
		[
			'a button with both custom_id and url',
			{ components: [row(button(0, { url: 'https://example.com' }))] },
		],
		['a button without label', { components: [row(button(0, { label: undefined }))] }],
		['a link without url', { components: [row({ type: 2, style: 5, label: 'x' })] }],
		['a menu beside a button', { components: [row(menu(), button())] }],
		['a menu without options', { components: [row(menu({ options: [] }))] }],
		['the same option value twice', { components: [row(menu({ options: [option(1), option(1)] }))] }],
		['an empty row', { components: [row()] }],
		['a button outside a row', { components: [button()] }],
		['a text display without the v2 flag', { components: [text()] }],
		['content with the v2 flag', { ...v2([text()]), content: 'x' }],
		['embeds with the v2 flag', { ...v2([text()]), ...embeds({ title: 't' }) }],
		['a container in a container', v2([{ type: 17, components: [{ type: 17, components: [text()] }] }])],
		['users both parsed and listed', { content: 'x', allowed_mentions: { parse: ['users'], users: ['1'] } }],
	];
	test.each(broken)('%s is 50035', async (_, body) => {
		const refused = await post(body);
		expect(refused).toMatchObject({ status: 400, answer: { code: 50035 } });
		expect(refused.violations).not.toEqual([]);
	});

	test('nothing to see is 50006', async () => {
		expect(await post({ content: ' ' })).toMatchObject({ status: 400, answer: { code: 50006 } });
	});

	test('an error names the field, as the platform does', async () => {
		const { answer } = await post(embeds({ title: 't' }, { fields: [field({ value: of(1025) })] }));
		expect(answer.errors).toMatchObject({
			embeds: { 1: { fields: { 0: { value: { _errors: [expect.any(Object)] } } } } },
		});
	});
});

describe('mentions', () => {
	const named = ['@everyone', '@here', '<@100000000000000012>', '<@!100000000000000012>', '<@&7>'];

	test.each(named)('%s without allowed_mentions would notify: a violation', async (mention) => {
		const sent = await post({ content: `look ${mention}` });
		expect(sent.status).toBe(200);
		expect(sent.violations).toEqual([expect.stringContaining('must not notify anyone')]);
		expect((await post({ ...v2([text(mention)]) })).violations).toHaveLength(1);
	});

	test.each(named)('%s with an empty parse notifies nobody', async (mention) => {
		const sent = await post({ content: `look ${mention}`, allowed_mentions: { parse: [] } });
		expect([sent.status, sent.violations]).toEqual([200, []]);
		const message = discord.botMessages().at(-1);
		expect(message?.pings).toEqual({ everyone: false, users: [], roles: [] });
	});

	test('an edit without allowed_mentions is read by the defaults again', async () => {
		const sent = await post({ content: 'look @everyone', allowed_mentions: { parse: [] } });
		const path = `/channels/${discord.channelId}/messages/${sent.answer.id}`;
		expect((await call('PATCH', path, { content: 'see @everyone' })).violations).toHaveLength(1);
		const careful = { content: 'see @everyone', allowed_mentions: { parse: [] } };
		expect((await call('PATCH', path, careful)).violations).toEqual([]);
	});

	test('an answer to an interaction notifies users only by default, and everyone stays unguarded: a violation too', async () => {
		await call('PUT', `/applications/${discord.applicationId}/commands`, [{ name: 'ask', description: 'd' }]);
		const asked = discord.command('ask');
		await expect.poll(() => discord.latestInteraction()).toBeDefined();
		const { token, id } = discord.latestInteraction() as { token: string; id: string };
		const answer = await call('POST', `/interactions/${id}/${token}/callback`, {
			type: 4,
			data: { content: '@everyone <@100000000000000012>' },
		});
		expect(answer.violations).toEqual([expect.stringContaining('would notify 100000000000000012')]);
		await asked;
		const edit = await call('PATCH', `/webhooks/${discord.applicationId}/${token}/messages/@original`, {
			content: '@everyone',
		});
		expect(edit.violations).toEqual([
			expect.stringContaining('must be given with a text that names someone'),
		]);
	});
});

describe('files', () => {
	const form = (payload: object, ...files: [name: string, bytes: number][]) => {
		const body = new FormData();
		files.forEach(([name, bytes], at) => {
			body.append(`files[${at}]`, new Blob([new Uint8Array(bytes)]), name);
		});
		body.append('payload_json', JSON.stringify(payload));
		return body;
	};

	test('10 files taken, 11 refused', async () => {
		const files = (n: number) => many(n, (at): [string, number] => [`${at}.pdf`, 1]);
		expect((await post(form({}, ...files(10)))).status).toBe(200);
		expect((await post(form({}, ...files(11)))).answer.code).toBe(50035);
	});

	test('10 MiB taken, one byte more is 40005', async () => {
		const size = 10 * 1024 * 1024;
		expect((await post(form({}, ['a.pdf', size]))).status).toBe(200);
		expect(await post(form({}, ['a.pdf', size + 1]))).toMatchObject({ status: 413, answer: { code: 40005 } });
	});

	test('description: 1024 taken, one more refused; a picture without one is a violation', async () => {
		const described = (length: number) => ({ attachments: [{ id: 0, description: of(length) }] });
		expect((await post(form(described(1024), ['a.png', 1]))).violations).toEqual([]);
		expect((await post(form(described(1025), ['a.png', 1]))).answer.code).toBe(50035);
		expect((await post(form({}, ['a.png', 1]))).violations).toEqual([
			expect.stringContaining('needs a description'),
		]);
	});
});

describe('commands', () => {
	const put = (commands: object[]) =>
		call('PUT', `/applications/${discord.applicationId}/guilds/${discord.guildId}/commands`, commands);
	const command = (more: object = {}) => ({ name: 'size', description: 'd', ...more });
	const opt = (at: number | string, more: object = {}) => ({
		type: 3,
		name: `o${at}`,
		description: 'd',
		...more,
	});
	const sub = (at: number | string, more: object = {}) => ({
		type: 1,
		name: `s${at}`,
		description: 'd',
		...more,
	});
	const group = (at: number | string, more: object = {}) => ({
		type: 2,
		name: `g${at}`,
		description: 'd',
		...more,
	});
	const choice = (at: number, more: object = {}) => ({ name: `c${at}`, value: `v${at}`, ...more });

	const limits: [name: string, max: number, make: (n: number) => object[]][] = [
		['name', 32, (n) => [command({ name: of(n) })]],
		['description', 100, (n) => [command({ description: of(n) })]],
		['commands', 100, (n) => many(n, (at) => command({ name: `c${at}` }))],
		['menu commands', 15, (n) => many(n, (at) => ({ type: 3, name: `Menu ${at}` }))],
		['options', 25, (n) => [command({ options: many(n, opt) })]],
		['subcommands', 25, (n) => [command({ options: many(n, sub) })]],
		['groups', 25, (n) => [command({ options: many(n, group) })]],
		['subcommands of a group', 25, (n) => [command({ options: [group(1, { options: many(n, sub) })] })]],
		['options of a subcommand', 25, (n) => [command({ options: [sub(1, { options: many(n, opt) })] })]],
		['option name', 32, (n) => [command({ options: [opt(1, { name: of(n) })] })]],
		['option description', 100, (n) => [command({ options: [opt(1, { description: of(n) })] })]],
		['choices', 25, (n) => [command({ options: [opt(1, { choices: many(n, choice) })] })]],
		['choice name', 100, (n) => [command({ options: [opt(1, { choices: [choice(1, { name: of(n) })] })] })]],
		[
			'choice value',
			100,
			(n) => [command({ options: [opt(1, { choices: [choice(1, { value: of(n) })] })] })],
		],
		['max_length', 6000, (n) => [command({ options: [opt(1, { max_length: n })] })]],
		['min_length', 6000, (n) => [command({ options: [opt(1, { min_length: n })] })]],
		[
			// 25 options with names of 32 and descriptions of 100: 3300; with the choices and the command itself 8000.
			'characters in sum',
			8000,
			(n) => {
				const options = many(25, (at) => opt(at, { name: `${at}`.padEnd(32, 'n'), description: of(100) }));
				const choices = many(25, (at) =>
					choice(at, { name: `${at}`.padEnd(100, 'n'), value: `${at}`.padEnd(84, 'v') }),
				);
				const rest = n - 25 * 132 - 25 * 184 - 'size'.length;
				return [
					command({ description: of(rest), options: [{ ...options[0], choices }, ...options.slice(1)] }),
				];
			},
		],
	];
	test.each(limits)('%s: %i taken, one more is 50035', async (_, max, make) => {
		const taken = await put(make(max));
		expect({ status: taken.status, violations: taken.violations }).toEqual({ status: 200, violations: [] });
		const refused = await put(make(max + 1));
		expect(refused).toMatchObject({ status: 400, answer: { code: 50035 } });
		expect(refused.violations).not.toEqual([]);
	});

	test.each([
		['a capital letter in a name', [command({ name: 'Size' })]],
		['a blank in a name', [command({ name: 'si ze' })]],
		['an empty name', [command({ name: '' })]],
		['no description', [command({ description: undefined })]],
		['an option without description', [command({ options: [opt(1, { description: '' })] })]],
		['a required option after an optional one', [command({ options: [opt(1), opt(2, { required: true })] })]],
		[
			'the same in a subcommand',
			[command({ options: [sub(1, { options: [opt(1), opt(2, { required: true })] })] })],
		],
		['the same name twice', [command(), command()]],
		['the same option twice', [command({ options: [opt(1), opt(1)] })]],
		['subcommands beside options', [command({ options: [sub(1), opt(1)] })]],
		['an option straight in a group', [command({ options: [group(1, { options: [opt(1)] })] })]],
		['a group in a group', [command({ options: [group(1, { options: [group(2)] })] })]],
		['a subcommand in a subcommand', [command({ options: [sub(1, { options: [sub(2)] })] })]],
		[
			'choices beside autocomplete',
			[command({ options: [opt(1, { choices: [choice(1)], autocomplete: true })] })],
		],
		['autocomplete of a yes/no option', [command({ options: [opt(1, { type: 5, autocomplete: true })] })]],
		[
			'a text choice of a number option',
			[command({ options: [opt(1, { type: 10, choices: [choice(1)] })] })],
		],
		['min above max', [command({ options: [opt(1, { type: 10, min_value: 2, max_value: 1 })] })]],
		['an option type that does not exist', [command({ options: [opt(1, { type: 12 })] })]],
		['a description of a menu command', [{ type: 2, name: 'Menu', description: 'd' }]],
	])('%s is 50035', async (_, commands) => {
		expect(await put(commands)).toMatchObject({ status: 400, answer: { code: 50035 } });
	});

	test('letters beyond ASCII are taken, and a localization counts when it is the longer one', async () => {
		expect((await put([command({ name: 'größe' })])).status).toBe(200);
		const localized = (length: number) =>
			command({
				description: 'd',
				options: many(25, (at) => opt(at, { description_localizations: { de: of(length) } })),
			});
		expect((await put([localized(300)])).status).toBe(200);
		expect((await put([localized(330)])).answer.code).toBe(50035);
	});
});

describe('forms and choices', () => {
	const input = (more: object = {}) => ({ type: 4, custom_id: 'i', style: 1, label: 'Length', ...more });
	const labelled = (more: object = {}, inner: object = {}) => ({
		type: 18,
		label: 'Length',
		component: { type: 4, custom_id: 'i', style: 1, ...inner },
		...more,
	});
	const modal = (more: object = {}) => ({
		title: 'Size',
		custom_id: 'm',
		components: [row(input())],
		...more,
	});

	/** Answers a fresh interaction and gives the platform's verdict. */
	async function respond(data: object, type: number, from: 'command' | 'autocomplete' = 'command') {
		const option = { type: 3, name: 'text', description: 'd', autocomplete: true };
		await call('PUT', `/applications/${discord.applicationId}/guilds/${discord.guildId}/commands`, [
			{ name: 'ask', description: 'd', options: [option] },
		]);
		const before = discord.latestInteraction();
		const asked =
			from === 'command'
				? discord.command('ask')
				: discord.autocomplete('ask', { text: 'x' }, { focused: 'text' });
		await expect.poll(() => discord.latestInteraction()).not.toBe(before);
		const { id, token } = discord.latestInteraction() as { id: string; token: string };
		const verdict = await call('POST', `/interactions/${id}/${token}/callback`, { type, data });
		// So that the test does not wait out the three seconds of a refused answer.
		const close =
			from === 'command' ? { type: 4, data: { content: 'x' } } : { type: 8, data: { choices: [] } };
		const { violations } = verdict;
		await call('POST', `/interactions/${id}/${token}/callback`, close);
		await asked;
		return { ...verdict, violations };
	}

	const limits: [name: string, max: number, make: (n: number) => object][] = [
		['title', 45, (n) => modal({ title: of(n) })],
		['custom_id', 100, (n) => modal({ custom_id: of(n) })],
		['components', 5, (n) => modal({ components: many(n, (at) => row(input({ custom_id: `i${at}` }))) })],
		['input label', 45, (n) => modal({ components: [row(input({ label: of(n) }))] })],
		['input value', 4000, (n) => modal({ components: [row(input({ value: of(n) }))] })],
		['input placeholder', 100, (n) => modal({ components: [row(input({ placeholder: of(n) }))] })],
		['input max_length', 4000, (n) => modal({ components: [row(input({ max_length: n }))] })],
		['label', 45, (n) => modal({ components: [labelled({ label: of(n) })] })],
		['label description', 100, (n) => modal({ components: [labelled({ description: of(n) })] })],
		['labelled input value', 4000, (n) => modal({ components: [labelled({}, { value: of(n) })] })],
	];
	test.each(limits)('form %s: %i taken, one more is 50035', async (_, max, make) => {
		expect(await respond(make(max), 9)).toMatchObject({ status: 204, violations: [] });
		expect(await respond(make(max + 1), 9)).toMatchObject({ status: 400, answer: { code: 50035 } });
	});

	test.each([
		['no components', modal({ components: [] })],
		['two inputs in a row', modal({ components: [row(input(), input({ custom_id: 'j' }))] })],
		['a button', modal({ components: [row(button())] })],
		['the same custom_id twice', modal({ components: [row(input()), row(input())] })],
		['no title', modal({ title: undefined })],
	])('a form with %s is 50035', async (_, data) => {
		expect(await respond(data, 9)).toMatchObject({ status: 400, answer: { code: 50035 } });
	});

	const choice = (at: number, more: object = {}) => ({ name: `c${at}`, value: `v${at}`, ...more });
	test.each([
		['choices', 25, (n: number) => ({ choices: many(n, choice) })],
		['choice name', 100, (n: number) => ({ choices: [choice(1, { name: of(n) })] })],
		['choice value', 100, (n: number) => ({ choices: [choice(1, { value: of(n) })] })],
	] as const)('autocomplete %s: %i taken, one more is 50035', async (_, max, make) => {
		expect(await respond(make(max), 8, 'autocomplete')).toMatchObject({ status: 204 });
		expect(await respond(make(max + 1), 8, 'autocomplete')).toMatchObject({
			status: 400,
			answer: { code: 50035 },
		});
	});

	test('a kind of answer that does not fit the interaction is 50035', async () => {
		expect(await respond({ content: 'x' }, 7)).toMatchObject({ status: 400, answer: { code: 50035 } });
		expect(await respond({ choices: [] }, 8)).toMatchObject({ status: 400, answer: { code: 50035 } });
		expect(await respond({ content: 'x' }, 4, 'autocomplete')).toMatchObject({
			status: 400,
			answer: { code: 50035 },
		});
	});
});

describe('threads', () => {
	const create = (body: object) =>
		call('POST', `/channels/${discord.channelId}/threads`, { type: 11, ...body });
	test('name: 100 taken, one more refused; only the four archive times', async () => {
		expect((await create({ name: of(100) })).status).toBe(201);
		expect((await create({ name: of(101) })).answer.code).toBe(50035);
		expect((await create({ name: '' })).answer.code).toBe(50035);
		expect((await create({ name: 'x', auto_archive_duration: 10_080 })).status).toBe(201);
		expect((await create({ name: 'x', auto_archive_duration: 90 })).answer.code).toBe(50035);
	});
});
