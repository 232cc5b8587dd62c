import { topics } from '@lugbook/core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Chat, openChat, plainText, type Reply } from '../index.js';

let chat: Chat;
let count = 0;

beforeEach(async () => {
	chat = await openChat({
		databaseUrl: 'sqlite::memory:',
		region: 'us',
		now: () => new Date('2026-05-04T12:00:00Z'),
	});
});
afterEach(async () => {
	await chat.close();
});

async function say(text: string, thread: string | null = null): Promise<Reply> {
	count += 1;
	const command = /^\/(build|log|size)\s+/.exec(text);
	return await chat.handle({
		platform: 'terminal',
		shop: 'demo',
		channel: 'c1',
		thread,
		delivery: `d${count}`,
		person: { id: 'u1', name: 'Robin', lead: false },
		command: (command?.[1] ?? 'ask') as 'ask',
		text: command === null ? text : text.slice(command[0].length),
	});
}
const words = async (text: string, thread: string | null = null) =>
	plainText(await say(text, thread), { folded: true });
const understood = (reply: Reply) =>
	Object.fromEntries(reply.answer.understood.map(({ name, value, said }) => [name, [value, said]]));

const van =
	'two 100 Ah 12 V lithium batteries, 2000 W inverter, fridge 45 W, 2 x 200 W panels, MPPT 100/30, fresh tank 30 gal';
const fromHeron = 'from build "heron"';

describe('told in words without a command', () => {
	test.each([
		van,
		'The van has a 2000 W inverter and a 45 W fridge.',
		'we fitted two 100Ah lithium, 30A dc-dc, maxi roof fan',
		'der Kastenwagen hat einen Wechselrichter 2000 W und einen Kühlschrank 45 W',
		'la furgoneta lleva un inversor de 2000 W y una nevera de 45 W',
	])('%s', async (text) => {
		await say('/build use heron');
		expect((await say(text)).answer.headline).toMatch(
			/^(?:Build "heron" as understood|Proyecto "heron" según lo entendido|Ausbau "heron", wie verstanden): [2-9] (?:pieces|piezas|Stücke)$/,
		);
	});

	test('without a build it says where to put it', async () => {
		expect((await say(van)).answer.headline).toMatch(/^That tells of a van\. No build is chosen/);
		expect(await words(`/build describe ${van}`)).toContain(`Then send this again:\n/build describe ${van}`);
	});

	test('no example question of any topic is taken for one', async () => {
		await say('/build use heron');
		await say(`/build describe ${van}`);
		for (const example of topics.flatMap((topic) => topic.examples)) {
			const { answer } = await say(example);
			expect(`${example}: ${answer.headline}`).not.toMatch(/as understood/);
		}
	});

	test('corrections, and "no, two of them" right after', async () => {
		await say('/build use heron');
		await say(van);
		expect(await words('the fridge is 60 W')).toContain('fridge: power 60 W');
		expect(await words('no, two of them')).toMatch(/fridge: .*how many 2/);
		expect(await words('drop the fridge')).toContain('Said not to be there: fridge');
		expect(await words('use 24 V for the whole van')).toContain('bank voltage 24 V');
		expect(await words('add a 100 W panel')).toMatch(/solar panels 2: power of one panel 100 W/);
	});

	test('"no, ..." puts a named piece right also when something else was asked meanwhile', async () => {
		await say('/build use heron');
		await say(van);
		await say('40A 12V 15 ft');
		expect(await words('no, the fridge is 60 W')).toContain('fridge: power 60 W');
		await say('40A 12V 15 ft');
		expect(await words('no, son tres baterías')).toContain('baterías 3');
	});

	test('a bare list of a bank, panels, an inverter and what it feeds is a description', async () => {
		await say('/build use heron');
		const { answer } = await say('2x 100ah lfp 12v, 200w panel, 2000w inverter, fridge 45w');
		expect(answer.headline).toBe('Build "heron" as understood: 4 pieces');
	});

	test('what joins on to the answer before is asked with it, in each language', async () => {
		for (const [question, next, length] of [
			['wire for fridge 45w 12v 5 m', 'and 8 m?', 8],
			['cable para nevera 45w 12v 5 m', 'y a 8 metros?', 8],
			['kabel kühlschrank 45w 12v 5 m', 'und mit 8 m?', 8],
		] as const) {
			await say(question);
			expect(understood(await say(next))).toMatchObject({
				powerW: [45, '45w'],
				lengthM: [length, expect.any(String)],
			});
		}
	});
});

describe('sizings take what the build knows', () => {
	test('wire for the fridge knows its power and the voltage of the bank', async () => {
		await say('/build use heron');
		await say(van);
		const asked = await say('wire for the fridge', 't1');
		expect(asked.answer.status).toBe('needs-input');
		expect(asked.answer.missing).toEqual(['lengthM']);
		const answered = await say('15 ft', 't1');
		expect(answered.answer.status).toBe('answered');
		expect(understood(answered)).toMatchObject({
			powerW: [45, fromHeron],
			voltageV: [12, fromHeron],
			lengthM: [15 * 0.3048, '15 ft'],
		});
		expect(plainText(answered, { folded: true })).toContain('From build "heron": 45 W, 12 V.');
		const entry = await chat.log.entry('demo', answered.answer.entry as number);
		expect(JSON.stringify(entry?.body)).toContain('{"field":"powerW","item":"fridge","value":45}');
	});

	test('what was said stands before what the build knows', async () => {
		await say('/build use heron');
		await say(van);
		const { answer } = await say('40A 24V 15 ft');
		expect(answer.understood.every(({ said }) => !said.startsWith('from build'))).toBe(true);
	});

	test('a build that nothing was told of gives nothing', async () => {
		await say('/build use wren');
		const { answer } = await say('40A 15 ft');
		expect(answer.understood.map(({ name }) => name)).toEqual(['currentA', 'lengthM']);
		expect(answer.assumed.map(({ name }) => name)).toContain('voltageV');
	});
});

describe('out of date', () => {
	async function sized(): Promise<Reply> {
		await say('/build use heron');
		await say(van);
		return await say('wire for the fridge 15 ft');
	}

	test('a changed value puts the sizing out of date; run again, the new one replaces it', async () => {
		const old = await sized();
		await say('40A 12V 15 ft');
		const number = old.answer.entry as number;
		expect(await words('the fridge is 120 W')).toContain(`Out of date now: No. ${number}.`);
		expect(await words('/build show')).toMatch(
			new RegExp(`Out of date: No\\. ${number}, .*fridge: power was 45 W, is 120 W`),
		);
		const again = await say('/build rerun');
		expect(again.answer.headline).toBe('Worked out again: 1 answer of build "heron"');
		expect(again.marks).toMatchObject([{ entry: number }]);
		const replacing = await chat.log.find('demo', { replaces: number });
		expect(replacing.entries).toHaveLength(1);
		expect(JSON.stringify(replacing.entries[0]?.body)).toContain('"value":120');
		expect(await words('/build show')).not.toContain('Out of date');
		expect((await say('/build rerun')).answer.headline).toBe('No answer of build "heron" is out of date.');
	});

	test('put back as it was, nothing is out of date', async () => {
		await sized();
		expect(await words('the fridge is 120 W')).toContain('Out of date now');
		expect(await words('the fridge is 45 W')).not.toContain('Out of date now');
	});

	test('the bank at another voltage puts out of date what rested on it, and only that', async () => {
		const old = await sized();
		const other = await say('40A 12V 15 ft');
		const told = await words('use 24 V for the whole van');
		expect(told).toContain(`No. ${old.answer.entry}`);
		expect(told).not.toContain(`No. ${other.answer.entry}`);
		await say('/build rerun');
		const { entries } = await chat.log.find('demo', { replaces: old.answer.entry as number });
		expect(JSON.stringify(entries[0]?.body)).toMatch(
			/"name":"voltageV","said":"from build \\"heron\\"","value":24/,
		);
	});

	test('the same message delivered again runs nothing again', async () => {
		await sized();
		await say('the fridge is 120 W');
		await say('/build rerun');
		const before = (await chat.log.find('demo', { limit: 100 })).entries.length;
		count -= 1;
		await say('/build rerun');
		expect((await chat.log.find('demo', { limit: 100 })).entries).toHaveLength(before);
	});
});

describe('checked again', () => {
	test('says what got better and what worse', async () => {
		await say('/build use heron');
		await say(`${van}, diesel heater, no CO alarm`);
		const first = await say('/build check');
		expect(first.parts.some(({ text }) => text.startsWith('Since'))).toBe(false);
		await say('add a CO alarm');
		await say('/build describe add a propane stove, no gas alarm');
		const lines = (await words('/build check')).replace(/\n {2}/g, ' ');
		expect(lines).toMatch(new RegExp(`Since No\\. ${first.answer.entry}: \\d+ cleared, \\d+ new`));
		expect(lines).toMatch(/Better, no longer so: .*carbon/i);
		expect(lines).toMatch(/Worse, new: .*gas/i);
		expect(await words('/build check')).toMatch(/nothing got better, nothing worse/);
	});
});

test('the builds of the shop, those worked on last first', async () => {
	expect((await say('/build list')).answer.headline).toContain('no build yet');
	await say('/build use wren');
	await say('/build use heron');
	await say(van);
	expect(await words('/build list')).toBe(
		'2 builds of this shop:\nheron (this channel)\nwren: nothing told of it yet',
	);
});
