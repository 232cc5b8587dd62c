/**
 * The lead's daily digest: what of the whole shop is unsigned, once a day in the channel where it was switched on. Off
 * unless a lead says so. The conversation has no timer: a bot asks now and then which digests are due, and says
 * "/log digest now" there.
 */

import type { Log } from '@lugbook/log';
import { z } from 'zod';
import type { Reply } from '../message.js';
import { listed } from '../reply.js';
import type { Turn } from '../turn.js';
import type { Verb } from '../verb.js';
import { refuse } from './about.js';
import { dayText } from './dates.js';
import { rightsOf } from './leads.js';
import { olderLines, openAnswers, openLines } from './open.js';

const KEY = 'daily digest';
const GIVEN = 'daily digest was given on';
const USUAL_TIME = '07:00';
const LINES_MAX = 20;

const settingSchema = z.object({ channel: z.string(), time: z.string() });

/** What of the shop is unsigned, build by build. */
async function digest(log: Log, shop: string): Promise<{ isEmpty: boolean; reply: Reply }> {
	const { open, amongNewest } = await openAnswers(log, shop, {});
	if (open.length === 0) {
		const nothing = ['Nothing is unsigned in this shop.', ...olderLines(amongNewest)];
		return { isEmpty: true, reply: listed(nothing.join('\n'), 'channel') };
	}
	const dangers = open.filter(({ grave }) => grave === 0).length;
	const asked = open.filter(({ state }) => state === 'asked of the lead').length;
	const builds = new Map<string, typeof open>();
	for (const one of open) {
		const name = one.build === null ? 'Without a build' : `Build "${one.build}"`;
		builds.set(name, [...(builds.get(name) ?? []), one]);
	}
	// The build with the gravest first: each list begins with its own gravest.
	const sorted = [...builds].sort(([, a], [, b]) => (a[0]?.grave ?? 2) - (b[0]?.grave ?? 2));
	const each = Math.max(3, Math.floor(LINES_MAX / sorted.length));
	const lines = sorted.flatMap(([name, list]) => [`${name}: ${list.length}`, ...openLines(list, each)]);
	const head = `To look at: ${open.length} unsigned, ${dangers} with a danger, ${asked} asked of the lead`;
	const list = [head, ...olderLines(amongNewest), ...lines];
	return { isEmpty: false, reply: listed(list.join('\n'), 'channel') };
}

/** A digest whose time has come. */
export interface DueDigest {
	readonly shop: string;
	readonly channel: string;
	/** the day it is for, in the machine's time zone: "2026-05-04" */
	readonly day: string;
}

/** The digests of a platform's shops that are due and were not given today. */
export async function dueDigests(log: Log, platform: string, now: Date): Promise<DueDigest[]> {
	const found: DueDigest[] = [];
	const day = dayText(now.toISOString());
	const time = `${String(now.getHours()).padStart(2, '0')}:${String(now.getMinutes()).padStart(2, '0')}`;
	for (const shop of await log.shops()) {
		if (shop !== platform && !shop.startsWith(`${platform}:`)) continue;
		const kept = await log.getSetting(shop, KEY);
		if (kept === null) continue;
		const setting = settingSchema.parse(JSON.parse(kept));
		if (time < setting.time || (await log.getSetting(shop, GIVEN)) === day) continue;
		if ((await digest(log, shop)).isEmpty) await digestGiven(log, { shop, day });
		else found.push({ shop, channel: setting.channel, day });
	}
	return found;
}

/** Remembers that a digest is on its way, so that it is given once a day. */
export async function digestGiven(log: Log, { shop, day }: Pick<DueDigest, 'shop' | 'day'>): Promise<void> {
	await log.setSetting(shop, GIVEN, day);
}

async function now(turn: Turn): Promise<Reply> {
	return (await digest(turn.log, turn.incoming.shop)).reply;
}

async function tell(turn: Turn): Promise<Reply> {
	const kept = await turn.log.getSetting(turn.incoming.shop, KEY);
	if (kept === null) return listed('The daily digest is off. A lead says "/log digest on 07:00".', 'asker');
	const { time, channel } = settingSchema.parse(JSON.parse(kept));
	const where = channel === turn.incoming.channel ? 'this channel' : 'another channel';
	return listed(`The daily digest comes at ${time} into ${where}.`, 'asker');
}

async function change(turn: Turn, on: boolean, said: string): Promise<Reply> {
	const { log, incoming } = turn;
	const { shop, channel, person } = incoming;
	if (!(await rightsOf(log, shop, person)).isLead) {
		return await refuse(turn, null, 'The daily digest is switched by a lead.');
	}
	const time = timeOf(said);
	if (time === null) return listed(`"${said}" is no time of day. Say it as 07:00 or 16:30.`, 'asker');
	const before = await log.getSetting(shop, KEY);
	await log.setSetting(shop, KEY, on ? JSON.stringify({ channel, time }) : null);
	try {
		await log.append({
			...turn.entry(null),
			kind: 'settings',
			topic: null,
			follows: null,
			state: null,
			body: { digest: on ? time : null },
		});
	} catch (error) {
		await log.setSetting(shop, KEY, before);
		throw error;
	}
	return listed(
		on
			? `From now on what is unsigned in the whole shop comes into this channel at ${time}, on days when there is something. I have to be a member of the channel.`
			: 'The daily digest is off.',
		'channel',
	);
}

/** "7", "7:30", "07:00" as "07:00"; null for what is no time of day. */
function timeOf(said: string): string | null {
	if (said === '') return USUAL_TIME;
	const match = /^([01]?\d|2[0-3])(?::([0-5]\d))?$/.exec(said);
	return match === null ? null : `${(match[1] as string).padStart(2, '0')}:${match[2] ?? '00'}`;
}

export const digestVerbs: readonly Verb[] = [
	{ usage: 'digest now', help: null, pattern: /^digest\s+now$/i, run: now },
	{ usage: 'digest', help: null, pattern: /^digest$/i, run: tell },
	{
		usage: 'digest on [07:00]|off',
		help: null,
		pattern: /^digest\s+(on|off)(?:\s+(\S{1,20}))?$/i,
		run: (turn, match) => change(turn, (match[1] as string).toLowerCase() === 'on', match[2] ?? ''),
	},
];
