/**
 * Two processes of the Slack bot on one database, of which one stands still for longer than its lease and then goes on,
 * as on a machine that was asleep: what the other one has answered meanwhile is not answered again.
 */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openLog } from '@lugbook/log';
import { EVENTS_PATH } from '@lugbook/slack';
import { expect, test } from 'vitest';
import { BotProcess } from './common/bot-process.js';
import { afterwards } from './common/closing.js';
import { readable, startSlackStandIn } from './slack.js';

const TIMES = { leaseMs: 1500, sweepMs: 200 };
const PATIENCE = { timeout: 60_000 };
/** how long the platform keeps a process waiting for a name, so that it is stopped before it has answered [ms] */
const NAME_AFTER_MS = 3000;

test.each([
	['a question, whose answer is kept', '40A 12V 15 ft', /AWG/],
	['a question about the log, which is not', '/log digest now', /^(?:To look at|Nothing is unsigned)/],
] as const)('%s', { timeout: 180_000 }, async (_, text, answer) => {
	const folder = mkdtempSync(join(tmpdir(), 'lugbook-still-'));
	afterwards(async () => rmSync(folder, { recursive: true }));
	const databaseUrl = `sqlite:${join(folder, 'log.sqlite')}`;
	const slack = await startSlackStandIn();
	afterwards(() => slack.close());
	const log = await openLog(databaseUrl);
	afterwards(() => log.close());
	const settings = {
		botToken: slack.botToken,
		apiUrl: slack.apiUrl,
		connection: { mode: 'http', signingSecret: slack.signingSecret },
	};
	const start = () => BotProcess.start({ platform: 'slack', databaseUrl, settings, ...TIMES });
	const deliverTo = ({ port }: BotProcess) => slack.deliverTo(`http://127.0.0.1:${port}${EVENTS_PATH}`);
	const shown = () => slack.botMessages().map(readable);
	const answers = () => shown().filter((one) => answer.test(one));
	const states = async () =>
		(await log.settingsOf('outbox of slack')).map(({ value }) => JSON.parse(value).state as string);

	const first = await start();
	deliverTo(first);
	slack.faults.order('users.info', { kind: 'slow', delayMs: NAME_AFTER_MS });
	await slack.mention(text);
	await expect.poll(states, PATIENCE).toEqual(['held']);
	first.standStill();
	expect(answers()).toEqual([]);

	const second = await start();
	await expect.poll(() => answers().length, PATIENCE).toBe(1);
	await expect.poll(states, PATIENCE).toEqual(['shown']);

	const calls = slack.calls().length;
	first.goOn();
	// It is through with what it had in hand when it answers something else, asked later by the same way.
	deliverTo(first);
	await slack.mention('10A 12V 5 ft', { user: 'U02' });
	await expect.poll(() => shown().some((one) => /Read: 10 A/.test(one)), PATIENCE).toBe(true);
	await first.stop();
	await second.stop();
	expect(slack.calls().length).toBeGreaterThan(calls);
	expect(answers().filter((one) => !/Read: 10 A/.test(one))).toHaveLength(1);
	expect(shown().filter((one) => /failed on my side|Sent again/.test(one))).toEqual([]);
	expect(shown()).toHaveLength(2);
	expect((await log.verify(`slack:${slack.teamId}`)).ok).toBe(true);
});
