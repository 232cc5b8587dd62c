/**
 * What a lead does about an answer is seen where the answer stands: a signature, a rejection and a replacement change
 * its message, and a replacement links to the message of the new answer. By the real clients, on both platforms.
 */

import type { Chat, Reply } from '@lugbook/chat';
import { describe, expect, test } from 'vitest';
import type { DiscordMessage } from './discord/model.js';
import { discordShop } from './discord/shop.js';
import { readable as discordText } from './discord.js';
import type { SlackMessage } from './slack/model.js';
import { slackShop } from './slack/shop.js';
import { readable as slackText } from './slack.js';

const QUESTION = '40A 12V 15 ft';
const PATIENCE = { timeout: 30_000 };

/** The conversation whose replies to such a text carry something more. */
const adding =
	(about: RegExp, more: Partial<Reply>) =>
	(chat: Chat): Chat['handle'] =>
	async (incoming) => {
		const reply = await chat.handle(incoming);
		return about.test(incoming.text) ? { ...reply, ...more } : reply;
	};

describe('in Slack', () => {
	const leads = ['U02'];
	const byLead = { user: 'U02' };
	const edited = (message: SlackMessage, times = 1) =>
		expect.poll(() => message.edits.length, PATIENCE).toBe(times);
	/** Every link that stands in the message, with its words. */
	const links = (message: SlackMessage) =>
		[...JSON.stringify(message.blocks).matchAll(/\{"type":"link","url":"([^"]*)","text":"([^"]*)"/g)].map(
			([, url, text]) => [text, url],
		);
	const addressOf = ({ channel, ts }: SlackMessage) =>
		`https://workshop.example/archives/${channel}/p${ts.replace('.', '')}`;
	const struck = (message: SlackMessage) =>
		[...JSON.stringify(message.blocks).matchAll(/"text":"([^"]*)","style":\{"strike":true\}/g)].map(
			([, text]) => text,
		);

	test('a signature is written into the message of the answer, which stands', async () => {
		const { slack } = await slackShop({ leads });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/, PATIENCE.timeout);
		await slack.command('/log', 'sign 1', byLead);
		await edited(answer);
		const lines = slackText(answer).split('\n');
		expect(lines[0]).toMatch(/^4 AWG copper/);
		expect(lines).toContainEqual(expect.stringMatching(/^Signed by person u02, .*: /));
		expect(struck(answer)).toEqual([]);
		expect(links(answer)).toEqual([]);
		expect(slack.violations).toEqual([]);
	});

	test('a rejection strikes the answer through, with the reason before it', async () => {
		const { slack } = await slackShop({ leads });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/, PATIENCE.timeout);
		await slack.command('/log', 'reject 1 the run is longer', byLead);
		await edited(answer);
		expect(slackText(answer)).toMatch(
			/^No longer valid: rejected by person u02 \(.* UTC\): the run is longer\n/,
		);
		expect(struck(answer)[0]).toMatch(/^4 AWG copper/);
		expect(JSON.stringify(answer.blocks)).not.toContain('button');
		expect(slack.violations).toEqual([]);
	});

	test('a replacement strikes it through and links to the message of the new answer, also in a thread', async () => {
		const { slack } = await slackShop({ leads });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/, PATIENCE.timeout);
		await slack.command('/log', 'replace 1 and at 30 ft', byLead);
		await edited(answer);
		const second = await slack.waitForMessage(/It replaces No\. 1/, PATIENCE.timeout);
		expect(slackText(answer)).toMatch(/^No longer valid: replaced by No\. 2 \(person u02, .*\)\.\n/);
		expect(links(answer)).toEqual([['No. 2', addressOf(second)]]);
		expect(struck(answer)[0]).toMatch(/^4 AWG copper/);
		await slack.mention('/log replace 2 and at 40 ft', { ...byLead, threadTs: second.ts });
		await edited(second);
		const third = await slack.waitForMessage(/It replaces No\. 2/, PATIENCE.timeout);
		expect(third.threadTs).toBe(second.ts);
		expect(links(second)).toEqual([
			[
				expect.stringMatching(/^No\. \d+$/),
				`${addressOf(third)}?thread_ts=${third.threadTs}&cid=${third.channel}`,
			],
		]);
		expect(slack.violations).toEqual([]);
	});

	test('answers worked out again link to the message that names what replaced them', async () => {
		const { slack } = await slackShop({ leads });
		await slack.command('/build', 'use heron');
		await slack.command('/build', 'describe two 100 Ah 12 V lithium batteries, fridge 45 W');
		await slack.command('/ask', 'wire for the fridge 15 ft');
		const answer = await slack.waitForMessage(/AWG/, PATIENCE.timeout);
		await slack.command('/build', 'describe the fridge is 90 W');
		await slack.command('/build', 'rerun');
		const again = await slack.waitForMessage(/^Worked out again/, PATIENCE.timeout);
		await edited(answer);
		expect(links(answer)).toEqual([[expect.stringMatching(/^No\. \d+$/), addressOf(again)]]);
	});

	test('where the place of the new answer is not known, the number stands alone', async () => {
		const { slack } = await slackShop({ leads });
		slack.addChannel({ id: 'C09', botIsMember: false });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/, PATIENCE.timeout);
		// By a response_url the platform does not tell where a message came to stand.
		await slack.command('/log', 'replace 1 and at 30 ft', { ...byLead, channel: 'C09' });
		await edited(answer);
		expect(slackText(answer)).toMatch(/^No longer valid: replaced by No\. 2 /);
		expect(links(answer)).toEqual([]);
		await slack.command('/ask', '10A 12V 5 ft');
		const other = await slack.waitForMessage(/Read: 10 A/, PATIENCE.timeout);
		slack.faults.order('chat.getPermalink', { kind: 'error', error: 'message_not_found' });
		await slack.command('/log', 'replace 3 and at 30 ft', byLead);
		await edited(other);
		expect(slackText(other)).toMatch(/^No longer valid: replaced by No\. 4 /);
		expect(links(other)).toEqual([]);
		expect(slack.faults.pending).toBe(0);
	});

	test('a private message is no place to link to from a channel', async () => {
		const { slack } = await slackShop({ leads });
		await slack.command('/ask', QUESTION);
		const answer = await slack.waitForMessage(/AWG/, PATIENCE.timeout);
		await slack.dm('/log replace 1 and at 30 ft', byLead);
		await edited(answer);
		expect(slackText(answer)).toMatch(/^No longer valid: replaced by No\. 2 /);
		expect(links(answer)).toEqual([]);
		expect(slack.calls('chat.getPermalink')).toEqual([]);
	});
});

describe('in Discord', () => {
	type Made = Awaited<ReturnType<typeof discordShop>>;
	const edited = (message: DiscordMessage, times = 1) =>
		expect.poll(() => message.edits.length, PATIENCE).toBe(times);
	const links = ({ content }: DiscordMessage) =>
		[...content.matchAll(/(?<!\\)\[([^\]]*)\]\(([^)]*)\)/g)].map(([, text, url]) => [
			text?.replaceAll('\\', ''),
			url,
		]);
	const addressOf = ({ guildId, channelId, id }: DiscordMessage) =>
		`https://discord.com/channels/${guildId}/${channelId}/${id}`;
	/** A question answered, and what the lead then says about it. */
	async function judged(
		text: string,
		more: Parameters<typeof discordShop>[0] = {},
	): Promise<[Made, DiscordMessage]> {
		const made = await discordShop({ leads: ['100000000000000012'], ...more });
		const { discord } = made;
		await discord.command('ask', { text: QUESTION });
		const answer = await discord.waitForMessage(/AWG/, PATIENCE.timeout);
		await discord.command('log', { text }, { user: discord.people.two });
		await edited(answer);
		return [made, answer];
	}

	test('a signature is written into the message of the answer, which stands', async () => {
		const [{ discord }, answer] = await judged('sign 1');
		const lines = discordText(answer).split('\n');
		expect(lines[0]).toMatch(/^\*\*4 AWG copper/);
		expect(lines).toContainEqual(expect.stringMatching(/^Signed by person\\?-two, .*: /));
		expect(answer.content).not.toContain('~~');
		expect(links(answer)).toEqual([]);
		expect(answer.components.length).toBeGreaterThan(0);
		expect(discord.violations).toEqual([]);
	});

	test('a rejection strikes the answer through, with the reason before it', async () => {
		const [{ discord }, answer] = await judged('reject 1 the run is longer');
		expect(answer.content).toMatch(
			/^\*\*No longer valid: rejected by person\\?-two \(.* UTC\): the run is longer\*\*\n~~4 AWG/,
		);
		expect(answer.components).toEqual([]);
		expect(discord.violations).toEqual([]);
	});

	test('a replacement strikes it through and links to the message of the new answer, also of a mention', async () => {
		const [{ discord }, answer] = await judged('replace 1 and at 30 ft');
		const second = await discord.waitForMessage(/It replaces No\. 1/, PATIENCE.timeout);
		expect(answer.content).toMatch(/^\*\*No longer valid: replaced by \[No\. 2\]/);
		expect(answer.content).toMatch(/\n~~4 AWG copper/);
		expect(links(answer)).toEqual([['No. 2', addressOf(second)]]);
		discord.mention('/log replace 2 and at 40 ft', { user: discord.people.two });
		await edited(second);
		const third = await discord.waitForMessage(/It replaces No\. 2/, PATIENCE.timeout);
		expect(links(second)).toEqual([['No. 3', addressOf(third)]]);
		expect(discord.violations).toEqual([]);
	});

	test('in private messages the address is the one of private messages', async () => {
		const { discord } = await discordShop();
		discord.dm(QUESTION);
		const answer = await discord.waitForMessage(/AWG/, PATIENCE.timeout);
		discord.dm('/log replace 1 and at 30 ft');
		await edited(answer);
		const second = await discord.waitForMessage(/It replaces No\. 1/, PATIENCE.timeout);
		expect(links(answer)).toEqual([
			['No. 2', `https://discord.com/channels/@me/${second.channelId}/${second.id}`],
		]);
	});

	test('where the place of the new answer is not known, the number stands alone', async () => {
		const [, answer] = await judged('replace 1 and at 30 ft', {
			handle: adding(/^replace/, { audience: 'asker' }),
		});
		expect(answer.content).toMatch(/^\*\*No longer valid: replaced by No\. 2 /);
		expect(links(answer)).toEqual([]);
	});
});

const spanish = 'qué cable necesito para 40 A a 12 V, 5 m';

describe('where the answer was given in Spanish', () => {
	test('in Slack its message stays Spanish, struck through or signed, and so do its forms', async () => {
		const { slack } = await slackShop({ leads: ['U02'] });
		await slack.command('/ask', spanish);
		const answer = await slack.waitForMessage(/Leído|caída/, PATIENCE.timeout);
		await slack.command('/log', 'sign 1 measured', { user: 'U02' });
		await expect.poll(() => answer.edits.length, PATIENCE).toBe(1);
		expect(slackText(answer)).toMatch(/Firmado por person u02, .*: revisado y aprobado: measured/);
		expect(slackText(answer)).not.toMatch(/\b(?:Signed|Read|Assumed|Caution)\b/);
		await slack.command('/size', 'wire', { user: 'U02' });
		const form = await slack.waitForModal('U02');
		expect(JSON.stringify(form.view)).toContain('Sección y protección');
		expect(JSON.stringify(form.view)).toContain('Calcular');
		expect(JSON.stringify(form.view)).not.toMatch(/Size it|Cancel"|Left empty/);
		await slack.command('/log', 'reject 1 signed too early', { user: 'U02' });
		await expect.poll(() => answer.edits.length, PATIENCE).toBe(2);
		expect(slackText(answer)).toMatch(/^Ya no vale: rechazado por person u02 \(.* UTC\): signed too early\n/);
		expect(slackText(answer)).not.toMatch(/\b(?:No longer valid|Read|Assumed|Caution)\b/);
		expect(slack.violations).toEqual([]);
	});

	test('a replacement links the number as its language writes it', async () => {
		const { slack } = await slackShop({ leads: ['U02'] });
		await slack.command('/ask', spanish);
		const answer = await slack.waitForMessage(/Leído|caída/, PATIENCE.timeout);
		await slack.command('/log', 'replace 1 7 m', { user: 'U02' });
		await expect.poll(() => answer.edits.length, PATIENCE).toBe(1);
		expect(slackText(answer)).toMatch(/^Ya no vale: sustituido por el n\.º 2 \(person u02, .*\)\.\n/);
		expect(JSON.stringify(answer.blocks)).toMatch(/"type":"link","url":"[^"]*","text":"n\.º 2"/);
		expect(slack.violations).toEqual([]);
	});

	test('in Discord too', async () => {
		const { discord } = await discordShop({ leads: ['100000000000000012'] });
		const lead = { user: discord.people.two };
		const answer = await discord.settled(await discord.command('ask', { text: spanish }));
		await discord.settled(await discord.command('log', { text: 'reject 1 too thin' }, lead));
		await expect.poll(() => discordText(answer), PATIENCE).toMatch(/^\**Ya no vale: rechazado por /);
		expect(discordText(answer)).not.toMatch(/\b(?:No longer valid|Read|Assumed|Caution)\b/);
		expect(discord.violations).toEqual([]);
	});
});
