import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Chat, openChat } from '../chat.js';
import { forgetPerson } from '../forget.js';
import type { Reply } from '../message.js';
import { plainText } from '../render/plain.js';
import { type Asked, Desk, type DeskOptions, type Platform, type StillOurs, type Way } from './desk.js';
import type { LoadedReply } from './files.js';

const QUESTION = '40A 12V 15 ft';
const ANSWER = /4 AWG copper/;
const SHELF = 'outbox of nowhere';

let chat: Chat;
let folder: string;
let nowMs: number;
let desks: Desk[];
/** what stands in the channel, and what was said to one person */
let channel: string[];
let said: string[];
let marked: { message: string; text: string; headline: string }[];
/** while true nothing can be shown */
let isDown: boolean;
let count: number;

beforeEach(async () => {
	folder = mkdtempSync(join(tmpdir(), 'lugbook-desk-'));
	chat = await openChat({ databaseUrl: `sqlite:${join(folder, 'log.sqlite')}`, region: 'us' });
	nowMs = Date.UTC(2026, 4, 4);
	desks = [];
	channel = [];
	said = [];
	marked = [];
	isDown = false;
	count = 0;
});
afterEach(async () => {
	for (const desk of desks) await desk.close(1000);
	await chat.close();
	rmSync(folder, { recursive: true });
});

/** What a desk needs of the conversation beside the handling of messages. */
const conversation = () => ({
	log: chat.log,
	shown: chat.shown.bind(chat),
	fieldErrors: chat.fieldErrors.bind(chat),
	prepare: chat.prepare.bind(chat),
});

/** A place that remembers what was shown by which delivery, as the platforms let the bots look. */
class Place implements Way {
	readonly room = { fileBytes: 1000, allBytes: 1500, files: 2 };

	constructor(private readonly delivery: string) {}

	async progress(text: string): Promise<unknown> {
		said.push(text);
		return null;
	}

	async show(reply: Reply, mayBeShown: boolean, _?: StillOurs) {
		if (isDown) throw new Error('nobody listens');
		const known = channel.findIndex((text) => text.startsWith(`${this.delivery}: `));
		if (mayBeShown && known >= 0) return { channel: 'c1', message: `m${known}` };
		const target = reply.audience === 'channel' ? channel : said;
		target.push(`${this.delivery}: ${plainText(reply, { folded: true })}`);
		return { channel: 'c1', message: `m${target.length - 1}` };
	}

	async tell(text: string) {
		said.push(text);
	}
}

const platform: Platform = {
	name: 'nowhere',
	person: async ({ user }) => ({ id: user.id, name: user.name ?? user.id, lead: false }),
	wayBack: async ({ delivery }, place) => (place === 'gone' ? null : new Place(delivery)),
	placeIn: () => 'there',
	mark: async ({ message }, reply, { text }) => {
		marked.push({ message, text, headline: reply.answer.headline });
	},
};

function openDesk(more: Partial<DeskOptions> = {}): Desk {
	const log = { info() {}, warn() {}, error() {} };
	const desk = new Desk({ chat, platform, log, sweepMs: 0, leaseMs: 10_000, nowMs: () => nowMs, ...more });
	desks.push(desk);
	return desk;
}

function asked(text: string, more: Partial<Asked> = {}): Asked {
	count += 1;
	return {
		shop: 'nowhere:T1',
		channel: 'c1',
		thread: null,
		delivery: `d${count}`,
		command: 'ask',
		text,
		user: { id: 'u1', name: 'Robin' },
		...more,
	};
}

async function ask(desk: Desk, text: string, more: Partial<Asked> = {}): Promise<Asked> {
	const one = asked(text, more);
	await desk.receive(one, 'there', new Place(one.delivery)).done;
	return one;
}

/** A reply with these files, which say so when they are read. */
function withFiles(reply: Reply, sizes: readonly number[], read: (name: string) => void = () => {}): Reply {
	const files = sizes.map((bytes, at) => {
		const name = `file-${at}.txt`;
		async function* chunks() {
			read(name);
			for (let left = bytes; left > 0; left -= 100) yield new Uint8Array(Math.min(100, left));
		}
		return { name, mediaType: 'text/plain', alternativeText: name, bytes: chunks() };
	});
	return { ...reply, files };
}

const rows = () => chat.log.settingsOf(SHELF);
const kept = async () => (await chat.log.find('nowhere:T1', { kinds: ['exchange'], limit: 100 })).entries;

describe('the daily digest', () => {
	const shop = 'nowhere:T1';
	const morning = (day: number) => new Date(2026, 4, day, 7, 30).getTime();

	async function digests() {
		await chat.handle({
			...asked('digest on 07:00', { command: 'log' }),
			platform: 'nowhere',
			person: { id: 'u2', name: 'Kim', lead: true },
		});
		await ask(openDesk(), QUESTION);
		channel = [];
	}

	test('is said once a day by one of several processes, and not before its time', async () => {
		await digests();
		nowMs = new Date(2026, 4, 5, 6, 59).getTime();
		const several = [openDesk(), openDesk(), openDesk()];
		for (const desk of several) await desk.sweep();
		expect(channel).toEqual([]);
		for (const day of [5, 6]) {
			nowMs = morning(day);
			await Promise.all(several.map((desk) => desk.sweep()));
			for (const desk of several) await desk.settled();
			nowMs += 10 * 60_000;
			for (const desk of several) await desk.sweep();
			for (const desk of several) await desk.settled();
			expect(channel).toHaveLength(day - 4);
			expect(channel.at(-1)).toMatch(new RegExp(`^digest 2026-05-0${day}: To look at: 1 unsigned`));
		}
	});

	test('waits while nothing can be shown, and is shown then', async () => {
		await digests();
		nowMs = morning(5);
		isDown = true;
		const desk = openDesk();
		await desk.sweep();
		await desk.settled();
		expect(channel).toEqual([]);
		isDown = false;
		nowMs += 10 * 60_000;
		await desk.sweep();
		await desk.settled();
		expect(channel.filter((text) => text.includes('To look at'))).toHaveLength(1);
		expect((await chat.log.settingsOf(shop)).map(({ value }) => value)).toContain('2026-05-05');
	});
});

describe('an answer', () => {
	test('is kept, shown once, remembered where it stands, and its row is gone a minute later', async () => {
		const desk = openDesk();
		const one = await ask(desk, QUESTION);
		expect(channel).toHaveLength(1);
		expect(channel[0]).toMatch(ANSWER);
		expect((await rows()).map(({ value }) => value).join()).not.toMatch(/40A|Robin/);
		for (let again = 0; again < 4; again += 1) {
			await desk.receive(one, 'there', new Place(one.delivery)).done;
			await openDesk().receive(one, 'there', new Place(one.delivery)).done;
		}
		expect(channel).toHaveLength(1);
		await ask(desk, 'and at 30 ft?', { thread: 'm0' });
		expect(channel[1]).toMatch(/30 ft/);
		nowMs += 61_000;
		await desk.sweep();
		expect(await rows()).toEqual([]);
	});

	test('the first in a place says what is kept, the next do not, also from another process', async () => {
		await ask(openDesk(), QUESTION);
		await ask(openDesk(), QUESTION);
		await ask(openDesk(), QUESTION, { channel: 'c2' });
		expect(channel.map((text) => /I keep what is addressed to me/.test(text))).toEqual([true, false, true]);
	});

	test('what one person alone sees does not say it for all', async () => {
		const desk = openDesk();
		await ask(desk, 'qwertz');
		await ask(desk, QUESTION);
		expect(said.concat(channel).map((text) => /I keep what is addressed to me/.test(text))).toEqual([
			false,
			true,
		]);
	});

	test('that replaces another marks the message that shows it', async () => {
		const desk = openDesk();
		await ask(desk, QUESTION);
		const marking = {
			...conversation(),
			handle: async (incoming: Parameters<Chat['handle']>[0]) => ({
				...(await chat.handle(incoming)),
				marks: [
					{
						entry: 1,
						channel: 'c1',
						thread: null,
						text: 'No longer valid: replaced by No. 2',
						stands: false,
					},
				],
			}),
		};
		await ask(openDesk({ chat: marking }), '60A 12V 15 ft');
		expect(marked).toEqual([
			{
				message: 'm0',
				text: 'No longer valid: replaced by No. 2',
				headline: '4 AWG copper, 50 A fuse at the source end',
			},
		]);
	});
});

describe('an answer that could not be shown', () => {
	test('is said to be kept, waits without the words of the question, and is shown later by itself', async () => {
		const desk = openDesk();
		isDown = true;
		await ask(desk, QUESTION);
		expect(said).toEqual([expect.stringMatching(/the answer is kept as No\. 1, but I could not show it/)]);
		expect(await desk.waiting()).toBe(1);
		expect((await rows()).map(({ value }) => value).join()).not.toMatch(/40A|Robin/);
		await desk.sweep();
		expect(channel).toEqual([]);
		isDown = false;
		nowMs += 5001;
		await desk.sweep();
		await desk.settled();
		expect(channel).toHaveLength(1);
		expect(channel[0]).toMatch(ANSWER);
		expect(await desk.waiting()).toBe(0);
		expect(await kept()).toHaveLength(1);
	});

	test('is tried less and less often, told once, and given up after a day', async () => {
		const desk = openDesk();
		isDown = true;
		await ask(desk, QUESTION);
		const tries: number[] = [];
		const startedMs = nowMs;
		for (let minute = 0; minute < 25 * 60; minute += 1) {
			nowMs += 60_000;
			const before = desk.metrics.text();
			await desk.sweep();
			await desk.settled();
			if (resumedIn(desk.metrics.text()) > resumedIn(before)) tries.push((nowMs - startedMs) / 60_000);
		}
		expect(said).toHaveLength(1);
		const pauses = tries.slice(1).map((minute, at) => minute - (tries[at] as number));
		expect(pauses).toEqual(pauses.toSorted((a, b) => a - b));
		expect(pauses.at(-1)).toBe(60);
		expect(await rows()).toEqual([]);
		expect(desk.metrics.text()).toMatch(/failures_total\{platform="nowhere",stage="give up"\} 1/);
	});

	test('is shown on request, by its number or as the newest that waits, and then not again by itself', async () => {
		const desk = openDesk();
		isDown = true;
		await ask(desk, QUESTION);
		await ask(desk, '60A 12V 15 ft');
		await ask(desk, '10A 12V 15 ft', { channel: 'c2' });
		isDown = false;
		await ask(desk, 'resend', { command: 'log' });
		expect(channel).toHaveLength(1);
		expect(channel[0]).toMatch(/60 A/);
		expect(channel[0]).toMatch(/Also waiting to be shown: No\. 1\./);
		await ask(desk, 'resend 1', { command: 'log' });
		expect(channel[1]).toMatch(/40 A/);
		await ask(desk, 'resend', { command: 'log' });
		expect(said.at(-1)).toMatch(/No answer of this channel waits/);
		nowMs += 5001;
		await desk.sweep();
		await desk.settled();
		expect(channel).toHaveLength(3);
		expect(channel[2]).toMatch(/10 A/);
	});

	test('a reply that is no entry of its own is worked out again, as asked', async () => {
		const desk = openDesk();
		await ask(desk, QUESTION);
		isDown = true;
		await ask(desk, 'show 1', { command: 'log' });
		isDown = false;
		nowMs += 5001;
		await desk.sweep();
		await desk.settled();
		expect(channel).toHaveLength(2);
		expect(channel[1]).toMatch(/4 AWG copper[\s\S]*=/);
	});

	test('nothing of a person who is forgotten stays, and nothing more is shown to them', async () => {
		const desk = openDesk();
		isDown = true;
		await ask(desk, QUESTION);
		await ask(desk, 'show 1', { command: 'log' });
		await ask(desk, '60A 12V 15 ft', { user: { id: 'u2', name: 'Kim' } });
		const person = { platform: 'nowhere', shop: 'nowhere:T1', personId: 'u1' };
		expect(await forgetPerson(chat.log, person)).toBe(1);
		const left = (await rows()).map(({ value }) => value).join();
		expect(left).not.toMatch(/"u1"|Robin|show 1/);
		expect(left).toMatch(/"u2"/);
		isDown = false;
		nowMs += 5001;
		await desk.sweep();
		await desk.settled();
		expect(channel).toHaveLength(1);
		expect(channel[0]).toMatch(/60 A/);
		expect(await chat.log.verify()).toMatchObject({ ok: true });
	});
});

const resumedIn = (metrics: string) =>
	Number(/resumed_total\{platform="nowhere"\} (\d+)/.exec(metrics)?.[1] ?? 0);

describe('of several processes', () => {
	test('one answers a delivery that reaches them all', async () => {
		const all = Array.from({ length: 4 }, () => openDesk());
		for (let round = 0; round < 10; round += 1) {
			const one = asked(QUESTION);
			await Promise.all(all.map((desk) => desk.receive(one, 'there', new Place(one.delivery)).done));
		}
		expect(channel).toHaveLength(10);
		expect(await kept()).toHaveLength(10);
	});

	test('another answers what the one that ended left behind, once its lease is over', async () => {
		const never = new Promise<Reply>(() => {});
		const dying = openDesk({ chat: { ...conversation(), handle: () => never } });
		const one = asked(QUESTION);
		await dying.receive(one, 'there', new Place(one.delivery)).noted;
		const other = openDesk();
		await other.receive(one, 'there', new Place(one.delivery)).done;
		await other.sweep();
		expect(channel).toEqual([]);
		nowMs += 10_001;
		await other.sweep();
		await other.settled();
		expect(channel).toHaveLength(1);
		expect(channel[0]).toMatch(ANSWER);
		desks.splice(desks.indexOf(dying), 1);
	});

	test('what one showed before it ended is not shown again', async () => {
		const one = asked(QUESTION);
		class Dying extends Place {
			override async show(reply: Reply, mayBeShown: boolean) {
				await super.show(reply, mayBeShown);
				return await new Promise<never>(() => {});
			}
		}
		const dying = openDesk();
		const { noted } = dying.receive(one, 'there', new Dying(one.delivery));
		await noted;
		await expect.poll(() => channel.length).toBe(1);
		nowMs += 10_001;
		const other = openDesk();
		await other.sweep();
		await other.settled();
		expect(channel).toHaveLength(1);
		expect(await other.waiting()).toBe(0);
		desks.splice(desks.indexOf(dying), 1);
	});

	test('a lease is renewed while its answer takes long', async () => {
		let goOn = () => {};
		const wait = new Promise<void>((resolve) => {
			goOn = resolve;
		});
		const slow = openDesk({
			chat: {
				...conversation(),
				handle: async (incoming) => {
					await wait;
					return await chat.handle(incoming);
				},
			},
		});
		const one = asked(QUESTION);
		const { noted, done } = slow.receive(one, 'there', new Place(one.delivery));
		await noted;
		const other = openDesk();
		for (let second = 0; second < 60; second += 1) {
			nowMs += 1000;
			await slow.sweep();
			await other.sweep();
			await other.settled();
		}
		expect(channel).toEqual([]);
		goOn();
		await done;
		expect(channel).toHaveLength(1);
	});

	test('a shutdown leaves what takes too long to the others, at once', async () => {
		const never = new Promise<Reply>(() => {});
		const ending = openDesk({ chat: { ...conversation(), handle: () => never } });
		const one = asked(QUESTION);
		await ending.receive(one, 'there', new Place(one.delivery)).noted;
		await ending.close(10);
		const other = openDesk();
		await other.sweep();
		await other.settled();
		expect(channel).toHaveLength(1);
		desks.splice(desks.indexOf(ending), 1);
	});
});

describe('what is not looked at', () => {
	test('a person who is too fast hears it once; others are answered', async () => {
		const desk = openDesk({ pace: { burst: 3, perMinute: 6 } });
		for (let time = 0; time < 6; time += 1) await ask(desk, QUESTION);
		expect(channel).toHaveLength(3);
		expect(said).toEqual([expect.stringMatching(/faster than I can follow/)]);
		await ask(desk, QUESTION, { user: { id: 'u2' } });
		expect(channel).toHaveLength(4);
		nowMs += 10_000;
		await ask(desk, QUESTION);
		expect(channel).toHaveLength(5);
	});

	test('a message longer than any question', async () => {
		await ask(openDesk(), QUESTION, { fields: { a: 'x'.repeat(8000) } });
		expect(channel).toEqual([]);
		expect(said).toEqual([expect.stringMatching(/too long/)]);
		expect(await rows()).toEqual([]);
	});
});

describe('what the bot says by itself is in the language', () => {
	const german = 'welches Kabel brauche ich für 40 A 12 V 5 m';
	const spanish = 'qué cable necesito para 40 A 12 V 5 m';
	const show = (message: number) => asked(`show ${message}`, { command: 'log' });

	test.each([
		['German', german, /Ich bewahre im Protokoll dieser Werkstatt auf/, /So schnell komme ich nicht mit/],
		['Spanish', spanish, /Guardo en el registro de este taller/, /Vas más rápido de lo que puedo seguir/],
	])('of the question: %s', async (_, question, kept, tooFast) => {
		const desk = openDesk({ pace: { burst: 1, perMinute: 1 } });
		await ask(desk, question);
		expect(channel).toEqual([expect.stringMatching(kept)]);
		expect(channel[0]).not.toMatch(/Save to a build|I keep/);
		await ask(desk, question);
		expect(said).toEqual([expect.stringMatching(tooFast)]);
	});

	test('of the channel, where the message tells none', async () => {
		const desk = openDesk({ pace: { burst: 1, perMinute: 1 } });
		await ask(desk, german);
		await ask(desk, '40A 12V 15 ft');
		await ask(desk, '40A 12V 15 ft', { channel: 'c2', user: { id: 'u2' } });
		await ask(desk, '40A 12V 15 ft', { channel: 'c2', user: { id: 'u2' } });
		expect(said).toEqual([
			expect.stringMatching(/So schnell komme ich nicht mit/),
			expect.stringMatching(/faster than I can follow/),
		]);
	});

	test('where something failed', async () => {
		const failing = openDesk({
			chat: { ...conversation(), handle: () => Promise.reject(new Error('the paper is out')) },
		});
		await ask(failing, german);
		expect(said.at(-1)).toMatch(/^Bei mir ist etwas fehlgeschlagen, und ich habe nicht geantwortet/);
		isDown = true;
		await ask(openDesk(), german);
		expect(said.at(-1)).toMatch(/die Antwort steht als Nr\. 1 im Protokoll, .*"\/log resend 1"/);
	});

	test('where a button was pressed, that of the channel', async () => {
		const desk = openDesk();
		await ask(desk, german);
		const pressed = show(99);
		await desk.share(pressed, 99, new Place(pressed.delivery));
		expect(said.at(-1)).toMatch(/^Bei mir ist etwas fehlgeschlagen/);
	});
});

test('an answer of one person is shared with the channel', async () => {
	const desk = openDesk();
	await ask(desk, 'qwertz');
	expect(said[0]).toMatch(/I could not|Ask me/i);
	const one = asked('', { command: 'log' });
	await desk.share(one, 1, new Place(one.delivery));
	expect(channel).toHaveLength(1);
	expect(channel[0]).toContain(said[0]?.slice(4, 30));
	// Delivered again, and pressed again.
	await desk.share(one, 1, new Place(one.delivery));
	expect(said).toHaveLength(1);
	const other = asked('', { command: 'log' });
	await desk.share(other, 1, new Place(other.delivery));
	expect(channel).toHaveLength(1);
	expect(said.at(-1)).toMatch(/in the channel already/);
	await desk.share(one, 99, new Place(one.delivery));
	expect(said.at(-1)).toMatch(/failed on my side/);
});

describe('a process that stood still for longer than its lease', () => {
	/** Another process takes over what this one held, and shows it. */
	async function another(): Promise<void> {
		nowMs += 10_001;
		const other = openDesk();
		await other.sweep();
		await other.settled();
	}
	/** A desk whose work is held up so, and then ends as said. */
	const heldUp = (end: (incoming: Parameters<Chat['handle']>[0]) => ReturnType<Chat['handle']>) =>
		openDesk({
			chat: {
				...conversation(),
				handle: async (incoming) => {
					await another();
					return await end(incoming);
				},
			},
		});

	test.each([
		['a question', 'ask', QUESTION],
		['what is not kept', 'build', 'list'],
	] as const)('before its answer was worked out, to %s: does not show it again', async (_, command, text) => {
		await ask(
			heldUp((incoming) => chat.handle(incoming)),
			text,
			{ command },
		);
		expect([...channel, ...said]).toHaveLength(1);
	});

	test('and then fails: does not tell so, as the answer is there', async () => {
		await ask(
			heldUp(() => Promise.reject(new Error('too late'))),
			QUESTION,
		);
		expect(channel).toHaveLength(1);
		expect(said).toEqual([]);
	});

	test('in the middle of an answer: leaves the rest, and the trouble with it, to the other', async () => {
		const pages: string[] = [];
		class InPages extends Place {
			override async show(reply: Reply, mayBeShown: boolean, stillOurs: StillOurs) {
				pages.push('first');
				await another();
				await stillOurs();
				pages.push('second');
				return await super.show(reply, mayBeShown);
			}
		}
		class Cut extends Place {
			override async show(): Promise<never> {
				await another();
				throw new Error('cut');
			}
		}
		const one = asked(QUESTION);
		await openDesk().receive(one, 'there', new InPages(one.delivery)).done;
		expect(pages).toEqual(['first']);
		expect(channel).toHaveLength(1);
		const two = asked('10A 12V 5 ft');
		await openDesk().receive(two, 'there', new Cut(two.delivery)).done;
		expect(channel).toHaveLength(2);
		expect(said).toEqual([]);
		await another();
		expect(channel).toHaveLength(2);
	});

	test('and gets the message again from the other: what it had begun before leaves it to what it begins now', async () => {
		let shows = 0;
		class Held extends Place {
			override async show(reply: Reply, mayBeShown: boolean, stillOurs: StillOurs) {
				shows += 1;
				isDown = true;
				await another();
				isDown = false;
				nowMs += 5001;
				await desk.sweep();
				await expect.poll(() => channel.length).toBe(1);
				await stillOurs();
				return await super.show(reply, mayBeShown);
			}
		}
		const desk = openDesk();
		const one = asked(QUESTION);
		await desk.receive(one, 'there', new Held(one.delivery)).done;
		expect(shows).toBe(1);
		expect(channel).toHaveLength(1);
		expect(said.filter((text) => /failed/.test(text))).toHaveLength(1);
	});

	test('goes on where nobody took it over meanwhile', async () => {
		const desk = openDesk({
			chat: {
				...conversation(),
				handle: async (incoming) => {
					nowMs += 60_000;
					return await chat.handle(incoming);
				},
			},
		});
		await ask(desk, QUESTION);
		expect(channel).toHaveLength(1);
		const other = openDesk();
		await other.sweep();
		await other.settled();
		expect(channel).toHaveLength(1);
	});

	test('says no more of how far it is', async () => {
		const desk = openDesk({
			progressEveryMs: 5,
			chat: {
				...conversation(),
				handle: async (incoming, progress) => {
					await another();
					progress?.('50 %');
					await new Promise((resolve) => setTimeout(resolve, 50));
					return await chat.handle(incoming);
				},
			},
		});
		await ask(desk, QUESTION);
		expect(channel).toHaveLength(1);
		expect(said).toEqual([]);
	});
});

describe('files', () => {
	test('are read before anything is shown; what does not fit is named and the rest goes along', async () => {
		const shown: LoadedReply[] = [];
		class Seeing extends Place {
			override async show(reply: LoadedReply, mayBeShown: boolean) {
				shown.push(reply);
				return await super.show(reply, mayBeShown);
			}
		}
		const desk = openDesk({
			chat: {
				...conversation(),
				handle: async (incoming) => withFiles(await chat.handle(incoming), [900, 1001, 700, 600, 10]),
			},
		});
		const one = asked(QUESTION);
		await desk.receive(one, 'there', new Seeing(one.delivery)).done;
		const [reply] = shown;
		expect(reply?.files?.map(({ name, bytes }) => [name, bytes.length])).toEqual([
			['file-0.txt', 900],
			['file-3.txt', 600],
		]);
		const left = (reply?.parts ?? []).flatMap(({ text }) => /^(\S+) is larger than/.exec(text)?.[1] ?? []);
		expect(left).toEqual(['file-1.txt', 'file-2.txt', 'file-4.txt']);
	});
});

describe('progress', () => {
	/** A desk whose work says each of these words when the test lets it. */
	function working(words: readonly string[], turn: (said: string) => Promise<void>, everyMs: number): Desk {
		return openDesk({
			progressEveryMs: everyMs,
			chat: {
				...conversation(),
				handle: async (incoming, progress) => {
					for (const one of words) {
						progress?.(one);
						await turn(one);
					}
					return await chat.handle(incoming);
				},
			},
		});
	}

	test('is said while the work goes on, the newest words only, and not after the answer', async () => {
		const words = ['1 %', '2 %', '50 %'];
		const desk = working(
			words,
			async (one) => {
				if (one !== '1 %') await expect.poll(() => said, { timeout: 20_000 }).toContain(one);
			},
			5,
		);
		await ask(desk, QUESTION);
		expect(said).toEqual(['2 %', '50 %']);
		expect(channel).toHaveLength(1);
	});

	test('of work that is done soon is not said at all', async () => {
		const desk = working(['1 %', '99 %'], async () => {}, 60_000);
		await ask(desk, QUESTION);
		expect(said).toEqual([]);
		expect(channel).toHaveLength(1);
	});

	test('that cannot be said is noted once, and the answer comes all the same', async () => {
		let tried = 0;
		class Mute extends Place {
			override async progress(): Promise<unknown> {
				tried += 1;
				throw new Error('nobody listens');
			}
		}
		const desk = working(
			['1 %', '2 %'],
			async () => {
				await expect.poll(() => tried, { timeout: 20_000 }).toBe(1);
			},
			5,
		);
		const one = asked(QUESTION);
		await desk.receive(one, 'there', new Mute(one.delivery)).done;
		expect(tried).toBe(1);
		expect(channel).toHaveLength(1);
	});

	test('where it stands is noted for whoever takes the message over', async () => {
		class Moving extends Place {
			override async progress(): Promise<unknown> {
				return 'there now';
			}
		}
		let release: () => void = () => {};
		const held = new Promise<void>((resolve) => {
			release = resolve;
		});
		const desk = working(['1 %'], () => held, 5);
		const one = asked(QUESTION);
		const { done } = desk.receive(one, 'there', new Moving(one.delivery));
		const places = async () => (await rows()).map(({ value }) => JSON.parse(value).place as unknown);
		await expect.poll(places, { timeout: 20_000 }).toEqual(['there now']);
		release();
		await done;
		expect(channel).toHaveLength(1);
	});
});
