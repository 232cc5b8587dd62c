/** Forms in a channel that speaks Spanish or German: what they show is in its language, and what is sent of them is read. */

import { FormWords, topics, wordsForm } from '@lugbook/chat';
import { Reader } from '@lugbook/language';
import { describe, expect, test } from 'vitest';

const context = { region: 'us', units: 'us', language: 'en' } as const;
/** What is written the same in every language: names of standards, markings, words shared with English. */
const shared =
	/^(?:LiFePO4|AGM|gel|NMC|parallel|MPPT|PWM|EPS|XPS|polyiso|PIR|material|motor|no|speed symbol [A-Z]|April|August|September|November)$/;

const fields = topics.flatMap((topic) =>
	Object.entries(topic.fields).map(([name, field]) => ({ topic, name, field })),
);

describe.each(['es', 'de'] as const)('forms in %s', (language) => {
	const words = new FormWords(language);

	test('title, purpose, helps and choices of every topic are said in the language', () => {
		const english: string[] = [];
		const told = (text: string | null, here: string) => {
			if (text === null || shared.test(text) || !/\p{L}{3}/u.test(text)) return;
			if (text === here) english.push(text);
		};
		for (const topic of topics) {
			told(topic.title, words.title(topic));
			told(topic.purpose, words.purpose(topic));
		}
		for (const { field } of fields) {
			const { label, help, fallback } = field.meta;
			const { hint, leftEmpty, choices } = words.input(field);
			told(help, help === null ? '' : hint.slice(0, help.length));
			if (fallback !== null) told(`Left empty: ${fallback.why}`, leftEmpty ?? '');
			for (const { text, value } of choices ?? []) if (!isName(value)) told(value, text);
			if (help !== null && hint.includes(help)) english.push(help);
			if (fallback !== null && hint.includes(fallback.why)) english.push(fallback.why);
			expect(label).not.toBe('');
		}
		expect(english).toEqual([]);
	});

	test('every word that a form offers is read back as what it stands for', () => {
		const reader = new Reader();
		const wrong: string[] = [];
		let read = 0;
		for (const { topic, name, field } of fields) {
			for (const { text, value } of words.input(field).choices ?? []) {
				read += 1;
				const [here, there] = [text, value].map((typed) => reader.readField(topic, name, typed, context));
				const same = here?.ok === true && there?.ok === true && here.value === there.value;
				if (!same) wrong.push(`${topic.name} ${name}: ${value}, ${text}`);
			}
		}
		expect(read).toBeGreaterThan(300);
		expect(wrong).toEqual([]);
	});

	test('the forms about an answer name it by its number', () => {
		const number = { es: 'N.º 1280', de: 'Nr. 1280' }[language];
		for (const form of ['reject', 'comment', 'save'] as const) {
			const { title, label } = wordsForm(form, 1280, language);
			expect(title).toContain(number);
			expect(title).not.toBe(wordsForm(form, 1280, 'en').title);
			expect(label).not.toBe(wordsForm(form, 1280, 'en').label);
		}
	});
});

test('in English they show the words of the declarations', () => {
	const words = new FormWords('en');
	for (const topic of topics) expect(words.title(topic)).toBe(topic.title);
	for (const { field } of fields) expect(words.input(field).label).toBe(field.meta.label);
});

/** Marks of alloys and of fuses stay as they are printed. */
function isName(value: string): boolean {
	return /^[\dA-Z/ -]+$/.test(value) || /^(?:AN[LN]|MRBF|MIDI|MEGA)\b/i.test(value);
}
