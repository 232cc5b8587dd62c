import { type Answer, openChat, type Reply } from '@lugbook/chat';
import { defaultContext, topics } from '@lugbook/core';
import { longestMessage, Reader, type Reading } from '@lugbook/language';
import { afterAll, describe, expect, test } from 'vitest';
import { asBody, pagesOf as discordPages } from '../../apps/discord/src/render.js';
import { asPost, pagesOf as slackPages } from '../../apps/slack/src/render.js';
import { checkMessage } from '../platforms/discord/message-limits.js';
import { judgeMessage } from '../platforms/slack/limits.js';
import { climate } from './corpus/climate.js';
import { energy } from './corpus/energy.js';
import { german } from './corpus/german.js';
import { spanish } from './corpus/spanish.js';
import { talk } from './corpus/talk.js';
import { water } from './corpus/water.js';
import { weight } from './corpus/weight.js';
import { wiring } from './corpus/wiring.js';

// Whatever is typed: nothing crashes, nothing that is no number comes of it, no figure of it is lost in silence, and
// what is shown keeps to the limits that the platforms publish. Seeded, so that a failure comes again.
const messages = 100_000;
/** of these, how many go the whole way to what people see */
const answered = 12_000;

/** A small generator of even numbers in 0..1 (mulberry32). */
function seeded(seed: number): () => number {
	let state = seed;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
		mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
	};
}

const corpus = [wiring, energy, water, climate, weight, talk, spanish, german].flat().map(({ text }) => text);

/** Words of the topics and their inputs, with what stands between them. */
const words = [
	...topics.flatMap((topic) => [
		topic.name,
		...topic.words,
		...Object.values(topic.fields).flatMap(({ meta }) => [meta.label, ...meta.aliases]),
	]),
	...'and with for from to at of in x - , ; / + & . ? ! ( ) per day each way round trip how long what size'.split(
		' ',
	),
	...'A V W Ah Wh kWh ft m in mm " \' gal L psi bar F C % lb kg h min days awg mm2 gpm l/min cfm btu ° N'.split(
		' ',
	),
	...[
		'1/0',
		'2/0',
		'4/0',
		'2s2p',
		'100/30',
		'40x40x2',
		'6061-T6',
		'LT225/75R16',
		'121/120R',
		'½',
		'3-1/2',
		'0x10',
	],
	...[
		'0',
		'-1',
		'1e9',
		'99999999999999999999',
		'.5',
		'5.',
		'1,5',
		'1,000',
		'٣',
		'²',
		'∞',
		'NaN',
		'null',
		'__proto__',
	],
];

const pieces = [...'0123456789 .,;:/-+x*()"\'%°µΩ½²×–’\n\t#<>@&`_~|\\^!?$€'].concat([
	'\u0000',
	'\u200b',
	'\u202e',
	'\ud83d',
	'🔋',
	'é',
	'ß',
	'İ',
	'漢',
	'م',
	'ﬁ',
	'constructor',
]);

function maker(random: () => number): (index: number) => string {
	const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
	const several = (most: number) => 1 + Math.floor(random() * most);
	const figure = () => `${Math.floor(10 ** (random() * 4))}${random() < 0.2 ? `.${several(9)}` : ''}`;
	const made = () =>
		Array.from({ length: several(6) }, () => (random() < 0.35 ? figure() : pick(words))).join(
			random() < 0.15 ? '' : ' ',
		);
	const mutated = () => {
		let text = pick(corpus);
		for (let times = several(3); times > 0; times -= 1) {
			const at = Math.floor(random() * (text.length + 1));
			const end = Math.min(text.length, at + Math.floor(random() * 4));
			const put = random() < 0.4 ? '' : random() < 0.5 ? pick(pieces) : text.slice(end, end + several(6));
			text = text.slice(0, at) + put + text.slice(end);
		}
		return text;
	};
	const unicode = () =>
		Array.from({ length: several(40) }, () =>
			random() < 0.5 ? pick(pieces) : String.fromCharCode(Math.floor(random() * 65_536)),
		).join('');
	const long = (most: number) => {
		let text = '';
		const length = random() * most;
		while (text.length < length) text += `${random() < 0.5 ? pick(corpus) : made()} `;
		return text;
	};
	return (index) => {
		if (index % 2000 === 0) return long(100_000);
		if (index % 1000 === 1) return long(longestMessage);
		const kind = random();
		return kind < 0.25 ? made() : kind < 0.5 ? mutated() : unicode();
	};
}

function numbersIn(value: unknown): number[] {
	if (typeof value === 'number') return [value];
	return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** Every figure of the message stands in what was taken, asked, noted or said back. */
function figuresLost(message: string, { given, conflicts, notes, unread }: Reading): string[] {
	const accounted = [
		...given.map(({ said }) => said),
		...conflicts.flatMap(({ values }) => values.map(({ said }) => said)),
		...notes,
		...unread,
	].join('\n');
	return (message.match(/(?<![\p{L}\p{N}.,/x×½²-])\d+/gu) ?? []).filter(
		(figure) => !accounted.includes(figure),
	);
}

const reader = new Reader();
const other = new Reader();
const chat = await openChat({ databaseUrl: 'sqlite::memory:', region: 'us' });
afterAll(() => chat.close());

async function handle(text: string, region: 'us' | 'eu'): Promise<Reply> {
	return chat.handle({
		platform: 'test',
		shop: 's',
		channel: 'c',
		thread: null,
		delivery: null,
		person: { id: 'u', name: 'u', lead: false },
		command: 'ask',
		text,
		keep: false,
		region,
	});
}

function isWhole({ status, headline, results }: Answer): boolean {
	const finite = numbersIn(results.map(({ value }) => value)).every(Number.isFinite);
	return (
		finite &&
		headline !== '' &&
		!/NaN|Infinity|undefined|\[object/.test(status === 'answered' ? headline : '')
	);
}

describe('a hundred thousand messages', () => {
	test('are read without a crash, in finite numbers, alike each time, and no figure is lost', () => {
		const make = maker(seeded(20_260));
		const wrong: string[] = [];
		for (let index = 0; index < messages; index += 1) {
			const text = make(index);
			const context =
				index % 3 === 0
					? { ...defaultContext, region: 'eu' as const, units: 'metric' as const }
					: defaultContext;
			const reading = reader.read(text, { context });
			if (!numbersIn(reading.given.map(({ value }) => value)).every(Number.isFinite))
				wrong.push(`no number: ${JSON.stringify(text)}`);
			if (!reading.tooLong && !reading.smallTalk) {
				const lost = figuresLost(text, reading);
				if (lost.length > 0) wrong.push(`lost ${lost}: ${JSON.stringify(text)}`);
			}
			if (index % 50 === 0 && JSON.stringify(other.read(text, { context })) !== JSON.stringify(reading))
				wrong.push(`read otherwise: ${JSON.stringify(text)}`);
			if (wrong.length >= 20) break;
		}
		expect(wrong).toEqual([]);
	}, 900_000);

	test('are answered within the limits of both platforms', async () => {
		const make = maker(seeded(777));
		const wrong: string[] = [];
		for (let index = 0; index < answered; index += 1) {
			const text = make(index * 20 + 1);
			const reply = await handle(text, index % 2 === 0 ? 'us' : 'eu');
			const found: unknown[] = isWhole(reply.answer) ? [] : [reply.answer.headline];
			for (const page of slackPages(reply))
				found.push(...judgeMessage({ channel: 'C1', ...asPost(page) } as never).problems);
			for (const page of discordPages({ ...reply, files: [] })) {
				const errors = checkMessage(asBody(page) as never, page.files.length);
				if (errors.any) found.push(errors.problems);
			}
			if (found.length > 0)
				wrong.push(`${JSON.stringify(text.slice(0, 300))}: ${JSON.stringify(found).slice(0, 400)}`);
			if (wrong.length >= 10) break;
		}
		expect(wrong).toEqual([]);
	}, 900_000);
});
