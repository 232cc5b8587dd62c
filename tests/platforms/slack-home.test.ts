/** The Home tab as a person sees it: before anything was asked, and with vans at work. */

import { expect, test } from 'vitest';
import { slackShop } from './slack/shop.js';
import { readable, type SlackStandIn } from './slack.js';

async function home(slack: SlackStandIn): Promise<string> {
	await slack.openHome();
	const { blocks } = await slack.waitForHome();
	expect(slack.violations).toEqual([]);
	return readable({ text: '', blocks: blocks as Record<string, unknown>[] });
}

test('whoever comes first is told how to begin, and is sent nothing', async () => {
	const { slack } = await slackShop();
	const seen = await home(slack);
	expect(seen).toMatch(/^Welcome\nNothing has been asked here yet\./);
	expect(seen).toContain('40A 12V 15 ft');
	for (const command of ['/ask', '/size', '/build', '/log']) expect(seen).toContain(`\n${command}\n`);
	expect(slack.workspace.messages).toEqual([]);
});

test('the vans with their channels, and what is unsigned of each', async () => {
	const { slack, bot } = await slackShop({ leads: ['U02'] });
	slack.addChannel({ id: 'C02', name: 'van-two' });
	await slack.command('/ask', '40A 12V 15 ft');
	await bot.desk.settled();
	expect(await home(slack)).toMatch(/^Vans\nNo channel has named its van yet/);
	for (const [channel, build] of Object.entries({ C01: 'heron', C02: 'egret <!channel>' })) {
		await slack.command('/build', `use ${build}`, { channel });
		await bot.desk.settled();
	}
	await slack.command('/ask', '60A 12V 10 ft');
	await bot.desk.settled();
	const seen = await home(slack);
	expect(seen).not.toContain('Welcome');
	expect(seen).toMatch(/heron in/);
	expect(seen).toMatch(/1 unsigned in build "heron"/);
	const asked = await bot.desk.log.find(`slack:${slack.teamId}`, { kinds: ['exchange'], build: 'heron' });
	const number = asked.entries[0]?.number ?? 0;
	expect(seen).toContain(`No. ${number}`);
	const [{ blocks }] = [await slack.waitForHome()];
	expect(JSON.stringify(blocks)).toContain('{"type":"channel","channel_id":"C01"}');
	await slack.command('/log', `sign ${number}`, { user: 'U02' });
	await bot.desk.settled();
	expect(await home(slack)).toMatch(/Nothing is unsigned in build "heron"/);
});

test('a busy platform gets the tab after its pause; one that fails is asked again', async () => {
	const { slack } = await slackShop();
	slack.faults.order('views.publish', { kind: 'rate-limit', retryAfterS: 1 });
	slack.faults.order('views.publish', { kind: 'status', status: 503 });
	expect(await home(slack)).toMatch(/^Welcome/);
	const [busy, failed, ...others] = slack.calls('views.publish');
	expect((failed?.atMs ?? 0) - (busy?.atMs ?? 0)).toBeGreaterThanOrEqual(1000);
	expect(others).toHaveLength(1);
});

test('in the language of the channel whose van was chosen last', async () => {
	const { slack, bot } = await slackShop();
	await slack.command('/build', 'use heron');
	await bot.desk.settled();
	await slack.command('/ask', 'welches Kabel brauche ich für 40 A 12 V 5 m');
	await bot.desk.settled();
	const seen = await home(slack);
	expect(seen).toMatch(/^Fahrzeuge\n/);
	expect(seen).toMatch(/1 ohne Unterschrift: Ausbau "heron"/);
	expect(seen).toMatch(/Verkabelung: Nr\. \d+/);
	expect(seen).toContain('Frag in Worten');
	expect(seen).not.toMatch(/unsigned in build|Ask in words|\bNo\. \d/);
});
