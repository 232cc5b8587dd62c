/**
 * However long an answer is and whatever stands in it, both bots show it within the limits their platforms publish, and
 * nobody who looks at the channel misses a danger. The answers are arbitrary records; they go the whole way, from a
 * delivery to what people see.
 */

import { type Answer, answerStatuses, type Chat, topics } from '@lugbook/chat';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bareAnswer } from '../../packages/chat/src/answer.js';
import { audienceOf, replyWith } from '../../packages/chat/src/reply.js';
import { discordShop } from './discord/shop.js';
import { slackShop } from './slack/shop.js';
import { readable } from './slack.js';

const RUNS = 120;
const FAST = { burst: 10_000, perMinute: 10_000 };

/** Words as people and topics write them, signs that the platforms read as markup, and long lines of one sign. */
const text = (maxLength: number) =>
	fc.oneof(
		{ weight: 4, arbitrary: fc.lorem({ mode: 'sentences', maxCount: 3 }) },
		{ weight: 3, arbitrary: fc.string({ minLength: 1, maxLength, unit: 'grapheme', size: 'max' }) },
		{
			weight: 1,
			arbitrary: fc.constantFrom('<!channel>', '@everyone', '**', '```', '<@U02> & <#C01>', '-# a\n> b'),
		},
		{ weight: 1, arbitrary: fc.integer({ min: 1, max: maxLength }).map((length) => '*'.repeat(length)) },
		{ weight: 1, arbitrary: fc.integer({ min: 1, max: maxLength }).map((length) => 'w'.repeat(length)) },
	);
const line = text(1500);
const unit = fc.constantFrom(null, 'A', 'm', '1');
const value = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.string({ maxLength: 40 }));
/** names of inputs of a real topic, so that menus and forms are made of them */
const wire = topics.find(({ name }) => name === 'wire') ?? expect.fail('there is no topic wire');
const name = fc.constantFrom(...Object.keys(wire.fields));
const many = <T>(one: fc.Arbitrary<T>, maxLength: number) => fc.array(one, { maxLength, size: 'max' });

const answer: fc.Arbitrary<Answer> = fc
	.record({
		status: fc.constantFrom(...answerStatuses),
		headline: text(600),
		because: fc.option(text(3000)),
		understood: many(fc.record({ name, label: line, value, unit, text: line, said: line }), 12),
		// An input is assumed once.
		assumed: fc.uniqueArray(
			fc.record({ name, label: line, value, unit, text: line, why: line, confirm: fc.boolean() }),
			{ selector: (one) => one.name, maxLength: 40, size: 'max' },
		),
		tipping: many(fc.record({ name, label: line, value: fc.double(), unit, text: line }), 4),
		neighbours: many(fc.record({ choice: line, passes: fc.boolean(), text: line }), 4),
		findings: many(
			fc.record({
				code: fc.constant('a-finding'),
				severity: fc.constantFrom('danger' as const, 'warning' as const, 'note' as const),
				text: text(1000),
				source: line,
			}),
			24,
		),
		cautions: many(line, 12),
		notes: many(line, 4),
		unread: many(line, 6),
		entry: fc.option(fc.integer({ min: 1, max: 999_999_999 })),
	})
	.map(({ status, headline, ...rest }) => bareAnswer(status, headline, { topic: 'wire', ...rest }));

const letters = (shown: string) => shown.replace(/\s/g, '');
const dangersOf = ({ findings, headline }: Answer) =>
	findings.filter(
		({ severity, text: danger }) => severity === 'danger' && danger !== headline && danger.trim() !== '',
	);

/** More than any topic finds, of signs that take twice the room once they are made inert. */
const full = bareAnswer('answered', 'Too much of everything', {
	topic: 'wire',
	findings: Array.from({ length: 24 }, (_, at) => ({
		code: 'a-finding',
		severity: 'danger' as const,
		text: `${at}: ${'*'.repeat(990)}`,
		source: 'none',
	})),
});

/** A conversation that answers everything with what the test wants just now. */
function answering(): { says: (one: Answer) => void; handle: () => Chat['handle'] } {
	let current = bareAnswer('listed', 'nothing yet');
	return {
		says: (one) => {
			current = one;
		},
		handle: () => async () => replyWith(current, null, audienceOf(current)),
	};
}

test('Slack: every limit kept, every danger whole in the channel', async () => {
	const { says, handle } = answering();
	const { slack, bot } = await slackShop({ handle, pace: FAST });
	let longest = 0;
	await fc.assert(
		fc.asyncProperty(answer, async (one) => {
			says(one);
			const before = slack.workspace.messages.length;
			await slack.command('/ask', 'anything');
			await bot.desk.settled();
			const fresh = slack.workspace.messages.slice(before);
			expect(slack.violations.splice(0)).toEqual([]);
			expect(fresh.length).toBeGreaterThan(0);
			expect(fresh.filter((message) => message.text.trim() === '')).toEqual([]);
			const inTheChannel = fresh.filter(({ threadTs }) => threadTs === undefined);
			const shown = letters(inTheChannel.map(readable).join('\n'));
			longest = Math.max(longest, shown.length);
			for (const danger of dangersOf(one)) expect(shown).toContain(letters(danger.text));
		}),
		{ numRuns: RUNS, examples: [[full]] },
	);
	expect(longest).toBeGreaterThan(11_000);
	expect(slack.calls().filter(({ answer: { ok } }) => ok !== true)).toEqual([]);
}, 120_000);

test('Discord: every limit kept, every danger whole in a message and not in a file alone', async () => {
	const { says, handle } = answering();
	const { discord, bot } = await discordShop({ handle, pace: FAST });
	let longest = 0;
	await fc.assert(
		fc.asyncProperty(answer, async (one) => {
			says(one);
			const before = discord.guild.messages.length;
			await discord.command('ask', { text: 'anything' });
			await bot.desk.settled();
			const fresh = discord.guild.messages.slice(before);
			expect(discord.violations.splice(0)).toEqual([]);
			expect(fresh.length).toBeGreaterThan(0);
			const contents = fresh.map(({ content }) => content).join('\n');
			// Styles stand around whole lines; what looks like one in a text is escaped.
			const plain = contents.replace(/^(?:\*\*|-# )|\*\*$/gm, '').replace(/\\([^0-9A-Za-z\s])/g, '$1');
			const shown = letters(plain);
			longest = Math.max(longest, shown.length);
			for (const danger of dangersOf(one)) expect(shown).toContain(letters(danger.text));
			expect(
				fresh.filter(({ pings }) => pings.everyone || pings.users.length > 0 || pings.roles.length > 0),
			).toEqual([]);
		}),
		{ numRuns: RUNS, examples: [[full]] },
	);
	expect(longest).toBeGreaterThan(4000);
	expect(discord.calls().filter(({ status }) => status >= 400)).toEqual([]);
}, 120_000);
