import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openChat } from '@lugbook/chat';
import { expect, test } from 'vitest';

// A reply that somebody saw is in the log, whatever moment the process died at: 60 kills in mid-conversation.
const kills = 60;
const script = fileURLToPath(new URL('talker.mjs', import.meta.url));

/** One conversation, killed a moment after it got going. Returns the replies that got out. */
function talkUntilKilled(databaseUrl: string, round: number): Promise<[number, string][]> {
	return new Promise((resolve, reject) => {
		const child = spawn(process.execPath, [script, databaseUrl, String(round)], {
			stdio: ['ignore', 'pipe', 'pipe'],
		});
		let output = '';
		let errors = '';
		let isKilled = false;
		child.stdout.on('data', (chunk: Buffer) => {
			output += chunk.toString();
			if (isKilled || !output.includes('\n')) return;
			isKilled = true;
			// The moment moves through the phases of an exchange: nothing of chance, so a failure repeats.
			setTimeout(() => child.kill('SIGKILL'), (round * 7) % 23);
		});
		child.stderr.on('data', (chunk: Buffer) => {
			errors += chunk.toString();
		});
		child.on('error', reject);
		child.on('close', () => {
			if (!isKilled) reject(new Error(`the talker ended by itself: ${errors.slice(0, 500)}`));
			const whole = output.slice(0, output.lastIndexOf('\n'));
			resolve(whole.split('\n').map((line) => JSON.parse(line) as [number, string]));
		});
	});
}

test('every reply that got out is in the log, and the chain verifies', { timeout: 300_000 }, async () => {
	const folder = mkdtempSync(join(tmpdir(), 'lugbook-kill-'));
	const databaseUrl = `sqlite:${join(folder, 'log.sqlite')}`;
	try {
		await (await openChat({ databaseUrl, region: 'us' })).close();
		const seen: [number, string][] = [];
		let next = 0;
		const lane = async () => {
			while (next < kills) {
				next += 1;
				seen.push(...(await talkUntilKilled(databaseUrl, next)));
			}
		};
		await Promise.all([lane(), lane(), lane()]);

		const chat = await openChat({ databaseUrl, region: 'us' });
		const report = await chat.log.verify();
		expect(report.problem).toBeNull();
		expect(seen.length).toBeGreaterThanOrEqual(kills);
		expect(new Set(seen.map(([number]) => number)).size).toBe(seen.length);
		for (const [number, headline] of seen) {
			const entry = await chat.log.entry('demo', number);
			expect(JSON.stringify(entry?.body)).toContain(JSON.stringify(headline));
		}
		await chat.close();
	} finally {
		rmSync(folder, { recursive: true });
	}
});
