import { readFileSync } from 'node:fs';
import { parseEnv } from 'node:util';
import { expect, test } from 'vitest';
import { diagnose } from './diagnosis.js';
import { readSettings } from './settings.js';

const textOf = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const example = parseEnv(textOf('.env.example'));

test('the example holds every variable that a program reads, and no other', () => {
	const read = [
		'packages/chat/src/bot/settings.ts',
		'apps/slack/src/settings.ts',
		'apps/discord/src/settings.ts',
	];
	const names = read.flatMap((path) =>
		[...textOf(path).matchAll(/^\t([A-Z][A-Z_]+): \{$/gm)].map(([, name]) => String(name)),
	);
	expect(names.length).toBeGreaterThan(10);
	expect(Object.keys(example).toSorted()).toEqual([...new Set(names)].toSorted());
});

test('as it stands it is fine but for the tokens, and holds no secret', async () => {
	expect(readSettings(example)).not.toHaveProperty('error');
	const found = await diagnose({ ...example, DATABASE_URL: 'sqlite::memory:' });
	expect(found.filter(({ state }) => state !== 'good').map(({ about }) => about)).toEqual(['Platforms']);
	for (const [name, value] of Object.entries(example)) {
		if (/TOKEN|SECRET|URL/.test(name)) expect([name, value]).toEqual([name, '']);
	}
});
