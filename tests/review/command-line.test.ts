/** pnpm log and pnpm export as programs of their own: what they write, what they say, their exit status. */

import { execFile } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { openChat, openLog } from '@lugbook/chat';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { kim, robin } from './shop.js';

const programs = fileURLToPath(new URL('../../apps/console/dist/', import.meta.url));

let folder: string;
let url: string;

beforeAll(async () => {
	if (!existsSync(join(programs, 'export.js'))) throw new Error('build the workspace first (npm run build)');
	folder = await mkdtemp(join(tmpdir(), 'lugbook-keeping-'));
	url = `sqlite:${join(folder, 'log.sqlite')}`;
	const chat = await openChat({ databaseUrl: url, region: 'us' });
	for (const [turn, text] of ['/build use heron', '40A 12V 15 ft', '5A 12V 10 ft', '/log sign 2'].entries()) {
		const command = /^\/(build|log) /.exec(text)?.[1] ?? 'ask';
		await chat.handle({
			platform: 'terminal',
			shop: 'local',
			channel: 'c1',
			thread: null,
			delivery: `d${turn}`,
			person: turn === 3 ? kim : robin,
			command: command as 'ask' | 'build' | 'log',
			text: text.replace(/^\/\w+ /, ''),
		});
	}
	await chat.log.setSetting('local', 'kept', 'old');
	await chat.log.setSetting('outbox of slack', 'waits', '{}');
	await chat.close();
});

afterAll(async () => {
	await rm(folder, { recursive: true, force: true });
});

const file = (name: string) => join(folder, name);

async function run(program: 'log' | 'export', args: readonly string[], database = url) {
	const started = promisify(execFile)(process.execPath, [join(programs, `${program}.js`), ...args], {
		cwd: folder,
		env: { ...process.env, DATABASE_URL: database, LUGBOOK_REGION: 'us' },
	});
	return await started.then(
		({ stdout, stderr }) => ({ code: 0, stdout, stderr }),
		(error: { code: number; stdout: string; stderr: string }) => error,
	);
}

describe('pnpm export', () => {
	test('writes the book and says where; a second one stands beside the first', async () => {
		const first = await run('export', ['Heron', '--format', 'html', '--out', 'books']);
		expect(first).toMatchObject({ code: 0, stdout: `Written to ${file('books/heron.html')}\n`, stderr: '' });
		expect(readFileSync(file('books/heron.html'), 'utf8')).toContain('Book of the build: heron (local)');
		const second = await run('export', ['heron', '--format', 'html', '--out', 'books']);
		expect(second.stdout).toBe(`Written to ${file('books/heron-2.html')}\n`);
	});

	test.each([
		[['nope'], 1, 'nothing of build "nope" in the log of shop "local"'],
		[[], 2, 'Name one build.'],
		[['heron', '--format', 'docx'], 2, '--format is "docx"; it is html, pdf, csv, json.'],
		[['heron', '--colour'], 2, '--colour'],
		[['heron', '--shop', 'other'], 1, 'of shop "other"'],
	])('%j: exit status %i, and why', async (args, code, words) => {
		const said = await run('export', args);
		expect(said.code).toBe(code);
		expect(said.stderr).toContain(words);
	});
});

describe('pnpm log', () => {
	test('export, then import under another name, then recompute there: all the same', async () => {
		expect((await run('log', ['export', 'shop.jsonl'])).code).toBe(0);
		const taken = await run(
			'log',
			['import', 'shop.jsonl', '--shop', 'second'],
			`sqlite:${file('second.sqlite')}`,
		);
		expect(taken).toMatchObject({ code: 0 });
		expect(taken.stdout).toContain('Shop "second": 4 entries taken in');
		const again = await run('log', ['recompute'], `sqlite:${file('second.sqlite')}`);
		expect(again).toMatchObject({ code: 0, stdout: '2 answers worked out again: all the same.\n' });
		const overwriting = await run('log', ['export', 'shop.jsonl']);
		expect(overwriting.code).toBe(1);
		expect(overwriting.stderr).toContain('shop.jsonl');
		expect(readFileSync(file('shop.jsonl'), 'utf8').trim().split('\n')).toHaveLength(5);
	});

	test('an export without names has none', async () => {
		expect((await run('log', ['export', 'nameless.jsonl', '--no-names'])).code).toBe(0);
		expect(readFileSync(file('nameless.jsonl'), 'utf8')).not.toMatch(/Robin|Kim|40A 12V 15 ft/);
	});

	test('an export that was changed is refused, the line named', async () => {
		await run('log', ['export', 'true.jsonl']);
		const lines = readFileSync(file('true.jsonl'), 'utf8').split('\n');
		await writeFile(
			file('false.jsonl'),
			lines.with(2, (lines[2] as string).replace('AWG', 'AWg')).join('\n'),
		);
		const said = await run('log', ['import', 'false.jsonl'], `sqlite:${file('false.sqlite')}`);
		expect(said.code).toBe(1);
		expect(said.stderr).toContain('line 3, entry 2 of shop local');
	});

	test('backup, then restore: what was changed since stays, what waited to be shown stays behind', async () => {
		expect((await run('log', ['backup', 'backup.sqlite'])).code).toBe(0);
		const target = `sqlite:${file('restored.sqlite')}`;
		const before = await openLog(target);
		await before.setSetting('local', 'kept', 'new');
		await before.close();
		const said = await run('log', ['restore', 'backup.sqlite'], target);
		expect(said).toMatchObject({ code: 0 });
		expect(said.stdout).toContain('local: 4 entries brought in');
		const after = await openLog(target);
		expect(await after.getSetting('local', 'kept')).toBe('new');
		expect(await after.getSetting('outbox of slack', 'waits')).toBeNull();
		expect((await after.verify()).ok).toBe(true);
		await after.close();
		expect((await run('log', ['root'], target)).stdout).toBe((await run('log', ['root'])).stdout);
	});

	test('root and proof are what the independent verifier takes', async () => {
		const head = /^local: head (4:[0-9a-f]{64}) root ([0-9a-f]{64})$/m.exec(
			(await run('log', ['root'])).stdout,
		);
		await run('log', ['proof', '2', 'proof.json']);
		await run('log', ['export', 'proven.jsonl']);
		const verifier = fileURLToPath(new URL('../../packages/log/dist/verifier.mjs', import.meta.url));
		const { stdout } = await promisify(execFile)(process.execPath, [
			verifier,
			file('proven.jsonl'),
			'--head',
			head?.[1] ?? '',
			'--proof',
			file('proof.json'),
		]);
		expect(stdout).toContain(`root ${head?.[2]}`);
		expect(stdout).toContain('entry 2 is in the tree of 4 entries');
	});

	test.each([
		[[], 'Say what to do.'],
		[['toString'], '"toString" is nothing I can do.'],
		[['proof', '0'], '"0" is no number of an entry'],
		[['restore', 'none.sqlite'], 'There is no file none.sqlite.'],
		[['import'], 'The name of the file is missing.'],
		[['sheet', '2', 'sheet.doc'], 'ends neither in .html nor in .pdf'],
	])('%j is no way to use it: exit status 2, and what would be right', async (args, words) => {
		const said = await run('log', args);
		expect(said.code).toBe(2);
		expect(said.stderr).toContain(words);
		expect(said.stderr).toContain('pnpm log verify');
	});
});
