import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { isSecondReconnect } from './second-reconnect.js';

test('the failure is known by the words that the client library itself uses', () => {
	const ofClient = createRequire(createRequire(import.meta.url).resolve('discord.js'));
	const thrown = [
		...readFileSync(ofClient.resolve('@discordjs/ws'), 'utf8').matchAll(/new Error\("([^"]+)"\)/g),
	];
	expect(thrown.filter(([, words]) => isSecondReconnect(new Error(words)))).toHaveLength(1);
	expect(isSecondReconnect(new Error('something else'))).toBe(false);
	expect(isSecondReconnect(null)).toBe(false);
});
