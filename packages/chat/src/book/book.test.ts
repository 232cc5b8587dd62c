import { type SheetRecord, scheduleCsv } from '@lugbook/report';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
	type Chat,
	type Incoming,
	importLog,
	openChat,
	type Person,
	plainText,
	type Reply,
} from '../index.js';
import { bookOf } from './book.js';
import { bookFiles, bookFormats } from './files.js';

const robin: Person = { id: 'u1', name: 'Robin', lead: false };
const kim: Person = { id: 'u2', name: 'Kim', lead: true };
const context = { region: 'us', units: 'us', language: 'en' } as const;

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

async function tell(person: Person, text: string, more: Partial<Incoming> = {}): Promise<Reply> {
	count += 1;
	const command = /^\/(log|build|size) /.exec(text)?.[1] ?? 'ask';
	return await chat.handle({
		platform: 'terminal',
		shop: 'demo',
		channel: 'c1',
		thread: null,
		delivery: `d${count}`,
		person,
		command: command as Incoming['command'],
		text: text.replace(/^\/\w+ /, ''),
		...more,
	});
}
const say = async (person: Person, text: string, more: Partial<Incoming> = {}) =>
	plainText(await tell(person, text, more), { folded: true });

async function told(): Promise<void> {
	await tell(kim, '/build use heron');
	await tell(
		robin,
		'/build describe long wheelbase high roof van, GVWR 9500 lb, rear axle rating 5500 lb. 2 people. Battery bank 4 x 100Ah lifepo4 12V, main fuse 300A, fuse block, 2000W inverter, 400W solar, solar controller 30A, fridge 60W 24h 40%, water pump 7A, induction cooktop 1800W 20 min, 30 gal fresh tank over the rear axle, 20 gal gray tank',
	);
}

async function book(shop = 'demo', build = 'heron') {
	const made = await bookOf(chat.log, { shop, build, context, date: '2026-05-04' });
	if (made === null) throw new Error('there is no book');
	return made;
}

async function sheets(made: Awaited<ReturnType<typeof book>>): Promise<SheetRecord[]> {
	const found: SheetRecord[] = [];
	for await (const record of typeof made.sheets === 'function' ? made.sheets() : made.sheets)
		found.push(record);
	return found;
}

async function bytesOf(reply: Pick<Reply, 'files'>, name: string): Promise<Buffer> {
	const file = reply.files?.find((one) => one.name === name);
	if (file === undefined) throw new Error(`no ${name} among ${reply.files?.map((one) => one.name).join()}`);
	if (file.bytes instanceof Uint8Array) return Buffer.from(file.bytes);
	const chunks: Uint8Array[] = [];
	for await (const chunk of file.bytes) chunks.push(chunk);
	return Buffer.concat(chunks);
}

describe('the book of a build', () => {
	test('has the equipment as told, each piece with the entry that told it last', async () => {
		await told();
		await tell(robin, '/build describe the fridge is 45 W');
		const { equipment } = await book();
		const of = (name: string) => equipment.find((item) => item.name === name);
		expect(of('battery bank')).toMatchObject({ count: 4, entry: 2 });
		expect(of('battery bank')?.rating).toMatch(/LiFePO4.*100 Ah/);
		expect(of('fridge')).toMatchObject({ count: 1, entry: 3 });
		expect(of('fridge')?.rating).toContain('45 W');
		expect(of('fresh tank')?.place).toBe('over the rear axle');
	});

	test('has the energy of a day as anybody can sum it: 60 W for 24 h at 40 % is 576 Wh', async () => {
		await told();
		const { energy } = await book();
		const load = (name: string) => energy?.loads.find((one) => one.name === name);
		expect(load('fridge')?.energyWh).toBeCloseTo(60 * 24 * 0.4, 9);
		expect(load('cooktop')?.energyWh).toBeCloseTo(1800 / 3, 9);
		expect(load('cooktop')?.mains).toBe(true);
		expect(load('water pump')?.assumed).toBe(true);
		// 60 W times 24 h is not what it takes: the page says why.
		const html = (await bytesOf(await tell(robin, '/log export html'), 'heron.html')).toString();
		expect(html).toMatch(/fridge<\/th>.*60 W<.*24 h at 40 %<.*576 Wh</);
	});

	test('every circuit stands in the schedule; one that was sized with what its answer says', async () => {
		await told();
		const answer = (await tell(robin, 'fridge 60W 12 ft')).answer;
		const result = (name: string) => answer.results.find((one) => one.name === name)?.value;
		const { runs, oneLine } = await book();
		const fridge = runs.find(({ to }) => to === 'fridge');
		expect(fridge).toMatchObject({
			from: 'fuse block',
			conductor: result('conductor'),
			deviceA: result('device'),
			voltageV: 12,
			entry: answer.entry,
			state: 'not checked',
		});
		expect(fridge?.lengthM).toBeCloseTo(12 * 0.3048, 9);
		expect((fridge?.drop ?? 0) * 100).toBeCloseTo(result('dropPercent') as number, 9);
		const pump = runs.find(({ to }) => to === 'water pump');
		expect(pump).toMatchObject({
			currentA: 7,
			conductor: null,
			device: null,
			entry: null,
			unprotected: null,
		});
		// The same in the drawing, where what is not known is marked.
		expect(oneLine?.runs.find(({ to }) => to === 'fridge')).toMatchObject({
			conductor: result('conductor'),
			devices: [{ kind: 'fuse', ratingA: result('device'), at: 'from' }],
		});
		expect(oneLine?.runs.find(({ to }) => to === 'water-pump')).toMatchObject({
			conductor: null,
			devices: [],
		});
	});

	test('a what-if stands for its run only where it is the last or signed', async () => {
		await told();
		await tell(robin, '40A 12V 15 ft', { thread: 't1' });
		await tell(robin, 'and at 20 ft?', { thread: 't1' });
		const entries = async () => (await book()).runs.flatMap(({ entry }) => entry ?? []);
		expect(await entries()).toEqual([4]);
		await tell(kim, '/log sign 3');
		expect(await entries()).toEqual([3, 4]);
	});

	test('a size that is too thin is never shown as the size of a run', async () => {
		await told();
		await tell(robin, '40A 12V 15 ft 10 awg ok?');
		const { runs, findings, handover } = await book();
		expect(runs.find(({ entry }) => entry === 3)?.conductor).toBe('10 AWG: TOO THIN, see the sheet');
		expect(findings.find(({ severity }) => severity === 'danger')?.entries).toEqual([3]);
		expect(handover.limits.some(({ what }) => what.includes('No. 3'))).toBe(false);
	});

	test('what was rejected or replaced is in the sheets and the counts, and nowhere else', async () => {
		await told();
		await tell(robin, '40A 12V 15 ft 10 awg ok?');
		await tell(robin, '2 people fresh tank 30 gal, waste tank 20 gal');
		const before = await book();
		expect(before.findings.some(({ entries }) => entries.includes(3))).toBe(true);
		expect(before.water?.facts.some(({ label }) => label.includes('No. 4'))).toBe(true);
		await tell(kim, '/log reject 3 far too thin');
		await tell(kim, '/log reject 4 wrong tank');
		const after = await book();
		expect(after.signing.answers).toEqual({ rejected: [3, 4] });
		expect(after.findings.some(({ entries }) => entries.includes(3) || entries.includes(4))).toBe(false);
		expect(after.runs.some(({ entry }) => entry === 3)).toBe(false);
		expect(after.water?.facts.some(({ label }) => label.includes('No. 4'))).toBe(false);
		expect((await sheets(after)).map(({ number, state }) => [number, state])).toEqual([
			[3, 'rejected'],
			[4, 'rejected'],
		]);
	});

	test('a signature over what the build no longer says is out of date', async () => {
		await told();
		await tell(robin, 'wire for the fridge 12 ft');
		await tell(kim, '/log sign 3');
		expect((await book()).signing.answers).toEqual({ signed: [3] });
		await tell(robin, '/build describe the fridge is 90 W');
		const after = await book();
		expect(after.signing).toMatchObject({ answers: { 'out of date': [3] }, signers: [] });
		expect((await sheets(after))[0]?.stateReason).toMatch(/60 W.*90 W/);
	});

	test('what follows from the whole van is open in it, and what was not told is named', async () => {
		await told();
		const { findings, notKnown } = await book();
		const gray = findings.find(({ text }) => text.includes('gray tank'));
		expect(gray?.entries).toEqual([2]);
		expect(notKnown.some((question) => question.includes('smoke alarm'))).toBe(true);
	});

	test('each finding says what clears it; what van and answer both find stands once', async () => {
		await told();
		await tell(robin, '2 people 30 gal fresh 20 gal gray how many days');
		await tell(robin, '40A 12V 15 ft 10 awg ok?');
		const { findings } = await book();
		expect(findings.filter(({ clears }) => clears === null || clears === '')).toEqual([]);
		const gray = findings.filter(({ text }) => text.startsWith('The gray tank'));
		expect(gray).toHaveLength(1);
		expect(gray[0]?.clears).toMatch(
			/^fit or change, then tell it: gray tank; an answer in place of No\. 3, which says: /,
		);
		expect(gray[0]?.entries).toEqual([2, 3]);
		expect(findings.find(({ severity }) => severity === 'danger')?.clears).toMatch(
			/^an answer in place of No\. 4, which says: 10 AWG is too thin: take /,
		);
		await tell(kim, '/build describe gray tank 30 gal');
		await tell(kim, '/log reject 3 the tank is larger now');
		expect((await book()).findings.some(({ text }) => text.startsWith('The gray tank'))).toBe(false);
	});

	test('says who signed which answers, and how many assumptions are open in those that stand', async () => {
		await told();
		await tell(robin, '40A 12V 15 ft');
		await tell(robin, '5A 12V 10 ft');
		await tell(kim, '7A 12V 10 ft');
		await tell(kim, '/log own-signature on');
		for (const number of [3, 4, 5]) await tell(kim, `/log sign ${number}`);
		const open = async (number: number) => {
			const record = (await sheets(await book())).find((one) => one.number === number);
			return record?.sizing.assumed.filter(({ confirm }) => confirm).length ?? 0;
		};
		const at = '2026-05-04T12:00:00.000Z';
		expect((await book()).signing).toEqual({
			answers: { signed: [3, 4, 5] },
			signers: [{ name: 'Kim', answers: [3, 4, 5], first: at, last: at, own: 1 }],
			whole: null,
			toConfirm: { values: (await open(3)) + (await open(4)) + (await open(5)), answers: 3 },
		});
		const html = (await bytesOf(await tell(robin, '/log export html'), 'heron.html')).toString();
		expect(html).toContain('No. 3 to 5; 1 of them to an own question, as this shop allows');
		await tell(kim, '/log reject 4 no such run');
		expect((await book()).signing).toMatchObject({
			answers: { signed: [3, 5], rejected: [4] },
			signers: [{ answers: [3, 5] }],
			toConfirm: { values: (await open(3)) + (await open(5)), answers: 2 },
		});
	});

	test('a revision says what is otherwise than before, and what had gone on from the old answer', async () => {
		await told();
		await tell(robin, 'wire for the fridge 12 ft', { thread: 't1' });
		await tell(robin, '10% is fine', { thread: 't1' });
		await tell(robin, '/build describe the fridge is 90 W');
		await tell(kim, '/build rerun');
		await tell(kim, '/log replace 6 and at 20 ft');
		const revisions = (await sheets(await book())).flatMap(({ number, revision }) =>
			revision === null ? [] : [[number, revision]],
		);
		expect(revisions).toEqual([
			[6, { replaces: 3, reason: 'power was 60 W, is 90 W', affects: ['No. 4 went on from it'] }],
			[7, { replaces: 4, reason: 'power was 60 W, is 90 W', affects: [] }],
			[8, { replaces: 6, reason: 'one-way length was 12 ft, is 20 ft', affects: [] }],
		]);
	});

	test('the owner finds the ratings, rounded down, and each caution once', async () => {
		await told();
		await tell(robin, 'fridge 60W 12 ft');
		await tell(robin, '5A 12V 10 ft');
		const { handover } = await book();
		expect(handover.limits).toContainEqual(
			expect.objectContaining({ what: 'Rear axle', limit: 'at most 5500 lb' }),
		);
		expect(handover.limits).toContainEqual(
			expect.objectContaining({ what: 'Everything on the inverter together', limit: 'at most 2000 W' }),
		);
		expect(handover.cautions.length).toBeGreaterThan(2);
		expect(new Set(handover.cautions).size).toBe(handover.cautions.length);
	});

	test('is the same in each going through, whatever is asked meanwhile', async () => {
		await told();
		await tell(robin, '40A 12V 15 ft');
		const made = await book();
		const first = JSON.stringify(await sheets(made));
		await tell(robin, '5A 12V 10 ft');
		await tell(kim, '/log sign 3');
		expect(JSON.stringify(await sheets(made))).toBe(first);
	});

	test('holds no name and no text of a person who was forgotten', async () => {
		await told();
		await tell(robin, 'fridge 60W 12 ft for Mrs Example');
		await chat.log.forget('demo', 'u1');
		const [record] = await sheets(await book());
		expect(record).toMatchObject({ typed: null, asked: { name: null } });
		const json = await bytesOf(
			{
				files:
					(await bookFiles(chat.log, {
						shop: 'demo',
						build: 'heron',
						context,
						date: '2026-05-04',
						format: 'json',
					})) ?? [],
			},
			'heron.json',
		);
		expect(json.toString()).not.toMatch(/Robin|Mrs Example/);
	});

	test('of another shop, or of a build that is not there, there is none', async () => {
		await told();
		for (const [shop, build] of [
			['other', 'heron'],
			['demo', 'egret'],
		] as const) {
			expect(await bookOf(chat.log, { shop, build, context, date: '2026-05-04' })).toBeNull();
		}
		const reply = await tell(robin, '/log export json', { shop: 'other', build: 'heron' });
		expect(reply.files).toBeUndefined();
		expect(reply.parts[0]?.text).toContain('nothing of build "heron"');
	});
});

describe('/log export', () => {
	test('without a build asks for one; another format is named', async () => {
		expect(await say(robin, '/log export pdf')).toContain('"/build use NAME"');
		await told();
		expect(await say(robin, '/log export docx')).toBe(
			'"docx" is no format of the book. It is html, pdf, csv, json.',
		);
	});

	test('gives a file in each format, with every answer in it', async () => {
		await told();
		await tell(robin, '40A 12V 15 ft');
		await tell(robin, '5A 12V 10 ft');
		const html = (await bytesOf(await tell(robin, '/log export html'), 'heron.html')).toString();
		for (const words of [
			'Book of the build: heron (demo)',
			'No. 3: Conductor size',
			'No. 4: Conductor size',
			'NOT SIGNED',
		])
			expect(html).toContain(words);
		const pdf = await bytesOf(await tell(robin, '/log export'), 'heron.pdf');
		// Header and trailer of a PDF file (ISO 32000-1, 7.5.2 and 7.5.5).
		expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
		expect(pdf.subarray(-6).toString()).toContain('%%EOF');
		const json = JSON.parse((await bytesOf(await tell(robin, '/log export JSON'), 'heron.json')).toString());
		expect(json.sheets.map(({ number }: SheetRecord) => number)).toEqual([3, 4]);
		const csv = await tell(robin, '/log export csv');
		expect(csv.files?.map(({ name }) => name)).toEqual([
			'heron-equipment.csv',
			'heron-wiring.csv',
			'heron-loads.csv',
			'heron-weights.csv',
			'heron-calculations.csv',
		]);
		const made = await book();
		const wiring = (await bytesOf(csv, 'heron-wiring.csv')).toString();
		expect(wiring).toBe(await scheduleCsv({ kind: 'runs', units: 'us', rows: made.runs }));
		const calculations = (await bytesOf(csv, 'heron-calculations.csv')).toString();
		expect(calculations.trim().split('\r\n')).toHaveLength(3);
	});

	test.each(bookFormats)(
		'in %s tells how far it is, from the beginning to the end and never back',
		async (format) => {
			await told();
			for (const feet of [5, 10, 15]) await tell(robin, `40A 12V ${feet} ft`);
			const heard: number[] = [];
			const files = await bookFiles(chat.log, {
				shop: 'demo',
				build: 'heron',
				context,
				date: '2026-05-04',
				format,
				progress: (share) => heard.push(share),
			});
			expect(heard).toEqual([]);
			for (const { name } of files ?? []) await bytesOf({ files: files ?? [] }, name);
			expect(heard.length).toBeGreaterThanOrEqual(3);
			expect(heard).toEqual(heard.toSorted((a, b) => a - b));
			expect(heard.at(-1)).toBe(1);
		},
	);

	test('as JSON says in the file and beside it that a whole shop is what can be read back', async () => {
		await told();
		await tell(robin, '40A 12V 15 ft');
		const reply = await tell(robin, '/log export json');
		const text = (await bytesOf(reply, 'heron.json')).toString();
		const about = /can't be read back.*the whole shop.*pnpm log export/;
		expect(JSON.parse(text).about).toMatch(about);
		expect(reply.parts.map((part) => part.text).join('\n')).toMatch(about);
		expect(plainText(await tell(robin, '/log export csv'), { folded: true })).not.toMatch(about);
		// Who tries all the same is told the same, and nothing is written.
		const before = await chat.log.shops();
		await expect(importLog(chat.log, () => linesOf(text), 'elsewhere')).rejects.toThrow(about);
		expect(await chat.log.shops()).toEqual(before);
		async function* linesOf(whole: string) {
			yield* whole.split('\n');
		}
	});

	test('of some answers alone holds their sheets alone and says so', async () => {
		await told();
		for (const feet of [5, 10, 15]) await tell(robin, `40A 12V ${feet} ft`);
		const reply = await tell(robin, '/log export html 4..5');
		const html = (await bytesOf(reply, 'heron-4-5.html')).toString();
		expect([...html.matchAll(/<h3 id="sheet-(\d+)"/g)].map(([, number]) => number)).toEqual(['4', '5']);
		expect(html).toContain('No. 4 to 5 alone; the others are in the other pieces');
		for (const wrong of ['5..4', '4', '0..3', '4-5']) {
			expect(await say(robin, `/log export html ${wrong}`)).toBe(
				`"${wrong}" names no answers. Say the first and the last number: "/log export html 1..400".`,
			);
		}
	});

	test.each([
		['40A 12V 15 ft', 'Writing the book of build "heron"', 'The book of build "heron": heron.html'],
		[
			'qué cable necesito para 40 A a 12 V, 5 m',
			'Escribiendo la carpeta del proyecto "heron"',
			'La carpeta del proyecto "heron": heron.html',
		],
		[
			'welches Kabel brauche ich für 40 A 12 V 5 m',
			'Die Mappe des Ausbaus "heron" wird geschrieben',
			'Die Mappe des Ausbaus "heron": heron.html',
		],
	])(
		'a platform hears of it in words, in the language of its channel: %s',
		async (question, words, headline) => {
			await told();
			await tell(robin, question);
			const heard: string[] = [];
			const place = { platform: 'terminal', shop: 'demo', channel: 'c1', thread: null, delivery: 'export' };
			const reply = await chat.handle(
				{ ...place, person: robin, command: 'log', text: 'export html' },
				(text) => heard.push(text),
			);
			await bytesOf(reply, 'heron.html');
			expect(heard).toEqual([`${words}: 50 %`, `${words}: 100 %`]);
			expect(reply.parts[0]?.text).toBe(headline);
		},
	);
});

describe('/log picture without a number', () => {
	test('is the wiring and the axles of the build', async () => {
		await told();
		const reply = await tell(robin, '/log picture');
		expect(reply.files?.map(({ name }) => name)).toEqual(['heron-wiring.png', 'heron-axles.png']);
		expect(reply.files?.[0]?.alternativeText).toContain('battery bank to main bus');
		expect((await tell(robin, '/log picture axles')).files).toHaveLength(1);
		const other = await tell(robin, '/log picture moon');
		expect(other.parts[0]?.text).toBe(
			'There is no picture "moon" of build "heron". There is "wiring", "axles".',
		);
	});

	test('of a build of which nothing is told says what to tell', async () => {
		await tell(kim, '/build use egret');
		expect(await say(robin, '/log picture')).toContain('has no picture yet: tell its battery bank');
	});
});
