/** The book of a build with ten thousand answers, by a process whose memory would not hold them. */

import { execFile } from 'node:child_process';
import { createReadStream, existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { openChat } from '@lugbook/chat';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { robin } from './shop.js';

const ANSWERS = 10_000;
/** As JSON they are some 75 MB and as objects several times that [MiB]. */
const HEAP_MIB = 96;
/** As a page these are 17 MB of text, and as objects several times that. */
const SHEETS = 800;

const program = fileURLToPath(new URL('../../apps/console/dist/export.js', import.meta.url));

let folder: string;

beforeAll(async () => {
	folder = await mkdtemp(join(tmpdir(), 'lugbook-large-'));
	const chat = await openChat({ databaseUrl: `sqlite:${join(folder, 'log.sqlite')}`, region: 'us' });
	const place = { platform: 'terminal', shop: 'local', channel: 'c1', thread: null, person: robin } as const;
	await chat.handle({ ...place, delivery: 'use', command: 'build', text: 'use heron' });
	await chat.handle({ ...place, delivery: 'ask', command: 'ask', text: '40A 12V 15 ft' });
	const first = await chat.log.entry('local', 2);
	if (first === null) throw new Error('nothing was kept');
	const { number: _, previousHash: __, hash: ___, personTag: ____, erased: _____, ...entry } = first;
	for (let at = 1; at < ANSWERS; at += 250) {
		const batch = Array.from({ length: Math.min(250, ANSWERS - at) }, (_one, more) =>
			chat.log.append({ ...entry, delivery: `again ${at + more}` }),
		);
		await Promise.all(batch);
	}
	await chat.close();
}, 600_000);

afterAll(async () => {
	await rm(folder, { recursive: true, force: true });
});

async function exported(format: string, more: readonly string[] = []): Promise<string> {
	const { stdout } = await promisify(execFile)(
		process.execPath,
		[`--max-old-space-size=${HEAP_MIB}`, program, 'heron', '--format', format, '--out', folder, ...more],
		{ env: { ...process.env, DATABASE_URL: `sqlite:${join(folder, 'log.sqlite')}`, LUGBOOK_REGION: 'us' } },
	);
	return stdout;
}

async function* linesOf(name: string): AsyncGenerator<string> {
	yield* createInterface({ input: createReadStream(join(folder, name)) });
}

test('as JSON: every answer, in order, the largest number last', async () => {
	expect(await exported('json')).toContain("can't be read back into a log: for that take the whole shop");
	let count = 0;
	for await (const line of linesOf('heron.json')) {
		// A sheet a line, as the form promises.
		const number = /^\{"number":(\d+),/.exec(line)?.[1];
		if (number === undefined) continue;
		count += 1;
		expect(Number(number)).toBe(count + 1);
	}
	expect(count).toBe(ANSWERS);
}, 600_000);

test('as spreadsheets: every answer and every run', async () => {
	await exported('csv');
	for (const name of ['heron-calculations.csv', 'heron-wiring.csv']) {
		let count = 0;
		for await (const _line of linesOf(name)) count += 1;
		expect(count).toBe(1 + ANSWERS);
	}
}, 600_000);

test('as a page: sheet by sheet, so that as many as would not fit go through', async () => {
	await exported('html', ['--entries', `2..${1 + SHEETS}`]);
	let count = 0;
	for await (const line of linesOf(`heron-2-${1 + SHEETS}.html`))
		count += Number(line.startsWith('<h3 id="sheet-'));
	expect(count).toBe(SHEETS);
}, 600_000);

test('as PDF: more than one takes are refused before anything is written, with the pieces that go', async () => {
	const refused = exported('pdf');
	await expect(refused).rejects.toMatchObject({
		code: 1,
		stderr: expect.stringMatching(
			/^These are 10000 calculation sheets of build "heron"; a PDF takes 400\. Export it in 25 pieces, .*: 2\.\.401, 402\.\.801, 802\.\.1201, \.\.\., 9602\.\.10001\. HTML, CSV and JSON take all of them in one file\.\nThe first: --entries 2\.\.401\n$/,
		),
	});
	expect(existsSync(join(folder, 'heron.pdf'))).toBe(false);
}, 600_000);
