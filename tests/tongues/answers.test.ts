import { type Incoming, openChat, partText } from '@lugbook/chat';
import { languages, runTopic, topics } from '@lugbook/core';
import { Reader } from '@lugbook/language';
import { describe, expect, test } from 'vitest';
import { questions } from './questions.js';

// Asked in Spanish or German, a topic answers in it: no English sentence, label, question or caution is left. Small words
// of English are what a sentence cannot do without; those that Spanish or German share are no sign and left out.
const english =
	/\b(?:the|of|is|are|with|for|not|from|at|to|take|takes|than|it|that|by|on|and|or|which|what|how|your|you|its|no more|per|each|days|hours|used|loads|fuse|cable size|read|assumed|good)\b/gi;

const chat = await openChat({ databaseUrl: 'sqlite::memory:', region: 'eu' });

function message(topic: string, text: string): Incoming {
	return {
		platform: 'test',
		shop: 's',
		channel: 'c',
		thread: null,
		delivery: null,
		person: { id: 'u', name: 'u', lead: false },
		command: 'size',
		text: `${topic} ${text}`,
		keep: false,
	};
}

/** English words in what is said, outside of what the asker typed and what stands in quotes. */
function englishIn(text: string, typed: string): string[] {
	const own = new Set(typed.toLowerCase().match(/\p{L}+/gu) ?? []);
	const said = text.replace(/"[^"]*"/g, '').replace(/\b(?:VDE|IEC|ISO|NFPA|NEC|CFR|UN)\b[^.;]*/g, '');
	return (said.match(english) ?? []).filter((word) => !own.has(word.toLowerCase()));
}

describe.each(topics.map(({ name }) => name))('%s', (name) => {
	test('is asked at least twice in each language', () => {
		expect(questions[name]?.es.length).toBeGreaterThanOrEqual(2);
		expect(questions[name]?.de.length).toBeGreaterThanOrEqual(2);
	});

	for (const [language, small] of [
		['es', /\b(?:el|la|de|en|con|para|qu[eé]|cuál|cuánto|es|un|una|se|leído|hay)\b/i],
		['de', /\b(?:der|die|das|und|mit|bei|für|im|nicht|wie|welche[rs]?|ein|eine|gelesen)\b/i],
	] as const) {
		test.each(questions[name]?.[language] ?? [])(`${language}: %s`, async (text) => {
			const { answer, parts } = await chat.handle(message(name, text));
			expect(answer.status).toMatch(/^(?:answered|needs-input|refused)$/);
			const left = parts.flatMap((part) => {
				const words = englishIn(partText(part), text);
				return words.length === 0 ? [] : [`${words.join(' ')}: ${partText(part)}`];
			});
			expect(left).toEqual([]);
			const labels = [...answer.results, ...answer.understood, ...answer.assumed].map(({ label }) => label);
			expect(labels.filter((label) => englishIn(label, text).length > 0)).toEqual([]);
			expect(parts.map(partText).join('\n')).toMatch(small);
			for (const { kind, severity } of parts) {
				if (kind === 'danger') expect(severity).toBe(language === 'es' ? 'PELIGRO' : 'GEFAHR');
			}
		});
	}
});

const reader = new Reader();

test.each(topics.map((topic) => [topic.name, topic] as const))(
	'%s: no number, finding, caution or verdict changes with the language',
	(_, topic) => {
		for (const example of topic.examples) {
			const { given, context } = reader.read(example, {
				context: { region: 'us', units: 'us', language: 'en' },
				topic: topic.name,
			});
			const values = Object.fromEntries(given.map(({ name, value }) => [name, value]));
			const [first, ...others] = languages.map((language) => {
				const outcome = runTopic(topic, values, { ...context, language });
				if (outcome.status !== 'answered') return { status: outcome.status };
				const { results, findings, cautions, neighbours, assumed, headline, because } = outcome.sizing;
				return {
					figures: results.map(({ name, value, unit }) => [
						name,
						typeof value === 'number' ? value : '',
						unit,
					]),
					findings: findings.map(({ code, severity }) => [code, severity]),
					cautions: cautions.length,
					neighbours: neighbours.map(({ passes }) => passes),
					assumed: assumed.map(({ name, confirm }) => [name, confirm]),
					said: [headline, because ?? '', ...findings.map(({ text }) => text)].map(figuresIn),
				};
			});
			for (const other of others) expect(other).toEqual(first);
		}
	},
);

/** The figures of a sentence whatever its order, decimal sign and thousands. */
function figuresIn(text: string): string[] {
	const plain = text
		.replace(/(\d)[,\u202F](\d{3})(?!\d)/gu, '$1$2')
		.replace(/(\d),(\d)/g, '$1.$2')
		.replace(/(\d)\.(\d{3})(?!\d)/g, '$1$2');
	return (plain.match(/\d+(?:\.\d+)?/g) ?? []).toSorted();
}
