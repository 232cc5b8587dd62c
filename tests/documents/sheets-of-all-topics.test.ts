/** Calculation sheets of every topic, of an answer that the chat gave, as a checking engineer reads them. */

import { type Chat, openChat, topics } from '@lugbook/chat';
import { type SheetRecord, sheetText } from '@lugbook/report';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import { sheetRecordOf } from '../../packages/chat/src/review/sheet.js';
import { type DemoInput, demoSheet } from '../../packages/report/gallery/records.js';

/** Topics that only add up, or whose example names no need: their sheets say why there is no limit. */
const withoutLimit = ['budget', 'drain', 'fuel', 'inflate', 'moisture', 'runtime', 'solar', 'vent'];
/** Of these the sheet has no figure that moves the choice to the next size: there is nothing to choose. */
const withoutChoice = ['budget', 'fuse', 'inflate', 'short-circuit'];

let chat: Chat;
const records = new Map<string, SheetRecord>();

beforeAll(async () => {
	chat = await openChat({ databaseUrl: 'sqlite::memory:', region: 'us' });
	for (const { name, examples } of topics) {
		for (const [index, text] of examples.entries()) {
			const { answer } = await chat.handle({
				platform: 'terminal',
				shop: 'demo',
				channel: `${name} ${index}`,
				thread: null,
				delivery: `${name} ${index}`,
				person: { id: 'u1', name: 'Robin', lead: false },
				command: 'ask',
				text,
			});
			if (answer.status !== 'answered' || answer.topic !== name) continue;
			const entry = await chat.log.entry('demo', answer.entry ?? 0);
			const record = entry === null ? null : await sheetRecordOf(chat.log, entry);
			if (record !== null) records.set(name, record);
			break;
		}
	}
}, 180_000);
afterAll(async () => {
	await chat.close();
});

function sheetOf(name: string): { record: SheetRecord; text: string; section(title: string): string } {
	const record = records.get(name);
	if (record === undefined) throw new Error(`no example of ${name} is answered`);
	const text = sheetText(record, 200);
	return {
		record,
		text,
		section: (title) => {
			const parts = text.split(/\n(?=\d+ [A-Z][^\n]*\n=+\n)/);
			return parts.find((part) => part.split('\n')[0]?.endsWith(title)) ?? '';
		},
	};
}

describe.each(topics.map(({ name }) => name))('the sheet of %s', (name) => {
	test('has purpose, method and sources, and symbols with the numbers under them', () => {
		const { record, section } = sheetOf(name);
		for (const title of ['Purpose', 'Inputs', 'Assumptions', 'Method', 'Working', 'Result'])
			expect(section(title), title).not.toBe('');
		expect(record.sizing.working.length).toBeGreaterThan(0);
		const working = section('Working').replaceAll(/\s+/g, ' ');
		for (const { label, formula, substituted } of record.sizing.working) {
			expect(working).toContain(formula.replaceAll(/\s+/g, ' '));
			expect(substituted, label).not.toBe('');
			// "= T = -28.9 °C" would be no sum.
			expect(working).not.toContain(`= ${/^[\p{L}]+ = .*/u.exec(substituted)?.[0] ?? 'no such text'}`);
		}
	});

	test('says of every figure how it was rounded', () => {
		const { record, section } = sheetOf(name);
		const figures = record.sizing.results.filter(({ value }) => typeof value === 'number');
		const said = section('Result').match(/not rounded|rounded up|rounded down/g) ?? [];
		expect(said.length).toBeGreaterThanOrEqual(figures.length * 0.8);
	});

	test('holds the result against its limit with a margin', () => {
		const checks = sheetOf(name).section('Checks against limits');
		if (withoutLimit.includes(name)) expect(checks).toMatch(/No limit(:| was told:) /);
		else expect(checks).toMatch(/at most|at least|left/);
		expect(checks).not.toMatch(/NaN|undefined|null/);
	});

	test('says how close it is: which input moves the choice, or what the next one gives', () => {
		const close = sheetOf(name).section('How close it is');
		if (withoutChoice.includes(name)) expect(close).toBe('');
		else expect(close).toMatch(/Holds|Neighbouring choice/);
		expect(close).not.toMatch(/NaN|undefined|null|Margin:? -/);
	});

	test('has the cautions of its work, where it is work', () => {
		const cautions = sheetOf(name).section('Cautions and remaining risks');
		if (name === 'budget') expect(cautions).toBe('');
		else expect(cautions).toMatch(/^- \S/m);
	});
});

test.each<[string, Readonly<Record<string, DemoInput>>, RegExp]>([
	[
		'drain',
		{
			volumeL: [151, 'a'],
			depthM: [0.254, 'b'],
			valveMm: [38, 'c'],
			wantedH: [2 / 60, 'd'],
			ventMm: [19, 'e'],
		},
		/time to empty against time wanted.*at most 2 min.*beyond by.*NO[\s\S]*bore of the vent against.*at least.*yes/,
	],
	[
		'inflate',
		{
			volumeL: [60, 'a'],
			tires: [4, 'b'],
			fromKpa: [170, 'c'],
			toKpa: [450, 'd'],
			pumpFlowLMin: [70, 'e'],
			currentA: [45, 'f'],
			bankAh: [100, 'g'],
		},
		/share of the bank against 50 % of it.*at most 50 %.*yes/,
	],
	[
		'moisture',
		{ people: [2, 'a'], outsideC: [-7, 'b'], insideC: [18, 'c'], insulationMm: [25, 'd'], airM3H: [20, 'e'] },
		/air flow there is against.*at least.*beyond by.*NO/,
	],
	[
		'runtime',
		{
			chemistry: ['lifepo4', 'a'],
			unitAh: [100, 'b'],
			unitCount: [4, 'c'],
			loads: [[{ name: 'fridge', count: 1, powerW: 80, hours: 24, dutyCycle: 1 }], 'd'],
			wantedH: [48, 'e'],
		},
		/against.*at least.*yes/,
	],
	[
		'vent',
		{ airM3H: [1500, 'a'], wheelbase: ['long', 'b'], roof: ['high', 'c'], intakeM2: [0.04, 'd'] },
		/intake.*at least.*beyond by.*NO/,
	],
])('%s holds what was told as a limit against its answer', (name, inputs, check) => {
	const text = sheetText(demoSheet(1, name, inputs), 200);
	expect(text.split(/\n(?=\d+ [A-Z])/).find((part) => part.includes('Checks against limits'))).toMatch(check);
});

test('an array stands below its controller, a bolt under what it may bear, and a margin is said either way', () => {
	expect(sheetOf('array').section('Checks against limits')).toMatch(
		/54\.5 V\s+at most 100 V\s+45\.5 V\s+yes/,
	);
	expect(sheetOf('restraint').section('Checks against limits')).toMatch(
		/4413 N\s+at most 10600 N\s+6187 N\s+yes/,
	);
	expect(sheetOf('shore').section('Checks against limits')).toMatch(
		/50\.7 A\s+at most 15 A\s+beyond by 35\.7 A\s+NO/,
	);
	expect(sheetOf('beam').section('Checks against limits')).not.toMatch(/support carries/);
	expect(sheetOf('beam').section('How close it is')).toMatch(/up to 1\.17 m\s+beyond by 0\.03 m/);
	expect(sheetOf('simulate').section('How close it is')).toMatch(/down to 110 Ah\s+90 Ah/);
	expect(sheetOf('runtime').section('How close it is')).toMatch(/80 W\s+up to 170 W for a full day\s+90 W/);
});
