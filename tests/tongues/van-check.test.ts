import { openChat, plainText } from '@lugbook/chat';
import { type Context, changed, checkVan, emptyVan, type Language, type Van } from '@lugbook/core';
import { changesFor, describe as told } from '@lugbook/language';
import { afterAll, describe, expect, test } from 'vitest';
import { checkPairs } from '../../packages/chat/src/build/check.js';
import { descriptionCases } from '../build/descriptions/index.js';

// What the cross-checks find is the same in every language: the same findings, figures and severity, and no English left.

interface Case {
	readonly name: string;
	readonly van: Van;
	readonly context: Context;
}

const cases: readonly Case[] = descriptionCases.map(({ name, region, text }) => {
	const base: Context = { region, units: region === 'us' ? 'us' : 'metric', language: 'en' };
	const description = told(text, base);
	const van = changed(emptyVan, changesFor(emptyVan, description).changes);
	return { name, van, context: { ...description.context, language: 'en' } };
});

/** Small words of English that no sentence in Spanish or German holds. */
const english = /\b(?:the|and|is|are|of|takes|gives|with|which|how|its|through|without)\b/;

const figures = (text: string) =>
	(text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((figure) => figure.replace(',', '.')).toSorted();

describe.each<Language>(['es', 'de'])('%s', (language) => {
	test('the check itself: same findings, same figures, no English', () => {
		const wrong: string[] = [];
		let count = 0;
		for (const { name, van, context } of cases) {
			const before = checkVan(van, context);
			const after = checkVan(van, { ...context, language });
			expect(after.findings.map(({ code, severity }) => [code, severity])).toEqual(
				before.findings.map(({ code, severity }) => [code, severity]),
			);
			for (const [index, { text }] of before.findings.entries()) {
				const here = after.findings[index]?.text ?? '';
				count += 1;
				if (here === text || english.test(here) || figures(here).join() !== figures(text).join())
					wrong.push(`${name}: ${text} => ${here}`);
			}
		}
		expect(count).toBeGreaterThan(200);
		expect(wrong).toEqual([]);
	});

	test('what is not known is asked in it', () => {
		const wrong: string[] = [];
		for (const { name, van, context } of cases) {
			for (const [text, here] of checkPairs(van, { ...context, language })) {
				if (here === text || english.test(here.replace(/ \([^()]*\)$/, '')))
					wrong.push(`${name}: ${text} => ${here}`);
			}
		}
		expect(wrong).toEqual([]);
	});
});

const chat = await openChat({ databaseUrl: 'sqlite::memory:', region: 'eu' });
afterAll(() => chat.close());

describe.each([
	[
		'es',
		'furgoneta larga para invierno, 2 baterías de 100Ah litio, nevera 45W, calefacción de gas, sin detector de monóxido',
		'añade una batería de 100Ah',
		[/PELIGRO: A bordo se quema combustible/, /No se sabe: /],
		/Desde el n.º \d+/,
	],
	[
		'de',
		'langer radstand für den winter, 2 batterien 100Ah lithium, kühlschrank 45W, gasheizung, kein CO-melder',
		'die heizung hat 4 kW',
		[/GEFAHR: An Bord verbrennt Brennstoff/, /Nicht bekannt: /],
		/Seit Nr. \d+/,
	],
] as const)('a conversation in %s', (language, described, changes, sees, since) => {
	test('is answered in it by "/build check"', async () => {
		let count = 0;
		const say = async (command: 'ask' | 'build', text: string) => {
			count += 1;
			const reply = await chat.handle({
				platform: 'test',
				shop: 's',
				channel: `van-${language}`,
				thread: null,
				delivery: `${language}-${count}`,
				person: { id: 'u', name: 'u', lead: false },
				command,
				text,
			});
			return plainText(reply, { folded: false });
		};
		await say('build', `use ${language}-van`);
		await say('build', `describe ${described}`);
		const checked = await say('build', 'check');
		for (const one of sees) expect(checked).toMatch(one);
		const body = checked
			.split('\n')
			.slice(1)
			.join('\n')
			.replace(/\([^()]*\)/g, '')
			.replace(/"[^"]*"/g, '');
		expect(body).not.toMatch(english);
		await say('ask', changes);
		expect(await say('build', 'check')).toMatch(since);
	});
});
